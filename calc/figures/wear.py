"""Graph of how a part wears: its readings by day, its limit, the way from new half used up, and when the line meets the limit."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.graph import Axis, Graph, OwnUnit
from calc.words.facts import length
from calc.words.writer import Writer

DAYS_OF_A_MONTH = 30.436875
_ROOM = 0.08
"""How far an axis runs past what is drawn, of its span."""


@dataclass(frozen=True)
class WearShape:
    """What is drawn, days counted from today: the readings (day, size [m]), the limit and the size when new [m] where they
    are known, and the first and last day at which the line meets the limit (None: it is not told, or has no end).
    """

    today: datetime.date
    readings: Sequence[tuple[datetime.date, float]]
    limit_m: float | None
    new_m: float | None
    earliest: datetime.date | None
    latest: datetime.date | None

    def months(self, day: datetime.date) -> float:
        """How many months a day is from today."""
        return (day - self.today).days / DAYS_OF_A_MONTH


def wear_figure(shape: WearShape, caption: str, writer: Writer) -> Figure:
    """The readings as dots, the limit as a line, and between two marks on it the days at which it may be met."""
    size = OwnUnit("length", writer)
    sizes = [size.of(one) for _day, one in shape.readings]
    known = [size.of(one) for one in (shape.limit_m, shape.new_m) if one is not None]
    days = [day for day, _size in shape.readings]
    days += [day for day in (shape.earliest, shape.latest) if day is not None]
    times = [0.0, *map(shape.months, days)]
    low, high = min(*sizes, *known, sizes[0]), max(*sizes, *known, sizes[0])
    room, wide = _ROOM * max(high - low, 1e-6), _ROOM * max(max(times) - min(times), 1.0)
    graph = Graph(
        Axis(min(times) - wide, max(times) + wide, writer.text("kit-axis-months")),
        Axis(low - room, high + room, writer.text("kit-axis-size", unit=size.name)),
        writer,
    )
    points = [(shape.months(day), size.of(one)) for day, one in shape.readings]
    graph.curve(points, "curve")
    graph.dots(points)
    if shape.limit_m is not None:
        _limit(graph, shape, size.of(shape.limit_m), writer)
    return Figure(graph.drawing.svg(caption), caption)


def _limit(graph: Graph, shape: WearShape, limit: float, writer: Writer) -> None:
    left, right = graph.x.low, graph.x.low + graph.x.span
    graph.curve([(left, limit), (right, limit)], "hidden")
    graph.note(left, limit, writer.text("kit-mark-limit", limit=length(shape.limit_m or 0.0, digits=4)))
    if shape.earliest is not None:
        graph.dots([(shape.months(shape.earliest), limit)], "hook")
    if shape.latest is not None:
        graph.dots([(shape.months(shape.latest), limit)], "hook")


__all__ = ["WearShape", "wear_figure"]
