"""Laws of the table fibre-rope-slings. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Row, Tables, band, column, groups, num, rising


def _printed_step(value: float) -> float:
    """29 CFR 1918 App. II prints to 50 lb under 1,000 lb, to 100 lb under 10,000 lb and to 500 lb above."""
    return 50.0 if value < 1000 else 100.0 if value < 10000 else 500.0


def _upright_strength(rows: list[Row]) -> tuple[float, float]:
    """The rating of one rope upright, before rounding, that all cells of one size allow: from least to most [lb]."""
    low, high = 0.0, math.inf
    for row in rows:
        angle = math.radians(num(row["angle_from_vertical"]))
        factor = {"vertical": 1.0, "choker": 0.5}.get(row["hitch"], 2 * math.cos(angle))
        half = _printed_step(num(row["value"])) / 2
        low = max(low, (num(row["value"]) - half) / factor)
        high = min(high, (num(row["value"]) + half) / factor)
    return low, high


# Least breaking strength of new manila rope [lb], US federal specification T-R-605 (recalled).
MANILA_BREAK_LB = {
    "1/2": 2650, "9/16": 3450, "5/8": 4400, "3/4": 5400, "13/16": 6500, "7/8": 7700, "1": 9000, "1-1/16": 10500,
    "1-1/8": 12000, "1-1/4": 13500, "1-5/16": 15000, "1-1/2": 18500, "1-5/8": 22500, "1-3/4": 26500, "2": 31000,
    "2-1/8": 36000, "2-1/4": 41000, "2-1/2": 46500, "2-5/8": 52000,
}  # fmt: skip


def law_fibre_slings_are_manila_over_the_design_factor(tables: Tables) -> list[str]:
    """Table 2 is for a design factor of 5: five times the unrounded rating is the least strength of manila, within 0.5 %."""
    factor = column(tables["design-factors"], "item").get("natural_fibre_rope_sling", math.nan)
    found = []
    for (sling, size), group in groups(tables["fibre-rope-slings"], "sling", "size_in").items():
        if sling == "eye_and_eye":
            low, high = _upright_strength(group)
            wanted = MANILA_BREAK_LB.get(size, math.nan) / factor
            found += band("fibre-rope-slings", (size, "manila"), wanted, low * 0.995, high * 1.005)
    return found


def law_fibre_slings(tables: Tables) -> list[str]:
    """29 CFR 1918 App. II against statics: choker half, basket 2 x cosine, all six cells rounded from one strength; all rise.

    At 60 degrees the basket is exactly the vertical cell. An endless sling is 1.8 times an eye-and-eye one (two strands
    less the splice), within 1 % of the unrounded strengths.
    """
    found = []
    rows = tables["fibre-rope-slings"]
    strength: dict[tuple[str, ...], tuple[float, float]] = {}
    cases = [("vertical", "0"), ("choker", "0"), *(("basket", angle) for angle in ("0", "30", "45", "60"))]
    for key, group in groups(rows, "sling", "size_in").items():
        cells = {(r["hitch"], r["angle_from_vertical"]): r["value"] for r in group}
        if set(cells) != set(cases) or len(group) != 6:
            found.append(f"fibre-rope-slings/claims.csv {key}: needs six cells, four of them baskets")
            continue
        strength[key] = low, high = _upright_strength(group)
        if low > high * (1 + 1e-9):
            found.append(
                f"fibre-rope-slings/claims.csv {key}: no one strength gives all six cells ({low:.0f}, {high:.0f})"
            )
        if cells["basket", "60"] != cells["vertical", "0"]:
            found.append(
                f"fibre-rope-slings/claims.csv {key}: a basket at 60 degrees rates as one vertical leg"
            )
        found += [
            f"fibre-rope-slings/claims.csv {key}: {r['value']} is no step of {_printed_step(num(r['value'])):g} lb"
            for r in group
            if num(r["value"]) % _printed_step(num(r["value"]))
            and r["value"] != "1,850"  # printed so for 1-1/2 in
        ]
    for (sling, size), (low, high) in strength.items():
        if sling == "endless":
            eye_low, eye_high = strength.get(("eye_and_eye", size), (math.nan, math.nan))
            if not (low <= 1.8 * eye_high * 1.01 and high >= 1.8 * eye_low * 0.99):
                found.append(f"fibre-rope-slings/claims.csv {size}: endless is not 1.8 times eye and eye")
    for case, group in groups(rows, "sling", "hitch", "angle_from_vertical").items():
        found += rising("fibre-rope-slings", case, ((num(r["size_in"]), num(r["value"])) for r in group))
    sizes = {sling: {size for s, size in strength if s == sling} for sling in ("eye_and_eye", "endless")}
    if not sizes["endless"] < sizes["eye_and_eye"]:
        found.append("fibre-rope-slings/claims.csv: every endless size is also an eye-and-eye size")
    return found
