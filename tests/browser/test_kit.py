"""My kit as a phone uses it: parts entered from an empty kit, looked at, saved, exported, and imported into another browser;
two tabs; a store that is full or refused; a file that is damaged, newer, or has a part that was altered.
"""

from __future__ import annotations

import datetime
import json
import os
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.browser.conftest import ANSWERED, on_disk, own

NewContext = Callable[..., BrowserContext]
PHONE = {
    "viewport": {"width": 390, "height": 844},
    "has_touch": True,
    "is_mobile": True,
    "accept_downloads": True,
}
LEAST_TARGET_PX = 44
PARTS = [
    {"number": "C-1", "kind": "chain-sling", "mark": "80", "size": "3/8"},
    {"number": "H-1", "kind": "hook", "mark": "G80", "size": "3/8"},
    {"number": "S-4", "kind": "shackle", "mark": "A", "size": "5/8"},
    {"number": "T-1", "kind": "tie-down-chain", "mark": "70", "size": "3/8"},
    {"number": "W-2", "kind": "web-sling", "rating": "3,200 lb"},
]
RATED = {"C-1": "7,100 lb", "H-1": "7,100 lb", "S-4": "6,500 lb", "T-1": "6,600 lb", "W-2": "3,200 lb"}
"""What stands in the tables for those marks and sizes, or on the tag (OSHA sling guidance, RR-C-271, 49 CFR 393.108)."""


def shot(page: Page, name: str) -> None:
    """A picture of the page, where LINKWRIGHT_SHOTS names a folder for them."""
    if folder := os.environ.get("LINKWRIGHT_SHOTS"):
        page.screenshot(path=str(Path(folder) / f"{name}.png"), full_page=True)


def opened(page: Page) -> None:
    """Wait until the kit is shown."""
    expect(page.locator('[data-kit="shown"]')).to_be_visible()
    expect(page.locator("[data-kit-note]")).to_have_text("")


def fill(page: Page, fields: dict[str, str]) -> None:
    """Fill boxes by their names."""
    for name, value in fields.items():
        box = page.locator(f"[data-kit-view] [name={name}]")
        if box.evaluate("box => box.tagName") == "SELECT":
            box.select_option(value)
        else:
            box.fill(value)


def add(page: Page, fields: dict[str, str]) -> None:
    """Enter a part by thumb, from the list; ends on the part."""
    page.locator("[data-kit-tools] a").tap()
    expect(page.locator("form.kit-form")).to_be_visible()
    fill(page, fields)
    page.locator("form.kit-form button[type=submit]").tap()
    expect(page.locator("[data-kit-view] .answer")).to_be_visible()


def to_list(page: Page) -> None:
    """Back to the list."""
    page.locator("[data-kit-home] a").tap()
    expect(page.locator("[data-kit-rows]")).to_be_visible()


def look(page: Page, number: str, by: str = "R. Ames") -> None:
    """Write down a look that found a part good; ends on the part."""
    page.locator("[data-kit-rows] a", has_text=number).tap()
    page.locator('[data-kit-view] a[href^="#look="]').tap()
    expect(page.locator("form.kit-form [name=on]")).to_be_visible()
    fill(page, {"by": by, "found": "ok"})
    page.locator("form.kit-form button[type=submit]").tap()
    expect(page.locator(".kit-history li")).to_have_count(1)


def exported(page: Page, how: str, folder: Path) -> Path:
    """The file that the page saves."""
    with page.expect_download() as saving:
        page.locator(f"[data-kit-export={how}]").tap()
    path = folder / saving.value.suggested_filename
    saving.value.save_as(path)
    return path


def stands_well(page: Page) -> None:
    """Nothing runs off to the side, and what is tapped is large enough."""
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
    small = page.evaluate(
        f"""[...document.querySelectorAll("[data-kit] :is(a.plain-button, button, select, input:not([type=hidden]), .kit-list a)")]
        .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < {LEAST_TARGET_PX}).map((one) => one.outerHTML)"""
    )
    assert small == []


