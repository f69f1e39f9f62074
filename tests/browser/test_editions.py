"""Pages, scripts and Python of two editions never meet, and what is kept on the device is told as it is."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, Route, expect

from build_scripts.seal import integrity
from tests.browser.conftest import ANSWERED, example, on_disk, own, serving

SLING = own("sling-legs")
KEPT = 'html[data-offline="kept"]'
OTHER = "0ddba115"
NewContext = Callable[..., BrowserContext]


def make_other_edition(site: Path) -> None:
    """Give pages and script of a site another hash, as another build would."""
    script = site / "runtime" / "linkwright.js"
    (code,) = re.findall(r'<html[^>]* data-code="(\w+)"', (site / "index.html").read_text(encoding="utf-8"))
    was = integrity(script.read_bytes())
    text = script.read_text(encoding="utf-8")
    assert f'"{code}"' in text
    script.write_text(text.replace(f'"{code}"', f'"{OTHER}"'), encoding="utf-8")
    now = integrity(script.read_bytes())
    for page in site.rglob("*.html"):
        changed = page.read_text(encoding="utf-8").replace(f'data-code="{code}"', f'data-code="{OTHER}"')
        page.write_text(changed.replace(was, now), encoding="utf-8")


def code_of(page: Page) -> str:
    """The hash of the page that is shown."""
    return str(page.get_attribute("html", "data-code"))


def test_a_page_of_another_edition_is_loaded_whole(new_context: NewContext, own_site: Path) -> None:
    page = new_context(service_workers="block").new_page()
    with serving(own_site) as address:
        page.goto(address + SLING)
        expect(page.locator(ANSWERED)).to_be_attached()
        make_other_edition(own_site)
        page.evaluate("globalThis.isOldPage = true")
        page.locator('a[href$="hitch.html"]').first.click()
        page.locator(f'html[data-code="{OTHER}"]').wait_for(state="attached")
        assert page.url.endswith("/work-out/hitch.html")
        page.wait_for_function("'linkwright' in globalThis")  # its script comes after the page
        assert page.evaluate("[globalThis.isOldPage, linkwright.code]") == [None, OTHER]


def test_a_start_that_fails_because_the_host_has_another_edition_loads_that(
    new_context: NewContext, own_site: Path
) -> None:
    page = new_context(service_workers="block").new_page()
    gone: list[str] = []

    def swap(route: Route) -> None:
        if not gone:
            make_other_edition(own_site)
            gone.append(route.request.url)
        if code_of(page) == OTHER:
            route.continue_()
        else:
            route.fulfill(status=404)

    page.context.route("**/pyodide.asm.wasm", swap)
    with serving(own_site) as address:
        page.goto(address + SLING)
        page.locator(f'html[data-code="{OTHER}"]').wait_for(state="attached")
        expect(page.locator(ANSWERED)).to_be_attached()


def test_page_and_script_of_two_editions_work_nothing_out(page: Page, own_site: Path) -> None:
    """From disk, where a browser can check no script."""
    sheet = own_site / "work-out" / "sling-legs.html"
    text = sheet.read_text(encoding="utf-8")
    sheet.write_text(re.sub(r' data-code="\w+"', f' data-code="{OTHER}"', text), encoding="utf-8")
    page.goto(on_disk(own_site, SLING))
    expect(page.locator("[data-state-note]")).to_contain_text("of two editions")
    assert page.locator("[data-verdict-word]").all_inner_texts() == [""] * 2


def test_a_live_answer_to_the_example_that_differs_from_the_built_one_is_a_fault(
    new_context: NewContext, own_site: Path
) -> None:
    sheet = own_site / "work-out" / "sling-legs.html"
    text = sheet.read_text(encoding="utf-8")
    found = re.search(r'data-result="leg_tension" data-value="([\d.]+)"', text)
    assert found
    sheet.write_text(
        text.replace(f'data-value="{found[1]}"', f'data-value="{float(found[1]) * 1.01}"'), encoding="utf-8"
    )
    page = new_context(service_workers="block").new_page()
    with serving(own_site) as address:
        page.goto(address + example("sling-legs"))
        note = page.locator("[data-state-note]")
        expect(note).to_contain_text("not the one that is printed in this page")
        assert page.locator("[data-verdict-word]").all_inner_texts() == [""] * 2
        # Nor is any other answer of this page believed.
        page.get_by_role("button", name="Clear all boxes").click()
        page.goto(address + SLING)
        expect(
            page.locator('calc-sheet[data-answer-for="reader"], [data-state-note]:visible')
        ).to_be_attached()


def test_what_is_kept_is_told_with_size_and_date_and_heals(new_context: NewContext, own_site: Path) -> None:
    page = new_context().new_page()
    note = page.locator("[data-offline-note]")
    with serving(own_site) as address:
        page.goto(address + SLING)
        page.locator(KEPT).wait_for(state="attached")
        expect(note).to_have_text(
            re.compile(r"Edition \S+ is kept on this device \(\d+ MB, 20\d\d-\d\d-\d\d\)")
        )
        forget_half(page)
        page.reload()
        page.locator(KEPT).wait_for(state="attached")
        assert page.evaluate(MISSING) == 0
        # Half of it is gone again, and the host with it: that is said.
        forget_half(page)
        own_site.rename(own_site.with_name("gone"))
        page.goto(address + "index.html")
        page.locator('html[data-offline="kept-in-part"]').wait_for(state="attached")
        expect(note).to_contain_text("Not all of this book is on this device")


FORGET = """async () => {
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    const all = await cache.keys();
    const spare = /index\\.html|\\.js|\\.css|sling-legs/;
    const drop = all.filter((one, i) => i % 2 && !spare.test(one.url));
    for (const one of drop) await cache.delete(one);
    return drop.length;
  }
}"""
MISSING = """async () => {
  const { active } = await navigator.serviceWorker.ready;
  const channel = new MessageChannel();
  const told = new Promise((done) => { channel.port1.onmessage = (event) => done(event.data.missing); });
  active.postMessage({ type: 'STATUS' }, [channel.port2]);
  return told;
}"""


def forget_half(page: Page) -> None:
    """Drop half of what is kept, as a browser may."""
    assert page.evaluate(FORGET) > 20
    assert page.evaluate(MISSING) > 20


@pytest.mark.parametrize("why", ["refused", "full"])
def test_a_browser_that_does_not_keep_the_book_says_so(
    new_context: NewContext, served: str, why: str
) -> None:
    context = new_context()
    room = "{quota: 1e6, usage: 9e5}" if why == "full" else "{quota: 1e12, usage: 0}"
    context.add_init_script(
        "navigator.serviceWorker.register = () => Promise.reject(new DOMException('no', 'SecurityError'));"
        f"navigator.storage.estimate = () => Promise.resolve({room});"
    )
    page = context.new_page()
    page.goto(served + SLING)
    expect(page.locator("[data-offline-note]")).to_contain_text(
        "no room" if why == "full" else "does not keep the book"
    )
    expect(page.locator(ANSWERED)).to_be_attached()


def test_the_foot_names_edition_and_hash_and_so_does_the_answer(site: Path) -> None:
    text = (site / "work-out" / "sling-legs.html").read_text(encoding="utf-8")
    (code,) = re.findall(r'<html[^>]* data-code="(\w{8})"', text)
    assert re.search(rf"<span data-edition>[^<]*tables and code {code}</span>", text)
    assert re.search(rf'<p class="answer-edition">[^<]*tables and code {code}', text)
