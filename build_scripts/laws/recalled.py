"""Reads the blind recalls of a table (tables/NAME/recalled.csv; tables/README.md says how they came about)."""

from __future__ import annotations

import csv
import functools

from build_scripts.laws.tools import Row, exact
from build_scripts.table_declaration import TABLES

RECALLED = "recalled.csv"


@functools.cache
def claims(name: str) -> tuple[Row, ...]:
    """What was recalled of table `name` and agrees with it; empty if nothing was."""
    path = TABLES / name / RECALLED
    if not path.exists():
        return ()
    with path.open(newline="", encoding="utf-8") as stream:
        return tuple(csv.DictReader(stream))


def same(one: str, other: str) -> bool:
    """Whether two printed values say the same: equal words, or equal numbers however they are written."""
    if one == other:
        return True
    try:
        return exact(one) == exact(other)
    except ValueError:
        return False


def differences(name: str, rows: list[Row]) -> list[str]:
    """Where the table no longer says what was recalled."""
    recalled = claims(name)
    if not recalled:
        return []
    keys = tuple(column for column in recalled[0] if column != "value")
    first = {tuple(row[column] for column in keys): row["value"] for row in rows}
    found = []
    for claim in recalled:
        key = tuple(claim[column] for column in keys)
        if key not in first:
            found.append(f"{name}/claims.csv {key}: stands in {RECALLED} and is not there")
        elif not same(first[key], claim["value"]):
            found.append(f"{name}/claims.csv {key}: {first[key]} here, {claim['value']} in {RECALLED}")
    return found
