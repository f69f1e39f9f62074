"""lifting-frame: every check by hand, refusals, and that longer, taller, heavier or less braced is never better."""

from __future__ import annotations

import math
from typing import Any

import pytest

from calc.answering import Refused, answer
from calc.lifting.frame_strength import Post, column_stress_pa, thin_flange_moment_nm
from calc.lifting.lifting_frame import WORKSHEET
from tests.asking import asked

G = 9.80665
EXAMPLE: dict[str, Any] = dict(WORKSHEET.example)
GANTRY = {
    **EXAMPLE,
    "kind": "gantry",
    "stands_on": "wheels",
    "wheel_rating": "1,500 lbf",
    "post_width": "5 in",
    "side_pull": "4°",
}
PORTAL = {**EXAMPLE, "kind": "portal", "post_width": "6 in"}
WALLS = {**EXAMPLE, "kind": "walls"}
BRACKET = {**EXAMPLE, "kind": "bracket", "span": "5 ft", "plate_height": "18 in"}
BOX = {
    **EXAMPLE,
    "section": "box",
    "hung_from": "below",
    "width": "4 in",
    "depth": "6 in",
    "wall": "1/4 in",
}
W8X10 = {
    **EXAMPLE,
    "load": "3,000 lb",
    "hoist_weight": "80 lb",
    "span": "14 ft",
    "depth": "7.89 in",
    "flange_width": "3.94 in",
    "web_thickness": "0.170 in",
    "flange_thickness": "0.205 in",
    "yield_strength": "50,000 psi",
    "design_factor": "1.67",
}


def used(given: dict[str, Any]) -> dict[str, float]:
    """The part used of each check."""
    found = asked("lifting-frame", given, "us").results["checks"]
    return {row.cells["check"].code.removeprefix("check-"): row.cells["used"].value_si for row in found}


def most(given: dict[str, Any]) -> float:
    """Not more than this load [kg]; nought where none is given."""
    record = asked("lifting-frame", given, "us")
    return float(record.results["not_more_than"] or 0.0)


def codes(given: dict[str, Any]) -> set[str]:
    return {reason.code for reason in asked("lifting-frame", given, "us").reasons}


def without(given: dict[str, Any], *names: str) -> dict[str, Any]:
    return {name: value for name, value in given.items() if name not in names}


def test_the_twist_constant_of_a_book_counts_the_fillets() -> None:
    booked = {**W8X10, "twist_constant": "0.0426 in4"}
    assert used(booked)["rolls"] == pytest.approx(used(W8X10)["rolls"] * 122.44 / 129.39, rel=1e-3)
    assert most(W8X10) < most(booked) < 1.08 * most(W8X10)
    rounded = {**W8X10, "twist_constant": "0.0352 in4"}
    assert most(rounded) == pytest.approx(most(W8X10))
    assert most({**BOX, "twist_constant": "5 in4"}) == most(BOX)


@pytest.mark.parametrize("twist", ["0.0340 in4", "0.0530 in4", "0.426 in4", "4.26 in4"])
def test_a_twist_constant_that_misses_the_sizes_is_refused(twist: str) -> None:
    with pytest.raises(Refused) as refused:
        answer("lifting-frame", {**W8X10, "twist_constant": twist}, "us")
    assert [one.input for one in refused.value.errors] == ["twist_constant"]


def test_the_load_that_a_stress_check_passes_lies_on_its_side() -> None:
    parts = used(W8X10)
    assert parts["bends"] < 0.7
    assert parts["rolls"] == pytest.approx(1.98, abs=0.03)
    assert parts["sideways"] > parts["rolls"]
    record = asked("lifting-frame", W8X10, "us")
    assert "over-the-weakest" in {reason.code for reason in record.reasons}
    assert record.verdict == "stop"
    assert "Do not lift this" in record.headline


