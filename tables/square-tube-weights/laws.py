"""Laws of the table square-tube-weights. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, band, groups, num, rising

NAME = "square-tube-weights"
LB_FT_A_IN2 = 490 / 144
"""Weight of a foot of steel for each square inch of section, at 490 lb/ft3."""
SHARP = {("3/4", "0.083"), ("1-1/2", "0.188"), ("1-3/4", "0.100"), ("1-3/4", "0.125"), ("2", "0.100")}
"""The five lines that the dealer reckoned as if the corners were sharp."""
WALLS = ("0.083", "0.100", "0.125", "0.188", "0.250", "0.375", "0.500")


def tube_lb_ft(outside: float, wall: float, sharp: bool) -> float:
    """Weight of square tube [lb/ft], inches: four walls, less what round corners take away.

    The corner is round with an outer radius of two walls and an inner one of one wall (ASTM A500 practice, from memory); a
    square corner less its quarter ring takes (4 - pi) (r_outer2 - r_inner2) from all four. Own geometry.
    """
    section = 4 * wall * (outside - wall)
    corners = 0 if sharp else (4 - 3.14159265) * 3 * wall**2
    return LB_FT_A_IN2 * (section - corners)


def law_tube_weighs_its_steel(tables: Tables) -> list[str]:
    """The printed weight is that of the tube's steel, within 2 %."""
    found = []
    for row in tables[NAME]:
        key = (row["outside_in"], row["wall_in"])
        wanted = tube_lb_ft(num(key[0]), num(key[1]), key in SHARP)
        found += band(NAME, key, num(row["value"]) / wanted, 0.98, 1.02)
    return found


def law_more_tube_weighs_more(tables: Tables) -> list[str]:
    """A wider tube of one wall and a thicker wall of one width weigh more; thirty-six lines of seven walls were read."""
    found = []
    for key, rows in groups(tables[NAME], "wall_in").items():
        found += rising(NAME, key, ((num(r["outside_in"]), num(r["value"])) for r in rows))
    for key, rows in groups(tables[NAME], "outside_in").items():
        found += rising(NAME, key, ((num(r["wall_in"]), num(r["value"])) for r in rows))
    if len(tables[NAME]) != 36 or {row["wall_in"] for row in tables[NAME]} != set(WALLS):
        found.append(f"{NAME}/claims.csv: thirty-six lines of seven walls were read")
    return found
