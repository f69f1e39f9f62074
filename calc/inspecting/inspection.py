"""Holds a worn part against every published limit and says which one decides.

Question of the trade: is it still fit? A part to judge is declared as its criteria: a reading held against rows of
published limits, or a question to be looked at. Where sources differ every limit is shown and the strictest decides; a
reading at a limit is out, unless its source rejects only what is over it. What was not looked at cannot pass, and a
weld, heat, a crack, a missing mark or a change ends in stop or unknown whatever the numbers say. Limits stand in
tables/hook-limits, chain-limits, shackle-limits and wire-rope-limits, each with its source.
"""

from __future__ import annotations

import functools
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Literal, Protocol

from calc.declaration import Citation, Result, Row, Step, step
from calc.inputs import FlagInput, Given
from calc.inspecting.record import PART_INPUT, RECORD_INPUTS, Recorded, recorded
from calc.quantities import to_si
from calc.reasons import Reason, note, stop, unknown, within
from calc.tables import Row as Claim
from calc.tables import number, table
from calc.words.facts import (
    Absent,
    Cell,
    Fact,
    Listing,
    Message,
    Number,
    Place,
    Quantity,
    Sense,
    absent,
    message,
)

Outcome = Literal["pass", "near", "fail", "open"]
"""open: not looked at."""

NEAR_LIMIT = 0.5
"""Over half of a limit used up is called near it: measure again soon (our own mark, no source)."""
_LAST_PLACES = 1e-9
_NAMED = 2
"""So many criteria are named in the large line; the others are counted."""


# ------------------------------------------------------------------------------------------ limits


@dataclass(frozen=True)
class Limit:
    """A published limit: its value [SI of its dimension], how it reads, when a part is out by it, and where it stands."""

    value_si: float
    printed: Fact
    sense: Sense
    citations: tuple[Citation, ...]

    @property
    def strictness(self) -> tuple[float, bool]:
        """What sorts limits strictest first: of two at one value, the one that rejects at it."""
        value = -self.value_si if self.sense == "out_under" else self.value_si
        return value, self.sense == "out_over"

    def rejects(self, reading_si: float) -> bool:
        """Whether a reading is out: at the limit too, unless its source rejects only what is over or under it."""
        if self.sense == "out_under":
            return reading_si < self.value_si * (1 - _LAST_PLACES)
        if self.sense == "out_over":
            return reading_si > self.value_si * (1 + _LAST_PLACES)
        return reading_si >= self.value_si * (1 - _LAST_PLACES) and reading_si > 0

    def nears(self, reading_si: float, new_si: float) -> bool:
        """Whether more than half of the way from new to the limit is used up."""
        if self.sense == "out_under":
            return new_si - reading_si > NEAR_LIMIT * (new_si - self.value_si)
        return reading_si > self.value_si * NEAR_LIMIT


def limit_of(claim: Claim, dimension: str) -> Limit:
    """The limit in a table row; percent and ratios are read as a fraction."""
    unit = claim["unit"]
    value = number(claim) if unit == "count" else to_si(number(claim), unit, dimension)
    sense: Sense = "out_over" if claim.get("sense") == "out_over" else "out_at"
    return Limit(value, Cell(claim["value"], unit), sense, (Citation(claim["source"], claim["locator"]),))


@functools.lru_cache(maxsize=256)
def limits(table_name: str, items: tuple[str, ...], quantity: str, dimension: str) -> tuple[Limit, ...]:
    """Every limit for the given items and quantity, strictest first."""
    claims = [claim for claim in table(table_name).where(quantity=quantity) if claim["item"] in items]
    return strictest_first(limit_of(claim, dimension) for claim in claims)


def strictest_first(found: Iterable[Limit]) -> tuple[Limit, ...]:
    """Limits in falling strictness."""
    return tuple(sorted(found, key=lambda limit: limit.strictness))


def merged(found: Sequence[Limit]) -> tuple[Limit, ...]:
    """Limits that print the same value, and reject alike at it, as one with all their sources, in the order given."""
    groups: dict[tuple[Fact, float, Sense], Limit] = {}
    for limit in found:
        same = (_hashable(limit.printed), limit.value_si, limit.sense)
        first = groups.get(same)
        sources = (*first.citations, *limit.citations) if first else limit.citations
        groups[same] = Limit(limit.value_si, first.printed if first else limit.printed, limit.sense, sources)
    return tuple(groups.values())


