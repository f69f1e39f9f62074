"""The large line of an inspection: what failed, else what is still to be looked at, else what is near its limit."""

from __future__ import annotations

from typing import Any

import pytest

from calc import answering

SHEETS = ("hook-check", "chain-check", "shackle-check", "sling-check")
NEEDED = {"chain-check": {"grade": "80", "size": "3/8", "use": "lift"}, "sling-check": {"kind": "web"}}


def asked(name: str, **inputs: str) -> dict[str, Any]:
    return answering.answer(name, inputs, "us")


def big(record: dict[str, Any]) -> str:
    assert record["big"]["key"] == "decides"
    return str(record["big"]["text"])


def example(name: str, **changed: str) -> dict[str, Any]:
    return asked(name, **{**answering.worksheet(name).example, **changed})


@pytest.mark.parametrize("name", SHEETS)
def test_nothing_looked_at_says_what_to_look_at(name: str) -> None:
    record = asked(name, **NEEDED.get(name, {}))
    assert record["verdict"] == "unknown"
    assert big(record).startswith("Look at ")
    assert "Still to look at: " in record["headline"]


def test_a_rope_sling_too() -> None:
    record = asked("sling-check", kind="wire-rope")
    assert big(record) == "Look at broken wires in a lay, broken wires in a strand and 11 more"


def test_one_box_left_empty_is_named() -> None:
    assert big(example("shackle-check", cracks="")) == "Look at any crack or nick"
    assert big(example("sling-check", tag_readable="", heat="")) == "Look at any heat mark and the tag"


def test_what_failed_is_louder_than_what_is_missing() -> None:
    record = example("shackle-check", cracks="yes", bent="")
    assert record["verdict"] == "stop"
    assert big(record) == "Out of service: crack, nick or damaged thread"


def test_many_faults_are_counted() -> None:
    said = big(example("chain-check", cracks="yes", heat="yes", stiff_links="yes", pits="yes"))
    assert said == "Out of service: crack, nick or gouge, heat color or burn and 2 more"


def test_a_use_that_no_looking_changes_is_named() -> None:
    assert big(example("chain-check", grade="70")) == "Out of service: chain of grade 70 may not lift"


def test_near_a_limit_is_named() -> None:
    """WAC 296-155 Table 12: 3/8 in is out under 0.342 in; 0.369 in has used up more than half of the wear."""
    assert big(example("chain-check")) == "Near its limit: wire worn thin"


def test_a_sound_part_says_how_many_were_looked_at() -> None:
    assert big(example("shackle-check")) == "All 10 looked at"
    assert "in all" not in big(example("sling-check")).lower()


def test_two_names_stand_together_and_more_are_counted() -> None:
    assert big(example("shackle-check", cracks="yes", bent="yes")) == (
        "Out of service: visibly bent or twisted and crack, nick or damaged thread"
    )
    three = example("shackle-check", cracks="yes", bent="yes", altered="yes")
    assert big(three) == "Out of service: visibly bent or twisted, crack, nick or damaged thread and 1 more"
