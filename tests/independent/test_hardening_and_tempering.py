"""The hardness fits written a second time, and the line through the tempering data by numpy.

The fits' coefficients are from memory: a second typing guards the code against slips, not the memory.
"""

from __future__ import annotations

import math

import numpy as np
import pytest

from calc.heating.hardening import (
    carbon_equivalent_pct,
    hard_zone_hv,
    martensite_duren_hv,
    martensite_maynier_hv,
    steel,
    zone_yurioka_hv,
)
from calc.heating.moving_heat import MovingArc, _by_cosines, _by_images
from calc.heating.tempering import parameter, tempered_steel
from calc.heating.weld_cooling import cooling_time_s, cooling_time_thick_s, cooling_time_thin_s

C, SI, MN, CU, NI, CR, MO, V = 0.23, 0.31, 1.13, 0.37, 0.83, 0.59, 0.17, 0.07
ALLOY = {"C": C, "Si": SI, "Mn": MN, "Cu": CU, "Ni": NI, "Cr": CR, "Mo": MO, "V": V}


def test_carbon_equivalent_counts_every_element() -> None:
    assert carbon_equivalent_pct(ALLOY) == pytest.approx(C + MN / 6 + (CR + MO + V) / 5 + (NI + CU) / 15)


def test_maynier_typed_again() -> None:
    expected = 127 + 949 * C + 27 * SI + 11 * MN + 8 * NI + 16 * CR + 21 * math.log10(13 * 3600)
    assert martensite_maynier_hv(ALLOY, 13.0) == pytest.approx(expected, abs=1e-9)
    assert martensite_duren_hv(ALLOY) == pytest.approx(802 * C + 305, abs=1e-9)


def test_cooling_formula_typed_again() -> None:
    """EN 1011-2, annex D (memory), shape factors left at 1; 1 kJ/mm on 10 mm plate from 20 C: 11.4 s."""
    thin = (4300 - 4.3 * 20) * 1e5 / 10**2 * (1 / 480**2 - 1 / 780**2)
    thick = (6700 - 5 * 20) * (1 / 480 - 1 / 780)
    assert thin == pytest.approx(11.4, abs=0.05)
    assert cooling_time_thin_s(1e6, 0.010, 20) == pytest.approx(thin, rel=1e-12)
    assert cooling_time_thick_s(1e6, 20) == pytest.approx(thick, rel=1e-12)
    assert cooling_time_s(1e6, 0.010, 20) == pytest.approx(thin, rel=1e-12)
    assert cooling_time_s(1e6, 0.050, 20) == pytest.approx(thick, rel=1e-12)


@pytest.mark.parametrize("seconds", [6.0, 17.0, 41.0, 97.0])
@pytest.mark.parametrize("carbon", [0.23, 0.37])
def test_yurioka_typed_again(carbon: float, seconds: float) -> None:
    counted = carbon if carbon <= 0.3 else carbon / 6 + 0.25
    one = counted + SI / 24 + MN / 6 + CU / 15 + NI / 12 + CR * (1 - 0.16 * CR**0.5) / 8 + MO / 4
    two = carbon + SI / 24 + MN / 5 + CU / 10 + NI / 18 + CR / 5 + MO / 2.5 + V / 5
    three = counted + MN / 3.6 + CU / 20 + NI / 9 + CR / 5 + MO / 4
    hard = 884 * carbon * (1 - 0.3 * carbon**2) + 294
    soft = 145 + 130 * math.tanh(2.65 * two - 0.69)
    martensite, bainite = math.exp(10.6 * one - 4.8), math.exp(6.2 * three + 0.74)
    x = 4 * math.log(seconds / martensite) / math.log(bainite / martensite) - 2
    expected = min(hard, max(soft, (hard + soft) / 2 - (hard - soft) / 2.2 * math.atan(x)))
    assert zone_yurioka_hv({**ALLOY, "C": carbon}, seconds) == pytest.approx(expected, rel=1e-12)


def test_cooling_rate_from_cooling_time() -> None:
    """300 K in the time from 800 to 500 C: a slower quench lowers the upper end of the range by Maynier's rate term."""
    fast, slow = hard_zone_hv(steel("4340"), 2.0), hard_zone_hv(steel("4340"), 8.0)
    assert fast is not None
    assert slow is not None
    assert fast[1] - slow[1] == pytest.approx(21 * math.log10(4.0), abs=1e-6)


@pytest.mark.parametrize(("name", "scatter_mpa"), [("4140", 39), ("1340", 52)])
def test_line_through_the_tempering_data_by_numpy(name: str, scatter_mpa: int) -> None:
    made_of = tempered_steel(name)
    x = np.array([parameter(degc, 1.0) for degc, _ in made_of.pieces])
    y = np.array([strength for _, strength in made_of.pieces])
    off = float(np.max(np.abs(y - np.polyval(np.polyfit(x, y, 1), x))))
    assert made_of.scatter_pa() == pytest.approx(off, rel=1e-9)
    assert off / 1e6 == pytest.approx(scatter_mpa, abs=0.6)


@pytest.mark.parametrize("field", [_by_images, _by_cosines])
@pytest.mark.parametrize(
    ("along", "aside", "deep"), [(-0.021, 0.0113, 0.0031), (0.0017, 0.0097, 0.0057), (-0.003, 0.0083, 0.0002)]
)
def test_slopes_of_both_sums_against_differences(
    field: object, along: float, aside: float, deep: float
) -> None:
    """Every slope of the field against central differences of the field itself; and the two sums against each other."""
    assert callable(field)
    arc = MovingArc(2140.0, 3.3e-3, 0.0087, 41.0, 41.0 / 4.4e6)
    step = 2e-6

    def rise(x: float, y: float, z: float) -> float:
        return float(_by_images(arc, x, y, z).rise)

    here = field(arc, along, aside, deep)
    middle = rise(along, aside, deep)
    assert here.rise == pytest.approx(middle, rel=1e-6)
    ahead, behind = rise(along + step, aside, deep), rise(along - step, aside, deep)
    steep = middle * (arc.drag_per_m + 1 / aside)
    assert here.along == pytest.approx((ahead - behind) / (2 * step), abs=2e-5 * steep)
    wide = 100 * step
    bend = (rise(along + wide, aside, deep) - 2 * middle + rise(along - wide, aside, deep)) / wide**2
    assert here.along_twice == pytest.approx(bend, abs=2e-3 * steep * (arc.drag_per_m + 1 / aside))
    to_side = (rise(along, aside + step, deep) - rise(along, aside - step, deep)) / (2 * step)
    assert here.aside == pytest.approx(to_side, abs=2e-5 * steep)
    down = (rise(along, aside, deep + step) - rise(along, aside, deep - step)) / (2 * step)
    assert here.deep == pytest.approx(down, abs=2e-5 * steep)
