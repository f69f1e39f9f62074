"""The explaining pages against printed examples, and their printed figures typed a second time from the sources' layout."""

from __future__ import annotations

import pytest

from build_scripts.lessons.bent_parts import SHEAVE_LIFE, SHEAVE_STRENGTH, rope_strength_left
from build_scripts.lessons.chain_strength import least_break_n, mean_stress_pa, rating_n
from build_scripts.lessons.printed import printed, printed_figures
from build_scripts.lessons.steel_states import AS_FORGED, chain_lifts, fatigue_limit_mpa
from calc.pulling.statistics_of_few import failure_bound
from calc.tables import table

LBF_N = 4.4482216152605


def test_ten_millimetre_grade_80_breaks_as_a_dealer_prints_it() -> None:
    # A chain dealer's page on grade numbers: 157.08 mm2 x 800 N/mm2 = 125,664 N = 28,250 lb.
    assert least_break_n("80", 0.010) == pytest.approx(125_664, abs=1)
    assert least_break_n("80", 0.010) / LBF_N == pytest.approx(28_250, abs=1)


@pytest.mark.parametrize(
    ("wire_mm", "proof_kn", "break_kn"), [(7, 15.4, 30.8), (13, 53.1, 106.0), (32, 322.0, 643.0)]
)
def test_grade_4_of_en_818_3(wire_mm: float, proof_kn: float, break_kn: float) -> None:
    # BS EN 818-3:1999, Table 5 and annex A: 200 N/mm2 at the proof force, 400 at the break (reprint).
    assert least_break_n("40", wire_mm / 1000) / 1000 == pytest.approx(break_kn, rel=0.005)
    assert mean_stress_pa(proof_kn * 1000, wire_mm / 1000) / 1e6 == pytest.approx(200, rel=0.005)


@pytest.mark.parametrize(
    ("grade", "rating_lb", "mpa"),
    [("30", 2650, 75), ("43", 5400, 153), ("70", 6600, 187), ("80", 7100, 201), ("100", 8800, 249)],
)
def test_stress_at_the_rating_follows_the_printed_ratings(grade: str, rating_lb: float, mpa: float) -> None:
    # 49 CFR 393.108 and the OSHA sling guidance, 3/8 in; stress over two circles of 10 mm by hand.
    assert rating_n(grade) / LBF_N == pytest.approx(rating_lb, rel=1e-6)
    assert rating_lb * LBF_N / 157.0796 == pytest.approx(mpa, abs=0.6)
    assert mean_stress_pa(rating_n(grade), 0.010) / 1e6 == pytest.approx(mpa, abs=0.6)


def test_grade_70_breaks_at_four_times_its_rating_as_a_catalogue_prints_it() -> None:
    # A dealer's catalogue of transport chain, drum table: 3/8 in, least break 26,400 lb.
    assert printed("factor-other-grades").si * rating_n("70") / LBF_N == pytest.approx(26_400, rel=1e-6)


def test_the_factor_of_grades_80_and_100_is_that_of_the_table() -> None:
    for grade in ("80", "100"):
        assert table("design-factors").one(item=f"chain_grade_{grade}")["value"] == "4"


@pytest.mark.parametrize(("tensile", "factor"), [(520, 0.540), (1000, 0.282)])
def test_as_forged_surface_factor(tensile: float, factor: float) -> None:
    # Shigley's constants in a help page (520 MPa: 0.540) and by hand (272 x 1000^-0.995 = 0.2816).
    assert fatigue_limit_mpa(tensile, AS_FORGED) == pytest.approx(0.5 * tensile * factor, rel=0.003)


def test_chain_curve_of_the_offshore_standard() -> None:
    # DNV-OS-E301: 6.0e10 at slope 3; 100 MPa gives 60,000.
    assert chain_lifts(100.0) == pytest.approx(60_000)
    assert chain_lifts(50.0) == pytest.approx(480_000)


