"""How a load hangs, held against two second methods.

1. scipy's SLSQP looks for the attitude and place of the load in which its balance point is lowest, with no leg longer
   than it is: no balance of forces is written down there. Fixed seeds, unequal legs.
2. A dynamic relaxation: the load as a rigid body with mass and inertia, let go from level under the hook on very stiff
   springs with damping, stepped in time until it comes to rest.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from scipy.optimize import minimize
from scipy.spatial.transform import Rotation

from calc.lifting.hanging import resting_places, springy_rest
from calc.lifting.hung_load import HungLoad, at_rest, worst_case

Array = Any


def random_case(rng: np.random.Generator) -> tuple[Array, Array, Array]:
    legs = int(rng.integers(2, 7))
    picks = rng.uniform(-1, 1, (legs, 3)) * np.array([1.5, 1.0, 0.4])
    centre = rng.uniform(-1, 1, 3) * np.array([0.8, 0.5, 0.6]) - np.array([0.0, 0.0, 0.3])
    return picks, rng.uniform(1.2, 3.5, legs), centre


def lowest(
    picks: Array, lengths: Array, centre: Array, rng: np.random.Generator, starts: int
) -> float | None:
    """Greatest depth of the balance point under the hook that SLSQP finds over all attitudes."""

    def placed(x: Array) -> tuple[Array, Array]:
        return Rotation.from_quat(x[:4] / np.linalg.norm(x[:4])).as_matrix(), x[4:]

    def height(x: Array) -> float:
        turn, shift = placed(x)
        return float((turn @ centre + shift)[2])

    def slack(x: Array) -> Array:
        turn, shift = placed(x)
        return lengths**2 - ((picks @ turn.T + shift) ** 2).sum(axis=1)

    best: float | None = None
    for _ in range(starts):
        start = np.r_[rng.normal(size=4), 0.3 * rng.normal(size=3)]
        found = minimize(
            height,
            start,
            method="SLSQP",
            constraints=[{"type": "ineq", "fun": slack}],
            options={"maxiter": 300, "ftol": 1e-12},
        )
        if (
            found.success
            and slack(found.x).min() > -1e-6 * max(lengths) ** 2
            and (best is None or -found.fun > best)
        ):
            best = -float(found.fun)
    return best


def as_points(picks: Array) -> list[tuple[float, float, float]]:
    return [(float(x), float(y), float(z)) for x, y, z in picks]


def test_depth_against_a_search_over_all_attitudes() -> None:
    rng = np.random.default_rng(20260)
    compared = 0
    for _ in range(200):
        picks, lengths, centre = random_case(rng)
        rests = resting_places(as_points(picks), lengths.tolist(), tuple(centre.tolist()))
        best = lowest(picks, lengths, centre, rng, starts=4)
        if not rests:
            assert best is None
            continue
        if best is None or abs(best - rests[0].depth_m) > 1e-6:
            again = lowest(picks, lengths, centre, rng, starts=60)
            best = max(v for v in (best, again, -1.0) if v is not None)
        assert rests[0].depth_m == pytest.approx(best, abs=1e-6)
        compared += 1
    assert compared > 180


def let_down(picks: Array, lengths: Array, centre: Array, stiffness: float) -> tuple[Array, Array]:
    """Drop the load gently on springs: returns leg pulls for a weight of 1 and the depth. Hook at the origin."""
    turn = np.eye(3)
    place = np.array([0.0, 0.0, -min(lengths) * 0.5])
    velocity, spin = np.zeros(3), np.zeros(3)
    arms = picks - centre
    inertia = max(float((arms**2).sum(axis=1).mean()), 0.05)
    step = 0.4 * np.sqrt(1.0 / (stiffness * len(picks) * (1 + (arms**2).sum(axis=1).max() / inertia)))
    pulls = np.zeros(len(lengths))
    quiet = 0
    for _ in range(400_000):
        world = arms @ turn.T
        legs = -(place + world)
        reach = np.sqrt((legs**2).sum(axis=1))
        pulls = np.maximum(stiffness * (reach - lengths), 0.0)
        forces = legs / reach[:, None] * pulls[:, None]
        force = forces.sum(axis=0) - np.array([0.0, 0.0, 1.0])
        moment = np.cross(world, forces).sum(axis=0)
        if np.abs(force).max() < 1e-6 and np.abs(moment).max() < 1e-6 and np.abs(velocity).max() < 1e-5:
            quiet += 1
            if quiet > 50:
                break
        velocity = (velocity + step * force) * (1 - 0.6 * step)
        spin = (spin + step * moment / inertia) * (1 - 0.6 * step)
        place = place + step * velocity
        turn = Rotation.from_rotvec(step * spin).as_matrix() @ turn
    return pulls, -place[2]


def even_cases() -> list[tuple[str, list[list[float]], list[float], list[float]]]:
    square = [[1.1, 0.9, 0.0], [-1.1, 0.9, 0.0], [-1.1, -0.9, 0.0], [1.1, -0.9, 0.0]]
    return [
        ("two uneven legs", [[1.0, 0.0, 0.1], [-0.9, 0.0, 0.0]], [2.1, 1.7], [0.2, 0.0, -0.5]),
        ("two legs, balance point to one side", [[1.0, 0.0, 0.0], [-1.0, 0.0, 0.0]], [2.0, 1.9], [0.1, 0.3, -0.5]),
        ("three legs", [[0.0, 0.0, 0.6], [0.0, 0.46, 0.6], [0.97, 0.23, 0.69]], [1.07, 1.09, 1.16], [0.33, 0.21, 0.25]),
        ("four legs, one short", square, [2.3, 2.3, 2.3, 2.2], [0.1, -0.05, -0.4]),
        ("one leg carries all", [[1.0, 0.0, 0.0], [-1.0, 0.0, 0.0]], [2.0, 3.6], [0.9, 0.0, -0.6]),
    ]  # fmt: skip


@pytest.mark.parametrize("case", even_cases(), ids=lambda case: case[0])
def test_pulls_against_a_load_let_down_on_stiff_springs(
    case: tuple[str, list[list[float]], list[float], list[float]],
) -> None:
    _, picks, lengths, centre = case
    points, middle = as_points(picks), (centre[0], centre[1], centre[2])
    upright = [rest for rest in resting_places(points, lengths, middle) if rest.hook_is_over(points, middle)]
    stiffness = 1000.0
    pulls, depth = let_down(np.array(picks), np.array(lengths), np.array(centre), stiffness)
    # The springs give by 1/1000 of a metre for the whole weight: pulls agree to that order, and to 1e-4 with the
    # handbook's own springy legs, which know nothing of time.
    assert upright[0].depth_m == pytest.approx(depth, abs=4e-3)
    assert list(upright[0].tensions_n(1.0, lengths)) == pytest.approx(pulls.tolist(), abs=0.04)
    springy = springy_rest(points, lengths, middle, 1.0, [stiffness] * len(lengths), upright[0].hook)
    assert springy is not None
    assert list(springy.tensions_n) == pytest.approx(pulls.tolist(), abs=2e-4)


def pulls_on_three(picks: Array, lengths: Array, centre: Array, weight: float) -> Array:
    """Pulls in three tight legs from where a line from the hook through the balance point cuts the plane of the picks: the place
    there between the picks (barycentric) is how they share, along each leg's own way.
    """
    along = picks[1:] - picks[0]
    squares = ((picks[1:] - picks[0]) ** 2).sum(axis=1) - lengths[1:] ** 2 + lengths[0] ** 2
    foot = picks[0] + np.linalg.solve(2 * along @ along.T, squares) @ along
    normal = np.cross(along[0], along[1])
    normal = normal / np.linalg.norm(normal) * np.sign(normal[2])
    hook = foot + normal * np.sqrt(lengths[0] ** 2 - ((foot - picks[0]) ** 2).sum())
    cut = hook + (centre - hook) * (normal @ (picks[0] - hook)) / (normal @ (centre - hook))
    shares = np.linalg.solve(np.vstack([picks.T[:2], np.ones(3)]), np.r_[cut[:2], 1.0])
    return np.asarray(weight * shares * lengths / np.linalg.norm(hook - cut))


@pytest.mark.parametrize("seed", range(8))
def test_balance_point_within_its_tolerance_on_three_picks(seed: int) -> None:
    """Wherever within the tolerance the balance point is, no leg of three pulls more than the worst of the sheet says; and as
    typed, each pulls what the cut through the picks says.
    """
    random = np.random.default_rng(seed)
    turn = random.uniform(0, 2 * np.pi / 3) + np.array([0.0, 2.1, 4.2]) + random.uniform(-0.3, 0.3, 3)
    out = random.uniform(0.8, 1.4, 3)
    picks = np.column_stack([out * np.cos(turn), out * np.sin(turn), random.uniform(-0.1, 0.1, 3)])
    lengths, centre, off = random.uniform(2.2, 2.4, 3), np.array([0.05, -0.05, -0.4]), 0.12
    load = HungLoad(
        ("a", "b", "c"),
        tuple((float(x), float(y), float(z)) for x, y, z in picks),
        tuple(float(one) for one in lengths),
        (None, None, None),
        (0.05, -0.05, -0.4),
        9_000.0,
    )
    typed = at_rest(load, load.upright_places()[0])
    assert typed.tensions_n == pytest.approx(pulls_on_three(picks, lengths, centre, 9_000.0), rel=1e-6)
    worst = worst_case(load, off, 0.0005).pulls_n
    assert worst is not None
    for _ in range(200):
        moved = centre + random.uniform(-off, off, 3)
        assert (pulls_on_three(picks, lengths, moved, 9_000.0) <= np.array(worst) * (1 + 1e-6)).all()
