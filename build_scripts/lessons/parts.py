"""Drawings of the pages on parts: pulled sideways, a bolt for a pin, hook sections, rope round a pin, a hoist at an angle."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from build_scripts.lessons.bent_parts import (
    EAR_OVER_PIN,
    JAW_OVER_PIN,
    SHEAVE_LIFE,
    SHEAVE_STRENGTH,
    HookShape,
    example_eyebolt,
    hoist_side_pull,
    hook_shapes,
    rope_strength_left,
)
from calc.declaration import Figure
from calc.figures.drawing import Drawing, Point
from calc.figures.graph import Axis, Graph
from calc.quantities import from_si
from calc.tables import table, value_si
from calc.words.facts import Listing, Message, Number, Quantity, Unit, force, length, message, share
from calc.words.writer import Writer

_STRESS_UNITS = {"us": "ksi", "si": "MPa"}


def mild_yield_pa() -> float:
    """Yield of mild bolt steel [Pa]: SAE J429 grade 2 over 3/4 in, as a measure of what bends."""
    row = table("bolt-strength").one(
        bolt="sae_j429_2", size="over_three_quarters", quantity="minimum_yield_strength"
    )
    return value_si(row, "pressure")


def _stress(value_pa: float, digits: int = 2) -> Quantity:
    return Quantity(value_pa, "pressure", digits=digits, units=("ksi", "MPa"))


def eyebolt_angle(writer: Writer) -> Figure:
    """Stress in the shank of an eyebolt over the angle of its pull, with and without a seated shoulder."""
    bolt, unit = example_eyebolt(), _STRESS_UNITS[writer.units]

    def own(value_pa: float) -> float:
        return from_si(value_pa, unit, "pressure")

    graph = Graph(
        Axis(0.0, 90.0, writer.text("eyebolt-angle.axis")),
        Axis(0.0, own(1.55e9), writer.text("eyebolt-angle.stress", unit=Unit(unit))),
        writer,
    )
    angles = [1.5 * step for step in range(61)]
    graph.curve([(a, own(bolt.without_shoulder_pa(a))) for a in angles], "leg-stop")
    graph.curve([(a, own(bolt.with_shoulder_pa(a))) for a in angles])
    graph.curve([(0.0, own(mild_yield_pa())), (90.0, own(mild_yield_pa()))], "centre")
    at = graph.at(50.0, own(bolt.without_shoulder_pa(50.0)))
    graph.drawing.text(at, writer.text("eyebolt-angle.without"), "end", (-10, -4), "strong")
    at = graph.at(88.0, own(bolt.with_shoulder_pa(88.0)))
    graph.drawing.text(at, writer.text("eyebolt-angle.with"), "end", (0, -14), "strong")
    graph.drawing.text(
        graph.at(90.0, own(mild_yield_pa())), writer.text("eyebolt-angle.yield"), "end", (0, 16), "small"
    )
    caption = writer.text(
        "eyebolt-angle",
        load=force(bolt.rating_n),
        in_line=_stress(bolt.without_shoulder_pa(0.0)),
        without=_stress(bolt.without_shoulder_pa(45.0)),
        seated=_stress(bolt.with_shoulder_pa(45.0)),
        yields=_stress(mild_yield_pa()),
    )
    return Figure(graph.drawing.svg(caption), caption)


def _arc(centre: Point, radius: float, steps: int = 40) -> list[Point]:
    turns = (2 * math.pi * step / steps for step in range(steps + 1))
    return [(centre[0] + radius * math.cos(turn), centre[1] + radius * math.sin(turn)) for turn in turns]


def eyebolt_lever(writer: Writer) -> Figure:
    """Two eyebolts to scale, pulled across: without a shoulder the foot of the shank bends, with one its edge props the eye."""
    bolt = example_eyebolt()
    shank, eye, shoulder = bolt.shank_m / 2, bolt.eye_height_m, bolt.shoulder_radius_m
    inner, outer = 0.012, 0.0185
    drawing = Drawing(400, 300, 20)
    apart = 0.072
    drawing.fit([(-0.026, -0.026), (apart + 0.048, eye + outer + 0.004)])
    for place, seated in ((0.0, False), (apart, True)):
        drawing.line("ground", (place - 0.024, 0.0), (place + 0.024, 0.0))
        for side in (-1.0, 1.0):
            top = eye - outer * 0.95
            drawing.line("hidden", (place + side * shank, 0.0), (place + side * shank, -0.022))
            drawing.line(
                "outline", (place + side * shank, 0.003 if seated else 0.0), (place + side * shank, top)
            )
        for radius in (inner, outer):
            drawing.line("outline", *_arc((place, eye), radius))
        if seated:
            drawing.area("steel", (place - shoulder, 0.0), (place + shoulder, 0.0), (place + shoulder, 0.003), (place - shoulder, 0.003))  # fmt: skip
            drawing.circle("pick", (place + shoulder, 0.0), 4.0, on_sheet=True)
            drawing.text(
                (place + shoulder, 0.0), writer.text("eyebolt-lever.prop"), "start", (4, 18), "strong"
            )
        else:
            drawing.circle("pick", (place - shank, 0.0), 4.0, on_sheet=True)
            drawing.text((place, -0.022), writer.text("eyebolt-lever.bends"), shift=(0, 6), kind="strong")
            drawing.dimension(
                (place - 0.021, eye), (place - 0.021, 0.0), writer.text("eyebolt-lever.height"), 0.1
            )
        drawing.arrow((place + outer * 0.6, eye), (place + 0.038, eye))
    caption = writer.text(
        "eyebolt-lever",
        height=Quantity(eye, "length", "plain", 3),
        shank=length(bolt.shank_m),
        radius=Quantity(shoulder, "length", "plain", 3),
        times=Number(8 * eye / bolt.shank_m, 2),
        props=Number(eye / shoulder, 2),
    )
    return Figure(drawing.svg(caption), caption)


THIN_BOLT = 5 / 6
"""A 5/8 in bolt over a 3/4 in pin [-]."""


def pin_in_ears(writer: Writer) -> Figure:
    """A shackle's own pin in its ears, and a thinner bolt with thread in the same holes, in section."""
    drawing = Drawing(400, 300, 24)
    jaw, ear, pin = JAW_OVER_PIN, EAR_OVER_PIN, 1.0
    apart = jaw + 2 * ear + 1.3
    drawing.fit([(-0.5, -2.0), (apart + jaw + 2 * ear + 0.5, 2.0)])
    for place, own in ((0.0, True), (apart, False)):
        thick = pin if own else THIN_BOLT
        low = -pin / 2
        for left in (place, place + ear + jaw):
            for side in (-1.0, 1.0):
                drawing.area(
                    "steel",
                    (left, side * pin / 2),
                    (left + ear, side * pin / 2),
                    (left + ear, side * 1.15),
                    (left, side * 1.15),
                )
        drawing.area("load" if own else "hard", (place - 0.3, low), (place + jaw + 2 * ear + 0.3, low), (place + jaw + 2 * ear + 0.3, low + thick), (place - 0.3, low + thick))  # fmt: skip
        if not own:
            start = place + ear + jaw - 0.25
            for turn in range(12):
                x = start + turn * 0.13
                drawing.line("thin", (x, low), (x + 0.06, low + thick))
        for plane in (place + ear, place + ear + jaw):
            drawing.line("leg-stop", (plane, -0.8), (plane, 0.8))
        drawing.arrow((place + ear + jaw / 2, -low if own else low + thick), (place + ear + jaw / 2, 1.9))
        key = "pin" if own else "bolt"
        drawing.text(
            (place + ear + jaw / 2, -1.5), writer.text(f"pin-in-ears.{key}"), shift=(0, 10), kind="strong"
        )
    caption = writer.text("pin-in-ears")
    return Figure(drawing.svg(caption), caption)