def test_rope_tables_and_formula_agree_within_three_points() -> None:
    # Two supplier pages print 91 percent for D/d 20 and, under their life table, 10/2.1 = 4.7 times for 22.5 against 12 in.
    assert SHEAVE_STRENGTH[20] == 91
    assert SHEAVE_LIFE[30] / SHEAVE_LIFE[16] == pytest.approx(4.7, abs=0.1)
    for ratio, percent in SHEAVE_STRENGTH.items():
        assert 100 * rope_strength_left(ratio) == pytest.approx(percent, abs=3.0)


def test_the_bending_table_and_the_formula_are_one() -> None:
    # 0027/ND, 7.8: factor = 1 / (1 - 0.5/sqrt(D/d)), printed to two places.
    for row in table("rope-bending").rows:
        assert 1 / rope_strength_left(float(row["bend_ratio"])) == pytest.approx(
            float(row["value"]), abs=0.006
        )


@pytest.mark.parametrize(("passes", "bad"), [(10, 0.259), (100, 0.0295)])
def test_bound_of_no_failures(passes: int, bad: float) -> None:
    # A worked problem on the rule of three: n = 10 gives 0.259, n = 100 gives 0.0295.
    assert failure_bound(passes) == pytest.approx(bad, abs=0.0005)


def test_threads_in_the_cut_leave_four_fifths() -> None:
    # AISC 360, Table J3.2: 54 against 68 ksi; in general 0.450 against 0.563 of the tensile strength.
    ratio = printed("shear-a325-threads-in").si / printed("shear-a325-threads-out").si
    assert ratio == pytest.approx(0.450 / 0.563, abs=0.01)


