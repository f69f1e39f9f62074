"""Scale drawings of a load put together from parts."""

from __future__ import annotations

from dataclasses import dataclass

from calc.figures.drawing import Drawing
from calc.worksheet import Figure, Say

_LABELLED = 6


@dataclass(frozen=True)
class PlacedPart:
    """A part as drawn: its words, balance point [m] or None, box in x, y, z [m], whether it is taken away."""

    label: str
    centre_m: tuple[float, float, float] | None
    box_m: tuple[float, float, float]
    minus: bool
    round_in_front: bool
    weight_kg: float


def load_figure(
    parts: list[PlacedPart], centre_m: tuple[float, float, float] | None, weight_kg: float, say: Say
) -> Figure:
    """Front view (right and up) of the boxes that hold the parts, with the balance point. Parts whose place is not
    known stand in a row, to scale, without a balance point.
    """
    placed = all(part.centre_m is not None for part in parts)
    corners = _places(parts, placed)
    known = centre_m if placed else None
    drawing = Drawing(360, 260, 46)
    flat = [point for low, high in corners for point in (low, high)]
    smallest = max(max(x for x, _ in flat) - min(x for x, _ in flat), 1e-3) * 0.02
    drawing.fit([*flat, (flat[0][0] + smallest, flat[0][1] + smallest)])
    for number, (part, (low, high)) in enumerate(zip(parts, corners, strict=True), 1):
        _draw_part(drawing, part, low, high)
        if len(parts) <= _LABELLED:
            middle = ((low[0] + high[0]) / 2, high[1])
            drawing.text(middle, str(number), shift=(0, -5 - 11 * ((number - 1) % 2)), kind="small")
    left, right = min(x for x, _ in flat), max(x for x, _ in flat)
    bottom = min(y for _, y in flat)
    drawing.dimension((right, bottom), (left, bottom), say.one(right - left, "length", digits=3), 18)
    if known is not None:
        _balance_point(drawing, (known[0], known[2]), say.weight(weight_kg))
    caption = _caption(parts, known, weight_kg, say)
    return Figure(drawing.svg(caption), caption)


def _places(parts: list[PlacedPart], placed: bool) -> list[tuple[tuple[float, float], tuple[float, float]]]:
    corners = []
    along = 0.0
    gap = 0.1 * max(max(part.box_m) for part in parts)
    for part in parts:
        width, _depth, height = part.box_m
        if placed and part.centre_m is not None:
            x, z = part.centre_m[0], part.centre_m[2]
            corners.append(((x - width / 2, z - height / 2), (x + width / 2, z + height / 2)))
        else:
            corners.append(((along, 0.0), (along + width, height)))
            along += width + gap
    return corners


def _draw_part(
    drawing: Drawing, part: PlacedPart, low: tuple[float, float], high: tuple[float, float]
) -> None:
    middle = ((low[0] + high[0]) / 2, (low[1] + high[1]) / 2)
    if high[0] - low[0] == 0.0:
        drawing.circle("pick", middle, 5.0, on_sheet=True)
    elif part.round_in_front and not part.minus:
        drawing.circle("load", middle, (high[0] - low[0]) / 2)
    elif part.minus:
        drawing.line("hidden", low, (high[0], low[1]), high, (low[0], high[1]), low)
    else:
        drawing.area("load", low, (high[0], low[1]), high, (low[0], high[1]))


def _balance_point(drawing: Drawing, point: tuple[float, float], words: str) -> None:
    arm = 14.0 / drawing.scale
    drawing.line("centre", (point[0] - arm, point[1]), (point[0] + arm, point[1]))
    drawing.line("centre", (point[0], point[1] - arm), (point[0], point[1] + arm))
    drawing.circle("balance", point, 6.0, on_sheet=True)
    drawing.text(point, words, "start", (12, 22), "strong")


def _caption(
    parts: list[PlacedPart], centre_m: tuple[float, float, float] | None, weight_kg: float, say: Say
) -> str:
    names = ", ".join(f"{number} {part.label}" for number, part in enumerate(parts[:_LABELLED], 1))
    more = f" and {len(parts) - _LABELLED} more" if len(parts) > _LABELLED else ""
    seen = f"Front view to scale, each part as the box that holds it: {names}{more}. Together {say.weight(weight_kg)}."
    if centre_m is None:
        return f"{seen} The balance point is not drawn, because it was not said where the parts stand."
    x, y, z = (say.length(side) for side in centre_m)
    return f"{seen} The balance point lies {x} to the right, {y} to the back and {z} up from your corner."
