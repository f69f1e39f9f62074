"""What is not known is never taken kindly: laws over random inputs of every worksheet, held by its declaration alone.

An input that is part of the question (asks=True: how many legs, which hitch) is no knowledge: left out it is refused.

1. Less known is never better: leaving out an optional input never gives a better verdict, a larger capacity, a smaller
   demand or a later limit.
2. More is never better: a larger load, wear or heat (an input whose sense is demand) never gives a better verdict or a
   larger capacity; a larger rating (sense capacity) never a worse verdict.
3. Stop and unknown show no capacity that could be used, unless all that stops it is a comparison with that capacity.
4. What stands large never contradicts the verdict: it is no usable capacity where none may be shown.
"""

from __future__ import annotations

import copy
import os
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path as FilePath
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from calc.answering import declared_names, worksheet
from calc.declaration import Result, Worksheet
from calc.inputs import BadInput, Input, read_inputs
from calc.reasons import Reason, shows_capacity, verdict_of, worst_first
from calc.telling import reading
from calc.words.facts import Absent
from calc.words.writer import Writer
from tests.random_inputs import changed

CASES = int(os.environ.get("LINKWRIGHT_LAW_CASES", "60"))
"""Random inputs for each law and sheet; set the variable to look longer."""
ROUNDING = 1e-9
LEAVE = {"ok": 2, "caution": 1, "unknown": 0, "stop": 0}
"""How far a verdict gives leave to go on. Unknown gives no more than stop: a fault that is not known of is still there."""
FOLDER = FilePath(__file__).resolve().parent
MORE = (1.02, 1.5, 4.0)


Path = tuple[str | int, ...]


@dataclass(frozen=True)
class Settled:
    """What a worksheet makes of its inputs, without words."""

    sheet: Worksheet[Any]
    found: Any
    reasons: tuple[Reason, ...]

    @property
    def verdict(self) -> str:
        """The verdict of the reasons."""
        return verdict_of(self.reasons, self.sheet.rates)

    def number(self, result: Result) -> float | None:
        """A result that is one number; None for any other, and for none."""
        value = result.value_of(self.found)
        return float(value) if isinstance(value, (int, float)) and not isinstance(value, bool) else None


def settle(name: str, raw: dict[str, Any]) -> Settled | None:
    """The findings and reasons; None where the inputs are refused."""
    sheet = worksheet(name)
    try:
        given_inputs = read_inputs(sheet.inputs, raw, reading(sheet, Writer(scopes=sheet.scopes)))
        found = sheet.find(given_inputs)
        return Settled(sheet, found, sheet.judge(found))
    except (BadInput, OverflowError, ZeroDivisionError):
        return None  # refused in words, or as too large or too small a number (calc.answering)


def places(inputs: tuple[Input, ...], raw: dict[str, Any], before: Path = ()) -> Iterator[tuple[Input, Path]]:
    """Every input that was given, with where it stands; inside rows too."""
    for declared in inputs:
        value = raw.get(declared.name)
        if value in (None, "", []):
            continue
        yield declared, (*before, declared.name)
        if declared.columns and isinstance(value, list):
            for number, row in enumerate(value):
                yield from places(declared.columns, row, (*before, declared.name, number))


def with_value(raw: dict[str, Any], path: Path, value: Any) -> dict[str, Any]:
    """The inputs with one changed, or left out (None)."""
    made = copy.deepcopy(raw)
    inside: Any = made
    for at in path[:-1]:
        inside = inside[at]
    if value is None:
        del inside[path[-1]]
    else:
        inside[path[-1]] = value
    return made


def better(was: Settled, now: Settled) -> list[str]:
    """In what the second is better than the first: nothing, if the law holds."""
    found = []
    if LEAVE[now.verdict] > LEAVE[was.verdict]:
        found.append(f"verdict {was.verdict} -> {now.verdict}")
    for result in was.sheet.results:
        one, two = was.number(result), now.number(result)
        if two is None or result.sense == "plain" or result.printed:
            continue
        if one is None:
            if result.sense == "capacity":
                found.append(f"{result.name} none -> {two:.6g}")
            continue
        slack = ROUNDING * max(abs(one), abs(two), 1e-12)
        grows = result.sense in ("capacity", "out_at", "out_over")
        if (two > one + slack) if grows else (two < one - slack):
            found.append(f"{result.name} {one:.6g} -> {two:.6g}")
    return found


def sheets_of(law: str) -> list[str]:
    """The worksheets that a law is held for: all, but for those still listed in pending.txt."""
    listed = (FOLDER / "pending.txt").read_text(encoding="utf-8").split("\n")
    return [name for name in declared_names() if f"{law} {name}" not in listed]


def of_law(test: Any) -> Any:
    """Settings of a law: random inputs made from the declaration, the same at every run."""
    checks = list(HealthCheck)
    return settings(
        max_examples=CASES, database=None, derandomize=True, deadline=None, suppress_health_check=checks
    )(test)


def random_inputs(name: str) -> st.SearchStrategy[dict[str, Any]]:
    """The example with up to three inputs changed or added."""
    sheet = worksheet(name)
    return changed(sheet.inputs, dict(sheet.example))


