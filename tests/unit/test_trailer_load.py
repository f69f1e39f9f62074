"""trailer-load: what rests on ball and axles, held against the plates; custom is said as custom."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.answering import Refused, worksheet
from tests.asking import Asked, asked
from tests.saying import one_reading

LB, IN = 0.45359237, 0.0254
CASE: dict[str, Any] = dict(worksheet("trailer-load").example)


def run(**more: Any) -> Asked:
    found = asked("trailer-load", {key: one for key, one in {**CASE, **more}.items() if one is not None})
    assert isinstance(found, Asked)
    return found


def load(weight: str, stands: str, distance: str) -> dict[str, str]:
    return {"weight": weight, "stands": stands, "distance": distance}


def codes(found: Asked) -> list[str]:
    return [one.code for one in found.reasons]


def test_the_yard_s_loader_by_hand() -> None:
    """300 + 9,000 x 20 / 168 = 1,371 lb on the ball of 11,700 lb: 11.7 percent; 10,329 lb on the axles."""
    found = run()
    assert found.verdict == "ok"
    assert found.results["tongue_weight"] == pytest.approx((300 + 9000 * 20 / 168) * LB)
    assert found.results["axle_weight"] == pytest.approx(10_328.57 * LB)
    assert found.results["tongue_share"] == pytest.approx(0.11721, abs=1e-5)
    assert found.results["most_used"] == pytest.approx(1371.43 / 1500, rel=1e-5)


@settings(max_examples=50, deadline=None)
@given(
    empty=st.floats(200, 4000), tongue=st.floats(0, 0.3), ball=st.floats(2, 8), heavy=st.floats(100, 9000), at=st.floats(-3, 2)
)  # fmt: skip
def test_a_second_method_moments_about_the_ball(
    empty: float, tongue: float, ball: float, heavy: float, at: float
) -> None:
    """Forces and moments about the ball as two linear equations, the empty trailer as one weight at its own place."""
    stands, distance = ("ahead", at) if at >= 0 else ("behind", -at)
    found = run(
        empty_weight=f"{one_reading(empty)} kg", empty_tongue=f"{one_reading(tongue * empty)} kg", axle_to_ball=f"{one_reading(ball)} m",
        loads=[load(f"{one_reading(heavy)} kg", stands, f"{one_reading(distance)} m")],
    ).results  # fmt: skip
    own = ball * (1 - tongue)
    down, moment = empty + heavy, empty * own + heavy * (ball - at)
    on_ball, on_axles = np.linalg.solve([[1.0, 1.0], [0.0, ball]], [down, moment])
    assert found["tongue_weight"] == pytest.approx(on_ball, rel=1e-6, abs=1e-3)
    assert found["axle_weight"] == pytest.approx(on_axles, rel=1e-6)


def test_a_load_behind_the_axles_lifts_the_tongue() -> None:
    found = run(loads=[load("9000 lb", "behind", "8 in")])
    assert found.verdict == "stop"
    assert found.headline.startswith("The tongue would lift")


@pytest.mark.parametrize(("distance", "code"), [("6 in", "tongue-light"), ("30 in", "tongue-heavy")])
def test_custom_is_a_caution_and_never_a_stop(distance: str, code: str) -> None:
    found = run(loads=[load("9000 lb", "ahead", distance)], hitch_tongue_rating="3000 lb")
    assert found.verdict == "caution"
    assert code in codes(found)
    assert any("custom and not law" in one.text for one in found.cautions)
    moved = float(distance.split(maxsplit=1)[0]) + found.results["move_ahead"] / IN
    again = run(loads=[load("9000 lb", "ahead", f"{one_reading(moved)} in")], hitch_tongue_rating="3000 lb")
    assert again.results["tongue_share"] == pytest.approx(0.125, abs=1e-6)


def test_a_plate_that_is_not_read_makes_it_unknown() -> None:
    for left_out in ("hitch_tongue", "hitch_gross", "trailer_gross", "axles", "tires"):
        found = run(**{f"{left_out}_rating": None})
        assert found.verdict == "unknown"
        assert found.results["most_used"] is None
    assert run(condition=None).verdict == "unknown"
    assert run(condition="damaged").verdict == "stop"


def test_over_a_plate_is_a_stop() -> None:
    found = run(tires_rating="2,500 lb")
    assert found.verdict == "stop"
    assert "tires" in found.headline


def test_what_cannot_be_is_refused_beside_its_box() -> None:
    with pytest.raises(Refused) as caught:
        run(loads=[load("1 lb", "ahead", "15 ft")])
    assert caught.value.errors[0].input == "loads[0].distance"
    with pytest.raises(Refused) as caught:
        run(empty_tongue="3000 lb")
    assert caught.value.errors[0].input == "empty_tongue"
    with pytest.raises(Refused) as caught:
        run(loads=None)
    assert caught.value.errors[0].input == "loads"


@pytest.mark.parametrize("same", ["14,000 lb", "15,000 lb"])
def test_one_line_of_the_hitch_s_plate_is_not_typed_twice(same: str) -> None:
    """The towed weight in the box of the ball's too: the ball was within, whatever rested on it."""
    with pytest.raises(Refused) as caught:
        run(hitch_tongue_rating=same)
    assert caught.value.errors[0].input == "hitch_tongue_rating"
    assert run(hitch_tongue_rating="13,999 lb").verdict == "ok"
    assert run(hitch_gross_rating=None).verdict == "unknown"


def test_no_trailer_rests_most_of_itself_on_the_ball() -> None:
    """2,000 of 2,700 lb on the ball hid that a load behind the axles would lift the tongue."""
    behind = [load("9,000 lb", "behind", "2 ft")]
    assert run(loads=behind).verdict == "stop"
    assert run(empty_tongue="1,350 lb").verdict != "refused"
    with pytest.raises(Refused) as caught:
        run(empty_tongue="2,000 lb", loads=behind)
    assert caught.value.errors[0].input == "empty_tongue"


def test_the_rating_of_all_tires_is_not_that_of_one() -> None:
    with pytest.raises(Refused) as caught:
        run(tires_rating="14,080 lb")
    assert caught.value.errors[0].input == "tires_rating"
    assert run(tires_rating="10,400 lb").verdict == "ok"
    assert run(tires_rating="14,080 lb", axles_rating=None).verdict == "unknown"
