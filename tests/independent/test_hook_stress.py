"""Curved bars against numerical quadrature (scipy) and a plane-stress finite-element model (scikit-fem)."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from scipy.integrate import quad, solve_bvp
from skfem import Basis, BilinearForm, ElementQuad2, ElementVector, LinearForm, MeshQuad, asm, condense, solve
from skfem.helpers import ddot, sym_grad, trace

from calc.heating.curved_beam import (
    CurvedSection,
    circle,
    section_of_strips,
    tee_strips,
    trapezoid_strips,
    working_flange,
)


@pytest.mark.parametrize(
    ("section", "width", "inner", "outer", "kinks"),
    [
        (circle(0.031, 0.023), lambda r: 2 * np.sqrt(max(0.0, 0.0115**2 - (r - 0.0425) ** 2)), 0.031, 0.054, []),
        (section_of_strips(trapezoid_strips(0.047, 0.061, 0.043, 0.019)), lambda r: 0.043 - 0.024 * (r - 0.047) / 0.061, 0.047, 0.108, []),
        (section_of_strips(tee_strips(0.053, 0.071, 0.059, 0.017, 0.013)), lambda r: 0.059 if r < 0.07 else 0.013, 0.053, 0.124, [0.07]),
    ],
)  # fmt: skip
def test_section_integrals_by_quadrature(
    section: CurvedSection, width: Any, inner: float, outer: float, kinks: list[float]
) -> None:
    def integral(f: Any) -> float:
        return float(quad(f, inner, outer, points=kinks or None, epsabs=0, epsrel=1e-11, limit=400)[0])

    area = integral(width)
    assert section.area_m2 == pytest.approx(area, rel=1e-8)
    assert section.centroid_radius_m == pytest.approx(integral(lambda r: r * width(r)) / area, rel=1e-8)
    assert section.neutral_radius_m == pytest.approx(area / integral(lambda r: width(r) / r), rel=1e-8)
    pull, moment = 17300.0, 911.0
    carried = integral(lambda r: width(r) * section.stress_pa(r, pull, moment))
    turned = integral(
        lambda r: width(r) * section.stress_pa(r, pull, moment) * (section.centroid_radius_m - r)
    )
    assert carried == pytest.approx(pull, rel=1e-7)
    assert turned == pytest.approx(moment, rel=1e-7)


def test_plane_stress_model_of_a_curved_bar() -> None:
    """A quarter ring 50 mm deep, ri 30 mm, bent by a couple. The exact plane-stress field differs from Winkler-Bach by
    a few percent at this sharp bend; the finite-element stress must lie within 3 percent of it at both edges."""
    inner, depth, moment, young, poisson = 0.030, 0.050, 500.0, 210e9, 0.3
    mesh = MeshQuad.init_tensor(np.linspace(0, 1, 33), np.linspace(0, 1, 65))
    radius, angle = inner + depth * mesh.p[0], np.pi / 2 * mesh.p[1]
    mesh = MeshQuad(np.array([radius * np.cos(angle), radius * np.sin(angle)]), mesh.t)
    basis = Basis(mesh, ElementVector(ElementQuad2()), intorder=4)
    shear = young / 2 / (1 + poisson)
    plane = young * poisson / (1 - poisson**2)

    def stiffness(u: Any, v: Any, _w: Any) -> Any:
        strain, virtual = sym_grad(u), sym_grad(v)
        return plane * trace(strain) * trace(virtual) + 2 * shear * ddot(strain, virtual)

    section = section_of_strips(trapezoid_strips(inner, depth, 1.0, 1.0))
    end = mesh.facets_satisfying(lambda x: np.abs(x[0]) < 1e-9, boundaries_only=True)

    def couple(v: Any, w: Any) -> Any:
        radii = w.x[1]
        stress = (
            moment * (section.neutral_radius_m - radii) / (section.area_m2 * section.eccentricity_m * radii)
        )
        return -stress * v[0]

    matrix = asm(BilinearForm(stiffness), basis)
    load = asm(LinearForm(couple), basis.boundary(end))
    foot = basis.get_dofs(lambda x: np.abs(x[1]) < 1e-9)
    held = np.concatenate(
        [foot.all("u^2"), basis.get_dofs(lambda x: (np.abs(x[1]) < 1e-9) & (x[0] < inner + 1e-9)).all("u^1")]
    )
    moved = solve(*condense(matrix, load, D=held))
    field = basis.interpolate(moved)
    strain = sym_grad(field)
    x, y = basis.global_coordinates()
    r, t = np.hypot(x, y), np.arctan2(y, x)
    s_xx = plane * (strain[0, 0] + strain[1, 1]) + 2 * shear * strain[0, 0]
    s_yy = plane * (strain[0, 0] + strain[1, 1]) + 2 * shear * strain[1, 1]
    s_xy = 2 * shear * strain[0, 1]
    hoop = s_xx * np.sin(t) ** 2 + s_yy * np.cos(t) ** 2 - 2 * s_xy * np.sin(t) * np.cos(t)
    middle = np.abs(t - np.pi / 4) < np.pi / 40
    for edge in (inner, inner + depth):
        near = middle & (np.abs(r - edge) < depth / 40)
        expected = np.array([section.stress_pa(radius, 0.0, moment) for radius in r[near]])
        ratio = float(np.mean(np.abs(hoop[near])) / np.mean(np.abs(expected)))
        assert ratio == pytest.approx(1.0, abs=0.03)
        print(f"plane stress over Winkler-Bach at r = {edge * 1000:.0f} mm: {ratio:.4f}")


@pytest.mark.parametrize("slenderness", [0.13, 0.55, 1.0, 1.9, 3.3, 5.0])
def test_a_flange_as_a_strip_on_its_own_curve(slenderness: float) -> None:
    """The flange's equation solved as a boundary value problem: E t^3/12 w4 + E t w / r^2 = s t / r, held at the web
    (w = w1 = 0), free at the edge (w2 = w3 = 0; derivatives by number); stress s - E w / r along the bar, E t w2/2 across it at the web."""
    radius, depth, young, even = 0.083, 0.011, 210e9, 1e8
    projection = float(np.sqrt(slenderness * radius * depth))
    drop = even * radius / young  # the deflection at which the stress along the bar is gone

    def slope(_x: Any, y: Any) -> Any:
        return np.vstack([y[1], y[2], y[3], 12 / depth**2 / radius**2 * projection**4 * (1 - y[0])])

    def ends(web: Any, edge: Any) -> Any:
        return np.array([web[0], web[1], edge[2], edge[3]])

    across = np.linspace(0, 1, 201)
    solved = solve_bvp(slope, ends, across, np.zeros((4, across.size)), tol=1e-9, max_nodes=20_000)
    assert solved.success
    found = working_flange(projection, radius, depth)
    share = quad(lambda x: 1 - solved.sol(x)[0], 0, 1, epsabs=1e-10)[0]
    assert found.share == pytest.approx(share, rel=1e-5)
    bending = young * depth / 2 * solved.sol(0.0)[2] * drop / projection**2
    assert found.sideways == pytest.approx(bending / even, rel=1e-4)
