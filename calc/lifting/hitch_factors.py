"""What a choke, a basket and a tight bend leave of a sling's straight rating.

Question of the trade: the same sling, put on another way, holds how much? Tables choker-factors (share of the
vertical rating in a choke; share of the choker rating by the angle of the choke) and rope-bending (0027/ND section
7.8: factor 1 / (1 - 0.5 / sqrt(D/d)), printed for D/d from 1 to 7). Where two sources give a share, the smaller one
holds.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation
from calc.tables import number, table, value_si
from calc.words.facts import Message, Number, Quantity, message

HARDEST_BEND = 1.0
"""Ratio of object to rope below which wire rope is not bent at all in its body (0027/ND, Table 7-1)."""

WIDEST_PRINTED_BEND = 7.0
"""Ratio up to which the bending factor is printed; wider bends take its last figure, which is on the safe side."""

WIDE_ENOUGH = {"chain": 6.0, "fibre-rope": 8.0}
"""Object over wire of a chain or over diameter of a fiber rope [-], from which on a bend takes nothing (ASME B30.9, from memory, not
read; EN 818-6, from memory, asks 4 of chain). Tighter bends are weakened by figures that were read nowhere."""

BENT_KINDS = ("wire-rope", *WIDE_ENOUGH)
"""Slings that a bend weakens by its width. A choked one bends round the load."""


@dataclass(frozen=True)
class Share:
    """What is left of a rating [-], what it comes from (a message of shared/hitch-shares or of the sheet), and where that
    stands.
    """

    share: float
    said: Message
    citations: tuple[Citation, ...] = ()


def choker_share(kind: str) -> Share:
    """Share of the vertical rating that a choke leaves at a wide angle, for a kind of sling.

    Natural fibre rope (`fibre-rope`): the smallest share of its own printed table, 29 CFR 1918 App. II. All others: the
    general three quarters.

    >>> choker_share("chain").share
    0.75
    """
    if kind != "fibre-rope":
        row = table("choker-factors").one(quantity="share_of_vertical_rating")
        return Share(
            value_si(row, "fraction"), message("share-choke"), (Citation(row["source"], row["locator"]),)
        )
    slings = table("fibre-rope-slings")
    printed = slings.where(hitch="choker")
    keys = ("sling", "size_in", "unit", "source")
    shares = [
        number(row) / number(slings.one(hitch="vertical", **{key: row[key] for key in keys}))
        for row in printed
    ]
    where = Citation(printed[0]["source"], "App. II Tables")
    return Share(min(shares), message("share-choke-of-fibre-rope"), (where,))


def choke_angle_share(angle_of_choke_deg: float) -> Share:
    """Share of the choker rating by the angle of the choke [deg], 180 = straight through, 0 = bent right back.

    Between two printed bands the smaller share holds. Range 0 to 180; tables/choker-factors, after ASME B30.9.

    >>> choke_angle_share(120.0).share, choke_angle_share(121.0).share
    (0.87, 1.0)
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
        message("share-choke-angle", angle=Quantity(angle_of_choke_deg, "angle")),
        (Citation(found["source"], found["locator"]),),
    )


def bent_too_hard(object_over_rope: float) -> bool:
    """Whether a wire rope would be bent round something thinner than itself, by object / rope diameter [-].

    >>> bent_too_hard(1.0), bent_too_hard(0.99)
    (False, True)
    """
    return exceeds(HARDEST_BEND, object_over_rope)


def bend_share(object_over_rope: float) -> Share:
    """Share of a wire rope's rating left where it bends round a pin or a corner, by object / rope diameter [-].

    0027/ND, section 7.8. Range: 1 and over; raises ValueError below.

    >>> bend_share(4.0).share
    0.75
    """
    if bent_too_hard(object_over_rope):
        raise ValueError("wire rope is not bent round anything thinner than itself")
    ratio = min(object_over_rope, WIDEST_PRINTED_BEND)
    return Share(
        1.0 - 0.5 / math.sqrt(ratio),
        message("share-bend", ratio=Number(object_over_rope)),
        (Citation("nd-0027", "s. 7.8, Table 7-1 and its formula"),),
    )


def wide_bend_share(kind: str, object_over_sling: float) -> Share | None:
    """What a bend leaves of a chain or a fiber rope: all where it is wide enough, and None where nobody read how much.

    object_over_sling -- object over the wire of the chain or the diameter of the rope [-]; kind: one of WIDE_ENOUGH

    >>> wide_bend_share("chain", 6.0).share, wide_bend_share("chain", 5.9)
    (1.0, None)
    """
    if exceeds(WIDE_ENOUGH[kind], object_over_sling):
        return None
    return Share(1.0, message("share-wide-bend"))


__all__ = [
    "BENT_KINDS",
    "HARDEST_BEND",
    "WIDEST_PRINTED_BEND",
    "WIDE_ENOUGH",
    "Share",
    "bend_share",
    "bent_too_hard",
    "choke_angle_share",
    "choker_share",
    "wide_bend_share",
]
