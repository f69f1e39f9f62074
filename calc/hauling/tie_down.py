"""What must hold this load on the truck: by law, and by the forces?

Two verdicts side by side, never merged: the law counts limits and pieces (calc.hauling.securing_law), the forces balance
sliding and tipping in each direction (calc.hauling.lashing_forces). The worse of both is the verdict of the sheet. The law's
count is blind to angle, friction and direction, so its pass alone is none.

What the law says. 49 CFR 393.102(a) asks forces: 0.8 forward, 0.5 rearward and to the sides of the breaking strength, and
0.435, 0.5 and 0.25 of the working load limit. By 393.102(c)(3) it holds them to be met where the cargo is secured by 393.104 to
393.136 (text). So the verdict of the law is that count, the number of tie-downs, marks, weakest part, edges and chocks;
the forces of 393.102(a)(2) stand in the working and decide nothing. Canada counts the same (NSC Standard 10, reprints).
In Europe the law asks the forces themselves (Directive 2014/47/EU, Annex III), so there the two sides ask the same.

What the forces say. EN 12195-1 and the CTU Code: 0.8 forward, 0.5 rearward and to the sides, asked of the limit that is
marked, WLL or LC. Of a WLL this is stricter than either part of 393.102(a), since a WLL is at most two thirds of an LC; it
is not eased, because nobody knows by how much. In North America the load must also be held down with a fifth of its weight
(393.102(b)), which the law again holds to be met by the count; the forces ask it all the same.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Row, Step, Worksheet, step
from calc.figures.lashings import DrawnLashing, DrawnLoad, lashing_figure
from calc.hauling.friction import WORDS, Grip, deck_input, grip, moving_share, pair_input
from calc.hauling.lashing_forces import (
    ARRIVES_2003,
    BELOW_IS_FLAT_DEG,
    DIRECTIONS,
    Balance,
    Direction,
    Held,
    balanced_sliding_n,
    direct_hold_n,
    friction_hold_n,
    lifting_off,
    pulls_sliding_n,
    safety_factor,
    sliding,
    sliding_share,
    tipping,
    tipping_share,
    used_of_limits,
)
from calc.hauling.securing_law import (
    COMMODITIES,
    COUNTRIES,
    ROLLING,
    coil_kg,
    hold_down_share,
    share_asked,
    tie_downs_needed,
    working_load_share,
)
from calc.hauling.tie_down_items import LABELS, MOST_LIMIT_LB, Load, TieDown, read_tie_downs, tie_down_inputs
from calc.inputs import JOB_INPUT, JOB_WORDS, BadInput, Bounds, ChoiceInput, Given, QuantityInput, RowsInput
from calc.lifting.condition import GOOD
from calc.lifting.own_part import WORDS as OWN_PART_WORDS
from calc.lifting.own_part import judge_own_parts
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import (
    Reason,
    Verdict,
    caution,
    note,
    over,
    shows_capacity,
    stop,
    unknown,
    verdict_of,
    within,
)
from calc.words.facts import (
    Absent,
    Fact,
    Listing,
    Message,
    Number,
    Quantity,
    absent,
    force,
    message,
    share,
)
from calc.words.writer import Writer

Motion = Literal["slide", "tip"]
_WORST_FIRST: tuple[Verdict, ...] = ("stop", "unknown", "caution", "ok")
_PASSES = ("ok", "caution")
_ALIKE = 1.0 + 1e-6


@dataclass(frozen=True)
class Motions:
    """How a load would move: sliding or tipping, with what is asked and held."""

    motion: Motion
    balance: Balance

    @property
    def fails(self) -> bool:
        """Whether more is asked than is held."""
        return exceeds(self.balance.asked, self.balance.held)

    @property
    def said(self) -> Message:
        """The motion in words."""
        return message(f"motion-{self.motion}", direction=self.balance.direction)

    def amount(self, value: float, sense: Literal["demand", "capacity"]) -> Quantity:
        """A force, or for tipping a moment."""
        return Quantity(value, "force" if self.motion == "slide" else "torque", sense)


@dataclass(frozen=True)
class Found:
    """The load, its tie-downs, what the law counts and what the forces ask."""

    country: str
    commodity: str
    weight_kg: float
    length_m: float
    width_m: float
    height_m: float
    centre_known: bool
    rolling: str
    edges: str
    blocked: bool
    blocking_known: bool
    anchor_known: bool
    anchor_label: str
    grip: Grip
    held: Held
    items: tuple[TieDown, ...]
    tie_downs_needed: int
    elsewhere: tuple[tuple[str, Found | None], ...] = ()

    @property
    def weight_n(self) -> float:
        """The weight as a force [N]."""
        return self.held.weight_n

    @property
    def friction(self) -> float:
        """Standing friction [-]."""
        return self.grip.friction

    @property
    def all_known(self) -> bool:
        """Whether each tie-down is either known or known to be out of use, so that a shortfall is one."""
        return all(item.forbidden or item.fully_known for item in self.items)

    @property
    def law_all_known(self) -> bool:
        """The same for what the law counts: a limit that is no working load limit is not known to it."""
        return all(item.forbidden or item.law_counts for item in self.items)

    # ---------------------------------------------------------------- the law

    @property
    def law_asked_n(self) -> float | Absent:
        """What the counted limits must come to [N]."""
        return absent("no-sum-in-europe") if self.country == "europe" else share_asked() * self.weight_n

    @property
    def law_counted_n(self) -> float:
        """What the law counts of the limits [N]."""
        return sum(item.counted_n for item in self.items)

    @property
    def law_share(self) -> float | Absent:
        """Part of the counted limits that the law asks for [-]."""
        asked = self.law_asked_n
        if isinstance(asked, Absent):
            return asked
        if not self.law_all_known:
            return absent("not-all-known")
        return asked / self.law_counted_n if self.law_counted_n > 0.0 else absent("nothing-counts")

    @property
    def tie_downs_there(self) -> int:
        """How many tie-downs count for the law."""
        return sum(item.number for item in self.items if item.law_counts)

    # ---------------------------------------------------------------- the forces

    @cached_property
    def motions(self) -> tuple[Motions, ...]:
        """Sliding in every direction, and tipping where the weight alone does not hold the load upright."""
        slides = [Motions("slide", sliding(self.held, one)) for one in DIRECTIONS]
        tips = [Motions("tip", tipping(self.held, one)) for one in DIRECTIONS]
        return (*slides, *(one for one in tips if one.balance.asked > 0.0))

    @property
    def worst_motion(self) -> Motions:
        """The motion that uses most of what is held."""
        return max(self.motions, key=lambda one: one.balance.used)

    @property
    def hold_down(self) -> tuple[float, float] | None:
        """The force that holds the load down [N], asked and held; in North America."""
        return None if self.country == "europe" else lifting_off(self.held, hold_down_share())

    @property
    def lifts_off(self) -> bool:
        """Whether less holds the load down than the law asks."""
        return self.hold_down is not None and exceeds(*self.hold_down)

    @property
    def forces_used(self) -> float | Absent:
        """The largest part of what is held that is asked [-]."""
        if not self.all_known:
            return absent("not-all-known")
        used = self.worst_motion.balance.used
        return absent("nothing-holds") if math.isinf(used) else used

    @property
    def worst(self) -> Message:
        """The worst motion in words."""
        return self.worst_motion.said

    @property
    def blocking_needed_n(self) -> float | Absent:
        """What blocking in front would have to hold besides what is there, so that nothing slides forward [N]."""
        if not self.all_known:
            return absent("not-all-known")
        forward = next(one.balance for one in self.motions if one.motion == "slide")
        return max(0.0, forward.asked - forward.held)

    @property
    def pulls_askew(self) -> bool:
        """Whether direct tie-downs that hold one side more than the other are counted for less."""
        return any(
            exceeds(sum(pulls_sliding_n(self.held.direct, one)), sum(balanced_sliding_n(self.held, one)))
            for one in DIRECTIONS
        )

    @property
    def more_straps(self) -> int | Absent:
        """How many more straps like the first over the top would keep the load from sliding."""
        if not self.all_known:
            return absent("not-all-known")
        if not self.held.over:
            return absent("no-straps")
        each_n = self.held.over[0].presses_n()
        return max(_more_straps(self.held, direction, each_n) for direction in DIRECTIONS)

    @property
    def shares(self) -> tuple[float | Absent, ...]:
        """The largest part of its limit that each row is asked for [-]: by sliding, or by its tension."""
        return tuple(
            one[0]
            if isinstance(one[0], Absent)
            else max(share for share in one if not isinstance(share, Absent))
            for one in self.piece_shares
        )

    @property
    def piece_shares(self) -> tuple[tuple[float | Absent, ...], ...]:
        """The same for each piece of each row; for straps over the top, which are alike, once."""
        direct = iter(self._direct_shares)
        found: list[tuple[float | Absent, ...]] = []
        for item in self.items:
            if not item.counts:
                found.append((absent("does-not-count"),) * max(1, len(item.ways)))
            elif item.tension_n is not None:
                found.append((item.tension_n / item.limit_n,))
            else:
                found.append(tuple(next(direct) for _ in item.ways))
        return tuple(found)

    @cached_property
    def _direct_shares(self) -> tuple[float, ...]:
        by_direction = [used_of_limits(self.held, one) for one in DIRECTIONS]
        return tuple(max(shares) for shares in zip(*by_direction, strict=True))

    @property
    def directions(self) -> tuple[Row, ...]:
        """Every motion with what is asked, held and used; last what holds the load down."""
        rows = [_row(one) for one in self.motions]
        if self.hold_down is not None:
            asked, held = self.hold_down
            cells: Mapping[str, Fact] = {
                "motion": message("motion-lift"),
                "asked": force(asked, "demand"),
                "held": force(held, "capacity"),
                "used": share(asked / held) if held > 0.0 else absent("nothing-holds"),
            }
            rows.append(Row(cells, "fail" if self.lifts_off else "pass"))
        return tuple(rows)

    # ---------------------------------------------------------------- verdicts

    @cached_property
    def verdicts(self) -> tuple[Verdict, Verdict]:
        """The verdict by law, and by the forces."""
        both = (*_parts(self), *_load_itself(self))
        law = (*both, *_law(self), *(_forces(self) if self.country == "europe" else ()))
        return verdict_of(law), verdict_of((*both, *_forces(self)))

    @property
    def law_verdict(self) -> Message:
        """The verdict by law in words."""
        return message(f"side-{self.verdicts[0]}")

    @property
    def forces_verdict(self) -> Message:
        """The verdict by the forces in words."""
        return message(f"side-{self.verdicts[1]}")

    @property
    def countries(self) -> tuple[Row, ...]:
        """What the law says of the same load in each country, the one that was asked first."""
        here = (self.country, self)
        return tuple(_country_row(country, found) for country, found in (here, *self.elsewhere))


def _country_row(country: str, found: Found | None) -> Row:
    """A country's law: how many tie-downs it asks for and counts, and its verdict; not told where it refuses a row."""
    cells: dict[str, Fact] = {"country": message(f"country-{country}")}
    if found is None:
        none = absent("not-read-there")
        return Row(
            cells | {"needed": none, "there": none, "asked": none, "counted": none, "verdict": none}, "fail"
        )
    asked = found.law_asked_n
    in_sum = not isinstance(asked, Absent)
    cells |= {
        "needed": found.tie_downs_needed,
        "there": found.tie_downs_there,
        "asked": force(asked, "demand") if not isinstance(asked, Absent) else asked,
        "counted": force(found.law_counted_n, "capacity") if in_sum else absent("no-sum-in-europe"),
        "verdict": found.law_verdict,
    }
    return Row(cells, "pass" if found.verdicts[0] in _PASSES else "fail")


