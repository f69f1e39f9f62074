"""What the pages of "My kit" show: trees of elements made from the parts that the reader's device keeps.

The scripts store parts and show trees; everything that is thought about a part is asked here, and decided in calc.records. A
request names what is wanted in `kit`; the answer is plain data, with `nodes` where something is to be shown. It imports the
standard library and calc alone, because it is packed into the page's Python beside calc.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any
from urllib.parse import quote

from build_scripts.answer_view import nodes_of
from calc import inputs
from calc.declaration import Citation
from calc.figures.wear import WearShape, wear_figure
from calc.inputs import BadInput
from calc.inspecting.record import PLACES
from calc.judged import boxes_for, handed_over, judged, kinds_taken, on_tag
from calc.reasons import Reason, worst_first
from calc.records.kit.calendar import Entry, to_calendar
from calc.records.kit.difference import Changed, Difference, difference
from calc.records.kit.due import due
from calc.records.kit.edit import NotSaved, edited, looked_at, noted, taken_out
from calc.records.kit.file import KitRefused, read_kit, to_csv, to_json
from calc.records.kit.part import Look, Part, part_of
from calc.records.kit.schema import BOUGHT, CONDITIONS, KINDS, SERVICES
from calc.records.kit.state import State, state_of
from calc.records.kit.wear import LEAST_READINGS, MEASURED, Wear
from calc.trees import Node
from calc.words.facts import Fact, Message, Option, Place, absent, length, message
from calc.words.writer import UnitSystem, Writer

SCOPES = ("page/kit", "page/answer", "shared/path-items", "shared/condition", "shared/inspecting")
SHEETS: Mapping[str, str] = {
    "hook": "hook-check",
    "crane-hook": "hook-check",
    "shackle": "shackle-check",
    "chain-sling": "chain-check",
    "tie-down-chain": "chain-check",
    "wire-rope": "sling-check",
    "web-sling": "sling-check",
    "strap": "strap-check",
    "binder": "binder-check",
    "anchor": "anchor-check",
}
"""The worksheet that judges a kind of part; the others are judged by hand and by their maker's rules."""
_LISTED_FIELDS = ("rating", "mark", "size", "other_marks", "tag", "bought_on", "place", "service")


@dataclass(frozen=True)
class Asked:
    """A request, with what every answer needs: the writer, the edition and the way up to the root of the site."""

    data: Mapping[str, Any]
    writer: Writer
    units: UnitSystem
    root: str

    def parts(self, name: str = "parts") -> tuple[Part, ...]:
        """Parts that the device keeps."""
        return tuple(part_of(one) for one in self.data[name])

    @property
    def part(self) -> Part:
        """The part that the request is about."""
        return part_of(self.data["part"])

    @property
    def before(self) -> Part | None:
        """The part as it was, where there was one."""
        return None if self.data.get("part") is None else self.part

    def say(self, code: str, **facts: Fact) -> list[Node]:
        """A message as nodes."""
        return nodes_of(self.writer.say(code, facts))

    def write(self, fact: Fact) -> list[Node]:
        """A fact as nodes."""
        return nodes_of(self.writer.write(fact))


def kit_view(asked: Mapping[str, Any]) -> dict[str, Any]:
    """The answer to a request of the kit, as plain data."""
    units: UnitSystem = "si" if asked.get("units") == "si" else "us"
    one = Asked(asked, Writer(units, asked.get("language", "en"), SCOPES), units, asked.get("root", ""))
    try:
        return {"ok": True, **_ANSWERS[asked["kit"]](one)}
    except NotSaved as refused:
        errors = [
            {"input": box, "given": "", "message": said, "said": said, "code": ""}
            for box, why in refused.errors.items()
            for said in [one.writer.text(why.code, **why.facts)]
        ]
        return {"ok": False, "errors": errors}
    except KitRefused as refused:
        said = one.writer.text(refused.why.code, **refused.why.facts)
        return {
            "ok": False,
            "errors": [{"input": "", "given": "", "message": said, "said": said, "code": refused.code}],
        }


# ------------------------------------------------------------------------------------------ the list


def _list(asked: Asked) -> dict[str, Any]:
    """A page of the list; `count`: how many parts there are, `due`: how many of them are to be looked at."""
    count, due = int(asked.data["count"]), int(asked.data["due"])
    states = [state_of(part) for part in asked.parts()]
    rows: list[Node] = [_row(asked, state) for state in states]
    if asked.data.get("more"):
        return {"nodes": rows}
    found = asked.data.get("found")
    says = (
        asked.say("kit-count", count=count, due=due) if found is None else asked.say("kit-found", count=found)
    )
    head: list[Node] = [["p", {"class": "kit-count"}, *says]]
    return {"nodes": [*head, ["ul", {"class": "kit-list", "data-kit-rows": ""}, *rows]] if count else head}


