"""spreader: statics by hand, what is refused or not known, and that flatter, longer, heavier and thinner is never better."""

from __future__ import annotations

import math
from typing import Any

import pytest

from calc.answering import Refused, answer
from calc.lifting.spreader import WORKSHEET
from tests.asking import asked

EXAMPLE: dict[str, Any] = dict(WORKSHEET.example)
LB, INCH, PSI, G = 0.45359237, 0.0254, 6894.757293168361, 9.80665


def found(**more: Any) -> dict[str, Any]:
    return dict(asked("spreader", {**EXAMPLE, **more}, "us").results)


def codes(**more: Any) -> set[str]:
    return {reason.code for reason in asked("spreader", {**EXAMPLE, **more}, "us").reasons}


def test_pulls_and_thrust_by_hand() -> None:
    results = found()
    end = 1.1 * 1900 * LB * G * (0.5 + 2 / 84)
    area = 3**2 - 2.625**2
    own = area * INCH**2 * 84 * INCH * 7850
    assert results["end_pull"] == pytest.approx(end)
    assert results["bar_weight"] == pytest.approx(own)
    hangs = end + own * G / 2
    assert results["thrust"] == pytest.approx(hangs / 3**0.5)
    assert results["sling_pull"] == pytest.approx(hangs * 2 / 3**0.5)
    assert results["headroom"] == pytest.approx(42 * INCH * 3**0.5)
    second = (3**4 - 2.625**4) / 12 * INCH**4
    assert results["euler"] == pytest.approx(math.pi**2 * 200e9 * second / (84 * INCH) ** 2)
    slender = 84 / math.sqrt((3**4 - 2.625**4) / 12 / area)
    assert results["slenderness"] == pytest.approx(slender)
    elastic = math.pi**2 * 200e9 / slender**2
    buckles = 0.658 ** (36_000 * PSI / elastic) * 36_000 * PSI * area * INCH**2 / 3
    assert results["buckles_at"] == pytest.approx(buckles)
    moment = own * G * 84 * INCH / 8 + results["thrust"] * 0.5 * INCH
    grown = moment / (1 - 1.6 * results["thrust"] / results["euler"])
    bends = grown * 3 / (36_000 * PSI * second / (1.5 * INCH))
    assert results["part_used"] == pytest.approx(results["thrust"] / buckles / 2 + bends)
    assert results["fittings_used"] == pytest.approx(end / 1.1 / (2000 * LB * G))


def test_the_greatest_load_uses_bar_or_fittings_up() -> None:
    for more in ({}, {"upper_rating": "900,000 lbf", "lower_rating": "900,000 lbf"}):
        most = found(**more)["not_more_than"]
        at_most = found(**more, load=f"{most:.9f} kg")
        assert max(at_most["part_used"], at_most["fittings_used"]) == pytest.approx(1.0, rel=1e-6)
    assert found(length="60 ft", width="1 in", wall="0.1 in")["not_more_than"] == pytest.approx(0.0, abs=1e-9)


def test_pressed_half_as_hard_at_sixty_as_at_a_little_over_forty() -> None:
    """Weightless and even: 0.289 W at 60 degrees, 0.5 W at 45, 0.866 W at 30."""
    for degrees, share in ((60, 0.289), (45, 0.5), (30, 0.866)):
        results = found(sling_angle=str(degrees), off_middle="0", load="50,000 lb")
        weight = results["bar_weight"] * G / 2 / math.tan(math.radians(degrees))
        assert (results["thrust"] - weight) / (1.1 * 50_000 * LB * G) == pytest.approx(share, abs=5e-4)


@pytest.mark.parametrize(
    "worse",
    [
        {"load": "2,100 lb"},
        {"sling_angle": "46"},
        {"off_middle": "9 in"},
        {"eyes_off": "2 in"},
        {"wall": "1/8 in"},
        {"width": "2 in"},
        {"yield_strength": "30,000 psi"},
        {"design_factor": "4"},
        {"section": "pipe"},
    ],
)
def test_worse_is_never_better(worse: dict[str, str]) -> None:
    better, changed = found(), found(**worse)
    assert changed["part_used"] > better["part_used"] * (1 - 1e-12)
    assert changed["not_more_than"] <= better["not_more_than"]


def test_a_longer_bar_with_its_load_in_the_middle_is_never_better() -> None:
    strong = {"off_middle": "0", "upper_rating": "900,000 lbf", "lower_rating": "900,000 lbf"}
    bars = [found(**strong, length=f"{feet} ft") for feet in (2, 4, 7, 11, 16, 24)]
    assert [one["part_used"] for one in bars] == sorted(one["part_used"] for one in bars)
    most = [one["not_more_than"] for one in bars]
    assert most == sorted(most, reverse=True)


