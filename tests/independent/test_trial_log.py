"""The departure test on simulated logs, and against scipy and statsmodels."""

import random

import numpy as np
import pytest
import statsmodels.api as sm
from scipy import optimize, stats

from calc.answering import Refused, answer
from calc.pulling.departure import FALSE_ALARM, find_departure
from calc.pulling.lasting_set import LettingOff, gap_scatter, lasting_sets
from calc.pulling.statistics_of_few import student_t_factor, student_t_two_sided

LOGS = 500


def straight_log(rng: random.Random, rounding: bool) -> tuple[list[float], list[float]]:
    n, top = rng.randint(8, 40), rng.uniform(5e3, 5e4)
    compliance = rng.uniform(0.5e-7, 5e-7)
    noise = rng.uniform(0.003, 0.02) * compliance * top
    force = [top * (i + 1) / n for i in range(n)]
    gap = [0.05 + compliance * f + rng.gauss(0, noise) for f in force]
    return force, [round(g / (2 * noise)) * 2 * noise for g in gap] if rounding else gap


@pytest.mark.parametrize("rounding", [False, True])
def test_false_alarms_on_straight_logs(rounding: bool) -> None:
    """500 straight logs, with normal scatter and with a coarse dial: under 5 percent may be called bent."""
    rng = random.Random(20260314)
    alarms = sum(find_departure(*straight_log(rng, rounding)).bend is not None for _ in range(LOGS))
    assert alarms / LOGS < 0.05
    assert alarms / LOGS <= FALSE_ALARM + 3 * (FALSE_ALARM / LOGS) ** 0.5


def test_false_stops_of_the_whole_sheet() -> None:
    """500 straight logs with a let-off reading: bend and permanent set together may stop under 5 percent."""
    rng = random.Random(815)
    stops = 0
    for _ in range(LOGS):
        n, top, compliance = rng.randint(7, 30), rng.uniform(5, 50), rng.uniform(0.005, 0.05)
        noise = rng.uniform(0.003, 0.02) * compliance * top
        forces = [top * i / (n - 1) for i in range(n)] + [0.0]
        log = [{"force": f"{f} kN", "gap": f"{50 + compliance * f + rng.gauss(0, noise)} mm"} for f in forces]
        stops += answer("trial-log", {"readings": log}, "si")["verdict"] == "stop"
    assert stops / LOGS < 0.05


STATED = 0.02
"""What the sheet states: 1 percent for a bend and 1 percent for a set."""


@pytest.mark.parametrize("readings", [6, 8, 12])
def test_a_sound_part_is_seldom_told_to_be_destroyed(readings: int) -> None:
    """500 logs of few readings on a dial of 0.0005 in (it was 17, 17 and 7 in a hundred): no more than the stated rate, within
    what 500 logs can tell.
    """
    rng, stops = random.Random(5), 0
    for _ in range(LOGS):
        forces = [3000.0 * i / (readings - 1) for i in range(readings)] + [0.0]
        gaps = [round((2 + 0.010 * f / 3000 + rng.gauss(0, 3e-4)) / 5e-4) * 5e-4 for f in forces]
        log = [{"force": f"{f:.1f} lb", "gap": f"{g:.4f} in"} for f, g in zip(forces, gaps, strict=True)]
        stops += verdict(log) == "stop"
    assert stops / LOGS <= STATED + 3 * (STATED * (1 - STATED) / LOGS) ** 0.5


def test_a_set_behind_slack_is_found() -> None:
    """500 logs, slack of 20 percent and set of 10 percent of the elastic opening (25 of 25 were called straight and back)."""
    rng, passed = random.Random(9), 0
    for _ in range(LOGS):
        forces = [3000.0 * i / 11 for i in range(12)]
        gaps = [2 + 0.010 * f / 3000 + 0.002 * min(1, f / 300) + rng.gauss(0, 1e-4) for f in forces]
        log = [{"force": f"{f:.1f} lb", "gap": f"{g:.4f} in"} for f, g in zip(forces, gaps, strict=True)]
        log.append({"force": "0 lb", "gap": f"{2.001 + rng.gauss(0, 1e-4):.4f} in"})
        passed += verdict(log) == "ok"
    assert passed / LOGS < 0.01


def verdict(log: list[dict[str, str]]) -> str:
    """The verdict on a sound part; a log that is refused counts as such."""
    try:
        raw = {"condition": "marked-good", "part": "no-throat", "kept_as": "readings", "readings": log}
        return str(answer("trial-log", raw)["verdict"])
    except Refused:
        return "refused"


