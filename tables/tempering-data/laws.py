"""Laws of the table tempering-data. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, column, groups, num, rising


def law_tempering(tables: Tables) -> list[str]:
    """A hotter temper is softer and tougher; yield is under tensile strength; annealed is softer than normalised.

    Strengths were whole ksi before they were MPa (tenths of ksi where not tempered), and stand within half a megapascal.
    """
    found = []
    rows = tables["tempering-data"]
    for (steel, condition, temper), group in groups(rows, "steel", "condition", "temper_degC").items():
        got = column(group, "quantity")
        for quantity, value in got.items():
            if quantity.endswith("strength"):  # printed in ksi in the American handbooks the pages go back to
                tenths = 1 if temper == "none" else 10
                ksi = tenths * math.floor(value / 0.6894757 / tenths + 0.5) / 10
                half = 0.051 if temper == "none" else 0.51
                found += band(
                    "tempering-data", (steel, temper, quantity), value - ksi * 6.894757, -half, half
                )
        found += band(
            "tempering-data",
            (steel, condition, temper),
            got.get("yield_strength", math.nan) / got.get("tensile_strength", math.nan),
            0.55,
            0.95,
        )
    for (steel, quantity), group in groups(rows, "steel", "quantity").items():
        sign = -1 if quantity.endswith("strength") else 1
        quenched = [
            (num(r["temper_degC"]), sign * num(r["value"])) for r in group if r["temper_degC"] != "none"
        ]
        found += rising("tempering-data", (steel, quantity), quenched)
        slow = {
            r["condition"].split("_")[0]: sign * num(r["value"]) for r in group if r["temper_degC"] == "none"
        }
        if quantity != "reduction_of_area" and not slow.get("normalized", math.nan) < slow.get(
            "annealed", math.nan
        ):
            found.append(
                f"tempering-data/claims.csv {steel} {quantity}: annealed must be softer than normalised"
            )
    return found
