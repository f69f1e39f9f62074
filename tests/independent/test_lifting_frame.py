"""lifting-frame by second methods: frames by PyNite, sections by sectionproperties, sway by its exact equation."""

from __future__ import annotations

import math
from typing import Any

import pytest
from Pynite import FEModel3D
from scipy.optimize import brentq
from sectionproperties.analysis import Section as MeshedSection
from sectionproperties.pre.library import i_section, rectangular_hollow_section

from calc.lifting.beams import SECTION_FORMS
from calc.lifting.frame_strength import Post, a_frame_leg_n, corners_of, sway_k, tips_at_deg
from calc.lifting.lifting_frame import WORKSHEET
from calc.lifting.overhead_beam import section_area_m2
from tests.asking import asked

COMBO = "Combo 1"
G = 9.80665


def flat_frame(
    nodes: dict[str, tuple[float, float]], members: tuple[tuple[str, str, float, float], ...]
) -> Any:
    """A plane frame: nodes [m]; members between two nodes with area [m2] and second moment [m4]."""
    model = FEModel3D()
    model.add_material("steel", 200e9, 80e9, 0.3, 1e-9)
    for name, (x, y) in nodes.items():
        model.add_node(name, x, y, 0.0)
        model.def_support(name, False, False, True, True, True, False)
    for start, end, area, second in members:
        model.add_section(start + end, area, second, second, second)
        model.add_member(start + end, start, end, "steel", start + end)
    return model


@pytest.mark.parametrize(
    ("half", "high", "down", "across"), [(0.7, 2.6, 9000.0, 700.0), (1.4, 2.1, 4000.0, 0.0)]
)
def test_legs_of_an_a_frame(half: float, high: float, down: float, across: float) -> None:
    nodes = {"left": (-half, 0.0), "head": (0.0, high), "right": (half, 0.0)}
    model = flat_frame(nodes, (("left", "head", 1e-3, 1e-12), ("head", "right", 1e-3, 1e-12)))
    for foot in ("left", "right"):
        model.def_support(foot, True, True, True, True, True, False)
    model.add_node_load("head", "FY", -down)
    model.add_node_load("head", "FX", across)
    model.analyze(check_statics=False)
    pressed = model.members["headright"].max_axial(COMBO)
    lean = math.atan(half / high)
    assert a_frame_leg_n(down, across, lean) == pytest.approx(pressed, rel=1e-4)
    thrust = -model.nodes["right"].RxnFX[COMBO]
    assert a_frame_leg_n(down, across, lean) * math.sin(lean) == pytest.approx(thrust, rel=1e-4)


def test_the_posts_of_a_gantry_feel_the_side_pull_as_a_flagpole() -> None:
    """End view: a post fixed to its foot, the level pull at its head; the moment at the foot is pull x height."""
    nodes = {"foot": (0.0, 0.0), "head": (0.0, 2.7)}
    model = flat_frame(nodes, (("foot", "head", 2e-3, 3e-6),))
    model.def_support("foot", True, True, True, True, True, True)
    model.add_node_load("head", "FX", 500.0)
    model.analyze(check_statics=False)
    assert abs(model.nodes["foot"].RxnMZ[COMBO]) == pytest.approx(500.0 * 2.7, rel=1e-6)


@pytest.mark.parametrize(("post", "beam"), [(1e-6, 1e-6), (1e-6, 2e-5), (4e-6, 1e-6)])
def test_sway_stiffness_and_length(post: float, beam: float) -> None:
    """The portal's sway stiffness by PyNite is that of the formula behind K, and K is never under the exact root of
    x tan x = 6 / G (pinned feet, beam bending in double curvature).
    """
    high, span = 2.5, 4.0
    nodes = {"a": (0.0, 0.0), "b": (0.0, high), "c": (span, high), "d": (span, 0.0)}
    model = flat_frame(nodes, (("a", "b", 10.0, post), ("b", "c", 10.0, beam), ("c", "d", 10.0, post)))
    for foot in ("a", "d"):
        model.def_support(foot, True, True, True, True, True, False)
    model.add_node_load("b", "FX", 500.0)
    model.add_node_load("c", "FX", 500.0)
    model.analyze(check_statics=False)
    stiffness = 1000.0 / model.nodes["b"].DX[COMBO]
    ratio = post * span / (high * beam)
    assert stiffness == pytest.approx(2 * 3 * 200e9 * post / high**3 / (1 + ratio / 2), rel=1e-4)
    root = brentq(lambda x: x * math.tan(x) - 6 / ratio, 1e-9, math.pi / 2 - 1e-9)
    assert math.pi / root <= sway_k(post, high, beam, span) <= 1.15 * math.pi / root


