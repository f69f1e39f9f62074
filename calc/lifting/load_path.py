"""Which part of my rigging gives first?

A string of parts from the overhead support to the load. Every part carries the whole load, or its leg's share of it;
none adds to another. The string holds what its weakest part holds, and one part that may not be used stops it
(calc.lifting.path_items). A part that cannot be rated leaves the whole string unknown; a part that is overloaded stops it,
whatever is known of the others.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from itertools import pairwise

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.paths import BarKind, PathBar, PathWords, path_figure
from calc.inputs import JOB_INPUT, JOB_WORDS, Bounds, Given, QuantityInput, RowsInput
from calc.lifting.leg_geometry import Flatness, flatness
from calc.lifting.own_part import judge_own_parts
from calc.lifting.path_items import (
    ALTERED,
    EYEBOLTS,
    NOT_LOOKED_AT,
    NOT_PASSED,
    WORDS,
    ItemRating,
    PartName,
    PathItem,
    path_item_inputs,
    rate_item,
    read_items,
    string_inputs,
)
from calc.reasons import Reason, caution, note, over, stop, within
from calc.words.facts import (
    Absent,
    Fact,
    Listing,
    Message,
    Number,
    Option,
    Quantity,
    absent,
    message,
    share,
    weight,
)
from calc.words.writer import Writer

FEWEST_COUNTED = 2
"""Legs of several that are counted without asking whether they share evenly."""


@dataclass(frozen=True)
class PathPart:
    """One part under the load: what one of them feels [kg], what load on the string it allows [kg] or None; and what load it
    would allow at most, whatever else stands in its way.
    """

    rating: ItemRating
    load_kg: float
    pull_kg: float
    allows_kg: float | None
    at_most_kg: float | None

    @property
    def item(self) -> PathItem:
        """The part itself."""
        return self.rating.item

    @property
    def share(self) -> float | Absent:
        """Part of what it allows that the load takes [-]."""
        return absent("may-not-be-used") if self.allows_kg is None else self.load_kg / self.allows_kg

    @property
    def overloaded(self) -> bool:
        """Whether the load is over what the part would allow even if nothing else stood in its way."""
        return self.at_most_kg is not None and exceeds(self.load_kg, self.at_most_kg)

    @property
    def flatness(self) -> Flatness:
        """How flat its legs lie."""
        return flatness(self.item.angle_deg)


def part_under(item: PathItem, load_kg: float) -> PathPart:
    """A part with the load [kg] on the string: each of its legs that count takes load / (legs x sin angle)."""
    rating = rate_item(item)
    share_of_load = 1.0 / (item.counted_legs * math.sin(math.radians(item.angle_deg)))
    allows_kg = None if rating.rating_kg is None else rating.rating_kg / share_of_load
    if allows_kg is not None and rating.whole_kg is not None:
        allows_kg = min(allows_kg, rating.whole_kg)
    at_most_kg = None if rating.at_most_kg is None else rating.at_most_kg / share_of_load
    return PathPart(
        rating, load_kg, load_kg * share_of_load, allows_kg, at_most_kg if allows_kg is None else allows_kg
    )


@dataclass(frozen=True)
class Found:
    """What each part of the string feels, and what the whole holds.

    first -- the part that gives first, or the one that stops the string
    use -- what the reader said of the whole string; empty where nothing
    """

    use: str
    load_kg: float
    parts: tuple[PathPart, ...]
    first: PathPart
    capacity_kg: float | Absent
    governing: PartName
    share: tuple[float | Absent, ...]
    pulls_kg: tuple[float, ...]
    blocked: tuple[Message, ...]


def find(given: Given) -> Found:
    """Ratings and pulls of the parts; see WORKSHEET for inputs and results."""
    load_kg = given.si("load")
    parts = tuple(part_under(item, load_kg) for item in read_items(given))
    blocked = [part for part in parts if part.rating.blocked]
    allowed = [(part.allows_kg, part) for part in parts if part.allows_kg is not None]
    capacity_kg: float | Absent
    if blocked:
        # A part that is forbidden is named before one that cannot be rated.
        capacity_kg = absent("part-may-not-be-used")
        first = min(blocked, key=lambda part: part.rating.standing != "stop")
    else:
        capacity_kg, first = min(allowed, key=lambda pair: pair[0])
    if not blocked and any(part.flatness == "too-flat" for part in parts):
        capacity_kg = absent("legs-too-flat")
    return Found(
        given.text("use"),
        load_kg,
        parts,
        first,
        capacity_kg,
        first.item.label,
        tuple(part.share for part in parts),
        tuple(part.pull_kg for part in parts),
        tuple(part.rating.why for part in blocked if part.rating.why),
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once."""
    return (
        *_blocked_parts(found),
        *_altered(found),
        *_flat_legs(found),
        *_load(found),
        *judge_own_parts([part.item.own_part for part in found.parts]),
        *_lessons(found),
        note("marks-govern", "mandatory"),
    )


