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

    def with_lengths(self, lengths_m: tuple[float, ...]) -> HungLoad:
        """The same load on legs of other lengths [m]."""
        return HungLoad(self.names, self.picks, lengths_m, self.ratings_kg, self.centre, self.weight_n)


@dataclass(frozen=True)
class AtRest:
    """The load at rest: straight up in its own axes, pulls [N], angles of the legs from the horizontal [deg] or None for a
    slack one, how far it tips [deg].
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
    tensions = rest.tensions_n(load.weight_n, load.lengths_m)
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

    def settled(lengths_m: Sequence[float], start: Vector) -> SpringyRest | None:
        return springy_rest(load.picks, lengths_m, load.centre, load.weight_n, stiffness, start)

    even = settled(load.lengths_m, hook)
    start = even.hook if even else hook
    found: list[ShortLink] = []
    for short in range(len(load.picks)):
        lengths = [
            length - (LINK_PITCH_IN_BARS * bar_m if leg == short else 0.0)
            for leg, length in enumerate(load.lengths_m)
        ]
        moved = settled(lengths, start) if _reach_each_other(load.picks, lengths) else None
        if moved:
            pull = max(moved.tensions_n)
            found.append(ShortLink(pull, short, moved.tensions_n.index(pull)))
    worst = max(found, key=lambda link: link.pull_n, default=None)
    return SpringyShare(even.tensions_n if even else None, worst)


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
    "AtRest",
    "HungLoad",
    "Pair",
    "ShortLink",
    "Side",
    "SpringyShare",
    "at_rest",
    "farthest_from_meeting",
    "lengths_to_level",
    "low_sides",
    "share_by_stretch",
]
