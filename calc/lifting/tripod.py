"""Do my tripod or my shear legs buckle, spread or tip?

Three legs over the load, or two that lean out with a stay behind (calc.lifting.three_legs, struts). A study aid that rates
nothing: legs without a plate have no rating. Wooden legs get their thrust, ties and tipping, and no strength.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Row, Step, Worksheet, step
from calc.figures.three_legs import LegsView, legs_figure
from calc.inputs import Bounds, ChoiceInput, Given, NumberInput, QuantityInput
from calc.lifting.frame_checks import (
    FOOT_FRICTION,
    IMPACT,
    LEAST_FACTOR,
    TIPPING_MARGIN,
    check_row,
    greatest_held_kg,
)
from calc.lifting.struts import SLENDER, TUBES, WORDS, Strut, read_strut, strut_inputs
from calc.lifting.three_legs import HeadPin, Pull, ShearLegs, Tripod
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, unknown
from calc.words.facts import Absent, Message, Number, Quantity, absent, force, length, message, share
from calc.words.writer import Writer

COMMON_FACTOR = 3.0
"""Design factor of common lifting (ASME BTH-1, category B, from memory)."""

LEAST_STAY = 0.5
"""Part of the load that a stay of shear legs is made for at least (riggers' rule of the US Navy, read in its builders' manual)."""

WIDEST_FEET = 1 / 3
"""Feet apart over length of a leg up to which shear legs are set by an old military rule (about 1900, read in a copy)."""

FARTHEST_DRIFT = 1 / 5
"""How far the head hangs out over its height, by the same rule."""

THICKEST_PIN = 0.5
"""A bolt's diameter over that of the tube it goes through, at most [-]. Up to there the bolt crushes both walls, at 1.25 x 2 t d Fy,
before the section beside its hole yields: a round tube of diameter D keeps (pi - 2 asin(d / D)) D t, a square one (4 D - 2 d) t.
In a round tube the two meet at d = 0.66 D (derived; our own bound, rounded down)."""

CheckName = Literal["legs", "tips", "feet", "ties", "stay", "head"]


@dataclass(frozen=True)
class Check:
    """A way of giving way: what is asked, what is taken, and the part used [-]."""

    name: CheckName
    asked: Quantity | Number
    takes: Quantity | Number
    used: float


@dataclass(frozen=True)
class Legs:
    """Legs with what they stand on: their geometry and section, how far the hoist pulls off plumb [rad], what is led down along a
    leg [N], hoist [kg], how the feet are kept, what tie and stay are rated for [N], and what joins the legs at the head: a pin, or
    a fitting of this rating [N].
    """

    shape: Tripod | ShearLegs
    strut: Strut
    pull_rad: float
    lead_n: float
    hoist_kg: float
    feet: str
    tie_n: float | Absent
    stay_n: float | Absent
    head: HeadPin | float | Absent
    factor: float

    @property
    def count(self) -> int:
        """How many legs."""
        return 3 if isinstance(self.shape, Tripod) else 2

    def hangs_n(self, load_kg: float) -> float:
        """Load and hoist [N], with the allowance for starting."""
        return IMPACT * (load_kg + self.hoist_kg) * STANDARD_GRAVITY_M_PER_S2

    def pull(self, load_kg: float) -> Pull:
        """What presses the head: load, hoist and half of each leg down, the pull off plumb level."""
        hangs = self.hangs_n(load_kg)
        legs_n = self.count * self.strut.weight_kg / 2 * STANDARD_GRAVITY_M_PER_S2
        return Pull(hangs + legs_n, hangs * math.tan(self.pull_rad))

    def leg_n(self, load_kg: float) -> float:
        """Thrust of the harder pressed leg [N], with its own weight and what is led down along it."""
        own = self.strut.weight_kg * STANDARD_GRAVITY_M_PER_S2
        return self.shape.leg_n(self.pull(load_kg)) + own + self.lead_n

    def bends_nm(self) -> float:
        """Bending of a leaning leg by its own weight [N m]: w L^2 / 8 of what lies square to it."""
        own = self.strut.weight_kg * STANDARD_GRAVITY_M_PER_S2
        if isinstance(self.shape, Tripod):
            lean = self.shape.lean_rad
        else:
            lean = math.acos(self.shape.head_m / self.shape.leg_m)
        return own * math.sin(lean) * self.strut.post.effective_m / 8

    def tie_pull_n(self, load_kg: float) -> float:
        """Pull in a tie between two feet [N]."""
        shape, leg_n = self.shape, self.leg_n(load_kg)
        return shape.tie_n(leg_n) if isinstance(shape, Tripod) else shape.spread_n(leg_n)

    def stay_pull_n(self, load_kg: float) -> float | Absent:
        """Pull in the stay [N], never taken under half the load."""
        if isinstance(self.shape, Tripod):
            return absent("no-stay")
        pull = self.pull(load_kg)
        return max(self.shape.stay_n(pull), LEAST_STAY * self.hangs_n(load_kg))

    def slides_over(self) -> float:
        """Friction under which the feet slide [-]; nought where they are held."""
        if self.feet == "held":
            return 0.0
        if isinstance(self.shape, Tripod):
            return 0.0 if self.feet == "tied" else self.shape.slides_over()
        return self.shape.slides_over(self.feet == "tied")

    def own_checks(self, load_kg: float) -> tuple[Check, ...]:
        """Legs, tipping and feet: what is known of any of them."""
        thrust = self.leg_n(load_kg)
        holds = self.strut.buckles_n() / self.factor
        leans, tips = math.tan(self.pull_rad), self.shape.tips_at() / TIPPING_MARGIN
        checks = [
            Check(
                "legs",
                force(thrust, "demand"),
                force(holds, "capacity"),
                self.strut.part_used(thrust, self.bends_nm(), self.factor),
            ),
            Check("tips", Number(leans, 3, "demand"), Number(tips, 3, "capacity"), leans / tips),
        ]
        slides = self.slides_over()
        if slides > 0:
            asked, takes = Number(slides, 3, "demand"), Number(FOOT_FRICTION, 3, "capacity")
            checks.append(Check("feet", asked, takes, slides / FOOT_FRICTION))
        return tuple(checks)

    def gear_checks(self, load_kg: float) -> tuple[Check, ...]:
        """Ties, stay and head against their ratings, where they are given."""
        pairs: tuple[tuple[CheckName, float | Absent, float | Absent], ...] = (
            ("ties", self.tie_pull_n(load_kg), self.tie_n),
            ("stay", self.stay_pull_n(load_kg), self.stay_n),
            ("head", self.head_asked_n(load_kg), self.head_holds_n()),
        )
        return tuple(
            Check(name, force(asked, "demand"), force(takes, "capacity"), asked / takes)
            for name, asked, takes in pairs
            if not isinstance(asked, Absent) and not isinstance(takes, Absent)
        )

    def head_asked_n(self, load_kg: float) -> float:
        """What presses a pin at the head: the thrust of a leg; what hangs from a fitting: load, hoist and the pull led down [N]."""
        if isinstance(self.head, HeadPin):
            return self.leg_n(load_kg)
        return self.hangs_n(load_kg) + self.lead_n

    def head_holds_n(self) -> float | Absent:
        """What the head takes [N], a pin with the factor."""
        if isinstance(self.head, HeadPin):
            return self.head.holds_n() / self.factor
        return self.head

    def all_known(self) -> bool:
        """Whether nothing that holds the legs is left unchecked."""
        if isinstance(self.head, Absent):
            return False
        tied = self.feet != "tied" or not isinstance(self.tie_n, Absent)
        return tied and (isinstance(self.shape, Tripod) or not isinstance(self.stay_n, Absent))


def most_kg(legs: Legs) -> float:
    """The load [kg] over which some check is surely over; nought where the legs alone are over, tip or slide."""

    def holds(load_kg: float) -> bool:
        checks = (*legs.own_checks(load_kg), *legs.gear_checks(load_kg))
        return max(one.used for one in checks) <= 1.0

    return greatest_held_kg(holds)


@dataclass(frozen=True)
class Found:
    """What the load asks of legs, feet, ties and stay."""

    legs: Legs
    load_kg: float
    own_checks: tuple[Check, ...]
    gear_checks: tuple[Check, ...]
    weakest: Message | Absent
    weakest_share: float | Absent
    not_more_than_kg: float | Absent
    checks: tuple[Row, ...]
    leg_thrust_n: float
    buckles_at_n: float | Absent
    foot_thrust_n: float
    tie_pull_n: float
    ties_used: float | Absent
    stay_pull_n: float | Absent
    stay_used: float | Absent
    head_used: float | Absent
    stay_angle_deg: float | Absent
    back_push_n: float | Absent
    tips_at_deg: float
    head_height_m: float
    leg_weight_kg: float
    slenderness: float


def _shape(given: Given) -> Tripod | ShearLegs:
    leg, feet = given.si("leg_length"), given.si("feet_apart")
    if given.text("kind") == "tripod":
        if feet / math.sqrt(3) >= leg * 0.95:
            raise given.refuse("feet_apart", "legs-lie-flat", leg=length(leg))
        return Tripod(leg, feet)
    if feet / 2 >= leg * 0.95:
        raise given.refuse("feet_apart", "legs-lie-flat", leg=length(leg))
    shape = ShearLegs(leg, feet, given.si("drift"), given.si("stay_anchor"))
    if shape.drift_m >= 0.95 * shape.plane_m:
        raise given.refuse("drift", "legs-lie-flat", leg=length(leg))
    return shape


def _rating(given: Given, name: str, asked: bool, code: str) -> float | Absent:
    rated = given.maybe(name) if asked else None
    return absent(code) if rated is None else rated


def _head(given: Given) -> HeadPin | float | Absent:
    """What joins the legs, as far as it can be checked; of tubes the pin presses both walls of a leg."""
    joined = given.text("head")
    if joined == "marked":
        return given.si("head_rating")
    if joined != "pin":
        return absent("head-lashed" if joined == "lashed" else "head-not-checked")
    pin, apart = given.si("head_pin"), given.si("head_apart")
    tube = given.text("section") in TUBES
    if tube and exceeds(pin, THICKEST_PIN * given.si("width")):
        raise given.refuse("head_pin", "too-thick-for-the-leg")
    least = given.si("width") if tube else pin / 2
    if exceeds(least, apart):
        raise given.refuse("head_apart", "legs-in-one-another", least=length(least))
    walls = 2 * given.si("wall") * given.si("yield_strength") if tube else None
    return HeadPin(pin, apart, given.si("head_yield"), walls)


def _legs(given: Given) -> Legs:
    shape, feet = _shape(given), given.text("feet")
    return Legs(
        shape=shape,
        strut=read_strut(given, shape.leg_m),
        pull_rad=math.radians(given.si("side_pull")),
        lead_n=given.si("lead_pull"),
        hoist_kg=given.si("hoist_weight"),
        feet=feet,
        tie_n=_rating(given, "tie_rating", feet == "tied", "ties-not-checked"),
        stay_n=_rating(given, "stay_rating", isinstance(shape, ShearLegs), "stay-not-checked"),
        head=_head(given),
        factor=max(given.si("design_factor"), LEAST_FACTOR),
    )


def _used(checks: tuple[Check, ...], name: CheckName, code: str) -> float | Absent:
    return next((one.used for one in checks if one.name == name), absent(code))


def find(given: Given) -> Found:
    """Thrusts, pulls and the part used of each; see WORKSHEET for inputs and results."""
    legs, load_kg = _legs(given), given.si("load")
    shape, no_strength = legs.shape, legs.strut.no_strength
    own = () if no_strength else legs.own_checks(load_kg)
    gear = legs.gear_checks(load_kg)
    first = max((*own, *gear), key=lambda one: one.used) if own and legs.all_known() else None
    leg_n = legs.leg_n(load_kg)
    sheer = shape if isinstance(shape, ShearLegs) else None
    none = no_strength or (None if legs.all_known() else absent("not-all-checked"))
    return Found(
        legs=legs,
        load_kg=load_kg,
        own_checks=own,
        gear_checks=gear,
        weakest=message(f"check-{first.name}") if first else no_strength or absent("not-all-checked"),
        weakest_share=first.used if first else no_strength or absent("not-all-checked"),
        not_more_than_kg=none or most_kg(legs),
        checks=tuple(check_row(one.name, one.asked, one.takes, one.used) for one in (*own, *gear)),
        leg_thrust_n=leg_n,
        buckles_at_n=no_strength or legs.strut.buckles_n() / legs.factor,
        foot_thrust_n=shape.spread_n(leg_n),
        tie_pull_n=legs.tie_pull_n(load_kg),
        ties_used=_used(gear, "ties", "ties-not-checked"),
        stay_pull_n=legs.stay_pull_n(load_kg),
        stay_used=_used(gear, "stay", "stay-not-checked" if sheer else "no-stay"),
        head_used=_used(
            gear, "head", legs.head.code if isinstance(legs.head, Absent) else "head-not-checked"
        ),
        stay_angle_deg=math.degrees(sheer.stay_rad) if sheer else absent("no-stay"),
        back_push_n=sheer.back_n(legs.pull(load_kg)) if sheer else absent("no-stay"),
        tips_at_deg=math.degrees(math.atan(shape.tips_at())),
        head_height_m=shape.head_m,
        leg_weight_kg=legs.strut.weight_kg,
        slenderness=legs.strut.slenderness,
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once. A study aid rates nothing; what is too much is a stop."""
    legs, reasons = found.legs, list[Reason]()
    if legs.strut.no_strength:
        wood = legs.strut.no_strength.code == "wooden-legs"
        reasons.append(Reason("wooden-legs" if wood else "wall-too-thin", "unknown", large="leg_thrust"))
    if any(exceeds(one.used, 1.0) for one in found.own_checks):
        reasons.append(over("over-the-weakest"))
    if any(exceeds(one.used, 1.0) for one in found.gear_checks):
        reasons.append(over("over-the-gear"))
    if isinstance(legs.head, Absent):
        reasons.append(unknown(legs.head.code))
    else:
        pinned = isinstance(legs.head, HeadPin)
        reasons.append(note("pin-upper-bound" if pinned else "head-by-its-mark", "warning"))
    reasons.append(note("unrated", "mandatory"))
    reasons.extend(_foot_reasons(legs))
    if isinstance(legs.shape, ShearLegs):
        reasons.extend(_shear_reasons(legs, legs.shape))
    else:
        reasons.append(note("up-and-down-only", "prohibition"))
    if found.slenderness > SLENDER:
        reasons.append(caution("slender"))
    if legs.factor < COMMON_FACTOR:
        reasons.append(caution("small-factor"))
    reasons.append(note("not-counted"))
    return tuple(reasons)


