"""The section of a hook and the stress across it, drawn to scale."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point

OutlineRow = tuple[float, float]
"""Radius [m] and half width [m] of the section there, from the inside out."""
StressRow = tuple[float, float]
"""Radius [m] and stress [Pa] there, from the inside out."""
_HATCHES = 10
"""Into how many parts the stress is hatched."""


@dataclass(frozen=True)
class HookSection:
    """What is drawn: the outline and the stress across it, the radius without stress [m], and where a bead sits [m]."""

    outline: tuple[OutlineRow, ...]
    stresses: tuple[StressRow, ...]
    zero_radius_m: float
    bead_radius_m: float | None

    @property
    def inner_m(self) -> float:
        """Inner radius [m]."""
        return self.outline[0][0]

    @property
    def outer_m(self) -> float:
        """Outer radius [m]."""
        return self.outline[-1][0]

    @property
    def depth_m(self) -> float:
        """Depth, inside to outside [m]."""
        return self.outer_m - self.inner_m

    @property
    def half_width_m(self) -> float:
        """Half of the greatest width [m]."""
        return max(width for _radius, width in self.outline)


@dataclass(frozen=True)
class HookWords:
    """The words on the drawing: stress at the inside and the outside, the depth, and two places named."""

    inside: str
    outside: str
    depth: str
    no_stress: str
    load_side: str


@dataclass(frozen=True)
class _Plot:
    """Where the stress is plotted under the section: height of no stress [m], and metres of paper to a pascal."""

    zero: float
    tall: float

    def at(self, radius_m: float, stress_pa: float) -> Point:
        """Where a stress stands."""
        return radius_m, self.zero + self.tall * stress_pa


def hook_stress_figure(section: HookSection, words: HookWords, caption: str) -> Figure:
    """The section (load side on the left) above the stress along the bar; one radial scale serves both."""
    half, depth = section.half_width_m, section.depth_m
    most = max(abs(stress) for _radius, stress in section.stresses) or 1.0
    plot = _Plot(-half - 0.85 * depth, 0.5 * depth / most)
    drawing = Drawing(360, 380, 46)
    drawing.fit([(section.inner_m, half), (section.outer_m, plot.zero - 0.55 * depth)])
    _section(drawing, section, words)
    zero = section.zero_radius_m
    for above, below in ((half * 1.12, -half), (plot.zero + 0.15 * depth, plot.zero - 0.15 * depth)):
        drawing.line("centre", (zero, above), (zero, below))
    drawing.text((zero, half * 1.12), words.no_stress, shift=(0, -6), kind="small")
    _stress(drawing, section, plot, words)
    if section.bead_radius_m is not None:
        _bead(drawing, section, plot, section.bead_radius_m)
    return Figure(drawing.svg(caption), caption)


def _section(drawing: Drawing, section: HookSection, words: HookWords) -> None:
    """The cut across the bend."""
    upper: list[Point] = [(radius, width) for radius, width in section.outline]
    lower: list[Point] = [(radius, -width) for radius, width in reversed(section.outline)]
    drawing.area("steel", *upper, *lower)
    drawing.text((section.inner_m, 0.0), words.load_side, "start", (11, 4), "small")
    low = -section.half_width_m
    drawing.dimension((section.inner_m, low), (section.outer_m, low), words.depth, -16)


def _stress(drawing: Drawing, section: HookSection, plot: _Plot, words: HookWords) -> None:
    """The stress along the bar, over the same radii."""
    inner, outer = section.inner_m, section.outer_m
    for count in range(1, _HATCHES):
        radius = inner + section.depth_m * count / _HATCHES
        drawing.line("thin", (radius, plot.zero), plot.at(radius, _at(section.stresses, radius)))
    drawing.line("axis", (inner, plot.zero), (outer, plot.zero))
    drawing.line("curve", *(plot.at(radius, stress) for radius, stress in section.stresses))
    first, last = plot.at(inner, section.stresses[0][1]), plot.at(outer, section.stresses[-1][1])
    drawing.line("thin", (inner, plot.zero), first)
    drawing.line("thin", (outer, plot.zero), last)
    drawing.text(first, words.inside, "start", (6, -4), "strong")
    drawing.text(last, words.outside, "end", (0, 16), "strong")


def _bead(drawing: Drawing, section: HookSection, plot: _Plot, radius: float) -> None:
    """The bead on the section, and its place on the stress."""
    on_the_side = section.inner_m < radius < section.outer_m
    drawing.circle(
        "molten", (radius, _at(section.outline, radius) if on_the_side else 0.0), 7.0, on_sheet=True
    )
    drawing.circle("molten", plot.at(radius, _at(section.stresses, radius)), 4.0, on_sheet=True)


def _at(rows: Sequence[tuple[float, float]], radius: float) -> float:
    """The second figure of the rows at a radius, between neighbours in a straight line."""
    last = len(rows) - 1
    after = next((i for i in range(1, last) if rows[i][0] >= radius), last)
    (r0, v0), (r1, v1) = rows[after - 1], rows[after]
    return v0 + (v1 - v0) * (radius - r0) / (r1 - r0)


__all__ = ["HookSection", "HookWords", "OutlineRow", "StressRow", "hook_stress_figure"]
