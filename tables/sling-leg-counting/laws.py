"""Laws of the table sling-leg-counting. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, away, band, num


def law_leg_counting(tables: Tables) -> list[str]:
    """Counted legs against printed tables: OSHA rates 3-4 legs as 3; European mode factors are the median of DGUV's printed ratios."""
    found = []
    for row in tables["sling-leg-counting"]:
        value, legs = num(row["value"]), row["legs"]
        if row["source"] == "osha-sling-guidance":
            found += away(
                "sling-leg-counting", legs, value, _osha_legs(tables, "2" if legs == "2" else "3-4"), 0.003
            )
        elif row["source"] == "en-818-4":
            angles = "0-45" if row["quantity"].endswith("0_45") else "45-60"
            found += away(
                "sling-leg-counting",
                (legs, angles),
                value,
                _dguv_ratio(tables, "2" if legs == "2" else "3-4", angles),
                0.02,
            )
        else:
            found += band("sling-leg-counting", (legs, row["source"]), value, 2, 2)
        ours = {"2": 2, "3": 2, "4": 2}[legs]
        if (row["default"] == "yes") != (row["quantity"] == "legs_counted" and value == ours):
            found.append(f"sling-leg-counting/claims.csv {legs}: default marks {ours} legs")
    return found


def _median(values: list[float]) -> float:
    return sorted(values)[len(values) // 2]


def _osha_legs(tables: Tables, legs: str) -> float:
    rows = tables["chain-lifting"]
    one = {(r["grade"], r["size_in"]): num(r["value"]) for r in rows if r["legs"] == "1"}
    return _median(
        [
            num(r["value"])
            / one.get((r["grade"], r["size_in"]), math.nan)
            / math.sin(math.radians(num(r["angle_from_horizontal"])))
            for r in rows
            if r["legs"] == legs
        ]
    )


def _dguv_ratio(tables: Tables, legs: str, angles: str) -> float:
    rows = [r for r in tables["chain-lifting-metric"] if r["hitch"] == "straight"]
    one = {(r["grade"], r["size_mm"]): num(r["value"]) for r in rows if r["legs"] == "1"}
    return _median(
        [
            num(r["value"]) / one.get((r["grade"], r["size_mm"]), math.nan)
            for r in rows
            if (r["legs"], r["angle_from_vertical"]) == (legs, angles)
        ]
    )
