"""lifting-lug: statics of the foot and the weld, monotonicity, refusals, words."""

from __future__ import annotations

import dataclasses
import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.lifting.lifting_lug import WORKSHEET
from calc.lifting.lug_holding import (
    OwnPin,
    Wall,
    least_fillet_m,
    pin_bending_n,
    pin_shear_n,
    wall_folds_n,
    wall_holds_n,
    wall_shears_n,
)
from calc.lifting.lug_strength import (
    Lug,
    OwnStresses,
    bearing_n,
    double_plane_n,
    foot_bending_n,
    foot_load,
    foot_shear_n,
    gross_section_n,
    net_tension_n,
    own_ways_n,
    seen_along,
    single_plane_n,
    tear_out_n,
    throat_m,
    weld_allowable_pa,
    weld_n,
)
from tests.asking import asked

LUG = Lug(0.021, 0.027, 0.023, 0.028, 0.031, 0.062, 0.007, 0.081, 250e6, 400e6, 482e6, 3.0, round_end=False)


def run(**more: str) -> dict[str, Any]:
    return answer("lifting-lug", {**WORKSHEET.example, **more}, "us")


def texts(record: dict[str, Any]) -> str:
    return " ".join(caution["text"] for caution in record["cautions"])


def test_straight_pull_is_stress_times_area() -> None:
    straight = foot_load(0.0, 0.0)
    assert foot_bending_n(LUG, straight) == pytest.approx(250e6 / 3 * 0.021 * 0.081)
    assert weld_n(LUG, straight) == pytest.approx(0.6 * 482e6 / 3.6 * 2 * 0.081 * 0.007 / 2**0.5)
    assert bearing_n(LUG) == pytest.approx(1.25 * 250e6 / 3 * 0.023 * 0.021)


def test_level_pull_bends_as_a_cantilever() -> None:
    # M / Z with Z = t w^2 / 6 in the plane and w t^2 / 6 across it.
    in_plane = foot_bending_n(LUG, foot_load(90.0, 0.0))
    assert in_plane == pytest.approx(250e6 / 3 * 0.021 * 0.081**2 / 6 / 0.062, rel=1e-9)
    across = foot_bending_n(LUG, foot_load(0.0, 90.0))
    assert across == pytest.approx(250e6 / 3 * 0.081 * 0.021**2 / 6 / 0.062, rel=1e-9)


def test_foot_is_no_wider_than_the_plate() -> None:
    assert dataclasses.replace(LUG, weld_length_m=0.2).foot_width_m == pytest.approx(0.083)


def test_tight_and_loose_pin() -> None:
    tight = dataclasses.replace(LUG, pin_m=LUG.hole_m)
    # With no play Cr is one; the counted side is the whole 28 mm here.
    assert net_tension_n(tight) == pytest.approx(
        400e6 / 3.6 * 2 * 0.021 * 0.6 * 0.028 * 1.6 * (27 / 28) ** 0.5
    )
    assert net_tension_n(LUG) < net_tension_n(tight)


def test_a_thin_plate_counts_four_thicknesses() -> None:
    thin = dataclasses.replace(LUG, thickness_m=0.002, pin_m=LUG.hole_m)
    assert net_tension_n(thin) == pytest.approx(400e6 / 3.6 * 2 * 0.002 * 0.008)


def test_a_narrow_side_counts_whole() -> None:
    narrow = dataclasses.replace(LUG, side_edge_m=0.01, pin_m=LUG.hole_m)
    assert net_tension_n(narrow) == pytest.approx(400e6 / 3.6 * 2 * 0.021 * 0.01)


def test_a_round_end_shears_out_sooner() -> None:
    assert double_plane_n(dataclasses.replace(LUG, round_end=True)) < double_plane_n(LUG)
    assert tear_out_n(LUG) == min(single_plane_n(LUG), double_plane_n(LUG))


@given(
    st.sampled_from(["thickness_m", "end_edge_m", "weld_leg_m", "weld_length_m", "tensile_pa"]),
    st.floats(1, 3),
)
def test_more_steel_never_holds_less(name: str, factor: float) -> None:
    bigger = dataclasses.replace(LUG, **{name: getattr(LUG, name) * factor})
    pull = foot_load(20.0, 10.0)
    for way in (net_tension_n, single_plane_n, double_plane_n, bearing_n):
        assert way(bigger) >= way(LUG) * (1 - 1e-12)
    assert foot_bending_n(bigger, pull) >= foot_bending_n(LUG, pull) * (1 - 1e-12)
    assert weld_n(bigger, pull) >= weld_n(LUG, pull) * (1 - 1e-12)