@pytest.mark.parametrize("held", [False, True])
@pytest.mark.parametrize(("place", "post", "beam"), [(2.0, 2e-6, 1e-5), (1.0, 2e-6, 1e-5), (0.5, 1e-5, 2e-6)])
def test_a_sagging_beam_bends_its_posts(held: bool, place: float, post: float, beam: float) -> None:
    """A stiff portal by PyNite under a load at a place and an even load: what bends the harder bent post at head and foot."""
    high, span, load, even = 2.5, 4.0, 1000.0, 100.0
    nodes = {"a": (0.0, 0.0), "b": (0.0, high), "p": (place, high), "c": (span, high), "d": (span, 0.0)}
    parts = (("a", "b", 10.0, post), ("b", "p", 10.0, beam), ("p", "c", 10.0, beam), ("d", "c", 10.0, post))
    model = flat_frame(nodes, parts)
    for foot in ("a", "d"):
        model.def_support(foot, True, True, True, True, True, held)
    model.add_node_load("p", "FY", -load)
    for piece in ("bp", "pc"):
        model.add_member_dist_load(piece, "FY", -even, -even)
    model.analyze(check_statics=False)
    bends = [[abs(model.members[name].moment("Mz", x, COMBO)) for name in ("ab", "dc")] for x in (high, 0.0)]
    ours = corners_of(
        load * place * (span - place) / span,
        even * span**2,
        abs(span - 2 * place) / span,
        beam / post * high / span,
        held,
    )
    assert ours.head_nm == pytest.approx(max(bends[0]), rel=1e-4)
    assert ours.foot_nm == pytest.approx(max(bends[1]), rel=1e-4, abs=1e-6)


def test_growth_by_sway_is_on_the_safe_side_of_a_second_order_frame() -> None:
    """A flagpole with thrust and a level pull, with P-Delta by PyNite: our growth counts the thrust 1.6 times."""
    high, area, second, modulus = 3.0, 2e-3, 3e-6, 6e-5
    euler = math.pi**2 * 200e9 * second / (2.0 * high) ** 2
    thrust, pull = 0.15 * euler, 300.0
    nodes = {f"n{i}": (0.0, high * i / 12) for i in range(13)}
    members = tuple((f"n{i}", f"n{i + 1}", area, second) for i in range(12))
    model = flat_frame(nodes, members)
    model.def_support("n0", True, True, True, True, True, True)
    model.add_node_load("n12", "FY", -thrust)
    model.add_node_load("n12", "FX", pull)
    model.analyze_PDelta()
    moment = abs(model.nodes["n0"].RxnMZ[COMBO])
    assert moment > pull * high * 1.05
    post = Post(area, second, modulus, 2.0 * high)
    ours = post.part_used(thrust, pull * high, 250e6, 200e9, 1.67)
    axial = thrust * 1.67 / post.buckles_n(250e6, 200e9)
    bending = moment * 1.67 / (250e6 * modulus)
    assert ours > (axial + 8 / 9 * bending if axial >= 0.2 else axial / 2 + bending)


