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
    drawing.dimension((bearing_inside + wire_m, -top), (bearing_inside, -top), wire_words, 14)
    words = say.one(pitch, "length") if pitch_m is not None else "inside length"
    drawing.dimension((-bearing_inside, top), (bearing_inside, top), words, 14)
    caption = (
        f"One link seen flat, its neighbours dashed. Measure the wire where two links bear on each other, at the end "
        f"of the link, in both directions, and take the smallest reading: {wire_words}. The inside length runs from "
        f"bearing to bearing"
        + (
            f": {say.of(pitch, 'length', digits=4)}."
            if pitch_m is not None
            else "; it is drawn as three wire thicknesses."
        )
    )
    return Figure(drawing.svg(caption), caption)


NECK_DEG = 75.0
"""Where the bowl of the drawn hook meets its neck, in degrees from the right, counter-clockwise."""

TIP_NEW_DEG = -8.0
"""Where the tip of the drawn hook ends when new: a throat of 1.33 bowl radii, a usual shape (no source)."""


def _hook_thickness(angle_deg: float, section_m: float) -> float:
    """Thickness of the drawn hook along its bowl [m]: full at the back and the saddle, tapering to the tip."""
    if angle_deg <= 180.0:
        return section_m * (0.72 + 0.28 * (angle_deg - NECK_DEG) / (180.0 - NECK_DEG))
    if angle_deg <= 270.0:
        return section_m
    return section_m * max(0.45, 1.0 - 0.55 * (angle_deg - 270.0) / 85.0)


def hook_outline(bowl_radius_m: float, section_m: float, tip_deg: float) -> list[Point]:
    """The closed outline of a hook below its neck: inner face, rounded tip, outer face.

    bowl_radius_m -- inside radius [m]; section_m -- thickness in the saddle [m]; tip_deg -- where the tip ends, degrees
    from the right, counter-clockwise, below zero for under the level of the bowl's centre
    """
    end_deg = 360.0 + tip_deg
    angles = [NECK_DEG + (end_deg - NECK_DEG) * step / 60 for step in range(61)]
    inner = [_polar(bowl_radius_m, angle) for angle in angles]
    outer = [_polar(bowl_radius_m + _hook_thickness(angle, section_m), angle) for angle in angles]
    tip_thickness = _hook_thickness(end_deg, section_m)
    centre = _polar(bowl_radius_m + tip_thickness / 2, end_deg)
    tip = [
        (
            centre[0] + tip_thickness / 2 * math.cos(math.radians(end_deg + 180.0 - turn)),
            centre[1] + tip_thickness / 2 * math.sin(math.radians(end_deg + 180.0 - turn)),
        )
        for turn in range(20, 180, 20)
    ]
    left = (-0.42 * section_m, 1.7 * bowl_radius_m + 0.3 * section_m)
    right = (inner[0][0], 1.7 * bowl_radius_m + 0.3 * section_m)
    back = [point for point, angle in zip(outer, angles, strict=True) if angle >= 120.0]
    return [right, *inner, *tip, *reversed(back), left, right]


def _polar(radius_m: float, angle_deg: float) -> Point:
    return radius_m * math.cos(math.radians(angle_deg)), radius_m * math.sin(math.radians(angle_deg))


def tip_angle_deg(throat_over_bowl_radius: float) -> float:
    """Where the tip stands for a throat of so many bowl radii: the chord from the neck to the tip.

    Chords are limited to what the drawing can show, up to 1.95 radii.
    """
    half = math.degrees(math.asin(min(throat_over_bowl_radius, 1.95) / 2))
    return NECK_DEG - 2 * half


