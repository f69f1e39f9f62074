"""Foot and weld of a lug against stresses summed over a fine grid (numpy), welds by their instantaneous centre, pins by PyNite,
walls by searching for the weakest pattern of yield lines.
"""

from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest
from numpy.typing import NDArray
from Pynite import FEModel3D
from scipy.optimize import fsolve, minimize_scalar

from calc.lifting.lug_holding import OwnPin, Wall, pin_arm_m, wall_folds_n, wall_pull_n, wall_turn_nm
from calc.lifting.lug_strength import (
    Lug,
    foot_bending_n,
    foot_load,
    foot_shear_n,
    throat_m,
    weld_allowable_pa,
    weld_n,
)

LUG = Lug(0.021, 0.027, 0.023, 0.028, 0.031, 0.062, 0.007, 0.081, 250e6, 400e6, 482e6, 3.0)


@pytest.mark.parametrize(("lean", "out"), [(0.0, 0.0), (33.0, 0.0), (0.0, 21.0), (40.0, 13.0)])
def test_foot_on_a_grid(lean: float, out: float) -> None:
    pull = foot_load(lean, out)
    x = (np.arange(800) + 0.5) / 800 * LUG.foot_width_m - LUG.foot_width_m / 2
    y = (np.arange(800) + 0.5) / 800 * LUG.thickness_m - LUG.thickness_m / 2
    cell = x[1] - x[0], y[1] - y[0]
    area = 800 * 800 * cell[0] * cell[1]
    modulus_x = 800 * cell[1] * cell[0] * (x**2).sum() / (LUG.foot_width_m / 2)
    modulus_y = 800 * cell[0] * cell[1] * (y**2).sum() / (LUG.thickness_m / 2)
    worst = pull.along / area + LUG.height_m * (pull.in_plane / modulus_x + pull.across / modulus_y)
    assert foot_bending_n(LUG, pull) == pytest.approx(LUG.yield_pa / LUG.design_factor / worst, rel=1e-5)


def weld_points(lug: Lug, each: float) -> NDArray[np.float64]:
    """Middles of short pieces of the weld, all of about one length: both runs and, all round, both ends."""
    along = (np.arange(round(lug.weld_length_m / each)) + 0.5) * each - lug.weld_length_m / 2
    across = (np.arange(round(lug.thickness_m / each)) + 0.5) * each - lug.thickness_m / 2
    runs = [(x, side * lug.thickness_m / 2) for side in (-1, 1) for x in along]
    ends = [(side * lug.weld_length_m / 2, y) for side in (-1, 1) for y in across]
    return np.asarray(runs + (ends if lug.all_round else []), dtype=np.float64)


@pytest.mark.parametrize("around", [False, True])
@pytest.mark.parametrize(("lean", "out"), [(0.0, 0.0), (33.0, 0.0), (0.0, 21.0), (40.0, 13.0)])
def test_weld_as_a_row_of_points(lean: float, out: float, around: bool) -> None:
    pull = foot_load(lean, out)
    lug = dataclasses.replace(LUG, all_round=around)
    each = 0.00002
    runs = weld_points(lug, each)
    normal = (
        pull.along / (each * len(runs))
        + pull.in_plane * LUG.height_m * LUG.weld_length_m / 2 / (each * (runs[:, 0] ** 2).sum())
        + pull.across * LUG.height_m * LUG.thickness_m / 2 / (each * (runs[:, 1] ** 2).sum())
    )
    shear = np.hypot(pull.in_plane, pull.across) / (each * len(runs))
    allowable = 0.60 * LUG.weld_tensile_pa / (1.2 * LUG.design_factor) * throat_m(LUG.weld_leg_m)
    assert weld_n(lug, pull) == pytest.approx(allowable / np.hypot(normal, shear), rel=1e-4)