def _kinds(asked: Asked) -> dict[str, Any]:
    """What each kind of part is called, for a search of the list."""
    return {"kinds": {kind: asked.writer.text(f"kit-kind-{kind}") for kind in KINDS}}


def _row(asked: Asked, state: State) -> Node:
    link = {"href": f"#part={state.part.id}", "data-verdict": state.verdict}
    return ["li", {}, ["a", link, *_line_of(asked, state)]]


def _line_of(asked: Asked, state: State) -> list[Node]:
    """A part on one line of a list: its number, what it is, how it stands."""
    name: Node = ["b", {}, *asked.write(called(state.part))]
    small: Node = ["small", {}, *_rating_line(asked, state)]
    right: Node = [
        "span",
        {"class": "kit-when"},
        ["span", {"class": "verdict-shape"}],
        ["small", {}, *_when(asked, state)],
    ]
    tag: Node = ["span", {"class": "kit-tag"}, state.part.number]
    return [tag, ["span", {"class": "kit-what"}, name, small], right]


def called(part: Part) -> Message:
    """What a part is, with its size and grade as read."""
    kind = message(f"kit-kind-{part.kind}")
    return message(
        "kit-called", kind=kind, size=_given(part.size), mark=_given(part.mark), name=_given(part.name)
    )


def _given(text: str) -> Fact:
    """What was typed, or that nothing was."""
    return text or absent("not-given")


def _rating_line(asked: Asked, state: State) -> list[Node]:
    if state.part.out is not None:
        return asked.say("kit-line-out", why=_why_out(state.part))
    if state.rated.quantity is None:
        return asked.say("kit-line-no-rating")
    if not state.usable:
        return asked.say("kit-line-not-now")
    code = "kit-line-ties-down" if state.rated.ties_down else "kit-line-rated"
    return asked.say(code, rating=state.rated.quantity)


def _why_out(part: Part) -> Fact:
    """Why a part is out of use, as its reader wrote it, or that a look found it altered."""
    why = part.out.why if part.out else ""
    return message("kit-found-altered") if why == "altered" else why


def _when(asked: Asked, state: State) -> list[Node]:
    if state.part.out is not None:
        return [*asked.say("kit-when-out"), " ", _day(state.part.out.on)]
    if state.due.on is None:
        return asked.say("kit-when-not-passed" if state.part.looks else "kit-when-never")
    code = "kit-when-overdue" if state.due.overdue else "kit-when-by"
    return [*asked.say(code), " ", _day(state.due.on.isoformat())]


def _day(on: str) -> Node:
    return ["span", {"class": "kit-day"}, on]


# ------------------------------------------------------------------------------------------ one part


def _part(asked: Asked) -> dict[str, Any]:
    state = state_of(asked.part)
    part = state.part
    nodes: list[Node] = [
        _verdict(asked, state),
        _buttons(asked, part),
        _reasons(asked, state.reasons),
        *_rated(asked, state),
        *_use(asked, state),
        *_next(asked, state),
        *_what(asked, part),
        *[_worn(asked, one) for one in state.wear],
        *_history(asked, part),
        _sources(asked, state.citations),
    ]
    title = asked.writer.text("kit-part-title", number=part.number, what=called(part))
    return {"title": title, "nodes": nodes, "verdict": state.verdict}


def _verdict(asked: Asked, state: State) -> Node:
    words = asked.say(f"kit-verdict-{state.verdict}" if state.part.out is None else "kit-verdict-out")
    shape = ["span", {"class": "verdict-shape"}]
    line = ["p", {"class": "verdict"}, shape, ["span", {"data-verdict-word": ""}, *words]]
    big: list[Node] = []
    if state.usable and state.rated.quantity is not None:
        code = "kit-big-ties-down" if state.rated.ties_down else "kit-big-rated"
        big = [
            ["p", {"class": "big-name"}, *asked.say(code)],
            ["p", {"class": "big", "data-big": ""}, *asked.write(state.rated.quantity)],
        ]
    return ["section", {"class": "answer", "data-answer": "", "data-verdict": state.verdict}, line, *big]


