"""The checked examples in the docstrings of calc hold."""

from __future__ import annotations

import doctest
import importlib
import pkgutil

import pytest

import calc

MODULES = sorted(
    found.name
    for found in pkgutil.walk_packages(calc.__path__, "calc.")
    if not found.name.endswith("__main__")
)


@pytest.mark.parametrize("name", MODULES)
def test_examples_hold(name: str) -> None:
    module = importlib.import_module(name)
    assert doctest.testmod(module, raise_on_error=False).failed == 0


def test_there_are_examples() -> None:
    finder = doctest.DocTestFinder()
    found = sum(
        bool(test.examples) for name in MODULES for test in finder.find(importlib.import_module(name))
    )
    assert found >= 60
