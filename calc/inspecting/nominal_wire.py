"""How thick the wire of a chain size is when new."""

from __future__ import annotations

from calc.inspecting.chain_marks import ChainSize
from calc.quantities import to_si


def nominal_m(size: ChainSize) -> float:
    """The wire of a size when new [m]: its metric size, which the tables print beside the inch.

    >>> nominal_m(ChainSize(("3/8",), "10", 0.0075, 0.0108))
    0.01
    """
    return to_si(float(size.metric_name), "mm", "length")


def wire_gone(measured_m: float, size: ChainSize) -> float:
    """How much of the wire is gone [-] if it once was `size`: 0 when it measures as new.

    >>> round(wire_gone(0.0083, ChainSize(("3/8",), "10", 0.0075, 0.0108)), 6)
    0.17
    """
    return max(0.0, 1.0 - measured_m / nominal_m(size))


__all__ = ["nominal_m", "wire_gone"]
