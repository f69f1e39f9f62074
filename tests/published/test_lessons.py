"""A printed answer for what the drawings of hung loads show."""

import pytest

from build_scripts.lessons.frames import part_left, tips_deg
from build_scripts.lessons.lifting import two_leg_hang
from build_scripts.lessons.values import value
from calc.words.facts import Quantity


def test_unequal_legs_of_bansal() -> None:
    # Bansal, Engineering Mechanics, page 13, example 1.7 (read in a textbook companion): 1,000 N on chains at 30 and
    # 60 degrees from the horizontal: 500 N and 866.03 N. Legs 2 cos 30 and 2 cos 60 long over a spread of 2 stand so.
    hang = two_leg_hang(2.0, 2.0 * 3**0.5 / 2, 1.0, 1.5, 0.37, 1000.0)
    assert hang.left_angle_deg == pytest.approx(30.0)
    assert hang.right_angle_deg == pytest.approx(60.0)
    assert hang.left_tension_n == pytest.approx(500.0, abs=0.005)
    assert hang.right_tension_n == pytest.approx(866.03, abs=0.005)


def test_what_the_page_on_throats_says() -> None:
    """AISC Manual (from memory): 0.928 kip for each sixteenth of leg and inch of E70 fillet; its throat is 0.707 of its leg."""
    allowed, throat = value("weld-inch"), value("weld-throat")
    assert isinstance(allowed, Quantity)
    assert isinstance(throat, Quantity)
    assert allowed.value_si / 4.4482216152605 == pytest.approx(4 * 928, rel=1e-3)
    assert throat.value_si / 0.0254 == pytest.approx(0.707 / 4, rel=1e-3)


def test_half_as_wide_as_high_tips_at_fourteen_degrees() -> None:
    """A trade text: base over height 0.5 tips at 14 degrees without the frame's weight."""
    assert round(tips_deg(0.5)) == 14
    assert part_left(2) == pytest.approx(1.0)
    assert part_left(7) > part_left(14) > part_left(21)
