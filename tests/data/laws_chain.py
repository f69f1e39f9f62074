"""Laws of the chain tables.

The source of each law stands in its docstring."""

from __future__ import annotations

import math

from tests.data.law_tools import (
    LB,
    LBF,
    G,
    Tables,
    away,
    band,
    column,
    exact,
    groups,
    num,
    rising,
    two_sections,
)

# 49 CFR 393.108 rounds three carbon cells in kilograms otherwise than its pounds: up to 14 kg off.
ROUNDED_APART_KG = {("30", "1/4"), ("30", "1/2"), ("43", "5/8")}

WIRE_MM = {"1/4": 7.0, "5/16": 8.0, "3/8": 10.0, "7/16": 11.9, "1/2": 13.0, "5/8": 16.0}


def law_tie_down_units(tables: Tables) -> list[str]:
    """Pounds and kilograms of one cell agree within 2.1 % (the law rounded each by itself; 5/16 in grade 80 is widest)."""
    found = []
    for key, rows in groups(tables["chain-tie-down"], "grade", "size_in").items():
        by_unit = column(rows, "unit")
        if set(by_unit) != {"lb", "kg"}:
            found.append(f"chain-tie-down.csv {key}: needs one row in lb and one in kg")
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
                found.append(f"chain-tie-down.csv {what}: {row['value']} is no hundred of kilograms")
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
        f"chain-lifting.csv {g} {s}: two legs at 30 degrees differ from one leg"
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
            if row["checked"] == "memory":
                found += away(
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
    for key, rows in groups(tables["chain-lifting"], "grade", "legs", "angle_from_horizontal").items():
        found += rising("chain-lifting", key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    for key, rows in groups(tables["chain-lifting"], "size_in", "legs", "angle_from_horizontal").items():
        by_grade = column(rows, "grade")
        if len(by_grade) == 2:
            found += band("chain-lifting", key, by_grade["100"] / by_grade["80"], 1.21, 1.31)
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
            found += away("chain-lifting-metric", what, value, factors[case] * base, 0.066)
        elif case in exactly:
            found += band("chain-lifting-metric", what, value - exactly[case] * base, -1e-6, 1e-6)
        elif case == ("2", "choke", "0-45"):
            found += band("chain-lifting-metric", what, value - 1.4 * 0.8 * base, -9, 1e-6)
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
GERMAN_ROUNDING = {320}
"""320 in place of 315: the older German rounding of series R 40."""


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
            stress = num(row["value"]) * G / two_sections(num(row["size_mm"]))
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
        found += rising("chain-lifting-metric", key, ((num(r["size_mm"]), num(r["value"])) for r in group))
    for key, group in groups(rows, "size_mm", "legs", "hitch", "angle_from_vertical").items():
        found += rising("chain-lifting-metric", key, ((num(r["grade"]), num(r["value"])) for r in group))
    return found


def law_chain_strength_relation(tables: Tables) -> list[str]:
    """EN 818-3 Table 5: break = 400 N/mm2 on two sections, proof = half of it (three figures), bend = 0.8 diameter (two).

    Working load limits of EN 818-2 and -3 are the largest preferred number (ISO 3, series R 40) that puts no more than
    a quarter of the grade stress on two sections.
    """
    found = []
    for (grade, size), rows in groups(tables["chain-strength"], "grade", "size_mm").items():
        area, got = two_sections(num(size)), column(rows, "quantity")
        quarter_t = 25 * num(grade) * area / 1000 / G
        wanted = {"working_load_limit": largest_preferred(quarter_t)}
        if grade == "4":
            wanted["minimum_breaking_force"] = figures(0.4 * area, 3)
            wanted["manufacturing_proof_force"] = figures(0.2 * area, 3)
            wanted["minimum_bend_deflection"] = figures(0.8 * num(size), 2)
        if set(got) != set(wanted):
            found.append(f"chain-strength.csv {grade} {size}: needs {', '.join(wanted)}")
        for quantity in got.keys() & wanted.keys():
            found += away("chain-strength", (grade, size, quantity), got[quantity], wanted[quantity], 1e-9)
    return found


def figures(value: float, count: int) -> float:
    """Rounded to so many figures, halves up."""
    step = 10.0 ** (math.floor(math.log10(value)) + 1 - count)
    return math.floor(value / step + 0.5) * step


def largest_preferred(limit: float) -> float:
    """The largest number of series R 40 (ISO 3) that is not above the limit."""
    decade = 10.0 ** (math.floor(math.log10(limit)) - 2)
    return max(n for n in PREFERRED if n not in GERMAN_ROUNDING and n <= limit / decade) * decade


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
            found += away(
                "chain-strength", (row["grade"], row["size_mm"]), num(row["value"]) * 1000, printed, 1e-9
            )
    return found


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


def law_wear_adds_up(tables: Tables) -> list[str]:
    """29 CFR tables: size less most wear is exactly the least thickness, in every row and every reprint."""
    found = []
    for size, rows in groups(tables["chain-wear"], "size_in").items():
        thick = {r["value"] for r in rows if r["source"] in {"osha-1910-184", "michigan-r408"}}
        wear = {exact(r["value"]) for r in rows if r["quantity"] == "maximum_wear"}
        for t in thick:
            for w in wear:
                if exact(t) + w != exact(size[0]):
                    found.append(f"chain-wear.csv {size[0]}: {t} and wear {w} do not add up to the size")
        if bool(thick) != bool(wear):
            found.append(f"chain-wear.csv {size[0]}: thickness and wear must both be there")
    return found


THICKNESS_SOURCES = {"osha-1910-184", "michigan-r408", "wac-296-155"}


def law_wear_sources(tables: Tables) -> list[str]:
    """29 CFR 1910.184, Michigan and Washington print the thickness that must be left; 29 CFR 1926.251 and DOE the wear."""
    return [
        f"chain-wear.csv {row['size_in']}: {row['source']} does not print {row['quantity']}"
        for row in tables["chain-wear"]
        if (row["quantity"] == "minimum_thickness") != (row["source"] in THICKNESS_SOURCES)
    ]


def law_grade_letters(tables: Tables) -> list[str]:
    """GOST R EN 818-4: M, P, S, T, V are grades 4, 5, 6, 8, 10, as the marks of the chain have them."""
    letters = {r["grade"]: r["value"] for r in tables["chain-marks"] if r["example"] == "letter"}
    return [
        f"chain-grade-stress.csv grade {row['grade']}: is not letter {row['letter']}"
        for row in tables["chain-grade-stress"]
        if letters.get(row["grade"]) != row["letter"]
    ]


def law_wear_asme_pattern(tables: Tables) -> list[str]:
    """ASME-pattern rows: inch and mm agree, and the thickness is 86 to 87.5 % of the metric size of the chain."""
    found = []
    metric = {r["size_in"]: num(r["size_mm"]) for r in tables["chain-lifting"]}
    rows = [r for r in tables["chain-wear"] if r["source"] == "wac-296-155"]
    for (size,), group in groups(rows, "size_in").items():
        got = column(group, "unit")
        if set(got) != {"in", "mm"}:
            found.append(f"chain-wear.csv {size}: needs inches and millimetres")
            continue
        found += band("chain-wear", (size, "mm against in"), got["mm"] - got["in"] * 25.4, -0.012, 0.012)
        found += band("chain-wear", (size, "share"), got["mm"] / metric.get(size, math.nan), 0.864, 0.8735)
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
        for group_key, group in groups(rows, key, "quantity").items():
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


def law_chain_limits(tables: Tables) -> list[str]:
    """Stretch: an emergency service stops first, DIN 685 (DGUV) and the navy at one figure, Queensland at twice that.

    Wear: DIN 685 and Queensland print one figure, the emergency service allows more, the navy most, and a worn link keeps
    at least three quarters. All but the emergency service's stretch go in fives.
    """
    rows = tables["chain-limits"]
    stretch = column(rows, "source", quantity="elongation")
    wear = column(rows, "source", quantity="thickness_loss")
    sources = {"ema-4wd", "dguv-209-021", "navedtra-14251", "qld-pn10123"}
    if set(stretch) != sources or set(wear) != sources or len(rows) != 8:
        return ["chain-limits.csv: four sources print both limits"]
    found = [
        f"chain-limits.csv {r['source']}: {r['value']} percent is no step of five"
        for r in rows
        if num(r["value"]) % 5 and (r["source"], r["quantity"]) != ("ema-4wd", "elongation")
    ]
    found += [
        f"chain-limits.csv {r['source']}: only the emergency service's stretch is out over the limit, not at it"
        for r in rows
        if (r["sense"] == "out_over") != ((r["source"], r["quantity"]) == ("ema-4wd", "elongation"))
    ]
    if (
        not 2
        <= stretch["ema-4wd"]
        < stretch["dguv-209-021"]
        == stretch["navedtra-14251"]
        == stretch["qld-pn10123"] / 2
    ):
        found.append(f"chain-limits.csv elongation: out of order: {stretch}")
    if not wear["dguv-209-021"] == wear["qld-pn10123"] < wear["ema-4wd"] < wear["navedtra-14251"] <= 25:
        found.append(f"chain-limits.csv thickness_loss: out of order: {wear}")
    return found
