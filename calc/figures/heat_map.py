"""The mark a bead leaves in the section under it: bands of peak temperature, to scale, hatched so that they print.

Each band lies inside the next: melted, hard, softened, tinted, untouched. Hatches, not colours, tell them apart.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.figures.drawing import Drawing, Point
from calc.heating.moving_heat import Isotherm
from calc.worksheet import Figure, Say

HATCHES = (
    '<defs><pattern id="weld-hard" width="5" height="5" patternUnits="userSpaceOnUse">'
    '<path d="M0 5L5 0M0 0L5 5" stroke="currentColor" stroke-width="1.1"/></pattern>'
    '<pattern id="weld-soft" width="6" height="6" patternUnits="userSpaceOnUse">'
    '<path d="M-1 1L1 -1M0 6L6 0M5 7L7 5" stroke="currentColor" stroke-width="1"/></pattern>'
    '<pattern id="weld-tint" width="7" height="7" patternUnits="userSpaceOnUse">'
    '<circle cx="2" cy="2" r=".9" fill="currentColor"/></pattern></defs>'
)
_FILLS = {
    "melted": "currentColor",
    "hard": "url(#weld-hard)",
    "softened": "url(#weld-soft)",
    "tinted": "url(#weld-tint)",
}


@dataclass(frozen=True)
class HeatBand:
    """A band of the map: its name (melted, hard, softened or tinted), the words on the drawing, and its outer line."""

    name: str
    words: str
    line: Isotherm


def heat_map_figure(bands: Sequence[HeatBand], thickness_m: float, say: Say) -> Figure:
    """The section across the bead; `bands` from the innermost out."""
    reach = bands[-1].line.points[0][0]
    deepest = max(point[1] for point in bands[-1].line.points)
    cut = thickness_m > 1.35 * deepest
    depth = 1.35 * deepest if cut else thickness_m
    half = 1.18 * reach
    drawing = Drawing(400, 330, 20)
    drawing.parts.append(HATCHES)
    label_room = 0.62 * max(half, 0.6 * depth)
    drawing.fit([(-half, 0.12 * reach), (half, -depth - label_room)])
    for band in reversed(bands):
        fill_band(drawing, band)
    edges = [(-half, 0.0), (half, 0.0)]
    drawing.line("outline", *edges)
    drawing.line("hidden" if cut else "outline", (-half, -depth), (half, -depth))
    for side in (-half, half):
        drawing.line("hidden", (side, 0.0), (side, -depth))
    melted = bands[0].line.points[0][0]
    cap = [(melted * step / 6, 0.22 * melted * (1 - (step / 6) ** 2)) for step in range(-6, 7)]
    drawing.line("outline", *cap)
    for row, band in enumerate(bands):
        _label(drawing, band, row, len(bands), depth, half)
    caption = _caption(bands, thickness_m, say)
    return Figure(drawing.svg(caption), caption)


def fill_band(drawing: Drawing, band: HeatBand) -> None:
    """Fill a band of the section on both sides of the bead."""
    right: list[Point] = [(aside, -deep) for aside, deep in band.line.points]
    left: list[Point] = [(-aside, down) for aside, down in reversed(right)]
    placed = [drawing.place(point) for point in (*right, *left)]
    path = "M" + " L".join(f"{x:.1f} {y:.1f}" for x, y in placed) + " Z"
    drawing.parts.append(f'<path class="area steel" d="{path}"/>')
    drawing.parts.append(
        f'<path class="band {band.name}" d="{path}" fill="{_FILLS[band.name]}" stroke="currentColor" stroke-width="1.2"/>'
    )


def _label(drawing: Drawing, band: HeatBand, row: int, rows: int, depth: float, half: float) -> None:
    """The band's words under the section, on a leader from where its outer line meets the face."""
    step = 0.6 * max(half, 0.6 * depth) / rows
    height = -depth - step * (row + 1) + 0.25 * step
    aside = band.line.points[0][0]
    drawing.line("dimension", (aside, 0.0), (aside, height))
    drawing.text((aside, height), band.words, "end", (-4, 2), "note")


def _caption(bands: Sequence[HeatBand], thickness_m: float, say: Say) -> str:
    parts = [f"{band.name} out to {say.length(band.line.points[0][0])}" for band in bands]
    through = [band.name for band in bands if band.line.through]
    tail = f" Right through the thickness: {', '.join(through)}." if through else ""
    return (
        f"Section across the bead in steel {say.length(thickness_m)} thick, measured from the middle of the bead along the "
        f"face: {'; '.join(parts)}; untouched beyond.{tail}"
    )


__all__ = ["HATCHES", "HeatBand", "fill_band", "heat_map_figure"]
