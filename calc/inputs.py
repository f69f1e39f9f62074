"""What a worksheet asks, and how what was typed is read.

Each kind of input is a class that reads its own raw value, says by code what would do, and carries no sentence: labels,
help and the words of options stand in the catalogue under `input-NAME` and `option-NAME-VALUE`. Reading gives `Given`,
plain SI values by name; what cannot be used is refused by path, code and facts.
"""

from __future__ import annotations

import base64
import binascii
import datetime
import json
import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, ClassVar

from calc.dates import read_date
from calc.quantities import (
    READING_UNITS,
    NotReadable,
    TwoReadings,
    from_si,
    may_be_thousand,
    needs_echo,
    number_text,
    read_quantity,
    to_si,
)
from calc.quantities import Reading as ReadQuantity
from calc.words.facts import Cell, Fact, Listing, Message, Number, Option, Quantity, Sense, absent, message
from calc.words.writer import UnitSystem

_FARTHEST_DUE = datetime.timedelta(days=3653)
LONGEST_TEXT = 200_000
"""Characters that a long text input takes."""
LONGEST_WORD = 200
"""Characters that a short text input keeps."""
_LONGEST_SHOWN = 60

_YES = {"yes", "y", "true", "1", "on"}
_NO = {"no", "n", "false", "0", "off", ""}


@dataclass(frozen=True)
class InputError:
    """What is wrong with one input: its path (`load`, `parts[2].width`), what was given, and why, as a message of the
    worksheet's scope. The message names what would do.
    """

    input: str
    given: str
    why: Message


class BadInput(ValueError):
    """One or more inputs cannot be used. `errors` has one InputError each."""

    def __init__(self, *errors: InputError) -> None:
        self.errors = errors
        super().__init__("; ".join(f"{e.input}: {e.why.code}" for e in errors))


@dataclass(frozen=True)
class Given:
    """The inputs as read: `values` by name (SI floats, text, tuples), `typed` as the reader wrote them.

    `path` is where these inputs stand ("" or `parts[0]`), so that a function can refuse one by name. `units` is the
    reader's order of units, for a text that is read later and whose bare numbers take the usual unit.
    """

    values: Mapping[str, Any]
    typed: Mapping[str, str]
    path: str = ""
    units: UnitSystem = "us"

    def has(self, name: str) -> bool:
        """Whether the input was given or has a default."""
        return self.values.get(name) is not None

    def si(self, name: str) -> float:
        """A quantity or number that must be there, in its SI unit; refuses with the input's name if it is missing."""
        value = self.values.get(name)
        if value is None:
            raise self.refuse(name, "needed-here")
        return float(value)

    def maybe(self, name: str) -> float | None:
        """A quantity or number in its SI unit; None if it was not given."""
        value = self.values.get(name)
        return None if value is None else float(value)

    def count(self, name: str) -> int:
        """A whole number."""
        return round(self.si(name))

    def text(self, name: str) -> str:
        """A choice or a text; empty if not given."""
        value = self.values.get(name)
        return "" if value is None else str(value)

    def date(self, name: str) -> datetime.date | None:
        """A day; None if not given."""
        value = self.values.get(name)
        return value if isinstance(value, datetime.date) else None

    def flag(self, name: str) -> bool:
        """Yes or no; no if not given."""
        return bool(self.values.get(name))

    def answered(self, name: str) -> bool | None:
        """Yes, no, or None where nobody looked."""
        return self.flag(name) if self.has(name) else None

    def rows(self, name: str) -> tuple[Given, ...]:
        """The rows of a table input."""
        return tuple(self.values.get(name) or ())

    def point(self, name: str) -> tuple[float, float, float]:
        """Three lengths [m]."""
        value = self.values.get(name)
        if value is None:
            raise self.refuse(name, "needed-here")
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
        return join(self.path, name)

    def refuse(self, name: str, code: str, **facts: Fact) -> BadInput:
        """An error on one input, for the caller to raise: the message `refused-CODE` with its facts.

        It repeats what was typed, but not rows: they stand on the page, and their data would tell nobody anything.
        """
        value = self.values.get(name)
        rows = isinstance(value, tuple) and any(isinstance(item, Given) for item in value)
        typed = "" if rows else self.typed.get(name, "")
        return BadInput(
            InputError(self.where(name), typed[:_LONGEST_SHOWN], message(f"refused-{code}", **facts))
        )


