"""Laws of the table web-slings. The source of each law stands in its docstring."""

from __future__ import annotations

import math
from fractions import Fraction

from build_scripts.laws.tools import Tables, exact

COLOURS = ("violet", "green", "yellow", "grey", "red", "brown", "blue", "orange")
"""EN 1492-1 (read in a reprint), smallest sling first."""


SLING_TONNES = (1, 2, 3, 4, 5, 6, 8, 10)
"""The series of web sling sizes: every tonne to 6, then 8 and 10."""


LOADED_PARTS = {
    ("1", "straight", "0"): 1,
    ("1", "choke", "0"): 1,
    **{("1", "basket", angle): 2 for angle in ("0", "0-45", "45-60")},
    **{("2", hitch, angle): 2 for hitch in ("straight", "choke") for angle in ("0-45", "45-60")},
    **{("3-4", hitch, angle): 3 for hitch in ("straight", "choke") for angle in ("0-45", "45-60")},
}
"""The thirteen cases of EN 1492-1 and the parts that carry: a basket is two, of four legs three count."""


def web_sling_factor(case: tuple[str, str, str]) -> Fraction | None:
    """By statics: parts x cosine of the steeper end of the band, cut to the tenth; a choke leaves four fifths."""
    _, hitch, angle = case
    steepest = {"0": 0, "0-45": 45, "45-60": 60}.get(angle)
    if case not in LOADED_PARTS or steepest is None:
        return None
    tenths = math.floor(10 * LOADED_PARTS[case] * math.cos(math.radians(steepest)) + 1e-9)
    return Fraction(tenths, 10) * (Fraction(4, 5) if hitch == "choke" else 1)


def law_web_slings(tables: Tables) -> list[str]:
    """EN 1492-1: limits are the straight limit times a factor that statics gives; colours in order of the series of sizes.

    The factors meet those of chain slings (EN 818-4, table sling-leg-counting); a choke takes the fifth that DGUV 209-021
    prints for chain. Which colour is which was read in a reprint: the law holds their order only.
    """
    rows = tables["web-slings"]
    found = []
    straight = {r["colour"]: exact(r["value"]) for r in rows if (r["legs"], r["hitch"]) == ("1", "straight")}
    upright = dict(zip(COLOURS, SLING_TONNES, strict=True))
    for row in rows:
        case = (row["legs"], row["hitch"], row["angle_from_vertical"])
        factor = web_sling_factor(case)
        value, what = exact(row["value"]), (row["colour"], *case)
        if factor is None:
            found.append(f"web-slings/claims.csv {what}: no such case in the standard")
        elif row["colour"] == "factor":
            if value != factor or row["quantity"] != "mode_factor":
                found.append(
                    f"web-slings/claims.csv {what}: statics gives {float(factor):g}, not {row['value']}"
                )
        elif (
            row["quantity"] != "working_load_limit"
            or value != straight.get(row["colour"], Fraction(0)) * factor
        ):
            found.append(
                f"web-slings/claims.csv {what}: {row['value']} is not the straight limit times {float(factor):g}"
            )
        elif value != upright.get(row["colour"], Fraction(0)) * factor:
            found.append(f"web-slings/claims.csv {what}: the colour stands at another place in the series")
    have = {(r["colour"], r["legs"], r["hitch"], r["angle_from_vertical"]) for r in rows}
    if have != {(colour, *case) for colour in (*COLOURS, "factor") for case in LOADED_PARTS}:
        found.append("web-slings/claims.csv: needs thirteen cases of eight colours and of the factor")
    chain = {
        (r["legs"], r["quantity"].removeprefix("mode_factor_").replace("_", "-")): exact(r["value"])
        for r in tables["sling-leg-counting"]
        if r["source"] == "en-818-4"
    }
    for row in rows:
        if row["colour"] == "factor" and row["hitch"] == "straight" and row["legs"] != "1":
            for legs in row["legs"].split("-"):
                if chain.get((legs, row["angle_from_vertical"])) != exact(row["value"]):
                    found.append(f"web-slings/claims.csv {legs} legs: not the factor of a chain sling")
    return found
