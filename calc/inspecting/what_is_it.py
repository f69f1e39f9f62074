"""What chain is this, and what may it do?

From the wire as measured, the inside length of a link and the marks on it to the sizes and grades it can be, and the
rating for each use. Marks and tie-down limits: 49 CFR 393.108. Lifting: OSHA, Guidance on Safe Sling Use, Tables 1
and 2. Where several sizes or grades fit, the lowest rating holds.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.inspection import LinkShape, link_figure
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput, TextInput
from calc.inspecting.chain_marks import (
    ChainSize,
    Marks,
    chain_sizes,
    may_lift,
    pitch_fits,
    read_marks,
    sizes_of_wire,
)
from calc.inspecting.chain_ratings import lifting_ratings, tie_down_ratings
from calc.inspecting.nominal_wire import nominal_m, wire_gone
from calc.inspecting.thickness import worn_out
from calc.ratings import Rating
from calc.reasons import Reason, caution, note, stop, unknown
from calc.tables import table
from calc.words.facts import Absent, Fact, Listing, Message, Option, Quantity, absent, length, message, share
from calc.words.writer import Writer

SOUND, WORN = "sound", "worn"
ALTERED = ("welded", "heated", "cracked", "bent", "home-made")
CONDITIONS = (SOUND, WORN, *ALTERED)
UNMARKED_GRADE = "30"
"""The grade that unmarked welded steel chain counts as when it ties a load down (49 CFR 393.108(d))."""
MEASURES_AS_NEW = 0.02
"""Wire gone up to this share [-] is called new (our own mark, no source)."""
BADLY_WORN = 0.05
"""Over this share of the wire gone [-] the size is asked again (our own mark, no source)."""
_NEAR_TWINS_MM = ("7", "8", "10", "13", "16")
"""Metric sizes that have an inch size close by."""


@dataclass(frozen=True)
class _Chain:
    """What the chain can be: sizes (smallest first), marks, and the size named by a mark that the wire denies."""

    sizes: tuple[ChainSize, ...]
    marks: Marks
    size_mark_denied: bool
    pitch_excludes: tuple[ChainSize, ...]


def _chain(given: Given) -> _Chain:
    measured = given.si("measured_diameter")
    marks = read_marks(given.text("marks"))
    of_wire = _made(marks, sizes_of_wire(measured))
    if not of_wire:
        smallest, largest = chain_sizes()[0], chain_sizes()[-1]
        raise given.refuse("measured_diameter", "fits-no-chain", smallest=smallest.said, largest=largest.said)
    sizes = _of_pitch(given, marks, of_wire)
    named = tuple(size for size in sizes if size in marks.sizes)
    if marks.sizes and not named and any(size in marks.sizes for size in of_wire):
        raise given.refuse("pitch", "does-not-go-with-size-mark")
    excluded = tuple(size for size in of_wire if size not in sizes)
    denied = any(size not in sizes for size in marks.sizes) or len(named) > 1
    return _Chain(named or sizes, marks, denied, excluded)


def _of_pitch(given: Given, marks: Marks, sizes: tuple[ChainSize, ...]) -> tuple[ChainSize, ...]:
    """The sizes whose links are that long; all of them where the length was not measured."""
    pitch = given.maybe("pitch")
    if pitch is None:
        return sizes
    lifting_only = bool(marks.grades) and all(may_lift(grade) for grade in marks.grades)
    fitting = tuple(size for size in sizes if pitch_fits(pitch, size, lifting_only))
    if not fitting:
        raise given.refuse("pitch", "does-not-go-with-wire")
    return fitting


def _made(marks: Marks, sizes: tuple[ChainSize, ...]) -> tuple[ChainSize, ...]:
    """Leave out larger sizes in which no table has chain of the marked grades. Smaller ones stay: they only lower."""
    rated = [
        size
        for size in sizes
        if any(lifting_ratings(grade, size) or tie_down_ratings(grade, size) for grade in marks.grades)
    ]
    return tuple(
        size for size in sizes if not rated or size in rated or size.thickest_m < rated[0].thickest_m
    )


@dataclass(frozen=True)
class Found:
    """What the chain can be, and what it may do: a rating for each use or why there is none. `holds`: what stands against
    any rating, whatever the use, the heaviest first.
    """

    chain: _Chain
    condition: str
    use: str
    measured_m: float
    pitch_m: float | None
    holds: tuple[str, ...]
    lift: Rating | Absent
    tie_down: Rating | Absent
    lift_barred: bool
    rating_lift_kg: float | Absent
    rating_tie_down_kg: float | Absent
    grade: Message | Absent
    size: Message | Absent
    candidates: tuple[Message, ...]
    least_wear: float
    most_wear: float
    why: tuple[Message, ...]

    @property
    def out_of_use(self) -> bool:
        """Whether the chain is out of use, whatever its marks say."""
        return any(code in _STOPS for code in self.holds)

    @property
    def doubtful(self) -> bool:
        """Whether size or grade leave a doubt."""
        return len(self.chain.sizes) > 1 or len(self.chain.marks.grades) != 1


_STOPS = ("altered", "worn-out")


def _holds(chain: _Chain, condition: str, measured_m: float) -> tuple[str, ...]:
    """What stands against any rating: the heaviest first."""
    marks = chain.marks
    thin = [worn_out(measured_m, size) for size in marks.sizes or chain.sizes]
    too_thin = any(thin) if marks.sizes else all(thin)
    found = {
        "altered": condition in ALTERED,
        "worn-out": too_thin,
        "not-looked-over": not condition,
        "worn": condition == WORN,
        "marks-not-looked-at": not marks.looked,
        "marks-not-understood": bool(marks.not_read),
        "may-be-worn-out": any(thin) and not too_thin,
        "size-mark-denied": chain.size_mark_denied and not too_thin,
    }
    return tuple(code for code, holds in found.items() if holds)


def find(given: Given) -> Found:
    """What the chain can be and may do; see WORKSHEET for inputs and results."""
    chain = _chain(given)
    measured, condition, use = given.si("measured_diameter"), given.text("condition"), given.text("use")
    holds = _holds(chain, condition, measured)
    lift, barred = _lift(chain)
    tie_down = _tie_down(chain)
    if holds:
        lift = lift if barred and holds[0] not in _STOPS else absent(f"held-{holds[0]}")
        tie_down = absent(f"held-{holds[0]}")
    elif use == "tie_down" and isinstance(tie_down, Absent) and not barred:
        lift = absent("not-the-use-asked")
    wears = [wire_gone(measured, size) for size in chain.sizes]
    grades = chain.marks.grades
    return Found(
        chain=chain,
        condition=condition,
        use=use,
        measured_m=measured,
        pitch_m=given.maybe("pitch"),
        holds=holds,
        lift=lift,
        tie_down=tie_down,
        lift_barred=barred or any(code in _STOPS for code in holds),
        rating_lift_kg=_kg(lift),
        rating_tie_down_kg=_kg(tie_down),
        grade=message("grades", grades=_any_of(grades)) if grades else absent("no-grade-mark"),
        size=chain.sizes[0].said if len(chain.sizes) == 1 else absent("more-than-one-fits"),
        candidates=tuple(_candidate(size, wear) for size, wear in zip(chain.sizes, wears, strict=True)),
        least_wear=min(wears),
        most_wear=max(wears),
        why=_why(chain, condition, lift, tie_down),
    )


def _kg(rating: Rating | Absent) -> float | Absent:
    return rating if isinstance(rating, Absent) else rating.working_load_limit_kg


def _any_of(grades: Sequence[str]) -> Listing:
    return Listing(tuple(grades), "any")


def _candidate(size: ChainSize, wear: float) -> Message:
    if wear < MEASURES_AS_NEW:
        return message("candidate-as-new", size=size.said)
    return message("candidate-worn", size=size.said, wear=share(wear, digits=2))


def _lift(chain: _Chain) -> tuple[Rating | Absent, bool]:
    """Lifting: the rating or why there is none, and whether law or standard bars it outright."""
    grades = chain.marks.grades
    if not grades:
        return absent("no-lifting-use-unmarked"), chain.marks.looked
    barred = [grade for grade in grades if may_lift(grade) is False]
    if barred:
        return absent("no-lifting-use", grades=_any_of(barred)), True
    rating = _lowest(lifting_ratings, grades, chain.sizes)
    return (absent("no-table-rates", grades=_any_of(grades)) if rating is None else rating), False


def _tie_down(chain: _Chain) -> Rating | Absent:
    """Tying down: the rating that the law prints, or why there is none."""
    legal = table("chain-tie-down").values("grade")
    marked = chain.marks.grades
    grades = [grade for grade in marked if grade in legal] if marked else [UNMARKED_GRADE]
    if not grades:
        return absent("law-has-no-mark")
    rating = _lowest(tie_down_ratings, grades, chain.sizes)
    return absent("law-has-no-size") if rating is None else rating


def _lowest(
    rating: Callable[[str, ChainSize], tuple[Rating, ...]],
    grades: Sequence[str],
    sizes: tuple[ChainSize, ...],
) -> Rating | None:
    """The lowest rating of all sizes and grades that the chain may be.

    A larger size that a grade is not made in is passed over; None if nothing rates the smallest size, for then a
    higher figure would be a guess.
    """
    found = [rating(grade, size) for size in sizes for grade in grades]
    if not any(found[: len(grades)]):
        return None
    return min((one for ratings in found for one in ratings), key=lambda one: one.working_load_limit_kg)


def _why(
    chain: _Chain, condition: str, lift: Rating | Absent, tie_down: Rating | Absent
) -> tuple[Message, ...]:
    marks = chain.marks
    why = []
    if marks.looked and not marks.grades:
        why.append(message("why-no-grade"))
    if len(marks.grades) > 1:
        why.append(message("why-several-grades", grades=_any_of(marks.grades)))
    if marks.not_read:
        why.append(message("why-not-read", words=Listing(marks.not_read)))
    if len(chain.sizes) > 1:
        why.append(message("why-several-sizes"))
    if chain.pitch_excludes:
        why.append(
            message("why-pitch-excludes", sizes=Listing(tuple(one.said for one in chain.pitch_excludes)))
        )
    if chain.size_mark_denied:
        why.append(message("why-size-mark-denied"))
    if condition in ALTERED:
        why.append(message("why-condition", condition=Option("condition", condition)))
    for rating, code in ((lift, "why-lifting"), (tie_down, "why-tie-down")):
        if isinstance(rating, Rating):
            why.append(message(code, printed=rating.cell, place=rating.locator, seen=rating.checked))
    return tuple(why)


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once. Caution at best: no load is asked, and what a chain lifts stands on its tag alone."""
    reasons = [*_held(found), *_on_the_use(found)]
    if found.lift_barred:
        reasons.append(note("do-not-lift", "prohibition"))
    if found.out_of_use:
        reasons.append(note("cut-it-up", "mandatory"))
    worn = [size for size in found.chain.sizes if wire_gone(found.measured_m, size) > BADLY_WORN]
    if len(found.chain.sizes) > 1 and worn:
        reasons.append(note("badly-worn-larger-size", "warning", size=worn[-1].said))
    if any(size.metric_name in _NEAR_TWINS_MM for size in found.chain.sizes):
        reasons.append(note("inch-and-metric-look-alike"))
    reasons.append(note("tag-governs", "mandatory"))
    return tuple(reasons)


