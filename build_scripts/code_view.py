"""What a page shows of the text that brings an answer's numbers back, and what it does with one that comes back.

The text and its code are made once an answer has stood for a moment, for the screen and for paper. It imports the standard
library and calc alone, because it is packed into the page's Python beside calc.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any
from urllib.parse import quote, urlencode

from build_scripts.answer_view import nodes_of
from calc.answering import worksheet
from calc.figures.code_squares import code_squares
from calc.inputs import BadInput, Given, Input, read_inputs
from calc.records.codes.numbers import Brought, NotCarried, Numbers, bring_back, code_text, fields
from calc.records.codes.spelling import CodeRefused
from calc.records.jobs.slots import job_of
from calc.records.qr_code import QUIET_MODULES, Modules, TooLong, qr_code
from calc.telling import reading
from calc.trees import Node
from calc.words.facts import Fact
from calc.words.writer import UnitSystem, Writer

SCOPE = "page/codes"
BACK = "back"
"""The field of an address that holds the eight letters of tables and code that printed its numbers."""
JOB_PAGE = "about/one-page-for-the-job.html"
"""Where the page of a job stands."""
_SIZES = ((49, "a"), (65, "b"), (81, "c"), (101, "d"), (125, "e"), (153, "f"), (185, "g"))
"""Squares of a code along a side, up to which it is printed at a size: no square is smaller than 0.4 mm."""


def code_view(asked: Mapping[str, Any]) -> dict[str, Any]:
    """The answer to {"code": {"worksheet", "inputs", "made_by", "edition"}}: the nodes of the text with its code."""
    one = asked["code"]
    units = _units(asked)
    numbers = Numbers(one["worksheet"], _with_days(one["worksheet"], one["inputs"], units))
    writer = _writer(asked)
    return {
        "ok": True,
        "nodes": [
            ["h2", {}, writer.text("code-title")],
            *code_nodes((numbers,), one["made_by"], writer, asked.get("root", "")),
            ["p", {"class": "code-made-by"}, writer.text("code-made-by", **_made_by(one))],
        ],
    }


def back_view(asked: Mapping[str, Any]) -> dict[str, Any]:
    """The answer to {"back": text}: where its numbers are opened, and the fields of each worksheet; or why not."""
    try:
        brought = bring_back(str(asked["back"]))
    except CodeRefused as refused:
        said = _writer(asked).text(refused.why.code, **refused.why.facts)
        return {
            "ok": False,
            "errors": [{"input": "", "given": "", "message": said, "said": said, "code": refused.code}],
        }
    kept = {one.sheet: _fields(one, brought) for one in brought.sheets}
    first, *others = kept
    root = asked.get("root", "")
    address = f"{root}work-out/{first}.html#{kept[first]}&{BACK}={brought.made_by}"
    if others:
        address = f"{root}{JOB_PAGE}#{job_of(first)}"
    return {"ok": True, "kept": kept, "address": address}


def code_nodes(sheets: Sequence[Numbers], made_by: str, writer: Writer, root: str) -> list[Node]:
    """The text that holds the numbers of worksheets, as a QR code and in groups to type; or why there is none."""
    try:
        text = code_text(sheets, writer.units, made_by)
        code = qr_code(text.replace(" ", ""))
    except NotCarried:
        return [["p", {"class": "code-how"}, *_said(writer, "code-file")]]
    except TooLong:
        if len(sheets) > 1:
            return _one_each(sheets, made_by, writer, root)
        return [["p", {"class": "code-how"}, *_said(writer, "code-too-long")]]
    groups: list[Node] = []
    for group in text.split():
        groups += [["span", {"class": "value"}, group], " "]
    page = f"{root}about/numbers-from-paper.html"
    how: Node = ["a", {"href": page}, writer.text("code-where")]
    return [
        _drawn(code, writer.text("code-drawn")),
        ["p", {"class": "code-how"}, *_said(writer, "code-how"), " ", how],
        ["p", {"class": "code-text", "data-code-text": ""}, *groups],
    ]


def _one_each(sheets: Sequence[Numbers], made_by: str, writer: Writer, root: str) -> list[Node]:
    """A text for each worksheet, where one for all of them would be too long."""
    nodes: list[Node] = [["p", {"class": "code-how"}, *_said(writer, "code-one-each")]]
    for one in sheets:
        title = writer.of(worksheet(one.sheet).scope).text("title")
        content = code_nodes((one,), made_by, writer, root)
        nodes.append(["div", {"class": "code-one"}, ["p", {"class": "code-how"}, ["b", {}, title]], *content])
    return nodes


def _drawn(code: Modules, title: str) -> Node:
    side = len(code) + 2 * QUIET_MODULES
    size = next(name for most, name in _SIZES if side <= most)
    attributes = {
        "class": f"numbers-code numbers-code-{size}",
        "viewBox": f"0 0 {side} {side}",
        "role": "img",
        "xmlns": "http://www.w3.org/2000/svg",
    }
    return [
        "svg",
        attributes,
        ["title", {}, title],
        *code_squares(code, QUIET_MODULES, 0.0, 0.0, float(side)),
    ]


def _with_days(name: str, inputs: Mapping[str, Any], units: UnitSystem) -> dict[str, Any]:
    """Inputs with every day as the calendar has it: `today` would be another one tomorrow. What is refused stays as typed."""
    sheet = worksheet(name)
    try:
        given = read_inputs(sheet.inputs, inputs, reading(sheet, Writer(units, "en", sheet.scopes)))
    except BadInput:
        return dict(inputs)
    return _dated(sheet.inputs, inputs, given)


def _dated(declared: Sequence[Input], inputs: Mapping[str, Any], given: Given) -> dict[str, Any]:
    dated = dict(inputs)
    for one in declared:
        if one.columns and one.name in inputs:
            rows = zip(inputs[one.name], given.rows(one.name), strict=True)
            dated[one.name] = [_dated(one.columns, row, read) for row, read in rows]
        elif one.kind == "date" and (day := given.date(one.name)) is not None:
            dated[one.name] = str(day)
    return dated


def _fields(one: Numbers, brought: Brought) -> str:
    """The inputs as an address holds them."""
    return urlencode([*_filled(one), ("units", brought.units)], quote_via=quote)


def _filled(one: Numbers) -> Iterator[tuple[str, str]]:
    return ((path, value) for path, value in fields(one.inputs) if value)


def _made_by(one: Mapping[str, Any]) -> dict[str, Fact]:
    return {"number": str(one["edition"]), "hash": str(one["made_by"])}


def _units(asked: Mapping[str, Any]) -> UnitSystem:
    return "si" if asked.get("units") == "si" else "us"


def _writer(asked: Mapping[str, Any]) -> Writer:
    return Writer(_units(asked), asked.get("language", "en"), (SCOPE,))


def _said(writer: Writer, code: str) -> list[Node]:
    return nodes_of(writer.say(code))


__all__ = ["BACK", "JOB_PAGE", "back_view", "code_nodes", "code_view"]
