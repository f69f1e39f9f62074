"""Small pieces of HTML that every generated page shares: safe text, shop fractions, units, source links, cautions."""

from __future__ import annotations

import re
from html import escape

from build_scripts.answer_view import nodes_of, to_html
from build_scripts.wording import has, say, spans
from calc.quantities import unit_text
from calc.words.facts import Cell, Fact
from calc.words.writer import Spans

_FRACTION = re.compile(r"(?<![\w/.])(?:(\d{1,2})-)?(\d{1,2})/(2|3|4|8|16|32|64)(?![\w/])")

CAUTIONS = ("warning", "prohibition", "mandatory", "note")
"""The kinds of caution; the word that opens each is `caution-word-KIND`."""

_UNNAMED = {"text": "", "percent": "%", "count": "", "factor": "", "degree": "°", "ft_lb": "ft·lb"}
"""Units of the tables that a reader sees as a sign or not at all."""
_FIRST_SLOT = 0xE000
"""Private letters that hold the place of HTML in a message."""


def rich(text: str) -> str:
    """Text as HTML, with shop fractions (3/8, 1-1/4) set as fractions that still copy and search as typed."""
    return _FRACTION.sub(_fraction, escape(text, quote=False))


def set_spans(written: str | Spans) -> str:
    """Spans of calc.words as HTML: fractions set as fractions, a value kept with its unit."""
    return to_html(nodes_of(written))


def _fraction(match: re.Match[str]) -> str:
    whole, top, bottom = match.groups()
    lead = f'{whole}<span class="frac-dash">-</span>' if whole else ""
    return f'{lead}<span class="frac">{top}/{bottom}</span>'


def said(code: str, **facts: Fact) -> str:
    """A message of the frame as HTML; a text among the facts is HTML already and is put in as it is."""
    slots = {name: chr(_FIRST_SLOT + place) for place, name in enumerate(facts)}
    held = {name: slots[name] if isinstance(fact, str) else fact for name, fact in facts.items()}
    html = set_spans(spans(code, **held))
    for name, fact in facts.items():
        if isinstance(fact, str):
            html = html.replace(slots[name], fact)
    return html


def attribute(code: str, **facts: Fact) -> str:
    """A message of the frame as the value of an HTML attribute, or as text without fractions set."""
    return escape(say(code, **facts))


def unit_name(unit: str) -> str:
    """A table's unit as a reader sees it; nothing for words and plain numbers."""
    if has(f"unit-{unit}"):
        return say(f"unit-{unit}")
    return _UNNAMED.get(unit, unit_text(unit))


def measured(value: str, unit: str) -> str:
    """A printed value with its unit: `6,600 lb`, `5%`, `3-1/3 short tons`, `1/2 short ton`."""
    if has(f"measured-{unit}"):
        return say(f"measured-{unit}", value=Cell(value))
    name = unit_name(unit)
    return value + ("" if name in ("", "%", "°") else " ") + name


def caution(kind: str, text: str | Spans) -> str:
    """A caution: shape (by style sheet), word and sentence (text, or spans of calc.words)."""
    if kind not in CAUTIONS:
        raise ValueError(f"there is no kind of caution {kind}; there are {', '.join(CAUTIONS)}")
    word = said(f"caution-word-{kind}")
    html = rich(text) if isinstance(text, str) else set_spans(text)
    return f'<div class="caution" data-kind="{kind}"><p><b class="caution-word">{word}.</b> {html}</p></div>'


def seen_ring(checked: str) -> str:
    """The mark on a value that was not read in the source's own text; nothing for one that was."""
    if checked == "text":
        return ""
    kind = "ring ring-copy" if checked == "copy" else "ring"
    return f'<span class="{kind}" role="img" aria-label="{attribute(f"seen-{checked}.ring")}"></span>'


def ours() -> str:
    """The mark of the value that this book takes where sources differ."""
    return f'<b class="choice" data-choice="ours">{said("our-default.mark")}</b>'
