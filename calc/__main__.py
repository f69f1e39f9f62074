"""The command line: list the worksheets, run one, read a table.

    python -m calc list [--json]
    python -m calc run NAME [--json] [--units us|si] key=value ...
    python -m calc table NAME [--where column=value ...] --json|--csv

A row table is given as inline JSON or as `key=@file.json`; bad input ends with status 2 and one line on stderr.
"""

from __future__ import annotations

import argparse
import base64
import csv
import json
import sys
import textwrap
from collections.abc import Sequence
from typing import Any, NoReturn, TextIO

from calc.answering import (
    NoSuchWorksheet,
    Refusal,
    Refused,
    answer,
    declared_names,
    described,
    worksheet_record,
)
from calc.describing import Described
from calc.tables import NoSuchRow, NoSuchTable, table
from calc.words.notes import with_note_in_words


class _Parser(argparse.ArgumentParser):
    """An argument parser that answers a slip with one line."""

    def error(self, message: str) -> NoReturn:
        self.exit(2, f"{message}; see python -m calc --help\n")


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(prog="python -m calc", description="Rated hardware, worked out.")
    commands = parser.add_subparsers(dest="command", required=True)
    lister = commands.add_parser("list", help="name every worksheet")
    lister.add_argument("--json", action="store_true")
    runner = commands.add_parser("run", help="work one worksheet out")
    runner.add_argument("name")
    runner.add_argument("--json", action="store_true")
    runner.add_argument("--units", choices=("us", "si"), default="us")
    runner.add_argument("--example", action="store_true", help="start from the worksheet's own example")
    runner.add_argument("given", nargs="*", metavar="key=value")
    reader = commands.add_parser("table", help="read a table")
    reader.add_argument("name")
    reader.add_argument("--where", action="append", default=[], metavar="column=value")
    how = reader.add_mutually_exclusive_group()
    how.add_argument("--json", action="store_true")
    how.add_argument("--csv", action="store_true")
    return parser


def _arguments(arguments: Sequence[str] | None) -> argparse.Namespace:
    """Read the arguments; options may stand before, between or after key=value pairs."""
    asked, rest = _parser().parse_known_args(arguments)
    unknown = [word for word in rest if word.startswith("-") or asked.command != "run"]
    if unknown:
        _parser().error(f"{unknown[0]} is not known here")
    if rest:
        asked.given = [*asked.given, *rest]
    return asked


def main(arguments: Sequence[str] | None = None, out: TextIO | None = None) -> int:
    """Run the command line; returns the exit status."""
    out = out or sys.stdout
    asked = _arguments(arguments)
    try:
        if asked.command == "list":
            text = _listed(asked.json)
        elif asked.command == "run":
            text = _ran(asked)
        else:
            text = _read(asked)
    except Refused as refused:
        return _refused(_error_line(refused.errors[0], len(refused.errors) - 1))
    except (NoSuchWorksheet, NoSuchTable, NoSuchRow, OSError) as refused:
        return _refused(str(refused))
    out.write(text)
    return 0


def _refused(line: str) -> int:
    sys.stderr.write(" ".join(line.split()) + "\n")
    return 2


def _error_line(error: Refusal, others: int) -> str:
    given = f" “{error.given}”" if error.given else ""
    more = f" (and {others} more)" if others else ""
    return f"{error.input}:{given} {error.message}{more}" if error.input else f"{error.message}{more}"


def _listed(as_json: bool) -> str:
    names = declared_names()
    if as_json:
        return json.dumps([worksheet_record(name) for name in names], indent=1, ensure_ascii=False) + "\n"
    width = max(len(name) for name in names)
    return "".join(f"{name:<{width}}  {described(name).title}\n" for name in names)


def _ran(asked: argparse.Namespace) -> str:
    sheet = described(asked.name)
    raw: dict[str, Any] = dict(sheet.example) if asked.example else {}
    raw.update(_given(sheet, asked.given))
    record = answer(asked.name, raw, asked.units)
    if asked.json:
        return json.dumps(record, indent=1, ensure_ascii=False, allow_nan=False) + "\n"
    return _sheet_text(sheet, record)


def _given(sheet: Described, pairs: Sequence[str]) -> dict[str, Any]:
    kinds = {asked.declared.name: asked.declared.kind for asked in sheet.inputs}
    raw: dict[str, Any] = {}
    for pair in pairs:
        name, equals, text = pair.partition("=")
        if not equals:
            raise Refused(Refusal(name, "", "is written without a value. Give it as key=value."))
        if text.startswith("@"):
            with open(text[1:], "rb") as file:
                content = file.read()
            raw[name] = (
                base64.b64encode(content).decode()
                if kinds.get(name) == "file"
                else content.decode("utf-8", "replace")
            )
        else:
            raw[name] = text
    return raw


def _sheet_text(sheet: Described, record: dict[str, Any]) -> str:
    lines = [sheet.title, "", f"{record['verdict_words'].upper()}"]
    lines += [*textwrap.wrap(record["headline"], 96), ""]
    width = max(len(result["label"]) for result in record["results"].values())
    for result in record["results"].values():
        first, *more = result.get("items") or [result["text"]]
        lines += [f"  {result['label']:<{width}}  {first}", *(f"  {'':<{width}}  {item}" for item in more)]
    lines += ["", "Working"]
    for step in record["steps"]:
        sums = (step["formula"], step["numbers"], step["result"])
        lines.append(f"  {step['label']}: " + " = ".join(part for part in sums if part))
    lines += ["", "Cautions"]
    for caution in record["cautions"]:
        lines += textwrap.wrap(caution["text"], 92, initial_indent="  - ", subsequent_indent="    ")
    lines += ["", "Sources"]
    lines += [f"  {source['title']}: {source['locator']}".rstrip(": ") for source in record["sources"]]
    return "\n".join(lines) + "\n"


def _read(asked: argparse.Namespace) -> str:
    found = table(asked.name)
    conditions: dict[str, str] = {}
    for pair in asked.where:
        column, equals, value = pair.partition("=")
        if not equals:
            raise NoSuchRow(
                f"--where {pair}: give it as column=value; columns are {', '.join(found.columns)}"
            )
        conditions[column] = value
    rows = found.where(**conditions)
    if not rows:
        found.one(**conditions)
    said = [with_note_in_words(asked.name, row) for row in rows]
    if asked.json:
        return json.dumps(said, indent=1, ensure_ascii=False) + "\n"
    lines: list[str] = []
    writer = csv.DictWriter(_Lines(lines), found.columns, lineterminator="\n")
    writer.writeheader()
    writer.writerows(said)
    return "".join(lines)


class _Lines:
    """Collects what csv writes."""

    def __init__(self, lines: list[str]) -> None:
        self._lines = lines

    def write(self, text: str) -> None:
        """Keep one line."""
        self._lines.append(text)


if __name__ == "__main__":
    sys.exit(main())
