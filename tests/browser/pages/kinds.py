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
    "kit/index.html",
    "about/sources.html",
    "404.html",
)
"""Home, index, narrow and wide table, rules in words, long table, plain list, form, form with rows, kit, cards, not found."""


def leads_on(path: Path) -> bool:
    """Whether a page only leads to the one that took its place: a browser does not stay on it."""
    return 'http-equiv="refresh"' in path.read_text(encoding="utf-8")


def pages(site: Path) -> list[str]:
    """Every page of the site on which a browser stays."""
    return sorted(path.relative_to(site).as_posix() for path in site.rglob("*.html") if not leads_on(path))


def moved(site: Path) -> list[str]:
    """Old addresses, which lead on."""
    return sorted(path.relative_to(site).as_posix() for path in site.rglob("*.html") if leads_on(path))
