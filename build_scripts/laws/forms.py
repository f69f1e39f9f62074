"""Laws of form: how a cell must be written, wherever it stands, and how a declaration must fit together.

They know nothing of chain or rope. They know that a table has its own closed lists of words, that a source numbers its
own sections and prints in its own units, that a locator names the row it points at, and to what step a source prints;
each table declares its own. One law of each kind is made for each table, so that a change asks that table's laws alone.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache, partial

from build_scripts import table_words
from build_scripts.laws.agreed import law_agreed
from build_scripts.laws.tools import Law, Row, Tables, exact
from build_scripts.table_declaration import Column, QuantityDeclared

# ---------------------------------------------------------------------------------- words, patterns and keys


@cache
def _cell_problem(column: Column, cell: str) -> str:
    if not cell:
        return "" if column.optional else "is empty"
    if column.allowed and cell not in column.allowed:
        return f"{cell} is not a word of this column"
    if column.pattern and not re.fullmatch(column.pattern, cell):
        return f"{cell} is not written as this column is"
    if column.type == "number" and not re.fullmatch(r"-?[0-9]+(\.[0-9]+)?", cell):
        return f"{cell} is not a number"
    return ""


_WELL_WRITTEN = re.compile(
    r"-?([1-9][0-9]{0,2}(,[0-9]{3})*|[1-9][0-9]*|0)(\.[0-9]+)?|([1-9][0-9]*-)?[1-9][0-9]*/[1-9][0-9]*"
)


@cache
def _badly_written(value: str) -> bool:
    """Leading zero, comma astray, a fraction not in lowest terms or above one (some wear tables keep to 64ths)."""
    if not _WELL_WRITTEN.fullmatch(value):
        return True
    if "/" not in value:
        return False
    above, below = (int(part) for part in value.rpartition("-")[2].split("/"))
    lowest = exact(f"{above}/{below}")
    return above >= below or (below != 64 and (lowest.numerator, lowest.denominator) != (above, below))


def _form_words(name: str, tables: Tables) -> list[str]:
    """Every word is one of its column's words and every number is written as shops and standards write it; every key
    stands once, every source has a card, every note has words.
    """
    rows, declared = tables[name], tables.declared[name]
    found = [
        f"{name}/claims.csv, row {number}, column {column.name}: {problem}"
        for number, row in enumerate(rows, start=2)
        for column in declared.columns.values()
        if (problem := _cell_problem(column, row[column.name]))
    ]
    found += [
        f"{name}/claims.csv, row {number}: {row['value']} is not written as a number of this book is"
        for number, row in enumerate(rows, start=2)
        if row["unit"] != "text" and _badly_written(row["value"])
    ]
    if len({tuple(row[column] for column in declared.key) for row in rows}) != len(rows):
        found.append(f"{name}/claims.csv: two rows have the same key ({', '.join(declared.key)})")
    cards = {card["key"] for card in tables["sources"]}
    found += [f"{name}/claims.csv: no card for {row['source']}" for row in rows if row["source"] not in cards]
    return found + [
        f"{name}/claims.csv: docs/words has no note-{note} for the table"
        for note in dict.fromkeys(row["note"] for row in rows)
        if note and not _has_note(name, note)
    ]


@cache
def _has_note(name: str, note: str) -> bool:
    return table_words.has(name, f"note-{note}")


# ---------------------------------------------------------------------------------- where a source keeps its figures


@cache
def _place_is_of(pattern: str, locator: str) -> bool:
    return re.fullmatch(pattern, locator) is not None


def _form_places(name: str, tables: Tables) -> list[str]:
    """Every locator is a place that its source has: [places] of table.toml, from the numbering of each source."""
    places = tables.declared[name].places
    return [
        f"{name}/claims.csv, row {number}: {row['source']} has no place called {row['locator']}; "
        "see [places] of table.toml"
        for number, row in enumerate(tables[name], start=2)
        if not _place_is_of(places.get(row["source"], "(?!)"), row["locator"])
    ]


@cache
def _names(locator: str, cell: str) -> bool:
    return re.search(rf"(?<![0-9./-]){re.escape(cell.replace('_', ' '))}(?![0-9/-])", locator) is not None


def _form_locators(name: str, tables: Tables) -> list[str]:
    """Where the locator names the line of a printed table it names the line the row is about (`locator_names`)."""
    return [
        f"{name}/claims.csv: the locator {row['locator']} does not name {column} {row[column]}"
        for row in tables[name]
        for column in tables.declared[name].locator_names
        if not _names(row["locator"], row[column])
    ]


# ---------------------------------------------------------------------------------- units and steps


def _form_units(name: str, tables: Tables) -> list[str]:
    """The unit is one the quantity is printed in, and one that its source prints (`prints` of its card)."""
    found = []
    prints = {card["key"]: card["prints"] for card in tables["sources"]}
    quantities, systems = tables.declared[name].quantities, tables.common["systems"]
    for number, row in enumerate(tables[name], start=2):
        quantity, unit, source = quantities.get(row["quantity"]), row["unit"], row["source"]
        place = f"{name}/claims.csv, row {number}"
        other = {"us": "si", "si": "us"}.get(prints.get(source, ""), "")
        if quantity is None or unit not in quantity.units:
            found.append(f"{place}: {row['quantity']} is not measured in {unit}")
        elif unit in systems.get(other, ()):
            found.append(f"{place}: {source} does not print in {unit}")
        elif unit != quantity.only.get(source, unit):
            found.append(f"{place}: {source} prints {row['quantity']} in {quantity.only[source]}, not {unit}")
    return found


def _form_steps(name: str, tables: Tables) -> list[str]:
    """A column goes in the step to which its source prints it (`steps` of the quantity)."""
    found = []
    quantities = tables.declared[name].quantities
    for row in tables[name]:
        step = quantities[row["quantity"]].steps.get(row["unit"]) if row["quantity"] in quantities else None
        if step and not _badly_written(row["value"]) and exact(row["value"]) % exact(step):
            found.append(
                f"{name}/claims.csv {row['quantity']}: {row['value']} {row['unit']} is no step of {step}"
            )
    return found


# ---------------------------------------------------------------------------------- meanings


def _form_meanings(name: str, tables: Tables) -> list[str]:
    """A rating is a capacity; a sense stands with the row or with the quantity; use fits what is rated; one quantity
    means one thing in every table; the two ends of a range are there.
    """
    declared, found = tables.declared[name], []
    by_row = "sense" in declared.columns
    for quantity in declared.quantities.values():
        place = f"{name}/table.toml, [quantities.{quantity.name}]"
        if quantity.rating and quantity.sense != "capacity":
            found.append(f"{place}: a rating is a capacity, not {quantity.sense}")
        if (quantity.sense == "by_row") != by_row:
            found.append(f"{place}: sense by_row goes with a column sense in claims.csv, and only with it")
        if quantity.range and {
            one.end for one in declared.quantities.values() if one.range == quantity.range
        } != {"from", "to"}:
            found.append(f"{place}: the range {quantity.range} needs one end from and one end to")
        found += [
            f"{place}: is {quantity.sense} here, {other.sense} in {table}; one quantity means one thing"
            for table, other in _elsewhere(tables, name, quantity.name)
            if other.sense not in ("by_row", quantity.sense) and quantity.sense != "by_row"
        ]
    rated = any(quantity.rating for quantity in declared.quantities.values())
    if (declared.use == "lift" and not rated) or (declared.use == "lifting_gear" and rated):
        found.append(
            f"{name}/table.toml: use is lift where a quantity is a rating, lifting_gear where none is"
        )
    return found


def _elsewhere(tables: Tables, name: str, quantity: str) -> list[tuple[str, QuantityDeclared]]:
    return [
        (table, declared.quantities[quantity])
        for table, declared in tables.declared.items()
        if table != name and quantity in declared.quantities
    ]


def _rules(rows: list[Row]) -> bool:
    return bool(rows) and "rule" in rows[0]


FORMS: dict[str, Callable[[str, Tables], list[str]]] = {
    "words": _form_words,
    "places": _form_places,
    "locators": _form_locators,
    "units": _form_units,
    "steps": _form_steps,
    "meanings": _form_meanings,
}


def form_laws(tables: Tables) -> tuple[Law, ...]:
    """Every law of form for every table but the list of sources; what is agreed of rules in words is their own law."""
    found = []
    for name, declared in tables.declared.items():
        if name == "sources":
            continue
        for form, check in FORMS.items():
            if form == "locators" and not declared.locator_names:
                continue
            if form == "steps" and not any(one.steps for one in declared.quantities.values()):
                continue
            found.append(Law(name, f"form_{form}", partial(check, name), form=True))
        found.append(Law(name, "agreed", partial(law_agreed, name), form=not _rules(tables[name])))
    return tuple(found)
