"""Which legs carry it, and how will it hang?

Two to eight legs of any lengths from one hook to a stiff load whose balance point may lie anywhere. Exact rigid
balance (calc.lifting.hanging, calc.lifting.hung_load); then the worst of a balance point that is off by a tolerance the
reader gives, and of one leg one link shorter on springy legs. The legs are judged by that worst. Chain stretch from the
modulus of studless mooring chain, a link's pitch from three times its bar. Its legs are a sling of which the
tag alone is known here: it lifts no more than the mode factor allows (calc.lifting.whole_sling), as on the other worksheets.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.drawing import LineKind
from calc.figures.hanging import DrawnLeg, HangingPose, HangingWords, hanging_figure
from calc.inputs import (
    JOB_INPUT,
    JOB_WORDS,
    BadInput,
    Bounds,
    Given,
    PointInput,
    QuantityInput,
    RowsInput,
    TextInput,
)
from calc.lifting.chain_spring import most_of_chain_kg
from calc.lifting.condition import ALTERED, GOOD, WORDS, condition_input, condition_of, judge_condition
from calc.lifting.hanging import Vector, minus
from calc.lifting.hung_load import (
    ROPE_LEGS_DIFFER,
    AtRest,
    HungLoad,
    ShortLink,
    Side,
    WorstCase,
    at_rest,
    farthest_from_meeting,
    lengths_to_level,
    low_sides,
    share_by_stretch,
    worst_case,
)
from calc.lifting.leg_geometry import Flatness, flatness
from calc.lifting.leg_grade import (
    CHAIN,
    WITHOUT_GRADE,
    judge_leg_grade,
    leg_grade_input,
    leg_kind_input,
    why_not_by_tag,
)
from calc.lifting.leg_grade import WORDS as GRADE_WORDS
from calc.lifting.own_part import WORDS as OWN_PART_WORDS
from calc.lifting.own_part import OwnPart, judge_own_parts, own_part_inputs, own_part_of
from calc.lifting.whole_sling import factor_by_tag
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, stop, unknown, within
from calc.words.facts import (
    Absent,
    Fact,
    Listing,
    Message,
    Number,
    Quantity,
    absent,
    force,
    length,
    message,
    share,
    weight,
)
from calc.words.writer import Writer

TIPS_FAR_DEG = 5.0
"""A load that tips more than this can slide on its rigging: careful."""

TIPS_TOO_FAR_DEG = 10.0
"""A load that tips more than this is not lifted so: tan 10 degrees is about the friction of oiled steel on steel (from memory),
so that what lies or hooks on it slides. Our own mark, no source."""

NO_LENGTH_M = 1e-9
"""A length under a nanometre is what rounding leaves of none, and is written as none."""

CHANGED_M = 1e-6
"""A leg that would be shortened by less than this stays as it is."""

HARDER_BY_A_LINK = 1.05
"""One leg a link short is told where it raises the hardest pull by more than this ratio [-] (our own mark, no source)."""

SHORTEST_LEG_IN = 2.0
"""No leg from hook to pick is shorter [in]: a small shackle alone is as long (our own mark, no source). In shorter ones what
rounding leaves counts."""

MOST_STIFF_LEGS = 3
"""Legs that a stiff load needs to hang by; more share in more ways than one."""
FEWEST_OF_A_SLING = 2
"""Legs that a sling has at least, and that are counted of four and more."""


@dataclass(frozen=True)
class Found:
    """How the load hangs, or that it rolls over: then every result but `stable` is absent.

    at -- the place of rest; of a load that rolls over, where it would come to rest
    places_upright -- how many places of rest have the hook over the picks; can_roll -- turned over it would hang lower
    link -- the worst of one leg a link shorter
    differ -- part of its length by which a leg may be shorter than the others [-], beside a link
    needed_ratings_kg -- the worst pull of each leg as the weight that pulls as hard, which is what a rating is compared with
    not_by_tag -- why the figures on the tags do not count, by kind and grade of the legs
    """

    load: HungLoad
    at: AtRest
    places_upright: int
    can_roll: bool
    link: ShortLink | None
    highest_tension_n: float | Absent
    tensions_n: tuple[float, ...] | Absent
    taut: tuple[bool | Absent, ...] | Absent
    tilt_deg: float | Absent
    low_side: Message | Absent
    lowest_leg_angle_deg: float | Absent
    leg_angles_deg: tuple[float | Absent, ...] | Absent
    headroom_m: float | Absent
    depth_m: float | Absent
    hook_m: Vector | Absent
    stable: bool
    use_percent: tuple[float | Absent, ...] | Absent
    worst: WorstCase | None
    worst_tension_n: float | Absent
    worst_tensions_n: tuple[float, ...] | Absent
    worst_tilt_deg: float | Absent
    condition: str
    differ: float
    own_part: OwnPart | None
    not_by_tag: Absent | None
    level_lengths_m: tuple[float, ...] | Absent
    springy_tensions_n: tuple[float, ...] | Absent
    short_link_tension_n: float | Absent
    needed_rating_kg: float | Absent
    needed_ratings_kg: tuple[float, ...] | Absent

    @property
    def rolls_over(self) -> bool:
        """Whether no place of rest holds it upright."""
        return self.places_upright == 0

    @property
    def hardest_n(self) -> float:
        """The hardest pull in a leg [N]."""
        return max(self.at.tensions_n)

    def legs(self) -> range:
        """The legs by their place."""
        return range(len(self.load.picks))

    def is_slack(self, leg: int) -> bool:
        """Whether a leg carries nothing."""
        return self.at.tensions_n[leg] <= 0

    def may_go_slack(self, leg: int) -> bool:
        """Whether a leg carries in one way to share and not in another: which one comes is not known."""
        return not self.is_slack(leg) and self.at.rest.least[leg] <= 0

    def used(self, leg: int) -> float | None:
        """Part of a leg's rating that its worst pull takes [-]; None where either is not known."""
        used = None if isinstance(self.use_percent, Absent) else self.use_percent[leg]
        return None if isinstance(used, Absent) else used

    def over(self, leg: int) -> bool:
        """Whether a leg's pull is over its rating."""
        used = self.used(leg)
        return used is not None and exceeds(used, 1.0)

    def sling_limit(self) -> tuple[float, float] | None:
        """How many times one of its legs a sling of these legs lifts [-], and what that is [kg], of legs of unlike ratings by their
        mean (own rule: so a stronger leg is never worse); None where one leg carries alone, a rating is not known, or they lie
        too flat. Where it is not sure that each of them carries, two count.
        """
        carrying = [leg for leg in self.legs() if not self.is_slack(leg)]
        rated = [kg for leg in carrying if (kg := self.load.ratings_kg[leg]) is not None]
        if self.worst is None or len(rated) < len(carrying) or len(carrying) < FEWEST_OF_A_SLING:
            return None
        sure = len(carrying) <= MOST_STIFF_LEGS and not any(self.may_go_slack(leg) for leg in carrying)
        counted = len(carrying) if sure else FEWEST_OF_A_SLING
        factor = factor_by_tag(counted, self.worst.lowest_angle_deg)
        return None if factor is None else (factor, factor * sum(rated) / len(rated))

    def flatness(self, leg: int) -> Flatness:
        """How flat a leg lies; a slack one counts as steep."""
        angle_deg = self.at.angles_deg[leg]
        return "steep" if angle_deg is None else flatness(angle_deg)


