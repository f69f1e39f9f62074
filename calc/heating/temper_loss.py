"""What does a second heat take from hardened and tempered steel?

A lesson on a test piece, by the Hollomon-Jaffe rule on published tempering data (calc.heating.tempering). It is not
for a hook: nobody knows the hook's steel, its first tempering, or how hot each part of it got.
"""

from __future__ import annotations

from calc.figures.heat_curve import tempering_figure
from calc.heating.hardening import rockwell_of_strength
from calc.heating.tempering import (
    Band,
    TemperedSteel,
    condition_pa,
    parameter,
    strength_after,
    tempered_steel,
    tempered_steel_names,
)
from calc.heating.weld_cooling import HARDENS_ABOVE_DEGC
from calc.quantities import number_text
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

_KSI = ("ksi", "MPa")
_MELTING_F = 2750.0
_COLDEST_TEMPER_DEGC, _HOTTEST_TEMPER_DEGC = 100.0, 700.0
_SHORTEST_S = 10.0


def _heats(given: Given, steel: TemperedSteel) -> tuple[tuple[float, float], ...]:
    """The heats asked about, as (deg C, hours)."""
    low, high = steel.coolest_degc, steel.hottest_degc
    at = given.si("tempered_at")
    if not low - 0.01 <= at <= high + 0.01:
        raise given.refuse(
            "tempered_at",
            f"is out of range: the {steel.name} data run from {low * 9 / 5 + 32:,.0f} to {high * 9 / 5 + 32:,.0f} °F "
            f"({low:.0f} to {high:.0f} °C).",
        )
    rows = (given, *given.rows("more_heats"))
    for row in rows:
        if row.si("minutes") < _SHORTEST_S - 1e-9:
            raise row.refuse(
                "minutes", "is out of range: the rule was tested from 10 seconds up. Give 10 s or more."
            )
    return tuple((row.si("heated_to"), row.si("minutes") / 3600) for row in rows)


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    steel = tempered_steel(given.text("steel"))
    heats = _heats(given, steel)
    at = min(max(given.si("tempered_at"), steel.coolest_degc), steel.hottest_degc)
    before = steel.strength_pa(parameter(at, 1.0)) or 0.0
    hottest = max(degc for degc, _hours in heats)
    if hottest >= HARDENS_ABOVE_DEGC:
        return _hardened_again(say, steel, at, before, hottest)
    if hottest > _HOTTEST_TEMPER_DEGC:
        words = f"Out of range: the rule was tested up to {say.of(_HOTTEST_TEMPER_DEGC, 'temperature')}."
        return _answer(
            say, steel, at, before, None, "unknown", words, "out of range of the rule's own tests", heats
        )
    counted = [heat for heat in heats if heat[0] >= _COLDEST_TEMPER_DEGC]
    after = strength_after(steel, at, counted) if counted else _unchanged(steel, before)
    if after is None:
        soft = say.of(steel.pieces[-1][1], "pressure", reading=_KSI)
        return _answer(
            say, steel, at, before, None, "unknown",
            f"Out of range: this heat takes the {steel.name} test piece below {soft}, the softest one that was measured.",
            f"out of range: under {soft}", heats,
        )  # fmt: skip
    low, high = (say.of(strength, "pressure", reading=_KSI) for strength in (after.low_pa, after.high_pa))
    headline = (
        f"A test piece of {steel.name} goes from {say.of(before, 'pressure', reading=_KSI)} to between {low} and {high}. "
        "That is a test piece. It says nothing about your hook."
    )
    return _answer(say, steel, at, before, after, "unknown", headline, "", heats)


def _unchanged(steel: TemperedSteel, before: float) -> Band:
    """Too cool to temper: the strength before, with the scatter of the data."""
    return Band(before - steel.scatter_pa(), before, before + steel.scatter_pa())


def _hardened_again(say: Say, steel: TemperedSteel, at: float, before: float, hottest: float) -> Answer:
    soft = say.of(condition_pa(steel.name, "annealed", "yield_strength"), "pressure", reading=_KSI)
    words = (
        f"Out of range: at {say.of(hottest, 'temperature')} the tempering is wiped out. Cooled fast the steel is glass-hard; "
        f"cooled slowly its yield falls to about {soft} (annealed {steel.name})."
    )
    return _answer(
        say, steel, at, before, None, "stop", words, "out of range: the steel turned to austenite", ()
    )


def rockwell_words(strength_pa: float) -> tuple[float | None, str]:
    """Rockwell C of a strength [Pa], middle of the two published columns, and the words for both."""
    found = rockwell_of_strength(strength_pa)
    if found is None:
        return None, "outside the Rockwell C table"
    low, high = found
    words = f"about {low:.0f} HRC" if round(low) == round(high) else f"{low:.0f} to {high:.0f} HRC"
    return (low + high) / 2, words


