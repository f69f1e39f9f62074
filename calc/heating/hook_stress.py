"""Where is a hook stressed most, and what would a bead there sit in?

Winkler-Bach stress of a curved bar (calc.heating.curved_beam) for a hook that is new, sound and elastic. It shows
why the inside of a hook must never be welded, nicked or heated. It is no strength and no rating.
"""

from __future__ import annotations

import math

from calc.figures.heat_hook import OutlineRow, hook_stress_figure
from calc.heating.curved_beam import CurvedSection, circle, section_of_strips, tee_strips, trapezoid_strips
from calc.quantities import number_text
from calc.worksheet import (
    Answer,
    Caution,
    Choice,
    Citation,
    Given,
    Input,
    Result,
    Say,
    Step,
    Verdict,
    Worksheet,
)

SHARPEST_BEND = 0.2
"""Least inner radius over depth answered: sharper bends lie outside the published examples (0.42 and up)."""
SLACKEST_BEND = 20.0
"""Greatest inner radius over depth answered: beyond it the bar is as good as straight."""
_KSI = ("ksi", "MPa")


def _section(given: Given) -> tuple[CurvedSection, tuple[OutlineRow, ...]]:
    shape, inner = given.text("shape"), given.si("inner_radius")
    if shape == "circle":
        diameter = given.si("diameter")
        rows = tuple(
            (
                inner + diameter / 2 * (1 - math.cos(math.pi * i / 24)),
                diameter / 2 * math.sin(math.pi * i / 24),
            )
            for i in range(25)
        )
        return circle(inner, diameter), rows
    depth, width = given.si("depth"), given.si("inner_width")
    if shape == "tee":
        flange, web = given.si("flange_depth"), given.si("outer_width")
        if flange >= depth:
            raise given.refuse("flange_depth", "is not less than the whole depth. Give a thinner flange.")
        if web > width:
            raise given.refuse("outer_width", "is wider than the flange. Give the narrower web.")
        step = inner + flange
        outline = ((inner, width / 2), (step, width / 2), (step, web / 2), (inner + depth, web / 2))
        return section_of_strips(tee_strips(inner, depth, width, flange, web)), outline
    outer_width = width if shape == "rectangle" else given.si("outer_width")
    strips = trapezoid_strips(inner, depth, width, outer_width)
    return section_of_strips(strips), ((inner, width / 2), (inner + depth, outer_width / 2))


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    section, outline = _section(given)
    depth = section.outer_radius_m - section.inner_radius_m
    bend = section.inner_radius_m / depth
    if not SHARPEST_BEND * (1 - 1e-12) <= bend <= SLACKEST_BEND * (1 + 1e-12):
        low, high = SHARPEST_BEND * depth, SLACKEST_BEND * depth
        raise given.refuse(
            "inner_radius",
            f"is out of range for this depth: the theory is used here from {say.length(low)} to {say.length(high)}.",
        )
    arm = given.si("arm") if given.has("arm") else section.centroid_radius_m
    to_edge = section.centroid_radius_m - section.inner_radius_m
    if arm <= to_edge:
        raise given.refuse(
            "arm",
            "crosses the section: the line of the load would run through the metal. Give the distance to the middle "
            f"of the section, over {say.length(to_edge)}, or leave it out.",
        )
    load_n = given.si("load")
    moment = load_n * arm
    edges = (section.inner_radius_m, section.outer_radius_m)
    inner, outer = (section.stress_pa(radius, load_n, moment) for radius in edges)
    bead_at = given.text("bead_at")
    bead_radius = {"inner": edges[0], "side": section.centroid_radius_m, "outer": edges[1]}.get(bead_at)
    bead = None if bead_radius is None else section.stress_pa(bead_radius, load_n, moment)
    pull_only = load_n / section.area_m2
    curve = [
        (radius, section.stress_pa(radius, load_n, moment))
        for radius in (edges[0] + depth * i / 40 for i in range(41))
    ]
    verdict: Verdict = "unknown" if bead is None else "stop"
    return Answer(
        verdict=verdict,
        headline=_headline(say, load_n, inner, inner / pull_only, bead),
        big="inner_stress",
        results={
            "inner_stress": inner, "outer_stress": outer, "neutral_radius": section.neutral_radius_m,
            "centroid_radius": section.centroid_radius_m, "eccentricity": section.eccentricity_m,
            "section_area": section.area_m2, "bending_moment": moment, "bead_stress": bead, "times_plain_pull": inner / pull_only,
        },
        shown={} if bead is not None else {"bead_stress": "no bead placed"},
        steps=_steps(say, section, load_n, arm, inner, outer),
        cautions=_cautions(bead is not None),
        figure=hook_stress_figure(outline, curve, _zero_radius(section, load_n, moment), bead_radius, say),
    )  # fmt: skip


def _zero_radius(section: CurvedSection, load_n: float, moment_nm: float) -> float:
    """The radius [m] where pull and bending cancel; it lies outside the neutral radius of bending alone."""
    return section.neutral_radius_m / (1 - load_n * section.eccentricity_m / moment_nm)


def _headline(say: Say, load_n: float, inner: float, times: float, bead: float | None) -> str:
    stress = say.of(inner, "pressure", "up", reading=_KSI)
    first = (
        f"At {say.force(load_n)} the inside of a new, sound hook of this shape feels {stress}: {number_text(times)} "
        "times the plain pull."
    )
    if bead is None:
        return f"{first} This is a stress, not a rating."
    words = f"{say.of(abs(bead), 'pressure', 'up', reading=_KSI)} of {'pull' if bead >= 0 else 'squeeze'}"
    return f"{first} A bead there would sit in {words}. Stop: a welded hook has no rating."


