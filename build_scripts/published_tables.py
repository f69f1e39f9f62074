"""Publishes the tables as data, in forms that other programs read: what the pages hand out, and the archive of all of it.

    NAME.csv, NAME.json        each table, its notes in words, a number beside each printed figure
    sources.csv                the cards of the sources
    datapackage.json           what each column and quantity means (Data Package, Frictionless standard)
    linkwright-tables.zip      all of these and the terms, the same bytes whenever the tables are the same
    linkwright-tables.json     all tables in one file
    linkwright-tables.sqlite   all tables as a database, and `claims`, every figure of all of them in one view

A figure stands twice: as its source prints it (`value`, `size_in`), and as a number that calc's own reader made of it
(`value_number`, `size_in_number`), so that fractions need no second reader. The number is in the unit of the row. The
descriptor gives bounds for it (tables/shared.toml, [bounds]) and what rests on the rows: the sources of each table, and
the SHA-256 of each file. The committed tables/datapackage.json describes what the book is made from and has none of these.
"""

from __future__ import annotations

import csv
import functools
import hashlib
import io
import json
import sqlite3
import string
import zipfile
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from build_scripts import table_words
from build_scripts.describe_tables import HEAD, LICENCE, ROOT, edition, resource
from build_scripts.table_declaration import Column, Declaration, declarations, shared
from build_scripts.wording import language
from calc.quantities import NotReadable, from_si, plain_number, read_quantity
from calc.tables import Row, table
from calc.unit_factors import UNIT_FACTORS
from calc.words.notes import with_note_in_words

ARCHIVE, DATABASE, DOCUMENT = (f"linkwright-tables.{suffix}" for suffix in ("zip", "sqlite", "json"))
PACKAGE, SOURCES = "datapackage.json", "sources"
MOST_OFFLINE_BYTES = 300_000
"""The archive is kept on the reader's phone up to this size; the single JSON and the database are not."""
NUMBERED = ("size_inch", "length_inch")
"""Roles of key columns that are printed as shop fractions and get a number beside them."""
_SUFFIX = "_number"
_DATE = (1980, 1, 1, 0, 0, 0)
"""The date of every file in the archive: the earliest that a zip can name."""
_PLAIN_FILE, _UNIX = 0o100644 << 16, 3


def as_number(printed: str, unit: str, dimension: str) -> float | None:
    """A printed figure as a number of its unit, read as a worksheet reads it; None where it is words or two sizes in one.

    >>> as_number("1-3/8", "in", "length"), as_number("5 ft 3 in", "in", "length"), as_number("4,700", "lb", "weight")
    (1.375, 63.0, 4700.0)
    >>> as_number("Never weld it.", "text", "words"), as_number("2-1/4 x 0.08", "in", "length")
    (None, None)
    """
    if unit in ("", "text"):
        return None
    try:
        return plain_number(printed)
    except NotReadable:
        if dimension not in UNIT_FACTORS:
            return None
    try:
        return round(from_si(read_quantity(printed, dimension, unit).value_si, unit, dimension), 9)
    except NotReadable:
        return None


def numbers_of(declared: Declaration, row: Row) -> dict[str, float | None]:
    """The numeric columns of a row, by name, each after the column that it reads."""
    found: dict[str, float | None] = {}
    for column in declared.columns.values():
        if column.name == "value":
            dimension = declared.quantities[row["quantity"]].dimension
            found[f"value{_SUFFIX}"] = as_number(row["value"], row["unit"], dimension)
        elif column.role in NUMBERED:
            found[f"{column.name}{_SUFFIX}"] = as_number(row[column.name], "in", "length")
    return found


@functools.cache
def _version() -> str:
    return edition()


@functools.cache
def _bounds() -> dict[str, list[float]]:
    found: dict[str, list[float]] = shared()["bounds"]
    return found


def number_text(number: float | None) -> str:
    """A number as a CSV holds it: the shortest that reads back the same, without an exponent; empty for none.

    >>> number_text(1.375), number_text(4700.0), number_text(None)
    ('1.375', '4700', '')
    """
    if number is None:
        return ""
    return str(int(number)) if number.is_integer() else repr(number)


def columns_of(declared: Declaration) -> tuple[str, ...]:
    """The columns of a published table, each number after what it was read from."""
    found: list[str] = []
    for column in declared.columns.values():
        found.append(column.name)
        if _numbered(column):
            found.append(f"{column.name}{_SUFFIX}")
    return tuple(found)


