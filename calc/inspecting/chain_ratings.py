"""Every printed rating of one straight leg, or of a tie-down, for a grade and a size of chain.

Lifting: OSHA, Guidance on Safe Sling Use, Tables 1 and 2 (grades 80, 100), and the metric table after EN 818 (grades 4,
5, 8, 10). Tie-down: 49 CFR 393.108.
"""

from __future__ import annotations

from calc.inspecting.chain_marks import ChainSize
from calc.ratings import LIFTING_GRADES, Rating, rating_of
from calc.tables import Row, table


def lifting_ratings(grade: str, size: ChainSize) -> tuple[Rating, ...]:
    """The printed ratings of one straight leg, from every source that has one; empty where none has."""
    if grade in LIFTING_GRADES:
        rows: tuple[Row, ...] = table("chain-lifting").where(
            grade=grade, size_mm=size.metric_name, legs="1", angle_from_horizontal="90", unit="lb"
        )
    else:
        rows = table("chain-lifting-metric").where(
            grade=grade, size_mm=size.metric_name, legs="1", hitch="straight", quantity="working_load_limit"
        )
    return tuple(rating_of(row) for row in rows)


def tie_down_ratings(grade: str, size: ChainSize) -> tuple[Rating, ...]:
    """The limit that the law prints for tying down; empty where it prints none."""
    rows = table("chain-tie-down").where(grade=grade, size_mm=size.metric_name, unit="lb")
    return tuple(rating_of(row) for row in rows)
