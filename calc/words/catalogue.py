"""Finds the words of a language: compiled, they lie in the package; in a checkout they are compiled when first used."""

from __future__ import annotations

import functools
import importlib
import json
import os
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

Pattern = str | list[Any]

_HERE = os.path.dirname(__file__)
_PACKED = os.path.join(_HERE, "compiled")
_CHECKOUT = os.path.normpath(os.path.join(_HERE, os.pardir, os.pardir))
_WORDS = os.path.join(_CHECKOUT, "docs", "words")
COMMON = "common"
"""The scope whose messages every other scope may use."""


class NoWords(LookupError):
    """A message is not in the catalogue, or no catalogue of the language can be had; the message says which."""


@dataclass(frozen=True)
class Catalogue:
    """The messages of one language: scope, then key, then pattern."""

    language: str
    plural: str
    scopes: Mapping[str, Mapping[str, Pattern]]

    def messages(self, scopes: tuple[str, ...]) -> Mapping[str, Pattern]:
        """The messages that some scopes see: their own, the first before the next, and the common ones."""
        seen: dict[str, Pattern] = {}
        for scope in (COMMON, *reversed(scopes)):
            seen.update(self.scopes.get(scope, {}))
        return seen

    def plural_of(self, count: float) -> str:
        """The plural class of a count in this language."""
        return "one" if count == 1 else "other"


@functools.cache
def catalogue(language: str = "en") -> Catalogue:
    """The catalogue of a language; raises NoWords."""
    compiled = _packed(language) or _compiled(language)
    return Catalogue(compiled["language"], compiled["plural"], compiled["scopes"])


@functools.lru_cache(maxsize=512)
def messages(language: str, scopes: tuple[str, ...]) -> Mapping[str, Pattern]:
    """The messages that some scopes see in a language."""
    return catalogue(language).messages(scopes)


def _packed(language: str) -> dict[str, Any] | None:
    """The words that lie in the package or in the archive calc was loaded from."""
    loader = globals()["__spec__"].loader
    try:
        text = bytes(loader.get_data(os.path.join(_PACKED, f"{language}.json"))).decode("utf-8")
    except OSError:
        return None
    found: dict[str, Any] = json.loads(text)
    return found


def _compiled(language: str) -> dict[str, Any]:
    """The words of a checkout, compiled anew where a file of words is younger than what was compiled."""
    target = os.path.join(_CHECKOUT, ".build", "words", f"{language}.json")
    if os.path.isfile(target) and os.path.getmtime(target) >= _youngest():
        with open(target, encoding="utf-8") as file:
            found: dict[str, Any] = json.load(file)
        return found
    try:
        compiling = importlib.import_module("calc.words.compiling")  # by name: the page has no such module
    except ImportError as missing:
        raise NoWords(
            f"the words of {language} are not compiled, and {missing.name} is not installed to do so. "
            "Run python3 build_scripts/handbook.py site once, or use .venv/bin/python."
        ) from missing
    compiled: dict[str, Any] = compiling.write_compiled(_WORDS, language, target)
    return compiled


def _youngest() -> float:
    """When a file of words, a folder of them, or how they are compiled was last changed."""
    compiling = os.path.getmtime(os.path.join(_HERE, "compiling.py"))
    return max(
        compiling,
        *(
            os.path.getmtime(folder) if name is None else os.path.getmtime(os.path.join(folder, name))
            for folder, _folders, files in os.walk(_WORDS)
            for name in (None, *files)
        ),
    )


__all__ = ["COMMON", "Catalogue", "NoWords", "catalogue", "messages"]
