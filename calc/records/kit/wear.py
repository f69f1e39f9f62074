"""How fast does a part wear, and when does the line through its readings reach the limit?

A straight line by least squares through three or more readings of one size, against the day. The day at which the line
meets the limit is given as a range: the days at which the 95 percent band of the line contains the limit (inverse
prediction, Fieller 1954; Draper and Smith, Applied Regression Analysis, section 3.2, from memory). A line through past
readings knows nothing of the next jerk: it never makes a part last longer, and its next inspection comes first.

Limits: tables/hook-limits, shackle-limits, chain-wear and chain-limits, as the judging sheets take them.
"""

from __future__ import annotations

import datetime
import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from calc.inspecting.chain_marks import size_named
from calc.inspecting.hook_check import largest_throat_m
from calc.inspecting.inspection import NEAR_LIMIT, limits
from calc.inspecting.thickness import thickness_limits
from calc.pulling.statistics_of_few import student_t_factor
from calc.quantities import NotReadable
from calc.records.kit.part import Part
from calc.records.kit.reading import with_unit_si

GROWS = ("throat", "reach")
"""What gets larger; the others get thinner."""
LEAST_SPREAD_M = 0.05e-3
"""Readings of a caliper by hand scatter at least so much [m], however well they lie on a line (our own mark, no source)."""
LEAST_READINGS = 3
LONGEST_OUTLOOK_DAYS = 20 * 365
"""Nothing is foretold further than this (our own mark, no source)."""

MEASURED: Mapping[str, tuple[str, ...]] = {
    "hook": ("throat", "section"),
    "crane-hook": ("throat", "section"),
    "shackle": ("body", "pin"),
    "chain-sling": ("thickness", "reach"),
    "tie-down-chain": ("thickness", "reach"),
}
"""What wears, by kind."""


@dataclass(frozen=True)
class Reading:
    """One reading: the day, and the size [m]."""

    day: datetime.date
    size_m: float


@dataclass(frozen=True)
class Outlook:
    """When the line reaches the limit: not before `earliest`, and perhaps never (`latest` None)."""

    per_year_m: float
    earliest: datetime.date
    latest: datetime.date | None


@dataclass(frozen=True)
class Wear:
    """The readings of one size of a part, oldest first.

    new_m -- when it was new; limit_m -- at which it is out; None where that is not known
    outlook -- None where the readings are too few, or the line does not run towards the limit
    """

    measure: str
    readings: tuple[Reading, ...]
    new_m: float | None
    limit_m: float | None
    outlook: Outlook | None

    @property
    def now_m(self) -> float:
        """The newest reading [m]."""
        return self.readings[-1].size_m

    @property
    def used(self) -> float | None:
        """How much of the way from new to the limit is used up [-]; None where either is not known, or a size when new is already
        past the limit, so that one of them was misread.
        """
        if self.new_m is None or self.limit_m is None or self._past(self.new_m):
            return None
        return (self.now_m - self.new_m) / (self.limit_m - self.new_m)

    @property
    def out(self) -> bool:
        """Whether the newest reading is at the limit or past it, whatever is known of the size when new."""
        return self._past(self.now_m)

    def _past(self, size_m: float) -> bool:
        """Whether a size [m] is at the limit or past it, as far as the limit is known."""
        if self.limit_m is None:
            return False
        return size_m >= self.limit_m if self.measure in GROWS else size_m <= self.limit_m

    @property
    def near(self) -> bool:
        """Whether more than half of the way to the limit is used up, and not all."""
        return not self.out and self.used is not None and self.used > NEAR_LIMIT


def wear(part: Part) -> tuple[Wear, ...]:
    """What of a part was read, in the order of MEASURED. A reading that cannot be read counts for nothing."""
    found = []
    for measure in MEASURED.get(part.kind, ()):
        readings = tuple(sorted(_readings(part, measure), key=lambda one: one.day))
        if readings:
            new_m = _lenient(part.new.get(measure, ""))
            limit_m = _LIMITS[measure](part, new_m)
            found.append(Wear(measure, readings, new_m, limit_m, outlook(readings, limit_m, measure)))
    return tuple(found)


def _readings(part: Part, measure: str) -> list[Reading]:
    read = ((look.day, _lenient(look.readings.get(measure, ""))) for look in part.counted)
    return [Reading(day, size_m) for day, size_m in read if size_m is not None]


def _lenient(typed: str) -> float | None:
    try:
        return with_unit_si(typed, "length")
    except NotReadable:
        return None


