"""Is this hook still fit?

A hook opens at the throat, twists and wears in the saddle before it breaks; a cracked, welded or heated one gives no
sign at all. Limits: WAC 296-155-55800 Table 12 and Queensland PN10123 (5 percent), 29 CFR 1910.184 and others
(15 percent), all in tables/hook-limits.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.declaration import Citation, Figure, Result, Worksheet
from calc.figures.inspection import HookShape, hook_figure
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput
from calc.inspecting.inspection import (
    CRITERIA_RESULT,
    DECIDES_RESULT,
    NEXT_RESULT,
    PART_INPUT,
    RECORD_INPUTS,
    RECORD_RESULTS,
    WORDS,
    Inspected,
    Limit,
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
    yes_is_bad,
)
from calc.inspecting.measuring import grown, lost
from calc.inspecting.record import HARDWARE
from calc.reasons import Reason, note
from calc.words.facts import Absent, absent
from calc.words.writer import Writer

ITEMS = ("hook", "crane_hook")
_HARDWARE = ("rigging_hardware", "any-of")
_GEAR = {"sling": HARDWARE, "crane": ("crane_hook",), "": (*HARDWARE, "crane_hook")}
"""What the hook is in the table of intervals, by what it hangs on; not said, it may be either."""
_BAD_LATCH = {"closes": False, "does-not-close": True, "missing": True, "none-made": False}


def _limits(quantity: str, dimension: str) -> tuple[Limit, ...]:
    return limits("hook-limits", ITEMS, quantity, dimension)


def _throat(given: Given) -> float | None:
    """Growth of the throat [-]."""
    return grown(given, "throat_new", "throat_now")


def _throat_m(given: Given) -> float | None:
    """Growth of the throat [m]."""
    return None if _throat(given) is None else max(0.0, given.si("throat_now") - given.si("throat_new"))


def _wear(given: Given) -> float | None:
    """Loss of section [-]."""
    return lost(given, "section_new", "section_now")


CRITERIA = (
    Measure("throat-opened", lambda _: _limits("throat_increase", "fraction"), _throat, "fraction"),
    Measure(
        "throat-opened-in-length",
        lambda _: _limits("throat_increase_largest", "length"),
        _throat_m,
        "length",
        look="throat-opened",
    ),
    Measure("section-worn", lambda _: _limits("section_wear", "fraction"), _wear, "fraction"),
    Measure(
        "twisted",
        lambda _: _limits("twist", "angle"),
        lambda given: given.maybe("twist"),
        "angle",
        missing="not-looked-at",
    ),
    Question("latch", lambda given: _BAD_LATCH.get(given.text("latch")), by_rules(("hook", "latch"))),
    Question("crack", yes_is_bad("cracks"), by_rules(("hook", "cracked"))),
    Question("no-marks", no_is_bad("marks_readable"), by_rules(_HARDWARE)),
    Question("altered", yes_is_bad("altered"), by_rules(_HARDWARE)),
)


@dataclass(frozen=True)
class Found:
    """What looking the hook over came to, and the sizes at which it is out."""

    inspected: Inspected
    shape: HookShape
    latch: str
    throat_increase_percent: float | Absent
    throat_increase_m: float | Absent
    throat_limit_m: float | Absent
    wear_percent: float | Absent
    section_limit_m: float | Absent


def find(given: Given) -> Found:
    """Look the hook over; see WORKSHEET for inputs and results."""
    throat, throat_m, wear = _throat(given), _throat_m(given), _wear(given)
    new, section_new = given.maybe("throat_new"), given.maybe("section_new")
    worn_out = _limits("section_wear", "fraction")[0].value_si
    unmeasured = absent("not-measured")
    return Found(
        inspected=inspect("hook", _GEAR[given.text("hook_on")], CRITERIA, given),
        shape=HookShape(new, given.maybe("throat_now"), given.maybe("section_now")),
        latch=given.text("latch"),
        throat_increase_percent=unmeasured if throat is None else throat,
        throat_increase_m=unmeasured if throat_m is None else throat_m,
        throat_limit_m=absent("not-known") if new is None else largest_throat_m(new),
        wear_percent=unmeasured if wear is None else wear,
        section_limit_m=absent("not-known") if section_new is None else section_new * (1 - worn_out),
    )


def largest_throat_m(new_m: float) -> float:
    """The throat at which the strictest limit is met [m]: 5 percent, and not more than 1/4 in (WAC 296-155-55800)."""
    by_share = new_m * (1 + _limits("throat_increase", "fraction")[0].value_si)
    return min(by_share, new_m + _limits("throat_increase_largest", "length")[0].value_si)


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons that every inspection shares, and what is said of latches and new throats."""
    extra = []
    if found.latch == "none-made":
        extra.append(note("made-without-latch", "warning"))
    if found.shape.throat_new_m is None:
        extra.append(note("where-the-new-throat-stands"))
    return (*judge_inspected(found.inspected), *extra)


def draw(found: Found, writer: Writer) -> Figure:
    """The hook with what to measure."""
    return hook_figure(found.shape, writer)


_LENGTH = Bounds(above=0, at_most=40)

WORKSHEET = Worksheet(
    name="hook-check",
    inputs=(
        PART_INPUT,
        QuantityInput("throat_new", dimension="length", bounds=_LENGTH, required=False),
        QuantityInput(
            "throat_now",
            dimension="length",
            bounds=Bounds(above=0, at_most=80),
            required=False,
            sense="demand",
        ),
        QuantityInput("section_new", dimension="length", bounds=_LENGTH, required=False),
        QuantityInput("section_now", dimension="length", bounds=_LENGTH, required=False, sense="capacity"),
        QuantityInput(
            "twist",
            dimension="angle",
            bounds=Bounds(at_least=0, at_most=90),
            required=False,
            sense="demand",
        ),
        ChoiceInput("latch", choices=tuple(_BAD_LATCH), required=False),
        question("cracks"),
        question("marks_readable"),
        question("altered"),
        ChoiceInput("hook_on", choices=("sling", "crane"), required=False),
        *RECORD_INPUTS,
    ),
    results=(
        DECIDES_RESULT,
        Result("throat_increase_percent", "fraction", "demand"),
        Result("throat_increase", "length", "demand"),
        Result("throat_limit", "length", "out_at", digits=4),
        Result("wear_percent", "fraction", "demand"),
        Result("section_limit", "length", "out_under", digits=4),
        CRITERIA_RESULT,
        *RECORD_RESULTS,
        NEXT_RESULT,
    ),
    find=find,
    judge=judge,
    work=lambda found: inspection_steps(found.inspected),
    draw=draw,
    cite=lambda found: inspection_citations(found.inspected),
    large="decides",
    example={
        "part_name": "engine sling, hook 2",
        "throat_new": "1.16 in",
        "throat_now": "1.24 in",
        "section_new": "0.92 in",
        "section_now": "0.89 in",
        "twist": "0",
        "latch": "closes",
        "cracks": "no",
        "marks_readable": "yes",
        "altered": "no",
        "hook_on": "sling",
        "place": "us-washington",
        "service": "normal",
        "inspected_on": "today",
        "inspected_by": "R. Ames",
    },
    citations=(Citation("osha-1910-184", "1910.184(e)(9), (f)(5)"),),
    shares=(WORDS,),
)
