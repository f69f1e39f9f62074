"""Sections against sectionproperties, a finite-element library for cross-sections.

beam-lift and lifting-lug: second moment and modulus; load-weight: area and middle of the rolled sections;
hook-stress: area, middle and neutral radius of a curved bar's section. The library takes straight-sided sections
exactly and round ones as polygons of many sides; what is left of the polygon is within the tolerance beside each.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from sectionproperties.analysis import Section as MeshedSection
from sectionproperties.pre import Geometry
from sectionproperties.pre.library import (
    angle_section,
    channel_section,
    circular_hollow_section,
    circular_section,
    i_section,
    rectangular_hollow_section,
    rectangular_section,
    tee_section,
)
from shapely import Polygon

from calc.heating.curved_beam import circle, section_of_strips, tee_strips, trapezoid_strips
from calc.lifting import beams
from calc.lifting.lug_strength import Lug, foot_bending_n, foot_load
from calc.lifting.shapes import SHAPES

STRAIGHT = 1e-9
ROUND = 2e-4
"""A circle of 256 sides holds 1e-4 less than the circle."""


def meshed(geometry: Geometry) -> Any:
    """Geometric properties of a section; lengths in millimetres, as sections are drawn."""
    extents = geometry.calculate_extents()
    size = max(extents[1] - extents[0], extents[3] - extents[2])
    geometry.create_mesh(mesh_sizes=[size**2 / 100])
    section = MeshedSection(geometry)
    section.calculate_geometric_properties()
    return section


BEAMS = [
    (beams.rectangle(0.061, 0.113), lambda: rectangular_section(d=113, b=61), STRAIGHT),
    (beams.round_bar(0.083), lambda: circular_section(d=83, n=256), 2 * ROUND),
    (beams.round_tube(0.103, 0.0115), lambda: circular_hollow_section(d=103, t=11.5, n=256), 2 * ROUND),
    (beams.box_tube(0.081, 0.127, 0.0095),
     lambda: rectangular_hollow_section(d=127, b=81, t=9.5, r_out=0, n_r=1), STRAIGHT),
    (beams.i_section(0.203, 0.133, 0.0061, 0.0079),
     lambda: i_section(d=203, b=133, t_f=7.9, t_w=6.1, r=0, n_r=1), STRAIGHT),
]  # fmt: skip


@pytest.mark.parametrize(
    ("ours", "build", "close"), BEAMS, ids=["rectangle", "round bar", "round tube", "box tube", "I"]
)
def test_second_moment_and_modulus_of_beams(ours: beams.Section, build: Any, close: float) -> None:
    section = meshed(build())
    second_moment_mm4, _, _ = section.get_ic()
    modulus_mm3 = section.get_z()[0]
    assert ours.second_moment_m4 * 1e12 == pytest.approx(second_moment_mm4, rel=close)
    assert ours.second_moment_m4 / ours.outer_fibre_m * 1e9 == pytest.approx(modulus_mm3, rel=close)


@pytest.mark.parametrize(("lean", "out"), [(0.0, 0.0), (31.0, 0.0), (0.0, 23.0), (37.0, 17.0)])
def test_foot_of_a_lug(lean: float, out: float) -> None:
    # The foot is a flat on edge: pull over area and both bendings over their moduli reach yield / factor together.
    lug = Lug(0.021, 0.027, 0.023, 0.028, 0.031, 0.062, 0.007, 0.081, 250e6, 400e6, 482e6, 3.0)
    section = meshed(rectangular_section(d=1000 * lug.foot_width_m, b=1000 * lug.thickness_m))
    area_m2 = section.get_area() / 1e6
    in_plane_m3, _, across_m3, _ = (modulus / 1e9 for modulus in section.get_z())
    pull = foot_load(lean, out)
    load_n = foot_bending_n(lug, pull)
    stress_pa = load_n * (
        pull.along / area_m2 + lug.height_m * (pull.in_plane / in_plane_m3 + pull.across / across_m3)
    )
    assert stress_pa == pytest.approx(lug.yield_pa / lug.design_factor, rel=1e-9)


ROLLED = [
    ("angle", {"width": 0.093, "depth": 0.131, "thickness": 0.011},
     lambda: angle_section(d=131, b=93, t=11, r_r=0, r_t=0, n_r=1)),
    ("channel", {"depth": 0.203, "flange_width": 0.077, "web_thickness": 0.0083, "flange_thickness": 0.0117},
     lambda: channel_section(d=203, b=77, t_f=11.7, t_w=8.3, r=0, n_r=1)),
    ("i-beam", {"depth": 0.241, "flange_width": 0.119, "web_thickness": 0.0063, "flange_thickness": 0.0097},
     lambda: i_section(d=241, b=119, t_f=9.7, t_w=6.3, r=0, n_r=1)),
    ("square-tube", {"width": 0.101, "depth": 0.063, "wall": 0.0049},
     lambda: rectangular_hollow_section(d=63, b=101, t=4.9, r_out=0, n_r=1)),
]  # fmt: skip


@pytest.mark.parametrize(("shape", "dims", "build"), ROLLED, ids=[case[0] for case in ROLLED])
def test_area_and_middle_of_rolled_sections(shape: str, dims: dict[str, float], build: Any) -> None:
    geometry = build()
    section = meshed(geometry)
    low_x, high_x, low_y, high_y = geometry.calculate_extents()
    across_mm, upward_mm = section.get_c()
    found = SHAPES[shape].solid({**dims, "length": 1.7})
    assert found.volume_m3 / 1.7 * 1e6 == pytest.approx(section.get_area(), rel=STRAIGHT)
    assert found.offset_m[1] * 1e3 == pytest.approx(across_mm - (low_x + high_x) / 2, abs=1e-6)
    assert found.offset_m[2] * 1e3 == pytest.approx(upward_mm - (low_y + high_y) / 2, abs=1e-6)
    assert found.box_m[1:] == pytest.approx(((high_x - low_x) / 1e3, (high_y - low_y) / 1e3))


def over_radius_mm(section: Any) -> float:
    """Integral of 1 / y over a meshed section [mm]: seven-point quadrature on each of its triangles (Radon)."""
    root = math.sqrt(15)
    near, far = (6 - root) / 21, (6 + root) / 21
    weights = [0.225, *([(155 - root) / 1200] * 3), *([(155 + root) / 1200] * 3)]
    places = [(1 / 3, 1 / 3, 1 / 3)]
    for part in (near, far):
        rest = 1 - 2 * part
        places += [(rest, part, part), (part, rest, part), (part, part, rest)]
    corners = np.array(section.mesh["vertices"])[np.array(section.mesh["triangles"])[:, :3]]
    one, other = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    areas = np.abs(one[:, 0] * other[:, 1] - one[:, 1] * other[:, 0]) / 2
    heights = np.einsum("pc,tc->tp", np.array(places), corners[:, :, 1])
    return float((areas[:, None] * np.array(weights) / heights).sum())


# Curved bars stand with the centre of their bend at height zero: what is up in the library is radius here.
CURVED = [
    (circle(0.031, 0.023), lambda: circular_section(d=23, n=256).shift_section(0, 31 + 11.5), ROUND),
    (section_of_strips(trapezoid_strips(0.047, 0.061, 0.043, 0.019)),
     lambda: Geometry(Polygon([(-21.5, 47), (21.5, 47), (9.5, 108), (-9.5, 108)])), 1e-8),
    # The library's T has its flange on top; the inside of the bend is at the bottom.
    (section_of_strips(tee_strips(0.053, 0.071, 0.059, 0.017, 0.013)),
     lambda: tee_section(d=71, b=59, t_f=17, t_w=13, r=0, n_r=1).mirror_section("x", (0, 0)), 1e-8),
]  # fmt: skip


@pytest.mark.parametrize(("ours", "build", "close"), CURVED, ids=["round", "trapezoid", "T"])
def test_curved_sections(ours: Any, build: Any, close: float) -> None:
    geometry = build()
    inner_mm = ours.inner_radius_m * 1000
    geometry = geometry.shift_section(0, inner_mm - geometry.calculate_extents()[2])
    section = meshed(geometry)
    assert geometry.calculate_extents()[3] == pytest.approx(
        ours.outer_radius_m * 1000, rel=1e-3 * close + 1e-9
    )
    assert ours.area_m2 * 1e6 == pytest.approx(section.get_area(), rel=close)
    assert ours.centroid_radius_m * 1e3 == pytest.approx(section.get_c()[1], rel=close)
    neutral_mm = section.get_area() / over_radius_mm(section)
    assert ours.neutral_radius_m * 1e3 == pytest.approx(neutral_mm, rel=close)
    # The eccentricity is what the stress rests on, and a small difference of large numbers.
    assert ours.eccentricity_m * 1e3 == pytest.approx(section.get_c()[1] - neutral_mm, rel=20 * close)
