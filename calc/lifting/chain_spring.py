"""Chain as a spring: how much pull it takes to stretch it.

DNV-OS-E301 (2010), studless R4, seen in a copy: modulus (54.5 - 0.025 d/mm) GPa on both sides of the link
(tables/chain-modulus). Made for 60 to 200 mm mooring chain; carried down to shop sizes it is an order of magnitude.
"""

from __future__ import annotations

import math

from calc.declaration import Citation
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


__all__ = [
    "chain_modulus_citation",
    "chain_modulus_pa",
    "chain_stiffness_n",
    "solid_modulus_citation",
    "solid_modulus_pa",
    "solid_stiffness_n",
]
