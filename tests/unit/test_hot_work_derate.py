"""Unit tests of the worksheet hot-work-derate. What the rules print is checked in tests/published."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.heating.chain_heat import asme_bands, asme_rule, en_bands, en_rule
from calc.lifting.condition import ALTERED
from calc.quantities import to_si

BASE = {
    "grade": "80",
    "size": "3/8",
    "rating": "7,140 lb",
    "temperature": "450 F",
    "how_known": "measured",
    "condition": "marked-good",
}
USABLE = ("rating_hot", "rating_after", "rating_hot_asme", "rating_hot_en")


def ask(**raw: str) -> dict[str, Any]:
    return answer("hot-work-derate", {**BASE, **raw}, "us")


@pytest.mark.parametrize(
    "case",
    [
        {"temperature": "-500 F"}, {"temperature": "-274 C"}, {"temperature": "3000 F"}, {"temperature": "hot"},
        {"temperature": "12 in"}, {"temperature": ""}, {"rating": "0 lb"}, {"rating": "-5 lb"}, {"rating": "3 mm"},
        {"rating": "1e9 lb"}, {"grade": "90"}, {"grade": ""}, {"size": ""}, {"size": "9/16"}, {"size": "much"},
        {"rating": "71,000 lb"}, {"rating": "21,600 lb"}, {"how_known": "guessed"},
    ],
)  # fmt: skip
def test_bad_inputs_are_refused_by_name(case: dict[str, str]) -> None:
    with pytest.raises(Refused) as refused:
        ask(**case)
    assert refused.value.errors[0].input == next(iter(case))


@pytest.mark.parametrize("grade", ["30", "43", "70"])
def test_tie_down_grades_stop_without_a_number(grade: str) -> None:
    found = ask(grade=grade)
    assert found["verdict"] == "stop"
    assert found["results"]["rating_hot"]["value"] is None
    assert found["results"]["rating_after"]["value"] is None


@pytest.mark.parametrize("temperature", ["70 F", "450 F", "600 F", "1,000 F", "1,001 F", "2,000 F"])
def test_chain_heated_by_accident_stops_at_every_heat(temperature: str) -> None:
    found = ask(how_known="found", temperature=temperature)
    assert found["verdict"] == "stop"
    assert [found["results"][key]["value"] for key in USABLE] == [None] * 4


@pytest.mark.parametrize("condition", ALTERED)
def test_an_altered_chain_stops_and_shows_no_rating(condition: str) -> None:
    found = ask(condition=condition, temperature="70 F")
    assert found["verdict"] == "stop"
    assert [found["results"][key]["text"] for key in USABLE] == ["none"] * 4
    assert found["figure"] is None


@pytest.mark.parametrize(
    "less",
    [{"condition": ""}, {"condition": "unmarked"}, {"condition": "worn"}, {"how_known": ""}, {"condition": "", "how_known": ""}],
)  # fmt: skip
@pytest.mark.parametrize("temperature", ["70 F", "450 F", "600 F"])
def test_what_was_not_said_leaves_no_rating(less: dict[str, str], temperature: str) -> None:
    found = ask(**less, temperature=temperature)
    assert found["verdict"] == ("stop" if temperature == "600 F" else "unknown")
    assert [found["results"][key]["value"] for key in USABLE] == [None] * 4
    assert "at most" not in found["headline"]
    assert found["steps"] == []


@pytest.mark.parametrize("typed", ["70", "G70", "G-70", "Gr 70", "7", "700", "70 transport", "P7", "4", "M4", "HT", "BBB", "L", "3", "43"])  # fmt: skip
def test_a_mark_that_can_mean_a_tie_down_grade_stops(typed: str) -> None:
    for known in ({}, {"how_known": "found"}, {"how_known": "", "condition": ""}):
        found = ask(grade=typed, **known)
        assert found["verdict"] == "stop"
        assert "no lifting rating" in found["headline"]


@pytest.mark.parametrize(
    ("typed", "same"), [("G80", "80"), ("T", "80"), ("8", "80"), ("10", "100"), ("V", "100"), ("P", "5")]
)
def test_other_spellings_are_the_same_grade(typed: str, same: str) -> None:
    assert ask(grade=typed) == ask(grade=same)


@pytest.mark.parametrize("typed", ["XK2", "80 70", "none", "S"])
def test_a_mark_that_is_not_understood_is_refused(typed: str) -> None:
    with pytest.raises(Refused) as refused:
        ask(grade=typed)
    assert refused.value.errors[0].input == "grade"


def test_where_heat_takes_rating_for_good_no_hot_rating_stands_large() -> None:
    """At 600 F grade 80 loses for good: the printed shares may be told, nothing that could be used."""
    found = ask(temperature="600 F")
    assert found["verdict"] == "stop"
    assert found["big"]["key"] == "rating_hot"
    assert found["results"]["rating_hot"]["value"] is None
    assert found["results"]["rating_hot_asme"]["value"] > 0


@pytest.mark.parametrize(
    ("grade", "temperature"),
    [("80", "401 C"), ("80", "1001 F"), ("100", "1001 F"), ("100", "-41 F"), ("80", "-41 F"), ("5", "-41 C"), ("5", "401 C"), ("M", "476 C")],
)  # fmt: skip
def test_where_a_rule_forbids_there_is_no_number(grade: str, temperature: str) -> None:
    found = ask(grade=grade, temperature=temperature)
    assert found["verdict"] == "stop"
    assert found["results"]["rating_hot"]["value"] is None


@pytest.mark.parametrize(
    ("grade", "temperature", "verdict", "rule"),
    [
        ("80", "199 C", "caution", "ASME B30.9 and EN 818-6 agree"),
        ("80", "399 F", "caution", "EN 818-6"),
        ("80", "450 F", "caution", "ASME B30.9"),
        ("80", "600 F", "stop", "EN 818-6"),
        ("100", "400 F", "caution", "ASME B30.9"),
        ("100", "500 F", "stop", "ASME B30.9"),
        ("M", "350 C", "caution", "EN 818-6"),
    ],
)
def test_the_stricter_rule_governs_and_lasting_loss_stops(
    grade: str, temperature: str, verdict: str, rule: str
) -> None:
    found = ask(grade=grade, temperature=temperature)
    assert (found["verdict"], found["results"]["rule"]["value"]) == (verdict, rule)


def test_grade_4_has_no_printed_figure_for_afterwards() -> None:
    record = ask(grade="M", temperature="350 C")["results"]["rating_after"]
    assert record["value"] is None
    assert "no rule" in record["text"]


@given(
    st.sampled_from(["80", "100", "4", "5"]),
    st.floats(-60, 700, allow_nan=False),
    st.floats(0, 300, allow_nan=False),
)
def test_more_heat_never_leaves_more(grade: str, cool: float, more: float) -> None:
    if cool < to_si(-40, "degF", "temperature"):
        cool += 60.0
    for rule in (asme_rule, en_rule):
        before, after = rule(grade, cool), rule(grade, cool + more)
        for low, high in ((before.hot, after.hot), (before.after, after.after)):
            if high is not None:
                assert low is not None
                assert high <= low


@pytest.mark.parametrize(
    ("grade", "names"), [("80", ("ASME", "EN 818")), ("100", ("ASME",)), ("M", ("EN 818",))]
)
def test_the_drawing_has_the_rules_that_print_the_grade(grade: str, names: tuple[str, ...]) -> None:
    caption = ask(grade=grade, temperature="350 F")["figure"]["caption"]
    assert all((name in caption) == (name in names) for name in ("ASME", "EN 818"))
    assert "350 °F" in caption


def test_a_frost_is_off_the_drawing_but_answered() -> None:
    assert "upright" not in ask(temperature="-20 C")["figure"]["caption"]


@pytest.mark.parametrize(("bands", "rule"), [(asme_bands, asme_rule), (en_bands, en_rule)])
@pytest.mark.parametrize("grade", ["80", "100", "5", "4"])
def test_drawn_bands_are_the_rule(bands: Any, rule: Any, grade: str) -> None:
    for low, high, share in bands(grade):
        assert rule(grade, (low + high) / 2).hot == pytest.approx(share)


def test_a_tag_of_three_legs_or_of_a_size_without_a_row_is_taken() -> None:
    """OSHA, Guidance on Safe Sling Use, Table 1: 3/8 in grade 80, three legs at 90 degrees would be 21,300 lb."""
    assert ask(rating="21,300 lb")["verdict"] == "caution"
    assert ask(size="26 mm", grade="100", rating="90,000 lb", temperature="200 F")["verdict"] == "caution"
