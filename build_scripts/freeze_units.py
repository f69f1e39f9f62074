"""Write calc/unit_factors.py: the unit factors of the handbook, taken from Pint.

Pint is the authority for every factor. Its import and its registry cost most of a second in a browser, so the
factors that a shop needs are frozen here once into plain Python; tests/unit/test_unit_factors.py asks Pint again
for each of them and for the text of the file.

Run: python -m build_scripts.freeze_units
"""

from __future__ import annotations

import pathlib
from fractions import Fraction

import pint

TARGET = pathlib.Path(__file__).resolve().parent.parent / "calc" / "unit_factors.py"

# dimension -> (SI unit as Pint writes it, {symbol of the handbook: unit as Pint writes it})
UNITS: dict[str, tuple[str, dict[str, str]]] = {
    "length": (
        "meter",
        {
            "in": "inch",
            "ft": "foot",
            "yd": "yard",
            "mi": "mile",
            "thou": "thou",
            "um": "micrometer",
            "mm": "millimeter",
            "cm": "centimeter",
            "m": "meter",
            "km": "kilometer",
        },
    ),
    "area": (
        "meter**2",
        {
            "in2": "inch**2",
            "ft2": "foot**2",
            "mm2": "millimeter**2",
            "cm2": "centimeter**2",
            "m2": "meter**2",
        },
    ),
    "volume": (
        "meter**3",
        {
            "in3": "inch**3",
            "ft3": "foot**3",
            "yd3": "yard**3",
            "gal": "gallon",
            "imp_gal": "imperial_gallon",
            "qt": "quart",
            "mm3": "millimeter**3",
            "cm3": "centimeter**3",
            "L": "liter",
            "m3": "meter**3",
        },
    ),
    "second_moment": (
        "meter**4",
        {"in4": "inch**4", "mm4": "millimeter**4", "cm4": "centimeter**4", "m4": "meter**4"},
    ),
    "weight": (
        "kilogram",
        {
            "oz": "ounce",
            "lb": "pound",
            "short_ton": "short_ton",
            "long_ton": "long_ton",
            "g": "gram",
            "kg": "kilogram",
            "t": "metric_ton",
        },
    ),
    "force": (
        "newton",
        {
            "lbf": "force_pound",
            "kip": "kip",
            "N": "newton",
            "daN": "decanewton",
            "kN": "kilonewton",
            "MN": "meganewton",
            "kgf": "force_kilogram",
            "tonf": "force_ton",
            "tf": "force_metric_ton",
        },
    ),
    "pressure": (
        "pascal",
        {
            "psi": "psi",
            "ksi": "ksi",
            "Pa": "pascal",
            "kPa": "kilopascal",
            "bar": "bar",
            "MPa": "megapascal",
            "GPa": "gigapascal",
            "N/mm2": "newton/millimeter**2",
            "kgf/cm2": "force_kilogram/centimeter**2",
            "atm": "atmosphere",
        },
    ),
    "torque": (
        "newton*meter",
        {
            "lbf.in": "force_pound*inch",
            "lbf.ft": "force_pound*foot",
            "kip.ft": "kip*foot",
            "N.m": "newton*meter",
            "kN.m": "kilonewton*meter",
            "N.mm": "newton*millimeter",
            "kgf.m": "force_kilogram*meter",
        },
    ),
    "energy": (
        "joule",
        {
            "J": "joule",
            "kJ": "kilojoule",
            "ft.lbf": "foot*force_pound",
            "in.lbf": "inch*force_pound",
            "BTU": "british_thermal_unit",
            "kWh": "kilowatt_hour",
        },
    ),
    "power": ("watt", {"W": "watt", "kW": "kilowatt", "hp": "horsepower"}),
    "speed": (
        "meter/second",
        {
            "in/min": "inch/minute",
            "ft/min": "foot/minute",
            "ft/s": "foot/second",
            "mph": "mile/hour",
            "kn": "knot",
            "mm/s": "millimeter/second",
            "mm/min": "millimeter/minute",
            "cm/min": "centimeter/minute",
            "m/min": "meter/minute",
            "m/s": "meter/second",
            "km/h": "kilometer/hour",
        },
    ),
    "time": ("second", {"s": "second", "min": "minute", "h": "hour", "day": "day"}),
    "angle": ("degree", {"deg": "degree", "rad": "radian", "grad": "grade", "turn": "turn"}),
    "temperature": (
        "degree_Celsius",
        {"degF": "degree_Fahrenheit", "degC": "degree_Celsius", "K": "kelvin", "degR": "degree_Rankine"},
    ),
    "temperature_difference": (
        "kelvin",
        {"delta_degF": "delta_degree_Fahrenheit", "delta_degC": "delta_degree_Celsius", "K": "kelvin"},
    ),
    "density": (
        "kilogram/meter**3",
        {
            "lb/ft3": "pound/foot**3",
            "lb/in3": "pound/inch**3",
            "kg/m3": "kilogram/meter**3",
            "g/cm3": "gram/centimeter**3",
            "t/m3": "metric_ton/meter**3",
        },
    ),
    "weight_per_length": (
        "kilogram/meter",
        {"lb/in": "pound/inch", "lb/ft": "pound/foot", "kg/m": "kilogram/meter", "g/mm": "gram/millimeter"},
    ),
    "weight_per_area": (
        "kilogram/meter**2",
        {"lb/ft2": "pound/foot**2", "kg/m2": "kilogram/meter**2"},
    ),
    "stiffness": (
        "newton/meter",
        {
            "lbf/in": "force_pound/inch",
            "kip/in": "kip/inch",
            "N/m": "newton/meter",
            "N/mm": "newton/millimeter",
            "kN/mm": "kilonewton/millimeter",
        },
    ),
    "heat_input": (
        "joule/meter",
        {"kJ/in": "kilojoule/inch", "kJ/mm": "kilojoule/millimeter", "J/mm": "joule/millimeter"},
    ),
    "force_rate": (
        "newton/second",
        {
            "lbf/min": "force_pound/minute",
            "lbf/s": "force_pound/second",
            "kN/min": "kilonewton/minute",
            "N/s": "newton/second",
        },
    ),
    "voltage": ("volt", {"V": "volt"}),
    "current": ("ampere", {"A": "ampere"}),
    "fraction": ("dimensionless", {"%": "percent", "ratio": "dimensionless"}),
}

