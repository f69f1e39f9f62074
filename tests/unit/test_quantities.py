"""Reading what people type and writing what people read."""

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.quantities import (
    NotReadable,
    Reading,
    dimension_of,
    find_unit,
    fraction_text,
    from_si,
    needs_echo,
    number_text,
    plain_number,
    read_quantity,
    round_to,
    show,
    show_in,
    to_si,
    unit_text,
    with_unit,
)
from calc.unit_factors import UNIT_FACTORS

# what is typed, dimension, default unit, value, in unit
READS = [
    ("38 5/8 in", "length", "mm", 38.625, "in"),
    ('38-5/8"', "length", "mm", 38.625, "in"),
    ("38-5/8", "length", "in", 38.625, "in"),
    ("5'-3\"", "length", "in", 63, "in"),
    ("5' 3 1/2\"", "length", "mm", 63.5, "in"),
    ("5 ft 3 in", "length", "mm", 63, "in"),
    ("5ft3in", "length", "mm", 63, "in"),
    ("-5 ft 3 in", "length", "mm", -63, "in"),
    ("1 1/2 t", "weight", "lb", 1500, "kg"),
    ("1½ t", "weight", "lb", 1500, "kg"),
    ("4,860 lb", "weight", "kg", 4860, "lb"),
    ("4.86k lb", "weight", "kg", 4860, "lb"),
    ("4.86k", "weight", "lb", 4860, "lb"),
    ("4.86K lbs", "weight", "kg", 4860, "lb"),
    ("4 860 kg", "weight", "lb", 4860, "kg"),
    ("4\u202f860 kg", "weight", "lb", 4860, "kg"),
    ("12 100", "weight", "lb", 12100, "lb"),
    ("2 short tons", "weight", "kg", 4000, "lb"),
    ("3 short tons", "weight", "kg", 6000, "lb"),
    ("5#", "weight", "kg", 5, "lb"),
    ("300 mm", "length", "in", 0.3, "m"),
    ("0,250", "length", "m", 250, "mm"),
    (",5 m", "length", "in", 500, "mm"),
    ("1,5", "length", "mm", 1.5, "mm"),
    ("1.234,5 mm", "length", "in", 1234.5, "mm"),
    ("1,234.5 mm", "length", "in", 1234.5, "mm"),
    ("12,5000", "length", "mm", 12.5, "mm"),
    ("1e3 lb", "weight", "kg", 1000, "lb"),
    ("200 bar", "pressure", "psi", 20, "MPa"),
    ("3,000 psi", "pressure", "bar", 3, "ksi"),
    ("250 N/mm²", "pressure", "psi", 250, "MPa"),
    ("30°", "angle", "deg", 30, "deg"),
    ("600 °F", "temperature", "degC", 600, "degF"),
    ("600 deg F", "temperature", "degC", 600, "degF"),
    ("316 C", "temperature", "degF", 316, "degC"),
    ("500°", "temperature", "degF", 500, "degF"),
    ("300 K", "temperature", "degF", 26.85, "degC"),
    ("−40", "temperature", "degC", -40, "degF"),
    ("10 lb·ft", "torque", "N.m", 120, "lbf.in"),
    ("10 ft-lb", "energy", "J", 120, "in.lbf"),
    ("490 lb/ft³", "density", "kg/m3", 490, "lb/ft3"),
    ("12 sq ft", "area", "in2", 1728, "in2"),
    ("1 kJ/mm", "heat_input", "kJ/in", 25.4, "kJ/in"),
    ("12 in.", "length", "mm", 1, "ft"),
    ("10%", "fraction", "ratio", 0.1, "ratio"),
    ("500 lb", "force", "kN", 500, "lbf"),
    ("10 kN", "weight", "lb", 10000 / 9.80665, "kg"),
    (" 42 ", "weight", "kg", 42, "kg"),
    (42, "weight", "kg", 42, "kg"),
    (0.25, "length", "in", 0.25, "in"),
    ("+3/8", "length", "in", 0.375, "in"),
    ("1 t 250 kg", "weight", "lb", 1250, "kg"),
    ("6 ft 2", "length", "mm", 74, "in"),
    ("6' 2-1/2", "length", "mm", 74.5, "in"),
    ("6'-2", "length", "mm", 74, "in"),
    ("1.125 in", "length", "mm", 1.125, "in"),
    ("1.125", "length", "in", 1.125, "in"),
    ("0.375 lb", "weight", "kg", 0.375, "lb"),
    ("1.500k lb", "weight", "kg", 1500, "lb"),
    ("1.5000 kg", "weight", "lb", 1.5, "kg"),
    ("7.850 g/cm3", "density", "kg/m3", 7850, "kg/m3"),
    ("90 celsius", "temperature", "degF", 90, "degC"),
    ("90 Fahrenheit", "temperature", "degC", 90, "degF"),
    ("90 degrees Celsius", "temperature", "degF", 90, "degC"),
    ("50 gon", "angle", "deg", 45, "deg"),
    ("0.4 %", "fraction", "%", 0.004, "ratio"),
    ("0", "fraction", "%", 0, "ratio"),
    ("1-1/2", "fraction", "%", 0.015, "ratio"),
    ("2 t", "weight", "lb", 2000, "kg"),
    ("2 metric tons", "weight", "lb", 2000, "kg"),
]


