"""Answers just under and just over the places where a formula or a rule changes, reckoned again by hand, in both systems of units.

Statics and textbook formulas alone; none of the book's own functions is called but the one road of an answer.
"""

from __future__ import annotations

import math
from typing import Any

import pytest

from calc.answering import worksheet
from calc.words.writer import UnitSystem
from tests.asking import asked

LB, G, IN, FT = 0.45359237, 9.80665, 0.0254, 0.3048
LBF, PSI = LB * G, LB * G / IN**2
Raw = dict[str, Any]
BOTH: tuple[UnitSystem, ...] = ("us", "si")


def results(name: str, given: Raw, units: UnitSystem = "us", **more: Any) -> dict[str, Any]:
    found: dict[str, Any] = asked(name, {**given, **more}, units).results
    return found


def verdict(name: str, given: Raw, **more: Any) -> str:
    return str(asked(name, {**given, **more}, "us").verdict)


def example(name: str, **more: Any) -> Raw:
    return {key: one for key, one in {**worksheet(name).example, **more}.items() if one is not None}


CHAIN: Raw = {
    "leg_kind": "chain",
    "grade": "80",
    "size": "3/8",
    "condition": "marked-good",
    "known_by": "angle",
}


@pytest.mark.parametrize("units", BOTH)
@pytest.mark.parametrize(
    ("angle", "says"), [(29.9, "stop"), (30.0, "caution"), (44.9, "caution"), (45.0, "ok"), (90.0, "ok")]
)
def test_two_legs_at_the_edges_of_their_bands(units: UnitSystem, angle: float, says: str) -> None:
    load = {"us": ("3,000 lb", 3000 * LB), "si": ("1360 kg", 1360.0)}[units]
    found = asked("sling-legs", {**CHAIN, "load": load[0], "legs": "2", "angle": f"{angle} deg"}, units)
    assert found.verdict == says
    sine, tangent = math.sin(math.radians(angle)), math.tan(math.radians(angle))
    assert found.results["leg_tension"] == pytest.approx(load[1] * G / 2 / sine)
    assert found.results["side_force"] == pytest.approx(load[1] * G / 2 / tangent, abs=1e-6)


@pytest.mark.parametrize("units", BOTH)
@pytest.mark.parametrize(("kind", "counted"), [("stiff", 2), ("flexible", 3)])
def test_a_stiff_load_hangs_on_two_of_its_four_legs(units: UnitSystem, kind: str, counted: int) -> None:
    given = {
        "load": "1000 kg",
        "legs": "4",
        "known_by": "height_and_spread",
        "height": "1 m",
        "spread": "2 m",
    }
    given |= {"load_kind": kind, "legs_counted": str(counted)}
    found = results("sling-legs", {**CHAIN, **given}, units)
    assert found["leg_tension"] == pytest.approx(1000 * G / counted * math.sqrt(2))


@pytest.mark.parametrize("units", BOTH)
@pytest.mark.parametrize(
    ("ratio", "left"), [(1.0, 0.5), (1.05, 0.51205), (4.0, 0.75), (7.0, 0.81102), (40.0, 0.81102)]
)
def test_rope_in_a_basket_by_what_it_bends_round(units: UnitSystem, ratio: float, left: float) -> None:
    given = example(
        "hitch", rating="1000 kg", object_diameter=f"{20 * ratio} mm", sling_diameter="20 mm", load="9 kg"
    )
    assert results("hitch", given, units)["capacity"] == pytest.approx(
        2000 * math.sin(math.pi / 3) * left, rel=1e-5
    )


@pytest.mark.parametrize(
    ("angle", "left"), [(85.0, 1.0), (84.9, 0.55), (60.0, 0.55), (59.9, 0.30), (45.0, 0.30), (44.9, None)]
)
def test_two_eyebolts_at_the_edges_of_their_angles(angle: float, left: float | None) -> None:
    """Legs at so many degrees from the horizontal pull each eyebolt 90 less that off its shank."""
    alike = {"condition": "marked-good", "legs": "2", "angle": f"{angle} deg"}
    items = [
        {"kind": "chain", "grade": "80", "rating": "20,000 lb", **alike},
        {"kind": "eyebolt", "rating": "5,000 lb", **alike},
    ]
    found = asked("load-path", {"load": "500 lb", "use": "plain", "items": items}, "us")
    if left is None:
        assert (found.verdict, found.results["capacity"]) == ("stop", None)
    else:
        held = 2 * 5000 * LB * left * math.sin(math.radians(angle))
        assert found.results["capacity"] == pytest.approx(held)


@pytest.mark.parametrize("units", BOTH)
@pytest.mark.parametrize("drop", [0.0, 0.001, 1.0, 12.0])
def test_a_drop_on_a_spring_from_no_height_to_a_foot(units: UnitSystem, drop: float) -> None:
    """Energy: F = W (1 + root(1 + 2 h / s)), twice the weight from no height at all."""
    given = {
        "weight": "1000 lb",
        "drop_height": f"{drop} in",
        "stretch": "0.1 in",
        "grade": "not-chain",
        "rating": "99,000 lb",
    }
    peak = results("drop-load", {**given, "condition": "marked-good"}, units)["peak_force"]
    assert peak == pytest.approx(1000 * LBF * (1 + math.sqrt(1 + 20 * drop)))


