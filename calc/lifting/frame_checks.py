"""What a load asks of each part of a shop's own frame, and the greatest load under which no part is over.

A frame is a beam on a kind of support. Every check gives what is asked, what the part takes with its factor, and the part used;
all of them grow with the load, so the greatest load is found by halving (calc.lifting.frame_strength, overhead_beam).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Row
from calc.lifting.frame_strength import (
    FLAGPOLE_K,
    Corners,
    Post,
    a_frame_leg_n,
    combined_pa,
    corners_of,
    lower_flange_stress_pa,
    sway_k,
    web_pull_stress_pa,
)
from calc.lifting.overhead_beam import BeamStrengths, OverheadBeam
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.words.facts import Absent, Fact, Quantity, absent, message, share

Kind = Literal["a-frames", "gantry", "portal", "walls", "bracket"]
KINDS: tuple[Kind, ...] = ("a-frames", "gantry", "portal", "walls", "bracket")
"""How the beam is held: on two A-frames, on two single posts with feet or casters, on posts anchored in the floor, between two
walls or under a ceiling, or by one wall alone."""
FREE_STANDING: tuple[Kind, ...] = ("a-frames", "gantry")
ON_POSTS: tuple[Kind, ...] = (*FREE_STANDING, "portal")

IMPACT = 1.10
"""What a hoist that starts and stops adds (0027/ND for lifts on land, from memory; AISC gives it for hoists worked from the
floor). A hand chain hoist alone would need none; the load is counted so all the same, since a chain that slips in its
rigging drops the load a little."""

LEAST_FACTOR = 1.67
"""Least factor on yielding and buckling (AISC 360 F1, E1, G1, allowable strength design)."""

LEAST_JOINT_FACTOR = {"bolts": 2.0, "weld": 2.0, "anchors": 2.5}
"""Least factor on a joint: AISC 360 J3 and J2; of anchors 1.6 over 0.65, rounded up (our own bound)."""

TIPPING_MARGIN = 1.5
"""What holds a frame up over what tips it, at least (common practice, no source)."""

BALLAST = 2.0
"""A frame's weight over that of its beam and its legs that is counted against tipping, at most [-]: more is a slip of the scale or
something that can be taken off (our own bound)."""

LIGHTEST = 0.9
"""The same, at least [-]: sizes are measured, and a scale rounds (our own bound)."""

FOOT_FRICTION = 0.2
"""Friction of a loose steel foot on a floor (our own bound, under the printed figures for dry steel: oil and dust are there)."""

PLACES = 16
"""Pieces of half the span in which the worst place of a load is looked for that a trolley may carry anywhere."""

WELD_PULLS = 0.5
"""Part of a weld's length that a couple pulls [-]: of two equal runs one is pulled, the other pressed."""

AT_AN_END = 2.0
"""Bending of the lower flange under wheels at an end of the beam over that elsewhere [-]: half of the strip that bends is missing there
(derived from the same strip; the note of the AISC does not go so far)."""

CheckName = Literal[
    "bends", "rolls", "sideways", "shears", "flange", "web", "posts", "feet", "tips", "wheels", "joint"
]


@dataclass(frozen=True)
class Check:
    """A way of giving way: what is asked, what is taken with the factor, and the part used [-]."""

    name: CheckName
    asked: Quantity
    takes: Quantity
    used: float


@dataclass(frozen=True)
class Joint:
    """What fastens the beam, or the foot of an anchored post: by what, its nominal strength [N], and over which arm it holds a
    wall beam or a post upright [m, nought where it needs none].
    """

    fastened_by: Literal["bolts", "weld", "anchors"]
    holds_n: float
    arm_m: float


