"""How much of its own weight does a load hold by friction, on this deck?

State of the deck first, then the pair of materials. Figures: tables/friction, where the lowest of the sources is the default:
the CTU Code (2014), Annex 7 Appendix 2, standing friction of surfaces swept clean. A friction mat has half the weight on
it, as an unmarked one does in 49 CFR 393.108(g) (text), not the 0.6 of the CTU Code (from memory); only one that its maker
marked is asked for, since Canada counts no other (copy). Rubber tracks and tires: the figure that a German expert assumed
for slightly soiled rubber tracks. Not swept: at most 0.2, oily: at most 0.1 (CTU Code, from memory). Ice is taken like oil
here, which is stricter than the CTU Code. Where no figure is printed for a wet pair, or the pair is not known, that of an
oily deck is taken: no pair is held to be better than the worst.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from calc.declaration import Citation
from calc.inputs import ChoiceInput
from calc.tables import Row, number, table

DECKS = ("swept-dry", "swept-wet", "unswept", "icy", "oily")
"""States of the deck under the load, asked before the pair of materials."""
SWEPT: Mapping[str, str] = {"swept-dry": "dry", "swept-wet": "wet"}
"""Decks that were swept clean, with their state in the table."""
PAIRS: Mapping[str, str] = {
    "sawn-wood-on-plywood": "sawn-wood-on-plywood",
    "sawn-wood-on-grooved-aluminium": "sawn-wood-on-grooved-aluminium",
    "sawn-wood-on-steel": "sawn-wood-on-steel",
    "planed-wood-on-plywood": "planed-wood-on-plywood",
    "planed-wood-on-grooved-aluminium": "planed-wood-on-grooved-aluminium",
    "planed-wood-on-steel": "planed-wood-on-steel",
    "plastic-pallet-on-plywood": "plastic-pallet-on-plywood",
    "plastic-pallet-on-metal": "plastic-pallet-on-steel",
    "steel-crate-on-plywood": "steel-crate-on-plywood",
    "steel-crate-on-grooved-aluminium": "steel-crate-on-grooved-aluminium",
    "steel-on-steel": "smooth-metal-on-smooth-metal",
    "rubber-on-deck": "rubber-track-on-deck",
    "rough-concrete-on-wood": "rough-concrete-on-wood",
    "friction-mat": "friction-mat",
}
"""Pairs by the code of their option, with their name in the table."""


@dataclass(frozen=True)
class Grip:
    """Standing friction under the load [-], where it stands, and whether it is a bound from memory."""

    friction: float
    source: Citation
    from_memory: bool


@cache
def _default(pair: str, state: str, quantity: str) -> Row | None:
    """The row of the table that is ours, of sources that agree the first; None where none is printed."""
    found = table("friction").where(pair=pair, state=state, quantity=quantity, default="yes")
    return found[0] if found else None


def _grip(row: Row) -> Grip:
    return Grip(number(row), Citation(row["source"], row["locator"]), row["checked"] == "memory")


def _bound(state: str) -> Grip:
    """The most that a deck in a bad state holds, whatever stands on it."""
    return _grip(table("friction").one(pair="any", state=state, quantity="friction_at_most"))


def moving_share() -> float:
    """Part of the standing friction that is left where direct tie-downs hold, because the load must move a little first [-]
    (CTU Code, Annex 7 Appendix 2, text).
    """
    return number(table("friction").one(pair="any", quantity="moving_share", default="yes"))


def mat_friction() -> float:
    """The standing friction [-] of a mat on a swept deck (49 CFR 393.108(g): half the weight on it).

    >>> mat_friction()
    0.5
    """
    return number(table("friction").one(pair="friction-mat", state="dry", default="yes"))


def grip(deck: str, pair: str) -> Grip:
    """The friction of a deck and a pair of materials; `pair` is empty where it is not known.

    >>> grip("swept-dry", "sawn-wood-on-plywood").friction, grip("oily", "sawn-wood-on-plywood").friction
    (0.45, 0.1)
    """
    worst = _bound("oily")
    if pair not in PAIRS or deck in ("icy", "oily"):
        return worst
    printed = _default(PAIRS[pair], SWEPT.get(deck, "dry"), "friction")
    if printed is None:
        return worst
    held = _grip(printed)
    if deck in SWEPT:
        return held
    unswept = _bound("unswept")
    return Grip(min(unswept.friction, held.friction), unswept.source, from_memory=True)


def deck_input() -> ChoiceInput:
    """The state of the deck: part of the question."""
    return ChoiceInput("deck", choices=DECKS)


def pair_input() -> ChoiceInput:
    """What stands on what; left empty it is the worst."""
    return ChoiceInput("pair", choices=tuple(PAIRS), required=False)


WORDS = "shared/friction"
"""The scope of the words of deck and pair."""

__all__ = [
    "DECKS",
    "PAIRS",
    "SWEPT",
    "WORDS",
    "Grip",
    "deck_input",
    "grip",
    "mat_friction",
    "moving_share",
    "pair_input",
]