def _row(one: Motions) -> Row:
    used = one.balance.used
    cells: Mapping[str, Fact] = {
        "motion": one.said,
        "asked": one.amount(one.balance.asked, "demand"),
        "held": one.amount(one.balance.held, "capacity"),
        "used": absent("nothing-holds") if math.isinf(used) else share(used),
    }
    return Row(cells, "fail" if one.fails else "pass")


def _more_straps(held: Held, direction: Direction, each_n: float) -> int:
    """How many more straps, each pressing so much, keep a load from sliding in a direction."""
    missing = sliding(held, direction)
    if not exceeds(missing.asked, missing.held):
        return 0
    standing = friction_hold_n(held, direction)
    asked = missing.asked - held.blocked_n(direction)
    adds = held.friction * each_n / safety_factor(direction)
    alone = (asked - standing) / adds
    beside = (asked - direct_hold_n(held, direction) - moving_share() * standing) / (moving_share() * adds)
    return math.ceil(min(alone, beside) - 1e-9)


def find(given: Given) -> Found:
    """The counts and the forces; see WORKSHEET for inputs and results."""
    country = given.text("country")
    others = tuple((one, _found_or_none(given, one)) for one in COUNTRIES if one != country)
    return replace(_found_in(given, country), elsewhere=others)


def _found_or_none(given: Given, country: str) -> Found | None:
    """The same in another country; None where what was typed cannot be read there."""
    try:
        return _found_in(given, country)
    except BadInput:
        return None


