"""Does my spreader bar fold between its slings?

A bar with a sling to the hook at each end, and a sling down at each end. The flatter the upper slings, the harder they press the
bar together (calc.lifting.struts). A study aid that rates nothing: a spreader is a lifting device that somebody designs, proves
and marks.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.spreaders import SpreaderView, spreader_figure
from calc.inputs import Bounds, ChoiceInput, Given, NumberInput, QuantityInput
from calc.lifting.frame_checks import IMPACT, LEAST_FACTOR, greatest_held_kg
from calc.lifting.struts import SLENDER, WORDS, Strut, read_strut, strut_inputs
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, stop, unknown
from calc.words.facts import Absent, Number, Quantity, absent, force, length, share
from calc.words.writer import Writer

FLATTEST_DEG = 30.0
"""Angle from the level under which no sling is used (as sling-legs has it)."""

FLAT_DEG = 45.0
"""Angle from the level under which the thrust grows fast (as sling-legs has it)."""

COMMON_FACTOR = 3.0
"""Design factor of common lifting (ASME BTH-1, category B, from memory)."""


@dataclass(frozen=True)
class Bar:
    """A spreader: the bar, the angle of its upper slings from the level [rad], how far the center of gravity lies off its middle [m],
    how far the eyes lie off the bar's middle line [m], and the design factor.
    """

    strut: Strut
    angle_rad: float
    off_middle_m: float
    eyes_off_m: float
    factor: float

    @property
    def length_m(self) -> float:
        """Between the end fittings [m]."""
        return self.strut.post.effective_m

    @property
    def heavy_share(self) -> float:
        """Part of the load that the heavier end carries [-]: (L / 2 + e) / L."""
        return 0.5 + self.off_middle_m / self.length_m

    def end_n(self, load_kg: float) -> float:
        """Pull down at the heavier end [N], with the allowance for starting."""
        return IMPACT * load_kg * STANDARD_GRAVITY_M_PER_S2 * self.heavy_share

    def hangs_n(self, load_kg: float) -> float:
        """What the upper sling of that end holds up [N]: the pull down and half the bar."""
        return self.end_n(load_kg) + self.strut.weight_kg * STANDARD_GRAVITY_M_PER_S2 / 2

    def thrust_n(self, load_kg: float) -> float:
        """Thrust in the bar [N]: W / tan b of the heavier end, which is never too little."""
        return self.hangs_n(load_kg) / math.tan(self.angle_rad)

    def sling_n(self, load_kg: float) -> float:
        """Pull in the upper sling [N]."""
        return self.hangs_n(load_kg) / math.sin(self.angle_rad)

    def moment_nm(self, load_kg: float) -> float:
        """Bending of the bar [N m]: its own weight between its ends, w L^2 / 8, and the thrust that acts off its middle line."""
        own = self.strut.weight_kg * STANDARD_GRAVITY_M_PER_S2 * self.length_m / 8
        return own + self.thrust_n(load_kg) * self.eyes_off_m

    def part_used(self, load_kg: float) -> float:
        """Part used of the bar [-]."""
        return self.strut.part_used(self.thrust_n(load_kg), self.moment_nm(load_kg), self.factor)


@dataclass(frozen=True)
class Fittings:
    """What the upper and the lower fitting of an end are rated for [N]."""

    upper_n: float
    lower_n: float

    def used(self, bar: Bar, load_kg: float) -> float:
        """Part used of the more pressed one [-]. Ratings are for the load as it hangs, so no allowance is added."""
        return max(bar.sling_n(load_kg) / self.upper_n, bar.end_n(load_kg) / self.lower_n) / IMPACT


def most_kg(bar: Bar, fittings: Fittings) -> float:
    """The load [kg] over which bar or fittings are surely over; nought where the bar's own weight uses it up."""

    def holds(load_kg: float) -> bool:
        return max(bar.part_used(load_kg), fittings.used(bar, load_kg)) <= 1.0

    return greatest_held_kg(holds)


