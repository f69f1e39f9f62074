"""Laws of the table arc-efficiency. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, column


def law_arc_efficiency(tables: Tables) -> list[str]:
    """EN 1011-1: factor k is 1 for submerged arc, one figure for the other consumable electrodes, a lower one for the two
    with a tungsten electrode. The measured mean is half way between its low and high; plasma loses most.

    Measured shares follow the same order.
    """
    k = column(tables["arc-efficiency"], "process", quantity="relative_to_saw")
    measured = column(tables["arc-efficiency"], "process", quantity="measured_efficiency")
    tig = column(tables["arc-efficiency"], "quantity", process="gtaw", source="stenbacka-2012")
    low, mean, high = (tig.get(f"measured_efficiency_{which}", math.nan) for which in ("low", "mean", "high"))
    found = band("arc-efficiency", "gtaw mean", mean - (low + high) / 2, -0.0051, 0.0051)
    if not 0.4 < low < mean < high < 1:
        found.append("arc-efficiency/claims.csv gtaw: low, mean and high out of order")
    if set(k) != {"saw", "smaw", "gmaw", "fcaw", "gtaw", "plasma"} or set(measured) != {
        "saw",
        "gmaw",
        "gtaw",
        "plasma",
    }:
        return [*found, "arc-efficiency/claims.csv: a process is missing"]
    if not (1.0 == k["saw"] > k["smaw"] == k["gmaw"] == k["fcaw"] > k["gtaw"] == k["plasma"] > 0.4):
        found.append("arc-efficiency/claims.csv: factor k out of order")
    if not (measured["saw"] == measured["gmaw"] > measured["gtaw"] > measured["plasma"] > 0.4):
        found.append("arc-efficiency/claims.csv: measured shares out of order")
    return found
