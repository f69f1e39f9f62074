"""May chain of this grade lift? One question with the same answers on every sheet that holds legs against a tag's figure.

A tag's figure counts only where it is known what it rates: chain of grades 70, 43 and 30 ties loads down and has no lifting
rating, whatever figure goes with it (ASTM A413, scope). Wire rope, web and fibre rope bear no grade.
"""

from __future__ import annotations

from calc.inputs import ChoiceInput, Given
from calc.lifting.grade_input import GradeInput
from calc.marks import read_grade
from calc.ratings import METRIC_LIFTING_GRADES, TIE_DOWN_ONLY_GRADES
from calc.reasons import Reason, stop, unknown
from calc.words.facts import Absent, absent

CHAIN = "chain"
WITHOUT_GRADE = ("wire-rope", "web")
"""Kinds of leg that bear no grade of chain, so that their tag alone rates them."""
WORDS = "shared/leg-grade"
"""The scope of its words: input-leg_kind, input-grade and their options, reason-ties-down-only and the like."""


def leg_kind_input() -> ChoiceInput:
    """What the legs are; left empty it is not said."""
    return ChoiceInput("leg_kind", choices=(CHAIN, *WITHOUT_GRADE), required=False)


def leg_grade_input(kind: str = "leg_kind") -> GradeInput:
    """The grade of the chain, asked where the input `kind` says chain."""
    return GradeInput(
        "grade",
        choices=("80", "100", "8", "5", "M", "4", "70", "43", "30"),
        required=False,
        shown_when={kind: (CHAIN,)},
    )


def lifting_grade(mark: str) -> str | Absent:
    """The grade that a mark names; none where it names, or may name, chain that ties down. A mark 8 is read as metric grade 8,
    which is rated the lower of the two that it can be.

    >>> lifting_grade("80"), lifting_grade("8"), lifting_grade("70").code, lifting_grade("4").code
    ('80', '8', 'no-lifting-rating', 'may-tie-down')
    """
    grades = read_grade(mark).grades
    ties = [grade for grade in grades if grade in TIE_DOWN_ONLY_GRADES]
    if ties:
        return absent("no-lifting-rating" if len(ties) == len(grades) else "may-tie-down", mark=mark)
    return next((grade for grade in grades if grade in METRIC_LIFTING_GRADES), grades[0])


def why_not_by_tag(given: Given, kind: str = "leg_kind") -> Absent | None:
    """Why the tag's figure does not count, by the legs' kind and grade; None where it does. Refuses a grade of what is no
    chain.
    """
    said = given.text(kind)
    if said and said != CHAIN:
        if given.has("grade"):
            raise given.refuse("grade", "no-chain-no-grade")
        return None
    if not given.has("grade"):
        return absent("grade-not-said" if said else "kind-not-said")
    grade = lifting_grade(given.text("grade"))
    return grade if isinstance(grade, Absent) else None


def judge_leg_grade(why: Absent | None) -> tuple[Reason, ...]:
    """Chain that ties down is forbidden, chain that may is unknown; no reason against any other."""
    if why is None:
        return ()
    if why.code == "no-lifting-rating":
        return (stop("ties-down-only", **why.facts),)
    return (unknown(why.code, **why.facts),)


__all__ = [
    "CHAIN",
    "WITHOUT_GRADE",
    "WORDS",
    "judge_leg_grade",
    "leg_grade_input",
    "leg_kind_input",
    "lifting_grade",
    "why_not_by_tag",
]
