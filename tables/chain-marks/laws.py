"""Laws of the table chain-marks. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables


def law_marks_follow_the_grade(tables: Tables) -> list[str]:
    """Mark examples of 49 CFR 393.108: grade over ten (cut down), the grade, the grade times ten; European letters M P S T V."""
    letters = {"4": "M", "5": "P", "6": "S", "8": "T", "10": "V"}
    found = []
    for row in tables["chain-marks"]:
        if row["example"] == "letter":
            wanted = letters.get(row["grade"], "")
        else:
            grade = int(row["grade"])
            wanted = {"1": str(grade // 10), "2": str(grade), "3": str(grade * 10)}.get(row["example"], "")
        if row["value"] != wanted:
            found.append(
                f"chain-marks/claims.csv grade {row['grade']}, example {row['example']}: {row['value']}, not {wanted}"
            )
    keys = {(r["grade"], r["example"]) for r in tables["chain-marks"]}
    wanted_keys = {(g, e) for g in ("30", "43", "70", "80", "100") for e in "123"} | {
        (g, "letter") for g in letters
    }
    return found + [f"chain-marks/claims.csv {key}: missing or not of the grid" for key in keys ^ wanted_keys]


def law_grade_letters(tables: Tables) -> list[str]:
    """GOST R EN 818-4: M, P, S, T, V are grades 4, 5, 6, 8, 10, as the marks of the chain have them."""
    letters = {r["grade"]: r["value"] for r in tables["chain-marks"] if r["example"] == "letter"}
    return [
        f"chain-grade-stress/claims.csv grade {row['grade']}: is not letter {row['letter']}"
        for row in tables["chain-grade-stress"]
        if letters.get(row["grade"]) != row["letter"]
    ]
