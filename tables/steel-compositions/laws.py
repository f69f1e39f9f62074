"""Laws of the table steel-compositions. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num

# SAE J402: what the first two digits of a steel promise, as the middle of its range.
SERIES = {
    "13": {"manganese": 1.75},
    "41": {"chromium": 0.95, "molybdenum": 0.20},
    "43": {"nickel": 1.825, "chromium": 0.80, "molybdenum": 0.25},
    "86": {"nickel": 0.55, "chromium": 0.50, "molybdenum": 0.20},
    "10": {},
}


# Width of a range by its upper limit: ASTM A29/A29M, tables of ranges of alloy and of carbon steels (recalled).
WIDTHS = {
    "carbon": ((0.55, (0.05,)),),
    "manganese": ((0.90, (0.20,)), (1.05, (0.25,)), (1.90, (0.30,))),
    "silicon": ((0.40, (0.15, 0.20)),),  # 0.20 to 0.35 in older editions, 0.15 to 0.35 in later ones
    "chromium": ((0.40, (0.15,)), (0.90, (0.20,)), (1.05, (0.25,)), (1.60, (0.30,))),
    "nickel": ((0.50, (0.20,)), (1.50, (0.30,)), (2.00, (0.35,))),
    "molybdenum": ((0.10, (0.05,)), (0.20, (0.07,)), (0.50, (0.10,))),
}


CARBON_STEEL_WIDTHS = {"carbon": 0.07, "manganese": 0.30}


def law_compositions(tables: Tables) -> list[str]:
    """AISI names: SAE J402 series give the middle of each range, ASTM A29 the width, the last two digits the carbon.

    41xx and 86xx share their alloy and silicon 0.35 at most; least is under most; under 8 % in all. Carbon of an alloy
    steel runs from 0.02 under its number to 0.03 over it; that of plain 1045 to 0.05 over.
    """
    found = []
    at = {(r["steel"], r["element"], r["quantity"]): num(r["value"]) for r in tables["steel-compositions"]}
    for (steel, element, quantity), value in at.items():
        if quantity == "minimum" and not value < at.get((steel, element, "maximum"), -1):
            found.append(f"steel-compositions/claims.csv {steel} {element}: least is not under most")
        if steel.isdigit():
            found += _series_problems(steel, element, at)
        for first, second, shared in (
            ("4140", "4130", ("chromium", "molybdenum", "silicon")),
            ("8640", "8620", ("chromium", "nickel", "molybdenum")),
            ("8620", "8630", ("chromium", "nickel", "molybdenum", "silicon", "manganese")),
            ("1340", "8620", ("silicon",)),
        ):
            if steel == first and element in shared and at.get((second, element, quantity)) != value:
                found.append(
                    f"steel-compositions/claims.csv {element}: {first} and {second} share their range"
                )
    for (steel,), rows in groups(tables["steel-compositions"], "steel").items():
        found += band(
            "steel-compositions",
            steel,
            sum(num(r["value"]) for r in rows if r["quantity"] == "maximum"),
            1,
            8,
        )
    return found


def _series_problems(steel: str, element: str, at: dict[tuple[str, str, str], float]) -> list[str]:
    least, most = at.get((steel, element, "minimum"), math.nan), at.get((steel, element, "maximum"), math.nan)
    what, plain = (steel, element), steel.startswith("10")
    found = []
    if element == "carbon":
        carbon = int(steel[2:]) / 100
        found += band("steel-compositions", what, least - carbon, -0.0201, -0.0199)
        found += band(
            "steel-compositions", what, most - carbon, *((0.0499, 0.0501) if plain else (0.0299, 0.0301))
        )
    middle = SERIES.get(steel[:2], {}).get(element)
    if middle is not None:
        found += band("steel-compositions", (*what, "middle"), (least + most) / 2 - middle, -0.0001, 0.0001)
    widths = next((allowed for top, allowed in WIDTHS.get(element, ()) if most <= top + 1e-9), ())
    if plain and element in CARBON_STEEL_WIDTHS:
        widths = (CARBON_STEEL_WIDTHS[element],)
    if not any(abs(most - least - width) < 1e-6 for width in widths):
        found.append(f"steel-compositions/claims.csv {what}: {most - least:.2f} is no width of a range")
    if element == "silicon" and abs(most - 0.35) > 1e-9:
        found.append(f"steel-compositions/claims.csv {what}: silicon of bar steel is 0.35 at most")
    for missing in set(SERIES.get(steel[:2], {})) - {e for s, e, _ in at if s == steel}:
        found.append(f"steel-compositions/claims.csv {steel}: has no {missing}")
    return found
