"""Reads the second copy of a table (tables/NAME/second.csv; tables/README.md says how one is typed) beside its rows."""

from __future__ import annotations

import csv
import functools
import io
from pathlib import Path

from build_scripts.laws.tools import Row
from build_scripts.table_declaration import TABLES

SECOND = "second.csv"


def _fill(text: str) -> Row:
    """`legs=2|hitch=choke` or `unit=lb; source=x` as a dict."""
    parts = [part.strip() for part in text.replace(";", "|").split("|")]
    return {key: value for key, _, value in (part.partition("=") for part in parts if part)}


def _claims_of_block(path: Path, block: str) -> list[Row]:
    constants_line, _, table_text = block.partition("\n")
    constants = _fill(constants_line.lstrip("#").strip())
    heading, *lines = list(csv.reader(io.StringIO(table_text)))
    claims = []
    for line in lines:
        if len(line) != len(heading):
            raise ValueError(
                f"{path.parent.name}/{SECOND}: a line has {len(line)} cells under {len(heading)} headings: {line}"
            )
        pairs = list(zip(heading, line, strict=True))
        keys = {name: cell for name, cell in pairs if name and "=" not in name}
        for name, cell in pairs:
            if cell and (not name or "=" in name):
                claims.append({**constants, **keys, **_fill(name), "value": cell})
    return claims


@functools.cache
def claims(name: str) -> tuple[Row, ...]:
    """Every claim of the second copy of table `name`; empty if there is none."""
    path = TABLES / name / SECOND
    if not path.exists():
        return ()
    blocks = path.read_text(encoding="utf-8").split("\n\n")
    return tuple(
        claim for block in blocks if block.strip() for claim in _claims_of_block(path, block.strip())
    )


def differences(name: str, rows: list[Row], key: tuple[str, ...]) -> list[str]:
    """Where the table and its second copy part: a claim missing on either side, or one that differs."""
    found = []
    second = {tuple(claim.get(column, "") for column in key): claim for claim in claims(name)}
    first = {tuple(row[column] for column in key): row for row in rows}
    if len(second) != len(claims(name)):
        found.append(f"{name}/{SECOND}: two claims share a key ({', '.join(key)}); give each its own")
    found += [f"{name}/claims.csv {k}: not in {SECOND}" for k in first if k not in second]
    found += [f"{name}/{SECOND} {k}: stands there only, not in claims.csv" for k in second if k not in first]
    for k in first.keys() & second.keys():
        for column, text in second[k].items():
            if first[k].get(column) != text:
                found.append(
                    f"{name}/claims.csv {k}, column {column}: {first[k].get(column)} here, {text} in {SECOND}; "
                    "look at the source, then mend the one that is wrong"
                )
    return found
