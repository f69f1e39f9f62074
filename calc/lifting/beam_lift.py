"""How hard does my beam bend, and how far does it sag?

A bench, a table or a plate under one load (calc.lifting.beams), and the load over which it yields or rolls over sideways
(calc.lifting.beam_buckling). A study aid that rates nothing. Of a beam from which something hangs it tells bending and sag
alone: it knows nothing of posts, bolts and welds, of a trolley on the lower flange, of a pull off plumb, nor of a load that runs
or jerks, and leads to lifting-frame, which does.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.beams import BentBeam, beam_figure
from calc.inputs import Bounds, ChoiceInput, Given, NumberInput, QuantityInput
from calc.lifting.beam_buckling import (
    ON_TOP_LENGTHENS,
    flat_bar_moment_nm,
    i_beam_moment_nm,
    i_shape,
    plates_are_compact,
)
from calc.lifting.beams import (
    ENDS,
    SECTION_FORMS,
    Beam,
    Ends,
    Section,
    SectionName,
    book_section,
    shear_area_m2,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, unknown
from calc.tables import table, value_si
from calc.words.facts import Absent, Message, Number, Quantity, absent, length, message
from calc.words.writer import Writer

STEEL_MODULUS_PA = 200e9
"""Modulus of steel [Pa] in US tables, 29,000 ksi (from memory of the AISC Manual); the physics table prints 210 GPa, which
would tell a smaller sag."""

LEAST_BENDING_FACTOR = 1.67
"""Least factor on the moment at which a beam gives way (AISC 360, F1, allowable strength design)."""

SMALL_SAG = 10.0
"""Span over sag below which no sag is given. There the formulas of small slopes say 1 % (cantilever) to 4 % (two
supports) more than the exact curve of a bent rod; a test sets them beside it."""

OTHER = "other"
"""A material whose modulus the reader gives."""

LIMP = 200.0
"""Span over sag below which a beam is limp enough for a trolley to roll by itself (common practice, no source)."""

Reach = Literal["elastic", "past-yield", "past-small-sag"]
"""Whether the elastic line holds: yes, no as the stress passes the yield strength, or no as the sag is too great."""


@dataclass(frozen=True)
class _Metal:
    """What the beam is made of: modulus [Pa], yield strength [Pa] or None where nobody gave it, the factor on it [-], and who
    prints the modulus.
    """

    name: str
    modulus_pa: float
    yield_pa: float | None
    factor: float
    source: Citation | None

    @property
    def allowed_pa(self) -> float | None:
        """The stress allowed here [Pa]."""
        return None if self.yield_pa is None else self.yield_pa / self.factor


def _metal(given: Given) -> _Metal:
    name, yields, factor = given.text("material"), given.maybe("yield_strength"), given.si("design_factor")
    if name == OTHER:
        if not given.has("modulus"):
            raise given.refuse("modulus", "modulus-missing")
        return _Metal(name, given.si("modulus"), yields, factor, None)
    if given.has("modulus"):
        raise given.refuse("modulus", "modulus-of-a-named-material")
    row = table("youngs-modulus").one(material=name, quantity="youngs_modulus")
    printed = value_si(row, "pressure")
    modulus = min(printed, STEEL_MODULUS_PA) if name == "steel" else printed
    return _Metal(name, modulus, yields, factor, Citation(row["source"], row["locator"]))


def _section_name(given: Given) -> SectionName:
    return next(name for name in SECTION_FORMS if name == given.text("section"))


def _section(given: Given, name: SectionName) -> Section:
    form = SECTION_FORMS[name]
    if name == "known":
        return _book_section(given)
    for need in form.needs:
        if not given.has(need):
            raise given.refuse(need, "size-missing")
    sizes = {need: given.si(need) for need in form.needs}
    _refuse_misfits(given, name, sizes)
    return form.of(*sizes.values())


def _book_section(given: Given) -> Section:
    """A section of a book: its second moment and the distance to its farthest fibre, typed or from its least modulus."""
    if not given.has("second_moment"):
        raise given.refuse("second_moment", "second-moment-missing")
    second = given.si("second_moment")
    by_modulus_m = second / given.si("section_modulus") if given.has("section_modulus") else None
    farthest_m = given.maybe("outer_fibre")
    if farthest_m is None and by_modulus_m is None:
        raise given.refuse("outer_fibre", "fibre-or-modulus")
    if farthest_m is not None and by_modulus_m is not None:
        raise given.refuse("section_modulus", "fibre-and-modulus")
    return book_section(second, farthest_m if farthest_m is not None else by_modulus_m or 0.0)


def _refuse_misfits(given: Given, name: SectionName, sizes: dict[str, float]) -> None:
    if "wall" in sizes and sizes["wall"] > min(size for need, size in sizes.items() if need != "wall") / 2:
        raise given.refuse("wall", "wall-too-thick")
    if name == "i-beam":
        if sizes["web_thickness"] > sizes["flange_width"]:
            raise given.refuse("web_thickness", "web-too-wide")
        if 2 * sizes["flange_thickness"] > sizes["depth"]:
            raise given.refuse("flange_thickness", "flange-too-thick")


def _position(given: Given, ends: Ends) -> float:
    """Where the load hangs [m from the left]; a load over a support of a beam on two of them bends nothing."""
    span = given.si("span")
    if not given.has("position"):
        if ends == "fixed":
            # The worst place for bending is not the worst for sag.
            raise given.refuse("position", "place-missing")
        return span if ends == "cantilever" else span / 2
    position = given.si("position")
    if position > span or (position == span and ends != "cantilever"):
        raise given.refuse("position", "off-the-span")
    return position


@dataclass(frozen=True)
class Found:
    """How the beam bends and, as far as the elastic line holds, how it sags."""

    beam: Beam
    section: SectionName
    overhead: bool
    outer_fibre_m: float
    metal: _Metal
    own_weight_counted: bool
    reach: Reach
    holds_nm: float | Absent
    reaction_left_n: float
    reaction_right_n: float
    not_more_than_kg: float | Absent
    limited_by: Message | Absent
    moment_nm: float
    moment_at_m: float
    stress_pa: float
    stress_share: float | Absent
    second_moment_m4: float
    deflection_m: float | Absent
    deflection_at_m: float | Absent
    span_over_deflection: float | Absent


def find(given: Given) -> Found:
    """Bending, stress and sag of the beam; see WORKSHEET for inputs and results."""
    name = _section_name(given)
    section = _section(given, name)
    ends = next(one for one in ENDS if one == given.text("ends"))
    position = _position(given, ends)
    metal = _metal(given)
    own_kg_per_m = given.si("own_weight")
    beam = Beam(
        span_m=given.si("span"),
        ends=ends,
        load_n=given.si("load") * STANDARD_GRAVITY_M_PER_S2,
        position_m=position,
        even_n_per_m=own_kg_per_m * STANDARD_GRAVITY_M_PER_S2,
        stiffness_nm2=metal.modulus_pa * section.second_moment_m4,
    )
    moment_at, moment = beam.greatest_moment()
    sag_at, sag = beam.greatest_sag()
    stress = moment * section.outer_fibre_m / section.second_moment_m4
    reach = _reach(stress, metal.yield_pa, beam.span_m / sag)
    left_n, right_n = beam.reactions_n()
    holds = _holds_nm(given, name, section, metal)
    overhead = given.text("use") != "bench"
    most = _most(beam, section, metal, holds, _shears_at_n(given, name, metal))
    if overhead:
        most = _Most(absent("goes-to-the-frame"), absent("goes-to-the-frame"))
    beyond = absent("beyond-the-formulas")
    elastic = reach == "elastic"
    return Found(
        beam=beam,
        section=name,
        overhead=overhead,
        outer_fibre_m=section.outer_fibre_m,
        metal=metal,
        own_weight_counted=own_kg_per_m > 0,
        reach=reach,
        holds_nm=holds,
        reaction_left_n=left_n,
        reaction_right_n=right_n,
        not_more_than_kg=most.load_kg,
        limited_by=most.why,
        moment_nm=moment,
        moment_at_m=moment_at,
        stress_pa=stress,
        stress_share=absent("yield-not-known") if metal.allowed_pa is None else stress / metal.allowed_pa,
        second_moment_m4=section.second_moment_m4,
        deflection_m=sag if elastic else beyond,
        deflection_at_m=sag_at if elastic else beyond,
        span_over_deflection=_span_over(beam.span_m / sag, metal, elastic),
    )


def _span_over(ratio: float, metal: _Metal, elastic: bool) -> float | Absent:
    if metal.yield_pa is None:
        return absent("yield-not-known")
    return ratio if elastic else absent("beyond-the-formulas")


def _holds_nm(given: Given, name: SectionName, section: Section, metal: _Metal) -> float | Absent:
    """The moment [N m] at which the beam yields or rolls over sideways; why none is given."""
    if metal.yield_pa is None:
        return absent("yield-not-known")
    yields_nm = metal.yield_pa * section.second_moment_m4 / section.outer_fibre_m
    if name in ("tube", "round-bar"):
        return yields_nm
    if name == "known":
        return absent("section-not-known")
    if name == "box":
        deep = given.si("depth") > DEEP_BOX * given.si("width")
        return absent("deep-box") if deep else yields_nm
    if metal.name != "steel":
        return absent("no-rule-for-the-material")
    free_m = _free_m(given)
    if isinstance(free_m, Absent):
        return free_m
    if name == "rectangle":
        rolls_nm = flat_bar_moment_nm(
            given.si("depth"), given.si("width"), free_m, metal.yield_pa, metal.modulus_pa
        )
        return min(yields_nm, rolls_nm)
    sizes = (
        given.si("depth"),
        given.si("flange_width"),
        given.si("web_thickness"),
        given.si("flange_thickness"),
    )
    if not plates_are_compact(sizes, metal.yield_pa, metal.modulus_pa):
        return absent("thin-plates")
    return min(yields_nm, i_beam_moment_nm(i_shape(*sizes), free_m, metal.yield_pa, metal.modulus_pa))


def _free_m(given: Given) -> float | Absent:
    """The length over which nothing holds the beam from twisting [m]: the whole span unless the reader says what holds it,
    longer where the load may stand on top.
    """
    span = given.si("span")
    free_m = given.si("held_every") if given.has("held_every") else span
    if free_m > span:
        raise given.refuse("held_every", "over-the-span")
    if given.text("load_sits") == "hung-below":
        return free_m
    return absent("load-on-a-cantilever") if given.text("ends") == "cantilever" else ON_TOP_LENGTHENS * free_m


@dataclass(frozen=True)
class _Most:
    """The load over which the beam is surely over what is allowed here [kg], and which limit that is."""

    load_kg: float | Absent
    why: Message | Absent


def _shears_at_n(given: Given, name: SectionName, metal: _Metal) -> float:
    """The shear force [N] at which the section's middle yields, divided by the factor; without bound where it is not known."""
    if metal.yield_pa is None or name == "known":
        return math.inf
    area_m2 = shear_area_m2(name, *(given.si(need) for need in SECTION_FORMS[name].needs))
    return metal.yield_pa / math.sqrt(3) * area_m2 / max(metal.factor, LEAST_BENDING_FACTOR)


