"""Laws of the table wire-rope-limits. The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re

from build_scripts.laws.families import default_is_the_strictest
from build_scripts.laws.tools import Tables, away, band, num

# Section of a law or standard -> the item it rules on.
ROPE_SECTIONS = {
    ("osha-1910-184", "1910.184(f)(5)(i)"): {"sling"},
    ("osha-1910-184", "1910.184(f)(5)(ii)"): {"sling"},
    ("osha-1926-251", "1926.251(c)(4)(iv)"): {"construction_rope"},
    ("canada-sor-2007-128", "s. 322"): {"ship_rope"},
    ("michigan-r408", "R 408.40834(1)(a)"): {"running_rope"},
    ("michigan-r408", "R 408.40834(1)(e)"): {"standing_rope"},
    ("michigan-r408", "R 408.40834(1)(d)"): {
        "rope_to_5_16_in",
        "rope_3_8_to_1_2_in",
        "rope_9_16_to_3_4_in",
        "rope_7_8_to_1_1_8_in",
        "rope_1_1_4_to_1_1_2_in",
    },
    ("wac-296-24", "296-24-29401(2)"): {"any_rope"},
    ("dguv-209-061", "s. 4"): {"web_sling"},
}

# Sections that reject only what is over the limit ("more than"); every other rejects what is at it as well.
ROPE_ONLY_OVER = {
    ("osha-1926-251", "1926.251(c)(4)(iv)"),
    ("michigan-r408", "R 408.40834(1)(e)"),
    ("michigan-r408", "R 408.40834(1)(d)"),
}


def law_sections(tables: Tables) -> list[str]:
    """A section rules on its own rope, and says by itself whether a reading at the limit is out."""
    found = []
    for row in tables["wire-rope-limits"]:
        place = (row["source"], row["locator"])
        if row["item"] not in ROPE_SECTIONS.get(place, set()):
            found.append(f"wire-rope-limits/claims.csv {row['locator']}: does not rule on {row['item']}")
        wanted = "out_over" if place in ROPE_ONLY_OVER else "out_at"
        if row["sense"] != wanted:
            found.append(f"wire-rope-limits/claims.csv {row['item']}: {row['locator']} is {wanted}")
    return found


def law_wire_rope_limits(tables: Tables) -> list[str]:
    """One strand may hold half the broken wires of a lay (29 CFR 1910.184, Michigan R 408).

    Michigan's loss of diameter is a sixteenth of the largest rope of the band, cut to the sixty-fourth. Two sources that
    count broken wires over eight diameters print the same share. At an end
    fitting fewer may be broken than a lay past it, and running rope is judged more strictly than a sling.
    """
    rows = tables["wire-rope-limits"]
    found = []
    at = {(r["item"], r["quantity"]): num(r["value"]) for r in rows}
    for row in rows:
        bands = re.fullmatch(r"rope_(?:.*_)?to_([0-9_]+)_in", row["item"])
        if bands:
            largest = _size_of_key(bands[1])
            wanted = math.floor(64 * largest / 16) / 64
            found += away("wire-rope-limits", row["item"], num(row["value"]), wanted, 1e-9)
        if row["unit"] == "count" and num(row["value"]) < 1:
            found.append(f"wire-rope-limits/claims.csv {row['item']}: {row['value']} is no count of wires")
    for item in ("sling", "running_rope"):
        lay = at.get((item, "broken_wires_in_one_lay"), math.nan)
        strand = at.get((item, "broken_wires_in_one_strand_in_one_lay"), math.nan)
        found += away("wire-rope-limits", (item, "strand"), strand, lay / 2, 1e-9)
    shares = {v for (_, quantity), v in at.items() if quantity == "broken_wires_in_eight_diameters"}
    if len(shares) != 1:
        found.append(
            f"wire-rope-limits/claims.csv: shares of broken wires over eight diameters are {sorted(shares)}"
        )
    past = at.get(("standing_rope", "broken_wires_in_one_lay_past_end_fitting"), math.nan)
    end = at.get(("standing_rope", "broken_wires_at_end_fitting"), math.nan)
    running = at.get(("running_rope", "broken_wires_in_one_lay"), math.nan)
    if not end < past < running < at.get(("sling", "broken_wires_in_one_lay"), -1):
        found.append(
            "wire-rope-limits/claims.csv: fitting, lay past it, running rope, sling: must rise in this order"
        )
    stretched = at.get(("ship_rope", "diameter_loss_with_lay_stretch"), math.nan)
    if not stretched < at.get(("ship_rope", "diameter_loss_even"), -1):
        found.append("wire-rope-limits/claims.csv: a lay that has stretched allows less loss of diameter")
    found += band("wire-rope-limits", "outer wire", at.get(("sling", "outer_wire_wear"), math.nan), 0.2, 0.4)
    return found


def _size_of_key(text: str) -> float:
    """`1_1_8` -> 1.125, `5_16` -> 0.3125."""
    parts = [int(part) for part in text.split("_")]
    whole = parts.pop(0) if len(parts) == 3 else 0
    return whole + parts[0] / parts[1]


law_default_is_the_strictest = default_is_the_strictest("wire-rope-limits", "item")
