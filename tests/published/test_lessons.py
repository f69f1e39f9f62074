"""A printed answer for what the drawings of hung loads show."""

import pytest

from build_scripts.lessons.lifting import two_leg_hang


def test_unequal_legs_of_bansal() -> None:
    # Bansal, Engineering Mechanics, page 13, example 1.7 (read in a textbook companion): 1,000 N on chains at 30 and
    # 60 degrees from the horizontal: 500 N and 866.03 N. Legs 2 cos 30 and 2 cos 60 long over a spread of 2 stand so.
    hang = two_leg_hang(2.0, 2.0 * 3**0.5 / 2, 1.0, 1.5, 0.37, 1000.0)
    assert hang.left_angle_deg == pytest.approx(30.0)
    assert hang.right_angle_deg == pytest.approx(60.0)
    assert hang.left_tension_n == pytest.approx(500.0, abs=0.005)
    assert hang.right_tension_n == pytest.approx(866.03, abs=0.005)
