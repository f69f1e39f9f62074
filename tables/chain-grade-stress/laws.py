"""Laws of the table chain-grade-stress. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, away, num


def law_grade_number_is_its_stress(tables: Tables) -> list[str]:
    """The grade number is the stress at break over 100 N/mm2 (GOST R EN 818-4), 5 % off for grade 6 alone."""
    return [
        problem
        for r in tables["chain-grade-stress"]
        for problem in away(
            "chain-grade-stress",
            r["grade"],
            num(r["value"]),
            100 * num(r["grade"]),
            0.051 if r["grade"] == "6" else 1e-9,
        )
    ]
