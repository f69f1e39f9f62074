"""Holding a load by the forces, against a second method: bodies in balance, solved by linear programming."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq, linprog

from calc.hauling.friction import moving_share
from calc.hauling.lashing_forces import (
    DIRECTIONS,
    FAR_LEG,
    Direct,
    Direction,
    Held,
    OverTop,
    direct_hold_n,
    pulls_sliding_n,
    safety_factor,
    sliding,
    sliding_share,
    straps_needed,
    tipping,
    tipping_share,
)

WAY = {"forward": (1.0, 0.0), "rearward": (-1.0, 0.0), "left": (0.0, 1.0), "right": (0.0, -1.0)}
LENGTHS = st.floats(0.05, 3.0)
CORNERS = st.tuples(LENGTHS, LENGTHS, LENGTHS, st.floats(1e3, 5e4))


def corners(sizes: tuple[float, float, float, float]) -> tuple[Direct, ...]:
    """Four like lashings, one to each corner."""
    along, across, down, limit = sizes
    return tuple(Direct(sx * along, sy * across, down, limit) for sx in (1, -1) for sy in (1, -1))


def most_push_n(held: Held, direction: Direction, friction: float) -> float:
    """The largest push that a sliding block with these pulls withstands: a linear program over pulls, normal force, friction
    and push, with pulls between nothing and their limit.
    """
    way = WAY[direction]
    effects = [-(one.forward_m * way[0] + one.left_m * way[1]) / one.length_m for one in held.direct]
    down = [one.down_m / one.length_m for one in held.direct]
    count = len(held.direct)
    # Unknown: pulls, normal force, friction force, push. Pulls that help the move may stay slack.
    balance_along = [*effects, 0.0, 1.0, -1.0]
    balance_down = [*down, -1.0, 0.0, 0.0]
    grips = [*([0.0] * count), -friction, 1.0, 0.0]
    found = linprog(
        [0.0] * (count + 2) + [-1.0],
        A_ub=[grips],
        b_ub=[0.0],
        A_eq=[balance_along, balance_down],
        b_eq=[0.0, -held.weight_n],
        bounds=[
            *(
                (0.0, one.limit_n if effect > 0 else 0.0)
                for one, effect in zip(held.direct, effects, strict=True)
            ),
            (0, None),
            (0, None),
            (0, None),
        ],
    )
    return float(-found.fun)


@settings(max_examples=40, deadline=None)
@given(sizes=CORNERS, weight_n=st.floats(1e3, 2e5), friction=st.floats(0.1, 0.7))
def test_like_lashings_hold_what_a_linear_program_finds(
    sizes: tuple[float, float, float, float], weight_n: float, friction: float
) -> None:
    held = Held(weight_n, friction, 1.0, 1.0, 1.0, 2.0, direct=corners(sizes))
    for direction in DIRECTIONS:
        moving = most_push_n(held, direction, moving_share() * friction)
        assert sliding(held, direction).held == pytest.approx(max(moving, friction * weight_n), rel=1e-6)


@settings(max_examples=60, deadline=None)
@given(one=CORNERS, other=CORNERS, friction=st.floats(0.0, 0.6))
def test_unlike_lashings_never_hold_more_than_the_sum(
    one: tuple[float, float, float, float], other: tuple[float, float, float, float], friction: float
) -> None:
    """Sharing by stretch is a bound from below: the linear program lets every lashing reach its limit at once."""
    direct = (*corners(one), *corners(other))
    held = Held(1.0, friction, 1.0, 1.0, 1.0, 2.0, direct=direct)
    for direction in DIRECTIONS:
        most = most_push_n(held, direction, moving_share() * friction)
        assert direct_hold_n(held, direction) <= most * (1 + 1e-6) + 1e-3


ANY_LASHING = st.builds(
    Direct,
    forward_m=st.integers(-30, 30).map(lambda tenths: tenths / 10),
    left_m=st.integers(-30, 30).map(lambda tenths: tenths / 10),
    down_m=LENGTHS,
    limit_n=st.floats(1e3, 5e4),
)


@settings(max_examples=80, deadline=None)
@given(direct=st.lists(ANY_LASHING, min_size=1, max_size=5), friction=st.floats(0.0, 0.6))
def test_lashings_askew_hold_what_a_program_in_balance_to_the_sides_finds(
    direct: list[Direct], friction: float
) -> None:
    """Pulls between nothing and what each has by its stretch, none to the sides left over: the most that they hold."""
    held = Held(1.0, friction, 1.0, 1.0, 1.0, 2.0, direct=tuple(direct))
    for direction in DIRECTIONS:
        way, square = np.array(WAY[direction]), np.array([WAY[direction][1], WAY[direction][0]])
        level = np.array([(one.forward_m, one.left_m) for one in direct])
        lengths = np.array([one.length_m for one in direct])
        down = np.array([one.down_m for one in direct])
        holds = (-level @ way + moving_share() * friction * down) / lengths
        found = linprog(
            -holds,
            A_eq=[(level @ square) / lengths],
            b_eq=[0.0],
            bounds=[(0.0, most) for most in pulls_sliding_n(direct, direction)],
        )
        assert direct_hold_n(held, direction) == pytest.approx(-found.fun, rel=1e-6, abs=1e-3)


def test_two_chains_to_the_left_hold_nothing_forward() -> None:
    """Both pull the load to the left and nothing pulls it back: with friction 0.5 in whatever direction it acts, no pull F of
    the rear one, at 45 degrees, leaves less than 0.5 of the weight: the least of (0.8 - F)^2 + F^2 is 0.566 squared.
    """
    rear, front = Direct(-1.0, 1.0, 0.1, 1e6), Direct(1.0, 1.0, 0.1, 1e6)
    held = Held(1e4, 0.5, 1.0, 1.0, 1.0, 2.0, direct=(rear, front))
    pulls = np.linspace(0.0, 2.0, 2001)
    assert np.min(np.hypot(0.8 - pulls, pulls)) > 0.5
    balance = sliding(held, "forward")
    assert balance.held == pytest.approx(0.5e4)
    assert balance.used > 1.0


@settings(max_examples=60, deadline=None)
@given(one=CORNERS, other=CORNERS)
def test_sharing_follows_from_true_lengths(
    one: tuple[float, float, float, float], other: tuple[float, float, float, float]
) -> None:
    """A second method for the sharing: move the load a little, measure each lashing's new length in three dimensions, and
    let each pull in proportion to its strain; the first to reach its limit sets the move.
    """
    direct = (corners(one)[0], corners(other)[0])
    step = 1e-7

    def strain(lashing: Direct) -> float:
        moved = np.array([lashing.forward_m + step, lashing.left_m, lashing.down_m])
        return (float(np.linalg.norm(moved)) - lashing.length_m) / lashing.length_m

    strains = [strain(lashing) for lashing in direct]
    wanted = [lashing.limit_n * one / max(strains) for lashing, one in zip(direct, strains, strict=True)]
    assert pulls_sliding_n(direct, "rearward") == pytest.approx(wanted, rel=1e-4)


@settings(max_examples=40, deadline=None)
@given(sizes=CORNERS, centre=st.floats(0.2, 3.0), edge=st.floats(0.05, 2.0), weight_n=st.floats(1e3, 1e5))
def test_tipping_is_the_moment_of_the_forces_about_the_edge(
    sizes: tuple[float, float, float, float], centre: float, edge: float, weight_n: float
) -> None:
    """Moments as cross products of arms and forces in space; the upright part of each pull is taken out of them."""
    held = Held(weight_n, 0.3, centre, edge, edge, 2 * edge, direct=corners(sizes))
    for direction in DIRECTIONS:
        way = np.array([*WAY[direction], 0.0])
        axis = np.cross([0.0, 0.0, 1.0], way)
        edge_at = edge * way
        push = np.cross(np.array([0.0, 0.0, centre]) - edge_at, tipping_share(direction) * weight_n * way)
        weight = np.cross(np.array([0.0, 0.0, centre]) - edge_at, [0.0, 0.0, -weight_n])
        asked = float(axis @ (push + weight))
        balance = tipping(held, direction)
        assert balance.asked == pytest.approx(asked, rel=1e-9, abs=1e-6 * weight_n)
        against = [one for one in held.direct if one.against(direction) > 0]
        wanted = -sum(
            float(
                axis
                @ np.cross(
                    np.array([0.0, 0.0, one.down_m]) - edge_at,
                    one.limit_n / one.length_m * np.array([one.forward_m, one.left_m, 0.0]),
                )
            )
            for one in against
        )
        assert balance.held == pytest.approx(wanted, rel=1e-9)
        assert balance.used == pytest.approx(max(0.0, asked) / wanted, rel=1e-6, abs=1e-9)


@settings(max_examples=60, deadline=None)
@given(tension=st.floats(100, 6000), across=st.floats(0, 2), down=st.floats(0.2, 3), width=st.floats(0.3, 3))
def test_a_strap_over_the_top_against_tipping(
    tension: float, across: float, down: float, width: float
) -> None:
    """The pulls at both top edges as vectors, their moment about the lower edge on the side to which it tips."""
    strap = OverTop(tension, across, down)
    length = math.hypot(across, down)
    near = tension * np.array([across, -down]) / length
    far = FAR_LEG * tension * np.array([-across, -down]) / length

    def moment(at: tuple[float, float], force: np.ndarray) -> float:
        return float(at[0] * force[1] - at[1] * force[0])

    total = moment((0.0, down), near) + moment((-width, down), far)
    assert strap.holds_upright_nm(width) == pytest.approx(max(0.0, total), rel=1e-9, abs=1e-6)


@pytest.mark.parametrize("direction", DIRECTIONS)
@pytest.mark.parametrize("friction", [0.1, 0.2, 0.3, 0.45])
def test_the_exact_number_of_straps_just_balances(direction: Direction, friction: float) -> None:
    """The count as the root of the balance in which friction holds the load and its pressed straps."""
    strap, weight_n = OverTop(3000.0, 0.2, 1.0), 20_000.0

    def left_over(number: float) -> float:
        pressed = number * strap.presses_n() / safety_factor(direction)
        return friction * (weight_n + pressed) - sliding_share(direction) * weight_n

    root = brentq(left_over, 0.0, 1e4)
    found = straps_needed(weight_n, friction, strap, direction)
    assert found.exact == pytest.approx(root, rel=1e-9)
    assert found.number == max(2, math.ceil(root - 1e-9))
    held = Held(weight_n, friction, 0.1, 1.0, 1.0, 2.0, over=(strap,) * found.number)
    assert sliding(held, direction).used <= 1.0 + 1e-9
