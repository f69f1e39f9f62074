"""beam-lift: statics, symmetry, refusals, words."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.lifting.beam_lift import WORKSHEET
from calc.lifting.beams import Beam, box_tube, i_section, round_bar, round_tube

G = 9.80665
FLAT = {
    "load": "730 kg",
    "span": "3.1 m",
    "section": "rectangle",
    "width": "61 mm",
    "depth": "117 mm",
    "yield_strength": "240 MPa",
}


def run(**more: str) -> dict[str, Any]:
    return answer("beam-lift", {**FLAT, **more}, "si")


def value(record: dict[str, Any], key: str) -> Any:
    return record["results"][key]["value"]


def texts(record: dict[str, Any]) -> str:
    return " ".join(caution["text"] for caution in record["cautions"])


def test_load_in_the_middle() -> None:
    found = run()
    second = 0.061 * 0.117**3 / 12
    assert value(found, "moment") == pytest.approx(730 * G * 3.1 / 4)
    assert value(found, "stress") == pytest.approx(730 * G * 3.1 / 4 * 0.0585 / second / 1e6)
    assert value(found, "deflection") == pytest.approx(1000 * 730 * G * 3.1**3 / (48 * 210e9 * second))
    assert value(found, "deflection_at") == pytest.approx(1550, rel=1e-6)
    assert value(found, "span_over_deflection") == pytest.approx(3100 / value(found, "deflection"))
    assert value(found, "stress_share") == pytest.approx(100 * value(found, "stress") / 80)


def test_cantilever_and_built_in_ends() -> None:
    second = 0.061 * 0.117**3 / 12
    out = run(ends="cantilever")
    assert value(out, "moment") == pytest.approx(730 * G * 3.1)
    assert value(out, "moment_at") == pytest.approx(0, abs=1e-6)
    assert value(out, "deflection") == pytest.approx(1000 * 730 * G * 3.1**3 / (3 * 210e9 * second))
    built_in = run(ends="fixed")
    assert value(built_in, "deflection") == pytest.approx(1000 * 730 * G * 3.1**3 / (192 * 210e9 * second))
    assert value(built_in, "moment") == pytest.approx(730 * G * 3.1 / 8)
    assert "truly built in" in texts(built_in)


def test_own_weight_alone_by_its_text_book_forms() -> None:
    for ends, moment, sag in (("simple", 8, 5 / 384), ("fixed", 12, 1 / 384), ("cantilever", 2, 1 / 8)):
        beam = Beam(3.7, ends, 0.0, 1.1, 410.0, 9e5)
        assert beam.greatest_moment()[1] == pytest.approx(410 * 3.7**2 / moment)
        assert beam.greatest_sag()[1] == pytest.approx(sag * 410 * 3.7**4 / 9e5)


@given(st.sampled_from(["simple", "fixed"]), st.floats(0.05, 0.95), st.floats(0, 1))
def test_turned_end_for_end_it_bends_the_same(ends: str, where: float, x: float) -> None:
    one, other = (
        Beam(4.0, ends, 900.0, 4 * where, 77.0, 3e5),
        Beam(4.0, ends, 900.0, 4 - 4 * where, 77.0, 3e5),
    )
    assert one.sag_m(4 * x) == pytest.approx(other.sag_m(4 - 4 * x), abs=1e-12)
    assert one.moment_nm(4 * x) == pytest.approx(other.moment_nm(4 - 4 * x), abs=1e-9)


@given(st.sampled_from(["simple", "fixed", "cantilever"]), st.floats(0.1, 0.9))
def test_moment_is_the_bend_of_the_sag(ends: str, x: float) -> None:
    beam = Beam(4.0, ends, 900.0, 2.3, 77.0, 3e5)
    at, step = 4 * x, 1e-3
    if abs(at - 2.3) < 2 * step:
        return
    bend = (beam.sag_m(at - step) - 2 * beam.sag_m(at) + beam.sag_m(at + step)) / step**2
    assert beam.moment_nm(at) == pytest.approx(-bend * 3e5, abs=0.05)


@pytest.mark.parametrize(
    ("sizes", "second"),
    [({"section": "round-bar", "diameter": "70 mm"}, math.pi / 64 * 70**4),
     ({"section": "tube", "diameter": "90 mm", "wall": "6 mm"}, math.pi / 64 * (90**4 - 78**4)),
     ({"section": "box", "width": "80 mm", "depth": "110 mm", "wall": "5 mm"}, (80 * 110**3 - 70 * 100**3) / 12),
     ({"section": "i-beam", "depth": "200 mm", "flange_width": "100 mm", "web_thickness": "6 mm", "flange_thickness": "9 mm"},
      (100 * 200**3 - 94 * 182**3) / 12),
     ({"section": "known", "second_moment": "1940 cm4", "depth": "200 mm"}, 1940e4)],
)  # fmt: skip
def test_sections(sizes: dict[str, str], second: float) -> None:
    assert value(run(**sizes), "second_moment") * 1e4 == pytest.approx(second)


def test_verdict_is_never_green() -> None:
    assert run()["verdict"] == "caution"
    over = run(load="2.6 t")
    assert over["verdict"] == "stop"
    assert "too much" in over["headline"]
    assert "Do not lift" in texts(over)


def test_past_yield_there_is_no_sag() -> None:
    """The stress is yield over the factor at a share of 100 %, and yield at the factor times that."""
    factor = 3.0
    bending = value(run(), "stress_share") / 100
    yields = 730 / bending * factor  # kg: bending rises with the load
    below, past = run(load=f"{yields * 0.99:.3f} kg"), run(load=f"{yields * 1.01:.3f} kg")
    assert value(below, "deflection") > 0
    assert value(below, "stress_share") == pytest.approx(297, rel=2e-3)
    for name in ("deflection", "deflection_at", "span_over_deflection"):
        assert value(past, name) is None
        assert past["results"][name]["text"] == "beyond the formulas"
    assert past["verdict"] == "stop"
    assert past["big"]["key"] == "stress_share"
    assert "passes the yield point" in past["headline"]
    assert "Do not lift" in texts(past)
    assert past["figure"] is None
    assert [step["label"] for step in past["steps"]] == ["Hardest bending", "Stress in the outer fibre"]


def test_a_rod_that_sags_more_than_a_tenth_of_its_span_gets_no_sag() -> None:
    rod = {"section": "round-bar", "diameter": "4 mm", "yield_strength": "1300 MPa", "design_factor": "2"}
    under = run(**rod, load="0.1 kg")
    slack = value(under, "span_over_deflection")
    assert slack > 10
    at_tenth = 0.1 * slack / 10
    assert value(run(**rod, load=f"{at_tenth * 0.995} kg"), "span_over_deflection") == pytest.approx(
        10, rel=6e-3
    )
    past = run(**rod, load=f"{at_tenth * 1.005} kg")
    assert value(past, "deflection") is None
    assert value(past, "stress_share") < 200
    assert "It sags by more than a tenth of its span" in past["headline"]


def test_cautions_fit() -> None:
    assert "limp" in texts(run(width="40 mm", depth="60 mm", load="400 kg", yield_strength="900 MPa"))
    assert "own weight is not counted" in texts(run())
    plain = texts(run(own_weight="50 kg/m", section="round-bar", diameter="160 mm"))
    assert not any(words in plain for words in ("own weight is not", "roll over", "limp", "truly built in"))


def test_steel_has_a_yield_strength_and_others_must_give_theirs() -> None:
    found = answer("beam-lift", {k: v for k, v in FLAT.items() if k != "yield_strength"}, "us")
    assert value(found, "stress_share") == pytest.approx(100 * value(found, "stress") / 12_000)
    with pytest.raises(Refused) as caught:
        answer(
            "beam-lift",
            {k: v for k, v in FLAT.items() if k != "yield_strength"} | {"material": "hardwood"},
            "us",
        )
    assert caught.value.errors[0].input == "yield_strength"


@pytest.mark.parametrize(
    ("change", "where"),
    [({"position": "3.1 m"}, "position"), ({"position": "3.2 m", "ends": "cantilever"}, "position"),
     ({"section": "i-beam", "width": ""}, "flange_width"), ({"section": "known"}, "second_moment"),
     ({"section": "tube", "diameter": "50 mm", "wall": "26 mm"}, "wall"),
     ({"section": "i-beam", "flange_width": "50 mm", "web_thickness": "51 mm", "flange_thickness": "5 mm"}, "web_thickness"),
     ({"section": "i-beam", "flange_width": "50 mm", "web_thickness": "5 mm", "flange_thickness": "59 mm"}, "flange_thickness"),
     ({"span": "0"}, "span"), ({"span": "201 ft"}, "span"), ({"load": "-1"}, "load"), ({"load": "3 m"}, "load"),
     ({"design_factor": "1.4"}, "design_factor"), ({"material": "cheese"}, "material"), ({"section": ""}, "section")],
)  # fmt: skip
def test_refusals_name_their_box(change: dict[str, str], where: str) -> None:
    with pytest.raises(Refused) as caught:
        run(**change)
    assert [error.input for error in caught.value.errors] == [where]


def test_end_of_a_cantilever_may_be_named() -> None:
    assert value(run(ends="cantilever", position="3.1 m"), "moment") == pytest.approx(730 * G * 3.1)


def test_example_answers() -> None:
    assert answer("beam-lift", WORKSHEET.example, "us")["verdict"] == "caution"


@pytest.mark.parametrize("place", [0.9, 2.9])
def test_load_off_the_middle_sags_most_beside_the_middle(place: float) -> None:
    # P b (L^2 - b^2)^1.5 / (9 sqrt(3) L E I), b the shorter way to a support, at sqrt((L^2 - b^2) / 3) from the other one.
    span, short = 4.0, min(place, 4.0 - place)
    at, sag = Beam(span, "simple", 900.0, place, 0.0, 3e5).greatest_sag()
    assert sag == pytest.approx(
        900 * short * (span**2 - short**2) ** 1.5 / (9 * math.sqrt(3) * span * 3e5), rel=1e-9
    )
    far = math.sqrt((span**2 - short**2) / 3)
    assert at == pytest.approx(far if place > 2 else span - far, abs=1e-4)


def test_outer_fibres() -> None:
    assert round_bar(0.07).outer_fibre_m == pytest.approx(0.035)
    assert round_tube(0.09, 0.006).outer_fibre_m == pytest.approx(0.045)
    assert box_tube(0.08, 0.11, 0.005).outer_fibre_m == pytest.approx(0.055)
    assert i_section(0.2, 0.1, 0.006, 0.009).outer_fibre_m == pytest.approx(0.1)
