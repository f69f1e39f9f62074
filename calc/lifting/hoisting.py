"""What a load pulls while a hoist starts it, stops it or takes its slack up.

A load [kg] hangs by a spring that its weight stretches by d. Whatever the hook does, the pull is the load times gravity and its
own acceleration, m (g + a). Stopped or started in no time at a speed v, or lifted by a hook that comes up at v when the slack is
gone, the load's energy m v^2 / 2 goes into the spring beyond its rest: the pull rises by m v sqrt(k/m) = W v / sqrt(g d).
No even start or stop adds more than twice m a, since a spring under a pull that comes at once goes twice as far; and none
adds more than the sudden one. Losses are left out, so the truth is lower. One change of speed from rest: the next one may add
to what still swings.
"""

from __future__ import annotations

import math

from calc.lifting.chain_spring import solid_stiffness_n
from calc.quantities import STANDARD_GRAVITY_M_PER_S2

HAND_FACTOR = 1.10
"""What a hand chain hoist is counted for [-]: the least factor for lifts on land (0027/ND, Table 5-1, loads of 3 to 100 t, smaller
ones as 3 t; a copy). Minnesota Rules 1305.1607 asks for none. A hand that pulls its chain at 1 m/s and stops it within 0.125 m,
on a hoist whose chain runs ten times as far as the load or more, adds no more than 2 x (1/10) x 1^2 / (2 x 0.125) / g = 0.08
(our own bounds of speed and way, no source).
"""

ROPE_STIFFEST_N_PER_M2 = 62_800e6
"""Pull per unit of stretch of wire rope over its diameter squared [N/m2]: 80,000 N/mm2 on 0.785 d^2 (0027/ND, 5.6.13). The stiffest
figure printed; a softer rope jerks less."""

_FPM_M_PER_S = 0.3048 / 60.0
_CLASSES = ((1.05, 0.17), (1.20, 0.68))
"""Least factor and what a speed of 1 m/s adds [-], hoisting classes HC1 and HC4 of EN 13001-2 (from memory, not read)."""


def law_factor(speed_m_per_s: float) -> float:
    """What a power hoist is counted for by its speed [m/s], at least [-]: 15 percent under 30 ft/min, half a percent for each
    foot a minute up to 100 ft/min, 50 percent from there on (Minnesota Rules 1305.1607, subpart 2, item A).

    >>> [round(law_factor(fpm * 0.00508), 3) for fpm in (16, 30, 60, 100, 200)]
    [1.15, 1.15, 1.3, 1.5, 1.5]
    """
    return 1.0 + min(0.50, max(0.15, 0.005 * speed_m_per_s / _FPM_M_PER_S))


def class_factors(speed_m_per_s: float) -> tuple[float, float]:
    """The factors of the softest and the stiffest hoisting class of EN 13001-2 [-] at a speed up to 1.5 m/s (from memory).

    >>> [round(one, 3) for one in class_factors(1.5)]
    [1.305, 2.22]
    """
    (low, low_by), (high, high_by) = _CLASSES
    return low + low_by * speed_m_per_s, high + high_by * speed_m_per_s


def even_acceleration(speed_m_per_s: float, distance_m: float) -> float:
    """Acceleration [m/s2] of an even start to, or stop from, a speed [m/s] within a distance [m] over 0: v^2 / (2 s).

    >>> even_acceleration(0.5, 0.25)
    0.5
    """
    return speed_m_per_s**2 / (2.0 * distance_m)


def even_jerk_n(load_kg: float, acceleration_m_per_s2: float) -> float:
    """The most that an even start or stop adds to the weight [N], however springy the string: 2 m a.

    >>> even_jerk_n(500.0, 0.4)
    400.0
    """
    return 2.0 * load_kg * acceleration_m_per_s2


def sudden_jerk_n(load_kg: float, speed_m_per_s: float, rest_stretch_m: float) -> float:
    """The most that any one start, stop or catch at a speed [m/s] adds to the weight [N], in a string that the load at rest
    stretches by rest_stretch_m [m], over 0: W v / sqrt(g d).

    >>> round(sudden_jerk_n(500.0, 0.2, 0.010))
    3132
    """
    return load_kg * speed_m_per_s * math.sqrt(STANDARD_GRAVITY_M_PER_S2 / rest_stretch_m)


def least_stretch_m(load_kg: float, kind: str, thick_m: float, long_m: float) -> float:
    """The least that a load stretches chain of a wire [m], or wire rope of a diameter [m], of a length [m]: chain as two bars
    of solid steel, rope by the stiffest figure printed.

    >>> round(least_stretch_m(1000.0, "wire-rope", 0.010, 2.0) * 1000, 2)
    3.12
    """
    stiffness_n = ROPE_STIFFEST_N_PER_M2 * thick_m**2 if kind == "wire-rope" else solid_stiffness_n(thick_m)
    return load_kg * STANDARD_GRAVITY_M_PER_S2 * long_m / stiffness_n


__all__ = [
    "HAND_FACTOR",
    "ROPE_STIFFEST_N_PER_M2",
    "class_factors",
    "even_acceleration",
    "even_jerk_n",
    "law_factor",
    "least_stretch_m",
    "sudden_jerk_n",
]
