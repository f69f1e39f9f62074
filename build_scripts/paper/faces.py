"""The book's own type faces as files that a typesetter reads: the npm packages bring them packed for browsers.

The faces are under the SIL Open Font License, which keeps their names for the unchanged files: ours are renamed.
"""

from __future__ import annotations

import hashlib
import shutil
import tempfile
from dataclasses import dataclass
from pathlib import Path

TEXT, HEAD = "Book Text", "Book Head"
"""The families as the sheets name them."""
_FAMILY_NAMES = (1, 16)
_FULL_NAMES = (3, 4, 6)
"""Which entries of a face's table of names hold its family, and which its full name (OpenType, table `name`)."""


class FaceMissing(RuntimeError):
    """A type face is not there; the message names its package."""


@dataclass(frozen=True)
class Face:
    """One weight of a face: its package, its file there, the family it becomes here, its weight, and whether the file holds
    all weights at once.
    """

    package: str
    file: str
    family: str
    weight: int
    variable: bool = False


FACES = (
    *(
        Face(
            "@fontsource-variable/atkinson-hyperlegible-next",
            "atkinson-hyperlegible-next-latin-wght-normal.woff2",
            TEXT,
            weight,
            variable=True,
        )
        for weight in (400, 700)
    ),
    Face("@fontsource/barlow-condensed", "barlow-condensed-latin-700-normal.woff2", HEAD, 700),
)


def ready_faces(root: Path) -> Path:
    """A folder with every face as TrueType, made once for each state of the packages. Raises FaceMissing."""
    sources = [root / "node_modules" / face.package / "files" / face.file for face in FACES]
    for face, source in zip(FACES, sources, strict=True):
        if not source.is_file():
            raise FaceMissing(f"the type face {face.package} is missing; run npm ci")
    name = hashlib.sha256(b"".join(path.read_bytes() for path in [Path(__file__), *sources])).hexdigest()[:16]
    finished = root / ".build" / "faces" / name
    if finished.is_dir():
        return finished
    finished.parent.mkdir(parents=True, exist_ok=True)
    working = Path(tempfile.mkdtemp(prefix=f"{name}.", dir=finished.parent))
    for face, source in zip(FACES, sources, strict=True):
        _unpack(face, source, working / f"{face.family}-{face.weight}.ttf")
    try:
        working.rename(finished)
    except OSError:  # another process was first
        shutil.rmtree(working, ignore_errors=True)
    return finished


def _unpack(face: Face, source: Path, target: Path) -> None:
    """Write one weight of a packed face as TrueType under our name for it."""
    from fontTools.ttLib import TTFont
    from fontTools.varLib.instancer import instantiateVariableFont

    font = TTFont(source, recalcTimestamp=False)
    if face.variable:
        font = instantiateVariableFont(font, {"wght": face.weight})
    font.flavor = None
    font["OS/2"].usWeightClass = face.weight
    for record in list(font["name"].names):
        if record.nameID in _FAMILY_NAMES:
            font["name"].setName(
                face.family, record.nameID, record.platformID, record.platEncID, record.langID
            )
        elif record.nameID in _FULL_NAMES:
            full = f"{face.family} {face.weight}".replace(" ", "-" if record.nameID == 6 else " ")
            font["name"].setName(full, record.nameID, record.platformID, record.platEncID, record.langID)
        elif record.nameID in (2, 17):
            style = "Bold" if face.weight >= 700 else "Regular"
            font["name"].setName(style, record.nameID, record.platformID, record.platEncID, record.langID)
    font.save(target)


__all__ = ["FACES", "HEAD", "TEXT", "Face", "FaceMissing", "ready_faces"]
