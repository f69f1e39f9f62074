"""Each engine once for all tests of this folder; each test in each engine, most of them served and from disk."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Playwright

from build_scripts import serve
from tests.engines.drivers import Chromium, Engine, Firefox, Missing, WebKit

KEEPING = ("chromium", "firefox")
"""Where keeping the book and printing it can be driven."""


@pytest.fixture(scope="session")
def started(playwright: Playwright) -> Iterator[Callable[[str], Engine]]:
    """Gives an engine by its name; each is started once."""
    running: dict[str, Engine] = {}

    def give(name: str) -> Engine:
        if name not in running:
            makers: dict[str, Callable[[], Engine]] = {
                "chromium": lambda: Chromium(playwright),
                "firefox": Firefox,
                "webkit": WebKit,
            }
            running[name] = makers[name]()
        return running[name]

    yield give
    for engine in running.values():
        engine.close()


@pytest.fixture
def engine(request: pytest.FixtureRequest, started: Callable[[str], Engine]) -> Engine:
    """The engine of the test, at rest. One that this machine lacks is a fault in CI, and said elsewhere."""
    try:
        found = started(request.param)
    except Missing as missing:
        if os.environ.get("CI"):
            pytest.fail(str(missing))
        pytest.skip(str(missing))
    found.open("about:blank")
    return found


@pytest.fixture(scope="session")
def engines_served(site: Path) -> Iterator[str]:
    """The address of the site on a server."""
    server, thread = serve.start(0, site)
    yield f"http://127.0.0.1:{server.server_address[1]}/"
    server.shutdown()
    server.server_close()
    thread.join()


@pytest.fixture(params=["served", "from disk"])
def book(request: pytest.FixtureRequest, site: Path, engines_served: str) -> str:
    """The address of the book: on a server, or in the folder."""
    return engines_served if request.param == "served" else f"{site.as_uri()}/"
