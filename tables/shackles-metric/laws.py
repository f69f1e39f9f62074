"""Laws of the table shackles-metric. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Row, Tables, band, groups, num, rising

STEEL_KG_MM3 = 7.85e-6
"""Density of steel, 7,850 kg/m3."""
MM = 25.4


def _by_class(rows: list[Row], source: str) -> dict[str, dict[str, float]]:
    """class -> quantity -> value, of one sheet."""
    found: dict[str, dict[str, float]] = {}
    for row in rows:
        if row["source"] == source:
            found.setdefault(row["class_t"], {})[row["quantity"]] = num(row["value"])
    return found


def law_shackle_dimensions(tables: Tables) -> list[str]:
    """Geometry of a forged shackle: every measure rises with the class; a bow is longer and wider than a dee; the pin is a
    step thicker than the body; the eye is about two pins across (1.95 to 2.2)."""
    found = []
    rows = tables["shackles-metric"]
    for key, group in groups(rows, "quantity", "source").items():
        found += rising("shackles-metric", key, ((num(r["class_t"]), num(r["value"])) for r in group))
    for source in ("rr-c-271-sheet", "as-lifting-guide"):
        for name, got in _by_class(rows, source).items():
            what = (name, source)
            found += band("shackles-metric", (*what, "pin"), got["pin_diameter"] - got["body_diameter"], 1, 8)
            found += band(
                "shackles-metric",
                (*what, "bow over dee"),
                got["inside_length_bow"] / got["inside_length_dee"],
                1.04,
                1.47,
            )
            found += band(
                "shackles-metric",
                (*what, "bow over jaw"),
                got["bow_inside_width"] / got["inside_width_at_pin"],
                1.45,
                1.73,
            )
            if "eye_outside_diameter" in got:
                found += band(
                    "shackles-metric",
                    (*what, "eye over pin"),
                    got["eye_outside_diameter"] / got["pin_diameter"],
                    1.94,
                    2.2,
                )
    return found


def shackle_weight_kg(got: dict[str, float]) -> float:
    """Steel in a bow shackle [kg]: a pin through both eyes, two legs, and a half ring of the width of the bow [mm]."""
    body, pin = got["body_diameter"], got["pin_diameter"]
    ring = math.pi / 2 * (got["bow_inside_width"] + body)
    legs = 2 * (got["inside_length_bow"] - got["bow_inside_width"] / 2)
    across = got["inside_width_at_pin"] + 2 * body
    eyes = 2 * math.pi / 4 * (got["eye_outside_diameter"] ** 2 - pin**2) * body
    volume = math.pi / 4 * (body**2 * (ring + legs) + pin**2 * across) + eyes
    return volume * STEEL_KG_MM3


def law_shackle_weights(tables: Tables) -> list[str]:
    """Weight is that of its steel (own geometry, 7,850 kg/m3), within the rounding of the print; a bolt with nut weighs more."""
    found = []
    for name, got in _by_class(tables["shackles-metric"], "rr-c-271-sheet").items():
        most = (
            1.05 if num(name) >= 1.5 else 1.22
        )  # a small one is printed to its last gram but one, and its eye is heavy
        share = got["weight_screw_pin"] / shackle_weight_kg(got)
        found += band("shackles-metric", (name, "steel"), share, 0.9, most)
        bolt = got.get("weight_safety_bolt", got["weight_screw_pin"])
        found += band("shackles-metric", (name, "bolt"), bolt / got["weight_screw_pin"], 1.0, 1.2)
    return found


def law_two_sheets_agree(tables: Tables) -> list[str]:
    """Two sheets of one pattern: no measure of a class is more than 5 mm or 12 % apart, body and pin no more than 1 mm."""
    rows = tables["shackles-metric"]
    one, other = _by_class(rows, "rr-c-271-sheet"), _by_class(rows, "as-lifting-guide")
    found = [] if len(other) == 8 else ["shackles-metric/claims.csv: the second sheet has eight classes"]
    for name, got in other.items():
        for quantity, value in got.items():
            here = one.get(name, {}).get(quantity, math.nan)
            room = 1.01 if quantity in ("body_diameter", "pin_diameter") else max(2.01, 0.12 * here)
            found += band("shackles-metric", (name, quantity, "two sheets"), value - here, -room, room)
    return found


def law_one_series_in_two_books(tables: Tables) -> list[str]:
    """The class number is the grade A number of RR-C-271 for the same body and pin: one series, tonnes here, short tons there.

    Body and pin are the inch sizes in whole or half-rounded millimetres, 1.6 mm off at most.
    """
    found = []
    classes = _by_class(tables["shackles-metric"], "rr-c-271-sheet")
    rated = [
        row for row in tables["shackles"] if row["grade"] == "A" and row["quantity"] == "working_load_limit"
    ]
    for row in rated:
        number = num(row["value"])
        same = [got for name, got in classes.items() if abs(num(name) / number - 1) < 0.011]
        if len(same) != 1:
            found.append(f"shackles/claims.csv {row['size_in']}: {row['value']} is no class number")
            continue
        for quantity, inches in (("body_diameter", row["size_in"]), ("pin_diameter", row["pin_in"])):
            found += band(
                "shackles",
                (row["size_in"], quantity),
                same[0][quantity] - MM * num(inches),
                -1.61,
                1.61,
            )
    return found
