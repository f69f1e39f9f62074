"""Laws of the table chain-heat-asme. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num, rising


def law_heat_asme(tables: Tables) -> list[str]:
    """Rises with temperature, F and C agree within a degree, grade 100 loses at least what grade 80 does, hot more than after."""
    rows = tables["chain-heat-asme"]
    found = []
    for row in rows:
        found += band(
            "chain-heat-asme",
            row["temperature_degF"],
            num(row["temperature_degC"]) - (num(row["temperature_degF"]) - 32) / 1.8,
            -0.6,
            0.6,
        )
        if num(row["value"]) % 5:
            found.append(
                f"chain-heat-asme/claims.csv {row['temperature_degF']}: {row['value']} is not a step of five"
            )
    for key, group in groups(rows, "grade", "quantity").items():
        found += rising(
            "chain-heat-asme",
            key,
            ((num(r["temperature_degF"]), num(r["value"])) for r in group),
            strict=False,
        )
        if len(group) != 7:
            found.append(f"chain-heat-asme/claims.csv {key}: needs seven temperatures")
    at = {(r["grade"], r["temperature_degF"], r["quantity"]): num(r["value"]) for r in rows}
    for (grade, degree, quantity), value in at.items():
        if grade == "80" and value > at.get(("100", degree, quantity), math.inf):
            found.append(
                f"chain-heat-asme/claims.csv {degree} {quantity}: grade 80 loses more than grade 100"
            )
        if quantity == "reduction_afterwards" and value >= at.get(
            (grade, degree, "reduction_while_hot"), math.inf
        ):
            found.append(f"chain-heat-asme/claims.csv {grade} {degree}: loses more afterwards than while hot")
    return found