def test_bending_tipping_and_thrust_by_hand() -> None:
    found = asked("lifting-frame", EXAMPLE, "us").results
    lb, inch, psi = 0.45359237, 0.0254, 6894.757293168361
    hangs = 1.1 * 960 * lb * G
    area = 2 * 5.25 * 0.3125 + (8 - 0.625) * 0.25
    own = area * inch**2 * 7850
    assert found["beam_weight"] == pytest.approx(own * 120 * inch)
    moment = hangs * 30 * inch + own * G * (120 * inch) ** 2 / 8
    assert found["moment"] == pytest.approx(moment)
    second = (5.25 * 8**3 - 5 * 7.375**3) / 12
    parts = used(EXAMPLE)
    assert parts["bends"] == pytest.approx(moment / (second / 4 * inch**3 * 12_000 * psi))
    assert parts["web"] == pytest.approx(hangs / (7 * 0.3125 * 0.25 * inch**2) / (12_000 * psi))
    tips = 960 * math.tan(math.radians(3)) * 108 / ((960 + 260) * 30 / 1.5)
    assert parts["tips"] == pytest.approx(tips)
    assert found["tips_at"] == pytest.approx(math.degrees(math.atan((960 + 260) * 60 / (2 * 960 * 108))))
    end = hangs + own * 60 * inch * G
    leg = math.hypot(108, 30)
    legs = 2 * (9 - 2.5**2) * leg * inch**3 * 7850 * G
    thrust = (end + legs) / 2 * 30 / 108 + hangs * math.tan(math.radians(3)) / 2
    assert found["foot_thrust"] == pytest.approx(thrust)
    k = second / 120 / (2 * (3**4 - 2.5**4) / 12 / leg)
    pull_along = hangs * math.tan(math.radians(3)) * 108 * inch / 2
    asks = 0.0
    for piece in range(16):
        share, further = 1 - piece / 32, (piece + 1) / 32
        sagging = 1.5 * hangs * further * (1 - further) * 120 * inch + own * G * (120 * inch) ** 2 / 4
        couple = pull_along + sagging / (2 * k + 3)
        asks = max(asks, math.hypot(hangs * share + own * 60 * inch * G, couple / (6 * inch)))
    assert asks > end
    assert parts["joint"] == pytest.approx(asks / (54_000 * psi * math.pi / 4 * (0.625 * inch) ** 2 * 4 / 3))


def test_the_lower_flange_by_hand() -> None:
    inch, psi = 0.0254, 6894.757293168361
    hangs = 1.1 * 960 * 0.45359237 * G
    along = asked("lifting-frame", EXAMPLE, "us").results["moment"] / (
        (5.25 * 8**3 - 5 * 7.375**3) / 48 * inch**3
    )
    across = 0.75 * hangs / (0.3125 * inch) ** 2
    stress = math.sqrt(along**2 + across**2 + along * across)
    assert used(EXAMPLE)["flange"] == pytest.approx(stress / (12_000 * psi))
    assert "flange" not in used({**EXAMPLE, "hung_from": "on-top"})


def test_casters_and_posts_of_a_gantry_by_hand() -> None:
    parts = used(GANTRY)
    lb = 0.45359237 * G
    pull = 1.1 * 960 * lb * math.tan(math.radians(4))
    wheel = (1.1 * 960 * lb + 260 * lb) / 2 + pull * 108 / 60
    assert parts["wheels"] == pytest.approx(wheel / (1500 * lb))
    assert parts["posts"] > used({**GANTRY, "side_pull": "3°"})["posts"]
    assert "never-roll-loaded" in codes(GANTRY)
    assert used({**GANTRY, "height": "12 ft"})["posts"] > parts["posts"]


