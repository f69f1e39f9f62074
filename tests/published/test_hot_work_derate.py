"""The heat rules of chain, as printed.

ASME B30.9 table 9-1.8.1-1, read in two reprints that agree. EN 818-6 for grade 8, read in a reprint; grades 4 and 5
in DGUV Information 209-021 section 2 and 201-030 section 6.3. The figures were typed here from those sources, not
taken from the tables.
"""

from __future__ import annotations

import pytest

from calc.answering import answer
from calc.heating.chain_heat import asme_rule, en_rule
from calc.quantities import to_si

ASME_B30_9 = {
    400: (10, 0, 15, 0), 500: (15, 0, 25, 5), 600: (20, 5, 30, 15), 700: (30, 10, 40, 20), 800: (40, 15, 50, 25),
    900: (50, 20, 60, 30), 1000: (60, 25, 70, 35),
}  # fmt: skip


@pytest.mark.parametrize("degf", ASME_B30_9)
def test_every_row_of_asme_b30_9(degf: int) -> None:
    hot_80, later_80, hot_100, later_100 = ASME_B30_9[degf]
    at = to_si(degf, "degF", "temperature")
    for grade, hot, later in (("80", hot_80, later_80), ("100", hot_100, later_100)):
        found = asme_rule(grade, at)
        assert found.hot == pytest.approx(1 - hot / 100)
        assert found.after == pytest.approx(1 - later / 100)


def test_below_400_f_nothing_is_lost_and_between_rows_the_hotter_counts() -> None:
    assert asme_rule("80", to_si(399, "degF", "temperature")).hot == 1.0
    assert asme_rule("80", to_si(401, "degF", "temperature")).hot == pytest.approx(0.85)
    assert asme_rule("100", to_si(1000.5, "degF", "temperature")).forbids


@pytest.mark.parametrize(
    ("grade", "degc", "left"),
    [
        ("80", -40, 1.0), ("80", 200, 1.0), ("80", 201, 0.9), ("80", 300, 0.9), ("80", 301, 0.75), ("80", 400, 0.75),
        ("4", 300, 1.0), ("4", 400, 0.75), ("4", 475, 0.5), ("5", 200, 1.0), ("5", 300, 0.75), ("5", 400, 0.5),
    ],
)  # fmt: skip
def test_en_818_6_bands(grade: str, degc: float, left: float) -> None:
    assert en_rule(grade, degc).hot == pytest.approx(left)


def test_the_two_rules_cross_at_316_and_371_c() -> None:
    """At 600 F EN leaves 75 percent and ASME 80; at 700 F 75 and 70."""
    chain = {
        "grade": "80",
        "size": "3/8",
        "rating": "1000 kg",
        "how_known": "measured",
        "condition": "marked-good",
    }
    at_600 = answer("hot-work-derate", {**chain, "temperature": "600 F"}, "si")["results"]
    assert at_600["rating_hot_en"]["value"] == pytest.approx(750)
    assert at_600["rating_hot_asme"]["value"] == pytest.approx(800)
    assert at_600["rule"]["value"] == "EN 818-6"
    at_700 = answer("hot-work-derate", {**chain, "temperature": "700 F"}, "si")["results"]
    assert at_700["rating_hot_en"]["value"] == pytest.approx(750)
    assert at_700["rating_hot_asme"]["value"] == pytest.approx(700)
    assert at_700["rule"]["value"] == "ASME B30.9"
    assert at_600["rating_hot"]["value"] is at_700["rating_hot"]["value"] is None
