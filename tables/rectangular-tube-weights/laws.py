"""Laws of the table rectangular-tube-weights. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num, rising

NAME = "rectangular-tube-weights"
LB_FT_A_IN2 = 490 / 144
"""Weight of a foot of steel for each square inch of section, at 490 lb/ft3."""
PRINTED = 141
"""Rectangular tubes to 8 in that were read."""


def tube_lb_ft(depth: float, width: float, wall: float) -> float:
    """Weight of a rectangular tube [lb/ft], inches: four walls, less what its round corners take away.

    A corner is round with an outer radius of two walls and an inner one of one (ASTM A500 practice, from memory): a square corner
    less its quarter ring takes (4 - pi) (4 - 1) t^2 from all four. Own geometry.
    """
    return LB_FT_A_IN2 * (2 * wall * (depth + width - 2 * wall) - (4 - math.pi) * 3 * wall**2)


def law_a_tube_weighs_its_steel(tables: Tables) -> list[str]:
    """The printed weight is that of the named walls with round corners, as far as the weight is rounded."""
    found = []
    for row in tables[NAME]:
        key = (row["depth_in"], row["width_in"], row["wall_in"])
        depth, width, wall = map(num, key)
        found += band(NAME, key, num(row["value"]) - tube_lb_ft(depth, width, wall), -0.011, 0.011)
        if width >= depth:
            found.append(
                f"{NAME}/claims.csv {key}: the longer side is named first, and a square tube has its own table"
            )
    return found


def law_more_tube_weighs_more(tables: Tables) -> list[str]:
    """A thicker wall, and a wider tube of one wall, weighs more; 141 tubes were read."""
    found = []
    for key, rows in groups(tables[NAME], "depth_in", "width_in").items():
        found += rising(NAME, key, ((num(row["wall_in"]), num(row["value"])) for row in rows))
    for key, rows in groups(tables[NAME], "depth_in", "wall_in").items():
        found += rising(NAME, key, ((num(row["width_in"]), num(row["value"])) for row in rows))
    if len(tables[NAME]) != PRINTED:
        found.append(f"{NAME}/claims.csv: {PRINTED} tubes were read")
    return found


def law_tubes_of_one_girth_weigh_alike(tables: Tables) -> list[str]:
    """Both sides together are what counts: 8 x 4 and 7 x 5 of one wall have one weight (own geometry)."""
    alike: dict[tuple[float, str], set[str]] = {}
    for row in tables[NAME]:
        together = (num(row["depth_in"]) + num(row["width_in"]), row["wall_in"])
        alike.setdefault(together, set()).add(row["value"])
    return [f"{NAME}/claims.csv {key}: {sorted(values)}" for key, values in alike.items() if len(values) > 1]
