"""Laws of the table weld-metal-weights. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, band, num


def law_weld_metal(tables: Tables) -> list[str]:
    """Weight follows the square of the leg: 2.56 lb/ft per in2, as printed to two places."""
    return [
        p
        for r in tables["weld-metal-weights"]
        for p in band(
            "weld-metal-weights",
            r["fillet_size_in"],
            num(r["value"]) - 2.56 * num(r["fillet_size_in"]) ** 2,
            -0.0051,
            0.0051,
        )
    ]
