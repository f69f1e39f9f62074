"""What do tie-downs hold by the forces: against sliding and tipping, forward, rearward and to the sides?

Asked, in shares of the weight: 0.8 forward, 0.5 rearward, 0.5 sideways (49 CFR 393.102(a)(1), text; Directive 2014/47/EU
and EN 12195-1 ask the same); against tipping sideways 0.6 (EN 12195-1 of 2010 for lashings counted at LC, read in a
reprint: the load rolls with the truck; taken for every tipping sideways here, which is the stricter). Each direction alone;
the weight counts once (vertical factor 1.0 on the road).

Over the top (friction lashing), EN 12195-1, sliding: n >= (c - mu) W fs / (k mu sin(alpha) FT), alpha from the deck. FT is
the tension that the ratchet leaves in the strap (STF on its label, or measured), never its limit. How much of the pull
arrives on both sides together: k = 1.5 (edition of 2003, and near what rope friction on two edges leaves: 1 + exp(-0.25 pi)
= 1.46) or 2 (edition of 2010). Safety factor: 1.25 forward (from memory; a Spanish note gives 1.25 for all road transport
with k = 1.5), 1.1 else (copy). The stricter pair decides here: k = 1.5 with these factors.

Direct, sliding (formula from memory of EN 12195-1, derived here): cut the load free. A lashing with pull F, of whose length
L the part X lies against the move and Z down, pulls back F X/L and presses down F Z/L. With moving friction
mu' = 0.75 mu the balance along the move is sum F (X/L + mu' Z/L) + mu' W >= c W. Printed: the factors 0.96 and 1.04 of the
CSS Code, Annex 13 (tests/published/test_hauling.py).

Sharing (own statics): the load moves x against all lashings at once; each stretches x X/L and so strains x X/L^2. Of one
kind of lashing, all reach their limits at one strain, so the one with the least L^2/X gets there first, and each of the
others has then only its own strain's part of its limit. Short and straight takes the load first.

Pulls askew (own statics): a lashing to a corner also pulls square to the move. Nothing but a lashing that pulls the other way
may take that up here, since friction along the move is already counted. So of the side that pulls more only so much counts as
the other side balances, what holds least for its pull askew left out first: one lashing to one corner holds nothing, it
swings the load round. Lashings with pulls between nothing and these, in balance, are a bound from below.

Tipping (own statics): about the lower edge of the base on the side to which it tips, c h W <= b W + sum of lever arms. A
direct lashing fixed at height Z above the deck helps F (X/L) Z; its pull down is left out, since where along the base it
acts is not asked. Over the top, sideways only: the leg far from the ratchet has half the tension (k = 1.5). If it is the leg
on the far side, T/2 (w sin(alpha) + H cos(alpha)) - T H cos(alpha) is left, which may be nothing: then no number of straps
helps. Straps over the top give nothing against tipping forward or rearward here, since where they lie is not asked.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from calc.hauling.friction import moving_share
from calc.tables import number, table

Direction = Literal["forward", "rearward", "left", "right"]
DIRECTIONS: tuple[Direction, ...] = ("forward", "rearward", "left", "right")
"""Ways in which a load would move."""

ARRIVES_2003 = 1.5
"""How much of the tension of an over-the-top lashing arrives on both sides together (k of EN 12195-1, 2003)."""
ARRIVES_2010 = 2.0
"""The same in the edition of 2010, which takes both sides as alike."""
SAFETY_FORWARD = 1.25
"""Safety factor fs of over-the-top lashings against moving forward (EN 12195-1 of 2010, from memory; NTP 1038, copy)."""
SAFETY_ELSE = 1.1
"""The same rearward and to the sides (EN 12195-1 of 2010, copy)."""
TIPPING_SIDEWAYS = 0.6
"""Share of the weight that tips a load sideways (EN 12195-1 of 2010, copy)."""
FEWEST_OVER_THE_TOP = 2
"""Over-the-top lashings at least, whatever the sum says (user information of EN 12195-2, copy)."""
FAR_LEG = ARRIVES_2003 - 1.0
"""Part of the ratchet's tension that the leg on the other side of the load keeps [-]."""
BELOW_IS_FLAT_DEG = 30.0
"""Straps over the top that lie flatter than this press little: use another way (sea guides and the drivers' handbook, copy)."""


