"""Laws of the table turnbuckles. The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re
from itertools import pairwise

from build_scripts.laws.tools import LB, LBF, Row, Tables, away, band, groups, num, rising, words_of_note

THREADS_AN_INCH = {
    "1/4": 20,
    "5/16": 18,
    "3/8": 16,
    "1/2": 13,
    "5/8": 11,
    "3/4": 10,
    "7/8": 9,
    "1": 8,
    "1-1/4": 7,
    "1-3/8": 6,
    "1-1/2": 6,
    "1-3/4": 5,
    "2": 4.5,
    "2-1/4": 4.5,
}
"""Unified coarse threads (ASME B1.1), which both specifications call for."""


def stress_area_in2(thread: str) -> float:
    """Tensile stress area of a unified thread [in2]: 0.7854 (D - 0.9743 / n)2 (ASME B1.1)."""
    return math.pi / 4 * (num(thread) - 0.9743 / THREADS_AN_INCH[thread]) ** 2


def _by_ends(rows: list[Row]) -> dict[tuple[str, str], dict[str, float]]:
    """Working load in pounds, (make, ends) -> thread -> load."""
    found: dict[tuple[str, str], dict[str, float]] = {}
    for row in rows:
        if row["quantity"] == "working_load" and row["unit"] in ("lb", "lbf"):
            found.setdefault((row["make"], row["ends"]), {})[row["thread_in"]] = num(row["value"])
    return found


def law_turnbuckles(tables: Tables) -> list[str]:
    """AASHTO M 269: break = 5 x working load exactly in pounds; kN and lb agree within the printed tenth."""
    found = []
    highway = [row for row in tables["turnbuckles"] if row["make"] == "highway"]
    for thread, rows in groups(highway, "thread_in").items():
        got = {(r["quantity"], r["unit"]): num(r["value"]) for r in rows}
        if len(got) != 4:
            found.append(f"turnbuckles/claims.csv {thread}: needs four values")
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
    for key, group in groups(tables["turnbuckles"], "make", "ends", "quantity", "unit").items():
        found += rising("turnbuckles", key, ((num(r["thread_in"]), num(r["value"])) for r in group))
    return found


def law_two_specifications_agree(tables: Tables) -> list[str]:
    """AASHTO M 269 (highways) and FF-T-791b (federal supply) rate a forged turnbuckle with eye or stub ends alike."""
    loads = _by_ends(tables["turnbuckles"])
    highway, forged = loads.get(("highway", "eye_or_stub"), {}), loads.get(("forged", "jaw_eye_or_stub"), {})
    shared = highway.keys() & forged.keys()
    found = [] if len(shared) == 6 else ["turnbuckles/claims.csv: two specifications share six threads"]
    return found + [
        f"turnbuckles/claims.csv {thread}: {highway[thread]:g} in one specification, {forged[thread]:g} in the other"
        for thread in sorted(shared)
        if highway[thread] != forged[thread]
    ]


def law_a_hook_holds_less(tables: Tables) -> list[str]:
    """A hook opens long before an eye parts: less at every thread, half or less from 3/4 in up (FF-T-791b).

    The four columns of the specification go through the same eleven threads; other makes hold less than forged ones.
    """
    loads = _by_ends(tables["turnbuckles"])
    found = []
    for make in ("forged", "other"):
        eye, hook = loads.get((make, "jaw_eye_or_stub"), {}), loads.get((make, "hook"), {})
        if eye.keys() != hook.keys() or len(eye) != 11:
            found.append(f"turnbuckles/claims.csv {make}: needs eleven threads with both kinds of ends")
            continue
        for thread in eye:
            most = 0.5 if num(thread) >= 0.75 else 0.72
            found += band("turnbuckles", (thread, make, "hook"), hook[thread] / eye[thread], 0.37, most)
    for ends in ("jaw_eye_or_stub", "hook"):
        forged, other = loads.get(("forged", ends), {}), loads.get(("other", ends), {})
        for thread in forged.keys() & other.keys():
            found += band("turnbuckles", (thread, ends), other[thread] / forged[thread], 0.6, 0.95)
    return found


def law_stress_in_the_thread(tables: Tables) -> list[str]:
    """The load of an eye, jaw or stub end over the stress area of its thread is one stress: 11,900 to 12,700 psi from 1/2 in
    up, more below, where the threads are fine for their size (ASME B1.1 for the area).
    """
    found = []
    loads = _by_ends(tables["turnbuckles"])
    for key in (("highway", "eye_or_stub"), ("forged", "jaw_eye_or_stub")):
        for thread, load in loads.get(key, {}).items():
            stress = load / stress_area_in2(thread)
            low, high = (11_900, 12_700) if num(thread) >= 0.5 else (13_300, 15_800)
            found += band("turnbuckles", (thread, *key), stress, low, high)
    return found


def law_one_stress_in_all_other_makes(tables: Tables) -> list[str]:
    """FF-T-791b, all other types and forms: the load of an eye, jaw or stub end is one stress on the thread's stress area.

    It is 10,550 to 11,050 psi from 3/8 in up, and less below, where a wrench twists the thread most; the area is that of
    ASME B1.1.
    """
    found = []
    for thread, load in _by_ends(tables["turnbuckles"]).get(("other", "jaw_eye_or_stub"), {}).items():
        low, high = (10_550, 11_050) if num(thread) >= 0.375 else (9_500, 10_550)
        found += band("turnbuckles", (thread, "other", "stress"), load / stress_area_in2(thread), low, high)
    return found


def law_a_small_hook_holds_what_a_smaller_eye_holds(tables: Tables) -> list[str]:
    """FF-T-791b, forged: to 1/2 in a hook end holds exactly what an eye end one thread smaller holds; further up it holds less
    than that."""
    loads = _by_ends(tables["turnbuckles"])
    eye, hook = loads.get(("forged", "jaw_eye_or_stub"), {}), loads.get(("forged", "hook"), {})
    found = []
    for smaller, thread in pairwise(sorted(eye.keys() & hook.keys(), key=num)):
        ratio = hook[thread] / eye[smaller]
        low, high = (1.0, 1.0) if num(thread) <= 0.5 else (0.35, 0.95)
        found += band("turnbuckles", (thread, "hook over smaller eye"), ratio, low, high)
    return found


def law_one_stress_after_f1145(tables: Tables) -> list[str]:
    """ASTM F1145 series: 15,100 to 15,950 psi on the thread's stress area (ASME B1.1), alike with eyes and with jaws.

    No thread of the series holds less than FF-T-791b gives it; a note that names pounds names the same load, cut down.
    """
    rows = [row for row in tables["turnbuckles"] if row["make"] == "f1145"]
    federal = _by_ends(tables["turnbuckles"]).get(("forged", "jaw_eye_or_stub"), {})
    found = []
    for (thread,), group in groups(rows, "thread_in").items():
        loads = {row["ends"]: num(row["value"]) / LB * 1000 for row in group}
        if loads.keys() != {"eye", "jaw"} or len(set(loads.values())) != 1:
            found.append(f"turnbuckles/claims.csv {thread}: eyes and jaws of the series are alike")
        for load in loads.values():
            stress = load / stress_area_in2(thread)
            found += band("turnbuckles", (thread, "f1145", "stress"), stress, 15_100, 15_950)
            found += band("turnbuckles", (thread, "f1145"), load, federal[thread], math.inf)
        for row in group:
            noted = [num(one) for one in re.findall(r"[0-9]+(?= lb)", words_of_note("turnbuckles", row))]
            for pounds in noted:
                found += band("turnbuckles", (thread, "note"), loads[row["ends"]] - pounds, 0, 11)
    if len(rows) != 12:
        found.append("turnbuckles/claims.csv f1145: six threads with eyes and with jaws")
    return found
