"""A stiff load on one hook: how it hangs, how springy legs share it, and which leg lengths hang it level.

Built on calc.lifting.hanging. Which side is which: right, back and up are the load's own axes, level before the lift.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Literal

from calc.lifting.chain_spring import chain_stiffness_n
from calc.lifting.hanging import (
    Rest,
    SpringyRest,
    Vector,
    dot,
    level_lengths,
    minus,
    resting_places,
    springy_rest,
)
from calc.words.facts import Absent, absent

LEVEL_WITHIN_DEG = 0.5
"""A load that tips less than this is called level."""

LINK_PITCH_IN_BARS = 3.0
"""Pitch of a lifting-chain link in bar diameters (EN 818-2, from memory)."""

ROPE_LEGS_DIFFER = 0.01
"""By how much of its length a leg of rope or web may be shorter than the others [-]: half a percent either way (pattern of ASME
B30.9 for wire rope slings, from memory, not read). Web may differ more, but stretches far more than the chain that stands for it here.
"""

_AS_LOW = 0.4
"""A side goes low too if its share of the lean is over this part of the other's."""

Side = Literal["right", "left", "back", "front"]


@dataclass(frozen=True)
class HungLoad:
    """A load and its legs: names, picks and lengths [m] of the legs, ratings [kg] or None, balance point [m], weight [N]."""

    names: tuple[str, ...]
    picks: tuple[Vector, ...]
    lengths_m: tuple[float, ...]
    ratings_kg: tuple[float | None, ...]
    centre: Vector
    weight_n: float

    def places(self) -> list[Rest]:
        """Where the load would rest, deepest first; empty if the legs cannot meet."""
        return resting_places(self.picks, self.lengths_m, self.centre)

    def is_upright(self, rest: Rest) -> bool:
        """Whether the hook is over the picks that carry it."""
        return rest.hook_is_over(self.picks, self.centre)

    def upright_places(self) -> list[Rest]:
        """The places where it would rest upright, deepest first."""
        return [rest for rest in self.places() if self.is_upright(rest)]

    def with_centre(self, centre: Vector) -> HungLoad:
        """The same load with its balance point elsewhere."""
        return HungLoad(self.names, self.picks, self.lengths_m, self.ratings_kg, centre, self.weight_n)

    def with_lengths(self, lengths_m: tuple[float, ...]) -> HungLoad:
        """The same load on legs of other lengths [m]."""
        return HungLoad(self.names, self.picks, lengths_m, self.ratings_kg, self.centre, self.weight_n)


@dataclass(frozen=True)
class AtRest:
    """The load at rest: straight up in its own axes, the largest pull that each leg may have [N], angles of the legs from the
    horizontal [deg] or None for a slack one, how far it tips [deg].
    """

    rest: Rest
    up: Vector
    tensions_n: tuple[float, ...]
    angles_deg: tuple[float | None, ...]
    tilt_deg: float

    @property
    def lowest_angle_deg(self) -> float:
        """Smallest angle of a tight leg from the horizontal [deg]."""
        return min(angle for angle in self.angles_deg if angle is not None)

    @property
    def level(self) -> bool:
        """Whether it hangs level."""
        return self.tilt_deg < LEVEL_WITHIN_DEG

    def headroom_m(self, picks: Sequence[Vector]) -> float:
        """How far the hook stands over the lowest pick [m], measured plumb."""
        return max(dot(minus(self.rest.hook, pick), self.up) for pick in picks)


def at_rest(load: HungLoad, rest: Rest) -> AtRest:
    """Pulls, leg angles and tip of a load at one of its resting places."""
    up = rest.up(load.centre)
    tensions = rest.largest_n(load.weight_n, load.lengths_m)
    angles: list[float | None] = []
    for pick, length, tension in zip(load.picks, load.lengths_m, tensions, strict=True):
        sine = dot(minus(rest.hook, pick), up) / length
        angles.append(math.degrees(math.asin(max(-1.0, min(1.0, sine)))) if tension > 0 else None)
    tilt = math.degrees(math.atan2(math.hypot(up[0], up[1]), up[2]))
    return AtRest(rest, up, tensions, tuple(angles), tilt)


