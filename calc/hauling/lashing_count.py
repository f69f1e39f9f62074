"""How many straps over the top hold a load, and what would blocking save?

The quick count for one kind of strap, EN 12195-1, sliding (calc.hauling.lashing_forces): k = 1.5 decides, the count by the
edition of 2010 (k = 2) stands beside it. The tension is the STF on the strap's label, or measured; never its limit. It
rates nothing: whether strap and anchors may bear the tension is asked by the worksheet tie-down.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.lashings import StrapCurve, strap_figure
from calc.hauling.friction import WORDS, Grip, deck_input, grip, mat_friction, pair_input
from calc.hauling.lashing_forces import (
    ARRIVES_2003,
    ARRIVES_2010,
    BELOW_IS_FLAT_DEG,
    FEWEST_OVER_THE_TOP,
    Direction,
    OverTop,
    StrapCount,
    safety_factor,
    sliding_share,
    straps_needed,
)
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note
from calc.words.facts import Number, force, message, share
from calc.words.writer import Writer

TENSION_SHARE_AT_MOST = 0.5
"""A tension left by a hand ratchet is at most so much of the strap's limit [-] (EN 12195-2 bounds STF by half of LC, from
memory): what is more was read from the wrong line of the label."""
MOST_BY_HAND_N = 10_000.0
"""Labels of hand ratchets print tensions of 2.5 to 7.5 kN (common practice, no source). More than this
is more likely a limit, whatever limit stands beside it: a label prints the LC of the strap straight, and twice as much in a loop."""
MANY_STRAPS = 6
"""More straps than this on one load: block it instead (our own mark, no source)."""
SLACK_N = 10.0
"""A strap with less tension than this hangs slack [N] (our own mark, no source): a count would run to absurd numbers."""
FLAT_M = 0.01
"""A strap that comes down by less than this lies flat [m] (our own mark, no source): it presses nothing to count on."""
TONNE_N = 1000.0 * STANDARD_GRAVITY_M_PER_S2


def tension_input(required: bool) -> QuantityInput:
    """The tension that the ratchet leaves in the strap."""
    return QuantityInput(
        "tension",
        dimension="force",
        bounds=Bounds(at_least=SLACK_N, at_most=20_000),
        required=required,
        sense="capacity",
    )


def check_tension(given: Given, tension_n: float, limit_n: float | None, strap: bool = True) -> None:
    """Refuses a tension that can only be a limit: of a strap, more than a hand ratchet leaves."""
    if limit_n is not None and exceeds(tension_n, TENSION_SHARE_AT_MOST * limit_n):
        raise given.refuse("tension", "limit-as-tension", half=force(TENSION_SHARE_AT_MOST * limit_n))
    if strap and exceeds(tension_n, MOST_BY_HAND_N):
        raise given.refuse("tension", "more-than-by-hand", most=force(MOST_BY_HAND_N, "capacity"))


@dataclass(frozen=True)
class Found:
    """How many straps, by which direction, and what else would do.

    each_holds_n -- what one strap adds against sliding forward or, blocked in front, to the sides
    straps_with_mat -- on a friction mat on a swept deck; straps_if_blocked -- with the front blocked
    blocking_force_n -- what blocking in front must hold, no strap helping it
    """

    weight_kg: float
    blocked: bool
    grip: Grip
    strap: OverTop
    limit_known: bool
    worst: Direction
    counted: StrapCount
    sideways: StrapCount
    straps_by_2010: int
    straps_with_mat: int
    held_alone: float
    each_holds_n: float
    per_tonne: float
    blocking_force_n: float

    @property
    def straps_needed(self) -> int:
        """How many straps."""
        return self.counted.number

    @property
    def straps_if_blocked(self) -> int:
        """How many where blocking holds the load forward: those against moving to the sides."""
        return self.sideways.number

    @property
    def friction(self) -> float:
        """Standing friction [-]."""
        return self.grip.friction

    @property
    def strap_angle_deg(self) -> float:
        """Angle of the strap's legs to the deck [deg]."""
        return self.strap.angle_deg