@dataclass(frozen=True)
class Stand:
    """What the beam stands on: height [m], one post or leg, its weight [kg], the whole frame's weight [kg], how far apart the
    feet stand square to the beam [m], whether they are tied, and what a wheel is rated for [N, None without wheels]; what beam and
    legs weigh by their sizes [kg]; how stiff the beam is over its post, or over both legs: (I beam / span) / (I / length) [-].
    """

    height_m: float
    post: Post
    post_kg: float
    frame_kg: float
    feet_apart_m: float
    tied: bool
    wheel_n: float | None
    parts_kg: float
    beam_ratio: float

    @property
    def steady_kg(self) -> float:
        """What of its weight counts against tipping [kg]."""
        return min(self.frame_kg, BALLAST * self.parts_kg)

    @property
    def rests_kg(self) -> float:
        """What of its weight rests on the wheels [kg]: never less than its parts."""
        return max(self.frame_kg, self.parts_kg)

    @property
    def misfits(self) -> bool:
        """Whether its weight does not fit its parts: lighter than they are, or more than ballast makes it."""
        return not LIGHTEST * self.parts_kg <= self.frame_kg <= BALLAST * self.parts_kg

    @property
    def lean_rad(self) -> float:
        """How far a leg of an A-frame leans from upright."""
        return math.atan(self.feet_apart_m / 2 / self.height_m)


@dataclass(frozen=True)
class Frame:
    """A frame with its beam.

    place_m -- of the load from the left or from the wall; None: anywhere along the beam. pull_rad -- of the hoist from plumb.
    flange_m, web_m, flange_width_m -- of a beam whose lower flange carries the load, else None or nought
    """

    kind: Kind
    beam: OverheadBeam
    span_m: float
    place_m: float | None
    own_kg_per_m: float
    hoist_kg: float
    pull_rad: float
    flange_m: float | None
    web_m: float
    flange_width_m: float
    factor: float
    stand: Stand | None
    joint: Joint | None

    @property
    def factor_used(self) -> float:
        """The factor on yielding and buckling."""
        return max(self.factor, LEAST_FACTOR)

    @property
    def own_n_per_m(self) -> float:
        """Weight of the beam along it."""
        return self.own_kg_per_m * STANDARD_GRAVITY_M_PER_S2

    def hangs_n(self, load_kg: float) -> float:
        """What the beam feels of load and hoist, with the allowance for starting and stopping."""
        return IMPACT * (load_kg + self.hoist_kg) * STANDARD_GRAVITY_M_PER_S2

    def arm_m(self) -> float:
        """Bending moment over the load [m]: the arm of a wall beam, else a b / L, a quarter of the span at most."""
        if self.kind == "bracket":
            return self.span_m if self.place_m is None else self.place_m
        place = self.span_m / 2 if self.place_m is None else self.place_m
        return place * (self.span_m - place) / self.span_m

    def end_share(self) -> float:
        """Part of the load that the harder pressed end carries: all of it where a trolley may run to the end."""
        if self.kind == "bracket" or self.place_m is None:
            return 1.0
        return max(self.place_m, self.span_m - self.place_m) / self.span_m

    def wheels_at_an_end(self) -> bool:
        """Whether the wheels stand within a flange's width of an end of the beam; on a wall beam they may run to its free end."""
        if self.kind == "bracket":
            return self.place_m is None or self.span_m - self.place_m < self.flange_width_m
        return self.place_m is not None and (1 - self.end_share()) * self.span_m < self.flange_width_m

    def moment_nm(self, load_kg: float) -> float:
        """Greatest bending [N m]: load and own weight each at their worst place, which is never too little."""
        parts = 2 if self.kind == "bracket" else 8
        return self.hangs_n(load_kg) * self.arm_m() + self.own_n_per_m * self.span_m**2 / parts

    def end_n(self, load_kg: float) -> float:
        """What the harder pressed end of the beam carries [N]."""
        own_n = self.own_n_per_m * self.span_m
        return self.hangs_n(load_kg) * self.end_share() + (own_n if self.kind == "bracket" else own_n / 2)

    def sideways_n(self, load_kg: float) -> float:
        """Level pull of the hoist [N]."""
        return self.hangs_n(load_kg) * math.tan(self.pull_rad)


def _torque(value_nm: float, sense: Literal["demand", "capacity"]) -> Quantity:
    return Quantity(value_nm, "torque", sense)


def _force(value_n: float, sense: Literal["demand", "capacity"]) -> Quantity:
    return Quantity(value_n, "force", sense)


