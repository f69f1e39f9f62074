"""The tables as data: valid package, resolved sources, laws, second copies, printed anchors, what a damaged file does."""

from __future__ import annotations

import csv
import json
import re
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from build_scripts import check_tables, mutate_tables
from tests.data import laws, recalled, second_copy

RESOURCES = laws.descriptor()["resources"]
CLAIMS = [resource for resource in RESOURCES if resource["name"] != "sources"]
GROUPS = {"chain", "hooks-shackles", "slings", "heat", "rules", "weights", "steel", "sources"}
ROOT = laws.FOLDER.parent


@pytest.fixture(scope="module")
def tables() -> laws.Tables:
    return laws.read()


def test_the_package_is_sound() -> None:
    """Frictionless (the Data Package library) and the structural checks of the build find nothing."""
    assert check_tables.problems(laws.FOLDER) == []


@pytest.mark.parametrize("law", laws.LAWS, ids=lambda law: law.__name__)
def test_law_holds(law: laws.Law, tables: laws.Tables) -> None:
    assert law(tables) == []


@pytest.mark.parametrize("law", laws.LAWS, ids=lambda law: law.__name__)
def test_law_reports_a_wrong_cell(law: laws.Law, tables: laws.Tables) -> None:
    """A law that nothing can break is no law: each one reports at least one changed cell, in words."""
    seen = mutate_tables.tables_seen_by(law, tables)
    assert any(
        mutate_tables.with_change(change, tables[name], lambda: _reports(law, tables))
        for name in sorted(seen - {"sources"}, key=lambda name: len(tables[name]))
        for change in mutate_tables.changes(tables[name])
    )


def _reports(law: laws.Law, tables: laws.Tables) -> bool:
    try:
        return any(isinstance(sentence, str) and sentence for sentence in law(tables))
    except (ArithmeticError, LookupError, TypeError, ValueError):
        return False  # it stopped on the wrong cell, which is not saying what is wrong


@pytest.mark.parametrize("resource", CLAIMS, ids=lambda r: r["name"])
def test_second_copy_agrees(resource: dict[str, object], tables: laws.Tables) -> None:
    """Every table with figures has a second copy (tests/data/second/README.md says how it was typed)."""
    name = str(resource["name"])
    if any(row["quantity"] != "rule" for row in tables[name]):
        assert second_copy.claims(name), f"{name} has no second copy"
        assert second_copy.differences(name, tables[name], tuple(resource["schema"]["primaryKey"])) == []


@pytest.mark.parametrize("name", sorted(path.stem for path in recalled.RECALLED.glob("*.csv")))
def test_blind_recall_agrees(name: str, tables: laws.Tables) -> None:
    """What was recalled of the prints without sight of the tables (tests/data/recalled/README.md)."""
    assert len(recalled.claims(name)) > 0
    assert recalled.differences(name, tables[name]) == []


@pytest.mark.parametrize("resource", CLAIMS, ids=lambda r: r["name"])
def test_every_row_names_a_source_and_a_place_in_it(resource: dict[str, object], tables: laws.Tables) -> None:
    cards = {card["key"] for card in tables["sources"]}
    for number, row in enumerate(tables[str(resource["name"])], start=2):
        assert row["source"] in cards, f"{resource['path']}, row {number}: no card for {row['source']}"
        assert len(row["locator"].strip()) > 1, f"{resource['path']}, row {number}: no locator"


def test_every_source_card_is_used(tables: laws.Tables) -> None:
    """A card that neither a table nor a worksheet names is a leftover."""
    used = {row["source"] for name, rows in tables.items() if name != "sources" for row in rows}
    code = "\n".join(path.read_text(encoding="utf-8") for path in sorted((ROOT / "calc").rglob("*.py")))
    unused = [
        c["key"]
        for c in tables["sources"]
        if c["key"] not in used and not re.search(rf'["\']{c["key"]}["\']', code)
    ]
    assert unused == []