@given(st.floats(1, 3))
def test_the_factor_divides_everything(ratio: float) -> None:
    safer = dataclasses.replace(LUG, design_factor=3.0 * ratio)
    pull = foot_load(20.0, 10.0)
    for one, other in (
        (tear_out_n(LUG), tear_out_n(safer)), (weld_n(LUG, pull), weld_n(safer, pull)),
        (foot_bending_n(LUG, pull), foot_bending_n(safer, pull)),
    ):  # fmt: skip
        assert one == pytest.approx(other * ratio)


def test_the_weakest_way_is_named_and_never_green() -> None:
    found = run()
    ways = [
        found["results"][way]["value"]
        for way in ("net_tension", "tear_out", "bearing", "out_of_plane", "weld")
    ]
    assert found["results"]["capacity_estimate"]["value"] == min(ways)
    assert found["verdict"] == "ok"
    assert found["verdict_words"] == "Worked out"
    assert found["big"]["key"] == "governing"
    assert "not a rating" in found["headline"]
    assert "qualified person" in texts(found)
    over = run(load="6000 lb")
    assert over["verdict"] == "stop"
    assert over["headline"].startswith("Do not lift with this.")


@pytest.mark.parametrize(
    "left_out",
    [
        "yield_strength",
        "tensile_strength",
        "weld_strength",
        "angle_in_plane",
        "angle_out_of_plane",
        "design_factor",
    ],
)
def test_what_the_strength_hangs_on_is_asked(left_out: str) -> None:
    with pytest.raises(Refused, match=left_out):
        run(**{left_out: ""})


def test_cautions_fit() -> None:
    assert "across its plane" in texts(run(angle_out_of_plane="5"))
    assert "loose in the hole" in texts(run(pin="3/4 in"))
    assert "factor under 3" in texts(run(design_factor="2.5"))
    plain = texts(run())
    assert not any(words in plain for words in ("across its plane", "loose in the hole", "factor under 3"))


def test_square_end_is_drawn_square() -> None:
    assert run(end_shape="square")["figure"]["svg"] != run()["figure"]["svg"]


@pytest.mark.parametrize(
    ("change", "where"),
    [({"pin": "1 in"}, "pin"), ({"yield_strength": "60000 psi"}, "yield_strength"), ({"height": "0.4 in"}, "height"),
     ({"thickness": "0"}, "thickness"), ({"hole": "5 lb"}, "hole"), ({"design_factor": "1.9"}, "design_factor"),
     ({"design_factor": "10.1"}, "design_factor"), ({"angle_in_plane": "91"}, "angle_in_plane"),
     ({"angle_out_of_plane": "-1"}, "angle_out_of_plane"), ({"load": ""}, "load"), ({"weld_leg": "text"}, "weld_leg"),
     ({"weld_length": "201 in"}, "weld_length")],
)  # fmt: skip
def test_refusals_name_their_box(change: dict[str, str], where: str) -> None:
    with pytest.raises(Refused) as caught:
        run(**change)
    assert [error.input for error in caught.value.errors] == [where]


def test_pin_hole_formulas_give_the_numbers_of_a_second_reckoning() -> None:
    # Plate 20, radius 40 to a square end and side, hole 26, pin 22 mm, Fy 250, Fu 400 MPa, factor 3: tension 96.5, single
    # plane 81.0, double plane 94.7, bearing 45.8 kN, reckoned apart from this code from the same recalled formulas.
    lug = Lug(0.02, 0.026, 0.022, 0.027, 0.027, 0.06, 0.008, 0.08, 250e6, 400e6, 482e6, 3.0, round_end=False)
    ways = (net_tension_n(lug), single_plane_n(lug), double_plane_n(lug), bearing_n(lug))
    assert [round(way / 1000, 1) for way in ways] == [96.5, 81.0, 94.7, 45.8]


