"""Laws of the table proof-tests. The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re

from build_scripts.laws.tools import Tables, away, band, groups, num, words_of_note


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
                found.append(f"proof-tests/claims.csv {item} {source}: ranges do not meet at {edge:g}")
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
            found.append(f"proof-tests/claims.csv {row['locator']}: does not prove {row['item']}")
        between = re.search(r"^([0-9.]+) to ([0-9.]+) times the rating", words_of_note("proof-tests", row))
        if between and num(row["value"]) != float(between[1]):
            found.append(f"proof-tests/claims.csv {row['item']}: the least of the range is {between[1]}")
    for row in rows:
        parts = PARTS_ON_THE_HEAD.get(row["item"])
        if parts:
            found += away("proof-tests", row["item"], num(row["value"]), 2 * parts, 1e-9)
    for alike in SAME_PROOF:
        keys = {key if isinstance(key, tuple) else (key, "any") for key in alike}
        values = {num(r["value"]) for r in rows if (r["item"], r["load_range"]) in keys}
        if len(values) != 1:
            found.append(f"proof-tests/claims.csv {sorted(keys)}: one kind, but factors {sorted(values)}")
    return found
