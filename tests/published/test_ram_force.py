"""ram-force against printed examples of Pascal's principle."""

import math

import pytest

from calc.answering import answer
from calc.pulling.hydraulics import (
    lever_ratio,
    pressure_for_force_pa,
    pump_pressure_pa,
    ram_area_m2,
    ram_force_n,
    travel_per_stroke_m,
)


def test_openstax_brake() -> None:
    """OpenStax, College Physics 2e, ch. 11, hydraulic brake: 500 N on a 0.500 cm piston gives 2.55e7 Pa, and 12,500 N
    on a 2.50 cm wheel cylinder (exact ratio 25).
    """
    pressure = pressure_for_force_pa(500.0, ram_area_m2(0.500e-2))
    assert pressure == pytest.approx(2.55e7, rel=0.002)
    assert ram_force_n(pressure, ram_area_m2(2.50e-2)) == pytest.approx(12500)
    record = answer(
        "ram-force", {"direction": "push", "rams": "1", "bore": "2.50 cm", "pressure": f"{pressure} Pa"}, "si"
    )
    assert record["results"]["force"]["value"] == pytest.approx(12.5)


def test_esposito_jack() -> None:
    """Esposito, Fluid Power with Applications, ex. 3.4 (through a companion that re-solves it): 100 lb on 2 in2 lifts
    1,000 lb on 20 in2; 1 in of stroke moves it 0.1 in.
    """
    pressure = pressure_for_force_pa(100.0, 2.0)
    assert ram_force_n(pressure, 20.0) == pytest.approx(1000)
    assert travel_per_stroke_m(1.0, 2.0, 20.0) == pytest.approx(0.1)


def test_esposito_metric_jack() -> None:
    """Esposito, ex. 3.13 (through the same companion): 200 N, 25 cm2 to 100 cm2, 5 cm: 800 N and 1.25 cm."""
    record = answer(
        "ram-force",
        {"direction": "push", "rams": "1", "area": "100 cm2", "pressure": f"{200 / 25e-4} Pa"},
        "si",
    )
    assert record["results"]["force"]["value"] == pytest.approx(0.8)
    assert travel_per_stroke_m(5.0, 25.0, 100.0) == pytest.approx(1.25)


def test_openstax_jack_lever() -> None:
    """OpenStax, College Physics 2e, ch. 9: an ideal lever multiplies by the ratio of its arms; with ch. 11, a 2.00 cm
    pump piston then gives F x ratio / (pi r2). Second way: energy in equals energy out over one stroke.
    """
    hand, ratio, bore, ram_bore = 91.0, lever_ratio(0.47, 0.031), 0.0200, 0.071
    pressure = pump_pressure_pa(hand, ratio, math.pi * 0.0100**2)
    ram = ram_force_n(pressure, ram_area_m2(ram_bore))
    piston_stroke = 0.013
    travel = travel_per_stroke_m(piston_stroke, ram_area_m2(bore), ram_area_m2(ram_bore))
    assert ram * travel == pytest.approx(hand * piston_stroke * ratio)
