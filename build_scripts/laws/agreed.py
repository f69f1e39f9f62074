"""What was agreed of a table (tables/NAME/agreed.toml): how its rows were seen, what it means, which notes and rules it has.

Nobody upgrades a row from memory to text, turns a prohibition into a warning or makes a capacity of a demand in passing:
a change here is a decision of its own, and a reviewer sees it beside the change of the table. It is a guard against
slips, no second copy.

    python -m build_scripts.agree NAME ...    write what the table says now; read it before you commit it
"""

from __future__ import annotations

import json
import tomllib
from collections import Counter
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from typing import Any

from build_scripts.laws.tools import Row, Tables
from build_scripts.table_declaration import Declaration

AGREED = "agreed.toml"


def state(declared: Declaration, rows: Iterable[Row]) -> dict[str, Any]:
    """What there is to agree on of a table."""
    lines = list(rows)
    said: dict[str, Any] = {"use": declared.use, "safety": declared.safety, "key": list(declared.key)}
    if "checked" in declared.columns:
        said["seen"] = {how: sum(r["checked"] == how for r in lines) for how in ("text", "copy", "memory")}
    said["roles"] = {
        c.name: f"{c.role} {c.end}".strip() for c in declared.columns.values() if c.role != c.name
    }
    said["senses"] = {
        q.name: f"{q.sense} {q.dimension}{', rating' if q.rating else ''}"
        for q in declared.quantities.values()
    }
    said["cautions"] = {one.key: one.kind for one in declared.cautions}
    said["notes"] = dict.fromkeys(declared.notes, 0) | dict(
        Counter(r["note"] for r in lines if r.get("note"))
    )
    if lines and "rule" in lines[0]:
        said["rules"] = [f"{r['item']} {r['rule']} {r['source']}" for r in lines]
    elif "duty" in declared.columns:
        # No law of numbers watches a table of texts: what each line speaks of is agreed whole.
        named = [name for name, column in declared.columns.items() if column.role in ("word", "part", "name")]
        said["rules"] = ["; ".join([*(r[name] for name in named), r["source"]]) for r in lines]
    return said


@cache
def agreed(folder: Path) -> dict[str, Any] | None:
    """What was agreed of the table in `folder`; None where nothing was."""
    path = folder / AGREED
    return tomllib.loads(path.read_text(encoding="utf-8")) if path.is_file() else None


def law_agreed(name: str, tables: Tables) -> list[str]:
    """A table is as agreed (agreed.toml): how rows were seen, roles, senses, kinds of cautions, notes, rules."""
    declared = tables.declared[name]
    record = agreed(declared.folder)
    if record is None:
        return [
            f"{name}: nothing is agreed of it; run python -m build_scripts.agree {name} and read {AGREED}"
        ]
    now = state(declared, tables[name])
    return [
        f"{name}/{AGREED}, {part}: agreed is {record.get(part)}, the table has {now.get(part)}; "
        "if that is meant, change both"
        for part in sorted({*record, *now})
        if record.get(part) != now.get(part)
    ]


def written(said: dict[str, Any]) -> str:
    """The record as TOML: plain values first, then a block for each part."""
    lines = []
    for key, value in said.items():
        if isinstance(value, list) and len(value) > 8:
            lines += [f"{key} = [", *(f"    {json.dumps(one)}," for one in value), "]"]
        elif not isinstance(value, dict):
            lines.append(f"{key} = {json.dumps(value)}")
    for part, values in said.items():
        if isinstance(values, dict):
            lines += ["", f"[{part}]", *(f"{key} = {json.dumps(value)}" for key, value in values.items())]
    return "\n".join(lines) + "\n"