def _steps(
    say: Say, section: CurvedSection, load_n: float, arm_m: float, inner: float, outer: float
) -> tuple[Step, ...]:
    def length(value_m: float) -> str:
        return say.one(value_m, "length")

    area = say.one(section.area_m2, "area")
    moment = say.one(load_n * arm_m, "torque")
    steps = [
        Step("Middle of the section, from the centre of the bend", "∫ r dA / A", f"inner radius {length(section.inner_radius_m)}", length(section.centroid_radius_m)),
        Step("Neutral radius", "A / ∫ dA / r", area, length(section.neutral_radius_m)),
        Step("Eccentricity e", "middle − neutral radius", f"{length(section.centroid_radius_m)} − {length(section.neutral_radius_m)}", length(section.eccentricity_m)),
        Step("Bending moment", "load × arm", f"{say.one(load_n, 'force')} × {length(arm_m)}", moment),
    ]  # fmt: skip
    for name, radius, stress in (
        ("Stress at the inside", section.inner_radius_m, inner),
        ("Stress at the outside", section.outer_radius_m, outer),
    ):
        steps.append(
            Step(
                name,
                "load / A + moment (rn − r) / (A e r)",
                f"{say.one(load_n, 'force')} / {area} + {moment} × ({length(section.neutral_radius_m)} − {length(radius)}) / "
                f"({area} × {length(section.eccentricity_m)} × {length(radius)})",
                say.of(stress, "pressure", "up" if stress > 0 else "nearest", reading=_KSI),
            )
        )
    return tuple(steps)


def _cautions(bead: bool) -> tuple[Caution, ...]:
    cautions = [
        Caution(
            "A hook is rated by its maker from tests, not from this stress. Never work a rating backwards out of it.",
            "prohibition",
        ),
        Caution(
            "Left out: the load's push on the seat, a load on the tip, twist, wear, nicks, and all heat. Each makes it worse.",
            "note",
        ),
    ]
    if bead:
        cautions.insert(
            0,
            Caution(
                "A bead adds its own shrinkage stress, up to the strength of the steel, and a notch at its toe. Neither is in "
                "this figure. Take a welded hook out of use and cut it up.",
                "prohibition",
            ),
        )
    return tuple(cautions)


_WIDE = ("rectangle", "trapezoid", "tee")
WORKSHEET = Worksheet(
    name="hook-stress",
    title="Where is a hook stressed most?",
    summary="The stress across the bend of a new, sound hook, inside to outside, and what a bead there would sit in.",
    inputs=(
        Input("shape", "Shape of the section", "choice",
              choices=(Choice("trapezoid", "Trapezoid, wide inside"), Choice("circle", "Round bar"),
                       Choice("rectangle", "Rectangle"), Choice("tee", "T, flange inside")),
              help="The cut across the bend, at the height of the load."),
        Input("diameter", "Diameter of the bar", "quantity", "length", above=0, at_most=40, shown_when={"shape": ("circle",)},
              help="Round bar only."),
        Input("depth", "Depth, inside to outside", "quantity", "length", above=0, at_most=40, shown_when={"shape": _WIDE},
              help="Measured along a line from the middle of the bend."),
        Input("inner_width", "Width at the inside", "quantity", "length", above=0, at_most=40, shown_when={"shape": _WIDE},
              help="Where the load sits. For a T: the flange."),
        Input("outer_width", "Width at the outside", "quantity", "length", above=0, at_most=40, shown_when={"shape": ("trapezoid", "tee")},
              help="At the back of the hook. For a T: the web."),
        Input("flange_depth", "Depth of the flange", "quantity", "length", above=0, at_most=40, shown_when={"shape": ("tee",)},
              help="The T only."),
        Input("inner_radius", "Inner radius of the bend", "quantity", "length", above=0, at_most=800,
              help="Half the width of the throat's seat."),
        Input("load", "Load on the hook", "quantity", "force", above=0, at_most=5_000_000, help="All that hangs from the hook."),
        Input("arm", "From the line of the load to the middle of the section", "quantity", "length", above=0, at_most=4000, required=False,
              help="Left empty: the load hangs under the middle of the bend."),
        Input("bead_at", "Put a weld bead in the picture", "choice", default="none",
              choices=(Choice("none", "No bead"), Choice("inner", "On the inside"), Choice("side", "On the side"), Choice("outer", "On the back")),
              help="To see what it would sit in."),
    ),
    results=(
        Result("inner_stress", "Stress at the inside", "pressure", *_KSI, rounding="up"),
        Result("outer_stress", "Stress at the outside (minus: squeeze)", "pressure", *_KSI),
        Result("neutral_radius", "Neutral radius of bending", "length", digits=4),
        Result("centroid_radius", "Radius of the section's middle", "length", digits=4),
        Result("eccentricity", "Eccentricity", "length", digits=4),
        Result("section_area", "Area of the section", "area"),
        Result("bending_moment", "Bending moment", "torque"),
        Result("bead_stress", "Stress under the bead, before its own", "pressure", *_KSI),
        Result("times_plain_pull", "Inside stress over plain pull"),
    ),
    compute=compute,
    example={"shape": "trapezoid", "depth": "1 in", "inner_width": "3/4 in", "outer_width": "1/2 in", "inner_radius": "5/8 in",
             "load": "2,800 lb", "bead_at": "inner"},
    example_story="The yard wonders what a tack inside the bend of its engine hook would sit in when the 2,800 lb diesel hangs on it.",
    citations=(Citation("boresi-schmidt", "chapter 9, curved beams"), Citation("shigley", "section 3-18, curved beams")),
)  # fmt: skip
