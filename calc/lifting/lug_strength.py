"""How a plate lug with one hole may fail, each way by its formula.

Question of the trade: does the plate tear, does the pin crush it, does it bend over, does the weld let go? Pin-hole
formulas after ASME BTH-1, section 3-3.3, and the weld stress of its 3-3.4, both recalled and not read: a study aid.
Bending at the foot and the weld as two lines are plain statics of bars. Every result is the load [N] at which that
way of failing reaches its allowable; the design factor divides strength as BTH-1 does (yield / factor, or ultimate /
(1.2 x factor)).
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Literal


@dataclass(frozen=True)
class Lug:
    """A lug, SI units: lengths [m], strengths [Pa].

    side_edge_m, end_edge_m -- from the edge of the hole to the side, and to the end that the load pulls at
    height_m -- from the weld up to the middle of the hole; round_end -- the end is a half circle about the hole;
    all_round -- the weld goes round the ends of the plate too, else it is one run on each side
    """

    thickness_m: float
    hole_m: float
    pin_m: float
    side_edge_m: float
    end_edge_m: float
    height_m: float
    weld_leg_m: float
    weld_length_m: float
    yield_pa: float
    tensile_pa: float
    weld_tensile_pa: float
    design_factor: float
    round_end: bool = True
    all_round: bool = False

    @property
    def width_at_hole_m(self) -> float:
        """Width of the plate across the hole [m]."""
        return 2 * self.side_edge_m + self.hole_m

    @property
    def foot_width_m(self) -> float:
        """Width that bends at the foot [m]: the smaller of plate and weld."""
        return min(self.weld_length_m, self.width_at_hole_m)


def seen_along(lug: Lug, in_plane_deg: float) -> Lug:
    """The lug as a pull that leans in its plane by an angle [deg, 0 to 90] finds it: before the pin the plate ends at its side as
    well as at its end, and beside the hole at its end as well as at its side. Never more plate than there is upright.

    The way to the side is measured along the nearer plane of shear, half a pin off the middle. Geometry, derived here.
    """
    turn = math.radians(in_plane_deg)
    if math.sin(turn) < 1e-9:
        return lug
    half = lug.hole_m / 2
    toward = (lug.side_edge_m + half - lug.pin_m / 2 * math.cos(turn)) / math.sin(turn) - half
    beside = lug.end_edge_m if lug.round_end else (lug.end_edge_m + half) / math.sin(turn) - half
    return replace(
        lug,
        side_edge_m=min(lug.side_edge_m, beside),
        end_edge_m=min(lug.end_edge_m, max(lug.side_edge_m, toward)),
    )


def looseness_factor(lug: Lug) -> float:
    """What a pin loose in its hole leaves of the plate [-]. BTH-1, 3-3.3.1, Cr (from memory). Range: pin <= hole; 1 where
    the pin fills the hole.
    """
    return 1 - 0.275 * math.sqrt(1 - (lug.pin_m / lug.hole_m) ** 2)


def effective_side_m(lug: Lug) -> float:
    """Width on each side of the hole that counts [m]. BTH-1, 3-3.3.1, be (from memory).

    Only part of a wide side counts: at most four thicknesses, and less in a steel that yields early.
    """
    side = lug.side_edge_m
    of_steel_m = 0.6 * side * lug.tensile_pa / lug.yield_pa * math.sqrt(lug.hole_m / side)
    return min(4 * lug.thickness_m, of_steel_m, side)


def net_tension_n(lug: Lug) -> float:
    """Load at which the plate tears across the hole [N]. BTH-1, 3-3.3.1, static tension (from memory)."""
    area_m2 = 2 * lug.thickness_m * effective_side_m(lug)
    return looseness_factor(lug) * lug.tensile_pa / (1.2 * lug.design_factor) * area_m2


def split_width_m(lug: Lug) -> float:
    """Width that stands against splitting along the pull [m]. BTH-1, 3-3.3.1 (from memory)."""
    return 1.13 * lug.end_edge_m + 0.92 * lug.side_edge_m / (1 + lug.side_edge_m / lug.hole_m)


def single_plane_n(lug: Lug) -> float:
    """Load at which the end splits along the pull [N]. BTH-1, 3-3.3.1, single plane fracture (from memory)."""
    area_m2 = split_width_m(lug) * lug.thickness_m
    return looseness_factor(lug) * lug.tensile_pa / (1.2 * lug.design_factor) * area_m2


def shear_plane_m(lug: Lug) -> float:
    """Length of one of the two planes that shear out before the pin [m]. BTH-1, 3-3.3.1 (from memory).

    The planes stand 55 degrees x pin / hole off the pull; under a round end each is shorter by the height of its arc.
    """
    off = math.radians(55 * lug.pin_m / lug.hole_m)
    plane = lug.end_edge_m + lug.pin_m / 2 * (1 - math.cos(off))
    if lug.round_end:
        radius = lug.end_edge_m + lug.hole_m / 2
        plane -= radius - math.sqrt(radius**2 - (lug.pin_m / 2 * math.sin(off)) ** 2)
    return plane


def double_plane_n(lug: Lug) -> float:
    """Load at which the pin shears out along two planes [N]. BTH-1, 3-3.3.1, double plane shear (from memory)."""
    area_m2 = 2 * shear_plane_m(lug) * lug.thickness_m
    return 0.70 * lug.tensile_pa / (1.2 * lug.design_factor) * area_m2


def tear_out_n(lug: Lug) -> float:
    """Load at which the end gives way, splitting or shearing [N]."""
    return min(single_plane_n(lug), double_plane_n(lug))


def bearing_n(lug: Lug) -> float:
    """Load at which the pin crushes the hole [N]. BTH-1, 3-3.3.4: 1.25 x yield / factor on pin x thickness (from memory)."""
    return 1.25 * lug.yield_pa / lug.design_factor * bearing_area_m2(lug)


def bearing_area_m2(lug: Lug) -> float:
    """Area on which the pin bears [m2]: its diameter times the thickness."""
    return lug.pin_m * lug.thickness_m


def gross_section_n(lug: Lug) -> float:
    """Load at which the whole width of the plate yields [N]: yield / factor. BTH-1, 3-2.1 (from memory)."""
    return lug.yield_pa / lug.design_factor * lug.width_at_hole_m * lug.thickness_m


@dataclass(frozen=True)
class FootLoad:
    """A pull of one newton at the hole: along the lug, level in its plane, level across it, all [-]."""

    along: float
    in_plane: float
    across: float


def foot_load(in_plane_deg: float, out_of_plane_deg: float) -> FootLoad:
    """Split a pull that leans by these angles [deg, 0 to 90] from the lug's own line, in its plane and out of it.

    >>> foot_load(0.0, 0.0)
    FootLoad(along=1.0, in_plane=0.0, across=0.0)
    """
    out = math.radians(out_of_plane_deg)
    lean = math.radians(in_plane_deg)
    return FootLoad(math.cos(out) * math.cos(lean), math.cos(out) * math.sin(lean), math.sin(out))


def foot_stress_pa(lug: Lug, pull: FootLoad, pull_n: float) -> float:
    """Stress at the worst corner of the plate's foot under a pull [Pa]: the pull and both bendings added."""
    width, thick = lug.foot_width_m, lug.thickness_m
    return pull_n * (
        pull.along / (width * thick)
        + pull.in_plane * lug.height_m * 6 / (thick * width**2)
        + pull.across * lug.height_m * 6 / (width * thick**2)
    )


