"""How several facts in a row are joined."""

from __future__ import annotations

from typing import Any

import pytest

from calc.words.facts import Listing
from calc.words.writer import Writer


@pytest.mark.parametrize(
    ("style", "words"),
    [
        ("list", "a, b, c"),
        ("and", "a, b and c"),
        ("or", "a, b or c"),
        ("clauses", "a, and b, and c"),
        ("semicolon", "a; b; c"),
        ("plus", "a + b + c"),
        ("space", "a b c"),
    ],
)
def test_each_style_joins_in_its_way(style: Any, words: str) -> None:
    assert Writer().plain(Listing(("a", "b", "c"), style)) == words
    assert Writer().plain(Listing(("a",), style)) == "a"
