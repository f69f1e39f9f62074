"""How a worksheet starts: empty, with no answer; the reader's own numbers stay his, the example is marked as one."""

from __future__ import annotations

import datetime
import re
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Locator, Page, ViewportSize, expect

from tests.browser.conftest import ANSWERED, KEEPS_NOTHING, LIVE, example, own, rect

EMPTY = "work-out/sling-legs.html"
PHONE = {"width": 390, "height": 844}
MOST_BAR_PX = 64
NewContext = Callable[..., BrowserContext]


@pytest.fixture
def before_scripts() -> str:
    """Keeping the book is asked in test_starting.py and test_editions.py."""
    return KEEPS_NOTHING


def state(page: Page, wanted: str) -> Locator:
    """The live worksheet in one state of its answer."""
    return page.locator(f'{LIVE}[data-answer-state="{wanted}"]')


def expect_no_answer(page: Page) -> None:
    """No verdict and no number of an answer is on the page."""
    for part in ("[data-verdict-word]", "[data-big]", "[data-headline]", "[data-result]", ".example-mark"):
        assert set(page.locator(part).all_inner_texts()) <= {""}, part
    for lists in ("[data-inputs]", "[data-steps]", "[data-cautions]"):
        assert page.locator(lists).inner_text() == "", lists
    assert page.get_attribute("[data-answer]", "data-verdict") is None
    assert page.get_attribute("calc-sheet", "data-answer-for") is None


def printed(page: Page, tmp_path: Path) -> str:
    """What stands on paper."""
    page.pdf(path=tmp_path / "sheet.pdf", prefer_css_page_size=True)
    command = ["pdftotext", "-layout", str(tmp_path / "sheet.pdf"), "-"]
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


def back_by_home(page: Page) -> None:
    """Leave the sling sheet for home, and come to it again as a reader does: open the task, then its worksheet."""
    page.locator(".wordmark").click()
    expect(page.locator("calc-sheet")).to_have_count(0)
    page.locator("details.task summary", has_text="Sling it").click()
    page.locator('details.task[open] a[href$="sling-legs.html"]').click()


def headline(page: Page) -> str:
    """The answer's sentence."""
    return page.locator("[data-headline]").inner_text()


@pytest.fixture
def phone(new_context: NewContext) -> Page:
    """A phone of usual size."""
    return new_context(viewport=PHONE, has_touch=True, is_mobile=True).new_page()


def test_empty_sheet_shows_no_answer_and_names_what_is_still_to_fill(phone: Page, served: str) -> None:
    page = phone
    page.goto(served + EMPTY)
    expect(state(page, "empty")).to_be_attached()
    expect(page.locator("[data-state-note]")).to_contain_text("No answer yet")
    expect(page.locator("[data-bar-note]")).to_have_text("No answer yet")
    expect_no_answer(page)
    page.check('[name="units"][value="si"]', force=True)  # a choice of units is no number of the reader's
    assert page.get_attribute("calc-sheet", "data-mode") == "empty"
    page.check('[name="units"][value="us"]', force=True)
    assert "#" not in page.url
    page.fill('[name="load"]', "4,860 lb")
    expect(state(page, "unfinished")).to_be_attached()
    note = page.locator("[data-state-note]")
    expect(note).to_contain_text("Still to fill: ")
    expect(note).to_contain_text("legs")
    assert page.locator("[data-error]:visible").count() == 0
    assert page.locator('[aria-invalid="true"]').count() == 0
    expect(page.locator("[data-bar-note]")).to_contain_text("to fill")
    expect_no_answer(page)


