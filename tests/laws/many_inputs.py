"""Very many random inputs over all worksheets: nothing breaks, nothing is not finite, no law is broken.

    nice -n 19 python -m tests.laws.many_inputs --count 1000000 --state FILE

Inputs are drawn as the laws draw them (tests/random_inputs.py), in batches from a seed of their own, worksheet after
worksheet in turn. Each drawn input is worked out; then one of its inputs is left out, and one is made larger, each worked
out as an input of its own, and the laws of tests/laws are asked of the three. Of every input that is answered all results
are searched for numbers that are not finite; one drawn input in eight is told in words too, in one of the two systems of
units. FILE keeps how many were tried and what was found; called again with the same FILE the run goes on from there.
"""

from __future__ import annotations

import argparse
import gc
import json
import math
import re
import traceback
import warnings
from collections.abc import Callable
from dataclasses import asdict, dataclass, field
from pathlib import Path
from random import Random
from typing import Any

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st

from calc.answering import Refused, answer, declared_names
from tests.laws.test_laws import (
    MORE,
    Settled,
    capacities_shown,
    forbidden_yet_careful,
    less_known,
    more_asked,
    random_inputs,
    settle,
)

DRAWN_AT_ONCE = 20
DRAWS = 25
"""A batch: so many draws, each of so many inputs, which is quicker than one by one."""
TOLD_IN_WORDS = 0.125
"""Share of the drawn inputs whose answer is told in words too."""
NOT_FINITE = re.compile(r"\b(nan|inf|infinity)\b", re.IGNORECASE)
MOST_KINDS = 1000
NUMBERS = json.JSONEncoder(allow_nan=False)


@dataclass
class State:
    """How far a run has come: inputs drawn, those tried (drawn, and made from these for the laws), those of them that were
    answered and not refused; and for each kind of fault of a worksheet its first input.
    """

    drawn: int = 0
    tried: int = 0
    answered: int = 0
    batches: int = 0
    faults: dict[str, str] = field(default_factory=dict)

    @classmethod
    def read(cls, file: Path) -> State:
        """The state kept in a file; a new one where there is none."""
        return cls(**json.loads(file.read_text(encoding="utf-8"))) if file.exists() else cls()

    def keep(self, file: Path) -> None:
        """Write the state down, whole."""
        made = file.with_suffix(".new")
        made.write_text(json.dumps(asdict(self), indent=1, ensure_ascii=False), encoding="utf-8")
        made.replace(file)


def told(name: str, raw: dict[str, Any]) -> bool:
    """Whether the reader gets an answer at all."""
    try:
        answer(name, raw)
    except Refused:
        return False
    return True


def said(name: str, raw: dict[str, Any], si: bool) -> list[str]:
    """What is wrong with the answer in words; nothing where it is refused."""
    try:
        record = answer(name, raw, "si" if si else "us")
    except Refused:
        return []
    record.pop("figure", None)
    found = NOT_FINITE.search(NUMBERS.encode(record))
    return [f"says {found.group()}"] if found else []


def not_finite(settled: Settled, raw: dict[str, Any]) -> list[str]:
    """Results that are not finite, and yet would be told: the reader is refused an answer that holds one."""
    found = []
    for result in settled.sheet.results:
        value = result.value_of(settled.found)
        values = value if isinstance(value, tuple) else (value,)
        if any(isinstance(one, float) and not math.isfinite(one) for one in values):
            found.append(f"{result.name} is not finite")
    return found if found and told(settled.sheet.name, raw) else []


def _faults(settled: Settled, raw: dict[str, Any]) -> list[str]:
    return [*not_finite(settled, raw), *capacities_shown(settled), *forbidden_yet_careful(settled)]


@dataclass
class Tried:
    """What was found of one drawn input, and of those made from it."""

    name: str
    state: State

    def settle(self, name: str, raw: dict[str, Any]) -> Settled | None:
        """The findings of an input, which is counted, and its numbers looked at."""
        self.state.tried += 1
        settled = settle(name, raw)
        self.state.answered += settled is not None
        for fault in () if settled is None else _faults(settled, raw):
            self.keep(fault, raw)
        return settled

    def keep(self, fault: str, raw: dict[str, Any]) -> None:
        """Write a fault down, if it is the first of its kind."""
        kind = f"{self.name}: {re.sub(r'[0-9.e+-]+', '#', fault)}"
        if kind not in self.state.faults and len(self.state.faults) < MOST_KINDS:
            self.state.faults[kind] = f"{fault} | {json.dumps(raw, ensure_ascii=False)}"

    def ask(self, raw: dict[str, Any], random: Random) -> None:
        """Ask everything of a drawn input."""
        self.state.drawn += 1
        if random.random() < TOLD_IN_WORDS:
            for fault in said(self.name, raw, random.random() < 0.5):
                self.keep(fault, raw)
        whole = self.settle(self.name, raw)
        if whole is None:
            return

        def one(places: list[Any]) -> list[Any]:
            return random.sample(places, 1)

        broken = less_known(self.name, raw, whole, one, self.settle)
        broken += more_asked(self.name, raw, whole, random.choice(MORE), one, self.settle)
        for fault in broken:
            self.keep(fault, raw)


def batch(name: str, number: int, state: State) -> None:
    """One batch of inputs of a worksheet, the same whenever it is run."""
    random, tried = Random(number), Tried(name, state)

    def some(raws: tuple[dict[str, Any], ...]) -> None:
        for raw in raws:
            try:
                tried.ask(raw, random)
            except Exception:
                tried.keep(traceback.format_exc(limit=-3), raw)

    quietly = settings(
        max_examples=DRAWS,
        database=None,
        deadline=None,
        phases=(Phase.generate,),
        suppress_health_check=list(HealthCheck),
    )
    drawn: Callable[[], None] = quietly(
        seed(number)(given(raws=st.tuples(*[random_inputs(name)] * DRAWN_AT_ONCE))(some))
    )
    drawn()


def main(count: int, file: Path) -> State:
    """Batches until so many inputs were tried; the state is kept after each."""
    warnings.simplefilter("ignore")
    state, names = State.read(file), declared_names()
    gc.freeze()
    gc.set_threshold(200_000)
    while state.tried < count:
        batch(names[state.batches % len(names)], state.batches, state)
        state.batches += 1
        state.keep(file)
    return state


if __name__ == "__main__":
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--count", type=int, default=1_000_000)
    parser.add_argument("--state", type=Path, required=True)
    asked = parser.parse_args()
    ended = main(asked.count, asked.state)
    print(
        f"{ended.drawn} drawn, {ended.tried} tried, {ended.answered} answered, {len(ended.faults)} kinds of fault"
    )
    print("\n".join(ended.faults.values()))
    raise SystemExit(1 if ended.faults else 0)