def _found_in(given: Given, country: str) -> Found:
    """The counts and the forces in a country."""
    weight_kg = given.si("load")
    length_m, width_m, height_m = given.si("length"), given.si("width"), given.si("height")
    _check_edges(given, length_m, width_m)
    centre_m = _centre_height_m(given, height_m)
    items = read_tie_downs(given, country, Load(width_m, height_m))
    if given.text("edges") == "none" and any(item.role != "direct" for item in items):
        raise given.refuse("edges", "over-or-round-the-load")
    blocked = given.text("blocked") == "yes"
    held_by = grip(given.text("deck"), given.text("pair"))
    held = Held(
        weight_n=weight_kg * STANDARD_GRAVITY_M_PER_S2,
        friction=held_by.friction,
        centre_height_m=centre_m,
        edge_along_m=given.si("edge_along"),
        edge_across_m=given.si("edge_across"),
        width_m=width_m,
        direct=tuple(lashing for item in items for lashing in item.direct),
        over=tuple(strap for item in items for strap in item.straps),
        blocking_n=(given.maybe("blocking_holds") or 0.0) if blocked else 0.0,
    )
    over_top = any(item.role == "over-top" for item in items)
    commodity = given.text("commodity")
    return Found(
        country=country,
        commodity=commodity,
        weight_kg=weight_kg,
        length_m=length_m,
        width_m=width_m,
        height_m=height_m,
        centre_known=given.has("centre_height"),
        rolling=given.text("rolling"),
        edges=given.text("edges"),
        blocked=blocked,
        blocking_known=given.has("blocking_holds"),
        anchor_known=given.has("anchor_limit"),
        anchor_label=given.text("anchor_label"),
        grip=held_by,
        held=held,
        items=items,
        tie_downs_needed=tie_downs_needed(country, commodity, length_m, weight_kg, blocked, over_top),
    )


