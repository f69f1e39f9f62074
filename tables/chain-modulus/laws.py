"""Laws of the table chain-modulus. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, column, groups


def law_chain_modulus(tables: Tables) -> list[str]:
    """About a quarter of steel: 49 to 57 GPa at 100 mm; the generic stiffness over d squared is pi/2 times its modulus.

    DNV-OS-E301 prints its constants in halves of a gigapascal. A stronger studless grade is stiffer at every size from 50
    to 150 mm; the stud-link and catalogue figures do not change with size.
    """
    found = []
    at: dict[tuple[str, int], float] = {}
    for (chain,), rows in groups(tables["chain-modulus"], "chain").items():
        got = column(rows, "quantity")
        constant, fall = got.get("modulus_constant", math.nan), got.get("modulus_fall_per_mm", 0.0)
        at |= {(chain, d): constant - d * fall for d in (50, 100, 150)}
        found += band("chain-modulus", chain, at[chain, 100], 49, 57)
        if chain.startswith("studless_r") != ("modulus_fall_per_mm" in got):
            found.append(
                f"chain-modulus/claims.csv {chain}: only graded studless chain loses stiffness with size"
            )
        if rows[0]["source"] == "dnv-os-e301" and (2 * constant) % 1:
            found.append(f"chain-modulus/claims.csv {chain}: {constant:g} is no half gigapascal")
        if "stiffness_over_diameter_squared" in got:
            found += band(
                "chain-modulus",
                chain,
                got["stiffness_over_diameter_squared"] / (math.pi / 2) - got["modulus_constant"],
                -0.05,
                0.05,
            )
    for diameter in (50, 100, 150):
        order = [at.get((f"studless_r{grade}", diameter), math.nan) for grade in (3, 4, 5)]
        if not order[0] < order[1] < order[2]:
            found.append(f"chain-modulus/claims.csv at {diameter} mm: R3, R4, R5 must grow stiffer")
    return found
