"""Drawings of where to measure a worn part: chain link, hook, shackle, sling. Outlines are computed, not traced."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.words.facts import Absent, Quantity, absent, length
from calc.words.writer import Writer

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


@dataclass(frozen=True)
class LinkShape:
    """One chain link: thickness of its wire [m], inside length (pitch) [m], three wire diameters where it is not known, and
    thickness left where the links bear on each other [m], drawn as a groove on the right.
    """

    wire_m: float
    pitch_m: float | None = None
    worn_m: float | None = None


def link_figure(link: LinkShape, wire: str, writer: Writer) -> Figure:
    """One chain link to scale with its neighbours: wire thickness at the end of the link, inside length (pitch).

    wire -- the words of the wire's thickness. Words: label-inside-length, figure-link.
    """
    wire_m = link.wire_m
    pitch = link.pitch_m if link.pitch_m is not None else 3.0 * wire_m
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
    bearing = half_straight + inner_radius
    if link.worn_m is not None and link.worn_m < wire_m:
        groove = (bearing + wire_m - link.worn_m, 0.0)
        drawing.line("leg-careful", (bearing, wire_m / 2), groove, (bearing, -wire_m / 2))
    top = inner_radius + wire_m
    drawing.dimension((bearing + wire_m, -top), (bearing, -top), wire, 14)
    known = link.pitch_m is not None
    words = writer.own(length(pitch)) if known else writer.text("label-inside-length")
    drawing.dimension((-bearing, top), (bearing, top), words, 14)
    caption = writer.text("figure-link", wire=wire, pitch=measured_or_absent(link.pitch_m))
    return Figure(drawing.svg(caption), caption)


NECK_DEG = 75.0
"""Where the bowl of the drawn hook meets its neck, in degrees from the right, counter-clockwise."""

SHOULDER_DEG = 142.0
"""Where the back of the drawn hook leaves its round for the neck, in degrees from the right, counter-clockwise."""

EYE_OVER_SECTION = 0.85
"""Outside radius of the eye of the drawn hook over the thickness in its saddle [-] (a usual shape, no source)."""

TIP_NEW_DEG = -8.0
"""Where the tip of the drawn hook ends when new: a throat of 1.33 bowl radii, a usual shape (no source)."""


def _hook_thickness(angle_deg: float, section_m: float) -> float:
    """Thickness of the drawn hook along its bowl [m]: full at the back and the saddle, tapering to the tip."""
    if angle_deg <= 180.0:
        return section_m * (0.72 + 0.28 * (angle_deg - NECK_DEG) / (180.0 - NECK_DEG))
    if angle_deg <= 270.0:
        return section_m
    return section_m * max(0.45, 1.0 - 0.55 * ((angle_deg - 270.0) / 85.0) ** 2)


def hook_outline(bowl_radius_m: float, section_m: float, tip_deg: float) -> list[Point]:
    """The outline of a hook from the right end of its neck to the left one: inner face, rounded tip, outer face, shoulder.

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
    left, right = neck_ends(bowl_radius_m, section_m)
    back = [point for point, angle in zip(outer, angles, strict=True) if angle >= SHOULDER_DEG]
    leaving = math.radians(SHOULDER_DEG)
    flank = _bent(back[0], (math.sin(leaving), -math.cos(leaving)), left, (0.0, -1.0))
    return [right, *inner, *tip, *reversed(back), *flank]


def neck_ends(bowl_radius_m: float, section_m: float) -> tuple[Point, Point]:
    """Where the neck of the drawn hook meets the ring of its eye: on the left and on the right [m]."""
    eye, ring = eye_centre(bowl_radius_m, section_m), EYE_OVER_SECTION * section_m
    left, right = -0.5 * section_m, min(_polar(bowl_radius_m, NECK_DEG)[0], 0.8 * ring)
    return (left, eye[1] - math.sqrt(ring**2 - left**2)), (right, eye[1] - math.sqrt(ring**2 - right**2))


