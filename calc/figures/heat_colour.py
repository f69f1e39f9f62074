"""A ladder of colours: the heat behind each tint and glow, and where the part stands on it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing

_WIDTH_OF_RUNG = 2.0 / 2.6
"""Width of the ladder's sheet for each rung, in rungs."""


@dataclass(frozen=True)
class Rung:
    """A colour on the ladder: its heat [deg C], and the words of heat and colour."""

    degc: float
    heat: str
    colour: str


@dataclass(frozen=True)
class Span:
    """The heats [deg C] that a part may have reached."""

    low_degc: float
    high_degc: float

    def holds(self, degc: float) -> bool:
        """Whether a heat [deg C] lies in the span."""
        return self.low_degc <= degc <= self.high_degc


def colour_figure(rungs: Sequence[Rung], span: Span | None, caption: str) -> Figure:
    """The colours as an even ladder, coolest at the foot; the span of heat marked beside it, where one is known."""
    top = float(len(rungs) - 1)
    width = _WIDTH_OF_RUNG * len(rungs)
    drawing = Drawing(400, 30 + 21 * len(rungs), 16)
    drawing.fit([(0.0, 0.0), (width, top)])
    drawing.line("axis", (0.32 * width, 0.0), (0.32 * width, top))
    for height, rung in enumerate(rungs):
        inside = span is not None and span.holds(rung.degc)
        drawing.line("thin", (0.31 * width, height), (0.33 * width, height))
        drawing.text((0.30 * width, height), rung.heat, "end", (0, 4), "small")
        drawing.text((0.40 * width, height), rung.colour, "start", (0, 4), "strong" if inside else "small")
    if span is not None:
        start, end = (_height(rungs, degc) for degc in (span.low_degc, span.high_degc))
        drawing.line(
            "leg-careful", (0.36 * width, min(start, end - 0.3)), (0.36 * width, max(end, start + 0.3))
        )
    return Figure(drawing.svg(caption), caption)


def _height(rungs: Sequence[Rung], degc: float) -> float:
    """Where a heat [deg C] stands on the ladder, in rungs; held to its ends."""
    if degc <= rungs[0].degc:
        return -0.4
    above = next((i for i, rung in enumerate(rungs) if rung.degc >= degc), None)
    if above is None:
        return len(rungs) - 0.6
    low, high = rungs[above - 1].degc, rungs[above].degc
    return above - 1 + (degc - low) / (high - low)


__all__ = ["Rung", "Span", "colour_figure"]
