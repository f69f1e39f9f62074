"""The one road to an answer, for every worksheet that is declared."""

import json
import math
import re
from types import SimpleNamespace
from typing import Any

import pytest

from calc import answering
from calc.answering import (
    NoSuchWorksheet,
    Refused,
    answer,
    answer_json,
    declared,
    described,
    worksheet,
    worksheet_record,
)
from calc.declaration import Result, Worksheet
from calc.inputs import Given, NumberInput
from calc.tables import table
from calc.words.writer import UnitSystem, plain

SHEETS = declared()


def test_every_module_of_a_room_that_declares_a_worksheet_is_found() -> None:
    assert "sling-legs" in SHEETS
    assert all(sheet.name == name and sheet.room in answering.ROOMS for name, sheet in SHEETS.items())


def test_no_such_worksheet_names_those_that_exist() -> None:
    for name in ("sling-gold", "leg-geometry", "no worksheet"):
        with pytest.raises(NoSuchWorksheet, match="there are .*sling-legs"):
            worksheet(name)


@pytest.mark.parametrize("units", ["us", "si"])
@pytest.mark.parametrize("name", list(SHEETS))
def test_the_example_of_every_worksheet_answers_in_full(name: Any, units: UnitSystem) -> None:
    record = answer(name, SHEETS[name].example, units)
    assert json.loads(json.dumps(record, allow_nan=False)) == record
    assert record["verdict"] in ("ok", "caution", "stop", "unknown")
    assert record["headline"].endswith(".") or record["headline"].endswith("used.")
    assert record["big"]["text"]
    assert record["steps"], "the working is shown"
    for step in record["steps"]:
        assert step["label"], step
        assert step["result"], step
        assert step["formula"] or step["numbers"], step
    assert record["sources"]
    if SHEETS[name].room != "records":
        assert record["cautions"]
        assert record["figure"]["svg"].startswith("<svg")
        assert len(record["figure"]["caption"]) > 20
    assert set(record["results"]) == {result.name for result in SHEETS[name].results}
    words = json.dumps(record, ensure_ascii=False)
    assert not re.search(r"\b(nan|inf|infinity)\b", words, re.IGNORECASE)
    assert "None" not in words


@pytest.mark.parametrize("name", list(SHEETS))
def test_units_do_not_change_the_answer(name: Any) -> None:
    """The same typed example, with its units written out, means the same on a US and on an SI page."""
    us, si = answer(name, SHEETS[name].example, "us"), answer(name, SHEETS[name].example, "si")
    assert us["verdict"] == si["verdict"]


@pytest.mark.parametrize("name", list(SHEETS))
def test_declarations_are_whole(name: Any) -> None:
    sheet = SHEETS[name]
    said = described(name)
    assert said.title
    assert said.title[0].isupper()
    assert plain(said.summary).endswith(".")
    assert plain(said.story).endswith(".")
    keys = table("sources").values("key")
    assert all(citation.source in keys for citation in sheet.citations)
    names = [given.name for given in sheet.inputs]
    assert len(set(names)) == len(names)
    for asked, given in zip(said.inputs, sheet.inputs, strict=True):
        assert plain(asked.label)
        assert asked.accepted
        assert set(given.shown_when) <= set(names)
    assert set(sheet.example) <= set(names)
    record = worksheet_record(name)
    assert json.loads(json.dumps(record))["name"] == name


@pytest.mark.parametrize("name", list(SHEETS))
def test_nonsense_is_refused_with_words(name: Any) -> None:
    for raw in ({}, {"nonsense": "1"}, {SHEETS[name].inputs[0].name: "\u2603"}):
        if not raw and not any(given.required and given.default is None for given in SHEETS[name].inputs):
            continue
        reply = json.loads(answer_json(json.dumps({"worksheet": name, "inputs": raw})))
        if reply["ok"]:
            continue
        assert all(error["message"] for error in reply["errors"])
        assert "Traceback" not in json.dumps(reply)


def test_a_request_in_json() -> None:
    reply = json.loads(
        answer_json('{"worksheet": "sling-legs", "inputs": {"load": "1000 lb", "legs": "2", "angle": "30"}}')
    )
    assert reply["ok"] is True
    assert reply["results"]["leg_tension"]["value"] == pytest.approx(1000)
    refused = json.loads(answer_json('{"worksheet": "sling-legs", "inputs": {"load": "x", "legs": "2"}}'))
    why = refused["errors"][0]["message"]
    assert refused == {
        "ok": False,
        "errors": [{"input": "load", "given": "x", "message": why, "said": f"“x” {why}", "code": "unusable"}],
    }
    assert "a weight such as 10 lb" in why
    unknown = json.loads(answer_json('{"worksheet": "sling-gold"}'))
    assert "there is no worksheet sling-gold" in unknown["errors"][0]["message"]
    assert (
        json.loads(answer_json('{"worksheet": "sling-legs", "units": "cgs"}'))["errors"][0]["input"]
        == "units"
    )


def test_a_refusal_is_a_whole_sentence_beside_its_box() -> None:
    def said(sheet: Any, **inputs: Any) -> Any:
        asked = json.dumps({"worksheet": sheet, "inputs": dict(answering.worksheet(sheet).example) | inputs})
        (error,) = json.loads(answer_json(asked))["errors"]
        return error["said"]

    assert said("sling-legs", load="").startswith("This is missing. Give a weight such as")
    assert said("sling-legs", load="57 in").startswith(
        "“57 in” has the unit in, a unit of length, where weight is wanted"
    )
    assert said("hanging-load", load="0 lb").startswith("“0 lb” is too small")


def _sheet(value: Any) -> Any:
    """A worksheet that finds this value, whatever it is given."""

    def find(given: Given) -> SimpleNamespace:
        return SimpleNamespace(x=math.exp(given.si("y")) if value == "overflow" else value)

    return Worksheet(
        name="odd",
        inputs=(NumberInput("y"),),
        results=(Result("x"),),
        find=find,
        judge=lambda _found: (),
        large="x",
        example={"y": "1"},
        citations=(),
    )


@pytest.mark.parametrize("value", [math.inf, math.nan, (1.0, math.nan)])
def test_a_number_without_bound_is_refused(monkeypatch: pytest.MonkeyPatch, value: Any) -> None:
    monkeypatch.setattr(answering, "worksheet", lambda name: _sheet(value))
    with pytest.raises(Refused, match="without bound"):
        answer("odd", {"y": "1"})


def test_an_overflow_is_refused_in_words(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(answering, "worksheet", lambda name: _sheet("overflow"))
    reply = json.loads(answer_json('{"worksheet": "odd", "inputs": {"y": "1e6"}}'))
    assert "too large or too small" in reply["errors"][0]["message"]
