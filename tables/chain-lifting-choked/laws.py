"""Laws of the table chain-lifting-choked. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num, rising

NAME = "chain-lifting-choked"
CHOKE = 0.8
"""Share of its straight limit that a chain carries in a choke (OSHA Guidance on Safe Sling Use, EN 818-4)."""


def law_a_choke_holds_four_fifths(tables: Tables) -> list[str]:
    """Legs x 0.8 x one straight leg (table chain-lifting) x sine of the angle, rounded to 100 lb: 50 lb over at most, 60 under."""
    straight = {
        (row["grade"], row["size_in"]): num(row["value"])
        for row in tables["chain-lifting"]
        if row["legs"] == "1"
    }
    found = []
    for row in tables[NAME]:
        legs = {"1": 1, "2": 2, "3-4": 3}[row["legs"]]
        one = CHOKE * straight.get((row["grade"], row["size_in"]), math.nan)
        wanted = legs * one * math.sin(math.radians(num(row["angle_from_horizontal"])))
        found += band(NAME, tuple(row.values())[:6], num(row["value"]) - wanted, -60, 50)
    return found


def law_two_choked_legs_at_30(tables: Tables) -> list[str]:
    """sin 30 = 1/2: two choked legs at 30 degrees print exactly what one prints; every column rises with the size."""
    at = {(r["size_in"], r["legs"], r["angle_from_horizontal"]): r["value"] for r in tables[NAME]}
    found = [
        f"{NAME}/claims.csv {size}: two legs at 30 degrees differ from one leg"
        for (size, legs, angle), value in at.items()
        if legs == "2" and angle == "30" and at.get((size, "1", "90")) != value
    ]
    for key, rows in groups(tables[NAME], "legs", "angle_from_horizontal").items():
        found += rising(NAME, key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    return found


def law_choked_grid(tables: Tables) -> list[str]:
    """OSHA Guidance Table 3 as far as its reprint was read: five sizes with the wire of chain-lifting, eighteen cells."""
    wires = {(row["size_in"], row["size_mm"]) for row in tables["chain-lifting"]}
    found = [
        f"{NAME}/claims.csv {row['size_in']}: has another wire in chain-lifting"
        for row in tables[NAME]
        if (row["size_in"], row["size_mm"]) not in wires
    ]
    if len(tables[NAME]) != 18 or len(groups(tables[NAME], "size_in")) != 5:
        found.append(f"{NAME}/claims.csv: eighteen cells of five sizes were read")
    return found
