"""Laws of the table sling-temperature-limits. The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re

from build_scripts.laws.families import default_is_the_strictest
from build_scripts.laws.tools import Row, Tables, band, groups, num

# Section of a law or standard -> the slings it rules on.
TEMPERATURE_SECTIONS = {
    ("osha-1910-184", "1910.184(e)(6)"): {"alloy_chain_sling"},
    ("wac-296-155", "296-155-55800"): {"alloy_chain_sling"},
    ("qld-pn10123", "p. 35"): {"alloy_chain_sling"},
    ("en-818-6", "Grade 8, as quoted by a chain maker"): {"alloy_chain_sling"},
    ("asme-b30-9", "Table 9-1.8.1-1, 400 F"): {"alloy_chain_sling"},
    ("navedtra-14251", "ch. 6"): {"chain"},
    ("osha-1910-184", "1910.184(f)(3)"): {"wire_rope_sling_fibre_core", "wire_rope_sling_steel_core"},
    ("wac-296-24", "296-24-29425(3)"): {"wire_rope_sling_fibre_core"},
    ("osha-1910-184", "1910.184(h)(2)"): {"fibre_rope_sling"},
    ("wac-296-78", "296-78-755(2)"): {"fibre_rope_sling"},
    ("osha-1910-184", "1910.184(i)(7)"): {"web_sling_nylon_or_polyester", "web_sling_polypropylene"},
    ("en-1492-1", "Scope"): {"web_sling_nylon_or_polyester", "web_sling_polypropylene"},
    ("california-t8", "5046(g)"): {"metal_mesh_sling_plain", "metal_mesh_sling_coated"},
    ("asme-b30-26", "2010, s. 26-1.6.1"): {"shackle"},
}


HEAT_QUANTITIES = {
    "alloy_chain_sling": {"reduce_above", "remove_above"},
    "wire_rope_sling_fibre_core": {"remove_above"},
    "chain": {"strength_harmed_above"},
}


def _celsius(row: Row) -> float:
    return num(row["value"]) if row["unit"] == "degC" else (num(row["value"]) - 32) / 1.8


def law_sling_temperatures(tables: Tables) -> list[str]:
    """A section rules on its own slings; cold limits are below 0 C and hot ones above 60 C; laws that copy a law agree.

    Washington prints the federal figures for chain, fibre core and fibre rope. Queensland's 260 C is the navy's 500 F.
    Nylon and polyester stand more heat than polypropylene in Europe, less in American law; a coated mesh stands less heat
    and cold than a plain one; steel core stands what a shackle stands; the rule in words (shackle-rules) has the shackle's.
    Alloy chain is reduced before it is removed.
    """
    found = []
    rows = tables["sling-temperature-limits"]
    at: dict[tuple[str, str], list[tuple[str, float]]] = {}
    for row in rows:
        what = (row["item"], row["quantity"], row["source"])
        if row["item"] not in TEMPERATURE_SECTIONS.get((row["source"], row["locator"]), set()):
            found.append(
                f"sling-temperature-limits/claims.csv {row['locator']}: does not rule on {row['item']}"
            )
        if row["quantity"] not in HEAT_QUANTITIES.get(row["item"], {"use_above", "use_below"}):
            found.append(f"sling-temperature-limits/claims.csv {what}: is not limited so")
        cold = row["quantity"] == "use_above"
        found += band("sling-temperature-limits", what, _celsius(row), *((-60, -10) if cold else (60, 600)))
        at.setdefault((row["item"], row["quantity"]), []).append((row["source"], _celsius(row)))
    for copied, item, quantity in (
        ("wac-296-155", "alloy_chain_sling", "remove_above"),
        ("wac-296-24", "wire_rope_sling_fibre_core", "remove_above"),
        ("wac-296-78", "fibre_rope_sling", "use_above"),
        ("wac-296-78", "fibre_rope_sling", "use_below"),
    ):
        got = dict(at.get((item, quantity), []))
        if got.get(copied) != got.get("osha-1910-184", math.nan):
            found.append(
                f"sling-temperature-limits/claims.csv {item} {quantity}: Washington prints the federal figure"
            )
    begins = dict(at.get(("alloy_chain_sling", "reduce_above"), []))
    whole = [
        num(r["temperature_to_degC"])
        for r in tables["chain-heat-en"]
        if r["grade"] == "8" and r["value"] == "100"
    ]
    first = min((num(r["temperature_degF"]) - 32) / 1.8 for r in tables["chain-heat-asme"])
    if [begins.get("en-818-6")] != whole or begins.get("asme-b30-9") != first:
        found.append(
            "sling-temperature-limits/claims.csv: chain is reduced where the tables of heat on chain begin"
        )
    for (item, quantity), rows_of_one in groups(rows, "item", "quantity").items():
        heats = sorted(rows_of_one, key=_celsius, reverse=quantity == "use_above")
        if heats[0]["default"] != "yes" or any(
            r["default"] == "yes" and abs(_celsius(r) - _celsius(heats[0])) > 1e-9 for r in rows_of_one
        ):
            found.append(
                f"sling-temperature-limits/claims.csv {item} {quantity}: the default is not the strictest"
            )
    found += _temperatures_between_items(at, {r["rule"]: r["value"] for r in tables["shackle-rules"]})
    return found


def _temperatures_between_items(
    at: dict[tuple[str, str], list[tuple[str, float]]], words: dict[str, str]
) -> list[str]:
    def one(item: str, quantity: str, source: str) -> float:
        return dict(at.get((item, quantity), [])).get(source, math.nan)

    osha, en, california = "osha-1910-184", "en-1492-1", "california-t8"
    nylon, poly = "web_sling_nylon_or_polyester", "web_sling_polypropylene"
    plain, coated = "metal_mesh_sling_plain", "metal_mesh_sling_coated"
    queensland = one("alloy_chain_sling", "reduce_above", "qld-pn10123")
    found = band(
        "sling-temperature-limits",
        "Queensland against the navy",
        queensland - one("chain", "strength_harmed_above", "navedtra-14251"),
        -0.6,
        0.6,
    )
    shackle = re.search(r"Above ([0-9]+) F .* below (-[0-9]+) F", words.get("ask-maker", ""))
    said = [(float(f) - 32) / 1.8 for f in shackle.groups()] if shackle else [math.nan, math.nan]
    for quantity, wanted in zip(("use_below", "use_above"), said, strict=True):
        found += band(
            "sling-temperature-limits",
            ("shackle", quantity),
            one("shackle", quantity, "asme-b30-26") - wanted,
            -0.1,
            0.1,
        )
    orders = {
        "wire rope with a steel core stands what a shackle stands": (
            one("wire_rope_sling_steel_core", "use_below", osha) == one("shackle", "use_below", "asme-b30-26")
        ),
        "a coated mesh stands less than a plain one": (
            one(coated, "use_below", california) < one(plain, "use_below", california)
            and one(coated, "use_above", california) > one(plain, "use_above", california)
        ),
        "polypropylene melts first (Europe)": one(poly, "use_below", en) < one(nylon, "use_below", en),
        "both fibres have one cold limit": one(poly, "use_above", en) == one(nylon, "use_above", en),
        "minus 40 is the same in C and F": one(nylon, "use_above", en)
        == one("shackle", "use_above", "asme-b30-26"),
        "nylon and polyester web stand what fibre rope stands": (
            one(nylon, "use_below", osha)
            == one("fibre_rope_sling", "use_below", osha)
            < one(poly, "use_below", osha)
        ),
        "chain is reduced before it is removed": (
            queensland
            < one("alloy_chain_sling", "reduce_above", osha)
            < one("alloy_chain_sling", "remove_above", osha)
        ),
    }
    return found + [
        f"sling-temperature-limits/claims.csv: {rule}" for rule, holds in orders.items() if not holds
    ]


law_default_is_the_strictest = default_is_the_strictest("sling-temperature-limits", "item")
