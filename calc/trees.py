"""A tree of elements, neutral of where it ends up: a drawing is one, and a page builds its elements from it.

A node is text, or a list of a tag, its attributes and its children, so that JSON carries it as it is:

    ["text", {"class": "note", "x": "10"}, "38-5/8 in"]
"""

from __future__ import annotations

from html import escape
from typing import Any

Node = str | list[Any]
"""Text, or [tag, {attribute: value}, *children]."""

_WITHOUT_CONTENT = frozenset({"circle", "path"})
"""Elements that end in their own tag when written."""


def markup(node: Node) -> str:
    """A tree as markup, every text and attribute made safe.

    >>> markup(["p", {"class": "note"}, "1 < 2 ", ["b", {}, "& so on"]])
    '<p class="note">1 &lt; 2 <b>&amp; so on</b></p>'
    """
    if isinstance(node, str):
        return escape(node, quote=False)
    tag, attributes, *children = node
    head = tag + "".join([f' {name}="{escape(value)}"' for name, value in attributes.items()])
    if not children and tag in _WITHOUT_CONTENT:
        return f"<{head}/>"
    return f"<{head}>{''.join([markup(child) for child in children])}</{tag}>"


__all__ = ["Node", "markup"]
