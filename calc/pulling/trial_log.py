"""Did it hold? Judge the log of a pull.

Force against opening must run straight up and come back to where it began. The straight part is fitted by the median of
slopes (Theil, Sen), the departure tested with its uncertainty (calc.pulling.departure), then permanent set, the force lost
per minute while holding, and the throat before and after against the hook limits.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.figures.pulling import log_figure
from calc.inspecting.inspection import limits
from calc.pulling.departure import FALSE_ALARM, Departure, apart, find_departure, standing_out
from calc.pulling.log_reading import NotALog, Reading, decode, read_log
from calc.pulling.pull_proof import WORDS
from calc.pulling.statistics_of_few import theil_sen
from calc.quantities import number_text
from calc.words.writer import Writer
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
    worst,
)

_PROOF = Writer(scopes=(WORDS,))
PROVES, DOES_NOT_PROVE = _PROOF.text("proves"), _PROOF.text("does-not-prove")

FEWEST = 6
"""Readings with force and gap on the way up that the test needs: the broken line has four unknowns."""

SLACK_SHARE = 0.15
"""After the pull, a reading at or under this share of the top force counts as let off (our own mark, no source)."""

LEAST_OPENING_M = 1e-8
"""A straight part that opens less than this over the whole pull [m] is a dial that did not move; no shop dial shows it."""

HOLD_SHARE = 0.85
"""Readings after the top that stay over this share of it count as the hold (our own mark, no source)."""

SET_IN_SCATTERS = 3.0
"""Permanent set over so many standard deviations of its own reading counts as set."""


@dataclass(frozen=True)
class _Branches:
    """The log in its parts: way up (to the top force), hold, and let off; readings without a gap left out of the fit."""

    up: tuple[Reading, ...]
    hold: tuple[Reading, ...]
    off: tuple[Reading, ...]
    top_n: float


_MISSING = {
    "pasted": "is missing. Paste the log here, with its headings: force, gap, throat, time. "
    "(The address of this page keeps only short logs.)",
    "readings": "are missing. Type the log row by row.",
    "file": "is missing. Choose the file of the log.",
}


def _readings(given: Given, say: Say) -> tuple[Reading, ...]:
    """The readings, pasted as text, typed as rows or out of a file."""
    where = _where(given)
    if not given.has(where):
        raise given.refuse(where, _MISSING[where])
    if where in ("pasted", "file"):
        text = given.text("pasted") if where == "pasted" else decode(given.data("file"))
        try:
            return read_log(text, say.units == "si")
        except NotALog as reason:
            raise given.refuse(
                where, f"{reason}. Give columns force, gap, throat, time with their units."
            ) from reason
    return tuple(
        Reading(
            row.si("force"),
            row.si("gap") if row.has("gap") else None,
            row.si("throat") if row.has("throat") else None,
            row.si("time") if row.has("time") else None,
        )
        for row in given.rows("readings")
    )


def _branches(readings: Sequence[Reading]) -> _Branches:
    top = max(reading.force_n for reading in readings)
    first_top = next(i for i, reading in enumerate(readings) if reading.force_n == top)
    hold_end = first_top
    while hold_end + 1 < len(readings) and readings[hold_end + 1].force_n >= HOLD_SHARE * top:
        hold_end += 1
    off = tuple(reading for reading in readings[hold_end + 1 :] if reading.force_n <= SLACK_SHARE * top)
    return _Branches(tuple(readings[: first_top + 1]), tuple(readings[first_top : hold_end + 1]), off, top)


def _where(given: Given) -> str:
    """The input that holds the log: the one said, if it has one, else the first that does."""
    said = given.text("kept_as")
    return next((name for name in (said, "file", "pasted", "readings") if given.has(name)), said)


def _useful(given: Given, up: Sequence[Reading]) -> tuple[list[float], list[float]]:
    """Forces and gaps of the way up; refuses too few or useless readings with what is needed."""
    where = _where(given)
    pairs = [(reading.force_n, reading.gap_m) for reading in up if reading.gap_m is not None]
    if len(pairs) < FEWEST or len(apart([force for force, _ in pairs])) < 4:
        raise given.refuse(
            where,
            f"has {len(pairs)} useful readings on the way up. Give at least {FEWEST} with force and gap, at four different "
            "forces or more; ten are better.",
        )
    force, gap = [pair[0] for pair in pairs], [pair[1] for pair in pairs]
    if theil_sen(force, gap)[1] * max(force) < LEAST_OPENING_M:
        raise given.refuse(
            where, "shows no gap that grows with the force. Check which column is which, and the dial's sign."
        )
    return force, gap


@dataclass(frozen=True)
class _Set:
    """Permanent set [m] and the standard deviation of its reading [m]."""

    set_m: float
    doubt_m: float

    @property
    def counts(self) -> bool:
        """Whether it is more than reading scatter."""
        return self.set_m > SET_IN_SCATTERS * self.doubt_m


def _permanent_set(fit: Departure, off: Sequence[Reading]) -> _Set | None:
    """How far the last let-off reading lies past the straight line at its own force."""
    last = next((reading for reading in reversed(off) if reading.gap_m is not None), None)
    if last is None or last.gap_m is None:
        return None
    on_line = fit.offset_m + fit.compliance_m_per_n * last.force_n
    return _Set(last.gap_m - on_line, fit.scatter_m * 2**0.5)


def _bleed_n_per_s(hold: Sequence[Reading]) -> float | None:
    """Force lost per second while holding [N/s], by the median of slopes; None without two times."""
    timed = [(reading.time_s, reading.force_n) for reading in hold if reading.time_s is not None]
    if len(timed) < 2 or len(apart([time for time, _ in timed])) < 2:
        return None
    return -theil_sen([time for time, _ in timed], [force for _, force in timed])[1]


def _throat_change(readings: Sequence[Reading]) -> float | None:
    """Growth of the throat from its first to its last reading [-], both near slack if the log has them so."""
    throats = [reading.throat_m for reading in readings if reading.throat_m is not None]
    return throats[-1] / throats[0] - 1.0 if len(throats) > 1 else None


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    readings = _readings(given, say)
    if not readings or max(reading.force_n for reading in readings) <= 0:
        raise given.refuse(_where(given), "has no force over zero. Give the pull as it rose.")
    parts = _branches(readings)
    force, gap = _useful(given, parts.up)
    aside = standing_out(force, gap)
    kept = [i for i in range(len(force)) if i not in aside]
    fit = find_departure([force[i] for i in kept], [gap[i] for i in kept])
    if fit.compliance_m_per_n * parts.top_n < LEAST_OPENING_M:
        raise given.refuse(
            _where(given), "shows no gap that grows with the force before it bends. Was the dial stuck, or was slack "
            "taken up? Leave the slack readings out, free the dial, and read again."
        )  # fmt: skip
    lasting = _permanent_set(fit, parts.off)
    bleed = _bleed_n_per_s(parts.hold)
    throat = _throat_change(readings)
    limit = limits("hook-limits", ("hook", "crane_hook"), "throat_increase", "fraction")[0]
    verdict = _verdict(fit, lasting, throat, limit.value_si)
    return Answer(
        verdict=verdict,
        headline=_headline(say, fit, lasting, throat, limit.value_si, parts.top_n),
        big="departs_at" if fit.departs_at_n is not None else "top_force",
        results={
            "stiffness": 1.0 / fit.compliance_m_per_n, "departs_at": fit.departs_at_n,
            "departs_low": fit.departs_low_n, "departs_high": fit.departs_high_n,
            "permanent_set": lasting.set_m if lasting else None, "set_doubt": 2 * lasting.doubt_m if lasting else None,
            "bleed_down": bleed, "throat_change_percent": throat, "top_force": parts.top_n,
            "scatter": fit.scatter_m, "readings_used": len(kept), "readings_aside": len(aside),
            "proves": PROVES, "does_not_prove": DOES_NOT_PROVE,
        },
        shown=_shown(fit, lasting, bleed, throat),
        steps=_steps(say, fit, lasting, bleed, throat, len(kept), Writer().plain(limit.printed)),
        cautions=_cautions(say, verdict, parts, lasting, bleed, throat, [force[i] for i in aside]),
        figure=log_figure(
            [(r.force_n, r.gap_m) for r in readings if r.gap_m is not None],
            [(r.time_s, r.force_n) for r in readings if r.time_s is not None],
            (fit.offset_m, fit.compliance_m_per_n), (fit.departs_at_n, fit.departs_low_n, fit.departs_high_n), say,
        ),
        citations=limit.citations,
    )  # fmt: skip


def _verdict(fit: Departure, lasting: _Set | None, throat: float | None, limit: float) -> Verdict:
    verdicts: list[Verdict] = ["ok"]
    if fit.departs_at_n is not None or (lasting is not None and lasting.counts):
        verdicts.append("stop")
    if throat is not None and throat >= limit * (1 - 1e-9):
        verdicts.append("stop")
    if lasting is None or (throat is not None and throat > limit / 2):
        verdicts.append("caution")
    return worst(*verdicts)


def _headline(
    say: Say, fit: Departure, lasting: _Set | None, throat: float | None, limit: float, top_n: float
) -> str:  # fmt: skip
    bad = []
    if fit.departs_at_n is not None and fit.departs_low_n is not None and fit.departs_high_n is not None:
        bad.append(
            f"it left the straight line at {say.force(fit.departs_at_n)}, between {say.one(fit.departs_low_n, 'force', 'down', 3)} "
            f"and {say.one(fit.departs_high_n, 'force', 'up', 3)}"
        )
    if lasting is not None and lasting.counts:
        bad.append(f"it stayed open by {say.of(lasting.set_m, 'length')}")
    if throat is not None and throat >= limit * (1 - 1e-9):
        bad.append(f"the throat opened {number_text(throat * 100, 3, 'up')}%")
    if bad:
        return f"Take it out of use: {', and '.join(bad)}. It yielded."
    if lasting is None:
        return f"Straight up to {say.force(top_n, 'down')}, as far as the readings can tell. Nothing was read after letting off, so set is not known."
    return f"Straight up to {say.force(top_n, 'down')} and back, as far as the readings can tell. It held this pull once."


def _shown(
    fit: Departure, lasting: _Set | None, bleed: float | None, throat: float | None
) -> dict[str, str]:  # fmt: skip
    shown: dict[str, str] = {}
    if fit.departs_at_n is None:
        shown.update(departs_at="nowhere seen", departs_low="nowhere seen", departs_high="nowhere seen")
    if lasting is None:
        shown["permanent_set"] = "no reading after letting off"
    if bleed is None:
        shown["bleed_down"] = "no times in the hold"
    if throat is None:
        shown["throat_change_percent"] = "not read twice"
    return shown


def _steps(
    say: Say,
    fit: Departure,
    lasting: _Set | None,
    bleed: float | None,
    throat: float | None,
    used: int,
    limit: str,
) -> tuple[Step, ...]:
    steps = [
        Step("Stiffness of the straight part", "1 / median of all slopes of gap on force", f"{used} readings",
             say.of(1.0 / fit.compliance_m_per_n, "stiffness")),
        Step("Scatter of a gap reading", "1.4826 × median distance from the line", "", say.of(fit.scatter_m, "length")),
        Step("Test for a break", f"Student's t one-sided; a break counts under {number_text(FALSE_ALARM * 100, 2)}% after the number of places tried",
             f"t = {number_text(fit.t_value, 3)}, {fit.candidates} places", f"chance {number_text(fit.chance * 100, 2)}%"),
    ]  # fmt: skip
    if lasting is not None:
        steps.append(
            Step("Permanent set", f"gap after letting off − line at that force; counts over {SET_IN_SCATTERS:g} × its doubt",
                 f"doubt {say.of(lasting.doubt_m, 'length')}", say.of(lasting.set_m, "length"))
        )  # fmt: skip
    if bleed is not None:
        steps.append(
            Step(
                "Force lost while holding",
                "median of slopes of force on time",
                "",
                say.of(bleed, "force_rate"),
            )
        )
    if throat is not None:
        steps.append(
            Step("Throat", f"last / first − 1; limit {limit}", "", f"{number_text(throat * 100, 3)}%")
        )
    return tuple(steps)


def _cautions(
    say: Say, verdict: Verdict, parts: _Branches, lasting: _Set | None, bleed: float | None, throat: float | None,
    aside: Sequence[float],
) -> tuple[Caution, ...]:  # fmt: skip
    cautions = []
    if verdict == "stop":
        cautions.append(
            Caution("It yielded. Do not pull it again and do not bend it back. Destroy it.", "prohibition")
        )
    if aside:
        cautions.append(
            Caution(f"Set aside as slips of reading, because they stand alone off both neighbours: at {', '.join(say.force(f) for f in aside)}. Look at them yourself.", "warning")
        )  # fmt: skip
    if lasting is None:
        cautions.append(Caution("Read force and gap again after letting off. Without that nobody knows whether it came back.", "mandatory"))  # fmt: skip
    if throat is None:
        cautions.append(Caution("Read the throat before and after with a caliper, at slack.", "note"))
    if bleed is not None and bleed > 0.01 * parts.top_n / 60.0:
        cautions.append(Caution("It lost over a hundredth of the force a minute. A pump that leaks does that, and so does a part that creeps: block the ram off and see which.", "warning"))  # fmt: skip
    cautions.append(Caution(f"{PROVES} {DOES_NOT_PROVE}", "warning"))
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="trial-log",
    title="Did it hold? What does my log say?",
    summary="Stiffness, where the line bends, permanent set, bleed-down and throat, from force and gap readings.",
    inputs=(
        Input("kept_as", "Your log", "choice", default="pasted", choices=(
            Choice("pasted", "Paste it"), Choice("readings", "Type it"), Choice("file", "Open a file"),
        )),
        Input("pasted", "The log, pasted", "text", long=True, required=False, shown_when={"kept_as": ("pasted",)},
              help="Straight from a spreadsheet, in the order taken, with headings: force, gap, throat, time. Say the units "
              "there: Force (lb). Without, they are lb, in and s, or kN, mm and s. Read on after letting off."),
        Input("readings", "Readings, in the order taken", "rows", at_least=1, at_most=2000, required=False,
              shown_when={"kept_as": ("readings",)}, columns=(
            Input("force", "Force", "quantity", "force", at_least=0, at_most=40_000_000),
            Input("gap", "Gap", "quantity", "length", at_least=-40, at_most=400, required=False,
                  help="Between two marks across the part, or the dial's reading."),
            Input("throat", "Throat", "quantity", "length", above=0, at_most=80, required=False),
            Input("time", "Time", "quantity", "time", at_least=0, at_most=100_000, required=False),
        ), help="Way up, hold, and at least one reading after letting off."),
        Input("file", "The log as a file", "file", required=False, shown_when={"kept_as": ("file",)},
              help="Text with columns force, gap, throat, time; units may stand in the headings. From a spreadsheet save "
              "it as CSV, or paste it."),
    ),
    results=(
        Result("departs_at", "Left the straight line at", "force"),
        Result("departs_low", "At the earliest (95%)", "force", rounding="down"),
        Result("departs_high", "At the latest (95%)", "force", rounding="up"),
        Result("top_force", "Highest force", "force", rounding="down"),
        Result("permanent_set", "Permanent set", "length"),
        Result("set_doubt", "Give or take", "length", rounding="up"),
        Result("throat_change_percent", "Throat opened by", "fraction"),
        Result("bleed_down", "Force lost while holding", "force_rate"),
        Result("stiffness", "Stiffness of the straight part", "stiffness"),
        Result("scatter", "Scatter of a gap reading", "length"),
        Result("readings_used", "Readings in the fit"),
        Result("readings_aside", "Readings set aside"),
        Result("proves", "What a pass proves"),
        Result("does_not_prove", "What it does not"),
    ),
    compute=compute,
    example={
        "kept_as": "pasted",
        "pasted": "Force (lb)\tGap (in)\tThroat (in)\tTime (min)\n"
        "0\t2.0000\t1.160\t0\n290\t2.0011\t\t1\n610\t2.0020\t\t2\n890\t2.0031\t\t3\n1,210\t2.0041\t\t4\n"
        "1,480\t2.0049\t\t5\n1,790\t2.0061\t\t6\n2,110\t2.0070\t\t7\n2,390\t2.0080\t\t8\n2,700\t2.0091\t\t9\n"
        "2,900\t2.0097\t\t10\n2,880\t2.0097\t\t11.5\n2,860\t2.0096\t\t13\n310\t2.0011\t\t15\n0\t2.0001\t1.161\t16\n",
    },
    example_story="The log of the bollard hook's pull: a dial across two punch marks, the gauge filmed from behind the barrier.",
    ok_words="Straight and back",
    citations=(
        Citation("theil-sen", "median of slopes"),
        Citation("clopper-pearson-1934", "what a pass proves; see pull-trial"),
    ),
)  # fmt: skip
