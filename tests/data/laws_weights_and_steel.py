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


# material -> the lines of DIN EN 12524 in the library `ht` that it must meet, and how far off it may be
BUILDING_MATERIALS = {
    "aluminium-alloy-2014-t6-7075-t6": (("Metals, aluminium alloys",), 0.005),
    "aluminium-alloy-6061-t6": (("Metals, aluminium alloys",), 0.03),
    "brass": (("Metals, brass",), 0.01),
    "bronze": (("Metals, bronze",), 0.015),
    "cast-iron": (("Metals, iron, cast",), 0.04),
    "concrete": (("Concrete, high density", "Concrete, reinforced with 1% steel"), 0.005),
    "concrete-plain": (("Concrete, medium density 2200 kg/m^3", "Concrete, high density"), 0.06),
    "concrete-reinforced": (("Concrete, reinforced with 2% steel",), 0.005),
    "copper": (("Metals, copper",), 0.015),
    "glass": (("Glass, soda lime",), 0.045),
    "granite": (("Stone, granite",), 0.04),
    "granite-marble-quartz": (("Stone, granite", "Stone, marble"), 0.02),
    "ice": (("Water, ice at 0 °C", "Water, ice at -10 °C"), 0.02),
    "lead": (("Metals, lead",), 0.01),
    "limestone-sandstone": (("Stone, limestone, soft", "Stone, limestone, extra hard"), 0.12),
    "nylon": (("Plastics, polyamide (nylon)",), 0.03),
    "polyethylene": (("Plastics, polyethylene / polythene, high density",), 0.005),
    "plywood": (("Wood, plywood 500 kg/m^3", "Wood, plywood 700 kg/m^3"), 0.18),
    "rubber": (("Rubber, butyl (isobutene), solid melt", "Rubber, butadiene"), 0.005),
    "sand-soil-gravel": (("Solids, sand and gravel", "Solids, clay or silt"), 0.005),
    "steel": (("Metals, steel",), 0.015),
    "water-fresh": (("Water at 10°C",), 0.005),
    "zinc": (("Metals, zinc",), 0.02),
}
READ_IN_THE_LIBRARY = {
    "stainless-steel": "Metals, stainless steel",
    "asphalt": "Asphalt",
    "snow-freshly-fallen": "Water, snow, freshly fallen (<30 mm)",
    "snow-soft": "Water, snow, soft (30 mm to 70 mm)",
    "snow-slightly-compacted": "Water, snow, slightly compacted (70 mm to 100 mm)",
    "snow-compacted": "Water, snow, compacted (<200 mm)",
    "gypsum-board": "Gypsum, plasterboard",
    "oriented-strand-board": "Wood, oriented strand board",
}
# material -> how far its sources stand apart where they do not meet within a tenth; the heavier counts
APART = {"gypsum-board": 1.18, "oriented-strand-board": 1.13}
# (source, material) that a source prints as a range; everywhere else it prints one figure, so low is high.
RANGES = {
    *(
        ("gere", m)
        for m in ("brass", "bronze", "cast-iron", "concrete-lightweight", "glass", "magnesium-alloys")
    ),
    *(
        ("gere", m)
        for m in ("nylon", "polyethylene", "granite-marble-quartz", "limestone-sandstone", "rubber")
    ),
    *(
        ("gere", m)
        for m in ("sand-soil-gravel", "douglas-fir-air-dry", "oak-air-dry", "southern-pine-air-dry")
    ),
    ("building-material-list", "concrete-normal-weight-light-reinforcement"),
    ("building-material-list", "brick-masonry"),
    ("building-material-list", "concrete-masonry"),
    ("openstax-physics", "concrete"),
    ("openstax-physics", "wood"),
    ("general-range", "lead"),
    ("general-range", "zinc"),
}
TO_SI = {"lb/ft3": 16.018463373960138, "kg/m3": 1.0}


@cache
def _building_material(name: str) -> float:
    from ht.insulation import building_materials

    return float(building_materials[name][0])