def _hashable(printed: Fact) -> Fact:
    """A printed limit as a key: a message by its code and the text of its facts."""
    if isinstance(printed, Message):
        return f"{printed.code} {sorted((name, str(fact)) for name, fact in printed.facts.items())}"
    return printed


@functools.lru_cache(maxsize=256)
def rule(item: str, name: str, table_name: str = "removal-criteria") -> Citation:
    """Where a rule of a table of rules stands."""
    claim = table(table_name).one(item=item, rule=name)
    return Citation(claim["source"], claim["locator"])


# ------------------------------------------------------------------------------------------ criteria


@dataclass(frozen=True)
class Finding:
    """One criterion held against one reading. `decides`: the strictest of its limits, or a question. `look`: the criterion
    that the same look answers, where it is another.
    """

    criterion: str
    limit: Fact
    reading: Fact
    outcome: Outcome
    citations: tuple[Citation, ...]
    decides: bool = True
    look: str = ""

    def row(self) -> Row:
        """The finding as a row of the record; a limit that is not the strictest does not decide."""
        outcome = message(f"outcome-{self.outcome}" + ("" if self.decides else "-looser"))
        cells: dict[str, Fact] = {
            "criterion": message(f"criterion-{self.criterion}"),
            "limit": self.limit,
            "reading": self.reading,
            "outcome": outcome,
            "source": Listing(tuple(Place(c.source, c.locator) for c in self.citations), "semicolon"),
        }
        return Row(cells, self.outcome)

    def step(self) -> Step:
        """The finding as a line of the working."""
        decides = message("decides" if self.decides else "does-not-decide")
        return step(
            "criterion",
            **{**self.row().cells, "outcome": message(f"outcome-{self.outcome}"), "decides": decides},
        )


class Criterion(Protocol):
    """Something that a part is judged by."""

    def findings(self, given: Given) -> tuple[Finding, ...]:
        """What looking at it, or measuring it, comes to; nothing where it does not apply."""
        ...


def _always(_given: Given) -> bool:
    return True


@dataclass(frozen=True)
class Measure:
    """A reading held against every published limit of it; the strictest decides.

    limits -- from what was given, in any order; reading -- in SI, None where it was not measured
    dimension -- how the reading is written: a dimension, or "" for a count
    missing -- the message `absent-MISSING` where it was not measured
    new -- the reading of a new part, for limits that are a least value
    look -- the criterion that the same look answers, where it is another
    warns_near -- whether half of the limit means anything (half of a temperature does not)
    """

    code: str
    limits: Callable[[Given], Sequence[Limit]]
    reading: Callable[[Given], float | None]
    dimension: str
    digits: int = 3
    missing: str = "not-measured"
    applies: Callable[[Given], bool] = _always
    new: Callable[[Given], float] = lambda _given: 0.0
    look: str = ""
    warns_near: bool = True

    def findings(self, given: Given) -> tuple[Finding, ...]:
        """One finding for each different limit."""
        if not self.applies(given):
            return ()
        reading = self.reading(given)
        found = []
        for position, limit in enumerate(merged(strictest_first(self.limits(given)))):
            outcome = self._outcome(limit, reading, given)
            written = self._written(reading, limit.sense)
            found.append(
                Finding(self.code, limit.printed, written, outcome, limit.citations, position == 0, self.look)
            )
        return tuple(found)

    def _outcome(self, limit: Limit, reading: float | None, given: Given) -> Outcome:
        if reading is None:
            return "open"
        if limit.rejects(reading):
            return "fail"
        return "near" if self.warns_near and limit.nears(reading, self.new(given)) else "pass"

    def _written(self, reading: float | None, sense: Sense) -> Fact:
        """The reading rounded to its unsafe side, so that it never reads better than it is."""
        if reading is None:
            return absent(self.missing)
        if not self.dimension:
            return Number(reading, 15)
        return Quantity(reading, self.dimension, "plain" if sense == "out_under" else "demand", self.digits)


@dataclass(frozen=True)
class Question:
    """Something to be looked at: `bad` says whether the fault is there, None where nobody looked. The words of what is
    wanted are `criterion-CODE.limit`.
    """

    code: str
    bad: Callable[[Given], bool | None]
    citations: Callable[[], tuple[Citation, ...]]
    applies: Callable[[Given], bool] = _always

    def findings(self, given: Given) -> tuple[Finding, ...]:
        """One finding, or none where it does not apply."""
        return (found_fault(self.code, self.bad(given), *self.citations()),) if self.applies(given) else ()