def _held(found: Found) -> list[Reason]:
    """What stands against any rating."""
    facts: dict[str, Fact] = {
        "says": _nothing(found),
        "words": Listing(found.chain.marks.not_read),
        "sizes": Listing(tuple(size.said for size in found.chain.marks.sizes or found.chain.sizes), "any"),
    }
    return [
        stop(f"held-{code}", **facts) if code in _STOPS else unknown(f"held-{code}", **facts)
        for code in found.holds
    ]


def _on_the_use(found: Found) -> tuple[Reason, ...]:
    """What the chain may do for the use that was asked; nothing where something stands against any rating."""
    if found.out_of_use:
        return ()
    if found.use == "lift" and found.lift_barred:
        bare = isinstance(found.tie_down, Absent)
        return (stop("may-not-lift", says=_nothing(found) if bare else _says(found)),)
    if found.holds:
        return ()
    wanted = {"lift": (found.lift,), "tie_down": (found.tie_down,)}.get(
        found.use, (found.lift, found.tie_down)
    )
    missing = [rating for rating in wanted if isinstance(rating, Absent)]
    says = _says(found)
    if len(missing) == len(wanted):
        bare = found.lift_barred and isinstance(found.tie_down, Absent)
        return (unknown("no-rating", says=_nothing(found) if bare else says),)
    return (caution("in-doubt" if missing or found.doubtful else "rated", says=says),)


