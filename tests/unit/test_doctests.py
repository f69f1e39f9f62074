"""The checked examples in the docstrings of calc and of the explaining pages' formulas hold."""

from __future__ import annotations

import doctest
import importlib
import pkgutil

import pytest

import calc
from build_scripts import lessons

MODULES = sorted(
    found.name
    for package, name in ((calc, "calc."), (lessons, "build_scripts.lessons."))
    for found in pkgutil.walk_packages(package.__path__, name)
    if not found.name.endswith("__main__")
)
MODULES.append("tests.sharing")


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
