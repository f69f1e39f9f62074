"""Shapes and drawn solids held against trimesh, a mesh library: the same solid cut into triangles."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
import trimesh

from calc.lifting.shapes import SHAPES
from calc.lifting.stl import mesh_solid

FINE = 512


def revolve(profile: list[tuple[float, float]]) -> Any:
    """Turn a closed profile (radius, height) round the z axis."""
    return trimesh.creation.revolve(np.array([*profile, profile[0]]), sections=FINE)


def boxes(*corners: tuple[tuple[float, float, float], tuple[float, float, float]]) -> Any:
    """Boxes that touch but do not overlap, as one mesh."""
    return trimesh.util.concatenate(
        [trimesh.creation.box(bounds=np.array([low, high])) for low, high in corners]
    )


def ellipse_arc(radius: float, height: float, steps: int = 300) -> list[tuple[float, float]]:
    turn = [math.pi / 2 * i / steps for i in range(steps + 1)]
    return [(radius * math.cos(t), height * math.sin(t)) for t in turn]


def torus_profile(mean: float, bar: float) -> list[tuple[float, float]]:
    turn = [2 * math.pi * i / 600 for i in range(600)]
    return [(mean / 2 + bar / 2 * math.cos(t), bar / 2 * math.sin(t)) for t in turn]


# Sizes in metres, all different; the mesh stands with its axis along z and its box's low corner anywhere.
CASES: list[tuple[str, dict[str, float], Any]] = [
    ("disc", {"diameter": 0.83, "thickness": 0.037}, lambda: trimesh.creation.cylinder(0.415, 0.037, sections=FINE)),
    ("round-bar", {"diameter": 0.061, "length": 1.9}, lambda: trimesh.creation.cylinder(0.0305, 1.9, sections=FINE)),
    ("ring", {"outside_diameter": 0.71, "inside_diameter": 0.43, "thickness": 0.029},
     lambda: trimesh.creation.annulus(0.215, 0.355, 0.029, sections=FINE)),
    ("tube", {"outside_diameter": 0.219, "wall": 0.0127, "length": 3.1},
     lambda: trimesh.creation.annulus(0.0968, 0.1095, 3.1, sections=FINE)),
    ("hex-bar", {"across_flats": 0.036, "length": 0.77},
     lambda: trimesh.creation.cylinder(0.018 / math.cos(math.pi / 6), 0.77, sections=6)),
    ("cone", {"diameter": 0.52, "height": 0.91}, lambda: trimesh.creation.cone(0.26, 0.91, sections=FINE)),
    ("frustum", {"bottom_diameter": 0.9, "top_diameter": 0.34, "height": 0.61},
     lambda: revolve([(0, 0), (0.45, 0), (0.17, 0.61), (0, 0.61)])),
    ("frustum", {"bottom_diameter": 0.34, "top_diameter": 0.9, "height": 0.61},
     lambda: revolve([(0, 0), (0.17, 0), (0.45, 0.61), (0, 0.61)])),
    ("sphere", {"diameter": 0.47}, lambda: trimesh.creation.icosphere(6, 0.235)),
    ("hemisphere", {"diameter": 0.66}, lambda: revolve([(0, 0), *ellipse_arc(0.33, 0.33)])),
    ("hemisphere", {"diameter": 0.66, "wall": 0.04},
     lambda: revolve([*ellipse_arc(0.33, 0.33), *reversed(ellipse_arc(0.29, 0.29))])),
    ("dished-head", {"outside_diameter": 1.2, "wall": 0.012},
     lambda: revolve([*ellipse_arc(0.6, 0.3), *reversed(ellipse_arc(0.588, 0.288))])),
    ("dished-head", {"outside_diameter": 1.2, "wall": 0.012, "height": 0.21},
     lambda: revolve([*ellipse_arc(0.6, 0.21), *reversed(ellipse_arc(0.588, 0.198))])),
    ("torus", {"mean_diameter": 0.3, "diameter": 0.044}, lambda: revolve(torus_profile(0.3, 0.044))),
    ("plate", {"length": 2.4, "width": 1.5, "thickness": 0.0095}, lambda: trimesh.creation.box((2.4, 1.5, 0.0095))),
    ("box", {"length": 0.9, "width": 0.7, "height": 0.5}, lambda: trimesh.creation.box((0.7, 0.5, 0.9))),
    ("flat-bar", {"width": 0.09, "thickness": 0.011, "length": 2.2}, lambda: trimesh.creation.box((0.09, 0.011, 2.2))),
    ("square-bar", {"side": 0.031, "length": 1.3}, lambda: trimesh.creation.box((0.031, 0.031, 1.3))),
    ("angle", {"width": 0.09, "depth": 0.13, "thickness": 0.011, "length": 2.0},
     lambda: boxes(((0, 0, 0), (0.09, 0.011, 2.0)), ((0, 0.011, 0), (0.011, 0.13, 2.0)))),
    ("angle", {"width": 0.07, "thickness": 0.009, "length": 2.0},
     lambda: boxes(((0, 0, 0), (0.07, 0.009, 2.0)), ((0, 0.009, 0), (0.009, 0.07, 2.0)))),
    ("channel", {"depth": 0.2, "flange_width": 0.075, "web_thickness": 0.0085, "flange_thickness": 0.0115, "length": 1.7},
     lambda: boxes(((0, 0, 0), (0.075, 0.0115, 1.7)), ((0, 0.1885, 0), (0.075, 0.2, 1.7)),
                   ((0, 0.0115, 0), (0.0085, 0.1885, 1.7)))),
    ("i-beam", {"depth": 0.24, "flange_width": 0.12, "web_thickness": 0.0062, "flange_thickness": 0.0098, "length": 2.6},
     lambda: boxes(((0, 0, 0), (0.12, 0.0098, 2.6)), ((0, 0.2302, 0), (0.12, 0.24, 2.6)),
                   ((0.0569, 0.0098, 0), (0.0631, 0.2302, 2.6)))),
    ("square-tube", {"width": 0.1, "depth": 0.06, "wall": 0.005, "length": 1.1},
     lambda: boxes(((0, 0, 0), (0.1, 0.005, 1.1)), ((0, 0.055, 0), (0.1, 0.06, 1.1)),
                   ((0, 0.005, 0), (0.005, 0.055, 1.1)), ((0.095, 0.005, 0), (0.1, 0.055, 1.1)))),
]  # fmt: skip


@pytest.mark.parametrize(("shape", "dims", "build"), CASES, ids=[f"{c[0]}-{i}" for i, c in enumerate(CASES)])
def test_volume_box_and_balance_point(shape: str, dims: dict[str, float], build: Any) -> None:
    mesh = build()
    found = SHAPES[shape].solid(dims)
    volume = float(abs(mesh.volume))
    middle = (mesh.bounds[0] + mesh.bounds[1]) / 2
    across, upward, along = mesh.center_mass - middle
    size = mesh.extents
    longest = float(max(size))
    assert found.volume_m3 == pytest.approx(volume, rel=3e-4)
    assert found.offset_m[0] == pytest.approx(along, abs=2e-4 * longest)
    assert found.offset_m[1] == pytest.approx(across, abs=2e-4 * longest)
    assert found.offset_m[2] == pytest.approx(upward, abs=2e-4 * longest)
    assert found.box_m[0] == pytest.approx(size[2], rel=1e-4)
    assert sorted(found.box_m) == pytest.approx(sorted(size), rel=1e-4)


@pytest.mark.parametrize(
    ("shape", "full", "hollow"),
    [
        ("sphere", {"diameter": 0.47}, {"diameter": 0.41}),
        ("cylinder", {"diameter": 0.6, "length": 0.9}, {"diameter": 0.54, "length": 0.84}),
        (
            "box",
            {"length": 0.9, "width": 0.7, "height": 0.5},
            {"length": 0.84, "width": 0.64, "height": 0.44},
        ),
    ],
)
def test_hollow_is_the_full_less_what_it_could_hold(
    shape: str, full: dict[str, float], hollow: dict[str, float]
) -> None:
    solid = SHAPES[shape].solid
    shell = solid({**full, "wall": 0.03}).volume_m3
    assert shell == pytest.approx(solid(full).volume_m3 - solid(hollow).volume_m3, rel=1e-9)


@pytest.mark.parametrize("file_type", ["stl", "stl_ascii"])
def test_drawn_solid_against_trimesh(file_type: str) -> None:
    shell = trimesh.creation.annulus(0.215, 0.355, 0.129, sections=48)
    ball = trimesh.creation.icosphere(3, 0.19)
    ball.apply_translation([1.3, -0.7, 2.9])
    mesh: Any = trimesh.util.concatenate([shell, ball])
    data = mesh.export(file_type=file_type)
    found = mesh_solid(data if isinstance(data, bytes) else data.encode())
    assert found.volume == pytest.approx(mesh.volume, rel=1e-5)
    assert found.centre == pytest.approx(tuple(mesh.center_mass), rel=1e-5)
    assert found.low == pytest.approx(tuple(mesh.bounds[0]), rel=1e-5)
    assert found.triangles == len(mesh.faces)


def test_solid_with_a_hollow_inside_against_trimesh() -> None:
    outer, inner = trimesh.creation.box((3.0, 2.0, 1.7)), trimesh.creation.icosphere(3, 0.5)
    inner.apply_translation([0.7, 0.2, 0.1])
    inner.invert()
    mesh: Any = trimesh.util.concatenate([outer, inner])
    found = mesh_solid(mesh.export(file_type="stl"))
    assert found.volume == pytest.approx(mesh.volume, rel=1e-5)
    assert found.centre == pytest.approx(tuple(mesh.center_mass), rel=1e-4)
