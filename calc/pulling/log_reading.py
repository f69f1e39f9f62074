"""Reads the log of a pull as a person keeps it: pasted from a spreadsheet, units in the headings, gaps, odd columns.

A heading names its column (force, load, pull; gap, opening, stretch; throat; time) and may carry a unit: `Force (lb)`,
`gap, mm`, `Force in kN`, `Force_kN`. A word of it that is not understood refuses the log, since a force in kN that is taken
for pounds is a wrong answer. Without headings the columns are force, gap, throat, time. Times may read 2:30.
"""

from __future__ import annotations

import csv
import re
from collections.abc import Sequence
from dataclasses import dataclass

from calc.quantities import NotReadable, find_unit, read_quantity, two_units
from calc.words.facts import Fact, message


@dataclass(frozen=True)
class Column:
    """A column of a log: its dimension, what a bare number means on a US and on an SI page, and the words of its heading,
    which are what people write and not words of the book. `dial`: shown by a dial or caliper, so that a point is decimal.
    """

    dimension: str
    unit: str
    unit_si: str
    headings: tuple[str, ...]
    dial: bool = False


_GAP_HEADINGS = (
    *("gap", "gaps", "open", "opened", "opening", "stretch", "stretched", "length", "displacement"),
    *("extension", "deflection"),
)
_FORCE_HEADINGS = ("force", "forces", "load", "loads", "pull", "pulled", "pulls", "tension", "kraft")
COLUMNS: dict[str, Column] = {
    "force": Column("force", "lbf", "kN", _FORCE_HEADINGS),
    "gap": Column("length", "in", "mm", _GAP_HEADINGS, dial=True),
    "throat": Column("length", "in", "mm", ("throat", "mouth"), dial=True),
    "time": Column("time", "s", "s", ("time", "times", "clock", "elapsed")),
}
_SAYS_NOTHING = {"reading", "readings", "gauge", "dial", "cell", "applied", "unit", "units", "the", "of"}
_CLOCKS = {"mm:ss", "m:ss", "hh:mm:ss", "h:mm:ss", "min:s", "min:sec"}
_KINDS_OF_TON = ("short", "long", "metric", "us")
_NOTHING_WRITTEN = ("", "-", "–", "—", "n/a", "na", "none", "?")
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


def _named(cells: Sequence[str]) -> list[str]:
    """The columns that the cells of a line name."""
    return [name for name in map(_column_named, cells) if name]


def _column_named(heading: str) -> str | None:
    """The column whose word a heading has; throat before gap, so that a throat's opening is no gap."""
    words = [word.lower() for word in _words(heading)]
    for name in ("throat", "force", "gap", "time"):
        if any(word in COLUMNS[name].headings for word in words):
            return name
    return None


def _words(heading: str) -> list[str]:
    """The words of a heading: `Force_kN`, `Force: kN`, `Force/kN`, `gap [mm]`."""
    parted = re.sub(r"[\s()\[\]{},;_/=]+", " ", heading)
    return [word for part in parted.split() if (word := part.strip(":.-–"))]


def _headings(cells: Sequence[str], line: int) -> _Columns:
    """The columns of a line of headings. Every word of a column's heading is understood, or the log is refused."""
    found: _Columns = {}
    for place, cell in enumerate(cells):
        name = _column_named(cell)
        if name is None:
            _not_a_lone_unit(cell, line)
            continue
        if name in (known for known, _ in found.values()):
            raise NotALog("heading-twice", line=str(line), column=message(f"log-column-{name}"))
        found[place] = (name, _unit_in(cell, name, line))
    if "force" not in (name for name, _ in found.values()):
        raise NotALog("no-force-heading", line=str(line))
    return found


def _not_a_lone_unit(cell: str, line: int) -> None:
    """Refuse a heading that is a unit and nothing else: it belongs to another, and nobody can say to which."""
    if any(_unit_named(cell.strip("()[] "), dimension) for dimension in ("force", "length", "time")):
        raise NotALog("heading-word", line=str(line), heading=cell, word=cell)


def _unit_in(heading: str, name: str, line: int) -> str:
    """The unit that a heading carries; nothing where no word is left over. A force may be written as a weight."""
    column = COLUMNS[name]
    silent = _SAYS_NOTHING | set(column.headings) | (_CLOCKS if name == "time" else set())
    if name == "throat":
        silent = silent | set(_GAP_HEADINGS)
    left = [word for word in _words(heading) if word.lower() not in silent]
    if len(left) > 1 and left[0].lower() == "in":
        left = left[1:]  # force in kN
    if len(left) > 1 and left[0].lower() in _KINDS_OF_TON:
        left = [f"{left[0]} {left[1]}", *left[2:]]
    if not left:
        return ""
    unit = _unit_named(left[0], column.dimension)
    if unit is None or len(left) > 1:
        raise NotALog("heading-word", line=str(line), heading=heading, word=left[0 if unit is None else 1])
    return unit


def _unit_named(word: str, dimension: str) -> str | None:
    """The unit of a dimension that a word names, one meaning only; a force may be written as a weight."""
    if word == "#" or two_units(word, dimension):
        return None
    return find_unit(word, dimension) or (find_unit(word, "weight") if dimension == "force" else None)


_LONG_ENOUGH = 2
_ALSO_WORDS = ("in", "ft", "oz", "min", "mi")


