"""Is this tie-down chain with its binder still fit?

The chain, its hooks and the binder are one tie-down, whose limit is that of the weakest of them (49 CFR 393.108(a)). Any
damage is out (393.104(b)): the law prints no wear that may stay. A lever binder stores the pull that is put into it and
gives it back when the handle flies; that is why its handle and the way it was closed are asked.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Worksheet
from calc.figures.tie_down_gear import binder_figure
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
    WEAKEST,
    by,
    limit_if_sound,
    limit_input,
)
from calc.reasons import Reason, note
from calc.words.facts import Absent
from calc.words.writer import Writer

CRITERIA = (
    Question("no-chain-mark", no_is_bad("chain_marked"), by(UNMARKED)),
    Question("no-binder-mark", no_is_bad("binder_marked"), by(UNMARKED, WEAKEST)),
    Question("links", yes_is_bad("links_damaged"), by(NO_DAMAGE)),
    Question("worn", yes_is_bad("worn"), by(NO_DAMAGE)),
    Question("knot", yes_is_bad("knot"), by(NO_KNOTS)),
    Question("hooks", yes_is_bad("hooks_bent"), by(NO_DAMAGE)),
    Question("handle", yes_is_bad("handle_bent"), by(NO_DAMAGE)),
    Question("locks", no_is_bad("locks"), by(CANNOT_LOOSEN)),
    Question("altered", yes_is_bad("altered"), by(REPAIRS)),
)


@dataclass(frozen=True)
class Found:
    """What looking chain and binder over came to; `binder_is_weaker`: the binder's limit is below the chain's."""

    inspected: Inspected
    kind: str
    binder_is_weaker: bool
    limit_if_sound_n: float | Absent


def find(given: Given) -> Found:
    """Look chain and binder over; see WORKSHEET for inputs and results."""
    inspected = inspect("binder", ("tie_down_chain",), CRITERIA, given)
    chain_n, binder_n = given.maybe("chain_limit"), given.maybe("binder_limit")
    return Found(
        inspected=inspected,
        kind=given.text("kind"),
        binder_is_weaker=chain_n is not None and binder_n is not None and exceeds(chain_n, binder_n),
        limit_if_sound_n=limit_if_sound(inspected, chain_n, binder_n),
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons that every inspection shares, and what is said of binders."""
    reasons = list(judge_inspected(found.inspected))
    if found.binder_is_weaker:
        reasons.append(note("binder-is-weaker", "warning"))
    if found.kind != "ratchet":
        reasons.append(note("lever-flies", "prohibition"))
    return (*reasons, note("no-bar-on-handle", "prohibition"), note("look-each-trip", "mandatory"))


def draw(_found: Found, writer: Writer) -> Figure:
    """Chain and binder with where to look."""
    return binder_figure(writer)


WORKSHEET = Worksheet(
    name="binder-check",
    inputs=(
        PART_INPUT,
        ChoiceInput("kind", choices=("lever", "ratchet"), required=False),
        question("chain_marked"),
        question("binder_marked"),
        question("links_damaged"),
        question("worn"),
        question("knot"),
        question("hooks_bent"),
        question("handle_bent"),
        question("locks"),
        question("altered"),
        limit_input("chain_limit"),
        limit_input("binder_limit"),
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
        "part_name": "loader chain, front left",
        "kind": "ratchet",
        "chain_marked": "yes",
        "binder_marked": "yes",
        "links_damaged": "no",
        "worn": "no",
        "knot": "no",
        "hooks_bent": "no",
        "handle_bent": "no",
        "locks": "yes",
        "altered": "no",
        "chain_limit": "6,600 lb",
        "binder_limit": "5,400 lb",
        "place": "us-federal",
        "service": "normal",
        "inspected_on": "today",
        "inspected_by": "R. Ames",
    },
    citations=(
        Citation("cfr-49-393", "393.104(b), 393.108(a)"),
        Citation("cfr-49-392", "392.9(b)"),
        Citation("en-12195-3", "user information"),
    ),
    shares=(WORDS,),
)
