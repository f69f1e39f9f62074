"""Drawing of what a load pulls at rest and while it moves, as bars to scale, against what its rigging is rated for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Figure
from calc.figures.limits import LimitBar, limits_figure


@dataclass(frozen=True)
class PullBar:
    """One pull of the load: its force [N] and its words."""

    force_n: float
    words: str


def pulls_figure(pulls: Sequence[PullBar], line_n: float, line: str, rated: bool, caption: str) -> Figure:
    """The pulls as bars, the last of them the peak; on each a mark at `line_n` [N] with its words: the rating, or the rest."""
    last = len(pulls) - 1
    bars = [
        LimitBar(pull.force_n, pull.words, at == last, rated and exceeds(pull.force_n, line_n))
        for at, pull in enumerate(pulls)
    ]
    return limits_figure(bars, line_n, line, caption)


__all__ = ["PullBar", "pulls_figure"]
