"""Laws of the table bolt-strength. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, band, groups, num

MPA_A_PSI = 0.006894757293168
"""Pounds a square inch in N/mm2 (NIST SP 811)."""
ISO_CLASS = {"iso_898_1_8_8": (8, 8), "iso_898_1_10_9": (10, 9), "iso_898_1_12_9": (12, 9)}
"""Class a.b: (a, b)."""


def law_class_says_the_strength(tables: Tables) -> list[str]:
    """ISO 898-1: class a.b has a tensile strength of 100 a and yields at 10 a b N/mm2; the table stands up to 4.5 % above, and
    proof is 0.88 to 0.92 of yield."""
    found = []
    for (bolt, size), rows in groups(tables["bolt-strength"], "bolt", "size").items():
        if bolt not in ISO_CLASS:
            continue
        a, b = ISO_CLASS[bolt]
        got = {row["quantity"]: num(row["value"]) for row in rows}
        found += band(
            "bolt-strength", (bolt, size, "tensile"), got["minimum_tensile_strength"] / (100 * a), 1.0, 1.045
        )
        found += band(
            "bolt-strength", (bolt, size, "yield"), got["minimum_yield_strength"] / (10 * a * b), 1.0, 1.045
        )
        share = got["proof_strength"] / got["minimum_yield_strength"]
        found += band("bolt-strength", (bolt, size, "proof"), share, 0.88, 0.92)
    return found


def law_bolt_strengths_in_order(tables: Tables) -> list[str]:
    """Proof is 0.90 to 0.97 of yield and yield 0.59 to 0.87 of tensile strength (SAE J429); ASTM A325 is a grade 5 bolt, and a
    thicker bolt of one grade is no stronger."""
    found = []
    lines = {}
    for (bolt, size), rows in groups(tables["bolt-strength"], "bolt", "size").items():
        got = {row["quantity"]: num(row["value"]) for row in rows}
        lines[bolt, size] = got
        if bolt.startswith("iso") or bolt == "astm_a307":
            continue
        proof = got["proof_strength"] / got["minimum_yield_strength"]
        found += band("bolt-strength", (bolt, size, "proof"), proof, 0.9, 0.97)
        yielding = got["minimum_yield_strength"] / got["minimum_tensile_strength"]
        found += band("bolt-strength", (bolt, size, "yield"), yielding, 0.59, 0.87)
    if lines.get(("astm_a325", "half_to_one_and_a_half")) != lines.get(("sae_j429_5", "quarter_to_one")):
        found.append("bolt-strength/claims.csv astm_a325: is not the grade 5 bolt of SAE J429")
    thick, thin = lines.get(("sae_j429_2", "over_three_quarters"), {}), lines.get(("astm_a307", "all"), {})
    if thick.get("minimum_tensile_strength") != thin.get("minimum_tensile_strength"):
        found.append("bolt-strength/claims.csv astm_a307: is not the thick grade 2 bolt")
    return found


def law_inch_grades_have_metric_twins(tables: Tables) -> list[str]:
    """SAE J429 grade 5 is class 8.8 and grade 8 is class 10.9 in inches: tensile strength within 1 %, proof within 2.5 %."""
    found = []
    lines = {
        (row["bolt"], row["size"], row["quantity"]): num(row["value"]) for row in tables["bolt-strength"]
    }
    twins = {
        ("sae_j429_5", "quarter_to_one"): ("iso_898_1_8_8", "m16_and_over"),
        ("sae_j429_8", "quarter_to_one_and_a_half"): ("iso_898_1_10_9", "all"),
    }
    for inch, metric in twins.items():
        for quantity, room in (("minimum_tensile_strength", 0.01), ("proof_strength", 0.025)):
            ratio = lines[(*inch, quantity)] * MPA_A_PSI / lines[(*metric, quantity)]
            found += band("bolt-strength", (*inch, quantity), ratio, 1 - room, 1 + room)
    return found


def law_soft_bolts_have_a_metric_twin_too(tables: Tables) -> list[str]:
    """SAE J429 grade 2 to 3/4 in is class 5.8 in inches (common practice, no source).

    ISO 898-1: class 5.8 has a nominal tensile strength of 500 N/mm2, yields at 400 and proves at 95 % of that. The tested
    figures stand from 2 % below to 4 % above.
    """
    lines = {
        (row["bolt"], row["size"], row["quantity"]): num(row["value"]) for row in tables["bolt-strength"]
    }
    soft = ("sae_j429_2", "quarter_to_three_quarters")
    wanted = {"minimum_tensile_strength": 500, "minimum_yield_strength": 400, "proof_strength": 0.95 * 400}
    return [
        problem
        for quantity, strength in wanted.items()
        for problem in band(
            "bolt-strength", (*soft, quantity), lines[(*soft, quantity)] * MPA_A_PSI / strength, 0.98, 1.04
        )
    ]


def law_a_thick_grade_5_bolt_holds_seven_eighths(tables: Tables) -> list[str]:
    """SAE J429 and ASTM A325: above 1 in a quenched medium carbon bolt is hard only so deep and holds 7/8 of a thinner one.

    The ratio is that of the tensile strengths as ASTM prints them (105 over 120, from memory); proof and yield follow it
    within 1 %.
    """
    lines = {
        (row["bolt"], row["size"], row["quantity"]): num(row["value"]) for row in tables["bolt-strength"]
    }
    found = []
    for quantity in ("minimum_tensile_strength", "minimum_yield_strength", "proof_strength"):
        ratio = lines["sae_j429_5", "over_one", quantity] / lines["sae_j429_5", "quarter_to_one", quantity]
        found += band("bolt-strength", ("sae_j429_5", "over_one", quantity), ratio / (7 / 8), 0.99, 1.01)
    return found
