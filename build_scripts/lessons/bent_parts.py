"""Parts that are bent where they were made to be pulled: eyebolt, pin, hook, rope round a pin, hoist pulled sideways.

Elastic statics. A stress above yield only shows how fast the danger grows; none of it is a rating.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from build_scripts.lessons.printed import printed
from calc.heating.curved_beam import CurvedSection, circle, section_of_strips, trapezoid_strips
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.tables import table, value_si

_INCH_M = 0.0254
_THREADS_PER_INCH = 16
"""Of the coarse 3/8 in thread (ASME B1.1)."""


@dataclass(frozen=True)
class Eyebolt:
    """An eyebolt: shank, height of the eye over the shoulder, radius of the shoulder [all m], thread's stress area [m2], and
    its rating in line [N].
    """

    shank_m: float
    eye_height_m: float
    shoulder_radius_m: float
    thread_area_m2: float
    rating_n: float

    def in_line_pa(self, angle_deg: float) -> float:
        """Pull along the shank over the thread's area [Pa], under the rating at an angle from the shank."""
        return self.rating_n * math.cos(math.radians(angle_deg)) / self.thread_area_m2

    def bending_pa(self, angle_deg: float) -> float:
        """Bending stress in the shank [Pa] without a seated shoulder: 32 F sin(t) h / (pi d3) (beam theory)."""
        moment = self.rating_n * math.sin(math.radians(angle_deg)) * self.eye_height_m
        return 32 * moment / (math.pi * self.shank_m**3)

    def without_shoulder_pa(self, angle_deg: float) -> float:
        """Pull and bending together [Pa] where no shoulder props the eye."""
        return self.in_line_pa(angle_deg) + self.bending_pa(angle_deg)

    def with_shoulder_pa(self, angle_deg: float) -> float:
        """Pull in the shank [Pa] where the far edge of a seated shoulder props the eye: (F cos t + F sin t h/r) / A."""
        lever = self.eye_height_m / self.shoulder_radius_m
        push = self.rating_n * math.sin(math.radians(angle_deg)) * lever
        return self.in_line_pa(angle_deg) + push / self.thread_area_m2


def example_eyebolt() -> Eyebolt:
    """The 3/8 in shoulder eyebolt of ASME B18.15 (middle of its printed sizes) at the rating that the table eyebolts leads with."""
    row = table("eyebolts").one(thread="3/8", quantity="working_load_limit")
    shank = printed("eyebolt-shank").si
    return Eyebolt(
        shank,
        (printed("eyebolt-eye-least").si + printed("eyebolt-eye-most").si) / 2,
        (printed("eyebolt-shoulder-least").si + printed("eyebolt-shoulder-most").si) / 4,
        math.pi / 4 * (shank - 0.9743 * _INCH_M / _THREADS_PER_INCH) ** 2,
        value_si(row, "weight") * STANDARD_GRAVITY_M_PER_S2,
    )


def bent_over_pulled(height_over_diameter: float) -> float:
    """How many times more stress [-] a force makes at the foot of a round bar across it than along it: 8 h/d.

    >>> bent_over_pulled(3.0)
    24.0
    """
    return 8 * height_over_diameter


@dataclass(frozen=True)
class Pin:
    """What goes through a shackle's ears: its diameter [m], printed shear strength [Pa] and yield [Pa]."""

    name: str
    diameter_m: float
    shear_strength_pa: float
    yield_pa: float

    @property
    def double_shear_break_n(self) -> float:
        """Force [N] that shears it in two planes, by the printed strength."""
        return 2 * math.pi / 4 * self.diameter_m**2 * self.shear_strength_pa


JAW_OVER_PIN, EAR_OVER_PIN = 1.6 / 1.12, 1.0 / 1.12
"""Jaw and ear of a bow shackle over its pin [-]: usual proportion, no source (as drawn on the page that inspects one)."""


def pin_bending_pa(load_n: float, diameter_m: float, rated_pin_m: float, loose: bool) -> float:
    """Bending stress [Pa] in a pin of a diameter [m] in the ears of a shackle whose own pin is `rated_pin_m` thick.

    A beam from ear to ear: tight, the eye fills the jaw and loads it along its width, M = P/2 (ear/3 + jaw/4); loose, the load
    sits in the middle of a pin that rocks in its holes, M = P (jaw + ear)/4. Own statics, elastic.
    """
    jaw, ear = JAW_OVER_PIN * rated_pin_m, EAR_OVER_PIN * rated_pin_m
    moment = load_n * (jaw + ear) / 4 if loose else load_n / 2 * (ear / 3 + jaw / 4)
    return 32 * moment / (math.pi * diameter_m**3)


