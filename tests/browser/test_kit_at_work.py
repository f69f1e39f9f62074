"""The kit at work on a phone: ten parts entered and three judged, a lift planned from them on another phone, its sheet and a
tag printed; what is overdue, never inspected or out of use; the kit without a network; a photo.
"""

from __future__ import annotations

import base64
import datetime
import io
import json
import random
import re
import subprocess
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from PIL import Image
from playwright.sync_api import Page, expect

from calc.records.kit.file import from_json, to_json
from calc.records.kit.part import Look, Out, Part, Seen
from calc.records.kit.schema import MEASURES
from tests.browser.conftest import ANSWERED, own
from tests.browser.test_kit import (
    PHONE,
    NewContext,
    add,
    exported,
    fill,
    look,
    opened,
    shot,
    stands_well,
    to_list,
)

KEPT = 'html[data-offline="kept"]'
LONGEST_SIDE = 900
"""Dots on the longer side of a kept photo (build_scripts/scripts/kit/photo.mjs)."""
TEN: dict[str, dict[str, str]] = {
    "C-1": {"kind": "chain-sling", "mark": "80", "size": "3/8"},
    "C-2": {"kind": "chain-sling", "mark": "80", "size": "1/2"},
    "H-1": {"kind": "hook", "mark": "G80", "size": "3/8"},
    "R-1": {"kind": "ring", "mark": "80", "rating": "12,300 lb"},
    "S-4": {"kind": "shackle", "mark": "A", "size": "5/8"},
    "S-5": {"kind": "shackle", "mark": "A", "size": "3/4"},
    "W-2": {"kind": "web-sling", "rating": "3,200 lb"},
    "K-1": {"kind": "hoist", "rating": "2 short tons"},
    "T-1": {"kind": "tie-down-chain", "mark": "70", "size": "3/8"},
    "T-2": {"kind": "strap", "rating": "3,333 lb"},
}
JUDGED = ("C-1", "S-4", "K-1")


def days_ago(days: int) -> str:
    """A day so many before today."""
    return (datetime.date.today() - datetime.timedelta(days=days)).isoformat()


def passed(days: int, found: str = "ok") -> tuple[Look, ...]:
    """One look so many days ago."""
    return (Look(days_ago(days), "R. Ames", found, "", "", {}),)


def part(number: str, **more: Any) -> Part:
    """One of the ten parts, as a file has it."""
    one = Part(
        id=f"{[*TEN].index(number):012x}",
        number=number,
        kind="",
        name="",
        mark="",
        other_marks="",
        size="",
        rating="",
        tag="",
        condition="marked-good",
        bought_on="",
        bought="",
        place="us-federal",
        service="normal",
        new=dict.fromkeys(MEASURES, ""),
        looks=(),
        out=None,
        seen=Seen("", ""),
        photo="",
    )
    fields: dict[str, Any] = dict(TEN[number])
    if "/" in fields.get("size", ""):
        fields["size"] += " in"
    return replace(one, **(fields | more))


def with_kit(served: str, new_context: NewContext, folder: Path, parts: list[Part]) -> Page:
    """A phone that has read a kit from a file."""
    page = new_context(**PHONE, locale="en-US").new_page()
    file = folder / "kit.json"
    file.write_text(to_json(parts, "2026.1", ""), encoding="utf-8")
    page.goto(f"{served}kit/index.html")
    opened(page)
    page.set_input_files("[data-kit-import]", file)
    page.locator("form.kit-form button[type=submit]").tap()
    expect(page.locator("[data-kit-rows] > li")).to_have_count(len(parts))
    return page


def take(page: Page, number: str, row: str = "") -> None:
    """Fill a row from the kit, by thumb."""
    place = page.locator(f'[data-own-part="{row}"]')
    place.locator("[data-kit-pick]").tap()
    chosen = place.locator(f'[data-kit-take="{number}"]')
    expect(chosen).to_be_visible()
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
    assert chosen.evaluate("one => one.getBoundingClientRect().height") >= 44
    chosen.tap()
    expect(place.locator("[data-kit-taken]")).to_contain_text(f"{number} is filled in")
    expect(place.locator('[name$="own_number"]')).to_have_value(number)


