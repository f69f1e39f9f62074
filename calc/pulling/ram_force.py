"""How hard does my ram push at this pressure, and what pressure gives the pull I want?

Pascal's principle (OpenStax, College Physics 2e, chapter 11). One ram or several on one pump, pushing on the full bore
or pulling on the ring round the rod; the push on a hand pump's lever.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.figures.pulling import ram_figure
from calc.pulling.hydraulics import (
    bore_from_area_m,
    lever_ratio,
    pressure_for_force_pa,
    pump_pressure_pa,
    ram_area_m2,
    ram_force_n,
    travel_per_stroke_m,
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

NEAR_SHARE = 0.8
"""Over this share of a plate limit the answer is called careful (our own mark, no source)."""


@dataclass(frozen=True)
class _Pump:
    """A hand pump: area [m2], lever ratio [-], stroke of its piston [m] where known."""

    area_m2: float
    ratio: float
    stroke_m: float | None


def _area(given: Given) -> tuple[float, float, bool]:
    """Working area [m2] and bore [m] of one ram, and whether the oil is on the rod's side."""
    if given.has("bore") == given.has("area"):
        raise given.refuse("bore", "or the area is needed, one of the two. Give the bore, such as 2-1/8 in.")
    pull_side = given.text("direction") == "pull"
    if given.has("area"):
        return given.si("area"), bore_from_area_m(given.si("area")), pull_side
    bore = given.si("bore")
    if not pull_side:
        return ram_area_m2(bore), bore, False
    rod = given.si("rod")
    if rod >= bore:
        raise given.refuse("rod", "is not thinner than the bore. Give the diameter of the rod.")
    return ram_area_m2(bore, rod), bore, True


def _pump(given: Given) -> _Pump | None:
    """The hand pump, if any of it is given; then bore and both lever arms are needed."""
    names = ("pump_bore", "lever_to_hand", "lever_to_piston")
    if not any(given.has(name) for name in (*names, "pump_stroke")):
        return None
    ratio = lever_ratio(given.si("lever_to_hand"), given.si("lever_to_piston"))
    stroke = given.si("pump_stroke") if given.has("pump_stroke") else None
    return _Pump(ram_area_m2(given.si("pump_bore")), ratio, stroke)


def _pressure(given: Given, area_m2: float, rams: int, pump: _Pump | None) -> tuple[float, Step]:
    """The pressure [Pa] and how it was found: given, from the pull wanted, or from the push on the lever."""
    known = [name for name in ("pressure", "force", "hand_force") if given.has(name)]
    if len(known) != 1:
        raise given.refuse(
            known[1] if known else "pressure",
            "makes one too many. Give one of pressure, force wanted and push on the lever."
            if known
            else "is needed, or the force wanted, or the push on the lever.",
        )
    if known[0] == "pressure":
        pressure = given.si("pressure")
        return pressure, Step("Pressure", "as read", "", "")
    if known[0] == "force":
        pressure = pressure_for_force_pa(given.si("force"), area_m2 * rams)
        return pressure, Step("Pressure", "force / area of all rams", "", "")
    if pump is None:
        raise given.refuse("pump_bore", "is needed with a push on the lever. Give bore and both lever arms.")
    return pump_pressure_pa(given.si("hand_force"), pump.ratio, pump.area_m2), Step(
        "Pressure", "push × lever ratio / area of the pump piston", "", ""
    )


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    area, bore, pull_side = _area(given)
    rams = given.count("rams")
    pump = _pump(given)
    pressure, how = _pressure(given, area, rams, pump)
    each = ram_force_n(pressure, area)
    force = each * rams
    hand = None if pump is None else pressure * pump.area_m2 / pump.ratio
    travel = (
        None if pump is None or pump.stroke_m is None else travel_per_stroke_m(pump.stroke_m, pump.area_m2, area * rams)
    )  # fmt: skip
    verdict, over = _verdict(given, pressure, each)
    total = "The rams together" if rams > 1 else "The ram"
    action = "pull" if pull_side else "push"
    headline = (
        f"{total} {action}{'' if rams > 1 else 'es' if action == 'push' else 's'} {say.force(force)} at "
        f"{say.of(pressure, 'pressure')}."
    )
    return Answer(
        verdict=verdict,
        headline=f"{headline} {over}".strip(),
        big="pressure" if given.has("force") else "force",
        results={
            "force": force, "force_each": each, "pressure": pressure, "area": area, "hand_force": hand,
            "lever_ratio": None if pump is None else pump.ratio, "travel_per_stroke": travel,
        },
        shown={} if pump else {"hand_force": "give the pump to find it", "lever_ratio": "no pump given"},
        steps=_steps(say, given, area, rams, pressure, how, each, force, pump, hand),
        cautions=_cautions(given, verdict, rams),
        figure=ram_figure(
            bore, given.si("rod") if given.has("rod") else 0.0, pull_side, rams, say, pressure, force,
            given.si("pump_bore") if pump else None, (pump.ratio, hand) if pump and hand else None,
        ),
    )  # fmt: skip