@dataclass(frozen=True)
class Found:
    """Thrust, pulls and the part used of the bar."""

    bar: Bar
    fittings: Fittings | Absent
    load_kg: float
    flat: bool
    thrust_n: float
    buckles_at_n: float | Absent
    euler_n: float
    part_used: float | Absent
    not_more_than_kg: float | Absent
    sling_pull_n: float
    end_pull_n: float
    fittings_used: float | Absent
    slenderness: float
    headroom_m: float
    bar_weight_kg: float


def _fittings(given: Given) -> Fittings | Absent:
    if given.text("fittings") != "marked":
        return absent("fittings-not-checked")
    return Fittings(given.si("upper_rating"), given.si("lower_rating"))


def find(given: Given) -> Found:
    """Thrust and strength of the spreader; see WORKSHEET for inputs and results."""
    long, angle = given.si("length"), given.si("sling_angle")
    off = given.si("off_middle")
    if off >= long / 2:
        raise given.refuse("off_middle", "off-the-bar", half=length(long / 2))
    strut = read_strut(given, long)
    factor = max(given.si("design_factor"), LEAST_FACTOR)
    bar = Bar(strut, math.radians(angle), off, given.si("eyes_off"), factor)
    load_kg = given.si("load")
    flat = angle < FLATTEST_DEG * (1 - 1e-9)
    fittings = _fittings(given)
    none = strut.no_strength or (absent("slings-too-flat") if flat else None)
    return Found(
        bar=bar,
        fittings=fittings,
        load_kg=load_kg,
        flat=flat,
        thrust_n=bar.thrust_n(load_kg),
        buckles_at_n=none or strut.buckles_n() / factor,
        euler_n=strut.euler_n(),
        part_used=strut.no_strength or bar.part_used(load_kg),
        not_more_than_kg=none or (fittings if isinstance(fittings, Absent) else most_kg(bar, fittings)),
        sling_pull_n=bar.sling_n(load_kg),
        end_pull_n=bar.end_n(load_kg),
        fittings_used=fittings if isinstance(fittings, Absent) else fittings.used(bar, load_kg),
        slenderness=strut.slenderness,
        headroom_m=long / 2 * math.tan(bar.angle_rad),
        bar_weight_kg=strut.weight_kg,
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once. A study aid rates nothing; what is too much is a stop."""
    reasons: list[Reason] = []
    if found.flat:
        reasons.append(stop("slings-too-flat"))
    if isinstance(found.part_used, Absent):
        reasons.append(Reason("wall-too-thin", "unknown", large="thrust"))
    elif exceeds(found.part_used, 1.0):
        reasons.append(over("over-the-bar"))
    if isinstance(found.fittings_used, Absent):
        reasons.append(unknown("fittings-not-checked"))
    elif exceeds(found.fittings_used, 1.0):
        reasons.append(over("over-the-fittings"))
    reasons.append(note("unrated", "mandatory"))
    if not found.flat and math.degrees(found.bar.angle_rad) < FLAT_DEG * (1 - 1e-9):
        reasons.append(caution("slings-flat"))
    if found.slenderness > SLENDER:
        reasons.append(caution("slender"))
    if found.bar.off_middle_m > 0:
        reasons.append(note("hangs-tilted", "warning"))
    if found.bar.factor < COMMON_FACTOR:
        reasons.append(caution("small-factor"))
    reasons.append(note("lower-slings-plumb", "mandatory"))
    reasons.append(note("starting-adds"))
    reasons.append(note("not-counted"))
    return tuple(reasons)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working: pulls and thrust, then the bar, then the fittings."""
    bar = found.bar
    hangs = force(bar.hangs_n(found.load_kg), "demand")
    thrust = force(found.thrust_n, "demand")
    lines = [
        step("end", share=Number(bar.heavy_share, 3, "demand")),
        step("sling", hangs=hangs, angle=Quantity(math.degrees(bar.angle_rad), "angle")),
        step("thrust", hangs=hangs, angle=Quantity(math.degrees(bar.angle_rad), "angle")),
        step("bends", moment=Quantity(bar.moment_nm(found.load_kg), "torque", "demand"), thrust=thrust),
        step("euler", slender=Number(found.slenderness, 3, "demand")),
    ]
    if not isinstance(found.buckles_at_n, Absent):
        lines.append(step("buckles", factor=Number(bar.factor, 3)))
    if not isinstance(found.part_used, Absent):
        lines.append(step("used", thrust=thrust, used=share(found.part_used)))
    if isinstance(found.fittings, Fittings):
        lines.append(
            step(
                "fittings",
                upper=force(found.fittings.upper_n, "capacity"),
                lower=force(found.fittings.lower_n, "capacity"),
            )
        )
    return tuple(lines)


def draw(found: Found, writer: Writer) -> Figure:
    """The spreader to scale with its slings."""
    over = not isinstance(found.part_used, Absent) and exceeds(found.part_used, 1.0)
    view = SpreaderView(
        length_m=found.bar.length_m,
        headroom_m=found.headroom_m,
        off_middle_m=found.bar.off_middle_m,
        angle_deg=math.degrees(found.bar.angle_rad),
        thrust_n=found.thrust_n,
        sling_n=found.sling_pull_n,
        over=over or found.flat,
    )
    caption = writer.text("figure", long=length(found.bar.length_m), thrust=force(found.thrust_n, "demand"))
    return spreader_figure(view, caption, writer)


_ALONG = Bounds(above=0, at_most=100)


def _rating(name: str) -> QuantityInput:
    bounds = Bounds(above=0, at_most=1_000_000)
    shown = {"fittings": ("marked",)}
    return QuantityInput(
        name, dimension="force", bounds=bounds, required=False, shown_when=shown, sense="capacity"
    )


WORKSHEET = Worksheet(
    name="spreader",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=200_000), sense="demand"),
        QuantityInput("length", dimension="length", unit="ft", unit_si="m", bounds=_ALONG),
        QuantityInput("sling_angle", dimension="angle", bounds=Bounds(at_least=5, at_most=85)),
        QuantityInput(
            "off_middle", dimension="length", bounds=Bounds(at_least=0, at_most=1_000), sense="demand"
        ),
        QuantityInput("eyes_off", dimension="length", bounds=Bounds(at_least=0, at_most=100), sense="demand"),
        *strut_inputs(),
        NumberInput("design_factor", bounds=Bounds(at_least=1.67, at_most=10), sense="demand"),
        ChoiceInput("fittings", choices=("not-checked", "marked"), default="not-checked", required=False),
        _rating("upper_rating"),
        _rating("lower_rating"),
    ),
    results=(
        Result("part_used", "fraction", "demand"),
        Result("thrust", "force", "demand"),
        Result("buckles_at", "force", "capacity"),
        Result("not_more_than", "weight", "capacity"),
        Result("sling_pull", "force", "demand"),
        Result("end_pull", "force", "demand"),
        Result("fittings_used", "fraction", "demand"),
        Result("euler", "force", "capacity"),
        Result("slenderness", sense="demand"),
        Result("headroom", "length"),
        Result("bar_weight", "weight"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    large="part_used",
    rates=False,
    shares=(WORDS,),
    example={
        "load": "1,900 lb",
        "length": "7 ft",
        "sling_angle": "60",
        "off_middle": "2 in",
        "eyes_off": "1/2 in",
        "section": "square-tube",
        "width": "3 in",
        "wall": "3/16 in",
        "yield_strength": "36,000 psi",
        "design_factor": "3",
        "fittings": "marked",
        "upper_rating": "3,250 lbf",
        "lower_rating": "2,000 lbf",
    },
    citations=(
        Citation("aisc-360", "E2, E3 and H1; H1 from memory"),
        Citation("asme-bth-1", "design factor of category B, from memory"),
    ),
)
