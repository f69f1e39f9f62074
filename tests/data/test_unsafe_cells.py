"""Cells and words that could have hurt someone: each was in the book once and must not come back."""

from __future__ import annotations

import re
from collections.abc import Mapping

import pytest

from build_scripts import laws
from build_scripts.laws.tools import num
from build_scripts.ratings_index import entries
from build_scripts.table_declaration import TABLES, declared
from build_scripts.table_view import view
from calc.tables import table
from calc.words.writer import plain

DOCS = TABLES.parent / "docs"
COUNTS_AS_GRADE_30 = re.compile(r"count[s]? as grade 30\b", re.IGNORECASE)
CHAIN_SIZES = 14
"""Sizes for which an endless sling is printed: thirteen of grade 4, one of grade 8."""


def _kilograms(row: Mapping[str, str]) -> float:
    return num(row["value"]) * (1000 if row["unit"] == "t" else 1)


# --------------------------------------------------------------------------- endless chain, choked
def test_an_endless_chain_choked_is_two_parts_in_a_choke_and_no_more() -> None:
    """Two parts at 0.8 each: 1.6 times one leg, within the preferred numbers; four straight parts are no choke."""
    rows = table("chain-lifting-metric").rows
    one = {
        (r["grade"], r["size_mm"]): _kilograms(r)
        for r in rows
        if r["legs"] == "1" and r["hitch"] == "straight"
    }
    endless = [r for r in rows if r["legs"] == "endless"]
    assert len(endless) == CHAIN_SIZES
    assert {r["hitch"] for r in endless} == {"choke"}
    assert max(_kilograms(r) / one[r["grade"], r["size_mm"]] for r in endless) <= 1.6 * 1.066


def test_no_choked_chain_is_rated_above_its_straight_parts() -> None:
    for row in table("chain-lifting-metric").rows:
        if row["hitch"] != "straight" and row["legs"] != "endless":
            straight = table("chain-lifting-metric").one(**{**_case(row), "hitch": "straight"})
            assert _kilograms(row) <= 0.8 * _kilograms(straight) * 1.07, row


def _case(row: Mapping[str, str]) -> dict[str, str]:
    return {key: row[key] for key in ("grade", "size_mm", "legs", "angle_from_vertical")}


# --------------------------------------------------------------------------- turnbuckles
def test_a_turnbuckle_with_a_hook_is_rated_by_its_hook() -> None:
    """FF-T-791b: from 3/4 in up a hook end holds half of an eye end or less."""
    rows = table("turnbuckles").rows
    assert all(row["ends"] for row in rows)
    for make in ("forged", "other"):
        loads = {
            ends: {r["thread_in"]: num(r["value"]) for r in rows if (r["make"], r["ends"]) == (make, ends)}
            for ends in ("jaw_eye_or_stub", "hook")
        }
        big = [thread for thread in loads["hook"] if num(thread) >= 0.75]
        assert len(big) == 6
        assert all(loads["hook"][thread] <= loads["jaw_eye_or_stub"][thread] / 2 for thread in big)


def test_every_turnbuckle_in_the_rating_search_names_its_ends() -> None:
    found = [entry for entry in entries() if entry.table == "turnbuckles"]
    assert len(found) == 65
    assert [entry.label for entry in found if not re.search(r"(Eye|Jaw|Hook)\b.* ends", entry.label)] == []


def test_the_weaker_end_is_named_on_the_page() -> None:
    assert ("mandatory", "weaker-end-governs") in {
        (one.kind, one.key) for one in declared("turnbuckles").cautions
    }


# --------------------------------------------------------------------------- three and four legs
@pytest.mark.parametrize(
    "name",
    ["chain-lifting-metric", "chain-lifting", "chain-lifting-choked", "web-slings", "sling-leg-counting"],
)
def test_a_stiff_load_counts_two_wherever_three_or_four_legs_are_rated(name: str) -> None:
    assert any(kind == "mandatory" and "stiff load" in plain(said) for kind, said in view(name).cautions)


# --------------------------------------------------------------------------- unmarked chain
def _sentences_of_grade_30() -> list[tuple[str, str]]:
    found = []
    for path in sorted([*DOCS.rglob("*.ftl"), *DOCS.rglob("*.md")]):
        found += [
            (path.relative_to(DOCS).as_posix(), line)
            for line in path.read_text(encoding="utf-8").splitlines()
            if COUNTS_AS_GRADE_30.search(line)
        ]
    return found


def test_unmarked_chain_counts_as_grade_30_in_the_united_states_and_as_nothing_in_canada() -> None:
    """49 CFR 393.108(d) against NSC Standard 10, s. 11(4)."""
    found = _sentences_of_grade_30()
    assert len(found) >= 7  # one of eight went when the pages of chain became one
    assert [place for place, line in found if "United States" not in line or "Canada" not in line] == []
    row = table("tie-down-rules").one(item="limit", rule="unmarked-in-canada")
    assert (row["source"], row["locator"]) == ("nsc-10", "s. 11(4)")
    assert "United States" in table("tie-down-rules").one(item="limit", rule="unmarked-chain")["value"]


# --------------------------------------------------------------------------- a reading at the limit
def test_a_reading_at_a_limit_is_out_unless_its_source_says_more_than() -> None:
    """DIN 685 (through DGUV 209-021) rejects wear over 10 %, the emergency service over 15 %; Queensland rejects at 10 %."""
    senses = {(r["source"], r["quantity"]): r["sense"] for r in table("chain-limits").rows}
    assert {key for key, sense in senses.items() if sense == "out_over"} == {
        ("dguv-209-021", "thickness_loss"),
        ("ema-4wd", "thickness_loss"),
        ("ema-4wd", "elongation"),
    }
    assert senses["qld-pn10123", "thickness_loss"] == "out_at"


def test_every_law_holds() -> None:
    tables = laws.read()
    assert [(str(law), said) for law in laws.all_laws() if (said := law.check(tables))] == []
