"""The tag worksheet: a tag repeats the maker's words, and a part that is not fit gets one that says: do not use."""

from __future__ import annotations

import datetime
import html
import re
from typing import Any

import pytest

from calc import inputs
from calc.answering import Refused, answer, worksheet
from calc.figures.tag import wrapped
from calc.records.qr_code import VERSIONS, TooLong, qr_code
from calc.records.tag import LONGEST_MONTHS
from calc.tables import table
from tests.asking import asked

TODAY = datetime.date(2026, 11, 26)
PASSED = {**worksheet("tag").example, "inspected_on": "2026-11-26"}


@pytest.fixture(autouse=True)
def _today(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(inputs, "today", lambda: TODAY)


def tag(**changes: str) -> Any:
    return asked("tag", {**PASSED, **changes})


def words(found: Any) -> list[str]:
    """The words on the drawing, without the parts of the code."""
    return [html.unescape(word) for word in re.findall(r"<text[^>]*>([^<]*)</text>", found.figure.svg)]


def test_a_part_that_passed_gets_its_own_words_and_the_makers() -> None:
    found = tag()
    assert found.verdict == "ok"
    assert words(found) == [
        "Inspected", "H-2", "Mark: 3/8 8 T", "Maker’s rating: 7,100 lb", "Inspected 2026-11-26", "Next by 2027-11-26",
        "By yard hand", "Own tag. Go by the maker’s tag.",
    ]  # fmt: skip


def test_a_rating_is_the_typed_one_letter_for_letter_or_none() -> None:
    assert "Maker’s rating: 3-1/4 t at 0°" in words(tag(rating="3-1/4 t at 0°"))
    found = tag(rating="")
    assert "No rating by the maker on record" in words(found)
    assert any("do not lift with it" in str(one) for one in found.cautions)


@pytest.mark.parametrize(
    ("finding", "line"),
    [
        ("failed", "Failed its inspection"),
        ("altered", "Altered: no rating"),
        ("unmarked", "No mark: no rating"),
    ],
)
def test_a_part_that_is_not_fit_gets_a_do_not_use_tag_without_a_rating(finding: str, line: str) -> None:
    found = tag(finding=finding)
    assert found.verdict == "stop"
    assert words(found)[0] == "Do not use"
    assert line in words(found)
    assert not any("7,100" in word or "Next by" in word for word in words(found))


def test_an_unmarked_part_needs_no_mark_to_be_typed() -> None:
    assert "Mark not read" not in words(tag(finding="unmarked", mark=""))


@pytest.mark.parametrize("name", ["finding", "mark", "inspected_on", "months", "inspected_by"])
def test_what_nobody_said_is_never_taken_kindly(name: str) -> None:
    found = tag(**{name: ""})
    assert found.verdict == "unknown"
    assert words(found)[0] == "Do not use"
    assert not any("7,100" in word for word in words(found))


def test_an_overdue_part_is_not_to_be_used() -> None:
    assert words(tag(inspected_on="2025-11-26", months="12"))[0] == "Inspected"  # due today
    found = tag(inspected_on="2025-11-25", months="12")
    assert found.verdict == "stop"
    assert "Inspection overdue" in words(found)


@pytest.mark.parametrize("size", ["148x76", "6x3", "4x2"])
def test_the_drawing_bears_its_size(size: str) -> None:
    assert f'<svg class="drawing tag tag-{size}"' in tag(size=size).figure.svg


@pytest.mark.parametrize("mark", ["3/8 8 T welded", "Bent 3/8", "repaired by weld", "3/8 G80 (heated)"])
def test_what_was_found_is_no_mark_of_the_maker(mark: str) -> None:
    with pytest.raises(Refused) as caught:
        tag(mark=mark)
    assert [one.input for one in caught.value.errors] == ["mark"]
    assert "no maker stamps" in caught.value.errors[0].message


@pytest.mark.parametrize("mark", ["WELDLESS 1/2", "8 T HEAT A12"])
def test_what_makers_do_stamp_is_a_mark(mark: str) -> None:
    assert tag(mark=mark, rating="").verdict == "ok"


def test_what_does_not_fit_the_tag_is_refused() -> None:
    with pytest.raises(Refused, match="too many letters for the tag. Give up to 24"):
        tag(own_number="H" * 25)
    with pytest.raises(Refused, match="names no part"):
        tag(own_number="-")


def test_a_long_line_goes_on_in_the_next() -> None:
    found = words(tag(rating="7,100 lb at 90 deg, 10,000 lb at 45 deg"))
    assert "Maker’s rating: 7,100 lb at 90" in found
    assert "deg, 10,000 lb at 45 deg" in found


def test_a_long_word_is_parted_where_the_tag_ends() -> None:
    assert [len(part) for part in wrapped("x" * 70)] == [34, 34, 2]


def test_every_tag_has_a_code_of_its_own() -> None:
    made = {
        answer("tag", {**PASSED, "finding": finding}, "us")["figure"]["svg"]
        for finding in ("passed", "failed")
    }
    assert len(made) == 2


def test_a_text_that_no_code_holds_is_refused() -> None:
    most = VERSIONS[-1].data_words - 3
    assert len(qr_code("x" * most)) == VERSIONS[-1].size
    with pytest.raises(TooLong, match=f"{most + 1} letters"):
        qr_code("x" * (most + 1))


@pytest.mark.parametrize(
    "word",
    [
        "?",
        "-",
        "none",
        "N/A",
        "na",
        "no",
        "no mark",
        "no marks",
        "unreadable",
        "illegible",
        "None, ground off",
        "not readable",
    ],
)
@pytest.mark.parametrize(("name", "lacks"), [("mark", "no-mark"), ("inspected_by", "no-name")])
def test_a_word_that_names_nothing_is_not_given(name: str, lacks: str, word: str) -> None:
    """A question mark as the mark of a hook gave it a tag that says Inspected."""
    found = tag(**{name: word})
    assert found.verdict == "unknown"
    assert lacks in [one.code for one in found.reasons]
    assert words(found)[0] == "Do not use"


@pytest.mark.parametrize("mark", ["No. 5 H-12", "NO 5", "G80", "8", "T", "Ω9"])
def test_short_marks_are_marks(mark: str) -> None:
    assert tag(mark=mark).verdict == "ok"


@pytest.mark.parametrize("rating", ["?", "not rated", "as marked", "7100"])
def test_a_rating_is_a_figure_with_its_unit(rating: str) -> None:
    with pytest.raises(Refused) as caught:
        tag(rating=rating)
    assert [one.input for one in caught.value.errors] == ["rating"]


def test_a_rating_is_not_more_than_any_sling_of_its_chain() -> None:
    """71,000 lb on a 3/8 in chain of grade 8; three legs that hang straight have 21,300, four at 60 degrees 18,400."""
    for rating in ("71,000 lb", "18,400 lb, basket 36,800 lb", "31 t"):
        with pytest.raises(Refused) as caught:
            tag(rating=rating)
        assert [one.input for one in caught.value.errors] == ["rating"]
    for rating in ("18,400 lb at 60 deg", "21,300 lb", "7,100 lb", "4 legs"):
        assert tag(rating=rating).verdict == "ok"
    for mark in ("H-12", "80", "3/8", "3/8 1/2 80"):
        assert tag(mark=mark, rating="71,000 lb").verdict == "ok"  # names no chain of one size and a grade


@pytest.mark.parametrize("mark", ["G70 3/8", "43 1/2", "HT 3/8", "30", "4"])
def test_a_chain_that_ties_down_gets_a_tag_that_says_so(mark: str) -> None:
    """The tag of a grade 70 chain said “Inspected” and its maker's figure, as that of a sling does."""
    found = tag(mark=mark, rating="2,000 lb")
    assert "Ties down, never lifts: 2,000 lb" in words(found)
    assert "ties-down-only" in [one.code for one in found.reasons]
    assert not any("rating" in word for word in words(found))
    assert "Ties down, never lifts: see mark" in words(tag(mark=mark, rating=""))
    assert "ties-down-only" not in [one.code for one in tag(mark=mark, finding="failed").reasons]


@pytest.mark.parametrize(
    ("name", "most"), [("own_number", 24), ("mark", 28), ("rating", 44), ("inspected_by", 28)]
)
def test_so_many_letters_fit_and_no_more(name: str, most: int) -> None:
    filled = "7,100 lb at 90 deg" if name == "rating" else "H-2 Q"
    assert tag(**{name: filled.ljust(most, "q")}).verdict == "ok"
    with pytest.raises(Refused, match=f"Give up to {most}"):
        tag(**{name: filled.ljust(most + 1, "q")})


def test_the_next_day_stands_in_the_working_where_both_are_known() -> None:
    assert "2026-11-26 + 12 months" in [one.numbers for one in tag().steps]
    assert len(tag(inspected_on="").steps) == len(tag(months="").steps) == 1
    assert "Next by 2027-11-26" not in words(tag(finding="failed"))


def test_no_rule_lets_gear_go_longer_than_a_tag_may_say() -> None:
    longest = max(float(row["value"]) for row in table("inspection-intervals").rows)
    assert longest == LONGEST_MONTHS
    with pytest.raises(Refused):
        tag(months=str(LONGEST_MONTHS + 1))
