"""Laws of the table densities. The source of each law stands in its docstring."""

from __future__ import annotations

import re
from collections import defaultdict
from functools import cache

from build_scripts.laws.tools import Tables, away, band, groups, num, words_of_note

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


def _key_of(name: str) -> str:
    """The key of a material by its name. Keys keep the spelling that saved addresses have: aluminium."""
    spelled = name.lower().replace("aluminum", "aluminium").removesuffix(", any")
    return re.sub("[^a-z0-9]+", "-", spelled).strip("-")


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
            found.append(f"densities/claims.csv {material} {source}: needs low and high in one unit")
            continue
        if source == "en-12524":
            in_library[material] += got.values()
        low[material].append(got["density_low"])
        high[material].append(got["density_high"])
        if not 90 < got["density_low"] <= got["density_high"] < 20000:
            found.append(f"densities/claims.csv {material} {source}: low above high, or not a density")
        found += _range_problems(material, source, rows[0]["unit"], printed)
        found += [
            f"densities/claims.csv {material}: is not the key of {r['material_name']}"
            for r in rows
            if _key_of(r["material_name"]) != material
        ]
        gravity = re.search(r"specific gravity (0\.[0-9]+)", words_of_note("densities", rows[0]))
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
            found.append(f"densities/claims.csv {material}: its sources do not meet")
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
            found.append(f"densities/claims.csv {material}: is off {' and '.join(names)} of the library")
    if material in READ_IN_THE_LIBRARY:
        wanted = _building_material(READ_IN_THE_LIBRARY[material])
        found += [
            f"densities/claims.csv {material}: the library prints {wanted:g}"
            for value in read_there
            if value != wanted
        ]
        if not read_there:
            found.append(f"densities/claims.csv {material}: is not there as the library prints it")
    return found


def _range_problems(material: str, source: str, unit: str, printed: dict[str, float]) -> list[str]:
    ranged = (source, material) in RANGES
    if ranged != (printed["density_low"] != printed["density_high"]):
        words = "a range" if ranged else "one figure"
        return [f"densities/claims.csv {material}: {source} prints {words}"]
    step = 100 if unit == "kg/m3" else 2 if source == "general-range" or material == "magnesium-alloys" else 5
    return [
        f"densities/claims.csv {material}: {value:g} {unit} is no step of {step}"
        for value in printed.values()
        if ranged and value % step
    ]
