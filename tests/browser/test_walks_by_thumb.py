"""Three worksheets from an empty start to a printed sheet, as a phone in a shop does it: by touch, on narrow screens, with text
at twice its size, from a host and from the folder on disk.

One that judges a part (hook-check), one that lifts (load-weight, carried on to sling-legs), one log (trial-log). On each screen
the worksheet must stand well: nothing runs off to the side, what is tapped is 44 px or more, the bar at the foot is low and
lies over no box that is being filled. On paper the numbers are those that Python finds here, and nothing is cut.
"""

from __future__ import annotations

import datetime
import itertools
import re
import subprocess
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from calc.answering import answer
from tests.browser.conftest import ANSWERED, LIVE, rect

NewContext = Callable[..., BrowserContext]
LEAST_TARGET_PX = 44
MOST_BAR_PX = 64
PAPER_MARGIN_PT = 20
"""Nothing is printed nearer to the edge of the paper than this; the style sheet keeps 10 mm."""


@dataclass(frozen=True)
class Screen:
    """A phone: how wide and high [px], and how large its text is [%]."""

    width: int
    height: int
    text: int

    @property
    def most_bar_px(self) -> float:
        """How high the bar at the foot may be."""
        return MOST_BAR_PX if self.text == 100 else self.height / 5


SCREENS = [Screen(390, 844, 100), Screen(320, 640, 200)]
ROADS = ["served", "disk"]


@dataclass
class Walk:
    """A page on a phone, and where the site stands."""

    page: Page
    base: str
    screen: Screen

    def start(self, sheet: str) -> None:
        """Open a worksheet that nobody has filled."""
        self.page.goto(f"{self.base}work-out/{sheet}.html")
        expect(self.page.locator(f'{LIVE}[data-answer-state="empty"]')).to_be_attached()
        self.stands_well()

    def write(self, name: str, text: str) -> None:
        """Tap a box, once the page is at rest, and type."""
        expect(self.page.locator('calc-sheet:not([data-answer-state="working"])')).to_be_attached()
        self.page.wait_for_timeout(150)
        self.page.tap(f'[name="{name}"]')
        expect(self.page.locator(f'[name="{name}"]')).to_be_focused()
        self.page.wait_for_timeout(150)  # no thumb goes from the box to the keyboard sooner
        self.page.keyboard.type(text)
        assert self.page.input_value(f'[name="{name}"]') == text
        self.not_covered(name)

    def choose(self, name: str, value: str) -> None:
        """Choose from a list, or tap one of a few answers."""
        if self.page.locator(f'select[name="{name}"]').count():
            # Not by a tap: the browser's own list would stay open over the page and take the keys typed next.
            self.page.focus(f'[name="{name}"]')
            self.page.select_option(f'[name="{name}"]', value)
        else:
            self.page.locator(f'label:has([name="{name}"][value="{value}"])').tap()

    def fill(self, inputs: dict[str, str]) -> None:
        """Fill boxes in order, as one goes down the page."""
        for name, value in inputs.items():
            box = self.page.locator(f'[name="{name}"]').first
            typed = box.evaluate("box => box.tagName === 'TEXTAREA' || box.type === 'text'")
            (self.write if typed else self.choose)(name, value)

    def answered(self) -> None:
        """The answer to the reader's own numbers has come; an old one is off the page by then (CLEAR_AFTER_MS of sheet.js)."""
        self.page.wait_for_timeout(300)
        expect(self.page.locator(f'{ANSWERED}[data-answer-for="reader"]')).to_be_attached()

    def not_covered(self, name: str) -> None:
        """The box that is being filled lies on the screen, above the bar."""
        self.page.wait_for_timeout(60)  # the browser scrolls a focused box into sight in its next frames
        box, bar = rect(self.page.locator(f'[name="{name}"]')), rect(self.page.locator(".foot-bar"))
        top_of_box_seen = min(box["y"] + box["height"], box["y"] + 60)  # of a high box its first line
        assert box["y"] >= -1, f"{name} lies over the screen"
        assert top_of_box_seen <= bar["y"] + 1, f"{name} lies under the bar"

    def stands_well(self) -> None:
        """Nothing runs off to the side, targets are large enough, the bar is low."""
        assert self.page.evaluate("document.documentElement.scrollWidth") <= self.screen.width
        assert rect(self.page.locator(".foot-bar"))["height"] <= self.screen.most_bar_px
        assert self.page.evaluate(SMALL_TARGETS, LEAST_TARGET_PX) == []

    def paper(self, folder: Path) -> Paper:
        """The page as it prints."""
        file = folder / "sheet.pdf"
        self.page.evaluate("document.fonts.ready")
        self.page.pdf(path=file, prefer_css_page_size=True)
        return Paper(file)


