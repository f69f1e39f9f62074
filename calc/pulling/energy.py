"""Stretch, stored energy and the jerk of a falling load.

Chain as a spring: EA = modulus x 2 x (pi d2 / 4), modulus by DNV-OS-E301 for studless mooring chain, carried down to
shop sizes as an order of magnitude. Drop: n = 1 + sqrt(1 + 2h / static stretch), a weightless bar without losses
(Gere, Mechanics of Materials, section 2.8).
"""

from __future__ import annotations

import math

from calc.declaration import Citation
from calc.tables import Row, number, table


def _modulus_row(quantity: str) -> Row:
    return table("chain-modulus").one(chain="studless_r4", quantity=quantity)


def chain_modulus_pa(wire_m: float) -> float:
    """Modulus of chain [Pa] on both sides of the link, for a wire [m]; about a quarter of solid steel's.

    DNV-OS-E301 (2010), studless R4, seen in a copy: (54.5 - 0.025 d/mm) GPa. Made for 60 to 200 mm; smaller is carried over.
    """
    constant, fall = number(_modulus_row("modulus_constant")), number(_modulus_row("modulus_fall_per_mm"))
    return (constant - fall * wire_m * 1000.0) * 1e9


def chain_modulus_citation() -> Citation:
    """Where the modulus stands."""
    row = _modulus_row("modulus_constant")
    return Citation(row["source"], row["locator"])


def chain_stiffness_n_per_m(wire_m: float, length_m: float) -> float:
    """Pull per stretch [N/m] of a chain of the wire [m] and length [m]."""
    return chain_modulus_pa(wire_m) * 2 * math.pi / 4 * wire_m**2 / length_m


def stretch_m(force_n: float, stiffness_n_per_m: float) -> float:
    """Stretch [m] under a force [N]."""
    return force_n / stiffness_n_per_m


def stored_energy_j(force_n: float, stiffness_n_per_m: float) -> float:
    """Energy [J] that a stretched line holds: half of force times stretch."""
    return force_n**2 / (2 * stiffness_n_per_m)


def drop_factor(height_m: float, static_stretch_m: float) -> float:
    """How many times its weight a load pulls [-] when it falls a height [m] into a line that its weight at rest would
    stretch by static_stretch_m [m]. A fall of nothing (let go on a taut line) gives 2.
    """
    return 1.0 + math.sqrt(1.0 + 2.0 * height_m / static_stretch_m)


def drop_speed_m_per_s(height_m: float, gravity_m_per_s2: float) -> float:
    """Speed [m/s] after a free fall of a height [m]."""
    return math.sqrt(2.0 * gravity_m_per_s2 * height_m)
