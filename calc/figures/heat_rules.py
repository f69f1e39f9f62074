"""Shares left over a temperature, drawn on axes of percent and degrees: the heat rules of chain, and hot steel."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from calc.figures.drawing import Drawing, LineKind, Point
from calc.figures.heat_colour import whole_degrees
from calc.quantities import to_si
from calc.worksheet import Figure, Say

Band = tuple[float, float, float]
"""From and to [deg C], and the share [-] left in between."""


def degree_axes(hottest_degc: float, say: Say) -> tuple[Drawing, Callable[[float, float], Point]]:
    """Axes for shares of 0 to 100 percent over a temperature, and where a (deg C, share) stands on them."""

    def at(degc: float, share: float) -> Point:
        return 1.4 * degc / hottest_degc, share

    drawing = Drawing(420, 320, 48)
    drawing.fit([(0.0, 0.0), (1.4, 1.0)])
    drawing.line("axis", (0.0, 1.0), (0.0, 0.0), (1.4, 0.0))
    for percent in (25, 50, 75, 100):
        drawing.line("thin", (0.0, percent / 100), (1.4, percent / 100))
        drawing.text((0.0, percent / 100), f"{percent}%", "end", (-6, 4), "note")
    unit, word, step = ("degF", "°F", 200) if say.units == "us" else ("degC", "°C", 100)
    for mark in range(step, 2000, step):
        degc = to_si(mark, unit, "temperature")
        if degc <= hottest_degc * 1.001:
            drawing.line("thin", at(degc, 0.0), at(degc, -0.02))
            drawing.text(at(degc, 0.0), f"{mark:,}", shift=(0, 20), kind="note")
    drawing.text((1.4, 0.0), word, "end", (0, 38), "note")
    return drawing, at


def heat_rules_figure(asme: Sequence[Band], en: Sequence[Band], at_degc: float | None, say: Say) -> Figure:
    """Share of a chain's rating left while hot, rule by rule in steps; the chain's temperature as a force-coloured line.

    A rule that prints nothing for the grade has no bands and no line.
    """
    hottest = 560.0
    drawing, at = degree_axes(hottest, say)
    drawn: list[str] = []
    rules: tuple[tuple[Sequence[Band], LineKind, str, str], ...] = (
        (asme, "curve", "ASME B30.9", "full"),
        (en, "curve-second", "EN 818-6", "dashed"),
    )
    for bands, kind, name, line in rules:
        if not bands:
            continue
        points: list[Point] = []
        for low, high, share in bands:
            points += [at(max(0.0, low), share), at(high, share)]
        drawing.line(kind, *points, at(bands[-1][1], 0.0))
        middle = bands[len(bands) * 2 // 3]
        drawing.text(at((middle[0] + middle[1]) / 2, middle[2]), name, "start", (2, -8), "strong")
        drawn.append(f"{line} line {name}")
    caption = (
        f"Share of its rating that a sound chain keeps while it is hot: {', '.join(drawn)}. Where a line drops to nothing, the "
        "rule allows no use."
    )
    if at_degc is not None and 0.0 <= at_degc <= hottest:
        drawing.line("force", at(at_degc, 0.0), at(at_degc, 1.0))
        caption += f" The upright marks {whole_degrees(say, at_degc)}."
    return Figure(drawing.svg(caption), caption)


__all__ = ["Band", "degree_axes", "heat_rules_figure"]
