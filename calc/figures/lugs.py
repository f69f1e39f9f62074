"""Scale drawing of a plate lug."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.words.facts import length
from calc.words.writer import Writer


@dataclass(frozen=True)
class LugFace:
    """The face of a lug as drawn [m]: width across the hole, middle of the hole over the weld, hole, pin, hole to end, leg
    and length of the weld, whether its end is round, and how far the pull leans in its plane [deg from straight up].
    """

    width_m: float
    height_m: float
    hole_m: float
    pin_m: float
    end_edge_m: float
    weld_leg_m: float
    weld_length_m: float
    round_end: bool
    lean_deg: float

    @property
    def top_m(self) -> float:
        """Height of the end over the weld [m]."""
        return self.height_m + self.hole_m / 2 + self.end_edge_m

    def end(self) -> list[Point]:
        """The outline of its end, from right to left."""
        half, rise = self.width_m / 2, self.top_m - self.height_m
        if not self.round_end:
            return [(half, self.top_m), (-half, self.top_m)]
        turns = (math.radians(degrees) for degrees in range(0, 181, 6))
        return [(half * math.cos(turn), self.height_m + rise * math.sin(turn)) for turn in turns]


def lug_figure(lug: LugFace, caption: str, writer: Writer) -> Figure:
    """Face of the lug to scale: plate, hole, pin, weld and the pull at its true angle in the plane."""
    half, top, foot = lug.width_m / 2, lug.top_m, lug.weld_length_m / 2
    widest = max(half, foot)
    reach, lean = 0.8 * (top + half), math.radians(lug.lean_deg)
    tip = (reach * math.sin(lean), lug.height_m + reach * math.cos(lean))
    drawing = Drawing(340, 320, 40)
    drawing.fit([(-widest * 1.3, -0.15 * top), (max(widest, tip[0]) * 1.15, max(top, tip[1]))])
    drawing.line("ground", (-widest * 1.3, 0.0), (widest * 1.3, 0.0))
    drawing.area("load", (half, 0.0), *lug.end(), (-half, 0.0))
    drawing.circle("pick", (0.0, lug.height_m), lug.hole_m / 2)
    drawing.circle("pick", (0.0, lug.height_m + (lug.hole_m - lug.pin_m) / 2), lug.pin_m / 2)
    drawing.area("molten", (-foot, 0.0), (foot, 0.0), (foot, lug.weld_leg_m), (-foot, lug.weld_leg_m))
    drawing.arrow((0.0, lug.height_m), tip)
    drawing.dimension((half, 0.0), (-half, 0.0), writer.own(length(lug.width_m), 3), 16)
    drawing.dimension((-half, 0.0), (-half, lug.height_m), writer.own(length(lug.height_m), 3), 14)
    return Figure(drawing.svg(caption), caption)