def join(path: str, name: str) -> str:
    """The path of an input below another."""
    return f"{path}.{name}" if path else name


@dataclass(frozen=True)
class Reading:
    """How and where a raw value is read: the reader's order of units, the path of the input (`parts[0].shape`), its path
    in the catalogue (`parts-shape`), and the words of an option of it.
    """

    units: UnitSystem
    option_words: Callable[[str, str], str]
    path: str = ""
    words: str = ""

    def of(self, name: str) -> Reading:
        """The same for an input inside."""
        words = f"{self.words}-{name}" if self.words else name
        return Reading(self.units, self.option_words, join(self.path, name), words)

    def below(self, step: str) -> Reading:
        """The same for a row or a part of this input."""
        return Reading(self.units, self.option_words, f"{self.path}{step}", self.words)

    def words_of(self, value: str) -> str:
        """The words of an option of this input."""
        return self.option_words(self.words, value)


LEAST_VALUE = 1e-12
"""What must be more than some bound may be no nearer to zero than this, in its SI unit: no scale or rule shows less, and what
is divided by such a number has lost its digits (our own mark, no source)."""


@dataclass(frozen=True)
class Bounds:
    """Between what a value must lie, in the input's own unit (for rows and numbers: how many there may be)."""

    above: float | None = None
    at_least: float | None = None
    below: float | None = None
    at_most: float | None = None

    def check(self, value: float, si: Callable[[float], float] = float) -> None:
        """Hold a value against the bounds; a bound is met to one part in 1e12, so that 10 in is 254 mm."""

        def slack(bound: float) -> float:
            return abs(bound) * 1e-12

        if self.above is not None and (value <= si(self.above) or abs(value) < LEAST_VALUE):
            raise NotReadable("too-small")
        if self.at_least is not None and value < si(self.at_least) - slack(si(self.at_least)):
            raise NotReadable("too-small")
        if self.below is not None and value >= si(self.below):
            raise NotReadable("too-large")
        if self.at_most is not None and value > si(self.at_most) + slack(si(self.at_most)):
            raise NotReadable("too-large")

    def listed(self, unit: str) -> Fact:
        """The bounds as a fact: over 0 in and up to 40 in."""
        found = (
            ("bound-over", self.above),
            ("bound-from", self.at_least),
            ("bound-below", self.below),
            ("bound-up-to", self.at_most),
        )
        return Listing(
            tuple(
                message(code, bound=Cell(f"{bound:,.10g}", unit))
                for code, bound in found
                if bound is not None
            ),
            "and",
        )

    def sample(self) -> float:
        """A value within the bounds, for "such as"."""
        if self.above is None and self.at_least is None and self.at_most is None:
            return 10.0
        low = self.above if self.above is not None else (self.at_least or 0.0)
        high = (
            self.at_most if self.at_most is not None else (self.below if self.below is not None else math.inf)
        )
        return next((v for v in (10.0, 100.0, 1.0, 500.0, 0.25) if low < v <= high), high)


NO_BOUNDS = Bounds()