def _nothing(found: Found) -> Message:
    return message("says-nothing", **_named(found))


def _named(found: Found) -> dict[str, Fact]:
    grades = found.chain.marks.grades
    size = found.chain.sizes[0].said if len(found.chain.sizes) == 1 else message("size-in-doubt")
    return {"grades": _any_of(grades) if grades else absent("no-grade-mark"), "size": size}


def _says(found: Found) -> Message:
    """What the chain may do, for the uses that were asked."""
    parts = []
    if found.use != "tie_down":
        if isinstance(found.lift, Rating):
            parts.append(message("says-lifts", rating=_rounded_down(found.lift)))
        else:
            parts.append(message("says-may-not-lift" if found.lift_barred else "says-no-lifting-rating"))
    if found.use != "lift":
        if isinstance(found.tie_down, Rating):
            parts.append(message("says-ties-down", rating=_rounded_down(found.tie_down)))
        else:
            parts.append(message("says-no-tie-down-limit"))
    return message("says", parts=Listing(tuple(parts), "semicolon"), **_named(found))


def _rounded_down(rating: Rating) -> Quantity:
    return Quantity(rating.working_load_limit_kg, "weight", "capacity")


def work(found: Found) -> tuple[Step, ...]:
    """What is gone of the wire, for each size that it may once have been."""
    return tuple(
        step(
            "if-it-was",
            size=size.said,
            now=length(found.measured_m),
            new=length(nominal_m(size)),
            wear=share(wire_gone(found.measured_m, size), digits=2),
        )
        for size in found.chain.sizes
    )