def test_a_round_end_takes_the_height_of_its_arc_off_each_plane() -> None:
    # A pin that fills the hole: planes 55 degrees off, 0.02 sin 55 = 16.383 mm beside the middle; the end's arc of radius
    # 50 mm is 50 - sqrt(50^2 - 16.383^2) = 2.7602 mm lower there.
    square = Lug(0.02, 0.04, 0.04, 0.03, 0.03, 0.06, 0.008, 0.08, 250e6, 400e6, 482e6, 3.0, round_end=False)
    less = double_plane_n(square) - double_plane_n(dataclasses.replace(square, round_end=True))
    assert less == pytest.approx(0.70 * 400e6 / 3.6 * 2 * 0.0027602 * 0.02, rel=1e-4)


@pytest.mark.parametrize(
    ("box", "typed", "said"),
    [
        ("weld_leg", "4 in", "thicker than the plate, 5/8 in"),
        ("weld_length", "100 in", "longer than the plate is wide"),
    ],
)
def test_a_weld_that_the_plate_cannot_bear_is_refused(box: str, typed: str, said: str) -> None:
    """A leg of 4 in on 5/8 in plate held 74,300 lb, and runs of 100 in on a lug of 3-3/16 in 493,000 lb."""
    with pytest.raises(Refused, match=said):
        answer("lifting-lug", {**WORKSHEET.example, box: typed})


THREE_QUARTER = {
    **WORKSHEET.example, "load": "2,800 lb", "thickness": "3/4 in", "hole": "15/16 in", "pin": "7/8 in",
    "side_edge": "1-1/4 in", "end_edge": "1-1/4 in", "height": "1-3/4 in", "weld_leg": "1/4 in", "weld_length": "3 in",
    "angle_in_plane": "15°", "pin_is": "own", "jaw": "5/8 in", "between_jaws": "7/8 in", "pin_yield": "60,000 psi",
    "wall_thickness": "1/2 in", "wall_span": "8 in",
}  # fmt: skip


def pounds(record: dict[str, Any], name: str) -> float:
    return float(record["results"][name]["value"])


def test_a_three_quarter_inch_lug_with_six_inches_of_fillet_by_hand() -> None:
    """Each line by a pencil: Fy 36 ksi, Fu 58 ksi, E70, factor 3, 15 degrees in the plane."""
    found = run(**THREE_QUARTER)
    along, level = math.cos(math.radians(15)), math.sin(math.radians(15))
    assert pounds(found, "gross_section") == pytest.approx(12_000 * 3.4375 * 0.75)
    assert pounds(found, "bearing") == pytest.approx(1.25 * 12_000 * 0.875 * 0.75)
    foot = along / (3 * 0.75) + level * 1.75 / (0.75 * 3**2 / 6)
    assert pounds(found, "out_of_plane") == pytest.approx(12_000 / foot)
    cut = math.hypot(along, 3**0.5 * 1.5 * level) / (3 * 0.75)
    assert pounds(found, "foot_shear") == pytest.approx(12_000 / cut)
    # weld: 6 in of throat 0.177 in, 42,000 / 3.6 psi on it; bending modulus of two lines L^2 / 3 = 3 in2
    line = math.hypot(along / 6 + level * 1.75 / 3, level / 6)
    assert pounds(found, "weld") == pytest.approx(42_000 / 3.6 * 0.25 / 2**0.5 / line)
    # pin: two faces of 0.601 in2 at 3/4 of 60,000 / (3 root 3) psi; arm 3/4 - 3/16 in, modulus 0.0658 in3
    pin = min(
        2 * 0.75 * 60_000 / (3 * 3**0.5) * math.pi / 4 * 0.875**2,
        2 * 20_000 * math.pi / 32 * 0.875**3 / (0.75 - 0.1875),
    )
    assert pounds(found, "pin_holds") == pytest.approx(pin)
    # wall: 9,000 lb straight out for each unit of L / B + 2 root(1 - t / B); 4 x 1.75 / 3 for the level part
    straight = (along + 4 * level * 1.75 / 3) / (36_000 * 0.25 * (3 / 8 + 2 * (1 - 0.75 / 8) ** 0.5))
    assert pounds(found, "wall_holds") == pytest.approx(1 / (3 * straight))
    first = min(
        pounds(found, name) for name in ("net_tension", "tear_out", "bearing", "out_of_plane", "weld")
    )
    assert pounds(found, "capacity_estimate") == pytest.approx(first)
    assert pounds(found, "with_pin_and_wall") == pytest.approx(
        min(first, pounds(found, "pin_holds"), pounds(found, "wall_holds"))
    )
    assert (
        "the pin" in found["results"]["governing"]["text"] or "wall" in found["results"]["governing"]["text"]
    )