TWO_READINGS = [
    ("1.500 kg", "weight", "lb", "can be read as 1,500 kg or as 1.5 kg"),
    ("1.200", "weight", "lb", "can be read as 1,200 lb or as 1.2 lb"),
    ("12.345 kN", "force", "lbf", "can be read as 12,345 kN or as 12.345 kN"),
    ("9.525 mm", "length", "in", "can be read as 9,525 mm or as 9.525 mm"),
    ("1.500 t 2.500 kg", "weight", "lb", "can be read as 1,500 t"),
    ("1.450 F", "temperature", "degC", "can be read as 1,450 °F"),
    ("1,500 t", "weight", "lb", "can be read as 1,500 t or as 1.5 t"),
    ("-1.500 kN", "force", "lbf", "can be read as −?-?1,500 kN"),
    ("12,345 kN", "force", "lbf", "can be read as 12,345 kN or as 12.345 kN"),
    ("2 ton", "weight", "lb", "a short ton"),
    ("2 Tons", "weight", "lb", "a tonne"),
    ("2 T", "force", "kN", "a long ton"),
    ("45 Grad", "angle", "deg", "a degree or a gon"),
    ("1/3", "fraction", "%", "can be read as 0.3333% or as 33.33%"),
    ("0.4", "fraction", "%", "can be read as 0.4% or as 40%"),
    (0.4, "fraction", "%", "can be read as 0.4% or as 40%"),
    ("6-2", "length", "in", "feet and inches"),
    ("10-20 lb", "weight", "lb", "one number to another"),
]


@pytest.mark.parametrize(("typed", "dimension", "default_unit", "reason"), TWO_READINGS)
def test_what_has_two_readings_is_asked_back(
    typed: Any, dimension: Any, default_unit: Any, reason: Any
) -> None:
    with pytest.raises(NotReadable, match=reason):
        read_quantity(typed, dimension, default_unit)


def test_a_point_known_for_a_decimal_point_is_one() -> None:
    assert read_quantity("50.004 mm", "length", "in", point_is_decimal=True).value_si == pytest.approx(
        0.050004
    )


@pytest.mark.parametrize(
    ("typed", "echoed"),
    [
        ("1,500 kg", True),
        ("1.5k lb", True),
        ("2,5 t", True),
        ("3/8", True),
        ("5 ft 3 in", True),
        ("5'3", True),
        ("½ in", True),
        ("4 860 kg", True),
        ("1.125 in", True),
        ("1500 kg", False),
        ("38.5 in", False),
        ("10 lb/ft", False),
        ("90 °F", False),
        ("12 ft-lb", False),
        ("250 N/mm2", False),
        ("1.2 kN", False),
        (".5 in", True),
    ],
)
def test_what_is_shown_back(typed: str, echoed: bool) -> None:
    assert needs_echo(typed) is echoed


@pytest.mark.parametrize(("typed", "dimension", "default_unit", "value", "unit"), READS)
def test_reads_what_people_type(typed: Any, dimension: Any, default_unit: Any, value: Any, unit: Any) -> None:
    reading = read_quantity(typed, dimension, default_unit)
    assert reading.value_si == pytest.approx(to_si(value, unit, dimension), rel=1e-12, abs=1e-12)
    assert reading.dimension == dimension


