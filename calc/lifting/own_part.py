"""Which of the reader's own parts is this, and when was it last inspected?

What a row carries of a part that the reader keeps a list of: its own number, how its last full inspection ended, on what
day, and when the next is due. It can only take away. A part whose inspection is overdue, of no known day, or never made is
careful at best, and one that did not pass cannot be rated until it does, whatever the reader says of its condition today. No
inspection counts for longer than the longest gap of tables/inspection-intervals.
"""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass

from calc import inputs
from calc.dates import months_later
from calc.inputs import ChoiceInput, DateInput, DueInput, Given, Input, TextInput
from calc.reasons import Reason, caution, note
from calc.tables import number, table
from calc.words.facts import Fact, Listing, message

WORDS = "shared/own-part"
"""The scope of its words: input-own_number and the others, reason-own-part-*."""
PASSED, CAREFUL, NOT_PASSED, NEVER = "passed", "careful", "not-passed", "never"
LAST_LOOKS = (PASSED, CAREFUL, NOT_PASSED, NEVER)
"""How the last full inspection ended: passed; passed, and yet something stands against the part; not passed or not finished;
there was none."""
NAMES = ("own_number", "last_look", "looked_on", "look_due")
"""The inputs, in their order."""


@dataclass(frozen=True)
class OwnPart:
    """One of the reader's own parts, as a row carries it.

    looked_on, due_on -- days of the last full inspection and of the next; None where nobody said them
    """

    number: str
    last_look: str
    looked_on: datetime.date | None
    due_on: datetime.date | None

    @property
    def next_on(self) -> datetime.date | None:
        """When the next inspection is due: as said, and no later than the longest gap after the last."""
        if self.looked_on is None or self.due_on is None:
            return None
        return min(self.due_on, months_later(self.looked_on, _longest_gap_months()))

    @property
    def overdue(self) -> bool:
        """Whether the next inspection was due before today."""
        return self.next_on is not None and self.next_on < inputs.today()


def _longest_gap_months() -> int:
    """The longest gap that any rule gives between two full inspections [months]."""
    return round(max(number(row) for row in table("inspection-intervals").rows))


def own_part_inputs() -> tuple[Input, ...]:
    """What is asked of a part that the reader keeps a list of; nothing where he keeps none."""
    said = {"last_look": LAST_LOOKS}
    return (
        TextInput("own_number", shown_when=said),
        ChoiceInput("last_look", choices=LAST_LOOKS, required=False),
        DateInput("looked_on", required=False, shown_when=said),
        DueInput("look_due", required=False, shown_when=said),
    )


def own_part_of(given: Given) -> OwnPart | None:
    """The part that was named; None where none was. A number, or a day, without how its inspection ended is refused."""
    looked_on, due_on = given.date("looked_on"), given.date("look_due")
    if not given.has("last_look"):
        if given.has("own_number") or looked_on or due_on:
            raise given.refuse("last_look", "own-part-without-look")
        return None
    return OwnPart(given.text("own_number"), given.text("last_look"), looked_on, due_on)


def judge_own_parts(named: Sequence[OwnPart | None]) -> tuple[Reason, ...]:
    """What keeps own parts from being more than careful, each once for all parts of which it is true, and what they are called.
    One that did not pass is judged by its condition (calc.lifting.condition).
    """
    parts = list(dict.fromkeys(part for part in named if part is not None))
    reasons = []
    for code in _AGAINST:
        some = [part for part in parts if _against(part) == code]
        if some:
            which = Listing(
                tuple(_dated(part) if code == _OVERDUE else part.number for part in some), "semicolon"
            )
            reasons.append(caution(code, count=len(some), parts=which))
    if parts:
        reasons.append(note("own-parts", parts=Listing(tuple(_named(part) for part in parts), "semicolon")))
    return tuple(reasons)


_OVERDUE = "own-part-overdue"
_AGAINST = ("own-part-never", "own-part-without-day", _OVERDUE, "own-part-careful")
"""What makes a part careful at best."""


def _against(part: OwnPart) -> str:
    """Why a part is careful at best; empty where nothing is against it, or where more than that is."""
    if part.last_look == NOT_PASSED:
        return ""
    if part.last_look == NEVER:
        return "own-part-never"
    if part.next_on is None:
        return "own-part-without-day"
    if part.overdue:
        return _OVERDUE
    return "own-part-careful" if part.last_look == CAREFUL else ""


def _dated(part: OwnPart) -> Fact:
    """Its number, and when it was due."""
    return message("own-part-due", number=part.number, due=str(part.next_on))


def _named(part: OwnPart) -> Fact:
    """Its number and its last inspection."""
    if part.last_look == NEVER:
        return message("own-part-was-never", number=part.number)
    if part.looked_on is None:
        return message("own-part-looked-some-day", number=part.number, look=part.last_look)
    return message("own-part-looked", number=part.number, look=part.last_look, on=part.looked_on.isoformat())


__all__ = [
    "CAREFUL",
    "LAST_LOOKS",
    "NAMES",
    "NEVER",
    "NOT_PASSED",
    "PASSED",
    "WORDS",
    "OwnPart",
    "judge_own_parts",
    "own_part_inputs",
    "own_part_of",
]