@pytest.mark.parametrize("lean", [20.0, 45.0, 70.0, 90.0])
@pytest.mark.parametrize("around", [False, True])
def test_the_elastic_method_is_never_over_the_instantaneous_centre(lean: float, around: bool) -> None:
    """A pull in the plane: the pieces turn about the centre where all forces balance, each with the load and deformation curve of
    AISC 360-10, J2-5 and J2-9 (from memory), as the tables of the AISC Manual are made. The first piece at its limit counts.
    """
    pull = foot_load(lean, 0.0)
    lug = dataclasses.replace(LUG, all_round=around)
    points = weld_points(lug, 0.001)
    # The foot presses on the wall through the weld alone, as in the tables: plane of the weld seen from the side.
    x, along, level, moment = points[:, 0], pull.along, pull.in_plane, pull.in_plane * lug.height_m

    def forces(centre: NDArray[np.float64]) -> NDArray[np.float64]:
        """Level and upright force of each piece of one unit of length and shear strength."""
        away = np.stack([x - centre[0], np.full_like(x, -centre[1])], axis=1)
        reach = np.linalg.norm(away, axis=1)
        turned = np.stack([-away[:, 1], away[:, 0]], axis=1) / reach[:, None]
        angle = np.degrees(np.arccos(np.clip(np.abs(turned[:, 0]), 0, 1)))
        most = 0.209 * (angle + 2) ** -0.32
        last = np.minimum(1.087 * (angle + 6) ** -0.65, 0.17)
        moves = reach * np.min(last / reach)
        part = np.clip(moves / most, 1e-12, None)
        part = (part * np.clip(1.9 - 0.9 * part, 0.0, None)) ** 0.3
        strong = 1 + 0.5 * np.sin(np.radians(angle)) ** 1.5
        pieces: NDArray[np.float64] = turned * (strong * part)[:, None]
        return pieces

    def unbalanced(guess: NDArray[np.float64]) -> list[float]:
        each = forces(guess[:2])
        scale = guess[2]
        return [
            each[:, 0].sum() - scale * level,
            each[:, 1].sum() - scale * along,
            100 * ((x * each[:, 1]).sum() - scale * moment),
        ]

    best = 0.0
    for start in (
        (-0.01, -0.01, 50.0),
        (-0.03, 0.02, 50.0),
        (-0.1, -0.03, 80.0),
        (0.0, -0.05, 60.0),
        (0.01, 0.02, 60.0),
    ):
        found, _, good, _ = fsolve(unbalanced, np.array(start), full_output=True)
        if good == 1 and found[2] > 0:
            best = max(best, float(found[2]))
    assert best > 0.0
    by_centre = best * 0.001 * weld_allowable_pa(lug) * throat_m(lug.weld_leg_m)
    assert weld_n(lug, pull) <= by_centre * 1.001


def test_the_middle_of_the_foot_by_stresses_in_a_strip() -> None:
    """Pull and shear together by the stress tensor's own second invariant."""
    pull = foot_load(50.0, 0.0)
    area = LUG.foot_width_m * LUG.thickness_m
    stress = np.diag([pull.along / area, 0.0, 0.0])
    stress[0, 1] = stress[1, 0] = 1.5 * pull.in_plane / area
    away = stress - np.trace(stress) / 3 * np.eye(3)
    von_mises = np.sqrt(1.5 * (away**2).sum())
    assert foot_shear_n(LUG, pull) == pytest.approx(LUG.yield_pa / LUG.design_factor / von_mises)


def test_pin_on_its_jaws_by_pynite() -> None:
    """The pin as a beam that each jaw presses evenly up and the lug evenly down: its greatest moment over half the load."""
    pin = OwnPin(0.02, 0.012, 0.028, 0.02, 300e6)
    model, load = FEModel3D(), 1000.0
    model.add_material("steel", 200e9, 80e9, 0.3, 1e-9)
    model.add_section("round", 1e-3, 1e-8, 1e-8, 1e-8)
    whole = pin.between_jaws_m + 2 * pin.jaw_m
    model.add_node("left", 0.0, 0.0, 0.0)
    model.add_node("right", whole, 0.0, 0.0)
    model.def_support("left", True, True, True, True, True, False)
    model.def_support("right", False, True, True, True, True, False)
    model.add_member("pin", "left", "right", "steel", "round")
    jaw, lug = load / 2 / pin.jaw_m, load / pin.lug_m
    for start, end, weight in (
        (0.0, pin.jaw_m, jaw),
        (whole - pin.jaw_m, whole, jaw),
        ((whole - pin.lug_m) / 2, (whole + pin.lug_m) / 2, -lug),
    ):
        model.add_member_dist_load("pin", "FY", weight, weight, start, end)
    model.analyze(check_statics=False)
    moment = max(abs(model.members["pin"].max_moment("Mz")), abs(model.members["pin"].min_moment("Mz")))
    assert moment == pytest.approx(load / 2 * pin_arm_m(pin), rel=1e-3)


