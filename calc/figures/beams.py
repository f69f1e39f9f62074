"""Drawing of a loaded beam: the span to scale, the sag drawn larger than life."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from calc.declaration import Figure
from calc.figures.drawing import Drawing
from calc.words.facts import force, length
from calc.words.writer import Writer

_SHOWN_SAG = 0.13
"""Part of the span as which the greatest sag is drawn [-]."""


@dataclass(frozen=True)
class BentBeam:
    """A beam as drawn: span, place of the load, of the greatest sag and the sag there [m], load [N], how its ends are held,
    and its sag [m] at a place along it.
    """

    span_m: float
    ends: Literal["simple", "fixed", "cantilever"]
    load_n: float
    position_m: float
    sag_at_m: float
    sag_m: float
    curve: Callable[[float], float]

    @property
    def enlarged(self) -> float:
        """How many times too large its sag is drawn [-]."""
        return _SHOWN_SAG * self.span_m / self.sag_m


def beam_figure(beam: BentBeam, sags: str, caption: str, writer: Writer) -> Figure:
    """Elevation: the straight beam dashed, its sag as a curve enlarged to a fixed height, supports, load, dimensions. `sags`
    stands at the greatest sag.
    """
    span, enlarged = beam.span_m, beam.enlarged
    drawing = Drawing(400, 240, 52)
    drawing.fit([(-0.05 * span, -0.2 * span), (1.05 * span, 0.25 * span)])
    drawing.line("hidden", (0.0, 0.0), (span, 0.0))
    points = [(span * i / 60, -enlarged * beam.curve(span * i / 60)) for i in range(61)]
    drawing.line("outline", *points)
    _supports(drawing, beam)
    load_at = (beam.position_m, -enlarged * beam.curve(beam.position_m))
    drawing.arrow((beam.position_m, 0.22 * span), load_at)
    pull = writer.plain(force(beam.load_n, "demand"))
    drawing.text((beam.position_m, 0.22 * span), pull, shift=(0, -6), kind="strong")
    drawing.text((beam.sag_at_m, -enlarged * beam.sag_m), sags, shift=(0, 18))
    drawing.dimension((span, -0.1 * span), (0.0, -0.1 * span), writer.own(length(span), 3), 34)
    return Figure(drawing.svg(caption), caption)


def _supports(drawing: Drawing, beam: BentBeam) -> None:
    """A foot under each end that rests, a wall at each end that is built in."""
    span = beam.span_m
    foot = 0.035 * span
    for x in (0.0, span):
        if beam.ends == "simple":
            drawing.area("ground", (x, 0.0), (x + foot, -1.6 * foot), (x - foot, -1.6 * foot))
        elif x == 0.0 or beam.ends == "fixed":
            drawing.line("ground", (x, -2 * foot), (x, 2 * foot))
