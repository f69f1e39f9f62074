"""One way to drive three engines: Chromium by Playwright, Firefox by WebDriver BiDi, WebKitGTK by W3C WebDriver.

Only what the tests of this folder need, and each step as near to a reader's hand as the engine's protocol allows: keys are
keys, clicks are clicks, Back is the browser's own.
"""

from __future__ import annotations

import base64
import json
import os
import re
import shutil
import subprocess
import tempfile
import time
import urllib.error
import urllib.request
from collections.abc import Callable
from contextlib import ExitStack
from pathlib import Path
from typing import Any, Literal, Protocol

from playwright.sync_api import Error as PlaywrightError
from playwright.sync_api import Playwright
from websockets.sync.client import ClientConnection, connect

WAIT_S = 180.0
"""A busy machine may be slow; no test here is about time."""
POLL_S = 0.05
WINDOW = (1000, 900)
Paper = Literal["Letter", "A4"]
PAPERS: tuple[Paper, ...] = ("Letter", "A4")
CENTIMETERS: dict[Paper, tuple[float, float]] = {"Letter": (21.59, 27.94), "A4": (21.0, 29.7)}
"""Width and height of the paper (ANSI X3.151 and ISO 216)."""


class EngineError(Exception):
    """What an engine answered in place of a result."""


class Missing(Exception):
    """The machine has no such engine; the message says what would bring it."""


class Engine(Protocol):
    """A browser with one page open."""

    name: str

    def open(self, address: str) -> None:
        """Go to an address and wait until it is loaded."""

    def run(self, expression: str) -> Any:
        """The value of a JavaScript expression in the page, awaited; what JSON can say of it."""

    def click(self, selector: str) -> None:
        """Click the first element."""

    def type_in(self, selector: str, text: str) -> None:
        """Type over what a box holds, key by key."""

    def back(self) -> None:
        """The browser's Back."""

    def described(self, selector: str) -> tuple[str, str]:
        """Role and name of an element as the engine tells them to a screen reader."""

    def printed(self, paper: Paper = "Letter") -> bytes | None:
        """The page as PDF on that paper; None where the engine's driver cannot print."""

    def close(self) -> None:
        """End the browser."""


def as_json(expression: str) -> str:
    """An expression whose value is the JSON of another's."""
    return f"(async () => JSON.stringify((await ({expression})) ?? null))()"


def wait_until(engine: Engine, expression: str, what: str) -> Any:
    """Ask the page until the expression is true; gives its value. A page that is just changing is asked again."""
    until = time.monotonic() + WAIT_S
    last: object = None
    while time.monotonic() < until:
        try:
            last = engine.run(expression)
        except EngineError as changing:
            last = changing
        if last and not isinstance(last, EngineError):
            return last
        time.sleep(POLL_S)
    raise AssertionError(f"{engine.name}: {what}; last seen: {last}")


def ended(process: subprocess.Popen[Any]) -> None:
    """End a process of ours, and wait for it."""
    process.terminate()
    try:
        process.wait(20)
    except subprocess.TimeoutExpired:
        process.kill()
        process.wait()


# ---- Chromium


class Chromium:
    """Chromium, by Playwright, its accessibility tree by the engine's own protocol."""

    name = "chromium"

    def __init__(self, playwright: Playwright) -> None:
        path = os.environ.get("LINKWRIGHT_CHROMIUM") or shutil.which("chromium")
        try:
            self._browser = playwright.chromium.launch(executable_path=path, args=["--no-sandbox"])
        except PlaywrightError as missing:
            raise Missing("no Chromium (Debian: apt install chromium)") from missing
        context = self._browser.new_context(viewport={"width": WINDOW[0], "height": WINDOW[1]})
        context.set_default_timeout(WAIT_S * 1000)
        self._page = context.new_page()
        self._tree = context.new_cdp_session(self._page)

    def open(self, address: str) -> None:
        self._page.goto(address)

    def run(self, expression: str) -> Any:
        try:
            return json.loads(self._page.evaluate(as_json(expression)))
        except PlaywrightError as refused:
            raise EngineError(str(refused)) from refused

    def click(self, selector: str) -> None:
        self._page.locator(selector).first.click()

    def type_in(self, selector: str, text: str) -> None:
        box = self._page.locator(selector).first
        box.fill("")
        box.press_sequentially(text)

    def back(self) -> None:
        self._page.go_back(wait_until="commit")

    def described(self, selector: str) -> tuple[str, str]:
        document = self._tree.send("DOM.getDocument", {"depth": 0})["root"]["nodeId"]
        node = self._tree.send("DOM.querySelector", {"nodeId": document, "selector": selector})["nodeId"]
        asked = {"nodeId": node, "fetchRelatives": False}
        (told,) = self._tree.send("Accessibility.getPartialAXTree", asked)["nodes"]
        return told["role"]["value"], told.get("name", {}).get("value", "")

    def printed(self, paper: Paper = "Letter") -> bytes | None:
        return self._page.pdf(format=paper, prefer_css_page_size=True)

    def close(self) -> None:
        self._browser.close()


