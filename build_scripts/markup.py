"""Small pieces of HTML that every generated page shares: safe text, shop fractions, units, source links, cautions."""

from __future__ import annotations

import re
from collections.abc import Sequence
from html import escape
from typing import Any

from calc.quantities import unit_text

_FRACTION = re.compile(r"(?<![\w/.])(?:(\d{1,2})-)?(\d{1,2})/(2|3|4|8|16|32|64)(?![\w/])")

CAUTION_WORDS = {
    "warning": "Careful",
    "prohibition": "Stop",
    "mandatory": "You must",
    "note": "Note",
}
"""The word that opens a caution, by kind."""

SEEN_WORDS = {
    "text": "read in the source's own text",
    "copy": "read in a reprint, not in the source itself",
    "memory": "not seen in text",
}
"""How a row was read, by its `checked` value."""

UNIT_NAMES = {
    "text": "", "percent": "%", "count": "", "factor": "", "degree": "°", "ft_lb": "ft·lb", "rope_diameter": "rope diameters",
    "t": "t (metric)", "short_ton": "short tons",
}  # fmt: skip


def rich(text: str) -> str:
    """Text as HTML, with shop fractions (3/8, 1-1/4) set as fractions that still copy and search as typed."""
    return _FRACTION.sub(_fraction, escape(text, quote=False))


def set_spans(spans: str | Sequence[Any]) -> str:
    """Spans of calc.words as HTML: fractions set as fractions, a value kept with its unit."""
    if isinstance(spans, str):
        return rich(spans)
    return "".join(_set_span(one) for one in spans)


def _set_span(span: Any) -> str:
    if isinstance(span, str):
        return escape(span, quote=False)
    kind, content = span
    if kind == "f":
        whole, _, part = content.rpartition("-")
        return (
            f'{escape(whole)}<span class="frac-dash">-</span>' if whole else ""
        ) + f'<span class="frac">{part}</span>'
    return f'<span class="value">{set_spans(content)}</span>'


def _fraction(match: re.Match[str]) -> str:
    whole, top, bottom = match.groups()
    lead = f'{whole}<span class="frac-dash">-</span>' if whole else ""
    return f'{lead}<span class="frac">{top}/{bottom}</span>'


def unit_name(unit: str) -> str:
    """A table's unit as a reader sees it; nothing for words and plain numbers."""
    return UNIT_NAMES.get(unit, unit_text(unit))


def measured(value: str, unit: str) -> str:
    """A printed value with its unit: `6,600 lb`, `5%`, `3-1/3 short tons`, `1/2 short ton`."""
    name = unit_name(unit)
    if unit == "short_ton" and re.fullmatch(r"1|\d+/\d+", value):
        name = "short ton"
    return value + ("" if name in ("", "%", "°") else " ") + name


def words(key: str) -> str:
    """A snake_case or kebab-case key as words with a capital."""
    plain = key.replace("_", " ").replace("-", " ").strip()
    return plain[:1].upper() + plain[1:]


def caution(kind: str, text: str) -> str:
    """A caution: shape (by style sheet), word and sentence."""
    if kind not in CAUTION_WORDS:
        raise ValueError(f"there is no kind of caution {kind}; there are {', '.join(CAUTION_WORDS)}")
    return (
        f'<div class="caution" data-kind="{kind}"><p><b class="caution-word">{CAUTION_WORDS[kind]}.</b> '
        f"{rich(text)}</p></div>"
    )


def seen_ring(checked: str) -> str:
    """The mark on a value that was not read in the source's own text; nothing for one that was."""
    if checked == "memory":
        return '<span class="ring" role="img" aria-label="not seen in text"></span>'
    if checked == "copy":
        return '<span class="ring ring-copy" role="img" aria-label="read in a reprint"></span>'
    return ""
