"""Drawings that explain pulling and judging: what a pull proves, where to stand, what a gauge can tell, what opens.

The chance left open by passed pulls is that of calc.pulling.statistics_of_few.
"""

from __future__ import annotations

import math
from collections.abc import Callable

from calc.declaration import Figure
from calc.figures.drawing import Drawing, LineKind, Point
from calc.figures.inspection import (
    HookShape,
    LinkShape,
    hook_figure,
    hook_outline,
    link_figure,
    tip_angle_deg,
)
from calc.pulling.statistics_of_few import LEVEL, failure_bound
from calc.words.facts import Listing, Message, Number, Quantity, length, message, share
from calc.words.writer import Writer

GAUGE_CLASS = 0.02
"""Error of the drawn gauge, as a share of its full scale [-]: an example."""


def passes_needed(chance: float, confidence: float = LEVEL) -> int:
    """Least number of passed pulls, none failed, before the bound falls to `chance` [-]; 0 < chance < 1."""
    return math.ceil(math.log1p(-confidence) / math.log1p(-chance) - 1e-9)


def passes_curve(writer: Writer) -> Figure:
    """The chance of failure that n passed pulls leave open, over n."""
    drawing = Drawing(360, 300, 46)
    wide, tall = 3.0, 2.2

    def at(passes: int) -> Point:
        return wide * math.log10(passes) / 3.0, tall * failure_bound(passes)

    drawing.fit([(0.0, 0.0), (wide, tall)])
    drawing.line("axis", (0.0, tall), (0.0, 0.0), (wide, 0.0))
    for part in (0.0, 0.25, 0.5, 0.75, 1.0):
        drawing.line("thin", (0.0, tall * part), (wide, tall * part))
        drawing.text((0.0, tall * part), writer.plain(share(part)), "end", (-6, 5))
    for passes in (1, 10, 100, 1000):
        drawing.text((wide * math.log10(passes) / 3.0, 0.0), writer.plain(passes), "middle", (0, 18))
    drawing.line(
        "curve", *(at(passes) for passes in sorted({round(10 ** (step / 30)) for step in range(91)}))
    )
    for passes in (1, 3, 10, 30):
        drawing.circle("pick", at(passes), 4.0, on_sheet=True)
        bound = Quantity(failure_bound(passes), "fraction", places=0)
        drawing.text(at(passes), writer.plain(bound), "start", (8, -5), "strong")
    drawing.text((wide / 2, 0.0), writer.text("passes-curve.axis"), shift=(0, 36))
    bounds = [
        message("passes-curve.bound", passes=passes, bound=Number(failure_bound(passes) * 100, places=0))
        for passes in (1, 3, 10, 30, 100)
    ]
    caption = writer.text(
        "passes-curve", bounds=Listing(tuple(bounds), "semicolon"), one_in=1000, needed=passes_needed(0.001)
    )
    return Figure(drawing.svg(caption), caption)


def safe_pull_plan(writer: Writer) -> Figure:
    """Plan of a bench pull: the string in its line, the barrier, the person out of line."""
    drawing = Drawing(360, 330, 26)
    drawing.fit([(0.0, -2.6), (6.0, 2.6)])
    drawing.area("untouched", (-0.1, -0.75), (6.1, -0.75), (6.1, 0.75), (-0.1, 0.75))
    drawing.area("steel", (0.2, -0.5), (0.55, -0.5), (0.55, 0.5), (0.2, 0.5))
    drawing.area("steel", (5.4, -0.5), (5.75, -0.5), (5.75, 0.5), (5.4, 0.5))
    drawing.line("centre", (0.0, 0.0), (6.0, 0.0))
    drawing.line("leg", (0.55, 0.0), (3.9, 0.0))
    drawing.area("load", (1.6, -0.2), (2.5, -0.2), (2.5, 0.2), (1.6, 0.2))
    drawing.area("load", (3.9, -0.24), (5.4, -0.24), (5.4, 0.24), (3.9, 0.24))
    drawing.text((2.05, 0.2), writer.text("safe-pull-plan.part"), shift=(0, -5))
    drawing.text((4.65, 0.24), writer.text("safe-pull-plan.ram"), shift=(0, -5))
    drawing.text((0.6, 0.42), writer.text("safe-pull-plan.anchor"), "start")
    drawing.text((3.0, -0.75), writer.text("safe-pull-plan.lane"), shift=(0, -6), kind="small")
    drawing.line("ground", (1.0, -1.3), (5.2, -1.3))
    drawing.text((1.0, -1.3), writer.text("safe-pull-plan.barrier"), "start", (0, 16))
    drawing.line("thin", (4.65, -0.24), (4.65, -1.75), (4.0, -2.1))
    drawing.circle("hook", (3.0, -2.1), 11.0, on_sheet=True)
    drawing.text((3.0, -2.1), writer.text("safe-pull-plan.you"), shift=(0, 30), kind="strong")
    drawing.circle("hook", (3.75, -2.1), 6.0, on_sheet=True)
    drawing.text((3.75, -2.1), writer.text("safe-pull-plan.pump"), "start", (12, 18))
    drawing.area("load", (1.75, 1.1), (2.35, 1.1), (2.35, 1.4), (1.75, 1.4))
    drawing.text((2.05, 1.4), writer.text("safe-pull-plan.camera"), shift=(0, -7))
    drawing.line("hidden", (2.05, 1.1), (2.05, 0.22))
    caption = writer.text("safe-pull-plan")
    return Figure(drawing.svg(caption), caption)


