"""what-is-it: marks, worn wire, twin sizes, and what is never given a lifting rating."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from calc.inspecting.chain_marks import (
    chain_sizes,
    may_lift,
    pitch_fits,
    read_marks,
    sizes_of_wire,
)
from calc.inspecting.chain_ratings import lifting_ratings, tie_down_ratings
from calc.inspecting.nominal_wire import nominal_m, wire_gone
from calc.inspecting.thickness import thickness_limits
from tests.saying import one_reading

ALTERED = ("welded", "heated", "cracked", "bent", "home-made")


def ask(**raw: Any) -> dict[str, Any]:
    """A chain to lift with, looked over and found sound, unless the case says otherwise."""
    return answer("what-is-it", {"use": "lift", "condition": "sound", **raw})


def refused(**raw: Any) -> str:
    with pytest.raises(Refused) as caught:
        answer("what-is-it", {"use": "lift", **raw})
    return " | ".join(f"{error.input}: {error.message}" for error in caught.value.errors)


def value(record: dict[str, Any], name: str) -> Any:
    return record["results"][name]["value"]


@pytest.mark.parametrize(
    ("marks", "grades"),
    [
        ("G70", ("70",)), ("g-70", ("70",)), ("grade 70", ("70",)), ("GR.43", ("43",)), ("700", ("70",)), ("7", ("70",)),
        ("T", ("8",)), ("8", ("80", "8")), ("80", ("80",)), ("800", ("80",)), ("10", ("100",)), ("1000", ("100",)),
        ("V", ("10",)), ("M", ("4",)), ("4", ("43", "4")), ("G80 3/8", ("80",)), ("70 T", ("70", "8")),
        ("", ()), ("USA HT 120", ("43",)), ("X", ()),
    ],
)  # fmt: skip
def test_marks(marks: str, grades: tuple[str, ...]) -> None:
    assert read_marks(marks).grades == grades


@pytest.mark.parametrize(
    ("marks", "metric"),
    [("3/8 G70", "10"), ("10 mm 8", "10"), ("10MM T", "10"), ("1-1/4 8", "32"), ("1 1/4 in 8", "32"),
     ('5/16" 70', "8"), ("9/32 80", "7"), ("1/4 43", "7")],
)  # fmt: skip
def test_size_marks(marks: str, metric: str) -> None:
    assert [size.metric_name for size in read_marks(marks).sizes] == [metric]


def test_unread_marks_and_sizes_without_a_row_are_told() -> None:
    assert read_marks("USA 70").not_read == ("USA",)
    assert read_marks("9 mm 70").sizes == ()
    assert read_marks("9 mm 70").not_read == ("9 MM",)
    assert read_marks("80 ?").not_read == ("?",)
    assert read_marks("80 亀裂").not_read == ("亀裂",)
    assert read_marks("80 chain").not_read == ()
    assert not read_marks(" ").looked
    assert read_marks("No  marks").looked
    assert read_marks("none").grades == read_marks("none").not_read == ()
    assert read_marks("none 80").not_read == ("NONE",)


def test_grades_that_lift() -> None:
    assert may_lift("70") is False
    assert may_lift("80") is True
    assert may_lift("10") is True
    assert may_lift("6") is None


def test_new_grade_70_does_not_lift_but_ties_down() -> None:
    record = ask(measured_diameter="0.397 in", pitch="1.22 in", marks="G70")
    assert record["verdict"] == "stop"
    assert value(record, "rating_lift") is None
    assert value(record, "rating_tie_down") == pytest.approx(6600)
    assert "may not lift" in record["headline"]


def test_sound_grade_100_of_one_size_is_rated() -> None:
    """Caution at best: it asks no load, so it compares nothing; the tag says what the sling lifts."""
    record = ask(measured_diameter="13.1 mm", pitch="39.7 mm", marks="100 1/2")
    assert record["verdict"] == "caution"
    assert value(record, "rating_lift") == pytest.approx(15000)
    assert value(record, "size") == "1/2 in (13 mm)"
    assert "one straight leg may lift 15,000 lb" in record["headline"]


def test_mark_8_takes_the_lower_of_two_printed_ratings() -> None:
    record = ask(measured_diameter="10.1 mm", pitch="30.3 mm", marks="8", use="both")
    assert record["verdict"] == "caution"
    assert value(record, "rating_lift") == pytest.approx(3150 / 0.45359237)


def test_mark_4_may_be_43_and_so_does_not_lift() -> None:
    record = ask(measured_diameter="10.1 mm", marks="4")
    assert record["verdict"] == "stop"
    assert value(record, "rating_lift") is None


def test_unmarked_counts_as_grade_30_tied_down_and_never_lifts() -> None:
    for use in ("lift", "tie_down", "both"):
        record = ask(measured_diameter="10.05 mm", pitch="31 mm", use=use, marks="none")
        assert record["verdict"] == ("stop" if use == "lift" else "caution")
        assert value(record, "rating_lift") is None
        assert value(record, "rating_tie_down") == pytest.approx(2650)


def test_letter_alone_has_no_limit_in_the_law_and_v_only_in_four_sizes() -> None:
    record = ask(measured_diameter="10.1 mm", pitch="30.3 mm", marks="T", use="both")
    assert value(record, "rating_lift") == pytest.approx(3150 / 0.45359237)
    assert value(record, "rating_tie_down") is None
    assert record["verdict"] == "caution"
    record = ask(measured_diameter="10.1 mm", pitch="30.3 mm", marks="V 10 mm")
    assert value(record, "rating_lift") == pytest.approx(4000 / 0.45359237)
    record = ask(measured_diameter="20.1 mm", marks="V 20 mm")
    assert record["verdict"] == "unknown"
    assert value(record, "rating_lift") is None
    assert "no lifting rating" in record["headline"]
    record = ask(measured_diameter="10.1 mm", marks="V 10 mm", use="tie_down")
    assert record["verdict"] == "unknown"
    assert "no tie-down limit" in record["headline"]


def test_size_that_no_tie_down_table_has() -> None:
    record = ask(measured_diameter="32.3 mm", marks="70", use="tie_down")
    assert record["verdict"] == "unknown"
    assert value(record, "rating_tie_down") is None


def test_a_thin_reading_keeps_the_larger_worn_size_in_sight() -> None:
    """8.6 mm is 5/16 in as new, or 3/8 in past its limit of 9 mm: no rating until the two are told apart."""
    record = ask(measured_diameter="8.6 mm", marks="80")
    sizes = value(record, "candidates")
    assert [line.split(":")[0] for line in sizes] == ["5/16 in (8 mm)", "3/8 in (10 mm)"]
    assert record["verdict"] == "unknown"
    assert value(record, "rating_lift") is None
    assert any("badly worn" in caution["text"] for caution in record["cautions"])
    assert any("inside length of a link" in caution["text"] for caution in record["cautions"])


def test_the_inside_length_settles_it() -> None:
    record = ask(measured_diameter="8.6 mm", pitch="30.9 mm", marks="80")
    assert value(record, "size") == "3/8 in (10 mm)"
    assert "rules out" in "; ".join(value(record, "why"))
    assert record["verdict"] == "stop"
    record = ask(measured_diameter="8.6 mm", pitch="24.4 mm", marks="80")
    assert value(record, "size") == "5/16 in (8 mm)"
    assert value(record, "rating_lift") == pytest.approx(4500)


def test_a_size_the_grade_is_not_made_in_is_left_out() -> None:
    sizes = value(ask(measured_diameter="8.6 mm", marks="70"), "candidates")
    assert len(sizes) == 3
    assert len(value(ask(measured_diameter="8.6 mm", marks="100"), "candidates")) == 2


def test_size_mark_against_the_wire() -> None:
    """The stricter counts: a thicker wire than the mark names is rated as neither."""
    for use in ("lift", "tie_down", "both"):
        record = ask(measured_diameter="13.1 mm", marks="80 3/8", use=use)
        assert value(record, "rating_lift") is None
        assert value(record, "rating_tie_down") is None
        assert record["verdict"] == "unknown"
    assert "do not agree" in record["headline"]
    assert "does not go with the size mark" in refused(
        measured_diameter="10 mm", marks="80 3/8", pitch="39.1 mm"
    )


@pytest.mark.parametrize("wire", ["0.285 in", "0.25 in", "0.354 in"])
@pytest.mark.parametrize("use", ["lift", "tie_down", "both"])
def test_worn_past_the_limit_of_the_size_that_the_mark_names(wire: str, use: str) -> None:
    """24 percent gone passed with 7,100 lb, where chain-check stops under 9 mm (0.3543 in)."""
    record = ask(measured_diameter=wire, marks="80 3/8", use=use)
    assert record["verdict"] == "stop"
    assert value(record, "rating_lift") is None
    assert value(record, "rating_tie_down") is None
    assert "thinner than 3/8 in (10 mm) chain may be" in record["headline"]
    assert ask(measured_diameter="0.355 in", marks="80 3/8")["verdict"] == "caution"


@pytest.mark.parametrize(
    "marks", ["80 3/8 welded", "80 3/8 ?", "80 3/8 亀裂", "80 9 mm", "80 3/8 none", "USA 80 3/8"]
)
@pytest.mark.parametrize("use", ["lift", "tie_down", "both"])
def test_marks_not_understood_leave_it_unknown(marks: str, use: str) -> None:
    record = ask(measured_diameter="10 mm", marks=marks, use=use)
    assert record["verdict"] == "unknown"
    assert value(record, "rating_lift") is None
    assert value(record, "rating_tie_down") is None
    assert "Not every mark was understood" in record["headline"]


@pytest.mark.parametrize("use", ["lift", "tie_down", "both"])
@pytest.mark.parametrize("left_out", [{"condition": ""}, {"condition": "worn"}, {"marks": ""}])
def test_not_looked_at_or_worn_is_unknown(left_out: dict[str, str], use: str) -> None:
    """Sound was the default."""
    record = ask(**{"measured_diameter": "10 mm", "marks": "80 3/8", "use": use, **left_out})
    assert record["verdict"] == "unknown"
    assert value(record, "rating_lift") is None
    assert value(record, "rating_tie_down") is None


def test_a_tie_down_that_cannot_be_rated_shows_no_lifting_rating() -> None:
    record = ask(measured_diameter="10.1 mm", pitch="30.3 mm", marks="T", use="tie_down")
    assert record["verdict"] == "unknown"
    assert value(record, "rating_lift") is None


def test_new_wire_is_what_chain_check_takes() -> None:
    """3/8 in chain is 10 mm wire on both sheets; it was 9.525 mm here."""
    record = ask(measured_diameter="9.5 mm", pitch="30 mm", marks="80 3/8")
    assert value(record, "least_wear") == pytest.approx(5.0)
    for size in chain_sizes():
        assert wire_gone(nominal_m(size), size) == 0
        assert thickness_limits(size)[0].value_si < nominal_m(size)


@pytest.mark.parametrize("condition", ALTERED)
@pytest.mark.parametrize("use", ["lift", "tie_down", "both"])
def test_altered_chain_never_gets_a_rating(condition: str, use: str) -> None:
    record = ask(measured_diameter="13.2 mm", pitch="39.1 mm", marks="100", use=use, condition=condition)
    assert record["verdict"] == "stop"
    assert value(record, "rating_lift") is None
    assert value(record, "rating_tie_down") is None
    assert "Remove it from service" in record["headline"]


@given(
    measured_mm=st.floats(4.2, 34.0),
    marks=st.sampled_from(["", "USA", "3", "43", "G70", "7", "4", "X 300"]),
    use=st.sampled_from(["lift", "tie_down", "both"]),
    condition=st.sampled_from(["sound", "worn", *ALTERED]),
)
def test_what_is_not_lifting_chain_never_gets_a_lifting_rating(
    measured_mm: float, marks: str, use: str, condition: str
) -> None:
    try:
        record = ask(
            measured_diameter=f"{one_reading(measured_mm)} mm", marks=marks, use=use, condition=condition
        )
    except Refused as refusal:
        assert refusal.errors[0].input == "measured_diameter"
        return
    assert value(record, "rating_lift") is None
    assert use != "lift" or record["verdict"] in ("stop", "unknown")


@given(measured_mm=st.floats(4.2, 34.0), marks=st.sampled_from(["80", "100", "8", "T", "5"]))
def test_the_lowest_size_decides(measured_mm: float, marks: str) -> None:
    sizes = sizes_of_wire(measured_mm / 1000)
    if not sizes:
        return
    record = ask(measured_diameter=f"{one_reading(measured_mm)} mm", marks=marks)
    rating = value(record, "rating_lift")
    alone = ask(
        measured_diameter=f"{one_reading(measured_mm)} mm",
        marks=f"{marks} {sizes[0].metric_name} mm",
    )
    if rating is None:
        assert record["verdict"] in ("stop", "unknown")
    else:
        assert rating == value(alone, "rating_lift")


def test_bad_input() -> None:
    assert "missing" in refused()
    assert "fits no chain" in refused(measured_diameter="2 mm")
    assert "fits no chain" in refused(measured_diameter="3 in")
    assert "too large" in refused(measured_diameter="5 in")
    assert "too small" in refused(measured_diameter="0")
    assert "too small" in refused(measured_diameter="-3 mm")
    assert "unit of weight" in refused(measured_diameter="10 kg")
    assert "no number" in refused(measured_diameter="thick")
    assert "does not go with a wire" in refused(measured_diameter="10 mm", pitch="5 in")
    assert "one of: lift" in refused(measured_diameter="10 mm", use="swing")
    assert refused(measured_diameter="10 mm", use="").startswith("use: is missing")


def test_pitch_bounds_and_wear() -> None:
    size = next(size for size in chain_sizes() if size.metric_name == "10")
    assert pitch_fits(0.0340, size, short_link=True)
    assert not pitch_fits(0.0341, size, short_link=True)
    assert pitch_fits(0.0341, size, short_link=False)
    assert not pitch_fits(0.0257, size, short_link=False)
    assert wire_gone(0.0101, size) == 0.0
    assert wire_gone(0.010 * 0.83, size) == pytest.approx(0.17)


def test_example_runs_and_the_figure_says_it_in_words() -> None:
    record = answer("what-is-it", worksheet("what-is-it").example)
    assert "Measure the wire" in record["figure"]["caption"]
    assert record["figure"]["svg"].startswith("<svg")
    worn = ask(measured_diameter="10.1 mm", marks="80")
    assert "three wire thicknesses" in worn["figure"]["caption"]


@pytest.mark.parametrize("marks", ["3/8 in 8 mm 80", "3/8 1/2 80", "10 mm 13 mm 8", "3/8 5/16 G70"])
def test_two_size_marks_are_a_contradiction(marks: str) -> None:
    """The one that went with the wire was taken, and 7,100 lb with it."""
    record = ask(measured_diameter="0.394 in", marks=marks, use="both")
    assert record["verdict"] in ("unknown", "stop")
    assert record["results"]["rating_tie_down"]["value"] is None


@pytest.mark.parametrize("grade", ["80", "100", "70", "43", "30", "8", "5"])
@pytest.mark.parametrize("use", ["lift", "tie_down"])
def test_a_thinner_wire_is_never_rated_where_a_thicker_one_is_not(grade: str, use: str) -> None:
    """Grade 80 of 0.394 in could not be told from 1/2 in worn out, and of 0.36 in was rated as 3/8 in. Without a size mark and
    an inside length only the largest size of a grade is sure.
    """
    rated: list[float] = []
    for thousandths in range(200, 1360, 4):
        wire = thousandths / 1000
        try:
            record = ask(measured_diameter=f"{wire:.4f} in", marks=grade, use=use)
        except Refused:
            continue
        if record["verdict"] == "caution":
            rated.append(wire)
    sizes = [size for size in chain_sizes() if lifting_ratings(grade, size) + tie_down_ratings(grade, size)]
    assert all(wire >= sizes[-1].thinnest_m / 0.0254 * 0.89 for wire in rated), rated[:3]
