"""The vocabulary in which a worksheet is declared.

A worksheet answers one question of the shop. It is declared once: what it asks (Input), what it finds (Result),
how (compute), an example from the boat yard, and its sources. The page's form, the live answer, the command line
and the handbook's section are all made from that one declaration (calc.answering reads and runs it).
"""

from __future__ import annotations

import base64
import binascii
import json
import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Literal

from calc.declaration import Citation as Citation
from calc.declaration import Figure as Figure
from calc.quantities import (
    READING_UNITS,
    NotReadable,
    from_si,
    read_quantity,
    show,
    show_in,
    to_si,
    with_unit,
)

Verdict = Literal["ok", "caution", "stop", "unknown"]
UnitSystem = Literal["us", "si"]
CautionKind = Literal["warning", "prohibition", "mandatory", "note"]
InputKind = Literal[
    "quantity", "number", "count", "choice", "text", "flag", "point", "numbers", "rows", "file"
]

VERDICT_WORDS: dict[Verdict, str] = {
    "ok": "Within the rating",
    "caution": "Careful",
    "stop": "Stop",
    "unknown": "Cannot be rated",
}
LONGEST_TEXT = 200_000
"""Characters that a long text input takes."""
WORKED_OUT = "Worked out"
"""What ok reads on a worksheet that rates nothing: no word of a rating where there is none."""
_SEVERITY: tuple[Verdict, ...] = ("ok", "caution", "unknown", "stop")


def worst(*verdicts: Verdict) -> Verdict:
    """The most serious of several verdicts: ok, caution, unknown, stop in rising order."""
    return max(verdicts, key=_SEVERITY.index, default="ok")


@dataclass(frozen=True)
class InputError:
    """What is wrong with one input: its path (`load`, `parts[2].width`), what was given, what would do."""

    input: str
    given: str
    message: str


class BadInput(ValueError):
    """One or more inputs cannot be used. `errors` has one InputError each."""

    def __init__(self, *errors: InputError) -> None:
        self.errors = errors
        super().__init__("; ".join(f"{e.input}: {e.message}" for e in errors))


@dataclass(frozen=True)
class Choice:
    """One allowed answer of a choice: the value that is passed, and the words on the page."""

    value: str
    label: str


