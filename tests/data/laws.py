"""What the tables must obey: laws of the trade and of arithmetic that a misread figure would break.

Each law is a plain function `law_NAME(tables) -> list of sentences` (empty: the law holds), so that the mutation tool
can call it in memory thousands of times. The source of the law itself stands in its docstring. Bands are as tight as
the printed tables allow: the widest row sets them.
"""

from __future__ import annotations

import csv
import json
import math
import re
from collections import defaultdict
from collections.abc import Callable, Iterable
from fractions import Fraction
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Any

Row = dict[str, str]
Tables = dict[str, list[Row]]
Law = Callable[[Tables], list[str]]

FOLDER = Path(__file__).resolve().parents[2] / "tables"
LB = 0.45359237  # kg, exact (international pound)
LBF = 4.4482216152605  # N, exact
G = 9.80665  # m/s2, exact


def descriptor() -> dict[str, Any]:
    package: dict[str, Any] = json.loads((FOLDER / "datapackage.json").read_text(encoding="utf-8"))
    return package


def read() -> Tables:
    """All tables as the files have them."""
    tables: Tables = {}
    for resource in descriptor()["resources"]:
        with (FOLDER / resource["path"]).open(newline="", encoding="utf-8") as stream:
            tables[resource["name"]] = list(csv.DictReader(stream))
    return tables


@cache
def exact(text: str) -> Fraction:
    """`6,600`, `3/8`, `1-1/4`, `0.342` as an exact number."""
    match = re.fullmatch(r"(?:([0-9]+)-)?([0-9]+)/([0-9]+)", text)
    if match:
        return int(match[1] or 0) + Fraction(int(match[2]), int(match[3]))
    return Fraction(text.replace(",", ""))


@cache
def num(text: str) -> float:
    return float(exact(text))


def column(rows: Iterable[Row], key: str, **where: str) -> dict[str, float]:
    """key cell -> value, of the rows that hold the given texts."""
    return {row[key]: num(row["value"]) for row in rows if all(row[c] == v for c, v in where.items())}


def _away(name: str, what: object, found: float, wanted: float, share: float) -> list[str]:
    if wanted and abs(found / wanted - 1) <= share:
        return []
    return [f"{name}.csv {what}: {found:g} is not within {share:.2%} of {wanted:g}"]


def _band(name: str, what: object, found: float, low: float, high: float) -> list[str]:
    return [] if low <= found <= high else [f"{name}.csv {what}: {found:.4g} is outside {low:g} to {high:g}"]


def _rising(name: str, what: object, pairs: Iterable[tuple[float, float]], strict: bool = True) -> list[str]:
    ordered = sorted(pairs)
    return [
        f"{name}.csv {what}: does not rise from {a[0]:g} to {b[0]:g} ({a[1]:g}, then {b[1]:g})"
        for a, b in pairwise(ordered)
        if not (a[1] < b[1] or (not strict and a[1] == b[1]))
    ]


def _groups(rows: Iterable[Row], *keys: str) -> dict[tuple[str, ...], list[Row]]:
    groups: dict[tuple[str, ...], list[Row]] = defaultdict(list)
    for row in rows:
        groups[tuple(row[key] for key in keys)].append(row)
    return groups


def _two_sections(diameter_mm: float) -> float:
    """Both sides of a link [mm2]."""
    return 2 * math.pi / 4 * diameter_mm**2


# --------------------------------------------------------------------------- chain
WIRE_MM = {"1/4": 7.0, "5/16": 8.0, "3/8": 10.0, "7/16": 11.9, "1/2": 13.0, "5/8": 16.0}


def law_tie_down_units(tables: Tables) -> list[str]:
    """Pounds and kilograms of one cell agree within 2.1 % (the law rounded each by itself; 5/16 in grade 80 is widest)."""
    found = []
    for key, rows in _groups(tables["chain-tie-down"], "grade", "size_in").items():
        by_unit = column(rows, "unit")
        if set(by_unit) != {"lb", "kg"}:
            found.append(f"chain-tie-down.csv {key}: needs one row in lb and one in kg")
        else:
            found += _away("chain-tie-down", key, by_unit["kg"], by_unit["lb"] * LB, 0.021)
    return found


def law_tie_down_rises(tables: Tables) -> list[str]:
    """Limits rise with size, and with grade except 5/16 in grade 80 below grade 70 (so printed in 49 CFR 393.108)."""
    found = []
    for key, rows in _groups(tables["chain-tie-down"], "grade", "unit").items():
        found += _rising("chain-tie-down", key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    for (size, unit), rows in _groups(tables["chain-tie-down"], "size_in", "unit").items():
        pairs = [
            (num(r["grade"]), num(r["value"])) for r in rows if not (size == "5/16" and r["grade"] == "80")
        ]
        found += _rising("chain-tie-down", (size, unit), pairs)
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
        stress = num(row["value"]) * LBF * (3 if grade == "43" else 4) / _two_sections(wire)
        low, high = (0.985, 1.093) if grade in {"30", "43", "70"} else (0.99, 1.013)
        found += _band("chain-tie-down", (grade, size), stress / (num(grade) * 10), low, high)
    return found


def law_alloy_is_the_same_in_both_books(tables: Tables) -> list[str]:
    """Grade 80 and 100: the tie-down law and the OSHA sling table print the same pounds for the same metric chain."""
    single = {
        (r["grade"], r["size_mm"]): r["value"]
        for r in tables["chain-lifting"]
        if r["legs"] == "1" and r["angle_from_horizontal"] == "90"
    }
    return [
        f"chain-tie-down.csv {row['grade']} {row['size_in']}: {row['value']} lb, but chain-lifting.csv prints "
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
    return [f"chain-tie-down.csv {k}: missing or not of the grid" for k in wanted ^ have] + [
        f"chain-tie-down.csv grade {r['grade']}: is not called {r['grade_name']}"
        for r in tables["chain-tie-down"]
        if names.get(r["grade"]) != r["grade_name"]
    ]


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
                f"chain-marks.csv grade {row['grade']}, example {row['example']}: {row['value']}, not {wanted}"
            )
    keys = {(r["grade"], r["example"]) for r in tables["chain-marks"]}
    wanted_keys = {(g, e) for g in ("30", "43", "70", "80", "100") for e in "123"} | {
        (g, "letter") for g in letters
    }
    return found + [f"chain-marks.csv {key}: missing or not of the grid" for key in keys ^ wanted_keys]


def law_lifting_legs(tables: Tables) -> list[str]:
    """Printed legs against statics: 2 or 3 x one leg x sine of the angle, within 1.7 % or the rounding to 100 lb."""
    found = []
    one = {(r["grade"], r["size_in"]): num(r["value"]) for r in tables["chain-lifting"] if r["legs"] == "1"}
    for row in tables["chain-lifting"]:
        legs = {"1": 1, "2": 2, "3-4": 3}[row["legs"]]
        wanted = (
            legs
            * one.get((row["grade"], row["size_in"]), math.nan)
            * math.sin(math.radians(num(row["angle_from_horizontal"])))
        )
        found += _band(
            "chain-lifting",
            tuple(row.values())[:5],
            num(row["value"]) - wanted,
            -max(60, 0.011 * wanted),
            max(60, 0.017 * wanted),
        )
    return found


def law_lifting_two_legs_at_30(tables: Tables) -> list[str]:
    """sin 30 = 1/2: two legs at 30 degrees print exactly what one leg prints."""
    at = {
        (r["grade"], r["size_in"], r["legs"], r["angle_from_horizontal"]): r["value"]
        for r in tables["chain-lifting"]
    }
    return [
        f"chain-lifting.csv {g} {s}: two legs at 30 degrees differ from one leg"
        for (g, s, legs, angle), value in at.items()
        if legs == "2" and angle == "30" and at.get((g, s, "1", "90")) != value
    ]


def law_lifting_grade_relation(tables: Tables) -> list[str]:
    """Grade relation of ASTM A391 s. 1.3.1 with a design factor of 4: grade x 10 N/mm2 within 1.8 % (7/32 in is widest)."""
    found = []
    for row in tables["chain-lifting"]:
        if row["legs"] == "1":
            stress = 4 * num(row["value"]) * LBF / _two_sections(num(row["size_mm"]))
            found += _away(
                "chain-lifting", (row["grade"], row["size_in"]), stress, num(row["grade"]) * 10, 0.018
            )
            if row["checked"] == "memory":
                found += _away(
                    "chain-lifting", (row["grade"], row["size_in"]), stress, num(row["grade"]) * 10, 0.002
                )
    return found


def law_lifting_grid(tables: Tables) -> list[str]:
    """OSHA Guidance Tables 1 and 2: seven cells a size; grade 100 in 5/8 in was read as far as two legs at 45."""
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
        ("100", *s, *c) for s in sizes[:5] for c in cases
    }
    wanted |= {("100", "5/8", "16", *c) for c in cases[:3]} | {("100", *s, "1", "90") for s in sizes[6:8]}
    have = {
        (r["grade"], r["size_in"], r["size_mm"], r["legs"], r["angle_from_horizontal"])
        for r in tables["chain-lifting"]
    }
    return [f"chain-lifting.csv {key}: missing or not of the grid" for key in wanted ^ have]


