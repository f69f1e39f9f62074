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
import pkgutil
from collections.abc import Callable, Mapping
from typing import Any

from calc import describing, telling
from calc.declaration import Worksheet
from calc.describing import Described
from calc.inputs import BadInput, InputError
from calc.words.facts import message
from calc.words.writer import UnitSystem, Writer

_JSON = json.JSONEncoder(allow_nan=False, check_circular=False, separators=(",", ":"))

ROOMS = ("lifting", "pulling", "hauling", "inspecting", "heating", "records")
"""The rooms of calc that hold worksheets, in the order in which lists name them. A module of one that has a WORKSHEET is a
worksheet; the room's title is the message `room-NAME` of page/lists."""


class NoSuchWorksheet(LookupError):
    """There is no worksheet of that name; the message lists those that exist."""


@functools.cache
def worksheet(name: str) -> Worksheet[Any]:
    """The worksheet `name`, importing only the module that declares it."""
    module_name = name.replace("-", "_")
    for room in ROOMS:
        path = f"calc.{room}.{module_name}"
        if module_name.isidentifier() and importlib.util.find_spec(path):
            declared = getattr(importlib.import_module(path), "WORKSHEET", None)
            if isinstance(declared, Worksheet) and declared.name == name:
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
            if isinstance(found, Worksheet):
                names.append(found.name)
    return tuple(names)


def declared() -> dict[str, Worksheet[Any]]:
    """All worksheets by name."""
    return {name: worksheet(name) for name in declared_names()}


@dataclasses.dataclass(frozen=True)
class Refusal:
    """What is wrong with one input, in words: its path (`load`, `parts[2].width`), what was given, what would do (going
    on from the name of the box), the same as a whole sentence, and the code of the reason (`missing`: nothing was given).
    """

    input: str
    given: str
    message: str
    said: str = ""
    code: str = ""


class Refused(ValueError):
    """One or more inputs cannot be used. `errors` has one Refusal each."""

    def __init__(self, *errors: Refusal) -> None:
        self.errors = errors
        super().__init__("; ".join(f"{one.input}: {one.message}" for one in errors))


def answer(
    name: str, raw: Mapping[str, Any], units: UnitSystem = "us", language: str = "en"
) -> dict[str, Any]:
    """The answer of worksheet `name` to what was typed, as plain data that JSON can carry.

    Raises NoSuchWorksheet, or Refused that names every input that cannot be used.
    """
    return dict(telling.flattened(answer_in_spans(name, raw, units, language)))


def answer_in_spans(
    name: str, raw: Mapping[str, Any], units: UnitSystem = "us", language: str = "en"
) -> dict[str, Any]:
    """The same answer with its texts as spans (calc.words.writer) and its drawing as a tree (calc.trees), for a page to set."""
    sheet = worksheet(name)
    try:
        _known_units(units)
        return telling.tell(sheet, raw, units, language)
    except BadInput as refused:
        errors = telling.error_records(refused.errors, sheet.scopes, units, language)
        raise Refused(*(Refusal(**error) for error in errors)) from refused
    except (OverflowError, ZeroDivisionError) as reason:
        said = Writer(language=language).text("refused-too-large-or-small")
        raise Refused(Refusal("", "", said, said)) from reason


def _known_units(units: str) -> None:
    if units not in ("us", "si"):
        raise BadInput(InputError("units", str(units), message("refused-units")))


def answer_json(request: str) -> str:
    """Answer a request written in JSON: {"worksheet", "inputs", "units"}; refusals come back as data too.

    Returns the record of `answer`, or {"ok": false, "errors": [{"input", "given", "message", "said"}]}.
    """

    def answered(asked: Mapping[str, Any]) -> dict[str, Any]:
        return answer(asked["worksheet"], asked.get("inputs", {}), asked.get("units", "us"))

    return reply(request, answered)


def reply(request: str, answered: Callable[[Mapping[str, Any]], dict[str, Any]]) -> str:
    """What `answered` makes of a request written in JSON, or the errors that it raises, as JSON."""
    asked = json.loads(request)
    try:
        return _JSON.encode(answered(asked))
    except Refused as refused:
        errors = [dict(vars(error)) for error in refused.errors]
    except NoSuchWorksheet as refused:
        errors = [_general(str(refused))]
    return json.dumps({"ok": False, "errors": errors})


def _general(said: str) -> dict[str, str]:
    """An error that is about no single box."""
    return {"input": "", "given": "", "message": said, "said": said}


def described(name: str, language: str = "en") -> Described:
    """A worksheet's declaration with its words."""
    return describing.describe(worksheet(name), language)


def worksheet_record(name: str) -> dict[str, Any]:
    """A worksheet's declaration as plain data."""
    return describing.record(described(name))
