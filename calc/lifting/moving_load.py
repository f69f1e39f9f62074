"""What does my load weigh while it is started, stopped or caught?

Mechanics (calc.lifting.hoisting): m (g + a) while it gains speed, twice that gain at most in a springy string, and what a
sudden stop or a slack taken up at speed adds by the energy of the moving load. Never under what is printed: 1.10 for a hand
chain hoist, by speed for a power hoist. Where nobody knows how it stops, it stops at once; where nobody knows the speed, or
how far a string gives that is caught at once, there is no answer. A load that falls first is drop-load's.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.moving_load import PullBar, pulls_figure
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput
from calc.lifting.chain_spring import most_of_chain_kg, solid_modulus_citation
from calc.lifting.condition import GOOD, condition_input, condition_of, judge_condition
from calc.lifting.condition import WORDS as CONDITION_WORDS
from calc.lifting.hoisting import (
    HAND_FACTOR,
    class_factors,
    even_acceleration,
    even_jerk_n,
    law_factor,
    least_stretch_m,
    sudden_jerk_n,
)
from calc.lifting.leg_grade import CHAIN, judge_leg_grade, leg_grade_input, leg_kind_input, why_not_by_tag
from calc.lifting.leg_grade import WORDS as GRADE_WORDS
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, unknown, within
from calc.words.facts import Absent, absent, force, length, weight
from calc.words.writer import Writer

HAND, POWER = "hand", "power"
EVENLY = "evenly"
PULLS_BY_LENGTH = ("chain", "wire-rope")
"""Kinds of sling whose least stretch follows from thickness and length."""


@dataclass(frozen=True)
class Motion:
    """What the motion adds.

    unknown -- the code of what has to be known and is not, or ""
    jerk_n -- the most that it adds to the weight [N]; printed_factor -- the least that is printed for such a hoist [-]
    acceleration -- of an even start or stop, as a part of gravity [-]; rest_stretch_m -- give of the string at rest [m]
    reckoned -- whether that give was worked out and not measured
    class_low, class_high -- factors of the softest and the stiffest hoisting class [-]
    """

    unknown: str
    jerk_n: float | Absent
    printed_factor: float | Absent
    acceleration: float | Absent
    rest_stretch_m: float | Absent
    reckoned: bool
    class_low: float | Absent
    class_high: float | Absent


@dataclass(frozen=True)
class Found:
    """The pulls. `not_by_tag` is why the figure on the tag does not count."""

    load_kg: float
    rating_kg: float | None
    condition: str
    not_by_tag: Absent | None
    by_hand: bool
    motion: Motion

    @property
    def rest_force_n(self) -> float:
        """The pull of the load at rest [N]."""
        return self.load_kg * STANDARD_GRAVITY_M_PER_S2

    @property
    def peak_force_n(self) -> float | Absent:
        """The most it pulls [N]: by mechanics, and never under what is printed."""
        jerk_n, printed = self.motion.jerk_n, self.motion.printed_factor
        if isinstance(jerk_n, Absent) or isinstance(printed, Absent):
            return jerk_n
        return max(self.rest_force_n + jerk_n, printed * self.rest_force_n)

    @property
    def factor(self) -> float | Absent:
        """The peak over the weight [-]."""
        peak_n = self.peak_force_n
        return peak_n if isinstance(peak_n, Absent) else peak_n / self.rest_force_n

    @property
    def steady_force_n(self) -> float | Absent:
        """The pull while it gains or loses speed evenly, without the jerk [N]."""
        gained = self.motion.acceleration
        return gained if isinstance(gained, Absent) else self.rest_force_n * (1.0 + gained)

    @property
    def least_force_n(self) -> float | Absent:
        """The least that it may pull as it swings up and down [N]."""
        jerk_n = self.motion.jerk_n
        return jerk_n if isinstance(jerk_n, Absent) else max(0.0, self.rest_force_n - jerk_n)

    @property
    def use_percent(self) -> float | Absent:
        """The part of the rating that the peak takes [-]; none where the tag's figure does not count."""
        peak_n = self.peak_force_n
        if isinstance(peak_n, Absent):
            return peak_n
        if self.rating_kg is None or self.not_by_tag is not None or self.condition != GOOD:
            return absent("no-rating-counts")
        return peak_n / (self.rating_kg * STANDARD_GRAVITY_M_PER_S2)