def low_sides(at: AtRest) -> tuple[Side, ...]:
    """Which side goes low, or two for a corner; none if level."""
    if at.level:
        return ()
    right, back = -at.up[0], -at.up[1]
    sides: list[Side] = []
    if abs(right) > _AS_LOW * abs(back):
        sides.append("right" if right > 0 else "left")
    if abs(back) > _AS_LOW * abs(right):
        sides.append("back" if back > 0 else "front")
    return tuple(sides)


# ------------------------------------------------------------------------------------------ springy legs


@dataclass(frozen=True)
class ShortLink:
    """One leg a link shorter: the hardest pull then [N], which leg is short and which one pulls."""

    pull_n: float
    short_leg: int
    pulling_leg: int


@dataclass(frozen=True)
class SpringyShare:
    """Pulls on springy legs [N], and the worst of one leg a link shorter; None where no rest was found."""

    tensions_n: tuple[float, ...] | None
    worst: ShortLink | None


def share_by_stretch(load: HungLoad, hook: Vector, bar_m: float) -> SpringyShare:
    """Share the load by the stretch of chain legs of a bar [m]; then shorten each leg by a link in turn, from where it
    hangs with none shortened. `hook` is where it hangs on stiff legs.
    """
    stretch_n = chain_stiffness_n(bar_m)
    stiffness = [stretch_n / length for length in load.lengths_m]
    even = springy_rest(load.picks, load.lengths_m, load.centre, load.weight_n, stiffness, hook)
    start = even.hook if even else hook
    found: list[ShortLink] = []
    for short in range(len(load.picks)):
        moved = _with_a_leg_short(load, short, LINK_PITCH_IN_BARS * bar_m, start, stretch_n)
        if moved:
            pull = max(moved.tensions_n)
            found.append(ShortLink(pull, short, moved.tensions_n.index(pull)))
    worst = max(found, key=lambda link: link.pull_n, default=None)
    return SpringyShare(even.tensions_n if even else None, worst)


# ------------------------------------------------------------------------------------------ the worst case


@dataclass(frozen=True)
class WorstCase:
    """The worst of a balance point that may be off, and of one leg a link shorter.

    pulls_n -- the largest pull in each leg [N]; None where no rest was found with any leg a link shorter
    tilt_deg, lowest_angle_deg -- the furthest tip, and the flattest leg that carries
    rolls_over -- whether nothing holds the load upright somewhere within the tolerance
    """

    pulls_n: tuple[float, ...] | None
    tilt_deg: float
    lowest_angle_deg: float
    rolls_over: bool


_OFF = (-1.0, 0.0, 1.0)


def worst_case(load: HungLoad, tolerance_m: float, bar_m: float, differ: float = 0.0) -> WorstCase:
    """The worst over the balance point where it was said, and off by the tolerance [m] every way (the corners of a box, the
    middles of its edges and sides); on stiff legs, and on chain legs of a bar [m] with each leg in turn a link shorter, or
    shorter by the part `differ` of its length [-].
    """
    x, y, z = load.centre
    moved = [
        load.with_centre((x + a * tolerance_m, y + b * tolerance_m, z + c * tolerance_m))
        for a in _OFF
        for b in _OFF
        for c in _OFF
    ]
    places = [(one, one.upright_places()) for one in moved]
    rests = [at_rest(one, rest) for one, upright in places for rest in upright]
    pulls = [at.tensions_n for at in rests]
    shortest = [
        share
        for one, upright in places
        if upright and one.centre[2] == z
        for share in _legs_short(one, upright[0].hook, bar_m, differ)
    ]
    return WorstCase(
        tuple(max(leg) for leg in zip(*pulls, *shortest, strict=True)) if shortest else None,
        max(at.tilt_deg for at in rests),
        min(at.lowest_angle_deg for at in rests),
        any(not upright for _, upright in places),
    )