def law_densities(tables: Tables) -> list[str]:
    """Elements within 2 % of the `periodictable` library, building materials as near DIN EN 12524 in the library `ht` as
    stated; low is not above high, and is high where the source prints one figure; sources of one material meet within 10 %,
    two boards apart.

    Ranges in lb/ft3 end in 0 or 5, ranges in kg/m3 in hundreds. A material's key is its name. Softwood and hardwood of the
    building list follow 1.1 x specific gravity x 62.4 (its own footnote).
    """
    found = []
    low: dict[str, list[float]] = defaultdict(list)
    high: dict[str, list[float]] = defaultdict(list)
    in_library: dict[str, list[float]] = defaultdict(list)
    for (material, source), rows in groups(tables["densities"], "material", "source").items():
        printed = {r["quantity"]: num(r["value"]) for r in rows}
        got = {r["quantity"]: num(r["value"]) * TO_SI[r["unit"]] for r in rows}
        if set(got) != {"density_low", "density_high"} or len({r["unit"] for r in rows}) != 1:
            found.append(f"densities.csv {material} {source}: needs low and high in one unit")
            continue
        if source == "en-12524":
            in_library[material] += got.values()
        low[material].append(got["density_low"])
        high[material].append(got["density_high"])
        if not 90 < got["density_low"] <= got["density_high"] < 20000:
            found.append(f"densities.csv {material} {source}: low above high, or not a density")
        found += _range_problems(material, source, rows[0]["unit"], printed)
        found += [
            f"densities.csv {material}: is not the key of {r['material_name']}"
            for r in rows
            if re.sub("[^a-z0-9]+", "-", r["material_name"].removesuffix(", any").lower()).strip("-")
            != material
        ]
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
    for material, lows in low.items():
        if max(lows) > APART.get(material, 1.1) * min(high[material]):
            found.append(f"densities.csv {material}: its sources do not meet")
        found += _library_problems(material, lows, high[material], in_library[material])
    return found


def _library_problems(
    material: str, lows: list[float], highs: list[float], read_there: list[float]
) -> list[str]:
    """Where a material is off the library `ht`: too far from it, or not as read in it."""
    found = []
    if material in BUILDING_MATERIALS:
        names, room = BUILDING_MATERIALS[material]
        known = [_building_material(name) for name in names]
        if not (min(known) * (1 + room) >= min(lows) and max(highs) >= max(known) * (1 - room)):
            found.append(f"densities.csv {material}: is off {' and '.join(names)} of the library")
    if material in READ_IN_THE_LIBRARY:
        wanted = _building_material(READ_IN_THE_LIBRARY[material])
        found += [
            f"densities.csv {material}: the library prints {wanted:g}"
            for value in read_there
            if value != wanted
        ]
        if not read_there:
            found.append(f"densities.csv {material}: is not there as the library prints it")
    return found


