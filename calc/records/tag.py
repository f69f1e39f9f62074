"""What belongs on the tag of this part?

A tag of one's own repeats what stands on the part and on its maker's tag, says when it was inspected and when next, and
carries the same words as a code that a phone reads. It never gives a rating that the maker did not give, and a part that was
altered, has no mark, failed, is overdue or was not looked at gets a tag that says: do not use.
"""

from __future__ import annotations

import datetime
import re
from contextlib import suppress
from dataclasses import dataclass

from calc import inputs
from calc.comparing import exceeds
from calc.dates import months_later
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.tag import TagWords, tag_figure
from calc.inputs import Bounds, ChoiceInput, CountInput, DateInput, Given, TextInput
from calc.inspecting.chain_marks import may_lift, read_marks
from calc.lifting.chain_spring import most_of_chain_kg
from calc.quantities import NotReadable, read_quantity
from calc.reasons import Reason, note, stop, unknown
from calc.records.qr_code import QUIET_MODULES, qr_code
from calc.words.facts import Message, Quantity, message
from calc.words.writer import Writer

FINDINGS = ("passed", "failed", "altered", "unmarked")
"""What was found; all but the first end in a tag that says: do not use."""
SIZES = ("148x76", "6x3", "4x2")
"""Sizes of the tag: 148 by 76 mm, and labels of 6 by 3 and 4 by 2 in. All are drawn alike, at their scale."""
LONGEST = {"own_number": 24, "mark": 28, "rating": 44, "inspected_by": 28}
"""So many letters of each fit on the tag."""
LONGEST_MONTHS = 12
"""No rule of tables/inspection-intervals lets any gear go longer; a test holds it."""
MOST_TIMES_ONE_LEG = 3.0
"""No sling of a chain is rated more than this many times one leg of it [-]: three legs that hang straight would be."""
_FIGURE = re.compile(r"\d[\d.,/ -]*\s*[A-Za-z]+(?:\s+tons?)?")
"""A figure with its unit, in what stands on a tag."""


@dataclass(frozen=True)
class Found:
    """What the tag says. `stops`: why the part must not be used; `lacks`: what nobody has said yet."""

    own_number: str
    mark: str
    rating: str
    inspected_by: str
    inspected_on: datetime.date | None
    months: int
    next_by: datetime.date | None
    finding: str
    size: str
    stops: tuple[str, ...]
    lacks: tuple[str, ...]

    @property
    def do_not_use(self) -> bool:
        """Whether the tag says: do not use."""
        return bool(self.stops or self.lacks)

    @property
    def tag(self) -> Message:
        """The large words of the tag."""
        return message("tag-do-not-use" if self.do_not_use else "tag-inspected")

    @property
    def lines(self) -> tuple[Message, ...]:
        """What stands on it, line by line."""
        said = [message("line-number", number=self.own_number)]
        if self.mark:
            said.append(message("line-mark", mark=self.mark))
        if self.do_not_use:
            said += [message(f"line-{code}") for code in (*self.stops, *self.lacks)[:2]]
        else:
            said.append(self._rated)
        if self.inspected_on is not None:
            said.append(message("line-inspected", day=str(self.inspected_on)))
        if self.next_by is not None and not self.do_not_use:
            said.append(message("line-next", day=str(self.next_by)))
        if self.inspected_by:
            said.append(message("line-by", who=self.inspected_by))
        return tuple(said)

    @property
    def ties_down_only(self) -> bool:
        """Whether its mark can name a grade that never lifts."""
        return any(may_lift(grade) is False for grade in read_marks(self.mark).grades)

    @property
    def _rated(self) -> Message:
        """The maker's figure, and that it is none for lifting where the mark says so."""
        if self.ties_down_only:
            return message("line-ties-down", rating=self.rating or message("no-figure"))
        return message("line-rating", rating=self.rating) if self.rating else message("line-no-rating")

    @property
    def width(self) -> Message:
        """How wide the tag is."""
        return message(f"size-{self.size}")


def find(given: Given) -> Found:
    """Read what goes on the tag; see WORKSHEET for inputs and results."""
    for name, longest in LONGEST.items():
        if len(given.text(name)) > longest:
            raise given.refuse(name, "too-long-for-a-tag", count=longest)
    if not _says(given, "own_number"):
        raise given.refuse("own_number", "names-nothing")
    _refuse_mark(given)
    _refuse_rating(given)
    day = given.values.get("inspected_on")
    inspected_on = None if day is None else datetime.date(day.year, day.month, day.day)
    months = given.maybe("months")
    next_by = None if inspected_on is None or months is None else months_later(inspected_on, round(months))
    finding = given.text("finding")
    stops = [] if finding in ("", "passed") else [finding]
    if next_by is not None and next_by < inputs.today():
        stops.append("overdue")
    missing = {
        "no-finding": not finding,
        "no-mark": not _says(given, "mark") and finding != "unmarked",
        "no-day": inspected_on is None,
        "no-next": months is None,
        "no-name": not _says(given, "inspected_by"),
    }
    return Found(
        own_number=given.text("own_number"),
        mark=given.text("mark"),
        rating=given.text("rating"),
        inspected_by=given.text("inspected_by"),
        inspected_on=inspected_on,
        months=round(months or 0),
        next_by=next_by,
        finding=finding,
        size=given.text("size"),
        stops=tuple(stops),
        lacks=tuple(code for code, lacking in missing.items() if lacking),
    )


