"""straighten: the plate of half an inch worked by hand, what bars the work, refusals, and that more is never better."""

from __future__ import annotations

from typing import Any

import pytest

from calc.answering import Refused, answer, worksheet
from calc.pulling.plastic_bending import RECTANGLE, PressedBar, flat_second_moment_m4
from calc.words.facts import Quantity
from calc.words.writer import Writer
from tests.asking import asked

INCH, LB = 0.0254, 4.4482216152605
EXAMPLE: dict[str, Any] = dict(worksheet("straighten").example)
PLATE: dict[str, Any] = {
    "part": "plain-part", "steel": "plain", "yield_strength": "36,000 psi", "shape": "flat", "thickness": "1/2 in",
    "width": "24 in", "span": "40 in", "bow": "3/8 in", "bend": "even", "straightened_before": "no", "cracks": "none",
    "method": "press", "room": "2 in", "table_made": "own", "ram_capacity": "10 short tons",
}  # fmt: skip
PULLED: dict[str, Any] = {
    **PLATE, "method": "pull", "chain_rating": "12,000 lb", "chain_wire": "1/2 in", "chain_length": "30 in",
    "ram_bore": "1.68 in", "oil_volume": "0.5 qt", "table_give": "1/8 in",
}  # fmt: skip
ROD: dict[str, Any] = {
    **{name: value for name, value in PLATE.items() if name not in ("thickness", "width")},
    "shape": "round-bar", "diameter": "1 in",
}  # fmt: skip


def codes(given: dict[str, Any]) -> set[str]:
    return {reason.code for reason in asked("straighten", given, "us").reasons}


def without(given: dict[str, Any], *names: str) -> dict[str, Any]:
    return {name: value for name, value in given.items() if name not in names}


def test_half_inch_plate_by_hand() -> None:
    """Z = 24 x 0.5^2 / 6 = 1 in3: My 36,000 lb in, 4 My / L = 3,600 lb, the middle runs at 5,400 lb."""
    found = asked("straighten", PLATE, "us").results
    assert found["yield_moment"] == pytest.approx(36_000 * LB * INCH)
    assert found["plastic_moment"] == pytest.approx(54_000 * LB * INCH)
    assert found["first_force"] == pytest.approx(3_600 * LB)
    assert found["hinge_force"] == pytest.approx(5_400 * LB)
    assert found["force_at_most"] == pytest.approx(5_400 * 1.5 * 1.155 * LB)
    first = 36_000 * 40**2 / (6 * 29_007_547.5 * 0.5) * INCH
    assert found["first_travel"] == pytest.approx(first)
    assert first / INCH == pytest.approx(0.662, abs=0.0005)
    assert 0.375 * INCH / first == pytest.approx(0.5666, abs=0.0005)
    springs = found["over_bend_from"] / first
    assert 1.49 < springs < 1.5
    assert (5 - (3 + springs) * (3 - 2 * springs) ** 0.5) / springs**2 - springs == pytest.approx(
        0.5666, abs=0.0005
    )
    assert found["travel_from"] == pytest.approx(0.375 * INCH + found["over_bend_from"])
    assert found["must_bear"] == pytest.approx(20_000 * LB)
    assert found["each_support"] == pytest.approx(10_000 * LB)
    assert found["table_moment"] == pytest.approx(200_000 * LB * INCH)
    assert found["yielded_length"] == pytest.approx(40 / 3 * INCH)
    stiffness = 3_600 * LB / first
    assert found["in_piece"] == pytest.approx((9_355.5 * LB) ** 2 / 2 / stiffness)
    assert found["stored_energy"] == found["in_piece"]
    assert codes(PLATE) >= {"wide-plate", "own-table", "movement-leads", "killed-by-a-fitting"}
    assert asked("straighten", PLATE, "us").verdict == "caution"


def test_the_strongest_plate_is_straight_after_the_last_push() -> None:
    record = asked("straighten", PLATE, "us")
    last = answer("straighten", PLATE, "us")["results"]["pushes"]["items"][-1]
    assert last.endswith("to 0 in (0 mm)")
    found = record.results
    assert found["over_bend_to"] > 1.5 * found["over_bend_from"]
    assert found["left_at_most"] == pytest.approx(0.0, abs=1e-6)


def test_a_bar_of_20_by_300_mm() -> None:
    """Span 600 mm, 250 MPa: Mp 7.5 kN m, 50 kN, 3.75 mm to first yield, 5.6 mm back, 141 J."""
    bar = PressedBar(RECTANGLE, 0.02, flat_second_moment_m4(0.3, 0.02), 0.6, 250e6, 200e9)
    assert bar.plastic_moment_nm == pytest.approx(7_500)
    assert bar.hinge_force_n == pytest.approx(50_000)
    assert bar.first_travel_m == pytest.approx(0.00375)
    assert bar.springs_back_m(0.01) == pytest.approx(0.005625)
    assert bar.hinge_force_n * bar.springs_back_m(0.01) / 2 == pytest.approx(141, abs=0.5)