def example_pins() -> tuple[Pin, ...]:
    """A pin and four bolts tried in a 5/8 in shackle: shear by AISC 360, Table J3.2; yield by the table bolt-strength."""

    def yields(bolt: str, size: str) -> float:
        row = table("bolt-strength").one(bolt=bolt, size=size, quantity="minimum_yield_strength")
        return value_si(row, "pressure")

    whole, thin = 0.75 * _INCH_M, 0.625 * _INCH_M
    soft = yields("sae_j429_2", "over_three_quarters")
    return (
        Pin(
            "smooth",
            whole,
            printed("shear-a325-threads-out").si,
            yields("astm_a325", "half_to_one_and_a_half"),
        ),
        Pin(
            "thread",
            whole,
            printed("shear-a325-threads-in").si,
            yields("astm_a325", "half_to_one_and_a_half"),
        ),
        Pin("plain", whole, printed("shear-a307").si, soft),
        Pin("thin-hard", thin, printed("shear-a325-threads-in").si, yields("sae_j429_5", "quarter_to_one")),
        Pin("thin-plain", thin, printed("shear-a307").si, soft),
    )


@dataclass(frozen=True)
class HookShape:
    """A hook section round one bend: its curved section and the width [m] at its inner and outer face (nought if round)."""

    name: str
    section: CurvedSection
    inner_width_m: float
    outer_width_m: float

    def times_mean(self, radius_m: float) -> float:
        """Stress at a radius [m] over the mean stress [-], for a load through the middle of the bend (calc.heating.curved_beam)."""
        arm = self.section.centroid_radius_m
        return self.section.stress_pa(radius_m, 1.0, arm) * self.section.area_m2

    @property
    def inside_times(self) -> float:
        """Stress at the inside of the bend over the mean [-]."""
        return self.times_mean(self.section.inner_radius_m)


def hook_shapes() -> tuple[HookShape, ...]:
    """A round rod of 35 mm and a deep section of the same area, wide inside, round one opening of 57 mm: an example."""
    inner, rod = 0.0285, 0.035
    depth, share = 0.038, 0.5
    wide = math.pi / 4 * rod**2 / depth / ((1 + share) / 2)
    deep = section_of_strips(trapezoid_strips(inner, depth, wide, share * wide))
    return (
        HookShape("rod", circle(inner, rod), 0.0, 0.0),
        HookShape("deep", deep, wide, share * wide),
    )


def rope_strength_left(bend_ratio: float) -> float:
    """Share of its strength [-] that a wire rope keeps round a pin of D/d: 1 - 0.5/sqrt(D/d) (0027/ND, 7.8). D/d from 1.

    >>> rope_strength_left(4.0)
    0.75
    """
    return 1 - 0.5 / math.sqrt(bend_ratio)


SHEAVE_STRENGTH = {1: 50, 2: 65, 4: 75, 6: 79, 8: 83, 10: 86, 15: 89, 20: 91, 30: 93, 40: 95}
"""D/d and strength left [percent], as two supplier pages print it."""
SHEAVE_LIFE = {12: 1.1, 14: 1.5, 16: 2.1, 18: 2.9, 20: 3.8, 25: 6.6, 30: 10.0}
"""D/d and relative life in bending [-], as two supplier pages print it; no passes stand behind it."""


@dataclass(frozen=True)
class SidePull:
    """A hoist pulled at an angle from plumb: chain's pull, sideways force and greatest pull when the load swings free, each over
    the weight [-]. Statics: 1/cos a, tan a, 3 - 2 cos a (no stretch, no friction).
    """

    chain: float
    sideways: float
    swinging: float


def hoist_side_pull(angle_deg: float) -> SidePull:
    """What a hoist feels at an angle from plumb [deg], 0 to under 90.

    >>> round(hoist_side_pull(45.0).sideways, 6)
    1.0
    """
    cos = math.cos(math.radians(angle_deg))
    return SidePull(1 / cos, math.tan(math.radians(angle_deg)), 3 - 2 * cos)


__all__ = [
    "SHEAVE_LIFE",
    "SHEAVE_STRENGTH",
    "Eyebolt",
    "HookShape",
    "Pin",
    "SidePull",
    "bent_over_pulled",
    "example_eyebolt",
    "example_pins",
    "hoist_side_pull",
    "hook_shapes",
    "pin_bending_pa",
    "rope_strength_left",
]
