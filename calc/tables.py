"""Reads the rating tables: the one place where a cited cell becomes a number.

Question of the trade: what does the table say for this grade and size, and where is that printed? Each table is a
folder beside this package, its rows in `claims.csv`, one claim a row; each row carries `source`, `locator` and `checked`
(text, copy or memory). `tables/index.json`, generated, lists the tables and says what each quantity means.
"""

from __future__ import annotations

import csv
import functools
import io
import json
import os
import re
from dataclasses import dataclass
from typing import Literal

from calc.quantities import NotReadable, plain_number, to_si
from calc.words.facts import Sense

Row = dict[str, str]

_HERE = os.path.dirname(__file__)
_CHECKOUT = os.path.normpath(os.path.join(_HERE, os.pardir, "tables"))
_PACKED = os.path.join(_HERE, "packed", "tables")
INDEX = "index.json"


class NoSuchTable(LookupError):
    """There is no table of that name; the message lists those that exist."""


class NoSuchRow(LookupError):
    """No row, or more than one, answers the question; the message says what exists near."""


@dataclass(frozen=True)
class Table:
    """One table: its name, its columns and its rows as the file has them."""

    name: str
    columns: tuple[str, ...]
    rows: tuple[Row, ...]

    def where(self, **conditions: str) -> tuple[Row, ...]:
        """The rows in which every named column holds the given text."""
        for column in conditions:
            if column not in self.columns:
                raise NoSuchRow(f"table {self.name} has no column {column}; it has {', '.join(self.columns)}")
        return tuple(row for row in self.rows if all(row[c] == v for c, v in conditions.items()))

    def one(self, **conditions: str) -> Row:
        """The single row that holds the given texts; raises NoSuchRow with the values that exist."""
        rows = self.where(**conditions)
        if len(rows) == 1:
            return rows[0]
        asked = ", ".join(f"{column} {value}" for column, value in conditions.items())
        if rows:
            raise NoSuchRow(f"table {self.name} has {len(rows)} rows for {asked}; name more columns")
        known = "; ".join(
            f"{column}: {', '.join(self.values(column))}"
            for column, value in conditions.items()
            if value not in self.values(column)
        )
        raise NoSuchRow(f"table {self.name} has no row for {asked}" + (f". It has {known}" if known else ""))

    def values(self, column: str) -> tuple[str, ...]:
        """The different texts of a column, in the order of the file."""
        return tuple(dict.fromkeys(row[column] for row in self.rows if row[column]))


def _text(file_name: str) -> str:
    """The text of a file of the tables folder, whether it lies in a checkout, in the installed package or in the archive
    calc was loaded from.
    """
    loader = globals()["__spec__"].loader
    return bytes(loader.get_data(os.path.join(_folder(), file_name))).decode("utf-8")


@functools.cache
def _folder() -> str:
    """Where the tables lie: in the package once it is installed, beside it in a checkout and in the page's archive."""
    loader = globals()["__spec__"].loader
    try:
        loader.get_data(os.path.join(_PACKED, INDEX))
    except OSError:
        return _CHECKOUT
    return _PACKED


@dataclass(frozen=True)
class Meaning:
    """What a quantity is: the sense of more of it (`by_row`: each row says so itself), and its dimension."""

    sense: Sense | Literal["by_row"]
    dimension: str


@functools.cache
def _index() -> dict[str, dict[str, tuple[Sense | Literal["by_row"], str]]]:
    found: dict[str, dict[str, tuple[Sense | Literal["by_row"], str]]] = json.loads(_text(INDEX))
    return found


def table_names() -> tuple[str, ...]:
    """The names of all tables, in the order in which a reader meets them."""
    return tuple(_index())


@functools.cache
def table(name: str) -> Table:
    """Read one table by name; raises NoSuchTable."""
    if name not in _index():
        raise NoSuchTable(f"there is no table {name}; there are {', '.join(table_names())}")
    reader = csv.DictReader(io.StringIO(_text(os.path.join(name, "claims.csv")), newline=""))
    return Table(name, tuple(reader.fieldnames or ()), tuple(reader))


def meaning(name: str, quantity: str) -> Meaning:
    """What a quantity of a table means; raises NoSuchRow."""
    found = _index()[name].get(quantity)
    if found is None:
        raise NoSuchRow(f"table {name} has no quantity {quantity}; it has {', '.join(_index()[name])}")
    return Meaning(*found)


def number(row: Row) -> float:
    """The value of a row as a plain number in the row's own unit."""
    try:
        return plain_number(row["value"])
    except NotReadable as reason:
        raise NoSuchRow(f"value “{row['value']}” {reason}") from reason


def value_si(row: Row, dimension: str) -> float:
    """The value of a row in the SI unit of `dimension`."""
    return to_si(number(row), row["unit"], dimension)


@functools.cache
def source_title(key: str) -> str:
    """The title of a source by its key."""
    return table("sources").one(key=key)["title"]


def short_citation(title: str, place: str) -> str:
    """A source and a place in it as a shop says it: `29 CFR 1910.184(e)(9)(ii)` for the title `29 CFR 1910.184 Slings`.

    A title that opens with a number of law or standard is cited by that number, which is not said twice; any other in full.
    """
    if place.casefold() in title.casefold():
        return title
    match = re.match(r"(?:[A-Z0-9][A-Z0-9./-]*(?: |$))+", title)
    code = match.group(0).strip() if match else ""
    if not re.search(r"\d", code) or not re.search(r"[ /-]", code):
        return f"{title}, {place}"
    head, _, number = code.rpartition(" ")
    if re.search(r"\d", number):
        return f"{head} {place}".strip() if place.startswith(number) else f"{code}, {place}"
    return f"{code} {place}"


__all__ = [
    "Meaning",
    "NoSuchRow",
    "NoSuchTable",
    "Row",
    "Table",
    "meaning",
    "number",
    "short_citation",
    "source_title",
    "table",
    "table_names",
    "value_si",
]
