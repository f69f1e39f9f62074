"""One reader of grade marks: the law's examples, the European letters and the trade's spellings; what is not understood is
never taken for a good mark.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.marks import may_lift, read_grade
from calc.tables import table

LEGAL = {"3": "30", "4": "43", "7": "70", "8": "80", "10": "100"}
"""49 CFR 393.108, chain mark examples: the short mark of each grade; the grade itself and ten times it name it too."""


@pytest.mark.parametrize(("short", "grade"), LEGAL.items())
@pytest.mark.parametrize(
    "spelling",
    ["{}", "g{}", "G{}", "GR{}", "Gr {}", "Gr. {}", "G-{}", "Grade {}", "grade {} chain", "P{}", "T{}"],
)
def test_every_spelling_of_a_legal_mark(short: str, grade: str, spelling: str) -> None:
    for mark in (short, grade, f"{grade}0"):
        assert grade in read_grade(spelling.format(mark)).grades, mark


@pytest.mark.parametrize(
    ("typed", "grades"),
    [
        ("70 transport", ("70",)), ("transport", ("70",)), ("HT", ("43",)), ("H.T.", ("43",)), ("high-test", ("43",)),
        ("hi test", ("43",)), ("BBB", ("30",)), ("P.C.", ("30",)), ("proof coil", ("30",)), ("grade seventy", ("70",)),
        ("grade one hundred", ("100",)), ("4", ("43", "4")), ("8", ("80", "8")), ("T", ("8",)), ("V", ("10",)), ("L", ("30",)),
        ("M", ("4",)), ("8T", ("80", "8")), ("T or 8", ("8",)), ("M4", ("43",)), ("G40", ("43",)),
    ],
)  # fmt: skip
def test_what_the_trade_writes(typed: str, grades: tuple[str, ...]) -> None:
    assert read_grade(typed).grades == grades


@pytest.mark.parametrize(
    "typed", ["", " ", "?", "-", "XK2", "80 welded", "70 80", "12", "M3", "да", "50/60", "G", "grade"]
)
def test_what_is_not_understood_names_no_grade(typed: str) -> None:
    mark = read_grade(typed)
    assert not mark.understood
    assert mark.given == bool(typed.strip())


@pytest.mark.parametrize(
    ("typed", "grade"), [("A", "A"), ("b", "B"), ("Grade A", "A"), ("alloy", "B"), ("6", "6"), ("T", "8")]
)
def test_shackles_have_marks_of_their_own(typed: str, grade: str) -> None:
    assert read_grade(typed, "shackle").grades == (grade,)
    assert not read_grade("70", "shackle").understood


@given(st.text(max_size=12))
def test_any_text_is_a_known_grade_or_none(typed: str) -> None:
    known = set(table("chain-marks").values("grade"))
    assert set(read_grade(typed).grades) <= known


def test_which_grades_lift() -> None:
    """ASTM A413 scope: grades 30, 43 and 70 do not lift."""
    assert [may_lift(grade) for grade in ("30", "43", "70", "80", "100", "8", "6")] == [
        False, False, False, True, True, True, None,
    ]  # fmt: skip
