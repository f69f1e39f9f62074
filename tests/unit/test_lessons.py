"""The drawings of the explanation pages: laws of what they show, words that say the same, nothing off the sheet."""

import math
import re
import xml.etree.ElementTree as ElementTree
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from build_scripts.lessons import LESSONS, lesson
from build_scripts.lessons.judging import passes_needed, rope_valley_share
from build_scripts.lessons.lifting import two_leg_hang
from calc.pulling.statistics_of_few import failure_bound
from calc.words.writer import UnitSystem, Writer

SVG = "{http://www.w3.org/2000/svg}"
LETTER_WIDTH = 0.45
"""Mean width of a letter over its size [-]: the widest words on the sheets measured 0.42 in the book's condensed face."""


@pytest.mark.parametrize("units", ["us", "si"])
@pytest.mark.parametrize("name", list(LESSONS))
def test_drawing_is_valid_finite_and_says_itself_in_words(name: Any, units: UnitSystem) -> None:
    drawn = lesson(name, Writer(units))
    root = ElementTree.fromstring(drawn.svg)
    assert root.findtext(f"{SVG}title") == drawn.caption
    assert len(drawn.caption) > 60
    assert not re.search(r"nan|inf\b", drawn.svg)
    assert "  " not in drawn.caption


@pytest.mark.parametrize("units", ["us", "si"])
@pytest.mark.parametrize("name", list(LESSONS))
def test_no_word_or_line_runs_off_the_sheet(name: Any, units: UnitSystem) -> None:
    root = ElementTree.fromstring(lesson(name, Writer(units)).svg)
    _, _, width, height = (float(part) for part in root.attrib["viewBox"].split())
    for text in root.iter(f"{SVG}text"):
        size = {"strong": 16, "small": 12}.get(text.get("class", ""), 14)
        wide = len(text.text or "") * size * LETTER_WIDTH
        x, y = float(text.attrib["x"]), float(text.attrib["y"])
        left = {"start": x, "middle": x - wide / 2, "end": x - wide}[text.attrib["text-anchor"]]
        assert left > -4, text.text
        assert left + wide < width + 4, text.text
        assert size * 0.6 < y < height, text.text
    for path in root.iter(f"{SVG}path"):
        numbers = [float(n) for n in re.findall(r"-?\d+\.\d+", path.attrib["d"])]
        assert all(-1 <= x <= width + 1 for x in numbers[::2])
        assert all(-1 <= y <= height + 1 for y in numbers[1::2])


# ------------------------------------------------------------------------------------------------- two legs


def test_equal_legs_over_the_middle_hang_level_and_share() -> None:
    hang = two_leg_hang(1.7, 1.3, 1.3, 0.85, 0.4, 1000.0)
    assert hang.tilt_deg == pytest.approx(0.0, abs=1e-12)
    assert hang.left_tension_n == pytest.approx(hang.right_tension_n)


def test_the_heavy_end_goes_down_and_its_leg_pulls_more() -> None:
    hang = two_leg_hang(1.7, 1.3, 1.3, 0.5, 0.4, 1000.0)
    assert hang.tilt_deg > 0
    assert hang.left_tension_n > hang.right_tension_n


def test_the_end_of_the_longer_leg_hangs_lower() -> None:
    assert two_leg_hang(1.7, 1.3, 1.45, 0.85, 0.4, 1000.0).tilt_deg < 0


# --------------------------------------------------------------------------------------------------- passes


@given(st.floats(1e-5, 0.9))
def test_passes_needed_is_the_least_number(chance: Any) -> None:
    needed = passes_needed(chance)
    assert failure_bound(needed) <= chance * (1 + 1e-9)
    if needed > 1:
        assert failure_bound(needed - 1) > chance * (1 - 1e-9)


def test_a_rope_measured_over_its_valleys_reads_as_the_gap_between_two_flats() -> None:
    # The same width found the long way: the extreme points of six circles turned by half a pitch.
    centres = [math.radians(60 * k + 30) for k in range(6)]
    widest = max(math.cos(a) for a in centres) + 0.5
    assert rope_valley_share() == pytest.approx(2 * widest / 3.0)