def test_pin_and_wall_lead_where_they_are_weaker() -> None:
    soft = run(**{**THREE_QUARTER, "pin_yield": "20,000 psi"})
    assert soft["results"]["governing"]["text"] == "the pin"
    thin = run(**{**THREE_QUARTER, "wall_thickness": "1/8 in"})
    assert "wall" in thin["results"]["governing"]["text"]
    assert thin["headline"].startswith("Do not lift with this.")
    for left in ({"pin_is": ""}, {"welded_to": ""}):
        less = run(**{**THREE_QUARTER, **left})
        assert less["results"]["with_pin_and_wall"]["value"] is None
        assert less["verdict"] == "unknown"
    assert run(pin_is="marked")["results"]["with_pin_and_wall"]["value"] is not None
    assert "was not checked" in run(pin_is="")["headline"]


OWN = {
    "own_plate": "9,000 psi",
    "own_shear": "6,000 psi",
    "own_bearing": "12,000 psi",
    "own_weld": "5,000 psi",
}


def test_own_stresses_count_where_they_are_smaller_and_never_raise() -> None:
    own = run(**OWN)
    assert own["results"]["own_allows"]["value"] == own["results"]["capacity_estimate"]["value"]
    assert own["results"]["governing"]["text"] == "the weld, by your own rule"
    assert pounds(own, "own_allows") == pytest.approx(pounds(own, "weld") * 5000 / (42_000 / 3.6))
    high = run(**dict.fromkeys(OWN, "100,000 psi"))
    assert high["results"]["capacity_estimate"]["value"] == run()["results"]["capacity_estimate"]["value"]
    assert {"own-foot", "own-tension"} <= set(
        own_ways_n(LUG, LUG, foot_load(0, 0), OwnStresses(1e8, 1e8, 1e8, 1e8))
    )
    for box in OWN:
        with pytest.raises(Refused, match=box):
            run(**{**OWN, box: ""})


@given(
    st.sampled_from(["thickness_m", "yield_pa", "span_m"]),
    st.floats(1, 3),
    st.floats(0, 80),
    st.floats(0, 80),
)
def test_a_better_wall_never_holds_less(name: str, factor: float, lean: float, out: float) -> None:
    wall, pull = Wall(0.012, 0.2, 250e6), foot_load(lean, out)
    bigger = dataclasses.replace(wall, **{name: getattr(wall, name) * factor})
    if name != "span_m":
        assert wall_holds_n(bigger, LUG, pull) >= wall_holds_n(wall, LUG, pull) * (1 - 1e-12)
    assert wall_holds_n(wall, LUG, pull) == min(wall_folds_n(wall, LUG, pull), wall_shears_n(wall, LUG))


@given(st.floats(1, 3))
def test_a_thicker_pin_and_narrower_jaws_never_hold_less(factor: float) -> None:
    pin = OwnPin(0.02, 0.01, 0.09, 0.02, 300e6)
    for bigger in (
        dataclasses.replace(pin, diameter_m=0.02 * factor),
        dataclasses.replace(pin, between_jaws_m=0.09 / factor),
        dataclasses.replace(pin, yield_pa=300e6 * factor),
    ):
        assert pin_bending_n(bigger, 3.0) >= pin_bending_n(pin, 3.0) * (1 - 1e-12)
        assert pin_shear_n(bigger, 3.0) >= pin_shear_n(pin, 3.0) * (1 - 1e-12)


@given(st.floats(0, 90), st.floats(0, 90))
def test_a_weld_all_round_never_holds_less(lean: float, out: float) -> None:
    pull = foot_load(lean, out)
    assert weld_n(dataclasses.replace(LUG, all_round=True), pull) >= weld_n(LUG, pull)
    assert foot_shear_n(LUG, pull) > 0


def test_the_whole_width_stretches_after_it_tears_only_where_it_is_narrow() -> None:
    assert gross_section_n(LUG) == pytest.approx(250e6 / 3 * 0.083 * 0.021)