def eye_centre(bowl_radius_m: float, section_m: float) -> Point:
    """The middle of the eye of the drawn hook [m]."""
    return 0.0, 1.75 * bowl_radius_m + 1.1 * section_m


def _bent(start: Point, leaving: Point, end: Point, arriving: Point) -> list[Point]:
    """A smooth line between two points that leaves and arrives along unit directions (a cubic of Bezier), without its start.

    arriving -- points from the end back into the line
    """
    pull = 0.42 * math.dist(start, end)
    first = (start[0] + pull * leaving[0], start[1] + pull * leaving[1])
    second = (end[0] + pull * arriving[0], end[1] + pull * arriving[1])
    line = []
    for step in range(1, 13):
        t = step / 12
        weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t**2 * (1 - t), t**3)
        corners = (start, first, second, end)
        line.append(
            (
                sum(w * x for w, (x, _) in zip(weights, corners, strict=True)),
                sum(w * y for w, (_, y) in zip(weights, corners, strict=True)),
            )
        )
    return line


def _polar(radius_m: float, angle_deg: float) -> Point:
    return radius_m * math.cos(math.radians(angle_deg)), radius_m * math.sin(math.radians(angle_deg))


def tip_angle_deg(throat_over_bowl_radius: float) -> float:
    """Where the tip stands for a throat of so many bowl radii: the chord from the neck to the tip.

    Chords are limited to what the drawing can show, up to 1.95 radii.
    """
    half = math.degrees(math.asin(min(throat_over_bowl_radius, 1.95) / 2))
    return NECK_DEG - 2 * half


@dataclass(frozen=True)
class HookShape:
    """Sizes of a hook [m] as measured; None where one is not known."""

    throat_new_m: float | None
    throat_now_m: float | None
    section_now_m: float | None


def hook_figure(hook: HookShape, writer: Writer) -> Figure:
    """A hook to scale: as it is now in full line, as new dashed, with the throat and the saddle to measure.

    Unknown sizes are drawn in usual proportion and carry no figure. Words: label-throat, label-throat-measured,
    label-section, label-back, label-latch, label-tip, label-neck, figure.
    """
    new, now, section_now = hook.throat_new_m, hook.throat_now_m, hook.section_now_m
    new_chord = 2 * math.sin(math.radians((NECK_DEG - TIP_NEW_DEG) / 2))
    basis = new or now
    bowl = basis / new_chord if basis else 0.02
    section = min(max(section_now if section_now else 0.95 * bowl, 0.4 * bowl), 1.8 * bowl)
    now_deg = tip_angle_deg(now / bowl) if now else TIP_NEW_DEG
    drawing = Drawing(360, 340, 34)
    reach = bowl + section
    eye, ring = eye_centre(bowl, section), EYE_OVER_SECTION * section
    drawing.fit([(-reach, -reach), (reach * 1.7, eye[1] + ring)])
    if new and now and abs(now_deg - TIP_NEW_DEG) > 0.2:
        drawing.line("hidden", *hook_outline(bowl, section, TIP_NEW_DEG))
    drawing.line("outline", *hook_outline(bowl, section, now_deg))
    left, right = (math.degrees(math.atan2(y - eye[1], x)) for x, y in neck_ends(bowl, section))
    drawing.line("outline", *_arc(eye, ring, right, left + 360.0, 40))
    drawing.line("outline", *_arc(eye, 0.42 * section, 0.0, 360.0, 40))
    drawing.line("centre", (0.0, -reach * 1.08), (0.0, eye[1] + 1.1 * ring))
    throat = writer.text("label-throat")
    if now:
        throat = writer.text("label-throat-measured", throat=writer.own(length(now)))
    drawing.dimension(_polar(bowl, NECK_DEG), _polar(bowl, 360.0 + now_deg), throat, 24)
    saddle = writer.own(length(section_now)) if section_now else writer.text("label-section")
    drawing.dimension((0.0, -bowl), (0.0, -bowl - section), saddle, 1.02 * reach * drawing.scale)
    drawing.text((-bowl - section / 2, 0.0), writer.text("label-back"), "middle", (0, 4), "small")
    _name_hook_parts(drawing, bowl, section, now_deg, writer)
    both = now if new else None
    caption = writer.text("figure", now=measured_or_absent(both), new=measured_or_absent(new))
    return Figure(drawing.svg(caption), caption)