def _check_edges(given: Given, length_m: float, width_m: float) -> None:
    """The balance point lies no farther than half the load from its nearer end and side."""
    for name, whole_m in (("edge_along", length_m), ("edge_across", width_m)):
        if exceeds(2 * given.si(name), whole_m * _ALIKE):
            raise given.refuse(name, "over-half-of-the-load", half=Quantity(whole_m / 2, "length"))


def _centre_height_m(given: Given, height_m: float) -> float:
    """Height of the balance point [m]; where it is not known, the top of the load."""
    centre_m = given.maybe("centre_height")
    if centre_m is None:
        return height_m
    if exceeds(centre_m, height_m):
        raise given.refuse("centre_height", "over-the-top-of-the-load", height=Quantity(height_m, "length"))
    return centre_m


# ------------------------------------------------------------------------------------------ judging


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once: what both sides ask, the law's, those of the forces, and what is worth saying."""
    return (
        _both_verdicts(found),
        *_parts(found),
        *_load_itself(found),
        *_law(found),
        *_forces(found),
        *_cautions(found),
        *_notes(found),
    )


def _both_verdicts(found: Found) -> Reason:
    """How the two sides stand to each other; said first whatever leads."""
    law, forces = (one in _PASSES for one in found.verdicts)
    by_law, by_forces = found.law_verdict, found.forces_verdict
    if law and by_forces.code == "side-stop":
        return note("law-alone-passes", "warning", law=by_law, forces=by_forces)
    if forces and by_law.code == "side-stop":
        return note("forces-alone-pass", "warning", law=by_law, forces=by_forces)
    return note("sides-agree", law=by_law, forces=by_forces)


