"""The page of a job is a plan only where every answer holds and all speak of one job."""

from __future__ import annotations

import json
from typing import Any
from urllib.parse import urlencode

import pytest

from build_scripts.answer_view import view_json
from build_scripts.job_view import BEFORE
from calc.answering import worksheet
from calc.records.codes.numbers import bring_back, fields, nested
from calc.records.jobs.plan import Plan, Typed, plan
from calc.records.jobs.slots import JOBS, SHOWN, job_of, sheets_of
from calc.words.writer import UnitSystem
from tests.unit.test_codes import example_of, text_in

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


def viewed(job: str, typed: dict[str, Any], units: str = "us") -> Any:
    told = {name: urlencode([*fields(inputs), ("units", units)]) for name, inputs in typed.items()}
    request = {"job": {"name": job, "typed": told, "made_by": "1a2b3c4d"}, "root": "../"}
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
