"""Draws to scale: a small set of engineering line types over a world in metres, as a tree of SVG.

Lines follow the conventions of ISO 128-2 (thick visible outline, thin dimension line, dashed hidden edge, long-dash
dotted centre line). Colours and line weights are the page's: the tree carries class names only, so that it prints
in black and keeps its meaning in the dark. World y points up, as on a drawing board.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Literal

from calc.trees import Node

Point = tuple[float, float]
LineKind = Literal[
    "outline", "thin", "dimension", "hidden", "centre", "ground", "leg", "leg-careful", "leg-stop", "leg-slack", "force",
    "curve", "curve-second", "axis", "drag-handle",
]  # fmt: skip
Anchor = Literal["start", "middle", "end"]
LETTER = {"note": 6.2, "strong": 7.0, "small": 5.4}
"""Width of a letter of the page's drawing type by kind [drawing units], on the safe side."""
BEFORE_ANCHOR: dict[Anchor, float] = {"start": 0.0, "middle": 0.5, "end": 1.0}


@dataclass
class Drawing:
    """A drawing under way. `width` and `height` are the size of the sheet in drawing units (CSS pixels at full size);
    `margin` is kept free for words. Call `fit` with the world's corners before anything is placed.
    """

    width: float = 360.0
    height: float = 300.0
    margin: float = 44.0
    scale: float = 1.0
    origin: Point = (0.0, 0.0)
    parts: list[Node] = field(default_factory=list)

    def fit(self, corners: Sequence[Point]) -> None:
        """Choose one scale for both axes so that every corner lies inside the margins, and centre the world."""
        low_x, high_x = min(x for x, _ in corners), max(x for x, _ in corners)
        low_y, high_y = min(y for _, y in corners), max(y for _, y in corners)
        span_x, span_y = max(high_x - low_x, 1e-9), max(high_y - low_y, 1e-9)
        self.scale = min((self.width - 2 * self.margin) / span_x, (self.height - 2 * self.margin) / span_y)
        self.origin = (
            self.width / 2 - self.scale * (low_x + high_x) / 2,
            self.height / 2 + self.scale * (low_y + high_y) / 2,
        )

    def place(self, point: Point) -> Point:
        """World to sheet."""
        return self.origin[0] + self.scale * point[0], self.origin[1] - self.scale * point[1]

    def line(self, kind: LineKind, *points: Point) -> None:
        """An open line through world points."""
        self._path(f"line {kind}", points, closed=False)

    def area(self, kind: str, *points: Point) -> None:
        """A closed outline; kind is load, steel, ground, molten, hard, soft, tint or untouched."""
        self._path(f"area {kind}", points, closed=True)

    def circle(self, kind: str, centre: Point, radius: float, on_sheet: bool = False) -> None:
        """A circle; its radius is in metres, or in drawing units with `on_sheet`."""
        x, y = self.place(centre)
        size = radius if on_sheet else radius * self.scale
        at = {"cx": f"{x:.1f}", "cy": f"{y:.1f}", "r": f"{size:.1f}"}
        self.parts.append(["circle", {"class": kind, **at}])

    def text(
        self,
        point: Point,
        words: str,
        anchor: Anchor = "middle",
        shift: Point = (0.0, 0.0),
        kind: str = "note",
    ) -> None:
        """Words at a world point, moved by `shift` drawing units (right, down). kind is note, strong or small."""
        x, y = self.place(point)
        self._words(x + shift[0], y + shift[1], words, anchor, kind)

    def arrow(self, start: Point, end: Point, kind: LineKind = "force") -> None:
        """A line with an arrow head at its end, between world points."""
        self.line(kind, start, end)
        self._head(self.place(start), self.place(end), kind)

    def dimension(self, start: Point, end: Point, words: str, offset: float = 22.0) -> None:
        """A dimension line beside start and end, `offset` drawing units to the left of the way from start to end."""
        (x0, y0), (x1, y1) = self.place(start), self.place(end)
        length = math.hypot(x1 - x0, y1 - y0)
        if length < 1.0:
            return
        normal = ((y1 - y0) / length, -(x1 - x0) / length)
        a = (x0 + normal[0] * offset, y0 + normal[1] * offset)
        b = (x1 + normal[0] * offset, y1 + normal[1] * offset)
        for (fx, fy), (tx, ty) in (((x0, y0), a), ((x1, y1), b)):
            self._segment("dimension", (fx, fy), (tx + normal[0] * 4, ty + normal[1] * 4))
        self._segment("dimension", a, b)
        self._head(a, b, "dimension")
        self._head(b, a, "dimension")
        middle = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
        away = (middle[0] + normal[0] * 9, middle[1] + normal[1] * 9 + 4)
        anchor: Anchor = "middle" if abs(normal[0]) < 0.5 else ("end" if normal[0] < 0 else "start")
        self._words(away[0], away[1], words, anchor, "note")

    def angle(self, vertex: Point, from_deg: float, to_deg: float, words: str, radius: float = 30.0) -> None:
        """An angle arc at a world point, from and to in degrees counter-clockwise from the right, with its size."""
        x, y = self.place(vertex)
        points = []
        for step in range(13):
            t = math.radians(from_deg + (to_deg - from_deg) * step / 12)
            points.append((x + radius * math.cos(t), y - radius * math.sin(t)))
        path = "M" + " L".join(f"{px:.1f} {py:.1f}" for px, py in points)
        self.parts.append(["path", {"class": "line dimension", "d": path}])
        middle = math.radians((from_deg + to_deg) / 2)
        tx, ty = x + (radius + 8) * math.cos(middle), y - (radius + 8) * math.sin(middle) + 4
        anchor: Anchor = (
            "start" if math.cos(middle) > 0.2 else ("end" if math.cos(middle) < -0.2 else "middle")
        )
        self._words(tx, ty, words, anchor, "note")

    def svg(self, caption: str, tall: bool = False) -> Node:
        """The finished drawing as a tree; `caption` is its text equivalent, carried as the SVG's title. `tall`: it has views
        above each other, and needs more height on paper for its words to be read.
        """
        attributes = {
            "class": "drawing tall" if tall else "drawing",
            "viewBox": f"0 0 {self.width:g} {self.height:g}",
            "role": "img",
            "xmlns": "http://www.w3.org/2000/svg",
        }
        return ["svg", attributes, ["title", {}, caption], *self.parts]

    def _words(self, x: float, y: float, words: str, anchor: Anchor, kind: str) -> None:
        """Words on the sheet, moved sideways as far as they would else run off it (reckoned at LETTER a letter)."""
        room = LETTER[kind] * len(words)
        left = x - room * BEFORE_ANCHOR[anchor]
        x += max(0.0, 2.0 - left) - max(0.0, left + room - (self.width - 2.0))
        where = {"x": f"{x:.1f}", "y": f"{y:.1f}", "text-anchor": anchor}
        self.parts.append(["text", {"class": kind, **where}, words])

    def _path(self, kind: str, points: Sequence[Point], closed: bool) -> None:
        placed = [self.place(point) for point in points]
        path = "M" + " L".join(f"{x:.1f} {y:.1f}" for x, y in placed) + (" Z" if closed else "")
        self.parts.append(["path", {"class": kind, "d": path}])

    def _segment(self, kind: str, start: Point, end: Point) -> None:
        path = f"M{start[0]:.1f} {start[1]:.1f} L{end[0]:.1f} {end[1]:.1f}"
        self.parts.append(["path", {"class": f"line {kind}", "d": path}])

    def _head(self, start: Point, end: Point, kind: str) -> None:
        length = math.hypot(end[0] - start[0], end[1] - start[1])
        if length < 1e-6:
            return
        ux, uy = (end[0] - start[0]) / length, (end[1] - start[1]) / length
        size, half = (11.0, 4.5) if kind == "force" else (8.0, 2.6)
        base = (end[0] - ux * size, end[1] - uy * size)
        points = (end, (base[0] - uy * half, base[1] + ux * half), (base[0] + uy * half, base[1] - ux * half))
        path = "M" + " L".join(f"{x:.1f} {y:.1f}" for x, y in points) + " Z"
        self.parts.append(["path", {"class": f"head {kind}", "d": path}])


__all__ = ["Drawing", "Point"]
