"""Laws of the table shackles-dee. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num, rising

# column of Lloyd's Table 8.5.1 -> millimetres a root of a tonne, and how far the printed millimetre may be off
DEE_COLUMNS = {
    ("either", "jaw_width"): (19.82, 0.53),
    ("either", "inside_length"): (43.57, 0.57),
    ("mild", "body_diameter"): (13.1, 0.64),
    ("mild", "pin_diameter"): (14.93, 0.51),
    ("higher_tensile", "body_diameter"): (10.25, 0.83),
    ("higher_tensile", "pin_diameter"): (11.74, 0.51),
}


def law_dee_shackles(tables: Tables) -> list[str]:
    """Lloyd's Table 8.5.1: constant stress, so every dimension is a constant times the root of the load, to the millimetre."""
    found = []
    for row in tables["shackles-dee"]:
        constant, room = DEE_COLUMNS[row["steel"], row["quantity"]]
        off = num(row["value"]) - constant * math.sqrt(num(row["swl_t"]))
        found += band("shackles-dee", (row["swl_t"], row["steel"], row["quantity"]), off, -room, room)
    for key, group in groups(tables["shackles-dee"], "steel", "quantity").items():
        found += rising("shackles-dee", key, ((num(r["swl_t"]), num(r["value"])) for r in group))
    return found
