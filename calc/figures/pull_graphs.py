"""Graphs of pulling and proving: a drop's pull against travel, a log's force against opening, a gauge's error."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Point
from calc.figures.graph import Axis, Graph, OwnUnit
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.words.facts import force
from calc.words.writer import Writer

_ROOM = 1.1
"""How far an axis runs past its largest value."""


@dataclass(frozen=True)
class Drop:
    """A load that falls into its sling: fall [m], stretch at rest and at the peak [m], weight [kg], peak pull [N]."""

    height_m: float
    static_m: float
    peak_m: float
    weight_kg: float
    peak_n: float


def drop_figure(drop: Drop, caption: str, writer: Writer) -> Figure:
    """Pull against travel: free fall, then the sling's stretch; rest and peak marked, the two shaded works equal."""
    travel, pull = OwnUnit("length", writer), OwnUnit("force", writer)
    start, peak = travel.of(-drop.height_m), (travel.of(drop.peak_m), pull.of(drop.peak_n))
    weight = pull.of(drop.weight_kg * STANDARD_GRAVITY_M_PER_S2)
    graph = Graph(
        Axis(start, peak[0] * _ROOM, writer.text("axis-travel", unit=travel.name)),
        Axis(0.0, peak[1] * _ROOM, writer.text("axis-pull", unit=pull.name)),
        writer,
    )
    graph.curve([(start, 0.0), (0.0, 0.0), peak], "curve")
    graph.curve([(start, weight), (peak[0], weight)], "hidden")
    graph.dots([(travel.of(drop.static_m), weight), peak])
    graph.note(*peak, writer.own(force(drop.peak_n, "demand"), 3), "strong")
    graph.note(start, weight, writer.text("mark-weight"))
    return Figure(graph.drawing.svg(caption), caption)


@dataclass(frozen=True)
class Break:
    """Where a log leaves its straight line: force [N], and its bounds [N]."""

    at_n: float
    low_n: float
    high_n: float


@dataclass(frozen=True)
class LogShape:
    """The log of a pull as drawn: (force [N], gap [m]) and (time [s], force [N]) in the order taken, the straight line, gap =
    offset [m] + compliance [m/N] x force, and where the readings leave it.
    """

    pulls: tuple[tuple[float, float], ...]
    times: tuple[tuple[float, float], ...]
    offset_m: float
    compliance_m_per_n: float
    leaves: Break | None

    @property
    def top_n(self) -> float:
        """The highest force."""
        return max(pull_n for pull_n, _ in self.pulls)

    @property
    def widest_m(self) -> float:
        """The widest opening, counted from where the straight line starts."""
        return max(gap_m for _, gap_m in self.pulls) - self.offset_m

    @property
    def straight_to_n(self) -> float:
        """Up to which force the straight line is carried on and stays on the sheet."""
        return min(self.top_n, self.widest_m * _ROOM / self.compliance_m_per_n)

    @property
    def timed(self) -> bool:
        """Whether there are two different times to draw the force against."""
        return len({time_s for time_s, _ in self.times}) > 1

    @property
    def lasted_s(self) -> float:
        """From the first time noted to the last."""
        return max(time_s for time_s, _ in self.times) - min(time_s for time_s, _ in self.times)


def log_figure(log: LogShape, caption: str, writer: Writer) -> Figure:
    """Force against opening with the straight line and the break, and below it force against time where it was noted."""
    opening, pull = OwnUnit("length", writer), OwnUnit("force", writer)
    points = [(opening.of(gap_m - log.offset_m), pull.of(pull_n)) for pull_n, gap_m in log.pulls]
    high = Axis(0.0, pull.of(log.top_n) * _ROOM, writer.text("axis-force", unit=pull.name))
    wide = Axis(
        min(0.0, *(x for x, _ in points)),
        opening.of(log.widest_m) * _ROOM,
        writer.text("axis-opening", unit=opening.name),
    )
    graph = Graph(wide, high, writer, stacked=log.timed)
    end_n = log.straight_to_n
    graph.curve([(0.0, 0.0), (opening.of(log.compliance_m_per_n * end_n), pull.of(end_n))], "hidden")
    graph.curve(points, "curve")
    graph.dots(points)
    if log.leaves:
        at = (opening.of(log.compliance_m_per_n * log.leaves.at_n), pull.of(log.leaves.at_n))
        graph.bar(at[0], pull.of(log.leaves.low_n), pull.of(log.leaves.high_n))
        graph.dots([at], "hook")
        graph.note(at[0], at[1] - 0.12 * pull.of(log.top_n), writer.text("mark-leaves"), "strong")
    if log.timed:
        _against_time([(time_s / 60.0, pull.of(pull_n)) for time_s, pull_n in log.times], high, graph, writer)
    return Figure(graph.drawing.svg(caption), caption)


def _against_time(minutes: Sequence[Point], high: Axis, above: Graph, writer: Writer) -> None:
    """Force against time, under the graph of the opening."""
    times = [time for time, _ in minutes]
    graph = Graph(Axis(min(times), max(times), writer.text("axis-time")), high, writer, above)
    graph.curve(minutes, "curve-second")
    graph.dots(minutes)


@dataclass(frozen=True)
class GaugePoint:
    """What a known weight [kg] showed: error [kg], half of its bar [kg], and the error allowed there [kg]."""

    weight_kg: float
    error_kg: float
    doubt_kg: float
    allowed_kg: float


def gauge_figure(points: Sequence[GaugePoint], caption: str, writer: Writer) -> Figure:
    """Error of a gauge against the known weight, lightest first, each with its bar, between the lines of its class."""
    own = OwnUnit("weight", writer)
    heaviest = own.of(points[-1].weight_kg) * _ROOM
    tallest = own.of(max(max(abs(p.error_kg) + p.doubt_kg, p.allowed_kg) for p in points) * 1.15)
    graph = Graph(
        Axis(0.0, heaviest, writer.text("axis-known", unit=own.name)),
        Axis(-tallest, tallest, writer.text("axis-error", unit=own.name)),
        writer,
    )
    graph.curve([(0.0, 0.0), (heaviest, 0.0)], "centre")
    ends = [points[0], *points] if len(points) == 1 else points
    for sign in (-1.0, 1.0):
        allowed = [(own.of(p.weight_kg), sign * own.of(p.allowed_kg)) for p in ends]
        graph.curve([(allowed[0][0] * 0.95, allowed[0][1]), *allowed[1:]], "leg-stop")
    for p in points:
        graph.bar(own.of(p.weight_kg), own.of(p.error_kg - p.doubt_kg), own.of(p.error_kg + p.doubt_kg))
    graph.dots([(own.of(p.weight_kg), own.of(p.error_kg)) for p in points])
    return Figure(graph.drawing.svg(caption), caption)


__all__ = ["Break", "Drop", "GaugePoint", "LogShape", "drop_figure", "gauge_figure", "log_figure"]
