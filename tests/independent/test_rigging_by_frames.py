"""Rigging as a frame of bars: hanging-load, sling-legs and beam-lift against PyNite, a finite-element frame library.

A load hangs in PyNite as stiff bars from its balance point to its picks, on legs that are bars with pinned ends, from
a fixed hook. So far a hung load can swing: the freedoms that no leg holds (swinging two ways, turning about the
upright, and rolling about the picks of two legs) are held at the balance point, and the test asks that the holds
carry nothing. That is the balance of forces and moments, found by a library that knows nothing of ours.
"""

from __future__ import annotations

import math
from itertools import combinations
from typing import Any

import numpy as np
import pytest
from Pynite import FEModel3D

from calc.answering import answer
from calc.lifting.beams import Beam, Ends
from calc.lifting.chain_spring import chain_stiffness_n
from calc.lifting.hanging import resting_places, springy_rest
from calc.lifting.leg_geometry import leg_tension_n, side_force_n

Array = Any
STEEL_PA = 200e9
COMBO = "Combo 1"


def frame(leg_stiffness_n: list[float]) -> Any:
    """An empty model with one section for each leg (EA as given) and one for the load, stiff enough to be rigid."""
    model = FEModel3D()
    model.add_material("steel", STEEL_PA, 80e9, 0.3, 1.0)
    stiff = 1e4 * max(leg_stiffness_n) / STEEL_PA
    model.add_section("load", stiff, stiff, stiff, stiff)
    for leg, stiffness_n in enumerate(leg_stiffness_n):
        # A thin bar in bending; its ends are released all the same.
        model.add_section(f"leg {leg}", stiffness_n / STEEL_PA, 1e-9, 1e-9, 1e-9)
    return model


def add_legs(model: Any, count: int) -> None:
    for leg in range(count):
        name = f"leg {leg}"
        model.add_member(name, "hook", f"pick {leg}", "steel", name, tension_only=True)
        model.def_releases(name, Ryi=True, Rzi=True, Ryj=True, Rzj=True, Rxj=True)


def pulls(model: Any, count: int) -> list[float]:
    """Pull in each leg [N]; PyNite counts compression as positive. Zero where PyNite took a leg out as slack."""
    legs = [model.members[f"leg {leg}"] for leg in range(count)]
    return [-leg.max_axial(COMBO) if leg.active[COMBO] else 0.0 for leg in legs]


def hung(
    picks: list[tuple[float, float, float]], hook: tuple[float, float, float], centre: tuple[float, float, float],
    weight_n: float, leg_stiffness_n: list[float],
) -> tuple[list[float], dict[str, float]]:  # fmt: skip
    """Pull in each leg by PyNite at a given attitude, and what the holds carry. PyNite's Y stands upright."""
    points = np.array(picks)
    up = np.array(hook) - np.array(centre)
    up /= np.linalg.norm(up)
    # X goes level along the first two picks, so that a load on two legs rolls about X.
    level = points[1] - points[0]
    level = level - (level @ up) * up
    level /= np.linalg.norm(level)
    axes = np.array([level, up, np.cross(level, up)])
    model = frame(leg_stiffness_n)
    for name, point in [("hook", hook), ("centre", centre), *((f"pick {i}", p) for i, p in enumerate(picks))]:
        x, y, z = axes @ np.array(point)
        model.add_node(name, float(x), float(y), float(z))
    model.def_support("hook", *([True] * 6))
    model.def_support("centre", True, False, True, len(picks) == 2, True, False)
    for i in range(len(picks)):
        model.add_member(f"load {i}", "centre", f"pick {i}", "steel", "load")
    add_legs(model, len(picks))
    model.add_node_load("centre", "FY", -weight_n)
    model.analyze()
    node = model.nodes["centre"]
    holds = {
        "across": node.RxnFX[COMBO],
        "along": node.RxnFZ[COMBO],
        "turn": node.RxnMY[COMBO],
        "roll": node.RxnMX[COMBO],
    }
    return pulls(model, len(picks)), holds