def _buttons(asked: Asked, part: Part) -> Node:
    buttons: list[Node] = []
    if part.out is None:
        sheet = SHEETS.get(part.kind)
        if sheet:
            href = f"{asked.root}work-out/{sheet}.html"
            buttons.append(["a", {"class": "plain-button", "href": href}, *asked.say("kit-judge")])
        buttons.append(_to(asked, f"look={part.id}", "kit-write-look"))
    buttons.append(_to(asked, f"edit={part.id}", "kit-edit"))
    if part.out is None:
        buttons.append(_to(asked, f"out={part.id}", "kit-take-out"))
    return ["p", {"class": "kit-buttons"}, *buttons]


def _to(asked: Asked, fragment: str, code: str) -> Node:
    return ["a", {"class": "plain-button", "href": f"#{fragment}"}, *asked.say(code)]


def _reasons(asked: Asked, reasons: Iterable[Reason]) -> Node:
    said = [one for one in worst_first(tuple(reasons)) if asked.writer.has(f"reason-{one.code}.caution")]
    items: list[Node] = [
        [
            "li",
            {"class": "caution", "data-kind": one.sign},
            [
                "p",
                {},
                ["b", {"class": "caution-word"}, *asked.say(f"caution-word-{one.sign}"), "."],
                " ",
                ["span", {}, *nodes_of(asked.writer.say(f"reason-{one.code}.caution", one.facts))],
            ],
        ]
        for one in said
    ]
    return ["ul", {"class": "cautions"}, *items]


def _rated(asked: Asked, state: State) -> list[Node]:
    if state.rated.basis is None or not state.usable:
        return []
    return [["p", {}, *asked.say("kit-rests-on", basis=state.rated.basis)]]


def _next(asked: Asked, state: State) -> list[Node]:
    if state.part.out is not None:
        return []
    due = state.due
    on = message("kit-no-date") if due.on is None else due.on.isoformat()
    facts = {"date": on, "months": due.months, "longest": due.longest_months}
    return [_head(asked, "kit-next"), ["p", {"data-kit-next": ""}, *asked.say("kit-next-says", **facts)]]


def _head(asked: Asked, code: str) -> Node:
    return ["h2", {}, *asked.say(code)]


def _what(asked: Asked, part: Part) -> list[Node]:
    rows: list[Node] = [
        _line(asked, f"kit-field-{name}", _value(name, str(getattr(part, name))))
        for name in _LISTED_FIELDS
        if getattr(part, name)
    ]
    if part.condition:
        rows.append(_line(asked, "kit-field-condition", _condition(part.condition)))
    if part.out is not None:
        facts: dict[str, Fact] = {"date": part.out.on, "why": _why_out(part), "by": _given(part.out.by)}
        rows.append(_line(asked, "kit-field-out", message("kit-out-says", **facts)))
    table: Node = ["table", {"class": "results"}, ["tbody", {}, *rows]]
    picture: list[Node] = (
        [
            [
                "img",
                {
                    "class": "kit-photo",
                    "src": part.photo,
                    "alt": asked.writer.text("kit-photo-of", number=part.number),
                },
            ]
        ]
        if part.photo
        else []
    )
    return [_head(asked, "kit-what"), *picture, table]


def _condition(value: str) -> Fact:
    return message("kit-damaged") if value == "damaged" else Option("condition", value)


def _value(name: str, value: str) -> Fact:
    return Option(name, value) if name in ("place", "service") else value


def _line(asked: Asked, code: str, value: Fact) -> Node:
    return ["tr", {}, ["th", {"scope": "row"}, *asked.say(code)], ["td", {}, *asked.write(value)]]


def _worn(asked: Asked, worn: Wear) -> Node:
    measure = message(f"kit-measure-{worn.measure}")
    lines: list[Node] = [["h2", {}, *asked.say("kit-wear", measure=measure)]]
    if worn.limit_m is not None:
        limit = length(
            worn.limit_m,
            "out_under" if worn.used is not None and worn.measure not in ("throat", "reach") else "out_at",
            4,
        )
        lines.append(["p", {}, *asked.say("kit-wear-limit", now=length(worn.now_m, digits=4), limit=limit)])
    else:
        lines.append(["p", {}, *asked.say("kit-wear-no-limit", now=length(worn.now_m, digits=4))])
    if worn.outlook is not None:
        latest: Fact = (
            message("kit-no-end") if worn.outlook.latest is None else worn.outlook.latest.isoformat()
        )
        facts: dict[str, Fact] = {"earliest": worn.outlook.earliest.isoformat(), "latest": latest}
        lines.append(["p", {"data-kit-outlook": worn.measure}, *asked.say("kit-outlook", **facts)])
    days = len({one.day for one in worn.readings})
    if days < LEAST_READINGS:
        lines.append(
            ["p", {"data-kit-lacks": worn.measure}, *asked.say("kit-wear-lacks", more=LEAST_READINGS - days)]
        )
    if days < _LEAST_DRAWN:
        return ["section", {}, *lines]
    caption = asked.writer.text("kit-wear-figure", measure=measure)
    drawn = wear_figure(_shape(worn), caption, asked.writer)
    lines.append(["figure", {"class": "work-figure"}, drawn.drawing, ["figcaption", {}, drawn.caption]])
    return ["section", {}, *lines]


