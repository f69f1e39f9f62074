"""Compares the tables of two editions and says which figures and meanings changed.

    python -m build_scripts.compare_editions OLD NEW            prints each change as a line
    python -m build_scripts.compare_editions OLD NEW --write    writes build_scripts/changes/EDITION.json as well, from
                                                                which the page of changed figures is made; rows added
                                                                and read anew are only counted there

OLD and NEW are each a commit or tag of this checkout, or a folder: a checkout, or its folder `tables`. The release
compares the tag of the edition before with the working folder (`.`).

Rows are matched by the key of the new table; where that tells no two rows apart, by all columns but those that hold the
claim. Told apart are:

    changed      a figure or its unit is another
    added        a row that was not there
    withdrawn    a row that is there no longer
    reading      the same figure, but its source, place, how it was read, default, sense or note is another
    meaning      what a table, a column or a quantity is: use, safety, key, role, sense, dimension, units, rating
    words        the text of a note or a caution of a table
"""

from __future__ import annotations

import argparse
import csv
import io
import json
import subprocess
import sys
import tarfile
import tempfile
import tomllib
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from fluent.syntax import FluentParser, FluentSerializer
from fluent.syntax import ast as fluent

from build_scripts import table_words
from calc.quantities import with_unit

ROOT = Path(__file__).resolve().parent.parent
CHANGES = ROOT / "build_scripts" / "changes"
COUNTED = ("added", "reading")
"""The kinds that the page counts, table by table, and does not list."""
KINDS = ("changed", "withdrawn", "added", "meaning", "words", "reading")
"""What may change, the weightiest first."""
FIGURE = ("value", "unit")
CLAIM = (*FIGURE, "source", "locator", "checked", "note", "default", "sense")
"""The columns of a row that say what is claimed, and not of what."""
_TAKEN = ("tables", "docs/words/en/tables", "pyproject.toml")
_MEANT = ("use", "safety", "key", "columns", "quantities", "cautions")


class NoEdition(ValueError):
    """What was named is no edition; the message says what was looked for."""


@dataclass(frozen=True)
class Change:
    """One difference between two editions.

    table -- name of the table
    kind -- one of KINDS
    row -- the key columns of the row, or empty where the change is of the table
    what -- the column, the place in table.toml, or the key of the words
    before, after -- as the two editions have it; empty where there is none
    """

    table: str
    kind: str
    row: Mapping[str, str]
    what: str
    before: str
    after: str

    def line(self) -> str:
        """The change as one line for a terminal."""
        place = ", ".join(f"{key} {held}" for key, held in self.row.items() if held)
        where = " | ".join(part for part in (self.table, place, self.what) if part)
        return f"{self.kind}: {where}: {self.before or '(none)'} -> {self.after or '(none)'}"


@dataclass(frozen=True)
class TableThen:
    """A table as one edition has it: its columns, rows, flattened meaning, and the words of its notes and cautions."""

    columns: tuple[str, ...]
    key: tuple[str, ...]
    rows: tuple[Mapping[str, str], ...]
    meaning: Mapping[str, str]
    words: Mapping[str, str]


@dataclass(frozen=True)
class Edition:
    """The tables of one edition; `name` is its number, with the commit or folder that was named."""

    number: str
    named: str
    tables: Mapping[str, TableThen]


def read_edition(named: str, root: Path = ROOT) -> Edition:
    """The edition in a folder, or of a commit of the checkout `root`; raises NoEdition."""
    folder = Path(named)
    if folder.is_dir():
        return _read_folder(folder.resolve(), named)
    with tempfile.TemporaryDirectory() as made:
        _take_out(named, root, Path(made))
        return _read_folder(Path(made), named)


def _take_out(commit: str, root: Path, into: Path) -> None:
    """Unpack the tables of a commit into a folder."""
    command = ["git", "archive", "--format=tar", commit, *_TAKEN]
    done = subprocess.run(command, cwd=root, capture_output=True, check=False)
    if done.returncode != 0:
        reason = done.stderr.decode(errors="replace").strip().splitlines()
        raise NoEdition(
            f"{commit} is neither a folder nor a commit with tables: {reason[-1] if reason else 'git failed'}"
        )
    with tarfile.open(fileobj=io.BytesIO(done.stdout)) as packed:
        for member in packed:
            if (content := packed.extractfile(member)) is not None:
                (into / member.name).parent.mkdir(parents=True, exist_ok=True)
                (into / member.name).write_bytes(content.read())