def _stress(value_pa: float, sense: Literal["demand", "capacity"]) -> Quantity:
    return Quantity(value_pa, "pressure", sense, units=("psi", "MPa"))


def _simple(name: CheckName, asked: Quantity, takes: Quantity) -> Check:
    return Check(name, asked, takes, asked.value_si / takes.value_si)


def _beam_checks(frame: Frame, takes: BeamStrengths, load_kg: float) -> tuple[Check, ...]:
    beam, factor = frame.beam, frame.factor_used
    moment = frame.moment_nm(load_kg)
    bends_at, rolls_at = takes.yields_nm / factor, takes.rolls_nm / factor
    across_at, shears_at = takes.sideways_nm / factor, takes.shears_n / factor
    turned = frame.sideways_n(load_kg) * frame.arm_m()
    checks = [
        _simple("bends", _torque(moment, "demand"), _torque(bends_at, "capacity")),
        _simple("rolls", _torque(moment, "demand"), _torque(rolls_at, "capacity")),
        Check(
            "sideways",
            _torque(turned, "demand"),
            _torque(across_at, "capacity"),
            moment / min(rolls_at, bends_at) + turned / across_at,
        ),
        _simple("shears", _force(frame.end_n(load_kg), "demand"), _force(shears_at, "capacity")),
    ]
    if frame.flange_m is not None:
        along = moment / beam.least_modulus_m3
        across_pa = lower_flange_stress_pa(frame.hangs_n(load_kg), frame.flange_m)
        across_pa *= AT_AN_END if frame.wheels_at_an_end() else 1.0
        web_pa = web_pull_stress_pa(frame.hangs_n(load_kg), frame.flange_m, frame.web_m)
        allowed = _stress(beam.yield_pa / factor, "capacity")
        checks.append(_simple("flange", _stress(combined_pa(along, across_pa), "demand"), allowed))
        checks.append(_simple("web", _stress(web_pa, "demand"), allowed))
    return tuple(checks)


def legs_k(kind: Kind, second_m4: float, length_m: float, beam_second_m4: float, span_m: float) -> float:
    """Effective length over length of a post or leg. The two legs of an A-frame bend together along the beam; a single post is
    free to lean square to the beam like a flagpole, an anchored one both ways.
    """
    if kind == "portal":
        return FLAGPOLE_K
    if kind == "a-frames":
        return sway_k(2 * second_m4, length_m, beam_second_m4, span_m)
    return max(FLAGPOLE_K, sway_k(second_m4, length_m, beam_second_m4, span_m))


@dataclass(frozen=True)
class Spot:
    """What a load at one place, or between two, does at most: the part of it that the nearer end carries, its moment over it [m], and
    how far it stands off the middle over the span [-].
    """

    share: float
    arm_m: float
    off: float


def _spots(frame: Frame) -> tuple[Spot, ...]:
    """The place of the load; where a trolley may carry it anywhere the pieces of half the span, each by its worse ends."""
    span = frame.span_m
    if frame.place_m is not None:
        return (Spot(frame.end_share(), frame.arm_m(), abs(2 * frame.place_m / span - 1)),)
    near = tuple(piece / PLACES / 2 for piece in range(PLACES))
    far = tuple((piece + 1) / PLACES / 2 for piece in range(PLACES))
    return tuple(Spot(1 - a, b * (1 - b) * span, 1 - 2 * a) for a, b in zip(near, far, strict=True))


def _corners(frame: Frame, stand: Stand, spot: Spot, load_kg: float) -> Corners:
    """How the sagging beam bends the posts that are stiffly joined to it; whether an anchored one is, nobody is asked."""
    point, even = frame.hangs_n(load_kg) * spot.arm_m, frame.own_n_per_m * frame.span_m**2
    return corners_of(point, even, spot.off, stand.beam_ratio, frame.kind == "portal")


def _down_n(frame: Frame, spot: Spot, load_kg: float) -> float:
    """What the nearer end of the beam carries [N]."""
    return frame.hangs_n(load_kg) * spot.share + frame.own_n_per_m * frame.span_m / 2