def verdict(page: Page, wanted: str) -> None:
    """The answer to what stands in the boxes has a verdict."""
    expect(page.locator(f'{ANSWERED} [data-answer][data-verdict="{wanted}"]')).to_be_attached()


def words_on_paper(page: Page, target: Path) -> str:
    """What stands on paper, without blanks: a line may end within a date."""
    page.evaluate("document.fonts.ready")
    page.pdf(path=target, prefer_css_page_size=True)
    command = ["pdftotext", str(target), "-"]
    return "".join(subprocess.run(command, check=True, capture_output=True, text=True).stdout.split())


def test_ten_parts_are_entered_by_thumb_and_three_judged(
    served: str, new_context: NewContext, tmp_path: Path
) -> None:
    page = new_context(**PHONE, locale="en-US").new_page()
    page.goto(f"{served}kit/index.html")
    opened(page)
    for number, fields in TEN.items():
        add(page, {"number": number, **fields, "condition": "marked-good"})
        to_list(page)
    expect(page.locator(".kit-count")).to_contain_text("10 parts need a look")
    for number in JUDGED:
        look(page, number)
        to_list(page)
    expect(page.locator(".kit-count")).to_contain_text("7 parts need a look")
    stands_well(page)
    page.fill("[data-kit-find-all]", "shackle 3/4")
    expect(page.locator("[data-kit-rows] > li")).to_have_count(1)
    expect(page.locator("[data-kit-rows]")).to_contain_text("S-5")
    page.fill("[data-kit-find-all]", "")
    expect(page.locator("[data-kit-rows] > li")).to_have_count(10)
    page.select_option("[data-kit-only]", "due")
    expect(page.locator("[data-kit-rows] > li")).to_have_count(7)
    shot(page, "kit-ten")
    kit = from_json(exported(page, "json", tmp_path).read_text(encoding="utf-8"))
    kept = {one.number: {name: getattr(one, name) for name in ("kind", "mark", "size")} for one in kit.parts}
    assert kept == {number: {name: getattr(part(number), name) for name in kept["C-1"]} for number in TEN}
    assert {one.number for one in kit.parts if one.looks} == set(JUDGED)


def test_on_another_phone_a_lift_is_planned_from_the_kit_and_printed(
    served: str, new_context: NewContext, tmp_path: Path
) -> None:
    looks = {number: passed(20) for number in JUDGED} | {"S-5": passed(800)}
    page = with_kit(
        served, new_context, tmp_path, [part(number, looks=looks.get(number, ())) for number in TEN]
    )
    page.goto(f"{served}work-out/load-path.html")
    page.fill('[name="load"]', "1,800 lb")
    page.select_option('[name="use"]', "plain")
    for row, number in enumerate(("K-1", "C-1", "S-4")):
        if row:
            page.locator("[data-add-row]").tap()
        take(page, number, f"items[{row}].")
    verdict(page, "ok")
    headline = page.locator("[data-headline]")
    for number in JUDGED:
        expect(headline).to_contain_text(f"{number}, inspected {days_ago(20)}")
    shot(page, "kit-lift")
    paper = words_on_paper(page, tmp_path / "lift.pdf")
    assert [number for number in JUDGED if f"{number},inspected{days_ago(20)}" not in paper] == []
    take(page, "S-5", "items[2].")  # overdue, and its reader finds it good
    expect(page.locator('[name="items[2].condition"]')).to_have_value("")
    verdict(page, "unknown")
    page.select_option('[name="items[2].condition"]', "marked-good")
    verdict(page, "caution")
    expect(page.locator(".cautions")).to_contain_text("The next full inspection of S-5 was due by")
    shot(page, "kit-lift-overdue")
    page.goto(f"{served}kit/index.html#part={part('C-1').id}")
    opened(page)
    page.locator('[data-kit-view] a[href*="tag.html"]').tap()
    expect(page.locator(f"{ANSWERED} svg.tag-148x76")).to_be_attached()
    tag = words_on_paper(page, tmp_path / "tag.pdf")
    assert [one for one in ("C-1", "Mark:80", f"Inspected{days_ago(20)}", "R.Ames") if one not in tag] == []


