"""Drawings of the pages on steel: quenching and tempering, cold, many lifts, bending back, the zinc bath."""

from __future__ import annotations

from collections.abc import Callable

from build_scripts.lessons.printed import printed
from build_scripts.lessons.steel_states import (
    AS_FORGED,
    BATH_DEGC,
    BATH_MINUTES,
    HOT_ROLLED,
    MACHINED,
    bend_strain,
    curve_through,
    fatigue_limit_mpa,
    quenched_hv,
    strength_after_bath_pa,
)
from calc.declaration import Figure
from calc.figures.drawing import Anchor, Drawing, LineKind, Point
from calc.figures.graph import Axis, Graph, OwnUnit
from calc.pulling.plastic_bending import RECTANGLE
from calc.quantities import from_si
from calc.words.facts import Cell, Number, Quantity, Unit, degrees
from calc.words.writer import Writer

_STRENGTH_UNITS = {"us": "ksi", "si": "MPa"}
_ENERGY_UNITS = {"us": "ft.lbf", "si": "J"}


def _strength(value_mpa: float, digits: int = 3) -> Quantity:
    return Quantity(value_mpa * 1e6, "pressure", digits=digits, units=("ksi", "MPa"))


def _in_strength(writer: Writer, value_mpa: float) -> float:
    return from_si(value_mpa * 1e6, _STRENGTH_UNITS[writer.units], "pressure")


def cold_curves(writer: Writer) -> Figure:
    """Notch energy over temperature for three steels: one printed point each, the line a model."""
    warm, energy = OwnUnit("temperature", writer), _ENERGY_UNITS[writer.units]
    low, high = -60.0, 100.0
    graph = Graph(
        Axis(warm.of(low), warm.of(high), writer.text("cold-curves.axis", unit=warm.name)),
        Axis(0.0, from_si(120.0, energy, "energy"), writer.text("cold-curves.energy", unit=Unit(energy))),
        writer,
    )
    shop = [(degc, from_si(joule, energy, "energy")) for degc, joule in ((-10.0, 0.0), (10.0, 120.0))]
    graph.drawing.area(
        "load",
        graph.at(warm.of(shop[0][0]), 0.0),
        graph.at(warm.of(shop[1][0]), 0.0),
        graph.at(warm.of(shop[1][0]), shop[1][1]),
        graph.at(warm.of(shop[0][0]), shop[1][1]),
    )
    kinds: tuple[tuple[str, LineKind, str, str], ...] = (
        ("modern", "curve", "charpy-a36-temperature", "charpy-a36-energy"),
        ("old", "curve-second", "charpy-ship-temperature", "charpy-ship-energy"),
    )
    for name, kind, at_key, energy_key in kinds:
        at, joule = printed(at_key).si, printed(energy_key).si
        curve = curve_through(at, joule)
        degrees_drawn = [low + (high - low) * step / 80 for step in range(81)]
        graph.curve(
            [(warm.of(degc), from_si(curve.energy_j(degc), energy, "energy")) for degc in degrees_drawn], kind
        )
        graph.dots([(warm.of(at), from_si(joule, energy, "energy"))])
        middle = curve.middle_degc + 12.0
        place = graph.at(warm.of(middle), from_si(curve.energy_j(middle), energy, "energy"))
        anchor: Anchor = "end" if name == "modern" else "start"
        graph.drawing.text(
            place, writer.text(f"cold-curves.{name}"), anchor, (-8 if anchor == "end" else 8, 0), "strong"
        )
    hull = printed("charpy-hull-temperature").si
    graph.dots([(warm.of(hull), from_si(printed("charpy-hull-energy").si, energy, "energy"))])
    graph.drawing.text(
        graph.at(warm.of(0.0), shop[1][1]), writer.text("cold-curves.shop"), shift=(0, 16), kind="small"
    )
    caption = writer.text(
        "cold-curves",
        modern=printed("charpy-a36-energy").fact,
        modern_at=printed("charpy-a36-temperature").fact,
        old=printed("charpy-ship-energy").fact,
        old_at=printed("charpy-ship-temperature").fact,
        hull=printed("charpy-hull-energy").fact,
        hull_at=printed("charpy-hull-temperature").fact,
        low=degrees(-10.0),
        high=degrees(10.0),
    )
    return Figure(graph.drawing.svg(caption), caption)