def gauge_dial(writer: Writer) -> Figure:
    """A dial gauge with its error, the same at every mark, as a share of the reading at four marks."""
    drawing = Drawing(360, 320, 40)
    drawing.fit([(-1.25, -1.1), (1.25, 1.2)])
    start_deg, sweep_deg = 225.0, 270.0

    def at(part: float, radius: float) -> Point:
        angle = math.radians(start_deg - sweep_deg * part)
        return radius * math.cos(angle), radius * math.sin(angle)

    drawing.circle("hook", (0.0, 0.0), 1.12)
    for tick in range(51):
        long = tick % 5 == 0
        drawing.line(
            "outline" if long else "thin", at(tick / 50, 0.88 if long else 0.94), at(tick / 50, 1.02)
        )
    drawing.line("leg-careful", *(at(0.25 + 0.5 * step / 40, 1.06) for step in range(41)))
    said: list[Message] = []
    for part in (0.25, 0.5, 0.75, 1.0):
        error = GAUGE_CLASS / part * 100
        words = writer.text("gauge-dial.either-way", error=Number(error, 2))
        drawing.text(at(part, 0.68), words, kind="strong", shift=(0, 5))
        said.append(message("gauge-dial.mark", mark=Number(part * 100), error=Number(error, 2)))
    promised = Number(GAUGE_CLASS * 100, 2)
    drawing.line("leg", (0.0, 0.0), at(0.5, 0.55))
    drawing.circle("pick", (0.0, 0.0), 5.0, on_sheet=True)
    drawing.text((0.0, -0.82), writer.text("gauge-dial.class", error=promised), shift=(0, 4))
    caption = writer.text("gauge-dial", error=promised, marks=Listing(tuple(said), "semicolon"))
    return Figure(drawing.svg(caption), caption)


def hook_opens(writer: Writer) -> Figure:
    """A hook as made and the same hook opened, with the place that is pulled hardest."""
    bowl, section, throat_new, throat_now = 0.022, 0.021, 0.0290, 0.0345
    drawing = Drawing(360, 340, 40)
    drawing.fit([(-bowl - section, -bowl - section), (1.7 * bowl + section, 1.75 * bowl + section)])
    drawing.line("hidden", *hook_outline(bowl, section, tip_angle_deg(throat_new / bowl)))
    drawing.line("outline", *hook_outline(bowl, section, tip_angle_deg(throat_now / bowl)))
    drawing.arrow((0.0, -bowl * 0.35), (0.0, -bowl))
    drawing.text((0.0, -bowl * 0.6), writer.text("hook-opens.load"), "start", (8, 0))
    back = (-bowl, 0.0)
    drawing.circle("pick", back, 5.0, on_sheet=True)
    drawing.text(back, writer.text("hook-opens.hardest"), "start", (10, -6), "strong")
    drawing.text((-bowl - section, 0.0), writer.text("hook-opens.pressed"), "start", (6, 16), "small")
    caption = writer.text("hook-opens", new=length(throat_new), now=length(throat_now))
    return Figure(drawing.svg(caption), caption)