MIDDLE = "document.querySelector(%s)?.scrollIntoView({block: 'center', behavior: 'instant'})"
"""Bring an element where no bar covers it."""


# ---- Firefox

SELECTED = """(selector) => {
  const box = document.querySelector(selector);
  box.scrollIntoView({block: "center"});
  box.focus();
  box.select?.();
}"""


class Firefox:
    """Firefox, by WebDriver BiDi over its own socket: no program between."""

    name = "firefox"

    def __init__(self) -> None:
        path = shutil.which("firefox-esr") or shutil.which("firefox")
        if not path:
            raise Missing("no Firefox (Debian: apt install firefox-esr)")
        self._close = ExitStack()
        profile = self._close.enter_context(tempfile.TemporaryDirectory(ignore_cleanup_errors=True))
        command = [path, "--headless", "--no-remote", "--remote-debugging-port=0", "--profile", profile]
        size = {"MOZ_HEADLESS_WIDTH": str(WINDOW[0]), "MOZ_HEADLESS_HEIGHT": str(WINDOW[1])}
        process = subprocess.Popen(
            command, env={**os.environ, **size}, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True
        )
        self._close.callback(ended, process)
        self._said = 0
        self._socket: ClientConnection = self._close.enter_context(
            connect(f"{self._address(process)}/session", max_size=None, ping_interval=None)
        )
        self._ask("session.new", capabilities={})
        self._page = self._ask("browsingContext.getTree")["contexts"][0]["context"]

    @staticmethod
    def _address(process: subprocess.Popen[str]) -> str:
        for line in process.stderr or ():
            if found := re.search(r"WebDriver BiDi listening on (ws://\S+)", line):
                return found[1]
        raise EngineError("Firefox ended before it listened")

    def _ask(self, method: str, **parameters: Any) -> Any:
        self._said += 1
        self._socket.send(json.dumps({"id": self._said, "method": method, "params": parameters}))
        while True:
            told = json.loads(self._socket.recv(timeout=WAIT_S))
            if told.get("id") != self._said:
                continue  # an event
            if told["type"] == "error":
                raise EngineError(f"{method}: {told['message']}")
            return told["result"]

    def open(self, address: str) -> None:
        self._ask("browsingContext.navigate", context=self._page, url=address, wait="complete")

    def run(self, expression: str) -> Any:
        told = self._ask(
            "script.evaluate",
            expression=as_json(expression),
            target={"context": self._page},
            awaitPromise=True,
        )
        if told["type"] != "success":
            raise EngineError(told["exceptionDetails"]["text"])
        return json.loads(told["result"]["value"])

    def _element(self, selector: str) -> str:
        located = self._ask(
            "browsingContext.locateNodes", context=self._page, locator={"type": "css", "value": selector}
        )
        if not located["nodes"]:
            raise EngineError(f"nothing is {selector}")
        return str(located["nodes"][0]["sharedId"])

    def _perform(self, source: dict[str, Any]) -> None:
        self._ask("input.performActions", context=self._page, actions=[source])

    def click(self, selector: str) -> None:
        self.run(MIDDLE % json.dumps(selector))
        there = {"type": "element", "element": {"sharedId": self._element(selector)}}
        steps = [
            {"type": "pointerMove", "x": 0, "y": 0, "origin": there},
            {"type": "pointerDown", "button": 0},
            {"type": "pointerUp", "button": 0},
        ]
        self._perform({"type": "pointer", "id": "hand", "actions": steps})

    def type_in(self, selector: str, text: str) -> None:
        self.run(f"({SELECTED})({json.dumps(selector)})")
        time.sleep(POLL_S)  # the page itself selects what a box holds a moment after it is entered
        keys = [{"type": kind, "value": key} for key in text for kind in ("keyDown", "keyUp")]
        self._perform({"type": "key", "id": "keys", "actions": keys})

    def back(self) -> None:
        self._ask("browsingContext.traverseHistory", context=self._page, delta=-1)

    def described(self, selector: str) -> tuple[str, str]:
        """The engine finds elements by role and name, but tells neither: those that fit are looked for."""
        wanted = self._element(selector)
        role = self._first_that_fits(wanted, ROLES, lambda role: {"role": role})
        named = self.run(
            f"[...(function* (e) {{ yield e.getAttribute('aria-label'); for (const l of e.labels ?? []) yield l.innerText; "
            f"yield e.innerText; yield ''; }})(document.querySelector({json.dumps(selector)}))].map((t) => (t ?? '').trim())"
        )
        return role, self._first_that_fits(wanted, named, lambda name: {"role": role, "name": name})

    def _first_that_fits(
        self, wanted: str, candidates: tuple[str, ...] | list[str], asked: Callable[[str], dict[str, str]]
    ) -> str:
        for candidate in candidates:
            locator = {"type": "accessibility", "value": asked(candidate)}
            found = self._ask("browsingContext.locateNodes", context=self._page, locator=locator)["nodes"]
            if candidate and any(node["sharedId"] == wanted for node in found):
                return candidate
        return ""

    def printed(self, paper: Paper = "Letter") -> bytes | None:
        width, height = CENTIMETERS[paper]
        asked = {"context": self._page, "page": {"width": width, "height": height}}
        return base64.b64decode(self._ask("browsingContext.print", **asked)["data"])

    def close(self) -> None:
        self._close.close()


