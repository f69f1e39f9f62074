"""The vocabulary of a worksheet: reading inputs against a declaration, refusing with words, writing results."""

import base64

import pytest

from calc.worksheet import (
    Answer,
    BadInput,
    Choice,
    Input,
    Result,
    Say,
    read_inputs,
    result_record,
    worst,
)

LENGTH = Input("width", "Width", "quantity", "length", above=0, at_most=100)
COUNT = Input("legs", "Legs", "count", at_least=1, below=5, default="2")
CHOICE = Input(
    "grade", "Grade", "choice", choices=(Choice("80", "Grade 80"), Choice("100", "Grade 100")), required=False
)
FLAG = Input("latch", "Latch", "flag", required=False)
TEXT = Input("label", "Label", "text", required=False)
POINT = Input("at", "At", "point", "length", required=False, at_least=-500, at_most=500)
NUMBERS = Input("readings", "Readings", "numbers", "force", required=False, at_least=1, at_most=3)
ROWS = Input("parts", "Parts", "rows", columns=(LENGTH, POINT), required=False, at_most=2)
FILE = Input("solid", "Solid", "file", required=False)
NUMBER = Input("factor", "Factor", "number", required=False, at_least=0, at_most=10)
ALL = (LENGTH, COUNT, CHOICE, FLAG, TEXT, POINT, NUMBERS, ROWS, FILE, NUMBER)


def read(units="us", **raw):
    return read_inputs(ALL, raw, units)


def refusal(units="us", **raw):
    with pytest.raises(BadInput) as caught:
        read(units, **raw)
    return {error.input: (error.given, error.message) for error in caught.value.errors}


def test_everything_is_read():
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


def test_what_is_left_out_reads_as_nothing():
    given = read(width="1", label="  ")
    assert not given.has("grade")
    assert given.text("grade") == ""
    assert given.flag("latch") is False
    assert given.rows("parts") == ()
    assert given.numbers("readings") == ()
    assert given.data("solid") == b""
    for missing in (given.si, given.point):
        with pytest.raises(BadInput, match="at: is needed here"):
            missing("at")


def test_a_bare_number_takes_the_page_unit():
    assert read("si", width="10").si("width") == pytest.approx(0.010)


@pytest.mark.parametrize(
    ("raw", "path", "given", "message"),
    [
        ({}, "width", "", "is missing. Give a length such as 10 in, over 0 in and up to 100 in."),
        ({"width": "0"}, "width", "0", "is too small. Give a length"),
        ({"width": "100.001"}, "width", "100.001", "is too large"),
        ({"width": "5 kg"}, "width", "5 kg", "where length is wanted"),
        ({"width": True}, "width", "true", "not a single value"),
        ({"width": [1]}, "width", "[1]", "not a single value"),
        ({"width": "1", "legs": "0"}, "legs", "0", "is too small. Give a whole number, from 1 and below 5."),
        ({"width": "1", "legs": "5"}, "legs", "5", "is too large"),
        ({"width": "1", "legs": "2.5"}, "legs", "2.5", "not a whole number"),
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
        ({"width": "1", "parts": []}, "parts", "[]", "has 0 rows"),
        ({"width": "1", "parts": [{"width": 1}] * 3}, "parts", "", "has 3 rows"),
        ({"width": "1", "parts": [{"width": 1}, {"width": "-2"}]}, "parts[1].width", "-2", "too small"),
        (
            {"width": "1", "parts": [{"height": 1}]},
            "parts[0].height",
            "1",
            "not an input here; there are width, at",
        ),
        ({"width": "1", "solid": "%%%"}, "solid", "", "could not be read as a file. Give a file."),
        ({"width": "1", "factor": "11"}, "factor", "11", "Give a number, from 0 and up to 10"),
        ({"width": "1", "weight": "3"}, "weight", "3", "not an input here"),
    ],
)
def test_a_bad_input_is_named_with_what_would_do(raw, path, given, message):
    errors = refusal(**raw)
    assert path in errors
    assert given in errors[path][0]
    assert message in errors[path][1]


def test_every_bad_input_is_named_at_once():
    assert set(refusal(width="-1", legs="9", grade="7")) == {"width", "legs", "grade"}


def test_a_bound_is_met_in_either_unit():
    assert read(width="100 in").si("width") == pytest.approx(2.54)
    assert read("si", width="2540 mm").si("width") == pytest.approx(2.54)
    assert read(width="1", at=[-500, 0, 500]).point("at")[0] == pytest.approx(-12.7)


def test_an_input_that_is_not_asked_may_be_missing():
    asked = Input("angle", "Angle", "quantity", "angle", shown_when={"how": ("angle",)}, at_most=90)
    how = Input("how", "How", "choice", choices=(Choice("angle", "Angle"), Choice("tape", "Tape")))
    assert not read_inputs((how, asked), {"how": "tape"}, "us").has("angle")
    with pytest.raises(BadInput, match="angle: is missing"):
        read_inputs((how, asked), {"how": "angle"}, "us")


def test_words_for_what_is_accepted():
    assert TEXT.accepted() == "a word or two"
    assert FILE.accepted() == "a file"
    assert POINT.accepted() == "three lengths, x, y and z, from -500 in and up to 500 in"
    assert (
        Input("a", "A", "quantity", "angle", above=0, at_most=90).accepted()
        == "an angle such as 10°, over 0° and up to 90°"
    )
    assert Input("t", "T", "quantity", "temperature", at_least=-3, below=0.1).accepted() == (
        "a temperature such as 0.1 °F, from -3 °F and below 0.1 °F"
    )
    assert "such as 10 lb" in Input("w", "W", "quantity", "weight").accepted()


