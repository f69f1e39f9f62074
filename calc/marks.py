"""What grade does a mark name, as people write it?

One reader for the whole book, so that `70`, `G70`, `Gr 70`, `G-70`, `P7`, `700` and `70 transport` are one grade
everywhere. Chain marks: the mark examples of 49 CFR 393.108 (3, 30, 300 ... 10, 100, 1000) and the letters of European
lifting chain (EN 818; L, M, P, S, T, V), both in tables/chain-marks; spellings of the trade (Gr, G-, P7, HT, BBB, transport,
high test) are common practice, no source. A mark may name more than one grade (4 is grade 43 on American chain and grade 4
on European lifting chain): all are kept. A mark that is not understood is never taken for a good one: `understood` says so.
"""

from __future__ import annotations

import functools
import re
from dataclasses import dataclass
from typing import Literal

from calc.tables import table

Kind = Literal["chain", "shackle"]
"""Chain, and hooks, rings and links that carry chain marks; or shackles."""

_WORDS = {
    "PROOFCOIL": "30",
    "PRUFECOIL": "30",
    "PC": "30",
    "BBB": "30",
    "3B": "30",
    "THIRTY": "30",
    "HIGHTEST": "43",
    "HITEST": "43",
    "HT": "43",
    "FORTYTHREE": "43",
    "40": "43",
    "M4": "43",
    "H4": "43",
    "TRANSPORT": "70",
    "TRUCKERS": "70",
    "SEVENTY": "70",
    "EIGHTY": "80",
    "ONEHUNDRED": "100",
    "HUNDRED": "100",
}
"""What the trade says for a grade (common practice, no source). BBB counts as grade 30: it is no stronger."""
_EUROPEAN = {"3": "3", "4": "4", "5": "5", "6": "6", "8": "8", "10": "10"}
_LETTERS = {"L": "3", "M": "4", "P": "5", "S": "6", "T": "8", "V": "10"}
"""European marks of grades by number and by letter (EN 818; L for grade 3 from EN 818-3, from memory)."""
_PREFIXED = re.compile(r"^(?:GRADE|GR|G|P|TR|A|T)(\d+)$")
_SUFFIXED = re.compile(r"^(\d+)(?:A|T)$")
_SHACKLE = {"A": "A", "B": "B", "ALLOY": "B", "REGULAR": "A", "CARBON": "A"}
_OTHER_SHACKLE = {"4": "4", "M": "4", "6": "6", "S": "6", "8": "8", "T": "8"}
_FILLERS = ("GRADE", "GR", "G", "CHAIN", "STEEL", "OR")


@dataclass(frozen=True)
class GradeMark:
    """What a mark says: the grades it can name, none where it was not understood or not given."""

    typed: str
    grades: tuple[str, ...]

    @property
    def given(self) -> bool:
        """Whether anything was written at all."""
        return bool(self.typed.strip())

    @property
    def understood(self) -> bool:
        """Whether every word of it was understood, and they name one grade together."""
        return bool(self.grades)


@functools.lru_cache(maxsize=512)
def read_grade(typed: str, kind: Kind = "chain") -> GradeMark:
    """The grades that a mark can name.

    >>> read_grade("G-70").grades, read_grade("70 transport").grades, read_grade("4").grades
    (('70',), ('70',), ('43', '4'))
    >>> read_grade("70 80").grades, read_grade("XK2").understood
    ((), False)
    """
    named = [meant for word in _words(typed) if (meant := _meant(word, kind)) is not None]
    if not named or any(not meant for meant in named):
        return GradeMark(typed, ())
    together = [grade for grade in named[0] if all(grade in meant for meant in named)]
    return GradeMark(typed, tuple(together))


def _words(typed: str) -> tuple[str, ...]:
    """The words of a mark in capitals, points and dashes inside them left out: `G-70` is G70, `Gr. 70` is G70."""
    text = re.sub(r"\b(GRADE|GR|G)[\s.-]*(?=\d)", "G", typed.upper())
    text = re.sub(r"\b(PROOF|PRUFE|HIGH|HI|ONE|FORTY)[\s-]+(?=[A-Z])", r"\1", text)
    text = re.sub(r"(?<=[A-Z0-9])[.](?=[A-Z0-9])", "", text)
    return tuple(word for word in re.findall(r"[^\s,;/()]+", text) if word.strip(".-"))


def _meant(word: str, kind: Kind) -> tuple[str, ...] | None:
    """The grades that one word can name; empty where it is not understood; None for a word that says nothing."""
    bare = word.strip(".-").replace("-", "")
    if kind == "shackle":
        found = _SHACKLE.get(bare) or _OTHER_SHACKLE.get(bare)
        return None if bare in _FILLERS else () if found is None else (found,)
    if bare in _WORDS:
        return (_WORDS[bare],)
    if bare in _LETTERS:
        return _european(_LETTERS[bare])
    if bare in _FILLERS:
        return None
    match = _PREFIXED.match(bare) or _SUFFIXED.match(bare)
    number = match[1] if match else bare
    if not number.isdigit():
        return ()
    if number in _WORDS:
        return (_WORDS[number],)
    american = tuple(row["grade"] for row in _marks() if row["value"] == number)
    european = (_EUROPEAN[number],) if number in _EUROPEAN and number not in ("3", "10") else ()
    return tuple(dict.fromkeys((*american, *european)))


def _european(grade: str) -> tuple[str, ...]:
    return ("30",) if grade == "3" else (grade,)


@functools.cache
def _marks() -> tuple[dict[str, str], ...]:
    """The mark examples of the law."""
    return tuple(row for row in table("chain-marks").where(quantity="mark") if row["example"] != "letter")


def may_lift(grade: str) -> bool | None:
    """Whether chain of this grade is made to lift; None where the tables do not say."""
    rows = table("chain-which-may-lift").where(grade=grade, use="lift")
    return None if not rows else all(row["value"] == "yes" for row in rows)


__all__ = ["GradeMark", "Kind", "may_lift", "read_grade"]
