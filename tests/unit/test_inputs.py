"""Reading inputs against a declaration, and refusing them with words."""

import base64
from typing import Any

import pytest

from calc.answering import answer, worksheet
from calc.inputs import (
    BadInput,
    Bounds,
    ChoiceInput,
    CountInput,
    DateInput,
    FileInput,
    FlagInput,
    Given,
    Input,
    NumberInput,
    NumbersInput,
    PointInput,
    QuantityInput,
    Reading,
    RowsInput,
    TextInput,
    read_inputs,
    understood,
)
from calc.telling import error_records
from calc.words.writer import UnitSystem, Writer, plain

LENGTH = QuantityInput("width", dimension="length", bounds=Bounds(above=0, at_most=100))
COUNT = CountInput("legs", bounds=Bounds(at_least=1, below=5), default="2")
CHOICE = ChoiceInput("grade", choices=("80", "100"), required=False)
FLAG = FlagInput("latch", required=False)
TEXT = TextInput("label", required=False)
POINT = PointInput("at", dimension="length", required=False, bounds=Bounds(at_least=-500, at_most=500))
NUMBERS = NumbersInput("readings", dimension="force", required=False, bounds=Bounds(at_least=1, at_most=3))
ROWS = RowsInput("parts", columns=(LENGTH, POINT), required=False, bounds=Bounds(at_most=2))
FILE = FileInput("solid", required=False)
NUMBER = NumberInput("factor", required=False, bounds=Bounds(at_least=0, at_most=10))
ALL = (LENGTH, COUNT, CHOICE, FLAG, TEXT, POINT, NUMBERS, ROWS, FILE, NUMBER)


def reading(units: UnitSystem = "us") -> Any:
    return Reading(units, lambda path, value: f"Grade {value}")


def read_as(inputs: Any, raw: Any, units: UnitSystem = "us") -> Any:
    """What is read, or the refusals in words."""
    return read_inputs(inputs, raw, reading(units))


def said(caught: Any) -> Any:
    """The refusals in words, by input."""
    return {one["input"]: (one["given"], one["message"]) for one in error_records(caught.value.errors, ())}


def read(units: UnitSystem = "us", **raw: Any) -> Any:
    return read_as(ALL, raw, units)


def refusal(units: UnitSystem = "us", **raw: Any) -> Any:
    with pytest.raises(BadInput) as caught:
        read(units, **raw)
    return said(caught)


def test_everything_is_read() -> None:
    given = read(
        width="10", grade="Grade 80", latch="yes", label=" hook ", at=["1", "2 ft", 3], readings="10; 20 kN",
        parts=[{"width": 1}, {"width": "2 in", "at": "1;2;3"}], solid=base64.b64encode(b"solid").decode(), factor="2.5",
    )  # fmt: skip
    assert given.si("width") == pytest.approx(0.254)
    assert given.count("legs") == 2
    assert given.text("grade") == "80"
    assert given.flag("latch") is True
    assert given.text("label") == "hook"
    assert given.point("at") == pytest.approx((0.0254, 0.6096, 0.0762))
    assert given.numbers("readings") == pytest.approx((44.482216152605, 20000))
    assert [row.si("width") for row in given.rows("parts")] == pytest.approx([0.0254, 0.0508])
    assert given.rows("parts")[1].where("at") == "parts[1].at"
    assert given.data("solid") == b"solid"
    assert given.si("factor") == 2.5
    assert given.typed["width"] == "10"


def test_what_is_left_out_reads_as_nothing() -> None:
    given = read(width="1", label="  ")
    assert not given.has("grade")
    assert given.text("grade") == ""
    assert given.flag("latch") is False
    assert given.rows("parts") == ()
    assert given.numbers("readings") == ()
    assert given.data("solid") == b""
    for missing in (given.si, given.point):
        with pytest.raises(BadInput) as caught:
            missing("at")
        assert said(caught)["at"] == ("", "is missing. What you chose above needs it.")


def test_a_bare_number_takes_the_page_unit() -> None:
    assert read("si", width="10").si("width") == pytest.approx(0.010)


