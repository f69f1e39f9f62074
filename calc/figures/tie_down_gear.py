"""Drawings of tie-down gear with where to look: strap and ratchet, chain and binder, anchor and edge protector.

They show which parts are meant and are not to scale of any make.
"""

from __future__ import annotations

import math

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.words.writer import Writer


def _round(centre: Point, radius: float, from_deg: float, to_deg: float, steps: int = 18) -> list[Point]:
    """Points of an arc."""
    span = to_deg - from_deg
    angles = [math.radians(from_deg + span * step / steps) for step in range(steps + 1)]
    return [(centre[0] + radius * math.cos(one), centre[1] + radius * math.sin(one)) for one in angles]


def _hook(drawing: Drawing, at: Point, side: float) -> None:
    """A hook open downward, its eye at a point; side 1: it lies to the right."""
    x, y = at
    turn = -220.0 if side > 0 else 220.0
    bowl = _round((x + side * 0.6, y - 0.15), 0.35, 90.0, 90.0 + turn)
    drawing.line("outline", (x, y), (x + side * 0.3, y + 0.2), *bowl)


def _marked(drawing: Drawing, place: int, at: Point, words: str, shift: Point = (0.0, 0.0)) -> None:
    """A place to look at: its number in the words, a dot where it is."""
    drawing.circle("pick", at, 3.5, on_sheet=True)
    drawing.text(at, f"{place} {words}", "middle", shift, "small")


def strap_parts_figure(writer: Writer) -> Figure:
    """A ratchet strap laid flat. Words: look-label, look-webbing, look-stitching, look-ratchet, look-hooks, figure-gear."""
    drawing = Drawing(400, 190, 34)
    drawing.fit([(0.0, -1.0), (10.0, 1.2)])
    for y in (0.28, -0.28):
        drawing.line("outline", (1.2, y), (4.4, y))
        drawing.line("outline", (5.9, y), (8.8, y))
    drawing.area("steel", (4.4, -0.45), (5.9, -0.45), (5.9, 0.45), (4.4, 0.45))
    drawing.line("outline", (5.6, 0.45), (3.9, 1.0))
    drawing.circle("outline", (5.15, 0.0), 0.22)
    for x in (1.4, 1.6, 8.4, 8.6):
        drawing.line("hidden", (x, -0.26), (x, 0.26))
    _hook(drawing, (1.2, 0.0), -1.0)
    _hook(drawing, (8.8, 0.0), 1.0)
    drawing.line("thin", (6.4, -0.2), (7.2, -0.2), (7.2, 0.2), (6.4, 0.2), (6.4, -0.2))
    _marked(drawing, 1, (6.8, 0.0), writer.text("look-label"), (0, -26))
    _marked(drawing, 2, (2.4, 0.0), writer.text("look-webbing"), (0, -26))
    _marked(drawing, 3, (1.5, 0.0), writer.text("look-stitching"), (14, 34))
    _marked(drawing, 4, (5.15, 0.0), writer.text("look-ratchet"), (0, 34))
    _marked(drawing, 5, (9.2, 0.0), writer.text("look-hooks"), (-14, 34))
    caption = writer.text("figure-gear")
    return Figure(drawing.svg(caption), caption)


def binder_figure(writer: Writer) -> Figure:
    """A chain with a lever binder. Words: look-mark, look-links, look-hooks, look-handle, figure-gear."""
    drawing = Drawing(400, 200, 34)
    drawing.fit([(0.0, -1.2), (10.0, 1.6)])
    for start in (0.2, 1.0, 1.8, 8.0, 8.8):
        outline = [
            *_round((start + 0.75, 0.0), 0.24, -90.0, 90.0),
            *_round((start + 0.25, 0.0), 0.24, 90.0, 270.0),
        ]
        drawing.line("outline", *outline, outline[0])
    for x, side in ((3.2, -1.0), (7.6, 1.0)):
        _hook(drawing, (x, 0.0), side)
        drawing.line("outline", (x, 0.0), (x - side * 1.0, 0.0))
    drawing.area("steel", (4.2, -0.3), (5.4, -0.3), (5.4, 0.3), (4.2, 0.3))
    drawing.line("outline", (5.4, 0.0), (6.6, 0.0))
    drawing.line("outline", (4.8, 0.3), (7.6, 1.3))
    drawing.line("outline", (4.9, 0.15), (7.7, 1.15))
    _marked(drawing, 1, (4.8, 0.0), writer.text("look-mark"), (0, 34))
    _marked(drawing, 2, (1.5, 0.0), writer.text("look-links"), (0, -24))
    _marked(drawing, 3, (8.05, -0.1), writer.text("look-hooks"), (0, 34))
    _marked(drawing, 4, (7.2, 1.1), writer.text("look-handle"), (30, -12))
    caption = writer.text("figure-gear")
    return Figure(drawing.svg(caption), caption)


def anchor_figure(writer: Writer) -> Figure:
    """A ring on the deck, a tie-down from it over an edge. Words: look-ring, look-seat, look-plate, look-edge, figure-gear."""
    drawing = Drawing(400, 230, 40)
    drawing.fit([(0.0, -0.6), (10.0, 4.4)])
    drawing.area("steel", (0.0, -0.4), (10.0, -0.4), (10.0, 0.0), (0.0, 0.0))
    drawing.area("load", (5.6, 0.0), (9.6, 0.0), (9.6, 3.4), (5.6, 3.4))
    drawing.area("steel", (1.2, 0.0), (2.8, 0.0), (2.8, 0.22), (1.2, 0.22))
    ring = _round((2.0, 0.6), 0.42, -90.0, 270.0)
    drawing.line("outline", *ring)
    drawing.line("leg", (2.3, 0.9), (5.5, 3.5), (9.6, 3.5))
    drawing.line("outline", (5.4, 2.8), (5.4, 3.42), (6.2, 3.6))
    _marked(drawing, 1, (2.0, 0.95), writer.text("look-ring"), (-12, -16))
    _marked(drawing, 2, (1.5, 0.1), writer.text("look-seat"), (-4, 30))
    _marked(drawing, 3, (3.4, 0.1), writer.text("look-plate"), (26, 30))
    _marked(drawing, 4, (5.5, 3.5), writer.text("look-edge"), (-10, -14))
    caption = writer.text("figure-gear")
    return Figure(drawing.svg(caption), caption)


__all__ = ["anchor_figure", "binder_figure", "strap_parts_figure"]
