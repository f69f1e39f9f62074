"""Holds a worn part against every published limit and says which one decides.

Question of the trade: is it still fit? Limits stand in tables/hook-limits, chain-limits, shackle-limits and
wire-rope-limits, each with its source. Where sources differ every one is shown and the strictest decides; a reading
at a limit is out. What was not looked at cannot pass, and a weld, heat, a crack, a missing mark or a change ends in
stop or unknown whatever the numbers say.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from calc.quantities import to_si, unit_text
from calc.tables import Row, number, short_citation, table
from calc.words.facts import Sense
from calc.worksheet import Caution, Choice, Citation, Given, Input, Result, Step, Verdict, worst

Outcome = Literal["pass", "near", "fail", "not looked at"]

_SENSES: Mapping[str, Sense] = {"out_at": "out_at", "out_over": "out_over", "out_under": "out_under"}

NEAR_LIMIT = 0.5
"""Over half of a limit used up is called near it: measure again soon (our own mark, no source)."""

LOOK_AT = {
    "Throat opened": "the throat", "Throat opened, in length": "the throat", "Section worn": "the wear in the saddle",
    "Twisted or bent out of the flat": "any twist", "Latch does not close": "the latch", "Crack": "any crack",
    "No readable marks": "the marks", "Welded, heated, ground or changed": "any weld, heat or change",
    "Worn thin": "the thinnest link", "Stretched": "the stretch", "Damage": "damage, link by link", "No readable tag": "the tag",
    "Bow worn": "the wear of the bow", "Pin worn": "the wear of the pin", "Jaw sprung": "the jaw",
    "Bent or twisted to the eye": "any bend", "Pin not fully home": "how the pin seats",
    "Wrong pin": "whose pin it is", "Crack, nick or damaged thread": "any crack or nick",
    "Broken wires in one lay": "broken wires in a lay", "Broken wires in one strand of a lay": "broken wires in a strand",
    "Broken wires at an end fitting": "broken wires at the fittings", "Outer wires worn": "the wear of the outer wires",
    "Kink, crush or birdcage": "any kink or crush", "Heat damage": "any heat mark", "Corrosion or pitting": "any rust",
    "End fitting cracked, bent or worn": "the end fittings", "Cut, tear, snag or puncture": "any cut or tear",
    "Melted, charred or glazed": "any heat mark", "Acid or caustic burn, stiff or faded web": "any acid burn",
    "Load stitching broken or worn": "the stitching", "Fitting bent, cracked or worn": "the fittings",
    "Knotted, mended, welded or changed": "any knot, mend or change",
}  # fmt: skip
"""What is still to be looked at, in a reader's words, by the criterion that it would answer."""
_NAMED = 2

SERVICE_MONTHS = {"normal": 12, "severe": 3}
"""Months between inspections by service class (WAC 296-155-55800, Table 12); special service: a qualified person."""


@dataclass(frozen=True)
class Limit:
    """A published limit: value [SI of its dimension], the words of the cell, where it stands, and when a part is out."""

    value_si: float
    printed: str
    source: str
    locator: str
    checked: str
    sense: Sense = "out_at"

    @property
    def citation(self) -> Citation:
        """The source and the place in it."""
        return Citation(self.source, self.locator)


@dataclass(frozen=True)
class Finding:
    """One criterion held against one reading: words for the limit and the reading, the outcome, the source."""

    criterion: str
    limit: str
    reading: str
    outcome: Outcome
    citations: tuple[Citation, ...]
    decides: bool = False

    def line(self) -> str:
        """The finding as one line of text."""
        return f"{self.criterion}: limit {self.limit}; found {self.reading}; {self.outcome}"

    def cells(self) -> tuple[str, ...]:
        """The finding as a row of CRITERIA_RESULT; a limit that is not the strictest does not decide."""
        outcome = self.outcome if self.decides else f"{self.outcome}; looser limit"
        return self.criterion, self.limit, self.reading, outcome, self.sources()

    def sources(self) -> str:
        """Where the limit stands, as a shop says it."""
        titles = {row["key"]: row["title"] for row in table("sources").rows}
        return "; ".join(short_citation(titles[c.source], c.locator) for c in self.citations)