def _verdict(given: Given, pressure: float, each: float) -> tuple[Verdict, str]:
    """The verdict from the plate limits, and words for what is over or missing."""
    shares = []
    if given.has("max_pressure"):
        shares.append((pressure / given.si("max_pressure"), "pressure on the plate"))
    if given.has("ram_capacity"):
        capacity_n = given.si("ram_capacity") * STANDARD_GRAVITY_M_PER_S2
        shares.append((each / capacity_n, "capacity of one ram"))
    if not shares:
        return "caution", "Hold it against the pressure and the capacity on the plates."
    share, name = max(shares)
    words = f"That is {number_text(share * 100, 3, 'up')}% of the {name}."
    if share > 1.0 + 1e-12:
        return "stop", f"{words} Too much."
    return ("caution" if share > NEAR_SHARE else "ok"), words


def _steps(
    say: Say, given: Given, area: float, rams: int, pressure: float, how: Step, each: float, force: float,
    pump: _Pump | None, hand: float | None,
) -> tuple[Step, ...]:  # fmt: skip
    area_words = say.of(area, "area", digits=4)
    if given.has("area"):
        first = Step("Area of one ram", "as given", area_words, area_words)
    elif given.text("direction") == "pull":
        bore, rod = say.one(given.si("bore"), "length"), say.one(given.si("rod"), "length")
        first = Step("Ring round the rod", "π/4 × (bore² − rod²)", f"π/4 × ({bore}² − {rod}²)", area_words)
    else:
        first = Step(
            "Area of one ram", "π/4 × bore²", f"π/4 × {say.one(given.si('bore'), 'length')}²", area_words
        )
    numbers = say.one(pressure, "pressure")
    if given.has("force"):
        numbers = f"{say.one(force, 'force')} / ({rams} × {say.one(area, 'area')})"
    steps = [first]
    if pump is not None and given.has("hand_force"):
        numbers = f"{say.one(given.si('hand_force'), 'force')} × {number_text(pump.ratio, 4)} / {say.one(pump.area_m2, 'area')}"
    steps.append(Step(how.label, how.formula, numbers, say.of(pressure, "pressure")))
    steps.append(
        Step("Force of one ram", "pressure × area", f"{say.one(pressure, 'pressure')} × {say.one(area, 'area')}", say.force(each))
    )  # fmt: skip
    if rams > 1:
        steps.append(
            Step("All rams", "number × force of one", f"{rams} × {say.one(each, 'force')}", say.force(force))
        )
    if pump is not None and hand is not None:
        steps.append(
            Step(
                "Push on the lever", "pressure × area of the pump piston / lever ratio",
                f"{say.one(pressure, 'pressure')} × {say.one(pump.area_m2, 'area')} / {number_text(pump.ratio, 4)}",
                say.force(hand, "up"),
            )
        )  # fmt: skip
    return tuple(steps)


