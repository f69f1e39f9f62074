"""Chain as a spring: how much pull it takes to stretch it.

DNV-OS-E301 (2010), studless R4, seen in a copy: modulus (54.5 - 0.025 d/mm) GPa on both sides of the link
(tables/chain-modulus). Made for 60 to 200 mm mooring chain; carried down to shop sizes it is an order of magnitude.
"""

from __future__ import annotations

import math

from calc.declaration import Citation
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.tables import Row, number, table


def _modulus_row(quantity: str) -> Row:
    return table("chain-modulus").one(chain="studless_r4", quantity=quantity)


def chain_modulus_pa(wire_m: float) -> float:
    """Modulus of chain [Pa] on both sides of the link, for a wire [m]; about a quarter of solid steel's.

    >>> round(chain_modulus_pa(0.100) / 1e9, 3)
    52.0
    """
    constant, fall = number(_modulus_row("modulus_constant")), number(_modulus_row("modulus_fall_per_mm"))
    return (constant - fall * wire_m * 1000.0) * 1e9


def chain_modulus_citation() -> Citation:
    """Where the modulus stands."""
    row = _modulus_row("modulus_constant")
    return Citation(row["source"], row["locator"])


def chain_stiffness_n(wire_m: float) -> float:
    """Pull per unit of stretch, EA [N], of chain of a wire [m]: its modulus on both sides of the link.

    >>> round(chain_stiffness_n(0.010) / 1e6, 2)
    8.52
    """
    return chain_modulus_pa(wire_m) * 2 * math.pi / 4 * wire_m**2


def _steel_row() -> Row:
    return table("youngs-modulus").one(material="steel", quantity="youngs_modulus")


def solid_modulus_pa() -> float:
    """Modulus of solid steel [Pa]. Two straight bars of it from link to link are stiffer than any link, whose crowns bend."""
    return number(_steel_row()) * 1e9


def solid_modulus_citation() -> Citation:
    """Where the modulus of steel stands."""
    row = _steel_row()
    return Citation(row["source"], row["locator"])


def solid_stiffness_n(wire_m: float) -> float:
    """Pull per unit of stretch, EA [N], that no chain of a wire [m] passes: solid steel on both sides of the link.

    >>> solid_stiffness_n(0.010) > 3 * chain_stiffness_n(0.010)
    True
    """
    return solid_modulus_pa() * 2 * math.pi / 4 * wire_m**2


_WORKING_PA = {
    "M": 100e6,
    "4": 100e6,
    "5": 125e6,
    "6": 157.5e6,
    "8": 200e6,
    "80": 200e6,
    "10": 250e6,
    "100": 250e6,
}
STRONGEST_WORKING_PA = 300e6
"""Stress of lifting chain at its rating by grade: a quarter of what its grade names in N/mm2, ten times an American number or a
hundred times a European one, on both sides of the link (ISO 1834 on the naming of grades, from memory). The strongest there
is, grade 120, stands for a grade that is not known.
"""
THICKER_THAN_NAMED = 1.15
"""Chain sold by an inch size may be of the next metric wire, and so be rated by so much more [-]: 3/8 in chain is 10 mm wire,
which is 1.10 times the section (our own mark)."""


def most_of_chain_kg(wire_m: float, grade: str = "") -> float:
    """More than any lifting chain of a wire [m] is rated for [kg]; of a grade, where it is known.

    >>> 8800 * 0.4536 < most_of_chain_kg(0.009525) < 2 * 7100 * 0.4536
    True
    >>> 1600 < most_of_chain_kg(0.010, "4") < 1.2 * 1600
    True
    """
    stress_pa = _WORKING_PA.get(grade, STRONGEST_WORKING_PA)
    section_m2 = 2 * math.pi / 4 * wire_m**2
    return THICKER_THAN_NAMED * stress_pa * section_m2 / STANDARD_GRAVITY_M_PER_S2


__all__ = [
    "chain_modulus_citation",
    "chain_modulus_pa",
    "chain_stiffness_n",
    "most_of_chain_kg",
    "solid_modulus_citation",
    "solid_modulus_pa",
    "solid_stiffness_n",
]