def limit_of(row: Row, dimension: str) -> Limit:
    """The limit in a table row; percent and ratios are read as a fraction."""
    unit = row["unit"]
    if unit == "count":
        value, printed = number(row), row["value"]
    else:
        value = to_si(number(row), unit, dimension)
        gap = "" if unit in ("%", "deg") else " "
        printed = row["value"] + ("" if unit == "ratio" else f"{gap}{unit_text(unit)}")
    sense = _SENSES[row.get("sense", "out_at")]
    return Limit(value, printed, row["source"], row["locator"], row["checked"], sense)


def limits(table_name: str, items: str | Sequence[str], quantity: str, dimension: str) -> tuple[Limit, ...]:
    """Every limit for the given items and quantity, strictest first: of two at one value, the one that rejects at it."""
    wanted = (items,) if isinstance(items, str) else tuple(items)
    rows = [row for row in table(table_name).where(quantity=quantity) if row["item"] in wanted]
    return tuple(sorted((limit_of(row, dimension) for row in rows), key=strictness))


def strictness(limit: Limit) -> tuple[float, bool]:
    """What sorts limits on a reading that grows worse as it grows, the strictest first."""
    return limit.value_si, limit.sense == "out_over"


def _grouped(found: Sequence[Limit]) -> list[tuple[Limit, tuple[Citation, ...]]]:
    """Limits that print the same value, and reject alike at it, stand together, in the order given."""
    groups: dict[tuple[str, float, Sense], tuple[Limit, tuple[Citation, ...]]] = {}
    for limit in found:
        same = (limit.printed, limit.value_si, limit.sense)
        first, citations = groups.get(same, (limit, ()))
        groups[same] = (first, (*citations, limit.citation))
    return list(groups.values())


def _past(limit: Limit, reading_si: float) -> bool:
    """Whether a reading is out: at the limit too, unless its source rejects only what is over it."""
    if limit.sense == "out_over":
        return reading_si > limit.value_si * (1 + 1e-9)
    return reading_si >= limit.value_si * (1 - 1e-9) and reading_si > 0


def measured(
    criterion: str, found: Sequence[Limit], reading_si: float | None, reading_words: str
) -> tuple[Finding, ...]:
    """One finding for each different limit on a reading that grows worse as it grows; the strictest decides.

    `found` comes strictest first. A reading at its limit is out, unless the source rejects only what is over it. None:
    not measured.
    """
    findings = []
    for position, (limit, citations) in enumerate(_grouped(found)):
        if reading_si is None:
            outcome: Outcome = "not looked at"
        elif _past(limit, reading_si):
            outcome = "fail"
        elif reading_si > limit.value_si * NEAR_LIMIT:
            outcome = "near"
        else:
            outcome = "pass"
        findings.append(
            Finding(criterion, limit.printed, reading_words, outcome, citations, decides=position == 0)
        )
    return tuple(findings)


def at_least(
    criterion: str, found: Sequence[Limit], reading_si: float | None, reading_words: str, nominal_si: float
) -> tuple[Finding, ...]:
    """One finding for each different least value, the highest of which decides. `nominal_si` is the value when new."""
    strictest_first = sorted(found, key=lambda limit: -limit.value_si)
    findings = []
    for position, (limit, citations) in enumerate(_grouped(strictest_first)):
        if reading_si is None:
            outcome: Outcome = "not looked at"
        elif reading_si < limit.value_si * (1 - 1e-9):
            outcome = "fail"
        elif nominal_si - reading_si > NEAR_LIMIT * (nominal_si - limit.value_si):
            outcome = "near"
        else:
            outcome = "pass"
        findings.append(
            Finding(criterion, limit.printed, reading_words, outcome, citations, decides=position == 0)
        )
    return tuple(findings)


def seen(fault: str, limit: str, present: bool | None, *citations: Citation) -> Finding:
    """One finding on a fault that is looked for: present, not present, or (None) not looked for."""
    if present is None:
        return Finding(fault, limit, "not looked at", "not looked at", citations, decides=True)
    return Finding(
        fault,
        limit,
        "yes" if present else "no",
        "fail" if present else "pass",
        citations,
        decides=True,
    )


