"""tripod: statics by hand, what is refused or not known, and that flatter, longer, heavier and thinner is never better."""

from __future__ import annotations

import math
from typing import Any

import pytest

from calc.answering import Refused, answer, worksheet
from calc.lifting.three_legs import BEARING, Pull, ShearLegs, Tripod
from calc.lifting.tripod import THICKEST_PIN, WORKSHEET
from tests.asking import asked

PINNED: dict[str, Any] = dict(WORKSHEET.example)
EXAMPLE: dict[str, Any] = {**PINNED, "head": "marked", "head_rating": "900,000 lbf"}
"""The example with a head so strong that something else is the weakest."""
SHEARS: dict[str, Any] = {
    **EXAMPLE,
    "kind": "shear-legs",
    "feet_apart": "3 ft",
    "drift": "1.5 ft",
    "stay_anchor": "14 ft",
    "stay_rating": "2,000 lbf",
    "feet": "held",
}
WOOD = {"section": "wood", "width": "5 in"}
LB, FOOT, INCH, PSI, G = 0.45359237, 0.3048, 0.0254, 6894.757293168361, 9.80665


def found(base: dict[str, Any], **more: Any) -> dict[str, Any]:
    return dict(asked("tripod", {**base, **more}, "us").results)


def used(base: dict[str, Any], **more: Any) -> dict[str, float]:
    return {
        row.cells["check"].code.removeprefix("check-"): row.cells["used"].value_si
        for row in found(base, **more)["checks"]
    }


def codes(base: dict[str, Any], **more: Any) -> set[str]:
    return {reason.code for reason in asked("tripod", {**base, **more}, "us").reasons}


def test_a_tripod_by_hand() -> None:
    results = found(EXAMPLE)
    reach = 7 * FOOT / 3**0.5
    head = math.sqrt((10 * FOOT) ** 2 - reach**2)
    assert results["head_height"] == pytest.approx(head)
    area = math.pi / 4 * (2.375**2 - 2.067**2) * INCH**2
    leg_kg = area * 10 * FOOT * 7850
    assert results["leg_weight"] == pytest.approx(leg_kg)
    hangs = 1.1 * 735 * LB * G
    lean = math.atan2(reach, head)
    thrust = (hangs + 1.5 * leg_kg * G) / (3 * math.cos(lean))
    thrust += 2 * hangs * math.tan(math.radians(3)) / (3 * math.sin(lean)) + leg_kg * G
    assert results["leg_thrust"] == pytest.approx(thrust)
    assert results["tie_pull"] == pytest.approx(thrust * math.sin(lean) / 3**0.5)
    assert results["foot_thrust"] == pytest.approx(thrust * math.sin(lean))
    assert math.tan(math.radians(results["tips_at"])) == pytest.approx(reach / 2 / head)
    parts = used(EXAMPLE)
    assert parts["tips"] == pytest.approx(math.tan(math.radians(3)) * 1.5 / (reach / 2 / head))
    assert parts["ties"] == pytest.approx(results["tie_pull"] / (1300 * LB * G))
    second = math.pi / 64 * (2.375**4 - 2.067**4) * INCH**4
    slender = 10 * FOOT / math.sqrt(second / area)
    buckles = 0.877 * math.pi**2 * 200e9 / slender**2 * area / 3
    assert results["buckles_at"] == pytest.approx(buckles)
    bends = leg_kg * G * math.sin(lean) * 10 * FOOT / 8
    euler = math.pi**2 * 200e9 * second / (10 * FOOT) ** 2
    grown = bends / (1 - 1.6 * thrust / euler) * 3 / (35_000 * PSI * second / (2.375 / 2 * INCH))
    assert parts["legs"] == pytest.approx(thrust / buckles / 2 + grown)


def test_shear_legs_by_hand() -> None:
    results = found(SHEARS)
    plane = math.sqrt(100 - 2.25) * FOOT
    head = math.sqrt(plane**2 - (1.5 * FOOT) ** 2)
    assert results["head_height"] == pytest.approx(head)
    hangs = 1.1 * 735 * LB * G
    down, level = hangs + results["leg_weight"] * G, hangs * math.tan(math.radians(3))
    stay_angle = math.atan(head / (15.5 * FOOT))
    stay = (down * 1.5 * FOOT + level * head) / (14 * FOOT * math.sin(stay_angle))
    assert results["stay_angle"] == pytest.approx(math.degrees(stay_angle))
    assert results["stay_pull"] == pytest.approx(max(stay, hangs / 2))
    pair = (down + stay * math.sin(stay_angle)) * plane / head
    half = math.asin(1.5 / 10)
    thrust = pair / (2 * math.cos(half)) + level / (2 * math.sin(half)) + results["leg_weight"] * G
    assert results["leg_thrust"] == pytest.approx(thrust)
    assert results["tie_pull"] == pytest.approx(thrust * 0.15)
    assert results["back_push"] == pytest.approx(pair * 1.5 * FOOT / plane)
    assert used(SHEARS)["stay"] == pytest.approx(results["stay_pull"] / (2000 * LB * G))
    assert "feet" not in used(SHEARS)
    assert used(SHEARS, feet="tied")["feet"] == pytest.approx(1.5 * FOOT / head / 0.2)
    assert used(SHEARS, feet="loose")["feet"] > used(SHEARS, feet="tied")["feet"]