def foot_bending_n(lug: Lug, pull: FootLoad) -> float:
    """Load at which the foot of the plate reaches yield / factor [N], pull and both bendings added at its worst corner."""
    return lug.yield_pa / lug.design_factor / foot_stress_pa(lug, pull, 1.0)


def foot_shear_n(lug: Lug, pull: FootLoad) -> float:
    """Load at which the middle of the foot yields [N]: pull and 3/2 of the mean shear together (Gere, shear in a rectangular bar;
    von Mises) up to yield / factor.
    """
    area_m2 = lug.foot_width_m * lug.thickness_m
    shear = 1.5 * math.hypot(pull.in_plane, pull.across)
    return lug.yield_pa / lug.design_factor * area_m2 / math.sqrt(pull.along**2 + 3 * shear**2)


def weld_allowable_pa(lug: Lug) -> float:
    """Shear allowed on the throat [Pa]: 0.60 x weld metal strength / (1.2 x factor), BTH-1, 3-3.4.2 (from memory).

    The plate itself is cut along a leg of the fillet, root 2 times as wide as the throat (AISC 360 J2-2 and J4-4, from memory):
    a stronger rod than root 2 times the plate's tensile strength adds nothing.
    """
    metal = min(lug.weld_tensile_pa, math.sqrt(2) * lug.tensile_pa)
    return 0.60 * metal / (1.2 * lug.design_factor)


