"""gauge-check against the `uncertainties` library and scipy."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats
from uncertainties import ufloat

from calc.pulling.gauge_errors import Doubts, pooled_scatter, uncertainty_parts
from calc.pulling.statistics_of_few import expanded


@given(
    readings=st.lists(st.floats(400, 600), min_size=3, max_size=8), division=st.floats(0.5, 10), tolerance=st.floats(0, 20),
    drift=st.floats(-8, 8),
)  # fmt: skip
def test_propagation(readings: list[float], division: float, tolerance: float, drift: float) -> None:
    """error = mean + division + drift - weight, each a ufloat, must carry the same standard deviation; its expanded
    form with Student's t by scipy and Welch-Satterthwaite must agree.
    """
    n = len(readings)
    mean = sum(readings) / n
    scatter = pooled_scatter([readings])
    parts = uncertainty_parts(Doubts(scatter, division, drift), n, tolerance)
    error = (
        ufloat(mean, stats.tstd(readings) / math.sqrt(n) if max(readings) > min(readings) else 0.0)
        + ufloat(0, division / 2 / math.sqrt(3)) + ufloat(0, abs(drift) / 2 / math.sqrt(3))
        - ufloat(500, tolerance / math.sqrt(3))
    )  # fmt: skip
    combined = math.sqrt(sum(u * u for u, _ in parts))
    assert combined == pytest.approx(error.std_dev, rel=1e-6, abs=1e-9)
    if parts[0][0] == 0:
        return
    dof = combined**4 / (parts[0][0] ** 4 / (n - 1))
    assert expanded(parts) == pytest.approx(
        combined * stats.t.ppf(0.975, min(math.floor(dof), 10**6)), rel=1e-5
    )


def test_pooled_scatter() -> None:
    """Root of the mean within-group variance, as a one-way analysis of variance (scipy) has it."""
    groups = [[3.1, 3.9, 4.4], [10.2, 9.1], [20.0]]
    within = sum((x - sum(g) / len(g)) ** 2 for g in groups for x in g) / 3
    assert pooled_scatter(groups).deviation_kg == pytest.approx(math.sqrt(within))
    f_two = stats.f_oneway(groups[0], groups[1]).statistic
    grand = (sum(groups[0]) + sum(groups[1])) / 5
    between = sum(len(g) * (sum(g) / len(g) - grand) ** 2 for g in groups[:2])
    assert between / within == pytest.approx(f_two)
