"""Drawing of a loaded beam: the span to scale, the sag drawn larger than life."""

from __future__ import annotations

from calc.figures.drawing import Drawing
from calc.lifting.beams import Beam
from calc.worksheet import Figure, Say


def beam_figure(beam: Beam, moment_at_m: float, sag_at_m: float, sag_m: float, say: Say) -> Figure:
    """Elevation: the straight beam dashed, its sag as a curve enlarged to a fixed height, supports, load, dimensions."""
    span = beam.span_m
    shown = 0.13 * span / sag_m
    drawing = Drawing(400, 240, 52)
    drawing.fit([(-0.05 * span, -0.2 * span), (1.05 * span, 0.25 * span)])
    drawing.line("hidden", (0.0, 0.0), (span, 0.0))
    points = [(span * i / 60, -shown * beam.sag_m(span * i / 60)) for i in range(61)]
    drawing.line("outline", *points)
    foot = 0.035 * span
    for x in (0.0, span):
        if beam.ends == "simple":
            drawing.area("ground", (x, 0.0), (x + foot, -1.6 * foot), (x - foot, -1.6 * foot))
        elif x == 0.0 or beam.ends == "fixed":
            drawing.line("ground", (x, -2 * foot), (x, 2 * foot))
    load_at = (beam.position_m, -shown * beam.sag_m(beam.position_m))
    drawing.arrow((beam.position_m, 0.22 * span), load_at)
    drawing.text((beam.position_m, 0.22 * span), say.force(beam.load_n, "up"), shift=(0, -6), kind="strong")
    drawing.text((sag_at_m, -shown * sag_m), f"sags {say.of(sag_m, 'length', 'up')}", shift=(0, 18))
    drawing.dimension((span, -0.1 * span), (0.0, -0.1 * span), say.one(span, "length", digits=3), 34)
    caption = (
        f"The beam to scale over {say.length(span)}, its sag drawn {shown:,.0f} times too large. It bends hardest at "
        f"{say.length(moment_at_m)} and sags most at {say.length(sag_at_m)} from the left."
    )
    return Figure(drawing.svg(caption), caption)
