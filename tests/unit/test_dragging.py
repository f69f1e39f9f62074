"""Drawings to drag: every place is drawn, said and in order, and the first is what stands without a script."""

from __future__ import annotations

import math
import re

import pytest

from build_scripts.lessons.dragging import DRAGGED, FIRST_DEG, FLATTEST_DEG, leg_angle
from calc.trees import markup
from calc.words.writer import UnitSystem, Writer


@pytest.mark.parametrize("units", ["us", "si"])
@pytest.mark.parametrize("name", list(DRAGGED))
def test_every_place_moves_the_same_parts_and_says_something_else(name: str, units: UnitSystem) -> None:
    dragged = DRAGGED[name](Writer(units))
    first = dragged.places[dragged.first]
    drawn = markup(dragged.drawing)
    assert dict(re.findall(r'd="([^"]+)" data-part="([^"]+)"', drawn)) == {
        outline: part for part, outline in first.outlines.items()
    }
    assert len({place.said for place in dragged.places}) == len(dragged.places)
    assert all(set(place.outlines) == set(first.outlines) for place in dragged.places)
    downs = [place.down for place in dragged.places]
    assert downs == sorted(downs, reverse=True)
    assert all(0.0 < down < 1.0 for down in downs)


def test_the_leg_pulls_as_the_force_triangle_says() -> None:
    """Half of 2,000 lb over the sine, by hand: 1,414 lb at 45 degrees, 2,000 at 30, 1,155 at 60."""
    dragged = leg_angle(Writer("us"))
    for angle in (30, 45, 60):
        pull = 1000 / math.sin(math.radians(angle))
        said = dragged.places[angle - FLATTEST_DEG].said
        found = re.search(r"pulls ([\d,]+) lb", said)
        assert found is not None
        assert float(found.group(1).replace(",", "")) == pytest.approx(pull, abs=10)
        assert f"At {angle}°" in said
    assert dragged.first == FIRST_DEG - FLATTEST_DEG


def test_no_number_is_offered_below_the_flattest_leg() -> None:
    dragged = leg_angle(Writer("us"))
    for angle in range(FLATTEST_DEG, 30):
        assert "do not lift" in dragged.places[angle - FLATTEST_DEG].said
    assert "do not lift" not in dragged.places[30 - FLATTEST_DEG].said
