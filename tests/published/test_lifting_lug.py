"""Parts of the lug sheet against printed answers; the source stands beside each. No printed BTH-1 example was read."""

from __future__ import annotations

import dataclasses

import pytest

from calc.lifting.lug_holding import OwnPin, least_fillet_m, pin_shear_n
from calc.lifting.lug_strength import Lug, bearing_area_m2, foot_load, throat_m, weld_n

LUG = Lug(0.02, 0.03, 0.02, 0.03, 0.03, 0.05, 0.008, 0.12, 250e6, 400e6, 482e6, 3.0)


def test_fillet_weld_stress() -> None:
    # Jindal, Machine Design, ch. 12: 100 kN on four 60 mm runs of 8 mm leg: 73.7 MPa (exact 73.67). Two runs of 120 mm
    # hold the same area.
    stress_pa = 100e3 / (4 * 0.060 * throat_m(0.008))
    assert round(stress_pa / 1e6, 1) == 73.7
    allowable_pa = 0.60 * LUG.weld_tensile_pa / (1.2 * LUG.design_factor)
    assert weld_n(LUG, foot_load(0.0, 0.0)) == pytest.approx(100e3 * allowable_pa / stress_pa)


def test_pin_bearing_stress() -> None:
    # Gere, Mechanics of Materials, ex. 1.5 and 1.7: 12 kip on a 3/4 in pin in two 3/8 in walls: 21.3 ksi (exact 21.33).
    walls = dataclasses.replace(LUG, thickness_m=2 * 0.375 * 0.0254, pin_m=0.75 * 0.0254)
    square_inches = bearing_area_m2(walls) / 0.0254**2
    assert round(12 / square_inches, 1) == 21.3


def test_pin_in_double_shear() -> None:
    # The same example: the pin's mean shear stress is 13.6 ksi (exact 13.58). Ours takes 4/3 of it, in the pin's middle.
    inch, lbf = 0.0254, 4.4482216152605
    pin = OwnPin(0.75 * inch, 0.375 * inch, inch, inch, 3**0.5 * 4 / 3 * 13.58e3 * lbf / inch**2)
    assert pin_shear_n(pin, 1.0) / lbf == pytest.approx(12_000, rel=1e-3)


@pytest.mark.parametrize(
    ("thick_in", "leg_in"),
    [(0.1, 1 / 8), (0.25, 1 / 8), (0.26, 3 / 16), (0.5, 3 / 16), (0.75, 1 / 4), (0.76, 5 / 16)],
)
def test_least_fillet(thick_in: float, leg_in: float) -> None:
    """AISC 360-10, Table J2.4 (read in a reprint): least leg of a fillet by the thinner part."""
    assert least_fillet_m(thick_in * 0.0254) == pytest.approx(leg_in * 0.0254)


@pytest.mark.parametrize("leg_in", [0.125, 0.25, 0.375])
def test_a_sixteenth_of_e70_fillet_allows_928_pounds_an_inch(leg_in: float) -> None:
    """AISC Manual (from memory): 0.928 kip per inch for each sixteenth of leg with the factor 2.0, which is 1.2 times 5/3."""
    inch, lbf = 0.0254, 4.4482216152605
    lug = dataclasses.replace(
        LUG,
        weld_leg_m=leg_in * inch,
        weld_length_m=3 * inch,
        weld_tensile_pa=70_000 * lbf / inch**2,
        design_factor=2 / 1.2,
    )
    assert weld_n(lug, foot_load(0.0, 0.0)) / lbf == pytest.approx(928 * 16 * leg_in * 6, rel=1e-3)
