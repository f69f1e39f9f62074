"""drop-load: factor, chain as a spring, rating, refusals."""

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from tests.saying import one_reading


def ask(**raw: Any) -> dict[str, Any]:
    """The answer for a rope or web sling that is marked and good, unless said otherwise."""
    return answer("drop-load", {"condition": "marked-good", "grade": "not-chain", **raw}, "si")


def value(record: dict[str, Any], name: str) -> Any:
    return record["results"][name]["value"]


def test_let_go_on_a_taut_sling_is_twice_the_weight() -> None:
    record = ask(weight="431 kg", drop_height="0 mm", stretch="3.7 mm", rating="1900 kg")
    assert value(record, "factor") == pytest.approx(2)
    assert value(record, "peak_force") == pytest.approx(2 * 431 * 9.80665 / 1000)
    assert value(record, "use_percent") == pytest.approx(2 * 43100 / 1900)
    assert record["verdict"] == "caution"
    assert value(record, "speed") == 0


def test_over_the_rating_stops() -> None:
    record = ask(weight="431 kg", drop_height="70 mm", stretch="3.7 mm", rating="1900 kg")
    assert record["verdict"] == "stop"
    assert any("Never snatch" in caution["text"] for caution in record["cautions"])
    assert value(record, "peak_stretch") == pytest.approx(3.7 * (1 + math.sqrt(1 + 140 / 3.7)))


def test_chain_by_size_and_length() -> None:
    record = ask(weight="431 kg", drop_height="70 mm", grade="80", size="10 mm", length="2.3 m")
    bars = 2 * math.pi / 4 * 0.010**2 / 2.3
    weight_n = 431 * 9.80665
    stiff, soft = 210e9 * bars, (54.5 - 0.025 * 10) * 1e9 * bars
    assert value(record, "static_stretch") == pytest.approx(weight_n / stiff * 1000)
    assert value(record, "peak_force") == pytest.approx(
        weight_n / 1000 * (1 + math.sqrt(1 + 2 * 0.070 * stiff / weight_n))
    )
    assert value(record, "peak_force_low") == pytest.approx(
        weight_n / 1000 * (1 + math.sqrt(1 + 2 * 0.070 * soft / weight_n))
    )
    assert value(record, "rating") == pytest.approx(7100 * 0.45359237)
    assert record["verdict"] == "stop"
    assert any("mooring chain" in caution["text"] for caution in record["cautions"])


def test_no_rating() -> None:
    unrated = ask(weight="431 kg", drop_height="7 mm", stretch="3.7 mm")
    assert "steady loads" in unrated["headline"]
    assert unrated["verdict"] == "unknown"
    barred = ask(weight="431 kg", drop_height="7 mm", size="10 mm", length="2.3 m", grade="70")
    assert barred["verdict"] == "stop"
    assert "no lifting rating" in barred["headline"]
    assert value(barred, "rating") is None
    unrated = ask(weight="431 kg", drop_height="7 mm", size="7/16", length="2.3 m", grade="80")
    assert unrated["verdict"] == "unknown"
    assert value(unrated, "use_percent") is None


@pytest.mark.parametrize("grade", ["70", "43", "30"])
def test_chain_that_ties_down_stops_whatever_its_tag_says(grade: str) -> None:
    """Grade 70 with a rating typed was "3 % of the 6,600 lb it is rated for"."""
    for more in ({"rating": "3000 kg"}, {}, {"rating": "3000 kg", "size": "10 mm"}):
        record = ask(weight="43 kg", drop_height="7 mm", stretch="3.7 mm", grade=grade, **more)
        assert record["verdict"] == "stop"
        assert "no lifting rating" in record["headline"]
        assert value(record, "rating") is None
        assert value(record, "use_percent") is None


def test_a_four_may_be_grade_43() -> None:
    drop = {"weight": "43 kg", "drop_height": "7 mm", "stretch": "3.7 mm", "rating": "3000 kg"}
    assert ask(**drop, grade="4")["verdict"] == "stop"
    assert ask(**drop, grade="M")["verdict"] == "caution"
    assert ask(**drop, grade="G-70")["verdict"] == "stop"


def test_a_tag_alone_rates_no_chain_of_unknown_grade() -> None:
    record = ask(weight="43 kg", drop_height="7 mm", stretch="3.7 mm", rating="3000 kg", grade="")
    assert record["verdict"] == "unknown"
    assert "of which grade" in record["headline"]
    assert value(record, "rating") is None


