"""Turns docs/words/LANG/**/*.ftl into what the writer runs: plain lists and dicts that JSON can carry.

The catalogues are Project Fluent files (the open format of fluent.syntax): a translator or a safety reviewer reads and
edits them without knowing Python; plurals and choices stand in the sentence they belong to, and a message may have
parts (`.help`, `.caution`). fluent.syntax reads them here, once; what comes out needs the standard library alone. This
module runs where the book is built or a checkout is used, never in the page.

A file is a scope: `worksheets/sling-legs.ftl` is the scope `worksheets/sling-legs`. A message `load` with a part
`.help` gives the keys `load` and `load.help`.

A pattern is text, or a list of text and of
    ["f", "1-3/8"]                            a shop fraction that stands in the sentence
    ["v", name, function, options]            a fact, by a function (OWN, DIGITS, PLACES) or by none ("")
    ["s", name, {variant: pattern}, default]  a choice by a fact
    ["m", key]                                another message of the same catalogue
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from fluent.syntax import FluentParser, ast

Pattern = str | list[Any]

FUNCTIONS = {"OWN": {"digits"}, "DIGITS": {"digits"}, "PLACES": {"places"}}
"""What a message may do with a fact, and the options that each takes."""

PLURALS = {"en": "one-other", "en-XA": "one-other", "es": "one-other", "de": "one-other"}
"""How a language counts: one-other is 1 and the rest (Unicode CLDR, plural rules of these languages for whole numbers)."""

PSEUDO = "en-XA"
"""The made-up language that shows what was not taken from the catalogue: every letter changed, a third longer."""

_FRACTION = re.compile(r"(?<![\w/.])((?:\d{1,2}-)?\d{1,2}/(?:2|3|4|8|16|32|64))(?![\w/])")


class WordsRefused(ValueError):
    """A catalogue cannot be used; the message names file, line and key."""


def compile_language(folder: Path, language: str) -> dict[str, Any]:
    """The compiled catalogue of a language: {"language", "plural", "scopes": {scope: {key: pattern}}}."""
    if language not in PLURALS:
        raise WordsRefused(f"{folder}: nothing is known of how {language} counts; add it to PLURALS")
    scopes: dict[str, dict[str, Pattern]] = {}
    source = folder / ("en" if language == PSEUDO else language)
    for path in sorted(source.rglob("*.ftl")):
        scopes[path.relative_to(source).with_suffix("").as_posix()] = compile_file(path)
    if not scopes:
        raise WordsRefused(f"{source}: there are no words of {language}")
    if language == PSEUDO:
        scopes = {
            scope: {key: pseudo(pattern) for key, pattern in found.items()} for scope, found in scopes.items()
        }
    return {"language": language, "plural": PLURALS[language], "scopes": scopes}


def compile_file(path: Path) -> dict[str, Pattern]:
    """The patterns of one file by key; a refusal names the file."""
    try:
        return compile_text(path.read_text(encoding="utf-8"))
    except WordsRefused as why:
        raise WordsRefused(f"{path}:{why}") from None


def compile_text(text: str) -> dict[str, Pattern]:
    """The patterns of a file's text by key; a refusal names line and key."""
    found: dict[str, Pattern] = {}
    for entry in FluentParser(with_spans=True).parse(text).body:
        line = text.count("\n", 0, entry.span.start) + 1 if entry.span else 0
        if isinstance(entry, ast.Junk):
            why = "; ".join(note.message or "" for note in entry.annotations)
            raise WordsRefused(f"{line}: cannot be read: {why}: {(entry.content or '').strip()[:60]!r}")
        if not isinstance(entry, (ast.Message, ast.Term)):
            continue
        name = entry.id.name if isinstance(entry, ast.Message) else f"-{entry.id.name}"
        parts = [(name, entry.value), *((f"{name}.{part.id.name}", part.value) for part in entry.attributes)]
        for key, value in parts:
            if value is None:
                continue
            if key in found:
                raise WordsRefused(f"{line}: {key} stands twice")
            try:
                found[key] = _pattern(value)
            except WordsRefused as why:
                raise WordsRefused(f"{line}: {key}: {why}") from None
    return found


def _pattern(value: ast.Pattern) -> Pattern:
    pieces: list[Any] = []
    for element in value.elements:
        if isinstance(element, ast.TextElement):
            pieces.extend(_with_fractions(element.value))
        else:
            pieces.append(_placeable(element))
    merged: list[Any] = []
    for piece in pieces:
        if isinstance(piece, str) and merged and isinstance(merged[-1], str):
            merged[-1] += piece
        else:
            merged.append(piece)
    return merged[0] if len(merged) == 1 and isinstance(merged[0], str) else merged


