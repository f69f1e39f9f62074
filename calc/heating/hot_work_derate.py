"""What may my rated chain carry in a hot place?

Two rules side by side: ASME B30.9, table 9-1.8.1-1 (grade 80 and 100: reduction while hot, and for good), and
EN 818-6 (grades 8, 5 and 4: what is left in a temperature band). 29 CFR 1910.184(e)(6): over 600 F the maker's
reduction, over 1,000 F out for good. This is for a sound, tagged chain whose temperature is planned and measured.
Chain that a torch, a fire or a weld reached is another matter: it cannot be rated.
"""

from __future__ import annotations

import functools
from dataclasses import dataclass
from itertools import pairwise

from calc.figures.heat_rules import Band, heat_rules_figure
from calc.quantities import number_text, show, to_si
from calc.tables import Row, number, table, value_si
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

_EN_GRADE = {"80": "8", "5": "5", "4": "4"}
_ASME_GRADES = ("80", "100")
_TIE_DOWN = ("30", "43", "70")


@dataclass(frozen=True)
class RuleAnswer:
    """What one rule says: share of the rating left while hot and afterwards [-], None where it allows no use or is
    silent; the words for it; whether it forbids; where it stands.
    """

    hot: float | None
    after: float | None
    words: str
    forbids: bool = False
    citation: Citation | None = None


def asme_rule(grade: str, temperature_degc: float) -> RuleAnswer:
    """ASME B30.9 for grade 80 or 100 at a temperature [deg C]; between two rows the hotter row counts.

    The printed degrees Fahrenheit are the table's own; the degrees Celsius beside them are rounded.
    """
    if grade not in _ASME_GRADES:
        return RuleAnswer(None, None, f"ASME B30.9 prints nothing for grade {grade} here")
    rows = table("chain-heat-asme").where(grade=grade, quantity="reduction_while_hot")
    steps = [(to_si(number_of(row, "temperature_degF"), "degF", "temperature"), row) for row in rows]
    cold = to_si(-40.0, "degF", "temperature")
    if temperature_degc < cold - 1e-9:
        return RuleAnswer(
            None, None, f"below {show(cold, 'temperature')}: ask the chain's maker (printed for shackles)", True,
            Citation("asme-b30-26", "2010, s. 26-1.6.1"),
        )  # fmt: skip
    if temperature_degc < steps[0][0] - 1e-9:
        return RuleAnswer(
            1.0, 1.0, f"no reduction below {show(steps[0][0], 'temperature')}", False, _asme("")
        )
    for reached_degc, row in steps:
        if temperature_degc <= reached_degc + 1e-9:
            later = table("chain-heat-asme").one(
                grade=grade, temperature_degF=row["temperature_degF"], quantity="reduction_afterwards"
            )
            hot, after = value_si(row, "fraction"), value_si(later, "fraction")
            words = f"{row['temperature_degF']} °F row: {row['value']}% less while hot, {later['value']}% less for good"
            return RuleAnswer(1.0 - hot, 1.0 - after, words, False, _asme(row["locator"]))
    return RuleAnswer(
        None, None, f"over {show(steps[-1][0], 'temperature')}: out of service for good", True, _asme("")
    )


def en_rule(grade: str, temperature_degc: float) -> RuleAnswer:
    """EN 818-6 for grade 8 (marked 80 or 8), 5 or 4 at a temperature [deg C]; a band ends with its upper figure."""
    if grade not in _EN_GRADE:
        return RuleAnswer(None, None, f"EN 818-6 prints nothing for grade {grade}")
    rows = table("chain-heat-en").where(grade=_EN_GRADE[grade])
    for row in rows:
        low, high = number_of(row, "temperature_from_degC"), number_of(row, "temperature_to_degC")
        if low - 1e-9 <= temperature_degc <= high + 1e-9:
            left = value_si(row, "fraction")
            words = f"{row['temperature_from_degC']} to {row['temperature_to_degC']} °C band: {row['value']}% left while hot"
            return RuleAnswer(left, None, words, False, Citation(row["source"], row["locator"]))
    first, last = rows[0], rows[-1]
    bounds = f"{first['temperature_from_degC']} to {last['temperature_to_degC']} °C"
    return RuleAnswer(
        None, None, f"use is not allowed outside {bounds}", True, Citation(last["source"], last["locator"])
    )


