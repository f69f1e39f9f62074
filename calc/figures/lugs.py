"""Scale drawing of a plate lug: its face and its side, the weakest part lit."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from calc.declaration import Figure
from calc.figures.drawing import Drawing, LineKind, Point
from calc.words.facts import length
from calc.words.writer import Writer

LugPart = Literal["hole", "end", "pin", "foot", "weld", "wall"]


@dataclass(frozen=True)
class LugFace:
    """The face of a lug as drawn [m]: width across the hole, middle of the hole over the weld, hole, pin, hole to end, leg
    and length of the weld, whether its end is round, and how far the pull leans in its plane [deg from straight up]; the part
    that gives way first, and whether it is over.
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
    lit: LugPart
    over: bool

    @property
    def top_m(self) -> float:
        """Height of the end over the weld [m]."""
        return self.height_m + self.hole_m / 2 + self.end_edge_m

    @property
    def lit_kind(self) -> LineKind:
        """The line in which the weakest part is lit."""
        return "leg-stop" if self.over else "leg-careful"

    def end(self) -> list[Point]:
        """The outline of its end, from right to left."""
        half, rise = self.width_m / 2, self.top_m - self.height_m
        if not self.round_end:
            return [(half, self.top_m), (-half, self.top_m)]
        turns = (math.radians(degrees) for degrees in range(0, 181, 6))
        return [(half * math.cos(turn), self.height_m + rise * math.sin(turn)) for turn in turns]

    def lit_lines(self) -> tuple[tuple[Point, Point], ...]:
        """Lines over the weakest part."""
        half, foot, up = self.width_m / 2, self.weld_length_m / 2, self.height_m
        edge = self.hole_m / 2
        return {
            "hole": (((-half, up), (-edge, up)), ((edge, up), (half, up))),
            "end": (((0.0, up + edge), (0.0, self.top_m)),),
            "pin": (((-self.pin_m / 2, up), (self.pin_m / 2, up)),),
            "foot": (((-half, self.weld_leg_m), (half, self.weld_leg_m)),),
            "weld": (((-foot, self.weld_leg_m / 2), (foot, self.weld_leg_m / 2)),),
            "wall": (((-half * 1.3, 0.0), (half * 1.3, 0.0)),),
        }[self.lit]


@dataclass(frozen=True)
class LugSide:
    """The side of a lug as drawn [m]: thickness, of the jaws that hold the pin and what is clear between them, thickness of the
    wall (nought where they are not given), and how far the pull leans across [deg].
    """

    thickness_m: float
    jaw_m: float
    between_jaws_m: float
    wall_m: float
    lean_deg: float

    @property
    def half_m(self) -> float:
        """Half of its width with the jaws [m]."""
        return max(self.thickness_m, self.between_jaws_m + 2 * self.jaw_m) / 2


def lug_figure(face: LugFace, side: LugSide, caption: str, writer: Writer) -> Figure:
    """Face of the lug to scale: plate, hole, pin, weld and the pull at its true angle in the plane; beside it the side."""
    half, top, foot = face.width_m / 2, face.top_m, face.weld_length_m / 2
    widest = max(half, foot)
    reach, lean = 0.8 * (top + half), math.radians(face.lean_deg)
    tip = (reach * math.sin(lean), face.height_m + reach * math.cos(lean))
    across = math.radians(side.lean_deg)
    right = max(widest * 1.3, tip[0] * 1.15)
    middle = right + 0.25 * top + side.half_m
    side_tip = (middle + reach * math.sin(across), face.height_m + reach * math.cos(across))
    drawing = Drawing(440, 320, 40)
    drawing.fit(
        [
            (-widest * 1.3, min(-0.15 * top, -side.wall_m)),
            (max(middle + side.half_m, side_tip[0]) + 0.1 * top, max(top, tip[1], side_tip[1])),
        ]
    )
    drawing.line("ground", (-widest * 1.3, 0.0), (widest * 1.3, 0.0))
    drawing.area("load", (half, 0.0), *face.end(), (-half, 0.0))
    drawing.circle("pick", (0.0, face.height_m), face.hole_m / 2)
    drawing.circle("pick", (0.0, face.height_m + (face.hole_m - face.pin_m) / 2), face.pin_m / 2)
    drawing.area("molten", (-foot, 0.0), (foot, 0.0), (foot, face.weld_leg_m), (-foot, face.weld_leg_m))
    for line in face.lit_lines():
        drawing.line(face.lit_kind, *line)
    drawing.arrow((0.0, face.height_m), tip)
    drawing.dimension((half, 0.0), (-half, 0.0), writer.own(length(face.width_m), 3), 16)
    drawing.dimension((-half, 0.0), (-half, face.height_m), writer.own(length(face.height_m), 3), 14)
    _side(drawing, face, side, middle)
    drawing.arrow((middle, face.height_m), side_tip)
    thick = writer.own(length(side.thickness_m), 3)
    drawing.dimension(
        (middle + side.thickness_m / 2, -side.wall_m),
        (middle - side.thickness_m / 2, -side.wall_m),
        thick,
        16,
    )
    return Figure(drawing.svg(caption), caption)


def _side(drawing: Drawing, face: LugFace, side: LugSide, middle: float) -> None:
    """The plate on its edge with both fillets, the pin in its jaws, and the wall under it."""
    thin, leg, up = side.thickness_m / 2, face.weld_leg_m, face.height_m
    drawing.area(
        "load",
        (middle - thin, 0.0),
        (middle - thin, face.top_m),
        (middle + thin, face.top_m),
        (middle + thin, 0.0),
    )
    for out in (-1, 1):
        foot = middle + out * thin
        drawing.area("molten", (foot, 0.0), (foot + out * leg, 0.0), (foot, leg))
        if side.jaw_m:
            inner = middle + out * side.between_jaws_m / 2
            outer, tall = inner + out * side.jaw_m, face.pin_m
            corners = ((inner, up - tall), (outer, up - tall), (outer, up + tall), (inner, up + tall))
            drawing.area("steel", *corners)
    pin = max(side.half_m, thin * 1.4)
    drawing.line("centre", (middle - pin, up), (middle + pin, up))
    wide = pin + 2 * leg
    drawing.line("ground", (middle - wide, 0.0), (middle + wide, 0.0))
    if side.wall_m:
        drawing.line("outline", (middle - wide, -side.wall_m), (middle + wide, -side.wall_m))


__all__ = ["LugFace", "LugPart", "LugSide", "lug_figure"]
