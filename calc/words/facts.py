"""What a finding hands to the words: messages by code, and the facts that they name.

calc decides in codes and numbers; the words stand in docs/words, one catalogue a language. A fact is what a message may
name in braces: a quantity with its dimension and sense, a number, a count, an option of an input, a printed cell of a
table, another message. How a fact is written (units, digits, rounding, plural) is settled by the writer, not here.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

Sense = Literal["plain", "demand", "capacity", "out_at", "out_over", "out_under"]
"""What more of a quantity means. plain: nothing; demand: more is worse (rounds up); capacity: more is better (rounds
down); out_at, out_over: a part is out at this value, or over it (rounds down); out_under: out below it (rounds up)."""

Rounding = Literal["nearest", "up", "down"]

ROUNDING: dict[Sense, Rounding] = {
    "plain": "nearest",
    "demand": "up",
    "capacity": "down",
    "out_at": "down",
    "out_over": "down",
    "out_under": "up",
}
"""The safe side of each sense."""


@dataclass(frozen=True)
class Quantity:
    """A value in the SI unit of its dimension, to be read in both systems; `units`: other than the usual (US, SI) pair;
    `places`: so many decimal places in both units, in the place of `digits`.
    """

    value_si: float
    dimension: str
    sense: Sense = "plain"
    digits: int = 3
    units: tuple[str, str] | None = None
    places: int | None = None


@dataclass(frozen=True)
class Number:
    """A plain number: to so many significant digits, or with fixed decimal `places`."""

    value: float
    digits: int = 3
    sense: Sense = "plain"
    places: int | None = None


@dataclass(frozen=True)
class Cell:
    """A value as its table prints it, with the table's unit: `7,100` lb, `3-1/4` short_ton, `1/2` in."""

    value: str
    unit: str = ""


@dataclass(frozen=True)
class Unit:
    """The name of a unit, as a reader sees it."""

    symbol: str


@dataclass(frozen=True)
class Option:
    """An option of a choice input, by the input's path in the catalogue (`grade`, `parts-shape`) and its value."""

    input: str
    value: str


@dataclass(frozen=True)
class Place:
    """A source (key of tables/sources) and the place in it, as a shop cites it: `29 CFR 1910.184(e)(9)`."""

    source: str
    locator: str


@dataclass(frozen=True)
class Message:
    """Something to be said: the code of a message and the facts it may name."""

    code: str
    facts: Mapping[str, Fact] = field(default_factory=dict)


@dataclass(frozen=True)
class Absent:
    """A value that there is none of, and why: the message `absent-CODE`."""

    code: str
    facts: Mapping[str, Fact] = field(default_factory=dict)


@dataclass(frozen=True)
class Listing:
    """Several facts in a row; `style` says how they are joined: list (a, b, c), and (a, b and c), or (a, b or c), any (a or b
    or c), clauses (a, and b, and c), semicolon (a; b; c), and for the terms of a sum plus (a + b) and space (a b, each with
    its own sign).
    """

    items: tuple[Fact, ...]
    style: Literal["list", "and", "or", "any", "clauses", "semicolon", "plus", "space"] = "list"


Fact = Quantity | Number | Cell | Unit | Option | Place | Message | Absent | Listing | int | str
"""What a message may name. An int is a count; a str stands as it is in every language (what the reader typed, a mark)."""


def message(code: str, **facts: Fact) -> Message:
    """The message `code` with its facts."""
    return Message(code, facts)


def absent(code: str, **facts: Fact) -> Absent:
    """No value, for the reason `code`."""
    return Absent(code, facts)


def force(value_n: float, sense: Sense = "plain", digits: int = 3) -> Quantity:
    """A force [N]."""
    return Quantity(value_n, "force", sense, digits)


def weight(value_kg: float, sense: Sense = "plain", digits: int = 3) -> Quantity:
    """A weight [kg]."""
    return Quantity(value_kg, "weight", sense, digits)


def length(value_m: float, sense: Sense = "plain", digits: int = 3) -> Quantity:
    """A length [m]."""
    return Quantity(value_m, "length", sense, digits)


def share(value: float, sense: Sense = "demand", digits: int = 3) -> Quantity:
    """A share of a whole [-], read in percent."""
    return Quantity(value, "fraction", sense, digits)


def degrees(value_degc: float, sense: Sense = "plain") -> Quantity:
    """A temperature [deg C], read in whole degrees of both scales."""
    return Quantity(value_degc, "temperature", sense, places=0)


def known(
    value: float | Absent, dimension: str, sense: Sense = "plain", digits: int = 3
) -> Quantity | Absent:
    """The quantity, or the reason why there is none."""
    return value if isinstance(value, Absent) else Quantity(value, dimension, sense, digits)


__all__ = [
    "ROUNDING",
    "Absent",
    "Cell",
    "Fact",
    "Listing",
    "Message",
    "Number",
    "Option",
    "Place",
    "Quantity",
    "Rounding",
    "Sense",
    "Unit",
    "absent",
    "degrees",
    "force",
    "known",
    "length",
    "message",
    "share",
    "weight",
]
