"""What is that in my units?

One value with its unit, carried to another unit of the same kind; a mass and a force cross over under standard
gravity. Factors are exact by definition or frozen from Pint (calc.unit_factors; NIST Special Publication 811, 2008
edition, Appendix B). A length is also shown as the nearest fraction of an inch, with what the fraction is off by.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from calc.declaration import Citation, Result, Step, Worksheet, step
from calc.inputs import Given, TextInput
from calc.quantities import (
    READING_UNITS,
    TWO_MEANINGS,
    NotReadable,
    Reading,
    find_unit,
    fraction_text,
    from_si,
    number_text,
    read_quantity,
    to_si,
    two_units,
)
from calc.reasons import Reason, note
from calc.unit_factors import UNIT_FACTORS
from calc.words.facts import Absent, Cell, Fact, Listing, Message, Quantity, Unit, absent, message

_CROSSING = {"weight": "force", "force": "weight"}
_NO_UNIT = ""
ABSOLUTE_ZERO_DEG_C = -273.15
LARGEST_SI = 1e30
"""Values over this, in SI units, are refused: nothing in a shop is so large, and no unit then overflows."""
LEAST_TOLD, MOST_TOLD = 0.01, 100_000.0
"""Values between which the other units are told; the unit that was asked for is always told (our own bounds, no source)."""
_TONS = frozenset({"short_ton", "long_ton", "t"})
_EXACT_IN = 5e-7
"""A length this near to a fraction [in] is that fraction: the last digits of a float, not of a saw."""
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


class NotCarried(ValueError):
    """A value cannot be carried over: the input that is at fault, the code of the refusal, and its facts."""

    def __init__(self, at: str, code: str, **facts: Fact) -> None:
        self.input = at
        self.code = code
        self.facts = facts
        super().__init__(f"{at}: {code}")


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

    @property
    def typed_value(self) -> float:
        """The value in the unit that was typed."""
        return from_si(self.reading.value_si, self.reading.unit, self.dimension)

    @property
    def crossed(self) -> bool:
        """Whether a mass was carried to a force, or a force to a mass."""
        return self.unit not in UNIT_FACTORS[self.dimension]


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


_OF_ANOTHER_KIND = ("unit-of-another", "unknown-unit")


def _unreadable(value: str) -> NotCarried:
    """Why no kind of quantity could read `value`: nothing but a number, no such unit, two readings, or a number amiss. What
    is amiss in its own kind goes before what is amiss in another.
    """
    reasons: list[NotReadable] = []
    for dimension in UNIT_FACTORS:
        try:
            read_quantity(value, dimension, READING_UNITS[dimension][0])
        except NotReadable as reason:
            reasons.append(reason)
    own = [reason for reason in reasons if reason.args[0] not in _OF_ANOTHER_KIND]
    if len(reasons) < len(UNIT_FACTORS) and not own:
        return NotCarried("value", "no-unit")
    return NotCarried("value", "unreadable", reason=(own or reasons)[0].why)


def _one_meaning(to: str) -> None:
    """Refuse a unit wanted that has more than one meaning."""
    for dimension in TWO_MEANINGS:
        if code := two_units(to, dimension):
            raise NotCarried("to", f"two-units-{code}", unit=to)


def carry(value: str, to: str) -> Conversion:
    """Carry `value` (with its unit) to the unit written `to`; empty `to` means the other system's usual unit.

    Raises NotCarried.

    >>> round(carry("38-5/8 in", "mm").value, 9)
    981.075
    """
    readings = _readings(value)
    if not readings:
        raise _unreadable(value)
    _one_meaning(to)
    if not to:
        return _carried(readings[0], _usual_unit_of_the_other_system(readings[0]))
    found = _in_unit_wanted(readings, to)
    if found is None:
        dimension = readings[0].dimension
        units = Listing(tuple(UNIT_FACTORS[dimension]))
        raise NotCarried("to", "not-a-unit-of", kind=message(f"dimension-{dimension}"), units=units)
    return found


def _in_unit_wanted(readings: list[Reading], to: str) -> Conversion | None:
    """The first reading that the unit written `to` fits: one of its own kind before one that crosses over."""
    own = [(reading, reading.dimension) for reading in readings]
    crossing = [(reading, _CROSSING[kind]) for reading, kind in own if kind in _CROSSING]
    for reading, dimension in (*own, *crossing):
        unit = find_unit(to, dimension)
        if unit:
            return _carried(reading, unit)
    return None


def _carried(reading: Reading, unit: str) -> Conversion:
    return Conversion(reading, unit, from_si(reading.value_si, unit, reading.dimension))


def _usual_unit_of_the_other_system(reading: Reading) -> str:
    us_unit, si_unit = READING_UNITS[reading.dimension]
    return si_unit if reading.unit in _US_UNITS else us_unit


def nearest_fraction(length_m: float, denominator: int) -> Message:
    """A length [m] as the nearest 1/`denominator` in, with what is left over: 38-5/8 in and 0.004 in under."""
    inches = from_si(length_m, "in", "length")
    off = inches - float(Fraction(round(inches * denominator), denominator))
    fraction = Cell(fraction_text(inches, denominator), "in")
    if abs(off) < _EXACT_IN:
        return message("nearest-exact", fraction=fraction)
    left = Quantity(to_si(abs(off), "in", "length"), "length", digits=2, units=("in", "in"))
    return message("nearest-over" if off > 0 else "nearest-under", fraction=fraction, off=left)


def written(value: float, unit: str) -> Cell:
    """A value to six significant digits without idle noughts, in powers of ten where it is very small or very large."""
    text = number_text(value, 6)
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    if value != 0 and (abs(value) < 1e-6 or abs(value) >= 1e15):
        text = f"{value:.5e}".replace("-", "−")
    return Cell(text, unit)


@dataclass(frozen=True)
class Found:
    """The value carried over: `result` in the unit wanted, the fractions of an inch, and the value in all other units."""

    conversion: Conversion
    result: float
    unit: Message
    dimension: Message
    nearest_16: Message | Absent
    nearest_32: Message | Absent
    nearest_64: Message | Absent
    others: tuple[Message, ...]

    @property
    def typed(self) -> Cell:
        """The value as it was given."""
        return written(self.conversion.typed_value, self.conversion.reading.unit)

    @property
    def carried(self) -> Cell:
        """The value in the unit wanted."""
        return written(self.conversion.value, self.conversion.unit)


def find(given: Given) -> Found:
    """Carry the value over; see WORKSHEET for inputs and results."""
    try:
        found = carry(given.text("value"), given.text("to"))
    except NotCarried as why:
        raise given.refuse(why.input, why.code, **why.facts) from why
    reading, dimension = found.reading, found.dimension
    if dimension == "temperature" and reading.value_si < ABSOLUTE_ZERO_DEG_C:
        raise given.refuse("value", "below-absolute-zero")
    if abs(reading.value_si) > LARGEST_SI:
        raise given.refuse("value", "too-large-for-a-shop")
    others = (
        message("other", value=written(value, unit))
        for unit in UNIT_FACTORS[dimension]
        if unit not in (found.unit, reading.unit)
        and _is_handy(value := from_si(reading.value_si, unit, dimension))
    )
    return Found(
        conversion=found,
        result=found.value,
        unit=message("unit", unit=Unit(found.unit)),
        dimension=message(f"dimension-{dimension}"),
        nearest_16=_nearest(reading, 16),
        nearest_32=_nearest(reading, 32),
        nearest_64=_nearest(reading, 64),
        others=tuple(others),
    )


def _is_handy(value: float) -> bool:
    """Whether a shop would write a value so: 1.5 m is also 0.000932057 mi, but nobody says that."""
    return value == 0 or LEAST_TOLD <= abs(value) < MOST_TOLD


def _nearest(reading: Reading, denominator: int) -> Message | Absent:
    if reading.dimension != "length":
        return absent("not-a-length")
    return nearest_fraction(reading.value_si, denominator)


def judge(found: Found) -> tuple[Reason, ...]:
    """What was carried over, and what may be misread in it."""
    reasons = [note("carried", typed=found.typed, carried=found.carried)]
    conversion = found.conversion
    if conversion.crossed:
        reasons.append(note("mass-as-weight"))
    if _TONS & {conversion.unit, conversion.reading.unit}:
        reasons.append(note("three-tons", "warning"))
    return tuple(reasons)


def work(found: Found) -> tuple[Step, ...]:
    """The line of the working."""
    typed, carried = found.typed, found.carried
    conversion = found.conversion
    dimension = conversion.dimension
    if dimension == "temperature":
        return (step("degrees", typed=typed, carried=carried),)
    wanted = from_si(1.0, conversion.unit, dimension) - from_si(0.0, conversion.unit, dimension)
    factor = wanted / from_si(1.0, conversion.reading.unit, dimension)
    return (
        step(
            "carry",
            typed=typed,
            carried=carried,
            factor=Cell(f"{factor:.7g}"),
            wanted=Unit(conversion.unit),
            one=Unit(conversion.reading.unit),
        ),
    )


def shown(found: Found) -> dict[str, Fact]:
    """The result reads with its unit, and as many digits as it has."""
    return {"result": found.carried}


WORKSHEET = Worksheet(
    name="convert",
    inputs=(TextInput("value"), TextInput("to", required=False)),
    results=(
        Result("result", digits=6),
        Result("unit"),
        Result("dimension"),
        Result("nearest_16"),
        Result("nearest_32"),
        Result("nearest_64"),
        Result("others"),
    ),
    find=find,
    judge=judge,
    work=work,
    shown=shown,
    large="result",
    example={"value": "38-5/8 in", "to": "mm"},
    citations=(Citation("nist-sp-811", "Appendix B.8, factors for units"),),
    rates=False,
)