def test_example_is_marked_leaves_no_trace_and_goes_by_one_tap(
    page: Page, served: str, tmp_path: Path
) -> None:
    page.goto(served + EMPTY)
    page.get_by_role("button", name="Show the example").click()
    expect(page.locator(ANSWERED)).to_be_attached()
    marks = page.locator(".example-mark")
    assert [mark.text_content() for mark in marks.all()] == ["Example:", "Example:"]  # verdict and bar
    assert "EXAMPLE:" in printed(page, tmp_path).upper()
    assert "=" not in page.url
    assert page.evaluate("sessionStorage.length") == 0
    was = headline(page)
    page.fill('[name="load"]', "3,140 lb")
    expect(page.locator("[data-headline]")).not_to_have_text(was)
    expect(page.locator(ANSWERED)).to_be_attached()
    assert page.get_attribute("calc-sheet", "data-mode") == "example"
    assert marks.count() == 2
    assert "=" not in page.url
    page.get_by_role("button", name="Clear all boxes").click()
    expect(state(page, "empty")).to_be_attached()
    assert page.input_value('[name="load"]') == ""
    expect_no_answer(page)
    page.reload()
    expect(state(page, "empty")).to_be_attached()
    expect_no_answer(page)


def test_no_record_prints_from_the_example(page: Page, served: str, tmp_path: Path) -> None:
    page.goto(served + example("hook-check"))
    expect(page.locator(ANSWERED)).to_be_attached()
    expect(page.locator("[data-print]")).to_be_hidden()
    expect(page.locator(".record-example")).to_be_visible()
    assert "EXAMPLE:" in printed(page, tmp_path).upper()
    page.goto(served + own("hook-check"))
    expect(page.locator('[data-answer-for="reader"]')).to_be_attached()
    expect(page.locator("[data-print]")).to_be_visible()
    assert page.locator(".example-mark").count() == 0


def test_own_values_survive_leaving_and_a_reload(page: Page, served: str) -> None:
    page.goto(served + own("sling-legs"))
    page.fill('[name="load"]', "3,210 lb")
    expect(page.locator(ANSWERED)).to_be_attached()
    back_by_home(page)
    page.wait_for_url("**/sling-legs.html*")
    expect(page.locator(ANSWERED)).to_be_attached()
    assert page.input_value('[name="load"]') == "3,210 lb"
    assert page.get_attribute("calc-sheet", "data-answer-for") == "reader"
    page.reload()
    expect(page.locator(ANSWERED)).to_be_attached()
    assert page.input_value('[name="load"]') == "3,210 lb"
    # The example cannot take their place; once they are cleared it can be shown.
    show = page.get_by_role("button", name="Show the example")
    expect(show).to_be_disabled()
    page.get_by_role("button", name="Clear all boxes").click()
    expect(show).to_be_enabled()


def test_a_page_that_comes_late_does_not_stand_under_the_address_of_a_newer_one(
    page: Page, served: str
) -> None:
    page.goto(served + own("sling-legs"))
    expect(page.locator(ANSWERED)).to_be_attached()
    back_by_home(page)
    expect(page.locator(ANSWERED)).to_be_attached()
    # Back and at once forward again, with the first page held until the second is there.
    page.evaluate(
        """() => {
          const go = fetch;
          let first = true;
          globalThis.lateCame = new Promise((came) => {
            globalThis.fetch = async (...asked) => {
              const late = first;
              first = false;
              const answer = await go(...asked);
              if (!late) return answer;
              await new Promise((wait) => { setTimeout(wait, 800); });
              setTimeout(came, 200);
              return answer;
            };
          });
          history.back();
          addEventListener('popstate', () => history.forward(), {once: true});
        }"""
    )
    page.evaluate("lateCame")
    assert "sling-legs" in page.url
    expect(page.locator('calc-sheet[data-sheet="sling-legs"]')).to_be_attached()


def test_boxes_changed_behind_the_page_s_back_take_the_old_answer_off(page: Page, served: str) -> None:
    page.goto(served + own("sling-legs"))
    expect(page.locator(ANSWERED)).to_be_attached()
    was = headline(page)
    # Python is held, so that the old answer has to go before the new one is there.
    page.evaluate(
        """() => {
          const python = linkwright.python;
          const answer = python.answer.bind(python);
          python.answer = async (asked) => {
            await new Promise((go) => { globalThis.letPythonGo = go; });
            return answer(asked);
          };
          document.querySelector('[name="load"]').value = '2,220 lb';
          dispatchEvent(new PageTransitionEvent('pageshow', {persisted: false}));
        }"""
    )
    expect(state(page, "working")).to_be_attached()
    expect_no_answer(page)
    page.evaluate("letPythonGo()")
    expect(page.locator(ANSWERED)).to_be_attached()
    assert headline(page) != was
    assert "2,220 lb" in page.locator("[data-inputs]").inner_text()


