"""The worksheet on the page: it answers live, says what is wrong, and never shows a stale number."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from pathlib import Path
from urllib.parse import parse_qs, urlsplit

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from calc.answering import answer, declared_names
from tests.browser.conftest import (
    ANSWERED,
    KEEPS_NOTHING,
    LIVE,
    NO_LINE_IS_QUICK,
    Watch,
    example,
    hold,
    on_disk,
    own,
    watched,
)

SLING = own("sling-legs")


@pytest.fixture
def before_scripts() -> str:
    """Keeping the book is asked in test_starting.py and test_editions.py."""
    return KEEPS_NOTHING


def pull(page: Page) -> float:
    """The leg pull that stands on the page, in its unit."""
    return float(page.get_attribute('[data-result="leg_tension"]', "data-value") or "nan")


def started(page: Page) -> dict[str, object]:
    """How Python was started."""
    told = page.evaluate("({...linkwright.python.started, dropped: linkwright.python.dropped})")
    assert isinstance(told, dict)
    return told


def test_first_visit_takes_the_trimmed_library_and_answers(page: Page, served: str, watch: Watch) -> None:
    page.add_init_script(NO_LINE_IS_QUICK)
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    assert (started(page)["road"], started(page)["place"], started(page)["dropped"]) == (
        "library",
        "worker",
        [],
    )
    page.fill('[name="load"]', "9,137 lb")
    page.locator('[data-headline]:has-text("5,2")').wait_for()
    wanted = answer("sling-legs", page_inputs(page), "us")["results"]["leg_tension"]["value"]
    assert pull(page) == pytest.approx(wanted, rel=1e-12)
    assert watch.errors == []


def page_inputs(page: Page) -> dict[str, str]:
    """The inputs as the address has them."""
    fields = parse_qs(urlsplit(page.url).fragment, keep_blank_values=True)
    return {name: values[0] for name, values in fields.items() if name != "units"}


PARTS = "figure:not([hidden]) > figcaption, [data-result], [data-headline], [data-steps] > li, [data-cautions] > li, [data-sources] > li"
WORDS = f"[...document.querySelector('calc-sheet').querySelectorAll('{PARTS}')].map(e => e.textContent)"


@pytest.fixture(scope="module")
def plain_page(browser: Browser, served: str) -> Iterator[Page]:
    """A page in which no script runs."""
    with watched(browser, java_script_enabled=False, base_url=served) as context:
        yield context.new_page()


@pytest.fixture(scope="module")
def live_page(browser: Browser, served: str) -> Iterator[Page]:
    """A page that is turned to one worksheet after the other: Python is started on the first."""
    with watched(browser, base_url=served) as context:
        context.add_init_script(KEEPS_NOTHING)
        page = context.new_page()
        page.goto("work-out/index.html")
        yield page


def turn(page: Page, address: str) -> None:
    """Go on to another page of the book, by a link as a reader does."""
    page.evaluate(
        """(address) => { const link = document.createElement('a'); link.href = address;
        document.querySelector('main, #content').append(link); link.click(); }""",
        address,
    )
    page.wait_for_url(address)


@pytest.mark.parametrize("name", declared_names())
def test_every_page_is_complete_before_any_script_and_says_the_same_live(
    name: str, plain_page: Page, live_page: Page, served: str
) -> None:
    plain_page.goto(f"work-out/{name}.html")
    assert plain_page.get_attribute("calc-sheet", "data-state") == "static"
    built = plain_page.evaluate(WORDS)
    assert [text for text in built if text.strip() == ""] == []
    turn(live_page, served + example(name))
    expect(
        live_page.locator(f'calc-sheet[data-sheet="{name}"]{ANSWERED[len("calc-sheet") :]}')
    ).to_be_attached()
    assert live_page.evaluate(WORDS) == built


def test_bad_input_takes_the_old_answer_away_and_says_what_would_do(page: Page, served: str) -> None:
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    page.fill('[name="load"]', "57 in")
    expect(page.locator('calc-sheet[data-answer-state="errors"]')).to_be_attached()
    error = page.locator('[data-error="load"]')
    expect(error).to_be_visible()
    expect(error).to_contain_text("57 in")
    box = page.locator('[name="load"]')
    assert box.get_attribute("aria-invalid") == "true"
    assert error.get_attribute("id") in (box.get_attribute("aria-describedby") or "").split()
    for part in ("[data-big]", "[data-headline]", '[data-result="leg_tension"]', "[data-verdict-word]"):
        assert page.locator(part).all_text_contents() == [""] * page.locator(part).count()
    assert page.get_attribute('[data-result="leg_tension"]', "data-value") is None
    assert page.get_attribute("[data-answer]", "data-verdict") is None
    expect(page.locator("[data-figure]")).to_be_hidden()
    page.fill('[name="load"]', "4,860 lb")
    expect(page.locator(ANSWERED)).to_be_attached()
    expect(error).to_be_hidden()
    assert box.get_attribute("aria-invalid") is None


def test_answer_is_spoken_once_after_a_pause(page: Page, served: str) -> None:
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    live_region = page.locator("[data-live]")
    expect(live_region).not_to_be_empty()
    page.evaluate(
        """() => {
          globalThis.spoken = [];
          new MutationObserver(() => {
            const text = document.querySelector('[data-live]').textContent;
            if (text) globalThis.spoken.push(text);
          }).observe(document.querySelector('[data-live]'), {childList: true, characterData: true, subtree: true});
        }"""
    )
    page.locator('[name="load"]').press_sequentially("00", delay=60)
    expect(live_region).not_to_be_empty()
    assert page.evaluate("globalThis.spoken.length") == 1


def test_inputs_stand_in_the_address_and_come_back(page: Page, served: str) -> None:
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    page.fill('[name="load"]', "2.75 t")
    page.check('[name="known_by"][value="angle"]', force=True)
    page.fill('[name="angle"]', "52°")
    expect(page.locator(ANSWERED)).to_be_attached()
    expect(page.locator('[name="spread"]')).to_be_hidden()
    kept = pull(page)
    wanted = answer("sling-legs", page_inputs(page), "us")["results"]["leg_tension"]["value"]
    assert kept == pytest.approx(wanted, rel=1e-12)
    address = page.url
    page.goto("about:blank")
    page.goto(address)
    expect(page.locator(ANSWERED)).to_be_attached()
    assert page.input_value('[name="load"]') == "2.75 t"
    assert pull(page) == kept


def test_rows_are_added_taken_out_and_restored(page: Page, served: str) -> None:
    page.goto(served + own("load-weight"))
    expect(page.locator(ANSWERED)).to_be_attached()
    before = page.locator("[data-row]").count()
    page.click("[data-add-row]")
    assert page.locator("[data-row]").count() == before + 1
    names = page.locator("[data-row] input, [data-row] select").evaluate_all("all => all.map(e => e.name)")
    assert any(name.startswith(f"parts[{before}].") for name in names)
    ids = page.locator("[id]").evaluate_all("all => all.map(e => e.id)")
    assert len(ids) == len(set(ids))
    for label in page.locator("[data-row] label[for]").all():
        assert page.locator(f'[id="{label.get_attribute("for")}"]').count() == 1
    page.locator("[data-remove-row]").nth(before).click()
    page.locator("[data-remove-row]").nth(0).click()
    expect(page.locator(ANSWERED)).to_be_attached()
    assert page.locator("[data-row]").count() == before - 1
    first = page.locator('[name="parts[0].label"]')
    label_text = first.input_value() if first.count() else ""
    address = page.url
    page.goto("about:blank")
    page.goto(address)
    expect(page.locator(ANSWERED)).to_be_attached()
    assert page.locator("[data-row]").count() == before - 1
    if first.count():
        assert first.input_value() == label_text


def test_a_pasted_log_is_answered_and_a_long_one_stays_out_of_the_address(page: Page, served: str) -> None:
    page.goto(served + own("trial-log"))
    expect(page.locator(ANSWERED)).to_be_attached()
    for lines, kept in ((40, True), (600, False)):
        log = "Force (lb)\tGap (in)\n" + "".join(f"{7 * i}\t{2 + 7e-6 * i}\n" for i in range(lines))
        page.fill('[name="pasted"]', log)
        expect(page.locator('[data-result="readings_used"]')).to_have_text(str(lines))
        assert (page_inputs(page)["pasted"] == log) is kept
        assert page.input_value('[name="pasted"]') == log
    address = page.url
    page.goto("about:blank")
    page.goto(address)
    expect(page.locator('[data-error="pasted"]')).to_contain_text("Paste the log here")
    assert page.text_content("[data-headline]") == ""


def test_what_nobody_looked_at_can_be_said_and_cannot_pass(page: Page, served: str) -> None:
    page.goto(served + own("hook-check"))
    expect(page.locator(ANSWERED)).to_be_attached()
    page.fill('[name="throat_now"]', "1.16 in")
    expect(page.locator('[data-answer][data-verdict="ok"]')).to_be_attached()
    page.check('[name="cracks"][value=""]', force=True)
    expect(page.locator('[data-answer][data-verdict="unknown"]')).to_be_attached()
    expect(page.locator('tr[data-outcome="open"] > .cell-criterion')).to_have_text("Crack")
    page.check('[name="cracks"][value="yes"]', force=True)
    expect(page.locator('tr[data-outcome="fail"] > .cell-criterion')).to_have_text("Crack")


def test_switch_of_units_keeps_what_a_bare_number_meant(page: Page, served: str) -> None:
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    page.fill('[name="load"]', "5300")
    expect(page.locator(ANSWERED)).to_be_attached()
    page.wait_for_timeout(200)
    in_lbf = pull(page)
    page.check('[name="units"][value="si"]', force=True)
    page.locator('[data-result="leg_tension"][data-unit="kN"]').wait_for()
    assert page.input_value('[name="load"]') == "5300 lb"
    # 1 lbf = 4.4482216152605 N exactly (NIST SP 811, Appendix B.8).
    assert pull(page) == pytest.approx(in_lbf * 4.4482216152605e-3, rel=1e-12)
    page.goto(served + own("load-weight"))
    expect(page.locator(ANSWERED)).to_be_attached()
    assert page.get_attribute("html", "data-units") == "si"
    assert page.get_attribute('[data-result="weight"]', "data-unit") == "kg"


def test_keyboard_alone_reaches_an_answer(page: Page, served: str) -> None:
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    for _ in range(60):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement?.name") == "load":
            break
    page.keyboard.press("Control+A")
    page.keyboard.type("3 t")
    expect(page.locator("[data-headline]")).to_contain_text("3,770 lb")
    assert page.evaluate("document.activeElement?.name") == "load"
    page.keyboard.press("Enter")
    assert page.url.startswith(served + "work-out/sling-legs.html#load=3")


def test_edit_while_starting_never_shows_the_old_number(page: Page, served: str) -> None:
    held = hold(page, "**/pyodide.asm.wasm")
    page.goto(served + SLING, wait_until="load")
    page.fill('[name="load"]', "8,800 lb")
    assert page.locator("[data-headline]").text_content() == ""
    expect(page.locator("[data-state-note]")).to_contain_text("Starting")
    page.wait_for_timeout(300)
    for route in held:
        route.continue_()
    expect(page.locator(ANSWERED)).to_be_attached()
    wanted = answer("sling-legs", page_inputs(page), "us")["results"]["leg_tension"]["value"]
    assert pull(page) == pytest.approx(wanted, rel=1e-12)


def test_one_worker_serves_the_whole_visit(page: Page, served: str) -> None:
    page.goto(served + SLING)
    expect(page.locator(ANSWERED)).to_be_attached()
    page.evaluate("globalThis.sameVisit = true")
    for target in ("look-up/chain-tie-down.html", example("load-weight")):
        turn(page, served + target)
    expect(
        page.locator('calc-sheet[data-sheet="load-weight"]' + ANSWERED[len("calc-sheet") :])
    ).to_be_attached()
    assert page.evaluate("globalThis.sameVisit") is True
    assert page.evaluate("linkwright.python.workersMade") == 1


def test_from_disk_it_answers_with_no_server(
    new_context: Callable[..., BrowserContext], site: Path, watch: Watch
) -> None:
    page = new_context(offline=True).new_page()
    page.goto(on_disk(site, SLING))
    expect(page.locator(ANSWERED)).to_be_attached()
    assert (started(page)["road"], started(page)["place"], started(page)["dropped"]) == (
        "snapshot",
        "worker",
        [],
    )
    page.fill('[name="load"]', "9,137 lb")
    page.locator('[data-headline]:has-text("5,2")').wait_for()
    wanted = answer("sling-legs", page_inputs(page), "us")["results"]["leg_tension"]["value"]
    assert pull(page) == pytest.approx(wanted, rel=1e-12)
    assert json.dumps(watch.errors) == "[]"
    assert page.locator(LIVE).count() == 1


def test_a_sheet_far_down_a_longer_page_starts_when_the_reader_comes_near(
    new_context: Callable[..., BrowserContext], site: Path
) -> None:
    page = new_context(offline=True, viewport={"width": 360, "height": 500}).new_page()
    page.goto((site / "understand" / "torch-grinder-spatter.html").as_uri())
    sheet = page.locator("calc-sheet")
    far = sheet.evaluate("(sheet) => sheet.getBoundingClientRect().top / innerHeight")
    assert far > 2
    page.evaluate("() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 300)))")
    assert page.evaluate("linkwright.python.state") == "idle"
    sheet.scroll_into_view_if_needed()
    expect(page.locator(LIVE)).to_be_attached()
