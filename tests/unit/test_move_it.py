"""move-it: pulls by hand, tackle, winch and post, what is overloaded, refusals, and that more is never better."""

from __future__ import annotations

import math
from typing import Any

import pytest

from calc.answering import Refused, answer, worksheet
from calc.hauling.moving import NOT_KNOWN, SURFACES
from calc.tables import table
from tests.asking import asked

LB = 4.4482216152605
EXAMPLE: dict[str, Any] = dict(worksheet("move-it").example)
ROLLING: dict[str, Any] = {**EXAMPLE, "way": "rollers", "level_pull": "90 lbf"}


def codes(given: dict[str, Any]) -> set[str]:
    return {reason.code for reason in asked("move-it", given, "us").reasons}


def without(given: dict[str, Any], *names: str) -> dict[str, Any]:
    return {name: value for name, value in given.items() if name not in names}


def test_the_slip_by_hand() -> None:
    found = asked("move-it", EXAMPLE, "us").results
    sine, cosine = math.sin(math.radians(6)), math.cos(math.radians(6))
    start = 1800 * (sine + 0.5 * cosine) * LB
    assert found["start_pull"] == pytest.approx(start)
    assert found["keep_pull"] == pytest.approx(1800 * (sine + 0.35 * cosine) * LB)
    assert found["hold_back"] == 0.0
    assert found["slides_at"] == pytest.approx(math.degrees(math.atan(0.21)))
    assert found["hauling_pull"] == pytest.approx(start * 1.3 / 3)
    assert found["anchor_pull"] == pytest.approx(start * (1 + 1.3 / 3))
    assert found["winch_has"] == pytest.approx(2000 * 2.75 / 3.75 * LB)
    assert found["winch_share"] == pytest.approx(found["hauling_pull"] / found["winch_has"])
    assert found["rating_share"] == pytest.approx(start * (1 + 1.3 / 3) / (3500 * LB))
    steep = asked("move-it", {**EXAMPLE, "slope": "25°"}, "us").results
    held = 1800 * (math.sin(math.radians(25)) - 0.21 * math.cos(math.radians(25))) * LB
    assert steep["hold_back"] == pytest.approx(held)
    assert steep["tail_pull"] == pytest.approx(held * math.exp(-0.15 * 4 * math.pi))


def test_rollers_hold_back_nothing() -> None:
    record = asked("move-it", ROLLING, "us")
    sine, cosine = math.sin(math.radians(6)), math.cos(math.radians(6))
    assert record.results["start_pull"] == pytest.approx((1800 * sine + 90 * cosine) * LB)
    assert record.results["hold_back"] == pytest.approx(1800 * sine * LB)
    assert record.results["slides_at"] == 0.0
    assert {"rolls-away", "hands-off-rollers"} <= codes(ROLLING)


def test_two_columns_never_cross() -> None:
    for one in SURFACES.values():
        assert one.start >= one.keep >= one.hold > 0


def test_level_direct_and_all_known_is_worked_out() -> None:
    level = {**EXAMPLE, "slope": "0", "parts": "1", "sheaves": "0", "hauled_by": "other"}
    plain = without(level, "winch_rating", "turns")
    record = asked("move-it", plain, "us")
    assert record.verdict == "ok"
    assert record.results["anchor_pull"] == record.results["start_pull"] == record.results["hauling_pull"]
    assert record.results["winch_has"] is None
    assert record.results["tail_pull"] is None


def test_what_is_overloaded_or_not_known() -> None:
    assert "rigging-overloaded" in codes({**EXAMPLE, "rating": "1,000 lb"})
    weak = asked("move-it", {**EXAMPLE, "winch_rating": "500 lbf"}, "us")
    assert weak.verdict == "stop"
    assert "Do not pull" in weak.headline
    assert asked("move-it", without(EXAMPLE, "rating"), "us").verdict == "unknown"
    assert "winch-not-known" in codes(without(EXAMPLE, "winch_rating"))
    guess = asked("move-it", without(EXAMPLE, "pair"), "us")
    assert "pair-not-known" in {reason.code for reason in guess.reasons}
    assert guess.results["start_pull"] > asked("move-it", EXAMPLE, "us").results["start_pull"]
    assert guess.results["hold_back"] > 0
    full = asked("move-it", without(EXAMPLE, "layer"), "us").results
    assert full["winch_has"] == pytest.approx(2000 * 2.75 / (2.5 + 23 * 0.25) * LB)


