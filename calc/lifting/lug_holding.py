"""What holds a plate lug at its two ends: the pin through its hole, and the wall to which its foot is welded.

Question of the trade: does the pin bend, does the wall bend or tear out round the foot, is the fillet too small for the
plate? Statics of bars for the pin; for the wall the yield lines of a plate on two edges that turn freely, which is half of
what AISC 360 gives for a plate along a hollow section whose edges are stiff (Table K1.2, 2010, from memory; the tests find
the same mechanism by minimising). Every result is the load [N] at which the part reaches yield / factor.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.lifting.lug_strength import FootLoad, Lug

LEAST_FILLET_M = ((0.25 * 0.0254, 0.003175), (0.5 * 0.0254, 0.0047625), (0.75 * 0.0254, 0.00635))
"""Thickness of the thinner part up to which a fillet has at least this leg [m]: 1/8, 3/16, 1/4 in (AISC 360-10, Table J2.4, read in
a reprint)."""

THICKEST_LEAST_M = 0.0079375
"""Least leg on anything thicker [m]: 5/16 in, in one pass (the same table)."""

EDGE = 1 - 1e-9
"""A plate of 3/4 in typed in millimetres is still one of 3/4 in."""


def least_fillet_m(thinner_m: float) -> float:
    """Least leg [m] of a fillet where the thinner of the two parts has this thickness [m], so that the weld does not cool too
    fast and crack.

    >>> round(least_fillet_m(0.75 * 0.0254) / 0.0254, 4), round(least_fillet_m(0.0254) / 0.0254, 4)
    (0.25, 0.3125)
    """
    return next((leg for thick, leg in LEAST_FILLET_M if thinner_m * EDGE <= thick), THICKEST_LEAST_M)


@dataclass(frozen=True)
class OwnPin:
    """A pin of the reader's own in two jaws: its diameter, one jaw's thickness, the clear distance between the jaws and the lug
    between them [m]; its yield strength [Pa].
    """

    diameter_m: float
    jaw_m: float
    between_jaws_m: float
    lug_m: float
    yield_pa: float


def pin_shear_n(pin: OwnPin, factor: float) -> float:
    """Load [N] at which the pin is cut through at both faces of the lug: Fy / (root 3 x factor) at its middle, where the shear
    is 4/3 of its mean (Gere, shear in a round bar).

    >>> round(pin_shear_n(OwnPin(0.02, 0.01, 0.03, 0.02, 300e6), 3.0))
    27207
    """
    area_m2 = math.pi / 4 * pin.diameter_m**2
    return 2 * area_m2 * 3 / 4 * pin.yield_pa / (math.sqrt(3) * factor)


def pin_arm_m(pin: OwnPin) -> float:
    """Bending moment of the pin over half the load [m]: from the middle of a jaw to the middle of half the lug, each pressing
    evenly over its thickness. Play between them lengthens it.
    """
    return (pin.between_jaws_m + pin.jaw_m) / 2 - pin.lug_m / 4


def pin_bending_n(pin: OwnPin, factor: float) -> float:
    """Load [N] at which the pin bends: Fy / factor in its outer fibre, as a bar on two jaws.

    >>> round(pin_bending_n(OwnPin(0.02, 0.01, 0.03, 0.02, 300e6), 3.0))
    10472
    """
    modulus_m3 = math.pi / 32 * pin.diameter_m**3
    return 2 * pin.yield_pa / factor * modulus_m3 / pin_arm_m(pin)


@dataclass(frozen=True)
class Wall:
    """The wall under the foot: its thickness, and how far apart the ribs or corners stand that hold it on either side of the lug
    [m]; its yield strength [Pa].
    """

    thickness_m: float
    span_m: float
    yield_pa: float


def wall_pull_n(wall: Wall, lug: Lug) -> float:
    """Nominal straight pull [N] on the foot at which the wall folds along yield lines, both edges free to turn:
    Fy T^2 (L / B + 2 root(1 - t / B)). Range: lug thinner than the span.
    """
    ratio = lug.weld_length_m / wall.span_m + 2 * math.sqrt(1 - lug.thickness_m / wall.span_m)
    return wall.yield_pa * wall.thickness_m**2 * ratio


def wall_turn_nm(wall: Wall, lug: Lug) -> float:
    """Nominal moment [N m] across the lug at which the wall folds along both its sides: 2 m L with m = Fy T^2 / 4."""
    return wall.yield_pa * wall.thickness_m**2 / 2 * lug.weld_length_m


def straight_part(lug: Lug, pull: FootLoad) -> float:
    """Part of the pull that draws the wall straight out [-]: what goes along the lug, and bending in its plane as two halves of the
    foot that pull and press, 4 M / L (never under the mechanism).
    """
    return pull.along + 4 * pull.in_plane * lug.height_m / lug.weld_length_m


def wall_folds_n(wall: Wall, lug: Lug, pull: FootLoad) -> float:
    """Load [N] at which the wall folds, with its factor: the parts of straight pull and of bending across added."""
    across = pull.across * lug.height_m
    part = straight_part(lug, pull) / wall_pull_n(wall, lug) + across / wall_turn_nm(wall, lug)
    return 1 / (part * lug.design_factor)


def wall_shears_n(wall: Wall, lug: Lug) -> float:
    """Load [N] at which the wall is cut through along both runs of weld: Fy / (root 3 x factor) on 2 L T."""
    area_m2 = 2 * lug.weld_length_m * wall.thickness_m
    return wall.yield_pa / (math.sqrt(3) * lug.design_factor) * area_m2


def wall_holds_n(wall: Wall, lug: Lug, pull: FootLoad) -> float:
    """Load [N] at which the wall gives way, folding or cut through."""
    return min(wall_folds_n(wall, lug, pull), wall_shears_n(wall, lug))


__all__ = [
    "OwnPin",
    "Wall",
    "least_fillet_m",
    "pin_arm_m",
    "pin_bending_n",
    "pin_shear_n",
    "straight_part",
    "wall_folds_n",
    "wall_holds_n",
    "wall_pull_n",
    "wall_shears_n",
    "wall_turn_nm",
]
