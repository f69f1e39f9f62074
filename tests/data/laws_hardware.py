"""Laws of shackles, eyebolts and turnbuckles.

The source of each law stands in its docstring."""

from __future__ import annotations

import math
from itertools import pairwise

from tests.data.law_tools import (
    LBF,
    Tables,
    away,
    band,
    column,
    groups,
    num,
    rising,
)


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
        found += band(
            "shackles",
            (row["size_in"], "pin over bow"),
            num(row["pin_in"]) - num(row["size_in"]),
            1 / 16,
            1 / 4,
        )
    for key, group in groups(rows, "grade").items():
        found += rising("shackles", key, ((num(r["size_in"]), num(r["value"])) for r in group))
    for key, group in groups(rows, "size_in").items():
        by_grade = column(group, "grade")
        if len(by_grade) == 2:
            found += band("shackles", key, by_grade["B"] / by_grade["A"], 1.45, 2.0)
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


COARSE_THREADS = {
    "1/4": 20,
    "5/16": 18,
    "3/8": 16,
    "7/16": 14,
    "1/2": 13,
    "9/16": 12,
    "5/8": 11,
    "3/4": 10,
    "7/8": 9,
    "1": 8,
    "1-1/8": 7,
    "1-1/4": 7,
    "1-1/2": 6,
}


def law_eyebolts_inch(tables: Tables) -> list[str]:
    """13,000 psi on the tensile stress area of the coarse thread, 0.7854 (d - 0.9743/n)2 (ASME B1.1), within 0.75 % (1/4 in: 3.4 %)."""
    found = []
    for thread, load in column(tables["eyebolts"], "thread", unit="lb").items():
        area = 0.7854 * (num(thread) - 0.9743 / COARSE_THREADS.get(thread, math.nan)) ** 2
        found += away("eyebolts", thread, load, 13000 * area, 0.034 if thread == "1/4" else 0.0075)
    return found


def law_eyebolts_metric(tables: Tables) -> list[str]:
    """DIN 580: rises between the square and the power 2.55 of the diameter from size to size."""
    rated = sorted((num(t[1:]), load) for t, load in column(tables["eyebolts"], "thread", unit="kg").items())
    return [
        p
        for (d1, w1), (d2, w2) in pairwise(rated)
        for p in band("eyebolts", f"M{d1:g} to M{d2:g}", math.log(w2 / w1) / math.log(d2 / d1), 2.1, 2.55)
    ]


def law_turnbuckles(tables: Tables) -> list[str]:
    """AASHTO M 269: break = 5 x working load exactly in pounds; kN and lb agree within the printed tenth."""
    found = []
    for thread, rows in groups(tables["turnbuckles"], "thread_in").items():
        got = {(r["quantity"], r["unit"]): num(r["value"]) for r in rows}
        if len(got) != 4:
            found.append(f"turnbuckles.csv {thread}: needs four values")
            continue
        found += away(
            "turnbuckles", thread, got["minimum_breaking_force", "lbf"], 5 * got["working_load", "lbf"], 1e-9
        )
        for quantity in ("minimum_breaking_force", "working_load"):
            found += band(
                "turnbuckles",
                (thread, quantity),
                got[quantity, "kN"] - got[quantity, "lbf"] * LBF / 1000,
                -0.06,
                0.06,
            )
    for key, group in groups(tables["turnbuckles"], "quantity", "unit").items():
        found += rising("turnbuckles", key, ((num(r["thread_in"]), num(r["value"])) for r in group))
    return found