def _read(given: Given) -> HungLoad:
    rows = given.rows("picks")
    return HungLoad(
        tuple(row.text("label") or str(place) for place, row in enumerate(rows, 1)),
        tuple(row.point("at") for row in rows),
        tuple(row.si("length") for row in rows),
        tuple(row.maybe("rating") for row in rows),
        given.point("centre"),
        given.si("load") * STANDARD_GRAVITY_M_PER_S2,
    )


def find(given: Given) -> Found:
    """Balance of the load; see WORKSHEET for inputs and results."""
    load = _read(given)
    places = load.places()
    if not places:
        raise _out_of_reach(given, load)
    upright = [rest for rest in places if load.is_upright(rest)]
    if not upright:
        return _rolled_over(load, at_rest(load, places[0]), given)
    not_by_tag = why_not_by_tag(given)
    _refuse_thin_chain(given, load)
    at = at_rest(load, upright[0])
    springy = share_by_stretch(load, at.rest.hook, given.si("chain_size"))
    differ = 0.0 if given.text("leg_kind") == CHAIN else ROPE_LEGS_DIFFER
    worst = worst_case(load, given.si("balance_tolerance"), given.si("chain_size"), differ)
    pulls = absent("not-found") if worst.pulls_n is None else worst.pulls_n
    return Found(
        load=load,
        at=at,
        places_upright=len(upright),
        can_roll=places[0] is not upright[0],
        link=springy.worst,
        highest_tension_n=max(at.tensions_n),
        tensions_n=at.tensions_n,
        taut=tuple(_taut(at, leg) for leg in range(len(load.picks))),
        tilt_deg=at.tilt_deg,
        low_side=_low_side(low_sides(at)),
        lowest_leg_angle_deg=at.lowest_angle_deg,
        leg_angles_deg=tuple(absent("slack") if angle is None else angle for angle in at.angles_deg),
        headroom_m=at.headroom_m(load.picks),
        depth_m=at.rest.depth_m,
        hook_m=at.rest.hook,
        stable=not at.rest.free_to_roll,
        use_percent=_use(load, at, worst),
        worst=worst,
        worst_tension_n=pulls if isinstance(pulls, Absent) else max(pulls),
        worst_tensions_n=pulls,
        worst_tilt_deg=absent("rolls-over-first") if worst.rolls_over else worst.tilt_deg,
        condition=condition_of(given),
        differ=differ,
        own_part=own_part_of(given),
        not_by_tag=not_by_tag,
        level_lengths_m=lengths_to_level(load, at),
        springy_tensions_n=absent("not-found") if springy.tensions_n is None else springy.tensions_n,
        short_link_tension_n=absent("not-found") if springy.worst is None else springy.worst.pull_n,
        needed_rating_kg=pulls if isinstance(pulls, Absent) else _as_weight_kg(max(pulls)),
        needed_ratings_kg=pulls if isinstance(pulls, Absent) else tuple(_as_weight_kg(one) for one in pulls),
    )


