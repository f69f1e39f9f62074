"""Laws of the table angle-weights. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, band, groups, num, rising

NAME = "angle-weights"
LB_FT_A_IN2 = 490 / 144
"""Weight of a foot of steel for each square inch of section, at 490 lb/ft3."""
PRINTED = 101
"""Angles to 6 in that were read."""


def angle_lb_ft(long_leg: float, short_leg: float, thickness: float) -> float:
    """Weight of an angle with sharp corners [lb/ft], inches: two legs that share their corner. Own geometry.

    The fillet inside the corner adds, the rounded toes take away: together between nothing and 1.6 %.
    """
    return LB_FT_A_IN2 * thickness * (long_leg + short_leg - thickness)


def law_an_angle_weighs_its_steel(tables: Tables) -> list[str]:
    """The printed weight is that of the angle's two legs, a fillet more, as far as the weight is rounded."""
    found = []
    for row in tables[NAME]:
        key = (row["long_leg_in"], row["short_leg_in"], row["thickness_in"])
        long_leg, short_leg, thickness = map(num, key)
        found += band(
            NAME, key, num(row["value"]) / angle_lb_ft(long_leg, short_leg, thickness), 0.997, 1.0165
        )
        if short_leg > long_leg:
            found.append(f"{NAME}/claims.csv {key}: the longer leg is named first")
    return found


def law_more_angle_weighs_more(tables: Tables) -> list[str]:
    """A thicker angle of the same legs, and one with a wider leg of one thickness, weighs more; 101 angles were read."""
    found = []
    for key, rows in groups(tables[NAME], "long_leg_in", "short_leg_in").items():
        found += rising(NAME, key, ((num(row["thickness_in"]), num(row["value"])) for row in rows))
    for key, rows in groups(tables[NAME], "long_leg_in", "thickness_in").items():
        found += rising(NAME, key, ((num(row["short_leg_in"]), num(row["value"])) for row in rows))
    if len(tables[NAME]) != PRINTED:
        found.append(f"{NAME}/claims.csv: {PRINTED} angles were read")
    return found


def law_angles_of_one_section_weigh_alike(tables: Tables) -> list[str]:
    """The legs end to end are what counts: L5x3 and L4x4 of one thickness have one weight (own geometry)."""
    alike: dict[tuple[float, str], set[str]] = {}
    for row in tables[NAME]:
        together = (num(row["long_leg_in"]) + num(row["short_leg_in"]), row["thickness_in"])
        alike.setdefault(together, set()).add(row["value"])
    found = []
    for together, values in alike.items():
        numbers = sorted(map(num, values))
        found += band(NAME, together, numbers[-1] / numbers[0], 1.0, 1.016)
    return found
