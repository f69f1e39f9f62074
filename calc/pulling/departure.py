"""Where does force against opening leave the straight line?

Sound steel opens in proportion to the pull and comes back. The straight part is fitted by the median of all slopes
(Theil 1950, Sen 1968). The departure is tested by letting the line break at every candidate force b, opening = a + c F +
d max(0, F - b): the break counts when d is above nothing by Student's t, one-sided, at 1 percent divided by the number of
candidates (Bonferroni). Its uncertainty is the set of b whose sum of squares stays within F(1, n - 4) at 95 percent of
the best (profile of the likelihood). Readings that stand out alone between their neighbours are set aside, and told.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from statistics import fmean, median

from calc.pulling.dial_step import step_shown_m
from calc.pulling.statistics_of_few import student_t_factor, student_t_two_sided, theil_sen

FALSE_ALARM = 0.01
"""Chance [-] of calling a straight log bent, at most, on readings with normal scatter."""

FALSE_ALARM_OF_SLACK = 0.01
"""Chance [-] of leaving out the first readings of a straight log as slack, at most."""
MOST_CANDIDATES = 60
"""Forces, at most, at which a break is tried."""
GRID = 50
"""Steps of the grid on which the break is narrowed down."""
STANDS_OUT = 6.0
"""A reading that lies so many robust standard deviations off its neighbours, alone, is set aside [-]."""
LEAN_SHARE = 0.2
"""Its neighbours lean the other way by at least this share of what it is off [-]."""
MAD_TO_DEVIATION = 1.4826
"""Standard deviation over the median distance from the middle, for normal scatter [-]."""


@dataclass(frozen=True)
class Bend:
    """The force at which the readings leave the straight line [N], with its 95 percent bounds [N]."""

    at_n: float
    low_n: float
    high_n: float


@dataclass(frozen=True)
class Departure:
    """Straight part and break: offset [m] and compliance [m/N] of the straight part, scatter of a reading [m]; the bend, or
    None where the log is straight; t of the likeliest break [-], its chance [-], and how many places were tried.
    """

    offset_m: float
    compliance_m_per_n: float
    scatter_m: float
    bend: Bend | None
    t_value: float
    chance: float
    candidates: int


def standing_out(force_n: Sequence[float], gap_m: Sequence[float]) -> tuple[int, ...]:
    """Positions of readings that stand out alone: far off the chord of both neighbours, which lean the other way.

    force_n, gap_m -- readings on the way up [N], [m], in the order taken; under ten, none is set aside

    At most one in ten is set aside, the worst first; a true bend leans one way only and is kept.
    """
    kept = list(range(len(force_n)))
    gone: list[int] = []
    floor = 1e-3 * (max(gap_m) - min(gap_m))
    while len(gone) < len(force_n) // 10:
        off = {i: _off_chord(force_n, gap_m, kept, i) for i in range(1, len(kept) - 1)}
        least = max(STANDS_OUT * MAD_TO_DEVIATION * median(abs(value) for value in off.values()), floor)
        alone = [i for i in range(2, len(kept) - 2) if _stands_alone(off, i, least)]
        if not alone:
            break
        gone.append(kept.pop(max(alone, key=lambda i: abs(off[i]))))
    return tuple(sorted(gone))


def _stands_alone(off: Mapping[int, float], i: int, least: float) -> bool:
    """Whether a reading is further off than `least` [m], and both neighbours lean the other way because of it."""
    before, here, after = off[i - 1], off[i], off[i + 1]
    against = before * here < 0 > after * here
    return abs(here) > least and against and min(abs(before), abs(after)) > LEAN_SHARE * abs(here)


def _off_chord(force_n: Sequence[float], gap_m: Sequence[float], kept: Sequence[int], i: int) -> float:
    before, here, after = kept[i - 1], kept[i], kept[i + 1]
    span = force_n[after] - force_n[before]
    share = 0.5 if span == 0 else (force_n[here] - force_n[before]) / span
    return gap_m[here] - (gap_m[before] + share * (gap_m[after] - gap_m[before]))


@dataclass(frozen=True)
class _Broken:
    """A line broken at a force: the extra compliance past it, the size of its regressor, the sum of squares left."""

    extra: float
    size: float
    left: float


@dataclass(frozen=True)
class _Straight:
    """Readings in the order of force, about their best straight line: forces [N], gaps [m], forces about their mean, what is
    left of the gaps, and the step of the dial [m]. The line is worked out here and not by statistics.linear_regression, because the test of a break
    needs the centred forces and what is left.
    """

    force_n: tuple[float, ...]
    gap_m: tuple[float, ...]
    centred: tuple[float, ...]
    spread: float
    left: tuple[float, ...]
    sum_of_squares: float
    step_m: float

    @property
    def floor(self) -> float:
        """The variance [m2] that no dial undercuts: a ten-thousandth of its travel, squared."""
        return (1e-4 * (max(self.gap_m) - min(self.gap_m))) ** 2

    @property
    def floor_of_dial(self) -> float:
        """The variance [m2] of the dial's step (JCGM 100:2008, F.2.2.1), or the floor."""
        return max(self.floor, self.step_m**2 / 12.0)

    def broken_at(self, b: float) -> _Broken:
        """The line with a break at the force b [N]."""
        hinge = [max(0.0, f - b) for f in self.force_n]
        mean = sum(hinge) / len(hinge)
        lean = sum(f * (h - mean) for f, h in zip(self.centred, hinge, strict=True)) / self.spread
        across = [h - mean - lean * f for f, h in zip(self.centred, hinge, strict=True)]
        size = sum(a * a for a in across)
        extra = sum(a * r for a, r in zip(across, self.left, strict=True)) / size
        return _Broken(extra, size, max(0.0, self.sum_of_squares - extra * extra * size))


