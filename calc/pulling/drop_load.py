"""How hard does a load jerk its sling when it drops?

A load that slips a little before the slack is taken up pulls many times its weight: n = 1 + sqrt(1 + 2h / stretch)
(Gere, Mechanics of Materials, section 2.8; Hibbeler, Mechanics of Materials, section 14.4). The stretch at rest is given, or
worked out for a chain by its modulus.
"""

from __future__ import annotations

from calc.figures.pulling import drop_figure
from calc.inspecting.chain_marks import ChainSize, chain_sizes, may_lift, size_named
from calc.inspecting.chain_ratings import lifting_ratings
from calc.inspecting.nominal_wire import nominal_m
from calc.pulling.energy import (
    chain_modulus_citation,
    chain_modulus_pa,
    chain_stiffness_n_per_m,
    drop_factor,
    drop_speed_m_per_s,
    stretch_m,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, number_text
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


def _size(given: Given) -> ChainSize | None:
    if not given.has("size"):
        return None
    size = size_named(given.text("size"))
    if size is None:
        raise given.refuse(
            "size", f"is not a size of the tables. Give one of: {', '.join(s.words for s in chain_sizes())}."
        )  # fmt: skip
    return size


def _static_stretch(given: Given, size: ChainSize | None, weight_n: float) -> float:
    if given.has("stretch"):
        return given.si("stretch")
    if size is None:
        raise given.refuse("stretch", "is needed, or the chain's size and length. Give one of them.")
    if not given.has("length"):
        raise given.refuse("length", "is needed to find how far the chain stretches. Give its length.")
    return stretch_m(weight_n, chain_stiffness_n_per_m(nominal_m(size), given.si("length")))


def _rating_kg(given: Given, size: ChainSize | None) -> tuple[float | None, tuple[Citation, ...]]:
    """Rating [kg]: as given, else of the chain by grade and size; None where there is none."""
    if given.has("rating"):
        return given.si("rating"), ()
    if size is None or not given.has("grade") or may_lift(given.text("grade")) is not True:
        return None, ()
    found = lifting_ratings(given.text("grade"), size)
    if not found:
        return None, ()
    lowest = min(found, key=lambda one: one.working_load_limit_kg)
    return lowest.working_load_limit_kg, (Citation(lowest.source, lowest.locator),)


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    weight_kg = given.si("weight")
    weight_n = weight_kg * STANDARD_GRAVITY_M_PER_S2
    size = _size(given)
    static = _static_stretch(given, size, weight_n)
    height = given.si("drop_height")
    factor = drop_factor(height, static)
    peak = factor * weight_n
    rating, sources = _rating_kg(given, size)
    use = None if rating is None else peak / (rating * STANDARD_GRAVITY_M_PER_S2)
    barred = rating is None and given.has("grade") and may_lift(given.text("grade")) is False
    verdict: Verdict = "stop" if barred or (use is not None and use > 1 + 1e-12) else "caution"
    return Answer(
        verdict=verdict,
        headline=_headline(say, given, factor, peak, rating, use, barred),
        big="peak_force",
        results={
            "factor": factor, "peak_force": peak, "static_stretch": static, "peak_stretch": static * factor,
            "speed": drop_speed_m_per_s(height, STANDARD_GRAVITY_M_PER_S2), "use_percent": use, "rating": rating,
        },
        shown={} if rating is not None else {
            "use_percent": "no rating to hold it against", "rating": "no lifting rating" if barred else "none given",
        },
        steps=_steps(say, given, size, weight_n, static, height, factor, peak),
        cautions=_cautions(use, barred, given.has("stretch")),
        figure=drop_figure(height, static, static * factor, weight_kg, peak, say),
        citations=sources if given.has("stretch") else (*sources, Citation(**vars(chain_modulus_citation()))),
    )  # fmt: skip


def _headline(
    say: Say, given: Given, factor: float, peak: float, rating: float | None, use: float | None, barred: bool
) -> str:
    first = (
        f"Dropped {say.of(given.si('drop_height'), 'length')}, the load pulls {number_text(factor, 3, 'up')} times its "
        f"weight: {say.force(peak, 'up')}."
    )
    if barred:
        return f"{first} Grade {given.text('grade')} chain has no lifting rating at all."
    if use is None or rating is None:
        return f"{first} Rigging is rated for steady loads, not for this."
    rated = say.of(rating, "weight", "down", 4)
    share = number_text(use * 100, 3, "up")
    return f"{first} That is {share}% of the {rated} it is rated for, and a rating is for a steady pull."


def _steps(
    say: Say, given: Given, size: ChainSize | None, weight_n: float, static: float, height: float, factor: float,
    peak: float,
) -> tuple[Step, ...]:  # fmt: skip
    if given.has("stretch") or size is None:
        first = Step("Stretch at rest", "as given", say.one(static, "length"), say.of(static, "length"))
    else:
        wire = nominal_m(size)
        first = Step(
            "Stretch at rest", "weight × length / (modulus × 2 × π d²/4)",
            f"{say.one(weight_n, 'force')} × {say.one(given.si('length'), 'length')} / "
            f"({number_text(chain_modulus_pa(wire) / 1e9, 3)} GPa × 2 × π/4 × {say.one(wire, 'length')}²)",
            say.of(static, "length"),
        )  # fmt: skip
    return (
        first,
        Step(
            "Drop factor", "1 + √(1 + 2 × drop / stretch)",
            f"1 + √(1 + 2 × {say.one(height, 'length')} / {say.one(static, 'length')})", number_text(factor, 4),
        ),
        Step("Peak pull", "factor × weight", f"{number_text(factor, 4)} × {say.one(weight_n, 'force')}",
             say.force(peak, "up")),
    )  # fmt: skip


def _cautions(use: float | None, barred: bool, stretch_given: bool) -> tuple[Caution, ...]:
    cautions = []
    if barred or (use is not None and use > 1 + 1e-12):
        cautions.append(
            Caution("Take the slack up by hand-speed before the load leaves the floor. Never snatch, never let it run.", "prohibition")
        )  # fmt: skip
    cautions.append(
        Caution("After any drop the whole string is out of use until every part is inspected: hook, latch, links, pins.", "mandatory")
    )  # fmt: skip
    cautions.append(
        Caution("A jerk breaks cold, cracked or hardened steel without a warning stretch, far under the force worked out here.", "warning")
    )  # fmt: skip
    if not stretch_given:
        cautions.append(
            Caution("The chain's modulus is measured on large mooring chain. In shop sizes take the answer as its size only; crane, hook and floor give a little and soften it.", "note")
        )  # fmt: skip
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="drop-load",
    title="How hard does a load jerk its sling when it drops?",
    summary="The peak pull when a load falls a little before its sling comes taut, held against the rating.",
    inputs=(
        Input("weight", "Weight of the load", "quantity", "weight", above=0, at_most=2_000_000),
        Input("drop_height", "How far it drops before the sling is taut", "quantity", "length", at_least=0, at_most=2000,
              help="Slack, a slipping hitch, a link that flips. 0: let go on a taut sling."),
        Input("stretch", "Stretch of the sling under that weight at rest", "quantity", "length", above=0, at_most=400,
              required=False, help="If you measured it. Else give the chain's size and length."),
        Input("grade", "Grade of the chain", "choice", required=False,
              choices=tuple(Choice(g, f"Grade {g}") for g in ("80", "100", "70", "43", "30", "8", "5", "4"))),
        Input("size", "Size of the chain", "text", required=False, help="Such as 3/8 or 10 mm."),
        Input("length", "Length of the chain", "quantity", "length", "ft", "m", above=0, at_most=1000, required=False),
        Input("rating", "Or: rating of the sling, from its tag", "quantity", "weight", above=0, at_most=2_000_000,
              required=False),
    ),
    results=(
        Result("peak_force", "Peak pull", "force", rounding="up"),
        Result("factor", "Times its weight", digits=3, rounding="up"),
        Result("use_percent", "Share of the rating", "fraction", rounding="up"),
        Result("rating", "Rating", "weight", rounding="down", digits=4),
        Result("static_stretch", "Stretch at rest", "length"),
        Result("peak_stretch", "Stretch at the peak", "length"),
        Result("speed", "Speed when the sling comes taut", "speed", "ft/s", "m/s"),
    ),
    compute=compute,
    example={
        "weight": "870 lb", "drop_height": "3 in", "grade": "80", "size": "5/16", "length": "6.5 ft",
    },
    example_story="The yard's diesel hangs 3 in off its bed when a twisted link in the sling lets go and rights itself.",
    citations=(Citation("gere", "s. 2.8, impact loading"),),
)  # fmt: skip
