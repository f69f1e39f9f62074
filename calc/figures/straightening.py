"""Drawing of a bowed piece on two supports, pressed past straight: the span to scale, heights drawn larger than life."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.words.facts import length
from calc.words.writer import Writer

_SHOWN_HEIGHT = 0.24
"""Part of the span as which bow and springback together are drawn [-]."""
_POINTS = 40


@dataclass(frozen=True)
class PressedView:
    """A piece as drawn: span, bow over the straight line, how far past straight it is pressed (nought: not told), and the room
    under straight (None: not said) [m]; whether a chain pulls it.
    """

    span_m: float
    bow_m: float
    past_m: float
    room_m: float | None
    pulled: bool

    @property
    def enlarged(self) -> float:
        """How many times too large heights are drawn [-]."""
        return _SHOWN_HEIGHT * self.span_m / (self.bow_m + self.past_m)


def straighten_figure(view: PressedView, caption: str, writer: Writer) -> Figure:
    """Elevation: the bow as it lies, the straight line dashed, the piece pressed past it, supports, push, sizes."""
    span, times = view.span_m, view.enlarged
    top, low = times * view.bow_m, -times * view.past_m
    drawing = Drawing(400, 260, 56)
    drawing.fit([(-0.05 * span, low - 0.1 * span), (1.05 * span, top + 0.17 * span)])
    drawing.line("hidden", (0.0, 0.0), (span, 0.0))
    drawing.line("outline", *_bowed(span, top))
    if view.past_m:
        drawing.line("curve", *_pressed(span, low))
        drawing.text((span / 2, low), writer.text("figure-past", past=length(view.past_m)), shift=(0, 17))
    _supports(drawing, span)
    _table(drawing, view, times, low)
    _push(drawing, view, top, low, writer)
    drawing.text((0.2 * span, top), writer.text("figure-bow", bow=length(view.bow_m)), shift=(0, -8))
    drawing.dimension((span, low - 0.1 * span), (0.0, low - 0.1 * span), writer.own(length(span), 4), 26)
    return Figure(drawing.svg(caption), caption)


def _bowed(span: float, rise: float) -> list[Point]:
    """An even bow: a parabola."""
    places = [span * number / _POINTS for number in range(_POINTS + 1)]
    return [(x, 4 * rise * x * (span - x) / span**2) for x in places]


def _pressed(span: float, low: float) -> list[Point]:
    """Pressed in the middle: the elastic line of a load there, as a picture of it."""
    places = [span * number / _POINTS for number in range(_POINTS + 1)]
    return [(x, low * math.sin(math.pi * x / span)) for x in places]


def _supports(drawing: Drawing, span: float) -> None:
    foot = 0.035 * span
    for x in (0.0, span):
        drawing.area("ground", (x, 0.0), (x + foot, -1.6 * foot), (x - foot, -1.6 * foot))


def _table(drawing: Drawing, view: PressedView, times: float, low: float) -> None:
    """The table under the piece where it lies near enough to be met."""
    if view.room_m is None or -times * view.room_m < low - 0.1 * view.span_m:
        return
    depth = -times * view.room_m
    drawing.line("ground", (0.08 * view.span_m, depth), (0.92 * view.span_m, depth))


def _push(drawing: Drawing, view: PressedView, top: float, low: float, writer: Writer) -> None:
    """The ram from above, or the chain from below."""
    span = view.span_m
    if view.pulled:
        drawing.arrow((span / 2, top), (span / 2, low - 0.07 * span))
        drawing.text((span / 2, top), writer.text("figure-chain"), shift=(0, -8), kind="strong")
        return
    drawing.arrow((span / 2, top + 0.16 * span), (span / 2, top))
    drawing.text((span / 2, top + 0.16 * span), writer.text("figure-ram"), shift=(0, -6), kind="strong")
