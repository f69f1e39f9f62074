"""How strong are the parts of a shop's own frame, apart from its beam?

Question of the trade: will the posts buckle, the flange bend under the trolley, the feet spread, the frame tip, the joint let
go? Closed forms in SI units, each with its equation: AISC 360-22 E3, F3, G2, H1 and J3 (read in reprints where it says so, else
from memory and held by printed examples and by a finite-element frame in the tests), statics of rigid bodies for legs and
tipping. Strengths are nominal: the caller divides them by a factor.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

PINNED_FOOT_K = 2.0
"""Effective length over height of a post that rests on its foot and is held stiffly at a stiff beam, free to sway (AISC 360,
commentary table C-A-7.1, case f; read in a reprint)."""

FLAGPOLE_K = 2.1
"""Effective length over height of a post fixed at one end and free at the other (the same table, case e, as recommended)."""

SWAY_LIMIT = 0.9
"""Part of the load at which a post sways away by itself up to which the growth of its bending is followed [-] (our own bound);
any post there is over its strength by E3 already."""


def column_stress_pa(slenderness: float, yield_pa: float, modulus_pa: float) -> float:
    """Stress [Pa] at which a post buckles, by its effective length over its least radius [-, over 0].

    AISC 360 E3-2 and E3-3 with E3-4 (read in a reprint): 0.658^(Fy/Fe) Fy, beyond Fy/Fe = 2.25 0.877 Fe.

    >>> ksi = 6.894757293168361e6
    >>> round(column_stress_pa(60 / 3.448, 50 * ksi, 29_000 * ksi) / ksi, 2)  # a printed pipe
    48.91
    """
    elastic = math.pi**2 * modulus_pa / slenderness**2
    if yield_pa / elastic <= 2.25:
        return float(0.658 ** (yield_pa / elastic)) * yield_pa
    return 0.877 * elastic


def sway_k(post_second_m4: float, height_m: float, beam_second_m4: float, span_m: float) -> float:
    """Effective length over height of the posts of a portal on feet that turn, joined stiffly to a beam that bends.

    2 sqrt(1 + G / 2), G = (I post / height) / (I beam / span): from the sway stiffness of the portal (slope-deflection), never
    under the exact root of x tan x = 6 / G (tests). A beam that does not bend gives 2.

    >>> sway_k(1e-6, 3.0, 1e30, 4.0)
    2.0
    """
    ratio = post_second_m4 * span_m / (height_m * beam_second_m4)
    return PINNED_FOOT_K * math.sqrt(1 + ratio / 2)


@dataclass(frozen=True)
class Corners:
    """What bends a post of a stiff portal at its head and at its foot [N m]."""

    head_nm: float
    foot_nm: float


def corners_of(point_nm: float, even_nm: float, off_middle: float, ratio: float, held_feet: bool) -> Corners:
    """How the sagging beam of a stiff portal bends its posts (closed forms of portal frames, from memory; held by a finite-element
    frame in the tests).

    point_nm -- P a b / L of a load at a and b from the posts; even_nm -- w L^2; off_middle -- |a - b| / L; ratio -- (I beam / span) /
    (I post / height); held_feet -- feet that do not turn. Feet that turn keep their distance (a foot that slides bends the post
    less): head 3 P a b / (2 L (2 k + 3)) + w L^2 / (4 (2 k + 3)).

    >>> round(corners_of(1000.0, 0.0, 0.0, 0.0, False).head_nm)  # a beam that stiff posts build in: P L / 8
    500
    """
    if not held_feet:
        return Corners((3 * point_nm / 2 + even_nm / 4) / (2 * ratio + 3), 0.0)
    lean = off_middle / (2 * (6 * ratio + 1)) * point_nm
    head = (point_nm + even_nm / 6) / (ratio + 2)
    return Corners(head + lean, head / 2 + lean)


@dataclass(frozen=True)
class Post:
    """A post: area [m2], second moment [m4] and least modulus [m3]; effective length [m]."""

    area_m2: float
    second_moment_m4: float
    modulus_m3: float
    effective_m: float

    def buckles_n(self, yield_pa: float, modulus_pa: float) -> float:
        """Thrust [N] at which it buckles (E3)."""
        radius = math.sqrt(self.second_moment_m4 / self.area_m2)
        return column_stress_pa(self.effective_m / radius, yield_pa, modulus_pa) * self.area_m2

    def part_used(
        self, thrust_n: float, moment_nm: float, yield_pa: float, modulus_pa: float, factor: float
    ) -> float:
        """Part used by thrust and bending together [-]: AISC 360 H1-1a and H1-1b, bending to first yield, grown by sway:
        1 / (1 - 1.6 P / Pe) (appendix 8, both from memory).
        """
        axial = thrust_n * factor / self.buckles_n(yield_pa, modulus_pa)
        euler = math.pi**2 * modulus_pa * self.second_moment_m4 / self.effective_m**2
        grown = moment_nm / (1 - min(SWAY_LIMIT, 1.6 * thrust_n / euler))
        bending = grown * factor / (yield_pa * self.modulus_m3)
        return axial + 8 / 9 * bending if axial >= 0.2 else axial / 2 + bending


FARTHEST_FIBRE = 3.0
"""Distance of the farthest fiber over the radius of gyration of any rolled section, at most [-]: 1 of a thin ring of two lines, 1.7
of a flat, 2 of a round bar or across an I-beam (derived; our own bound)."""

THINNEST_BOOK = 2.2
"""Radius of gyration squared over area [-] at which even a round tube's wall is thin: 0.0398 D / t at D / t of 56, which is 0.07 E /
Fy of plain steel (derived)."""


def book_contradicts(area_m2: float, radius_m: float, modulus_m3: float) -> bool:
    """Whether area, least radius of gyration and least section modulus cannot be of one section: A r^2 / S is the distance of the
    farthest fiber, which is never under r; or whether its walls would be thinner than may be checked.
    """
    farthest = area_m2 * radius_m**2 / modulus_m3
    fits = 0.97 * radius_m <= farthest <= FARTHEST_FIBRE * radius_m
    return not fits or radius_m**2 > THINNEST_BOOK * area_m2


def thin_flange_moment_nm(
    plastic_nm: float, first_nm: float, slenderness: float, yield_pa: float, modulus_pa: float
) -> float:
    """Moment [N m] at which the pressed flange of an I-beam buckles by itself (AISC 360 F3-1, from memory).

    plastic_nm -- Fy Zx; first_nm -- 0.7 Fy Sx; slenderness -- half the flange over its thickness. Range: up to the root of
    E / Fy, beyond which the flange is slender and nothing is given (nought).

    >>> round(thin_flange_moment_nm(5350.0, 3255.0, 9.47, 50.0, 29_000.0))  # W21x48 in kip in, printed 5,310
    5305
    """
    root = math.sqrt(modulus_pa / yield_pa)
    if slenderness <= 0.38 * root:
        return plastic_nm
    if slenderness > root:
        return 0.0
    return plastic_nm - (plastic_nm - first_nm) * (slenderness - 0.38 * root) / (0.62 * root)


def lower_flange_stress_pa(load_n: float, flange_m: float) -> float:
    """Bending stress [Pa] across the lower flange under a trolley of four wheels that carries load_n [N] in all.

    0.75 P / tf^2, which is 3 F / tf^2 for each wheel: a strip twice as wide as its arm bends (note of the AISC, December 1999,
    read in a reprint). Not within one arm of the end of the beam.
    """
    return 0.75 * load_n / flange_m**2


def web_pull_stress_pa(load_n: float, flange_m: float, web_m: float) -> float:
    """Stress [Pa] that pulls the web off the lower flange under the same trolley: P / (7 k tw) (the same note), with k as the
    flange alone: the fillet of a rolled beam is not counted.
    """
    return load_n / (7 * flange_m * web_m)


def combined_pa(along_pa: float, across_pa: float) -> float:
    """Stress [Pa] that counts for yielding of two that stand square, one pulling and one pressing (von Mises)."""
    return math.sqrt(along_pa**2 + along_pa * across_pa + across_pa**2)


def a_frame_leg_n(down_n: float, sideways_n: float, lean_rad: float) -> float:
    """Thrust [N] in the harder pressed leg of an A-frame whose legs lean by lean_rad from upright: W / (2 cos t) of the load and
    F / (2 sin t) of a pull square to the beam (statics of the head).

    >>> round(a_frame_leg_n(1000.0, 0.0, math.radians(60)))
    1000
    """
    return down_n / (2 * math.cos(lean_rad)) + sideways_n / (2 * math.sin(lean_rad))


def tips_at_deg(load_kg: float, frame_kg: float, base_m: float, height_m: float) -> float:
    """Angle from plumb [deg] at which a pull tips a frame: tan p = (W + G) b / (2 W h), load and frame over the middle.

    >>> round(tips_at_deg(1000.0, 0.0, 1.0, 2.0), 2)  # base half the height, weightless frame
    14.04
    """
    return math.degrees(math.atan2((load_kg + frame_kg) * base_m, 2 * load_kg * height_m))


BOLT_SHEAR_PA = {"a307": 27e3 * 6894.757293168361, "a325": 54e3 * 6894.757293168361}
"""Nominal shear stress [Pa] of a bolt with thread where it is cut (AISC 360-10, Table J3.2, read in a copy); it is less than
that in pull, so it stands for both."""


def bolts_hold_n(grade: str, diameter_m: float, count: int) -> float:
    """Force [N] at which a group of bolts, all alike pulled, is cut: Fn Ab (AISC 360 J3-1). An upper bound: plate, prying and
    lever arms are not counted.
    """
    return BOLT_SHEAR_PA[grade] * math.pi / 4 * diameter_m**2 * count


def fillet_holds_n(weld_tensile_pa: float, leg_m: float, length_m: float) -> float:
    """Force [N] at which a fillet weld tears through its throat: 0.60 Fexx 0.707 w L (AISC 360 J2-4, read in a handout). An
    upper bound: the load is taken to pull on all of it evenly.

    >>> round(fillet_holds_n(70.0, 0.75, 8.0), 2)  # kip; printed 133.62 with its factor 0.75
    178.16
    """
    return 0.60 * weld_tensile_pa * 0.707 * leg_m * length_m


def cone_holds_n(concrete_pa: float, embedment_m: float, count: int) -> float:
    """Force [N] at which anchors set into cracked concrete pull a cone out of it: 17 sqrt(fc) hef^1.5 each in pounds and inches
    (ACI 318-19, 17.6.2.2.1, read in a design guide). An upper bound: edges, neighbours, slipping and splitting take from it.

    >>> round(cone_holds_n(3000 * 6894.757293168361, 4 * 0.0254, 1) / 4.4482216152605)  # printed 7,449 lb
    7449
    """
    psi, inches = concrete_pa / 6894.757293168361, embedment_m / 0.0254
    return 17 * math.sqrt(psi) * inches * math.sqrt(inches) * 4.4482216152605 * count


__all__ = [
    "BOLT_SHEAR_PA",
    "FLAGPOLE_K",
    "PINNED_FOOT_K",
    "Corners",
    "Post",
    "a_frame_leg_n",
    "bolts_hold_n",
    "book_contradicts",
    "column_stress_pa",
    "combined_pa",
    "cone_holds_n",
    "corners_of",
    "fillet_holds_n",
    "lower_flange_stress_pa",
    "sway_k",
    "thin_flange_moment_nm",
    "tips_at_deg",
    "web_pull_stress_pa",
]
