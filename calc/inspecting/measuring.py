"""How much has a worn part grown or lost, and when is a reading a slip of the caliper?"""

from __future__ import annotations

from calc.inputs import Given

MEASURING_SLACK = 0.01
"""A size that measures up to this share on the impossible side of its new size (a throat smaller, a section thicker than
new) is a reading error, not a change; beyond it one of the two readings is wrong (our own mark, no source)."""


def growth(new: float, now: float) -> float:
    """How much a size has grown [-], never below nothing; `new` over 0.

    >>> growth(1.0, 1.25), growth(1.0, 0.5)
    (0.25, 0.0)
    """
    return max(0.0, now / new - 1.0)


def loss(new: float, now: float) -> float:
    """How much of a size is gone [-], never below nothing; `new` over 0.

    >>> loss(1.0, 0.75), loss(1.0, 1.5)
    (0.25, 0.0)
    """
    return max(0.0, 1.0 - now / new)


def grown(given: Given, new: str, now: str) -> float | None:
    """Growth [-] between two lengths that were measured; None where one is missing. Refuses one that has shrunk."""
    if not (given.has(new) and given.has(now)):
        return None
    if given.si(now) < given.si(new) * (1 - MEASURING_SLACK):
        raise given.refuse(now, f"{spelt(now)}-smaller-than-new")
    return growth(given.si(new), given.si(now))


def lost(given: Given, new: str, now: str, swells_by: float = 0.0) -> float | None:
    """Loss [-] between two sizes that were measured; None where one is missing. Refuses one that is thicker than new by
    more than `swells_by` and a slip of the caliper.
    """
    if not (given.has(new) and given.has(now)):
        return None
    if given.si(now) > given.si(new) * (1 + swells_by + MEASURING_SLACK):
        raise given.refuse(now, f"{spelt(now)}-thicker-than-new")
    return loss(given.si(new), given.si(now))


def spelt(name: str) -> str:
    """The name of an input as part of a code."""
    return name.replace("_", "-")


__all__ = ["MEASURING_SLACK", "grown", "growth", "loss", "lost"]
