"""strap-check, binder-check and anchor-check: any damage is out, what was not looked at passes nothing, no size may stay."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from calc.inspecting.strap_check import ROADSIDE_CUT_IN
from tests.saying import one_reading

Raw = dict[str, Any]
SHEETS = ("strap-check", "binder-check", "anchor-check")
BAD: dict[str, dict[str, str]] = {
    "strap-check": {
        "label_readable": "no", "cut": "yes", "burned": "yes", "stitching": "yes", "knot": "yes", "ratchet_works": "no",
        "hooks_bent": "yes", "altered": "yes",
    },
    "binder-check": {
        "chain_marked": "no", "binder_marked": "no", "links_damaged": "yes", "worn": "yes", "knot": "yes",
        "hooks_bent": "yes", "handle_bent": "yes", "locks": "no", "altered": "yes",
    },
    "anchor-check": {
        "origin": "welded-on", "limit_known": "no", "bent": "yes", "loose": "yes", "deck_damaged": "yes", "one_each": "no",
        "edges_covered": "no", "protectors_worn": "yes",
    },
}  # fmt: skip
FAULTS = [(name, key, value) for name, faults in BAD.items() for key, value in faults.items()]


def ask(name: str, **changes: Any) -> Raw:
    return answer(name, {**worksheet(name).example, **changes}, "us")


def value(record: Raw, name: str) -> Any:
    return record["results"][name]["value"]


def said(record: Raw) -> str:
    return " ".join(str(one["text"]) for one in record["cautions"])


@pytest.mark.parametrize("name", SHEETS)
def test_sound_gear_shows_the_limit_of_its_label(name: str) -> None:
    record = ask(name)
    assert record["verdict"] == "ok"
    assert value(record, "limit_if_sound") == pytest.approx(
        {"strap-check": 3333, "binder-check": 5400}.get(name, 6600)
    )
    assert record["figure"]["svg"].startswith("<svg")
    assert "50 miles" in said(record)


@pytest.mark.parametrize(("name", "key", "bad"), FAULTS)
def test_any_fault_is_out(name: str, key: str, bad: str) -> None:
    record = ask(name, **{key: bad})
    assert record["verdict"] == "stop"
    assert record["big"]["text"].startswith(("Out of service: ", "Not fit: "))
    assert value(record, "limit_if_sound") is None
    assert value(record, "next_inspection") is None


@pytest.mark.parametrize(("name", "key", "_bad"), FAULTS)
def test_what_was_not_looked_at_passes_nothing(name: str, key: str, _bad: str) -> None:
    record = ask(name, **{key: ""})
    assert record["verdict"] == "unknown"
    assert value(record, "limit_if_sound") is None


@pytest.mark.parametrize("origin", ["welded-on", "rope-hook"])
def test_an_anchor_of_no_known_limit_is_out_whatever_else_is_good(origin: str) -> None:
    record = ask("anchor-check", origin=origin)
    assert record["verdict"] == "stop"
    assert value(record, "limit_if_sound") is None
    assert ("welded on has no limit" in said(record) or "somebody welded on" in said(record)) == (
        origin == "welded-on"
    )
    assert ask("anchor-check", origin="bolted")["verdict"] == "ok"


@pytest.mark.parametrize(
    ("width", "cut_in", "roadside"),
    [("2", 0.37, False), ("2", 0.376, True), ("1-3/4", 0.375, True), ("3", 0.62, False), ("3", 0.63, True),
     ("4", 0.74, False), ("4", 0.75, True), ("", 0.38, True), ("", 0.01, False)],
)  # fmt: skip
def test_a_cut_of_any_size_is_out_and_a_large_one_already_an_offence(
    width: str, cut_in: float, roadside: bool
) -> None:
    """The roadside list (recalled): 3/8 in on 1-3/4 and 2 in, 5/8 in on 3 in, 3/4 in on 4 in."""
    record = ask("strap-check", cut="yes", width=width, cut_size=f"{cut_in} in")
    assert record["verdict"] == "stop"
    assert ("already an offense" in said(record)) == roadside


def test_no_sheet_prints_a_size_of_damage_as_a_limit() -> None:
    for name in SHEETS:
        for row in ask(name)["results"]["criteria"]["rows"]:
            assert not any(character.isdigit() for character in row[1]), row
    text = str(ask("strap-check", cut="", cut_size="1/8 in"))
    assert not any(f"{size:g} in" in text for size in ROADSIDE_CUT_IN.values())


def test_a_cut_of_no_size_answers_nothing_by_itself() -> None:
    assert ask("strap-check", cut="", cut_size="0 in")["verdict"] == "unknown"
    assert ask("strap-check", cut="no", cut_size="0 in")["verdict"] == "ok"
    with pytest.raises(Refused, match="answer both alike"):
        ask("strap-check", cut="no", cut_size="1/8 in")


def test_without_a_tension_on_its_label_a_strap_is_not_for_over_the_top() -> None:
    assert "over the top" not in said(ask("strap-check"))
    for answered in ("no", ""):
        assert "over the top" in said(ask("strap-check", tension_on_label=answered))


def test_the_weaker_of_chain_and_binder_sets_the_limit() -> None:
    assert "binder holds less" in said(ask("binder-check"))
    strong = ask("binder-check", binder_limit="7,000 lb")
    assert "binder holds less" not in said(strong)
    assert value(strong, "limit_if_sound") == pytest.approx(6600)
    assert value(ask("binder-check", binder_limit=""), "limit_if_sound") is None
    assert (
        ask("binder-check", binder_limit="")["results"]["limit_if_sound"]["text"] == "not both limits given"
    )


@pytest.mark.parametrize(("kind", "flies"), [("lever", True), ("", True), ("ratchet", False)])
def test_a_lever_binder_can_fly(kind: str, flies: bool) -> None:
    record = ask("binder-check", kind=kind)
    assert ("fly" in said(record)) == flies
    assert "pipe or bar" in said(record)


@pytest.mark.parametrize("name", SHEETS)
def test_bad_input_is_refused(name: str) -> None:
    limit = "binder_limit" if name == "binder-check" else "limit"
    for typed in ("strong", "-3 lb", "3 m", "0 lb"):
        with pytest.raises(Refused):
            ask(name, **{limit: typed})


@given(limit=st.floats(1, 50_000), fault=st.sampled_from(FAULTS))
def test_no_limit_brings_damaged_gear_back(limit: float, fault: tuple[str, str, str]) -> None:
    name, key, bad = fault
    box = "chain_limit" if name == "binder-check" else "limit"
    most = min(limit, 15_000.0) if name == "strap-check" else limit
    record = ask(name, **{key: bad, box: f"{one_reading(most)} lb"})
    assert record["verdict"] == "stop"
    assert value(record, "limit_if_sound") is None


def test_an_inspection_is_due_after_a_year_at_the_latest() -> None:
    """VDI 2700 Part 3.1 and 49 CFR 396.17, both recalled: a year. Severe service: the quarter of WAC 296-155-55800."""
    for name in SHEETS:
        late = ask(name, inspected_on="2025-10-01")
        assert late["verdict"] == "unknown"
        assert value(ask(name, service="severe"), "next_inspection") != value(ask(name), "next_inspection")


@pytest.mark.parametrize(
    ("width", "within", "over"),
    [("2", "15,000 lb", "15,010 lb"), ("1-3/4", "13,100 lb", "13,200 lb"), (None, "30,000 lb", "30,100 lb")],
)
def test_a_strap_is_not_labelled_over_its_webbing(width: str | None, within: str, over: str) -> None:
    """33,330 lb on webbing of 2 in, a nought too many, was told as its limit."""
    raw = {name: value for name, value in worksheet("strap-check").example.items() if name != "width"}
    raw |= {"width": width} if width else {}
    assert answer("strap-check", {**raw, "limit": within})["ok"]
    with pytest.raises(Refused) as caught:
        answer("strap-check", {**raw, "limit": over})
    assert [one.input for one in caught.value.errors] == ["limit"]
