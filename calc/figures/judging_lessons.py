"""Drawings that explain pulling and judging: what a pull proves, where to stand, what a gauge can tell, what opens.

The chance left open by passed pulls is the exact one-sided binomial bound; its short form 3/n is the rule of three.
"""

from __future__ import annotations

import math
from collections.abc import Callable

from calc.figures.drawing import Drawing, LineKind, Point
from calc.figures.inspection import hook_outline, tip_angle_deg
from calc.worksheet import Figure, Say

CONFIDENCE = 0.95
"""How sure the bound is meant to be [-]: nineteen times in twenty."""

GAUGE_CLASS = 0.02
"""Error of the drawn gauge, as a share of its full scale [-]: an example."""


def chance_left_open(passes: float, confidence: float = CONFIDENCE) -> float:
    """Upper bound on the chance that the next of the same pulls fails, when `passes` pulls passed and none failed [-].

    Exact binomial bound with no failure: 1 - (1 - confidence)^(1/passes). Range: passes >= 1, 0 < confidence < 1.
    Holds only if every pull is like every other and nothing wears, cracks or cools between them.
    """
    return -math.expm1(math.log1p(-confidence) / passes)


def passes_needed(chance: float, confidence: float = CONFIDENCE) -> int:
    """Least number of passed pulls, none failed, before the bound falls to `chance` [-]; 0 < chance < 1."""
    return math.ceil(math.log1p(-confidence) / math.log1p(-chance) - 1e-9)


def passes_curve(say: Say) -> Figure:
    """The chance of failure that n passed pulls leave open, over n."""
    del say
    drawing = Drawing(360, 300, 46)
    wide, tall = 3.0, 2.2

    def at(passes: float) -> Point:
        return wide * math.log10(passes) / 3.0, tall * chance_left_open(passes)

    drawing.fit([(0.0, 0.0), (wide, tall)])
    drawing.line("axis", (0.0, tall), (0.0, 0.0), (wide, 0.0))
    for share in (0, 25, 50, 75, 100):
        drawing.line("thin", (0.0, tall * share / 100), (wide, tall * share / 100))
        drawing.text((0.0, tall * share / 100), f"{share}%", "end", (-6, 5))
    for passes in (1, 10, 100, 1000):
        drawing.text((wide * math.log10(passes) / 3.0, 0.0), f"{passes:,}", "middle", (0, 18))
    drawing.line("curve", *(at(10 ** (3.0 * step / 90)) for step in range(91)))
    for passes in (1, 3, 10, 30):
        drawing.circle("pick", at(passes), 4.0, on_sheet=True)
        drawing.text(at(passes), f"{chance_left_open(passes) * 100:.0f}%", "start", (8, -5), "strong")
    drawing.text((wide / 2, 0.0), "pulls passed, none failed", shift=(0, 36))
    bounds = "; ".join(
        f"{passes} pull{'' if passes == 1 else 's'}: up to {chance_left_open(passes) * 100:.0f} in 100"
        for passes in (1, 3, 10, 30, 100)
    )
    caption = (
        "How large the chance of failure at the next like pull may still be, at nineteen to one, after so many passed "
        f"and none failed. {bounds}. To get under 1 in 1,000 takes {passes_needed(0.001):,} pulls."
    )
    return Figure(drawing.svg(caption), caption)


def safe_pull_plan(say: Say) -> Figure:
    """Plan of a bench pull: the string in its line, the barrier, the person out of line."""
    del say
    drawing = Drawing(360, 330, 26)
    drawing.fit([(0.0, -2.6), (6.0, 2.6)])
    drawing.area("untouched", (-0.1, -0.75), (6.1, -0.75), (6.1, 0.75), (-0.1, 0.75))
    drawing.area("steel", (0.2, -0.5), (0.55, -0.5), (0.55, 0.5), (0.2, 0.5))
    drawing.area("steel", (5.4, -0.5), (5.75, -0.5), (5.75, 0.5), (5.4, 0.5))
    drawing.line("centre", (0.0, 0.0), (6.0, 0.0))
    drawing.line("leg", (0.55, 0.0), (3.9, 0.0))
    drawing.area("load", (1.6, -0.2), (2.5, -0.2), (2.5, 0.2), (1.6, 0.2))
    drawing.area("load", (3.9, -0.24), (5.4, -0.24), (5.4, 0.24), (3.9, 0.24))
    drawing.text((2.05, 0.2), "part", shift=(0, -5))
    drawing.text((4.65, 0.24), "ram", shift=(0, -5))
    drawing.text((0.6, 0.42), "anchor", "start")
    drawing.text((3.0, -0.75), "nobody in here, nor past its two ends", shift=(0, -6), kind="small")
    drawing.line("ground", (1.0, -1.3), (5.2, -1.3))
    drawing.text((1.0, -1.3), "barrier", "start", (0, 16))
    drawing.line("thin", (4.65, -0.24), (4.65, -1.75), (4.0, -2.1))
    drawing.circle("hook", (3.0, -2.1), 11.0, on_sheet=True)
    drawing.text((3.0, -2.1), "you", shift=(0, 30), kind="strong")
    drawing.circle("hook", (3.75, -2.1), 6.0, on_sheet=True)
    drawing.text((3.75, -2.1), "pump and gauge", "start", (12, 18))
    drawing.area("load", (1.75, 1.1), (2.35, 1.1), (2.35, 1.4), (1.75, 1.4))
    drawing.text((2.05, 1.4), "camera or mirror on the part", shift=(0, -7))
    drawing.line("hidden", (2.05, 1.1), (2.05, 0.22))
    caption = (
        "Seen from above: anchor, part and ram stand in one straight line. The dashed lane round that line stays empty "
        "from end to end and beyond both ends. You stand beside the middle, behind a barrier, with the pump and the gauge "
        "on a long hose, and watch the part through a camera or a mirror."
    )
    return Figure(drawing.svg(caption), caption)


