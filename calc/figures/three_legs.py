"""Scale drawing of a tripod or of shear legs, from the side and from the front."""

from __future__ import annotations

from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing, LineKind
from calc.words.facts import force, length
from calc.words.writer import Writer


@dataclass(frozen=True)
class LegsView:
    """A tripod or shear legs as drawn [m]: height of the head, how far it hangs out before the feet that are seen together, the
    other feet or the stay's anchor behind them, feet apart in the front view; the load [N]; whether the line behind is a stay;
    which lines are lit, and whether over.
    """

    head_m: float
    before_m: float
    behind_m: float
    feet_m: float
    load_n: float
    leg_n: float
    stay: bool
    lit: bool
    over: bool

    @property
    def legs(self) -> LineKind:
        """The line of the legs."""
        if not self.lit:
            return "leg"
        return "leg-stop" if self.over else "leg-careful"


def legs_figure(view: LegsView, caption: str, writer: Writer) -> Figure:
    """Side view with legs, stay and load; beside it the front view."""
    high, before, behind = view.head_m, view.before_m, view.behind_m
    drop = 0.45 * high
    left = -behind
    front = max(before, left) + 0.3 * high + view.feet_m / 2
    drawing = Drawing(440, 300, 44)
    drawing.fit([(min(left, 0.0), 0.0), (front + view.feet_m / 2, high * 1.08)])
    drawing.line("ground", (min(left * 1.05, -0.1 * high), 0.0), (front + view.feet_m * 0.55, 0.0))
    drawing.line(view.legs, (0.0, 0.0), (before, high))
    drawing.line("leg-slack" if view.stay else view.legs, (left, 0.0), (before, high))
    drawing.arrow((before, high), (before, high - drop))
    load = writer.plain(force(view.load_n, "demand"))
    drawing.text((before, high), load, shift=(0, -24), kind="strong")
    for foot in (front - view.feet_m / 2, front + view.feet_m / 2):
        drawing.line(view.legs, (foot, 0.0), (front, high))
    pressed = writer.plain(force(view.leg_n, "demand"))
    drawing.text((front, high), pressed, shift=(0, -6))
    apart = writer.own(length(view.feet_m), 3)
    drawing.dimension((front + view.feet_m / 2, 0.0), (front - view.feet_m / 2, 0.0), apart, 14)
    return Figure(drawing.svg(caption), caption)


__all__ = ["LegsView", "legs_figure"]
