"""The kit as a file: JSON, which keeps everything, and CSV, which a spreadsheet reads and which leaves photos out.

A file that is damaged or of a newer book is refused whole, by code: half a kit would look like a kit. The JSON file carries
a checksum over its parts, so that one cut off or changed in a byte is known.
"""

from __future__ import annotations

import binascii
import csv
import io
import json
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from calc import inputs
from calc.records.kit.part import NoPart, Part, part_of
from calc.records.kit.schema import FILE, FORMAT, MEASURES, MOST_PARTS, PART, VERSION, first_fault
from calc.words.facts import Fact, message


class KitRefused(ValueError):
    """A file cannot be taken: the message `kit-refused-CODE` says why."""

    def __init__(self, code: str, **facts: Fact) -> None:
        self.code = code
        self.why = message(f"kit-refused-{code}", **facts)
        super().__init__(code)


@dataclass(frozen=True)
class Kit:
    """The parts of a file, and the edition that wrote it."""

    parts: tuple[Part, ...]
    edition: str = ""


_LARGEST = 200_000_000
"""Characters of a file that is looked at, at most: a phone has no room for more."""
_PLAIN_COLUMNS = tuple(
    name
    for name, schema in PART["properties"].items()
    if name not in ("new", "looks", "out", "seen", "photo")
)
_NEW_COLUMNS = tuple(f"new_{name}" for name in MEASURES)
_OTHER_COLUMNS = ("out_on", "out_why", "out_by", "seen_rating", "seen_edition", "looks")
COLUMNS = (*_PLAIN_COLUMNS, *_NEW_COLUMNS, *_OTHER_COLUMNS)
"""Of the CSV file, in their order; `looks` is a JSON text."""
_FORMULA = ("=", "+", "-", "@", "'")
"""A cell that begins so would be reckoned by a spreadsheet: it gets an apostrophe in front, and loses it when it is read."""


# ------------------------------------------------------------------------------------------ JSON


def _compact(data: Any) -> str:
    return json.dumps(data, ensure_ascii=False, separators=(",", ":"), sort_keys=True)


def checksum(parts: Sequence[dict[str, Any]]) -> str:
    """Eight letters over the parts, however their file is spaced."""
    return f"{binascii.crc32(_compact(list(parts)).encode('utf-8')):08x}"


def to_json(parts: Sequence[Part], edition: str, tables: str) -> str:
    """The kit as a JSON file. `tables`: the letters that name tables and code of this book."""
    data = [part.to_data() for part in parts]
    whole = {
        "format": FORMAT,
        "version": VERSION,
        "edition": edition,
        "tables": tables,
        "saved_on": inputs.today().isoformat(),
        "check": checksum(data),
        "parts": data,
    }
    return json.dumps(whole, ensure_ascii=False, indent=1) + "\n"


def from_json(text: str) -> Kit:
    """The kit in a JSON file; raises KitRefused."""
    try:
        whole = json.loads(text, parse_constant=_no_number)
    except (ValueError, RecursionError):
        raise KitRefused("not-readable") from None
    if not isinstance(whole, dict) or whole.get("format") != FORMAT:
        raise KitRefused("another-format")
    version = whole.get("version")
    if isinstance(version, int) and version > VERSION:
        raise KitRefused("newer", edition=str(whole.get("edition", ""))[:20])
    fault = first_fault(whole, FILE)
    if fault:
        raise KitRefused("damaged", place=fault.path or FORMAT)
    if whole["check"] != checksum(whole["parts"]):
        raise KitRefused("changed")
    return Kit(_parts(whole["parts"]), whole["edition"])


def _no_number(constant: str) -> None:
    raise ValueError(constant)


def _parts(data: Sequence[Any]) -> tuple[Part, ...]:
    """The parts, each whole, each once."""
    parts = []
    for place, one in enumerate(data):
        try:
            parts.append(part_of(one))
        except NoPart as why:
            raise KitRefused("damaged", place=f"parts[{place}].{why.fault.path}") from why
    twice = [name for name, count in Counter(part.id for part in parts).items() if count > 1]
    if twice:
        raise KitRefused("damaged", place=f"parts, id {twice[0]}")
    return tuple(parts)


# ------------------------------------------------------------------------------------------ CSV


def to_csv(parts: Sequence[Part]) -> str:
    """The kit as a CSV file (RFC 4180), without photos."""
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    for part in parts:
        writer.writerow([_guarded(cell) for cell in _cells(part)])
    return text.getvalue()


def _cells(part: Part) -> list[str]:
    data = part.to_data()
    out = data["out"] or {"on": "", "why": "", "by": ""}
    return [
        *(data[name] for name in _PLAIN_COLUMNS),
        *(data["new"][name] for name in MEASURES),
        *(out["on"], out["why"], out["by"]),
        *(data["seen"]["rating"], data["seen"]["edition"]),
        _compact(data["looks"]),
    ]


def _guarded(cell: str) -> str:
    return f"'{cell}" if cell.startswith(_FORMULA) else cell


def _unguarded(cell: str) -> str:
    return cell[1:] if cell.startswith("'") and cell[1:].startswith(_FORMULA) else cell


def from_csv(text: str) -> Kit:
    """The kit in a CSV file; raises KitRefused."""
    try:
        rows = list(csv.reader(io.StringIO(text, newline=""), strict=True))
    except csv.Error:
        raise KitRefused("not-readable") from None
    if not rows or tuple(rows[0]) != COLUMNS:
        raise KitRefused("other-columns")
    if len(rows) - 1 > MOST_PARTS:
        raise KitRefused("damaged", place="parts")
    return Kit(_parts([_from_cells(row, place) for place, row in enumerate(rows[1:], 2)]))


def _from_cells(row: Sequence[str], place: int) -> dict[str, Any]:
    if len(row) != len(COLUMNS):
        raise KitRefused("damaged", place=str(place))
    cells = dict(zip(COLUMNS, map(_unguarded, row), strict=True))
    try:
        looks = json.loads(cells["looks"], parse_constant=_no_number)
    except (ValueError, RecursionError):
        raise KitRefused("damaged", place=str(place)) from None
    out = {"on": cells["out_on"], "why": cells["out_why"], "by": cells["out_by"]}
    return {
        **{name: cells[name] for name in _PLAIN_COLUMNS},
        "new": {name: cells[f"new_{name}"] for name in MEASURES},
        "looks": looks,
        "out": out if any(out.values()) else None,
        "seen": {"rating": cells["seen_rating"], "edition": cells["seen_edition"]},
        "photo": "",
    }


def read_kit(text: str) -> Kit:
    """The kit in a file, of either kind; raises KitRefused."""
    if len(text) > _LARGEST:
        raise KitRefused("too-large")
    bare = text.removeprefix("\ufeff")
    return from_json(bare) if bare.lstrip()[:1] in ("{", "[") else from_csv(bare)


__all__ = [
    "COLUMNS",
    "Kit",
    "KitRefused",
    "checksum",
    "from_csv",
    "from_json",
    "read_kit",
    "to_csv",
    "to_json",
]
