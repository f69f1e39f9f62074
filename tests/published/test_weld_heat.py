"""Published welding-heat answers, and printed limits. Most coefficients of the hardness fits are from memory: the fits
are held against one another here and in tests/unit, which is said beside each check."""

from __future__ import annotations

import math

import pytest

from calc.heating.hardening import (
    carbon_equivalent_pct,
    in_range,
    martensite_duren_hv,
    martensite_maynier_hv,
    martensite_yurioka_hv,
    steel,
    steel_names,
    weldability,
    zone_yurioka_hv,
)
from calc.heating.moving_heat import MovingArc, surface_distance_m
from calc.heating.softening import softened_beyond_m
from calc.heating.weld_cooling import (
    adams_distance_m,
    cooling_time_thick_s,
    cooling_time_thin_s,
    heat_input_j_per_m,
    transition_thickness_m,
    travel_for_bead_m_per_s,
)


@pytest.mark.parametrize(
    ("heat", "start", "peak_degc", "printed_mm"),
    [(720e3, 25, 730, 5.9), (720e3, 25, 430, 14.2), (720e3, 200, 430, 28.4), (1080e3, 25, 430, 21.3)],
)
def test_adams_width_examples(heat: float, start: float, peak_degc: float, printed_mm: float) -> None:
    """Welding textbook extract, width of the heat-affected zone: 5 mm plate, H 720 J/mm; printed to a tenth."""
    assert adams_distance_m(heat, 0.005, start, peak_degc) * 1e3 == pytest.approx(printed_mm, abs=0.05)


@pytest.mark.parametrize(("energy", "printed_mm_per_s"), [(9.7e9, 10.3), (2.9e9, 34.5), (14.3e9, 7.0)])
def test_travel_speed_from_energy(energy: float, printed_mm_per_s: float) -> None:
    """Kalpakjian and Schmid, Manufacturing Engineering, example 30.1: 20 V, 200 A, 0.75, 30 mm2 of bead."""
    assert travel_for_bead_m_per_s(0.75, 20, 200, 30e-6, energy) * 1e3 == pytest.approx(
        printed_mm_per_s, abs=0.05
    )


def test_heat_input_by_hand() -> None:
    """EN 1011-1, k V I / speed: 0.8 x 25 x 130 / 2.5 mm/s is 1.04 kJ/mm by hand."""
    assert heat_input_j_per_m(0.8, 25, 130, 0.0025) == pytest.approx(1.04e6)


def test_adams_is_the_far_field_of_the_moving_arc_in_thin_plate() -> None:
    """The textbook's constant is sqrt(2 pi e) = 4.13; far out the thin-plate field must approach it (0.3 % at 40 mm)."""
    heat, thickness, travel = 900e3, 0.003, 4e-3
    arc = MovingArc(heat * travel, travel, thickness, 41.0, 41.0 / 4.4e6)
    rise = heat / (4.1327 * 4.4e6 * thickness * 0.040)
    assert surface_distance_m(arc, rise) == pytest.approx(0.040, rel=0.004)
    assert math.sqrt(2 * math.pi * math.e) == pytest.approx(4.13, abs=0.005)


def test_far_field_of_the_moving_arc_in_a_thick_body() -> None:
    """2 H / (pi e rho c r2) must be reached from below as the radius grows (derived from Rosenthal's thick body)."""
    heat, travel = 900e3, 4e-3
    arc = MovingArc(heat * travel, travel, 2.0, 41.0, 41.0 / 4.4e6)
    ratios = []
    for radius in (0.008, 0.02, 0.08):
        rise = 2 * heat / (math.pi * math.e * 4.4e6 * radius**2)
        ratios.append(surface_distance_m(arc, rise) / radius)
    assert ratios[0] < ratios[1] < ratios[2] < 1.0
    assert ratios[2] == pytest.approx(1.0, abs=0.01)


