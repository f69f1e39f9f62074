"""What every written page must be: headed, opened by its answer, linked, sourced, and free of typed ratings."""

import re
from pathlib import Path
from typing import Any

import jinja2
import pytest

from build_scripts import pages
from build_scripts.lessons import LESSONS
from build_scripts.lessons.printed import printed_figures
from build_scripts.lessons.values import VALUES
from build_scripts.look_up_pages import split_front_matter
from calc import answering
from calc.tables import short_citation, table_names

DOCS = pages.ROOT / "docs"
WRITTEN = sorted(path.relative_to(DOCS).as_posix() for path in DOCS.rglob("*.md"))
TEXTS = [page for page in WRITTEN if page.split("/")[0] in ("about", "judge", "understand")]
AROUND = [
    page for page in WRITTEN
    if page.startswith(("work-out/", "look-up/"))
]  # fmt: skip
"""Words around a worksheet, and look-up pages."""

UNIT = r"(?:lbf?|pounds?|kg|kilograms?|tons?|tonnes?|kN|N|psi|ksi|bar|MPa|GPa|in|inch(?:es)?|ft|feet|mm|cm|m|%|percent|°[FC]|J)"
TYPED_NUMBER = re.compile(rf"(?<![\w.])(\d[\d,./]*(?:-\d+/\d+)?[\s ]?{UNIT})(?!\w)")
TYPED_PARAGRAPH = re.compile(r"\b\d{3,4}\.\d+\(\w|\b\d{3}-\d{2,3}-\d{5}|\bR 408\.\d+")

ALLOWED = {
    "2,000 lb": "the engine of the examples: an input that the page gives to the worksheet",
    "4,860 lb": "an example of what to type",
    "1,000 lb": "the load that the table of sling angles is worked out for: an input",
    "6 ft": "an input of the sling worked on the page",
    "9 in": "an input of the sling worked on the page (5 ft 9 in)",
    "5 ft": "an input of the sling worked on the page (5 ft 9 in)",
    "200 bar": "an example of what to type",
    "5/8 in": "an example of what to type (38 5/8 in)",
    "2%": "our own mark for a balance point reckoned from drawings, said to be so (hanging-load)",
    "38-5/8 in": "an input of the plate worked on the page",
    "86 in": "an input of the plate worked on the page",
}
"""Numbers with a unit that a page may type, with the reason: inputs and examples, never a rating or a limit."""

BANNED = (
    "coming soon", "todo", "tbd", "lorem", "placeholder", "please note", "utilize", "simply ", "obviously", "of course",
    "as we all know", "state of the art", "user-friendly", "localhost", "http://", "https://",
)  # fmt: skip
"""Words that have no place in the book: empty, boastful, or pointing off the site."""

LONGEST_SENTENCE = 36
"""Words in a sentence that a reader in gloves still follows."""


def source(page: Any) -> Any:
    return split_front_matter((DOCS / page).read_text(encoding="utf-8"))


def plain_quotes(text: Any) -> Any:
    """Text with typewriter quotation marks."""
    return text.translate(str.maketrans("“”‘’", "\"\"''"))


def without_calls(text: Any) -> Any:
    """The page's own words, with every call of the template taken out."""
    text = re.sub(r"\{%.*?%\}", " ", text, flags=re.DOTALL)
    return re.sub(r"\{\{.*?\}\}", "⟨call⟩", text, flags=re.DOTALL)


def without_sheet(text: Any) -> Any:
    """A worksheet's own page without the worksheet."""
    return text.replace('{% include "sheet_page.md" %}', "")


@pytest.fixture(scope="module")
def rendered(tmp_path_factory: Any) -> Any:
    """The page as the site engine gets it, by name; only the written ones."""
    writer = pages._Writer(tmp_path_factory.mktemp("pages"), pages.ROOT)
    return {page: writer.render(without_sheet(source(page)[1]), page) for page in TEXTS + AROUND}


@pytest.mark.parametrize("page", TEXTS)
def test_head_and_answer(page: Any) -> None:
    meta, body = source(page)
    if page.split("/")[-1] == "sources.md":
        return
    assert set(meta) >= {"title", "description", "group"}
    assert 40 <= len(meta["description"]) <= 175
    lines = [line for line in re.sub(r"\{%.*?%\}", "", body, flags=re.DOTALL).splitlines() if line.strip()]
    assert plain_quotes(lines[0]).startswith(plain_quotes(f"# {meta['title']}"))
    assert lines[1].startswith('<p class="lede">'), "a page opens with its answer"
    assert lines[1].endswith("</p>")
    assert not re.search(r"\*\*|`|\]\(", lines[1]), "Markdown is not read inside HTML"
    assert len(re.findall(r"^# ", body, re.MULTILINE)) == 1


@pytest.mark.parametrize("page", TEXTS + AROUND)
def test_no_number_is_typed_that_a_table_or_calc_can_give(page: Any) -> None:
    words = without_calls("\n".join([*source(page)[0].values(), source(page)[1]]))
    typed = {found.replace(" ", " ") for found in TYPED_NUMBER.findall(words)}
    assert typed <= set(ALLOWED), f"typed numbers: {sorted(typed - set(ALLOWED))}"
    assert not TYPED_PARAGRAPH.findall(words), (
        "a paragraph is given by cited(), from the row that it belongs to"
    )


