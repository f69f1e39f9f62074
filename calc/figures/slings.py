"""Scale drawings of slings and what hangs in them."""

from __future__ import annotations

import math

from calc.figures.drawing import Drawing, LineKind
from calc.lifting.leg_geometry import CAREFUL_ANGLE_DEG, LOWEST_ANGLE_DEG
from calc.worksheet import Figure, Say


def sling_figure(
    legs: int,
    angle_deg: float,
    height_m: float | None,
    half_spread_m: float | None,
    load_kg: float,
    tension_n: float,
    side_n: float,
    say: Say,
) -> Figure:
    """Side view of an even sling: hook, legs at their true angle, the load, the pulls. Unknown sizes are drawn for a
    spread of one metre and carry no dimension.
    """
    half = half_spread_m if half_spread_m else 0.5
    height = height_m if height_m else half * math.tan(math.radians(min(angle_deg, 89.0)))
    if legs == 1:
        half, height = 0.0, height_m or 1.0
    elif angle_deg > 89.0:
        height = max(height, half * 2)
    kind: LineKind = (
        "leg-stop"
        if angle_deg < LOWEST_ANGLE_DEG
        else ("leg-careful" if angle_deg < CAREFUL_ANGLE_DEG else "leg")
    )
    size = max(height, 2 * half)
    box = (max(half * 1.12, 0.22 * size), 0.2 * size)
    drawing = Drawing(360, 320, 58)
    drawing.fit([(-box[0], -box[1] * 1.5), (box[0], height + 0.06 * size)])
    upright = legs == 1 or angle_deg > 89.0
    hooks = ((0.0, height),) if not upright or legs == 1 else ((-half, height), (half, height))
    drawing.area("load", (-box[0], 0), (box[0], 0), (box[0], -box[1]), (-box[0], -box[1]))
    for side in (-1.0, 1.0) if legs > 1 else (0.0,):
        top = (side * half, height) if upright and legs > 1 else (0.0, height)
        drawing.line(kind if legs > 1 else "leg", top, (side * half, 0.0))
        drawing.circle("pick", (side * half, 0.0), 4.0, on_sheet=True)
    for hook in hooks:
        drawing.circle("hook", hook, 6.0, on_sheet=True)
    drawing.line("centre", (0, height + 0.05 * size), (0, -box[1] * 1.1))
    drawing.text((0, -box[1] / 2), say.weight(load_kg), shift=(0, 5), kind="strong")
    middle = (half / 2, height / 2)
    drawing.text(middle, say.force(tension_n, "up"), "start", (10, -2), "strong")
    if legs > 1 and not upright:
        drawing.angle((half, 0), 180.0 - angle_deg, 180.0, f"{angle_deg:.1f}°".replace(".0°", "°"), 34)
        if height_m is not None and half_spread_m is not None:
            drawing.dimension((-box[0], 0), (-box[0], height), say.one(height, "length", digits=3), 16)
            drawing.dimension((half, -box[1]), (-half, -box[1]), say.one(2 * half, "length", digits=3), 18)
    return Figure(drawing.svg(caption := _caption(legs, angle_deg, load_kg, tension_n, side_n, say)), caption)


def _caption(legs: int, angle_deg: float, load_kg: float, tension_n: float, side_n: float, say: Say) -> str:
    load = say.weight(load_kg)
    if legs == 1:
        return f"One leg hangs straight down and carries {load}. It pulls {say.force(tension_n, 'up')}."
    seen = "Two legs are drawn; the others stand behind them. " if legs > 2 else ""
    return (
        f"{seen}A load of {load} under one hook, the legs at {angle_deg:.1f}° from the horizontal. Each leg pulls "
        f"{say.force(tension_n, 'up')} along its length and squeezes the load with {say.force(side_n, 'up')}."
    )