def test_cooling_branches_meet_at_the_transition_thickness() -> None:
    """EN 1011-2, annex D (memory): Q 1 kJ/mm from 20 C turns at 14.7 mm, both branches 5.3 s; with any factors they meet."""
    assert transition_thickness_m(1e6, 20) * 1e3 == pytest.approx(14.7, abs=0.05)
    assert cooling_time_thick_s(1e6, 20) == pytest.approx(5.3, abs=0.05)
    for heat, start, thin, thick in (
        (0.7e6, -13, 1.0, 1.0),
        (1.9e6, 145, 0.67, 0.45),
        (3.1e6, 290, 0.9, 0.9),
    ):
        meet = transition_thickness_m(heat, start, thin, thick)
        assert cooling_time_thin_s(heat, meet, start, thin) == pytest.approx(
            cooling_time_thick_s(heat, start, thick), rel=1e-12
        )


@pytest.mark.parametrize(
    ("carbon_equivalent", "rating"),
    [(0.0, "excellent"), (0.35, "excellent"), (0.36, "very_good"), (0.355, "very_good"), (0.40, "very_good"), (0.41, "good"),
     (0.45, "good"), (0.46, "fair"), (0.50, "fair"), (0.501, "poor"), (1.2, "poor")],
)  # fmt: skip
def test_weldability_bands(carbon_equivalent: float, rating: str) -> None:
    """Open table of weldability by carbon equivalent; between two printed bands the worse counts."""
    assert weldability(carbon_equivalent) == rating


def test_carbon_equivalent_by_hand() -> None:
    """IIW: the middle of AISI 4140 is 0.405 + 0.875/6 + (0.95 + 0.2)/5 = 0.781."""
    middle = {"C": 0.405, "Mn": 0.875, "Si": 0.275, "Cr": 0.95, "Mo": 0.2}
    assert carbon_equivalent_pct(middle) == pytest.approx(0.7808, abs=5e-5)
    assert list(steel("4140").corners())[1]["C"] == pytest.approx(0.405)


@pytest.mark.parametrize("name", steel_names())
def test_three_martensite_fits_agree(name: str) -> None:
    """Yurioka, Duren and Maynier were found independently; over the listed steels they lie within 8 percent."""
    for corner in filter(in_range, steel(name).corners()):
        fits = (martensite_yurioka_hv(corner), martensite_duren_hv(corner), martensite_maynier_hv(corner))
        assert max(fits) / min(fits) < 1.08


def test_zone_hardness_of_a_low_carbon_steel_against_duren() -> None:
    """Duren's zone fit (memory) 2019 [C (1 - 0.5 log t) + 0.3 (CEB - C)] + 66 (1 - 0.8 log t) for C 0.16, Mn 1.4, Si 0.3
    gives 362, 297 and 233 HV at 5, 10 and 20 s; Yurioka must lie within 10 percent."""
    lean = {"C": 0.16, "Mn": 1.4, "Si": 0.3}
    hardenability = 0.16 + 0.3 / 11 + 1.4 / 8
    for seconds, printed in ((5, 362), (10, 297), (20, 233)):
        log = math.log10(seconds)
        duren = 2019 * (0.16 * (1 - 0.5 * log) + 0.3 * (hardenability - 0.16)) + 66 * (1 - 0.8 * log)
        assert duren == pytest.approx(printed, abs=1)
        assert zone_yurioka_hv(lean, seconds) == pytest.approx(duren, rel=0.10)


def test_softened_band_is_narrow() -> None:
    """Computed once by hand-written scripts with scipy from the same published formulas: 4140 tempered at 425 C, 1 kJ/mm at
    3 mm/s in a thick body loses strength no further than 1.25 mm (rule) to 2.7 mm (an hour) beyond the 720 C line."""
    arc = MovingArc(3000.0, 3e-3, 0.2, 41.0, 41.0 / 4.4e6)
    found = softened_beyond_m(arc, 20, 720, 425)
    assert found is not None
    assert found[0] * 1e3 == pytest.approx(1.25, abs=0.15)
    assert found[1] * 1e3 == pytest.approx(2.7, abs=0.35)