def _as_weight_kg(pull_n: float) -> float:
    """The weight [kg] that pulls as hard as a force [N]: ratings are weights, and are compared with weights."""
    return pull_n / STANDARD_GRAVITY_M_PER_S2


def _refuse_thin_chain(given: Given, load: HungLoad) -> None:
    """Refuse a size of chain that no lifting chain of such a rating has: a link of it would be too short to matter. Legs of
    rope or web have no links; the size given for them only stands in for their stretch.
    """
    if given.text("leg_kind") in WITHOUT_GRADE:
        return
    rated = [kg for kg in load.ratings_kg if kg is not None]
    if rated and exceeds(max(rated), most_of_chain_kg(given.si("chain_size"))):
        raise given.refuse("chain_size", "too-thin-for-its-rating", rating=weight(max(rated)))


def _taut(at: AtRest, leg: int) -> bool | Absent:
    """Whether a leg is tight; where it depends on the way to share, nobody knows."""
    if at.tensions_n[leg] <= 0:
        return False
    return True if at.rest.least[leg] > 0 else absent("tight-or-slack")


def _rolled_over(load: HungLoad, at: AtRest, given: Given) -> Found:
    """No resting place with the hook over the picks: the load is top-heavy and rolls over as it leaves the floor."""
    none = absent("rolls-over-first")
    return Found(
        load=load,
        at=at,
        places_upright=0,
        can_roll=True,
        link=None,
        highest_tension_n=none,
        tensions_n=none,
        taut=none,
        tilt_deg=none,
        low_side=none,
        lowest_leg_angle_deg=none,
        leg_angles_deg=none,
        headroom_m=none,
        depth_m=none,
        hook_m=none,
        stable=False,
        use_percent=none,
        worst=None,
        worst_tension_n=none,
        worst_tensions_n=none,
        worst_tilt_deg=none,
        condition=condition_of(given),
        own_part=own_part_of(given),
        differ=0.0,
        not_by_tag=None,
        level_lengths_m=none,
        springy_tensions_n=none,
        short_link_tension_n=none,
        needed_rating_kg=none,
        needed_ratings_kg=none,
    )


