"""May this job be done as it was worked out? The answers of its worksheets, each judged by itself, and held against each other.

The page of a job is a plan only where every worksheet that it needs was answered, none of them says stop or cannot be rated,
and they speak of one job: the rigging was worked out for no less than the load weighs, and its parts for no less than the
rigging pulls. Whatever is missing, refused or does not agree makes it no plan, with the reason. Worksheets that were named
after two jobs are none, and one that lacks the name of the others is careful at best. What the kit of this device says today
of a part that a worksheet names counts beside what the worksheet was told. Sentences stand in page/jobs.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from calc.answering import worksheet
from calc.comparing import exceeds
from calc.declaration import Worksheet
from calc.inputs import BadInput, Given, read_inputs
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, Verdict, caution, stop, unknown, verdict_of, within
from calc.records.jobs.slots import JOBS, Slot
from calc.records.kit.part import Part
from calc.records.kit.state import state_of
from calc.telling import reading, tell
from calc.words.facts import Absent, Listing, force, weight
from calc.words.writer import UnitSystem, Writer

ROUNDED = 0.005
"""A weight that was carried over was rounded: so much less counts as the same [-] (our own mark, no source)."""
ONE_LOAD = 1.5
"""Two weights further apart than this are those of two loads (our own mark, no source)."""


@dataclass(frozen=True)
class Typed:
    """What was typed in a worksheet, and the units that its bare numbers take."""

    inputs: Mapping[str, Any]
    units: UnitSystem


@dataclass(frozen=True)
class Worked:
    """One worksheet that was answered: its declaration, what was given and found, its verdict, and its answer in words."""

    slot: str
    sheet: Worksheet[Any]
    given: Given
    found: Any
    verdict: Verdict
    told: Mapping[str, Any]


@dataclass(frozen=True)
class Plan:
    """The page of a job. `worked`: its worksheets, in their order; `reasons`: why it is a plan or none."""

    job: str
    worked: tuple[Worked, ...]
    reasons: tuple[Reason, ...]

    @property
    def name(self) -> str:
        """What the reader calls the job; empty where no worksheet says."""
        return next((name for one in self.worked if (name := one.given.text("job"))), "")

    @property
    def verdict(self) -> Verdict:
        """The worst of all its worksheets and of what stands between them."""
        return verdict_of(self.reasons)

    @property
    def is_plan(self) -> bool:
        """Whether it may be printed as a plan."""
        return self.verdict in ("ok", "caution")


def plan(job: str, typed: Mapping[str, Typed], language: str = "en", kit: Sequence[Part] = ()) -> Plan:
    """The page of a job from what was typed in its worksheets, by their names; one that nothing was typed in is left out.
    `kit`: the parts that this device keeps under the numbers that the worksheets name.
    Worksheets of two orders of units are not read together: a bare number would be taken for another.
    """
    if len({one.units for one in typed.values()}) > 1:
        return Plan(job, (), (unknown("units-differ"),))
    worked: list[Worked] = []
    reasons: list[Reason] = []
    for slot in JOBS[job]:
        for name in slot.sheets:
            if name not in typed:
                continue
            title = Writer(language=language, scopes=(f"worksheets/{name}",)).text("title")
            try:
                one = _work(slot, name, typed[name], language)
            except (BadInput, OverflowError, ZeroDivisionError):
                reasons.append(unknown("sheet-refused", sheet=title))
                continue
            worked.append(one)
            reasons.append(_verdict(one, title))
        if slot.needed and not any(name in typed for name in slot.sheets):
            reasons.append(unknown(f"nothing-of-{slot.name}"))
    found = {one.sheet.name: one.found for one in worked}
    reasons += [*_lift(found), *_pull(found), *_names(worked, language), *_own_parts(worked, kit)]
    return Plan(job, tuple(worked), tuple(reasons))


def _work(slot: Slot, name: str, typed: Typed, language: str) -> Worked:
    sheet = worksheet(name)
    writer = Writer(typed.units, language, sheet.scopes)
    given = read_inputs(sheet.inputs, typed.inputs, reading(sheet, writer))
    told = tell(sheet, typed.inputs, typed.units, language)
    return Worked(slot.name, sheet, given, sheet.find(given), told["verdict"], told)


def _verdict(one: Worked, title: str) -> Reason:
    """What a worksheet's own verdict makes of the page."""
    if one.verdict == "ok":
        return within("sheet-within", sheet=title)
    if one.verdict == "caution":
        return caution("sheet-careful", sheet=title)
    if one.verdict == "stop":
        return stop("sheet-stop", sheet=title)
    return unknown("sheet-unknown", sheet=title)


# ---- one job, and the parts as they stand today


def _plain(text: str) -> str:
    """A name or number as it is compared: however it is spaced, in whatever letters."""
    return " ".join(text.split()).casefold()