AGAIN: dict[str, tuple[str, str]] = {
    # Chain: stretch, factors, lots, hoist chain
    "elongation-lifting-chain": ("20", "%"),
    "elongation-tie-down-chain": ("15", "%"),
    "factor-grade-43": ("3", ""),
    "factor-other-grades": ("4", ""),
    "test-lot": ("3000", "ft"),
    "hoist-chain-elongation-most": ("10", "%"),
    "hoist-chain-elongation-least": ("5", "%"),
    "hoist-chain-cycles": ("2,000,000", ""),
    "bar-on-binder": ("12901", "lbf"),
    "grab-hook-share": ("80", "%"),
    "chain-fatigue-constant": ("6.0e10", "MPa3"),
    # What broke
    "hook-3-ton-broke": ("0.5", "long_ton"),
    "hook-3-ton-rated": ("3", "long_ton"),
    "hook-13-t-broke": ("9072", "kg"),
    "hook-13-t-rated": ("13000", "kg"),
    "hook-200-t-broke": ("143", "t"),
    "hook-200-t-rated": ("200", "t"),
    "hard-chain-low": ("375", "HB"),
    "hard-chain-high": ("444", "HB"),
    "hard-chain-tempered": ("302", "HB"),
    "hoist-alert-days": ("10", ""),
    "hoist-alert-share": ("50", "%"),
    "hoist-flash-load": ("800", "kg"),
    "hoist-flash-fall": ("1", "m"),
    # Cold and notch energy
    "charpy-a36-energy": ("27", "J"),
    "charpy-a36-temperature": ("-15", "degC"),
    "charpy-hull-energy": ("4", "J"),
    "charpy-hull-temperature": ("-2", "degC"),
    "charpy-ship-energy": ("15", "ft.lbf"),
    "charpy-ship-temperature": ("90", "degF"),
    "charpy-later-ship-temperature": ("-13", "degF"),
    "iron-along": ("3", "ft.lbf"),
    "iron-across-least": ("10", "ft.lbf"),
    "iron-across-most": ("40", "ft.lbf"),
    "grade-100-coldest": ("-20", "degF"),
    "grade-8-coldest": ("-40", "degC"),
    "hand-hoist-coldest": ("-10", "degC"),
    "hand-hoist-hottest": ("50", "degC"),
    "notch-quenched": ("3", "J"),
    "notch-tempered": ("112", "J"),
    "notch-normalized": ("83", "J"),
    "notch-annealed": ("53", "J"),
    # Cold strain
    "strain-least": ("5", "%"),
    "strain-most": ("18", "%"),
    "strain-yield-rise": ("70", "%"),
    "strain-tensile-rise": ("35", "%"),
    "strain-elongation-fall": ("30", "%"),
    "strain-transition-rise": ("65", "delta_degF"),
    "ageing-transition-rise": ("35", "delta_degF"),
    # Straightening with a flame, and two presses
    "flame-highest": ("650", "degC"),
    "flame-change": ("720", "degC"),
    "flame-no-quench": ("600", "degF"),
    "heat-curving-yield": ("50", "ksi"),
    "flame-cycles": ("2", ""),
    "flame-stretch-loss": ("33", "%"),
    "press-oregon-year": ("2004", ""),
    "press-oregon-age": ("20", ""),
    "press-michigan-year": ("2003", ""),
    "press-michigan-length": ("4", "in"),
    # Bolts, forgings, hooks
    "shear-a307": ("27", "ksi"),
    "shear-a325-threads-in": ("54", "ksi"),
    "shear-a325-threads-out": ("68", "ksi"),
    "forged-tensile-gain": ("26", "%"),
    "forged-fatigue-gain": ("37", "%"),
    "hook-formula-error": ("20", "%"),
    "hook-proof-set": ("0.25", "%"),
    # Coating and welding
    "galvanize-tensile": ("150", "ksi"),
    "bake-coolest": ("190", "degC"),
    "bake-hottest": ("220", "degC"),
    "bake-31-hrc": ("8", "h"),
    "bake-49-hrc": ("22", "h"),
    "cracking-hardness": ("350", "HV"),
    "cracking-delay": ("72", "h"),
    # Rope, web, hoists
    "rope-dry": ("0.2", ""),
    "rope-groove-wide": ("0.48", ""),
    "nylon-at-rating-least": ("5", "%"),
    "nylon-at-rating-most": ("7", "%"),
    "hoist-test-load": ("125", "%"),
    "hand-hoist-static": ("150", "%"),
    # Pulled sideways
    "shackle-at-45": ("70", "%"),
    "shackle-at-90": ("50", "%"),
    "eyebolt-share-5": ("100", "%"),
    "eyebolt-share-15-least": ("55", "%"),
    "eyebolt-share-30": ("65", "%"),
    "eyebolt-share-45": ("30", "%"),
    "eyebolt-share-90": ("25", "%"),
    "eyebolt-shank": ("0.375", "in"),
    "eyebolt-eye-least": ("1.06", "in"),
    "eyebolt-eye-most": ("1.19", "in"),
    "eyebolt-shoulder-least": ("0.62", "in"),
    "eyebolt-shoulder-most": ("0.69", "in"),
}
"""Every printed figure, typed a second time by subject."""


def test_every_printed_figure_was_typed_twice() -> None:
    assert {key: (figure.value, figure.unit) for key, figure in printed_figures().items()} == AGAIN


def test_every_printed_figure_names_a_source_and_how_it_was_read() -> None:
    cards = {row["key"] for row in table("sources").rows}
    for figure in printed_figures().values():
        assert figure.source in cards, figure.key
        assert figure.checked in ("text", "copy"), figure.key
        assert len(figure.locator) > 3, figure.key


def test_the_angle_steps_are_those_of_the_rule() -> None:
    rule = table("eyebolt-rules").one(item="eyebolt", rule="angle-steps")["value"]
    for angle in ("30", "45", "90"):
        assert f"at {angle} degrees" in rule
        assert printed(f"eyebolt-share-{angle}").value in rule
    assert f"by a third sheet {printed('eyebolt-share-15-least').value}" in rule
