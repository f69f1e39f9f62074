"""Finds English that is left in a page of the made-up language: what a reader sees, hears or is asked, word by word."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from collections.abc import Iterator
from html.parser import HTMLParser
from pathlib import Path

from build_scripts.wording import VARIABLE
from calc.unit_factors import UNIT_FACTORS
from calc.words.compiling import PSEUDO

ROOT = Path(__file__).resolve().parent.parent.parent

SPOKEN = ("title", "alt", "aria-label", "placeholder", "aria-description", "content")
"""Attributes that carry words; `content` only of a description."""
UNSEEN = ("style", "code", "kbd", "samp")
"""Elements whose text is no prose."""
RUN = re.compile(r"(?<![\w·./-])[a-z]+(?:[-’'][a-z]+)*[,;:]?(?:\s+[a-z]+(?:[-’'][a-z]+)*[,;:]?)+(?![\w·])")
"""Two or more plain words of small letters in a row. A word of the made-up language has letters that are not plain."""

FRACTION = ("frac", "frac-dash")
"""Classes of the elements that set a shop fraction within a sentence."""
UNITS = frozenset(symbol for units in UNIT_FACTORS.values() for symbol in units)
"""Symbols of units are the same in every language; a list of them is no sentence."""


class _Page(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.found: list[tuple[str, str]] = []
        self._open: list[tuple[str, str]] = []
        self._text: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        if given.get("class") in FRACTION:
            self._open.append((FRACTION[0], ""))
            return
        self._flush()
        for name in SPOKEN:
            if given.get(name) and (name != "content" or given.get("name") == "description"):
                self.found.append((f"{tag}[{name}]", str(given[name])))
        for name, value in given.items():
            if name.startswith("data-") and value and value[:1] in "[{":
                self.found += [(f"{tag}[{name}]", text) for text in texts_of(json.loads(value))]
        if tag not in ("meta", "link", "input", "br", "hr", "img", "path", "circle", "rect"):
            self._open.append((tag, str(given.get("type", "")) or str(given.get("id", ""))))

    def handle_endtag(self, tag: str) -> None:
        if self._open and self._open[-1][0] == FRACTION[0]:
            self._open.pop()
            return
        self._flush()
        while self._open and self._open.pop()[0] != tag:
            pass

    def handle_data(self, data: str) -> None:
        self._text.append(data)

    def _flush(self) -> None:
        text, self._text = "".join(self._text).strip(), []
        if not text:
            return
        tags = [tag for tag, _ in self._open]
        if any(tag in UNSEEN for tag in tags):
            return
        if tags and tags[-1] == "script":
            if self._open[-1][1] == "application/json":
                self.found += [("script", one) for one in texts_of(json.loads(text))]
            return
        self.found.append((tags[-1] if tags else "", text))


MAKE = """
import sys
from pathlib import Path
from build_scripts.build import lay_out
from build_scripts.pages import finish_site, write_pages
out = Path(sys.argv[1])
write_pages(out / "pages")
lay_out(out / "pages", out / "site")
finish_site(out / "site")
"""


def build_pages(out: Path) -> Path:
    """Write the pages in the made-up language and lay them out, without the runtime; gives the folder of the site.

    A build has one language, so it runs in a process of its own.
    """
    environment = {**os.environ, VARIABLE: PSEUDO}
    subprocess.run([sys.executable, "-c", MAKE, str(out)], cwd=ROOT, check=True, env=environment)
    return out / "site"


def texts_of(data: object) -> Iterator[str]:
    """The texts in data, keys left out."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for value in data.values():
            yield from texts_of(value)
    elif isinstance(data, list):
        for value in data:
            yield from texts_of(value)


def texts_of_page(html: str) -> list[tuple[str, str]]:
    """Where and what: every text of a page that a reader sees or hears."""
    page = _Page()
    page.feed(html)
    page.close()
    return page.found


def english(text: str, allowed: tuple[str, ...] = ()) -> list[str]:
    """Runs of plain words in a text, after what is allowed was taken out of it, the longest first."""
    if not RUN.search(text):
        return []
    for one in sorted({one for one in allowed if one and one in text}, key=len, reverse=True):
        text = re.sub(rf"(?<!\w){re.escape(one)}(?!\w)", " § ", text)
    runs = [found.group() for found in RUN.finditer(text)]
    return [run for run in runs if not UNITS.issuperset(re.findall(r"[a-z]+", run))]
