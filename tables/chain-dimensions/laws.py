"""Laws of the table chain-dimensions. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import LB, Row, Tables, band, groups, num, rising

STEEL_KG_M3 = 7850.0
"""Density of steel."""
LIFTING = ("grade_8", "grade_10", "grade_80")
FEET_100_M = 30.48
PITCHES = {"din_766": (2.7, 4), "din_763": (6.2, 8), "mid_link_80": (4, 4)}
"""Pitch in wires of chain that does not lift; lifting chain has three."""


def chain_kg_per_m(wire_mm: float, pitch_mm: float, inside_width_mm: float) -> float:
    """Steel in a metre of round-link chain [kg]: two straight sides and two half rings a link (own geometry, no weld bead)."""
    straight = 2 * (pitch_mm - inside_width_mm)
    rings = math.pi * (inside_width_mm + wire_mm)
    return STEEL_KG_M3 * math.pi / 4 * (wire_mm / 1000) ** 2 * (straight + rings) / pitch_mm


def _width(kind: str, wire: float, got: dict[str, float]) -> float:
    """Inside width of a link [mm]: what an outside width leaves for chain that is none of the 3 d pattern, else 1.25 wires."""
    if kind in LIFTING:
        return 1.25 * wire
    return got.get("outside_width_max", got.get("outside_width", math.nan)) - 2 * wire


def law_chain_weighs_its_steel(tables: Tables) -> list[str]:
    """The weight of a length is that of its links' steel: within 5 % (1-1/4 in and 32 mm 6 %, light 4 and 5 mm chain 10 %)."""
    found = []
    for (kind, size, source), rows in _sheets(tables["chain-dimensions"]).items():
        got = {row["quantity"]: num(row["value"]) for row in rows}
        wire = num(size)
        pitch = got.get("pitch", 3 * wire)
        wanted = chain_kg_per_m(wire, pitch, _width(kind, wire, got))
        room = 0.1 if wire <= 5 else 0.06 if wire >= 32 else 0.05
        what = (kind, size, source)
        if "weight_of_a_length" in got:
            share = got["weight_of_a_length"] / wanted
            found += band("chain-dimensions", what, share, 1 - room, 1 + room)
        if "weight_of_100_ft" in got:
            share = got["weight_of_100_ft"] * LB / FEET_100_M / wanted
            found += band("chain-dimensions", what, share, 1 - room, 1 + room)
    return found


def _sheets(rows: list[Row]) -> dict[tuple[str, ...], list[Row]]:
    return groups(rows, "chain", "size_mm", "source")


def law_lifting_chain_has_a_pitch_of_three_wires(tables: Tables) -> list[str]:
    """EN 818-2 and its like: pitch 3 d exactly, inside width at least 1.25 d, outside width 3.25 to 3.7 d; DIN 766 has 2.7 to
    4 d; DIN 763 is 4.2 d wide exactly, mid-link chain has a pitch of 4 d; every measure rises with the wire."""
    found = []
    for row in tables["chain-dimensions"]:
        wires, what = num(row["value"]) / num(row["size_mm"]), (row["chain"], row["size_mm"], row["quantity"])
        if row["quantity"] == "pitch":
            low, high = PITCHES.get(row["chain"], (3, 3))
            found += band("chain-dimensions", what, wires, low, high)
        elif row["quantity"] == "inside_width_min":
            found += band("chain-dimensions", what, wires, 1.24, 1.36)
        elif row["quantity"] == "inside_width_max":
            found += band("chain-dimensions", what, wires, 1.3, 1.6)
        elif row["quantity"] == "outside_width_max":
            low, high = {"din_766": (3.39, 3.65), "din_763": (4.2, 4.2)}.get(row["chain"], (3.3, 3.61))
            found += band("chain-dimensions", what, wires, low - 1e-9, high + 1e-9)
        elif row["quantity"] == "outside_width":
            found += band("chain-dimensions", what, wires, 3.5, 3.57)
    for key, group in groups(tables["chain-dimensions"], "chain", "quantity", "source").items():
        pairs = ((num(r["size_mm"]), num(r["value"])) for r in group)
        found += rising("chain-dimensions", key, pairs, strict=False)
    return found