def test_the_search_for_typed_numbers_finds_them() -> None:
    text = "A hook rated 7,100 lb, a gap of 5% or 1/4 in, {{ cell('x', unit='lb') }} at 1,000 °F, 1-1/4 in; 30° and 2 legs."
    assert TYPED_NUMBER.findall(without_calls(text)) == ["7,100 lb", "5%", "1/4 in", "1,000 °F", "1-1/4 in"]


def test_every_allowed_number_is_still_used() -> None:
    words = " ".join(without_calls(source(page)[1]) for page in TEXTS + AROUND)
    found = set(TYPED_NUMBER.findall(words))
    assert set(ALLOWED) <= found


@pytest.mark.parametrize("page", AROUND)
def test_words_around_a_table_or_worksheet_open_right(page: Any) -> None:
    text = source(page)[1]
    if page.startswith("work-out/"):
        assert text.startswith('{% include "sheet_page.md" %}') or "{{ sheet(" in text
        return
    meta, body = source(page)
    title, first = [line for line in re.sub(r"\{% macro.*?endmacro %\}", "", body).splitlines() if line][:2]
    assert title == f"# {meta['title']}"
    assert first.startswith(("{{ table(", '<div class="table-frame"')), (
        "nothing stands between title and table"
    )
    words = re.sub(r"<div.*?</div>", "", without_calls(body), flags=re.DOTALL).split()
    assert len(words) < 90 * (body.count("{{ table(") + 1), "the tables are what the reader came for"
    assert len(re.findall(r"^## ", body, re.MULTILINE)) >= body.count("{{ table(") - 1


@pytest.mark.parametrize("page", TEXTS)
def test_every_printed_value_names_its_source_or_its_table(page: Any) -> None:
    text = source(page)[1]
    for arguments in re.findall(r"\{\{ cell\((.*?)\)", text):
        table = re.findall(r'^"([\w-]+)"', arguments)[0]
        named = any(
            mark in text for mark in (f'cited("{table}"', f"look-up/{table}.md", f'table_view("{table}"')
        )
        assert named, f"cell({arguments}) names neither paragraph nor table"


@pytest.mark.parametrize("page", TEXTS)
def test_every_rule_quoted_names_its_paragraph(page: Any) -> None:
    text = source(page)[1]
    for arguments in re.findall(
        r'\{\{ cell\(("(?:[\w-]*rules|removal-criteria|records-to-keep|chain-hooks)".*?)\)', text
    ):
        assert f"cited({arguments})" in text


@pytest.mark.parametrize("page", TEXTS + AROUND)
def test_no_banned_word(page: Any) -> None:
    words = without_calls("\n".join([*source(page)[0].values(), source(page)[1]])).lower()
    assert [word for word in BANNED if word in words] == []
    assert not re.search(r"(?<![\w.<\])⟩])/[a-z]+/", words), "no path of a machine"


@pytest.mark.parametrize("page", TEXTS + AROUND)
def test_sentences_are_short(page: Any) -> None:
    words = re.sub(r"<[^>]+>|\[|\]\([^)]*\)|[*`#|]", " ", without_calls(source(page)[1]))
    too_long = []
    for block in re.split(r"\n\s*\n|\n\s*(?:\d+\.|-)\s|\n", words):
        for sentence in re.split(r"(?<=[.:;?!])\s", block):
            if len(sentence.split()) > LONGEST_SENTENCE:
                too_long.append(sentence)
    assert too_long == []


@pytest.mark.parametrize("page", TEXTS + AROUND)
def test_every_link_leads_to_a_page(page: Any, rendered: Any) -> None:
    known = set(WRITTEN) | {f"look-up/{name}.md" for name in table_names() if name != "sources"}
    known |= {f"work-out/{name}.md" for name in answering.declared_names()}
    known |= {f"{part}/index.md" for part in ("about", "judge", "look-up", "understand", "work-out")}
    known |= {"about/sources.md", "index.md", "look-up/every-rating.md"}
    text = rendered[page]
    links = [link for link in re.findall(r"\]\(([^)\s]+)\)", text) if not link.startswith("#")]
    assert links, "a page leads on to others"
    for link in links:
        target, _, anchor = link.partition("#")
        path = (Path("/") / Path(page).parent / target).as_posix()
        parts: list[str] = []
        for part in path.split("/")[1:]:
            parts = parts[:-1] if part == ".." else [*parts, part]
        assert "/".join(parts) in known, f"{page} links to {link}"
        assert not anchor or target.startswith("../about/"), "links to a heading are held by the site engine"


@pytest.mark.parametrize("page", TEXTS + AROUND)
def test_nothing_of_the_template_is_left_over(page: Any, rendered: Any) -> None:
    assert not re.search(r"\{\{|\}\}|\{%|%\}|⟨|\bNone\b(?! of)|\bnan\b", rendered[page])
    assert "  ." not in rendered[page]
    plain = re.sub(r"<svg.*?</svg>|<[^>]+>|\]\([^)]*\)", "", rendered[page], flags=re.DOTALL)
    assert re.findall(r".{30}(?:\.[ ,]*\.|,\.|\?\.)(?!\d).{0,9}", plain) == []


