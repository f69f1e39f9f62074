"""Laws of the table chain-lifting-metric. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.families import PREFERRED
from build_scripts.laws.tools import G, Row, Tables, away, band, groups, num, rising, two_sections


def kilograms(row: Row) -> float:
    """A rating in kilograms; the tables after EN 818-4 print tonnes."""
    return num(row["value"]) * (1000 if row["unit"] == "t" else 1)


def law_metric_mode_factors(tables: Tables) -> list[str]:
    """EN 818-4 mode factors: two legs 1.4 and 1.0, three and four legs 2.1 and 1.5, within the step of preferred numbers.

    DIN 5688 and EN 818 round to preferred numbers: 6 % either way. Two legs beyond 45 degrees and choke (0.8) are printed
    exactly; choke on two legs is cut to the ten below. An endless chain choked has two parts, 0.8 each: 1.6. What the
    source prints beside it, 4.0 times one leg, is four straight parts and no choke, so it has no place here.
    """
    found = []
    one = {
        (r["grade"], r["size_mm"]): kilograms(r)
        for r in tables["chain-lifting-metric"]
        if (r["legs"], r["hitch"]) == ("1", "straight")
    }
    factors = {
        ("2", "straight", "0-45"): 1.4,
        ("3-4", "straight", "0-45"): 2.1,
        ("3-4", "straight", "45-60"): 1.5,
        ("endless", "choke", "0"): 1.6,
    }
    exactly = {
        ("1", "straight", "0"): 1.0,
        ("2", "straight", "45-60"): 1.0,
        ("1", "choke", "0"): 0.8,
        ("2", "choke", "45-60"): 0.8,
    }
    for row in tables["chain-lifting-metric"]:
        case = (row["legs"], row["hitch"], row["angle_from_vertical"])
        base, value = one.get((row["grade"], row["size_mm"]), math.nan), kilograms(row)
        what = (row["grade"], row["size_mm"], *case)
        if case in factors:
            found += away("chain-lifting-metric", what, value, factors[case] * base, 0.066)
        elif case in exactly:
            room = 21 if row["unit"] == "t" else 1e-6  # a second table is cut to the twentieth of a tonne
            found += band("chain-lifting-metric", what, value - exactly[case] * base, -room, 1e-6)
        elif case == ("2", "choke", "0-45"):
            found += band("chain-lifting-metric", what, value - 1.4 * 0.8 * base, -9, 1e-6)
        else:
            found.append(f"chain-lifting-metric/claims.csv {what}: no such case in the source")
    return found


NO_PREFERRED_NUMBERS = {("4", "10", "3-4", "325"), ("8", "7", "endless", "240")}
"""Printed cells that are no preferred number: (grade, size, legs, leading digits)."""


def law_metric_preferred_numbers(tables: Tables) -> list[str]:
    """Straight and endless ratings are preferred numbers of ISO 3 / ISO 497 (series R 40, with 320 of the older German rounding).

    Two printed cells are none: 3,250 kg for 10 mm grade 4 on three and four legs, 2.40 t for 7 mm grade 8 endless.
    """
    found = []
    for row in tables["chain-lifting-metric"]:
        if (row["hitch"] == "straight") or (row["legs"], row["hitch"]) == ("endless", "choke"):
            digits = f"{kilograms(row):.0f}".rstrip("0").ljust(3, "0")
            printed_so = (row["grade"], row["size_mm"], row["legs"], digits) in NO_PREFERRED_NUMBERS
            if int(digits) not in PREFERRED and not printed_so:
                found.append(
                    f"chain-lifting-metric/claims.csv {row['grade']} {row['size_mm']} mm: {row['value']} is no preferred number"
                )
    return found


def law_metric_grade_relation(tables: Tables) -> list[str]:
    """Stress at the rating is a quarter of the grade stress: 25 N/mm2 a grade, 0.92 to 1.05 of it after rounding."""
    found = []
    for row in tables["chain-lifting-metric"]:
        if (row["legs"], row["hitch"]) == ("1", "straight"):
            stress = kilograms(row) * G / two_sections(num(row["size_mm"]))
            found += band(
                "chain-lifting-metric",
                (row["grade"], row["size_mm"]),
                stress / (25 * num(row["grade"])),
                0.92,
                1.05,
            )
    return found


def law_metric_rises(tables: Tables) -> list[str]:
    """Every column rises with size, and at each size with grade."""
    found = []
    rows = tables["chain-lifting-metric"]
    for key, group in groups(rows, "grade", "legs", "hitch", "angle_from_vertical").items():
        found += rising("chain-lifting-metric", key, ((num(r["size_mm"]), kilograms(r)) for r in group))
    for key, group in groups(rows, "size_mm", "legs", "hitch", "angle_from_vertical").items():
        found += rising("chain-lifting-metric", key, ((num(r["grade"]), kilograms(r)) for r in group))
    return found
