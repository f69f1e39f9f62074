"""A graph: two axes with round numbers, points, lines and marks, on the drawing board of calc.figures.drawing."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from calc.figures.drawing import Drawing, LineKind, Point
from calc.quantities import READING_UNITS, from_si, number_text
from calc.words.facts import Cell, Unit
from calc.words.writer import Writer


def round_ticks(low: float, high: float, wanted: int = 5) -> tuple[float, ...]:
    """Round numbers from `low` to `high`, about `wanted` of them, in steps of 1, 2 or 5."""
    span = max(high - low, abs(high) * 1e-9, 1e-12)
    raw = span / wanted
    size = 10.0 ** math.floor(math.log10(raw))
    step = next(size * factor for factor in (1.0, 2.0, 5.0, 10.0) if size * factor >= raw * 0.999)
    first = math.ceil(low / step - 1e-9)
    last = math.floor(high / step + 1e-9)
    return tuple(number * step for number in range(first, last + 1))


@dataclass(frozen=True)
class OwnUnit:
    """The reader's own unit of a dimension, in which a graph is drawn."""

    dimension: str
    writer: Writer

    @property
    def symbol(self) -> str:
        """The unit's symbol."""
        us_unit, si_unit = READING_UNITS[self.dimension]
        return us_unit if self.writer.units == "us" else si_unit

    @property
    def name(self) -> Unit:
        """The unit, for a message to name."""
        return Unit(self.symbol)

    def of(self, value_si: float) -> float:
        """An SI value in this unit."""
        return from_si(value_si, self.symbol, self.dimension)


@dataclass(frozen=True)
class Axis:
    """One axis: its ends in the reader's own unit, and what stands at it."""

    low: float
    high: float
    words: str

    @property
    def span(self) -> float:
        """From end to end, never nothing."""
        return max(self.high - self.low, 1e-12)


class Graph:
    """A graph under way. Values are given in the reader's own units; both axes are scaled to the sheet."""

    def __init__(
        self, x: Axis, y: Axis, writer: Writer, above: Graph | None = None, stacked: bool = False
    ) -> None:
        """`stacked` leaves room below for a second graph, which is made with `above` set to the first."""
        self.x, self.y, self.writer = x, y, writer
        self.base = -1.5 if above is not None else 0.0
        self.drawing: Drawing = (
            above.drawing if above is not None else Drawing(400, 630 if stacked else 320, 56)
        )
        if above is None:
            self.drawing.fit([(0.0, -1.5 if stacked else 0.0), (1.4, 1.0)])
        self._axes()

    def at(self, x: float, y: float) -> Point:
        """A value pair as a place on the board."""
        return (
            1.4 * (x - self.x.low) / self.x.span,
            self.base + (y - self.y.low) / self.y.span,
        )

    def _axes(self) -> None:
        draw, corner = self.drawing, self.at(self.x.low, self.y.low)
        far = self.at(self.x.low + self.x.span, self.y.low)
        draw.line("axis", self.at(self.x.low, self.y.low + self.y.span), corner, far)
        for tick in round_ticks(self.x.low, self.x.low + self.x.span):
            place = self.at(tick, self.y.low)
            draw.line("thin", place, (place[0], place[1] - 0.02))
            draw.text(place, self._tick(tick), "middle", (0, 20), "small")
        for tick in round_ticks(self.y.low, self.y.low + self.y.span):
            place = self.at(self.x.low, tick)
            draw.line("thin", place, (place[0] - 0.02, place[1]))
            draw.text(place, self._tick(tick), "end", (-8, 4), "small")
        draw.text((0.7, self.base), self.x.words, "middle", (0, 40), "small")
        draw.text((0.0, self.base + 1.0), self.y.words, "start", (-40, -16), "small")

    def _tick(self, tick: float) -> str:
        """A tick as the language writes a number."""
        text = number_text(tick, 3) if abs(tick) >= 1 or tick == 0 else f"{tick:.3g}".replace("-", "−")
        return self.writer.plain(Cell(text))

    def curve(self, points: Sequence[tuple[float, float]], kind: LineKind = "curve") -> None:
        """A line through value pairs."""
        self.drawing.line(kind, *(self.at(x, y) for x, y in points))

    def dots(self, points: Sequence[tuple[float, float]], kind: str = "pick") -> None:
        """A small circle at each value pair."""
        for x, y in points:
            self.drawing.circle(kind, self.at(x, y), 3.5, on_sheet=True)

    def bar(self, x: float, low: float, high: float) -> None:
        """An upright bar with ends: an interval at x."""
        self.drawing.line("thin", self.at(x, low), self.at(x, high))
        for end in (low, high):
            place = self.at(x, end)
            self.drawing.line("thin", (place[0] - 0.015, place[1]), (place[0] + 0.015, place[1]))

    def note(self, x: float, y: float, words: str, kind: str = "small") -> None:
        """Words beside a value pair."""
        anchor_end = (x - self.x.low) > 0.6 * self.x.span
        self.drawing.text(
            self.at(x, y), words, "end" if anchor_end else "start", (-8 if anchor_end else 8, -8), kind
        )


__all__ = ["Axis", "Graph", "OwnUnit", "round_ticks"]