def test_walls_and_bracket() -> None:
    assert set(used(WALLS)) == {"bends", "rolls", "sideways", "shears", "flange", "web", "joint"}
    found = asked("lifting-frame", BRACKET, "us").results
    lb, inch = 0.45359237 * G, 0.0254
    own = (2 * 5.25 * 0.3125 + 7.375 * 0.25) * inch**2 * 7850 * G
    moment = 1.1 * 960 * lb * 60 * inch + own * (60 * inch) ** 2 / 2
    assert found["moment"] == pytest.approx(moment)
    end = 1.1 * 960 * lb + own * 60 * inch
    assert found["end_reaction"] == pytest.approx(end)
    bolts = 54_000 * 6894.757293168361 * math.pi / 4 * (0.625 * inch) ** 2 * 4 / 3
    assert used(BRACKET)["joint"] == pytest.approx(math.hypot(end, moment / (18 * inch)) / bolts)
    near = asked("lifting-frame", {**BRACKET, "position": "3 ft"}, "us").results
    assert near["moment"] < found["moment"]
    assert asked("lifting-frame", {**BRACKET, "position": "5 ft"}, "us").results["moment"] == pytest.approx(
        moment
    )
    assert found["tips_at"] is None
    assert found["foot_thrust"] is None


def test_anchors_and_welds() -> None:
    anchors = {
        "fastened_by": "anchors", "embedment": "4 in", "concrete_strength": "3,000 psi", "fastener_count": "2",
        "plate_height": "10 in",
    }  # fmt: off
    lb = 0.45359237 * G
    hangs = 1.1 * 960 * lb
    pull = hangs * math.tan(math.radians(3))
    own = (2 * 5.25 * 0.3125 + 7.375 * 0.25) * 0.0254**2 * 7850 * G * 120 * 0.0254
    k = (5.25 * 8**3 - 5 * 7.375**3) / 120 / ((6**4 - 5.5**4) / 108)
    middle = {**PORTAL, "position": "5 ft"}
    foot = (hangs * 30 + own * 120 / 6) / (k + 2) / 2
    asks = math.hypot(pull / 2, (pull / 2 * 108 + foot) / 10)
    assert used({**middle, **anchors})["joint"] == pytest.approx(asks * 3 / (2 * 17 * 3000**0.5 * 8 * lb))
    assert used({**PORTAL, **anchors})["joint"] > used({**middle, **anchors})["joint"]
    weld = {"fastened_by": "weld", "weld_leg": "1/4 in", "weld_length": "6 in", "weld_strength": "70,000 psi"}
    asks = math.hypot(hangs / 2 + own / 2, (pull * 108 / 4 + 2 * foot) / 6 * 2)
    assert used({**middle, **weld})["joint"] == pytest.approx(
        asks * 3 / (0.6 * 70_000 * 0.707 * 0.25 * 6 * lb)
    )
    assert used({**BRACKET, **anchors})["joint"] > used({**WALLS, **anchors})["joint"]
    walls = {**WALLS, **weld, "position": "5 ft"}
    assert used(walls)["joint"] == pytest.approx(
        (hangs / 2 + own / 2) * 3 / (0.6 * 70_000 * 0.707 * 0.25 * 6 * lb)
    )


def test_the_sagging_beam_bends_the_posts_of_a_wide_low_frame() -> None:
    """A heavy beam on slender posts, eight paces wide: its corners count, square to it and along it, and a stiffer post takes more."""
    wide = {**GANTRY, "side_pull": "3°", "span": "24 ft", "height": "7 ft", "position": "12 ft", "feet_apart": "8 ft",
            "wheel_rating": "9,000 lbf"}  # fmt: off
    lb, inch, psi = 0.45359237 * G, 0.0254, 6894.757293168361
    hangs, span = 1.1 * 960 * lb, 24 * 12 * inch
    own = (2 * 5.25 * 0.3125 + 7.375 * 0.25) * inch**2 * 7850 * G
    second = (5**4 - 4.5**4) / 12
    k = (5.25 * 8**3 - 5 * 7.375**3) / 12 / 288 / (second / 84)
    head = (1.5 * hangs * span / 4 + own * span**2 / 4) / (2 * k + 3)
    pull = hangs * math.tan(math.radians(3)) * 84 * inch
    assert pull / 2 + head > pull / 2 > 0
    bends = (pull / 2 + head) / (second / 2.5 * inch**3)
    assert used(wide)["posts"] > bends / (12_000 * psi)
    assert used({**wide, "position": "1 ft"})["posts"] != used(wide)["posts"]


