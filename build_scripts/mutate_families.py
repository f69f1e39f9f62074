"""Shows whether the laws notice a wrong row or a wrong edition: moves every number of one size and grade together.

One changed cell is the slip of a finger. Who recalls the wrong row of a print, or reads an older edition of it, changes
all cells of a size at once, and they still agree with each other. So each family (all cells of one size and
grade) is moved by -10, -5, +5 and +10 percent, each number rounded to the step of its column, and exchanged with the
family of the next size. Laws alone are asked; copies and recalls would notice everything.

    python -m build_scripts.mutate_tables --families [TABLE ...]
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import pairwise

from build_scripts.laws.tools import Law, Row, Tables, exact, groups
from build_scripts.table_declaration import Declaration

SHARES = (Fraction(-1, 10), Fraction(-1, 20), Fraction(1, 20), Fraction(1, 10))
EXCHANGED = "exchanged"
SIZES = (
    "size_inch",
    "size_inch_name",
    "size_metric",
    "size_metric_printed",
    "length_inch",
    "thread",
    "number",
)
"""Roles of the columns that say how big a part is."""
NO_SIZE = frozenset({"quantity", "unit", "default", "sense", "source"})
TARGET = 0.95
"""Share of the changes that the laws of a table of ratings should notice."""

Value = tuple[Row, str]
"""A row and the value it has in a changed table."""


@dataclass
class FamilyCount:
    """How many families of one table were changed in each way, and how many of these changes a law noticed."""

    name: str
    tried: dict[str, int] = field(default_factory=dict)
    noticed: dict[str, int] = field(default_factory=dict)
    missed: list[str] = field(default_factory=list)

    @property
    def share(self) -> float:
        """Share of all changes that were noticed; 1 where there were none."""
        tried = sum(self.tried.values())
        return sum(self.noticed.values()) / tried if tried else 1.0

    def add(self, kind: str, what: str, noticed: bool) -> None:
        """Count one change."""
        self.tried[kind] = self.tried.get(kind, 0) + 1
        self.noticed[kind] = self.noticed.get(kind, 0) + noticed
        if not noticed:
            self.missed.append(f"{what} {kind}")


def family_columns(declared: Declaration) -> tuple[str, ...]:
    """The columns that a family shares: size, grade and kind; `family` of table.toml where these are others."""
    if declared.family:
        return declared.family
    kept = {*declared.with_role(*SIZES, "grade", "name", "part"), *declared.layout.rows}
    return tuple(name for name in declared.columns if name in kept and name not in NO_SIZE)


def numeric(declared: Declaration, row: Row) -> bool:
    """Whether a row has a number that can be moved: no words, no share, no count."""
    one = declared.quantities.get(row["quantity"])
    return one is not None and one.dimension not in ("words", "count", "temperature", "angle")


def has_families(declared: Declaration) -> bool:
    """Whether a table rates parts by size: a wrong row of it can hurt someone."""
    by_size = any(role in SIZES for role in (column.role for column in declared.columns.values()))
    return declared.safety and (by_size or any(one.rating for one in declared.quantities.values()))


def _written(value: Fraction, step: Fraction, like: str) -> str:
    """A value at the nearest step, written as the cell was (`1-1/4`, `0.342`, `6,600`)."""
    whole = math.floor(value / step + Fraction(1, 2)) * step
    if "/" in like or (
        step.denominator != 1 and step.denominator & (step.denominator - 1) == 0 and "." not in like
    ):
        units, rest = divmod(whole, 1)
        return f"{units}-{rest}" if units and rest else f"{rest or units}"
    places = len(str(like).partition(".")[2])
    return f"{float(whole):,.{places}f}" if "," in like or whole >= 1000 else f"{float(whole):.{places}f}"


def _steps(declared: Declaration, rows: list[Row]) -> dict[tuple[str, str, str], Fraction]:
    """(quantity, unit, source) -> the step to which the column is printed: declared, or the finest place it shows."""
    found = {}
    for key, group in groups(rows, "quantity", "unit", "source").items():
        declared_step = declared.quantities[key[0]].steps.get(key[1])
        places = [_place(row["value"]) for row in group]
        found[key[0], key[1], key[2]] = exact(declared_step) if declared_step else min(places)
    return found


def _place(text: str) -> Fraction:
    """The finest place that a printed number shows: 100 of 6,600, 0.001 of 0.342, 1/64 of 13/64."""
    if "/" in text:
        return Fraction(1, exact(text).denominator)
    if "." in text:
        return Fraction(1, 10 ** len(text.partition(".")[2]))
    digits = text.replace(",", "")
    return Fraction(10 ** (len(digits) - len(digits.rstrip("0"))) if digits.strip("0") else 1)


def families(declared: Declaration, rows: list[Row]) -> dict[tuple[str, ...], list[Row]]:
    """The rows of each family that have a number."""
    numbers = [row for row in rows if numeric(declared, row)]
    return groups(numbers, *family_columns(declared))


def moved(declared: Declaration, rows: list[Row], family: list[Row], share: Fraction) -> list[Value]:
    """The family with every number moved by a share; the values that rounding leaves as they were are not in it."""
    steps = _steps(declared, rows)
    found = []
    for row in family:
        step = steps[row["quantity"], row["unit"], row["source"]]
        new = _written(exact(row["value"]) * (1 + share), step, row["value"])
        if exact(new) != exact(row["value"]):
            found.append((row, new))
    return found


def exchanged(declared: Declaration, one: list[Row], other: list[Row]) -> list[Value]:
    """Two families with their numbers exchanged, case by case; only what differs is in it."""
    columns = set(family_columns(declared))
    case = [key for key in declared.key if key not in columns]
    there = {tuple(row[key] for key in case): row for row in other}
    found: list[Value] = []
    for row in one:
        twin = there.get(tuple(row[key] for key in case))
        if twin is not None and twin["value"] != row["value"]:
            found += [(row, twin["value"]), (twin, row["value"])]
    return found


def _neighbours(declared: Declaration, rows: list[Row]) -> Iterator[tuple[list[Row], list[Row], str]]:
    """Each family with that of the next size, in the order of the file."""
    columns = family_columns(declared)
    sizes = {*declared.with_role(*SIZES), *declared.layout.rows}
    same = [name for name in columns if name not in sizes]
    by_kind: dict[tuple[str, ...], list[list[Row]]] = {}
    for family in families(declared, rows).values():
        by_kind.setdefault(tuple(family[0][name] for name in same), []).append(family)
    for kind in by_kind.values():
        for one, other in pairwise(kind):
            yield one, other, _name(columns, one)


def _name(columns: tuple[str, ...], family: list[Row]) -> str:
    return " ".join(family[0][name] for name in columns)


def with_values(values: list[Value], ask: Callable[[], bool]) -> bool:
    """What `ask` answers while rows have other values; they are put back afterwards."""
    before = [row["value"] for row, _ in values]
    for row, value in values:
        row["value"] = value
    try:
        return ask()
    finally:
        for (row, _), value in zip(values, before, strict=True):
            row["value"] = value


def count(
    declared: Declaration, tables: Tables, watching: list[Law], notices: Callable[[Law, Tables], bool]
) -> FamilyCount:
    """Change every family of one table in every way, and ask its laws."""
    rows, found = tables[declared.name], FamilyCount(declared.name)

    def asked(values: list[Value]) -> bool:
        return with_values(values, lambda: any(notices(law, tables) for law in watching))

    for family in families(declared, rows).values():
        for share in SHARES:
            if values := moved(declared, rows, family, share):
                found.add(f"{float(share):+.0%}", _name(family_columns(declared), family), asked(values))
    for one, other, name in _neighbours(declared, rows):
        if values := exchanged(declared, one, other):
            found.add(EXCHANGED, name, asked(values))
    return found


def line(found: FamilyCount) -> str:
    """A table's line: families changed, and the share noticed of each kind of change and of all."""
    kinds = [*(f"{float(share):+.0%}" for share in SHARES), EXCHANGED]
    shares = [
        f"{found.noticed.get(kind, 0) / found.tried[kind]:10.0%}" if kind in found.tried else f"{'':10}"
        for kind in kinds
    ]
    return f"{found.name:28}{sum(found.tried.values()):8}{''.join(shares)}{found.share:10.1%}"


HEADING = (
    f"{'table':28}{'changes':>8}{'-10%':>10}{'-5%':>10}{'+5%':>10}{'+10%':>10}{'exchanged':>10}{'all':>10}"
)
