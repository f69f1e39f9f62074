"""What a question hands over to a worksheet: which box takes what was typed, so that the page opens with it.

A kind of amount (`weight`, `length`, ...) stands beside the boxes that it fills; `{}` is what was typed, in the reader's own
unit, and any other text is the choice that goes with it. What was not typed is never filled in, and what could be meant
otherwise is left out (build_scripts/scripts/search/fills.mjs says when).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from calc import answering

TYPED = "{}"
Boxes = Mapping[str, str]

_LOAD: Mapping[str, Boxes] = {"weight": {"load": TYPED}}
_CHAIN: Mapping[str, Boxes] = {"grade": {"grade": TYPED}, "size": {"size": TYPED}}

FILLS: Mapping[str, Mapping[str, Boxes]] = {
    "sling-legs": {
        **_LOAD,
        "legs": {"legs": TYPED},
        "angle": {"known_by": "angle", "angle": TYPED},
        "grade": {"leg_kind": "chain", "grade": TYPED},
        "size": {"leg_kind": "chain", "size": TYPED},
    },
    "hitch": {**_LOAD, "hitch": {"hitch": TYPED}},
    "load-path": _LOAD,
    "hanging-load": _LOAD,
    "moving-load": _LOAD,
    "lifting-frame": _LOAD,
    "beam-lift": _LOAD,
    "tripod": _LOAD,
    "spreader": {**_LOAD, "angle": {"sling_angle": TYPED}},
    "lifting-lug": _LOAD,
    "move-it": _LOAD,
    "tie-down": _LOAD,
    "lashing-count": _LOAD,
    "drop-load": {"weight": {"weight": TYPED}, "fall": {"drop_height": TYPED}},
    "ram-force": {"pressure": {"pressure": TYPED}, "bore": {"bore": TYPED}},
    "heat-colour": {"temperature": {"temperature": TYPED}, "colour": {"colour": TYPED}},
    "hot-work-derate": {"temperature": {"temperature": TYPED}, "grade": {"grade": TYPED}},
    "chain-check": _CHAIN,
    "convert": {"any": {"value": TYPED}, "unit": {"to": TYPED}},
}
"""By worksheet. A chain is only filled in where the question names chain, a bore only where it names one."""


def colours() -> tuple[str, ...]:
    """The colors that the worksheet of heat colors knows by a name of two words or more: a bare blue is two of them."""
    boxes = {one.name: one for one in answering.worksheet("heat-colour").inputs}
    return tuple(name for name in boxes["colour"].choices if "-" in name)


def by_address(address_of: Callable[[str], str | None]) -> dict[str, Mapping[str, Boxes]]:
    """The boxes by the address of the worksheet's page, for the search in the page."""
    found = {address_of(name): boxes for name, boxes in FILLS.items()}
    return {address: boxes for address, boxes in found.items() if address}


__all__ = ["FILLS", "TYPED", "by_address", "colours"]
