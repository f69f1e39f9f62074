"""Refuses a catalogue of words that does not fit the code: each refusal names file, line and key.

    python -m build_scripts.check_words

Told from the declarations of the worksheets, from the source of calc and build_scripts read as a syntax tree, and from
templates and scripts: a message that nothing uses, one that is asked for and is not there, a reason without words, an
input, option or result without a label, a placeholder that the code does not give, and what the format itself refuses. A
code that is put together while running is known by its fixed part. The words of tables are checked with the tables.
"""

from __future__ import annotations

import ast
import functools
import re
import sys
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from pathlib import Path
from typing import Any

from fluent.syntax import FluentParser
from fluent.syntax import ast as fluent

from calc import answering
from calc.declaration import Worksheet
from calc.inputs import Input
from calc.words.catalogue import COMMON
from calc.words.compiling import Pattern, WordsRefused, compile_text
from calc.words.writer import spaced

ROOT = Path(__file__).resolve().parent.parent
REASONS = ("stop", "over", "unknown", "caution", "within", "note", "Reason")
PREFIXES = {
    **dict.fromkeys(REASONS, "reason-"),
    "step": "step-",
    "Step": "step-",
    "absent": "absent-",
    "Absent": "absent-",
    "refuse": "refused-",
    "NotReadable": "unreadable-",
    "message": "",
    "Message": "",
    "text": "",
    "say": "",
    "said": "",
    "spans": "",
    "attribute": "",
}
"""Calls that take the code of a message, and what stands before the code in the catalogue."""
CODE_SECOND = ("refuse",)
"""Calls whose code is their second argument."""
WRITERS = ("text", "say")
"""Calls that are asked of a writer."""
REASON_PARTS = ("headline", "caution", "opening", "closing")
PARTS = (*REASON_PARTS, "help", "row", "formula", "numbers", "result")
"""Parts that are told with their message and are asked for by no name of their own."""
SHEET_MESSAGES = ("title", "summary", "story", "opening", "closing", "ok")
DECLARED = ("input-", "option-", "result-", "column-", "row-")
"""How the messages begin that stand for something declared in a worksheet."""
KINDS = (
    *filter(None, PREFIXES.values()),
    *DECLARED,
    *(f"{kind}.{part}" for kind in ("reason-", "step-") for part in PARTS),
)
"""Fixed parts that every message of a kind has: they tell none of them."""
_LEAST_KNOWN = 4
LEFT_TO_OTHERS = ("tables/", "units", "writing")
"""Scopes that are checked elsewhere (tables) or used whole (units, joints of lists)."""
_KEY = re.compile(r"[A-Za-z][\w.-]*-?")
_LITERAL = re.compile(r"""["'`]([A-Za-z][\w.-]*)["'`]""")


@dataclass(frozen=True)
class Asked:
    """A message that the code asks for: key, the names of its facts (None: not to be told), whether results and inputs are
    facts too, and where.
    """

    key: str
    facts: frozenset[str] | None
    of_sheet: bool
    where: str
    module: str


@dataclass
class Sources:
    """What the sources ask for, and every text in them that may be, or begin, a code."""

    asked: list[Asked] = field(default_factory=list)
    texts: set[str] = field(default_factory=set)
    patterns: set[str] = field(default_factory=set)

    @cached_property
    def made(self) -> re.Pattern[str]:
        """Codes that are put together while running."""
        return re.compile("|".join(sorted(self.patterns)) or r"(?!)")


# ----------------------------------------------------------------------------------------------- the code


@functools.cache
def read_sources(root: Path) -> Sources:
    """What calc, build_scripts, its templates and its scripts ask for."""
    found = Sources()
    for folder in ("calc", "build_scripts"):
        for path in sorted((root / folder).rglob("*.py")):
            if path.name not in ("check_words.py", "check_tables.py"):
                _read_python(path, root, found)
    for pattern in ("templates/*", "theme/*.html", "scripts/*.js", "scripts/search/*.mjs"):
        for path in sorted((root / "build_scripts").glob(pattern)):
            if path.is_file():
                _read_text(path.read_text(encoding="utf-8"), found)
    return found


def _read_text(text: str, found: Sources) -> None:
    for literal in _LITERAL.findall(text):
        found.texts.add(literal)
        if literal.endswith("-") and literal not in KINDS:
            found.patterns.add(re.escape(literal) + r"[\w-]+")
    for head in re.findall(r"`([a-z-]+-)\$\{", text):
        found.patterns.add(re.escape(head) + r"[\w-]+")