def _blocked_parts(found: Found) -> tuple[Reason, ...]:
    """A reason for each part that may not be used."""
    more = len(found.blocked) - 1
    reasons: list[Reason] = []
    for place, part in enumerate(found.parts):
        rating = part.rating
        if rating.why is None:
            continue
        facts: dict[str, Fact] = {"why": rating.why, "more": more}
        if rating.standing == "stop":
            reasons.append(Reason("part-forbidden", "stop", facts, part=place))
        else:
            reasons.append(Reason("part-without-rating", "unknown", facts, "prohibition", part=place))
    return tuple(reasons)


def _altered(found: Found) -> tuple[Reason, ...]:
    altered = any(part.item.condition in ALTERED for part in found.parts)
    return (note("altered-part", "warning"),) if altered else ()


def _load(found: Found) -> tuple[Reason, ...]:
    """What the load says of the string's capacity."""
    if isinstance(found.capacity_kg, Absent):
        return tuple(
            Reason("part-overloaded", "stop", {"part": part.item.label}, part=place)
            for place, part in enumerate(found.parts)
            if part.overloaded
        )
    used = share(found.load_kg / found.capacity_kg)
    if exceeds(found.load_kg, found.capacity_kg):
        return (over("over-string", used=used),)
    return (within("inside-string", used=used),)


def _flat_legs(found: Found) -> tuple[Reason, ...]:
    """Legs that lie too flat, or flat."""
    low = next((part for part in found.parts if part.flatness == "too-flat"), None)
    if low is not None:
        return (stop("legs-too-flat-beside" if found.blocked else "legs-too-flat", part=low.item.label),)
    return (caution("legs-flat"),) if any(part.flatness == "flat" for part in found.parts) else ()


def _lessons(found: Found) -> tuple[Reason, ...]:
    """What a reader of a string often takes wrongly."""
    reasons: list[Reason] = []
    if any(above.item.kind == below.item.kind for above, below in pairwise(found.parts)):
        reasons.append(note("alike-in-line"))
    if any(part.item.legs > 1 for part in found.parts):
        reasons.append(note("legs-share-by-angle"))
    reasons += _counting(found)
    by_tag = [part.rating.by_tag for part in found.parts if part.rating.by_tag is not None]
    if by_tag:
        reasons.append(note("tag-alone", factor=Number(min(by_tag), places=1)))
    if any(part.item.kind in EYEBOLTS for part in found.parts):
        reasons.append(note("stands-upright", "mandatory"))
    if any(part.rating.from_memory for part in found.parts):
        reasons.append(caution("rating-from-memory"))
    return tuple(reasons)


def _counting(found: Found) -> tuple[Reason, ...]:
    """How many legs count of three and more."""
    if any(part.item.counted_legs > FEWEST_COUNTED for part in found.parts):
        return (caution("three-counted"),)
    several = any(part.item.legs > part.item.counted_legs for part in found.parts)
    return (note("stiff-load-hangs-on-two"),) if several else ()


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    return tuple(line for part in found.parts for line in (_pull_step(part), _rating_step(part)))


def _pull_step(part: PathPart) -> Step:
    item = part.item
    counted = item.counted_legs
    return step(
        "pull-alone" if counted == 1 and item.angle_deg == 90.0 else "pull-of-legs",
        part=item.label,
        counted=counted,
        legs=item.legs,
        angle=Quantity(item.angle_deg, "angle"),
        pull=weight(part.pull_kg, "demand"),
    )


