"""Laws of the table eyebolts. The source of each law stands in its docstring."""

from __future__ import annotations

import math
from itertools import pairwise

from build_scripts.laws.tools import G, Tables, band, column, num

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


STRESS_AREA_MM2 = {
    "M8": 36.6,
    "M10": 58.0,
    "M12": 84.3,
    "M16": 157,
    "M20": 245,
    "M24": 353,
    "M30": 561,
    "M36": 817,
    "M42": 1121,
    "M48": 1473,
}
"""Tensile stress area of coarse metric threads [mm2] (ISO 898-1)."""


def law_eyebolts_inch(tables: Tables) -> list[str]:
    """13,000 psi on the tensile stress area of the coarse thread, 0.7854 (d - 0.9743/n)2 (ASME B1.1), to the 10 lb: 8.3 lb off at most (1/4 in: 14)."""
    found = []
    rated = column(tables["eyebolts"], "thread", unit="lb", quantity="working_load_limit")
    for thread, load in rated.items():
        room = 14 if thread == "1/4" else 8.3
        found += band("eyebolts", thread, load - 13000 * _area_in2(thread), -room, room)
    return found


def _area_in2(thread: str) -> float:
    return 0.7854 * (num(thread) - 0.9743 / COARSE_THREADS.get(thread, math.nan)) ** 2


def law_eyebolts_breaking(tables: Tables) -> list[str]:
    """ASTM A489: break is 65,000 psi on the thread to the 50 lb, five times what leads here, and 3.6 to 4.4 times the capacity
    that the standard prints, which is therefore never the one that leads."""
    found = []
    rows = tables["eyebolts"]
    lead = column(rows, "thread", unit="lb", quantity="working_load_limit")
    printed = column(rows, "thread", quantity="printed_capacity")
    breaking = column(rows, "thread", quantity="minimum_breaking_force")
    if breaking.keys() != printed.keys() or len(breaking) != 11:
        found.append("eyebolts/claims.csv: eleven threads have a breaking strength and a printed capacity")
    for thread, load in breaking.items():
        found += band("eyebolts", (thread, "break"), load - 65_000 * _area_in2(thread), -51, 51)
        room = 21 if thread == "1/4" else 5
        found += band("eyebolts", (thread, "fifth"), lead.get(thread, math.nan) - load / 5, -room, room)
        found += band("eyebolts", (thread, "printed"), load / printed.get(thread, math.nan), 3.6, 4.4)
    return found


def law_eyebolts_metric(tables: Tables) -> list[str]:
    """DIN 580: rises with the power 1.95 to 2.6 of the diameter from size to size (2.1 to 2.55 up to M24); the stress on the
    thread never falls before M30 and stays at 55 to 58 N/mm2 from there."""
    rated = column(tables["eyebolts"], "thread", unit="kg", pull="axial")
    found = []
    for one, other in pairwise(sorted(rated, key=lambda thread: num(thread[1:]))):
        power = math.log(rated[other] / rated[one]) / math.log(num(other[1:]) / num(one[1:]))
        low, high = (2.1, 2.55) if num(other[1:]) <= 24 else (1.95, 2.6)
        found += band("eyebolts", f"{one} to {other}", power, low, high)
    for thread, load in rated.items():
        stress = load * G / STRESS_AREA_MM2.get(thread, math.nan)
        low, high = (55, 58) if num(thread[1:]) >= 30 else (37, 51)
        found += band("eyebolts", (thread, "stress"), stress, low, high)
    return found


def law_eyebolts_at_an_angle(tables: Tables) -> list[str]:
    """DIN 580: two legs to 45 degrees leave each bolt cos 45 of its straight pull, rounded by up to 5 kg (0.70 to 0.74)."""
    straight = column(tables["eyebolts"], "thread", unit="kg", pull="axial")
    leaning = column(tables["eyebolts"], "thread", unit="kg", pull="to_45")
    found = (
        []
        if straight.keys() == leaning.keys()
        else ["eyebolts/claims.csv: each metric thread has both pulls"]
    )
    for thread, load in leaning.items():
        share = load / straight.get(thread, math.nan)
        found += band("eyebolts", (thread, "at 45 degrees"), share, 0.70, 0.74)
    return found