def law_lifting_rises(tables: Tables) -> list[str]:
    """Every column rises with size; grade 100 prints about 1.25 x grade 80 (1.21 to 1.31)."""
    found = []
    for key, rows in _groups(tables["chain-lifting"], "grade", "legs", "angle_from_horizontal").items():
        found += _rising("chain-lifting", key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    for key, rows in _groups(tables["chain-lifting"], "size_in", "legs", "angle_from_horizontal").items():
        by_grade = column(rows, "grade")
        if len(by_grade) == 2:
            found += _band("chain-lifting", key, by_grade["100"] / by_grade["80"], 1.21, 1.31)
    return found


def law_no_lifting_grade_below_80(tables: Tables) -> list[str]:
    """ASTM A413 s. 1.1: grade 30, 43 and 70 chain is for uses other than overhead lifting; nor may unmarked or altered chain."""
    forbidden = {"30", "43", "70", "unmarked", "altered", "proof_coil"}
    lift = {r["grade"]: r["value"] for r in tables["chain-which-may-lift"] if r["use"] == "lift"}
    found = [f"chain-which-may-lift.csv {g}: must not lift" for g in forbidden if lift.get(g) != "no"]
    found += [
        f"chain-which-may-lift.csv {g}: is made for lifting"
        for g in ("80", "100", "4", "5", "8")
        if lift.get(g) != "yes"
    ]
    tie = {r["grade"]: r["value"] for r in tables["chain-which-may-lift"] if r["use"] == "tie_down"}
    rated = {r["grade"] for r in tables["chain-tie-down"]} | {"unmarked"}
    found += [
        f"chain-which-may-lift.csv {g}: 393.108 rates it for tie-down" for g in rated if tie.get(g) != "yes"
    ]
    if tie.get("altered") != "no":
        found.append("chain-which-may-lift.csv altered: must not tie down (49 CFR 393.104(b))")
    lifted = {r["grade"] for r in tables["chain-lifting"]} | {
        r["grade"] for r in tables["chain-lifting-metric"]
    }
    return found + [
        f"chain-which-may-lift.csv {g}: has a lifting table but may not lift"
        for g in lifted
        if lift.get(g) != "yes"
    ]


def law_metric_mode_factors(tables: Tables) -> list[str]:
    """EN 818-4 mode factors: two legs 1.4 and 1.0, three and four legs 2.1 and 1.5, within the step of preferred numbers.

    DIN 5688 and EN 818 round to preferred numbers: 6 % either way. Two legs beyond 45 degrees, choke (0.8) and the
    doubled endless choke (4.0) are printed exactly; choke on two legs is cut to the ten below.
    """
    found = []
    one = {
        (r["grade"], r["size_mm"]): num(r["value"])
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
        ("endless", "choke_double", "0"): 4.0,
    }
    for row in tables["chain-lifting-metric"]:
        case = (row["legs"], row["hitch"], row["angle_from_vertical"])
        base, value = one.get((row["grade"], row["size_mm"]), math.nan), num(row["value"])
        what = (row["grade"], row["size_mm"], *case)
        if case in factors:
            found += _away("chain-lifting-metric", what, value, factors[case] * base, 0.066)
        elif case in exactly:
            found += _band("chain-lifting-metric", what, value - exactly[case] * base, -1e-6, 1e-6)
        elif case == ("2", "choke", "0-45"):
            found += _band("chain-lifting-metric", what, value - 1.4 * 0.8 * base, -9, 1e-6)
        else:
            found.append(f"chain-lifting-metric.csv {what}: no such case in the source")
    return found


PREFERRED = (
    100,
    106,
    112,
    118,
    125,
    132,
    140,
    150,
    160,
    170,
    180,
    190,
    200,
    212,
    224,
    236,
    250,
    265,
    280,
    300,
    315,
    320,
    335,
    355,
    375,
    400,
    425,
    450,
    475,
    500,
    530,
    560,
    600,
    630,
    670,
    710,
    750,
    800,
    850,
    900,
    950,
)


def law_metric_preferred_numbers(tables: Tables) -> list[str]:
    """Straight and endless ratings are preferred numbers of ISO 3 / ISO 497 (series R 40, with 320 of the older German rounding).

    One printed cell is none: 3,250 kg for 10 mm grade 4 on three and four legs, where the series has 3,150 and 3,350.
    """
    found = []
    for row in tables["chain-lifting-metric"]:
        if (row["hitch"] == "straight") or (row["legs"], row["hitch"]) == ("endless", "choke"):
            digits = row["value"].replace(",", "").rstrip("0").ljust(3, "0")
            printed_so = (row["grade"], row["size_mm"], row["legs"], digits) == ("4", "10", "3-4", "325")
            if int(digits) not in PREFERRED and not printed_so:
                found.append(
                    f"chain-lifting-metric.csv {row['grade']} {row['size_mm']} mm: {row['value']} is no preferred number"
                )
    return found


def law_metric_grade_relation(tables: Tables) -> list[str]:
    """Stress at the rating is a quarter of the grade stress: 25 N/mm2 a grade, 0.92 to 1.05 of it after rounding."""
    found = []
    for row in tables["chain-lifting-metric"]:
        if (row["legs"], row["hitch"]) == ("1", "straight"):
            stress = num(row["value"]) * G / _two_sections(num(row["size_mm"]))
            found += _band(
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
    for key, group in _groups(rows, "grade", "legs", "hitch", "angle_from_vertical").items():
        found += _rising("chain-lifting-metric", key, ((num(r["size_mm"]), num(r["value"])) for r in group))
    for key, group in _groups(rows, "size_mm", "legs", "hitch", "angle_from_vertical").items():
        found += _rising("chain-lifting-metric", key, ((num(r["grade"]), num(r["value"])) for r in group))
    return found


def law_chain_strength_relation(tables: Tables) -> list[str]:
    """EN 818-3 Table 5: break = 400 N/mm2 on two sections within 0.6 %, proof = half of it, bend = 0.8 diameter.

    Grade 4 limits stand at 94 to 100 N/mm2, grade 8 limits (EN 818-2) at 94 to 100 % of 200 N/mm2.
    """
    found = []
    for (grade, size), rows in _groups(tables["chain-strength"], "grade", "size_mm").items():
        d, got = num(size), column(rows, "quantity")
        stress = got["working_load_limit"] * 1000 * G / _two_sections(d)
        found += _band("chain-strength", (grade, size), stress / (25 * num(grade)), 0.94, 1.0001)
        if grade == "4":
            if len(got) != 4:
                found.append(f"chain-strength.csv {size}: needs four quantities")
                continue
            found += _away(
                "chain-strength",
                (grade, size, "break"),
                got["minimum_breaking_force"] * 1000,
                400 * _two_sections(d),
                0.006,
            )
            found += _away(
                "chain-strength",
                (grade, size, "proof"),
                got["manufacturing_proof_force"] * 2,
                got["minimum_breaking_force"],
                0.006,
            )
            found += _band(
                "chain-strength", (grade, size, "bend"), got["minimum_bend_deflection"] - 0.8 * d, -0.45, 0.45
            )
    return found


def law_chain_strength_agrees_with_slings(tables: Tables) -> list[str]:
    """EN 818-2 and -3 chain limits are the one-leg ratings that DGUV 209-021 prints for slings of the same size."""
    one = {
        (r["grade"], r["size_mm"]): num(r["value"])
        for r in tables["chain-lifting-metric"]
        if (r["legs"], r["hitch"]) == ("1", "straight")
    }
    found = []
    for row in tables["chain-strength"]:
        printed = one.get((row["grade"], row["size_mm"]))
        if row["quantity"] == "working_load_limit" and printed:
            found += _away(
                "chain-strength", (row["grade"], row["size_mm"]), num(row["value"]) * 1000, printed, 1e-9
            )
    return found


def law_grade_number_is_its_stress(tables: Tables) -> list[str]:
    """The grade number is the stress at break over 100 N/mm2 (GOST R EN 818-4), 5 % off for grade 6 alone."""
    return [
        problem
        for r in tables["chain-grade-stress"]
        for problem in _away(
            "chain-grade-stress",
            r["grade"],
            num(r["value"]),
            100 * num(r["grade"]),
            0.051 if r["grade"] == "6" else 1e-9,
        )
    ]


def law_wear_adds_up(tables: Tables) -> list[str]:
    """29 CFR tables: size less most wear is exactly the least thickness, in every row and every reprint."""
    found = []
    for size, rows in _groups(tables["chain-wear"], "size_in").items():
        thick = {r["value"] for r in rows if r["source"] in {"osha-1910-184", "michigan-r408"}}
        wear = {exact(r["value"]) for r in rows if r["quantity"] == "maximum_wear"}
        for t in thick:
            for w in wear:
                if exact(t) + w != exact(size[0]):
                    found.append(f"chain-wear.csv {size[0]}: {t} and wear {w} do not add up to the size")
        if bool(thick) != bool(wear):
            found.append(f"chain-wear.csv {size[0]}: thickness and wear must both be there")
    return found


def law_wear_asme_pattern(tables: Tables) -> list[str]:
    """ASME-pattern rows: inch and mm agree, and the thickness is 86 to 87.5 % of the metric size of the chain."""
    found = []
    metric = {r["size_in"]: num(r["size_mm"]) for r in tables["chain-lifting"]}
    rows = [r for r in tables["chain-wear"] if r["source"] == "wac-296-155"]
    for (size,), group in _groups(rows, "size_in").items():
        got = column(group, "unit")
        if set(got) != {"in", "mm"}:
            found.append(f"chain-wear.csv {size}: needs inches and millimetres")
            continue
        found += _band("chain-wear", (size, "mm against in"), got["mm"] - got["in"] * 25.4, -0.012, 0.012)
        found += _band("chain-wear", (size, "share"), got["mm"] / metric.get(size, math.nan), 0.864, 0.8735)
    return found


def law_defaults_are_the_strictest(tables: Tables) -> list[str]:
    """Where sources differ, `default` marks the strictest: least wear, twist, stretch and heat; most thickness and clips."""
    most = {
        "minimum_thickness",
        "use_above",
        "clips_drop_forged",
        "clips_other_material",
        "spacing",
        "turn_back",
        "torque",
        "legs",
    }
    convert = {"degF": lambda x: (x - 32) / 1.8, "mm": lambda x: x / 25.4, "cm": lambda x: x / 2.54}
    found = []
    for name, rows in tables.items():
        if not rows or "default" not in rows[0] or name == "sling-leg-counting":
            continue
        key = "item" if "item" in rows[0] else "size_in"
        for group_key, group in _groups(rows, key, "quantity").items():
            if group_key[1] == "maximum_wear":
                found += [
                    f"{name}.csv {group_key}: wear is not the default, thickness is"
                    for r in group
                    if r["default"] == "yes"
                ]
                continue
            values = [(convert.get(r["unit"], float)(num(r["value"])), r["default"]) for r in group]
            best = max(v for v, _ in values) if group_key[1] in most else min(v for v, _ in values)
            if (
                name == "wire-rope-clips"
                and group_key[0] in {"5/16", "3/8", "7/16"}
                and group_key[1] == "clips_drop_forged"
            ):
                best = 3  # 29 CFR 1918 App. II Table 1: three clips for 1/2 in and smaller
            found += [
                f"{name}.csv {group_key}: {d} on {v:g}, strictest is {best:g}"
                for v, d in values
                if (d == "yes") != (abs(v - best) <= 0.004 * abs(best))
            ]
    return found


# --------------------------------------------------------------------------- shackles and eyebolts
def law_shackle_scaling(tables: Tables) -> list[str]:
    """Rating over bow diameter squared: grade A 7.1 to 9.5, grade B 11.1 to 14.3 short tons per in2; both rise."""
    found = []
    bands = {"A": (7.1, 9.5), "B": (11.1, 14.3)}
    rows = [r for r in tables["shackles"] if r["quantity"] == "working_load_limit"]
    for row in rows:
        low, high = bands[row["grade"]]
        found += _band(
            "shackles",
            (row["grade"], row["size_in"]),
            num(row["value"]) / num(row["size_in"]) ** 2,
            low,
            high,
        )
        found += _band(
            "shackles",
            (row["size_in"], "pin over bow"),
            num(row["pin_in"]) - num(row["size_in"]),
            1 / 16,
            1 / 4,
        )
    for key, group in _groups(rows, "grade").items():
        found += _rising("shackles", key, ((num(r["size_in"]), num(r["value"])) for r in group))
    for key, group in _groups(rows, "size_in").items():
        by_grade = column(group, "grade")
        if len(by_grade) == 2:
            found += _band("shackles", key, by_grade["B"] / by_grade["A"], 1.45, 2.0)
    return found


def law_shackle_break(tables: Tables) -> list[str]:
    """Design factor 5: the printed breaking loads are exactly five times the grade A limit."""
    limit = column(tables["shackles"], "size_in", grade="A", quantity="working_load_limit")
    broken = column(tables["shackles"], "size_in", quantity="minimum_breaking_force")
    return [
        p
        for size, load in broken.items()
        for p in _away("shackles", size, load, 5 * 2000 * limit.get(size, math.nan), 1e-9)
    ]


def law_dee_shackles(tables: Tables) -> list[str]:
    """Lloyd's Table 8.5.1: every dimension follows the square root of the load, each column within its band."""
    bands = {
        ("either", "jaw_width"): (19.4, 20.1),
        ("either", "inside_length"): (43.3, 44.1),
        ("mild", "body_diameter"): (12.9, 13.45),
        ("mild", "pin_diameter"): (14.7, 15.3),
        ("higher_tensile", "body_diameter"): (10.1, 11.1),
        ("higher_tensile", "pin_diameter"): (11.45, 12.1),
    }
    found = []
    for row in tables["shackles-dee"]:
        low, high = bands[row["steel"], row["quantity"]]
        found += _band(
            "shackles-dee",
            (row["swl_t"], row["steel"], row["quantity"]),
            num(row["value"]) / math.sqrt(num(row["swl_t"])),
            low,
            high,
        )
    for key, group in _groups(tables["shackles-dee"], "steel", "quantity").items():
        found += _rising("shackles-dee", key, ((num(r["swl_t"]), num(r["value"])) for r in group))
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
    """13,000 psi on the tensile stress area of the coarse thread, 0.7854 (d - 0.9743/n)2 (ASME B1.1), within 0.75 % (1/4 in: 3.4 %)."""
    found = []
    for thread, load in column(tables["eyebolts"], "thread", unit="lb").items():
        area = 0.7854 * (num(thread) - 0.9743 / COARSE_THREADS.get(thread, math.nan)) ** 2
        found += _away("eyebolts", thread, load, 13000 * area, 0.034 if thread == "1/4" else 0.0075)
    return found


def law_eyebolts_metric(tables: Tables) -> list[str]:
    """DIN 580: rises between the square and the power 2.55 of the diameter from size to size."""
    rated = sorted((num(t[1:]), load) for t, load in column(tables["eyebolts"], "thread", unit="kg").items())
    return [
        p
        for (d1, w1), (d2, w2) in pairwise(rated)
        for p in _band("eyebolts", f"M{d1:g} to M{d2:g}", math.log(w2 / w1) / math.log(d2 / d1), 2.1, 2.55)
    ]


def law_turnbuckles(tables: Tables) -> list[str]:
    """AASHTO M 269: break = 5 x working load exactly in pounds; kN and lb agree within the printed tenth."""
    found = []
    for thread, rows in _groups(tables["turnbuckles"], "thread_in").items():
        got = {(r["quantity"], r["unit"]): num(r["value"]) for r in rows}
        if len(got) != 4:
            found.append(f"turnbuckles.csv {thread}: needs four values")
            continue
        found += _away(
            "turnbuckles", thread, got["minimum_breaking_force", "lbf"], 5 * got["working_load", "lbf"], 1e-9
        )
        for quantity in ("minimum_breaking_force", "working_load"):
            found += _band(
                "turnbuckles",
                (thread, quantity),
                got[quantity, "kN"] - got[quantity, "lbf"] * LBF / 1000,
                -0.06,
                0.06,
            )
    for key, group in _groups(tables["turnbuckles"], "quantity", "unit").items():
        found += _rising("turnbuckles", key, ((num(r["thread_in"]), num(r["value"])) for r in group))
    return found


# --------------------------------------------------------------------------- rope and slings
def law_clips(tables: Tables) -> list[str]:
    """Spacing is six diameters (NAVEDTRA 14026), cm agree with inches, counts reach 3 D + 1 and do not fall with size."""
    found = []
    for row in tables["wire-rope-clips"]:
        d, value, what = (
            num(row["size_in"]),
            num(row["value"]),
            (row["size_in"], row["quantity"], row["unit"], row["source"]),
        )
        if row["quantity"] == "spacing":
            found += _band(
                "wire-rope-clips", what, value - 6 * d * (2.54 if row["unit"] == "cm" else 1), -0.06, 0.06
            )
            if row["unit"] == "in":
                found += _away("wire-rope-clips", what, value, 6 * d, 1e-9)
        if row["quantity"].startswith("clips") and row["source"] == "osha-1918":
            found += _band("wire-rope-clips", what, value, math.ceil(3 * d + 1), math.ceil(3 * d + 1) + 3)
    for key, group in _groups(tables["wire-rope-clips"], "quantity", "unit", "source").items():
        found += _rising(
            "wire-rope-clips", key, ((num(r["size_in"]), num(r["value"])) for r in group), strict=False
        )
    for key, group in _groups(tables["wire-rope-clips"], "size_in", "quantity", "unit").items():
        if len({r["value"] for r in group}) > 1:
            found.append(f"wire-rope-clips.csv {key}: two sources differ where they agreed when read")
    for size, count in column(tables["wire-rope-clips"], "size_in", quantity="clips_other_material").items():
        forged = column(
            tables["wire-rope-clips"], "size_in", quantity="clips_drop_forged", source="osha-1918"
        ).get(size, math.nan)
        found += _band("wire-rope-clips", size, count - forged, 0, 1)
    return found


def law_wire_rope(tables: Tables) -> list[str]:
    """Strength is 51.5 to 54.5 short tons per in2 of d squared and falls slowly; sling = 0.95 and 0.70 of strength / 5, as rounded."""
    rows = [r for r in tables["wire-rope"] if r["rope"] == "6x19_eips_iwrc"]
    strength = column(rows, "size_in", quantity="nominal_breaking_force")
    found = []
    for row in rows:
        base = strength.get(row["size_in"], math.nan)
        what = (row["size_in"], row["quantity"])
        if row["quantity"] == "nominal_breaking_force":
            found += _band("wire-rope", what, num(row["value"]) / num(row["size_in"]) ** 2, 51.5, 54.5)
            continue
        wanted = base / 5 * (0.95 if row["quantity"] == "sling_vertical" else 0.70)
        half_step = 0.0055 if wanted < 1 and row["value"] != "1.0" else 0.055
        found += _band("wire-rope", what, num(row["value"]) - wanted, -half_step, half_step)
    specific = [(num(s), -load / num(s) ** 2) for s, load in strength.items()]
    found += _rising("wire-rope", "strength over d squared falls", specific)
    army = column(tables["wire-rope"], "size_in", rope="6x19_ips_iwrc")
    for size, load in army.items():
        found += _band(
            "wire-rope",
            ("improved over extra improved", size),
            load / 2000 / strength.get(size, math.nan),
            0.86,
            0.875,
        )
    return found


def law_rope_bending(tables: Tables) -> list[str]:
    """0027/ND s. 7.8: factor = 1 / (1 - 0.5 / sqrt(D/d)), printed to two places."""
    return [
        p
        for r in tables["rope-bending"]
        for p in _band(
            "rope-bending",
            r["bend_ratio"],
            num(r["value"]) - 1 / (1 - 0.5 / math.sqrt(num(r["bend_ratio"]))),
            -0.005,
            0.005,
        )
    ]


def law_rope_terminations(tables: Tables) -> list[str]:
    """An end fitting never adds strength: every factor is 1 to 2."""
    return [
        p
        for r in tables["rope-terminations"]
        for p in _band("rope-terminations", r["termination"], num(r["value"]), 1, 2)
    ]


def law_fibre_slings(tables: Tables) -> list[str]:
    """29 CFR 1918 App. II against statics: choker half, basket 2 x cosine, within the rounding of the table; all rise."""
    found = []
    upright = {
        (r["sling"], r["size_in"]): num(r["value"])
        for r in tables["fibre-rope-slings"]
        if r["hitch"] == "vertical"
    }
    for row in tables["fibre-rope-slings"]:
        base = upright.get((row["sling"], row["size_in"]), math.nan)
        what = (row["sling"], row["size_in"], row["hitch"], row["angle_from_vertical"])
        if row["hitch"] == "choker":
            found += _band("fibre-rope-slings", what, num(row["value"]) - base / 2, -50, 50)
        elif row["hitch"] == "basket":
            wanted = 2 * base * math.cos(math.radians(num(row["angle_from_vertical"])))
            room = 1e-6 if row["angle_from_vertical"] == "60" else max(122.0, 0.025 * wanted)
            found += _band("fibre-rope-slings", what, num(row["value"]) - wanted, -room, room)
    for key, group in _groups(tables["fibre-rope-slings"], "sling", "hitch", "angle_from_vertical").items():
        found += _rising("fibre-rope-slings", key, ((num(r["size_in"]), num(r["value"])) for r in group))
    for key, group in _groups(tables["fibre-rope-slings"], "sling", "size_in").items():
        if len(group) != 6:
            found.append(f"fibre-rope-slings.csv {key}: needs six cells")
    return found


def law_choker_steps(tables: Tables) -> list[str]:
    """The five shares fall from 100 % in even steps of 12.75 %, rounded (smoothness; no source of the step itself)."""
    rows = sorted(
        (r for r in tables["choker-factors"] if r["source"] == "asme-b30-9"),
        key=lambda r: -num(r["choke_angle_from"]),
    )
    found = [
        p
        for i, r in enumerate(rows)
        for p in _band(
            "choker-factors", r["choke_angle_from"], num(r["value"]) - (100 - 12.75 * i), -0.51, 0.51
        )
    ]
    froms = [num(r["choke_angle_from"]) for r in rows]
    if froms != [120, 90, 60, 30, 0]:
        found.append("choker-factors.csv: the bands must start at 120, 90, 60, 30 and 0")
    return found


def law_leg_counting(tables: Tables) -> list[str]:
    """Counted legs against printed tables: OSHA rates 3-4 legs as 3; European mode factors are the median of DGUV's printed ratios."""
    found = []
    for row in tables["sling-leg-counting"]:
        value, legs = num(row["value"]), row["legs"]
        if row["source"] == "osha-sling-guidance":
            found += _away(
                "sling-leg-counting", legs, value, _osha_legs(tables, "2" if legs == "2" else "3-4"), 0.003
            )
        elif row["source"] == "en-818-4":
            band = "0-45" if row["quantity"].endswith("0_45") else "45-60"
            found += _away(
                "sling-leg-counting",
                (legs, band),
                value,
                _dguv_ratio(tables, "2" if legs == "2" else "3-4", band),
                0.02,
            )
        else:
            found += _band("sling-leg-counting", (legs, row["source"]), value, 2, 2)
        ours = {"2": 2, "3": 3, "4": 2}[legs]
        if row["quantity"] == "legs_counted" and (row["default"] == "yes") != (value == ours):
            found.append(f"sling-leg-counting.csv {legs}: default marks {ours} legs")
    return found


def _median(values: list[float]) -> float:
    return sorted(values)[len(values) // 2]


def _osha_legs(tables: Tables, legs: str) -> float:
    rows = tables["chain-lifting"]
    one = {(r["grade"], r["size_in"]): num(r["value"]) for r in rows if r["legs"] == "1"}
    return _median(
        [
            num(r["value"])
            / one.get((r["grade"], r["size_in"]), math.nan)
            / math.sin(math.radians(num(r["angle_from_horizontal"])))
            for r in rows
            if r["legs"] == legs
        ]
    )


def _dguv_ratio(tables: Tables, legs: str, band: str) -> float:
    rows = [r for r in tables["chain-lifting-metric"] if r["hitch"] == "straight"]
    one = {(r["grade"], r["size_mm"]): num(r["value"]) for r in rows if r["legs"] == "1"}
    return _median(
        [
            num(r["value"]) / one.get((r["grade"], r["size_mm"]), math.nan)
            for r in rows
            if (r["legs"], r["angle_from_vertical"]) == (legs, band)
        ]
    )


# --------------------------------------------------------------------------- heat and rules
def law_heat_asme(tables: Tables) -> list[str]:
    """Rises with temperature, F and C agree within a degree, grade 100 loses at least what grade 80 does, hot more than after."""
    rows = tables["chain-heat-asme"]
    found = []
    for row in rows:
        found += _band(
            "chain-heat-asme",
            row["temperature_degF"],
            num(row["temperature_degC"]) - (num(row["temperature_degF"]) - 32) / 1.8,
            -0.6,
            0.6,
        )
        if num(row["value"]) % 5:
            found.append(
                f"chain-heat-asme.csv {row['temperature_degF']}: {row['value']} is not a step of five"
            )
    for key, group in _groups(rows, "grade", "quantity").items():
        found += _rising(
            "chain-heat-asme",
            key,
            ((num(r["temperature_degF"]), num(r["value"])) for r in group),
            strict=False,
        )
        if len(group) != 7:
            found.append(f"chain-heat-asme.csv {key}: needs seven temperatures")
    at = {(r["grade"], r["temperature_degF"], r["quantity"]): num(r["value"]) for r in rows}
    for (grade, degree, quantity), value in at.items():
        if grade == "80" and value > at.get(("100", degree, quantity), math.inf):
            found.append(f"chain-heat-asme.csv {degree} {quantity}: grade 80 loses more than grade 100")
        if quantity == "reduction_afterwards" and value >= at.get(
            (grade, degree, "reduction_while_hot"), math.inf
        ):
            found.append(f"chain-heat-asme.csv {grade} {degree}: loses more afterwards than while hot")
    return found


def law_heat_bands(tables: Tables) -> list[str]:
    """European bands adjoin, start at -40 C with 100 %, and what is left falls from band to band."""
    found = []
    for name, keys in (("chain-heat-en", ("grade",)), ("wire-rope-heat", ("termination", "core"))):
        for key, rows in _groups(tables[name], *keys).items():
            bands = sorted(
                (num(r["temperature_from_degC"]), num(r["temperature_to_degC"]), num(r["value"]))
                for r in rows
            )
            if bands[0][0] != -40 or bands[0][2] != 100:
                found.append(f"{name}.csv {key}: must start at -40 C with 100 %")
            for low, high in pairwise(bands):
                if low[1] != high[0] or low[2] < high[2]:
                    found.append(f"{name}.csv {key}: bands must adjoin and fall")
            if any(value % 5 for _, _, value in bands) or any(low >= high for low, high, _ in bands):
                found.append(f"{name}.csv {key}: shares are printed in steps of five, bands run upwards")
    return found


def law_design_factors(tables: Tables) -> list[str]:
    """Over people twice the factor (DGUV 215-313); the EU machinery directive prints the same factors; all between 2 and 10 or 14."""
    found = [
        p
        for r in tables["design-factors"]
        for p in _band("design-factors", r["item"], num(r["value"]), 2, 14)
    ]
    dguv = {
        (r["item"], r["quantity"]): num(r["value"])
        for r in tables["design-factors"]
        if r["source"] == "dguv-215-313"
    }
    for (item, quantity), value in dguv.items():
        if quantity == "design_factor_over_people":
            found += _away(
                "design-factors", item, value, 2 * dguv.get((item, "design_factor"), math.nan), 1e-9
            )
    for item, value in column(tables["design-factors"], "item", source="eu-2006-42").items():
        found += _away("design-factors", item, value, dguv.get((item, "design_factor"), math.nan), 1e-9)
    for grade, source in (("80", "astm-a391"), ("100", "astm-a973")):
        factor = column(tables["design-factors"], "item", source=source).get(f"chain_grade_{grade}", math.nan)
        for row in tables["chain-lifting"]:
            if row["legs"] == "1" and row["grade"] == grade and row["size_in"] == "1/2":
                stress = factor * num(row["value"]) * LBF / _two_sections(13)
                found += _away("design-factors", grade, stress, num(grade) * 10, 0.01)
    return found


def law_proof_tests_meet(tables: Tables) -> list[str]:
    """Where a rule goes from one formula to the next the two give the same load there, within 1.1 %."""
    found = []
    for (item, source), rows in _groups(tables["proof-tests"], "item", "source").items():
        parts: dict[str, list[float]] = {}
        for row in rows:
            part = parts.setdefault(row["load_range"], [math.nan, 0.0])
            part[0 if row["quantity"] == "proof_factor" else 1] = num(row["value"])
            if row["quantity"] == "proof_factor":
                found += _band("proof-tests", (item, source), num(row["value"]), 1, 6)
        edges = sorted(
            {float(edge) for text in parts for edge in re.findall(r"[0-9]+", text) if "short" not in text}
        )
        for edge in edges:
            below = [p for text, p in parts.items() if re.search(rf"to {edge:g}\b", text)]
            above = [p for text, p in parts.items() if re.match(rf"(over )?{edge:g}\b", text)]
            if len(below) != 1 or len(above) != 1:
                found.append(f"proof-tests.csv {item} {source}: ranges do not meet at {edge:g}")
            else:
                found += _away(
                    "proof-tests",
                    (item, source, edge),
                    below[0][0] * edge + below[0][1],
                    above[0][0] * edge + above[0][1],
                    0.011,
                )
    return found


def law_tie_down_numbers(tables: Tables) -> list[str]:
    """Metric and US figures of one rule agree within 0.4 %; shares lie between 0 and 1."""
    found = []
    for row in tables["tie-down-numbers"]:
        if row["unit"] == "ratio":
            found += _band("tie-down-numbers", (row["item"], row["quantity"]), num(row["value"]), 0.2, 1)
    for key, rows in _groups(tables["tie-down-numbers"], "item", "quantity").items():
        got = column(rows, "unit")
        for us, si, factor in (("lb", "kg", LB), ("ft", "m", 0.3048)):
            if si in got:
                found += _away("tie-down-numbers", key, got[si], got.get(us, math.nan) * factor, 0.004)
    return found


def law_tie_down_other(tables: Tables) -> list[str]:
    """Kilograms are pounds rounded to the ten (within 5.2 kg), limits rise with size, ropes about with the square of it."""
    found = []
    rows = tables["tie-down-other"]
    for key, group in _groups(rows, "material", "size_in").items():
        got = column(group, "unit")
        if set(got) != {"lb", "kg"}:
            found.append(f"tie-down-other.csv {key}: needs lb and kg")
        else:
            found += _band("tie-down-other", key, got["kg"] - got["lb"] * LB, -5.2, 5.2)
            found += _band("tie-down-other", (key, "kg is a multiple of ten"), got["kg"] % 10, 0, 0)
    for (material, unit), group in _groups(rows, "material", "unit").items():
        strap = material == "steel_strapping"
        pairs = sorted((_area_or_size(r["size_in"]), num(r["value"])) for r in group)
        found += _rising("tie-down-other", (material, unit), pairs, strict=not strap)
        if material.endswith(("rope", "core")):
            for (d1, w1), (d2, w2) in pairwise(pairs):
                found += _band(
                    "tie-down-other",
                    (material, unit, f"{d1:g} to {d2:g} in"),
                    math.log(w2 / w1) / math.log(d2 / d1),
                    1.1,
                    2.9,
                )
    return found


def _area_or_size(text: str) -> float:
    product = 1.0
    for part in text.split(" x "):
        product *= num(part)
    return product


# --------------------------------------------------------------------------- weights and steel
ELEMENTS = {
    "aluminium": "Al",
    "copper": "Cu",
    "gold": "Au",
    "lead": "Pb",
    "tungsten": "W",
    "uranium": "U",
    "silver": "Ag",
    "mercury": "Hg",
    "nickel": "Ni",
    "titanium": "Ti",
    "zinc": "Zn",
}


@cache
def _element_density(symbol: str) -> float:
    import periodictable

    return float(getattr(periodictable, symbol).density) * 1000


def law_densities(tables: Tables) -> list[str]:
    """Elements within 2 % of the `periodictable` library; low is not above high; sources of one material meet within 10 %.

    Softwood and hardwood of the building list follow 1.1 x specific gravity x 62.4 (its own footnote).
    """
    found = []
    to_si = {"lb/ft3": 16.018463373960138, "kg/m3": 1.0}
    low: dict[str, list[float]] = defaultdict(list)
    high: dict[str, list[float]] = defaultdict(list)
    for (material, source), rows in _groups(tables["densities"], "material", "source").items():
        got = {r["quantity"]: num(r["value"]) * to_si[r["unit"]] for r in rows}
        if set(got) != {"density_low", "density_high"}:
            found.append(f"densities.csv {material} {source}: needs low and high")
            continue
        low[material].append(got["density_low"])
        high[material].append(got["density_high"])
        if not 90 < got["density_low"] <= got["density_high"] < 20000:
            found.append(f"densities.csv {material} {source}: low above high, or not a density")
        gravity = re.search(r"specific gravity (0\.[0-9]+)", rows[0]["note"])
        if gravity:
            found += _band(
                "densities", material, num(rows[0]["value"]) - 1.1 * float(gravity[1]) * 62.4, -0.6, 0.6
            )
        if material in ELEMENTS:
            for value in got.values():
                found += _away(
                    "densities", (material, source), value, _element_density(ELEMENTS[material]), 0.02
                )
    return found + [
        f"densities.csv {m}: its sources do not meet" for m in low if max(low[m]) > 1.1 * min(high[m])
    ]


@cache
def _library_pipe(size: str, schedule: str) -> tuple[float, float]:
    from fluids.piping import nearest_pipe

    nominal: Any = num(size)  # the library's stub says int; sizes such as 1/2 are meant as well
    _, _inside, outside, wall = nearest_pipe(NPS=nominal, schedule=schedule)
    return outside * 1000, wall * 1000


def law_pipe_sizes(tables: Tables) -> list[str]:
    """ASME B36.10M in the `fluids` library (metric columns): outside diameter within 0.26 mm, wall within 0.01 mm; inside is positive."""
    found = []
    for (size, schedule), rows in _groups(tables["pipe-sizes"], "pipe_size", "schedule").items():
        got = column(rows, "quantity")
        if len(got) != 2:
            found.append(f"pipe-sizes.csv {size} {schedule}: needs diameter and wall")
            continue
        outside, wall = _library_pipe(size, schedule)
        found += _band("pipe-sizes", (size, schedule), got["outside_diameter"] * 25.4 - outside, -0.45, 0.26)
        found += _band("pipe-sizes", (size, schedule), got["wall_thickness"] * 25.4 - wall, -0.012, 0.012)
    for key, group in _groups(tables["pipe-sizes"], "pipe_size", "quantity").items():
        values = column(group, "schedule")
        if key[1] == "outside_diameter" and len(set(values.values())) != 1:
            found.append(f"pipe-sizes.csv {key}: one size has one outside diameter")
    return found


def law_weld_metal(tables: Tables) -> list[str]:
    """Weight follows the square of the leg: 2.56 lb/ft per in2, as printed to two places."""
    return [
        p
        for r in tables["weld-metal-weights"]
        for p in _band(
            "weld-metal-weights",
            r["fillet_size_in"],
            num(r["value"]) - 2.56 * num(r["fillet_size_in"]) ** 2,
            -0.0051,
            0.0051,
        )
    ]


CODE_MODULI = {"steel": 210, "aluminium": 70, "glass": 70}


def law_moduli(tables: Tables) -> list[str]:
    """Steel 210 GPa (EN 1993-1-1), aluminium 70 GPa (EN 1999-1-1), glass 70 GPa (EN 572-1); none stiffer than steel."""
    got = column(tables["youngs-modulus"], "material")
    found = [
        p for m, e in CODE_MODULI.items() for p in _band("youngs-modulus", m, got.get(m, math.nan), e, e)
    ]
    return found + [p for m, e in got.items() for p in _band("youngs-modulus", m, e, 1, 210)]


def law_compositions(tables: Tables) -> list[str]:
    """AISI names: the last two digits are the carbon in hundredths; 41xx and 86xx share their alloy; least is under most; under 8 % in all."""
    found = []
    at = {(r["steel"], r["element"], r["quantity"]): num(r["value"]) for r in tables["steel-compositions"]}
    for (steel, element, quantity), value in at.items():
        if quantity == "minimum" and not value < at.get((steel, element, "maximum"), -1):
            found.append(f"steel-compositions.csv {steel} {element}: least is not under most")
        if steel.isdigit() and element == "carbon":
            carbon = int(steel[2:]) / 100
            edge = value - carbon
            found += _band(
                "steel-compositions",
                (steel, quantity),
                edge,
                *((-0.0201, -0.0199) if quantity == "minimum" else (0.0299, 0.0501)),
            )
        for first, second, shared in (
            ("4140", "4130", ("chromium", "molybdenum", "silicon")),
            ("8640", "8620", ("chromium", "nickel", "molybdenum")),
        ):
            if steel == first and element in shared and at.get((second, element, quantity)) != value:
                found.append(f"steel-compositions.csv {element}: {first} and {second} share their range")
    for (steel,), rows in _groups(tables["steel-compositions"], "steel").items():
        found += _band(
            "steel-compositions",
            steel,
            sum(num(r["value"]) for r in rows if r["quantity"] == "maximum"),
            1,
            8,
        )
    return found


def law_tempering(tables: Tables) -> list[str]:
    """A hotter temper is softer and tougher; yield is under tensile strength; annealed is softer than normalised."""
    found = []
    rows = tables["tempering-data"]
    for (steel, condition, temper), group in _groups(rows, "steel", "condition", "temper_degC").items():
        got = column(group, "quantity")
        found += _band(
            "tempering-data",
            (steel, condition, temper),
            got.get("yield_strength", math.nan) / got.get("tensile_strength", math.nan),
            0.55,
            0.95,
        )
    for (steel, quantity), group in _groups(rows, "steel", "quantity").items():
        sign = -1 if quantity.endswith("strength") else 1
        quenched = [
            (num(r["temper_degC"]), sign * num(r["value"])) for r in group if r["temper_degC"] != "none"
        ]
        found += _rising("tempering-data", (steel, quantity), quenched)
        slow = {
            r["condition"].split("_")[0]: sign * num(r["value"]) for r in group if r["temper_degC"] == "none"
        }
        if quantity != "reduction_of_area" and not slow.get("normalized", math.nan) < slow.get(
            "annealed", math.nan
        ):
            found.append(f"tempering-data.csv {steel} {quantity}: annealed must be softer than normalised")
    return found


def law_temper_colours(tables: Tables) -> list[str]:
    """Fahrenheit and Celsius agree within 0.6 degree; colours stand in rising order, tints below glow."""
    found = []
    for key, rows in _groups(tables["temper-colours"], "colour", "quantity").items():
        got = column(rows, "unit")
        if set(got) != {"degF", "degC"}:
            found.append(f"temper-colours.csv {key}: needs F and C")
        else:
            found += _band("temper-colours", key, got["degC"] - (got["degF"] - 32) / 1.8, -0.6, 0.6)
    for unit in ("degF", "degC"):
        order = [
            (float(i), num(r["value"]))
            for i, r in enumerate(r for r in tables["temper-colours"] if r["unit"] == unit)
        ]
        found += _rising("temper-colours", unit, order)
    glow = [
        num(r["value"])
        for r in tables["temper-colours"]
        if r["kind"] == "incandescence" and r["unit"] == "degC"
    ]
    tint = [
        num(r["value"]) for r in tables["temper-colours"] if r["kind"] == "oxide_tint" and r["unit"] == "degC"
    ]
    if max(tint, default=0) > 340 or min(glow, default=999) < 500:
        found.append("temper-colours.csv: tints end by 340 C, glow starts above 500 C")
    return found


def law_hardness(tables: Tables) -> list[str]:
    """Every column rises with Rockwell; ksi and MPa agree within half a ksi; HV over HB 1.045 to 1.066, MPa over HV 3.08 to 3.245; two strength columns within 20 %."""
    found = []
    for key, group in _groups(tables["hardness-conversion"], "quantity", "unit", "source").items():
        found += _rising("hardness-conversion", key, ((num(r["rockwell_c"]), num(r["value"])) for r in group))
    for (hrc,), group in _groups(tables["hardness-conversion"], "rockwell_c").items():
        got = {(r["unit"], r["source"]): num(r["value"]) for r in group}
        mpa, ksi = got.get(("MPa", "astm-e140"), math.nan), got.get(("ksi", "astm-e140"), math.nan)
        found += _band("hardness-conversion", (hrc, "ksi against MPa"), mpa / 6.894757 - ksi, -0.6, 0.6)
        found += _band(
            "hardness-conversion",
            (hrc, "MPa over HV"),
            mpa / got.get(("HV", "astm-e140"), math.nan),
            3.08,
            3.245,
        )
        if ("HBW", "astm-a370") in got:
            found += _band(
                "hardness-conversion",
                (hrc, "HV over HB"),
                got["HV", "astm-e140"] / got["HBW", "astm-a370"],
                1.045,
                1.066,
            )
        if ("MPa", "astm-a370") in got:
            found += _band(
                "hardness-conversion", (hrc, "two strengths"), got["MPa", "astm-a370"] / mpa, 1.0, 1.19
            )
    return found


def law_hot_strength(tables: Tables) -> list[str]:
    """EN 1993-1-2: all shares fall from 1 at 20 C to 0 at 1,200 C, the proportional limit never above yield."""
    found = []
    for key, group in _groups(tables["steel-hot-strength"], "quantity").items():
        pairs = sorted((num(r["temperature_degC"]), num(r["value"])) for r in group)
        found += _rising("steel-hot-strength", key, [(t, -v) for t, v in pairs], strict=False)
        if pairs[0] != (20.0, 1.0) or pairs[-1] != (1200.0, 0.0) or len(pairs) != 13:
            found.append(f"steel-hot-strength.csv {key}: runs from 1 at 20 C to 0 at 1,200 C in 13 rows")
    at = {(r["temperature_degC"], r["quantity"]): num(r["value"]) for r in tables["steel-hot-strength"]}
    for (degree, quantity), value in at.items():
        if quantity == "proportional_limit_factor" and value > at.get((degree, "yield_factor"), -1):
            found.append(f"steel-hot-strength.csv {degree}: proportional limit above yield")
    return found


def law_embrittlement(tables: Tables) -> list[str]:
    """Bands run upwards; where C and F are both printed they agree within 8 F."""
    found = []
    at = {
        (r["phenomenon"], r["case"], r["unit"], r["quantity"]): num(r["value"])
        for r in tables["embrittlement"]
    }
    for (phenomenon, case, unit, quantity), value in at.items():
        if quantity == "temperature_from" and not value < at.get(
            (phenomenon, case, unit, "temperature_to"), -1
        ):
            found.append(f"embrittlement.csv {phenomenon} {case}: band must run upwards")
        fahrenheit = at.get((phenomenon, case, "degF", quantity))
        if unit == "degC" and fahrenheit is not None:
            found += _band("embrittlement", (phenomenon, quantity), value * 1.8 + 32 - fahrenheit, -8.1, 8.1)
    return found


def law_arc_efficiency(tables: Tables) -> list[str]:
    """Shares lie between 0.4 and 1; submerged arc is 1 among the relative ones; low, mean and high in order."""
    found = [
        p
        for r in tables["arc-efficiency"]
        for p in _band("arc-efficiency", r["process"], num(r["value"]), 0.4, 1)
    ]
    got = column(tables["arc-efficiency"], "quantity", process="gtaw", source="stenbacka-2012")
    order = [got.get(f"measured_efficiency_{which}", math.nan) for which in ("low", "mean", "high")]
    if not order[0] < order[1] < order[2]:
        found.append("arc-efficiency.csv gtaw: low, mean and high out of order")
    if column(tables["arc-efficiency"], "process", quantity="relative_to_saw").get("saw") != 1:
        found.append("arc-efficiency.csv saw: relative to itself is 1")
    return found


def law_weld_parameters(tables: Tables) -> list[str]:
    """Currents rise with the size of the electrode; low under high; 25 to 60 A a millimetre of core."""
    found = []
    for key, rows in _groups(tables["weld-parameters"], "electrode", "size_in").items():
        got = column(rows, "quantity")
        if not got.get("current_low", math.nan) < got.get("current_high", math.nan):
            found.append(f"weld-parameters.csv {key}: low is not under high")
        for value in got.values():
            found += _band("weld-parameters", key, value / (num(key[1]) * 25.4), 23, 60)
    for key, rows in _groups(tables["weld-parameters"], "electrode", "quantity").items():
        found += _rising("weld-parameters", key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    return found


def law_carbon_bands(tables: Tables) -> list[str]:
    """Bands adjoin by a hundredth, from excellent to poor."""
    order = ["excellent", "very_good", "good", "fair", "poor"]
    start = column(tables["carbon-equivalent-bands"], "rating", quantity="carbon_equivalent_from")
    end = column(tables["carbon-equivalent-bands"], "rating", quantity="carbon_equivalent_to")
    found = [] if start.get("excellent") == 0 else ["carbon-equivalent-bands.csv: starts at 0"]
    for better, worse in pairwise(order):
        step = start.get(worse, math.nan) - end.get(better, math.nan)
        found += _band(
            "carbon-equivalent-bands", worse, step, *((-1e-9, 1e-9) if worse == "poor" else (0.0099, 0.0101))
        )
        if better != "excellent":
            found += _band(
                "carbon-equivalent-bands",
                better,
                end.get(better, math.nan) - start.get(better, math.nan),
                0.0399,
                0.0401,
            )
    return found


def law_chain_modulus(tables: Tables) -> list[str]:
    """About a quarter of steel: 40 to 62 GPa at 100 mm; the generic stiffness over d squared is pi/2 times its modulus."""
    found = []
    for (chain,), rows in _groups(tables["chain-modulus"], "chain").items():
        got = column(rows, "quantity")
        modulus = got.get("modulus_constant", math.nan) - 100 * got.get("modulus_fall_per_mm", 0)
        found += _band("chain-modulus", chain, modulus, 49, 57)
        if "stiffness_over_diameter_squared" in got:
            found += _band(
                "chain-modulus",
                chain,
                got["stiffness_over_diameter_squared"] / (math.pi / 2) - got["modulus_constant"],
                -0.05,
                0.05,
            )
    return found


# --------------------------------------------------------------------------- trust
# table -> (rows read in text, in a reprint, from memory); the last only where a law above holds the row.
HOW_SEEN = json.loads((Path(__file__).parent / "how_seen.json").read_text(encoding="utf-8"))


def law_how_seen_is_as_recorded(tables: Tables) -> list[str]:
    """Nobody upgrades a row from memory to text in passing: the counts are recorded, and a change is a decision."""
    found = []
    for name, rows in tables.items():
        if name != "sources":
            counts = [sum(r["checked"] == how for r in rows) for how in ("text", "copy", "memory")]
            if counts != HOW_SEEN.get(name):
                found.append(
                    f"{name}.csv: {counts} rows of text, copy, memory; recorded are {HOW_SEEN.get(name)}"
                )
    return found


@cache
def _rule_register() -> dict[str, set[tuple[str, ...]]]:
    """Keys of the rules in words, as they stood when last agreed. A guard against slips, not a second transcription."""
    register: dict[str, set[tuple[str, ...]]] = defaultdict(set)
    with (Path(__file__).parent / "rule-register.csv").open(newline="", encoding="utf-8") as stream:
        for row in csv.DictReader(stream):
            register[row["table"]].add(
                (row["item"], row["rule"], row["quantity"], row["unit"], row["source"])
            )
    return register


def law_rules_are_registered(tables: Tables) -> list[str]:
    """Every rule in words keeps its name and its source; adding or dropping one is entered in rule-register.csv."""
    found = []
    for name, rows in tables.items():
        if rows and "rule" in rows[0]:
            have = {(r["item"], r["rule"], r["quantity"], r["unit"], r["source"]) for r in rows}
            found += [
                f"{name}.csv {key}: not as registered" for key in have ^ _rule_register().get(name, set())
            ]
    return found


LAWS: tuple[Law, ...] = tuple(value for name, value in sorted(globals().items()) if name.startswith("law_"))

# Tables that hold rows from memory -> the laws that hold those rows.
HELD_BY: dict[str, tuple[str, ...]] = {
    "chain-marks": ("law_marks_follow_the_grade",),
    "chain-lifting": ("law_lifting_grade_relation", "law_lifting_rises"),
    "shackles": ("law_shackle_scaling", "law_shackle_break"),
    "chain-wear": ("law_wear_adds_up", "law_wear_asme_pattern"),
    "densities": ("law_densities",),
    "chain-strength": ("law_chain_strength_relation", "law_chain_strength_agrees_with_slings"),
    "eyebolts": ("law_eyebolts_inch", "law_eyebolts_metric"),
    "wire-rope": ("law_wire_rope",),
    "choker-factors": ("law_choker_steps",),
    "design-factors": ("law_design_factors",),
    "tie-down-other": ("law_tie_down_other",),
    "pipe-sizes": ("law_pipe_sizes",),
    "steel-compositions": ("law_compositions",),
    "sling-leg-counting": ("law_leg_counting",),
    "chain-hooks": (),  # one row in words, "common practice, no source": no figure in it
}