def found_fault(code: str, present: bool | None, *citations: Citation) -> Finding:
    """A fault that is looked for: present, not present, or (None) not looked for."""
    wanted = message(f"criterion-{code}.limit")
    if present is None:
        return Finding(code, wanted, absent("not-looked-at"), "open", citations)
    reading = message("not-in-order" if present else "in-order")
    return Finding(code, wanted, reading, "fail" if present else "pass", citations)


def yes_is_bad(name: str) -> Callable[[Given], bool | None]:
    """A question whose yes is a fault."""
    return lambda given: given.answered(name)


def no_is_bad(name: str) -> Callable[[Given], bool | None]:
    """A question whose no is a fault."""

    def bad(given: Given) -> bool | None:
        answered = given.answered(name)
        return None if answered is None else not answered

    return bad


def cites(*citations: Citation) -> Callable[[], tuple[Citation, ...]]:
    """Places that are known beforehand."""
    return lambda: citations


def by_rules(*rules: tuple[str, ...]) -> Callable[[], tuple[Citation, ...]]:
    """Where rules stand: (item, rule) of removal-criteria, or (item, rule, table)."""
    return lambda: tuple(rule(*one) for one in rules)


# ------------------------------------------------------------------------------------------ what is found


@dataclass(frozen=True)
class Inspected:
    """What looking a part over came to.

    looked_at -- how many looks were made, of how many; record -- whether it is a record, or what it lacks
    against -- a use that no looking changes, where there is one
    """

    part: Message
    findings: tuple[Finding, ...]
    decides: Message
    rows: tuple[Row, ...]
    looked_at: Message
    recorded: Recorded
    record: Message
    next_inspection: Message | Absent
    against: Message | None = None

    def by_outcome(self, outcome: Outcome) -> tuple[str, ...]:
        """The deciding criteria with this outcome, each once."""
        return _by_outcome(self.findings, outcome)

    @property
    def sound(self) -> bool:
        """Whether every line was looked at and none failed, and nothing stands against the use."""
        return not (self.by_outcome("fail") or self.by_outcome("open") or self.against)

    @property
    def fit(self) -> bool:
        """Whether it is sound, and the look still counts today."""
        return self.sound and self.recorded.current


def inspect(
    part: str,
    items: Sequence[str],
    criteria: Sequence[Criterion],
    given: Given,
    against: Message | None = None,
    fit_for_use: bool = True,
) -> Inspected:
    """Look a part over by its criteria. `items`: what it may be in the table of intervals; `fit_for_use`: whether the use
    itself is rated; where not, no next date is given.
    """
    findings = tuple(finding for criterion in criteria for finding in criterion.findings(given))
    written = recorded(given, items)
    open_looks = _by_outcome(findings, "open")
    looks = _looks(findings)
    sound = fit_for_use and not (open_looks or _by_outcome(findings, "fail") or against)
    return Inspected(
        part=message(f"part-{part}"),
        findings=findings,
        decides=_decides(findings, against, written),
        rows=tuple(finding.row() for finding in findings),
        looked_at=message("looked-at", done=len(looks) - len(open_looks), all=len(looks)),
        recorded=written,
        record=_record(written, open_looks),
        next_inspection=written.next_inspection if sound else absent("out-of-use"),
        against=against,
    )


def _looks(findings: Sequence[Finding]) -> tuple[str, ...]:
    """What there is to look at, each look once."""
    return tuple(dict.fromkeys(one.look or one.criterion for one in findings if one.decides))


def _record(written: Recorded, open_looks: Sequence[str]) -> Message:
    """Whether this look is a record, or what it lacks."""
    lacking = [message(f"record-{name}") for name in written.lacking]
    if open_looks:
        lacking.append(message("record-looks", count=len(open_looks)))
    if lacking:
        return message("record-lacks", lacking=_all(lacking))
    return message("record-complete", day=str(written.day))


def _by_outcome(findings: Sequence[Finding], outcome: Outcome) -> tuple[str, ...]:
    named = (
        one.look or one.criterion if outcome == "open" else one.criterion
        for one in findings
        if one.decides and one.outcome == outcome
    )
    return tuple(dict.fromkeys(named))


def _decides(findings: Sequence[Finding], against: Message | None, written: Recorded) -> Message:
    """What decides, for the large line: what failed (or stands against the use), else what is still to be looked at or
    dated, else what is near its limit, else that all of it was looked at.
    """
    failed = [against] if against else [_listed(code) for code in _by_outcome(findings, "fail")]
    if failed:
        return _few("decides-out", failed)
    left = _by_outcome(findings, "open")
    if left:
        return _few("decides-look-at", _to_look_at(left))
    if not written.current:
        return message("decides-no-day") if written.due is None else written.next_inspection
    near = _by_outcome(findings, "near")
    if near:
        return _few("decides-near", [_listed(code) for code in near])
    return message("decides-all-looked-at", count=len(_looks(findings)))


