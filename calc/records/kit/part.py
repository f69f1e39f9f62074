"""One of a shop's own parts as it is kept: what was read on it, when it was looked at, and whether it is out of use.

What a reader typed stays as typed, with its unit, and is read again each time: a table that is corrected then corrects the
part too. Two things are never undone: a part that is out of use stays so, and a part that was altered is kept only so (no
test of a shop gives an altered part its rating back, 29 CFR 1910.184, WAC 296-155-33900).
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from calc import inputs
from calc.records.kit.schema import MEASURES, OUT_CONDITIONS, PART, Fault, first_fault, is_day

GOOD_LOOKS = ("ok", "caution")
"""What a look must have come to for the next to be counted from it."""
_GRACE = datetime.timedelta(days=1)


class NoPart(ValueError):
    """What was to be a part is none: `fault` says where and why."""

    def __init__(self, fault: Fault) -> None:
        self.fault = fault
        super().__init__(f"{fault.path}: {fault.broken}")


@dataclass(frozen=True)
class Look:
    """One look at a part: its day, who looked, what it came to, the worksheet that judged (empty: written down by hand), and
    the readings as typed, with their units.
    """

    on: str
    by: str
    found: str
    sheet: str
    note: str
    readings: Mapping[str, str]

    @property
    def day(self) -> datetime.date:
        """The day of the look."""
        return datetime.date.fromisoformat(self.on)

    @property
    def good(self) -> bool:
        """Whether it found the part fit."""
        return self.found in GOOD_LOOKS

    @property
    def ahead(self) -> bool:
        """Whether its day is still to come, so that either it or the clock is wrong. A day of grace: it may have been made on
        the other side of the date line.
        """
        return self.day > inputs.today() + _GRACE

    def to_data(self) -> dict[str, Any]:
        """The look as a file keeps it."""
        return {**vars(self), "readings": {name: self.readings.get(name, "") for name in MEASURES}}


@dataclass(frozen=True)
class Out:
    """That a part was taken out of use, for good: since when, why, and who did it."""

    on: str
    why: str
    by: str


@dataclass(frozen=True)
class Seen:
    """The rating that stood beside the part when it was last saved, as it was printed, and the edition that printed it."""

    rating: str
    edition: str


@dataclass(frozen=True)
class Part:
    """A part of the kit; every text as the reader typed it.

    id -- its own name in files, never shown; number -- what the reader calls it
    mark -- the grade mark as read; other_marks -- maker, serial, batch; rating -- what its maker put on it
    tag -- what else stands on the tag; new -- its sizes when it was new
    """

    id: str
    number: str
    kind: str
    name: str
    mark: str
    other_marks: str
    size: str
    rating: str
    tag: str
    condition: str
    bought_on: str
    bought: str
    place: str
    service: str
    new: Mapping[str, str]
    looks: tuple[Look, ...]
    out: Out | None
    seen: Seen
    photo: str

    @property
    def looked(self) -> tuple[Look, ...]:
        """Its looks, the newest first; of one day the last that was written first."""
        written = sorted(enumerate(self.looks), key=lambda one: (one[1].on, one[0]), reverse=True)
        return tuple(look for _place, look in written)

    @property
    def counted(self) -> tuple[Look, ...]:
        """Its looks that count, the newest first: a good one whose day is still to come does not, a bad one always does."""
        return tuple(look for look in self.looked if not (look.good and look.ahead))

    @property
    def last_good(self) -> Look | None:
        """The newest look that counts and found it fit; None where there is none."""
        return next((look for look in self.counted if look.good), None)

    def to_data(self) -> dict[str, Any]:
        """The part as a file keeps it."""
        return {
            **vars(self),
            "new": {name: self.new.get(name, "") for name in MEASURES},
            "looks": [look.to_data() for look in self.looks],
            "out": None if self.out is None else dict(vars(self.out)),
            "seen": dict(vars(self.seen)),
        }

    def taken_out(self, out: Out) -> Part:
        """The part out of use; where it was so before, as it was then."""
        return replace(self, out=self.out or out)


def part_of(data: Any) -> Part:
    """A part from what a file keeps; raises NoPart."""
    fault = first_fault(data, PART) or _beyond_schema(data)
    if fault:
        raise NoPart(fault)
    looks = tuple(Look(**look) for look in data["looks"])
    out = None if data["out"] is None else Out(**data["out"])
    return Part(**{**data, "looks": looks, "out": out, "seen": Seen(**data["seen"])})


def _beyond_schema(data: Mapping[str, Any]) -> Fault | None:
    """What a schema cannot say: days that the calendar lacks, and an altered part that would be back in use."""
    days = [("bought_on", data["bought_on"])] if data["bought_on"] else []
    days += [(f"looks[{place}].on", look["on"]) for place, look in enumerate(data["looks"])]
    days += [("out.on", data["out"]["on"])] if data["out"] else []
    for path, day in days:
        if not is_day(day):
            return Fault(path, "day")
    if data["condition"] in OUT_CONDITIONS and data["out"] is None:
        return Fault("condition", "altered-in-use")
    return None


__all__ = ["GOOD_LOOKS", "Look", "NoPart", "Out", "Part", "Seen", "part_of"]
