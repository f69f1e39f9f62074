"""Measures how soon a worksheet answers, beside the same runtime started as published, in one run.

    python -m build_scripts.bench [--times 5] [--no-lighthouse] [--only-starts] [--only-kit]

Two baselines. "Stock": Pyodide as npm ships it, in a module worker, with calc as a wheel and the same first answer.
"Stock with Pint": the same with the units library of this project, its wheels unpacked, imported and its registry made,
as a page would do whose worksheets ran on Pint itself (here they run on factors frozen from it). All
times are from the start of the page's navigation to the answer, in headless Chromium with a fresh profile, from a
server on this machine that compresses with gzip. Medians. "Launched anew": the browser starts with the page, as no reader's
does; "running": it runs already, and the page gets a fresh profile or one that keeps the book. Firefox and WebKit stand
beside, without a baseline. These are goals, not tests: nothing fails here.
"""

from __future__ import annotations

import argparse
import contextlib
import json
import os
import shutil
import statistics
import subprocess
import sys
import tempfile
import threading
import time
import urllib.parse
import zipfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pint
from playwright.sync_api import BrowserContext, Page, Playwright, sync_playwright

from build_scripts import growth, serve
from build_scripts.runtime import gather
from build_scripts.runtime.ordinary import write_ordinary_road
from calc.answering import worksheet
from calc.records.kit.edit import edited

ROOT = Path(__file__).resolve().parent.parent
SITE = ROOT / "site"
PAGE = "work-out/sling-legs.html"
SHEET = f"{PAGE}#example"
FOUR_LEGS = "work-out/hanging-load.html#example"
FOUR_LEGS_PICKS = (
    (("0 in", "0 in", "24 in"), "62 in"), (("0 in", "31 in", "25 in"), "63 in"),
    (("47 in", "29 in", "23 in"), "61 in"), (("45 in", "1 in", "26 in"), "64 in"),
)  # fmt: skip
"""Four unlike legs: the search for the resting place, and each of them one link shorter in turn."""
LINE_BITS_PER_S = 9_000_000
LINE_DELAY_S = 0.060

STAMP = """
new MutationObserver(() => {
  if (globalThis.answeredAt === undefined && document.querySelector(
      'calc-sheet[data-state="live"][data-answer-state="answered"], html[data-stock="answered"]')) {
    globalThis.answeredAt = performance.now();
  }
}).observe(document, {subtree: true, childList: true, attributes: true});
"""

STOCK_WORKER = """
import { loadPyodide } from "./pyodide.mjs";
const python = await loadPyodide({ packages: ["linkwright"], packageBaseUrl: new URL("./", import.meta.url).href });
postMessage(python.runPython("from calc.answering import answer_json\\nanswer_json")(REQUEST));
"""
PINT_WORKER = """
import { loadPyodide } from "./pyodide.mjs";
const wheels = fetch("pint.zip").then((response) => response.arrayBuffer());
const python = await loadPyodide({ packages: ["linkwright"], packageBaseUrl: new URL("./", import.meta.url).href });
python.unpackArchive(await wheels, "zip", { extractDir: "/pint" });
python.runPython("import sys\\nsys.path.append('/pint')\\nimport pint\\npint.UnitRegistry()('3 ft').to('m')");
postMessage(python.runPython("from calc.answering import answer_json\\nanswer_json")(REQUEST));
"""
PINT_PACKAGES = ("pint", "flexcache", "flexparser", "platformdirs", "typing_extensions.py")
STOCK_PAGE = """<!doctype html><html lang="en"><meta charset="utf-8"><title>stock</title>
<link rel="icon" href="data:,"><script src="stock.js"></script></html>"""
STOCK_SCRIPT = """
const trusted = globalThis.trustedTypes?.createPolicy("linkwright", {createScriptURL: (address) => address});
const address = "stock-worker.mjs";
const worker = new Worker(trusted ? trusted.createScriptURL(address) : address, {type: "module"});
worker.onmessage = (event) => { if (JSON.parse(event.data).ok) document.documentElement.dataset.stock = "answered"; };
"""