def test_upright_shear_legs_pull_no_stay_but_half_the_load_counts() -> None:
    legs = ShearLegs(5.0, 2.0, 1e-9, 4.0)
    assert legs.stay_n(Pull(1000.0, 0.0)) == pytest.approx(0.0, abs=1e-3)
    assert legs.pair_n(Pull(1000.0, 0.0)) == pytest.approx(1000.0)
    results = found(SHEARS, drift="0.01 ft")
    assert results["stay_pull"] == pytest.approx(1.1 * 735 * LB * G / 2)
    assert results["not_more_than"] == pytest.approx(0.0, abs=1e-9)  # it falls back at the first pull


def test_sine_rule_at_the_head() -> None:
    """T = W sin a / cos(a + g), P = W cos g / cos(a + g)."""
    legs, pull = ShearLegs(6.0, 2.0, 1.5, 5.0), Pull(1000.0, 0.0)
    a, g = legs.lean_rad, legs.stay_rad
    assert legs.stay_n(pull) == pytest.approx(1000 * math.sin(a) / math.cos(a + g))
    assert legs.pair_n(pull) == pytest.approx(1000 * math.cos(g) / math.cos(a + g))


def test_upright_legs_of_a_tripod_share_the_load() -> None:
    assert Tripod(3.0, 1e-6).leg_n(Pull(3000.0, 0.0)) == pytest.approx(1000.0)


WORSE = (
    {"load": "900 lb"},
    {"hoist_weight": "90 lb"},
    {"side_pull": "6°"},
    {"lead_pull": "200 lbf"},
    {"wall": "0.153 in"},
    {"width": "2-5/16 in"},
    {"yield_strength": "30,000 psi"},
    {"design_factor": "4"},
    {"feet": "loose"},
    {"feet": "", "tie_rating": ""},
)


@pytest.mark.parametrize("worse", WORSE)
@pytest.mark.parametrize("base", [EXAMPLE, SHEARS], ids=["tripod", "shear-legs"])
def test_worse_is_never_better(base: dict[str, Any], worse: dict[str, str]) -> None:
    better, changed = found(base), found(base, **worse)
    assert changed["weakest_share"] >= better["weakest_share"] * (1 - 1e-12)
    assert changed["leg_thrust"] >= better["leg_thrust"] * (1 - 1e-2)
    if changed["not_more_than"] is not None:
        assert changed["not_more_than"] <= better["not_more_than"] * (1 + 1e-9)


def test_taller_is_never_better() -> None:
    """Longer legs on the same feet buckle and tip sooner; farther out, the stay pulls harder."""
    for base in (EXAMPLE, SHEARS):
        parts = [used(base, leg_length=f"{feet} ft") for feet in (8, 10, 13, 17)]
        for name in ("legs", "tips"):
            assert [one[name] for one in parts] == sorted(one[name] for one in parts)
    stays = [found(SHEARS, drift=f"{feet} ft")["stay_pull"] for feet in (1.0, 2.0, 4.0)]
    assert stays == sorted(stays)


def test_what_is_said() -> None:
    plain = {"head-by-its-mark", "unrated", "up-and-down-only", "not-counted"}
    assert codes(EXAMPLE) == plain
    assert codes(SHEARS) == {
        "head-by-its-mark",
        "unrated",
        "feet-must-hold",
        "anchor-of-the-stay",
        "not-counted",
    }
    assert "pin-upper-bound" in codes(PINNED)
    assert "tie-the-feet" in codes(EXAMPLE, feet="loose")
    assert "ties-not-checked" in codes(EXAMPLE, tie_rating="")
    assert "stay-not-checked" in codes(SHEARS, stay_rating="")
    assert "feet-wide" in codes(SHEARS, feet_apart="3.4 ft")
    assert "leans-far" in codes(SHEARS, drift="2 ft")
    assert "slender" in codes(EXAMPLE, leg_length="14 ft")
    assert "small-factor" in codes(EXAMPLE, design_factor="2")
    assert "over-the-gear" in codes(SHEARS, stay_rating="100 lbf")
    assert "over-the-weakest" in codes(EXAMPLE, load="90,000 lb")
    assert answer("tripod", {**EXAMPLE, "feet": "loose"}, "us")["headline"].startswith("Do not lift this.")


