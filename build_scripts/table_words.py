"""The words of tables: questions, headings, notes, cautions, what a key is called, from docs/words/LANG/tables.

A table's own words stand in docs/words/en/tables/NAME.ftl, those that several tables share in common.ftl beside it.
Nothing is made up from a key: words that are missing stop the build, with the file and the key that lack.

    question, description           what the table answers, in the reader's words
    note-KEY, caution-KEY           what table.toml and the column `note` name by key
    column-NAME                     a column's heading; its part `.help` says what stands in it, `.range` what the two
                                    ends of a range are called together
    quantity-NAME                   what a quantity is called
    word-COLUMN-VALUE               what a value of a key column is called
"""

from __future__ import annotations

from build_scripts.wording import language
from calc.words.catalogue import catalogue
from calc.words.writer import NoWords, Spans, Writer, plain, spaced

SHARED_WORDS = "tables/common"


class MissingWords(LookupError):
    """A table has no words for a key; the message names the file and the key."""


def scope(name: str) -> str:
    """The scope of a table's own words."""
    return f"tables/{name}"


def writer(name: str, tongue: str = "") -> Writer:
    """A writer with the words of a table, then those that tables share; in the language of the build, or in `tongue`."""
    return Writer(language=tongue or language(), scopes=(scope(name), SHARED_WORDS))


def has(name: str, key: str, tongue: str = "") -> bool:
    """Whether a table has words for a key."""
    return writer(name, tongue).has(key)


def say(name: str, key: str, tongue: str = "") -> Spans:
    """Words of a table in spans; raises MissingWords."""
    try:
        return writer(name, tongue).say(key)
    except NoWords:
        raise MissingWords(
            f"docs/words/{tongue or language()}/{scope(name)}.ftl: has no words for {key}; write {key} = ... there, "
            "or in common.ftl beside it if other tables need them too"
        ) from None


def text(name: str, key: str, tongue: str = "") -> str:
    """Words of a table as one text; raises MissingWords."""
    return plain(say(name, key, tongue))


def question(name: str) -> str:
    """What a table answers: its title."""
    return text(name, "question")


def description(name: str) -> str:
    """What stands in a table."""
    return text(name, "description")


def heading(name: str, column: str) -> str:
    """What a column is called, without its unit."""
    return text(name, f"column-{column}")


def range_heading(name: str, column: str) -> str:
    """What the two ends of a range are called together."""
    return text(name, f"column-{column}.range")


def quantity(name: str, key: str) -> str:
    """What a quantity, or the range that two make, is called."""
    return text(name, f"quantity-{key}")


def word_key(column: str, value: str) -> str:
    """The key of the words for a value of a column."""
    return f"word-{column}-{spaced(value)}"


def note(name: str, key: str) -> Spans:
    """A note by its key; no key, no words."""
    return say(name, f"note-{key}") if key else []


def own_keys(name: str) -> tuple[str, ...]:
    """The keys of a table's own file of words."""
    return tuple(catalogue(language()).scopes.get(scope(name), ()))


__all__ = [
    "SHARED_WORDS",
    "MissingWords",
    "description",
    "has",
    "heading",
    "note",
    "own_keys",
    "quantity",
    "question",
    "range_heading",
    "say",
    "scope",
    "text",
    "word_key",
    "writer",
]
