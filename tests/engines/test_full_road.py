"""A reader's whole road in each engine: a worksheet answers, rows are sifted, words found, pages turned and turned back."""

from __future__ import annotations

import io
import itertools
import json
import subprocess
from pathlib import Path
from typing import Any

import pdfplumber
import pytest

from build_scripts import serve
from calc.answering import answer
from tests.browser.conftest import ANSWERED, own
from tests.browser.test_sheets_on_paper import JOB_PAGE, filled
from tests.engines.conftest import KEEPING
from tests.engines.drivers import PAPERS, Engine, wait_until
from tests.sharing import ENGINES
from tests.unit.test_jobs import LIFT

in_each_engine = pytest.mark.parametrize("engine", ENGINES, indirect=True)
where_kept = pytest.mark.parametrize("engine", KEEPING, indirect=True)

LOAD = '[name="load"]'
SLING = own("sling-legs") + "&units=us"


def there(selector: str) -> str:
    """Whether an element is on the page."""
    return f"document.querySelector({json.dumps(selector)}) !== null"


def wait_for(engine: Engine, selector: str) -> None:
    """Wait until an element is on the page."""
    wait_until(engine, there(selector), f"nothing is {selector}")


def text(engine: Engine, selector: str) -> str:
    """The text of the first element."""
    return str(engine.run(f"document.querySelector({json.dumps(selector)}).textContent"))


def open_sheet(engine: Engine, address: str) -> None:
    """Open a worksheet and wait until it answers."""
    engine.open(address)
    wait_for(engine, ANSWERED)


BOXES = """[...document.querySelectorAll('calc-sheet form [name]')]
  .filter((box) => box.name !== 'units' && !box.closest('[hidden]') && (box.type !== 'radio' || box.checked))
  .map((box) => [box.name, box.value])"""


def typed(engine: Engine) -> dict[str, str]:
    """What the boxes hold now."""
    return dict(engine.run(BOXES))


def expect_answer_to_the_boxes(engine: Engine) -> None:
    """The answer that stands is that of calc here, to what the boxes hold."""
    wait_for(engine, ANSWERED)
    wanted = answer("sling-legs", typed(engine), "us")
    pull = wanted["results"]["leg_tension"]["value"]
    shown = "Number(document.querySelector('[data-result=leg_tension]').dataset.value)"
    # Asked in one breath: the page may look at its boxes once more and take the answer away while it does.
    verdict = f"document.querySelector('[data-answer]').dataset.verdict === {json.dumps(wanted['verdict'])}"
    same = f"Math.abs({shown} - {pull}) < 1e-9 * {pull} && {verdict}"
    wait_until(engine, same, f"the answer is not {pull}, {wanted['verdict']}")


@in_each_engine
def test_a_worksheet_answers_what_is_typed(engine: Engine, book: str) -> None:
    open_sheet(engine, book + SLING)
    # A road may be dropped because the machine was too busy; none for another reason.
    assert [why for why in engine.run("linkwright.python.dropped") if "in time" not in why] == []
    expect_answer_to_the_boxes(engine)
    engine.type_in(LOAD, "9,137 lb")
    wait_until(engine, f"document.querySelector('{LOAD}').value === '9,137 lb'", "the keys did not arrive")
    expect_answer_to_the_boxes(engine)
    assert engine.run("new URLSearchParams(location.hash.slice(1)).get('load')") == "9,137 lb"
    engine.type_in(LOAD, "57 in")
    wait_for(engine, 'calc-sheet[data-answer-state="errors"]')
    assert text(engine, "[data-headline]") == ""
    assert engine.run("document.querySelector('[data-answer]').dataset.verdict ?? null") is None


@in_each_engine
def test_after_back_the_answer_is_that_of_the_boxes(engine: Engine, book: str) -> None:
    """A browser may put the example, or what it kept, back into the boxes: an older answer must not stand beside it."""
    open_sheet(engine, book + SLING)
    engine.click('label:has(> [name="known_by"][value="height_and_spread"])')
    wait_until(
        engine,
        f"{there('[name=height]')} && !document.querySelector('[name=height]').closest('[hidden]')",
        "no height",
    )
    engine.type_in('[name="height"]', "60 in")
    engine.type_in('[name="spread"]', "30 in")
    engine.type_in(LOAD, "14,000 lb")
    wait_until(engine, "new URLSearchParams(location.hash.slice(1)).get('load') === '14,000 lb'", "not kept")
    expect_answer_to_the_boxes(engine)
    # Left for a file of the book that is no page: no turn of ours, so the browser itself leaves and comes back.
    engine.run(
        "void setTimeout(() => { location.href = new URL('../assets/mark.svg', location.href).href; })"
    )
    wait_until(engine, "location.pathname.endsWith('mark.svg')", "the page was not left")
    engine.back()
    wait_until(engine, "location.pathname.endsWith('sling-legs.html')", "Back did not come back")
    expect_answer_to_the_boxes(engine)
    held = typed(engine)
    assert (held["load"], held["known_by"], held["height"]) == ("14,000 lb", "height_and_spread", "60 in")
    assert engine.run("new URLSearchParams(location.hash.slice(1)).get('load')") == "14,000 lb"
    engine.type_in(LOAD, "900 lb")
    wait_until(engine, f"document.querySelector('{LOAD}').value === '900 lb'", "the keys did not arrive")
    expect_answer_to_the_boxes(engine)