@dataclass(frozen=True)
class Input:
    """One thing a worksheet asks. Take the class of its kind; all are declared by keyword.

    name -- the key, the same on page, command line and in code; its words are `input-NAME` and `input-NAME.help`
    default -- what holds when nothing is given; None leaves an optional input out
    shown_when -- the input is asked only if, for each name, that other input has one of the values
    dimension, unit, unit_si -- of a quantity: what a bare number means on a US and on an SI page
    bounds -- between what a value must lie, in `unit`; for rows and numbers: how many there may be
    choices -- of a choice: the values; the words of each are `option-NAME-VALUE`
    columns -- of rows: the inputs of one row; `input-NAME.row` is what one row is called
    long -- of a text: many lines, such as a table pasted from a spreadsheet, kept as they are
    several -- of a text: may also come as a list of texts; an empty list is nothing given
    on_page -- whether the page asks it; where not, it is for the command line and for other programs
    sense -- what more of it means: demand (more is never better: a load, wear, heat) or capacity (more is never worse: a
      rating); held as a law over every worksheet (tests/laws)
    point_is_decimal -- of a quantity that a dial or a caliper shows: 9.525 mm is nine and a half, never asked back
    """

    kind: ClassVar[str] = ""
    name: str
    required: bool = True
    default: str | None = None
    shown_when: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    dimension: str = ""
    unit: str = ""
    unit_si: str = ""
    bounds: Bounds = NO_BOUNDS
    choices: tuple[str, ...] = ()
    columns: tuple[Input, ...] = ()
    long: bool = False
    several: bool = False
    on_page: bool = True
    sense: Sense = "plain"
    point_is_decimal: bool = False

    def __post_init__(self) -> None:
        if self.dimension and not self.unit:
            object.__setattr__(self, "unit", READING_UNITS[self.dimension][0])
        if self.dimension and not self.unit_si:
            object.__setattr__(self, "unit_si", READING_UNITS[self.dimension][1])

    def default_unit(self, units: UnitSystem) -> str:
        """The unit a bare number takes."""
        return self.unit if units == "us" else self.unit_si

    def read(self, raw: Any, reading: Reading) -> Any:
        """The value of what was typed; raises NotReadable, or BadInput for parts inside."""
        raise NotImplementedError

    def accepted(self, words: str) -> Message:
        """What would do; `words` is the input's path in the catalogue."""
        return message(f"accepted-{self.kind}", bounds=self.bounds.listed(self.unit))

    def fact(self, value: Any, words: str) -> Fact:
        """A value of this input as a message may name it; `words` is the input's path in the catalogue."""
        return absent("not-given") if value is None else self._fact(value, words)

    def _fact(self, value: Any, words: str) -> Fact:
        return str(value)

    def read_as(self, typed: str, units: UnitSystem) -> Fact | None:
        """How a text that was read was understood, where it could have been read in another way; else None."""
        return None

    def typed(self, given: Any) -> str:
        """What was given, for an error to repeat."""
        if given is None:
            return ""
        return given if isinstance(given, str) else json.dumps(given, default=str)

    def _sample(self) -> Cell:
        return Cell(f"{self.bounds.sample():g}", self.unit)

    def _bounded(self, raw: Any, units: UnitSystem) -> float:
        """A quantity within the bounds."""
        value = self._quantity(raw, units)
        self._check(value)
        return value

    def _check(self, value: float) -> None:
        self.bounds.check(value, lambda bound: to_si(bound, self.unit, self.dimension))

    def _quantity(self, raw: Any, units: UnitSystem) -> float:
        if isinstance(raw, (bool, list, dict)) or raw is None:
            raise NotReadable("not-single")
        return self._read(raw, units).value_si

    def _read(self, raw: Any, units: UnitSystem) -> ReadQuantity:
        """A quantity as read. Of two readings the smaller counts where the larger is out of bounds: a mark before three digits
        is then a decimal mark, and a bare 0.5 in a box of percent half a percent.
        """
        unit = self.default_unit(units)
        try:
            return read_quantity(raw, self.dimension, unit, self.point_is_decimal)
        except TwoReadings as two:
            if self._allows(two.larger_si):
                raise
            return two.smaller

    def _allows(self, value: float) -> bool:
        """Whether a value is within the bounds."""
        try:
            self._check(value)
        except NotReadable:
            return False
        return True


def _written(value_si: float, dimension: str, unit: str, digits: int) -> Cell:
    """A value in a unit, without idle noughts."""
    text = number_text(from_si(value_si, unit, dimension), digits)
    return Cell(text.rstrip("0").rstrip(".") if "." in text else text, unit)


def single(raw: Any) -> Any:
    """A raw value where one is wanted."""
    if isinstance(raw, (bool, list, dict)):
        raise NotReadable("not-single")
    return raw


_WRITTEN_ALIKE = {"lb": "lbf"}
"""Units that readers see written alike: a force typed in pounds is shown back in newtons, not in pounds again."""


