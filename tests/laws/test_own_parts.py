"""What a worksheet carries of the reader's own parts only takes away: less known is never better, and none that is overdue,
was never inspected or did not pass is better than careful, whatever the reader says of its condition.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc import inputs
from calc.answering import declared_names, worksheet
from calc.inputs import Input
from calc.lifting.own_part import LAST_LOOKS, NAMES, OwnPart, own_part_inputs
from tests.laws.test_laws import LEAVE, Settled, better, of_law, settle

TODAY = datetime.date(2026, 11, 26)
Raw = dict[str, Any]
Fill = Callable[[Raw, Raw], Raw]
"""Puts what is carried of a part into the inputs of a worksheet."""


@pytest.fixture(autouse=True)
def fixed_day(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(inputs, "today", lambda: TODAY)


def _names(columns: tuple[Input, ...]) -> bool:
    return set(NAMES) <= {one.name for one in columns}


def _rows_of(name: str) -> str:
    """The rows of a worksheet that are parts; empty where the worksheet asks of one part."""
    return next((one.name for one in worksheet(name).inputs if _names(one.columns)), "")


SHEETS = [name for name in declared_names() if _names(worksheet(name).inputs) or _rows_of(name)]


def carried(name: str, part: Raw) -> Raw:
    """The example of a worksheet with a part in it: in its own boxes, or in those of its first row."""
    raw = dict(worksheet(name).example)
    rows = _rows_of(name)
    if not rows:
        return {**raw, **part}
    first, *others = raw[rows]
    return {**raw, rows: [{**first, **part}, *others]}


def days() -> st.SearchStrategy[str]:
    """Days about today, or none."""
    near = st.dates(TODAY - datetime.timedelta(days=800), TODAY)
    return st.one_of(st.just(""), near.map(str))


@st.composite
def own_parts(draw: st.DrawFn) -> Raw:
    """What a row carries of a part, whole or not."""
    due = st.dates(TODAY - datetime.timedelta(days=400), TODAY + datetime.timedelta(days=1500))
    part = {
        "own_number": draw(st.sampled_from(["C-1", ""])),
        "last_look": draw(st.sampled_from(["", *LAST_LOOKS])),
        "looked_on": draw(days()),
        "look_due": draw(st.one_of(st.just(""), due.map(str))),
    }
    return {name: value for name, value in part.items() if value}


def worked_out(name: str, part: Raw) -> Settled | None:
    return settle(name, carried(name, part))


def test_the_worksheets_whose_rows_are_parts_carry_them() -> None:
    assert {"sling-legs", "load-path", "pull-trial", "tie-down"} <= set(SHEETS)


@pytest.mark.parametrize("name", SHEETS)
def test_less_known_of_an_own_part_is_never_better(name: str) -> None:
    @of_law
    @given(part=own_parts(), without=st.sampled_from(NAMES))
    def law(part: Raw, without: str) -> None:
        whole = worked_out(name, part)
        less = worked_out(name, {key: value for key, value in part.items() if key != without})
        assert whole is None or less is None or better(whole, less) == []

    law()


@pytest.mark.parametrize("name", SHEETS)
def test_a_part_of_the_kit_never_makes_an_answer_better(name: str) -> None:
    alone = worked_out(name, {})
    assert alone is not None

    @of_law
    @given(part=own_parts())
    def law(part: Raw) -> None:
        with_part = worked_out(name, part)
        assert with_part is None or better(alone, with_part) == []

    law()


@pytest.mark.parametrize("name", SHEETS)
def test_what_is_not_in_date_is_careful_at_best(name: str) -> None:
    @of_law
    @given(part=own_parts())
    def law(part: Raw) -> None:
        settled = worked_out(name, part)
        if settled is None or not part:
            return
        looked_on, due = part.get("looked_on"), part.get("look_due")
        in_date = looked_on is not None and due is not None and due >= str(TODAY)
        if part["last_look"] == "not-passed":
            assert LEAVE[settled.verdict] == 0
        elif not in_date or part["last_look"] != "passed":
            assert LEAVE[settled.verdict] <= LEAVE["caution"]

    law()


@pytest.mark.parametrize("name", SHEETS)
def test_no_inspection_counts_for_longer_than_the_longest_gap(name: str) -> None:
    part = {"own_number": "C-1", "last_look": "passed", "looked_on": "2025-11-20", "look_due": "2028-01-01"}
    settled = worked_out(name, part)
    assert settled is not None
    assert settled.verdict == "caution"
    assert "own-part-overdue" in {one.code for one in settled.reasons}


@pytest.mark.parametrize("name", SHEETS)
@pytest.mark.parametrize(
    "alone", [{"own_number": "C-1"}, {"looked_on": "2026-11-01"}, {"last_look": "passed"}]
)
def test_a_number_without_its_inspection_is_refused_and_so_is_an_inspection_of_no_part(
    name: str, alone: Raw
) -> None:
    assert worked_out(name, alone) is None


def test_the_next_inspection_is_the_earlier_of_what_is_said_and_the_longest_gap() -> None:
    day = datetime.date(2026, 1, 31)
    assert OwnPart("C-1", "passed", day, datetime.date(2026, 7, 1)).next_on == datetime.date(2026, 7, 1)
    assert OwnPart("C-1", "passed", day, datetime.date(2030, 1, 1)).next_on == datetime.date(2027, 1, 31)
    assert not OwnPart("C-1", "passed", datetime.date(2025, 11, 26), datetime.date(2026, 11, 26)).overdue


def test_what_is_asked_of_an_own_part() -> None:
    asked = {one.name: one for one in own_part_inputs()}
    assert tuple(asked) == NAMES
    assert {name: one.kind for name, one in asked.items()} == {
        "own_number": "text",
        "last_look": "choice",
        "looked_on": "date",
        "look_due": "date",
    }
    assert [name for name, one in asked.items() if one.required] == ["own_number"]
    assert {name for name, one in asked.items() if one.shown_when == {"last_look": LAST_LOOKS}} == set(
        NAMES
    ) - {"last_look"}
