"""moving-load against the equation of motion, integrated: a load on a spring, whose upper end does what the hoist does."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest
from scipy.integrate import solve_ivp

from calc.lifting.hoisting import even_acceleration, even_jerk_n, sudden_jerk_n

G = 9.80665


def pulls_n(
    load_kg: float,
    give_m: float,
    hook_m: Callable[[float], float],
    started: tuple[float, float],
    lasts_s: float,
) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """The pull in the string over time [N]: m x'' = pull - W, pull = k (hook - x), none while it is slack. `started` is place and
    speed of the load; the string is as long as nothing.
    """
    stiffness = load_kg * G / give_m

    def pull(time_s: float, load_m: float) -> float:
        return max(0.0, stiffness * (hook_m(time_s) - load_m))

    times = np.linspace(0.0, lasts_s, 6000)
    solved = solve_ivp(
        lambda time_s, state: [state[1], pull(time_s, state[0]) / load_kg - G],
        (0.0, lasts_s),
        list(started),
        t_eval=times,
        rtol=1e-9,
        atol=1e-12,
        max_step=lasts_s / 2000,
    )
    return np.array([pull(time_s, place) for time_s, place in zip(solved.t, solved.y[0], strict=True)])


def period_s(give_m: float) -> float:
    return 2 * math.pi * math.sqrt(give_m / G)


@pytest.mark.parametrize("give_m", [0.0008, 0.01, 0.12])
@pytest.mark.parametrize("speed", [0.03, 0.2, 1.2])
def test_lowered_and_stopped_at_once(speed: float, give_m: float) -> None:
    load = 640.0
    pulls = pulls_n(load, give_m, lambda _time: 0.0, (-give_m, -speed), 1.3 * period_s(give_m))
    assert float(pulls.max()) == pytest.approx(load * G + sudden_jerk_n(load, speed, give_m), rel=2e-4)


@pytest.mark.parametrize("give_m", [0.0008, 0.01, 0.12])
@pytest.mark.parametrize("speed", [0.03, 0.2])
def test_slack_taken_up_at_speed(speed: float, give_m: float) -> None:
    """The load lies on the floor until the pull is its weight; from then on the hook runs on at its speed."""
    load = 640.0
    pulls = pulls_n(load, give_m, lambda time: speed * time, (-give_m, 0.0), 1.3 * period_s(give_m))
    assert float(pulls.max()) == pytest.approx(load * G + sudden_jerk_n(load, speed, give_m), rel=2e-4)


@pytest.mark.parametrize("give_m", [0.002, 0.02])
@pytest.mark.parametrize("speed", [0.4, 1.0])
def test_hoisted_and_stopped_at_once_jumps_and_falls_back_as_hard(speed: float, give_m: float) -> None:
    """Faster than sqrt(g d) the load jumps off its slack string and falls back into it with the energy that it had."""
    load = 640.0
    flight = 2 * speed / G
    pulls = pulls_n(load, give_m, lambda _time: 0.0, (-give_m, speed), flight + 1.5 * period_s(give_m))
    most = load * G + sudden_jerk_n(load, speed, give_m)
    assert float(pulls.max()) == pytest.approx(most, rel=2e-3)


@pytest.mark.parametrize("give_m", [0.0008, 0.01, 0.12])
@pytest.mark.parametrize("distance", [0.004, 0.03, 0.4])
def test_an_even_stop_is_under_both_bounds(distance: float, give_m: float) -> None:
    load, speed = 640.0, 0.25
    gain = even_acceleration(speed, distance)
    stopped = speed / gain

    def hook(time: float) -> float:
        """Lowered at `speed`, slowed evenly, then still."""
        until = min(time, stopped)
        return -speed * until + gain * until**2 / 2

    pulls = pulls_n(load, give_m, hook, (-give_m, -speed), stopped + 1.3 * period_s(give_m))
    bound = min(even_jerk_n(load, gain), sudden_jerk_n(load, speed, give_m))
    over = float(pulls.max()) - load * G
    assert over <= bound * (1 + 2e-4)
    # An even stop over half a swing or more reaches twice m a; a shorter one what a half sine of its length makes of it.
    swing = math.sin(min(math.pi / 2, math.pi * stopped / period_s(give_m)))
    assert over == pytest.approx(even_jerk_n(load, gain) * swing, rel=2e-3)


@pytest.mark.parametrize("seed", range(6))
def test_no_single_change_of_speed_jerks_more_than_one_at_once(seed: int) -> None:
    """Speeds that only fall, in steps at random, from lowering to still."""
    random = np.random.default_rng(seed)
    load, speed, give_m = 640.0, 0.3, 0.01
    whole = period_s(give_m)
    ends = np.sort(random.uniform(0.0, 2 * whole, 5))
    falls = random.dirichlet(np.ones(5)) * speed

    def hook(time: float) -> float:
        return -speed * time + float(np.sum(falls * np.maximum(0.0, time - ends)))

    pulls = pulls_n(load, give_m, hook, (-give_m, -speed), 4 * whole)
    assert float(pulls.max()) <= (load * G + sudden_jerk_n(load, speed, give_m)) * (1 + 1e-4)
