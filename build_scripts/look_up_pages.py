"""Which tables stand on which look-up page, and where pages went that are no longer pages of their own.

A look-up page is a Markdown file in docs/look-up whose front matter names the tables that it holds:

    ---
    title: Shackles
    description: Working load limits, side pull, wear, sizes.
    group: chain                    one of GROUPS, in the order of use
    order: 20                       the place among the pages of its group
    tables: shackles, shackle-limits
    moved_from: look-up/old.md      pages that became part of this one, if any, with blanks between them
    ---

Its text shows each of them with `{{ table("shackles") }}`. A table that no page names gets a page of its own; a file
of its name without front matter then is the words under it. Everybody to `look-up/TABLE.md`, whichever page it stands on: such links are led on when the page is written.
"""

from __future__ import annotations

import functools
import json
import posixpath
import re
from dataclasses import dataclass
from pathlib import Path

from calc.tables import table_names

ROOT = Path(__file__).resolve().parent.parent
DOCS = ROOT / "docs"
GROUPS = ("chain", "hardware", "slings", "tie-down", "heat", "inspection", "weights", "behind")
"""The groups of the index, in the order of use; the heading of each is the message `shelf-GROUP`."""
_CELL = re.compile(r"[cs]-\d+")


class WrongPlace(ValueError):
    """A table stands on no page or on two; the message names it."""


@dataclass(frozen=True)
class LookUpPage:
    """One look-up page: its name (the file, without its ending), its group, its order there, and the tables it holds."""

    name: str
    group: str
    order: int
    tables: tuple[str, ...]


@dataclass(frozen=True)
class Moved:
    """Where an old address leads: a page (`look-up/shackles`), a place on it, and how the names of cells begin there."""

    page: str
    anchor: str
    mark: str


def split_front_matter(text: str) -> tuple[dict[str, str], str]:
    """The front matter of a page (plain `key: value` lines) and the rest."""
    match = re.match(r"---\n(.*?)\n---\n", text, re.DOTALL)
    if not match:
        return {}, text
    meta: dict[str, str] = {}
    for line in match.group(1).splitlines():
        key, _, value = line.partition(":")
        value = value.strip()
        meta[key.strip()] = json.loads(value) if value.startswith('"') else value
    return meta, text[match.end() :]


def listed(names: str) -> tuple[str, ...]:
    """The names in a list with commas."""
    return tuple(name.strip() for name in names.split(",") if name.strip())


@functools.cache
def look_up_pages(docs: Path = DOCS) -> tuple[LookUpPage, ...]:
    """The pages in the order of use; a table that none of them names has a page of its own, after them."""
    made = []
    for path in sorted((docs / "look-up").glob("*.md")):
        meta, _ = split_front_matter(path.read_text(encoding="utf-8"))
        if not meta:
            continue  # words for a table's own page
        if meta.get("group") not in GROUPS:
            raise WrongPlace(f"{path.name}: its group is none of {', '.join(GROUPS)}")
        tables = listed(meta.get("tables", ""))
        made.append(LookUpPage(path.stem, meta["group"], int(meta.get("order", "99")), tables))
    held = [name for page in made for name in page.tables]
    known = [name for name in table_names() if name != "sources"]
    for name in held:
        if name not in known or held.count(name) > 1:
            raise WrongPlace(f"docs/look-up: {name} is no table, or stands on more than one page")
    made += [LookUpPage(name, "behind", 99, (name,)) for name in known if name not in held]
    return tuple(sorted(made, key=lambda page: (GROUPS.index(page.group), page.order, page.name)))


@functools.cache
def page_of(table: str) -> LookUpPage:
    """The page that a table stands on."""
    for page in look_up_pages():
        if table in page.tables:
            return page
    raise WrongPlace(f"{table} stands on no page")


def mark_of(table: str) -> str:
    """How the names of a table's cells begin: with its own name, except on the page that bears it."""
    return "" if page_of(table).name == table else f"{table}-"


def address(table: str, cell: int | None = None) -> str:
    """The address of a table, or of one of its rows (the number in its file), from the top of the site."""
    place = f"look-up/{page_of(table).name}.html"
    if cell is not None:
        return f"{place}#{mark_of(table)}c-{cell}"
    return place if page_of(table).tables[0] == table else f"{place}#of-{table}"


@functools.cache
def moved(docs: Path = DOCS) -> dict[str, Moved]:
    """Every page that is no longer a page of its own, by its old address without ending, and where it leads."""
    found = {}
    for page in look_up_pages(docs):
        for table in page.tables:
            if table != page.name:
                anchor = "" if page.tables[0] == table else f"of-{table}"
                found[f"look-up/{table}"] = Moved(f"look-up/{page.name}", anchor, f"{table}-")
    for path in sorted(docs.rglob("*.md")):
        if path.is_relative_to(docs / "words"):
            continue
        meta, _ = split_front_matter(path.read_text(encoding="utf-8"))
        for old in meta.get("moved_from", "").split():
            found[old.removesuffix(".md")] = Moved(path.relative_to(docs).with_suffix("").as_posix(), "", "")
    return found


def led_on(link: str, page: str) -> str:
    """A link of `page` (`judge/hook.md`) as it must be now: one to a moved page leads to where that is."""
    target, _, fragment = link.partition("#")
    if ":" in target or not target.endswith((".md", ".html")):
        return link
    ending = target[target.rindex(".") :]
    old = posixpath.normpath(posixpath.join(posixpath.dirname(page), target.removesuffix(ending)))
    now = moved().get(old)
    if now is None:
        return link
    if _CELL.fullmatch(fragment):
        fragment = now.mark + fragment
    relative = posixpath.relpath(now.page, posixpath.dirname(page) or ".")
    fragment = fragment or now.anchor
    if now.page == page.removesuffix(".md"):
        return f"#{fragment}" if fragment else f"{relative}{ending}"
    return f"{relative}{ending}" + (f"#{fragment}" if fragment else "")


def lead_links_on(text: str, page: str) -> str:
    """A page's text with all its links led on, those in Markdown and those in HTML."""
    text = re.sub(r"(\]\()([^)\s]+)(\))", lambda found: found[1] + led_on(found[2], page) + found[3], text)
    return re.sub(r'(href=")([^"]+)(")', lambda found: found[1] + led_on(found[2], page) + found[3], text)