@pytest.mark.parametrize(
    ("base", "more"),
    [
        (EXAMPLE, {"tie_rating": ""}),
        (SHEARS, {"stay_rating": ""}),
        (EXAMPLE, {"wall": "0.02 in"}),
        (EXAMPLE, {"head": ""}),
        (EXAMPLE, {"head": "lashed"}),
        (EXAMPLE, WOOD),
    ],
)
def test_what_is_not_known_gives_no_load(base: dict[str, Any], more: dict[str, str]) -> None:
    record = answer("tripod", {**base, **more}, "us")
    assert record["results"]["not_more_than"]["value"] is None
    assert "not more than" not in record["headline"]
    assert record["verdict"] == "unknown"


def test_the_bolt_at_the_head_by_hand() -> None:
    """W = 807 lb with its allowance; a bolt of 1-1/8 in and 36 ksi, 2-1/2 in from leg to leg, bends first."""
    given = dict(WORKSHEET.example)
    thrust = found(given)["leg_thrust"]
    bends = math.pi / 32 * (1.125 * INCH) ** 3 * 36_000 * PSI / (2.5 * INCH) / 3
    assert found(given)["head_used"] == pytest.approx(thrust / bends)
    thick = {"head_yield": "150,000 psi", "wall": "0.07 in", "yield_strength": "20,000 psi"}
    crushes = 2 * 0.07 * 1.125 * INCH**2 * 1.25 * 20_000 * PSI / 3
    assert found(given, **thick)["head_used"] == pytest.approx(found(given, **thick)["leg_thrust"] / crushes)
    cut = {
        "head_apart": "0.6 in",
        "head_pin": "1 in",
        "section": "book",
        "area": "2 in2",
        "radius": "1 in",
        "modulus": "2 in3",
    }
    shears = 0.375 * math.pi / 4 * INCH**2 * 36_000 * PSI / math.sqrt(3) / 3
    bent = math.pi / 32 * INCH**3 * 36_000 * PSI / (0.6 * INCH) / 3
    assert found(given, **cut)["head_used"] == pytest.approx(
        found(given, **cut)["leg_thrust"] / min(shears, bent)
    )
    short = {**cut, "head_apart": "0.5 in"}
    assert found(given, **short)["head_used"] == pytest.approx(
        found(given, **short)["leg_thrust"] / min(shears, 1.2 * bent)
    )


def test_a_head_with_a_mark_is_held_against_what_hangs_from_it() -> None:
    marked = {"head": "marked", "head_rating": "1,000 lbf"}
    assert found(EXAMPLE, **marked)["head_used"] == pytest.approx(1.1 * 735 / 1000)
    assert found(EXAMPLE, **marked, lead_pull="100 lbf")["head_used"] == pytest.approx(1.1 * 735 / 1000 + 0.1)
    assert answer("tripod", {**EXAMPLE, **marked}, "us")["verdict"] == "ok"
    assert "over-the-gear" in codes(EXAMPLE, **marked, load="1,000 lb")
    assert "head-by-its-mark" in codes(EXAMPLE, **marked)


def test_a_wooden_pole_gets_its_thrust_and_no_strength() -> None:
    record = answer("tripod", {**EXAMPLE, **WOOD}, "us")
    assert record["results"]["buckles_at"]["value"] is None
    assert record["results"]["weakest"]["value"] is None
    assert record["headline"].startswith("Nobody can say what wooden legs hold")
    results = found(EXAMPLE, **WOOD)
    assert results["leg_weight"] == pytest.approx(math.pi / 4 * (5 * INCH) ** 2 * 10 * FOOT * 1100)
    assert results["leg_thrust"] > found(EXAMPLE)["leg_thrust"]
    assert results["tips_at"] == found(EXAMPLE)["tips_at"]


def test_the_greatest_load_uses_the_first_part_up() -> None:
    for base in (EXAMPLE, SHEARS):
        most = found(base)["not_more_than"]
        assert max(used(base, load=f"{most:.9f} kg").values()) == pytest.approx(1.0, rel=1e-6)


