"""How may a plate lug fail, and which way first?

A study aid: each way of failing by its formula (calc.lifting.lug_strength; ASME BTH-1 recalled, not read), the weakest
named. It rates nothing. A lug that lifts is designed, welded and tested by people who answer for it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.lugs import LugFace, lug_figure
from calc.inputs import Bounds, ChoiceInput, Given, NumberInput, QuantityInput
from calc.lifting.lug_strength import (
    FootLoad,
    Lug,
    bearing_n,
    double_plane_n,
    effective_side_m,
    foot_bending_n,
    foot_load,
    foot_stress_pa,
    looseness_factor,
    net_tension_n,
    shear_plane_m,
    single_plane_n,
    split_width_m,
    tear_out_n,
    weld_allowable_pa,
    weld_n,
    weld_stress_pa,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note
from calc.words.facts import Fact, Message, Number, Quantity, force, length, message, share
from calc.words.writer import Writer

LOOSE_PIN = 0.9
"""Part of the hole under which a pin is called loose [-] (our own bound, no source)."""

COMMON_FACTOR = 3.0
"""Design factor of common lifting (ASME BTH-1, category B, from memory)."""

Way = Literal["net_tension", "tear_out", "bearing", "out_of_plane", "weld"]
"""A way of failing."""


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
    )
    if lug.pin_m > lug.hole_m:
        raise given.refuse("pin", "thicker-than-the-hole")
    if lug.yield_pa > lug.tensile_pa:
        raise given.refuse("yield_strength", "over-the-tensile-strength")
    if exceeds(lug.weld_leg_m, lug.thickness_m):
        raise given.refuse("weld_leg", "thicker-than-the-plate", plate=length(lug.thickness_m))
    if exceeds(lug.weld_length_m, lug.width_at_hole_m):
        raise given.refuse("weld_length", "longer-than-the-plate", wide=length(lug.width_at_hole_m))
    if lug.height_m < lug.hole_m / 2:
        raise given.refuse("height", "hole-in-the-weld")
    return lug


@dataclass(frozen=True)
class Found:
    """The load at which each way of failing reaches its allowable, and which comes first."""

    lug: Lug
    pull: FootLoad
    load_n: float
    angle_in_plane_deg: float
    angle_out_of_plane_deg: float
    net_tension_n: float
    tear_out_n: float
    bearing_n: float
    out_of_plane_n: float
    weld_n: float
    governing: Message
    capacity_estimate_n: float


def find(given: Given) -> Found:
    """Strength of the lug, way by way; see WORKSHEET for inputs and results."""
    lug = _lug(given)
    in_plane, across = given.si("angle_in_plane"), given.si("angle_out_of_plane")
    pull = foot_load(in_plane, across)
    ways: dict[Way, float] = {
        "net_tension": net_tension_n(lug),
        "tear_out": tear_out_n(lug),
        "bearing": bearing_n(lug),
        "out_of_plane": foot_bending_n(lug, pull),
        "weld": weld_n(lug, pull),
    }
    first = min(ways, key=lambda way: ways[way])
    return Found(
        lug=lug,
        pull=pull,
        load_n=given.si("load") * STANDARD_GRAVITY_M_PER_S2,
        angle_in_plane_deg=in_plane,
        angle_out_of_plane_deg=across,
        net_tension_n=ways["net_tension"],
        tear_out_n=ways["tear_out"],
        bearing_n=ways["bearing"],
        out_of_plane_n=ways["out_of_plane"],
        weld_n=ways["weld"],
        governing=message(f"way-{first}"),
        capacity_estimate_n=ways[first],
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once. A study aid rates nothing: what is too much is a caution in words."""
    reasons: list[Reason] = []
    used: Mapping[str, Fact] = {"used": share(found.load_n / found.capacity_estimate_n)}
    if exceeds(found.load_n, found.capacity_estimate_n):
        reasons.append(Reason("over-the-first-way", "caution", used, "prohibition"))
    reasons.append(Reason("study-aid", "note", used, "mandatory"))
    reasons.append(note("formulas-from-memory", "warning"))
    if found.angle_out_of_plane_deg > 0:
        reasons.append(caution("weak-across"))
    if found.lug.pin_m < LOOSE_PIN * found.lug.hole_m:
        reasons.append(caution("loose-pin"))
    if found.lug.design_factor < COMMON_FACTOR:
        reasons.append(caution("small-factor"))
    reasons.append(note("not-counted"))
    return tuple(reasons)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working, one for each way of failing; tearing out at the end has two."""
    lug, load_n = found.lug, found.load_n
    thick = length(lug.thickness_m, "capacity")
    ultimate = _stress(lug.tensile_pa)
    loose = Number(looseness_factor(lug), 3, "capacity")

    def by_stress(code: str, allowed_pa: float, stress_pa: float) -> Step:
        allowed, stress = _stress(allowed_pa, "capacity"), _stress(stress_pa, "demand")
        return step(code, pull=force(load_n, "demand"), allowed=allowed, stress=stress)

    return (
        step(
            "tears",
            loose=loose,
            ultimate=ultimate,
            thick=thick,
            side=length(effective_side_m(lug), "capacity"),
        ),
        step(
            "splits",
            loose=loose,
            ultimate=ultimate,
            thick=thick,
            width=length(split_width_m(lug), "capacity"),
            splits=force(single_plane_n(lug), "capacity"),
        ),
        step(
            "shears",
            ultimate=ultimate,
            thick=thick,
            plane=length(shear_plane_m(lug), "capacity"),
            shears=force(double_plane_n(lug), "capacity"),
        ),
        step("crushes", yields=_stress(lug.yield_pa), bears=length(lug.pin_m, "capacity"), thick=thick),
        by_stress("bends", lug.yield_pa / lug.design_factor, foot_stress_pa(lug, found.pull, load_n)),
        by_stress("weld", weld_allowable_pa(lug), weld_stress_pa(lug, found.pull, load_n)),
    )


def _stress(value_pa: float, sense: Literal["plain", "capacity", "demand"] = "plain") -> Quantity:
    """A stress or a strength [Pa] for a line of the working."""
    return Quantity(value_pa, "pressure", sense)


def draw(found: Found, writer: Writer) -> Figure:
    """The face of the lug to scale."""
    lug = found.lug
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
    )
    caption = writer.text(
        "figure",
        wide=length(lug.width_at_hole_m),
        thick=length(lug.thickness_m),
        lean=Quantity(found.angle_in_plane_deg, "angle"),
        governing=found.governing,
    )
    return lug_figure(face, caption, writer)


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
        _strength("yield_strength", 200_000),
        _strength("tensile_strength", 250_000),
        _strength("weld_strength", 150_000),
        _lean("angle_in_plane"),
        _lean("angle_out_of_plane"),
        NumberInput("design_factor", bounds=Bounds(at_least=2, at_most=10)),
    ),
    results=(
        Result("capacity_estimate", "force", "capacity"),
        Result("governing"),
        Result("net_tension", "force", "capacity"),
        Result("tear_out", "force", "capacity"),
        Result("bearing", "force", "capacity"),
        Result("out_of_plane", "force", "capacity"),
        Result("weld", "force", "capacity"),
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
    },
    citations=(
        Citation("asme-bth-1", "3-3.3 pinned connections and 3-3.4 welds, from memory"),
        Citation("gere", "bending and direct stress of a bar"),
    ),
)
