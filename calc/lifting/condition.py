"""May this part be used at all: is its mark readable, and was it looked over and found good?

One question with the same answers on every sheet that holds a part against a rating. Only a part whose reader says that its
mark is readable and that he found it good may be within a rating. An altered part (welded, heated, bent, home-made) is
forbidden everywhere (29 CFR 1910.184, 1926.251; WAC 296-155-33900: no welding on rigging hardware); one that is unmarked,
worn, not looked at, or whose last full inspection did not pass, cannot be rated.
"""

from __future__ import annotations

from calc.inputs import ChoiceInput, Given
from calc.lifting.own_part import NOT_PASSED
from calc.reasons import Reason, stop, unknown

GOOD = "marked-good"
NOT_LOOKED_AT = "not-looked-at"
ALTERED = ("welded", "heated", "bent", "home-made")
"""Conditions of a part that is no longer what its maker tested."""
CONDITIONS = (GOOD, "unmarked", "worn", *ALTERED)
WORDS = "shared/condition"
"""The scope of its words: input-condition, option-condition-*, reason-condition-*."""


def condition_input() -> ChoiceInput:
    """The question; left empty it is not looked at."""
    return ChoiceInput("condition", choices=CONDITIONS, required=False)


def condition_of(given: Given) -> str:
    """The answer; NOT_LOOKED_AT where there is none. Good does not stand against a last inspection that did not pass."""
    condition = given.text("condition") or NOT_LOOKED_AT
    return NOT_PASSED if condition == GOOD and given.text("last_look") == NOT_PASSED else condition


def judge_condition(condition: str) -> tuple[Reason, ...]:
    """No reason against a part that is marked and good; else why it may not be used, or cannot be rated."""
    if condition == GOOD:
        return ()
    code = f"condition-{condition}"
    return (stop(code) if condition in ALTERED else unknown(code),)


__all__ = [
    "ALTERED",
    "CONDITIONS",
    "GOOD",
    "NOT_LOOKED_AT",
    "WORDS",
    "condition_input",
    "condition_of",
    "judge_condition",
]
