"""Asks a worksheet and keeps what it found in SI beside what it said, for tests that check both."""

from __future__ import annotations

from dataclasses import dataclass
from types import SimpleNamespace
from typing import Any

from calc.answering import answer, worksheet
from calc.declaration import Citation
from calc.inputs import read_inputs
from calc.reasons import Reason
from calc.telling import reading
from calc.words.facts import Absent, Message
from calc.words.writer import UnitSystem, Writer


@dataclass(frozen=True)
class Asked:
    """A worksheet's findings: results in SI (None where there is none), and every text as the reader sees it. `shown` has
    the results whose text is not simply that of their value.
    """

    verdict: str
    headline: str
    big: str
    results: dict[str, Any]
    shown: dict[str, Any]
    steps: tuple[Any, ...]
    cautions: tuple[Any, ...]
    figure: Any
    citations: tuple[Citation, ...]
    reasons: tuple[Reason, ...]


def asked(name: str, given: dict[str, Any], units: UnitSystem = "si") -> Any:
    """What a worksheet finds and says."""
    sheet = worksheet(name)
    record = answer(name, given, units)
    found = sheet.find(read_inputs(sheet.inputs, given, reading(sheet, Writer(units, scopes=sheet.scopes))))
    values = {result.name: result.value_of(found) for result in sheet.results}
    said = {
        key: tuple(record["results"][key]["items"])
        if "items" in record["results"][key]
        else record["results"][key]["text"]
        for key, value in values.items()
        if isinstance(value, Absent) or key in sheet.shown(found)
    }
    return Asked(
        record["verdict"],
        record["headline"],
        record["big"]["key"],
        {key: _kept(value, record["results"][key]["value"]) for key, value in values.items()},
        said,
        tuple(SimpleNamespace(**one) for one in record["steps"]),
        tuple(SimpleNamespace(**one) for one in record["cautions"]),
        SimpleNamespace(**record["figure"]) if record["figure"] else None,
        sheet.cite(found),
        sheet.judge(found),
    )


def _kept(value: Any, written: Any) -> Any:
    """A result as a test wants it: SI where it is a number, None where there is none, its words where it is a message."""
    if isinstance(value, Absent):
        return None
    return written if isinstance(value, Message) else value


__all__ = ["Asked", "asked"]
