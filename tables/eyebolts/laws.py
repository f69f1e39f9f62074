"""Laws of the table eyebolts. The source of each law stands in its docstring."""

from __future__ import annotations

import math
from itertools import pairwise

from build_scripts.laws.tools import Tables, band, column, num

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
    """13,000 psi on the tensile stress area of the coarse thread, 0.7854 (d - 0.9743/n)2 (ASME B1.1), to the 10 lb: 8.3 lb off at most (1/4 in: 14)."""
    found = []
    for thread, load in column(tables["eyebolts"], "thread", unit="lb").items():
        area = 0.7854 * (num(thread) - 0.9743 / COARSE_THREADS.get(thread, math.nan)) ** 2
        room = 14 if thread == "1/4" else 8.3
        found += band("eyebolts", thread, load - 13000 * area, -room, room)
    return found


def law_eyebolts_metric(tables: Tables) -> list[str]:
    """DIN 580: rises between the square and the power 2.55 of the diameter from size to size."""
    rated = sorted((num(t[1:]), load) for t, load in column(tables["eyebolts"], "thread", unit="kg").items())
    return [
        p
        for (d1, w1), (d2, w2) in pairwise(rated)
        for p in band("eyebolts", f"M{d1:g} to M{d2:g}", math.log(w2 / w1) / math.log(d2 / d1), 2.1, 2.55)
    ]
