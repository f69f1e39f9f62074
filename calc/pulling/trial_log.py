"""Did it hold? Judge the log of a pull.

Force against opening must run straight up and come back to where it began. The straight part is fitted by the median of
slopes (Theil, Sen), the departure tested with its uncertainty (calc.pulling.departure), then permanent set at the same force
(calc.pulling.lasting_set), the force lost per minute while holding (calc.pulling.log_branches), and the throat before and
after against the hook limits. It studies a pull and rates nothing: what the part is, is asked first.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.pull_graphs import Break, LogShape, log_figure
from calc.inputs import (
    JOB_INPUT,
    JOB_WORDS,
    BadInput,
    Bounds,
    ChoiceInput,
    FileInput,
    Given,
    QuantityInput,
    RowsInput,
    TextInput,
)
from calc.inspecting.inspection import Limit, limits
from calc.lifting.condition import WORDS as CONDITION_WORDS
from calc.lifting.condition import condition_input, condition_of, judge_condition
from calc.pulling.departure import (
    FALSE_ALARM,
    Departure,
    apart,
    find_departure,
    seated_from,
    standing_out,
)
from calc.pulling.lasting_set import (
    FALSE_ALARM_OF_SET,
    SHOWN_SHARE,
    GapScatter,
    LastingSet,
    LettingOff,
    gap_scatter,
    lasting_sets,
    lettings_off,
)
from calc.pulling.log_branches import (
    BLEED_PER_MINUTE,
    Branches,
    bleed_n_per_s,
    branches,
    throat_growth,
)
from calc.pulling.log_reading import NotALog, Reading, decode, read_log
from calc.pulling.pull_proof import DOES_NOT_PROVE, PROVES, WORDS
from calc.pulling.statistics_of_few import theil_sen
from calc.reasons import Reason, caution, note, stop, unknown
from calc.words.facts import (
    Absent,
    Fact,
    Listing,
    Message,
    Number,
    Quantity,
    absent,
    force,
    length,
    message,
    share,
)
from calc.words.writer import Writer

FEWEST = 6
"""Readings with force and gap on the way up that the test needs: the broken line has four unknowns."""

FEWEST_FORCES = 4
"""Different forces among them."""

LEAST_OPENING_M = 1e-8
"""A straight part that opens less than this over the whole pull [m] is a dial that did not move; no shop dial shows it."""

SHRINKS_SHARE = 0.01
"""A gap that came back smaller by more than this share of the whole opening [-] was misread (our own mark, no source)."""
THROAT_READS_APART = 0.01
"""A throat that shrank by more than this share [-] was misread (our own mark, no source)."""


@dataclass(frozen=True)
class Found:
    """What the log says: its straight part and bend, what stayed, what bled off, how far the throat opened.

    sets -- the permanent set after each letting off; set -- the one that is surest
    scatter -- the scatter of a gap reading; slack_n -- up to where slack was taken up [N]
    opens_m -- opening of the straight part over the whole pull [m]; has_throat -- whether it has one, as far as was said
    """

    condition: str
    has_throat: bool
    fit: Departure
    parts: Branches
    sets: tuple[LastingSet, ...]
    set: LastingSet | None
    scatter: GapScatter
    slack_n: float | None
    opens_m: float
    throat_limit: Limit
    aside_n: tuple[float, ...]
    shape: LogShape
    top_force_n: float
    departs_at_n: float | Absent
    departs_low_n: float | Absent
    departs_high_n: float | Absent
    permanent_set_m: float | Absent
    set_doubt_m: float | Absent
    set_shown_m: float | Absent
    throat_change_percent: float | Absent
    bleed_down_n_per_s: float | Absent
    stiffness_n_per_m: float
    scatter_m: float
    readings_used: int
    readings_aside: int
    proves: Message = PROVES
    does_not_prove: Message = DOES_NOT_PROVE


def _where(given: Given) -> str:
    """The input that holds the log: the one said, if it has one, else the first that does."""
    said = given.text("kept_as")
    return next((name for name in (said, "file", "pasted", "readings") if given.has(name)), said)


def _refuse(given: Given, code: str, **facts: Fact) -> BadInput:
    """An error on the input that holds the log."""
    return given.refuse(_where(given), code, **facts)


def _readings(given: Given) -> tuple[Reading, ...]:
    """The readings, pasted as text, typed as rows or out of a file; at least one, with a force over zero."""
    where = _where(given)
    if not given.has(where):
        raise given.refuse(where, f"{where}-missing")
    if where == "readings":
        readings = tuple(_typed_reading(row) for row in given.rows("readings"))
    else:
        readings = _written_readings(given, where)
    if not any(reading.force_n > 0 for reading in readings):
        raise given.refuse(where, "no-force")
    return readings


def _typed_reading(row: Given) -> Reading:
    return Reading(row.si("force"), row.maybe("gap"), row.maybe("throat"), row.maybe("time"))


def _written_readings(given: Given, where: str) -> tuple[Reading, ...]:
    text = given.text("pasted") if where == "pasted" else decode(given.data("file"))
    try:
        return read_log(text, given.units == "si")
    except NotALog as reason:
        raise given.refuse(where, "not-a-log", reason=reason.why) from reason


def _useful(given: Given, parts: Branches) -> tuple[tuple[float, float], ...]:
    """Force and gap of the way up; refuses too few or useless readings with what is needed."""
    useful = parts.useful
    if len(useful) < FEWEST or len(apart([force_n for force_n, _ in useful])) < FEWEST_FORCES:
        raise _refuse(given, "too-few-readings", useful=len(useful), fewest=FEWEST)
    compliance = theil_sen([force_n for force_n, _ in useful], [gap_m for _, gap_m in useful])[1]
    if compliance * max(force_n for force_n, _ in useful) < LEAST_OPENING_M:
        raise _refuse(given, "no-growth")
    return useful


@dataclass(frozen=True)
class _Fit:
    """Straight part and bend of the readings that were kept, their scatter, and what was left out: forces [N] of slips of
    reading, and up to where slack was taken up [N].
    """

    departure: Departure
    scatter: GapScatter
    used: int
    aside_n: tuple[float, ...]
    slack_n: float | None


def _fit(given: Given, parts: Branches) -> _Fit:
    useful = _useful(given, parts)
    aside = standing_out([force_n for force_n, _ in useful], [gap_m for _, gap_m in useful])
    kept = [i for i in range(len(useful)) if i not in aside]
    slack_n = _slack_n([useful[i] for i in kept])
    seated_at = [i for i in kept if slack_n is None or useful[i][0] >= slack_n]
    seated = [useful[i] for i in seated_at]
    departure = find_departure([force_n for force_n, _ in seated], [gap_m for _, gap_m in seated])
    if departure.compliance_m_per_n * parts.top_n < LEAST_OPENING_M:
        raise _refuse(given, "no-growth-before-the-bend")
    bend = departure.bend
    straight = [i for i in seated_at if bend is None or useful[i][0] <= bend.at_n]
    about = straight if _enough([useful[i] for i in straight]) else seated_at
    scatter = gap_scatter([useful[i] for i in about], [parts.pulls[i] for i in about])
    return _Fit(departure, scatter, len(seated), tuple(useful[i][0] for i in aside), slack_n)


def _enough(pairs: Sequence[tuple[float, float]]) -> bool:
    """Whether the readings are enough for a line and its scatter."""
    return len(pairs) >= FEWEST and len(apart([force_n for force_n, _ in pairs])) >= FEWEST_FORCES


def _slack_n(pairs: Sequence[tuple[float, float]]) -> float | None:
    """Up to which force [N] slack was taken up; None where none is seen, or too little would be left over it."""
    slack_n = seated_from([force_n for force_n, _ in pairs], [gap_m for _, gap_m in pairs])
    if slack_n is None or not _enough([pair for pair in pairs if pair[0] >= slack_n]):
        return None
    return slack_n


def find(given: Given) -> Found:
    """What the log says; see WORKSHEET for inputs and results."""
    readings = _readings(given)
    parts = branches(readings)
    fit = _fit(given, parts)
    departure, bend = fit.departure, fit.departure.bend
    off = lettings_off(readings)
    sets = lasting_sets(parts.useful, off, fit.scatter)
    surest = _surest(sets, parts.top_n)
    nowhere = absent("nowhere-seen")
    return Found(
        condition=condition_of(given),
        has_throat=given.text("part") != "no-throat",
        fit=departure,
        parts=parts,
        sets=sets,
        set=surest,
        scatter=fit.scatter,
        slack_n=fit.slack_n,
        opens_m=departure.compliance_m_per_n * parts.top_n,
        throat_limit=limits("hook-limits", ("hook", "crane_hook"), "throat_increase", "fraction")[0],
        aside_n=fit.aside_n,
        shape=_shape(readings, departure),
        top_force_n=parts.top_n,
        departs_at_n=bend.at_n if bend else nowhere,
        departs_low_n=bend.low_n if bend else nowhere,
        departs_high_n=bend.high_n if bend else nowhere,
        permanent_set_m=surest.set_m if surest else _no_set(off, parts.top_n),
        set_doubt_m=surest.doubt_m if surest else absent("not-known"),
        set_shown_m=surest.shows_m if surest else absent("not-known"),
        throat_change_percent=_or_absent(throat_growth(readings), "not-read-twice"),
        bleed_down_n_per_s=_or_absent(bleed_n_per_s(parts.hold), "no-times"),
        stiffness_n_per_m=1.0 / departure.compliance_m_per_n,
        scatter_m=fit.scatter.deviation_m,
        readings_used=fit.used,
        readings_aside=len(fit.aside_n),
    )


def _surest(sets: Sequence[LastingSet], top_n: float) -> LastingSet | None:
    """The set that counts most clearly, whichever pull left it; else the one after the highest force [N], if it was read."""
    counts = [one for one in sets if one.counts]
    after_top = [one for one in sets if one.top_n >= top_n]
    return max(counts or after_top, key=lambda one: one.set_m / one.deviation_m, default=None)


def _no_set(off: Sequence[LettingOff], top_n: float) -> Absent:
    """Why there is no set: nothing was read after the highest force, or not at a force that was read before."""
    return absent("nothing-before" if any(one.top_n >= top_n for one in off) else "nothing-after")


def _or_absent(value: float | None, code: str) -> float | Absent:
    return absent(code) if value is None else value


def _shape(readings: Sequence[Reading], fit: Departure) -> LogShape:
    bend = fit.bend
    return LogShape(
        pulls=tuple((r.force_n, r.gap_m) for r in readings if r.gap_m is not None),
        times=tuple((r.time_s, r.force_n) for r in readings if r.time_s is not None),
        offset_m=fit.offset_m,
        compliance_m_per_n=fit.compliance_m_per_n,
        leaves=Break(bend.at_n, bend.low_n, bend.high_n) if bend else None,
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """Whether it yielded, what the part is, what is not known and what to look at. A pull that it held rates nothing."""
    signs = _signs_of_yielding(found)
    reasons = [stop("yielded", signs=Listing(signs, "clauses"))] if signs else []
    reasons.extend(judge_condition(found.condition))
    reasons.extend(_of_what_stayed(found, bool(signs)))
    if found.aside_n:
        reasons.append(note("set-aside", "warning", forces=Listing(tuple(force(f) for f in found.aside_n))))
    if found.slack_n is not None:
        reasons.append(note("slack", "warning", slack=force(found.slack_n)))
    reasons.extend(_of_throat_and_hold(found))
    reasons.append(note("what-it-proves", "warning"))
    return tuple(reasons)


def _of_what_stayed(found: Found, yielded: bool) -> list[Reason]:
    """What the readings after letting off say, or cannot say."""
    reasons = []
    if any(one.shrinks and -one.set_m > SHRINKS_SHARE * found.opens_m for one in found.sets):
        reasons.append(unknown("came-back-smaller"))
    if found.set is None:
        code = "nothing-read-before" if _after_but_not_before(found) else "nothing-read-after"
        reasons.append(unknown(code))
    elif not yielded and found.set.shows_m > SHOWN_SHARE * found.opens_m:
        reasons.append(unknown("set-not-shown", shown=length(found.set.shows_m, "demand", 2)))
    elif not yielded and not reasons:
        reasons.append(note("straight-and-back", shown=length(found.set.shows_m, "demand", 2)))
    return reasons


def _after_but_not_before(found: Found) -> bool:
    lasting = found.permanent_set_m
    return isinstance(lasting, Absent) and lasting.code == "nothing-before"


def _signs_of_yielding(found: Found) -> tuple[Message, ...]:
    """What shows that it yielded: a bend, a set, a throat at its limit."""
    signs = []
    bend, growth = found.fit.bend, found.throat_change_percent
    if bend:
        low, high = force(bend.low_n, "capacity"), force(bend.high_n, "demand")
        signs.append(message("sign-bend", at=force(bend.at_n), low=low, high=high))
    if found.set and found.set.counts:
        signs.append(message("sign-set", set=length(found.set.set_m), doubt=length(found.set.doubt_m)))
    if not isinstance(growth, Absent) and found.throat_limit.rejects(growth):
        signs.append(message("sign-throat", growth=share(growth)))
    return tuple(signs)


def _of_throat_and_hold(found: Found) -> list[Reason]:
    reasons: list[Reason] = []
    growth, bleed = found.throat_change_percent, found.bleed_down_n_per_s
    if isinstance(growth, Absent):
        if found.has_throat:
            reasons.append(unknown("throat-not-read"))
    elif growth < -THROAT_READS_APART:
        reasons.append(unknown("throat-shrank", shrank=share(-growth)))
    elif found.throat_limit.nears(growth, 0.0):
        reasons.append(caution("throat-near-limit"))
    if not isinstance(bleed, Absent) and bleed > BLEED_PER_MINUTE * found.top_force_n / 60.0:
        reasons.append(note("bleeds", "warning"))
    return reasons


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    fit = found.fit
    steps = [
        step("stiffness"),
        step("scatter", freedom=found.scatter.freedom),
        step(
            "break",
            level=share(FALSE_ALARM, "plain", 2),
            t=Number(fit.t_value),
            places=fit.candidates,
            chance=share(fit.chance, "plain", 2),
        ),
    ]
    if found.set:
        steps.append(
            step(
                "set",
                level=share(FALSE_ALARM_OF_SET, "plain", 2),
                freedom=found.set.freedom,
                decides=length(found.set.decides_m, "demand", 2),
                shown=length(found.set.shows_m, "demand", 2),
            )
        )
    if not isinstance(found.bleed_down_n_per_s, Absent):
        steps.append(step("bleed"))
    if not isinstance(found.throat_change_percent, Absent):
        steps.append(step("throat", limit=found.throat_limit.printed))
    return tuple(steps)


def draw(found: Found, writer: Writer) -> Figure:
    """Force against opening, and against time where it was noted."""
    shape, bend = found.shape, found.fit.bend
    facts: dict[str, Fact] = {
        "straight": force(shape.straight_to_n, "capacity"),
        "at": absent("nowhere-seen"),
        "lasted": Quantity(shape.lasted_s, "time") if shape.timed else absent("no-times"),
    }
    if bend:
        low, high = force(bend.low_n, "capacity"), force(bend.high_n, "demand")
        facts |= {"at": force(bend.at_n), "low": low, "high": high}
    return log_figure(shape, writer.text("figure", **facts), writer)


_COLUMNS = (
    QuantityInput("force", dimension="force", bounds=Bounds(at_least=0, at_most=40_000_000)),
    QuantityInput(
        "gap",
        dimension="length",
        bounds=Bounds(at_least=-40, at_most=400),
        required=False,
        point_is_decimal=True,
    ),
    QuantityInput(
        "throat",
        dimension="length",
        bounds=Bounds(above=0, at_most=80),
        required=False,
        point_is_decimal=True,
    ),
    QuantityInput("time", dimension="time", bounds=Bounds(at_least=0, at_most=100_000), required=False),
)

WORKSHEET = Worksheet(
    name="trial-log",
    inputs=(
        condition_input(),
        ChoiceInput("part", choices=("hook", "no-throat"), required=False),
        ChoiceInput("kept_as", choices=("pasted", "readings", "file"), default="pasted"),
        TextInput("pasted", long=True, required=False, shown_when={"kept_as": ("pasted",)}),
        RowsInput(
            "readings",
            bounds=Bounds(at_least=1, at_most=2000),
            required=False,
            shown_when={"kept_as": ("readings",)},
            columns=_COLUMNS,
        ),
        FileInput("file", required=False, shown_when={"kept_as": ("file",)}),
        JOB_INPUT,
    ),
    results=(
        Result("departs_at", "force"),
        Result("departs_low", "force", "capacity", printed=True),
        Result("departs_high", "force", "demand"),
        Result("top_force", "force", "capacity", printed=True),
        Result("permanent_set", "length"),
        Result("set_doubt", "length", "demand"),
        Result("set_shown", "length", "demand", digits=2),
        Result("throat_change_percent", "fraction"),
        Result("bleed_down", "force_rate"),
        Result("stiffness", "stiffness"),
        Result("scatter", "length"),
        Result("readings_used"),
        Result("readings_aside"),
        Result("proves"),
        Result("does_not_prove"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=lambda found: found.throat_limit.citations,
    large=lambda found: "departs_at" if found.fit.bend else "permanent_set",
    rates=False,
    example={
        "condition": "marked-good",
        "part": "hook",
        "kept_as": "pasted",
        "pasted": "Force (lb)\tGap (in)\tThroat (in)\tTime (min)\n"
        "0\t2.0000\t1.160\t0\n290\t2.0011\t\t1\n610\t2.0020\t\t2\n890\t2.0031\t\t3\n1,210\t2.0041\t\t4\n"
        "1,480\t2.0049\t\t5\n1,790\t2.0061\t\t6\n2,110\t2.0070\t\t7\n2,390\t2.0080\t\t8\n2,700\t2.0091\t\t9\n"
        "2,900\t2.0097\t\t10\n2,880\t2.0097\t\t11.5\n2,860\t2.0096\t\t13\n310\t2.0011\t\t15\n0\t2.0001\t1.161\t16\n",
    },
    citations=(
        Citation("theil-sen", "median of slopes"),
        Citation("jcgm-100", "F.2.2.1, G.3"),
        Citation("clopper-pearson-1934", "what a pass proves; see pull-trial"),
    ),
    shares=(WORDS, CONDITION_WORDS, JOB_WORDS),
)
