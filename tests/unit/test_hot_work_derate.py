"""Unit tests of the worksheet hot-work-derate. What the rules print is checked in tests/published."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.heating.chain_heat import asme_bands, asme_rule, en_bands, en_rule
from calc.quantities import to_si


def ask(**raw: str) -> dict[str, Any]:
    return answer(
        "hot-work-derate", {"grade": "80", "rating": "7,140 lb", "temperature": "450 F", **raw}, "us"
    )


@pytest.mark.parametrize(
    "case",
    [
        {"temperature": "-500 F"}, {"temperature": "-274 C"}, {"temperature": "3000 F"}, {"temperature": "hot"},
        {"temperature": "12 in"}, {"temperature": ""}, {"rating": "0 lb"}, {"rating": "-5 lb"}, {"rating": "3 mm"},
        {"rating": "1e9 lb"}, {"grade": "90"}, {"grade": ""}, {"how_known": "guessed"},
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


def test_chain_heated_by_accident_cannot_be_rated() -> None:
    found = ask(how_known="found", temperature="70 F")
    assert found["verdict"] == "unknown"
    assert found["results"]["rating_hot"]["value"] is None
    assert found["results"]["rating_after"]["value"] is None


@pytest.mark.parametrize(
    ("grade", "temperature"),
    [("80", "401 C"), ("80", "1001 F"), ("100", "1001 F"), ("100", "-41 F"), ("80", "-41 F"), ("5", "-41 C"), ("5", "401 C"), ("4", "476 C")],
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
        ("4", "350 C", "caution", "EN 818-6"),
    ],
)
def test_the_stricter_rule_governs_and_lasting_loss_stops(
    grade: str, temperature: str, verdict: str, rule: str
) -> None:
    found = ask(grade=grade, temperature=temperature)
    assert (found["verdict"], found["results"]["rule"]["value"]) == (verdict, rule)


def test_grade_4_has_no_printed_figure_for_afterwards() -> None:
    record = ask(grade="4", temperature="350 C")["results"]["rating_after"]
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
    ("grade", "names"), [("80", ("ASME", "EN 818")), ("100", ("ASME",)), ("4", ("EN 818",))]
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
