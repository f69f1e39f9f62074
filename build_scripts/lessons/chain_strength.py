"""What a grade number says, and a model of how a chain stretches from nothing to its break.

Grade: mean stress in the two sides of a link when new chain breaks, in N/mm2, over ten (ASTM A391 and A973, scope 1.3;
EN 818-1). Stretch: an elastic line (calc.lifting.chain_spring) and a power law between two points that are known; the law
between them is ours and is called a model wherever it is drawn.
"""

from __future__ import annotations

import functools
import math
from dataclasses import dataclass

from build_scripts.lessons.printed import printed
from calc.lifting.chain_spring import chain_stiffness_n
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.ratings import LIFTING_GRADES, chain_lifting_leg, chain_tie_down

GRADES = ("30", "43", "70", "80", "100")
SIZE, WIRE_M = "3/8", 0.010
"""The chain of all examples, and its nominal wire [m]."""

SET_AT_PROOF = 0.005
"""Lasting stretch that the model gives new chain at its proof load [-]: our assumption, no source."""
PROOF_OVER_RATING = 2.0
"""Proof load over rating of United States chain (ASTM A391, reprint)."""
BRITTLE_STRETCH = 0.02
"""Stretch at which the drawn brittle link of equal strength parts [-]: an example, no source."""


def both_sides_m2(wire_m: float) -> float:
    """Area of the two sides of a link [m2], for a wire [m].

    >>> round(both_sides_m2(0.010) * 1e6, 2)
    157.08
    """
    return 2 * math.pi / 4 * wire_m**2


def mean_stress_pa(pull_n: float, wire_m: float) -> float:
    """Mean stress [Pa] in the sides of a link under a pull [N]; the true stress at the bends is far higher."""
    return pull_n / both_sides_m2(wire_m)


def least_break_n(grade: str, wire_m: float) -> float:
    """Least breaking force [N] that a grade number promises for new chain of a wire [m].

    >>> round(least_break_n("80", 0.010))
    125664
    """
    return float(grade) * 10e6 * both_sides_m2(wire_m)


def rating_n(grade: str, size: str = SIZE) -> float:
    """Rating [N] of a grade and size: for lifting where the grade lifts, else for tying down."""
    rating = chain_lifting_leg(grade, size) if grade in LIFTING_GRADES else chain_tie_down(grade, size)
    return rating.working_load_limit_kg * STANDARD_GRAVITY_M_PER_S2


def least_elongation(grade: str) -> float:
    """Least stretch at break [-] of a grade (reprint of the NACM specifications)."""
    return printed("elongation-lifting-chain" if grade in LIFTING_GRADES else "elongation-tie-down-chain").si


@dataclass(frozen=True)
class StretchModel:
    """Elastic line plus power law: stretch = F/EA + p (F/Fb)^n, through (proof, set) and (break, least elongation).

    rating_n, break_n -- pulls [N]; stiffness_n -- EA [N]; plastic_at_break -- p [-]; exponent -- n [-]
    Sound new chain alone: none that is cracked, cold, hard or worn.
    """

    rating_n: float
    break_n: float
    stiffness_n: float
    plastic_at_break: float
    exponent: float

    @property
    def proof_n(self) -> float:
        """Proof load [N]."""
        return PROOF_OVER_RATING * self.rating_n

    def lasting(self, pull_n: float) -> float:
        """Stretch that stays [-] after a pull [N]."""
        return self.plastic_at_break * math.pow(pull_n / self.break_n, self.exponent)

    def stretch(self, pull_n: float) -> float:
        """Whole stretch [-] under a pull [N] up to the break."""
        return pull_n / self.stiffness_n + self.lasting(pull_n)

    def energy_j_per_m(self, pull_n: float) -> float:
        """Work taken up [J] by each metre of chain up to a pull [N]: the area under the curve, in closed form."""
        elastic = pull_n**2 / (2 * self.stiffness_n)
        return elastic + pull_n * self.lasting(pull_n) * self.exponent / (self.exponent + 1)


@functools.cache
def stretch_model(grade: str) -> StretchModel:
    """The model of a grade in 3/8 in chain.

    >>> round(stretch_model("80").exponent, 1)
    5.3
    """
    rating, breaks, stiffness = rating_n(grade), least_break_n(grade, WIRE_M), chain_stiffness_n(WIRE_M)
    plastic = least_elongation(grade) - breaks / stiffness
    exponent = math.log(plastic / SET_AT_PROOF) / math.log(breaks / (PROOF_OVER_RATING * rating))
    return StretchModel(rating, breaks, stiffness, plastic, exponent)


def brittle_energy_j_per_m(break_n: float) -> float:
    """Work [J] that each metre takes up if links of equal strength part at BRITTLE_STRETCH on a straight line."""
    return break_n * BRITTLE_STRETCH / 2


def pull_for_set_n(model: StretchModel, lasting: float) -> float:
    """The pull [N] that leaves a stretch [-] in the model's chain."""
    return model.break_n * math.pow(lasting / model.plastic_at_break, 1 / model.exponent)


__all__ = [
    "GRADES",
    "PROOF_OVER_RATING",
    "SIZE",
    "WIRE_M",
    "StretchModel",
    "both_sides_m2",
    "brittle_energy_j_per_m",
    "least_break_n",
    "least_elongation",
    "mean_stress_pa",
    "pull_for_set_n",
    "rating_n",
    "stretch_model",
]
