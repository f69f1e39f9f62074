"""A bar bent past its yield on two supports, pressed in the middle: force, movement, and what stays when you let go.

The steel is taken as elastic up to its yield and as yielding at that stress from there on, the same in pull and push (elastic,
perfectly plastic), plane sections stay plane, slopes stay small. Every figure is told by the elastic core: the part `core` of
the section's half height that has not yielded, 1 at first yield and 0 where the whole section has (plastic hinge). With m the
moment over that of first yield, and travel over that at first yield:

    rectangle   m = 1.5 - 0.5 core2                      (Beer and Johnston, Mechanics of Materials, 4.8)
    round bar   m by integration over the circle         (1.698 where all has yielded)
    travel      (1 + 3 g) / m2,  g = integral from core to 1 of m (-dm/dcore) / core
    stays       travel - m, since letting go is elastic

The integral is that of the curvature times the distance from the support over half the span.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

_PANELS = 128
"""Panels of Simpson's rule over a quarter circle; a test holds it against an adaptive rule to nine places."""
_SMALL_RAD = 1e-3
"""Below this angle [rad] the series of the circle's integrals is taken."""
_HALVINGS = 80


@dataclass(frozen=True)
class SectionShape:
    """How a shape of section yields.

    full -- moment of the plastic hinge over that of first yield [-] (shape factor)
    moment -- from the elastic core [-] to the moment over that of first yield [-]
    bend_integral -- from the elastic core [-] to the integral g [-]
    """

    full: float
    moment: Callable[[float], float]
    bend_integral: Callable[[float], float]

    def travel(self, core: float) -> float:
        """Movement of the middle under load over that at first yield [-]; core from 0 to 1.

        >>> round(RECTANGLE.travel(1.0), 9), round(RECTANGLE.travel(0.0), 4)
        (1.0, 2.2222)
        """
        return (1.0 + 3.0 * self.bend_integral(core)) / self.moment(core) ** 2

    def stays(self, core: float) -> float:
        """Movement that stays when the load is taken off, over that at first yield [-]."""
        return self.travel(core) - self.moment(core)

    def core_at_moment(self, moment: float) -> float:
        """The core [-] at a moment over that of first yield [-], from 1 to `full`."""
        return _core(self.moment, moment)

    def core_that_leaves(self, stays: float) -> float:
        """The core [-] after which so much stays [-]; 0 where more stays than the section leaves without running."""
        return _core(self.stays, stays)

    def core_at_travel(self, travel: float) -> float:
        """The core [-] at a movement [-] of 1 and more; 0 where it is past what the section bears without running."""
        return _core(self.travel, travel)


def _core(of: Callable[[float], float], wanted: float) -> float:
    """The core at which a measure that grows while the core shrinks has a value; 0 where it never grows so far."""
    if of(0.0) <= wanted:
        return 0.0
    low, high = 0.0, 1.0
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if of(middle) > wanted:
            low = middle
        else:
            high = middle
    return high


def _rectangle_moment(core: float) -> float:
    return 1.5 - 0.5 * core**2


def _rectangle_integral(core: float) -> float:
    return 1.5 * (1.0 - core) - (1.0 - core**3) / 6


def _lens(angle: float) -> float:
    """(angle - sin(4 angle) / 4) / sin3(angle): 8/3 where the angle [rad] goes to nought."""
    if angle < _SMALL_RAD:
        return 8.0 / 3.0
    return (angle - math.sin(4 * angle) / 4) / math.sin(angle) ** 3


def _round_moment(core: float) -> float:
    """Moment of a round bar over that of first yield; the core as the sine of an angle."""
    angle = math.asin(core)
    return 4 / math.pi * (_lens(angle) * math.sin(angle) ** 2 / 2 + 4 / 3 * math.cos(angle) ** 3)