class QuantityInput(Input):
    """A number with a unit."""

    kind = "quantity"

    def read(self, raw: Any, reading: Reading) -> float:
        """The value in SI."""
        return self._bounded(raw, reading.units)

    def accepted(self, words: str) -> Message:
        """What would do."""
        return message(
            "accepted-quantity",
            what=message(f"sample-{self.dimension}", sample=self._sample()),
            bounds=self.bounds.listed(self.unit),
        )

    def read_as(self, typed: str, units: UnitSystem) -> Fact | None:
        """The value in the unit as typed, and in one of the reader's."""
        if not needs_echo(typed):
            return None
        read = self._read(typed, units)
        pair = (self.unit, self.unit_si) if units == "us" else (self.unit_si, self.unit)
        alike = (read.unit, _WRITTEN_ALIKE.get(read.unit, ""))
        other = next((unit for unit in pair if unit not in alike), None)
        return message(
            "read-as",
            first=_written(read.value_si, self.dimension, read.unit, 6),
            second=_written(read.value_si, self.dimension, other, 3) if other else absent("not-given"),
        )

    def _fact(self, value: Any, words: str) -> Fact:
        units = (
            None if READING_UNITS[self.dimension] == (self.unit, self.unit_si) else (self.unit, self.unit_si)
        )
        return Quantity(float(value), self.dimension, units=units)


class NumberInput(Input):
    """A plain number."""

    kind = "number"

    def read(self, raw: Any, reading: Reading) -> float:
        """The number."""
        value = read_quantity(single(raw), "fraction", "ratio").value_si
        self.bounds.check(value)
        return value

    def _fact(self, value: Any, words: str) -> Fact:
        return Number(float(value), 4)


def _plain_number(raw: Any) -> float:
    """A number without a unit; what is none (`two`, `2 in`) is refused as what it should be."""
    try:
        return read_quantity(raw, "fraction", "ratio").value_si
    except NotReadable as why:
        raise NotReadable("not-whole") from why


class CountInput(Input):
    """A whole number."""

    kind = "count"

    def read(self, raw: Any, reading: Reading) -> float:
        """The number."""
        if may_be_thousand(str(single(raw))):
            raise NotReadable("not-whole")
        value = _plain_number(single(raw))
        if value != round(value):
            raise NotReadable("not-whole")
        self.bounds.check(value)
        return value

    def _fact(self, value: Any, words: str) -> Fact:
        return int(value)


class ChoiceInput(Input):
    """One of some values; the words on the page are understood as well."""

    kind = "choice"

    def read(self, raw: Any, reading: Reading) -> str:
        """The value."""
        wanted = str(single(raw)).strip().lower()
        for value in self.choices:
            if wanted == value.lower() or wanted == reading.words_of(value).lower():
                return value
        raise NotReadable("not-a-choice")

    def accepted(self, words: str) -> Message:
        """What would do."""
        return message("accepted-choice", values=Listing(self.choices))

    def _fact(self, value: Any, words: str) -> Fact:
        return Option(words, str(value))


class TextInput(Input):
    """Words. A short text is cut; a long one is taken whole, since a log cut off would be another log."""

    kind = "text"

    def read(self, raw: Any, reading: Reading) -> str:
        """The text."""
        text = str(single(raw))
        if not self.long:
            return text.strip()[:LONGEST_WORD]
        if len(text) > LONGEST_TEXT:
            raise NotReadable("too-many-characters", count=len(text))
        return text

    def accepted(self, words: str) -> Message:
        """What would do."""
        return message("accepted-long-text", count=LONGEST_TEXT) if self.long else message("accepted-text")

    def typed(self, given: Any) -> str:
        """Nothing for a long text, which no error can usefully repeat."""
        return "" if self.long else super().typed(given)


JOB_INPUT = TextInput("job", required=False)
"""What the reader calls the job, so that worksheets of two jobs are told apart when one page is made of them."""
JOB_WORDS = "shared/job"
"""The scope of its words."""


class DateInput(Input):
    """A day that lies behind: when something was inspected, made or tested. From 1970 to today."""

    kind = "date"

    def read(self, raw: Any, reading: Reading) -> datetime.date:
        """The day."""
        return read_date(str(single(raw)), today())

    def read_as(self, typed: str, units: UnitSystem) -> Fact | None:
        """The day as a calendar has it, where it was written in another way."""
        day = str(read_date(typed, today()))
        return None if day == typed.strip() else day

    def accepted(self, words: str) -> Message:
        """What would do."""
        return message("accepted-date")

    def _fact(self, value: Any, words: str) -> Fact:
        return str(value)


