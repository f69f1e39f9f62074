"""load-path against printed figures; the source stands beside each."""

from __future__ import annotations

from typing import Any

import pytest

from calc.answering import answer


def path(load: str, *items: dict[str, str]) -> dict[str, Any]:
    rows = [{"condition": "marked-good", **item} for item in items]
    return answer("load-path", {"load": load, "use": "plain", "items": rows}, "us")


def test_a_pair_of_legs_holds_what_the_table_prints() -> None:
    # OSHA, Guidance on Safe Sling Use, Table 1: grade 80, 1/2 in, two legs at 60 degrees: 20,800 lb (exact 20,785).
    found = path("10,000 lb", {"kind": "chain", "grade": "80", "size": "1/2", "legs": "2", "angle": "60"})
    assert found["results"]["capacity"]["value"] == pytest.approx(20_800, abs=50)


def test_two_legs_rule_of_an_older_state_table() -> None:
    # Ohio 4123:1-3-08: alloy chain 1/2 in (11,250 lb), two legs at 60 degrees from the horizontal: 19,500 lb (exact
    # 19,486); 1/4 in (3,250 lb) at 30 degrees: 3,250 lb, as one leg.
    # That is the pull by statics; by its tag alone the string holds 1.4 times one leg (EN 818-4), the stricter of both laws.
    pair = path(
        "19,486 lb", {"kind": "chain", "grade": "80", "rating": "11,250 lb", "legs": "2", "angle": "60"}
    )
    assert pair["results"]["pulls"]["value"] == pytest.approx([11_250], abs=1)
    assert pair["results"]["capacity"]["value"] == pytest.approx(1.4 * 11_250)
    flat = path(
        "1,000 lb", {"kind": "chain", "grade": "80", "rating": "3,250 lb", "legs": "2", "angle": "30"}
    )
    assert flat["results"]["capacity"]["value"] == pytest.approx(3_250)


@pytest.mark.parametrize(
    ("grade", "verdict"), [("30", "stop"), ("43", "stop"), ("70", "stop"), ("80", "ok"), ("100", "ok")]
)
def test_which_grades_lift(grade: str, verdict: str) -> None:
    # ASTM A413 s. 1.1: grades 30, 43 and 70 are for uses other than overhead lifting; ASTM A391 and A973: 80 and 100.
    assert path("100 lb", {"kind": "chain", "grade": grade, "size": "3/8"})["verdict"] == verdict
