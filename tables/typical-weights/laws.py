"""Laws of the table typical-weights. The source of each law stands in its docstring."""

from __future__ import annotations

import math
from itertools import pairwise

from build_scripts.laws.tools import Tables, band, column

NAME = "typical-weights"
LIGHTER_FIRST = (
    (
        "car_engine_four_cylinder",
        "car_engine_v6",
        "car_engine_v8",
        "car_engine_cast_iron_v8",
        "car_engine_any",
    ),
    ("car_engine_accessories", "gearbox_manual", "gearbox_automatic", "car_engine_four_cylinder"),
    ("knee_mill_usual", "knee_mill_any", "knee_mill_larger_series"),
    ("lathe_7_by_14", "lathe_9_in_bench", "lathe_9_in_stand", "lathe_medium"),
)
"""Things of a kind, the lighter first."""


def law_bigger_things_weigh_more(tables: Tables) -> list[str]:
    """Of things of a kind the bigger weighs more: by a tenth at least, and not five times as much (own reasoning)."""
    weights = column(tables[NAME], "thing", quantity="high_weight")
    found = []
    for kind in LIGHTER_FIRST:
        for light, heavy in pairwise(kind):
            ratio = weights.get(heavy, math.nan) / weights.get(light, math.nan)
            found += band(NAME, (light, heavy), ratio, 1.1, 5)
    return found


def law_estimates_are_round(tables: Tables) -> list[str]:
    """An estimate is given to 5 lb below 500 lb and to 50 lb above: whoever prints more has weighed one thing, not a kind."""
    found = []
    for row in tables[NAME]:
        pounds = float(row["value"].replace(",", ""))
        found += band(NAME, (row["thing"], "left over"), pounds % (5 if pounds < 500 else 50), 0, 0)
    return found
