"""Bars for the parts of a string: how much of each part's rating the load takes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from calc.declaration import Figure
from calc.figures.drawing import Drawing

_ROW = 34.0
_BAR = 15.0
_FULL = 170.0
_LEFT = 12.0
_LONGEST_SHARE = 1.6

BarKind = Literal["inside", "governs", "over", "barred"]
"""Inside its rating; the part that gives first; over its rating; may not be used."""
_AREAS: dict[BarKind, str] = {"inside": "steel", "governs": "tint", "over": "hard"}


@dataclass(frozen=True)
class PathBar:
    """One part: its name, what is written on its bar, the share of its usable rating [-] (None: it may not be used), how it
    stands, and whether its words stand out.
    """

    name: str
    amount: str
    share: float | None
    kind: BarKind
    strong: bool = False

    @property
    def drawn(self) -> float:
        """The share as drawn [-]: a bar far over its rating is cut."""
        return min(self.share or 0.0, _LONGEST_SHARE)


@dataclass(frozen=True)
class PathWords:
    """What is written round the bars, and the caption."""

    support: str
    load: str
    whole_rating: str
    caption: str


def path_figure(bars: Sequence[PathBar], words: PathWords) -> Figure:
    """Bars from the overhead support down to the load; the line marks the whole rating."""
    longest = max(1.0, *(bar.drawn for bar in bars))
    height = 40.0 + _ROW * len(bars)
    drawing = Drawing(_LEFT * 2 + _FULL * longest + 90.0, height, 0.0)
    drawing.scale, drawing.origin = 1.0, (0.0, height)
    top = height - 16.0
    drawing.text((_LEFT, top), words.support, "start", kind="small")
    for row, bar in enumerate(bars):
        _bar(drawing, bar, top - 26.0 - _ROW * row - _BAR / 2)
    drawing.line("centre", (_LEFT + _FULL, top - 8.0), (_LEFT + _FULL, 12.0))
    drawing.text((_LEFT + _FULL, top), words.whole_rating, shift=(0, 0), kind="small")
    drawing.text((_LEFT, 2.0), words.load, "start", kind="small")
    return Figure(drawing.svg(words.caption), words.caption)


def _bar(drawing: Drawing, bar: PathBar, low: float) -> None:
    """One bar with its words, its lower edge at `low` [drawing units]."""
    drawing.text((_LEFT, low + _BAR), bar.name, "start", (0, -4), "small")
    end = _LEFT + _FULL * (1.0 if bar.kind == "barred" else bar.drawn)
    corners = ((_LEFT, low), (end, low), (end, low + _BAR), (_LEFT, low + _BAR))
    if bar.kind == "barred":
        drawing.line("hidden", *corners, (_LEFT, low))
        drawing.text((_LEFT + _FULL / 2, low), bar.amount, shift=(0, -3), kind="note")
        return
    drawing.area(_AREAS[bar.kind], *corners)
    drawing.text((end, low), bar.amount, "start", (6, -3), "strong" if bar.strong else "note")


__all__ = ["BarKind", "PathBar", "PathWords", "path_figure"]