def _numbered(column: Column) -> bool:
    return column.name == "value" or column.role in NUMBERED


def rows_of(declared: Declaration) -> list[dict[str, Any]]:
    """The rows of a table as they are published: texts as printed, notes in words, numbers as numbers or None."""
    made = []
    for row in table(declared.name).rows:
        held = {**with_note_in_words(declared.name, row, language()), **numbers_of(declared, row)}
        made.append({column: held[column] for column in columns_of(declared)})
    return made


def csv_text(declared: Declaration) -> str:
    """A published table as CSV (RFC 4180, lines ended by a line feed)."""
    stream = io.StringIO()
    writer = csv.DictWriter(stream, columns_of(declared), lineterminator="\n")
    writer.writeheader()
    for row in rows_of(declared):
        writer.writerow(
            {key: held if isinstance(held, str) else number_text(held) for key, held in row.items()}
        )
    return stream.getvalue()


def source_keys(declared: Declaration) -> list[str]:
    """The sources that the rows of a table name, in the order of the rows."""
    if "source" not in declared.columns:
        return []
    return list(dict.fromkeys(row["source"] for row in table(declared.name).rows))


def descriptor(files: Mapping[str, str]) -> dict[str, Any]:
    """The Data Package of the published tables; files -- the text of each `NAME.csv`."""
    tables = declarations()
    named = dict.fromkeys(key for declared in tables.values() for key in source_keys(declared))
    return {
        **HEAD,
        "version": _version(),
        "sources": [_card(key) for key in named],
        "resources": [_published(one, files[f"{one.name}.csv"].encode()) for one in tables.values()],
    }


def _card(key: str) -> dict[str, str]:
    row = table(SOURCES).one(key=key)
    return {"title": row["title"], **{name: row[name] for name in ("key", "publisher", "edition", "licence")}}


def _published(declared: Declaration, content: bytes) -> dict[str, Any]:
    described = resource(declared)
    described["path"] = f"{declared.name}.csv"
    described["bytes"] = len(content)
    described["hash"] = f"sha256:{hashlib.sha256(content).hexdigest()}"
    if keys := source_keys(declared):
        described["sources"] = [{"title": table(SOURCES).one(key=key)["title"], "key": key} for key in keys]
    fields = []
    for field in described["schema"]["fields"]:
        if field["name"] == "note":
            field.pop("constraints", None)  # in words here, and not the key that the book's own rows hold
        fields.append(field)
        if _numbered(declared.columns[field["name"]]):
            fields.append(_number_field(declared, field))
    described["schema"]["fields"] = fields
    return described


def _number_field(declared: Declaration, printed: Mapping[str, Any]) -> dict[str, Any]:
    bounds = _bounds()
    units = [unit for unit in _units(declared, printed["name"]) if unit != "text"]
    field: dict[str, Any] = {
        "name": f"{printed['name']}{_SUFFIX}",
        "type": "number",
        "title": f"{printed['title']} as a number",
        "description": f"What stands in {printed['name']}, read as a number of the same unit; empty where that is words.",
    }
    if units:
        field["constraints"] = {
            "minimum": min(bounds[unit][0] for unit in units),
            "maximum": max(bounds[unit][1] for unit in units),
        }
        if "text" not in _units(declared, printed["name"]) and printed["name"] == "value":
            field["constraints"]["required"] = True
    return field


def _units(declared: Declaration, column: str) -> tuple[str, ...]:
    if column != "value":
        return ("in",)
    return tuple(dict.fromkeys(unit for one in declared.quantities.values() for unit in one.units))


def _json_text(made: Any) -> str:
    return json.dumps(made, ensure_ascii=False, indent=1) + "\n"


def _lines(rows: list[dict[str, Any]]) -> str:
    """Rows as a JSON list, one row a line."""
    return "[\n" + ",\n".join(json.dumps(row, ensure_ascii=False) for row in rows) + "\n]"


def _with_rows(head: Mapping[str, Any], **rows: list[dict[str, Any]]) -> str:
    """A JSON object: what stands in its head, then its lists of rows, one row a line."""
    parts = [f"{json.dumps(key)}: {json.dumps(held, ensure_ascii=False)}" for key, held in head.items()]
    parts += [f"{json.dumps(key)}: {_lines(held)}" for key, held in rows.items()]
    return "{\n" + ",\n".join(parts) + "\n}"


