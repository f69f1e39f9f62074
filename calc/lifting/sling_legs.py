"""How hard does each leg of a sling pull?

Equal legs from one hook to a level load whose balance point is right under the hook. Statics (calc.lifting.
leg_geometry); printed sling ratings from OSHA, Guidance on Safe Sling Use, Tables 1 and 2 (inch chain), and from DGUV
Information 209-021 and 201-030 after EN 818 (metric chain). Beside our count of the legs stand those of the OSHA tables
and the mode factors of EN 818-4. For uneven legs see hanging-load.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.drawing import LineKind
from calc.figures.slings import SlingShape, sling_figure
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, QuantityInput, TextInput
from calc.lifting.leg_geometry import (
    Flatness,
    angle_factor,
    angle_from_height_deg,
    flatness,
    height_from_leg_m,
    leg_tension_n,
    legs_that_count,
    side_force_n,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.ratings import (
    METRIC_LIFTING_GRADES,
    TIE_DOWN_ONLY_GRADES,
    NotRated,
    Rating,
    chain_lifting_leg,
    chain_lifting_printed,
    inch_size,
    legs_counted_by_osha,
    metric_chain_leg,
    metric_chain_printed,
    metric_size,
    mode_factor,
)
from calc.reasons import Reason, caution, note, stop, within
from calc.words.facts import Absent, Cell, Fact, Message, absent, force, known, length, message, weight
from calc.words.writer import Writer

KnownBy = Literal["angle", "height_and_spread", "leg_length_and_spread"]


@dataclass(frozen=True)
class _Shape:
    """Shape of the sling: angle [deg from horizontal], height and half spread [m] where they are known, and by what."""

    angle_deg: float
    height_m: float | None
    half_spread_m: float | None
    known_by: KnownBy = "angle"


def _shape(given: Given, legs: int) -> _Shape:
    by = _known_by(given, legs)
    if legs == 1:
        if given.has("angle") and given.si("angle") < 90.0:
            raise given.refuse("angle", "one-leg-hangs-plumb")
        return _Shape(90.0, given.maybe("leg_length"), None)
    if by == "angle":
        angle = given.si("angle")
        half = given.si("spread") / 2 if given.has("spread") else None
        height = half * math.tan(math.radians(angle)) if half is not None and angle < 90.0 else None
        return _Shape(angle, height, half)
    half = given.si("spread") / 2
    if by == "height_and_spread":
        height = given.si("height")
    else:
        leg = given.si("leg_length")
        if leg <= half:
            raise given.refuse("leg_length", "too-short-to-reach", half=length(half))
        height = height_from_leg_m(leg, half)
    return _Shape(angle_from_height_deg(height, half), height, half, by)


def _known_by(given: Given, legs: int) -> KnownBy:
    """How the shape is known: as said, or else by what was given."""
    said = given.text("known_by")
    for by in ("angle", "height_and_spread", "leg_length_and_spread"):
        if said == by:
            return by
    if given.has("angle"):
        return "angle"
    if given.has("height"):
        return "height_and_spread"
    if given.has("leg_length") or legs == 1:
        return "leg_length_and_spread"
    raise given.refuse("angle", "shape-missing")


@dataclass(frozen=True)
class _LegRating:
    """What one leg may carry [kg], or why nothing; what it is; the printed rating of the whole sling, or why none."""

    rating_kg: float | Absent
    what: Message
    printed: Rating | None = None
    source: Citation | None = None


def _leg_rating(given: Given, legs: int, angle_deg: float) -> _LegRating:
    if not given.has("grade"):
        rating = given.maybe("leg_rating")
        return _LegRating(absent("none-given") if rating is None else rating, message("a-leg"))
    grade, size = given.text("grade"), given.text("size")
    if grade in TIE_DOWN_ONLY_GRADES:
        return _LegRating(absent("no-lifting-rating", mark=grade), message("a-leg"))
    if not size:
        raise given.refuse("size", "size-missing")
    try:
        if grade in METRIC_LIFTING_GRADES:
            one, whole_sling = metric_chain_leg(grade, size), metric_chain_printed
            what = message("chain-metric", size=metric_size(grade, size), grade=grade)
        else:
            one, whole_sling = chain_lifting_leg(grade, size), chain_lifting_printed
            what = message(
                "chain-inch", size=Cell(inch_size("chain-lifting", size, grade=grade)), grade=grade
            )
    except NotRated as reason:
        raise given.refuse("size", "not-rated", reason=reason.why) from reason
    printed = whole_sling(grade, size, legs, angle_deg) if legs > 1 else None
    return _LegRating(one.working_load_limit_kg, what, printed, Citation(one.source, one.locator))


@dataclass(frozen=True)
class _Capacities:
    """What the sling may lift [kg] by our count of its legs, by that of the OSHA tables, and by the EN mode factor."""

    ours_kg: float | Absent
    osha_kg: float | Absent
    en_kg: float | Absent
    sources: tuple[Citation, ...] = ()


def _capacities(legs: int, counted: int, angle_deg: float, leg: _LegRating) -> _Capacities:
    factor = mode_factor(legs, angle_deg) if legs > 1 else None
    if isinstance(leg.rating_kg, Absent) or factor is None:
        why = _no_capacity(legs, factor is None, leg.rating_kg)
        return _Capacities(why, why, why)
    upright_kg = leg.rating_kg / angle_factor(angle_deg)
    osha = legs_counted_by_osha(legs)
    ours = counted * upright_kg
    if leg.printed:
        ours = min(ours, leg.printed.working_load_limit_kg)
    return _Capacities(
        ours,
        osha.value * upright_kg,
        factor.value * leg.rating_kg,
        (Citation(osha.source, osha.locator), Citation(factor.source, factor.locator)),
    )


def _no_capacity(legs: int, too_flat: bool, rating_kg: float | Absent) -> Absent:
    """Why the whole sling has no capacity."""
    if legs == 1:
        return absent("one-leg")
    if too_flat or not isinstance(rating_kg, Absent):
        return absent("too-flat")
    return rating_kg if rating_kg.code == "no-lifting-rating" else absent("no-capacity")


@dataclass(frozen=True)
class Found:
    """What the sling feels and may carry."""

    load_kg: float
    legs: int
    legs_counted: int
    shape: _Shape
    flatness: Flatness
    angle_deg: float
    angle_from_vertical_deg: float
    included_angle_deg: float | Absent
    angle_factor: float
    leg_tension_n: float
    side_force_n: float
    headroom_m: float | Absent
    min_leg_rating_kg: float
    leg: _LegRating
    leg_rating_kg: float | Absent
    use_percent: float | Absent
    table_rating_kg: float | Absent
    capacity_kg: float | Absent
    capacity_osha_count_kg: float | Absent
    capacity_en_factor_kg: float | Absent
    legs_counted_osha: int | Absent
    en_mode_factor: float | Absent
    sources: tuple[Citation, ...]


def find(given: Given) -> Found:
    """Statics and ratings of the sling; see WORKSHEET for inputs and results."""
    legs = given.count("legs")
    counted = given.count("legs_counted") if given.has("legs_counted") else legs_that_count(legs)
    if counted > legs:
        raise given.refuse("legs_counted", "more-than-there-are", legs=legs)
    shape = _shape(given, legs)
    angle = shape.angle_deg
    load_kg = given.si("load")
    load_n = load_kg * STANDARD_GRAVITY_M_PER_S2
    tension = leg_tension_n(load_n, counted, angle)
    needed_kg = tension / STANDARD_GRAVITY_M_PER_S2
    leg = _leg_rating(given, legs, angle)
    capacities = _capacities(legs, counted, angle, leg)
    factor = mode_factor(legs, angle) if legs > 1 else None
    one_leg = absent("one-leg")
    return Found(
        load_kg=load_kg,
        legs=legs,
        legs_counted=counted,
        shape=shape,
        flatness="steep" if legs == 1 else flatness(angle),
        angle_deg=angle,
        angle_from_vertical_deg=90.0 - angle,
        included_angle_deg=180.0 - 2 * angle if legs > 1 else absent("one-leg-no-angle"),
        angle_factor=angle_factor(angle),
        leg_tension_n=tension,
        side_force_n=side_force_n(load_n, counted, angle),
        headroom_m=_headroom(shape, legs),
        min_leg_rating_kg=needed_kg,
        leg=leg,
        leg_rating_kg=leg.rating_kg,
        use_percent=_use(needed_kg, leg.rating_kg),
        table_rating_kg=leg.printed.working_load_limit_kg if leg.printed else absent("not-printed"),
        capacity_kg=capacities.ours_kg,
        capacity_osha_count_kg=capacities.osha_kg,
        capacity_en_factor_kg=capacities.en_kg,
        legs_counted_osha=int(legs_counted_by_osha(legs).value) if legs > 1 else one_leg,
        en_mode_factor=factor.value if factor else one_leg if legs == 1 else absent("too-flat"),
        sources=((leg.source,) if leg.source else ()) + capacities.sources,
    )


def _headroom(shape: _Shape, legs: int) -> float | Absent:
    if shape.height_m is not None:
        return shape.height_m
    return absent("give-the-leg" if legs == 1 else "give-the-spread")


def _use(needed_kg: float, rating_kg: float | Absent) -> float | Absent:
    """Part of a leg's rating that is used [-]."""
    if not isinstance(rating_kg, Absent):
        return needed_kg / rating_kg
    return absent("no-leg-rating") if rating_kg.code == "none-given" else rating_kg


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once."""
    reasons: list[Reason] = []
    if found.flatness == "too-flat":
        reasons.append(stop("too-flat"))
    elif found.flatness == "flat":
        reasons.append(caution("flat"))
    reasons.extend(_ratings(found))
    if found.legs == 4 and found.legs_counted == 2:
        reasons.append(note("two-of-four-counted"))
    elif found.legs >= 3 and found.legs_counted >= 3:
        reasons.append(note("sharing-needs-even-legs", "warning"))
    if found.legs > 1:
        reasons.append(note("squeeze"))
    reasons.append(note("hook-over-balance-point", "mandatory"))
    return tuple(reasons)


def _ratings(found: Found) -> tuple[Reason, ...]:
    """What the ratings say of the pull and of the load."""
    if isinstance(found.use_percent, Absent):
        ties_down = found.use_percent.code == "no-lifting-rating"
        return (stop("ties-down-only", **found.use_percent.facts) if ties_down else caution("no-leg-rating"),)
    reasons = []
    if exceeds(found.use_percent, 1.0):
        reasons.append(stop("over-leg-rating", what=found.leg.what))
    printed = found.leg.printed
    if printed and exceeds(found.load_kg, printed.working_load_limit_kg):
        reasons.append(
            stop(
                "over-printed-sling",
                printed=printed.cell,
                whole=weight(printed.working_load_limit_kg, "capacity"),
            )
        )
    return tuple(reasons) or (within("inside-rating", what=found.leg.what),)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    steps = []
    shape = found.shape
    if shape.known_by != "angle" and shape.height_m is not None and shape.half_spread_m is not None:
        steps.append(
            step(
                f"angle-by-{shape.known_by}", height=length(shape.height_m), half=length(shape.half_spread_m)
            )
        )
    steps += [step("factor"), step("pull"), step("squeeze")]
    if not isinstance(found.leg_rating_kg, Absent):
        steps.append(step("use", pull=force(found.leg_tension_n), rating=weight(found.leg_rating_kg)))
    if not isinstance(found.capacity_kg, Absent):
        bound = found.leg.printed and found.leg.printed.working_load_limit_kg <= found.capacity_kg
        printed = found.leg.printed.cell if found.leg.printed and bound else absent("not-printed")
        steps += [
            step("capacity-by-our-count", printed=printed),
            step("capacity-by-osha"),
            step("capacity-by-en"),
        ]
    return tuple(steps)


def shown(found: Found) -> dict[str, Fact]:
    """The printed rating reads as its table prints it."""
    return {"table_rating": found.leg.printed.cell} if found.leg.printed else {}


_LINES: dict[Flatness, LineKind] = {"steep": "leg", "flat": "leg-careful", "too-flat": "leg-stop"}


def draw(found: Found, writer: Writer) -> Figure:
    """The sling to scale."""
    shape = SlingShape(
        found.legs,
        found.angle_deg,
        found.shape.height_m,
        found.shape.half_spread_m,
        _LINES[found.flatness],
        found.load_kg,
        found.leg_tension_n,
    )
    caption = writer.text(
        "figure-one-leg" if found.legs == 1 else "figure",
        legs=found.legs,
        load=weight(found.load_kg),
        angle=known(found.angle_deg, "angle"),
        pull=force(found.leg_tension_n, "demand"),
        squeeze=force(found.side_force_n, "demand"),
    )
    return sling_figure(shape, caption, writer)


_LENGTH = Bounds(above=0, at_most=4000)
_WEIGHT = Bounds(above=0, at_most=2_000_000)

WORKSHEET = Worksheet(
    name="sling-legs",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=_WEIGHT),
        CountInput("legs", bounds=Bounds(at_least=1, at_most=4), default="2"),
        ChoiceInput(
            "known_by", choices=("leg_length_and_spread", "height_and_spread", "angle"), required=False
        ),
        QuantityInput(
            "leg_length",
            dimension="length",
            bounds=_LENGTH,
            required=False,
            shown_when={"known_by": ("leg_length_and_spread",)},
        ),
        QuantityInput(
            "height",
            dimension="length",
            bounds=_LENGTH,
            required=False,
            shown_when={"known_by": ("height_and_spread",)},
        ),
        QuantityInput(
            "spread",
            dimension="length",
            bounds=_LENGTH,
            required=False,
            shown_when={"known_by": ("leg_length_and_spread", "height_and_spread")},
        ),
        QuantityInput(
            "angle",
            dimension="angle",
            bounds=Bounds(above=0, at_most=90),
            required=False,
            shown_when={"known_by": ("angle",)},
        ),
        CountInput("legs_counted", bounds=Bounds(at_least=1, at_most=4), required=False),
        ChoiceInput("grade", choices=("80", "100", "8", "5", "4", "70", "43", "30"), required=False),
        TextInput("size", required=False),
        QuantityInput("leg_rating", dimension="weight", bounds=_WEIGHT, required=False),
    ),
    results=(
        Result("leg_tension", "force", "demand"),
        Result("use_percent", "fraction", "demand"),
        Result("min_leg_rating", "weight", "demand"),
        Result("leg_rating", "weight", "capacity"),
        Result("table_rating", "weight", "capacity"),
        Result("angle", "angle"),
        Result("angle_from_vertical", "angle"),
        Result("included_angle", "angle"),
        Result("angle_factor", digits=4),
        Result("side_force", "force", "demand"),
        Result("headroom", "length"),
        Result("legs_counted"),
        Result("capacity", "weight", "capacity"),
        Result("legs_counted_osha"),
        Result("capacity_osha_count", "weight", "capacity"),
        Result("en_mode_factor"),
        Result("capacity_en_factor", "weight", "capacity"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=lambda found: found.sources,
    shown=shown,
    large="leg_tension",
    example={
        "load": "4,860 lb",
        "legs": "2",
        "known_by": "leg_length_and_spread",
        "leg_length": "6 ft",
        "spread": "5 ft 9 in",
        "grade": "80",
        "size": "3/8",
    },
    citations=(
        Citation("osha-sling-guidance", "Tables 1 and 2; general text on sling angles"),
        Citation("dguv-209-021", "Sling tables after EN 818-4 and EN 818-5"),
        Citation("baker-haynes", "ch. 3, two-force cables in balance"),
    ),
)
