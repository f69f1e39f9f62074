"""The page of a job as a page shows and prints it: one sheet of paper from the answers of several worksheets.

A plan shows what was worked out; what is no plan shows the reasons and no number that could be used. It imports the standard
library and calc alone, because it is packed into the page's Python beside calc.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any
from urllib.parse import parse_qsl

from build_scripts.answer_view import nodes_of
from build_scripts.code_view import code_nodes
from calc.inputs import Given
from calc.reasons import Reason
from calc.records.codes.numbers import Numbers, nested
from calc.records.jobs.plan import Plan, Typed, Worked, plan
from calc.records.jobs.slots import JOBS, SHOWN, WHERE, sheets_of, slot_of
from calc.records.kit.part import part_of
from calc.trees import Node
from calc.words.facts import Fact, Option, absent, share, weight
from calc.words.writer import UnitSystem, Writer, plain

SCOPES = ("page/jobs", "page/codes", "page/answer")
BEFORE: Mapping[str, tuple[str, ...]] = {
    "lift": ("straight", "looked", "pins", "legs", "support", "clear", "hands", "inch"),
    "pull": ("measured", "barrier", "gauge", "release", "stop"),
    "load": ("looked", "tight", "edges", "deck", "parts"),
}
"""What is looked at before each job begins, in its order."""
_WORDS = {"ok": "job-plan", "caution": "job-careful"}
_SIGNS = ("prohibition", "warning", "mandatory")
"""Kinds of caution that stand on the page, in their order; notes stay on the worksheets."""
_BY_HAND = ("what", "by", "checked", "date")
_COLUMNS = ("number", "mark", "looked", "rating", "pull", "used")
"""The columns of the table of parts; on a narrow screen each cell stands under its head."""
PARTS_ON_FIRST, PARTS_ON_OTHERS = 10, 24
"""So many parts stand on the first sheet of paper beside all else; more have sheets of their own, with so many on each."""
_BLANK_STAGES = 6
_LOG_COLUMNS = ("stage", "force", "gap", "time")
DRAWN = ("sling-legs", "hanging-load", "tie-down", "trial-log")
"""Worksheets whose drawing stands on the page."""
TO_DO = ("steps",)
"""Results that say what to do: they do not stand beside the log of what was done."""
LISTED = ("steps", "directions")
"""Results that are several sentences: each a list over the whole width."""


@dataclass(frozen=True)
class Asked:
    """A request: the job, what was typed in its worksheets, who made the book, and the writer."""

    job: str
    typed: Mapping[str, Typed]
    made_by: str
    units: UnitSystem
    language: str
    root: str
    writer: Writer

    def say(self, code: str, **facts: Fact) -> list[Node]:
        """A message as nodes."""
        return nodes_of(self.writer.say(code, facts))


def job_view(request: Mapping[str, Any]) -> dict[str, Any]:
    """The answer to {"job": {"name", "typed", "made_by", "kit"}}: the verdict and the nodes of the page. `typed`: by worksheet,
    its fields as an address holds them, with the units that they were typed in; those are the units of the page. `kit`: the
    parts that this device keeps under the numbers that are named there.
    """
    one = request["job"]
    typed = {name: _typed(fields) for name, fields in one["typed"].items() if name in sheets_of(one["name"])}
    typed = {name: sheet for name, sheet in typed.items() if sheet.inputs}
    units: UnitSystem = next((sheet.units for sheet in typed.values()), "us")
    language = request.get("language", "en")
    kit = [part_of(part) for part in one.get("kit", ())]
    made = plan(one["name"], typed, language, kit)
    writer = Writer(units, language, SCOPES)
    asked = Asked(one["name"], typed, one["made_by"], units, language, request.get("root", ""), writer)
    return {"ok": True, "verdict": made.verdict, "plan": made.is_plan, "nodes": _page(asked, made)}


def _typed(fields: str) -> Typed:
    filled = dict(parse_qsl(fields))
    units: UnitSystem = "si" if filled.pop("units", "us") == "si" else "us"
    return Typed(nested(filled.items()), units)


def _page(asked: Asked, made: Plan) -> list[Node]:
    if not asked.typed:
        return [_title(asked), ["p", {}, *asked.say("job-nothing")], _sheets(asked)]
    body = _plan(asked, made) if made.is_plan else _refusal(asked, made)
    return [_head(asked, made, 1), *body]


def _title(asked: Asked) -> Node:
    return ["h2", {"class": "job-title"}, asked.writer.text(f"job-{asked.job}")]


def _head(asked: Asked, made: Plan, page: int) -> Node:
    """The head of a sheet of paper: what it is, of which job, its verdict, which sheet of how many, and what made it."""
    word = _WORDS.get(made.verdict, "job-not-a-plan")
    if made.is_plan and _is_done(made):
        word = "job-record"
    band: Node = [
        "p",
        {"class": "verdict job-verdict", "data-job-verdict": made.verdict},
        ["span", {"class": "verdict-shape"}],
        ["span", {}, asked.writer.text(word)],
    ]
    named: list[Node] = [["p", {"class": "job-name", "data-job-name": ""}, made.name]] if made.name else []
    pages = 1 + len(_pages_of_parts(made))
    numbered = asked.say("job-page", page=page, pages=pages, hash=asked.made_by)
    title = (
        _title(asked) if page == 1 else ["p", {"class": "job-title"}, asked.writer.text(f"job-{asked.job}")]
    )
    attributes = {"class": "answer job-head", "data-verdict": made.verdict}
    return ["div", attributes, title, *named, band, ["p", {"class": "job-page-number"}, *numbered]]


# ---- no plan


def _refusal(asked: Asked, made: Plan) -> list[Node]:
    against = [one for one in made.reasons if one.weight in ("stop", "unknown")]
    items: list[Node] = [["li", {}, *_against(asked, made, one)] for one in against]
    return [
        ["p", {"class": "job-why"}, *asked.say("job-why-not")],
        ["ul", {"class": "job-reasons", "data-job-reasons": ""}, *items],
        _sheets(asked),
        ["div", {"class": "job-foot"}, _code(asked)],
    ]


def _against(asked: Asked, made: Plan, reason: Reason) -> list[Node]:
    """One reason why it is no plan: the part of the page that it is about, the reason, and what the worksheet says itself."""
    titles = {asked.writer.of(f"worksheets/{name}").text("title"): name for name in sheets_of(asked.job)}
    sheet = titles.get(str(reason.facts.get("sheet", "")), "")
    slot = slot_of(sheet) if sheet else WHERE.get(reason.code, "")
    where: list[Node] = []
    if slot:
        named = asked.say("job-where", slot=asked.writer.text(f"slot-{slot}"))
        link: Node = ["a", {"href": f"{asked.root}work-out/{sheet}.html"}, *named]
        where = [["b", {}, *([link] if sheet else named)], " "]
    said = asked.say(f"reason-{reason.code}.headline", **reason.facts)
    own = [one for one in made.worked if one.sheet.name == sheet]
    lines: list[Node] = [["p", {"class": "headline"}, *nodes_of(one.told["headline"])] for one in own]
    return [*where, *said, *lines]


def _sheets(asked: Asked) -> Node:
    """Links to the worksheets of the job."""
    items: list[Node] = []
    for name in sheets_of(asked.job):
        title = asked.writer.of(f"worksheets/{name}").text("title")
        items.append(["li", {}, ["a", {"href": f"{asked.root}work-out/{name}.html"}, title]])
    return ["ol", {"class": "job-sheets"}, *items]


# ---- the plan


def _plan(asked: Asked, made: Plan) -> list[Node]:
    careful = [one for one in made.reasons if one.weight == "caution" and one.code != "sheet-careful"]
    said: list[Node] = [
        ["p", {"class": "job-careful"}, *asked.say(f"reason-{one.code}.headline", **one.facts)]
        for one in careful
    ]
    slots = [_slot(asked, made, slot.name) for slot in JOBS[asked.job]]
    rows, pages = _rows_of_parts(asked, made), _pages_of_parts(made)
    on_first = [_parts(asked, rows)] if rows and not pages else []
    return [
        *said,
        ["div", {"class": "job-slots"}, *(one for one in slots if one is not None)],
        *on_first,
        *_where_parts(asked, len(rows), len(pages)),
        ["div", {"class": "job-two"}, _cautions(asked, made), _before(asked, made)],
        _by_hand(asked),
        *([] if pages else [_foot(asked, made)]),
        *(_page_of_parts(asked, made, rows, place) for place in range(len(pages))),
    ]


def _foot(asked: Asked, made: Plan) -> Node:
    """The text that brings the numbers back, and what was typed: at the foot of the last sheet of paper."""
    small: Node = ["div", {"class": "job-small"}, *_given(asked, made)]
    return ["div", {"class": "job-foot"}, _code(asked), small]


def _slot(asked: Asked, made: Plan, name: str) -> Node | None:
    worked = [one for one in made.worked if one.slot == name]
    if not worked:
        return None
    content: list[Node] = [["h3", {}, asked.writer.text(f"slot-{name}")]]
    for one in worked:
        content.append(["p", {"class": "headline"}, *nodes_of(one.told["headline"])])
        if one.told["figure"] and one.sheet.name in DRAWN:
            content.append(["figure", {"class": "job-figure"}, one.told["figure"]["drawing"]])
        content += _numbers(one, _is_done(made))
    return ["section", {"class": f"job-slot job-slot-{name}"}, *content]


def _numbers(one: Worked, is_done: bool) -> Iterator[Node]:
    """The numbers of a worksheet as a table, then those of its results that are lists of sentences. `is_done`: the log of the
    pull is there, so that its stages are past.
    """
    rows: list[Node] = []
    lists: list[Node] = []
    for name in (name for name in SHOWN[one.sheet.name] if not (is_done and name in TO_DO)):
        result = one.told["results"][name]
        items: list[Node] = [["li", {}, *nodes_of(item)] for item in result.get("items") or ()]
        label = nodes_of(result["label"])
        if name in LISTED:
            lists.append(["div", {"class": "job-listed"}, ["h4", {}, *label], ["ul", {}, *items]])
            continue
        written = [["ul", {"class": "items"}, *items]] if len(items) > 1 else nodes_of(result["text"])
        rows.append(["tr", {}, ["th", {"scope": "row"}, *label], ["td", {}, *written]])
    if rows:
        yield ["table", {"class": "results"}, ["tbody", {}, *rows]]
    yield from lists


def _path(made: Plan) -> Worked | None:
    """The worksheet that lists the parts."""
    return next((one for one in made.worked if one.sheet.name == "load-path"), None)


def _pages_of_parts(made: Plan) -> list[slice]:
    """Which rows of the table of parts stand on each sheet of paper after the first; none where the first has room for all."""
    path = _path(made)
    count = len(path.found.parts) if path is not None and made.is_plan else 0
    if count <= PARTS_ON_FIRST:
        return []
    return [slice(first, first + PARTS_ON_OTHERS) for first in range(0, count, PARTS_ON_OTHERS)]


def _rows_of_parts(asked: Asked, made: Plan) -> list[Node]:
    path = _path(made)
    if path is None:
        return []
    writer = Writer(asked.units, asked.language, path.sheet.scopes)
    rows = zip(path.given.rows("items"), path.found.parts, strict=True)
    return [_part(asked, writer, row, part) for row, part in rows]


def _parts(asked: Asked, rows: Sequence[Node]) -> Node:
    """The parts of the string: number, mark, last inspection, what each may carry, its pull and how much of it is used."""
    heads: list[Node] = [["th", {"scope": "col"}, asked.writer.text(f"part-{name}")] for name in _COLUMNS]
    return ["table", {"class": "job-parts"}, ["thead", {}, ["tr", {}, *heads]], ["tbody", {}, *rows]]


def _where_parts(asked: Asked, count: int, pages: int) -> list[Node]:
    """On which sheets of paper the parts stand, where the first has no room for them."""
    if not pages:
        return []
    code = "job-parts-on" if pages == 1 else "job-parts-on-pages"
    return [["p", {"class": "job-careful"}, *asked.say(code, count=count, page=2, pages=1 + pages)]]


def _page_of_parts(asked: Asked, made: Plan, rows: Sequence[Node], place: int) -> Node:
    """A further sheet of paper: the head again, and the parts that stand on it."""
    heading = asked.writer.text("slot-parts" if place == 0 else "job-parts-go-on")
    pages = _pages_of_parts(made)
    content = [_head(asked, made, place + 2), ["h3", {}, heading], _parts(asked, rows[pages[place]])]
    content += [_foot(asked, made)] if place == len(pages) - 1 else []
    return ["section", {"class": "job-further"}, *content]


def _part(asked: Asked, writer: Writer, row: Given, part: Any) -> Node:
    label = writer.plain(part.item.label)
    number = row.text("own_number")
    looked = row.date("looked_on")
    what = asked.writer.say(
        "part-what",
        {
            "kind": plain(writer.write(Option("items-kind", part.item.kind))),
            "size": row.text("size") or absent("not-given"),
            "grade": row.text("grade") or absent("not-given"),
        },
    )
    cells: list[list[Node]] = [
        nodes_of(what),
        [str(looked) if looked else "____________"],
        nodes_of(writer.write(weight(part.rating.rating_kg, "capacity"))),
        nodes_of(writer.write(weight(part.pull_kg, "demand"))),
        nodes_of(writer.write(share(part.share))),
    ]
    named = f"{number}, {label}" if number and number != label else label
    return [
        "tr",
        {},
        ["th", {"scope": "row"}, named],
        *(
            ["td", {"data-head": asked.writer.text(f"part-{name}")}, *cell]
            for name, cell in zip(_COLUMNS[1:], cells, strict=True)
        ),
    ]


def _cautions(asked: Asked, made: Plan) -> Node:
    told: list[Any] = []
    for kind in _SIGNS:
        for one in made.worked:
            told += [c for c in one.told["cautions"] if c["kind"] == kind and c not in told]
    items: list[Node] = [
        [
            "li",
            {},
            ["b", {}, asked.writer.text(f"caution-word-{one['kind']}") + "."],
            " ",
            *nodes_of(one["text"]),
        ]
        for one in told
    ]
    return ["section", {}, ["h3", {}, asked.writer.text("job-cautions")], ["ul", {}, *items]]


def _before(asked: Asked, made: Plan) -> Node:
    name = f"before-{asked.job}"
    items: list[Node] = [["li", {}, *asked.say(f"{name}.{one}")] for one in BEFORE[asked.job]]
    checks: Node = ["ul", {"class": "job-before"}, *items]
    return ["section", {}, ["h3", {}, asked.writer.text(name)], checks, *_log_by_hand(asked, made)]


def _is_done(made: Plan) -> bool:
    return any(one.slot == "log" for one in made.worked)


def _log_by_hand(asked: Asked, made: Plan) -> list[Node]:
    """Lines for a log, where a pull was not logged."""
    if asked.job != "pull" or _is_done(made):
        return []
    rows: list[Node] = [
        ["tr", {}, ["th", {"scope": "row"}, str(one)], *(["td", {}] for _ in range(3))]
        for one in range(1, _BLANK_STAGES + 1)
    ]
    heads: list[Node] = [
        ["th", {"scope": "col"}, asked.writer.text(f"log-column-{name}")] for name in _LOG_COLUMNS
    ]
    table: Node = ["table", {"class": "job-log"}, ["thead", {}, ["tr", {}, *heads]], ["tbody", {}, *rows]]
    return [["h3", {}, asked.writer.text("by-hand-log")], table]


def _by_hand(asked: Asked) -> Node:
    lines: list[Node] = [
        ["div", {}, ["dt", {}, asked.writer.text(f"by-hand-{name}")], ["dd", {}]] for name in _BY_HAND
    ]
    return ["dl", {"class": "job-by-hand"}, *lines]


def _given(asked: Asked, made: Plan) -> list[Node]:
    """What each worksheet was worked out from, and what the figures rest on."""
    made_of: list[Node] = []
    for one in made.worked:
        title = asked.writer.of(f"worksheets/{one.sheet.name}").text("title")
        lines: list[Node] = []
        for given in one.told["inputs"]:
            if given["name"] == "job" or (one.slot == "parts" and given["name"] == "items"):
                continue  # they stand in the head, and in the table of parts
            lines += [["b", {}, *nodes_of(given["label"]), ":"], " ", *nodes_of(given["text"]), ". "]
        made_of.append(
            ["p", {}, ["b", {}, f"{asked.writer.text('job-worked-out-from')} ({title})"], " ", *lines]
        )
    titles = dict.fromkeys(source["title"] for one in made.worked for source in one.told["sources"])
    return [*made_of, ["p", {}, *asked.say("job-rests-on", sources="; ".join(titles))]]


def _code(asked: Asked) -> Node:
    sheets: Sequence[Numbers] = [Numbers(name, one.inputs) for name, one in asked.typed.items()]
    content = code_nodes(sheets, asked.made_by, asked.writer, asked.root)
    heading: Node = ["h3", {}, asked.writer.text("code-title")]
    return ["section", {"class": "code-place", "data-code": ""}, heading, *content]


__all__ = ["BEFORE", "PARTS_ON_FIRST", "PARTS_ON_OTHERS", "job_view"]
