"""What does my sling hold in this hitch?

The vertical rating on the tag, times what the hitch, the angle and the bend leave of it (calc.lifting.hitch_factors).
A basket has two legs: twice the vertical rating times the sine of their angle from the horizontal (statics; a navy
text that prints four is wrong for an inclined basket). What the sling bends round and bears on is never taken kindly: wire rope,
chain or fiber rope round something not measured, and a sling on corners of which nothing was said, cannot be rated; on a bare
edge none may be used (29 CFR 1910.184(c)(8): slings are padded or protected from sharp edges; from memory). Chain round
less than six of its wires, and fiber rope round less than eight of its diameters, have no rule here and no rating either.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.hitches import HitchShape, hitch_figure
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput
from calc.lifting.chain_spring import most_of_chain_kg
from calc.lifting.condition import ALTERED, GOOD, WORDS, condition_input, condition_of, judge_condition
from calc.lifting.hitch_factors import (
    BENT_KINDS,
    WIDE_ENOUGH,
    Share,
    bend_share,
    bent_too_hard,
    choke_angle_share,
    choker_share,
    wide_bend_share,
)
from calc.lifting.leg_geometry import Flatness, flatness
from calc.lifting.leg_grade import WORDS as GRADE_WORDS
from calc.lifting.leg_grade import judge_leg_grade, leg_grade_input, why_not_by_tag
from calc.lifting.own_part import WORDS as OWN_PART_WORDS
from calc.lifting.own_part import OwnPart, judge_own_parts, own_part_inputs, own_part_of
from calc.lifting.path_items import most_of_a_size_kg
from calc.reasons import Reason, caution, note, over, shows_capacity, stop, unknown, within
from calc.words.facts import Absent, Number, Quantity, absent, message, weight
from calc.words.writer import Writer

SMALLEST_CHOKE_DEG = 0.0
"""An angle of choke that was not measured is taken as bent right back, which leaves the least."""
BARE_EDGE = "bare"
_UNKNOWN_BENDS = ("bend-not-known", "bent-too-tightly")


@dataclass(frozen=True)
class Found:
    """What the sling holds: the shares that hitch, angle and bend leave, and the load's part of it.

    not_by_tag -- why the figure on its tag does not count, by the grade of its chain
    flatness -- of a basket's legs; a straight or choked sling stands steep
    edge -- how the sling bears on the load: padded, bare, not said, or "" where it does not matter
    holds_kg -- what it holds as it is put on, whether or not it may be used so; none where a share is not known
    over_unbent -- whether the load is more than it would hold even if no bend took anything
    """

    sling_kind: str
    shape: HitchShape
    choke_measured: bool
    condition: str
    own_part: OwnPart | None
    not_by_tag: Absent | None
    edge: str
    flatness: Flatness
    hitch: Share
    angle: Share
    bend: Share | Absent
    factor_hitch: float
    factor_angle: float
    factor_bend: float | Absent
    bend_ratio: float | Absent
    holds_kg: float | Absent
    use_percent: float | Absent
    over_unbent: bool

    @property
    def kind(self) -> str:
        """The hitch: vertical, choker or basket."""
        return self.shape.hitch

    @property
    def capacity_kg(self) -> float | Absent:
        """What it holds [kg], unless it may not be used so or cannot be rated."""
        if isinstance(self.holds_kg, Absent) or shows_capacity(judge(self)):
            return self.holds_kg
        return absent("not-to-be-used")


def find(given: Given) -> Found:
    """Shares and capacity of the sling as it is put on; see WORKSHEET for inputs and results."""
    shape = _shape(given)
    _refuse_over_its_rope(given)
    hitch, angle = _hitch_share(shape.hitch, given.text("sling_kind")), _angle_share(shape)
    ratio = _bend_ratio(given)
    bend = _bend(ratio, given.text("sling_kind"))
    unbent_kg = given.si("rating") * hitch.share * angle.share
    holds_kg = bend if isinstance(bend, Absent) else unbent_kg * bend.share
    return Found(
        sling_kind=given.text("sling_kind"),
        shape=shape,
        choke_measured=given.has("choke_angle"),
        condition=condition_of(given),
        own_part=own_part_of(given),
        not_by_tag=why_not_by_tag(given, "sling_kind"),
        edge=_edge(given),
        flatness=flatness(shape.basket_angle_deg) if shape.hitch == "basket" else "steep",
        hitch=hitch,
        angle=angle,
        bend=bend,
        factor_hitch=hitch.share,
        factor_angle=angle.share,
        factor_bend=bend if isinstance(bend, Absent) else bend.share,
        bend_ratio=ratio,
        holds_kg=holds_kg,
        use_percent=_use(given.maybe("load"), holds_kg),
        over_unbent=exceeds(given.maybe("load") or 0.0, unbent_kg),
    )


def _refuse_over_its_rope(given: Given) -> None:
    """Refuses a rating that no rope, or no chain of its grade, of the thickness given has."""
    diameter_m, kind = given.maybe("sling_diameter"), given.text("sling_kind")
    if diameter_m is None or kind not in BENT_KINDS:
        return
    if kind == "chain":
        most_kg: float | None = most_of_chain_kg(diameter_m, given.text("grade"))
    else:
        most_kg = most_of_a_size_kg(kind, diameter_m)
    if most_kg is not None and exceeds(given.si("rating"), most_kg):
        raise given.refuse("rating", "more-than-its-rope", most=weight(most_kg, "capacity"))


def _shape(given: Given) -> HitchShape:
    """How it is put on. An angle is asked only of its own hitch; a choke that was not measured counts as the worst."""
    hitch = given.text("hitch")
    basket_deg = given.si("basket_angle") if hitch == "basket" else 90.0
    choke_deg = given.maybe("choke_angle")
    return HitchShape(hitch, basket_deg, SMALLEST_CHOKE_DEG if choke_deg is None else choke_deg)


def _edge(given: Given) -> str:
    if given.text("hitch") == "vertical":
        return ""
    return given.text("edge") or "not-said"


def _bend(ratio: float | Absent, sling_kind: str) -> Share | Absent:
    """What the bend leaves; all where none counts or it is wide enough, and why nobody knows where there is no figure."""
    if isinstance(ratio, Absent):
        return ratio if ratio.code in _UNKNOWN_BENDS else Share(1.0, message("share-no-bend-counted"))
    if sling_kind not in WIDE_ENOUGH:
        return bend_share(ratio)
    return wide_bend_share(sling_kind, ratio) or absent("bent-too-tightly")


def _use(load_kg: float | None, holds_kg: float | Absent) -> float | Absent:
    """Part of what it holds that the load takes [-]."""
    if isinstance(holds_kg, Absent):
        return holds_kg
    return absent("no-load-given") if load_kg is None else load_kg / holds_kg


def _hitch_share(hitch: str, sling_kind: str) -> Share:
    if hitch == "choker":
        return choker_share(sling_kind)
    if hitch == "basket":
        return Share(2.0, message("share-basket"))
    return Share(1.0, message("share-straight"))


def _angle_share(shape: HitchShape) -> Share:
    if shape.hitch == "choker":
        return choke_angle_share(shape.choke_angle_deg)
    if shape.hitch == "basket":
        angle = Quantity(shape.basket_angle_deg, "angle")
        return Share(
            math.sin(math.radians(shape.basket_angle_deg)), message("share-basket-angle", angle=angle)
        )
    return Share(1.0, message("share-straight"))


def _bend_ratio(given: Given) -> float | Absent:
    """Object over rope diameter [-], or why no bend counts."""
    kind = given.text("sling_kind")
    if given.text("hitch") == "vertical" or kind not in BENT_KINDS:
        return absent("no-bend-counted")
    if not given.has("object_diameter") and not given.has("sling_diameter"):
        return absent("bend-not-known")
    ratio = given.si("object_diameter") / given.si("sling_diameter")
    if kind == "wire-rope" and bent_too_hard(ratio):
        raise given.refuse("object_diameter", "thinner-than-the-rope")
    return ratio


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once."""
    condition = judge_condition(found.condition)
    altered = found.condition in ALTERED
    return (
        *_put_on(found),
        *(condition if altered else ()),
        *judge_leg_grade(found.not_by_tag),
        *_load(found),
        *(() if altered else condition),
        *judge_own_parts((found.own_part,)),
        *_ways_to_go_wrong(found),
        note("tag-governs", "mandatory"),
    )