def cut_it_up(writer: Writer) -> Figure:
    """Where to cut a hook and a chain link so that neither can be used again."""
    bowl, section = 0.022, 0.021
    drawing = Drawing(360, 300, 30)
    drawing.fit([(-bowl - section, -bowl - section), (6.2 * bowl, 1.75 * bowl + section)])
    drawing.line("outline", *hook_outline(bowl, section, tip_angle_deg(1.32)))
    cut: LineKind = "leg-stop"
    drawing.line(cut, (-bowl * 0.55, 0.0), (-bowl - section * 1.3, 0.0))
    drawing.text((-bowl - section, 0.0), writer.text("cut-it-up.cut"), "start", (0, -8), "strong")
    wire, half_long, half_wide = 0.010, 0.024, 0.008
    middle = (4.6 * bowl, 0.4 * bowl)
    for grow in (0.0, wire):
        points: list[Point] = []
        for step in range(41):
            angle = 2 * math.pi * step / 40
            end = half_long - half_wide if math.cos(angle) >= 0 else half_wide - half_long
            points.append(
                (
                    middle[0] + end + (half_wide + grow) * math.cos(angle),
                    middle[1] + (half_wide + grow) * math.sin(angle),
                )
            )
        drawing.line("outline", *points, points[0])
    for side in (-1.0, 1.0):
        drawing.line(
            cut,
            (middle[0], middle[1] + side * half_wide * 0.6),
            (middle[0], middle[1] + side * (half_wide + wire * 1.4)),
        )
    both = writer.text("cut-it-up.both")
    drawing.text((middle[0], middle[1] + half_wide + wire), both, shift=(0, -14), kind="strong")
    caption = writer.text("cut-it-up")
    return Figure(drawing.svg(caption), caption)


def measure_hook(writer: Writer) -> Figure:
    """A hook with nothing measured yet: where throat and saddle are taken."""
    return hook_figure(HookShape(None, None, None), writer.of("worksheets/hook-check"))


def measure_link(writer: Writer) -> Figure:
    """A link with nothing measured yet: where thickness and inside length are taken."""
    return link_figure(LinkShape(0.010), writer.text("measure-link.thickness"), writer.of("shared/chain"))


def _round(centre: Point, radius: float, from_deg: float, to_deg: float) -> list[Point]:
    """Points along an arc."""
    turns = (math.radians(from_deg + (to_deg - from_deg) * step / 30) for step in range(31))
    return [(centre[0] + radius * math.cos(turn), centre[1] + radius * math.sin(turn)) for turn in turns]


def measure_shackle(writer: Writer) -> Figure:
    """A bow shackle from the front with its pin: bow, pin and mouth to measure. Usual proportion (no source)."""
    half_mouth, inner, outer, ear_foot, pin_at = 0.8, 1.3, 2.3, -3.5, -2.7
    pin = 1.12
    drawing = Drawing(360, 340, 46)
    drawing.fit([(-3.0, -4.2), (3.0, outer)])
    for radius, x in ((inner, half_mouth), (outer, half_mouth + 1.0)):
        join = math.degrees(math.acos(x / radius))
        drawing.line(
            "outline", (x, ear_foot), *_round((0.0, 0.0), radius, -join, 180.0 + join), (-x, ear_foot)
        )
    for side in (-1.0, 1.0):
        drawing.line("outline", (side * half_mouth, ear_foot), (side * (half_mouth + 1.0), ear_foot))
        for edge in (-pin / 2, pin / 2):
            drawing.line(
                "hidden", (side * half_mouth, pin_at + edge), (side * (half_mouth + 1.0), pin_at + edge)
            )
    for edge in (-pin / 2, pin / 2):
        drawing.line("outline", (-half_mouth, pin_at + edge), (half_mouth, pin_at + edge))
    collar = half_mouth + 1.0
    drawing.line(
        "outline",
        (collar, pin_at - 0.8),
        (collar + 0.45, pin_at - 0.8),
        (collar + 0.45, pin_at + 0.8),
        (collar, pin_at + 0.8),
    )
    drawing.line(
        "outline",
        (-collar, pin_at - pin / 2),
        (-collar - 0.3, pin_at - pin / 2),
        (-collar - 0.3, pin_at + pin / 2),
        (-collar, pin_at + pin / 2),
    )
    drawing.line("centre", (0.0, outer + 0.25), (0.0, -4.1))
    drawing.line("centre", (-2.4, pin_at), (2.6, pin_at))
    drawing.dimension((0.0, inner), (0.0, outer), writer.text("measure-shackle.bow"), 70)
    drawing.dimension(
        (0.0, pin_at - pin / 2), (0.0, pin_at + pin / 2), writer.text("measure-shackle.pin"), 92
    )
    drawing.dimension(
        (half_mouth, ear_foot), (-half_mouth, ear_foot), writer.text("measure-shackle.mouth"), 12
    )
    drawing.text((collar + 0.45, pin_at + 0.45), writer.text("measure-shackle.collar"), "start", (6, 0))
    caption = writer.text("measure-shackle")
    return Figure(drawing.svg(caption), caption)


def rope_valley_share() -> float:
    """What a caliper laid over the valleys of a six-strand rope reads, as a share of the true diameter [-].

    Six round strands round a core of their own size, each touching the next: over the crowns three strand diameters, over
    the valleys (2 cos 30 + 1) of them. Geometry; a real rope differs a little.
    """
    return (2 * math.cos(math.radians(30.0)) + 1.0) / 3.0


