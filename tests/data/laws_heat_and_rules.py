"""Laws of the heat tables, design factors, proof tests and tie-downs.

The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re
from itertools import pairwise

from tests.data.law_tools import (
    LB,
    LBF,
    Tables,
    away,
    band,
    column,
    groups,
    num,
    rising,
    two_sections,
)


def law_heat_asme(tables: Tables) -> list[str]:
    """Rises with temperature, F and C agree within a degree, grade 100 loses at least what grade 80 does, hot more than after."""
    rows = tables["chain-heat-asme"]
    found = []
    for row in rows:
        found += band(
            "chain-heat-asme",
            row["temperature_degF"],
            num(row["temperature_degC"]) - (num(row["temperature_degF"]) - 32) / 1.8,
            -0.6,
            0.6,
        )
        if num(row["value"]) % 5:
            found.append(
                f"chain-heat-asme.csv {row['temperature_degF']}: {row['value']} is not a step of five"
            )
    for key, group in groups(rows, "grade", "quantity").items():
        found += rising(
            "chain-heat-asme",
            key,
            ((num(r["temperature_degF"]), num(r["value"])) for r in group),
            strict=False,
        )
        if len(group) != 7:
            found.append(f"chain-heat-asme.csv {key}: needs seven temperatures")
    at = {(r["grade"], r["temperature_degF"], r["quantity"]): num(r["value"]) for r in rows}
    for (grade, degree, quantity), value in at.items():
        if grade == "80" and value > at.get(("100", degree, quantity), math.inf):
            found.append(f"chain-heat-asme.csv {degree} {quantity}: grade 80 loses more than grade 100")
        if quantity == "reduction_afterwards" and value >= at.get(
            (grade, degree, "reduction_while_hot"), math.inf
        ):
            found.append(f"chain-heat-asme.csv {grade} {degree}: loses more afterwards than while hot")
    return found


def law_heat_bands(tables: Tables) -> list[str]:
    """European bands adjoin, start at -40 C with 100 %, and what is left falls from band to band."""
    found = []
    for name, keys in (("chain-heat-en", ("grade",)), ("wire-rope-heat", ("termination", "core"))):
        for key, rows in groups(tables[name], *keys).items():
            bands = sorted(
                (num(r["temperature_from_degC"]), num(r["temperature_to_degC"]), num(r["value"]))
                for r in rows
            )
            if bands[0][0] != -40 or bands[0][2] != 100:
                found.append(f"{name}.csv {key}: must start at -40 C with 100 %")
            for low, high in pairwise(bands):
                if low[1] != high[0] or low[2] < high[2]:
                    found.append(f"{name}.csv {key}: bands must adjoin and fall")
            if any(value % 5 for _, _, value in bands) or any(low >= high for low, high, _ in bands):
                found.append(f"{name}.csv {key}: shares are printed in steps of five, bands run upwards")
    return found


def law_design_factors(tables: Tables) -> list[str]:
    """Over people twice the factor (DGUV 215-313); the EU machinery directive prints the same factors; all between 2 and 10 or 14."""
    found = [
        p for r in tables["design-factors"] for p in band("design-factors", r["item"], num(r["value"]), 2, 14)
    ]
    dguv = {
        (r["item"], r["quantity"]): num(r["value"])
        for r in tables["design-factors"]
        if r["source"] == "dguv-215-313"
    }
    for (item, quantity), value in dguv.items():
        if quantity == "design_factor_over_people":
            found += away(
                "design-factors", item, value, 2 * dguv.get((item, "design_factor"), math.nan), 1e-9
            )
    for item, value in column(tables["design-factors"], "item", source="eu-2006-42").items():
        found += away("design-factors", item, value, dguv.get((item, "design_factor"), math.nan), 1e-9)
    for grade, source in (("80", "astm-a391"), ("100", "astm-a973")):
        factor = column(tables["design-factors"], "item", source=source).get(f"chain_grade_{grade}", math.nan)
        for row in tables["chain-lifting"]:
            if row["legs"] == "1" and row["grade"] == grade and row["size_in"] == "1/2":
                stress = factor * num(row["value"]) * LBF / two_sections(13)
                found += away("design-factors", grade, stress, num(grade) * 10, 0.01)
    return found


def law_proof_tests_meet(tables: Tables) -> list[str]:
    """Where a rule goes from one formula to the next the two give the same load there, within 1.1 %."""
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
                found.append(f"proof-tests.csv {item} {source}: ranges do not meet at {edge:g}")
            else:
                found += away(
                    "proof-tests",
                    (item, source, edge),
                    below[0][0] * edge + below[0][1],
                    above[0][0] * edge + above[0][1],
                    0.011,
                )
    return found


def law_tie_down_numbers(tables: Tables) -> list[str]:
    """Metric and US figures of one rule agree within 0.4 %; shares lie between 0 and 1."""
    found = []
    for row in tables["tie-down-numbers"]:
        if row["unit"] == "ratio":
            found += band("tie-down-numbers", (row["item"], row["quantity"]), num(row["value"]), 0.2, 1)
    for key, rows in groups(tables["tie-down-numbers"], "item", "quantity").items():
        got = column(rows, "unit")
        for us, si, factor in (("lb", "kg", LB), ("ft", "m", 0.3048)):
            if si in got:
                found += away("tie-down-numbers", key, got[si], got.get(us, math.nan) * factor, 0.004)
    return found


def law_tie_down_other(tables: Tables) -> list[str]:
    """Kilograms are pounds rounded to the ten (within 5.2 kg), limits rise with size, ropes about with the square of it."""
    found = []
    rows = tables["tie-down-other"]
    for key, group in groups(rows, "material", "size_in").items():
        got = column(group, "unit")
        if set(got) != {"lb", "kg"}:
            found.append(f"tie-down-other.csv {key}: needs lb and kg")
        else:
            found += band("tie-down-other", key, got["kg"] - got["lb"] * LB, -5.2, 5.2)
            found += band("tie-down-other", (key, "kg is a multiple of ten"), got["kg"] % 10, 0, 0)
    for (material, unit), group in groups(rows, "material", "unit").items():
        strap = material == "steel_strapping"
        pairs = sorted((_area_or_size(r["size_in"]), num(r["value"])) for r in group)
        found += rising("tie-down-other", (material, unit), pairs, strict=not strap)
        if material.endswith(("rope", "core")):
            for (d1, w1), (d2, w2) in pairwise(pairs):
                found += band(
                    "tie-down-other",
                    (material, unit, f"{d1:g} to {d2:g} in"),
                    math.log(w2 / w1) / math.log(d2 / d1),
                    1.1,
                    2.9,
                )
    return found


def _area_or_size(text: str) -> float:
    product = 1.0
    for part in text.split(" x "):
        product *= num(part)
    return product