def _rest_stretch_m(given: Given) -> tuple[float | Absent, bool]:
    """How far the string gives under the load [m], and whether that is the least that such a chain or rope can."""
    kind = given.text("leg_kind")
    least_m: float | Absent = absent("give-not-known")
    if kind in PULLS_BY_LENGTH and given.has("diameter") and given.has("length"):
        least_m = least_stretch_m(given.si("load"), kind, given.si("diameter"), given.si("length"))
    if not given.has("give"):
        return least_m, not isinstance(least_m, Absent)
    if not isinstance(least_m, Absent) and exceeds(least_m, given.si("give")):
        raise given.refuse("give", "less-than-steel", least=length(least_m))
    return given.si("give"), False


def _by_power(given: Given) -> Motion:
    """The motion by a power hoist: sudden, unless it is said to be even and over what distance."""
    rest_m, reckoned = _rest_stretch_m(given)
    if not given.has("speed"):
        none = absent("speed-not-known")
        return Motion(none.code, none, none, none, rest_m, reckoned, none, none)
    load_kg, speed = given.si("load"), given.si("speed")
    sudden_n = rest_m if isinstance(rest_m, Absent) else sudden_jerk_n(load_kg, speed, rest_m)
    low, high = class_factors(speed)
    motion = Motion("", sudden_n, law_factor(speed), absent("not-even"), rest_m, reckoned, low, high)
    if given.text("changes") == EVENLY:
        gain = even_acceleration(speed, given.si("distance"))
        even_n = even_jerk_n(load_kg, gain)
        jerk_n = even_n if isinstance(sudden_n, Absent) else min(even_n, sudden_n)
        return replace(motion, jerk_n=jerk_n, acceleration=gain / STANDARD_GRAVITY_M_PER_S2)
    return replace(motion, unknown=sudden_n.code) if isinstance(sudden_n, Absent) else motion


def _motion(given: Given) -> Motion:
    moved_by = given.text("moved_by")
    if moved_by == POWER:
        return _by_power(given)
    none = absent("by-hand" if moved_by == HAND else "hoist-not-said")
    if moved_by == HAND:
        added_n = (HAND_FACTOR - 1.0) * given.si("load") * STANDARD_GRAVITY_M_PER_S2
        return Motion("", added_n, HAND_FACTOR, none, none, False, none, none)
    return Motion(none.code, none, none, none, none, False, none, none)


def _refuse_thin_chain(given: Given) -> None:
    """Refuse a wire that no lifting chain of such a rating has: a thin chain is told a softer jerk."""
    if given.text("leg_kind") != CHAIN or not given.has("diameter") or not given.has("rating"):
        return
    if exceeds(given.si("rating"), most_of_chain_kg(given.si("diameter"))):
        raise given.refuse("diameter", "too-thin-for-its-rating", rating=weight(given.si("rating")))


