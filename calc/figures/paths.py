"""Bars for the parts of a string: how much of each part's rating the load takes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.figures.drawing import Drawing
from calc.quantities import number_text
from calc.worksheet import Figure

_ROW = 34.0
_BAR = 15.0
_FULL = 170.0
_LEFT = 12.0


@dataclass(frozen=True)
class PathBar:
    """One part: its words, share of its usable rating [-] or None if it may not be used, and whether it governs."""

    label: str
    share: float | None
    governs: bool


def path_figure(bars: Sequence[PathBar]) -> Figure:
    """Bars from the overhead support down to the load; the line marks the whole rating."""
    longest = max(1.0, *(min(bar.share or 0.0, 1.6) for bar in bars))
    height = 40.0 + _ROW * len(bars)
    drawing = Drawing(_LEFT * 2 + _FULL * longest + 90.0, height, 0.0)
    drawing.scale, drawing.origin = 1.0, (0.0, height)
    top = height - 16.0
    drawing.text((_LEFT, top), "Overhead support", "start", kind="small")
    for row, bar in enumerate(bars):
        low = top - 26.0 - _ROW * row - _BAR / 2
        drawing.text((_LEFT, low + _BAR), bar.label, "start", (0, -4), "small")
        if bar.share is None:
            drawing.line("hidden", (_LEFT, low), (_LEFT + _FULL, low), (_LEFT + _FULL, low + _BAR), (_LEFT, low + _BAR),
                         (_LEFT, low))  # fmt: skip
            drawing.text((_LEFT + _FULL / 2, low), "may not be used", shift=(0, -3), kind="note")
            continue
        end = _LEFT + _FULL * min(bar.share, 1.6)
        kind = "hard" if bar.share > 1.0 + 1e-12 else ("tint" if bar.governs else "steel")
        drawing.area(kind, (_LEFT, low), (end, low), (end, low + _BAR), (_LEFT, low + _BAR))
        drawing.text((end, low), f"{number_text(bar.share * 100, 3, 'up')}%", "start", (6, -3),
                     "strong" if bar.governs else "note")  # fmt: skip
    drawing.line("centre", (_LEFT + _FULL, top - 8.0), (_LEFT + _FULL, 12.0))
    drawing.text((_LEFT + _FULL, top), "whole rating", shift=(0, 0), kind="small")
    drawing.text((_LEFT, 2.0), "Load", "start", kind="small")
    caption = _caption(bars)
    return Figure(drawing.svg(caption), caption)


def _caption(bars: Sequence[PathBar]) -> str:
    words = [
        f"{bar.label} may not be used"
        if bar.share is None
        else f"{bar.label} {number_text(bar.share * 100, 3, 'up')}% used"
        for bar in bars
    ]
    return "Parts from the overhead support down to the load: " + "; ".join(words) + "."
