"""Unit tests of the worksheet heat-colour. The printed colours are checked in tests/published."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.heating.harms import harms
from calc.heating.temper_colours import colour_at, colours, heat_of
from calc.words.writer import Writer
from tests.saying import one_reading


def ask(**raw: str) -> dict[str, Any]:
    return answer("heat-colour", raw, "us")


@pytest.mark.parametrize(
    "case",
    [
        {"colour": "mauve"}, {"temperature": "-460 F"}, {"temperature": "-274 C"}, {"temperature": "2751 F"}, {"temperature": "warm"},
        {"temperature": "9 mm"}, {"temperature": "1e9 F"},
    ],
)  # fmt: skip
def test_bad_inputs_are_refused_by_name(case: dict[str, str]) -> None:
    with pytest.raises(Refused) as refused:
        ask(**case)
    assert refused.value.errors[0].input == next(iter(case))


def test_nothing_given_asks_for_the_colour() -> None:
    with pytest.raises(Refused, match="missing"):
        ask(colour="", temperature="")


def test_no_colour_proves_nothing() -> None:
    found = ask(colour="none")
    assert found["verdict"] == "unknown"
    assert found["results"]["temperature"]["value"] is None
    assert "proves nothing" in found["headline"]


@pytest.mark.parametrize("temperature", ["20 C", "399 F", "400 F", "700 F", "1500 F", "2000 F"])
def test_no_colour_hides_no_measured_heat(temperature: str) -> None:
    """A known heat with no colour on the part is that heat, as if the colour had not been asked."""
    alone, unseen = ask(temperature=temperature), ask(colour="none", temperature=temperature)
    for key in ("verdict", "headline", "results", "cautions"):
        assert unseen[key] == alone[key]


@pytest.mark.parametrize(
    ("colour", "temperature", "verdict", "hottest", "counts"),
    [
        ("very-pale-yellow", "1500 F", "stop", 1500, "the temperature"),
        ("cherry-red", "100 F", "stop", None, "the color"),
        ("dark-blue", "600 F", "stop", None, "the"),
    ],
)
def test_the_hotter_of_colour_and_temperature_counts_and_is_named(
    colour: str, temperature: str, verdict: str, hottest: float | None, counts: str
) -> None:
    both, by_colour = ask(colour=colour, temperature=temperature), ask(colour=colour)
    assert both["verdict"] == verdict
    expected = hottest or by_colour["results"]["temperature_high"]["value"]
    assert both["results"]["temperature_high"]["value"] == pytest.approx(expected)
    assert f"The hotter one counts, here {counts}" in both["headline"]


@given(st.sampled_from([colour.key for colour in colours()]), st.floats(-40, 1500))
def test_neither_colour_nor_temperature_hides_the_other(colour: str, temperature: float) -> None:
    typed = f"{one_reading(temperature)} C"
    both = ask(colour=colour, temperature=typed)
    assert both["verdict"] == "stop"
    for single in (ask(colour=colour), ask(temperature=typed)):
        for key in ("temperature_low", "temperature", "temperature_high"):
            assert both["results"][key]["value"] >= single["results"][key]["value"] - 1e-9


def test_every_colour_stops_rated_hardware() -> None:
    for colour in colours():
        found = ask(colour=colour.key)
        assert found["verdict"] == "stop"
        low, middle, high = (
            found["results"][key]["value"] for key in ("temperature_low", "temperature", "temperature_high")
        )
        assert low <= middle <= high
        kind = "tint" if colour.kind == "oxide_tint" else "glow"
        assert found["results"]["colour"]["value"] == f"{colour.key.replace('-', ' ')} {kind}"


@pytest.mark.parametrize(
    ("temperature", "verdict"),
    [("399 F", "unknown"), ("400 F", "stop"), ("401 F", "stop"), ("2750 F", "stop"), ("-40 F", "unknown"), ("-459.67 F", "unknown")],
)  # fmt: skip
def test_a_measured_heat_stops_from_the_first_band_on(temperature: str, verdict: str) -> None:
    assert ask(temperature=temperature)["verdict"] == verdict


def test_a_cool_part_shows_no_colour_and_no_harm() -> None:
    found = answer("heat-colour", {"temperature": "66 C"}, "si")
    assert found["results"]["colour"]["value"] is None
    assert found["results"]["colour"]["text"] == "none yet"
    assert "Nothing lasting" in found["results"]["what_happened"]["value"]
    assert found["steps"] == []


@given(st.floats(-200, 1500), st.floats(0, 800))
def test_more_heat_never_shows_a_cooler_colour(cool: float, more: float) -> None:
    first, second = colour_at(cool), colour_at(cool + more)
    if first is not None:
        assert second is not None
        assert second.degc >= first.degc


def test_every_heat_of_a_colour_reads_as_that_colour_or_a_neighbour() -> None:
    known = colours()
    for place, colour in enumerate(known):
        low, high = heat_of(colour)
        assert colour_at(low) in known[max(0, place - 1) : place + 2]
        assert colour_at(high) in known[place : place + 2]


def test_no_result_hints_at_a_capacity() -> None:
    writer = Writer("us", scopes=("worksheets/heat-colour",))
    text = " ".join(writer.text(f"harm-{harm.code}.words", **harm.facts) for harm in harms())
    assert len(text) > 500
    assert "% of" not in text
    assert "may carry" not in text