def test_without_the_page_s_script_no_answer_stands_beside_boxes(page: Page, served: str) -> None:
    page.route("**/linkwright.js*", lambda route: route.abort())
    page.goto(served + EMPTY)
    expect(page.locator(".work-out .not-started")).to_be_visible()
    parts = ("[data-verdict-word]", "[data-big]", "[data-headline]", "[data-result]", "[data-steps]")
    for part in (*parts, "[data-cautions]", "[data-inputs]", "[data-figure]", ".foot-bar"):
        assert page.locator(f"{part}:visible").count() == 0, part


@pytest.mark.parametrize("script", ["**/runtime/linkwright.js", "**/scripts/early.js"])
def test_try_again_loads_the_page_anew_where_its_script_did_not_come(
    page: Page, served: str, script: str
) -> None:
    """A plain link; where the first script runs, what was typed meanwhile is kept."""
    page.context.route(script, lambda route: route.abort())
    page.goto(served + EMPTY)
    again = page.locator(".work-form [data-reload]:visible")
    page.fill('[name="load"]', "3,210 lb")
    expect(again).to_have_count(1)
    assert rect(again)["height"] >= 44
    page.context.unroute(script)
    again.click()
    expect(page.locator(LIVE)).to_be_attached()
    kept = "3,210 lb" if "linkwright" in script else ""
    expect(page.locator('[name="load"]')).to_have_value(kept)
    expect_no_answer(page)


def test_a_tap_takes_the_whole_value(phone: Page, served: str) -> None:
    phone.goto(served + own("sling-legs"))
    phone.tap('[name="load"]')
    phone.wait_for_function(
        """() => {
          const box = document.activeElement;
          return box.name === 'load' && box.selectionStart === 0 && box.selectionEnd === box.value.length;
        }"""
    )
    phone.keyboard.type("1,234 lb")
    assert phone.input_value('[name="load"]') == "1,234 lb"


def test_a_weight_goes_on_to_the_sling_and_is_the_reader_s_there(phone: Page, served: str) -> None:
    page = phone
    page.goto(served + own("sling-legs"))
    expect(page.locator(ANSWERED)).to_be_attached()
    page.goto(served + example("load-weight"))
    expect(page.locator(ANSWERED)).to_be_attached()
    expect(page.locator(".next-sheets")).to_be_hidden()  # the example's numbers go nowhere
    page.goto("about:blank")
    page.goto(served + own("load-weight"))
    expect(page.locator(ANSWERED)).to_be_attached()
    links = page.locator(".next-sheets a")
    assert links.count() == 4
    assert min(rect(link)["height"] for link in links.all()) >= 44
    carried = page.locator(".next-value").first.inner_text()
    links.first.tap()
    page.wait_for_url("**/sling-legs.html*")
    expect(page.locator('calc-sheet[data-sheet="sling-legs"][data-answer-for="reader"]')).to_be_attached()
    assert page.input_value('[name="load"]') == carried == "287 lb"
    assert page.input_value('[name="leg_length"]') == "6 ft"  # what was typed there before stays
    expect(page.locator("[data-carried]")).to_contain_text("What does it weigh")
    assert carried in page.locator("[data-inputs]").inner_text()


