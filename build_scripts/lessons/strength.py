"""Drawings of the pages on strength: grades, one pull from rating to break, what a design factor pays for, what a drop does."""

from __future__ import annotations

import math
from collections.abc import Callable

from build_scripts.lessons.chain_strength import (
    BRITTLE_STRETCH,
    GRADES,
    PROOF_OVER_RATING,
    WIRE_M,
    StretchModel,
    mean_stress_pa,
    rating_n,
    stretch_model,
)
from build_scripts.lessons.printed import printed
from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.figures.graph import Axis, Graph, OwnUnit
from calc.lifting.chain_spring import chain_stiffness_n
from calc.pulling.energy import drop_factor
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.words.facts import Listing, Message, Number, Quantity, force, length, message, share, weight
from calc.words.writer import Writer

STRESS = ("N/mm2", "N/mm2")
_BAR = 0.32
"""Half the width of a bar, the distance between bars being 1."""


def stress(value_pa: float) -> Quantity:
    """A mean stress as grades are written, in N/mm2."""
    return Quantity(value_pa, "pressure", places=0, units=STRESS)


def grade_bars(writer: Writer) -> Figure:
    """Mean stress at the rating, at the proof load and at the least break, for five grades of 3/8 in chain."""
    drawing = Drawing(400, 330, 50)
    per_step, top = 4.4, 1000.0
    drawing.fit([(-0.6, 0.0), (4.6, per_step)])
    drawing.line("axis", (-0.6, per_step), (-0.6, 0.0), (4.6, 0.0))
    for mark in (200, 400, 600, 800, 1000):
        drawing.line("thin", (-0.6, per_step * mark / top), (4.6, per_step * mark / top))
        drawing.text((-0.6, per_step * mark / top), writer.plain(mark), "end", (-6, 4))
    said: list[Message] = []
    for place, grade in enumerate(GRADES):
        breaks = float(grade) * 10.0
        rated = mean_stress_pa(rating_n(grade), WIRE_M)
        rated_mpa = rated / 1e6
        low, high = place - _BAR, place + _BAR
        for bottom, head, kind in ((0.0, breaks, "untouched"), (0.0, rated_mpa, "hard")):
            drawing.area(
                kind,
                (low, per_step * bottom / top),
                (high, per_step * bottom / top),
                (high, per_step * head / top),
                (low, per_step * head / top),
            )
        proof = per_step * PROOF_OVER_RATING * rated_mpa / top
        drawing.line("hidden", (low, proof), (high, proof))
        drawing.line("outline", (low, per_step * breaks / top), (high, per_step * breaks / top))
        drawing.text((place, 0.0), writer.plain(grade), shift=(0, 18), kind="strong")
        said.append(
            message("grade-bars.grade", grade=grade, rated=stress(rated), breaks=stress(breaks * 1e6))
        )
    drawing.text((2.0, 0.0), writer.text("grade-bars.axis"), shift=(0, 38))
    drawing.text((-0.6, per_step), writer.text("grade-bars.stress"), "start", (-30, -14), "small")
    drawing.text((4.0, per_step), writer.text("grade-bars.break"), shift=(0, -5), kind="small")
    drawing.text((4.0, 0.0), writer.text("grade-bars.rating"), shift=(0, -10), kind="small")
    caption = writer.text("grade-bars", grades=Listing(tuple(said), "semicolon"))
    return Figure(drawing.svg(caption), caption)


def _curve(model: StretchModel, up_to_n: float, steps: int = 120) -> list[tuple[float, float]]:
    """Stretch [percent] and pull [N] along a model's curve."""
    pulls = (up_to_n * step / steps for step in range(steps + 1))
    return [(model.stretch(pull) * 100, pull) for pull in pulls]


def _pull_graph(writer: Writer, top_n: float, most_percent: float) -> tuple[Graph, OwnUnit]:
    unit = OwnUnit("force", writer)
    graph = Graph(
        Axis(0.0, most_percent, writer.text("stretch-axis")),
        Axis(0.0, unit.of(top_n), writer.text("pull-axis", unit=unit.name)),
        writer,
    )
    return graph, unit


