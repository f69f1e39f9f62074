"""How hard does each leg of a sling pull?

Equal legs from one hook to a level load whose balance point is right under the hook. Statics (calc.lifting.
leg_geometry); printed sling ratings from OSHA, Guidance on Safe Sling Use, Tables 1 and 2 (inch chain), and from DGUV
Information 209-021 and 201-030 after EN 818 (metric chain). Beside our count of the legs stand those of the OSHA tables
and the mode factors of EN 818-4. For uneven legs see hanging-load.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.figures.slings import sling_figure
from calc.lifting.leg_geometry import (
    CAREFUL_ANGLE_DEG,
    LOWEST_ANGLE_DEG,
    angle_factor,
    angle_from_height_deg,
    height_from_leg_m,
    leg_tension_n,
    legs_that_count,
    side_force_n,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, number_text
from calc.ratings import (
    METRIC_LIFTING_GRADES,
    TIE_DOWN_ONLY_GRADES,
    NotRated,
    Rating,
    chain_lifting_leg,
    chain_lifting_printed,
    legs_counted_by_osha,
    metric_chain_leg,
    metric_chain_printed,
    metric_size,
    mode_factor,
)
from calc.worksheet import (
    Answer,
    Caution,
    Choice,
    Citation,
    Given,
    Input,
    Result,
    Say,
    Step,
    Verdict,
    Worksheet,
    worst,
)


@dataclass(frozen=True)
class _Geometry:
    """Shape of the sling: angle [deg from horizontal], height and half spread [m] where they are known."""

    angle_deg: float
    height_m: float | None
    half_spread_m: float | None
    steps: tuple[Step, ...]


def _geometry(given: Given, say: Say) -> _Geometry:
    known_by = _known_by(given)
    if given.count("legs") == 1:
        if given.has("angle") and given.si("angle") < 90.0:
            raise given.refuse(
                "angle", "does not fit one leg, which hangs straight down. Leave it out, or give 90°."
            )
        height = given.si("leg_length") if given.has("leg_length") else None
        return _Geometry(90.0, height, None, ())
    if known_by == "angle":
        angle = given.si("angle")
        half = given.si("spread") / 2 if given.has("spread") else None
        height = None
        if half is not None and angle < 90.0:
            height = half * _tan(angle)
        return _Geometry(angle, height, half, ())
    half = given.si("spread") / 2
    if known_by == "height_and_spread":
        height = given.si("height")
        numbers = f"atan({say.one(height, 'length')} / {say.one(half, 'length')})"
        formula = "atan(height / half the spread)"
    else:
        leg = given.si("leg_length")
        if leg <= half:
            raise given.refuse(
                "leg_length",
                f"is too short to reach: half the spread alone is {say.length(half)}. Give a longer leg.",
            )
        height = height_from_leg_m(leg, half)
        numbers = f"atan({say.one(height, 'length')} / {say.one(half, 'length')})"
        formula = "atan(√(leg² − half spread²) / half the spread)"
    angle = angle_from_height_deg(height, half)
    return _Geometry(
        angle, height, half, (Step("Angle from the horizontal", formula, numbers, f"{angle:.1f}°"),)
    )


def _tan(angle_deg: float) -> float:
    return side_force_n(1.0, 1, 90.0 - angle_deg)


def _known_by(given: Given) -> str:
    """How the shape is known: as said, or else by what was given."""
    if given.has("known_by"):
        return given.text("known_by")
    if given.has("angle"):
        return "angle"
    if given.has("height"):
        return "height_and_spread"
    if given.has("leg_length") or given.count("legs") == 1:
        return "leg_length_and_spread"
    raise given.refuse("angle", "is missing. Give the angle, or height and spread, or leg length and spread.")


@dataclass(frozen=True)
class _LegRating:
    """What one leg may carry: the rating, the words for it, or why there is none."""

    rating_kg: float | None
    words: str
    refusal: str = ""
    printed: Rating | None = None
    source: Citation | None = None


def _leg_rating(given: Given, legs: int, angle_deg: float) -> _LegRating:
    if given.has("grade"):
        grade, size = given.text("grade"), given.text("size")
        if grade in TIE_DOWN_ONLY_GRADES:
            return _LegRating(None, "", f"Grade {grade} chain ties loads down. It has no lifting rating.")
        if not size:
            raise given.refuse("size", "is missing. Give the chain's size, such as 3/8 or 10 mm.")
        metric = grade in METRIC_LIFTING_GRADES
        try:
            rating = metric_chain_leg(grade, size) if metric else chain_lifting_leg(grade, size)
        except NotRated as reason:
            raise given.refuse("size", f"is not rated: {reason}.") from reason
        whole_sling = metric_chain_printed if metric else chain_lifting_printed
        printed = whole_sling(grade, size, legs, angle_deg) if legs > 1 else None
        if metric:
            size = f"{metric_size(grade, size)} mm"
        words = f"{size} grade" if "mm" in size else f"{size.removesuffix(' in')} in grade"
        return _LegRating(
            rating.working_load_limit_kg, f"{words} {grade} chain", printed=printed,
            source=Citation(rating.source, rating.locator),
        )  # fmt: skip
    if given.has("leg_rating"):
        return _LegRating(given.si("leg_rating"), "leg")
    return _LegRating(None, "")


@dataclass(frozen=True)
class _Count:
    """What the sling may lift by one way of counting its legs [kg], with the line of the working and its source."""

    capacity_kg: float
    step: Step
    source: Citation | None = None


def _counts(say: Say, legs: int, counted: int, angle_deg: float, leg_rating: _LegRating) -> dict[str, _Count]:
    """Our count beside the OSHA and the EN one; empty for one leg, for no rating, and where the legs are too flat."""
    factor = mode_factor(legs, angle_deg) if legs > 1 else None
    rating_kg = leg_rating.rating_kg
    if factor is None or rating_kg is None:
        return {}
    rated, up = say.one(rating_kg, "weight", "down"), 1.0 / angle_factor(angle_deg)
    osha = legs_counted_by_osha(legs)

    def by_legs(name: str, count: float, most: Rating | None, source: Citation | None) -> _Count:
        capacity = count * rating_kg * up
        numbers = f"{count:g} × {rated} × sin({angle_deg:.1f}°)"
        if most and most.working_load_limit_kg < capacity:
            capacity = most.working_load_limit_kg
            numbers += f", and never over the printed {most.printed}"
        step = Step(name, "legs that count × rating × sin(angle)", numbers, say.weight(capacity, "down"))
        return _Count(capacity, step, source)

    by_factor = factor.value * rating_kg
    return {
        "capacity": by_legs("Whole sling by our count", counted, leg_rating.printed, None),
        "capacity_osha_count": by_legs("By the count of the OSHA tables", osha.value, None, Citation(osha.source, osha.locator)),
        "capacity_en_factor": _Count(
            by_factor,
            Step("By the mode factor of EN 818-4", "mode factor × rating", f"{factor.value:g} × {rated}",
                 say.weight(by_factor, "down")),
            Citation(factor.source, factor.locator),
        ),
    }  # fmt: skip


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    legs = given.count("legs")
    counted = given.count("legs_counted") if given.has("legs_counted") else legs_that_count(legs)
    if counted > legs:
        raise given.refuse("legs_counted", f"is more than the {legs} legs there are. Give {legs} or fewer.")
    geometry = _geometry(given, say)
    angle = geometry.angle_deg
    load_kg = given.si("load")
    load_n = load_kg * STANDARD_GRAVITY_M_PER_S2
    tension = leg_tension_n(load_n, counted, angle)
    side = side_force_n(load_n, counted, angle)
    needed_kg = tension / STANDARD_GRAVITY_M_PER_S2
    leg_rating = _leg_rating(given, legs, angle)
    use = None if leg_rating.rating_kg is None else needed_kg / leg_rating.rating_kg
    verdict = _verdict(angle, legs, load_kg, use, leg_rating)
    counts = _counts(say, legs, counted, angle, leg_rating)
    factor = mode_factor(legs, angle) if legs > 1 else None
    osha_legs = int(legs_counted_by_osha(legs).value) if legs > 1 else None
    return Answer(
        verdict=verdict,
        headline=_headline(say, load_kg, tension, use, leg_rating, angle, legs),
        big="leg_tension",
        results={
            "leg_tension": tension, "angle": angle, "angle_from_vertical": 90.0 - angle,
            "included_angle": 180.0 - 2 * angle if legs > 1 else None, "angle_factor": angle_factor(angle),
            "side_force": side, "headroom": geometry.height_m, "legs_counted": counted, "min_leg_rating": needed_kg,
            "leg_rating": leg_rating.rating_kg, "use_percent": use,
            "table_rating": leg_rating.printed.working_load_limit_kg if leg_rating.printed else None,
            **{name: counts[name].capacity_kg if name in counts else None for name in _COUNT_NAMES},
            "legs_counted_osha": osha_legs, "en_mode_factor": factor.value if factor else None,
        },
        shown=_shown(leg_rating, geometry, legs, angle),
        steps=(
            geometry.steps + _steps(say, load_kg, counted, angle, tension, side, use, leg_rating)
            + tuple(count.step for count in counts.values())
        ),
        cautions=_cautions(say, angle, legs, counted, load_kg, use, leg_rating),
        figure=sling_figure(legs, angle, geometry.height_m, geometry.half_spread_m, load_kg, tension, side, say),
        citations=tuple(s for s in (leg_rating.source, *(count.source for count in counts.values())) if s),
    )  # fmt: skip


def _verdict(angle: float, legs: int, load_kg: float, use: float | None, leg_rating: _LegRating) -> Verdict:
    verdicts: list[Verdict] = ["ok"]
    if leg_rating.refusal:
        return "stop"
    if legs > 1 and angle < LOWEST_ANGLE_DEG - 1e-9:
        verdicts.append("stop")
    elif legs > 1 and angle < CAREFUL_ANGLE_DEG - 1e-9:
        verdicts.append("caution")
    if use is None:
        verdicts.append("caution")
    elif use > 1.0 + 1e-12:
        verdicts.append("stop")
    if leg_rating.printed and load_kg > leg_rating.printed.working_load_limit_kg * (1 + 1e-12):
        verdicts.append("stop")
    return worst(*verdicts)


def _headline(
    say: Say,
    load_kg: float,
    tension: float,
    use: float | None,
    leg_rating: _LegRating,
    angle: float,
    legs: int,
) -> str:
    who = "The leg pulls" if legs == 1 else "Each leg pulls"
    first = f"{who} {say.force(tension, 'up')}."
    if legs > 1 and angle < LOWEST_ANGLE_DEG - 1e-9:
        return f"{first} Under 30° from the horizontal: do not lift like this. Use longer legs."
    if leg_rating.refusal:
        return f"{first} {leg_rating.refusal}"
    if use is None or leg_rating.rating_kg is None:
        return f"{first} Every leg, and every part in it, needs a lifting rating of at least that."
    rated = say.of(leg_rating.rating_kg, "weight", "down")
    share = number_text(use * 100, 3 if use >= 1 else 2, "up")
    if use > 1.0 + 1e-12:
        return f"{first} Your {leg_rating.words} is rated {rated}: {share}% of it. Too much."
    if leg_rating.printed and load_kg > leg_rating.printed.working_load_limit_kg * (1 + 1e-12):
        whole = say.of(leg_rating.printed.working_load_limit_kg, "weight", "down")
        return f"{first} The printed table rates the whole sling {whole}, under your load. Too much."
    return f"{first} Your {leg_rating.words} is rated {rated}: {share}% used."


_COUNT_NAMES = ("capacity", "capacity_osha_count", "capacity_en_factor")


def _shown(leg_rating: _LegRating, geometry: _Geometry, legs: int, angle: float) -> dict[str, str]:
    shown: dict[str, str] = {}
    if legs == 1:
        shown |= dict.fromkeys(
            (*_COUNT_NAMES, "legs_counted_osha", "en_mode_factor"), "one leg: nothing to share"
        )
        shown["included_angle"] = "one leg: no angle between"
    elif mode_factor(legs, angle) is None:
        shown |= dict.fromkeys((*_COUNT_NAMES, "en_mode_factor"), "too flat: not rated")
    elif leg_rating.refusal:
        shown |= dict.fromkeys(_COUNT_NAMES, "no lifting rating")
    elif leg_rating.rating_kg is None:
        shown |= dict.fromkeys(_COUNT_NAMES, "no leg rating given")
    if leg_rating.refusal:
        shown["leg_rating"] = "no lifting rating"
        shown["use_percent"] = "no lifting rating"
    elif leg_rating.rating_kg is None:
        shown["leg_rating"] = "none given"
        shown["use_percent"] = "no leg rating given"
    if geometry.height_m is None:
        shown["headroom"] = f"give the {'length of the leg' if legs == 1 else 'spread'} to find it"
    if leg_rating.printed is None:
        shown["table_rating"] = "not printed for this angle"
    else:
        shown["table_rating"] = leg_rating.printed.printed
    return shown


def _steps(
    say: Say, load_kg: float, counted: int, angle: float, tension: float, side: float, use: float | None,
    leg_rating: _LegRating,
) -> tuple[Step, ...]:  # fmt: skip
    load = say.one(load_kg, "weight")
    legs_word = f"{counted} leg" + ("" if counted == 1 else "s")
    steps = [
        Step("Sling-angle factor", "1 / sin(angle)", f"1 / sin({angle:.1f}°)", f"{angle_factor(angle):.3f}"),
        Step(
            "Pull in each leg",
            "load / legs that count × factor",
            f"{load} / {legs_word} × {angle_factor(angle):.3f}",
            say.force(tension, "up"),
        ),
        Step(
            "Squeeze on the load, from each leg",
            "load / legs that count / tan(angle)",
            f"{load} / {legs_word} / tan({angle:.1f}°)",
            say.force(side, "up"),
        ),
    ]
    if use is not None and leg_rating.rating_kg is not None:
        steps.append(
            Step(
                "Part of the leg's rating used",
                "pull / rating",
                f"{say.one(tension, 'force')} / {say.one(leg_rating.rating_kg, 'weight')}",
                f"{number_text(use * 100, 3, 'up')}%",
            )
        )
    return tuple(steps)


def _cautions(
    say: Say, angle: float, legs: int, counted: int, load_kg: float, use: float | None, leg_rating: _LegRating
) -> tuple[Caution, ...]:
    cautions: list[Caution] = []
    if legs > 1 and angle < LOWEST_ANGLE_DEG - 1e-9:
        cautions.append(
            Caution(
                "No sling goes under 30° from the horizontal. Use longer legs or a spreader.", "prohibition"
            )
        )
    elif legs > 1 and angle < CAREFUL_ANGLE_DEG - 1e-9:
        cautions.append(
            Caution(
                "Between 30° and 45° a few inches of hook height change the pull a lot. Measure the angle again with the slack out."
            )
        )
    if leg_rating.refusal:
        cautions.append(
            Caution(f"{leg_rating.refusal} Take chain of grade 80 or 100 with a readable tag.", "prohibition")
        )
    if use is not None and use > 1.0 + 1e-12:
        cautions.append(
            Caution(
                "The pull is over the leg's rating. Do not lift. Use heavier legs or a steeper angle.",
                "prohibition",
            )
        )
    if leg_rating.printed and load_kg > leg_rating.printed.working_load_limit_kg * (1 + 1e-12):
        cautions.append(
            Caution(
                f"The printed table stops at {leg_rating.printed.printed} for this sling and angle. Stay under it.",
                "prohibition",
            )
        )
    if legs == 4 and counted == 2:
        cautions.append(
            Caution(
                "Four legs on a stiff load: two of them can end up carrying it all, so two are counted. The OSHA tables count three: see the working.",
                "note",
            )
        )
    elif legs >= 3 and counted >= 3:
        cautions.append(
            Caution(
                "More than two legs share only if their lengths match and the load can settle. On a stiff load count two.",
                "warning",
            )
        )
    if legs > 1:
        cautions.append(
            Caution(
                f"The legs squeeze the load with {say.force(side_force_n(load_kg * STANDARD_GRAVITY_M_PER_S2, counted, angle), 'up')} each. A thin box or an open frame may need a spreader.",
                "note",
            )
        )
    cautions.append(
        Caution(
            "The hook must stand right over the balance point, and the tag on your sling governs. No readable tag: do not lift with it.",
            "mandatory",
        )
    )
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="sling-legs",
    title="How hard does each leg of my sling pull?",
    summary="The pull in each leg of a level lift, from the load and the sling angle, held against the leg's rating.",
    inputs=(
        Input("load", "Weight of the load", "quantity", "weight", above=0, at_most=2_000_000,
              help="All that hangs from the sling: the load, its fluids, the shackles and the sling itself."),
        Input("legs", "Number of legs", "count", at_least=1, at_most=4, default="2",
              help="Legs that go from the hook to the load."),
        Input("known_by", "What you can measure", "choice", required=False,
              choices=(Choice("leg_length_and_spread", "Leg length and spread"),
                       Choice("height_and_spread", "Hook height and spread"), Choice("angle", "The angle")),
              help="A tape is surer than an angle by eye."),
        Input("leg_length", "Length of each leg", "quantity", "length", above=0, at_most=4000, required=False,
              shown_when={"known_by": ("leg_length_and_spread",)},
              help="From the bearing point of the hook to the pick point on the load."),
        Input("height", "Height of the hook over the pick points", "quantity", "length", above=0, at_most=4000,
              required=False, shown_when={"known_by": ("height_and_spread",)}, help="Straight up, not along the leg."),
        Input("spread", "Spread between opposite pick points", "quantity", "length", above=0, at_most=4000,
              required=False, shown_when={"known_by": ("leg_length_and_spread", "height_and_spread")},
              help="Four legs: corner to corner. Three legs: twice the distance from the balance point to a pick."),
        Input("angle", "Angle of the legs from the horizontal", "quantity", "angle", above=0, at_most=90,
              required=False, shown_when={"known_by": ("angle",)}, help="From the level load up to the leg."),
        Input("legs_counted", "Legs that count", "count", at_least=1, at_most=4, required=False,
              help="Left empty: 2 of 2, 3 of 3, 2 of 4."),
        Input("grade", "Grade of the chain", "choice", required=False,
              choices=(
                  *(Choice(g, f"Grade {g}") for g in ("80", "100")),
                  *(Choice(g, f"Grade {g}, metric sling (EN 818)") for g in ("8", "5", "4")),
                  *(Choice(g, f"Grade {g}, tie-down only") for g in ("70", "43", "30")),
              ),
              help="As marked on the links. Grades 70, 43 and 30 never lift. A mark 8 is read by the metric tables."),
        Input("size", "Size of the chain", "text", required=False,
              help="Such as 3/8 or 10 mm, from the tag. Metric slings: in mm."),
        Input("leg_rating", "Or: rating of one leg, from its tag", "quantity", "weight", above=0, at_most=2_000_000,
              required=False, help="The straight-pull rating of one leg, or of the weakest part in it."),
    ),
    results=(
        Result("leg_tension", "Pull in each leg", "force", rounding="up"),
        Result("use_percent", "Part of the rating used", "fraction", rounding="up"),
        Result("min_leg_rating", "Rating each leg needs at least", "weight", rounding="up"),
        Result("leg_rating", "Rating of one leg", "weight", rounding="down"),
        Result("table_rating", "Printed rating of the whole sling", "weight", rounding="down"),
        Result("angle", "Angle from the horizontal", "angle"),
        Result("angle_from_vertical", "Angle from the vertical", "angle"),
        Result("included_angle", "Angle between the legs", "angle"),
        Result("angle_factor", "Sling-angle factor", digits=4),
        Result("side_force", "Squeeze on the load, from each leg", "force", rounding="up"),
        Result("headroom", "Height of the hook over the pick points", "length"),
        Result("legs_counted", "Legs that count"),
        Result("capacity", "Whole sling by our count", "weight", rounding="down"),
        Result("legs_counted_osha", "Legs that the OSHA tables count"),
        Result("capacity_osha_count", "Whole sling by that count", "weight", rounding="down"),
        Result("en_mode_factor", "Mode factor of EN 818-4"),
        Result("capacity_en_factor", "Whole sling by that factor", "weight", rounding="down"),
    ),
    compute=compute,
    example={
        "load": "4,860 lb", "legs": "2", "known_by": "leg_length_and_spread", "leg_length": "6 ft",
        "spread": "5 ft 9 in", "grade": "80", "size": "3/8",
    },
    example_story="The yard lifts a cast ballast keel by its two forged eyes with a two-leg chain sling.",
    citations=(
        Citation("osha-sling-guidance", "Tables 1 and 2; general text on sling angles"),
        Citation("dguv-209-021", "Sling tables after EN 818-4 and EN 818-5"),
        Citation("baker-haynes", "ch. 3, two-force cables in balance"),
    ),
)  # fmt: skip
