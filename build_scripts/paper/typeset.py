"""Sets sheets of paper as PDF, the same to the byte for the same tables, words and edition."""

from __future__ import annotations

import datetime
import json
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any, Literal

from build_scripts.paper.faces import HEAD, TEXT, ready_faces
from build_scripts.paper.sheets import HEIGHT_MM, WIDTH_MM, Cited, Grid, Sheet
from build_scripts.wording import language
from calc.words.facts import Quantity
from calc.words.writer import Spans, Writer, plain

TEMPLATE = Path(__file__).with_name("sheet.typ")
PaperSize = Literal["a4", "letter"]
PAPERS: dict[PaperSize, tuple[float, float]] = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}
"""Width and height [mm]: ISO 216 A4, and ANSI/ASME Y14.1 A (8-1/2 by 11 in)."""
METRIC_LINE_MM, INCH_LINE_MM = 100.0, 4 * 25.4
"""The two lines by which a reader checks his printer."""
SCALE_SLACK = 0.01
"""The share by which a print may be off before its gauges are thrown away (the share of their limits that they would eat)."""
_SCOPES = ("paper/sheets", "page/tables", "page/answer", "page/frame")


class NotSet(RuntimeError):
    """A sheet could not be set; the message is the typesetter's."""


@dataclass(frozen=True)
class Edition:
    """What a sheet says that it was made from: the edition, and the letters that name its tables and code."""

    number: str
    letters: str

    @property
    def day(self) -> datetime.datetime:
        """The day that the file bears: the first of the edition's year, so that a build does not date it."""
        return datetime.datetime(int(self.number.partition(".")[0]), 1, 1, tzinfo=datetime.UTC)


def _said(code: str, **facts: Any) -> Spans:
    return Writer("us", language(), _SCOPES).say(code, facts)


def _sources(cited: Sequence[Cited]) -> list[dict[str, Any]]:
    """The sources of a sheet under how they were read, the surest first."""
    writer = Writer("us", language(), _SCOPES)
    found = []
    for how in ("text", "copy", "memory"):
        places = [[writer.cite(one.place)] for one in cited if one.checked == how]
        if places:
            found.append({"how": _said(f"sources-in-{how}"), "places": places})
    return found


def _grid(one: Grid) -> dict[str, Any]:
    return {"title": one.title, "heads": one.heads, "rows": one.rows, "notes": one.notes, "words": one.words}


def sheet_data(sheet: Sheet, paper: PaperSize, made: Edition) -> dict[str, Any]:
    """All that the template needs to set a sheet."""
    width, height = PAPERS[paper]
    off = Quantity(METRIC_LINE_MM * SCALE_SLACK / 1000, "length", digits=1)
    return {
        "language": language().partition("-")[0],
        "families": {"text": TEXT, "head": HEAD},
        "paper": {"width": width, "height": height, "across": WIDTH_MM, "down": HEIGHT_MM},
        "kind": sheet.kind,
        "name": plain(sheet.title),
        "title": sheet.title,
        "letters": sheet.letters_pt,
        "steps": sheet.steps,
        "drawing": sheet.drawing.as_data() if sheet.drawing else None,
        "grids": [_grid(one) for one in sheet.grids],
        "panels": [
            {"title": one.title, "grids": [_grid(grid) for grid in one.grids], "lines": one.lines}
            for one in sheet.panels
        ],
        "tags": [asdict(one) for one in sheet.tags],
        "cautions": [
            {"kind": kind, "word": _said(f"caution-word-{kind}"), "words": words}
            for kind, words in sheet.cautions
        ],
        "check": {
            "title": _said("check-the-printer"),
            "words": _said("check-the-printer.stop", off=off),
            "metric": {"length": METRIC_LINE_MM, "words": _said("check-line-mm")},
            "inch": {"length": INCH_LINE_MM, "words": _said("check-line-in")},
        },
        "sources": _sources(sheet.cited),
        "not": _said("not-a-permission-on-paper"),
        "book": _said("book"),
        "edition": _said("edition-of-sheet", number=made.number, letters=made.letters),
        "more": _said("more-in-the-book", page=f"{sheet.page}.html"),
    }


class Typesetter:
    """Sets sheets with one set of type faces."""

    def __init__(self, root: Path) -> None:
        import typst

        self._faces = str(ready_faces(root))
        self._compiler = typst.Compiler(
            str(TEMPLATE), root=str(TEMPLATE.parent), font_paths=[self._faces], ignore_system_fonts=True
        )

    def set(self, sheet: Sheet, paper: PaperSize, made: Edition) -> bytes:
        """A sheet as PDF. Raises NotSet."""
        import typst

        data = json.dumps(sheet_data(sheet, paper, made), ensure_ascii=False)
        try:
            pdf, warnings = self._compiler.compile_with_warnings(
                format="pdf", sys_inputs={"sheet": data}, timestamp=int(made.day.timestamp())
            )
        except typst.TypstError as wrong:
            raise NotSet(f"{sheet.name}: {wrong}") from wrong
        if warnings:
            raise NotSet(f"{sheet.name}: {warnings[0].message}")
        if not isinstance(pdf, bytes):  # a list of pages is made of pictures alone
            raise NotSet(f"{sheet.name}: the typesetter gave no file")
        return pdf if sheet.kind == "wall" else at_actual_size(pdf)


_PREFERENCES = b"/ViewerPreferences<</Direction/L2R>>"
_ACTUAL_SIZE = b"/ViewerPreferences<</Direction/L2R/PrintScaling/None>>"


def at_actual_size(pdf: bytes) -> bytes:
    """The file with the wish that it be printed without scaling (ISO 32000-1, Table 150), which the typesetter cannot say; a
    viewer may pass over it, so that the lines that check the printer stay needed. Raises NotSet.
    """
    head, found, tail = pdf.rpartition(_PREFERENCES)
    before, mark, start = tail.rpartition(b"startxref\n")
    place, end, rest = start.partition(b"\n")
    if not (found and mark and end and place.isdigit()):
        raise NotSet(
            "the typesetter writes its files in another way; a gauge cannot ask to be printed unscaled"
        )
    moved = int(place) + len(_ACTUAL_SIZE) - len(_PREFERENCES)
    return b"".join((head, _ACTUAL_SIZE, before, mark, str(moved).encode(), end, rest))


def file_name(sheet: str, paper: PaperSize) -> str:
    """The name of a sheet's file for a size of paper."""
    return f"{sheet}-{paper}.pdf"


def write_sheets(sheets: Sequence[Sheet], out: Path, root: Path, made: Edition) -> None:
    """Write every sheet in both sizes of paper into a folder."""
    out.mkdir(parents=True, exist_ok=True)
    typesetter = Typesetter(root)
    for sheet in sheets:
        for paper in PAPERS:
            (out / file_name(sheet.name, paper)).write_bytes(typesetter.set(sheet, paper, made))


__all__ = [
    "INCH_LINE_MM",
    "METRIC_LINE_MM",
    "PAPERS",
    "SCALE_SLACK",
    "Edition",
    "NotSet",
    "PaperSize",
    "Typesetter",
    "at_actual_size",
    "file_name",
    "sheet_data",
    "write_sheets",
]
