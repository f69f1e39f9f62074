"""How far a gauge is off at a known weight, and how sure that is.

Uncertainties combine as JCGM 100:2008 (GUM) says: Type A from repeats (4.2), rectangular limits over root three (4.3.7), a
division over root twelve (F.2.2.1), expanded with Student's t (G.4).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean
from typing import Literal

from calc.comparing import exceeds
from calc.pulling.statistics_of_few import expanded

Standing = Literal["within", "outside", "cannot-tell"]
"""How an error stands against the one allowed: within, whatever the doubt; outside; or it cannot be told."""


@dataclass(frozen=True)
class Scatter:
    """Pooled standard deviation of repeated readings [kg] and its degrees of freedom; None without repeats."""

    deviation_kg: float | None
    degrees_of_freedom: int


@dataclass(frozen=True)
class Doubts:
    """What makes every point doubtful: scatter of a reading, smallest division [kg], and how far the zero moved [kg]."""

    scatter: Scatter
    division_kg: float
    drift_kg: float


@dataclass(frozen=True)
class Point:
    """What one known weight showed: weight, mean reading, expanded uncertainty at 95 percent, allowed error [kg]."""

    weight_kg: float
    mean_kg: float
    uncertainty_kg: float
    allowed_kg: float

    @property
    def error_kg(self) -> float:
        """Mean reading less the true weight [kg]."""
        return self.mean_kg - self.weight_kg

    @property
    def reserve_kg(self) -> float:
        """The error with its uncertainty [kg], whatever its sign."""
        return abs(self.error_kg) + self.uncertainty_kg

    @property
    def standing(self) -> Standing:
        """How the error stands against the allowed one.

        >>> Point(100.0, 103.0, 1.0, 2.0).standing, Point(100.0, 102.5, 1.0, 2.0).standing
        ('cannot-tell', 'cannot-tell')
        >>> Point(100.0, 101.0, 1.0, 2.0).standing, Point(100.0, 104.0, 1.0, 2.0).standing
        ('within', 'outside')
        """
        if not exceeds(self.reserve_kg, self.allowed_kg):
            return "within"
        sure_kg = abs(self.error_kg) - self.uncertainty_kg
        return "outside" if exceeds(sure_kg, self.allowed_kg) else "cannot-tell"


def pooled_scatter(groups: Sequence[Sequence[float]]) -> Scatter:
    """Standard deviation of a single reading [kg], pooled over all weights that were read more than once (GUM 4.2.4).

    groups -- the readings [kg] of each weight, at least one each

    >>> pooled_scatter([[10.0, 12.0], [20.0]])
    Scatter(deviation_kg=1.4142135623730951, degrees_of_freedom=1)
    """
    squares, dof = 0.0, 0
    for readings in groups:
        mean = fmean(readings)
        squares += math.fsum((reading - mean) ** 2 for reading in readings)
        dof += len(readings) - 1
    return Scatter(math.sqrt(squares / dof) if dof else None, dof)


def uncertainty_parts(
    doubts: Doubts, readings: int, give_or_take_kg: float
) -> tuple[tuple[float, float], ...]:
    """Standard uncertainties [kg] of one point with their degrees of freedom.

    readings -- how often the weight was read, 1 or more; give_or_take_kg -- tolerance of the known weight [kg], 0 or more

    Without repeats the scatter is taken as up to one division either way (our own reserve, rectangular). The zero's
    drift is taken as a rectangular spread of that whole width.
    """
    scatter = doubts.scatter
    if scatter.deviation_kg is None:
        repeat = (doubts.division_kg / math.sqrt(3), math.inf)
    else:
        repeat = (scatter.deviation_kg / math.sqrt(readings), float(scatter.degrees_of_freedom))
    return (
        repeat,
        (doubts.division_kg / math.sqrt(12), math.inf),
        (give_or_take_kg / math.sqrt(3), math.inf),
        (abs(doubts.drift_kg) / math.sqrt(12), math.inf),
    )


@dataclass(frozen=True)
class KnownWeight:
    """A known weight with its tolerance and every reading of it [kg]."""

    weight_kg: float
    give_or_take_kg: float
    readings_kg: tuple[float, ...]

    def point(self, doubts: Doubts, allowed_kg: float) -> Point:
        """What it showed, against the error allowed there [kg]."""
        parts = uncertainty_parts(doubts, len(self.readings_kg), self.give_or_take_kg)
        return Point(self.weight_kg, fmean(self.readings_kg), expanded(parts), allowed_kg)


def worst_standing(points: Sequence[Point]) -> Standing:
    """How the gauge stands: outside if any point is, else untold if any is, else within."""
    found = {point.standing for point in points}
    return "outside" if "outside" in found else "cannot-tell" if "cannot-tell" in found else "within"


def usable_range_kg(points: Sequence[Point]) -> tuple[float, float] | None:
    """The longest run of neighbouring weights [kg], lightest first, that are all within; None if none is."""
    best: tuple[float, float] | None = None
    start: float | None = None
    for point in points:
        if point.standing != "within":
            start = None
            continue
        start = point.weight_kg if start is None else start
        if best is None or point.weight_kg - start > best[1] - best[0]:
            best = (start, point.weight_kg)
    return best


__all__ = [
    "Doubts",
    "KnownWeight",
    "Point",
    "Scatter",
    "Standing",
    "pooled_scatter",
    "uncertainty_parts",
    "usable_range_kg",
    "worst_standing",
]
