"""What does my sling hold in this hitch?

The vertical rating on the tag, times what the hitch, the angle and the bend leave of it (calc.lifting.hitch_factors).
A basket has two legs: twice the vertical rating times the sine of their angle from the horizontal (statics; a navy
text that prints four is wrong for an inclined basket).
"""

from __future__ import annotations

import math

from calc.figures.hitches import hitch_figure
from calc.lifting.hitch_factors import HARDEST_BEND, Share, bend_share, choke_angle_share, choker_share
from calc.lifting.leg_geometry import CAREFUL_ANGLE_DEG, LOWEST_ANGLE_DEG
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
    worst,
)

KINDS = (
    Choice("wire-rope", "Wire rope"), Choice("chain", "Alloy chain"), Choice("web-sling", "Web or round sling"),
    Choice("fibre-rope", "Natural fibre rope"),
)  # fmt: skip
LOOSE_CHOKE_DEG = 120.0
"""Angle of choke that a choke takes by itself, pulled tight by the load: over it nothing is lost."""


def _hitch_share(given: Given) -> Share:
    hitch = given.text("hitch")
    if hitch == "choker":
        return choker_share(given.text("sling_kind"))
    if hitch == "basket":
        return Share(2.0, "two legs of a basket", ())
    return Share(1.0, "straight", ())


def _angle_share(given: Given) -> Share:
    hitch = given.text("hitch")
    if hitch == "choker":
        return choke_angle_share(given.si("choke_angle"))
    if hitch == "basket":
        angle = given.si("basket_angle")
        return Share(math.sin(math.radians(angle)), f"legs at {angle:.0f}° from the horizontal", ())
    return Share(1.0, "straight", ())


def _bend(given: Given) -> tuple[Share, float | None]:
    """The share a bend leaves, and object over rope diameter; a share of 1 where no bend counts or none is known."""
    if given.text("hitch") == "vertical" or given.text("sling_kind") != "wire-rope":
        return Share(1.0, "no bend counted", ()), None
    if not given.has("object_diameter") and not given.has("sling_diameter"):
        return Share(1.0, "bend not known", ()), None
    ratio = given.si("object_diameter") / given.si("sling_diameter")
    if ratio < HARDEST_BEND - 1e-12:
        raise given.refuse(
            "object_diameter", "is less than the rope's own. Wire rope is not bent so hard; pad the corner."
        )
    return bend_share(ratio), ratio


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    rating_kg = given.si("rating")
    hitch, angle = _hitch_share(given), _angle_share(given)
    bend, ratio = _bend(given)
    capacity = rating_kg * hitch.share * angle.share * bend.share
    shares = [number_text(part.share, 3, "down") for part in (hitch, angle, bend)]
    use = given.si("load") / capacity if given.has("load") else None
    low_basket = given.text("hitch") == "basket" and given.si("basket_angle") < LOWEST_ANGLE_DEG - 1e-9
    shown = {}
    if ratio is None:
        shown["bend_ratio"] = "no bend counted"
    if use is None:
        shown["use_percent"] = "no load given"
    return Answer(
        verdict=_verdict(given, use, low_basket),
        headline=_headline(given, say, capacity, use, low_basket),
        big="capacity",
        results={
            "capacity": capacity, "factor_hitch": hitch.share, "factor_angle": angle.share, "factor_bend": bend.share,
            "bend_ratio": ratio, "use_percent": use,
        },
        shown=shown,
        steps=(
            Step("Hitch", hitch.words, "", f"× {shares[0]}"),
            Step("Angle", angle.words, "", f"× {shares[1]}"),
            Step("Bend", bend.words, "1 − 0.5 / √(D/d)" if ratio else "", f"× {shares[2]}"),
            Step("Holds", "rating × hitch × angle × bend",
                 " × ".join((say.one(rating_kg, "weight"), *shares)),
                 say.weight(capacity, "down")),
        ),
        cautions=_cautions(given, ratio, use, low_basket),
        figure=hitch_figure(
            given.text("hitch"), given.si("basket_angle"), given.si("choke_angle"), capacity, say
        ),
        citations=hitch.citations + angle.citations + bend.citations,
    )  # fmt: skip


def _verdict(given: Given, use: float | None, low_basket: bool) -> Verdict:
    verdicts: list[Verdict] = ["caution" if use is None else "ok"]
    if low_basket or (use is not None and use > 1.0 + 1e-12):
        verdicts.append("stop")
    if given.text("hitch") == "basket" and given.si("basket_angle") < CAREFUL_ANGLE_DEG - 1e-9:
        verdicts.append("caution")
    if given.text("hitch") == "choker":
        verdicts.append("caution")
    return worst(*verdicts)