def table_json(declared: Declaration) -> str:
    """One table as JSON: its question, edition and terms, its rows, the cards of its sources."""
    keys = set(source_keys(declared))
    head = {
        "name": declared.name,
        "title": table_words.question(declared.name),
        "description": table_words.description(declared.name),
        "version": _version(),
        "licenses": [LICENCE],
    }
    cards = [dict(row) for row in table(SOURCES).rows if row["key"] in keys]
    return _with_rows(head, rows=rows_of(declared), sources=cards) + "\n"


def document() -> str:
    """All tables in one JSON: for each what it is for, what its quantities mean, its cautions, its rows."""
    tables = []
    for name, declared in declarations().items():
        described = resource(declared)
        meaning = described["linkwright"]
        head = {
            "title": described["title"],
            "description": described["description"],
            **{key: meaning[key] for key in ("group", "use", "safety", "notes", "cautions", "quantities")},
            "key": list(declared.key),
        }
        tables.append(f"{json.dumps(name)}: {_with_rows(head, rows=rows_of(declared))}")
    head = {**HEAD, "version": _version()}
    parts = [f"{json.dumps(key)}: {json.dumps(held, ensure_ascii=False)}" for key, held in head.items()]
    return "{\n" + ",\n".join([*parts, '"tables": {\n' + ",\n".join(tables) + "\n}"]) + "\n}\n"


def files_of_tables() -> dict[str, str]:
    """The text of each file of the archive by its name: every table, the descriptor, how to use it, the terms."""
    tables = declarations()
    files = {f"{name}.csv": csv_text(declared) for name, declared in tables.items()}
    template = string.Template(
        (ROOT / "build_scripts" / "templates" / "tables_readme.md").read_text(encoding="utf-8")
    )
    readme = template.substitute(
        edition=_version(), count=len(tables), licence=LICENCE["title"], licence_path=LICENCE["path"]
    )
    return {
        "README.md": readme,
        "LICENSE": (ROOT / "LICENSE").read_text(encoding="utf-8"),
        PACKAGE: _json_text(descriptor(files)),
        **files,
    }


def write_archive(path: Path, files: Mapping[str, str]) -> None:
    """One zip of the files; the same files make the same bytes on every day and machine."""
    with zipfile.ZipFile(path, "w") as archive:
        for name in sorted(files):
            entry = zipfile.ZipInfo(name, _DATE)
            entry.compress_type, entry.external_attr, entry.create_system = (
                zipfile.ZIP_DEFLATED,
                _PLAIN_FILE,
                _UNIX,
            )
            archive.writestr(entry, files[name].encode(), compresslevel=9)


_SCHEMA = """
CREATE TABLE package (name TEXT PRIMARY KEY, value TEXT NOT NULL);
CREATE TABLE tables (name TEXT PRIMARY KEY, title TEXT NOT NULL, description TEXT NOT NULL, "group" TEXT NOT NULL,
    use TEXT NOT NULL, safety INTEGER NOT NULL);
CREATE TABLE quantities (table_name TEXT NOT NULL REFERENCES tables (name), quantity TEXT NOT NULL, sense TEXT NOT NULL,
    dimension TEXT NOT NULL, rating INTEGER NOT NULL, PRIMARY KEY (table_name, quantity));
CREATE TABLE cautions (table_name TEXT NOT NULL REFERENCES tables (name), kind TEXT NOT NULL, text TEXT NOT NULL);
CREATE TABLE notes (table_name TEXT NOT NULL REFERENCES tables (name), text TEXT NOT NULL);
"""
_SELECT = string.Template(
    "SELECT '$name' AS table_name, quantity, value, value_number, unit, source, locator, checked, note FROM $table"
)
_INSERT = string.Template("INSERT INTO $table VALUES ($marks)")
_OWN_NAMES = frozenset({"package", "tables", "quantities", "cautions", "notes", "claims"})


def sql_name(name: str) -> str:
    """A table's name in the database: letters, digits and underscores.

    >>> sql_name("chain-wear")
    'chain_wear'
    """
    made = name.replace("-", "_")
    return f"{made}_table" if made in _OWN_NAMES else made


