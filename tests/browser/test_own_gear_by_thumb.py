"""The shop's own gear from an empty worksheet to paper, as a phone in a shop does it: by touch, from the folder on disk."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, expect

from calc.answering import answer
from tests.browser.test_walks_by_thumb import Screen, Walk, squeeze

LUG = {
    "load": "2,800 lb", "thickness": "3/4 in", "hole": "15/16 in", "pin": "7/8 in", "side_edge": "1-1/4 in",
    "end_edge": "1-1/4 in", "height": "1-3/4 in", "weld_leg": "1/4 in", "weld_length": "3 in",
    "yield_strength": "36,000 psi", "tensile_strength": "58,000 psi", "weld_strength": "70,000 psi",
    "angle_in_plane": "15", "angle_out_of_plane": "0", "design_factor": "3", "pin_is": "marked", "welded_to": "wall",
    "wall_thickness": "1/2 in", "wall_span": "8 in", "wall_yield": "36,000 psi",
}  # fmt: off
"""A 3/4 in lug with 6 in of fillet: two runs of 3 in."""

FRAME = {
    "load": "1.5 t", "hoist_weight": "40 lb", "side_pull": "3", "kind": "a-frames", "span": "14 ft",
    "hung_from": "trolley", "section": "i-beam", "depth": "7.89 in", "flange_width": "3.94 in",
    "web_thickness": "0.170 in", "flange_thickness": "0.205 in", "ends_hold": "held", "yield_strength": "50,000 psi",
    "design_factor": "3", "height": "9 ft", "joint": "stiff", "post_width": "3 in", "post_wall": "1/4 in",
    "feet_apart": "5 ft", "feet_tied": "tied", "stands_on": "feet", "frame_weight": "600 lb", "fastened_by": "bolts",
    "bolt_grade": "a325", "bolt_diameter": "5/8 in", "fastener_count": "4",
    "plate_height": "6 in",
}  # fmt: off
"""A W8x10 on two A-frames, 14 ft, 1.5 t on a hand chain hoist."""


@pytest.mark.parametrize(
    ("sheet", "inputs", "printed"),
    [
        ("lifting-lug", LUG, ("governing", "capacity_estimate")),
        ("lifting-frame", FRAME, ("weakest", "not_more_than")),
    ],
    ids=["lug", "frame"],
)
def test_from_an_empty_sheet_to_paper(
    sheet: str,
    inputs: dict[str, str],
    printed: tuple[str, ...],
    new_context: Callable[..., BrowserContext],
    site: Path,
    tmp_path: Path,
) -> None:
    screen = Screen(390, 844, 100)
    context = new_context(
        viewport={"width": screen.width, "height": screen.height},
        has_touch=True,
        is_mobile=True,
        offline=True,
    )
    walk = Walk(context.new_page(), f"{site.as_uri()}/", screen)
    walk.start(sheet)
    walk.fill(inputs)
    walk.answered()
    walk.stands_well()
    wanted = answer(sheet, inputs, "us")
    expect(walk.page.locator("[data-headline]").first).to_have_text(wanted["headline"])
    expect(walk.page.locator("svg.drawing").first).to_be_attached()
    paper = walk.paper(tmp_path)
    assert paper.pages <= 2
    assert paper.cut() == []
    results = [wanted["results"][name]["text"] for name in printed]
    for text in (wanted["headline"], *results):
        assert squeeze(text) in squeeze(paper.flowing), text