def test_no_page_waits_for_a_page_that_never_came() -> None:
    waiting = {name for page in TEXTS for name in re.findall(r'there\("([^"]+)"\)', source(page)[1])}
    book = pages.Book(jinja2.Environment())
    assert {name for name in waiting if not book.there(name)} == set()


def test_every_lesson_drawing_is_on_a_page() -> None:
    used = {name for page in WRITTEN for name in re.findall(r'drawing\("([\w-]+)"', source(page)[1])}
    assert used == set(LESSONS)


@pytest.mark.parametrize("name", sorted(LESSONS))
def test_a_drawing_follows_the_readers_choice_of_units(name: str) -> None:
    """Each system has a drawing of its own, in whose labels no unit of the other stands alone."""
    calls = pages.Book(jinja2.Environment()).functions("judge/inspect-a-hook.md")
    drawn = calls["drawing"](name)
    labels = {
        kind: [
            re.sub(r"\([^)]*\)", " ", re.sub("<[^>]+>", "", text))
            for text in re.findall(r"<text[^>]*>(.*?)</text>", figure)
        ]
        for kind, figure in re.findall(
            r'<figure class="book-figure ?([\w-]*)">(.*?)</figure>', drawn, re.DOTALL
        )
    }
    assert set(labels) in ({""}, {"us-only", "si-only"})
    us_alone = re.compile(r"\d\s(?:in|ft|lb|psi|ksi|°F|ft·lb)\b")
    assert [text for text in labels.get("si-only", []) if us_alone.search(text)] == []


def test_every_value_and_printed_figure_is_on_a_page_or_in_a_drawing() -> None:
    text = "\n".join(source(page)[1] for page in WRITTEN)
    assert {name for name in VALUES if f'value("{name}"' not in text} == set()
    lessons = "\n".join(
        path.read_text(encoding="utf-8") for path in (pages.ROOT / "build_scripts" / "lessons").glob("*.py")
    )
    starts = tuple(re.findall(r'printed\(f"([\w-]+)\{', lessons))
    unused = {
        key for key in printed_figures()
        if f'printed("{key}")' not in text and f'"{key}"' not in lessons and not key.startswith(starts)
    }  # fmt: skip
    assert unused == set()


@pytest.mark.parametrize("page", TEXTS)
def test_every_printed_figure_names_its_source(page: Any) -> None:
    text = source(page)[1]
    named = {printed_figures()[key].source for key in re.findall(r'printed_in\("([\w-]+)"\)', text)}
    shown = {printed_figures()[key].source for key in re.findall(r'printed\("([\w-]+)"\)', text)}
    assert shown <= named


def test_a_page_that_asks_for_what_is_not_there_stops_the_build() -> None:
    calls = pages.Book(jinja2.Environment()).functions("judge/inspect-a-hook.md")
    with pytest.raises(pages.PageError, match="no drawing elephant"):
        calls["drawing"]("elephant")
    with pytest.raises(pages.PageError, match="hook-limits"):
        calls["cited"]("hook-limits", item="anvil")
    with pytest.raises(pages.PageError):
        calls["cell"]("hook-limits", item="hook")


def test_a_reprint_and_a_recalled_row_say_so() -> None:
    cited = pages.Book(jinja2.Environment()).functions("about/how-far-to-trust.md")["cited"]
    assert "read in a reprint" in cited("chain-tie-down", grade="70", size_in="3/8", unit="lb")
    assert "not seen in text" in cited(
        "wire-rope", rope="6x19_eips_iwrc", size_in="1/2", quantity="sling_vertical"
    )
    assert "not seen" not in cited("chain-lifting", grade="80", size_in="3/8", legs="1", unit="lb")


@pytest.mark.parametrize(
    ("title", "place", "said"),
    [
        ("29 CFR 1910.184 Slings", "1910.184(e)(9)(ii)", "29 CFR 1910.184(e)(9)(ii)"),
        ("49 CFR Part 393 Subpart I, Protection", "393.108(d)", "49 CFR 393.108(d)"),
        ("WAC 296-155 Safety standards", "296-155-33900 Table 19", "WAC 296-155-33900 Table 19"),
        ("DOE-STD-1090-96 Hoisting and rigging", "s. 15.4.6", "DOE-STD-1090-96, s. 15.4.6"),
        ("0027/ND Guidelines for marine lifting", "s. 7.8", "0027/ND, s. 7.8"),
        ("4WD Operation", "para 4.25", "4WD Operation, para 4.25"),
        ("Slinging module", "Slinging module", "Slinging module"),
        ("Guidance on Safe Sling Use", "Table 1", "Guidance on Safe Sling Use, Table 1"),
        ("General working range", "Common practice, no source", "General working range, Common practice, no source"),
    ],
)  # fmt: skip
def test_a_source_is_cited_by_its_number(title: str, place: str, said: str) -> None:
    assert short_citation(title, place) == said
