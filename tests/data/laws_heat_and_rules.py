"""Laws of the heat tables, design factors, proof tests and tie-downs.

The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re
from itertools import pairwise

from tests.data.law_tools import (
    LB,
    LBF,
    Row,
    Tables,
    away,
    band,
    column,
    groups,
    num,
    rising,
    two_sections,
)


def law_heat_asme(tables: Tables) -> list[str]:
    """Rises with temperature, F and C agree within a degree, grade 100 loses at least what grade 80 does, hot more than after."""
    rows = tables["chain-heat-asme"]
    found = []
    for row in rows:
        found += band(
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
    for key, group in groups(rows, "grade", "quantity").items():
        found += rising(
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
        for key, rows in groups(tables[name], *keys).items():
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


# Items of one kind: whoever rules on them prints the same factor (running and sling rope, hardware, parts fitted to
# grade 8 chain).
SAME_FACTOR = (
    ("running_wire_rope", "crane_rope", "wire_rope", "wire_rope_sling", "non_rotating_hoist_line"),
    ("sling_general", "eyebolt", "turnbuckle", "rigging_general", "shackle_en_13889"),
    ("chain_grade_80", "chain_grade_100", "rigging_fatigue_rated_en_1677_1", "metal_sling_part"),
)
# Section of a law -> what it rules on (the heading of the section).
DESIGN_SECTIONS = {
    ("doe-std-1090", "s. 11.3.1.3"): "sling_general",
    ("doe-std-1090", "s. 12.4"): "eyebolt",
    ("doe-std-1090", "s. 11.3.5f"): "web_sling",
    ("doe-std-1090", "s. 11.3.5c"): "web_sling_fitting",
    ("navedtra-14251", "ch. 6"): "chain",
    ("osha-1917", "1917.42(b)"): "running_wire_rope",
    ("osha-1919", "1919.33"): "running_wire_rope",
    ("osha-1918", "App. II Table 2 heading"): "natural_fibre_rope_sling",
    ("aashto-m269", "Table 2"): "turnbuckle",
    ("wac-296-24", "296-24-29401(1)"): "wire_rope",
    ("dguv-109-017", "Annex E"): "one_way_lifting_band",
    ("astm-a391", "Design factor"): "chain_grade_80",
    ("astm-a973", "Design factor"): "chain_grade_100",
    ("michigan-r408", "R 408.15226(1)"): "wire_rope_sling",
    ("alberta-ohs", "s. 292(1)(b)"): "rigging_general",
    ("alberta-ohs", "s. 292(1)(a)"): "rigging_lifting_people",
    ("alberta-ohs", "s. 292(1)(c)"): "rigging_fatigue_rated_en_1677_1",
    ("alberta-ohs", "s. 292.1(1)(a)"): "running_line",
    ("alberta-ohs", "s. 292.1(1)(b)"): "non_rotating_hoist_line",
    ("alberta-ohs", "s. 292.1(1)(c)"): "tugger_line",
    ("alberta-ohs", "s. 292.1(1)(d)"): "pendant_or_guy_line",
    ("alberta-ohs", "s. 292.1(1)(e)"): "winch_line",
}


def law_design_factor_sections(tables: Tables) -> list[str]:
    """A section rules on what its heading says; a doubled factor is one with people below; all lie between 2 and 14."""
    found = []
    for row in tables["design-factors"]:
        item, quantity = row["item"], row["quantity"]
        found += band("design-factors", item, num(row["value"]), 2, 14)
        wanted_item = DESIGN_SECTIONS.get((row["source"], row["locator"]), item)
        if wanted_item != item:
            found.append(f"design-factors.csv {row['locator']}: rules on {wanted_item}, not {item}")
        wanted = (
            "load_without_set"
            if item == "web_sling_fitting"
            else "design_factor_over_people"
            if row["note"] == "With people below."
            else "design_factor"
        )
        if quantity != wanted:
            found.append(f"design-factors.csv {item}: {quantity} does not go with it")
    return found


def law_design_factor_is_one_over_the_share(tables: Tables) -> list[str]:
    """A load given as a share of breaking (Alberta s. 292, Washington 296-24-29401) is one over the factor."""
    found = []
    for row in tables["design-factors"]:
        share = re.search(r"Load at most (?:([0-9]+) percent|one (fifth)) of breaking", row["note"])
        if share:
            wanted = 5 if share[2] else 100 / float(share[1])
            found += away("design-factors", row["item"], num(row["value"]), wanted, 1e-9)
        if "Holds twice its rating" in row["note"]:
            found += away("design-factors", row["item"], num(row["value"]), 2, 1e-9)
    return found


def _factor_by_item(tables: Tables) -> dict[str, set[float]]:
    """item -> its factors; the navy's chain is left out, which counts more strictly than every standard."""
    factor: dict[str, set[float]] = {}
    for row in tables["design-factors"]:
        if row["quantity"] == "design_factor" and row["source"] != "navedtra-14251":
            factor.setdefault(row["item"], set()).add(num(row["value"]))
    return factor