WORSE: tuple[tuple[dict[str, Any], dict[str, Any]], ...] = (
    (EXAMPLE, {"span": "14 ft"}),
    (EXAMPLE, {"load": "950 lb"}),
    (EXAMPLE, {"hoist_weight": "100 lb"}),
    (EXAMPLE, {"side_pull": "8°"}),
    (EXAMPLE, {"design_factor": "4"}),
    (EXAMPLE, {"hung_from": "on-top", "held_every": "", "span": "16 ft"}),
    (GANTRY, {"height": "11 ft"}),
    (GANTRY, {"feet_apart": "3 ft"}),
    (GANTRY, {"wheel_rating": "800 lbf"}),
    (GANTRY, {"post_wall": "3/16 in"}),
    (PORTAL, {"height": "20 ft"}),
    (BRACKET, {"span": "8 ft"}),
    (EXAMPLE, {"feet_tied": "loose"}),
    (EXAMPLE, {"joint": "loose"}),
    (EXAMPLE, {"ends_hold": "only-resting"}),
    (W8X10, {"span": "18 ft"}),
)  # fmt: off


@pytest.mark.parametrize(("given", "worse"), WORSE)
def test_longer_taller_heavier_and_less_braced_is_never_better(
    given: dict[str, Any], worse: dict[str, Any]
) -> None:
    first, second = used(given), None
    changed = {**given, **worse}
    record = asked("lifting-frame", changed, "us")
    if record.results["checks"]:
        second = used(changed)
        assert max(second.values()) >= max(first.values()) - 1e-12 or "hung_from" in worse
    if "hung_from" not in worse:
        assert most(changed) <= most(given) + 1e-9


def test_holding_the_beam_between_its_ends_lets_it_carry_more() -> None:
    assert used({**W8X10, "held_every": "7 ft"})["rolls"] < used(W8X10)["rolls"]
    on_top = {**W8X10, "hung_from": "on-top"}
    assert used(on_top)["rolls"] > used(W8X10)["rolls"]
    assert used({**W8X10, "position": "2 ft"})["bends"] < used(W8X10)["bends"]


def test_other_sections() -> None:
    box = used(BOX)
    assert box["rolls"] == pytest.approx(box["bends"])
    tube = {**BOX, "section": "tube", "diameter": "6 in"}
    assert used(tube)["rolls"] == pytest.approx(used(tube)["bends"])
    bar = {**BOX, "section": "rectangle", "width": "1 in"}
    assert used(bar)["rolls"] > used(bar)["bends"] / 1.5
    pipe = {**EXAMPLE, "post_section": "pipe"}
    assert used(pipe)["posts"] > used(EXAMPLE)["posts"]
    book = {
        **EXAMPLE, "post_section": "book", "post_area": "2.75 in2", "post_radius": "1.12725 in",
        "post_modulus": "2.3296 in3",
    }  # fmt: off
    assert used(book)["posts"] == pytest.approx(used(EXAMPLE)["posts"], rel=1e-3)


TEE = {
    **EXAMPLE, "section": "known", "hung_from": "below", "second_moment": "12 in4", "depth": "5 in",
    "modulus_top": "10 in3", "modulus_bottom": "3.16 in3", "own_weight": "15 lb/ft",
}  # fmt: off


def test_a_section_of_a_book_tells_its_bending_and_no_more() -> None:
    record = asked("lifting-frame", TEE, "us")
    assert record.verdict == "unknown"
    assert record.results["not_more_than"] is None
    assert not record.results["checks"]
    assert record.results["moment"] > 0
    assert record.results["deflection"] > 0
    assert "section from a book" in record.headline
    assert record.figure is not None


