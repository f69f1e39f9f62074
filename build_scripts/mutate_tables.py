"""Shows that a lie in a table is caught: changes one thing at a time and asks the laws and copies whether they notice.

A number is moved one printed step up and down (the last place, and the last place that is not a zero), has two digits
swapped, and is swapped with the number of the next row. A key, unit, source, sense, note or `checked` cell is changed to
another word of its column and to a word that does not exist. A meaning is changed in the declaration: the sense of a
quantity, whether it is a rating, the role of a column, the kind of a caution, a note left out. Each change is made in
memory and undone.

    python -m build_scripts.mutate_tables [--sample SHARE] [--seed N] [TABLE ...]
    python -m build_scripts.mutate_tables --families [TABLE ...]    see mutate_families.py

Every law must hold on the unchanged tables first: a law that fails already would seem to catch everything. The laws of a
table count only where one of them states a relation; a table that laws of form alone watch scores nothing.

Prints a line a table: cells, changes, share caught by the laws alone, the same of the changed numbers alone (words are
easier to catch), the same of the meanings, share caught by laws and blind recalls together, and with the second copies
too. Exits 1 if one change in a table that can hurt someone (`safety` in table.toml) is missed, 2 if one elsewhere is, 3 if
a law fails before anything is changed.
"""

from __future__ import annotations

import argparse
import dataclasses
import random
import re
import sys
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from itertools import pairwise

from build_scripts import laws, mutate_families
from build_scripts.laws import recalled, second_copy
from build_scripts.laws.tools import Law, Row, Tables
from build_scripts.table_declaration import CAUTION_KINDS, Declaration

NOT_CHANGED = {"value", "locator"}
WORD_KINDS = {"other word", "no such word"}
SENSES = ("capacity", "demand", "out_at", "out_over", "out_under", "plain", "by_row")


class LawsBroken(ValueError):
    """A law fails on the tables as they are; the message names it and what it says."""


@dataclass(frozen=True)
class Change:
    """One changed cell: row number in the file (heading is row 1), column, old and new text, and its kind."""

    row: int
    column: str
    old: str
    new: str
    kind: str
    other_row: int = 0

    def __str__(self) -> str:
        return f"row {self.row}, column {self.column}: {self.old} -> {self.new} ({self.kind})"


@dataclass(frozen=True)
class MeaningChange:
    """One changed meaning: what was changed, and the declaration as it would be."""

    what: str
    declared: Declaration

    def __str__(self) -> str:
        return self.what


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
    meanings: int = 0
    meanings_by_laws: int = 0
    caught: int = 0
    missed: list[Change | MeaningChange] = field(default_factory=list)


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


def _is_number(row: Row) -> bool:
    return row["unit"] != "text" and bool(re.search("[0-9]", row["value"]))


def changes(rows: list[Row]) -> Iterator[Change]:
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


def meaning_changes(declared: Declaration) -> Iterator[MeaningChange]:
    """Every change of what one table means."""
    for key, one in declared.quantities.items():
        changed_senses = [dataclasses.replace(one, sense=sense) for sense in SENSES if sense != one.sense]
        for changed in (*changed_senses, dataclasses.replace(one, rating=not one.rating)):
            said = f"quantity {key}: {one.sense}, rating {one.rating} -> {changed.sense}, rating {changed.rating}"
            quantities = {**declared.quantities, key: changed}
            yield MeaningChange(said, dataclasses.replace(declared, quantities=quantities))
    for place, caution in enumerate(declared.cautions):
        before, after = declared.cautions[:place], declared.cautions[place + 1 :]
        for kind in CAUTION_KINDS:
            if kind != caution.kind:
                cautions = (*before, dataclasses.replace(caution, kind=kind), *after)
                yield MeaningChange(
                    f"caution {caution.key}: {caution.kind} -> {kind}",
                    dataclasses.replace(declared, cautions=cautions),
                )
        yield MeaningChange(
            f"caution {caution.key}: left out", dataclasses.replace(declared, cautions=before + after)
        )
    for place, note in enumerate(declared.notes):
        kept = declared.notes[:place] + declared.notes[place + 1 :]
        yield MeaningChange(f"note {note}: left out", dataclasses.replace(declared, notes=kept))
    yield from _role_changes(declared)