@dataclass(frozen=True)
class Line:
    """One line of the report."""

    what: str
    measured: str
    goal: str
    met: bool | None = None


class SlowLine:
    """A line shared by all requests: a delay for each, and a limit on the bits that pass in a second."""

    def __init__(self, bits_per_s: float, delay_s: float) -> None:
        self.bits_per_s = bits_per_s
        self.delay_s = delay_s
        self._lock = threading.Lock()

    def send(self, write: Callable[[bytes], Any], data: bytes) -> None:
        """Pass data on as the line allows."""
        time.sleep(self.delay_s)
        piece = 16_384
        for start in range(0, len(data), piece):
            part = data[start : start + piece]
            with self._lock:
                time.sleep(len(part) * 8 / self.bits_per_s)
            write(part)


class CountingHandler(serve.Handler):
    """The project's own server, which also counts what it sends and can act as a slow line."""

    sent: dict[str, int]
    line: SlowLine | None = None

    def end_headers(self) -> None:
        """Wrap the body's writer once the headers are out."""
        super().end_headers()
        writer = self.wfile
        handler = self

        class Counted:
            def write(self, data: bytes) -> int:
                handler.sent[handler.path] = handler.sent.get(handler.path, 0) + len(data)
                if handler.line:
                    handler.line.send(writer.write, data)
                else:
                    writer.write(data)
                return len(data)

            def flush(self) -> None:
                writer.flush()

        self.wfile = Counted()  # type: ignore[assignment]  # only write and flush are used

    def _answer(self, with_body: bool) -> None:
        writer = self.wfile
        try:
            super()._answer(with_body)
        finally:
            self.wfile = writer


@contextlib.contextmanager
def served(folder: Path, line: SlowLine | None = None) -> Iterator[tuple[str, dict[str, int]]]:
    """Serve a folder; gives its address and the bytes sent by path."""
    sent: dict[str, int] = {}
    handler = type("BenchHandler", (CountingHandler,), {"folder": folder, "sent": sent, "line": line})
    server = serve.Server(("127.0.0.1", 0), handler)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    try:
        yield f"http://127.0.0.1:{server.server_address[1]}/", sent
    finally:
        server.shutdown()
        server.server_close()


@contextlib.contextmanager
def profile(playwright: Playwright, folder: Path) -> Iterator[BrowserContext]:
    """A Chromium with its profile in `folder`."""
    context = playwright.chromium.launch_persistent_context(
        str(folder), executable_path=chromium(), args=["--no-sandbox"], headless=True
    )
    context.add_init_script(STAMP)
    try:
        yield context
    finally:
        context.close()


def chromium() -> str | None:
    """The Chromium on PATH, or None for the driver's own."""
    return (
        os.environ.get("LINKWRIGHT_CHROMIUM") or shutil.which("chromium") or shutil.which("chromium-browser")
    )


def answered_after_s(page: Page, address: str, timeout_s: float = 90) -> float:
    """Open the address; seconds from navigation to the answer."""
    page.goto(address, wait_until="commit")
    page.wait_for_selector(
        'calc-sheet[data-state="live"][data-answer-state="answered"], html[data-stock="answered"]',
        timeout=timeout_s * 1000,
        state="attached",
    )
    return float(page.evaluate("globalThis.answeredAt")) / 1000


