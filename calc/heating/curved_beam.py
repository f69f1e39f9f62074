"""What does a load do inside a curved bar, such as a hook?

Winkler-Bach theory of a curved bar in bending and pull: plane sections stay plane, elastic, plane stress; the inner
fibres are shorter, so they carry more. Boresi and Schmidt, Advanced Mechanics of Materials, chapter 9, equation
for the circumferential stress; the closed forms for the neutral radius also in Shigley, 9th edition, table 3-4.
A flange that stands out from its web bends sideways and carries less far out: it is taken narrower, by Bleich's correction
(Boresi and Schmidt, section 9.4). Left out, as in the books: the push of the load on the seat, radial stress.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True)
class Strip:
    """A slice of the section between two radii, its width changing evenly from one to the other [all m]."""

    from_radius_m: float
    to_radius_m: float
    from_width_m: float
    to_width_m: float

    @property
    def area_m2(self) -> float:
        """Area [m2]."""
        return (self.from_width_m + self.to_width_m) / 2 * (self.to_radius_m - self.from_radius_m)

    @property
    def first_moment_m3(self) -> float:
        """Integral of radius times width over the strip [m3]."""
        depth = self.to_radius_m - self.from_radius_m
        even = self.from_width_m * (self.from_radius_m + self.to_radius_m) / 2
        slope = (self.to_width_m - self.from_width_m) * (self.from_radius_m / 2 + depth / 3)
        return (even + slope) * depth

    @property
    def width_over_radius_m(self) -> float:
        """Integral of width over radius [m], written Am in the books."""
        depth = self.to_radius_m - self.from_radius_m
        slope = (self.to_width_m - self.from_width_m) / depth
        return (self.from_width_m - slope * self.from_radius_m) * math.log1p(depth / self.from_radius_m) + (
            self.to_width_m - self.from_width_m
        )


@dataclass(frozen=True)
class CurvedSection:
    """A section of a curved bar: its edges, area, centre and neutral axis, radii from the centre of curvature."""

    inner_radius_m: float
    outer_radius_m: float
    area_m2: float
    centroid_radius_m: float
    neutral_radius_m: float
    eccentricity_m: float

    def stress_pa(self, radius_m: float, pull_n: float, moment_nm: float) -> float:
        """Stress along the bar [Pa] at a radius; pull positive, and a moment that opens the bend positive.

        pull / A + moment (rn - r) / (A e r)  (Boresi and Schmidt, chapter 9; Shigley, 9th edition, eq. 3-65)
        """
        return pull_n / self.area_m2 + moment_nm * (self.neutral_radius_m - radius_m) / (
            self.area_m2 * self.eccentricity_m * radius_m
        )


def section_of_strips(strips: Sequence[Strip]) -> CurvedSection:
    """A section built of strips from the inside out: rectangle, trapezoid, T and the like.

    neutral radius rn = A / Am (Boresi and Schmidt, chapter 9). Radii and widths over nought.

    >>> bend = section_of_strips(trapezoid_strips(0.030, 0.050, 0.040, 0.020))
    >>> round(bend.centroid_radius_m * 1e3, 2), round(bend.neutral_radius_m * 1e3, 2)
    (52.22, 48.38)
    """
    area = sum(strip.area_m2 for strip in strips)
    centroid = sum(strip.first_moment_m3 for strip in strips) / area
    neutral = area / sum(strip.width_over_radius_m for strip in strips)
    return CurvedSection(
        strips[0].from_radius_m, strips[-1].to_radius_m, area, centroid, neutral, centroid - neutral
    )


def circle(inner_radius_m: float, diameter_m: float) -> CurvedSection:
    """A round bar of a diameter [m]: rn = (√ro + √ri)² / 4 (Shigley, 9th edition, table 3-4), the eccentricity written so
    that no digits are lost.

    >>> round(circle(0.030, 0.040).neutral_radius_m * 1e3, 2)
    47.91
    """
    half = diameter_m / 2
    centroid = inner_radius_m + half
    root = math.sqrt(centroid * centroid - half * half)
    eccentricity = half * half / (2 * (centroid + root))
    return CurvedSection(
        inner_radius_m,
        inner_radius_m + diameter_m,
        math.pi * half * half,
        centroid,
        centroid - eccentricity,
        eccentricity,
    )


def trapezoid_strips(
    inner_radius_m: float, depth_m: float, inner_width_m: float, outer_width_m: float
) -> tuple[Strip, ...]:
    """A trapezoid from the inside out [all m], or a rectangle where both widths agree."""
    return (Strip(inner_radius_m, inner_radius_m + depth_m, inner_width_m, outer_width_m),)


@dataclass(frozen=True)
class WorkingFlange:
    """What of a flange that stands out on both sides of its web carries the bend.

    slenderness -- bp^2 / (r t) [-]: projection past the web, squared, over radius to the flange's middle and its depth
    share -- of each projection, how much counts as if it were stressed evenly (alpha) [-]
    sideways -- bending stress across the flange at the web, over the stress along it in the flange's middle (beta) [-]
    """

    slenderness: float
    share: float
    sideways: float


MOST_SLENDER_FLANGE = 5.0
"""Greatest slenderness of a flange that is answered [-]: the end of Bleich's printed table (Boresi and Schmidt, table 9.3;
from memory)."""


def working_flange(projection_m: float, middle_radius_m: float, depth_m: float) -> WorkingFlange:
    """Bleich's correction for the flange of a curved bar: a curved strip held at the web and free at its edge.

    alpha = (sinh 2m + sin 2m) / (m (2 + cosh 2m + cos 2m)), beta = sqrt 3 (cosh 2m - cos 2m) / (2 + cosh 2m + cos 2m),
    m^4 = 3 slenderness^2: the strip's own equation, lateral contraction left out. Held to Bleich's table (Boresi and
    Schmidt, table 9.3; from memory) in three digits. Projection from nought, slenderness up to MOST_SLENDER_FLANGE.

    >>> flange = working_flange(0.040, 0.080, 0.020)
    >>> round(flange.slenderness, 3), round(flange.share, 3), round(flange.sideways, 3)
    (1.0, 0.693, 1.678)
    """
    slenderness = projection_m * projection_m / (middle_radius_m * depth_m)
    reach = 3**0.25 * math.sqrt(slenderness)
    if reach < _NO_PROJECTION:
        return WorkingFlange(slenderness, 1.0, 0.0)
    held = 2 + math.cosh(2 * reach) + math.cos(2 * reach)
    share = (math.sinh(2 * reach) + math.sin(2 * reach)) / (reach * held)
    sideways = math.sqrt(3) * (math.cosh(2 * reach) - math.cos(2 * reach)) / held
    return WorkingFlange(slenderness, share, sideways)


_NO_PROJECTION = 1e-3
"""Reach of the strip's equation [-] under which nothing of the flange is lost."""


def tee_strips(
    inner_radius_m: float, depth_m: float, flange_width_m: float, flange_depth_m: float, web_width_m: float
) -> tuple[Strip, ...]:
    """A T with its flange on the inside of the bend [all m]; the flange is less deep than the whole."""
    step = inner_radius_m + flange_depth_m
    return (
        Strip(inner_radius_m, step, flange_width_m, flange_width_m),
        Strip(step, inner_radius_m + depth_m, web_width_m, web_width_m),
    )


__all__ = [
    "MOST_SLENDER_FLANGE",
    "CurvedSection",
    "Strip",
    "WorkingFlange",
    "circle",
    "section_of_strips",
    "tee_strips",
    "trapezoid_strips",
    "working_flange",
]
