"""The inputs of worksheets as bytes, and back.

A name or an option is written as a few bits of its checksum (CRC-32, as binascii has it), a value as the letters that were
typed. So a text holds for as long as a worksheet's boxes keep their names, whatever their order. Two checksums stand before
all: one over the bytes, for damage, and one over names and values written out, so that no box is ever taken for another.
Files are not carried. A test holds that no two boxes of a worksheet share their bits; options that do are written out.
"""

from __future__ import annotations

import binascii
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from calc.answering import NoSuchWorksheet, worksheet
from calc.inputs import Input
from calc.records.codes.spelling import CodeRefused, read_back, spelled
from calc.words.writer import UnitSystem

NAME_BITS, OPTION_BITS, ROWS_BITS = 16, 12, 10
_LETTER_BITS, _ANY_LETTER_BITS, _HASH_BITS, _CRC_BITS = 6, 21, 32, 32
_END, _CAPITAL, _OTHER = 0, 1, 2
_LETTERS = "0123456789abcdefghijklmnopqrstuvwxyz .,-/'\"°%()+=:;#*&×\n\t_"
"""Letters that take six bits; a capital of one takes twelve, and any other 27."""
_FIRST_LETTER = 3
_PATH = re.compile(r"(?P<name>\w+)(?:\[(?P<place>\d{1,3})\](?:\.(?P<within>[\w.\[\]]+))?)?")
"""The path of a box, as pages have it."""
MOST_SHEETS = 4
"""So many worksheets stand in one text, at most."""


class NotCarried(ValueError):
    """Inputs that no text carries: a file."""


@dataclass(frozen=True)
class Numbers:
    """What was typed in one worksheet: its name, and the inputs as `calc.answering` takes them, every value a text."""

    sheet: str
    inputs: Mapping[str, Any]


@dataclass(frozen=True)
class Brought:
    """What a text held: the worksheets, the order of units, and the eight letters of tables and code that printed it."""

    sheets: tuple[Numbers, ...]
    units: UnitSystem
    made_by: str