DETERMINATE = [
    ("two uneven legs", [(1.03, 0.0, 0.11), (-0.92, 0.0, 0.0)], [2.13, 1.71], (0.21, 0.0, -0.53)),
    ("two legs, balance point to one side", [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [2.0, 1.9], (0.1, 0.3, -0.5)),
    ("three legs on a diesel", [(0.0, 0.0, 0.61), (0.0, 0.46, 0.61), (0.97, 0.23, 0.69)], [1.07, 1.09, 1.16],
     (0.33, 0.21, 0.25)),
    ("three very uneven legs", [(1.4, 0.2, 0.1), (-0.7, 0.9, 0.0), (-0.6, -1.1, 0.2)], [2.9, 2.1, 1.7],
     (0.12, -0.07, -0.31)),
]  # fmt: skip


@pytest.mark.parametrize("case", DETERMINATE, ids=lambda case: case[0])
def test_tight_legs_that_statics_alone_decides(case: Any) -> None:
    _, picks, lengths, centre = case
    weight_n = 6430.0
    upright = [r for r in resting_places(picks, lengths, centre) if r.hook_is_over(picks, centre)]
    assert len(upright[0].touching) == len(picks)
    found, holds = hung(picks, upright[0].hook, centre, weight_n, [3e7] * len(picks))
    assert list(upright[0].tensions_n(weight_n, lengths)) == pytest.approx(found, rel=1e-6)
    assert list(holds.values()) == pytest.approx([0.0] * 4, abs=1e-5 * weight_n)


@pytest.mark.parametrize(
    ("lengths", "centre", "carrying"),
    [
        ([2.31, 2.24, 2.33, 2.44], (0.13, 0.08, -0.4), 2),
        ([2.31, 2.36, 2.33, 2.51], (-0.31, 0.06, -0.4), 3),
        ([2.24, 2.36, 2.33, 2.41], (0.22, 0.31, -0.4), 3),
    ],
)
def test_four_uneven_legs_hang_on_the_tight_ones_alone(
    lengths: list[float], centre: tuple[float, float, float], carrying: int
) -> None:
    # Calc says which legs carry. The straight way from hook to pick is shorter than each other leg, so it is slack;
    # and the tight ones alone balance the load in PyNite.
    picks = [(1.1, 0.9, 0.0), (-1.1, 0.9, 0.05), (-1.1, -0.9, 0.0), (1.1, -0.9, -0.04)]
    weight_n = 9120.0
    rest = next(r for r in resting_places(picks, lengths, centre) if r.hook_is_over(picks, centre))
    ours = rest.tensions_n(weight_n, lengths)
    tight = [leg for leg in range(4) if ours[leg] > 0]
    assert len(tight) == carrying
    for slack in set(range(4)) - set(tight):
        assert math.dist(rest.hook, picks[slack]) < lengths[slack] - 0.002
    found, holds = hung([picks[leg] for leg in tight], rest.hook, centre, weight_n, [3e7] * carrying)
    assert [ours[leg] for leg in tight] == pytest.approx(found, rel=1e-6)
    assert list(holds.values()) == pytest.approx([0.0] * 4, abs=1e-5 * weight_n)


STATICALLY_INDETERMINATE = [
    ("square tray, hook over its middle", [(0.6, 0.6, 0.0), (-0.6, 0.6, 0.0), (-0.6, -0.6, 0.0), (0.6, -0.6, 0.0)],
     (0.0, 0.0, 2.0), -0.3, 0),
    ("picks at unlike places", [(0.9, 0.5, 0.0), (-0.7, 0.6, 0.1), (-0.8, -0.7, 0.05), (0.6, -0.9, 0.0)],
     (0.05, -0.02, 1.9), -0.4, 0),
    ("five legs", [(0.9, 0.5, 0.0), (-0.7, 0.6, 0.1), (-0.8, -0.7, 0.05), (0.6, -0.9, 0.0), (0.1, 1.1, 0.0)],
     (0.05, 0.02, 2.2), -0.4, 0),
    ("hook far to one corner: the far leg goes slack", [(0.9, 0.6, 0.0), (-0.9, 0.6, 0.0), (-0.9, -0.6, 0.0), (0.9, -0.6, 0.0)],
     (0.5, 0.35, 2.1), -0.4, 1),
]  # fmt: skip


@pytest.mark.parametrize("case", STATICALLY_INDETERMINATE, ids=lambda case: case[0])
def test_legs_that_share_by_their_stretch(case: Any) -> None:
    # All legs just reach the hook, which stands over the balance point: their stretch decides the shares. Ours goes on
    # to the balance of the stretched sling; PyNite's is of the first order, so they part by about the stretch.
    _, picks, hook, low, slack = case
    centre, weight_n = (hook[0], hook[1], low), 5200.0
    lengths = [math.dist(hook, pick) for pick in picks]
    axial_n = [3.1e8 * (1 + 0.1 * leg) for leg in range(len(picks))]
    found, holds = hung(picks, hook, centre, weight_n, axial_n)
    ours = springy_rest(
        picks, lengths, centre, weight_n, [ea / length for ea, length in zip(axial_n, lengths, strict=True)], hook
    )  # fmt: skip
    assert ours is not None
    assert sum(pull == 0.0 for pull in found) == slack
    assert sum(pull == 0.0 for pull in ours.tensions_n) == slack
    assert list(ours.tensions_n) == pytest.approx(found, rel=2e-4, abs=1e-4 * weight_n)
    assert holds["across"] == pytest.approx(0.0, abs=1e-4 * weight_n)
    assert holds["along"] == pytest.approx(0.0, abs=1e-4 * weight_n)


def test_the_sheet_itself_on_four_stretching_chain_legs() -> None:
    # The whole sheet, from typed inputs: pulls if the legs stretch like chain, for a balance point off the middle of a
    # tray whose legs are made to hang it level.
    picks = [(0.9, 0.5, 0.0), (-0.7, 0.6, 0.1), (-0.8, -0.7, 0.05), (0.6, -0.9, 0.0)]
    hook, centre, bar_m = (0.07, -0.04, 1.8), (0.07, -0.04, -0.3), 0.010
    rows = [
        {"at": [f"{side!r} m" for side in pick], "length": f"{math.dist(hook, pick)!r} m"} for pick in picks
    ]
    given = {
        "load": "5,200 N",
        "centre": [f"{side!r} m" for side in centre],
        "picks": rows,
        "chain_size": "10 mm",
        "balance_tolerance": "1 mm",
    }
    results = answer("hanging-load", given, "si")["results"]
    found, _ = hung(picks, hook, centre, 5200.0, [chain_stiffness_n(bar_m)] * 4)
    assert [1000 * pull for pull in results["springy_tensions"]["value"]] == pytest.approx(found, rel=2e-3)
    # Stiff legs may share in more than one way: the pull the sheet shows bounds the hardest one from above.
    assert 1000 * results["highest_tension"]["value"] >= max(found) * (1 - 2e-3)


@pytest.mark.parametrize(
    ("picks", "hook"),
    [([(0.9, 0.5, 0.0), (-0.7, 0.6, 0.1), (-0.8, -0.7, 0.05), (0.6, -0.9, 0.0)], (0.05, -0.02, 1.9)),
     ([(1.6, 0.3, 0.7), (-0.7, 0.6, 0.1), (-0.5, -0.4, -0.6), (0.3, -0.9, 0.0)], (0.11, -0.03, 1.3)),
     ([(1.9, 0.2, 0.0), (-0.2, 0.7, 0.9), (-0.3, -0.6, 0.9), (0.4, -0.7, -0.8)], (0.3, -0.04, 1.6))],
)  # fmt: skip
def test_the_worst_way_to_share_among_legs_that_just_reach(picks: Any, hook: Any) -> None:
    # Four stiff legs that all just reach may share in many ways; every way is a mix of those on three legs (numpy solves
    # each). The pulls shown must hold the hardest that any leg can get.
    centre, weight_n = (hook[0], hook[1], -0.4), 5200.0
    lengths = [math.dist(hook, pick) for pick in picks]
    hardest = 0.0
    for three in combinations(range(4), 3):
        toward = np.array([(np.array(hook) - picks[leg]) / lengths[leg] for leg in three]).T
        way = np.linalg.solve(toward, np.array([0.0, 0.0, weight_n]))
        if way.min() >= -1e-9:
            hardest = max(hardest, float(way.max()))
    rest = next(r for r in resting_places(picks, lengths, centre) if math.dist(r.hook, hook) < 1e-6)
    assert max(rest.tensions_n(weight_n, lengths)) == pytest.approx(hardest, rel=1e-6)


@pytest.mark.parametrize("legs", [2, 3])
@pytest.mark.parametrize("angle_deg", [33.0, 52.0, 74.0])
def test_even_sling_pulls_and_squeeze(legs: int, angle_deg: float) -> None:
    # Equal legs, the load hung as its share at each pick: pull by leg_tension_n. The squeeze is taken by struts from
    # each pick to a middle that hangs free of the hook; a strut's push is side_force_n.
    load_n, radius_m = 7310.0, 0.83
    height_m = radius_m * math.tan(math.radians(angle_deg))
    model = frame([3e7] * legs)
    model.add_node("hook", 0.0, height_m, 0.0)
    model.add_node("middle", 0.0, 0.0, 0.0)
    model.def_support("hook", *([True] * 6))
    # Held against swinging, turning and, on two legs, rolling about their line; free to sink.
    model.def_support("middle", True, False, True, legs == 2, True, False)
    for leg in range(legs):
        turn = 2 * math.pi * leg / legs
        model.add_node(f"pick {leg}", radius_m * math.cos(turn), 0.0, radius_m * math.sin(turn))
        model.add_member(f"strut {leg}", "middle", f"pick {leg}", "steel", "load")
        model.add_node_load(f"pick {leg}", "FY", -load_n / legs)
    add_legs(model, legs)
    model.analyze()
    assert pulls(model, legs) == pytest.approx([leg_tension_n(load_n, legs, angle_deg)] * legs, rel=1e-6)
    pushes = [model.members[f"strut {leg}"].max_axial(COMBO) for leg in range(legs)]
    assert pushes == pytest.approx([side_force_n(load_n, legs, angle_deg)] * legs, rel=1e-6)


KNOTS = [
    # Bansal, Engineering Mechanics, ex. 1.7 (through a textbook companion): chains at 30 and 60 degrees from the level.
    ("two chains", 1000.0, [(-math.cos(math.radians(30)), 0.0, 0.5), (0.5, 0.0, math.sin(math.radians(60)))], [500.0, 866.03], 0.005),
    # Hibbeler and Gupta, Engineering Mechanics, ex. 3.8 (through a textbook companion; exact figures, the book prints
    # 693.2, 812.7, 861.6): a crate on B along x, C at 120, 135 and 60 degrees, D along (-1, 2, 2).
    ("three cables of a crate", 981.0,
     [(1.0, 0.0, 0.0), (-0.5, -math.sqrt(0.5), 0.5), (-1 / 3, 2 / 3, 2 / 3)], [693.7, 812.7, 862.0], 0.05),
    # Beer and Johnston, Vector Mechanics for Engineers: Statics, sample problem 2.9 (from memory): a cylinder of 200 kg
    # (1,962 N) on cables AB and AC, held off the wall by a level force: 1,402 N, 1,238 N and 235 N.
    ("a cylinder held off a wall", 1962.0, [(-1.2, 8.0, 10.0), (-1.2, -10.0, 10.0), (1.0, 0.0, 0.0)], [1402.0, 1238.0, 235.0], 0.55),
]  # fmt: skip


@pytest.mark.parametrize("case", KNOTS, ids=lambda case: case[0])
def test_knots_of_the_books(case: Any) -> None:
    # A weight hung from a knot of cables: book, PyNite, and calc with the knot turned over to be the hook.
    _, weight_n, cables, printed, rounding = case
    model = frame([3e7] * len(cables))
    model.add_node("hook", 0.0, 0.0, 0.0)
    # Cables in one plane do not hold the knot across it; nothing pulls it there.
    model.def_support("hook", False, False, len(cables) == 2, True, True, True)
    for leg, (x, y, z) in enumerate(cables):
        model.add_node(f"pick {leg}", x, z, -y)
        model.def_support(f"pick {leg}", *([True] * 6))
    add_legs(model, len(cables))
    model.add_node_load("hook", "FY", -weight_n)
    model.analyze()
    found = pulls(model, len(cables))
    assert found == pytest.approx(printed, abs=rounding)
    assert model.nodes["hook"].RxnFZ[COMBO] == pytest.approx(0.0, abs=1e-9)
    picks = [(x, y, -z) for x, y, z in cables]
    lengths = [math.hypot(*cable) for cable in cables]
    rest = next(r for r in resting_places(picks, lengths, (0.0, 0.0, -7.0)) if math.hypot(*r.hook) < 1e-9)
    assert list(rest.tensions_n(weight_n, lengths)) == pytest.approx(found, rel=1e-6)


# ------------------------------------------------------------------------------------------ beams


def pynite_beam(ends: Ends, span_m: float, load_n: float, place_m: float, even_n_per_m: float) -> Any:
    """A beam in PyNite with E x I = 4.1e5 N m2."""
    model = FEModel3D()
    model.add_material("steel", STEEL_PA, 80e9, 0.3, 1.0)
    model.add_section("beam", 1e-2, 4.1e5 / STEEL_PA, 4.1e5 / STEEL_PA, 1e-5)
    model.add_node("left", 0.0, 0.0, 0.0)
    model.add_node("right", span_m, 0.0, 0.0)
    model.add_member("beam", "left", "right", "steel", "beam")
    built_in = ends != "simple"
    model.def_support("left", True, True, True, True, built_in, built_in)
    if ends != "cantilever":
        model.def_support("right", False, True, True, False, built_in, built_in)
    model.add_member_pt_load("beam", "Fy", -load_n, place_m)
    model.add_member_dist_load("beam", "Fy", -even_n_per_m, -even_n_per_m)
    model.analyze()
    return model


@pytest.mark.parametrize("ends", ["simple", "fixed", "cantilever"])
@pytest.mark.parametrize(("place_m", "even_n_per_m"), [(1.27, 0.0), (2.71, 137.0), (0.53, 911.0)])
def test_beam_moment_sag_and_reactions(ends: Ends, place_m: float, even_n_per_m: float) -> None:
    span_m, load_n = 4.1, 2310.0
    model = pynite_beam(ends, span_m, load_n, place_m, even_n_per_m)
    bar = model.members["beam"]
    beam = Beam(span_m, ends, load_n, place_m, even_n_per_m, 4.1e5)
    for part in (0.0, 0.13, 0.31, 0.5, 0.68, 0.97):
        x = part * span_m
        # PyNite counts a sagging moment as negative.
        assert -bar.moment("Mz", x, COMBO) == pytest.approx(beam.moment_nm(x), rel=1e-9, abs=1e-6)
        assert -bar.deflection("dy", x, COMBO) == pytest.approx(beam.sag_m(x), rel=1e-9, abs=1e-12)
    hardest = max(abs(bar.max_moment("Mz", COMBO)), abs(bar.min_moment("Mz", COMBO)))
    assert beam.greatest_moment()[1] == pytest.approx(hardest, rel=1e-9)
    # PyNite looks for the greatest sag on a grid of 100 places.
    assert beam.greatest_sag()[1] == pytest.approx(-bar.min_deflection("dy", COMBO), rel=2e-4)
    left = model.nodes["left"].RxnFY[COMBO]
    slope = (beam.moment_nm(1e-4) - beam.moment_nm(0.0)) / 1e-4
    assert slope == pytest.approx(left, rel=1e-3)
    if ends != "simple":
        assert -beam.moment_nm(0.0) == pytest.approx(model.nodes["left"].RxnMZ[COMBO], rel=1e-9)


def test_lifting_beam_hung_from_its_middle_bends_like_a_simple_span() -> None:
    # A lifting beam carries a load at each end and hangs from its middle: turned over, a simple span with one load in
    # the middle. PyNite has the beam as it hangs.
    span_m, load_n, stiffness_nm2 = 3.2, 8800.0, 9.3e5
    model = FEModel3D()
    model.add_material("steel", STEEL_PA, 80e9, 0.3, 1.0)
    model.add_section("beam", 1.0, stiffness_nm2 / STEEL_PA, stiffness_nm2 / STEEL_PA, 1e-5)
    for name, x in (("left", 0.0), ("eye", span_m / 2), ("right", span_m)):
        model.add_node(name, x, 0.0, 0.0)
    model.add_member("one", "left", "eye", "steel", "beam")
    model.add_member("other", "eye", "right", "steel", "beam")
    model.def_support("eye", *([True] * 6))
    for end in ("left", "right"):
        model.add_node_load(end, "FY", -load_n / 2)
    model.analyze()
    beam = Beam(span_m, "simple", load_n, span_m / 2, 0.0, stiffness_nm2)
    assert abs(model.members["one"].moment("Mz", span_m / 2, COMBO)) == pytest.approx(
        beam.greatest_moment()[1]
    )
    assert -model.nodes["left"].DY[COMBO] == pytest.approx(beam.greatest_sag()[1])


def test_spreader_bar_is_squeezed_by_its_legs() -> None:
    # Two legs to the ends of a spreader, the load straight under its ends: the bar carries the squeeze of the legs.
    span_m, load_n, angle_deg = 2.4, 6620.0, 57.0
    model = frame([3e7] * 2)
    model.add_node("hook", 0.0, span_m / 2 * math.tan(math.radians(angle_deg)), 0.0)
    model.def_support("hook", *([True] * 6))
    for leg, side in enumerate((-1, 1)):
        model.add_node(f"pick {leg}", side * span_m / 2, 0.0, 0.0)
        model.add_node_load(f"pick {leg}", "FY", -load_n / 2)
    model.add_member("spreader", "pick 0", "pick 1", "steel", "load")
    # Held at one end against swinging and turning; the holds carry nothing.
    model.def_support("pick 0", True, False, True, True, True, False)
    model.def_support("pick 1", False, False, True, False, False, False)
    add_legs(model, 2)
    model.analyze()
    assert model.nodes["pick 0"].RxnFX[COMBO] == pytest.approx(0.0, abs=1e-3 * load_n)
    assert model.members["spreader"].max_axial(COMBO) == pytest.approx(
        side_force_n(load_n, 2, angle_deg), rel=1e-4
    )
    assert pulls(model, 2) == pytest.approx([leg_tension_n(load_n, 2, angle_deg)] * 2, rel=1e-4)