def make_stock(folder: Path) -> None:
    """The runtime as published, with calc as a wheel."""
    for name in ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "python_stdlib.zip"):
        shutil.copyfile(ROOT / "node_modules" / "pyodide" / name, folder / name)
    sources = folder / "sources"
    gather(ROOT, sources)
    write_ordinary_road(ROOT, folder, "0", sources)
    shutil.rmtree(sources)
    request = json.dumps(
        {"worksheet": "sling-legs", "inputs": dict(worksheet("sling-legs").example), "units": "us"}
    )
    (folder / "stock.html").write_text(STOCK_PAGE)
    (folder / "stock.js").write_text(STOCK_SCRIPT)
    (folder / "stock-worker.mjs").write_text(STOCK_WORKER.replace("REQUEST", json.dumps(request)))
    (folder / "pint.html").write_text(STOCK_PAGE.replace("stock.js", "pint.js"))
    (folder / "pint.js").write_text(STOCK_SCRIPT.replace("stock-worker", "pint-worker"))
    (folder / "pint-worker.mjs").write_text(PINT_WORKER.replace("REQUEST", json.dumps(request)))
    library = Path(pint.__file__).parent.parent
    with zipfile.ZipFile(folder / "pint.zip", "w", zipfile.ZIP_DEFLATED) as packed:
        for name in PINT_PACKAGES:
            found = library / name
            for path in [found] if found.is_file() else sorted(found.rglob("*")):
                if path.is_file() and path.suffix != ".pyc" and "testsuite" not in path.parts:
                    packed.write(path, path.relative_to(library))


def cold_s(playwright: Playwright, address: str, times: int) -> list[float]:
    """First visits, each with a fresh profile."""
    taken = []
    for _ in range(times):
        with tempfile.TemporaryDirectory() as folder, profile(playwright, Path(folder)) as context:
            taken.append(answered_after_s(context.new_page(), address))
    return taken


def running_first_s(playwright: Playwright, address: str, times: int) -> list[float]:
    """First visits, each with a fresh profile, in one browser that runs already."""
    taken = []
    browser = playwright.chromium.launch(executable_path=chromium(), args=["--no-sandbox"])
    for _ in range(times + 1):
        context = browser.new_context()
        context.add_init_script(STAMP)
        taken.append(answered_after_s(context.new_page(), address))
        context.close()
    browser.close()
    return taken[1:]  # the first one warmed the browser itself


def running_repeat_s(playwright: Playwright, address: str, times: int) -> list[float]:
    """Repeat visits in one browser that runs already and keeps the book."""
    taken = []
    with tempfile.TemporaryDirectory() as folder, profile(playwright, Path(folder)) as context:
        page = context.new_page()
        answered_after_s(page, address)
        page.wait_for_selector('html[data-offline="kept"]', timeout=60_000, state="attached")
        for _ in range(times + 1):
            page.close()
            page = context.new_page()
            taken.append(answered_after_s(page, address))
    return taken[1:]


SOON = """new Promise((tell) => {
  const look = () => document.querySelector('calc-sheet[data-state="live"][data-answer-state="answered"]')
    ? tell(performance.now()) : setTimeout(look, 4);
  look();
})"""


def other_engine_lines(times: int) -> list[Line]:
    """Firefox and WebKit: the first visit launched anew, then the same page again, then from disk."""
    from tests.engines.drivers import Engine, Firefox, Missing, WebKit, wait_until

    lines = []
    for make in (Firefox, WebKit):
        taken: dict[str, list[float]] = {
            "first visit, launched anew": [],
            "repeat visit, running": [],
            "from disk, running": [],
        }

        def visit(engine: Engine, what: str, address: str, taken: dict[str, list[float]] = taken) -> None:
            engine.open("about:blank")
            engine.open(address)
            taken[what].append(float(engine.run(SOON)) / 1000)

        try:
            for _ in range(times):
                engine = make()
                with served(SITE) as (address, _), contextlib.closing(engine):
                    visit(engine, "first visit, launched anew", address + SHEET)
                    if make is Firefox:
                        wait_until(engine, "document.documentElement.dataset.offline === 'kept'", "not kept")
                    visit(engine, "repeat visit, running", address + SHEET)
                    visit(engine, "from disk, running", f"{(SITE / PAGE).as_uri()}#example")
        except Missing as missing:
            lines.append(Line(make.name, str(missing), "-"))
            continue
        lines += [
            Line(f"{make.name}, {what}", f"{statistics.median(found):.2f} s", "-")
            for what, found in taken.items()
        ]
    return lines


def growth_lines() -> list[Line]:
    """How cost grows with what is asked, and with the book."""
    found = [*growth.growing(), *growth.of_the_book(ROOT, SITE)]
    return [Line(f"cost: {what}", told, "-") for what, told in found]