def _out_of_reach(given: Given, load: HungLoad) -> BadInput:
    """The refusal for legs that cannot meet in one hook, naming the pair that is farthest from meeting."""
    pair = farthest_from_meeting(load)
    if pair.lacking_m < -NO_LENGTH_M:
        return given.refuse("picks", "cannot-all-reach")
    one, other = load.names[pair.first], load.names[pair.second]
    row = given.rows("picks")[pair.second]
    return row.refuse("length", "too-short-to-meet", one=one, other=other, apart=length(pair.apart_m))


def _low_side(sides: tuple[Side, ...]) -> Message:
    """The side that goes low, a corner, or none."""
    if not sides:
        return message("level")
    if len(sides) == 1:
        return message(f"side-{sides[0]}")
    return message("side-both", one=message(f"side-{sides[0]}"), other=message(f"side-{sides[1]}"))


def _use(load: HungLoad, at: AtRest, worst: WorstCase) -> tuple[float | Absent, ...]:
    """Part of each leg's rating that its worst pull takes [-]; where that was not found, its pull as it hangs."""
    pulls = at.tensions_n if worst.pulls_n is None else worst.pulls_n
    return tuple(
        absent("rating-missing") if rating is None else _as_weight_kg(pull) / rating
        for pull, rating in zip(pulls, load.ratings_kg, strict=True)
    )


