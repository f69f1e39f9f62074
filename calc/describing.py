"""A worksheet's declaration together with its words in one language: what a form, a list and a test need to name it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from calc.declaration import Result, Worksheet
from calc.inputs import Input
from calc.words.writer import Spans, Writer, plain, spaced


@dataclass(frozen=True)
class Asked:
    """An input and its words: label, help, what would do, what one row is called, and each option with its words."""

    declared: Input
    label: Spans
    help: Spans
    accepted: str
    row: str
    options: tuple[tuple[str, Spans], ...]
    columns: tuple[Asked, ...]


@dataclass(frozen=True)
class Named:
    """A result and its words: label, and the heading of each column where it is a table."""

    declared: Result
    label: Spans
    headings: tuple[tuple[str, Spans], ...]


@dataclass(frozen=True)
class Described:
    """A worksheet and its words."""

    name: str
    room: str
    rates: bool
    title: str
    summary: Spans
    story: Spans
    inputs: tuple[Asked, ...]
    results: tuple[Named, ...]
    example: Mapping[str, Any]


def describe(sheet: Worksheet[Any], language: str = "en") -> Described:
    """The worksheet in the words of a language."""
    writer = Writer(language=language, scopes=sheet.scopes)
    return Described(
        sheet.name,
        sheet.room,
        sheet.rates,
        writer.text("title"),
        writer.say("summary"),
        writer.say("story"),
        _asked(sheet.inputs, "", writer),
        tuple(_named(result, writer) for result in sheet.results),
        sheet.example,
    )


def _asked(inputs: Sequence[Input], within: str, writer: Writer) -> tuple[Asked, ...]:
    return tuple(_one(declared, within + declared.name, writer) for declared in inputs)


def _one(declared: Input, words: str, writer: Writer) -> Asked:
    def part(name: str) -> Spans:
        key = f"input-{words}.{name}"
        return writer.say(key) if writer.has(key) else []

    return Asked(
        declared,
        writer.say(f"input-{words}"),
        part("help"),
        plain(writer.message(declared.accepted(words))),
        plain(part("row")),
        tuple((value, writer.say(f"option-{words}-{spaced(value)}")) for value in declared.choices),
        _asked(declared.columns, f"{words}-", writer),
    )


def _named(result: Result, writer: Writer) -> Named:
    headings = tuple((key, writer.say(f"column-{result.name}-{key}")) for key in result.columns)
    return Named(result, writer.say(f"result-{result.name}"), headings)


def record(sheet: Described) -> dict[str, Any]:
    """The declaration as plain data."""
    return {
        "name": sheet.name,
        "title": sheet.title,
        "summary": plain(sheet.summary),
        "room": sheet.room,
        "inputs": [_input_record(asked) for asked in sheet.inputs],
        "results": [
            {
                "name": named.declared.name,
                "label": plain(named.label),
                "unit": named.declared.unit,
                "unit_si": named.declared.unit_si,
                "sense": named.declared.sense,
            }
            for named in sheet.results
        ],
        "example": dict(sheet.example),
    }


def _input_record(asked: Asked) -> dict[str, Any]:
    declared = asked.declared
    found: dict[str, Any] = {
        "name": declared.name,
        "label": plain(asked.label),
        "kind": declared.kind,
        "unit": declared.unit,
        "unit_si": declared.unit_si,
        "choices": list(declared.choices),
        "default": declared.default,
        "required": declared.required,
        "help": plain(asked.help),
        "accepted": asked.accepted,
    }
    if declared.long:
        found["long"] = True
    if declared.columns:
        found["columns"] = [_input_record(column) for column in asked.columns]
    return found


__all__ = ["Asked", "Described", "Named", "describe", "record"]
