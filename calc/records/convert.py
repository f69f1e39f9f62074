"""What is that in my units?

One value with its unit, carried to another unit of the same kind; a mass and a force cross over under standard
gravity. Factors are exact by definition or frozen from Pint (calc.unit_factors; NIST Special Publication 811, 2008
edition, Appendix B). A length is also shown as the nearest fraction of an inch, with what the fraction is off by.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from calc.quantities import (
    READING_UNITS,
    NotReadable,
    Reading,
    find_unit,
    fraction_text,
    from_si,
    number_text,
    read_quantity,
    unit_text,
)
from calc.unit_factors import UNIT_FACTORS
from calc.worksheet import Answer, Caution, Citation, Given, Input, Result, ResultValue, Say, Step, Worksheet

_CROSSING = {"weight": "force", "force": "weight"}
_NO_UNIT = ""
ABSOLUTE_ZERO_DEG_C = -273.15
LARGEST_SI = 1e30
"""Values over this, in SI units, are refused: nothing in a shop is so large, and no unit then overflows."""


@dataclass(frozen=True)
class Conversion:
    """A value carried over: what was read, the unit wanted and the value in it."""

    reading: Reading
    unit: str
    value: float

    @property
    def dimension(self) -> str:
        """What kind of quantity it is."""
        return self.reading.dimension


def _readings(value: str) -> list[Reading]:
    """Every way to read `value` with the unit it carries, kinds in the order of the unit table."""
    found = []
    for dimension, units in UNIT_FACTORS.items():
        try:
            reading = read_quantity(value, dimension, _NO_UNIT)
        except NotReadable:
            continue
        if reading.unit in units:
            found.append(reading)
    return found


def _why_unreadable(value: str) -> str:
    """Why no kind of quantity could read `value`: nothing but a number, no such unit, or a number amiss."""
    try:
        read_quantity(value, "length", "in")
    except NotReadable as reason:
        return f"{reason}. Give a number with its unit, such as 38-5/8 in or 4,860 lb."
    return "has no unit. Give one, such as 38-5/8 in or 4,860 lb."


def carry(value: str, to: str) -> Conversion:
    """Carry `value` (with its unit) to the unit written `to`; empty `to` means the other system's usual unit.

    Raises NotReadable: the message starts with `value: ` or `to: `, then goes on from the label.
    """
    readings = _readings(value)
    if not readings:
        raise NotReadable(f"value: {_why_unreadable(value)}")
    if not to:
        reading = readings[0]
        us_unit, si_unit = READING_UNITS[reading.dimension]
        unit = us_unit if reading.unit != us_unit and not _is_us(reading) else si_unit
        return Conversion(reading, unit, from_si(reading.value_si, unit, reading.dimension))
    for reading in readings:
        unit = find_unit(to, reading.dimension) or ""
        if unit:
            return Conversion(reading, unit, from_si(reading.value_si, unit, reading.dimension))
    for reading in readings:
        other = _CROSSING.get(reading.dimension, "")
        crossed = find_unit(to, other) if other else None
        if crossed:
            return Conversion(reading, crossed, from_si(reading.value_si, crossed, reading.dimension))
    dimension = readings[0].dimension
    units = ", ".join(UNIT_FACTORS[dimension])
    raise NotReadable(f"to: is not a unit of {dimension.replace('_', ' ')}. Give one of: {units}.")


_US_UNITS = frozenset(
    [
        "in",
        "ft",
        "yd",
        "mi",
        "thou",
        "in2",
        "ft2",
        "in3",
        "ft3",
        "yd3",
        "gal",
        "imp_gal",
        "qt",
        "in4",
        "oz",
        "lb",
        "short_ton",
        "long_ton",
        "lbf",
        "kip",
        "tonf",
        "psi",
        "ksi",
        "lbf.in",
        "lbf.ft",
        "kip.ft",
        "ft.lbf",
        "in.lbf",
        "BTU",
        "hp",
        "in/min",
        "ft/min",
        "ft/s",
        "mph",
        "degF",
        "degR",
        "lb/ft3",
        "lb/in3",
        "lb/ft",
        "lb/in",
        "lb/ft2",
        "lbf/in",
        "kip/in",
        "kJ/in",
        "lbf/min",
        "lbf/s",
    ]
)


def _is_us(reading: Reading) -> bool:
    return reading.unit in _US_UNITS


def nearest_fraction(length_m: float, denominator: int) -> str:
    """A length as the nearest 1/`denominator` in, with what is left over in thousandths: `38-5/8 in, 0.004 in under`."""
    inches = from_si(length_m, "in", "length")
    off = inches - float(Fraction(round(inches * denominator), denominator))
    text = f"{fraction_text(inches, denominator)} in"
    if abs(off) < 5e-7:
        return f"{text} exactly"
    return f"{text} ({number_text(abs(off), 2)} in {'over' if off > 0 else 'under'})"


def _said(value: float, unit: str) -> str:
    text = number_text(value, 6)
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    if value != 0 and (abs(value) < 1e-6 or abs(value) >= 1e15):
        text = f"{value:.5e}".replace("-", "−")
    word = unit_text(unit)
    return f"{text}{word}" if unit in ("deg", "%") else f"{text} {word}".strip()


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    try:
        found = carry(given.text("value"), given.text("to"))
    except NotReadable as reason:
        name, _, message = str(reason).partition(": ")
        raise given.refuse(name, message) from reason
    reading, dimension = found.reading, found.dimension
    if dimension == "temperature" and reading.value_si < ABSOLUTE_ZERO_DEG_C:
        raise given.refuse("value", "is below absolute zero. Give at least −459.67 °F (−273.15 °C).")
    if abs(reading.value_si) > LARGEST_SI:
        raise given.refuse("value", "is larger than anything in a shop. Give a value this side of 1e30.")
    said = _said(found.value, found.unit)
    others = [
        _said(from_si(reading.value_si, unit, dimension), unit)
        for unit in UNIT_FACTORS[dimension]
        if unit not in (found.unit, reading.unit)
    ]
    is_length = dimension == "length"
    results: dict[str, ResultValue] = {
        "result": found.value,
        "unit": unit_text(found.unit),
        "dimension": dimension.replace("_", " "),
        "others": others,
    }
    for denominator in (16, 32, 64):
        results[f"nearest_{denominator}"] = (
            nearest_fraction(reading.value_si, denominator) if is_length else None
        )
    return Answer(
        verdict="ok",
        headline=f"{_said(from_si(reading.value_si, reading.unit, dimension), reading.unit)} is {said}.",
        big="result",
        results=results,
        shown={"result": said}
        | ({} if is_length else {f"nearest_{d}": "not a length" for d in (16, 32, 64)}),
        steps=_steps(found, said),
        cautions=_cautions(found),
    )


def _steps(found: Conversion, said: str) -> tuple[Step, ...]:
    reading, dimension = found.reading, found.dimension
    typed = _said(from_si(reading.value_si, reading.unit, dimension), reading.unit)
    zero = from_si(0.0, found.unit, dimension)
    if dimension == "temperature":
        return (Step("Degrees", "°F = °C × 9/5 + 32, and back", typed, said),)
    factor = from_si(1.0, found.unit, dimension) - zero
    one = from_si(1.0, reading.unit, dimension)
    text = f"{factor / one:.7g}"
    return (
        Step(
            "Carry it over", f"value × {unit_text(found.unit)} in one {unit_text(reading.unit)}", f"{typed} × {text}", said
        ),
    )  # fmt: skip


def _cautions(found: Conversion) -> tuple[Caution, ...]:
    cautions = []
    if found.unit not in UNIT_FACTORS[found.dimension]:
        cautions.append(
            Caution("A mass is read as its weight under standard gravity, 9.80665 m/s². A jerk pulls harder.", "note")
        )  # fmt: skip
    if {found.unit, found.reading.unit} & {"short_ton", "long_ton", "t"}:
        cautions.append(
            Caution(
                "Three tons are in use: the short ton of 2,000 lb, the tonne of 2,205 lb and the long ton of 2,240 lb. "
                "Read the tag twice.",
            )
        )
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="convert",
    title="What is that in my units?",
    summary="One value carried to another unit, and as the nearest fraction of an inch.",
    inputs=(
        Input("value", "Value with its unit", "text", help="Such as 38-5/8 in, 4.86k lb, 1 1/2 t, 200 bar or 90 °F."),
        Input("to", "Unit wanted", "text", required=False,
              help="Such as mm, kg, kN or psi. Left empty: the usual unit of the other system."),
    ),
    results=(
        Result("result", "Result", digits=6),
        Result("unit", "Unit"),
        Result("dimension", "Kind"),
        Result("nearest_16", "Nearest sixteenth"),
        Result("nearest_32", "Nearest thirty-second"),
        Result("nearest_64", "Nearest sixty-fourth"),
        Result("others", "In other units"),
    ),
    compute=compute,
    example={"value": "38-5/8 in", "to": "mm"},
    example_story="The plan of the cradle is in inches, the saw stop is in millimetres.",
    citations=(Citation("nist-sp-811", "Appendix B.8, factors for units"),),
    rates=False,
)  # fmt: skip
