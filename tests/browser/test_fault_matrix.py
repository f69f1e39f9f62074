"""Each part of the calculator, failing in each way: the page ends in the right answer, or in none with a reason.

Nothing else may be seen meanwhile either: `tests/browser/faults.py` notes every verdict that ever stood on the page.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page

from build_scripts import serve
from tests.browser.conftest import on_disk
from tests.browser.faults import (
    QUICK_LINE,
    TYPED,
    WAYS,
    Host,
    end_of,
    fields,
    flipped,
    hosting,
    state_of,
    watch_answers,
)

SLING = "work-out/sling-legs.html"
NewContext = Callable[..., BrowserContext]

ANSWER = "answer"
WITHOUT_SCRIPT = "NOT worked out"
UNSCRIPTED = "nothing here works out your own numbers"

SERVED: dict[tuple[str, str], str] = {
    # No early.js: the page as it was built, its answer marked as the example's.
    **{("scripts/early.js", way): UNSCRIPTED for way in ("missing", "cut")},
    ("scripts/early.js", "slow"): ANSWER,
    # The page's own script.
    **{("runtime/linkwright.js", way): WITHOUT_SCRIPT for way in ("missing", "cut", "flipped", "hanging")},
    ("runtime/linkwright.js", "slow"): ANSWER,
    # Without its worker Python runs in the page; without the library by the ordinary road.
    **{("python-worker.mjs", way): ANSWER for way in WAYS},
    **{("library.zip", way): ANSWER for way in WAYS},
    **{
        ("python-engine.mjs", way): "python-engine.mjs could not be fetched whole"
        for way in ("missing", "cut", "flipped")
    },
    ("python-engine.mjs", "hanging"): "did not start in time",
    ("python-engine.mjs", "slow"): ANSWER,
    **{("pyodide.asm.wasm", way): "pyodide.asm.wasm" for way in ("missing", "cut", "flipped")},
    ("pyodide.asm.wasm", "hanging"): "did not start in time",
    ("pyodide.asm.wasm", "slow"): ANSWER,
}


@pytest.fixture(scope="module")
def host(site: Path) -> Iterator[Host]:
    """One server for the whole file."""
    with hosting(site) as made:
        yield made


@pytest.fixture
def watched(new_context: NewContext) -> Page:
    """A page in which every verdict is noted; service workers are kept out, so that each part comes from the host."""
    context = new_context(service_workers="block")
    watch_answers(context)
    return context.new_page()


def open_filled(page: Page, address: str) -> None:
    """Open the sling sheet with a load of the reader's; where no script fills the boxes, type it."""
    page.goto(f"{address}{SLING}#{fields()}", wait_until="commit")
    page.locator("footer").wait_for(state="attached")
    page.wait_for_timeout(50)
    if page.get_attribute("calc-sheet", "data-state") == "static" and not page.input_value('[name="load"]'):
        page.fill('[name="load"]', TYPED)


@pytest.mark.parametrize(("file", "way"), SERVED)
def test_part_of_a_served_page(watched: Page, host: Host, file: str, way: str) -> None:
    page = watched
    with host.failing(file, way):
        open_filled(page, host.address)
        assert SERVED[file, way] in end_of(page)


@pytest.mark.parametrize("way", WAYS)
def test_memory_image_of_a_first_visit_on_a_quick_line(watched: Page, host: Host, way: str) -> None:
    page = watched
    page.add_init_script(QUICK_LINE)
    with host.failing("snapshot.bin", way):
        open_filled(page, host.address)
        assert end_of(page) == ANSWER
        if way in ("missing", "cut", "flipped"):
            assert page.evaluate("linkwright.python.started.road") == "library"
            assert "snapshot.bin" in page.evaluate("linkwright.python.dropped.join()")


def test_early_script_that_is_damaged_never_gives_a_wrong_answer(watched: Page, host: Host) -> None:
    """It has no check of its own, since it is the first: whatever it then does, no verdict is wrong."""
    page = watched
    with host.failing("scripts/early.js", "flipped"):
        open_filled(page, host.address)
        assert end_of(page)


# ---- the folder on disk