ROLES = ("textbox", "button", "status", "region", "main", "link", "combobox", "radio", "table", "heading")
"""The roles that the tests ask for."""


# ---- WebKit


class WebKit:
    """WebKitGTK in its own small browser, by its driver, on a screen that nobody sees."""

    name = "webkit"

    def __init__(self) -> None:
        for program in ("WebKitWebDriver", "Xvfb"):
            if not shutil.which(program):
                raise Missing(
                    "no WebKit driver or screen for it (Debian: apt install webkit2gtk-driver xvfb)"
                )
        self._close = ExitStack()
        home = self._close.enter_context(tempfile.TemporaryDirectory(ignore_cleanup_errors=True))
        screen = self._screen()
        apart = {f"XDG_{kind}_HOME": str(Path(home) / kind.lower()) for kind in ("CACHE", "CONFIG", "DATA")}
        environment = {**os.environ, **apart, "DISPLAY": screen, "HOME": home, "GDK_BACKEND": "x11"}
        environment.pop("DBUS_SESSION_BUS_ADDRESS", None)
        port = free_port()
        driver = subprocess.Popen(
            ["WebKitWebDriver", f"--port={port}"],
            env=environment,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        self._close.callback(ended, driver)
        self._root = f"http://127.0.0.1:{port}"
        self._wait_for_driver()
        session = self._ask("POST", "/session", {"capabilities": {}})["sessionId"]
        self._root += f"/session/{session}"
        self._close.callback(self._ask, "DELETE", "")
        self._ask("POST", "/timeouts", {"script": int(WAIT_S * 1000)})
        self._ask("POST", "/window/rect", {"width": WINDOW[0], "height": WINDOW[1]})

    def _screen(self) -> str:
        reads, writes = os.pipe()
        server = subprocess.Popen(
            ["Xvfb", "-displayfd", str(writes), "-screen", "0", "1280x1000x24", "-nolisten", "tcp"],
            pass_fds=[writes],
            stderr=subprocess.DEVNULL,
        )
        os.close(writes)
        self._close.callback(ended, server)
        with os.fdopen(reads) as told:
            return f":{told.readline().strip()}"

    def _wait_for_driver(self) -> None:
        until = time.monotonic() + WAIT_S
        while True:
            try:
                self._ask("GET", "/status")
            except OSError:
                if time.monotonic() > until:
                    raise
                time.sleep(POLL_S)
            else:
                return

    def _ask(self, method: str, path: str, given: dict[str, Any] | None = None) -> Any:
        request = urllib.request.Request(
            self._root + path,
            method=method,
            data=None if given is None else json.dumps(given).encode(),
            headers={"Content-Type": "application/json"},
        )
        try:
            with urllib.request.urlopen(request, timeout=2 * WAIT_S) as response:
                return json.load(response)["value"]
        except urllib.error.HTTPError as refused:
            raise EngineError(refused.read().decode()[:500]) from refused

    def open(self, address: str) -> None:
        self._ask("POST", "/url", {"url": address})

    def run(self, expression: str) -> Any:
        script = (
            f"const tell = arguments[0]; {as_json(expression)}"
            ".then((text) => tell({text}), (error) => tell({error: String(error)}));"
        )
        told = self._ask("POST", "/execute/async", {"script": script, "args": []})
        if "error" in told:
            raise EngineError(told["error"])
        return json.loads(told["text"])

    def _element(self, selector: str) -> str:
        found = self._ask("POST", "/element", {"using": "css selector", "value": selector})
        return str(next(iter(found.values())))

    def click(self, selector: str) -> None:
        self.run(MIDDLE % json.dumps(selector))
        self._ask("POST", f"/element/{self._element(selector)}/click", {})

    def type_in(self, selector: str, text: str) -> None:
        box = self._element(selector)
        self._ask("POST", f"/element/{box}/clear", {})
        self._ask("POST", f"/element/{box}/value", {"text": text})

    def back(self) -> None:
        self._ask("POST", "/back", {})

    def described(self, selector: str) -> tuple[str, str]:
        element = self._element(selector)
        role, name = (self._ask("GET", f"/element/{element}/computed{what}") for what in ("role", "label"))
        return str(role), str(name)

    def printed(self, paper: Paper = "Letter") -> bytes | None:
        return None

    def close(self) -> None:
        self._close.close()


def free_port() -> int:
    """A port that nobody listens on."""
    import socket

    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])
