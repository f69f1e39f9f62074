"""The page of a job is a plan only where every answer holds and all speak of one job."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import replace
from typing import Any
from urllib.parse import urlencode

import pytest

from build_scripts.answer_view import view_json
from build_scripts.job_view import BEFORE, PARTS_ON_FIRST
from calc import inputs
from calc.answering import worksheet
from calc.records.codes.numbers import bring_back, fields, nested
from calc.records.jobs.plan import Plan, Typed, own_numbers, plan
from calc.records.jobs.slots import JOBS, SHOWN, job_of, sheets_of
from calc.records.kit.part import Out, part_of
from calc.words.writer import UnitSystem
from tests.unit.test_codes import example_of, text_in
from tests.unit.test_kit import look, part

WEIGHT: dict[str, Any] = {
    "parts": [
        {
            "shape": "lump",
            "label": "engine",
            "weight": "2,000 lb",
            "count": "1",
            "minus": "no",
            "tolerance": "0 %",
            "at": ["0 in", "0 in", "20 in"],
        },
    ]
}
LEGS: dict[str, Any] = {
    "load": "2,000 lb",
    "legs": "2",
    "known_by": "angle",
    "angle": "60 deg",
    "leg_kind": "chain",
    "grade": "80",
    "size": "3/8",
    "condition": "marked-good",
}
PARTS: dict[str, Any] = {
    "load": "2,000 lb",
    "use": "plain",
    "items": [
        {"label": "hoist", "kind": "hoist", "condition": "marked-good", "rating": "3 short tons"},
        {
            "label": "S-5",
            "kind": "shackle",
            "condition": "marked-good",
            "rating": "2 short tons",
            "legs": "2",
            "angle": "60 deg",
        },
    ],
}
LIFT: dict[str, Any] = {"load-weight": WEIGHT, "sling-legs": LEGS, "load-path": PARTS}


def made(job: str, typed: dict[str, Any], units: UnitSystem = "us") -> Plan:
    return plan(job, {name: Typed(inputs, units) for name, inputs in typed.items()})


def codes(job: str, typed: dict[str, Any]) -> set[str]:
    return {one.code for one in made(job, typed).reasons}


def viewed(job: str, typed: dict[str, Any], units: str = "us", kit: Sequence[Any] = ()) -> Any:
    told = {name: urlencode([*fields(inputs), ("units", units)]) for name, inputs in typed.items()}
    request = {"job": {"name": job, "typed": told, "made_by": "1a2b3c4d", "kit": kit}, "root": "../"}
    return json.loads(view_json(json.dumps(request)))


def words_of(answer: Any) -> str:
    return " ".join(text_in(node) for node in answer["nodes"])


def code_in(node: Any) -> str:
    """The text that brings the numbers back, in a tree."""
    if isinstance(node, str):
        return ""
    if "data-code-text" in node[1]:
        return text_in(node)
    return "".join(code_in(one) for one in node[2:])


def test_a_lift_that_agrees_is_a_plan() -> None:
    lift = made("lift", LIFT)
    assert lift.is_plan, lift.reasons
    assert [one.sheet.name for one in lift.worked] == ["load-weight", "sling-legs", "load-path"]


@pytest.mark.parametrize("job", JOBS)
def test_without_what_it_needs_it_is_no_plan(job: str) -> None:
    assert not made(job, {}).is_plan
    needed = [slot for slot in JOBS[job] if slot.needed]
    assert len([one for one in made(job, {}).reasons if one.weight == "unknown"]) == len(needed)


@pytest.mark.parametrize("name", LIFT)
def test_each_part_of_a_lift_is_needed(name: str) -> None:
    assert not made("lift", {other: inputs for other, inputs in LIFT.items() if other != name}).is_plan


def test_parts_alone_are_no_plan() -> None:
    assert codes("lift", {"load-path": PARTS}) == {"sheet-within", "nothing-of-weight", "nothing-of-rigging"}


def with_load(typed: dict[str, Any], load: str) -> dict[str, Any]:
    return {**typed, "load": load}


@pytest.mark.parametrize(
    ("changed", "code"),
    [
        ({"sling-legs": with_load(LEGS, "1,980 lb")}, "rigging-too-light"),
        ({"sling-legs": with_load(LEGS, "3,100 lb"), "load-path": with_load(PARTS, "3,100 lb")}, "rigging-of-another-load"),
        ({"load-path": with_load(PARTS, "1,980 lb")}, "parts-too-light"),
        ({"load-path": with_load(PARTS, "3,100 lb")}, "parts-of-another-load"),
        ({"load-path": {**PARTS, "items": PARTS["items"][:1]}}, "legs-not-listed"),
        ({"sling-legs": {**LEGS, "angle": "45 deg"}}, "legs-pull-harder"),
        ({"sling-legs": {**LEGS, "condition": "welded"}}, "sheet-stop"),
        ({"sling-legs": {**LEGS, "condition": ""}}, "sheet-unknown"),
        ({"sling-legs": {**LEGS, "load": "keel"}}, "sheet-refused"),
    ],
)  # fmt: skip
def test_what_does_not_hold_or_agree_makes_it_no_plan(changed: dict[str, Any], code: str) -> None:
    typed = {**LIFT, **changed}
    lift = made("lift", typed)
    assert code in {one.code for one in lift.reasons}
    assert not lift.is_plan
    answer = viewed("lift", typed)
    assert not answer["plan"]
    assert "Not a plan" in words_of(answer)
    assert "May carry here" not in words_of(answer)  # no number that could be used


def test_a_weight_without_its_balance_is_careful_at_best() -> None:
    unplaced = {"parts": [{key: value for key, value in WEIGHT["parts"][0].items() if key != "at"}]}
    lift = made("lift", {**LIFT, "load-weight": unplaced})
    assert "balance-not-known" in {one.code for one in lift.reasons}
    assert lift.verdict == "caution"
    assert "Lift it one inch" in words_of(viewed("lift", {**LIFT, "load-weight": unplaced}))


def test_one_leg_needs_no_legs_in_the_list() -> None:
    alone = {**LEGS, "legs": "1", "angle": "90 deg"}
    parts = {**PARTS, "items": PARTS["items"][:1]}
    assert "legs-not-listed" not in codes("lift", {**LIFT, "sling-legs": alone, "load-path": parts})


def test_unlike_legs_are_held_against_the_list_too() -> None:
    hung = example_of("hanging-load")
    weight = {"parts": [{**WEIGHT["parts"][0], "weight": "1,450 lb"}]}
    low = {**PARTS, "load": "1,450 lb", "items": [{**PARTS["items"][1], "legs": "3", "angle": "80 deg"}]}
    typed = {"load-weight": weight, "hanging-load": hung, "load-path": {**low, "load_kind": "flexible"}}
    assert "legs-pull-harder" in codes("lift", typed)
    rolls = {**hung, "centre": ["0 in", "0 in", "300 in"]}
    assert not made("lift", {**typed, "hanging-load": rolls}).is_plan


def test_two_orders_of_units_are_not_read_together() -> None:
    typed = {name: Typed(inputs, "si" if name == "load-path" else "us") for name, inputs in LIFT.items()}
    mixed = plan("lift", typed)
    assert [one.code for one in mixed.reasons] == ["units-differ"]
    assert not mixed.is_plan


def test_a_log_that_passed_the_highest_force_makes_the_pull_no_plan() -> None:
    trial, log = example_of("pull-trial"), example_of("trial-log")
    assert made("pull", {"pull-trial": trial}).is_plan
    assert made("pull", {"pull-trial": trial, "trial-log": log}).is_plan
    weaker = {
        **trial,
        "items": [{**one, "rating": "2,000 lb"} if one.get("rating") else one for one in trial["items"]],
    }
    weaker["target"] = "1,000 lb"
    assert "pulled-too-hard" in codes("pull", {"pull-trial": weaker, "trial-log": log})
    blocked = {**trial, "items": [{**one, "condition": "welded"} for one in trial["items"]]}
    assert not made("pull", {"pull-trial": blocked, "trial-log": log}).is_plan


def test_the_lists_of_a_job_name_what_there_is() -> None:
    assert set(BEFORE) == set(JOBS)
    for job in JOBS:
        for name in sheets_of(job):
            assert job_of(name) == job
            assert {one.name for one in worksheet(name).results} >= set(SHOWN[name])
    assert job_of("tag") == ""


# ---- the page


@pytest.mark.parametrize(
    ("job", "typed"),
    [
        ("lift", LIFT),
        ("pull", {"pull-trial": None}),
        ("pull", {"pull-trial": None, "trial-log": None}),
        ("load", {"tie-down": None}),
    ],
)
def test_a_plan_has_its_parts_checks_lines_and_the_text_that_brings_it_back(
    job: str, typed: dict[str, Any]
) -> None:
    typed = {name: inputs or example_of(name) for name, inputs in typed.items()}
    answer = viewed(job, typed)
    said = words_of(answer)
    assert answer["plan"]
    for wanted in ("Done by", "Checked by", "Date", "Figures from", "Keep in mind", "Worked out from"):
        assert wanted in said, wanted
    assert ("ReadingsStage" in said.replace(" ", "")) == (job == "pull" and "trial-log" not in typed)
    text = code_in(["div", {}, *answer["nodes"]])
    brought = bring_back(text)
    assert [one.sheet for one in brought.sheets] == list(typed)
    back = json.loads(view_json(json.dumps({"back": text, "root": "../"})))
    if len(typed) > 1:
        assert back["address"] == f"../about/one-page-for-the-job.html#{job}"
    assert set(back["kept"]) == set(typed)


def test_the_table_of_parts_has_number_mark_rating_and_pull() -> None:
    said = words_of(viewed("lift", LIFT))
    for wanted in ("S-5", "Shackle", "4,000 lb", "1,160 lb", "____"):
        assert wanted in said, wanted
    assert "kg" in words_of(viewed("lift", LIFT, "si"))


def test_nothing_typed_shows_the_worksheets_in_their_order() -> None:
    answer = viewed("lift", {})
    assert not answer["plan"]
    assert "Fill them in this order" in words_of(answer)
    assert viewed("lift", {"tag": {"own_number": "H-2"}}) == answer  # of another job


def test_fields_are_put_together_as_they_were_taken_apart() -> None:
    rows = [{"kind": "hook", "at": ["1 in", "", "2 in"]}, {"kind": "ring"}]
    inputs = {"load": "2 t", "centre": ["1 in", "", "3 in"], "items": rows}
    assert nested(fields(inputs)) == inputs
    assert nested([("items[1].kind", "ring")]) == {"items": [{}, {"kind": "ring"}]}
    assert nested([("not a path", "x"), ("", "x"), ("a[1000]", "x")]) == {}


# ---- which job, and the parts as they stand today


def named(typed: dict[str, Any], *names: str) -> dict[str, Any]:
    """The worksheets of a job, each with a name of it."""
    return {sheet: {**typed[sheet], "job": name} for sheet, name in zip(typed, names, strict=True)}


def test_worksheets_of_two_jobs_make_no_plan() -> None:
    """Both lifts weigh the same, so that their weights tell nothing."""
    assert (
        made("lift", named(LIFT, "Engine 4", "engine  4", "ENGINE 4")).verdict == made("lift", LIFT).verdict
    )
    mixed = named(LIFT, "Engine 4", "Engine 4", "Keel")
    assert "jobs-differ" in codes("lift", mixed)
    said = words_of(viewed("lift", mixed))
    assert "Not a plan" in said
    assert "Engine 4; Keel" in said


def test_a_worksheet_without_the_name_of_the_others_is_careful_at_best() -> None:
    some = named(LIFT, "Engine 4", "Engine 4", "")
    assert "job-not-named" in codes("lift", some)
    assert made("lift", some).verdict == "caution"


def test_the_name_of_a_job_stands_on_its_page_and_in_its_text() -> None:
    answer = viewed("lift", named(LIFT, "Engine 4", "Engine 4", "Engine 4"))
    said = words_of(answer)
    assert said.startswith("Lift sheetEngine 4")
    assert said.count("Engine 4") == 1  # not once more for each worksheet
    brought = bring_back(code_in(["div", {}, *answer["nodes"]]))
    assert {one.inputs["job"] for one in brought.sheets} == {"Engine 4"}


def test_every_worksheet_of_a_job_asks_what_the_job_is_called() -> None:
    for job in JOBS:
        for name in sheets_of(job):
            assert "job" in {one.name for one in worksheet(name).inputs}, name


OWN = {"own_number": "S-5", "last_look": "passed", "looked_on": "today", "look_due": ""}


@pytest.mark.parametrize("job", ["lift", "pull", "load"])
@pytest.mark.parametrize(
    ("more", "code"),
    [
        ({"out": Out("2026-11-20", "bent", "R. Ames")}, "own-part-now-stop"),
        ({"condition": "unmarked"}, "own-part-now-unknown"),
        ({"looks": ()}, "own-part-now-caution"),
        ({}, ""),
        ({"number": "S-6", "looks": ()}, ""),
    ],
)
def test_what_the_kit_says_today_counts_beside_what_a_worksheet_was_told(
    job: str, more: dict[str, Any], code: str
) -> None:
    """The part was taken out of use after the worksheet was filled in from the kit."""
    today = inputs.today().isoformat()
    good = part("shackle", number="s-5", mark="A", size="5/8 in", looks=(look(today),))
    kit = [replace(good, **more).to_data()]
    typed = {
        "lift": {**LIFT, "load-path": {**PARTS, "items": [{**one, **OWN} for one in PARTS["items"]]}},
        "pull": {"pull-trial": with_own(example_of("pull-trial"), "items")},
        "load": {"tie-down": with_own(example_of("tie-down"), "tie_downs")},
    }[job]
    without, answer = viewed(job, typed), viewed(job, typed, kit=kit)
    said = [
        one.code
        for one in plan(job, {n: Typed(g, "us") for n, g in typed.items()}, kit=[part_of(kit[0])]).reasons
    ]
    assert [one for one in said if one.startswith("own-part-now")] == ([code] if code else [])
    if code in ("own-part-now-stop", "own-part-now-unknown"):
        assert without["plan"]
        assert not answer["plan"]
        assert "s-5" in words_of(answer)
    else:
        assert answer["verdict"] == ("caution" if code else without["verdict"])


def with_own(given: dict[str, Any], rows: str) -> dict[str, Any]:
    return {**given, rows: [{**given[rows][0], **OWN}, *given[rows][1:]]}


def test_a_leg_of_the_kit_is_known_in_the_rigging_too() -> None:
    (one,) = plan("lift", {"sling-legs": Typed({**LEGS, **OWN}, "us")}).worked
    assert own_numbers(one) == {"s-5"}


def test_a_page_that_is_no_plan_says_which_part_of_it_said_so() -> None:
    trial, log = example_of("pull-trial"), example_of("trial-log")
    items = [{**one, "rating": "2,000 lb"} if one.get("rating") else one for one in trial["items"]]
    weaker = {**trial, "items": items, "target": "1,000 lb"}
    assert "What the log says: The log reached" in words_of(
        viewed("pull", {"pull-trial": weaker, "trial-log": log})
    )
    worn = {**log, "condition": "welded"}
    said = words_of(viewed("pull", {"pull-trial": trial, "trial-log": worn}))
    assert "What the log says: “" in said
    assert "The pull: “" not in said
    refused = words_of(viewed("lift", {**LIFT, "sling-legs": {**LEGS, "load": "keel"}}))
    assert "Rigging: “" in refused


# ---- many parts


@pytest.mark.parametrize(("count", "pages"), [(2, 1), (PARTS_ON_FIRST, 1), (PARTS_ON_FIRST + 1, 2), (40, 3)])
def test_many_parts_have_sheets_of_their_own_with_the_head_again(count: int, pages: int) -> None:
    hoist, shackle = PARTS["items"]
    items = [{**hoist, "label": f"hoist {place}"} for place in range(count - 1)]
    lift = {**named(LIFT, "Keel", "Keel", "Keel")}
    lift["load-path"] = {**lift["load-path"], "items": [*items, shackle]}
    answer = viewed("lift", lift)
    said = words_of(answer)
    assert answer["plan"]
    assert said.count("Lift sheetKeelPlan") == pages
    for page in range(1, pages + 1):
        assert f"Page {page} of {pages}." in said
    assert said.count("May carry here") == max(1, pages - 1)
    for place in range(count - 1):
        assert said.count(f"hoist {place}Hoist") == 1


def texts_in(node: Any) -> list[str]:
    """The texts that bring numbers back, in a tree."""
    if isinstance(node, str):
        return []
    if "data-code-text" in node[1]:
        return [text_in(node)]
    return [text for one in node[2:] for text in texts_in(one)]


def test_numbers_too_many_for_one_text_have_one_for_each_worksheet() -> None:
    hoist, shackle = PARTS["items"]
    items = [{**hoist, "label": f"hoist of the big shed, number {place}"} for place in range(34)]
    typed = {**LIFT, "load-path": {**PARTS, "items": [*items, shackle]}}
    answer = viewed("lift", typed)
    texts = texts_in(["div", {}, *answer["nodes"]])
    brought = [bring_back(text) for text in texts]
    assert [one.sheet for whole in brought for one in whole.sheets] == list(typed)
    assert "each worksheet has its own" in words_of(answer)