# ------------------------------------------------------------------------------------------ judging


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once."""
    if found.worst is None:
        return (stop("rolls-over"), note("what-holds-it-upright", "mandatory"))
    condition = judge_condition(found.condition)
    altered = found.condition in ALTERED
    return (
        *_stops_of_tip(found, found.worst),
        *(condition if altered else ()),
        *judge_leg_grade(found.not_by_tag),
        *_legs(found, found.worst),
        *(() if altered else condition),
        *judge_own_parts((found.own_part,)),
        *_standing(found),
        *_tip(found),
        *_sharing(found),
        note("take-up-the-slack", "mandatory"),
    )


def _stops_of_tip(found: Found, worst: WorstCase) -> tuple[Reason, ...]:
    """Whether it rolls over, or tips too far, with its balance point somewhere within the tolerance."""
    if worst.rolls_over:
        return (stop("rolls-over-if-off"), note("what-holds-it-upright", "mandatory"))
    return (stop("tips-too-far", **_hangs(found)),) if worst.tilt_deg > TIPS_TOO_FAR_DEG else ()


def _legs(found: Found, worst: WorstCase) -> tuple[Reason, ...]:
    """Angle and rating of the legs. Each of these reasons may lead, so each brings how the load hangs."""
    hangs = _hangs(found)
    reasons: list[Reason] = []
    lying = flatness(worst.lowest_angle_deg)
    if lying == "too-flat":
        reasons.append(stop("leg-too-flat", **hangs))
    elif lying == "flat":
        reasons.append(caution("leg-flat"))
    over_it = [leg for leg in found.legs() if found.over(leg)]
    unrated = [leg for leg in found.legs() if found.used(leg) is None]
    if over_it:
        reasons.append(over("leg-over-rating", over=_names(found, over_it), **hangs))
    if unrated:
        reasons.append(unknown("ratings-missing", unrated=_names(found, unrated), **hangs))
    if worst.pulls_n is None:
        reasons.append(unknown("link-not-found", **hangs))
    by_tag = _over_sling(found)
    reasons += by_tag
    if not by_tag and not over_it and not unrated and worst.pulls_n is not None:
        reasons.append(within("inside-ratings", **hangs))
    return tuple(reasons)


def _over_sling(found: Found) -> list[Reason]:
    """Whether the load is more than a sling of these legs may lift by its tag."""
    limit = found.sling_limit()
    if limit is None or not exceeds(found.load.weight_n / STANDARD_GRAVITY_M_PER_S2, limit[1]):
        return []
    whole = weight(limit[1], "capacity")
    return [over("over-sling-by-factor", factor=Number(limit[0], places=1), whole=whole, **_hangs(found))]


def _hangs(found: Found) -> dict[str, Fact]:
    """Which legs carry, which may, which do nothing, and which pulls hardest."""
    slack = [leg for leg in found.legs() if found.is_slack(leg)]
    carrying = [leg for leg in found.legs() if not found.is_slack(leg)]
    touching = found.at.rest.touching
    return {
        "tight": _names(found, (leg for leg in carrying if not found.may_go_slack(leg))),
        "either": _names(found, (leg for leg in carrying if found.may_go_slack(leg))),
        "straight": _names(found, (leg for leg in slack if leg in touching)),
        "loose": _names(found, (leg for leg in slack if leg not in touching)),
        "hardest": found.load.names[found.at.tensions_n.index(found.hardest_n)],
        "hardest_pull": weight(_as_weight_kg(found.hardest_n), "demand"),
    }


def _names(found: Found, legs: Iterable[int]) -> Listing:
    return Listing(tuple(found.load.names[leg] for leg in legs), "and")


def _standing(found: Found) -> tuple[Reason, ...]:
    """Whether it stays as it hangs."""
    reasons: list[Reason] = []
    if found.can_roll:
        reasons.append(caution("could-hang-lower"))
    if found.at.rest.free_to_roll:
        reasons.append(caution("free-to-roll"))
    if found.places_upright > 1:
        reasons.append(note("rocks", "warning"))
    return tuple(reasons)


def _tip(found: Found) -> tuple[Reason, ...]:
    """How it tips as it leaves the floor, and what would level it."""
    if found.at.level:
        return ()
    tips = caution("tips-far") if found.at.tilt_deg > TIPS_FAR_DEG else note("tips")
    if isinstance(found.level_lengths_m, Absent):
        return (tips, note("cannot-be-levelled", why=found.level_lengths_m))
    changes = tuple(
        message("leg-to-length", leg=name, length=length(new_m))
        for name, new_m, now_m in zip(
            found.load.names, found.level_lengths_m, found.load.lengths_m, strict=True
        )
        if now_m - new_m > CHANGED_M
    )
    return (tips, note("level-by-shortening", changes=Listing(changes, "and")))


def _sharing(found: Found) -> tuple[Reason, ...]:
    """Slack legs, legs more than needed, and what one link does."""
    reasons: list[Reason] = []
    if any(found.is_slack(leg) for leg in found.legs()):
        reasons.append(caution("slack-legs" if len(found.load.picks) > 2 else "slack-leg-of-two"))
    if len(found.at.rest.touching) > MOST_STIFF_LEGS:
        reasons.append(note("more-straight-than-needed"))
    if found.link is not None and found.link.pull_n > HARDER_BY_A_LINK * found.hardest_n:
        reasons.append(
            note("one-link-short", "warning", short_link=weight(_as_weight_kg(found.link.pull_n), "demand"))
        )
    if found.differ:
        reasons.append(note("rope-legs-differ", by=share(found.differ)))
    return tuple(reasons)


# ------------------------------------------------------------------------------------------ working


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    rest = found.at.rest
    legs = len(found.load.picks)
    if found.rolls_over:
        turned = Quantity(found.at.tilt_deg, "angle")
        return (
            step("no-upright-rest", legs=legs),
            step("rest-turned-over", turned=turned, under=length(rest.depth_m)),
        )
    return (
        step("hook", legs=legs),
        step("tips", **_axes(minus(rest.hook, found.load.centre))),
        *(_pull_step(found, leg) for leg in found.legs() if not found.is_slack(leg)),
        step("headroom"),
        *_springy_steps(found),
    )


def _axes(place: Vector) -> dict[str, Fact]:
    """A place in the load's own axes; what only rounding leaves is none."""
    right, back, up = (length(0.0 if abs(side) < NO_LENGTH_M else side) for side in place)
    return {"right": right, "back": back, "up": up}


def _pull_step(found: Found, leg: int) -> Step:
    return step(
        "pull",
        leg=found.load.names[leg],
        weight=force(found.load.weight_n),
        share=Number(found.at.rest.most[leg]),
        length=length(found.load.lengths_m[leg]),
        pull=force(found.at.tensions_n[leg], "demand"),
    )


