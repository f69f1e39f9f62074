"""Which heat stands behind a colour on steel?

Colours of tempering (oxide tints) and of glowing steel from W. H. Dooley, Applied Science for Metal Workers (1919), in
the table temper-colours, by its printed degrees Fahrenheit.
"""

from __future__ import annotations

import functools
from dataclasses import dataclass

from calc.tables import Row, table, value_si

_LAST_PLACES_K = 1e-9


@dataclass(frozen=True)
class Colour:
    """A colour as printed: its key in the table, its kind (oxide_tint or incandescence), and its heat [deg C], which for
    a colour printed as a band is the cooler end.
    """

    key: str
    kind: str
    degc: float
    hottest_degc: float


@functools.cache
def colours() -> tuple[Colour, ...]:
    """The colours of the table temper-colours, coolest first."""
    rows = [row for row in table("temper-colours").rows if row["unit"] == "degF"]
    found = [_colour(row, rows) for row in rows if row["quantity"] != "temperature_high"]
    return tuple(sorted(found, key=lambda colour: colour.degc))


def _colour(row: Row, rows: list[Row]) -> Colour:
    degc = value_si(row, "temperature")
    top = [r for r in rows if r["colour"] == row["colour"] and r["quantity"] == "temperature_high"]
    hottest = value_si(top[0], "temperature") if top else degc
    return Colour(row["colour"], row["kind"], degc, hottest)


def first_tint_degc() -> float:
    """The heat [deg C] of the coolest printed tint."""
    return colours()[0].degc


def heat_of(colour: Colour) -> tuple[float, float]:
    """The heats [deg C] a colour may stand for: from the next cooler printed colour to the next hotter one."""
    known = colours()
    at = known.index(colour)
    low = known[max(0, at - 1)].degc
    high = known[at + 1].degc if at + 1 < len(known) else colour.hottest_degc
    return low, high


def colour_at(temperature_degc: float) -> Colour | None:
    """The colour that steel has reached at a heat [deg C]: the hottest printed one at or below it; None if none."""
    reached = [colour for colour in colours() if colour.degc <= temperature_degc + _LAST_PLACES_K]
    return reached[-1] if reached else None


__all__ = ["Colour", "colour_at", "colours", "first_tint_degc", "heat_of"]
