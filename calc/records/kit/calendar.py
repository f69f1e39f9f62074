"""The dates of the next looks as a calendar file (iCalendar, RFC 5545): one entry for a whole day each."""

from __future__ import annotations

import datetime
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

LONGEST_LINE_BYTES = 75
"""A content line is folded after so many bytes (RFC 5545, 3.1)."""


@dataclass(frozen=True)
class Entry:
    """One date: what it is called among entries (a part's id), the day, and what it says."""

    name: str
    day: datetime.date
    says: str


def to_calendar(entries: Sequence[Entry], today: datetime.date) -> str:
    r"""The file. An entry keeps its name, so that a calendar that takes the file again moves it and makes no second one.

    >>> to_calendar([Entry("ab", datetime.date(2027, 2, 1), "H-1; look")], datetime.date(2026, 11, 26)).splitlines()[4:8]
    ['UID:ab@linkwright-kit', 'DTSTAMP:20261126T000000Z', 'DTSTART;VALUE=DATE:20270201', 'SUMMARY:H-1\\; look']
    """
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Linkwright//Kit//EN"]
    for entry in entries:
        lines += [
            "BEGIN:VEVENT",
            f"UID:{entry.name}@linkwright-kit",
            f"DTSTAMP:{today:%Y%m%d}T000000Z",
            f"DTSTART;VALUE=DATE:{entry.day:%Y%m%d}",
            f"SUMMARY:{_escaped(entry.says)}",
            "TRANSP:TRANSPARENT",
            "END:VEVENT",
        ]
    lines.append("END:VCALENDAR")
    return "".join(f"{piece}\r\n" for line in lines for piece in _folded(line))


def _escaped(text: str) -> str:
    for sign in ("\\", ";", ","):
        text = text.replace(sign, f"\\{sign}")
    return text.replace("\n", "\\n")


def _folded(line: str) -> Iterator[str]:
    """A line in pieces of at most 75 bytes, all but the first after a blank; no letter is parted."""
    piece = ""
    for letter in line:
        if len((piece + letter).encode("utf-8")) > LONGEST_LINE_BYTES:
            yield piece
            piece = " "
        piece += letter
    yield piece


__all__ = ["Entry", "to_calendar"]