def repeat_s(playwright: Playwright, address: str, times: int) -> tuple[list[float], list[float], float]:
    """Repeat visits online and offline in one kept profile, and the seconds until the edition was kept."""
    online: list[float] = []
    offline: list[float] = []
    with tempfile.TemporaryDirectory() as folder:
        with profile(playwright, Path(folder)) as context:
            page = context.new_page()
            started = time.monotonic()
            answered_after_s(page, address)
            page.wait_for_selector('html[data-offline="kept"]', timeout=60_000, state="attached")
            kept_s = time.monotonic() - started
        for times_taken, is_offline in ((online, False), (offline, True)):
            for _ in range(times):
                with profile(playwright, Path(folder)) as context:
                    context.set_offline(is_offline)
                    times_taken.append(answered_after_s(context.new_page(), address))
    return online, offline, kept_s


def four_legs_address(site_address: str) -> str:
    """The hanging-load page with a load on four legs in its address."""
    given = {"centre[0]": "22 in", "centre[1]": "15 in", "centre[2]": "9 in"}
    for number, (place, length) in enumerate(FOUR_LEGS_PICKS):
        given |= {f"picks[{number}].at[{axis}]": side for axis, side in enumerate(place)}
        given[f"picks[{number}].length"] = length
    return f"{site_address}{FOUR_LEGS}#{urllib.parse.urlencode(given)}"


def keystrokes_ms(playwright: Playwright, address: str, count: int = 60) -> list[float]:
    """From a changed input to the new answer and figure on the page, frame included."""
    with tempfile.TemporaryDirectory() as folder, profile(playwright, Path(folder)) as context:
        page = context.new_page()
        answered_after_s(page, address)
        taken: list[float] = page.evaluate(
            """async (count) => {
              const box = document.querySelector('[name="load"]');
              const answer = document.querySelector('[data-headline]');
              const taken = [];
              for (let i = 0; i < count; i += 1) {
                const before = answer.textContent;
                const begun = performance.now();
                box.value = `${4000 + 137 * i} lb`;
                box.dispatchEvent(new Event('input', {bubbles: true}));
                while (answer.textContent === before || answer.textContent === '') {
                  await new Promise((resolve) => { const c = new MessageChannel(); c.port1.onmessage = resolve; c.port2.postMessage(0); });
                }
                taken.push(performance.now() - begun);
                await new Promise((resolve) => setTimeout(resolve, 60));
              }
              return taken;
            }""",
            count,
        )
    return taken


def zipped_bytes(folder: Path) -> int:
    """The size of the whole folder as a zip."""
    with tempfile.TemporaryFile() as file:
        with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as packed:
            for path in sorted(folder.rglob("*")):
                if path.is_file():
                    packed.write(path, path.relative_to(folder))
        return file.tell()


def wire_bytes(paths: list[Path]) -> tuple[int, int]:
    """Bytes of files as gzip (level 9) and as brotli (quality 11)."""
    script = (
        "const z=require('node:zlib'),f=require('node:fs');let g=0,b=0;"
        "for(const p of process.argv.slice(1)){const d=f.readFileSync(p);g+=z.gzipSync(d,{level:9}).length;"
        "b+=z.brotliCompressSync(d,{params:{[z.constants.BROTLI_PARAM_QUALITY]:11,[z.constants.BROTLI_PARAM_LGWIN]:24}}).length}"
        "console.log(JSON.stringify([g,b]))"
    )
    done = subprocess.run(
        ["node", "-e", script, *map(str, paths)], capture_output=True, text=True, check=True
    )
    gzip_bytes, brotli_bytes = json.loads(done.stdout)
    return gzip_bytes, brotli_bytes


