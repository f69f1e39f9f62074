"""Laws of the table shackles. The source of each law stands in its docstring."""

from __future__ import annotations

import math
from itertools import pairwise

from build_scripts.laws.tools import Tables, away, band, column, groups, num, rising


def law_shackle_scaling(tables: Tables) -> list[str]:
    """Rating over bow diameter squared: grade A 7.1 to 9.5, grade B 11.1 to 14.3 short tons per in2; both rise."""
    found = []
    bands = {"A": (7.1, 9.5), "B": (11.1, 14.3)}
    rows = [r for r in tables["shackles"] if r["quantity"] == "working_load_limit"]
    for row in rows:
        low, high = bands[row["grade"]]
        found += band(
            "shackles",
            (row["grade"], row["size_in"]),
            num(row["value"]) / num(row["size_in"]) ** 2,
            low,
            high,
        )
    for key, group in groups(rows, "grade").items():
        found += rising("shackles", key, ((num(r["size_in"]), num(r["value"])) for r in group))
    for key, group in groups(rows, "size_in").items():
        by_grade = column(group, "grade")
        if len(by_grade) == 2:
            found += band("shackles", key, by_grade["B"] / by_grade["A"], 1.45, 2.0)
    return found


def law_shackle_pins(tables: Tables) -> list[str]:
    """RR-C-271: the pin is 1/16 in thicker than the bow to 7/16 in, 1/8 in to 1-1/2 in, 1/4 in above; 3 d2 (US Navy) is less
    than any rating, and a breaking load stands beside a grade A rating of the same size."""
    found = []
    for row in tables["shackles"]:
        size = num(row["size_in"])
        more = 1 / 16 if size < 0.5 else 1 / 8 if size < 1.75 else 1 / 4
        found += band("shackles", (row["size_in"], "pin over bow"), num(row["pin_in"]) - size, more, more)
        if row["quantity"] == "working_load_limit":
            found += band("shackles", (row["size_in"], "navy rule"), num(row["value"]), 3 * size**2, math.inf)
        elif row["grade"] != "A":
            found.append(f"shackles/claims.csv {row['size_in']}: a breaking load was read for grade A only")
    return found


def law_shackle_break(tables: Tables) -> list[str]:
    """Design factor 5: the printed breaking loads are exactly five times the grade A limit."""
    limit = column(tables["shackles"], "size_in", grade="A", quantity="working_load_limit")
    broken = column(tables["shackles"], "size_in", quantity="minimum_breaking_force")
    return [
        p
        for size, load in broken.items()
        for p in away("shackles", size, load, 5 * 2000 * limit.get(size, math.nan), 1e-9)
    ]


def law_shackles_grow_evenly(tables: Tables) -> list[str]:
    """From one bow to the next a grade B limit grows as the diameter to a power between 1.5 and 2.1, to 1-3/8 in.

    A bow of the same metal carries as its diameter squared; a thick one is forged and quenched a little less well, so that
    the power is mostly less than 2. Own reasoning. The step to 1-1/2 in is larger (4.1) in every print.
    """
    limits = column(tables["shackles"], "size_in", grade="B", quantity="working_load_limit")
    ordered = sorted((num(size), load) for size, load in limits.items() if num(size) <= 1.375)
    found = [] if len(ordered) == 10 else ["shackles/claims.csv: ten sizes of grade B to 1-3/8 in are wanted"]
    for (thin, little), (thick, much) in pairwise(ordered):
        power = math.log(much / little) / math.log(thick / thin)
        found += band("shackles", ("B", thin, thick, "power of the diameter"), power, 1.5, 2.1)
    return found