REFUSALS = [
    ("", "length", "is empty"),
    ("   ", "length", "is empty"),
    ("-", "length", "has no number"),
    ("abc", "length", "no number"),
    ("in 5", "length", "no number"),
    ("5 3", "length", "without its unit"),
    ("5 ft 12", "length", "without its unit"),
    ("5 m 3", "length", "without its unit"),
    ("5 in 3 ft", "length", "larger unit first"),
    ("600 °F 3 °C", "temperature", "larger unit first"),
    ("25 kg", "length", "unit of weight, where length is wanted"),
    ("25 in", "weight", "unit of length, where weight is wanted"),
    ("25 furlong", "length", "does not know: furlong"),
    ("1,23,4", "length", "read two ways"),
    ("1.5.2", "length", "read two ways"),
    ("1.234.567", "length", "read two ways"),
    ("1234 567", "length", "read two ways"),
    ("3/0 in", "length", "divides by zero"),
    ("5 @ 3", "length", "cannot be read from"),
    ("9e999", "length", "too large"),
    (math.inf, "length", "not a finite"),
    (math.nan, "length", "not a finite"),
]


@pytest.mark.parametrize(("typed", "dimension", "reason"), REFUSALS)
def test_refuses_what_cannot_be_read(typed: Any, dimension: Any, reason: Any) -> None:
    with pytest.raises(NotReadable, match=reason):
        read_quantity(typed, dimension, {"length": "in", "weight": "lb", "temperature": "degF"}[dimension])


def test_a_plain_number_has_no_unit() -> None:
    assert plain_number("38-5/8") == 38.625
    assert plain_number("6,600") == 6600
    with pytest.raises(NotReadable, match="not one plain number"):
        plain_number("6,600 lb")
    with pytest.raises(NotReadable, match="not one plain number"):
        plain_number("5 3")


def test_the_unit_as_typed_is_kept() -> None:
    assert read_quantity("10 mm", "length", "in") == Reading(0.01, "mm", "length")
    assert read_quantity("5 ft 3 in", "length", "mm").unit == "ft"


def test_a_unit_may_belong_to_several_dimensions() -> None:
    assert dimension_of("in-lb") == ["torque", "energy"]
    assert dimension_of("furlong") == []
    assert find_unit("KG", "weight") == "kg"


def test_units_of_the_wrong_dimension_are_refused() -> None:
    with pytest.raises(NotReadable):
        to_si(1, "in", "weight")
    with pytest.raises(NotReadable):
        from_si(1, "in", "weight")


def test_force_and_weight_meet_under_standard_gravity() -> None:
    assert from_si(to_si(7, "lb", "force"), "lbf", "force") == pytest.approx(7, rel=1e-14)
    assert from_si(to_si(7, "kN", "weight"), "N", "weight") == pytest.approx(7000, rel=1e-14)
    assert from_si(9.80665 * 3, "kg", "force") == pytest.approx(3, rel=1e-14)


@given(
    st.sampled_from([(d, u) for d, units in UNIT_FACTORS.items() for u in units]),
    st.floats(-1e9, 1e9, allow_nan=False),
)
def test_to_si_and_back(dimension_unit: Any, value: Any) -> None:
    dimension, unit = dimension_unit
    assert from_si(to_si(value, unit, dimension), unit, dimension) == pytest.approx(
        value, rel=1e-12, abs=1e-9
    )


@given(st.integers(0, 500), st.integers(1, 63))
def test_tape_fractions_read_back(whole: Any, steps: Any) -> None:
    value = whole + steps / 64
    assert plain_number(fraction_text(value, 64)) == value


@given(st.floats(1e-6, 1e9), st.integers(1, 6))
def test_rounding_stays_on_its_side(value: Any, digits: Any) -> None:
    assert round_to(value, digits, "down") <= value * (1 + 1e-9)
    assert round_to(value, digits, "up") >= value * (1 - 1e-9)
    assert abs(round_to(value, digits) - value) <= 0.5000001 * 10 ** (
        math.floor(math.log10(value)) - digits + 1
    )


