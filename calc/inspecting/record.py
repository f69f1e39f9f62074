"""When must a part be looked over again, and is the record of this look complete?

The longest gap between two full inspections stands in tables/inspection-intervals, by kind of gear, place and service. What
was not said takes the shortest that is possible: no place all places, no service the severest. A look whose day is not
known, or after which the next one was due before today, passes nothing: nobody knows what has happened since.
"""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass

from calc import inputs
from calc.dates import months_later
from calc.declaration import Citation
from calc.inputs import ChoiceInput, DateInput, Given, TextInput
from calc.tables import Row as Claim
from calc.tables import number, table
from calc.words.facts import Message, message

EARLIEST = datetime.date(1980, 1, 1)
"""An older day of inspection is a slip of the pen (our own mark, no source)."""
HARDWARE = ("rigging_hardware",)
"""Hooks, shackles, links and rings as tables/inspection-intervals names them."""
PLACES = (
    "us-federal",
    "us-washington",
    "us-california",
    "us-michigan",
    "canada-ontario",
    "uk",
    "germany",
    "australia",
)
"""Places whose intervals were read."""
_US_STANDARD = "us-standard"
"""What United States standards ask, for a place there whose law names no interval."""
_NORMAL = ("any", "normal", "lifts_1_to_5", "lifts_6_to_25")
"""Classes that now-and-then service may fall under: up to five lifts on each working day (our own reading)."""

PART_INPUT = TextInput("part_name", required=False)
INSPECTOR_INPUT = TextInput("inspected_by", required=False)
PLACE_INPUT = ChoiceInput("place", choices=PLACES, required=False)
SERVICE_INPUT = ChoiceInput("service", choices=("normal", "severe", "special"), required=False)
DATE_INPUT = DateInput("inspected_on", required=False)
RECORD_INPUTS = (PLACE_INPUT, SERVICE_INPUT, DATE_INPUT, INSPECTOR_INPUT)
"""What a record asks beside the part and the criteria."""
_WRITTEN = ("part_name", "inspected_on", "inspected_by")


@dataclass(frozen=True)
class Recorded:
    """Of a look: its day, when the next is due, and what is still to be written down (codes of `record-CODE`). `assumed`:
    place or service was not said, so that the shortest gap counts.
    """

    day: datetime.date | None
    months: int
    due: datetime.date | None
    overdue: bool
    qualified: bool
    lacking: tuple[str, ...]
    assumed: bool
    rests_on: tuple[Citation, ...]

    @property
    def current(self) -> bool:
        """Whether the look has a day, and the next one is not due before today."""
        return self.day is not None and not self.overdue

    @property
    def next_inspection(self) -> Message:
        """When the part must be looked over again."""
        sooner = message("or-sooner" if self.qualified else "no-sooner")
        if self.due is None:
            return message("next-within", months=self.months, sooner=sooner)
        code = "next-was-due" if self.overdue else "next-by"
        return message(code, date=self.due.isoformat(), sooner=sooner)


def recorded(given: Given, items: Sequence[str]) -> Recorded:
    """What is known of the look. `items`: the kinds of gear the part may be, as tables/inspection-intervals names them."""
    day = _day(given)
    months, rests_on = longest_gap(items, given.text("place"), given.text("service"))
    due = None if day is None else months_later(day, months)
    return Recorded(
        day=day,
        months=months,
        due=due,
        overdue=due is not None and due < inputs.today(),
        qualified=given.text("service") == "special",
        lacking=tuple(name.replace("_", "-") for name in _WRITTEN if not _written(given, name)),
        assumed=not (given.has("place") and given.has("service")),
        rests_on=rests_on,
    )


def _written(given: Given, name: str) -> bool:
    """Whether something was written that can name a part, a day or a person: a mark of doubt names nothing."""
    return any(letter.isalnum() for letter in given.text(name))


def _day(given: Given) -> datetime.date | None:
    day = given.values.get("inspected_on")
    if day is None:
        return None
    if day < EARLIEST:
        raise given.refuse("inspected_on", "before-1980")
    return datetime.date(day.year, day.month, day.day)


def longest_gap(items: Sequence[str], place: str, service: str) -> tuple[int, tuple[Citation, ...]]:
    """The months between two full inspections, and where they stand: the shortest of those that may apply.

    A place whose law names none for this gear takes what a standard of its country asks, else the shortest of all
    places. Severe service is held to the quarter of WAC 296-155-55800 Table 12 for all gear (our own reading).

    >>> longest_gap(("chain_sling",), "us-federal", "normal")[0], longest_gap(("chain_sling",), "", "normal")[0]
    (12, 6)
    """
    may_apply = [claim for item in items for claim in _of_item(item, place, service)]
    if service != "normal":
        may_apply += [claim for claim in _claims(*HARDWARE) if claim["service"] == "severe"]
    shortest = min(number(claim) for claim in may_apply)
    cited = (Citation(claim["source"], claim["locator"]) for claim in may_apply if number(claim) == shortest)
    return round(shortest), tuple(dict.fromkeys(cited))


def _of_item(item: str, place: str, service: str) -> list[Claim]:
    """The claims that may apply to one kind of gear."""
    claims = [claim for claim in _claims(item) if service != "normal" or claim["service"] in _NORMAL]
    standard = _US_STANDARD if place.startswith("us-") else place
    return _of(claims, place) or _of(claims, standard) or claims


def _claims(*items: str) -> list[Claim]:
    return [claim for claim in table("inspection-intervals").rows if claim["item"] in items]


def _of(claims: Sequence[Claim], place: str) -> list[Claim]:
    return [claim for claim in claims if claim["place"] == place]


__all__ = [
    "HARDWARE",
    "PART_INPUT",
    "PLACES",
    "RECORD_INPUTS",
    "Recorded",
    "longest_gap",
    "recorded",
]