def test_sections_by_meshing() -> None:
    sizes = (0.2, 0.1, 0.0056, 0.0085)
    meshed = MeshedSection(
        i_section(d=sizes[0], b=sizes[1], t_w=sizes[2], t_f=sizes[3], r=0.0, n_r=1).create_mesh([1e-5])
    )
    meshed.calculate_geometric_properties()
    assert section_area_m2("i-beam", *sizes) == pytest.approx(meshed.get_area(), rel=1e-6)
    box = (0.1, 0.15, 0.006)
    hollow = MeshedSection(
        rectangular_hollow_section(d=box[1], b=box[0], t=box[2], r_out=0.0, n_r=1).create_mesh([1e-5])
    )
    hollow.calculate_geometric_properties()
    strong, upright, _ = hollow.get_ic()
    assert section_area_m2("box", *box) == pytest.approx(hollow.get_area(), rel=1e-6)
    assert SECTION_FORMS["box"].of(*box).second_moment_m4 == pytest.approx(strong, rel=1e-6)
    turned = SECTION_FORMS["box"].of(box[1], box[0], box[2])
    assert turned.second_moment_m4 == pytest.approx(upright, rel=1e-6)


def test_the_greatest_load_by_another_search() -> None:
    """The load at which the weakest part is just used up, by scipy on the answers themselves."""
    example: dict[str, Any] = dict(WORKSHEET.example)

    def over(load_kg: float) -> float:
        return (
            float(asked("lifting-frame", {**example, "load": f"{load_kg:.9f} kg"}).results["weakest_share"])
            - 1.0
        )

    found = asked("lifting-frame", example, "us").results["not_more_than"]
    assert brentq(over, 10.0, 5000.0, xtol=1e-7) == pytest.approx(found, rel=1e-6)


def test_the_frame_of_the_page_by_pynite() -> None:
    """Beam on two posts with the load in the middle: moment and sag of the example by PyNite."""
    example: dict[str, Any] = dict(WORKSHEET.example)
    found = asked("lifting-frame", example, "us").results
    inch = 0.0254
    sizes = tuple(size * inch for size in (8.0, 5.25, 0.25, 0.3125))
    area, second = section_area_m2("i-beam", *sizes), SECTION_FORMS["i-beam"].of(*sizes).second_moment_m4
    span = 120 * inch
    nodes = {"a": (0.0, 0.0), "m": (span / 2, 0.0), "b": (span, 0.0)}
    model = flat_frame(nodes, (("a", "m", area, second), ("m", "b", area, second)))
    model.def_support("a", True, True, True, True, True, False)
    model.def_support("b", False, True, True, True, True, False)
    hangs = 960 * 0.45359237 * G
    model.add_node_load("m", "FY", -hangs)
    own = area * 7850 * G
    for member in ("am", "mb"):
        model.add_member_dist_load(member, "FY", -own, -own)
    model.analyze(check_statics=False)
    assert found["deflection"] == pytest.approx(-model.nodes["m"].DY[COMBO], rel=1e-4)
    moment = max(
        abs(model.members["am"].max_moment("Mz", COMBO)), abs(model.members["am"].min_moment("Mz", COMBO))
    )
    assert found["moment"] == pytest.approx(moment + 0.1 * hangs * span / 4, rel=1e-4)


@pytest.mark.parametrize("place", [0.0, 1.0, 2.0])
def test_wheels_of_a_gantry_in_space(place: float) -> None:
    """A whole gantry in space by PyNite, stiff posts on feet with two wheels each, the hoist pulling square to the beam: no wheel
    feels more than the sheet says, and with the load over one end it feels just about that.
    """
    span, high, apart = 4.0, 2.6, 1.5
    down, across = 10_000.0, 10_000.0 * math.tan(math.radians(6))
    model = FEModel3D()
    model.add_material("steel", 200e9, 80e9, 0.3, 1e-9)
    model.add_section("stiff", 1e-2, 1e-3, 1e-3, 1e-3)
    for end, x in (("l", 0.0), ("r", span)):
        model.add_node(f"{end} head", x, high, 0.0)
        model.add_node(f"{end} foot", x, 0.0, 0.0)
        model.add_member(f"{end} post", f"{end} foot", f"{end} head", "steel", "stiff")
        for side, z in (("a", -apart / 2), ("b", apart / 2)):
            model.add_node(f"{end}{side}", x, 0.0, z)
            model.add_member(f"{end}{side}", f"{end} foot", f"{end}{side}", "steel", "stiff")
            model.def_support(f"{end}{side}", True, True, side == "a", False, False, False)
    model.add_member("beam", "l head", "r head", "steel", "stiff")
    if place in (0.0, span):
        model.add_node_load("l head", "FY", -down)
        model.add_node_load("l head", "FZ", across)
    else:
        model.add_member_pt_load("beam", "FY", -down, place)
        model.add_member_pt_load("beam", "FZ", across, place)
    model.analyze(check_statics=False)
    share = max(place, span - place) / span
    ours = down * share / 2 + across * share * high / apart
    wheels = {name: model.nodes[name].RxnFY[COMBO] for name in ("la", "lb", "ra", "rb")}
    assert max(wheels.values()) <= ours * (1 + 1e-6)
    assert sum(wheels.values()) == pytest.approx(down, rel=1e-6)
    assert max(wheels.values()) == pytest.approx(ours, rel=1e-3 if place == 2.0 else 0.1)


