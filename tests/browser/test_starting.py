"""Every way in which Python's start can go wrong ends in an answer by another road, or in a reason the reader can read."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from build_scripts import serve
from build_scripts.offline import build_offline
from calc.answering import answer
from tests.browser.conftest import ANSWERED, NO_LINE_IS_QUICK, Watch, hold, on_disk, own, serving

SLING = own("sling-legs")
KEPT = 'html[data-offline="kept"]'
NewContext = Callable[..., BrowserContext]
WANTS_LIBRARY = """linkwright.python.answer({kit: 'list', parts: [], count: 0, due: 0})
  .then((view) => view.ok, (error) => error.message)"""
"""A question that the memory image cannot answer alone; gives true, or why there is no answer."""


def runtime_of(site: Path) -> Path:
    """The folder of the runtime, named by its content."""
    (folder,) = (path for path in (site / "runtime").iterdir() if path.is_dir())
    return folder


def road(page: Page) -> str:
    """The road that answered, and where: "library in worker"."""
    return str(page.evaluate("`${linkwright.python.started.road} in ${linkwright.python.started.place}`"))


def dropped(page: Page) -> list[str]:
    """The roads that were dropped, each with its fault."""
    told = page.evaluate("linkwright.python.dropped")
    assert isinstance(told, list)
    return told


def expect_answers(page: Page) -> None:
    """The page answers, and the answer is that of calc itself."""
    expect(page.locator(ANSWERED)).to_be_attached()
    page.fill('[name="load"]', "9,137 lb")
    page.locator('[data-headline]:has-text("5,2")').wait_for()
    given = {"legs": "2", "known_by": "leg_length_and_spread", "leg_length": "6 ft", "spread": "5 ft 9 in"}
    wanted = answer("sling-legs", given | {"load": "9,137 lb"}, "us")["results"]["leg_tension"]["value"]
    shown = float(page.get_attribute('[data-result="leg_tension"]', "data-value") or "nan")
    assert shown == pytest.approx(wanted, rel=1e-12)


def expect_failed(page: Page, reason: str) -> None:
    """The page says why it cannot answer and what to do; beside the reader's numbers stands no verdict and no number."""
    expect(page.locator('calc-sheet[data-state="failed"]')).to_be_attached()
    note = page.locator("[data-state-note]")
    expect(note).to_be_visible()
    expect(note).to_contain_text(reason)
    expect(note).to_contain_text("NOT worked out")
    expect(note).to_contain_text("Reload the page")
    page.fill('[name="load"]', "19,000 lb")
    assert page.get_attribute("calc-sheet", "data-answer-for") is None
    assert page.get_attribute("[data-answer]", "data-verdict") is None
    for part in ("[data-headline]", "[data-big]", '[data-result="leg_tension"]', "[data-inputs]"):
        assert page.locator(part).all_text_contents() == [""] * page.locator(part).count()
    assert page.input_value('[name="load"]') == "19,000 lb"


