"""How hard does a load jerk its sling when it drops?

A load that slips a little before the slack is taken up pulls many times its weight: n = 1 + sqrt(1 + 2h / stretch)
(Gere, Mechanics of Materials, section 2.8; Hibbeler, Mechanics of Materials, section 14.4). The stretch at rest is given, or
worked out for a chain by its modulus.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.pull_graphs import Drop, drop_figure
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput, TextInput
from calc.inspecting.chain_marks import ChainSize, chain_sizes, may_lift, size_named
from calc.inspecting.chain_ratings import lifting_ratings
from calc.inspecting.nominal_wire import nominal_m
from calc.pulling.energy import (
    chain_modulus_citation,
    chain_modulus_pa,
    chain_stiffness_n_per_m,
    drop_factor,
    drop_speed_m_per_s,
    stretch_m,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, stop
from calc.words.facts import Absent, Cell, Fact, Listing, Quantity, absent, force, length, message, weight
from calc.words.writer import Writer


@dataclass(frozen=True)
class Chain:
    """A chain as a spring: wire [m], length [m], modulus on both sides of the link [Pa]."""

    wire_m: float
    length_m: float
    modulus_pa: float

    def stretch_m(self, force_n: float) -> float:
        """Stretch [m] under a force [N]."""
        return stretch_m(force_n, chain_stiffness_n_per_m(self.wire_m, self.length_m))


@dataclass(frozen=True)
class Found:
    """What the drop does to the sling. `chain` is there where the stretch was worked out for it."""

    weight_kg: float
    drop_height_m: float
    chain: Chain | Absent
    factor: float
    peak_force_n: float
    static_stretch_m: float
    peak_stretch_m: float
    speed_m_per_s: float
    rating_kg: float | Absent
    use_percent: float | Absent
    sources: tuple[Citation, ...]

    @property
    def weight_n(self) -> float:
        """Pull of the load at rest [N]."""
        return self.weight_kg * STANDARD_GRAVITY_M_PER_S2


def _size(given: Given) -> ChainSize | None:
    if not given.has("size"):
        return None
    size = size_named(given.text("size"))
    if size is None:
        sizes = Listing(tuple(_size_words(one) for one in chain_sizes()))
        raise given.refuse("size", "not-a-size", sizes=sizes)
    return size


def _size_words(size: ChainSize) -> Fact:
    inch = Listing(tuple(Cell(name, "in") for name in size.inch_names), "or")
    return message("chain-size", inch=inch, metric=Cell(size.metric_name, "mm"))


def _chain(given: Given, size: ChainSize | None) -> Chain | Absent:
    """The chain, where no stretch was given; refuses if too little is known of it."""
    if given.has("stretch"):
        return absent("stretch-given")
    if size is None:
        raise given.refuse("stretch", "stretch-missing")
    if not given.has("length"):
        raise given.refuse("length", "length-missing")
    wire_m = nominal_m(size)
    return Chain(wire_m, given.si("length"), chain_modulus_pa(wire_m))


@dataclass(frozen=True)
class _Rating:
    """Rating [kg], or why there is none, and where it is printed."""

    rating_kg: float | Absent
    sources: tuple[Citation, ...] = ()


def _rating(given: Given, size: ChainSize | None) -> _Rating:
    """As given, else of the chain by grade and size."""
    if given.has("rating"):
        return _Rating(given.si("rating"))
    lifts = may_lift(given.text("grade")) if given.has("grade") else None
    if lifts is False:
        return _Rating(absent("no-lifting-rating", mark=given.text("grade")))
    found = lifting_ratings(given.text("grade"), size) if lifts and size is not None else ()
    if not found:
        return _Rating(absent("none-given"))
    lowest = min(found, key=lambda one: one.working_load_limit_kg)
    return _Rating(lowest.working_load_limit_kg, (Citation(lowest.source, lowest.locator),))


def find(given: Given) -> Found:
    """The peak pull of the drop; see WORKSHEET for inputs and results."""
    weight_kg, height_m = given.si("weight"), given.si("drop_height")
    weight_n = weight_kg * STANDARD_GRAVITY_M_PER_S2
    size = _size(given)
    chain = _chain(given, size)
    static_m = given.si("stretch") if isinstance(chain, Absent) else chain.stretch_m(weight_n)
    factor = drop_factor(height_m, static_m)
    rating = _rating(given, size)
    return Found(
        weight_kg=weight_kg,
        drop_height_m=height_m,
        chain=chain,
        factor=factor,
        peak_force_n=factor * weight_n,
        static_stretch_m=static_m,
        peak_stretch_m=static_m * factor,
        speed_m_per_s=drop_speed_m_per_s(height_m, STANDARD_GRAVITY_M_PER_S2),
        rating_kg=rating.rating_kg,
        use_percent=_use(factor * weight_n, rating.rating_kg),
        sources=rating.sources,
    )


def _use(peak_n: float, rating_kg: float | Absent) -> float | Absent:
    """Share of the rating that the peak uses [-]."""
    if isinstance(rating_kg, Absent):
        return absent("no-rating")
    return peak_n / (rating_kg * STANDARD_GRAVITY_M_PER_S2)


def judge(found: Found) -> tuple[Reason, ...]:
    """The peak against the rating. A rating is for a steady pull, so no drop is within it."""
    reasons = [_against_rating(found), note("inspect-the-string", "mandatory")]
    reasons.append(note("breaks-without-warning", "warning"))
    if not isinstance(found.chain, Absent):
        reasons.append(note("modulus-of-large-chain"))
    return tuple(reasons)


def _against_rating(found: Found) -> Reason:
    rating = found.rating_kg
    if isinstance(rating, Absent):
        barred = rating.code == "no-lifting-rating"
        return stop("ties-down-only", **rating.facts) if barred else caution("no-rating")
    over = not isinstance(found.use_percent, Absent) and exceeds(found.use_percent, 1.0)
    return stop("over-rating") if over else caution("under-rating")


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    return (_stretch_step(found), step("factor"), step("peak", pull=force(found.weight_n)))


def _stretch_step(found: Found) -> Step:
    chain = found.chain
    if isinstance(chain, Absent):
        return step("stretch-given")
    return step(
        "stretch-of-chain",
        pull=force(found.weight_n),
        long=length(chain.length_m),
        modulus=Quantity(chain.modulus_pa, "pressure", units=("GPa", "GPa")),
        wire=length(chain.wire_m),
    )


def draw(found: Found, writer: Writer) -> Figure:
    """Pull against travel."""
    drop = Drop(
        found.drop_height_m,
        found.static_stretch_m,
        found.peak_stretch_m,
        found.weight_kg,
        found.peak_force_n,
    )
    caption = writer.text(
        "figure",
        drop=length(drop.height_m),
        pull=force(drop.peak_n, "demand"),
        peak=length(drop.peak_m),
        rest=length(drop.static_m),
        load=weight(drop.weight_kg),
    )
    return drop_figure(drop, caption, writer)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where rating and modulus stand."""
    if isinstance(found.chain, Absent):
        return found.sources
    return (*found.sources, chain_modulus_citation())


