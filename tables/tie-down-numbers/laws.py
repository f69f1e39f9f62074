"""Laws of the table tie-down-numbers. The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re

from build_scripts.laws.tools import LB, Row, Tables, away, band, column, groups, num

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
    "393.120(a)": ("coil", {"weight_at_least"}),
    "393.128(a)": ("light_vehicle", {"weight_at_most"}),
    "393.128(b)(1)": ("light_vehicle", {"tie_downs"}),
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
            found.append(f"tie-down-numbers/claims.csv {what}: {row['locator']} rules on something else")
        paragraph = row["locator"].removesuffix(way[2]) if way else row["locator"]
        if row["unit"] not in {"m", "kg"} and not _said(row, words.get(paragraph, "")):
            found.append(f"tie-down-numbers/claims.csv {what}: the rule in words does not say {row['value']}")
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
            found.append(f"tie-down-numbers/claims.csv {key}: needs {' and '.join(sorted(needed[key[1]]))}")
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