@pytest.mark.parametrize(("share", "stays"), [(1.1, 0.0015), (1.25, 0.027), (1.4, 0.147), (1.5, 0.722)])
def test_force_tells_nothing_until_it_runs(share: float, stays: float) -> None:
    assert RECTANGLE.stays(RECTANGLE.core_at_moment(share)) == pytest.approx(stays, abs=0.0005)


def test_what_is_pressed_flat_on_a_table_comes_back_whole() -> None:
    found = asked("straighten", {**PLATE, "room": "0"}, "us")
    assert found.results["left_at_most"] == pytest.approx(0.375 * INCH)
    assert "meets-the-table" in {reason.code for reason in found.reasons}
    assert "room-not-said" in codes(without(PLATE, "room"))
    assert asked("straighten", without(PLATE, "room"), "us").results["left_at_most"] is None


def test_chain_oil_and_table_hold_energy_too() -> None:
    record = asked("straighten", PULLED, "us")
    found = record.results
    push = 9_355.5 * LB
    assert found["in_oil"] == pytest.approx(
        (push / (0.7854 * 1.68**2 * INCH**2)) ** 2 * 0.5 * 9.46352946e-4 / (2 * 1.72e9), rel=1e-4
    )
    assert found["in_frame"] == pytest.approx(push * 0.125 * INCH / 2)
    assert found["in_chain"] > 0
    whole = sum(found[name] for name in ("in_piece", "in_chain", "in_oil", "in_frame"))
    assert found["stored_energy"] == pytest.approx(whole)
    assert len(record.citations) == 1
    assert record.verdict == "stop"
    assert "167%" in record.headline
    assert "chain-overloaded" not in codes({**PULLED, "chain_rating": "22,000 lb", "chain_wire": "5/8 in"})
    assert "chain-not-known" in codes(without(PULLED, "chain_rating"))
    small = asked("straighten", {**PULLED, "ram_capacity": "2 short tons"}, "us")
    assert small.results["in_frame"] == pytest.approx(4_000 * LB * 0.125 * INCH / 2)
    assert "ram-too-weak" in {reason.code for reason in small.reasons}


def test_a_round_bar() -> None:
    record = asked("straighten", ROD, "us")
    found = record.results
    assert found["yield_moment"] == pytest.approx(36_000 * 3.14159265 / 32 * LB * INCH)
    assert found["hinge_force"] / found["first_force"] == pytest.approx(1.698, abs=0.001)
    assert found["force_at_most"] == pytest.approx(1.5 * found["hinge_force"])
    assert "wide-plate" not in {reason.code for reason in record.reasons}


BARRED = {
    "lifting-part": ("part", "lifting-part", "stop"),
    "hardened-steel": ("steel", "hardened", "stop"),
    "tempered-steel": ("steel", "quenched-and-tempered", "stop"),
    "steel-not-known": ("steel", "unknown", "unknown"),
    "cracked": ("cracks", "some", "stop"),
    "cracks-not-looked-for": ("cracks", None, "unknown"),
    "straightened-too-often": ("straightened_before", "more", "stop"),
    "past-not-known": ("straightened_before", None, "unknown"),
    "bends-too-far-for-this": ("thickness", "0.03 in", "unknown"),
}


@pytest.mark.parametrize("code", BARRED)
def test_what_bars_the_work_leaves_no_figure(code: str) -> None:
    name, value, verdict = BARRED[code]
    given = without(PLATE, name) if value is None else {**PLATE, name: value}
    record = asked("straighten", given, "us")
    assert code in {reason.code for reason in record.reasons}
    assert record.verdict == verdict
    assert [key for key, one in record.results.items() if isinstance(one, float)] == []
    assert record.steps == ()
    assert record.figure is not None


def test_a_sharp_bend() -> None:
    sharp = {**PLATE, "bend": "sharp", "inside_radius": "2 in"}
    record = asked("straighten", sharp, "us")
    assert record.results["strain"] == pytest.approx(0.5 / 4.5)
    assert "sharp-bend" in {reason.code for reason in record.reasons}
    creased = asked("straighten", {**sharp, "inside_radius": "1 in"}, "us")
    assert creased.verdict == "stop"
    assert "no-stretch-left" in {reason.code for reason in creased.reasons}
    assert creased.results["first_force"] is None
    once = {**PLATE, "straightened_before": "once", "table_made": "rated"}
    assert "bends-once-more" in codes(once)
    assert "own-table" not in codes(once)
    assert "ram-not-known" in codes(without(PLATE, "ram_capacity"))
    assert asked("straighten", without(PLATE, "ram_capacity"), "us").verdict == "unknown"


def test_all_said_and_room_enough_is_worked_out() -> None:
    calm = {**PLATE, "width": "6 in", "table_made": "rated"}
    assert asked("straighten", calm, "us").verdict == "ok"


REFUSED = {
    "thickness": {"thickness": "8 in", "width": "6 in", "span": "100 in"},
    "span": {"span": "3 in", "bow": "0.1 in"},
    "bow": {"bow": "5 in"},
    "width": {"width": ""},
    "diameter": {"shape": "round-bar", "diameter": ""},
    "inside_radius": {"bend": "sharp"},
    "yield_strength": {"yield_strength": "100,000 psi"},
}


