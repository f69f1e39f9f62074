"""What a printed sheet is made of, before it is typeset: words in spans, and marks that lie at true places in millimetres.

A gauge measures by the edges of its black blocks and by the middle of its lines, never by the edge of a line: a printer
draws lines thicker or thinner, and puts their middle in the right place.
"""

from __future__ import annotations

from dataclasses import asdict, dataclass
from typing import Any, Literal

from calc.words.facts import Place
from calc.words.writer import Spans

WIDTH_MM = 186.0
"""What a sheet may take of the paper's width: A4 (210 mm) and Letter (215.9 mm) both leave a margin that printers reach."""
HEIGHT_MM = 255.0
"""... and of its height: Letter is 279.4 mm high, A4 297 mm."""

LineKind = Literal["hair", "thin", "thick", "dashed"]
At = Literal["left", "middle", "right"]


@dataclass(frozen=True)
class Line:
    """A line between two points [mm from the drawing's upper left corner]."""

    x1: float
    y1: float
    x2: float
    y2: float
    kind: LineKind = "thin"


@dataclass(frozen=True)
class Block:
    """A black block: its upper left corner, width and height [mm]."""

    x: float
    y: float
    width: float
    height: float


@dataclass(frozen=True)
class Area:
    """A closed shape by its corners [mm]: grey, or hatched by lines of its own where it must tell in black and white."""

    corners: tuple[tuple[float, float], ...]
    grey: bool = True


@dataclass(frozen=True)
class Arc:
    """A circle's line around a centre [mm], from one angle to another [deg, 0 to the right, growing downward]."""

    x: float
    y: float
    radius: float
    start_deg: float
    end_deg: float
    kind: LineKind = "thin"


@dataclass(frozen=True)
class Label:
    """Words at a place [mm]: `at` says which end of them stands there, `y` is the middle of their height."""

    x: float
    y: float
    words: Spans
    at: At = "left"
    size_pt: float = 8.5
    bold: bool = False
    turn_deg: float = 0.0


Mark = Line | Block | Area | Arc | Label
_KINDS = {Line: "line", Block: "block", Area: "area", Arc: "arc", Label: "label"}


@dataclass(frozen=True)
class Drawing:
    """Marks on a field of some height [mm], WIDTH_MM wide; `said` tells the same in words, for those who hear it read."""

    height_mm: float
    marks: tuple[Mark, ...]
    said: Spans

    def as_data(self) -> dict[str, Any]:
        """What the typesetter's template reads."""
        return {
            "height": self.height_mm,
            "said": self.said,
            "marks": [{"mark": _KINDS[type(mark)], **asdict(mark)} for mark in self.marks],
        }


@dataclass(frozen=True)
class Cited:
    """A place in a source that a sheet rests on, and how it was read: text, copy or memory."""

    place: Place
    checked: str


@dataclass(frozen=True)
class Grid:
    """A table on a sheet: its heading, heads and rows of cells; the first column names the row. `notes` stand under it.

    words -- its cells are words, not numbers: they stand at the left and take what room there is
    """

    title: Spans
    heads: tuple[Spans, ...]
    rows: tuple[tuple[Spans, ...], ...]
    notes: tuple[Spans, ...] = ()
    words: bool = False


RING: Spans = [["o", ""]]
"""The open ring after a value that nobody saw in its source's text; the typesetter draws it."""


Caution = tuple[Literal["warning", "prohibition", "mandatory"], Spans]


@dataclass(frozen=True)
class Tag:
    """A tag to cut out: its large words, the lines to write on, the sentence at its foot; `stop`: with the sign of a prohibition."""

    words: Spans
    lines: tuple[Spans, ...]
    foot: Spans
    stop: bool


@dataclass(frozen=True)
class Panel:
    """One page of the pocket book: its heading, tables and sentences."""

    title: Spans
    grids: tuple[Grid, ...] = ()
    lines: tuple[Spans, ...] = ()


@dataclass(frozen=True)
class Sheet:
    """One sheet of paper, before its size is chosen.

    kind -- gauge: true to scale, with the lines that check the printer; wall: to be read from some steps away; cards: eight
            panels that fold into a pocket book; tags: to cut out and to write on
    page -- the page of the book that says more (`look-up/hooks`)
    """

    name: str
    kind: Literal["gauge", "wall", "cards", "tags"]
    title: Spans
    page: str
    steps: tuple[Spans, ...]
    cited: tuple[Cited, ...]
    drawing: Drawing | None = None
    grids: tuple[Grid, ...] = ()
    cautions: tuple[Caution, ...] = ()
    letters_pt: float = 9.0
    panels: tuple[Panel, ...] = ()
    tags: tuple[Tag, ...] = ()


__all__ = [
    "HEIGHT_MM",
    "RING",
    "WIDTH_MM",
    "Arc",
    "Area",
    "Block",
    "Caution",
    "Cited",
    "Drawing",
    "Grid",
    "Label",
    "Line",
    "Mark",
    "Panel",
    "Sheet",
    "Tag",
]