def test_rounding_by_hand() -> None:
    assert round_to(2766, 3, "up") == 2770
    assert round_to(2761, 3, "up") == 2770
    assert round_to(7199, 2, "down") == 7100
    assert round_to(7100, 2, "up") == 7100
    assert round_to(0.0, 3) == 0
    assert round_to(-2766, 3) == -2770
    assert round_to(math.inf, 3) == math.inf


@pytest.mark.parametrize(
    ("value", "digits", "text"),
    [(2766, 3, "2,770"), (0.0527, 3, "0.0527"), (1.5, 3, "1.50"), (2.0, 3, "2"), (1234567, 4, "1,235,000"), (0, 3, "0"),
     (-12.34, 3, "−12.3"), (99.96, 3, "100")],
)  # fmt: skip
def test_numbers_as_people_read_them(value: float, digits: int, text: str) -> None:
    assert number_text(value, digits) == text


@pytest.mark.parametrize(
    ("value", "denominator", "text"),
    [(38.625, 16, "38-5/8"), (0.5, 16, "1/2"), (3.0, 16, "3"), (0.99, 16, "1"), (-2.25, 8, "−2-1/4"), (0.01, 16, "0"),
     (1200.125, 16, "1,200-1/8"), (-0.001, 16, "0")],
)  # fmt: skip
def test_inches_as_a_tape_shows_them(value: float, denominator: int, text: str) -> None:
    assert fraction_text(value, denominator) == text


def test_writing_in_both_systems() -> None:
    assert show(2752 * 4.4482216152605, "force", "us", direction="up") == "2,760 lb (12.3 kN)"
    assert show(12.31e3, "force", "si") == "12.3 kN (2,770 lb)"
    assert show(0.981075, "length") == "38-5/8 in (981 mm)"
    assert show(0.001, "length") == "0.0394 in (1 mm)"
    assert show(30.0, "angle") == "30°"
    assert show_in(0.5, "fraction", "%") == "50%"
    assert show_in(2.5, "fraction", "ratio") == "2.50"
    assert unit_text("lbf") == "lb"
    assert unit_text("mm") == "mm"


@pytest.mark.parametrize("value", [1e-320, -1e-320, 5e-324, 2.2e-308, 9.9e-291])
@pytest.mark.parametrize("direction", ["nearest", "up", "down"])
def test_the_smallest_numbers_round_to_themselves(value: float, direction: str) -> None:
    """Denormal numbers (IEEE 754) have no step of three digits left; they neither fail nor turn into something else."""
    assert round_to(value, 3, direction) == value
    assert number_text(value, 3, direction) == "0"


def test_small_numbers_that_have_digits_still_round() -> None:
    assert round_to(1.2345e-280, 3, "up") == pytest.approx(1.24e-280, rel=1e-12)
    assert round_to(-1.2345e-280, 3) == pytest.approx(-1.23e-280, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "written"),
    [("4.75", "4.75 short tons"), ("1", "1 short ton"), ("1/2", "1/2 short ton"), ("3-1/3", "3-1/3 short tons"),
     ("0.5", "0.5 short tons"), ("11", "11 short tons")],
)  # fmt: skip
def test_tons_have_a_plural(text: str, written: str) -> None:
    assert with_unit(text, "short_ton") == written


@pytest.mark.parametrize("typed", ["4,86 lb", "4,8 lb", "48,6000 lb", "-4,86 lbf", "4,86", "1,5 psi"])
def test_a_comma_between_pounds_stands_before_three_digits(typed: str) -> None:
    """4,86 lb was 4.86 lb, where 4,860 had lost a digit: the load took 0.08 percent of the rigging."""
    dimension = "pressure" if "psi" in typed else "weight"
    with pytest.raises(NotReadable, match="comma without three digits"):
        read_quantity(typed, dimension, "lb" if dimension == "weight" else "psi")


@pytest.mark.parametrize(
    ("typed", "value"),
    [("2,5 t", 2500.0), ("4,86 kg", 4.86), ("0,5 lb", 0.5 * 0.45359237), ("1,234,567 lb", 559990.0)],
)
def test_elsewhere_it_is_a_decimal_comma(typed: str, value: float) -> None:
    assert read_quantity(typed, "weight", "lb").value_si == pytest.approx(value, rel=1e-4)
