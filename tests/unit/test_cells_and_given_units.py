"""How a printed value is set, and that what was read knows the reader's order of units."""

from __future__ import annotations

from typing import Any

import pytest

from calc.inputs import Reading, TextInput, read_inputs
from calc.words.facts import Cell
from calc.words.writer import UnitSystem, Writer


@pytest.mark.parametrize(
    ("value", "unit", "spans"),
    [
        ("38-5/8", "in", [["n", [["f", "38-5/8"], " in"]]]),
        ("−3-1/2", "in", [["n", [["f", "−3-1/2"], " in"]]]),
        ("1,234-5/8", "in", [["n", [["f", "1,234-5/8"], " in"]]]),
        ("4,860", "lb", [["n", ["4,860", " lb"]]]),
        ("3/4", "short_ton", [["n", [["f", "3/4"], " short ", "ton"]]]),
        ("1", "short_ton", [["n", ["1", " short ", "ton"]]]),
        ("0", "short_ton", [["n", ["0", " short ", "tons"]]]),
        ("A/B", "", ["A/B"]),
    ],
)
def test_a_fraction_is_set_as_one_whatever_its_sign_and_size_and_tons_are_counted(
    value: str, unit: str, spans: Any
) -> None:
    assert Writer().write(Cell(value, unit)) == spans


@pytest.mark.parametrize("units", ["us", "si"])
def test_what_was_read_knows_the_order_of_units(units: UnitSystem) -> None:
    given = read_inputs((TextInput("log"),), {"log": "1"}, Reading(units, lambda path, value: value))
    assert given.units == units
