"""Turns a page's English Markdown into the made-up language en-XA: every letter of prose changed, and a third longer.

What is not prose stays: Jinja expressions (but not the sentence that a caution is given), HTML tags (but not the attributes
that are read out), the targets of links, code, entities and the keys of the front matter. A heading keeps the anchor that
its English words have, so that links into pages still lead there.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from html import unescape

from markdown.extensions.toc import slugify

from calc.words.compiling import pseudo_text

SPOKEN_ATTRIBUTES = ("alt", "title", "aria-label", "placeholder")
"""HTML attributes that a reader hears or sees."""
SPOKEN_FRONT_MATTER = ("title", "description", "group", "lede")
"""Keys of the front matter whose values are words for the reader."""

_KEPT = re.compile(
    r"""
      \{\{(?P<expression>.*?)\}\} | \{%.*?%\} | \{\#.*?\#\}
    | <!--.*?--> | (?P<tag></?[a-zA-Z][^<>]*>)
    | ^```.*?^```$ | `[^`\n]+`
    | \]\([^)\n]*\) | \]\[[^\]\n]*\] | \[\^[^\]\n]+\] | ^\[[^\]\n]+\]:\s*\S+ | https?://[^\s)]+
    | \{\s*[:\#.][^}\n]*\} | &\#?\w+;
    """,
    re.VERBOSE | re.DOTALL | re.MULTILINE,
)
_FRONT_MATTER = re.compile(r"\A---\n(.*?)\n---\n", re.DOTALL)
_HEADING = re.compile(r"^(#{1,6} )(.+?)(\s*\{[^}]*\})?$", re.MULTILINE)
_TEXT_LITERAL = re.compile(r'"((?:[^"\\]|\\.)*)"')
_SPOKEN = re.compile(rf'\b({"|".join(SPOKEN_ATTRIBUTES)})="([^"]*)"')
_JINJA = re.compile(r"\{[{%].*?[%}]\}")


def pseudo_page(text: str) -> str:
    """A page in the made-up language, front matter and all."""
    head = _FRONT_MATTER.match(text)
    if head is None:
        return pseudo_markdown(text)
    lines = [_front_matter_line(line) for line in head.group(1).splitlines()]
    return "---\n" + "\n".join(lines) + "\n---\n" + pseudo_markdown(text[head.end() :])


def _front_matter_line(line: str) -> str:
    key, colon, value = line.partition(":")
    return f"{key}{colon}{pseudo_text(value)}" if key in SPOKEN_FRONT_MATTER else line


def pseudo_markdown(text: str) -> str:
    """Markdown without front matter in the made-up language.

    >>> pseudo_markdown("See [it](a.md), {{ cell('x') }} <b title='y'>`z`")
    "Šéé· [íŧ·](a.md), {{ cell('x') }} <b title='y'>`z`"
    """
    return _between(_with_anchors(text), _KEPT, _prose, _kept)


def _between(
    text: str, kept: re.Pattern[str], prose: Callable[[str], str], keep: Callable[[re.Match[str]], str]
) -> str:
    """`text` with what `kept` finds passed through `keep`, and what lies between through `prose`."""
    pieces: list[str] = []
    end = 0
    for found in kept.finditer(text):
        pieces += [prose(text[end : found.start()]), keep(found)]
        end = found.end()
    return "".join([*pieces, prose(text[end:])])


def _prose(text: str) -> str:
    """Words, line by line and cell by cell, so that the marks of lists and tables stay where they are."""
    return "".join(
        piece if piece in ("\n", "|") else pseudo_text(piece) for piece in re.split(r"([\n|])", text)
    )


def _kept(found: re.Match[str]) -> str:
    if found.group("tag"):
        return _SPOKEN.sub(_spoken, found.group())
    expression = found.group("expression")
    if expression and expression.strip().startswith("caution("):
        call, comma, said = expression.partition(",")
        said = _TEXT_LITERAL.sub(lambda one: f'"{pseudo_markdown(one.group(1))}"', said)
        return f"{{{{{call}{comma}{said}}}}}"
    return found.group()


def _spoken(found: re.Match[str]) -> str:
    name, words = found.groups()
    return f'{name}="{_between(words, _JINJA, pseudo_text, re.Match.group)}"'


def _with_anchors(text: str) -> str:
    """Headings with the anchors that the engine would make of their English words."""
    made: dict[str, int] = {}

    def anchored(found: re.Match[str]) -> str:
        marks, words, own = found.groups()
        if own or re.search(r"[{<]", words):
            return found.group()
        anchor = slugify(unescape(re.sub(r"[*`]|\]\([^)]*\)|\[", "", words)), "-")
        made[anchor] = made.get(anchor, -1) + 1
        number = f"_{made[anchor]}" if made[anchor] else ""
        return f"{marks}{words} {{ #{anchor}{number} }}"

    return _HEADING.sub(anchored, text)


__all__ = ["pseudo_markdown", "pseudo_page"]
