"""Laws of the table chain-strength. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.families import PREFERRED
from build_scripts.laws.tools import G, Tables, away, column, groups, num, two_sections

GERMAN_ROUNDING = {320}
"""320 in place of 315: the older German rounding of series R 40."""


def law_chain_strength_relation(tables: Tables) -> list[str]:
    """EN 818-3 Table 5: break = 400 N/mm2 on two sections, proof = half of it (three figures), bend = 0.8 diameter (two).

    Working load limits of EN 818-2 and -3 are the largest preferred number (ISO 3, series R 40) that puts no more than
    a quarter of the grade stress on two sections.
    """
    found = []
    for (grade, size), rows in groups(tables["chain-strength"], "grade", "size_mm").items():
        area, got = two_sections(num(size)), column(rows, "quantity")
        quarter_t = 25 * num(grade) * area / 1000 / G
        wanted = {"working_load_limit": largest_preferred(quarter_t)}
        if grade == "4":
            wanted["minimum_breaking_force"] = figures(0.4 * area, 3)
            wanted["manufacturing_proof_force"] = figures(0.2 * area, 3)
            wanted["minimum_bend_deflection"] = figures(0.8 * num(size), 2)
        if set(got) != set(wanted):
            found.append(f"chain-strength/claims.csv {grade} {size}: needs {', '.join(wanted)}")
        for quantity in got.keys() & wanted.keys():
            found += away("chain-strength", (grade, size, quantity), got[quantity], wanted[quantity], 1e-9)
    return found


def figures(value: float, count: int) -> float:
    """Rounded to so many figures, halves up."""
    step = 10.0 ** (math.floor(math.log10(value)) + 1 - count)
    return math.floor(value / step + 0.5) * step


def largest_preferred(limit: float) -> float:
    """The largest number of series R 40 (ISO 3) that is not above the limit."""
    decade = 10.0 ** (math.floor(math.log10(limit)) - 2)
    return max(n for n in PREFERRED if n not in GERMAN_ROUNDING and n <= limit / decade) * decade


def law_chain_strength_agrees_with_slings(tables: Tables) -> list[str]:
    """EN 818-2 and -3 chain limits are the one-leg ratings that DGUV 209-021 prints for slings of the same size."""
    one = {
        (r["grade"], r["size_mm"]): num(r["value"]) * (1000 if r["unit"] == "t" else 1)
        for r in tables["chain-lifting-metric"]
        if (r["legs"], r["hitch"]) == ("1", "straight")
    }
    found = []
    for row in tables["chain-strength"]:
        printed = one.get((row["grade"], row["size_mm"]))
        if row["quantity"] == "working_load_limit" and printed:
            found += away(
                "chain-strength", (row["grade"], row["size_mm"]), num(row["value"]) * 1000, printed, 1e-9
            )
    return found
