"""calc holds no sentence for readers: what a reader reads stands in docs/words. Looked for in the source itself.

Left aside, each with its reason: docstrings; places in a source, which are cited as the source prints them; the typed
words of an example, which are the reader's side of the desk; what is raised for engineers (a missing table, a damaged
catalogue); the help of the command line; spellings of units that people type; classes of a drawing's parts.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from calc.quantities import ALIASES, UNIT_WORDS

CALC = Path(__file__).resolve().parents[2] / "calc"
SENTENCE = re.compile(r"[a-z] [A-Za-z]|[A-Za-z] [a-z]")
FOR_ENGINEERS = {"tables.py", "telling.py", "answering.py", "hitch_factors.py", "tempering.py", "words"}
"""Modules whose exceptions name what is wrong with the book itself, or with a name typed on the command line."""
MODULES = [path for path in sorted(CALC.rglob("*.py")) if path.name != "__main__.py"]
DRAWN = {"area", "line", "circle", "_path", "path", "polygon"}
CLASSES = re.compile(r"(line|area|head|drawing) [a-z-]+")
TYPED_UNITS = {spelling for spellings in ALIASES.values() for spelling in spellings} | set(
    UNIT_WORDS.values()
)


def strings(node: ast.AST, path: Path) -> Iterator[ast.Constant]:
    """The string constants below a node that a reader might be shown."""
    for name, value in ast.iter_fields(node):
        for child in value if isinstance(value, list) else [value]:
            if not isinstance(child, ast.AST) or left_aside(node, name, child, path):
                continue
            if isinstance(child, ast.Constant):
                if isinstance(child.value, str):
                    yield child
            else:
                yield from strings(child, path)


def left_aside(parent: ast.AST, field: str, child: ast.AST, path: Path) -> bool:
    """Whether a part of the source is none of the book's words."""
    if isinstance(child, ast.Expr) and isinstance(child.value, ast.Constant):
        return True  # a docstring
    if isinstance(child, ast.Call):
        called = child.func.attr if isinstance(child.func, ast.Attribute) else getattr(child.func, "id", "")
        return called == "Citation" or called in DRAWN
    if isinstance(child, ast.keyword):
        return child.arg == "example"
    if isinstance(child, ast.Raise):
        return bool(FOR_ENGINEERS & {path.name, path.parent.name})
    return field in ("annotation", "returns") or isinstance(parent, ast.Import)


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.relative_to(CALC).as_posix())
def test_a_module_holds_no_words_for_readers(path: Path) -> None:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    found = [
        f"{one.lineno}: {one.value!r}"
        for one in strings(tree, path)
        if isinstance(one.value, str)
        and SENTENCE.search(one.value)
        and one.value not in TYPED_UNITS
        and not CLASSES.fullmatch(one.value)
    ]
    assert found == []