def _cautions(given: Given, verdict: Verdict, rams: int) -> tuple[Caution, ...]:
    cautions = []
    if verdict == "stop":
        cautions.append(
            Caution(
                "That is over the plate. Do not pump there, and do not set the relief valve up.",
                "prohibition",
            )
        )
    cautions.append(
        Caution(
            "A pinhole in a hose cuts through a glove and the oil goes into the hand. Never feel for a leak; let the pressure off, then look. Oil under the skin is for a surgeon at once.",
            "prohibition",
        )
    )
    if rams > 1:
        cautions.append(
            Caution(
                "Rams on one pump share the pressure, not the travel. The lighter-loaded one moves first and tips the load. Watch both, stop often.",
                "warning",
            )
        )
    if given.text("direction") == "pull":
        cautions.append(
            Caution("On the pull side the rod takes area away: the same pressure gives less.", "note")
        )
    cautions.append(
        Caution(
            "Seals and rods rub, so a real ram gives a little less while it moves, and a gauge has its own error. Check the gauge first.",
            "note",
        )
    )
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="ram-force",
    title="How hard does my ram push at this pressure?",
    summary="Force from bore and pressure, or the pressure for a force wanted; several rams; the push on the pump's lever.",
    inputs=(
        Input("bore", "Bore of the ram", "quantity", "length", above=0, at_most=40, required=False,
              help="Inside diameter of the barrel, not the rod."),
        Input("area", "Or: effective area, from the plate", "quantity", "area", above=0, at_most=1300, required=False),
        Input("direction", "The ram", "choice", default="push",
              choices=(Choice("push", "Pushes (oil on the full bore)"), Choice("pull", "Pulls (oil on the rod's side)"))),
        Input("rod", "Diameter of the rod", "quantity", "length", above=0, at_most=40, required=False,
              shown_when={"direction": ("pull",)}),
        Input("rams", "Rams on the pump", "count", at_least=1, at_most=12, default="1"),
        Input("pressure", "Pressure", "quantity", "pressure", at_least=0, at_most=50000, required=False),
        Input("force", "Or: force wanted, all rams together", "quantity", "force", at_least=0, at_most=100_000_000,
              required=False),
        Input("max_pressure", "Highest pressure, from the plate", "quantity", "pressure", above=0, at_most=50000,
              required=False, help="The lowest of ram, pump, hose and coupling."),
        Input("ram_capacity", "Capacity of one ram, from its plate", "quantity", "weight", "short_ton", "t", above=0,
              at_most=2000, required=False),
        Input("pump_bore", "Bore of the hand pump", "quantity", "length", above=0, at_most=10, required=False),
        Input("pump_stroke", "Stroke of the pump piston", "quantity", "length", above=0, at_most=40, required=False),
        Input("lever_to_hand", "Lever: pivot to hand", "quantity", "length", above=0, at_most=200, required=False),
        Input("lever_to_piston", "Lever: pivot to pump piston", "quantity", "length", above=0, at_most=40,
              required=False),
        Input("hand_force", "Or: push on the lever", "quantity", "force", above=0, at_most=2000, required=False),
    ),
    results=(
        Result("force", "Force, all rams together", "force"),
        Result("force_each", "Force of one ram", "force"),
        Result("pressure", "Pressure", "pressure"),
        Result("area", "Working area of one ram", "area", digits=4),
        Result("hand_force", "Push on the lever", "force", rounding="up"),
        Result("lever_ratio", "Ratio of the lever", digits=4),
        Result("travel_per_stroke", "Travel of the rams for one stroke", "length"),
    ),
    compute=compute,
    example={
        "bore": "1.68 in", "pressure": "4,300 psi", "rams": "1", "max_pressure": "10,000 psi", "ram_capacity": "10 tons",
        "pump_bore": "7/16 in", "pump_stroke": "1 in", "lever_to_hand": "21 in", "lever_to_piston": "1-1/4 in",
    },
    ok_words="Inside the limits given",
    example_story="The yard's ten-ton ram pulls a bollard hook against the slip's bench; the gauge shows 4,300 psi.",
    citations=(Citation("openstax-physics", "ch. 11, Pascal's principle"),),
)  # fmt: skip
