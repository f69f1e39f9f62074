"""A tag to print and cut out, drawn at its own proportions: its words on the left, the same words as a QR code on the right."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.code_squares import code_squares
from calc.figures.drawing import Drawing

WIDTH_MM, HEIGHT_MM = 148.0, 76.0
"""The tag as it is drawn; printed at another width, all on it is smaller alike."""
CODE_MM = 50.0
"""The side of the code with its quiet zone: a phone held by a gloved hand reads it at arm's length."""
_DRAWN = 360.0
_LETTERS_IN_A_LINE = 34
_LINE_MM = 5.7
_LEFT_MM, _CODE_LEFT_MM, _CODE_FOOT_MM = 15.0, 94.0, 13.0


@dataclass(frozen=True)
class TagWords:
    """What stands on a tag: large words, lines, foot; whether it says do not use, and the code of its size."""

    large: str
    lines: tuple[str, ...]
    foot: str
    do_not_use: bool
    size: str


def tag_figure(words: TagWords, code: Sequence[Sequence[bool]], quiet: int, caption: str) -> Figure:
    """The tag. `code`: the squares of its QR code by row, True for dark; `quiet`: light squares round it."""
    drawing = Drawing(_DRAWN, _DRAWN * HEIGHT_MM / WIDTH_MM, 0.0)
    drawing.fit([(0.0, 0.0), (WIDTH_MM, HEIGHT_MM)])
    drawing.area("tag-paper", (0.5, 0.5), (147.5, 0.5), (147.5, 75.5), (0.5, 75.5))
    drawing.circle("tag-hole", (7.5, 38.0), 3.0)
    head = "tag-words"
    if words.do_not_use:
        drawing.area("tag-stop", (_LEFT_MM, 60.8), (90.0, 60.8), (90.0, 73.5), (_LEFT_MM, 73.5))
        head = "tag-words-on-stop"
    x, y = drawing.place((_LEFT_MM + (3.0 if words.do_not_use else 0.0), 63.8))
    drawing.parts.append(
        ["text", {"class": head, "x": f"{x:.1f}", "y": f"{y:.1f}", "text-anchor": "start"}, words.large]
    )
    height = 54.0
    for place, line in enumerate(words.lines):
        for part in wrapped(line):
            drawing.text((_LEFT_MM, height), part, "start", kind="small" if place else "strong")
            height -= _LINE_MM
    drawing.text((_LEFT_MM, 4.0), words.foot, "start", kind="small")
    left, top = drawing.place((_CODE_LEFT_MM, _CODE_FOOT_MM + CODE_MM))
    drawing.parts += code_squares(code, quiet, left, top, CODE_MM * drawing.scale)
    attributes = {
        "class": " ".join(("drawing", "tag", f"tag-{words.size}")),
        "viewBox": f"0 0 {drawing.width:g} {drawing.height:g}",
        "role": "img",
        "xmlns": "http://www.w3.org/2000/svg",
    }
    return Figure(["svg", attributes, ["title", {}, caption], *drawing.parts], caption)


def wrapped(line: str) -> tuple[str, ...]:
    """A line as several that fit the tag, parted at blanks where it has them.

    >>> wrapped("Maker’s rating: 7,100 lb at 90 deg")
    ('Maker’s rating: 7,100 lb at 90 deg',)
    """
    parts = []
    while len(line) > _LETTERS_IN_A_LINE:
        blank = line.rfind(" ", 0, _LETTERS_IN_A_LINE + 1)
        end = blank if blank > 0 else _LETTERS_IN_A_LINE
        parts.append(line[:end])
        line = line[end:].lstrip()
    return (*parts, line)


__all__ = ["CODE_MM", "HEIGHT_MM", "WIDTH_MM", "TagWords", "tag_figure", "wrapped"]
