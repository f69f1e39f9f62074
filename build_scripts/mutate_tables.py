"""Shows that a lie in a table is caught: changes one cell at a time and asks the checks of tests/data whether they notice.

A number is moved one printed step up and down (the last place, and the last place that is not a zero), has two digits
swapped, and is swapped with the number of the next row. A key, unit, source or `checked` cell is changed to another
word of its column and to a word that does not exist. Each change is made in memory and undone.

    python build_scripts/mutate_tables.py [--sample SHARE] [--seed N] [TABLE ...]

Prints a line a table: cells, changes, share caught by the laws alone, the same of the changed numbers alone (words are
easier to catch), share caught by laws and blind recalls together, and with the second copies too.
Exits 1 if one change in a table that can hurt someone (`safety` in datapackage.json) is missed, 2 if one elsewhere is.
"""

from __future__ import annotations

import argparse
import random
import re
import sys
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.data import laws, recalled, second_copy  # noqa: E402  (the project root must be on the path first)

NOT_CHANGED = {"value", "locator", "note"}
WORD_KINDS = {"other word", "no such word"}


@dataclass(frozen=True)
class Change:
    """One changed cell: row number in the file (heading is row 1), column, old and new text, and its kind."""

    row: int
    column: str
    old: str
    new: str
    kind: str
    other_row: int = 0


@dataclass
class Count:
    """What became of the changes of one table."""

    name: str
    safety: bool
    cells: int = 0
    changes: int = 0
    by_laws: int = 0
    by_laws_and_recall: int = 0
    number_changes: int = 0
    numbers_by_laws: int = 0
    caught: int = 0
    missed: list[Change] = field(default_factory=list)


def _stepped(text: str, position: int, step: int) -> str:
    """The number with the digit at `position` moved by `step`, carried, its commas and places kept."""
    digits = text.replace(",", "")
    places = len(digits) - digits.index(".") - 1 if "." in digits else 0
    plain = position - text[:position].count(",")
    right = sum(character.isdigit() for character in digits[plain + 1 :])
    whole = (
        int(digits.replace(".", "").replace("-", "")) * (-1 if digits.startswith("-") else 1)
        + step * 10**right
    )
    sign, body = ("-" if whole < 0 else ""), str(abs(whole)).rjust(places + 1, "0")
    head, tail = (body[:-places], "." + body[-places:]) if places else (body, "")
    return f"{sign}{int(head):,}{tail}" if "," in text else f"{sign}{head}{tail}"


def number_changes(text: str) -> dict[str, str]:
    """The changed texts of one printed number, by kind of change."""
    found: dict[str, str] = {}
    if "/" in text:
        head, slash, below = text.partition("/")
        whole, dash, above = head.rpartition("-")
        found["step up"] = f"{whole}{dash}{int(above) + 1}{slash}{below}"
        found["step down"] = f"{whole}{dash}{int(above) - 1}{slash}{below}"
    else:
        last = len(text) - 1
        found["step up"], found["step down"] = _stepped(text, last, 1), _stepped(text, last, -1)
        digits = [i for i, character in enumerate(text) if character.isdigit() and character != "0"]
        if digits and digits[-1] != last:
            found["shown step up"], found["shown step down"] = (
                _stepped(text, digits[-1], 1),
                _stepped(text, digits[-1], -1),
            )
    places = [i for i, character in enumerate(text) if character.isdigit()]
    for first, second in pairwise(places):
        if text[first] != text[second]:
            swapped = list(text)
            swapped[first], swapped[second] = swapped[second], swapped[first]
            found["digits swapped"] = "".join(swapped)
            break
    return found


def _is_number(row: laws.Row) -> bool:
    return row["unit"] != "text" and bool(re.search("[0-9]", row["value"]))


def changes(rows: list[laws.Row]) -> Iterator[Change]:
    """Every change of one table."""
    words = {column: list(dict.fromkeys(row[column] for row in rows)) for column in rows[0]}
    for index, row in enumerate(rows):
        number = index + 2
        if _is_number(row):
            for kind, text in number_changes(row["value"]).items():
                yield Change(number, "value", row["value"], text, kind)
            after = rows[index + 1] if index + 1 < len(rows) else None
            if after and _is_number(after) and after["value"] != row["value"]:
                yield Change(number, "value", row["value"], after["value"], "neighbours swapped", number + 1)
        elif row["quantity"] != "rule":
            yield from _word_changes(number, "value", row["value"], words["value"])
        for column in row:
            if column not in NOT_CHANGED:
                yield from _word_changes(number, column, row[column], words[column])


def _word_changes(number: int, column: str, old: str, known: list[str]) -> Iterator[Change]:
    if len(known) > 1:
        yield Change(number, column, old, known[(known.index(old) + 1) % len(known)], "other word")
    yield Change(number, column, old, old + "x", "no such word")


def _notices(check: Callable[[laws.Tables], list[str]], tables: laws.Tables) -> bool:
    try:
        return bool(check(tables))
    except (ArithmeticError, LookupError, TypeError, ValueError):
        return True  # a test that stops with an error has failed