def law_design_factors_agree(tables: Tables) -> list[str]:
    """Items of one kind have one factor, whoever prints it; people below double it (DGUV 215-313, Alberta s. 292)."""
    factor = _factor_by_item(tables)
    found = [
        f"design-factors.csv {item}: {sorted(values)}, where the sources agreed when read"
        for item, values in factor.items()
        if len(values) > 1
    ]
    for alike in SAME_FACTOR:
        values = {value for item in alike for value in factor.get(item, {math.nan})}
        if len(values) != 1:
            found.append(f"design-factors.csv {' '.join(alike)}: one kind, but factors {sorted(values)}")
    pairs = [
        (row["item"], num(row["value"]), row["item"])
        for row in tables["design-factors"]
        if row["quantity"] == "design_factor_over_people"
    ]
    if {item for item, _, _ in pairs} != {
        row["item"] for row in tables["design-factors"] if row["source"] == "dguv-215-313"
    }:
        found.append("design-factors.csv: DGUV 215-313 doubles each of its factors over people")
    pairs += [
        ("rigging_lifting_people", v, "rigging_general") for v in factor.get("rigging_lifting_people", {0.0})
    ]
    for item, value, plain in pairs:
        for single in factor.get(plain, {math.nan}):
            found += away("design-factors", (item, "over people"), value, 2 * single, 1e-9)
    return found


def law_design_factors(tables: Tables) -> list[str]:
    """A factor is what the printed tables really keep between breaking and rating, within 3 %.

    Grade 80 and 100 chain (OSHA limits, grade relation), grade 4 chain (EN 818-3), turnbuckles (AASHTO), wire rope slings
    (95 % of the rope after the splice, ASME B30.9), shackles (RR-C-271).
    """
    factor = _factor_by_item(tables)
    return [
        problem
        for item, kept in _factors_kept(tables).items()
        for value in factor.get(item, {math.nan})
        for problem in band("design-factors", (item, "against the printed tables"), kept / value, 0.97, 1.03)
    ]


def _factors_kept(tables: Tables) -> dict[str, float]:
    """item -> the factor that another table of this book keeps between breaking and rating (the median of its rows)."""
    kept = {}
    for grade in ("80", "100"):
        kept[f"chain_grade_{grade}"] = _median(
            [
                num(grade) * 10 * two_sections(num(r["size_mm"])) / (num(r["value"]) * LBF)
                for r in tables["chain-lifting"]
                if r["legs"] == "1" and r["grade"] == grade
            ]
        )
    for item, name, key, above, below in (
        ("chain", "chain-strength", "size_mm", "minimum_breaking_force", "working_load_limit"),
        ("turnbuckle", "turnbuckles", "thread_in", "minimum_breaking_force", "working_load"),
        ("wire_rope_sling", "wire-rope", "size_in", "nominal_breaking_force", "sling_vertical"),
        ("shackle_en_13889", "shackles", "size_in", "minimum_breaking_force", "working_load_limit"),
    ):
        rows = [
            r
            for r in tables[name]
            if r.get("grade", "4") in {"4", "A"} and (r["unit"], name) != ("kN", "turnbuckles")
        ]
        strong, rated = column(rows, key, quantity=above), column(rows, key, quantity=below)
        scale = {"chain": 1 / 9.80665, "wire_rope_sling": 0.95, "shackle_en_13889": 1 / 2000}.get(item, 1.0)
        kept[item] = _median([scale * strong[size] / rated[size] for size in strong.keys() & rated.keys()])
    return kept


