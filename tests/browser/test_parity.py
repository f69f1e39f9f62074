"""The same inputs give the same answer in the browser's Python as in this one.

The browser runs another Python release on another processor and another mathematics library; this holds the two
against each other for random inputs made from each worksheet's own declaration: results to 1e-12, words exactly, and
drawings to the tenth of a unit in which they are written.
"""

from __future__ import annotations

import json
import math
import re
from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from playwright.sync_api import Browser, Page

from calc.answering import answer_json, declared_names, worksheet
from calc.inputs import Input
from tests.browser.conftest import LIVE

CASES = 200
TOLERANCE = 1e-12
COORDINATE = r"-?\d+\.\d+"
ONE_DRAWN_STEP = 0.11
"""Coordinates are written in tenths of a drawing unit; one that lies half-way may be rounded either way."""


@pytest.fixture(scope="module")
def python_page(browser: Browser, served: str) -> Iterator[Page]:
    """A page with Python running."""
    context = browser.new_context()
    page = context.new_page()
    page.goto(served + "work-out/convert.html")
    page.locator(LIVE).wait_for(state="attached")
    yield page
    context.close()


def numbers(declared: Input) -> st.SearchStrategy[str]:
    """Numbers around the bounds of an input, written as people write them; some lie outside."""
    low = declared.above if declared.above is not None else (declared.at_least or 0.0)
    high = declared.at_most if declared.at_most is not None else declared.below
    high = low + 1000.0 if high is None else min(high, low + 10_000.0)
    value = st.floats(low, high * 1.02 + 0.01, allow_nan=False).map(lambda number: f"{number:.6g}")
    whole = st.integers(math.floor(low), max(math.floor(low) + 1, min(int(high) + 1, 40))).map(str)
    return whole if declared.kind == "count" else st.one_of(value, whole)


def single(declared: Input, example: Any = None) -> st.SearchStrategy[Any]:
    """Something a reader might give for one input; rows are made by changing the example's."""
    if declared.kind == "choice":
        return st.sampled_from([choice.value for choice in declared.choices])
    if declared.kind == "flag":
        return st.sampled_from(["yes", "no"])
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


def differences(here: Any, there: Any, path: str = "") -> list[str]:
    """Where two answers differ by more than the tolerance."""
    if isinstance(here, dict) and isinstance(there, dict) and here.keys() == there.keys():
        return [found for key in here for found in differences(here[key], there[key], f"{path}.{key}")]
    if isinstance(here, list) and isinstance(there, list) and len(here) == len(there):
        pairs = enumerate(zip(here, there, strict=True))
        return [found for i, (one, two) in pairs for found in differences(one, two, f"{path}[{i}]")]
    if isinstance(here, float) and isinstance(there, (float, int)):
        close = math.isclose(here, there, rel_tol=TOLERANCE, abs_tol=TOLERANCE)
        return [] if close else [f"{path}: {here!r} here, {there!r} in the browser"]
    if path.endswith(".svg"):
        (lines_here, at_here), (lines_there, at_there) = drawn(here), drawn(there)
        if lines_here == lines_there:
            pairs = enumerate(zip(at_here, at_there, strict=True))
            return [
                f"{path}: coordinate {i} is {one} here, {two} in the browser"
                for i, (one, two) in pairs
                if abs(one - two) > ONE_DRAWN_STEP
            ]
    return [] if here == there else [f"{path}: {here!r} here, {there!r} in the browser"]


def drawn(svg: str) -> tuple[str, list[float]]:
    """A drawing without its coordinates, and the coordinates. Words keep their numbers: those are results."""
    coordinates: list[float] = []

    def keep(match: re.Match[str]) -> str:
        coordinates.extend(float(number) for number in re.findall(COORDINATE, match[0]))
        return re.sub(COORDINATE, "#", match[0])

    return re.sub(r'="[^"]*"', keep, svg), coordinates


def cases_of(name: str) -> list[dict[str, Any]]:
    """Requests with this Python's answers."""
    sheet = worksheet(name)
    cases: list[dict[str, Any]] = []

    @settings(
        max_examples=CASES,
        database=None,
        derandomize=True,
        deadline=None,
        suppress_health_check=list(HealthCheck),
    )
    @given(inputs=changed(sheet.inputs, dict(sheet.example)), units=st.sampled_from(["us", "si"]))
    def collect(inputs: dict[str, Any], units: str) -> None:
        request = {"worksheet": name, "inputs": inputs, "units": units}
        cases.append({"request": request, "here": json.loads(answer_json(json.dumps(request)))})

    collect()
    return cases


@pytest.mark.parametrize("name", declared_names())
def test_browser_answers_as_python_here_does(name: str, python_page: Page) -> None:
    cases = cases_of(name)
    there = python_page.evaluate(
        """async (requests) => {
          const answers = [];
          for (const request of requests) answers.push(JSON.stringify(await linkwright.python.answer(request)));
          return answers;
        }""",
        [case["request"] for case in cases],
    )
    assert len(cases) >= CASES
    answered = sum(case["here"]["ok"] for case in cases)
    assert answered >= CASES // 10, "too few of the random inputs can be answered for a fair comparison"
    found = [
        f"{case['request']['inputs']}: {difference}"
        for case, text in zip(cases, there, strict=True)
        for difference in differences(case["here"], json.loads(text))
    ]
    assert found == []
