"""Is this chain still fit?

Chain wears thin where the links bear on each other, and stretches when it was overloaded. Limits: least thickness by
size (29 CFR 1910.184 Table N-184-1, Washington Table 13), share of thickness and stretch (DGUV 209-021 after DIN 685,
Queensland PN10123 and others), all in tables/chain-wear and tables/chain-limits.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from dataclasses import dataclass

from calc.declaration import Citation, Figure, Result, Worksheet
from calc.figures.inspection import LinkShape, link_figure
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, QuantityInput, TextInput
from calc.inspecting.chain_marks import (
    LONGEST_SHORT_LINK_OVER_WIRE,
    THICKEST_OVER_NOMINAL,
    ChainSize,
    chain_sizes,
    may_lift,
    size_named,
)
from calc.inspecting.chain_ratings import lifting_ratings, tie_down_ratings
from calc.inspecting.inspection import (
    CRITERIA_RESULT,
    DECIDES_RESULT,
    NEXT_RESULT,
    PART_INPUT,
    RECORD_INPUTS,
    RECORD_RESULTS,
    WORDS,
    Criterion,
    Inspected,
    Measure,
    Question,
    by_rules,
    inspect,
    inspection_citations,
    inspection_steps,
    judge_inspected,
    limits,
    no_is_bad,
    question,
)
from calc.inspecting.measuring import grown, loss
from calc.inspecting.nominal_wire import nominal_m
from calc.inspecting.thickness import thickness_limits
from calc.lifting.grade_input import GradeInput
from calc.ratings import Rating
from calc.reasons import Reason, note, stop, unknown
from calc.words.facts import Absent, Listing, Message, absent, length, message
from calc.words.writer import Writer

QUESTIONS = {
    "cracks": ("crack", "nick", "gouge"),
    "bent_links": ("bent", "twist"),
    "stretched_links": ("stretched",),
    "heat": ("heat",),
    "welds": ("weld", "spatter"),
    "pits": ("pitting",),
    "stiff_links": ("stiff",),
    "homemade_links": ("homemade",),
}
"""Damage that takes a chain out (Washington's list and 29 CFR 1910.184(e)) as a shop looks for it: one question for each
kind, with the codes of the list `damage` that belong to it."""
DAMAGE = tuple(code for codes in QUESTIONS.values() for code in codes)
_NO_DAMAGE = "none"
SHORTEST_PITCH, LONGEST_PITCH = 2.5, 4.5
"""Inside length of a link over its wire [-] beyond which a count of links must be wrong (coil chain is about 3.7; from
memory). Chain that is made to lift is held to the length at which what-is-it no longer takes it for such a chain."""
UNMARKED = "unmarked"
_EUROPEAN_4 = "M"
"""How European grade 4 is offered: by its letter, for the number 4 is stamped on grade 43 as well."""
_GEAR = ("chain_sling",)
_LIST = ("chain_sling", "washington-list")


def listed_damage(given: Given) -> tuple[str, ...] | None:
    """The damage on the list, as codes of DAMAGE; empty for none; None where there is no list. Nothing else is understood."""
    if not given.has("damage"):
        return None
    words = _words(given.text("damage"))
    for word in words:
        if word not in (*DAMAGE, _NO_DAMAGE):
            raise given.refuse("damage", "not-on-the-list", word=word, known=Listing(DAMAGE))
    if _NO_DAMAGE in words and len(set(words)) > 1:
        raise given.refuse("damage", "none-and-some")
    return tuple(word for word in dict.fromkeys(words) if word != _NO_DAMAGE)


def _words(typed: str) -> tuple[str, ...]:
    """The words of a list, given as a list or set apart by commas, semicolons or spaces."""
    try:
        found = json.loads(typed)
    except ValueError:
        found = None
    text = " ".join(str(one) for one in found) if isinstance(found, list) else typed
    return tuple(word for word in re.split(r"[\s,;]+", text.lower()) if word) or (typed,)


def damaged(question_name: str) -> Callable[[Given], bool | None]:
    """Whether there is damage of one kind: by the question, by the list, or None where nobody looked. A list of some damage
    says nothing of the other kinds; only `none` does. Question and list must agree.
    """

    def found(given: Given) -> bool | None:
        answered, listed = given.answered(question_name), listed_damage(given)
        if listed is None:
            return answered
        on_the_list = any(code in listed for code in QUESTIONS[question_name])
        if answered is not None and answered != on_the_list:
            raise given.refuse("damage", "list-against-answer", question=message(f"input-{question_name}"))
        return True if on_the_list else False if not listed else answered

    return found


def _size(given: Given) -> ChainSize:
    size = size_named(given.text("size"))
    if size is None:
        raise given.refuse("size", "not-a-size", known=Listing(tuple(one.said for one in chain_sizes())))
    return size


def _grade(given: Given) -> str:
    """The grade as the tables have it."""
    return "4" if given.text("grade") == _EUROPEAN_4 else given.text("grade")


def _thickness(given: Given) -> float | None:
    """The thinnest reading of the wire [m]."""
    now, size = given.maybe("thickness_now"), _size(given)
    if now is not None and now > size.thickest_m * THICKEST_OVER_NOMINAL:
        raise given.refuse("thickness_now", "thicker-than-made", size=size.said)
    return now


def _stretch(given: Given) -> float | None:
    """Growth of the reach [-]."""
    pitch = _pitch_m(given)
    longest = LONGEST_SHORT_LINK_OVER_WIRE if may_lift(_grade(given)) else LONGEST_PITCH
    if pitch is not None and not SHORTEST_PITCH <= pitch / nominal_m(_size(given)) <= longest:
        raise given.refuse("links", "links-do-not-go-with-length")
    return grown(given, "reach_new", "reach_now")


def _pitch_m(given: Given) -> float | None:
    """Inside length of a link now [m]; None where the reach or the count of links is missing."""
    if not (given.has("links") and given.has("reach_now")):
        return None
    return given.si("reach_now") / given.count("links")


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
    *(Question(name.replace("_", "-"), damaged(name), by_rules(_LIST)) for name in QUESTIONS),
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
    size, use, grade = _size(given), given.text("use"), _grade(given)
    now, stretch, pitch = _thickness(given), _stretch(given), _pitch_m(given)
    rating = _rating(grade, use, size)
    against = None
    if isinstance(rating, Absent) and rating.code in _NO_USE:
        against = Message(f"absent-{rating.code}", rating.facts)
    inspected = inspect("chain", _GEAR, CRITERIA, given, against, not isinstance(rating, Absent))
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
        PART_INPUT,
        GradeInput("grade", choices=("80", "100", "70", "43", "30", "8", "5", _EUROPEAN_4, UNMARKED)),
        TextInput("size"),
        ChoiceInput("use", choices=("lift", "tie_down")),
        QuantityInput(
            "thickness_now",
            dimension="length",
            bounds=Bounds(above=0, at_most=4),
            required=False,
            sense="capacity",
        ),
        QuantityInput("reach_new", dimension="length", bounds=_REACH, required=False),
        QuantityInput("reach_now", dimension="length", bounds=_REACH, required=False, sense="demand"),
        CountInput("links", bounds=Bounds(at_least=1, at_most=10000), required=False),
        *(question(name) for name in QUESTIONS),
        TextInput("damage", required=False, several=True, on_page=False),
        question("tag_readable", use=("lift",)),
        *RECORD_INPUTS,
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
        *RECORD_RESULTS,
        NEXT_RESULT,
    ),
    find=find,
    judge=judge,
    work=lambda found: inspection_steps(found.inspected),
    draw=draw,
    cite=cite,
    large="decides",
    example={
        "part_name": "keel sling",
        "grade": "80",
        "size": "3/8",
        "use": "lift",
        "thickness_now": "0.369 in",
        "reach_new": "24.4 in",
        "reach_now": "24.6 in",
        "links": "20",
        **dict.fromkeys(QUESTIONS, "no"),
        "tag_readable": "yes",
        "place": "us-washington",
        "service": "normal",
        "inspected_on": "today",
        "inspected_by": "R. Ames",
    },
    citations=(Citation("osha-1910-184", "1910.184(e)"),),
    shares=(WORDS, "shared/chain"),
)