@pytest.mark.parametrize("resource", RESOURCES, ids=lambda r: r["name"])
def test_the_page_generator_finds_what_it_needs(resource: dict[str, object], tables: laws.Tables) -> None:
    about = resource["linkwright"]
    rows = tables[str(resource["name"])]
    assert about["question"] == resource["title"]
    assert about["group"] in GROUPS
    assert about["use"] in {"lift", "tie_down", "neither", "mixed"}
    layout = about["layout"]
    for column in (*layout["rows"], *layout["columns"], layout["cell"], *about["filters"]):
        assert column in rows[0], f"{resource['name']}: no column {column}"
    places = [tuple(row[column] for column in (*layout["rows"], *layout["columns"])) for row in rows]
    assert len(set(places)) == len(places), f"{resource['name']}: the wide view has two values in one cell"


def test_rows_from_memory_are_held_by_a_law(tables: laws.Tables) -> None:
    known = {law.__name__ for law in laws.LAWS}
    with_memory = {name for name, (_, _, memory) in laws.HOW_SEEN.items() if memory}
    assert with_memory == set(laws.HELD_BY)
    for name, holding in laws.HELD_BY.items():
        assert set(holding) <= known
        if not holding:
            assert all(row["unit"] == "text" for row in tables[name] if row["checked"] == "memory"), name


def test_the_withdrawn_tables_are_not_here(tables: laws.Tables) -> None:
    """29 CFR 1910.184 N-184-1 (old) and 1926.251 H-1 (old) were withdrawn in 2011 and 2012: 1/4 in alloy at 3,250 lb and the like."""
    assert not [r for r in tables["chain-lifting"] if r["size_in"] == "1/4"]
    assert not [
        r for r in tables["chain-lifting"] if r["value"] in {"3,250", "6,600", "11,250", "16,500", "23,000"}
    ]


# --------------------------------------------------------------------------- printed anchors, quoted by source
ANCHORS = [
    (
        "chain-tie-down",
        {"grade": "70", "size_in": "3/8", "unit": "lb"},
        "6,600",
        "US Army TM 55-2350-224-14 Table 2-3 prints the same",
    ),
    (
        "chain-lifting",
        {"grade": "80", "size_in": "9/32", "legs": "2", "angle_from_horizontal": "45"},
        "4,900",
        "OSHA Guidance Table 1 (the sine gives 4,950)",
    ),
    ("chain-lifting", {"grade": "80", "size_in": "3/8", "legs": "1"}, "7,100", "OSHA Guidance Table 1"),
    (
        "chain-lifting-metric",
        {"grade": "8", "size_mm": "10", "legs": "2", "angle_from_vertical": "0-45"},
        "4,250",
        "DGUV 209-021 (1.4 x 3,150 is 4,410)",
    ),
    (
        "chain-strength",
        {"grade": "4", "size_mm": "10", "quantity": "minimum_breaking_force"},
        "62.8",
        "BS EN 818-3 Table 5",
    ),
    ("chain-wear", {"size_in": "3/8", "source": "michigan-r408"}, "19/64", "Mich. R 408.14923 Table 1"),
    (
        "fibre-rope-slings",
        {"sling": "eye_and_eye", "size_in": "1", "hitch": "vertical"},
        "1,800",
        "29 CFR 1918 App. II Table 2",
    ),
    (
        "wire-rope-clips",
        {"size_in": "1", "quantity": "clips_drop_forged"},
        "5",
        "29 CFR 1918 App. II Table 1",
    ),
    (
        "steel-hot-strength",
        {"temperature_degC": "600", "quantity": "yield_factor"},
        "0.470",
        "EN 1993-1-2 Table 3.1",
    ),
    (
        "densities",
        {"material": "steel", "source": "gere", "quantity": "density_high"},
        "490",
        "Gere, density table; Iowa DOT IM 452.02",
    ),
]


@pytest.mark.parametrize(
    ("name", "where", "printed", "source"), ANCHORS, ids=lambda x: x if isinstance(x, str) else ""
)
def test_printed_anchor(
    name: str, where: dict[str, str], printed: str, source: str, tables: laws.Tables
) -> None:
    rows = [row for row in tables[name] if all(row[c] == v for c, v in where.items())]
    assert [row["value"] for row in rows] == [printed], source


def test_army_manual_shackle_and_fibre_examples(tables: laws.Tables) -> None:
    """29 CFR 1918 App. II, 1 in rope: 3,600 / 3,100 / 2,600 / 1,800 lb at 0, 30, 45 and 60 degrees from vertical."""
    row = {
        r["angle_from_vertical"]: r["value"]
        for r in tables["fibre-rope-slings"]
        if r["sling"] == "eye_and_eye" and r["size_in"] == "1" and r["hitch"] == "basket"
    }
    assert row == {"0": "3,600", "30": "3,100", "45": "2,600", "60": "1,800"}


