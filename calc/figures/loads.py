"""Scale drawings of a load put together from parts."""

from __future__ import annotations

from dataclasses import dataclass

from calc.figures.drawing import Drawing
from calc.worksheet import Figure, Say

_LABELLED = 6


@dataclass(frozen=True)
class PlacedPart:
    """A part as drawn: its words, balance point [m] or None, box in x, y, z [m], whether it is taken away, and the axis
    (x, y or z) along which it looks round, or nothing.
    """

    label: str
    centre_m: tuple[float, float, float] | None
    box_m: tuple[float, float, float]
    minus: bool
    round_along: str


def load_figure(
    parts: list[PlacedPart], centre_m: tuple[float, float, float] | None, weight_kg: float, say: Say
) -> Figure:
    """The boxes that hold the parts, with the balance point: from the front (right and up), or from above (right and
    back) where the load lies flat. Parts whose place is not known stand in a row, without a balance point.
    """
    placed = all(part.centre_m is not None for part in parts)
    upward = 1 if placed and _span(parts, 1) > 2 * _span(parts, 2) else 2
    corners = _places(parts, placed, upward)
    known = centre_m if placed else None
    drawing = Drawing(360, 260, 50)
    flat = [point for low, high in corners for point in (low, high)]
    smallest = max(max(x for x, _ in flat) - min(x for x, _ in flat), 1e-3) * 0.02
    drawing.fit([*flat, (flat[0][0] + smallest, flat[0][1] + smallest)])
    seen_along = "z" if upward == 1 else "y"
    for number, (part, (low, high)) in enumerate(zip(parts, corners, strict=True), 1):
        _draw_part(drawing, part, low, high, part.round_along == seen_along)
        if len(parts) <= _LABELLED:
            drawing.text((high[0], high[1]), str(number), "end", (-5, 13), "small")
    left, right = min(x for x, _ in flat), max(x for x, _ in flat)
    bottom, top = min(y for _, y in flat), max(y for _, y in flat)
    drawing.dimension((right, bottom), (left, bottom), say.one(right - left, "length", digits=3), 22)
    if known is not None:
        _balance_point(drawing, (known[0], known[upward]), top, say.weight(weight_kg))
    caption = _caption(parts, known, weight_kg, say, "from above" if upward == 1 else "from the front")
    return Figure(drawing.svg(caption), caption)


def _span(parts: list[PlacedPart], axis: int) -> float:
    """How far the parts reach along an axis [m]; all their places are known."""
    low = min(part.centre_m[axis] - part.box_m[axis] / 2 for part in parts if part.centre_m)
    high = max(part.centre_m[axis] + part.box_m[axis] / 2 for part in parts if part.centre_m)
    return high - low


def _places(
    parts: list[PlacedPart], placed: bool, upward: int
) -> list[tuple[tuple[float, float], tuple[float, float]]]:
    corners = []
    along = 0.0
    gap = 0.1 * max(max(part.box_m) for part in parts)
    for part in parts:
        width, height = part.box_m[0], part.box_m[upward]
        if placed and part.centre_m is not None:
            x, z = part.centre_m[0], part.centre_m[upward]
            corners.append(((x - width / 2, z - height / 2), (x + width / 2, z + height / 2)))
        else:
            corners.append(((along, 0.0), (along + width, height)))
            along += width + gap
    return corners


def _draw_part(
    drawing: Drawing, part: PlacedPart, low: tuple[float, float], high: tuple[float, float], looks_round: bool
) -> None:
    middle = ((low[0] + high[0]) / 2, (low[1] + high[1]) / 2)
    if high[0] - low[0] == 0.0:
        drawing.circle("pick", middle, 5.0, on_sheet=True)
    elif looks_round and not part.minus:
        drawing.circle("area load", middle, (high[0] - low[0]) / 2)
    elif part.minus:
        drawing.line("hidden", low, (high[0], low[1]), high, (low[0], high[1]), low)
    else:
        drawing.area("load", low, (high[0], low[1]), high, (low[0], high[1]))


def _balance_point(drawing: Drawing, point: tuple[float, float], top: float, words: str) -> None:
    arm = 14.0 / drawing.scale
    drawing.line("centre", (point[0] - arm, point[1]), (point[0] + arm, point[1]))
    drawing.line("centre", (point[0], point[1] - arm), (point[0], top + 1.4 * arm))
    drawing.circle("pick", point, 6.0, on_sheet=True)
    drawing.text((point[0], top), words, shift=(0, -26), kind="strong")


def _caption(
    parts: list[PlacedPart],
    centre_m: tuple[float, float, float] | None,
    weight_kg: float,
    say: Say,
    view: str,
) -> str:
    names = ", ".join(f"{number} {part.label}" for number, part in enumerate(parts[:_LABELLED], 1))
    more = f" and {len(parts) - _LABELLED} more" if len(parts) > _LABELLED else ""
    seen = f"To scale, {view}, each part as the box that holds it: {names}{more}. Together {say.weight(weight_kg)}."
    if centre_m is None:
        return f"{seen} The balance point is not drawn, because it was not said where the parts stand."
    x, y, z = (say.length(side) for side in centre_m)
    return f"{seen} The balance point lies {x} to the right, {y} to the back and {z} up from your corner."
