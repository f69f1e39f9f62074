"""Laws of the table weld-parameters. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, column, groups, num, rising


def law_weld_parameters(tables: Tables) -> list[str]:
    """Currents rise with the size of the electrode; low under high; 25 to 60 A a millimetre of core."""
    found = []
    for key, rows in groups(tables["weld-parameters"], "electrode", "size_in").items():
        got = column(rows, "quantity")
        if not got.get("current_low", math.nan) < got.get("current_high", math.nan):
            found.append(f"weld-parameters/claims.csv {key}: low is not under high")
        for value in got.values():
            found += band("weld-parameters", key, value / (num(key[1]) * 25.4), 23, 60)
    for key, rows in groups(tables["weld-parameters"], "electrode", "quantity").items():
        found += rising("weld-parameters", key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    return found
