"""Laws of the table chain-tie-down. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import LB, LBF, G, Tables, away, band, column, groups, num, rising, two_sections

# 49 CFR 393.108 rounds three carbon cells in kilograms otherwise than its pounds: up to 14 kg off.
ROUNDED_APART_KG = {("30", "1/4"), ("30", "1/2"), ("43", "5/8")}


WIRE_MM = {"1/4": 7.0, "5/16": 8.0, "3/8": 10.0, "7/16": 11.9, "1/2": 13.0, "5/8": 16.0}


def law_tie_down_units(tables: Tables) -> list[str]:
    """Pounds and kilograms of one cell agree within 2.1 % (the law rounded each by itself; 5/16 in grade 80 is widest)."""
    found = []
    for key, rows in groups(tables["chain-tie-down"], "grade", "size_in").items():
        by_unit = column(rows, "unit")
        if set(by_unit) != {"lb", "kg"}:
            found.append(f"chain-tie-down/claims.csv {key}: needs one row in lb and one in kg")
        else:
            found += away("chain-tie-down", key, by_unit["kg"], by_unit["lb"] * LB, 0.021)
            if key[0] in {"30", "43", "70"}:
                room = 13.5 if key in ROUNDED_APART_KG else 5.01
                found += band("chain-tie-down", key, by_unit["kg"] - by_unit["lb"] * LB, -room, room)
    return found


def law_tie_down_alloy_kilograms(tables: Tables) -> list[str]:
    """Grade 80 and 100 in kilograms: the grade relation with a factor of 4 on the metric wire, 0.7 % off (8 mm: 2.6 %)."""
    found = []
    for row in tables["chain-tie-down"]:
        if row["grade"] in {"80", "100"} and row["unit"] == "kg":
            stress = 4 * num(row["value"]) * G / two_sections(num(row["size_mm"]))
            room = 0.026 if row["size_mm"] == "8" else 0.007
            what = (row["grade"], row["size_in"], "kg")
            found += away("chain-tie-down", what, stress, 10 * num(row["grade"]), room)
            if row["size_in"] != "1/4" and num(row["value"]) % 100:
                found.append(f"chain-tie-down/claims.csv {what}: {row['value']} is no hundred of kilograms")
    return found


def law_tie_down_rises(tables: Tables) -> list[str]:
    """Limits rise with size, and with grade except 5/16 in grade 80 below grade 70 (so printed in 49 CFR 393.108)."""
    found = []
    for key, rows in groups(tables["chain-tie-down"], "grade", "unit").items():
        found += rising("chain-tie-down", key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    for (size, unit), rows in groups(tables["chain-tie-down"], "size_in", "unit").items():
        pairs = [
            (num(r["grade"]), num(r["value"])) for r in rows if not (size == "5/16" and r["grade"] == "80")
        ]
        found += rising("chain-tie-down", (size, unit), pairs)
    return found


def law_tie_down_grade_relation(tables: Tables) -> list[str]:
    """Grade relation of ASTM A413 s. 1.4.1 (break = grade x 10 N/mm2 on two sections), break 4 x limit (3 x for grade 43).

    Wire of 8.4 mm in 5/16 in of grades 30, 43 and 70. Carbon chain is rated up to 9.3 % above its number.
    """
    found = []
    for row in tables["chain-tie-down"]:
        if row["unit"] != "lb":
            continue
        grade, size = row["grade"], row["size_in"]
        wire = 8.4 if size == "5/16" and grade in {"30", "43", "70"} else WIRE_MM.get(size, math.nan)
        stress = num(row["value"]) * LBF * (3 if grade == "43" else 4) / two_sections(wire)
        low, high = (0.985, 1.093) if grade in {"30", "43", "70"} else (0.99, 1.013)
        found += band("chain-tie-down", (grade, size), stress / (num(grade) * 10), low, high)
    return found


def law_grade_70_over_grade_43(tables: Tables) -> list[str]:
    """On one wire grade 70 with a factor of 4 and grade 43 with a factor of 3 (chain makers' chart, read in a reprint) stand
    to each other as (70/4) / (43/3) = 1.221, within 1.45 % in both units.
    """
    found = []
    for key, rows in groups(tables["chain-tie-down"], "size_in", "unit").items():
        by_grade = column(rows, "grade")
        share = by_grade.get("70", math.nan) / by_grade.get("43", math.nan)
        found += away("chain-tie-down", (*key, "70 over 43"), share, (70 / 4) / (43 / 3), 0.0145)
    return found


def law_alloy_is_the_same_in_both_books(tables: Tables) -> list[str]:
    """Grade 80 and 100: the tie-down law and the OSHA sling table print the same pounds for the same metric chain."""
    single = {
        (r["grade"], r["size_mm"]): r["value"]
        for r in tables["chain-lifting"]
        if r["legs"] == "1" and r["angle_from_horizontal"] == "90"
    }
    return [
        f"chain-tie-down/claims.csv {row['grade']} {row['size_in']}: {row['value']} lb, but chain-lifting/claims.csv prints "
        f"{single.get((row['grade'], row['size_mm']))} for {row['size_mm']} mm"
        for row in tables["chain-tie-down"]
        if row["grade"] in {"80", "100"}
        and row["unit"] == "lb"
        and single.get((row["grade"], row["size_mm"])) != row["value"]
    ]


def law_tie_down_grid(tables: Tables) -> list[str]:
    """49 CFR 393.108 fills every grade and size but 7/16 in of grades 80 and 100; nominal mm and inch go together."""
    wanted = {
        (g, s, WIRE)
        for g in ("30", "43", "70", "80", "100")
        for s, WIRE in (
            ("1/4", "7"),
            ("5/16", "8"),
            ("3/8", "10"),
            ("7/16", "11"),
            ("1/2", "13"),
            ("5/8", "16"),
        )
        if not (s == "7/16" and g in {"80", "100"})
    }
    have = {(r["grade"], r["size_in"], r["size_mm"]) for r in tables["chain-tie-down"]}
    names = {"30": "proof_coil", "43": "high_test", "70": "transport", "80": "alloy", "100": "alloy"}
    return [f"chain-tie-down/claims.csv {k}: missing or not of the grid" for k in wanted ^ have] + [
        f"chain-tie-down/claims.csv grade {r['grade']}: is not called {r['grade_name']}"
        for r in tables["chain-tie-down"]
        if names.get(r["grade"]) != r["grade_name"]
    ]