def _put_on(found: Found) -> tuple[Reason, ...]:
    """What angle, bend and edge say of the way it is put on."""
    reasons: list[Reason] = []
    if found.flatness == "too-flat":
        reasons.append(stop("too-flat"))
    elif found.flatness == "flat":
        reasons.append(caution("flat"))
    if isinstance(found.bend, Absent):
        least = WIDE_ENOUGH.get(found.sling_kind)
        if least is None:
            reasons.append(unknown("bend-not-known"))
        else:
            reasons.append(unknown("bend-without-figure", times=Number(least)))
    if found.edge == BARE_EDGE:
        reasons.append(stop("bare-edge"))
    elif found.edge == "not-said":
        reasons.append(unknown("edge-not-said"))
    return tuple(reasons)


def _load(found: Found) -> tuple[Reason, ...]:
    """What the load asks of what it holds; a capacity that nothing is compared with may be shown, but is no leave to lift."""
    if isinstance(found.use_percent, Absent):
        if found.over_unbent:
            return (over("over-rating"),)
        if found.use_percent.code in _UNKNOWN_BENDS:
            return ()
        return (replace(unknown("no-load-given"), compares=True),)
    return (over("over-rating") if exceeds(found.use_percent, 1.0) else within("inside-rating"),)


def _ways_to_go_wrong(found: Found) -> tuple[Reason, ...]:
    """What a choke, a basket or a corner can do to the sling."""
    reasons: list[Reason] = []
    if found.kind == "choker":
        reasons.append(caution("choke-weakens"))
        if not found.choke_measured:
            reasons.append(caution("choke-not-measured"))
        reasons.append(note("choke-table-from-memory"))
        if found.sling_kind == "web-sling":
            reasons.append(note("choker-rating-of-the-tag"))
    if found.kind == "basket":
        reasons.append(note("basket-slides", "warning"))
    if found.edge:
        reasons.append(note("pad-corners", "mandatory"))
        if found.sling_kind in WIDE_ENOUGH and not isinstance(found.bend, Absent):
            reasons.append(note("wide-bend-from-memory", times=Number(WIDE_ENOUGH[found.sling_kind])))
    return tuple(reasons)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    steps = [step("hitch", what=found.hitch.said), step("angle", what=found.angle.said)]
    if not isinstance(found.bend, Absent):
        steps.append(step("bend", what=found.bend.said))
    if not isinstance(found.capacity_kg, Absent):
        steps.append(step("holds"))
    return tuple(steps)


