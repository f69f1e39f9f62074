"""Is this chain still fit?

Chain wears thin where the links bear on each other, and stretches when it was overloaded. Limits: least thickness by
size (29 CFR 1910.184 Table N-184-1, Washington Table 13), share of thickness and stretch (DGUV 209-021 after DIN 685,
Queensland PN10123 and others), all in tables/chain-wear and tables/chain-limits.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from calc.declaration import Citation, Figure, Result, Worksheet
from calc.figures.inspection import LinkShape, link_figure
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, QuantityInput, TextInput
from calc.inspecting.chain_marks import THICKEST_OVER_NOMINAL, ChainSize, chain_sizes, may_lift, size_named
from calc.inspecting.chain_ratings import lifting_ratings, tie_down_ratings
from calc.inspecting.inspection import (
    CRITERIA_RESULT,
    DATE_INPUT,
    DECIDES_RESULT,
    NEXT_RESULT,
    SERVICE_INPUT,
    WORDS,
    Criterion,
    Finding,
    Inspected,
    Limit,
    Measure,
    Question,
    by_rules,
    found_fault,
    inspect,
    inspection_citations,
    inspection_steps,
    judge_inspected,
    limit_of,
    limits,
    no_is_bad,
    question,
    rule,
    strictest_first,
)
from calc.inspecting.measuring import grown, loss
from calc.inspecting.nominal_wire import nominal_m
from calc.quantities import to_si
from calc.ratings import Rating
from calc.reasons import Reason, note, stop, unknown
from calc.tables import number, table
from calc.words.facts import Absent, Listing, Message, absent, length, message
from calc.words.writer import Writer

DAMAGE = (
    "crack", "nick", "gouge", "bent", "twist", "stretched", "heat", "weld", "spatter", "pitting", "stiff", "homemade",
)  # fmt: skip
"""Damage that takes a chain out (Washington's list and 29 CFR 1910.184(e)), each the criterion `CODE`."""
_WORD_STEMS = {
    "crack": "crack", "nick": "nick", "gouge": "gouge", "bent": "bent", "bend": "bent", "twist": "twist", "stretch": "stretched",
    "heat": "heat", "burn": "heat", "weld": "weld", "mend": "weld", "spatter": "spatter", "arc": "spatter", "pit": "pitting",
    "rust": "pitting", "corro": "pitting", "stiff": "stiff", "seiz": "stiff", "home": "homemade", "shop": "homemade",
    "bolt": "homemade",
}  # fmt: skip
_FILLERS = ("none", "no", "and", "or", "of", "the", "link", "links", "colour", "color")
SHORTEST_PITCH, LONGEST_PITCH = 2.5, 4.5
"""Inside length of a link over its wire [-] beyond which a count of links must be wrong (short link is 3, coil chain
about 3.7; from memory)."""
UNMARKED = "unmarked"
_LIST = ("chain_sling", "washington-list")


def damages(given: Given) -> tuple[str, ...] | None:
    """The damage found, as codes of DAMAGE; empty for none; None where the box was left empty."""
    if not given.has("damage"):
        return None
    found: list[str] = []
    for word in re.findall(r"[a-z]+", given.text("damage").lower().replace("-", "")):
        if word in _FILLERS:
            continue
        stem = next((code for start, code in _WORD_STEMS.items() if word.startswith(start)), None)
        if stem is None:
            raise given.refuse("damage", "not-on-the-list", word=word, known=Listing(DAMAGE))
        if stem not in found:
            found.append(stem)
    return tuple(found)


def thickness_limits(size: ChainSize) -> tuple[Limit, ...]:
    """Every least thickness for a size [m], strictest first: printed ones, wear taken from the size, and shares of the
    thickness.
    """
    found = []
    for claim in table("chain-wear").rows:
        if claim["size_in"] not in size.inch_names or claim["unit"] == "mm":
            continue  # the millimetre rows are the same table's inch rows, rounded
        limit = limit_of(claim, "length")
        least, printed = limit.value_si, limit.printed
        if claim["quantity"] == "maximum_wear":
            whole = to_si(number({**claim, "value": claim["size_in"]}), "in", "length")
            least, printed = whole - limit.value_si, message("limit-of-wear", limit=limit.printed)
        found.append(Limit(least, printed, "out_under", limit.citations))
    for share in limits("chain-limits", ("chain",), "thickness_loss", "fraction"):
        printed = message("limit-of-thickness", limit=share.printed)
        found.append(Limit(nominal_m(size) * (1 - share.value_si), printed, "out_under", share.citations))
    return strictest_first(found)


def _size(given: Given) -> ChainSize:
    size = size_named(given.text("size"))
    if size is None:
        raise given.refuse("size", "not-a-size", known=Listing(tuple(one.said for one in chain_sizes())))
    return size


def _thickness(given: Given) -> float | None:
    """The thinnest reading of the wire [m]."""
    now, size = given.maybe("thickness_now"), _size(given)
    if now is not None and now > size.thickest_m * THICKEST_OVER_NOMINAL:
        raise given.refuse("thickness_now", "thicker-than-made", size=size.said)
    return now


def _stretch(given: Given) -> float | None:
    """Growth of the reach [-]."""
    pitch = _pitch_m(given)
    if pitch is not None and not SHORTEST_PITCH <= pitch / nominal_m(_size(given)) <= LONGEST_PITCH:
        raise given.refuse("links", "links-do-not-go-with-length")
    return grown(given, "reach_new", "reach_now")


def _pitch_m(given: Given) -> float | None:
    """Inside length of a link now [m]; None where the reach or the count of links is missing."""
    if not (given.has("links") and given.has("reach_now")):
        return None
    return given.si("reach_now") / given.count("links")


@dataclass(frozen=True)
class _Damage:
    """Each kind of damage that was found, or one line for none or for not looked at."""

    def findings(self, given: Given) -> tuple[Finding, ...]:
        """One finding for each."""
        found = damages(given)
        citation = rule(*_LIST)
        if not found:
            return (found_fault("damage", None if found is None else False, citation),)
        return tuple(found_fault(code, True, citation) for code in found)


CRITERIA: tuple[Criterion, ...] = (
    Measure(
        "worn-thin",
        lambda given: thickness_limits(_size(given)),
        _thickness,
        "length",
        digits=4,
        new=lambda given: nominal_m(_size(given)),
    ),
    Measure(
        "over-stretched",
        lambda _: limits("chain-limits", ("chain",), "elongation", "fraction"),
        _stretch,
        "fraction",
    ),
    _Damage(),
    Question("no-tag", no_is_bad("tag_readable"), by_rules(_LIST), lambda given: given.text("use") == "lift"),
)


@dataclass(frozen=True)
class Found:
    """What looking the chain over came to, and what it may do."""

    inspected: Inspected
    size: ChainSize
    grade: str
    use: str
    thickness_now_m: float | None
    rating: Rating | Absent
    wear: float | Absent
    min_thickness_m: float
    loosest_min_thickness_m: float
    stretch_percent: float | Absent
    pitch_now_m: float | Absent
    rating_if_sound_kg: float | Absent


def _rating(grade: str, use: str, size: ChainSize) -> Rating | Absent:
    """The rating for the use if the chain is sound, or why there is none."""
    if use == "tie_down":
        ratings = tie_down_ratings("30" if grade == UNMARKED else grade, size)
        return ratings[0] if ratings else absent("no-limit-in-law")
    if grade == UNMARKED:
        return absent("no-lifting-use-unmarked")
    if may_lift(grade) is False:
        return absent("no-lifting-use", grade=grade)
    ratings = lifting_ratings(grade, size)
    return min(ratings, key=lambda one: one.working_load_limit_kg) if ratings else absent("no-table-rates")


_NO_USE = ("no-lifting-use", "no-lifting-use-unmarked")


def find(given: Given) -> Found:
    """Look the chain over; see WORKSHEET for inputs and results."""
    size, grade, use = _size(given), given.text("grade"), given.text("use")
    now, stretch, pitch = _thickness(given), _stretch(given), _pitch_m(given)
    rating = _rating(grade, use, size)
    against = None
    if isinstance(rating, Absent) and rating.code in _NO_USE:
        against = Message(f"absent-{rating.code}", rating.facts)
    inspected = inspect("chain", CRITERIA, given, against, not isinstance(rating, Absent))
    thinnest = thickness_limits(size)
    unmeasured = absent("not-measured")
    return Found(
        inspected=inspected,
        size=size,
        grade=grade,
        use=use,
        thickness_now_m=now,
        rating=rating,
        wear=unmeasured if now is None else loss(nominal_m(size), now),
        min_thickness_m=thinnest[0].value_si,
        loosest_min_thickness_m=thinnest[-1].value_si,
        stretch_percent=unmeasured if stretch is None else stretch,
        pitch_now_m=absent("not-known") if pitch is None else pitch,
        rating_if_sound_kg=_if_sound(inspected, rating),
    )


def _if_sound(inspected: Inspected, rating: Rating | Absent) -> float | Absent:
    if isinstance(rating, Absent):
        return rating
    return rating.working_load_limit_kg if inspected.fit else absent("until-answered")


def judge(found: Found) -> tuple[Reason, ...]:
    """What is said of the use, and the reasons that every inspection shares."""
    return (*_of_the_use(found), *judge_inspected(found.inspected))


def _of_the_use(found: Found) -> tuple[Reason, ...]:
    if found.inspected.against:
        return (stop("no-lifting-use", why=found.inspected.against),)
    if isinstance(found.rating, Absent):
        return (unknown(found.rating.code),)
    rated = () if isinstance(found.rating_if_sound_kg, Absent) else (note("printed-rating"),)
    unmarked = (Reason("counts-as-grade-30", "caution", {}, "note"),) if found.grade == UNMARKED else ()
    return (*unmarked, *rated)


def draw(found: Found, writer: Writer) -> Figure:
    """A link with its wear."""
    new = nominal_m(found.size)
    return link_figure(
        LinkShape(new, worn_m=found.thickness_now_m),
        writer.text("label-new-wire", wire=writer.own(length(new))),
        writer,
    )


def cite(found: Found) -> tuple[Citation, ...]:
    """The places of the limits, and of the rating."""
    rating = found.rating
    own = () if isinstance(rating, Absent) else (Citation(rating.source, rating.locator),)
    return inspection_citations(found.inspected) + own


_REACH = Bounds(above=0, at_most=4000)

WORKSHEET = Worksheet(
    name="chain-check",
    inputs=(
        ChoiceInput("grade", choices=("80", "100", "70", "43", "30", "8", "5", "4", UNMARKED)),
        TextInput("size"),
        ChoiceInput("use", choices=("lift", "tie_down"), default="lift"),
        QuantityInput("thickness_now", dimension="length", bounds=Bounds(above=0, at_most=4), required=False),
        QuantityInput("reach_new", dimension="length", bounds=_REACH, required=False),
        QuantityInput("reach_now", dimension="length", bounds=_REACH, required=False),
        CountInput("links", bounds=Bounds(at_least=1, at_most=10000), required=False),
        TextInput("damage", required=False, several=True),
        question("tag_readable", use=("lift",)),
        SERVICE_INPUT,
        DATE_INPUT,
    ),
    results=(
        DECIDES_RESULT,
        Result("wear", "fraction", "demand"),
        Result("min_thickness", "length", "out_under", digits=4),
        Result("loosest_min_thickness", "length", digits=4),
        Result("stretch_percent", "fraction", "demand"),
        Result("pitch_now", "length", digits=4),
        Result("rating_if_sound", "weight", "capacity", digits=4),
        CRITERIA_RESULT,
        NEXT_RESULT,
    ),
    find=find,
    judge=judge,
    work=lambda found: inspection_steps(found.inspected),
    draw=draw,
    cite=cite,
    large="decides",
    example={
        "grade": "80",
        "size": "3/8",
        "use": "lift",
        "thickness_now": "0.369 in",
        "reach_new": "24.4 in",
        "reach_now": "24.6 in",
        "links": "20",
        "damage": "none",
        "tag_readable": "yes",
        "service": "normal",
        "inspected_on": "2026-11-24",
    },
    citations=(Citation("osha-1910-184", "1910.184(e)"),),
    shares=(WORDS, "shared/chain"),
)
