"""Scale drawing of a spreader bar between its slings."""

from __future__ import annotations

from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing
from calc.words.facts import Quantity, force, length
from calc.words.writer import Writer


@dataclass(frozen=True)
class SpreaderView:
    """A spreader as drawn [m]: its length, the hook over the bar, the load's center of gravity off the middle; the angle of its upper
    slings from the level [deg], thrust in the bar and pull in a sling [N], and whether the bar is over.
    """

    length_m: float
    headroom_m: float
    off_middle_m: float
    angle_deg: float
    thrust_n: float
    sling_n: float
    over: bool


def spreader_figure(view: SpreaderView, caption: str, writer: Writer) -> Figure:
    """Hook, upper slings at their true angle, the bar with its thrust, lower slings, and the load."""
    half, high = view.length_m / 2, view.headroom_m
    drop = 0.35 * view.length_m
    drawing = Drawing(400, 320, 44)
    drawing.fit([(-half * 1.15, -1.6 * drop), (half * 1.15, high)])
    for end in (-half, half):
        drawing.line("leg", (end, 0.0), (0.0, high))
        drawing.line("leg", (end, 0.0), (end, -drop))
        drawing.circle("pick", (end, 0.0), 4.0, on_sheet=True)
    drawing.line("leg-stop" if view.over else "leg-careful", (-half, 0.0), (half, 0.0))
    low = -1.45 * drop
    drawing.area("load", (-half, -drop), (half, -drop), (half, low), (-half, low))
    drawing.circle("pick", (view.off_middle_m, (low - drop) / 2), 4.0, on_sheet=True)
    angle = writer.own(Quantity(view.angle_deg, "angle"), 3)
    drawing.angle((-half, 0.0), 0.0, view.angle_deg, angle)
    drawing.text((0.0, 0.0), writer.plain(force(view.thrust_n, "demand")), shift=(0, 16), kind="strong")
    pull = writer.plain(force(view.sling_n, "demand"))
    drawing.text((half / 2, high / 2), pull, "start", shift=(8, 0))
    drawing.dimension((half, low), (-half, low), writer.own(length(view.length_m), 3), 14)
    return Figure(drawing.svg(caption), caption)


__all__ = ["SpreaderView", "spreader_figure"]