def write_database(path: Path) -> None:
    """All tables as one SQLite database: a table each, what they mean, and the view `claims` over every figure."""
    path.unlink(missing_ok=True)
    tables = declarations()
    connection = sqlite3.connect(path)
    try:
        connection.execute("PRAGMA page_size = 4096")
        connection.executescript(_SCHEMA)
        head = {
            "name": HEAD["name"],
            "title": HEAD["title"],
            "description": HEAD["description"],
            "version": _version(),
        }
        head |= {
            "licence": LICENCE["name"],
            "licence_path": LICENCE["path"],
            "licence_title": LICENCE["title"],
        }
        connection.executemany("INSERT INTO package VALUES (?, ?)", head.items())
        for declared in [tables[SOURCES], *(one for name, one in tables.items() if name != SOURCES)]:
            _fill(connection, declared)
        with_values = [name for name, declared in tables.items() if "value" in declared.columns]
        selects = [_SELECT.substitute(name=name, table=sql_name(name)) for name in with_values]
        connection.execute("CREATE VIEW claims AS " + " UNION ALL ".join(selects))
        connection.commit()
        connection.execute("VACUUM")
    finally:
        connection.close()


def _fill(connection: sqlite3.Connection, declared: Declaration) -> None:
    described = resource(declared)
    meaning = described["linkwright"]
    name, columns = declared.name, columns_of(declared)
    one = (
        name,
        described["title"],
        described["description"],
        meaning["group"],
        meaning["use"],
        meaning["safety"],
    )
    connection.execute("INSERT INTO tables VALUES (?, ?, ?, ?, ?, ?)", one)
    connection.executemany(
        "INSERT INTO quantities VALUES (?, ?, ?, ?, ?)",
        [
            (name, key, said["sense"], said["dimension"], said["rating"])
            for key, said in meaning["quantities"].items()
        ],
    )
    connection.executemany(
        "INSERT INTO cautions VALUES (?, ?, ?)",
        [(name, caution["kind"], caution["text"]) for caution in meaning["cautions"]],
    )
    connection.executemany("INSERT INTO notes VALUES (?, ?)", [(name, note) for note in meaning["notes"]])
    fields = [f'"{column}" {_sql_type(declared, column)}' for column in columns]
    keys = ", ".join(f'"{column}"' for column in declared.key)
    refers = ['FOREIGN KEY ("source") REFERENCES sources ("key")'] if "source" in columns else []
    connection.execute(
        f"CREATE TABLE {sql_name(name)} ({', '.join([*fields, f'PRIMARY KEY ({keys})', *refers])})"
    )
    marks = ", ".join("?" for _ in columns)
    connection.executemany(
        _INSERT.substitute(table=sql_name(name), marks=marks),
        [[row[column] for column in columns] for row in rows_of(declared)],
    )


def _sql_type(declared: Declaration, column: str) -> str:
    if column.endswith(_SUFFIX) and column not in declared.columns:
        return "REAL"
    return "REAL" if declared.columns[column].type == "number" else "TEXT NOT NULL"


def publish(out: Path) -> dict[str, int]:
    """Write every published file into the folder `out`; gives back the size of each [bytes]. Raises MissingWords."""
    out.mkdir(parents=True, exist_ok=True)
    files = files_of_tables()
    for name, text in files.items():
        if name.endswith((".csv", ".json")):
            (out / name).write_text(text, encoding="utf-8")
    for name, declared in declarations().items():
        if name != SOURCES:
            (out / f"{name}.json").write_text(table_json(declared), encoding="utf-8")
    (out / DOCUMENT).write_text(document(), encoding="utf-8")
    write_archive(out / ARCHIVE, files)
    write_database(out / DATABASE)
    return {
        path.name: path.stat().st_size
        for path in sorted(out.iterdir())
        if path.suffix in (".json", ".csv", ".zip", ".sqlite")
    }


__all__ = [
    "ARCHIVE",
    "DATABASE",
    "DOCUMENT",
    "MOST_OFFLINE_BYTES",
    "as_number",
    "columns_of",
    "csv_text",
    "descriptor",
    "document",
    "files_of_tables",
    "number_text",
    "numbers_of",
    "publish",
    "rows_of",
    "sql_name",
    "table_json",
    "write_archive",
    "write_database",
]
