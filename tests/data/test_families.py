"""Families of a size and grade moved together: what the laws alone notice of a wrong row or edition."""

from __future__ import annotations

from fractions import Fraction

import pytest

from build_scripts import laws, mutate_families, mutate_tables
from build_scripts.laws.tools import Tables


@pytest.fixture(scope="module")
def tables() -> Tables:
    """All tables as the files have them."""
    return laws.read()


@pytest.fixture(scope="module")
def counts() -> dict[str, mutate_families.FamilyCount]:
    """What became of every family of every table that rates by size."""
    return {count.name: count for count in mutate_tables.run_families()}


def test_laws_alone_notice_a_family_that_moved(counts: dict[str, mutate_families.FamilyCount]) -> None:
    assert len(counts) >= 17
    short = {
        name: (count.share, count.missed[:5])
        for name, count in counts.items()
        if count.share < mutate_families.TARGET
    }
    assert short == {}


def test_a_neighbouring_row_read_for_the_right_one_is_noticed(
    counts: dict[str, mutate_families.FamilyCount],
) -> None:
    for name, count in counts.items():
        tried = count.tried.get(mutate_families.EXCHANGED, 0)
        assert count.noticed.get(mutate_families.EXCHANGED, 0) >= 0.95 * tried, name


def test_the_report_fails_below_the_target(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    assert mutate_tables.main(["--families", "web-slings", "shackles"]) == 0
    monkeypatch.setattr(mutate_families, "TARGET", 0.99)
    assert mutate_tables.main(["--families", "shackles"]) == 1
    assert "missed: shackles: B 1-1/2 1-5/8 -10%" in capsys.readouterr().out


def test_a_family_is_moved_by_a_share_to_the_step_of_its_column(tables: Tables) -> None:
    """49 CFR 393.108 prints pounds to the fifty, kilograms to the ten; RR-C-271 in fractions of a ton."""
    rows = [r for r in tables["chain-tie-down"] if (r["grade"], r["size_in"]) == ("70", "3/8")]
    declared = tables.declared["chain-tie-down"]
    moved = mutate_families.moved(declared, tables["chain-tie-down"], rows, Fraction(-1, 10))
    assert [(row["unit"], value) for row, value in moved] == [("lb", "5,950"), ("kg", "2,690")]
    rows = [r for r in tables["shackles"] if (r["grade"], r["size_in"]) == ("A", "1-1/8")]
    moved = mutate_families.moved(tables.declared["shackles"], tables["shackles"], rows, Fraction(1, 10))
    assert [value for _, value in moved] == ["10-9/20"]


def test_nothing_is_left_changed(tables: Tables) -> None:
    before = [dict(row) for row in tables["eyebolts"]]
    watching = mutate_tables.laws_by_table(tables)["eyebolts"]
    declared = tables.declared["eyebolts"]
    count = mutate_families.count(declared, tables, watching, lambda law, seen: bool(law.check(seen)))
    assert sum(count.tried.values()) > 50
    assert tables["eyebolts"] == before
