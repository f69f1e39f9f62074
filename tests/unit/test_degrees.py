"""Degrees as they are read: whole ones of both scales, and differences, which know no freezing point."""

from __future__ import annotations

import pytest

from calc.quantities import fixed_text, read_quantity
from calc.words.facts import Quantity, degrees
from calc.words.writer import Writer


@pytest.mark.parametrize(
    ("degc", "us", "si"),
    [
        (204.44, "400 °F (204 °C)", "204 °C (400 °F)"),
        (-40.0, "−40 °F (−40 °C)", "−40 °C (−40 °F)"),
        (1510.0, "2,750 °F (1,510 °C)", "1,510 °C (2,750 °F)"),
    ],
)
def test_a_temperature_reads_in_whole_degrees(degc: float, us: str, si: str) -> None:
    assert Writer("us").plain(degrees(degc)) == us
    assert Writer("si").plain(degrees(degc)) == si


def test_whole_degrees_follow_their_safe_side() -> None:
    """A heat that a part is out at reads down, so that nobody is told to go on a degree too far."""
    assert Writer("si").plain(degrees(204.9, "out_at")) == "204 °C (400 °F)"
    assert Writer("si").plain(degrees(204.1, "demand")) == "205 °C (400 °F)"
    assert Writer("si").plain(degrees(205.0, "demand")) == "205 °C (401 °F)"


def test_a_difference_has_the_size_of_a_degree_and_no_freezing_point() -> None:
    """One degree Celsius is 9/5 degree Fahrenheit; 180 K of warming is 324 degrees Fahrenheit."""
    rise = Quantity(180.0, "temperature_difference", places=0)
    assert Writer("us").plain(rise) == "324 °F (180 °C)"
    assert read_quantity("324 °F", "temperature_difference", "delta_degC").value_si == pytest.approx(180.0)
    assert read_quantity("12", "temperature_difference", "delta_degC").value_si == 12.0
    assert read_quantity("2 K", "temperature_difference", "delta_degC").value_si == 2.0


@pytest.mark.parametrize(
    ("value", "places", "direction", "text"),
    [
        (0.2, 0, "nearest", "0"),
        (-0.2, 0, "nearest", "0"),
        (2.0, 1, "nearest", "2.0"),
        (-40.0, 1, "nearest", "−40.0"),
        (3.0000000001, 0, "up", "3"),
        (3.01, 0, "up", "4"),
        (3.99, 0, "down", "3"),
        (-0.05, 1, "down", "−0.1"),
        (1234.56, 1, "up", "1,234.6"),
    ],
)
def test_fixed_places(value: float, places: int, direction: str, text: str) -> None:
    assert fixed_text(value, places, direction) == text


def test_own_units_keep_whole_degrees() -> None:
    assert Writer("us").own(degrees(204.44)) == "400 °F"
