"""Laws of the heat tables, design factors, proof tests and tie-downs.

The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re
from itertools import pairwise

from tests.data.law_tools import (
    LB,
    LBF,
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
    """Where a rule goes from one formula to the next the two give the same load there, within 1.1 %."""
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
                    0.011,
                )
    return found


def law_tie_down_numbers(tables: Tables) -> list[str]:
    """Metric and US figures of one rule agree within 0.4 %; shares lie between 0 and 1."""
    found = []
    for row in tables["tie-down-numbers"]:
        if row["unit"] == "ratio":
            found += band("tie-down-numbers", (row["item"], row["quantity"]), num(row["value"]), 0.2, 1)
    for key, rows in groups(tables["tie-down-numbers"], "item", "quantity").items():
        got = column(rows, "unit")
        for us, si, factor in (("lb", "kg", LB), ("ft", "m", 0.3048)):
            if si in got:
                found += away("tie-down-numbers", key, got[si], got.get(us, math.nan) * factor, 0.004)
    return found


def law_tie_down_other(tables: Tables) -> list[str]:
    """Kilograms are pounds rounded to the ten (within 5.2 kg), limits rise with size, ropes about with the square of it."""
    found = []
    rows = tables["tie-down-other"]
    for key, group in groups(rows, "material", "size_in").items():
        got = column(group, "unit")
        if set(got) != {"lb", "kg"}:
            found.append(f"tie-down-other.csv {key}: needs lb and kg")
        else:
            found += band("tie-down-other", key, got["kg"] - got["lb"] * LB, -5.2, 5.2)
            found += band("tie-down-other", (key, "kg is a multiple of ten"), got["kg"] % 10, 0, 0)
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


def _area_or_size(text: str) -> float:
    product = 1.0
    for part in text.split(" x "):
        product *= num(part)
    return product
