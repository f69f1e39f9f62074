"""How may a plate lug fail, and which way first?

A study aid: each way of failing by its formula (calc.lifting.lug_strength, lug_holding; ASME BTH-1 recalled, not read), the
weakest named. Pin and wall are counted where they are given, and the reader's own allowable stresses as well. It rates nothing.
A lug that lifts is designed, welded and tested by people who answer for it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.lugs import LugFace, LugPart, LugSide, lug_figure
from calc.inputs import Bounds, ChoiceInput, Given, NumberInput, QuantityInput
from calc.lifting.lug_holding import (
    OwnPin,
    Wall,
    least_fillet_m,
    pin_arm_m,
    pin_bending_n,
    pin_shear_n,
    straight_part,
    wall_folds_n,
    wall_holds_n,
    wall_pull_n,
    wall_shears_n,
    wall_turn_nm,
)
from calc.lifting.lug_strength import (
    FootLoad,
    Lug,
    OwnStresses,
    OwnWay,
    bearing_n,
    double_plane_n,
    effective_side_m,
    foot_bending_n,
    foot_load,
    foot_shear_n,
    foot_stress_pa,
    gross_section_n,
    looseness_factor,
    net_tension_n,
    own_ways_n,
    seen_along,
    shear_plane_m,
    single_plane_n,
    split_width_m,
    tear_out_n,
    weld_allowable_pa,
    weld_n,
    weld_stress_pa,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, unknown
from calc.words.facts import Absent, Fact, Message, Number, Quantity, absent, force, length, message, share
from calc.words.writer import Writer

MOST_TENSILE = 3.0
"""Tensile over yield strength of a plate, at most [-]: plain steel has 1.6 to 2.2, soft stainless 2.5 to 2.8 (from memory; our own bound);
more is a slip of one of the two."""

LOOSE_PIN = 0.9
"""Part of the hole under which a pin is called loose [-] (our own bound, no source)."""

HARD_PLATE_PA = 65_000 * 6894.757293168361
"""Yield strength over which a plate is made hard or tempered, and loses by a weld [Pa] (our own mark: that of plain structural steels
that the sheets of frames take)."""

COMMON_FACTOR = 3.0
"""Design factor of common lifting (ASME BTH-1, category B, from memory)."""

WIDE_SIDE = 4.0
"""Thicknesses beside the hole over which the rest counts for nothing: a wide thin plate dishes (BTH-1, 3-3.3.1, from memory)."""

THIN_FOR_PIN = 0.5
"""Thickness over pin under which a plate is called thin for its pin [-] (shop rule, from memory)."""

Way = Literal[
    "net_tension",
    "tear_out",
    "bearing",
    "gross_section",
    "out_of_plane",
    "foot_shear",
    "weld",
    OwnWay,
    "pin",
    "wall",
]
"""A way of failing."""

LIT: dict[Way, LugPart] = {
    "net_tension": "hole",
    "tear_out": "end",
    "bearing": "pin",
    "gross_section": "hole",
    "out_of_plane": "foot",
    "foot_shear": "foot",
    "weld": "weld",
    "own-tension": "hole",
    "own-shear": "end",
    "own-bearing": "pin",
    "own-foot": "foot",
    "own-weld": "weld",
    "pin": "pin",
    "wall": "wall",
}

OWN_BOXES = ("own_plate", "own_shear", "own_bearing", "own_weld")


def _lug(given: Given) -> Lug:
    lug = Lug(
        thickness_m=given.si("thickness"),
        hole_m=given.si("hole"),
        pin_m=given.si("pin"),
        side_edge_m=given.si("side_edge"),
        end_edge_m=given.si("end_edge"),
        height_m=given.si("height"),
        weld_leg_m=given.si("weld_leg"),
        weld_length_m=given.si("weld_length"),
        yield_pa=given.si("yield_strength"),
        tensile_pa=given.si("tensile_strength"),
        weld_tensile_pa=given.si("weld_strength"),
        design_factor=given.si("design_factor"),
        round_end=given.text("end_shape") == "round",
        all_round=given.text("weld_runs") == "around",
    )
    if lug.pin_m > lug.hole_m:
        raise given.refuse("pin", "thicker-than-the-hole")
    if lug.yield_pa > lug.tensile_pa:
        raise given.refuse("yield_strength", "over-the-tensile-strength")
    if exceeds(lug.tensile_pa, MOST_TENSILE * lug.yield_pa):
        raise given.refuse("tensile_strength", "far-over-the-yield-strength", most=Number(MOST_TENSILE))
    if exceeds(lug.weld_leg_m, lug.thickness_m):
        raise given.refuse("weld_leg", "thicker-than-the-plate", plate=length(lug.thickness_m))
    if exceeds(lug.weld_length_m, lug.width_at_hole_m):
        raise given.refuse("weld_length", "longer-than-the-plate", wide=length(lug.width_at_hole_m))
    if lug.height_m < lug.hole_m / 2:
        raise given.refuse("height", "hole-in-the-weld")
    return lug


def _pin(given: Given, lug: Lug) -> OwnPin | Absent:
    if given.text("pin_is") != "own":
        return absent("pin-by-its-mark" if given.text("pin_is") == "marked" else "pin-not-checked")
    pin = OwnPin(lug.pin_m, given.si("jaw"), given.si("between_jaws"), lug.thickness_m, given.si("pin_yield"))
    if exceeds(pin.lug_m, pin.between_jaws_m):
        raise given.refuse("between_jaws", "narrower-than-the-lug", plate=length(lug.thickness_m))
    return pin


def _wall(given: Given, lug: Lug) -> Wall | Absent:
    if given.text("welded_to") != "wall":
        return absent("wall-not-checked")
    wall = Wall(given.si("wall_thickness"), given.si("wall_span"), given.si("wall_yield"))
    if wall.span_m <= lug.thickness_m:
        raise given.refuse("wall_span", "no-wall-beside-the-lug", plate=length(lug.thickness_m))
    return wall


def _own(given: Given) -> OwnStresses | Absent:
    """The reader's own stresses: all four, or none."""
    missing = [name for name in OWN_BOXES if not given.has(name)]
    if len(missing) == len(OWN_BOXES):
        return absent("no-own-stresses")
    if missing:
        raise given.refuse(missing[0], "own-all-or-none")
    return OwnStresses(*(given.si(name) for name in OWN_BOXES))


