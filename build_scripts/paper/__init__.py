"""The book on paper: gauges at true scale and charts for the wall, as PDF, made at build from the tables and calc alone.

    gauges, wall    what stands on each sheet, as words and marks in millimetres (sheets)
    typeset         sheets to PDF by typst, with the book's own type faces (faces, sheet.typ)

Words stand in docs/words/LANG/paper. Nothing of this reaches the phone's Python.
"""

from __future__ import annotations

import functools
from pathlib import Path

from build_scripts.paper.cards import CARDS
from build_scripts.paper.gauges import GAUGES
from build_scripts.paper.sheets import Sheet
from build_scripts.paper.typeset import PAPERS, Edition, file_name, write_sheets
from build_scripts.paper.wall import WALL
from build_scripts.wording import language

FOLDER = "paper"
"""Where the sheets lie in the site."""


def sheets() -> tuple[Sheet, ...]:
    """Every sheet of the book in the language of this build, in the order of use."""
    return _sheets(language())


@functools.cache
def _sheets(_tongue: str) -> tuple[Sheet, ...]:
    return tuple(made() for made in (*GAUGES, *WALL, *CARDS))


def build_paper(root: Path, site: Path, *, number: str, hash: str) -> None:
    """Write every sheet into the site; number and hash: those of the edition."""
    write_sheets(sheets(), site / FOLDER, root, Edition(number, hash))


__all__ = ["FOLDER", "PAPERS", "build_paper", "file_name", "sheets"]