def weld_stress_pa(lug: Lug, pull: FootLoad, pull_n: float) -> float:
    """Stress on the throat at the worst spot of the weld under a pull [Pa], by the elastic method.

    The runs on both sides are two lines of the weld's length, one plate thickness apart: per unit of throat area 2 L, modulus
    L^2 / 3 in the plane and L t across it. Round the ends come 2 t of length, L t and t^2 / 3 of modulus.
    """
    length, thick = lug.weld_length_m, lug.thickness_m
    ends = thick if lug.all_round else 0.0
    area = 2 * (length + ends)
    normal = (
        pull.along / area
        + pull.in_plane * lug.height_m / (length**2 / 3 + ends * length)
        + pull.across * lug.height_m / (length * thick + ends * thick / 3)
    )
    shear = math.hypot(pull.in_plane, pull.across) / area
    return pull_n * math.hypot(normal, shear) / throat_m(lug.weld_leg_m)


def weld_n(lug: Lug, pull: FootLoad) -> float:
    """Load at which the worst spot of the weld reaches its allowable shear on the throat [N]."""
    return weld_allowable_pa(lug) / weld_stress_pa(lug, pull, 1.0)


def throat_m(leg_m: float) -> float:
    """Throat of an even fillet of a leg [m, over 0]: leg / sqrt(2).

    >>> round(throat_m(0.010), 6)
    0.007071
    """
    return leg_m / math.sqrt(2)


@dataclass(frozen=True)
class OwnStresses:
    """Stresses that the reader's own rule allows [Pa]: in the plate pulled or bent, in the plate cut, under the pin, and on the
    throat of the weld.
    """

    plate_pa: float
    shear_pa: float
    bearing_pa: float
    weld_pa: float


OwnWay = Literal["own-tension", "own-shear", "own-bearing", "own-foot", "own-weld"]
"""A way of failing, held against the reader's own stress."""


def own_ways_n(lug: Lug, seen: Lug, pull: FootLoad, own: OwnStresses) -> dict[OwnWay, float]:
    """Load [N] at which the plain stress of each way reaches the reader's own: both sides of the hole, both planes before the
    pin, the pin's area, the corner of the foot, the worst spot of the weld. seen -- the lug as the pull finds it (seen_along).
    """
    return {
        "own-tension": own.plate_pa * 2 * seen.side_edge_m * lug.thickness_m,
        "own-shear": own.shear_pa * 2 * shear_plane_m(seen) * lug.thickness_m,
        "own-bearing": own.bearing_pa * bearing_area_m2(lug),
        "own-foot": own.plate_pa / foot_stress_pa(lug, pull, 1.0),
        "own-weld": own.weld_pa / weld_stress_pa(lug, pull, 1.0),
    }
