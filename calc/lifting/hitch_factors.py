"""What a choke, a basket and a tight bend leave of a sling's straight rating.

Question of the trade: the same sling, put on another way, holds how much? Tables choker-factors (share of the
vertical rating in a choke; share of the choker rating by the angle of the choke) and rope-bending (0027/ND section
7.8: factor 1 / (1 - 0.5 / sqrt(D/d)), printed for D/d from 1 to 7). Where two sources give a share, the smaller one
holds.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.tables import number, table, value_si
from calc.worksheet import Citation

HARDEST_BEND = 1.0
"""Ratio of object to rope below which wire rope is not bent at all in its body (0027/ND, Table 7-1)."""

WIDEST_PRINTED_BEND = 7.0
"""Ratio up to which the bending factor is printed; wider bends take its last figure, which is on the safe side."""


@dataclass(frozen=True)
class Share:
    """What is left of a rating [-], the words for it, and where that stands."""

    share: float
    words: str
    citations: tuple[Citation, ...]


def choker_share(kind: str) -> Share:
    """Share of the vertical rating that a choke leaves at a wide angle, for a kind of sling.

    Natural fibre rope: the smallest share of its own printed table. All others: the general three quarters.
    """
    if kind == "fibre-rope":
        printed = table("fibre-rope-slings").where(hitch="choker")
        shares = []
        for row in printed:
            upright = table("fibre-rope-slings").one(
                sling=row["sling"],
                size_in=row["size_in"],
                unit=row["unit"],
                source=row["source"],
                hitch="vertical",
            )
            shares.append(number(row) / number(upright))
        first = printed[0]
        return Share(
            min(shares), "choke on natural fibre rope", (Citation(first["source"], "App. II Tables"),)
        )
    row = table("choker-factors").one(quantity="share_of_vertical_rating")
    return Share(value_si(row, "fraction"), "choke", (Citation(row["source"], row["locator"]),))


def choke_angle_share(angle_of_choke_deg: float) -> Share:
    """Share of the choker rating by the angle of the choke [deg], 180 = straight through, 0 = bent right back.

    Between two printed bands the smaller share holds. Range 0 to 180.
    """
    rows = table("choker-factors").where(quantity="share_of_choker_rating")
    reached = [row for row in rows if float(row["choke_angle_from"]) <= angle_of_choke_deg]
    inside = [row for row in reached if angle_of_choke_deg <= float(row["choke_angle_to"])]
    # Where two bands meet, and in the gap between two printed whole degrees, the smaller share holds.
    found = min(
        inside or [max(reached, key=lambda row: float(row["choke_angle_from"]))],
        key=lambda row: value_si(row, "fraction"),
    )
    return Share(
        value_si(found, "fraction"),
        f"angle of choke {angle_of_choke_deg:.0f}°",
        (Citation(found["source"], found["locator"]),),
    )


def bend_share(object_over_rope: float) -> Share:
    """Share of a wire rope's rating left where it bends round a pin or a corner, by object / rope diameter [-].

    Range: 1 and over; raises ValueError below.
    """
    if object_over_rope < HARDEST_BEND - 1e-12:
        raise ValueError("wire rope is not bent round anything thinner than itself")
    ratio = min(object_over_rope, WIDEST_PRINTED_BEND)
    return Share(
        1.0 - 0.5 / math.sqrt(ratio),
        f"bend {object_over_rope:.3g} times its own diameter",
        (Citation("nd-0027", "s. 7.8, Table 7-1 and its formula"),),
    )