def _parts(found: Found) -> tuple[Reason, ...]:
    """What is wrong with the tie-downs themselves, and what is not known of them."""
    reasons = [reason for item in found.items if (reason := _part(item)) is not None]
    if not found.anchor_known:
        reasons.append(unknown("anchor-not-known"))
    elif not found.anchor_label:
        reasons.append(unknown("anchor-label-not-said"))
    elif found.anchor_label == "other":
        reasons.append(unknown("anchor-label-of-no-use"))
    return (*reasons, *judge_own_parts([item.own_part for item in found.items]))


def _part(item: TieDown) -> Reason | None:
    facts: dict[str, Fact] = {"part": item.name}
    if item.condition != GOOD:
        weight: Literal["stop", "unknown"] = "stop" if item.forbidden else "unknown"
        return Reason(f"tie-down-{item.condition}", weight, facts, part=item.place)
    if item.own_n is None:
        return Reason("tie-down-without-limit", "unknown", facts, part=item.place)
    if item.lacks_tensioner:
        return Reason("tie-down-without-tensioner", "unknown", facts, part=item.place)
    if not item.label:
        return Reason("label-not-said", "unknown", facts, part=item.place)
    if item.label == "other":
        return Reason("label-of-no-use", "unknown", facts, part=item.place)
    return None


def _load_itself(found: Found) -> tuple[Reason, ...]:
    """Whether it may roll, whether edges cut, whether its kind asks for a pattern that is not counted here."""
    reasons: list[Reason] = []
    if found.commodity in ROLLING:
        if not found.rolling:
            reasons.append(unknown("rolling-not-said"))
        elif found.rolling == "free":
            reasons.append(stop("free-to-roll"))
    if not found.edges:
        reasons.append(unknown("edges-not-said"))
    elif found.edges == "bare":
        reasons.append(stop("bare-edges"))
    if found.commodity == "coil" and not exceeds(coil_kg(), found.weight_kg):
        reasons.append(unknown("coil-pattern"))
    return tuple(reasons)


def _law(found: Found) -> tuple[Reason, ...]:
    """What the law's count says."""
    facts: dict[str, Fact] = {"needed": found.tie_downs_needed, "there": found.tie_downs_there}
    reasons: list[Reason] = [
        Reason("law-needs-wll", "unknown", {"part": item.name}, part=item.place)
        for item in found.items
        if item.fully_known and not item.law_counts
    ]
    if found.tie_downs_there < found.tie_downs_needed:
        reasons.append(over("too-few", **facts) if found.law_all_known else unknown("too-few-known", **facts))
    asked = found.law_asked_n
    if not isinstance(asked, Absent) and exceeds(asked, found.law_counted_n):
        reasons.append(over("sum-short") if found.law_all_known else unknown("sum-short-as-known"))
    return tuple(reasons) or (within("law-met"),)


def _forces(found: Found) -> tuple[Reason, ...]:
    """What the forces say."""
    reasons = [
        stop("without-tension", part=item.name)
        for item in found.items
        if item.role == "over-top" and item.tension_n is None and item.condition == GOOD
    ]
    reasons += [
        over("tension-over-limit", part=item.name)
        for item in found.items
        if item.counts and item.tension_n is not None and exceeds(item.tension_n, item.limit_n)
    ]
    reasons += _movement(found)
    return tuple(reasons) or (within("forces-held"),)