@pytest.mark.parametrize(("text", "most_px"), [("100%", MOST_BAR_PX), ("200%", PHONE["height"] / 5)])
def test_bar_is_low_and_never_over_the_focused_box(
    phone: Page, served: str, text: str, most_px: float
) -> None:
    phone.goto(served + own("sling-legs"))
    expect(phone.locator(ANSWERED)).to_be_attached()
    phone.evaluate("size => { document.documentElement.style.fontSize = size; }", text)
    bar = phone.locator(".foot-bar")
    assert rect(bar)["height"] <= most_px
    covered = phone.evaluate(
        """async () => {
          const bar = document.querySelector('.foot-bar');
          const covered = [];
          for (const way of ['down', 'up']) {
            const boxes = [...document.querySelectorAll('.work-form :is(input[type="text"], select)')]
              .filter((box) => box.getClientRects().length > 0);
            for (const box of way === 'down' ? boxes : boxes.reverse()) {
              box.focus();
              await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
              const seen = box.getBoundingClientRect();
              if (seen.top < 0 || seen.bottom > bar.getBoundingClientRect().top) covered.push(`${way} ${box.name}`);
            }
          }
          return covered;
        }"""
    )
    assert covered == []


def test_the_bar_of_an_example_shows_all_of_its_words(phone: Page, served: str) -> None:
    phone.goto(served + example("load-path"))
    expect(phone.locator(ANSWERED)).to_be_attached()
    bar, words = rect(phone.locator(".foot-bar")), rect(phone.locator(".foot-bar .verdict"))
    assert words["y"] >= bar["y"]
    assert words["y"] + words["height"] <= bar["y"] + bar["height"]


@pytest.mark.parametrize("screen", [PHONE, {"width": 320, "height": 640}])
def test_notice_of_a_new_edition_lies_within_the_first_screen(
    phone: Page, served: str, screen: ViewportSize
) -> None:
    """And takes at most a fifth of it, in letters of usual size."""
    phone.set_viewport_size(screen)
    phone.goto(served + EMPTY)
    # The notice as edition.js makes it; what brings it is tested in test_starting.py.
    phone.evaluate(
        """() => {
          const notice = document.createElement('div');
          notice.className = 'edition-notice';
          const words = document.createElement('p');
          words.textContent = linkwrightSay('new-edition');
          notice.append(words, ...['new-edition-take', 'new-edition-later'].map((key) => {
            const button = document.createElement('button');
            button.textContent = linkwrightSay(key);
            return button;
          }));
          document.body.append(notice);
          scrollTo(0, document.body.scrollHeight);
        }"""
    )
    for size in ("100%", "200%"):
        phone.evaluate("size => { document.documentElement.style.fontSize = size; }", size)
        for part in phone.locator(".edition-notice, .edition-notice button").all():
            seen = rect(part)
            assert seen["x"] >= 0
            assert seen["x"] + seen["width"] <= screen["width"]
            assert seen["y"] >= 0
            assert seen["y"] + seen["height"] <= screen["height"]
        if size == "100%":
            assert rect(phone.locator(".edition-notice"))["height"] <= screen["height"] / 5


def expect_keys(page: Page, faces: list[str]) -> None:
    """What the keys under the box show; they come once the tap is over."""
    expect(page.locator(".keys button")).to_have_text(faces)


def press(page: Page, face: str) -> None:
    """Tap a key under the box."""
    page.locator(".keys button", has_text=face).first.tap()


def test_keys_under_a_box_type_units_and_fractions_by_thumb(phone: Page, served: str) -> None:
    page = phone
    page.goto(served + EMPTY)
    expect(state(page, "empty")).to_be_attached()
    assert page.locator(".keys").count() == 0
    page.tap('[name="load"]')
    expect_keys(page, ["lb", "k", "ABC"])
    assert page.get_attribute('[name="load"]', "inputmode") == "decimal"
    page.keyboard.type("4.86")
    press(page, "k")
    press(page, "lb")
    assert page.input_value('[name="load"]') == "4.86k lb"
    assert page.evaluate("document.activeElement.name") == "load"
    page.locator("label", has_text="Leg length and spread").tap()
    page.tap('[name="leg_length"]')
    expect_keys(page, ["ft", "in", "/", "-", "ABC"])
    bar = rect(page.locator(".foot-bar"))
    for key in page.locator(".keys button").all():
        seen = rect(key)
        assert seen["height"] >= 44
        assert seen["width"] >= 44
        assert seen["x"] + seen["width"] <= PHONE["width"]
        assert seen["y"] + seen["height"] <= bar["y"]
    page.keyboard.type("5")
    press(page, "ft")
    page.keyboard.type("9-1")
    press(page, "/")
    page.keyboard.type("2")
    press(page, "in")
    assert page.input_value('[name="leg_length"]') == "5 ft 9-1/2 in"
    page.tap('[name="load"]')  # takes the whole value: a key goes behind it, a digit replaces it
    page.wait_for_function("() => getSelection().toString() === '4.86k lb'")
    page.keyboard.type("2210")
    page.evaluate("document.activeElement.select()")
    press(page, "lb")
    assert page.input_value('[name="load"]') == "2210 lb"
    press(page, "ABC")
    expect(page.locator('[name="load"]')).to_have_attribute("inputmode", "text")
    page.wait_for_function("() => document.activeElement.selectionStart === 7")
    page.check('[name="units"][value="si"]', force=True)
    page.tap('[name="spread"]')
    expect_keys(page, ["mm", "m", "-", "ABC"])