def outlook(readings: Sequence[Reading], limit_m: float | None, measure: str) -> Outlook | None:
    """When the line through the readings reaches the limit; None where that cannot be told."""
    days = [float(one.day.toordinal()) for one in readings]
    if limit_m is None or len(set(days)) < LEAST_READINGS:
        return None
    turn = 1.0 if measure in GROWS else -1.0
    line = _line(days, [turn * one.size_m for one in readings])
    return line.meets(turn * limit_m, turn)


@dataclass(frozen=True)
class _Line:
    """A line by least squares: at the middle day it stands at `middle`, and climbs `slope` a day; with what its band needs."""

    middle_day: float
    middle: float
    slope: float
    count: int
    about: float
    scatter: float
    last_day: int

    def meets(self, limit: float, turn: float) -> Outlook | None:
        """When its band meets a limit that lies above it; None where the line does not climb."""
        if self.slope <= 0.0:
            return None
        upper = self._crossing(lambda day: self._at(day) + self._half_width(day) - limit)
        if upper is None:
            return None
        lower = self._crossing(lambda day: self._at(day) - self._half_width(day) - limit)
        latest = None if lower is None else datetime.date.fromordinal(lower)
        return Outlook(turn * self.slope * 365.25, datetime.date.fromordinal(upper), latest)

    def _at(self, day: float) -> float:
        return self.middle + self.slope * (day - self.middle_day)

    def _half_width(self, day: float) -> float:
        """Half of the 95 percent band of the line."""
        spread = math.sqrt(1.0 / self.count + (day - self.middle_day) ** 2 / self.about)
        return student_t_factor(self.count - 2) * self.scatter * spread

    def _crossing(self, over: Callable[[float], float]) -> int | None:
        """The first whole day from the last reading on at which a climbing edge of the band is at the limit."""
        low, high = self.last_day, self.last_day + LONGEST_OUTLOOK_DAYS
        if over(low) >= 0.0:
            return low
        if over(high) < 0.0:
            return None
        while high - low > 1:
            between = (low + high) // 2
            low, high = (low, between) if over(between) >= 0.0 else (between, high)
        return high


def _line(days: Sequence[float], sizes: Sequence[float]) -> _Line:
    count = len(days)
    middle_day, middle = sum(days) / count, sum(sizes) / count
    about = sum((day - middle_day) ** 2 for day in days)
    slope = sum((day - middle_day) * (size - middle) for day, size in zip(days, sizes, strict=True)) / about
    left = sum(
        (size - middle - slope * (day - middle_day)) ** 2 for day, size in zip(days, sizes, strict=True)
    )
    scatter = max(LEAST_SPREAD_M, math.sqrt(left / (count - 2)))
    return _Line(middle_day, middle, slope, count, about, scatter, round(max(days)))


def _share_left(table_name: str, items: tuple[str, ...], quantity: str, new_m: float | None) -> float | None:
    if new_m is None:
        return None
    return new_m * (1 - limits(table_name, items, quantity, "fraction")[0].value_si)


def _throat(_part: Part, new_m: float | None) -> float | None:
    return None if new_m is None else largest_throat_m(new_m)


def _section(_part: Part, new_m: float | None) -> float | None:
    return _share_left("hook-limits", ("hook", "crane_hook"), "section_wear", new_m)


def _body(_part: Part, new_m: float | None) -> float | None:
    return _share_left("shackle-limits", ("body_or_pin", "body"), "dimension_loss", new_m)


def _pin(_part: Part, new_m: float | None) -> float | None:
    return _share_left("shackle-limits", ("body_or_pin", "pin"), "dimension_loss", new_m)


def _thickness(part: Part, _new_m: float | None) -> float | None:
    size = size_named(part.size) if part.size.strip() else None
    return None if size is None else thickness_limits(size)[0].value_si


def _reach(_part: Part, new_m: float | None) -> float | None:
    if new_m is None:
        return None
    return new_m * (1 + limits("chain-limits", ("chain",), "elongation", "fraction")[0].value_si)


_LIMITS: Mapping[str, Callable[[Part, float | None], float | None]] = {
    "throat": _throat,
    "section": _section,
    "body": _body,
    "pin": _pin,
    "thickness": _thickness,
    "reach": _reach,
}
"""The strictest limit of each size [m], as the judging sheets take it."""

__all__ = [
    "GROWS",
    "LEAST_READINGS",
    "MEASURED",
    "Outlook",
    "Reading",
    "Wear",
    "outlook",
    "wear",
]