def _read_python(path: Path, root: Path, found: Sources) -> None:
    module = path.relative_to(root).as_posix()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            found.texts.add(node.value)
        elif isinstance(node, ast.JoinedStr):
            _read_made(node, found)
        elif isinstance(node, ast.Call):
            asked = _asked(node, module)
            if asked is not None:
                found.asked.append(asked)


def _read_made(made: ast.JoinedStr, found: Sources) -> None:
    """A text that is put together: a code where its fixed part is long enough to know one by, and is no mere kind."""
    fixed = [str(one.value) if isinstance(one, ast.Constant) else None for one in made.values]
    known = "".join(one for one in fixed if one is not None)
    if len(known) >= _LEAST_KNOWN and known not in KINDS and re.fullmatch(r"[\w.-]+", known):
        found.patterns.add("".join(r"[\w.-]+" if one is None else re.escape(one) for one in fixed))


def _asked(call: ast.Call, module: str) -> Asked | None:
    """The message that a call asks for by a literal code."""
    name = call.func.attr if isinstance(call.func, ast.Attribute) else getattr(call.func, "id", "")
    place = 1 if name in CODE_SECOND else 0
    if name not in PREFIXES or len(call.args) <= place:
        return None
    if name in WRITERS and not _is_writer(call.func):
        return None
    code = call.args[place]
    if (
        not isinstance(code, ast.Constant)
        or not isinstance(code.value, str)
        or not _KEY.fullmatch(code.value)
    ):
        return None
    of_sheet = PREFIXES[name] in ("reason-", "step-", "absent-") or name in ("message", "Message", "say")
    return Asked(
        PREFIXES[name] + code.value, _facts(call, name, place), of_sheet, f"{module}:{call.lineno}", module
    )


def _is_writer(function: ast.expr) -> bool:
    """Whether `text` or `say` is that of a writer, and not of what was given."""
    if not isinstance(function, ast.Attribute):
        return True
    owner = function.value
    name = owner.attr if isinstance(owner, ast.Attribute) else getattr(owner, "id", "")
    return "writer" in name.lower() or name == "told" or isinstance(owner, ast.Call)


def _facts(call: ast.Call, name: str, place: int) -> frozenset[str] | None:
    """The names of the facts that a call gives; None where they cannot be told."""
    names = {word.arg for word in call.keywords}
    if None in names or name in ("Reason", "Step", "Message", "Absent", "say") or len(call.args) > place + 1:
        return None
    return frozenset(str(one) for one in names if one != "kind" or name != "note")


# ------------------------------------------------------------------------------------------ the catalogue


@dataclass(frozen=True)
class Words:
    """The messages of a language: pattern and line by scope and key."""

    folder: Path
    root: Path
    patterns: Mapping[str, Mapping[str, Pattern]]
    lines: Mapping[str, Mapping[str, int]]

    def file(self, scope: str) -> str:
        """The file of a scope."""
        return self.shown(self.folder / f"{scope}.ftl")

    def shown(self, path: Path) -> str:
        """A path as a message names it."""
        return path.relative_to(self.root).as_posix() if path.is_relative_to(self.root) else str(path)

    def place(self, scope: str, key: str) -> str:
        """File, line and key of a message."""
        return f"{self.file(scope)}:{self.lines[scope].get(key, 0)}: {key}"

    @cached_property
    def with_parts(self) -> Mapping[str, frozenset[str]]:
        """Of each scope what it has a message of, or a part: `input-load.help` stands for itself and for `input-load`."""
        return {
            scope: frozenset(".".join(parts[:end]) for parts in split for end in range(1, len(parts) + 1))
            for scope, patterns in self.patterns.items()
            for split in [[key.split(".") for key in patterns]]
        }

    def scopes_with(self, key: str, scopes: tuple[str, ...] = ()) -> list[str]:
        """The scopes that have a message or a part of it, of those given or of all."""
        return [scope for scope in (scopes or tuple(self.patterns)) if key in self.with_parts.get(scope, ())]

    def variables(self, scope: str, key: str) -> set[str]:
        """The facts that a message and its parts name."""
        named: set[str] = set()
        for one, pattern in self.patterns[scope].items():
            if one == key or one.startswith(f"{key}."):
                named |= set(self._named(scope, pattern, (key,)))
        return named

    def _named(self, scope: str, pattern: Pattern, seen: tuple[str, ...]) -> Iterator[str]:
        for piece in pattern if isinstance(pattern, list) else []:
            if isinstance(piece, str) or piece[0] == "f":
                continue
            if piece[0] == "m":
                other = self.patterns[scope].get(piece[1], self.patterns.get(COMMON, {}).get(piece[1], ""))
                if piece[1] not in seen:
                    yield from self._named(scope, other, (*seen, piece[1]))
                continue
            yield piece[1]
            if piece[0] == "s":
                for variant in piece[2].values():
                    yield from self._named(scope, variant, seen)

    def referred(self, scope: str) -> set[str]:
        """The messages that messages of a scope bring in."""

        def inside(pattern: Pattern) -> Iterator[str]:
            for piece in pattern if isinstance(pattern, list) else []:
                if isinstance(piece, str):
                    continue
                if piece[0] == "m":
                    yield piece[1]
                elif piece[0] == "s":
                    for variant in piece[2].values():
                        yield from inside(variant)

        return {key for pattern in self.patterns[scope].values() for key in inside(pattern)}