def draw(found: Found, writer: Writer) -> Figure:
    """The load in the hitch."""
    shape = found.shape
    angle = Quantity(shape.choke_angle_deg if shape.hitch == "choker" else shape.basket_angle_deg, "angle")
    capacity = found.capacity_kg
    holds = absent(capacity.code) if isinstance(capacity, Absent) else weight(capacity, "capacity")
    manner = "choker-not-measured" if shape.hitch == "choker" and not found.choke_measured else shape.hitch
    caption = writer.text(f"figure-{manner}", angle=angle, holds=holds)
    words = "" if isinstance(holds, Absent) else writer.plain(holds)
    return hitch_figure(shape, words, writer.text("label-angle", angle=angle), caption)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where the shares stand."""
    bend = () if isinstance(found.bend, Absent) else found.bend.citations
    return (*found.hitch.citations, *found.angle.citations, *bend)


_WEIGHT = Bounds(above=0, at_most=2_000_000)
_BENDS = {"sling_kind": BENT_KINDS, "hitch": ("choker", "basket")}
_BEARS = {"hitch": ("choker", "basket")}

WORKSHEET = Worksheet(
    name="hitch",
    inputs=(
        *own_part_inputs(),
        ChoiceInput("sling_kind", choices=("wire-rope", "chain", "web-sling", "fibre-rope")),
        leg_grade_input("sling_kind"),
        QuantityInput("rating", dimension="weight", bounds=_WEIGHT, sense="capacity"),
        ChoiceInput("hitch", choices=("vertical", "choker", "basket")),
        QuantityInput(
            "choke_angle",
            dimension="angle",
            bounds=Bounds(at_least=0, at_most=180),
            required=False,
            shown_when={"hitch": ("choker",)},
            sense="capacity",
        ),
        QuantityInput(
            "basket_angle",
            dimension="angle",
            bounds=Bounds(above=0, at_most=90),
            shown_when={"hitch": ("basket",)},
            sense="capacity",
        ),
        QuantityInput(
            "object_diameter",
            dimension="length",
            bounds=Bounds(above=0, at_most=4000),
            required=False,
            shown_when=_BENDS,
            sense="capacity",
        ),
        QuantityInput(
            "sling_diameter",
            dimension="length",
            bounds=Bounds(above=0, at_most=12),
            required=False,
            shown_when=_BENDS,
            sense="demand",
        ),
        ChoiceInput("edge", choices=("padded", BARE_EDGE), required=False, shown_when=_BEARS),
        QuantityInput("load", dimension="weight", bounds=_WEIGHT, required=False, sense="demand"),
        condition_input(),
    ),
    results=(
        Result("capacity", "weight", "capacity"),
        Result("use_percent", "fraction", "demand"),
        Result("factor_hitch", sense="capacity", printed=True),
        Result("factor_angle", sense="capacity", printed=True),
        Result("factor_bend", sense="capacity", printed=True),
        Result("bend_ratio"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    large="capacity",
    shares=("shared/hitch-shares", WORDS, GRADE_WORDS, OWN_PART_WORDS),
    example={
        "sling_kind": "wire-rope",
        "rating": "5.6 short tons",
        "hitch": "basket",
        "basket_angle": "60°",
        "object_diameter": "4-1/2 in",
        "sling_diameter": "3/4 in",
        "edge": "padded",
        "load": "6,800 lb",
        "condition": GOOD,
    },
    citations=(Citation("osha-sling-guidance", "hitches; general text on sling angles"),),
)
