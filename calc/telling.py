"""From a worksheet's findings to what is said: every text of an answer, as spans, from the catalogue.

    >>> from calc.answering import worksheet
    >>> sheet = worksheet("sling-legs")
    >>> told = tell(sheet, {"load": "2 t", "legs": "2", "angle": "45"}, "si")
    >>> told["verdict"]
    'unknown'

The record that comes out is plain data: the page's view, the command line and the tests read it. Texts in it are spans
(calc.words.writer); `flattened` makes plain texts of them.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from calc.declaration import Citation, Result, Row, Step, Worksheet
from calc.inputs import BadInput, Given, Input, InputError, Reading, asked, read_inputs, understood
from calc.quantities import from_si, typed_text
from calc.reasons import Reason, verdict_of, worst_first
from calc.tables import source_title
from calc.trees import markup
from calc.words.facts import Absent, Fact, Listing, Message, Number, Quantity, message
from calc.words.writer import Spans, UnitSystem, Writer, plain, spaced

_HANDS_OVER = ("ok", "caution")
"""Verdicts whose numbers may be carried on: not of what is forbidden, nor of what is not known enough."""


@dataclass(frozen=True)
class _Told:
    """One answer on its way into words."""

    sheet: Worksheet[Any]
    given: Given
    found: Any
    shown: Mapping[str, Fact]
    writer: Writer

    def facts(self, own: Mapping[str, Fact]) -> Any:
        """The facts a message may name: its own, then the results, then the inputs."""

        def find(name: str) -> Fact | None:
            if name in own:
                return own[name]
            named = self.sheet.by_name.get(name)
            if named is None:
                return None
            if isinstance(named, Result):
                return self.fact_of(named)
            return named.fact(self.given.values.get(name), name)

        return find

    def fact_of(self, result: Result) -> Fact:
        """The value of a result, as a message may name it."""
        return fact_of(result, result.value_of(self.found))

    def say(self, code: str, own: Mapping[str, Fact]) -> Spans:
        """A message of this worksheet."""
        return self.writer.say(code, self.facts(own))

    def maybe(self, code: str, own: Mapping[str, Fact]) -> Spans:
        """A message of this worksheet; nothing where there is none."""
        return self.say(code, own) if self.has(code) else []

    def has(self, code: str) -> bool:
        """Whether there are words for a message."""
        return self.writer.has(code)


def fact_of(result: Result, value: Any) -> Fact:
    """A value of Found as a fact, written by the result's sense."""
    if isinstance(value, bool):
        return message("yes" if value else "no")
    if isinstance(value, (int, float)):
        if result.dimension:
            units = (result.unit, result.unit_si)
            return Quantity(float(value), result.dimension, result.sense, result.digits, units)
        return value if isinstance(value, int) else Number(value, result.digits, result.sense)
    if isinstance(value, tuple):
        return Listing(tuple(fact_of(result, one) for one in value), "semicolon")
    if isinstance(value, (str, Message, Absent)):
        return value
    raise TypeError(f"{result.name} is {value!r}: a value that there is none of needs a reason")


def tell(
    sheet: Worksheet[Any], raw: Mapping[str, Any], units: UnitSystem, language: str = "en"
) -> dict[str, Any]:
    """Read, find, judge and say; raises BadInput."""
    writer = Writer(units, language, sheet.scopes)
    given = read_inputs(sheet.inputs, raw, reading(sheet, writer))
    found = sheet.find(given)
    told = _Told(sheet, given, found, sheet.shown(found), writer)
    _refuse_non_finite(sheet, found)
    reasons = sheet.judge(found)
    ranked = worst_first(reasons)
    verdict = verdict_of(reasons, sheet.rates)
    usual = sheet.large if isinstance(sheet.large, str) else sheet.large(found)
    large = next((one.large for one in ranked[:1] if one.large), usual)
    results = {result.name: _result(told, result) for result in sheet.results}
    figure = sheet.draw(found, writer)
    return {
        "ok": True,
        "worksheet": sheet.name,
        "units": units,
        "verdict": verdict,
        "verdict_words": verdict_words(sheet, verdict, writer),
        "headline": _headline(told, ranked),
        "big": {"key": large, "label": results[large]["label"], "text": results[large]["text"]},
        "understood": {
            path: plain(writer.write(said)) for path, said in understood(sheet.inputs, given).items()
        },
        "inputs": _given(sheet.inputs, given, "", writer),
        "results": results,
        "reasons": [{"code": reason.code, "weight": reason.weight} for reason in reasons],
        "steps": [_step(told, one) for one in sheet.work(found)],
        "cautions": _cautions(told, reasons),
        "sources": [source_record(one) for one in dict.fromkeys((*sheet.cite(found), *sheet.citations))],
        "next": _next(told) if verdict in _HANDS_OVER else [],
        "figure": {"drawing": figure.drawing, "caption": figure.caption} if figure else None,
    }