UNKNOWN: tuple[tuple[dict[str, Any], str], ...] = (
    (without(EXAMPLE, "ends_hold"), "nothing is said to hold the beam"),
    ({**EXAMPLE, "web_thickness": "0.03 in"}, "so thin"),
    ({**EXAMPLE, "flange_thickness": "0.09 in"}, "so thin"),
    ({**BOX, "wall": "0.06 in"}, "so thin"),
    ({**BOX, "width": "2 in"}, "this deep and narrow"),
    ({**BOX, "section": "tube", "diameter": "12 in", "wall": "0.1 in"}, "so thin"),
    ({**EXAMPLE, "post_wall": "0.05 in"}, "wall of the posts"),
    ({**BRACKET, "hung_from": "on-top"}, "on top of a wall beam"),
    (without(EXAMPLE, "stands_on"), "casters without a mark"),
)


@pytest.mark.parametrize(("given", "words"), UNKNOWN)
def test_what_is_not_known_is_said_and_shows_no_load(given: dict[str, Any], words: str) -> None:
    record = answer("lifting-frame", given, "us")
    assert record["verdict"] == "unknown"
    assert words in record["headline"]
    assert "not more than" not in record["headline"].lower()


def test_loose_joints_fold() -> None:
    record = answer("lifting-frame", {**EXAMPLE, "joint": "loose"}, "us")
    assert record["verdict"] == "stop"
    assert "fold" in record["headline"]


def test_what_leads_where_nothing_is_over() -> None:
    assert asked("lifting-frame", EXAMPLE, "us").verdict == "ok"
    light = {**EXAMPLE, "load": "200 lb"}
    for changed, words in (
        ({"fastened_by": "not-checked"}, "joint was not checked"),
        ({"feet_tied": "loose"}, "Do not lift"),
        ({"design_factor": "2"}, "factor under 3"),
        ({"frame_weight": "5,000 lb"}, "does not fit its sizes"),
        ({"depth": "3 in", "flange_width": "3-1/2 in", "span": "20 ft"}, "too flexible"),
    ):
        assert words in asked("lifting-frame", {**light, **changed}, "us").headline


def test_a_frame_is_neither_lighter_nor_much_heavier_than_its_parts() -> None:
    """Ballast beyond twice the parts holds nothing up; a frame of nothing still rests on its wheels."""
    tipping = {**GANTRY, "frame_weight": "900 lb"}
    assert (
        used({**tipping, "frame_weight": "9,000 lb"})["tips"]
        == used({**tipping, "frame_weight": "50,000 lb"})["tips"]
    )
    assert used({**tipping, "frame_weight": "1 lb"})["tips"] > used(tipping)["tips"]
    assert (
        used({**tipping, "frame_weight": "1 lb"})["wheels"]
        == used({**tipping, "frame_weight": "2 lb"})["wheels"]
    )
    assert used({**tipping, "frame_weight": "9,000 lb"})["wheels"] > used(tipping)["wheels"]
    assert "weight-misfits" in codes({**EXAMPLE, "frame_weight": "1 lb"})
    assert "weight-misfits" not in codes(EXAMPLE)


def test_a_joint_that_nobody_checked_may_be_the_weakest_part() -> None:
    assert asked("lifting-frame", EXAMPLE, "us").results["not_more_than"] is not None
    unchecked = asked("lifting-frame", {**EXAMPLE, "fastened_by": "not-checked"}, "us")
    assert unchecked.results["not_more_than"] is None
    assert unchecked.shown["not_more_than"] == "how the beam is fastened is not checked here"


