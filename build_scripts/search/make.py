"""Makes the data of the search from the built pages, and has Node make the index with the scripts that will read it.

    python -m build_scripts.search.make SITE

writes scripts/search.js (the search itself) and scripts/search-data.js (all it knows) into the built site. Both are
classic scripts, so that the folder opened from disk has them as well.
"""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from build_scripts.look_up_pages import moved
from build_scripts.search import cards, fills, reading, rows, texts
from build_scripts.wording import SEARCH, writer
from calc import answering

ROOT = Path(__file__).resolve().parent.parent.parent


class SearchNotMade(RuntimeError):
    """The index could not be made; the message says what was printed."""


def address_of(name: str, known: Mapping[str, texts.Page]) -> str | None:
    """Where a page is that is named by its table, its worksheet or its place under docs/; None where the site has none."""
    if "/" in name:
        places = [f"{name}.html"]
    else:
        places = [f"work-out/{name}.html"] if name in answering.declared_names() else []
        places += [f"look-up/{name}.html"]
    led = moved()
    places += [
        f"{led[place.removesuffix('.html')].page}.html"
        for place in places
        if place.removesuffix(".html") in led
    ]
    return next((place for place in places if place in known), None)


def data(site: Path, root: Path = ROOT) -> dict[str, Any]:
    """All that the search knows, but for the index of the texts."""
    words = reading.read_words(root)
    pages = texts.read_pages(site)
    known = {page.address: page for page in pages}
    places = {page.address: number for number, page in enumerate(pages)}
    asked: list[list[Any]] = []
    for name, said in words.answers.items():
        address = address_of(name, known)
        if address is not None:
            sayings = said.get("say", {})
            asked += [[line, places[address], sayings.get(line, "")] for line in said["asked"]]
            asked += [
                [line, places[address], text] for line, text in sayings.items() if line not in said["asked"]
            ]
    absent = []
    for name, said in words.not_here.items():
        address = address_of(said["to"], known)
        absent.append([name, said["say"], -1 if address is None else places[address]])
    return {
        "rules": reading.rules(),
        "counts": reading.COUNTS,
        "kinds": reading.KINDS,
        "grades": reading.grades(),
        "gradeNames": reading.grade_names(),
        "lifts": reading.lifting_grades(),
        "concepts": reading.concepts(words),
        "plain": words.synonyms["plain"]["words"],
        "own": words.synonyms["own"]["words"],
        "misspelt": words.synonyms["misspelt"],
        "cardFields": cards.fields(),
        "cards": cards.as_data(cards.cards(words.synonyms["parts"])),
        "pages": [[page.title, page.address, page.kind, page.description] for page in pages],
        "asked": asked,
        "rowsBySize": rows.rows_by_size(lambda name: address_of(name, known)),
        "rowsByName": rows.rows_by_name(lambda name: address_of(name, known)),
        "absent": absent,
        "fills": fills.by_address(lambda name: address_of(name, known)),
        "colours": fills.colours(),
        "together": words.synonyms["together"],
        "allowed": words.synonyms["allowed"],
        "words": dict(writer().words.scopes.get(SEARCH, {})),
        "texts": [[[one.heading, one.anchor, one.words()] for one in page.sections] for page in pages],
    }


def missing(site: Path, root: Path = ROOT) -> list[str]:
    """Pages that the words of the search name and the site has not."""
    words = reading.read_words(root)
    known = {page.address: page for page in texts.read_pages(site)}
    named = [*words.answers, *(said["to"] for said in words.not_here.values())]
    return [name for name in dict.fromkeys(named) if address_of(name, known) is None]


def make_search(site: Path, root: Path = ROOT) -> None:
    """Write the search and what it knows into a built site."""
    (site / "scripts").mkdir(parents=True, exist_ok=True)
    folder = root / "build_scripts"
    command = [
        "node",
        str(folder / "search" / "make_index.mjs"),
        str(folder / "scripts" / "search"),
        str(site),
    ]
    done = subprocess.run(
        command,
        cwd=root,
        input=json.dumps(data(site, root), ensure_ascii=False),
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    if done.returncode != 0:
        raise SearchNotMade(f"make_index.mjs failed:\n{done.stderr.strip()[-2000:]}")


if __name__ == "__main__":
    make_search(Path(sys.argv[1]))
