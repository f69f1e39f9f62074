"""Tripods, shear legs and spreaders as frames in space, by PyNite; pressed members by the roots of Euler's own equation."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from Pynite import FEModel3D

from calc.lifting.three_legs import Pull, ShearLegs, Tripod

COMBO = "Combo 1"
Place = tuple[float, float, float]


def truss(places: dict[str, Place], bars: tuple[tuple[str, str], ...], force: Place) -> Any:
    """Bars that meet at `head`, their other ends held in place; a force [N] at the head, z up."""
    model = FEModel3D()
    model.add_material("steel", 200e9, 80e9, 0.3, 1e-9)
    model.add_section("thin", 1e-2, 1e-12, 1e-12, 1e-12)
    for name, place in places.items():
        model.add_node(name, *place)
        held = name != "head"
        model.def_support(name, held, held, held, True, True, True)
    for start, end in bars:
        model.add_member(start, start, end, "steel", "thin")
        model.def_releases(
            start, False, False, False, False, True, True, False, False, False, False, True, True
        )
    for axis, part in zip(("FX", "FY", "FZ"), force, strict=True):
        model.add_node_load("head", axis, part)
    model.analyze(check_statics=False)
    return model


@pytest.mark.parametrize(("leg", "feet"), [(3.0, 2.0), (4.0, 5.0)])
@pytest.mark.parametrize("level", [0.0, 60.0, 300.0])
def test_tripod(leg: float, feet: float, level: float) -> None:
    shape = Tripod(leg, feet)
    turns = {name: 2 * math.pi * number / 3 for number, name in enumerate("abc")}
    places: dict[str, Place] = {
        name: (shape.reach_m * math.cos(turn), shape.reach_m * math.sin(turn), 0.0)
        for name, turn in turns.items()
    }
    places["head"] = (0.0, 0.0, shape.head_m)
    model = truss(places, (("a", "head"), ("b", "head"), ("c", "head")), (level, 0.0, -1000.0))
    pressed = model.members["a"].max_axial(COMBO)
    assert shape.leg_n(Pull(1000.0, level)) == pytest.approx(pressed, rel=1e-4)
    pushes = -model.nodes["a"].RxnFX[COMBO]
    assert shape.spread_n(pressed) == pytest.approx(pushes, rel=1e-4)
    # A leg lifts, away from which the hoist pulls, at the level force that tips it.
    tips = 1000.0 * shape.tips_at()
    lifted = truss(places, (("a", "head"), ("b", "head"), ("c", "head")), (-tips, 0.0, -1000.0))
    assert lifted.members["a"].max_axial(COMBO) == pytest.approx(0.0, abs=0.5)


@pytest.mark.parametrize("level", [0.0, 60.0])
def test_shear_legs(level: float) -> None:
    shape = ShearLegs(5.0, 2.4, 1.1, 4.0)
    places: dict[str, Place] = {
        "left": (0.0, -1.2, 0.0),
        "right": (0.0, 1.2, 0.0),
        "anchor": (-4.0, 0.0, 0.0),
        "head": (1.1, 0.0, shape.head_m),
    }
    bars = (("left", "head"), ("right", "head"), ("anchor", "head"))
    model = truss(places, bars, (level, level, -1000.0))
    pull = Pull(1000.0, level)
    assert shape.stay_n(pull) == pytest.approx(-model.members["anchor"].min_axial(COMBO), rel=1e-4)
    assert shape.leg_n(pull) == pytest.approx(model.members["right"].max_axial(COMBO), rel=1e-3)
    still = truss(places, bars, (0.0, 0.0, -1000.0))
    one = shape.leg_n(Pull(1000.0, 0.0))
    assert shape.spread_n(one) == pytest.approx(abs(still.nodes["right"].RxnFY[COMBO]), rel=1e-4)
    backs = abs(still.nodes["left"].RxnFX[COMBO] + still.nodes["right"].RxnFX[COMBO])
    assert shape.back_n(Pull(1000.0, 0.0)) == pytest.approx(backs, rel=1e-4)
    foot = still.nodes["right"]
    rubs = math.hypot(foot.RxnFX[COMBO], foot.RxnFY[COMBO]) / foot.RxnFZ[COMBO]
    assert shape.slides_over(tied=False) == pytest.approx(rubs, rel=1e-4)


@pytest.mark.parametrize("degrees", [30.0, 45.0, 60.0])
def test_spreader(degrees: float) -> None:
    """Two slings and a bar that meet in hinges: the bar is pressed by W / (2 tan b)."""
    high = 1.5 * math.tan(math.radians(degrees))
    model = FEModel3D()
    model.add_material("steel", 200e9, 80e9, 0.3, 1e-9)
    model.add_section("thin", 1e-2, 1e-12, 1e-12, 1e-12)
    for name, place in {"left": (-1.5, 0.0), "right": (1.5, 0.0), "hook": (0.0, high)}.items():
        model.add_node(name, *place, 0.0)
        model.def_support(name, name == "hook", name == "hook", True, True, True, True)
    for name, start, end in (("bar", "left", "right"), ("one", "left", "hook"), ("two", "right", "hook")):
        model.add_member(name, start, end, "steel", "thin")
        model.def_releases(
            name, False, False, False, False, True, True, False, False, False, False, True, True
        )
    for end in ("left", "right"):
        model.add_node_load(end, "FY", -500.0)
    model.analyze(check_statics=False)
    assert model.members["bar"].max_axial(COMBO) == pytest.approx(
        500.0 / math.tan(math.radians(degrees)), rel=1e-4
    )


def test_the_bolt_at_the_head_never_bends_or_shears_harder() -> None:
    """Three legs press a bolt up, each leaning its own way, and the load hangs plumb from it between the first two and between the
    last two, so that all balances. Cut after cut along the bolt, the bending is never over the greatest thrust on the arm
    from leg to leg, nor the shear over two such thrusts, as HeadPin has it.
    """
    random = np.random.default_rng(7)
    for _ in range(1000):
        lean = random.uniform(-1.0, 1.0)
        legs = np.column_stack([(lean, -2.0 * lean, lean), random.uniform(0.0, 3.0, 3)])
        legs /= np.linalg.norm(legs, axis=1).max()
        hung = np.array([random.uniform(0.0, 1.0), random.uniform(1.0, 2.0)])
        balance = np.array([[1.0, 1.0], hung])
        loads = np.linalg.solve(balance, -np.array([legs.sum(axis=0), legs[1] + 2.0 * legs[2]]))
        if loads[:, 1].max() > 0.0:
            continue
        places = np.array([0.0, 1.0, 2.0, *hung])
        forces = np.vstack([legs, loads])
        cuts = np.sort(np.concatenate([places - 1e-9, places + 1e-9, np.linspace(0.0, 2.0, 41)]))
        before = (cuts[:, None] - places[None, :]) * (places[None, :] < cuts[:, None])
        bends = np.linalg.norm(before @ forces, axis=1)
        shears = np.linalg.norm((before > 0).astype(float) @ forces, axis=1)
        worst_leg = np.linalg.norm(legs, axis=1).max()
        assert bends.max() <= worst_leg * (1 + 1e-6)
        assert shears.max() <= 2 * worst_leg * (1 + 1e-6)
