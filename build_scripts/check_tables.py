"""Refuses a damaged table: names the file, the row, the column, the reason and the remedy, before anything is built.

    python -m build_scripts.check_tables

What is looked at, in this order; the next is only asked where the one before found nothing:

    the folders         each table is a folder with claims.csv and table.toml, and nothing lies beside them
    the declarations    table.toml fits its claims.csv and tables/shared.toml
    the words           every heading, quantity, caution and note stands in docs/words
    the rows            the `frictionless` library holds every file against the Data Package that the declarations make;
                        and a value whose unit promises a number is a plain one, within the bounds of that unit
    the rows' words     every word of a key column and every note of a row stands in docs/words, and no word is left over
    what is generated   datapackage.json and index.json say what the declarations say

It exits 1 and prints one line a problem.
"""

from __future__ import annotations

import csv
import difflib
import re
import sys
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from typing import Any

import frictionless

from build_scripts import describe_tables, table_words
from build_scripts.table_declaration import (
    CLAIMS,
    DECLARATION,
    SHARED,
    TABLES,
    WORDED,
    Column,
    Declaration,
    TableRefused,
    read_declarations,
    shared,
)
from calc.quantities import plain_number

PLAIN_NUMBER = re.compile(r"-?([0-9]{1,3}(,[0-9]{3})+|[0-9]+)(\.[0-9]+)?|([0-9]+-)?[0-9]+/[0-9]+")
_BESIDE = {SHARED, describe_tables.PACKAGE, describe_tables.INDEX, "README.md"}


def problems(folder: Path | str = TABLES) -> list[str]:
    """Every fault of the tables in `folder`, as sentences that name file, row, column, reason and remedy; empty if sound.

    Rows are counted as an editor shows them: the heading is row 1.
    """
    folder = Path(folder)
    if found := _folder_problems(folder):
        return found
    try:
        tables = read_declarations(folder)
    except TableRefused as refused:
        return [str(refused)]
    if found := [problem for declared in tables.values() for problem in _lacking(declared, _keys(declared))]:
        return found
    found, bounds = _schema_problems(folder, tables), shared(folder)["bounds"]
    for declared in tables.values():
        found += [problem for problem in _number_problems(declared, bounds) if problem not in found]
    found = found or [problem for declared in tables.values() for problem in _row_word_problems(declared)]
    return found or describe_tables.stale(folder, tables)


def _folder_problems(folder: Path) -> list[str]:
    """What lies where it should not, and what is not there."""
    found = []
    for path in sorted(folder.iterdir()):
        if path.is_file() and path.name not in _BESIDE:
            found.append(f"{path.name}: lies beside the tables; a table is a folder NAME with {CLAIMS} in it")
        elif path.is_dir() and path.name != "__pycache__":
            found += [
                f"{path.name}/{name}: is missing; tables/README.md says what stands in it"
                for name in (CLAIMS, DECLARATION)
                if not (path / name).is_file()
            ]
    return found


def _keys(declared: Declaration) -> list[str]:
    """The keys of the words that a declaration needs."""
    keys = ["question", "description", *(f"column-{name}" for name in declared.columns)]
    keys += [f"note-{key}" for key in declared.notes]
    keys += [f"caution-{one.key}" for one in declared.cautions]
    for quantity in declared.quantities.values():
        keys += [f"quantity-{name}" for name in (quantity.name, quantity.range) if name]
    return keys


def _lacking(declared: Declaration, keys: Iterable[str]) -> Iterator[str]:
    """A sentence for each key that a table has no words for."""
    for key in keys:
        try:
            table_words.say(declared.name, key)
        except table_words.MissingWords as missing:
            yield str(missing)


def _row_word_problems(declared: Declaration) -> Iterator[str]:
    """The words that the rows of a table need and have not, and those in its file that nothing asks for."""
    asked = dict(_asked_by_rows(declared))
    yield from _lacking(declared, sorted(key for key, needed in asked.items() if needed))
    known = {*asked, *_keys(declared)}
    for key in table_words.own_keys(declared.name):
        if key not in known and "." not in key and not key.startswith(("word-source-", "chart-")):
            yield (
                f"docs/words/en/{table_words.scope(declared.name)}.ftl: nothing asks for {key}; "
                "take it out, or mend the key"
            )


def _asked_by_rows(declared: Declaration) -> Iterator[tuple[str, bool]]:
    """The keys of the words that the rows of a table may have, and whether they must have them."""
    with declared.claims.open(newline="", encoding="utf-8") as stream:
        for row in csv.DictReader(stream):
            if row.get("note"):
                yield f"note-{row['note']}", True
            for column in declared.columns.values():
                if value := row.get(column.name):
                    yield table_words.word_key(column.name, value), needs_words(column, value)


def needs_words(column: Column, value: str) -> bool:
    """Whether a value of a key column must have words: one that is no number, size or mark."""
    if not value or (PLAIN_NUMBER.fullmatch(value) and column.role != "legs"):
        return False
    if column.role == "grade":
        return not value.isdigit() and len(value) > 1
    return column.role in WORDED or (column.role.startswith("temperature") and value == "none")


