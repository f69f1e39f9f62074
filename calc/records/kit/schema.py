"""What a file of a shop's own parts may hold: the one description that reading, checking and the published schema share.

Written as a JSON Schema (draft 2020-12) of the few words used here: type, const, enum, pattern, maxLength, properties,
required, additionalProperties, items, maxItems, anyOf. `first_fault` holds a value against it; a test holds the same values
against a library for JSON Schema.
"""

from __future__ import annotations

import datetime
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from calc.inspecting.record import PLACES
from calc.lifting.condition import ALTERED
from calc.lifting.condition import CONDITIONS as LIFTING_CONDITIONS

FORMAT = "linkwright-kit"
VERSION = 1
"""Of the file: a higher one is of a newer book, and is refused."""

KINDS = (
    "chain-sling",
    "hook",
    "shackle",
    "ring",
    "eyebolt",
    "eyebolt-plain",
    "wire-rope",
    "web-sling",
    "fibre-rope",
    "turnbuckle",
    "hoist",
    "crane-hook",
    "tie-down-chain",
    "strap",
    "binder",
    "anchor",
    "other",
)
"""What a part can be, in the order in which it is offered."""
SIZED_KINDS = (
    "chain-sling",
    "hook",
    "shackle",
    "ring",
    "eyebolt",
    "eyebolt-plain",
    "wire-rope",
    "fibre-rope",
    "turnbuckle",
    "tie-down-chain",
)
"""Kinds whose size is one length; of the others it is kept as it was typed."""
TIE_DOWN_KINDS = ("tie-down-chain", "strap", "binder", "anchor")
CONDITIONS = (*LIFTING_CONDITIONS, "damaged")
"""As worksheets ask it (calc.lifting.condition), and damaged: out by any rule of tie-down gear."""
OUT_CONDITIONS = ALTERED
"""Conditions with which a part is kept only as taken out of use."""
SERVICES = ("normal", "severe", "special")
BOUGHT = ("new", "used")
FOUND = ("ok", "caution", "stop", "unknown")
"""What a look came to, as verdicts are called."""
MEASURES = ("throat", "section", "body", "pin", "thickness", "reach")
"""What of a part wears, and is read at a look."""

LONGEST_LINE = 200
"""Characters of a name, a mark or a reading."""
LONGEST_PHOTO = 400_000
"""Characters of a photo, as a data address: some 300 kB, more than the page ever makes."""
MOST_LOOKS = 500
MOST_PARTS = 20_000

Schema = Mapping[str, Any]


def _line(pattern: str = "") -> dict[str, Any]:
    """One line of text; without characters that steer a printer or a screen."""
    made: dict[str, Any] = {"type": "string", "maxLength": LONGEST_LINE}
    return {**made, "pattern": pattern or r"^[^\u0000-\u001f\u007f\u2028\u2029\ud800-\udfff]*$"}


def _one_of(*values: str) -> dict[str, Any]:
    return {"enum": ["", *values]}


DAY = r"^(\d{4}-\d{2}-\d{2})?$"
"""A day as the calendar has it, or empty."""
_ID = r"^[0-9a-z]{8,40}$"


def _whole(properties: dict[str, Any]) -> dict[str, Any]:
    """An object that has all of its properties and no other."""
    return {
        "type": "object",
        "properties": properties,
        "required": list(properties),
        "additionalProperties": False,
    }


