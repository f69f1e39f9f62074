"""What an overhead beam of steel takes: yielding, rolling over sideways, a sideways pull, shear.

Question of the trade: how much may hang from this beam before it bends, lies down on its side or shears? Strengths are nominal,
by AISC 360 F2, F3 and F11 with Cb = 1 (calc.lifting.beam_buckling, calc.lifting.frame_strength); the caller divides them by a
factor. A section of a book gives its bending alone.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from calc.lifting.beam_buckling import (
    ON_TOP_LENGTHENS,
    flat_bar_moment_nm,
    i_beam_moment_nm,
    i_shape,
    plates_are_compact,
)
from calc.lifting.beams import SECTION_FORMS, Section, SectionName, shear_area_m2
from calc.lifting.frame_strength import thin_flange_moment_nm
from calc.words.facts import Absent, absent

STEEL_KG_PER_M3 = 7850.0
"""Density of steel [kg/m3] by which a beam's own weight follows from its section (common practice)."""

DEEP_BOX = 2.0
"""Depth over width of a rectangular tube up to which it is taken not to roll over: by AISC 360 F7 (from memory) one twice as deep as
wide still takes its moment of first yield over 100 depths of any steel to 65 ksi (derived, tests; our own bound)."""


MOST_BY_FILLETS = 1.5
"""Twist constant of a rolled I-beam over that of its plates alone, at most: the fillets add 3 to 40 percent in printed tables of
W, S, IPE and HE beams (from memory; our own bound)."""


def section_area_m2(name: SectionName, *sizes: float) -> float:
    """Area of a section [m2] from its sizes [m] in the order of SECTION_FORMS; sharp corners.

    >>> round(section_area_m2("i-beam", 7.89, 3.94, 0.17, 0.205), 2)  # W8x10, printed 2.96 with its fillets
    2.89
    """
    if name == "i-beam":
        depth, width, web, flange = sizes
        return 2 * width * flange + (depth - 2 * flange) * web
    if name == "rectangle":
        return sizes[0] * sizes[1]
    if name == "box":
        width, depth, wall = sizes
        return width * depth - (width - 2 * wall) * (depth - 2 * wall)
    diameter, wall = sizes
    return math.pi * wall * (diameter - wall)