@pytest.mark.parametrize(
    ("raw", "path", "given", "message"),
    [
        ({}, "width", "", "is missing. Give a length such as 10 in, over 0 in and up to 100 in."),
        ({"width": "0"}, "width", "0", "is too small. Give a length"),
        ({"width": "1e-13 in"}, "width", "1e-13 in", "is too small. Give a length"),
        ({"width": "100.001"}, "width", "100.001", "is too large"),
        ({"width": "5 kg"}, "width", "5 kg", "where length is wanted"),
        ({"width": True}, "width", "true", "not a single value"),
        ({"width": [1]}, "width", "[1]", "not a single value"),
        (
            {"width": "1", "legs": "0"},
            "legs",
            "0",
            "is too small. Give a whole number, 1 or more and below 5.",
        ),
        ({"width": "1", "legs": "5"}, "legs", "5", "is too large"),
        ({"width": "1", "legs": "2.5"}, "legs", "2.5", "not a whole number"),
        ({"width": "1", "legs": "two"}, "legs", "two", "is not a whole number. Give"),
        ({"width": "1", "legs": "2 in"}, "legs", "2 in", "is not a whole number. Give"),
        ({"width": "1", "grade": "70"}, "grade", "70", "is not known here. Give one of: 80, 100."),
        ({"width": "1", "latch": "maybe"}, "latch", "maybe", "neither yes nor no. Give yes or no."),
        ({"width": "1", "at": "1;2"}, "at", "1;2", "three parts"),
        ({"width": "1", "at": ["1", "x", "3"]}, "at[1]", "x", "no number"),
        ({"width": "1", "at": ["1", None, "3"]}, "at[1]", "None", "not a single value"),
        ({"width": "1", "at": [1, 2, 501]}, "at[2]", "501", "too large"),
        ({"width": "1", "at": {"x": 1}}, "at", '{"x": 1}', "three lengths"),
        ({"width": "1", "readings": "1;2;3;4"}, "readings", "1;2;3;4", "has 4 values. Give values such as"),
        ({"width": "1", "readings": {"a": 1}}, "readings", '{"a": 1}', "is not a list"),
        ({"width": "1", "readings": "1; x"}, "readings", "1; x", "no number"),
        ({"width": "1", "parts": "width"}, "parts", "width", "not a list of rows. Give a list of rows"),
        ({"width": "1", "parts": [1]}, "parts", "[1]", "not a list of rows"),
        ({"width": "1", "parts": []}, "parts", "[]", "has no rows"),
        ({"width": "1", "parts": [{"width": 1}] * 3}, "parts", "", "has 3 rows"),
        ({"width": "1", "parts": [{"width": 1}, {"width": "-2"}]}, "parts[1].width", "-2", "too small"),
        (
            {"width": "1", "parts": [{"height": 1}]},
            "parts[0].height",
            "1",
            "not an input here; there are width, at",
        ),
        ({"width": "1", "solid": "%%%"}, "solid", "", "cannot be read as a file. Give a file."),
        ({"width": "1", "factor": "11"}, "factor", "11", "Give a number, 0 or more and up to 10"),
        ({"width": "1", "weight": "3"}, "weight", "3", "not an input here"),
    ],
)
def test_a_bad_input_is_named_with_what_would_do(raw: Any, path: str, given: str, message: str) -> None:
    errors = refusal(**raw)
    assert path in errors
    assert given in errors[path][0]
    assert message in errors[path][1]


def test_every_bad_input_is_named_at_once() -> None:
    assert set(refusal(width="-1", legs="9", grade="7")) == {"width", "legs", "grade"}


def test_a_bound_is_met_in_either_unit() -> None:
    assert read(width="100 in").si("width") == pytest.approx(2.54)
    assert read("si", width="2540 mm").si("width") == pytest.approx(2.54)
    assert read(width="1", at=[-500, 0, 500]).point("at")[0] == pytest.approx(-12.7)


def test_an_input_that_is_not_asked_may_be_missing() -> None:
    asked = QuantityInput(
        "angle", dimension="angle", shown_when={"how": ("angle",)}, bounds=Bounds(at_most=90)
    )
    how = ChoiceInput("how", choices=("angle", "tape"))
    assert not read_as((how, asked), {"how": "tape"}).has("angle")
    with pytest.raises(BadInput) as caught:
        read_as((how, asked), {"how": "angle"})
    assert said(caught)["angle"][1].startswith("is missing. Give an angle such as")


def accepted(declared: Input) -> str:
    return plain(Writer().message(declared.accepted(declared.name)))


def test_words_for_what_is_accepted() -> None:
    assert accepted(TEXT) == "a word or two"
    assert accepted(FILE) == "a file"
    assert accepted(POINT) == "three lengths, x, y and z, -500 in or more and up to 500 in"
    assert (
        accepted(QuantityInput("a", dimension="angle", bounds=Bounds(above=0, at_most=90)))
        == "an angle such as 10°, over 0° and up to 90°"
    )
    assert accepted(QuantityInput("t", dimension="temperature", bounds=Bounds(at_least=-3, below=0.1))) == (
        "a temperature such as 0.1 °F, -3 °F or more and below 0.1 °F"
    )
    assert "such as 10 lb" in accepted(QuantityInput("w", dimension="weight"))


def test_numbers_from_files_and_bytes() -> None:
    assert read(width="1", readings=5).numbers("readings") == pytest.approx((22.2411080763025,))
    assert read(width="1", readings="[1, 2]").numbers("readings") == pytest.approx(
        (4.4482216152605, 8.896443230521)
    )
    assert read(width="1", solid=b"raw").data("solid") == b"raw"
    assert read(width="1", parts='[{"width": "1 in"}]').rows("parts")[0].si("width") == pytest.approx(0.0254)
    assert read(width="1", latch=True).flag("latch") is True