_LEAST_DRAWN = 2
"""Readings of fewer days than this make no graph."""


def _shape(worn: Wear) -> WearShape:
    ahead = worn.outlook
    return WearShape(
        inputs.today(),
        [(one.day, one.size_m) for one in worn.readings],
        worn.limit_m,
        worn.new_m,
        None if ahead is None else ahead.earliest,
        None if ahead is None else ahead.latest,
    )


def _use(asked: Asked, state: State) -> list[Node]:
    """Links that carry the part to the worksheets that ask for one like it."""
    links: list[Node] = [
        ["a", {"class": "plain-button", "href": _address(asked, name, fields)}, *asked.say(f"kit-use-{name}")]
        for name, fields in (handed_over(state) | {"tag": on_tag(state)}).items()
    ]
    return [["p", {"class": "kit-buttons"}, *links]] if links else []


def _address(asked: Asked, name: str, fields: Mapping[str, str]) -> str:
    written = "&".join(
        f"{quote(box)}={quote(value)}"
        for box, value in {**fields, "from": asked.writer.text("kit-name")}.items()
    )
    return f"{asked.root}work-out/{name}.html#{written}"


def _history(asked: Asked, part: Part) -> list[Node]:
    if not part.looks:
        return [_head(asked, "kit-history"), ["p", {}, *asked.say("kit-history-empty")]]
    rows: list[Node] = [_look(asked, look) for look in part.looked]
    return [_head(asked, "kit-history"), ["ul", {"class": "kit-history"}, *rows]]


def _look(asked: Asked, look: Look) -> Node:
    read = [
        asked.say("kit-reading", measure=message(f"kit-measure-{name}"), size=typed)
        for name, typed in look.readings.items()
        if typed
    ]
    how = message("kit-look-by-sheet" if look.sheet else "kit-look-by-hand")
    first: Node = ["b", {}, *asked.say("kit-look", date=look.on, found=message(f"kit-found-{look.found}"))]
    lines: list[Node] = [first, ["span", {}, *asked.say("kit-look-who", by=_given(look.by), how=how)]]
    lines += [["span", {}, *one] for one in read]
    lines += [["span", {}, look.note]] if look.note else []
    return ["li", {}, *lines]


def _sources(asked: Asked, citations: Sequence[Citation]) -> Node:
    items: list[Node] = [
        [
            "li",
            {},
            [
                "a",
                {"href": f"{asked.root}about/sources.html#{one.source}"},
                asked.writer.cite(Place(one.source, one.locator)),
            ],
        ]
        for one in citations
    ]
    return ["section", {}, _head(asked, "kit-sources"), ["ul", {"class": "cited"}, *items]]


# ------------------------------------------------------------------------------------------ forms


