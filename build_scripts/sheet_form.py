"""From a worksheet's declaration to the form on its page: every box with its path, id and hint.

The form's names are the paths that errors use (`load`, `parts[0].width`, `centre[2]`), so that a refusal finds its box.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any
from urllib.parse import urlencode

from build_scripts.markup import set_spans
from build_scripts.wording import say, spans
from calc.describing import Asked, Described
from calc.inputs import Input
from calc.lifting.own_part import NAMES as OWN_PART_NAMES
from calc.words.writer import Spans, plain

_MOST_RADIOS = 4
_LONGEST_RADIOS = 64
_YES_NO_OR_NOT_LOOKED_AT = {"yes": "flag-yes", "no": "flag-no", "": "flag-not-looked-at"}
"""A tick box cannot say that nobody looked; where a sheet tells that from no, all three stand side by side."""


@dataclass(frozen=True)
class Choice:
    """One option: the value that is passed, its words as text, and as HTML."""

    value: str
    label: str
    html: str


@dataclass(frozen=True)
class Row:
    """One row of a rows input: its number as shown, and its boxes."""

    number: str
    inputs: tuple[Box, ...]


@dataclass(frozen=True)
class Box:
    """One input as a page shows it; of kind `own-part` the boxes (`axes`) that one of the reader's own parts fills together."""

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
    sample: str
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


def form_inputs(sheet: Described) -> tuple[Box, ...]:
    """The boxes of a worksheet as it starts: empty but for what holds by declaration, the example's values as hints."""
    on_page = tuple(one for one in sheet.inputs if one.declared.on_page)
    return _boxes(on_page, sheet.example, "", _steering(on_page))


def example_fields(sheet: Described) -> str:
    """The example as the fields of an address (`load=4%2C860+lb&legs=2`): what fills the boxes when the reader asks for it."""
    return urlencode(list(_fields(sheet.inputs, sheet.example, "")))


def _fields(inputs: Sequence[Asked], given: Mapping[str, Any], prefix: str) -> Iterator[tuple[str, str]]:
    for asked in inputs:
        one = asked.declared
        value, path = given.get(one.name), f"{prefix}{one.name}"
        if value is None:
            continue
        if one.kind == "rows":
            for number, row in enumerate(json.loads(value) if isinstance(value, str) else value):
                yield from _fields(asked.columns, row, f"{path}[{number}].")
        elif one.kind == "point":
            parts = value.split(";") if isinstance(value, str) else value
            yield from ((f"{path}[{number}]", _text(part).strip()) for number, part in enumerate(parts))
        else:
            yield path, _text(value)


def _choices(options: Sequence[tuple[str, Spans]]) -> tuple[Choice, ...]:
    return tuple(Choice(value, plain(label), set_spans(label)) for value, label in options)


def _steering(inputs: Sequence[Asked]) -> set[str]:
    """Names of inputs that decide whether others are asked."""
    names = {name for one in inputs for name in one.declared.shown_when}
    return names.union(*(_steering(one.columns) for one in inputs if one.columns)) if inputs else names


def _boxes(
    inputs: Sequence[Asked], example: Mapping[str, Any], prefix: str, steering: set[str]
) -> tuple[Box, ...]:
    held = {one.declared.name: _text(one.declared.default) for one in inputs}
    boxes = [_box(one, example.get(one.declared.name), held, prefix, steering) for one in inputs]
    carried = tuple(box for box in boxes if box.name in OWN_PART_NAMES)
    if len(carried) < len(OWN_PART_NAMES):
        return tuple(boxes)
    made: list[Box] = []
    for box in boxes:
        if box.name == OWN_PART_NAMES[0]:
            made.append(replace(box, kind="own-part", path=prefix, axes=carried))
        elif box not in carried:
            made.append(box)
    return tuple(made)


def _text(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, (list, tuple)):
        return "; ".join(str(part) for part in value)
    return str(value)


def _box(asked: Asked, sample: Any, held: Mapping[str, str], prefix: str, steering: set[str]) -> Box:
    one = asked.declared
    path = f"{prefix}{one.name}"
    box_id = "in-" + path.replace("[", "-").replace("].", "-").replace("]", "")
    options: Sequence[tuple[str, Spans]] = asked.options
    unanswered = one.kind == "flag" and not one.required and one.default is None and one.name not in steering
    if unanswered:
        options = [(value, spans(code)) for value, code in _YES_NO_OR_NOT_LOOKED_AT.items()]
    choices = _choices(options)
    radios = unanswered or (
        one.kind == "choice"
        and len(choices) <= _MOST_RADIOS
        and (one.required or one.name in steering)
        and sum(len(choice.label) for choice in choices) <= _LONGEST_RADIOS
    )
    axes: tuple[Box, ...] = ()
    rows: tuple[Row, ...] = ()
    blank: Row | None = None
    if one.kind == "point":
        axes = _axes(asked, sample, path, box_id)
    if one.kind == "rows":
        samples = json.loads(sample) if isinstance(sample, str) else (sample or [])
        few = max(int(one.bounds.at_least or 0), 1 if one.required else 0)
        rows = tuple(
            Row(
                str(n + 1),
                _boxes(asked.columns, samples[n] if n < len(samples) else {}, f"{path}[{n}].", steering),
            )
            for n in range(few)
        )
        blank = Row("", _boxes(asked.columns, {}, f"{path}[__].", steering))
    steers = bool(one.shown_when) or one.name in steering
    return Box(
        name=one.name, path=path, id=box_id, label=set_spans(asked.label), kind=one.kind, dimension=one.dimension,
        unit=one.unit, unit_si=one.unit_si, help=set_spans(asked.help), value=held[one.name] if one.kind != "rows" else "",
        sample=_hint(one, sample), required=one.required, has_default=one.default is not None,
        optional=not unanswered and not one.required and one.default is None and not steers,
        choices=choices, radios=radios, long=one.long,
        shown_when=json.dumps({k: list(v) for k, v in one.shown_when.items()}) if one.shown_when else "",
        asked=all(held.get(other) in allowed for other, allowed in one.shown_when.items()),
        axes=axes, rows=rows, blank=blank, row_name=asked.row,
        min_rows=int(one.bounds.at_least if one.bounds.at_least is not None else 1),
        max_rows=int(one.bounds.at_most or 100),
    )  # fmt: skip


def _hint(one: Input, sample: Any) -> str:
    """The example's value as the hint in an empty box; none where it would be a page of text or is not typed at all."""
    if sample is None or one.long or one.kind in ("rows", "point", "choice", "flag", "file"):
        return ""
    return say("such-as", sample=_text(sample))


def _axes(asked: Asked, sample: Any, path: str, box_id: str) -> tuple[Box, ...]:
    one = asked.declared
    parts = sample.split(";") if isinstance(sample, str) else list(sample or ("", "", ""))
    return tuple(
        Box(
            name=axis, path=f"{path}[{n}]", id=f"{box_id}-{axis}", label=axis, kind="quantity",
            dimension=one.dimension, unit=one.unit, unit_si=one.unit_si, help="", value="", sample=_text(part).strip(),
            required=one.required, has_default=False,
        )
        for n, (axis, part) in enumerate(zip("xyz", parts, strict=True))
    )  # fmt: skip
