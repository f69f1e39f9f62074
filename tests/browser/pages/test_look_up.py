"""Looking things up: without scripts, with them, and from disk. Values are the printed ones of
49 CFR 393.108 and of OSHA's guidance on safe sling use, as tables/ cites them."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from build_scripts.look_up_pages import page_of

NewContext = Callable[..., BrowserContext]


def test_with_scripts_off_a_table_is_whole(served: str, new_context: NewContext) -> None:
    page = new_context(java_script_enabled=False).new_page()
    page.goto(served + "look-up/chain-tie-down.html")
    row = page.locator("[data-table=chain-tie-down] table.data tbody tr").nth(2)
    expect(row).to_contain_text("6,600")
    expect(row).to_contain_text("2,990 kg")
    expect(page.locator("[data-table=chain-tie-down] select[data-sift]").first).to_be_hidden()
    row.locator("td").nth(0).locator("a").first.click()
    expect(page.locator("table.claims tr:target")).to_contain_text("393.108 table, chain, grade 70")


def test_with_scripts_off_the_tasks_and_a_worksheet_stand(served: str, new_context: NewContext) -> None:
    page = new_context(java_script_enabled=False).new_page()
    page.goto(served + "index.html")
    page.click(".task summary >> nth=1")
    page.click(".task a[href*=sling-legs]")
    expect(page.locator(".answer [data-big]")).to_contain_text("lb")
    expect(page.locator("[data-steps] > li").first).to_be_visible()
    expect(page.locator(".no-script").first).to_be_visible()
    page.goto(served + "look-up/every-rating.html")
    expect(page.locator(".every li", has_text="Grade 70, 3/8 in")).to_contain_text("6,600 lb")


def test_filter_by_grade_and_size(served: str, page: Page) -> None:
    page.goto(served + "look-up/chain-tie-down.html")
    page.select_option("[data-table=chain-tie-down] [data-sift=grade]", "70")
    page.select_option("[data-table=chain-tie-down] [data-sift=size_in]", "3/8")
    assert page.locator("[data-table=chain-tie-down] table.data tbody tr:visible").count() == 1
    cells = page.locator("[data-table=chain-tie-down] table.data tbody tr:visible td:visible")
    assert cells.count() == 1
    expect(cells).to_contain_text("6,600")
    expect(page.locator("[data-table=chain-tie-down] [data-sift-said]")).to_contain_text("1 of 6 rows.")


def test_a_filter_without_a_match_says_so(served: str, page: Page) -> None:
    page.goto(served + "look-up/chain-lifting.html")
    page.select_option("[data-table=chain-lifting] [data-sift=grade]", "100")
    page.select_option("[data-table=chain-lifting] [data-sift=size_in]", "1-1/4")
    expect(page.locator("[data-table=chain-lifting] [data-sift-said]")).to_contain_text(
        "Nothing is printed for this"
    )


def test_sort_by_a_column(served: str, page: Page) -> None:
    page.goto(served + "look-up/chain-tie-down.html")
    head = page.locator("[data-table=chain-tie-down] table.data thead th").nth(4)
    head.locator("button").click()
    head.locator("button").click()
    expect(head).to_have_attribute("aria-sort", "descending")
    expect(page.locator("[data-table=chain-tie-down] table.data tbody tr").first).to_contain_text("18,100")
    expect(page.locator("[data-table=chain-tie-down] table.data tbody tr").last).to_contain_text("7/16")


def test_pin_a_value_and_see_its_source(served: str, page: Page) -> None:
    page.goto(served + "look-up/chain-tie-down.html")
    page.click("[data-table=chain-tie-down] table.data tbody tr:nth-child(3) td:nth-of-type(1) a >> nth=0")
    pin = page.locator("[data-table=chain-tie-down] [data-pin]")
    expect(pin).to_contain_text("Grade 70")
    expect(pin).to_contain_text("6,600 lb")
    expect(pin).to_contain_text("49 CFR 393")
    expect(pin).to_contain_text("reprint")
    address = page.url
    page.click("[data-table=chain-tie-down] [data-unpin]")
    expect(pin).to_be_hidden()
    page.goto("about:blank")
    page.goto(address)
    expect(page.locator("[data-table=chain-tie-down] [data-pin]")).to_contain_text("6,600 lb")


def test_a_link_to_a_source_opens_its_card(served: str, page: Page, new_context: NewContext) -> None:
    page.goto(served + "look-up/chain-tie-down.html")
    page.goto(served + "about/sources.html#cfr-49-393")
    card = page.locator("details#cfr-49-393")
    expect(card).to_have_attribute("open", "")
    expect(card).to_be_in_viewport()
    expect(card.locator("a", has_text="What may chain hold on a truck?")).to_be_visible()
    quiet = new_context(java_script_enabled=False).new_page()
    quiet.goto(served + "about/sources.html")
    quiet.click(".jump a >> nth=0")
    expect(quiet.locator("h2#from-chain")).to_be_in_viewport()
    quiet.click("details.source-card summary >> nth=0")
    expect(quiet.locator("details.source-card[open] li").first).to_be_visible()


@pytest.mark.parametrize(
    "name",
    [
        "chain-tie-down",
        "chain-lifting",
        "chain-hooks",
        "hook-limits",
        "chain-wear",
        "tie-down-other",
        "turnbuckles",
    ],
)
def test_a_gloved_thumb_can_tap_each_value_on_a_phone(
    served: str, new_context: NewContext, name: str
) -> None:
    page = new_context(viewport={"width": 360, "height": 780}).new_page()
    page.goto(f"{served}look-up/{page_of(name).name}.html")
    small = page.evaluate(
        """(name) => [...document.querySelectorAll(`[data-table=${name}] table.data td a`)].map((a) => [a.textContent, a.getBoundingClientRect()])
             .filter(([, box]) => box.height < 43.5 || box.width < 43.5).map(([text]) => text)""",
        name,
    )
    # Where two sources share a cell each keeps a link of its own; all others are as large as a thumb.
    assert len(small) <= 2, small
    assert page.evaluate("document.documentElement.scrollWidth") == 360


@pytest.mark.parametrize(
    "name", ["chain-hooks", "hook-limits", "proof-tests", "densities", "sling-temperature-limits"]
)
def test_a_list_needs_no_sliding_on_a_phone(served: str, new_context: NewContext, name: str) -> None:
    page = new_context(viewport={"width": 360, "height": 780}).new_page()
    page.goto(f"{served}look-up/{page_of(name).name}.html")
    frame = page.locator(f"[data-table={name}] .table-frame:has(> [data-list])")
    assert frame.evaluate("(f) => f.scrollWidth <= f.clientWidth")
    expect(page.locator(f"[data-table={name}] .slide-hint").first).to_be_hidden()
    page.goto(f"{served}look-up/chain-tie-down.html")
    expect(page.locator(".slide-hint").first).to_be_visible()


def test_turning_pages_keeps_scripts_and_addresses_right(served: str, page: Page) -> None:
    broken: list[str] = []
    page.on("response", lambda response: broken.append(response.url) if response.status >= 400 else None)
    page.goto(served + "index.html")
    page.evaluate("window.keptMark = 1")
    page.click(".doors a >> nth=0")
    page.wait_for_url("**/look-up/index.html")
    page.click(".index-list a[href='chain-tie-down.html']")
    page.wait_for_url("**/look-up/chain-tie-down.html")
    expect(page.locator(".doors a[aria-current]")).to_have_text(re.compile("Look up"))
    expect(page).to_have_title(re.compile("Tie-down limits"))
    page.click(".doors a >> nth=1")
    page.wait_for_url("**/work-out/index.html")
    page.go_back()
    expect(page.locator("article h1")).to_contain_text("Tie-down limits")
    assert page.evaluate("window.keptMark") == 1
    assert broken == []


def test_light_and_dark_are_remembered(served: str, new_context: NewContext) -> None:
    context = new_context(color_scheme="light")
    page = context.new_page()
    page.goto(served + "index.html")
    paper = "getComputedStyle(document.body).backgroundColor"
    light = page.evaluate(paper)
    page.click("[data-menu] > summary")
    page.click("[data-mode-switch]")
    dark = page.evaluate(paper)
    assert dark != light
    page.goto(served + "look-up/index.html")
    assert page.evaluate(paper) == dark


@pytest.mark.parametrize("verdict", ["ok", "caution", "stop", "unknown"])
def test_each_verdict_has_a_word_and_a_shape_of_its_own(served: str, page: Page, verdict: str) -> None:
    page.goto(served + "work-out/sling-legs.html#example")
    page.wait_for_selector("[data-answer][data-verdict]")
    shapes = page.evaluate(
        """() => ['ok', 'caution', 'stop', 'unknown'].map((verdict) => {
             const answer = document.querySelector('[data-answer]');
             answer.dataset.verdict = verdict;
             return getComputedStyle(answer.querySelector('.verdict-shape')).backgroundImage;
           })"""
    )
    assert len(set(shapes)) == 4
    assert f"/{verdict}.svg" in " ".join(shapes)
