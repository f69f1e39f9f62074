"""A trailer from the side, to scale, with what rests on its ball and its axles."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing
from calc.words.writer import Writer


@dataclass(frozen=True)
class StandingLoad:
    """A load as drawn: its weight in words, and how far it stands ahead of the middle of the axles [m]."""

    words: str
    ahead_m: float


@dataclass(frozen=True)
class Trailer:
    """A trailer as drawn: from the middle of its axles to the ball [m], its loads, and what rests where in words."""

    ball_m: float
    loads: Sequence[StandingLoad]
    tongue: str
    axles: str


def trailer_figure(trailer: Trailer, caption: str, writer: Writer) -> Figure:
    """The deck with an arrow down for each load and one up at ball and axles; it drives to the right."""
    ball = trailer.ball_m
    rear = min(-0.35 * ball, *(1.1 * load.ahead_m for load in trailer.loads))
    size = (ball - rear) / 10
    drawing = Drawing(400, 240, 46)
    drawing.fit([(rear, -2.2 * size), (ball, (1.6 + 0.7 * len(trailer.loads)) * size)])
    drawing.line("outline", (rear, 0.0), (0.8 * ball, 0.0), (ball, -0.4 * size))
    drawing.circle("hook", (0.0, -0.7 * size), 0.7 * size)
    drawing.line("ground", (rear, -1.4 * size), (ball, -1.4 * size))
    drawing.line("centre", (0.0, -1.7 * size), (0.0, size))
    for number, load in enumerate(trailer.loads):
        top = (1.4 + 0.7 * number) * size
        drawing.arrow((load.ahead_m, top), (load.ahead_m, 0.0))
        drawing.text((load.ahead_m, top), load.words, shift=(0, -5), kind="note")
    drawing.arrow((ball, -1.4 * size), (ball, -0.4 * size))
    drawing.text((ball, -1.4 * size), writer.text("figure-ball"), "end", (0, 16), "small")
    drawing.text((ball, -1.4 * size), trailer.tongue, "end", (0, 50), "strong")
    drawing.text((0.0, -1.4 * size), writer.text("figure-axles"), shift=(0, 16), kind="small")
    drawing.text((0.0, -1.4 * size), trailer.axles, shift=(0, 32), kind="strong")
    return Figure(drawing.svg(caption), caption)


__all__ = ["StandingLoad", "Trailer", "trailer_figure"]
