"""Laws of the table master-links. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num, rising

MM_AN_INCH = 25.4
"""Millimetres in an inch, exact."""
STEEL_LB_IN3 = 0.2836
"""Density of steel, 490 lb/ft3."""


def link_lb(wire: float, length: float, width: float) -> float:
    """Steel in an oblong link [lb]: two straight sides and two half rings of round wire (own geometry), inches."""
    return STEEL_LB_IN3 * math.pi / 4 * wire**2 * (2 * (length - width) + math.pi * (width + wire))


def law_a_link_weighs_its_steel(tables: Tables) -> list[str]:
    """The printed weight is that of the printed dimensions, as far as the sheet is rounded."""
    found = []
    for size, rows in groups(tables["master-links"], "size_in").items():
        got = {row["quantity"]: num(row["value"]) for row in rows}
        if "wire" not in got:
            continue  # wire and weight of 3/4 in do not go together on the sheet: the wire is left out
        wanted = link_lb(got["wire"], got["inside_length"], got["inside_width"])
        found += band("master-links", size, got["weight_of_link"] / wanted, 0.95, 1.15)
    return found


def law_a_link_carries_the_sling_it_is_for(tables: Tables) -> list[str]:
    """EN 818-4: a master link is rated for the whole sling: one leg of grade 80, two legs at 60 degrees (OSHA sling tables)."""
    found = []
    slings = {
        (row["size_in"], row["legs"], row["angle_from_horizontal"]): num(row["value"])
        for row in tables["chain-lifting"]
        if row["grade"] == "80"
    }
    for size, rows in groups(tables["master-links"], "size_in").items():
        got = {row["quantity"]: row["value"] for row in rows}
        limit = num(got["working_load_limit"])
        for quantity, legs, angle in (
            ("largest_chain_one_leg", "1", "90"),
            ("largest_chain_two_legs", "2", "60"),
        ):
            if quantity in got:
                sling = slings.get((got[quantity], legs, angle), math.nan)
                found += band("master-links", (*size, quantity), limit / sling, 1.0, 2.1)
    return found


def law_a_link_and_its_wire(tables: Tables) -> list[str]:
    """Stress in both sides of the wire at the limit: 12,700 to 17,300 psi; limit, wire and weight rise with the size."""
    found = []
    rows = tables["master-links"]
    for size, group in groups(rows, "size_in").items():
        got = {row["quantity"]: num(row["value"]) for row in group}
        if "wire" not in got:
            continue
        stress = got["working_load_limit"] / (math.pi / 2 * got["wire"] ** 2)
        found += band("master-links", (*size, "stress"), stress, 12_700, 17_300)
    for quantity in ("working_load_limit", "wire", "weight_of_link"):
        pairs = ((num(r["size_in"]), num(r["value"])) for r in rows if r["quantity"] == quantity)
        found += rising("master-links", quantity, pairs)
    return found


def law_the_link_is_made_in_millimetres(tables: Tables) -> list[str]:
    """EN 1677-4 links are forged to whole millimetres; the sheet turned them into inches of two places.

    Inside lengths are whole tens and widths whole fives of mm, wires whole mm.
    """
    steps = {"inside_length": 10, "inside_width": 5, "wire": 1}
    found = []
    for row in tables["master-links"]:
        step = steps.get(row["quantity"])
        if step:
            millimetres = num(row["value"]) * MM_AN_INCH
            off = abs(millimetres - step * round(millimetres / step)) / MM_AN_INCH
            found += band("master-links", (row["size_in"], row["quantity"], "off whole mm"), off, 0, 0.0051)
    return found