@in_each_engine
def test_rows_are_sifted_and_a_value_is_pinned(engine: Engine, book: str) -> None:
    engine.open(f"{book}look-up/chain-tie-down.html")
    wait_for(engine, "[data-sift=grade]")
    for key, chosen in (("grade", "70"), ("size_in", "3/8")):
        engine.run(
            f"void (() => {{ const box = document.querySelector('[data-sift={key}]'); box.value = {json.dumps(chosen)};"
            " box.dispatchEvent(new Event('change', {bubbles: true})); })()"
        )
    rows = "[...document.querySelectorAll('[data-table=chain-tie-down] table.data tbody tr')].filter((row) => row.getClientRects().length > 0)"
    wait_until(engine, f"{rows}.length === 1", "more than one row")
    assert "6,600" in engine.run(f"{rows}[0].innerText")
    engine.open(f"{book}index.html")
    engine.type_in("#ask-box", "3/8 g70")
    answers = ".ask [data-answers-for=ask-box]"
    wait_until(engine, f"document.querySelector('{answers}').innerText.includes('6,600 lb')", "not answered")
    engine.click(f"{answers} a")
    wait_until(
        engine,
        f"{there('[data-pin]')} && document.querySelector('[data-pin]').innerText.includes('6,600 lb')",
        "no pin",
    )


@in_each_engine
def test_the_search_finds_a_page_by_its_words(engine: Engine, book: str) -> None:
    engine.open(f"{book}look-up/chain-tie-down.html")
    engine.type_in("#find-box", "throat limit")
    wait_until(engine, "/hook/i.test(document.querySelector('.find-panel .found')?.innerText)", "not found")


@in_each_engine
def test_pages_turn_and_turn_back(engine: Engine, book: str) -> None:
    engine.open(f"{book}index.html")
    engine.run("void (globalThis.keptMark = 1)")
    engine.click(".doors a[data-door=look-up]")
    wait_for(engine, 'main[data-door-now="look-up"]')
    engine.click(".index-list a[href='chain-tie-down.html']")
    wait_until(engine, "document.title.includes('Tie-down limits')", "not turned")
    engine.click(".doors a[data-door=work-out]")
    wait_until(engine, "location.pathname.endsWith('work-out/index.html')", "not turned")
    engine.back()
    wait_until(engine, "document.title.includes('Tie-down limits')", "not turned back")
    assert "Look up" in text(engine, ".doors a[aria-current]")
    # From a server the scripts live on while pages turn; from disk the browser loads each page.
    assert engine.run("globalThis.keptMark ?? 0") == (1 if book.startswith("http") else 0)


NUMBERS = itertools.count(1)
"""For parts: no two of a kit bear one."""


def fill_kit_form(engine: Engine, fields: dict[str, str]) -> None:
    """Fill the form of the kit by its names, as the reader's hand would."""
    wait_for(engine, "form.kit-form")
    for name, value in fields.items():
        engine.run(
            f"void (() => {{ const box = document.querySelector('form.kit-form [name={name}]');"
            f" box.value = {json.dumps(value)}; box.dispatchEvent(new Event('change', {{bubbles: true}})); }})()"
        )
    engine.click("form.kit-form button[type=submit]")