def test_from_the_empty_kit_to_another_browser(served: str, new_context: NewContext, tmp_path: Path) -> None:
    page = new_context(**PHONE, locale="en-US").new_page()
    page.goto(f"{served}kit/index.html")
    opened(page)
    expect(page.locator(".kit-count")).to_contain_text("Your kit is empty")
    shot(page, "kit-empty")
    for place, part in enumerate(PARTS):
        add(page, {**part, "condition": "marked-good"})
        expect(page.locator("[data-kit-view] .answer")).to_have_attribute("data-verdict", "caution")
        expect(page.locator("[data-big]")).to_contain_text(RATED[part["number"]])
        if place == 0:
            shot(page, "kit-part-unlooked")
        to_list(page)
    expect(page.locator("[data-kit-rows] > li")).to_have_count(len(PARTS))
    expect(page.locator(".kit-count")).to_contain_text("5 parts need a look")
    stands_well(page)
    for number in ("C-1", "H-1", "S-4"):
        look(page, number)
        expect(page.locator("[data-kit-view] .answer")).to_have_attribute("data-verdict", "ok")
        stands_well(page)
        shot(page, f"kit-part-{number}")
        to_list(page)
    expect(page.locator(".kit-count")).to_contain_text("2 parts need a look")
    shot(page, "kit-list")
    saved = exported(page, "json", tmp_path)
    as_table = exported(page, "csv", tmp_path)
    kit = json.loads(saved.read_text(encoding="utf-8"))
    assert [part["number"] for part in kit["parts"]] == ["T-1", "W-2", "C-1", "H-1", "S-4"]
    assert [len(part["looks"]) for part in kit["parts"]] == [0, 0, 1, 1, 1]
    _moved(served, new_context, saved)
    _moved(served, new_context, as_table)


def _moved(served: str, new_context: NewContext, saved: Path) -> None:
    """Take a file into a browser that has nothing; then nothing differs any more."""
    page = new_context(**PHONE, locale="en-US").new_page()
    page.goto(f"{served}kit/index.html")
    opened(page)
    page.set_input_files("[data-kit-import]", saved)
    expect(page.locator("[data-kit-difference]")).to_contain_text("New parts: 5.")
    shot(page, f"kit-import-{saved.suffix[1:]}")
    assert page.locator("[data-kit-rows]").count() == 0
    page.locator("form.kit-form button[type=submit]").tap()
    expect(page.locator("[data-kit-rows] > li")).to_have_count(5)
    page.set_input_files("[data-kit-import]", saved)
    expect(page.locator("[data-kit-difference]")).to_contain_text("same: 5.")


def _with_part(served: str, context: BrowserContext) -> Page:
    page = context.new_page()
    page.goto(f"{served}kit/index.html")
    opened(page)
    add(page, {**PARTS[1], "condition": "marked-good"})
    return page


def test_two_tabs_and_a_part_that_goes_out_for_good(served: str, new_context: NewContext) -> None:
    context = new_context(**PHONE)
    first = _with_part(served, context)
    address = first.url
    first.locator('[data-kit-view] a[href^="#edit="]').tap()
    expect(first.locator("form.kit-form")).to_be_visible()
    second = context.new_page()
    second.goto(address)
    opened(second)
    second.locator('[data-kit-view] a[href^="#edit="]').tap()
    expect(second.locator("form.kit-form")).to_be_visible()
    fill(second, {"condition": "welded"})
    second.locator("form.kit-form button[type=submit]").tap()
    expect(second.locator('[data-error="out_why"]')).to_contain_text("only as taken out of use")
    shot(second, "kit-altered-refused")
    fill(second, {"out_why": "welded on a plate"})
    second.locator("form.kit-form button[type=submit]").tap()
    expect(second.locator(".verdict")).to_have_text("Out of use")
    shot(second, "kit-out")
    assert second.locator("[data-big], [href^='#out='], [href^='#look=']").count() == 0
    fill(first, {"rating": "7,000 lb"})
    first.locator("form.kit-form button[type=submit]").tap()
    expect(first.locator("[data-kit-note]")).to_contain_text("changed in another window")
    assert first.locator("[data-kit-view] [name=rating]").input_value() == "7,000 lb"
    first.locator("form.kit-form a.plain-button").tap()
    expect(first.locator(".verdict")).to_have_text("Out of use")


@pytest.mark.parametrize(
    ("broken", "said"),
    [
        (
            "IDBFactory.prototype.open = () => { throw new DOMException('', 'SecurityError'); }",
            "does not let this page keep",
        ),
        (
            "IDBObjectStore.prototype.put = () => { throw new DOMException('', 'QuotaExceededError'); }",
            "no room on this device",
        ),
    ],
)
def test_a_store_that_is_refused_or_full(
    served: str, new_context: NewContext, broken: str, said: str
) -> None:
    page = new_context(**PHONE).new_page()
    page.goto(f"{served}kit/index.html")
    if "open" not in broken:
        opened(page)
        page.locator("[data-kit-tools] a").tap()
        fill(page, PARTS[0])
    page.evaluate(f"() => {{ {broken} }}")
    if "open" in broken:
        page.add_init_script(f"{broken}")
        page.reload()
    else:
        page.locator("form.kit-form button[type=submit]").tap()
    expect(page.locator("[data-kit-note]")).to_contain_text(said)


