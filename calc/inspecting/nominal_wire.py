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


__all__ = ["nominal_m"]
