"""The book in the made-up language en-XA: an English word that is left was not taken from the catalogue.

The pages are written and laid out in a folder of their own, without the runtime.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from build_scripts import compare_editions
from build_scripts.lessons.printed import printed_figures
from calc import telling
from calc.answering import Refused, answer_in_spans, declared, described, worksheet
from calc.inputs import Input
from calc.inspecting.chain_check import DAMAGE
from calc.tables import table, table_names
from calc.trees import markup
from calc.words.compiling import PSEUDO
from calc.words.writer import plain
from tests.pages.english import build_pages, english, texts_of_page
from tests.random_inputs import changed

ROOT = Path(__file__).resolve().parent.parent.parent
CASES = 20
"""Random inputs of each worksheet."""


# ------------------------------------------------------------------------------- what is no word of ours


@cache
def of_sources() -> tuple[str, ...]:
    """Titles and places of sources: they are cited as they are called and printed."""
    found: set[str] = set()
    for name in table_names():
        for row in table(name).rows:
            found.update(row[column] for column in ("title", "locator") if row.get(column))
    for sheet in declared().values():
        found.update(citation.locator for citation in sheet.citations)
    found.update(figure.locator for figure in printed_figures().values())
    return tuple(filter(None, found | module_locators()))


@cache
def cards_of_sources() -> tuple[str, ...]:
    """What the card of a source says stands in tables/sources as data of that table, in the language of its rows."""
    columns = ("publisher", "edition", "governs", "how_read", "licence")
    return tuple({row[column] for row in table("sources").rows for column in columns})


@cache
def kept_changes() -> tuple[str, ...]:
    """What a record of changed figures says of a row is kept as it was written, whatever is changed later."""
    made = compare_editions.records()
    listed = [change[key] for one in made for change in one["changes"] for key in ("what", "before", "after")]
    return tuple(filter(None, [*(one["since"] for one in made), *listed]))


@cache
def cells() -> tuple[str, ...]:
    """Cells of tables that are words: a claim as its row has it, the name of a material or of a mark."""
    found = {
        value
        for name in table_names()
        if name != "sources"
        for row in table(name).rows
        for column, value in row.items()
        if " " in value and column not in ("note", "locator")
    }
    return tuple(first + value[1:] for value in found for first in {value[0].upper(), value[0].lower()})


@cache
def heads_of_titles() -> tuple[str, ...]:
    """A long title of a source is cut in a narrow column, at its colon or with three dots."""
    titles = [row["title"] for row in table("sources").rows]
    return tuple(title[:end] for title in titles for end in range(12, len(title)))


@cache
def module_locators() -> frozenset[str]:
    """Places of sources that a worksheet cites only for some answers, as its module has them."""
    texts = (path.read_text(encoding="utf-8") for path in (ROOT / "calc").rglob("*.py"))
    return frozenset(
        place for text in texts for place in re.findall(r'Citation\(\s*"[^"]+",\s*"([^"]+)"', text)
    )


def typed_in(raw: Any) -> Iterator[str]:
    """Every text in inputs: what a reader typed is said back as he typed it."""
    if isinstance(raw, str):
        yield raw
    elif isinstance(raw, Mapping):
        for value in raw.values():
            yield from typed_in(value)
    elif isinstance(raw, (list, tuple)):
        for value in raw:
            yield from typed_in(value)


def values_of_options(inputs: tuple[Input, ...]) -> tuple[str, ...]:
    """What is typed for an input or an option on the command line, and how a refusal lists it: names, the same in every
    language.
    """
    found = [", ".join(one.name for one in inputs)]
    for one in inputs:
        found += [", ".join(one.choices), *one.choices, *values_of_options(one.columns)]
    return tuple(found)


# ------------------------------------------------------------------------------------------------ pages


@pytest.fixture(scope="module")
def pages(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The pages in the made-up language, laid out."""
    return build_pages(tmp_path_factory.mktemp("pseudo"))


def allowed_on(page: str) -> tuple[str, ...]:
    """What may be English on a page."""
    allowed = (*of_sources(), *cells())
    if page == "about/sources.html":
        allowed += cards_of_sources()
    if page == "about/changed-figures.html":
        allowed += kept_changes()
    folder, _, name = page.removesuffix(".html").rpartition("/")
    written = ROOT / "docs" / f"{folder}/{name}.md".removeprefix("/")
    asked = {name} if folder == "work-out" else set()
    if written.is_file():
        literals = literals_of(written.read_text(encoding="utf-8"))
        allowed += literals
        asked |= set(literals)
    for sheet in asked.intersection(declared()):
        allowed += tuple(typed_in(worksheet(sheet).example))
    return allowed


def literals_of(text: str) -> tuple[str, ...]:
    """What a page of docs/ puts into a worksheet, and the places of sources that it names; sentences of its cautions not."""
    calls = [call for call in re.findall(r"\{[{%](.*?)[%}]\}", text, re.DOTALL) if "caution(" not in call]
    return tuple(literal for call in calls for literal in re.findall(r'"([^"]+)"', call))


def left_on_page(page: str, html: str) -> list[tuple[str, str]]:
    """English on a page: where, and what."""
    found: list[tuple[str, str]] = []
    for where, text in texts_of_page(html):
        if text.removesuffix("…") in heads_of_titles():
            continue
        found += [(where, left) for left in english(text, allowed_on(page))]
    return found