def read_words(folder: Path, root: Path = ROOT) -> tuple[Words, list[str]]:
    """The messages of a language's folder, and what its format refuses."""
    patterns: dict[str, dict[str, Pattern]] = {}
    lines: dict[str, dict[str, int]] = {}
    refused: list[str] = []
    for path in sorted(folder.rglob("*.ftl")):
        scope = path.relative_to(folder).with_suffix("").as_posix()
        if scope.startswith("tables/"):
            continue
        try:
            patterns[scope], lines[scope] = _read(path.read_text(encoding="utf-8"))
        except WordsRefused as why:
            refused.append(f"{path}:{why}".replace(f"{root}/", ""))
    return Words(folder, root, patterns, lines), refused


@functools.cache
def _read(text: str) -> tuple[dict[str, Pattern], dict[str, int]]:
    """The patterns and the lines of a file's text by key; a text that is read once more is the same. Nobody changes them."""
    return compile_text(text), _lines(text)


def _lines(text: str) -> dict[str, int]:
    found: dict[str, int] = {}
    for entry in FluentParser(with_spans=True).parse(text).body:
        if isinstance(entry, (fluent.Message, fluent.Term)) and entry.span:
            name = entry.id.name if isinstance(entry, fluent.Message) else f"-{entry.id.name}"
            found[name] = text.count("\n", 0, entry.span.start) + 1
            for part in entry.attributes:
                start = part.span.start if part.span else entry.span.start
                found[f"{name}.{part.id.name}"] = text.count("\n", 0, start) + 1
    return found


# ---------------------------------------------------------------------------------------------- the check


def problems(root: Path = ROOT, folder: Path | None = None) -> list[str]:
    """What is wrong with the English catalogue of a checkout, one line each."""
    words, refused = read_words(folder or root / "docs" / "words" / "en", root)
    sources = read_sources(root)
    sheets = answering.declared()
    found = [*refused, *_undeclared(words, sheets)]
    asked = [one for one in sources.asked if one.module.startswith("calc/")]
    found += _missing(words, asked, sheets)
    found += _not_given(words, asked, sheets)
    if not refused:
        found += _unused(words, sources, sheets)
    found += [line for other in _other_languages(words.folder) for line in _unlike(other, words)]
    return list(dict.fromkeys(found))


def _other_languages(english: Path) -> list[Path]:
    return [path for path in sorted(english.parent.iterdir()) if path.is_dir() and path != english]


def _unlike(folder: Path, english: Words) -> list[str]:
    """What another language lacks, or has over and above the English."""
    words, found = read_words(folder, english.root)
    for scope, patterns in english.patterns.items():
        theirs = words.patterns.get(scope, {})
        found += [f"{words.file(scope)}:1: {key}: has no words" for key in patterns if key not in theirs]
    for scope, patterns in words.patterns.items():
        ours = english.patterns.get(scope, {})
        found += [f"{words.place(scope, key)}: is used by nothing" for key in patterns if key not in ours]
    return found


def declared_keys(sheet: Worksheet[Any]) -> Iterator[str]:
    """The messages that a worksheet's declaration needs."""
    yield from ("title", "summary", "story")
    yield from _of_inputs(sheet.inputs, "")
    for result in sheet.results:
        yield f"result-{result.name}"
        yield from (f"column-{result.name}-{column}" for column in result.columns)
        if result.columns:
            yield f"row-{result.name}"


