"""Scale drawing of a load as it hangs: from the front and from the side."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TypeVar, cast

from calc.figures.drawing import Drawing, LineKind, Point
from calc.worksheet import Figure, Say

Vector = tuple[float, float, float]


@dataclass(frozen=True)
class DrawnLeg:
    """A leg as drawn: its pick [load axes, m], pull [N], line kind, and its number with its words."""

    pick: Vector
    tension_n: float
    kind: str
    name: str


def _dot(a: Vector, b: Vector) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def world_axes(up: Vector) -> tuple[Vector, Vector]:
    """Level directions of the views: the load's own right made level, and the back square to it (both of length one).
    A load that stands on its end takes its own top for its right.
    """
    wanted = (1.0, 0.0, 0.0) if abs(up[0]) < 0.998 else (0.0, 0.0, -1.0)
    tilt = _dot(wanted, up)
    level = (wanted[0] - tilt * up[0], wanted[1] - tilt * up[1], wanted[2] - tilt * up[2])
    length = math.sqrt(_dot(level, level))
    right = (level[0] / length, level[1] / length, level[2] / length)
    back = (
        up[1] * right[2] - up[2] * right[1],
        up[2] * right[0] - up[0] * right[2],
        up[0] * right[1] - up[1] * right[0],
    )
    return right, back


def _hull(points: Sequence[Point]) -> list[Point]:
    """Convex outline of points, counter-clockwise."""
    ordered = sorted(set(points))

    def half(run: Sequence[Point]) -> list[Point]:
        kept: list[Point] = []
        for p in run:
            while len(kept) > 1 and _turn(kept[-2], kept[-1], p) <= 0:
                kept.pop()
            kept.append(p)
        return kept[:-1]

    return half(ordered) + half(ordered[::-1])


def _turn(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _box(picks: Sequence[Vector], centre: Vector) -> list[Vector]:
    """Corners of a block that stands in for the load: over the picks, and as far under the balance point as over it."""
    points = [*picks, centre]
    low = [min(p[i] for p in points) for i in range(3)]
    high = [max(p[i] for p in points) for i in range(3)]
    size = max(high[i] - low[i] for i in range(3)) or 1.0
    for i in (0, 1):
        low[i] -= 0.06 * size
        high[i] += 0.06 * size
    top_of_picks = max(p[2] for p in picks)
    reach = max(abs(top_of_picks - centre[2]), 0.1 * size)
    low[2] = min(low[2], centre[2] - reach)
    high[2] = max(top_of_picks, centre[2] + 0.1 * size if centre[2] > top_of_picks else top_of_picks)
    return [(x, y, z) for x in (low[0], high[0]) for y in (low[1], high[1]) for z in (low[2], high[2])]


def hanging_figure(
    legs: Sequence[DrawnLeg], hook: Vector, centre: Vector, up: Vector, tilt_deg: float, lean: str, say: Say
) -> Figure:
    """Front view and side view of the load at rest, to one scale; slack legs dashed. The block is a stand-in for the
    load: only picks, balance point, hook and legs are to scale.
    """
    right, back = world_axes(up)

    def front(p: Vector) -> Point:
        return _place(p, hook, right, up)

    def side(p: Vector) -> Point:
        return _place(p, hook, back, up)

    corners = _box([leg.pick for leg in legs], centre)
    known = [*(leg.pick for leg in legs), centre, hook, *corners]
    widths = [[view(p)[0] for p in known] for view in (front, side)]
    gap = 0.34 * max(max(w) - min(w) for w in widths)
    heights = [front(p)[1] for p in known]
    tall = max(heights) - min(heights)
    # The titles under the views need room too: they stand under the hook, a good third of the height apart.
    shift = max(max(widths[0]) - min(widths[1]) + gap, 0.42 * tall)
    drawing = Drawing(420, 330, 34)
    placed = [front(p) for p in known] + [(x + shift, z) for x, z in (side(p) for p in known)]
    drawing.fit(placed)
    taken: list[Span] = []
    for view, title, offset in ((front, "From the front", 0.0), (side, "From the right", shift)):
        at = _moved(view, offset)
        drawing.area("load", *_hull([at(p) for p in corners]))
        for leg in legs:
            drawing.line(cast("LineKind", leg.kind), at(hook), at(leg.pick))
        for leg in legs:
            drawing.circle("pick", at(leg.pick), 4.0, on_sheet=True)
        numbers = [(at(leg.pick), _number(leg)) for leg in legs]
        for point, names in _gathered(drawing, numbers, 11.0):
            listed = _listed(sorted(int(name) for name in names))
            _label(drawing, point, listed, taken, _outward(drawing, point, at(hook), 14.0), "strong")
        if view is front:
            pulls = [
                (_toward(at(hook), at(leg.pick)), (_number(leg), say.one(leg.tension_n, "force", "up", 3)))
                for leg in legs if leg.tension_n > 0
            ]  # fmt: skip
            for point, marked in _gathered(drawing, pulls, 14.0):
                beside = _outward(drawing, point, at(hook), 0.0)
                for words in _pull_words(marked):
                    _label(drawing, point, words, taken, beside, "note")
        drawing.circle("hook", at(hook), 6.0, on_sheet=True)
        low = min(at(p)[1] for p in known)
        drawing.line("centre", at(hook), (offset, low))
        drawing.circle("pick", at(centre), 5.0, on_sheet=True)
        drawing.text((offset, min(z for _, z in placed)), title, shift=(0, 29), kind="note")
    caption = _caption(legs, tilt_deg, lean, say)
    return Figure(drawing.svg(caption), caption)


Span = tuple[float, float, float]
"""Where words stand on the sheet: from, to, and their height."""


def _toward(hook: Point, pick: Point) -> Point:
    """The place of a leg's pull: a little past its middle, where legs stand further apart."""
    return 0.45 * hook[0] + 0.55 * pick[0], 0.45 * hook[1] + 0.55 * pick[1]