def lighthouse_scores(address: str) -> dict[str, int]:
    """Lighthouse's scores (mobile) of one page, 0 to 100."""
    command = [
        str(ROOT / "node_modules" / ".bin" / "lighthouse"), address, "--quiet", "--output=json", "--output-path=stdout",
        "--chrome-flags=--headless=new --no-sandbox",
    ]  # fmt: skip
    environment = os.environ | {"CHROME_PATH": chromium() or ""}
    done = subprocess.run(command, capture_output=True, text=True, check=False, env=environment)
    if done.returncode != 0:
        raise RuntimeError(f"lighthouse failed: {done.stderr.strip()[-500:]}")
    report = json.loads(done.stdout)
    return {name: round(100 * (category["score"] or 0)) for name, category in report["categories"].items()}


@dataclass(frozen=True)
class Stock:
    """The two baselines [s]."""

    bare_s: float
    with_pint_s: float

    def lines(self, where: str) -> list[Line]:
        """The baselines themselves."""
        return [
            Line(f"stock runtime, first answer{where}", f"{self.bare_s:.2f} s", "baseline"),
            Line(f"stock with Pint, first answer{where}", f"{self.with_pint_s:.2f} s", "baseline"),
        ]

    def beside(self, what: str, taken: list[float], goal: float) -> list[Line]:
        """A time beside both baselines."""
        median = statistics.median(taken)
        return [
            Line(
                f"{what}, of {name}",
                f"{median:.2f} s = {median / base:.2f}",
                f"<= {goal:.2f}",
                median / base <= goal,
            )
            for name, base in (("stock", self.bare_s), ("stock with Pint", self.with_pint_s))
        ]


def stock_s(
    playwright: Playwright,
    address: str,
    times: int,
    measure: Callable[[Playwright, str, int], list[float]] = cold_s,
) -> Stock:
    """Both baselines, first visits."""
    return Stock(
        *(
            statistics.median(measure(playwright, f"{address}{page}.html", times))
            for page in ("stock", "pint")
        )
    )


def start_lines(playwright: Playwright, stock_folder: Path, times: int) -> list[Line]:
    """Starts: first visit, repeat visit, from disk, slow line."""
    disk = f"{(SITE / PAGE).as_uri()}#example"
    with served(stock_folder) as (address, _):
        stock = stock_s(playwright, address, times)
        running_stock = stock_s(playwright, address, times, running_first_s)
    with served(SITE) as (address, _):
        first = cold_s(playwright, address + SHEET, times)
        online, offline, kept_s = repeat_s(playwright, address + SHEET, times)
        running_first = running_first_s(playwright, address + SHEET, times)
        running_repeat = running_repeat_s(playwright, address + SHEET, times)
    from_disk = cold_s(playwright, disk, times)
    running_disk = running_first_s(playwright, disk, times)
    with served(stock_folder, SlowLine(LINE_BITS_PER_S, LINE_DELAY_S)) as (address, _):
        slow_stock = stock_s(playwright, address, 3)
    with served(SITE, SlowLine(LINE_BITS_PER_S, LINE_DELAY_S)) as (address, _):
        slow = cold_s(playwright, address + SHEET, 3)
    return [
        *stock.lines(", launched anew"),
        *stock.beside("first visit, launched anew", first, 0.40),
        *stock.beside("repeat visit, launched anew, online", online, 0.15),
        *stock.beside("repeat visit, launched anew, offline", offline, 0.15),
        *stock.beside("from disk, launched anew", from_disk, 0.35),
        *running_stock.lines(", running"),
        *running_stock.beside("first visit, running", running_first, 0.35),
        *running_stock.beside("repeat visit, running", running_repeat, 0.08),
        *running_stock.beside("from disk, running", running_disk, 0.30),
        Line("whole edition kept on the device after", f"{kept_s:.1f} s", "-"),
        *slow_stock.lines(", 9 Mbit/s, 60 ms"),
        *slow_stock.beside("first visit over 9 Mbit/s, 60 ms", slow, 0.70),
    ]


