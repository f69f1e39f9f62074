"""Reading the tables, and the small tools the laws share: exact numbers, bands, rising columns, the area of a link."""

from __future__ import annotations

import csv
import json
import math
import re
from collections import defaultdict
from collections.abc import Callable, Iterable
from fractions import Fraction
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Any

Row = dict[str, str]
Tables = dict[str, list[Row]]
Law = Callable[[Tables], list[str]]

FOLDER = Path(__file__).resolve().parents[2] / "tables"
LB = 0.45359237  # kg, exact (international pound)
LBF = 4.4482216152605  # N, exact
G = 9.80665  # m/s2, exact


def descriptor() -> dict[str, Any]:
    package: dict[str, Any] = json.loads((FOLDER / "datapackage.json").read_text(encoding="utf-8"))
    return package


def read() -> Tables:
    """All tables as the files have them."""
    tables: Tables = {}
    for resource in descriptor()["resources"]:
        with (FOLDER / resource["path"]).open(newline="", encoding="utf-8") as stream:
            tables[resource["name"]] = list(csv.DictReader(stream))
    return tables


@cache
def exact(text: str) -> Fraction:
    """`6,600`, `3/8`, `1-1/4`, `0.342` as an exact number."""
    match = re.fullmatch(r"(?:([0-9]+)-)?([0-9]+)/([0-9]+)", text)
    if match:
        return int(match[1] or 0) + Fraction(int(match[2]), int(match[3]))
    return Fraction(text.replace(",", ""))


@cache
def num(text: str) -> float:
    return float(exact(text))


def column(rows: Iterable[Row], key: str, **where: str) -> dict[str, float]:
    """key cell -> value, of the rows that hold the given texts."""
    return {row[key]: num(row["value"]) for row in rows if all(row[c] == v for c, v in where.items())}


def away(name: str, what: object, found: float, wanted: float, share: float) -> list[str]:
    """A problem if `found` is further than `share` from `wanted`."""
    if wanted and abs(found / wanted - 1) <= share:
        return []
    return [f"{name}.csv {what}: {found:g} is not within {share:.2%} of {wanted:g}"]


def band(name: str, what: object, found: float, low: float, high: float) -> list[str]:
    """A problem if `found` is outside `low` to `high` (also if it is no number)."""
    return [] if low <= found <= high else [f"{name}.csv {what}: {found:.4g} is outside {low:g} to {high:g}"]


def rising(name: str, what: object, pairs: Iterable[tuple[float, float]], strict: bool = True) -> list[str]:
    ordered = sorted(pairs)
    return [
        f"{name}.csv {what}: does not rise from {a[0]:g} to {b[0]:g} ({a[1]:g}, then {b[1]:g})"
        for a, b in pairwise(ordered)
        if not (a[1] < b[1] or (not strict and a[1] == b[1]))
    ]


def groups(rows: Iterable[Row], *keys: str) -> dict[tuple[str, ...], list[Row]]:
    groups: dict[tuple[str, ...], list[Row]] = defaultdict(list)
    for row in rows:
        groups[tuple(row[key] for key in keys)].append(row)
    return groups


def two_sections(diameter_mm: float) -> float:
    """Both sides of a link [mm2]."""
    return 2 * math.pi / 4 * diameter_mm**2
