"""What does a colour on steel tell, and what did that heat do?

Colours from W. H. Dooley, Applied Science for Metal Workers (1919) (calc.heating.temper_colours), bands of harm in
calc.heating.harms. A colour is one-way evidence: a tint proves heat, no tint proves nothing, for tints are ground off,
blasted and painted over.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.heat_colour import Rung, Span, colour_figure
from calc.heating.harms import Harm, harms
from calc.heating.temper_colours import Colour, colour_at, colours, heat_of
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput
from calc.reasons import Reason, note, stop, unknown
from calc.words.facts import Absent, Fact, Listing, Message, Option, absent, degrees, message
from calc.words.writer import Writer

_NO_COLOUR = "none"


@dataclass(frozen=True)
class _Heat:
    """A heat as read from a colour or a thermometer: its middle and both ends [deg C], and what is told of it."""

    middle_degc: float
    low_degc: float
    high_degc: float
    told: Message


def _by_colour(key: str) -> _Heat:
    colour = next(known for known in colours() if known.key == key)
    told = message("told-by-colour", seen=_seen(colour), heat=degrees(colour.degc))
    return _Heat(colour.degc, *heat_of(colour), told)


def _by_thermometer(degc: float) -> _Heat:
    reached = colour_at(degc)
    if reached is None:
        return _Heat(degc, degc, degc, message("told-by-heat-without-colour", heat=degrees(degc)))
    return _Heat(degc, degc, degc, message("told-by-heat", heat=degrees(degc), seen=_seen(reached)))


def _seen(colour: Colour) -> Option:
    return Option("colour", colour.key)


@dataclass(frozen=True)
class Found:
    """The heat that a part reached [deg C], and the harms of it; no heat where no colour was seen and none was measured.

    hotter -- which of colour and thermometer counts, where both were given
    """

    heat: _Heat | Absent
    hotter: Message | None
    harms: tuple[Harm, ...]
    what_happened: Message | Absent
    temperature_degc: float | Absent
    temperature_low_degc: float | Absent
    temperature_high_degc: float | Absent
    colour: Message | Absent


def find(given: Given) -> Found:
    """The heat and its harms; see WORKSHEET for inputs and results."""
    colour = given.text("colour")
    seen = _by_colour(colour) if colour not in ("", _NO_COLOUR) else None
    measured = _by_thermometer(given.si("temperature")) if given.has("temperature") else None
    if seen is None and measured is None:
        if not colour:
            raise given.refuse("colour", "colour-missing")
        unseen = absent("cannot-be-told")
        return Found(unseen, None, (), absent("nothing-told"), unseen, unseen, unseen, absent("none-seen"))
    heat, hotter = _hotter(seen, measured)
    met = tuple(harm for harm in harms() if harm.meets(heat.low_degc, heat.high_degc))
    reached = colour_at(heat.middle_degc)
    return Found(
        heat=heat,
        hotter=hotter,
        harms=met,
        what_happened=_what_happened(met),
        temperature_degc=heat.middle_degc,
        temperature_low_degc=heat.low_degc,
        temperature_high_degc=heat.high_degc,
        colour=message("colour-reached", seen=_seen(reached)) if reached else absent("none-yet"),
    )


def _hotter(seen: _Heat | None, measured: _Heat | None) -> tuple[_Heat, Message | None]:
    """The heat that counts, and which of two it is: the hotter end by end, so that neither hides what the other proves."""
    both = [heat for heat in (seen, measured) if heat is not None]
    if seen is None or measured is None:
        return both[0], None
    by_thermometer = measured.middle_degc > seen.middle_degc
    return _Heat(
        max(heat.middle_degc for heat in both),
        max(heat.low_degc for heat in both),
        max(heat.high_degc for heat in both),
        (measured if by_thermometer else seen).told,
    ), message("the-thermometer" if by_thermometer else "the-colour")


def _what_happened(met: tuple[Harm, ...]) -> Message:
    if not met:
        return message("nothing-printed")
    said = tuple(message(f"harm-{harm.code}.words", **harm.facts) for harm in met)
    return message("harms-met", harms=Listing(said, "space"))


def judge(found: Found) -> tuple[Reason, ...]:
    """A heat over the coolest band of harm stops rated hardware; below it, or unseen, nothing is known."""
    told = (_of_the_heat(found.heat), note("time-and-bare-steel"), note("dim-light"))
    return told if found.hotter is None else (*told, note("hotter-counts", "warning", which=found.hotter))


def _of_the_heat(heat: _Heat | Absent) -> Reason:
    if isinstance(heat, Absent):
        return unknown("no-colour")
    if heat.high_degc >= harms()[0].from_degc:
        return stop("overheated", told=heat.told)
    return unknown("no-printed-loss", told=heat.told)


def work(found: Found) -> tuple[Step, ...]:
    """The bands of harm that the heat meets."""
    return tuple(
        step("harm", name=message(f"harm-{harm.code}"), band=_band(harm), **harm.facts)
        for harm in found.harms
    )


def _band(harm: Harm) -> Message:
    start = degrees(harm.from_degc)
    if math.isinf(harm.to_degc):
        return message("band-and-up", start=start)
    return message("band-to", start=start, end=degrees(harm.to_degc))


def shown(found: Found) -> dict[str, Fact]:
    """Heats read in whole degrees."""
    if isinstance(found.heat, Absent):
        return {}
    return {
        "temperature": degrees(found.heat.middle_degc),
        "temperature_low": degrees(found.heat.low_degc),
        "temperature_high": degrees(found.heat.high_degc, "demand"),
    }


def draw(found: Found, writer: Writer) -> Figure:
    """The ladder of colours, with the heat marked."""
    rungs = [
        Rung(colour.degc, writer.plain(degrees(colour.degc)), writer.plain(_seen(colour)))
        for colour in colours()
    ]
    if isinstance(found.heat, Absent):
        return colour_figure(rungs, None, writer.text("figure-no-colour"))
    low, high = found.heat.low_degc, found.heat.high_degc
    caption = writer.text(
        "figure-span" if high > low else "figure-one-heat", low=degrees(low), high=degrees(high)
    )
    return colour_figure(rungs, Span(low, high), caption)


WORKSHEET = Worksheet(
    name="heat-colour",
    inputs=(
        ChoiceInput("colour", choices=(*(colour.key for colour in colours()), _NO_COLOUR), required=False),
        QuantityInput(
            "temperature",
            dimension="temperature",
            bounds=Bounds(at_least=-459.67, at_most=2750),
            required=False,
            sense="demand",
        ),
    ),
    results=(
        Result("what_happened"),
        Result("temperature", "temperature"),
        Result("temperature_low", "temperature"),
        Result("temperature_high", "temperature"),
        Result("colour"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    shown=shown,
    large="what_happened",
    example={"colour": "dark-blue"},
    citations=(
        Citation("dooley-1919", "colours of tempering and of heated steel"),
        Citation("embrittlement-notes", ""),
        Citation("asme-b30-9", "Table 9-1.8.1-1"),
        Citation("osha-1910-184", "1910.184(e)(6)"),
        Citation("temper-data-pages", "AISI 4140"),
    ),
)
