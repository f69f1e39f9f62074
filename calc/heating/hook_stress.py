"""Where is a hook stressed most, and what would a bead there sit in?

Winkler-Bach stress of a curved bar (calc.heating.curved_beam) for a hook that is new, sound and elastic. It shows
why the inside of a hook must never be welded, nicked or heated. It is no strength and no rating.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.heat_hook import HookSection, HookWords, OutlineRow, hook_stress_figure
from calc.heating.curved_beam import (
    MOST_SLENDER_FLANGE,
    CurvedSection,
    WorkingFlange,
    circle,
    section_of_strips,
    tee_strips,
    trapezoid_strips,
    working_flange,
)
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput
from calc.reasons import Reason, note
from calc.words.facts import Absent, Number, Quantity, absent, length, message
from calc.words.writer import Writer

SHARPEST_BEND = 0.2
"""Least inner radius over depth answered: sharper bends lie outside the published examples (0.42 and up)."""
SLACKEST_BEND = 20.0
"""Greatest inner radius over depth answered: beyond it the bar is as good as straight."""
_STRESS_UNITS = ("ksi", "MPa")
_ROUND_PARTS = 24
"""Parts of the outline of a round bar."""
_CURVE_PARTS = 40
"""Parts of the line of the stress."""


@dataclass(frozen=True)
class _Bar:
    """The section of the bar, and its outline as drawn.

    section -- as far as it works: of a T, with what of its flange carries the bend
    whole -- the section as it is cut
    flange -- of a T, what of its flange carries the bend; None for any other shape
    flange_m -- of a T, how wide and how deep its flange is
    """

    section: CurvedSection
    outline: tuple[OutlineRow, ...]
    whole: CurvedSection
    flange: WorkingFlange | None = None
    flange_m: tuple[float, float] = (0.0, 0.0)

    @property
    def depth_m(self) -> float:
        """Depth, inside to outside [m]."""
        return self.section.outer_radius_m - self.section.inner_radius_m


def _bar(given: Given) -> _Bar:
    shape, inner = given.text("shape"), given.si("inner_radius")
    if shape == "circle":
        return _round(inner, given.si("diameter"))
    if shape == "tee":
        return _tee(given)
    depth, width = given.si("depth"), given.si("inner_width")
    outer_width = width if shape == "rectangle" else given.si("outer_width")
    section = section_of_strips(trapezoid_strips(inner, depth, width, outer_width))
    return _Bar(section, ((inner, width / 2), (inner + depth, outer_width / 2)), section)


def _round(inner_m: float, diameter_m: float) -> _Bar:
    half = diameter_m / 2
    turns = [math.pi * part / _ROUND_PARTS for part in range(_ROUND_PARTS + 1)]
    outline = tuple((inner_m + half * (1 - math.cos(turn)), half * math.sin(turn)) for turn in turns)
    section = circle(inner_m, diameter_m)
    return _Bar(section, outline, section)


def _tee(given: Given) -> _Bar:
    inner, depth, width = given.si("inner_radius"), given.si("depth"), given.si("inner_width")
    flange, web = given.si("flange_depth"), given.si("outer_width")
    if flange >= depth:
        raise given.refuse("flange_depth", "flange-too-deep")
    if web > width:
        raise given.refuse("outer_width", "web-too-wide")
    step_m = inner + flange
    outline = ((inner, width / 2), (step_m, width / 2), (step_m, web / 2), (inner + depth, web / 2))
    works = _flange_of_tee(given, (width - web) / 2, inner + flange / 2, flange)
    working_width = web + works.share * (width - web)
    return _Bar(
        section_of_strips(tee_strips(inner, depth, working_width, flange, web)),
        outline,
        section_of_strips(tee_strips(inner, depth, width, flange, web)),
        works,
        (width, flange),
    )


def _flange_of_tee(
    given: Given, projection_m: float, middle_radius_m: float, depth_m: float
) -> WorkingFlange:
    """What of the flange works; refuses one thinner against its width than the correction is printed for."""
    works = working_flange(projection_m, middle_radius_m, depth_m)
    if exceeds(works.slenderness, MOST_SLENDER_FLANGE):
        raise given.refuse("flange_depth", "flange-too-thin", most=Number(MOST_SLENDER_FLANGE))
    return works


def _hold_the_bend(given: Given, bar: _Bar) -> None:
    """Refuse a bend sharper or slacker than the theory is used for."""
    low, high = SHARPEST_BEND * bar.depth_m, SLACKEST_BEND * bar.depth_m
    radius = bar.section.inner_radius_m
    if exceeds(low, radius) or exceeds(radius, high):
        raise given.refuse("inner_radius", "bend-out-of-range", low=length(low), high=length(high))


def _arm_m(given: Given, bar: _Bar) -> float:
    """From the line of the load to the middle of what works of the section [m].

    The reader measures to the middle of the section as it is cut; what works of a T has its middle farther out.
    """
    if given.text("load_line") == "middle" and given.has("arm"):
        raise given.refuse("arm", "arm-and-middle")
    whole = bar.whole.centroid_radius_m
    arm = given.si("arm") if given.text("load_line") == "measured" else whole
    to_edge = whole - bar.whole.inner_radius_m
    if arm <= to_edge:
        raise given.refuse("arm", "arm-crosses", to_edge=length(to_edge))
    return arm + bar.section.centroid_radius_m - whole


@dataclass(frozen=True)
class Found:
    """The stress across the bend, and what a bead would sit in."""

    bar: _Bar
    load_n: float
    arm_m: float
    bead_radius_m: float | Absent
    inner_stress_pa: float
    outer_stress_pa: float
    neutral_radius_m: float
    centroid_radius_m: float
    eccentricity_m: float
    section_area_m2: float
    bending_moment_nm: float
    bead_stress_pa: float | Absent
    times_plain_pull: float
    flange_share: float | Absent
    flange_sideways_pa: float | Absent

    def stress_pa(self, radius_m: float) -> float:
        """Stress along the bar [Pa] at a radius."""
        return self.bar.section.stress_pa(radius_m, self.load_n, self.bending_moment_nm)

    @property
    def zero_radius_m(self) -> float:
        """The radius [m] where pull and bending cancel; it lies outside the neutral radius of bending alone."""
        return self.neutral_radius_m / (1 - self.load_n * self.eccentricity_m / self.bending_moment_nm)


def find(given: Given) -> Found:
    """The stresses of the bend; see WORKSHEET for inputs and results."""
    bar = _bar(given)
    _hold_the_bend(given, bar)
    section = bar.section
    arm, load_n = _arm_m(given, bar), given.si("load")
    moment = load_n * arm
    inner = section.stress_pa(section.inner_radius_m, load_n, moment)
    bead_radius = _bead_radius_m(given.text("bead_at"), section)
    return Found(
        bar=bar,
        load_n=load_n,
        arm_m=arm,
        bead_radius_m=bead_radius,
        inner_stress_pa=inner,
        outer_stress_pa=section.stress_pa(section.outer_radius_m, load_n, moment),
        neutral_radius_m=section.neutral_radius_m,
        centroid_radius_m=section.centroid_radius_m,
        eccentricity_m=section.eccentricity_m,
        section_area_m2=section.area_m2,
        bending_moment_nm=moment,
        bead_stress_pa=bead_radius
        if isinstance(bead_radius, Absent)
        else section.stress_pa(bead_radius, load_n, moment),
        times_plain_pull=inner / (load_n / bar.whole.area_m2),
        flange_share=absent("no-flange") if bar.flange is None else bar.flange.share,
        flange_sideways_pa=_flange_sideways_pa(bar, load_n, moment),
    )


def _flange_sideways_pa(bar: _Bar, load_n: float, moment_nm: float) -> float | Absent:
    """Squeeze across the inner face of a T's flange at its web [Pa], by Bleich; the flange bends away from the bend."""
    if bar.flange is None:
        return absent("no-flange")
    middle = bar.section.inner_radius_m + bar.flange_m[1] / 2
    return bar.flange.sideways * bar.section.stress_pa(middle, load_n, moment_nm)


