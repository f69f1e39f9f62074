"""The drawings of the explaining pages: each is computed from the same functions as the worksheets, and named for the pages.

They stand here and not in calc, because the page in the browser never draws them. Their words are the messages of
docs/words/LANG/lessons: a lesson's caption is the message of its name, its labels are the message's parts. Formulas that
only these pages need stand in chain_strength, steel_states and bent_parts; printed figures in printed.csv; both are named
for the pages in values.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from build_scripts.lessons.frames import FRAME_LESSONS
from build_scripts.lessons.heat import HEAT_LESSONS
from build_scripts.lessons.judging import JUDGING_LESSONS
from build_scripts.lessons.lifting import LIFTING_LESSONS
from build_scripts.lessons.parts import PARTS_LESSONS
from build_scripts.lessons.steel import STEEL_LESSONS
from build_scripts.lessons.strength import STRENGTH_LESSONS
from calc.declaration import Figure
from calc.words.writer import Writer

Lesson = Callable[[Writer], Figure]

_ROOMS: dict[str, Mapping[str, Lesson]] = {
    "lessons/lifting": LIFTING_LESSONS,
    "lessons/frames": FRAME_LESSONS,
    "lessons/judging": JUDGING_LESSONS,
    "lessons/heat": HEAT_LESSONS,
    "lessons/strength": STRENGTH_LESSONS,
    "lessons/parts": PARTS_LESSONS,
    "lessons/steel": STEEL_LESSONS,
}
LESSONS: dict[str, Lesson] = {name: made for room in _ROOMS.values() for name, made in room.items()}
"""Drawings of the explanation pages, by name."""


def lesson(name: str, writer: Writer) -> Figure:
    """A drawing with its caption, in the writer's language and order of units; KeyError where there is none of the name."""
    scope = next((scope for scope, room in _ROOMS.items() if name in room), "")
    return LESSONS[name](writer.of(scope))


__all__ = ["LESSONS", "Lesson", "lesson"]