def code_text(sheets: Sequence[Numbers], units: UnitSystem, made_by: str) -> str:
    """The text for the inputs of worksheets.

    made_by -- the eight letters (hexadecimal digits) that stand for tables and code
    Raises NotCarried.
    """
    bits = _Writer()
    bits.number(int(made_by, 16), _HASH_BITS)
    bits.number(units == "si", 1)
    for one in sheets:
        bits.text(one.sheet)
        _write(bits, worksheet(one.sheet).inputs, one.inputs)
    bits.text("")
    meaning = _crc(_written_out(Brought(tuple(sheets), units, made_by)))
    body = meaning.to_bytes(_CRC_BITS // 8, "big") + bits.data()
    return spelled(_crc_of(body).to_bytes(_CRC_BITS // 8, "big") + body)


def bring_back(text: str) -> Brought:
    """What a text holds. Raises CodeRefused where it is damaged, of a newer form, or names what this book does not have."""
    data = read_back(text)
    size = _CRC_BITS // 8
    body = data[size:]
    if len(body) <= size or int.from_bytes(data[:size], "big") != _crc_of(body):
        raise CodeRefused("damaged")
    brought = _read_all(_Reader(body[size:]))
    if int.from_bytes(body[:size], "big") != _crc(_written_out(brought)):
        raise CodeRefused("unknown-box")
    return brought


def fields(inputs: Mapping[str, Any], within: str = "") -> Iterator[tuple[str, str]]:
    """Inputs by the paths of their boxes, as the fields of an address have them: `load`, `items[0].kind`, `centre[2]`."""
    for name, value in inputs.items():
        if isinstance(value, Mapping):
            yield from fields(value, f"{within}{name}.")
        elif isinstance(value, (list, tuple)):
            yield from fields(
                {f"{name}[{place}]": one for place, one in enumerate(value)},
                within,
            )
        else:
            yield within + name, value


def nested(filled: Iterable[tuple[str, str]]) -> dict[str, Any]:
    """Inputs from the fields of an address: what `fields` takes apart, put together.

    >>> nested([("load", "2 t"), ("items[1].kind", "hook")])
    {'load': '2 t', 'items': [{}, {'kind': 'hook'}]}
    """
    inputs: dict[str, Any] = {}
    for path, value in filled:
        _put(inputs, path, value)
    return inputs


def _put(inputs: dict[str, Any], path: str, value: str) -> None:
    match = _PATH.fullmatch(path)
    if match is None:
        return
    name, place, within = match["name"], match["place"], match["within"]
    if place is None:
        inputs[name] = value
        return
    rows = inputs.setdefault(name, [])
    while len(rows) <= int(place):
        rows.append({} if within else "")
    if within:
        _put(rows[int(place)], within, value)
    else:
        rows[int(place)] = value


def name_bits(name: str) -> int:
    """What stands for the name of a box; never nought, which ends a list."""
    return _crc(name) % ((1 << NAME_BITS) - 1) + 1


def option_bits(value: str) -> int:
    """What stands for an option of a box."""
    return _crc(value) % (1 << OPTION_BITS)


# ---- to bits


def _write(bits: _Writer, declared: Sequence[Input], given: Mapping[str, Any]) -> None:
    for one in declared:
        value = given.get(one.name)
        if value is None or value in ("", []):
            continue
        if one.kind == "file":
            raise NotCarried(one.name)
        bits.number(name_bits(one.name), NAME_BITS)
        if one.columns:
            bits.number(len(value), ROWS_BITS)
            for row in value:
                _write(bits, one.columns, row)
        elif one.kind == "point":
            for axis in value:
                bits.text(axis)
        else:
            _write_value(bits, one, str(value))
    bits.number(0, NAME_BITS)


def _write_value(bits: _Writer, one: Input, value: str) -> None:
    known = value in one.choices and _options(one).count(option_bits(value)) == 1
    if one.choices:
        bits.number(known, 1)
    if known:
        bits.number(option_bits(value), OPTION_BITS)
    else:
        bits.text(value)


def _options(one: Input) -> list[int]:
    return [option_bits(value) for value in one.choices]


class _Writer:
    """Bits one after another, the highest first."""

    def __init__(self) -> None:
        self._bits: list[str] = []

    def number(self, value: int, count: int) -> None:
        self._bits.append(f"{value:0{count}b}")

    def text(self, value: str) -> None:
        for letter in value:
            small = letter.lower()
            if small in _LETTERS and letter in (small, small.upper()):
                if letter != small:
                    self.number(_CAPITAL, _LETTER_BITS)
                self.number(_FIRST_LETTER + _LETTERS.index(small), _LETTER_BITS)
            else:
                self.number(_OTHER, _LETTER_BITS)
                self.number(ord(letter), _ANY_LETTER_BITS)
        self.number(_END, _LETTER_BITS)

    def data(self) -> bytes:
        bits = "".join(self._bits)
        bits += "0" * (-len(bits) % 8)
        return bytes(int(bits[start : start + 8], 2) for start in range(0, len(bits), 8))


# ---- from bits


def _read_all(bits: _Reader) -> Brought:
    made_by = f"{bits.number(_HASH_BITS):08x}"
    units: UnitSystem = "si" if bits.number(1) else "us"
    sheets: list[Numbers] = []
    while name := bits.text():
        if len(sheets) == MOST_SHEETS:
            raise CodeRefused("damaged")
        try:
            declared = worksheet(name).inputs
        except NoSuchWorksheet:
            raise CodeRefused("unknown-sheet", sheet=name) from None
        sheets.append(Numbers(name, _read(bits, declared)))
    if not sheets:
        raise CodeRefused("damaged")
    return Brought(tuple(sheets), units, made_by)


def _read(bits: _Reader, declared: Sequence[Input]) -> dict[str, Any]:
    by_bits = {name_bits(one.name): one for one in declared if one.kind != "file"}
    given: dict[str, Any] = {}
    while named := bits.number(NAME_BITS):
        one = by_bits.get(named)
        if one is None:
            raise CodeRefused("unknown-box")
        if one.columns:
            given[one.name] = [_read(bits, one.columns) for _ in range(bits.number(ROWS_BITS))]
        elif one.kind == "point":
            given[one.name] = [bits.text() for _ in range(3)]
        else:
            given[one.name] = _read_value(bits, one)
    return given


def _read_value(bits: _Reader, one: Input) -> str:
    if not one.choices or not bits.number(1):
        return bits.text()
    wanted = bits.number(OPTION_BITS)
    for value in one.choices:
        if option_bits(value) == wanted:
            return value
    raise CodeRefused("unknown-box")


class _Reader:
    """Reads bits that a writer wrote. Raises CodeRefused at their end."""

    def __init__(self, data: bytes) -> None:
        self._bits = "".join(f"{one:08b}" for one in data)
        self._place = 0

    def number(self, count: int) -> int:
        read = self._bits[self._place : self._place + count]
        if len(read) < count:
            raise CodeRefused("damaged")
        self._place += count
        return int(read, 2)

    def text(self) -> str:
        letters: list[str] = []
        while (value := self.number(_LETTER_BITS)) != _END:
            if value == _OTHER:
                letters.append(self._any_letter())
            elif value == _CAPITAL:
                letters.append(self._letter(self.number(_LETTER_BITS)).upper())
            else:
                letters.append(self._letter(value))
        return "".join(letters)

    def _any_letter(self) -> str:
        try:
            return chr(self.number(_ANY_LETTER_BITS))
        except ValueError:
            raise CodeRefused("damaged") from None

    def _letter(self, value: int) -> str:
        try:
            return _LETTERS[value - _FIRST_LETTER] if value >= _FIRST_LETTER else ""
        except IndexError:
            raise CodeRefused("damaged") from None


# ---- checksums


def _written_out(brought: Brought) -> str:
    """Everything that a text means, by name."""
    lines = [brought.made_by, brought.units]
    for one in brought.sheets:
        lines += [one.sheet, *(f"{path}\t{value}" for path, value in sorted(fields(_given(one.inputs))))]
    return "\n\n".join(lines)


def _given(inputs: Mapping[str, Any]) -> dict[str, Any]:
    """Inputs without those that are empty, in rows too, every value a text."""
    kept: dict[str, Any] = {}
    for name, value in inputs.items():
        if value is None or value in ("", []):
            continue
        if isinstance(value, (list, tuple)):
            kept[name] = [_given(one) if isinstance(one, Mapping) else str(one) for one in value]
        else:
            kept[name] = str(value)
    return kept


def _crc(text: str) -> int:
    return _crc_of(text.encode("utf-8", "surrogatepass"))


def _crc_of(data: bytes) -> int:
    return binascii.crc32(data)


__all__ = [
    "MOST_SHEETS",
    "NAME_BITS",
    "OPTION_BITS",
    "Brought",
    "NotCarried",
    "Numbers",
    "bring_back",
    "code_text",
    "fields",
    "name_bits",
    "nested",
    "option_bits",
]