def test_numbers_from_files_and_bytes():
    assert read(width="1", readings=5).numbers("readings") == pytest.approx((22.2411080763025,))
    assert read(width="1", readings="[1, 2]").numbers("readings") == pytest.approx(
        (4.4482216152605, 8.896443230521)
    )
    assert read(width="1", solid=b"raw").data("solid") == b"raw"
    assert read(width="1", parts='[{"width": "1 in"}]').rows("parts")[0].si("width") == pytest.approx(0.0254)
    assert read(width="1", latch=True).flag("latch") is True


def test_worst_verdict():
    assert worst("ok", "caution") == "caution"
    assert worst("stop", "unknown", "ok") == "stop"
    assert worst("unknown", "caution") == "unknown"
    assert worst() == "ok"


def test_results_leave_in_the_readers_units():
    answer = Answer(
        "ok", "words", "pull",
        {"pull": 12315.0, "taut": [True, False], "name": "keel", "legs": 2, "pulls": [1000.0, None], "steady": True},
        shown={"gone": "not for sale", "legs": "two"},
    )  # fmt: skip
    pull = Result("pull", "Pull", "force", rounding="up")
    assert result_record(pull, answer, "us") == {
        "value": pytest.approx(2768.52, abs=0.01), "unit": "lbf", "label": "Pull", "text": "2,770 lb (12.4 kN)",
    }  # fmt: skip
    assert result_record(pull, answer, "si")["value"] == pytest.approx(12.315)
    assert result_record(Result("taut", "Taut"), answer, "us")["text"] == "yes; no"
    assert result_record(Result("name", "Name"), answer, "us")["text"] == "keel"
    assert result_record(Result("legs", "Legs"), answer, "us") == {
        "value": 2,
        "unit": "",
        "label": "Legs",
        "text": "two",
    }
    assert result_record(Result("pulls", "Pulls", "force"), answer, "si")["text"] == "1 kN (225 lb); none"
    assert result_record(Result("steady", "Steady"), answer, "si")["value"] is True
    assert result_record(Result("gone", "Gone"), answer, "si") == {
        "value": None, "unit": "", "label": "Gone", "text": "not for sale",
    }  # fmt: skip
    assert (
        result_record(Result("lost", "Lost", "weight"), answer, "si")["text"] == "not known from these inputs"
    )


def test_say_puts_the_readers_unit_first():
    assert Say("us").length(0.3048) == "12 in (305 mm)"
    assert Say("si").length(0.3048) == "305 mm (12 in)"
    assert Say("si").weight(10.04, "up") == "10.1 kg (22.2 lb)"
    assert Say("us").force(100.0) == "22.5 lb (0.100 kN)"
    assert Say("us").one(100.0, "force") == "22.48 lb"
    assert Say("si").one(100.0, "force") == "0.1000 kN"


def test_a_list_has_its_items_and_a_table_its_rows():
    columns = (("part", "Part"), ("pull", "Pull"))
    answer = Answer(
        "ok", "words", "pulls", {"pulls": [1000.0, 2000.0], "legs": ["a: 1", "b: 2"], "none": []},
        shown={"pulls": ("left: 1", "right: 2"), "none": ()}, tables={"legs": (("a", "1"), ("b", "2"))},
    )  # fmt: skip
    pulls = result_record(Result("pulls", "Pulls", "force"), answer, "si")
    assert (pulls["value"], pulls["items"], pulls["text"]) == (
        [1, 2],
        ["left: 1", "right: 2"],
        "left: 1; right: 2",
    )
    legs = result_record(Result("legs", "Legs", columns=columns), answer, "si")
    assert (legs["rows"], legs["items"]) == ([["a", "1"], ["b", "2"]], ["a: 1", "b: 2"])
    assert result_record(Result("none", "None"), answer, "si")["text"] == "none"
    assert result_record(Result("gone", "Gone", columns=columns), answer, "si")["rows"] == []
    assert "items" not in result_record(Result("gone", "Gone"), answer, "si")


def test_long_text_is_kept_whole_or_refused():
    long = Input("log", "Log", "text", long=True, required=False)
    text = "\t1\n" * 300
    given = read_inputs((long,), {"log": text}, "us")
    assert given.text("log") == text
    assert given.refuse("log", "is odd").errors[0].given == ""
    assert read_inputs((TEXT,), {"label": "x" * 300}, "us").text("label") == "x" * 200
    assert not read_inputs((long,), {"log": " \n"}, "us").has("log")
    with pytest.raises(BadInput) as caught:
        read_inputs((long,), {"log": "1" * 200_001}, "us")
    assert caught.value.errors[0].message == "has 200,001 characters. Give text of up to 200,000 characters."


def test_several_words_come_as_a_list_too():
    several = Input("damage", "Damage", "text", several=True, required=False)
    assert read_inputs((several,), {"damage": ["nick", "weld"]}, "us").text("damage") == "nick, weld"
    assert not read_inputs((several,), {"damage": []}, "us").has("damage")
    for wrong in ([1], [["nick"]]):
        with pytest.raises(BadInput):
            read_inputs((several,), {"damage": wrong}, "us")


def test_rows_are_not_repeated_in_a_refusal():
    assert read(width="1", parts=[{"width": 1}]).refuse("parts", "are odd").errors[0].given == ""
    assert read(width="1", readings="1; 2").refuse("readings", "are odd").errors[0].given == "1; 2"