def sliding_share(direction: Direction) -> float:
    """Share of the weight [-] that pushes a load in a direction."""
    kind = {"forward": "forward", "rearward": "rearward"}.get(direction, "sideways")
    return number(table("tie-down-numbers").one(item="breaking_strength", quantity=f"{kind}_share_of_weight"))


def tipping_share(direction: Direction) -> float:
    """Share of the weight [-] that tips a load over in a direction."""
    return sliding_share(direction) if direction in ("forward", "rearward") else TIPPING_SIDEWAYS


def safety_factor(direction: Direction) -> float:
    """Safety factor of over-the-top lashings."""
    return SAFETY_FORWARD if direction == "forward" else SAFETY_ELSE


@dataclass(frozen=True)
class Direct:
    """One lashing from the load to the deck: how far it reaches forward and left (minus: rearward, right) and down from the
    load [m], what it may be pulled with [N], and the height over the deck at which it is fixed to the load, if that is
    less than it reaches down [m].
    """

    forward_m: float
    left_m: float
    down_m: float
    limit_n: float
    fixed_at_most_m: float = math.inf

    @property
    def fixed_at_m(self) -> float:
        """Height over the deck at which it is fixed to the load [m]."""
        return min(self.down_m, self.fixed_at_most_m)

    @property
    def length_m(self) -> float:
        """Its length in a straight line [m]."""
        return math.hypot(self.forward_m, self.left_m, self.down_m)

    @property
    def down_share(self) -> float:
        """Part of its pull that presses the load down [-]."""
        return self.down_m / self.length_m

    def askew(self, direction: Direction) -> float:
        """Part of its pull that is level and square to a direction [-], to one side positive."""
        return (self.left_m if direction in ("forward", "rearward") else self.forward_m) / self.length_m

    def against(self, direction: Direction) -> float:
        """Part of its pull that holds the load back from moving in a direction [-]; nothing if it pulls that way itself."""
        reach_m = {
            "forward": -self.forward_m,
            "rearward": self.forward_m,
            "left": -self.left_m,
            "right": self.left_m,
        }[direction]
        return max(0.0, reach_m) / self.length_m


@dataclass(frozen=True)
class OverTop:
    """One strap over the load: the tension at its ratchet [N], and how far its legs reach out and down [m]."""

    tension_n: float
    across_m: float
    down_m: float

    @property
    def angle_deg(self) -> float:
        """Angle of its legs to the deck [deg]."""
        return math.degrees(math.atan2(self.down_m, self.across_m))

    @property
    def down_share(self) -> float:
        """Part of the tension that presses down [-]: the sine of the angle."""
        return math.sin(math.radians(self.angle_deg))

    def presses_n(self, arrives: float = ARRIVES_2003) -> float:
        """What it presses the load down with [N]."""
        return arrives * self.tension_n * self.down_share

    def holds_upright_nm(self, width_m: float) -> float:
        """Moment against tipping sideways [N m], the far leg slack by half; never less than nothing."""
        angle = math.radians(self.angle_deg)
        upright, flat = width_m * math.sin(angle), self.down_m * math.cos(angle)
        return max(0.0, self.tension_n * (FAR_LEG * (upright + flat) - flat))


@dataclass(frozen=True)
class Held:
    """A load and what holds it. SI units.

    edge_along_m, edge_across_m -- from the balance point to the nearer end and side of the base
    centre_height_m -- of the balance point over the deck; width_m -- of the load where straps go over it
    blocking_n -- what blocking in front of the load holds
    """

    weight_n: float
    friction: float
    centre_height_m: float
    edge_along_m: float
    edge_across_m: float
    width_m: float
    direct: tuple[Direct, ...] = ()
    over: tuple[OverTop, ...] = ()
    blocking_n: float = 0.0

    def pressed_n(self, arrives: float = ARRIVES_2003) -> float:
        """What all straps over the top press down with [N]."""
        return sum(strap.presses_n(arrives) for strap in self.over)

    def blocked_n(self, direction: Direction) -> float:
        """What blocking holds in a direction [N]."""
        return self.blocking_n if direction == "forward" else 0.0


