"""A ladder of colours: the heat behind each tint and glow, and where the part stands on it."""

from __future__ import annotations

from collections.abc import Sequence

from calc.figures.drawing import Drawing
from calc.worksheet import Figure, Say


def whole_degrees(say: Say, degc: float) -> str:
    """A temperature [deg C] in whole degrees of both scales, the reader's own first."""
    us, si = f"{degc * 9 / 5 + 32:,.0f} °F", f"{degc:,.0f} °C"
    return f"{us} ({si})" if say.units == "us" else f"{si} ({us})"


def colour_figure(
    colours: Sequence[tuple[str, str, float]], low_degc: float | None, high_degc: float | None, say: Say
) -> Figure:
    """Colours (name, kind, deg C) as an even ladder, coolest at the foot; the span of heat marked beside it."""
    drawing = Drawing(400, 30 + 21 * len(colours), 16)
    rungs = [degc for _name, _kind, degc in colours]
    drawing.fit([(0.0, 0.0), (2.0 * len(colours) / 2.6, float(len(colours) - 1))])
    width = 2.0 * len(colours) / 2.6
    drawing.line("axis", (0.32 * width, 0.0), (0.32 * width, float(len(colours) - 1)))
    for rung, (name, kind, degc) in enumerate(colours):
        inside = low_degc is not None and high_degc is not None and low_degc <= degc <= high_degc
        drawing.line("thin", (0.31 * width, rung), (0.33 * width, rung))
        drawing.text((0.30 * width, rung), whole_degrees(say, degc), "end", (0, 4), "small")
        word = f"{name} {'tint' if kind == 'oxide_tint' else 'glow'}"
        drawing.text((0.40 * width, rung), word, "start", (0, 4), "strong" if inside else "small")
    if low_degc is None or high_degc is None:
        caption = "The ladder of heat colours. No colour was seen, so no heat can be told."
        return Figure(drawing.svg(caption), caption)
    start, end = _height(rungs, low_degc), _height(rungs, high_degc)
    drawing.line("leg-careful", (0.36 * width, min(start, end - 0.3)), (0.36 * width, max(end, start + 0.3)))
    span = whole_degrees(say, low_degc)
    if high_degc > low_degc:
        span = f"between {span} and {whole_degrees(say, high_degc)}"
    caption = f"The ladder of heat colours, coolest at the foot. The thick line marks the heat: {span}."
    return Figure(drawing.svg(caption), caption)


def _height(rungs: Sequence[float], degc: float) -> float:
    """Where a heat stands on the ladder, in rungs; held to its ends."""
    if degc <= rungs[0]:
        return -0.4
    above = next((i for i, rung in enumerate(rungs) if rung >= degc), None)
    if above is None:
        return len(rungs) - 0.6
    return above - 1 + (degc - rungs[above - 1]) / (rungs[above] - rungs[above - 1])


__all__ = ["colour_figure", "whole_degrees"]