def _range_problems(material: str, source: str, unit: str, printed: dict[str, float]) -> list[str]:
    ranged = (source, material) in RANGES
    if ranged != (printed["density_low"] != printed["density_high"]):
        words = "a range" if ranged else "one figure"
        return [f"densities.csv {material}: {source} prints {words}"]
    step = 100 if unit == "kg/m3" else 2 if source == "general-range" or material == "magnesium-alloys" else 5
    return [
        f"densities.csv {material}: {value:g} {unit} is no step of {step}"
        for value in printed.values()
        if ranged and value % step
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


# Ranges of the codes and handbooks, recalled: EN 1561 (grey iron), CW brasses, EN 338 (hardwood), EN 1992-1-1 and plain
# concrete, polyamide dry, lead, granite.
MODULUS_BANDS = {
    "cast_iron": (90, 110),
    "brass": (90, 110),
    "hardwood": (10, 17),
    "concrete": (17, 40),
    "nylon": (2, 5),
    "lead": (14, 18),
    "granite": (40, 70),
}
CODE_MODULI = {"steel": 210, "aluminium": 70, "glass": 70}


def law_moduli(tables: Tables) -> list[str]:
    """Steel 210 GPa (EN 1993-1-1), aluminium 70 GPa (EN 1999-1-1), glass 70 GPa (EN 572-1); none stiffer than steel.

    The list goes in fives of gigapascals (lead apart); the other materials lie in the range of their code.
    """
    got = column(tables["youngs-modulus"], "material")
    found = [p for m, e in CODE_MODULI.items() for p in band("youngs-modulus", m, got.get(m, math.nan), e, e)]
    found += [
        f"youngs-modulus.csv {m}: {e:g} GPa is no five" for m, e in got.items() if e % 5 and m != "lead"
    ]
    found += [
        p
        for m, (low, high) in MODULUS_BANDS.items()
        for p in band("youngs-modulus", m, got.get(m, 0), low, high)
    ]
    return found + [p for m, e in got.items() for p in band("youngs-modulus", m, e, 1, 210)]


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
            found.append(f"steel-compositions.csv {steel} {element}: least is not under most")
        if steel.isdigit():
            found += _series_problems(steel, element, at)
        for first, second, shared in (
            ("4140", "4130", ("chromium", "molybdenum", "silicon")),
            ("8640", "8620", ("chromium", "nickel", "molybdenum")),
            ("8620", "8630", ("chromium", "nickel", "molybdenum", "silicon", "manganese")),
            ("1340", "8620", ("silicon",)),
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
        found.append(f"steel-compositions.csv {what}: {most - least:.2f} is no width of a range")
    if element == "silicon" and abs(most - 0.35) > 1e-9:
        found.append(f"steel-compositions.csv {what}: silicon of bar steel is 0.35 at most")
    for missing in set(SERIES.get(steel[:2], {})) - {e for s, e, _ in at if s == steel}:
        found.append(f"steel-compositions.csv {steel}: has no {missing}")
    return found


def law_tempering(tables: Tables) -> list[str]:
    """A hotter temper is softer and tougher; yield is under tensile strength; annealed is softer than normalised.

    Strengths were whole ksi before they were MPa (tenths of ksi where not tempered), and stand within half a megapascal.
    """
    found = []
    rows = tables["tempering-data"]
    for (steel, condition, temper), group in groups(rows, "steel", "condition", "temper_degC").items():
        got = column(group, "quantity")
        for quantity, value in got.items():
            if quantity.endswith("strength"):  # printed in ksi in the American handbooks the pages go back to
                tenths = 1 if temper == "none" else 10
                ksi = tenths * math.floor(value / 0.6894757 / tenths + 0.5) / 10
                half = 0.051 if temper == "none" else 0.51
                found += band(
                    "tempering-data", (steel, temper, quantity), value - ksi * 6.894757, -half, half
                )
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
    """Fahrenheit and Celsius agree to the degree; colours stand in rising order, tints below glow.

    The book gives whole tens of Fahrenheit (957 and 1,655 apart); tints stand in its list of tempering, glow in the other.
    """
    found = []
    for row in tables["temper-colours"]:
        if (row["kind"] == "oxide_tint") != (row["locator"] == "Colours of tempering"):
            found.append(f"temper-colours.csv {row['colour']}: is not {row['kind']} in {row['locator']}")
        if row["unit"] == "degF" and num(row["value"]) % 10 and row["value"] not in {"957", "1,655"}:
            found.append(f"temper-colours.csv {row['colour']}: {row['value']} F is no whole ten")
    for key, rows in groups(tables["temper-colours"], "colour", "quantity").items():
        got = column(rows, "unit")
        if set(got) != {"degF", "degC"}:
            found.append(f"temper-colours.csv {key}: needs F and C")
        else:
            found += band("temper-colours", key, got["degC"] - (got["degF"] - 32) / 1.8, -0.56, 0.56)
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
    """Every column rises with Rockwell; ksi and MPa agree; HV over HB 1.045 to 1.066, MPa over HV 3.08 to 3.245; two strength columns within 20 %.

    MPa is ksi x 6.895 to the megapascal (1.3 off at 30 HRC, 3.2 at 52 HRC as printed). A column is smooth: each figure but
    the outer two at either end stands where a cubic through its four neighbours puts it, within the rounding.
    """
    found = _hardness_is_smooth(tables)
    for key, group in groups(tables["hardness-conversion"], "quantity", "unit", "source").items():
        found += rising("hardness-conversion", key, ((num(r["rockwell_c"]), num(r["value"])) for r in group))
    for (hrc,), group in groups(tables["hardness-conversion"], "rockwell_c").items():
        got = {(r["unit"], r["source"]): num(r["value"]) for r in group}
        mpa, ksi = got.get(("MPa", "astm-e140"), math.nan), got.get(("ksi", "astm-e140"), math.nan)
        room = {"30": 1.3, "52": 3.2}.get(hrc, 0.75)
        found += band("hardness-conversion", (hrc, "ksi against MPa"), mpa - ksi * 6.894757, -room, room)
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


# unit and source of a column of the conversion -> how far a figure may stand from the curve of its neighbours
SMOOTH_WITHIN = {
    ("HV", "astm-e140"): 0.7,
    ("HBW", "astm-a370"): 2.0,
    ("ksi", "astm-e140"): 1.35,
    ("MPa", "astm-a370"): 35.0,
}
PRINTED_BY = {
    ("HV", "astm-e140"),
    ("HBW", "astm-a370"),
    ("ksi", "astm-e140"),
    ("MPa", "astm-e140"),
    ("MPa", "astm-a370"),
}
UNIT_OF = {"vickers": {"HV"}, "brinell": {"HBW"}, "tensile_strength": {"MPa", "ksi"}}


def _cubic_through(points: list[tuple[float, float]], x: float) -> float:
    """Lagrange's polynomial through the points, at x."""
    return sum(
        y * math.prod((x - other) / (place - other) for other, _ in points if other != place)
        for place, y in points
    )


def _hardness_is_smooth(tables: Tables) -> list[str]:
    found = []
    for (unit, source), group in groups(tables["hardness-conversion"], "unit", "source").items():
        if (unit, source) not in PRINTED_BY or any(unit not in UNIT_OF[r["quantity"]] for r in group):
            found.append(f"hardness-conversion.csv: {source} prints no column in {unit}")
            continue
        column_points = sorted((num(r["rockwell_c"]), num(r["value"])) for r in group)
        room = SMOOTH_WITHIN.get((unit, source), math.inf)
        for i in range(2, len(column_points) - 2):
            neighbours = column_points[i - 2 : i] + column_points[i + 1 : i + 3]
            hrc, value = column_points[i]
            what = (hrc, unit, "off the curve of its neighbours")
            found += band("hardness-conversion", what, value - _cubic_through(neighbours, hrc), -room, room)
    return found


def law_hot_strength(tables: Tables) -> list[str]:
    """EN 1993-1-2: all shares fall from 1 at 20 C to 0 at 1,200 C, the proportional limit never above yield.

    Its straight stretches: modulus 1 - (T - 100)/1000 to 500 C and 0.09 at 800 C down to nothing; proportional limit from
    1 at 100 C to 0.42 at 400 C and from 0.05 at 800 C down; yield whole to 400 C and from 0.06 at 900 C down (0.11 at 800).
    Its own equation 4.22 for the critical temperature, 39.19 ln(1/(0.9674 k^3.833) - 1) + 482, gives the yield column
    back within 6 C (15 C at 800 C).
    """
    found = []
    for key, group in groups(tables["steel-hot-strength"], "quantity").items():
        pairs = sorted((num(r["temperature_degC"]), num(r["value"])) for r in group)
        found += rising("steel-hot-strength", key, [(t, -v) for t, v in pairs], strict=False)
        if pairs[0] != (20.0, 1.0) or pairs[-1] != (1200.0, 0.0) or len(pairs) != 13:
            found.append(f"steel-hot-strength.csv {key}: runs from 1 at 20 C to 0 at 1,200 C in 13 rows")
    at = {(num(r["temperature_degC"]), r["quantity"]): num(r["value"]) for r in tables["steel-hot-strength"]}
    for (degree, quantity), value in at.items():
        if quantity == "proportional_limit_factor" and value > at.get((degree, "yield_factor"), -1):
            found.append(f"steel-hot-strength.csv {degree}: proportional limit above yield")
        straight = _straight_share(degree, quantity)
        if straight is not None:
            found += band("steel-hot-strength", (degree, quantity), value - straight, -0.00051, 0.00051)
        elif quantity == "yield_factor":
            back = 39.19 * math.log(1 / (0.9674 * value**3.833) - 1) + 482
            room = 15 if degree == 800 else 6
            found += band(
                "steel-hot-strength", (degree, "yield by equation 4.22"), back - degree, -room, room
            )
    return found


# quantity -> where its first straight stretch begins and ends, its loss per degree there; where the last begins, its share
STRAIGHT = {
    "yield_factor": (20, 400, 0.0, 900, 0.06),
    "proportional_limit_factor": (100, 400, 0.58 / 300, 800, 0.05),
    "modulus_factor": (100, 500, 1 / 1000, 800, 0.09),
}


def _straight_share(degree: float, quantity: str) -> float | None:
    """The share on the straight stretches of the three curves; None between them."""
    begins, ends, loss, last_begins, last_share = STRAIGHT[quantity]
    if degree <= ends:
        return 1 - loss * max(degree - begins, 0)
    if degree >= last_begins:
        return last_share * (1200 - degree) / (1200 - last_begins)
    return None


def law_embrittlement(tables: Tables) -> list[str]:
    """Bands run upwards; C and F of one note agree (to the degree, or to the five of a rounded C); all in 150 to 600 C.

    One letter on hydrogen cracking gives both sides of its border: above 39 is the next whole figure to at most 38.
    """
    found = []
    rows = tables["embrittlement"]
    at = {(r["phenomenon"], r["case"], r["unit"], r["quantity"]): num(r["value"]) for r in rows}
    for (phenomenon, case, unit, quantity), value in at.items():
        other = {"temperature_from": "temperature_to", "temperature_to": "temperature_from"}.get(quantity)
        if other is None:
            continue
        end = at.get((phenomenon, case, unit, other), math.nan)
        if not (value < end if quantity == "temperature_from" else value > end):
            found.append(f"embrittlement.csv {phenomenon} {case}: band must run upwards and have two ends")
        in_c = value if unit == "degC" else (value - 32) / 1.8
        found += band("embrittlement", (phenomenon, case, quantity), in_c, 145, 600)
        pair = at.get((phenomenon, case, "degF" if unit == "degC" else "degC", quantity))
        if pair is not None and unit == "degC":
            exact_c = (pair - 32) / 1.8
            rounded_to = 1 if value % 5 else 5  # a Celsius figure that ends in 0 or 5 was rounded to it
            found += band(
                "embrittlement", (phenomenon, quantity), value - exact_c, -0.9 * rounded_to, 0.9 * rounded_to
            )
        if pair is None and case == "usual":
            found.append(f"embrittlement.csv {phenomenon} {quantity}: needs C and F")
    hydrogen = {
        case: at.get(("hydrogen_embrittlement", case, unit, what), math.nan) for case, unit, what in HYDROGEN
    }
    if hydrogen["high_susceptibility"] != hydrogen["structural_bolts"] + 1:
        found.append("embrittlement.csv hydrogen: at most 38 and above 39 are one border")
    in_mpa = column(tables["hardness-conversion"], "rockwell_c", unit="MPa", source="astm-e140")
    in_hv = column(tables["hardness-conversion"], "rockwell_c", unit="HV")
    found += band(
        "embrittlement", "1,200 MPa", hydrogen["fasteners"], in_mpa.get("38", 0), in_mpa.get("39", 0)
    )
    found += band(
        "embrittlement", "320 HV", hydrogen["process_investigation"], in_hv.get("32", 0), in_hv.get("34", 0)
    )
    found += band(
        "embrittlement", "365 HV", hydrogen["written_agreement"], in_hv.get("36", 0), in_hv.get("38", 0)
    )
    found += band("embrittlement", "failed fasteners", hydrogen["failed_fasteners"], 34, 38)
    return found


HYDROGEN = (
    ("fasteners", "MPa", "tensile_strength_above"),
    ("high_susceptibility", "HRC", "hardness_above"),
    ("structural_bolts", "HRC", "hardness_at_most"),
    ("failed_fasteners", "HRC", "hardness_from"),
    ("process_investigation", "HV", "hardness_above"),
    ("written_agreement", "HV", "hardness_above"),
)


def law_arc_efficiency(tables: Tables) -> list[str]:
    """EN 1011-1: factor k is 1 for submerged arc, one figure for the other consumable electrodes, a lower one for the two
    with a tungsten electrode. The measured mean is half way between its low and high; plasma loses most.

    Measured shares follow the same order.
    """
    k = column(tables["arc-efficiency"], "process", quantity="relative_to_saw")
    measured = column(tables["arc-efficiency"], "process", quantity="measured_efficiency")
    tig = column(tables["arc-efficiency"], "quantity", process="gtaw", source="stenbacka-2012")
    low, mean, high = (tig.get(f"measured_efficiency_{which}", math.nan) for which in ("low", "mean", "high"))
    found = band("arc-efficiency", "gtaw mean", mean - (low + high) / 2, -0.0051, 0.0051)
    if not 0.4 < low < mean < high < 1:
        found.append("arc-efficiency.csv gtaw: low, mean and high out of order")
    if set(k) != {"saw", "smaw", "gmaw", "fcaw", "gtaw", "plasma"} or set(measured) != {
        "saw",
        "gmaw",
        "gtaw",
        "plasma",
    }:
        return [*found, "arc-efficiency.csv: a process is missing"]
    if not (1.0 == k["saw"] > k["smaw"] == k["gmaw"] == k["fcaw"] > k["gtaw"] == k["plasma"] > 0.4):
        found.append("arc-efficiency.csv: factor k out of order")
    if not (measured["saw"] == measured["gmaw"] > measured["gtaw"] > measured["plasma"] > 0.4):
        found.append("arc-efficiency.csv: measured shares out of order")
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
    """About a quarter of steel: 49 to 57 GPa at 100 mm; the generic stiffness over d squared is pi/2 times its modulus.

    DNV-OS-E301 prints its constants in halves of a gigapascal. A stronger studless grade is stiffer at every size from 50
    to 150 mm; the stud-link and catalogue figures do not change with size.
    """
    found = []
    at: dict[tuple[str, int], float] = {}
    for (chain,), rows in groups(tables["chain-modulus"], "chain").items():
        got = column(rows, "quantity")
        constant, fall = got.get("modulus_constant", math.nan), got.get("modulus_fall_per_mm", 0.0)
        at |= {(chain, d): constant - d * fall for d in (50, 100, 150)}
        found += band("chain-modulus", chain, at[chain, 100], 49, 57)
        if chain.startswith("studless_r") != ("modulus_fall_per_mm" in got):
            found.append(f"chain-modulus.csv {chain}: only graded studless chain loses stiffness with size")
        if rows[0]["source"] == "dnv-os-e301" and (2 * constant) % 1:
            found.append(f"chain-modulus.csv {chain}: {constant:g} is no half gigapascal")
        if "stiffness_over_diameter_squared" in got:
            found += band(
                "chain-modulus",
                chain,
                got["stiffness_over_diameter_squared"] / (math.pi / 2) - got["modulus_constant"],
                -0.05,
                0.05,
            )
    for diameter in (50, 100, 150):
        order = [at.get((f"studless_r{grade}", diameter), math.nan) for grade in (3, 4, 5)]
        if not order[0] < order[1] < order[2]:
            found.append(f"chain-modulus.csv at {diameter} mm: R3, R4, R5 must grow stiffer")
    return found
