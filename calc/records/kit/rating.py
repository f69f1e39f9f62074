"""What is a part of the kit rated for, by its mark and by what its maker put on it, and never by its looks?

The tables rate a part by kind, grade mark and size; the maker's own figure counts beside them, and the lower of the two is
taken. Where they differ by more than rounding, one of them was misread or the part is not the table's, and there is no
rating. Lifting parts go through calc.lifting.path_items, hanging straight and in line; tie-down chain through 49 CFR 393.108;
straps, binders and anchors have only what stands on them.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation
from calc.hauling.tie_down_items import LC_OVER_WLL, MOST_LIMIT_LB
from calc.lifting.chain_spring import most_of_chain_kg
from calc.lifting.condition import GOOD
from calc.lifting.path_items import (
    MARK_AGREES,
    Blocked,
    PathItem,
    most_of_its_size_kg,
    rate_item,
    table_rating,
)
from calc.marks import read_grade
from calc.quantities import NotReadable, read_quantity, to_si
from calc.ratings import NotRated, Rating, chain_tie_down
from calc.records.kit.part import Part
from calc.records.kit.reading import with_unit_si
from calc.records.kit.schema import SIZED_KINDS, TIE_DOWN_KINDS
from calc.tables import table
from calc.words.facts import Message, Quantity, message

_PATH_KIND = {"chain-sling": "chain", "crane-hook": "other"}
"""What a kind is called among the parts of a string; the others go by their own name. A hook of a crane is not matched to a
chain, so that no table of chain rates it."""
_GRADED = ("chain-sling", "hook", "shackle", "ring", "tie-down-chain")
"""Kinds that carry a grade mark."""


@dataclass(frozen=True)
class Rated:
    """What a part may carry in a straight pull [kg], or why nobody can say.

    kg -- None where there is none; ties_down -- whether it is for tying down alone
    basis -- the message that says what it rests on; why -- the message that says why there is none; forbidden -- whether
      that is a rule and no mere gap
    """

    kg: float | None = None
    ties_down: bool = False
    basis: Message | None = None
    why: Message | None = None
    forbidden: bool = False
    citations: tuple[Citation, ...] = ()

    @property
    def quantity(self) -> Quantity | None:
        """The rating as a message may name it."""
        return None if self.kg is None else Quantity(self.kg, "weight", "capacity")


def rate(part: Part) -> Rated:
    """The rating of a part, whatever state it is in: calc.records.kit.state says whether it may be used."""
    ties_down = part.kind in TIE_DOWN_KINDS
    try:
        marked_kg = with_unit_si(part.rating, "weight")
    except NotReadable as reason:
        return Rated(
            None, ties_down, why=message("kit-rating-not-read", typed=part.rating, reason=reason.why)
        )
    if part.kind in SIZED_KINDS and part.size.strip():
        try:
            read_quantity(part.size, "length", "in")
        except NotReadable as reason:
            return Rated(
                None, ties_down, why=message("kit-size-not-read", typed=part.size, reason=reason.why)
            )
    mark = read_grade(part.mark, "shackle" if part.kind == "shackle" else "chain")
    if part.kind in _GRADED and mark.given and not mark.understood:
        return Rated(None, ties_down, why=message("kit-mark-not-understood", mark=part.mark))
    return _tie_down(part, marked_kg) if ties_down else _lifting(part, marked_kg)


def _lifting(part: Part, marked_kg: float | None) -> Rated:
    item = PathItem(
        label=part.number or message(f"kit-kind-{part.kind}"),
        kind=_PATH_KIND.get(part.kind, part.kind),
        grade=part.mark,
        size=part.size,
        rating_kg=marked_kg,
        condition=GOOD,
    )
    rated = rate_item(item)
    if rated.rating_kg is None:
        return Rated(why=rated.why, forbidden=rated.standing == "stop")
    try:
        against = _against_table(part, marked_kg, table_rating(item))
    except (NotRated, Blocked):
        against = None
    over = against or _over_its_size(part, marked_kg, most_of_its_size_kg(item))
    return over or Rated(rated.rating_kg, basis=rated.printed, citations=rated.citations)


def _over_its_size(part: Part, marked_kg: float | None, most_kg: float | None) -> Rated | None:
    """No rating where the maker's figure is more than any part of that kind and size bears; None where it is not."""
    if marked_kg is None or most_kg is None or not exceeds(marked_kg, most_kg):
        return None
    most = Quantity(most_kg, "weight", "capacity")
    why = message("kit-mark-over-its-size", typed=part.rating, most=most)
    return Rated(None, part.kind in TIE_DOWN_KINDS, why=why)


def _against_table(part: Part, marked_kg: float | None, printed: Rating) -> Rated | None:
    """No rating where mark and table are further apart than rounding; None where they agree or only one is known."""
    low, high = sorted((marked_kg or printed.working_load_limit_kg, printed.working_load_limit_kg))
    if not exceeds(high, low * (1 + MARK_AGREES)):
        return None
    return Rated(
        None,
        part.kind in TIE_DOWN_KINDS,
        why=message("kit-mark-against-table", typed=part.rating, printed=printed.cell),
        citations=(Citation(printed.source, printed.locator),),
    )


def _tie_down(part: Part, marked_kg: float | None) -> Rated:
    printed = _tie_down_row(part) if part.kind == "tie-down-chain" else None
    if isinstance(printed, Message):
        if marked_kg is None:
            return Rated(None, ties_down=True, why=printed)
        printed = None
    if printed is None:
        if marked_kg is None:
            return Rated(None, ties_down=True, why=message("kit-no-rating-given"))
        over = _over_its_size(part, marked_kg, _most_that_ties_down_kg(part))
        return over or Rated(marked_kg, ties_down=True, basis=message("as-marked"))
    against = _against_table(part, marked_kg, printed)
    if against:
        return against
    kg = min(marked_kg or printed.working_load_limit_kg, printed.working_load_limit_kg)
    cited = (Citation(printed.source, printed.locator),)
    return Rated(kg, ties_down=True, basis=message("as-printed", cell=printed.cell), citations=cited)


def _most_that_ties_down_kg(part: Part) -> float:
    """More than any tie-down is marked with [kg]; of chain of a size, more than chain of that wire is."""
    most_kg = to_si(MOST_LIMIT_LB, "lb", "weight")
    if part.kind != "tie-down-chain" or not part.size.strip():
        return most_kg
    wire_m = read_quantity(part.size, "length", "in").value_si
    return min(most_kg, LC_OVER_WLL * most_of_chain_kg(wire_m))


def _tie_down_row(part: Part) -> Rating | Message | None:
    """The row of the law's table for the weakest grade that the mark can name; None where mark or size is not given."""
    grades = read_grade(part.mark).grades
    if not grades or not part.size.strip():
        return None
    listed = table("chain-tie-down").values("grade")
    try:
        found = [chain_tie_down(grade, part.size) for grade in grades if grade in listed]
    except NotRated as reason:
        return reason.why
    if not found:
        return message("kit-mark-not-understood", mark=part.mark)
    return min(found, key=lambda row: row.working_load_limit_kg)


__all__ = ["Rated", "rate"]
