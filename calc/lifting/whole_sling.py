"""What may a whole sling of several legs lift, beside what statics say of each leg?

Where grade and size of a chain are known, the printed table of its slings decides; where only the tag's figure is known, the
mode factor of EN 818-4, the stricter of the printed laws. The rule of every worksheet that has slings of several legs.
"""

from __future__ import annotations

from calc.ratings import (
    METRIC_LIFTING_GRADES,
    Rating,
    chain_lifting_printed,
    metric_chain_printed,
    mode_factor,
)
from calc.tables import table


def printed_sling(grade: str, size: str, legs: int, angle_deg: float) -> Rating | None:
    """The printed rating of a whole chain sling at its angle [deg from horizontal]; None where nothing is printed for it.

    Raises NotRated where the tables have no such chain.

    >>> printed_sling("80", "3/8", 2, 60.0).printed
    '12,300 lb'
    """
    whole_sling = metric_chain_printed if grade in METRIC_LIFTING_GRADES else chain_lifting_printed
    return whole_sling(grade, size, legs, angle_deg)


def least_printed(grade: str, size: str, counted: int, angle_deg: float) -> Rating | None:
    """The least printed rating of a sling of the counted legs at its angle [deg from horizontal] or a steeper one: a flatter
    sling holds no more. Raises NotRated where the tables have no such chain.

    >>> least_printed("8", "10 mm", 2, 80.0).printed
    '4,250 kg'
    """
    printed_deg = (float(angle) for angle in table("chain-lifting").values("angle_from_horizontal"))
    steeper = [angle_deg, *(angle for angle in printed_deg if angle > angle_deg)]
    cells = [printed_sling(grade, size, counted, angle) for angle in steeper]
    return min((cell for cell in cells if cell), key=lambda cell: cell.working_load_limit_kg, default=None)


def factor_by_tag(counted: int, angle_deg: float) -> float | None:
    """How many times one leg a sling of two or three counted legs lifts [-] where only its tag is known, by its angle [deg
    from horizontal]; None where it lies too flat.

    >>> factor_by_tag(2, 60.0), factor_by_tag(2, 40.0), factor_by_tag(2, 29.0)
    (1.4, 1.0, None)
    """
    factor = mode_factor(counted, angle_deg)
    return None if factor is None else factor.value


__all__ = ["factor_by_tag", "least_printed", "printed_sling"]
