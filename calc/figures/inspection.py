"""Drawings of where to measure a worn part: chain link, hook, shackle, sling. Outlines are computed, not traced."""

from __future__ import annotations

import math

from calc.figures.drawing import Drawing, Point
from calc.worksheet import Figure, Say

LINK_WIDTH_OVER_WIRE = 3.4
"""Outside width of a short link over its wire [-]; for the drawing only (usual proportion, no source)."""


def _arc(centre: Point, radius_m: float, from_deg: float, to_deg: float, steps: int = 24) -> list[Point]:
    return [
        (
            centre[0] + radius_m * math.cos(math.radians(from_deg + (to_deg - from_deg) * step / steps)),
            centre[1] + radius_m * math.sin(math.radians(from_deg + (to_deg - from_deg) * step / steps)),
        )
        for step in range(steps + 1)
    ]


def _stadium(half_straight_m: float, radius_m: float) -> list[Point]:
    """A closed outline of two straight sides and two half circles, lying along x."""
    right = _arc((half_straight_m, 0.0), radius_m, -90.0, 90.0)
    left = _arc((-half_straight_m, 0.0), radius_m, 90.0, 270.0)
    outline = right + left
    return [*outline, outline[0]]


def link_figure(
    wire_m: float, pitch_m: float | None, say: Say, wire_words: str, worn_m: float | None = None
) -> Figure:
    """One chain link to scale with its neighbours: wire thickness at the end of the link, inside length (pitch).

    wire_m -- thickness drawn [m]; pitch_m -- inside length [m], three wire diameters where it is not known
    worn_m -- thickness left where the links bear on each other [m], drawn as a groove on the right
    """
    pitch = pitch_m if pitch_m is not None else 3.0 * wire_m
    inner_radius = max((LINK_WIDTH_OVER_WIRE - 2.0) / 2.0 * wire_m, 0.2 * wire_m)
    half_straight = max(pitch / 2 - inner_radius, 0.0)
    drawing = Drawing(360, 240, 50)
    span = half_straight + inner_radius + wire_m
    drawing.fit([(-span * 1.25, -inner_radius - 1.6 * wire_m), (span * 1.25, inner_radius + 1.6 * wire_m)])
    drawing.line("outline", *_stadium(half_straight, inner_radius + wire_m))
    drawing.line("outline", *_stadium(half_straight, inner_radius))
    for side in (-1.0, 1.0):
        centre = (side * (half_straight + inner_radius - wire_m / 2), 0.0)
        drawing.line("outline", *_arc(centre, wire_m / 2, 0.0, 360.0))
        far = (side * (span + 0.22 * span), 0.0)
        for edge in (-wire_m / 2, wire_m / 2):
            drawing.line("hidden", (centre[0], edge), (far[0], edge))
    drawing.line("centre", (-span * 1.2, 0.0), (span * 1.2, 0.0))
    bearing_inside = half_straight + inner_radius
    if worn_m is not None and worn_m < wire_m:
        groove = wire_m - worn_m
        drawing.line(
            "leg-careful", (bearing_inside, wire_m / 2), (bearing_inside + groove, 0.0), (bearing_inside, -wire_m / 2)
        )  # fmt: skip
    top = inner_radius + wire_m
    drawing.dimension((bearing_inside, -top), (bearing_inside + wire_m, -top), wire_words, -26)
    words = say.one(pitch, "length", digits=3) if pitch_m is not None else "inside length"
    drawing.dimension((-bearing_inside, top), (bearing_inside, top), words, 14)
    caption = (
        f"One link seen flat, its neighbours dashed. Measure the wire where two links bear on each other, at the end "
        f"of the link, in both directions, and take the smallest reading: {wire_words}. The inside length runs from "
        f"bearing to bearing"
        + (f": {say.length(pitch)}." if pitch_m is not None else "; it is drawn as three wire thicknesses.")
    )
    return Figure(drawing.svg(caption), caption)