def keep_offline(page: Page, address: str) -> None:
    """Visit until the whole edition is kept on the device."""
    page.goto(address + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    page.locator(KEPT).wait_for(state="attached")


# ---- faults of the runtime's parts


def test_missing_library_is_replaced_by_the_ordinary_road(page: Page, own_site: Path) -> None:
    page.add_init_script(NO_LINE_IS_QUICK)
    (runtime_of(own_site) / "library.zip").unlink()
    with serving(own_site) as address:
        page.goto(address + SLING)
        expect_answers(page)
        assert road(page) == "ordinary in worker"
        assert [fault for fault in dropped(page) if "library.zip" in fault] == dropped(page) != []


def test_damaged_library_is_replaced_by_the_ordinary_road(page: Page, own_site: Path) -> None:
    page.add_init_script(NO_LINE_IS_QUICK)
    (runtime_of(own_site) / "library.zip").write_bytes(b"PK\x03\x04 this is no library")
    with serving(own_site) as address:
        page.goto(address + SLING)
        expect_answers(page)
        assert road(page) == "ordinary in worker"


NEVER_IDLE = "globalThis.requestIdleCallback = () => 0;"
"""Python does not begin by itself on a page without a worksheet."""


@pytest.mark.parametrize("moment", ["pointerover", "touchstart", "focusin"])
def test_python_begins_when_a_pointer_finger_or_focus_comes_to_a_worksheet(
    page: Page, served: str, moment: str
) -> None:
    page.add_init_script(NEVER_IDLE)
    page.goto(served + "index.html")
    assert page.evaluate("linkwright.python.state") == "idle"
    page.locator('a[href*="judge/"]').first.dispatch_event(moment, {"bubbles": True})
    assert page.evaluate("linkwright.python.state") == "idle"
    page.locator('a[href*="work-out/"]').first.dispatch_event(moment, {"bubbles": True})
    assert page.evaluate("linkwright.python.state") != "idle"


def test_damaged_memory_image_is_replaced_by_the_library(page: Page, served: str) -> None:
    """Damaged in three ways, one after the other; the whole one is set aside first (keeping the edition takes long)."""
    keep_offline(page, served)
    for damage in ("no gzip at all", "cut short", "wrong head"):
        page.evaluate(
            """async (damage) => {
              const aside = await caches.open('set aside by a test');
              for (const name of await caches.keys()) {
                const cache = await caches.open(name);
                for (const request of await cache.keys()) {
                  if (name.startsWith('set aside') || !request.url.endsWith('/snapshot.bin')) continue;
                  if (!(await aside.match('/whole'))) await aside.put('/whole', await cache.match(request));
                  const whole = new Uint8Array(await (await aside.match('/whole')).arrayBuffer());
                  const bad = {'no gzip at all': new Uint8Array([0x1f, 0x8b, 1, 2, 3, 4, 5, 6]),
                    'cut short': whole.slice(0, whole.length / 2),
                    'wrong head': whole.map((byte, i) => (i < 4 ? 255 : byte))}[damage];
                  await cache.put(request, new Response(bad));
                }
              }
            }""",
            damage,
        )
        page.reload()
        expect_answers(page)
        assert road(page) == "library in worker", damage
        assert [fault.split(" in ")[0] for fault in dropped(page)] == ["snapshot"], damage


def test_all_parts_missing_ends_in_a_reason(page: Page, own_site: Path) -> None:
    (runtime_of(own_site) / "pyodide.asm.wasm").unlink()
    with serving(own_site) as address:
        page.goto(address + SLING)
        expect_failed(page, "pyodide.asm.wasm")


def test_interpreter_that_hangs_ends_in_a_reason(page: Page, served: str) -> None:
    hold(page, "**/pyodide.asm.wasm")
    page.goto(served + SLING)
    expect_failed(page, "did not start in time")


def test_missing_part_of_the_disk_folder_is_named(page: Page, own_site: Path) -> None:
    (runtime_of(own_site) / "disk" / "wasm.js").unlink()
    page.goto(on_disk(own_site, SLING), wait_until="commit")
    expect_failed(page, "disk/wasm.js")


def test_damaged_memory_image_on_disk_is_replaced_by_the_library(page: Page, own_site: Path) -> None:
    part = runtime_of(own_site) / "disk" / "snapshot.js"
    part.write_text(part.read_text()[:4000] + '");\n')
    page.goto(on_disk(own_site, SLING))
    expect_answers(page)
    assert road(page) == "library in worker"


def test_library_on_disk_is_brought_when_a_question_wants_it(page: Page, own_site: Path) -> None:
    page.goto(on_disk(own_site, SLING))
    expect_answers(page)
    assert road(page) == "snapshot in worker"
    assert page.evaluate(WANTS_LIBRARY) is True
    (runtime_of(own_site) / "disk" / "library.js").unlink()
    page.reload()
    expect_answers(page)
    assert "library.zip" in page.evaluate(WANTS_LIBRARY)


# ---- faults of the browser


def test_policy_that_forbids_webassembly_ends_in_a_reason(page: Page, site: Path) -> None:
    with serving(site, serve.CONTENT_POLICY.replace(" 'wasm-unsafe-eval'", "")) as address:
        page.goto(address + SLING)
        expect_failed(page, "not allowed to use WebAssembly")


def test_browser_without_webassembly_ends_in_a_reason(
    new_context: NewContext, site: Path, own_site: Path
) -> None:
    # A worker has its own globals: take WebAssembly from it by its own first line.
    worker = runtime_of(own_site) / "python-worker.mjs"
    worker.write_text("globalThis.WebAssembly = undefined;\n" + worker.read_text())
    page = new_context().new_page()
    with serving(own_site) as address:
        page.goto(address + SLING)
        expect_failed(page, "no WebAssembly")


def test_browser_without_workers_answers_in_the_page(new_context: NewContext, served: str) -> None:
    context = new_context()
    context.add_init_script("delete globalThis.Worker;")
    page = context.new_page()
    page.goto(served + SLING)
    expect_answers(page)
    assert road(page) == "library in page"


def test_browser_without_workers_answers_from_disk(new_context: NewContext, site: Path) -> None:
    context = new_context()
    context.add_init_script("delete globalThis.Worker;")
    page = context.new_page()
    page.goto(on_disk(site, SLING))
    expect_answers(page)
    assert road(page) == "snapshot in page"


def test_browser_that_refuses_blob_workers_answers_from_disk_in_the_page(
    new_context: NewContext, site: Path
) -> None:
    context = new_context()
    context.add_init_script(
        """globalThis.Worker = class extends EventTarget {
          constructor() { super(); setTimeout(() => this.onerror?.(new ErrorEvent('error', {message: 'refused'}))); }
          postMessage() {}
          terminate() {}
        };"""
    )
    page = context.new_page()
    page.goto(on_disk(site, SLING))
    expect_answers(page)
    assert road(page) == "snapshot in page"


def test_forbidden_storage_takes_nothing_from_the_answer(
    new_context: NewContext, served: str, watch: Watch
) -> None:
    context = new_context(service_workers="block")
    context.add_init_script(
        """for (const name of ['localStorage', 'sessionStorage', 'caches', 'indexedDB']) {
          Object.defineProperty(globalThis, name, {get() { throw new DOMException('denied', 'SecurityError'); }});
        }"""
    )
    page = context.new_page()
    page.goto(served + SLING)
    expect_answers(page)
    page.check('[name="units"][value="si"]', force=True)
    page.locator('[data-result="leg_tension"][data-unit="kN"]').wait_for()
    assert watch.errors == []


# ---- keeping it


def test_after_one_visit_the_whole_book_works_without_a_network(
    new_context: NewContext, site: Path, watch: Watch
) -> None:
    context = new_context()
    page = context.new_page()
    with serving(site) as address:
        keep_offline(page, address)
        asked = [url for url in watch.requests if "/runtime/" in url]
        page.reload()
        expect(page.locator(ANSWERED)).to_be_attached()
        assert road(page) == "snapshot in worker"
        assert asked
    # The server is gone, which no setting of a browser can soften.
    page.close()
    page = context.new_page()
    page.goto(address + SLING)
    expect_answers(page)
    assert road(page) == "snapshot in worker"
    assert page.evaluate(WANTS_LIBRARY) is True
    for other in ("index.html", "look-up/chain-tie-down.html", "work-out/load-weight.html", ""):
        page.goto(address + other)
        assert page.locator("h1").first.text_content()
    page.goto(address + "no-such-page.html")
    assert page.locator("h1").first.text_content()


def test_everything_that_pages_need_is_on_the_kept_list(site: Path) -> None:
    kept = (site / "offline-worker.js").read_text()
    runtime = runtime_of(site).name
    for name in ("snapshot.bin", "library.zip", "pyodide.asm.wasm", "python-worker.mjs", "python-engine.mjs"):
        assert f"runtime/{runtime}/{name}" in kept
    for page in site.rglob("*.html"):
        assert f'"{page.relative_to(site).as_posix()}"' in kept
    assert '"scripts/search-data.js"' in kept
    assert '"scripts/search.js"' in kept
    assert "/disk/" not in kept


def test_a_new_edition_waits_until_the_reader_takes_it_and_keeps_his_numbers(
    new_context: NewContext, own_site: Path
) -> None:
    page = new_context().new_page()
    with serving(own_site) as address:
        keep_offline(page, address)
        page.goto(address + SLING)
        expect(page.locator(ANSWERED)).to_be_attached()
        page.fill('[name="load"]', "4,321 lb")
        expect(page.locator(ANSWERED)).to_be_attached()
        make_next_edition(own_site)
        page.evaluate("navigator.serviceWorker.getRegistration().then((found) => found.update())")
        notice = page.locator(".edition-notice")
        expect(notice).to_be_visible()
        # Until then the old edition stands, on a new page too.
        assert page.locator("[data-next-edition]").count() == 0
        other = page.context.new_page()
        other.goto(address + SLING)
        assert other.locator("[data-next-edition]").count() == 0
        other.close()
        with page.expect_navigation():
            notice.get_by_role("button", name="Reload").click()
        expect(page.locator("[data-next-edition]")).to_be_attached()
        expect(page.locator(ANSWERED)).to_be_attached()
        assert page.input_value('[name="load"]') == "4,321 lb"
        assert page.locator(".edition-notice").count() == 0


def test_an_edition_that_arrives_damaged_is_not_taken(new_context: NewContext, own_site: Path) -> None:
    page = new_context().new_page()
    with serving(own_site) as address:
        keep_offline(page, address)
        make_next_edition(own_site)
        # One page of yet another edition among the new files: its checksum does not fit.
        other = own_site / "work-out" / "load-weight.html"
        other.write_text(other.read_text() + "<!-- from elsewhere -->")
        with pytest.raises(Exception, match="ServiceWorker|service worker|update"):
            page.evaluate(
                """async () => {
                  const found = await navigator.serviceWorker.getRegistration();
                  await found.update();
                  const coming = found.installing;
                  await new Promise((done, failed) => coming.addEventListener('statechange', () => {
                    if (coming.state === 'redundant') failed(new Error('update refused'));
                    if (coming.state === 'installed') done();
                  }));
                }"""
            )
        page.goto(address + SLING)
        assert page.locator("[data-next-edition]").count() == 0
        assert page.locator(".edition-notice").count() == 0


def make_next_edition(site: Path) -> None:
    """Mark every worksheet page as of a next edition, and write the service worker anew."""
    for path in (site / "work-out").glob("*.html"):
        path.write_text(path.read_text().replace("<calc-sheet", "<i data-next-edition></i><calc-sheet", 1))
    shutil.rmtree(site / "icons")
    build_offline(Path(__file__).resolve().parents[2], site)
