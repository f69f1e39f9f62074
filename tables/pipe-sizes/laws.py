"""Laws of the table pipe-sizes. The source of each law stands in its docstring."""

from __future__ import annotations

from functools import cache
from typing import Any

from build_scripts.laws.tools import Tables, band, column, groups, num


@cache
def _library_pipe(size: str, schedule: str) -> tuple[float, float]:
    from fluids.piping import nearest_pipe

    nominal: Any = num(size)  # the library's stub says int; sizes such as 1/2 are meant as well
    _, _inside, outside, wall = nearest_pipe(NPS=nominal, schedule=schedule)
    return outside * 1000, wall * 1000


def law_pipe_sizes(tables: Tables) -> list[str]:
    """ASME B36.10M in the `fluids` library (metric columns): outside diameter within 0.26 mm, wall within 0.01 mm; inside is positive."""
    found = []
    for (size, schedule), rows in groups(tables["pipe-sizes"], "pipe_size", "schedule").items():
        got = column(rows, "quantity")
        if len(got) != 2:
            found.append(f"pipe-sizes/claims.csv {size} {schedule}: needs diameter and wall")
            continue
        outside, wall = _library_pipe(size, schedule)
        found += band("pipe-sizes", (size, schedule), got["outside_diameter"] * 25.4 - outside, -0.45, 0.26)
        found += band("pipe-sizes", (size, schedule), got["wall_thickness"] * 25.4 - wall, -0.012, 0.012)
    for key, group in groups(tables["pipe-sizes"], "pipe_size", "quantity").items():
        values = column(group, "schedule")
        if key[1] == "outside_diameter" and len(set(values.values())) != 1:
            found.append(f"pipe-sizes/claims.csv {key}: one size has one outside diameter")
    return found