def _round_integral(core: float) -> float:
    """The integral g of a round bar, by Simpson's rule over the angle."""
    start = math.asin(core)
    width = (math.pi / 2 - start) / _PANELS

    def inside(angle: float) -> float:
        return 2 / math.pi * _lens(angle) * _round_moment(math.sin(angle)) * math.cos(angle)

    weights = (1, *((4, 2) * (_PANELS // 2))[:-1], 1)
    return width / 3 * sum(weight * inside(start + width * place) for place, weight in enumerate(weights))


RECTANGLE = SectionShape(1.5, _rectangle_moment, _rectangle_integral)
ROUND_BAR = SectionShape(16 / (3 * math.pi), _round_moment, _round_integral)


@dataclass(frozen=True)
class PressedBar:
    """A bar on two supports, pressed in the middle.

    shape -- how its section yields; height_m -- its size in the direction of the push [m]
    second_moment_m4 -- of its section [m4]; span_m -- between the supports [m]
    yield_pa, modulus_pa -- of its steel [Pa]
    """

    shape: SectionShape
    height_m: float
    second_moment_m4: float
    span_m: float
    yield_pa: float
    modulus_pa: float

    @property
    def yield_moment_nm(self) -> float:
        """Moment of first yield [N m]."""
        return self.yield_pa * self.second_moment_m4 / (self.height_m / 2)

    @property
    def plastic_moment_nm(self) -> float:
        """Moment at which the whole section has yielded [N m]."""
        return self.shape.full * self.yield_moment_nm

    @property
    def first_force_n(self) -> float:
        """Force at first yield [N]: 4 My / L."""
        return 4 * self.yield_moment_nm / self.span_m

    @property
    def hinge_force_n(self) -> float:
        """Force at which the whole section has yielded and the middle runs on [N]."""
        return self.shape.full * self.first_force_n

    @property
    def first_travel_m(self) -> float:
        """Movement of the middle at first yield [m]: Fy L2 / (6 E h)."""
        return self.yield_pa * self.span_m**2 / (6 * self.modulus_pa * self.height_m)

    @property
    def stiffness_n_per_m(self) -> float:
        """Force over movement while it is elastic [N/m]: 48 E I / L3."""
        return self.first_force_n / self.first_travel_m

    @property
    def yielded_length_m(self) -> float:
        """Length over which the outside has yielded when the middle runs [m]: L (1 - 1 / shape factor)."""
        return self.span_m * (1.0 - 1.0 / self.shape.full)

    def springs_back_m(self, stays_m: float) -> float:
        """How far the middle comes back [m] from where it must be pressed so that `stays_m` [m, over 0] stays."""
        core = self.shape.core_that_leaves(stays_m / self.first_travel_m)
        return self.shape.moment(core) * self.first_travel_m

    def stays_after_m(self, travel_m: float) -> float:
        """What stays [m] of a movement [m, 0 or more] of the middle."""
        share = travel_m / self.first_travel_m
        if share <= 1.0:
            return 0.0
        core = self.shape.core_at_travel(share)
        return travel_m - self.shape.moment(core) * self.first_travel_m


def flat_second_moment_m4(width_m: float, thickness_m: float) -> float:
    """Second moment [m4] of a flat of a width across the push and a thickness along it [m], both over 0.

    >>> round(flat_second_moment_m4(0.3, 0.02) * 1e6, 3)
    0.2
    """
    return width_m * thickness_m**3 / 12


def round_second_moment_m4(diameter_m: float) -> float:
    """Second moment [m4] of a round bar of a diameter [m], over 0."""
    return math.pi * diameter_m**4 / 64


def outside_strain(inside_radius_m: float, thickness_m: float) -> float:
    """Stretch of the outside of a bend [-]: t / (2 R + t). Radius 0 or more, thickness over 0 [m].

    >>> outside_strain(0.03, 0.02)
    0.25
    """
    return thickness_m / (2 * inside_radius_m + thickness_m)


__all__ = [
    "RECTANGLE",
    "ROUND_BAR",
    "PressedBar",
    "SectionShape",
    "flat_second_moment_m4",
    "outside_strain",
    "round_second_moment_m4",
]