def test_long_text_is_kept_whole_or_refused() -> None:
    long = TextInput("log", long=True, required=False)
    text = "\t1\n" * 300
    given = read_as((long,), {"log": text})
    assert given.text("log") == text
    assert given.refuse("log", "odd").errors[0].given == ""
    assert read_as((TEXT,), {"label": "x" * 300}).text("label") == "x" * 200
    assert not read_as((long,), {"log": " \n"}).has("log")
    with pytest.raises(BadInput) as caught:
        read_as((long,), {"log": "1" * 200_001})
    assert said(caught)["log"][1] == "has 200,001 characters. Give text of up to 200,000 characters."


def test_several_words_come_as_a_list_too() -> None:
    several = TextInput("damage", several=True, required=False)
    assert read_as((several,), {"damage": ["nick", "weld"]}).text("damage") == "nick, weld"
    assert not read_as((several,), {"damage": []}).has("damage")
    for wrong in ([1], [["nick"]]):
        with pytest.raises(BadInput):
            read_as((several,), {"damage": wrong})


def test_rows_are_not_repeated_in_a_refusal() -> None:
    assert read(width="1", parts=[{"width": 1}]).refuse("parts", "odd").errors[0].given == ""
    assert read(width="1", readings="1; 2").refuse("readings", "odd").errors[0].given == "1; 2"


WEIGHED = (
    QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=2_000_000), required=False),
    QuantityInput("throat", dimension="length", bounds=Bounds(above=0, at_most=40), required=False),
    QuantityInput("worn", dimension="fraction", bounds=Bounds(at_least=0, at_most=100), required=False),
    QuantityInput("gap", dimension="length", required=False, point_is_decimal=True),
    CountInput("legs", bounds=Bounds(at_least=1, at_most=9000), required=False),
    DateInput("tested", required=False),
    TextInput("words", required=False),
)


def read_us(units: UnitSystem = "us", **raw: Any) -> Given:
    return read_inputs(WEIGHED, raw, Reading(units, lambda _path, value: value))


@pytest.mark.parametrize(
    "raw",
    [
        {"load": "1.500 kg"},
        {"load": "2 ton"},
        {"load": "2 T"},
        {"worn": "1/3"},
        {"worn": "0.4"},
        {"throat": "6-2"},
        {"throat": "1.000 mm"},
        {"legs": "2.000"},
        {"tested": "5/6/2026"},
    ],
)
def test_what_has_two_readings_is_asked_back(raw: dict[str, Any]) -> None:
    with pytest.raises(BadInput):
        read_us(**raw)


def test_a_thousand_out_of_bounds_is_no_second_reading() -> None:
    assert read_us(throat="31.499 mm").si("throat") == pytest.approx(0.031499)
    assert read_us(throat="1.125 in").si("throat") == pytest.approx(1.125 * 0.0254)
    assert read_us(gap="9.525 mm").si("gap") == pytest.approx(0.009525)


def test_a_share_out_of_bounds_is_no_second_reading_of_a_percent() -> None:
    """A gauge of class 0.5 was asked whether it is of 50 percent, which no gauge is."""
    small = QuantityInput("class_", dimension="fraction", bounds=Bounds(above=0, at_most=25))
    assert read_as([small], {"class_": "0.5"}).si("class_") == pytest.approx(0.005)
    for typed in ("0.25", "0.1", "1/8"):
        with pytest.raises(BadInput):
            read_as([small], {"class_": typed})
    with pytest.raises(BadInput):
        read_as([small], {"class_": "-0.5"})


def test_what_was_understood_is_said_where_it_could_be_read_otherwise() -> None:
    writer = Writer()

    def said(units: UnitSystem, **raw: Any) -> dict[str, str]:
        found = understood(WEIGHED, read_us(units, **raw))
        return {path: writer.plain(fact) for path, fact in found.items()}

    assert said("us", load="1,500 kg", words="1,500 kg") == {"load": "1,500 kg (3,310 lb)"}
    assert said("si", load="1.5k lb") == {"load": "1,500 lb (680 kg)"}
    assert said("us", load="1 1/2 t") == {"load": "1.5 t (3,310 lb)"}
    assert said("us", throat="31.499 mm") == {"throat": "31.499 mm (1.24 in)"}
    assert said("us", worn="1-1/2 %") == {"worn": "1.5%"}
    assert said("us", load="1500 kg", tested="2026-01-17", legs="3") == {}
    assert said("us", tested="17 Jan 2026") == {"tested": "2026-01-17"}


def test_what_was_understood_stands_in_the_answer_by_path() -> None:
    rows = [{"true_weight": "1,185 lb", "reading": "1190 lb"}]
    record = answer("gauge-check", {**worksheet("gauge-check").example, "known": rows})
    assert record["understood"]["known[0].true_weight"] == "1,185 lb (538 kg)"
    assert "known[0].reading" not in record["understood"]
