"""The built pages, read as files: links, weights, no inline script or style, plain rules of good HTML."""

from __future__ import annotations

import csv
import gzip
import hashlib
import json
import re
from collections import Counter
from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import unquote, urlsplit

import pytest

VOID = {"area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"}
MOST_PAGE_BYTES = 250_000
"""The budget of a look-up page in all, fonts and search index aside."""
MOST_FONT_BYTES = 250_000
LEADS_ON = '<meta name="moved-to"'
"""What only the files at the old addresses of tables have, which lead on to the page that now holds them."""


class Reader(HTMLParser):
    """Collects what the tests ask about, and whether the tags nest."""

    def __init__(self) -> None:
        super().__init__()
        self.ids: list[str] = []
        self.links: list[str] = []
        self.loads: list[str] = []
        self.tags: Counter[str] = Counter()
        self.wrong: list[str] = []
        self.labels: set[str] = set()
        self.boxes: list[tuple[str, bool]] = []
        self._open: list[str] = []
        self._lists_scripts = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        held = {key: value or "" for key, value in attrs}
        if len(held) != len(attrs):
            self.wrong.append(f"<{tag}> has an attribute twice")
        self.tags[tag] += 1
        if "id" in held:
            self.ids.append(held["id"])
        if tag == "a" and "href" in held:
            self.links.append(held["href"])
        if tag in ("script", "img") and "src" in held:
            self.loads.append(held["src"])
        self._lists_scripts = held.get("id") == "page-scripts"
        if tag == "link" and held.get("rel") in ("stylesheet", "icon", "manifest"):
            self.loads.append(held["href"])
        if tag == "script" and "src" not in held and held.get("type") != "application/json":
            self.wrong.append("a script in the page")
        if tag == "style" or "style" in held:
            self.wrong.append(f"a style in the page: <{tag}>")
        self.wrong.extend(f"<{tag} {key}>" for key in held if key.startswith("on"))
        if tag == "label" and "for" in held:
            self.labels.add(held["for"])
        if (
            tag in ("input", "select", "textarea")
            and held.get("type") not in ("radio", "checkbox")
            and "hidden" not in held
        ):
            self.boxes.append((held.get("id", ""), "label" in self._open or "aria-label" in held))
        if tag == "th" and "scope" not in held:
            self.wrong.append("a th without scope")
        if tag not in VOID:
            self._open.append(tag)

    def handle_data(self, data: str) -> None:
        if self._lists_scripts:  # early.js loads them
            self.loads.extend(one["src"] for one in json.loads(data) if not one.get("later"))
            self._lists_scripts = False

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(tag, attrs)
        if tag not in VOID:
            self._open.pop()

    def handle_endtag(self, tag: str) -> None:
        if tag in VOID:
            return
        if not self._open or self._open[-1] != tag:
            self.wrong.append(f"</{tag}> closes {self._open[-1:] or 'nothing'} at line {self.getpos()[0]}")
        if tag in self._open:
            while self._open.pop() != tag:
                pass


def read(path: Path) -> Reader:
    """One page, read."""
    reader = Reader()
    reader.feed(path.read_text(encoding="utf-8"))
    reader.close()
    reader.wrong.extend(f"<{tag}> is never closed" for tag in reader._open)
    return reader


@pytest.fixture(scope="module")
def read_pages(site: Path) -> dict[str, Reader]:
    """Every page, read."""
    return {
        path.relative_to(site).as_posix(): read(path)
        for path in sorted(site.rglob("*.html"))
        if LEADS_ON not in path.read_text(encoding="utf-8")
    }