def _read_folder(folder: Path, named: str) -> Edition:
    tables = folder / "tables" if (folder / "tables").is_dir() else folder
    words = tables.parent / "docs" / "words" / "en" / "tables"
    found = {path.parent.name: _read_table(path, words) for path in sorted(tables.glob("*/table.toml"))}
    if not found:
        raise NoEdition(
            f"{named}: no folder in it holds a table.toml; an edition is a checkout or its folder tables"
        )
    project = tables.parent / "pyproject.toml"
    number = (
        tomllib.loads(project.read_text(encoding="utf-8"))["project"]["version"] if project.is_file() else ""
    )
    return Edition(str(number), named, found)


def _read_table(path: Path, words: Path) -> TableThen:
    said = tomllib.loads(path.read_text(encoding="utf-8"))
    with (path.parent / "claims.csv").open(newline="", encoding="utf-8") as stream:
        reader = csv.DictReader(stream)
        rows = tuple(reader)
        columns = tuple(reader.fieldnames or ())
    meant = dict(_flat({key: said[key] for key in _MEANT if key in said}))
    own = words / f"{path.parent.name}.ftl"
    return TableThen(columns, tuple(said.get("key", ())), rows, meant, _texts(own) if own.is_file() else {})


def _flat(said: Any, place: str = "") -> Iterator[tuple[str, str]]:
    """Each leaf of a declaration by its place: `quantities.remaining.sense`; of lists one leaf an item."""
    if isinstance(said, dict):
        for key, held in said.items():
            yield from _flat(held, f"{place}.{key}" if place else key)
    elif isinstance(said, list) and all(isinstance(one, dict) for one in said):
        for one in said:
            yield f"{place}.{one.get('key', '')}", str(one.get("kind", ""))
    elif isinstance(said, list):
        yield place, ", ".join(map(str, said))
    else:
        yield place, str(said)


def _texts(path: Path) -> dict[str, str]:
    """The notes and cautions of a file of words, by key."""
    serializer = FluentSerializer()
    found = {}
    for entry in FluentParser(with_spans=False).parse(path.read_text(encoding="utf-8")).body:
        if isinstance(entry, fluent.Message) and entry.id.name.startswith(("note-", "caution-")):
            written = serializer.serialize_entry(entry).partition("=")[2]
            found[entry.id.name] = " ".join(written.split())
    return found


def compare(old: Edition, new: Edition) -> list[Change]:
    """Every difference of the tables of two editions, table by table, the weightiest kind of each first."""
    found: list[Change] = []
    for name in dict.fromkeys((*old.tables, *new.tables)):
        before, after = old.tables.get(name), new.tables.get(name)
        changes = [*_rows(name, before, after), *_meanings(name, before, after)]
        found += sorted(changes, key=lambda change: KINDS.index(change.kind))
    return found


def _rows(name: str, before: TableThen | None, after: TableThen | None) -> Iterator[Change]:
    key = _telling_apart(before, after)
    old, new = _by_key(before, key), _by_key(after, key)
    for place in dict.fromkeys((*old, *new)):
        row = dict(zip(key, place, strict=True))
        pairs = max(len(old[place]), len(new[place]))
        for was, now in zip(_filled(old[place], pairs), _filled(new[place], pairs), strict=True):
            yield from _row(name, row, was, now)


def _row(
    name: str, row: Mapping[str, str], was: Mapping[str, str] | None, now: Mapping[str, str] | None
) -> Iterator[Change]:
    if was is None or now is None:
        yield Change(name, "added" if was is None else "withdrawn", row, "", _figure(was), _figure(now))
        return
    if _figure(was) != _figure(now):
        yield Change(name, "changed", row, "value", _figure(was), _figure(now))
    for column in dict.fromkeys((*was, *now)):
        if column not in FIGURE and column not in row and was.get(column, "") != now.get(column, ""):
            yield Change(name, "reading", row, column, was.get(column, ""), now.get(column, ""))


def _figure(row: Mapping[str, str] | None) -> str:
    """What a row claims: value and unit; of a table without values its first text."""
    if row is None:
        return ""
    if "value" not in row:
        return next(iter(list(row.values())[1:]), "")
    return row["value"] if row["unit"] == "text" else with_unit(row["value"], row["unit"])


def _telling_apart(before: TableThen | None, after: TableThen | None) -> tuple[str, ...]:
    """The columns by which the rows of two editions of a table are matched."""
    known = [one for one in (before, after) if one is not None]
    newest = known[-1]
    if all(set(newest.key) <= set(one.columns) and _unique(one, newest.key) for one in known):
        return newest.key
    return tuple(
        column
        for column in newest.columns
        if column not in CLAIM and all(column in one.columns for one in known)
    )