def _straight(force_n: Sequence[float], gap_m: Sequence[float]) -> _Straight:
    pairs = sorted(zip(force_n, gap_m, strict=True))
    forces, gaps = tuple(pair[0] for pair in pairs), tuple(pair[1] for pair in pairs)
    mean_f, mean_g = fmean(forces), fmean(gaps)
    centred = tuple(f - mean_f for f in forces)
    spread = math.fsum(f * f for f in centred)
    slope = math.fsum(f * (g - mean_g) for f, g in zip(centred, gaps, strict=True)) / spread
    left = tuple(g - mean_g - slope * f for f, g in zip(centred, gaps, strict=True))
    squares = math.fsum(r * r for r in left)
    return _Straight(forces, gaps, centred, spread, left, squares, step_shown_m(gaps))


def apart(values: Sequence[float]) -> list[float]:
    """The different values, rising: those closer than a millionth of the span are one.

    >>> apart([3.0, 1.0, 3.0, 2.0])
    [1.0, 2.0, 3.0]
    """
    ordered = sorted(values)
    least = 1e-6 * (ordered[-1] - ordered[0])
    found = [ordered[0]]
    for value in ordered[1:]:
        if value - found[-1] > least:
            found.append(value)
    return found


@dataclass(frozen=True)
class _Test:
    """The likeliest of the breaks tried: its t [-], its force [N], its chance under a straight log [-], how many were tried."""

    t_value: float
    at_n: float
    chance: float
    candidates: int


def seated_from(force_n: Sequence[float], gap_m: Sequence[float]) -> float | None:
    """The force [N] from which the slack is taken up: where the line breaks towards the stiffer side; None where it does not.

    force_n, gap_m -- as for find_departure. The test is the same, with the sign turned.

    >>> force = [1e3 * f for f in range(12)]
    >>> seated_from(force, [2e-7 * f + 1e-7 * min(f, 3e3) for f in force])
    3000.0
    """
    straight = _straight(force_n, [-gap for gap in gap_m])
    inside = apart(straight.force_n)[1:-1]
    tried = _likeliest(straight, inside)
    return tried.at_n if tried.t_value > 0.0 and tried.chance < FALSE_ALARM_OF_SLACK else None


def _likeliest(straight: _Straight, inside: Sequence[float]) -> _Test:
    """Try a break at every force inside, or at an even choice of them."""
    candidates = inside[:: max(1, math.ceil(len(inside) / MOST_CANDIDATES))]
    freedom = len(straight.force_n) - 3
    best_t, best_n = 0.0, candidates[0]
    for b in candidates:
        broken = straight.broken_at(b)
        t = broken.extra * math.sqrt(broken.size / max(broken.left / freedom, straight.floor_of_dial))
        best_t, best_n = max((best_t, best_n), (t, b))
    chance = min(1.0, student_t_two_sided(best_t, freedom) / 2 * max(1, len(candidates)))
    return _Test(best_t, best_n, chance, len(candidates))


def find_departure(force_n: Sequence[float], gap_m: Sequence[float]) -> Departure:
    """Fit the straight part and test for a break.

    force_n, gap_m -- at least six readings on the way up [N], [m], at four different forces or more, in any order

    >>> force = [1e3 * f for f in range(1, 13)]
    >>> find_departure(force, [2e-7 * f for f in force]).bend is None
    True
    >>> bend = find_departure(force, [2e-7 * f + 6e-7 * max(0.0, f - 7e3) for f in force]).bend
    >>> bend is not None and abs(bend.at_n - 7e3) < 50
    True
    """
    straight = _straight(force_n, gap_m)
    different = apart(straight.force_n)
    tried = _likeliest(straight, different[1:-1])
    bent = tried.t_value > 0.0 and tried.chance < FALSE_ALARM
    bend = _bend(straight, different[1], different[-2]) if bent else None
    below = [
        (f, g)
        for f, g in zip(straight.force_n, straight.gap_m, strict=True)
        if bend is None or f <= bend.at_n
    ]
    offset, compliance = theil_sen([f for f, _ in below], [g for _, g in below])
    off = median(abs(g - offset - compliance * f) for f, g in below)
    scatter = max(MAD_TO_DEVIATION * off, math.sqrt(straight.floor))
    return Departure(offset, compliance, scatter, bend, tried.t_value, tried.chance, tried.candidates)


def _bend(straight: _Straight, first: float, last: float) -> Bend:
    """The break with the least sum of squares between two forces [N], and the 95 percent bounds around it, on a grid drawn
    three times, finer each time.
    """
    low, high, at = first, last, first
    n = len(straight.force_n)
    least_left, freedom = straight.floor * (n - 3), max(1, n - 4)
    for _ in range(3):
        step = (high - low) / GRID
        profile = []
        for b in (low + step * number for number in range(GRID + 1)):
            broken = straight.broken_at(b)
            profile.append((max(broken.left, least_left) if broken.extra > 0 else math.inf, b))
        least, at = min(profile)
        allowed = least * (1 + student_t_factor(freedom) ** 2 / freedom)
        inside = [b for left, b in profile if left <= allowed]
        low, high = max(first, min(inside) - step), min(last, max(inside) + step)
    return Bend(at, low, high)


__all__ = ["FALSE_ALARM", "Bend", "Departure", "apart", "find_departure", "seated_from", "standing_out"]
