"""What chain is this, and what may it do?

From the wire as measured, the inside length of a link and the marks on it to the sizes and grades it can be, and the
rating for each use. Marks and tie-down limits: 49 CFR 393.108. Lifting: OSHA, Guidance on Safe Sling Use, Tables 1
and 2. Where several sizes or grades fit, the lowest rating holds.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from calc.figures.inspection import link_figure
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
from calc.quantities import number_text
from calc.ratings import Rating
from calc.tables import table
from calc.worksheet import (
    Answer,
    Caution,
    Choice,
    Citation,
    Given,
    Input,
    Result,
    Say,
    Step,
    Verdict,
    Worksheet,
)

SOUND = "sound"
_CONDITIONS = {
    SOUND: "Sound: no weld, heat, crack, bend or stretch",
    "worn": "Worn",
    "welded": "Welded or weld spatter on it",
    "heated": "Heated, burned or blued",
    "cracked": "Cracked or gouged",
    "bent": "Bent, twisted or stretched",
    "home-made": "Shop-made or mended",
}
_TOLERABLE = (SOUND, "worn")
UNMARKED_GRADE = "30"
"""The grade that unmarked welded steel chain counts as when it ties a load down (49 CFR 393.108(d))."""


@dataclass(frozen=True)
class _Finding:
    """What the chain can be: sizes (smallest first), marks, and the size named by a mark that the wire denies."""

    sizes: tuple[ChainSize, ...]
    marks: Marks
    size_mark_denied: bool
    pitch_excludes: tuple[ChainSize, ...]


def _find(given: Given) -> _Finding:
    measured = given.si("measured_diameter")
    sizes = sizes_of_wire(measured)
    if not sizes:
        smallest, largest = chain_sizes()[0], chain_sizes()[-1]
        raise given.refuse(
            "measured_diameter",
            f"fits no chain of the tables, which run from {smallest.words} to {largest.words}. "
            "Measure the wire of the link, not its width.",
        )
    marks = read_marks(given.text("marks"))
    excluded: tuple[ChainSize, ...] = ()
    if given.has("pitch"):
        lifting_only = bool(marks.grades) and all(may_lift(grade) for grade in marks.grades)
        fitting = tuple(size for size in sizes if pitch_fits(given.si("pitch"), size, lifting_only))
        if not fitting:
            raise given.refuse(
                "pitch",
                "does not go with a wire that thick. Measure inside one link, from bearing to bearing.",
            )
        excluded = tuple(size for size in sizes if size not in fitting)
        sizes = fitting
    sizes = _made(marks, sizes)
    named = tuple(size for size in sizes if size in marks.sizes)
    denied = bool(marks.sizes) and not named
    return _Finding(named or sizes, marks, denied, excluded)


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


@dataclass(frozen=True)
class _Judged:
    """The ratings that hold, and why there is none."""

    lift: Rating | None
    lift_words: str
    tie_down: Rating | None
    tie_down_words: str
    verdict: Verdict
    lift_barred: bool


def _judge(found: _Finding, condition: str, use: str) -> _Judged:
    if condition not in _TOLERABLE:
        why = "no rating: welded, heated, cracked, bent or shop-made chain is out of use"
        return _Judged(None, why, None, why, "stop" if condition == "home-made" else "unknown", True)
    lift, lift_words, barred = _judge_lift(found)
    tie_down, tie_down_words = _judge_tie_down(found)
    wanted = {"lift": (lift,), "tie_down": (tie_down,)}.get(use, (lift, tie_down))
    verdict: Verdict = "ok"
    if use == "lift" and lift is None:
        verdict = "stop" if barred else "unknown"
    elif all(rating is None for rating in wanted):
        verdict = "unknown"
    elif any(rating is None for rating in wanted) or _doubtful(found, condition):
        verdict = "caution"
    return _Judged(lift, lift_words, tie_down, tie_down_words, verdict, barred)


def _doubtful(found: _Finding, condition: str) -> bool:
    return (
        len(found.sizes) > 1
        or len(found.marks.grades) != 1
        or condition != SOUND
        or found.size_mark_denied
    )  # fmt: skip


def _judge_lift(found: _Finding) -> tuple[Rating | None, str, bool]:
    """Lifting: rating, words for its absence, and whether the law or standard bars it outright."""
    grades = found.marks.grades
    if not grades:
        return None, "no lifting use: no readable grade mark", True
    barred = [grade for grade in grades if may_lift(grade) is False]
    if barred:
        return None, f"no lifting use: the mark can mean grade {' or '.join(barred)}", True
    if found.size_mark_denied:
        return None, "none: the size mark and the wire do not agree", False
    rating = _lowest(lifting_ratings, grades, found.sizes)
    words = "" if rating else f"no table rates grade {' or '.join(grades)} in this size: its tag governs"
    return rating, words, False


def _judge_tie_down(found: _Finding) -> tuple[Rating | None, str]:
    legal = table("chain-tie-down").values("grade")
    grades = [grade for grade in found.marks.grades if grade in legal] or (
        [] if found.marks.grades else [UNMARKED_GRADE]
    )
    if not grades:
        return None, "the law's table does not have this mark: the maker's own limit governs"
    rating = _lowest(tie_down_ratings, grades, found.sizes)
    return rating, "" if rating else "the law's table does not have this size: the maker's mark governs"


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    found = _find(given)
    measured = given.si("measured_diameter")
    condition, use = given.text("condition"), given.text("use")
    judged = _judge(found, condition, use)
    grade_words = " or ".join(found.marks.grades)
    candidates = [_candidate(size, measured) for size in found.sizes]
    shown = {"grade": grade_words or "no readable grade mark"}
    if judged.lift is None:
        shown["rating_lift"] = judged.lift_words
    if judged.tie_down is None:
        shown["rating_tie_down"] = judged.tie_down_words
    sources = tuple(
        Citation(rating.source, rating.locator) for rating in (judged.lift, judged.tie_down) if rating
    )
    return Answer(
        verdict=judged.verdict,
        headline=_headline(found, judged, use, say),
        big="rating_lift" if use == "lift" else "rating_tie_down",
        results={
            "candidates": candidates,
            "grade": grade_words or None,
            "size": found.sizes[0].words if len(found.sizes) == 1 else None,
            "rating_lift": judged.lift.working_load_limit_kg if judged.lift else None,
            "rating_tie_down": judged.tie_down.working_load_limit_kg if judged.tie_down else None,
            "least_wear": min(wear_ratio(measured, size) for size in found.sizes),
            "most_wear": max(wear_ratio(measured, size) for size in found.sizes),
            "why": list(_why(found, judged, condition)),
        },
        shown=shown | ({} if len(found.sizes) == 1 else {"size": "more than one fits"}),
        steps=_steps(found, measured, say),
        cautions=_cautions(found, judged, condition, measured),
        figure=link_figure(
            measured,
            given.si("pitch") if given.has("pitch") else None,
            say,
            say.of(measured, "length", digits=4),
        ),
        citations=sources,
    )


def _candidate(size: ChainSize, measured_m: float) -> str:
    wear = wear_ratio(measured_m, size)
    state = "measures as new" if wear < 0.02 else f"{number_text(wear * 100, 2, 'up')}% of the wire gone"
    return f"{size.words}: {state}"


def _headline(found: _Finding, judged: _Judged, use: str, say: Say) -> str:
    what = f"grade {' or '.join(found.marks.grades)}" if found.marks.grades else "unmarked"
    size = found.sizes[0].words if len(found.sizes) == 1 else "size in doubt"
    if judged.verdict in ("stop", "unknown") and judged.lift_barred and judged.tie_down is None:
        return f"This chain ({what}, {size}) cannot be rated. Take it out of use."
    parts = []
    if use != "tie_down":
        parts.append(
            f"one straight leg lifts {say.of(judged.lift.working_load_limit_kg, 'weight', 'down')} at most, by its tag"
            if judged.lift
            else ("it may not lift" if judged.lift_barred else "it has no lifting rating here")
        )
    if use != "lift":
        parts.append(
            f"it ties down {say.of(judged.tie_down.working_load_limit_kg, 'weight', 'down')}"
            if judged.tie_down
            else "it has no tie-down limit here"
        )
    words = "; ".join(parts)
    return f"{what.capitalize()} chain, {size}: {words}."


def _why(found: _Finding, judged: _Judged, condition: str) -> tuple[str, ...]:
    reasons = []
    if not found.marks.grades:
        reasons.append(
            "No mark names a grade. Unmarked chain never lifts; tied down, it counts as grade 30 of its size."
        )
    if len(found.marks.grades) > 1:
        reasons.append(
            f"The marks can mean grade {' or '.join(found.marks.grades)}. The lowest rating is taken."
        )
    if found.marks.not_read:
        reasons.append(f"Not read as a grade: {', '.join(found.marks.not_read)}.")
    if len(found.sizes) > 1:
        reasons.append("The wire fits more than one size, new or worn. The rating is that of the smallest.")
    if found.pitch_excludes:
        reasons.append(
            f"The inside length rules out {', '.join(size.words for size in found.pitch_excludes)}."
        )
    if found.size_mark_denied:
        reasons.append("The size mark and the wire do not agree.")
    if condition not in _TOLERABLE:
        reasons.append(f"{_CONDITIONS[condition]}: no rating holds, whatever the marks say.")
    for rating, word in ((judged.lift, "Lifting"), (judged.tie_down, "Tie-down")):
        if rating:
            seen = "" if rating.checked == "text" else f" (seen as: {rating.checked})"
            reasons.append(f"{word}: {rating.printed}, {rating.locator}{seen}.")
    return tuple(reasons)


def _steps(found: _Finding, measured: float, say: Say) -> tuple[Step, ...]:
    return tuple(
        Step(
            f"If it once was {size.words}",
            "1 − wire now / wire new",
            f"1 − {say.one(measured, 'length')} / {say.one(size.thinnest_m, 'length')}",
            f"{number_text(wear_ratio(measured, size) * 100, 2, 'up')}% of the wire gone",
        )
        for size in found.sizes
    )


def _cautions(found: _Finding, judged: _Judged, condition: str, measured: float) -> tuple[Caution, ...]:
    cautions = []
    if judged.lift_barred:
        cautions.append(
            Caution("Do not lift with this chain. Not once, not a light load, not for a test.", "prohibition")
        )
    if condition not in _TOLERABLE:
        cautions.append(
            Caution("Cut it up or mark it so that nobody picks it off the hook again.", "mandatory")
        )
    worn = [size for size in found.sizes if wear_ratio(measured, size) > 0.05]
    if len(found.sizes) > 1 and worn:
        cautions.append(
            Caution(
                f"If this once was {worn[-1].words}, it is badly worn. Measure an unworn place, on the straight of the "
                "link, and the inside length, before you call it a smaller size.",
                "warning",
            )
        )
    if any(size.metric_name in ("7", "8", "10", "13", "16") for size in found.sizes):
        cautions.append(
            Caution(
                "Inch and metric chain of near sizes look alike (5/16 in and 8 mm). Fit hooks and binders by the mark, not by eye.",
                "note",
            )
        )
    cautions.append(
        Caution(
            "The tag on a sling and the maker's marks govern. A chain without a readable tag is not a lifting sling, even if its links are marked.",
            "mandatory",
        )
    )
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="what-is-it",
    title="What chain is this, and what may it do?",
    summary="Sizes and grades that a chain can be, from its wire, its links and its marks, with the rating for each use.",
    inputs=(
        Input("measured_diameter", "Thickness of the wire", "quantity", "length", above=0, at_most=4,
              help="Across the wire, where it is least worn: on the straight of the link. Use a caliper."),
        Input("pitch", "Inside length of one link", "quantity", "length", above=0, at_most=20, required=False,
              help="Inside one link, from bearing to bearing. It tells a worn link from a smaller one."),
        Input("marks", "Marks as you see them", "text", required=False,
              help="Letters and figures stamped on the links, such as G70, 8, T, 10. Leave empty if you see none."),
        Input("use", "What you want to do with it", "choice", default="lift",
              choices=(Choice("lift", "Lift"), Choice("tie_down", "Tie a load down"), Choice("both", "Either"))),
        Input("condition", "Condition", "choice", default=SOUND,
              choices=tuple(Choice(key, words) for key, words in _CONDITIONS.items()),
              help="The worst that you find on any link."),
    ),
    results=(
        Result("rating_lift", "Lifting rating, one straight leg", "weight", rounding="down", digits=4),
        Result("rating_tie_down", "Tie-down limit", "weight", rounding="down", digits=4),
        Result("grade", "Grade"),
        Result("size", "Size"),
        Result("candidates", "Sizes that fit"),
        Result("least_wear", "Wire gone, at least", "fraction", digits=2),
        Result("most_wear", "Wire gone, at most", "fraction", rounding="up", digits=2),
        Result("why", "Why"),
    ),
    compute=compute,
    example={"measured_diameter": "0.394 in", "pitch": "1-7/32 in", "marks": "G70 3/8", "use": "lift"},
    example_story="A length of chain came with a second-hand boat trailer. The yard asks whether it may lift an engine.",
    citations=(
        Citation("cfr-49-393", "393.108 table, mark examples and paragraph (d)"),
        Citation("osha-sling-guidance", "Tables 1 and 2"),
        Citation("osha-1910-184", "1910.184(c)(13)-(14): no sling without readable marks"),
    ),
)  # fmt: skip
