"""Statics of equal sling legs.

Question of the trade: how hard does each leg pull, how hard do the legs squeeze the load, how high must the hook be?
Each leg carries an equal share of the load upward; a leg at angle a from the horizontal must pull share / sin(a), and
pulls sideways with share / tan(a) (statics; the factor 1/sin is the sling-angle factor of OSHA's Guidance on Safe
Sling Use and of EN 818-4).
"""

from __future__ import annotations

import math
from typing import Literal

LOWEST_ANGLE_DEG = 30.0
"""Below this angle from the horizontal slings are not used (OSHA, Guidance on Safe Sling Use, general text)."""

CAREFUL_ANGLE_DEG = 45.0
"""Below this angle several rules already refuse; the pull rises fast with a small change of angle."""


Flatness = Literal["steep", "flat", "too-flat"]
"""How flat legs lie: too-flat under LOWEST_ANGLE_DEG, flat under CAREFUL_ANGLE_DEG, else steep."""
_ROUNDING_DEG = 1e-9


def flatness(angle_from_horizontal_deg: float) -> Flatness:
    """How flat legs at an angle [deg from horizontal, 0 to 90] lie; an angle on a bound is on its steep side.

    >>> flatness(30.0), flatness(29.9), flatness(45.0)
    ('flat', 'too-flat', 'steep')
    """
    if angle_from_horizontal_deg < LOWEST_ANGLE_DEG - _ROUNDING_DEG:
        return "too-flat"
    return "flat" if angle_from_horizontal_deg < CAREFUL_ANGLE_DEG - _ROUNDING_DEG else "steep"


def leg_tension_n(load_n: float, legs_counted: int, angle_from_horizontal_deg: float) -> float:
    """Pull in each leg [N]: load / (legs x sin angle). Range: 0 < angle <= 90, legs >= 1."""
    return load_n / legs_counted / math.sin(math.radians(angle_from_horizontal_deg))


def side_force_n(load_n: float, legs_counted: int, angle_from_horizontal_deg: float) -> float:
    """Level pull of each leg on the load [N]: load / (legs x tan angle). None at 90 degrees."""
    if angle_from_horizontal_deg == 90.0:
        return 0.0
    return load_n / legs_counted / math.tan(math.radians(angle_from_horizontal_deg))


def angle_factor(angle_from_horizontal_deg: float) -> float:
    """Sling-angle factor: pull in a leg for each unit of its upright share, 1 / sin(angle)."""
    return 1.0 / math.sin(math.radians(angle_from_horizontal_deg))


def angle_from_height_deg(height_m: float, half_spread_m: float) -> float:
    """Angle from the horizontal [deg] of a leg that rises `height_m` over `half_spread_m`."""
    return math.degrees(math.atan2(height_m, half_spread_m))


def height_from_leg_m(leg_length_m: float, half_spread_m: float) -> float:
    """Height of the hook over the picks [m], by Pythagoras. Needs leg_length > half_spread."""
    return math.sqrt(leg_length_m**2 - half_spread_m**2)


def legs_that_count(legs: int) -> int:
    """Legs taken to carry the load: 2 of 2, 3 and 4. On a stiff load two of four legs can carry it all, and one of three can
    carry half where the picks stand unevenly.
    """
    return min(legs, 2)


def legs_that_carry(legs: int, flexible: bool) -> int:
    """Legs taken to carry a load that is stiff, or that is said to give until three legs pull.

    >>> legs_that_carry(4, False), legs_that_carry(4, True), legs_that_carry(2, True)
    (2, 3, 2)
    """
    return min(legs, 3) if flexible else legs_that_count(legs)
