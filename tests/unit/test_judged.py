"""A judging sheet's answer as a look at a part of the kit, what a part gives to other worksheets, its dates and its graph."""

from __future__ import annotations

import datetime
import re
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from build_scripts.kit_view import SHEETS, kit_view
from calc import inputs, judged
from calc.answering import answer, worksheet
from calc.figures.wear import WearShape, wear_figure
from calc.inputs import BadInput
from calc.lifting.own_part import LAST_LOOKS, NAMES
from calc.records.kit.calendar import Entry, to_calendar
from calc.records.kit.edit import NotSaved
from calc.records.kit.part import Out, Part
from calc.records.kit.schema import TIE_DOWN_KINDS
from calc.records.kit.state import state_of
from calc.trees import markup
from calc.words.catalogue import catalogue
from calc.words.writer import Writer
from tests.unit.test_kit import GOOD, TODAY, look, part, parts


@pytest.fixture(autouse=True)
def fixed_day(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(inputs, "today", lambda: TODAY)


@pytest.mark.parametrize("name", sorted(set(SHEETS.values())))
def test_the_example_of_each_judging_sheet_can_be_saved(name: str) -> None:
    kind = next(kind for kind, sheet in SHEETS.items() if sheet == name)
    saved = judged.judged(name, worksheet(name).example, part(kind), "us")
    (one,) = saved.looks
    assert (one.on, one.sheet) == (TODAY.isoformat(), name)
    assert one.found == answer(name, worksheet(name).example)["verdict"]
    assert saved.out is None


def test_a_hook_keeps_its_readings_and_its_sizes_when_new() -> None:
    saved = judged.judged(
        "hook-check", worksheet("hook-check").example, part("hook", new={"throat": "1.15 in"}), "us"
    )
    assert saved.looks[0].readings["throat"] == "1.24 in"
    assert (saved.new["throat"], saved.new["section"]) == ("1.15 in", "0.92 in")


@pytest.mark.parametrize(
    ("name", "kind", "box"),
    [
        ("hook-check", "hook", "altered"),
        ("shackle-check", "shackle", "altered"),
        ("chain-check", "chain-sling", "welds"),
        ("chain-check", "chain-sling", "heat"),
        ("chain-check", "chain-sling", "homemade_links"),
        ("strap-check", "strap", "altered"),
        ("binder-check", "binder", "altered"),
    ],
)
def test_a_part_that_was_found_altered_is_out_of_use_for_good(name: str, kind: str, box: str) -> None:
    saved = judged.judged(name, {**worksheet(name).example, box: "yes"}, part(kind), "us")
    assert saved.looks[0].found == "stop"
    assert saved.out is not None
    assert state_of(saved).verdict == "stop"


def test_criteria_that_take_a_part_out_are_criteria_of_the_sheets() -> None:
    known = {key for name, scope in catalogue("en").scopes.items() for key in scope if "-check" in name}
    assert [one for one in judged.ALTERED_CRITERIA if f"criterion-{one}" not in known] == []


def test_a_look_without_a_day_or_a_name_or_with_a_bad_box_is_not_saved() -> None:
    example = dict(worksheet("hook-check").example)
    for lacking in ("inspected_on", "inspected_by"):
        with pytest.raises(NotSaved):
            judged.judged("hook-check", {**example, lacking: ""}, part("hook"), "us")
    with pytest.raises(BadInput):
        judged.judged("hook-check", {**example, "throat_now": "wide"}, part("hook"), "us")


@settings(max_examples=150)
@given(parts(), st.sampled_from(("", "today", "old")))
def test_no_overdue_or_unlooked_part_is_handed_over_as_good(one: Part, looked: str) -> None:
    """A law: with what such a part hands over, no worksheet passes it until its reader says himself that it is good."""
    if looked:
        one = replace(one, looks=(look(TODAY.isoformat() if looked == "today" else "2001-02-03"),))
    state = state_of(one)
    handed = judged.handed_over(state)
    if not state.usable:
        assert handed == {}
    for name, fields in handed.items():
        assert name == ("tie-down" if one.kind in TIE_DOWN_KINDS else "load-path")
        in_date = state.due.on is not None and not state.due.overdue
        assert any(box.endswith(".condition") for box in fields) is in_date


def handed(one: Part) -> dict[str, Any]:
    fields = judged.handed_over(state_of(one))["load-path"]
    row = {box.rpartition(".")[2]: value for box, value in fields.items()}
    return answer("load-path", {"load": "1,000 lb", "use": "plain", "items": [row]})


def test_a_part_in_date_is_rated_with_its_number_and_last_inspection_in_the_answer() -> None:
    record = handed(part(**GOOD))
    assert record["verdict"] == "ok"
    assert "P-1, inspected 2026-11-20" in record["headline"]
    assert handed(part(**{**GOOD, "looks": ()}))["verdict"] == "unknown"
    assert handed(part(**{**GOOD, "looks": (look("2020-01-01"),)}))["verdict"] == "unknown"
    assert set(
        judged.handed_over(state_of(part(**{**GOOD, "kind": "tie-down-chain", "mark": "70"})))["tie-down"]
    ) == {f"tie_downs[+].{name}" for name in ("kind", "condition", "grade", "size", *NAMES)}
    binder = part("binder", rating="5,400 lb", looks=(look("2026-11-20"),))
    assert judged.handed_over(state_of(binder)) == {}
    assert judged.handed_over(state_of(replace(binder, kind="strap"))) != {}


@pytest.mark.parametrize(
    ("changes", "finding", "verdict"),
    [
        ({}, "passed", "ok"),
        ({"looks": ()}, "", "unknown"),
        ({"looks": (look("2026-11-20", "stop"),)}, "failed", "stop"),
        ({"looks": (look("2026-11-20", "unknown"),)}, "", "unknown"),
        ({"condition": "damaged"}, "failed", "stop"),
        ({"condition": "unmarked"}, "unmarked", "stop"),
        ({"condition": "bent", "out": Out("2026-11-21", "bent", "")}, "altered", "stop"),
        ({"out": Out("2026-11-21", "altered", "")}, "altered", "stop"),
        ({"out": Out("2026-11-21", "lost", "")}, "failed", "stop"),
    ],
)
def test_a_part_goes_to_its_tag(changes: Any, finding: str, verdict: str) -> None:
    one = part(**{**GOOD, "rating": "7,100 lb", **changes})
    given_to_tag = judged.on_tag(state_of(one))
    assert given_to_tag["finding"] == finding
    assert (given_to_tag["own_number"], given_to_tag["mark"], given_to_tag["rating"]) == (
        "P-1",
        "80",
        "7,100 lb",
    )
    record = answer("tag", {**given_to_tag, "size": "4x2"})
    assert record["verdict"] == verdict
    assert "work-out/tag.html#own_number=P-1" in str(asked("part", part=one.to_data())["nodes"])


LOOKS = {
    "passed": (look("2026-11-20"),),
    "careful": (look("2025-11-20", "stop"), look("2026-11-20")),
    "not-passed": (look("2026-11-01"), look("2026-11-20", "stop")),
    "never": (),
}


@pytest.mark.parametrize("last_look", LAST_LOOKS)
def test_what_a_worksheet_is_told_of_the_last_inspection(last_look: str) -> None:
    one = part(**{**GOOD, "looks": LOOKS[last_look]})
    told = judged.taken_from(state_of(one))
    assert (told["own_number"], told["last_look"]) == ("P-1", last_look)
    assert told["looked_on"] == (one.looked[0].on if one.looks else "")
    unfinished = replace(one, looks=(look("2026-11-20", "unknown"),))
    assert judged.taken_from(state_of(unfinished))["last_look"] == "not-passed"
    damaged = replace(one, condition="damaged")
    assert judged.taken_from(state_of(damaged))["last_look"] == "not-passed"


@pytest.mark.parametrize(
    ("name", "kind", "boxes"),
    [
        (
            "sling-legs",
            "chain-sling",
            {"leg_kind": "chain", "grade": "80", "size": "3/8 in", "leg_rating": ""},
        ),
        ("hanging-load", "chain-sling", {"leg_kind": "chain", "grade": "80", "chain_size": "3/8 in"}),
        ("hitch", "web-sling", {"sling_kind": "web-sling", "grade": "", "rating": ""}),
        ("load-path", "chain-sling", {"label": "P-1", "kind": "chain", "grade": "80", "size": "3/8 in"}),
        ("pull-trial", "crane-hook", {"kind": "other", "size": "3/8 in"}),
        ("tie-down", "strap", {"kind": "web", "grade": "", "limit": ""}),
    ],
)
def test_a_part_fills_the_boxes_of_the_worksheets_that_have_a_place_for_it(
    name: str, kind: str, boxes: dict[str, str]
) -> None:
    filled = judged.boxes_for(name, state_of(part(**{**GOOD, "kind": kind})))
    assert filled is not None
    assert {box: filled[box] for box in boxes} == boxes
    sheet = worksheet(name)
    rows = {"load-path": "items", "pull-trial": "items", "tie-down": "tie_downs"}.get(name)
    inputs_of = {one.name: one for one in sheet.inputs}
    known = {one.name for one in (inputs_of[rows].columns if rows else sheet.inputs)}
    assert set(filled) <= known
    assert filled["condition"] == ("" if kind in ("web-sling", "crane-hook", "strap") else "marked-good")


def test_a_part_fills_no_boxes_where_there_is_no_place_for_it() -> None:
    state = state_of(part(**{**GOOD, "kind": "binder"}))
    assert judged.boxes_for("tie-down", state) is None
    assert judged.boxes_for("lifting-lug", state) is None
    assert judged.kinds_taken("lifting-lug") == {}


@pytest.mark.parametrize(
    "changes", [{"looks": ()}, {"looks": (look("2020-01-01"),)}, {"looks": LOOKS["not-passed"]}]
)
def test_a_part_that_is_not_in_date_is_careful_at_best_also_when_the_reader_finds_it_good(
    changes: Any,
) -> None:
    filled = judged.boxes_for("sling-legs", state_of(part(**{**GOOD, **changes})))
    assert filled is not None
    assert filled["condition"] == ""
    asked_of = {"load": "1,000 lb", "legs": "2", "angle": "60", **filled, "condition": "marked-good"}
    record = answer("sling-legs", asked_of)
    assert record["verdict"] == ("unknown" if changes["looks"] == LOOKS["not-passed"] else "caution")
    assert "From your kit: P-1, " in record["headline"]
    assert answer("sling-legs", {**asked_of, **judged.taken_from(state_of(part(**GOOD)))})["verdict"] == "ok"


def test_a_row_is_offered_the_parts_that_fit_and_none_that_is_out_of_use() -> None:
    chain = part(**GOOD)
    shackle = part(**{**GOOD, "kind": "shackle", "mark": "A"}, id="11111111", number="S-4")
    out = part(**GOOD, id="22222222", number="C-9").taken_out(Out("2026-01-01", "worn", ""))
    strap = part("strap", id="33333333", number="T-1")
    kit = [one.to_data() for one in (chain, shackle, out, strap)]

    def offered(**data: Any) -> list[str]:
        made = asked("pick", worksheet="load-path", parts=kit, **data)
        return re.findall(r"'data-kit-take': '([^']+)'", str(made["nodes"]))

    assert offered() == ["P-1", "S-4"]
    assert offered(chosen="shackle") == ["S-4", "P-1"]
    assert offered(find="SHACK 3/8") == ["S-4"]
    assert offered(find="nothing like it") == []
    assert "1 more part is out of use" in str(asked("pick", worksheet="load-path", parts=kit)["nodes"])
    none = asked("pick", worksheet="hitch", parts=[strap.to_data()])
    assert "kit/index.html#add" in str(none["nodes"])
    many = [replace(chain, id=f"{n:08}").to_data() for n in range(61)]
    made = asked("pick", worksheet="sling-legs", parts=many)
    assert made["many"]
    assert "'and ', '1', ' more'" in str(made["nodes"])
    assert asked("kinds")["kinds"]["hook"] == "Sling hook"
    assert "' parts are like that.'" in str(asked("list", parts=kit[:2], count=4, due=0, found=2)["nodes"])


def test_a_calendar_folds_long_lines_and_parts_no_letter() -> None:
    text = to_calendar([Entry("ab", datetime.date(2027, 2, 1), "ü" * 90 + "\n, \\")], TODAY)
    assert text.endswith("END:VCALENDAR\r\n")
    lines = text.split("\r\n")
    assert max(len(line.encode()) for line in lines) <= 75
    assert "ü" * 90 + "\\n\\, \\\\" in text.replace("\r\n ", "")


WRITER = Writer("us", "en", ("page/kit",))


@pytest.mark.parametrize("latest", [None, datetime.date(2029, 1, 1)])
@pytest.mark.parametrize("limit", [None, 0.03])
def test_the_graph_of_wear_shows_readings_limit_and_days(
    latest: datetime.date | None, limit: float | None
) -> None:
    readings = [(datetime.date(2025, 1, 1), 0.028), (datetime.date(2026, 1, 1), 0.029)]
    earliest = latest and datetime.date(2027, 1, 1)
    drawn = wear_figure(WearShape(TODAY, readings, limit, 0.0275, earliest, latest), "caption", WRITER)
    svg = markup(drawn.drawing)
    assert svg.count("<circle") == 2 + (2 if limit and latest else 0)
    assert ("Limit" in svg) is (limit is not None)


def asked(kit: str, **data: Any) -> dict[str, Any]:
    return kit_view({"kit": kit, "edition": "2026.1", "tables": "", "units": "us", "root": "../", **data})


def test_every_view_of_every_kind_of_part_can_be_made() -> None:
    for kind in ("hook", "chain-sling", "strap", "other"):
        one = part(**{**GOOD, "kind": kind, "new": {"throat": "1.16 in"}}, rating="")
        sizes = ("1.160 in", "1.170 in", "1.181 in", "1.190 in")
        one = replace(one, looks=tuple(look(f"202{n}-03-01", throat=size) for n, size in enumerate(sizes, 3)))
        for view in ("part", "form", "look-form", "out-form"):
            made = asked(view, part=one.to_data())
            assert made["ok"]
            assert made["nodes"]
        assert asked("list", parts=[one.to_data()], count=1, due=1)["nodes"]
    calendar = asked("export", how="ics", parts=[part(**GOOD).to_data(), part("hook").to_data()])["text"]
    assert calendar.count("BEGIN:VEVENT") == 1


def test_a_part_that_only_failed_was_not_never_inspected() -> None:
    one = part("hook")
    for looks, said in (
        ((), "Never inspected"),
        ((look("2026-03-01", found="stop"),), "Passed no inspection yet"),
    ):
        made = asked("list", parts=[replace(one, looks=looks).to_data()], count=1, due=1)
        assert said in str(made["nodes"])


@pytest.mark.parametrize(
    ("sizes", "graphs", "says"),
    [
        (("1.16 in",), 0, "2"),
        (("1.16 in", "1.17 in"), 1, "One more reading"),
        (("1.16 in", "1.17 in", "1.18 in"), 1, ""),
    ],
)
def test_a_single_reading_draws_no_graph_and_the_page_says_what_is_missing(
    sizes: tuple[str, ...], graphs: int, says: str
) -> None:
    looks = tuple(look(f"202{n}-03-01", throat=size) for n, size in enumerate(sizes, 3))
    nodes = str(
        asked("part", part=replace(part("hook"), looks=looks, new={"throat": "1.15 in"}).to_data())["nodes"]
    )
    assert nodes.count("'figure'") == graphs
    assert ("data-kit-lacks" in nodes) == (says != "")
    assert says in nodes


def test_the_answer_of_a_sheet_is_saved_to_a_part_that_it_fits() -> None:
    one = part("hook")
    chosen = asked(
        "choose", worksheet="hook-check", parts=[one.to_data(), part("shackle", id="fedcba98").to_data()]
    )
    assert str(chosen["nodes"]).count("'option'") == 2
    assert "kit/index.html#add" in str(
        asked("choose", worksheet="anchor-check", parts=[one.to_data()])["nodes"]
    )
    example = worksheet("hook-check").example
    assert asked("save-judged", worksheet="hook-check", inputs=example, part=one.to_data())["part"]["looks"]
    out = asked(
        "save-judged", worksheet="hook-check", inputs={**example, "altered": "yes"}, part=one.to_data()
    )
    assert out["part"]["out"]["why"] == "altered"
    for bad in ({"inspected_by": ""}, {"throat_now": "wide"}):
        assert not asked(
            "save-judged", worksheet="hook-check", inputs={**example, **bad}, part=one.to_data()
        )["ok"]