SMALL_TARGETS = """(least) => [...document.querySelectorAll(
    'calc-sheet :is(button, summary, select, textarea, input), calc-sheet .next-sheets a, .foot-bar')]
  .map((one) => (one.type === 'radio' || one.type === 'checkbox') ? one.closest('label') : one)
  .filter((one) => one && one.checkVisibility() && one.getClientRects().length > 0)
  .map((one) => [one, one.getBoundingClientRect()])
  .filter(([, box]) => box.width > 1 && (box.height < least - 0.5 || box.width < least - 0.5))
  .map(([one, box]) => `${one.name || one.innerText.slice(0, 30)} ${Math.round(box.width)} x ${Math.round(box.height)}`)"""


@dataclass
class Paper:
    """A printed file."""

    file: Path

    @property
    def text(self) -> str:
        """All its words."""
        return self._of("-layout")

    @property
    def flowing(self) -> str:
        """All its words in the order of the page, one column after the other."""
        return self._of("-raw")

    @property
    def pages(self) -> int:
        """How many sheets."""
        return self.text.count("\f")

    def cut(self) -> list[str]:
        """Words that lie off the paper, or in its margin."""
        edges = self._of("-bbox")
        size = re.search(r'<page width="([\d.]+)" height="([\d.]+)"', edges)
        assert size is not None
        width, height = float(size[1]), float(size[2])
        words = re.findall(
            r'xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">([^<]*)', edges
        )
        return [
            word
            for left, top, right, bottom, word in words
            if float(left) < PAPER_MARGIN_PT
            or float(top) < PAPER_MARGIN_PT
            or float(right) > width - PAPER_MARGIN_PT
            or float(bottom) > height - PAPER_MARGIN_PT
        ]

    def holds(self, *wanted: str) -> None:
        """Each text stands on the paper, however its lines break and whatever stands in the column beside it."""
        squeezed = squeeze(self._of("-raw"))
        for text in wanted:
            assert squeeze(text) in squeezed, text

    def _of(self, how: str) -> str:
        command = ["pdftotext", how, str(self.file), "-"]
        return subprocess.run(command, check=True, capture_output=True, text=True).stdout


def squeeze(text: str) -> str:
    """A text without its spaces and soft breaks."""
    return re.sub(r"[\s\u00ad]+", "", text)


@pytest.fixture(
    params=list(itertools.product(ROADS, SCREENS)), ids=lambda p: f"{p[0]}-{p[1].width}-{p[1].text}"
)
def walk(request: pytest.FixtureRequest, new_context: NewContext, served: str, site: Path) -> Walk:
    """A fresh phone: each of the screens, from the host and from the disk without a network."""
    road, screen = request.param
    size = {"width": screen.width, "height": screen.height}
    context = new_context(viewport=size, has_touch=True, is_mobile=True, offline=road == "disk")
    # On the screen alone: on paper the style sheet sets the size itself, over what the reader has set for the browser.
    context.add_init_script(
        f"""addEventListener('DOMContentLoaded', () => {{
          const larger = new CSSStyleSheet();
          larger.replaceSync('@media screen {{ html {{ font-size: {screen.text}%; }} }}');
          document.adoptedStyleSheets = [larger];
        }})"""
    )
    return Walk(context.new_page(), served if road == "served" else f"{site.as_uri()}/", screen)


HOOK = {
    "part_name": "hook 7 of the engine sling",
    "throat_new": "31.7 mm",
    "throat_now": "32.1 mm",
    "section_new": "23.1 mm",
    "section_now": "22.8 mm",
    "twist": "0",
    "latch": "closes",
    "cracks": "no",
    "marks_readable": "yes",
    "altered": "no",
    "hook_on": "sling",
    "place": "us-washington",
    "service": "normal",
    "inspected_on": "today",
    "inspected_by": "M. Ross",
}


def test_a_hook_is_judged_and_its_record_printed(walk: Walk, tmp_path: Path) -> None:
    page = walk.page
    walk.start("hook-check")
    half = dict(itertools.islice(HOOK.items(), 8))
    walk.fill(half)
    walk.answered()
    # Half of it is no record, neither by the button nor on paper.
    expect(page.locator("[data-print]")).to_be_hidden()
    paper = walk.paper(tmp_path)
    paper.holds("5 of 7", "not complete")
    walk.fill({name: value for name, value in HOOK.items() if name not in half})
    wanted = answer("hook-check", HOOK, "us")
    expect(page.locator("[data-headline]").first).to_have_text(wanted["headline"])
    walk.stands_well()
    printing = page.locator("[data-print]")
    expect(printing).to_be_visible()
    assert rect(printing)["height"] >= LEAST_TARGET_PX
    page.evaluate("window.print = () => { window.printed = true; }")
    printing.tap()
    assert page.evaluate("window.printed")
    paper = walk.paper(tmp_path)
    assert paper.pages == 1
    assert paper.cut() == []
    results = wanted["results"]
    paper.holds(HOOK["part_name"], HOOK["inspected_by"], wanted["verdict_words"], "Signature")
    paper.holds(*(results[name]["text"] for name in ("decides", "record", "next_inspection", "looked_at")))
    paper.holds(HOOK["throat_now"], results["throat_limit"]["text"], str(datetime.date.today()))
    assert "[in]" not in paper.text  # the unit of a bare number behind a number that has its own