def _form(asked: Asked) -> dict[str, Any]:
    """The form of a new part, or of one that is kept."""
    part = asked.before
    values: Mapping[str, str] = (
        {} if part is None else {k: v for k, v in vars(part).items() if isinstance(v, str)}
    )
    new = {} if part is None else dict(part.new)
    boxes = [
        _text_box(asked, "number", values, needed=True),
        _select(asked, "kind", values, [(kind, message(f"kit-kind-{kind}")) for kind in KINDS], needed=True),
        _text_box(asked, "mark", values),
        _text_box(asked, "size", values),
        _text_box(asked, "rating", values),
        _select(asked, "condition", values, [(one, _condition(one)) for one in CONDITIONS]),
    ]
    more = [
        _text_box(asked, "name", values),
        _text_box(asked, "other_marks", values),
        _text_box(asked, "tag", values),
        _text_box(asked, "bought_on", values),
        _select(asked, "bought", values, [(one, message(f"kit-bought-{one}")) for one in BOUGHT]),
        _select(asked, "place", values, [(one, Option("place", one)) for one in PLACES]),
        _select(asked, "service", values, [(one, Option("service", one)) for one in SERVICES]),
    ]
    sizes: list[Node] = [
        [
            "div",
            {"data-kit-of": " ".join(kind for kind in KINDS if measure in MEASURED.get(kind, ()))},
            _box(
                asked,
                f"new_{measure}",
                new.get(measure, ""),
                message("kit-new-size", measure=message(f"kit-measure-{measure}")),
            ),
        ]
        for measure in dict.fromkeys(name for names in MEASURED.values() for name in names)
    ]
    out = [] if part is None or part.out is not None else _out_boxes(asked)
    if part is None:
        out = _out_boxes(asked)
    photo = _photo_box(asked, values.get("photo", ""))
    fold: Node = [
        "details",
        {"class": "fold"},
        ["summary", {}, *asked.say("kit-more-boxes")],
        *more,
        *sizes,
        photo,
    ]
    going: Node = [
        "details",
        {"class": "fold", "data-kit-out": ""},
        ["summary", {}, *asked.say("kit-take-out")],
        *out,
    ]
    form = _form_of(
        asked, [*boxes, fold, *([going] if out else [])], "kit-save", f"part={part.id}" if part else ""
    )
    title = "kit-form-new" if part is None else "kit-form-edit"
    return {"title": asked.writer.text(title), "nodes": [form]}


def _form_of(asked: Asked, boxes: Sequence[Node], button: str, back: str) -> Node:
    general: Node = ["p", {"class": "error", "data-error": "", "hidden": ""}]
    save: Node = ["button", {"type": "submit", "class": "plain-button kit-main"}, *asked.say(button)]
    leave: Node = ["a", {"class": "plain-button", "href": f"#{back or 'list'}"}, *asked.say("kit-leave")]
    attributes = {"class": "work-form kit-form", "autocomplete": "off", "novalidate": ""}
    return ["form", attributes, *boxes, general, ["p", {"class": "kit-buttons"}, save, leave]]


def _box(
    asked: Asked, name: str, value: str, label: Message, help_code: str = "", kind: str = "text"
) -> Node:
    box_id = f"kit-{name.replace('_', '-')}"
    described = f"{box_id}-error" + (f" {box_id}-help" if help_code else "")
    attributes = {"type": kind, "id": box_id, "name": name, "value": value, "aria-describedby": described}
    attributes |= {"autocapitalize": "off", "spellcheck": "false", "maxlength": "200"}
    return [
        "div",
        {"class": "field"},
        ["label", {"for": box_id}, *asked.write(label)],
        ["div", {"class": "field-row"}, ["input", attributes]],
        *_under(asked, name, box_id, help_code),
    ]


def _under(asked: Asked, name: str, box_id: str, help_code: str) -> list[Node]:
    error: Node = ["p", {"class": "error", "id": f"{box_id}-error", "data-error": name, "hidden": ""}]
    if not help_code:
        return [error]
    return [["p", {"class": "help", "id": f"{box_id}-help"}, *asked.say(help_code)], error]


def _help(asked: Asked, name: str) -> str:
    code = f"kit-help-{name}"
    return code if asked.writer.has(code) else ""


def _text_box(asked: Asked, name: str, values: Mapping[str, str], *, needed: bool = False) -> Node:
    label = message("kit-needed-field" if needed else "kit-field", field=message(f"kit-field-{name}"))
    return _box(asked, name, values.get(name, ""), label, _help(asked, name))


def _select(
    asked: Asked,
    name: str,
    values: Mapping[str, str],
    options: Sequence[tuple[str, Fact]],
    *,
    needed: bool = False,
) -> Node:
    box_id = f"kit-{name.replace('_', '-')}"
    chosen = values.get(name, "")
    label = message("kit-needed-field" if needed else "kit-field", field=message(f"kit-field-{name}"))
    empty: Node = ["option", {"value": ""}, *asked.say("kit-choose" if needed else "kit-not-said")]
    made: list[Node] = [
        [
            "option",
            {"value": value, **({"selected": ""} if value == chosen else {})},
            asked.writer.plain(words),
        ]
        for value, words in options
    ]
    help_code = _help(asked, name)
    described = f"{box_id}-error" + (f" {box_id}-help" if help_code else "")
    return [
        "div",
        {"class": "field"},
        ["label", {"for": box_id}, *asked.write(label)],
        ["select", {"id": box_id, "name": name, "aria-describedby": described}, empty, *made],
        *_under(asked, name, box_id, help_code),
    ]