# --------------------------------------------------------------------------- damaged files are refused
ENOUGH_TO_DAMAGE = {
    "chain-tie-down",
    "chain-lifting",
    "chain-which-may-lift",
    "shackles",
    "shackles-dee",
    "eyebolts",
    "sources",
}


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    """A folder of a few tables with their descriptor, to be damaged."""
    package = laws.descriptor()
    package["resources"] = [r for r in package["resources"] if r["name"] in ENOUGH_TO_DAMAGE]
    for resource in package["resources"]:
        shutil.copy(laws.FOLDER / resource["path"], tmp_path)
    (tmp_path / "datapackage.json").write_text(json.dumps(package), encoding="utf-8")
    return tmp_path


def test_the_copy_is_sound_before_it_is_damaged(copy: Path) -> None:
    assert check_tables.problems(copy) == []


def _edit(folder: Path, file_name: str, change: Callable[[list[str]], None]) -> None:
    path = folder / file_name
    lines = path.read_text(encoding="utf-8").splitlines()
    change(lines)
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")


def _cell(folder: Path, file_name: str, row: int, column: str, text: str) -> None:
    path = folder / file_name
    with path.open(newline="", encoding="utf-8") as stream:
        rows = list(csv.reader(stream))
    rows[row - 1][rows[0].index(column)] = text
    with path.open("w", newline="", encoding="utf-8") as stream:
        csv.writer(stream, lineterminator="\n").writerows(rows)


@pytest.mark.parametrize(
    ("column", "text", "words"),
    [
        ("value", "3,150 lb", ["row 7", "column value", "plain number", "column unit"]),
        ("value", "", ["row 7", "value"]),
        ("value", "three", ["row 7", "column value"]),
        ("unit", "stone", ["row 7", "column unit"]),
        ("grade", "71", ["row 7", "column grade"]),
        ("size_in", "3/8 in", ["row 7", "column size_in"]),
        ("size_mm", "ten", ["row 7", "column size_mm"]),
        ("checked", "sure", ["row 7", "column checked"]),
        ("source", "my-uncle", ["row 7", "source"]),
        ("source", "", ["row 7", "source"]),
        ("locator", "", ["row 7", "locator"]),
    ],
)
def test_a_bad_cell_is_refused_by_file_row_and_column(
    copy: Path, column: str, text: str, words: list[str]
) -> None:
    _cell(copy, "chain-tie-down.csv", 7, column, text)
    found = check_tables.problems(copy)
    assert any(all(word in line for word in ["chain-tie-down.csv", *words]) for line in found), found


def test_a_unit_typed_in_a_mixed_column_is_refused(copy: Path) -> None:
    """Also where the schema lets words through: the unit promises a number."""
    _cell(copy, "chain-which-may-lift.csv", 3, "unit", "lb")
    assert any("chain-which-may-lift.csv, row 3, column" in line for line in check_tables.problems(copy))


def test_a_duplicate_key_is_refused(copy: Path) -> None:
    _edit(copy, "shackles.csv", lambda lines: lines.insert(5, lines[4]))
    found = check_tables.problems(copy)
    assert any("shackles.csv, row 6" in line and "the same as in the row 5" in line for line in found), found


def test_a_source_card_that_is_gone_is_missed(copy: Path) -> None:
    _edit(
        copy,
        "sources.csv",
        lambda lines: lines.remove(next(line for line in lines if line.startswith("lloyds-lame,"))),
    )
    found = check_tables.problems(copy)
    assert any("shackles-dee.csv, row 2" in line and "lloyds-lame" in line for line in found), found


@pytest.mark.parametrize(
    "change",
    [
        lambda lines: lines.__setitem__(4, lines[4] + ",one cell too many"),
        lambda lines: lines.__setitem__(4, lines[4].rsplit(",", 3)[0]),
        lambda lines: lines.__setitem__(4, ""),
        lambda lines: lines.__setitem__(4, '"' + lines[4]),
    ],
    ids=["a cell too many", "cells missing", "empty line", "open quote"],
)
def test_a_broken_line_is_refused(copy: Path, change: Callable[[list[str]], None]) -> None:
    _edit(copy, "chain-lifting.csv", change)
    found = check_tables.problems(copy)
    assert any(line.startswith("chain-lifting.csv, row 5") for line in found), found