def fatigue_by_skin(writer: Writer) -> Figure:
    """Stress that may come and go a million times over the tensile strength, for three skins of steel."""
    least, most = 400.0, 1400.0
    unit = Unit(_STRENGTH_UNITS[writer.units])
    graph = Graph(
        Axis(
            _in_strength(writer, least),
            _in_strength(writer, most),
            writer.text("fatigue-by-skin.axis", unit=unit),
        ),
        Axis(0.0, _in_strength(writer, 520.0), writer.text("fatigue-by-skin.limit", unit=unit)),
        writer,
    )
    skins: tuple[tuple[str, LineKind, tuple[float, float]], ...] = (
        ("machined", "curve", MACHINED),
        ("rolled", "curve-second", HOT_ROLLED),
        ("forged", "leg-stop", AS_FORGED),
    )
    for name, kind, surface in skins:
        strengths = [least + (most - least) * step / 40 for step in range(41)]
        graph.curve(
            [
                (_in_strength(writer, s), _in_strength(writer, fatigue_limit_mpa(s, surface)))
                for s in strengths
            ],
            kind,
        )
        end = fatigue_limit_mpa(1300.0, surface)
        graph.note(
            _in_strength(writer, 1300.0),
            _in_strength(writer, end),
            writer.text(f"fatigue-by-skin.{name}"),
            "strong",
        )
    caption = writer.text(
        "fatigue-by-skin",
        forged_low=_strength(fatigue_limit_mpa(least, AS_FORGED), 2),
        soft=_strength(least, 2),
        strong=_strength(most, 3),
        machined_low=_strength(fatigue_limit_mpa(least, MACHINED), 2),
        machined_high=_strength(fatigue_limit_mpa(most, MACHINED), 2),
    )
    return Figure(graph.drawing.svg(caption), caption)


def zinc_bath(writer: Writer) -> Figure:
    """Strength of a 4140 test piece before and after a zinc bath, over the heat at which it was tempered."""
    warm = OwnUnit("temperature", writer)
    low, high = 205.0, 540.0
    graph = Graph(
        Axis(warm.of(200.0), warm.of(560.0), writer.text("zinc-bath.axis", unit=warm.name)),
        Axis(
            _in_strength(writer, 800.0),
            _in_strength(writer, 1900.0),
            writer.text("zinc-bath.strength", unit=Unit(_STRENGTH_UNITS[writer.units])),
        ),
        writer,
    )
    steps = [low + (high - low) * step / 60 for step in range(61)]
    both = [(degc, strength_after_bath_pa(degc)) for degc in steps]
    graph.curve([(warm.of(degc), _in_strength(writer, one[0] / 1e6)) for degc, one in both])
    graph.curve([(warm.of(degc), _in_strength(writer, one[1] / 1e6)) for degc, one in both], "curve-second")
    graph.curve(
        [
            (warm.of(BATH_DEGC), _in_strength(writer, 800.0)),
            (warm.of(BATH_DEGC), _in_strength(writer, 1900.0)),
        ],
        "centre",
    )
    graph.drawing.text(
        graph.at(warm.of(BATH_DEGC), _in_strength(writer, 1850.0)),
        writer.text("zinc-bath.bath"),
        "start",
        (6, 0),
        "strong",
    )
    graph.drawing.text(
        graph.at(warm.of(250.0), _in_strength(writer, 1700.0)),
        writer.text("zinc-bath.before"),
        "start",
        (8, -6),
        "strong",
    )
    after = both[0][1][1] / 1e6
    graph.drawing.text(
        graph.at(warm.of(210.0), _in_strength(writer, after)),
        writer.text("zinc-bath.after"),
        "start",
        (0, 18),
        "strong",
    )

    def lost(degc: float) -> Quantity:
        before_pa, after_pa = strength_after_bath_pa(degc)
        return Quantity(1 - after_pa / before_pa, "fraction", places=0)

    caption = writer.text(
        "zinc-bath",
        bath=degrees(BATH_DEGC),
        minutes=Number(BATH_MINUTES),
        cool=degrees(205.0),
        cool_loss=lost(205.0),
        middle=degrees(315.0),
        middle_loss=lost(315.0),
    )
    return Figure(graph.drawing.svg(caption), caption)


STRETCH_DRAWN = 8.0
"""How many times too long the quenched crystal is drawn, so that its stretch can be seen."""
CARBON_OF_EXAMPLE, PLAIN_CARBON = 0.4, 0.16
"""Carbon of a hook-like and of a plain weldable steel [percent]: examples."""


