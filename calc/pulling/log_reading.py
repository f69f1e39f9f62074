"""Reads the log of a pull as a person keeps it: pasted from a spreadsheet, units in the headings, gaps, odd columns.

A heading names its column (force, load, pull; gap, opening, stretch; throat; time) and may carry a unit: `Force (lb)`,
`gap, mm`, `time [min]`. Without headings the columns are force, gap, throat, time. Times may read 2:30.
"""

from __future__ import annotations

import csv
import re
from collections.abc import Sequence
from dataclasses import dataclass

from calc.quantities import NotReadable, find_unit, read_quantity
from calc.words.facts import Fact, message


@dataclass(frozen=True)
class Column:
    """A column of a log: its dimension, what a bare number means on a US and on an SI page, and what is looked for in its
    heading, which is what people write and not a word of the book.
    """

    dimension: str
    unit: str
    unit_si: str
    headings: tuple[str, ...]


_GAP_HEADINGS = ("gap", "open", "stretch", "length", "displacement", "extension", "deflection")
COLUMNS: dict[str, Column] = {
    "force": Column("force", "lbf", "kN", ("force", "load", "pull", "tension", "kraft")),
    "gap": Column("length", "in", "mm", _GAP_HEADINGS),
    "throat": Column("length", "in", "mm", ("throat", "mouth")),
    "time": Column("time", "s", "s", ("time", "clock", "elapsed")),
}
MOST_ROWS = 5000
"""Lines that a log may have."""
MOST_LINES_ABOVE = 20
"""Lines above the headings in which these are looked for."""


@dataclass(frozen=True)
class Reading:
    """One line of the log, SI: force [N], gap [m], throat [m], time [s]; None where nothing was written."""

    force_n: float
    gap_m: float | None
    throat_m: float | None
    time_s: float | None


class NotALog(ValueError):
    """The text is no log: the message `log-CODE` says which line and why."""

    def __init__(self, code: str, **facts: Fact) -> None:
        self.why = message(f"log-{code}", **facts)
        super().__init__(code)


def decode(data: bytes) -> str:
    """Text of a file from a spreadsheet, whether UTF-8, UTF-16 or the old Western encoding."""
    for encoding in ("utf-8-sig", "utf-16") if data[:2] not in (b"\xff\xfe", b"\xfe\xff") else ("utf-16",):
        try:
            return data.decode(encoding)
        except UnicodeDecodeError:
            continue
    return data.decode("latin-1")


def _cells(line: str) -> list[str]:
    """Cells of one line: by tab, semicolon or comma, quotes respected; else by spaces before a number."""
    for separator in ("\t", ";", ","):
        if separator in line:
            return [
                cell.strip() for cell in next(csv.reader([line], delimiter=separator, skipinitialspace=True))
            ]
    return [cell.strip() for cell in re.split(r"\s{2,}|\s(?=[\d.+-])", line.strip())]


_Columns = dict[int, tuple[str, str]]
"""Place of a column to its name and its unit, or nothing where the heading has none."""


def _heading(cells: Sequence[str]) -> _Columns | None:
    """The columns that a line of headings names; None if the line is no heading."""
    found: _Columns = {}
    for place, cell in enumerate(cells):
        name = _column_named(cell)
        if name is not None and name not in (known for known, _ in found.values()):
            found[place] = (name, _unit_in(cell, COLUMNS[name].dimension))
    return found if "force" in (name for name, _ in found.values()) else None


def _column_named(heading: str) -> str | None:
    words = heading.lower()
    return next(
        (name for name, column in COLUMNS.items() if any(one in words for one in column.headings)), None
    )


def _unit_in(heading: str, dimension: str) -> str:
    """The unit that a heading carries: `Force (lb)`, `gap, mm`, `time [min]`; a force may be written as a weight."""
    written = re.search(r"[(\[]\s*([^)\]]+?)\s*[)\]]|[,/]\s*([A-Za-z]+)\s*$", heading)
    if not written:
        return ""
    unit = find_unit(written[1] or written[2], dimension)
    if unit is None and dimension == "force":
        unit = find_unit(written[1] or written[2], "weight")
    return unit or ""


def _value(text: str, name: str, unit: str, line: int) -> float | None:
    if text.strip().lower() in ("", "-", "–", "—", "n/a", "na", "none", "?"):
        return None
    if name == "time" and (clock := re.fullmatch(r"(?:(\d+):)?(\d{1,3}):(\d{2}(?:\.\d+)?)", text.strip())):
        return int(clock[1] or 0) * 3600 + int(clock[2]) * 60 + float(clock[3])
    try:
        return read_quantity(text, COLUMNS[name].dimension, unit).value_si
    except NotReadable as reason:
        column = message(f"log-column-{name}")
        raise NotALog(
            "cell-unreadable", line=str(line), column=column, typed=text, reason=reason.why
        ) from reason


def _reading(cells: Sequence[str], columns: _Columns, line: int, si: bool) -> Reading | None:
    """One line as a reading; None for a note or a missed reading, which has no force."""
    found: dict[str, float | None] = dict.fromkeys(COLUMNS)
    for place, (name, unit) in sorted(columns.items(), key=lambda column: column[1][0] != "force"):
        if place < len(cells):
            bare = unit or (COLUMNS[name].unit_si if si else COLUMNS[name].unit)
            found[name] = _value(cells[place], name, bare, line)
        if found["force"] is None:
            return None
    if found["force"] is not None and found["force"] < 0:
        raise NotALog("below-zero", line=str(line))
    return Reading(found["force"] or 0.0, found["gap"], found["throat"], found["time"])


def _start(lines: list[tuple[int, str]]) -> tuple[_Columns, list[tuple[int, str]]]:
    """The columns, and the lines under the headings; what stands above these (a title, a date) is left out.

    Without headings the columns are the usual ones, from the first line that has a digit.
    """
    found = [_heading(_cells(line)) or {} for _, line in lines[:MOST_LINES_ABOVE]]
    most = max(found, key=len, default={})  # a title may name a force; the headings name more columns
    if most:
        return most, lines[found.index(most) + 1 :]
    first = next((place for place, (_, line) in enumerate(lines) if re.search(r"\d", line)), len(lines))
    return {place: (name, "") for place, name in enumerate(COLUMNS)}, lines[first:]


def read_log(text: str, si: bool) -> tuple[Reading, ...]:
    """The readings of a pasted log. `si` says what a bare number means where the heading has no unit.

    Raises NotALog with the line that cannot be read.
    """
    lines = [(number, line) for number, line in enumerate(text.splitlines(), 1) if line.strip()]
    if len(lines) > MOST_ROWS:
        raise NotALog("too-many-lines", count=len(lines), most=MOST_ROWS)
    columns, lines = _start(lines)
    readings: list[Reading] = []
    for number, line in lines:
        reading = _reading(_cells(line), columns, number, si)
        if reading is not None:
            readings.append(reading)
    return tuple(readings)


__all__ = ["COLUMNS", "MOST_ROWS", "NotALog", "Reading", "decode", "read_log"]