def test_a_mouse_needs_no_keys(page: Page, served: str) -> None:
    page.goto(served + EMPTY)
    expect(state(page, "empty")).to_be_attached()
    page.click('[name="load"]')
    assert page.locator(".keys").count() == 0
    assert page.get_attribute('[name="load"]', "inputmode") == "text"


def test_quick_tabs_end_in_the_box_they_went_to(phone: Page, served: str) -> None:
    phone.goto(served + example("load-weight"))
    expect(phone.locator(ANSWERED)).to_be_attached()
    phone.evaluate(
        """() => { for (const side of ['length', 'width', 'thickness']) {
          document.querySelector(`[name="parts[0].${side}"]`).focus();
        } }"""
    )
    phone.wait_for_timeout(200)
    assert phone.evaluate("document.activeElement.name") == "parts[0].thickness"
    phone.keyboard.type("7/16 in")
    assert phone.input_value('[name="parts[0].thickness"]') == "7/16 in"


def test_a_bookmark_keeps_the_day_and_never_the_word_today(page: Page, served: str) -> None:
    """A record kept as a bookmark said `today`: opened a year later it passed once more, with a year to the next look."""
    today = str(datetime.date.today())
    address = own("hook-check").replace("1.24", "1.17")
    page.goto(served + address.replace(f"inspected_on={today}", "inspected_on="))
    expect(page.locator("[data-headline]").first).to_contain_text("date of this inspection is missing")
    page.fill('[name="inspected_on"]', "today")
    expect(page.locator("[data-headline]").first).to_contain_text("inside every limit")
    assert "inspected_on" not in page.url  # not before the box is left
    page.locator('[name="inspected_by"]').focus()
    expect(page.locator('[name="inspected_on"]')).to_have_value(today)
    assert f"inspected_on={today}" in page.url
    for loose in ("today", "26+Nov", "Nov+26"):
        page.goto("about:blank")
        page.goto(served + address.replace(f"inspected_on={today}", f"inspected_on={loose}"))
        expect(page.locator("[data-headline]").first).to_contain_text("date of this inspection is missing")
        assert page.input_value('[name="inspected_on"]') == ""


def test_keys_under_a_box_follow_the_choice_of_units(phone: Page, served: str) -> None:
    phone.goto(served + EMPTY)
    expect(state(phone, "empty")).to_be_attached()
    phone.tap('[name="load"]')
    expect(phone.locator(".keys button").first).to_have_text("lb")
    phone.check('[name="units"][value="si"]', force=True)
    expect(phone.locator(".keys button").first).to_have_text("kg")


def test_the_bar_is_dark_in_the_dark(new_context: NewContext, served: str) -> None:
    page = new_context(viewport=PHONE, color_scheme="dark").new_page()
    page.goto(served + example("sling-legs"))
    expect(page.locator(ANSWERED)).to_be_attached()
    colour = page.evaluate("getComputedStyle(document.querySelector('.foot-bar')).backgroundColor")
    assert max(int(part) for part in re.findall(r"\d+", colour)[:3]) < 100
