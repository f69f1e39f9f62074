"""Unit and property tests of tempering and of the worksheet temper-loss."""

from __future__ import annotations

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.heating.temper_loss import rockwell
from calc.heating.tempering import (
    condition_pa,
    cycle_parameter,
    hours_for,
    parameter,
    strength_after,
    tempered_steel,
)
from calc.words.facts import Absent
from calc.words.writer import UnitSystem, Writer

BASE = {"steel": "4140", "tempered_at": "431 C", "heated_to": "587 C", "minutes": "7.3 min", "heats": "one"}


def ask(units: UnitSystem = "si", **raw: str) -> dict[str, Any]:
    return answer("temper-loss", {**BASE, **raw}, units)


@pytest.mark.parametrize(
    "case",
    [
        {"steel": "unobtainium"}, {"steel": ""}, {"heats": ""}, {"heats": "some"}, {"tempered_at": "-300 C"}, {"tempered_at": "2800 F"}, {"tempered_at": "204 C"}, {"tempered_at": "651 C"},
        {"tempered_at": "blue"}, {"tempered_at": ""}, {"heated_to": "-274 C"}, {"heated_to": "1600 C"}, {"heated_to": "5 kg"},
        {"minutes": "0"}, {"minutes": "-4 min"}, {"minutes": "9.9 s"}, {"minutes": "24.1 h"}, {"minutes": "soon"}, {"minutes": "1e9 h"},
    ],
)  # fmt: skip
def test_bad_inputs_are_refused_by_name(case: dict[str, Any]) -> None:
    with pytest.raises(Refused) as refused:
        ask(**case)
    assert refused.value.errors[0].input == next(iter(case))


def test_a_short_heat_of_a_row_is_refused_by_its_path() -> None:
    with pytest.raises(Refused) as refused:
        ask(heats="several", more_heats=json.dumps([{"heated_to": "300 C", "minutes": "2 s"}]))
    assert refused.value.errors[0].input == "more_heats[0].minutes"


@pytest.mark.parametrize(
    "edge",
    [
        {"minutes": "10 s"},
        {"minutes": "24 h", "heated_to": "500 C"},
        {"tempered_at": "205 C"},
        {"tempered_at": "401 F"},
    ],
)
def test_the_edges_of_the_range_are_answered(edge: dict[str, Any]) -> None:
    found = ask(**edge)
    assert (found["verdict"], found["verdict_words"]) == ("ok", "Worked out")
    assert "A heated hook cannot be rated" in " ".join(caution["text"] for caution in found["cautions"])
    assert found["results"]["strength_after"]["value"] > 0


@pytest.mark.parametrize(
    ("case", "verdict", "words"),
    [
        ({"heated_to": "720 C"}, "unknown", "effect of tempering is gone"),
        ({"heated_to": "719 C"}, "unknown", "tested up to"),
        ({"heated_to": "690 C", "minutes": "3 h"}, "unknown", "the softest that was measured"),
    ],
)
def test_out_of_range_is_said_and_carries_no_number(case: dict[str, Any], verdict: str, words: str) -> None:
    found = ask(**case)
    assert found["verdict"] == verdict
    assert words in found["headline"]
    for key in ("strength_after", "strength_after_low", "strength_after_high", "hardness_after"):
        assert found["results"][key]["value"] is None
        assert "out of range" in found["results"][key]["text"]


def test_a_heat_too_cool_to_temper_changes_nothing() -> None:
    results = ask(heated_to="87 C")["results"]
    assert results["strength_after"]["value"] == pytest.approx(results["strength_before"]["value"])


def test_strength_outside_the_rockwell_table_is_said_in_words() -> None:
    outside = rockwell(3e9)
    assert isinstance(outside, Absent)
    said = Writer(scopes=("worksheets/temper-loss",)).plain(outside)
    assert said == "outside the Rockwell C table"


def test_very_hard_steel_leaves_the_rockwell_table_in_words() -> None:
    """At 1340 tempered at 205 C both columns are met; the softest 4140 piece sits at the table's foot."""
    assert ask(tempered_at="205 C", steel="1340")["results"]["hardness_before"]["value"] is not None
    soft = ask(tempered_at="650 C", heated_to="300 C", minutes="1 h")["results"]["hardness_before"]
    assert 18 <= soft["value"] <= 24


def test_later_heats_are_asked_for_where_there_were_several() -> None:
    with pytest.raises(Refused) as refused:
        ask(heats="several")
    assert refused.value.errors[0].input == "more_heats"


def test_later_heats_contradict_one_heat() -> None:
    with pytest.raises(Refused, match="heated once"):
        ask(heats="one", more_heats=json.dumps([{"heated_to": "587 C", "minutes": "5 min"}]))


def test_rows_of_heats_add_up() -> None:
    once = ask(minutes="9 min")["results"]["strength_after"]["value"]
    twice = ask(
        minutes="4 min", heats="several", more_heats=json.dumps([{"heated_to": "587 C", "minutes": "5 min"}])
    )
    assert twice["results"]["strength_after"]["value"] == pytest.approx(once, rel=1e-9)
    assert len(twice["steps"]) == len(ask()["steps"]) + 1


def test_us_and_si_pages_draw_the_same_answer() -> None:
    us, si = ask("us"), ask("si")
    assert us["results"]["strength_after"]["value"] * 6.894757293168361 == pytest.approx(
        si["results"]["strength_after"]["value"]
    )
    assert us["figure"]["svg"] != si["figure"]["svg"]


def test_an_empty_cycle_and_an_unknown_condition_are_errors() -> None:
    with pytest.raises(ValueError, match="at least one heat"):
        cycle_parameter([])
    with pytest.raises(LookupError, match="polished"):
        condition_pa("4140", "polished", "yield_strength")


@given(st.floats(110, 700), st.floats(0.003, 24), st.floats(0.003, 24), st.sampled_from([15.0, 20.0]))
def test_a_heat_cut_in_two_is_the_same_heat(
    degc: float, first: float, second: float, constant: float
) -> None:
    """The isothermal case: the step rule must give back T (C + log t)."""
    cut = cycle_parameter([(degc, first), (degc, second)], constant)
    assert cut == pytest.approx(parameter(degc, first + second, constant), rel=1e-12)


@given(st.floats(110, 690), st.floats(0.003, 24), st.floats(12.0, 18.4))
def test_time_for_a_parameter_is_its_inverse(degc: float, hours: float, wanted: float) -> None:
    assert hours_for(degc, parameter(degc, hours)) == pytest.approx(hours, rel=1e-9)
    assert hours_for(20.0, wanted) <= 1e30


@given(
    st.sampled_from(["4140", "1340"]), st.floats(205, 650), st.floats(110, 690), st.floats(0, 60), st.floats(0.003, 5),
    st.floats(1.0, 3.0),
)  # fmt: skip
def test_more_heat_never_leaves_it_stronger(
    name: str, tempered_at: float, degc: float, hotter: float, hours: float, longer: float
) -> None:
    steel = tempered_steel(name)
    less = strength_after(steel, tempered_at, [(degc, hours)])
    more = strength_after(steel, tempered_at, [(min(degc + hotter, 700.0), hours * longer)])
    before = steel.strength_pa(parameter(tempered_at, 1.0))
    if more is not None:
        assert less is not None
        assert before is not None
        assert more.middle_pa <= less.middle_pa * (1 + 1e-12) <= before * (1 + 2e-12)
        assert more.low_pa <= more.middle_pa <= more.high_pa