def test_the_weakest_part_is_lit() -> None:
    drawings = {
        run(**more)["figure"]["svg"]
        for more in (
            {}, {"weld_leg": "5/8 in"}, {"side_edge": "0.2 in", "weld_length": "1.3 in", "angle_in_plane": "0"}, OWN,
            {**THREE_QUARTER, "wall_thickness": "1/8 in"}, THREE_QUARTER, {"load": "60,000 lb"},
        )
    }  # fmt: skip
    assert len(drawings) == 7
    assert "weakest part is highlighted" in run()["figure"]["caption"]


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"between_jaws": "0.7 in"}, "between_jaws"),
        ({"jaw": ""}, "jaw"),
        ({"wall_span": "3/4 in"}, "wall_span"),
        ({"wall_thickness": ""}, "wall_thickness"),
        ({"wall_yield": ""}, "wall_yield"),
    ],
)
def test_pin_and_wall_are_asked_whole(change: dict[str, str], where: str) -> None:
    with pytest.raises(Refused) as caught:
        run(**{**THREE_QUARTER, **change})
    assert [error.input for error in caught.value.errors] == [where]


def test_a_level_pull_finds_the_side_of_the_plate() -> None:
    """Pulled level, the pin tears out through the side, and the end stands beside the hole."""
    narrow = dataclasses.replace(LUG, side_edge_m=LUG.end_edge_m / 2)
    level = seen_along(narrow, 90.0)
    assert level.end_edge_m == pytest.approx(narrow.side_edge_m)
    assert level.side_edge_m == pytest.approx(narrow.side_edge_m)
    low = dataclasses.replace(LUG, end_edge_m=LUG.side_edge_m / 2, round_end=False)
    assert seen_along(low, 90.0).side_edge_m == pytest.approx(low.end_edge_m)
    assert seen_along(narrow, 0.0) == narrow
    for lug in (narrow, low, LUG):
        for way in (net_tension_n, tear_out_n):
            found = [way(seen_along(lug, lean)) for lean in (1.0, 20.0, 45.0, 60.0, 80.0, 90.0)]
            assert max(found) <= way(lug)
            assert found == pytest.approx(sorted(found, reverse=True))


def test_a_strong_rod_does_not_strengthen_the_plate() -> None:
    """Fusion along the leg: a rod over root 2 times the plate's tensile strength adds nothing."""
    rods = [dataclasses.replace(LUG, weld_tensile_pa=strong * LUG.tensile_pa) for strong in (1.2, 1.5, 2.0)]
    allowed = [weld_allowable_pa(rod) for rod in rods]
    assert allowed[0] < allowed[1] == allowed[2]
    assert allowed[2] * throat_m(0.01) == pytest.approx(
        0.6 * LUG.tensile_pa / (1.2 * LUG.design_factor) * 0.01
    )


def test_a_hard_plate_is_said_to_lose_by_the_weld() -> None:
    hard = run(yield_strength="100,000 psi", tensile_strength="110,000 psi")
    assert any("softens or cracks" in one["text"] for one in hard["cautions"])
    assert hard["verdict"] == "caution"


def test_a_wall_is_cut_through_by_hand() -> None:
    """2 L T of a wall of 1/4 in under 3 in of foot at 36 ksi over root 3 and a factor of 3: 10,392 lb."""
    inch, psi, lb = 0.0254, 6894.757293168361, 4.4482216152605
    wall = Wall(0.25 * inch, 8 * inch, 36_000 * psi)
    lug = dataclasses.replace(LUG, weld_length_m=3 * inch, design_factor=3.0)
    assert wall_shears_n(wall, lug) / lb == pytest.approx(2 * 3 * 0.25 * 36_000 / 3**0.5 / 3, rel=1e-9)
    assert wall_shears_n(wall, lug) / lb == pytest.approx(10_392, abs=1)


def line(record: dict[str, Any], title: str) -> Any:
    return next(one for one in record["steps"] if one["label"].startswith(title))


