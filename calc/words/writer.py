"""Writes facts and messages for a reader: the one place where a number becomes words.

A writer belongs to a language and to the reader's order of units. What it writes is a list of spans, so that nobody has
to find a fraction or a value in a finished sentence again:

    "Each leg pulls "         text
    ["f", "1-3/8"]            a shop fraction
    ["n", [spans]]            a value with its unit, which a line should not part

`plain` makes one text of them.
"""

from __future__ import annotations

import functools
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Literal

from calc.quantities import (
    READING_UNITS,
    fixed_text,
    fraction_steps,
    from_si,
    number_text,
    plain_number,
    round_to,
)
from calc.tables import short_citation, source_title
from calc.words.catalogue import Catalogue, NoWords, catalogue, messages
from calc.words.facts import (
    ROUNDING,
    Absent,
    Cell,
    Fact,
    Listing,
    Message,
    Number,
    Option,
    Place,
    Quantity,
    Unit,
)

UnitSystem = Literal["us", "si"]
Span = str | list[Any]
Spans = list[Span]
Facts = Mapping[str, Fact] | Callable[[str], Fact | None]
"""Facts by name, or a function that finds them by name (None: there is no such fact)."""

UNITS = ("units",)
"""Where unit words stand."""
WRITING = ("writing",)
"""Where stands how numbers and lists are written."""
_OWN_DIGITS = 4
_OF_A_FRACTION = str.maketrans("", "", "-/,")
"""What may stand between the digits of a shop fraction."""


class NoFact(LookupError):
    """A message names a fact that it was not given; the message says which."""


def plain(spans: Span | Sequence[Span]) -> str:
    """Spans as one text.

    >>> plain(["It holds ", ["n", ["5,310", " lb"]], " on ", ["f", "3/8"]])
    'It holds 5,310 lb on 3/8'
    """
    if isinstance(spans, str):
        return spans
    return "".join(
        one if isinstance(one, str) else one[1] if one[0] == "f" else plain(one[1]) for one in spans
    )


def spaced(key: str) -> str:
    """A key as an identifier of the catalogue: `3/8` is `3_8`, `lbf.in` is `lbf-in`, `%` is `percent`."""
    if key.isidentifier():
        return key
    if key == "%":
        return "percent"
    return "".join(one if one.isalnum() or one in "_-" else "-" if one == "." else "_" for one in key)