def test_a_heading_that_was_changed_is_refused(copy: Path) -> None:
    _edit(copy, "eyebolts.csv", lambda lines: lines.__setitem__(0, lines[0].replace("thread", "size")))
    assert any(line.startswith("eyebolts.csv") and "thread" in line for line in check_tables.problems(copy))


def test_a_file_that_is_not_text_is_refused(copy: Path) -> None:
    (copy / "eyebolts.csv").write_bytes(b"thread,quantity\xff\xfe\x00,value\n1,2,3\n")
    assert any(line.startswith("eyebolts.csv") for line in check_tables.problems(copy))


def test_a_missing_and_a_stray_file_are_named(copy: Path) -> None:
    (copy / "eyebolts.csv").rename(copy / "eyebolts-old.csv")
    assert check_tables.problems(copy) == [
        "eyebolts-old.csv: not listed in datapackage.json",
        "eyebolts.csv: listed in datapackage.json but missing",
    ]


def test_a_broken_descriptor_is_named(copy: Path) -> None:
    (copy / "datapackage.json").write_text('{"resources": [', encoding="utf-8")
    (problem,) = check_tables.problems(copy)
    assert problem.startswith("datapackage.json: cannot be read")


def test_the_command_says_so_and_fails(
    copy: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    _cell(copy, "chain-tie-down.csv", 7, "value", "3,150 lb")
    monkeypatch.setattr(check_tables, "TABLES", copy)
    assert check_tables.main() == 1
    assert "chain-tie-down.csv, row 7, column value" in capsys.readouterr().err


# --------------------------------------------------------------------------- one-cell lies are caught
def test_one_cell_lies_are_caught() -> None:
    """One change in seventeen, picked by a fixed seed; `python build_scripts/mutate_tables.py` tries every one."""
    counts = mutate_tables.run(share=0.06, seed=20261)
    assert sum(count.changes for count in counts) > 2000
    assert [(count.name, change) for count in counts for change in count.missed] == []


def test_the_mutation_tool_reports_a_lie_that_nobody_catches(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """With the laws, recalls and second copies taken away nothing is caught, and the tool says so and fails."""
    monkeypatch.setattr(laws, "LAWS", ())
    monkeypatch.setattr(recalled, "claims", lambda name: ())
    monkeypatch.setattr(second_copy, "claims", lambda name: ())
    assert mutate_tables.main(["chain-heat-en"]) == 1
    assert "missed: chain-heat-en.csv, row 2, column value: 100 -> 101 (step up)" in capsys.readouterr().out
    assert mutate_tables.main(["youngs-modulus"]) == 2


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        (
            "6,600",
            {
                "step up": "6,601",
                "step down": "6,599",
                "shown step up": "6,700",
                "shown step down": "6,500",
                "digits swapped": "6,060",
            },
        ),
        ("0.342", {"step up": "0.343", "step down": "0.341", "digits swapped": "3.042"}),
        ("1-1/4", {"step up": "1-2/4", "step down": "1-0/4", "digits swapped": "1-4/1"}),
        ("9,999", {"step up": "10,000", "step down": "9,998"}),
        ("0", {"step up": "1", "step down": "-1"}),
        (
            "-40",
            {
                "step up": "-39",
                "step down": "-41",
                "shown step up": "-30",
                "shown step down": "-50",
                "digits swapped": "-04",
            },
        ),
        (
            "5.0",
            {
                "step up": "5.1",
                "step down": "4.9",
                "shown step up": "6.0",
                "shown step down": "4.0",
                "digits swapped": "0.5",
            },
        ),
    ],
)
def test_the_changes_of_a_number(text: str, wanted: dict[str, str]) -> None:
    assert mutate_tables.number_changes(text) == wanted


def test_descriptor_lists_tables_in_the_order_of_their_groups() -> None:
    """Names are kebab-case and equal the file names."""
    for resource in RESOURCES:
        assert resource["path"] == f"{resource['name']}.csv"
        assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", resource["name"])
    assert json.dumps(laws.descriptor())