def _name_hook_parts(
    drawing: Drawing, bowl_m: float, section_m: float, tip_deg: float, writer: Writer
) -> None:
    """The latch across the throat, and the names of latch, tip and neck, as the questions call them."""
    hinge, tip = _polar(bowl_m, NECK_DEG - 6.0), _polar(bowl_m, 360.0 + tip_deg)
    drawing.line("thin", hinge, tip)
    middle = ((hinge[0] + tip[0]) / 2, (hinge[1] + tip[1]) / 2)
    drawing.text(middle, writer.text("label-latch"), "end", (-8, 12), "small")
    end_deg = 360.0 + tip_deg
    outside = _polar(bowl_m + _hook_thickness(end_deg, section_m), end_deg)
    drawing.text(outside, writer.text("label-tip"), "start", (8, 10), "small")
    neck = (-0.5 * section_m, neck_ends(bowl_m, section_m)[0][1])
    drawing.text(neck, writer.text("label-neck"), "end", (-8, 4), "small")


def measured_or_absent(length_m: float | None) -> Quantity | Absent:
    """A length as a fact, or that it was not measured."""
    return absent("not-measured") if length_m is None else length(length_m)


@dataclass(frozen=True)
class ShackleShape:
    """Sizes of a bow shackle [m]: body and pin when new, jaw now; None where one is not known."""

    body_new_m: float | None
    pin_new_m: float | None
    jaw_now_m: float | None

    @property
    def known(self) -> bool:
        """Whether body and pin are drawn as measured."""
        return self.body_new_m is not None and self.pin_new_m is not None

    @property
    def body_m(self) -> float:
        """The body as drawn [m]."""
        return self.body_new_m if self.body_new_m is not None else 0.019

    @property
    def pin_m(self) -> float:
        """The pin as drawn [m]."""
        return self.pin_new_m if self.pin_new_m is not None else 1.15 * self.body_m


def shackle_figure(shackle: ShackleShape, writer: Writer) -> Figure:
    """A bow shackle seen flat, body and pin to scale: where to measure the bow, the pin and the jaw.

    Unknown sizes are drawn in usual proportion (jaw 1.6 body diameters) and carry no figure. Words: label-bow, label-pin,
    label-jaw, figure.
    """
    body, pin, jaw_now = shackle.body_m, shackle.pin_m, shackle.jaw_now_m
    jaw = jaw_now if jaw_now is not None else 1.6 * body
    half, bow = jaw / 2, max(0.85 * jaw, 0.6 * jaw + 0.3 * body)
    rise = 1.9 * jaw
    drawing = Drawing(360, 340, 62)
    drawing.fit([(-bow - body, -1.3 * pin), (bow + body, rise + bow + body)])
    for extra in (0.0, body):
        arc = _arc((0.0, rise), bow + extra, -28.0, 208.0, 36)
        drawing.line("outline", (half + extra, 0.95 * pin), *arc, (-half - extra, 0.95 * pin))
    for side in (-1.0, 1.0):
        near, far, tall = side * half, side * (half + body), 0.95 * pin
        drawing.line("outline", (near, tall), (near, -tall), (far, -tall), (far, tall), (near, tall))
    end = half + 1.5 * body
    for edge in (-pin / 2, pin / 2):
        drawing.line("outline", (-end, edge), (end, edge))
    drawing.line("centre", (-half - 2 * body, 0.0), (half + 2 * body, 0.0))
    top = rise + bow

    def words(size_m: float, known: bool, label: str) -> str:
        return writer.own(length(size_m)) if known else writer.text(label)

    drawing.dimension((0.0, top + body), (0.0, top), words(body, shackle.known, "label-bow"), 30)
    drawing.dimension((end, pin / 2), (end, -pin / 2), words(pin, shackle.known, "label-pin"), 14)
    jaw_words = words(jaw, jaw_now is not None, "label-jaw")
    drawing.dimension((half, -0.95 * pin), (-half, -0.95 * pin), jaw_words, 14)
    sizes = (body, pin) if shackle.known else (None, None)
    caption = writer.text("figure", bow=measured_or_absent(sizes[0]), pin=measured_or_absent(sizes[1]))
    return Figure(drawing.svg(caption), caption)


