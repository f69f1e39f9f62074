"""Reads the second copies in tests/data/second (its README tells how they were typed) and sets them beside the tables."""

from __future__ import annotations

import csv
import functools
import io
from pathlib import Path

Row = dict[str, str]
SECOND = Path(__file__).parent / "second"


def _fill(text: str) -> Row:
    """`legs=2|hitch=choke` or `unit=lb; source=x` as a dict."""
    parts = [part.strip() for part in text.replace(";", "|").split("|")]
    return dict(part.split("=", 1) for part in parts if part)


def _claims_of_block(block: str) -> list[Row]:
    constants_line, _, table_text = block.partition("\n")
    constants = _fill(constants_line.lstrip("#").strip())
    heading, *lines = list(csv.reader(io.StringIO(table_text)))
    claims = []
    for line in lines:
        if len(line) != len(heading):
            raise ValueError(
                f"a line of a second copy has {len(line)} cells under {len(heading)} headings: {line}"
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
    path = SECOND / f"{name}.csv"
    if not path.exists():
        return ()
    blocks = path.read_text(encoding="utf-8").split("\n\n")
    return tuple(claim for block in blocks if block.strip() for claim in _claims_of_block(block.strip()))


def differences(name: str, rows: list[Row], key: tuple[str, ...]) -> list[str]:
    """Where the table and its second copy part: a claim missing on either side, or one that differs."""
    found = []
    second = {tuple(claim[column] for column in key): claim for claim in claims(name)}
    first = {tuple(row[column] for column in key): row for row in rows}
    if len(second) != len(claims(name)):
        found.append(f"second copy of {name}: two claims share a key")
    found += [f"{name}.csv {k}: not in the second copy" for k in first if k not in second]
    found += [f"{name}.csv: {k} stands in the second copy only" for k in second if k not in first]
    for k in first.keys() & second.keys():
        for column, text in second[k].items():
            if first[k].get(column) != text:
                found.append(
                    f"{name}.csv {k}, column {column}: {first[k].get(column)} here, {text} in the second copy"
                )
    return found
