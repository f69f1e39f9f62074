"""Whether one number is over another, rounding of the last places aside: the one tolerance of the book's comparisons."""

from __future__ import annotations

_LAST_PLACES = 1e-12


def exceeds(asked: float, allowed: float) -> bool:
    """Whether what is asked is over what is allowed; the same number reckoned two ways is not over itself.

    >>> exceeds(0.1 + 0.2, 0.3), exceeds(0.3001, 0.3)
    (False, True)
    """
    return asked > allowed * (1.0 + _LAST_PLACES)


__all__ = ["exceeds"]
