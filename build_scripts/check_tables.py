"""Refuses a damaged table: names the file, the row, the column and the reason, before anything is built from it.

The Data Package (`tables/datapackage.json`) states types, units, allowed words, keys and the link to the sources; the
`frictionless` library checks every file against it. What the schema cannot say is checked here: a number column holds
a plain number, and every file is listed.
Run it as `python build_scripts/check_tables.py`; it exits 1 and prints one line a problem.
"""

from __future__ import annotations

import csv
import difflib
import json
import re
import sys
from pathlib import Path
from typing import Any

import frictionless

TABLES = Path(__file__).resolve().parent.parent / "tables"
PLAIN_NUMBER = re.compile(r"-?([0-9]{1,3}(,[0-9]{3})+|[0-9]+)(\.[0-9]+)?|([0-9]+-)?[0-9]+/[0-9]+")


def problems(folder: Path | str = TABLES) -> list[str]:
    """Every fault of the tables in `folder`, as sentences that name file, row, column and reason; empty if sound.

    Rows are counted as an editor shows them: the heading is row 1.
    """
    folder = Path(folder)
    try:
        descriptor = json.loads((folder / "datapackage.json").read_text(encoding="utf-8"))
    except (OSError, ValueError) as reason:
        return [f"datapackage.json: cannot be read: {reason}"]
    listed = {resource["path"] for resource in descriptor["resources"]}
    found = [
        f"{path.name}: not listed in datapackage.json"
        for path in sorted(folder.glob("*.csv"))
        if path.name not in listed
    ]
    found += [
        f"{name}: listed in datapackage.json but missing"
        for name in sorted(listed)
        if not (folder / name).exists()
    ]
    if found:
        return found
    found = _schema_problems(folder, descriptor)
    for resource in descriptor["resources"]:
        found += [problem for problem in _number_problems(folder, resource) if problem not in found]
    return found


def _schema_problems(folder: Path, descriptor: dict[str, Any]) -> list[str]:
    """What the frictionless library finds, one sentence a fault, in the words of this book."""
    report = frictionless.Package(str(folder / "datapackage.json")).validate()
    found = [f"datapackage.json: {error.message}" for error in report.errors]
    schemas = {resource["path"]: resource["schema"] for resource in descriptor["resources"]}
    for task in report.tasks:
        file_name = Path(task.place).name
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
    """One fault: file, row, column, and what is wrong with it."""
    place, column = [file_name], error.get("fieldName", "")
    if "rowNumber" in error:
        place.append(f"row {error['rowNumber']}")
    if error["type"] == "foreign-key":
        place.append(f"column {error['fieldNames'][0]}")
    if column:
        place.append(f"column {column}")
    return f"{', '.join(place)}: {_reason(error, schema)}"


def _reason(error: dict[str, Any], schema: dict[str, Any]) -> str:
    cell, note = error.get("cell", ""), error.get("note", "")
    kind = error["type"]
    if kind == "foreign-key":
        return f"there is no card “{error['fieldCells'][0]}” in sources.csv"
    if kind == "primary-key":
        return f"its key ({', '.join(schema['primaryKey'])}) is {note.replace('at position ', '')}"
    if kind == "constraint-error":
        column = next(field for field in schema["fields"] if field["name"] == error["fieldName"])
        if '"required"' in note:
            return "is empty"
        if '"enum"' in note:
            return f"“{cell}” is not known; it may be {_words_near(str(cell), column['constraints']['enum'])}"
        if error["fieldName"] == "value":
            return (
                f"“{cell}” is not a plain number; write the number alone, its unit stands in the column unit"
            )
        return f"“{cell}” is not written as this column is. {column.get('description', note)}"
    if kind == "type-error":
        return f"“{cell}” is not a number"
    if kind == "extra-cell":
        return "has more cells than the heading; a text with a comma wants quotes"
    if kind == "blank-row":
        return "is empty"
    return str(error["message"])


def _words_near(given: str, known: list[str]) -> str:
    """The allowed words if they are few, else those nearest to what was given and where the rest stands."""
    if len(known) <= 12:
        return ", ".join(known)
    near = difflib.get_close_matches(given, known, n=4, cutoff=0.4)
    return (
        f"{', '.join([*near, 'another'])} of the {len(known)} words that datapackage.json has for this column"
    )


def _number_problems(folder: Path, resource: dict[str, Any]) -> list[str]:
    """Rows whose unit promises a number but whose value is not a plain one (a unit typed beside it, a blank)."""
    found: list[str] = []
    with (folder / resource["path"]).open(newline="", encoding="utf-8", errors="replace") as stream:
        for row_number, row in enumerate(csv.DictReader(stream), start=2):
            value, unit = row.get("value"), row.get("unit")
            if value is None or unit in (None, "text"):
                continue
            if not PLAIN_NUMBER.fullmatch(value):
                found.append(
                    f"{resource['path']}, row {row_number}, column value: “{value}” is not a plain number; "
                    "write the number alone, its unit stands in the column unit"
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