@dataclass(frozen=True)
class Balance:
    """What is asked and what is held in one direction, as forces [N] or moments [N m]."""

    direction: Direction
    asked: float
    held: float

    @property
    def used(self) -> float:
        """Part of what is held that is asked [-]; without bound where nothing holds."""
        if self.asked <= 0.0:
            return 0.0
        return self.asked / self.held if self.held > 0.0 else math.inf


def shares_of_limit(reaches: Sequence[float]) -> tuple[float, ...]:
    """Part of its own limit [-] that each lashing has when the first of them reaches its whole; `reaches` says how far the
    load must move for each to reach its limit.

    >>> shares_of_limit([1.0, 2.0])
    (1.0, 0.5)
    """
    return tuple(min(reaches) / one for one in reaches) if reaches else ()


def pulls_sliding_n(direct: Sequence[Direct], direction: Direction) -> tuple[float, ...]:
    """The pull of each direct lashing [N] when the first that holds against a direction reaches its limit; nothing for those
    that do not hold against it.
    """
    effects = [lashing.against(direction) for lashing in direct]
    return _pulls_n(direct, effects)


def _pulls_n(direct: Sequence[Direct], effects: Sequence[float]) -> tuple[float, ...]:
    """Pulls [N] when the first reaches its limit; `effects` is how much each is stretched by a unit of the move."""
    reaches = [
        lashing.length_m / effect for lashing, effect in zip(direct, effects, strict=True) if effect > 0.0
    ]
    shares = iter(shares_of_limit(reaches))
    return tuple(
        lashing.limit_n * next(shares) if effect > 0.0 else 0.0
        for lashing, effect in zip(direct, effects, strict=True)
    )


def balanced_n(
    direct: Sequence[Direct], pulls: Sequence[float], helps: Sequence[float], direction: Direction
) -> tuple[float, ...]:
    """The pulls [N] with those askew to a direction in balance: of the side that pulls more as much as the other side takes up,
    by how much each helps (against sliding, or against tipping) for its pull askew, the most first.

    >>> alone, pair = [Direct(-1, 1, 0, 10.0)], [Direct(-1, 1, 0, 10.0), Direct(-1, -1, 0, 6.0)]
    >>> balanced_n(alone, [10.0], [1.0], "forward"), balanced_n(pair, [10.0, 6.0], [1.0, 1.0], "forward")
    ((0.0,), (6.0, 6.0))
    """
    askew = [pull * lashing.askew(direction) for lashing, pull in zip(direct, pulls, strict=True)]
    kept = list(pulls)
    for side in (1.0, -1.0):
        left = sum(max(0.0, -side * one) for one in askew)
        pulling = [place for place, one in enumerate(askew) if side * one > 0.0]
        for place in sorted(
            pulling, key=lambda place: helps[place] / abs(direct[place].askew(direction)), reverse=True
        ):
            part = min(1.0, left / abs(askew[place]))
            kept[place] = part * pulls[place]
            left -= part * abs(askew[place])
    return tuple(kept)


def balanced_sliding_n(held: Held, direction: Direction) -> tuple[float, ...]:
    """The pull of each direct lashing [N] against sliding, shared by stretch and in balance to the sides."""
    return balanced_n(
        held.direct, pulls_sliding_n(held.direct, direction), _holds(held, direction), direction
    )


def _holds(held: Held, direction: Direction) -> tuple[float, ...]:
    """Part of each lashing's pull that holds against sliding [-], the friction that it adds included."""
    moving = moving_share() * held.friction
    return tuple(lashing.against(direction) + moving * lashing.down_share for lashing in held.direct)


def direct_hold_n(held: Held, direction: Direction) -> float:
    """What the direct lashings hold against sliding [N], the friction that they add included."""
    pulls, holds = balanced_sliding_n(held, direction), _holds(held, direction)
    return sum(pull * one for pull, one in zip(pulls, holds, strict=True))


