"""Stretch, stored energy and the jerk of a falling load.

Chain as a spring: see calc.lifting.chain_spring. Drop: n = 1 + sqrt(1 + 2h / static stretch), a weightless bar without losses
(Gere, Mechanics of Materials, section 2.8).
"""

from __future__ import annotations

import math

from calc.lifting.chain_spring import chain_modulus_citation, chain_modulus_pa, chain_stiffness_n


def chain_stiffness_n_per_m(wire_m: float, length_m: float) -> float:
    """Pull per stretch [N/m] of a chain of a wire [m] and a length [m], both over 0.

    >>> round(chain_stiffness_n_per_m(0.010, 2.0) / 1e6, 2)
    4.26
    """
    return chain_stiffness_n(wire_m) / length_m


def stretch_m(force_n: float, stiffness_n_per_m: float) -> float:
    """Stretch [m] under a force [N]; stiffness over 0.

    >>> stretch_m(9000.0, 3.0e6)
    0.003
    """
    return force_n / stiffness_n_per_m


def stored_energy_j(force_n: float, stiffness_n_per_m: float) -> float:
    """Energy [J] that a stretched line holds: half of force times stretch.

    >>> stored_energy_j(9000.0, 3.0e6)
    13.5
    """
    return force_n**2 / (2 * stiffness_n_per_m)


def drop_factor(height_m: float, static_stretch_m: float) -> float:
    """How many times its weight a load pulls [-] when it falls a height [m] into a line that its weight at rest would
    stretch by static_stretch_m [m]. A fall of nothing (let go on a taut line) gives 2.

    >>> drop_factor(0.0, 0.003), drop_factor(0.012, 0.003)
    (2.0, 4.0)
    """
    return 1.0 + math.sqrt(1.0 + 2.0 * height_m / static_stretch_m)


def drop_speed_m_per_s(height_m: float, gravity_m_per_s2: float) -> float:
    """Speed [m/s] after a free fall of a height [m], 0 or more, under gravity [m/s2].

    >>> round(drop_speed_m_per_s(0.5, 9.80665), 2)
    3.13
    """
    return math.sqrt(2.0 * gravity_m_per_s2 * height_m)


__all__ = [
    "chain_modulus_citation",
    "chain_modulus_pa",
    "chain_stiffness_n_per_m",
    "drop_factor",
    "drop_speed_m_per_s",
    "stored_energy_j",
    "stretch_m",
]
