"""convert held against Pint, a unit library, for every pair of units of every kind."""

from __future__ import annotations

from typing import Any

import pint
import pytest

from calc.answering import answer
from calc.unit_factors import UNIT_FACTORS

REGISTRY: Any = pint.UnitRegistry()
OWN_NAMES = {
    "in": "inch", "thou": "thou", "um": "micrometer", "in2": "inch**2", "ft2": "foot**2", "mm2": "mm**2",
    "cm2": "cm**2", "m2": "m**2", "in3": "inch**3", "ft3": "foot**3", "yd3": "yard**3", "gal": "gallon",
    "imp_gal": "imperial_gallon", "qt": "quart", "mm3": "mm**3", "cm3": "cm**3", "m3": "m**3", "in4": "inch**4",
    "mm4": "mm**4", "cm4": "cm**4", "m4": "m**4", "short_ton": "short_ton", "long_ton": "long_ton", "lbf": "pound_force",
    "kip": "kip", "tonf": "2000 * pound_force", "tf": "1000 * kilogram_force", "kgf": "kilogram_force", "psi": "psi", "ksi": "ksi",
    "N/mm2": "N/mm**2", "kgf/cm2": "kgf/cm**2", "atm": "atmosphere", "lbf.in": "lbf*inch", "lbf.ft": "lbf*foot",
    "kip.ft": "kip*foot", "N.m": "N*m", "kN.m": "kN*m", "N.mm": "N*mm", "kgf.m": "kgf*m", "ft.lbf": "foot*lbf",
    "in.lbf": "inch*lbf", "kn": "knot", "in/min": "inch/minute", "deg": "degree", "rad": "radian", "grad": "grade",
    "lb/ft3": "lb/foot**3", "lb/in3": "lb/inch**3", "kg/m3": "kg/m**3", "g/cm3": "g/cm**3", "t/m3": "tonne/m**3",
    "lb/in": "lb/inch", "lb/ft2": "lb/foot**2", "kg/m2": "kg/m**2", "lbf/in": "lbf/inch", "kip/in": "kip/inch",
    "kJ/in": "kJ/inch", "h": "hour", "t": "tonne", "BTU": "Btu", "%": "percent",
}  # fmt: skip
SAID = {"grad": "gon"}
"""Grad may be a degree, so it is said in another way."""
TEMPERATURES = {"degF", "degC", "K", "degR"}
LINEAR = [
    (dimension, start, end)
    for dimension, units in UNIT_FACTORS.items()
    if dimension not in ("temperature", "fraction")
    for start in units
    for end in units
]


def of_pint(number: float, start: str, end: str) -> float:
    source, target = REGISTRY(OWN_NAMES.get(start, start)), REGISTRY(OWN_NAMES.get(end, end))
    return float((number * source / target).to("").magnitude)


@pytest.mark.parametrize("dimension", sorted({d for d, _, _ in LINEAR}))
def test_every_pair_of_units(dimension: str) -> None:
    for kind, start, end in LINEAR:
        if kind != dimension:
            continue
        asked = {"value": f"37.1290 {SAID.get(start, start)}", "to": SAID.get(end, end)}
        found = answer("convert", asked, "us")["results"]["result"]["value"]
        assert found == pytest.approx(of_pint(37.129, start, end), rel=1e-12), (start, end)


def test_temperatures() -> None:
    for start in TEMPERATURES:
        for end in TEMPERATURES:
            expected = (
                REGISTRY.Quantity(611.3, start.replace("K", "kelvin"))
                .to(end.replace("K", "kelvin"))
                .magnitude
            )
            found = answer("convert", {"value": f"611.3 {start}", "to": end}, "us")["results"]["result"][
                "value"
            ]
            assert found == pytest.approx(expected, rel=1e-9), (start, end)


@pytest.mark.parametrize(
    ("mass", "force"), [("lb", "lbf"), ("kg", "kgf"), ("t", "kN"), ("short_ton", "kip"), ("g", "N")]
)
def test_mass_as_weight_under_standard_gravity(mass: str, force: str) -> None:
    expected = of_pint(13.7, f"{OWN_NAMES.get(mass, mass)} * standard_gravity", force)
    found = answer("convert", {"value": f"13.7 {mass}", "to": force}, "us")["results"]["result"]["value"]
    assert found == pytest.approx(expected, rel=1e-12)
