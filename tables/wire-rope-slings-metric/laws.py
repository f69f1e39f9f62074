"""Laws of the table wire-rope-slings-metric. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, band, groups, num, rising

FACTORS = {
    ("2", "straight", "0-45"): (1.35, 1.43),
    ("2", "straight", "45-60"): (1.0, 1.0),
    ("3-4", "straight", "0-45"): (2.05, 2.15),
    ("3-4", "straight", "45-60"): (1.46, 1.54),
    ("endless", "choke", "0"): (1.57, 1.65),
}
"""Case -> band of its limit over that of one leg: 1.4, 1.0, 2.1, 1.5 and 1.6 (EN 13414-1, EN 818-4), rounded by the print."""


def law_rope_slings_by_the_square(tables: Tables) -> list[str]:
    """One leg carries a fifth of the rope after the ferrule: the square of the diameter, 11.4 to 11.9 kg a mm2 (EN 13414-1).

    Rope of one class breaks in proportion to its section (EN 12385-4), so no size stands off the others.
    """
    found = []
    one = {
        row["size_mm"]: num(row["value"]) for row in tables["wire-rope-slings-metric"] if row["legs"] == "1"
    }
    for size, load in one.items():
        found += band("wire-rope-slings-metric", (size, "kg a mm2"), 1000 * load / num(size) ** 2, 11.4, 11.9)
    for row in tables["wire-rope-slings-metric"]:
        case = (row["legs"], row["hitch"], row["angle_from_vertical"])
        if case == ("1", "straight", "0"):
            continue
        if case not in FACTORS or row["size_mm"] not in one:
            found.append(f"wire-rope-slings-metric/claims.csv {row['size_mm']}: no such case {case}")
            continue
        share = num(row["value"]) / one[row["size_mm"]]
        low, high = FACTORS[case]
        found += band("wire-rope-slings-metric", (row["size_mm"], *case), share, low - 1e-9, high + 1e-9)
    return found


def law_rope_slings_grid(tables: Tables) -> list[str]:
    """Six cases a size, fifteen sizes from 8 to 32 mm; every column rises."""
    found = []
    rows = tables["wire-rope-slings-metric"]
    for size, group in groups(rows, "size_mm").items():
        if len(group) != 1 + len(FACTORS):
            found.append(f"wire-rope-slings-metric/claims.csv {size}: needs six cases")
    if len(groups(rows, "size_mm")) != 15:
        found.append("wire-rope-slings-metric/claims.csv: needs fifteen sizes")
    for key, group in groups(rows, "legs", "hitch", "angle_from_vertical").items():
        found += rising("wire-rope-slings-metric", key, ((num(r["size_mm"]), num(r["value"])) for r in group))
    return found
