"""Where does force against opening leave the straight line?

Sound steel opens in proportion to the pull and comes back. The straight part is fitted by the median of all slopes
(Theil 1950, Sen 1968). The departure is tested by letting the line break at every candidate force b, opening = a + c F +
d max(0, F - b): the break counts when d is above nothing by Student's t, one-sided, at 1 percent divided by the number of
candidates (Bonferroni). Its uncertainty is the set of b whose sum of squares stays within F(1, n - 4) at 95 percent of
the best (profile of the likelihood). Readings that stand out alone between their neighbours are set aside, and told.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from calc.pulling.statistics_of_few import median, student_t_factor, student_t_two_sided, theil_sen

FALSE_ALARM = 0.01
"""Chance [-] of calling a straight log bent, at most, on readings with normal scatter."""

MOST_CANDIDATES = 60
GRID = 50
STANDS_OUT = 6.0
"""A reading that lies so many robust standard deviations off its neighbours, alone, is set aside [-]."""


@dataclass(frozen=True)
class Departure:
    """Straight part and break: offset [m] and compliance [m/N] of the straight part, scatter of a reading [m]; force of
    the break [N] with its 95 percent bounds, or None where the log is straight; t of the best break and its chance.
    """

    offset_m: float
    compliance_m_per_n: float
    scatter_m: float
    departs_at_n: float | None
    departs_low_n: float | None
    departs_high_n: float | None
    t_value: float
    chance: float
    candidates: int


def standing_out(force_n: Sequence[float], gap_m: Sequence[float]) -> tuple[int, ...]:
    """Positions of readings that stand out alone: far off the chord of both neighbours, which lean the other way.

    At most one in ten is set aside, the worst first; a true bend leans one way only and is kept.
    """
    kept = list(range(len(force_n)))
    gone: list[int] = []
    while len(gone) < len(force_n) // 10:
        off = {i: _off_chord(force_n, gap_m, kept, i) for i in range(1, len(kept) - 1)}
        spread = 1.4826 * median([abs(value) for value in off.values()])
        floor = 1e-3 * (max(gap_m) - min(gap_m))
        alone = [
            i
            for i in range(2, len(kept) - 2)
            if abs(off[i]) > max(STANDS_OUT * spread, floor)
            and off[i - 1] * off[i] < 0 > off[i + 1] * off[i]
            and min(abs(off[i - 1]), abs(off[i + 1])) > 0.2 * abs(off[i])
        ]
        if not alone:
            break
        worst = max(alone, key=lambda i: abs(off[i]))
        gone.append(kept.pop(worst))
    return tuple(sorted(gone))


def _off_chord(force_n: Sequence[float], gap_m: Sequence[float], kept: Sequence[int], i: int) -> float:
    before, here, after = kept[i - 1], kept[i], kept[i + 1]
    span = force_n[after] - force_n[before]
    share = 0.5 if span == 0 else (force_n[here] - force_n[before]) / span
    return gap_m[here] - (gap_m[before] + share * (gap_m[after] - gap_m[before]))


@dataclass(frozen=True)
class _Straight:
    """The forces about their mean, and what is left of the gaps after the best straight line."""

    centred: tuple[float, ...]
    spread: float
    left: tuple[float, ...]
    sum_of_squares: float


def _straight(force_n: Sequence[float], gap_m: Sequence[float]) -> _Straight:
    mean_f, mean_g = math.fsum(force_n) / len(force_n), math.fsum(gap_m) / len(gap_m)
    centred = tuple(f - mean_f for f in force_n)
    spread = math.fsum(f * f for f in centred)
    slope = math.fsum(f * (g - mean_g) for f, g in zip(centred, gap_m, strict=True)) / spread
    left = tuple(g - mean_g - slope * f for f, g in zip(centred, gap_m, strict=True))
    return _Straight(centred, spread, left, math.fsum(r * r for r in left))


def _break_at(force_n: Sequence[float], straight: _Straight, b: float) -> tuple[float, float, float]:
    """Extra compliance d past a break at b, the size of its regressor, and the sum of squares left."""
    hinge = [max(0.0, f - b) for f in force_n]
    mean = sum(hinge) / len(hinge)
    lean = sum(f * (h - mean) for f, h in zip(straight.centred, hinge, strict=True)) / straight.spread
    across = [h - mean - lean * f for f, h in zip(straight.centred, hinge, strict=True)]
    size = sum(a * a for a in across)
    extra = sum(a * r for a, r in zip(across, straight.left, strict=True)) / size
    return extra, size, max(0.0, straight.sum_of_squares - extra * extra * size)


def apart(force_n: Sequence[float]) -> list[float]:
    """The different forces [N], rising: those closer than a millionth of the span are one."""
    ordered = sorted(force_n)
    least = 1e-6 * (ordered[-1] - ordered[0])
    found = [ordered[0]]
    for force in ordered[1:]:
        if force - found[-1] > least:
            found.append(force)
    return found


def find_departure(force_n: Sequence[float], gap_m: Sequence[float]) -> Departure:
    """Fit the straight part and test for a break.

    force_n, gap_m -- at least six readings on the way up, at four different forces or more, in any order
    """
    pairs = sorted(zip(force_n, gap_m, strict=True))
    f, g = [pair[0] for pair in pairs], [pair[1] for pair in pairs]
    n = len(f)
    straight = _straight(f, g)
    floor = (1e-4 * (max(g) - min(g))) ** 2
    different = apart(f)
    inside = different[1:-1]
    step = max(1, math.ceil(len(inside) / MOST_CANDIDATES))
    candidates = inside[::step]
    best_t, best_b = 0.0, None
    for b in candidates:
        extra, size, left = _break_at(f, straight, b)
        t = extra * math.sqrt(size / max(left / (n - 3), floor))
        if t > best_t:
            best_t, best_b = t, b
    chance = min(1.0, student_t_two_sided(best_t, n - 3) / 2 * max(1, len(candidates)))
    bent = best_b is not None and chance < FALSE_ALARM
    low = high = at = None
    if bent:
        at, low, high = _profile(f, straight, floor, (different[1], different[-2]))
    below = [(x, y) for x, y in zip(f, g, strict=True) if at is None or x <= at]
    offset, compliance = theil_sen([x for x, _ in below], [y for _, y in below])
    off = [y - offset - compliance * x for x, y in below]
    scatter = max(1.4826 * median([abs(value) for value in off]), math.sqrt(floor))
    return Departure(offset, compliance, scatter, at, low, high, best_t, chance, len(candidates))


def _profile(
    f: Sequence[float], straight: _Straight, floor: float, ends: tuple[float, float]
) -> tuple[float, float, float]:
    """The break with the least sum of squares and the 95 percent bounds around it, on a grid drawn three times, finer each time."""
    low, high = ends
    n, at = len(f), low
    for _ in range(3):
        step = (high - low) / GRID
        profile = []
        for number in range(GRID + 1):
            b = low + step * number
            extra, _, left = _break_at(f, straight, b)
            profile.append((max(left, floor * (n - 3)) if extra > 0 else math.inf, b))
        least, at = min(profile)
        allowed = least * (1 + student_t_factor(max(1, n - 4)) ** 2 / max(1, n - 4))
        inside = [b for left, b in profile if left <= allowed]
        low, high = max(ends[0], min(inside) - step), min(ends[1], max(inside) + step)
    return at, low, high


__all__ = ["FALSE_ALARM", "Departure", "apart", "find_departure", "standing_out"]
