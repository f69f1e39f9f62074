"""Scale drawing of a load as it hangs: from the front and from the side."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeVar

from calc.declaration import Figure
from calc.figures.drawing import Drawing, LineKind, Point

Vector = tuple[float, float, float]


@dataclass(frozen=True)
class DrawnLeg:
    """A leg as drawn: its pick [load axes, m], its number and the kind of its line. A tight one brings its pull as written:
    alone, for each of several legs that fall together, and with the leg's number.
    """

    pick: Vector
    number: int
    line: LineKind
    pull: str = ""
    pull_each: str = ""
    pull_of_leg: str = ""


@dataclass(frozen=True)
class HangingPose:
    """How the load hangs: hook and balance point [load axes, m], and the direction straight up in the same axes."""

    hook: Vector
    centre: Vector
    up: Vector


@dataclass(frozen=True)
class HangingWords:
    """The titles of the two views, and the caption."""

    front: str
    right: str
    caption: str


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


@dataclass(frozen=True)
class _View:
    """The load seen along a level direction: `across` points right in the view; set to the right by `shift` [m]."""

    pose: HangingPose
    across: Vector
    title: str
    shift: float = 0.0

    def at(self, p: Vector) -> Point:
        """Where a point of the load stands in the view [m], the hook at (shift, 0)."""
        hook = self.pose.hook
        arm = (p[0] - hook[0], p[1] - hook[1], p[2] - hook[2])
        return _dot(arm, self.across) + self.shift, _dot(arm, self.pose.up)


def hanging_figure(legs: Sequence[DrawnLeg], pose: HangingPose, words: HangingWords) -> Figure:
    """Front view and side view of the load at rest, to one scale; slack legs dashed. The block is a stand-in for the
    load: only picks, balance point, hook and legs are to scale.
    """
    corners = _box([leg.pick for leg in legs], pose.centre)
    known = [*(leg.pick for leg in legs), pose.centre, pose.hook, *corners]
    front, side = _views(pose, words, known)
    drawing = Drawing(420, 330, 34)
    placed = [view.at(p) for view in (front, side) for p in known]
    drawing.fit(placed)
    taken: list[Span] = []
    for view in (front, side):
        drawing.area("load", *_hull([view.at(p) for p in corners]))
        _draw_legs(drawing, view, legs, taken)
        if view is front:
            _write_pulls(drawing, view, [leg for leg in legs if leg.pull], taken)
        drawing.circle("hook", view.at(pose.hook), 6.0, on_sheet=True)
        drawing.line("centre", view.at(pose.hook), (view.shift, min(view.at(p)[1] for p in known)))
        drawing.circle("pick", view.at(pose.centre), 5.0, on_sheet=True)
        drawing.text((view.shift, min(z for _, z in placed)), view.title, shift=(0, 29), kind="note")
    return Figure(drawing.svg(words.caption), words.caption)


def _views(pose: HangingPose, words: HangingWords, known: Sequence[Vector]) -> tuple[_View, _View]:
    """The view from the front and, clear of it, the one from the right."""
    right, back = world_axes(pose.up)
    front, side = _View(pose, right, words.front), _View(pose, back, words.right)
    widths = [[view.at(p)[0] for p in known] for view in (front, side)]
    gap = 0.34 * max(max(w) - min(w) for w in widths)
    heights = [front.at(p)[1] for p in known]
    tall = max(heights) - min(heights)
    # The titles under the views need room too: they stand under the hook, a good third of the height apart.
    shift = max(max(widths[0]) - min(widths[1]) + gap, 0.42 * tall)
    return front, _View(pose, back, words.right, shift)


def _draw_legs(drawing: Drawing, view: _View, legs: Sequence[DrawnLeg], taken: list[Span]) -> None:
    """Legs and picks with the numbers of the legs."""
    hook = view.at(view.pose.hook)
    for leg in legs:
        drawing.line(leg.line, hook, view.at(leg.pick))
    for leg in legs:
        drawing.circle("pick", view.at(leg.pick), 4.0, on_sheet=True)
    numbers = [(view.at(leg.pick), leg.number) for leg in legs]
    for point, gathered in _gathered(drawing, numbers, 11.0):
        beside = _outward(drawing, point, hook, 14.0)
        _label(drawing, point, _Label(_listed(sorted(gathered)), "strong", beside), taken)


def _write_pulls(drawing: Drawing, view: _View, tight: Sequence[DrawnLeg], taken: list[Span]) -> None:
    """The pulls beside their legs."""
    hook = view.at(view.pose.hook)
    pulls = [(_toward(hook, view.at(leg.pick)), leg) for leg in tight]
    for point, gathered in _gathered(drawing, pulls, 14.0):
        beside = _outward(drawing, point, hook, 0.0)
        for words in _pull_words(gathered):
            _label(drawing, point, _Label(words, "note", beside), taken)


Span = tuple[float, float, float]
"""Where words stand on the sheet: from, to, and their height."""


def _toward(hook: Point, pick: Point) -> Point:
    """The place of a leg's pull: a little past its middle, where legs stand further apart."""
    return 0.45 * hook[0] + 0.55 * pick[0], 0.45 * hook[1] + 0.55 * pick[1]


def _outward(drawing: Drawing, point: Point, hook: Point, down: float) -> Point:
    """Shift of words beside a leg: away from the hook's plumb line, so that they stand off the legs."""
    return (-7.0 if drawing.place(point)[0] < drawing.place(hook)[0] - 3.0 else 7.0), down


def _pull_words(legs: Sequence[DrawnLeg]) -> list[str]:
    """What stands beside legs that fall together: one pull, the same `each`, or every leg's own with its number."""
    if len(legs) == 1:
        return [legs[0].pull]
    if len({leg.pull for leg in legs}) == 1:
        return [legs[0].pull_each]
    return [leg.pull_of_leg for leg in legs]


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


@dataclass(frozen=True)
class _Label:
    """Words, their kind, and their shift from the point they stand beside [drawing units]."""

    words: str
    kind: str
    shift: Point


def _label(drawing: Drawing, point: Point, label: _Label, taken: list[Span]) -> None:
    """Words beside a point, to its left for a shift to the left; on the other side if they would run off the sheet,
    and moved down until they stand clear of the others.
    """
    x, y = drawing.place(point)
    room = 7.0 * len(label.words)
    across, down = label.shift
    if not 0.0 < x + across + math.copysign(room, across) < drawing.width:
        across = -across
    left = across < 0
    start, end = (x + across - room, x + across) if left else (x + across, x + across + room)
    while any(start < e and s < end and abs(y + down - other) < 13.0 for s, e, other in taken):
        down += 13.0
    taken.append((start, end, y + down))
    drawing.text(point, label.words, "end" if left else "start", (across, down), label.kind)


__all__ = ["DrawnLeg", "HangingPose", "HangingWords", "hanging_figure", "world_axes"]
