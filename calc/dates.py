"""Reads a day as people write it: 2026-11-26, 26 Nov 2026, Nov 26, 11/26/2026, today. What could be two days is refused.

Names of months are what people write, not words of the book.
"""

from __future__ import annotations

import datetime
import re

from calc.quantities import NotReadable

_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_FULL = (
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
)
EARLIEST = datetime.date(1970, 1, 1)
"""No inspection that still counts is older."""
CLOCKS_APART = datetime.timedelta(days=1)
"""How far the reader's day may be ahead of the clock's, which may run by another time zone."""

_YEAR_FIRST = re.compile(r"(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})")
_YEAR_LAST = re.compile(r"(\d{1,2})[-/. ]+(\d{1,2})[-/. ]+(\d{4})")
_DAY_NAME = re.compile(r"(\d{1,2})(?:st|nd|rd|th)?[-. ]*([a-z]+)[-., ]*(\d{4})?")
_NAME_DAY = re.compile(r"([a-z]+)[-. ]*(\d{1,2})(?:st|nd|rd|th)?(?:[-, ]+(\d{4}))?")


def read_date(typed: str, today: datetime.date, latest: datetime.date | None = None) -> datetime.date:
    """The day that was written, up to `latest` (else today); a day without its year is the last one that is past.

    >>> read_date("26 Nov", datetime.date(2027, 3, 1)), read_date("11/26/2026", datetime.date(2027, 3, 1))
    (datetime.date(2026, 11, 26), datetime.date(2026, 11, 26))
    """
    text = re.sub(r"\s+", " ", typed.strip().lower())
    found = today if text == "today" else _read(text, today)
    if found > (latest or today + CLOCKS_APART):
        raise NotReadable("date-too-late" if latest else "date-in-the-future", day=str(found))
    if found < EARLIEST:
        raise NotReadable("date-too-old", day=str(found))
    return found


def _read(text: str, today: datetime.date) -> datetime.date:
    if match := _YEAR_FIRST.fullmatch(text):
        return _day(int(match[1]), int(match[2]), int(match[3]))
    if match := _YEAR_LAST.fullmatch(text):
        return _day_or_month_first(int(match[1]), int(match[2]), int(match[3]))
    if match := _DAY_NAME.fullmatch(text):
        return _named(match[1], match[2], match[3], today)
    if match := _NAME_DAY.fullmatch(text):
        return _named(match[2], match[1], match[3], today)
    raise NotReadable("not-a-date")


def _day_or_month_first(first: int, second: int, year: int) -> datetime.date:
    """11/26/2026 and 26/11/2026 are one day; 5/6/2026 may be two."""
    if first > 12:
        return _day(year, second, first)
    if second > 12 or first == second:
        return _day(year, first, second)
    raise NotReadable("two-dates", one=str(_day(year, first, second)), other=str(_day(year, second, first)))


def _named(day: str, name: str, year: str | None, today: datetime.date) -> datetime.date:
    """A day with the name of its month."""
    month = _month(name)
    if year:
        return _day(int(year), month, int(day))
    this_year = _day(today.year, month, int(day))
    return this_year if this_year <= today else _day(today.year - 1, month, int(day))


def _month(name: str) -> int:
    """The number of a month, by its name or its first three letters."""
    if name[:3] not in _MONTHS or not (_FULL[_MONTHS.index(name[:3])].startswith(name) or name == "sept"):
        raise NotReadable("not-a-date")
    return _MONTHS.index(name[:3]) + 1


def _day(year: int, month: int, day: int) -> datetime.date:
    try:
        return datetime.date(year, month, day)
    except ValueError:
        raise NotReadable("no-such-day") from None


def months_later(day: datetime.date, months: int) -> datetime.date:
    """The same day of the month so many months on, or the last day that month has.

    >>> months_later(datetime.date(2026, 11, 30), 3)
    datetime.date(2027, 2, 28)
    """
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    first_after = datetime.date(year + (month + 1) // 12, (month + 1) % 12 + 1, 1)
    last = (first_after - datetime.timedelta(days=1)).day
    return datetime.date(year, month + 1, min(day.day, last))


__all__ = ["EARLIEST", "months_later", "read_date"]