def _role_changes(declared: Declaration) -> Iterator[MeaningChange]:
    """The role of each key column changed to each other role of the table, and its end of a range taken away."""
    roles = list(dict.fromkeys(column.role for column in declared.columns.values()))
    for key, column in declared.columns.items():
        if column.role == key:
            continue
        others = [dataclasses.replace(column, role=role) for role in roles if role != column.role]
        others += [dataclasses.replace(column, end="")] if column.end else []
        for changed in others:
            yield MeaningChange(
                f"column {key}: {column.role} {column.end} -> {changed.role} {changed.end}",
                dataclasses.replace(declared, columns={**declared.columns, key: changed}),
            )


def _notices(law: Law, tables: Tables) -> bool:
    try:
        return bool(law.check(tables))
    except (ArithmeticError, LookupError, TypeError, ValueError):
        return True  # a test that stops with an error has failed


class _Recorder(Tables):
    """Remembers which tables a law looks at."""

    def __init__(self, tables: Tables) -> None:
        super().__init__(tables, tables.declared, tables.common)
        self.seen: set[str] = set()

    def __getitem__(self, name: str) -> list[Row]:
        self.seen.add(name)
        return super().__getitem__(name)


def tables_seen_by(law: Law, tables: Tables) -> set[str]:
    """The tables whose rows a law looks at."""
    recorder = _Recorder(tables)
    law.check(recorder)
    return recorder.seen


def laws_by_table(tables: Tables) -> dict[str, list[Law]]:
    """The laws that look at each table; none where only laws of form do."""
    found: dict[str, list[Law]] = {name: [] for name in tables}
    for law in laws.all_laws():
        for name in tables_seen_by(law, tables) | {law.table}:
            found[name].append(law)
    return {
        name: watching if any(not law.form for law in watching) else [] for name, watching in found.items()
    }


def require_laws_hold(tables: Tables) -> None:
    """Raise LawsBroken where a law fails on the tables as they are."""
    broken = [(law, said) for law in laws.all_laws() if (said := law.check(tables))]
    if broken:
        lines = "\n".join(f"  {law}: {said[0]}" for law, said in broken)
        raise LawsBroken(f"mend these first; a law that fails already catches nothing:\n{lines}")


def with_change(change: Change, rows: list[Row], ask: Callable[[], bool]) -> bool:
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


def with_meaning(change: MeaningChange, tables: Tables, ask: Callable[[], bool]) -> bool:
    """What `ask` answers while a changed meaning stands; it is undone afterwards."""
    before = tables.declared[change.declared.name]
    tables.declared[before.name] = change.declared
    try:
        return ask()
    finally:
        tables.declared[before.name] = before


def run(names: list[str] | None = None, share: float = 1.0, seed: int = 0) -> list[Count]:
    """Try the changes of the named tables (all of them), or a fixed share picked by `seed`; raises LawsBroken."""
    tables = laws.read()
    require_laws_hold(tables)
    watching = laws_by_table(tables)
    picker = random.Random(seed)
    counts = []
    for name, declared in tables.declared.items():
        if name == "sources" or (names and name not in names):
            continue
        count = Count(name, declared.safety, sum(_is_number(row) for row in tables[name]))
        for change in changes(tables[name]):
            if share == 1 or picker.random() < share:
                _try(change, tables, declared, watching[name], count)
        for meaning in meaning_changes(declared):
            if share == 1 or picker.random() < share:
                _try_meaning(meaning, tables, watching[name], count)
        counts.append(count)
    return counts


def run_families(names: list[str] | None = None) -> list[mutate_families.FamilyCount]:
    """Move the families of the named tables (all that rate by size); raises LawsBroken."""
    tables = laws.read()
    require_laws_hold(tables)
    watching = laws_by_table(tables)
    return [
        mutate_families.count(declared, tables, watching[name], _notices)
        for name, declared in tables.declared.items()
        if name != "sources" and (name in names if names else mutate_families.has_families(declared))
    ]


