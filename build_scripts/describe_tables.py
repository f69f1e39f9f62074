"""Writes what is generated from the tables' declarations and words:

    tables/datapackage.json    the Data Package (Frictionless standard) that describes every table to other programs
    tables/index.json          what calc reads: the tables in order, and the sense and dimension of each quantity

    python -m build_scripts.describe_tables

Both are committed; a test and the check of the tables say so where they are out of date. Neither is edited by hand.
"""

from __future__ import annotations

import json
import sys
import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from build_scripts import table_words
from build_scripts.table_declaration import TABLES, Column, Declaration, TableRefused, read_declarations
from calc.quantities import unit_text

ROOT = TABLES.parent
PACKAGE, INDEX = "datapackage.json", "index.json"
COMMAND = "python -m build_scripts.describe_tables"

LICENCE = {
    "name": "CC-BY-4.0",
    "path": "https://creativecommons.org/licenses/by/4.0/",
    "title": "Creative Commons Attribution 4.0 (selection, arrangement and words; a figure alone is a fact)",
}
"""The one licence of the tables; the file LICENSE says the same in its points 2 and 3."""
HEAD: dict[str, Any] = {
    "name": "linkwright-tables",
    "title": "Linkwright: cited tables for lifting, pulling and tie-down hardware",
    "description": (
        "One claim a row; each row names its source, the place in it, and how it was read. "
        "The mark or tag on the part governs over any row here."
    ),
    "licenses": [LICENCE],
}


def package(tables: Mapping[str, Declaration]) -> dict[str, Any]:
    """The Data Package descriptor of the tables; raises MissingWords."""
    return {**HEAD, "version": edition(), "resources": [resource(one) for one in tables.values()]}


def edition() -> str:
    """The edition of the book, which is the version of its tables."""
    with (ROOT / "pyproject.toml").open("rb") as file:
        return str(tomllib.load(file)["project"]["version"])


def index(tables: Mapping[str, Declaration]) -> dict[str, dict[str, list[str]]]:
    """Table -> quantity -> its sense and dimension, the tables in order."""
    return {
        name: {key: [one.sense, one.dimension] for key, one in declared.quantities.items()}
        for name, declared in tables.items()
    }


def written(tables: Mapping[str, Declaration]) -> dict[str, str]:
    """The text of each generated file by its name."""
    lines = [
        f"{json.dumps(name)}: {json.dumps(quantities, separators=(',', ':'))}"
        for name, quantities in index(tables).items()
    ]
    return {
        PACKAGE: json.dumps(package(tables), ensure_ascii=False, indent=1) + "\n",
        INDEX: "{\n" + ",\n".join(lines) + "\n}\n",
    }


def stale(folder: Path, tables: Mapping[str, Declaration]) -> list[str]:
    """A sentence for each generated file of `folder` that does not say what the declarations say."""
    return [
        f"{name}: is out of date; run {COMMAND}"
        for name, text in written(tables).items()
        if not (folder / name).is_file() or (folder / name).read_text(encoding="utf-8") != text
    ]


def write(folder: Path = TABLES) -> None:
    """Write the generated files of `folder` that are out of date; raises TableRefused or MissingWords."""
    for name, text in written(read_declarations(folder)).items():
        path = folder / name
        if not path.is_file() or path.read_text(encoding="utf-8") != text:
            path.write_text(text, encoding="utf-8")


def _english(name: str, key: str) -> str:
    """Words of a table in the language of the descriptor, whatever the language of the build."""
    return table_words.text(name, key, "en")


def resource(declared: Declaration) -> dict[str, Any]:
    """What the descriptor says of one table; raises MissingWords."""
    name = declared.name
    schema: dict[str, Any] = {
        "fields": [_field(name, column) for column in declared.columns.values()],
        "primaryKey": list(declared.key),
        "missingValues": [""],
    }
    if "source" in declared.columns:
        schema["foreignKeys"] = [
            {"fields": ["source"], "reference": {"resource": "sources", "fields": ["key"]}}
        ]
    return {
        "name": name,
        "path": f"{name}/{declared.claims.name}",
        "title": _english(name, "question"),
        "description": _english(name, "description"),
        "type": "table",
        "scheme": "file",
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "linkwright": _meaning(declared),
        "schema": schema,
    }


def _meaning(declared: Declaration) -> dict[str, Any]:
    """What the standard has no word for: what the table is for, and what its values and columns mean."""
    name = declared.name
    return {
        "group": declared.group,
        "use": declared.use,
        "safety": declared.safety,
        "notes": [_english(name, f"note-{key}") for key in declared.notes],
        "cautions": [
            {"kind": one.kind, "text": _english(name, f"caution-{one.key}")} for one in declared.cautions
        ],
        "roles": {
            column.name: column.role
            for column in declared.columns.values()
            if column.role != column.name or column.name not in ("value", "unit")
        },
        "quantities": {
            key: {"sense": one.sense, "dimension": one.dimension, "rating": one.rating}
            for key, one in declared.quantities.items()
        },
    }


def _field(name: str, column: Column) -> dict[str, Any]:
    title = _english(name, f"column-{column.name}")
    described: dict[str, Any] = {
        "name": column.name,
        "type": column.type,
        "title": f"{title} [{unit_text(column.unit)}]" if column.unit else title,
    }
    if table_words.has(name, explained := f"column-{column.name}.help", "en"):
        described["description"] = _english(name, explained)
    rules: dict[str, Any] = {} if column.optional else {"required": True}
    if column.allowed:
        rules["enum"] = list(column.allowed)
    if column.pattern:
        rules["pattern"] = column.pattern
    if column.minimum is not None:
        rules["minimum"] = column.minimum
    if column.least:
        rules["minLength"] = column.least
    if rules:
        described["constraints"] = rules
    return described


def main() -> int:
    """Command line; 1 and one line on stderr where a declaration or its words do not fit."""
    try:
        write()
    except (TableRefused, table_words.MissingWords) as wrong:
        print(wrong, file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
