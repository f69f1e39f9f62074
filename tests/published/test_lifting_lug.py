"""Parts of the lug sheet against printed answers; the source stands beside each. No printed BTH-1 example was read."""

from __future__ import annotations

import dataclasses

import pytest

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