class _Recorder(dict[str, list[laws.Row]]):
    """Remembers which tables a law looks at."""

    def __init__(self, tables: laws.Tables) -> None:
        super().__init__(tables)
        self.seen: set[str] = set()

    def __getitem__(self, name: str) -> list[laws.Row]:
        self.seen.add(name)
        return super().__getitem__(name)

    def items(self):  # type: ignore[no-untyped-def]  # the view type of dict cannot be named here
        self.seen |= set(self)
        return super().items()


def tables_seen_by(law: laws.Law, tables: laws.Tables) -> set[str]:
    """The tables that a law looks at."""
    recorder = _Recorder(tables)
    law(recorder)
    return recorder.seen


def laws_by_table(tables: laws.Tables) -> dict[str, list[laws.Law]]:
    """The laws that look at each table."""
    found: dict[str, list[laws.Law]] = {name: [] for name in tables}
    for law in laws.LAWS:
        for name in tables_seen_by(law, tables):
            found[name].append(law)
    return found


def with_change(change: Change, rows: list[laws.Row], ask: Callable[[], bool]) -> bool:
    """What `ask` answers while the change stands; it is undone afterwards."""
    row, other = rows[change.row - 2], rows[change.other_row - 2] if change.other_row else None
    row[change.column] = change.new
    if other:
        other[change.column] = change.old
    try:
        return ask()
    finally:
        row[change.column] = change.old
        if other:
            other[change.column] = change.new


def run(names: list[str] | None = None, share: float = 1.0, seed: int = 0) -> list[Count]:
    """Try the changes of the named tables (all of them), or a fixed share picked by `seed`."""
    tables = laws.read()
    watching = laws_by_table(tables)
    picker = random.Random(seed)  # noqa: S311  (a repeatable sample, no secret)
    counts = []
    for resource in laws.descriptor()["resources"]:
        name = resource["name"]
        if name == "sources" or (names and name not in names):
            continue
        key = tuple(resource["schema"]["primaryKey"])
        count = Count(name, resource["linkwright"]["safety"], sum(_is_number(row) for row in tables[name]))
        for change in changes(tables[name]):
            if share < 1 and picker.random() >= share:
                continue
            _try(change, tables, name, key, watching[name], count)
        counts.append(count)
    return counts


def _try(
    change: Change,
    tables: laws.Tables,
    name: str,
    key: tuple[str, ...],
    watching: list[laws.Law],
    count: Count,
) -> None:
    rows = tables[name]
    lawful = with_change(change, rows, lambda: any(_notices(law, tables) for law in watching))
    remembered = lawful or with_change(change, rows, lambda: bool(recalled.differences(name, rows)))
    copied = bool(second_copy.claims(name)) and with_change(
        change, rows, lambda: bool(second_copy.differences(name, rows, key))
    )
    count.changes += 1
    count.by_laws += lawful
    count.by_laws_and_recall += remembered
    if change.column == "value" and change.kind not in WORD_KINDS:
        count.number_changes += 1
        count.numbers_by_laws += lawful
    if remembered or copied:
        count.caught += 1
    else:
        count.missed.append(change)


def _line(count: Count) -> str:
    """A table's line: shares of its changes that are noticed."""
    numbers = f"{count.numbers_by_laws / count.number_changes:12.1%}" if count.number_changes else f"{'':12}"
    changes = max(count.changes, 1)
    return (
        f"{count.name:28}{count.cells:8}{count.changes:9}{count.by_laws / changes:12.1%}{numbers}"
        f"{count.by_laws_and_recall / changes:12.1%}{count.caught / changes:12.1%}"
    )


def main(arguments: list[str] | None = None) -> int:
    """Command line."""
    parser = argparse.ArgumentParser(
        description="Change one table cell at a time and see whether the checks notice."
    )
    parser.add_argument("tables", nargs="*", help="only these tables")
    parser.add_argument("--sample", type=float, default=1.0, help="share of the changes to try, 0 to 1")
    parser.add_argument("--seed", type=int, default=0)
    options = parser.parse_args(arguments)
    counts = run(options.tables, options.sample, options.seed)
    print(
        f"{'table':28}{'numbers':>8}{'changes':>9}{'laws alone':>12}{'numbers':>12}{'and recall':>12}{'all checks':>12}"
    )
    for count in counts:
        if count.changes:
            print(_line(count))
        for change in count.missed[:5]:
            print(
                f"    missed: {count.name}.csv, row {change.row}, column {change.column}: {change.old} -> {change.new} ({change.kind})"
            )
    total = Count("all", safety=True)
    for count in counts:
        for part in (
            "cells",
            "changes",
            "by_laws",
            "by_laws_and_recall",
            "number_changes",
            "numbers_by_laws",
            "caught",
        ):
            setattr(total, part, getattr(total, part) + getattr(count, part))
    print(_line(total))
    if any(count.missed and count.safety for count in counts):
        return 1
    return 2 if any(count.missed for count in counts) else 0


if __name__ == "__main__":
    sys.exit(main())