def _next(told: _Told) -> list[dict[str, Any]]:
    """The worksheets that ask for what was found: name, title, this worksheet's own title, and by the path of its box what
    is handed over, as it would be typed.
    """
    gathered: dict[str, dict[str, str]] = {}
    results = {result.name: result for result in told.sheet.results}
    for one in told.sheet.hands_over:
        found = results.get(one.result)
        typed = _typed(told, found) if found else told.given.typed.get(one.result, "")
        if typed:
            gathered.setdefault(one.worksheet, {})[one.input] = typed
    return [
        {
            "worksheet": name,
            "title": told.writer.of(f"worksheets/{name}").text("title"),
            "from": told.writer.text("title"),
            "inputs": inputs,
        }
        for name, inputs in gathered.items()
    ]


def _typed(told: _Told, result: Result) -> str:
    """The value of a result as a reader would type it, in his own unit; nothing where there is none."""
    value = result.value_of(told.found)
    if isinstance(value, Absent):
        return ""
    unit = result.reading_unit(told.writer.units)
    return typed_text(from_si(float(value), unit, result.dimension), unit, result.digits, result.rounding)


def _given(inputs: Sequence[Input], given: Given, within: str, writer: Writer) -> list[dict[str, Any]]:
    """What the answer was worked out from: name, label and text of each input that was given, a row as one text."""
    said: list[dict[str, Any]] = []
    for declared in inputs:
        value, words = given.values.get(declared.name), within + declared.name
        if value is None or value == "" or not asked(declared, given.values):
            continue
        label = writer.say(f"input-{words}")
        if declared.columns:
            for number, row in enumerate(given.rows(declared.name), 1):
                named = (
                    plain(writer.say(f"input-{words}.row"))
                    if writer.has(f"input-{words}.row")
                    else plain(label)
                )
                cells = [
                    [*one["label"], " ", *one["text"]]
                    for one in _given(declared.columns, row, f"{words}-", writer)
                ]
                said.append({"name": declared.name, "label": [f"{named} {number}"], "text": _joined(cells)})
        elif declared.kind == "file" or declared.long:
            said.append({"name": declared.name, "label": label, "text": writer.say("given")})
        else:
            said.append(
                {"name": declared.name, "label": label, "text": writer.write(declared.fact(value, words))}
            )
    return said


def reading(sheet: Worksheet[Any], writer: Writer) -> Reading:
    """How the worksheet's inputs are read in a language: the words of an option are understood like its value."""

    def option_words(path: str, value: str) -> str:
        return plain(writer.say(f"option-{path}-{spaced(value)}"))

    return Reading(writer.units, option_words)


def verdict_words(sheet: Worksheet[Any], verdict: str, writer: Writer) -> Spans:
    """The words of a verdict on this worksheet."""
    if verdict != "ok":
        return writer.say(f"verdict-{verdict}")
    if writer.has("ok"):
        return writer.say("ok")
    return writer.say("verdict-ok" if sheet.rates else "verdict-worked-out")


def _headline(told: _Told, ranked: Sequence[Reason]) -> Spans:
    """The opening, the first reason of the heaviest weight that has words for a headline, and the closing. Reasons may have
    an opening or a closing of their own, which are told whatever leads.
    """
    leading = next((one for one in ranked if told.has(f"reason-{one.code}.headline")), None)
    said = [
        told.maybe("opening", {}),
        *(told.maybe(f"reason-{one.code}.opening", one.facts) for one in ranked),
        told.maybe(f"reason-{leading.code}.headline", leading.facts) if leading else [],
        *(told.maybe(f"reason-{one.code}.closing", one.facts) for one in ranked),
        told.maybe("closing", {}),
    ]
    return _sentences(said)


def _sentences(said: Sequence[Spans]) -> Spans:
    """Sentences in a row, the empty ones left out."""
    spans: Spans = []
    for part in said:
        if plain(part):
            spans = [*spans, " ", *part] if spans else part
    return spans


def _cautions(told: _Told, reasons: Sequence[Reason]) -> list[dict[str, Any]]:
    said: list[dict[str, Any]] = []
    for reason in reasons:
        key = f"reason-{reason.code}.caution"
        if told.has(key):
            one = {"text": told.say(key, reason.facts), "kind": reason.sign}
            if one not in said:
                said.append(one)
    return said


def _step(told: _Told, one: Step) -> dict[str, Any]:
    name = f"step-{one.code}"
    record: dict[str, Any] = {"label": told.say(name, one.facts)}
    for part in ("formula", "numbers", "result"):
        key = f"{name}.{part}"
        record[part] = told.say(key, one.facts) if told.has(key) else []
    return record


