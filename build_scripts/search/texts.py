"""The text of the built pages, part by part under their headings, as the index takes it."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from html.parser import HTMLParser
from pathlib import Path

_SILENT = ("script", "style", "svg", "nav", "footer", "button", "select", "template")
_VOID = ("br", "img", "input", "hr", "meta", "link", "wbr", "source", "col", "area", "path")
_HEADINGS = ("h1", "h2", "h3")
_LEFT_OUT = ("claims", "every", "files", "headerlink", "ask", "on-page", "crumb", "no-script", "use")
"""Classes of what would be found on every page, or is a list of another page's names."""
_MOST_WORDS = 500
_OWN_PARTS = "kit"
"""A folder whose index is no list of pages: the reader's own parts."""


@dataclass
class Section:
    """A heading, its name in the address (empty for the page itself), and the words under it."""

    heading: str
    anchor: str
    text: list[str] = field(default_factory=list)

    def words(self) -> str:
        """The text under the heading, as one line."""
        said = re.sub(r"\s+", " ", " ".join(self.text)).strip()
        return " ".join(said.split(" ")[:_MOST_WORDS])


@dataclass(frozen=True)
class Page:
    """A built page: address, title, one sentence of what it holds, its kind (table, sheet, list or text), its sections."""

    address: str
    title: str
    description: str
    kind: str
    sections: tuple[Section, ...]


class _Reader(HTMLParser):
    """Reads the main part of a page."""

    def __init__(self) -> None:
        super().__init__()
        self.sections = [Section("", "")]
        self.title = self.description = self.kind = ""
        self._open: list[tuple[str, bool]] = []
        self._inside = False
        self._heading = ""
        self._in_title = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Open an element; from a silent one nothing is heard."""
        given = {name: value or "" for name, value in attrs}
        if tag == "meta" and given.get("name") == "description":
            self.description = given.get("content", "")
        self._in_title = self._in_title or tag == "title"
        if tag == "main":
            self._inside = True
            self.kind = given.get("class", "").partition("page-")[2].split(" ")[0]
        if tag in _VOID:
            return
        classes = given.get("class", "").split()
        silent = (
            tag in _SILENT
            or "data-search-exclude" in given
            or any(one in _LEFT_OUT for one in classes)
            or (tag == "td" and "head-cell" not in classes and self._in("data"))
        )
        self._open.append(("data" if tag == "table" and "data" in classes else tag, silent))
        if tag in _HEADINGS and self._heard():
            self.sections.append(Section("", given.get("id", "")))
            self._heading = tag

    def handle_endtag(self, tag: str) -> None:
        """Close an element, and what was left open inside it."""
        if tag == "title":
            self._in_title = False
        if tag == self._heading:
            self._heading = ""
        if tag == "main":
            self._inside = False
        for place in range(len(self._open) - 1, -1, -1):
            if self._open[place][0] in (tag, "data" if tag == "table" else tag):
                del self._open[place:]
                break

    def handle_data(self, data: str) -> None:
        """Keep what is said."""
        if self._in_title and not self._open_has("body"):
            self.title += data
        if not self._heard() or not data.strip():
            return
        here = self.sections[-1]
        if self._heading:
            here.heading = re.sub(r"\s+", " ", f"{here.heading} {data}").strip()
        else:
            here.text.append(data)

    def _heard(self) -> bool:
        return self._inside and not any(silent for _, silent in self._open)

    def _in(self, tag: str) -> bool:
        return any(name == tag for name, _ in self._open)

    def _open_has(self, tag: str) -> bool:
        return self._in(tag)


def read_page(site: Path, file: Path) -> Page:
    """One built page."""
    reader = _Reader()
    reader.feed(file.read_text(encoding="utf-8"))
    first = next((one.heading for one in reader.sections if one.heading), reader.title.partition(" | ")[0])
    sections = [one for one in reader.sections if one.heading or one.text]
    return Page(
        file.relative_to(site).as_posix(), first.strip(), reader.description, reader.kind, tuple(sections)
    )


def read_pages(site: Path) -> list[Page]:
    """Every page that can be found: all but the home page, the indexes of the parts, and what only leads elsewhere."""
    found = [
        read_page(site, file)
        for file in sorted(site.rglob("*.html"))
        if file.name not in ("index.html", "404.html") or file.parent.name == _OWN_PARTS
    ]
    return [page for page in found if page.title and page.kind != "moved"]


__all__ = ["Page", "Section", "read_page", "read_pages"]
