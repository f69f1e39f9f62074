"""The formulas of the explaining pages against second methods: sums, searches and series instead of closed forms."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq
from scipy.special import jn_zeros

from build_scripts.lessons.bent_parts import (
    EAR_OVER_PIN,
    JAW_OVER_PIN,
    HookShape,
    bent_over_pulled,
    example_eyebolt,
    hoist_side_pull,
    hook_shapes,
    pin_bending_pa,
)
from build_scripts.lessons.chain_strength import (
    GRADES,
    SET_AT_PROOF,
    least_elongation,
    pull_for_set_n,
    stretch_model,
)
from build_scripts.lessons.steel_states import (
    AS_FORGED,
    bend_strain,
    chain_lifts,
    crack_depth_ratio,
    curve_through,
    fatigue_limit_mpa,
    hydrogen_hours,
    strength_after_bath_pa,
)
from build_scripts.lessons.strength import drop_peak_n, factor_bites
from calc.heating.tempering import tempered_steel


@pytest.mark.parametrize("grade", GRADES)
def test_the_stretch_model_goes_through_its_points_and_its_work_is_the_area(grade: str) -> None:
    model = stretch_model(grade)
    assert model.stretch(0.0) == 0.0
    assert model.lasting(model.proof_n) == pytest.approx(SET_AT_PROOF)
    assert model.stretch(model.break_n) == pytest.approx(least_elongation(grade))
    assert model.lasting(pull_for_set_n(model, 0.01)) == pytest.approx(0.01)
    pulls = np.linspace(0.0, model.break_n, 20_001)
    stretches = np.array([model.stretch(float(pull)) for pull in pulls])
    area = float(np.trapezoid(pulls, stretches))
    assert model.energy_j_per_m(model.break_n) == pytest.approx(area, rel=1e-5)


@pytest.mark.parametrize(
    ("load_n", "fall_m"), [(2000.0, 0.0), (4448.0, 0.1), (4448.0, 0.3048), (9000.0, 0.02)]
)
def test_a_drop_is_stopped_where_the_work_is_used_up(load_n: float, fall_m: float) -> None:
    model, sling = stretch_model("80"), 1.8288

    def left(pull: float) -> float:
        taken, _ = quad(lambda part: part * (1 / model.stiffness_n + _slope(part)), 0.0, pull, limit=200)
        return sling * float(taken) - load_n * (fall_m + sling * model.stretch(pull))

    def _slope(pull: float) -> float:
        return float(
            model.plastic_at_break
            * model.exponent
            * pull ** (model.exponent - 1)
            / model.break_n**model.exponent
        )

    # Without a fall the work balance also holds at nought: the search starts above the load.
    found = brentq(left, 1.01 * load_n, 1.2 * model.break_n)
    assert drop_peak_n(model, load_n, fall_m, sling) == pytest.approx(found, rel=1e-6)


def test_a_load_let_go_without_a_fall_pulls_double_while_the_chain_is_a_spring() -> None:
    assert drop_peak_n(stretch_model("80"), 1000.0, 0.0, 2.0) == pytest.approx(2000.0, rel=1e-4)


def test_what_a_bad_day_takes_is_its_bites_one_after_another() -> None:
    product = math.prod(bite for _, bite in factor_bites())
    assert 4.0 / product == pytest.approx(
        4.0 / 1.25 * 0.81 / 1.1 * math.sin(math.radians(40)) / math.sin(math.radians(45))
    )


@given(st.floats(0.3, 4.0))
def test_a_bar_bent_at_its_foot(height: float) -> None:
    diameter, force = 0.01, 100.0
    inertia = math.pi * diameter**4 / 64
    bent = force * height * diameter * (diameter / 2) / inertia
    pulled = force / (math.pi * diameter**2 / 4)
    assert bent_over_pulled(height) == pytest.approx(bent / pulled)


def test_the_eyebolt_by_moments() -> None:
    bolt = example_eyebolt()
    for angle in (0.0, 30.0, 45.0, 90.0):
        across = bolt.rating_n * math.sin(math.radians(angle))
        moment = across * bolt.eye_height_m
        inertia = math.pi * (bolt.shank_m / 2) ** 4 / 4
        along = bolt.rating_n * math.cos(math.radians(angle)) / bolt.thread_area_m2
        assert bolt.without_shoulder_pa(angle) == pytest.approx(along + moment * bolt.shank_m / 2 / inertia)
        # About the shoulder's edge the pull in the shank holds what tips the eye.
        prop = moment / bolt.shoulder_radius_m
        assert bolt.with_shoulder_pa(angle) == pytest.approx(along + prop / bolt.thread_area_m2)


@pytest.mark.parametrize("loose", [False, True])
def test_the_pin_as_a_beam_summed_up_slice_by_slice(loose: bool) -> None:
    load, pin = 28_900.0, 0.01905
    jaw, ear = JAW_OVER_PIN * pin, EAR_OVER_PIN * pin
    # Tight: each lug bears on the pin like a triangle, most at the jaw; loose: at the middle of each lug.
    bearing = ear / 3 if not loose else ear / 2
    half = load / 2
    slices = 20_000
    if loose:
        moment = half * (bearing + jaw / 2)
    else:
        spread = sum(
            load / jaw * (jaw / 2 / slices) * (step + 0.5) * jaw / 2 / slices for step in range(slices)
        )
        moment = half * (bearing + jaw / 2) - spread
    inertia = math.pi * pin**4 / 64
    assert pin_bending_pa(load, pin, pin, loose) == pytest.approx(moment * pin / 2 / inertia, rel=1e-6)


def test_the_hook_sections_balance_the_load() -> None:
    for shape in hook_shapes():
        section = shape.section
        depth = section.outer_radius_m - section.inner_radius_m

        def width(radius: float, shape: HookShape = shape, depth: float = depth) -> float:
            inner, outer = shape.inner_width_m, shape.outer_width_m
            start = shape.section.inner_radius_m
            if inner:
                return inner + (outer - inner) * (radius - start) / depth
            return 2 * math.sqrt(max(0.0, depth**2 / 4 - (radius - start - depth / 2) ** 2))

        ends = (section.inner_radius_m, section.outer_radius_m)
        area, _ = quad(width, *ends)
        assert area == pytest.approx(math.pi / 4 * 0.035**2, rel=1e-6)
        pull, _ = quad(lambda r, w=width, s=shape: s.times_mean(r) * w(r), *ends)
        moment, _ = quad(lambda r, w=width, s=shape: s.times_mean(r) * w(r) * r, *ends)
        assert pull == pytest.approx(area, rel=1e-6)
        # No moment about the line of the load, the centre of the bend.
        assert moment == pytest.approx(0.0, abs=1e-9)


@given(st.floats(0.5, 60.0), st.floats(0.1, 60.0))
def test_a_swinging_load_pulls_as_its_pendulum_does(angle: float, length: float) -> None:
    pull = hoist_side_pull(angle)
    assert math.hypot(1.0, pull.sideways) == pytest.approx(pull.chain)
    assert pull.swinging == pytest.approx(1 + 2 * (1 - math.cos(math.radians(angle))))


def test_a_swinging_load_by_steps_of_time() -> None:
    start, length, g = math.radians(30.0), 3.0, 9.80665
    way = solve_ivp(
        lambda t, y: [y[1], -g / length * math.sin(y[0])], (0.0, 2.5), [start, 0.0], rtol=1e-9, max_step=0.01
    )
    tension = np.cos(way.y[0]) + length * way.y[1] ** 2 / g
    assert hoist_side_pull(30.0).swinging == pytest.approx(float(tension.max()), rel=1e-4)


@given(st.floats(0.5, 50.0))
def test_the_outer_skin_of_a_bend_by_its_arcs(ratio: float) -> None:
    middle, outside = ratio + 0.5, ratio + 1.0
    assert bend_strain(ratio) == pytest.approx((outside - middle) / middle)


def test_hydrogen_leaves_a_bar_as_the_series_says() -> None:
    radius, diffusivity = 0.005, 1e-11
    zeros = jn_zeros(0, 200)
    seconds = hydrogen_hours(2 * radius, diffusivity) * 3600
    left = float(np.sum(4 / zeros**2 * np.exp(-(zeros**2) * diffusivity * seconds / radius**2)))
    assert left == pytest.approx(0.12, abs=0.005)


@given(st.floats(-80.0, 90.0), st.floats(5.0, 105.0))
def test_a_notch_curve_goes_through_its_point_and_rises(at: float, energy: float) -> None:
    curve = curve_through(at, energy)
    assert curve.energy_j(at) == pytest.approx(energy)
    assert curve.energy_j(at + 5) > curve.energy_j(at)


@given(st.floats(400.0, 1400.0))
def test_a_forged_skin_bears_the_same_whatever_the_steel(tensile: float) -> None:
    assert fatigue_limit_mpa(tensile, AS_FORGED) == pytest.approx(140.0, abs=1.5)


def test_half_the_load_lasts_eight_times_as_long() -> None:
    assert chain_lifts(50.0) / chain_lifts(100.0) == pytest.approx(8.0)


@given(st.floats(1.0, 4.0))
def test_a_crack_that_lived_through_the_proof(ratio: float) -> None:
    # Same toughness: stress times root of depth is equal at both breaks.
    depth = crack_depth_ratio(ratio)
    assert ratio * math.sqrt(1.0) == pytest.approx(1.0 * math.sqrt(depth))


@pytest.mark.parametrize("tempered", [205.0, 315.0, 425.0, 540.0])
def test_a_dip_in_zinc_as_a_second_temper(tempered: float) -> None:
    # Hollomon and Jaffe by hand: the hours at 450 C that equal the first temper, then five minutes more.
    first = (tempered + 273.15) * 20.0
    hours = 10 ** (first / 723.15 - 20.0) + 5.0 / 60.0
    parameter = 723.15 * (20.0 + math.log10(hours)) / 1000
    before, after = strength_after_bath_pa(tempered)
    expected = tempered_steel("4140").strength_pa(parameter)
    assert expected is not None
    assert after == pytest.approx(expected, rel=1e-6)
    assert after <= before