def test_no_sag_past_yield_or_a_tenth_of_the_span() -> None:
    over = asked("lifting-frame", {**EXAMPLE, "load": "20,000 lb"}, "us").results
    assert over["deflection"] is None
    limp = {**BRACKET, "section": "box", "hung_from": "below", "span": "60 ft", "depth": "2 in", "width": "2 in",
            "wall": "1/4 in", "load": "1 lb", "hoist_weight": "0", "yield_strength": "65,000 psi"}  # fmt: off
    record = asked("lifting-frame", limp, "us")
    assert record.results["deflection"] is None
    assert "limp" in {reason.code for reason in record.reasons}


def test_a_frame_that_its_own_weight_uses_up_carries_nothing() -> None:
    assert most({**GANTRY, "wheel_rating": "100 lbf"}) == pytest.approx(0.0, abs=1e-9)


REFUSED: tuple[tuple[dict[str, Any], str, str], ...] = (
    (without(EXAMPLE, "yield_strength"), "yield_strength", ""),
    ({**EXAMPLE, "span": "0"}, "span", ""),
    (without(EXAMPLE, "flange_thickness"), "flange_thickness", "is missing here"),
    (without(EXAMPLE, "height"), "height", "is missing here"),
    ({**EXAMPLE, "flange_thickness": "4 in"}, "flange_thickness", "no I-beam"),
    ({**EXAMPLE, "web_thickness": "6 in"}, "web_thickness", "half the flange or more"),
    ({**EXAMPLE, "flange_width": "10 in"}, "flange_width", "exchanged"),
    ({**EXAMPLE, "post_section": "book", "post_area": "5 in2", "post_radius": "90 in", "post_modulus": "400 in3"},
     "post_modulus", "no rolled section"),
    ({**EXAMPLE, "post_section": "book", "post_area": "5 in2", "post_radius": "2 in", "post_modulus": "400 in3"},
     "post_modulus", "no rolled section"),
    ({**BOX, "wall": "3 in"}, "wall", "half the tube"),
    ({**EXAMPLE, "post_wall": "2 in"}, "post_wall", "half the tube"),
    ({**EXAMPLE, "position": "10 ft"}, "position", "over a support"),
    ({**BRACKET, "position": "6 ft"}, "position", "over a support"),
    ({**EXAMPLE, "held_every": "11 ft"}, "held_every", "more than the span"),
    ({**EXAMPLE, "feet_apart": "19 ft"}, "feet_apart", "twice the height"),
    ({**BOX, "hung_from": "trolley"}, "hung_from", "needs an I-beam"),
    ({**EXAMPLE, "stands_on": "wheels", "wheel_rating": "900 lbf", "feet_tied": "loose"}, "feet_tied", "roll apart"),
    ({**EXAMPLE, "fastened_by": "anchors"}, "fastened_by", "stands free"),
    ({**TEE, "modulus_top": "10 cm3"}, "modulus_top", "units"),
    ({**TEE, "modulus_top": "3.16 in3"}, "modulus_top", "make a depth of"),
)  # fmt: off


@pytest.mark.parametrize(("given", "box", "words"), REFUSED)
def test_bad_input_is_refused_beside_its_box(given: dict[str, Any], box: str, words: str) -> None:
    with pytest.raises(Refused) as refused:
        answer("lifting-frame", given, "us")
    assert [one.input for one in refused.value.errors] == [box]
    assert words in refused.value.errors[0].said


@pytest.mark.parametrize("given", [EXAMPLE, GANTRY, PORTAL, WALLS, BRACKET, {**W8X10, "load": "9,000 lb"}])
def test_the_drawing_names_and_lights_the_weakest(given: dict[str, Any]) -> None:
    record = answer("lifting-frame", given, "us")
    assert record["results"]["weakest"]["text"] in record["figure"]["caption"]


