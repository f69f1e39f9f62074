"""Laws of the table eye-hooks. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num, rising

NAME = "eye-hooks"
CARBON, ALLOY = "working_load_limit_carbon", "working_load_limit_alloy"
WEIGHT_LB = {
    "D": 0.61,
    "F": 0.89,
    "G": 1.44,
    "H": 2.07,
    "I": 4.30,
    "J": 8.30,
    "K": 15.0,
    "L": 20.77,
    "N": 39.5,
    "O": 60.0,
    "P": 105.0,
    "S": 148.0,
}
"""What each hook weighs [lb] on the same sheet. No law holds these weights to a few percent, so the table does not show them."""
HOIST_TONS = (0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40)
"""Tons that hoists are made for (common practice, no source): a hook body is made for one of them."""
FRAMES = "DFGHIJKLNOPS"
"""Letters in the order of the size, as the sheet has them; E, M, Q and R are none."""
RATIO_PRINTED_SO = {"I": 5.0, "S": 45.0}
"""The two bodies whose alloy limit is not one and a half times the other: 3 and 5, 40 and 45."""


def _of_each(tables: Tables) -> dict[str, dict[str, float]]:
    return {
        key[0]: {row["quantity"]: num(row["value"]) for row in rows}
        for key, rows in groups(tables[NAME], "frame").items()
    }


def law_a_body_is_made_for_a_hoist(tables: Tables) -> list[str]:
    """The carbon limit is one of the tons that hoists are made for (common practice, no source), each for one body."""
    limits = [got[CARBON] for got in _of_each(tables).values()]
    found = [f"{NAME}/claims.csv: no hoist is made for {one} tons" for one in limits if one not in HOIST_TONS]
    return found + (
        [] if len(set(limits)) == len(limits) else [f"{NAME}/claims.csv: two bodies of one limit"]
    )


def law_alloy_is_half_as_strong_again(tables: Tables) -> list[str]:
    """Strength of quenched alloy over carbon steel forgings is about 1.5 (design factor the same): 1.5 times, cut to the half ton up
    to 2 and to the whole ton above.
    """
    found = []
    for frame, got in _of_each(tables).items():
        step = 0.5 if got[ALLOY] < 2 else 1.0
        wanted = RATIO_PRINTED_SO.get(frame, math.floor(1.5 * got[CARBON] / step) * step)
        found += band(NAME, (frame, "alloy"), got[ALLOY] - wanted, 0, 0)
    return found


def law_strength_and_weight_of_one_shape(tables: Tables) -> list[str]:
    """Hooks of one shape: limit about d^2, weight about d^3, so limit over weight^(2/3) stays within a band; limits rise from letter
    to letter.
    """
    found, each = [], _of_each(tables)
    if "".join(each) != FRAMES:
        found.append(f"{NAME}/claims.csv: the letters are {FRAMES}")
    for frame, got in each.items():
        found += band(NAME, frame, got[CARBON] / WEIGHT_LB[frame] ** (2 / 3), 1.0, 1.45)
    for quantity in (CARBON, ALLOY):
        found += rising(NAME, quantity, ((FRAMES.index(f), got[quantity]) for f, got in each.items()))
    return found
