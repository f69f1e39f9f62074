"""gauge-check: within, outside, cannot tell; scatter, zero, usable range; refusals."""

import re
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from calc.figures.graph import round_ticks


def rows(*known: tuple[float, float, float | None]) -> list[dict[str, str]]:
    return [
        {"true_weight": f"{w:.6f} kg", "reading": f"{r:.6f} kg"} | ({} if t is None else {"give_or_take": f"{t:.6f} kg"})
        for w, r, t in known
    ]  # fmt: skip


GOOD = rows(
    (187, 188, 0.9), (187, 187, 0.9), (531, 533, 1.7), (531, 532, 1.7), (1060, 1064, 3.1), (1060, 1063, 3.1)
)


def ask(known: Any = GOOD, **changes: Any) -> dict[str, Any]:
    raw = {
        "known": known,
        "readings_capacity": "3000 kg",
        "resolution": "1 kg",
        "accuracy_class": "1 %",
        "class_of": "full-scale",
        "zero_before": "0 kg",
        "zero_after": "0 kg",
        **changes,
    }
    return answer("gauge-check", raw, "si")


def refused(**changes: Any) -> str:
    with pytest.raises(Refused) as caught:
        ask(**changes)
    return " | ".join(f"{error.input}: {error.message}" for error in caught.value.errors)


def value(record: dict[str, Any], name: str) -> Any:
    return record["results"][name]["value"]


def test_within() -> None:
    record = ask()
    assert record["verdict"] == "ok"
    assert value(record, "within") == "within"
    assert value(record, "usable_range") == [pytest.approx(187), pytest.approx(1060)]
    assert value(record, "error") == pytest.approx(3.5)
    assert value(record, "error_percent") == pytest.approx(100 * 3.5 / 1060)
    assert any("under 300 kg" in caution["text"] for caution in record["cautions"])
    assert value(record, "reserve") == pytest.approx(3.5 + value(record, "uncertainty"))
    assert value(record, "repeatability") == pytest.approx((3 * 0.5 / 3) ** 0.5)


def test_the_drawing_is_in_the_readers_units_and_holds_every_bar() -> None:
    raw = {
        "known": GOOD,
        "readings_capacity": "3000 kg",
        "resolution": "1 kg",
        "accuracy_class": "1 %",
        "class_of": "full-scale",
    }
    us, si = (
        answer("gauge-check", raw, "us")["figure"]["svg"],
        answer("gauge-check", raw, "si")["figure"]["svg"],
    )
    assert "known weight, lb" in us
    assert "known weight, kg" in si
    for svg in (us, si):
        heights = [
            float(point.split()[1]) for path in re.findall(r'd="M([^"Z]+)', svg) for point in path.split(" L")
        ]
        assert min(heights) >= 56 - 1
        assert max(heights) <= 320 - 40


def test_outside() -> None:
    record = ask(rows((187, 188, 0.9), (531, 575, 1.7), (1060, 1150, 3.1)))
    assert record["verdict"] == "stop"
    assert value(record, "within") == "outside"
    assert "outside its class" in record["headline"]
    assert "187 kg" in record["headline"]
    assert ask(rows((531, 475, 1.7)))["headline"].count("low") == 1


def test_cannot_tell_when_the_known_weight_is_vague() -> None:
    record = ask(rows((531, 545, 31), (531, 546, 31)))
    assert record["verdict"] == "unknown"
    assert "cannot tell" in record["headline"]
    assert value(record, "usable_range") is None


def test_usable_range_is_the_longest_run() -> None:
    known = rows((100, 100, 0.2), (200, 260, 0.2), (300, 300, 0.2), (500, 501, 0.2), (900, 901, 0.2))
    assert value(ask(known), "usable_range") == [pytest.approx(300), pytest.approx(900)]


def test_few_points_exact_weights_and_no_repeats_are_told() -> None:
    record = ask(rows((531, 532, None)))
    assert record["verdict"] == "unknown"
    assert value(record, "uncertainty") is None
    assert value(record, "reserve") is None
    text = " ".join(caution["text"] for caution in record["cautions"])
    assert "No weight is exact" in text
    assert "assumed to be one step" in text
    once = ask(rows((187, 188, 0.9), (531, 533, 1.7), (1060, 1064, 3.1)))
    assert once["verdict"] == "caution"
    assert "No weight was read twice" in once["headline"]
    assert value(record, "scale_error") is None
    assert record["results"]["repeatability"]["text"] == "no weight was read twice"
    two = ask(rows((531, 532, 0.3), (531, 533, 0.3), (900, 902, 0.4)))
    assert two["verdict"] == "caution"
    assert value(two, "scale_error_uncertainty") is None


def test_zero_drift_widens_the_doubt_and_is_told() -> None:
    still = ask(zero_before="0 kg", zero_after="0 kg")
    moved = ask(zero_before="-1 kg", zero_after="36 kg")
    assert value(still, "zero_drift") == 0
    assert value(moved, "zero_drift") == pytest.approx(37)
    assert value(moved, "uncertainty") > value(still, "uncertainty")
    assert any("zero moved by more" in caution["text"] for caution in moved["cautions"])