_FOUND_NOT_STAMPED = re.compile(
    r"\b(weld(?!less)|bent|heated|overheat|burn|torch|crack|worn|gouge|repair|straighten|altered|modified)\w*",
    re.IGNORECASE,
)
"""Words for what was found on a part: no maker stamps one of them."""


def _refuse_mark(given: Given) -> None:
    """Refuses a mark that says what was found on the part: that is asked, and then the tag says: do not use."""
    if found := _FOUND_NOT_STAMPED.search(given.text("mark")):
        raise given.refuse("mark", "found-not-stamped", word=found.group().casefold())


_SAYS_NOTHING = ("none", "nil", "unknown", "unmarked", "unreadable", "illegible", "gone", "missing")
"""A mark or a name that begins with one of these is none."""
_NO_ANSWERS = (["no"], ["n", "a"], ["na"], ["no", "mark"], ["no", "marks"], ["not", "readable"])


def _says(given: Given, name: str) -> bool:
    """Whether something was written that can name a part, a mark or a person: a mark of doubt names nothing, nor does none."""
    words = re.findall(r"\w+", given.text(name).casefold())
    return bool(words) and words[0] not in _SAYS_NOTHING and words not in _NO_ANSWERS


def _refuse_rating(given: Given) -> None:
    """Refuses a rating that is no figure, and one that no sling of the chain that the mark names has."""
    rating = given.text("rating")
    if not rating:
        return
    figures = _FIGURE.findall(rating)
    if not figures:
        raise given.refuse("rating", "no-figure")
    most_kg = _most_of_marked_chain_kg(given.text("mark"))
    for figure in figures if most_kg else ():
        with suppress(NotReadable):
            if exceeds(read_quantity(figure, "weight", "").value_si, most_kg):
                raise given.refuse(
                    "rating", "more-than-its-mark", most=Quantity(most_kg, "weight", "capacity")
                )


def _most_of_marked_chain_kg(mark: str) -> float:
    """More than any sling of the chain that a mark names is rated for [kg]; nothing where it names no grade and size."""
    marks = read_marks(mark)
    if not marks.grades or len(marks.sizes) != 1:
        return 0.0
    return MOST_TIMES_ONE_LEG * max(
        most_of_chain_kg(marks.sizes[0].thickest_m, grade) for grade in marks.grades
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """Why the tag says do not use, or that it repeats the maker's."""
    reasons: list[Reason] = [stop(code) for code in found.stops]
    reasons += [unknown(code) for code in found.lacks]
    if not reasons:
        reasons.append(note("repeats", number=found.own_number))
        if found.ties_down_only:
            reasons.append(note("ties-down-only", "prohibition"))
        elif not found.rating:
            reasons.append(note("no-rating", "warning"))
    if found.stops:
        reasons.append(note("destroy", "prohibition"))
    reasons.append(note("hang-it", "mandatory"))
    return tuple(reasons)


def work(found: Found) -> tuple[Step, ...]:
    """When the part is inspected again, and what decides which tag it gets."""
    steps = [step("which-tag", missing=len(found.lacks), against=len(found.stops), tag=found.tag)]
    if found.inspected_on is not None and found.next_by is not None:
        day, due = str(found.inspected_on), str(found.next_by)
        steps.append(step("next-day", day=day, months=found.months, due=due))
    return tuple(steps)


def draw(found: Found, writer: Writer) -> Figure:
    """The tag, with its words as a code."""
    words = [writer.plain(one) for one in (found.tag, *found.lines)]
    foot = writer.text("tag-foot-do-not-use" if found.do_not_use else "tag-foot")
    code = qr_code("\n".join(words))
    caption = writer.text("figure", tag=found.tag, size=found.width)
    return tag_figure(
        TagWords(words[0], tuple(words[1:]), foot, found.do_not_use, found.size), code, QUIET_MODULES, caption
    )


WORKSHEET = Worksheet(
    name="tag",
    inputs=(
        TextInput("own_number"),
        ChoiceInput("finding", choices=FINDINGS, required=False),
        TextInput("mark", required=False),
        TextInput("rating", required=False),
        DateInput("inspected_on", required=False),
        CountInput("months", bounds=Bounds(at_least=1, at_most=LONGEST_MONTHS), required=False),
        TextInput("inspected_by", required=False),
        ChoiceInput("size", choices=SIZES, default="148x76"),
    ),
    results=(Result("tag"), Result("lines"), Result("width")),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    large="tag",
    example={
        "own_number": "H-2",
        "finding": "passed",
        "mark": "3/8 8 T",
        "rating": "7,100 lb",
        "inspected_on": "today",
        "months": "12",
        "inspected_by": "yard hand",
        "size": "148x76",
    },
    citations=(
        Citation("osha-1910-184", "1910.184(c)(13)-(14)"),
        Citation("cfr-49-393", "393.104(b)"),
    ),
    rates=False,
)