def _unique(table: TableThen, key: Sequence[str]) -> bool:
    return len({tuple(row[column] for column in key) for row in table.rows}) == len(table.rows)


def _by_key(
    table: TableThen | None, key: Sequence[str]
) -> defaultdict[tuple[str, ...], list[Mapping[str, str]]]:
    found: defaultdict[tuple[str, ...], list[Mapping[str, str]]] = defaultdict(list)
    for row in table.rows if table else ():
        found[tuple(row[column] for column in key)].append(row)
    return found


def _filled(rows: Sequence[Mapping[str, str]], count: int) -> list[Mapping[str, str] | None]:
    return [*rows, *([None] * (count - len(rows)))]


def _meanings(name: str, before: TableThen | None, after: TableThen | None) -> Iterator[Change]:
    if before is None or after is None:
        return  # a whole table came or went: its rows say so
    for kind, was, now in (("meaning", before.meaning, after.meaning), ("words", before.words, after.words)):
        for place in dict.fromkeys((*was, *now)):
            if was.get(place, "") != now.get(place, ""):
                yield Change(name, kind, {}, place, was.get(place, ""), now.get(place, ""))


def record(old: Edition, new: Edition, since: str) -> dict[str, Any]:
    """What the page of changed figures is made from; since -- what the older edition is called there."""
    changes = compare(old, new)
    counted = {
        kind: dict(Counter(change.table for change in changes if change.kind == kind)) for kind in COUNTED
    }
    listed = [_told(change) for change in changes if change.kind not in COUNTED]
    return {"edition": new.number, "since": since, **counted, "changes": listed}


def _told(change: Change) -> dict[str, str]:
    """A change as the page shows it: its row in the words that the tables have now."""
    row = ", ".join(_readable(change.table, key, held) for key, held in change.row.items() if held)
    return {
        "table": change.table,
        "kind": change.kind,
        "what": row or change.what,
        "before": change.before,
        "after": change.after,
    }


def _readable(name: str, key: str, held: str) -> str:
    """A key of a row in words, or as it stands in the file where there are no words for it any more."""
    for asked in (table_words.word_key(key, held), f"quantity-{held}"):
        if table_words.has(name, asked, "en"):
            return table_words.text(name, asked, "en")
    if key == "grade" or held[:1].isdigit():
        heading = f"column-{key}"
        return (
            f"{table_words.text(name, heading, 'en') if table_words.has(name, heading, 'en') else key} {held}"
        )
    return held.replace("_", " ")


def records(folder: Path = CHANGES) -> list[dict[str, Any]]:
    """The records that are kept, the newest edition first."""
    made: list[dict[str, Any]] = [
        json.loads(path.read_text(encoding="utf-8")) for path in sorted(folder.glob("*.json"))
    ]
    return sorted(made, key=lambda one: tuple(map(int, one["edition"].split("."))), reverse=True)


def write(made: Mapping[str, Any], folder: Path = CHANGES) -> Path:
    """Write a record as JSON, one change a line; gives back the file."""
    folder.mkdir(exist_ok=True)
    path = folder / f"{made['edition']}.json"
    head = [
        f"{json.dumps(key)}: {json.dumps(held, ensure_ascii=False)}"
        for key, held in made.items()
        if key != "changes"
    ]
    lines = [json.dumps(change, ensure_ascii=False) for change in made["changes"]]
    body = ",\n".join([*head, '"changes": [\n' + ",\n".join(lines) + "\n]"])
    path.write_text("{\n" + body + "\n}\n", encoding="utf-8")
    return path


def main(arguments: Sequence[str]) -> int:
    """Command line; 1 and one line on stderr where an edition is not found."""
    options = argparse.ArgumentParser(
        prog="python -m build_scripts.compare_editions", description="Compares two editions."
    )
    options.add_argument("old", help="commit, tag or folder of the older edition")
    options.add_argument("new", help="commit, tag or folder of the newer edition")
    options.add_argument("--write", action="store_true", help="write the record that the page is made from")
    options.add_argument(
        "--since", default="", help="what the page calls the older edition; without it, its number"
    )
    chosen = options.parse_args(arguments)
    try:
        old, new = read_edition(chosen.old), read_edition(chosen.new)
    except NoEdition as missing:
        print(missing, file=sys.stderr)
        return 1
    for change in compare(old, new):
        print(change.line())
    if chosen.write:
        print(f"written: {write(record(old, new, chosen.since or old.number))}")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