def _foot_reasons(legs: Legs) -> list[Reason]:
    if legs.feet == "held":
        return [note("feet-must-hold", "warning")]
    if legs.feet != "tied":
        return [caution("tie-the-feet")]
    return [unknown("ties-not-checked")] if isinstance(legs.tie_n, Absent) else []


def _shear_reasons(legs: Legs, shape: ShearLegs) -> list[Reason]:
    reasons = [note("anchor-of-the-stay", "warning")]
    if isinstance(legs.stay_n, Absent):
        reasons.append(unknown("stay-not-checked"))
    if exceeds(shape.feet_m, WIDEST_FEET * shape.leg_m):
        reasons.append(caution("feet-wide"))
    if exceeds(shape.drift_m, FARTHEST_DRIFT * shape.head_m):
        reasons.append(caution("leans-far"))
    return reasons


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working: what hangs, the legs, the feet, the stay, and each check."""
    legs, shape = found.legs, found.legs.shape
    pull = legs.pull(found.load_kg)
    lines = [
        step("hangs", hangs=force(legs.hangs_n(found.load_kg), "demand")),
        step("head", head=length(shape.head_m)),
    ]
    down, level = force(pull.down_n, "demand"), force(pull.level_n, "demand")
    if isinstance(shape, Tripod):
        lean = Quantity(math.degrees(shape.lean_rad), "angle")
        lines.append(step("tripod-leg", down=down, level=level, lean=lean))
        lines.append(step("tripod-tie", lean=lean))
    else:
        lean = Quantity(math.degrees(shape.lean_rad), "angle")
        half = Quantity(math.degrees(shape.half_spread_rad), "angle")
        lines.append(step("stay", down=down, level=level))
        lines.append(step("pair", down=down, lean=lean, pair=force(shape.pair_n(pull), "demand")))
        lines.append(step("shear-leg", pair=force(shape.pair_n(pull), "demand"), level=level, half=half))
        lines.append(step("shear-tie", half=half))
        lines.append(step("back", pair=force(shape.pair_n(pull), "demand"), lean=lean))
    lines.extend(
        step(f"check-{one.name}", asked=one.asked, takes=one.takes, used=share(one.used))
        for one in (*found.own_checks, *found.gear_checks)
    )
    return tuple(lines)


def draw(found: Found, writer: Writer) -> Figure:
    """Side and front to scale; the legs are lit where they are the weakest."""
    legs, shape = found.legs, found.legs.shape
    every = (*found.own_checks, *found.gear_checks)
    first = max(every, key=lambda one: one.used) if found.own_checks else None
    tripod = isinstance(shape, Tripod)
    view = LegsView(
        head_m=shape.head_m,
        before_m=shape.reach_m / 2 if isinstance(shape, Tripod) else shape.drift_m,
        behind_m=-1.5 * shape.reach_m if isinstance(shape, Tripod) else shape.anchor_m,
        feet_m=shape.feet_m,
        load_n=legs.hangs_n(found.load_kg),
        leg_n=found.leg_thrust_n,
        stay=not tripod,
        lit=first is not None and first.name == "legs",
        over=first is not None and exceeds(first.used, 1.0),
    )
    caption = writer.text("figure", high=length(shape.head_m), weakest=found.weakest)
    return legs_figure(view, caption, writer)


_ALONG = Bounds(above=0, at_most=100)
_SHEAR = {"kind": ("shear-legs",)}


def _feet(name: str, shown: Mapping[str, tuple[str, ...]]) -> QuantityInput:
    return QuantityInput(
        name,
        dimension="length",
        unit="ft",
        unit_si="m",
        bounds=_ALONG,
        required=not shown,
        shown_when=shown,
    )


def _rated(name: str, shown: Mapping[str, tuple[str, ...]]) -> QuantityInput:
    bounds = Bounds(above=0, at_most=1_000_000)
    return QuantityInput(
        name, dimension="force", bounds=bounds, required=False, shown_when=shown, sense="capacity"
    )


def _at_head(name: str, dimension: str, at_most: float) -> QuantityInput:
    bounds = Bounds(above=0, at_most=at_most)
    return QuantityInput(
        name, dimension=dimension, bounds=bounds, required=False, shown_when={"head": ("pin",)}
    )


WORKSHEET = Worksheet(
    name="tripod",
    inputs=(
        ChoiceInput("kind", choices=("tripod", "shear-legs")),
        QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=200_000), sense="demand"),
        QuantityInput(
            "hoist_weight", dimension="weight", bounds=Bounds(at_least=0, at_most=20_000), sense="demand"
        ),
        QuantityInput("side_pull", dimension="angle", bounds=Bounds(at_least=3, at_most=45), sense="demand"),
        QuantityInput(
            "lead_pull", dimension="force", bounds=Bounds(at_least=0, at_most=100_000), sense="demand"
        ),
        _feet("leg_length", {}),
        _feet("feet_apart", {}),
        _feet("drift", _SHEAR),
        _feet("stay_anchor", _SHEAR),
        ChoiceInput("feet", choices=("loose", "tied", "held"), default="loose", required=False),
        _rated("tie_rating", {"feet": ("tied",)}),
        _rated("stay_rating", _SHEAR),
        ChoiceInput(
            "head", choices=("not-checked", "lashed", "pin", "marked"), default="not-checked", required=False
        ),
        _rated("head_rating", {"head": ("marked",)}),
        _at_head("head_pin", "length", 12),
        _at_head("head_apart", "length", 100),
        QuantityInput(
            "head_yield",
            dimension="pressure",
            unit="psi",
            unit_si="MPa",
            bounds=Bounds(at_least=20_000, at_most=150_000),
            required=False,
            shown_when={"head": ("pin",)},
            sense="capacity",
        ),
        *strut_inputs(wood=True),
        NumberInput("design_factor", bounds=Bounds(at_least=1.67, at_most=10), sense="demand"),
    ),
    results=(
        Result("weakest"),
        Result("weakest_share", "fraction", "demand"),
        Result("not_more_than", "weight", "capacity"),
        Result("checks", columns=("check", "asked", "takes", "used")),
        Result("leg_thrust", "force", "demand"),
        Result("buckles_at", "force", "capacity"),
        Result("foot_thrust", "force", "demand"),
        Result("tie_pull", "force", "demand"),
        Result("ties_used", "fraction", "demand"),
        Result("stay_pull", "force", "demand"),
        Result("stay_used", "fraction", "demand"),
        Result("head_used", "fraction", "demand"),
        Result("stay_angle", "angle"),
        Result("back_push", "force", "demand"),
        Result("tips_at", "angle", "capacity"),
        Result("head_height", "length"),
        Result("leg_weight", "weight"),
        Result("slenderness", sense="demand"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    large="weakest_share",
    rates=False,
    shares=(WORDS,),
    example={
        "kind": "tripod",
        "load": "700 lb",
        "hoist_weight": "35 lb",
        "side_pull": "3°",
        "lead_pull": "0",
        "leg_length": "10 ft",
        "feet_apart": "7 ft",
        "feet": "tied",
        "tie_rating": "1,300 lbf",
        "head": "pin",
        "head_pin": "1-1/8 in",
        "head_apart": "2-1/2 in",
        "head_yield": "36,000 psi",
        "section": "pipe",
        "width": "2-3/8 in",
        "wall": "0.154 in",
        "yield_strength": "35,000 psi",
        "design_factor": "3",
    },
    citations=(
        Citation("aisc-360", "E2, E3 and H1; H1 from memory"),
        Citation("navedtra-14251", "tripods: the load moves up and down only"),
    ),
)
