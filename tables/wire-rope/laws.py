"""Laws of the table wire-rope. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, column, num, rising


def law_wire_rope(tables: Tables) -> list[str]:
    """Strength is 51.5 to 54.5 short tons per in2 of d squared and falls slowly; sling = 0.95 and 0.70 of strength / 5, as rounded."""
    rows = [r for r in tables["wire-rope"] if r["rope"] == "6x19_eips_iwrc"]
    sizes: dict[str, set[str]] = {}
    for row in rows:
        sizes.setdefault(row["quantity"], set()).add(row["size_in"])
    strength = column(rows, "size_in", quantity="nominal_breaking_force")
    found = []
    for row in rows:
        base = strength.get(row["size_in"], math.nan)
        what = (row["size_in"], row["quantity"])
        if row["quantity"] == "nominal_breaking_force":
            found += band("wire-rope", what, num(row["value"]) / num(row["size_in"]) ** 2, 51.5, 54.5)
            continue
        wanted = base / 5 * (0.95 if row["quantity"] == "sling_vertical" else 0.70)
        half_step = 0.0055 if wanted < 1 and row["value"] != "1.0" else 0.055
        found += band("wire-rope", what, num(row["value"]) - wanted, -half_step, half_step)
    if len({frozenset(found_sizes) for found_sizes in sizes.values()}) != 1:
        found.append("wire-rope/claims.csv: strength, vertical and choker are printed for the same sizes")
    specific = [(num(s), -load / num(s) ** 2) for s, load in strength.items()]
    found += rising("wire-rope", "strength over d squared falls", specific)
    army = column(tables["wire-rope"], "size_in", rope="6x19_ips_iwrc")
    for size, load in army.items():
        found += band(
            "wire-rope",
            ("improved over extra improved", size),
            load / 2000 / strength.get(size, math.nan),
            0.86,
            0.875,
        )
    return found