@in_each_engine
def test_a_part_is_kept_inspected_used_and_tagged(engine: Engine, book: str) -> None:
    """Each engine keeps one kit for all pages, from disk too; a part goes into a worksheet and onto its tag."""
    engine.open(f"{book}kit/index.html")
    wait_for(engine, '[data-kit="shown"]')
    number = f"C-{next(NUMBERS)}"
    engine.click("[data-kit-tools] a")
    wanted = {
        "number": number,
        "kind": "chain-sling",
        "mark": "80",
        "size": "3/8",
        "condition": "marked-good",
    }
    fill_kit_form(engine, wanted)
    wait_until(
        engine, "document.querySelector('[data-big]')?.textContent.includes('7,100 lb') ?? false", "not rated"
    )
    assert engine.run("document.querySelector('[data-kit-view] .answer').dataset.verdict") == "caution"
    engine.click('[data-kit-view] a[href^="#look="]')
    wait_for(engine, "form.kit-form [name=found]")
    fill_kit_form(engine, {"by": "R. Ames", "found": "ok"})
    wait_for(engine, '[data-kit-view] .answer[data-verdict="ok"]')
    tag = engine.run("document.querySelector('[data-kit-view] a[href*=\\'tag.html\\']').href")
    open_sheet(engine, book + SLING)
    engine.click("[data-kit-pick]")
    wait_for(engine, f'[data-kit-take="{number}"]')
    engine.click(f'[data-kit-take="{number}"]')
    told = f"document.querySelector('[data-headline]').textContent.includes('From your kit: {number}, inspected')"
    wait_until(engine, told, "the answer does not name the part")
    open_sheet(engine, tag)
    wait_for(engine, "svg.tag")
    assert engine.run("document.querySelector('[name=own_number]').value") == number
    wait_until(
        engine, f"document.querySelector('svg.tag').textContent.includes('{number}')", "no number on the tag"
    )


@where_kept
def test_once_kept_the_book_needs_no_network(engine: Engine, site: Path) -> None:
    server, thread = serve.start(0, site)
    address = f"http://127.0.0.1:{server.server_address[1]}/"
    try:
        open_sheet(engine, address + SLING)
        wait_for(engine, 'html[data-offline="kept"]')
    finally:
        engine.open("about:blank")
        server.shutdown()
        server.server_close()
        thread.join()
    open_sheet(engine, address + SLING)
    assert engine.run("linkwright.python.started.road") == "snapshot"
    engine.type_in(LOAD, "9,137 lb")
    wait_until(engine, f"document.querySelector('{LOAD}').value === '9,137 lb'", "the keys did not arrive")
    expect_answer_to_the_boxes(engine)
    for other in (
        "index.html",
        "look-up/chain-tie-down.html",
        "work-out/load-weight.html",
        "no-such-page.html",
    ):
        engine.open(address + other)
        assert text(engine, "h1").strip()


@where_kept
def test_a_worksheet_prints_whole(engine: Engine, book: str, tmp_path: Path) -> None:
    open_sheet(engine, book + SLING)
    engine.run("document.fonts.ready.then(() => true)")
    pdf = engine.printed()
    assert pdf is not None
    (tmp_path / "sheet.pdf").write_bytes(pdf)
    told = subprocess.run(
        ["pdftotext", "-layout", str(tmp_path / "sheet.pdf"), "-"], check=True, capture_output=True, text=True
    ).stdout
    flat = "".join(told.split())
    big = "".join(text(engine, ".answer [data-big]").split())
    for wanted in (big, "Withintherating", "Theworking", "Youmust", "Whatitrestson", "Signed", "Edition"):
        assert wanted in flat, wanted


@where_kept
def test_a_lift_prints_on_one_page(engine: Engine, engines_served: str) -> None:
    for name, inputs in LIFT.items():
        open_sheet(engine, engines_served + filled(name, inputs))
    engine.open(f"{engines_served}{JOB_PAGE}#lift")
    wait_for(engine, '[data-job][data-verdict="caution"]')
    engine.run("document.fonts.ready.then(() => true)")
    for paper in PAPERS:
        pdf = engine.printed(paper)
        assert pdf is not None
        (sheet,) = pdfplumber.open(io.BytesIO(pdf)).pages
        flat = "".join(sheet.extract_text().split())
        for wanted in ("Liftsheet", "Beforethehookgoesup", "S-5", "Checkedby", "permissiontolift", "Edition"):
            assert wanted in flat, wanted
        assert (
            max(word["x1"] for word in sheet.extract_words()) < sheet.width - 20
        )  # in the margin stands nothing


SPOKEN: dict[str, tuple[str, str]] = {
    LOAD: ("textbox", "Weight of the load"),
    "[data-live]": ("status", ""),
    "[data-answer]": ("region", "Answer"),
    "main": ("main", ""),
    "[data-clear]": ("button", "Clear"),
}


@in_each_engine
def test_a_screen_reader_is_told_roles_names_and_the_answer(engine: Engine, engines_served: str) -> None:
    open_sheet(engine, engines_served + SLING)
    wait_until(engine, "document.querySelector('[data-live]').textContent !== ''", "nothing is spoken")
    told: dict[str, Any] = {selector: engine.described(selector) for selector in SPOKEN}
    roles = {selector: role for selector, (role, _) in told.items()}
    assert roles == {selector: role for selector, (role, _) in SPOKEN.items()}
    names = {selector: name for selector, (_, name) in told.items()}
    assert {selector: name for selector, name in names.items() if SPOKEN[selector][1] not in name} == {}
    assert "lb" in text(engine, "[data-live]")