def _section(drawing: Drawing, shape: HookShape, place: float, steps: int = 24) -> None:
    """One hook section as cut, its inside face to the left, and the stress across it above."""
    section = shape.section
    depth = section.outer_radius_m - section.inner_radius_m
    radii = [section.inner_radius_m + depth * step / steps for step in range(steps + 1)]
    half: Callable[[float], float]
    if shape.inner_width_m:

        def half(radius: float) -> float:
            part = (radius - section.inner_radius_m) / depth
            return (shape.inner_width_m + (shape.outer_width_m - shape.inner_width_m) * part) / 2

    else:

        def half(radius: float) -> float:
            away = radius - section.inner_radius_m - depth / 2
            return math.sqrt(max(0.0, depth**2 / 4 - away**2))

    def at(radius: float, y: float) -> Point:
        return place + radius - section.inner_radius_m, y

    edge = [at(r, half(r)) for r in radii] + [at(r, -half(r)) for r in reversed(radii)]
    drawing.area("steel", *edge)
    base, per_times = 0.036, 0.0021
    drawing.line("thin", at(radii[0], base), at(radii[-1], base))
    curve = [at(r, base + per_times * shape.times_mean(r)) for r in radii]
    drawing.area("load", at(radii[0], base), *curve, at(radii[-1], base))


