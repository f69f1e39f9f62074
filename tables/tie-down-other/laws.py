"""Laws of the table tie-down-other. The source of each law stands in its docstring."""

from __future__ import annotations

import math
from itertools import pairwise

from build_scripts.laws.tools import LB, Tables, away, band, column, groups, num, rising

# Step to which 49 CFR 393.108 prints each column of pounds.
TIE_DOWN_STEP_LB = {
    "synthetic_webbing": 250,
    "wire_rope_6x37_fibre_core": 100,
}


POUNDS_PER_INCH_OF_WEB = 1000


def law_tie_down_other(tables: Tables) -> list[str]:
    """Kilograms are pounds rounded to the ten (within 5.2 kg), limits rise with size, wire rope about with the square of it.

    Webbing is 1,000 lb an inch of width. Wire rope is 20,800 to 21,600 lb an in2 of diameter squared (a fourth of 6x37
    improved plow steel, 393.108(e)); 1/4 in stands above that, and 3/4 in (10,900 lb, 19,378) below it as the law prints it.
    """
    found = []
    rows = tables["tie-down-other"]
    for key, group in groups(rows, "material", "size_in").items():
        got = column(group, "unit")
        if set(got) != {"lb", "kg"}:
            found.append(f"tie-down-other/claims.csv {key}: needs lb and kg")
            continue
        found += band("tie-down-other", key, got["kg"] - got["lb"] * LB, -5.2, 5.2)
        found += band("tie-down-other", (key, "kg is a multiple of ten"), got["kg"] % 10, 0, 0)
        if got["lb"] % TIE_DOWN_STEP_LB.get(key[0], 5):
            found.append(
                f"tie-down-other/claims.csv {key}: {got['lb']:g} lb is no step of {TIE_DOWN_STEP_LB.get(key[0], 5)}"
            )
        if key[0] == "synthetic_webbing":
            found += away("tie-down-other", key, got["lb"], POUNDS_PER_INCH_OF_WEB * num(key[1]), 1e-9)
        if key[0] == "wire_rope_6x37_fibre_core" and key[1] not in {"1/4", "3/4"}:
            found += band("tie-down-other", (key, "lb an in2"), got["lb"] / num(key[1]) ** 2, 20800, 21600)
    for (material, unit), group in groups(rows, "material", "unit").items():
        strap = material == "steel_strapping"
        pairs = sorted((_area_or_size(r["size_in"]), num(r["value"])) for r in group)
        found += rising("tie-down-other", (material, unit), pairs, strict=not strap)
        if material.endswith("core"):
            for (d1, w1), (d2, w2) in pairwise(pairs):
                found += band(
                    "tie-down-other",
                    (material, unit, f"{d1:g} to {d2:g} in"),
                    math.log(w2 / w1) / math.log(d2 / d1),
                    1.1,
                    2.9,
                )
    return found


STRAPPING_PSI = 32_830
"""Limit of steel strapping over its section [psi]: what the neighbouring sizes of 49 CFR 393.108 come to as they were
recalled (1-1/4 in wide, 0.031 to 0.044 in thick: 1,275 to 1,805 lb); they are not shipped."""


def law_strapping_by_its_section(tables: Tables) -> list[str]:
    """49 CFR 393.108 rates steel strapping of one width by its thickness: one stress in every size, within 1 %."""
    found = []
    for row in tables["tie-down-other"]:
        if row["material"] == "steel_strapping" and row["unit"] == "lb":
            stress = num(row["value"]) / _area_or_size(row["size_in"])
            found += away("tie-down-other", row["size_in"], stress, STRAPPING_PSI, 0.01)
    return found


def law_tie_down_sizes(tables: Tables) -> list[str]:
    """One inch size has one metric name in every column: rope and webbing within 1.7 mm of it, strapping to the print."""
    found = []
    for (size_in,), group in groups(tables["tie-down-other"], "size_in").items():
        metric = {r["size"] for r in group}
        if len(metric) != 1:
            found.append(f"tie-down-other/claims.csv {size_in} in: is called {sorted(metric)}")
        for name in metric:
            for inch, mm in zip(size_in.split(" x "), name.split(" x "), strict=True):
                room = 0.06 if " x " in name else 1.7
                found += band("tie-down-other", (size_in, name), num(mm) - 25.4 * num(inch), -room, room)
    return found


def _area_or_size(text: str) -> float:
    product = 1.0
    for part in text.split(" x "):
        product *= num(part)
    return product