@dataclass(frozen=True)
class Writer:
    """Writes in one language and one order of units, with the messages of some scopes, the first before the next."""

    units: UnitSystem = "us"
    language: str = "en"
    scopes: tuple[str, ...] = ()

    @property
    def words(self) -> Catalogue:
        """The catalogue of the language."""
        return catalogue(self.language)

    def of(self, *scopes: str) -> Writer:
        """The same writer with the messages of other scopes."""
        return Writer(self.units, self.language, scopes)

    # ---- messages

    def has(self, key: str) -> bool:
        """Whether there are words for a message."""
        return key in messages(self.language, self.scopes)

    def pattern(self, key: str) -> str | list[Any]:
        """The pattern of a message; raises NoWords."""
        found = messages(self.language, self.scopes).get(key)
        if found is None:
            raise NoWords(f"{self.language}: {' and '.join(self.scopes)} has no words for {key}")
        return found

    def say(self, code: str, facts: Facts | None = None) -> Spans:
        """A message in spans; raises NoWords or NoFact."""
        return self._run(self.pattern(code), facts or {}, code)

    def text(self, code: str, **facts: Fact) -> str:
        """A message as one text."""
        return plain(self.say(code, facts))

    def message(self, said: Message) -> Spans:
        """A message that carries its facts."""
        return self.say(said.code, said.facts)

    def plain(self, fact: Fact) -> str:
        """A fact as one text, both units."""
        return plain(self.write(fact))

    def own(self, fact: Quantity, digits: int = _OWN_DIGITS) -> str:
        """A quantity in the reader's own unit alone, as one text."""
        return plain(self.write(fact, "OWN", {"digits": digits}))

    def _run(self, pattern: str | list[Any], facts: Facts, code: str) -> Spans:
        if isinstance(pattern, str):
            return [pattern]
        spans: Spans = []
        for piece in pattern:
            if isinstance(piece, str) or piece[0] == "f":
                spans.append(piece)
            elif piece[0] == "v":
                spans.extend(self.write(self._fact(facts, piece[1], code), piece[2], piece[3]))
            elif piece[0] == "m":
                spans.extend(self._run(self.pattern(piece[1]), facts, piece[1]))
            else:
                chosen = self._variant(self._fact(facts, piece[1], code), piece[2], piece[3])
                spans.extend(self._run(chosen, facts, code))
        return spans

    def _fact(self, facts: Facts, name: str, code: str) -> Fact:
        found = facts(name) if callable(facts) else facts.get(name)
        if found is None:
            raise NoFact(
                f"{' and '.join(self.scopes)}: the message {code} names {name}, which it is not given"
            )
        return found

    def _variant(self, fact: Fact, variants: Mapping[str, Any], default: str) -> Any:
        for key in self._selects(fact):
            if key in variants:
                return variants[key]
        return variants[default]

    def _selects(self, fact: Fact) -> tuple[str, ...]:
        """The variants that a fact fits, the closest first."""
        if isinstance(fact, int):
            return str(fact), self.words.plural_of(fact)
        if isinstance(fact, Number):
            return f"{fact.value:g}", self.words.plural_of(fact.value)
        if isinstance(fact, Cell):
            return fact.value, "one" if _up_to_one(fact.value) else "other"
        if isinstance(fact, Absent):
            return fact.code, "absent"
        if isinstance(fact, Option):
            return (spaced(fact.value),)
        if isinstance(fact, Message):
            return (fact.code,)
        if isinstance(fact, Listing):
            return str(len(fact.items)), self.words.plural_of(len(fact.items))
        return (fact,) if isinstance(fact, str) else ()

    # ---- facts

    def write(self, fact: Fact, function: str = "", options: Mapping[str, int] | None = None) -> Spans:
        """A fact in spans. `function`: OWN (the reader's own unit alone), DIGITS, PLACES."""
        given = options or {}
        if isinstance(fact, str):
            return [fact]
        if isinstance(fact, Quantity):
            return list(
                _quantity(self.units, self.language, fact, function, given.get("digits"), given.get("places"))
            )
        if isinstance(fact, (int, Number)):
            return [self._number(fact if isinstance(fact, Number) else Number(fact, 15), given)]
        if isinstance(fact, Listing):
            return self._listing(fact)
        if isinstance(fact, Message):
            return self.message(fact)
        if isinstance(fact, Absent):
            return self.say(f"absent-{fact.code}", fact.facts)
        if isinstance(fact, Option):
            return self.say(f"option-{fact.input}-{spaced(fact.value)}")
        if isinstance(fact, Cell):
            return self._with_unit(self._cell(fact.value), fact.unit, lambda: fact)
        if isinstance(fact, Unit):
            return [self.unit(fact.symbol)]
        return [self.cite(fact)]

    def _number(self, fact: Number, given: Mapping[str, int]) -> str:
        places = given.get("places", fact.places)
        if places is not None:
            return self._separated(f"{fact.value:,.{places}f}".replace("-", "−"))
        digits = given.get("digits", fact.digits)
        return self._separated(number_text(fact.value, digits, ROUNDING[fact.sense]))

    def quantity(self, fact: Quantity, own: bool, digits: int | None) -> Spans:
        """A quantity in the reader's own unit, and in the other behind it unless `own`."""
        us, si = fact.units or READING_UNITS[fact.dimension]
        first, second = (us, si) if self.units == "us" else (si, us)
        many = _OWN_DIGITS if digits is None and own and fact.places is None else digits
        spans = self.in_unit(fact, first, many)
        if own or us == si:
            return spans
        return [*spans, " (", *self.in_unit(fact, second, many), ")"]

    def with_places(self, fact: Quantity, places: int) -> Spans:
        """A quantity in the reader's own unit, with fixed decimal places."""
        unit = (fact.units or READING_UNITS[fact.dimension])[0 if self.units == "us" else 1]
        number = Number(from_si(fact.value_si, unit, fact.dimension), places=places)
        return self._with_unit([self._number(number, {})], unit, lambda: number)

    def in_unit(self, fact: Quantity, unit: str, digits: int | None = None) -> Spans:
        """A quantity in one unit. Inches over 1/4 in read in sixteenths, like a tape, unless they have a safe side."""
        many = fact.digits if digits is None else digits
        direction = ROUNDING[fact.sense]
        value = from_si(fact.value_si, unit, fact.dimension)
        if digits is None and fact.places is not None:
            fixed = self._separated(fixed_text(value, fact.places, direction))
            return self._with_unit([fixed], unit, lambda: Number(value))
        if unit == "in" and direction == "nearest" and abs(value) >= 0.25 and many <= 3:
            whole, part = fraction_steps(value)
            text = self._mixed(whole, part)
        else:
            text = [self._separated(number_text(value, many, direction))]
        return self._with_unit(text, unit, lambda: Number(round_to(value, many, direction)))

    def _mixed(self, whole: str, part: str) -> Spans:
        """A whole number and a fraction as a shop writes them."""
        if not part:
            return [self._separated(whole)]
        return [["f", f"{self._separated(whole)}-{part}" if whole not in ("", "−") else f"{whole}{part}"]]

    def _cell(self, value: str) -> Spans:
        """A printed value; a fraction is set as one."""
        if "/" in value and value.lstrip("−").translate(_OF_A_FRACTION).isdigit():
            return [["f", self._separated(value)]]
        return [self._separated(value)]

    def _with_unit(self, number: Spans, unit: str, counted: Callable[[], Fact]) -> Spans:
        """A written number with its unit, kept together."""
        if unit in ("", "ratio", "count"):
            return number
        pattern = messages(self.language, UNITS).get(spaced(unit))
        if pattern is None:
            return [["n", [*number, f" {unit}"]]]
        spans: Spans = []
        for piece in pattern:
            if isinstance(piece, str):
                spans.append(piece)
            elif piece[0] == "v":
                spans.extend(number)
            else:
                spans.append(self._variant(counted(), piece[2], piece[3]))
        return [["n", spans]]

    def unit(self, symbol: str) -> str:
        """The name of a unit without a number."""
        named = messages(self.language, UNITS).get(f"{spaced(symbol)}.name")
        return symbol if named is None else str(named)

    def _separated(self, text: str) -> str:
        """Digits with the language's own marks for thousands and decimals."""
        marks = _marks(self.language)
        return text.translate(marks) if marks else text

    def _listing(self, fact: Listing) -> Spans:
        if not fact.items:
            return self.say("listing-empty")
        between, last = self._joint(fact.style)
        spans = self.write(fact.items[0])
        for number, item in enumerate(fact.items[1:], 2):
            spans = [*spans, last if number == len(fact.items) else between, *self.write(item)]
        return spans

    def _joint(self, style: str) -> tuple[str, str]:
        writing = messages(self.language, WRITING)
        return str(writing[f"{style}.between"]), str(writing[f"{style}.last"])

    def cite(self, place: Place) -> str:
        """A source and a place in it, as a shop says it."""
        return _cited(place)