def hook_sections(writer: Writer) -> Figure:
    """Two hook sections of one area round one opening: the stress across each over its mean."""
    drawing = Drawing(400, 320, 30)
    shapes: Sequence[HookShape] = hook_shapes()
    drawing.fit([(-0.012, -0.022), (0.112, 0.074)])
    for place, shape in zip((0.0, 0.066), shapes, strict=True):
        _section(drawing, shape, place)
        times = Number(shape.inside_times, places=0)
        top = 0.036 + 0.0021 * shape.inside_times
        drawing.text(
            (place, top), writer.text("hook-sections.times", times=times), "start", (4, -5), "strong"
        )
        drawing.text(
            (place + 0.018, -0.022), writer.text(f"hook-sections.{shape.name}"), shift=(0, 14), kind="strong"
        )
    drawing.text((0.0, -0.012), writer.text("hook-sections.inside"), "end", (-4, 4), "small")
    rod, deep = shapes
    caption = writer.text(
        "hook-sections",
        rod=Number(rod.inside_times, 2),
        deep=Number(deep.inside_times, 2),
        more=Quantity(rod.inside_times / deep.inside_times - 1, "fraction", places=0),
    )
    return Figure(drawing.svg(caption), caption)


def rope_round_a_pin(writer: Writer) -> Figure:
    """Strength that a wire rope keeps round a pin, over the pin's diameter in rope diameters."""
    graph = Graph(
        Axis(0.0, 42.0, writer.text("rope-round-a-pin.axis")),
        Axis(0.0, 100.0, writer.text("rope-round-a-pin.left")),
        writer,
    )
    ratios = [1.0 + 40.0 * step / 100 for step in range(101)]
    graph.curve([(ratio, 100 * rope_strength_left(ratio)) for ratio in ratios])
    graph.dots([(float(ratio), float(left)) for ratio, left in SHEAVE_STRENGTH.items()])
    for ratio, key in ((1.0, "pin"), (4.0, "thimble"), (20.0, "sheave")):
        graph.drawing.text(
            graph.at(ratio, 100 * rope_strength_left(ratio)),
            writer.text(f"rope-round-a-pin.{key}"),
            "start",
            (12, 22),
            "strong",
        )
    said: list[Message] = [
        message("rope-round-a-pin.point", ratio=ratio, left=share(rope_strength_left(ratio), "capacity", 2))
        for ratio in (1, 4, 20)
    ]
    lives = Number(SHEAVE_LIFE[20] / SHEAVE_LIFE[14], 2)
    caption = writer.text("rope-round-a-pin", points=Listing(tuple(said), "semicolon"), lives=lives)
    return Figure(graph.drawing.svg(caption), caption)


def hoist_at_an_angle(writer: Writer) -> Figure:
    """Pull in the chain and sideways force on a hoist over the angle from plumb, each over the weight."""
    graph = Graph(
        Axis(0.0, 45.0, writer.text("hoist-at-an-angle.axis")),
        Axis(0.0, 150.0, writer.text("hoist-at-an-angle.share")),
        writer,
    )
    angles = [45.0 * step / 45 for step in range(46)]
    graph.curve([(a, 100 * hoist_side_pull(a).chain) for a in angles])
    graph.curve([(a, 100 * hoist_side_pull(a).sideways) for a in angles], "leg-stop")
    graph.drawing.text(
        graph.at(22.0, 100 * hoist_side_pull(22.0).chain),
        writer.text("hoist-at-an-angle.chain"),
        "middle",
        (0, -10),
        "strong",
    )
    graph.drawing.text(
        graph.at(30.0, 100 * hoist_side_pull(30.0).sideways),
        writer.text("hoist-at-an-angle.sideways"),
        "start",
        (10, 6),
        "strong",
    )
    ten, thirty = hoist_side_pull(10.0), hoist_side_pull(30.0)
    caption = writer.text(
        "hoist-at-an-angle",
        small=Quantity(ten.sideways, "fraction", places=0),
        small_chain=Quantity(ten.chain - 1, "fraction", places=1),
        large=Quantity(thirty.sideways, "fraction", places=0),
    )
    return Figure(graph.drawing.svg(caption), caption)


PARTS_LESSONS: dict[str, Callable[[Writer], Figure]] = {
    "eyebolt-lever": eyebolt_lever,
    "eyebolt-angle": eyebolt_angle,
    "pin-in-ears": pin_in_ears,
    "hook-sections": hook_sections,
    "rope-round-a-pin": rope_round_a_pin,
    "hoist-at-an-angle": hoist_at_an_angle,
}
"""Drawings of the pages on parts, by name."""

__all__ = ["PARTS_LESSONS", "mild_yield_pa"]
