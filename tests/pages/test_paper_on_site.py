"""The printed sheets on the built site: all there, small, kept for use without a network, and each linked from a page."""

from __future__ import annotations

from pathlib import Path

from build_scripts import paper

MOST_BYTES = 4_000_000


def names() -> set[str]:
    return {
        f"{paper.FOLDER}/{paper.file_name(sheet.name, size)}"
        for sheet in paper.sheets()
        for size in paper.PAPERS
    }


def test_every_sheet_is_there_and_all_are_small(site: Path) -> None:
    there = {
        path.relative_to(site).as_posix(): path.stat().st_size for path in (site / paper.FOLDER).iterdir()
    }
    assert set(there) == names()
    assert sum(there.values()) <= MOST_BYTES


def test_every_sheet_is_kept_for_use_without_a_network(site: Path) -> None:
    listed = (site / "offline-worker.js").read_text(encoding="utf-8")
    assert [name for name in names() if name not in listed] == []


def test_every_sheet_is_linked_from_the_page_of_sheets_and_from_its_own(site: Path) -> None:
    pages = {path: path.read_text(encoding="utf-8") for path in site.rglob("*.html")}
    for name in names():
        linked = {path.relative_to(site).as_posix() for path, text in pages.items() if name in text}
        assert "about/on-the-wall.html" in linked
        assert len(linked) > 1 or name.startswith(f"{paper.FOLDER}/pocket-book"), name


def test_the_page_of_a_sheet_is_there(site: Path) -> None:
    assert [sheet.name for sheet in paper.sheets() if not (site / f"{sheet.page}.html").is_file()] == []