def _names(worked: Sequence[Worked], language: str) -> Iterator[Reason]:
    """All worksheets are named after one job, or none is named."""
    named = [one for one in worked if one.given.has("job")]
    names = {_plain(one.given.text("job")): one.given.text("job") for one in named}
    if len(names) > 1:
        yield unknown("jobs-differ", names=Listing(tuple(names.values()), "semicolon"))
    if named:
        for one in worked:
            if one not in named:
                title = Writer(language=language, scopes=(one.sheet.scope,)).text("title")
                yield caution("job-not-named", sheet=title, name=named[0].given.text("job"))


def own_numbers(one: Worked) -> set[str]:
    """The numbers of the reader's own parts that a worksheet names, as they are compared."""
    rows = [
        one.given,
        *(row for given in one.sheet.inputs if given.columns for row in one.given.rows(given.name)),
    ]
    return {_plain(row.text("own_number")) for row in rows if row.has("own_number")}


def _own_parts(worked: Sequence[Worked], kit: Sequence[Part]) -> Iterator[Reason]:
    """What the kit says today of the parts that the worksheets name: they were told so once, and it may have changed."""
    named = {number for one in worked for number in own_numbers(one)}
    for part in kit:
        verdict = state_of(part).verdict
        if _plain(part.number) not in named or verdict == "ok":
            continue
        weigh = {"stop": stop, "unknown": unknown, "caution": caution}[verdict]
        yield weigh(f"own-part-now-{verdict}", number=part.number)


# ---- a lift: weight, rigging and parts are those of one load


def _lift(found: Mapping[str, Any]) -> Iterator[Reason]:
    weighed, path = found.get("load-weight"), found.get("load-path")
    rigging_kg = _loads_kg(found)
    if weighed is not None:
        for load_kg in rigging_kg:
            yield from _one_load("rigging", load_kg, weighed.weight_high_kg)
        if isinstance(weighed.centre_m, Absent):
            yield caution("balance-not-known")
    if path is None:
        return
    against_kg = [*rigging_kg, *([weighed.weight_high_kg] if weighed is not None else [])]
    if against_kg:
        yield from _one_load("parts", path.load_kg, max(against_kg))
    yield from _legs(found)


def _loads_kg(found: Mapping[str, Any]) -> list[float]:
    """The weight that each worksheet of the rigging was worked out for [kg]."""
    loads = []
    if "sling-legs" in found:
        loads.append(found["sling-legs"].load_kg)
    if "hanging-load" in found:
        loads.append(found["hanging-load"].load.weight_n / STANDARD_GRAVITY_M_PER_S2)
    return loads


def _one_load(what: str, load_kg: float, least_kg: float) -> Iterator[Reason]:
    facts = {"worked": weight(load_kg), "weighs": weight(least_kg, "demand")}
    if exceeds(least_kg, load_kg * (1.0 + ROUNDED)):
        yield stop(f"{what}-too-light", **facts)
    elif exceeds(load_kg, least_kg * ONE_LOAD):
        yield unknown(f"{what}-of-another-load", **facts)


def _legs(found: Mapping[str, Any]) -> Iterator[Reason]:
    """The parts that hang in the legs are in the list, and are pulled there no less than the rigging pulls."""
    pulls_n = []
    if "sling-legs" in found and found["sling-legs"].legs > 1:
        pulls_n.append(found["sling-legs"].leg_tension_n)
    if "hanging-load" in found and not isinstance(found["hanging-load"].worst_tension_n, Absent):
        pulls_n.append(found["hanging-load"].worst_tension_n)
    if not pulls_n:
        return
    in_legs = [part for part in found["load-path"].parts if part.item.legs > 1]
    if not in_legs:
        yield unknown("legs-not-listed")
        return
    least_n = min(part.pull_kg for part in in_legs) * STANDARD_GRAVITY_M_PER_S2
    if exceeds(max(pulls_n), least_n * (1.0 + ROUNDED)):
        yield stop("legs-pull-harder", rigging=force(max(pulls_n), "demand"), parts=force(least_n))


# ---- a pull: the log stayed under the highest force


def _pull(found: Mapping[str, Any]) -> Iterator[Reason]:
    trial, log = found.get("pull-trial"), found.get("trial-log")
    if trial is None or log is None or isinstance(trial.ceiling_n, Absent):
        return
    if exceeds(log.top_force_n, trial.ceiling_n):
        yield stop(
            "pulled-too-hard",
            pulled=force(log.top_force_n, "demand"),
            most=force(trial.ceiling_n, "capacity"),
        )


__all__ = ["ONE_LOAD", "ROUNDED", "Plan", "Typed", "Worked", "own_numbers", "plan"]
