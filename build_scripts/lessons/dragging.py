"""Drawings that a reader can drag: each place of the handle is drawn beforehand by calc, the page's script only shows it.

A dragged drawing has parts that move (marked `data-part`) and, for each place of its handle, the outline of every such part
and a sentence. Without a script the first place stands there, with its sentence.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from build_scripts.lessons.lifting import ENGINE_KG, ENGINE_N
from calc.figures.drawing import Drawing, LineKind, Point
from calc.lifting.leg_geometry import (
    CAREFUL_ANGLE_DEG,
    LOWEST_ANGLE_DEG,
    angle_factor,
    leg_tension_n,
    side_force_n,
)
from calc.trees import Node
from calc.words.facts import Number, Quantity, force, weight
from calc.words.writer import Writer


@dataclass(frozen=True)
class Place:
    """One place of the handle: the outline of each moving part, how far down the sheet it is [-], and what is said there."""

    outlines: dict[str, str]
    down: float
    said: str


@dataclass(frozen=True)
class Dragged:
    """A drawing to drag: how it first stands, the words of its handle and its caption, all places, and which is the first."""

    drawing: Node
    handle: str
    caption: str
    places: tuple[Place, ...]
    first: int


HANDLE_RADIUS = 24.0
"""Of the ring by which the drawing is dragged [drawing units], so that a gloved finger finds it."""
FLATTEST_DEG, STEEPEST_DEG, FIRST_DEG = 20, 70, 45
_HEIGHT, _HALF_SPREAD, _BAR_AT, _PER_SHARE = 400.0, 1.0, 1.75, 0.62


def _ring(centre: Point, radius: float) -> list[Point]:
    turns = (2 * math.pi * step / 24 for step in range(25))
    return [(centre[0] + radius * math.cos(turn), centre[1] + radius * math.sin(turn)) for turn in turns]


def _moving(drawing: Drawing, name: str) -> None:
    """Mark what was drawn last as a part that moves."""
    last = drawing.parts[-1]
    if isinstance(last, list):
        last[1]["data-part"] = name


def _leg_kind(angle_deg: float) -> LineKind:
    if angle_deg < LOWEST_ANGLE_DEG:
        return "leg-stop"
    return "leg-careful" if angle_deg < CAREFUL_ANGLE_DEG else "leg"


def leg_angle_drawing(writer: Writer, angle_deg: float) -> Drawing:
    """An engine on two legs over one spread, and the tension in a leg as a bar beside half of the load, to one scale."""
    drawing = Drawing(360, _HEIGHT, 18)
    drawing.fit([(-1.2, -0.55), (2.2, math.tan(math.radians(STEEPEST_DEG)) + 0.1)])
    hook = (0.0, math.tan(math.radians(angle_deg)))
    drawing.area("load", (-1.15, 0.0), (1.15, 0.0), (1.15, -0.45), (-1.15, -0.45))
    for name, side in (("left", -_HALF_SPREAD), ("right", _HALF_SPREAD)):
        drawing.line(_leg_kind(angle_deg), hook, (side, 0.0))
        _moving(drawing, name)
        drawing.circle("pick", (side, 0.0), 4.0, on_sheet=True)
    drawing.line("outline", *_ring(hook, 0.06))
    _moving(drawing, "hook")
    arc = [math.pi - math.radians(angle_deg) * step / 12 for step in range(13)]
    drawing.line("dimension", *((_HALF_SPREAD + 0.4 * math.cos(turn), 0.4 * math.sin(turn)) for turn in arc))
    _moving(drawing, "arc")
    drawing.line("thin", (_BAR_AT - 0.25, _PER_SHARE), (_BAR_AT + 0.25, _PER_SHARE))
    drawing.text((_BAR_AT, 0.0), writer.text("leg-angle.bar"), shift=(0, 16), kind="small")
    drawing.text((_BAR_AT, 0.0), writer.text("leg-angle.half"), shift=(0, 31), kind="small")
    drawing.line("force", (_BAR_AT, 0.0), (_BAR_AT, _PER_SHARE * angle_factor(angle_deg)))
    _moving(drawing, "bar")
    drawing.line("drag-handle", *_ring(hook, HANDLE_RADIUS / drawing.scale))
    _moving(drawing, "handle")
    return drawing


def _outlines(drawing: Drawing) -> dict[str, str]:
    marked = (part for part in drawing.parts if isinstance(part, list) and "data-part" in part[1])
    return {part[1]["data-part"]: part[1]["d"] for part in marked}


def _leg_angle_said(writer: Writer, angle_deg: float) -> str:
    return writer.text(
        "leg-angle.stop" if angle_deg < LOWEST_ANGLE_DEG else "leg-angle.said",
        angle=Quantity(angle_deg, "angle", places=0),
        factor=Number(angle_factor(angle_deg), places=2),
        pull=force(leg_tension_n(ENGINE_N, 2, angle_deg), "demand"),
        side=force(side_force_n(ENGINE_N, 2, angle_deg), "demand"),
    )


def leg_angle(writer: Writer) -> Dragged:
    """How hard each of two legs pulls, for whoever lifts or lowers the hook over the load."""
    words = writer.of("lessons/dragging")
    places = []
    for angle in range(FLATTEST_DEG, STEEPEST_DEG + 1):
        drawing = leg_angle_drawing(words, float(angle))
        down = drawing.place((0.0, math.tan(math.radians(angle))))[1] / _HEIGHT
        places.append(Place(_outlines(drawing), down, _leg_angle_said(words, float(angle))))
    caption = words.text("leg-angle", load=weight(ENGINE_KG))
    first = leg_angle_drawing(words, float(FIRST_DEG)).svg(caption)
    return Dragged(first, words.text("leg-angle.handle"), caption, tuple(places), FIRST_DEG - FLATTEST_DEG)


DRAGGED: dict[str, Callable[[Writer], Dragged]] = {"leg-angle": leg_angle}
"""Drawings to drag, by name."""

__all__ = ["DRAGGED", "Dragged", "Place", "leg_angle"]
