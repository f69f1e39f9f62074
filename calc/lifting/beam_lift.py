"""How hard does my beam bend, and how far does it sag?

An overhead beam or gantry, or a bench, under one load (calc.lifting.beams). A study aid: it knows nothing of buckling,
of the posts, the bolts and the welds, nor of a trolley that runs or jerks.
"""

from __future__ import annotations

import math

from calc.figures.beams import beam_figure
from calc.lifting.beams import Beam, Section, box_tube, i_section, rectangle, round_bar, round_tube
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, number_text, to_si
from calc.tables import table, value_si
from calc.worksheet import (
    Answer,
    BadInput,
    Caution,
    Choice,
    Citation,
    Given,
    Input,
    Result,
    Say,
    Step,
    Worksheet,
)

_SECTIONS = (
    Choice("i-beam", "I-beam"), Choice("rectangle", "Flat, plank or plate"), Choice("box", "Square or rectangular tube"),
    Choice("tube", "Pipe or round tube"), Choice("round-bar", "Round bar"), Choice("known", "From a section book"),
)  # fmt: skip
_NEEDS = {
    "i-beam": ("depth", "flange_width", "web_thickness", "flange_thickness"),
    "rectangle": ("width", "depth"),
    "box": ("width", "depth", "wall"),
    "tube": ("diameter", "wall"),
    "round-bar": ("diameter",),
    "known": ("second_moment", "depth"),
}
PLAIN_STEEL_YIELD_PSI = 36_000.0
"""Least yield strength of plain structural steel (ASTM A36, from memory)."""

_SMALL_SAG = 10.0
"""Span over sag below which no sag is given. There the formulas of small slopes say 1 % (cantilever) to 4 % (two
supports) more than the exact curve of a bent rod; a test sets them beside it."""

_LIMP = 200.0
"""Span over sag below which a beam is limp enough for a trolley to roll by itself (common practice, no source)."""


def _section(given: Given) -> Section:
    name = given.text("section")
    for need in _NEEDS[name]:
        if not given.has(need):
            raise given.refuse(need, "is missing for this section. Give it as measured, such as 6 in.")
    sizes = {need: given.si(need) for need in _NEEDS[name]}
    _fits(given, name, sizes)
    if name == "i-beam":
        return i_section(
            sizes["depth"], sizes["flange_width"], sizes["web_thickness"], sizes["flange_thickness"]
        )
    if name == "rectangle":
        return rectangle(sizes["width"], sizes["depth"])
    if name == "box":
        return box_tube(sizes["width"], sizes["depth"], sizes["wall"])
    if name == "tube":
        return round_tube(sizes["diameter"], sizes["wall"])
    if name == "round-bar":
        return round_bar(sizes["diameter"])
    return Section(sizes["second_moment"], sizes["depth"] / 2)


def _fits(given: Given, name: str, sizes: dict[str, float]) -> None:
    if "wall" in sizes and sizes["wall"] > min(v for k, v in sizes.items() if k != "wall") / 2:
        raise given.refuse("wall", "is more than half the tube. Measure it again.")
    if name == "i-beam":
        if sizes["web_thickness"] > sizes["flange_width"]:
            raise given.refuse("web_thickness", "is wider than the flange. Measure it again.")
        if 2 * sizes["flange_thickness"] > sizes["depth"]:
            raise given.refuse("flange_thickness", "is more than half the depth. Measure it again.")


def _yield_pa(given: Given) -> float:
    if given.has("yield_strength"):
        return given.si("yield_strength")
    if given.text("material") != "steel":
        raise given.refuse(
            "yield_strength", "is missing for this material. Give its own, such as 20,000 psi."
        )
    return to_si(PLAIN_STEEL_YIELD_PSI, "psi", "pressure")


def _position(given: Given) -> float:
    span, ends = given.si("span"), given.text("ends")
    if not given.has("position"):
        return span if ends == "cantilever" else span / 2
    position = given.si("position")
    if position > span:
        raise _beyond(given)
    if ends != "cantilever" and position == span:
        raise _beyond(given)
    return position