def _photo_box(asked: Asked, photo: str) -> Node:
    return [
        "div",
        {"class": "field"},
        ["label", {"for": "kit-photo"}, *asked.say("kit-field", field=message("kit-field-photo"))],
        [
            "input",
            {"type": "file", "id": "kit-photo", "accept": "image/*", "aria-describedby": "kit-photo-help"},
        ],
        ["input", {"type": "hidden", "name": "photo", "value": photo}],
        *_under(asked, "photo", "kit-photo", "kit-help-photo"),
    ]


def _out_boxes(asked: Asked) -> list[Node]:
    return [
        ["p", {}, *asked.say("kit-out-is-final")],
        *(_text_box(asked, name, {}) for name in ("out_why", "out_on", "out_by")),
    ]


def _look_form(asked: Asked) -> dict[str, Any]:
    """The form of a look that is written down by hand."""
    part = asked.part
    found = [(one, message(f"kit-found-{one}")) for one in ("ok", "stop", "unknown")]
    readings = [
        _box(
            asked,
            f"reading_{measure}",
            "",
            message("kit-reading-of", measure=message(f"kit-measure-{measure}")),
        )
        for measure in MEASURED.get(part.kind, ())
    ]
    boxes: list[Node] = [
        ["p", {}, *asked.say("kit-look-help")],
        _text_box(asked, "on", {"on": "today"}, needed=True),
        _text_box(asked, "by", {}, needed=True),
        _select(asked, "found", {}, found, needed=True),
        *readings,
        _text_box(asked, "note", {}),
    ]
    title = asked.writer.text("kit-look-title", number=part.number)
    return {"title": title, "nodes": [_form_of(asked, boxes, "kit-save", f"part={part.id}")]}


def _pick(asked: Asked) -> dict[str, Any]:
    """The parts of the kit that fit a row of a worksheet, those of the kind that the row names first: each a button that
    carries what it puts into the boxes of the row. A part out of use is none of them.
    """
    name, chosen = asked.data["worksheet"], asked.data.get("chosen", "")
    words = asked.data.get("find", "").casefold().split()
    kinds = kinds_taken(name)
    fit = [one for one in asked.data["parts"] if one["kind"] in kinds and _matches(asked, one, words)]
    out = sum(one["out"] is not None for one in fit)
    usable = sorted((one for one in fit if one["out"] is None), key=lambda one: kinds[one["kind"]] != chosen)
    nodes: list[Node] = []
    if not usable:
        nodes.append(["p", {}, *asked.say("kit-none-to-take")])
    rows = [_pick_row(asked, name, state_of(part_of(one))) for one in usable[:_MOST_PICKED]]
    nodes.append(["ul", {"class": "kit-list kit-pick"}, *rows])
    if len(usable) > _MOST_PICKED:
        nodes.append(["p", {}, *asked.say("kit-and-more", count=len(usable) - _MOST_PICKED)])
    if out:
        nodes.append(["p", {"class": "help"}, *asked.say("kit-out-not-taken", count=out)])
    if not usable:
        link = {"class": "plain-button", "href": f"{asked.root}kit/index.html#add"}
        nodes.append(["p", {"class": "kit-buttons"}, ["a", link, *asked.say("kit-form-new")]])
    return {"nodes": nodes, "many": len(usable) > _MOST_UNSEARCHED}


_MOST_PICKED = 60
_MOST_UNSEARCHED = 8
"""With more parts than this a list has a box to search it."""


def _matches(asked: Asked, part: Mapping[str, Any], words: Sequence[str]) -> bool:
    """Whether each of the words stands in what a part is called."""
    if not words:
        return True
    kind = asked.writer.text(f"kit-kind-{part['kind']}")
    text = " ".join((kind, *(part[name] for name in _SEARCHED))).casefold()
    return all(word in text for word in words)


_SEARCHED = ("number", "name", "mark", "size", "other_marks", "tag")


def _pick_row(asked: Asked, name: str, state: State) -> Node:
    fields = json.dumps(boxes_for(name, state))
    button = {"type": "button", "data-kit-take": state.part.number, "data-fields": fields}
    return ["li", {}, ["button", {**button, "data-verdict": state.verdict}, *_line_of(asked, state)]]


