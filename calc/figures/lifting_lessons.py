"""Drawings that explain lifting: what an angle does, how a load finds its balance, what shares and what does not.

All are computed from calc.lifting and calc.ratings. The numbers on them are those of the boat yard's engine.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

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
from calc.worksheet import Figure, Say

ENGINE_KG = 907.18474
"""The engine of the examples: 2,000 lb."""

ENGINE_N = ENGINE_KG * STANDARD_GRAVITY_M_PER_S2
SHOWN_ANGLES_DEG = (60.0, 45.0, 30.0)


def _turned(point: Point, about: Point, by_deg: float) -> Point:
    """A point turned counter-clockwise about another."""
    cos, sin = math.cos(math.radians(by_deg)), math.sin(math.radians(by_deg))
    x, y = point[0] - about[0], point[1] - about[1]
    return about[0] + cos * x - sin * y, about[1] + sin * x + cos * y


def _leg_kind(angle_deg: float) -> LineKind:
    """The line of a leg that may be used at all: heavy where it needs care."""
    return "leg-careful" if angle_deg < CAREFUL_ANGLE_DEG - 1e-9 else "leg"


def force_triangles(say: Say) -> Figure:
    """The pull of one leg split into its upright share and its sideways pull, at three angles, to one scale."""
    drawing = Drawing(360, 250, 30)
    upright = ENGINE_N / 2
    sides = [side_force_n(ENGINE_N, 2, angle) for angle in SHOWN_ANGLES_DEG]
    gap = 0.62 * upright
    total = sum(sides) + 2 * gap
    drawing.fit([(0.0, -0.55 * upright), (total, 1.2 * upright)])
    x = 0.0
    said = []
    for angle, side in zip(SHOWN_ANGLES_DEG, sides, strict=True):
        pull = leg_tension_n(ENGINE_N, 2, angle)
        drawing.line("thin", (x, 0.0), (x + side, 0.0))
        drawing.arrow((x + side, 0.0), (x, 0.0), "dimension")
        drawing.arrow((x + side, 0.0), (x + side, upright), "dimension")
        drawing.arrow((x + side, 0.0), (x, upright), "force")
        drawing.text((x + side / 2, 0.0), f"{angle:g}°", shift=(0, 20), kind="strong")
        drawing.text((x + side / 2, 0.0), say.one(pull, "force", "up", 3), shift=(0, 38))
        said.append(f"{angle:g}°: {say.force(pull, 'up')} along the leg, {say.force(side, 'up')} sideways")
        x += side + gap
    drawing.text((total / 2, upright), f"each leg holds up {say.one(upright, 'force')}", shift=(0, -14))
    caption = (
        f"One leg of two under {say.weight(ENGINE_KG)}, drawn to one scale. Every arrow up is the same half of the load. "
        f"The flatter the leg, the longer its own arrow. At {'; at '.join(said)}."
    )
    return Figure(drawing.svg(caption), caption)


def angle_curve(say: Say) -> Figure:
    """The sling-angle factor over the angle from the horizontal."""
    del say
    drawing = Drawing(360, 300, 46)
    per_factor = 11.0
    low, high, top = 10.0, 90.0, 5.0
    drawing.fit([(low, per_factor), (high, per_factor * top)])
    drawing.line("axis", (low, per_factor * top), (low, per_factor), (high, per_factor))
    for factor in (1, 2, 3, 4, 5):
        drawing.line("thin", (low, per_factor * factor), (high, per_factor * factor))
        drawing.text((low, per_factor * factor), f"{factor} ×", "end", (-6, 5))
    for angle in (30.0, 45.0, 60.0, 90.0):
        drawing.line("centre", (angle, per_factor), (angle, per_factor * top))
        drawing.text((angle, per_factor), f"{angle:g}°", "middle", (0, 18))
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
            f"{angle_factor(angle):.2f}",
            "start",
            (7, -7),
            "strong",
        )
    drawing.text((21.0, per_factor * 1.5), "stop", kind="strong")
    drawing.text(
        (50.0, per_factor * top), "angle from the horizontal, and what it multiplies", shift=(0, -12)
    )
    factors = ", ".join(f"{angle_factor(a):.2f} at {a:g}°" for a in (90.0, *SHOWN_ANGLES_DEG, 15.0))
    caption = (
        f"The factor by which a leg's share of the load grows into its pull: {factors}. The dotted part is under "
        f"{LOWEST_ANGLE_DEG:g}°, where no sling is used."
    )
    return Figure(drawing.svg(caption), caption)


def tape_test(say: Say) -> Figure:
    """Three slings over one spread, so that a tape tells the angle."""
    del say
    drawing = Drawing(360, 260, 24)
    half = 1.0
    drawing.fit([(-1.1, -0.42), (2.8, math.tan(math.radians(60.0)))])
    drawing.area("load", (-1.1, 0.0), (1.1, 0.0), (1.1, -0.22), (-1.1, -0.22))
    words = {60.0: "60°: leg = spread", 45.0: "45°: half spread high", 30.0: "30°: no flatter"}
    said = []
    for angle in SHOWN_ANGLES_DEG:
        height = half * math.tan(math.radians(angle))
        for side in (-half, half):
            drawing.line(_leg_kind(angle), (0.0, height), (side, 0.0))
        drawing.line("thin", (0.0, height), (1.15, height))
        drawing.circle("hook", (0.0, height), 5.0, on_sheet=True)
        drawing.text((1.15, height), words[angle], "start", (3, 5))
        leg = math.hypot(half, height) / (2 * half)
        said.append(
            f"{angle:g}°: leg {leg:.2f} of the spread, hook {height / (2 * half):.2f} of the spread high"
        )
    for side in (-half, half):
        drawing.circle("pick", (side, 0.0), 4.0, on_sheet=True)
    drawing.dimension((half, -0.22), (-half, -0.22), "spread", 12)
    caption = f"Three pairs of legs over one spread. {'; '.join(said)}."
    return Figure(drawing.svg(caption), caption)


def angle_names(say: Say) -> Figure:
    """One sling, three names for its angle."""
    del say
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
    drawing.angle((1.0, 0.0), 180.0 - angle, 180.0, f"{angle:g}° from horizontal", 46)
    drawing.angle((0.0, height), 270.0, 270.0 + (90.0 - angle), f"{90 - angle:g}° from vertical", 62)
    drawing.angle((0.0, height), 180.0 + angle, 360.0 - angle, "", 96)
    drawing.text((0.0, height), f"{180 - 2 * angle:g}° between the legs", "end", (-14, 118))
    caption = (
        f"One pair of legs and three names for its angle: {angle:g}° from the horizontal, {90 - angle:g}° from the "
        f"vertical, {180 - 2 * angle:g}° between the legs. This book counts from the horizontal."
    )
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


def two_of_four(say: Say) -> Figure:
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
    drawing.text(placed[0], say.one(pull_two, "force", "up", 3), "start", (2, 22), "strong")
    drawing.text(placed[2], say.one(pull_two, "force", "up", 3), "end", (4, -16), "strong")
    drawing.text(placed[1], "slack", "end", (0, 20))
    drawing.text(placed[3], "slack", "start", (-26, -8))
    caption = (
        f"A stiff plate of {say.weight(ENGINE_KG)} on four legs at {angle:.0f}°. Two opposite legs are a hair shorter: they "
        f"pull {say.force(pull_two, 'up')} each, and the two dashed legs hang slack. If all four shared alike it would be "
        f"{say.force(pull_four, 'up')} each."
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


def hook_over_balance(say: Say) -> Figure:
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
    drawing.text(before, "balance point", "start", (-8, 17), "small")
    drawing.text((0.5, -0.5), "on the floor", shift=(0, 20))
    drawing.text((right + 0.5, -0.5), f"in the air: {hang.tilt_deg:.0f}° down", shift=(0, 40))
    caption = (
        f"Left: the hook stands {say.length(off)} beside the balance point of a load with {say.length(spread)} between its "
        f"picks. Right: as soon as it leaves the floor, it swings until the balance point is under the hook and hangs "
        f"{hang.tilt_deg:.0f}° out of level, the heavy end down. The leg at the heavy end pulls "
        f"{say.force(hang.left_tension_n, 'up')}, the other {say.force(hang.right_tension_n, 'up')}."
    )
    return Figure(drawing.svg(caption), caption)


def one_leg_longer(say: Say) -> Figure:
    """A load that should hang level, one leg four inches longer than the other."""
    spread, left, longer, below = 1.2192, 1.2192, 0.1016, 0.254
    hang = two_leg_hang(spread, left, left + longer, spread / 2, below, ENGINE_N)
    drawing = Drawing(360, 330, 36)
    hook = (0.0, 0.0)
    drawing.fit([(-1.0, -1.95), (1.0, 0.08)])
    balance = _hanging(drawing, hang, spread, (spread / 2, -below), hook, hang.tilt_deg)
    drawing.circle("hook", balance, 3.5, on_sheet=True)
    drawing.line("centre", hook, (0.0, -1.9))
    drawing.text((-0.42, -0.5), say.one(hang.left_tension_n, "force", "up", 3), "end", (-8, 0), "strong")
    drawing.text((0.36, -0.5), say.one(hang.right_tension_n, "force", "up", 3), "start", (12, 0), "strong")
    drawing.text((0.0, -1.9), f"{abs(hang.tilt_deg):.1f}° out of level", shift=(0, 14))
    end = "left" if hang.tilt_deg > 0 else "right"
    caption = (
        f"A load of {say.weight(ENGINE_KG)}, balance point midway. The left leg is {say.length(left)} long, the right one "
        f"{say.length(longer)} longer. It hangs {abs(hang.tilt_deg):.1f}° out of level, the {end} end down; the legs pull "
        f"{say.force(hang.left_tension_n, 'up')} and {say.force(hang.right_tension_n, 'up')}."
    )
    return Figure(drawing.svg(caption), caption)


def _tag(drawing: Drawing, at: Point, words: str, anchor: str = "start") -> None:
    drawing.text(at, words, "start" if anchor == "start" else "end", (14 if anchor == "start" else -14, 5))


def not_doubled(say: Say) -> Figure:
    """Parts in line, and two parts on one ring: what the whole carries."""
    chain = chain_lifting_leg("80", "3/8").working_load_limit_kg
    small = chain_lifting_leg("80", "9/32").working_load_limit_kg
    drawing = Drawing(360, 350, 30)
    drawing.fit([(-1.1, -0.4), (4.75, 4.3)])
    for x, words in ((0.0, "in line"), (3.0, "side by side, one ring")):
        drawing.line("ground", (x - 0.9, 4.2), (x + 0.9, 4.2))
        drawing.text((x, 4.2), words, shift=(0, -8), kind="strong")
    drawing.line("leg", (0.0, 4.2), (0.0, 0.9))
    for y in (3.4, 2.5, 1.6):
        drawing.circle("hook", (0.0, y), 6.0, on_sheet=True)
    _tag(drawing, (0.0, 3.8), say.one(chain, "weight"))
    _tag(drawing, (0.0, 2.95), say.one(chain, "weight"))
    _tag(drawing, (0.0, 2.05), say.one(small, "weight"))
    _tag(drawing, (0.0, 1.2), say.one(chain, "weight"))
    drawing.line("leg", (3.0, 4.2), (3.0, 3.3))
    drawing.circle("hook", (3.0, 3.1), 11.0, on_sheet=True)
    _tag(drawing, (3.1, 3.1), f"ring {say.one(small, 'weight')}", "start")
    for side in (-0.28, 0.28):
        drawing.line("leg", (3.0 + side / 2, 2.9), (3.0 + side, 0.9))
    drawing.text((2.72, 1.9), say.one(chain, "weight"), "end", (-10, 0))
    drawing.text((3.28, 1.9), say.one(chain, "weight"), "start", (8, 0))
    for x in (0.0, 3.0):
        drawing.area("load", (x - 0.8, 0.9), (x + 0.8, 0.9), (x + 0.8, 0.1), (x - 0.8, 0.1))
        drawing.text((x, 0.5), say.one(small, "weight"), shift=(0, 5), kind="strong")
    drawing.text((1.5, -0.25), "both strings carry no more than this", shift=(0, 4))
    caption = (
        f"Two strings seen from the side. Left, four parts in line: three rated {say.weight(chain)}, one rated "
        f"{say.weight(small)}. Right, two chains of {say.weight(chain)} each under one ring rated {say.weight(small)}. Neither "
        f"string may carry more than {say.weight(small)}: what all of the load goes through decides."
    )
    return Figure(drawing.svg(caption), caption)


def drop_curve(say: Say) -> Figure:
    """How a fall multiplies the pull: factor over height of fall counted in static stretches."""
    del say
    drawing = Drawing(360, 290, 46)
    per_factor = 1.6
    most = 20.0
    drawing.fit([(0.0, 0.0), (most, per_factor * 8)])
    drawing.line("axis", (0.0, per_factor * 8), (0.0, 0.0), (most, 0.0))
    for factor in (1.0, 2.0, 4.0, 6.0, 8.0):
        drawing.line("thin", (0.0, per_factor * factor), (most, per_factor * factor))
        drawing.text((0.0, per_factor * factor), f"{factor:g} ×", "end", (-6, 5))
    for mark in (0, 5, 10, 15, 20):
        drawing.text((float(mark), 0.0), f"{mark}", "middle", (0, 18))
    drawing.line(
        "curve",
        *((most * step / 100, per_factor * drop_factor(most * step / 100, 1.0)) for step in range(101)),
    )
    for ratio in (0.0, 2.5, 10.0, 20.0):
        drawing.circle("pick", (ratio, per_factor * drop_factor(ratio, 1.0)), 4.0, on_sheet=True)
        drawing.text(
            (ratio, per_factor * drop_factor(ratio, 1.0)),
            f"{drop_factor(ratio, 1.0):.1f}",
            "start",
            (2, -10),
            "strong",
        )
    drawing.text((most / 2, 0.0), "height of fall, in stretches under the quiet load", shift=(0, 36))
    points = "; ".join(f"{drop_factor(ratio, 1.0):.1f} at {ratio:g}" for ratio in (0.0, 1.0, 2.5, 10.0, 20.0))
    caption = (
        "The peak pull over the quiet load, against the height of the fall counted in stretches that the quiet load gives: "
        f"{points}. Even without a fall, a load that is let go at once pulls double."
    )
    return Figure(drawing.svg(caption), caption)


LIFTING_LESSONS: dict[str, Callable[[Say], Figure]] = {
    "force-triangles": force_triangles, "angle-curve": angle_curve, "tape-test": tape_test, "angle-names": angle_names,
    "two-of-four": two_of_four, "hook-over-balance": hook_over_balance, "one-leg-longer": one_leg_longer,
    "not-doubled": not_doubled, "drop-curve": drop_curve,
}  # fmt: skip

__all__ = ["LIFTING_LESSONS"]
