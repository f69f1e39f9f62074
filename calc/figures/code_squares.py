"""The squares of a QR code as paths, on white, whatever the page's colors: one path with a run of dark squares for each piece."""

from __future__ import annotations

from collections.abc import Sequence

from calc.trees import Node


def code_squares(
    code: Sequence[Sequence[bool]], quiet: int, left: float, top: float, side: float
) -> list[Node]:
    """A code in a drawing.

    code -- its squares by row, True for a dark one; quiet -- light squares round it
    left, top, side -- where it stands and how long its side is with the light squares, in units of the drawing
    """
    square = side / (len(code) + 2 * quiet)
    runs = []
    for row, squares in enumerate(code):
        start = None
        for column, dark in enumerate([*squares, False]):
            if dark and start is None:
                start = column
            elif not dark and start is not None:
                x, y = left + (start + quiet) * square, top + (row + quiet) * square
                long = (column - start) * square
                runs.append(f"M{x:.3f} {y:.3f}h{long:.3f}v{square:.3f}h-{long:.3f}z")
                start = None
    paper = f"M{left:.3f} {top:.3f}h{side:.3f}v{side:.3f}h-{side:.3f}z"
    return [["path", {"class": "code-paper", "d": paper}], ["path", {"class": "code", "d": "".join(runs)}]]


__all__ = ["code_squares"]