def hook_figure(
    throat_new_m: float | None, throat_now_m: float | None, section_m: float | None, say: Say
) -> Figure:
    """A hook to scale: as it is now in full line, as new dashed, with the throat and the saddle to measure.

    Unknown sizes are drawn in usual proportion and carry no figure.
    """
    new_chord = 2 * math.sin(math.radians((NECK_DEG - TIP_NEW_DEG) / 2))
    basis = throat_new_m or throat_now_m
    bowl = basis / new_chord if basis else 0.02
    section = min(max(section_m if section_m else 0.95 * bowl, 0.4 * bowl), 1.8 * bowl)
    now_deg = tip_angle_deg(throat_now_m / bowl) if throat_now_m else TIP_NEW_DEG
    drawing = Drawing(360, 360, 52)
    reach = bowl + section
    drawing.fit([(-reach, -reach), (reach * 1.15, 1.7 * bowl + 1.9 * section)])
    if throat_new_m and throat_now_m and abs(now_deg - TIP_NEW_DEG) > 0.2:
        drawing.line("hidden", *hook_outline(bowl, section, TIP_NEW_DEG))
    drawing.line("outline", *hook_outline(bowl, section, now_deg))
    eye = (0.0, 1.7 * bowl + 1.0 * section)
    neck_deg = math.degrees(math.acos(min(_polar(bowl, NECK_DEG)[0] / (0.85 * section), 1.0)))
    drawing.line("outline", *_arc(eye, 0.85 * section, -neck_deg, 242.0, 40))
    drawing.line("outline", *_arc(eye, 0.42 * section, 0.0, 360.0, 40))
    drawing.line("centre", (0.0, -reach * 1.08), (0.0, eye[1] + section))
    neck_point, tip_point = _polar(bowl, NECK_DEG), _polar(bowl, 360.0 + now_deg)
    drawing.dimension(
        neck_point, tip_point, f"throat {say.one(throat_now_m, 'length')}" if throat_now_m else "throat", 24
    )
    saddle_words = say.one(section_m, "length") if section_m else "section"
    drawing.dimension((0.0, -bowl), (0.0, -bowl - section), saddle_words, 40)
    drawing.text((-bowl - section / 2, 0.0), "back", "middle", (0, 4), "small")
    caption = "A hook seen flat. Measure the throat at its narrowest, from the tip to the neck, and the thickness in the saddle where the load sits. "
    if throat_now_m and throat_new_m:
        caption += f"Full line: now, {say.of(throat_now_m, 'length', digits=4)} open. Dashed: as new, {say.of(throat_new_m, 'length', digits=4)} open."
    else:
        caption += "Sight along it from the side: any twist or bend out of the flat takes it out of use."
    return Figure(drawing.svg(caption), caption)


def shackle_figure(body_m: float, pin_m: float, jaw_m: float | None, say: Say, known: bool) -> Figure:
    """A bow shackle seen flat, body and pin to scale: where to measure the bow, the pin and the jaw.

    Unknown sizes are drawn in usual proportion (jaw 1.6 body diameters) and carry no figure.
    """
    jaw = jaw_m if jaw_m is not None else 1.6 * body_m
    half, bow = jaw / 2, max(0.85 * jaw, 0.6 * jaw + 0.3 * body_m)
    rise = 1.9 * jaw
    drawing = Drawing(360, 340, 62)
    drawing.fit([(-bow - body_m, -1.3 * pin_m), (bow + body_m, rise + bow + body_m)])
    for extra in (0.0, body_m):
        arc = _arc((0.0, rise), bow + extra, -28.0, 208.0, 36)
        drawing.line("outline", (half + extra, 0.95 * pin_m), *arc, (-half - extra, 0.95 * pin_m))
    for side in (-1.0, 1.0):
        near, far, tall = side * half, side * (half + body_m), 0.95 * pin_m
        drawing.line("outline", (near, tall), (near, -tall), (far, -tall), (far, tall), (near, tall))
    for edge in (-pin_m / 2, pin_m / 2):
        drawing.line("outline", (-half - 1.5 * body_m, edge), (half + 1.5 * body_m, edge))
    drawing.line("centre", (-half - 2 * body_m, 0.0), (half + 2 * body_m, 0.0))
    top = rise + bow
    drawing.dimension((0.0, top + body_m), (0.0, top), say.one(body_m, "length") if known else "bow", 30)
    end = half + 1.5 * body_m
    pin_words = say.one(pin_m, "length") if known else "pin"
    drawing.dimension((end, pin_m / 2), (end, -pin_m / 2), pin_words, 14)
    jaw_words = say.one(jaw, "length") if jaw_m is not None else "jaw"
    drawing.dimension((half, -0.95 * pin_m), (-half, -0.95 * pin_m), jaw_words, 14)
    caption = (
        "A shackle seen flat. Measure the bow at its crown where the load bears, the pin at its middle, and the jaw "
        "between the ears. "
        + (f"Bow {say.of(body_m, 'length', digits=4)}, pin {say.of(pin_m, 'length', digits=4)}." if known else "Drawn in usual proportion.")
    )  # fmt: skip
    return Figure(drawing.svg(caption), caption)


