"""When must a part of the kit be looked over again?

Counted from the newest look that found it fit, by the shortest gap of tables/inspection-intervals that may apply
(calc.inspecting.record). What was not said takes the shortest that is possible; a kind that the table does not have takes
the shortest of all lifting gear. The longest gap that any of these rules gives is told beside it.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from calc import inputs
from calc.dates import months_later
from calc.declaration import Citation
from calc.inspecting.record import HARDWARE, longest_gap
from calc.records.kit.part import Part
from calc.tables import number, table

SOON_DAYS = 30
"""A date so near is said to be coming (our own mark, no source)."""
_ALL_LIFTING = ("chain_sling", "wire_rope_sling", "web_sling", *HARDWARE, "crane_hook")
GEAR: Mapping[str, tuple[str, ...]] = {
    "chain-sling": ("chain_sling",),
    "hook": HARDWARE,
    "shackle": HARDWARE,
    "ring": HARDWARE,
    "eyebolt": HARDWARE,
    "eyebolt-plain": HARDWARE,
    "turnbuckle": HARDWARE,
    "wire-rope": ("wire_rope_sling",),
    "web-sling": ("web_sling",),
    "fibre-rope": ("web_sling",),
    "crane-hook": ("crane_hook",),
    "hoist": _ALL_LIFTING,
    "other": _ALL_LIFTING,
    "tie-down-chain": ("tie_down_chain",),
    "binder": ("tie_down_chain",),
    "strap": ("tie_down_strap",),
    "anchor": ("vehicle_anchor",),
}
"""What each kind is in the table of intervals; a hoist and what is of no kind take the shortest of all lifting gear, and a
sling of fiber rope that of web slings."""


@dataclass(frozen=True)
class Due:
    """When the next look must be.

    months -- the shortest gap that may apply; longest_months -- the longest that any of the rules gives
    on -- the day; None where no look found it fit yet
    """

    months: int
    longest_months: int
    on: datetime.date | None
    citations: tuple[Citation, ...]

    @property
    def overdue(self) -> bool:
        """Whether the day is past."""
        return self.on is not None and self.on < inputs.today()

    @property
    def soon(self) -> bool:
        """Whether the day comes within a month, and is not past."""
        return (
            self.on is not None
            and not self.overdue
            and self.on <= inputs.today() + datetime.timedelta(days=SOON_DAYS)
        )


def due(part: Part) -> Due:
    """When a part must be looked over again."""
    gear = GEAR[part.kind]
    months, cited = longest_gap(gear, part.place, part.service)
    last = part.last_good
    on = None if last is None else months_later(last.day, months)
    return Due(months, max(months, _longest(gear)), on, cited)


def _longest(gear: Sequence[str]) -> int:
    """The longest gap that any rule gives for gear [months]."""
    rows = [row for row in table("inspection-intervals").rows if row["item"] in gear]
    return round(max(number(row) for row in rows))


__all__ = ["GEAR", "SOON_DAYS", "Due", "due"]
