"""Drawings of a sling put on straight, choked or as a basket."""

from __future__ import annotations

import math

from calc.figures.drawing import Drawing, Point
from calc.worksheet import Figure, Say


def hitch_figure(
    hitch: str, basket_angle_deg: float, choke_angle_deg: float, capacity_kg: float, say: Say
) -> Figure:
    """End view of a round load in the hitch. Angles are true; sizes only show the manner."""
    drawing = Drawing(320, 300, 40)
    if hitch == "basket":
        words = _basket(drawing, basket_angle_deg)
    elif hitch == "choker":
        words = _choker(drawing, choke_angle_deg)
    else:
        drawing.fit([(-0.7, -0.7), (0.7, 2.6)])
        drawing.area("load", (-0.6, -0.6), (0.6, -0.6), (0.6, 0.4), (-0.6, 0.4))
        drawing.line("leg", (0, 2.5), (0, 0.4))
        drawing.circle("pick", (0, 0.4), 4.0, on_sheet=True)
        drawing.circle("hook", (0, 2.5), 6.0, on_sheet=True)
        words = "The sling runs straight up from the load to the hook."
    drawing.text((0, -0.1), say.weight(capacity_kg, "down"), kind="strong", shift=(0, 5))
    caption = f"{words} Put on like this it holds {say.weight(capacity_kg, 'down')}."
    return Figure(drawing.svg(caption), caption)


def _arc(from_deg: float, to_deg: float, radius: float) -> list[Point]:
    turn = [math.radians(from_deg + (to_deg - from_deg) * step / 40) for step in range(41)]
    return [(radius * math.cos(t), radius * math.sin(t)) for t in turn]


def _basket(drawing: Drawing, angle_deg: float) -> str:
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
    drawing.angle(right, 180.0 - angle_deg, 180.0, f"{angle_deg:.0f}°", 26)
    return f"The sling runs under the load and up again, both legs at {angle_deg:.0f}° from the horizontal."


def _choker(drawing: Drawing, choke_angle_deg: float) -> str:
    drawing.fit([(-1.3, -1.1), (1.3, 3.1)])
    drawing.circle("area load", (0.0, 0.0), 0.98)
    drawing.line("leg", *_arc(0.0, 360.0, 1.0))
    drawing.line("leg", (0.0, 1.0), (0.0, 3.0))
    drawing.circle("pick", (0.0, 1.0), 5.0, on_sheet=True)
    drawing.circle("hook", (0.0, 3.0), 6.0, on_sheet=True)
    drawing.angle((0.0, 1.0), 90.0, 90.0 + choke_angle_deg, f"{choke_angle_deg:.0f}°", 30)
    return f"The sling goes round the load and through its own eye, with an angle of choke of {choke_angle_deg:.0f}°."
