"""Printed answers for what the explanation drawings show."""

import pytest

from calc.figures.judging_lessons import chance_left_open
from calc.figures.lifting_lessons import drop_factor
from calc.lifting.two_legs import two_leg_hang


@pytest.mark.parametrize(("ratio", "printed"), [(0.0, 2.00), (2.5, 3.45), (7.5, 5.00), (10.0, 5.58)])
def test_impact_factors_of_gere(ratio, printed):
    # Gere, Mechanics of Materials, 7th edition, solutions, problem 9.10-1: printed to two decimals. (At 5.0 the
    # solution prints 4.33 where the formula gives 4.317.)
    assert drop_factor(ratio) == pytest.approx(printed, abs=0.005)


def test_unequal_legs_of_bansal():
    # Bansal, Engineering Mechanics, page 13, example 1.7 (read in a textbook companion): 1,000 N on chains at 30 and
    # 60 degrees from the horizontal: 500 N and 866.03 N. Legs 2 cos 30 and 2 cos 60 long over a spread of 2 stand so.
    hang = two_leg_hang(2.0, 2.0 * 3**0.5 / 2, 1.0, 1.5, 0.37, 1000.0)
    assert hang.left_angle_deg == pytest.approx(30.0)
    assert hang.right_angle_deg == pytest.approx(60.0)
    assert hang.left_tension_n == pytest.approx(500.0, abs=0.005)
    assert hang.right_tension_n == pytest.approx(866.03, abs=0.005)


@pytest.mark.parametrize("passes", [30, 100, 300, 1000])
def test_rule_of_three(passes):
    # The rule of three of medical statistics (Hanley and Lippman-Hand, JAMA 1983, from memory): after n trials with no
    # event the 95 percent upper bound is about 3/n, for n of 30 and more.
    assert chance_left_open(passes) == pytest.approx(3 / passes, rel=0.06)
