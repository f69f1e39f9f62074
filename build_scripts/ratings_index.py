"""Every rating of the book as one line: the plain list of ratings is made of these, and so are the cards of the search."""

from __future__ import annotations

from dataclasses import dataclass, replace

from build_scripts import table_words
from build_scripts.look_up_pages import address as address_of
from build_scripts.markup import measured
from build_scripts.table_declaration import declared
from build_scripts.table_view import SYSTEM_ORDER, companions, row_text
from calc.tables import Row, table, table_names


class AmbiguousRating(ValueError):
    """Two ratings that differ would stand under one name: a reader could take the wrong one."""


@dataclass(frozen=True)
class Entry:
    """One rating: what it is, the answer, what it is for, where it stands, and its row."""

    label: str
    answer: str
    use: str
    address: str
    table: str
    row: Row


def entries() -> tuple[Entry, ...]:
    """Every rating of every table, tie-down and straight pulls first within a table."""
    made: list[Entry] = []
    for name in table_names():
        said, data = declared(name), table(name)
        merged: dict[str, tuple[int, Row]] = {}
        for index, row in enumerate(data.rows):
            if not said.is_rating(row) or row["unit"] == "text":
                continue
            label = row_text(name, row)
            if row["quantity"] != _USUAL:
                quantity = table_words.quantity(name, row["quantity"])
                label += f", {quantity[:1].lower()}{quantity[1:]}"
            answer = measured(row["value"], row["unit"])
            if label in merged:
                place, before = merged[label]
                if not _same_but_unit(name, before, row):
                    raise AmbiguousRating(f"{name}: two ratings go by the name {label}")
                first = made[place]
                both, address = f"{first.answer} ({answer})", first.address
                if row["unit"] in SYSTEM_ORDER and before["unit"] not in SYSTEM_ORDER:
                    both, address = f"{answer} ({first.answer})", address_of(name, index)
                made[place] = replace(first, answer=both, address=address)
                continue
            has_pair = any(
                other["unit"] != row["unit"] and _same_but_unit(name, other, row) for other in data.rows
            )
            beside = "" if has_pair else "; ".join(f"≈\u00a0{m.text}" for m in companions(name, row)[-1:])
            merged[label] = (len(made), row)
            made.append(
                Entry(
                    label,
                    answer + (f" ({beside})" if beside else ""),
                    table_words.text(name, f"use-{said.use}.short"),
                    address_of(name, index),
                    name,
                    row,
                )
            )
    return tuple(made)


_USUAL = "working_load_limit"
"""The quantity that a rating is unless its line says otherwise."""


def _same_but_unit(name: str, one: Row, other: Row) -> bool:
    """Whether two rows are one rating, printed in two units."""
    same = ({*declared(name).key} | {"source"}) - {"unit"}
    return all(one[key] == other[key] for key in same)
