"""A second writer of quantities, kept simple, for tests to hold the book's own writer (calc.words.writer) against."""

from __future__ import annotations

from dataclasses import dataclass

from calc.quantities import READING_UNITS, fraction_text, from_si, number_text
from calc.words.writer import UnitSystem

_WRITTEN = {"lbf": "lb", "in4": "in⁴", "cm4": "cm⁴", "lbf.ft": "lb·ft", "N.m": "N·m", "lbf/in": "lb/in", "short_ton": "short tons",
            "degF": "°F", "degC": "°C", "lb/ft3": "lb/ft³", "kg/m3": "kg/m³",
            "m3": "m³", "ft3": "ft³", "in3": "in³"}  # fmt: skip
_CLOSE = {"deg": "°", "%": "%"}


def in_unit(value_si: float, dimension: str, unit: str, digits: int = 3, direction: str = "nearest") -> str:
    """An SI value in one unit. Inches over 1/4 in read in sixteenths, like a tape."""
    value = from_si(value_si, unit, dimension)
    if unit == "in" and direction == "nearest" and abs(value) >= 0.25 and digits <= 3:
        return f"{fraction_text(value)} in"
    number = number_text(value, digits, direction)
    return number + (_CLOSE[unit] if unit in _CLOSE else f" {_WRITTEN.get(unit, unit)}")


@dataclass(frozen=True)
class Say:
    """Writes numbers in the reader's order of units: `say.force(15745)` is `3,540 lb (15.7 kN)` on a US page."""

    units: UnitSystem = "us"

    def of(
        self,
        value_si: float,
        dimension: str,
        direction: str = "nearest",
        digits: int = 3,
        reading: tuple[str, str] | None = None,
    ) -> str:
        """Both units, the reader's own first."""
        us, si = reading or READING_UNITS[dimension]
        first, second = (us, si) if self.units == "us" else (si, us)
        own = in_unit(value_si, dimension, first, digits, direction)
        return own if us == si else f"{own} ({in_unit(value_si, dimension, second, digits, direction)})"

    def one(self, value_si: float, dimension: str, direction: str = "nearest", digits: int = 4) -> str:
        """Only the reader's own unit."""
        unit = READING_UNITS[dimension][0 if self.units == "us" else 1]
        return in_unit(value_si, dimension, unit, digits, direction)

    def force(self, value_n: float, direction: str = "nearest") -> str:
        """A force [N]."""
        return self.of(value_n, "force", direction)

    def weight(self, value_kg: float, direction: str = "nearest") -> str:
        """A weight [kg]."""
        return self.of(value_kg, "weight", direction)

    def length(self, value_m: float, direction: str = "nearest") -> str:
        """A length [m]."""
        return self.of(value_m, "length", direction)


def one_reading(value: float) -> str:
    """A number written so that nobody reads its point as a mark of thousands: 1.125 is written 1.1250."""
    text = repr(value)
    _, _, decimals = text.partition(".")
    return f"{text}0" if len(decimals) == 3 and decimals.isdigit() else text
