"""Drawings for pulling and proving: ram and pump, the line of a pull, force against opening."""

from __future__ import annotations

from collections.abc import Sequence

from calc.figures.graph import Graph
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, from_si
from calc.worksheet import Figure, Say


def drop_figure(
    height_m: float, static_m: float, peak_m: float, weight_kg: float, peak_n: float, say: Say
) -> Figure:
    """Pull against travel: free fall, then the sling's stretch; rest and peak marked, the two shaded works equal."""
    unit = "in" if say.units == "us" else "mm"
    force = "lbf" if say.units == "us" else "kN"

    def length(value_m: float) -> float:
        return from_si(value_m, unit, "length")

    def pull(value_n: float) -> float:
        return from_si(value_n, force, "force")

    weight_n = weight_kg * STANDARD_GRAVITY_M_PER_S2
    graph = Graph(
        (length(-height_m), length(peak_m * 1.1)), (0.0, pull(peak_n) * 1.1), f"travel past taut, {unit}",
        f"pull, {'lb' if say.units == 'us' else 'kN'}",
    )  # fmt: skip
    graph.curve([(length(-height_m), 0.0), (0.0, 0.0), (length(peak_m), pull(peak_n))], "curve")
    graph.curve([(length(-height_m), pull(weight_n)), (length(peak_m), pull(weight_n))], "hidden")
    graph.dots([(length(static_m), pull(weight_n)), (length(peak_m), pull(peak_n))])
    graph.note(length(peak_m), pull(peak_n), say.one(peak_n, "force", "up", 3), "strong")
    graph.note(length(-height_m), pull(weight_n), "weight")
    caption = (
        f"Pull against travel: the load falls {say.length(height_m)} free, then the sling pulls harder the more it stretches, up to "
        f"{say.force(peak_n, 'up')} at {say.length(peak_m)}. At rest it would stretch {say.length(static_m)} under {say.weight(weight_kg)} (dashed)."
    )
    return Figure(graph.drawing.svg(caption), caption)


def log_figure(
    pulls: Sequence[tuple[float, float]], times: Sequence[tuple[float, float]], line: tuple[float, float],
    departure: tuple[float | None, float | None, float | None], say: Say,
) -> Figure:  # fmt: skip
    """Force against opening with the straight line and the break, and below it force against time where it was noted.

    pulls -- (force [N], gap [m]); times -- (time [s], force [N]); line -- gap = offset [m] + compliance [m/N] x force
    """
    us = say.units == "us"
    offset, compliance = line
    top = max(force for force, _ in pulls)

    def opening(gap_m: float) -> float:
        return from_si(gap_m - offset, "in" if us else "mm", "length")

    def pull(force_n: float) -> float:
        return from_si(force_n, "lbf" if us else "kN", "force")

    pull_words = "force, lb" if us else "force, kN"
    widest = max(opening(gap) for _, gap in pulls)
    least = min(0.0, *(opening(gap) for _, gap in pulls))
    stacked = len({time for time, _ in times}) > 1
    graph = Graph(
        (least, widest * 1.1),
        (0.0, pull(top) * 1.1),
        f"opening, {'in' if us else 'mm'}",
        pull_words,
        stacked=stacked,
    )
    straight_to = min(top, (widest * 1.1 * (0.0254 if us else 0.001)) / compliance)
    graph.curve([(0.0, 0.0), (opening(offset + compliance * straight_to), pull(straight_to))], "hidden")
    graph.curve([(opening(gap), pull(force)) for force, gap in pulls], "curve")
    graph.dots([(opening(gap), pull(force)) for force, gap in pulls])
    at, low, high = departure
    caption = (
        f"Force against opening; dashed, the straight part carried on to {say.force(straight_to, 'down')}. "
    )
    if at is not None and low is not None and high is not None:
        place = opening(offset + compliance * at)
        graph.bar(place, pull(low), pull(high))
        graph.dots([(place, pull(at))], "hook")
        graph.note(place, pull(at) - 0.12 * pull(top), "leaves the line", "strong")
        caption += f"The readings leave it at {say.force(at)}, between {say.force(low, 'down')} and {say.force(high, 'up')}."
    else:
        caption += "The readings stay on it."
    if stacked:
        minutes = [(time / 60.0, pull(force)) for time, force in times]
        first, last = min(time for time, _ in minutes), max(time for time, _ in minutes)
        second = Graph((first, last), (0.0, pull(top) * 1.1), "time, min", pull_words, above=graph)
        second.curve(minutes, "curve-second")
        second.dots(minutes)
        caption += f" Below it, force against time over {last - first:.3g} min."
    return Figure(graph.drawing.svg(caption), caption)