def _listed(code: str) -> Message:
    return message(f"criterion-{code}.listed")


def _to_look_at(looks: Sequence[str]) -> list[Message]:
    """What is still to be looked at."""
    return [message(f"criterion-{code}.look-at") for code in looks]


def _few(code: str, named: Sequence[Message]) -> Message:
    """The first names, and how many there are besides."""
    more = max(0, len(named) - _NAMED)
    return message(code, named=Listing(tuple(named[:_NAMED]), "list" if more else "and"), more=more)


def judge_inspected(found: Inspected) -> tuple[Reason, ...]:
    """The reasons that every inspection shares."""
    part = found.part
    reasons: list[Reason] = []
    failed, left, near = (found.by_outcome(outcome) for outcome in ("fail", "open", "near"))
    if failed:
        reasons.append(stop("out", part=part, failed=_all(_listed(code) for code in failed)))
    elif left:
        reasons.append(unknown("still-to-look-at", part=part, left=_all(_to_look_at(left))))
    reasons += _of_the_day(found)
    if near:
        listed = _all(_listed(code) for code in near)
        reasons.append(Reason("near-a-limit", "caution", {"part": part, "near": listed}, "note"))
    elif found.fit:
        reasons.append(within("inside-every-limit", part=part))
    if found.sound and found.recorded.assumed:
        reasons.append(note("shortest-interval"))
    if found.recorded.lacking:
        lacking = _all(message(f"record-{name}") for name in found.recorded.lacking)
        reasons.append(note("no-record-yet", "mandatory", lacking=lacking))
    reasons.append(note("never-mend", "prohibition"))
    reasons.append(note("crack-too-fine", "warning"))
    return tuple(reasons)


def _of_the_day(found: Inspected) -> list[Reason]:
    """A look without a day, or one that was followed too late, passes nothing."""
    written = found.recorded
    if written.due is None:
        return [unknown("no-day", part=found.part)]
    if written.overdue:
        return [unknown("overdue", part=found.part, date=written.due.isoformat())]
    return []


def _all(named: Iterable[Message]) -> Listing:
    return Listing(tuple(named), "and")


def inspection_steps(found: Inspected) -> tuple[Step, ...]:
    """The findings as lines of the working, each with its source."""
    return tuple(finding.step() for finding in found.findings)


def inspection_citations(found: Inspected) -> tuple[Citation, ...]:
    """Every source used, once."""
    of_findings = (citation for finding in found.findings for citation in finding.citations)
    return tuple(dict.fromkeys((*of_findings, *found.recorded.rests_on)))


def rating_if_sound(found: Inspected, rating: float | None, missing: str) -> float | Absent:
    """The rating on its mark, only where the part is fit; `missing`: why there is none where no mark was given."""
    if not found.fit:
        return absent("until-answered")
    return absent(missing) if rating is None else rating


# ------------------------------------------------------------------------------------------ the record

WORDS = "shared/inspecting"
"""The scope of the words that every inspection shares."""
DECIDES_RESULT = Result("decides", of="inspected.decides")
RECORD_RESULTS = (
    Result("looked_at", of="inspected.looked_at"),
    Result("record", of="inspected.record"),
)
NEXT_RESULT = Result("next_inspection", of="inspected.next_inspection")
CRITERIA_RESULT = Result(
    "criteria", columns=("criterion", "limit", "reading", "outcome", "source"), of="inspected.rows"
)


def question(name: str, **shown_when: tuple[str, ...]) -> FlagInput:
    """A question with three answers: yes, no, not looked at."""
    return FlagInput(name, required=False, shown_when=shown_when)


__all__ = [
    "CRITERIA_RESULT",
    "DECIDES_RESULT",
    "NEXT_RESULT",
    "PART_INPUT",
    "RECORD_INPUTS",
    "RECORD_RESULTS",
    "WORDS",
    "Criterion",
    "Finding",
    "Inspected",
    "Limit",
    "Measure",
    "Question",
    "by_rules",
    "cites",
    "found_fault",
    "inspect",
    "inspection_citations",
    "inspection_steps",
    "judge_inspected",
    "limit_of",
    "limits",
    "merged",
    "no_is_bad",
    "question",
    "rating_if_sound",
    "rule",
    "strictest_first",
    "yes_is_bad",
]
