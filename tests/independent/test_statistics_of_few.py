"""Our small statistics against scipy and statsmodels."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import special, stats
from statsmodels.stats.proportion import proportion_confint

from calc.pulling.statistics_of_few import (
    expanded,
    failure_bound,
    incomplete_beta,
    least_squares,
    rule_of_three,
    student_t_factor,
    student_t_two_sided,
    theil_sen,
)


@given(a=st.floats(0.3, 400), b=st.floats(0.3, 400), x=st.floats(0, 1))
def test_incomplete_beta(a: float, b: float, x: float) -> None:
    assert incomplete_beta(a, b, x) == pytest.approx(special.betainc(a, b, x), abs=1e-10)


@pytest.mark.parametrize("dof", [1, 2, 3, 7, 19, 120, 10**6])
@pytest.mark.parametrize("level", [0.90, 0.95, 0.999])
def test_student_t(dof: int, level: float) -> None:
    assert student_t_factor(dof, level) == pytest.approx(stats.t.ppf((1 + level) / 2, dof), rel=1e-7)
    assert student_t_two_sided(1.7, dof) == pytest.approx(2 * stats.t.sf(1.7, dof), abs=1e-8)


@pytest.mark.parametrize("survived", [1, 2, 7, 59, 300, 1000])
def test_failure_bound_is_clopper_and_pearson(survived: int) -> None:
    """statsmodels' one-sided bound: the upper end of a two-sided 90 percent interval for 0 of n. The interval is
    special-cased for no failures there, so scipy's binomial law is asked as well.
    """
    bound = failure_bound(survived)
    assert proportion_confint(0, survived, alpha=0.10, method="beta")[1] == pytest.approx(bound)
    assert stats.binom.cdf(0, survived, bound) == pytest.approx(0.05)
    assert rule_of_three(survived) >= bound * (1 - 1e-12)
    assert survived < 50 or rule_of_three(survived) == pytest.approx(bound, rel=0.04)


POINTS = st.lists(
    st.tuples(st.floats(-50, 50), st.floats(-50, 50)),
    min_size=4,
    max_size=30,
    unique_by=lambda p: round(p[0], 3),
)


@given(points=POINTS)
def test_lines(points: list[tuple[float, float]]) -> None:
    x, y = [p[0] for p in points], [p[1] for p in points]
    if max(x) - min(x) < 1e-2:
        return
    ours, theirs = least_squares(x, y), stats.linregress(x, y)
    assert ours.slope == pytest.approx(theirs.slope, rel=1e-6, abs=1e-6)
    assert ours.offset == pytest.approx(theirs.intercept, rel=1e-6, abs=1e-6)
    assert ours.slope_uncertainty == pytest.approx(theirs.stderr, rel=1e-5, abs=1e-6)
    assert ours.offset_uncertainty == pytest.approx(theirs.intercept_stderr, rel=1e-5, abs=1e-6)
    offset, slope = theil_sen(x, y)
    robust = stats.theilslopes(y, x, method="joint")
    assert slope == pytest.approx(robust[0], rel=1e-9, abs=1e-9)
    assert offset == pytest.approx(robust[1], rel=1e-6, abs=1e-6)


def test_ends_of_the_beta_function() -> None:
    assert incomplete_beta(2.5, 0.5, 0.0) == 0.0
    assert incomplete_beta(2.5, 0.5, 1.0) == 1.0
    assert student_t_two_sided(0.0, 5) == 1.0


def test_two_points_have_a_line_and_no_scatter() -> None:
    line = least_squares([1.0, 3.0], [2.0, 7.0])
    assert (line.offset, line.slope) == (pytest.approx(-0.5), pytest.approx(2.5))
    assert line.scatter is None


def test_the_median_of_an_odd_and_of_an_even_number_of_slopes() -> None:
    """Three points have three slopes, 1, 2 and 3; four points here have six, the middle two 2 and 3."""
    assert theil_sen([0.0, 1.0, 2.0], [0.0, 1.0, 4.0])[1] == 2.0
    assert theil_sen([0.0, 1.0, 2.0, 3.0], [0.0, 1.0, 4.0, 9.0])[1] == 3.0


def test_expanded_without_and_with_few_degrees_of_freedom() -> None:
    assert expanded([(0.3, math.inf), (0.4, math.inf)]) == pytest.approx(
        0.5 * stats.norm.ppf(0.975), rel=1e-5
    )
    assert expanded([(0.5, 3.0)]) == pytest.approx(0.5 * stats.t.ppf(0.975, 3))
