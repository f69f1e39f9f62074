"""Statics of tripods and shear legs: what presses a leg, pulls a stay, spreads the feet and tips the whole.

Question of the trade: what does the load do in legs, ties and stay? Rigid bodies with legs that turn freely at head and foot; a
hoist that pulls off plumb adds a level force of W tan p at the head, in whichever direction is worst. Derived here; the tests
solve the same frames in space.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

BEARING = 1.25
"""Stress over yield at which a pin crushes the wall of a hole [-] (ASME BTH-1, 3-3.3.4, from memory; as for a lug)."""


@dataclass(frozen=True)
class Pull:
    """What hangs at the head [N]: its weight and the level part of a pull off plumb."""

    down_n: float
    level_n: float


@dataclass(frozen=True)
class Tripod:
    """Three equal legs: length, and how far each foot stands from the next [m]. Range: feet nearer to the middle than a leg is
    long.
    """

    leg_m: float
    feet_m: float

    @property
    def reach_m(self) -> float:
        """From the middle of the feet to a foot [m]."""
        return self.feet_m / math.sqrt(3)

    @property
    def head_m(self) -> float:
        """Height of the head [m]."""
        return math.sqrt(self.leg_m**2 - self.reach_m**2)

    @property
    def lean_rad(self) -> float:
        """How far a leg leans from upright."""
        return math.asin(self.reach_m / self.leg_m)

    def leg_n(self, pull: Pull) -> float:
        """Thrust [N] in the leg toward which the hoist pulls: W / (3 cos t) + 2 F / (3 sin t).

        >>> round(Tripod(2.0, math.sqrt(3)).leg_n(Pull(3000.0, 0.0)))  # leans 30 degrees: 1000 / cos 30
        1155
        """
        return pull.down_n / (3 * math.cos(self.lean_rad)) + 2 * pull.level_n / (3 * math.sin(self.lean_rad))

    def spread_n(self, leg_n: float) -> float:
        """What pushes its foot outward [N]."""
        return leg_n * math.sin(self.lean_rad)

    def tie_n(self, leg_n: float) -> float:
        """Pull [N] in a tie from foot to foot: thrust / root 3."""
        return self.spread_n(leg_n) / math.sqrt(3)

    def slides_over(self) -> float:
        """Friction [-] under which loose feet slide: tan t."""
        return math.tan(self.lean_rad)

    def tips_at(self) -> float:
        """Level part of the pull over its weight [-] at which the head leaves the triangle of the feet: half the reach over the
        height. The legs' own weight is not counted.
        """
        return self.reach_m / 2 / self.head_m


@dataclass(frozen=True)
class ShearLegs:
    """Two equal legs that lean out over their feet, and a stay behind: leg, feet apart, how far the head hangs out before the
    line of the feet, the stay's anchor behind it [m]. Range: the legs reach up past their drift.
    """

    leg_m: float
    feet_m: float
    drift_m: float
    anchor_m: float

    @property
    def plane_m(self) -> float:
        """From the middle between the feet up along the plane of the legs to the head [m]."""
        return math.sqrt(self.leg_m**2 - self.feet_m**2 / 4)

    @property
    def head_m(self) -> float:
        """Height of the head [m]."""
        return math.sqrt(self.plane_m**2 - self.drift_m**2)

    @property
    def lean_rad(self) -> float:
        """How far the plane of the legs leans from upright."""
        return math.asin(self.drift_m / self.plane_m)

    @property
    def half_spread_rad(self) -> float:
        """Half the angle between the legs."""
        return math.asin(self.feet_m / 2 / self.leg_m)

    @property
    def stay_rad(self) -> float:
        """Angle of the stay from the level."""
        return math.atan(self.head_m / (self.drift_m + self.anchor_m))

    def stay_n(self, pull: Pull) -> float:
        """Pull [N] in the stay with the hoist pulling outward: (W d + F h) / (A sin g), moments about the feet.

        >>> round(ShearLegs(5.0, 2.0, 1.0, 4.0).stay_n(Pull(1000.0, 0.0)))
        361
        """
        moment = pull.down_n * self.drift_m + pull.level_n * self.head_m
        return moment / (self.anchor_m * math.sin(self.stay_rad))

    def pair_n(self, pull: Pull) -> float:
        """Thrust [N] of both legs together along their plane: what load and stay press down, over the cosine of the lean."""
        return (pull.down_n + self.stay_n(pull) * math.sin(self.stay_rad)) / math.cos(self.lean_rad)

    def leg_n(self, pull: Pull) -> float:
        """Thrust [N] in the harder pressed leg, with the hoist pulling outward and as much along the line of the feet."""
        spread = self.half_spread_rad
        return self.pair_n(pull) / (2 * math.cos(spread)) + pull.level_n / (2 * math.sin(spread))

    def spread_n(self, leg_n: float) -> float:
        """What pushes its foot outward along the line of the feet [N]: also the pull in a tie between the two."""
        return leg_n * math.sin(self.half_spread_rad)

    def back_n(self, pull: Pull) -> float:
        """What pushes both feet back, away from the load [N]."""
        return self.pair_n(pull) * math.sin(self.lean_rad)

    def slides_over(self, tied: bool) -> float:
        """Friction [-] under which feet that nothing holds slide: back alone where a tie keeps them together, else both ways."""
        back = math.tan(self.lean_rad)
        side = 0.0 if tied else math.tan(self.half_spread_rad) / math.cos(self.lean_rad)
        return math.hypot(back, side)

    def tips_at(self) -> float:
        """Level part of the pull over its weight [-] at which a leg lifts or the head falls back over the feet: the smaller of half
        the feet's distance and the drift, over the height. The legs' own weight is not counted.
        """
        return min(self.feet_m / 2, self.drift_m) / self.head_m


@dataclass(frozen=True)
class HeadPin:
    """A pin through all legs at their head: diameter, from the middle of one leg to that of the next along it [m]; its yield strength
    [Pa]; of tubes twice the wall times the legs' yield strength [N/m], else None. The load hangs from the pin between the legs.
    """

    diameter_m: float
    apart_m: float
    yield_pa: float
    walls_n_per_m: float | None

    def holds_n(self) -> float:
        """Thrust of one leg [N] at which the pin is cut, bends, or crushes the leg's walls. Shear: 3/4 of Fy A / root 3 for two legs
        together, where the load hangs on one side of the middle one; bending: a leg's thrust on the arm to the next leg, which no
        load between them makes greater (tests).

        >>> round(HeadPin(0.02, 0.06, 250e6, None).holds_n())
        3272
        """
        section = math.pi / 4 * self.diameter_m**2
        cut = 3 / 4 * section * self.yield_pa / math.sqrt(3) / 2
        bent = math.pi / 32 * self.diameter_m**3 * self.yield_pa / self.apart_m
        crushed = math.inf if self.walls_n_per_m is None else BEARING * self.diameter_m * self.walls_n_per_m
        return min(cut, bent, crushed)


__all__ = ["BEARING", "HeadPin", "Pull", "ShearLegs", "Tripod"]