@dataclass(frozen=True)
class OverheadBeam:
    """A beam of steel: its section with sizes [m] in the order of SECTION_FORMS (none for one of a book), the least section
    modulus [m3], the length free to twist [m], or why it is not known, and the steel. book_twist_m4 -- twist constant J of a
    rolled I-beam with its fillets [m4], of a section book; None: of its plates alone, which is less.
    """

    name: SectionName
    sizes: tuple[float, ...]
    section: Section
    least_modulus_m3: float
    free_m: float | Absent
    yield_pa: float
    modulus_pa: float
    book_twist_m4: float | None = None

    def yields_nm(self) -> float:
        """Moment [N m] at which its outer fibre yields."""
        return self.yield_pa * self.least_modulus_m3

    def rolls_nm(self) -> float | Absent:
        """Moment [N m] at which it rolls over sideways or its plates buckle; why none is given."""
        if self.name == "known":
            return absent("section-not-known")
        if self.name in ("tube", "box"):
            return self._tube_nm()
        if isinstance(self.free_m, Absent):
            return self.free_m
        if self.name == "rectangle":
            width, depth = self.sizes
            return flat_bar_moment_nm(depth, width, self.free_m, self.yield_pa, self.modulus_pa)
        return self._i_beam_nm(self.free_m)

    def _i_beam_nm(self, free_m: float) -> float | Absent:
        depth, width, web, flange = self.sizes
        root = math.sqrt(self.modulus_pa / self.yield_pa)
        web_alone = (depth, 0.0, web, flange)
        shape = i_shape(depth, width, web, flange)
        plastic_nm = self.yield_pa * shape.plastic_modulus_m3
        first_nm = 0.7 * self.yield_pa * shape.modulus_m3
        slenderness = width / (2 * flange)
        if slenderness > root or not plates_are_compact(web_alone, self.yield_pa, self.modulus_pa):
            return absent("thin-plates")
        flange_nm = thin_flange_moment_nm(plastic_nm, first_nm, slenderness, self.yield_pa, self.modulus_pa)
        if self.book_twist_m4 is not None:
            shape = replace(shape, twist_m4=max(shape.twist_m4, self.book_twist_m4))
        return min(flange_nm, i_beam_moment_nm(shape, free_m, self.yield_pa, self.modulus_pa))

    def _tube_nm(self) -> float | Absent:
        ratio = self.modulus_pa / self.yield_pa
        if self.name == "tube":
            diameter, wall = self.sizes
            return absent("thin-plates") if tube_is_thin(diameter, wall, ratio) else self.yields_nm()
        width, depth, wall = self.sizes
        if depth > DEEP_BOX * width:
            return absent("deep-box")
        thin = box_is_thin(width, wall, ratio) or (depth - 2 * wall) / wall > 2.42 * math.sqrt(ratio)
        return absent("thin-plates") if thin else self.yields_nm()

    def strengths(self) -> BeamStrengths | Absent:
        """All that it takes; why that is not known. Sideways an I-beam counts its lower flange alone, which feels the pull."""
        rolls = self.rolls_nm()
        if isinstance(rolls, Absent):
            return rolls
        shears_n = self.yield_pa / math.sqrt(3) * shear_area_m2(self.name, *self.sizes)
        return BeamStrengths(self.yields_nm(), rolls, self.yield_pa * self._upright_modulus_m3(), shears_n)

    def _upright_modulus_m3(self) -> float:
        if self.name == "i-beam":
            _, width, _, flange = self.sizes
            return flange * width**2 / 6
        if self.name == "tube":
            return self.least_modulus_m3
        if self.name == "rectangle":
            width, depth = self.sizes
            return depth * width**2 / 6
        width, depth, wall = self.sizes
        turned = SECTION_FORMS["box"].of(depth, width, wall)
        return turned.second_moment_m4 / turned.outer_fibre_m


@dataclass(frozen=True)
class BeamStrengths:
    """Nominal strengths of a beam: moments at which its outer fibre yields, it rolls over sideways, and it yields under a
    sideways pull [N m]; shear force at which its middle yields [N].
    """

    yields_nm: float
    rolls_nm: float
    sideways_nm: float
    shears_n: float


def box_is_thin(width_m: float, wall_m: float, ratio: float) -> bool:
    """Whether the pressed wall of a box buckles by itself: b / t over 1.12 root of E / Fy (AISC 360, Table B4.1b, from memory).

    ratio -- E / Fy. The corners are counted as sharp, which makes b the inside width.
    """
    return (width_m - 2 * wall_m) / wall_m > 1.12 * math.sqrt(ratio)


def tube_is_thin(diameter_m: float, wall_m: float, ratio: float) -> bool:
    """Whether a round tube buckles by itself: D / t over 0.07 E / Fy (the same table)."""
    return diameter_m / wall_m > 0.07 * ratio


def free_length_m(
    span_m: float, held_every_m: float | None, hung_below: bool, cantilever: bool
) -> float | Absent:
    """The length over which nothing holds the beam from twisting [m]: the whole span unless something is said to hold it,
    longer where the load may stand on top; not known for a load on top of a cantilever.
    """
    free_m = span_m if held_every_m is None else held_every_m
    if hung_below:
        return free_m
    return absent("load-on-a-cantilever") if cantilever else ON_TOP_LENGTHENS * free_m


__all__ = [
    "DEEP_BOX",
    "MOST_BY_FILLETS",
    "STEEL_KG_PER_M3",
    "BeamStrengths",
    "OverheadBeam",
    "box_is_thin",
    "free_length_m",
    "section_area_m2",
    "tube_is_thin",
]
