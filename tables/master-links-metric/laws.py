"""Laws of the table master-links-metric. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num, rising, two_sections

NAME = "master-links-metric"
STEEL_KG_MM3 = 7.85e-6
"""Density of steel."""
TONNE_FORCE_N = 9806.65
"""Pull of a tonne at standard gravity."""
LEGS_COUNTED = {"1": 1.0, "3-4": 2.1}
"""Straight legs whose chain the link must outlast: EN 818-4 counts three and four legs as 2.1. The sheet names the single
link for two legs as well, which count 1.4: its breaking force is only that of one, and so it stands for one."""
NEARNESS = {"1": (0.97, 1.0), "3-4": (0.95, 0.99)}
"""The sheet cuts to whole tonnes and to the preferred numbers of ratings: how far it stays under the chain."""


def link_kg(wire: float, length: float, width: float) -> float:
    """Steel in an oblong link [kg]: two straight sides and two half rings of round wire (own geometry), millimetres."""
    return STEEL_KG_MM3 * math.pi / 4 * wire**2 * (2 * (length - width) + math.pi * (width + wire))


def of_links(tables: Tables) -> dict[tuple[str, ...], dict[str, float]]:
    """The figures of each link, by chain and legs."""
    return {
        key: {row["quantity"]: num(row["value"]) for row in rows}
        for key, rows in groups(tables[NAME], "chain_mm", "legs").items()
    }


def grade_ten_stress(tables: Tables) -> float:
    """Mean stress at which grade 10 chain breaks [N/mm2], as the table of grades has it."""
    (row,) = (row for row in tables["chain-grade-stress"] if row["grade"] == "10")
    return num(row["value"])


def law_a_link_breaks_as_its_chain_does(tables: Tables) -> list[str]:
    """EN 818-4 and EN 1677-4: the breaking force of a link is that of the chain legs that hang in it, both at four times the
    working load; the chain's is 1,000 N/mm2 over both sides of its link (chain-grade-stress).
    """
    found = []
    for (chain, legs), got in of_links(tables).items():
        of_chain = grade_ten_stress(tables) * two_sections(float(chain)) / TONNE_FORCE_N
        share = got["minimum_breaking_force"] / (LEGS_COUNTED[legs] * of_chain)
        found += band(NAME, (chain, legs), share, *NEARNESS[legs])
    return found


def law_a_link_weighs_its_steel(tables: Tables) -> list[str]:
    """The printed weight is that of the printed sizes, a set with its two lower links, as far as the sheet is rounded."""
    found = []
    for key, got in of_links(tables).items():
        if "weight_of_link" not in got:
            continue
        wanted = link_kg(got["wire"], got["inside_length"], got["inside_width"])
        if key[1] == "3-4":
            wanted += 2 * link_kg(got["lower_wire"], got["lower_inside_length"], got["lower_inside_width"])
        found += band(NAME, key, got["weight_of_link"] / wanted, 1.0, 1.08)
    return found


def law_a_larger_chain_has_a_larger_link(tables: Tables) -> list[str]:
    """Every figure rises with the chain; what stands beside a breaking force stands there whole."""
    found = []
    for key, rows in groups(tables[NAME], "legs", "quantity").items():
        found += rising(NAME, key, ((num(row["chain_mm"]), num(row["value"])) for row in rows))
    for key, rows in groups(tables[NAME], "chain_mm", "legs").items():
        if len(rows) not in (1, 5, 8):
            found.append(
                f"{NAME}/claims.csv {key}: {len(rows)} figures, where the sheet has all or only what breaks it"
            )
    return found


def law_a_link_is_longer_than_wide_and_its_wire_thinner(tables: Tables) -> list[str]:
    """An oblong link (EN 1677-4): 1.6 to 2.4 times as long as wide inside; the lower links shorter and thinner."""
    found = []
    for key, got in of_links(tables).items():
        for part in ("", "lower_"):
            if f"{part}wire" in got:
                found += band(
                    NAME, (*key, part), got[f"{part}inside_length"] / got[f"{part}inside_width"], 1.6, 2.4
                )
                found += band(NAME, (*key, part), got[f"{part}wire"] / got[f"{part}inside_width"], 0.22, 0.5)
        if "lower_wire" in got:
            found += band(NAME, (*key, "lower"), got["lower_wire"] / got["wire"], 0.68, 0.86)
            found += band(
                NAME, (*key, "lower"), got["lower_inside_length"] / got["inside_length"], 0.44, 0.58
            )
    return found
