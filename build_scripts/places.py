"""Where a reader may be, and which sources are law or common rule there: decides which of several rules leads on a page.

The verdicts of the worksheets do not depend on it: they take the strictest. `tables/sources` says of each source what it
governs, in words; this says it by place.
"""

from __future__ import annotations

PLACES = ("us-federal", "us-state", "ca", "gb", "eu", "au")
"""The places a reader may choose; each is the message `place-PLACE`."""

_BEGINS = {
    "us-federal": ("osha-", "cfr-", "doe-std-"),
    "us-state": ("wac-", "california-", "michigan-", "ohio-"),
    "ca": ("nsc-", "alberta-", "ontario-", "canada-"),
    "gb": ("loler-", "bs-en-", "en-"),
    "eu": ("en-", "din-", "dguv-", "trbs-", "eu-", "bg-bau-", "ctu-"),
    "au": ("as-", "qld-", "ema-"),
}
"""How the keys begin of the sources that count in a place."""


def places_of(source: str) -> tuple[str, ...]:
    """The places where a source is law or common rule; none for a source that belongs to no place."""
    return tuple(place for place in PLACES if source.startswith(_BEGINS[place]))