class DueInput(DateInput):
    """A day by which something must be done; it may be past, or up to ten years ahead (our own mark, no source)."""

    def read(self, raw: Any, reading: Reading) -> datetime.date:
        """The day."""
        return read_date(str(single(raw)), today(), today() + _FARTHEST_DUE)

    def read_as(self, typed: str, units: UnitSystem) -> Fact | None:
        """The day as a calendar has it, where it was written in another way."""
        day = str(read_date(typed, today(), today() + _FARTHEST_DUE))
        return None if day == typed.strip() else day

    def accepted(self, words: str) -> Message:
        """What would do."""
        return message("accepted-due")


def today() -> datetime.date:
    """The day on the clock of the machine that answers."""
    return datetime.date.today()


class FlagInput(Input):
    """Yes or no."""

    kind = "flag"

    def read(self, raw: Any, reading: Reading) -> bool:
        """Whether it is yes."""
        if isinstance(raw, bool):
            return raw
        word = str(single(raw)).strip().lower()
        if word not in _YES | _NO:
            raise NotReadable("neither-yes-nor-no")
        return word in _YES

    def _fact(self, value: Any, words: str) -> Fact:
        return message("yes" if value else "no")


class PointInput(Input):
    """Three lengths, x; y; z."""

    kind = "point"

    def read(self, raw: Any, reading: Reading) -> tuple[float, ...]:
        """The three lengths [m]."""
        parts = _from_json(raw)
        if isinstance(parts, str):
            parts = parts.split(";")
        if not isinstance(parts, list) or len(parts) != 3:
            raise NotReadable("not-three-parts")
        read: list[float] = []
        errors: list[InputError] = []
        for number, part in enumerate(parts):
            try:
                read.append(self._bounded(part, reading.units))
            except NotReadable as reason:
                wanted = message("accepted-length", sample=self._sample())
                why = message("unusable", reason=reason.why, accepted=wanted)
                errors.append(InputError(f"{reading.path}[{number}]", str(part)[:_LONGEST_SHOWN], why))
        if errors:
            raise BadInput(*errors)
        return tuple(read)

    def _fact(self, value: Any, words: str) -> Fact:
        return Listing(tuple(Quantity(float(part), self.dimension) for part in value), "semicolon")


class NumbersInput(Input):
    """A list of quantities."""

    kind = "numbers"

    def read(self, raw: Any, reading: Reading) -> tuple[float, ...]:
        """The values in SI."""
        parts = _from_json(raw)
        if isinstance(parts, str):
            parts = [part for part in parts.replace("\n", ";").split(";") if part.strip()]
        if isinstance(parts, (int, float)) and not isinstance(parts, bool):
            parts = [parts]
        if not isinstance(parts, list):
            raise NotReadable("not-a-list")
        low, high = self.bounds.at_least or 1, self.bounds.at_most or 1000
        if not low <= len(parts) <= high:
            raise NotReadable("has-values", count=len(parts))
        return tuple(self._quantity(part, reading.units) for part in parts)

    def accepted(self, words: str) -> Message:
        """What would do."""
        return message("accepted-numbers", sample=self._sample(), bounds=self.bounds.listed(""))

    def _fact(self, value: Any, words: str) -> Fact:
        return Listing(tuple(Quantity(float(part), self.dimension) for part in value), "semicolon")


class RowsInput(Input):
    """A table of inputs, one row for each thing."""

    kind = "rows"

    def read(self, raw: Any, reading: Reading) -> tuple[Given, ...]:
        """The rows."""
        rows = _from_json(raw)
        if not isinstance(rows, list) or not all(isinstance(row, Mapping) for row in rows):
            raise NotReadable("not-rows")
        low = self.bounds.at_least if self.bounds.at_least is not None else 1
        high = self.bounds.at_most if self.bounds.at_most is not None else 100
        if not low <= len(rows) <= high:
            raise NotReadable("has-rows", count=len(rows))
        read: list[Given] = []
        errors: list[InputError] = []
        for number, row in enumerate(rows):
            try:
                read.append(read_inputs(self.columns, row, reading.below(f"[{number}]")))
            except BadInput as inner:
                errors.extend(inner.errors)
        if errors:
            raise BadInput(*errors)
        return tuple(read)

    def accepted(self, words: str) -> Message:
        """What would do."""
        return message("accepted-rows", bounds=self.bounds.listed(""))

    def _fact(self, value: Any, words: str) -> Fact:
        return len(value)