def _report_families(counts: list[mutate_families.FamilyCount]) -> int:
    """Print a line a table; 1 where one stays below the target."""
    print(mutate_families.HEADING)
    for count in counts:
        print(mutate_families.line(count))
        for missed in count.missed[:5]:
            print(f"    missed: {count.name}: {missed}")
    return 1 if any(count.share < mutate_families.TARGET for count in counts) else 0


def _try(change: Change, tables: Tables, declared: Declaration, watching: list[Law], count: Count) -> None:
    name, rows = declared.name, tables[declared.name]
    lawful = with_change(change, rows, lambda: any(_notices(law, tables) for law in watching))
    remembered = lawful or with_change(change, rows, lambda: bool(recalled.differences(name, rows)))
    copied = bool(second_copy.claims(name)) and with_change(
        change, rows, lambda: bool(second_copy.differences(name, rows, declared.key))
    )
    count.changes += 1
    count.by_laws += lawful
    count.by_laws_and_recall += remembered
    if change.column == "value" and change.kind not in WORD_KINDS:
        count.number_changes += 1
        count.numbers_by_laws += lawful
    _keep(change, remembered or copied, count)


def _try_meaning(change: MeaningChange, tables: Tables, watching: list[Law], count: Count) -> None:
    caught = with_meaning(change, tables, lambda: any(_notices(law, tables) for law in watching))
    count.changes += 1
    count.meanings += 1
    count.by_laws += caught
    count.by_laws_and_recall += caught
    count.meanings_by_laws += caught
    _keep(change, caught, count)


def _keep(change: Change | MeaningChange, caught: bool, count: Count) -> None:
    if caught:
        count.caught += 1
    else:
        count.missed.append(change)


def _share(part: int, whole: int) -> str:
    return f"{part / whole:12.1%}" if whole else f"{'':12}"


def _line(count: Count) -> str:
    """A table's line: shares of its changes that are noticed."""
    changes = max(count.changes, 1)
    return (
        f"{count.name:28}{count.cells:8}{count.changes:9}{_share(count.by_laws, changes)}"
        f"{_share(count.numbers_by_laws, count.number_changes)}{_share(count.meanings_by_laws, count.meanings)}"
        f"{_share(count.by_laws_and_recall, changes)}{_share(count.caught, changes)}"
    )


def main(arguments: list[str] | None = None) -> int:
    """Command line."""
    parser = argparse.ArgumentParser(
        description="Change one table cell at a time and see whether the checks notice."
    )
    parser.add_argument("tables", nargs="*", help="only these tables")
    parser.add_argument("--sample", type=float, default=1.0, help="share of the changes to try, 0 to 1")
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument(
        "--families", action="store_true", help="move all numbers of a size and grade together instead"
    )
    options = parser.parse_args(arguments)
    try:
        if options.families:
            return _report_families(run_families(options.tables))
        counts = run(options.tables, options.sample, options.seed)
    except LawsBroken as broken:
        print(broken, file=sys.stderr)
        return 3
    print(
        f"{'table':28}{'numbers':>8}{'changes':>9}{'laws alone':>12}{'numbers':>12}{'meanings':>12}"
        f"{'and recall':>12}{'all checks':>12}"
    )
    for count in counts:
        if count.changes:
            print(_line(count))
        for change in count.missed[:5]:
            print(f"    missed: {count.name}: {change}")
    total = Count("all", safety=True)
    for count in counts:
        for part in (
            "cells",
            "changes",
            "by_laws",
            "by_laws_and_recall",
            "number_changes",
            "numbers_by_laws",
            "meanings",
            "meanings_by_laws",
            "caught",
        ):
            setattr(total, part, getattr(total, part) + getattr(count, part))
    print(_line(total))
    if any(count.missed and count.safety for count in counts):
        return 1
    return 2 if any(count.missed for count in counts) else 0


if __name__ == "__main__":
    sys.exit(main())