Chosen = Callable[[list[tuple[Input, Path]]], list[tuple[Input, Path]]]
"""Which of the places of an input a law is asked of."""
Settle = Callable[[str, dict[str, Any]], Settled | None]
"""Works an input out."""


def every(found: list[tuple[Input, Path]]) -> list[tuple[Input, Path]]:
    """All of them."""
    return found


def less_known(
    name: str, raw: dict[str, Any], whole: Settled, chosen: Chosen = every, work_out: Settle = settle
) -> list[str]:
    """Where leaving out an input gives something better."""
    found = []
    given_at = list(places(whole.sheet.inputs, raw))
    for _declared, path in chosen(given_at) if given_at else []:
        less = work_out(name, with_value(raw, path, None))
        if less is not None and (kinder := better(whole, less)):
            found.append(f"without {path}: {kinder}")
    return found


def more_asked(
    name: str,
    raw: dict[str, Any],
    whole: Settled,
    factor: float,
    chosen: Chosen = every,
    work_out: Settle = settle,
) -> list[str]:
    """Where a larger demand, or a smaller capacity, gives something better."""
    sheet, found = whole.sheet, []
    given_inputs = read_inputs(sheet.inputs, raw, reading(sheet, Writer(scopes=sheet.scopes)))
    sensed = [
        (declared, path)
        for declared, path in places(sheet.inputs, raw)
        if declared.sense != "plain" and not path[1:] and _above_zero(given_inputs.values.get(declared.name))
    ]
    for declared, path in chosen(sensed) if sensed else []:
        value = given_inputs.values[declared.name]
        more = work_out(name, with_value(raw, path, f"{value * factor} {si_unit(declared)}"))
        if more is None:
            continue
        first, second = (whole, more) if declared.sense == "demand" else (more, whole)
        if kinder := better(first, second):
            found.append(f"{path} {value} x {factor}: {kinder}")
    return found


def _above_zero(value: Any) -> bool:
    return isinstance(value, float) and value > 0


def capacities_shown(whole: Settled) -> list[str]:
    """Capacities that could be used and are shown beside a stop or an unknown."""
    if not whole.sheet.rates or shows_capacity(whole.reasons):
        return []
    heavy = [one.code for one in whole.reasons if one.weight in ("stop", "unknown")]
    return [
        f"{one.name} is shown: {whole.verdict} by {heavy}"
        for one in whole.sheet.results
        if one.sense == "capacity" and not one.printed and whole.number(one) is not None
    ]


def forbidden_yet_careful(whole: Settled) -> list[str]:
    """What is forbidden, and yet weighs no more than a caution: Careful means that it fits (docs/about/how-to-use)."""
    return [
        f"{one.code} forbids and is a caution"
        for one in whole.reasons
        if one.weight == "caution" and one.sign == "prohibition"
    ]


@pytest.mark.parametrize("name", sheets_of("less_known_is_never_better"))
def test_less_known_is_never_better(name: str) -> None:
    @of_law
    @given(raw=random_inputs(name))
    def law(raw: dict[str, Any]) -> None:
        whole = settle(name, raw)
        assert whole is None or less_known(name, raw, whole) == []

    law()


@pytest.mark.parametrize("name", sheets_of("more_is_never_better"))
def test_more_is_never_better(name: str) -> None:
    @of_law
    @given(raw=random_inputs(name), factor=st.sampled_from(MORE))
    def law(raw: dict[str, Any], factor: float) -> None:
        whole = settle(name, raw)
        assert whole is None or more_asked(name, raw, whole, factor) == []

    law()


def si_unit(declared: Input) -> str:
    """The SI unit of an input's dimension, as people write it."""
    return SI.get(declared.dimension, "")


SI = {
    "length": "m",
    "weight": "kg",
    "force": "N",
    "angle": "deg",
    "temperature": "degC",
    "pressure": "Pa",
    "speed": "m/s",
    "fraction": "ratio",
}


@pytest.mark.parametrize("name", sheets_of("stop_and_unknown_show_no_capacity_that_could_be_used"))
def test_stop_and_unknown_show_no_capacity_that_could_be_used(name: str) -> None:
    @of_law
    @given(raw=random_inputs(name))
    def law(raw: dict[str, Any]) -> None:
        whole = settle(name, raw)
        assert whole is None or capacities_shown(whole) == []

    law()


@pytest.mark.parametrize("name", sheets_of("every_answer_is_told_and_names_what_leads"))
def test_every_answer_is_told_and_names_what_leads(name: str) -> None:
    @of_law
    @given(raw=random_inputs(name))
    def law(raw: dict[str, Any]) -> None:
        whole = settle(name, raw)
        if whole is None:
            return
        for result in whole.sheet.results:
            value = result.value_of(whole.found)
            values = value if isinstance(value, tuple) else (value,)
            assert None not in values, result.name
            assert all(isinstance(one, Absent) or one is not None for one in values)
        assert worst_first(whole.reasons)

    law()