@functools.cache
def asme_bands(grade: str) -> tuple[Band, ...]:
    """The bands of ASME B30.9 as (from, to [deg C], share left while hot); none for a grade it does not print."""
    if grade not in _ASME_GRADES:
        return ()
    ends = [
        to_si(number_of(row, "temperature_degF"), "degF", "temperature")
        for row in table("chain-heat-asme").where(grade=grade, quantity="reduction_while_hot")
    ]
    bands: list[Band] = [(to_si(-40.0, "degF", "temperature"), ends[0], 1.0)]
    for low, high in pairwise(ends):
        bands.append((low, high, asme_rule(grade, high).hot or 0.0))
    return tuple(bands)


@functools.cache
def en_bands(grade: str) -> tuple[Band, ...]:
    """The bands of EN 818-6 as (from, to [deg C], share left while hot); none for a grade it does not print."""
    if grade not in _EN_GRADE:
        return ()
    return tuple(
        (
            number_of(row, "temperature_from_degC"),
            number_of(row, "temperature_to_degC"),
            value_si(row, "fraction"),
        )
        for row in table("chain-heat-en").where(grade=_EN_GRADE[grade])
    )


def number_of(row: Row, column: str) -> float:
    """A key column of a row as a number."""
    return number({**row, "value": row[column]})


def _asme(locator: str) -> Citation:
    return Citation("asme-b30-9", locator or "Table 9-1.8.1-1")


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    grade, temperature = given.text("grade"), given.si("temperature")
    rating = given.si("rating")
    asme, en = asme_rule(grade, temperature), en_rule(grade, temperature)
    at = say.of(temperature, "temperature")
    if given.text("how_known") == "found":
        return _refused(
            "unknown",
            "This chain was heated by accident, so its rating cannot be told. Take it out of use and ask its maker.",
            asme, en,
        )  # fmt: skip
    if grade in _TIE_DOWN:
        return _refused(
            "stop", f"Grade {grade} chain has no lifting rating, hot or cold, and no heat rule.", asme, en
        )
    if asme.forbids or en.forbids:
        who = [
            words
            for rule, words in ((asme, f"ASME B30.9: {asme.words}"), (en, f"EN 818-6: {en.words}"))
            if rule.forbids
        ]
        return _refused("stop", f"Not at {at}. {'. '.join(who)}.", asme, en)
    hot_shares = [rule.hot for rule in (asme, en) if rule.hot is not None]
    hot = min(hot_shares)
    after = asme.after
    harmed = after is not None and after < 1.0
    verdict: Verdict = "stop" if harmed else "caution"
    rule = "EN 818-6" if en.hot is not None and (asme.hot is None or en.hot < asme.hot) else "ASME B30.9"
    if asme.hot is not None and asme.hot == en.hot:
        rule = "ASME B30.9 and EN 818-6 agree"
    return Answer(
        verdict=verdict,
        headline=_headline(say, at, rating, hot, after, rule),
        big="rating_hot",
        results={
            "rating_hot": rating * hot,
            "rating_after": None if after is None else rating * after,
            "rule": rule,
            "rating_hot_asme": None if asme.hot is None else rating * asme.hot,
            "rating_hot_en": None if en.hot is None else rating * en.hot,
        },
        shown={
            "rating_after": "no rule prints it"
            if after is None
            else say.of(rating * after, "weight", "down")
            + (" printed by ASME; the chain's maker decides" if harmed else " (no lasting loss printed)"),
            "rating_hot_asme": asme.words if asme.hot is None else _both(say, rating * asme.hot, asme.words),
            "rating_hot_en": en.words if en.hot is None else _both(say, rating * en.hot, en.words),
        },
        steps=_steps(say, rating, asme, en),
        cautions=_cautions(harmed),
        figure=heat_rules_figure(asme_bands(grade), en_bands(grade), temperature, say),
        citations=tuple(rule.citation for rule in (asme, en) if rule.citation),
    )


def _both(say: Say, rating_kg: float, words: str) -> str:
    return f"{say.of(rating_kg, 'weight', 'down')}: {words}"


