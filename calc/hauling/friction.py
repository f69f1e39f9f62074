"""How much of its own weight does a load hold by friction, on this deck?

State of the deck first, then the pair of materials. Values: CTU Code (2014), Annex 7 Appendix 2, standing friction of
surfaces swept clean, read in its text; where another text differs the lower is taken (timber on steel 0.4 in the European
guidelines of 2006). A friction mat counts half the weight on it, as an unmarked one does in 49 CFR 393.108(g) (text), not the
0.6 of the CTU Code (from memory); only one that its maker marked is asked for, since Canada counts no other (copy). Rubber tracks and tyres: the value that a German expert assumed for slightly soiled
rubber tracks. Not swept: at most 0.2 (CTU Code, from memory). Oily: at most 0.1 (CTU Code, from memory). Ice counts as oil
here, which is stricter than the CTU Code. Where no value is printed for a wet pair, or the pair is not known, the value of
an oily deck is taken: no pair is held to be better than the worst.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from calc.declaration import Citation
from calc.inputs import ChoiceInput

DECKS = ("swept-dry", "swept-wet", "unswept", "icy", "oily")
"""States of the deck under the load, asked before the pair of materials."""
SWEPT = ("swept-dry", "swept-wet")
LEAST = 0.1
"""Friction [-] of an oily or icy deck, and of a pair that is not known (CTU Code for oily, from memory)."""
UNSWEPT_AT_MOST = 0.2
"""Friction [-] of a deck that is not swept, at most (CTU Code, from memory)."""
MOVING_SHARE = 0.75
"""Part of the standing friction that is left where direct tie-downs hold, because the load must move a little first [-]
(CTU Code, Annex 7 Appendix 2, text)."""

_CTU = Citation("ctu-code", "Annex 7, Appendix 2")
_MAT = Citation("cfr-49-393", "393.108(g)")
_TRACK = Citation("gdv-photo-2024-04", "figure 3")


@dataclass(frozen=True)
class Pair:
    """Standing friction [-] of two materials, dry and wet; None where none is printed."""

    dry: float
    wet: float | None
    source: Citation = _CTU


PAIRS: Mapping[str, Pair] = {
    "sawn-wood-on-plywood": Pair(0.45, 0.45),
    "sawn-wood-on-grooved-aluminium": Pair(0.4, 0.4),
    "sawn-wood-on-steel": Pair(0.3, 0.3),
    "planed-wood-on-plywood": Pair(0.3, 0.3),
    "planed-wood-on-grooved-aluminium": Pair(0.25, 0.25),
    "planed-wood-on-steel": Pair(0.2, 0.2),
    "plastic-pallet-on-plywood": Pair(0.2, 0.2),
    "plastic-pallet-on-metal": Pair(0.15, 0.15),
    "steel-crate-on-plywood": Pair(0.45, 0.45),
    "steel-crate-on-grooved-aluminium": Pair(0.3, 0.3),
    "steel-on-steel": Pair(0.2, None),
    "rubber-on-deck": Pair(0.3, None, _TRACK),
    "rough-concrete-on-wood": Pair(0.7, 0.7),
    "friction-mat": Pair(0.5, 0.5, _MAT),
}
"""Pairs by the code of their option."""


@dataclass(frozen=True)
class Grip:
    """Standing friction under the load [-], where it stands, and whether it is a bound from memory."""

    friction: float
    source: Citation
    from_memory: bool


def grip(deck: str, pair: str) -> Grip:
    """The friction of a deck and a pair of materials; `pair` is empty where it is not known.

    >>> grip("swept-dry", "sawn-wood-on-plywood").friction, grip("oily", "sawn-wood-on-plywood").friction
    (0.45, 0.1)
    """
    found = PAIRS.get(pair)
    if found is None or deck in ("icy", "oily"):
        return Grip(LEAST, _CTU, from_memory=True)
    if deck == "swept-dry":
        return Grip(found.dry, found.source, from_memory=False)
    if deck == "swept-wet":
        return (
            Grip(LEAST, _CTU, from_memory=True)
            if found.wet is None
            else Grip(found.wet, found.source, from_memory=False)
        )
    return Grip(min(UNSWEPT_AT_MOST, found.dry), _CTU, from_memory=True)


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
    "LEAST",
    "MOVING_SHARE",
    "PAIRS",
    "SWEPT",
    "UNSWEPT_AT_MOST",
    "WORDS",
    "Grip",
    "Pair",
    "deck_input",
    "grip",
    "pair_input",
]
