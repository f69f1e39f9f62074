"""Drawings of loads that are tied down: straps against friction, and plan and side of a load on its deck."""

from __future__ import annotations

from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.graph import Axis, Graph
from calc.words.writer import Writer

_MOST_DRAWN = 30.0
"""Straps at the top of the graph at most."""
_FROM, _TO, _STEPS = 0.1, 0.6, 50


@dataclass(frozen=True)
class StrapCurve:
    """Straps over the top [-] against friction [-]: per_missing straps for each share of the weight that friction leaves,
    (asked - friction) / friction; and the friction and number of the case.
    """

    asked: float
    per_missing: float
    friction: float
    number: int

    def at(self, friction: float) -> float:
        """The exact number of straps for a friction."""
        return self.per_missing * max(0.0, self.asked - friction) / friction


def strap_figure(curve: StrapCurve, caption: str, writer: Writer) -> Figure:
    """The number of straps falls steeply with friction; the case is marked."""
    top = min(_MOST_DRAWN, max(4.0, 1.2 * curve.number))
    places = [_FROM + (_TO - _FROM) * step / _STEPS for step in range(_STEPS + 1)]
    drawn = [(friction, curve.at(friction)) for friction in places if curve.at(friction) <= top]
    graph = Graph(
        Axis(0.0, _TO, writer.text("axis-friction")), Axis(0.0, top, writer.text("axis-straps")), writer
    )
    graph.curve(drawn)
    if curve.number <= top and curve.friction <= _TO:
        graph.dots([(curve.friction, float(curve.number))], "hook")
        graph.note(
            curve.friction, float(curve.number), writer.text("mark-straps", count=curve.number), "strong"
        )
    return Figure(graph.drawing.svg(caption), caption)