class FileInput(Input):
    """The bytes of a file, base64 where they come as text."""

    kind = "file"

    def read(self, raw: Any, reading: Reading) -> bytes:
        """The bytes."""
        if isinstance(raw, bytes):
            return raw
        try:
            return base64.b64decode(str(raw), validate=True)
        except (binascii.Error, ValueError) as reason:
            raise NotReadable("not-a-file") from reason

    def typed(self, given: Any) -> str:
        """Nothing: no error can usefully repeat a file."""
        return ""

    def _fact(self, value: Any, words: str) -> Fact:
        return len(value)


def read_inputs(inputs: Sequence[Input], raw: Mapping[str, Any], reading: Reading) -> Given:
    """Read raw inputs against their declaration.

    raw -- text, numbers, and for rows a list of mappings
    Raises BadInput with every input that cannot be used, unknown names included.
    """
    errors = _unknown(inputs, raw, reading.path)
    values: dict[str, Any] = {}
    typed: dict[str, str] = {}
    for declared in inputs:
        given = _given(declared, raw.get(declared.name))
        typed[declared.name] = declared.typed(given)
        values[declared.name] = None
        if given is None:
            continue
        inside = reading.of(declared.name)
        try:
            values[declared.name] = declared.read(given, inside)
        except NotReadable as reason:
            why = message("unusable", reason=reason.why, accepted=declared.accepted(inside.words))
            errors.append(InputError(inside.path, typed[declared.name][:_LONGEST_SHOWN], why))
            values.pop(declared.name)
        except BadInput as inner:
            errors.extend(inner.errors)
            values.pop(declared.name)
    for declared in inputs:
        if declared.required and values.get(declared.name, 0) is None and asked(declared, values):
            inside = reading.of(declared.name)
            why = message("missing", accepted=declared.accepted(inside.words))
            errors.append(InputError(inside.path, "", why))
    if errors:
        raise BadInput(*errors)
    return Given(values, typed, reading.path, reading.units)


def understood(inputs: Sequence[Input], given: Given) -> dict[str, Fact]:
    """How each input that could have been read in another way was understood, by its path; rows included."""
    found: dict[str, Fact] = {}
    for declared in inputs:
        typed = given.typed.get(declared.name, "")
        if declared.columns:
            for row in given.rows(declared.name):
                found |= understood(declared.columns, row)
        elif typed and (said := declared.read_as(typed, given.units)) is not None:
            found[given.where(declared.name)] = said
    return found


def _unknown(inputs: Sequence[Input], raw: Mapping[str, Any], path: str) -> list[InputError]:
    names = tuple(declared.name for declared in inputs)
    return [
        InputError(
            join(path, str(name)),
            str(raw[name])[:_LONGEST_SHOWN],
            message("no-such-input", names=Listing(names)),
        )
        for name in raw
        if name not in names
    ]


def _given(declared: Input, given: Any) -> Any:
    """What was given: a list of texts as one, an empty text as the default."""
    if declared.several and isinstance(given, (list, tuple)) and all(isinstance(one, str) for one in given):
        given = ", ".join(given)
    if given is None or (isinstance(given, str) and not given.strip()):
        return declared.default
    return given


def asked(declared: Input, values: Mapping[str, Any]) -> bool:
    """Whether an input is asked, the others being what they are."""
    return all(values.get(other) in allowed for other, allowed in declared.shown_when.items())


def _from_json(given: Any) -> Any:
    if isinstance(given, str):
        try:
            return json.loads(given)
        except ValueError:
            return given
    return given


__all__ = [
    "BadInput",
    "Bounds",
    "ChoiceInput",
    "CountInput",
    "DateInput",
    "DueInput",
    "FileInput",
    "FlagInput",
    "Given",
    "Input",
    "InputError",
    "NumberInput",
    "NumbersInput",
    "PointInput",
    "QuantityInput",
    "Reading",
    "RowsInput",
    "TextInput",
    "asked",
    "join",
    "read_inputs",
    "understood",
]
