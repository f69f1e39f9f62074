"""Which worksheets make the page of a job, and what of each stands on it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True)
class Slot:
    """One part of a job's page.

    name -- its heading is the message `slot-NAME`
    sheets -- the worksheets that answer it; any of them will do, and more than one must agree
    needed -- whether the page is no plan without it
    """

    name: str
    sheets: tuple[str, ...]
    needed: bool = True


JOBS: Mapping[str, tuple[Slot, ...]] = {
    "lift": (
        Slot("weight", ("load-weight",)),
        Slot("rigging", ("sling-legs", "hanging-load")),
        Slot("parts", ("load-path",)),
    ),
    "pull": (Slot("pull", ("pull-trial",)), Slot("log", ("trial-log",), needed=False)),
    "load": (Slot("load", ("tie-down",)),),
}
"""The jobs and the parts of their pages, in their order."""

SHOWN: Mapping[str, tuple[str, ...]] = {
    "load-weight": ("weight_high", "weight", "centre_x", "centre_y", "centre_z"),
    "sling-legs": ("leg_tension", "use_percent", "angle", "side_force", "headroom"),
    "hanging-load": ("worst_tensions", "lowest_leg_angle", "headroom", "hook"),
    "load-path": (),
    "pull-trial": ("ceiling", "governing", "stop_reading", "pressure", "steps", "stored_energy"),
    "trial-log": ("top_force", "permanent_set", "throat_change_percent", "departs_at"),
    "tie-down": ("law_asked", "law_counted", "tie_downs_needed", "tie_downs_there", "directions", "worst"),
}  # fmt: skip
"""The results of each worksheet that stand on the page; of the parts, a table of its own does."""


def job_of(sheet: str) -> str:
    """The job that a worksheet belongs to; empty for one of none."""
    return next((job for job, slots in JOBS.items() if any(sheet in slot.sheets for slot in slots)), "")


WHERE: Mapping[str, str] = {
    "rigging-too-light": "rigging",
    "rigging-of-another-load": "rigging",
    "parts-too-light": "parts",
    "parts-of-another-load": "parts",
    "balance-not-known": "weight",
    "legs-not-listed": "parts",
    "legs-pull-harder": "parts",
    "pulled-too-hard": "log",
}
"""The part of a page that a reason between worksheets is about, by its code."""


def slot_of(sheet: str) -> str:
    """The part of a page that a worksheet answers."""
    return next(slot.name for slots in JOBS.values() for slot in slots if sheet in slot.sheets)


def sheets_of(job: str) -> tuple[str, ...]:
    """The worksheets of a job, in their order."""
    return tuple(sheet for slot in JOBS[job] for sheet in slot.sheets)


__all__ = ["JOBS", "SHOWN", "WHERE", "Slot", "job_of", "sheets_of", "slot_of"]