@dataclass(frozen=True)
class Input:
    """One thing a worksheet asks.

    name -- the key, the same on page, command line and in code
    label -- the words beside the box; help -- one sentence on how to measure it
    kind -- quantity (number with a unit), number, count (whole), choice, text, flag (yes or no), point (x, y, z),
      numbers (a list of quantities), rows (a table of inputs, `columns`), file (bytes)
    dimension -- for quantity, point and numbers: a key of calc.unit_factors.UNIT_FACTORS
    unit, unit_si -- what a bare number means on a US and on an SI page
    above, at_least, below, at_most -- bounds, in `unit` (for rows and numbers: of how many there are)
    long -- for text: many lines, such as a table pasted from a spreadsheet, kept as they are
    several -- for text: may also come as a list of texts; an empty list is nothing given
    default -- what holds when nothing is given; None leaves an optional input out
    shown_when -- the input is asked only if, for each name, that other input has one of the values
    """

    name: str
    label: str
    kind: InputKind
    dimension: str = ""
    unit: str = ""
    unit_si: str = ""
    choices: tuple[Choice, ...] = ()
    columns: tuple[Input, ...] = ()
    long: bool = False
    several: bool = False
    required: bool = True
    default: str | None = None
    help: str = ""
    above: float | None = None
    at_least: float | None = None
    below: float | None = None
    at_most: float | None = None
    shown_when: Mapping[str, tuple[str, ...]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        if self.dimension and not self.unit:
            object.__setattr__(self, "unit", READING_UNITS[self.dimension][0])
        if self.dimension and not self.unit_si:
            object.__setattr__(self, "unit_si", READING_UNITS[self.dimension][1])

    def default_unit(self, units: UnitSystem) -> str:
        """The unit a bare number takes."""
        return self.unit if units == "us" else self.unit_si

    def accepted(self) -> str:
        """What would do, in words."""
        if self.kind == "choice":
            return "one of: " + ", ".join(choice.value for choice in self.choices)
        if self.kind == "flag":
            return "yes or no"
        if self.kind == "text":
            return f"text of up to {LONGEST_TEXT:,} characters" if self.long else "a word or two"
        if self.kind == "file":
            return "a file"
        kinds = {
            "count": "a whole number",
            "number": "a number",
            "rows": "a list of rows",
            "numbers": "a list",
        }
        base = kinds.get(self.kind, "")
        if self.dimension and self.kind == "quantity":
            base = f"{_article(self.dimension)} such as {self._sample()}"
        if self.kind == "point":
            base = "three lengths, x, y and z"
        if self.kind == "numbers":
            base = f"values such as {self._sample()}, separated by semicolons"
        return base + self._bounds()

    def _sample(self) -> str:
        value = 10.0
        if self.above is not None or self.at_least is not None or self.at_most is not None:
            low = self.above if self.above is not None else (self.at_least or 0.0)
            high = (
                self.at_most
                if self.at_most is not None
                else (self.below if self.below is not None else math.inf)
            )
            value = next((v for v in (10.0, 100.0, 1.0, 500.0, 0.25) if low < v <= high), high)
        return with_unit(f"{value:g}", self.unit)

    def _bounds(self) -> str:
        unit = "" if self.kind in ("rows", "numbers") else self.unit
        parts = []
        for word, bound in (
            ("over", self.above), ("from", self.at_least), ("below", self.below), ("up to", self.at_most),
        ):  # fmt: skip
            if bound is not None:
                parts.append(f"{word} {with_unit(f'{bound:,.10g}', unit)}")
        return (", " + " and ".join(parts)) if parts else ""


def _article(dimension: str) -> str:
    words = dimension.replace("_", " ")
    return ("an " if words[0] in "aeiou" else "a ") + words


@dataclass(frozen=True)
class Result:
    """One thing a worksheet finds: key, label, dimension and the units it is read in. `rounding` is nearest, up (a
    demand) or down (a capacity). A dimension of "" is a plain number, text or list of either. `columns`: key and heading
    of each column where the result is a table (its value is the list of its rows as lines, Answer.tables has the cells).
    """

    name: str
    label: str
    dimension: str = ""
    unit: str = ""
    unit_si: str = ""
    rounding: Literal["nearest", "up", "down"] = "nearest"
    digits: int = 3
    columns: tuple[tuple[str, str], ...] = ()

    def __post_init__(self) -> None:
        if self.dimension and not self.unit:
            object.__setattr__(self, "unit", READING_UNITS[self.dimension][0])
        if self.dimension and not self.unit_si:
            object.__setattr__(self, "unit_si", READING_UNITS[self.dimension][1])

    def reading_unit(self, units: UnitSystem) -> str:
        """The unit in which the value is given."""
        return self.unit if units == "us" else self.unit_si


@dataclass(frozen=True)
class Step:
    """One line of the working: what is found, the formula, the numbers put in, and what comes out."""

    label: str
    formula: str
    numbers: str
    result: str


@dataclass(frozen=True)
class Caution:
    """A caution that fits this answer. kind: warning, prohibition, mandatory (what you must do) or note."""

    text: str
    kind: CautionKind = "warning"


ResultValue = float | int | str | bool | None | Sequence[float | str | bool | None]


@dataclass(frozen=True)
class Answer:
    """What a worksheet found.

    headline -- the answer in one or two sentences; big -- the key of the result that is shown large
    results -- by key, in SI units (or text, or a list); a missing key is not known for these inputs
    shown -- by key, words that stand in for the usual writing of a value; for a list one text for each of its items
    tables -- by key, the cells of a result that has columns, row by row
    """

    verdict: Verdict
    headline: str
    big: str
    results: Mapping[str, ResultValue]
    steps: tuple[Step, ...] = ()
    cautions: tuple[Caution, ...] = ()
    figure: Figure | None = None
    citations: tuple[Citation, ...] = ()
    shown: Mapping[str, str | tuple[str, ...]] = field(default_factory=dict)
    tables: Mapping[str, tuple[tuple[str, ...], ...]] = field(default_factory=dict)


@dataclass(frozen=True)
class Say:
    """Writes numbers in the reader's order of units: `say.force(12315)` is `2,770 lb (12.3 kN)` on a US page."""

    units: UnitSystem = "us"

    def of(
        self,
        value_si: float,
        dimension: str,
        direction: str = "nearest",
        digits: int = 3,
        reading: tuple[str, str] | None = None,
    ) -> str:
        """Both units, the reader's own first."""
        return show(value_si, dimension, self.units, reading, digits, direction)

    def one(self, value_si: float, dimension: str, direction: str = "nearest", digits: int = 4) -> str:
        """Only the reader's own unit, for the lines of the working."""
        unit = READING_UNITS[dimension][0 if self.units == "us" else 1]
        return show_in(value_si, dimension, unit, digits, direction)

    def force(self, value_n: float, direction: str = "nearest") -> str:
        """A force [N]."""
        return self.of(value_n, "force", direction)

    def weight(self, value_kg: float, direction: str = "nearest") -> str:
        """A weight [kg]."""
        return self.of(value_kg, "weight", direction)

    def length(self, value_m: float, direction: str = "nearest") -> str:
        """A length [m]."""
        return self.of(value_m, "length", direction)


@dataclass(frozen=True)
class Given:
    """The inputs as read: `values` by name (SI floats, text, tuples), `typed` as the reader wrote them.

    `path` is where these inputs stand ("" or `parts[0]`), so that a function can refuse one by name.
    """

    values: Mapping[str, Any]
    typed: Mapping[str, str]
    path: str = ""

    def has(self, name: str) -> bool:
        """Whether the input was given or has a default."""
        return self.values.get(name) is not None

    def si(self, name: str) -> float:
        """A quantity or number that must be there, in its SI unit; refuses with the input's name if it is missing."""
        value = self.values.get(name)
        if value is None:
            raise self.refuse(name, "is needed here")
        return float(value)

    def count(self, name: str) -> int:
        """A whole number."""
        return round(self.si(name))

    def text(self, name: str) -> str:
        """A choice or a text; empty if not given."""
        value = self.values.get(name)
        return "" if value is None else str(value)

    def flag(self, name: str) -> bool:
        """Yes or no; no if not given."""
        return bool(self.values.get(name))

    def rows(self, name: str) -> tuple[Given, ...]:
        """The rows of a table input."""
        return tuple(self.values.get(name) or ())

    def point(self, name: str) -> tuple[float, float, float]:
        """Three lengths [m]."""
        value = self.values.get(name)
        if value is None:
            raise self.refuse(name, "is needed here")
        x, y, z = value
        return float(x), float(y), float(z)

    def numbers(self, name: str) -> tuple[float, ...]:
        """A list of quantities, SI."""
        return tuple(self.values.get(name) or ())

    def data(self, name: str) -> bytes:
        """The bytes of a file; empty if not given."""
        return bytes(self.values.get(name) or b"")

    def where(self, name: str) -> str:
        """The full path of an input, as errors name it."""
        return f"{self.path}.{name}" if self.path else name

    def refuse(self, name: str, message: str) -> BadInput:
        """An error on one input, for the caller to raise: message goes on from the label (`is ...`, `must ...`).

        It repeats what was typed, but not rows: they stand on the page, and their data would tell nobody anything.
        """
        value = self.values.get(name)
        rows = isinstance(value, tuple) and any(isinstance(item, Given) for item in value)
        typed = "" if rows else self.typed.get(name, "")
        return BadInput(InputError(self.where(name), typed[:60], message))


@dataclass(frozen=True)
class Worksheet:
    """A worksheet, declared once.

    title -- the shop's question; summary -- one sentence, what it tells
    compute -- from Given and Say to Answer; pure
    example -- raw inputs of the boat-yard example that fills the page; example_story -- what is happening there
    citations -- what the worksheet rests on whatever the inputs
    ok_words -- what ok means here, where it is not "Within the rating"
    rates -- whether it judges anything by a rating or limit; where not, ok reads "Worked out" and the page shows no shape
    """

    name: str
    title: str
    summary: str
    inputs: tuple[Input, ...]
    results: tuple[Result, ...]
    compute: Callable[[Given, Say], Answer]
    example: Mapping[str, Any]
    example_story: str
    citations: tuple[Citation, ...]
    room: str = ""
    ok_words: str = ""
    rates: bool = True

    def verdict_words(self, verdict: Verdict) -> str:
        """The words of a verdict on this worksheet's page and command line."""
        if verdict != "ok":
            return VERDICT_WORDS[verdict]
        return self.ok_words or (VERDICT_WORDS["ok"] if self.rates else WORKED_OUT)


# ------------------------------------------------------------------------------------------ reading inputs

_YES = {"yes", "y", "true", "1", "on"}
_NO = {"no", "n", "false", "0", "off", ""}


def read_inputs(inputs: Sequence[Input], raw: Mapping[str, Any], units: UnitSystem, path: str = "") -> Given:
    """Read raw inputs against their declaration.

    raw -- text, numbers, and for rows a list of mappings
    Raises BadInput with every input that cannot be used, unknown names included.
    """
    errors: list[InputError] = []
    values: dict[str, Any] = {}
    typed: dict[str, str] = {}
    names = [declared.name for declared in inputs]
    for name in raw:
        if name not in names:
            errors.append(
                InputError(
                    _join(path, str(name)),
                    str(raw[name])[:60],
                    f"is not an input here; there are {', '.join(names)}",
                )
            )
    for declared in inputs:
        given = raw.get(declared.name)
        if declared.several and isinstance(given, (list, tuple)) and all(isinstance(g, str) for g in given):
            given = ", ".join(given)
        if given is None or (isinstance(given, str) and not given.strip()):
            given = declared.default
        typed[declared.name] = _as_typed(declared, given)
        if given is None:
            values[declared.name] = None
            continue
        try:
            values[declared.name] = _read_one(declared, given, units, _join(path, declared.name))
        except NotReadable as reason:
            errors.append(
                InputError(
                    _join(path, declared.name),
                    typed[declared.name][:60],
                    f"{reason}. Give {declared.accepted()}.",
                )
            )
        except BadInput as inner:
            errors.extend(inner.errors)
    for declared in inputs:
        if declared.required and values.get(declared.name, 0) is None and _asked(declared, values):
            errors.append(
                InputError(_join(path, declared.name), "", f"is missing. Give {declared.accepted()}.")
            )
    if errors:
        raise BadInput(*errors)
    return Given(values, typed, path)


def _as_typed(declared: Input, given: Any) -> str:
    """What was given, for an error to repeat; nothing for a file or a long text, which no error can usefully repeat."""
    if given is None or declared.kind == "file" or declared.long:
        return ""
    return given if isinstance(given, str) else json.dumps(given, default=str)


def _join(path: str, name: str) -> str:
    return f"{path}.{name}" if path else name


def _asked(declared: Input, values: Mapping[str, Any]) -> bool:
    return all(values.get(other) in allowed for other, allowed in declared.shown_when.items())


def _read_one(declared: Input, given: Any, units: UnitSystem, path: str) -> Any:
    if declared.kind == "rows":
        return _read_rows(declared, given, units, path)
    if declared.kind == "point":
        return _read_point(declared, given, units, path)
    if declared.kind == "numbers":
        return _read_numbers(declared, given, units)
    if declared.kind == "file":
        return _read_file(given)
    if isinstance(given, bool) and declared.kind == "flag":
        return given
    if isinstance(given, (bool, list, dict)):
        raise NotReadable("is not a single value")
    if declared.kind == "choice":
        return _read_choice(declared, str(given))
    if declared.kind == "text":
        return _read_text(declared, str(given))
    if declared.kind == "flag":
        word = str(given).strip().lower()
        if word not in _YES | _NO:
            raise NotReadable("is neither yes nor no")
        return word in _YES
    return _read_number(declared, given, units)


def _read_text(declared: Input, given: str) -> str:
    """A short text is cut to 200 characters; a long one is taken whole, since a log cut off would be another log."""
    if not declared.long:
        return given.strip()[:200]
    if len(given) > LONGEST_TEXT:
        raise NotReadable(f"has {len(given):,} characters")
    return given


def _read_number(declared: Input, given: Any, units: UnitSystem) -> float:
    if declared.kind == "quantity":
        value = read_quantity(given, declared.dimension, declared.default_unit(units)).value_si
        _check_bounds(declared, value, lambda bound: to_si(bound, declared.unit, declared.dimension))
        return value
    value = read_quantity(given, "fraction", "ratio").value_si
    if declared.kind == "count" and value != round(value):
        raise NotReadable("is not a whole number")
    _check_bounds(declared, value, lambda bound: bound)
    return value


def _check_bounds(declared: Input, value: float, bound_si: Callable[[float], float]) -> None:
    """Hold a value against the bounds; a bound is met to one part in 1e12, so that 10 in is 254 mm."""

    def slack(bound: float) -> float:
        return abs(bound) * 1e-12

    if declared.above is not None and value <= bound_si(declared.above):
        raise NotReadable("is too small")
    if declared.at_least is not None and value < bound_si(declared.at_least) - slack(
        bound_si(declared.at_least)
    ):
        raise NotReadable("is too small")
    if declared.below is not None and value >= bound_si(declared.below):
        raise NotReadable("is too large")
    if declared.at_most is not None and value > bound_si(declared.at_most) + slack(
        bound_si(declared.at_most)
    ):
        raise NotReadable("is too large")


def _read_choice(declared: Input, given: str) -> str:
    wanted = given.strip().lower()
    for choice in declared.choices:
        if wanted in (choice.value.lower(), choice.label.lower()):
            return choice.value
    raise NotReadable("is not known here")


def _from_json(given: Any) -> Any:
    if isinstance(given, str):
        try:
            return json.loads(given)
        except ValueError:
            return given
    return given


def _read_rows(declared: Input, given: Any, units: UnitSystem, path: str) -> tuple[Given, ...]:
    rows = _from_json(given)
    if not isinstance(rows, list) or not all(isinstance(row, Mapping) for row in rows):
        raise NotReadable("is not a list of rows")
    low = declared.at_least if declared.at_least is not None else 1
    high = declared.at_most if declared.at_most is not None else 100
    if not low <= len(rows) <= high:
        raise NotReadable(f"has {len(rows)} rows")
    read: list[Given] = []
    errors: list[InputError] = []
    for number, row in enumerate(rows):
        try:
            read.append(read_inputs(declared.columns, row, units, f"{path}[{number}]"))
        except BadInput as inner:
            errors.extend(inner.errors)
    if errors:
        raise BadInput(*errors)
    return tuple(read)


def _read_point(declared: Input, given: Any, units: UnitSystem, path: str) -> tuple[float, ...]:
    parts = _from_json(given)
    if isinstance(parts, str):
        parts = parts.split(";")
    if not isinstance(parts, list) or len(parts) != 3:
        raise NotReadable("does not have three parts, x; y; z")
    read: list[float] = []
    errors: list[InputError] = []
    for number, part in enumerate(parts):
        try:
            read.append(_read_part(declared, part, units))
        except NotReadable as reason:
            message = f"{reason}. Give a length such as {declared._sample()}."
            errors.append(InputError(f"{path}[{number}]", str(part)[:60], message))
    if errors:
        raise BadInput(*errors)
    return tuple(read)


def _read_part(declared: Input, part: Any, units: UnitSystem) -> float:
    if isinstance(part, (bool, list, dict)) or part is None:
        raise NotReadable("is not a single value")
    value = read_quantity(part, declared.dimension, declared.default_unit(units)).value_si
    _check_bounds(declared, value, lambda bound: to_si(bound, declared.unit, declared.dimension))
    return value


def _read_numbers(declared: Input, given: Any, units: UnitSystem) -> tuple[float, ...]:
    parts = _from_json(given)
    if isinstance(parts, str):
        parts = [part for part in parts.replace("\n", ";").split(";") if part.strip()]
    if isinstance(parts, (int, float)) and not isinstance(parts, bool):
        parts = [parts]
    if not isinstance(parts, list):
        raise NotReadable("is not a list")
    low, high = declared.at_least or 1, declared.at_most or 1000
    if not low <= len(parts) <= high:
        raise NotReadable(f"has {len(parts)} values")
    unbounded = Input(
        declared.name, declared.label, "quantity", declared.dimension, declared.unit, declared.unit_si
    )
    return tuple(_read_part(unbounded, part, units) for part in parts)


def _read_file(given: Any) -> bytes:
    if isinstance(given, bytes):
        return given
    try:
        return base64.b64decode(str(given), validate=True)
    except (binascii.Error, ValueError) as reason:
        raise NotReadable("could not be read as a file") from reason


# ------------------------------------------------------------------------------------------ writing results


def result_record(declared: Result, answer: Answer, units: UnitSystem) -> dict[str, Any]:
    """One result as it leaves calc: value and unit in the reader's system, and the words.

    A list has `items`, one text each; a result with columns has `rows`, its cells.
    """
    value = answer.results.get(declared.name)
    unit = declared.reading_unit(units)
    record: dict[str, Any] = {"value": None, "unit": unit, "label": declared.label, "text": ""}
    shown = answer.shown.get(declared.name)
    if isinstance(shown, tuple):
        record["items"] = list(shown)
    elif shown is None and isinstance(value, (list, tuple)):
        record["items"] = [_result_text(item, declared, units) for item in value]
    if "items" in record:
        record["text"] = "; ".join(record["items"]) or "none"
    elif value is None:
        record["text"] = shown or "not known from these inputs"
    else:
        record["text"] = shown or _result_text(value, declared, units)
    if value is not None:
        record["value"] = _in_unit(value, declared, unit)
    if declared.columns:
        record["rows"] = [list(row) for row in answer.tables.get(declared.name, ())]
    return record


def _in_unit(value: Any, declared: Result, unit: str) -> Any:
    if isinstance(value, (list, tuple)):
        return [_in_unit(item, declared, unit) for item in value]
    if isinstance(value, (str, bool)) or value is None or not declared.dimension:
        return value
    return from_si(float(value), unit, declared.dimension)


def _result_text(value: Any, declared: Result, units: UnitSystem) -> str:
    if value is None:
        return "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, str):
        return value
    if not declared.dimension:
        return show_in(float(value), "fraction", "ratio", declared.digits, declared.rounding)
    reading = (declared.unit, declared.unit_si)
    return show(float(value), declared.dimension, units, reading, declared.digits, declared.rounding)
