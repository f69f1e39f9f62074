"""The tie-downs on a load: how each is described, what its weakest part allows, and which way it pulls.

Question of the trade: what does this strap or chain count for, as it runs here? The limit of a tie-down is that of its
weakest part: its own, the tensioner's, the anchor's (49 CFR 393.108(a)). A tie-down counts only where all of them are
known and its reader says that it is marked and good; the table of 393.108 stands for a grade mark on chain in the United
States alone. The words stand in worksheets/tie-down.

Which line of the label a number comes from is asked, because the same strap bears several. The law of the United States and
of Canada counts working load limits (WLL). A lashing capacity (LC, EN 12195-2 and -3) is half of what breaks the assembly, a
WLL a third of it for webbing (WSTDA-T1, read in a reprint) and a quarter for most chain, so an LC that were counted as a WLL
would count up to twice too much: by that law it counts for nothing. The other way round a WLL that stands for an LC is
counted too low, which the forces and Europe may do. A maximum securing load (MSL, at sea up to 80 % of what breaks a wire
rope, CSS Code, Annex 13), a breaking strength, or a limit for lifting counts for nothing anywhere.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

from calc.comparing import exceeds
from calc.declaration import Citation
from calc.hauling.lashing_count import check_tension
from calc.hauling.lashing_forces import DIRECTIONS, Direct, OverTop
from calc.hauling.securing_law import ROLES, counted_share
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, Input, QuantityInput, TextInput
from calc.lifting.chain_spring import THICKER_THAN_NAMED, most_of_chain_kg
from calc.lifting.condition import ALTERED, GOOD, condition_of
from calc.lifting.own_part import OwnPart, own_part_inputs, own_part_of
from calc.marks import read_grade
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, NotReadable, read_quantity
from calc.ratings import NotRated, Rating, chain_tie_down
from calc.tables import table
from calc.words.facts import Listing, Message, Quantity, length, message

KINDS = ("web", "chain", "wire-rope", "other")
CONDITIONS = (GOOD, "unmarked", "worn", "damaged", *ALTERED)
FORBIDDEN = ("damaged", *ALTERED)
"""Conditions that take a tie-down out of use: no damaged or weakened part (393.104(b)), no knots, no mending."""
LABELS = ("wll", "lc", "other")
"""What the limits on the labels of a tie-down say they are: all WLL; one or more of them LC; anything else."""
_COUNTED_LABELS = ("wll", "lc")
_WITH_TENSIONER = ("chain", "wire-rope")
"""Kinds whose tensioner is a part of its own with its own mark."""

Way = tuple[int, int]
"""Which way a tie-down pulls the load: forward (1) or rearward (-1) or neither, left (1) or right (-1) or neither."""
PULLS: Mapping[str, tuple[Way, ...]] = {
    "front-pair": ((1, 1), (1, -1)),
    "rear-pair": ((-1, 1), (-1, -1)),
    "four-corners": ((1, 1), (1, -1), (-1, 1), (-1, -1)),
    "both-sides": ((0, 1), (0, -1)),
    "front-left": ((1, 1),),
    "front-right": ((1, -1),),
    "rear-left": ((-1, 1),),
    "rear-right": ((-1, -1),),
    "left": ((0, 1),),
    "right": ((0, -1),),
}
"""Ways of the tie-downs that one row stands for."""
SIDEWAYS = ("both-sides", "left", "right")
MARK_AGREES = 0.02
"""A mark and the table agree if they differ by no more than this share [-] (our own mark: rounding to another unit)."""
MOST_LIMIT_LB = 50_000.0
"""No strap, chain, binder or anchor of the road is marked with more [lb]: 16 mm chain of grade 10 has an LC of 200 kN, which is
45,000 lb (our own mark). More was misread, or is what breaks it."""
LC_OVER_WLL = 2.0
"""An LC of chain is half of what breaks it (EN 12195-3), its WLL a quarter: twice as much [-]."""
FARTHEST_ACROSS_IN = 160.0
"""No anchor of a road vehicle lies farther to the side of what it ties [in]: one and a half times the 102 in that it may be wide
(our own mark). A number of millimetres in a box of inches is more."""
RAIL_DROP_M = 0.61
"""An anchor may lie so far below the deck, at a rub rail (two feet: our own mark, no source) [m]."""


def tie_down_inputs() -> tuple[Input, ...]:
    """What is asked of each row; one that pulls to two or four corners alike stands in one row."""
    reach = Bounds(at_least=0, at_most=400)
    limit = Bounds(above=0, at_most=MOST_LIMIT_LB)
    fixed = {"role": ("direct",)}
    chained = {"kind": _WITH_TENSIONER}
    return (
        *own_part_inputs(),
        ChoiceInput("role", choices=ROLES),
        ChoiceInput("kind", choices=KINDS),
        ChoiceInput("condition", choices=CONDITIONS, required=False),
        ChoiceInput("label", choices=LABELS, required=False),
        QuantityInput("limit", dimension="force", bounds=limit, required=False, sense="capacity"),
        TextInput("grade", required=False, shown_when={"kind": ("chain",)}),
        TextInput("size", required=False, shown_when={"kind": ("chain",)}),
        QuantityInput(
            "tensioner_limit",
            dimension="force",
            bounds=limit,
            required=False,
            sense="capacity",
            shown_when=chained,
        ),
        QuantityInput(
            "tension",
            dimension="force",
            bounds=Bounds(above=0, at_most=20_000),
            required=False,
            sense="capacity",
            shown_when={"role": ("over-top",)},
        ),
        CountInput("count", bounds=Bounds(at_least=1, at_most=40), shown_when={"role": ("over-top",)}),
        ChoiceInput("pulls", choices=tuple(PULLS), shown_when={"role": ("direct", "same-side")}),
        QuantityInput("along", dimension="length", bounds=reach, shown_when=fixed),
        QuantityInput("across", dimension="length", bounds=Bounds(at_least=0, at_most=FARTHEST_ACROSS_IN)),
        QuantityInput("down", dimension="length", bounds=reach),
        QuantityInput(
            "lashing_length", dimension="length", bounds=Bounds(above=0, at_most=2000), required=False
        ),
    )


@dataclass(frozen=True)
class Load:
    """The size of the load [m], as far as tie-downs must reach over it."""

    width_m: float
    height_m: float


@dataclass(frozen=True)
class TieDown:
    """One row: a tie-down, or several alike.

    own_n -- the limit of strap, chain or rope by its mark or the table [N]; None where it is not known
    label -- what its own limit and its tensioner's say they are; anchor_label -- what the anchor's says it is
    in_dan -- whether a limit was typed in daN, the unit of European labels
    own_part -- which of the reader's own parts it is; None where he names none
    limit_n -- of its weakest part [N]; nothing where it does not count
    """

    place: int
    role: str
    kind: str
    condition: str
    label: str
    country: str
    number: int
    ways: tuple[Way, ...]
    along_m: float
    across_m: float
    down_m: float
    fixed_at_most_m: float
    own_n: float | None
    tensioner_n: float | None
    anchor_n: float | None
    anchor_label: str
    tension_n: float | None
    in_dan: bool = False
    rating: Rating | None = None
    own_part: OwnPart | None = None

    @property
    def name(self) -> Message:
        """What it is called: its place in the list and its kind."""
        return message("tie-down-by-place", place=self.place + 1, kind=self.kind)

    @property
    def lacks_tensioner(self) -> bool:
        """Whether its tensioner counts and is not known."""
        return self.kind in _WITH_TENSIONER and self.tensioner_n is None

    @property
    def forbidden(self) -> bool:
        """Whether it may not be used at all."""
        return self.condition in FORBIDDEN

    @property
    def fully_known(self) -> bool:
        """Whether it is good, and the limits of all its parts are known."""
        return (
            self.condition == GOOD
            and self.own_n is not None
            and self.anchor_n is not None
            and not self.lacks_tensioner
            and self.label in _COUNTED_LABELS
            and self.anchor_label in _COUNTED_LABELS
        )

    @property
    def law_counts(self) -> bool:
        """Whether the law counts it: known, and outside Europe by working load limits alone."""
        by_limits = self.country == "europe" or self.label == self.anchor_label == "wll"
        return self.fully_known and by_limits

    @property
    def limit_n(self) -> float:
        """The limit of its weakest part [N]; nothing where it does not count."""
        parts = [one for one in (self.own_n, self.tensioner_n, self.anchor_n) if one is not None]
        return min(parts) if self.fully_known else 0.0

    @property
    def counted_n(self) -> float:
        """What the law counts of all of this row [N]."""
        return self.number * counted_share(self.role) * self.limit_n if self.law_counts else 0.0

    @property
    def counts(self) -> bool:
        """Whether the forces can count it: known, and tensioned by a known pull where it goes over the top."""
        return self.fully_known and (self.role != "over-top" or self.tension_n is not None)

    @property
    def straps(self) -> tuple[OverTop, ...]:
        """The straps over the top that it stands for, as the forces count them."""
        if self.role != "over-top" or not self.counts or self.tension_n is None:
            return ()
        return (OverTop(self.tension_n, self.across_m, self.down_m),) * self.number

    @property
    def direct(self) -> tuple[Direct, ...]:
        """The direct lashings that it stands for. One round the load and back to the same side counts once: New Zealand
        counts it so, Australia twice.
        """
        if self.role == "over-top" or not self.counts:
            return ()
        return tuple(
            Direct(
                forward * self.along_m,
                left * self.across_m,
                self.down_m,
                self.limit_n,
                self.fixed_at_most_m,
            )
            for forward, left in self.ways
        )

    @property
    def citations(self) -> tuple[Citation, ...]:
        """Where its limit stands."""
        return (Citation(self.rating.source, self.rating.locator),) if self.rating else ()


def read_tie_downs(given: Given, country: str, load: Load) -> tuple[TieDown, ...]:
    """The rows as read; refuses those that cannot be so, by their box."""
    rows = given.rows("tie_downs")
    anchor = _Anchor(given.maybe("anchor_limit"), given.text("anchor_label"))
    items = tuple(_read(row, place, country, load, anchor) for place, row in enumerate(rows))
    _refuse_web_beside_chain(rows, items)
    return items


@dataclass(frozen=True)
class _Anchor:
    """The limit of the weakest anchor [N], if it is known, and what it says it is."""

    limit_n: float | None
    label: str


def _read(row: Given, place: int, country: str, load: Load, anchor: _Anchor) -> TieDown:
    role, over = row.text("role"), row.text("role") == "over-top"
    own = _own_limit(row, country)
    _check_geometry(row, role, load)
    ways = () if over else PULLS[row.text("pulls")]
    tension_n = row.maybe("tension") if over else None
    if tension_n is not None:
        check_tension(row, tension_n, own.limit_n, strap=row.text("kind") == "web")
    return TieDown(
        place=place,
        role=role,
        kind=row.text("kind"),
        condition=condition_of(row),
        label=row.text("label"),
        country=country,
        number=row.count("count") if over else len(ways),
        ways=ways,
        along_m=row.si("along") if role == "direct" else 0.0,
        across_m=row.si("across"),
        down_m=row.si("down"),
        fixed_at_most_m=load.height_m,
        own_n=own.limit_n,
        tensioner_n=row.maybe("tensioner_limit") if row.text("kind") in _WITH_TENSIONER else None,
        anchor_n=anchor.limit_n,
        anchor_label=anchor.label,
        tension_n=tension_n,
        in_dan=any("dan" in row.typed.get(box, "").casefold() for box in ("limit", "tensioner_limit")),
        rating=own.rating,
        own_part=own_part_of(row),
    )


@dataclass(frozen=True)
class _Own:
    """The limit of strap, chain or rope itself [N], and the row of the table if one counts."""

    limit_n: float | None
    rating: Rating | None = None


def _own_limit(row: Given, country: str) -> _Own:
    """By the mark, and by the table of the law where chain shows its grade; refused if they do not agree, else the lower."""
    marked_n = row.maybe("limit")
    if row.text("kind") != "chain":
        return _Own(marked_n)
    grades = _grades(row)
    if country != "us":
        _refuse_more_than_such_chain(row, grades, marked_n)
        return _Own(marked_n)
    rating = _table_rating(row, grades)
    if rating is None:
        return _Own(marked_n)
    table_n = rating.working_load_limit_kg * STANDARD_GRAVITY_M_PER_S2
    if marked_n is None:
        return _Own(table_n, rating)
    low_n, high_n = sorted((marked_n, table_n))
    if exceeds(high_n, (1.0 + MARK_AGREES) * low_n):
        raise row.refuse("limit", "mark-against-table", printed=rating.cell)
    return _Own(low_n, rating)


def _grades(row: Given) -> tuple[str, ...]:
    """The grades of tie-down chain that the mark can name; none where it is not given. Refuses what is not understood, in every
    country, and a size that is none.
    """
    if row.has("size"):
        _wire_m(row)
    if not row.has("grade"):
        return ()
    listed = table("chain-tie-down").values("grade")
    grades = tuple(grade for grade in read_grade(row.text("grade")).grades if grade in listed)
    if not grades:
        raise row.refuse("grade", "grade-not-understood", grades=Listing(listed))
    return grades


def _wire_m(row: Given) -> float:
    """The size of a chain [m]; a bare number is of inches."""
    try:
        wire_m = read_quantity(row.text("size"), "length", "in").value_si
    except NotReadable as reason:
        raise row.refuse("size", "size-not-understood", reason=reason.why) from reason
    if wire_m <= 0.0:
        raise row.refuse("size", "size-not-understood", reason=message("unreadable-too-small"))
    return wire_m


def _table_rating(row: Given, grades: tuple[str, ...]) -> Rating | None:
    """The row of the law's table for a chain's grade and size; None where one of them is not given. A mark that can name
    several grades counts as the weakest.
    """
    if not grades or not row.has("size"):
        return None
    try:
        found = [chain_tie_down(grade, row.text("size")) for grade in grades]
    except NotRated as reason:
        raise row.refuse("size", "not-rated", reason=reason.why) from reason
    return min(found, key=lambda one: one.working_load_limit_kg)


def _refuse_more_than_such_chain(row: Given, grades: tuple[str, ...], marked_n: float | None) -> None:
    """Where no law prints a table for it: a limit that no chain of that grade and size is marked with."""
    if marked_n is None or not grades or not row.has("size"):
        return
    times = 1.0 if row.text("label") == "wll" else LC_OVER_WLL
    most_n = times * _most_of_such_chain_kg(row, grades) * STANDARD_GRAVITY_M_PER_S2
    if exceeds(marked_n, most_n):
        raise row.refuse("limit", "more-than-such-chain", most=Quantity(most_n, "force", "capacity"))


def _most_of_such_chain_kg(row: Given, grades: tuple[str, ...]) -> float:
    """More than a chain of these grades and its size has as its WLL [kg]: what the table of the United States prints and the
    next metric wire besides, else what the strongest lifting chain of that wire has.
    """
    try:
        printed = [chain_tie_down(grade, row.text("size")).working_load_limit_kg for grade in grades]
    except NotRated:
        return most_of_chain_kg(_wire_m(row))
    return THICKER_THAN_NAMED * max(printed)


def _check_geometry(row: Given, role: str, load: Load) -> None:
    """Refuses a tie-down that cannot run as it is described."""
    across_m, down_m = row.si("across"), row.si("down")
    along_m = row.si("along") if role == "direct" else 0.0
    if role != "over-top" and row.text("pulls") in SIDEWAYS and along_m > 0.0:
        raise row.refuse("along", "straight-to-the-side")
    if role == "same-side" and row.text("pulls") not in SIDEWAYS:
        raise row.refuse("pulls", "same-side-pulls-sideways")
    if exceeds(down_m, load.height_m + RAIL_DROP_M):
        raise row.refuse("down", "higher-than-the-load", height=length(load.height_m))
    leg_m = math.hypot(along_m, across_m, down_m)
    if leg_m <= 0.0 or (role == "over-top" and down_m <= 0.0):
        raise row.refuse("down", "goes-nowhere")
    needed_m = 2 * leg_m + (load.width_m if role == "over-top" else 0.0)
    if role == "direct":
        needed_m = leg_m
    long_m = row.maybe("lashing_length")
    if long_m is not None and exceeds(needed_m, long_m):
        raise row.refuse("lashing_length", "cannot-reach", needed=length(needed_m, "demand"))


def _refuse_web_beside_chain(rows: Sequence[Given], items: Sequence[TieDown]) -> None:
    """Web stretches where chain does not: beside each other against one movement, the chain has nearly all of it."""
    held = [(row, item.kind, _holds_against(item)) for row, item in zip(rows, items, strict=True)]
    for (_row, one, first), (row, other, second) in combinations(held, 2):
        if first & second and (one == "web") != (other == "web"):
            raise row.refuse("kind", "web-beside-chain")


def _holds_against(item: TieDown) -> set[str]:
    """The movements that the direct lashings of a row hold against, whatever their limit."""
    lashings = [
        Direct(forward * item.along_m, left * item.across_m, item.down_m, 1.0) for forward, left in item.ways
    ]
    return {direction for direction in DIRECTIONS if any(one.against(direction) > 0.0 for one in lashings)}


__all__ = [
    "CONDITIONS",
    "FORBIDDEN",
    "KINDS",
    "LABELS",
    "LC_OVER_WLL",
    "MOST_LIMIT_LB",
    "PULLS",
    "Load",
    "TieDown",
    "Way",
    "read_tie_downs",
    "tie_down_inputs",
]
