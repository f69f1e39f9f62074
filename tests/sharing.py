"""Which tests go to one worker when several share them: those that prepare the same thing."""

from __future__ import annotations

import pytest
from xdist.scheduler import LoadScopeScheduling

ENGINES = ("chromium", "firefox", "webkit")
"""The engines that `tests/engines` drives; each of them is one worker's."""
EACH_APART = ("browser", "laws")
"""Folders whose tests may each go to another worker; elsewhere a file, and what it prepares once, stays together."""
PREPARED_ONCE = ("tests/browser/pages/test_longer_words.py",)
"""Files of those folders that stay together all the same: the book in another language is laid out once."""


def unit_of_work(test: str) -> str:
    """The name of what a test belongs to: all tests of one name go to one worker.

    >>> unit_of_work("tests/engines/test_parity.py::test_every_worksheet_answers[served-firefox]")
    'firefox'
    >>> unit_of_work("tests/data/test_tables.py::test_law[chain]")
    'tests/data/test_tables.py'
    >>> unit_of_work("tests/browser/test_parity.py::test_browser_answers[convert]")
    'tests/browser/test_parity.py::test_browser_answers[convert]'
    >>> unit_of_work("tests/browser/pages/test_longer_words.py::test_longer_words_stay_on_the_page[404.html]")
    'tests/browser/pages/test_longer_words.py'
    """
    path = test.partition("::")[0]
    folder = path.split("/")[1]
    if folder == "engines":
        return next((engine for engine in ENGINES if engine in test.partition("[")[2]), path)
    return test if folder in EACH_APART and path not in PREPARED_ONCE else path


def shared_out(config: pytest.Config, log: object) -> object:
    """A scheduler of pytest-xdist that shares the tests out by what they belong to. (Marks of groups do not reach the one
    that pytest-xdist 3.8 brings for them, with pytest 9.2: each worker prepared everything.)
    """
    scheduler = LoadScopeScheduling(config, log)
    scheduler._split_scope = unit_of_work
    return scheduler
