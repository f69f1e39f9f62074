"""The drawings of hung loads against a search for the least height of the balance point (scipy)."""

import math
import random

import pytest
from scipy.optimize import minimize

from build_scripts.lessons.lifting import two_leg_hang


def test_hung_load_stands_where_its_energy_is_least() -> None:
    chance = random.Random(20261125)
    tried = 0
    while tried < 40:
        spread, left, right = chance.uniform(0.6, 3), chance.uniform(0.5, 4), chance.uniform(0.5, 4)
        centre, below = chance.uniform(0.1, 0.9) * spread, chance.uniform(0.0, 1.5)
        if not abs(left - right) < 0.6 * spread < 0.5 * (left + right):
            continue
        hang = two_leg_hang(spread, left, right, centre, below, 1000.0)
        if min(hang.left_tension_n, hang.right_tension_n) <= 0:
            continue
        tried += 1
        # Hook at the origin; the load free to swing about it with both legs taut: one angle, least height wins.
        arm = (centre - hang.hook_x_m, -below - hang.hook_y_m)

        def height(turn: list[float], arm: tuple[float, float] = arm) -> float:
            return arm[0] * math.sin(turn[0]) + arm[1] * math.cos(turn[0])

        found = minimize(height, [0.0], method="Nelder-Mead", options={"xatol": 1e-9, "fatol": 1e-12})
        assert math.degrees(found.x[0]) == pytest.approx(hang.tilt_deg, abs=1e-3)