def one_curve(writer: Writer) -> Figure:
    """New grade 80 chain, 3/8 in, pulled to its break: rating, proof load and break on one curve."""
    model = stretch_model("80")
    graph, unit = _pull_graph(writer, 1.12 * model.break_n, 22.0)
    graph.curve([(x, unit.of(y)) for x, y in _curve(model, model.break_n)])
    marks = (("rating", model.rating_n), ("proof", model.proof_n), ("break", model.break_n))
    for name, pull in marks:
        at = model.stretch(pull) * 100
        graph.dots([(at, unit.of(pull))])
        graph.curve([(0.0, unit.of(pull)), (at, unit.of(pull))], "thin")
        if name == "break":
            graph.note(at, unit.of(pull), writer.text("one-curve.break"), "strong")
        else:
            words = writer.text(f"one-curve.{name}", pull=force(pull))
            graph.drawing.text(graph.at(at, unit.of(pull)), words, "start", (12, 4), "strong")
    back = model.break_n * 0.9
    graph.curve(
        [(model.stretch(back) * 100, unit.of(back)), (model.lasting(back) * 100, 0.0)], "curve-second"
    )
    caption = writer.text(
        "one-curve",
        rating=force(model.rating_n),
        at_rating=share(model.stretch(model.rating_n), "plain", 2),
        proof=force(model.proof_n),
        breaks=force(model.break_n),
        grown=share(model.stretch(model.break_n), "plain", 2),
        times=Number(model.energy_j_per_m(model.break_n) / model.energy_j_per_m(model.rating_n), 2),
    )
    return Figure(graph.drawing.svg(caption), caption)


def two_toughnesses(writer: Writer) -> Figure:
    """Grade 70, grade 80 and a brittle link of equal strength, pulled to the break: equal height, unequal area."""
    strong, tie = stretch_model("80"), stretch_model("70")
    graph, unit = _pull_graph(writer, 1.12 * strong.break_n, 22.0)
    brittle_at = BRITTLE_STRETCH * 100
    area = [(x, unit.of(y)) for x, y in _curve(tie, tie.break_n)]
    graph.drawing.area("load", *(graph.at(x, y) for x, y in [*area, (area[-1][0], 0.0)]))
    graph.curve([(x, unit.of(y)) for x, y in _curve(strong, strong.break_n)])
    graph.curve(area, "curve-second")
    graph.curve([(0.0, 0.0), (brittle_at, unit.of(strong.break_n))], "leg-stop")
    graph.note(20.0, unit.of(strong.break_n), writer.text("two-toughnesses.lifting"), "strong")
    graph.drawing.text(
        graph.at(15.0, unit.of(tie.break_n)),
        writer.text("two-toughnesses.tie-down"),
        "end",
        (-4, 22),
        "strong",
    )
    graph.drawing.text(
        graph.at(brittle_at, unit.of(strong.break_n)),
        writer.text("two-toughnesses.brittle"),
        "start",
        (-10, -9),
        "strong",
    )
    ratio = tie.energy_j_per_m(tie.break_n) / strong.energy_j_per_m(strong.break_n)
    caption = writer.text("two-toughnesses", share=Quantity(ratio, "fraction", places=0))
    return Figure(graph.drawing.svg(caption), caption)


STARTS = 1.25
"""What starting and stopping a hoist adds [-]: an example, usual practice, no source."""
GUESSED_LIGHT = 1.10
"""A weight guessed a tenth too low [-]: an example."""
WORN_SHARE = 0.9
"""A wire worn to the limit of a tenth of its thickness [-]."""
READ_DEG, REAL_DEG = 45.0, 40.0
"""A sling angle read as the first when it is the second [deg from the horizontal]: an example."""


def factor_bites() -> tuple[tuple[str, float], ...]:
    """What an ordinary bad day takes out of a design factor, each as a factor [-], in the order drawn."""
    worn = 1 / WORN_SHARE**2
    flatter = math.sin(math.radians(READ_DEG)) / math.sin(math.radians(REAL_DEG))
    return (("starts", STARTS), ("worn", worn), ("guess", GUESSED_LIGHT), ("angle", flatter))


