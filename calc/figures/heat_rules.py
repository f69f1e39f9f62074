"""Shares left over a temperature, drawn on axes of percent and degrees: the heat rules of chain, and hot steel."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, LineKind, Point
from calc.quantities import to_si
from calc.words.facts import Listing, Unit, degrees, message, share
from calc.words.writer import Writer

Band = tuple[float, float, float]
"""From and to [deg C], and the share [-] left in between."""
_WIDTH = 1.4
"""Width of the plot over its height."""
_HOTTEST_RULE_DEGC = 560.0
"""Where the axis of the heat rules ends [deg C]."""
_AT_THE_END = 1.001
_MARKS = {"us": ("degF", range(200, 2000, 200)), "si": ("degC", range(100, 2000, 100))}


def degree_axes(hottest_degc: float, writer: Writer) -> tuple[Drawing, Callable[[float, float], Point]]:
    """Axes for shares of 0 to 100 percent over a temperature, and where a (deg C, share) stands on them."""

    def at(degc: float, left: float) -> Point:
        return _WIDTH * degc / hottest_degc, left

    drawing = Drawing(420, 320, 48)
    drawing.fit([(0.0, 0.0), (_WIDTH, 1.0)])
    drawing.line("axis", (0.0, 1.0), (0.0, 0.0), (_WIDTH, 0.0))
    for left in (0.25, 0.5, 0.75, 1.0):
        drawing.line("thin", (0.0, left), (_WIDTH, left))
        drawing.text((0.0, left), writer.plain(share(left, "plain")), "end", (-6, 4), "note")
    unit, marks = _MARKS[writer.units]
    for mark in marks:
        degc = to_si(mark, unit, "temperature")
        if degc <= hottest_degc * _AT_THE_END:
            drawing.line("thin", at(degc, 0.0), at(degc, -0.02))
            drawing.text(at(degc, 0.0), writer.plain(mark), shift=(0, 20), kind="note")
    drawing.text((_WIDTH, 0.0), writer.plain(Unit(unit)), "end", (0, 38), "note")
    return drawing, at


@dataclass(frozen=True)
class HeatRules:
    """The bands of both rules for a grade, none where a rule prints nothing for it, and the chain's temperature [deg C]
    where there is one.
    """

    asme: Sequence[Band]
    en: Sequence[Band]
    at_degc: float | None = None

    def lines(self) -> tuple[tuple[str, LineKind, Sequence[Band]], ...]:
        """The rules that print the grade: code, kind of line, bands."""
        both: tuple[tuple[str, LineKind, Sequence[Band]], ...] = (
            ("asme", "curve", self.asme),
            ("en", "curve-second", self.en),
        )
        return tuple(one for one in both if one[2])

    @property
    def upright_degc(self) -> float | None:
        """The chain's temperature [deg C] where it stands on the sheet."""
        on_sheet = self.at_degc is not None and 0.0 <= self.at_degc <= _HOTTEST_RULE_DEGC
        return self.at_degc if on_sheet else None


def heat_rules_figure(rules: HeatRules, writer: Writer) -> Figure:
    """Share of a chain's rating left while hot, rule by rule in steps; the chain's temperature as a force-coloured line.

    writer -- has the words of shared/chain-heat
    """
    drawing, at = degree_axes(_HOTTEST_RULE_DEGC, writer)
    for code, kind, bands in rules.lines():
        points = [
            at(degc, left)
            for low, high, left in bands
            for degc, left in ((max(0.0, low), left), (high, left))
        ]
        drawing.line(kind, *points, at(bands[-1][1], 0.0))
        low, high, left = bands[len(bands) * 2 // 3]
        drawing.text(at((low + high) / 2, left), writer.text(f"rule-{code}"), "start", (2, -8), "strong")
    upright = rules.upright_degc
    if upright is not None:
        drawing.line("force", at(upright, 0.0), at(upright, 1.0))
    caption = _caption(rules, writer)
    return Figure(drawing.svg(caption), caption)


def _caption(rules: HeatRules, writer: Writer) -> str:
    lines = Listing(tuple(message(f"heat-line-{code}") for code, _kind, _bands in rules.lines()))
    caption = writer.text("figure-heat-rules", lines=lines)
    if rules.upright_degc is None:
        return caption
    return f"{caption} {writer.text('figure-heat-upright', at=degrees(rules.upright_degc))}"


__all__ = ["Band", "HeatRules", "degree_axes", "heat_rules_figure"]
