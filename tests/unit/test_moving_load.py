"""moving-load: pulls by hand, what is not known, the rating, refusals, and what a motion can never be told too kindly."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from calc.lifting.hoisting import HAND_FACTOR, even_jerk_n, least_stretch_m, sudden_jerk_n
from tests.asking import asked

G = 9.80665
LB = 4.4482216152605
EXAMPLE: dict[str, Any] = dict(worksheet("moving-load").example)
EVEN: dict[str, Any] = {**EXAMPLE, "changes": "evenly", "distance": "2 in"}
HAND: dict[str, Any] = {**EXAMPLE, "moved_by": "hand"}


def without(raw: dict[str, Any], *names: str) -> dict[str, Any]:
    return {name: value for name, value in raw.items() if name not in names}


def codes(raw: dict[str, Any]) -> set[str]:
    return {reason.code for reason in asked("moving-load", raw, "us").reasons}


def test_the_diesel_by_hand() -> None:
    """16 ft/min is 3.2 in/s; under gravity of 386.09 in/s2 a give of 3/8 in makes 1 + 3.2 / 12.033 = 1.266."""
    record = asked("moving-load", EXAMPLE, "us")
    factor = 1 + 3.2 / math.sqrt(386.0886 * 0.375)
    assert record.results["factor"] == pytest.approx(factor, rel=1e-6)
    assert record.results["peak_force"] == pytest.approx(870 * LB * factor, rel=1e-6)
    assert record.results["least_force"] == pytest.approx(870 * LB * (2 - factor), rel=1e-6)
    assert record.results["use_percent"] == pytest.approx(870 * factor / 4500, rel=1e-6)
    assert record.verdict == "caution"
    assert "1.27 times" in record.headline


def test_an_even_stop_by_hand() -> None:
    """3.2 in/s stopped in 2 in: 2.56 in/s2, 0.663 % of gravity; what is printed is more."""
    record = asked("moving-load", EVEN, "us")
    gained = 3.2**2 / 4 / 386.0886
    assert record.results["acceleration"] == pytest.approx(gained, rel=1e-6)
    assert record.results["steady_force"] == pytest.approx(870 * LB * (1 + gained), rel=1e-6)
    assert record.results["factor"] == pytest.approx(1.15)
    assert record.verdict == "ok"
    quick = asked("moving-load", {**without(EVEN, "give"), "distance": "1/32 in"}, "us").results
    assert quick["factor"] == pytest.approx(1 + 2 * 3.2**2 / 2 / (1 / 32) / 386.0886, rel=1e-6)
    # A string of which the give is known cannot be jerked by more than a stop at once.
    at_once = asked("moving-load", {**EVEN, "distance": "1/32 in"}, "us").results
    assert at_once["factor"] == pytest.approx(1 + 3.2 / math.sqrt(386.0886 * 0.375), rel=1e-6)


def test_a_hand_chain_hoist() -> None:
    record = asked("moving-load", HAND, "us")
    assert record.results["factor"] == pytest.approx(HAND_FACTOR)
    assert record.results["printed_factor"] == HAND_FACTOR
    assert record.results["class_low"] is None
    assert record.verdict == "ok"
    assert {"hand-adds-little", "a-fall-is-worse"} <= codes(HAND)


def test_chain_and_rope_by_thickness_and_length() -> None:
    chain = {**without(EXAMPLE, "give"), "diameter": "5/16 in", "length": "6.5 ft"}
    found = asked("moving-load", chain, "us").results
    wire, long = 0.3125 * 0.0254, 6.5 * 0.3048
    rest = 870 * LB * long / (210e9 * 2 * math.pi / 4 * wire**2)
    assert found["rest_stretch"] == pytest.approx(rest)
    assert found["factor"] == pytest.approx(1 + 16 * 0.00508 / math.sqrt(G * rest))
    assert {"give-reckoned", "may-go-slack"} <= codes(chain)
    rope = {**without(chain, "grade"), "leg_kind": "wire-rope"}
    assert asked("moving-load", rope, "us").results["rest_stretch"] == pytest.approx(
        870 * LB * long / (62.8e9 * wire**2)
    )
    assert asked("moving-load", {**chain, "give": "1/4 in"}, "us").results["rest_stretch"] == pytest.approx(
        0.00635
    )


@pytest.mark.parametrize(
    ("raw", "code"),
    [
        (without(EXAMPLE, "moved_by"), "hoist-not-said"),
        (without(EXAMPLE, "speed"), "speed-not-known"),
        (without(EXAMPLE, "give"), "give-not-known"),
        ({**without(EXAMPLE, "give", "grade"), "leg_kind": "web"}, "give-not-known"),
        ({**without(EXAMPLE, "give"), "diameter": "5/16 in"}, "give-not-known"),
    ],
)
def test_a_motion_that_is_not_known_has_no_peak(raw: dict[str, Any], code: str) -> None:
    record = asked("moving-load", raw, "us")
    assert code in {reason.code for reason in record.reasons}
    assert record.verdict == "unknown"
    for name in ("peak_force", "factor", "use_percent", "least_force"):
        assert record.results[name] is None, name
    assert "not known" in record.figure.caption


def test_what_the_rating_decides() -> None:
    assert asked("moving-load", {**EXAMPLE, "rating": "1,000 lb"}, "us").verdict == "stop"
    assert asked("moving-load", {**HAND, "rating": "900 lb"}, "us").verdict == "stop"
    assert asked("moving-load", without(HAND, "rating"), "us").verdict == "unknown"
    assert asked("moving-load", without(HAND, "condition"), "us").verdict == "unknown"
    assert asked("moving-load", {**HAND, "condition": "welded"}, "us").verdict == "stop"
    assert asked("moving-load", {**HAND, "grade": "70"}, "us").verdict == "stop"
    assert asked("moving-load", without(HAND, "leg_kind", "grade"), "us").verdict == "unknown"
    for raw in ({**HAND, "condition": "welded"}, {**HAND, "grade": "70"}):
        assert asked("moving-load", raw, "us").results["use_percent"] is None


def test_what_is_left_out_is_taken_as_sudden() -> None:
    assert (
        asked("moving-load", without(EXAMPLE, "changes"), "us").results
        == asked("moving-load", EXAMPLE, "us").results
    )


@pytest.mark.parametrize(
    ("raw", "box"),
    [
        ({**EXAMPLE, "speed": "300 ft/min"}, "speed"),
        ({**EXAMPLE, "speed": "0"}, "speed"),
        ({**EXAMPLE, "load": "101 t"}, "load"),
        ({**EXAMPLE, "give": "0"}, "give"),
        (without(EVEN, "distance"), "distance"),
        ({**EVEN, "distance": "0"}, "distance"),
        ({**EXAMPLE, "give": "0.001 in", "diameter": "5/16 in", "length": "6.5 ft"}, "give"),
        ({**EXAMPLE, "diameter": "1/16 in"}, "diameter"),
    ],
)
def test_refused_beside_the_box(raw: dict[str, Any], box: str) -> None:
    with pytest.raises(Refused) as refused:
        answer("moving-load", raw, "us")
    assert [one.input for one in refused.value.errors] == [box]


@given(
    load=st.floats(1.0, 99_000.0),
    speed=st.floats(0.001, 1.49),
    give=st.floats(0.0005, 1.9),
    more=st.floats(1.0, 5.0),
)
def test_faster_and_stiffer_never_pulls_less(load: float, speed: float, give: float, more: float) -> None:
    jerk = sudden_jerk_n(load, speed, give)
    assert sudden_jerk_n(load, speed * more, give) >= jerk
    assert sudden_jerk_n(load, speed, give * more) <= jerk
    assert even_jerk_n(load, more) >= even_jerk_n(load, 1.0)
    thick = least_stretch_m(load, "chain", 0.010 * more, 2.0)
    assert (
        thick
        <= least_stretch_m(load, "chain", 0.010, 2.0)
        <= least_stretch_m(load, "chain", 0.010, 2.0 * more)
    )