def friction_hold_n(held: Held, direction: Direction, arrives: float = ARRIVES_2003) -> float:
    """What friction holds against sliding [N], the load standing still: of the weight, and of straps over the top."""
    pressed_n = held.pressed_n(arrives) / safety_factor(direction)
    return held.friction * (held.weight_n + pressed_n)


def sliding(held: Held, direction: Direction) -> Balance:
    """Sliding in a direction: the better of standing friction without the direct lashings, and moving friction with them."""
    standing = friction_hold_n(held, direction)
    moving = moving_share() * standing + direct_hold_n(held, direction)
    asked = sliding_share(direction) * held.weight_n
    return Balance(direction, asked, max(standing, moving) + held.blocked_n(direction))


def tipping(held: Held, direction: Direction) -> Balance:
    """Tipping over the lower edge in a direction: asked is what the weight does not balance itself [N m]."""
    edge_m = held.edge_along_m if direction in ("forward", "rearward") else held.edge_across_m
    asked = (tipping_share(direction) * held.centre_height_m - edge_m) * held.weight_n
    effects = [lashing.against(direction) * lashing.fixed_at_m for lashing in held.direct]
    pulls = balanced_n(held.direct, _pulls_n(held.direct, effects), effects, direction)
    moment = sum(pull * effect for pull, effect in zip(pulls, effects, strict=True))
    if direction in ("left", "right"):
        upright = sum(strap.holds_upright_nm(held.width_m) for strap in held.over)
        moment += upright / safety_factor(direction)
    return Balance(direction, asked, moment)


def lifting_off(held: Held, share_of_weight: float) -> tuple[float, float]:
    """What holds the load down on the deck [N]: asked, and held with every lashing at its limit or tension."""
    pressed = sum(lashing.limit_n * lashing.down_share for lashing in held.direct)
    return share_of_weight * held.weight_n, pressed + held.pressed_n()


def used_of_limits(held: Held, direction: Direction) -> tuple[float, ...]:
    """Part of its limit [-] that each direct lashing is asked for against sliding in a direction, the side that pulls more
    not relieved; nothing where the load does not move, held by standing friction and blocking alone.
    """
    pulls = pulls_sliding_n(held.direct, direction)
    total = direct_hold_n(held, direction)
    standing, blocked = friction_hold_n(held, direction), held.blocked_n(direction)
    asked = sliding_share(direction) * held.weight_n - blocked
    if asked <= standing:
        return tuple(0.0 for _ in held.direct)
    left = max(0.0, asked - moving_share() * standing)
    part = left / total if total > 0.0 else 1.0
    return tuple(part * pull / lashing.limit_n for lashing, pull in zip(held.direct, pulls, strict=True))


@dataclass(frozen=True)
class StrapCount:
    """How many straps over the top: the number, and the exact figure before it was rounded up."""

    number: int
    exact: float


def straps_needed(
    weight_n: float,
    friction: float,
    strap: OverTop,
    direction: Direction,
    arrives: float = ARRIVES_2003,
    safety: float | None = None,
) -> StrapCount:
    """How many straps over the top hold a load against sliding in a direction; two at least.

    Friction and tension above nothing; `safety` takes the place of the usual safety factor.
    """
    factor = safety_factor(direction) if safety is None else safety
    missing = max(0.0, sliding_share(direction) - friction) * weight_n
    exact = missing * factor / (friction * strap.presses_n(arrives))
    return StrapCount(max(FEWEST_OVER_THE_TOP, math.ceil(exact - 1e-9)), exact)


__all__ = [
    "ARRIVES_2003",
    "ARRIVES_2010",
    "BELOW_IS_FLAT_DEG",
    "DIRECTIONS",
    "FEWEST_OVER_THE_TOP",
    "Balance",
    "Direct",
    "Direction",
    "Held",
    "OverTop",
    "StrapCount",
    "balanced_n",
    "balanced_sliding_n",
    "direct_hold_n",
    "friction_hold_n",
    "lifting_off",
    "pulls_sliding_n",
    "shares_of_limit",
    "sliding",
    "sliding_share",
    "straps_needed",
    "tipping",
    "tipping_share",
    "used_of_limits",
]
