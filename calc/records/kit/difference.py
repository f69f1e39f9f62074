"""What would change if a file were taken into the kit? Shown before anything is written.

Parts are the same by their id. One that differs is shown field by field, and taken only where the reader says so. Looks are
never lost: those of both sides are kept. A part that is out of use on either side stays out of use.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

from calc.records.kit.part import Look, Part
from calc.records.kit.schema import MEASURES, MOST_LOOKS

FIELDS = (
    "number",
    "kind",
    "name",
    "mark",
    "other_marks",
    "size",
    "rating",
    "tag",
    "condition",
    "bought_on",
    "bought",
    "place",
    "service",
)
"""What is held against each other field by field, in the order of the form."""
_WORSE = ("ok", "caution", "unknown", "stop")
"""What a look came to, the worst last."""


@dataclass(frozen=True)
class Field:
    """A field in which two copies of a part differ."""

    name: str
    here: str
    there: str


@dataclass(frozen=True)
class Changed:
    """A part that both sides have and that differs: here, in the file, and what it would be if the file's is taken."""

    here: Part
    there: Part
    merged: Part
    fields: tuple[Field, ...]
    new_looks: int
    photo: bool
    goes_out: bool

    @property
    def can_be_taken(self) -> bool:
        """Whether the file's may be taken: not where it makes another kind of part of one that was inspected and is in use,
        for its inspections would pass that.
        """
        return self.here.kind == self.there.kind or self.merged.out is not None or not self.merged.looks


@dataclass(frozen=True)
class Difference:
    """What a file brings: parts that the kit has not, parts that differ, parts that are the same, and numbers of new parts
    that another part of the kit has already.
    """

    added: tuple[Part, ...]
    changed: tuple[Changed, ...]
    same: int
    numbers_twice: tuple[str, ...]


def difference(here: Sequence[Part], there: Sequence[Part]) -> Difference:
    """What taking `there` into `here` would change."""
    known = {part.id: part for part in here}
    added = tuple(part for part in there if part.id not in known)
    both = [(known[part.id], part) for part in there if part.id in known]
    changed = tuple(one for ours, theirs in both if (one := _changed(ours, theirs)) is not None)
    numbers = {part.number.casefold() for part in here if part.number}
    times = Counter(part.number.casefold() for part in added)
    twice = tuple(
        part.number
        for part in added
        if part.number.casefold() in numbers or times[part.number.casefold()] > 1
    )
    return Difference(added, changed, len(both) - len(changed), twice)


def _changed(here: Part, there: Part) -> Changed | None:
    merged = merge(here, there)
    if _of_reader(merged) == _of_reader(here):
        return None
    return Changed(
        here,
        there,
        merged,
        tuple(_fields(here, merged)),
        len(merged.looks) - len(here.looks),
        merged.photo != here.photo,
        here.out is None and merged.out is not None,
    )


def _of_reader(part: Part) -> Part:
    """A part without what the book notes beside it."""
    return replace(part, seen=part.seen.__class__("", ""), looks=tuple(sorted(part.looks, key=_look_key)))


def _fields(here: Part, there: Part) -> list[Field]:
    pairs = [(name, str(getattr(here, name)), str(getattr(there, name))) for name in FIELDS]
    pairs += [(f"new_{name}", here.new.get(name, ""), there.new.get(name, "")) for name in MEASURES]
    return [Field(name, ours, theirs) for name, ours, theirs in pairs if ours != theirs]


def merge(here: Part, there: Part) -> Part:
    """The part of the file, with the looks of both sides, and out of use where either is. A photo is never lost to a file
    that leaves photos out.
    """
    days = sorted({look.on for look in (*here.looks, *there.looks)})
    looks = [look for day in days for look in _of_day(_on(here, day), _on(there, day))]
    kept = looks[-MOST_LOOKS:]
    out = here.out or there.out
    condition = here.condition if here.out is not None else there.condition
    return replace(
        there,
        looks=tuple(kept),
        out=out,
        condition=condition,
        photo=there.photo or here.photo,
        seen=here.seen,
    )


def _on(part: Part, day: str) -> list[Look]:
    return [look for look in part.looks if look.on == day]


def _of_day(here: Sequence[Look], there: Sequence[Look]) -> list[Look]:
    """The looks of both sides at one day, in the order in which they were written. Where one side only goes on from the other
    that order is known. Else the bad ones are taken to be the later: the last of a day decides.
    """
    ours, theirs = [_look_key(look) for look in here], [_look_key(look) for look in there]
    if ours == theirs[: len(ours)]:
        return list(there)
    if theirs == ours[: len(theirs)]:
        return list(here)
    both = dict(zip([*ours, *theirs], [*here, *there], strict=True))
    return sorted(both.values(), key=lambda look: _WORSE.index(look.found))


def _look_key(look: Look) -> tuple[str, ...]:
    return (
        look.on,
        look.by,
        look.found,
        look.sheet,
        look.note,
        *(look.readings.get(name, "") for name in MEASURES),
    )


__all__ = ["Changed", "Difference", "Field", "difference", "merge"]
