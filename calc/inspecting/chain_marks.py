"""What grade do the marks on a chain name, and which sizes can a measured wire be?

Marks: 49 CFR 393.108 (chain mark examples) and the letters of European lifting chain, in tables/chain-marks.csv.
Sizes: those of the tie-down and lifting tables. A worn link measures thin, so every size that the wire may once have
been is kept; none is picked in silence.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from calc.marks import may_lift, read_grade
from calc.quantities import NotReadable, fraction_text, from_si, plain_number, read_quantity, to_si
from calc.tables import table
from calc.words.facts import Cell, Listing, Message, message

THICKEST_OVER_NOMINAL = 1.08
"""Wire runs over its nominal size by up to this ratio [-]: 7/16 in transport chain is made of 11.9 mm wire, 7 percent
over 11.1 mm. From memory of ASTM A413; held by the grade relation of that size (tests/published)."""

THINNEST_OVER_NOMINAL = 0.69
"""A wire thinner than this ratio [-] of a size is not taken for that size. It is low enough that wire of any size that is
itself not worn out may still be the next larger one, worn: 3/8 in at its limit of 9 mm is 0.71 of 1/2 in. (The loosest limit
that any source prints is a quarter worn away, NAVEDTRA 14251, chapter 6.)"""

SHORTEST_PITCH_OVER_WIRE = 2.7
"""Inside length of a link over its wire [-]: short-link chain is made at 3 wire diameters (EN 818-2, from memory);
a link does not shrink, so a tenth under that is not this size."""

LONGEST_PITCH_OVER_WIRE = 4.0
"""Coil chain for tie-downs runs to about 3.7 wire diameters (ASTM A413, from memory), some more when stretched [-]."""

LONGEST_SHORT_LINK_OVER_WIRE = 3.4
"""Lifting chain: 3 wire diameters and a stretch of about a tenth, the loosest that any source allows [-]."""


@dataclass(frozen=True)
class ChainSize:
    """One size of chain: its inch names (tie-down and lifting tables may differ), its metric name, and the thinnest
    and thickest wire [m] that those names mean when new.
    """

    inch_names: tuple[str, ...]
    metric_name: str
    thinnest_m: float
    thickest_m: float

    @property
    def said(self) -> Message:
        """The size as a shop says it: `3/8 in (10 mm)`."""
        inches = tuple(Cell(name, "in") for name in self.inch_names)
        return message("chain-size", inches=Listing(inches, "any"), metric=self.metric_name)


def chain_sizes() -> tuple[ChainSize, ...]:
    """Every size of the tie-down and the lifting table, smallest first. Names that share a metric size are one size."""
    names: dict[str, list[str]] = {}
    for table_name in ("chain-tie-down", "chain-lifting"):
        for row in table(table_name).rows:
            inch_names = names.setdefault(row["size_mm"], [])
            if row["size_in"] not in inch_names:
                inch_names.append(row["size_in"])
    sizes = []
    for metric, inch_names in names.items():
        wires = [to_si(plain_number(name), "in", "length") for name in inch_names]
        wires.append(to_si(plain_number(metric), "mm", "length"))
        sizes.append(ChainSize(tuple(inch_names), metric, min(wires), max(wires)))
    return tuple(sorted(sizes, key=lambda size: size.thickest_m))


def size_named(typed: str) -> ChainSize | None:
    """The size written as `3/8`, `3/8 in`, `0.375` or `10 mm`; None where the tables have none of that name."""
    bare = typed.strip().rstrip('"').removesuffix("in").strip()
    try:
        reading = read_quantity(typed, "length", "in")
    except NotReadable:
        return None
    for size in chain_sizes():
        if reading.unit == "mm":
            if abs(reading.value_si - to_si(float(size.metric_name), "mm", "length")) < 1e-9:
                return size
        elif bare in size.inch_names or _as_fraction(reading.value_si) in size.inch_names:
            return size
    return None


def _as_fraction(length_m: float) -> str:
    return fraction_text(from_si(length_m, "in", "length"), 64)


def sizes_of_wire(measured_m: float) -> tuple[ChainSize, ...]:
    """The sizes that a wire of `measured_m` [m] may be, new or worn, smallest first."""
    return tuple(
        size
        for size in chain_sizes()
        if size.thinnest_m * THINNEST_OVER_NOMINAL <= measured_m <= size.thickest_m * THICKEST_OVER_NOMINAL
    )


def pitch_fits(pitch_m: float, size: ChainSize, short_link: bool) -> bool:
    """Whether a link of this inside length [m] can be of this size; `short_link` for chain that is made to lift."""
    longest = LONGEST_SHORT_LINK_OVER_WIRE if short_link else LONGEST_PITCH_OVER_WIRE
    return size.thinnest_m * SHORTEST_PITCH_OVER_WIRE <= pitch_m <= size.thickest_m * longest


@dataclass(frozen=True)
class Marks:
    """What the marks say: the grades they may mean, the sizes they name, and the words not understood. `looked`: whether
    anybody looked for marks at all.
    """

    grades: tuple[str, ...]
    sizes: tuple[ChainSize, ...]
    not_read: tuple[str, ...]
    looked: bool = True


_ANY_GRADE = "80"
_NO_MARKS = ("NONE", "UNMARKED", "NO MARK", "NO MARKS")
"""How a reader says that he looked and there is no mark."""
_SIZE_MARK = re.compile(
    r'(?<![\w/])(?:(?P<mm>\d+(?:\.\d+)?)\s*MM|(?P<inch>(?:[12][ -])?\d+/\d+)\s*(?:IN|INCH|")?)(?![\w/])'
)


def read_marks(marks: str) -> Marks:
    """Read marks as a person notes them: `G70`, `T 8`, `3/8 80`, `10 mm 10`, `700`; `none` where there are none.

    A number that is also a European lifting grade of the tables (4, 5, 8) may mean either; both are kept. What is no mark
    of the table, a size that no table has included, is returned in `not_read`.
    """
    text = " ".join(marks.upper().split())
    if not text or text in _NO_MARKS:
        return Marks((), (), (), looked=bool(text))
    sizes: list[ChainSize] = []
    not_read: list[str] = []
    for match in _SIZE_MARK.finditer(text):
        named = _named(match)
        sizes += [size for size in named if size not in sizes]
        not_read += [] if named else [match[0].strip()]
    rest = _SIZE_MARK.sub(" ", text)
    rest = re.sub(r"\b(GRADE|GR|G)[\s.-]*(?=\d)", "G", rest)
    grades: list[str] = []
    for word in re.findall(r"[^\s,;/()]+", rest):
        meant = read_grade(word).grades
        grades += [grade for grade in meant if grade not in grades]
        if not meant and not _says_nothing(word):
            not_read.append(word)
    return Marks(tuple(grades), tuple(sizes), tuple(not_read))


def _says_nothing(word: str) -> bool:
    """Whether a word is one that people write beside a grade and that changes nothing: grade, chain, steel."""
    return read_grade(f"{word} {_ANY_GRADE}").grades == (_ANY_GRADE,)


def _named(match: re.Match[str]) -> tuple[ChainSize, ...]:
    if match["mm"] is not None:
        wanted = float(match["mm"])
        return tuple(size for size in chain_sizes() if float(size.metric_name) == wanted)
    wanted_inch = match["inch"].replace(" ", "-")
    return tuple(size for size in chain_sizes() if wanted_inch in size.inch_names)


__all__ = [
    "ChainSize",
    "Marks",
    "chain_sizes",
    "may_lift",
    "pitch_fits",
    "read_marks",
    "size_named",
    "sizes_of_wire",
]
