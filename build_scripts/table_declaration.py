"""Reads what each table declares of itself: tables/NAME/table.toml, over what all share in tables/shared.toml.

A table is a folder. `claims.csv` holds its rows, one claim a row; `table.toml` says what they mean: the quantity each
value is of, its sense and dimension, the role of each key column, the kinds of its cautions, its layout, where each
source keeps what was taken from it. Nothing downstream guesses any of this from a name
or a sentence. A declaration that does not fit is refused with file, place, reason and what to write instead.
"""

from __future__ import annotations

import csv
import functools
import tomllib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

TABLES = Path(__file__).resolve().parent.parent / "tables"
CLAIMS, DECLARATION, SHARED = "claims.csv", "table.toml", "shared.toml"
LAST = 1_000_000
"""The place of a table that asks for none: after the others, by name."""
CAUTION_KINDS = ("warning", "prohibition", "mandatory", "note")
WORDED = frozenset({"word", "part", "rule", "legs", "grade"})
"""Roles whose values need words."""
FIXED = ("default", "quantity", "sense", "value", "unit", "source", "locator", "checked", "note")
"""Columns that are declared once for all tables of claims."""


class TableRefused(ValueError):
    """A declaration cannot be used; the message names the file, the place in it, the reason and the remedy."""


@dataclass(frozen=True)
class Column:
    """A column: its role, and what may stand in it. `end` says which end of a range it is (from, to)."""

    name: str
    role: str
    type: str = "string"
    pattern: str = ""
    allowed: tuple[str, ...] = ()
    minimum: float | None = None
    least: int = 0
    unit: str = ""
    end: str = ""
    optional: bool = False


@dataclass(frozen=True)
class QuantityDeclared:
    """What a value is: the sense of more of it, its dimension, the units it is printed in.

    rating -- a reader may take it as what a part may carry
    range, end -- the name of the range that it is an end of, and which end (from, to)
    steps -- unit -> smallest step to which it is printed
    only -- source -> the one unit that it prints this quantity in
    """

    name: str
    sense: str
    dimension: str
    units: tuple[str, ...]
    rating: bool = False
    range: str = ""
    end: str = ""
    steps: Mapping[str, str] = field(default_factory=dict)
    only: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True)
class CautionDeclared:
    """A caution: its kind, and the key of its words."""

    kind: str
    key: str


@dataclass(frozen=True)
class Layout:
    """Which columns name a line of the look-up page and which its columns; `order`: alphabet, or the file's; `lead`: the values
    of a key whose columns stand first, because they are asked for most; `aside`: columns of lines that stand last.
    """

    rows: tuple[str, ...]
    columns: tuple[str, ...]
    order: str = ""
    lead: tuple[str, ...] = ()
    aside: tuple[str, ...] = ()


@dataclass(frozen=True)
class Declaration:
    """All that a table says of itself."""

    name: str
    folder: Path
    group: str
    use: str
    safety: bool
    order: int
    key: tuple[str, ...]
    filters: tuple[str, ...]
    family: tuple[str, ...]
    compare: tuple[str, ...]
    locator_names: tuple[str, ...]
    notes: tuple[str, ...]
    cautions: tuple[CautionDeclared, ...]
    layout: Layout
    columns: Mapping[str, Column]
    quantities: Mapping[str, QuantityDeclared]
    places: Mapping[str, str]

    @property
    def claims(self) -> Path:
        """The file of its rows."""
        return self.folder / CLAIMS

    def sense(self, row: Mapping[str, str]) -> str:
        """What more of a row's value means: the row's own sense where its table has that column."""
        return row.get("sense") or self.quantities[row["quantity"]].sense

    def is_rating(self, row: Mapping[str, str]) -> bool:
        """Whether a row says what a part may carry."""
        known = self.quantities.get(row.get("quantity", ""))
        return known is not None and known.rating

    def with_role(self, *roles: str) -> tuple[str, ...]:
        """The columns of some roles, in the order of the file."""
        return tuple(name for name, column in self.columns.items() if column.role in roles)


def shared(folder: Path = TABLES) -> dict[str, Any]:
    """What all tables share; raises TableRefused."""
    return _toml(folder / SHARED)