@pytest.fixture(scope="module")
def folder(site: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site's files under other names of the same content; a damaged one takes the place of the name alone."""
    copy = tmp_path_factory.mktemp("disk") / "site"
    shutil.copytree(site, copy, copy_function=_linked)
    return copy


def _linked(source: str, target: str) -> str:
    try:
        os.link(source, target)
    except OSError:
        shutil.copy2(source, target)
    return target


@pytest.mark.parametrize("way", ["missing", "cut", "flipped"])
@pytest.mark.parametrize("name", ["engine", "wasm", "library", "snapshot"])
def test_part_of_the_folder_on_disk(new_context: NewContext, folder: Path, name: str, way: str) -> None:
    context = new_context()
    watch_answers(context)
    page = context.new_page()
    (part,) = folder.glob(f"runtime/*/disk/{name}.js")
    whole = part.read_bytes()
    aside = part.with_suffix(".aside")
    part.rename(aside)
    if way != "missing":
        part.write_bytes(whole[: len(whole) * 6 // 10] if way == "cut" else flipped(whole))
    try:
        page.goto(on_disk(folder, f"{SLING}#{fields()}"), wait_until="commit")
        end = end_of(page)
    finally:
        aside.replace(part)
    # With a damaged memory image the library still answers; without the library the image does.
    assert "has not started" not in end
    answered = name == "library" or (name, way) == ("snapshot", "flipped")
    assert (ANSWER if answered else name) in end


# ---- the browser


def test_policy_without_webassembly(watched: Page, host: Host) -> None:
    host.policy = serve.CONTENT_POLICY.replace(" 'wasm-unsafe-eval'", "")
    try:
        open_filled(watched, host.address)
        assert "not allowed to use WebAssembly" in end_of(watched)
    finally:
        host.policy = serve.CONTENT_POLICY


def test_policy_that_demands_trusted_types(watched: Page, host: Host) -> None:
    """Named policy, no text that becomes code or markup: worksheet, page turn and drawing are as ever."""
    page = watched
    assert "require-trusted-types-for 'script'; trusted-types linkwright" in serve.CONTENT_POLICY
    page.add_init_script(
        "globalThis.violations = []; addEventListener('securitypolicyviolation', (event) => "
        "violations.push(`${event.violatedDirective} ${event.sourceFile} ${event.sample}`));"
    )
    open_filled(page, host.address)
    assert end_of(page) == ANSWER
    page.locator('a[href$="hanging-load.html"]').first.click()
    page.locator('calc-sheet[data-sheet="hanging-load"]').wait_for(state="attached")
    page.get_by_role("button", name="Show the example").click()
    page.locator('calc-sheet[data-answer-state="answered"] figure svg').wait_for()
    assert page.evaluate("violations") == []


def test_browser_without_custom_elements(watched: Page, host: Host) -> None:
    watched.add_init_script("delete globalThis.customElements;")
    open_filled(watched, host.address)
    assert "too old for the calculator" in end_of(watched)


def test_scripts_that_are_off(new_context: NewContext, host: Host) -> None:
    page = new_context(java_script_enabled=False).new_page()
    page.goto(host.address + SLING)
    page.fill('[name="load"]', TYPED)
    # A box that is typed in stands beside the text that nothing is worked out, wherever the page was moved to.
    page.locator('[name="legs"]').first.scroll_into_view_if_needed()
    page.mouse.wheel(0, 150)
    note = page.locator(".no-script:visible")
    assert UNSCRIPTED in note.inner_text()
    seen = note.bounding_box()
    assert seen is not None
    assert 0 <= seen["y"] < 400
    assert page.locator("[data-answer]").inner_text().upper().startswith("EXAMPLE:")
    assert page.locator("[data-inputs]").inner_text()


def test_storage_that_is_refused(watched: Page, host: Host) -> None:
    watched.add_init_script(
        """for (const name of ['localStorage', 'sessionStorage', 'caches', 'indexedDB']) {
          Object.defineProperty(globalThis, name, {get() { throw new DOMException('denied', 'SecurityError'); }});
        }"""
    )
    open_filled(watched, host.address)
    assert end_of(watched) == ANSWER


KEEP_WORKERS = """
  globalThis.madeWorkers = [];
  globalThis.Worker = class extends Worker { constructor(...given) { super(...given); madeWorkers.push(this); } };
"""


def test_worker_that_is_killed_while_it_waits(watched: Page, host: Host) -> None:
    page = watched
    page.add_init_script(KEEP_WORKERS)
    open_filled(page, host.address)
    assert end_of(page) == ANSWER
    page.evaluate("madeWorkers.at(-1).terminate()")
    page.fill('[name="load"]', "8,765 lb")
    page.wait_for_timeout(300)
    assert state_of(page) is None  # no answer meanwhile
    page.evaluate("shownAnswers.length = 0")
    assert end_of(page, "8,765 lb") == ANSWER
    assert page.evaluate("linkwright.python.workersMade") == 2


def test_question_that_wants_a_damaged_library(watched: Page, host: Host) -> None:
    """The text that brings the numbers back needs the library: without it there is no text, and the answer stands."""
    page = watched
    page.add_init_script(QUICK_LINE)
    with host.failing("library.zip", "flipped"):
        open_filled(page, host.address)
        assert end_of(page) == ANSWER
        assert "library.zip" in page.evaluate(
            "linkwright.python.answer({kit: 'list', parts: [], count: 0, due: 0}).catch((error) => error.message)"
        )
        page.fill('[name="load"]', "8,765 lb")
        page.locator('[data-headline]:has-text("5,0")').wait_for()
        page.evaluate("shownAnswers.length = 0")
        assert end_of(page, "8,765 lb") == ANSWER
        assert page.evaluate("linkwright.python.workersMade") == 1


def test_worker_that_is_killed_again_and_again(watched: Page, host: Host) -> None:
    page = watched
    page.add_init_script(KEEP_WORKERS)
    page.add_init_script(
        "Worker.prototype.postMessage = new Proxy(Worker.prototype.postMessage, {apply(post, worker, given) {"
        " if (given[0].kind === 'answer') worker.terminate(); return Reflect.apply(post, worker, given); }});"
    )
    open_filled(page, host.address)
    assert "no longer replies" in end_of(page)


# ---- a failure is not final


@pytest.mark.parametrize("way_back", ["button", "next page", "network", "edit"])
def test_it_is_tried_again(watched: Page, host: Host, way_back: str) -> None:
    """When asked, on the next page, when the network returns, and when a box is changed some seconds later."""
    page = watched
    with host.failing("pyodide.asm.wasm", "missing"):
        open_filled(page, host.address)
        assert "pyodide.asm.wasm" in end_of(page)
    load = TYPED
    if way_back == "button":
        page.get_by_role("button", name="Try again").click()
    elif way_back == "network":
        page.evaluate("dispatchEvent(new Event('online'))")
    elif way_back == "edit":
        page.evaluate("linkwright.python.failedAt -= 60_000")
        load = "8,765 lb"
        page.fill('[name="load"]', load)
    else:
        page.locator(".wordmark").click()
        page.wait_for_url(lambda url: "sling-legs" not in url)
        page.go_back()
        page.wait_for_url("**/sling-legs.html*")
    page.locator('calc-sheet[data-answer-for="reader"]').wait_for(state="attached")
    assert end_of(page, load) == ANSWER
