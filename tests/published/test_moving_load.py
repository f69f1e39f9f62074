"""moving-load: figures of a law and of a guideline, and the hoisting classes of two standards, which agree with each other."""

from __future__ import annotations

import math

import pytest

from calc.lifting.hoisting import HAND_FACTOR, class_factors, law_factor, least_stretch_m, sudden_jerk_n
from calc.pulling.energy import drop_factor

G = 9.80665


@pytest.mark.parametrize(
    ("feet_a_minute", "percent"), [(10, 15), (29.9, 15), (30, 15), (50, 25), (80, 40), (100, 50), (250, 50)]
)
def test_allowance_by_speed(feet_a_minute: float, percent: float) -> None:
    """Minnesota Rules 1305.1607, subpart 2, item A: at least 15 percent below 30 ft/min, half a percent for each ft/min up to 100
    ft/min, 50 percent above; none for a hand chain hoist.
    """
    assert law_factor(feet_a_minute * 0.00508) == pytest.approx(1 + percent / 100)


def test_a_hand_chain_hoist_is_counted_as_any_lift_on_land() -> None:
    """0027/ND, Table 5-1, onshore, 3 to 100 t: 1.10."""
    assert HAND_FACTOR == 1.10


@pytest.mark.parametrize("metres_a_minute", [0.0, 8.0, 20.0, 63.0, 90.0])
def test_hoisting_classes_of_two_standards(metres_a_minute: float) -> None:
    """EN 13001-2 (HC1 and HC4) never parts by more than 0.2 from the class that it took over from DIN 15018 (H1: 1.1 + 0.0022 v, H4: 1.4 + 0.0088 v,
    v in m/min up to 90), both from memory.
    """
    low, high = class_factors(metres_a_minute / 60)
    assert low == pytest.approx(1.1 + 0.0022 * metres_a_minute, abs=0.06)
    assert high == pytest.approx(1.4 + 0.0088 * metres_a_minute, abs=0.21)


def test_a_load_caught_at_the_speed_of_its_fall() -> None:
    """Gere, Mechanics of Materials, 2.8, impact factor 1 + sqrt(1 + 2h / d): a fall that ends taut at rest height adds
    sqrt(v^2 / (g d) + 1); a hook that moves at v with the string already loaded adds v / sqrt(g d), so the squares part by 1.
    """
    for height, give in ((0.010, 0.002), (0.05, 0.01), (0.2, 0.004)):
        speed = math.sqrt(2 * G * height)
        jerk = sudden_jerk_n(1.0, speed, give) / G
        assert (drop_factor(height, give) - 1) ** 2 == pytest.approx(jerk**2 + 1)


def test_rope_of_a_lift_at_sea() -> None:
    """0027/ND, 5.6.13: 80,000 N/mm2 on 0.785 d^2. A leg of 3 m of 10 mm rope under 10 kN stretches 4.8 mm, so that a leg 5 mm
    longer carries nothing.
    """
    assert least_stretch_m(10_000 / G, "wire-rope", 0.010, 3.0) == pytest.approx(0.0048, abs=5e-5)
    assert least_stretch_m(10_000 / G, "wire-rope", 0.010, 3.0) < 0.005