HEADER = '''"""Unit factors of the handbook, frozen from Pint {version} by build_scripts/freeze_units.py. Do not edit.

UNIT_FACTORS[dimension][symbol] = (factor, offset): value in the SI unit = value * factor + offset.
SI_UNITS[dimension] names that SI unit; degrees stand in for radians and degrees Celsius for kelvin,
because that is what people in a shop read.
"""

'''


def factor_and_offset(registry: pint.UnitRegistry[Fraction], unit: str, si_unit: str) -> tuple[float, float]:
    """Factor and offset that carry a value in `unit` to `si_unit`, as Pint has them in exact fractions."""
    at_zero = registry.Quantity(Fraction(0), unit).to(si_unit).magnitude
    at_one = registry.Quantity(Fraction(1), unit).to(si_unit).magnitude
    return float(at_one - at_zero), float(at_zero)


def rendered() -> str:
    """The text of calc/unit_factors.py as Pint gives it today."""
    registry: pint.UnitRegistry[Fraction] = pint.UnitRegistry(non_int_type=Fraction)
    lines = [HEADER.format(version=pint.__version__)]
    lines.append("UNIT_FACTORS: dict[str, dict[str, tuple[float, float]]] = {\n")
    for dimension, (si_unit, symbols) in UNITS.items():
        lines.append(f'    "{dimension}": {{\n')
        for symbol, unit in symbols.items():
            factor, offset = factor_and_offset(registry, unit, si_unit)
            lines.append(f'        "{symbol}": ({factor!r}, {offset!r}),\n')
        lines.append("    },\n")
    lines.append("}\n\nSI_UNITS: dict[str, str] = {\n")
    for dimension, (si_unit, _symbols) in UNITS.items():
        lines.append(f'    "{dimension}": "{si_unit}",\n')
    lines.append("}\n")
    return "".join(lines)


if __name__ == "__main__":
    TARGET.write_text(rendered(), encoding="utf-8")
    print(f"wrote {TARGET.name}")
