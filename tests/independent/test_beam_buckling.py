"""Rolling over sideways against the elastic theory (Timoshenko and Gere, Theory of Elastic Stability): under an even moment a
beam turns over at pi / L x root of (E Iy G J + (pi E / L)^2 Iy Cw).
"""

from __future__ import annotations

import math

import pytest

from calc.lifting.beam_buckling import flat_bar_moment_nm, i_beam_moment_nm, i_shape

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