@pytest.mark.parametrize(
    ("condition", "verdict"), [("welded", "stop"), ("unmarked", "unknown"), ("", "unknown")]
)
def test_a_part_in_a_bad_state_has_no_rating(condition: str, verdict: str) -> None:
    record = ask(weight="43 kg", drop_height="7 mm", stretch="3.7 mm", rating="3000 kg", condition=condition)
    assert record["verdict"] == verdict
    assert value(record, "rating") is None
    assert value(record, "use_percent") is None


def test_tag_and_table_agree_or_are_refused() -> None:
    chain = {"weight": "43 kg", "drop_height": "7 mm", "grade": "80", "size": "10 mm", "length": "2.3 m"}
    agreed = ask(**chain, rating="7,100 lb")
    assert value(agreed, "rating") == pytest.approx(7100 * 0.45359237)
    with pytest.raises(Refused, match="does not agree with"):
        ask(**chain, rating="71,000 lb")
    by_tag = ask(weight="43 kg", drop_height="7 mm", stretch="3.7 mm", grade="80", rating="3000 kg")
    assert value(by_tag, "rating") == pytest.approx(3000)


def test_no_chain_is_stiffer_than_solid_steel() -> None:
    chain = {"weight": "431 kg", "drop_height": "7 mm", "grade": "80", "size": "10 mm", "length": "2.3 m"}
    with pytest.raises(Refused, match="less than a chain of solid steel"):
        ask(**chain, stretch="0.1 mm")
    measured = ask(**chain, stretch="1 mm")
    assert value(measured, "static_stretch") == pytest.approx(1)
    assert value(measured, "peak_force_low") is None
    assert value(measured, "peak_force") < value(ask(**chain), "peak_force")


def test_a_stretch_that_no_chain_has_is_refused_beside_its_size_and_length() -> None:
    """6.5 ft of 5/16 chain "stretched" by 10 in under 870 lb told a jerk of 2.3 times: careful instead of stop."""
    chain = {"weight": "870 lb", "drop_height": "3 in", "grade": "80", "size": "5/16", "length": "6.5 ft"}
    assert ask(**chain)["verdict"] == "stop"
    with pytest.raises(Refused, match="more than a chain of that size and length stretches"):
        ask(**chain, stretch="10 in")


@pytest.mark.parametrize(
    ("message", "raw"),
    [
        ("stretch: is needed", {}), ("length: is needed", {"size": "3/8"}), ("size: is not a size", {"size": "9 mm"}),
        ("stretch: is too small", {"stretch": "0"}), ("weight: is too small", {"weight": "-3 kg", "stretch": "1 mm"}),
        ("drop_height: is too small", {"drop_height": "-1 mm", "stretch": "1 mm"}),
        ("drop_height: is too large", {"drop_height": "60 m", "stretch": "1 mm"}),
        ("unit of weight", {"stretch": "1 kg"}), ("weight: is missing", {"weight": "", "stretch": "1 mm"}),
    ],
)  # fmt: skip
def test_bad_input(message: str, raw: dict[str, str]) -> None:
    with pytest.raises(Refused) as caught:
        ask(**{"weight": "431 kg", "drop_height": "7 mm", **raw})
    assert message in " | ".join(f"{error.input}: {error.message}" for error in caught.value.errors)


@given(weight=st.floats(1, 5e4), drop=st.floats(0, 5000), stretch=st.floats(0.01, 500))
def test_energy_is_conserved(weight: float, drop: float, stretch: float) -> None:
    """Weight times whole travel equals the energy in the sling: W (h + x) = F x / 2."""
    record = ask(
        weight=f"{one_reading(weight)} kg",
        drop_height=f"{one_reading(drop)} mm",
        stretch=f"{one_reading(stretch)} mm",
    )
    peak_n, travel = value(record, "peak_force") * 1000, value(record, "peak_stretch")
    assert weight * 9.80665 * (drop + travel) == pytest.approx(peak_n * travel / 2, rel=1e-9)
    assert value(record, "factor") >= 2


def test_example_and_figure() -> None:
    record = answer("drop-load", worksheet("drop-load").example)
    assert record["verdict"] == "stop"
    assert "falls 3 in" in record["figure"]["caption"]
    assert "kN" in ask(weight="431 kg", drop_height="7 mm", stretch="3.7 mm")["figure"]["svg"]


def test_a_tag_that_no_chain_of_its_size_bears_is_refused_where_no_table_rates_it() -> None:
    """7 mm chain of grade 4, which no table lists, was taken for 10 tonnes because its tag was said to say so."""
    chain = {"weight": "3 kg", "drop_height": "1 m", "grade": "M", "size": "7 mm", "length": "0.1 m"}
    with pytest.raises(Refused, match="more than any chain of that grade and size carries"):
        ask(**chain, rating="10 t")
    assert ask(**chain, rating="780 kg")["verdict"] == "stop"