def _headline(given: Given, say: Say, capacity: float, use: float | None, low_basket: bool) -> str:
    if low_basket:
        return "The legs of the basket lie under 30° from the horizontal: do not lift like this. Use a longer sling."
    word = {"vertical": "straight up", "choker": "in a choke", "basket": "in a basket"}[given.text("hitch")]
    first = f"Put on {word}, it holds {say.weight(capacity, 'down')}."
    if use is None:
        return first
    share = number_text(use * 100, 3 if use >= 1 else 2, "up")
    end = "Too much." if use > 1.0 + 1e-12 else ""
    return f"{first} Your load takes {share}% of it. {end}".strip()


def _cautions(given: Given, ratio: float | None, use: float | None, low_basket: bool) -> tuple[Caution, ...]:
    hitch, kind = given.text("hitch"), given.text("sling_kind")
    cautions: list[Caution] = []
    if use is not None and use > 1.0 + 1e-12:
        cautions.append(Caution("The load is over what this hitch holds. Do not lift.", "prohibition"))
    if low_basket:
        cautions.append(Caution("No sling goes under 30° from the horizontal.", "prohibition"))
    if hitch == "choker":
        cautions.append(
            Caution("Do not hammer a choke down to tighten it: that makes its angle small and its hold weak.")
        )
        cautions.append(
            Caution(
                "The choke-angle table is from memory of ASME B30.9; the tag and its maker's table govern.",
                "note",
            )
        )
        if kind == "web-sling":
            cautions.append(
                Caution(
                    "Use the choker rating on the sling's own tag if it gives one and it is smaller.", "note"
                )
            )
    if hitch == "basket":
        cautions.append(
            Caution("A basket can slide along the load. Both legs must bear, and the load must not roll out.")
        )
    if hitch != "vertical" and kind == "wire-rope" and ratio is None:
        cautions.append(
            Caution(
                "Give the diameters of object and rope: round anything small the rope holds as little as half."
            )
        )
    if hitch != "vertical" and kind != "wire-rope":
        cautions.append(
            Caution(
                "Pad every corner. An edge cuts a web or a rope at once, and bends a chain link.", "mandatory"
            )
        )
    cautions.append(
        Caution("The tag on the sling governs. No readable tag: do not lift with it.", "mandatory")
    )
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="hitch",
    title="What does my sling hold in this hitch?",
    summary="Capacity of one sling straight, choked or in a basket, with its angle and its bend.",
    inputs=(
        Input("sling_kind", "Kind of sling", "choice", choices=KINDS, default="wire-rope"),
        Input("rating", "Vertical rating, from its tag", "quantity", "weight", above=0, at_most=2_000_000,
              help="For one straight leg. Other figures on the tag already count the hitch."),
        Input("hitch", "Hitch", "choice", default="vertical",
              choices=(Choice("vertical", "Straight up"), Choice("choker", "Choke"), Choice("basket", "Basket"))),
        Input("choke_angle", "Angle of the choke", "quantity", "angle", at_least=0, at_most=180, default="120",
              shown_when={"hitch": ("choker",)}, help="180° runs straight through the eye, 0° bends right back."),
        Input("basket_angle", "Angle of the basket's legs from the horizontal", "quantity", "angle", above=0, at_most=90,
              default="90", shown_when={"hitch": ("basket",)}, help="90° if both legs hang plumb."),
        Input("object_diameter", "Diameter of what it bends round", "quantity", "length", above=0, at_most=4000,
              required=False, shown_when={"sling_kind": ("wire-rope",), "hitch": ("choker", "basket")},
              help="The load, a pin or a corner's round."),
        Input("sling_diameter", "Diameter of the rope", "quantity", "length", above=0, at_most=12, required=False,
              shown_when={"sling_kind": ("wire-rope",), "hitch": ("choker", "basket")}, help="Across the crowns of the strands."),
        Input("load", "Weight of the load", "quantity", "weight", above=0, at_most=2_000_000, required=False,
              help="Left empty: only what it holds."),
    ),
    results=(
        Result("capacity", "It holds", "weight", rounding="down"),
        Result("use_percent", "Part of that used", "fraction", rounding="up"),
        Result("factor_hitch", "Factor of the hitch", rounding="down"),
        Result("factor_angle", "Factor of the angle", rounding="down"),
        Result("factor_bend", "Factor of the bend", rounding="down"),
        Result("bend_ratio", "Object over rope diameter"),
    ),
    compute=compute,
    example={
        "sling_kind": "wire-rope", "rating": "5.6 tons", "hitch": "basket", "basket_angle": "60°",
        "object_diameter": "4-1/2 in", "sling_diameter": "3/4 in", "load": "6,800 lb",
    },
    example_story="The yard lifts a hollow mast step with one wire rope sling laid under it as a basket.",
    citations=(Citation("osha-sling-guidance", "hitches; general text on sling angles"),),
)  # fmt: skip
