"""Laws of the table chain-lifting. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import LBF, Tables, away, band, column, groups, num, rising, two_sections


def law_lifting_legs(tables: Tables) -> list[str]:
    """Printed legs against statics: 2 or 3 x one leg x sine of the angle, rounded to 100 lb (58 lb off at most)."""
    found = []
    one = {(r["grade"], r["size_in"]): num(r["value"]) for r in tables["chain-lifting"] if r["legs"] == "1"}
    for row in tables["chain-lifting"]:
        legs = {"1": 1, "2": 2, "3-4": 3}[row["legs"]]
        wanted = (
            legs
            * one.get((row["grade"], row["size_in"]), math.nan)
            * math.sin(math.radians(num(row["angle_from_horizontal"])))
        )
        found += band(
            "chain-lifting",
            tuple(row.values())[:5],
            num(row["value"]) - wanted,
            -59,
            59,
        )
    return found


def law_lifting_two_legs_at_30(tables: Tables) -> list[str]:
    """sin 30 = 1/2: two legs at 30 degrees print exactly what one leg prints."""
    at = {
        (r["grade"], r["size_in"], r["legs"], r["angle_from_horizontal"]): r["value"]
        for r in tables["chain-lifting"]
    }
    return [
        f"chain-lifting/claims.csv {g} {s}: two legs at 30 degrees differ from one leg"
        for (g, s, legs, angle), value in at.items()
        if legs == "2" and angle == "30" and at.get((g, s, "1", "90")) != value
    ]


def law_lifting_grade_relation(tables: Tables) -> list[str]:
    """Grade relation of ASTM A391 s. 1.3.1 with a design factor of 4: grade x 10 N/mm2 within 1.8 % (7/32 in is widest)."""
    found = []
    for row in tables["chain-lifting"]:
        if row["legs"] == "1":
            stress = 4 * num(row["value"]) * LBF / two_sections(num(row["size_mm"]))
            found += away(
                "chain-lifting", (row["grade"], row["size_in"]), stress, num(row["grade"]) * 10, 0.018
            )
            if row["source"] == "grade-100-charts":
                found += away(
                    "chain-lifting", (row["grade"], row["size_in"]), stress, num(row["grade"]) * 10, 0.002
                )
    return found


def law_lifting_grid(tables: Tables) -> list[str]:
    """OSHA Guidance Tables 1 and 2, and the charts of grade 100 above them: seven cells a size, six in 1 in of grade 100."""
    cases = [("1", "90"), ("2", "60"), ("2", "45"), ("2", "30"), ("3-4", "60"), ("3-4", "45"), ("3-4", "30")]
    sizes = [
        ("7/32", "5.5"),
        ("9/32", "7"),
        ("5/16", "8"),
        ("3/8", "10"),
        ("1/2", "13"),
        ("5/8", "16"),
        ("3/4", "20"),
        ("7/8", "22"),
        ("1", "26"),
        ("1-1/4", "32"),
    ]
    wanted = {("80", *s, *c) for s in sizes for c in cases} | {
        ("100", *s, *c) for s in sizes[:8] for c in cases
    }
    wanted |= {("100", *sizes[8], *c) for c in cases[:6]}
    have = {
        (r["grade"], r["size_in"], r["size_mm"], r["legs"], r["angle_from_horizontal"])
        for r in tables["chain-lifting"]
    }
    return [f"chain-lifting/claims.csv {key}: missing or not of the grid" for key in wanted ^ have]


def law_lifting_rises(tables: Tables) -> list[str]:
    """Every column rises with size; grade 100 prints about 1.25 x grade 80 (1.21 to 1.31)."""
    found = []
    for key, rows in groups(tables["chain-lifting"], "grade", "legs", "angle_from_horizontal").items():
        found += rising("chain-lifting", key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    for key, rows in groups(tables["chain-lifting"], "size_in", "legs", "angle_from_horizontal").items():
        by_grade = column(rows, "grade")
        if len(by_grade) == 2:
            found += band("chain-lifting", key, by_grade["100"] / by_grade["80"], 1.21, 1.31)
    return found