def _springy_steps(found: Found) -> tuple[Step, ...]:
    names = found.load.names
    steps: list[Step] = []
    if not isinstance(found.springy_tensions_n, Absent) and len(names) > 2:
        pulls = Listing(tuple(force(pull, "demand") for pull in found.springy_tensions_n), "semicolon")
        steps.append(step("stretch", legs=Listing(names), pulls=pulls))
    if found.link is not None:
        steps.append(
            step("one-link-short", short=names[found.link.short_leg], pulling=names[found.link.pulling_leg])
        )
    return tuple(steps)


def shown(found: Found) -> dict[str, Fact]:
    """What stands behind the names of the legs, and where the hook is."""
    if found.rolls_over:
        return {}
    facts: dict[str, Fact] = {
        "tensions": _by_leg(found, (_pull(pull) for pull in found.at.tensions_n)),
        "taut": _by_leg(found, (_tight_or_slack(found, leg) for leg in found.legs())),
        "leg_angles": _by_leg(found, (_tenths(angle) for angle in found.at.angles_deg)),
        "hook": message("hook-place", **_axes(found.at.rest.hook)),
        "use_percent": _by_leg(found, (_part_used(found.used(leg)) for leg in found.legs())),
    }
    if not isinstance(found.worst_tensions_n, Absent):
        facts["worst_tensions"] = _by_leg(found, (_pull(pull) for pull in found.worst_tensions_n))
    if not isinstance(found.needed_ratings_kg, Absent):
        facts["needed_ratings"] = _by_leg(
            found, (_needed(needed_kg) for needed_kg in found.needed_ratings_kg)
        )
    if found.at.level:
        facts["level_lengths"] = message("level-as-it-is")
    elif not isinstance(found.level_lengths_m, Absent):
        facts["level_lengths"] = _by_leg(found, (length(new_m) for new_m in found.level_lengths_m))
    if not isinstance(found.springy_tensions_n, Absent):
        facts["springy_tensions"] = _by_leg(found, (_pull(pull) for pull in found.springy_tensions_n))
    return facts


def _part_used(used: float | None) -> Fact:
    return absent("rating-missing") if used is None else share(used)


def _tight_or_slack(found: Found, leg: int) -> Message:
    if found.is_slack(leg):
        return message("slack")
    return message("tight-or-slack" if found.may_go_slack(leg) else "tight")


def _by_leg(found: Found, amounts: Iterable[Fact]) -> Listing:
    pairs = zip(found.load.names, amounts, strict=True)
    return Listing(tuple(message("of-leg", leg=name, amount=amount) for name, amount in pairs), "semicolon")


def _pull(pull_n: float) -> Fact:
    return force(pull_n, "demand") if pull_n > 0 else message("slack")


def _needed(needed_kg: float) -> Fact:
    return weight(needed_kg, "demand") if needed_kg > 0 else message("slack")


def _tenths(angle_deg: float | None) -> Message:
    if angle_deg is None:
        return message("slack")
    return message("tenths", angle=Quantity(angle_deg, "angle"))


# ------------------------------------------------------------------------------------------ drawing

_LINES: dict[Flatness, LineKind] = {"steep": "leg", "flat": "leg-careful", "too-flat": "leg-stop"}


def draw(found: Found, writer: Writer) -> Figure | None:
    """The load as it hangs, from the front and from the right."""
    if found.rolls_over:
        return None
    legs = [_drawn(found, leg, writer) for leg in found.legs()]
    names = [_drawn_name(found, leg) for leg in found.legs()]
    pulls = tuple(
        message("figure-leg", leg=names[leg], pull=force(found.at.tensions_n[leg], "demand"))
        for leg in found.legs()
        if not found.is_slack(leg)
    )
    caption = writer.text(
        "figure",
        pulls=Listing(pulls),
        slack=Listing(tuple(names[leg] for leg in found.legs() if found.is_slack(leg))),
        tilt=Quantity(found.at.tilt_deg, "angle"),
        low_side=found.low_side,
    )
    words = HangingWords(writer.text("figure-front"), writer.text("figure-right"), caption)
    return hanging_figure(legs, HangingPose(found.at.rest.hook, found.load.centre, found.at.up), words)


