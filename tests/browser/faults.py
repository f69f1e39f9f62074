"""A host that fails in one chosen way, and what a page may come to: the right answer, or none with a reason.

One server serves all tests of a file; the fault is chosen before a page is opened.
"""

from __future__ import annotations

import gzip
import json
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

from playwright.sync_api import BrowserContext, Page

from build_scripts import serve
from build_scripts.sheet_form import example_fields
from calc.answering import answer, described

WAYS = ("missing", "cut", "flipped", "slow", "hanging")
"""Not found; the line breaks in the middle; one byte is another; comes late; never comes."""
SLOW_S = 1.5
STILL_S = 4
"""A page whose script has not come after so long counts as one whose script never comes."""
SHORT_LIMITS = {"stall": 2500, "arrive": 3500, "silent": 9000, "begin": 1500, "answer": 6000, "quick": 1e12}
"""Limits for the page's scripts, of time in milliseconds: what hangs is given up sooner than by a reader's phone. No line is
quick, so that a first visit takes the library."""
QUICK_LINE = "linkwrightLimits.quick = 0;"
"""Any line is."""
TYPED = "9,137 lb"
"""A load that is no example's."""


@dataclass(frozen=True)
class Fault:
    """One file, by the end of its address, and what is wrong with it."""

    file: str
    way: str


class Host:
    """A server whose fault can be chosen."""

    def __init__(self) -> None:
        self.address = ""
        self.fault: Fault | None = None
        self.policy = serve.CONTENT_POLICY
        self._over = threading.Event()

    def hits(self, path: str) -> str:
        """What is wrong with a file: one of WAYS, or nothing."""
        is_meant = self.fault is not None and urlsplit(path).path.endswith(self.fault.file)
        return self.fault.way if self.fault and is_meant else ""

    @contextmanager
    def failing(self, file: str, way: str) -> Iterator[None]:
        """Let one file fail for a while; requests left hanging are dropped afterwards."""
        self.fault = Fault(file, way)
        try:
            yield
        finally:
            self.fault = None
            self._over.set()
            self._over = threading.Event()

    def wait(self) -> None:
        """Hold a request until the fault is over."""
        self._over.wait(60)


def flipped(data: bytes) -> bytes:
    """One byte in the middle is another, of the same kind: a text stays a text."""
    middle = len(data) // 2
    while not chr(data[middle]).isalnum() and len(data) > middle + 1:
        middle += 1
    return data[:middle] + (b"b" if data[middle : middle + 1] == b"a" else b"a") + data[middle + 1 :]