def test_every_table_and_worksheet_has_its_page(site: Path, read_pages: dict[str, Reader]) -> None:
    from build_scripts.look_up_pages import look_up_pages, mark_of, page_of
    from calc.answering import declared_names
    from calc.tables import table, table_names
    from calc.words.notes import with_note_in_words

    wanted = {f"look-up/{one.name}.html" for one in look_up_pages()}
    wanted |= {f"work-out/{name}.html" for name in declared_names()}
    wanted |= {
        "index.html",
        "look-up/index.html",
        "work-out/index.html",
        "about/sources.html",
        "look-up/every-rating.html",
    }
    assert wanted - set(read_pages) == set()
    for name in (name for name in table_names() if name != "sources"):
        with (site / "look-up" / f"{name}.csv").open(newline="", encoding="utf-8") as file:
            rows = list(csv.DictReader(file))
        columns = table(name).columns
        printed = [{column: row[column] for column in columns} for row in rows]
        assert printed == [with_note_in_words(name, row) for row in table(name).rows]
        page = (site / "look-up" / f"{page_of(name).name}.html").read_text(encoding="utf-8")
        assert f'data-table="{name}"' in page
        assert f'id="{mark_of(name)}c-' in page
        assert f'href="{name}.csv"' in page
        assert (site / "look-up" / f"{name}.html").is_file(), (
            "the address of a table holds it, or leads to it"
        )
        record = json.loads((site / "look-up" / f"{name}.json").read_text(encoding="utf-8"))
        assert record["rows"]


def test_the_tables_are_published_as_data_and_the_large_files_are_not_kept_offline(
    site: Path, read_pages: dict[str, Reader]
) -> None:
    from build_scripts import published_tables as published

    page = read_pages["about/tables-as-data.html"]
    large = (published.PACKAGE, published.DOCUMENT, published.DATABASE)
    kept = (site / "offline-worker.js").read_text(encoding="utf-8")
    for name in (published.ARCHIVE, *large):
        assert f"../look-up/{name}" in page.links
        assert (site / "look-up" / name).stat().st_size > 10_000
        assert (f"look-up/{name}" in kept) is (name not in large)
    assert (site / "look-up" / published.ARCHIVE).stat().st_size <= published.MOST_OFFLINE_BYTES
    package = json.loads((site / "look-up" / published.PACKAGE).read_text(encoding="utf-8"))
    for resource in package["resources"]:
        content = (site / "look-up" / resource["path"]).read_bytes()
        assert resource["hash"] == f"sha256:{hashlib.sha256(content).hexdigest()}"
        assert resource["bytes"] == len(content)


def test_no_script_or_style_stands_in_a_page_and_tags_nest(read_pages: dict[str, Reader]) -> None:
    assert {name: page.wrong[:5] for name, page in read_pages.items() if page.wrong} == {}


def test_ids_are_unique_and_each_page_has_one_h1(read_pages: dict[str, Reader]) -> None:
    doubled = {
        name: [i for i, n in Counter(page.ids).items() if n > 1][:5] for name, page in read_pages.items()
    }
    assert {name: ids for name, ids in doubled.items() if ids} == {}
    assert {name: page.tags["h1"] for name, page in read_pages.items() if page.tags["h1"] != 1} == {}


def test_every_box_has_a_label(read_pages: dict[str, Reader]) -> None:
    bare = {
        n: [i for i, inside in p.boxes if not inside and i not in p.labels] for n, p in read_pages.items()
    }
    assert {name: ids for name, ids in bare.items() if ids} == {}


def test_links_lead_somewhere(site: Path, read_pages: dict[str, Reader]) -> None:
    broken: list[str] = []
    for name, page in read_pages.items():
        if name == "404.html":
            continue  # its addresses are laid out from the top of the site
        for link in page.links + page.loads:
            parts = urlsplit(link)
            if parts.scheme in ("http", "https", "mailto"):
                continue
            target = ((site / name).parent / unquote(parts.path)).resolve() if parts.path else (site / name)
            if not target.is_file():
                broken.append(f"{name}: {link}")
                continue
            if parts.fragment and target.suffix == ".html":
                known = read_pages[target.relative_to(site.resolve()).as_posix() if parts.path else name].ids
                if unquote(parts.fragment) not in known and "=" not in parts.fragment:
                    broken.append(f"{name}: {link} (no such place)")
    assert broken == []