@dataclass(frozen=True)
class Found:
    """The load at which each way of failing reaches its allowable, and which comes first."""

    lug: Lug
    seen: Lug
    pull: FootLoad
    pin: OwnPin | Absent
    wall: Wall | Absent
    own: OwnStresses | Absent
    ways: Mapping[Way, float]
    first: Way
    load_n: float
    angle_in_plane_deg: float
    angle_out_of_plane_deg: float
    net_tension_n: float
    tear_out_n: float
    bearing_n: float
    gross_section_n: float
    out_of_plane_n: float
    foot_shear_n: float
    weld_n: float
    pin_holds_n: float | Absent
    wall_holds_n: float | Absent
    own_allows_n: float | Absent
    governing: Message
    capacity_estimate_n: float
    with_pin_and_wall_n: float | Absent


def find(given: Given) -> Found:
    """Strength of the lug, way by way; see WORKSHEET for inputs and results."""
    lug = _lug(given)
    in_plane, across = given.si("angle_in_plane"), given.si("angle_out_of_plane")
    pull = foot_load(in_plane, across)
    seen = seen_along(lug, in_plane)
    pin, wall, own = _pin(given, lug), _wall(given, lug), _own(given)
    ways: dict[Way, float] = {
        "net_tension": net_tension_n(seen),
        "tear_out": tear_out_n(seen),
        "bearing": bearing_n(lug),
        "gross_section": gross_section_n(seen),
        "out_of_plane": foot_bending_n(lug, pull),
        "foot_shear": foot_shear_n(lug, pull),
        "weld": weld_n(lug, pull),
    }
    of_own = {} if isinstance(own, Absent) else own_ways_n(lug, seen, pull, own)
    ways.update((way, holds_n) for way, holds_n in of_own.items())
    of_lug_n = min(ways.values())
    if isinstance(pin, OwnPin):
        ways["pin"] = min(pin_shear_n(pin, lug.design_factor), pin_bending_n(pin, lug.design_factor))
    if isinstance(wall, Wall):
        ways["wall"] = wall_holds_n(wall, lug, pull)
    first = min(ways, key=lambda way: ways[way])
    whole = given.text("pin_is") != "not-checked" and isinstance(wall, Wall)
    return Found(
        lug=lug,
        seen=seen,
        pull=pull,
        pin=pin,
        wall=wall,
        own=own,
        ways=ways,
        first=first,
        load_n=given.si("load") * STANDARD_GRAVITY_M_PER_S2,
        angle_in_plane_deg=in_plane,
        angle_out_of_plane_deg=across,
        net_tension_n=ways["net_tension"],
        tear_out_n=ways["tear_out"],
        bearing_n=ways["bearing"],
        gross_section_n=ways["gross_section"],
        out_of_plane_n=ways["out_of_plane"],
        foot_shear_n=ways["foot_shear"],
        weld_n=ways["weld"],
        pin_holds_n=pin if isinstance(pin, Absent) else ways["pin"],
        wall_holds_n=wall if isinstance(wall, Absent) else ways["wall"],
        own_allows_n=min(of_own.values()) if of_own else absent("no-own-stresses"),
        governing=message(f"way-{first}"),
        capacity_estimate_n=of_lug_n,
        with_pin_and_wall_n=ways[first] if whole else absent("not-all-checked"),
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once. A study aid rates nothing; what is too much is a stop."""
    first_n = found.ways[found.first]
    reasons: list[Reason] = []
    said: Mapping[str, Fact] = {"used": share(found.load_n / first_n), "first": force(first_n, "capacity")}
    if exceeds(found.load_n, first_n):
        reasons.append(over("over-the-first-way", **said))
    reasons.append(Reason("study-aid", "note", said, "mandatory"))
    reasons.append(note("formulas-from-memory", "warning"))
    reasons.extend(_plate_reasons(found))
    reasons.extend(_end_reasons(found, said))
    if found.lug.design_factor < COMMON_FACTOR:
        reasons.append(caution("small-factor"))
    reasons.append(note("not-counted"))
    return tuple(reasons)


def _plate_reasons(found: Found) -> list[Reason]:
    """What plate, hole and weld give cause to say."""
    lug, reasons = found.lug, list[Reason]()
    if found.angle_out_of_plane_deg > 0:
        reasons.append(caution("weak-across"))
    if exceeds(lug.yield_pa, HARD_PLATE_PA):
        reasons.append(caution("hard-plate"))
    if lug.pin_m < LOOSE_PIN * lug.hole_m:
        reasons.append(caution("loose-pin"))
    if exceeds(lug.side_edge_m, WIDE_SIDE * lug.thickness_m):
        reasons.append(caution("dishes"))
    if exceeds(THIN_FOR_PIN * lug.pin_m, lug.thickness_m):
        reasons.append(caution("thin-for-the-pin"))
    thinner = lug.thickness_m
    if isinstance(found.wall, Wall):
        thinner = min(thinner, found.wall.thickness_m)
    least_m = least_fillet_m(thinner)
    if exceeds(least_m, lug.weld_leg_m):
        reasons.append(caution("weld-too-small", least=length(least_m)))
    return reasons


def _end_reasons(found: Found, said: Mapping[str, Fact]) -> list[Reason]:
    """What pin and wall give cause to say."""
    reasons: list[Reason] = []
    if isinstance(found.pin, OwnPin):
        reasons.append(caution("pin-of-your-own"))
    elif found.pin.code == "pin-by-its-mark":
        reasons.append(note("pin-by-its-mark"))
    else:
        reasons.append(unknown("pin-not-checked", **said))
    if isinstance(found.wall, Wall):
        reasons.append(note("wall-upper-bound", "warning"))
    else:
        reasons.append(unknown("wall-not-checked", **said))
    return reasons


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working, one for each way of failing; tearing out at the end, pin and wall have two."""
    lug = found.lug
    thick = length(lug.thickness_m, "capacity")
    ultimate, yields = _stress(lug.tensile_pa), _stress(lug.yield_pa)
    loose = Number(looseness_factor(lug), 3, "capacity")
    seen = found.seen
    side = length(effective_side_m(seen), "capacity")
    width = length(split_width_m(seen), "capacity")
    plane = length(shear_plane_m(seen), "capacity")
    splits, shears = force(single_plane_n(seen), "capacity"), force(double_plane_n(seen), "capacity")
    wide = length(seen.width_at_hole_m, "capacity")
    return (
        step("tears", loose=loose, ultimate=ultimate, thick=thick, side=side),
        step("splits", loose=loose, ultimate=ultimate, thick=thick, width=width, splits=splits),
        step("shears", ultimate=ultimate, thick=thick, plane=plane, shears=shears),
        step("crushes", yields=yields, bears=length(lug.pin_m, "capacity"), thick=thick),
        step("gross", yields=yields, wide=wide, thick=thick),
        _by_stress(
            found, "bends", lug.yield_pa / lug.design_factor, foot_stress_pa(lug, found.pull, found.load_n)
        ),
        _by_stress(
            found,
            "cut-foot",
            lug.yield_pa / lug.design_factor,
            lug.yield_pa / lug.design_factor * found.load_n / found.foot_shear_n,
        ),
        _by_stress(found, "weld", weld_allowable_pa(lug), weld_stress_pa(lug, found.pull, found.load_n)),
        *_pin_steps(found),
        *_wall_steps(found),
        *_own_steps(found),
    )


def _by_stress(found: Found, code: str, allowed_pa: float, stress_pa: float) -> Step:
    allowed, stress = _stress(allowed_pa, "capacity"), _stress(stress_pa, "demand")
    return step(code, pull=force(found.load_n, "demand"), allowed=allowed, stress=stress)


def _pin_steps(found: Found) -> tuple[Step, ...]:
    pin = found.pin
    if isinstance(pin, Absent):
        return ()
    yields, across = _stress(pin.yield_pa), length(pin.diameter_m, "capacity")
    return (
        step(
            "pin-cut",
            yields=yields,
            across=across,
            cut=force(pin_shear_n(pin, found.lug.design_factor), "capacity"),
        ),
        step(
            "pin-bends",
            yields=yields,
            across=across,
            arm=length(pin_arm_m(pin), "demand"),
            bends=force(pin_bending_n(pin, found.lug.design_factor), "capacity"),
        ),
    )


def _wall_steps(found: Found) -> tuple[Step, ...]:
    wall = found.wall
    if isinstance(wall, Absent):
        return ()
    lug, pull = found.lug, found.pull
    yields, thick = _stress(wall.yield_pa), length(wall.thickness_m, "capacity")
    return (
        step(
            "wall-pull",
            yields=yields,
            wall=thick,
            span=length(wall.span_m),
            holds=force(wall_pull_n(wall, lug), "capacity"),
        ),
        step(
            "wall-turn",
            yields=yields,
            wall=thick,
            turns=Quantity(wall_turn_nm(wall, lug), "torque", "capacity"),
        ),
        step(
            "wall-folds",
            straight=Number(straight_part(lug, pull), 3, "demand"),
            pull=force(wall_pull_n(wall, lug), "capacity"),
            arm=length(pull.across * lug.height_m, "demand"),
            turns=Quantity(wall_turn_nm(wall, lug), "torque", "capacity"),
            folds=force(wall_folds_n(wall, lug, pull), "capacity"),
        ),
        step("wall-cut", yields=yields, wall=thick, cut=force(wall_shears_n(wall, lug), "capacity")),
    )


def _own_steps(found: Found) -> tuple[Step, ...]:
    """A line for each way that the reader's own stresses limit."""
    if isinstance(found.own, Absent):
        return ()
    own_n = own_ways_n(found.lug, found.seen, found.pull, found.own)
    allowed = {
        "own-tension": found.own.plate_pa,
        "own-shear": found.own.shear_pa,
        "own-bearing": found.own.bearing_pa,
        "own-foot": found.own.plate_pa,
        "own-weld": found.own.weld_pa,
    }
    return tuple(
        step(
            f"{way}",
            pull=force(found.load_n, "demand"),
            allowed=_stress(allowed[way], "capacity"),
            stress=_stress(allowed[way] * found.load_n / holds_n, "demand"),
            holds=force(holds_n, "capacity"),
        )
        for way, holds_n in own_n.items()
    )


def _stress(value_pa: float, sense: Literal["plain", "capacity", "demand"] = "plain") -> Quantity:
    """A stress or a strength [Pa] for a line of the working."""
    return Quantity(value_pa, "pressure", sense)


def draw(found: Found, writer: Writer) -> Figure:
    """The lug to scale, from its face and from its side, the weakest part lit."""
    lug, pin, wall = found.lug, found.pin, found.wall
    face = LugFace(
        width_m=lug.width_at_hole_m,
        height_m=lug.height_m,
        hole_m=lug.hole_m,
        pin_m=lug.pin_m,
        end_edge_m=lug.end_edge_m,
        weld_leg_m=lug.weld_leg_m,
        weld_length_m=lug.weld_length_m,
        round_end=lug.round_end,
        lean_deg=found.angle_in_plane_deg,
        lit=LIT[found.first],
        over=exceeds(found.load_n, found.ways[found.first]),
    )
    side = LugSide(
        thickness_m=lug.thickness_m,
        jaw_m=pin.jaw_m if isinstance(pin, OwnPin) else 0.0,
        between_jaws_m=pin.between_jaws_m if isinstance(pin, OwnPin) else 0.0,
        wall_m=wall.thickness_m if isinstance(wall, Wall) else 0.0,
        lean_deg=found.angle_out_of_plane_deg,
    )
    caption = writer.text(
        "figure",
        wide=length(lug.width_at_hole_m),
        thick=length(lug.thickness_m),
        lean=Quantity(found.angle_in_plane_deg, "angle"),
        governing=found.governing,
    )
    return lug_figure(face, side, caption, writer)


def _length(name: str, at_most: float = 200) -> QuantityInput:
    return QuantityInput(name, dimension="length", bounds=Bounds(above=0, at_most=at_most))


def _strength(name: str, at_most: float) -> QuantityInput:
    return QuantityInput(
        name,
        dimension="pressure",
        unit="psi",
        unit_si="MPa",
        bounds=Bounds(at_least=1_000, at_most=at_most),
    )


def _own_strength(name: str, shown: Mapping[str, tuple[str, ...]]) -> QuantityInput:
    """A strength of pin or wall, or an own stress, that not every lug asks for."""
    return QuantityInput(
        name,
        dimension="pressure",
        unit="psi",
        unit_si="MPa",
        bounds=Bounds(at_least=1_000, at_most=200_000),
        required=False,
        shown_when=shown,
        sense="capacity",
    )


def _end_length(name: str, shown: Mapping[str, tuple[str, ...]]) -> QuantityInput:
    """A length of pin or wall."""
    bounds = Bounds(above=0, at_most=200)
    return QuantityInput(name, dimension="length", bounds=bounds, required=False, shown_when=shown)


_OWN_PIN = {"pin_is": ("own",)}
_WALL = {"welded_to": ("wall",)}


def _lean(name: str) -> QuantityInput:
    return QuantityInput(name, dimension="angle", bounds=Bounds(at_least=0, at_most=90))


WORKSHEET = Worksheet(
    name="lifting-lug",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=2_000_000), sense="demand"),
        _length("thickness", 12),
        _length("hole"),
        _length("pin"),
        _length("side_edge"),
        _length("end_edge"),
        ChoiceInput("end_shape", choices=("round", "square"), default="round"),
        _length("height"),
        _length("weld_leg", 4),
        _length("weld_length"),
        ChoiceInput("weld_runs", choices=("two", "around"), default="two", required=False),
        _strength("yield_strength", 200_000),
        _strength("tensile_strength", 250_000),
        _strength("weld_strength", 150_000),
        _lean("angle_in_plane"),
        _lean("angle_out_of_plane"),
        NumberInput("design_factor", bounds=Bounds(at_least=2, at_most=10)),
        ChoiceInput(
            "pin_is", choices=("not-checked", "marked", "own"), default="not-checked", required=False
        ),
        _end_length("jaw", _OWN_PIN),
        _end_length("between_jaws", _OWN_PIN),
        _own_strength("pin_yield", _OWN_PIN),
        ChoiceInput("welded_to", choices=("not-checked", "wall"), default="not-checked", required=False),
        _end_length("wall_thickness", _WALL),
        _end_length("wall_span", _WALL),
        _own_strength("wall_yield", _WALL),
        *(_own_strength(name, {}) for name in OWN_BOXES),
    ),
    results=(
        Result("capacity_estimate", "force", "capacity"),
        Result("governing"),
        Result("net_tension", "force", "capacity"),
        Result("tear_out", "force", "capacity"),
        Result("bearing", "force", "capacity"),
        Result("gross_section", "force", "capacity"),
        Result("out_of_plane", "force", "capacity"),
        Result("foot_shear", "force", "capacity"),
        Result("weld", "force", "capacity"),
        Result("pin_holds", "force", "capacity"),
        Result("wall_holds", "force", "capacity"),
        Result("own_allows", "force", "capacity"),
        Result("with_pin_and_wall", "force", "capacity"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    large="governing",
    rates=False,
    example={
        "load": "2,300 lb",
        "thickness": "5/8 in",
        "hole": "15/16 in",
        "pin": "7/8 in",
        "side_edge": "1-1/8 in",
        "end_edge": "1-1/8 in",
        "height": "1-3/4 in",
        "weld_leg": "5/16 in",
        "weld_length": "3 in",
        "yield_strength": "36,000 psi",
        "tensile_strength": "58,000 psi",
        "weld_strength": "70,000 psi",
        "angle_in_plane": "30°",
        "angle_out_of_plane": "0°",
        "design_factor": "3",
        "pin_is": "marked",
        "welded_to": "wall",
        "wall_thickness": "3/4 in",
        "wall_span": "6 in",
        "wall_yield": "36,000 psi",
    },
    citations=(
        Citation("asme-bth-1", "3-2.1 tension, 3-3.3 pinned connections and 3-3.4 welds, from memory"),
        Citation("aisc-360", "Table J2.4, least size of a fillet; Table K1.2, plate on a wall, from memory"),
        Citation("gere", "bending, shear and direct stress of a bar"),
    ),
)