def _movement(found: Found) -> list[Reason]:
    """What would slide, tip or lift off."""
    failing = sorted(
        (one for one in found.motions if one.fails), key=lambda one: one.balance.used, reverse=True
    )
    if not found.all_known:
        return [unknown("not-held-as-known")] if failing or found.lifts_off else []
    reasons: list[Reason] = []
    for one in failing:
        facts: dict[str, Fact] = {
            "motion": one.said,
            "asked": one.amount(one.balance.asked, "demand"),
            "held": one.amount(one.balance.held, "capacity"),
        }
        if one.motion == "slide":
            reasons.append(over("slides", **facts))
        else:
            reasons.append(over("tips" if one.balance.held > 0.0 else "tips-whatever", **facts))
    if found.lifts_off:
        reasons.append(over("lifts-off"))
    return reasons


def _cautions(found: Found) -> tuple[Reason, ...]:
    """What holds, but should be looked at again."""
    reasons: list[Reason] = []
    if any(exceeds(BELOW_IS_FLAT_DEG, strap.angle_deg) for strap in found.held.over):
        reasons.append(caution("straps-flat"))
    if found.grip.from_memory:
        reasons.append(caution("friction-bound"))
    if not found.centre_known:
        reasons.append(caution("centre-not-known"))
    if found.blocked and not found.blocking_known:
        reasons.append(caution("blocking-not-known"))
    kinds = {item.kind for item in found.items}
    if "web" in kinds and len(kinds) > 1:
        reasons.append(caution("web-and-chain"))
    return tuple(reasons)


def _notes(found: Found) -> tuple[Reason, ...]:
    """What is worth saying."""
    reasons: list[Reason] = []
    if found.commodity in ("machine", "vehicle"):
        reasons.append(note("machine-parts", "mandatory"))
    if found.country != "europe":
        reasons.append(note("own-rules", "mandatory"))
    direct = [item for item in found.items if item.role == "direct"]
    if found.pulls_askew:
        reasons.append(note("pulls-askew", "warning"))
    if found.held.direct:
        reasons.append(note("stand-evenly", "mandatory"))
    if len({(item.along_m, item.across_m, item.down_m) for item in direct}) > 1:
        reasons.append(note("short-takes-first", "warning"))
    if any(item.role == "same-side" for item in found.items):
        reasons.append(note("same-side-once"))
    if found.country == "us":
        reasons.append(note("law-holds-forces-met"))
    reasons += [
        note("dan-is-mostly-lc", "warning", part=item.name)
        for item in found.items
        if item.law_counts and item.in_dan and found.country != "europe"
    ]
    if found.country == "europe" and any(item.label == "wll" for item in found.items if item.fully_known):
        reasons.append(note("europe-marks-lc", "warning"))
    reasons += [note("limit-as-marked"), note("retighten", "mandatory"), note("marks-govern", "mandatory")]
    return tuple(reasons)


# ------------------------------------------------------------------------------------------ telling


