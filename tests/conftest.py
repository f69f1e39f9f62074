"""Settings and the two things that all tests share: the built site and the driver of Chromium."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings
from playwright.sync_api import Playwright, sync_playwright

from build_scripts import serve
from build_scripts.build import SITE, build
from tests.sharing import shared_out

# No test is timed: on a busy machine a slow example is no fault. The examples are the same in every run, so that a run that fails
# can be repeated; LINKWRIGHT_EXAMPLES=fresh looks for new ones.
settings.register_profile("same", deadline=None, derandomize=True)
settings.register_profile("fresh", deadline=None)
settings.load_profile(os.environ.get("LINKWRIGHT_EXAMPLES", "same"))


IN_ORDER = (
    "engines",
    "unit",
    "published",
    "commands",
    "independent",
    "browser",
    "pages",
    "data",
    "laws",
)
"""The order of the folders of tests: what is one worker's for long must not begin last (laws are many and short, each apart),
and what counts for the branches of calc goes before what does not, or a result that is kept would be kept unmeasured.
"""


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config: pytest.Config, log: object) -> object:
    """The tests are shared out by what they belong to, in the order in which they stand."""
    return shared_out(config, log)


UNMEASURED = ("browser", "laws", "pages", "data")
"""Folders whose tests count for no branch of calc: what runs by chance there, a test of the others names. (Measuring makes
Python slower by more than half.)"""
LONG_SECOND_METHODS = ("test_inspecting_by_reckoning.py", "test_straighten.py", "test_trial_log.py")
"""Files of `tests/independent` that count for none either: they ask the same a great many times, and `tests/unit` asks for each
of the branches. They go last of their folder."""


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Order the tests; what counts for no branch is not measured."""
    root = Path(__file__).resolve().parent

    def folder(item: pytest.Item) -> str:
        return item.path.relative_to(root).parts[0]

    def counts(item: pytest.Item) -> bool:
        is_long = folder(item) == "independent" and item.path.name in LONG_SECOND_METHODS
        return folder(item) not in UNMEASURED and not is_long

    items.sort(key=lambda item: (IN_ORDER.index(folder(item)), not counts(item)))
    for item in items:
        if not counts(item):
            item.add_marker(pytest.mark.no_cover)


@pytest.fixture(scope="session")
def site() -> Path:
    """The built site: the one that LINKWRIGHT_SITE names, else this checkout's, built when a source is newer."""
    if built := os.environ.get("LINKWRIGHT_SITE"):
        return Path(built)
    home = SITE / "index.html"
    if not home.is_file() or home.stat().st_mtime_ns < max(serve._stamp().values()):
        build(say=lambda line: None)
    return SITE


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    """The browser driver; a process can run it once."""
    with sync_playwright() as driver:
        yield driver
