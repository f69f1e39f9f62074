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
            found.append(f"shackles.csv {row['size_in']}: a breaking load was read for grade A only")
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


# Section of a law or standard -> what it limits.
SHACKLE_SECTIONS = {
    ("wac-296-155", "296-155-33900 Table 19"): {("body_or_pin", "dimension_loss")},
    ("doe-std-1090", "s. 15.4.8"): {("body_or_pin", "deformation"), ("lifting_bar", "bend")},
    ("site-safe-nz", "Slinging module"): {("body_or_pin", "dimension_loss")},
    ("bs-en-13889-note", "Note on wear of shackles"): {("body_or_pin", "dimension_loss")},
    ("iso-16855", "Public abstract"): {("body_or_pin", "dimension_loss"), ("pin", "dimension_loss")},
}
HOOK_SECTIONS = {
    ("wac-296-155", "296-155-55800 Table 12"): {
        ("hook", "throat_increase"),
        ("hook", "throat_increase_largest"),
        ("hook", "twist"),
        ("hook", "section_wear"),
    },
    ("qld-pn10123", "pp. 35, 39"): {("hook", "throat_increase"), ("hook", "section_wear")},
    ("qld-pn10123", "p. 38"): {("ring", "stretch")},
    ("alberta-ohs", "s. 309, 2009 guide text"): {
        ("hook", "throat_increase"),
        ("hook", "twist"),
        ("hook", "section_wear"),
    },
}
OLDER_HOOK_TEXT = {("hook", "throat_increase"), ("hook", "twist")}


def law_shackle_and_hook_sections(tables: Tables) -> list[str]:
    """A section limits what its heading says; the older federal hook rule (throat and twist) is one rule wherever it stands.

    29 CFR 1910.179 and 1910.184, DOE-STD-1090 and Alberta copy one text, so each of them prints the same two figures, and
    both are laxer than those of Washington and Queensland. Wear of a shackle: three sources in five print the same share;
    a pin may lose less than a body.
    """
    found = []
    for name, sections in (("shackle-limits", SHACKLE_SECTIONS), ("hook-limits", HOOK_SECTIONS)):
        for row in tables[name]:
            allowed = sections.get((row["source"], row["locator"]), OLDER_HOOK_TEXT)
            if row["sense"] != "out_at":
                found.append(f"{name}.csv {row['locator']}: no section here says more than")
            if (row["item"], row["quantity"]) not in allowed:
                found.append(f"{name}.csv {row['locator']}: does not limit {row['item']} {row['quantity']}")
    by_source = {
        (r["source"], r["quantity"]): num(r["value"]) for r in tables["hook-limits"] if r["item"] == "hook"
    }
    older = ("osha-1910-184", "osha-1910-179", "doe-std-1090", "alberta-ohs")
    for quantity in ("throat_increase", "twist"):
        figures = {by_source.get((source, quantity), math.nan) for source in older}
        strict = by_source.get(("wac-296-155", quantity), math.nan)
        if len(figures) != 1 or not strict < min(figures) <= 15:
            found.append(
                f"hook-limits.csv {quantity}: the older text is one figure, laxer than Washington's: {figures}"
            )
    if by_source.get(("wac-296-155", "twist")) != 0:
        found.append("hook-limits.csv: any visible twist is none allowed")
    for quantity in ("throat_increase", "section_wear"):
        if by_source.get(("wac-296-155", quantity)) != by_source.get(("qld-pn10123", quantity)):
            found.append(f"hook-limits.csv {quantity}: Washington and Queensland agreed when read")
    lost = [
        num(r["value"])
        for r in tables["shackle-limits"]
        if (r["item"], r["quantity"]) == ("body_or_pin", "dimension_loss")
    ]
    pin = [num(r["value"]) for r in tables["shackle-limits"] if r["item"] == "pin"]
    if lost.count(10) < 3 or max(lost) != 10 or not max(pin, default=99) < min(lost):
        found.append(
            "shackle-limits.csv: ten percent is the common limit, and a pin may lose less than a body"
        )
    return found