def rule(item: str, name: str) -> Citation:
    """Where a rule of tables/removal-criteria stands."""
    row = table("removal-criteria").one(item=item, rule=name)
    return Citation(row["source"], row["locator"])


def judge(findings: Iterable[Finding]) -> Verdict:
    """The verdict that the deciding findings add up to: any fail stops, anything not looked at leaves it unknown."""
    found = tuple(findings)
    verdicts: list[Verdict] = ["ok"]
    for finding in found:
        if finding.decides:
            verdicts.append(
                {"pass": "ok", "near": "caution", "not looked at": "unknown", "fail": "stop"}[finding.outcome]  # type: ignore[arg-type]  # the four outcomes map to four verdicts
            )
    return worst(*verdicts)


def steps_of(findings: Iterable[Finding]) -> tuple[Step, ...]:
    """The findings as lines of the working, each with its source."""
    return tuple(
        Step(
            finding.criterion,
            f"limit {finding.limit} ({finding.sources()})",
            f"found {finding.reading}",
            finding.outcome + (", decides" if finding.decides else ""),
        )
        for finding in findings
    )


def citations_of(findings: Iterable[Finding]) -> tuple[Citation, ...]:
    """Every source used, once."""
    return tuple(dict.fromkeys(citation for finding in findings for citation in finding.citations))


def counted(findings: Iterable[Finding]) -> dict[str, tuple[str, ...]]:
    """Criteria of the deciding findings by outcome."""
    by_outcome: dict[str, list[str]] = {"pass": [], "near": [], "fail": [], "not looked at": []}
    for finding in findings:
        if finding.decides and finding.criterion not in by_outcome[finding.outcome]:
            by_outcome[finding.outcome].append(finding.criterion)
    return {outcome: tuple(names) for outcome, names in by_outcome.items()}


def headline(part: str, findings: Sequence[Finding]) -> str:
    """The answer in words: what failed, what was not looked at, what is near."""
    by_outcome = counted(findings)
    failed, open_ = by_outcome["fail"], by_outcome["not looked at"]
    if failed:
        return f"Take this {part} out of use: {_listed(failed)}."
    if open_:
        return f"This {part} cannot be passed yet. Still to look at: {_listed(_to_look_at(open_))}."
    if by_outcome["near"]:
        return f"This {part} is inside every limit, but over halfway there: {_listed(by_outcome['near'])}."
    return f"This {part} is inside every limit that was checked. Its tag says what it may carry."


def decides(findings: Sequence[Finding], against: str = "") -> str:
    """What decides, for the large line: what failed (or `against`, a reason that no looking changes), else what is still
    to be looked at, else what is near its limit, else that all of it was looked at.
    """
    by_outcome = counted(findings)
    if against or by_outcome["fail"]:
        return f"Out: {_few([against] if against else by_outcome['fail'])}"
    if by_outcome["not looked at"]:
        return f"Look at {_few(_to_look_at(by_outcome['not looked at']))}"
    if by_outcome["near"]:
        return f"Near its limit: {_few(by_outcome['near'])}"
    return f"All {len(by_outcome['pass'])} looked at"


def _to_look_at(criteria: Sequence[str]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(LOOK_AT[criterion] for criterion in criteria))


def _few(names: Sequence[str]) -> str:
    """The first names, and how many there are besides."""
    if len(names) <= _NAMED:
        return _listed(names)
    return (
        f"{', '.join(name[:1].lower() + name[1:] for name in names[:_NAMED])} and {len(names) - _NAMED} more"
    )


def _listed(names: Sequence[str]) -> str:
    words = [name[:1].lower() + name[1:] for name in names]
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"