def _bead_radius_m(bead_at: str, section: CurvedSection) -> float | Absent:
    places = {
        "inner": section.inner_radius_m,
        "side": section.centroid_radius_m,
        "outer": section.outer_radius_m,
    }
    return places.get(bead_at, absent("no-bead"))


def judge(found: Found) -> tuple[Reason, ...]:
    """A stress is no rating, and a welded hook has none: a study, which gives no verdict on a part."""
    told = (_of_the_bead(found.bead_stress_pa), note("never-backwards", "prohibition"), note("left-out"))
    return told if found.bar.flange is None else (*told, note("flange", "warning"))


def _of_the_bead(bead_stress_pa: float | Absent) -> Reason:
    if isinstance(bead_stress_pa, Absent):
        return note("a-stress")
    way = message("pull" if bead_stress_pa >= 0 else "squeeze")
    return note("bead", "prohibition", stress=_stress(abs(bead_stress_pa)), way=way)


def _stress(stress_pa: float) -> Quantity:
    """A stress [Pa]: a pull reads up, a squeeze to the nearest."""
    return Quantity(stress_pa, "pressure", "demand" if stress_pa > 0 else "plain", units=_STRESS_UNITS)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    inner, outer = found.bar.section.inner_radius_m, found.bar.section.outer_radius_m
    return (
        *_flange_steps(found.bar),
        step("middle", inner=length(inner)),
        step("neutral-radius"),
        step("eccentricity"),
        step("moment", arm_used=length(found.arm_m)),
        step("inside", radius=length(inner), stress=_stress(found.inner_stress_pa)),
        step("outside", radius=length(outer), stress=_stress(found.outer_stress_pa)),
    )