def test_a_gantry_tips_where_a_wheel_lifts() -> None:
    """End view: at the angle of tips_at_deg the wheels of the near side carry nothing more."""
    high, apart, down = 2.6, 1.5, 10_000.0
    across = down * math.tan(math.radians(tips_at_deg(down / G, 0.0, apart, high)))
    nodes = {"near": (-apart / 2, 0.0), "foot": (0.0, 0.0), "far": (apart / 2, 0.0), "head": (0.0, high)}
    bars = (("near", "foot"), ("foot", "far"), ("foot", "head"))
    model = flat_frame(nodes, tuple((one, other, 1e-2, 1e-3) for one, other in bars))
    model.def_support("near", True, True, True, True, True, False)
    model.def_support("far", False, True, True, True, True, False)
    model.add_node_load("head", "FY", -down)
    model.add_node_load("head", "FX", across)
    model.analyze(check_statics=False)
    assert model.nodes["near"].RxnFY[COMBO] == pytest.approx(0.0, abs=1e-3 * down)


def test_an_a_frame_in_space_along_and_square_to_its_beam() -> None:
    """Two A-frames with a stiff beam, feet that turn, by PyNite: a pull along the beam bends each of the four legs by a quarter of
    pull x height at its head; a pull square to it presses a leg as the sheet says, with the load over that end.
    """
    span, high, apart, down, pull = 4.0, 2.6, 1.5, 9000.0, 600.0
    model = FEModel3D()
    model.add_material("steel", 200e9, 80e9, 0.3, 1e-9)
    model.add_section("leg", 2e-3, 3e-6, 3e-6, 6e-6)
    model.add_section("beam", 1e-1, 1e-1, 1e-1, 1e-1)
    for end, x in (("l", 0.0), ("r", span)):
        model.add_node(end, x, high, 0.0)
        for side, z in (("a", -apart / 2), ("b", apart / 2)):
            model.add_node(end + side, x, 0.0, z)
            model.add_member(end + side, end + side, end, "steel", "leg")
            model.def_support(end + side, True, True, True, False, True, False)
    model.add_member("beam", "l", "r", "steel", "beam")
    model.add_load_combo("along", {"along": 1.0})
    model.add_load_combo("square", {"square": 1.0})
    model.add_node_load("l", "FX", pull, case="along")
    model.add_node_load("l", "FY", -down, case="square")
    model.add_node_load("l", "FZ", pull, case="square")
    model.analyze(check_statics=False)
    legs = [model.members[name] for name in ("la", "lb", "ra", "rb")]
    bends = [
        math.hypot(leg.moment("My", leg.L(), "along"), leg.moment("Mz", leg.L(), "along")) for leg in legs
    ]
    assert max(bends) == pytest.approx(pull * high / 4, rel=0.02)
    lean = math.atan(apart / 2 / high)
    pressed = max(leg.max_axial("square") for leg in legs)
    assert a_frame_leg_n(down, pull, lean) == pytest.approx(pressed, rel=0.01)


SIZES = (8.0, 5.25, 0.25, 0.3125)
"""The beam of the page's example: depth, flange width, web and flange [in]."""


