"""Laws of weights, steel and welding figures.

The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re
from collections import defaultdict
from functools import cache
from itertools import pairwise
from typing import Any

from tests.data.law_tools import (
    Tables,
    away,
    band,
    column,
    groups,
    num,
    rising,
)

ELEMENTS = {
    "aluminium": "Al",
    "copper": "Cu",
    "gold": "Au",
    "lead": "Pb",
    "tungsten": "W",
    "uranium": "U",
    "silver": "Ag",
    "mercury": "Hg",
    "nickel": "Ni",
    "titanium": "Ti",
    "zinc": "Zn",
}


@cache
def _element_density(symbol: str) -> float:
    import periodictable

    return float(getattr(periodictable, symbol).density) * 1000


def law_densities(tables: Tables) -> list[str]:
    """Elements within 2 % of the `periodictable` library; low is not above high; sources of one material meet within 10 %.

    Softwood and hardwood of the building list follow 1.1 x specific gravity x 62.4 (its own footnote).
    """
    found = []
    to_si = {"lb/ft3": 16.018463373960138, "kg/m3": 1.0}
    low: dict[str, list[float]] = defaultdict(list)
    high: dict[str, list[float]] = defaultdict(list)
    for (material, source), rows in groups(tables["densities"], "material", "source").items():
        got = {r["quantity"]: num(r["value"]) * to_si[r["unit"]] for r in rows}
        if set(got) != {"density_low", "density_high"}:
            found.append(f"densities.csv {material} {source}: needs low and high")
            continue
        low[material].append(got["density_low"])
        high[material].append(got["density_high"])
        if not 90 < got["density_low"] <= got["density_high"] < 20000:
            found.append(f"densities.csv {material} {source}: low above high, or not a density")
        gravity = re.search(r"specific gravity (0\.[0-9]+)", rows[0]["note"])
        if gravity:
            found += band(
                "densities", material, num(rows[0]["value"]) - 1.1 * float(gravity[1]) * 62.4, -0.6, 0.6
            )
        if material in ELEMENTS:
            for value in got.values():
                found += away(
                    "densities", (material, source), value, _element_density(ELEMENTS[material]), 0.02
                )
    return found + [
        f"densities.csv {m}: its sources do not meet" for m in low if max(low[m]) > 1.1 * min(high[m])
    ]


@cache
def _library_pipe(size: str, schedule: str) -> tuple[float, float]:
    from fluids.piping import nearest_pipe

    nominal: Any = num(size)  # the library's stub says int; sizes such as 1/2 are meant as well
    _, _inside, outside, wall = nearest_pipe(NPS=nominal, schedule=schedule)
    return outside * 1000, wall * 1000


def law_pipe_sizes(tables: Tables) -> list[str]:
    """ASME B36.10M in the `fluids` library (metric columns): outside diameter within 0.26 mm, wall within 0.01 mm; inside is positive."""
    found = []
    for (size, schedule), rows in groups(tables["pipe-sizes"], "pipe_size", "schedule").items():
        got = column(rows, "quantity")
        if len(got) != 2:
            found.append(f"pipe-sizes.csv {size} {schedule}: needs diameter and wall")
            continue
        outside, wall = _library_pipe(size, schedule)
        found += band("pipe-sizes", (size, schedule), got["outside_diameter"] * 25.4 - outside, -0.45, 0.26)
        found += band("pipe-sizes", (size, schedule), got["wall_thickness"] * 25.4 - wall, -0.012, 0.012)
    for key, group in groups(tables["pipe-sizes"], "pipe_size", "quantity").items():
        values = column(group, "schedule")
        if key[1] == "outside_diameter" and len(set(values.values())) != 1:
            found.append(f"pipe-sizes.csv {key}: one size has one outside diameter")
    return found


def law_weld_metal(tables: Tables) -> list[str]:
    """Weight follows the square of the leg: 2.56 lb/ft per in2, as printed to two places."""
    return [
        p
        for r in tables["weld-metal-weights"]
        for p in band(
            "weld-metal-weights",
            r["fillet_size_in"],
            num(r["value"]) - 2.56 * num(r["fillet_size_in"]) ** 2,
            -0.0051,
            0.0051,
        )
    ]


CODE_MODULI = {"steel": 210, "aluminium": 70, "glass": 70}


def law_moduli(tables: Tables) -> list[str]:
    """Steel 210 GPa (EN 1993-1-1), aluminium 70 GPa (EN 1999-1-1), glass 70 GPa (EN 572-1); none stiffer than steel."""
    got = column(tables["youngs-modulus"], "material")
    found = [p for m, e in CODE_MODULI.items() for p in band("youngs-modulus", m, got.get(m, math.nan), e, e)]
    return found + [p for m, e in got.items() for p in band("youngs-modulus", m, e, 1, 210)]


def law_compositions(tables: Tables) -> list[str]:
    """AISI names: the last two digits are the carbon in hundredths; 41xx and 86xx share their alloy; least is under most; under 8 % in all."""
    found = []
    at = {(r["steel"], r["element"], r["quantity"]): num(r["value"]) for r in tables["steel-compositions"]}
    for (steel, element, quantity), value in at.items():
        if quantity == "minimum" and not value < at.get((steel, element, "maximum"), -1):
            found.append(f"steel-compositions.csv {steel} {element}: least is not under most")
        if steel.isdigit() and element == "carbon":
            carbon = int(steel[2:]) / 100
            edge = value - carbon
            found += band(
                "steel-compositions",
                (steel, quantity),
                edge,
                *((-0.0201, -0.0199) if quantity == "minimum" else (0.0299, 0.0501)),
            )
        for first, second, shared in (
            ("4140", "4130", ("chromium", "molybdenum", "silicon")),
            ("8640", "8620", ("chromium", "nickel", "molybdenum")),
        ):
            if steel == first and element in shared and at.get((second, element, quantity)) != value:
                found.append(f"steel-compositions.csv {element}: {first} and {second} share their range")
    for (steel,), rows in groups(tables["steel-compositions"], "steel").items():
        found += band(
            "steel-compositions",
            steel,
            sum(num(r["value"]) for r in rows if r["quantity"] == "maximum"),
            1,
            8,
        )
    return found


def law_tempering(tables: Tables) -> list[str]:
    """A hotter temper is softer and tougher; yield is under tensile strength; annealed is softer than normalised."""
    found = []
    rows = tables["tempering-data"]
    for (steel, condition, temper), group in groups(rows, "steel", "condition", "temper_degC").items():
        got = column(group, "quantity")
        found += band(
            "tempering-data",
            (steel, condition, temper),
            got.get("yield_strength", math.nan) / got.get("tensile_strength", math.nan),
            0.55,
            0.95,
        )
    for (steel, quantity), group in groups(rows, "steel", "quantity").items():
        sign = -1 if quantity.endswith("strength") else 1
        quenched = [
            (num(r["temper_degC"]), sign * num(r["value"])) for r in group if r["temper_degC"] != "none"
        ]
        found += rising("tempering-data", (steel, quantity), quenched)
        slow = {
            r["condition"].split("_")[0]: sign * num(r["value"]) for r in group if r["temper_degC"] == "none"
        }
        if quantity != "reduction_of_area" and not slow.get("normalized", math.nan) < slow.get(
            "annealed", math.nan
        ):
            found.append(f"tempering-data.csv {steel} {quantity}: annealed must be softer than normalised")
    return found


def law_temper_colours(tables: Tables) -> list[str]:
    """Fahrenheit and Celsius agree within 0.6 degree; colours stand in rising order, tints below glow."""
    found = []
    for key, rows in groups(tables["temper-colours"], "colour", "quantity").items():
        got = column(rows, "unit")
        if set(got) != {"degF", "degC"}:
            found.append(f"temper-colours.csv {key}: needs F and C")
        else:
            found += band("temper-colours", key, got["degC"] - (got["degF"] - 32) / 1.8, -0.6, 0.6)
    for unit in ("degF", "degC"):
        order = [
            (float(i), num(r["value"]))
            for i, r in enumerate(r for r in tables["temper-colours"] if r["unit"] == unit)
        ]
        found += rising("temper-colours", unit, order)
    glow = [
        num(r["value"])
        for r in tables["temper-colours"]
        if r["kind"] == "incandescence" and r["unit"] == "degC"
    ]
    tint = [
        num(r["value"]) for r in tables["temper-colours"] if r["kind"] == "oxide_tint" and r["unit"] == "degC"
    ]
    if max(tint, default=0) > 340 or min(glow, default=999) < 500:
        found.append("temper-colours.csv: tints end by 340 C, glow starts above 500 C")
    return found


def law_hardness(tables: Tables) -> list[str]:
    """Every column rises with Rockwell; ksi and MPa agree within half a ksi; HV over HB 1.045 to 1.066, MPa over HV 3.08 to 3.245; two strength columns within 20 %."""
    found = []
    for key, group in groups(tables["hardness-conversion"], "quantity", "unit", "source").items():
        found += rising("hardness-conversion", key, ((num(r["rockwell_c"]), num(r["value"])) for r in group))
    for (hrc,), group in groups(tables["hardness-conversion"], "rockwell_c").items():
        got = {(r["unit"], r["source"]): num(r["value"]) for r in group}
        mpa, ksi = got.get(("MPa", "astm-e140"), math.nan), got.get(("ksi", "astm-e140"), math.nan)
        found += band("hardness-conversion", (hrc, "ksi against MPa"), mpa / 6.894757 - ksi, -0.6, 0.6)
        found += band(
            "hardness-conversion",
            (hrc, "MPa over HV"),
            mpa / got.get(("HV", "astm-e140"), math.nan),
            3.08,
            3.245,
        )
        if ("HBW", "astm-a370") in got:
            found += band(
                "hardness-conversion",
                (hrc, "HV over HB"),
                got["HV", "astm-e140"] / got["HBW", "astm-a370"],
                1.045,
                1.066,
            )
        if ("MPa", "astm-a370") in got:
            found += band(
                "hardness-conversion", (hrc, "two strengths"), got["MPa", "astm-a370"] / mpa, 1.0, 1.19
            )
    return found


def law_hot_strength(tables: Tables) -> list[str]:
    """EN 1993-1-2: all shares fall from 1 at 20 C to 0 at 1,200 C, the proportional limit never above yield."""
    found = []
    for key, group in groups(tables["steel-hot-strength"], "quantity").items():
        pairs = sorted((num(r["temperature_degC"]), num(r["value"])) for r in group)
        found += rising("steel-hot-strength", key, [(t, -v) for t, v in pairs], strict=False)
        if pairs[0] != (20.0, 1.0) or pairs[-1] != (1200.0, 0.0) or len(pairs) != 13:
            found.append(f"steel-hot-strength.csv {key}: runs from 1 at 20 C to 0 at 1,200 C in 13 rows")
    at = {(r["temperature_degC"], r["quantity"]): num(r["value"]) for r in tables["steel-hot-strength"]}
    for (degree, quantity), value in at.items():
        if quantity == "proportional_limit_factor" and value > at.get((degree, "yield_factor"), -1):
            found.append(f"steel-hot-strength.csv {degree}: proportional limit above yield")
    return found


def law_embrittlement(tables: Tables) -> list[str]:
    """Bands run upwards; where C and F are both printed they agree within 8 F."""
    found = []
    at = {
        (r["phenomenon"], r["case"], r["unit"], r["quantity"]): num(r["value"])
        for r in tables["embrittlement"]
    }
    for (phenomenon, case, unit, quantity), value in at.items():
        if quantity == "temperature_from" and not value < at.get(
            (phenomenon, case, unit, "temperature_to"), -1
        ):
            found.append(f"embrittlement.csv {phenomenon} {case}: band must run upwards")
        fahrenheit = at.get((phenomenon, case, "degF", quantity))
        if unit == "degC" and fahrenheit is not None:
            found += band("embrittlement", (phenomenon, quantity), value * 1.8 + 32 - fahrenheit, -8.1, 8.1)
    return found


def law_arc_efficiency(tables: Tables) -> list[str]:
    """Shares lie between 0.4 and 1; submerged arc is 1 among the relative ones; low, mean and high in order."""
    found = [
        p
        for r in tables["arc-efficiency"]
        for p in band("arc-efficiency", r["process"], num(r["value"]), 0.4, 1)
    ]
    got = column(tables["arc-efficiency"], "quantity", process="gtaw", source="stenbacka-2012")
    order = [got.get(f"measured_efficiency_{which}", math.nan) for which in ("low", "mean", "high")]
    if not order[0] < order[1] < order[2]:
        found.append("arc-efficiency.csv gtaw: low, mean and high out of order")
    if column(tables["arc-efficiency"], "process", quantity="relative_to_saw").get("saw") != 1:
        found.append("arc-efficiency.csv saw: relative to itself is 1")
    return found


def law_weld_parameters(tables: Tables) -> list[str]:
    """Currents rise with the size of the electrode; low under high; 25 to 60 A a millimetre of core."""
    found = []
    for key, rows in groups(tables["weld-parameters"], "electrode", "size_in").items():
        got = column(rows, "quantity")
        if not got.get("current_low", math.nan) < got.get("current_high", math.nan):
            found.append(f"weld-parameters.csv {key}: low is not under high")
        for value in got.values():
            found += band("weld-parameters", key, value / (num(key[1]) * 25.4), 23, 60)
    for key, rows in groups(tables["weld-parameters"], "electrode", "quantity").items():
        found += rising("weld-parameters", key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    return found


def law_carbon_bands(tables: Tables) -> list[str]:
    """Bands adjoin by a hundredth, from excellent to poor."""
    order = ["excellent", "very_good", "good", "fair", "poor"]
    start = column(tables["carbon-equivalent-bands"], "rating", quantity="carbon_equivalent_from")
    end = column(tables["carbon-equivalent-bands"], "rating", quantity="carbon_equivalent_to")
    found = [] if start.get("excellent") == 0 else ["carbon-equivalent-bands.csv: starts at 0"]
    for better, worse in pairwise(order):
        step = start.get(worse, math.nan) - end.get(better, math.nan)
        found += band(
            "carbon-equivalent-bands", worse, step, *((-1e-9, 1e-9) if worse == "poor" else (0.0099, 0.0101))
        )
        if better != "excellent":
            found += band(
                "carbon-equivalent-bands",
                better,
                end.get(better, math.nan) - start.get(better, math.nan),
                0.0399,
                0.0401,
            )
    return found


def law_chain_modulus(tables: Tables) -> list[str]:
    """About a quarter of steel: 40 to 62 GPa at 100 mm; the generic stiffness over d squared is pi/2 times its modulus."""
    found = []
    for (chain,), rows in groups(tables["chain-modulus"], "chain").items():
        got = column(rows, "quantity")
        modulus = got.get("modulus_constant", math.nan) - 100 * got.get("modulus_fall_per_mm", 0)
        found += band("chain-modulus", chain, modulus, 49, 57)
        if "stiffness_over_diameter_squared" in got:
            found += band(
                "chain-modulus",
                chain,
                got["stiffness_over_diameter_squared"] / (math.pi / 2) - got["modulus_constant"],
                -0.05,
                0.05,
            )
    return found
