"""How thin may the wire of a chain get before the chain is out?

Limits: least thickness by size (29 CFR 1910.184 Table N-184-1, Washington Table 13), wear, and shares of the thickness
(DGUV 209-021 after DIN 685, NAVEDTRA 14251 and others), all in tables/chain-wear and tables/chain-limits.
"""

from __future__ import annotations

from calc.inspecting.chain_marks import ChainSize
from calc.inspecting.inspection import Limit, limit_of, limits, strictest_first
from calc.inspecting.nominal_wire import nominal_m
from calc.quantities import to_si
from calc.tables import number, table
from calc.words.facts import message


def thickness_limits(size: ChainSize) -> tuple[Limit, ...]:
    """Every least thickness for a size [m], strictest first: printed ones, wear taken from the size, and shares of the
    thickness.
    """
    found = []
    for claim in table("chain-wear").rows:
        if claim["size_in"] not in size.inch_names or claim["unit"] == "mm":
            continue  # the millimetre rows are the same table's inch rows, rounded
        limit = limit_of(claim, "length")
        least, printed = limit.value_si, limit.printed
        if claim["quantity"] == "maximum_wear":
            whole = to_si(number({**claim, "value": claim["size_in"]}), "in", "length")
            least, printed = whole - limit.value_si, message("limit-of-wear", limit=limit.printed)
        found.append(Limit(least, printed, "out_under", limit.citations))
    for share in limits("chain-limits", ("chain",), "thickness_loss", "fraction"):
        printed = message("limit-of-thickness", limit=share.printed)
        found.append(Limit(nominal_m(size) * (1 - share.value_si), printed, "out_under", share.citations))
    return strictest_first(found)


def worn_out(measured_m: float, size: ChainSize) -> bool:
    """Whether a wire of this thickness [m] is out by the strictest limit of the size."""
    return thickness_limits(size)[0].rejects(measured_m)


__all__ = ["thickness_limits", "worn_out"]
