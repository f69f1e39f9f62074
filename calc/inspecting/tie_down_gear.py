"""What the checks of tie-down gear share: where their rules stand, and the limit on a label of gear that was found sound.

Question of the trade: is this strap, binder or anchor fit for the road? 49 CFR 393.104(b) allows no damaged or weakened part
and prints no size of damage that may stay, so every fault is out. Lists that inspectors use at the roadside do print
sizes. They say when a truck is stopped on the spot, and are never read here as wear that may be kept.
"""

from __future__ import annotations

from collections.abc import Callable

from calc.declaration import Citation
from calc.hauling.tie_down_items import MOST_LIMIT_LB
from calc.inputs import Bounds, QuantityInput
from calc.inspecting.inspection import Inspected, by_rules
from calc.words.facts import Absent, absent

RULES = "tie-down-rules"
NO_DAMAGE = ("system", "no-damage", RULES)
NO_KNOTS = ("tie_down", "no-knots", RULES)
REPAIRS = ("tie_down", "repairs", RULES)
CANNOT_LOOSEN = ("tie_down", "cannot-loosen", RULES)
EDGES = ("tie_down", "edge-protection", RULES)
ANCHORS = ("system", "anchor-points", RULES)
NO_WELD = ("system", "no-weld-on-frame", RULES)
WEAKEST = ("limit", "weakest-part", RULES)
UNMARKED = ("limit", "unmarked-in-canada", RULES)


def by(*rules: tuple[str, str, str]) -> Callable[[], tuple[Citation, ...]]:
    """Where rules of tie-down gear stand."""
    return by_rules(*rules)


def limit_input(name: str) -> QuantityInput:
    """A limit as a label or plate gives it."""
    return QuantityInput(
        name,
        dimension="force",
        bounds=Bounds(above=0, at_most=MOST_LIMIT_LB),
        required=False,
        sense="capacity",
    )


def limit_if_sound(inspected: Inspected, *limits_n: float | None) -> float | Absent:
    """The least of the limits on its labels [N], only where the gear is fit and every limit was given."""
    if not inspected.fit:
        return absent("until-answered")
    known = [one for one in limits_n if one is not None]
    return min(known) if len(known) == len(limits_n) else absent("no-limit-given")


__all__ = [
    "ANCHORS",
    "CANNOT_LOOSEN",
    "EDGES",
    "NO_DAMAGE",
    "NO_KNOTS",
    "NO_WELD",
    "REPAIRS",
    "RULES",
    "UNMARKED",
    "WEAKEST",
    "by",
    "limit_if_sound",
    "limit_input",
]