def answer_lines(playwright: Playwright) -> list[Line]:
    """From a keystroke to the answer."""
    lines = []
    with served(SITE) as (address, _):
        for words, sheet in (
            ("two even legs", address + SHEET),
            ("four uneven legs", four_legs_address(address)),
        ):
            taken = sorted(keystrokes_ms(playwright, sheet))
            middle, high = statistics.median(taken), taken[int(0.95 * len(taken))]
            what = f"keystroke to answer and figure, {words}"
            lines += [
                Line(f"{what}, median", f"{middle:.1f} ms", "<= 16 ms", middle <= 16),
                Line(f"{what}, 95th percentile", f"{high:.1f} ms", "<= 50 ms", high <= 50),
            ]
    return lines


FILL_KIT = """async ({row, count}) => {
  const db = await new Promise((resolve, reject) => {
    const opening = indexedDB.open("linkwright-kit");
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const writing = db.transaction("parts", "readwrite");
  for (let i = 0; i < count; i += 1) {
    const id = String(10_000_000 + i);
    const order = `2027-01-${String(1 + (i % 28)).padStart(2, "0")} P-${i}`;
    writing.objectStore("parts").put({ id, order, revision: 1, part: { ...row, id, number: `P-${i}` } });
  }
  await new Promise((resolve) => (writing.oncomplete = resolve));
  db.close();
}"""
SHOW_KIT = """async () => {
  const until = async (wanted) => {
    while (!document.querySelector(wanted)) await new Promise((resolve) => requestAnimationFrame(resolve));
  };
  location.hash = "add";
  await until("form.kit-form");
  const begun = performance.now();
  location.hash = "list";
  await until("[data-kit-rows]");
  return performance.now() - begun;
}"""
KIT_PARTS = 10_000


def kit_lines(playwright: Playwright, times: int = 15) -> list[Line]:
    """The list of a kit of ten thousand parts, from the address to the rows on screen; with ten parts beside it."""
    fields = {"number": "P-1", "kind": "chain-sling", "mark": "80", "size": "3/8", "condition": "marked-good"}
    row = edited(fields, None, "10000000", "", "us").to_data()
    lines = []
    with served(SITE) as (address, _):
        browser = playwright.chromium.launch(executable_path=chromium(), args=["--no-sandbox"])
        for count in (10, KIT_PARTS):
            page = browser.new_page()
            page.goto(f"{address}kit/index.html")
            page.wait_for_selector('[data-kit="shown"]', timeout=90_000)
            page.evaluate(FILL_KIT, {"row": row, "count": count})
            page.evaluate(SHOW_KIT)
            middle = statistics.median(page.evaluate(SHOW_KIT) for _ in range(times))
            lines.append(
                Line(
                    f"list of a kit of {count:,} parts, median",
                    f"{middle:.0f} ms",
                    "<= 100 ms",
                    middle <= 100,
                )
            )
            page.close()
        browser.close()
    return lines


SEARCH = """async (asked) => {
  const box = document.getElementById("find-box");
  const panel = document.querySelector('[data-answers-for="find-box"]');
  const begun = performance.now();
  box.focus();
  box.value = asked;
  box.dispatchEvent(new Event("input", {bubbles: true}));
  while (panel.hidden || !panel.querySelector("a")) await new Promise((resolve) => requestAnimationFrame(resolve));
  return performance.now() - begun;
}"""
ASKED = "3/8 grade 70 chain"
SLOW_PHONE = 4
"""How many times slower the processor is made."""


def search_lines(playwright: Playwright, times: int = 15) -> list[Line]:
    """The start of the search: from the first touch of the box, its scripts not yet there, to the first answer."""
    lines = []
    with served(SITE) as (address, _):
        browser = playwright.chromium.launch(executable_path=chromium(), args=["--no-sandbox"])
        for slower in (1, SLOW_PHONE):
            taken = []
            for _ in range(times):
                context = browser.new_context(service_workers="block")
                page = context.new_page()
                context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": slower})
                page.goto(f"{address}index.html", wait_until="load")
                taken.append(float(page.evaluate(SEARCH, ASKED)))
                context.close()
            what = "search, box touched to first answer" + (f", {slower} times slower" if slower > 1 else "")
            lines.append(Line(what, f"{statistics.median(taken):.0f} ms", "-"))
        browser.close()
    return lines


