"""Laws of the table design-factors. The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re

from build_scripts.laws.tools import LBF, Tables, away, band, column, num, two_sections, words_of_note

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
    ("nacm-chain-chart", "Breaking strength 4 x limit, grade 80"): "chain_grade_80",
    ("nacm-chain-chart", "Breaking strength 4 x limit, grade 100"): "chain_grade_100",
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
            found.append(f"design-factors/claims.csv {row['locator']}: rules on {wanted_item}, not {item}")
        wanted = (
            "load_without_set"
            if item == "web_sling_fitting"
            else "design_factor_over_people"
            if row["note"] == "with-people-below"
            else "design_factor"
        )
        if quantity != wanted:
            found.append(f"design-factors/claims.csv {item}: {quantity} does not go with it")
    return found


def law_design_factor_is_one_over_the_share(tables: Tables) -> list[str]:
    """A load given as a share of breaking (Alberta s. 292, Washington 296-24-29401) is one over the factor."""
    found = []
    for row in tables["design-factors"]:
        share = re.search(
            r"Load at most (?:([0-9]+) percent|one (fifth)) of breaking", words_of_note("design-factors", row)
        )
        if share:
            wanted = 5 if share[2] else 100 / float(share[1])
            found += away("design-factors", row["item"], num(row["value"]), wanted, 1e-9)
        if row["note"].startswith("holds-twice"):
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
        f"design-factors/claims.csv {item}: {sorted(values)}, where the sources agreed when read"
        for item, values in factor.items()
        if len(values) > 1
    ]
    for alike in SAME_FACTOR:
        values = {value for item in alike for value in factor.get(item, {math.nan})}
        if len(values) != 1:
            found.append(
                f"design-factors/claims.csv {' '.join(alike)}: one kind, but factors {sorted(values)}"
            )
    pairs = [
        (row["item"], num(row["value"]), row["item"])
        for row in tables["design-factors"]
        if row["quantity"] == "design_factor_over_people"
    ]
    if {item for item, _, _ in pairs} != {
        row["item"] for row in tables["design-factors"] if row["source"] == "dguv-215-313"
    }:
        found.append("design-factors/claims.csv: DGUV 215-313 doubles each of its factors over people")
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
            if r.get("grade", "4") in {"4", "A"}
            and (r["unit"], name) != ("kN", "turnbuckles")
            and r.get("make", "highway") == "highway"
        ]
        strong, rated = column(rows, key, quantity=above), column(rows, key, quantity=below)
        scale = {"chain": 1 / 9.80665, "wire_rope_sling": 0.95, "shackle_en_13889": 1 / 2000}.get(item, 1.0)
        kept[item] = _median([scale * strong[size] / rated[size] for size in strong.keys() & rated.keys()])
    return kept


def _median(values: list[float]) -> float:
    return sorted(values)[len(values) // 2] if values else math.nan