def test_what_is_out_of_use_is_not_offered_and_what_never_passed_is_careful_or_worse(
    served: str, new_context: NewContext, tmp_path: Path
) -> None:
    parts = [
        part("C-1"),
        part("C-2", out=Out(days_ago(3), "worn", "R. Ames"), looks=passed(20)),
        part("W-2", rating="6,200 lb", looks=passed(5, "stop")),
        part("T-1", looks=passed(5)),
    ]
    page = with_kit(served, new_context, tmp_path, parts)
    page.goto(served + own("sling-legs"))
    verdict(page, "ok")
    page.locator("[data-kit-pick]").tap()
    expect(page.locator("[data-kit-take]")).to_have_count(2)
    expect(page.locator(".own-part-list")).to_contain_text("1 more part is out of use")
    shot(page, "kit-pick")
    page.locator("[data-kit-pick]").tap()
    expect(page.locator("[data-kit-take]")).to_have_count(0)
    take(page, "C-1")
    page.select_option('[name="condition"]', "marked-good")
    verdict(page, "caution")
    expect(page.locator("[data-headline]")).to_contain_text("From your kit: C-1, never inspected")
    take(page, "W-2")
    expect(page.locator('[name="leg_rating"]')).to_have_value("6,200 lb")
    page.select_option('[name="condition"]', "marked-good")
    verdict(page, "unknown")
    page.goto(served + own("tie-down"))
    verdict(page, "ok")
    take(page, "T-1", "tie_downs[0].")
    expect(page.locator('[name="tie_downs[0].grade"]')).to_have_value("70")
    page.select_option('[name="tie_downs[0].label"]', "wll")
    verdict(page, "ok")
    expect(page.locator("[data-headline]")).to_contain_text(f"T-1, inspected {days_ago(5)}")


def test_after_one_visit_the_kit_needs_no_network(served: str, new_context: NewContext) -> None:
    context = new_context(**PHONE, locale="en-US")
    page = context.new_page()
    page.goto(f"{served}kit/index.html")
    expect(page.locator(KEPT)).to_be_attached()
    context.set_offline(True)
    page.reload()
    opened(page)
    add(page, {"number": "C-1", **TEN["C-1"], "condition": "marked-good"})
    page.goto(f"{served}work-out/sling-legs.html")
    take(page, "C-1")
    page.goto(f"{served}kit/index.html")
    opened(page)
    expect(page.locator("[data-kit-rows]")).to_contain_text("C-1")


def noisy_photo() -> bytes:
    """A photo as large as a phone takes, which no method packs well."""
    dots = random.Random(1).randbytes(600 * 800 * 3)
    picture = Image.frombytes("RGB", (600, 800), dots).resize((2400, 3200))
    file = io.BytesIO()
    picture.save(file, "JPEG", quality=85)
    return file.getvalue()


def test_a_photo_is_made_small_before_it_is_kept(
    served: str, new_context: NewContext, tmp_path: Path
) -> None:
    page = new_context(**PHONE, locale="en-US").new_page()
    page.goto(f"{served}kit/index.html")
    opened(page)
    photo = noisy_photo()
    page.locator("[data-kit-tools] a").tap()
    expect(page.locator("form.kit-form")).to_be_visible()
    fill(page, {"number": "C-1", **TEN["C-1"], "condition": "marked-good"})
    page.locator("form.kit-form details summary").first.tap()
    page.set_input_files("#kit-photo", {"name": "chain.jpg", "mimeType": "image/jpeg", "buffer": photo})
    expect(page.locator("form.kit-form [name=photo]")).to_have_value(re.compile("^data:image/jpeg;base64,"))
    page.locator("form.kit-form button[type=submit]").tap()
    shown = page.locator("img.kit-photo")
    expect(shown).to_be_visible()
    sides = shown.evaluate(
        "async one => { await one.decode(); return [one.naturalWidth, one.naturalHeight]; }"
    )
    assert max(sides) <= LONGEST_SIDE
    assert sides[0] / sides[1] == pytest.approx(0.75, abs=0.01)
    to_list(page)
    kit = json.loads(exported(page, "json", tmp_path).read_text(encoding="utf-8"))
    kept = base64.b64decode(kit["parts"][0]["photo"].partition(",")[2])
    assert len(kept) < len(photo) / 3
    assert Image.open(io.BytesIO(kept)).size == tuple(sides)
