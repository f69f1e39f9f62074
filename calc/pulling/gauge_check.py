"""Does my gauge tell the truth?

Hang known weights on it, note what it reads, and weigh the error against every doubt: the known weight's own
tolerance, the scatter of the readings and the smallest division (calc.pulling.gauge_errors, after JCGM 100:2008). Within
a class only if error and uncertainty together fit; outside only if they cannot. A gauge that does not follow the weights is
dead, whatever class it claims; what nobody knows of the weights or of the zero leaves the class unknown.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.pull_graphs import GaugePoint, gauge_figure
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput, RowsInput
from calc.pulling.gauge_errors import (
    Doubts,
    KnownWeight,
    Point,
    Standing,
    pooled_scatter,
    usable_range_kg,
    worst_standing,
)
from calc.pulling.statistics_of_few import Line, least_squares
from calc.reasons import Reason, caution, note, stop, unknown, within
from calc.words.facts import Absent, Fact, Listing, Message, absent, message, weight
from calc.words.writer import Writer

FEWEST = 3
"""Known weights under which a gauge is not called good (our own mark, no source)."""
OVER_FULL_SCALE = 1.1
"""A reading may run over the full scale by this ratio [-], since a gauge may read high."""
COARSE_SHARE = 0.1
"""An allowed error over this share of the reading is called coarse [-] (our own mark, no source)."""


FOLLOWS_SHARE = 0.5
"""A gauge that shows less than this share of a weight, or of what a weight adds, or is off by as much, is dead (our own mark,
no source)."""
TELLS_DIVISIONS = 4.0
"""Weights, or differences between them, under so many divisions do not show whether it follows (our own mark, no source)."""
TELLS_ALLOWED = 2.0
"""A heaviest weight under so many times the allowed error shows nothing (our own mark, no source)."""


@dataclass(frozen=True)
class GaugeClass:
    """The error that the gauge claims to keep: a share [-] of its full scale [kg], or of the reading."""

    share: float
    full_scale_kg: float
    of_full_scale: bool

    def allowed_kg(self, weight_kg: float) -> float:
        """The error allowed at a weight [kg]."""
        return self.share * (self.full_scale_kg if self.of_full_scale else weight_kg)


@dataclass(frozen=True)
class Found:
    """What the known weights showed, lightest first, and the worst of it.

    exact -- a known weight came without its give-or-take; follows -- whether the readings follow the weights at all;
    rest_kg -- the most it shows at rest, either way
    """

    points: tuple[Point, ...]
    gauge: GaugeClass
    standing: Standing
    exact: bool
    follows: bool
    rest_kg: float
    degrees_of_freedom: int
    error_kg: float
    error_percent: float
    uncertainty_kg: float | Absent
    reserve_kg: float | Absent
    within: Message
    usable_range_kg: tuple[float, float] | Absent
    repeatability_kg: float | Absent
    scale_error: float | Absent
    scale_error_uncertainty: float | Absent
    zero_offset_kg: float | Absent
    zero_drift_kg: float | Absent

    @property
    def worst(self) -> Point:
        """The point whose error is largest for what is allowed there."""
        return _worst(self.points)


def _worst(points: Sequence[Point]) -> Point:
    return max(points, key=lambda point: abs(point.error_kg) / point.allowed_kg)


def _known_weights(given: Given) -> tuple[KnownWeight, ...]:
    """Readings and the widest tolerance by known weight, lightest first."""
    found: dict[float, KnownWeight] = {}
    for row in given.rows("known"):
        _on_the_scale(given, row)
        weight_kg, reading_kg = row.si("true_weight"), row.si("reading")
        tolerance_kg = row.si("give_or_take") if row.has("give_or_take") else 0.0
        before = found.get(weight_kg, KnownWeight(weight_kg, 0.0, ()))
        found[weight_kg] = KnownWeight(
            weight_kg, max(before.give_or_take_kg, tolerance_kg), (*before.readings_kg, reading_kg)
        )
    return tuple(found[weight_kg] for weight_kg in sorted(found))


def _on_the_scale(given: Given, row: Given) -> None:
    full_scale_kg, typed = given.si("readings_capacity"), given.typed["readings_capacity"]
    if row.si("true_weight") > full_scale_kg:
        raise row.refuse("true_weight", "over-full-scale", full_scale=typed)
    if row.si("reading") > full_scale_kg * OVER_FULL_SCALE:
        raise row.refuse("reading", "over-full-scale", full_scale=typed)


def _drift_kg(given: Given) -> float | Absent:
    if given.has("zero_before") and given.has("zero_after"):
        return given.si("zero_after") - given.si("zero_before")
    return absent("not-known")


def _doubts(given: Given, known: Sequence[KnownWeight]) -> Doubts:
    division_kg = given.si("resolution")
    if division_kg > given.si("readings_capacity") / 4:
        raise given.refuse("resolution", "too-coarse")
    drift_kg = _drift_kg(given)
    scatter = pooled_scatter([one.readings_kg for one in known])
    return Doubts(scatter, division_kg, 0.0 if isinstance(drift_kg, Absent) else drift_kg)


def find(given: Given) -> Found:
    """Errors and uncertainties of the gauge; see WORKSHEET for inputs and results."""
    known = _known_weights(given)
    doubts = _doubts(given, known)
    gauge = GaugeClass(
        given.si("accuracy_class"), given.si("readings_capacity"), given.text("class_of") == "full-scale"
    )
    points = tuple(one.point(doubts, gauge.allowed_kg(one.weight_kg)) for one in known)
    worst = _worst(points)
    exact = not all(row.has("give_or_take") for row in given.rows("known"))
    follows = _follows(points, doubts.division_kg)
    standing = worst_standing(points) if follows else "outside"
    doubt = _why_no_doubt(given, exact)
    deviation_kg = doubts.scatter.deviation_kg
    line = _line(points)
    return Found(
        points=points,
        gauge=gauge,
        standing=standing,
        exact=exact,
        follows=follows,
        rest_kg=max(abs(given.maybe(name) or 0.0) for name in ("zero_before", "zero_after")),
        degrees_of_freedom=doubts.scatter.degrees_of_freedom,
        error_kg=worst.error_kg,
        error_percent=worst.error_kg / worst.weight_kg,
        uncertainty_kg=doubt or worst.uncertainty_kg,
        reserve_kg=doubt or _reserve_kg(points, follows),
        within=_standing_words("cannot-tell" if doubt and standing == "within" else standing),
        usable_range_kg=_range_kg(points, follows and doubt is None),
        repeatability_kg=absent("not-read-twice") if deviation_kg is None else deviation_kg,
        scale_error=line.slope - 1.0 if line else absent("not-known"),
        scale_error_uncertainty=_slope_uncertainty(line, known, given.text("weights_from") == "each-own"),
        zero_offset_kg=line.offset if line else absent("not-known"),
        zero_drift_kg=_drift_kg(given),
    )


def _why_no_doubt(given: Given, exact: bool) -> Absent | None:
    """Why the uncertainty is not known, or None where it is: a weight without its give-or-take, a zero that was not read."""
    if exact:
        return absent("weights-not-sure")
    if not (given.has("zero_before") and given.has("zero_after")):
        return absent("zero-not-read")
    return None


def _reserve_kg(points: Sequence[Point], follows: bool) -> float | Absent:
    """What to keep in hand anywhere among the weights: the largest error with its uncertainty."""
    return max(point.reserve_kg for point in points) if follows else absent("dead")


def _range_kg(points: Sequence[Point], known: bool) -> tuple[float, float] | Absent:
    return (usable_range_kg(points) if known else None) or absent("none-within")


def _follows(points: Sequence[Point], division_kg: float) -> bool:
    """Whether the readings follow the weights: each shows its weight, and what one adds to the next."""
    tells_kg = TELLS_DIVISIONS * division_kg
    if any(
        point.weight_kg >= tells_kg and abs(point.error_kg) > FOLLOWS_SHARE * point.weight_kg
        for point in points
    ):
        return False
    lightest, heaviest = points[0], points[-1]
    added_kg = heaviest.weight_kg - lightest.weight_kg
    return added_kg < tells_kg or heaviest.mean_kg - lightest.mean_kg >= FOLLOWS_SHARE * added_kg


def _standing_words(standing: Standing) -> Message:
    return message(f"standing-{standing}")


def _line(points: Sequence[Point]) -> Line | None:
    if len(points) < 2:
        return None
    return least_squares([point.weight_kg for point in points], [point.mean_kg for point in points])


def _slope_uncertainty(line: Line | None, known: Sequence[KnownWeight], each_own: bool) -> float | Absent:
    """Standard uncertainty of the scale error [-]. Weights that may share one cause (all from one scale) are off together, so
    what each adds is summed straight; only where each was found by itself do they add in squares (JCGM 100:2008, 5.2.2).
    """
    if line is None or line.slope_uncertainty is None:
        return absent("not-known")
    mean_kg = fmean(one.weight_kg for one in known)
    spread = math.fsum((one.weight_kg - mean_kg) ** 2 for one in known)
    parts = [
        abs(one.weight_kg - mean_kg) / spread * one.give_or_take_kg / math.sqrt(3) * line.slope
        for one in known
    ]
    together = math.hypot(*parts) if each_own else math.fsum(parts)
    return math.hypot(line.slope_uncertainty, together)


def judge(found: Found) -> tuple[Reason, ...]:
    """The class first, then what makes the check weaker than it looks."""
    reasons = [_against_class(found)]
    if found.exact:
        reasons.append(unknown("counted-as-exact"))
    if isinstance(found.zero_drift_kg, Absent):
        reasons.append(unknown("zero-not-read"))
    if exceeds(found.rest_kg, min(point.allowed_kg for point in found.points)):
        reasons.append(unknown("rest-off", rest=weight(found.rest_kg)))
    heaviest = found.points[-1]
    if heaviest.weight_kg < TELLS_ALLOWED * heaviest.allowed_kg:
        reasons.append(unknown("weights-too-light", allowed=weight(heaviest.allowed_kg)))
    if len(found.points) < FEWEST:
        reasons.append(caution("few-points"))
    if isinstance(found.repeatability_kg, Absent):
        reasons.append(caution("not-read-twice"))
    reasons.append(note("nothing-shown-above", heaviest=weight(found.points[-1].weight_kg, "capacity")))
    if not isinstance(found.zero_drift_kg, Absent) and _drifts_too_far(found, found.zero_drift_kg):
        reasons.append(note("zero-moved", "warning"))
    if found.gauge.of_full_scale:
        low_kg = found.gauge.share * found.gauge.full_scale_kg / COARSE_SHARE
        reasons.append(note("coarse-low-down", low=weight(low_kg)))
    reasons.append(note("stand-clear", "mandatory"))
    return tuple(reasons)


def _drifts_too_far(found: Found, drift_kg: float) -> bool:
    return exceeds(abs(drift_kg), min(point.allowed_kg for point in found.points))


def _against_class(found: Found) -> Reason:
    if not found.follows:
        return stop("dead")
    worst = found.worst
    facts: dict[str, Fact] = {
        "weight": weight(worst.weight_kg),
        "off": weight(abs(worst.error_kg)),
        "way": "high" if worst.error_kg > 0 else "low",
        "doubt": weight(worst.uncertainty_kg, "demand"),
    }
    if not isinstance(found.usable_range_kg, Absent):
        low_kg, high_kg = found.usable_range_kg
        facts |= {"low": weight(low_kg), "high": weight(high_kg)}
    if found.standing == "outside":
        return stop("outside-class", **facts)
    if found.standing == "cannot-tell":
        return unknown("cannot-tell", **facts)
    return within("inside-class", **facts)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    steps = []
    if not isinstance(found.repeatability_kg, Absent):
        steps.append(step("scatter", freedom=found.degrees_of_freedom))
    steps += [_point_step(point) for point in found.points]
    if not isinstance(found.scale_error, Absent):
        steps.append(step("line"))
    return tuple(steps)


def _point_step(point: Point) -> Step:
    return step(
        "point",
        weight=weight(point.weight_kg),
        mean=weight(point.mean_kg),
        doubt=weight(point.uncertainty_kg, "demand"),
        allowed=weight(point.allowed_kg),
        error=weight(point.error_kg),
        standing=_standing_words(point.standing),
    )


def draw(found: Found, writer: Writer) -> Figure:
    """Error against known weight, between the lines of the class."""
    points = [GaugePoint(p.weight_kg, p.error_kg, p.uncertainty_kg, p.allowed_kg) for p in found.points]
    each = Listing(
        tuple(
            message(
                "figure-point",
                weight=weight(point.weight_kg),
                error=weight(point.error_kg),
                standing=_standing_words(point.standing),
            )
            for point in found.points
        ),
        "space",
    )
    return gauge_figure(points, writer.text("figure", points=each), writer)


_WEIGHT = Bounds(above=0, at_most=2_000_000)

WORKSHEET = Worksheet(
    name="gauge-check",
    inputs=(
        RowsInput(
            "known",
            bounds=Bounds(at_least=1, at_most=60),
            columns=(
                QuantityInput("true_weight", dimension="weight", bounds=_WEIGHT),
                QuantityInput(
                    "give_or_take",
                    dimension="weight",
                    bounds=Bounds(at_least=0, at_most=200_000),
                    required=False,
                ),
                QuantityInput("reading", dimension="weight", bounds=Bounds(at_least=0, at_most=4_000_000)),
            ),
        ),
        QuantityInput("readings_capacity", dimension="weight", bounds=Bounds(above=0, at_most=4_000_000)),
        QuantityInput("resolution", dimension="weight", bounds=Bounds(above=0, at_most=100_000)),
        QuantityInput("accuracy_class", dimension="fraction", bounds=Bounds(above=0, at_most=25)),
        ChoiceInput("class_of", choices=("full-scale", "reading")),
        ChoiceInput("weights_from", choices=("one-source", "each-own"), required=False),
        QuantityInput("zero_before", dimension="weight", required=False),
        QuantityInput("zero_after", dimension="weight", required=False),
    ),
    results=(
        Result("error", "weight"),
        Result("error_percent", "fraction"),
        Result("uncertainty", "weight", "demand"),
        Result("reserve", "weight", "demand"),
        Result("within"),
        Result("usable_range", "weight"),
        Result("repeatability", "weight"),
        Result("scale_error", "fraction"),
        Result("scale_error_uncertainty", "fraction"),
        Result("zero_offset", "weight"),
        Result("zero_drift", "weight"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    large="error",
    rates=False,
    example={
        "known": [
            {"true_weight": "412 lb", "give_or_take": "4 lb", "reading": "420 lb"},
            {"true_weight": "412 lb", "give_or_take": "4 lb", "reading": "410 lb"},
            {"true_weight": "1,185 lb", "give_or_take": "9 lb", "reading": "1,200 lb"},
            {"true_weight": "1,185 lb", "give_or_take": "9 lb", "reading": "1,190 lb"},
            {"true_weight": "2,340 lb", "give_or_take": "16 lb", "reading": "2,360 lb"},
            {"true_weight": "2,340 lb", "give_or_take": "16 lb", "reading": "2,370 lb"},
        ],
        "readings_capacity": "6,600 lb",
        "resolution": "10 lb",
        "accuracy_class": "1 %",
        "class_of": "full-scale",
        "weights_from": "one-source",
        "zero_before": "0 lb",
        "zero_after": "10 lb",
    },
    citations=(Citation("jcgm-100", "4.2, 4.3.7, F.2.2.1, G.4, H.3, 5.2.2"),),
)
