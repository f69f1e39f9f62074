"""What the script builds of an answer is, element by element, what the build wrote into the page."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect

from tests.browser.conftest import ANSWERED, KEEPS_NOTHING, example

REGIONS = """() => {
  // Attributes come in the order in which they were first set; what counts is which there are.
  const told = (node) => node.nodeType === Node.ELEMENT_NODE
    ? [node.localName, [...node.attributes].map((one) => [one.name, one.value]).sort(), [...node.childNodes].map(told)]
    : [node.nodeType, node.nodeValue];
  return Object.fromEntries([...document.querySelectorAll('calc-sheet [data-view]')]
    .map((place) => {
      const copy = place.cloneNode(true);
      copy.normalize();  // a text in two pieces is the same text
      return [place.dataset.view, JSON.stringify(told(copy))];
    }));
}"""
ANSWER_STATE = 'calc-sheet[data-answer-state="{}"]'


@pytest.fixture
def before_scripts() -> str:
    """Keeping the book is asked in test_starting.py and test_editions.py."""
    return KEEPS_NOTHING


@pytest.mark.parametrize("name", ["sling-legs", "hook-check", "load-weight"])
def test_live_elements_are_those_of_the_build(name: str, page: Page, served: str) -> None:
    page.route("**/*.js", lambda route: route.abort())
    page.goto(f"{served}work-out/{name}.html")
    built = page.evaluate(REGIONS)
    assert {"answer", "foot", "figure", "cautions", "numbers", "sources"} <= set(built)
    page.unroute("**/*.js")
    page.goto("about:blank")  # another part of the same address is no new start
    page.goto(served + example(name))
    expect(page.locator(ANSWERED)).to_be_attached()
    # A refusal takes everything off the page; then every region is built anew.
    box = page.locator(".field-row:has(.unit) input:visible").first
    typed = box.input_value()
    box.fill("☃")
    expect(page.locator(ANSWER_STATE.format("errors"))).to_be_attached()
    assert page.locator("[data-sources] > li").count() == 0
    box.fill(typed)
    expect(page.locator(ANSWER_STATE.format("answered"))).to_be_attached()
    assert page.evaluate(REGIONS) == built