def measure_rope(writer: Writer) -> Figure:
    """A six-strand rope: one lay counted on its side, and its section with the caliper right and wrong."""
    drawing = Drawing(360, 320, 24)
    drawing.fit([(-0.6, -6.2), (11.0, 1.6)])
    lay, half = 6.5, 0.5
    for edge in (-half, half):
        drawing.line("outline", (0.0, edge), (10.4, edge))
    for strand in range(-3, 10):
        start = strand * lay / 6.0
        points = [
            (start + lay / 2 * (0.5 + math.radians(turn) / math.pi), half * math.sin(math.radians(turn)))
            for turn in range(-90, 91, 10)
        ]
        drawing.line("thin", *(point for point in points if 0.0 <= point[0] <= 10.4))
    drawing.dimension((lay / 6, half), (lay / 6 + lay, half), writer.text("measure-rope.lay"), 14)
    for x, y in ((4.3, 0.25), (5.1, -0.1), (5.6, 0.3)):
        drawing.line("leg", (x, y), (x + 0.16, y + 0.34))
    drawing.text((5.0, -half), writer.text("measure-rope.wires"), shift=(0, 18))
    for x, turn, key in ((2.6, 0.0, "crowns"), (8.0, 30.0, "valleys")):
        middle = (x, -3.6)
        for strand in range(6):
            angle = math.radians(60.0 * strand + turn)
            drawing.circle("area steel", (x + math.cos(angle), middle[1] + math.sin(angle)), 0.5)
        drawing.circle("area load", middle, 0.5)
        reach = 1.5 if turn == 0.0 else 1.5 * rope_valley_share()
        for side in (-1.0, 1.0):
            drawing.line("leg", (x + side * reach, -2.9), (x + side * reach, -4.5))
        drawing.text((x, -5.1), writer.text(f"measure-rope.{key}"), shift=(0, 16))
    reads = Number(rope_valley_share() * 100, places=0)
    caption = writer.text("measure-rope", reads=reads)
    return Figure(drawing.svg(caption), caption)


def measure_web_sling(writer: Writer) -> Figure:
    """A flat web sling with its two eyes: where to look."""
    drawing = Drawing(360, 250, 20)
    drawing.fit([(-0.4, -3.0), (12.4, 3.0)])
    half = 0.6
    for side in (-1.0, 1.0):
        drawing.line("outline", (3.0, side * half), (9.0, side * half))
    for end, way in ((3.0, -1.0), (9.0, 1.0)):
        for grow in (0.0, 0.22):
            eye = [
                (
                    end + way * 2.6 * step / 20 + way * grow * step / 20,
                    (half - 0.2 + grow)
                    * math.sqrt(max(1 - (step / 20) ** 2, 0.0))
                    * (1 + 0.9 * math.sin(math.pi * step / 20)),
                )
                for step in range(21)
            ]
            drawing.line("outline", *eye, *((x, -y) for x, y in reversed(eye)))
        for stitch in range(5):
            x = end - way * (0.25 + 0.28 * stitch)
            drawing.line("hidden", (x, -half * 0.85), (x, half * 0.85))
    drawing.area("load", (5.3, -0.4), (6.7, -0.4), (6.7, 0.4), (5.3, 0.4))
    drawing.text((6.0, 0.0), writer.text("measure-web-sling.tag"), shift=(0, 5), kind="strong")
    drawing.line("leg", (7.2, half), (7.35, half * 0.45), (7.5, half))
    for to, at, key in (
        ((7.35, half), (8.4, 2.2), "edges"),
        ((3.6, half), (3.4, 2.2), "stitching"),
        ((1.2, -0.95), (1.4, -2.4), "eye"),
        ((6.6, -half), (7.2, -2.4), "faces"),
    ):
        drawing.line("thin", at, to)
        label = writer.text(f"measure-web-sling.{key}")
        drawing.text(at, label, shift=(0, -6 if at[1] > 0 else 16))
    caption = writer.text("measure-web-sling")
    return Figure(drawing.svg(caption), caption)


JUDGING_LESSONS: dict[str, Callable[[Writer], Figure]] = {
    "passes-curve": passes_curve,
    "safe-pull-plan": safe_pull_plan,
    "gauge-dial": gauge_dial,
    "hook-opens": hook_opens,
    "cut-it-up": cut_it_up,
    "measure-hook": measure_hook,
    "measure-link": measure_link,
    "measure-shackle": measure_shackle,
    "measure-rope": measure_rope,
    "measure-web-sling": measure_web_sling,
}

__all__ = ["JUDGING_LESSONS", "passes_needed"]
