"""What does my sling hold in this hitch?

The vertical rating on the tag, times what the hitch, the angle and the bend leave of it (calc.lifting.hitch_factors).
A basket has two legs: twice the vertical rating times the sine of their angle from the horizontal (statics; a navy
text that prints four is wrong for an inclined basket).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.hitches import HitchShape, hitch_figure
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput
from calc.lifting.hitch_factors import Share, bend_share, bent_too_hard, choke_angle_share, choker_share
from calc.lifting.leg_geometry import Flatness, flatness
from calc.reasons import Reason, caution, note, stop, within
from calc.words.facts import Absent, Quantity, absent, message, weight
from calc.words.writer import Writer


@dataclass(frozen=True)
class Found:
    """What the sling holds: the shares that hitch, angle and bend leave, and the load's part of it.

    flatness -- of a basket's legs; a straight or choked sling stands steep
    """

    sling_kind: str
    shape: HitchShape
    flatness: Flatness
    hitch: Share
    angle: Share
    bend: Share
    factor_hitch: float
    factor_angle: float
    factor_bend: float
    bend_ratio: float | Absent
    capacity_kg: float
    use_percent: float | Absent

    @property
    def kind(self) -> str:
        """The hitch: vertical, choker or basket."""
        return self.shape.hitch


def find(given: Given) -> Found:
    """Shares and capacity of the sling as it is put on; see WORKSHEET for inputs and results."""
    shape = HitchShape(given.text("hitch"), given.si("basket_angle"), given.si("choke_angle"))
    hitch, angle = _hitch_share(shape.hitch, given.text("sling_kind")), _angle_share(shape)
    ratio = _bend_ratio(given)
    bend = Share(1.0, message(f"share-{ratio.code}")) if isinstance(ratio, Absent) else bend_share(ratio)
    capacity_kg = given.si("rating") * hitch.share * angle.share * bend.share
    load_kg = given.maybe("load")
    return Found(
        sling_kind=given.text("sling_kind"),
        shape=shape,
        flatness=flatness(shape.basket_angle_deg) if shape.hitch == "basket" else "steep",
        hitch=hitch,
        angle=angle,
        bend=bend,
        factor_hitch=hitch.share,
        factor_angle=angle.share,
        factor_bend=bend.share,
        bend_ratio=ratio,
        capacity_kg=capacity_kg,
        use_percent=absent("no-load-given") if load_kg is None else load_kg / capacity_kg,
    )


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
    if given.text("hitch") == "vertical" or given.text("sling_kind") != "wire-rope":
        return absent("no-bend-counted")
    if not given.has("object_diameter") and not given.has("sling_diameter"):
        return absent("bend-not-known")
    ratio = given.si("object_diameter") / given.si("sling_diameter")
    if bent_too_hard(ratio):
        raise given.refuse("object_diameter", "thinner-than-the-rope")
    return ratio


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once."""
    return (*_limits(found), *_ways_to_go_wrong(found), note("tag-governs", "mandatory"))


def _limits(found: Found) -> tuple[Reason, ...]:
    """What angle and rating say."""
    reasons: list[Reason] = []
    if found.flatness == "too-flat":
        reasons.append(stop("too-flat"))
    elif found.flatness == "flat":
        reasons.append(caution("flat"))
    if isinstance(found.use_percent, Absent):
        reasons.append(caution("no-load-given"))
    elif exceeds(found.use_percent, 1.0):
        reasons.append(stop("over-rating"))
    else:
        reasons.append(within("inside-rating"))
    return tuple(reasons)


def _ways_to_go_wrong(found: Found) -> tuple[Reason, ...]:
    """What a choke, a basket, a bend or an edge can do to the sling."""
    reasons: list[Reason] = []
    if found.kind == "choker":
        reasons += [caution("choke-weakens"), note("choke-table-from-memory")]
        if found.sling_kind == "web-sling":
            reasons.append(note("choker-rating-of-the-tag"))
    if found.kind == "basket":
        reasons.append(note("basket-slides", "warning"))
    if found.kind != "vertical" and found.sling_kind != "wire-rope":
        reasons.append(note("pad-corners", "mandatory"))
    elif isinstance(found.bend_ratio, Absent) and found.bend_ratio.code == "bend-not-known":
        reasons.append(note("bend-not-known", "warning"))
    return tuple(reasons)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    return (
        step("hitch", what=found.hitch.said),
        step("angle", what=found.angle.said),
        step("bend", what=found.bend.said),
        step("holds"),
    )


def draw(found: Found, writer: Writer) -> Figure:
    """The load in the hitch."""
    shape = found.shape
    angle = Quantity(shape.choke_angle_deg if shape.hitch == "choker" else shape.basket_angle_deg, "angle")
    holds = weight(found.capacity_kg, "capacity")
    caption = writer.text(f"figure-{shape.hitch}", angle=angle, holds=holds)
    return hitch_figure(shape, writer.plain(holds), writer.text("label-angle", angle=angle), caption)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where the shares stand."""
    return (*found.hitch.citations, *found.angle.citations, *found.bend.citations)


_WEIGHT = Bounds(above=0, at_most=2_000_000)
_BENDS = {"sling_kind": ("wire-rope",), "hitch": ("choker", "basket")}

WORKSHEET = Worksheet(
    name="hitch",
    inputs=(
        ChoiceInput(
            "sling_kind", choices=("wire-rope", "chain", "web-sling", "fibre-rope"), default="wire-rope"
        ),
        QuantityInput("rating", dimension="weight", bounds=_WEIGHT),
        ChoiceInput("hitch", choices=("vertical", "choker", "basket"), default="vertical"),
        QuantityInput(
            "choke_angle",
            dimension="angle",
            bounds=Bounds(at_least=0, at_most=180),
            default="120",
            shown_when={"hitch": ("choker",)},
        ),
        QuantityInput(
            "basket_angle",
            dimension="angle",
            bounds=Bounds(above=0, at_most=90),
            default="90",
            shown_when={"hitch": ("basket",)},
        ),
        QuantityInput(
            "object_diameter",
            dimension="length",
            bounds=Bounds(above=0, at_most=4000),
            required=False,
            shown_when=_BENDS,
        ),
        QuantityInput(
            "sling_diameter",
            dimension="length",
            bounds=Bounds(above=0, at_most=12),
            required=False,
            shown_when=_BENDS,
        ),
        QuantityInput("load", dimension="weight", bounds=_WEIGHT, required=False),
    ),
    results=(
        Result("capacity", "weight", "capacity"),
        Result("use_percent", "fraction", "demand"),
        Result("factor_hitch", sense="capacity"),
        Result("factor_angle", sense="capacity"),
        Result("factor_bend", sense="capacity"),
        Result("bend_ratio"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    large="capacity",
    shares=("shared/hitch-shares",),
    example={
        "sling_kind": "wire-rope",
        "rating": "5.6 tons",
        "hitch": "basket",
        "basket_angle": "60°",
        "object_diameter": "4-1/2 in",
        "sling_diameter": "3/4 in",
        "load": "6,800 lb",
    },
    citations=(Citation("osha-sling-guidance", "hitches; general text on sling angles"),),
)