def draw(found: Found, writer: Writer) -> Figure:
    """The link as measured."""
    wire = writer.plain(length(found.measured_m, digits=4))
    return link_figure(LinkShape(found.measured_m, found.pitch_m), wire, writer)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where the ratings stand."""
    return tuple(
        Citation(rating.source, rating.locator)
        for rating in (found.lift, found.tie_down)
        if isinstance(rating, Rating)
    )


def large(found: Found) -> str:
    """The rating for the use that was asked stands large."""
    return "rating_lift" if found.use == "lift" else "rating_tie_down"


WORKSHEET = Worksheet(
    name="what-is-it",
    inputs=(
        QuantityInput("measured_diameter", dimension="length", bounds=Bounds(above=0, at_most=4)),
        QuantityInput("pitch", dimension="length", bounds=Bounds(above=0, at_most=20), required=False),
        TextInput("marks", required=False),
        ChoiceInput("use", choices=("lift", "tie_down", "both")),
        ChoiceInput("condition", choices=CONDITIONS, required=False),
    ),
    results=(
        Result("rating_lift", "weight", "capacity", digits=4),
        Result("rating_tie_down", "weight", "capacity", digits=4, printed=True),
        Result("grade"),
        Result("size"),
        Result("candidates"),
        Result("least_wear", "fraction", digits=2),
        Result("most_wear", "fraction", "demand", digits=2),
        Result("why"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    large=large,
    example={
        "measured_diameter": "0.394 in",
        "pitch": "1-7/32 in",
        "marks": "G70 3/8",
        "use": "lift",
        "condition": "sound",
    },
    citations=(
        Citation("cfr-49-393", "393.108 table, mark examples and paragraph (d)"),
        Citation("osha-sling-guidance", "Tables 1 and 2"),
        Citation("osha-1910-184", "1910.184(c)(13)-(14): no sling without readable marks"),
    ),
    shares=("shared/chain",),
)