def cautions(part: str, verdict: Verdict, findings: Sequence[Finding]) -> tuple[Caution, ...]:
    """The cautions that fit the outcome."""
    by_outcome = counted(findings)
    found: list[Caution] = []
    if verdict == "stop":
        found.append(
            Caution(
                f"Do not use this {part} again, not for a light load. Cut it through or crush it, so that nobody takes it back from the bin.",
                "prohibition",
            )
        )
    if verdict == "unknown":
        found.append(
            Caution(
                f"Until every line is answered this {part} is out of use. Hang a tag on it that says so.",
                "mandatory",
            )
        )
    if by_outcome["near"]:
        found.append(
            Caution("Wear goes faster as it goes on. Measure again soon and write the reading down.", "note")
        )
    found.append(
        Caution(
            "Never weld, heat, grind, bend back or drill it. No measurement here brings altered hardware back; only its maker can.",
            "prohibition",
        )
    )
    found.append(
        Caution(
            "A crack can be too fine to see. Clean it, light it from the side; if in doubt have it tested by a qualified person. The maker's limits govern over these.",
            "warning",
        )
    )
    return tuple(found)


# ------------------------------------------------------------------------------------------ the record

SERVICE_INPUT = Input(
    "service", "Service", "choice", default="normal",
    choices=(Choice("normal", "Normal: now and then, inside the rating"), Choice("severe", "Severe: daily, dirty, hot or near the rating"),
             Choice("special", "Special: anything else")),
    help="Sets when it must be looked over again.",
)  # fmt: skip
DATE_INPUT = Input(
    "inspected_on",
    "Date of this inspection",
    "text",
    required=False,
    help="Year-month-day, such as 2026-11-24.",
)
DECIDES_RESULT = Result("decides", "What decides")
NEXT_RESULT = Result("next_inspection", "Next full inspection")
CRITERIA_RESULT = Result(
    "criteria", "Each criterion",
    columns=(("criterion", "Criterion"), ("limit", "Limit"), ("reading", "Reading"), ("outcome", "Outcome"), ("source", "Source")),
)  # fmt: skip


def next_inspection(given: Given) -> str:
    """When the part must be looked over again: a date where one was given, else the interval."""
    service = given.text("service")
    months = SERVICE_MONTHS.get(service)
    words = "as a qualified person says" if months is None else f"within {months} months"
    if not given.has("inspected_on"):
        return words
    try:
        inspected = datetime.date.fromisoformat(given.text("inspected_on"))
    except ValueError:
        raise given.refuse(
            "inspected_on", "is not a date that can be read. Give year-month-day, such as 2026-11-24."
        ) from None
    return words if months is None else f"by {_months_later(inspected, months).isoformat()}"


def _months_later(day: datetime.date, months: int) -> datetime.date:
    """The same day of the month so many months on, or the last day that month has."""
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    if year > datetime.MAXYEAR:
        return datetime.date.max
    for last in (day.day, 30, 29):
        try:
            return datetime.date(year, month + 1, last)
        except ValueError:
            continue
    return datetime.date(year, month + 1, 28)


def record(
    findings: Sequence[Finding], given: Given, verdict: Verdict, against: str = ""
) -> Mapping[str, str | list[str]]:
    """The results that every inspection shares: what decides, the criteria as lines, and the next date."""
    due = next_inspection(given)
    return {
        "decides": decides(findings, against),
        "criteria": [finding.line() for finding in findings],
        "next_inspection": due if verdict in ("ok", "caution") else "none: out of use",
    }


def tables(findings: Sequence[Finding]) -> Mapping[str, tuple[tuple[str, ...], ...]]:
    """The tables that every inspection shares: the criteria row by row."""
    return {"criteria": tuple(finding.cells() for finding in findings)}


def known(given: Given, name: str) -> bool | None:
    """Yes, no, or None where the box was left empty."""
    return given.flag(name) if given.has(name) else None


def unless(given: Given, name: str) -> bool | None:
    """The opposite of a yes-or-no box, or None where it was left empty."""
    return not given.flag(name) if given.has(name) else None


__all__ = [
    "CRITERIA_RESULT", "DATE_INPUT", "DECIDES_RESULT", "LOOK_AT", "NEXT_RESULT", "SERVICE_INPUT", "Finding", "Limit", "at_least", "cautions",
    "citations_of", "counted", "decides", "headline", "judge", "known", "limit_of", "limits", "measured",
    "next_inspection", "record", "rule", "seen", "steps_of", "strictness", "tables", "unless",
]  # fmt: skip
