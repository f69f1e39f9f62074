"""The command line: contract of list, run and table."""

import csv
import io
import json
import runpy
import sys
from pathlib import Path
from typing import Any

import pytest

from calc import telling
from calc.__main__ import main


def run(*arguments: Any) -> Any:
    out = io.StringIO()
    status = main(arguments, out)
    return status, out.getvalue()


def test_list_names_every_worksheet_with_inputs_and_results() -> None:
    status, text = run("list", "--json")
    assert status == 0
    sheets = {sheet["name"]: sheet for sheet in json.loads(text)}
    legs = {given["name"]: given for given in sheets["sling-legs"]["inputs"]}
    assert legs["load"] | {"help": "", "label": "", "accepted": ""} == {
        "name": "load", "unit": "lb", "unit_si": "kg", "kind": "quantity", "choices": [], "default": None,
        "required": True, "help": "", "label": "", "accepted": "",
    }  # fmt: skip
    assert legs["legs"]["default"] is None
    assert "80" in legs["grade"]["choices"]
    assert {"name", "unit"} <= set(sheets["sling-legs"]["results"][0])
    status, text = run("list")
    assert "sling-legs" in text


def test_run_gives_json_in_the_asked_units() -> None:
    status, text = run("run", "sling-legs", "--json", "load=1000 lb", "--units", "si", "legs=2", "angle=30")
    assert status == 0
    record = json.loads(text)
    assert record["worksheet"] == "sling-legs"
    assert record["results"]["leg_tension"] == {
        "value": pytest.approx(4.4482216152605), "unit": "kN", "label": "Pull in each leg", "text": "4.45 kN (1,000 lb)",
    }  # fmt: skip
    assert {"verdict", "steps", "cautions", "sources"} <= set(record)


def test_run_prints_a_readable_sheet() -> None:
    status, text = run("run", "sling-legs", "--example")
    assert status == 0
    assert "WITHIN THE RATING" in text
    assert "Working" in text
    assert "Sources" in text


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("run", "sling-legs", "--json", "load=5 in"), "load: “5 in” has the unit in, a unit of length"),
        (("run", "sling-legs", "load=-5", "legs=9"), "and 1 more"),
        (("run", "sling-legs", "load"), "load: is written without a value"),
        (("run", "sling-legs", "load=@no-such-file"), "no-such-file"),
        (("run", "sling-gold"), "there is no worksheet sling-gold"),
        (("table", "gold", "--json"), "there is no table gold"),
        (("table", "chain-tie-down", "--where", "grade"), "--where grade: give it as column=value"),
        (("table", "chain-tie-down", "--where", "colour=red"), "no column colour"),
        (("table", "chain-tie-down", "--where", "grade=7"), "no row for grade 7. It has grade: 30, 43"),
    ],
)
def test_bad_input_is_one_line_on_stderr_and_status_2(
    capsys: pytest.CaptureFixture[str], arguments: Any, words: str
) -> None:
    status, text = run(*arguments)
    error = capsys.readouterr().err
    assert status == 2
    assert text == ""
    assert words in error
    assert error.count("\n") == 1


@pytest.mark.parametrize(
    "arguments", [(), ("fly",), ("run", "sling-legs", "--bogus"), ("table", "chain-tie-down", "extra")]
)
def test_a_slip_in_the_command_is_one_line_too(capsys: pytest.CaptureFixture[str], arguments: Any) -> None:
    with pytest.raises(SystemExit) as stopped:
        run(*arguments)
    assert stopped.value.code == 2
    assert capsys.readouterr().err.count("\n") == 1


def test_a_table_as_csv_and_json() -> None:
    status, text = run("table", "chain-tie-down", "--where", "grade=70", "--where", "size_in=3/8", "--csv")
    rows = list(csv.DictReader(io.StringIO(text)))
    assert status == 0
    assert {row["grade"] for row in rows} == {"70"}
    _status, as_json = run(
        "table", "chain-tie-down", "--where", "grade=70", "--where", "size_in=3/8", "--json"
    )
    assert json.loads(as_json) == rows


def test_rows_come_from_a_file(tmp_path: Path) -> None:
    from calc.answering import declared

    for name, sheet in declared().items():
        for given in sheet.inputs:
            if given.kind == "rows" and given.name in sheet.example:
                file = tmp_path / "rows.json"
                file.write_text(json.dumps(sheet.example[given.name]), encoding="utf-8")
                status, text = run("run", name, "--example", "--json", f"{given.name}=@{file}")
                assert status == 0
                assert json.loads(text)["ok"] is True
                return


def test_a_file_input_is_read_as_bytes(tmp_path: Path) -> None:
    from calc.answering import declared

    for name, sheet in declared().items():
        for given in sheet.inputs:
            if given.kind == "file":
                file = tmp_path / "empty.stl"
                file.write_bytes(b"")
                status, _text = run("run", name, "--example", f"{given.name}=@{file}")
                assert status in (0, 2)
                return


def test_it_runs_as_a_module(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    monkeypatch.setattr(sys, "argv", ["calc", "list"])
    monkeypatch.delitem(sys.modules, "calc.__main__")
    with pytest.raises(SystemExit) as ended:
        runpy.run_module("calc", run_name="__main__")
    assert ended.value.code == 0
    assert "sling-legs" in capsys.readouterr().out


def test_a_number_too_small_to_divide_by_is_refused_beside_its_box(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """A weld of 2e-309 in ended in a traceback: only the page said that such numbers cannot be worked out."""
    small = ("height=36", "weld_leg=2.22507e-309", "weld_strength=1000")
    status, _ = run("run", "lifting-lug", "--example", *small)
    assert status == 2
    assert capsys.readouterr().err.startswith("weld_leg: “2.22507e-309” is too small.")


@pytest.mark.parametrize("kind", [OverflowError, ZeroDivisionError])
def test_numbers_that_cannot_be_worked_out_end_in_one_line(
    kind: type[ArithmeticError], monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def breaks(*_: Any) -> Any:
        raise kind

    monkeypatch.setattr(telling, "tell", breaks)
    status, _ = run("run", "lifting-lug", "--example")
    assert status == 2
    assert capsys.readouterr().err == "These numbers are too large or too small to be worked out.\n"
