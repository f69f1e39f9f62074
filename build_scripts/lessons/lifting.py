"""Drawings that explain lifting: what an angle does, how a load finds its balance, what shares and what does not.

All are computed from calc.lifting and calc.ratings. The numbers on them are those of the boat yard's engine.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, LineKind, Point
from calc.lifting.hanging import Vector, resting_places
from calc.lifting.leg_geometry import (
    CAREFUL_ANGLE_DEG,
    LOWEST_ANGLE_DEG,
    angle_factor,
    leg_tension_n,
    side_force_n,
)
from calc.pulling.energy import drop_factor
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.ratings import chain_lifting_leg
from calc.words.facts import Listing, Message, Number, Quantity, force, length, message, weight
from calc.words.writer import Writer

ENGINE_KG = 907.18474
"""The engine of the examples: 2,000 lb."""

ENGINE_N = ENGINE_KG * STANDARD_GRAVITY_M_PER_S2
SHOWN_ANGLES_DEG = (60.0, 45.0, 30.0)


def _turned(point: Point, about: Point, by_deg: float) -> Point:
    """A point turned counter-clockwise about another."""
    cos, sin = math.cos(math.radians(by_deg)), math.sin(math.radians(by_deg))
    x, y = point[0] - about[0], point[1] - about[1]
    return about[0] + cos * x - sin * y, about[1] + sin * x + cos * y


def _degrees(angle_deg: float, places: int | None = None) -> Quantity:
    """An angle [deg] as a fact."""
    return Quantity(angle_deg, "angle", places=places)


def _leg_kind(angle_deg: float) -> LineKind:
    """The line of a leg that may be used at all: heavy where it needs care."""
    return "leg-careful" if angle_deg < CAREFUL_ANGLE_DEG - 1e-9 else "leg"


def force_triangles(writer: Writer) -> Figure:
    """The pull of one leg split into its upright share and its sideways pull, at three angles, to one scale."""
    drawing = Drawing(360, 250, 30)
    upright = ENGINE_N / 2
    sides = [side_force_n(ENGINE_N, 2, angle) for angle in SHOWN_ANGLES_DEG]
    gap = 0.62 * upright
    total = sum(sides) + 2 * gap
    drawing.fit([(0.0, -0.55 * upright), (total, 1.2 * upright)])
    x = 0.0
    said: list[Message] = []
    for angle, side in zip(SHOWN_ANGLES_DEG, sides, strict=True):
        pull = leg_tension_n(ENGINE_N, 2, angle)
        drawing.line("thin", (x, 0.0), (x + side, 0.0))
        drawing.arrow((x + side, 0.0), (x, 0.0), "dimension")
        drawing.arrow((x + side, 0.0), (x + side, upright), "dimension")
        drawing.arrow((x + side, 0.0), (x, upright), "force")
        drawing.text((x + side / 2, 0.0), writer.plain(_degrees(angle)), shift=(0, 20), kind="strong")
        drawing.text((x + side / 2, 0.0), writer.own(force(pull, "demand"), 3), shift=(0, 38))
        facts = {"angle": _degrees(angle), "pull": force(pull, "demand"), "side": force(side, "demand")}
        said.append(message("force-triangles.next" if said else "force-triangles.first", **facts))
        x += side + gap
    words = writer.text("force-triangles.upright", upright=force(upright))
    drawing.text((total / 2, upright), words, shift=(0, -14))
    angles = Listing(tuple(said), "semicolon")
    caption = writer.text("force-triangles", load=weight(ENGINE_KG), angles=angles)
    return Figure(drawing.svg(caption), caption)


def angle_curve(writer: Writer) -> Figure:
    """The sling-angle factor over the angle from the horizontal."""
    drawing = Drawing(360, 300, 46)
    per_factor = 11.0
    low, high, top = 10.0, 90.0, 5.0
    drawing.fit([(low, per_factor), (high, per_factor * top)])
    drawing.line("axis", (low, per_factor * top), (low, per_factor), (high, per_factor))
    for factor in (1, 2, 3, 4, 5):
        drawing.line("thin", (low, per_factor * factor), (high, per_factor * factor))
        drawing.text((low, per_factor * factor), writer.text("times", factor=factor), "end", (-6, 5))
    for angle in (30.0, 45.0, 60.0, 90.0):
        drawing.line("centre", (angle, per_factor), (angle, per_factor * top))
        drawing.text((angle, per_factor), writer.plain(_degrees(angle)), "middle", (0, 18))
    first = math.degrees(math.asin(1 / top))
    steps = 80

    def run(start: float, end: float) -> list[Point]:
        return [
            (a, per_factor * angle_factor(a))
            for a in (start + (end - start) * step / steps for step in range(steps + 1))
        ]

    drawing.line("leg-stop", *run(first, LOWEST_ANGLE_DEG))
    drawing.line("leg-careful", *run(LOWEST_ANGLE_DEG, CAREFUL_ANGLE_DEG))
    drawing.line("leg", *run(CAREFUL_ANGLE_DEG, 90.0))
    for angle in (30.0, 45.0, 60.0):
        drawing.circle("pick", (angle, per_factor * angle_factor(angle)), 4.0, on_sheet=True)
        drawing.text(
            (angle, per_factor * angle_factor(angle)),
            writer.plain(Number(angle_factor(angle), places=2)),
            "start",
            (7, -7),
            "strong",
        )
    drawing.text((21.0, per_factor * 1.5), writer.text("angle-curve.stop"), kind="strong")
    drawing.text((50.0, per_factor * top), writer.text("angle-curve.axis"), shift=(0, -12))
    factors = [
        message("angle-curve.point", factor=Number(angle_factor(a), places=2), angle=_degrees(a))
        for a in (90.0, *SHOWN_ANGLES_DEG, 15.0)
    ]
    lowest = _degrees(LOWEST_ANGLE_DEG)
    caption = writer.text("angle-curve", factors=Listing(tuple(factors)), lowest=lowest)
    return Figure(drawing.svg(caption), caption)


def tape_test(writer: Writer) -> Figure:
    """Three slings over one spread, so that a tape tells the angle."""
    drawing = Drawing(360, 260, 24)
    half = 1.0
    drawing.fit([(-1.1, -0.42), (2.8, math.tan(math.radians(60.0)))])
    drawing.area("load", (-1.1, 0.0), (1.1, 0.0), (1.1, -0.22), (-1.1, -0.22))
    labels = dict(zip(SHOWN_ANGLES_DEG, ("steep", "middle", "flat"), strict=True))
    said: list[Message] = []
    for angle in SHOWN_ANGLES_DEG:
        height = half * math.tan(math.radians(angle))
        for side in (-half, half):
            drawing.line(_leg_kind(angle), (0.0, height), (side, 0.0))
        drawing.line("thin", (0.0, height), (1.15, height))
        drawing.circle("hook", (0.0, height), 5.0, on_sheet=True)
        label = writer.text(f"tape-test.{labels[angle]}", angle=_degrees(angle))
        drawing.text((1.15, height), label, "start", (3, 5))
        leg = math.hypot(half, height) / (2 * half)
        high = Number(height / (2 * half), places=2)
        said.append(message("tape-test.shares", angle=_degrees(angle), leg=Number(leg, places=2), high=high))
    for side in (-half, half):
        drawing.circle("pick", (side, 0.0), 4.0, on_sheet=True)
    drawing.dimension((half, -0.22), (-half, -0.22), writer.text("tape-test.spread"), 12)
    caption = writer.text("tape-test", shares=Listing(tuple(said), "semicolon"))
    return Figure(drawing.svg(caption), caption)


def angle_names(writer: Writer) -> Figure:
    """One sling, three names for its angle."""
    angle = 55.0
    height = math.tan(math.radians(angle))
    drawing = Drawing(360, 320, 40)
    drawing.fit([(-1.1, -0.35), (1.1, height + 0.1)])
    drawing.area("load", (-1.15, 0.0), (1.15, 0.0), (1.15, -0.32), (-1.15, -0.32))
    for side in (-1.0, 1.0):
        drawing.line("leg", (0.0, height), (side, 0.0))
        drawing.circle("pick", (side, 0.0), 4.0, on_sheet=True)
    drawing.circle("hook", (0.0, height), 6.0, on_sheet=True)
    drawing.line("centre", (0.0, height), (0.0, -0.4))
    names = {"flat": _degrees(angle), "upright": _degrees(90 - angle), "between": _degrees(180 - 2 * angle)}
    flat, upright, between = (writer.text(f"angle-names.{name}", angle=names[name]) for name in names)
    drawing.angle((1.0, 0.0), 180.0 - angle, 180.0, flat, 46)
    drawing.angle((0.0, height), 270.0, 270.0 + (90.0 - angle), upright, 62)
    drawing.angle((0.0, height), 180.0 + angle, 360.0 - angle, "", 96)
    drawing.text((0.0, height), between, "end", (-14, 118))
    caption = writer.text("angle-names", **names)
    return Figure(drawing.svg(caption), caption)


def _slanted(point: tuple[float, float, float]) -> Point:
    """A corner of space on the sheet, seen from the front right and above (cabinet view)."""
    x, y, z = point
    return x + 0.5 * y * math.cos(math.radians(35.0)), z + 0.5 * y * math.sin(math.radians(35.0))


def _sagging(start: Point, end: Point, sag: float) -> list[Point]:
    steps = 16
    return [
        (
            start[0] + (end[0] - start[0]) * i / steps,
            start[1] + (end[1] - start[1]) * i / steps - sag * 4 * (i / steps) * (1 - i / steps),
        )
        for i in range(steps + 1)
    ]


def two_of_four(writer: Writer) -> Figure:
    """A stiff plate on four legs: two corner to corner carry, two hang slack."""
    length, width, height = 2.4, 1.5, 1.7
    corners = [(0.0, 0.0, 0.0), (length, 0.0, 0.0), (length, width, 0.0), (0.0, width, 0.0)]
    hook = (length / 2, width / 2, height)
    reach = math.hypot(length / 2, width / 2)
    angle = math.degrees(math.atan2(height, reach))
    drawing = Drawing(360, 290, 34)
    placed = [_slanted(corner) for corner in corners]
    drawing.fit([*placed, _slanted(hook), (0.0, -0.3)])
    drawing.area("load", *placed)
    for index, corner in enumerate(placed):
        if index in (0, 2):
            drawing.line("leg", _slanted(hook), corner)
        else:
            drawing.line("leg-slack", *_sagging(_slanted(hook), corner, 0.12))
        drawing.circle("pick", corner, 4.0, on_sheet=True)
    drawing.circle("hook", _slanted(hook), 6.0, on_sheet=True)
    pull_two, pull_four = leg_tension_n(ENGINE_N, 2, angle), leg_tension_n(ENGINE_N, 4, angle)
    slack = writer.text("two-of-four.slack")
    drawing.text(placed[0], writer.own(force(pull_two, "demand"), 3), "start", (2, 22), "strong")
    drawing.text(placed[2], writer.own(force(pull_two, "demand"), 3), "end", (4, -16), "strong")
    drawing.text(placed[1], slack, "end", (0, 20))
    drawing.text(placed[3], slack, "start", (-26, -8))
    caption = writer.text(
        "two-of-four",
        load=weight(ENGINE_KG),
        angle=_degrees(angle, places=0),
        two=force(pull_two, "demand"),
        four=force(pull_four, "demand"),
    )
    return Figure(drawing.svg(caption), caption)


@dataclass(frozen=True)
class TwoLegHang:
    """How a load rests on two legs in one plane: hook in the load's own axes [m], tilt [deg, positive when the left end
    is down], pull of each leg [N] and its angle from the horizontal [deg].
    """

    hook_x_m: float
    hook_y_m: float
    tilt_deg: float
    left_tension_n: float
    right_tension_n: float
    left_angle_deg: float
    right_angle_deg: float


def two_leg_hang(
    spread_m: float, left_m: float, right_m: float, centre_x_m: float, centre_below_m: float, load_n: float
) -> TwoLegHang:
    """The still position of a load on two legs, by calc.lifting.hanging.

    spread_m -- between the picks [m], left pick at x = 0; left_m, right_m -- leg lengths [m]
    centre_x_m -- balance point from the left pick along the load [m]; centre_below_m -- below the line of the picks [m]
    Both legs must carry; the drawings choose such loads.
    """
    picks: tuple[Vector, Vector] = ((0.0, 0.0, 0.0), (spread_m, 0.0, 0.0))
    centre = (centre_x_m, 0.0, -centre_below_m)
    rest = resting_places(picks, (left_m, right_m), centre)[0]
    x, y = rest.hook[0], rest.hook[2]
    tilt = math.atan2(x - centre_x_m, y + centre_below_m)
    left, right = rest.tensions_n(load_n, (left_m, right_m))
    left_angle = math.degrees(math.atan2(y, x) + tilt)
    right_angle = math.degrees(math.atan2(y, spread_m - x) - tilt)
    return TwoLegHang(x, y, math.degrees(tilt), left, right, left_angle, right_angle)


def _hanging(
    drawing: Drawing, hang: TwoLegHang, spread: float, centre: Point, hook_at: Point, by_deg: float
) -> Point:
    """Draw a hung load turned by `by_deg`, its hook at `hook_at`; returns where the balance point came to lie."""
    hook = (hang.hook_x_m, hang.hook_y_m)

    def put(point: Point) -> Point:
        moved = (hook_at[0] + point[0] - hook[0], hook_at[1] + point[1] - hook[1])
        return _turned(moved, hook_at, by_deg)

    depth = 2 * -centre[1]
    box = [(-0.12 * spread, 0.0), (1.12 * spread, 0.0), (1.12 * spread, -depth), (-0.12 * spread, -depth)]
    drawing.area("load", *(put(corner) for corner in box))
    for pick, angle in (((0.0, 0.0), hang.left_angle_deg), ((spread, 0.0), hang.right_angle_deg)):
        drawing.line(_leg_kind(angle), hook_at, put(pick))
        drawing.circle("pick", put(pick), 4.0, on_sheet=True)
    drawing.circle("hook", hook_at, 6.0, on_sheet=True)
    return put(centre)


def hook_over_balance(writer: Writer) -> Figure:
    """The same engine before and after it leaves the floor with the hook beside the balance point."""
    spread, leg, centre = 1.0, 0.9, (0.36, -0.25)
    hang = two_leg_hang(spread, leg, leg, centre[0], -centre[1], ENGINE_N)
    drawing = Drawing(360, 240, 22)
    right = 1.75
    drawing.fit([(-0.35, -0.9), (right + 1.15, hang.hook_y_m + 0.1)])
    first_hook, second_hook = (hang.hook_x_m, hang.hook_y_m), (right + centre[0], hang.hook_y_m)
    flat = two_leg_hang(spread, leg, leg, 0.5, -centre[1], ENGINE_N)
    before = _hanging(drawing, flat, spread, centre, first_hook, 0.0)
    after = _hanging(drawing, hang, spread, centre, second_hook, hang.tilt_deg)
    for balance, hook in ((before, first_hook), (after, second_hook)):
        drawing.circle("hook", balance, 3.5, on_sheet=True)
        drawing.line("centre", hook, (hook[0], -0.62))
    drawing.line("ground", (-0.3, -0.5), (1.3, -0.5))
    off = hang.hook_x_m - centre[0]
    tilt = _degrees(hang.tilt_deg, places=0)
    drawing.text(before, writer.text("hook-over-balance.point"), "start", (-8, 17), "small")
    drawing.text((0.5, -0.5), writer.text("hook-over-balance.floor"), shift=(0, 20))
    drawing.text((right + 0.5, -0.5), writer.text("hook-over-balance.air", tilt=tilt), shift=(0, 40))
    caption = writer.text(
        "hook-over-balance",
        off=length(off),
        spread=length(spread),
        tilt=tilt,
        heavy=force(hang.left_tension_n, "demand"),
        light=force(hang.right_tension_n, "demand"),
    )
    return Figure(drawing.svg(caption), caption)


def one_leg_longer(writer: Writer) -> Figure:
    """A load that should hang level, one leg four inches longer than the other."""
    spread, left, longer, below = 1.2192, 1.2192, 0.1016, 0.254
    hang = two_leg_hang(spread, left, left + longer, spread / 2, below, ENGINE_N)
    drawing = Drawing(360, 330, 36)
    hook = (0.0, 0.0)
    drawing.fit([(-1.0, -1.95), (1.0, 0.08)])
    balance = _hanging(drawing, hang, spread, (spread / 2, -below), hook, hang.tilt_deg)
    drawing.circle("hook", balance, 3.5, on_sheet=True)
    drawing.line("centre", hook, (0.0, -1.9))
    left_pull, right_pull = force(hang.left_tension_n, "demand"), force(hang.right_tension_n, "demand")
    tilt = _degrees(abs(hang.tilt_deg), places=1)
    drawing.text((-0.42, -0.5), writer.own(left_pull, 3), "end", (-8, 0), "strong")
    drawing.text((0.36, -0.5), writer.own(right_pull, 3), "start", (12, 0), "strong")
    drawing.text((0.0, -1.9), writer.text("one-leg-longer.tilt", tilt=tilt), shift=(0, 14))
    caption = writer.text(
        "one-leg-longer",
        load=weight(ENGINE_KG),
        left=length(left),
        longer=length(longer),
        tilt=tilt,
        end=message("left-end" if hang.tilt_deg > 0 else "right-end"),
        left_pull=left_pull,
        right_pull=right_pull,
    )
    return Figure(drawing.svg(caption), caption)


def steep_and_flat(writer: Writer) -> Figure:
    """A load on a flat leg at 30 degrees and a steep one at 60: the steep one pulls harder."""
    spread, below = 2.0, 0.3
    left, right = spread * math.cos(math.radians(30.0)), spread * math.cos(math.radians(60.0))
    centre_x = left * math.cos(math.radians(30.0))
    hang = two_leg_hang(spread, left, right, centre_x, below, ENGINE_N)
    drawing = Drawing(360, 260, 30)
    drawing.fit([(-0.3, -0.75), (2.3, hang.hook_y_m + 0.1)])
    balance = _hanging(drawing, hang, spread, (centre_x, -below), (hang.hook_x_m, hang.hook_y_m), 0.0)
    drawing.circle("hook", balance, 3.5, on_sheet=True)
    drawing.line("centre", (hang.hook_x_m, hang.hook_y_m), (hang.hook_x_m, -0.7))
    flat, steep = force(hang.left_tension_n, "demand"), force(hang.right_tension_n, "demand")
    drawing.angle(
        (0.0, 0.0), 0.0, hang.left_angle_deg, writer.plain(_degrees(hang.left_angle_deg, places=0)), 46
    )
    drawing.angle(
        (spread, 0.0),
        180.0 - hang.right_angle_deg,
        180.0,
        writer.plain(_degrees(hang.right_angle_deg, places=0)),
        34,
    )
    drawing.text((0.6, 0.45), writer.own(flat, 3), "end", (-8, -4), "strong")
    drawing.text((1.78, 0.45), writer.own(steep, 3), "start", (8, -4), "strong")
    caption = writer.text("steep-and-flat", load=weight(ENGINE_KG), flat=flat, steep=steep)
    return Figure(drawing.svg(caption), caption)


def _tag(drawing: Drawing, at: Point, words: str, anchor: str = "start") -> None:
    drawing.text(at, words, "start" if anchor == "start" else "end", (14 if anchor == "start" else -14, 5))


def not_doubled(writer: Writer) -> Figure:
    """Parts in line, and two parts on one ring: what the whole carries."""
    strong = weight(chain_lifting_leg("80", "3/8").working_load_limit_kg)
    weak = weight(chain_lifting_leg("80", "9/32").working_load_limit_kg)
    drawing = Drawing(360, 350, 30)
    drawing.fit([(-1.1, -0.4), (4.75, 4.3)])
    for x, part in ((0.0, "in-line"), (3.0, "side-by-side")):
        drawing.line("ground", (x - 0.9, 4.2), (x + 0.9, 4.2))
        drawing.text((x, 4.2), writer.text(f"not-doubled.{part}"), shift=(0, -8), kind="strong")
    drawing.line("leg", (0.0, 4.2), (0.0, 0.9))
    for y in (3.4, 2.5, 1.6):
        drawing.circle("hook", (0.0, y), 6.0, on_sheet=True)
    _tag(drawing, (0.0, 3.8), writer.own(strong))
    _tag(drawing, (0.0, 2.95), writer.own(strong))
    _tag(drawing, (0.0, 2.05), writer.own(weak))
    _tag(drawing, (0.0, 1.2), writer.own(strong))
    drawing.line("leg", (3.0, 4.2), (3.0, 3.3))
    drawing.circle("hook", (3.0, 3.1), 11.0, on_sheet=True)
    _tag(drawing, (3.1, 3.1), writer.text("not-doubled.ring", rating=weak), "start")
    for side in (-0.28, 0.28):
        drawing.line("leg", (3.0 + side / 2, 2.9), (3.0 + side, 0.9))
    drawing.text((2.72, 1.9), writer.own(strong), "end", (-10, 0))
    drawing.text((3.28, 1.9), writer.own(strong), "start", (8, 0))
    for x in (0.0, 3.0):
        drawing.area("load", (x - 0.8, 0.9), (x + 0.8, 0.9), (x + 0.8, 0.1), (x - 0.8, 0.1))
        drawing.text((x, 0.5), writer.own(weak), shift=(0, 5), kind="strong")
    drawing.text((1.5, -0.25), writer.text("not-doubled.whole"), shift=(0, 4))
    caption = writer.text("not-doubled", strong=strong, weak=weak)
    return Figure(drawing.svg(caption), caption)


def drop_curve(writer: Writer) -> Figure:
    """How a fall multiplies the pull: factor over height of fall counted in static stretches."""
    drawing = Drawing(360, 290, 46)
    per_factor = 1.6
    most = 20.0
    drawing.fit([(0.0, 0.0), (most, per_factor * 8)])
    drawing.line("axis", (0.0, per_factor * 8), (0.0, 0.0), (most, 0.0))
    for factor in (1.0, 2.0, 4.0, 6.0, 8.0):
        drawing.line("thin", (0.0, per_factor * factor), (most, per_factor * factor))
        times = writer.text("times", factor=Number(factor))
        drawing.text((0.0, per_factor * factor), times, "end", (-6, 5))
    for mark in (0, 5, 10, 15, 20):
        drawing.text((float(mark), 0.0), writer.plain(mark), "middle", (0, 18))
    drawing.line(
        "curve",
        *((most * step / 100, per_factor * drop_factor(most * step / 100, 1.0)) for step in range(101)),
    )
    for ratio in (0.0, 2.5, 10.0, 20.0):
        drawing.circle("pick", (ratio, per_factor * drop_factor(ratio, 1.0)), 4.0, on_sheet=True)
        drawing.text(
            (ratio, per_factor * drop_factor(ratio, 1.0)),
            writer.plain(Number(drop_factor(ratio, 1.0), places=1)),
            "start",
            (2, -10),
            "strong",
        )
    drawing.text((most / 2, 0.0), writer.text("drop-curve.axis"), shift=(0, 36))
    points = [
        message("drop-curve.point", factor=Number(drop_factor(fall, 1.0), places=1), fall=Number(fall, 2))
        for fall in (0.0, 1.0, 2.5, 10.0, 20.0)
    ]
    caption = writer.text("drop-curve", points=Listing(tuple(points), "semicolon"))
    return Figure(drawing.svg(caption), caption)


LIFTING_LESSONS: dict[str, Callable[[Writer], Figure]] = {
    "force-triangles": force_triangles,
    "angle-curve": angle_curve,
    "tape-test": tape_test,
    "angle-names": angle_names,
    "two-of-four": two_of_four,
    "hook-over-balance": hook_over_balance,
    "one-leg-longer": one_leg_longer,
    "steep-and-flat": steep_and_flat,
    "not-doubled": not_doubled,
    "drop-curve": drop_curve,
}

__all__ = ["LIFTING_LESSONS"]
