"""A graph: two axes with round numbers, points, lines and marks, on the drawing board of calc.figures.drawing."""

from __future__ import annotations

import math
from collections.abc import Sequence

from calc.figures.drawing import Drawing, LineKind, Point
from calc.quantities import number_text


def round_ticks(low: float, high: float, wanted: int = 5) -> tuple[float, ...]:
    """Round numbers from `low` to `high`, about `wanted` of them, in steps of 1, 2 or 5."""
    span = max(high - low, abs(high) * 1e-9, 1e-12)
    raw = span / wanted
    size = 10.0 ** math.floor(math.log10(raw))
    step = next(size * factor for factor in (1.0, 2.0, 5.0, 10.0) if size * factor >= raw * 0.999)
    first = math.ceil(low / step - 1e-9)
    last = math.floor(high / step + 1e-9)
    return tuple(number * step for number in range(first, last + 1))


def _tick_text(tick: float) -> str:
    return number_text(tick, 3) if abs(tick) >= 1 or tick == 0 else f"{tick:.3g}".replace("-", "−")


class Graph:
    """A graph under way. Values are given in the reader's own units; both axes are scaled to the sheet."""

    def __init__(
        self, x_range: tuple[float, float], y_range: tuple[float, float], x_words: str, y_words: str,
        above: Graph | None = None, stacked: bool = False,
    ) -> None:  # fmt: skip
        """`stacked` leaves room below for a second graph, which is made with `above` set to the first."""
        self.base = -1.5 if above is not None else 0.0
        self.drawing: Drawing = (
            above.drawing if above is not None else Drawing(400, 630 if stacked else 320, 56)
        )
        if above is None:
            self.drawing.fit([(0.0, -1.5 if stacked else 0.0), (1.4, 1.0)])
        self.x_low, self.x_high = x_range[0], max(x_range[1], x_range[0] + 1e-12)
        self.y_low, self.y_high = y_range[0], max(y_range[1], y_range[0] + 1e-12)
        self._axes(x_words, y_words)

    def at(self, x: float, y: float) -> Point:
        """A value pair as a place on the board."""
        return (
            1.4 * (x - self.x_low) / (self.x_high - self.x_low),
            self.base + (y - self.y_low) / (self.y_high - self.y_low),
        )

    def _axes(self, x_words: str, y_words: str) -> None:
        draw = self.drawing
        draw.line(
            "axis",
            self.at(self.x_low, self.y_high),
            self.at(self.x_low, self.y_low),
            self.at(self.x_high, self.y_low),
        )
        for tick in round_ticks(self.x_low, self.x_high):
            place = self.at(tick, self.y_low)
            draw.line("thin", place, (place[0], place[1] - 0.02))
            draw.text(place, _tick_text(tick), "middle", (0, 20), "small")
        for tick in round_ticks(self.y_low, self.y_high):
            place = self.at(self.x_low, tick)
            draw.line("thin", place, (place[0] - 0.02, place[1]))
            draw.text(place, _tick_text(tick), "end", (-8, 4), "small")
        draw.text((0.7, self.base), x_words, "middle", (0, 40), "small")
        draw.text((0.0, self.base + 1.0), y_words, "start", (-40, -16), "small")

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
        anchor_end = (x - self.x_low) > 0.6 * (self.x_high - self.x_low)
        self.drawing.text(
            self.at(x, y), words, "end" if anchor_end else "start", (-8 if anchor_end else 8, -8), kind
        )


__all__ = ["Graph", "round_ticks"]