def tetragonal(carbon_pct: float) -> float:
    """How much longer than wide the crystal of quenched steel is [-]: 1 + 0.045 C (from memory, any textbook)."""
    return 1 + 0.045 * carbon_pct


def _lattice(drawing: Drawing, left: float, wide: float, tall: float, dots: tuple[Point, ...]) -> None:
    """A block of crystal: rows of cells from `left` on, and where its carbon sits."""
    columns, rows = 3, 4
    for column in range(columns + 1):
        x = left + wide * column
        drawing.line("thin", (x, 0.0), (x, tall * rows))
    for row in range(rows + 1):
        drawing.line("thin", (left, tall * row), (left + wide * columns, tall * row))
        for column in range(columns + 1):
            drawing.circle("hook", (left + wide * column, tall * row), 3.0, on_sheet=True)
    for x, y in dots:
        drawing.circle("head", (left + x * wide, y * tall), 5.0, on_sheet=True)


def carbon_trapped(writer: Writer) -> Figure:
    """Where the carbon is: red hot, cooled slowly, quenched, tempered. The stretch of the quenched cell is drawn too large."""
    drawing = Drawing(420, 240, 26)
    drawing.fit([(0.0, -1.1), (17.4, 5.2)])
    stretched = 1 + STRETCH_DRAWN * (tetragonal(CARBON_OF_EXAMPLE) - 1)
    trapped = ((0.5, 0.5), (1.5, 2.5), (2.5, 1.5), (0.5, 3.5))
    plates = ((0.0, 2.0), (0.5, 2.0), (1.0, 2.0), (1.5, 2.0), (2.0, 2.0), (2.5, 2.0), (3.0, 2.0))
    specks = ((1.0, 1.0), (2.0, 3.0), (2.5, 1.5))
    cells = (
        ("red", 1.1, 1.1, trapped),
        ("slow", 1.0, 1.0, plates),
        ("quenched", 1.0, stretched, trapped),
        ("tempered", 1.0, 1 + (stretched - 1) / 3, specks),
    )
    for place, (name, wide, tall, dots) in enumerate(cells):
        left = 0.3 + 4.5 * place
        _lattice(drawing, left, wide, tall, dots)
        drawing.text(
            (left + 1.5 * wide, 0.0), writer.text(f"carbon-trapped.{name}"), shift=(0, 22), kind="small"
        )
    caption = writer.text(
        "carbon-trapped",
        carbon=Cell(f"{CARBON_OF_EXAMPLE:g}"),
        longer=Quantity(tetragonal(CARBON_OF_EXAMPLE) - 1, "fraction", places=1),
        times=Number(STRETCH_DRAWN, 1),
    )
    return Figure(drawing.svg(caption), caption)


def hardness_by_carbon(writer: Writer) -> Figure:
    """Hardness of fully quenched steel over its carbon."""
    graph = Graph(
        Axis(0.0, 0.55, writer.text("hardness-by-carbon.axis")),
        Axis(0.0, 800.0, writer.text("hardness-by-carbon.hardness")),
        writer,
    )
    graph.curve([(0.05 + 0.45 * step / 30, quenched_hv(0.05 + 0.45 * step / 30)) for step in range(31)])
    for name, carbon in (("plain", PLAIN_CARBON), ("hook", CARBON_OF_EXAMPLE)):
        graph.dots([(carbon, quenched_hv(carbon))])
        graph.drawing.text(
            graph.at(carbon, quenched_hv(carbon)),
            writer.text(f"hardness-by-carbon.{name}"),
            "start" if name == "plain" else "end",
            (8, 14) if name == "plain" else (-6, -8),
            "strong",
        )
    risk = printed("cracking-hardness")
    graph.curve([(0.0, risk.si), (0.55, risk.si)], "leg-careful")
    graph.note(0.55, risk.si, writer.text("hardness-by-carbon.risk"))
    caption = writer.text(
        "hardness-by-carbon",
        low=Number(quenched_hv(PLAIN_CARBON), 2),
        high=Number(quenched_hv(CARBON_OF_EXAMPLE), 2),
        low_carbon=Cell(f"{PLAIN_CARBON:g}"),
        high_carbon=Cell(f"{CARBON_OF_EXAMPLE:g}"),
        risk=risk.fact,
    )
    return Figure(graph.drawing.svg(caption), caption)


