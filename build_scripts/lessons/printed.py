"""Figures that the explaining pages print from a source and that no rating table holds, one a line in printed.csv.

Each line has its key, the source's own value and unit, the card of the source, the place in it, and how it was read
(`text` or `copy`, as in the tables). No rating and no limit stands here: those belong to the tables.
"""

from __future__ import annotations

import csv
import functools
from dataclasses import dataclass
from pathlib import Path

from calc.quantities import plain_number, to_si
from calc.words.facts import Cell, Fact, Quantity

FILE = Path(__file__).with_suffix(".csv")

_DIMENSIONS = {
    "%": "fraction",
    "ft": "length",
    "in": "length",
    "m": "length",
    "kg": "weight",
    "t": "weight",
    "long_ton": "weight",
    "lbf": "force",
    "J": "energy",
    "ft.lbf": "energy",
    "degC": "temperature",
    "degF": "temperature",
    "delta_degF": "temperature_difference",
    "ksi": "pressure",
    "h": "time",
}
"""The dimension of each unit of the file that has one; hardness and plain numbers have none."""

_READ_IN = {"pressure": ("ksi", "MPa"), "time": ("h", "h"), "ft": ("ft", "m"), "m": ("ft", "m")}
"""Units in which a reader sees a dimension, or what is printed in a unit, where they are not the usual ones."""


class NoSuchFigure(LookupError):
    """The file has no figure of that key; the message names those it has."""


@dataclass(frozen=True)
class PrintedFigure:
    """A printed figure: its value as the source has it, the unit, and where it stands."""

    key: str
    value: str
    unit: str
    source: str
    locator: str
    checked: str

    @property
    def dimension(self) -> str:
        """The dimension of its unit, or nothing."""
        return _DIMENSIONS.get(self.unit, "")

    @property
    def si(self) -> float:
        """Its value in the SI unit of its dimension; a plain number, a hardness or a constant as it is."""
        value = plain_number(self.value)
        return to_si(value, self.unit, self.dimension) if self.dimension else value

    @property
    def fact(self) -> Fact:
        """What a page writes: a quantity in both units, or the printed number."""
        if self.dimension in ("temperature", "temperature_difference", "fraction", "time"):
            places = 2 if self.dimension == "fraction" and self.si < 0.01 else 0
            return Quantity(self.si, self.dimension, places=places, units=_READ_IN.get(self.dimension))
        if self.dimension:
            digits = max(2, len(self.value)) if self.dimension == "energy" else 3
            units = _READ_IN.get(self.unit, _READ_IN.get(self.dimension))
            return Quantity(self.si, self.dimension, digits=digits, units=units)
        return Cell(self.value, self.unit)


@functools.cache
def printed_figures() -> dict[str, PrintedFigure]:
    """All figures of the file by key."""
    with FILE.open(newline="", encoding="utf-8") as file:
        return {row["key"]: PrintedFigure(**row) for row in csv.DictReader(file)}


def printed(key: str) -> PrintedFigure:
    """A figure by key; raises NoSuchFigure."""
    try:
        return printed_figures()[key]
    except KeyError:
        raise NoSuchFigure(f"there is no printed figure {key}; see {FILE.name}") from None


__all__ = ["FILE", "NoSuchFigure", "PrintedFigure", "printed", "printed_figures"]