def _post_cases(frame: Frame, stand: Stand, spot: Spot, load_kg: float) -> tuple[tuple[float, float], ...]:
    """Thrust [N] and bending [N m] of the harder pressed post or leg, with the hoist pulling square to the beam, or along it."""
    weight_n = stand.post_kg * STANDARD_GRAVITY_M_PER_S2
    down = _down_n(frame, spot, load_kg) + weight_n
    pull, high = frame.sideways_n(load_kg), stand.height_m
    at_end, corners = pull * spot.share, _corners(frame, stand, spot, load_kg)
    if frame.kind == "a-frames":
        down += weight_n
        return (
            (a_frame_leg_n(down, at_end, stand.lean_rad), corners.head_nm / 2),
            (a_frame_leg_n(down, 0.0, stand.lean_rad), pull * high / 4 + corners.head_nm / 2),
        )
    if frame.kind == "gantry":
        return ((down, at_end * high), (down, pull * high / 2 + corners.head_nm))
    return ((down, at_end * high + corners.foot_nm), (down, pull * high / 4 + corners.head_nm))


def _post_check(frame: Frame, stand: Stand, load_kg: float) -> Check:
    """The harder pressed post or leg in its worst case."""
    beam, factor, post = frame.beam, frame.factor_used, stand.post
    used, thrust = max(
        (post.part_used(thrust, moment, beam.yield_pa, beam.modulus_pa, factor), thrust)
        for spot in _spots(frame)
        for thrust, moment in _post_cases(frame, stand, spot, load_kg)
    )
    holds = post.buckles_n(beam.yield_pa, beam.modulus_pa) / factor
    return Check("posts", _force(thrust, "demand"), _force(holds, "capacity"), used)


def foot_thrust_n(frame: Frame, stand: Stand, load_kg: float) -> float:
    """What pushes a foot of an A-frame outward [N]: the level part of its leg's thrust."""
    down = frame.end_n(load_kg) + 2 * stand.post_kg * STANDARD_GRAVITY_M_PER_S2
    at_end = frame.sideways_n(load_kg) * frame.end_share()
    return a_frame_leg_n(down, at_end, stand.lean_rad) * math.sin(stand.lean_rad)


def _standing_checks(frame: Frame, stand: Stand, load_kg: float) -> tuple[Check, ...]:
    """Tipping, feet and wheels of a frame that stands free."""
    hangs_n = (load_kg + frame.hoist_kg) * STANDARD_GRAVITY_M_PER_S2
    tips = hangs_n * math.tan(frame.pull_rad) * stand.height_m
    holds = (
        (hangs_n + stand.steady_kg / 2 * STANDARD_GRAVITY_M_PER_S2) * stand.feet_apart_m / 2 / TIPPING_MARGIN
    )
    checks = [_simple("tips", _torque(tips, "demand"), _torque(holds, "capacity"))]
    if frame.kind == "a-frames" and not stand.tied:
        pushes = foot_thrust_n(frame, stand, load_kg)
        rubs = pushes / math.tan(stand.lean_rad) * FOOT_FRICTION
        checks.append(_simple("feet", _force(pushes, "demand"), _force(rubs, "capacity")))
    if stand.wheel_n is not None:
        down = frame.hangs_n(load_kg) * frame.end_share()
        down += stand.rests_kg / 2 * STANDARD_GRAVITY_M_PER_S2
        at_end = frame.sideways_n(load_kg) * frame.end_share()
        wheel = down / 2 + at_end * stand.height_m / stand.feet_apart_m
        checks.append(_simple("wheels", _force(wheel, "demand"), _force(stand.wheel_n, "capacity")))
    return tuple(checks)


def _couple_nm(frame: Frame, stand: Stand, joint: Joint, spot: Spot, load_kg: float) -> float:
    """The couple that a joint holds [N m]: at the corner of beam and post that of the sagging beam and of a pull along the beam, at
    the anchored foot that of a pull square to it besides.
    """
    pull, corners = frame.sideways_n(load_kg) * stand.height_m, _corners(frame, stand, spot, load_kg)
    if joint.fastened_by == "anchors":
        return pull * spot.share + corners.foot_nm
    return pull / (4 if frame.kind == "portal" else 2) + corners.head_nm