def _with_fractions(text: str) -> Iterator[Any]:
    """Text with its shop fractions set apart."""
    for number, piece in enumerate(_FRACTION.split(text)):
        if piece:
            yield ["f", piece] if number % 2 else piece


def _placeable(element: ast.Placeable) -> Any:
    expression = element.expression
    if isinstance(expression, ast.Placeable):
        return _placeable(expression)
    if isinstance(expression, ast.StringLiteral):
        return str(expression.parse()["value"])
    if isinstance(expression, ast.VariableReference):
        return ["v", expression.id.name, "", {}]
    if isinstance(expression, ast.FunctionReference):
        return _function(expression)
    if isinstance(expression, ast.MessageReference):
        part = f".{expression.attribute.name}" if expression.attribute else ""
        return ["m", expression.id.name + part]
    if isinstance(expression, ast.TermReference):
        return ["m", f"-{expression.id.name}"]
    if isinstance(expression, ast.SelectExpression):
        return _choice(expression)
    raise WordsRefused(f"{type(expression).__name__} is not used in this book")


def _function(expression: ast.FunctionReference) -> Any:
    name = expression.id.name
    if name not in FUNCTIONS:
        raise WordsRefused(f"{name} is not a function here; there are {', '.join(FUNCTIONS)}")
    facts, options = expression.arguments.positional, expression.arguments.named
    if len(facts) != 1 or not isinstance(facts[0], ast.VariableReference):
        raise WordsRefused(f"{name} takes one fact, such as {name}($load)")
    read: dict[str, int] = {}
    for option in options:
        if option.name.name not in FUNCTIONS[name] or not isinstance(option.value, ast.NumberLiteral):
            raise WordsRefused(f"{name} does not take {option.name.name}")
        read[option.name.name] = int(option.value.value)
    return ["v", facts[0].id.name, name, read]


def _choice(expression: ast.SelectExpression) -> Any:
    if not isinstance(expression.selector, ast.VariableReference):
        raise WordsRefused("a choice is made by a fact, such as { $legs -> ... }")
    variants: dict[str, Pattern] = {}
    default = ""
    for variant in expression.variants:
        key = variant.key.name if isinstance(variant.key, ast.Identifier) else variant.key.value
        variants[key] = _pattern(variant.value)
        if variant.default:
            default = key
    return ["s", expression.selector.id.name, variants, default]


_PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
_CHANGED = "áƀçđéƒĝĥíĵķļɱñóþɋŕšŧúṽŵẋýžÁƁÇĐÉƑĜĤÍĴĶĻṀÑÓÞɊŔŠŦÚṼŴẊÝŽ"
_LETTERS = str.maketrans(_PLAIN, _CHANGED)
_WORD = re.compile(r"[A-Za-z]+")


def pseudo_text(text: str) -> str:
    """Every letter changed, and each word a third longer: `of the load` is `óƒ· ŧĥé· ļóáđ·`; text without a letter stays.

    The parts of a third that are left over count for the next word, so that the whole is a third longer.
    """
    owed = 0.0

    def longer(word: re.Match[str]) -> str:
        nonlocal owed
        owed += len(word.group()) / 3
        dots = round(owed)
        owed -= dots
        return word.group().translate(_LETTERS) + "·" * dots

    return _WORD.sub(longer, text)


def pseudo(pattern: Pattern) -> Pattern:
    """A pattern in the made-up language; facts, choices and fractions stay."""
    if isinstance(pattern, str):
        return pseudo_text(pattern)
    changed: list[Any] = []
    for piece in pattern:
        if isinstance(piece, str):
            changed.append(pseudo_text(piece))
        elif piece[0] == "s":
            changed.append([*piece[:2], {key: pseudo(value) for key, value in piece[2].items()}, piece[3]])
        else:
            changed.append(piece)
    return changed


def write_compiled(
    folder: str | Path, language: str, to: str | Path, without: tuple[str, ...] = ()
) -> dict[str, Any]:
    """Compile a language and keep the result beside the build; returns it. `without`: scopes to leave out, by how they
    begin.
    """
    compiled = compile_language(Path(folder), language)
    kept = {scope: found for scope, found in compiled["scopes"].items() if not scope.startswith(without)}
    compiled = {**compiled, "scopes": kept}
    target = Path(to)
    target.parent.mkdir(parents=True, exist_ok=True)
    part = target.with_suffix(".part")
    part.write_text(json.dumps(compiled, ensure_ascii=False, separators=(",", ":")), encoding="utf-8")
    part.replace(target)
    return compiled


__all__ = ["PSEUDO", "WordsRefused", "compile_file", "compile_language", "pseudo_text", "write_compiled"]