def largest(found: Found) -> str:
    """What stands large: the share that decides, or, where a use is forbidden or not known, the worse verdict."""
    law, forces = (_WORST_FIRST.index(one) for one in found.verdicts)
    by_law = law < forces
    if not shows_capacity(judge(found)):
        return "law_verdict" if by_law else "forces_verdict"
    value = found.law_share if by_law else found.forces_used
    if isinstance(value, Absent):
        return "law_verdict" if by_law else "forces_verdict"
    return "law_share" if by_law else "forces_used"


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    steps: list[Step] = []
    for item in found.items:
        if item.law_counts:
            counted = Number(item.counted_n / item.number / item.limit_n)
            facts: dict[str, Fact] = {"part": item.name, "number": item.number, "counted": counted}
            limit = force(item.limit_n, "capacity")
            steps.append(step("counted", limit=limit, sum=force(item.counted_n, "capacity"), **facts))
    if found.country != "europe":
        steps.append(step("law", asked_share=Number(share_asked())))
    if found.country == "us":
        steps += [_law_forces(found, one) for one in DIRECTIONS[:3]]
    for one in DIRECTIONS[:3]:
        balance = sliding(found.held, one)
        steps.append(
            step(
                "slides",
                direction=one,
                share=Number(sliding_share(one)),
                standing=force(friction_hold_n(found.held, one), "capacity"),
                moving=Number(moving_share()),
                direct=force(direct_hold_n(found.held, one), "capacity"),
                blocking=force(found.held.blocked_n(one), "capacity"),
                asked=force(balance.asked, "demand"),
                held=force(balance.held, "capacity"),
                arrives=Number(ARRIVES_2003),
                safety=Number(safety_factor(one)),
            )
        )
    for one in ("forward", "left"):
        edge_m = found.held.edge_along_m if one == "forward" else found.held.edge_across_m
        asked = tipping(found.held, one).asked
        steps.append(
            step(
                "tips",
                direction=one,
                share=Number(tipping_share(one)),
                centre=Quantity(found.held.centre_height_m, "length"),
                edge=Quantity(edge_m, "length"),
                asked=Quantity(asked, "torque", "demand") if asked > 0.0 else absent("stands-by-itself"),
            )
        )
    return tuple(steps)


def _law_forces(found: Found, direction: Direction) -> Step:
    """What 393.102(a)(2) asks of the working load limits; it decides nothing, by 393.102(c)(3)."""
    share_asked_for = working_load_share(direction)
    return step(
        "law-forces",
        direction=direction,
        share=Number(share_asked_for),
        asked=force(share_asked_for * found.weight_n, "demand"),
        held=force(sliding(found.held, direction).held, "capacity"),
    )


def shown(found: Found) -> Mapping[str, Fact]:
    """Shares stand behind the names of their tie-downs."""
    shares = [
        message("of-tie-down", part=item.name, amount=one if isinstance(one, Absent) else share(one))
        for item, one in zip(found.items, found.shares, strict=True)
    ]
    return {"shares": Listing(tuple(shares), "semicolon")}


def _drawn(item: TieDown, shares: Sequence[float | Absent], writer: Writer) -> DrawnLashing:
    """A row as it is drawn."""
    known = [None if isinstance(one, Absent) else one for one in shares]
    none = writer.text("figure-does-not-count")
    return DrawnLashing(
        place=str(item.place + 1),
        ways=item.ways,
        shares=known,
        words=[none if one is None else writer.plain(share(one)) for one in known],
        number=item.number,
        reach_m=(item.along_m, item.across_m, item.down_m),
    )


def draw(found: Found, writer: Writer) -> Figure:
    """Plan and side, to scale, each piece with its own share."""
    lashings = tuple(
        _drawn(item, shares, writer) for item, shares in zip(found.items, found.piece_shares, strict=True)
    )
    said = [
        message("of-tie-down", part=item.name, amount=one if isinstance(one, Absent) else share(one))
        for item, one in zip(found.items, found.shares, strict=True)
    ]
    caption = writer.text(
        "figure",
        load=Quantity(found.weight_kg, "weight"),
        length=Quantity(found.length_m, "length"),
        width=Quantity(found.width_m, "length"),
        height=Quantity(found.height_m, "length"),
        tie_downs=Listing(tuple(said), "semicolon"),
        worst=found.worst,
    )
    load = DrawnLoad(
        found.length_m,
        found.width_m,
        found.height_m,
        found.held.centre_height_m,
        found.blocked,
        writer.plain(Quantity(found.weight_kg, "weight")),
    )
    return lashing_figure(load, lashings, caption, writer)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where limits, friction and the country's law stand."""
    country = {
        "us": Citation("cfr-49-393", "393.106(d), 393.110"),
        "canada": Citation("nsc-10", "s. 10, 11(4)"),
        "europe": Citation("eu-2014-47", "Annex III, I.1"),
    }[found.country]
    return tuple(
        dict.fromkeys((country, *(one for item in found.items for one in item.citations), found.grip.source))
    )


