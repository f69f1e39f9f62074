"""Every limit on a pull as a bar, against the pull that is wanted."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing

_ROW = 44.0


@dataclass(frozen=True)
class LimitBar:
    """One limit: its force [N] and its words, whether it is the lowest, and whether the wanted pull is over it."""

    force_n: float
    words: str
    lowest: bool
    passed: bool


def limits_figure(limits: Sequence[LimitBar], target_n: float, target: str, caption: str) -> Figure:
    """Every limit on the pull as a bar to scale, with the wanted pull [N] and its words marked on each."""
    tallest = max(*(limit.force_n for limit in limits), target_n)
    drawing = Drawing(400, 90 + _ROW * len(limits), 48)
    drawing.fit([(0.0, 0.0), (1.0, 0.0)])
    drawing.origin = (48.0, 64.0)
    step = _ROW / drawing.scale
    place = target_n / tallest
    for position, limit in enumerate(limits):
        y = -position * step
        drawing.line("leg-careful" if limit.lowest else "leg", (0.0, y), (limit.force_n / tallest, y))
        drawing.text((0.0, y), limit.words, "start", (0, 18), "small")
        drawing.line(
            "leg-stop" if limit.passed else "force", (place, y + 0.2 * step), (place, y - 0.2 * step)
        )
    drawing.text((place, 0.4 * step), target, "end" if place > 0.6 else "start", (0, -8), "strong")
    return Figure(drawing.svg(caption), caption)


__all__ = ["LimitBar", "limits_figure"]