def _most(beam: Beam, section: Section, metal: _Metal, holds_nm: float | Absent, shears_n: float) -> _Most:
    """The greatest load at the same place that keeps the moment under what yielding and rolling over leave with the factor,
    and the shear at the ends under what the section's middle bears.
    """
    allowed_pa = metal.allowed_pa
    if isinstance(holds_nm, Absent) or allowed_pa is None:
        why = holds_nm if isinstance(holds_nm, Absent) else absent("yield-not-known")
        return _Most(why, why)
    by_stress = allowed_pa * section.second_moment_m4 / section.outer_fibre_m
    by_rolling = holds_nm / max(metal.factor, LEAST_BENDING_FACTOR)
    allowed = min(by_stress, by_rolling)
    code = "limit-rolls-over" if by_rolling < by_stress * (1 - 1e-9) else "limit-stress"
    bends_n, shears_at_n = _load_for(beam, allowed), _load_for_shear(beam, shears_n)
    if shears_at_n < bends_n:
        bends_n, code = shears_at_n, "limit-shears"
    return _Most(bends_n / STANDARD_GRAVITY_M_PER_S2, message(code))


def _load_for_shear(beam: Beam, shears_n: float) -> float:
    """The load [N] at the same place under which the harder pressed end feels this shear [N]; 0 where the own weight alone is
    over. The shear is greatest at an end, and grows with the load by the same share throughout.
    """
    own, of_load = replace(beam, load_n=0.0).reactions_n(), replace(beam, even_n_per_m=0.0).reactions_n()
    loads = [
        max(0.0, shears_n - end_n) / (load_n / beam.load_n)
        for end_n, load_n in zip(own, of_load, strict=True)
        if load_n > 0.0
    ]
    return min(loads)


