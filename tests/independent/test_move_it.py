"""move-it by other methods: forces as vectors, the rope on a post as an equation integrated, a drum wound turn by turn, and a
tackle whose rope loses a part of its pull at each sheave.
"""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from calc.hauling.moving import (
    along_ramp_n,
    hauling_pull_n,
    holding_back_n,
    pull_on_layer_n,
    slides_at_rad,
    tail_pull_n,
)

SLOPES = st.floats(0.0, math.radians(30))
FRICTIONS = st.floats(0.0, 1.0)


def pull_in_balance_n(load_n: float, slope_rad: float, friction: float, up: bool) -> float:
    """The pull along the ramp [N] from the balance of its forces as vectors: weight, floor, friction against the motion."""
    along = np.array([math.cos(slope_rad), math.sin(slope_rad)])
    off_floor = np.array([-math.sin(slope_rad), math.cos(slope_rad)])
    rubs = off_floor + friction * (-along if up else along)
    pull, _floor = np.linalg.solve(np.column_stack([along, rubs]), np.array([0.0, load_n]))
    return float(pull)


@given(slope=SLOPES, friction=FRICTIONS)
def test_ramp_against_the_balance_of_vectors(slope: float, friction: float) -> None:
    load = 8_000.0
    assert along_ramp_n(load, slope, friction) == pytest.approx(
        pull_in_balance_n(load, slope, friction, up=True), rel=1e-9, abs=1e-6
    )
    down = pull_in_balance_n(load, slope, friction, up=False)
    assert holding_back_n(load, slope, friction) == pytest.approx(max(0.0, down), rel=1e-9, abs=1e-6)
    # Where it begins to slide by itself, nothing is left to hold on less slope, and something on more.
    begins = slides_at_rad(friction)
    assert pull_in_balance_n(load, begins, friction, up=False) == pytest.approx(0.0, abs=1e-6)


@settings(max_examples=30, deadline=None)
@given(turns=st.floats(0.0, 5.0), friction=st.floats(0.05, 0.4))
def test_rope_on_a_post_against_the_equation_integrated(turns: float, friction: float) -> None:
    """dT/d(angle) = -friction T, from the held end to the tail."""
    solved = solve_ivp(
        lambda _angle, pull: -friction * pull, (0.0, 2 * math.pi * turns), [1_000.0], rtol=1e-10, atol=1e-12
    )
    assert tail_pull_n(1_000.0, turns, friction) == pytest.approx(float(solved.y[0, -1]), rel=1e-6)


@given(layer=st.integers(1, 12), drum=st.floats(0.03, 1.0), rope=st.floats(0.002, 0.03))
def test_drum_wound_layer_by_layer(layer: int, drum: float, rope: float) -> None:
    """The torque of the drum over the arm at which the middle of the rope lies, one rope farther out each layer."""
    arm = drum / 2 + rope / 2
    torque = 5_000.0 * arm
    for _ in range(layer - 1):
        arm += rope
    assert pull_on_layer_n(5_000.0, drum, rope, layer) == pytest.approx(torque / arm, rel=1e-12)


@pytest.mark.parametrize("parts", range(1, 9))
@pytest.mark.parametrize("more", [0, 1, 2])
def test_a_tackle_never_asks_less_than_one_that_loses_five_percent_at_each_sheave(
    parts: int, more: int
) -> None:
    """The rope leaves each sheave with 5 percent more pull than it came with (what sailors say, from memory): the parts at the
    moving block add up to the load, and the free part runs over the sheaves that are left. The navy's allowance is above it.
    """
    gain = 1.05
    between = parts - 1
    at_block = [gain**number for number in range(parts)]  # from the dead end on
    sheaves = between + more
    free = 1_000.0 / sum(at_block) * gain**sheaves
    assert hauling_pull_n(1_000.0, parts, sheaves) >= free - 1e-9
    ideal = 1_000.0 / parts
    assert hauling_pull_n(1_000.0, parts, sheaves) >= ideal