def factor_stairs(writer: Writer) -> Figure:
    """A staircase down from a design factor of 4: each step is one thing that the factor pays for."""
    drawing = Drawing(400, 330, 44)
    left = 4.0
    bites = factor_bites()
    steps = [("whole", left)]
    for name, bite in bites:
        left /= bite
        steps.append((name, left))
    jerked = left / drop_factor(0.0, 1.0)
    steps.append(("jerk", jerked))
    drawing.fit([(0.0, 0.0), (6.0, 4.4)])
    drawing.line("axis", (0.0, 4.4), (0.0, 0.0), (6.0, 0.0))
    for mark in (1, 2, 3, 4):
        drawing.line("leg-stop" if mark == 1 else "thin", (0.0, mark), (6.0, mark))
        drawing.text((0.0, mark), writer.plain(mark), "end", (-7, 5))
    for place, (name, height) in enumerate(steps):
        drawing.area("hard" if name == "jerk" else "load", (place, 0.0), (place + 1, 0.0), (place + 1, height), (place, height))  # fmt: skip
        drawing.text(
            (place + 0.5, height), writer.plain(Number(height, places=1)), shift=(0, -6), kind="strong"
        )
        drawing.text((place + 0.5, 0.0), writer.text(f"factor-stairs.{name}"), shift=(0, 18), kind="small")
    drawing.text((2.5, 1.0), writer.text("factor-stairs.breaks"), shift=(0, 18), kind="small")
    facts = {name: Number(bite, places=2) for name, bite in bites}
    caption = writer.text(
        "factor-stairs", **facts, left=Number(left, places=1), jerked=Number(jerked, places=1)
    )
    return Figure(drawing.svg(caption), caption)


LOAD_KG = 453.59237
"""The load of the drop pictures: 1,000 lb."""
SLING_M = 1.8288
"""Their sling: 6 ft."""


def nylon_stiffness_n() -> float:
    """EA [N] of nylon web of the same rating as the 3/8 in grade 80 chain: at its rating it stretches as printed, in the middle."""
    stretch = (printed("nylon-at-rating-least").si + printed("nylon-at-rating-most").si) / 2
    return rating_n("80") / stretch


def energy_triangles(writer: Writer) -> Figure:
    """One load dropped one inch on chain and on nylon web: two triangles, each as large as the work of its fall."""
    fall, load_n = 0.0254, LOAD_KG * STANDARD_GRAVITY_M_PER_S2
    pull_unit, way_unit = OwnUnit("force", writer), OwnUnit("length", writer)
    ends: dict[str, tuple[float, float]] = {}
    for name, stiffness in (("chain", chain_stiffness_n(WIRE_M)), ("nylon", nylon_stiffness_n())):
        quiet = load_n * SLING_M / stiffness
        factor = drop_factor(fall, quiet)
        ends[name] = (factor * quiet, factor * load_n)
    far, high = way_unit.of(ends["nylon"][0]), pull_unit.of(ends["chain"][1])
    graph = Graph(
        Axis(0.0, 1.15 * far, writer.text("energy-triangles.axis", unit=way_unit.name)),
        Axis(0.0, 1.15 * high, writer.text("pull-axis", unit=pull_unit.name)),
        writer,
    )
    for name, kind in (("nylon", "load"), ("chain", "hard")):
        way, pull = way_unit.of(ends[name][0]), pull_unit.of(ends[name][1])
        graph.drawing.area(kind, graph.at(0.0, 0.0), graph.at(way, 0.0), graph.at(way, pull))
        graph.drawing.text(
            graph.at(way, pull),
            writer.text(f"energy-triangles.{name}"),
            "start" if name == "chain" else "end",
            (6, 4) if name == "chain" else (0, -8),
            "strong",
        )
    caption = writer.text(
        "energy-triangles",
        load=weight(LOAD_KG),
        fall=length(fall),
        sling=Quantity(SLING_M, "length", units=("ft", "m")),
        chain=force(ends["chain"][1]),
        chain_way=Quantity(ends["chain"][0], "length", "demand", 2),
        nylon=force(ends["nylon"][1]),
        nylon_way=Quantity(ends["nylon"][0], "length", "demand", 2),
    )
    return Figure(graph.drawing.svg(caption), caption)