def _median(values: list[float]) -> float:
    return sorted(values)[len(values) // 2] if values else math.nan


def law_proof_tests_meet(tables: Tables) -> list[str]:
    """Where a rule goes from one formula to the next the two give the same load there (1.22 x + 20: within 1.1 %)."""
    found = []
    for (item, source), rows in groups(tables["proof-tests"], "item", "source").items():
        parts: dict[str, list[float]] = {}
        for row in rows:
            part = parts.setdefault(row["load_range"], [math.nan, 0.0])
            part[0 if row["quantity"] == "proof_factor" else 1] = num(row["value"])
            if row["quantity"] == "proof_factor":
                found += band("proof-tests", (item, source), num(row["value"]), 1, 6)
        edges = sorted(
            {float(edge) for text in parts for edge in re.findall(r"[0-9]+", text) if "short" not in text}
        )
        for edge in edges:
            below = [p for text, p in parts.items() if re.search(rf"to {edge:g}\b", text)]
            above = [p for text, p in parts.items() if re.match(rf"(over )?{edge:g}\b", text)]
            if len(below) != 1 or len(above) != 1:
                found.append(f"proof-tests.csv {item} {source}: ranges do not meet at {edge:g}")
            else:
                found += away(
                    "proof-tests",
                    (item, source, edge),
                    below[0][0] * edge + below[0][1],
                    above[0][0] * edge + above[0][1],
                    0.011 if item in {"loose_gear", "shackle"} else 1e-9,
                )
    return found


# Items of one kind are proved with one factor, whoever rules.
SAME_PROOF = (
    ("custom_lifting_accessory", "overhead_crane", ("crane_with_gear", "to 20"), ("cargo_gear", "to 20")),
    (
        "hook_without_maker_data",
        "welded_end_of_wire_rope_sling",
        "wire_rope_sling_navy",
        "alloy_chain_sling",
        "web_sling_after_repair",
        "loose_gear",
        ("loose_gear", "to 25"),
        ("shackle", "to 25"),
        ("shackle", "to 150 short tons"),
        ("multi_sheave_block", "to 20"),
        ("lifting_beam", "to 10"),
    ),
    (("crane_with_gear", "over 50"), ("cargo_gear", "over 50")),
)
# Section of a law or standard -> what it proves (its heading).
PROOF_SECTIONS = {
    ("osha-1926-251", "1926.251(a)(4)"): {"custom_lifting_accessory"},
    ("osha-1926-251", "1926.251(f)(2)"): {"hook_without_maker_data"},
    ("wac-296-304", "296-304-07005(2)(a)"): {"hook_without_maker_data"},
    ("osha-1910-184", "1910.184(f)(4)(ii)"): {"welded_end_of_wire_rope_sling"},
    ("wac-296-24", "296-24-29425(4)(b)"): {"welded_end_of_wire_rope_sling"},
    ("california-t8", "5044(d)"): {"alloy_chain_sling"},
    ("california-t8", "5046(e)"): {"metal_mesh_sling"},
    ("doe-std-1090", "s. 15.4.7.3"): {"alloy_chain_sling"},
    ("osha-1910-184", "1910.184(i)(8)"): {"web_sling_after_repair"},
    ("osha-1919", "1919.31(a)"): {"loose_gear", "multi_sheave_block", "hand_chain_block"},
    ("osha-1919", "1919.31(a) and note 1"): {"single_sheave_block"},
    ("osha-1919", "1919.28(a)"): {"crane_with_gear"},
    ("osha-1917", "Appendix I"): {"cargo_gear"},
    ("osha-1910-179", "1910.179(k)(2)"): {"overhead_crane"},
    ("wac-296-155", "296-155-33915(1)(c)"): {"clip_termination"},
    ("india-dock-1990", "Schedule I (2)(a)"): {"loose_gear"},
    ("nd-0027", "s. 14.4.2"): {"shackle"},
    ("asme-b30-26", "2010, s. 26-1.4.2"): {"shackle"},
    ("bg-bau-ubt3074", "ubt3074"): {"chain_sling_periodic"},
    ("navedtra-14080", "ch. 3 records page"): {"wire_rope_sling_navy"},
}
PARTS_ON_THE_HEAD = {"single_sheave_block": 2, "single_sheave_block_with_becket": 3}


def law_proof_tests(tables: Tables) -> list[str]:
    """A section proves what its heading says; items of one kind have one factor; a block on its head the rope's parts.

    A block rated by its rope load is proved to twice what its head carries: two parts of rope, three with a becket. Where
    the standard leaves a range of factors, the table holds the least of it.
    """
    found = []
    rows = [r for r in tables["proof-tests"] if r["quantity"] == "proof_factor"]
    for row in tables["proof-tests"]:
        allowed = PROOF_SECTIONS.get((row["source"], row["locator"]))
        if allowed is not None and row["item"] not in allowed:
            found.append(f"proof-tests.csv {row['locator']}: does not prove {row['item']}")
        between = re.search(r"^([0-9.]+) to ([0-9.]+) times the rating", row["note"])
        if between and num(row["value"]) != float(between[1]):
            found.append(f"proof-tests.csv {row['item']}: the least of the range is {between[1]}")
    for row in rows:
        parts = PARTS_ON_THE_HEAD.get(row["item"])
        if parts:
            found += away("proof-tests", row["item"], num(row["value"]), 2 * parts, 1e-9)
    for alike in SAME_PROOF:
        keys = {key if isinstance(key, tuple) else (key, "any") for key in alike}
        values = {num(r["value"]) for r in rows if (r["item"], r["load_range"]) in keys}
        if len(values) != 1:
            found.append(f"proof-tests.csv {sorted(keys)}: one kind, but factors {sorted(values)}")
    return found


# Paragraphs of 49 CFR 393 whose number says which way the cargo moves and what is limited.
WAYS = {"(i)": "forward", "(ii)": "rearward", "(iii)": "sideways"}
LIMITED = {"(1)": "breaking_strength", "(2)": "working_load_limit"}
# paragraph -> item and quantities it gives
PARAGRAPHS = {
    "393.102(b)": ("hold_down", {"downward_share_of_weight"}),
    "393.106(d)": ("aggregate", {"required_share_of_weight"}),
    "393.106(d)(1)": ("direct", {"counted_share_of_limit"}),
    "393.106(d)(2)": ("same_side", {"counted_share_of_limit"}),
    "393.106(d)(3)": ("other_side", {"counted_share_of_limit"}),
    "393.108(e)(1)": ("unmarked_wire_rope", {"counted_share_of_strength"}),
    "393.108(g)": ("friction_mat", {"resisted_share_of_weight"}),
    "393.110(b)(1)": ("short_light", {"tie_downs", "length_at_most", "weight_at_most"}),
    "393.110(b)(2)(i)": ("short_heavy", {"tie_downs"}),
    "393.110(b)(2)(ii)": ("medium", {"tie_downs", "length_at_most"}),
    "393.110(b)(3)": ("long", {"tie_downs_for_first", "one_more_per"}),
    "393.110(c)": ("blocked", {"one_per"}),
    "393.130(a)": ("heavy_equipment", {"weight_at_least"}),
    "393.130(c)(1)": ("heavy_equipment", {"tie_downs"}),
}
NUMBER_WORDS = {
    "one tie-down": 1, "two": 2, "four": 4, "half": 0.5, "full": 1, "one fourth": 0.25,
}  # fmt: skip


def law_tie_down_paragraphs(tables: Tables) -> list[str]:
    """Each paragraph of 49 CFR 393 rules on its own thing, and the rule in words (tie-down-rules) says the same number.

    393.102(a): (1) is the breaking strength, (2) the working load limit; (i), (ii), (iii) are forward, rearward, sideways.
    """
    found = []
    words = {r["locator"]: r["value"].lower() for r in tables["tie-down-rules"]}
    for row in tables["tie-down-numbers"]:
        what = (row["item"], row["quantity"], row["unit"])
        way = re.fullmatch(r"393\.102\(a\)(\([12]\))(\(i+\))", row["locator"])
        wanted = (
            (LIMITED[way[1]], {f"{WAYS[way[2]]}_share_of_weight"}) if way else PARAGRAPHS.get(row["locator"])
        )
        if wanted is None or row["item"] != wanted[0] or row["quantity"] not in wanted[1]:
            found.append(f"tie-down-numbers.csv {what}: {row['locator']} rules on something else")
        paragraph = row["locator"].removesuffix(way[2]) if way else row["locator"]
        if row["unit"] not in {"m", "kg"} and not _said(row, words.get(paragraph, "")):
            found.append(f"tie-down-numbers.csv {what}: the rule in words does not say {row['value']}")
    return found


def law_tie_down_numbers(tables: Tables) -> list[str]:
    """Metric and US figures of one rule agree: pounds to the kilogram (1,100 lb is printed as 500 kg), feet within 0.3 %.

    Shares lie between 0.2 and 1; a pull that keeps a part within its limit is no harder than one that keeps it whole.
    """
    rows = tables["tie-down-numbers"]
    found = []
    for row in rows:
        if row["unit"] == "ratio":
            found += band("tie-down-numbers", (row["item"], row["quantity"]), num(row["value"]), 0.2, 1)
        if row["quantity"].startswith(("one_", "tie_downs")):
            found += band("tie-down-numbers", (row["item"], row["quantity"]), num(row["value"]), 1, 99)
    whole = column(rows, "quantity", item="breaking_strength")
    for quantity, share in column(rows, "quantity", item="working_load_limit").items():
        found += band("tie-down-numbers", quantity, share, 0.2, whole.get(quantity, 0))
    for key, group in groups(rows, "item", "quantity").items():
        got = column(group, "unit")
        needed = {
            "weight_at_least": {"lb", "kg"},
            "weight_at_most": {"lb", "kg"},
            "length_at_most": {"ft", "m"},
        }
        if key[1] in needed and set(got) != needed[key[1]]:
            found.append(f"tie-down-numbers.csv {key}: needs {' and '.join(sorted(needed[key[1]]))}")
        if "kg" in got:
            room = 1.1 if got["kg"] == 500 else 0.51
            found += band("tie-down-numbers", key, got["kg"] - got.get("lb", math.nan) * LB, -room, room)
        if "m" in got:
            found += away("tie-down-numbers", key, got["m"], got.get("ft", math.nan) * 0.3048, 0.0033)
    return found


def _said(row: Row, words: str) -> bool:
    """Whether the words hold the row's number: `0.8 g` forward, `20 percent`, `half`, `two`, `10 ft`."""
    value = num(row["value"])
    way = row["quantity"].split("_")[0]
    directed = {
        "forward": r"{} g (?:braking|forward)",
        "rearward": r"{} g backwards",
        "sideways": r"{} g sideways",
    }
    if way in directed:
        return re.search(directed[way].format(re.escape(row["value"])), words) is not None
    if row["quantity"] == "downward_share_of_weight":
        return f"{100 * value:g} percent" in words
    if row["unit"] in {"ft", "lb"}:
        return f"{row['value']} {row['unit']}" in words
    return any(re.search(rf"\b{word}\b", words) for word, number in NUMBER_WORDS.items() if number == value)


# Step to which 49 CFR 393.108 prints each column of pounds.
TIE_DOWN_STEP_LB = {
    "synthetic_webbing": 250,
    "wire_rope_6x37_fibre_core": 100,
    "polypropylene_rope": 25,
    "nylon_rope": 1,
    "double_braided_nylon_rope": 1,
}
POUNDS_PER_INCH_OF_WEB = 1000


def law_tie_down_other(tables: Tables) -> list[str]:
    """Kilograms are pounds rounded to the ten (within 5.2 kg), limits rise with size, ropes about with the square of it.

    Webbing is 1,000 lb an inch of width. Wire rope is 20,800 to 21,600 lb an in2 of diameter squared (a fourth of 6x37
    improved plow steel, 393.108(e)); 1/4 in stands above that, and 3/4 in (10,900 lb, 19,378) below it as the law prints it.
    """
    found = []
    rows = tables["tie-down-other"]
    for key, group in groups(rows, "material", "size_in").items():
        got = column(group, "unit")
        if set(got) != {"lb", "kg"}:
            found.append(f"tie-down-other.csv {key}: needs lb and kg")
            continue
        found += band("tie-down-other", key, got["kg"] - got["lb"] * LB, -5.2, 5.2)
        found += band("tie-down-other", (key, "kg is a multiple of ten"), got["kg"] % 10, 0, 0)
        if got["lb"] % TIE_DOWN_STEP_LB.get(key[0], 5):
            found.append(
                f"tie-down-other.csv {key}: {got['lb']:g} lb is no step of {TIE_DOWN_STEP_LB.get(key[0], 5)}"
            )
        if key[0] == "synthetic_webbing":
            found += away("tie-down-other", key, got["lb"], POUNDS_PER_INCH_OF_WEB * num(key[1]), 1e-9)
        if key[0] == "wire_rope_6x37_fibre_core" and key[1] not in {"1/4", "3/4"}:
            found += band("tie-down-other", (key, "lb an in2"), got["lb"] / num(key[1]) ** 2, 20800, 21600)
    for (material, unit), group in groups(rows, "material", "unit").items():
        strap = material == "steel_strapping"
        pairs = sorted((_area_or_size(r["size_in"]), num(r["value"])) for r in group)
        found += rising("tie-down-other", (material, unit), pairs, strict=not strap)
        if material.endswith(("rope", "core")):
            for (d1, w1), (d2, w2) in pairwise(pairs):
                found += band(
                    "tie-down-other",
                    (material, unit, f"{d1:g} to {d2:g} in"),
                    math.log(w2 / w1) / math.log(d2 / d1),
                    1.1,
                    2.9,
                )
    return found


def law_tie_down_sizes(tables: Tables) -> list[str]:
    """One inch size has one metric name in every column: rope and webbing within 1.7 mm of it, strapping to the print."""
    found = []
    for (size_in,), group in groups(tables["tie-down-other"], "size_in").items():
        metric = {r["size"] for r in group}
        if len(metric) != 1:
            found.append(f"tie-down-other.csv {size_in} in: is called {sorted(metric)}")
        for name in metric:
            for inch, mm in zip(size_in.split(" x "), name.split(" x "), strict=True):
                room = 0.06 if " x " in name else 1.7
                found += band("tie-down-other", (size_in, name), num(mm) - 25.4 * num(inch), -room, room)
    return found


def _area_or_size(text: str) -> float:
    product = 1.0
    for part in text.split(" x "):
        product *= num(part)
    return product
