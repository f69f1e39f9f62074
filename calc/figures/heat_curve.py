"""Strength against the heat of tempering, drawn from the test pieces."""

from __future__ import annotations

from collections.abc import Sequence

from calc.figures.drawing import Drawing, Point
from calc.quantities import to_si
from calc.worksheet import Figure, Say

_KSI = ("ksi", "MPa")


def tempering_figure(
    name: str,
    pieces: Sequence[tuple[float, float]],
    before: tuple[float, float],
    after: tuple[float, float, float] | None,
    say: Say,
) -> Figure:
    """The curve through the test pieces (deg C, Pa), where the piece stands, and where the new heat takes it.

    after -- lowest, middle and highest strength [Pa]; the middle is set on the curve, at the one-hour heat that would
    have given it
    """
    low_degc, high_degc = pieces[0][0], pieces[-1][0]
    most = max(strength for _, strength in pieces)
    floor = 0.3 * most

    def at(degc: float, strength: float) -> Point:
        return (degc - low_degc) / (high_degc - low_degc) * 1.35, (strength - floor) / (most - floor)

    drawing = Drawing(400, 320, 52)
    drawing.fit([(0.0, 0.0), (1.35, 1.0)])
    drawing.line("axis", at(low_degc, most), at(low_degc, floor), at(high_degc, floor))
    fahrenheit = range(400, 1201, 200) if say.units == "us" else range(250, 651, 100)
    unit, word = ("degF", "°F") if say.units == "us" else ("degC", "°C")
    for mark in fahrenheit:
        degc = max(low_degc, to_si(mark, unit, "temperature"))
        drawing.line("thin", at(degc, floor), at(degc, floor - 0.02 * most))
        drawing.text(at(degc, floor), f"{mark:,}", shift=(0, 20), kind="note")
    drawing.text(
        at((low_degc + high_degc) / 2, floor), f"tempered for an hour at, {word}", shift=(0, 38), kind="small"
    )
    for mark in (100, 150, 200, 250) if say.units == "us" else (750, 1000, 1250, 1500, 1750):
        strength = to_si(mark, "ksi" if say.units == "us" else "MPa", "pressure")
        drawing.line("thin", at(low_degc, strength), at(high_degc, strength))
        drawing.text(at(low_degc, strength), f"{mark:,}", "end", (-6, 4), "note")
    drawing.text(at(low_degc, most), "ksi" if say.units == "us" else "MPa", "end", (-6, -12), "small")
    drawing.line("curve", *(at(degc, strength) for degc, strength in pieces))
    for degc, strength in pieces:
        drawing.circle("pick", at(degc, strength), 3.5, on_sheet=True)
    drawing.circle("hook", at(*before), 5.5, on_sheet=True)
    drawing.text(at(*before), "before", "start", (10, -8), "strong")
    caption = (
        f"Tensile strength of {name} test pieces against the temperature they were tempered at: the hotter, the softer. "
        f"The piece starts at {say.of(before[1], 'pressure', reading=_KSI)}"
    )
    if after is None:
        return Figure(drawing.svg(caption := f"{caption}; the new heat takes it off this curve."), caption)
    degc = _degc_of(pieces, after[1])
    drawing.line("force", at(degc, max(floor, after[0])), at(degc, min(most, after[2])))
    drawing.circle("hook", at(degc, after[1]), 5.5, on_sheet=True)
    drawing.text(at(degc, after[1]), "after", "end", (-12, 18), "strong")
    low, high = (say.of(strength, "pressure", reading=_KSI) for strength in (after[0], after[2]))
    caption = f"{caption} and ends between {low} and {high}."
    return Figure(drawing.svg(caption), caption)


def _degc_of(pieces: Sequence[tuple[float, float]], strength: float) -> float:
    """The tempering heat [deg C] on the curve at which a strength [Pa] stands."""
    last = len(pieces) - 1
    after = next((i for i in range(1, last) if pieces[i][1] <= strength), last)
    (t0, s0), (t1, s1) = pieces[after - 1], pieces[after]
    return t0 + (t1 - t0) * (strength - s0) / (s1 - s0)


__all__ = ["tempering_figure"]
