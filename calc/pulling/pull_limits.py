"""The lowest of every limit on a trial pull, and the stages that stay under it.

Question of the trade: how hard may I pull at most, and what sets that? Each part by its rating as used, the gauge less its
error, ram, pump and hose by their plates, hoist, known weight and anchor by theirs.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.lifting.leg_geometry import flatness, leg_tension_n
from calc.lifting.path_items import ItemRating, PartName
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.words.facts import Message, Quantity, message

STAGES = (0.10, 0.25, 0.50, 0.75, 1.00)
"""Shares of the target at which the pull stops to be looked at (common practice, no source)."""


AS_GIVEN = message("as-given")
"""Where a limit comes from that the reader gave."""


@dataclass(frozen=True)
class PullLimit:
    """One limit on the pull: its name, its force [N], and where that comes from."""

    name: PartName
    force_n: float
    basis: Message = AS_GIVEN


def item_limit(rating: ItemRating) -> PullLimit | None:
    """The pull [N] that one part of the string may take; None if it may not be used, or its legs stand too flat.

    Several legs side by side count as the string says (two, or three on a load that gives), by the sine of their angle; no more
    than is printed for the whole sling.
    """
    item = rating.item
    if rating.rating_kg is None or rating.printed is None:
        return None
    if item.legs > 1 and flatness(item.angle_deg) == "too-flat":
        return None
    one_leg_n = rating.rating_kg * STANDARD_GRAVITY_M_PER_S2
    if item.legs == 1:
        return PullLimit(item.label, one_leg_n, rating.printed)
    together_n = one_leg_n / leg_tension_n(1.0, item.counted_legs, item.angle_deg)
    if rating.whole_kg is not None:
        together_n = min(together_n, rating.whole_kg * STANDARD_GRAVITY_M_PER_S2)
    angle = Quantity(item.angle_deg, "angle")
    return PullLimit(
        item.label, together_n, message("of-legs", printed=rating.printed, legs=item.legs, angle=angle)
    )


def lowest(limits: Sequence[PullLimit]) -> PullLimit:
    """The limit that governs; the first of equals."""
    return min(limits, key=lambda limit: limit.force_n)


def stages_n(target_n: float) -> tuple[float, ...]:
    """The forces [N] at which the pull stops to be looked at, up to the target [N].

    >>> stages_n(1000.0)
    (100.0, 250.0, 500.0, 750.0, 1000.0)
    """
    return tuple(share * target_n for share in STAGES)


__all__ = ["STAGES", "PullLimit", "item_limit", "lowest", "stages_n"]
