"""beam-lift: statics, symmetry, refusals, words."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.lifting.beam_lift import WORKSHEET
from calc.lifting.beams import (
    Beam,
    Ends,
    SectionName,
    box_tube,
    i_section,
    round_bar,
    round_tube,
    shear_area_m2,
)
from tests.saying import one_reading

G = 9.80665
FLAT = {
    "load": "730 kg",
    "use": "bench",
    "span": "3.1 m",
    "ends": "simple",
    "material": "steel",
    "design_factor": "3",
    "own_weight": "0",
    "load_sits": "hung-below",
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
    assert value(found, "deflection") == pytest.approx(1000 * 730 * G * 3.1**3 / (48 * 200e9 * second))
    assert value(found, "deflection_at") == pytest.approx(1550, rel=1e-6)
    assert value(found, "span_over_deflection") == pytest.approx(3100 / value(found, "deflection"))
    assert value(found, "stress_share") == pytest.approx(100 * value(found, "stress") / 80)


def test_cantilever_and_built_in_ends() -> None:
    second = 0.061 * 0.117**3 / 12
    out = run(ends="cantilever")
    assert value(out, "moment") == pytest.approx(730 * G * 3.1)
    assert value(out, "moment_at") == pytest.approx(0, abs=1e-6)
    assert value(out, "deflection") == pytest.approx(1000 * 730 * G * 3.1**3 / (3 * 200e9 * second))
    built_in = run(ends="fixed", position="1.55 m")
    assert value(built_in, "deflection") == pytest.approx(1000 * 730 * G * 3.1**3 / (192 * 200e9 * second))
    assert value(built_in, "moment") == pytest.approx(730 * G * 3.1 / 8)
    assert "truly built in" in texts(built_in)


def test_own_weight_alone_by_its_text_book_forms() -> None:
    cases: tuple[tuple[Ends, int, float], ...] = (
        ("simple", 8, 5 / 384),
        ("fixed", 12, 1 / 384),
        ("cantilever", 2, 1 / 8),
    )
    for ends, moment, sag in cases:
        beam = Beam(3.7, ends, 0.0, 1.1, 410.0, 9e5)
        assert beam.greatest_moment()[1] == pytest.approx(410 * 3.7**2 / moment)
        assert beam.greatest_sag()[1] == pytest.approx(sag * 410 * 3.7**4 / 9e5)


@given(st.sampled_from(["simple", "fixed"]), st.floats(0.05, 0.95), st.floats(0, 1))
def test_turned_end_for_end_it_bends_the_same(ends: Ends, where: float, x: float) -> None:
    one, other = (
        Beam(4.0, ends, 900.0, 4 * where, 77.0, 3e5),
        Beam(4.0, ends, 900.0, 4 - 4 * where, 77.0, 3e5),
    )
    assert one.sag_m(4 * x) == pytest.approx(other.sag_m(4 - 4 * x), abs=1e-12)
    assert one.moment_nm(4 * x) == pytest.approx(other.moment_nm(4 - 4 * x), abs=1e-9)


@given(st.sampled_from(["simple", "fixed", "cantilever"]), st.floats(0.1, 0.9))
def test_moment_is_the_bend_of_the_sag(ends: Ends, x: float) -> None:
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
     ({"section": "known", "second_moment": "1940 cm4", "outer_fibre": "100 mm"}, 1940e4)],
)  # fmt: skip
def test_sections(sizes: dict[str, str], second: float) -> None:
    assert value(run(**sizes), "second_moment") * 1e4 == pytest.approx(second)


def test_verdict_is_never_green() -> None:
    """A study gives no verdict on a beam: all is worked out, and too much is a stop."""
    assert run()["verdict"] == "ok"
    assert run()["verdict_words"] == "Worked out"
    over = run(load="2.6 t")
    assert over["verdict"] == "stop"
    assert "too much" in over["headline"]
    assert "do not lift from it" in texts(over)


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
    assert "do not lift from it" in texts(past)
    assert past["figure"] is None
    assert [step["label"] for step in past["steps"]] == [
        "Hardest bending",
        "Stress in the outer fiber",
        "Allowed here",
        "What the beam holds",
    ]


def test_a_rod_that_sags_more_than_a_tenth_of_its_span_gets_no_sag() -> None:
    rod = {"section": "round-bar", "diameter": "4 mm", "yield_strength": "1300 MPa", "design_factor": "2"}
    under = run(**rod, load="0.1 kg")
    slack = value(under, "span_over_deflection")
    assert slack > 10
    at_tenth = 0.1 * slack / 10
    assert value(
        run(**rod, load=f"{one_reading(at_tenth * 0.995)} kg"), "span_over_deflection"
    ) == pytest.approx(10, rel=6e-3)
    past = run(**rod, load=f"{one_reading(at_tenth * 1.005)} kg")
    assert value(past, "deflection") is None
    assert value(past, "stress_share") < 200
    assert "It sags by more than a tenth of its span" in past["headline"]
    assert "over its limit" not in texts(past)


def test_cautions_fit() -> None:
    assert "bends a lot" in texts(run(width="40 mm", depth="60 mm", load="400 kg", yield_strength="900 MPa"))
    assert "own weight is not counted" in texts(run())
    plain = texts(run(own_weight="50 kg/m", section="round-bar", diameter="160 mm"))
    assert not any(words in plain for words in ("own weight is not", "roll over", "limp", "truly built in"))


def test_without_a_yield_strength_nothing_is_held_against_it() -> None:
    found = run(yield_strength="")
    assert found["verdict"] == "unknown"
    for name in ("stress_share", "not_more_than", "span_over_deflection"):
        assert value(found, name) is None
    assert value(found, "deflection") > 0
    assert "if it stays elastic" in found["headline"]
    assert "Without the yield strength" in found["headline"]


def test_a_material_of_ones_own() -> None:
    found = run(material="other", modulus="100 GPa")
    assert value(found, "deflection") == pytest.approx(2 * value(run(), "deflection"))
    assert value(found, "not_more_than") is None
    assert "for steel only" in found["headline"]
    soft = run(material="other", modulus="1 GPa", yield_strength="")
    assert "sags by more than a tenth" in soft["headline"]
    assert soft["big"]["key"] == "stress"


def test_a_book_section_takes_its_farthest_fibre() -> None:
    # WT5x11 (AISC Manual, from memory): I 6.88 in4, the stem 3.88 in from the middle, S 1.72 in3 on that side, depth 5.09.
    tee = {"section": "known", "second_moment": "6.88 in4"}
    by_fibre, by_modulus = run(**tee, outer_fibre="4 in"), run(**tee, section_modulus="1.72 in3")
    assert value(by_fibre, "stress") == pytest.approx(value(by_modulus, "stress"))
    assert value(by_fibre, "not_more_than") is None


def test_reactions() -> None:
    found = run(position="1 m", own_weight="20 kg/m")
    assert value(found, "reaction_left") == pytest.approx((730 * 2.1 / 3.1 + 31) * G / 1000)
    assert value(found, "reaction_right") == pytest.approx((730 * 1 / 3.1 + 31) * G / 1000)
    out = run(ends="cantilever")
    assert (value(out, "reaction_left"), value(out, "reaction_right")) == (pytest.approx(730 * G / 1000), 0)


THIN = {
    "load": "500 lb", "span": "10 ft", "section": "rectangle", "width": "1/4 in", "depth": "10 in",
    "yield_strength": "36000 psi", "design_factor": "1.67",
}  # fmt: skip


def test_a_thin_bar_rolls_over_long_before_it_yields() -> None:
    # 1.9 E S t^2 / (L d) = 11.96 kip in; P = 4 M / L = 399 lb, over the factor 1.67: 239 lb.
    found = run(**THIN)
    assert value(found, "not_more_than") / 0.45359237 == pytest.approx(239, abs=1.0)
    assert "rolls over sideways" in found["results"]["limited_by"]["text"]
    assert value(found, "stress_share") < 100
    assert "more than the beam holds here" in found["headline"]
    assert "do not lift from it" in texts(found)
    on_top = run(**{**THIN, "load_sits": ""})
    assert value(on_top, "not_more_than") == pytest.approx(value(found, "not_more_than") / 1.2)
    held = run(**THIN, held_every="2 ft")
    assert value(held, "not_more_than") > 2 * value(found, "not_more_than")


def test_an_i_beam_rolls_over_and_says_where_no_limit_is_found() -> None:
    # W12x16: 12 x 0.22 web, 3.99 x 0.265 flange; 20 ft free, 3,300 lb in the middle.
    beam = {
        "load": "3300 lb", "span": "20 ft", "section": "i-beam", "depth": "12 in", "flange_width": "3.99 in",
        "web_thickness": "0.22 in", "flange_thickness": "0.265 in", "yield_strength": "36000 psi",
    }  # fmt: skip
    found = run(**beam)
    assert value(found, "stress_share") < 100
    assert "rolls over sideways" in found["results"]["limited_by"]["text"]
    assert "more than the beam holds" in found["headline"]
    short = run(**beam, held_every="2 ft")
    assert "stress sets the limit" in short["results"]["limited_by"]["text"]
    thin = run(**{**beam, "load": "500 lb", "flange_thickness": "0.1 in"})
    assert "buckles by itself" in thin["headline"]
    free = run(**{**beam, "load": "100 lb", "load_sits": "on-top"}, ends="cantilever")
    assert "on top of a cantilever" in free["headline"]
    hung = run(**{**beam, "load": "100 lb"}, ends="cantilever")
    assert value(hung, "not_more_than") > 0


def test_tubes() -> None:
    box = {"section": "box", "width": "80 mm", "depth": "110 mm", "wall": "5 mm"}
    found = run(**box)
    second = (80 * 110**3 - 70 * 100**3) / 12 * 1e-12
    assert value(found, "not_more_than") == pytest.approx(80e6 * second / 0.055 * 4 / 3.1 / G)
    assert "deep and narrow" in run(**{**box, "depth": "170 mm"})["headline"]


def test_the_load_it_takes_is_found_beside_its_own_weight() -> None:
    found = run(own_weight="50 kg/m", section="round-bar", diameter="160 mm")
    most = value(found, "not_more_than")
    at_most = run(
        own_weight="50 kg/m", section="round-bar", diameter="160 mm", load=f"{one_reading(most)} kg"
    )
    assert value(at_most, "stress_share") == pytest.approx(100)
    heavy = run(own_weight="9000 kg/m", section="round-bar", diameter="160 mm", load="1 kg")
    assert value(heavy, "not_more_than") == pytest.approx(0, abs=1e-6)


@pytest.mark.parametrize(
    ("change", "where"),
    [({"position": "3.1 m"}, "position"), ({"position": "3.2 m", "ends": "cantilever"}, "position"),
     ({"section": "i-beam", "width": ""}, "flange_width"), ({"section": "known"}, "second_moment"),
     ({"section": "tube", "diameter": "50 mm", "wall": "26 mm"}, "wall"),
     ({"section": "i-beam", "flange_width": "50 mm", "web_thickness": "51 mm", "flange_thickness": "5 mm"}, "web_thickness"),
     ({"section": "i-beam", "flange_width": "50 mm", "web_thickness": "5 mm", "flange_thickness": "59 mm"}, "flange_thickness"),
     ({"span": "0"}, "span"), ({"span": "201 ft"}, "span"), ({"load": "-1"}, "load"), ({"load": "3 m"}, "load"),
     ({"section": "known", "second_moment": "9 in4"}, "outer_fibre"),
     ({"section": "known", "second_moment": "9 in4", "outer_fibre": "1 in", "section_modulus": "9 in3"}, "section_modulus"),
     ({"modulus": "90 GPa"}, "modulus"), ({"ends": "fixed"}, "position"), ({"held_every": "4 m"}, "held_every"),
     ({"material": "other"}, "modulus"), ({"ends": ""}, "ends"), ({"material": ""}, "material"),
     ({"design_factor": ""}, "design_factor"), ({"own_weight": ""}, "own_weight"),
     ({"design_factor": "1.4"}, "design_factor"), ({"material": "cheese"}, "material"), ({"section": ""}, "section")],
)  # fmt: skip
def test_refusals_name_their_box(change: dict[str, str], where: str) -> None:
    with pytest.raises(Refused) as caught:
        run(**change)
    assert [error.input for error in caught.value.errors] == [where]


def test_end_of_a_cantilever_may_be_named() -> None:
    assert value(run(ends="cantilever", position="3.1 m"), "moment") == pytest.approx(730 * G * 3.1)


def test_example_answers() -> None:
    assert answer("beam-lift", WORKSHEET.example, "us")["verdict"] == "ok"


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


def test_a_load_close_to_an_end_shears_the_web() -> None:
    """A hair beside its support an 8 in beam of 1/4 in web "took not more than" 517 tonnes: bending was all that was asked."""
    raw = {**WORKSHEET.example, "position": "13.99 ft", "load": "100,000 lb"}
    found = answer("beam-lift", raw)
    # V Q / (I b): 4 x 5/16 flanges on a web of 1/4, 36 ksi / sqrt(3) / 3 over I b / Q, by hand.
    depth, width, web, flange = 8.0, 4.0, 0.25, 0.3125
    second = (width * depth**3 - (width - web) * (depth - 2 * flange) ** 3) / 12
    first = width * flange * (depth - flange) / 2 + web * (depth / 2 - flange) ** 2 / 2
    bears_lb = 36_000 / math.sqrt(3) / 3 * second * web / first
    assert found["results"]["limited_by"]["text"] == "it shears first, beside an end"
    assert found["results"]["not_more_than"]["value"] == pytest.approx(bears_lb, rel=0.02)
    assert any(one["kind"] == "prohibition" for one in found["cautions"])
    assert "not more than 0 lb" in answer("beam-lift", {**raw, "own_weight": "10000"})["headline"]
    for ends, position in (("cantilever", "1 in"), ("fixed", "1 in")):
        other = answer("beam-lift", {**raw, "ends": ends, "position": position, "load_sits": "hung-below"})
        assert other["results"]["limited_by"]["text"] == "it shears first, beside an end"


@pytest.mark.parametrize(
    ("name", "sizes"),
    [
        ("rectangle", (0.06, 0.1)),
        ("round-bar", (0.05,)),
        ("box", (0.06, 0.1, 0.006)),
        ("i-beam", (0.2, 0.1, 0.0055, 0.0085)),
        ("tube", (0.1, 0.001)),
    ],
)
def test_shear_area_is_that_of_the_summed_section(name: SectionName, sizes: tuple[float, ...]) -> None:
    """I b / Q by strips of the section, a second method; a thin tube is a ring to one part in a hundred."""
    strips, half = 20_000, sizes[{"rectangle": 1, "box": 1}.get(name, 0)] / 2

    def width_at(y: float) -> float:
        if name == "rectangle":
            return sizes[0]
        if name == "round-bar":
            return 2 * math.sqrt(half**2 - y**2)
        if name == "tube":
            hole = max(0.0, (half - sizes[1]) ** 2 - y**2)
            return 2 * (math.sqrt(half**2 - y**2) - math.sqrt(hole))
        if name == "box":
            return sizes[0] if y > half - sizes[2] else 2 * sizes[2]
        return sizes[1] if y > half - sizes[3] else sizes[2]

    middles = [(step + 0.5) / strips * half for step in range(strips)]
    first = sum(y * width_at(y) for y in middles) * half / strips
    second = 2 * sum(y * y * width_at(y) for y in middles) * half / strips
    assert shear_area_m2(name, *sizes) == pytest.approx(second * width_at(0.0) / first, rel=0.01)


def test_a_load_that_is_nothing_beside_the_beam_is_answered() -> None:
    """2e-153 lb was lost in the beam's own weight, and the end that it presses could not be found: what is too near to nothing
    is refused now, and the least that is taken is answered.
    """
    with pytest.raises(Refused):
        answer("beam-lift", {**WORKSHEET.example, "load": "2.2437e-153"})
    assert answer("beam-lift", {**WORKSHEET.example, "load": "2.3e-12"})["verdict"] == "ok"


@pytest.mark.parametrize("use", ["overhead", ""])
@pytest.mark.parametrize(
    "more",
    [
        {},
        {"section": "i-beam", "depth": "200 mm", "flange_width": "100 mm", "web_thickness": "6 mm", "flange_thickness": "9 mm"},
        {"section": "box", "width": "30 mm", "wall": "3 mm"},
        {"section": "known", "second_moment": "800 cm4", "outer_fibre": "50 mm"},
        {"load": "30 t"},
        {"yield_strength": ""},
        {"load_sits": "on-top", "ends": "cantilever"},
        {"material": "aluminium"},
    ],
)  # fmt: off
def test_a_beam_from_which_something_hangs_goes_to_the_frame(use: str, more: dict[str, str]) -> None:
    """No greatest load and no leave, whatever the section; bending is told, and sag where there is one."""
    found = run(**{**more, "use": use})
    assert found["verdict"] == "unknown"
    assert value(found, "not_more_than") is None
    assert value(found, "limited_by") in (None, "")
    assert found["headline"].startswith("Do not lift from this beam")
    assert "your own frame" in found["headline"]
    assert value(found, "moment") > 0
    bench = run(**{**more, "use": "bench"})
    for result in ("moment", "stress", "deflection"):
        assert value(found, result) == value(bench, result)