def test_columns_join_at_their_border_and_fall_with_length() -> None:
    modulus, yields = 200e9, 345e6
    border = math.pi * math.sqrt(2.25 * modulus / yields)
    assert column_stress_pa(border * 0.999999, yields, modulus) == pytest.approx(
        column_stress_pa(border * 1.000001, yields, modulus), rel=2e-3
    )
    assert column_stress_pa(1e-3, yields, modulus) == pytest.approx(yields)
    stresses = [column_stress_pa(slow, yields, modulus) for slow in range(5, 300, 5)]
    assert stresses == sorted(stresses, reverse=True)


def test_a_post_near_its_sway_load_is_over_by_thrust_alone() -> None:
    post = Post(1e-3, 1e-6, 2e-5, 6.0)
    euler = math.pi**2 * 200e9 * 1e-6 / 36
    assert post.part_used(0.9 * euler / 1.6, 0.0, 250e6, 200e9, 1.67) > 1.0
    assert math.isfinite(post.part_used(5 * euler, 1.0, 250e6, 200e9, 1.67))


def test_thin_flanges_lose_and_slender_ones_have_none() -> None:
    root = math.sqrt(200e9 / 345e6)
    moments = [thin_flange_moment_nm(100.0, 60.0, root * part, 345e6, 200e9) for part in (0.3, 0.5, 0.9, 1.0)]
    assert moments[0] == 100.0
    assert moments == sorted(moments, reverse=True)
    assert moments[-1] == pytest.approx(60.0)
    assert thin_flange_moment_nm(100.0, 60.0, root * 1.01, 345e6, 200e9) == 0.0


def test_the_nearer_end_carries_what_the_place_says() -> None:
    """A load 3 ft from one end of 10 ft presses that end with seven tenths; a trolley may run to the end and press it with all."""
    lb = 0.45359237 * G
    own = (2 * 5.25 * 0.3125 + 7.375 * 0.25) * 0.0254**2 * 7850 * G * 60 * 0.0254
    for place, part in (("3 ft", 0.7), ("7 ft", 0.7), ("5 ft", 0.5)):
        found = asked("lifting-frame", {**EXAMPLE, "position": place}, "us").results
        assert found["end_reaction"] == pytest.approx(part * 1.1 * 960 * lb + own)
    anywhere = asked("lifting-frame", {**EXAMPLE, "position": ""}, "us").results
    assert anywhere["end_reaction"] == pytest.approx(1.1 * 960 * lb + own)


def test_loose_feet_of_a_frames_slide_by_the_lean_of_their_legs() -> None:
    """A foot pushes out by the tangent of its lean, 30 / 108, and its friction holds a fifth of what presses it."""
    assert used({**EXAMPLE, "feet_tied": "loose"})["feet"] == pytest.approx(30 / 108 / 0.2)


def test_at_an_end_of_the_beam_half_of_the_flange_bends() -> None:
    inch, psi = 0.0254, 6894.757293168361
    flange = 0.75 * 1.1 * 960 * 0.45359237 * G / (0.3125 * inch) ** 2
    end = {**EXAMPLE, "position": "1 in"}
    along = asked("lifting-frame", end, "us").results["moment"] / (
        (5.25 * 8**3 - 5 * 7.375**3) / 48 * inch**3
    )
    stress = math.sqrt(along**2 + (2 * flange) ** 2 + along * 2 * flange)
    assert used(end)["flange"] == pytest.approx(stress / (12_000 * psi))
    assert used({**EXAMPLE, "position": "9 ft 11 in"})["flange"] == pytest.approx(used(end)["flange"])
    assert used({**EXAMPLE, "position": "6 in"})["flange"] < used(end)["flange"]
    near, tip = {**BRACKET, "position": "4 ft"}, {**BRACKET, "position": "4 ft 10 in"}
    assert used(BRACKET)["flange"] > used(tip)["flange"] > 1.5 * used(near)["flange"]


def test_an_anchored_frame_is_fastened_twice() -> None:
    assert {"the-wall-not-checked", "top-and-foot"} <= codes(PORTAL)
    assert not {"the-wall-not-checked", "top-and-foot"} & codes(EXAMPLE)
