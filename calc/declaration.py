"""The vocabulary in which a worksheet is declared.

A worksheet answers one question of the shop. Its module declares what it asks (Input), what it finds (Result), and three
pure functions: `find` computes a frozen, typed Found from what was given; `judge` turns Found into reasons, once; `work`
lists the lines of the working. `draw` draws Found to scale. Nothing in it is a sentence: the words stand in
docs/words/LANG/worksheets/NAME.ftl, by the codes used here.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from operator import attrgetter
from typing import Any, Generic, TypeVar

from calc.inputs import Given, Input
from calc.quantities import READING_UNITS
from calc.reasons import Reason
from calc.trees import Node, markup
from calc.words.facts import ROUNDING, Absent, Fact, Message, Rounding, Sense
from calc.words.writer import UnitSystem, Writer

SI_SUFFIX = {
    "length": "_m", "area": "_m2", "volume": "_m3", "second_moment": "_m4", "weight": "_kg", "force": "_n", "pressure": "_pa",
    "torque": "_nm", "energy": "_j", "power": "_w", "speed": "_m_per_s", "time": "_s", "angle": "_deg",
    "temperature": "_degc", "temperature_difference": "_k", "density": "_kg_per_m3", "weight_per_length": "_kg_per_m", "weight_per_area": "_kg_per_m2",
    "stiffness": "_n_per_m", "heat_input": "_j_per_m", "force_rate": "_n_per_s", "voltage": "_v", "current": "_a",
    "fraction": "", "": "",
}  # fmt: skip
"""What a field of Found carries behind a result's name: the SI unit of its dimension."""


@dataclass(frozen=True)
class Result:
    """One thing a worksheet finds: the field `NAME` + its SI unit of Found (`leg_tension` of dimension force is
    `leg_tension_n`), or the field `of`.

    sense -- what more of it means; rounding follows (a demand up, a capacity down)
    dimension -- "" for a plain number, a text or a list of either
    printed -- a capacity that is what a mark or table prints, not what may be used here: it may stand beside a stop
    columns -- keys of the columns where the result is a table; Found then has a tuple of `Row`
    Words: `result-NAME`, `column-NAME-KEY`.
    """

    name: str
    dimension: str = ""
    sense: Sense = "plain"
    unit: str = ""
    unit_si: str = ""
    digits: int = 3
    columns: tuple[str, ...] = ()
    of: str = ""
    printed: bool = False

    def __post_init__(self) -> None:
        if self.dimension and not self.unit:
            object.__setattr__(self, "unit", READING_UNITS[self.dimension][0])
        if self.dimension and not self.unit_si:
            object.__setattr__(self, "unit_si", READING_UNITS[self.dimension][1])
        if not self.of:
            object.__setattr__(self, "of", self.name + SI_SUFFIX[self.dimension])

    @property
    def rounding(self) -> Rounding:
        """The safe side of the result's sense."""
        return ROUNDING[self.sense]

    def value_of(self, found: Any) -> Any:
        """The value that Found has for it; a field of a part of Found is written `inspected.decides`."""
        return attrgetter(self.of)(found)

    def reading_unit(self, units: UnitSystem) -> str:
        """The unit in which the value is given."""
        return self.unit if units == "us" else self.unit_si


@dataclass(frozen=True)
class Row:
    """One row of a result that is a table: its cells by column, and a code of its state for the page's colours."""

    cells: Mapping[str, Fact]
    state: str = ""


@dataclass(frozen=True)
class Step:
    """One line of the working: the message `step-CODE` (its name) with the parts `.formula`, `.numbers` and `.result`."""

    code: str
    facts: Mapping[str, Fact] = field(default_factory=dict)


def step(code: str, **facts: Fact) -> Step:
    """A line of the working with its facts; results and inputs of the worksheet need not be named again."""
    return Step(code, facts)


@dataclass(frozen=True)
class Citation:
    """A source (key of tables/sources) and the place in it."""

    source: str
    locator: str = ""


@dataclass(frozen=True)
class Figure:
    """A scale drawing as a tree of SVG, and the same said in words."""

    drawing: Node
    caption: str

    @property
    def svg(self) -> str:
        """The drawing as SVG text."""
        return markup(self.drawing)


@dataclass(frozen=True)
class HandOver:
    """A result that another worksheet asks for: the name of the result, of the worksheet, and the path of its input
    (`load`, `centre[0]`). Both are of one dimension; the value goes over as it is written, rounded on its safe side. What
    both ask for (`job`) goes over as it was typed.
    """

    result: str
    worksheet: str
    input: str


Value = (
    float | int | str | bool | Message | Absent | tuple[float | str | Message | Absent, ...] | tuple[Row, ...]
)
"""What a field of Found may hold for a result: SI numbers, words by code, a reason why there is none, or several."""

F = TypeVar("F")


def _draws_nothing(_found: Any, _writer: Writer) -> Figure | None:
    return None


def _cites_nothing(_found: Any) -> tuple[Citation, ...]:
    return ()


def _says_nothing(_found: Any) -> Mapping[str, Fact]:
    return {}


@dataclass(frozen=True)
class Worksheet(Generic[F]):
    """A worksheet, declared once.

    find -- from what was given to Found; raises BadInput by `given.refuse`
    judge -- from Found to reasons, in the order in which they are told; the first of the heaviest weight leads
    work -- from Found to the lines of the working
    draw -- from Found and a writer to a scale drawing, or None
    large -- the result that stands large, or from Found to it
    example -- raw inputs of the boat-yard example that fills the page
    citations -- what it rests on whatever the inputs; cite -- what these inputs add
    shown -- results whose writing is not simply that of their value, by name
    rates -- whether it judges anything by a rating or limit; where not, ok reads "Worked out"
    hands_over -- results that other worksheets ask for
    shares -- scopes of words that it shares with others (`shared/path-items`)
    Words: `title`, `summary`, `story` (of the example), `opening` and `closing` (the headline's first and last sentence,
    may be left out), `ok` (what ok means here, may be left out).
    """

    name: str
    inputs: tuple[Input, ...]
    results: tuple[Result, ...]
    find: Callable[[Given], F]
    judge: Callable[[F], tuple[Reason, ...]]
    large: str | Callable[[F], str]
    example: Mapping[str, Any]
    citations: tuple[Citation, ...]
    work: Callable[[F], tuple[Step, ...]] = lambda _found: ()
    draw: Callable[[F, Writer], Figure | None] = _draws_nothing
    cite: Callable[[F], tuple[Citation, ...]] = _cites_nothing
    shown: Callable[[F], Mapping[str, Fact]] = _says_nothing
    rates: bool = True
    hands_over: tuple[HandOver, ...] = ()
    shares: tuple[str, ...] = ()
    room: str = ""

    @cached_property
    def by_name(self) -> Mapping[str, Result | Input]:
        """Inputs and results by name; a result before an input of its name."""
        named: dict[str, Result | Input] = {one.name: one for one in self.inputs}
        return named | {one.name: one for one in self.results}

    @property
    def scope(self) -> str:
        """Where its own words stand."""
        return f"worksheets/{self.name}"

    @property
    def scopes(self) -> tuple[str, ...]:
        """Where its words stand: its own, then those it shares."""
        return (self.scope, *self.shares)


__all__ = [
    "Citation",
    "Figure",
    "HandOver",
    "Result",
    "Row",
    "Step",
    "Value",
    "Worksheet",
    "step",
]
