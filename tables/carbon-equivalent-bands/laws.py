"""Laws of the table carbon-equivalent-bands. The source of each law stands in its docstring."""

from __future__ import annotations

import math
from itertools import pairwise

from build_scripts.laws.tools import Tables, band, column


def law_carbon_bands(tables: Tables) -> list[str]:
    """Bands adjoin by a hundredth, from excellent to poor."""
    order = ["excellent", "very_good", "good", "fair", "poor"]
    start = column(tables["carbon-equivalent-bands"], "rating", quantity="carbon_equivalent_from")
    end = column(tables["carbon-equivalent-bands"], "rating", quantity="carbon_equivalent_to")
    found = [] if start.get("excellent") == 0 else ["carbon-equivalent-bands/claims.csv: starts at 0"]
    for better, worse in pairwise(order):
        step = start.get(worse, math.nan) - end.get(better, math.nan)
        found += band(
            "carbon-equivalent-bands", worse, step, *((-1e-9, 1e-9) if worse == "poor" else (0.0099, 0.0101))
        )
        if better != "excellent":
            found += band(
                "carbon-equivalent-bands",
                better,
                end.get(better, math.nan) - start.get(better, math.nan),
                0.0399,
                0.0401,
            )
    return found
