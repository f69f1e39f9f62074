"""straighten: a rectangle bent past its yield and let go, and printed rules of cold bending, from other books."""

from __future__ import annotations

import math

import pytest

from calc.pulling.plastic_bending import RECTANGLE, PressedBar, flat_second_moment_m4, outside_strain
from calc.pulling.string_energy import OIL_BULK_MODULUS_PA

PSI = 6894.757293168361


def beer() -> PressedBar:
    """The beam of Beer, Johnston and DeWolf, Mechanics of Materials, example 4.05, p 260 (a companion): 50 x 120 mm, 240 MPa."""
    return PressedBar(RECTANGLE, 0.12, flat_second_moment_m4(0.05, 0.12), 2.0, 240e6, 200e9)


def test_elastic_core_and_radius_under_a_moment() -> None:
    bar = beer()
    core = RECTANGLE.core_at_moment(36.8e3 / bar.yield_moment_nm)
    assert core * 120 == pytest.approx(80.0, abs=0.05)
    radius_m = core * (bar.height_m / 2) * bar.modulus_pa / bar.yield_pa
    assert radius_m == pytest.approx(33.3, abs=0.05)


def test_radius_that_is_left() -> None:
    """The same beam let go: 225 m (same place, 4.06)."""
    bar = beer()
    curvature = 1 / (0.04 * bar.modulus_pa / bar.yield_pa) - 36.8e3 / (bar.modulus_pa * bar.second_moment_m4)
    assert 1 / curvature == pytest.approx(225, abs=0.5)


def test_a_rectangle_has_a_plastic_moment_of_half_as_much_again() -> None:
    """Course notes of A. H. Varma, Purdue, 5.1; yielded length L/3 of a rectangle (M. Batikha, lecture notes)."""
    bar = beer()
    assert bar.plastic_moment_nm == pytest.approx(1.5 * bar.yield_moment_nm)
    assert bar.yielded_length_m == pytest.approx(bar.span_m / 3)


def test_oil_pressed_together() -> None:
    """Esposito, Fluid Power with Applications, Ex 2.11 and 2.17 (a companion): 10 in3 under 1,900 psi lose 0.076 in3, 0.76 %."""
    assert pytest.approx(0.076, abs=0.0005) == 10 * 1900 * PSI / OIL_BULK_MODULUS_PA


def test_the_sharpest_bend_of_new_plate_is_a_quarter_of_stretch() -> None:
    """ASTM A6, X4.2: inside radius 1.5 t for mild plate."""
    assert outside_strain(1.5, 1.0) == pytest.approx(0.25)
    assert math.isclose(outside_strain(0.0, 1.0), 1.0)