def _beyond(given: Given) -> BadInput:
    return given.refuse("position", "is not on the span. Give a place between the supports.")


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    section = _section(given)
    span, ends = given.si("span"), given.text("ends")
    modulus = table("youngs-modulus").one(material=given.text("material"), quantity="youngs_modulus")
    modulus_pa = value_si(modulus, "pressure")
    load_n = given.si("load") * STANDARD_GRAVITY_M_PER_S2
    even = given.si("own_weight") * STANDARD_GRAVITY_M_PER_S2 if given.has("own_weight") else 0.0
    beam = Beam(span, ends, load_n, _position(given), even, modulus_pa * section.second_moment_m4)
    moment_at, moment = beam.greatest_moment()
    sag_at, sag = beam.greatest_sag()
    stress = moment * section.outer_fibre_m / section.second_moment_m4
    allowed = _yield_pa(given) / given.si("design_factor")
    over = stress > allowed * (1 + 1e-12)
    beyond = _beyond_elastic(stress, _yield_pa(given), span / sag)
    if beyond:
        return _no_sag(given, say, beyond, {"moment": moment, "moment_at": moment_at, "stress": stress,
                       "stress_share": stress / allowed, "second_moment": section.second_moment_m4})  # fmt: skip
    return Answer(
        verdict="stop" if over else "caution",
        headline=_headline(say, stress, allowed, sag, span / sag, over),
        big="deflection",
        results={
            "moment": moment, "moment_at": moment_at, "stress": stress, "stress_share": stress / allowed,
            "deflection": sag, "deflection_at": sag_at, "span_over_deflection": span / sag,
            "second_moment": section.second_moment_m4,
        },
        steps=(
            Step("Hardest bending", _FORMULAS[ends], f"at {say.length(moment_at)} from the left", say.of(moment, "torque", "up")),
            Step("Stress in the outer fibre", "moment × outer fibre / second moment",
                 f"{say.one(moment, 'torque')} × {say.one(section.outer_fibre_m, 'length')} / "
                 f"{say.one(section.second_moment_m4, 'second_moment')}",
                 say.of(stress, "pressure", "up", reading=("psi", "MPa"))),
            Step("Allowed here", "yield strength / design factor",
                 f"{number_text(given.si('design_factor'), 3)} on yield", say.of(allowed, "pressure", "down", reading=("psi", "MPa"))),
            Step("Sag", "elastic line, E × I",
                 f"E {say.of(modulus_pa, 'pressure', reading=('psi', 'GPa'))}, at {say.length(sag_at)} from the left",
                 say.of(sag, "length", "up")),
        ),
        cautions=_cautions(given, over, span / sag),
        figure=beam_figure(beam, moment_at, sag_at, sag, say),
        citations=(Citation(modulus["source"], modulus["locator"]),),
    )  # fmt: skip


def _beyond_elastic(stress_pa: float, yield_pa: float, span_over_sag: float) -> str:
    """Why no sag can be reckoned, or nothing."""
    if stress_pa > yield_pa * (1 + 1e-12):
        return "The stress passes the yield point: the beam stays bent or comes down"
    if span_over_sag < _SMALL_SAG:
        return "It sags by more than a tenth of its span, and the formulas end there"
    return ""


def _no_sag(given: Given, say: Say, why: str, results: dict[str, float]) -> Answer:
    """The answer where the elastic line ends: bending and stress, no sag, and a stop."""
    share = number_text(results["stress_share"] * 100, 3, "up")
    return Answer(
        verdict="stop",
        headline=f"Do not lift from this. {why}. The stress is {share}% of what is allowed here. No sag is given.",
        big="stress_share",
        results={**results, "deflection": None, "deflection_at": None, "span_over_deflection": None},
        shown=dict.fromkeys(("deflection", "deflection_at", "span_over_deflection"), "beyond the formulas"),
        steps=(
            Step("Hardest bending", _FORMULAS[given.text("ends")], f"at {say.length(results['moment_at'])} from the left",
                 say.of(results["moment"], "torque", "up")),
            Step("Stress in the outer fibre", "moment × outer fibre / second moment", "as if it stayed elastic",
                 say.of(results["stress"], "pressure", "up", reading=("psi", "MPa"))),
        ),
        cautions=_cautions(given, True, math.inf),
    )  # fmt: skip


_FORMULAS = {
    "simple": "P b / L × x less what the load takes, and w x (L − x) / 2",
    "fixed": "built in at both ends: P a b² / L² at the near end, and w L² / 12",
    "cantilever": "P × arm, and w L² / 2",
}


def _headline(say: Say, stress: float, allowed: float, sag: float, ratio: float, over: bool) -> str:
    first = f"It sags {say.of(sag, 'length', 'up')}, the span over {number_text(ratio, 3, 'down')}."
    share = number_text(stress / allowed * 100, 3, "up")
    if over:
        return f"{first} The stress is {share}% of what is allowed here: too much."
    return f"{first} The stress is {share}% of what is allowed here. Who answers for the beam says if it may lift."