def _of_inputs(inputs: tuple[Input, ...], within: str) -> Iterator[str]:
    for one in inputs:
        path = within + one.name
        yield f"input-{path}"
        yield from (f"option-{path}-{spaced(value)}" for value in one.choices)
        yield from _of_inputs(one.columns, f"{path}-")


def _undeclared(words: Words, sheets: Mapping[str, Worksheet[Any]]) -> list[str]:
    return [
        f"{words.file(sheet.scope)}:1: {key}: has no words; the worksheet {name} declares it"
        for name, sheet in sheets.items()
        for key in declared_keys(sheet)
        if not words.scopes_with(key, (*sheet.scopes, COMMON))
    ]


def _sheet_of(module: str, sheets: Mapping[str, Worksheet[Any]]) -> Worksheet[Any] | None:
    return sheets.get(Path(module).stem.replace("_", "-"))


def _missing(words: Words, asked: list[Asked], sheets: Mapping[str, Worksheet[Any]]) -> list[str]:
    found = []
    for one in asked:
        sheet = _sheet_of(one.module, sheets)
        file = words.file(sheet.scope) if sheet else words.shown(words.folder)
        scopes = words.scopes_with(one.key)
        if not scopes:
            what = "is a reason without words" if one.key.startswith("reason-") else "has no words"
            found.append(f"{file}:1: {one.key}: {what}; {one.where} asks for it")
        elif one.key.startswith("reason-") and not any(
            f"{one.key}.{part}" in words.patterns[scope] for scope in scopes for part in REASON_PARTS
        ):
            found.append(
                f"{words.place(scopes[0], one.key)}: is a reason without words; it needs one of {', '.join(REASON_PARTS)}"
            )
    return found


def _not_given(words: Words, asked: list[Asked], sheets: Mapping[str, Worksheet[Any]]) -> list[str]:
    found = []
    for one in asked:
        if one.facts is None:
            continue
        own = _sheet_of(one.module, sheets)
        scopes = words.scopes_with(one.key, (*own.scopes, COMMON)) if own else []
        lacking: list[list[str]] = []
        for scope in scopes or words.scopes_with(one.key):
            known = set(one.facts) | (_named_by_sheets(scope, own, sheets) if one.of_sheet else set())
            lacking.append(
                [
                    f"{words.place(scope, one.key)}: names ${name}, which {one.where} does not give"
                    for name in sorted(words.variables(scope, one.key) - known)
                ]
            )
        if all(lacking):  # where several files have the key, a call is for the one that it fits
            found += [line for lines in lacking for line in lines]
    return found


def _named_by_sheets(
    scope: str, own: Worksheet[Any] | None, sheets: Mapping[str, Worksheet[Any]]
) -> set[str]:
    """The results and inputs that are facts of a scope's messages."""
    users = [own] if own else [sheet for sheet in sheets.values() if scope in (*sheet.scopes, COMMON)]
    return {name for sheet in users for name in sheet.by_name}


def _unused(words: Words, sources: Sources, sheets: Mapping[str, Worksheet[Any]]) -> list[str]:
    keys_of_calls = {one.key for one in sources.asked}
    found = []
    for scope, patterns in words.patterns.items():
        if scope.startswith(LEFT_TO_OTHERS):
            continue
        declared = {
            key
            for sheet in sheets.values()
            if scope in (*sheet.scopes, COMMON)
            for key in declared_keys(sheet)
        }
        referred = words.referred(scope)
        found += [
            f"{words.place(scope, key)}: is used by nothing"
            for key in patterns
            if not _used(key, scope, declared, referred | keys_of_calls, sources)
        ]
    return found


def _used(key: str, scope: str, declared: set[str], named: set[str], sources: Sources) -> bool:
    base, _, part = key.partition(".")
    if key in named or key in sources.texts:
        return True
    if scope.startswith(("worksheets/", "shared/")):
        if base in SHEET_MESSAGES:
            return True
        if base.startswith(DECLARED):
            return base in declared
    if part and part not in PARTS:
        return bool(sources.made.fullmatch(key))
    codes = [
        base,
        *(base.removeprefix(prefix) for prefix in PREFIXES.values() if prefix and base.startswith(prefix)),
    ]
    return any(code in sources.texts or code in named or sources.made.fullmatch(code) for code in codes)


def main() -> int:
    """Print what is wrong; 1 where something is."""
    found = problems()
    for line in found:
        print(line)
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
