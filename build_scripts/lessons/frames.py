"""Drawings that explain a shop's own frame: how a beam rolls over, why a frame tips, what a weld's throat is.

All are computed from calc.lifting. The beam is a light one such as hangs in many shops.
"""

from __future__ import annotations

import math
from collections.abc import Callable

from calc.declaration import Figure
from calc.figures.drawing import Drawing
from calc.lifting.beam_buckling import i_beam_moment_nm, i_shape
from calc.lifting.frame_strength import tips_at_deg
from calc.lifting.lug_strength import throat_m
from calc.words.facts import Quantity, length, share
from calc.words.writer import Writer

INCH = 0.0254
BEAM_M = (8 * INCH, 4 * INCH, 0.17 * INCH, 0.205 * INCH)
"""Depth, flange width, web and flange thickness of the light beam of the page."""

YIELD_PA, MODULUS_PA = 36_000 * 6894.757293168361, 200e9
FOOT = 0.3048
LONGEST_FT = 24
LEG_M = 0.25 * INCH


def part_left(span_ft: float) -> float:
    """What the light beam takes over a free length [ft], as a part of what it takes where it only bends [-]."""
    shape = i_shape(*BEAM_M)
    bends = YIELD_PA * shape.plastic_modulus_m3
    return i_beam_moment_nm(shape, span_ft * FOOT, YIELD_PA, MODULUS_PA) / bends


def tips_deg(ratio: float) -> float:
    """Angle from plumb [deg] at which a weightless frame tips, by its base over its height [-]."""
    return tips_at_deg(1.0, 0.0, ratio, 1.0)


def beam_rolls(writer: Writer) -> Figure:
    """Part of its bending strength that a light beam keeps, over the length that nothing holds."""
    drawing = Drawing(400, 260, 46)
    wide = 2.0
    at = [(wide * feet / LONGEST_FT, part_left(feet)) for feet in range(1, LONGEST_FT + 1)]
    drawing.fit([(0.0, 0.0), (wide, 1.05)])
    drawing.line("axis", (0.0, 1.05), (0.0, 0.0), (wide, 0.0))
    drawing.line("hidden", (0.0, 1.0), (wide, 1.0))
    drawing.line("curve", *at)
    for feet in (7, 14, 21):
        x, left = wide * feet / LONGEST_FT, part_left(feet)
        drawing.circle("pick", (x, left), 4.0, on_sheet=True)
        drawing.text((x, left), writer.plain(share(left, "capacity")), shift=(8, -10), anchor="start")
        drawing.text((x, 0.0), writer.own(length(feet * FOOT), 3), shift=(0, 18))
    drawing.text((wide, 1.0), writer.text("beam-rolls.bends"), "end", (0, -8))
    drawing.text((wide / 2, 0.0), writer.text("beam-rolls.axis"), shift=(0, 36))
    facts = {f"left{feet}": share(part_left(feet), "capacity") for feet in (7, 14, 21)}
    caption = writer.text(
        "beam-rolls", first=length(7 * FOOT), middle=length(14 * FOOT), last=length(21 * FOOT), **facts
    )
    return Figure(drawing.svg(caption), caption)


def frame_tips(writer: Writer) -> Figure:
    """Two frames of one height seen along the beam, each pulled off plumb to where it tips."""
    drawing = Drawing(400, 280, 40)
    bases = (0.5, 1.0)
    drawing.fit([(-0.4, -0.05), (2.3, 1.05)])
    drawing.line("ground", (-0.4, 0.0), (2.3, 0.0))
    for middle, base in zip((0.2, 1.5), bases, strict=True):
        drawing.line("leg", (middle - base / 2, 0.0), (middle, 1.0), (middle + base / 2, 0.0))
        turn = math.radians(tips_deg(base))
        drawing.line("centre", (middle, 1.0), (middle, 0.0))
        drawing.arrow((middle, 1.0), (middle + 0.75 * math.tan(turn), 0.25))
        angle = writer.plain(Quantity(tips_deg(base), "angle", "capacity"))
        drawing.text((middle + 0.5 * base, 0.45), angle, "start", (10, 0), kind="strong")
    caption = writer.text(
        "frame-tips",
        narrow=Quantity(tips_deg(bases[0]), "angle", "capacity"),
        wide=Quantity(tips_deg(bases[1]), "angle", "capacity"),
    )
    return Figure(drawing.svg(caption), caption)


def weld_throat(writer: Writer) -> Figure:
    """A fillet weld cut across: its two legs, and its throat."""
    drawing = Drawing(360, 260, 44)
    drawing.fit([(-0.5, -0.5), (1.7, 1.7)])
    drawing.area("steel", (-0.5, 0.0), (0.0, 0.0), (0.0, 1.7), (-0.5, 1.7))
    drawing.area("steel", (-0.5, 0.0), (1.7, 0.0), (1.7, -0.5), (-0.5, -0.5))
    drawing.area("molten", (0.0, 0.0), (1.0, 0.0), (0.0, 1.0))
    drawing.line("leg-careful", (0.0, 0.0), (0.5, 0.5))
    leg, throat = writer.own(length(LEG_M), 3), writer.own(length(throat_m(LEG_M), "capacity"), 3)
    drawing.dimension((1.0, 0.0), (0.0, 0.0), leg, 16)
    drawing.text(
        (0.5, 0.5), writer.text("weld-throat.throat", throat=throat), "start", (10, -6), kind="strong"
    )
    caption = writer.text("weld-throat", leg=length(LEG_M), throat=length(throat_m(LEG_M), "capacity"))
    return Figure(drawing.svg(caption), caption)


FRAME_LESSONS: dict[str, Callable[[Writer], Figure]] = {
    "beam-rolls": beam_rolls,
    "frame-tips": frame_tips,
    "weld-throat": weld_throat,
}

__all__ = ["FRAME_LESSONS", "LEG_M", "part_left", "tips_deg"]