def _flange_steps(bar: _Bar) -> tuple[Step, ...]:
    """What of a T's flange counts, and how it bends sideways."""
    if bar.flange is None:
        return ()
    slenderness, sideways = Number(bar.flange.slenderness), Number(bar.flange.sideways)
    width, deep = (length(one) for one in bar.flange_m)
    return (
        step("flange", slenderness=slenderness, width=width, deep=deep),
        step("flange-sideways", sideways=sideways),
    )


def draw(found: Found, writer: Writer) -> Figure:
    """The section and the stress across it to scale."""
    inner, depth = found.bar.section.inner_radius_m, found.bar.depth_m
    radii = [inner + depth * part / _CURVE_PARTS for part in range(_CURVE_PARTS + 1)]
    bead_radius = found.bead_radius_m
    section = HookSection(
        found.bar.outline,
        tuple((radius, found.stress_pa(radius)) for radius in radii),
        found.zero_radius_m,
        None if isinstance(bead_radius, Absent) else bead_radius,
    )
    inside, outside = _stress(found.inner_stress_pa), _outside(found)
    words = HookWords(
        inside=writer.plain(inside),
        outside=writer.plain(outside),
        depth=writer.own(length(depth)),
        no_stress=writer.text("figure-no-stress"),
        load_side=writer.text("figure-load-side"),
    )
    bead = found.bead_stress_pa
    caption = writer.text(
        "figure",
        inside=inside,
        outside=outside,
        bead=bead if isinstance(bead, Absent) else _stress(bead),
    )
    return hook_stress_figure(section, words, caption)


def _outside(found: Found) -> Quantity:
    return Quantity(found.outer_stress_pa, "pressure", units=_STRESS_UNITS)


_SIDE = Bounds(above=0, at_most=40)
_WIDE = ("rectangle", "trapezoid", "tee")

WORKSHEET = Worksheet(
    name="hook-stress",
    inputs=(
        ChoiceInput("shape", choices=("trapezoid", "circle", "rectangle", "tee")),
        QuantityInput("diameter", dimension="length", bounds=_SIDE, shown_when={"shape": ("circle",)}),
        QuantityInput("depth", dimension="length", bounds=_SIDE, shown_when={"shape": _WIDE}),
        QuantityInput("inner_width", dimension="length", bounds=_SIDE, shown_when={"shape": _WIDE}),
        QuantityInput(
            "outer_width", dimension="length", bounds=_SIDE, shown_when={"shape": ("trapezoid", "tee")}
        ),
        QuantityInput("flange_depth", dimension="length", bounds=_SIDE, shown_when={"shape": ("tee",)}),
        QuantityInput("inner_radius", dimension="length", bounds=Bounds(above=0, at_most=800)),
        QuantityInput("load", dimension="force", bounds=Bounds(above=0, at_most=5_000_000), sense="demand"),
        ChoiceInput("load_line", choices=("middle", "measured")),
        QuantityInput(
            "arm",
            dimension="length",
            bounds=Bounds(above=0, at_most=4000),
            shown_when={"load_line": ("measured",)},
            sense="demand",
        ),
        ChoiceInput("bead_at", choices=("none", "inner", "side", "outer"), default="none"),
    ),
    results=(
        Result("inner_stress", "pressure", "demand", *_STRESS_UNITS),
        Result("outer_stress", "pressure", "plain", *_STRESS_UNITS),
        Result("neutral_radius", "length", digits=4),
        Result("centroid_radius", "length", digits=4),
        Result("eccentricity", "length", digits=4),
        Result("section_area", "area"),
        Result("bending_moment", "torque"),
        Result("bead_stress", "pressure", "plain", *_STRESS_UNITS),
        Result("times_plain_pull"),
        Result("flange_share", "fraction"),
        Result("flange_sideways", "pressure", "demand", *_STRESS_UNITS),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    rates=False,
    large="inner_stress",
    example={
        "shape": "trapezoid",
        "depth": "1 in",
        "inner_width": "3/4 in",
        "outer_width": "1/2 in",
        "inner_radius": "5/8 in",
        "load": "2,800 lb",
        "load_line": "middle",
        "bead_at": "inner",
    },
    citations=(
        Citation("boresi-schmidt", "chapter 9, curved beams; table 9.3, flanges"),
        Citation("shigley", "section 3-18, curved beams"),
    ),
)