def _rating_step(part: PathPart) -> Step:
    item, rating = part.item, part.rating
    if rating.rating_kg is None or rating.straight_kg is None or rating.printed is None:
        seen: Fact = Option("items-condition", item.condition)
        if item.condition == NOT_LOOKED_AT:
            seen = message("not-looked-at")
        if item.condition == NOT_PASSED:
            seen = message("did-not-pass")
        return step("no-rating", part=item.label, condition=seen)
    reckoned = message("straight-rating", straight=weight(rating.straight_kg), printed=rating.printed)
    for left in rating.shares:
        reckoned = message("times-share", before=reckoned, share=Number(left.share), what=left.said)
    return step("rating", part=item.label, reckoned=reckoned, rating=weight(rating.rating_kg, "capacity"))


def shown(found: Found) -> Mapping[str, Fact]:
    """Shares and pulls stand behind the names of their parts."""
    shares = [
        message("of-part", part=part.item.label, amount=_share_fact(part.share)) for part in found.parts
    ]
    pulls = [
        message("of-part", part=part.item.label, amount=weight(part.pull_kg, "demand"))
        for part in found.parts
    ]
    return {"share": Listing(tuple(shares), "semicolon"), "pulls": Listing(tuple(pulls), "semicolon")}


def _share_fact(value: float | Absent) -> Fact:
    return value if isinstance(value, Absent) else share(value)


def draw(found: Found, writer: Writer) -> Figure:
    """A bar for each part."""
    bars = tuple(_bar(part, part is found.first, writer) for part in found.parts)
    said = [message("bar", part=part.item.label, share=_share_fact(part.share)) for part in found.parts]
    words = PathWords(
        support=writer.text("figure-support"),
        load=writer.text("figure-load"),
        whole_rating=writer.text("figure-whole-rating"),
        caption=writer.text("figure", parts=Listing(tuple(said), "semicolon")),
    )
    return path_figure(bars, words)


def _bar(part: PathPart, governs: bool, writer: Writer) -> PathBar:
    name, amount = writer.plain(part.item.label), writer.plain(_share_fact(part.share))
    if isinstance(part.share, Absent):
        return PathBar(name, amount, None, "barred")
    kind: BarKind = "over" if exceeds(part.share, 1.0) else "governs" if governs else "inside"
    return PathBar(name, amount, part.share, kind, governs)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where ratings and shares stand."""
    return tuple(dict.fromkeys(cited for part in found.parts for cited in part.rating.citations))


WORKSHEET = Worksheet(
    name="load-path",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=2_000_000), sense="demand"),
        *string_inputs(),
        RowsInput("items", columns=path_item_inputs(), bounds=Bounds(at_least=1, at_most=40)),
        JOB_INPUT,
    ),
    results=(
        Result("capacity", "weight", "capacity"),
        Result("governing"),
        Result("share", "fraction", "demand"),
        Result("pulls", "weight", "demand"),
        Result("blocked"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    shown=shown,
    shares=(*WORDS, JOB_WORDS),
    large="capacity",
    example={
        "load": "3,900 lb",
        "use": "plain",
        "load_kind": "stiff",
        "items": [
            {"label": "chain hoist", "kind": "hoist", "condition": "marked-good", "rating": "3 short tons"},
            {
                "label": "top ring",
                "kind": "ring",
                "condition": "marked-good",
                "grade": "80",
                "rating": "12,300 lb",
            },
            {
                "label": "sling legs",
                "kind": "chain",
                "condition": "marked-good",
                "grade": "80",
                "size": "9/32",
                "legs": "2",
                "angle": "60°",
            },
            {
                "label": "shackles",
                "kind": "shackle",
                "condition": "marked-good",
                "rating": "2 short tons",
                "legs": "2",
                "angle": "60°",
            },
        ],
    },
    citations=(
        Citation("osha-1926-251", "1926.251(b)(2), fittings rated at least as their chain"),
        Citation("astm-a413", "s. 1.1 scope, grades that do not lift"),
    ),
)
