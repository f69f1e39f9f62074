"""What may my rated chain carry in a hot place?

Two rules side by side: ASME B30.9, table 9-1.8.1-1 (grade 80 and 100: reduction while hot, and for good), and
EN 818-6 (grades 8, 5 and 4: what is left in a temperature band). 29 CFR 1910.184(e)(6): over 600 F the maker's
reduction, over 1,000 F out for good. This is for a sound, tagged chain whose temperature is planned and measured.
Chain that a torch, a fire or a weld reached is another matter: it cannot be rated.
"""

from __future__ import annotations

from calc.figures.heat_rules import heat_rules_figure
from calc.heating.chain_heat import RuleAnswer, asme_bands, asme_rule, en_bands, en_rule
from calc.quantities import number_text
from calc.words.writer import Writer, plain
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

_TIE_DOWN = ("30", "43", "70")


def _words(rule: RuleAnswer) -> str:
    return plain(Writer("us", scopes=("shared/chain-heat",)).message(rule.said))


def _sources(*rules: RuleAnswer) -> tuple[Citation, ...]:
    return tuple(Citation(rule.citation.source, rule.citation.locator) for rule in rules if rule.citation)


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
            for rule, words in ((asme, f"ASME B30.9: {_words(asme)}"), (en, f"EN 818-6: {_words(en)}"))
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
            "rating_hot_asme": _words(asme)
            if asme.hot is None
            else _both(say, rating * asme.hot, _words(asme)),
            "rating_hot_en": _words(en) if en.hot is None else _both(say, rating * en.hot, _words(en)),
        },
        steps=_steps(say, rating, asme, en),
        cautions=_cautions(harmed),
        figure=heat_rules_figure(asme_bands(grade), en_bands(grade), temperature, say),
        citations=_sources(asme, en),
    )


def _both(say: Say, rating_kg: float, words: str) -> str:
    return f"{say.of(rating_kg, 'weight', 'down')}: {words}"


def _refused(verdict: Verdict, headline: str, asme: RuleAnswer, en: RuleAnswer) -> Answer:
    cautions = [Caution(headline, "prohibition"), *_cautions(harmed=True)[1:]]
    return Answer(
        verdict, headline, "rating_hot", {"rule": "none that allows use"},
        cautions=tuple(cautions),
        shown=dict.fromkeys(("rating_hot", "rating_after"), "none")
        | {"rating_hot_asme": _words(asme), "rating_hot_en": _words(en)},
        citations=_sources(asme, en),
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
