"""Prose decides nothing: with every message and every note of a table rewritten, each answer finds and judges the same."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator
from typing import Any

import pytest

from calc import tables
from calc.answering import answer, declared_names, worksheet
from calc.words import catalogue


def numbers(value: Any) -> Any:
    """What of a value is no text."""
    if isinstance(value, list):
        return [numbers(one) for one in value]
    if isinstance(value, dict):
        return {key: numbers(one) for key, one in value.items()}
    return "text" if isinstance(value, str) else value


def found(name: str) -> dict[str, Any]:
    """What an example's answer finds and judges: verdict, numbers, what stands large, weights of the cautions."""
    record = answer(name, worksheet(name).example)
    return {
        "verdict": record["verdict"],
        "values": {key: numbers(one["value"]) for key, one in record["results"].items()},
        "big": record["big"]["key"] if record["big"] else None,
        "cautions": [one["kind"] for one in record["cautions"]],
    }


def forget() -> None:
    """Let go of what was read."""
    for read in (tables.table, catalogue.messages):
        read.cache_clear()


@pytest.fixture
def read_anew() -> Iterator[None]:
    """Tables and words are read anew, before and after."""
    forget()
    yield
    forget()


@pytest.mark.parametrize("name", declared_names())
def test_no_message_decides(name: str, read_anew: None, monkeypatch: pytest.MonkeyPatch) -> None:
    usual = found(name)
    forget()
    own = catalogue.Catalogue.messages

    def rewritten(self: catalogue.Catalogue, scopes: tuple[str, ...]) -> dict[str, Any]:
        return {key: f"Rewritten {key}." for key in own(self, scopes)}

    monkeypatch.setattr(catalogue.Catalogue, "messages", rewritten)
    assert answer(name, worksheet(name).example)["headline"].startswith("Rewritten ")
    assert found(name) == usual


@pytest.mark.parametrize("name", declared_names())
def test_no_note_of_a_table_decides(name: str, read_anew: None, monkeypatch: pytest.MonkeyPatch) -> None:
    usual = found(name)
    forget()
    own = tables._text

    def without_notes(file_name: str) -> str:
        text = own(file_name)
        if not file_name.endswith("claims.csv"):
            return text
        rows = list(csv.DictReader(io.StringIO(text)))
        written = io.StringIO()
        writer = csv.DictWriter(written, rows[0])
        writer.writeheader()
        writer.writerows({**row, "note": "rewritten"} for row in rows)
        return written.getvalue()

    monkeypatch.setattr(tables, "_text", without_notes)
    assert found(name) == usual