@pytest.mark.parametrize("name", REFUSED)
def test_refused_beside_the_box(name: str) -> None:
    with pytest.raises(Refused) as bad:
        answer("straighten", {**PLATE, **REFUSED[name]}, "us")
    assert [one.input for one in bad.value.errors] == [name]


@pytest.mark.parametrize(
    ("name", "more"), [("thickness", "3/4 in"), ("width", "30 in"), ("yield_strength", "50 ksi")]
)
def test_thicker_wider_and_stronger_is_never_easier(name: str, more: str) -> None:
    was = asked("straighten", PLATE, "us").results
    now = asked("straighten", {**PLATE, name: more}, "us").results
    for result in ("first_force", "hinge_force", "force_at_most", "in_piece", "plastic_moment"):
        assert now[result] >= was[result] * (1 - 1e-9), result


def test_farther_apart_and_stronger_springs_back_farther() -> None:
    was = asked("straighten", PLATE, "us").results
    for changed in ({"span": "50 in"}, {"yield_strength": "45,000 psi"}, {"bow": "0.5 in"}):
        now = asked("straighten", {**PLATE, **changed}, "us").results
        assert now["over_bend_from"] >= was["over_bend_from"]
        assert now["over_bend_to"] >= was["over_bend_to"]


def test_a_chain_is_not_rated_over_its_wire() -> None:
    """3/8 in wire with a rating of 100,000 lb let the whole ram pull."""
    with pytest.raises(Refused) as caught:
        asked("straighten", {**PULLED, "chain_rating": "100,000 lb"}, "us")
    assert [one.input for one in caught.value.errors] == ["chain_rating"]
    pressed = {**PULLED, "method": "press", "chain_rating": "100,000 lb"}
    assert asked("straighten", pressed, "us").verdict != "stop"
    assert "chain-overloaded" not in codes({**without(PULLED, "chain_wire"), "chain_rating": "100,000 lb"})


def rows(record: Any, name: str) -> list[list[str]]:
    return [list(row) for row in record["results"][name]["rows"]]


def test_pushes_past_the_springback_bend_it_the_other_way() -> None:
    """The last push but one is half way between the least springback and the greatest: the steel as given is past straight by
    what it was pushed too far, and the strongest keeps some of its bow.
    """
    found = asked("straighten", PLATE, "us").results
    told = rows(answer("straighten", PLATE, "us"), "pushes")
    assert len(told) == 6
    least, most = found["over_bend_from"], found["over_bend_to"]
    part = [least / 4, least / 2, 0.75 * least, least, (least + most) / 2, most]
    writer = Writer("us")
    assert [row[0] for row in told] == [writer.plain(Quantity(one, "length")) for one in part]
    assert told[3][1].startswith("0 in")
    assert all("other way" in row[1] for row in told[4:])
    assert not any("other way" in row[2] for row in told)
    assert not any(row[1].startswith(("-", "−")) for row in told)


def test_what_stays_after_a_force_by_hand() -> None:
    """1.25 My: core^2 = 0.5, g = 1.5 (1 - c) - (1 - c^3) / 6; travel (1 + 3 g) / 1.25^2 of first yield, of which 1.25 comes back."""
    found = asked("straighten", PLATE, "us").results
    told = rows(answer("straighten", PLATE, "us"), "forces")
    core = 0.5**0.5
    bend = 1.5 * (1 - core) - (1 - core**3) / 6
    stays = ((1 + 3 * bend) / 1.25**2 - 1.25) * found["first_travel"]
    writer = Writer("us")
    assert told[2][0] == writer.plain(Quantity(4_500 * LB, "force"))
    assert told[2][3] == writer.plain(Quantity(stays, "length"))


@pytest.mark.parametrize("lacking", ["ram_bore", "oil_volume"])
def test_oil_without_bore_or_volume_is_not_counted(lacking: str) -> None:
    record = answer("straighten", without(PULLED, lacking), "us")
    assert record["results"]["in_oil"]["value"] is None


@pytest.mark.parametrize("lacking", ["chain_wire", "chain_length"])
def test_a_chain_without_wire_or_length_is_not_counted(lacking: str) -> None:
    record = answer("straighten", without(PULLED, lacking), "us")
    assert record["results"]["in_chain"]["value"] is None


@pytest.mark.parametrize(("bow", "taken"), [("4 in", True), ("4.01 in", False)])
def test_a_bow_of_a_tenth_of_the_span_is_the_last(bow: str, taken: bool) -> None:
    if taken:
        assert answer("straighten", {**PLATE, "bow": bow}, "us")["ok"]
        return
    with pytest.raises(Refused) as caught:
        answer("straighten", {**PLATE, "bow": bow}, "us")
    assert [one.input for one in caught.value.errors] == ["bow"]


@pytest.mark.parametrize(("width", "wide"), [("20 in", False), ("20.1 in", True)])
def test_over_half_its_span_a_plate_is_wide(width: str, wide: bool) -> None:
    assert ("wide-plate" in codes({**PLATE, "width": width})) == wide
