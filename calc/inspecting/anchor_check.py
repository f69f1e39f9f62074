"""Is this anchor on truck or trailer still fit, and are the edges beside it protected?

An anchor is a part of the tie-down and of the vehicle: its limit counts (49 CFR 393.108(a)), and it must be free of weakening
damage with the deck that holds it (393.104(c)). One that somebody welded on has no limit that anybody knows; on the frame of
a commercial vehicle the weld itself is barred unless the frame's maker allows it (393.201(d) speaks of the frame and
chassis, and of no other place). A hook for the rope of a tarpaulin is no anchor, and one anchor holds one lashing (guidance
for goods vehicles of the United Kingdom, read).
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.declaration import Citation, Figure, Result, Worksheet
from calc.figures.tie_down_gear import anchor_figure
from calc.inputs import ChoiceInput, Given
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
    cites,
    inspect,
    inspection_citations,
    inspection_steps,
    judge_inspected,
    no_is_bad,
    question,
    yes_is_bad,
)
from calc.inspecting.tie_down_gear import (
    ANCHORS,
    CANNOT_LOOSEN,
    EDGES,
    NO_WELD,
    WEAKEST,
    by,
    limit_if_sound,
    limit_input,
)
from calc.reasons import Reason, note
from calc.words.facts import Absent
from calc.words.writer import Writer

_BRITISH = Citation("gov-uk-securing-loads", "s. 4")
ORIGINS = ("maker", "bolted", "welded-on", "rope-hook")
"""Who put the anchor there: the maker of the vehicle; bolted on, rated, as that maker allows; welded on by somebody else; a
hook that was made for the rope of a tarpaulin."""


def _is(origin: str, given: Given) -> bool | None:
    return given.text("origin") == origin if given.has("origin") else None


CRITERIA = (
    Question("welded-on", lambda given: _is("welded-on", given), by(NO_WELD, ANCHORS)),
    Question("rope-hook", lambda given: _is("rope-hook", given), cites(_BRITISH)),
    Question("no-limit", no_is_bad("limit_known"), by(WEAKEST)),
    Question("bent", yes_is_bad("bent"), by(ANCHORS)),
    Question("loose", yes_is_bad("loose"), by(ANCHORS, CANNOT_LOOSEN)),
    Question("deck", yes_is_bad("deck_damaged"), by(ANCHORS)),
    Question("shared", no_is_bad("one_each"), cites(_BRITISH)),
    Question("bare-edges", no_is_bad("edges_covered"), by(EDGES)),
    Question("worn-protectors", yes_is_bad("protectors_worn"), by(EDGES)),
)


@dataclass(frozen=True)
class Found:
    """What looking the anchor over came to; `welded`: somebody welded it on."""

    inspected: Inspected
    welded: bool
    limit_if_sound_n: float | Absent


def find(given: Given) -> Found:
    """Look the anchor over; see WORKSHEET for inputs and results."""
    inspected = inspect("anchor", ("vehicle_anchor",), CRITERIA, given)
    limit = limit_if_sound(inspected, given.maybe("limit"))
    return Found(inspected=inspected, welded=given.text("origin") == "welded-on", limit_if_sound_n=limit)


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons that every inspection shares, and what is said of anchors."""
    reasons = list(judge_inspected(found.inspected))
    if found.welded:
        reasons.append(note("welded-has-no-limit", "prohibition"))
    return (*reasons, note("lifting-mark-misleads", "warning"), note("look-each-trip", "mandatory"))


def draw(_found: Found, writer: Writer) -> Figure:
    """Anchor and edge protector with where to look."""
    return anchor_figure(writer)


WORKSHEET = Worksheet(
    name="anchor-check",
    inputs=(
        PART_INPUT,
        ChoiceInput("origin", choices=ORIGINS, required=False),
        question("limit_known"),
        question("bent"),
        question("loose"),
        question("deck_damaged"),
        question("one_each"),
        question("edges_covered"),
        question("protectors_worn"),
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
        "part_name": "trailer, ring 2 left",
        "origin": "maker",
        "limit_known": "yes",
        "bent": "no",
        "loose": "no",
        "deck_damaged": "no",
        "one_each": "yes",
        "edges_covered": "yes",
        "protectors_worn": "no",
        "limit": "6,600 lb",
        "place": "us-federal",
        "service": "normal",
        "inspected_on": "today",
        "inspected_by": "R. Ames",
    },
    citations=(
        Citation("cfr-49-393", "393.104(c), 393.108(a), 393.201(d)"),
        Citation("cfr-49-392", "392.9(b)"),
    ),
    shares=(WORDS,),
)
