"""Did it stay open? Permanent set by the difference of readings at the same force, before and after a pull.

Question of the trade: the dial read 2.0000 before and 2.0006 after letting off; is that set, or is it the dial? The reading
after is held against the reading of the first rise at the same force; between two readings of the rise it is read off the
chord, and the straight line is never carried on to a force at which nobody read. A set counts when the difference is over
Student's t, one-sided, times its standard deviation (IUPAC 1995, decision limit); what such readings could surely show is
twice that (detection limit, after Currie; JCGM 200:2012, 4.18, with its two chances alike).
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from statistics import fmean

from calc.pulling.dial_step import step_shown_m
from calc.pulling.log_reading import Reading
from calc.pulling.statistics_of_few import student_t_factor

SLACK_SHARE = 0.15
"""After a pull, a reading at or under this share of its top force counts as let off (our own mark, no source)."""
FALSE_ALARM_OF_SET = 0.01
"""Chance [-] of calling a sound part set, at most, on readings with normal scatter."""
SAME_FORCE = 0.001
"""Forces are the same within this share of the top force [-]."""
JUST_UNDER = 0.01
"""A reading let off further than any reading before the pull, by up to this share of the top force [-], is held against the
lowest of them (our own mark, no source)."""
SHOWN_SHARE = 0.10
"""Readings that could show a set only over this share of the whole opening [-] show nothing (our own mark, no source)."""

Pair = tuple[float, float]
"""Force [N] and gap [m]."""


@dataclass(frozen=True)
class GapScatter:
    """Standard deviation of one gap reading [m] and its degrees of freedom."""

    deviation_m: float
    freedom: int


def gap_scatter(pairs: Sequence[Pair], pulls: Sequence[int]) -> GapScatter:
    """The scatter of gap readings about straight lines of one slope, one line for each pull; pulls -- to which each belongs.

    Four readings or more, at three different forces. A line of its own for each pull (analysis of covariance)
    keeps a set between two pulls out of the scatter. It is never taken smaller than the dial's step allows (rectangular:
    over root twelve; JCGM 100:2008, F.2.2.1), since a dial that shows the same twice has not read without error.
    """
    centred: list[Pair] = []
    for pull in sorted(set(pulls)):
        own = [pair for pair, of in zip(pairs, pulls, strict=True) if of == pull]
        mean_n, mean_m = fmean(f for f, _ in own), fmean(g for _, g in own)
        centred.extend((force_n - mean_n, gap_m - mean_m) for force_n, gap_m in own)
    spread = math.fsum(f * f for f, _ in centred)
    if spread <= 0.0:  # one force in each pull: their lines cannot be told apart
        return gap_scatter(pairs, [0] * len(pairs))
    slope = math.fsum(f * g for f, g in centred) / spread
    left = math.fsum((g - slope * f) ** 2 for f, g in centred)
    freedom = max(1, len(pairs) - len(set(pulls)) - 1)
    gaps = [gap_m for _, gap_m in pairs]
    floor = max(step_shown_m(gaps) / math.sqrt(12), 1e-4 * (max(gaps) - min(gaps)))
    return GapScatter(max(math.sqrt(left / freedom), floor), freedom)


@dataclass(frozen=True)
class LastingSet:
    """The set of one letting off [m] after the highest force until then [N], its standard deviation [m], degrees of freedom,
    and how many lettings off were tried.

    >>> one = LastingSet(9000.0, 0.0004, 0.0001, 10, 1)
    >>> one.counts, round(one.decides_m, 6), round(one.shows_m, 6)
    (True, 0.000276, 0.000553)
    """

    top_n: float
    set_m: float
    deviation_m: float
    freedom: int
    tried: int

    @property
    def decides_m(self) -> float:
        """The set [m] over which it counts."""
        level = 1.0 - 2.0 * FALSE_ALARM_OF_SET / self.tried
        return student_t_factor(self.freedom, level) * self.deviation_m

    @property
    def shows_m(self) -> float:
        """The smallest set [m] that such readings would surely show."""
        return 2.0 * self.decides_m

    @property
    def doubt_m(self) -> float:
        """Give or take of the set [m], at 95 percent."""
        return student_t_factor(self.freedom) * self.deviation_m

    @property
    def counts(self) -> bool:
        """Whether it is more than the readings scatter."""
        return self.set_m > self.decides_m

    @property
    def shrinks(self) -> bool:
        """Whether the gap came back smaller than the readings scatter: steel does not, a dial that slips does."""
        return -self.set_m > self.decides_m


def first_rises(readings: Sequence[Reading]) -> tuple[int | None, ...]:
    """To which pull each reading belongs that stands at a force never reached before: the first rise, whatever was let off
    between. None for the others.

    >>> first_rises([Reading(f, None, None, None) for f in (0.0, 5.0, 0.0, 4.0, 5.0, 7.0)])
    (0, 0, None, None, 1, 1)
    """
    found: list[int | None] = []
    top_n, pull, back = 0.0, 0, False
    for reading in readings:
        rises = reading.force_n >= top_n
        pull += rises and back
        back = not rises
        found.append(pull if rises else None)
        top_n = max(top_n, reading.force_n)
    return tuple(found)


@dataclass(frozen=True)
class LettingOff:
    """The readings after letting off a pull, and the highest force until then [N]."""

    top_n: float
    pairs: tuple[Pair, ...]


def lettings_off(readings: Sequence[Reading]) -> tuple[LettingOff, ...]:
    """Each letting off that was read, after the first pull and after every later one. A pull under the slack of the highest
    is none; what it left is in the readings after the highest.
    """
    found: list[LettingOff] = []
    least_n = SLACK_SHARE * max(reading.force_n for reading in readings)
    top_n, inside = 0.0, False
    for reading in readings:
        off = top_n > least_n and reading.force_n <= SLACK_SHARE * top_n
        top_n = max(top_n, reading.force_n)
        if off and reading.gap_m is not None:
            pair = (reading.force_n, reading.gap_m)
            before = found.pop().pairs if inside else ()
            found.append(LettingOff(top_n, (*before, pair)))
        inside = off and (inside or reading.gap_m is not None)
    return tuple(found)


def lasting_sets(
    rise: Sequence[Pair], off: Sequence[LettingOff], scatter: GapScatter
) -> tuple[LastingSet, ...]:
    """The set after each letting off that can be held against the rise at the same force.

    rise -- readings of the first rise, at least one
    """
    differences = [(one.top_n, found) for one in off if (found := _difference(rise, one.pairs)) is not None]
    return tuple(
        LastingSet(top_n, set_m, scatter.deviation_m * math.sqrt(spread), scatter.freedom, len(differences))
        for top_n, (set_m, spread) in differences
    )


def _difference(rise: Sequence[Pair], off: Sequence[Pair]) -> tuple[float, float] | None:
    """The mean difference at the same force [m], and its variance in units of that of one reading."""
    held = [(gap_m, weights) for force_n, gap_m in off if (weights := _weights(rise, force_n))]
    if not held:
        return None
    count = len(held)
    of_rise = [sum(weights.get(i, 0.0) for _, weights in held) / count for i in range(len(rise))]
    before_m = math.fsum(weight * gap_m for weight, (_, gap_m) in zip(of_rise, rise, strict=True))
    after_m = math.fsum(gap_m for gap_m, _ in held) / count
    return after_m - before_m, 1.0 / count + math.fsum(weight**2 for weight in of_rise)


def _weights(rise: Sequence[Pair], force_n: float) -> Mapping[int, float]:
    """How the readings of the rise make the gap at a force [N]: those at it, or the two on both sides; empty outside them."""
    top_n, lowest_n = max(f for f, _ in rise), min(f for f, _ in rise)
    at_n = max(force_n, lowest_n) if force_n >= lowest_n - JUST_UNDER * top_n else force_n
    same = [i for i, (f, _) in enumerate(rise) if abs(f - at_n) <= SAME_FORCE * top_n]
    if same:
        return dict.fromkeys(same, 1.0 / len(same))
    under = [i for i, (f, _) in enumerate(rise) if f < at_n]
    over = [i for i, (f, _) in enumerate(rise) if f > at_n]
    if not under or not over:
        return {}
    low, high = max(under, key=lambda i: rise[i][0]), min(over, key=lambda i: rise[i][0])
    share = (at_n - rise[low][0]) / (rise[high][0] - rise[low][0])
    return {low: 1.0 - share, high: share}


__all__ = [
    "FALSE_ALARM_OF_SET",
    "SHOWN_SHARE",
    "SLACK_SHARE",
    "GapScatter",
    "LastingSet",
    "LettingOff",
    "first_rises",
    "gap_scatter",
    "lasting_sets",
    "lettings_off",
]
