"""Finds a worksheet by name, reads what was typed, runs it, and gives the answer as plain data.

This is the one road to an answer: the page built at publishing time, the live page, the command line and the tests
all come through `answer`.
"""

from __future__ import annotations

import dataclasses
import functools
import importlib
import importlib.util
import json
import math
import pkgutil
from collections.abc import Mapping
from typing import Any

from calc import declaration, describing, inputs, old_sheets, telling
from calc.describing import Described
from calc.tables import table
from calc.words.facts import message
from calc.worksheet import (
    BadInput,
    Citation,
    InputError,
    Say,
    UnitSystem,
    Worksheet,
    read_inputs,
    result_record,
)

ROOMS = ("lifting", "pulling", "inspecting", "heating", "hauling", "records")


class NoSuchWorksheet(LookupError):
    """There is no worksheet of that name; the message lists those that exist."""


@functools.cache
def worksheet(name: str) -> Any:
    """The worksheet `name`, importing only the module that declares it."""
    module_name = name.replace("-", "_")
    for room in ROOMS:
        path = f"calc.{room}.{module_name}"
        if module_name.isidentifier() and importlib.util.find_spec(path):
            declared = getattr(importlib.import_module(path), "WORKSHEET", None)
            if isinstance(declared, (Worksheet, declaration.Worksheet)) and declared.name == name:
                return dataclasses.replace(declared, room=room)
    raise NoSuchWorksheet(f"there is no worksheet {name}; there are {', '.join(sorted(declared_names()))}")


@functools.cache
def declared_names() -> tuple[str, ...]:
    """The names of all worksheets, room by room."""
    names: list[str] = []
    for room in ROOMS:
        package = importlib.import_module(f"calc.{room}")
        for module in pkgutil.iter_modules(package.__path__):
            found = getattr(importlib.import_module(f"calc.{room}.{module.name}"), "WORKSHEET", None)
            if isinstance(found, (Worksheet, declaration.Worksheet)):
                names.append(found.name)
    return tuple(names)


def declared() -> dict[str, Any]:
    """All worksheets by name."""
    return {name: worksheet(name) for name in declared_names()}


def answer(name: str, raw: Mapping[str, Any], units: UnitSystem = "us") -> dict[str, Any]:
    """The answer of worksheet `name` to what was typed, as plain data that JSON can carry.

    Raises NoSuchWorksheet, or BadInput that names every input that cannot be used.
    """
    sheet = worksheet(name)
    if isinstance(sheet, declaration.Worksheet):
        return dict(telling.flattened(answer_in_spans(name, raw, units)))
    if units not in ("us", "si"):
        raise BadInput(InputError("units", str(units), "is not known. Give us or si."))
    found = sheet.compute(read_inputs(sheet.inputs, raw, units), Say(units))
    _refuse_non_finite(found.results)
    results = {declared.name: result_record(declared, found, units) for declared in sheet.results}
    return {
        "ok": True,
        "worksheet": name,
        "units": units,
        "verdict": found.verdict,
        "verdict_words": sheet.verdict_words(found.verdict),
        "headline": found.headline,
        "big": {"key": found.big, "label": results[found.big]["label"], "text": results[found.big]["text"]},
        "results": results,
        "steps": [dict(vars(step)) for step in found.steps],
        "cautions": [dict(vars(caution)) for caution in found.cautions],
        "sources": [_source(citation) for citation in dict.fromkeys(found.citations + sheet.citations)],
        "figure": dict(vars(found.figure)) if found.figure else None,
    }


def _known_units(units: str) -> None:
    if units not in ("us", "si"):
        raise inputs.BadInput(inputs.InputError("units", str(units), message("refused-units")))


def answer_in_spans(
    name: str, raw: Mapping[str, Any], units: UnitSystem = "us", language: str = "en"
) -> dict[str, Any]:
    """The same answer with its texts as spans (calc.words.writer), for a page to set."""
    sheet = worksheet(name)
    if not isinstance(sheet, declaration.Worksheet):
        return answer(name, raw, units)
    try:
        _known_units(units)
        return telling.tell(sheet, raw, units, language)
    except inputs.BadInput as refused:
        raise BadInput(
            *(
                InputError(**error)
                for error in telling.error_records(refused.errors, sheet.scopes, units, language)
            )
        ) from refused


def _refuse_non_finite(results: Mapping[str, Any]) -> None:
    for key, value in results.items():
        values = value if isinstance(value, (list, tuple)) else [value]
        if any(isinstance(one, float) and not math.isfinite(one) for one in values):
            raise BadInput(
                InputError(key, "", "comes out without bound for these inputs; they cannot be answered.")
            )


@functools.cache
def _title(source: str) -> str:
    return table("sources").one(key=source)["title"]


def _source(citation: Citation) -> dict[str, str]:
    return {"key": citation.source, "title": _title(citation.source), "locator": citation.locator}


def answer_json(request: str) -> str:
    """Answer a request written in JSON: {"worksheet", "inputs", "units"}; refusals come back as data too.

    Returns the record of `answer`, or {"ok": false, "errors": [{"input", "given", "message"}]}.
    """
    try:
        asked = json.loads(request)
        record = answer(asked["worksheet"], asked.get("inputs", {}), asked.get("units", "us"))
        return json.dumps(record, allow_nan=False)
    except BadInput as refused:
        errors = [dict(vars(error)) for error in refused.errors]
    except NoSuchWorksheet as refused:
        errors = [{"input": "", "given": "", "message": str(refused)}]
    except (OverflowError, ZeroDivisionError):
        errors = [
            {
                "input": "",
                "given": "",
                "message": "These numbers are too large or too small to be worked out.",
            }
        ]
    return json.dumps({"ok": False, "errors": errors})


def described(name: str, language: str = "en") -> Described:
    """A worksheet's declaration with its words."""
    return old_sheets.described(worksheet(name), language)


def worksheet_record(name: str) -> dict[str, Any]:
    """A worksheet's declaration as plain data."""
    return describing.record(described(name))
