"""The pages of the made-up language, whose words are a third longer, on the narrowest phone: nothing is pushed off or cut."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from tests.browser.conftest import serving
from tests.pages.english import build_pages

NARROW = 320
"""Width of the page [CSS px]."""
PAGES = (
    "index.html",
    "404.html",
    "look-up/index.html",
    "look-up/chain-tie-down.html",
    "look-up/densities.html",
    "look-up/every-rating.html",
    "work-out/sling-legs.html",
    "work-out/load-weight.html",
    "work-out/hook-check.html",
    "judge/inspect-a-hook.html",
    "understand/why-angle-multiplies-pull.html",
    "about/sources.html",
)
FOUND = """(width) => {
  const found = [];
  const aside = ".table-frame, svg, .unseen, [hidden], template, input";
  for (const one of document.body.querySelectorAll("*")) {
    const style = getComputedStyle(one);
    const box = one.getBoundingClientRect();
    // What is one pixel large is there for those who listen.
    if (one.closest(aside) || style.visibility === "hidden" || box.width <= 1 || box.height <= 1) continue;
    const words = (one.textContent || "").trim().slice(0, 60);
    if (box.right > width + 0.5) found.push(`runs to ${box.right}: ${one.tagName} ${words}`);
    if (!/visible|auto|scroll/.test(style.overflowX) && one.scrollWidth > one.clientWidth + 1) found.push(`is clipped: ${one.tagName} ${words}`);
    if (!/visible|auto|scroll/.test(style.overflowY) && one.scrollHeight > one.clientHeight + 2) found.push(`is cut: ${one.tagName} ${words}`);
  }
  if (document.documentElement.scrollWidth > width) found.push(`the page scrolls to ${document.documentElement.scrollWidth}`);
  return found;
}"""


@pytest.fixture(scope="module")
def narrow(browser: Browser, tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Page, str]]:
    """A page of the narrowest width, and the address of the book in the made-up language."""
    site = build_pages(tmp_path_factory.mktemp("longer"))
    with serving(site) as address:
        context = browser.new_context(viewport={"width": NARROW, "height": 640})
        yield context.new_page(), address
        context.close()


@pytest.mark.parametrize("name", PAGES)
def test_longer_words_stay_on_the_page(narrow: Any, name: str) -> None:
    page, address = narrow
    page.goto(address + name)
    assert page.evaluate(FOUND, NARROW) == []