def test_the_reserve_is_the_largest_error_with_its_doubt() -> None:
    """5,000 kg reads 24 low, 100 kg reads 0.6 high: it was told to keep what the point nearest its class needs."""
    known = rows((100, 101.4, 0.1), (100, 101.4, 0.1), (1000, 1002, 1), (2900, 2876, 2))
    record = ask(known, class_of="reading", accuracy_class="2 %", resolution="0.1 kg")
    assert value(record, "error") == pytest.approx(1.4)
    assert value(record, "reserve") > 24


@pytest.mark.parametrize(
    "known",
    [
        rows((50, 0, 0.1), (100, 0, 0.1), (150, 0, 0.1)),
        rows((50, 40, 0.1), (100, 40, 0.1), (150, 40, 0.1)),
        rows((50, 12, 0.1), (100, 30, 0.1), (150, 60, 0.1)),
        rows((150, 0, 0.1)),
        rows((100, 160, 0.1), (150, 230, 0.1)),
        rows((300, 330, 0.1), (350, 330, 0.1), (400, 331, 0.1)),
    ],
)
def test_a_dead_gauge_stops(known: list[dict[str, str]]) -> None:
    """On a scale of 20,000 kg it was within its class."""
    record = ask(known, readings_capacity="20000 kg")
    assert record["verdict"] == "stop"
    assert "do not follow the weights" in record["headline"]
    assert value(record, "within") == "outside"
    assert value(record, "reserve") is None
    assert value(record, "usable_range") is None


def test_weights_too_light_for_the_class_show_nothing() -> None:
    known = rows((50, 50, 0.1), (50, 51, 0.1), (100, 101, 0.1), (150, 150, 0.1))
    record = ask(known, readings_capacity="20000 kg")
    assert record["verdict"] == "unknown"
    assert "too light for this gauge" in record["headline"]


def test_a_zero_that_was_not_read_leaves_it_unknown() -> None:
    record = ask(zero_after="")
    assert record["verdict"] == "unknown"
    assert value(record, "within") == "cannot tell"
    assert value(record, "usable_range") is None
    assert value(record, "zero_drift") is None


@pytest.mark.parametrize("rest", ["500 kg", "-500 kg"])
def test_a_gauge_that_shows_a_load_at_rest_is_unknown(rest: str) -> None:
    record = ask(zero_before=rest, zero_after=rest)
    assert record["verdict"] == "unknown"
    assert "At rest the gauge shows 500 kg" in record["headline"]


@pytest.mark.parametrize("name", ["accuracy_class", "class_of"])
def test_the_class_is_part_of_the_question(name: str) -> None:
    assert "missing" in refused(**{name: ""})


def test_one_common_cause_adds_straight() -> None:
    """Weights known to 2 percent from one source: the scale is no better known (it was 2 %, standard uncertainty 0)."""
    known = rows((100, 102, 2), (500, 510, 10), (1000, 1020, 20))
    together, apart = ask(known), ask(known, weights_from="each-own")
    one = value(ask(known, weights_from="one-source"), "scale_error_uncertainty")
    assert one == pytest.approx(value(together, "scale_error_uncertainty"))
    assert one > 100 * 0.02 / 3**0.5
    assert value(apart, "scale_error_uncertainty") < one


def test_class_of_reading() -> None:
    record = ask(class_of="reading", accuracy_class="2 %")
    assert "allowed 3.74 kg" in record["steps"][1]["numbers"]
    assert not any("coarse low down" in caution["text"] for caution in record["cautions"])


def test_bad_input() -> None:
    assert "known" in refused(known=[])
    assert "known[0].true_weight" in refused(known=rows((3001, 3000, 1)))
    assert "known[0].reading" in refused(known=rows((2999, 3301, 1)))
    assert "quarter of the full scale" in refused(resolution="800 kg")
    assert "too small" in refused(resolution="0")
    assert "too small" in refused(known=[{"true_weight": "-4 kg", "reading": "3 kg"}])
    assert "unit of length" in refused(known=[{"true_weight": "4 mm", "reading": "3 kg"}])
    assert "too large" in refused(accuracy_class="26 %")
    assert "missing" in refused(known=[{"reading": "3 kg"}])


@given(error=st.floats(-60, 60), give_or_take=st.floats(0, 40))
def test_a_vaguer_weight_never_turns_doubt_into_a_verdict(error: float, give_or_take: float) -> None:
    known = rows((531, 531 + error, give_or_take), (531, 531 + error, give_or_take))
    sure = rows((531, 531 + error, 0), (531, 531 + error, 0))
    first, second = value(ask(sure), "within"), value(ask(known), "within")
    assert second in (first, "cannot tell")


@given(low=st.floats(-1e5, 1e5), span=st.floats(1e-3, 1e6))
def test_ticks_are_inside_and_few(low: float, span: float) -> None:
    ticks = round_ticks(low, low + span)
    assert 2 <= len(ticks) <= 7
    assert all(low - span * 1e-6 <= tick <= low + span * 1.000001 for tick in ticks)


def test_example() -> None:
    record = answer("gauge-check", worksheet("gauge-check").example)
    assert record["verdict"] == "ok"
    assert "95% bar" in record["figure"]["caption"]