def size_lines() -> list[Line]:
    """Bytes before the first answer of a first visit on a line that is not quick, and the folder as a zip."""
    (runtime,) = (path for path in (SITE / "runtime").iterdir() if path.is_dir())
    before_answer = [
        runtime / name
        for name in ("python-worker.mjs", "python-engine.mjs", "pyodide.asm.wasm", "library.zip")
    ]
    gzip_bytes, brotli_bytes = wire_bytes(before_answer)
    zipped = zipped_bytes(SITE)
    return [
        Line(
            "runtime before the first answer, gzip",
            f"{gzip_bytes / 1e6:.2f} MB",
            "<= 6.5 MB",
            gzip_bytes <= 6.5e6,
        ),
        Line(
            "runtime before the first answer, brotli",
            f"{brotli_bytes / 1e6:.2f} MB",
            "<= 5 MB",
            brotli_bytes <= 5e6,
        ),
        Line("whole folder, zipped", f"{zipped / 1e6:.1f} MB", "<= 30 MB", zipped <= 30e6),
    ]


def build_lines() -> list[Line]:
    """A full build in this environment, the runtime made anew."""
    shutil.rmtree(ROOT / ".build" / "runtime", ignore_errors=True)
    started = time.monotonic()
    subprocess.run(
        [sys.executable, "-m", "build_scripts.build"], cwd=ROOT, check=True, stdout=subprocess.DEVNULL
    )
    taken = time.monotonic() - started
    return [Line("full build, warm environment", f"{taken:.1f} s", "<= 60 s", taken <= 60)]


def lighthouse_lines() -> list[Line]:
    """Lighthouse on one page of each kind."""
    explanation = next(iter(sorted((SITE / "understand").glob("*.html"))), None)
    pages = ["look-up/chain-tie-down.html", PAGE]
    if explanation:
        pages.append(explanation.relative_to(SITE).as_posix())
    lines = []
    with served(SITE) as (address, _):
        for page in pages:
            scores = lighthouse_scores(address + page)
            words = ", ".join(f"{name} {score}" for name, score in scores.items())
            lines.append(Line(f"Lighthouse, {page}", words, "each >= 95", min(scores.values()) >= 95))
    return lines


def main(arguments: list[str] | None = None) -> int:
    """Measure and print."""
    parser = argparse.ArgumentParser(
        description="Measure Linkwright's start, answers and sizes beside their goals."
    )
    parser.add_argument("--times", type=int, default=5, help="how often each start is measured (default 5)")
    parser.add_argument("--no-lighthouse", action="store_true", help="leave Lighthouse out")
    parser.add_argument(
        "--only-starts", action="store_true", help="measure only the starts, of the site as it stands"
    )
    parser.add_argument(
        "--only-kit",
        action="store_true",
        help="measure only the list of a large kit, of the site as it stands",
    )
    chosen = parser.parse_args(arguments)
    if chosen.only_kit:
        with sync_playwright() as playwright:
            return show(kit_lines(playwright))
    if chosen.only_starts:
        with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
            make_stock(Path(folder))
            lines = start_lines(playwright, Path(folder), chosen.times)
        return show([*lines, *other_engine_lines(chosen.times)])
    lines = build_lines()
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        make_stock(Path(folder))
        lines += start_lines(playwright, Path(folder), chosen.times)
        lines += answer_lines(playwright)
        lines += size_lines()
        lines += search_lines(playwright)
        lines += kit_lines(playwright)
    lines += other_engine_lines(chosen.times)
    lines += growth_lines()
    if not chosen.no_lighthouse:
        lines += lighthouse_lines()
    return show(lines)


def show(lines: list[Line]) -> int:
    """Print the report."""
    width = max(len(line.what) for line in lines)
    for line in lines:
        mark = {True: "met", False: "MISSED", None: ""}[line.met]
        print(f"{line.what:<{width}}  {line.measured:<34}  {line.goal:<18}  {mark}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
