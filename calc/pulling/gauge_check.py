"""Does my gauge tell the truth?

Hang known weights on it, note what it reads, and weigh the error against every doubt: the known weight's own
tolerance, the scatter of the readings and the smallest division. Uncertainties combine as JCGM 100:2008 (GUM) says:
Type A from repeats (4.2), rectangular limits over root three (4.3.7), a division over root twelve (F.2.2.1), expanded
with Student's t (G.4). Within a class only if error and uncertainty together fit; outside only if they cannot.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from calc.figures.graph import Graph
from calc.pulling.statistics_of_few import Line, expanded, least_squares
from calc.quantities import from_si, number_text
from calc.worksheet import (
    Answer,
    Caution,
    Choice,
    Citation,
    Figure,
    Given,
    Input,
    Result,
    Say,
    Step,
    Verdict,
    Worksheet,
)

Within = Literal["within", "outside", "cannot tell"]


@dataclass(frozen=True)
class Point:
    """What one known weight showed: weight, mean reading, error, expanded uncertainty, allowed error [kg]."""

    weight_kg: float
    mean_kg: float
    readings: int
    uncertainty_kg: float
    allowed_kg: float

    @property
    def error_kg(self) -> float:
        """Mean reading less the true weight [kg]."""
        return self.mean_kg - self.weight_kg

    @property
    def within(self) -> Within:
        """Whether the error is within the allowed one, whatever the doubt; outside; or cannot be told."""
        if abs(self.error_kg) + self.uncertainty_kg <= self.allowed_kg * (1 + 1e-12):
            return "within"
        if abs(self.error_kg) - self.uncertainty_kg > self.allowed_kg:
            return "outside"
        return "cannot tell"


@dataclass(frozen=True)
class Scatter:
    """Pooled standard deviation of repeated readings [kg] and its degrees of freedom; None without repeats."""

    deviation_kg: float | None
    degrees_of_freedom: int


def pooled_scatter(groups: Sequence[Sequence[float]]) -> Scatter:
    """Standard deviation of a single reading, pooled over all weights that were read more than once (GUM 4.2.4)."""
    squares, dof = 0.0, 0
    for readings in groups:
        mean = math.fsum(readings) / len(readings)
        squares += math.fsum((reading - mean) ** 2 for reading in readings)
        dof += len(readings) - 1
    return Scatter(math.sqrt(squares / dof) if dof else None, dof)


def uncertainty_parts(
    scatter: Scatter, readings: int, division_kg: float, give_or_take_kg: float, drift_kg: float
) -> tuple[tuple[float, float], ...]:
    """Standard uncertainties [kg] of one point with their degrees of freedom.

    Without repeats the scatter is taken as up to one division either way (our own reserve, rectangular). The zero's
    drift is taken as a rectangular spread of that whole width.
    """
    if scatter.deviation_kg is None:
        repeat = (division_kg / math.sqrt(3), math.inf)
    else:
        repeat = (scatter.deviation_kg / math.sqrt(readings), float(scatter.degrees_of_freedom))
    return (
        repeat,
        (division_kg / math.sqrt(12), math.inf),
        (give_or_take_kg / math.sqrt(3), math.inf),
        (abs(drift_kg) / math.sqrt(12), math.inf),
    )


def usable_range(points: Sequence[Point]) -> tuple[float, float] | None:
    """The longest run of neighbouring weights [kg] that are all within; None if none is."""
    best: tuple[float, float] | None = None
    start: float | None = None
    for point in points:
        if point.within != "within":
            start = None
            continue
        start = point.weight_kg if start is None else start
        if best is None or point.weight_kg - start > best[1] - best[0]:
            best = (start, point.weight_kg)
    return best


def _groups(given: Given) -> dict[float, tuple[list[float], float]]:
    """Readings and tolerance by known weight, lightest first."""
    capacity = given.si("readings_capacity")
    found: dict[float, tuple[list[float], float]] = {}
    for row in given.rows("known"):
        weight, reading = row.si("true_weight"), row.si("reading")
        if weight > capacity:
            raise row.refuse(
                "true_weight", f"is over the gauge's full scale of {given.typed['readings_capacity']}."
            )
        if reading > capacity * 1.1:
            raise row.refuse(
                "reading", f"is over the gauge's full scale of {given.typed['readings_capacity']}."
            )
        share = row.si("give_or_take") if row.has("give_or_take") else 0.0
        readings, widest = found.get(weight, ([], 0.0))
        found[weight] = ([*readings, reading], max(widest, share))
    return dict(sorted(found.items()))


def _points(given: Given) -> tuple[tuple[Point, ...], Scatter, float]:
    groups = _groups(given)
    capacity, division = given.si("readings_capacity"), given.si("resolution")
    if division > capacity / 4:
        raise given.refuse(
            "resolution", "is more than a quarter of the full scale. Give the smallest step it shows."
        )
    scatter = pooled_scatter([readings for readings, _ in groups.values()])
    drift = 0.0
    if given.has("zero_before") and given.has("zero_after"):
        drift = given.si("zero_after") - given.si("zero_before")
    accuracy = given.si("accuracy_class")
    points = []
    for weight, (readings, give_or_take) in groups.items():
        parts = uncertainty_parts(scatter, len(readings), division, give_or_take, drift)
        allowed = accuracy * (capacity if given.text("class_of") == "full-scale" else weight)
        mean = math.fsum(readings) / len(readings)
        points.append(Point(weight, mean, len(readings), expanded(parts), allowed))
    return tuple(points), scatter, drift


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    points, scatter, drift = _points(given)
    judged = {point.within for point in points}
    within: Within = (
        "outside" if "outside" in judged else ("cannot tell" if "cannot tell" in judged else "within")
    )
    worst_point = max(points, key=lambda point: abs(point.error_kg) / point.allowed_kg)
    usable = usable_range(points)
    line = (
        least_squares([p.weight_kg for p in points], [p.mean_kg for p in points]) if len(points) > 1 else None
    )
    exact = all(not row.has("give_or_take") for row in given.rows("known"))
    verdict = _verdict(within, len(points), exact)
    return Answer(
        verdict=verdict,
        headline=_headline(say, within, worst_point, usable),
        big="error",
        results={
            "error": worst_point.error_kg, "error_percent": worst_point.error_kg / worst_point.weight_kg,
            "uncertainty": worst_point.uncertainty_kg, "repeatability": scatter.deviation_kg, "within": within,
            "usable_range": None if usable is None else list(usable),
            "scale_error": None if line is None else line.slope - 1.0,
            "scale_error_uncertainty": None if line is None else line.slope_uncertainty,
            "zero_offset": None if line is None else line.offset,
            "zero_drift": drift if given.has("zero_before") and given.has("zero_after") else None,
            "reserve": abs(worst_point.error_kg) + worst_point.uncertainty_kg,
        },
        shown={
            **({} if usable else {"usable_range": "none shown to be within"}),
            **({} if scatter.degrees_of_freedom else {"repeatability": "no weight was read twice"}),
        },
        steps=_steps(say, points, scatter, line),
        cautions=_cautions(say, given, points, scatter, exact, within, drift),
        figure=_figure(points, say),
    )  # fmt: skip


def _verdict(within: Within, points: int, exact: bool) -> Verdict:
    if within == "outside":
        return "stop"
    if within == "cannot tell":
        return "unknown"
    return "caution" if points < 3 or exact else "ok"


def _headline(say: Say, within: Within, point: Point, usable: tuple[float, float] | None) -> str:
    way = "high" if point.error_kg > 0 else "low"
    error = (
        f"At {say.weight(point.weight_kg)} the gauge reads {say.weight(abs(point.error_kg))} {way}, "
        f"give or take {say.weight(point.uncertainty_kg, 'up')}."
    )
    if within == "within":
        return f"{error} It is within its class."
    tail = (
        "" if usable is None else f" Shown good from {say.weight(usable[0])} to {say.weight(usable[1])} only."
    )
    if within == "outside":
        return f"{error} It is outside its class.{tail}"
    return f"{error} That cannot tell whether it is within its class: the doubt is too wide.{tail}"


def _steps(
    say: Say, points: Sequence[Point], scatter: Scatter, line: Line | None
) -> tuple[Step, ...]:  # fmt: skip
    steps = []
    if scatter.deviation_kg is not None:
        steps.append(
            Step("Scatter of one reading", "pooled standard deviation of the repeats",
                 f"{scatter.degrees_of_freedom} degrees of freedom", say.of(scatter.deviation_kg, "weight"))
        )  # fmt: skip
    for point in points:
        steps.append(
            Step(
                f"At {say.one(point.weight_kg, 'weight')}", "mean reading − true weight, ± 95% uncertainty",
                f"{say.one(point.mean_kg, 'weight')} − {say.one(point.weight_kg, 'weight')} ± "
                f"{say.one(point.uncertainty_kg, 'weight', 'up', 3)}, allowed {say.one(point.allowed_kg, 'weight', digits=3)}",
                f"{say.of(point.error_kg, 'weight')}: {point.within}",
            )
        )  # fmt: skip
    if line is not None:
        spread = (
            "" if line.slope_uncertainty is None else f" ± {number_text(line.slope_uncertainty * 100, 2)}%"
        )
        steps.append(
            Step("Straight line through the points", "least squares: reading = zero + scale × weight",
                 f"zero {say.of(line.offset, 'weight')}", f"scale {number_text((line.slope - 1) * 100, 3)}%{spread}")
        )  # fmt: skip
    return tuple(steps)


def _cautions(
    say: Say,
    given: Given,
    points: Sequence[Point],
    scatter: Scatter,
    exact: bool,
    within: Within,
    drift: float,
) -> tuple[Caution, ...]:
    cautions = []
    if within == "outside":
        cautions.append(
            Caution("Do not plan a pull by this gauge. Have it calibrated or take another.", "prohibition")
        )
    if within == "cannot tell":
        cautions.append(
            Caution(
                "Use heavier known weights, weigh them better, and read each three times or more.",
                "mandatory",
            )
        )
    if exact:
        cautions.append(
            Caution("No tolerance was given for the known weights, so they count as exact. They are not: weigh them, or work them out with their own give-or-take.", "warning")
        )  # fmt: skip
    if scatter.degrees_of_freedom == 0:
        cautions.append(
            Caution("No weight was read twice, so the scatter is only guessed at one division. Load, unload, read again.", "warning")
        )  # fmt: skip
    heaviest = points[-1].weight_kg
    cautions.append(
        Caution(f"Nothing is shown above {say.weight(heaviest, 'down')}, the heaviest weight tried. A gauge may bend away higher up.", "note")
    )  # fmt: skip
    if abs(drift) > min(point.allowed_kg for point in points):
        cautions.append(
            Caution(
                "The zero moved by more than the class allows. Tap it, warm it up, check again.", "warning"
            )
        )
    if given.text("class_of") == "full-scale":
        low = given.si("accuracy_class") * given.si("readings_capacity") / 0.1
        cautions.append(
            Caution(f"A class of full scale is coarse low down: under {say.weight(low)} the allowed error is over a tenth of the reading.", "note")
        )  # fmt: skip
    cautions.append(
        Caution("Stand clear of the known weight: hang it low, over wood, with nothing under it that can be hurt.", "mandatory")
    )  # fmt: skip
    return tuple(cautions)


def _figure(points: Sequence[Point], say: Say) -> Figure:
    unit = "lb" if say.units == "us" else "kg"

    def own(value_kg: float) -> float:
        return from_si(value_kg, unit, "weight")

    tallest = max(max(abs(p.error_kg) + p.uncertainty_kg, p.allowed_kg) for p in points) * 1.15
    graph = Graph(
        (0.0, own(points[-1].weight_kg) * 1.1), (-own(tallest), own(tallest)), f"known weight, {unit}",
        f"reading less true, {unit}",
    )  # fmt: skip
    graph.curve([(0.0, 0.0), (own(points[-1].weight_kg) * 1.1, 0.0)], "centre")
    ends = [points[0], *points] if len(points) == 1 else list(points)
    for sign in (-1.0, 1.0):
        graph.curve([(own(p.weight_kg) * (0.95 if n == 0 else 1.0), sign * own(p.allowed_kg)) for n, p in enumerate(ends)],
                    "leg-stop")  # fmt: skip
    for p in points:
        graph.bar(own(p.weight_kg), own(p.error_kg - p.uncertainty_kg), own(p.error_kg + p.uncertainty_kg))
    graph.dots([(own(p.weight_kg), own(p.error_kg)) for p in points])
    caption = (
        "Error of the gauge against the known weight, each with its 95% bar; the outer lines are what the class allows. "
        + " ".join(f"At {say.weight(p.weight_kg)}: {say.weight(p.error_kg)}, {p.within}." for p in points)
    )
    return Figure(graph.drawing.svg(caption), caption)


WORKSHEET = Worksheet(
    name="gauge-check",
    title="Does my gauge tell the truth?",
    summary="Error of a scale or load gauge against known weights, with every doubt counted, held against its class.",
    inputs=(
        Input("known", "Known weights and readings", "rows", at_least=1, at_most=60, columns=(
            Input("true_weight", "Known weight", "quantity", "weight", above=0, at_most=2_000_000,
                  help="Weighed on a checked scale, or worked out from its size."),
            Input("give_or_take", "Give or take", "quantity", "weight", at_least=0, at_most=200_000, required=False,
                  help="Half the spread between its high and its low figure."),
            Input("reading", "Reading", "quantity", "weight", at_least=0, at_most=4_000_000),
        ), help="One row a reading. Repeat a weight for its scatter."),
        Input("readings_capacity", "Full scale of the gauge", "quantity", "weight", above=0, at_most=4_000_000),
        Input("resolution", "Smallest step it shows", "quantity", "weight", above=0, at_most=100_000),
        Input("accuracy_class", "Class it claims", "quantity", "fraction", "%", "%", above=0, at_most=25, default="1 %",
              help="From its dial or its sheet, such as 1 %."),
        Input("class_of", "Class is a share of", "choice", default="full-scale",
              choices=(Choice("full-scale", "Full scale"), Choice("reading", "The reading"))),
        Input("zero_before", "Reading at rest before", "quantity", "weight", required=False),
        Input("zero_after", "Reading at rest after", "quantity", "weight", required=False),
    ),
    results=(
        Result("error", "Error where it is worst", "weight"),
        Result("error_percent", "The same, as a share of the weight", "fraction"),
        Result("uncertainty", "Give or take, at 95%", "weight", rounding="up"),
        Result("reserve", "Keep this much in hand when you plan", "weight", rounding="up"),
        Result("within", "Against its class"),
        Result("usable_range", "Shown good from and to", "weight"),
        Result("repeatability", "Scatter of one reading", "weight"),
        Result("scale_error", "Scale error, fitted", "fraction"),
        Result("scale_error_uncertainty", "Its standard uncertainty", "fraction"),
        Result("zero_offset", "Zero error, fitted", "weight"),
        Result("zero_drift", "Zero moved by", "weight"),
    ),
    compute=compute,
    example={
        "known": [
            {"true_weight": "412 lb", "give_or_take": "4 lb", "reading": "420 lb"},
            {"true_weight": "412 lb", "give_or_take": "4 lb", "reading": "410 lb"},
            {"true_weight": "1,185 lb", "give_or_take": "9 lb", "reading": "1,200 lb"},
            {"true_weight": "1,185 lb", "give_or_take": "9 lb", "reading": "1,190 lb"},
            {"true_weight": "2,340 lb", "give_or_take": "16 lb", "reading": "2,360 lb"},
            {"true_weight": "2,340 lb", "give_or_take": "16 lb", "reading": "2,370 lb"},
        ],
        "readings_capacity": "6,600 lb", "resolution": "10 lb", "accuracy_class": "1 %", "class_of": "full-scale",
        "zero_before": "0 lb", "zero_after": "10 lb",
    },
    ok_words="Inside its class",
    example_story="The yard hangs its cast ballast pigs, weighed at the grain store, on the crane scale it bought used.",
    citations=(Citation("jcgm-100", "4.2, 4.3.7, F.2.2.1, G.4, H.3"),),
)  # fmt: skip
