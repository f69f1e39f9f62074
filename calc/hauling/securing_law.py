"""What does the law ask of tie-downs: how much together, and how many?

49 CFR 393.106(d) and 393.110, read in the law text (tables/tie-down-numbers): the counted limits add up to half the weight; a
tie-down from the truck to the load, or round the load and back to the same side, counts half its limit, one over the load
to the other side counts whole. Canada (NSC Standard 10) asks the same sum (read in reprints). The law prints feet and
rounded metres; feet are counted here. Vehicles and machines: 393.128 and 393.130. In Europe there is no such count: the
directive 2014/47/EU asks the forces (calc.hauling.lashing_forces), and two straps at least go over a load.
"""

from __future__ import annotations

import math
from typing import Literal

from calc.comparing import exceeds
from calc.hauling.lashing_forces import FEWEST_OVER_THE_TOP, Direction
from calc.quantities import to_si
from calc.tables import number, table

Country = Literal["us", "canada", "europe"]
COUNTRIES: tuple[Country, ...] = ("us", "canada", "europe")
COMMODITIES = ("general", "machine", "vehicle", "coil", "pipe", "plate-bar")
ROLLING = ("coil", "pipe")
"""Loads that roll unless they are chocked (393.106(c)(1))."""
ROLES = ("over-top", "direct", "same-side")
"""Over the load to the other side; from the truck to the load; round the load and back to the same side."""
_COUNTS_AS = {"over-top": "other_side", "direct": "direct", "same-side": "same_side"}

_SLACK = 1e-9


def _figure(item: str, quantity: str, unit: str = "") -> float:
    conditions = {"unit": unit} if unit else {}
    return number(table("tie-down-numbers").one(item=item, quantity=quantity, **conditions))


def counted_share(role: str) -> float:
    """Part of a tie-down's limit that the law counts [-]."""
    return _figure(_COUNTS_AS[role], "counted_share_of_limit")


def share_asked() -> float:
    """Part of the weight that the counted limits must come to [-]."""
    return _figure("aggregate", "required_share_of_weight")


def hold_down_share() -> float:
    """Part of the weight with which a load that is not contained is held down [-] (393.102(b))."""
    return _figure("hold_down", "downward_share_of_weight")


def working_load_share(direction: Direction) -> float:
    """Part of the weight that may push a load in a direction without a working load limit being passed [-] (393.102(a)(2))."""
    kind = direction if direction in ("forward", "rearward") else "sideways"
    return _figure("working_load_limit", f"{kind}_share_of_weight")


def coil_kg() -> float:
    """From this weight a coil of metal is held by the pattern of 393.120 [kg]."""
    return to_si(_figure("coil", "weight_at_least", "lb"), "lb", "weight")


def heavy_kg() -> float:
    """From this weight a machine or vehicle is held by four tie-downs at least [kg]."""
    return to_si(_figure("heavy_equipment", "weight_at_least", "lb"), "lb", "weight")


def by_length_and_weight(length_m: float, weight_kg: float, blocked: bool) -> int:
    """How many tie-downs a load of a length [m] and weight [kg] needs (393.110(b), (c)).

    >>> [by_length_and_weight(ft * 0.3048, 1000, blocked=False) for ft in (5, 10, 11, 20, 21)]
    [2, 2, 3, 3, 4]
    """
    feet = length_m / to_si(1.0, "ft", "length")
    each_ft = _figure("blocked", "one_per")
    if blocked:
        return max(1, math.ceil(feet / each_ft - _SLACK))
    longest_ft = _figure("medium", "length_at_most", "ft")
    if exceeds(feet, longest_ft):
        first = round(_figure("long", "tie_downs_for_first"))
        return first + math.ceil((feet - longest_ft) / _figure("long", "one_more_per") - _SLACK)
    short = not exceeds(feet, _figure("short_light", "length_at_most", "ft"))
    light = not exceeds(weight_kg, to_si(_figure("short_light", "weight_at_most", "lb"), "lb", "weight"))
    return round(_figure("short_light" if short and light else "medium", "tie_downs"))


def tie_downs_needed(
    country: str, commodity: str, length_m: float, weight_kg: float, blocked: bool, over_top: bool
) -> int:
    """How many tie-downs the law asks at least; `over_top`: whether any goes over the load."""
    if country == "europe":
        return FEWEST_OVER_THE_TOP if over_top else 1
    needed = by_length_and_weight(length_m, weight_kg, blocked)
    if commodity in ("machine", "vehicle") and not exceeds(heavy_kg(), weight_kg):
        return max(needed, round(_figure("heavy_equipment", "tie_downs")))
    if commodity == "vehicle":
        return max(needed, round(_figure("light_vehicle", "tie_downs")))
    return needed


__all__ = [
    "COMMODITIES",
    "COUNTRIES",
    "ROLES",
    "ROLLING",
    "by_length_and_weight",
    "coil_kg",
    "counted_share",
    "heavy_kg",
    "hold_down_share",
    "share_asked",
    "tie_downs_needed",
    "working_load_share",
]
