"""Laws of the table tie-down-gear. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, away, num

NAME = "tie-down-gear"
SERIES_KN = (10, 12.5, 16, 20, 22, 25, 30, 40, 50, 63, 75, 100, 125, 160, 200, 250, 300, 400)
"""Preferred capacities of lashing gear: those of the series R 10, and between them 22, 30, 75 and 300 in rounded form."""
ROUNDED_UP = 1.003
WIRES_MM = ("6", "7", "8", "9", "10", "11", "13", "16", "18", "20", "22")


def law_lashing_capacity_is_half_of_what_breaks_the_chain(tables: Tables) -> list[str]:
    """EN 12195-3: half of the breaking force of grade 8 chain, 800 N/mm2 on both sides of a link (EN 818-1), so 80 pi/4 d^2
    daN, cut down to the next preferred capacity (10 mm is printed 0.3 % above it).
    """
    found = []
    for row in tables[NAME]:
        if row["item"] != "lashing_chain_grade_8":
            continue
        half_kn = 0.8 * math.pi / 4 * num(row["size"].removesuffix(" mm")) ** 2
        wanted = max(one for one in SERIES_KN if one <= half_kn * ROUNDED_UP)
        found += away(NAME, row["size"], num(row["value"]), 100 * wanted, 1e-9)
    return found


def law_a_lever_binder_is_rated_like_grade_43_chain(tables: Tables) -> list[str]:
    """The sheet names a grade 70 size and a grade 43 size for each binder; its limit is that of the grade 43 chain of
    49 CFR 393.108.
    """
    chain = {
        row["size_in"]: num(row["value"])
        for row in tables["chain-tie-down"]
        if row["grade"] == "43" and row["unit"] == "lb"
    }
    found = []
    for row in tables[NAME]:
        if row["item"] == "lever_binder":
            larger = row["size"].split("-")[-1]
            found += away(NAME, row["size"], num(row["value"]), chain.get(larger, math.nan), 1e-9)
    return found


def law_sizes_and_quantities(tables: Tables) -> list[str]:
    """Every nominal wire from 6 to 22 mm once, in LC; a binder by the two chain sizes that it fits, in WLL (its sheet)."""
    wanted = {("lashing_chain_grade_8", f"{one} mm", "lashing_capacity", "en-12195-3") for one in WIRES_MM}
    wanted |= {
        ("lever_binder", size, "working_load_limit", "binder-sheet") for size in ("5/16-3/8", "3/8-1/2")
    }
    have = {(row["item"], row["size"], row["quantity"], row["source"]) for row in tables[NAME]}
    return [f"{NAME}/claims.csv {one}: missing or not of the print" for one in wanted ^ have]
