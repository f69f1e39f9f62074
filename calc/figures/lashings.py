"""Drawings of loads that are tied down: straps against friction, and plan and side of a load on its deck."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Figure
from calc.figures.drawing import Anchor, Drawing, LineKind
from calc.figures.graph import Axis, Graph
from calc.words.facts import Quantity
from calc.words.writer import Writer

_MOST_DRAWN = 30.0
"""Straps at the top of the graph at most."""
_CLOSE = 0.9
"""From this share of its limit a tie-down is drawn as close to it."""
_FROM, _TO, _STEPS = 0.1, 0.6, 50
_BETWEEN, _ROW = 48.0, 13.0
"""Room between plan and side view, and for each row of names there [drawing units]."""


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
    """A row of tie-downs: its number in words, which ways its pieces pull (none: over the top), the share of its limit [-]
    and the same in words for each piece (for one, over the top), how many, and how far they reach along, across and
    down [m]. A share is None where the piece does not count.
    """

    place: str
    ways: Sequence[tuple[int, int]]
    shares: Sequence[float | None]
    words: Sequence[str]
    number: int
    reach_m: tuple[float, float, float]

    def line(self, piece: int) -> LineKind:
        """Slack where a piece does not count, stop where it is over its limit, careful close to it."""
        share = self.shares[piece if self.ways else 0]
        if share is None:
            return "leg-slack"
        return "leg-stop" if exceeds(share, 1.0) else "leg-careful" if share > _CLOSE else "leg"


@dataclass(frozen=True)
class _Run:
    """One tie-down as drawn: its ends on the load and on the deck, forward, left and up [m]."""

    on_load: tuple[float, float, float]
    on_deck: tuple[float, float, float]


_Drawn = Sequence[tuple[DrawnLashing, list[_Run]]]


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
    """Plan above, side below, in one scale, with their dimensions; the truck drives to the right. Each piece carries the
    number of its row and its own share. Words: figure-plan, figure-side, figure-front, figure-size.
    """
    runs = [(lashing, _runs(load, lashing)) for lashing in lashings]
    ends = [run.on_deck for _, of_row in runs for run in of_row]
    wide = max([load.width_m / 2, *(abs(end[1]) for end in ends)])
    long = max([load.length_m / 2, *(abs(end[0]) for end in ends)])
    lowest = min(0.0, *(end[2] for end in ends))
    drawing = Drawing(400, 470, 62)
    rows = _rows_at_a_corner(runs)
    drawn = load.height_m + 2 * wide - lowest
    room = drawing.height - 2 * drawing.margin - _BETWEEN - _ROW * rows
    scale = min((drawing.width - 2 * drawing.margin) / (2 * long), room / drawn)
    lift = load.height_m + wide + (_BETWEEN + _ROW * rows) / scale
    drawing.fit([(-long, lowest), (long, lift + wide)])
    _plan(drawing, load, runs, lift)
    _side(drawing, load, runs, long)
    _dimensions(drawing, load, lashings[0], _Extent(long, lift), writer)
    drawing.text((-long, lift + wide), writer.text("figure-plan"), "start", (0, -34), "small")
    drawing.text((-long, load.height_m), writer.text("figure-side"), "start", (0, -10), "small")
    drawing.text((long, lift - wide), writer.text("figure-front"), "end", (0, 20 + _ROW * rows), "small")
    drawing.text((0.0, 0.0), load.weight, shift=(0, 52), kind="strong")
    return Figure(drawing.svg(caption, tall=True), caption)


@dataclass(frozen=True)
class _Extent:
    """How far the drawing reaches to the front, and how high the middle of the plan lies on the sheet [m]."""

    long_m: float
    lift_m: float


def _dimensions(
    drawing: Drawing, load: DrawnLoad, first: DrawnLashing, extent: _Extent, writer: Writer
) -> None:
    """Length, width and height of the load, height of its balance point, and how far the first row reaches."""

    def words(metres: float) -> str:
        return writer.text("figure-size", size=Quantity(metres, "length"))

    long, lift, x, y = extent.long_m, extent.lift_m, load.length_m / 2, load.width_m / 2
    along, across, down = first.reach_m
    up = min(down, load.height_m)
    drawing.dimension((x, 0.0), (-x, 0.0), words(load.length_m), 16)
    drawing.dimension((-long, lift - y), (-long, lift + y), words(load.width_m), 10)
    drawing.dimension((-long, 0.0), (-long, load.height_m), words(load.height_m), 10)
    drawing.dimension((0.0, 0.0), (0.0, load.centre_m), words(load.centre_m), 12)
    if along > 0.0:
        drawing.dimension((x + along, 0.0), (x, 0.0), words(along), 16)
    if across > 0.0:
        drawing.dimension((long, lift + y + across), (long, lift + y), words(across), 10)
    if down > 0.0:
        drawing.dimension((long, up), (long, up - down), words(down), 10)


def _plan(drawing: Drawing, load: DrawnLoad, runs: _Drawn, lift: float) -> None:
    """The load from above."""
    x, y = load.length_m / 2, load.width_m / 2
    drawing.area("load", (-x, lift - y), (x, lift - y), (x, lift + y), (-x, lift + y))
    if load.blocked:
        drawing.line("ground", (x, lift - y), (x, lift + y))
    for lashing, of_row in runs:
        for piece, run in enumerate(of_row):
            start, end = run.on_load, run.on_deck
            drawing.line(lashing.line(piece), (start[0], lift + start[1]), (end[0], lift + end[1]))
            if not lashing.ways and piece % 2 == 0:
                drawing.line(lashing.line(piece), (start[0], lift - y), (start[0], lift + y))
    _name_pieces(drawing, runs, lift)


def _named(lashing: DrawnLashing, of_row: list[_Run]) -> list[_Run]:
    """The pieces that carry number and share: each, and of a row over the top the first."""
    return of_row if lashing.ways else of_row[:1]


def _rows_at_a_corner(runs: _Drawn) -> int:
    """How many names stand above each other under the plan at most."""
    ends = [run.on_deck for lashing, of_row in runs for run in _named(lashing, of_row)]
    below = [end[0] > 0 for end in ends if end[1] <= 0]
    return max(below.count(True), below.count(False))


def _name_pieces(drawing: Drawing, runs: _Drawn, lift: float) -> None:
    """Number and share at the end of each piece; where two rows end in one corner, one above the other."""
    taken: dict[tuple[bool, bool], int] = {}
    for lashing, of_row in runs:
        named = _named(lashing, of_row)
        for run, words in zip(named, lashing.words, strict=True):
            at = run.on_deck
            corner = (at[0] > 0, at[1] > 0)
            before = taken.get(corner, 0)
            taken[corner] = before + 1
            shift = (0, -6 - _ROW * before) if corner[1] else (0, 14 + _ROW * before)
            anchor: Anchor = "end" if corner[0] else "start"
            drawing.text((at[0], lift + at[1]), f"{lashing.place}: {words}", anchor, shift, "note")


def _side(drawing: Drawing, load: DrawnLoad, runs: _Drawn, long: float) -> None:
    """The load from its right-hand side, on the deck."""
    x = load.length_m / 2
    drawing.area("load", (-x, 0.0), (x, 0.0), (x, load.height_m), (-x, load.height_m))
    drawing.line("ground", (-long, 0.0), (long, 0.0))
    if load.blocked:
        drawing.line("ground", (x, 0.0), (x, load.height_m))
    drawing.circle("pick", (0.0, load.centre_m), 4.0, on_sheet=True)
    for lashing, of_row in runs:
        for piece, run in enumerate(of_row):
            ends = (run.on_load[0], run.on_load[2]), (run.on_deck[0], run.on_deck[2])
            drawing.line(lashing.line(piece), *ends)


__all__ = ["DrawnLashing", "DrawnLoad", "StrapCurve", "lashing_figure", "strap_figure"]
