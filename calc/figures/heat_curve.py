"""Strength against the heat of tempering, drawn from the test pieces."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.quantities import to_si
from calc.words.facts import Unit
from calc.words.writer import Writer

_WIDTH = 1.35
"""Width of the plot over its height."""
_FLOOR = 0.3
"""Strength at the foot of the plot over that of the strongest piece."""


@dataclass(frozen=True)
class Piece:
    """A test piece: the heat it was tempered at [deg C] and its strength [Pa]."""

    degc: float
    strength_pa: float


@dataclass(frozen=True)
class StrengthSpan:
    """A strength with its least and greatest reading [Pa]."""

    low_pa: float
    middle_pa: float
    high_pa: float


@dataclass(frozen=True)
class TemperCurve:
    """What is drawn: the test pieces, coolest first; the piece before; and its strength after, where it is known."""

    pieces: tuple[Piece, ...]
    before: Piece
    after: StrengthSpan | None

    @property
    def most_pa(self) -> float:
        """Strength of the strongest piece [Pa]."""
        return max(piece.strength_pa for piece in self.pieces)

    def at(self, degc: float, strength_pa: float) -> Point:
        """Where a heat [deg C] and a strength [Pa] stand on the plot."""
        low, high = self.pieces[0].degc, self.pieces[-1].degc
        floor = _FLOOR * self.most_pa
        return (degc - low) / (high - low) * _WIDTH, (strength_pa - floor) / (self.most_pa - floor)


@dataclass(frozen=True)
class _Axes:
    """Units and marks of both axes in one order of units."""

    heat_unit: str
    heats: Sequence[int]
    strength_unit: str
    strengths: Sequence[int]


_AXES = {
    "us": _Axes("degF", range(400, 1201, 200), "ksi", (100, 150, 200, 250)),
    "si": _Axes("degC", range(250, 651, 100), "MPa", (750, 1000, 1250, 1500, 1750)),
}


def tempering_figure(curve: TemperCurve, caption: str, writer: Writer) -> Figure:
    """The curve through the test pieces, where the piece stands, and where the new heat takes it: its middle is set on the
    curve, at the one-hour heat that would have given it.

    writer -- has the words `figure-tempered-at`, `figure-before` and `figure-after`
    """
    drawing = Drawing(400, 320, 52)
    drawing.fit([(0.0, 0.0), (_WIDTH, 1.0)])
    _axes(drawing, curve, writer)
    points = [curve.at(piece.degc, piece.strength_pa) for piece in curve.pieces]
    drawing.line("curve", *points)
    for point in points:
        drawing.circle("pick", point, 3.5, on_sheet=True)
    before = curve.at(curve.before.degc, curve.before.strength_pa)
    drawing.circle("hook", before, 5.5, on_sheet=True)
    drawing.text(before, writer.text("figure-before"), "start", (10, -8), "strong")
    if curve.after is not None:
        _after(drawing, curve, curve.after, writer.text("figure-after"))
    return Figure(drawing.svg(caption), caption)


def _axes(drawing: Drawing, curve: TemperCurve, writer: Writer) -> None:
    """Both axes with their marks and units."""
    axes = _AXES[writer.units]
    low, high, most = curve.pieces[0].degc, curve.pieces[-1].degc, curve.most_pa
    floor = _FLOOR * most
    drawing.line("axis", curve.at(low, most), curve.at(low, floor), curve.at(high, floor))
    for mark in axes.heats:
        degc = max(low, to_si(mark, axes.heat_unit, "temperature"))
        drawing.line("thin", curve.at(degc, floor), curve.at(degc, floor - 0.02 * most))
        drawing.text(curve.at(degc, floor), writer.plain(mark), shift=(0, 20), kind="note")
    words = writer.text("figure-tempered-at", unit=Unit(axes.heat_unit))
    drawing.text(curve.at((low + high) / 2, floor), words, shift=(0, 38), kind="small")
    for mark in axes.strengths:
        strength = to_si(mark, axes.strength_unit, "pressure")
        drawing.line("thin", curve.at(low, strength), curve.at(high, strength))
        drawing.text(curve.at(low, strength), writer.plain(mark), "end", (-6, 4), "note")
    drawing.text(curve.at(low, most), writer.plain(Unit(axes.strength_unit)), "end", (-6, -12), "small")


def _after(drawing: Drawing, curve: TemperCurve, after: StrengthSpan, words: str) -> None:
    """The strength after: its band, and its middle on the curve."""
    degc = _degc_of(curve.pieces, after.middle_pa)
    floor = _FLOOR * curve.most_pa
    drawing.line(
        "force",
        curve.at(degc, max(floor, after.low_pa)),
        curve.at(degc, min(curve.most_pa, after.high_pa)),
    )
    middle = curve.at(degc, after.middle_pa)
    drawing.circle("hook", middle, 5.5, on_sheet=True)
    drawing.text(middle, words, "end", (-12, 18), "strong")


def _degc_of(pieces: Sequence[Piece], strength_pa: float) -> float:
    """The tempering heat [deg C] on the curve at which a strength [Pa] stands."""
    last = len(pieces) - 1
    after = next((i for i in range(1, last) if pieces[i].strength_pa <= strength_pa), last)
    cooler, hotter = pieces[after - 1], pieces[after]
    share = (strength_pa - cooler.strength_pa) / (hotter.strength_pa - cooler.strength_pa)
    return cooler.degc + (hotter.degc - cooler.degc) * share


__all__ = ["Piece", "StrengthSpan", "TemperCurve", "tempering_figure"]