def drop_peak_n(model: StretchModel, load_n: float, fall_m: float, sling_m: float) -> float:
    """Peak pull [N] when a load [N] falls on a sling [m] of the model's chain that may yield; its break if that is not enough.

    Energy: the least pull F with sling x (work a metre up to F) >= load x (fall + sling x stretch at F). No loss, no slack.
    """
    low, high = 0.0, model.break_n
    for _ in range(60):
        middle = (low + high) / 2
        taken = sling_m * model.energy_j_per_m(middle)
        if taken >= load_n * (fall_m + sling_m * model.stretch(middle)):
            high = middle
        else:
            low = middle
    return high


def drop_on_chain(writer: Writer) -> Figure:
    """Peak pull over the height of a fall: as a spring, and with chain that may yield; rating and break as lines."""
    model, load_n = stretch_model("80"), LOAD_KG * STANDARD_GRAVITY_M_PER_S2
    falls = [0.6096 * step / 60 for step in range(61)]
    quiet = load_n * SLING_M / model.stiffness_n
    pull_unit, fall_unit = OwnUnit("force", writer), OwnUnit("length", writer)
    graph = Graph(
        Axis(0.0, fall_unit.of(falls[-1]), writer.text("drop-on-chain.axis", unit=fall_unit.name)),
        Axis(0.0, pull_unit.of(1.25 * model.break_n), writer.text("pull-axis", unit=pull_unit.name)),
        writer,
    )

    def line(pull_of: Callable[[float], float]) -> list[tuple[float, float]]:
        pairs = [(fall_unit.of(fall), pull_unit.of(pull_of(fall))) for fall in falls]
        return [pair for pair in pairs if pair[1] <= pull_unit.of(1.25 * model.break_n)]

    graph.curve(line(lambda fall: load_n * drop_factor(fall, quiet)), "curve-second")
    graph.curve(line(lambda fall: drop_peak_n(model, load_n, fall, SLING_M)))
    for name, pull in (("rating", model.rating_n), ("proof", model.proof_n), ("break", model.break_n)):
        graph.curve([(0.0, pull_unit.of(pull)), (fall_unit.of(falls[-1]), pull_unit.of(pull))], "thin")
        graph.note(fall_unit.of(falls[-1]), pull_unit.of(pull), writer.text(f"drop-on-chain.{name}"))
    one_foot = drop_peak_n(model, load_n, 0.3048, SLING_M)
    caption = writer.text(
        "drop-on-chain",
        load=weight(LOAD_KG),
        sling=Quantity(SLING_M, "length", units=("ft", "m")),
        spring=force(load_n * drop_factor(0.3048, quiet)),
        peak=force(one_foot),
        fall=Quantity(0.3048, "length", units=("ft", "m")),
        lasting=Quantity(model.lasting(one_foot), "fraction", places=1),
    )
    return Figure(graph.drawing.svg(caption), caption)


def marbles(writer: Writer) -> Figure:
    """A bag of twenty marbles, nineteen dark, and the one light one that was drawn."""
    drawing = Drawing(360, 210, 24)
    drawing.fit([(0.0, -0.6), (9.0, 4.4)])

    def place(number: int) -> Point:
        return 1.2 + 1.2 * (number % 5), 0.4 + 1.1 * (number // 5)

    drawing.line("outline", (0.2, 4.2), (0.2, -0.4), (7.0, -0.4), (7.0, 4.2))
    for number in range(20):
        if number != 14:
            drawing.circle("head", place(number), 9.0, on_sheet=True)
    drawing.circle("hook", (8.4, 3.0), 9.0, on_sheet=True)
    drawing.arrow(place(14), (8.1, 3.0), "dimension")
    drawing.text((8.4, 3.0), writer.text("marbles.drawn"), shift=(0, 26), kind="small")
    caption = writer.text("marbles")
    return Figure(drawing.svg(caption), caption)


STRENGTH_LESSONS: dict[str, Callable[[Writer], Figure]] = {
    "grade-bars": grade_bars,
    "one-curve": one_curve,
    "two-toughnesses": two_toughnesses,
    "factor-stairs": factor_stairs,
    "energy-triangles": energy_triangles,
    "drop-on-chain": drop_on_chain,
    "marbles": marbles,
}
"""Drawings of the pages on strength, by name."""

__all__ = ["STRENGTH_LESSONS", "drop_peak_n", "factor_bites", "nylon_stiffness_n"]