def worst_of_posts(given: dict[str, Any], feet_in: tuple[float, ...], along: bool) -> float:
    """Greatest stress in the posts over yield / 3, by PyNite with P-Delta: a whole frame in space, stiff at its heads, its feet at the
    given places square to the beam [in]; anchored feet do not turn, others turn along the beam and stay where they are.
    """
    inch, psi = 0.0254, 6894.757293168361
    span, high = (float(given[name].split()[0]) * 12 * inch for name in ("span", "height"))
    place = float(given["position"].split()[0]) * 12 * inch
    depth, width, web, flange = (size * inch for size in SIZES)
    area = section_area_m2("i-beam", depth, width, web, flange)
    strong = SECTION_FORMS["i-beam"].of(depth, width, web, flange).second_moment_m4
    weak = (2 * flange * width**3 + (depth - 2 * flange) * web**3) / 12
    side, wall = (float(given[name].split()[0]) * inch for name in ("post_width", "post_wall"))
    post_area, post_second = side**2 - (side - 2 * wall) ** 2, (side**4 - (side - 2 * wall) ** 4) / 12
    model = FEModel3D()
    model.add_material("steel", 200e9, 77e9, 0.3, 7850 * G)
    model.add_section("beam", area, weak, strong, (2 * width * flange**3 + (depth - flange) * web**3) / 3)
    model.add_section("post", post_area, post_second, post_second, (side - wall) ** 3 * wall)
    for head, x in (("b", 0.0), ("p", place), ("c", span)):
        model.add_node(head, x, high, 0.0)
    leaning, anchored = len(feet_in) == 2, given["kind"] == "portal"
    legs = []
    for head, x in (("b", 0.0), ("c", span)):
        for number, z in enumerate(feet_in):
            legs.append(f"{head}{number}")
            model.add_node(legs[-1], x, 0.0, z * inch)
            model.def_support(legs[-1], True, True, True, not leaning, True, anchored)
            model.add_member(legs[-1], legs[-1], head, "steel", "post")
    for start, end in ("bp", "pc"):
        model.add_member(start + end, start, end, "steel", "beam")
        model.add_member_dist_load(start + end, "FY", -area * 7850 * G, -area * 7850 * G)
    hangs = 1.1 * 960 * 0.45359237 * G
    model.add_node_load("p", "FY", -hangs)
    model.add_node_load("p", "FX" if along else "FZ", hangs * math.tan(math.radians(3)))
    model.analyze_PDelta()
    worst = 0.0
    for leg in (model.members[name] for name in legs):
        for x in (0.0, leg.L() / 2, leg.L()):
            bends = abs(leg.moment("My", x, COMBO)) + abs(leg.moment("Mz", x, COMBO))
            stress = abs(leg.axial(x, COMBO)) / post_area + bends / (post_second / (side / 2))
            worst = max(worst, stress)
    return worst / (12_000 * psi)


@pytest.mark.parametrize(
    ("kind", "span", "height", "apart", "post", "wall", "position"),
    [
        ("gantry", 24, 7, 96, 5, 0.25, 12),
        ("portal", 24, 7, 96, 4, 0.25, 12),
        ("gantry", 14, 9, 96, 4, 0.1875, 3),
        ("a-frames", 24, 7, 48, 3, 0.25, 12),
        ("a-frames", 18, 8, 60, 3, 0.1875, 6),
    ],
)
def test_posts_of_a_whole_frame_by_pynite(
    kind: str, span: int, height: int, apart: int, post: int, wall: float, position: int
) -> None:
    """What the sheet says of the posts is never less than the worst fiber of the whole frame, and in a wide frame just about that."""
    given: dict[str, Any] = {
        **WORKSHEET.example, "kind": kind, "span": f"{span} ft", "height": f"{height} ft", "post_width": f"{post} in",
        "post_wall": f"{wall} in", "position": f"{position} ft", "feet_apart": f"{apart} in", "stands_on": "feet",
    }  # fmt: off
    rows = asked("lifting-frame", given, "us").results["checks"]
    ours = next(row.cells["used"].value_si for row in rows if row.cells["check"].code == "check-posts")
    feet = (-apart / 2, apart / 2) if kind == "a-frames" else (0.0,)
    whole = max(worst_of_posts(given, feet, along) for along in (True, False))
    assert whole <= ours
    if span == 24:
        assert ours == pytest.approx(whole, rel=0.1)
