"""Reads what stands in a kit as it was typed: with its unit, for it may be read again years later, in other units."""

from __future__ import annotations

from calc import inputs
from calc.dates import read_date
from calc.quantities import READING_UNITS, NotReadable, read_quantity
from calc.words.writer import UnitSystem


def with_unit_si(typed: str, dimension: str) -> float | None:
    """A value as it was typed, in SI, which must carry its unit and be more than nothing; None where nothing was typed.
    Raises NotReadable.

    >>> with_unit_si("2 t", "weight"), with_unit_si("", "weight")
    (2000.0, None)
    """
    if not typed.strip():
        return None
    try:
        value = read_quantity(typed, dimension, "").value_si
    except NotReadable as reason:
        if reason.why.code == "unreadable-not-unit-of":
            raise NotReadable("without-unit") from reason
        raise
    if not value > 0:
        raise NotReadable("too-small")
    return value


def carrying_unit(typed: str, dimension: str, units: UnitSystem, unit: str = "") -> str:
    """What was typed, with its unit written behind it where it is a bare number: `1.16` is `1.16 in` to a reader of US units.
    Raises NotReadable.

    >>> carrying_unit("1.16", "length", "us"), carrying_unit("30 mm", "length", "us")
    ('1.16 in', '30 mm')
    """
    text = " ".join(typed.split())
    try:
        with_unit_si(text, dimension)
    except NotReadable as reason:
        if reason.why.code != "unreadable-without-unit":
            raise
        text = f"{text} {unit or READING_UNITS[dimension][0 if units == 'us' else 1]}"
        with_unit_si(text, dimension)
    return text


def day_text(typed: str) -> str:
    """A day as people write it, as the calendar has it; empty where nothing was typed. Raises NotReadable."""
    return read_date(typed, inputs.today()).isoformat() if typed.strip() else ""


__all__ = ["carrying_unit", "day_text", "with_unit_si"]