def _size(name: str) -> QuantityInput:
    return QuantityInput(name, dimension="length", bounds=Bounds(above=0, at_most=1000))


WORKSHEET = Worksheet(
    name="tie-down",
    inputs=(
        ChoiceInput("country", choices=COUNTRIES),
        ChoiceInput("commodity", choices=COMMODITIES),
        QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=200_000), sense="demand"),
        QuantityInput("length", dimension="length", bounds=Bounds(above=0, at_most=1500), sense="demand"),
        _size("width"),
        _size("height"),
        QuantityInput(
            "centre_height",
            dimension="length",
            bounds=Bounds(above=0, at_most=1000),
            required=False,
            sense="demand",
        ),
        QuantityInput(
            "edge_along", dimension="length", bounds=Bounds(at_least=0, at_most=750), sense="capacity"
        ),
        QuantityInput(
            "edge_across", dimension="length", bounds=Bounds(at_least=0, at_most=500), sense="capacity"
        ),
        ChoiceInput(
            "rolling", choices=("chocked", "free"), required=False, shown_when={"commodity": ROLLING}
        ),
        deck_input(),
        pair_input(),
        ChoiceInput("blocked", choices=("no", "yes")),
        QuantityInput(
            "blocking_holds",
            dimension="force",
            bounds=Bounds(above=0, at_most=500_000),
            required=False,
            sense="capacity",
            shown_when={"blocked": ("yes",)},
        ),
        ChoiceInput("edges", choices=("rounded", "protected", "none", "bare"), required=False),
        QuantityInput(
            "anchor_limit",
            dimension="force",
            bounds=Bounds(above=0, at_most=MOST_LIMIT_LB),
            required=False,
            sense="capacity",
        ),
        ChoiceInput("anchor_label", choices=LABELS, required=False),
        RowsInput("tie_downs", columns=tie_down_inputs(), bounds=Bounds(at_least=1, at_most=24)),
        JOB_INPUT,
    ),
    results=(
        Result("law_verdict"),
        Result("forces_verdict"),
        Result("law_share", "fraction", "demand"),
        Result("law_counted", "force", "capacity", printed=True),
        Result("law_asked", "force", "demand"),
        Result("tie_downs_needed", sense="demand"),
        Result("tie_downs_there"),
        Result("forces_used", "fraction", "demand"),
        Result("worst"),
        Result("directions", columns=("motion", "asked", "held", "used")),
        Result("countries", columns=("country", "needed", "there", "asked", "counted", "verdict")),
        Result("shares", "fraction", "demand", of="shares"),
        Result("more_straps", sense="demand"),
        Result("blocking_needed", "force", "demand"),
        Result("friction"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    shown=shown,
    shares=(WORDS, OWN_PART_WORDS, JOB_WORDS),
    large=largest,
    example={
        "country": "us",
        "commodity": "machine",
        "load": "9,000 lb",
        "length": "130 in",
        "width": "66 in",
        "height": "84 in",
        "centre_height": "34 in",
        "edge_along": "38 in",
        "edge_across": "27 in",
        "deck": "swept-dry",
        "pair": "rubber-on-deck",
        "blocked": "no",
        "edges": "none",
        "anchor_limit": "6,600 lb",
        "anchor_label": "wll",
        "tie_downs": [
            {
                "role": "direct",
                "kind": "chain",
                "condition": "marked-good",
                "label": "wll",
                "grade": "70",
                "size": "3/8",
                "tensioner_limit": "5,400 lb",
                "pulls": pulls,
                "along": along,
                "across": "16 in",
                "down": "30 in",
            }
            for pulls, along in (("front-pair", "36 in"), ("rear-pair", "40 in"))
        ],
    },
    citations=(
        Citation("cfr-49-393", "393.102(a) and (c), 393.104, 393.108(a)"),
        Citation("en-12195-1", "sliding and tipping"),
        Citation("ctu-code", "Annex 7"),
        Citation("gdv-kaps-road", "3.2 and 5.3"),
    ),
)
