"""Asks the grade of a chain as one of some values, and understands it however its mark is written."""

from __future__ import annotations

from typing import Any

from calc.inputs import ChoiceInput, Reading, single
from calc.marks import may_lift, read_grade
from calc.quantities import NotReadable

_OFFERED_AS = {"4": "M", "8": "80", "10": "100"}
"""What a grade may be offered as where not by its own number: 4 by its letter, for 4 is stamped on grade 43 too; European
grades 8 and 10 with the American 80 and 100."""


class GradeInput(ChoiceInput):
    """The grade of a chain, by a value of the choice, by the words on the page, or as a mark is written (calc.marks).

    A mark that can mean a grade that does not lift is taken as that grade. European grade 4 is the choice M, its letter,
    for the number 4 is stamped on grade 43 as well.
    """

    def read(self, raw: Any, reading: Reading) -> str:
        """The value of the choice."""
        try:
            return super().read(raw, reading)
        except NotReadable:
            wanted = self._worst(read_grade(str(single(raw))).grades)
            if wanted is None:
                raise
            return wanted

    def _worst(self, grades: tuple[str, ...]) -> str | None:
        """The choice for the grades that a mark can name: one that does not lift before one that does."""
        named = [(grade, grade if grade in self.choices else _OFFERED_AS.get(grade, "")) for grade in grades]
        offered = [(grade, value) for grade, value in named if value in self.choices]
        barred = [value for grade, value in offered if may_lift(grade) is False]
        return next(iter([*barred, *(value for _grade, value in offered)]), None)


__all__ = ["GradeInput"]
