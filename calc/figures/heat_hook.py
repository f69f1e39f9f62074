"""The section of a hook and the stress across it, drawn to scale."""

from __future__ import annotations

from collections.abc import Sequence

from calc.figures.drawing import Drawing, Point
from calc.worksheet import Figure, Say

OutlineRow = tuple[float, float]
"""Radius [m] and half width [m] of the section there, from the inside out."""


def hook_stress_figure(
    outline: Sequence[OutlineRow],
    stresses: Sequence[tuple[float, float]],
    neutral_radius_m: float,
    bead_radius_m: float | None,
    say: Say,
) -> Figure:
    """The section (load side on the left) above the stress along the bar; one radial scale serves both.

    stresses -- radius [m] and stress [Pa], from the inside out
    """
    inner, outer = outline[0][0], outline[-1][0]
    depth = outer - inner
    half = max(width for _radius, width in outline)
    most = max(abs(stress) for _radius, stress in stresses) or 1.0
    drawing = Drawing(360, 380, 46)
    plot_zero = -half - 0.85 * depth
    tall = 0.5 * depth / most
    drawing.fit([(inner, half), (outer, plot_zero - 0.55 * depth)])
    upper: list[Point] = [(radius, width) for radius, width in outline]
    lower: list[Point] = [(radius, -width) for radius, width in reversed(outline)]
    drawing.area("steel", *upper, *lower)
    drawing.line("centre", (neutral_radius_m, half * 1.12), (neutral_radius_m, plot_zero - 0.3 * depth))
    drawing.text((neutral_radius_m, half * 1.12), "no stress here", shift=(0, -6), kind="small")
    for count in range(1, 10):
        radius = inner + depth * count / 10
        stress = _at(stresses, radius)
        drawing.line("thin", (radius, plot_zero), (radius, plot_zero + tall * stress))
    drawing.line("axis", (inner, plot_zero), (outer, plot_zero))
    drawing.line("curve", *((radius, plot_zero + tall * stress) for radius, stress in stresses))
    drawing.line("thin", (inner, plot_zero), (inner, plot_zero + tall * stresses[0][1]))
    drawing.line("thin", (outer, plot_zero), (outer, plot_zero + tall * stresses[-1][1]))
    first = say.of(stresses[0][1], "pressure", "up", reading=("ksi", "MPa"))
    last = say.of(stresses[-1][1], "pressure", reading=("ksi", "MPa"))
    drawing.text((inner, plot_zero + tall * stresses[0][1]), first, "start", (6, -4), "strong")
    drawing.text((outer, plot_zero + tall * stresses[-1][1]), last, "end", (0, 16), "strong")
    drawing.text((inner, 0.0), "load side", "start", (11, 4), "small")
    drawing.dimension((inner, -half), (outer, -half), say.one(depth, "length"), -16)
    bead = ""
    if bead_radius_m is not None:
        width = _at(outline, bead_radius_m)
        at = (bead_radius_m, width if inner < bead_radius_m < outer else 0.0)
        drawing.circle("molten", at, 7.0, on_sheet=True)
        stress = _at(stresses, bead_radius_m)
        drawing.circle("molten", (bead_radius_m, plot_zero + tall * stress), 4.0, on_sheet=True)
        bead = f" The bead sits where the stress is {say.of(stress, 'pressure', 'up' if stress > 0 else 'nearest', reading=('ksi', 'MPa'))}, before its own notch and shrinkage."
    caption = (
        f"The section of the hook with its load side on the left, and under it the stress along the bar: {first} at the "
        f"inside, zero at the dotted line, {last} at the outside.{bead}"
    )
    return Figure(drawing.svg(caption), caption)


def _at(rows: Sequence[tuple[float, float]], radius: float) -> float:
    """The second figure of the rows at a radius, between neighbours in a straight line."""
    last = len(rows) - 1
    after = next((i for i in range(1, last) if rows[i][0] >= radius), last)
    (r0, v0), (r1, v1) = rows[after - 1], rows[after]
    return v0 + (v1 - v0) * (radius - r0) / (r1 - r0)


__all__ = ["OutlineRow", "hook_stress_figure"]
