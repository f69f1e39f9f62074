"""The mark a bead leaves in the section under it: bands of peak temperature, to scale, hatched so that they print.

Each band lies inside the next: melted, hard, softened, tinted, untouched. Hatches, not colours, tell them apart.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.trees import Node

BandName = Literal["melted", "hard", "softened", "tinted"]


def _hatch(name: str, size: str, mark: Node) -> Node:
    """A pattern of one mark, repeated every `size` drawing units."""
    return ["pattern", {"id": name, "width": size, "height": size, "patternUnits": "userSpaceOnUse"}, mark]


def _stroke(path: str, width: str) -> Node:
    """The mark of a hatch as lines of a width [drawing units]."""
    return ["path", {"d": path, "stroke": "currentColor", "stroke-width": width}]


HATCHES: Node = [
    "defs",
    {},
    _hatch("weld-hard", "5", _stroke("M0 5L5 0M0 0L5 5", "1.1")),
    _hatch("weld-soft", "6", _stroke("M-1 1L1 -1M0 6L6 0M5 7L7 5", "1")),
    _hatch("weld-tint", "7", ["circle", {"cx": "2", "cy": "2", "r": ".9", "fill": "currentColor"}]),
]
_FILLS: dict[BandName, str] = {
    "melted": "currentColor",
    "hard": "url(#weld-hard)",
    "softened": "url(#weld-soft)",
    "tinted": "url(#weld-tint)",
}


@dataclass(frozen=True)
class HeatBand:
    """A band of the map: its name, the words on the drawing, and its outer line as points (aside, deep) [m] from the top
    face down.
    """

    name: BandName
    words: str
    points: tuple[Point, ...]

    @property
    def reach_m(self) -> float:
        """How far it reaches on the face from the middle of the bead [m]."""
        return self.points[0][0]

    @property
    def deepest_m(self) -> float:
        """How far it reaches down [m]."""
        return max(deep for _aside, deep in self.points)


@dataclass(frozen=True)
class _Sheet:
    """How much of the section is drawn [m]: half its width, and its depth, which may be cut short of the thickness."""

    half: float
    depth: float
    cut: bool

    @property
    def label_room(self) -> float:
        """Height kept free under the section for words [m]."""
        return 0.62 * max(self.half, 0.6 * self.depth)

    def label_height(self, row: int, rows: int) -> float:
        """Where the words of a row stand [m]."""
        step = 0.6 * max(self.half, 0.6 * self.depth) / rows
        return -self.depth - step * (row + 1) + 0.25 * step


def _sheet(widest: HeatBand, thickness_m: float) -> _Sheet:
    cut = thickness_m > 1.35 * widest.deepest_m
    return _Sheet(1.18 * widest.reach_m, 1.35 * widest.deepest_m if cut else thickness_m, cut)


def heat_map_figure(bands: Sequence[HeatBand], thickness_m: float, caption: str) -> Figure:
    """The section across the bead in steel of a thickness [m]; `bands` from the innermost out."""
    widest = bands[-1]
    sheet = _sheet(widest, thickness_m)
    half, depth = sheet.half, sheet.depth
    drawing = Drawing(400, 330, 20)
    drawing.parts.append(HATCHES)
    drawing.fit([(-half, 0.12 * widest.reach_m), (half, -depth - sheet.label_room)])
    for band in reversed(bands):
        fill_band(drawing, band)
    drawing.line("outline", (-half, 0.0), (half, 0.0))
    drawing.line("hidden" if sheet.cut else "outline", (-half, -depth), (half, -depth))
    for side in (-half, half):
        drawing.line("hidden", (side, 0.0), (side, -depth))
    drawing.line("outline", *_cap(bands[0].reach_m))
    for row, band in enumerate(bands):
        _label(drawing, band, sheet.label_height(row, len(bands)))
    return Figure(drawing.svg(caption), caption)


def _cap(melted_m: float) -> list[Point]:
    """The bead's crown over the face, as wide as the melt."""
    return [(melted_m * step / 6, 0.22 * melted_m * (1 - (step / 6) ** 2)) for step in range(-6, 7)]


def fill_band(drawing: Drawing, band: HeatBand) -> None:
    """Fill a band of the section on both sides of the bead."""
    right: list[Point] = [(aside, -deep) for aside, deep in band.points]
    left: list[Point] = [(-aside, down) for aside, down in reversed(right)]
    placed = [drawing.place(point) for point in (*right, *left)]
    path = "M" + " L".join(f"{x:.1f} {y:.1f}" for x, y in placed) + " Z"
    drawing.parts.append(["path", {"class": "area steel", "d": path}])
    look = {"fill": _FILLS[band.name], "stroke": "currentColor", "stroke-width": "1.2"}
    drawing.parts.append(["path", {"class": f"band {band.name}", "d": path, **look}])


def _label(drawing: Drawing, band: HeatBand, height: float) -> None:
    """The band's words under the section, on a leader from where its outer line meets the face."""
    drawing.line("dimension", (band.reach_m, 0.0), (band.reach_m, height))
    drawing.text((band.reach_m, height), band.words, "end", (-4, 2), "note")


__all__ = ["HATCHES", "BandName", "HeatBand", "fill_band", "heat_map_figure"]