@functools.lru_cache(maxsize=1024)
def _cited(place: Place) -> str:
    return short_citation(source_title(place.source), place.locator)


@functools.lru_cache(maxsize=4096)
def _quantity(
    units: UnitSystem, language: str, fact: Quantity, function: str, digits: int | None, places: int | None
) -> tuple[Span, ...]:
    """A quantity in spans, kept: one answer writes the same pull in its headline, its numbers, its working and its drawing."""
    writer = Writer(units, language)
    if function == "PLACES":
        return tuple(writer.with_places(fact, places or 0))
    return tuple(writer.quantity(fact, function == "OWN", digits))


def in_english(why: Message) -> str:
    """A message of the common scope as English text, for an error that nobody is shown; its code where there are no words."""
    try:
        return plain(Writer().message(why))
    except NoWords:
        return why.code


@functools.cache
def _marks(language: str) -> dict[int, str] | None:
    """What to put for the comma of thousands and the decimal point; None where they stay."""
    writing = messages(language, WRITING)
    group, decimal = str(writing["group"]), str(writing["decimal"])
    return None if (group, decimal) == (",", ".") else {ord(","): group, ord("."): decimal}


def _up_to_one(value: str) -> bool:
    try:
        return 0 < abs(plain_number(value)) <= 1
    except ValueError:
        return False


__all__ = [
    "Facts",
    "NoFact",
    "NoWords",
    "Span",
    "Spans",
    "UnitSystem",
    "Writer",
    "in_english",
    "plain",
    "spaced",
]
