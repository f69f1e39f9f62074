"""One page of each kind, and all pages, of the built site."""

from __future__ import annotations

from pathlib import Path

KINDS = (
    "index.html",
    "look-up/index.html",
    "look-up/chain-tie-down.html",
    "look-up/chain-lifting.html",
    "look-up/repair-welding-rules.html",
    "look-up/densities.html",
    "look-up/every-rating.html",
    "work-out/index.html",
    "work-out/sling-legs.html",
    "work-out/load-weight.html",
    "work-out/hook-check.html",
    "about/sources.html",
    "404.html",
)
"""Home, index, narrow and wide table, rules in words, long table, plain list, form, form with rows, cards, not found."""


def pages(site: Path) -> list[str]:
    """Every page of the site."""
    return sorted(path.relative_to(site).as_posix() for path in site.rglob("*.html"))
