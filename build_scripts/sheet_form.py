"""From a worksheet's declaration to the form on its page: every box with its path, id and example value.

The form's names are the paths that errors use (`load`, `parts[0].width`, `centre[2]`), so that a refusal finds its box.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from calc.worksheet import Choice, Input, Worksheet

_MOST_RADIOS = 4
_LONGEST_RADIOS = 64
_YES_NO_OR_NOT_LOOKED_AT = (Choice("yes", "Yes"), Choice("no", "No"), Choice("", "Not looked at"))
"""A tick box cannot say that nobody looked; where a sheet tells that from no, all three stand side by side."""


@dataclass(frozen=True)
class Row:
    """One row of a rows input: its number as shown, and its boxes."""

    number: str
    inputs: tuple[Box, ...]


@dataclass(frozen=True)
class Box:
    """One input as a page shows it."""

    name: str
    path: str
    id: str
    label: str
    kind: str
    dimension: str
    unit: str
    unit_si: str
    help: str
    value: str
    required: bool
    has_default: bool
    optional: bool = False
    long: bool = False
    choices: tuple[Choice, ...] = ()
    radios: bool = False
    shown_when: str = ""
    asked: bool = True
    axes: tuple[Box, ...] = ()
    rows: tuple[Row, ...] = ()
    blank: Row | None = None
    row_name: str = ""
    min_rows: int = 1
    max_rows: int = 100


def form_inputs(sheet: Worksheet) -> tuple[Box, ...]:
    """The boxes of a worksheet, filled with its example."""
    return _boxes(sheet.inputs, sheet.example, "", _steering(sheet.inputs))


def _steering(inputs: Sequence[Input]) -> set[str]:
    """Names of inputs that decide whether others are asked."""
    names = {name for one in inputs for name in one.shown_when}
    return names.union(*(_steering(one.columns) for one in inputs if one.columns)) if inputs else names


def _boxes(
    inputs: Sequence[Input], given: Mapping[str, Any], prefix: str, steering: set[str]
) -> tuple[Box, ...]:
    held = {one.name: _text(given.get(one.name, one.default)) for one in inputs}
    return tuple(_box(one, given.get(one.name, one.default), held, prefix, steering) for one in inputs)


def _text(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, (list, tuple)):
        return "; ".join(str(part) for part in value)
    return str(value)


def _box(one: Input, given: Any, held: Mapping[str, str], prefix: str, steering: set[str]) -> Box:
    path = f"{prefix}{one.name}"
    box_id = "in-" + path.replace("[", "-").replace("].", "-").replace("]", "")
    answers = one.choices
    unanswered = one.kind == "flag" and not one.required and one.default is None and one.name not in steering
    if unanswered:
        answers = _YES_NO_OR_NOT_LOOKED_AT
    radios = unanswered or (
        one.kind == "choice"
        and len(one.choices) <= _MOST_RADIOS
        and (one.required or one.name in steering)
        and bool(held[one.name])
        and sum(len(choice.label) for choice in one.choices) <= _LONGEST_RADIOS
    )
    axes: tuple[Box, ...] = ()
    rows: tuple[Row, ...] = ()
    blank: Row | None = None
    if one.kind == "point":
        axes = _axes(one, given, path, box_id)
    if one.kind == "rows":
        listed = json.loads(given) if isinstance(given, str) else (given or [])
        listed = listed or [{}] * int(one.at_least or 0)
        rows = tuple(
            Row(str(n + 1), _boxes(one.columns, row, f"{path}[{n}].", steering))
            for n, row in enumerate(listed)
        )
        blank = Row("", _boxes(one.columns, {}, f"{path}[__].", steering))
    return Box(
        name=one.name, path=path, id=box_id, label=one.label, kind=one.kind, dimension=one.dimension, unit=one.unit,
        unit_si=one.unit_si, help=one.help, value=held[one.name] if one.kind != "rows" else "",
        required=one.required, has_default=one.default is not None,
        optional=not unanswered and not one.required and one.default is None and not one.shown_when and one.name not in steering, choices=answers, radios=radios, long=one.long,
        shown_when=json.dumps({k: list(v) for k, v in one.shown_when.items()}) if one.shown_when else "",
        asked=all(held.get(other) in allowed for other, allowed in one.shown_when.items()),
        axes=axes, rows=rows, blank=blank, row_name=_row_name(one.label),
        min_rows=int(one.at_least if one.at_least is not None else 1), max_rows=int(one.at_most or 100),
    )  # fmt: skip


def _axes(one: Input, given: Any, path: str, box_id: str) -> tuple[Box, ...]:
    parts = given.split(";") if isinstance(given, str) else list(given or ("", "", ""))
    return tuple(
        Box(
            name=axis, path=f"{path}[{n}]", id=f"{box_id}-{axis}", label=axis, kind="quantity",
            dimension=one.dimension, unit=one.unit, unit_si=one.unit_si, help="", value=_text(part).strip(),
            required=one.required, has_default=False,
        )
        for n, (axis, part) in enumerate(zip("xyz", parts, strict=True))
    )  # fmt: skip


def _row_name(label: str) -> str:
    """What one row is called: `Parts` gives `Part`."""
    first = label.split(",", maxsplit=1)[0].split("(", maxsplit=1)[0].strip()
    return first[:-1] if first.endswith("s") and not first.endswith("ss") else first