def test_a_damaged_or_newer_file_is_refused_whole_and_nothing_is_taken_unasked(
    served: str, new_context: NewContext, tmp_path: Path
) -> None:
    page = _with_part(served, new_context(**PHONE))
    to_list(page)
    saved = exported(page, "json", tmp_path)
    kit = json.loads(saved.read_text(encoding="utf-8"))
    for change, said in (
        ({"check": "00000000"}, "checksum does not fit"),
        ({"version": 99}, "newer edition"),
        ({"parts": []}, "checksum does not fit"),
    ):
        saved.write_text(json.dumps({**kit, **change}), encoding="utf-8")
        page.set_input_files("[data-kit-import]", saved)
        expect(page.locator("[data-kit-note]")).to_contain_text(said)
    from calc.records.kit.file import from_json, to_json
    from calc.records.kit.part import Look

    part = from_json(json.dumps(kit)).parts[0]
    today = datetime.date.today().isoformat()
    other = part.__class__(
        **{**vars(part), "mark": "100", "looks": (Look(today, "A. B.", "ok", "", "", {}),)}
    )
    saved.write_text(to_json([other], "2026.1", ""), encoding="utf-8")
    page.set_input_files("[data-kit-import]", saved)
    expect(page.locator("[data-kit-difference]")).to_contain_text("differ: 1.")
    shot(page, "kit-differs")
    page.locator("form.kit-form button[type=submit]").tap()
    expect(page.locator("[data-kit-rows] small").first).to_contain_text("7,100 lb")
    page.set_input_files("[data-kit-import]", saved)
    page.locator(".kit-differs input").check()
    page.locator("form.kit-form button[type=submit]").tap()
    expect(page.locator("[data-kit-rows] small").first).to_contain_text("8,800 lb")


def test_from_disk_the_kit_is_kept_or_the_page_says_that_it_is_not(
    site: Path, new_context: NewContext
) -> None:
    page = new_context(**PHONE, locale="en-US").new_page()
    page.goto(on_disk(site, "kit/index.html"))
    opened(page)
    add(page, {**PARTS[0], "condition": "marked-good"})
    page.reload()
    opened(page)
    expect(page.locator("[data-big]")).to_contain_text("7,100 lb")


def test_a_judging_sheet_is_saved_to_a_part_and_the_part_goes_to_a_worksheet(
    served: str, new_context: NewContext, tmp_path: Path
) -> None:
    page = _with_part(served, new_context(**PHONE, locale="en-US"))
    address = page.url
    page.goto(served + own("hook-check"))
    expect(page.locator(ANSWERED)).to_be_attached()
    page.locator("[data-kit-save-judged]").tap()
    page.locator("[data-kit-place] select").select_option(index=1)
    shot(page, "kit-judged")
    page.locator("[data-kit-place] button").tap()
    expect(page.locator("[data-kit-place]")).to_contain_text("Saved to H-1")
    page.locator("[data-kit-place] a").tap()
    page.wait_for_url(address)
    opened(page)
    expect(page.locator(".kit-history li")).to_contain_text("judged by this book's worksheet")
    expect(page.locator("[data-kit-lacks]")).to_have_count(2)
    expect(page.locator("[data-kit-lacks]").first).to_contain_text("2 more readings")
    expect(page.locator("[data-kit-view] figure")).to_have_count(0)
    expect(page.locator("[data-kit-view] .answer")).to_have_attribute("data-verdict", "stop")
    shot(page, "kit-part-judged")
    page.locator("[data-kit-home] a").tap()
    page.locator("[data-kit-tools] a").tap()
    fill(page, {**PARTS[0], "condition": "marked-good"})
    page.locator("form.kit-form button[type=submit]").tap()
    page.locator('[data-kit-view] a[href*="load-path"]').tap()
    expect(page.locator('[name="items[0].grade"]')).to_have_value("80")
    expect(page.locator('[name="items[0].condition"]')).to_have_value("")
    page.goto(f"{served}kit/index.html")
    opened(page)
    assert exported(page, "ics", tmp_path).read_text(encoding="utf-8").startswith("BEGIN:VCALENDAR")