def _number(leg: DrawnLeg) -> str:
    return leg.name.partition(" ")[0]


def _outward(drawing: Drawing, point: Point, hook: Point, down: float) -> Point:
    """Shift of words beside a leg: away from the hook's plumb line, so that they stand off the legs."""
    return (-7.0 if drawing.place(point)[0] < drawing.place(hook)[0] - 3.0 else 7.0), down


def _pull_words(marked: Sequence[tuple[str, str]]) -> list[str]:
    """What stands beside legs that fall together: one pull, the same `each`, or every leg's own with its number."""
    forces = [force for _, force in marked]
    if len(forces) == 1:
        return forces
    if len(set(forces)) == 1:
        return [f"{forces[0]} each"]
    return [f"{number}: {force}" for number, force in marked]


Words = TypeVar("Words")


def _gathered(
    drawing: Drawing, labels: Sequence[tuple[Point, Words]], near: float
) -> list[tuple[Point, list[Words]]]:
    """Words of places that fall within `near` drawing units of one spot of the sheet, together."""
    spots: list[tuple[Point, list[Words]]] = []
    for point, words in labels:
        for held, names in spots:
            if math.dist(drawing.place(held), drawing.place(point)) < near:
                names.append(words)
                break
        else:
            spots.append((point, [words]))
    return spots


def _listed(numbers: Sequence[int]) -> str:
    """Numbers as a list, three or more in a row as a run: `1–4`, `1, 2`, `1, 3, 5`."""
    if len(numbers) > 2 and list(numbers) == list(range(numbers[0], numbers[0] + len(numbers))):
        return f"{numbers[0]}–{numbers[-1]}"
    return ", ".join(map(str, numbers))


def _label(drawing: Drawing, point: Point, words: str, taken: list[Span], shift: Point, kind: str) -> None:
    """Words beside a point, to its left for a shift to the left; on the other side if they would run off the sheet,
    and moved down until they stand clear of the others.
    """
    x, y = drawing.place(point)
    room = 7.0 * len(words)
    across = shift[0]
    if not 0.0 < x + across + math.copysign(room, across) < drawing.width:
        across = -across
    left = across < 0
    start, end = (x + across - room, x + across) if left else (x + across, x + across + room)
    down = shift[1]
    while any(start < e and s < end and abs(y + down - other) < 13.0 for s, e, other in taken):
        down += 13.0
    taken.append((start, end, y + down))
    drawing.text(point, words, "end" if left else "start", (across, down), kind)


def _moved(view: Callable[[Vector], Point], offset: float) -> Callable[[Vector], Point]:
    """A view set to the right by `offset` [m]."""

    def moved(p: Vector) -> Point:
        x, z = view(p)
        return x + offset, z

    return moved


def _place(p: Vector, hook: Vector, level: Vector, up: Vector) -> Point:
    arm = (p[0] - hook[0], p[1] - hook[1], p[2] - hook[2])
    return _dot(arm, level), _dot(arm, up)


def _caption(legs: Sequence[DrawnLeg], tilt_deg: float, lean: str, say: Say) -> str:
    tight = ", ".join(f"leg {leg.name} {say.force(leg.tension_n, 'up')}" for leg in legs if leg.tension_n > 0)
    slack = [leg.name for leg in legs if leg.tension_n <= 0]
    words = f"The load as it hangs, from the front and from the right. Pulls: {tight}."
    if slack:
        words += f" Slack and dashed: leg {', '.join(slack)}."
    tips = f"It tips {tilt_deg:.1f}°, {lean} low." if lean else "It hangs level."
    return f"{words} {tips} The block only stands in for the load's shape."
