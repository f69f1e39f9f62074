"""Scale drawings of a load put together from parts."""

from __future__ import annotations

from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.words.facts import length, weight
from calc.words.writer import Writer

LABELLED = 6
"""So many parts are numbered in the drawing and named in its caption."""

Place = tuple[float, float, float]
_RIGHT, _BACK, _UP = 0, 1, 2
_FLAT = 2.0
"""A load is looked at from above if it reaches back so many times as far as up."""


@dataclass(frozen=True)
class PlacedPart:
    """A part as drawn: balance point [m] or None, box in x, y, z [m], whether it is taken away, and the axis (x, y or z)
    along which it looks round, or nothing.
    """

    centre_m: Place | None
    box_m: Place
    minus: bool
    round_along: str


@dataclass(frozen=True)
class _Box:
    """A part's box on the sheet: its low and its high corner [m]."""

    low: Point
    high: Point


@dataclass(frozen=True)
class DrawnLoad:
    """A load as drawn: its parts, its balance point [m] or None, and what it weighs [kg]. It is seen from the front (right
    and up), or from above (right and back) where it lies flat.
    """

    parts: tuple[PlacedPart, ...]
    centre_m: Place | None
    weight_kg: float

    @property
    def placed(self) -> bool:
        """Whether it is known of every part where it stands."""
        return all(part.centre_m is not None for part in self.parts)

    @property
    def from_above(self) -> bool:
        """Whether it is seen from above."""
        return self.placed and self._span(_BACK) > _FLAT * self._span(_UP)

    @property
    def balance_m(self) -> Place | None:
        """The balance point as drawn [m]: none unless every part has its place."""
        return self.centre_m if self.placed else None

    def _span(self, axis: int) -> float:
        """How far the parts reach along an axis [m]; all their places are known."""
        ends = [
            (part.centre_m[axis] - part.box_m[axis] / 2, part.centre_m[axis] + part.box_m[axis] / 2)
            for part in self.parts
            if part.centre_m
        ]
        return max(high for _, high in ends) - min(low for low, _ in ends)

    def boxes(self, upward: int) -> list[_Box]:
        """The boxes on the sheet, `upward` being the axis that points up it. Parts whose places are not known stand in a row."""
        found = []
        along = 0.0
        gap = 0.1 * max(max(part.box_m) for part in self.parts)
        for part in self.parts:
            wide, high = part.box_m[_RIGHT], part.box_m[upward]
            if self.placed and part.centre_m is not None:
                x, y = part.centre_m[_RIGHT], part.centre_m[upward]
                found.append(_Box((x - wide / 2, y - high / 2), (x + wide / 2, y + high / 2)))
            else:
                found.append(_Box((along, 0.0), (along + wide, high)))
                along += wide + gap
        return found


def load_figure(load: DrawnLoad, caption: str, writer: Writer) -> Figure:
    """The boxes that hold the parts, with the balance point where every part has its place."""
    upward = _BACK if load.from_above else _UP
    boxes = load.boxes(upward)
    corners = [corner for box in boxes for corner in (box.low, box.high)]
    left, right = min(x for x, _ in corners), max(x for x, _ in corners)
    bottom, top = min(y for _, y in corners), max(y for _, y in corners)
    drawing = Drawing(360, 260, 50)
    smallest = max(right - left, 1e-3) * 0.02
    drawing.fit([*corners, (corners[0][0] + smallest, corners[0][1] + smallest)])
    seen_along = "z" if load.from_above else "y"
    for number, (part, box) in enumerate(zip(load.parts, boxes, strict=True), 1):
        _draw_part(drawing, part, box, part.round_along == seen_along)
        if len(load.parts) <= LABELLED:
            drawing.text(box.high, str(number), "end", (-5, 13), "small")
    drawing.dimension((right, bottom), (left, bottom), writer.own(length(right - left), 3), 22)
    if load.balance_m is not None:
        point = (load.balance_m[_RIGHT], load.balance_m[upward])
        _balance_point(drawing, point, top, writer.plain(weight(load.weight_kg)))
    return Figure(drawing.svg(caption), caption)


def _draw_part(drawing: Drawing, part: PlacedPart, box: _Box, looks_round: bool) -> None:
    (left, bottom), (right, top) = box.low, box.high
    middle = ((left + right) / 2, (bottom + top) / 2)
    if right - left == 0.0:
        drawing.circle("pick", middle, 5.0, on_sheet=True)
    elif looks_round and not part.minus:
        drawing.circle("area load", middle, (right - left) / 2)
    elif part.minus:
        drawing.line("hidden", box.low, (right, bottom), box.high, (left, top), box.low)
    else:
        drawing.area("load", box.low, (right, bottom), box.high, (left, top))


def _balance_point(drawing: Drawing, point: Point, top: float, words: str) -> None:
    arm = 14.0 / drawing.scale
    drawing.line("centre", (point[0] - arm, point[1]), (point[0] + arm, point[1]))
    drawing.line("centre", (point[0], point[1] - arm), (point[0], top + 1.4 * arm))
    drawing.circle("pick", point, 6.0, on_sheet=True)
    drawing.text((point[0], top), words, shift=(0, -26), kind="strong")
