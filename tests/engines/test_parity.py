"""Every worksheet gives the same answers in each engine, served and from disk, as in this Python: 20 random inputs each.

`tests/browser/test_parity.py` compares ten times as many in Chromium.
"""

from __future__ import annotations

import functools
import json
from typing import Any

import pytest

from calc.answering import declared_names
from tests.browser.conftest import LIVE
from tests.browser.test_parity import ASK_ALL, RUNTIME_OF_PAGE, cases_of, differences_of
from tests.engines.drivers import Engine, wait_until
from tests.sharing import ENGINES

CASES = 20


@functools.cache
def cases() -> dict[str, list[dict[str, Any]]]:
    """The questions of every worksheet with this Python's answers."""
    return {name: cases_of(name, CASES) for name in declared_names()}


ROADS = [
    (engine, book)
    for engine in ENGINES
    for book in ("served", "from disk")
    if (engine, book) != ("chromium", "served")
]
"""Each engine on each road, but for the one on which `tests/browser/test_parity.py` compares more."""


@pytest.mark.parametrize(("engine", "book"), ROADS, indirect=True)
def test_every_worksheet_answers_as_python_here_does(engine: Engine, book: str) -> None:
    engine.open(f"{book}work-out/convert.html")
    wait_until(engine, f"document.querySelector('{LIVE}') !== null", "Python does not run")
    runtime = engine.run(RUNTIME_OF_PAGE)
    for name, asked in cases().items():
        assert len(asked) >= CASES
        requests = json.dumps([case["request"] for case in asked])
        there = engine.run(f"({ASK_ALL})({requests})")
        assert differences_of(asked, there, runtime) == [], name