def _load_for(beam: Beam, moment_nm: float) -> float:
    """The load [N] at the same place under which the greatest moment is this [N m]; 0 where the own weight alone is over."""
    low, high = 0.0, beam.load_n
    while replace(beam, load_n=high).greatest_moment()[1] < moment_nm:
        low, high = high, 2 * high
    for _ in range(60):
        middle = (low + high) / 2
        if replace(beam, load_n=middle).greatest_moment()[1] <= moment_nm:
            low = middle
        else:
            high = middle
    return low


def _reach(stress_pa: float, yield_pa: float | None, span_over_sag: float) -> Reach:
    if yield_pa is not None and exceeds(stress_pa, yield_pa):
        return "past-yield"
    return "past-small-sag" if span_over_sag < SMALL_SAG else "elastic"


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once. A study aid rates nothing; what is too much is a stop."""
    reasons: list[Reason] = []
    if found.overhead:
        large = "deflection" if found.reach == "elastic" else _large(found)
        reasons.append(Reason("overhead", "unknown", large=large))
    over_allowed = not isinstance(found.stress_share, Absent) and exceeds(found.stress_share, 1.0)
    if found.reach != "elastic":
        reasons.append(replace(_too_much(found, found.reach), large=_large(found)))
    if over_allowed and found.reach != "past-yield":
        reasons.append(_too_much(found, "over-allowed-stress"))
    if isinstance(found.not_more_than_kg, Absent):
        weighs = unknown if found.metal.yield_pa is None and found.reach == "elastic" else caution
        reasons.append(weighs("no-limit-found", why=found.not_more_than_kg))
    elif exceeds(found.beam.load_n, found.not_more_than_kg * STANDARD_GRAVITY_M_PER_S2):
        reasons.append(_too_much(found, "over-what-it-takes"))
    reasons.append(note("study-aid", "mandatory"))
    if found.section in ("i-beam", "rectangle", "known"):
        reasons.append(note("rolls-over-sideways", "warning"))
    if found.beam.ends == "fixed":
        reasons.append(caution("hardly-built-in"))
    if not isinstance(found.span_over_deflection, Absent) and found.span_over_deflection < LIMP:
        reasons.append(caution("limp"))
    if not found.own_weight_counted:
        reasons.append(note("own-weight-not-counted"))
    reasons.append(note("hoist-adds"))
    return tuple(reasons)


def _too_much(found: Found, code: str) -> Reason:
    """More is asked than the beam takes. A beam from which something hangs is not judged here, so there it decides nothing."""
    return note(code, "prohibition") if found.overhead else over(code)


def _large(found: Found) -> str:
    return "stress" if isinstance(found.stress_share, Absent) else "stress_share"


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working: bending and stress; what is allowed, and the sag, as far as the elastic line holds."""
    bending = (
        step("bending"),
        step(
            "stress",
            bending=Quantity(found.moment_nm, "torque"),
            outer=length(found.outer_fibre_m),
            second=Quantity(found.second_moment_m4, "second_moment"),
        ),
    )
    limits: list[Step] = []
    if found.metal.allowed_pa is not None:
        allowed = Quantity(found.metal.allowed_pa, "pressure", "capacity", units=("psi", "MPa"))
        limits.append(step("allowed", allowed=allowed))
    if not isinstance(found.holds_nm, Absent) and not found.overhead:
        limits.append(
            step(
                "gives-way",
                holds=Quantity(found.holds_nm, "torque", "capacity"),
                factor=Number(max(found.metal.factor, LEAST_BENDING_FACTOR), 3),
            )
        )
    if found.reach != "elastic":
        return (*bending, *limits)
    return (
        *bending,
        *limits,
        step("sag", modulus=Quantity(found.metal.modulus_pa, "pressure", units=("psi", "GPa"))),
    )