def find(given: Given) -> Found:
    """The counts; see WORKSHEET for inputs and results."""
    weight_kg = given.si("load")
    weight_n = weight_kg * STANDARD_GRAVITY_M_PER_S2
    held = grip(given.text("deck"), given.text("pair"))
    tension_n = given.si("tension")
    check_tension(given, tension_n, given.maybe("limit"))
    strap = OverTop(tension_n, given.si("across"), given.si("down"))
    blocked = given.text("blocked") == "yes"
    forward = straps_needed(weight_n, held.friction, strap, "forward")
    sideways = straps_needed(weight_n, held.friction, strap, "left")
    worst: Direction = "left" if blocked else "forward"
    counted = sideways if blocked else forward
    by_2010 = straps_needed(weight_n, held.friction, strap, worst, ARRIVES_2010)
    on_mat = straps_needed(weight_n, max(held.friction, mat_friction()), strap, worst)
    return Found(
        weight_kg=weight_kg,
        blocked=blocked,
        grip=held,
        strap=strap,
        limit_known=given.has("limit"),
        worst=worst,
        counted=counted,
        sideways=sideways,
        straps_by_2010=by_2010.number,
        straps_with_mat=on_mat.number,
        held_alone=min(1.0, held.friction / sliding_share(worst)),
        each_holds_n=held.friction * strap.presses_n() / safety_factor(worst),
        per_tonne=counted.exact * TONNE_N / weight_n,
        blocking_force_n=max(0.0, sliding_share("forward") - held.friction) * weight_n,
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """What is to be said of the count; it rates nothing."""
    reasons: list[Reason] = []
    if found.held_alone >= 1.0:
        reasons.append(note("friction-holds", "mandatory"))
    else:
        reasons.append(note("counted", "mandatory"))
    if not found.limit_known:
        reasons.append(caution("limit-not-given"))
    if found.blocked and found.blocking_force_n > 0.0:
        reasons.append(caution("blocking-must-hold"))
    if found.straps_needed > MANY_STRAPS:
        reasons.append(caution("many-straps" if found.blocked else "block-instead"))
    if exceeds(BELOW_IS_FLAT_DEG, found.strap_angle_deg):
        reasons.append(caution("straps-flat"))
    if found.grip.from_memory:
        reasons.append(caution("friction-bound"))
    reasons += [note("retighten", "mandatory"), note("tension-not-limit", "warning"), note("slides-only")]
    return tuple(reasons)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    return (
        step("friction-alone", asked=share(sliding_share(found.worst))),
        step(
            "one-strap",
            arrives=Number(ARRIVES_2003),
            safety=Number(safety_factor(found.worst)),
            sine=Number(found.strap.down_share, 3),
        ),
        step(
            "straps",
            asked=Number(sliding_share(found.worst)),
            exact=Number(found.counted.exact, 3),
            fewest=FEWEST_OVER_THE_TOP,
        ),
        step("straps-2010", arrives=Number(ARRIVES_2010)),
    )


def draw(found: Found, writer: Writer) -> Figure:
    """Straps against friction."""
    asked = sliding_share(found.worst)
    each_n = found.strap.presses_n() / safety_factor(found.worst)
    curve = StrapCurve(
        asked, found.weight_kg * STANDARD_GRAVITY_M_PER_S2 / each_n, found.friction, found.straps_needed
    )
    worst = max(FEWEST_OVER_THE_TOP, math.ceil(curve.at(0.1)))
    caption = writer.text(
        "figure",
        friction=Number(found.friction, 2),
        straps=message("straps-counted", count=found.straps_needed),
        worst=message("straps-counted", count=worst),
    )
    return strap_figure(curve, caption, writer)


WORKSHEET = Worksheet(
    name="lashing-count",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=100_000), sense="demand"),
        deck_input(),
        pair_input(),
        tension_input(required=True),
        QuantityInput("limit", dimension="force", bounds=Bounds(above=0, at_most=50_000), required=False),
        QuantityInput("across", dimension="length", bounds=Bounds(at_least=0, at_most=200)),
        QuantityInput("down", dimension="length", bounds=Bounds(at_least=FLAT_M, at_most=200)),
        ChoiceInput("blocked", choices=("no", "yes")),
    ),
    results=(
        Result("straps_needed", sense="demand"),
        Result("straps_if_blocked", sense="demand"),
        Result("straps_with_mat", sense="demand"),
        Result("straps_by_2010", sense="demand"),
        Result("per_tonne", sense="demand"),
        Result("blocking_force", "force", "demand"),
        Result("each_holds", "force", "capacity"),
        Result("held_alone", "fraction", "capacity"),
        Result("friction"),
        Result("strap_angle", "angle"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=lambda found: (found.grip.source,),
    large="straps_needed",
    rates=False,
    shares=(WORDS,),
    example={
        "load": "2,600 lb",
        "deck": "swept-dry",
        "pair": "sawn-wood-on-plywood",
        "tension": "300 daN",
        "limit": "2,500 daN",
        "across": "6 in",
        "down": "38 in",
        "blocked": "no",
    },
    citations=(
        Citation("en-12195-1", "sliding, over-the-top lashing"),
        Citation("cfr-49-393", "393.102(a)(1)"),
        Citation("en-12195-2", "user information, two lashings at least over the top"),
        Citation("gdv-kaps-facts", "chapter 2"),
        Citation("gdv-kaps-road", "4"),
    ),
)
