"""Scale drawings of slings and what hangs in them."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, LineKind
from calc.words.facts import Quantity, force, length, weight
from calc.words.writer import Writer


@dataclass(frozen=True)
class SlingShape:
    """An even sling as drawn: legs, their angle [deg from horizontal], height and half spread [m] where they are known, the
    kind of line of its legs, and what load and pull are written on it.
    """

    legs: int
    angle_deg: float
    height_m: float | None
    half_spread_m: float | None
    line: LineKind
    load_kg: float
    tension_n: float

    @property
    def upright(self) -> bool:
        """Whether the legs hang straight down."""
        return self.legs == 1 or self.angle_deg > 89.0

    def size_m(self) -> tuple[float, float]:
        """Height and half spread as drawn [m]; unknown sizes are drawn for a spread of one metre."""
        half = self.half_spread_m if self.half_spread_m else 0.5
        height = self.height_m if self.height_m else half * math.tan(math.radians(min(self.angle_deg, 89.0)))
        if self.legs == 1:
            return self.height_m or 1.0, 0.0
        return (max(height, half * 2) if self.angle_deg > 89.0 else height), half


def sling_figure(shape: SlingShape, caption: str, writer: Writer) -> Figure:
    """Side view of an even sling: hook, legs at their true angle, the load, the pulls. Unknown sizes carry no dimension."""
    height, half = shape.size_m()
    size = max(height, 2 * half)
    box = (max(half * 1.12, 0.22 * size), 0.2 * size)
    drawing = Drawing(360, 320, 58)
    drawing.fit([(-box[0], -box[1] * 1.5), (box[0], height + 0.06 * size)])
    drawing.area("load", (-box[0], 0), (box[0], 0), (box[0], -box[1]), (-box[0], -box[1]))
    _legs(drawing, shape, height, half)
    drawing.line("centre", (0, height + 0.05 * size), (0, -box[1] * 1.1))
    drawing.text((0, -box[1] / 2), writer.plain(weight(shape.load_kg)), shift=(0, 5), kind="strong")
    middle = (half / 2, height / 2)
    drawing.text(middle, writer.plain(force(shape.tension_n, "demand")), "start", (10, -2), "strong")
    if not shape.upright:
        tenths = writer.plain(
            Quantity(round(shape.angle_deg, 1), "angle", digits=3 if shape.angle_deg >= 10 else 2)
        )
        drawing.angle((half, 0), 180.0 - shape.angle_deg, 180.0, tenths, 34)
        if shape.height_m is not None and shape.half_spread_m is not None:
            drawing.dimension((-box[0], 0), (-box[0], height), writer.own(length(height), 3), 16)
            drawing.dimension((half, -box[1]), (-half, -box[1]), writer.own(length(2 * half), 3), 18)
    return Figure(drawing.svg(caption), caption)


def _legs(drawing: Drawing, shape: SlingShape, height: float, half: float) -> None:
    """Legs, picks and hooks: one hook, or one over each pick where the legs hang straight down."""
    sides = (-1.0, 1.0) if shape.legs > 1 else (0.0,)
    over_picks = shape.upright and shape.legs > 1
    for side in sides:
        top = (side * half, height) if over_picks else (0.0, height)
        drawing.line(shape.line if shape.legs > 1 else "leg", top, (side * half, 0.0))
        drawing.circle("pick", (side * half, 0.0), 4.0, on_sheet=True)
    for hook in ((-half, height), (half, height)) if over_picks else ((0.0, height),):
        drawing.circle("hook", hook, 6.0, on_sheet=True)
