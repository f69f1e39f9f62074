"""The words of the pages' frame: all that a page says outside its worksheet, its table and its own text.

They stand in docs/words/LANG/page. The language of a build is the environment variable LINKWRIGHT_LANGUAGE, English
without it: one build writes one language.
"""

from __future__ import annotations

import os

from calc.words.catalogue import NoWords, Pattern
from calc.words.facts import Fact
from calc.words.writer import NoFact, Spans, Writer, plain

VARIABLE = "LINKWRIGHT_LANGUAGE"
"""The environment variable that names the language of a build."""
FRAME, LISTS, TABLES, SCRIPTS = "page/frame", "page/lists", "page/tables", "page/scripts"
ANSWER, SHEET, LIVE = "page/answer", "page/sheet", "page/live"
SEARCH = "page/search"
BUILT = (FRAME, LISTS, TABLES, SCRIPTS, SHEET, LIVE, SEARCH)
"""What is on the pages when they are built; Python in the page says none of it."""
SCOPES = (*BUILT, ANSWER)


class WordsMissing(NoWords):
    """The frame asks for words that the catalogue has not; the message names file and key."""


def language() -> str:
    """The language of this build."""
    return os.environ.get(VARIABLE) or "en"


def writer(*scopes: str) -> Writer:
    """Writes in the language of this build."""
    return Writer(language=language(), scopes=scopes or SCOPES)


def spans(code: str, **facts: Fact) -> Spans:
    """A message of the frame in spans; raises WordsMissing."""
    try:
        return writer().say(code, facts)
    except NoWords:
        files = ", ".join(f"docs/words/{language()}/{scope}.ftl" for scope in SCOPES)
        raise WordsMissing(f"none of {files} has words for {code}") from None
    except NoFact as lacking:
        raise WordsMissing(f"docs/words/{language()}: {lacking}") from None


def say(code: str, **facts: Fact) -> str:
    """A message of the frame as one text; raises WordsMissing."""
    return plain(spans(code, **facts))


def has(code: str) -> bool:
    """Whether the frame has words for a message."""
    return writer().has(code)


def script_words() -> dict[str, Pattern]:
    """The words of the scripts of every page as data: patterns that `linkwrightSay` of early.js fills."""
    return dict(writer().words.scopes.get(SCRIPTS, {}))


def live_words() -> dict[str, Pattern]:
    """The words of the scripts that run worksheets, which only those scripts carry."""
    return dict(writer().words.scopes.get(LIVE, {}))


__all__ = [
    "BUILT",
    "SCOPES",
    "SCRIPTS",
    "SEARCH",
    "VARIABLE",
    "WordsMissing",
    "has",
    "language",
    "live_words",
    "say",
    "script_words",
    "spans",
    "writer",
]