def _no_unit_above(lines: Sequence[tuple[int, str]], columns: _Columns) -> None:
    """Refuse a unit that stands above the headings where the column of its kind has none: `All in kN and mm`."""
    for name, unit in columns.values():
        for number, line in lines if not unit else ():
            for word in _words(line):
                plain = len(word) >= _LONG_ENOUGH and word.lower() not in _ALSO_WORDS
                if plain and _unit_named(word, COLUMNS[name].dimension):
                    raise NotALog("unit-above", line=str(number), word=word)


@dataclass(frozen=True)
class _Marks:
    """What the marks in the numbers of a column mean, as the whole column shows it."""

    point_is_decimal: bool
    comma_is_decimal: bool


def _marks(cells: Sequence[str], name: str) -> _Marks:
    """A mark that stands behind a nought, or before other than three digits, is a decimal mark in the whole column."""
    numbers = [cell for cell in cells if re.fullmatch(r"[+-]?[\d.,]+(?:\s*[A-Za-z\"]+)?", cell.strip())]

    def decimal(mark: str) -> bool:
        shown = rf"[+-]?(?:0?{mark}\d+|\d+{mark}(?:\d{{1,2}}|\d{{4,}})|\d{{4,}}{mark}\d+)(?!\d)"
        return any(re.match(shown, cell.strip()) for cell in numbers)

    point, comma = decimal(r"\."), decimal(",")
    if point and comma:
        raise NotALog("marks-two-ways", column=message(f"log-column-{name}"))
    return _Marks(point or COLUMNS[name].dial, comma)


def _value(text: str, name: str, unit: str, marks: _Marks) -> float | None:
    if text.strip().lower() in _NOTHING_WRITTEN:
        return None
    if name == "time" and (clock := re.fullmatch(r"(?:(\d+):)?(\d{1,3}):(\d{2}(?:\.\d+)?)", text.strip())):
        return int(clock[1] or 0) * 3600 + int(clock[2]) * 60 + float(clock[3])
    dimension = COLUMNS[name].dimension
    if marks.comma_is_decimal:
        return read_quantity(text.replace(",", "."), dimension, unit, point_is_decimal=True).value_si
    if COLUMNS[name].dial and re.match(r"[+-]?[1-9]\d{0,2},\d{3}(?!\d)", text.strip()):
        raise NotReadable("marks-two-ways", typed=text)
    return read_quantity(text, dimension, unit, marks.point_is_decimal).value_si


def _cell(text: str, name: str, unit: str, marks: _Marks, line: int) -> float | None:
    """The value of one cell, or the refusal of its line."""
    try:
        return _value(text, name, unit, marks)
    except NotReadable as reason:
        column = message(f"log-column-{name}")
        raise NotALog(
            "cell-unreadable", line=str(line), column=column, typed=text, reason=reason.why
        ) from reason


def _reading(
    cells: Sequence[str], columns: _Columns, marks: dict[str, _Marks], line: int, si: bool
) -> Reading | None:
    """One line as a reading; None for a note or a missed reading, which has no force."""
    found: dict[str, float | None] = dict.fromkeys(COLUMNS)
    for place, (name, unit) in sorted(columns.items(), key=lambda column: column[1][0] != "force"):
        if place < len(cells):
            bare = unit or (COLUMNS[name].unit_si if si else COLUMNS[name].unit)
            found[name] = _cell(cells[place], name, bare, marks[name], line)
        if found["force"] is None:
            return None
    if found["force"] is not None and found["force"] < 0:
        raise NotALog("below-zero", line=str(line))
    return Reading(found["force"] or 0.0, found["gap"], found["throat"], found["time"])


_Lines = list[tuple[int, str]]


def _start(lines: _Lines) -> tuple[_Columns, _Lines]:
    """The columns, and the lines under the headings; what stands above these (a title, a date) is left out.

    Without headings the columns are the usual ones, from the first line that has a digit.
    """
    named = [set(_named(_cells(line))) for _, line in lines[:MOST_LINES_ABOVE]]
    most = max(named, key=len, default=set())  # a title may name a force; the headings name more columns
    if most:
        place = named.index(most)
        number, line = lines[place]
        columns, above, below = _headings(_cells(line), number), lines[:place], lines[place + 1 :]
    else:
        first = next((place for place, (_, line) in enumerate(lines) if re.search(r"\d", line)), len(lines))
        columns = {place: (name, "") for place, name in enumerate(COLUMNS)}
        above, below = lines[:first], lines[first:]
    _no_unit_above(above, columns)
    return columns, below


def read_log(text: str, si: bool) -> tuple[Reading, ...]:
    """The readings of a pasted log. `si` says what a bare number means where the heading has no unit.

    Raises NotALog with the line that cannot be read.
    """
    lines = [(number, line) for number, line in enumerate(text.splitlines(), 1) if line.strip()]
    if len(lines) > MOST_ROWS:
        raise NotALog("too-many-lines", count=len(lines), most=MOST_ROWS)
    columns, lines = _start(lines)
    rows = [(number, _cells(line)) for number, line in lines]
    marks = {
        name: _marks([cells[place] for _, cells in rows if place < len(cells)], name)
        for place, (name, _) in columns.items()
    }
    found = (_reading(cells, columns, marks, number, si) for number, cells in rows)
    return tuple(reading for reading in found if reading is not None)


__all__ = ["COLUMNS", "MOST_ROWS", "NotALog", "Reading", "decode", "read_log"]