def _choose(asked: Asked) -> dict[str, Any]:
    """The parts to which the answer of a judging sheet can be saved."""
    name = asked.data["worksheet"]
    fit = [part for part in asked.parts() if part.out is None and SHEETS.get(part.kind) == name]
    if not fit:
        link: Node = [
            "a",
            {"class": "plain-button", "href": f"{asked.root}kit/index.html#add"},
            *asked.say("kit-form-new"),
        ]
        return {"nodes": [["p", {}, *asked.say("kit-none-fits")], ["p", {"class": "kit-buttons"}, link]]}
    options: list[tuple[str, Fact]] = [
        (part.id, message("kit-part-title", number=part.number, what=called(part))) for part in fit
    ]
    save: Node = ["button", {"type": "submit", "class": "plain-button kit-main"}, *asked.say("kit-save")]
    general: Node = ["p", {"class": "error", "data-error": "", "hidden": ""}]
    box = _select(asked, "save_to", {}, options, needed=True)
    return {
        "nodes": [["form", {"class": "work-form kit-form", "novalidate": ""}, box, general, ["p", {}, save]]]
    }


def _save_judged(asked: Asked) -> dict[str, Any]:
    """A part with the look that a judging sheet made; says where it is saved."""
    try:
        part = judged(asked.data["worksheet"], asked.data["inputs"], asked.part, asked.units)
    except NotSaved as refused:
        raise NotSaved({"": message("kit-look-lacks")}) from refused
    except BadInput as refused:
        raise NotSaved({"": message("kit-look-lacks")}) from refused
    link: Node = ["a", {"href": f"{asked.root}kit/index.html#part={part.id}"}, part.number]
    said = "kit-saved-out" if part.out is not None else "kit-saved-to"
    return {**_kept(part), "nodes": [["p", {"class": "kit-note"}, *asked.say(said), " ", link]]}


def _out_form(asked: Asked) -> dict[str, Any]:
    part = asked.part
    title = asked.writer.text("kit-out-title", number=part.number)
    return {"title": title, "nodes": [_form_of(asked, _out_boxes(asked), "kit-take-out", f"part={part.id}")]}


# ------------------------------------------------------------------------------------------ saving


def _kept(part: Part) -> dict[str, Any]:
    """A part as the device keeps it, with what its list is sorted by."""
    return {"part": part.to_data(), "order": state_of(part).order}


def _save(asked: Asked) -> dict[str, Any]:
    fields = asked.data["fields"]
    taken = bool(asked.data.get("taken"))
    edition = asked.data["edition"]
    return _kept(edited(fields, asked.before, asked.data["id"], edition, asked.units, number_taken=taken))


def _save_look(asked: Asked) -> dict[str, Any]:
    return _kept(looked_at(asked.data["fields"], asked.part, asked.units))


def _save_out(asked: Asked) -> dict[str, Any]:
    return _kept(taken_out(asked.data["fields"], asked.part))


def _orders(asked: Asked) -> dict[str, Any]:
    """What the list is sorted by, reckoned anew: another edition may have other intervals."""
    return {"orders": {part.id: state_of(part).order for part in asked.parts()}}


# ------------------------------------------------------------------------------------------ files


def _export(asked: Asked) -> dict[str, Any]:
    parts = asked.parts()
    if asked.data["how"] == "ics":
        return {"text": to_calendar(_entries(asked, parts), inputs.today()), "type": "text/calendar"}
    if asked.data["how"] == "csv":
        return {"text": to_csv(parts), "type": "text/csv"}
    return {"text": to_json(parts, asked.data["edition"], asked.data["tables"]), "type": "application/json"}


def _entries(asked: Asked, parts: Sequence[Part]) -> list[Entry]:
    """The next dates of the parts that are in use."""
    found = []
    for part in parts:
        next_on = due(part).on
        if part.out is None and next_on is not None:
            says = asked.writer.text("kit-entry", number=part.number, what=called(part))
            found.append(Entry(part.id, next_on, says))
    return found


def _read(asked: Asked) -> dict[str, Any]:
    """What a file would change; nothing is written yet."""
    kit = read_kit(asked.data["text"])
    found = difference(asked.parts(), kit.parts)
    head: Node = [
        "p",
        {"data-kit-difference": ""},
        *asked.say("kit-brings", added=len(found.added), changed=len(found.changed), same=found.same),
    ]
    nodes = [head, *_added(asked, found), *(_differs(asked, one) for one in found.changed)]
    if not found.added and not found.changed:
        nodes.append(["p", {"class": "kit-buttons"}, _to(asked, "list", "kit-back")])
        return {"title": asked.writer.text("kit-import-title"), "nodes": nodes}
    return {
        "title": asked.writer.text("kit-import-title"),
        "nodes": [_form_of(asked, nodes, "kit-take-in", "")],
    }