def joint_force_n(frame: Frame, joint: Joint, load_kg: float) -> float:
    """What pulls on the joint [N], evenly shared: the end of the beam with the couple that holds it level or its post upright, over the
    arm; a weld is pulled along half of its length by a couple. Walls and ceilings hold no couple.
    """
    shares = WELD_PULLS if joint.fastened_by == "weld" else 1.0
    if frame.kind == "bracket":
        return math.hypot(frame.end_n(load_kg), frame.moment_nm(load_kg) / joint.arm_m / shares)
    stand = frame.stand
    if stand is None:
        return frame.end_n(load_kg)

    def pulls_n(spot: Spot) -> float:
        level = frame.sideways_n(load_kg) * spot.share
        straight = level if joint.fastened_by == "anchors" else _down_n(frame, spot, load_kg)
        return math.hypot(straight, _couple_nm(frame, stand, joint, spot, load_kg) / joint.arm_m / shares)

    return max(map(pulls_n, _spots(frame)))


def checks_of(frame: Frame, load_kg: float) -> tuple[Check, ...] | Absent:
    """Every check of the frame under a load [kg], the beam's first; why there are none."""
    takes = frame.beam.strengths()
    return takes if isinstance(takes, Absent) else _all_checks(frame, takes, load_kg)


def _all_checks(frame: Frame, takes: BeamStrengths, load_kg: float) -> tuple[Check, ...]:
    checks = list(_beam_checks(frame, takes, load_kg))
    stand, joint = frame.stand, frame.joint
    if stand is not None:
        checks.append(_post_check(frame, stand, load_kg))
        if frame.kind in FREE_STANDING:
            checks.extend(_standing_checks(frame, stand, load_kg))
    if joint is not None:
        holds = joint.holds_n / max(frame.factor, LEAST_JOINT_FACTOR[joint.fastened_by])
        asked = joint_force_n(frame, joint, load_kg)
        checks.append(_simple("joint", _force(asked, "demand"), _force(holds, "capacity")))
    return tuple(checks)


def weakest_of(checks: tuple[Check, ...]) -> Check:
    """The check of which most is used."""
    return max(checks, key=lambda one: one.used)


def greatest_held_kg(holds: Callable[[float], bool]) -> float:
    """The greatest load [kg] under which nothing is over, found by halving; nought where even no load is too much.

    holds -- whether a load [kg] leaves nothing over; once it does not, no greater load does, and some load does not
    """
    low, high = 0.0, 1.0
    while holds(high):
        low, high = high, 2 * high
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if holds(middle) else (low, middle)
    return low


def check_row(name: str, asked: Fact, takes: Fact, used: float) -> Row:
    """A check as a row of the table of checks: its name in words, what is asked and taken, and the part used [-]."""
    cells: Mapping[str, Fact] = {
        "check": message(f"check-{name}"),
        "asked": asked,
        "takes": takes,
        "used": share(used),
    }
    return Row(cells, "fail" if exceeds(used, 1.0) else "pass")


def not_more_than_kg(frame: Frame) -> float | Absent:
    """The load [kg] over which some check is surely over; nought where the frame alone is over, or why there is none.

    A joint that nobody checked may be the weakest part, so that there is no such load then.
    """
    takes = frame.beam.strengths()
    if isinstance(takes, Absent):
        return takes
    if frame.joint is None:
        return absent("joint-not-checked")

    def holds(load_kg: float) -> bool:
        return weakest_of(_all_checks(frame, takes, load_kg)).used <= 1.0

    return greatest_held_kg(holds)


__all__ = [
    "BALLAST",
    "FOOT_FRICTION",
    "FREE_STANDING",
    "IMPACT",
    "KINDS",
    "LEAST_FACTOR",
    "ON_POSTS",
    "TIPPING_MARGIN",
    "Check",
    "CheckName",
    "Frame",
    "Joint",
    "Kind",
    "Stand",
    "check_row",
    "checks_of",
    "foot_thrust_n",
    "greatest_held_kg",
    "joint_force_n",
    "legs_k",
    "not_more_than_kg",
    "weakest_of",
]