def test_no_english_is_left_on_any_page(pages: Path) -> None:
    names = sorted(path.relative_to(pages).as_posix() for path in pages.rglob("*.html"))
    assert len(names) > 100
    left = {name: left_on_page(name, (pages / name).read_text(encoding="utf-8")) for name in names}
    assert {name: found for name, found in left.items() if found} == {}


def test_every_page_names_the_language(pages: Path) -> None:
    for path in pages.rglob("*.html"):
        assert '<html lang="en-XA"' in path.read_text(encoding="utf-8"), path


def test_no_english_is_left_in_what_the_search_shows(pages: Path) -> None:
    """Ratings, titles of pages and its own sentences. The words of the trade that readers type are a language's own files."""
    script = (pages / "scripts" / "search-data.js").read_text(encoding="utf-8")
    texts_of_it = re.findall(r"(?:data|cards):'((?:[^'\\]|\\.)*)'", script)
    made, cards = (json.loads(re.sub(r"\\(.)", r"\1", text)) for text in texts_of_it)
    shown = [made["cardFields"].index(field) for field in ("label", "answer", "use_words")]
    texts = [str(card[field]) for card in cards for field in shown]
    texts += [title for title, *_ in made["pages"]]
    allowed = (*of_sources(), *cells())
    assert [left for text in texts for left in english(text, allowed)] == []


# ---------------------------------------------------------------------------------------------- answers


def said_in(record: Any, key: str = "") -> Iterator[str]:
    """The texts of an answer that a reader sees; codes, values and places of sources left out."""
    if key in telling._TEXTS and isinstance(record, (str, list)):
        yield plain(record)
    elif key == "items":
        yield from (plain(one) for one in record)
    elif key == "rows":
        yield from (plain(cell) for row in record for cell in row)
    elif key == "figure" and record:
        yield record["caption"]
        yield from (text for _, text in texts_of_page(markup(record["drawing"])))
    elif isinstance(record, Mapping):
        for name, value in record.items():
            if name not in ("value", "sources", "reasons", "states"):
                yield from said_in(value, name)
    elif isinstance(record, list):
        for value in record:
            yield from said_in(value)


def left_in_answer(name: str, raw: Mapping[str, Any], units: Any) -> list[str]:
    """English in an answer, or in the refusal of these inputs."""
    try:
        texts = list(said_in(answer_in_spans(name, raw, units, PSEUDO)))
    except Refused as refused:
        texts = [error.message for error in refused.errors]
    allowed = (*typed_in(raw), *of_sources(), *values_of_options(worksheet(name).inputs), ", ".join(DAMAGE))
    return [left for text in texts for left in english(text, allowed)]


@pytest.mark.parametrize("units", ["us", "si"])
@pytest.mark.parametrize("name", list(declared()))
def test_no_english_is_left_in_the_answer_to_the_example(name: str, units: str) -> None:
    assert left_in_answer(name, worksheet(name).example, units) == []


@pytest.mark.parametrize("name", list(declared()))
@settings(max_examples=CASES, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
@given(data=st.data())
def test_no_english_is_left_in_the_answers_to_random_inputs(name: str, data: st.DataObject) -> None:
    sheet = worksheet(name)
    raw = data.draw(changed(sheet.inputs, dict(sheet.example)))
    assert left_in_answer(name, raw, data.draw(st.sampled_from(["us", "si"]))) == []


@pytest.mark.parametrize("name", list(declared()))
def test_no_english_is_left_in_refusals(name: str) -> None:
    sheet = worksheet(name)
    for one in sheet.inputs:
        for wrong in ("", "seven", "12 parsec", "-1e9", "1e300 m", "1,2,3", "3/0"):
            assert left_in_answer(name, {**sheet.example, one.name: wrong}, "us") == [], (one.name, wrong)
    assert left_in_answer(name, {"elephant": "1"}, "us") == []


@pytest.mark.parametrize("name", list(declared()))
def test_no_english_is_left_in_the_words_of_a_declaration(name: str) -> None:
    found = described(name, PSEUDO)
    texts = [found.title, plain(found.summary), plain(found.story)]
    for asked in (*found.inputs, *(column for one in found.inputs for column in one.columns)):
        texts += [plain(asked.label), plain(asked.help), asked.accepted, asked.row]
        texts += [plain(words) for _value, words in asked.options]
    for named in found.results:
        texts += [plain(named.label), *(plain(words) for _key, words in named.headings)]
    options = values_of_options(worksheet(name).inputs)
    assert [left for text in texts for left in english(text, options)] == []


# ---------------------------------------------------------------------------------------- the finder itself


@pytest.mark.parametrize(
    "html",
    [
        "<p>Ļóáđ· hangs level</p>",
        '<p title="hangs level">Ļóáđ·</p>',
        '<svg><text>hangs level</text></svg><img alt="hangs level">',
        '<input placeholder="hangs level">',
        '<script type="application/json">{"key": ["hangs level"]}</script>',
        "<p>A 3/8 chain: <span class='frac'>3/8</span> takes the load</p>",
    ],
)
def test_english_is_found_wherever_it_stands(html: str) -> None:
    assert left_on_page("about/index.html", html)


@pytest.mark.parametrize(
    "html",
    [
        "<p>Ļóáđ· ĥáñĝš··</p>",
        "<p><code>keys of a file</code></p>",
        "<p>in, mm, cm</p>",
        "<p>29 CFR 1926.251 Rigging equipment for material handling</p>",
        '<script src="x.js">const words = "of the script";</script>',
    ],
)
def test_what_is_no_word_of_ours_is_let_be(html: str) -> None:
    assert left_on_page("about/index.html", html) == []