def read_declarations(folder: Path) -> dict[str, Declaration]:
    """Every table by name, in the order in which a reader meets them, as the files are now; raises TableRefused."""
    common = shared(folder)
    paths = sorted(folder.glob(f"*/{DECLARATION}"))
    found = [_Reader(path.parent, _toml(path), common).read() for path in paths]
    return {one.name: one for one in sorted(found, key=lambda one: (one.order, one.name))}


@functools.cache
def declarations(folder: Path = TABLES) -> dict[str, Declaration]:
    """Every table by name, in the order in which a reader meets them, read once; raises TableRefused."""
    return read_declarations(folder)


def declared(name: str) -> Declaration:
    """The declaration of one table; raises LookupError."""
    try:
        return declarations()[name]
    except KeyError:
        raise LookupError(f"there is no table {name}") from None


def _toml(path: Path) -> dict[str, Any]:
    try:
        with path.open("rb") as file:
            return tomllib.load(file)
    except OSError as reason:
        raise TableRefused(f"{_short(path)}: cannot be read: {reason.strerror}") from reason
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as reason:
        raise TableRefused(f"{_short(path)}: is not TOML: {reason}") from reason


def _short(path: Path) -> str:
    """A file of the tables folder as a reader names it: `chain-wear/claims.csv`."""
    return path.name if path.name == SHARED else f"{path.parent.name}/{path.name}"


