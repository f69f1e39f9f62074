"""Laws of the table rope-bending. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, num


def law_rope_bending(tables: Tables) -> list[str]:
    """0027/ND s. 7.8: factor = 1 / (1 - 0.5 / sqrt(D/d)), printed to two places."""
    return [
        p
        for r in tables["rope-bending"]
        for p in band(
            "rope-bending",
            r["bend_ratio"],
            num(r["value"]) - 1 / (1 - 0.5 / math.sqrt(num(r["bend_ratio"]))),
            -0.005,
            0.005,
        )
    ]