def _schema_problems(folder: Path, tables: Mapping[str, Declaration]) -> list[str]:
    """What the frictionless library finds, one sentence a fault, in the words of this book."""
    descriptor = describe_tables.package(tables)
    report = frictionless.Package.from_descriptor(descriptor, basepath=str(folder)).validate()
    found = [f"{describe_tables.PACKAGE}: {error.message}" for error in report.errors]
    schemas = {resource["path"]: resource["schema"] for resource in descriptor["resources"]}
    for task in report.tasks:
        file_name = Path(task.place).as_posix()
        errors = [error.to_dict() for error in task.errors]
        short_rows = {error["rowNumber"] for error in errors if error["type"] == "missing-cell"}
        blank_rows = {error["rowNumber"] for error in errors if error["type"] == "blank-row"}
        found += [
            f"{file_name}, row {row}: has fewer cells than the heading; a comma or a quote is missing"
            for row in sorted(short_rows)
        ]
        found += [
            _sentence(file_name, error, schemas[file_name])
            for error in errors
            if error.get("rowNumber") not in short_rows
            and not (error["type"] == "primary-key" and error["rowNumber"] in blank_rows)
        ]
    return found


def _sentence(file_name: str, error: dict[str, Any], schema: dict[str, Any]) -> str:
    """One fault: file, row, column, what is wrong with it and what to do."""
    place, column = [file_name], error.get("fieldName", "")
    if "rowNumber" in error:
        place.append(f"row {error['rowNumber']}")
    if error["type"] == "foreign-key":
        place.append(f"column {error['fieldNames'][0]}")
    if column:
        place.append(f"column {column}")
    return f"{', '.join(place)}: {_reason(error, schema)}"


_REASONS = {
    "type-error": "“{cell}” is not a number; write the number alone",
    "extra-cell": "has more cells than the heading; a text with a comma wants quotes",
    "blank-row": "is empty; take the line out",
}


def _reason(error: dict[str, Any], schema: dict[str, Any]) -> str:
    cell, note, kind = error.get("cell", ""), error.get("note", ""), error["type"]
    if kind == "foreign-key":
        key = error["fieldCells"][0]
        return f"there is no card “{key}” in sources/{CLAIMS}; write one there, or mend the key"
    if kind == "primary-key":
        same = note.replace("at position ", "")
        return f"its key ({', '.join(schema['primaryKey'])}) is {same}; each row wants its own"
    if kind == "constraint-error":
        column = next(field for field in schema["fields"] if field["name"] == error["fieldName"])
        return _constraint(cell, note, column)
    return _REASONS.get(kind, str(error["message"])).format(cell=cell)


def _constraint(cell: str, note: str, column: dict[str, Any]) -> str:
    if '"required"' in note:
        return f"is empty; {column.get('description', 'it must be given')}"
    if '"enum"' in note:
        return f"“{cell}” is not known; it may be {_words_near(str(cell), column['constraints']['enum'])}"
    if column["name"] == "value":
        return f"“{cell}” is not a plain number; write the number alone, its unit stands in the column unit"
    return f"“{cell}” is not written as this column is. {column.get('description', note)}"


def _words_near(given: str, known: list[str]) -> str:
    """The allowed words if they are few, else those nearest to what was given and where the rest stands."""
    if len(known) <= 12:
        return ", ".join(known)
    near = difflib.get_close_matches(given, known, n=4, cutoff=0.4)
    return (
        f"{', '.join([*near, 'another'])} of the {len(known)} words that {DECLARATION} allows in this column"
    )


def _number_problems(declared: Declaration, bounds: Mapping[str, tuple[float, float]]) -> list[str]:
    """Rows whose unit promises a number but whose value is not a plain one (a unit typed beside it, a blank), or is one
    that no value in this unit can be.
    """
    found: list[str] = []
    with declared.claims.open(newline="", encoding="utf-8", errors="replace") as stream:
        for row_number, row in enumerate(csv.DictReader(stream), start=2):
            value, unit = row.get("value"), row.get("unit")
            if value is None or unit in (None, "text"):
                continue
            place = f"{declared.name}/{CLAIMS}, row {row_number}, column value"
            if not PLAIN_NUMBER.fullmatch(value):
                found.append(
                    f"{place}: “{value}” is not a plain number; "
                    "write the number alone, its unit stands in the column unit"
                )
            elif unit in bounds and not bounds[unit][0] <= plain_number(value) <= bounds[unit][1]:
                found.append(
                    f"{place}: “{value}” lies outside {bounds[unit][0]:,} to {bounds[unit][1]:,} {unit}; mend it, or "
                    f"widen [bounds] of {SHARED} if a part of the trade goes so far"
                )
    return found


def main() -> int:
    """Print every problem of the tables; 1 if there is one."""
    found = problems(TABLES)
    for line in found:
        print(line, file=sys.stderr)
    if not found:
        print("tables: no problem found")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
