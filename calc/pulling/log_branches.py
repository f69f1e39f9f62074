"""The parts of a pull's log: the first rise, the hold, and what each says by itself.

Question of the trade: which readings belong to the pull, and did the force fall while it was held? Slopes by the median of
pairs (Theil 1950, Sen 1968). What stayed after letting off is in calc.pulling.lasting_set.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.pulling.departure import apart
from calc.pulling.lasting_set import first_rises
from calc.pulling.log_reading import Reading
from calc.pulling.statistics_of_few import theil_sen

HOLD_SHARE = 0.85
"""Readings after the top that stay over this share of it count as the hold (our own mark, no source)."""

BLEED_PER_MINUTE = 0.01
"""Force lost in a minute of the hold, over the top force, that is told [-] (our own mark, no source)."""


@dataclass(frozen=True)
class Branches:
    """A log in its parts: the first rise to every force, each reading with the number of its pull; the hold at the top force;
    the top force [N].
    """

    rise: tuple[tuple[Reading, int], ...]
    hold: tuple[Reading, ...]
    top_n: float

    @property
    def useful(self) -> tuple[tuple[float, float], ...]:
        """(force [N], gap [m]) of the readings of the first rise that have both."""
        return tuple(
            (reading.force_n, reading.gap_m) for reading, _ in self.rise if reading.gap_m is not None
        )

    @property
    def pulls(self) -> tuple[int, ...]:
        """To which pull each of the useful readings belongs."""
        return tuple(pull for reading, pull in self.rise if reading.gap_m is not None)


def branches(readings: Sequence[Reading]) -> Branches:
    """The parts of a log of at least one reading, in the order taken."""
    top_n = max(reading.force_n for reading in readings)
    first_top = next(i for i, reading in enumerate(readings) if reading.force_n == top_n)
    hold_end = first_top
    while hold_end + 1 < len(readings) and readings[hold_end + 1].force_n >= HOLD_SHARE * top_n:
        hold_end += 1
    rising = first_rises(readings)[: first_top + 1]
    rise = tuple((reading, pull) for reading, pull in zip(readings, rising, strict=False) if pull is not None)
    return Branches(rise, tuple(readings[first_top : hold_end + 1]), top_n)


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


__all__ = ["BLEED_PER_MINUTE", "Branches", "bleed_n_per_s", "branches", "throat_growth"]
