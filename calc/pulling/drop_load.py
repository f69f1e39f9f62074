"""How hard does a load jerk its sling when it drops?

A load that slips a little before the slack is taken up pulls many times its weight: n = 1 + sqrt(1 + 2h / stretch)
(Gere, Mechanics of Materials, section 2.8; Hibbeler, Mechanics of Materials, section 14.4). The stretch at rest is given, or
worked out for a chain. Nobody has measured the modulus of chain in shop sizes: the pull lies between that of large mooring
chain and that of two bars of solid steel, which no chain passes; the larger one leads.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.pull_graphs import Drop, drop_figure
from calc.inputs import Bounds, Given, QuantityInput, TextInput
from calc.inspecting.chain_marks import ChainSize, chain_sizes, may_lift, size_named
from calc.inspecting.chain_ratings import lifting_ratings
from calc.inspecting.nominal_wire import nominal_m
from calc.lifting.chain_spring import (
    most_of_chain_kg,
    solid_modulus_citation,
    solid_modulus_pa,
    solid_stiffness_n,
)
from calc.lifting.condition import GOOD, WORDS, condition_input, condition_of, judge_condition
from calc.lifting.grade_input import GradeInput
from calc.pulling.energy import (
    chain_modulus_citation,
    chain_stiffness_n_per_m,
    drop_factor,
    drop_speed_m_per_s,
    stretch_m,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, shows_capacity, stop, unknown
from calc.words.facts import Absent, Cell, Fact, Listing, Quantity, absent, force, length, message, weight
from calc.words.writer import Writer


@dataclass(frozen=True)
class Chain:
    """A chain as a spring: wire [m] and length [m]."""

    wire_m: float
    length_m: float

    def least_stretch_m(self, force_n: float) -> float:
        """The least stretch [m] under a force [N]: solid steel on both sides of the link."""
        return stretch_m(force_n, solid_stiffness_n(self.wire_m) / self.length_m)

    def soft_stretch_m(self, force_n: float) -> float:
        """The stretch [m] under a force [N] by the modulus of large mooring chain."""
        return stretch_m(force_n, chain_stiffness_n_per_m(self.wire_m, self.length_m))


AGREES = 0.01
"""A tag and a table agree within this share [-]: what rounding to another unit leaves (our own mark, no source)."""
SOFTEST = 2.0
"""A chain may stretch so many times what the modulus of large mooring chain gives (our own mark, no source): what is more was
measured on something else, and would tell a softer jerk.
"""
NOT_CHAIN = "not-chain"


@dataclass(frozen=True)
class Found:
    """What the drop does to the sling. `chain` is there where the stretch was worked out for it; `grade` as it was said."""

    condition: str
    grade: str
    weight_kg: float
    drop_height_m: float
    chain: Chain | Absent
    factor: float
    peak_force_n: float
    peak_force_low_n: float | Absent
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
        _like_chain(given, size)
        return absent("stretch-given")
    if size is None:
        raise given.refuse("stretch", "stretch-missing")
    if not given.has("length"):
        raise given.refuse("length", "length-missing")
    return Chain(nominal_m(size), given.si("length"))


def _like_chain(given: Given, size: ChainSize | None) -> None:
    """Refuse a stretch that no chain of that size and length has: less than solid bars, or far more than large chain."""
    if size is None or not given.has("length"):
        return
    weight_n = given.si("weight") * STANDARD_GRAVITY_M_PER_S2
    chain = Chain(nominal_m(size), given.si("length"))
    least_m, most_m = chain.least_stretch_m(weight_n), SOFTEST * chain.soft_stretch_m(weight_n)
    if given.si("stretch") < least_m:
        raise given.refuse("stretch", "less-than-steel", least=length(least_m))
    if exceeds(given.si("stretch"), most_m):
        raise given.refuse("stretch", "more-than-chain", most=length(most_m))


def _grade(given: Given) -> str:
    """The grade as the tables have it; the choice M is European grade 4, whose number is stamped on grade 43 too."""
    said = given.text("grade")
    return "4" if said == "M" else said


@dataclass(frozen=True)
class _Rating:
    """Rating [kg], or why there is none, and where it is printed."""

    rating_kg: float | Absent
    sources: tuple[Citation, ...] = ()


def _rating(given: Given, size: ChainSize | None) -> _Rating:
    """Of the chain by grade and size, with which a tag must agree; else by the tag, where it is no chain that ties down."""
    grade = _grade(given)
    if not grade:
        return _Rating(absent("grade-not-said" if given.has("rating") else "none-given"))
    if grade == NOT_CHAIN:
        return _Rating(given.si("rating") if given.has("rating") else absent("none-given"))
    if not may_lift(grade):
        return _Rating(absent("no-lifting-rating", mark=grade))
    found = lifting_ratings(grade, size) if size is not None else ()
    if not found:
        return _Rating(_by_tag(given, grade, size))
    lowest = min(found, key=lambda one: one.working_load_limit_kg)
    table_kg = lowest.working_load_limit_kg
    if given.has("rating") and abs(given.si("rating") / table_kg - 1.0) > AGREES:
        raise given.refuse("rating", "tag-against-table", printed=weight(table_kg, "capacity", 4))
    return _Rating(table_kg, (Citation(lowest.source, lowest.locator),))


def _by_tag(given: Given, grade: str, size: ChainSize | None) -> float | Absent:
    """The figure on the tag [kg] of a chain that no table rates; refused where no chain of its size and grade bears it."""
    if not given.has("rating"):
        return absent("none-given")
    if size is not None:
        most_kg = most_of_chain_kg(nominal_m(size), grade)
        if exceeds(given.si("rating"), most_kg):
            raise given.refuse("rating", "more-than-such-chain", most=weight(most_kg, "capacity"))
    return given.si("rating")


def find(given: Given) -> Found:
    """The peak pull of the drop; see WORKSHEET for inputs and results."""
    weight_kg, height_m = given.si("weight"), given.si("drop_height")
    weight_n = weight_kg * STANDARD_GRAVITY_M_PER_S2
    size = _size(given)
    chain = _chain(given, size)
    static_m = given.si("stretch") if isinstance(chain, Absent) else chain.least_stretch_m(weight_n)
    factor = drop_factor(height_m, static_m)
    rating, condition = _rating(given, size), condition_of(given)
    usable = shows_capacity(judge_condition(condition))
    rating_kg = rating.rating_kg if usable else absent("not-of-this-part")
    return Found(
        condition=condition,
        grade=_grade(given),
        weight_kg=weight_kg,
        drop_height_m=height_m,
        chain=chain,
        factor=factor,
        peak_force_n=factor * weight_n,
        peak_force_low_n=_low_n(chain, weight_n, height_m),
        static_stretch_m=static_m,
        peak_stretch_m=static_m * factor,
        speed_m_per_s=drop_speed_m_per_s(height_m, STANDARD_GRAVITY_M_PER_S2),
        rating_kg=rating_kg,
        use_percent=_use(factor * weight_n, rating_kg),
        sources=rating.sources,
    )


def _low_n(chain: Chain | Absent, weight_n: float, height_m: float) -> float | Absent:
    """The peak pull [N] if the chain stretches like large mooring chain."""
    if isinstance(chain, Absent):
        return chain
    return drop_factor(height_m, chain.soft_stretch_m(weight_n)) * weight_n


def _use(peak_n: float, rating_kg: float | Absent) -> float | Absent:
    """Share of the rating that the peak uses [-]."""
    if isinstance(rating_kg, Absent):
        return absent("no-rating")
    return peak_n / (rating_kg * STANDARD_GRAVITY_M_PER_S2)


def judge(found: Found) -> tuple[Reason, ...]:
    """The peak against the rating. A rating is for a steady pull, so no drop is within it."""
    reasons = [
        *judge_condition(found.condition),
        *_against_rating(found),
        note("inspect-the-string", "mandatory"),
    ]
    reasons.append(note("breaks-without-warning", "warning"))
    if not isinstance(found.peak_force_low_n, Absent):
        reasons.append(note("modulus-of-large-chain"))
    return tuple(reasons)


def _against_rating(found: Found) -> list[Reason]:
    rating = found.rating_kg
    if found.grade not in ("", NOT_CHAIN) and not may_lift(found.grade):
        return [stop("ties-down-only", mark=found.grade)]
    if isinstance(rating, Absent):
        if found.condition != GOOD:
            return []
        return [unknown("grade-not-said" if rating.code == "grade-not-said" else "no-rating")]
    over_rating = not isinstance(found.use_percent, Absent) and exceeds(found.use_percent, 1.0)
    return [over("over-rating") if over_rating else caution("under-rating")]


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
        modulus=Quantity(solid_modulus_pa(), "pressure", units=("GPa", "GPa")),
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
    return (*found.sources, solid_modulus_citation(), chain_modulus_citation())


_WEIGHT = Bounds(above=0, at_most=2_000_000)

WORKSHEET = Worksheet(
    name="drop-load",
    inputs=(
        condition_input(),
        QuantityInput("weight", dimension="weight", bounds=_WEIGHT, sense="demand"),
        QuantityInput(
            "drop_height", dimension="length", bounds=Bounds(at_least=0, at_most=2000), sense="demand"
        ),
        QuantityInput("stretch", dimension="length", bounds=Bounds(above=0, at_most=400), required=False),
        GradeInput(
            "grade", choices=("80", "100", "70", "43", "30", "8", "5", "M", NOT_CHAIN), required=False
        ),
        TextInput("size", required=False),
        QuantityInput(
            "length",
            dimension="length",
            unit="ft",
            unit_si="m",
            bounds=Bounds(above=0, at_most=1000),
            required=False,
        ),
        QuantityInput("rating", dimension="weight", bounds=_WEIGHT, required=False, sense="capacity"),
    ),
    results=(
        Result("peak_force", "force", "demand"),
        Result("peak_force_low", "force"),
        Result("factor"),
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
    shares=(WORDS,),
    example={
        "condition": "marked-good",
        "weight": "870 lb",
        "drop_height": "3 in",
        "grade": "80",
        "size": "5/16",
        "length": "6.5 ft",
    },
    citations=(Citation("gere", "s. 2.8, impact loading"),),
)
