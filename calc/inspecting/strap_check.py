"""Is this tie-down strap still fit: webbing, stitching, ratchet, hooks, label?

Any damage is out (49 CFR 393.104(b); the law prints no size of cut that may stay). A cut that is measured is out whatever its
size; where it is as large as the roadside list of North America has it (out-of-service criteria of the Commercial Vehicle
Safety Alliance, recalled and not read: 3/8 in on webbing of 1-3/4 and 2 in, 5/8 in on 3 in, 3/4 in on 4 in), the sheet adds
that the truck would already be stopped for it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Worksheet
from calc.figures.tie_down_gear import strap_parts_figure
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
    Question,
    inspect,
    inspection_citations,
    inspection_steps,
    judge_inspected,
    no_is_bad,
    question,
    yes_is_bad,
)
from calc.inspecting.tie_down_gear import (
    CANNOT_LOOSEN,
    NO_DAMAGE,
    NO_KNOTS,
    REPAIRS,
    UNMARKED,
    by,
    limit_if_sound,
    limit_input,
)
from calc.quantities import to_si
from calc.reasons import Reason, note
from calc.words.facts import Absent, force
from calc.words.writer import Writer

ROADSIDE_CUT_IN: Mapping[str, float] = {"1-3/4": 3 / 8, "2": 3 / 8, "3": 5 / 8, "4": 3 / 4}
"""Cuts, burns and holes together across the webbing from which a truck is stopped at the roadside, by width of the webbing
[in] (out-of-service criteria, from memory). Never an allowance: a smaller cut is out as well.
"""


MOST_LB_PER_INCH = 7_500.0
"""No strap is labelled with more for each inch of its width [lb]: webbing of 75 mm has an LC of 10,000 daN in a loop at most (our
own mark). Ten times the limit, by a nought too many, is more."""


def _cut(given: Given) -> bool | None:
    """A cut that was seen, or measured at more than nothing."""
    if (given.maybe("cut_size") or 0.0) > 0.0:
        return True
    return given.answered("cut")


CRITERIA = (
    Question("no-label", no_is_bad("label_readable"), by(UNMARKED)),
    Question("cut", _cut, by(NO_DAMAGE)),
    Question("burned", yes_is_bad("burned"), by(NO_DAMAGE)),
    Question("stitching", yes_is_bad("stitching"), by(NO_DAMAGE)),
    Question("knot", yes_is_bad("knot"), by(NO_KNOTS)),
    Question("ratchet", no_is_bad("ratchet_works"), by(NO_DAMAGE, CANNOT_LOOSEN)),
    Question("hooks", yes_is_bad("hooks_bent"), by(NO_DAMAGE)),
    Question("altered", yes_is_bad("altered"), by(REPAIRS)),
)


@dataclass(frozen=True)
class Found:
    """What looking the strap over came to.

    roadside -- whether a truck would already be stopped for the cut; gives_tension -- whether the label has one (STF)
    """

    inspected: Inspected
    roadside: bool
    gives_tension: bool
    limit_if_sound_n: float | Absent


def find(given: Given) -> Found:
    """Look the strap over; see WORKSHEET for inputs and results."""
    if given.answered("cut") is False and (given.maybe("cut_size") or 0.0) > 0.0:
        raise given.refuse("cut_size", "size-without-a-cut")
    _refuse_over_its_webbing(given)
    inspected = inspect("strap", ("tie_down_strap",), CRITERIA, given)
    return Found(
        inspected=inspected,
        roadside=_roadside(given),
        gives_tension=given.answered("tension_on_label") is True,
        limit_if_sound_n=limit_if_sound(inspected, given.maybe("limit")),
    )


def _refuse_over_its_webbing(given: Given) -> None:
    """Refuses a limit that no webbing of that width is labelled with; of unknown width, of the widest."""
    limit_n = given.maybe("limit")
    width = given.text("width") or "4"
    width_in = float(sum(Fraction(part) for part in width.split("-")))
    most_n = to_si(MOST_LB_PER_INCH * width_in, "lbf", "force")
    if limit_n is not None and exceeds(limit_n, most_n):
        raise given.refuse("limit", "more-than-its-webbing", most=force(most_n, "capacity"))


def _roadside(given: Given) -> bool:
    """Whether the cut is as large as the roadside list has it; of webbing of unknown width, as the narrowest."""
    cut_m = given.maybe("cut_size")
    least_in = ROADSIDE_CUT_IN.get(given.text("width"), min(ROADSIDE_CUT_IN.values()))
    return cut_m is not None and cut_m >= to_si(least_in, "in", "length")


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons that every inspection shares, and what is said of straps."""
    reasons = list(judge_inspected(found.inspected))
    if found.roadside:
        reasons.append(note("already-an-offence", "prohibition"))
    if not found.gives_tension:
        reasons.append(note("no-tension-on-label", "warning"))
    return (*reasons, note("any-damage-is-out", "prohibition"), note("look-each-trip", "mandatory"))


def draw(_found: Found, writer: Writer) -> Figure:
    """The strap with where to look."""
    return strap_parts_figure(writer)


WORKSHEET = Worksheet(
    name="strap-check",
    inputs=(
        PART_INPUT,
        question("label_readable"),
        question("tension_on_label"),
        question("cut"),
        ChoiceInput("width", choices=tuple(ROADSIDE_CUT_IN), required=False),
        QuantityInput(
            "cut_size",
            dimension="length",
            bounds=Bounds(at_least=0, at_most=12),
            required=False,
            sense="demand",
        ),
        question("burned"),
        question("stitching"),
        question("knot"),
        question("ratchet_works"),
        question("hooks_bent"),
        question("altered"),
        limit_input("limit"),
        *RECORD_INPUTS,
    ),
    results=(
        DECIDES_RESULT,
        Result("limit_if_sound", "force", "capacity"),
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
        "part_name": "trailer strap 3",
        "label_readable": "yes",
        "tension_on_label": "yes",
        "cut": "no",
        "width": "2",
        "burned": "no",
        "stitching": "no",
        "knot": "no",
        "ratchet_works": "yes",
        "hooks_bent": "no",
        "altered": "no",
        "limit": "3,333 lb",
        "place": "us-federal",
        "service": "normal",
        "inspected_on": "today",
        "inspected_by": "R. Ames",
    },
    citations=(
        Citation("cfr-49-393", "393.104(b)"),
        Citation("cfr-49-392", "392.9(b)"),
        Citation("en-12195-2", "user information"),
    ),
    shares=(WORDS,),
)
