"""The drawings of the heat pages say in words what they draw."""

from __future__ import annotations

import re

import pytest

from build_scripts.lessons import lesson
from build_scripts.lessons.heat import HEAT_LESSONS
from calc.answering import answer
from calc.heating.weld_heat import WORKSHEET
from calc.words.writer import UnitSystem, Writer


@pytest.mark.parametrize("units", ["us", "si"])
@pytest.mark.parametrize("name", HEAT_LESSONS)
def test_each_drawing_stays_on_its_sheet(name: str, units: UnitSystem) -> None:
    drawn = lesson(name, Writer(units))
    places = [float(x) for x in re.findall(r'<(?:text|circle)[^>]* (?:x|cx)="(-?[\d.]+)"', drawn.svg)]
    assert places
    assert all(0 <= x <= 420 for x in places)


def test_hot_steel_keeps_what_the_eurocode_says() -> None:
    """EN 1993-1-2, table 3.1: 0.47 of the yield and 0.31 of the modulus at 600 C."""
    caption = lesson("steel-while-hot", Writer("si")).caption
    assert "600 °C" in caption
    assert "47%" in caption
    assert "31%" in caption


def test_the_bead_is_that_of_the_worksheet() -> None:
    caption = lesson("bead-anatomy", Writer("us")).caption
    results = answer("weld-heat", WORKSHEET.example, "us")["results"]
    drawn = re.search(r"The hard zone reaches to ([^,]+?) \(", caption)
    assert drawn is not None
    assert results["hard_edge"]["text"].startswith(drawn.group(1))