def _answer(
    say: Say, steel: TemperedSteel, at: float, before: float, after: Band | None, verdict: Verdict, headline: str,
    refusal: str, heats: tuple[tuple[float, float], ...],
) -> Answer:  # fmt: skip
    hard_before, words_before = rockwell_words(before)
    hard_after, words_after = (None, refusal) if after is None else rockwell_words(after.middle_pa)
    shown = {"hardness_before": words_before, "hardness_after": words_after}
    if after is None:
        shown |= dict.fromkeys(("strength_after", "strength_after_low", "strength_after_high"), refusal)
    return Answer(
        verdict=verdict,
        headline=headline,
        big="strength_after",
        results={
            "strength_before": before,
            "strength_after": None if after is None else after.middle_pa,
            "strength_after_low": None if after is None else after.low_pa,
            "strength_after_high": None if after is None else after.high_pa,
            "hardness_before": hard_before,
            "hardness_after": hard_after,
        },
        shown=shown,
        steps=_steps(say, steel, at, before, after, heats),
        cautions=_CAUTIONS,
        figure=tempering_figure(
            steel.name, steel.pieces, (at, before), None if after is None else (after.low_pa, after.middle_pa, after.high_pa), say
        ),
        citations=(Citation("temper-data-pages", f"AISI {steel.name}"),),
    )  # fmt: skip


def _steps(
    say: Say, steel: TemperedSteel, at: float, before: float, after: Band | None, heats: tuple[tuple[float, float], ...]
) -> tuple[Step, ...]:  # fmt: skip
    first = parameter(at, 1.0)
    steps = [
        Step(
            "Tempering parameter before",
            "T (20 + log t) / 1000, T in kelvin, t in hours",
            f"{at + 273.15:.0f} × (20 + log 1) / 1000",
            f"{first:.2f}",
        )
    ]
    for degc, hours in heats:
        steps.append(
            Step(
                f"Heat of {say.of(degc, 'temperature')}, alone",
                "T (20 + log t) / 1000",
                f"{degc + 273.15:.0f} × (20 + log {number_text(hours)}) / 1000",
                f"{parameter(degc, hours):.2f}",
            )
        )
    if after is not None:
        scatter = say.of(steel.scatter_pa(), "pressure", reading=_KSI)
        steps.append(
            Step(
                "Band",
                "constant 15 to 20, plus and minus the scatter of the data",
                f"scatter {scatter}",
                f"{say.of(after.low_pa, 'pressure', reading=_KSI)} to {say.of(after.high_pa, 'pressure', reading=_KSI)}",
            )
        )
    steps.append(
        Step("Strength before", "from the test pieces", f"tempered at {say.of(at, 'temperature')}", say.of(before, "pressure", reading=_KSI))
    )  # fmt: skip
    return tuple(steps)


_CAUTIONS = (
    Caution(
        "This is a test piece of known steel. Your hook's steel, its tempering and the heat it met are not known. A heated hook "
        "has no rating.",
        "prohibition",
    ),
    Caution("Softer is not the only harm. In some bands heat makes hardened steel brittle while the strength looks fine.", "warning"),
    Caution("The data do not state the tempering time; one hour is taken.", "note"),
)  # fmt: skip

_HEATED_TO = Input("heated_to", "Heated again to", "quantity", "temperature", above=-459.67, at_most=_MELTING_F,
                   help="The hottest it got.")  # fmt: skip
_MINUTES = Input("minutes", "Held for", "quantity", "time", above=0, at_most=1440,
                 help="Time at that heat: 10 seconds to 24 hours, the range of the rule's own tests.")  # fmt: skip

WORKSHEET = Worksheet(
    name="temper-loss",
    title="What does a second heat take from hardened steel?",
    summary="Strength and hardness of a hardened and tempered test piece before and after it is heated again.",
    inputs=(
        Input("steel", "Steel", "choice", choices=tuple(Choice(name, f"AISI {name}") for name in tempered_steel_names()),
              default="4140", help="Two steels with published tempering data. Your hook's maker names neither."),
        Input("tempered_at", "First tempered at", "quantity", "temperature", above=-459.67, at_most=_MELTING_F,
              help="What the heat treater set, for an hour."),
        _HEATED_TO, _MINUTES,
        Input("more_heats", "More heats, one after another", "rows", columns=(_HEATED_TO, _MINUTES), required=False, at_least=0, at_most=12,
              help="Leave empty for one heat."),
    ),
    results=(
        Result("strength_after", "Strength after, middle of the band", "pressure", *_KSI),
        Result("strength_after_low", "Strength after, low", "pressure", *_KSI, rounding="down"),
        Result("strength_after_high", "Strength after, high", "pressure", *_KSI),
        Result("strength_before", "Strength before", "pressure", *_KSI),
        Result("hardness_before", "Hardness before (Rockwell C)"),
        Result("hardness_after", "Hardness after (Rockwell C)"),
    ),
    compute=compute,
    example={"steel": "4140", "tempered_at": "800 °F", "heated_to": "1,200 °F", "minutes": "5 min"},
    example_story="The yard's apprentice warms a sprung 4140 test bar with the torch to push it straight: dull red for five minutes.",
    citations=(Citation("hollomon-jaffe", "100 to 700 °C, 10 s to 24 h"), Citation("astm-a370", "hardness conversion"),
               Citation("astm-e140", "hardness conversion")),
)  # fmt: skip
