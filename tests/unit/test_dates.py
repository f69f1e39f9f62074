"""Days as people write them: read right, or refused with both readings."""

from __future__ import annotations

import datetime

import pytest

import calc.inputs
from calc.dates import read_date
from calc.inputs import BadInput, DateInput, DueInput, Reading, read_inputs
from calc.quantities import NotReadable

TODAY = datetime.date(2027, 3, 1)
NOV_26 = datetime.date(2026, 11, 26)


@pytest.mark.parametrize(
    "typed",
    [
        "2026-11-26",
        "2026/11/26",
        "26 Nov 2026",
        "26 november 2026",
        "26-Nov-2026",
        "26th Nov. 2026",
        "Nov 26, 2026",
        "November 26th 2026",
        "11/26/2026",
        "26/11/2026",
        "26.11.2026",
        "26 Nov",
        "Nov 26",
    ],
)
def test_days_read_right(typed: str) -> None:
    assert read_date(typed, TODAY) == NOV_26


@pytest.mark.parametrize(
    ("typed", "code"),
    [
        ("5/6/2026", "two-dates"),
        ("5.6.2026", "two-dates"),
        ("11/26/26", "not-a-date"),
        ("26 Nix 2026", "not-a-date"),
        ("26 novem-ber", "not-a-date"),
        ("Nov 2026", "not-a-date"),
        ("last week", "not-a-date"),
        ("30 Feb 2026", "no-such-day"),
        ("0/13/2026", "no-such-day"),
        ("2027-03-03", "date-in-the-future"),
        ("1969-12-31", "date-too-old"),
    ],
)
def test_days_that_are_refused(typed: str, code: str) -> None:
    with pytest.raises(NotReadable) as caught:
        read_date(typed, TODAY)
    assert caught.value.args == (code,)


def test_same_day_and_month_is_one_day() -> None:
    assert read_date("4/4/2026", TODAY) == datetime.date(2026, 4, 4)
    assert read_date("7 Sept", TODAY) == datetime.date(2026, 9, 7)
    assert read_date("7 Feb", TODAY) == datetime.date(2027, 2, 7)


def test_both_readings_are_named() -> None:
    with pytest.raises(NotReadable, match="can be read as") as caught:
        read_date("5/6/2026", TODAY)
    assert str(caught.value) == "can be read as 2026-05-06 or as 2026-06-05"


def test_a_date_input(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(calc.inputs, "today", lambda: TODAY)
    asked = (DateInput("inspected_on", required=False),)
    reading = Reading("us", lambda _path, value: value)
    read = read_inputs(asked, {"inspected_on": "26 Nov"}, reading)
    assert read.date("inspected_on") == NOV_26
    assert read.text("inspected_on") == "2026-11-26"
    assert asked[0].fact(NOV_26, "inspected_on") == "2026-11-26"
    assert read_inputs(asked, {}, reading).date("inspected_on") is None
    with pytest.raises(BadInput):
        read_inputs(asked, {"inspected_on": "tomorrow"}, reading)


def test_today_is_the_clocks_day() -> None:
    assert calc.inputs.today() == datetime.date.today()


def test_the_word_today_is_a_day() -> None:
    assert read_date(" Today ", TODAY) == TODAY


def test_a_day_that_is_due_may_lie_ahead_and_not_too_far() -> None:
    due = DueInput("due")
    reading = Reading("us", lambda _path, value: value)
    today = calc.inputs.today()
    soon, far = today + datetime.timedelta(days=400), today + datetime.timedelta(days=4000)
    assert due.read(str(soon), reading) == soon
    assert due.read_as(str(soon), "us") is None
    assert due.read_as(f"{soon:%d %b %Y}", "us") == str(soon)
    assert due.accepted("due").code == "accepted-due"
    with pytest.raises(NotReadable, match="too far ahead"):
        due.read(str(far), reading)
