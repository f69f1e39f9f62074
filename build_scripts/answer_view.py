"""From an answer to what a page shows of it: a tree of elements for each region of the page.

The build writes these trees into the page as HTML (`to_html`); in the browser the same code makes them of the reader's
own answer, and scripts/answer-view.js makes elements of them. It imports the standard library and calc alone, because it
is packed into the page's Python beside calc.

A region is one element, found on the page by its `data-view`. Texts are spans (calc.words.writer); what is looked for by
scripts and tests is `data-result`, `data-value` and `data-unit`, `data-headline`, `data-big`, `data-verdict`.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from typing import Any
from urllib.parse import quote

from build_scripts.edition import RUNTIME
from calc.answering import answer_in_spans, reply, worksheet
from calc.trees import Node, markup
from calc.words.writer import Spans, Writer, plain

SCOPE = "page/answer"
LONGEST_BESIDE = 60
"""Letters of a result that stands beside its name; a longer one stands under it."""
RECORD, COMPLETE = "record", "record-complete"
"""The result that tells whether an inspection is a record yet, and its code when it is one."""
NEXT_DATE = "next_inspection"
"""The result that makes a worksheet a record: when the part is looked at next."""

Record = Mapping[str, Any]

_VALUE = {"class": "value"}
_WRITTEN_OUT = 1e21
"""Up to here a script writes a whole number digit by digit."""


def to_html(nodes: Sequence[Node]) -> str:
    """Nodes as HTML."""
    return "".join([markup(node) for node in nodes])


def nodes_of(spans: str | Spans) -> list[Node]:
    """Spans as nodes: a shop fraction set as one that still copies as typed, a value kept with its unit.

    >>> nodes_of(["hole ", ["n", [["f", "1-3/8"], " in"]]])[1]
    ['span', {'class': 'value'}, '1', ['span', {'class': 'frac-dash'}, '-'], ['span', {'class': 'frac'}, '3/8'], ' in']
    """
    if isinstance(spans, str):
        return [spans] if spans else []
    nodes: list[Node] = []
    for span in spans:
        if isinstance(span, str):
            nodes.append(span)
        elif span[0] == "n":
            nodes.append(["span", _VALUE, *nodes_of(span[1])])
        else:
            nodes.extend(_fraction(span[1]))
    return nodes


def _fraction(text: str) -> list[Node]:
    whole, dash, part = text.rpartition("-")
    lead: list[Node] = [whole, ["span", {"class": "frac-dash"}, dash]] if dash else []
    return [*lead, ["span", {"class": "frac"}, part]]


def regions(
    record: Record, columns: Mapping[str, Sequence[str]], root: str, writer: Writer, example: bool = False
) -> dict[str, Node]:
    """Every region of an answer by name.

    columns -- the keys of the columns of each result that is a table
    root -- the way up to the top of the site, for links
    writer -- for the few words that are not the record's
    example -- whether the inputs are the book's example or made from it: then the verdict says so, wherever it stands
    """
    mark = [_example_mark(writer), " "] if example else []
    made: dict[str, Node] = {
        "answer": _answer(record, mark),
        "foot": _foot(record, mark),
        "inputs": _inputs(record["inputs"]),
        "figure": _figure(record["figure"]),
        "cautions": _cautions(record["cautions"], writer),
        "numbers": _numbers(record, columns),
        "steps": _steps(record["steps"]),
        "sources": _sources(record["sources"], root),
        "next": _next([] if example else record["next"], root, writer),
    }
    for name, keys in columns.items():
        made[f"findings-{name}"] = _findings(name, keys, record["results"][name])
    if NEXT_DATE in record["results"]:
        result = record["results"][NEXT_DATE]
        named = {"data-view": "next-date", **_value(NEXT_DATE, result)}
        made["next-date"] = ["dd", named, *nodes_of(result["text"])]
    return made


def columns_of(name: str) -> dict[str, tuple[str, ...]]:
    """The results of a worksheet that are tables, each with the keys of its columns."""
    return {result.name: result.columns for result in worksheet(name).results if result.columns}


def view(record: Record, root: str, language: str = "en", example: bool = False) -> dict[str, Any]:
    """What a page shows of an answer: its verdict, the runtime that made it, the sentence that is spoken, how boxes
    were understood, whether it is a complete record of an inspection, its regions.
    """
    writer = Writer(record["units"], language, (SCOPE,))
    return {
        "ok": True,
        "verdict": record["verdict"],
        "runtime": RUNTIME,
        "spoken": plain(record["headline"]),
        "understood": record["understood"],
        "complete": record["results"].get(RECORD, {}).get("code") == COMPLETE,
        "regions": regions(record, columns_of(record["worksheet"]), root, writer, example),
    }


def view_json(request: str) -> str:
    """Answer a request written in JSON: {"worksheet", "inputs", "units", "language", "root", "example"}; refusals come back as data too.

    Returns what `view` makes, or {"ok": false, "errors": [{"input", "given", "message", "said"}]}. A request with `kit` in it is
    about the reader's own parts (build_scripts.kit_view), one with `job` about the page
    of a job, one with `code` or `back` about the text that brings numbers back.
    """

    def viewed(asked: Mapping[str, Any]) -> dict[str, Any]:
        if "kit" in asked:
            from build_scripts.kit_view import (
                kit_view,  # it sets its pieces with the functions of this module
            )

            return kit_view(asked)
        if "job" in asked:
            from build_scripts.job_view import job_view  # likewise

            return job_view(asked)
        if "code" in asked or "back" in asked:
            from build_scripts.code_view import (
                back_view,  # so do they, and the memory image need not hold them
                code_view,
            )

            return code_view(asked) if "code" in asked else back_view(asked)
        language = asked.get("language", "en")
        units = asked.get("units", "us")
        record = answer_in_spans(asked["worksheet"], asked.get("inputs", {}), units, language)
        return view(record, asked.get("root", ""), language, bool(asked.get("example")))

    return reply(request, viewed)


def handed_over(one: Record, root: str) -> str:
    """The address of a worksheet that takes over numbers of another: `work-out/hitch.html#load=287%20lb&from=TITLE`."""
    fields = [*one["inputs"].items(), ("from", one["from"])]
    written = "&".join(f"{quote(name)}={quote(value)}" for name, value in fields)
    return f"{root}work-out/{one['worksheet']}.html#{written}"


# ---- the regions


def _example_mark(writer: Writer) -> Node:
    return ["span", {"class": "example-mark"}, writer.text("example")]


def _verdict(record: Record, mark: Sequence[Node]) -> Node:
    words = ["span", {"data-verdict-word": ""}, *nodes_of(record["verdict_words"])]
    return ["p", {"class": "verdict"}, ["span", {"class": "verdict-shape"}], ["span", {}, *mark, words]]


def _answer(record: Record, mark: Sequence[Node]) -> Node:
    return [
        "div",
        {"data-view": "answer"},
        _verdict(record, mark),
        ["p", {"class": "big-name", "data-big-label": ""}, *nodes_of(record["big"]["label"])],
        ["p", {"class": "big", "data-big": ""}, *nodes_of(record["big"]["text"])],
        ["p", {"class": "headline", "data-headline": ""}, *nodes_of(record["headline"])],
    ]


def _foot(record: Record, mark: Sequence[Node]) -> Node:
    attributes = {
        "class": "foot-bar",
        "data-view": "foot",
        "data-foot": "",
        "data-verdict": record["verdict"],
        "href": "#answer",
    }
    big = ["span", {"class": "foot-big", "data-big": ""}, *nodes_of(record["big"]["text"])]
    words = ["span", {"data-verdict-word": ""}, *nodes_of(record["verdict_words"])]
    verdict = ["span", {"class": "verdict"}, ["span", {"class": "verdict-shape"}], ["span", {}, *mark, words]]
    return ["a", attributes, verdict, ["span", {"class": "bar-note", "data-bar-note": ""}], big]


def _inputs(given: Sequence[Record]) -> Node:
    """What the answer was worked out from: an answer never stands without it."""
    rows: list[Node] = [
        ["tr", {}, ["th", {"scope": "row"}, *nodes_of(one["label"])], ["td", {}, *nodes_of(one["text"])]]
        for one in given
    ]
    return ["tbody", {"data-view": "inputs", "data-inputs": ""}, *rows]


def _figure(drawn: Mapping[str, Any] | None) -> Node:
    attributes = {"class": "work-figure", "data-view": "figure", "data-figure": ""}
    if drawn is None:
        return ["figure", {**attributes, "hidden": ""}]
    return ["figure", attributes, drawn["drawing"], ["figcaption", {}, drawn["caption"]]]


def _cautions(cautions: Sequence[Record], writer: Writer) -> Node:
    items = [
        [
            "li",
            {"class": "caution", "data-kind": one["kind"]},
            [
                "p",
                {},
                ["b", {"class": "caution-word"}, writer.text(f"caution-word-{one['kind']}") + "."],
                " ",
                ["span", {}, *nodes_of(one["text"])],
            ],
        ]
        for one in cautions
    ]
    return ["ul", {"class": "cautions", "data-view": "cautions", "data-cautions": ""}, *items]


def _findings(name: str, keys: Sequence[str], result: Record) -> Node:
    """The rows of a result that is a table. A row's state, where the worksheet gives one, is for the page's colours."""
    attributes = {"data-view": f"findings-{name}", **_value(name, result)}
    states = result.get("states") or [""] * len(result["rows"])
    rows = [_row(keys, cells, state) for cells, state in zip(result["rows"], states, strict=True)]
    return ["tbody", attributes, *rows]


def _row(keys: Sequence[str], cells: Sequence[str | Spans], state: str) -> Node:
    made = [
        _cell(key, text, is_head=place == 0)
        for place, (key, text) in enumerate(zip(keys, cells, strict=True))
    ]
    return ["tr", {"data-outcome": state} if state else {}, *made]


def _cell(key: str, text: str | Spans, *, is_head: bool) -> Node:
    named = {"class": f"cell-{key}"}
    content = nodes_of(text)
    return ["th", {"scope": "row", **named}, *content] if is_head else ["td", named, *content]


def _numbers(record: Record, columns: Mapping[str, Sequence[str]]) -> Node:
    results = {name: result for name, result in record["results"].items() if name not in columns}
    rows: list[Node] = [
        ["tr", {}, ["th", {"scope": "row"}, *nodes_of(result["label"])], _number(name, result)]
        for name, result in results.items()
    ]
    return ["tbody", {"data-view": "numbers"}, *rows]


def _number(name: str, result: Record) -> Node:
    items = result.get("items") or ()
    listed = len(items) > 1
    under = listed or len(plain(result["text"])) > LONGEST_BESIDE
    content = [_list(items)] if listed else nodes_of(result["text"])
    return ["td", {**({"class": "said"} if under else {}), **_value(name, result)}, *content]


def _list(items: Sequence[str | Spans]) -> Node:
    return ["ul", {"class": "items"}, *(["li", {}, *nodes_of(item)] for item in items)]


def _value(name: str, result: Record) -> dict[str, str]:
    return {"data-result": name, "data-value": value_text(result["value"]), "data-unit": result["unit"]}


def _next(others: Sequence[Record], root: str, writer: Writer) -> Node:
    """Where the numbers can be carried on. Those of the example never are: there they would look like the reader's own."""
    attributes = {"class": "next-sheets", "data-view": "next", "data-next": ""}
    if not others:
        return ["nav", {**attributes, "hidden": ""}]
    items: list[Node] = [
        [
            "li",
            {},
            ["a", {"href": handed_over(one, root)}, one["title"]],
            " ",
            ["span", {"class": "next-value"}, ", ".join(one["inputs"].values())],
        ]
        for one in others
    ]
    return ["nav", attributes, ["h2", {}, writer.text("next")], ["ul", {}, *items]]