def _drawn(found: Found, leg: int, writer: Writer) -> DrawnLeg:
    pick = found.load.picks[leg]
    if found.is_slack(leg):
        return DrawnLeg(pick, leg + 1, "leg-slack")
    pull = writer.own(force(found.at.tensions_n[leg], "demand"), 3)
    return DrawnLeg(
        pick,
        leg + 1,
        "leg-stop" if found.over(leg) else _LINES[found.flatness(leg)],
        pull,
        writer.text("figure-pull-each", pull=pull),
        writer.text("figure-pull-of-leg", leg=leg + 1, pull=pull),
    )


def _drawn_name(found: Found, leg: int) -> Message:
    """A leg as the caption names it: its number, and the reader's word for it where there is one."""
    number, name = leg + 1, found.load.names[leg]
    if name == str(number):
        return message("figure-leg-number", number=number)
    return message("figure-leg-name", number=number, name=name)


_PLACE = Bounds(at_least=-4000, at_most=4000)
_WEIGHT = Bounds(above=0, at_most=2_000_000)
_LEG = Bounds(at_least=SHORTEST_LEG_IN, at_most=4000)

WORKSHEET = Worksheet(
    name="hanging-load",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=_WEIGHT, sense="demand"),
        PointInput("centre", dimension="length", bounds=_PLACE),
        QuantityInput(
            "balance_tolerance", dimension="length", bounds=Bounds(above=0, at_most=4000), sense="demand"
        ),
        RowsInput(
            "picks",
            bounds=Bounds(at_least=2, at_most=8),
            columns=(
                TextInput("label", required=False),
                PointInput("at", dimension="length", bounds=_PLACE),
                QuantityInput("length", dimension="length", bounds=_LEG),
                QuantityInput("rating", dimension="weight", bounds=_WEIGHT, required=False, sense="capacity"),
            ),
        ),
        *own_part_inputs(),
        leg_kind_input(),
        leg_grade_input(),
        QuantityInput("chain_size", dimension="length", bounds=Bounds(above=0, at_most=4)),
        condition_input(),
        JOB_INPUT,
    ),
    results=(
        Result("worst_tension", "force", "demand"),
        Result("worst_tensions", "force", "demand"),
        Result("highest_tension", "force", "demand"),
        Result("tensions", "force", "demand"),
        Result("taut"),
        Result("tilt", "angle"),
        Result("worst_tilt", "angle", "demand"),
        Result("low_side"),
        Result("lowest_leg_angle", "angle", "capacity", printed=True),
        Result("leg_angles", "angle"),
        Result("headroom", "length", "demand"),
        Result("depth", "length"),
        Result("hook", "length"),
        Result("stable"),
        Result("needed_rating", "weight", "demand"),
        Result("needed_ratings", "weight", "demand"),
        Result("use_percent", "fraction", "demand"),
        Result("level_lengths", "length"),
        Result("springy_tensions", "force", "demand"),
        Result("short_link_tension", "force", "demand"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    shown=shown,
    large=lambda found: "highest_tension" if isinstance(found.worst_tension_n, Absent) else "worst_tension",
    shares=(WORDS, GRADE_WORDS, OWN_PART_WORDS, JOB_WORDS),
    example={
        "load": "1,450 lb",
        "centre": ["16 in", "9 in", "10 in"],
        "balance_tolerance": "1 in",
        "picks": [
            {
                "label": "flywheel left",
                "at": ["0 in", "0 in", "24 in"],
                "length": "42 in",
                "rating": "2,100 lb",
            },
            {
                "label": "flywheel right",
                "at": ["0 in", "18 in", "24 in"],
                "length": "42 in",
                "rating": "2,100 lb",
            },
            {"label": "front eye", "at": ["38 in", "9 in", "27 in"], "length": "45 in", "rating": "2,100 lb"},
        ],
        "leg_kind": "chain",
        "grade": "80",
        "chain_size": "7/32 in",
        "condition": GOOD,
    },
    citations=(
        Citation("osha-sling-guidance", "general text on sling angles"),
        Citation("baker-haynes", "ch. 3 and 5, balance of a body in space"),
        Citation("dnv-os-e301", "studless R4 chain, modulus"),
    ),
)