def _refused(verdict: Verdict, headline: str, asme: RuleAnswer, en: RuleAnswer) -> Answer:
    cautions = [Caution(headline, "prohibition"), *_cautions(harmed=True)[1:]]
    return Answer(
        verdict, headline, "rating_hot", {"rule": "none that allows use"},
        cautions=tuple(cautions),
        shown=dict.fromkeys(("rating_hot", "rating_after"), "none")
        | {"rating_hot_asme": asme.words, "rating_hot_en": en.words},
        citations=tuple(rule.citation for rule in (asme, en) if rule.citation),
    )  # fmt: skip


def _headline(say: Say, at: str, rating: float, hot: float, after: float | None, rule: str) -> str:
    left = say.of(rating * hot, "weight", "down")
    if after is not None and after < 1.0:
        return (
            f"Stop: at {at} this chain loses rating for good. While hot the stricter rule ({rule}) leaves {left} of "
            f"{say.weight(rating)}. Keep the chain out of this heat, or ask its maker."
        )
    return f"At {at} the chain may carry at most {left} of its {say.weight(rating)} rating ({rule})."


def _steps(say: Say, rating: float, asme: RuleAnswer, en: RuleAnswer) -> tuple[Step, ...]:
    steps: list[Step] = []
    for name, share in (
        ("ASME B30.9, while hot", asme.hot),
        ("EN 818-6, while hot", en.hot),
        ("ASME B30.9, afterwards", asme.after),
    ):
        if share is not None:
            steps.append(
                Step(
                    name,
                    "rating × share left",
                    f"{say.one(rating, 'weight')} × {number_text(share)}",
                    say.of(rating * share, "weight", "down"),
                )
            )
    return tuple(steps)


def _cautions(harmed: bool) -> tuple[Caution, ...]:
    cautions = [
        Caution(
            "The two rules differ. The stricter is taken. The tag and the chain's maker govern over both.",
            "note",
        ),
        Caution(
            "This is for a sound, tagged chain in a planned, measured heat. Chain that met a torch, a fire or a weld "
            "has no rating.",
            "prohibition",
        ),
        Caution(
            "Measure the chain itself where it is hottest, not the air. Hooks, rings and shackles have limits of "
            "their own; shackles stop at 400 °F (204 °C) unless the maker says more.",
            "mandatory",
        ),
    ]
    if harmed:
        cautions.append(
            Caution(
                "Part of the loss stays after cooling. Only the chain's maker can say what such a chain is fit for."
            )
        )
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="hot-work-derate",
    title="What may my chain carry in a hot place?",
    summary="The rating of a lifting chain while it is hot, and what heat takes for good, by two rules side by side.",
    inputs=(
        Input("grade", "Grade of the chain", "choice",
              choices=(Choice("80", "Grade 80 (8)"), Choice("100", "Grade 100 (10)"), Choice("5", "Grade 5"), Choice("4", "Grade 4"),
                       Choice("70", "Grade 70"), Choice("43", "Grade 43"), Choice("30", "Grade 30")),
              help="As marked on the links and the tag."),
        Input("rating", "Rating on the tag", "quantity", "weight", above=0, at_most=2_000_000,
              help="The working load limit of the sling as you use it, at shop temperature."),
        Input("temperature", "Temperature of the chain", "quantity", "temperature", at_least=-459.67, at_most=2800,
              help="The hottest link, measured. Not the air, not a guess by colour."),
        Input("how_known", "How do you know the temperature?", "choice", default="measured",
              choices=(Choice("measured", "Planned and measured"), Choice("found", "It was heated by accident: torch, fire, weld, colour")),
              help="A chain that was heated by accident cannot be rated."),
    ),
    results=(
        Result("rating_hot", "Rating while hot, stricter rule", "weight", rounding="down"),
        Result("rating_after", "Printed rating after cooling (ASME B30.9)", "weight", rounding="down"),
        Result("rule", "Rule that governs"),
        Result("rating_hot_asme", "ASME B30.9 while hot", "weight", rounding="down"),
        Result("rating_hot_en", "EN 818-6 while hot", "weight", rounding="down"),
    ),
    compute=compute,
    example={"grade": "80", "rating": "7,100 lb", "temperature": "450 °F"},
    example_story="The boat yard lifts a keel mould out of the curing oven with a 3/8 in grade 80 sling; the top links read 450 °F.",
    citations=(Citation("osha-1910-184", "1910.184(e)(6)"),),
)  # fmt: skip
