"""Drawings of a sling put on straight, choked or as a basket."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point


@dataclass(frozen=True)
class HitchShape:
    """How a sling is put on: vertical, choker or basket; the angle of a basket's legs [deg from horizontal] and the angle of
    a choke [deg, 180 = straight through].
    """

    hitch: str
    basket_angle_deg: float
    choke_angle_deg: float


def hitch_figure(shape: HitchShape, holds: str, angle: str, caption: str) -> Figure:
    """End view of a round load in the hitch. Angles are true; sizes only show the manner.

    holds, angle -- what the sling holds and its angle, as written on the drawing
    """
    drawing = Drawing(320, 300, 40)
    if shape.hitch == "basket":
        _basket(drawing, shape.basket_angle_deg, angle)
    elif shape.hitch == "choker":
        _choker(drawing, shape.choke_angle_deg, angle)
    else:
        _straight(drawing)
    drawing.text((0, -0.1), holds, kind="strong", shift=(0, 5))
    return Figure(drawing.svg(caption), caption)


def _straight(drawing: Drawing) -> None:
    drawing.fit([(-0.7, -0.7), (0.7, 2.6)])
    drawing.area("load", (-0.6, -0.6), (0.6, -0.6), (0.6, 0.4), (-0.6, 0.4))
    drawing.line("leg", (0, 2.5), (0, 0.4))
    drawing.circle("pick", (0, 0.4), 4.0, on_sheet=True)
    drawing.circle("hook", (0, 2.5), 6.0, on_sheet=True)


def _arc(from_deg: float, to_deg: float, radius: float) -> list[Point]:
    turn = [math.radians(from_deg + (to_deg - from_deg) * step / 40) for step in range(41)]
    return [(radius * math.cos(t), radius * math.sin(t)) for t in turn]


def _basket(drawing: Drawing, angle_deg: float, words: str) -> None:
    """A round load of radius one in a basket whose legs leave it as tangents at their true angle."""
    angle = math.radians(angle_deg)
    # Tangent points lie square to the legs; the legs meet over the load unless they hang plumb.
    right = (math.sin(angle), math.cos(angle))
    length = min(right[0] / math.cos(angle), 3.0) if angle_deg < 89.5 else 2.4
    top = (right[0] - length * math.cos(angle), right[1] + length * math.sin(angle))
    drawing.fit([(-1.3, -1.1), (1.3, top[1] + 0.1)])
    drawing.circle("area load", (0.0, 0.0), 0.98)
    wrap = _arc(90.0 + angle_deg - 360.0, 90.0 - angle_deg, 1.0)
    drawing.line("leg", (-top[0], top[1]), *wrap, top)
    for x in dict.fromkeys((round(top[0], 6), -round(top[0], 6))):
        drawing.circle("hook", (x, top[1]), 6.0, on_sheet=True)
    drawing.angle(right, 180.0 - angle_deg, 180.0, words, 26)


def _choker(drawing: Drawing, choke_angle_deg: float, words: str) -> None:
    drawing.fit([(-1.3, -1.1), (1.3, 3.1)])
    drawing.circle("area load", (0.0, 0.0), 0.98)
    drawing.line("leg", *_arc(0.0, 360.0, 1.0))
    drawing.line("leg", (0.0, 1.0), (0.0, 3.0))
    drawing.circle("pick", (0.0, 1.0), 5.0, on_sheet=True)
    drawing.circle("hook", (0.0, 3.0), 6.0, on_sheet=True)
    drawing.angle((0.0, 1.0), 90.0, 90.0 + choke_angle_deg, words, 30)


__all__ = ["HitchShape", "hitch_figure"]