def gauge_dial(say: Say) -> Figure:
    """A dial gauge with its error, the same at every mark, as a share of the reading at four marks."""
    del say
    drawing = Drawing(360, 320, 40)
    drawing.fit([(-1.25, -1.1), (1.25, 1.2)])
    start_deg, sweep_deg = 225.0, 270.0

    def at(share: float, radius: float) -> Point:
        angle = math.radians(start_deg - sweep_deg * share)
        return radius * math.cos(angle), radius * math.sin(angle)

    drawing.circle("hook", (0.0, 0.0), 1.12)
    for tick in range(51):
        long = tick % 5 == 0
        drawing.line(
            "outline" if long else "thin", at(tick / 50, 0.88 if long else 0.94), at(tick / 50, 1.02)
        )
    drawing.line("leg-careful", *(at(0.25 + 0.5 * step / 40, 1.06) for step in range(41)))
    said = []
    for share in (0.25, 0.5, 0.75, 1.0):
        error = GAUGE_CLASS / share * 100
        drawing.text(at(share, 0.68), f"±{number(error)}%", kind="strong", shift=(0, 5))
        said.append(f"at {share * 100:.0f} percent of the scale it is {number(error)} percent of the reading")
    drawing.line("leg", (0.0, 0.0), at(0.5, 0.55))
    drawing.circle("pick", (0.0, 0.0), 5.0, on_sheet=True)
    drawing.text((0.0, -0.82), f"±{number(GAUGE_CLASS * 100)}% of full scale", shift=(0, 4))
    caption = (
        f"A dial whose maker promises {number(GAUGE_CLASS * 100)} percent of full scale. The needle may be wrong by the same "
        f"width anywhere: {'; '.join(said)}. The heavy arc, from a quarter to three quarters, is where such a dial is fit to read."
    )
    return Figure(drawing.svg(caption), caption)


def number(value: float) -> str:
    """A number without needless decimals."""
    return f"{value:.1f}".removesuffix(".0")


def hook_opens(say: Say) -> Figure:
    """A hook as made and the same hook opened, with the place that is pulled hardest."""
    bowl, section, throat_new, throat_now = 0.022, 0.021, 0.0290, 0.0345
    drawing = Drawing(360, 340, 40)
    drawing.fit([(-bowl - section, -bowl - section), (1.7 * bowl + section, 1.75 * bowl + section)])
    drawing.line("hidden", *hook_outline(bowl, section, tip_angle_deg(throat_new / bowl)))
    drawing.line("outline", *hook_outline(bowl, section, tip_angle_deg(throat_now / bowl)))
    drawing.arrow((0.0, -bowl * 0.35), (0.0, -bowl))
    drawing.text((0.0, -bowl * 0.6), "load", "start", (8, 0))
    back = (-bowl, 0.0)
    drawing.circle("pick", back, 5.0, on_sheet=True)
    drawing.text(back, "pulled hardest", "start", (10, -6), "strong")
    drawing.text((-bowl - section, 0.0), "pressed", "start", (6, 16), "small")
    caption = (
        f"Dashed, a hook as made, its throat {say.length(throat_new)}. Full line, the same hook after an overload: the tip has "
        f"moved out and the throat is {say.length(throat_now)}. The steel gave at the ringed place first, inside the back of "
        "the bowl, level with the load."
    )
    return Figure(drawing.svg(caption), caption)


def cut_it_up(say: Say) -> Figure:
    """Where to cut a hook and a chain link so that neither can be used again."""
    del say
    bowl, section = 0.022, 0.021
    drawing = Drawing(360, 300, 30)
    drawing.fit([(-bowl - section, -bowl - section), (6.2 * bowl, 1.75 * bowl + section)])
    drawing.line("outline", *hook_outline(bowl, section, tip_angle_deg(1.32)))
    cut: LineKind = "leg-stop"
    drawing.line(cut, (-bowl * 0.55, 0.0), (-bowl - section * 1.3, 0.0))
    drawing.text((-bowl - section, 0.0), "cut", "start", (0, -8), "strong")
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
    drawing.text((middle[0], middle[1] + half_wide + wire), "cut both sides", shift=(0, -14), kind="strong")
    caption = (
        "Cut a hook through the back of its bowl, and its eye or pin hole as well. Cut a link through both sides, and a chain "
        "often enough that no piece left is worth picking up."
    )
    return Figure(drawing.svg(caption), caption)


JUDGING_LESSONS: dict[str, Callable[[Say], Figure]] = {
    "passes-curve": passes_curve, "safe-pull-plan": safe_pull_plan, "gauge-dial": gauge_dial, "hook-opens": hook_opens,
    "cut-it-up": cut_it_up,
}  # fmt: skip

__all__ = ["JUDGING_LESSONS", "chance_left_open", "passes_needed"]