def test_nothing_is_loaded_from_another_host(site: Path, read_pages: dict[str, Reader]) -> None:
    assert {n: p.loads for n, p in read_pages.items() if any("//" in load for load in p.loads)} == {}
    assert "url(http" not in (site / "assets" / "book.css").read_text(encoding="utf-8")


def test_look_up_pages_keep_their_weight(site: Path, read_pages: dict[str, Reader]) -> None:
    """Page, style sheet, scripts and pictures, unpacked. The list of every rating is no table and may be larger; packed
    as a host sends it (gzip) it must still be light."""
    heavy = {}
    for name, page in read_pages.items():
        if name == "look-up/every-rating.html":
            assert len(gzip.compress((site / name).read_bytes())) < MOST_PAGE_BYTES / 5
        elif name.startswith("look-up/"):
            parts = [((site / name).parent / load).resolve() for load in page.loads]
            total = (site / name).stat().st_size + sum(p.stat().st_size for p in parts)
            if total > MOST_PAGE_BYTES:
                heavy[name] = total
    assert heavy == {}


def test_type_keeps_its_weight(site: Path) -> None:
    fonts = list((site / "assets" / "fonts").iterdir())
    assert all(font.suffix == ".woff2" for font in fonts)
    assert 0 < sum(font.stat().st_size for font in fonts) < MOST_FONT_BYTES


def test_each_page_says_its_edition_and_what_the_book_is_not(
    site: Path, read_pages: dict[str, Reader]
) -> None:
    for name in read_pages:
        text = (site / name).read_text(encoding="utf-8")
        assert "data-edition>" in text, name
        assert "What this book is not" in text, name


def test_an_old_address_of_a_table_leads_to_a_place_that_is_there(
    site: Path, read_pages: dict[str, Reader]
) -> None:
    from build_scripts.look_up_pages import moved

    for old, now in moved().items():
        assert (site / f"{old}.html").is_file(), old
        assert not now.anchor or now.anchor in read_pages[f"{now.page}.html"].ids, old


def test_the_look_up_pages_are_few_and_each_is_a_part(site: Path) -> None:
    from build_scripts.look_up_pages import look_up_pages

    assert len(look_up_pages()) <= 30
    index = (site / "look-up" / "index.html").read_text(encoding="utf-8")
    listed = [one.name for one in look_up_pages() if one.group != "behind"]
    assert [name for name in listed if f'href="{name}.html"' not in index] == []


def test_titles_are_told_apart(site: Path, read_pages: dict[str, Reader]) -> None:
    titles = Counter(
        (site / name).read_text(encoding="utf-8").split("<title>")[1].split("</title>")[0]
        for name in read_pages
    )
    assert [title for title, count in titles.items() if count > 1] == []


def test_each_source_has_one_card_and_all_values_are_counted(site: Path) -> None:
    from calc.tables import table, table_names

    text = (site / "about" / "sources.html").read_text(encoding="utf-8")
    cards = re.findall(r'<details class="source-card" id="([\w-]+)"', text)
    assert sorted(cards) == sorted(row["key"] for row in table("sources").rows)
    counted = re.findall(r"<summary>[^<]*(?:<span[^<]*</span>[^<]*)*<span>(\d+) values?\b", text)
    assert sum(map(int, counted)) == sum(len(table(name).rows) for name in table_names() if name != "sources")
    jumps = re.findall(r'<a href="#(from-[\w-]+)"', text)
    assert jumps
    assert all(f'id="{jump}"' in text for jump in jumps)


def test_a_value_not_seen_in_text_carries_its_ring_and_words(site: Path) -> None:
    from build_scripts.look_up_pages import page_of
    from calc.tables import table, table_names

    for name in (name for name in table_names() if name != "sources"):
        recalled = sum(row["checked"] == "memory" for row in table(name).rows)
        text = (site / "look-up" / f"{page_of(name).name}.html").read_text(encoding="utf-8")
        if recalled:
            assert 'aria-label="not seen in text"' in text, name
            assert f"not seen in text: {recalled} of" in text, name