def notch_bars(writer: Writer) -> Figure:
    """Notch energy of one steel in four states, as printed."""
    drawing = Drawing(400, 270, 44)
    states = ("quenched", "annealed", "normalized", "tempered")
    top = 3.6
    most = printed("notch-tempered").si
    apart = 1.75
    drawing.fit([(-0.8, 0.0), (3 * apart + 0.8, top)])
    drawing.line("axis", (-0.8, top), (-0.8, 0.0), (3 * apart + 0.8, 0.0))
    said = {}
    for place, state in enumerate(states):
        figure = printed(f"notch-{state}")
        height = 0.92 * top * figure.si / most
        at, half = apart * place, 0.5
        drawing.area("load", (at - half, 0.0), (at + half, 0.0), (at + half, height), (at - half, height))
        own = Quantity(figure.si, "energy", digits=2)
        drawing.text((at, height), writer.own(own, 2), shift=(0, -6), kind="strong")
        drawing.text((at, 0.0), writer.text(f"notch-bars.{state}"), shift=(0, 18), kind="small")
        said[state] = figure.fact
    caption = writer.text("notch-bars", **said)
    return Figure(drawing.svg(caption), caption)


def bend_and_back(writer: Writer) -> Figure:
    """Stretch of the outer skin of a bend over how tight it is: bent once, and bent and straightened."""
    graph = Graph(
        Axis(0.0, 12.0, writer.text("bend-and-back.axis")),
        Axis(0.0, 60.0, writer.text("bend-and-back.stretch")),
        writer,
    )
    ratios = [1.0 + 11.0 * step / 60 for step in range(61)]
    graph.curve([(ratio, 100 * bend_strain(ratio)) for ratio in ratios])
    graph.curve(
        [(ratio, min(60.0, 200 * bend_strain(ratio))) for ratio in ratios if ratio >= 1.2], "leg-stop"
    )
    graph.note(4.0, 100 * bend_strain(4.0), writer.text("bend-and-back.once"), "strong")
    graph.note(3.0, 200 * bend_strain(3.0), writer.text("bend-and-back.back"), "strong")
    graph.dots([(3.0, 100 * bend_strain(3.0)), (3.0, 200 * bend_strain(3.0))])
    caption = writer.text(
        "bend-and-back",
        once=Quantity(bend_strain(3.0), "fraction", places=0),
        both=Quantity(2 * bend_strain(3.0), "fraction", places=0),
        tight=Quantity(bend_strain(1.5), "fraction", places=0),
    )
    return Figure(graph.drawing.svg(caption), caption)


def push_and_stay(writer: Writer) -> Figure:
    """Push over movement of a flat pressed on two supports, both over those of first yield; and the way back from a push."""
    graph = Graph(
        Axis(0.0, 3.0, writer.text("push-and-stay.moves")),
        Axis(0.0, 2.0, writer.text("push-and-stay.push")),
        writer,
    )
    cores = [1.0 - step / 40 for step in range(41)]
    bent = [(RECTANGLE.travel(core), RECTANGLE.moment(core)) for core in cores]
    graph.curve([(0.0, 0.0), *bent, (3.0, RECTANGLE.full)])
    for core in (RECTANGLE.core_at_moment(1.25), 0.0):
        stays = RECTANGLE.stays(core)
        graph.curve([(RECTANGLE.travel(core), RECTANGLE.moment(core)), (stays, 0.0)], "curve-second")
    graph.dots([(1.0, 1.0)])
    graph.note(1.0, 1.0, writer.text("push-and-stay.first"), "strong")
    graph.note(2.4, RECTANGLE.full, writer.text("push-and-stay.runs"), "strong")
    graph.note(1.55, 0.5, writer.text("push-and-stay.back"))
    most = Quantity(RECTANGLE.stays(0.0), "fraction", places=0)
    little = Quantity(RECTANGLE.stays(RECTANGLE.core_at_moment(1.25)), "fraction", places=0)
    caption = writer.text("push-and-stay", most=most, little=little)
    return Figure(graph.drawing.svg(caption), caption)


STEEL_LESSONS: dict[str, Callable[[Writer], Figure]] = {
    "carbon-trapped": carbon_trapped,
    "hardness-by-carbon": hardness_by_carbon,
    "notch-bars": notch_bars,
    "cold-curves": cold_curves,
    "fatigue-by-skin": fatigue_by_skin,
    "zinc-bath": zinc_bath,
    "bend-and-back": bend_and_back,
    "push-and-stay": push_and_stay,
}
"""Drawings of the pages on steel, by name."""

__all__ = ["STEEL_LESSONS", "tetragonal"]