def draw(found: Found, writer: Writer) -> Figure | None:
    """The beam to scale over its span; none where no sag is given."""
    if isinstance(found.deflection_m, Absent) or isinstance(found.deflection_at_m, Absent):
        return None
    beam = found.beam
    bent = BentBeam(
        beam.span_m,
        beam.ends,
        beam.load_n,
        beam.position_m,
        found.deflection_at_m,
        found.deflection_m,
        beam.sag_m,
    )
    caption = writer.text(
        "figure",
        span=length(beam.span_m),
        times=Number(bent.enlarged, places=0),
        bends_at=length(found.moment_at_m),
        sags_at=length(found.deflection_at_m),
    )
    sags = writer.text("figure-sags", sag=length(found.deflection_m, "demand"))
    return beam_figure(bent, sags, caption, writer)


def cite(found: Found) -> tuple[Citation, ...]:
    """Who prints the modulus that the sag rests on."""
    return (found.metal.source,) if found.metal.source and found.reach == "elastic" else ()


def _size(name: str) -> QuantityInput:
    """A length that some sections need."""
    used = tuple(section for section, form in SECTION_FORMS.items() if name in form.needs)
    return QuantityInput(
        name,
        dimension="length",
        bounds=Bounds(above=0, at_most=200),
        required=False,
        shown_when={"section": used},
    )


