"""Random inputs for a worksheet, made from its own declaration by changing its example."""

from __future__ import annotations

import math
from typing import Any

from hypothesis import strategies as st

from calc.inputs import Input


def numbers(declared: Input) -> st.SearchStrategy[str]:
    """Numbers around the bounds of an input, written as people write them; some lie outside."""
    low = declared.bounds.above if declared.bounds.above is not None else (declared.bounds.at_least or 0.0)
    high = declared.bounds.at_most if declared.bounds.at_most is not None else declared.bounds.below
    high = low + 1000.0 if high is None else min(high, low + 10_000.0)
    value = st.floats(low, high * 1.02 + 0.01, allow_nan=False).map(lambda number: f"{number:.6g}")
    whole = st.integers(math.floor(low), max(math.floor(low) + 1, min(int(high) + 1, 40))).map(str)
    return whole if declared.kind == "count" else st.one_of(value, whole)


def single(declared: Input, example: Any = None) -> st.SearchStrategy[Any]:
    """Something a reader might give for one input; rows are made by changing the example's."""
    if declared.kind == "choice":
        return st.sampled_from(list(declared.choices))
    if declared.kind == "flag":
        return st.sampled_from(["yes", "no"])
    if declared.kind == "date":
        return st.sampled_from(["2026-01-17", "17 Jan 2026", "1/17/2026", "5/6/2026", "2 Jan"])
    if declared.long:
        return pasted_log(str(example))
    if declared.kind == "text":
        words = ["", "3/8", "1/2", "10 mm", "38-5/8 in", "2.7 t", "1,350 psi", "31 kN", "G70", "hook", "M 12"]
        return st.sampled_from(words) if not example else st.sampled_from([*words, str(example)])
    if declared.kind == "file":
        return st.just("")
    if declared.kind == "rows":
        rows = list(example or [{}])
        few = st.lists(st.sampled_from(rows).flatmap(lambda row: changed(declared.columns, row)), max_size=5)
        return st.one_of(few, one_row_changed(declared, rows), st.just(rows[:-1] or rows))
    if declared.kind == "point":
        return st.lists(numbers(declared), min_size=3, max_size=3)
    if declared.kind == "numbers":
        return st.lists(numbers(declared), min_size=1, max_size=6).map("; ".join)
    return numbers(declared)


@st.composite
def pasted_log(draw: st.DrawFn, text: str) -> str:
    """A pasted log with some lines left out and one number written anew."""
    head, *lines = text.splitlines()
    kept = [line for line in lines if draw(st.integers(0, 9))] or lines
    place = draw(st.integers(0, len(kept) - 1))
    cells = kept[place].split("\t")
    cells[draw(st.integers(0, len(cells) - 1))] = f"{draw(st.floats(0, 3000, allow_nan=False)):.6g}"
    return "\n".join([head, *kept[:place], "\t".join(cells), *kept[place + 1 :]])


@st.composite
def one_row_changed(draw: st.DrawFn, declared: Input, rows: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """The example's rows with one of them changed."""
    place = draw(st.integers(0, len(rows) - 1))
    return [*rows[:place], draw(changed(declared.columns, rows[place])), *rows[place + 1 :]]


@st.composite
def changed(draw: st.DrawFn, inputs: tuple[Input, ...], example: dict[str, Any]) -> dict[str, Any]:
    """The example with up to three inputs changed or added."""
    given_inputs = dict(example)
    for declared in draw(st.lists(st.sampled_from(inputs), max_size=3, unique_by=lambda one: one.name)):
        given_inputs[declared.name] = draw(single(declared, example.get(declared.name)))
    return given_inputs
