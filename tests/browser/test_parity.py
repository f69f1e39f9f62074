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
from tests.browser.conftest import LIVE
from tests.random_inputs import changed

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
