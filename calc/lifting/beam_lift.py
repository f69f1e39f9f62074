"""How hard does my beam bend, and how far does it sag?

An overhead beam or gantry, or a bench, under one load (calc.lifting.beams). A study aid: it knows nothing of buckling,
of the posts, the bolts and the welds, nor of a trolley that runs or jerks.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.beams import BentBeam, beam_figure
from calc.inputs import Bounds, ChoiceInput, Given, NumberInput, QuantityInput
from calc.lifting.beams import ENDS, SECTION_FORMS, Beam, Ends, Section, SectionName
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, to_si
from calc.reasons import Reason, caution, note, stop
from calc.tables import table, value_si
from calc.words.facts import Absent, Number, Quantity, absent, length
from calc.words.writer import Writer

PLAIN_STEEL_YIELD_PSI = 36_000.0
"""Least yield strength of plain structural steel (ASTM A36, from memory)."""

SMALL_SAG = 10.0
"""Span over sag below which no sag is given. There the formulas of small slopes say 1 % (cantilever) to 4 % (two
supports) more than the exact curve of a bent rod; a test sets them beside it."""

LIMP = 200.0
"""Span over sag below which a beam is limp enough for a trolley to roll by itself (common practice, no source)."""

Reach = Literal["elastic", "past-yield", "past-small-sag"]
"""Whether the elastic line holds: yes, no as the stress passes the yield strength, or no as the sag is too great."""


@dataclass(frozen=True)
class _Metal:
    """What the beam is made of: modulus, yield strength and the stress allowed here [Pa], and who prints the modulus."""

    modulus_pa: float
    yield_pa: float
    allowed_pa: float
    source: Citation


def _metal(given: Given) -> _Metal:
    row = table("youngs-modulus").one(material=given.text("material"), quantity="youngs_modulus")
    yields = _yield_pa(given)
    return _Metal(
        value_si(row, "pressure"),
        yields,
        yields / given.si("design_factor"),
        Citation(row["source"], row["locator"]),
    )


def _yield_pa(given: Given) -> float:
    if given.has("yield_strength"):
        return given.si("yield_strength")
    if given.text("material") != "steel":
        raise given.refuse("yield_strength", "yield-missing")
    return to_si(PLAIN_STEEL_YIELD_PSI, "psi", "pressure")


def _section_name(given: Given) -> SectionName:
    return next(name for name in SECTION_FORMS if name == given.text("section"))


def _section(given: Given, name: SectionName) -> Section:
    form = SECTION_FORMS[name]
    for need in form.needs:
        if not given.has(need):
            raise given.refuse(need, "size-missing")
    sizes = {need: given.si(need) for need in form.needs}
    _refuse_misfits(given, name, sizes)
    return form.of(*sizes.values())


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
    outer_fibre_m: float
    metal: _Metal
    own_weight_counted: bool
    reach: Reach
    moment_nm: float
    moment_at_m: float
    stress_pa: float
    stress_share: float
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
    own_kg_per_m = given.maybe("own_weight")
    beam = Beam(
        span_m=given.si("span"),
        ends=ends,
        load_n=given.si("load") * STANDARD_GRAVITY_M_PER_S2,
        position_m=position,
        even_n_per_m=(own_kg_per_m or 0.0) * STANDARD_GRAVITY_M_PER_S2,
        stiffness_nm2=metal.modulus_pa * section.second_moment_m4,
    )
    moment_at, moment = beam.greatest_moment()
    sag_at, sag = beam.greatest_sag()
    stress = moment * section.outer_fibre_m / section.second_moment_m4
    reach = _reach(stress, metal.yield_pa, beam.span_m / sag)
    beyond = absent("beyond-the-formulas")
    return Found(
        beam=beam,
        section=name,
        outer_fibre_m=section.outer_fibre_m,
        metal=metal,
        own_weight_counted=own_kg_per_m is not None,
        reach=reach,
        moment_nm=moment,
        moment_at_m=moment_at,
        stress_pa=stress,
        stress_share=stress / metal.allowed_pa,
        second_moment_m4=section.second_moment_m4,
        deflection_m=sag if reach == "elastic" else beyond,
        deflection_at_m=sag_at if reach == "elastic" else beyond,
        span_over_deflection=beam.span_m / sag if reach == "elastic" else beyond,
    )


def _reach(stress_pa: float, yield_pa: float, span_over_sag: float) -> Reach:
    if exceeds(stress_pa, yield_pa):
        return "past-yield"
    return "past-small-sag" if span_over_sag < SMALL_SAG else "elastic"


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once. A study aid never says ok."""
    reasons: list[Reason] = []
    if found.reach != "elastic":
        reasons.append(Reason(found.reach, "stop", large="stress_share"))
    elif exceeds(found.stress_pa, found.metal.allowed_pa):
        reasons.append(stop("over-allowed-stress"))
    reasons.append(Reason("study-aid", "caution", kind="mandatory"))
    if found.section in ("i-beam", "rectangle"):
        reasons.append(caution("rolls-over-sideways"))
    if found.beam.ends == "fixed":
        reasons.append(caution("hardly-built-in"))
    if not isinstance(found.span_over_deflection, Absent) and found.span_over_deflection < LIMP:
        reasons.append(caution("limp"))
    if not found.own_weight_counted:
        reasons.append(note("own-weight-not-counted"))
    reasons.append(note("hoist-adds"))
    return tuple(reasons)


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
    if found.reach != "elastic":
        return bending
    return (
        *bending,
        step(
            "allowed", allowed=Quantity(found.metal.allowed_pa, "pressure", "capacity", units=("psi", "MPa"))
        ),
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
    return (found.metal.source,) if found.reach == "elastic" else ()


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


_ALONG = Bounds(above=0, at_most=200)
_SIZES = ("depth", "width", "diameter", "wall", "flange_width", "web_thickness", "flange_thickness")

WORKSHEET = Worksheet(
    name="beam-lift",
    inputs=(
        QuantityInput("load", dimension="weight", bounds=Bounds(above=0, at_most=2_000_000)),
        QuantityInput("span", dimension="length", unit="ft", unit_si="m", bounds=_ALONG),
        QuantityInput("position", dimension="length", unit="ft", unit_si="m", bounds=_ALONG, required=False),
        ChoiceInput("ends", choices=ENDS, default="simple"),
        ChoiceInput("section", choices=tuple(SECTION_FORMS)),
        *(_size(name) for name in _SIZES),
        QuantityInput(
            "second_moment",
            dimension="second_moment",
            bounds=Bounds(above=0, at_most=1_000_000),
            required=False,
            shown_when={"section": ("known",)},
        ),
        ChoiceInput(
            "material",
            choices=tuple(row["material"] for row in table("youngs-modulus").rows),
            default="steel",
        ),
        QuantityInput(
            "yield_strength",
            dimension="pressure",
            unit="psi",
            unit_si="MPa",
            bounds=Bounds(above=0, at_most=250_000),
            required=False,
        ),
        NumberInput("design_factor", bounds=Bounds(at_least=1.5, at_most=10), default="3"),
        QuantityInput(
            "own_weight",
            dimension="weight_per_length",
            bounds=Bounds(above=0, at_most=10_000),
            required=False,
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
        Result("second_moment", "second_moment", "capacity"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    large="deflection",
    example={
        "load": "1,600 lb",
        "span": "14 ft",
        "section": "i-beam",
        "depth": "8 in",
        "flange_width": "5-1/4 in",
        "web_thickness": "1/4 in",
        "flange_thickness": "5/16 in",
        "own_weight": "18 lb/ft",
    },
    citations=(Citation("gere", "deflections of beams"),),
)
