"""Unit tests of curved bars and of the worksheet hook-stress."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.heating.curved_beam import circle, section_of_strips, tee_strips, trapezoid_strips

TRAPEZOID = {
    "shape": "trapezoid", "depth": "51 mm", "inner_width": "37 mm", "outer_width": "23 mm", "inner_radius": "31 mm",
    "load": "17.3 kN",
}  # fmt: skip


def ask(**raw: str) -> dict[str, Any]:
    return answer("hook-stress", {**TRAPEZOID, **raw}, "si")


@pytest.mark.parametrize(
    "case",
    [
        {"shape": "star"}, {"depth": "0"}, {"depth": "-3 mm"}, {"depth": "51 kg"}, {"inner_width": ""}, {"outer_width": "wide"},
        {"load": "0 kN"}, {"load": "3 mm"}, {"load": "1e12 kN"}, {"inner_radius": "0"}, {"bead_at": "tip"}, {"arm": "0"},
        {"inner_radius": "10 mm"}, {"inner_radius": "1021 mm"}, {"arm": "23 mm"},
    ],
)  # fmt: skip
def test_bad_inputs_are_refused_by_name(case: dict[str, str]) -> None:
    with pytest.raises(Refused) as refused:
        ask(**case)
    assert refused.value.errors[0].input == next(iter(case))


def test_the_bounds_of_the_bend_are_met() -> None:
    assert ask(depth="50 mm", inner_radius="10 mm")["verdict"] == "unknown"
    assert ask(depth="50 mm", inner_radius="1000 mm")["verdict"] == "unknown"


def test_arm_and_radius_that_cross_are_refused() -> None:
    """The load line may not run through the metal; the middle of this section is 23.5 mm from its inside."""
    with pytest.raises(Refused, match="crosses"):
        ask(arm="23.4 mm")
    assert ask(arm="24 mm")["results"]["inner_stress"]["value"] > 0


@pytest.mark.parametrize(
    ("case", "name"),
    [({"flange_depth": "60 mm"}, "flange_depth"), ({"outer_width": "41 mm"}, "outer_width")],
)
def test_a_tee_must_be_a_tee(case: dict[str, str], name: str) -> None:
    with pytest.raises(Refused) as refused:
        ask(**{"shape": "tee", "flange_depth": "13 mm", **case})
    assert refused.value.errors[0].input == name


@pytest.mark.parametrize("at", ["inner", "side", "outer"])
def test_a_bead_stops_and_sits_in_the_field(at: str) -> None:
    found = ask(bead_at=at)
    results = found["results"]
    assert found["verdict"] == "stop"
    if at != "side":
        assert results["bead_stress"]["value"] == pytest.approx(results[f"{at}_stress"]["value"])
    else:
        assert (
            results["outer_stress"]["value"]
            < results["bead_stress"]["value"]
            < results["inner_stress"]["value"]
        )
    assert "bead" in found["figure"]["caption"]


@pytest.mark.parametrize(
    "shape",
    [
        {"shape": "circle", "diameter": "43 mm"}, {"shape": "rectangle"}, {"shape": "tee", "flange_depth": "13 mm"},
        {"shape": "trapezoid"},
    ],
)  # fmt: skip
def test_no_bead_is_unknown_never_ok(shape: dict[str, str]) -> None:
    found = ask(**shape)
    assert found["verdict"] == "unknown"
    assert found["results"]["bead_stress"]["value"] is None
    assert found["figure"]["svg"].startswith("<svg")


@given(
    st.floats(0.003, 0.3),
    st.floats(0.21, 19.0),
    st.floats(0.05, 3.0),
    st.floats(0.05, 3.0),
    st.floats(0.51, 40.0),
)
def test_equilibrium_and_order_of_radii(
    depth: float, bend: float, wide: float, narrow: float, arm_in_depths: float
) -> None:
    """Neutral axis inside the middle; pull 1 N and no moment is plain stress; the back is squeezed more by a longer arm."""
    section = section_of_strips(trapezoid_strips(bend * depth, depth, wide * depth, narrow * depth))
    assert (
        section.inner_radius_m < section.neutral_radius_m < section.centroid_radius_m < section.outer_radius_m
    )
    assert section.stress_pa(section.outer_radius_m, 1.0, 0.0) == pytest.approx(1 / section.area_m2)
    arm = arm_in_depths * depth
    assert section.stress_pa(section.inner_radius_m, 1.0, arm) > section.stress_pa(
        section.outer_radius_m, 1.0, arm
    )


@given(st.floats(0.003, 0.3), st.floats(0.21, 19.0))
def test_an_even_tee_is_a_rectangle(depth: float, bend: float) -> None:
    plain = section_of_strips(trapezoid_strips(bend * depth, depth, 0.7 * depth, 0.7 * depth))
    tee = section_of_strips(tee_strips(bend * depth, depth, 0.7 * depth, 0.31 * depth, 0.7 * depth))
    assert tee.neutral_radius_m == pytest.approx(plain.neutral_radius_m, rel=1e-12)
    assert tee.centroid_radius_m == pytest.approx(plain.centroid_radius_m, rel=1e-12)


@given(st.floats(0.003, 0.3), st.floats(0.21, 19.0))
def test_a_circle_keeps_its_book_form(diameter: float, bend: float) -> None:
    """rn = (root ro + root ri)^2 / 4 (Shigley, 9th edition, table 3-4)."""
    section = circle(bend * diameter, diameter)
    book = (section.outer_radius_m**0.5 + section.inner_radius_m**0.5) ** 2 / 4
    assert section.neutral_radius_m == pytest.approx(book, rel=1e-12)
