"""Foot and weld of a lug against stresses summed over a fine grid (numpy): a second road to the section moduli."""

from __future__ import annotations

import numpy as np
import pytest

from calc.lifting.lug_strength import Lug, foot_bending_n, foot_load, throat_m, weld_n

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


@pytest.mark.parametrize(("lean", "out"), [(0.0, 0.0), (33.0, 0.0), (0.0, 21.0), (40.0, 13.0)])
def test_weld_as_a_row_of_points(lean: float, out: float) -> None:
    pull = foot_load(lean, out)
    runs = np.array(
        [
            (x, side * LUG.thickness_m / 2)
            for side in (-1, 1)
            for x in (np.arange(4000) + 0.5) / 4000 * LUG.weld_length_m
        ]
    )
    runs[:, 0] -= LUG.weld_length_m / 2
    each = LUG.weld_length_m / 4000
    normal = (
        pull.along / (each * len(runs))
        + pull.in_plane * LUG.height_m * LUG.weld_length_m / 2 / (each * (runs[:, 0] ** 2).sum())
        + pull.across * LUG.height_m * LUG.thickness_m / 2 / (each * (runs[:, 1] ** 2).sum())
    )
    shear = np.hypot(pull.in_plane, pull.across) / (each * len(runs))
    allowable = 0.60 * LUG.weld_tensile_pa / (1.2 * LUG.design_factor) * throat_m(LUG.weld_leg_m)
    assert weld_n(LUG, pull) == pytest.approx(allowable / np.hypot(normal, shear), rel=1e-5)
