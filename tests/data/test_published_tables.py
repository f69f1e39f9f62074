"""The tables as they are published: each form holds what the tables hold, and the numbers beside the figures are theirs."""

from __future__ import annotations

import csv
import io
import json
import shutil
import sqlite3
import zipfile
from fractions import Fraction
from pathlib import Path
from typing import Any

import frictionless
import pytest

from build_scripts import published_tables as published
from build_scripts.describe_tables import LICENCE, ROOT, edition
from build_scripts.table_declaration import declarations, shared
from calc.tables import table, table_names
from calc.words.notes import with_note_in_words


@pytest.fixture(scope="module")
def out(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """All published files."""
    folder = tmp_path_factory.mktemp("published")
    published.publish(folder)
    return folder


def held(name: str) -> list[dict[str, str]]:
    """The rows of a table as its page says them."""
    return [with_note_in_words(name, row) for row in table(name).rows]


def by_hand(printed: str) -> float:
    """A printed figure by exact fractions: `1-3/8`, `3/8`, `4,700`, `0.75`."""
    whole, dash, part = printed.replace(",", "").partition("-") if "/" in printed else (printed, "", "")
    if "/" in whole:
        whole, dash, part = "0", "-", whole
    return float(Fraction(whole.replace(",", "")) + (Fraction(part) if dash else 0))


def test_frictionless_finds_the_package_valid_by_type_range_and_hash(out: Path) -> None:
    report = frictionless.Package(str(out / published.PACKAGE)).validate()
    assert report.valid, report.flatten(["place", "rowNumber", "fieldName", "message"])[:5]
    package = json.loads((out / published.PACKAGE).read_text(encoding="utf-8"))
    assert [one["name"] for one in package["resources"]] == list(table_names())
    for resource in package["resources"]:
        fields = {field["name"]: field for field in resource["schema"]["fields"]}
        assert resource["schema"]["missingValues"] == [""]
        assert {"bytes", "hash"} <= set(resource)
        if "value" in fields:
            number = fields["value_number"]
            assert number["type"] == "number"
            in_words = all(
                one.dimension == "words" for one in declarations()[resource["name"]].quantities.values()
            )
            assert in_words or number["constraints"]["minimum"] < number["constraints"]["maximum"]
            assert resource["sources"]


@pytest.mark.parametrize(
    ("number", "kinds"),
    [
        ("strong", {"type-error"}),
        ("-3", {"constraint-error"}),
        ("9000000", {"constraint-error"}),
        ("3000", set()),
    ],
)
def test_frictionless_refuses_a_wrong_number(out: Path, tmp_path: Path, number: str, kinds: set[str]) -> None:
    text = (out / "chain-tie-down.csv").read_text(encoding="utf-8").splitlines(keepends=True)
    fields = next(csv.reader([text[0]]))
    cells = next(csv.reader([text[1]]))
    cells[fields.index("value_number")] = number
    stream = io.StringIO()
    csv.writer(stream, lineterminator="\n").writerow(cells)
    (tmp_path / "chain-tie-down.csv").write_text(
        "".join([text[0], stream.getvalue(), *text[2:]]), encoding="utf-8"
    )
    shutil.copyfile(out / "sources.csv", tmp_path / "sources.csv")
    package = json.loads((out / published.PACKAGE).read_text(encoding="utf-8"))
    package["resources"] = [
        one for one in package["resources"] if one["name"] in ("chain-tie-down", "sources")
    ]
    report = frictionless.Package.from_descriptor(package, basepath=str(tmp_path)).validate()
    kinds_found = {error for (error,) in report.flatten(["type"])}
    assert "hash-count" in kinds_found, "the file is not the one that was described"
    assert kinds_found - {"hash-count", "byte-count"} == kinds


def test_every_number_is_its_figure_by_another_reckoning(out: Path) -> None:
    counted = 0
    for name, declared in declarations().items():
        with (out / f"{name}.csv").open(newline="", encoding="utf-8") as stream:
            rows = list(csv.DictReader(stream))
        for row in rows:
            if row.get("unit", "text") != "text":
                assert float(row["value_number"]) == pytest.approx(by_hand(row["value"]), rel=1e-12), (
                    name,
                    row,
                )
                counted += 1
            elif "value_number" in row:
                assert row["value_number"] == ""
            for column in declared.with_role(*published.NUMBERED):
                number = row[f"{column}_number"]
                assert (number == "") is (" x " in row[column]), (name, row)
                assert not number or float(number) == by_hand(row[column])
    assert counted > 3000


@pytest.mark.parametrize(
    ("printed", "unit", "dimension", "number"),
    [
        ("1-3/8", "in", "length", 1.375),
        ("13/64", "in", "length", 0.203125),
        ("4,700", "lb", "weight", 4700.0),
        ("5 ft 3 in", "in", "length", 63.0),
        ("1 t 250 kg", "kg", "weight", 1250.0),
        ("2-1/4 x 0.08", "in", "length", None),
        ("by the tag", "lb", "load", None),
        ("Never weld it.", "text", "words", None),
        ("", "", "length", None),
    ],
)
def test_fractions_and_mixed_units_are_read(
    printed: str, unit: str, dimension: str, number: float | None
) -> None:
    assert published.as_number(printed, unit, dimension) == number


def test_the_archive_holds_the_tables_and_is_the_same_every_time(out: Path, tmp_path: Path) -> None:
    published.write_archive(tmp_path / "again.zip", dict(reversed(published.files_of_tables().items())))
    assert (tmp_path / "again.zip").read_bytes() == (out / published.ARCHIVE).read_bytes()
    assert (out / published.ARCHIVE).stat().st_size <= published.MOST_OFFLINE_BYTES
    with zipfile.ZipFile(out / published.ARCHIVE) as archive:
        assert archive.testzip() is None
        tables = {f"{name}.csv" for name in table_names()}
        assert set(archive.namelist()) == tables | {published.PACKAGE, "README.md", "LICENSE"}
        assert {entry.date_time for entry in archive.infolist()} == {(1980, 1, 1, 0, 0, 0)}
        for name in table_names():
            content = archive.read(f"{name}.csv")
            assert content == (out / f"{name}.csv").read_bytes()
            rows = [
                {key: text for key, text in row.items() if key in table(name).columns}
                for row in csv.DictReader(io.StringIO(content.decode()))
            ]
            assert rows == held(name)


def test_the_single_json_and_the_file_of_each_table_hold_the_tables(out: Path) -> None:
    made = json.loads((out / published.DOCUMENT).read_text(encoding="utf-8"))
    assert list(made["tables"]) == list(table_names())
    for name, declared in declarations().items():
        one = made["tables"][name]
        printed = [{column: row[column] for column in table(name).columns} for row in one["rows"]]
        assert printed == held(name)
        assert set(one["quantities"]) == set(declared.quantities)
        assert len(one["cautions"]) == len(declared.cautions)
        if name != "sources":
            alone = json.loads((out / f"{name}.json").read_text(encoding="utf-8"))
            assert alone["rows"] == one["rows"]
            assert {card["key"] for card in alone["sources"]} == {row["source"] for row in one["rows"]}


def test_the_database_holds_the_tables(out: Path, tmp_path: Path) -> None:
    connection = sqlite3.connect(out / published.DATABASE)
    connection.row_factory = sqlite3.Row
    assert connection.execute("PRAGMA foreign_key_check").fetchall() == []
    assert connection.execute("PRAGMA integrity_check").fetchone()[0] == "ok"
    for name, declared in declarations().items():
        rows = connection.execute(f"SELECT * FROM {published.sql_name(name)}").fetchall()
        numeric = {column.name for column in declared.columns.values() if column.type == "number"}
        got = [{key: row[key] for key in table(name).columns} for row in rows]
        wanted = [
            {key: float(text) if key in numeric else text for key, text in row.items()} for row in held(name)
        ]
        assert got == wanted
    every = connection.execute("SELECT count(*), count(value_number) FROM claims").fetchone()
    figures = [row for name in table_names() if name != "sources" for row in table(name).rows]
    assert tuple(every) == (len(figures), sum(row["unit"] != "text" for row in figures))
    most = connection.execute(
        "SELECT value FROM claims WHERE table_name = 'chain-tie-down' AND unit = 'lb' ORDER BY value_number DESC"
    ).fetchone()[0]
    assert by_hand(most) == max(by_hand(row["value"]) for row in table("chain-tie-down").where(unit="lb"))
    connection.close()
    published.write_database(tmp_path / "again.sqlite")
    assert (tmp_path / "again.sqlite").read_bytes() == (out / published.DATABASE).read_bytes()


def test_one_licence_and_one_version_stand_everywhere(out: Path) -> None:
    package = json.loads((out / published.PACKAGE).read_text(encoding="utf-8"))
    whole = json.loads((out / published.DOCUMENT).read_text(encoding="utf-8"))
    alone = json.loads((out / "chain-wear.json").read_text(encoding="utf-8"))
    for made in (package, whole, alone):
        assert made["licenses"] == [LICENCE]
        assert made["version"] == edition()
    connection = sqlite3.connect(out / published.DATABASE)
    said: dict[str, Any] = dict(connection.execute("SELECT name, value FROM package").fetchall())
    connection.close()
    assert (said["version"], said["licence"]) == (edition(), LICENCE["name"])
    archive = zipfile.ZipFile(out / published.ARCHIVE)
    texts = {
        "LICENSE": (ROOT / "LICENSE").read_text(encoding="utf-8"),
        "README.md": (ROOT / "README.md").read_text(encoding="utf-8"),
        "tables-as-data.md": (ROOT / "docs" / "about" / "tables-as-data.md").read_text(encoding="utf-8"),
        "packed README.md": archive.read("README.md").decode(),
        "packed LICENSE": archive.read("LICENSE").decode(),
    }
    for name, text in texts.items():
        words = " ".join(text.split())
        assert "CC BY 4.0" in words or "Creative Commons Attribution 4.0" in words, name
        assert "A single figure" in words, name
        assert "CC0" not in words, name
    assert texts["packed LICENSE"] == texts["LICENSE"]
    assert f"edition {edition()}" in texts["packed README.md"]


def test_every_unit_has_its_bounds() -> None:
    common = shared()
    units = {unit for units in common["dimensions"].values() for unit in units} - {"text"}
    assert set(common["bounds"]) == units
    assert all(least < most for least, most in common["bounds"].values())
