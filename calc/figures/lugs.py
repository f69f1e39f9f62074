"""Scale drawing of a plate lug."""

from __future__ import annotations

import math

from calc.figures.drawing import Drawing
from calc.lifting.lug_strength import Lug
from calc.worksheet import Figure, Say


def lug_figure(lug: Lug, angle_in_plane_deg: float, governing: str, say: Say) -> Figure:
    """Face of the lug to scale: plate, hole, pin, weld and the pull at its true angle in the plane."""
    half = lug.width_at_hole_m / 2
    top = lug.height_m + lug.hole_m / 2 + lug.end_edge_m
    reach = 0.8 * (top + half)
    drawing = Drawing(340, 320, 40)
    lean = math.radians(angle_in_plane_deg)
    tip = (reach * math.sin(lean), lug.height_m + reach * math.cos(lean))
    foot = lug.weld_length_m / 2
    drawing.fit([(-max(half, foot) * 1.3, -0.15 * top), (max(half, foot, tip[0]) * 1.15, max(top, tip[1]))])
    if lug.round_end:
        arc = [(half * math.cos(math.radians(d)), lug.height_m + (top - lug.height_m) * math.sin(math.radians(d)))
               for d in range(0, 181, 6)]  # fmt: skip
    else:
        arc = [(half, top), (-half, top)]
    drawing.line("ground", (-max(half, foot) * 1.3, 0.0), (max(half, foot) * 1.3, 0.0))
    drawing.area("load", (half, 0.0), *arc, (-half, 0.0))
    drawing.circle("pick", (0.0, lug.height_m), lug.hole_m / 2)
    drawing.circle("pick", (0.0, lug.height_m + (lug.hole_m - lug.pin_m) / 2), lug.pin_m / 2)
    drawing.area("molten", (-foot, 0.0), (foot, 0.0), (foot, lug.weld_leg_m), (-foot, lug.weld_leg_m))
    drawing.arrow((0.0, lug.height_m), tip)
    drawing.dimension((half, 0.0), (-half, 0.0), say.one(lug.width_at_hole_m, "length", digits=3), 16)
    drawing.dimension((-half, 0.0), (-half, lug.height_m), say.one(lug.height_m, "length", digits=3), 14)
    caption = (
        f"Face of the lug to scale: {say.length(lug.width_at_hole_m)} wide at the hole, {say.length(lug.thickness_m)} thick, "
        f"pulled {angle_in_plane_deg:.0f}° off its line. First comes {governing}."
    )
    return Figure(drawing.svg(caption), caption)