def test_the_set_is_the_t_test_of_a_difference() -> None:
    """scipy: with the scatter known from n - 2 degrees of freedom, D / (s sqrt(v)) against one-sided t."""
    rise = [(1000.0 * i, 0.05 + 1e-7 * 1000 * i + 1e-6 * (-1) ** i) for i in range(10)]
    scatter = gap_scatter(rise, [0] * len(rise))
    fit = sm.OLS([g for _, g in rise], sm.add_constant([f for f, _ in rise])).fit()
    assert scatter.deviation_m == pytest.approx(fit.mse_resid**0.5)
    (found,) = lasting_sets(rise, [LettingOff(9000.0, ((500.0, 0.0502), (0.0, 0.0501)))], scatter)
    spread = 1 / 2 + (0.5 * 0.5 + 0.5) ** 2 + (0.5 * 0.5) ** 2
    assert found.decides_m == pytest.approx(stats.t.ppf(0.99, 8) * scatter.deviation_m * spread**0.5)
    assert found.doubt_m == pytest.approx(stats.t.ppf(0.975, 8) * scatter.deviation_m * spread**0.5)


def test_the_scatter_of_two_pulls_is_an_analysis_of_covariance() -> None:
    rise = [(1000.0 * i, 0.05 + 1e-7 * 1000 * i + 1e-6 * (-1) ** i + 4e-4 * (i > 5)) for i in range(12)]
    pulls = [int(i > 5) for i in range(12)]
    design = sm.add_constant(np.column_stack([[f for f, _ in rise], pulls]))
    fit = sm.OLS([g for _, g in rise], design).fit()
    scatter = gap_scatter(rise, pulls)
    assert (scatter.deviation_m, scatter.freedom) == (pytest.approx(fit.mse_resid**0.5), 9)


@pytest.mark.parametrize(("readings", "t"), [(3, 6.96), (4, 4.54), (5, 3.75), (7, 3.14), (10, 2.82)])
def test_printed_t_of_short_series(readings: int, t: float) -> None:
    """One-sided t at 99 percent as printed for 3 to 10 readings (US EPA SW-846, chapter one, 1992, page ONE-26)."""
    assert student_t_factor(readings - 1, 0.98) == pytest.approx(t, abs=0.006)


def test_recovery_of_a_known_yield_point() -> None:
    """500 bent logs: the bend is found in over 95 of 100; the stated 95 percent bounds hold it in over 92 of 100; the
    middle error stays under half a percent of the top force.
    """
    rng = random.Random(41)
    found = held = 0
    errors = []
    for _ in range(LOGS):
        n, top, compliance = rng.randint(12, 40), rng.uniform(5e3, 5e4), rng.uniform(0.5e-7, 5e-7)
        noise = rng.uniform(0.003, 0.02) * compliance * top
        true, ratio = top * rng.uniform(0.4, 0.8), rng.uniform(2.5, 6.0)
        force = [top * (i + 1) / n for i in range(n)]
        gap = [
            0.05 + compliance * f + compliance * (ratio - 1) * max(0, f - true) + rng.gauss(0, noise)
            for f in force
        ]
        bend = find_departure(force, gap).bend
        if bend is None:
            continue
        found += 1
        held += bend.low_n <= true <= bend.high_n
        errors.append(abs(bend.at_n - true) / top)
    assert found / LOGS > 0.95
    assert held / found > 0.92
    assert sorted(errors)[len(errors) // 2] < 0.005


def one_bent_log() -> tuple[list[float], list[float]]:
    rng = random.Random(7)
    force = [1000.0 * (i + 1) for i in range(18)]
    return force, [1e-7 * f + 3e-7 * max(0, f - 11300) + rng.gauss(0, 2e-5) for f in force]


def test_the_break_test_is_ordinary_least_squares() -> None:
    """statsmodels' OLS on [1, F, max(0, F - b)] at the best candidate gives the same t and the same chance."""
    force, gap = one_bent_log()
    ours = find_departure(force, gap)
    best = max(
        (sm.OLS(np.array(gap), np.column_stack([np.ones(18), force, np.maximum(0, np.array(force) - b)])).fit()
         for b in force[1:-1]), key=lambda fit: fit.tvalues[2],
    )  # fmt: skip
    assert ours.t_value == pytest.approx(best.tvalues[2], rel=1e-6)
    assert ours.chance == pytest.approx(min(1.0, best.pvalues[2] / 2 * ours.candidates), rel=1e-6)
    assert student_t_two_sided(ours.t_value, 15) == pytest.approx(2 * stats.t.sf(ours.t_value, 15), abs=1e-14)


def test_the_break_point_is_the_least_squares_one() -> None:
    """scipy's curve_fit of the same broken line lands on the same force."""
    force, gap = one_bent_log()
    ours = find_departure(force, gap).bend
    assert ours is not None

    def broken(f: np.ndarray, a: float, c: float, d: float, b: float) -> np.ndarray:
        return a + c * f + d * np.maximum(0, f - b * 1e4)

    (_, _, _, b), _ = optimize.curve_fit(broken, np.array(force), np.array(gap), p0=(0, 1e-7, 3e-7, 1.15))
    assert ours.at_n == pytest.approx(b * 1e4, rel=2e-3)


def test_no_scatter_at_all() -> None:
    force = [float(i) for i in range(1, 12)]
    assert find_departure(force, [2e-7 * f for f in force]).bend is None