LAY_OVER_DIAMETER = 6.5
"""Length of one lay of a six-strand rope over its diameter [-]; for the drawing only (usual proportion, no source)."""


def rope_figure(diameter_m: float | None, writer: Writer) -> Figure:
    """A piece of six-strand rope, one lay long and more: where a lay begins and ends, how the caliper sits.

    Words: label-lay, label-diameter, figure-rope.
    """
    d = diameter_m if diameter_m is not None else 0.0127
    lay, end = LAY_OVER_DIAMETER * d, 9.0 * d
    drawing = Drawing(400, 200, 84)
    drawing.fit([(0.0, -d), (end, d)])
    for edge in (-d / 2, d / 2):
        drawing.line("outline", (0.0, edge), (end, edge))
    for strand in range(-3, 9):
        start = strand * lay / 6 * 1.0
        points = [
            (start + lay * share / 2, d / 2 * math.cos(math.pi * share))
            for share in (step / 16 for step in range(17))
            if 0.0 <= start + lay * share / 2 <= end
        ]
        if len(points) > 1:
            drawing.line("thin", *points)
    drawing.dimension((0.6 * d, d / 2), (0.6 * d + lay, d / 2), writer.text("label-lay"), 14)
    words = writer.own(length(diameter_m)) if diameter_m is not None else writer.text("label-diameter")
    drawing.dimension((end, d / 2), (end, -d / 2), words, 14)
    caption = writer.text("figure-rope", diameter=measured_or_absent(diameter_m))
    return Figure(drawing.svg(caption), caption)


def web_figure(writer: Writer) -> Figure:
    """A web sling laid flat: eyes, load stitching, tag; the places where it fails first.

    Words: label-bearing, label-stitching, label-tag, label-edges, figure-web.
    """
    drawing = Drawing(400, 200, 30)
    drawing.fit([(0.0, -1.0), (9.0, 1.0)])
    drawing.line("outline", (0.9, 0.5), (8.1, 0.5))
    drawing.line("outline", (0.9, -0.5), (8.1, -0.5))
    bearing, stitching = writer.text("label-bearing"), writer.text("label-stitching")
    for side, centre in ((1.0, 7.8), (-1.0, 1.2)):
        turn = -90.0 if side > 0 else 90.0
        for radius in (0.5, 0.18):
            drawing.line("outline", *_arc((centre + side * 0.3, 0.0), radius, turn, turn + 180.0))
        drawing.line(
            "outline", (centre + side * 0.3, 0.18), (centre - side * 0.2, 0.0), (centre + side * 0.3, -0.18)
        )
        for seam in range(4):
            x = centre - side * (0.4 + 0.35 * seam)
            drawing.line("hidden", (x, -0.45), (x - side * 0.3, 0.45))
        drawing.text((centre + side * 0.4, -0.5), bearing, "middle", (0, 18), "small")
        drawing.text((centre - side * 0.9, 0.5), stitching, "middle", (0, -8), "small")
    drawing.line("thin", (4.0, -0.3), (5.2, -0.3), (5.2, 0.3), (4.0, 0.3), (4.0, -0.3))
    drawing.text((4.6, 0.0), writer.text("label-tag"), "middle", (0, 4), "small")
    drawing.text((4.5, -0.5), writer.text("label-edges"), "middle", (0, 18), "small")
    caption = writer.text("figure-web")
    return Figure(drawing.svg(caption), caption)