BASE_PLATE = {
    "parts[0].shape": "plate",
    "parts[0].length": "4 ft",
    "parts[0].width": "30 in",
    "parts[0].thickness": "1/2 in",
    "parts[0].material": "steel",
    "parts[0].count": "1",
    "parts[0].tolerance": "5 %",
}
LEGS = {"legs": "2", "known_by": "angle", "angle": "60", "load_kind": "stiff", "leg_kind": "chain", "grade": "80",
        "size": "3/8", "condition": "marked-good"}  # fmt: skip


def test_a_weight_goes_on_to_the_legs_and_is_printed(walk: Walk, tmp_path: Path) -> None:
    page = walk.page
    walk.start("load-weight")
    page.get_by_role("button", name="Add one more").tap()
    walk.fill({name: value for name, value in BASE_PLATE.items() if not name.endswith("tolerance")})
    # What is still empty is named, and in which part.
    expect(page.locator("[data-state-note]")).to_contain_text("Part 1: Allowance either way")
    walk.fill({"parts[0].tolerance": BASE_PLATE["parts[0].tolerance"]})
    walk.answered()
    walk.stands_well()
    plate = {name.removeprefix("parts[0]."): value for name, value in BASE_PLATE.items()}
    weighed = answer("load-weight", {"parts": [plate]}, "us")
    assert squeeze(weighed["headline"]) == squeeze(page.locator("[data-headline]").first.inner_text())
    carried = page.locator(".next-sheets li", has=page.locator('a[href*="sling-legs"]'))
    load = carried.locator(".next-value").inner_text()
    assert load in weighed["headline"]
    carried.locator("a").tap()
    page.wait_for_url("**/sling-legs.html*")
    expect(page.locator('[name="load"]')).to_have_value(load)
    expect(page.locator("[data-carried]").first).to_contain_text("What does it weigh")
    expect(page.locator("[data-answer]:not([data-verdict])")).to_be_attached()  # a weight alone is no answer
    walk.fill(LEGS)
    walk.answered()
    walk.stands_well()
    wanted: dict[str, Any] = answer("sling-legs", {"load": load, **LEGS}, "us")
    assert wanted["verdict"] == "ok"
    assert squeeze(wanted["headline"]) == squeeze(page.locator("[data-headline]").first.inner_text())
    paper = walk.paper(tmp_path)
    assert paper.pages == 1
    assert paper.cut() == []
    paper.holds(
        load, wanted["verdict_words"], *(wanted["results"][name]["text"] for name in ("leg_tension",))
    )
    paper.holds("Grade 80", "3/8", "60")


READINGS = [("0", "2.0000"), ("610", "2.0020"), ("1210", "2.0041"), ("1790", "2.0061"), ("2390", "2.0080"),
            ("2900", "2.0097"), ("0", "2.0001")]  # fmt: skip


def test_a_log_is_kept_row_by_row_and_printed(walk: Walk, tmp_path: Path) -> None:
    page = walk.page
    walk.start("trial-log")
    kept = {"condition": "marked-good", "part": "no-throat", "kept_as": "readings"}
    walk.fill(kept)
    for number, (force, gap) in enumerate(READINGS):
        if page.locator(f'[name="readings[{number}].force"]:visible').count() == 0:
            page.get_by_role("button", name="Add one more").tap()
        walk.fill({f"readings[{number}].force": f"{force} lb", f"readings[{number}].gap": f"{gap} in"})
    walk.answered()
    walk.stands_well()
    rows = [{"force": f"{force} lb", "gap": f"{gap} in"} for force, gap in READINGS]
    wanted = answer("trial-log", {**kept, "readings": rows}, "us")
    expect(page.locator("[data-headline]").first).to_have_text(wanted["headline"])
    paper = walk.paper(tmp_path)
    assert paper.pages <= 2
    assert paper.cut() == []
    results = wanted["results"]
    paper.holds(wanted["headline"], results["top_force"]["text"], results["set_shown"]["text"])
    paper.holds(*(f"{force} lb" for force, _gap in READINGS[1:-1]))


def test_the_message_of_a_new_edition_stands_on_the_first_screen_of_every_phone(walk: Walk) -> None:
    page = walk.page
    walk.start("hook-check")
    page.evaluate(
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
        }"""
    )
    for part in page.locator(".edition-notice, .edition-notice button").all():
        seen = rect(part)
        assert seen["x"] >= 0
        assert seen["x"] + seen["width"] <= walk.screen.width
        assert seen["y"] >= 0
        assert seen["y"] + seen["height"] <= walk.screen.height
    assert (
        min(rect(button)["height"] for button in page.locator(".edition-notice button").all())
        >= LEAST_TARGET_PX
    )
