"""The parts of a pull's log: the way up, the hold, the let-off, and what each says by itself.

Question of the trade: which readings belong to the pull, how far did it stay open, and did the force fall while it was
held? Slopes by the median of pairs (Theil 1950, Sen 1968).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.pulling.departure import Departure, apart
from calc.pulling.log_reading import Reading
from calc.pulling.statistics_of_few import theil_sen

SLACK_SHARE = 0.15
"""After the pull, a reading at or under this share of the top force counts as let off (our own mark, no source)."""

HOLD_SHARE = 0.85
"""Readings after the top that stay over this share of it count as the hold (our own mark, no source)."""

SET_IN_SCATTERS = 3.0
"""Permanent set over so many standard deviations of its own reading counts as set."""

BLEED_PER_MINUTE = 0.01
"""Force lost in a minute of the hold, over the top force, that is told [-] (our own mark, no source)."""


@dataclass(frozen=True)
class Branches:
    """A log in its parts: way up (to the top force), hold, and let off; the top force [N]."""

    up: tuple[Reading, ...]
    hold: tuple[Reading, ...]
    off: tuple[Reading, ...]
    top_n: float

    @property
    def useful(self) -> tuple[tuple[float, float], ...]:
        """(force [N], gap [m]) of the readings on the way up that have both."""
        return tuple((reading.force_n, reading.gap_m) for reading in self.up if reading.gap_m is not None)


def branches(readings: Sequence[Reading]) -> Branches:
    """The parts of a log of at least one reading, in the order taken."""
    top_n = max(reading.force_n for reading in readings)
    first_top = next(i for i, reading in enumerate(readings) if reading.force_n == top_n)
    hold_end = first_top
    while hold_end + 1 < len(readings) and readings[hold_end + 1].force_n >= HOLD_SHARE * top_n:
        hold_end += 1
    off = tuple(reading for reading in readings[hold_end + 1 :] if reading.force_n <= SLACK_SHARE * top_n)
    return Branches(tuple(readings[: first_top + 1]), tuple(readings[first_top : hold_end + 1]), off, top_n)


@dataclass(frozen=True)
class PermanentSet:
    """Permanent set [m] and the standard deviation of its reading [m].

    >>> PermanentSet(0.0004, 0.0001).counts, PermanentSet(0.0002, 0.0001).counts
    (True, False)
    """

    set_m: float
    doubt_m: float

    @property
    def counts(self) -> bool:
        """Whether it is more than reading scatter."""
        return self.set_m > SET_IN_SCATTERS * self.doubt_m


def permanent_set(fit: Departure, off: Sequence[Reading]) -> PermanentSet | None:
    """How far the last let-off reading lies past the straight line at its own force; None if no gap was read."""
    last = next(((r.force_n, r.gap_m) for r in reversed(off) if r.gap_m is not None), None)
    if last is None:
        return None
    force_n, gap_m = last
    return PermanentSet(gap_m - fit.on_line_m(force_n), fit.scatter_m * 2**0.5)


def bleed_n_per_s(hold: Sequence[Reading]) -> float | None:
    """Force lost per second while holding [N/s], by the median of slopes; None without two different times.

    >>> bleed_n_per_s([Reading(1000.0, None, None, 0.0), Reading(940.0, None, None, 60.0)])
    1.0
    """
    timed = [(reading.time_s, reading.force_n) for reading in hold if reading.time_s is not None]
    if len(timed) < 2 or len(apart([time_s for time_s, _ in timed])) < 2:
        return None
    return -theil_sen([time_s for time_s, _ in timed], [force_n for _, force_n in timed])[1]


def throat_growth(readings: Sequence[Reading]) -> float | None:
    """Growth of the throat from its first to its last reading [-]; None if it was not read twice.

    >>> round(throat_growth([Reading(0.0, None, 0.030, None), Reading(0.0, None, 0.0315, None)]) or 0.0, 4)
    0.05
    """
    throats = [reading.throat_m for reading in readings if reading.throat_m is not None]
    return throats[-1] / throats[0] - 1.0 if len(throats) > 1 else None


__all__ = [
    "BLEED_PER_MINUTE",
    "SET_IN_SCATTERS",
    "Branches",
    "PermanentSet",
    "bleed_n_per_s",
    "branches",
    "permanent_set",
    "throat_growth",
]
