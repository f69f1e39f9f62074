"""straighten beside a section cut into layers, whose moment and bending are summed up and integrated by scipy; and beside the
closed form of the travel of a rectangle.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest
from scipy.integrate import quad, simpson
from scipy.optimize import brentq

from calc.pulling.plastic_bending import (
    RECTANGLE,
    ROUND_BAR,
    PressedBar,
    SectionShape,
    flat_second_moment_m4,
    round_second_moment_m4,
)

YIELD, MODULUS, SPAN = 250e6, 200e9, 1.0


def flat(width: float = 0.15, height: float = 0.012) -> tuple[PressedBar, Callable[[float], float]]:
    bar = PressedBar(RECTANGLE, height, flat_second_moment_m4(width, height), SPAN, YIELD, MODULUS)
    return bar, lambda _y: width


def rod(diameter: float = 0.03) -> tuple[PressedBar, Callable[[float], float]]:
    bar = PressedBar(ROUND_BAR, diameter, round_second_moment_m4(diameter), SPAN, YIELD, MODULUS)
    return bar, lambda y: 2 * math.sqrt(max(0.0, diameter**2 / 4 - y**2))


def layered_moment(bar: PressedBar, width: Callable[[float], float], curvature: float) -> float:
    """Moment [N m] at a curvature [1/m], summed over layers."""
    count = 3000
    edges = np.linspace(0.0, bar.height_m / 2, count + 1)
    middles = (edges[1:] + edges[:-1]) / 2
    stress = np.minimum(MODULUS * curvature * middles, YIELD)
    widths = np.array([width(y) for y in middles])
    return float(2 * np.sum(stress * middles * widths) * (edges[1] - edges[0]))


def integrated_travel(bar: PressedBar, width: Callable[[float], float], force_n: float) -> float:
    """Movement of the middle [m] under a force [N]: the curvature at each place times its distance from the support."""
    moments = np.geomspace(1.0, 60.0, 1500)
    first = 2 * YIELD / (MODULUS * bar.height_m)
    told = np.array([layered_moment(bar, width, first * one) for one in moments])

    def bends(x: float) -> float:
        moment = force_n * x / 2
        return float(np.interp(moment, told, first * moments))

    yields_at = 2 * bar.yield_moment_nm / force_n
    elastic = yields_at**3 * force_n / 6 / (MODULUS * bar.second_moment_m4)
    places = np.linspace(yields_at, SPAN / 2, 20_001)
    return float(elastic + simpson([bends(x) * x for x in places], x=places))


@pytest.mark.parametrize(("made", "share"), [(flat, 1.1), (flat, 1.4), (rod, 1.1), (rod, 1.5)])
def test_travel_and_what_stays_beside_a_layered_section(
    made: Callable[[], tuple[PressedBar, Callable[[float], float]]], share: float
) -> None:
    bar, width = made()
    travel_m = integrated_travel(bar, width, share * bar.first_force_n)
    core = bar.shape.core_at_moment(share)
    assert bar.shape.travel(core) * bar.first_travel_m == pytest.approx(travel_m, rel=3e-4)
    stays_m = travel_m - share * bar.first_travel_m
    assert bar.stays_after_m(travel_m) == pytest.approx(stays_m, abs=3e-4 * bar.first_travel_m)
    assert bar.springs_back_m(stays_m) == pytest.approx(share * bar.first_travel_m, rel=2e-3)


@pytest.mark.parametrize("share", [1.0, 1.05, 1.1, 1.25, 1.4, 1.5])
def test_travel_of_a_rectangle_beside_its_closed_form(share: float) -> None:
    wanted = (5 - (3 + share) * math.sqrt(3 - 2 * share)) / share**2
    assert RECTANGLE.travel(RECTANGLE.core_at_moment(share)) == pytest.approx(wanted, rel=1e-9)


def test_the_round_bar_beside_an_adaptive_rule() -> None:
    def moment(core: float) -> float:
        inner = quad(lambda y: y / core * y * math.sqrt(1 - y**2), 0, core)[0] if core else 0.0
        outer = quad(lambda y: y * math.sqrt(1 - y**2), core, 1)[0]
        return float(4 * (inner + outer) / (math.pi / 4))

    for core in (0.0, 0.2, 0.5, 0.9, 1.0):
        assert ROUND_BAR.moment(core) == pytest.approx(moment(core), rel=1e-7)

    def slope(core: float) -> float:
        """How fast the moment falls with the core, from the inner part alone: the ends cancel."""
        return float(4 / (math.pi / 4) * quad(lambda y: y**2 * math.sqrt(1 - y**2), 0, core)[0] / core**2)

    for core in (0.0, 0.3, 0.8):
        wanted = quad(lambda one: moment(one) * slope(one) / one, max(core, 1e-6), 1, limit=200)[0]
        assert ROUND_BAR.bend_integral(core) == pytest.approx(wanted, rel=1e-5)


@pytest.mark.parametrize("shape", [RECTANGLE, ROUND_BAR])
def test_the_core_is_found_again(shape: SectionShape) -> None:
    for core in (0.02, 0.3, 0.7, 0.99):
        for of, found in (
            (shape.moment, shape.core_at_moment),
            (shape.travel, shape.core_at_travel),
            (shape.stays, shape.core_that_leaves),
        ):
            assert found(of(core)) == pytest.approx(core, rel=1e-6)
    assert shape.core_that_leaves(5.0) == 0.0
    root = brentq(lambda one: shape.stays(one) - 0.2, 0.0, 1.0)
    assert shape.core_that_leaves(0.2) == pytest.approx(root, rel=1e-6)
