"""Drawings for pulling and proving: ram and pump, the line of a pull, force against opening."""

from __future__ import annotations

from collections.abc import Sequence

from calc.figures.drawing import Drawing, LineKind
from calc.figures.graph import Graph
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, from_si
from calc.worksheet import Figure, Say


def ram_figure(
    bore_m: float, rod_m: float, pull_side: bool, rams: int, say: Say, pressure_pa: float, force_n: float,
    pump_bore_m: float | None = None, lever: tuple[float, float] | None = None,
) -> Figure:  # fmt: skip
    """Section through a ram, bore and rod to scale, with the pump and its lever beside it where they are known.

    lever -- its ratio [-] and the push on it [N]
    """
    drawing = Drawing(360, 320, 46)
    half, rod = bore_m / 2, (rod_m or 0.55 * bore_m) / 2
    wall, height = 0.16 * bore_m, 2.2 * bore_m
    pump_half = (pump_bore_m or 0.22 * bore_m) / 2
    pump_x = half + wall + 1.3 * bore_m
    drawing.fit([(-half - wall, -0.6 * bore_m), (pump_x + 1.6 * bore_m, height + 0.8 * bore_m)])
    drawing.line(
        "outline", (-half - wall, height), (-half - wall, -wall), (half + wall, -wall), (half + wall, height)
    )
    drawing.line("outline", (-half, height), (-half, 0.0), (half, 0.0), (half, height))
    piston = 0.9 * bore_m
    drawing.line(
        "outline", (-half, piston), (half, piston), (half, piston + 0.3 * bore_m), (-half, piston + 0.3 * bore_m),
        (-half, piston),
    )  # fmt: skip
    for side in (-rod, rod):
        drawing.line("outline", (side, piston + 0.3 * bore_m), (side, height + 0.35 * bore_m))
    drawing.line("outline", (-rod, height + 0.35 * bore_m), (rod, height + 0.35 * bore_m))
    drawing.line("centre", (0.0, -0.3 * bore_m), (0.0, height + 0.6 * bore_m))
    if pull_side:
        for side in (-1.0, 1.0):
            drawing.line("outline", (side * half, height), (side * rod, height))
            drawing.arrow((side * (half + rod) / 2, height - 0.15 * bore_m), (side * (half + rod) / 2, piston + 0.4 * bore_m))  # fmt: skip
    else:
        for share in (-0.6, 0.0, 0.6):
            drawing.arrow((share * half, 0.2 * bore_m), (share * half, piston - 0.08 * bore_m))
    drawing.dimension((half, -wall), (-half, -wall), say.one(bore_m, "length", digits=3), 16)
    drawing.text((0.0, height + 0.35 * bore_m), say.force(force_n), "middle", (0, -8), "strong")
    pipe_y = height - 0.35 * bore_m if pull_side else 0.25 * bore_m
    drawing.line("thin", (half, pipe_y), (pump_x - pump_half, pipe_y))
    drawing.text(
        ((half + pump_x) / 2 + wall / 2, pipe_y),
        say.one(pressure_pa, "pressure", digits=3),
        "middle",
        (0, -6),
    )
    _pump(drawing, pump_x, pump_half, bore_m, pipe_y, lever, say)
    caption = (
        f"Section through {'one of ' + str(rams) + ' rams' if rams > 1 else 'the ram'}: oil at "
        f"{say.of(pressure_pa, 'pressure')} on {'the ring round the rod' if pull_side else 'the full bore'} of "
        f"{say.of(bore_m, 'length', digits=4)} gives {say.force(force_n)}"
        + (" from all rams together." if rams > 1 else ".")
    )
    return Figure(drawing.svg(caption), caption)


def _pump(
    drawing: Drawing, x: float, half: float, size: float, pipe_y: float,
    lever: tuple[float, float] | None, say: Say,
) -> None:  # fmt: skip
    """A hand pump: barrel, piston, lever with its arms in true ratio where that is known."""
    low, high = pipe_y - 0.3 * size, pipe_y + 0.9 * size
    drawing.line("outline", (x - half, high), (x - half, low), (x + half, low), (x + half, high))
    drawing.line("outline", (x, low + 0.45 * size), (x, high + 0.25 * size))
    drawing.line("outline", (x - half, low + 0.45 * size), (x + half, low + 0.45 * size))
    if lever is None:
        return
    ratio, hand_force_n = lever
    hand = 1.7 * size
    arm = hand / ratio
    pivot = (x - arm, high + 0.25 * size)
    drawing.line("outline", pivot, (pivot[0] + hand, pivot[1]))
    drawing.circle("pick", pivot, 4.0, on_sheet=True)
    drawing.dimension((pivot[0], pivot[1]), (x, pivot[1]), "1", 12)
    drawing.dimension((pivot[0], pivot[1]), (pivot[0] + hand, pivot[1]), f"{ratio:.3g}", 34)
    end = (pivot[0] + hand, pivot[1])
    drawing.arrow((end[0], end[1] + 0.02 * size), (end[0], end[1] - 0.6 * size))
    drawing.text((end[0], end[1] - 0.6 * size), say.one(hand_force_n, "force", digits=3), "middle", (0, 14))


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


def limits_figure(
    limits: Sequence[tuple[str, float]],
    target_n: float,
    ceiling_n: float | None,
    blocked: Sequence[str],
    say: Say,
) -> Figure:
    """Every limit on the pull as a bar to scale, with the target marked on each; blocked parts are named."""
    tallest = max([force for _, force in limits] + [target_n])
    rows = len(limits)
    drawing = Drawing(400, 90 + 44 * rows, 48)
    drawing.fit([(0.0, 0.0), (1.0, 0.0)])
    drawing.origin = (48.0, 64.0)
    step = 44.0 / drawing.scale
    for position, (name, force) in enumerate(limits):
        y = -position * step
        end = force / tallest
        lowest = ceiling_n is not None and force <= ceiling_n * (1 + 1e-12)
        drawing.line("leg-careful" if lowest else "leg", (0.0, y), (end, y))
        drawing.text((0.0, y), f"{name}: {say.force(force, 'down')}", "start", (0, 18), "small")
        mark: LineKind = "leg-stop" if target_n > force * (1 + 1e-12) else "force"
        drawing.line(mark, (target_n / tallest, y + 0.2 * step), (target_n / tallest, y - 0.2 * step))
    place = target_n / tallest
    drawing.text(
        (place, 0.4 * step), f"your pull {say.one(target_n, 'force', digits=3)}", "end" if place > 0.6 else "start",
        (0, -8), "strong",
    )  # fmt: skip
    caption = "Every limit on the pull, drawn to scale, against the pull you want. " + (
        f"The lowest is {say.force(ceiling_n, 'down')}."
        if ceiling_n is not None
        else f"No pull: {'; '.join(blocked)}."
    )
    return Figure(drawing.svg(caption), caption)


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