def value_text(value: Any) -> str:
    """A value as a script writes it: a whole number without a point, a list as JSON."""
    if isinstance(value, str):
        return value
    if isinstance(value, float):
        return str(int(value)) if value.is_integer() and abs(value) < _WRITTEN_OUT else repr(value)
    return json.dumps(value, ensure_ascii=False)


def _steps(steps: Sequence[Record]) -> Node:
    items = [
        [
            "li",
            {},
            ["span", {"class": "step-name"}, *nodes_of(step["label"])],
            ["span", {"class": "step-sum"}, *nodes_of(step["formula"])],
            ["span", {"class": "step-sum"}, *nodes_of(step["numbers"])],
            ["span", {"class": "step-sum step-result"}, *nodes_of(step["result"])],
        ]
        for step in steps
    ]
    return ["ol", {"class": "steps", "data-view": "steps", "data-steps": ""}, *items]


def _sources(sources: Sequence[Record], root: str) -> Node:
    items: list[Node] = [
        [
            "li",
            {},
            ["a", {"href": f"{root}about/sources.html#{source['key']}"}, source["title"]],
            *([" ", ["span", {}, source["locator"]]] if source["locator"] else []),
        ]
        for source in sources
    ]
    return ["ul", {"class": "cited", "data-view": "sources", "data-sources": ""}, *items]


__all__ = [
    "NEXT_DATE",
    "columns_of",
    "handed_over",
    "nodes_of",
    "regions",
    "to_html",
    "value_text",
    "view",
    "view_json",
]