READINGS = _whole({name: _line() for name in MEASURES})
LOOK = _whole(
    {
        "on": _line(r"^\d{4}-\d{2}-\d{2}$"),
        "by": _line(),
        "found": {"enum": list(FOUND)},
        "sheet": _line(r"^[a-z-]*$"),
        "note": _line(),
        "readings": READINGS,
    }
)
OUT = _whole({"on": _line(r"^\d{4}-\d{2}-\d{2}$"), "why": _line(), "by": _line()})
SEEN = _whole({"rating": _line(), "edition": _line()})
PART = _whole(
    {
        "id": _line(_ID),
        "number": _line(),
        "kind": {"enum": list(KINDS)},
        "name": _line(),
        "mark": _line(),
        "other_marks": _line(),
        "size": _line(),
        "rating": _line(),
        "tag": _line(),
        "condition": _one_of(*CONDITIONS),
        "bought_on": _line(DAY),
        "bought": _one_of(*BOUGHT),
        "place": _one_of(*PLACES),
        "service": _one_of(*SERVICES),
        "new": READINGS,
        "looks": {"type": "array", "maxItems": MOST_LOOKS, "items": LOOK},
        "out": {"anyOf": [{"type": "null"}, OUT]},
        "seen": SEEN,
        "photo": {
            "type": "string",
            "maxLength": LONGEST_PHOTO,
            "pattern": r"^(data:image/(jpeg|png|webp);base64,[A-Za-z0-9+/=]*)?$",
        },
    }
)
FILE = {
    "$schema": "https://json-schema.org/draft/2020-12/schema",
    "$id": "linkwright-kit.schema.json",
    **_whole(
        {
            "format": {"const": FORMAT},
            "version": {"const": VERSION},
            "edition": _line(),
            "tables": _line(),
            "saved_on": _line(r"^\d{4}-\d{2}-\d{2}$"),
            "check": _line(r"^[0-9a-f]{8}$"),
            "parts": {"type": "array", "maxItems": MOST_PARTS, "items": PART},
        }
    ),
}


@dataclass(frozen=True)
class Fault:
    """Where a value does not fit (`parts[3].kind`), and the word of the schema that it breaks."""

    path: str
    broken: str


_TYPES: Mapping[str, type] = {"string": str, "object": dict, "array": list, "null": type(None)}


def first_fault(value: Any, schema: Schema, path: str = "") -> Fault | None:
    """The first place at which a value does not fit the schema; None where it fits.

    >>> first_fault({"on": "2026-01-17"}, OUT)
    Fault(path='', broken='required')
    """
    if "anyOf" in schema:
        faults = [first_fault(value, one, path) for one in schema["anyOf"]]
        return None if None in faults else faults[-1]
    if "const" in schema and (type(value) is not type(schema["const"]) or value != schema["const"]):
        return Fault(path, "const")
    if "enum" in schema and value not in schema["enum"]:
        return Fault(path, "enum")
    if "type" in schema and type(value) is not _TYPES[schema["type"]]:
        return Fault(path, "type")
    if isinstance(value, str):
        return _fault_of_text(value, schema, path)
    if isinstance(value, dict):
        return _fault_of_object(value, schema, path)
    return _fault_of_list(value, schema, path) if isinstance(value, list) else None


def _fault_of_text(value: str, schema: Schema, path: str) -> Fault | None:
    if len(value) > schema.get("maxLength", len(value)):
        return Fault(path, "maxLength")
    if "pattern" in schema and not re.search(schema["pattern"], value):
        return Fault(path, "pattern")
    return None


def _fault_of_object(value: Mapping[str, Any], schema: Schema, path: str) -> Fault | None:
    properties = schema["properties"]
    if any(name not in value for name in schema["required"]):
        return Fault(path, "required")
    if any(name not in properties for name in value):
        return Fault(path, "additionalProperties")
    inside = (first_fault(value[name], properties[name], _below(path, name)) for name in properties)
    return next((fault for fault in inside if fault), None)


def _below(path: str, name: str) -> str:
    return f"{path}.{name}" if path else name


def _fault_of_list(value: list[Any], schema: Schema, path: str) -> Fault | None:
    if len(value) > schema["maxItems"]:
        return Fault(path, "maxItems")
    inside = (first_fault(one, schema["items"], f"{path}[{place}]") for place, one in enumerate(value))
    return next((fault for fault in inside if fault), None)


def is_day(text: str) -> bool:
    """Whether a text is a day that the calendar has.

    >>> is_day("2026-02-28"), is_day("2026-02-30")
    (True, False)
    """
    try:
        return datetime.date.fromisoformat(text).isoformat() == text
    except ValueError:
        return False


__all__ = [
    "BOUGHT",
    "CONDITIONS",
    "FILE",
    "FORMAT",
    "FOUND",
    "KINDS",
    "LONGEST_LINE",
    "LONGEST_PHOTO",
    "LOOK",
    "MEASURES",
    "MOST_LOOKS",
    "MOST_PARTS",
    "OUT",
    "OUT_CONDITIONS",
    "PART",
    "READINGS",
    "SERVICES",
    "SIZED_KINDS",
    "TIE_DOWN_KINDS",
    "VERSION",
    "Fault",
    "Schema",
    "first_fault",
    "is_day",
]