def _cautions(given: Given, over: bool, ratio: float) -> tuple[Caution, ...]:
    cautions = []
    if over:
        cautions.append(Caution("The stress is over its limit. Do not lift from this beam.", "prohibition"))
    cautions.append(
        Caution("A study aid. A beam that lifts is designed for it, marked with its rating and tested; a roof beam was "
                "made for a roof. Ask a qualified person.", "mandatory")
    )  # fmt: skip
    if given.text("section") in ("i-beam", "rectangle"):
        cautions.append(
            Caution(
                "Deep thin beams roll over sideways before they bend down. This sheet does not count that."
            )
        )
    if given.text("ends") == "fixed":
        cautions.append(
            Caution("Hardly any end is truly built in. Take simple ends unless somebody designed it so.")
        )
    if ratio < _LIMP:
        cautions.append(
            Caution("The beam is limp: a trolley will roll to the middle by itself, and the load bounces.")
        )
    if not given.has("own_weight"):
        cautions.append(
            Caution("The beam's own weight is not counted. Give it for a long or heavy beam.", "note")
        )
    cautions.append(
        Caution("A hoist that starts or stops adds to the load. Count a quarter more for a power hoist (common practice, no source).",
                "note")
    )  # fmt: skip
    return tuple(cautions)


def _size(name: str, label: str, text: str) -> Input:
    used = tuple(section for section, needs in _NEEDS.items() if name in needs)
    return Input(name, label, "quantity", "length", above=0, at_most=200, required=False, help=text,
                 shown_when={"section": used})  # fmt: skip


WORKSHEET = Worksheet(
    name="beam-lift",
    title="How hard does my beam bend, and how far does it sag?",
    summary="Moment, stress and sag of an overhead beam, gantry or bench under one load, as a study aid.",
    inputs=(
        Input("load", "Load", "quantity", "weight", above=0, at_most=2_000_000, help="With hoist, trolley and rigging."),
        Input("span", "Span", "quantity", "length", unit="ft", unit_si="m", above=0, at_most=200,
              help="Between the supports, or from the wall to the free end."),
        Input("position", "Load from the left support", "quantity", "length", unit="ft", unit_si="m", above=0, at_most=200,
              required=False, help="Left empty: the middle, or the free end of a cantilever."),
        Input("ends", "Ends", "choice", default="simple",
              choices=(Choice("simple", "Resting on two supports"), Choice("fixed", "Built in at both ends"),
                       Choice("cantilever", "Built in at the left, free at the right"))),
        Input("section", "Section", "choice", choices=_SECTIONS),
        _size("depth", "Depth", "Upright, over all."),
        _size("width", "Width", "Level, over all."),
        _size("diameter", "Outside diameter", "Over all."),
        _size("wall", "Wall", "With calipers."),
        _size("flange_width", "Flange width", "Across the top."),
        _size("web_thickness", "Web thickness", "The upright part."),
        _size("flange_thickness", "Flange thickness", "At the middle of its overhang."),
        Input("second_moment", "Second moment of area", "quantity", "second_moment", above=0, at_most=1_000_000,
              required=False, shown_when={"section": ("known",)}, help="I about the level axis, from the section book."),
        Input("material", "Made of", "choice", default="steel",
              choices=tuple(Choice(row["material"], row["material"].replace("_", " "))
                            for row in table("youngs-modulus").rows)),
        Input("yield_strength", "Yield strength", "quantity", "pressure", unit="psi", unit_si="MPa", above=0,
              at_most=250_000, required=False, help="Left empty for steel: 36,000 psi. Any other material: its own."),
        Input("design_factor", "Design factor on yield", "number", at_least=1.5, at_most=10, default="3",
              help="3 for lifting by common practice, no source."),
        Input("own_weight", "Weight of the beam by the foot", "quantity", "weight_per_length", above=0, at_most=10_000,
              required=False, help="W8×31 weighs 31 lb/ft."),
    ),
    results=(
        Result("deflection", "It sags", "length", rounding="up"),
        Result("span_over_deflection", "Span over sag", rounding="down"),
        Result("deflection_at", "Sags most at, from the left", "length"),
        Result("moment", "Hardest bending", "torque", rounding="up"),
        Result("moment_at", "Bends hardest at, from the left", "length"),
        Result("stress", "Stress in the outer fibre", "pressure", "psi", "MPa", rounding="up"),
        Result("stress_share", "Part of the allowed stress", "fraction", rounding="up"),
        Result("second_moment", "Second moment of area", "second_moment", rounding="down"),
    ),
    compute=compute,
    example={
        "load": "1,600 lb", "span": "14 ft", "section": "i-beam", "depth": "8 in", "flange_width": "5-1/4 in",
        "web_thickness": "1/4 in", "flange_thickness": "5/16 in", "own_weight": "18 lb/ft",
    },
    example_story="The yard looks at a gantry beam before it hangs a diesel from its middle.",
    citations=(Citation("gere", "deflections of beams"),),
)  # fmt: skip
