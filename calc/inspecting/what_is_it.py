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
    wear_ratio,
)
from calc.inspecting.chain_ratings import lifting_ratings, tie_down_ratings
from calc.ratings import Rating
from calc.reasons import Reason, caution, note, stop, unknown, within
from calc.tables import table
from calc.words.facts import Absent, Fact, Listing, Message, Option, Quantity, absent, length, message, share
from calc.words.writer import Writer

SOUND = "sound"
CONDITIONS = (SOUND, "worn", "welded", "heated", "cracked", "bent", "home-made")
_TOLERABLE = (SOUND, "worn")
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
    sizes = sizes_of_wire(measured)
    if not sizes:
        smallest, largest = chain_sizes()[0], chain_sizes()[-1]
        raise given.refuse("measured_diameter", "fits-no-chain", smallest=smallest.said, largest=largest.said)
    marks = read_marks(given.text("marks"))
    excluded: tuple[ChainSize, ...] = ()
    if given.has("pitch"):
        lifting_only = bool(marks.grades) and all(may_lift(grade) for grade in marks.grades)
        fitting = tuple(size for size in sizes if pitch_fits(given.si("pitch"), size, lifting_only))
        if not fitting:
            raise given.refuse("pitch", "does-not-go-with-wire")
        excluded = tuple(size for size in sizes if size not in fitting)
        sizes = fitting
    sizes = _made(marks, sizes)
    named = tuple(size for size in sizes if size in marks.sizes)
    denied = bool(marks.sizes) and not named
    return _Chain(named or sizes, marks, denied, excluded)


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
    """What the chain can be, and what it may do: a rating for each use or why there is none."""

    chain: _Chain
    condition: str
    use: str
    measured_m: float
    pitch_m: float | None
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
    def altered(self) -> bool:
        """Whether the condition takes the chain out of use, whatever its marks say."""
        return self.condition not in _TOLERABLE

    @property
    def doubtful(self) -> bool:
        """Whether size, grade or condition leave a doubt."""
        chain = self.chain
        return (
            len(chain.sizes) > 1
            or len(chain.marks.grades) != 1
            or self.condition != SOUND
            or chain.size_mark_denied
        )


def find(given: Given) -> Found:
    """What the chain can be and may do; see WORKSHEET for inputs and results."""
    chain = _chain(given)
    measured, condition = given.si("measured_diameter"), given.text("condition")
    if condition in _TOLERABLE:
        lift, barred = _lift(chain)
        tie_down = _tie_down(chain)
    else:
        lift, barred, tie_down = absent("out-of-use-chain"), True, absent("out-of-use-chain")
    wears = [wear_ratio(measured, size) for size in chain.sizes]
    grades = chain.marks.grades
    return Found(
        chain=chain,
        condition=condition,
        use=given.text("use"),
        measured_m=measured,
        pitch_m=given.maybe("pitch"),
        lift=lift,
        tie_down=tie_down,
        lift_barred=barred,
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
        return absent("no-lifting-use-unmarked"), True
    barred = [grade for grade in grades if may_lift(grade) is False]
    if barred:
        return absent("no-lifting-use", grades=_any_of(barred)), True
    if chain.size_mark_denied:
        return absent("size-mark-denied"), False
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
    if not marks.grades:
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
    if condition not in _TOLERABLE:
        why.append(message("why-condition", condition=Option("condition", condition)))
    for rating, code in ((lift, "why-lifting"), (tie_down, "why-tie-down")):
        if isinstance(rating, Rating):
            why.append(message(code, printed=rating.cell, place=rating.locator, seen=rating.checked))
    return tuple(why)


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once."""
    reasons = [_on_the_use(found)]
    if found.lift_barred:
        reasons.append(note("do-not-lift", "prohibition"))
    if found.altered:
        reasons.append(note("cut-it-up", "mandatory"))
    worn = [size for size in found.chain.sizes if wear_ratio(found.measured_m, size) > BADLY_WORN]
    if len(found.chain.sizes) > 1 and worn:
        reasons.append(note("badly-worn-larger-size", "warning", size=worn[-1].said))
    if any(size.metric_name in _NEAR_TWINS_MM for size in found.chain.sizes):
        reasons.append(note("inch-and-metric-look-alike"))
    reasons.append(note("tag-governs", "mandatory"))
    return tuple(reasons)


def _on_the_use(found: Found) -> Reason:
    """The reason that decides: what the chain may do for the use that was asked."""
    facts: dict[str, Fact] = {"says": _says(found)}
    if found.altered:
        out = {"says": _nothing(found)}
        return stop("shop-made", **out) if found.condition == "home-made" else unknown("altered", **out)
    wanted = {"lift": (found.lift,), "tie_down": (found.tie_down,)}.get(
        found.use, (found.lift, found.tie_down)
    )
    missing = [rating for rating in wanted if isinstance(rating, Absent)]
    if len(missing) == len(wanted):
        if found.lift_barred and isinstance(found.tie_down, Absent):
            facts = {"says": _nothing(found)}
        barred = found.use == "lift" and found.lift_barred
        return stop("may-not-lift", **facts) if barred else unknown("no-rating", **facts)
    return caution("in-doubt", **facts) if missing or found.doubtful else within("rated", **facts)


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
            new=length(size.thinnest_m),
            wear=share(wear_ratio(found.measured_m, size), digits=2),
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
        ChoiceInput("use", choices=("lift", "tie_down", "both"), default="lift"),
        ChoiceInput("condition", choices=CONDITIONS, default=SOUND),
    ),
    results=(
        Result("rating_lift", "weight", "capacity", digits=4),
        Result("rating_tie_down", "weight", "capacity", digits=4),
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
    example={"measured_diameter": "0.394 in", "pitch": "1-7/32 in", "marks": "G70 3/8", "use": "lift"},
    citations=(
        Citation("cfr-49-393", "393.108 table, mark examples and paragraph (d)"),
        Citation("osha-sling-guidance", "Tables 1 and 2"),
        Citation("osha-1910-184", "1910.184(c)(13)-(14): no sling without readable marks"),
    ),
    shares=("shared/chain",),
)
