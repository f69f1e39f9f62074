"""Rows of tables that a question can name: by a size, or by a material. A page that is found leads to that row."""

from __future__ import annotations

from collections.abc import Callable

from build_scripts.table_declaration import declared
from build_scripts.table_view import size_number
from calc.tables import table, table_names

BY_NAME = {"densities": "material_name"}
"""Tables whose rows are named by a word, and the column of it."""


def rows_by_size(address_of: Callable[[str], str | None]) -> dict[str, list[tuple[float, str]]]:
    """For the page of each table with sizes in inches: the size, and the name of its first cell in the page. Ratings are
    left to the cards: what is asked of a bent part must not lead to what a sound one carries.
    """
    found: dict[str, list[tuple[float, str]]] = {}
    for name in table_names():
        keys = declared(name).with_role("size_inch", "thread")
        rated = any(declared(name).is_rating(row) for row in table(name).rows)
        address = address_of(name) if keys and not rated else None
        if address is None:
            continue
        places: dict[float, str] = {}
        for index, row in enumerate(table(name).rows):
            size = size_number(row[keys[0]])
            if size is not None:
                places.setdefault(size, f"c-{index}")
        found[address] = list(places.items())
    return found


def rows_by_name(address_of: Callable[[str], str | None]) -> dict[str, list[tuple[str, str]]]:
    """For the page of each table in BY_NAME: the words of a row, and the name of its first cell in the page."""
    found: dict[str, list[tuple[str, str]]] = {}
    for name, column in BY_NAME.items():
        address = address_of(name)
        if address is None:
            continue
        places: dict[str, str] = {}
        for index, row in enumerate(table(name).rows):
            places.setdefault(row[column].replace("-", " "), f"c-{index}")
        found[address] = list(places.items())
    return found


__all__ = ["rows_by_name", "rows_by_size"]
