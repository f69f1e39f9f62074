"""Unit tests of curved bars and of the worksheet hook-stress."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.heating.curved_beam import (
    WorkingFlange,
    circle,
    section_of_strips,
    tee_strips,
    trapezoid_strips,
    working_flange,
)

TRAPEZOID = {
    "shape": "trapezoid", "depth": "51 mm", "inner_width": "37 mm", "outer_width": "23 mm", "inner_radius": "31 mm",
    "load": "17.3 kN", "load_line": "middle",
}  # fmt: skip


def ask(**raw: str) -> dict[str, Any]:
    return answer("hook-stress", {**TRAPEZOID, **raw}, "si")


@pytest.mark.parametrize(
    "case",
    [
        {"shape": "star"}, {"depth": "0"}, {"depth": "-3 mm"}, {"depth": "51 kg"}, {"inner_width": ""}, {"outer_width": "wide"},
        {"load": "0 kN"}, {"load": "3 mm"}, {"load": "1e12 kN"}, {"inner_radius": "0"}, {"bead_at": "tip"}, {"load_line": ""}, {"load_line": "tip"}, {"arm": "0"}, {"arm": "60 mm"},
        {"inner_radius": "10 mm"}, {"inner_radius": "1021 mm"}, {"arm": "23 mm", "load_line": "measured"},
    ],
)  # fmt: skip
def test_bad_inputs_are_refused_by_name(case: dict[str, str]) -> None:
    with pytest.raises(Refused) as refused:
        ask(**case)
    assert refused.value.errors[0].input == next(iter(case))


def test_the_bounds_of_the_bend_are_met() -> None:
    assert ask(depth="50 mm", inner_radius="10 mm")["verdict"] == "ok"
    assert ask(depth="50 mm", inner_radius="1000 mm")["verdict"] == "ok"


def test_arm_and_radius_that_cross_are_refused() -> None:
    """The load line may not run through the metal; the middle of this section is 23.5 mm from its inside."""
    with pytest.raises(Refused, match="crosses"):
        ask(arm="23.4 mm", load_line="measured")
    assert ask(arm="24 mm", load_line="measured")["results"]["inner_stress"]["value"] > 0


@pytest.mark.parametrize(
    ("case", "name"),
    [({"flange_depth": "60 mm"}, "flange_depth"), ({"outer_width": "41 mm"}, "outer_width")],
)
def test_a_tee_must_be_a_tee(case: dict[str, str], name: str) -> None:
    with pytest.raises(Refused) as refused:
        ask(**{"shape": "tee", "flange_depth": "13 mm", **case})
    assert refused.value.errors[0].input == name


@pytest.mark.parametrize("at", ["inner", "side", "outer"])
def test_a_bead_sits_in_the_field_and_leaves_no_rating(at: str) -> None:
    found = ask(bead_at=at)
    results = found["results"]
    assert (found["verdict"], found["verdict_words"]) == ("ok", "Worked out")
    assert "A welded hook has no rating" in found["headline"]
    assert found["cautions"][0]["kind"] == "prohibition"
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
def test_without_a_bead_it_is_a_study_of_a_stress(shape: dict[str, str]) -> None:
    found = ask(**shape)
    assert (found["verdict"], found["verdict_words"]) == ("ok", "Worked out")
    assert "not a rating" in found["headline"]
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


TEE = {
    "shape": "tee", "depth": "103 mm", "inner_width": "97 mm", "outer_width": "17 mm", "flange_depth": "13 mm",
    "inner_radius": "53 mm",
}  # fmt: skip


def test_a_flange_without_overhang_loses_nothing() -> None:
    assert working_flange(0.0, 0.05, 0.01) == WorkingFlange(0.0, 1.0, 0.0)
    even = ask(**{**TEE, "outer_width": "97 mm"})["results"]
    plain = ask(shape="rectangle", depth="103 mm", inner_width="97 mm", inner_radius="53 mm")["results"]
    assert even["inner_stress"]["value"] == pytest.approx(plain["inner_stress"]["value"])
    assert even["flange_share"]["value"] == pytest.approx(100)
    assert even["flange_sideways"]["value"] == pytest.approx(0)
    assert plain["flange_share"]["value"] is None
    assert plain["flange_sideways"]["value"] is None


@given(st.floats(0.001, 0.05), st.floats(0.01, 0.2), st.floats(0.002, 0.03))
def test_a_thinner_flange_works_less(projection: float, radius: float, depth: float) -> None:
    thick, thin = working_flange(projection, radius, depth), working_flange(projection, radius, depth * 0.8)
    assert 0 < thin.share <= thick.share <= 1 + 1e-9


def test_a_tee_is_reckoned_with_what_works_of_its_flange() -> None:
    """By hand: 40 mm past the web, middle at 59.5 mm, 13 mm deep; each side counts with the share, about its own middle."""
    results = ask(**TEE)["results"]
    flange = working_flange(0.040, 0.0595, 0.013)
    assert results["flange_share"]["value"] == pytest.approx(flange.share * 100)
    by_hand = section_of_strips(tee_strips(0.053, 0.103, 0.017 + 2 * flange.share * 0.040, 0.013, 0.017))
    moment = 17300 * by_hand.centroid_radius_m
    stress = by_hand.stress_pa(0.053, 17300, moment)
    assert results["inner_stress"]["value"] * 1e6 == pytest.approx(stress)
    whole = section_of_strips(tee_strips(0.053, 0.103, 0.097, 0.013, 0.017))
    assert stress > 1.2 * whole.stress_pa(0.053, 17300, 17300 * whole.centroid_radius_m)
    sideways = flange.sideways * by_hand.stress_pa(0.0595, 17300, moment)
    assert results["flange_sideways"]["value"] * 1e6 == pytest.approx(sideways)


def test_a_measured_arm_is_taken_to_the_middle_of_the_whole_section() -> None:
    whole = section_of_strips(tee_strips(0.053, 0.103, 0.097, 0.013, 0.017))
    measured = ask(**TEE, load_line="measured", arm=f"{whole.centroid_radius_m} m")
    assert measured["results"] == ask(**TEE)["results"]


def test_a_flange_thinner_than_the_printed_correction_is_refused() -> None:
    with pytest.raises(Refused) as refused:
        ask(**{**TEE, "flange_depth": "5 mm"})
    assert refused.value.errors[0].input == "flange_depth"
    assert "deeper or a narrower flange" in str(refused.value)


def test_the_load_line_is_never_taken_for_granted() -> None:
    far = ask(load_line="measured", arm="90 mm")["results"]["inner_stress"]["value"]
    assert far > ask()["results"]["inner_stress"]["value"]
    with pytest.raises(Refused):
        ask(load_line="")