def test_what_is_said() -> None:
    assert codes() == {"unrated", "hangs-tilted", "lower-slings-plumb", "starting-adds", "not-counted"}
    assert "hangs-tilted" not in codes(off_middle="0")
    assert "slings-flat" in codes(sling_angle="44.9")
    assert "slings-flat" not in codes(sling_angle="45")
    assert "slender" in codes(length="20 ft")
    assert "small-factor" in codes(design_factor="2.9")
    assert "over-the-fittings" in codes(lower_rating="900 lbf")
    assert "over-the-bar" in codes(load="100,000 lb")
    flat = answer("spreader", {**EXAMPLE, "sling_angle": "29.9"}, "us")
    assert flat["verdict"] == "stop"
    assert flat["results"]["not_more_than"]["value"] is None
    assert "30°" in flat["headline"]
    assert asked("spreader", {**EXAMPLE, "sling_angle": "30"}, "us").verdict == "caution"


def test_what_is_not_known_gives_no_load() -> None:
    unchecked = answer("spreader", {**EXAMPLE, "fittings": ""}, "us")
    assert unchecked["verdict"] == "unknown"
    assert unchecked["results"]["not_more_than"]["value"] is None
    assert "not more than" not in unchecked["headline"]
    thin = answer("spreader", {**EXAMPLE, "wall": "0.04 in"}, "us")
    assert thin["verdict"] == "unknown"
    assert thin["results"]["not_more_than"]["value"] is None
    assert thin["results"]["part_used"]["value"] is None


def test_a_section_of_a_book_is_the_same_bar() -> None:
    book = {"section": "book", "area": "2.109375 in2", "radius": "1.150747 in", "modulus": "1.862183 in3"}
    assert found(**book)["part_used"] == pytest.approx(found()["part_used"], rel=1e-4)


@pytest.mark.parametrize(
    ("change", "box"),
    [
        ({"wall": "1.6 in"}, "wall"),
        ({"off_middle": "42 in"}, "off_middle"),
        ({"length": "0"}, "length"),
        ({"yield_strength": ""}, "yield_strength"),
        ({"width": ""}, "width"),
        ({"section": "book"}, "area"),
        ({"upper_rating": ""}, "upper_rating"),
        ({"sling_angle": "90"}, "sling_angle"),
    ],
)
def test_bad_input_is_refused_beside_its_box(change: dict[str, str], box: str) -> None:
    with pytest.raises(Refused) as refused:
        answer("spreader", {**EXAMPLE, **change}, "us")
    assert [one.input for one in refused.value.errors] == [box]


def test_the_drawing_shows_whether_the_bar_is_over() -> None:
    drawings = [
        answer("spreader", {**EXAMPLE, **more}, "us")["figure"]["svg"] for more in ({}, {"load": "90,000 lb"})
    ]
    assert "leg-stop" not in drawings[0]
    assert "leg-stop" in drawings[1]


@pytest.mark.parametrize(
    ("more", "code"),
    [
        ({"upper_rating": "900,000 lbf", "lower_rating": "900,000 lbf"}, "over-the-bar"),
        ({}, "over-the-fittings"),
    ],
)
def test_a_little_over_what_holds_is_a_stop(more: dict[str, str], code: str) -> None:
    most = found(**more)["not_more_than"]
    under = asked("spreader", {**EXAMPLE, **more, "load": f"{0.99 * most:.9f} kg"}, "us")
    over = asked("spreader", {**EXAMPLE, **more, "load": f"{1.01 * most:.9f} kg"}, "us")
    assert code not in {one.code for one in under.reasons}
    assert code in {one.code for one in over.reasons}
    assert over.verdict == "stop"


def test_a_square_tube_is_thin_before_a_pipe_is() -> None:
    """AISC 360, Table B4.1b: 1.12 root (E / Fy) = 31.8 for the sides of a box, 0.07 E / Fy = 56.4 for a pipe of 36 ksi."""
    assert answer("spreader", {**EXAMPLE, "wall": "0.055 in"}, "us")["verdict"] == "unknown"
    assert (
        answer("spreader", {**EXAMPLE, "section": "pipe", "wall": "0.055 in"}, "us")["verdict"] != "unknown"
    )
    assert (
        answer("spreader", {**EXAMPLE, "section": "pipe", "wall": "0.052 in"}, "us")["verdict"] == "unknown"
    )


def test_off_the_middle_by_less_than_half_is_answered() -> None:
    assert found(off_middle="41 in")["end_pull"] == pytest.approx(1.1 * 1900 * LB * G * (0.5 + 41 / 84))


def test_each_number_has_its_line_of_working() -> None:
    full = [one.label for one in asked("spreader", EXAMPLE, "us").steps]
    thin = [one.label for one in asked("spreader", {**EXAMPLE, "wall": "0.04 in"}, "us").steps]
    unchecked = [one.label for one in asked("spreader", {**EXAMPLE, "fittings": ""}, "us").steps]
    assert len(full) == len(set(full)) == 8
    assert thin == [*full[:5], full[7]]
    assert unchecked == full[:7]