_MOST_NAMED = 50


def _added(asked: Asked, found: Difference) -> list[Node]:
    nodes: list[Node] = []
    if found.added:
        named: list[Node] = [
            ["li", {}, ["b", {}, part.number], " ", *asked.write(called(part))]
            for part in found.added[:_MOST_NAMED]
        ]
        more = len(found.added) - _MOST_NAMED
        if more > 0:
            named.append(["li", {}, *asked.say("kit-and-more", count=more)])
        nodes += [_head(asked, "kit-added"), ["ul", {}, *named]]
    if found.numbers_twice:
        twice = ", ".join(found.numbers_twice[:_MOST_NAMED])
        nodes.append(["p", {"class": "kit-note"}, *asked.say("kit-numbers-twice", numbers=twice)])
    return nodes


def _differs(asked: Asked, one: Changed) -> Node:
    box_id = f"kit-take-{one.here.id}"
    rows: list[Node] = [
        [
            "tr",
            {},
            ["th", {"scope": "row"}, *_field_name(asked, field.name)],
            ["td", {}, *_shown(asked, field.name, field.here)],
            ["td", {}, *_shown(asked, field.name, field.there)],
        ]
        for field in one.fields
    ]
    notes: list[Node] = (
        [["li", {}, *asked.say("kit-new-looks", count=one.new_looks)]] if one.new_looks > 0 else []
    )
    notes += [["li", {}, *asked.say("kit-new-photo")]] if one.photo else []
    notes += [["li", {}, *asked.say("kit-goes-out")]] if one.goes_out else []
    table: list[Node] = (
        [["table", {"class": "results"}, ["thead", {}, _heads(asked)], ["tbody", {}, *rows]]] if rows else []
    )
    tick: Node = ["input", {"type": "checkbox", "id": box_id, "name": one.here.id, "value": "yes"}]
    choice: Node = ["p", {"class": "kit-note"}, *asked.say("kit-other-kind")]
    if one.can_be_taken:
        choice = [
            "label",
            {"class": "tick", "for": box_id},
            tick,
            ["span", {}, *asked.say("kit-take-theirs")],
        ]
    return [
        "section",
        {"class": "kit-differs"},
        ["h2", {}, one.here.number, " ", *asked.write(called(one.here))],
        *table,
        *([["ul", {}, *notes]] if notes else []),
        choice,
    ]


def _heads(asked: Asked) -> Node:
    return [
        "tr",
        {},
        *(
            ["th", {"scope": "col"}, *asked.say(code)]
            for code in ("kit-head-field", "kit-head-here", "kit-head-there")
        ),
    ]


def _field_name(asked: Asked, name: str) -> list[Node]:
    if name.startswith("new_"):
        measure = message(f"kit-measure-{name.removeprefix('new_')}")
        return asked.say("kit-new-size", measure=measure)
    return asked.say(f"kit-field-{name}")


def _shown(asked: Asked, name: str, value: str) -> list[Node]:
    if not value:
        return asked.say("kit-nothing")
    if name == "kind":
        return asked.say(f"kit-kind-{value}")
    if name == "condition":
        return asked.write(_condition(value))
    if name == "bought":
        return asked.say(f"kit-bought-{value}")
    return asked.write(_value(name, value))


def _take(asked: Asked) -> dict[str, Any]:
    """The parts to write: what the kit lacks, and of those that differ the ones that the reader ticked."""
    found = difference(asked.parts(), read_kit(asked.data["text"]).parts)
    wanted = set(asked.data["take"])
    taken = [
        *found.added,
        *(one.merged for one in found.changed if one.can_be_taken and one.here.id in wanted),
    ]
    return {
        "kept": [_kept(part if part.seen.rating else noted(part, asked.data["edition"])) for part in taken]
    }


_ANSWERS: Mapping[str, Callable[[Asked], dict[str, Any]]] = {
    "list": _list,
    "part": _part,
    "form": _form,
    "look-form": _look_form,
    "out-form": _out_form,
    "save": _save,
    "save-look": _save_look,
    "save-out": _save_out,
    "choose": _choose,
    "pick": _pick,
    "kinds": _kinds,
    "save-judged": _save_judged,
    "orders": _orders,
    "export": _export,
    "read": _read,
    "take": _take,
}

__all__ = ["SHEETS", "called", "kit_view"]
