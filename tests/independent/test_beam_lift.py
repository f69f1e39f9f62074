"""Beams against scikit-fem, a finite-element library (cubic Hermite beam elements, exact at their nodes), and section
properties against sums over a fine grid (numpy); the range of small slopes against the exact curve of a bent rod (scipy).
"""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from scipy.optimize import brentq
from skfem import Basis, BilinearForm, ElementLineHermite, LinearForm, MeshLine, condense, solve
from skfem.helpers import dd, ddot

from calc.lifting.beams import Beam, Ends, box_tube, i_section, rectangle, round_tube


@pytest.mark.parametrize("ends", ["simple", "fixed", "cantilever"])
@pytest.mark.parametrize(("place", "even"), [(1.25, 0.0), (2.75, 130.0), (0.5, 900.0)])
def test_sag_against_beam_elements(ends: Ends, place: float, even: float) -> None:
    span, load, stiffness = 4.0, 2300.0, 4.1e5
    mesh = MeshLine(np.linspace(0.0, span, 33))
    basis = Basis(mesh, ElementLineHermite())
    form: Any = BilinearForm(lambda u, v, _w: stiffness * ddot(dd(u), dd(v)))
    line: Any = LinearForm(lambda v, _w: even * v)
    matrix, vector = form.assemble(basis), line.assemble(basis)
    sags = basis.nodal_dofs[0]
    slopes = basis.nodal_dofs[1]
    order = np.argsort(mesh.p[0])
    nodes = mesh.p[0][order]
    vector[sags[order][round(place / span * 32)]] += load
    first, last = order[0], order[-1]
    held = {
        "simple": [sags[first], sags[last]],
        "fixed": [sags[first], slopes[first], sags[last], slopes[last]],
        "cantilever": [sags[first], slopes[first]],
    }[ends]
    found = solve(*condense(matrix, vector, D=np.array(held)))[sags][order]
    beam = Beam(span, ends, load, place, even, stiffness)
    assert [beam.sag_m(float(x)) for x in nodes] == pytest.approx(found.tolist(), rel=1e-6, abs=1e-12)
    assert beam.greatest_sag()[1] == pytest.approx(float(found.max()), rel=3e-3)


def grid_second_moment(inside: Any, width: float, depth: float) -> float:
    n = 2000
    x = (np.arange(n) + 0.5) / n * width - width / 2
    y = (np.arange(n) + 0.5) / n * depth - depth / 2
    xx, yy = np.meshgrid(x, y)
    return float((np.where(inside(xx, yy), yy**2, 0.0)).sum() * width * depth / n**2)


def test_sections_on_a_grid() -> None:
    assert rectangle(0.06, 0.11).second_moment_m4 == pytest.approx(
        grid_second_moment(lambda x, y: x == x, 0.06, 0.11), rel=1e-5
    )
    tube = grid_second_moment(lambda x, y: (np.hypot(x, y) < 0.05) & (np.hypot(x, y) > 0.04), 0.1, 0.1)
    assert round_tube(0.1, 0.01).second_moment_m4 == pytest.approx(tube, rel=1e-3)
    box = grid_second_moment(lambda x, y: (abs(x) > 0.03) | (abs(y) > 0.05), 0.08, 0.12)
    assert box_tube(0.08, 0.12, 0.01).second_moment_m4 == pytest.approx(box, rel=1e-3)
    beam = grid_second_moment(lambda x, y: (abs(x) < 0.005) | (abs(y) > 0.09), 0.1, 0.2)
    assert i_section(0.2, 0.1, 0.01, 0.01).second_moment_m4 == pytest.approx(beam, rel=1e-3)


def bent_rod_sag(pull: float) -> float:
    """Sag of the free end of a rod of length and stiffness 1 under an end load, by its exact curve (the elastica).

    The curvature falls to nothing at the free end: theta'' = -P cos(theta), found by shooting (scipy).
    """

    def end(curvature: float) -> Any:
        def along(_: float, y: Any) -> list[float]:
            return [y[1], -pull * np.cos(y[0]), np.sin(y[0])]

        return solve_ivp(along, (0.0, 1.0), [0.0, curvature, 0.0], rtol=1e-10, atol=1e-12).y[:, -1]

    return float(end(brentq(lambda curvature: end(curvature)[1], 0.0, 2 * pull))[2])


@pytest.mark.parametrize(("ends", "room"), [("cantilever", 0.011), ("simple", 0.045)])
def test_small_slopes_hold_as_far_as_a_sag_is_given(ends: Ends, room: float) -> None:
    """At a sag of a tenth of the span the formulas stand above the exact curve, by no more than is said of them.

    A beam on two supports under a load in its middle is two such rods of half the span, back to back.
    """
    half = 1.0 if ends == "cantilever" else 0.5
    stiffness = 1.0
    load = 0.1 / Beam(1.0, ends, 1.0, half, 0.0, stiffness).greatest_sag()[1]
    sag = Beam(1.0, ends, load, half, 0.0, stiffness).greatest_sag()[1]
    pull = (load if ends == "cantilever" else load / 2) * half**2 / stiffness
    exact = bent_rod_sag(pull) * half
    assert exact < sag < exact * (1 + room)
