"""A browser and a served copy of the built site, for tests that look at what a reader sees.

The site is built once for all of them. It is served with the strict content policy of the project's own server, and
every request a page makes is watched: one to another host fails the test.
"""

from __future__ import annotations

import datetime
import os
import shutil
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import (
    Browser,
    BrowserContext,
    FloatRect,
    Locator,
    Page,
    Playwright,
    Route,
    expect,
)

from build_scripts import serve
from build_scripts.sheet_form import example_fields
from calc.answering import described

# A busy machine may be slow; no test here is about time.
expect.set_options(timeout=60_000)

LIVE = 'calc-sheet[data-state="live"]'
ANSWERED = f'{LIVE}[data-answer-state="answered"]'


def own(name: str) -> str:
    """The address of a worksheet filled with its example's values as if the reader had typed them. An address keeps a day as
    the calendar has it.
    """
    fields = example_fields(described(name)).replace("=today", f"={datetime.date.today()}")
    return f"work-out/{name}.html#{fields}"


def example(name: str) -> str:
    """The address of a worksheet that shows its example, marked as such."""
    return f"work-out/{name}.html#example"


def rect(element: Locator) -> FloatRect:
    """Where an element stands in the window."""
    found = element.bounding_box()
    assert found is not None, "the element is not shown"
    return found


def on_disk(site: Path, address: str) -> str:
    """The address of a page in the folder, opened from disk."""
    page, mark, fragment = address.partition("#")
    return (site / page).as_uri() + mark + fragment


@contextmanager
def serving(folder: Path, policy: str = serve.CONTENT_POLICY) -> Iterator[str]:
    """Serve a folder on this machine; gives its address, with a slash at the end."""
    server, thread = serve.start(0, folder, policy)
    try:
        yield f"http://127.0.0.1:{server.server_address[1]}/"
    finally:
        server.shutdown()
        server.server_close()
        thread.join()


@pytest.fixture(scope="session")
def served(site: Path) -> Iterator[str]:
    """The address of the served site."""
    with serving(site) as address:
        yield address


@pytest.fixture
def own_site(site: Path, tmp_path: Path) -> Path:
    """A copy of the site that a test may damage."""
    copy = tmp_path / "site"
    shutil.copytree(site, copy)  # real copies: the built runtime shares its files with the build's cache
    return copy


COMPILED_ONCE = "--js-flags=--liftoff-only"
"""Chromium compiles the interpreter once, in a hurry, and not a second time with care while a page is looked at: a third of
what a start of Python costs. Compiled both ways it is in `test_parity.py`, in `tests/engines` and in the bench.
"""
LEFT_OUT_BY_PLAYWRIGHT = (
    "AvoidUnnecessaryBeforeUnloadCheckSync",
    "DestroyProfileOnBrowserClose",
    "HttpsUpgrades",
    "HttpsFirstBalancedModeAutoEnable",
    "LensOverlay",
    "MediaRouter",
    "PaintHolding",
    "ThirdPartyStoragePartitioning",
    "AvoidCorsURLLoaderRestartOnRedirect",
    "TcpPortRandomizationWin",
    "OptimizationHints",
    "NetworkTimeServiceQuerying",
    "AimEnabled",
    "PreconnectToSearch",
)
LEFT_OUT_BY_US = ("WebUIOmniboxPopup", "WebUIOmniboxAimPopup")
"""Lists under the address bar, which a tester's browser never opens: Chromium loads a page of its own for each, with a process,
in every new window (half of what opening a page without scripts costs). A list of such parts replaces the one that Playwright
gives, so that one stands here too.
"""
BARE = f"--disable-features={','.join((*LEFT_OUT_BY_PLAYWRIGHT, *LEFT_OUT_BY_US))}"


def launched(
    playwright: Playwright, without: Sequence[str] = (), settings: Sequence[str] = (COMPILED_ONCE, BARE)
) -> Browser:
    """Chromium: the one named in LINKWRIGHT_CHROMIUM, else the one on PATH, else the driver's own.

    `without` names settings that the driver would give it.
    """
    path = os.environ.get("LINKWRIGHT_CHROMIUM") or shutil.which("chromium")
    return playwright.chromium.launch(
        executable_path=path, args=["--no-sandbox", *settings], ignore_default_args=list(without)
    )


@pytest.fixture(scope="session")
def browser(playwright: Playwright) -> Iterator[Browser]:
    """The browser of all tests."""
    started = launched(playwright)
    yield started
    started.close()


def hold(page: Page, pattern: str) -> list[Route]:
    """Leave requests for an address unanswered; gives the list of those held."""
    held: list[Route] = []

    def keep(route: Route) -> None:
        held.append(route)

    page.route(pattern, keep)
    return held


class Watch:
    """What pages asked for and what went wrong in them."""

    def __init__(self) -> None:
        self.requests: list[str] = []
        self.errors: list[str] = []

    def follow(self, context: BrowserContext) -> None:
        """Watch everything in a browser context, its workers' requests too."""
        context.on("request", lambda request: self.requests.append(request.url))
        context.on("weberror", lambda error: self.errors.append(str(error.error)))

    def elsewhere(self) -> list[str]:
        """Requests that left this machine."""
        return [
            url
            for url in self.requests
            if not url.startswith(("http://127.0.0.1:", "file://", "data:", "blob:"))
        ]


@pytest.fixture
def watch() -> Watch:
    """A fresh watch."""
    return Watch()


@contextmanager
def watched(browser: Browser, **options: Any) -> Iterator[BrowserContext]:
    """A watched browser context that the tests of a file share; a request to another host fails the last of them."""
    watch = Watch()
    context = browser.new_context(**options)
    context.set_default_timeout(60_000)
    watch.follow(context)
    yield context
    context.close()
    assert watch.elsewhere() == []


PYTHON_NEVER_STARTS = """globalThis.Worker = class extends EventTarget { postMessage() {} terminate() {} };
globalThis.linkwrightLimits = { arrive: 1e8, silent: 1e8, stall: 1e8 };"""
"""Set before a page's scripts where only what stands on the page is looked at: a worksheet stays as it is while Python
starts, on a fast machine and on a slow one.
"""


KEEPS_NOTHING = "if (navigator.serviceWorker) navigator.serviceWorker.register = () => new Promise(() => {});"
"""Set before a page's scripts where keeping the book for use without a network is not the matter: after the first answer the
page would take all of it (as much again as its start costs). It stays as it is while that goes on.
"""
NO_LINE_IS_QUICK = "globalThis.linkwrightLimits = {quick: 1e12};"
"""Set before a page's scripts where a first visit is to take the library, however quick this machine is."""


@pytest.fixture
def before_scripts() -> str:
    """What runs in every page before its own scripts: nothing, but in files that say so."""
    return ""


@pytest.fixture
def new_context(
    browser: Browser, watch: Watch, before_scripts: str
) -> Iterator[Callable[..., BrowserContext]]:
    """Makes watched browser contexts, and closes them; a request to another host fails the test."""
    made: list[BrowserContext] = []

    def make(**options: Any) -> BrowserContext:
        context = browser.new_context(**options)
        context.set_default_timeout(60_000)
        if before_scripts:
            context.add_init_script(before_scripts)
        watch.follow(context)
        made.append(context)
        return context

    yield make
    for context in made:
        context.close()
    assert watch.elsewhere() == []


@pytest.fixture
def page(new_context: Callable[..., BrowserContext]) -> Page:
    """A page in a fresh profile."""
    return new_context().new_page()
