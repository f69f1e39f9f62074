"""The same inputs give the same answer in the browser's Python as in this one.

The browser runs another Python release on another processor and another mathematics library; this holds the two
against each other for random inputs made from each worksheet's own declaration: results to 1e-12, words and the
elements of the page exactly, and drawings to the tenth of a unit in which they are written.
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
from playwright.sync_api import Page, Playwright

from build_scripts.answer_view import view_json
from calc.answering import declared_names, worksheet
from tests.browser.conftest import BARE, LIVE, launched
from tests.random_inputs import changed

CASES = 200
TOLERANCE = 1e-12
COORDINATE = r"-?\d+\.\d+"
DRAWN = ("d", "cx", "cy", "r", "x", "y")
"""The attributes of a drawing that hold coordinates."""
ONE_DRAWN_STEP = 0.11
"""Coordinates are written in tenths of a drawing unit; one that lies half-way may be rounded either way."""


@pytest.fixture(scope="module")
def python_page(playwright: Playwright, served: str) -> Iterator[Page]:
    """A page with Python running, in a Chromium that compiles what runs often once more, as a reader's does."""
    browser = launched(playwright, settings=(BARE,))
    page = browser.new_context().new_page()
    page.goto(served + "work-out/convert.html")
    page.locator(LIVE).wait_for(state="attached")
    yield page
    browser.close()


def differences(here: Any, there: Any, path: str = "") -> list[str]:
    """Where two answers differ: in a value by more than the tolerance, in a drawing by more than a step, else at all."""
    if isinstance(here, dict) and isinstance(there, dict) and here.keys() == there.keys():
        return [found for key in here for found in differences(here[key], there[key], f"{path}.{key}")]
    if isinstance(here, list) and isinstance(there, list) and len(here) == len(there):
        pairs = enumerate(zip(here, there, strict=True))
        return [found for i, (one, two) in pairs for found in differences(one, two, f"{path}[{i}]")]
    if isinstance(here, float) and isinstance(there, (float, int)):
        close = math.isclose(here, there, rel_tol=TOLERANCE, abs_tol=TOLERANCE)
        return [] if close else [f"{path}: {here!r} here, {there!r} in the browser"]
    if path.endswith(".data-value"):
        return differences(value(here), value(there), path.removesuffix(".data-value"))
    if path.rpartition(".")[2] in DRAWN:
        (kept_here, at_here), (kept_there, at_there) = drawn(here), drawn(there)
        near = len(at_here) == len(at_there) and all(
            abs(one - two) <= ONE_DRAWN_STEP for one, two in zip(at_here, at_there, strict=True)
        )
        if kept_here == kept_there and near:
            return []
    return [] if here == there else [f"{path}: {here!r} here, {there!r} in the browser"]


def value(text: str) -> Any:
    """The value of a result as its element has it: a number, a list, or a text."""
    try:
        found = json.loads(text)
    except ValueError:
        return text
    return float(found) if isinstance(found, int) and not isinstance(found, bool) else found


def drawn(attribute: str) -> tuple[str, list[float]]:
    """An attribute of a drawing without its coordinates, and the coordinates."""
    coordinates = [float(number) for number in re.findall(COORDINATE, attribute)]
    return re.sub(COORDINATE, "#", attribute), coordinates


def cases_of(name: str, count: int = CASES) -> list[dict[str, Any]]:
    """Requests with this Python's answers."""
    sheet = worksheet(name)
    cases: list[dict[str, Any]] = []

    @settings(
        max_examples=count,
        database=None,
        derandomize=True,
        deadline=None,
        suppress_health_check=list(HealthCheck),
    )
    @given(inputs=changed(sheet.inputs, dict(sheet.example)), units=st.sampled_from(["us", "si"]))
    def collect(inputs: dict[str, Any], units: str) -> None:
        request = {"worksheet": name, "inputs": inputs, "units": units, "root": "../"}
        cases.append({"request": request, "here": json.loads(view_json(json.dumps(request)))})

    collect()
    return cases


RUNTIME_OF_PAGE = "linkwright.runtime"
"""The runtime that the page was built for, as its own script has it."""
ASK_ALL = """async (requests) => {
  const answers = [];
  for (const request of requests) answers.push(JSON.stringify(await linkwright.python.answer(request)));
  return answers;
}"""


def differences_of(cases: list[dict[str, Any]], there: list[str], runtime: str) -> list[str]:
    """Where the browser's answers differ from those here, each with its inputs.

    The name of the runtime stands in an answer that the browser's Python gave, and this Python has none: there it must
    be the runtime that the page was built for.
    """
    return [
        f"{case['request']['inputs']}: {difference}"
        for case, text in zip(cases, there, strict=True)
        for difference in differences(_of_runtime(case["here"], runtime), json.loads(text))
    ]


def _of_runtime(answer: dict[str, Any], runtime: str) -> dict[str, Any]:
    """The answer as that runtime would give it; a refusal names none."""
    return {**answer, "runtime": runtime} if "runtime" in answer else answer


@pytest.mark.parametrize("name", declared_names())
def test_browser_answers_as_python_here_does(name: str, python_page: Page) -> None:
    cases = cases_of(name)
    there = python_page.evaluate(ASK_ALL, [case["request"] for case in cases])
    assert len(cases) >= CASES
    answered = sum(case["here"]["ok"] for case in cases)
    assert answered >= CASES // 10, "too few of the random inputs can be answered for a fair comparison"
    runtime = python_page.evaluate(RUNTIME_OF_PAGE)
    assert re.fullmatch(r"[0-9a-f]{16}", runtime)
    assert differences_of(cases, there, runtime) == []
