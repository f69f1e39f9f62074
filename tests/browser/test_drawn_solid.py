"""A solid drawn on a computer, dropped on the page: weighed, refused with a reason, its wait said in words."""

from __future__ import annotations

import struct
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.conftest import ANSWERED, KEEPS_NOTHING, example

SHEET = example("load-weight")
CORNERS = [(x, y, z) for x in (0.0, 10.0) for y in (0.0, 10.0) for z in (0.0, 10.0)]
SIDES = [(0, 1, 3, 2), (4, 6, 7, 5), (0, 4, 5, 1), (2, 3, 7, 6), (0, 2, 6, 4), (1, 5, 7, 3)]


@pytest.fixture
def before_scripts() -> str:
    """Keeping the book is asked in test_starting.py and test_editions.py."""
    return KEEPS_NOTHING


def binary_stl(faces: list[tuple[int, int, int]]) -> bytes:
    """A binary STL file of triangles between the corners of a cube of ten units."""
    body = b"".join(
        struct.pack("<12fH", 0.0, 0.0, 0.0, *(number for corner in face for number in CORNERS[corner]), 0)
        for face in faces
    )
    return b"\0" * 80 + struct.pack("<I", len(faces)) + body


CUBE = [face for a, b, c, d in SIDES for face in ((a, b, c), (a, c, d))]


def drop(page: Page, name: str, data: bytes) -> None:
    """Choose a file in the box for drawn solids."""
    page.set_input_files('[name="solid"]', {"name": name, "mimeType": "model/stl", "buffer": data})


@pytest.fixture
def emptied(page: Page, served: str) -> Page:
    """The page with every part taken out, its solid set to inches of steel."""
    page.goto(served + SHEET)
    expect(page.locator(ANSWERED)).to_be_attached()
    while (takes_out := page.locator('calc-sheet button:visible:has-text("Take this one out")')).count():
        takes_out.first.click()
    page.select_option('[name="solid_unit"]', "in")
    page.select_option('[name="solid_material"]', label="steel")
    return page


def test_a_cube_of_steel_weighs_what_the_shop_rule_says(emptied: Page) -> None:
    """490 lb a cubic foot (Iowa DOT IM 452.02 and the trade): 10 in cubed is 283.6 lb."""
    drop(emptied, "cube.stl", binary_stl(CUBE))
    expect(emptied.locator('[data-result="weight"]')).to_be_attached()
    expect(emptied.locator("[data-headline]")).to_contain_text("284 lb")
    expect(emptied.locator(ANSWERED)).to_be_attached()


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (b"\x89PNG no solid at all" + b"\0" * 99, "is neither an ASCII nor a whole binary STL file"),
        (binary_stl(CUBE[:-1]), "is not closed"),
    ],
)
def test_a_bad_drawing_is_refused_with_its_reason(emptied: Page, data: bytes, said: str) -> None:
    drop(emptied, "hull.stl", data)
    expect(emptied.locator('[data-error="solid"]')).to_contain_text(said)
    assert emptied.locator("[data-headline]").inner_text().strip() == ""


@pytest.mark.parametrize(("size", "said"), [(0, "is an empty file"), (50_000_001, "is 51 MB")])
def test_a_file_that_cannot_be_one_is_refused_unread_and_does_not_stay_in_the_box(
    page: Page, served: str, tmp_path: Path, size: int, said: str
) -> None:
    page.goto(served + SHEET)
    expect(page.locator(ANSWERED)).to_be_attached()
    drawing = tmp_path / "whole-boat.stl"
    with drawing.open("wb") as stream:
        stream.truncate(size)
    page.set_input_files('[name="solid"]', str(drawing))
    expect(page.locator('[data-error="solid"]')).to_contain_text(said)
    assert page.locator("[data-headline]").inner_text().strip() == ""
    assert page.input_value('[name="solid"]') == ""


def test_a_large_drawing_says_that_it_takes_a_while(emptied: Page) -> None:
    emptied.evaluate(
        """() => { const sheet = document.querySelector("calc-sheet"); globalThis.said = [];
        new MutationObserver(() => said.push(sheet.innerText)).observe(sheet, {childList: true, subtree: true, characterData: true}); }"""
    )
    drop(emptied, "keel.stl", binary_stl(CUBE * 2_000))
    expect(
        emptied.locator('[data-error="solid"]')
    ).to_be_visible()  # the same skin many times over is no solid
    assert emptied.evaluate("said.some((words) => words.includes('A large drawing takes some seconds'))")
