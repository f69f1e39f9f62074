"""Rolling over sideways against the elastic theory (Timoshenko and Gere, Theory of Elastic Stability): under an even moment a
beam turns over at pi / L x root of (E Iy G J + (pi E / L)^2 Iy Cw).
"""

from __future__ import annotations

import math
from typing import Any

import pytest
from sectionproperties.analysis import Section as MeshedSection
from sectionproperties.pre.library import i_section

from calc.lifting.beam_buckling import flat_bar_moment_nm, i_beam_moment_nm, i_shape
from calc.lifting.beams import SECTION_FORMS
from calc.lifting.overhead_beam import DEEP_BOX, MOST_BY_FILLETS

E, G = 200e9, 77.2e9


@pytest.mark.parametrize("free_m", [6.0, 9.0, 14.0])
def test_i_beam(free_m: float) -> None:
    depth, width, web, flange = 0.305, 0.101, 0.0056, 0.0067
    sideways = (2 * flange * width**3 + (depth - 2 * flange) * web**3) / 12
    twist = (2 * width * flange**3 + (depth - flange) * web**3) / 3
    warping = sideways * (depth - flange) ** 2 / 4
    theory = (
        math.pi
        / free_m
        * math.sqrt(E * sideways * G * twist + (math.pi * E / free_m) ** 2 * sideways * warping)
    )
    ours = i_beam_moment_nm(i_shape(depth, width, web, flange), free_m, 345e6, E)
    assert ours == pytest.approx(theory, rel=0.01)


@pytest.mark.parametrize("free_m", [3.0, 6.0])
def test_flat_bar(free_m: float) -> None:
    depth, width = 0.254, 0.00635
    sideways, twist = depth * width**3 / 12, depth * width**3 / 3
    theory = math.pi / free_m * math.sqrt(E * sideways * G * twist)
    ours = flat_bar_moment_nm(depth, width, free_m, 250e6, E)
    assert 0.95 * theory < ours < theory


ROLLED = {
    "W8x10": (7.89, 3.94, 0.170, 0.205, 0.300, 0.0426),
    "W18x50": (17.99, 7.495, 0.355, 0.570, 0.402, 1.24),
    "HEA 200": (7.480, 7.874, 0.2559, 0.3937, 0.7087, 0.5045),
}
"""Depth, flange width, web, flange, fillet [in] and printed twist constant [in4] (AISC Manual and European tables, from memory)."""


@pytest.mark.parametrize("name", ROLLED)
def test_twist_and_warping_of_rolled_beams_by_meshing(name: str) -> None:
    """sectionproperties solves twisting on a mesh with the fillets: the printed J is right, and it is what fillets add to the plates
    alone, up to half (MOST_BY_FILLETS). Warping and the effective radius hardly feel them, so that J alone need be typed:
    rts^2 Sx = root(Iy Cw).
    """
    depth, width, web, flange, fillet, printed = ROLLED[name]
    geometry = i_section(d=depth, b=width, t_w=web, t_f=flange, r=fillet, n_r=10)
    geometry.create_mesh(mesh_sizes=[width**2 / 1500])
    meshed: Any = MeshedSection(geometry)
    meshed.calculate_geometric_properties()
    meshed.calculate_warping_properties()
    plates = i_shape(depth, width, web, flange)
    assert meshed.get_j() == pytest.approx(printed, rel=0.03)
    assert 1.0 < meshed.get_j() / plates.twist_m4 < MOST_BY_FILLETS
    _, upright, _ = meshed.get_ic()
    both = plates.effective_radius_m**2 * plates.modulus_m3
    assert both == pytest.approx(math.sqrt(upright * meshed.get_gamma()), rel=0.015)


def test_plates_alone_twist_as_their_mesh() -> None:
    """Sharp corners: the thin plates' sum b t^3 / 3 is within 3 percent of the mesh."""
    geometry = i_section(d=7.89, b=3.94, t_w=0.17, t_f=0.205, r=0.0, n_r=1)
    geometry.create_mesh(mesh_sizes=[0.002])
    meshed: Any = MeshedSection(geometry)
    meshed.calculate_geometric_properties()
    meshed.calculate_warping_properties()
    assert i_shape(7.89, 3.94, 0.17, 0.205).twist_m4 == pytest.approx(meshed.get_j(), rel=0.03)


@pytest.mark.parametrize("yield_pa", [248e6, 345e6, 448e6])
@pytest.mark.parametrize("wall", [0.003, 0.005, 0.008])
def test_a_tube_twice_as_deep_as_wide_bends_before_it_rolls_over(wall: float, yield_pa: float) -> None:
    """AISC 360 F7-10 to F7-13 (from memory), Cb = 1: over 100 depths it takes more than its moment of first yield, which is what a
    tube is let to take.
    """
    width = 0.1
    depth = DEEP_BOX * width
    free_m = 100 * depth
    area = width * depth - (width - 2 * wall) * (depth - 2 * wall)
    plastic = (width * depth**2 - (width - 2 * wall) * (depth - 2 * wall) ** 2) / 4
    section = SECTION_FORMS["box"].of(width, depth, wall)
    elastic = section.second_moment_m4 / section.outer_fibre_m
    side_radius = math.sqrt(SECTION_FORMS["box"].of(depth, width, wall).second_moment_m4 / area)
    twist = 2 * (width - wall) ** 2 * (depth - wall) ** 2 * wall / (width + depth - 2 * wall)
    root = side_radius * math.sqrt(twist * area)
    short, long = 0.13 * E * root / (yield_pa * plastic), 2 * E * root / (0.7 * yield_pa * elastic)
    assert short < free_m < long
    part = (free_m - short) / (long - short)
    takes = yield_pa * (plastic - (plastic - 0.7 * elastic) * part)
    assert takes > yield_pa * elastic
