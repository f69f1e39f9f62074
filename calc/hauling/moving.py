"""What it takes to slide or roll a load along a floor or a ramp, and to hold it back: friction, tackle, winch drum, turns on a post.

Friction has two sides. For pulling the highest printed figure counts, for holding back the lowest: with one figure for both,
one of the two would be told too kindly. Figures: OpenStax, University Physics 1, Table 6.1 (standing and moving friction, text),
and the European best practices guideline on cargo securing, 8.2 (2006, a copy), whose moving friction is 70 percent of the
standing one.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

SHEAVE_LOSS = 0.10
"""Part of the load that each sheave adds to the pull (US Navy, NAVEDTRA 14043: roughly 10 percent; sailors say 5 to 8)."""


@dataclass(frozen=True)
class Surface:
    """Friction [-]: what may have to be overcome to start and to keep moving, and what surely holds back."""

    start: float
    keep: float
    hold: float


SURFACES = {
    "wood-on-wood": Surface(0.5, 0.35, 0.21),
    "steel-on-wood": Surface(0.5, 0.35, 0.14),
    "steel-on-steel": Surface(0.6, 0.3, 0.14),
    "rubber-on-concrete": Surface(1.0, 0.7, 0.21),
}
"""Pairs of materials, dry. Holding: 70 percent of the lowest standing friction that tables/friction prints for the two materials,
as tie-downs count it: planed wood on plywood 0.3, planed wood on steel 0.2, smooth metal on itself 0.2, rubber track 0.3."""
NOT_KNOWN = Surface(1.0, 0.7, 0.0)
"""A pair that nobody knows, or one that is oily, wet or icy: as hard to pull as any, and holding nothing."""


def along_ramp_n(load_n: float, slope_rad: float, friction: float) -> float:
    """Pull [N] along a ramp that moves a load [N] up it: W (sin a + mu cos a). A negative friction holds it back.

    >>> along_ramp_n(1000.0, 0.0, 0.5)
    500.0
    """
    return load_n * (math.sin(slope_rad) + friction * math.cos(slope_rad))


def holding_back_n(load_n: float, slope_rad: float, friction: float) -> float:
    """Pull [N] that keeps a load [N] from running down a ramp, none where its friction does."""
    return max(0.0, along_ramp_n(load_n, slope_rad, -friction))


def slides_at_rad(friction: float) -> float:
    """Slope [rad] at which a load begins to slide by itself."""
    return math.atan(friction)


def hauling_pull_n(pull_n: float, parts: int, sheaves: int) -> float:
    """Pull [N] on the hauling part of a tackle that gives `pull_n` [N] with so many parts at the moving block.

    The navy's allowance: W (1 + 0.1 s) / n.

    >>> round(hauling_pull_n(600.0, 3, 3))
    260
    """
    return pull_n * (1.0 + SHEAVE_LOSS * sheaves) / parts


def pull_on_layer_n(first_n: float, drum_m: float, rope_m: float, layer: int) -> float:
    """Pull [N] of a winch on a layer of rope: the torque stays, the arm grows by a rope each layer.

    first_n -- on the first layer [N]; drum_m -- bare drum [m]; rope_m -- diameter of the rope [m]

    >>> round(pull_on_layer_n(20_000.0, 0.19, 0.01, 3))
    16667
    """
    return first_n * (drum_m + rope_m) / (drum_m + (2 * layer - 1) * rope_m)


def tail_pull_n(held_n: float, turns: float, friction: float) -> float:
    """Pull [N] on the tail of a rope that holds `held_n` [N] by turns on a post (Baker and Haynes, Engineering Statics, 9).

    >>> round(tail_pull_n(100.0, 4.5, 0.23), 2)
    0.15
    """
    return held_n * math.exp(-friction * 2 * math.pi * turns)


__all__ = [
    "NOT_KNOWN",
    "SHEAVE_LOSS",
    "SURFACES",
    "Surface",
    "along_ramp_n",
    "hauling_pull_n",
    "holding_back_n",
    "pull_on_layer_n",
    "slides_at_rad",
    "tail_pull_n",
]