WALL = Wall(0.012, 0.15, 250e6)


def mechanism_n(wall: Wall, lug: Lug, half_m: float) -> float:
    """Work of a pattern of yield lines in a wall with free edges that is pulled out by 1 along a thin lug: a roof of length L with
    hipped ends of length half_m.
    """
    per_length = wall.yield_pa * wall.thickness_m**2 / 4
    ridge = 4 / wall.span_m * lug.weld_length_m
    hips = 4 * half_m / wall.span_m + wall.span_m / half_m
    return per_length * (ridge + 2 * hips)


def test_wall_by_the_weakest_pattern_of_yield_lines() -> None:
    thin = dataclasses.replace(LUG, thickness_m=1e-9)
    found = minimize_scalar(lambda half: mechanism_n(WALL, thin, half), bounds=(0.001, 1.0), method="bounded")
    assert wall_pull_n(WALL, thin) == pytest.approx(found.fun, rel=1e-5)
    # AISC 360 K1: both edges stiff, Fy T^2 (2 L / B + 4 root(1 - t / B)), is twice that.
    assert wall_pull_n(WALL, LUG) < wall_pull_n(WALL, thin)


def test_bending_in_the_plane_is_under_its_own_pattern_of_yield_lines() -> None:
    """Half the foot drawn out and half pressed in, turning about the middle: work m (L^2 / B + 4 L) for a unit turn."""
    long, per_length = LUG.weld_length_m, WALL.yield_pa * WALL.thickness_m**2 / 4
    moment = per_length * (long**2 / WALL.span_m + 4 * long)
    thin = dataclasses.replace(LUG, thickness_m=1e-9)
    level = wall_folds_n(WALL, thin, foot_load(90.0, 0.0)) * thin.design_factor * thin.height_m
    assert 0.5 * moment < level < moment


def test_bending_across_is_under_its_own_pattern() -> None:
    """The lug turns about its line: a hinge along each side, and the wall beside it turns a little on its free edges."""
    per_length = WALL.yield_pa * WALL.thickness_m**2 / 4
    turns_more = 1 + LUG.thickness_m / (WALL.span_m - LUG.thickness_m)
    assert wall_turn_nm(WALL, LUG) < 2 * per_length * LUG.weld_length_m * turns_more
    assert wall_turn_nm(WALL, LUG) == pytest.approx(2 * per_length * LUG.weld_length_m)


def test_a_pull_that_leans_both_ways_folds_the_wall_by_the_sum_of_its_parts() -> None:
    """Straight 4 M / L beside the pull along the lug, and the moment across, each over what the wall has against it."""
    lean, out = math.radians(30.0), math.radians(20.0)
    pull = foot_load(30.0, 20.0)
    # The parts of a pull of 1: out of the plane sin(out), of the rest cos(lean) along the lug and sin(lean) level in its plane.
    along, level, across = (math.cos(out) * math.cos(lean), math.cos(out) * math.sin(lean), math.sin(out))
    straight = along + 4 * level * LUG.height_m / LUG.weld_length_m
    part = straight / wall_pull_n(WALL, LUG) + across * LUG.height_m / wall_turn_nm(WALL, LUG)
    assert (pull.along, pull.in_plane, pull.across) == pytest.approx((along, level, across))
    assert wall_folds_n(WALL, LUG, pull) == pytest.approx(1 / (part * LUG.design_factor))