@contextmanager
def hosting(folder: Path) -> Iterator[Host]:
    """Serve a folder with faults to be chosen."""
    host = Host()

    class Faulty(serve.Handler):
        """Fails as the host says."""

        policy = property(lambda self: host.policy)

        def file(self) -> Path | None:
            return None if host.hits(self.path) == "missing" else super().file()

        def content(self, path: Path, squeeze: bool) -> bytes:
            if host.hits(self.path) != "flipped":
                return super().content(path, squeeze)
            damaged = flipped(path.read_bytes())
            return gzip.compress(damaged, 1) if squeeze else damaged

        def send_content(self, data: bytes) -> None:
            way = host.hits(self.path)
            if way == "hanging":
                host.wait()
                self.close_connection = True
                return
            if way == "slow":
                time.sleep(SLOW_S)
            if way == "cut":
                self.wfile.write(data[: len(data) * 6 // 10])
                self.close_connection = True
                return
            super().send_content(data)

    Faulty.folder = folder
    server = serve.Server(("127.0.0.1", 0), Faulty)
    thread = threading.Thread(target=server.serve_forever, daemon=True)
    thread.start()
    host.address = f"http://127.0.0.1:{server.server_port}/"
    try:
        yield host
    finally:
        server.shutdown()
        server.server_close()
        thread.join()


# ---- what a page shows, watched all the time

WATCH = """
(() => {
  globalThis.linkwrightLimits = LIMITS;
  globalThis.shownAnswers = [];
  const text = (place) => (place && place.checkVisibility() ? place.innerText.trim() : "");
  setInterval(() => {
    const sheet = document.querySelector("calc-sheet");
    if (!sheet) return;
    const box = sheet.querySelector('[name="load"]');
    for (const place of sheet.querySelectorAll("[data-answer], [data-foot]")) {
      const word = text(place.querySelector("[data-verdict-word]"));
      const isExample = text(place.querySelector(".example-mark")) !== "";
      if (!word || isExample) continue;
      const shown = JSON.stringify([box ? box.value : "", text(sheet.querySelector("[data-headline]"))]);
      if (!shownAnswers.includes(shown)) shownAnswers.push(shown);
    }
  }, 15);
})();
"""


def watch_answers(context: BrowserContext) -> None:
    """Note every verdict that stands unmarked on a page, with the load that stands in its box; and set short limits."""
    context.add_init_script(WATCH.replace("LIMITS", json.dumps(SHORT_LIMITS)))


def fields(load: str = TYPED) -> str:
    """The example of the sling sheet with another load, as an address has it."""
    first, *rest = example_fields(described("sling-legs")).split("&")
    assert first.startswith("load=")
    return "&".join(["load=" + load.replace(",", "%2C").replace(" ", "%20"), *rest])


def right_headline(load: str = TYPED) -> str:
    """What calc itself says."""
    given = {**described("sling-legs").example, "load": load}
    return str(answer("sling-legs", given, "us")["headline"])


STATE = """() => {
  const sheet = document.querySelector("calc-sheet");
  if (!sheet || document.readyState === "loading") return null;
  const shown = (place) => place && place.checkVisibility() && place.innerText.trim() !== "";
  const said = (selector) => [...sheet.querySelectorAll(selector)].filter(shown).map((one) => one.innerText.trim());
  const state = sheet.dataset.state, answer = sheet.dataset.answerState;
  const isStatic = state === "static";
  const isFinal = !isStatic || "fault" in sheet.dataset || !document.documentElement.classList.contains("js");
  const told = isStatic ? said(".not-started, .no-script") : state === "failed" || answer === "cleared" ? said("[data-state-note]") : [];
  const answered = state === "live" && answer === "answered";
  if (!answered && told.length === 0) return null;
  return {
    state, answered, isFinal, told, verdicts: said("[data-verdict-word]"), marks: said(".example-mark"),
    live: [...sheet.querySelectorAll("[data-live]")].map((one) => one.textContent.trim()).join(" "),
    bar: said("[data-foot]").join(" "), inputs: said("[data-inputs]").join(" "),
  };
}"""


def state_of(page: Page) -> dict[str, Any] | None:
    """What the worksheet has come to, or nothing while it is still on its way."""
    found: dict[str, Any] | None = page.evaluate(STATE)
    return found


def as_text(headline: str) -> str:
    """A headline with single blanks."""
    return " ".join(headline.split())


def check_shown(page: Page, load: str = TYPED) -> None:
    """Every verdict that ever stood on the page unmarked was the right one to what stood in the box."""
    for shown in page.evaluate("shownAnswers"):
        typed, headline = json.loads(shown)
        assert typed == load, shown
        assert as_text(headline) == as_text(right_headline(load)), shown


def end_of(page: Page, load: str = TYPED, patience_s: float = 45) -> str:
    """How it ended: "answer" or the reason. Anything else fails: those two are the only allowed ends."""
    begun = time.monotonic()
    found = None
    # A script that is still on its way may yet come.
    while found is None or not (found["isFinal"] or time.monotonic() > begun + STILL_S):
        assert time.monotonic() < begun + patience_s, "neither an answer nor a reason"
        page.wait_for_timeout(50)
        found = state_of(page)
    if found["answered"]:
        check_shown(page, load)
        assert as_text(page.locator("[data-headline]").inner_text()) == as_text(right_headline(load))
        assert page.input_value('[name="load"]') == load
        return "answer"
    check_shown(page, load)
    assert len(found["verdicts"]) == len(found["marks"]), found
    if found["marks"]:
        assert found["state"] == "static", found
        assert found["inputs"], found
    reason = str(found["told"][0])
    assert "[object" not in reason
    assert "undefined" not in reason
    assert len(reason) > 60, reason
    return reason
