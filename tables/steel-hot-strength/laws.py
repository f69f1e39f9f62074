"""Laws of the table steel-hot-strength. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num, rising


def law_hot_strength(tables: Tables) -> list[str]:
    """EN 1993-1-2: all shares fall from 1 at 20 C to 0 at 1,200 C, the proportional limit never above yield.

    Its straight stretches: modulus 1 - (T - 100)/1000 to 500 C and 0.09 at 800 C down to nothing; proportional limit from
    1 at 100 C to 0.42 at 400 C and from 0.05 at 800 C down; yield whole to 400 C and from 0.06 at 900 C down (0.11 at 800).
    Its own equation 4.22 for the critical temperature, 39.19 ln(1/(0.9674 k^3.833) - 1) + 482, gives the yield column
    back within 6 C (15 C at 800 C).
    """
    found = []
    for key, group in groups(tables["steel-hot-strength"], "quantity").items():
        pairs = sorted((num(r["temperature_degC"]), num(r["value"])) for r in group)
        found += rising("steel-hot-strength", key, [(t, -v) for t, v in pairs], strict=False)
        if pairs[0] != (20.0, 1.0) or pairs[-1] != (1200.0, 0.0) or len(pairs) != 13:
            found.append(
                f"steel-hot-strength/claims.csv {key}: runs from 1 at 20 C to 0 at 1,200 C in 13 rows"
            )
    at = {(num(r["temperature_degC"]), r["quantity"]): num(r["value"]) for r in tables["steel-hot-strength"]}
    for (degree, quantity), value in at.items():
        if quantity == "proportional_limit_factor" and value > at.get((degree, "yield_factor"), -1):
            found.append(f"steel-hot-strength/claims.csv {degree}: proportional limit above yield")
        straight = _straight_share(degree, quantity)
        if straight is not None:
            found += band("steel-hot-strength", (degree, quantity), value - straight, -0.00051, 0.00051)
        elif quantity == "yield_factor":
            back = 39.19 * math.log(1 / (0.9674 * value**3.833) - 1) + 482
            room = 15 if degree == 800 else 6
            found += band(
                "steel-hot-strength", (degree, "yield by equation 4.22"), back - degree, -room, room
            )
    return found


# quantity -> where its first straight stretch begins and ends, its loss per degree there; where the last begins, its share
STRAIGHT = {
    "yield_factor": (20, 400, 0.0, 900, 0.06),
    "proportional_limit_factor": (100, 400, 0.58 / 300, 800, 0.05),
    "modulus_factor": (100, 500, 1 / 1000, 800, 0.09),
}


def _straight_share(degree: float, quantity: str) -> float | None:
    """The share on the straight stretches of the three curves; None between them."""
    begins, ends, loss, last_begins, last_share = STRAIGHT[quantity]
    if degree <= ends:
        return 1 - loss * max(degree - begins, 0)
    if degree >= last_begins:
        return last_share * (1200 - degree) / (1200 - last_begins)
    return None
