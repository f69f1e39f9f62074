"""Drawings of loads that are tied down: straps against friction, and plan and side of a load on its deck."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Figure
from calc.figures.drawing import Anchor, Drawing, LineKind
from calc.figures.graph import Axis, Graph
from calc.words.writer import Writer

_MOST_DRAWN = 30.0
"""Straps at the top of the graph at most."""
_CLOSE = 0.9
"""From this share of its limit a tie-down is drawn as close to it."""
_FROM, _TO, _STEPS = 0.1, 0.6, 50


@dataclass(frozen=True)
class StrapCurve:
    """Straps over the top [-] against friction [-]: per_missing straps for each share of the weight that friction leaves,
    (asked - friction) / friction; and the friction and number of the case.
    """

    asked: float
    per_missing: float
    friction: float
    number: int

    def at(self, friction: float) -> float:
        """The exact number of straps for a friction."""
        return self.per_missing * max(0.0, self.asked - friction) / friction


def strap_figure(curve: StrapCurve, caption: str, writer: Writer) -> Figure:
    """The number of straps falls steeply with friction; the case is marked."""
    top = min(_MOST_DRAWN, max(4.0, 1.1 * curve.number, 1.1 * curve.at(_FROM)))
    places = [_FROM + (_TO - _FROM) * step / _STEPS for step in range(_STEPS + 1)]
    drawn = [(friction, curve.at(friction)) for friction in places if curve.at(friction) <= top]
    graph = Graph(
        Axis(0.0, _TO, writer.text("axis-friction")), Axis(0.0, top, writer.text("axis-straps")), writer
    )
    graph.curve(drawn)
    if curve.number <= top and curve.friction <= _TO:
        graph.dots([(curve.friction, float(curve.number))], "hook")
        graph.note(
            curve.friction, float(curve.number), writer.text("mark-straps", count=curve.number), "strong"
        )
    return Figure(graph.drawing.svg(caption), caption)


@dataclass(frozen=True)
class DrawnLoad:
    """A load on its deck [m]: length, width, height, height of its balance point, whether it stands against something in
    front, and its weight in words.
    """

    length_m: float
    width_m: float
    height_m: float
    centre_m: float
    blocked: bool
    weight: str


@dataclass(frozen=True)
class DrawnLashing:
    """A row of tie-downs: its words, the share of its limit [-] or None, which ways its pieces pull (none: over the top), how
    many, and how far they reach along, across and down [m].
    """

    words: str
    share: float | None
    ways: Sequence[tuple[int, int]]
    number: int
    reach_m: tuple[float, float, float]

    @property
    def line(self) -> LineKind:
        """Slack where it does not count, stop where it is over its limit, careful close to it."""
        if self.share is None:
            return "leg-slack"
        return "leg-stop" if exceeds(self.share, 1.0) else "leg-careful" if self.share > _CLOSE else "leg"


@dataclass(frozen=True)
class _Run:
    """One tie-down as drawn: its ends on the load and on the deck, forward, left and up [m]."""

    on_load: tuple[float, float, float]
    on_deck: tuple[float, float, float]


def _runs(load: DrawnLoad, lashing: DrawnLashing) -> list[_Run]:
    """Where the pieces of a row run: from the corners or the middle of a side; straps spread evenly along the load."""
    along, across, down = lashing.reach_m
    up, half_long, half_wide = min(down, load.height_m), load.length_m / 2, load.width_m / 2
    ways = [(forward, left, 0.0) for forward, left in lashing.ways]
    if not ways:
        places = [((2 * one + 1) / lashing.number - 1) * half_long for one in range(lashing.number)]
        ways = [(0, side, place) for place in places for side in (1, -1)]
    return [
        _Run(
            (forward * half_long + place, left * half_wide, up),
            (forward * (half_long + along) + place, left * (half_wide + across), up - down),
        )
        for forward, left, place in ways
    ]


def lashing_figure(load: DrawnLoad, lashings: Sequence[DrawnLashing], caption: str, writer: Writer) -> Figure:
    """Plan above, side below, in one scale; the truck drives to the right. Each row carries its number and share."""
    runs = [(lashing, _runs(load, lashing)) for lashing in lashings]
    ends = [run.on_deck for _, of_row in runs for run in of_row]
    wide = max([load.width_m / 2, *(abs(end[1]) for end in ends)])
    long = max([load.length_m / 2, *(abs(end[0]) for end in ends)])
    lift = load.height_m * 1.35 + wide
    drawing = Drawing(400, 430, 46)
    drawing.fit([(-long, min(0.0, *(end[2] for end in ends))), (long, lift + wide)])
    _plan(drawing, load, runs, lift)
    _side(drawing, load, runs, long)
    drawing.text((-long, lift + wide), writer.text("figure-plan"), "start", (0, -24), "small")
    drawing.text((-long, load.height_m), writer.text("figure-side"), "start", (0, -8), "small")
    drawing.text((long, lift - wide), writer.text("figure-front"), "end", (0, 16), "small")
    drawing.text((0.0, 0.0), load.weight, shift=(0, 20), kind="strong")
    return Figure(drawing.svg(caption), caption)


def _plan(
    drawing: Drawing, load: DrawnLoad, runs: Sequence[tuple[DrawnLashing, list[_Run]]], lift: float
) -> None:
    """The load from above."""
    x, y = load.length_m / 2, load.width_m / 2
    drawing.area("load", (-x, lift - y), (x, lift - y), (x, lift + y), (-x, lift + y))
    if load.blocked:
        drawing.line("ground", (x, lift - y), (x, lift + y))
    for lashing, of_row in runs:
        for run in of_row:
            start, end = run.on_load, run.on_deck
            drawing.line(lashing.line, (start[0], lift + start[1]), (end[0], lift + end[1]))
        if not lashing.ways:
            for run in of_row[::2]:
                drawing.line(lashing.line, (run.on_load[0], lift - y), (run.on_load[0], lift + y))
        at = (of_row[0] if lashing.ways else of_row[-2]).on_deck
        anchor: Anchor = "end" if at[0] > 0 else "start"
        drawing.text((at[0], lift + at[1]), lashing.words, anchor, (0, -6), "note")


def _side(
    drawing: Drawing, load: DrawnLoad, runs: Sequence[tuple[DrawnLashing, list[_Run]]], long: float
) -> None:
    """The load from its right-hand side, on the deck."""
    x = load.length_m / 2
    drawing.area("load", (-x, 0.0), (x, 0.0), (x, load.height_m), (-x, load.height_m))
    drawing.line("ground", (-long, 0.0), (long, 0.0))
    if load.blocked:
        drawing.line("ground", (x, 0.0), (x, load.height_m))
    drawing.circle("pick", (0.0, load.centre_m), 4.0, on_sheet=True)
    for lashing, of_row in runs:
        for run in of_row:
            drawing.line(lashing.line, (run.on_load[0], run.on_load[2]), (run.on_deck[0], run.on_deck[2]))


__all__ = ["DrawnLashing", "DrawnLoad", "StrapCurve", "lashing_figure", "strap_figure"]
