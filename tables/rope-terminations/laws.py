"""Laws of the table rope-terminations. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, column


def law_rope_terminations(tables: Tables) -> list[str]:
    """0027/ND s. 7.7: one over an efficiency of 100, 90, 80, 75 or 50 %, rounded up or to the nearest hundredth.

    Sockets, swages and closed loops lose nothing; then steel ferrules, hand splices, cable-laid splices, aluminium.
    """
    rows = tables["rope-terminations"]
    got = column(rows, "termination")
    found = []
    for name, factor in got.items():
        allowed = {
            rounded
            for efficiency in (1.0, 0.9, 0.8, 0.75, 0.5)
            for rounded in (round(1 / efficiency, 2), math.ceil(100 / efficiency - 1e-9) / 100)
        }
        if not any(abs(factor - other) < 1e-9 for other in allowed):
            found.append(f"rope-terminations/claims.csv {name}: {factor:g} is no such efficiency")
    order = [
        got.get(name, math.nan)
        for name in (
            "resin_socket",
            "steel_ferrule",
            "hand_splice",
            "cable_laid_hand_splice",
            "aluminium_ferrule",
        )
    ]
    if order != sorted(set(order)):
        found.append(
            "rope-terminations/claims.csv: socket, steel ferrule, hand splice, cable-laid splice, aluminium: out of order"
        )
    found += [
        f"rope-terminations/claims.csv {name}: loses no strength at its end"
        for name in ("resin_socket", "swage_or_flemish_eye", "grommet", "fibre_sling")
        if got.get(name) != 1.0
    ]
    return found
