"""Does my gauge tell the truth?

Hang known weights on it, note what it reads, and weigh the error against every doubt: the known weight's own
tolerance, the scatter of the readings and the smallest division (calc.pulling.gauge_errors, after JCGM 100:2008). Within
a class only if error and uncertainty together fit; outside only if they cannot.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

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
    """What the known weights showed, lightest first, and the worst of it."""

    points: tuple[Point, ...]
    gauge: GaugeClass
    standing: Standing
    exact: bool
    degrees_of_freedom: int
    error_kg: float
    error_percent: float
    uncertainty_kg: float
    reserve_kg: float
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
    standing = worst_standing(points)
    deviation_kg = doubts.scatter.deviation_kg
    line = _line(points)
    return Found(
        points=points,
        gauge=gauge,
        standing=standing,
        exact=not any(row.has("give_or_take") for row in given.rows("known")),
        degrees_of_freedom=doubts.scatter.degrees_of_freedom,
        error_kg=worst.error_kg,
        error_percent=worst.error_kg / worst.weight_kg,
        uncertainty_kg=worst.uncertainty_kg,
        reserve_kg=worst.reserve_kg,
        within=_standing_words(standing),
        usable_range_kg=usable_range_kg(points) or absent("none-within"),
        repeatability_kg=absent("not-read-twice") if deviation_kg is None else deviation_kg,
        scale_error=line.slope - 1.0 if line else absent("not-known"),
        scale_error_uncertainty=_slope_uncertainty(line),
        zero_offset_kg=line.offset if line else absent("not-known"),
        zero_drift_kg=_drift_kg(given),
    )


def _standing_words(standing: Standing) -> Message:
    return message(f"standing-{standing}")


def _line(points: Sequence[Point]) -> Line | None:
    if len(points) < 2:
        return None
    return least_squares([point.weight_kg for point in points], [point.mean_kg for point in points])


def _slope_uncertainty(line: Line | None) -> float | Absent:
    if line is None or line.slope_uncertainty is None:
        return absent("not-known")
    return line.slope_uncertainty


def judge(found: Found) -> tuple[Reason, ...]:
    """The class first, then what makes the check weaker than it looks."""
    reasons = [_against_class(found)]
    if len(found.points) < FEWEST:
        reasons.append(caution("few-points"))
    if found.exact:
        reasons.append(caution("counted-as-exact"))
    if isinstance(found.repeatability_kg, Absent):
        reasons.append(note("not-read-twice", "warning"))
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
        QuantityInput(
            "accuracy_class", dimension="fraction", bounds=Bounds(above=0, at_most=25), default="1 %"
        ),
        ChoiceInput("class_of", choices=("full-scale", "reading"), default="full-scale"),
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
        "zero_before": "0 lb",
        "zero_after": "10 lb",
    },
    citations=(Citation("jcgm-100", "4.2, 4.3.7, F.2.2.1, G.4, H.3"),),
)