def _legs_short(load: HungLoad, hook: Vector, bar_m: float, differ: float) -> list[tuple[float, ...]]:
    """Pulls on chain legs of a bar [m] with each leg in turn a link shorter, or shorter by a part of its length where that is
    more [N], where a rest was found.
    """
    link_m = LINK_PITCH_IN_BARS * bar_m
    stretch_n = chain_stiffness_n(bar_m)
    cuts = [(leg, link_m) for leg in range(len(load.picks))]
    cuts += [(leg, differ * long_m) for leg, long_m in enumerate(load.lengths_m) if differ * long_m > link_m]
    found = [_with_a_leg_short(load, leg, by_m, hook, stretch_n) for leg, by_m in cuts]
    return [rest.tensions_n for rest in found if rest is not None]


def _with_a_leg_short(
    load: HungLoad, short: int, by_m: float, start: Vector, stretch_n: float
) -> SpringyRest | None:
    """The load on legs that take a pull for each part of their length that they stretch [N], one of them shorter by `by_m`
    [m], let down from a hook point near by.
    """
    stiffness = [stretch_n / length for length in load.lengths_m]
    lengths = [length - (by_m if leg == short else 0.0) for leg, length in enumerate(load.lengths_m)]
    if not _reach_each_other(load.picks, lengths):
        return None
    return springy_rest(load.picks, lengths, load.centre, load.weight_n, stiffness, start)


def _reach_each_other(picks: Sequence[Vector], lengths_m: Sequence[float]) -> bool:
    """Whether any two of the legs can meet: all have a length left, and none two picks stand further apart than it."""
    return min(lengths_m) > 0 and all(
        math.dist(one[0], other[0]) < one[1] + other[1]
        for one, other in combinations(list(zip(picks, lengths_m, strict=True)), 2)
    )


# ------------------------------------------------------------------------------------------ reach and level


@dataclass(frozen=True)
class Pair:
    """Two legs, the first before the second, how far their picks stand apart [m], and how much their lengths lack [m]."""

    first: int
    second: int
    apart_m: float
    lacking_m: float


def farthest_from_meeting(load: HungLoad) -> Pair:
    """The pair of legs that is farthest from meeting in one hook."""
    pairs = []
    for second in range(len(load.picks)):
        for first in range(second):
            apart = math.dist(load.picks[second], load.picks[first])
            pairs.append(Pair(first, second, apart, apart - load.lengths_m[second] - load.lengths_m[first]))
    return max(pairs, key=lambda pair: pair.lacking_m)


def lengths_to_level(load: HungLoad, at: AtRest) -> tuple[float, ...] | Absent:
    """Leg lengths [m] that hang it level, by shortening only; its own if it hangs level."""
    if at.level:
        return load.lengths_m
    lengths = level_lengths(load.picks, load.lengths_m, load.centre)
    if lengths is None:
        return absent("leg-too-short-to-level")
    levelled = load.with_lengths(lengths)
    upright = [rest for rest in levelled.places() if levelled.is_upright(rest)]
    # The tip counts alone, which does not depend on how the legs share.
    if not any(at_rest(levelled, rest).level for rest in upright):
        return absent("no-lengths-level-it")
    return lengths


__all__ = [
    "LEVEL_WITHIN_DEG",
    "LINK_PITCH_IN_BARS",
    "ROPE_LEGS_DIFFER",
    "AtRest",
    "HungLoad",
    "Pair",
    "ShortLink",
    "Side",
    "SpringyShare",
    "WorstCase",
    "at_rest",
    "farthest_from_meeting",
    "lengths_to_level",
    "low_sides",
    "share_by_stretch",
    "worst_case",
]
