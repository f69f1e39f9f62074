"""The energy that a whole string under pull holds, as far as its parts are known.

Question of the trade: what flies if something lets go? Every part in line that stretches stores half of its force times its
stretch; squeezed oil and a bent frame store as well. Hooks, shackles and rings hardly stretch. What is not known is not
guessed: the sum then is a least.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from calc.inspecting.chain_marks import size_named
from calc.inspecting.nominal_wire import nominal_m
from calc.lifting.path_items import ItemRating
from calc.pulling.energy import chain_stiffness_n_per_m, stored_energy_j
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, NotReadable, read_quantity

OIL_BULK_MODULUS_PA = 1.72e9
"""How hard hydraulic oil is to squeeze [Pa]: 250,000 psi (Esposito, Fluid Power with Applications, Ex 2.11, a copy). A physics
text prints three times as much, which would tell a third of the energy. Air in the oil holds far more than the oil."""

ROPE_STIFFNESS_N_PER_M2 = 38_300e6
"""Pull per unit of stretch of 6x19 wire rope over its diameter squared [N/m2]: from a marine table of stretch, 16 mm rope (a
copy). 0027/ND, 5.6.13, takes 62,800e6, stiffer; the softer rope holds more."""

SLING_STRETCH_AT_RATING = 0.10
"""Stretch of a web or round sling at its rating [-]: nylon 8 to 10 %, polyester 5 to 7 % (makers' common tables, from memory).
The largest, since nobody asked which."""

STRETCHY_KINDS = ("chain", "wire-rope", "web-sling", "fibre-rope")
"""Kinds of part that stretch enough to count."""


@dataclass(frozen=True)
class StringEnergy:
    """Energy [J] in the line, the oil and the frame, None where nothing of it is known; stretch of the line [m]; whether
    nothing that counts was left out.
    """

    line_j: float | None
    oil_j: float | None
    frame_j: float | None
    stretch_m: float | None
    whole: bool

    @property
    def total_j(self) -> float | None:
        """The sum of what is known [J]; None where nothing is."""
        known = [part for part in (self.line_j, self.oil_j, self.frame_j) if part is not None]
        return sum(known) if known else None


def oil_energy_j(pressure_pa: float, volume_m3: float) -> float:
    """Energy of squeezed oil [J]: pressure squared x volume / (2 x bulk modulus). Pressure [Pa] and volume [m3], 0 and more.

    >>> round(oil_energy_j(68.95e6, 0.001))
    1382
    """
    return pressure_pa**2 * volume_m3 / (2 * OIL_BULK_MODULUS_PA)


def frame_energy_j(force_n: float, give_m: float) -> float:
    """Energy of a frame that gives way elastically by `give_m` under a force [N]: half their product.

    >>> frame_energy_j(10_000.0, 0.004)
    20.0
    """
    return force_n * give_m / 2


def rope_stiffness_n_per_m(diameter_m: float, length_m: float) -> float:
    """Pull per stretch [N/m] of 6x19 wire rope of a diameter and a length [m], both over 0."""
    return ROPE_STIFFNESS_N_PER_M2 * diameter_m**2 / length_m


def part_stiffness_n_per_m(rating: ItemRating, length_m: float | None) -> float | None:
    """Pull per stretch [N/m] of one leg of a part of a length [m]; None where that is not known."""
    item = rating.item
    if length_m is None:
        return None
    if item.kind == "chain":
        size = size_named(item.size)
        return None if size is None else chain_stiffness_n_per_m(nominal_m(size), length_m)
    if item.kind == "wire-rope":
        diameter_m = _diameter_m(item.size)
        return None if diameter_m is None else rope_stiffness_n_per_m(diameter_m, length_m)
    if item.kind == "web-sling" and rating.straight_kg is not None:
        return rating.straight_kg * STANDARD_GRAVITY_M_PER_S2 / (SLING_STRETCH_AT_RATING * length_m)
    return None


def _diameter_m(size: str) -> float | None:
    try:
        diameter_m = read_quantity(size, "length", "in").value_si
    except NotReadable:
        return None
    return diameter_m if diameter_m > 0 else None


def line_energy(
    ratings: Sequence[ItemRating], lengths_m: Sequence[float | None], force_n: float
) -> tuple[float | None, float | None, bool]:
    """Energy [J] and stretch [m] of the parts in line under a force [N], None where no part is known; and whether every part
    that stretches is.
    """
    energies: list[float] = []
    whole = True
    for rating, length_m in zip(ratings, lengths_m, strict=True):
        item = rating.item
        if item.kind not in STRETCHY_KINDS:
            continue
        stiffness = part_stiffness_n_per_m(rating, length_m)
        if stiffness is None:
            whole = False
            continue
        leg_n = force_n / (item.counted_legs * math.sin(math.radians(item.angle_deg)))
        energies.append(item.counted_legs * stored_energy_j(leg_n, stiffness))
    if not energies:
        return None, None, whole
    return sum(energies), 2 * sum(energies) / force_n, whole


__all__ = [
    "OIL_BULK_MODULUS_PA",
    "ROPE_STIFFNESS_N_PER_M2",
    "SLING_STRETCH_AT_RATING",
    "StringEnergy",
    "frame_energy_j",
    "line_energy",
    "oil_energy_j",
    "part_stiffness_n_per_m",
    "rope_stiffness_n_per_m",
]
