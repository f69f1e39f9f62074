"""What does a colour on steel tell, and what did that heat do?

Colours from W. H. Dooley, Applied Science for Metal Workers (1919). A colour is one-way evidence: a tint proves heat,
no tint proves nothing, for tints are ground off, blasted and painted over. Bands of harm from the tables embrittlement,
chain-heat-asme and sling-temperature-limits.
"""

from __future__ import annotations

import functools
from dataclasses import dataclass

from calc.figures.heat_colour import colour_figure, whole_degrees
from calc.heating.tempering import condition_pa, tempered_steel
from calc.heating.weld_cooling import HARDENS_ABOVE_DEGC, MELTING_DEGC
from calc.tables import Row, number, table, value_si
from calc.worksheet import (
    Answer,
    Caution,
    CautionKind,
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


@dataclass(frozen=True)
class Colour:
    """A colour as printed: its key and name, kind (oxide_tint or incandescence), and its heat [deg C]."""

    key: str
    name: str
    kind: str
    degc: float
    hottest_degc: float

    @property
    def words(self) -> str:
        """`straw yellow tint` or `cherry red glow`."""
        return f"{self.name} {'tint' if self.kind == 'oxide_tint' else 'glow'}"


@functools.cache
def colours() -> tuple[Colour, ...]:
    """The colours of the table temper-colours, coolest first, by their printed degrees Fahrenheit."""
    rows = [row for row in table("temper-colours").rows if row["unit"] == "degF"]
    found: list[Colour] = []
    for row in rows:
        if row["quantity"] != "temperature_high":
            found.append(_colour(row, rows))
    return tuple(sorted(found, key=lambda colour: colour.degc))


def _colour(row: Row, rows: list[Row]) -> Colour:
    degc = value_si(row, "temperature")
    top = [r for r in rows if r["colour"] == row["colour"] and r["quantity"] == "temperature_high"]
    hottest = value_si(top[0], "temperature") if top else degc
    return Colour(row["colour"], row["colour"].replace("-", " "), row["kind"], degc, hottest)


def heat_of(colour: Colour) -> tuple[float, float]:
    """The heats [deg C] a colour may stand for: from the next cooler printed colour to the next hotter one."""
    known = colours()
    at = known.index(colour)
    low = known[max(0, at - 1)].degc
    high = known[at + 1].degc if at + 1 < len(known) else colour.hottest_degc
    return low, high


def colour_at(temperature_degc: float) -> Colour | None:
    """The colour that steel has reached at a heat [deg C]: the hottest printed one at or below it; None if none."""
    reached = [colour for colour in colours() if colour.degc <= temperature_degc + 1e-9]
    return reached[-1] if reached else None


def _limit(name: str, **conditions: str) -> float:
    """The first printed temperature [deg C] that fits."""
    return value_si(table(name).where(**conditions)[0], "temperature")


@dataclass(frozen=True)
class Harm:
    """One thing that heat does: its name, the band [deg C] it does it in, and the words."""

    name: str
    from_degc: float
    to_degc: float
    words: str


def harms(say: Say) -> tuple[Harm, ...]:
    """What each band of heat does to hardened and tempered steel, coolest first."""

    def brittle(name: str, phenomenon: str, words: str) -> Harm:
        low, high = (
            value_si(
                table("embrittlement").one(phenomenon=phenomenon, case="usual", quantity=end, unit="degF"),
                "temperature",
            )
            for end in ("temperature_from", "temperature_to")
        )
        return Harm(name, low, high, f"{name}: {words}")

    out = _limit("sling-temperature-limits", item="alloy_chain_sling", quantity="remove_above")
    lasting = {
        grade: min(
            value_si({**row, "value": row["temperature_degF"], "unit": "degF"}, "temperature")
            for row in table("chain-heat-asme").where(grade=grade, quantity="reduction_afterwards")
            if number(row) > 0
        )
        for grade in ("80", "100")
    }
    steel = tempered_steel("4140")
    soft = say.of(condition_pa("4140", "annealed", "yield_strength"), "pressure", reading=_KSI)
    hard = say.of(value_si(table("tempering-data").one(steel="4140", temper_degC="540", quantity="yield_strength"), "pressure"), "pressure", reading=_KSI)  # fmt: skip
    return (
        brittle("Blue brittleness", "blue_brittleness", "while it is this hot, steel is stronger but snaps more easily."),
        brittle("Tempered-martensite brittleness", "tempered_martensite_embrittlement",
                "hardened steel held in this band stays brittle after it cools."),
        Harm("Grade 100 chain", lasting["100"], out, "Grade 100 chain loses rating for good from this heat on (ASME B30.9)."),
        Harm("Grade 80 chain", lasting["80"], out, "Grade 80 chain loses rating for good from this heat on (ASME B30.9)."),
        brittle("Temper brittleness", "temper_embrittlement", "alloy steel held here, or cooled slowly through it, turns brittle."),
        Harm("Softening", steel.pieces[2][0], HARDENS_ABOVE_DEGC, "Softening: tempered again, hotter than many parts were tempered."),
        Harm("Out of service", out, MELTING_DEGC * 2,
             f"Over {whole_degrees(say, out)} alloy chain is taken out of service for good (29 CFR 1910.184(e)(6))."),
        Harm("Heat treatment gone", HARDENS_ABOVE_DEGC, MELTING_DEGC * 2,
             f"The heat treatment is gone. Cooled fast the steel is glass-hard; cooled slowly 4140 yields at about {soft}, "
             f"where it gave {hard} when tempered at {whole_degrees(say, 540.0)}."),
    )  # fmt: skip


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    if given.text("colour") == "none":
        return _no_colour(say)
    if given.has("colour"):
        colour = next(known for known in colours() if known.key == given.text("colour"))
        low, high = heat_of(colour)
        at = colour.degc
        first = f"A {colour.words} means the steel reached about {whole_degrees(say, at)}"
    elif given.has("temperature"):
        at = low = high = given.si("temperature")
        reached = colour_at(at)
        seen = f"shows {reached.words} at most" if reached else "shows no colour"
        first = f"Steel heated to {whole_degrees(say, at)} {seen}"
    else:
        raise given.refuse("colour", "is missing. Pick the colour you see, or give a temperature.")
    met = [harm for harm in harms(say) if harm.from_degc <= high and harm.to_degc >= low]
    coolest = harms(say)[0].from_degc
    verdict: Verdict = "stop" if high >= coolest else "unknown"
    end = (
        "Stop: rated hardware that got this hot by accident has no rating."
        if verdict == "stop"
        else "No rule prints a loss this cool, but a colour or a thermometer cannot give a rating."
    )
    words = " ".join(harm.words for harm in met) or "Nothing lasting is printed for this heat."
    return Answer(
        verdict=verdict,
        headline=f"{first}. {end}",
        big="what_happened",
        results={
            "temperature": at, "temperature_low": low, "temperature_high": high, "what_happened": words,
            "colour": reached.words if (reached := colour_at(at)) else "none yet",
        },
        shown={
            "temperature": whole_degrees(say, at),
            "temperature_low": whole_degrees(say, low),
            "temperature_high": whole_degrees(say, high),
        },
        steps=tuple(
            Step(harm.name, "band of heat", _band(say, harm), "met") for harm in met
        ),
        cautions=_cautions(stop=verdict == "stop"),
        figure=colour_figure([(c.name, c.kind, c.degc) for c in colours()], low, high, say),
    )  # fmt: skip


def _band(say: Say, harm: Harm) -> str:
    start = whole_degrees(say, harm.from_degc)
    return (
        f"{start} and up" if harm.to_degc > MELTING_DEGC else f"{start} to {whole_degrees(say, harm.to_degc)}"
    )


def _no_colour(say: Say) -> Answer:
    return Answer(
        verdict="unknown",
        headline="No colour proves nothing. Tints wear, grind and blast off, and paint hides them.",
        big="what_happened",
        results={"what_happened": "Cannot be told.", "colour": "none seen"},
        shown=dict.fromkeys(("temperature", "temperature_low", "temperature_high"), "cannot be told"),
        cautions=_cautions(stop=False),
        figure=colour_figure([(c.name, c.kind, c.degc) for c in colours()], None, None, say),
    )


def _cautions(stop: bool) -> tuple[Caution, ...]:
    first: tuple[str, CautionKind] = (
        ("Take rated hardware with a heat colour out of use and mark it so. Polishing the tint off mends nothing.", "prohibition")
        if stop
        else ("If you know or suspect that a part met a torch, a weld or a fire, take it out of use, colour or not.", "mandatory")
    )  # fmt: skip
    return (
        Caution(*first),
        Caution(
            "A tint also needs time and bare steel, and it differs with the alloy: a long warm hold tints like a short hot "
            "one. A tint proves heat; no tint proves nothing.",
            "note",
        ),
        Caution("Glow is judged in dim light. In sunshine dull red is missed.", "note"),
    )


WORKSHEET = Worksheet(
    name="heat-colour",
    title="What does that colour on the steel mean?",
    summary="From a tint or a glow to the heat behind it, and what that heat did to hardened and tempered steel.",
    inputs=(
        Input("colour", "Colour you see", "choice", required=False,
              choices=(*(Choice(c.key, c.words) for c in colours()), Choice("none", "none to be seen")),
              help="The hottest colour anywhere on the part. Tints stay after cooling; a glow you saw while it was hot."),
        Input("temperature", "Or the temperature it reached", "quantity", "temperature", at_least=-459.67, at_most=2750, required=False,
              help="If you measured it. The colour counts where both are given."),
    ),
    results=(
        Result("what_happened", "What that heat did"),
        Result("temperature", "Printed heat of the colour", "temperature"),
        Result("temperature_low", "It may have been as little as", "temperature"),
        Result("temperature_high", "It may have been as much as", "temperature"),
        Result("colour", "Colour"),
    ),
    compute=compute,
    example={"colour": "dark-blue"},
    example_story="The yard finds a dark blue band on the shank of a hoist hook that hung beside the welding bench.",
    citations=(Citation("dooley-1919", "colours of tempering and of heated steel"), Citation("embrittlement-notes", ""),
               Citation("asme-b30-9", "Table 9-1.8.1-1"), Citation("osha-1910-184", "1910.184(e)(6)"),
               Citation("temper-data-pages", "AISI 4140")),
)  # fmt: skip