@pytest.mark.parametrize("units", BOTH)
def test_a_hoist_that_stops_at_once(units: UnitSystem) -> None:
    """A weight on a spring that moves with v: F = W + v root(k m), k = W / s."""
    given = example("moving-load", load="1000 kg", speed="10 m/min", give="5 mm", rating="3 t")
    peak = results("moving-load", given, units)["peak_force"]
    assert peak == pytest.approx(1000 * G + 10 / 60 * math.sqrt(1000 * G / 0.005 * 1000))


@pytest.mark.parametrize("units", BOTH)
def test_rams_that_pull_and_that_push_together(units: UnitSystem) -> None:
    pull = example("ram-force", direction="pull", bore="2 in", rod="1 in", pressure="3,000 psi")
    assert results("ram-force", pull, units)["force"] == pytest.approx(3000 * math.pi / 4 * 3 * LBF)
    push = example("ram-force", bore="50 mm", pressure="200 bar", rams="2")
    assert results("ram-force", push, units)["force"] == pytest.approx(2 * 200e5 * math.pi / 4 * 0.05**2)


@pytest.mark.parametrize("units", BOTH)
@pytest.mark.parametrize(("behind", "lifts"), [("1.39 ft", False), ("1.41 ft", True)])
def test_a_load_behind_the_axles_that_just_lifts_the_tongue(
    units: UnitSystem, behind: str, lifts: bool
) -> None:
    """3,000 lb behind axles that stand 14 ft from the ball take 300 lb off it at 1.4 ft."""
    loads = [{"weight": "3,000 lb", "stands": "behind", "distance": behind}]
    found = asked("trailer-load", example("trailer-load", loads=loads), units)
    assert found.results["tongue_weight"] == pytest.approx((300 - 3000 * float(behind[:4]) / 14) * LB)
    assert (found.verdict == "stop") == lifts


@pytest.mark.parametrize("units", BOTH)
@pytest.mark.parametrize(("slope", "held"), [(7.9, True), (8.0, False)])
def test_steel_on_steel_at_the_slope_where_it_slides(units: UnitSystem, slope: float, held: bool) -> None:
    """0.14 holds up to 7.97 degrees, 0.6 is to be overcome; two parts and two sheaves ask 1.2 / 2 of it, the anchor 1.6 times."""
    given: Raw = {"load": "1000 kg", "slope": f"{slope} deg", "way": "slides", "pair": "steel-on-steel"}
    given |= {"parts": "2", "sheaves": "2", "hauled_by": "other", "rating": "20 t"}
    found = results("move-it", given, units)
    sine, cosine = math.sin(math.radians(slope)), math.cos(math.radians(slope))
    start = 1000 * G * (sine + 0.6 * cosine)
    assert found["start_pull"] == pytest.approx(start)
    assert found["hauling_pull"] == pytest.approx(0.6 * start)
    assert found["anchor_pull"] == pytest.approx(1.6 * start)
    assert (found["hold_back"] == 0.0) == held


@pytest.mark.parametrize("units", BOTH)
@pytest.mark.parametrize(("line", "arm"), [("middle", 1.25), ("measured", 1.8)])
def test_a_hook_of_rectangular_section_with_its_load_in_the_middle_and_out_at_the_tip(
    units: UnitSystem, line: str, arm: float
) -> None:
    """Winkler: neutral radius h / ln(ro / ri), stress P / A + M (rn - r) / (A e r)."""
    given: Raw = {"shape": "rectangle", "depth": "1 in", "inner_width": "0.5 in", "inner_radius": "0.75 in"}
    given |= {"load": "1,000 lb", "load_line": line, "bead_at": "none"} | (
        {"arm": "1.8 in"} if line == "measured" else {}
    )
    found = results("hook-stress", given, units)
    neutral = 1 / math.log(1.75 / 0.75)
    for name, radius in (("inner_stress", 0.75), ("outer_stress", 1.75)):
        bending = 1000 * arm * (neutral - radius) / (0.5 * (1.25 - neutral) * radius)
        assert found[name] == pytest.approx((1000 / 0.5 + bending) * PSI, rel=1e-6)


@pytest.mark.parametrize("units", BOTH)
def test_a_bent_round_bar_yields_and_hinges_by_hand(units: UnitSystem) -> None:
    given = example(
        "straighten",
        shape="round-bar",
        diameter="1 in",
        span="20 in",
        bow="1/4 in",
        width=None,
        thickness=None,
    )
    found = results("straighten", given, units)
    assert found["yield_moment"] == pytest.approx(36_000 * math.pi / 32 * LBF * IN)
    assert found["plastic_moment"] == pytest.approx(36_000 / 6 * LBF * IN)
    assert found["first_force"] == pytest.approx(4 * 36_000 * math.pi / 32 / 20 * LBF)


@pytest.mark.parametrize(
    ("name", "box", "fits", "out"),
    [
        ("chain-check", "thickness_now", "0.3544 in", "0.3543 in"),
        ("hook-check", "throat_now", "1.2179 in", "1.218 in"),
        ("hook-check", "section_now", "0.829 in", "0.828 in"),
        ("shackle-check", "body_now", "0.6919 in", "0.6918 in"),
    ],
)
def test_wear_just_inside_and_at_the_limit(name: str, box: str, fits: str, out: str) -> None:
    """3/8 in chain is 10 mm wire and may lose a tenth; a throat of 1.16 in may open by 5 percent, a bowl of 0.92 in may lose a tenth, and a body of
    0.752 in 8 percent.
    """
    base = example(name, inspected_on="today") | ({"throat_now": "1.17 in"} if name == "hook-check" else {})
    assert verdict(name, base, **{box: fits}) in ("ok", "caution")
    assert verdict(name, base, **{box: out}) == "stop"