_WEIGHT = Bounds(above=0, at_most=2_000_000)

WORKSHEET = Worksheet(
    name="drop-load",
    inputs=(
        QuantityInput("weight", dimension="weight", bounds=_WEIGHT),
        QuantityInput("drop_height", dimension="length", bounds=Bounds(at_least=0, at_most=2000)),
        QuantityInput("stretch", dimension="length", bounds=Bounds(above=0, at_most=400), required=False),
        ChoiceInput("grade", choices=("80", "100", "70", "43", "30", "8", "5", "4"), required=False),
        TextInput("size", required=False),
        QuantityInput(
            "length",
            dimension="length",
            unit="ft",
            unit_si="m",
            bounds=Bounds(above=0, at_most=1000),
            required=False,
        ),
        QuantityInput("rating", dimension="weight", bounds=_WEIGHT, required=False),
    ),
    results=(
        Result("peak_force", "force", "demand"),
        Result("factor", sense="demand"),
        Result("use_percent", "fraction", "demand"),
        Result("rating", "weight", "capacity", digits=4),
        Result("static_stretch", "length"),
        Result("peak_stretch", "length"),
        Result("speed", "speed", unit="ft/s", unit_si="m/s"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    large="peak_force",
    example={"weight": "870 lb", "drop_height": "3 in", "grade": "80", "size": "5/16", "length": "6.5 ft"},
    citations=(Citation("gere", "s. 2.8, impact loading"),),
)