LAY_OVER_DIAMETER = 6.5
"""Length of one lay of a six-strand rope over its diameter [-]; for the drawing only (usual proportion, no source)."""


def rope_figure(diameter_m: float | None, say: Say) -> Figure:
    """A piece of six-strand rope, one lay long and more: where a lay begins and ends, how the caliper sits."""
    d = diameter_m if diameter_m is not None else 0.0127
    lay, length = LAY_OVER_DIAMETER * d, 9.0 * d
    drawing = Drawing(400, 200, 84)
    drawing.fit([(0.0, -d), (length, d)])
    for edge in (-d / 2, d / 2):
        drawing.line("outline", (0.0, edge), (length, edge))
    for strand in range(-3, 9):
        start = strand * lay / 6 * 1.0
        points = [
            (start + lay * share / 2, d / 2 * math.cos(math.pi * share))
            for share in (step / 16 for step in range(17))
            if 0.0 <= start + lay * share / 2 <= length
        ]
        if len(points) > 1:
            drawing.line("thin", *points)
    drawing.dimension((0.6 * d, d / 2), (0.6 * d + lay, d / 2), "one lay: one strand once round", 14)
    words = say.one(diameter_m, "length") if diameter_m is not None else "diameter"
    drawing.dimension((length, d / 2), (length, -d / 2), words, 14)
    caption = (
        "A six-strand rope from the side. One lay is the length in which one strand goes once round: count broken wires in the worst "
        "lay. Set the caliper over the crowns of the strands, not in the valleys."
        + (f" Diameter {say.of(diameter_m, 'length', digits=4)}." if diameter_m is not None else "")
    )
    return Figure(drawing.svg(caption), caption)


def web_figure() -> Figure:
    """A web sling laid flat: eyes, load stitching, tag; the places where it fails first."""
    drawing = Drawing(400, 200, 30)
    drawing.fit([(0.0, -1.0), (9.0, 1.0)])
    drawing.line("outline", (0.9, 0.5), (8.1, 0.5))
    drawing.line("outline", (0.9, -0.5), (8.1, -0.5))
    for side, centre in ((1.0, 7.8), (-1.0, 1.2)):
        for radius in (0.5, 0.18):
            drawing.line("outline", *_arc((centre + side * 0.3, 0.0), radius, -90.0, 90.0) if side > 0 else _arc((centre - 0.3, 0.0), radius, 90.0, 270.0))  # fmt: skip
        drawing.line(
            "outline", (centre + side * 0.3, 0.18), (centre - side * 0.2, 0.0), (centre + side * 0.3, -0.18)
        )
        for seam in range(4):
            x = centre - side * (0.4 + 0.35 * seam)
            drawing.line("hidden", (x, -0.45), (x - side * 0.3, 0.45))
        drawing.text((centre + side * 0.4, -0.5), "bearing", "middle", (0, 18), "small")
        drawing.text((centre - side * 0.9, 0.5), "load stitching", "middle", (0, -8), "small")
    drawing.line("thin", (4.0, -0.3), (5.2, -0.3), (5.2, 0.3), (4.0, 0.3), (4.0, -0.3))
    drawing.text((4.6, 0.0), "tag", "middle", (0, 4), "small")
    drawing.text((4.5, -0.5), "edges: cuts", "middle", (0, 18), "small")
    caption = "A web sling laid flat. Look at both faces and edges for cuts and melted places, at every row of load stitching, at the bearing of each eye, and read the tag."
    return Figure(drawing.svg(caption), caption)