DEEP_BOX = 2.0
"""Depth over width of a rectangular tube up to which it is taken not to roll over (our own bound; derived in overhead_beam)."""

_ALONG = Bounds(above=0, at_most=200)
_SIZES = ("depth", "width", "diameter", "wall", "flange_width", "web_thickness", "flange_thickness")

WORKSHEET = Worksheet(
    name="beam-lift",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=2_000_000), sense="demand"),
        ChoiceInput("use", choices=("overhead", "bench"), default="overhead", required=False),
        QuantityInput("span", dimension="length", unit="ft", unit_si="m", bounds=_ALONG),
        QuantityInput("position", dimension="length", unit="ft", unit_si="m", bounds=_ALONG, required=False),
        ChoiceInput("ends", choices=ENDS),
        QuantityInput(
            "held_every",
            dimension="length",
            unit="ft",
            unit_si="m",
            bounds=_ALONG,
            required=False,
            shown_when={"section": ("i-beam", "rectangle")},
        ),
        ChoiceInput(
            "load_sits",
            choices=("hung-below", "on-top"),
            required=False,
            shown_when={"section": ("i-beam", "rectangle")},
        ),
        ChoiceInput("section", choices=tuple(SECTION_FORMS)),
        *(_size(name) for name in _SIZES),
        QuantityInput(
            "second_moment",
            dimension="second_moment",
            bounds=Bounds(above=0, at_most=1_000_000),
            required=False,
            shown_when={"section": ("known",)},
        ),
        QuantityInput(
            "outer_fibre",
            dimension="length",
            bounds=Bounds(above=0, at_most=200),
            required=False,
            shown_when={"section": ("known",)},
        ),
        QuantityInput(
            "section_modulus",
            dimension="volume",
            unit="in3",
            unit_si="cm3",
            bounds=Bounds(above=0, at_most=1_000_000),
            required=False,
            shown_when={"section": ("known",)},
        ),
        ChoiceInput(
            "material",
            choices=(*(row["material"] for row in table("youngs-modulus").rows), OTHER),
        ),
        QuantityInput(
            "modulus",
            dimension="pressure",
            unit="psi",
            unit_si="GPa",
            bounds=Bounds(above=0, at_most=100_000_000),
            required=False,
            shown_when={"material": (OTHER,)},
            sense="capacity",
        ),
        QuantityInput(
            "yield_strength",
            dimension="pressure",
            unit="psi",
            unit_si="MPa",
            bounds=Bounds(above=0, at_most=250_000),
            required=False,
        ),
        NumberInput("design_factor", bounds=Bounds(at_least=1.5, at_most=10), sense="demand"),
        QuantityInput(
            "own_weight",
            dimension="weight_per_length",
            bounds=Bounds(at_least=0, at_most=10_000),
            sense="demand",
        ),
    ),
    results=(
        Result("deflection", "length", "demand"),
        Result("span_over_deflection", sense="capacity"),
        Result("deflection_at", "length"),
        Result("moment", "torque", "demand"),
        Result("moment_at", "length"),
        Result("stress", "pressure", "demand", "psi", "MPa"),
        Result("stress_share", "fraction", "demand"),
        Result("not_more_than", "weight", "capacity"),
        Result("limited_by"),
        Result("reaction_left", "force"),
        Result("reaction_right", "force"),
        Result("second_moment", "second_moment", "capacity"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    large="deflection",
    rates=False,
    example={
        "load": "1,600 lb",
        "use": "bench",
        "span": "14 ft",
        "ends": "simple",
        "section": "i-beam",
        "depth": "8 in",
        "flange_width": "5-1/4 in",
        "web_thickness": "1/4 in",
        "flange_thickness": "5/16 in",
        "load_sits": "hung-below",
        "material": "steel",
        "yield_strength": "36,000 psi",
        "design_factor": "3",
        "own_weight": "18 lb/ft",
    },
    citations=(Citation("gere", "deflections of beams"),),
)