@pytest.mark.parametrize(
    ("given", "box"),
    [
        ({**EXAMPLE, "parts": "5"}, "sheaves"),
        (without(EXAMPLE, "drum"), "drum"),
        (without(EXAMPLE, "post_friction"), "post_friction"),
        (without(ROLLING, "level_pull"), "level_pull"),
        ({**ROLLING, "level_pull": "2,000 lbf"}, "level_pull"),
        ({**EXAMPLE, "slope": "45°"}, "slope"),
    ],
)
def test_refused_beside_the_box(given: dict[str, Any], box: str) -> None:
    with pytest.raises(Refused) as refused:
        answer("move-it", given, "us")
    assert [one.input for one in refused.value.errors] == [box]


def test_the_anchor_s_gear_bears_more_than_the_load_s() -> None:
    """1,100 lb of rating held a pull of 1,090 lb, where the anchor of the tackle bore 1,560."""
    codes = {one.code for one in asked("move-it", {**EXAMPLE, "rating": "1,100 lb"}, "us").reasons}
    assert "rigging-overloaded" in codes
    plain = {**EXAMPLE, "parts": "1", "sheaves": "0", "winch_rating": "3,000 lb"}
    codes = {one.code for one in asked("move-it", {**plain, "rating": "1,100 lb"}, "us").reasons}
    assert "rigging-overloaded" not in codes


MATERIALS = {
    "wood-on-wood": ("-wood-on-plywood", "cardboard-on-wood"),
    "steel-on-wood": ("-wood-on-steel", "steel-crate-on-plywood", "steel-on-wooden-bolster"),
    "steel-on-steel": ("steel-crate-on-steel", "metal-on-itself", "smooth-metal-on-smooth-metal"),
    "rubber-on-concrete": ("rubber-track-on-deck",),
}


@pytest.mark.parametrize("pair", SURFACES)
def test_what_holds_back_is_no_more_than_a_tie_down_would_count(pair: str) -> None:
    """Steel on wood held back with 0.28 where the tie-down counted 0.2 standing: a ramp of 12 degrees needed no line."""
    printed = [
        float(row["value"])
        for row in table("friction").where(quantity="friction", state="dry")
        if row["pair"].endswith(MATERIALS[pair])
    ]
    surface = SURFACES[pair]
    assert printed
    assert surface.hold <= 0.7 * min(printed) + 1e-9
    assert surface.start >= max(printed)
    assert surface.hold < surface.keep <= surface.start
    assert NOT_KNOWN.hold == 0.0
    assert NOT_KNOWN.start >= surface.start
    assert NOT_KNOWN.keep >= surface.keep


def test_friction_for_pulling_as_printed() -> None:
    """OpenStax, University Physics 1, Table 6.1: wood on wood 0.5 standing, steel on dry steel 0.6 and 0.3, rubber on dry concrete
    1.0 and 0.7. European guideline of 2006, 8.2: steel on wooden bolsters 0.5 standing, and 70 percent of it moving.
    """
    assert {pair: (one.start, one.keep) for pair, one in SURFACES.items()} == {
        "wood-on-wood": (0.5, 0.35),
        "steel-on-wood": (0.5, 0.35),
        "steel-on-steel": (0.6, 0.3),
        "rubber-on-concrete": (1.0, 0.7),
    }
    assert (NOT_KNOWN.start, NOT_KNOWN.keep) == (1.0, 0.7)


@pytest.mark.parametrize(
    ("more", "lines"),
    [
        (
            {},
            [
                "Start",
                "Keep moving",
                "Hold back",
                "Free part of the rope",
                "Winch on this layer",
                "Tail behind the post",
            ],
        ),
        (
            {"parts": "1", "sheaves": "0"},
            ["Start", "Keep moving", "Hold back", "Winch on this layer", "Tail behind the post"],
        ),
        (
            {"parts": "1", "sheaves": "1", "hauled_by": "other"},
            ["Start", "Keep moving", "Hold back", "Free part of the rope", "Tail behind the post"],
        ),
        (
            {"turns": ""},
            ["Start", "Keep moving", "Hold back", "Free part of the rope", "Winch on this layer"],
        ),
        (
            {"way": "rollers", "level_pull": "90 lbf", "turns": ""},
            ["Start", "Hold back", "Free part of the rope", "Winch on this layer"],
        ),
    ],
)
def test_each_number_has_its_line_of_working(more: dict[str, str], lines: list[str]) -> None:
    assert [one.label for one in asked("move-it", {**EXAMPLE, **more}, "us").steps] == lines
