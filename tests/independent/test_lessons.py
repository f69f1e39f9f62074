"""The explanation drawings against other libraries: scipy for the bound after passed pulls and for the hung load."""

import math
import random

import pytest
from scipy.optimize import minimize
from scipy.stats import beta, binomtest

from calc.figures.judging_lessons import chance_left_open
from calc.lifting.two_legs import two_leg_hang


@pytest.mark.parametrize("passes", [1, 2, 7, 31, 299])
def test_bound_against_scipy(passes):
    # One-sided Clopper-Pearson bound with no failure, two ways.
    exact = binomtest(0, passes, alternative="less").proportion_ci(0.95, method="exact").high
    assert chance_left_open(passes) == pytest.approx(exact, rel=1e-9)
    assert chance_left_open(passes) == pytest.approx(beta.ppf(0.95, 1, passes), rel=1e-9)


def test_hung_load_stands_where_its_energy_is_least():
    chance = random.Random(20261125)
    tried = 0
    while tried < 40:
        spread, left, right = chance.uniform(0.6, 3), chance.uniform(0.5, 4), chance.uniform(0.5, 4)
        centre, below = chance.uniform(0.1, 0.9) * spread, chance.uniform(0.0, 1.5)
        try:
            hang = two_leg_hang(spread, left, right, centre, below, 1000.0)
        except ValueError:
            continue
        tried += 1
        # Hook at the origin; the load free to swing about it with both legs taut: one angle, least height wins.
        arm = (centre - hang.hook_x_m, -below - hang.hook_y_m)

        def height(turn: list[float], arm: tuple[float, float] = arm) -> float:
            return arm[0] * math.sin(turn[0]) + arm[1] * math.cos(turn[0])

        found = minimize(height, [0.0], method="Nelder-Mead", options={"xatol": 1e-9, "fatol": 1e-12})
        assert math.degrees(found.x[0]) == pytest.approx(hang.tilt_deg, abs=1e-3)
