"""Statistics for the few readings that a shop takes: Student's t, straight lines, how little a passed pull proves.

Question of the trade: how far can three readings be trusted, and what does it prove that it held ten times? Student's t by
the incomplete beta function (Abramowitz and Stegun 26.5.8, 26.7.1), expanded uncertainty after JCGM 100:2008 (GUM) G.4,
the exact binomial bound for no failures (Clopper and Pearson 1934) and the rule of three (Hanley and Lippman-Hand 1983).

Medians, means and the least-squares line itself are those of the standard library's statistics. What is written here it
does not have: Student's t, the uncertainties of a line, the median of slopes, the bound of no failures.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean, linear_regression, median

LEVEL = 0.95
"""Level of confidence of every interval here [-]."""


def _beta_fraction(a: float, b: float, x: float) -> float:
    """Continued fraction of the incomplete beta function (Abramowitz and Stegun 26.5.8), by Lentz's method."""
    tiny = 1e-300
    c, d = 1.0, 1.0 - (a + b) * x / (a + 1.0)
    d = 1.0 / (d if abs(d) > tiny else tiny)
    fraction = d
    m, step = 0, 0.0
    while abs(step - 1.0) >= 1e-15 and m < 400:
        m += 1
        even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m))
        odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1))
        for term in (even, odd):
            d = 1.0 / (1.0 + term * d)
            c = 1.0 + term / c
            step = d * c
            fraction *= step
    return fraction


def incomplete_beta(a: float, b: float, x: float) -> float:
    """Regularised incomplete beta function I_x(a, b) [-], a and b over 0, x from 0 to 1 (Abramowitz and Stegun 26.5.8).

    >>> incomplete_beta(2.0, 2.0, 0.5)
    0.5
    """
    if x <= 0.0:
        return 0.0
    if x >= 1.0:
        return 1.0
    front = math.exp(
        math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b) + a * math.log(x) + b * math.log1p(-x)
    )
    if x < (a + 1.0) / (a + b + 2.0):
        return front * _beta_fraction(a, b, x) / a
    return 1.0 - front * _beta_fraction(b, a, 1.0 - x) / b


def student_t_two_sided(t: float, degrees_of_freedom: float) -> float:
    """Chance [-] that |T| exceeds t [-], for degrees of freedom over 0 (Abramowitz and Stegun 26.7.1).

    >>> round(student_t_two_sided(12.706, 1), 4)
    0.05
    """
    return incomplete_beta(degrees_of_freedom / 2, 0.5, degrees_of_freedom / (degrees_of_freedom + t * t))


def student_t_factor(degrees_of_freedom: float, level: float = LEVEL) -> float:
    """The t [-] that |T| stays under with a chance of `level` [-], for at least one degree of freedom (GUM, Table G.2).

    >>> round(student_t_factor(10), 2)
    2.23
    """
    low, high = 0.0, 1e6
    for _ in range(90):
        middle = (low + high) / 2
        if student_t_two_sided(middle, degrees_of_freedom) > 1.0 - level:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def effective_degrees_of_freedom(parts: Sequence[tuple[float, float]]) -> float:
    """Degrees of freedom of a sum [-] by Welch and Satterthwaite (JCGM 100:2008 G.4.1).

    parts -- (standard uncertainty in one unit for all, its degrees of freedom, infinite where it is known for sure)

    >>> round(effective_degrees_of_freedom([(0.3, 4.0), (0.4, math.inf)]), 1)
    30.9
    """
    total = sum(u * u for u, _ in parts)
    below = sum(u**4 / dof for u, dof in parts if math.isfinite(dof))
    return math.inf if below == 0.0 else total * total / below


def expanded(parts: Sequence[tuple[float, float]]) -> float:
    """Expanded uncertainty at 95 percent, in the unit of the parts: the root sum of squares times Student's t (JCGM
    100:2008 G.4.2); parts as for effective_degrees_of_freedom.

    >>> round(expanded([(0.3, math.inf), (0.4, math.inf)]), 2)
    0.98
    """
    combined = math.sqrt(sum(u * u for u, _ in parts))
    dof = effective_degrees_of_freedom(parts)
    return combined * student_t_factor(min(max(1.0, math.floor(dof) if math.isfinite(dof) else 1e6), 1e6))


@dataclass(frozen=True)
class Line:
    """A least-squares line: offset and slope with their standard uncertainties, and the scatter of the points about it; the
    last three are None under three points.
    """

    offset: float
    slope: float
    offset_uncertainty: float | None
    slope_uncertainty: float | None
    scatter: float | None


def least_squares(x: Sequence[float], y: Sequence[float]) -> Line:
    """Ordinary least squares of y on x (JCGM 100:2008 H.3); at least two different x, any units.

    The line is statistics.linear_regression; that gives no uncertainties, which stand here.

    >>> least_squares([0.0, 1.0, 2.0], [1.0, 3.0, 5.0]).slope
    2.0
    """
    slope, offset = linear_regression(x, y)
    n = len(x)
    if n < 3:
        return Line(offset, slope, None, None, None)
    mean_x = fmean(x)
    spread = math.fsum((xi - mean_x) ** 2 for xi in x)
    left = math.fsum((yi - offset - slope * xi) ** 2 for xi, yi in zip(x, y, strict=True))
    scatter = math.sqrt(left / (n - 2))
    return Line(
        offset, slope, scatter * math.sqrt(1 / n + mean_x**2 / spread), scatter / math.sqrt(spread), scatter
    )


MOST_IN_PAIRS = 300
"""Above this many points the pairs are taken from an even choice among the points in order of x."""


def theil_sen(x: Sequence[float], y: Sequence[float]) -> tuple[float, float]:
    """Robust line through points: the median of all slopes between pairs (Theil 1950, Sen 1968), then the median of
    what is left as offset. Returns offset, slope. Needs two different x, any units.

    >>> theil_sen([0.0, 1.0, 2.0, 3.0, 4.0], [1.0, 3.0, 5.0, 7.0, 99.0])
    (1.0, 2.0)
    """
    points = sorted(zip(x, y, strict=True))
    if len(points) > MOST_IN_PAIRS:
        points = [points[round(i * (len(points) - 1) / (MOST_IN_PAIRS - 1))] for i in range(MOST_IN_PAIRS)]
    least = 1e-9 * (points[-1][0] - points[0][0])
    slopes = [
        (yj - yi) / (xj - xi)
        for i, (xi, yi) in enumerate(points)
        for xj, yj in points[i + 1 :]
        if xj - xi > least
    ]
    slope = median(slopes)
    return median([yi - slope * xi for xi, yi in points]), slope


def failure_bound(survived: int, level: float = LEVEL) -> float:
    """Highest chance of failure [-] that still fits n pulls survived and none failed, at a confidence of `level`.

    Exact binomial bound (Clopper and Pearson): (1 - p)^n = 1 - level. survived -- n, 1 or more.

    >>> round(failure_bound(14), 3)
    0.193
    """
    return -math.expm1(math.log1p(-level) / survived)


def rule_of_three(survived: int) -> float:
    """The quick form of the same bound [-]: three over the number of pulls, 1 or more, at 95 percent.

    >>> rule_of_three(30)
    0.1
    """
    return min(1.0, 3.0 / survived)


__all__ = [
    "LEVEL",
    "Line",
    "effective_degrees_of_freedom",
    "expanded",
    "failure_bound",
    "incomplete_beta",
    "least_squares",
    "rule_of_three",
    "student_t_factor",
    "student_t_two_sided",
    "theil_sen",
]