def find(given: Given) -> Found:
    """The pulls at rest and in motion; see WORKSHEET for inputs and results."""
    _refuse_thin_chain(given)
    return Found(
        load_kg=given.si("load"),
        rating_kg=given.maybe("rating"),
        condition=condition_of(given),
        not_by_tag=why_not_by_tag(given),
        by_hand=given.text("moved_by") == HAND,
        motion=_motion(given),
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """What is not known of the motion, the peak against the rating, then what goes with every start and stop."""
    reasons = [unknown(found.motion.unknown)] if found.motion.unknown else []
    reasons += [
        *judge_condition(found.condition),
        *judge_leg_grade(found.not_by_tag),
        *_against_rating(found),
    ]
    if found.least_force_n == 0.0:
        reasons.append(caution("may-go-slack"))
    if not found.motion.unknown and not found.by_hand and isinstance(found.motion.acceleration, Absent):
        reasons.append(caution("taken-as-sudden"))
    if found.motion.reckoned:
        reasons.append(note("give-reckoned"))
    reasons.append(
        note("hand-adds-little") if found.by_hand else note("wait-till-it-hangs-still", "mandatory")
    )
    reasons.append(note("a-fall-is-worse", "warning"))
    reasons.append(note("support-feels-it"))
    return tuple(reasons)


def _against_rating(found: Found) -> list[Reason]:
    """The peak against the rating; a rating that does not count has its reason already."""
    used = found.use_percent
    if not isinstance(used, Absent):
        return [over("over-rating") if exceeds(used, 1.0) else within("inside-rating")]
    return [unknown("no-rating")] if found.rating_kg is None else []


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    motion, peak_n = found.motion, found.peak_force_n
    lines = [step("rest")]
    if not isinstance(motion.acceleration, Absent):
        lines.append(step("steady"))
    if motion.reckoned:
        lines.append(step("give"))
    if isinstance(peak_n, Absent) or isinstance(motion.jerk_n, Absent):
        return tuple(lines)
    if not found.by_hand:
        even = not isinstance(motion.acceleration, Absent)
        lines.append(step("jerk-even" if even else "jerk-sudden", jerk=force(motion.jerk_n, "demand")))
    return (*lines, step("peak", jerk=force(motion.jerk_n, "demand")))


def draw(found: Found, writer: Writer) -> Figure:
    """The pulls as bars, against the rating where one counts."""
    named = (("rest", found.rest_force_n), ("steady", found.steady_force_n), ("peak", found.peak_force_n))
    bars = [
        PullBar(pull_n, writer.text(f"figure-{name}", pull=force(pull_n, "demand")))
        for name, pull_n in named
        if not isinstance(pull_n, Absent)
    ]
    rated = not isinstance(found.use_percent, Absent) and found.rating_kg is not None
    line_n = (found.rating_kg or 0.0) * STANDARD_GRAVITY_M_PER_S2 if rated else found.rest_force_n
    line = writer.text("figure-rated" if rated else "figure-at-rest", pull=force(line_n, "capacity"))
    peak_n = found.peak_force_n
    if isinstance(peak_n, Absent):
        caption = writer.text("figure-unknown", rest=force(found.rest_force_n))
    else:
        caption = writer.text(
            "figure" if rated else "figure-unrated",
            rest=force(found.rest_force_n),
            peak=force(peak_n, "demand"),
            line=force(line_n, "capacity"),
        )
    return pulls_figure(bars, line_n, line, rated, caption)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where the modulus stands, where a give was reckoned."""
    return (solid_modulus_citation(),) if found.motion.reckoned else ()


_BY_POWER = {"moved_by": (POWER,)}
_WEIGHT = Bounds(above=0, at_most=220_000)

WORKSHEET = Worksheet(
    name="moving-load",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=_WEIGHT, sense="demand"),
        ChoiceInput("moved_by", choices=(HAND, POWER), required=False),
        QuantityInput(
            "speed",
            dimension="speed",
            unit="ft/min",
            unit_si="m/min",
            bounds=Bounds(above=0, at_most=295),
            required=False,
            sense="demand",
            shown_when=_BY_POWER,
        ),
        ChoiceInput("changes", choices=("suddenly", EVENLY), required=False, shown_when=_BY_POWER),
        QuantityInput(
            "distance",
            dimension="length",
            bounds=Bounds(above=0, at_most=400),
            sense="capacity",
            shown_when={**_BY_POWER, "changes": (EVENLY,)},
        ),
        QuantityInput(
            "give",
            dimension="length",
            bounds=Bounds(above=0, at_most=80),
            required=False,
            sense="capacity",
            shown_when=_BY_POWER,
        ),
        leg_kind_input(),
        leg_grade_input(),
        QuantityInput(
            "diameter",
            dimension="length",
            bounds=Bounds(above=0, at_most=4),
            required=False,
            sense="demand",
            shown_when={**_BY_POWER, "leg_kind": PULLS_BY_LENGTH},
        ),
        QuantityInput(
            "length",
            dimension="length",
            unit="ft",
            unit_si="m",
            bounds=Bounds(above=0, at_most=1000),
            required=False,
            sense="capacity",
            shown_when={**_BY_POWER, "leg_kind": PULLS_BY_LENGTH},
        ),
        QuantityInput("rating", dimension="weight", bounds=_WEIGHT, required=False, sense="capacity"),
        condition_input(),
    ),
    results=(
        Result("peak_force", "force", "demand"),
        Result("factor"),
        Result("use_percent", "fraction", "demand"),
        Result("rest_force", "force"),
        Result("steady_force", "force"),
        Result("least_force", "force"),
        Result("acceleration", "fraction", of="motion.acceleration"),
        Result("rest_stretch", "length", of="motion.rest_stretch_m"),
        Result("printed_factor", of="motion.printed_factor"),
        Result("class_low", of="motion.class_low"),
        Result("class_high", of="motion.class_high"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    large="peak_force",
    shares=(CONDITION_WORDS, GRADE_WORDS),
    example={
        "load": "870 lb",
        "moved_by": POWER,
        "speed": "16 ft/min",
        "changes": "suddenly",
        "give": "3/8 in",
        "leg_kind": CHAIN,
        "grade": "80",
        "rating": "4,500 lb",
        "condition": GOOD,
    },
    citations=(
        Citation("minnesota-1305-1607", "subpart 2, item A"),
        Citation("nd-0027", "Table 5-1; 5.6.13"),
        Citation("en-13001-2", "hoisting classes HC1 to HC4"),
    ),
)