def test_the_stresses_in_the_working_by_hand() -> None:
    """The example: 2,300 lb at 30 degrees, 1-3/4 in over the foot, welded over 3 in and 5/8 in thick; fillet 5/16 in.
    Foot: 2,300 (0.866 / 1.875 + 0.5 x 1.75 x 6 / (0.625 x 3^2)); sheared: 12,000 x 2,300 / 14,409; on the throat
    0.2210 in: 2,300 x hypot(0.866 / 6 + 0.5 x 1.75 / 3, 0.5 / 6) / 0.2210.
    """
    found = run()
    foot = 2300 * (0.8660254 / (3 * 0.625) + 0.5 * 1.75 * 6 / (0.625 * 3**2))
    assert f"{round(foot):,} psi" in line(found, "Bends at the foot")["numbers"]
    throat = 0.3125 / math.sqrt(2)
    weld = 2300 * math.hypot(0.8660254 / 6 + 0.5 * 1.75 / 3, 0.5 / 6) / throat
    assert f"{round(weld):,}"[:4] in line(found, "Weld")["numbers"]
    cut = 12_000 * 2300 / (found["results"]["foot_shear"]["value"])
    assert f"{round(cut):,}"[:4] in line(found, "Shears at the foot")["numbers"]


def test_runs_round_the_ends_make_the_weld_hold_more_by_hand() -> None:
    """Round the ends come 2 t of length and L t of modulus: 0.866 / 7.25 + 0.5 x 1.75 / (3 + 0.625 x 3) for 0.866 / 6 + 0.875 / 3."""
    two = math.hypot(0.8660254 / 6 + 0.875 / 3, 0.5 / 6)
    around = math.hypot(0.8660254 / 7.25 + 0.875 / (3 + 1.875), 0.5 / 7.25)
    held = [run(weld_runs=one)["results"]["weld"]["value"] for one in ("two", "around")]
    assert held[1] / held[0] == pytest.approx(two / around, rel=1e-3)


@pytest.mark.parametrize(
    ("within", "over", "words"),
    [
        ({"side_edge": "2.49 in"}, {"side_edge": "2.51 in"}, "dish"),
        ({"pin": "0.8 in", "thickness": "0.41 in"}, {"pin": "0.8 in", "thickness": "0.39 in"}, "thin for"),
        ({"angle_out_of_plane": "0"}, {"angle_out_of_plane": "0.5"}, "across its plane"),
    ],
)
def test_cautions_of_plate_and_hole_begin_where_they_should(
    within: dict[str, str], over: dict[str, str], words: str
) -> None:
    small = {"weld_leg": "1/4 in", "load": "10 lb"}
    codes = [
        {one.code for one in asked("lifting-lug", {**WORKSHEET.example, **small, **more}, "us").reasons}
        for more in (within, over)
    ]
    assert len(codes[1] - codes[0]) == 1, words


def test_what_was_not_checked_is_unknown_and_what_was_is_not() -> None:
    assert run()["verdict"] == "ok"
    assert run(pin_is="not-checked")["verdict"] == "unknown"
    assert run(welded_to="not-checked")["verdict"] == "unknown"
    own = {"jaw": "1/2 in", "between_jaws": "0.7 in", "pin_yield": "36,000 psi"}
    mine = asked("lifting-lug", {**WORKSHEET.example, "pin_is": "own", **own}, "us")
    assert "pin-of-your-own" in {one.code for one in mine.reasons}
    assert mine.results["pin_holds"] == pytest.approx(
        2 * 36_000 / 3 * math.pi / 32 * 0.875**3 / ((0.7 + 0.5) / 2 - 0.625 / 4) * 4.4482216, rel=1e-6
    )


@pytest.mark.parametrize(
    ("thick_in", "leg_in"),
    [
        (0.1, 1 / 8),
        (0.25, 1 / 8),
        (0.2505, 3 / 16),
        (0.5, 3 / 16),
        (0.501, 1 / 4),
        (0.75, 1 / 4),
        (0.7515, 5 / 16),
        (4.0, 5 / 16),
    ],
)
def test_the_least_fillet_changes_at_each_printed_thickness(thick_in: float, leg_in: float) -> None:
    """AISC 360-10, Table J2.4: to 1/4 in inclusive 1/8, over 1/4 to 1/2 3/16, over 1/2 to 3/4 1/4, over 3/4 in 5/16."""
    assert least_fillet_m(thick_in * 0.0254) == pytest.approx(leg_in * 0.0254)


def test_a_plate_far_stronger_than_its_yield_is_a_slip() -> None:
    example = dict(WORKSHEET.example)
    assert answer("lifting-lug", {**example, "tensile_strength": "108,000 psi"}, "us")["verdict"] == "ok"
    with pytest.raises(Refused) as refused:
        answer("lifting-lug", {**example, "tensile_strength": "108,500 psi"}, "us")
    assert [error.input for error in refused.value.errors] == ["tensile_strength"]