@dataclass(frozen=True)
class _Reader:
    """Reads one table.toml against what is shared."""

    folder: Path
    said: dict[str, Any]
    common: dict[str, Any]

    def read(self) -> Declaration:
        """The declaration, each word of it checked."""
        known = {"group", "use", "safety", "order", "key", "filters", "family", "compare", "locator_names", "notes",
                 "cautions", "layout", "columns", "quantities", "places"}  # fmt: skip
        self._of(self.said, known, "")
        heading = self._heading()
        quantities = {name: self._quantity(name, one) for name, one in self._part("quantities").items()}
        columns = {name: self._column(name, quantities) for name in heading}
        self._of(self._part("columns"), heading, "[columns]", "a column of claims.csv")
        layout = self._layout(columns)
        return Declaration(
            name=self.folder.name,
            folder=self.folder,
            group=self._one_of("group", self.common["groups"]),
            use=self._one_of("use", self.common["uses"]),
            safety=bool(self._given("safety")),
            order=int(self.said.get("order", LAST)),
            key=self._columns("key", columns, self._given("key")),
            filters=self._columns("filters", columns, self.said.get("filters", ())),
            family=self._columns("family", columns, self.said.get("family", ())),
            compare=self._columns("compare", columns, self.said.get("compare", ())),
            locator_names=self._columns("locator_names", columns, self.said.get("locator_names", ())),
            notes=tuple(self.said.get("notes", ())),
            cautions=tuple(self._caution(one) for one in self.said.get("cautions", ())),
            layout=layout,
            columns=columns,
            quantities=quantities,
            places=dict(self._part("places")),
        )

    def _refuse(self, place: str, reason: str) -> TableRefused:
        return TableRefused(f"{self.folder.name}/{DECLARATION}{f', {place}' if place else ''}: {reason}")

    def _given(self, key: str) -> Any:
        if key not in self.said:
            raise self._refuse("", f"says no {key}; write {key} = ... at its head")
        return self.said[key]

    def _part(self, key: str) -> dict[str, Any]:
        found: dict[str, Any] = self.said.get(key, {})
        return found

    def _of(self, said: Iterable[str], known: Iterable[str], place: str, what: str = "known here") -> None:
        allowed = set(known)
        for word in said:
            if word not in allowed:
                raise self._refuse(place, f"{word} is not {what}; there are {', '.join(sorted(allowed))}")

    def _one_of(self, key: str, allowed: list[str]) -> str:
        word = str(self._given(key))
        self._of([word], allowed, key)
        return word

    def _columns(self, place: str, columns: Mapping[str, Column], names: Iterable[str]) -> tuple[str, ...]:
        wanted = tuple(names)
        self._of(wanted, columns, place, "a column of claims.csv")
        return wanted

    def _heading(self) -> list[str]:
        path = self.folder / CLAIMS
        try:
            with path.open(newline="", encoding="utf-8") as stream:
                return next(csv.reader(stream))
        except (OSError, StopIteration, UnicodeDecodeError) as reason:
            raise TableRefused(f"{_short(path)}: has no heading that can be read: {reason}") from reason

    def _quantity(self, name: str, said: dict[str, Any]) -> QuantityDeclared:
        place = f"[quantities.{name}]"
        known = {"sense", "dimension", "units", "rating", "range", "end", "steps", "only"}
        self._of(said, known, place)
        for key in ("sense", "dimension", "units"):
            if key not in said:
                raise self._refuse(place, f"says no {key}; write {key} = ...")
        self._of([said["sense"]], self.common["senses"], place)
        self._of([said["dimension"]], self.common["dimensions"], place)
        units = tuple(said["units"])
        self._of(units, self.common["dimensions"][said["dimension"]], place, f"a unit of {said['dimension']}")
        self._of(said.get("steps", ()), units, f"{place}, steps", "a unit of it")
        self._of(said.get("only", {}).values(), units, f"{place}, only", "a unit of it")
        return QuantityDeclared(
            name,
            said["sense"],
            said["dimension"],
            units,
            said.get("rating", False),
            said.get("range", ""),
            said.get("end", ""),
            dict(said.get("steps", {})),
            dict(said.get("only", {})),
        )

    def _column(self, name: str, quantities: Mapping[str, QuantityDeclared]) -> Column:
        if "quantity" in self._heading() and name in FIXED:
            return self._fixed(name, quantities)
        said = self._part("columns").get(name)
        if said is None:
            known = ", ".join(self._part("columns")) or "none"
            raise TableRefused(
                f"{self.folder.name}/{CLAIMS}: {DECLARATION} says nothing of column {name}, it has {known}; "
                f'mend the heading, or write [columns.{name}] with role = "..."'
            )
        place = f"[columns.{name}]"
        self._of(said, {"role", "allowed", "minimum", "unit", "end"}, place)
        self._of([said.get("role", "")], self.common["roles"], place, "a role")
        role = self.common["roles"][said["role"]]
        allowed = tuple(said.get("allowed", ()))
        if said["role"] in WORDED - {"part", "rule"} and not allowed:
            raise self._refuse(place, "says no allowed words; write allowed = [...]")
        return Column(
            name,
            said["role"],
            type=role.get("type", "string"),
            pattern=role.get("pattern", ""),
            allowed=allowed,
            minimum=said.get("minimum", role.get("minimum")),
            unit=said.get("unit", role.get("unit", "")),
            end=said.get("end", ""),
        )

    def _fixed(self, name: str, quantities: Mapping[str, QuantityDeclared]) -> Column:
        """A column that every table of claims has."""
        said = self.common["columns"][name]
        allowed = tuple(said.get("allowed", ()))
        pattern = said.get("pattern", "")
        if name == "quantity":
            allowed = tuple(quantities)
        elif name == "unit":
            allowed = tuple(dict.fromkeys(unit for one in quantities.values() for unit in one.units))
        elif name == "value" and all(one.dimension != "words" for one in quantities.values()):
            pattern = said["number"]
        return Column(
            name,
            name,
            pattern=pattern,
            allowed=allowed,
            least=said.get("least", 0),
            optional=said.get("optional", False),
        )

    def _layout(self, columns: Mapping[str, Column]) -> Layout:
        said = self._given("layout")
        self._of(said, {"rows", "columns", "order", "lead", "aside"}, "[layout]")
        rows, across = said.get("rows", ()), said.get("columns", ())
        return Layout(
            self._columns("[layout], rows", columns, rows),
            self._columns("[layout], columns", columns, across),
            said.get("order", ""),
            tuple(said.get("lead", ())),
            self._columns("[layout], aside", columns, said.get("aside", ())),
        )

    def _caution(self, said: dict[str, str]) -> CautionDeclared:
        self._of(said, {"kind", "key"}, "cautions")
        self._of(
            [said.get("kind", "")], CAUTION_KINDS, f"cautions, {said.get('key', '')}", "a kind of caution"
        )
        return CautionDeclared(said["kind"], said["key"])


__all__ = [
    "CAUTION_KINDS",
    "CLAIMS",
    "DECLARATION",
    "FIXED",
    "SHARED",
    "TABLES",
    "WORDED",
    "CautionDeclared",
    "Column",
    "Declaration",
    "Layout",
    "QuantityDeclared",
    "TableRefused",
    "declarations",
    "declared",
    "read_declarations",
    "shared",
]