@pytest.mark.parametrize(
    ("base", "change", "box"),
    [
        (EXAMPLE, {"feet_apart": "17 ft"}, "feet_apart"),
        (SHEARS, {"feet_apart": "19.5 ft"}, "feet_apart"),
        (SHEARS, {"drift": "9.5 ft"}, "drift"),
        (SHEARS, {"drift": ""}, "drift"),
        (SHEARS, {"stay_anchor": ""}, "stay_anchor"),
        (EXAMPLE, {"wall": "1.3 in"}, "wall"),
        (EXAMPLE, {"side_pull": "2"}, "side_pull"),
        (EXAMPLE, {"lead_pull": ""}, "lead_pull"),
        (EXAMPLE, {"leg_length": "0"}, "leg_length"),
        (EXAMPLE, {"section": "book", "area": "5 in2", "radius": "2 in", "modulus": "400 in3"}, "modulus"),
        (PINNED, {"head_pin": ""}, "head_pin"),
        (PINNED, {"head_yield": ""}, "head_yield"),
        (PINNED, {"head_pin": "1-1/4 in"}, "head_pin"),
        (PINNED, {"head_apart": "2-1/4 in"}, "head_apart"),
        (PINNED, {"head": "marked"}, "head_rating"),
        (EXAMPLE, {**WOOD, "width": ""}, "width"),
        (EXAMPLE, {"yield_strength": ""}, "yield_strength"),
    ],
)
def test_bad_input_is_refused_beside_its_box(base: dict[str, Any], change: dict[str, str], box: str) -> None:
    with pytest.raises(Refused) as refused:
        answer("tripod", {**base, **change}, "us")
    assert [one.input for one in refused.value.errors] == [box]


def test_legs_are_lit_where_they_are_the_weakest() -> None:
    strong = {"feet_apart": "9 ft", "wall": "0.1 in"}
    cases: tuple[tuple[dict[str, Any], dict[str, str]], ...] = (
        (EXAMPLE, {}),
        (EXAMPLE, {**strong, "load": "2,000 lb"}),
        (EXAMPLE, {"load": "90,000 lb"}),
        (SHEARS, {}),
    )
    drawings = {answer("tripod", {**base, **more}, "us")["figure"]["svg"] for base, more in cases}
    assert len(drawings) == 4
    assert answer("tripod", {**EXAMPLE, "wall": "0.02 in"}, "us")["figure"]


@pytest.mark.parametrize(
    ("base", "more", "code"),
    [
        (EXAMPLE, {"tie_rating": "900,000 lbf"}, "over-the-weakest"),
        (EXAMPLE, {"tie_rating": "150 lbf"}, "over-the-gear"),
        (SHEARS, {"stay_rating": "450 lbf"}, "over-the-gear"),
    ],
)
def test_a_little_over_what_holds_is_a_stop(base: dict[str, Any], more: dict[str, str], code: str) -> None:
    most = found({**base, **more})["not_more_than"]
    assert most > 1.0
    under = asked("tripod", {**base, **more, "load": f"{0.99 * most:.9f} kg"}, "us")
    over = asked("tripod", {**base, **more, "load": f"{1.02 * most:.9f} kg"}, "us")
    assert code not in {one.code for one in under.reasons}
    assert code in {one.code for one in over.reasons}
    assert over.verdict == "stop"


def test_feet_as_far_apart_as_a_leg_is_long_are_answered() -> None:
    assert found(SHEARS, feet_apart="10 ft")["leg_thrust"] > 0


def test_the_weakest_is_the_one_of_which_most_is_used() -> None:
    """It tips over, 35.6 %, stood as the weakest point while the bolt at the head used 62.8 % of what it holds."""
    weak_head = dict(worksheet("tripod").example)
    weak_tie = {**EXAMPLE, "tie_rating": "150 lbf"}
    bases = (
        EXAMPLE,
        {**EXAMPLE, "load": "20,000 lb"},
        SHEARS,
        {**EXAMPLE, "feet": "loose"},
        weak_head,
        weak_tie,
    )
    for base in bases:
        assert found(base)["weakest_share"] == pytest.approx(max(used(base).values()))
    assert asked("tripod", weak_head, "us").results["weakest"] == "the head breaks"
    assert asked("tripod", weak_tie, "us").results["weakest"] == "a tie between the feet breaks"


def test_a_tie_counts_only_where_the_feet_are_tied() -> None:
    assert "ties" not in used({**EXAMPLE, "feet": "held"})
    assert "stay" not in used({**EXAMPLE, "stay_rating": "1 lbf"})


@pytest.mark.parametrize("part", [0.1, 0.3, 0.5, 0.65])
def test_up_to_half_a_leg_the_bolt_crushes_the_wall_before_the_leg_breaks_beside_its_hole(
    part: float,
) -> None:
    """Of a diameter or side of one and a wall of one: what the bolt crushes against what the hole leaves, round and square."""
    assert THICKEST_PIN < 0.65
    crushed = BEARING * 2 * part
    assert crushed < math.pi - 2 * math.asin(part)
    assert crushed < 4 - 2 * part
