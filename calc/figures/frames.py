"""Drawing of a shop's own frame: seen from the side and along the beam, the weakest part lit."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from calc.declaration import Figure
from calc.figures.drawing import Drawing, LineKind
from calc.words.facts import force, length
from calc.words.writer import Writer

LitPart = Literal["beam", "posts", "feet", "joint", "none"]


@dataclass(frozen=True)
class FrameView:
    """A frame as drawn [m]: span, place of the load, height and how far the feet stand apart (nought without posts); whether one
    wall alone holds it, whether two legs lean together, the load [N], the part that is lit, and whether it is over.
    """

    span_m: float
    place_m: float
    height_m: float
    feet_apart_m: float
    one_wall: bool
    leaning_legs: bool
    load_n: float
    lit: LitPart
    over: bool

    def kind_of(self, part: LitPart) -> LineKind:
        """The line of a part: the weakest is lit."""
        if part != self.lit:
            return "leg"
        return "leg-stop" if self.over else "leg-careful"


def frame_figure(view: FrameView, caption: str, weakest: str, writer: Writer) -> Figure:
    """Side view of beam, posts, load and span; beside it, where it stands free, the view along the beam. `weakest` names the lit
    part.
    """
    span, high = view.span_m, view.height_m
    drop = 0.35 * (high or span)
    drawing = Drawing(440, 300, 46)
    beside = 1.25 * span
    right = beside + view.feet_apart_m if view.feet_apart_m else span
    drawing.fit([(0.0, min(high - 1.2 * drop, 0.0)), (right, high + 0.25 * drop)])
    drawing.line(view.kind_of("beam"), (0.0, high), (span, high))
    if high:
        _stands(drawing, view, writer)
    else:
        _walls(drawing, view)
    if view.lit == "joint":
        for x in (0.0,) if view.one_wall else (0.0, span):
            drawing.circle("pick", (x, high), 6.0, on_sheet=True)
    drawing.arrow((view.place_m, high), (view.place_m, high - drop))
    pull = writer.plain(force(view.load_n, "demand"))
    drawing.text((view.place_m, high - drop), pull, shift=(0, 16), kind="strong")
    drawing.text((span / 2, high), weakest, shift=(0, -10), kind="strong")
    low = (span, 0.0 if high else -1.2 * drop), (0.0, 0.0 if high else -1.2 * drop)
    drawing.dimension(*low, writer.own(length(span), 3), 14)
    return Figure(drawing.svg(caption), caption)


def _stands(drawing: Drawing, view: FrameView, writer: Writer) -> None:
    """Posts in both views, and the floor."""
    span, high, apart = view.span_m, view.height_m, view.feet_apart_m
    for x in (0.0, span):
        drawing.line(view.kind_of("posts"), (x, 0.0), (x, high))
    drawing.line("ground", (-0.05 * span, 0.0), (1.05 * span, 0.0))
    if not apart:
        return
    left, middle = 1.25 * span, 1.25 * span + apart / 2
    for foot in (left, left + apart):
        from_x = foot if view.leaning_legs else middle
        drawing.line(view.kind_of("posts"), (from_x, 0.0), (middle, high))
    drawing.line(view.kind_of("feet"), (left, 0.0), (left + apart, 0.0))
    drawing.dimension((left + apart, 0.0), (left, 0.0), writer.own(length(apart), 3), 14)


def _walls(drawing: Drawing, view: FrameView) -> None:
    """A wall at each end, or at the left alone."""
    tall = 0.12 * view.span_m
    for x in (0.0,) if view.one_wall else (0.0, view.span_m):
        drawing.line("ground", (x, -tall), (x, tall))


__all__ = ["FrameView", "LitPart", "frame_figure"]