def _result(told: _Told, result: Result) -> dict[str, Any]:
    """One result: value and unit in the reader's system, and the words. A list has `items`, a table `rows`."""
    value = result.value_of(told.found)
    unit = result.reading_unit(told.writer.units)
    record: dict[str, Any] = {
        "value": None,
        "unit": unit,
        "label": told.writer.say(f"result-{result.name}"),
        "text": [],
    }
    shown = told.shown.get(result.name)
    if result.columns:
        return record | _table(told, result, value)
    if isinstance(shown, Listing) or (shown is None and isinstance(value, tuple)):
        fact = shown if shown is not None else told.fact_of(result)
        items = [_written(told, one) for one in fact.items] if isinstance(fact, Listing) else []
        record["items"] = items
        record["text"] = _joined(items) or told.writer.say("nothing")
    else:
        record["text"] = _written(told, told.fact_of(result) if shown is None else shown)
    record["value"] = _value(told, result, value, unit)
    if isinstance(value, Message):
        record["code"] = value.code
    return record


def _written(told: _Told, fact: Fact) -> Spans:
    if isinstance(fact, Message):
        return told.say(fact.code, fact.facts)
    if isinstance(fact, Absent):
        return told.say(f"absent-{fact.code}", fact.facts)
    return told.writer.write(fact)


def _joined(items: Sequence[Spans]) -> Spans:
    spans: Spans = []
    for number, item in enumerate(items):
        spans = [*spans, "; ", *item] if number else [*item]
    return spans


def _table(told: _Told, result: Result, rows: Sequence[Row]) -> dict[str, Any]:
    """A result that is a table: its rows as cells, and each as one line (the message `row-NAME`)."""
    lines = [told.say(f"row-{result.name}", {**row.cells, "state": row.state}) for row in rows]
    return {
        "value": [plain(line) for line in lines],
        "items": lines,
        "text": _joined(lines) or told.writer.say("nothing"),
        "rows": [[_written(told, row.cells[column]) for column in result.columns] for row in rows],
        "states": [row.state for row in rows],
    }


def _value(told: _Told, result: Result, value: Any, unit: str) -> Any:
    if isinstance(value, tuple):
        return [_value(told, result, one, unit) for one in value]
    if isinstance(value, Absent):
        return None
    if isinstance(value, Message):
        return plain(told.say(value.code, value.facts))
    if isinstance(value, (str, bool)) or not result.dimension:
        return value
    return from_si(float(value), unit, result.dimension)


def _refuse_non_finite(sheet: Worksheet[Any], found: Any) -> None:
    for result in sheet.results:
        value = result.value_of(found)
        values = value if isinstance(value, tuple) else (value,)
        if any(isinstance(one, float) and not math.isfinite(one) for one in values):
            raise BadInput(InputError(result.name, "", message("refused-without-bound")))


def source_record(citation: Citation) -> dict[str, str]:
    """A source as plain data."""
    return {"key": citation.source, "title": source_title(citation.source), "locator": citation.locator}


def error_records(
    errors: Sequence[InputError], scopes: tuple[str, ...], units: UnitSystem = "us", language: str = "en"
) -> list[dict[str, str]]:
    """Refusals in words: each with its input's path, what was given, why (going on from the name of the box), and the same
    `said` as a whole sentence.
    """
    writer = Writer(units, language, scopes)
    return [
        {
            "input": error.input,
            "given": error.given,
            "code": error.why.code,
            "message": plain(writer.say(error.why.code, error.why.facts)),
            "said": _refusal(writer, error),
        }
        for error in errors
    ]


def _refusal(writer: Writer, error: InputError) -> str:
    """A refusal as a whole sentence. The catalogue chooses it by the reason: some name what was typed themselves."""
    reason = error.why.facts.get("reason")
    facts: dict[str, Fact] = {
        "given": error.given,
        "why": error.why,
        "reason": reason if isinstance(reason, Message) else error.why,
    }
    return writer.text("refusal" if error.given else "refusal-of-nothing", **facts)


def flattened(record: Any) -> Any:
    """A record with plain texts in the place of spans. Spans are the lists under the keys that hold texts."""
    if isinstance(record, Mapping):
        return {
            key: _flat_text(value) if key in _TEXTS else _flat_lists(key, value)
            for key, value in record.items()
        }
    return record


_TEXTS = {"verdict_words", "headline", "label", "text", "formula", "numbers", "result"}


def _flat_text(value: Any) -> Any:
    return plain(value) if isinstance(value, (str, list)) else flattened(value)


def _flat_lists(key: str, value: Any) -> Any:
    if key == "figure" and value:
        return {"svg": markup(value["drawing"]), "caption": value["caption"]}
    if key == "items":
        return [plain(one) for one in value]
    if key == "rows":
        return [[plain(cell) for cell in row] for row in value]
    if isinstance(value, list):
        return [flattened(one) for one in value]
    return flattened(value)


__all__ = ["error_records", "flattened", "source_record", "tell", "verdict_words"]
