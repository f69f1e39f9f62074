"""How hard does each leg of a sling pull?

Equal legs from one hook to a level load whose balance point is right under the hook. Statics (calc.lifting.
leg_geometry); printed sling ratings from OSHA, Guidance on Safe Sling Use, Tables 1 and 2 (inch chain), and from DGUV
Information 209-021 and 201-030 after EN 818 (metric chain). Where grade and size name the table that a rating comes from,
that table's law decides; where only the tag's figure is known, the stricter of the printed laws does (statics, and the
mode factors of EN 818-4). Two legs count at most, unless the reader says that the load is flexible. Beside our count of the
legs stand those of the OSHA tables and of EN 818-4. For uneven legs see hanging-load.

Two legs are also the bound for three legs of one length whose picks stand unevenly: the balance point lies at the centre of
the circle through the picks, the upright shares go as the sine of twice each corner of their triangle, and no share of a
triangle without an obtuse corner is over a half (derived here; tests/unit/test_sling_legs.py tries it).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.drawing import LineKind
from calc.figures.slings import SlingShape, sling_figure
from calc.inputs import JOB_INPUT, JOB_WORDS, Bounds, ChoiceInput, CountInput, Given, QuantityInput, TextInput
from calc.lifting.condition import ALTERED, GOOD, WORDS, condition_input, condition_of, judge_condition
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
from calc.lifting.leg_grade import WORDS as GRADE_WORDS
from calc.lifting.leg_grade import (
    judge_leg_grade,
    leg_grade_input,
    leg_kind_input,
    lifting_grade,
    why_not_by_tag,
)
from calc.lifting.own_part import WORDS as OWN_PART_WORDS
from calc.lifting.own_part import OwnPart, judge_own_parts, own_part_inputs, own_part_of
from calc.lifting.whole_sling import factor_by_tag, least_printed, printed_sling
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.ratings import (
    METRIC_LIFTING_GRADES,
    NotRated,
    Rating,
    chain_lifting_leg,
    inch_size,
    legs_counted_by_osha,
    metric_chain_leg,
    metric_size,
    mode_factor,
)
from calc.reasons import Reason, caution, note, over, shows_capacity, stop, unknown, within
from calc.words.facts import (
    Absent,
    Cell,
    Fact,
    Message,
    Number,
    absent,
    force,
    known,
    length,
    message,
    weight,
)
from calc.words.writer import Writer

FLEXIBLE = "flexible"
"""A load that gives until all its legs pull, as the reader says."""
KnownBy = Literal["angle", "height_and_spread", "leg_length_and_spread"]

WAYS_AGREE = 0.02
"""Two ways to measure one sling agree if the pulls that they give differ by no more than this share [-] (our own mark, no
source: what a tape leaves)."""
TAG_AGREES = 0.01
"""A tag and a table agree within this share [-]: what rounding to another unit leaves (our own mark, no source)."""
MOST_COUNTED = 3
"""More legs of one sling are never counted: no printed source rates more (tables/sling-leg-counting)."""


@dataclass(frozen=True)
class _Shape:
    """Shape of the sling: angle [deg from horizontal], height and half spread [m] where they are known, and by what."""

    angle_deg: float
    height_m: float | None
    half_spread_m: float | None
    known_by: KnownBy = "angle"


def _shape(given: Given, legs: int) -> _Shape:
    if legs == 1:
        return _plumb(given)
    by = _known_by(given)
    half = given.si("spread") / 2 if given.has("spread") or by != "angle" else None
    ways = _angles_deg(given, half)
    if by not in ways:
        raise given.refuse(by.removesuffix("_and_spread"), "needed-here")
    flattest = min(ways, key=lambda way: ways[way])
    steepest = max(ways, key=lambda way: ways[way])
    if exceeds(_sine(ways[steepest]), (1 + WAYS_AGREE) * _sine(ways[flattest])):
        odd = flattest if by == steepest else steepest
        raise given.refuse(
            odd.removesuffix("_and_spread").removesuffix("_and_height"),
            "ways-disagree",
            one=known(ways[by], "angle"),
            other=known(ways[odd], "angle"),
        )
    # What the reader says was measured counts; where nothing is said, the flatter way does.
    angle = ways[by if given.has("known_by") else flattest]
    upright = half is None or angle == 90.0
    height = None if upright or half is None else half * math.tan(math.radians(angle))
    return _Shape(angle, height, half, by)


def _plumb(given: Given) -> _Shape:
    """One leg hangs straight down; what does not fit that is refused."""
    if given.has("angle") and given.si("angle") < 90.0:
        raise given.refuse("angle", "one-leg-hangs-plumb")
    if given.has("spread"):
        raise given.refuse("spread", "one-leg-has-no-spread")
    leg, height = given.maybe("leg_length"), given.maybe("height")
    if (
        leg is not None
        and height is not None
        and exceeds(max(leg, height), (1 + WAYS_AGREE) * min(leg, height))
    ):
        raise given.refuse("height", "one-leg-is-as-high-as-long", length=length(leg))
    return _Shape(90.0, leg if leg is not None else height, None)


def _known_by(given: Given) -> KnownBy:
    """How the shape is known: as said, or else by what was given."""
    said = given.text("known_by")
    for by in ("angle", "height_and_spread", "leg_length_and_spread"):
        if said == by:
            return by
    if given.has("angle"):
        return "angle"
    if given.has("height"):
        return "height_and_spread"
    if given.has("leg_length"):
        return "leg_length_and_spread"
    raise given.refuse("angle", "shape-missing")


def _angles_deg(given: Given, half_m: float | None) -> dict[str, float]:
    """The angle of the legs [deg from horizontal] by every way in for which enough was given."""
    ways: dict[str, float] = {}
    height, leg = given.maybe("height"), given.maybe("leg_length")
    if given.has("angle"):
        ways["angle"] = given.si("angle")
    if height is not None and half_m is not None:
        ways["height_and_spread"] = angle_from_height_deg(height, half_m)
    if leg is not None and half_m is not None:
        if leg <= half_m:
            raise given.refuse("leg_length", "too-short-to-reach", half=length(half_m))
        ways["leg_length_and_spread"] = angle_from_height_deg(height_from_leg_m(leg, half_m), half_m)
    if leg is not None and height is not None:
        if exceeds(height, leg):
            raise given.refuse("height", "higher-than-the-leg", leg=length(leg))
        ways["leg_length_and_height"] = math.degrees(math.asin(min(height / leg, 1.0)))
    return ways


def _sine(angle_deg: float) -> float:
    return math.sin(math.radians(angle_deg))


def _legs_counted(given: Given, legs: int) -> int:
    """Two at most, unless the reader says that the load is flexible and how many of its legs count."""
    usual = legs_that_count(legs)
    if not given.has("legs_counted"):
        return usual
    counted = given.count("legs_counted")
    if counted > legs:
        raise given.refuse("legs_counted", "more-than-there-are", legs=legs)
    if counted < usual:
        raise given.refuse("legs_counted", "one-leg-holds-no-load-level")
    if counted > usual and given.text("load_kind") != FLEXIBLE:
        raise given.refuse("legs_counted", "stiff-load-counts-two")
    if counted > MOST_COUNTED:
        raise given.refuse("legs_counted", "never-more-than-three")
    return counted


@dataclass(frozen=True)
class _LegRating:
    """What one leg may carry [kg], or why nothing, and what it is.

    printed -- the printed rating of the whole sling at its angle, or None
    bound -- the least printed rating that a sling of the counted legs must not pass; None where only the tag is known
    """

    rating_kg: float | Absent
    what: Message
    printed: Rating | None = None
    bound: Rating | None = None
    source: Citation | None = None

    @property
    def by_tag_alone(self) -> bool:
        """Whether no table is known whose law could decide."""
        return self.source is None


def _leg_rating(given: Given, legs: int, counted: int, angle_deg: float) -> _LegRating:
    why = why_not_by_tag(given)
    if not given.has("grade"):
        return _LegRating(_by_tag(given, why), message("a-leg"))
    grade, size = lifting_grade(given.text("grade")), given.text("size")
    if isinstance(grade, Absent):
        return _LegRating(grade, message("a-leg"))
    if not size:
        if not given.has("leg_rating"):
            raise given.refuse("size", "size-missing")
        return _LegRating(given.si("leg_rating"), message("a-leg"))
    try:
        one, what = _one_leg(grade, size)
    except NotRated as reason:
        raise given.refuse("size", "not-rated", reason=reason.why) from reason
    source = Citation(one.source, one.locator)
    rating_kg = _tag_against_table(given, one)
    if legs == 1:
        return _LegRating(rating_kg, what, source=source)
    printed = printed_sling(grade, size, legs, angle_deg)
    return _LegRating(rating_kg, what, printed, least_printed(grade, size, counted, angle_deg), source)


def _by_tag(given: Given, why_not: Absent | None) -> float | Absent:
    """The rating of a leg [kg] by its tag alone: not where the legs may be chain that ties down."""
    if not given.has("leg_rating"):
        return absent("none-given")
    return given.si("leg_rating") if why_not is None else why_not


def _one_leg(grade: str, size: str) -> tuple[Rating, Message]:
    """The printed rating of one leg, and what the chain is called; raises NotRated."""
    if grade in METRIC_LIFTING_GRADES:
        return metric_chain_leg(grade, size), message(
            "chain-metric", size=metric_size(grade, size), grade=grade
        )
    name = Cell(inch_size("chain-lifting", size, grade=grade))
    return chain_lifting_leg(grade, size), message("chain-inch", size=name, grade=grade)


def _tag_against_table(given: Given, one: Rating) -> float:
    """The rating of a leg [kg] by its table; a tag that was given too must agree with it."""
    table_kg, tag_kg = one.working_load_limit_kg, given.maybe("leg_rating")
    low, high = sorted((table_kg, table_kg if tag_kg is None else tag_kg))
    if exceeds(high, (1 + TAG_AGREES) * low):
        raise given.refuse("leg_rating", "tag-against-table", printed=one.cell)
    return table_kg


@dataclass(frozen=True)
class _Capacities:
    """What the sling may lift [kg] by our count of its legs, by that of the OSHA tables, and by the EN mode factor.

    factor -- the mode factor of the counted legs that bounds ours where only the tag is known
    """

    ours_kg: float | Absent
    osha_kg: float | Absent
    en_kg: float | Absent
    factor: float | None = None
    sources: tuple[Citation, ...] = ()


def _capacities(legs: int, counted: int, angle_deg: float, leg: _LegRating) -> _Capacities:
    factor = mode_factor(legs, angle_deg) if legs > 1 else None
    counted_factor = factor_by_tag(counted, angle_deg) if legs > 1 else None
    if isinstance(leg.rating_kg, Absent) or factor is None or counted_factor is None:
        why = _no_capacity(legs, factor is None, leg.rating_kg)
        return _Capacities(why, why, why)
    upright_kg = leg.rating_kg / angle_factor(angle_deg)
    osha = legs_counted_by_osha(legs)
    ours = counted * upright_kg
    if leg.bound:
        ours = min(ours, leg.bound.working_load_limit_kg)
    if leg.by_tag_alone:
        ours = min(ours, counted_factor * leg.rating_kg)
    return _Capacities(
        ours,
        osha.value * upright_kg,
        factor.value * leg.rating_kg,
        counted_factor if leg.by_tag_alone else None,
        (Citation(osha.source, osha.locator), Citation(factor.source, factor.locator)),
    )


def _no_capacity(legs: int, too_flat: bool, rating_kg: float | Absent) -> Absent:
    """Why the whole sling has no capacity."""
    if legs == 1:
        return absent("one-leg")
    if too_flat or not isinstance(rating_kg, Absent):
        return absent("too-flat")
    return absent("no-capacity") if rating_kg.code == "none-given" else rating_kg


@dataclass(frozen=True)
class Found:
    """What the sling feels and may carry."""

    load_kg: float
    legs: int
    legs_counted: int
    flexible: bool
    condition: str
    own_part: OwnPart | None
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
    capacities: _Capacities
    legs_counted_osha: int | Absent
    en_mode_factor: float | Absent
    sources: tuple[Citation, ...]

    def _usable(self, capacity_kg: float | Absent) -> float | Absent:
        """A capacity [kg], unless the sling may not be used or cannot be rated."""
        if isinstance(capacity_kg, Absent) or shows_capacity(judge(self)):
            return capacity_kg
        return absent("not-to-be-used")

    @property
    def capacity_kg(self) -> float | Absent:
        """What the whole sling may lift [kg]."""
        return self._usable(self.capacities.ours_kg)

    @property
    def capacity_osha_count_kg(self) -> float | Absent:
        """The same by the count of the OSHA tables [kg]."""
        return self._usable(self.capacities.osha_kg)

    @property
    def capacity_en_factor_kg(self) -> float | Absent:
        """The same by the mode factor of EN 818-4 [kg]."""
        return self._usable(self.capacities.en_kg)


def find(given: Given) -> Found:
    """Statics and ratings of the sling; see WORKSHEET for inputs and results."""
    legs = given.count("legs")
    counted = _legs_counted(given, legs)
    shape = _shape(given, legs)
    angle = shape.angle_deg
    load_kg = given.si("load")
    load_n = load_kg * STANDARD_GRAVITY_M_PER_S2
    tension = leg_tension_n(load_n, counted, angle)
    needed_kg = tension / STANDARD_GRAVITY_M_PER_S2
    leg = _leg_rating(given, legs, counted, angle)
    capacities = _capacities(legs, counted, angle, leg)
    factor = mode_factor(legs, angle) if legs > 1 else None
    one_leg = absent("one-leg")
    return Found(
        load_kg=load_kg,
        legs=legs,
        legs_counted=counted,
        flexible=given.text("load_kind") == FLEXIBLE,
        condition=condition_of(given),
        own_part=own_part_of(given),
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
        capacities=capacities,
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
    condition, ratings = judge_condition(found.condition), _ratings(found)
    altered = found.condition in ALTERED
    reasons.extend((*condition, *ratings) if altered else (*ratings, *condition))
    reasons.extend(judge_own_parts((found.own_part,)))
    reasons.extend(_counting(found))
    if found.legs > 1:
        reasons.append(note("squeeze"))
    reasons.append(note("hook-over-balance-point", "mandatory"))
    return tuple(reasons)


def _counting(found: Found) -> tuple[Reason, ...]:
    """How many legs count, and by whose law."""
    reasons: list[Reason] = []
    if found.legs_counted >= MOST_COUNTED:
        reasons.append(caution("sharing-needs-even-legs"))
    elif found.legs > found.legs_counted:
        code = "two-counted-of-flexible" if found.flexible else f"two-of-{found.legs}-counted"
        reasons.append(note(code))
    factor = found.capacities.factor
    if factor is not None:
        reasons.append(note("tag-alone", factor=Number(factor, places=1)))
    return tuple(reasons)


def _ratings(found: Found) -> tuple[Reason, ...]:
    """What the ratings say of the pull and of the load."""
    if isinstance(found.use_percent, Absent):
        return (_no_rating(found.use_percent),)
    reasons = []
    if exceeds(found.use_percent, 1.0):
        reasons.append(over("over-leg-rating", what=found.leg.what))
    bound = found.leg.bound
    if bound and exceeds(found.load_kg, bound.working_load_limit_kg):
        whole = weight(bound.working_load_limit_kg, "capacity")
        reasons.append(over("over-printed-sling", printed=bound.cell, whole=whole))
    ours = found.capacities.ours_kg
    if not reasons and not isinstance(ours, Absent) and exceeds(found.load_kg, ours):
        factor = Number(found.capacities.factor or 0.0, places=1)
        reasons.append(over("over-sling-by-factor", factor=factor, whole=weight(ours, "capacity")))
    return tuple(reasons) or (within("inside-rating", what=found.leg.what),)


def _no_rating(why: Absent) -> Reason:
    """Chain that ties down, chain that may, or no rating at all."""
    return unknown("no-leg-rating") if why.code == "no-leg-rating" else judge_leg_grade(why)[0]


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
        steps.append(
            step(
                "use",
                pull=weight(found.leg_tension_n / STANDARD_GRAVITY_M_PER_S2),
                rating=weight(found.leg_rating_kg),
            )
        )
    if not isinstance(found.capacity_kg, Absent):
        steps += [
            step("capacity-by-our-count", bound=_what_bounds(found, found.capacity_kg)),
            step("capacity-by-osha"),
            step("capacity-by-en"),
        ]
    return tuple(steps)


def _what_bounds(found: Found, capacity_kg: float) -> Fact:
    """What holds the capacity of the whole sling [kg] under its statics: a printed cell, a mode factor, or nothing."""
    bound, factor = found.leg.bound, found.capacities.factor
    if bound and bound.working_load_limit_kg <= capacity_kg:
        return message("never-over-printed", printed=bound.cell)
    if factor is not None and not isinstance(found.leg_rating_kg, Absent):
        rating = weight(found.leg_rating_kg, "capacity")
        return message("never-over-factor", factor=Number(factor, places=1), rating=rating)
    return absent("not-printed")


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
        QuantityInput("load", dimension="weight", bounds=_WEIGHT, sense="demand"),
        CountInput("legs", bounds=Bounds(at_least=1, at_most=4)),
        ChoiceInput(
            "known_by", choices=("leg_length_and_spread", "height_and_spread", "angle"), required=False
        ),
        QuantityInput(
            "leg_length",
            dimension="length",
            bounds=_LENGTH,
            required=False,
            sense="capacity",
            shown_when={"known_by": ("leg_length_and_spread",)},
        ),
        QuantityInput(
            "height",
            dimension="length",
            bounds=_LENGTH,
            required=False,
            sense="capacity",
            shown_when={"known_by": ("height_and_spread",)},
        ),
        QuantityInput(
            "spread",
            dimension="length",
            bounds=_LENGTH,
            required=False,
            sense="demand",
            shown_when={"known_by": ("leg_length_and_spread", "height_and_spread")},
        ),
        QuantityInput(
            "angle",
            dimension="angle",
            bounds=Bounds(above=0, at_most=90),
            required=False,
            sense="capacity",
            shown_when={"known_by": ("angle",)},
        ),
        ChoiceInput("load_kind", choices=("stiff", FLEXIBLE), required=False),
        CountInput(
            "legs_counted",
            bounds=Bounds(at_least=1, at_most=4),
            required=False,
            shown_when={"load_kind": (FLEXIBLE,)},
        ),
        *own_part_inputs(),
        leg_kind_input(),
        leg_grade_input(),
        TextInput("size", required=False, shown_when={"leg_kind": ("chain",)}),
        QuantityInput("leg_rating", dimension="weight", bounds=_WEIGHT, required=False, sense="capacity"),
        condition_input(),
        JOB_INPUT,
    ),
    results=(
        Result("leg_tension", "force", "demand"),
        Result("use_percent", "fraction", "demand"),
        Result("min_leg_rating", "weight", "demand"),
        Result("leg_rating", "weight", "capacity", printed=True),
        Result("table_rating", "weight", "capacity", printed=True),
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
    shares=(WORDS, GRADE_WORDS, OWN_PART_WORDS, JOB_WORDS),
    example={
        "load": "4,860 lb",
        "legs": "2",
        "known_by": "leg_length_and_spread",
        "leg_length": "6 ft",
        "spread": "5 ft 9 in",
        "leg_kind": "chain",
        "grade": "80",
        "size": "3/8",
        "condition": GOOD,
    },
    citations=(
        Citation("osha-sling-guidance", "Tables 1 and 2; general text on sling angles"),
        Citation("dguv-209-021", "Sling tables after EN 818-4 and EN 818-5"),
        Citation("baker-haynes", "ch. 3, two-force cables in balance"),
    ),
)
