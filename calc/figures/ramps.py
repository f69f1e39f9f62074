"""Drawing of a load on a ramp, with the pull up it and the pull that holds it back."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.words.facts import Number, force
from calc.words.writer import Writer

_LONG = 1.0
_SIZE = 0.24


@dataclass(frozen=True)
class RampView:
    """A load on a ramp as drawn: slope [deg], pull that starts it and pull that holds it back [N], whether it rolls."""

    slope_deg: float
    start_n: float
    hold_n: float
    rolls: bool


def ramp_figure(view: RampView, caption: str, writer: Writer) -> Figure:
    """Elevation: the ramp at its slope, the load on it, the two pulls."""
    slope = math.radians(view.slope_deg)

    def along(distance: float, above: float) -> Point:
        return (
            distance * math.cos(slope) - above * math.sin(slope),
            distance * math.sin(slope) + above * math.cos(slope),
        )

    drawing = Drawing(400, 250, 50)
    drawing.fit([(-0.05, -0.05), along(_LONG, 0.0), along(_LONG, 0.5), (1.05, 0.0)])
    drawing.line("ground", along(0.0, 0.0), along(_LONG, 0.0))
    if view.slope_deg:
        drawing.line("thin", (0.0, 0.0), (_LONG * math.cos(slope), 0.0))
        words = writer.text("figure-slope", slope=Number(view.slope_deg, 3))
        drawing.text((0.5 * _LONG * math.cos(slope), 0.0), words, shift=(0, 16))
    lifted = 0.05 if view.rolls else 0.0
    left, right = 0.4, 0.4 + _SIZE
    corners = [
        along(left, lifted),
        along(right, lifted),
        along(right, lifted + _SIZE),
        along(left, lifted + _SIZE),
    ]
    drawing.area("load", *corners)
    if view.rolls:
        for place in (left + 0.03, (left + right) / 2, right - 0.03):
            drawing.circle("steel", along(place, lifted / 2), lifted / 2)
    middle = lifted + _SIZE / 2
    drawing.arrow(along(right, middle), along(right + 0.22, middle))
    drawing.text(
        along(right + 0.22, middle), writer.plain(force(view.start_n, "demand")), shift=(0, -8), kind="strong"
    )
    if view.hold_n > 0:
        drawing.line("leg", along(left, middle), along(left - 0.22, middle))
        held = writer.text("figure-holds", pull=force(view.hold_n, "demand"))
        drawing.text(along(left - 0.22, middle), held, shift=(0, -8))
    return Figure(drawing.svg(caption), caption)
