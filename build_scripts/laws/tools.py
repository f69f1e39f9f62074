"""Reading the tables, and the small tools the laws share: exact numbers, bands, rising columns, the area of a link."""

from __future__ import annotations

import csv
import math
import re
from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Any

from build_scripts import table_words
from build_scripts.table_declaration import TABLES, Declaration, declarations, shared

Row = dict[str, str]

LB = 0.45359237  # kg, exact (international pound)
LBF = 4.4482216152605  # N, exact
G = 9.80665  # m/s2, exact


class Tables(dict[str, list[Row]]):
    """All tables: their rows by name, what each declares of itself, and what all of them share."""

    def __init__(
        self, rows: Mapping[str, list[Row]], declared: Mapping[str, Declaration], common: dict[str, Any]
    ) -> None:
        super().__init__(rows)
        self.declared = dict(declared)
        self.common = common


Check = Callable[[Tables], list[str]]


@dataclass(frozen=True)
class Law:
    """Something that the tables must obey: the table whose folder it stands in, its name, and what finds its breaches.

    form -- it is made for every table (how a cell is written) and states no relation of the trade
    """

    table: str
    name: str
    check: Check
    form: bool = False

    def __str__(self) -> str:
        return f"{self.table}/{self.name}"


def read(folder: Path = TABLES) -> Tables:
    """All tables as the files have them."""
    declared = declarations(folder)
    rows: dict[str, list[Row]] = {}
    for name, one in declared.items():
        with one.claims.open(newline="", encoding="utf-8") as stream:
            rows[name] = list(csv.DictReader(stream))
    return Tables(rows, declared, shared(folder))


@cache
def exact(text: str) -> Fraction:
    """`6,600`, `3/8`, `1-1/4`, `0.342` as an exact number."""
    match = re.fullmatch(r"(?:([0-9]+)-)?([0-9]+)/([0-9]+)", text)
    if match:
        return int(match[1] or 0) + Fraction(int(match[2]), int(match[3]))
    return Fraction(text.replace(",", ""))


@cache
def num(text: str) -> float:
    """A printed number as a float."""
    return float(exact(text))


def column(rows: Iterable[Row], key: str, **where: str) -> dict[str, float]:
    """Key cell -> value, of the rows that hold the given texts."""
    return {row[key]: num(row["value"]) for row in rows if all(row[c] == v for c, v in where.items())}


def away(name: str, what: object, found: float, wanted: float, share: float) -> list[str]:
    """A problem if `found` is further than `share` from `wanted`."""
    if wanted and abs(found / wanted - 1) <= share:
        return []
    return [f"{name}/claims.csv {what}: {found:g} is not within {share:.2%} of {wanted:g}"]


def band(name: str, what: object, found: float, low: float, high: float) -> list[str]:
    """A problem if `found` is outside `low` to `high` (also if it is no number)."""
    if low <= found <= high:
        return []
    return [f"{name}/claims.csv {what}: {found:.4g} is outside {low:g} to {high:g}"]


def rising(name: str, what: object, pairs: Iterable[tuple[float, float]], strict: bool = True) -> list[str]:
    """A problem for each pair of neighbours that does not rise."""
    ordered = sorted(pairs)
    return [
        f"{name}/claims.csv {what}: does not rise from {a[0]:g} to {b[0]:g} ({a[1]:g}, then {b[1]:g})"
        for a, b in pairwise(ordered)
        if not (a[1] < b[1] or (not strict and a[1] == b[1]))
    ]


def groups(rows: Iterable[Row], *keys: str) -> dict[tuple[str, ...], list[Row]]:
    """Rows by what they have in the named columns."""
    found: dict[tuple[str, ...], list[Row]] = defaultdict(list)
    for row in rows:
        found[tuple(row[key] for key in keys)].append(row)
    return found


@cache
def _note(name: str, key: str) -> str:
    return table_words.text(name, f"note-{key}", "en") if table_words.has(name, f"note-{key}", "en") else ""


def words_of_note(name: str, row: Row) -> str:
    """The note of a row in words, for a law that holds a figure in it against the row's; empty where there is none."""
    return _note(name, row["note"]) if row["note"] else ""


def two_sections(diameter_mm: float) -> float:
    """Both sides of a link [mm2]."""
    return 2 * math.pi / 4 * diameter_mm**2
