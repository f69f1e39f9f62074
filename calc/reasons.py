"""What a finding means for the reader: reasons, and the views of them.

A worksheet judges once, into a tuple of reasons. Each has a code, a weight and its facts. Verdict, headline, what stands
large, cautions and colours are views of these reasons and of nothing else; no condition is decided twice. The words of
a reason are the messages `reason-CODE.headline` (told if it leads), `.opening` and `.closing` (told before and after
it whatever leads) and `.caution`; a reason has at least one of them.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Literal

from calc.words.facts import Fact

Weight = Literal["stop", "unknown", "caution", "within", "note"]
"""stop: not allowed or over a limit; unknown: not enough is known; caution: look again; within: a rating or limit was
compared and holds; note: worth saying, decides nothing."""
Verdict = Literal["ok", "caution", "stop", "unknown"]
CautionKind = Literal["warning", "prohibition", "mandatory", "note"]

_KINDS: dict[Weight, CautionKind] = {
    "stop": "prohibition",
    "unknown": "mandatory",
    "caution": "warning",
    "within": "note",
    "note": "note",
}
_VERDICTS: tuple[tuple[Weight, Verdict], ...] = (
    ("stop", "stop"),
    ("unknown", "unknown"),
    ("caution", "caution"),
    ("within", "ok"),
)


@dataclass(frozen=True)
class Reason:
    """One reason.

    kind -- the sign that its caution carries, where it is not that of its weight
    large -- the result that stands large when this reason leads, where it is not the worksheet's usual one
    part -- the row or part it is about, where there are several (0 is the first)
    compares -- whether it is a stop because more is asked than a rating allows that stands: the rating may be shown
    """

    code: str
    weight: Weight
    facts: Mapping[str, Fact] = field(default_factory=dict)
    kind: CautionKind | None = None
    large: str | None = None
    part: int | None = None
    compares: bool = False

    @property
    def sign(self) -> CautionKind:
        """The sign that its caution carries."""
        return self.kind or _KINDS[self.weight]


def stop(code: str, **facts: Fact) -> Reason:
    """Not allowed, or over a limit."""
    return Reason(code, "stop", facts)


def over(code: str, **facts: Fact) -> Reason:
    """More is asked than a rating allows that stands and may be shown."""
    return Reason(code, "stop", facts, compares=True)


def unknown(code: str, **facts: Fact) -> Reason:
    """Not enough is known."""
    return Reason(code, "unknown", facts)


def caution(code: str, **facts: Fact) -> Reason:
    """Inside the limits, but look again."""
    return Reason(code, "caution", facts)


def within(code: str, **facts: Fact) -> Reason:
    """A rating or limit was compared with what is asked of it, and holds."""
    return Reason(code, "within", facts)


def note(code: str, kind: CautionKind = "note", **facts: Fact) -> Reason:
    """Worth saying under a sign; decides nothing."""
    return Reason(code, "note", facts, kind)


def verdict_of(reasons: Iterable[Reason], rates: bool = True) -> Verdict:
    """The verdict that the reasons add up to. A worksheet that rates says ok only for a reason of weight within; one that
    rates nothing says ok for worked out.

    >>> verdict_of([within("inside"), caution("flat"), note("squeeze")])
    'caution'
    >>> verdict_of([note("squeeze")])
    'unknown'
    """
    weights = {reason.weight for reason in reasons}
    for weight, verdict in _VERDICTS:
        if weight in weights:
            return verdict
    return "unknown" if rates else "ok"


def shows_capacity(reasons: Iterable[Reason]) -> bool:
    """Whether a capacity may be shown: not where the use is forbidden or the part cannot be rated.

    >>> shows_capacity([over("load")]), shows_capacity([over("load"), stop("welded")])
    (True, False)
    """
    return all(reason.compares for reason in reasons if reason.weight in ("stop", "unknown"))


def worst_first(reasons: Sequence[Reason]) -> tuple[Reason, ...]:
    """The reasons by falling weight, in their own order within a weight."""
    order: tuple[Weight, ...] = ("stop", "unknown", "caution", "within", "note")
    return tuple(sorted(reasons, key=lambda reason: order.index(reason.weight)))


__all__ = [
    "CautionKind",
    "Reason",
    "Verdict",
    "Weight",
    "caution",
    "note",
    "over",
    "shows_capacity",
    "stop",
    "unknown",
    "verdict_of",
    "within",
    "worst_first",
]
