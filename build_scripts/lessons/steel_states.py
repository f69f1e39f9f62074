"""What cold, many lifts, bending, a zinc bath and hydrogen do to steel: formulas of the explaining pages.

Each has its source and range in its docstring. None gives a rating, and none says how many lifts are left.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from build_scripts.lessons.printed import printed
from calc.heating.hardening import martensite_duren_hv, martensite_yurioka_hv
from calc.heating.tempering import cycle_parameter, parameter, tempered_steel

CASE_DATA = "4140"
BATH_DEGC = 450.0
"""A galvanizing bath [deg C]: usual practice, no source; zinc melts at 419.5."""
BATH_MINUTES = 5.0


@dataclass(frozen=True)
class NotchCurve:
    """Notch energy over temperature: E = L + (U - L)/2 (1 + tanh((T - T0)/C)), the usual S (from memory, any textbook).

    L, U -- least and greatest energy [J], C -- half width [K]: usual values, ours; T0 [deg C] is fitted through one printed
    point, so the curve is a model away from that point.
    """

    middle_degc: float
    least_j: float = 4.0
    greatest_j: float = 110.0
    half_width_k: float = 35.0

    def energy_j(self, temperature_degc: float) -> float:
        """Notch energy [J] at a temperature [deg C]."""
        rise = 1 + math.tanh((temperature_degc - self.middle_degc) / self.half_width_k)
        return self.least_j + (self.greatest_j - self.least_j) / 2 * rise


def curve_through(temperature_degc: float, energy_j: float) -> NotchCurve:
    """The notch curve that passes through one printed point.

    >>> round(curve_through(-15.0, 27.0).energy_j(-15.0), 6)
    27.0
    """
    plain = NotchCurve(0.0)
    share = 2 * (energy_j - plain.least_j) / (plain.greatest_j - plain.least_j) - 1
    return NotchCurve(temperature_degc - plain.half_width_k * math.atanh(share))


MACHINED, HOT_ROLLED, AS_FORGED = (4.51, -0.265), (57.7, -0.718), (272.0, -0.995)
"""Surface factors a, b for strength in MPa (Shigley, 9th edition, Table 6-2, read in course notes; the 11th differs)."""


def fatigue_limit_mpa(tensile_mpa: float, surface: tuple[float, float]) -> float:
    """Stress either way [MPa] that small polished test bars bear a million times, cut by a surface factor (Shigley, ch. 6).

    min(0.5 Sut, 700) min(1, a Sut^b). Range 400 to 1,400 MPa. No size, notch, rust or scatter is in it: not for design.

    >>> round(fatigue_limit_mpa(520, AS_FORGED))
    140
    """
    a, b = surface
    return min(0.5 * tensile_mpa, 700.0) * min(1.0, a * math.pow(tensile_mpa, b))


def chain_lifts(range_mpa: float) -> float:
    """Lifts to break [-] for a range of mean stress [MPa]: 6.0e10 / range^3 (DNV-OS-E301, ship's chain in sea water).

    A design curve of big chain: for small chain in a shop the cube is the lesson, the number only its order of size.

    >>> chain_lifts(200.0)
    7500.0
    """
    return printed("chain-fatigue-constant").si / range_mpa**3


def bend_strain(radius_over_thickness: float) -> float:
    """Stretch of the outer skin [-] when a flat or bar is bent to an inside radius over its thickness: 1/(2 R/t + 1).

    Geometry of a bend whose middle keeps its length.

    >>> round(bend_strain(1.5), 3)
    0.25
    """
    return 1 / (2 * radius_over_thickness + 1)


DIFFUSIVITY_M2_PER_S = {"room": 1e-11, "hot": 5e-9}
"""How fast hydrogen wanders in steel at 20 and at 200 C [m2/s]: from memory, uncertain tenfold."""


def hydrogen_hours(diameter_m: float, diffusivity_m2_per_s: float) -> float:
    """Hours for a round bar to lose 88 percent of its hydrogen: 0.30 a2/D, first terms of the series for a cylinder.

    diffusivity -- as in DIFFUSIVITY_M2_PER_S, uncertain tenfold

    >>> round(hydrogen_hours(0.010, 1e-11))
    208
    """
    return 0.30 * (diameter_m / 2) ** 2 / diffusivity_m2_per_s / 3600


def quenched_hv(carbon_pct: float) -> float:
    """Hardness [HV] of fully quenched steel by its carbon [percent]: mean of two fits (calc.heating.hardening, memory).

    0.05 to 0.5 percent carbon. That carbon alone decides: Grange and others 1977, abstract.

    >>> round(quenched_hv(0.4))
    628
    """
    made_of = {"C": carbon_pct}
    return (martensite_yurioka_hv(made_of) + martensite_duren_hv(made_of)) / 2


def strength_after_bath_pa(tempered_at_degc: float, minutes: float = BATH_MINUTES) -> tuple[float, float]:
    """Tensile strength [Pa] of a 4140 test piece before and after a dip in a zinc bath of 450 C.

    Hollomon and Jaffe's rule on the test pieces of tempering-data, read between them; tempered for one hour first.
    """
    steel = tempered_steel(CASE_DATA)
    before = parameter(tempered_at_degc, 1.0)
    after = cycle_parameter([(BATH_DEGC, minutes / 60)], before_kk=before)
    strengths = steel.strength_pa(before), steel.strength_pa(after)
    if strengths[0] is None or strengths[1] is None:
        raise ValueError("outside the test pieces")
    return strengths[0], strengths[1]


def crack_depth_ratio(proof_over_work: float) -> float:
    """How many times deeper a crack must be to break at the work load than at the proof load it lived through [-].

    The force that a crack stands falls with the root of its depth (linear fracture mechanics), if the steel is as tough
    at work as it was under proof: cold and jerks take that away.
    """
    return proof_over_work**2


__all__ = [
    "AS_FORGED",
    "BATH_DEGC",
    "BATH_MINUTES",
    "DIFFUSIVITY_M2_PER_S",
    "HOT_ROLLED",
    "MACHINED",
    "NotchCurve",
    "bend_strain",
    "chain_lifts",
    "crack_depth_ratio",
    "curve_through",
    "fatigue_limit_mpa",
    "hydrogen_hours",
    "quenched_hv",
    "strength_after_bath_pa",
]
