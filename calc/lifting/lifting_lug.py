"""How may a plate lug fail, and which way first?

A study aid: each way of failing by its formula (calc.lifting.lug_strength; ASME BTH-1 recalled, not read), the weakest
named. It rates nothing. A lug that lifts is designed, welded and tested by people who answer for it.
"""

from __future__ import annotations

from calc.figures.lugs import lug_figure
from calc.lifting.lug_strength import (
    FootLoad,
    Lug,
    bearing_n,
    double_plane_n,
    effective_side_m,
    foot_bending_n,
    foot_load,
    foot_stress_pa,
    looseness_factor,
    net_tension_n,
    shear_plane_m,
    single_plane_n,
    split_width_m,
    tear_out_n,
    weld_allowable_pa,
    weld_n,
    weld_stress_pa,
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
    Worksheet,
)

_WORDS = {
    "net_tension": "the plate tearing across the hole",
    "tear_out": "the end tearing out",
    "bearing": "the pin crushing the hole",
    "out_of_plane": "the foot of the plate bending",
    "weld": "the weld",
}


def _lug(given: Given) -> Lug:
    lug = Lug(
        given.si("thickness"), given.si("hole"), given.si("pin"), given.si("side_edge"), given.si("end_edge"),
        given.si("height"), given.si("weld_leg"), given.si("weld_length"), given.si("yield_strength"),
        given.si("tensile_strength"), given.si("weld_strength"), given.si("design_factor"),
        given.text("end_shape") == "round",
    )  # fmt: skip
    if lug.pin_m > lug.hole_m:
        raise given.refuse("pin", "does not go into the hole. Give a pin no thicker than the hole.")
    if lug.yield_pa > lug.tensile_pa:
        raise given.refuse("yield_strength", "is over the tensile strength. Look the two up again.")
    if lug.height_m < lug.hole_m / 2:
        raise given.refuse("height", "puts the hole into the weld. Give at least half the hole.")
    return lug


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    lug = _lug(given)
    pull = foot_load(given.si("angle_in_plane"), given.si("angle_out_of_plane"))
    ways = {
        "net_tension": net_tension_n(lug),
        "tear_out": tear_out_n(lug),
        "bearing": bearing_n(lug),
        "out_of_plane": foot_bending_n(lug, pull),
        "weld": weld_n(lug, pull),
    }
    governing = min(ways, key=lambda way: ways[way])
    estimate = ways[governing]
    load_n = given.si("load") * STANDARD_GRAVITY_M_PER_S2
    over = load_n > estimate * (1 + 1e-12)
    share = number_text(load_n / estimate * 100, 3, "up")
    return Answer(
        verdict="stop" if over else "caution",
        headline=f"By these formulas {_WORDS[governing]} comes first, at {say.force(estimate, 'down')} with its factor. "
        f"Your load is {share}% of that." + (" Too much." if over else " A figure to study, not a rating."),
        big="capacity_estimate",
        results={**ways, "governing": _WORDS[governing], "capacity_estimate": estimate},
        steps=_steps(say, lug, pull, load_n, ways),
        cautions=_cautions(given, lug, over),
        figure=lug_figure(lug, given.si("angle_in_plane"), _WORDS[governing], say),
    )


def _steps(say: Say, lug: Lug, pull: FootLoad, load_n: float, ways: dict[str, float]) -> tuple[Step, ...]:
    factor = number_text(lug.design_factor, 3)
    loose = number_text(looseness_factor(lug), 3, "down")
    ultimate = f"{say.one(lug.tensile_pa, 'pressure')} / (1.2 × {factor})"

    def force(value: float) -> str:
        return say.force(value, "down")

    def length(value: float) -> str:
        return say.one(value, "length", "down", 3)

    def by_stress(allowed_pa: float, stress_pa: float) -> str:
        allowed, stress = say.one(allowed_pa, "pressure", "down"), say.one(stress_pa, "pressure", "up")
        return f"{say.one(load_n, 'force', 'up')} × {allowed} / {stress}"

    thick = length(lug.thickness_m)
    return (
        Step("Tears across the hole", "Cr × Fu / (1.2 Nd) × 2 t × effective side",
             f"{loose} × {ultimate} × 2 × {thick} × {length(effective_side_m(lug))}", force(ways["net_tension"])),
        Step("Splits at the end", "Cr × Fu / (1.2 Nd) × [1.13 a + 0.92 be / (1 + be/Dh)] t",
             f"{loose} × {ultimate} × {length(split_width_m(lug))} × {thick}", force(single_plane_n(lug))),
        Step("Shears out at the end", "0.70 × Fu / (1.2 Nd) × 2 × plane × t",
             f"0.70 × {ultimate} × 2 × {length(shear_plane_m(lug))} × {thick}", force(double_plane_n(lug))),
        Step("Pin crushes the hole", "1.25 × Fy / Nd × pin × t",
             f"1.25 × {say.one(lug.yield_pa, 'pressure')} / {factor} × {length(lug.pin_m)} × {thick}",
             force(ways["bearing"])),
        Step("Bends at the foot", "your pull × allowed stress (Fy / Nd) / stress from pull and both bendings",
             by_stress(lug.yield_pa / lug.design_factor, foot_stress_pa(lug, pull, load_n)), force(ways["out_of_plane"])),
        Step("Weld", "your pull × allowed stress (0.60 × weld metal / (1.2 Nd)) / stress on the throat",
             by_stress(weld_allowable_pa(lug), weld_stress_pa(lug, pull, load_n)), force(ways["weld"])),
    )  # fmt: skip


def _cautions(given: Given, lug: Lug, over: bool) -> tuple[Caution, ...]:
    cautions = [
        Caution("A study aid, not a design. A qualified person designs a lifting lug, a qualified welder makes it, and "
                "it is tested and marked before it lifts.", "mandatory"),
        Caution("The pin-hole and weld formulas are from memory of ASME BTH-1 (2005 to 2020 editions) and were not read "
                "in its text."),
    ]  # fmt: skip
    if over:
        cautions.insert(
            0, Caution("The load is over the first way of failing. Do not use this lug.", "prohibition")
        )
    if given.si("angle_out_of_plane") > 0:
        cautions.append(Caution("A plate lug is weak across its plane. Turn it into line with the sling."))
    if lug.pin_m < 0.9 * lug.hole_m:
        cautions.append(
            Caution("The pin is loose in the hole: it bears on a line, and the formulas thin out there.")
        )
    if lug.design_factor < 3.0:
        cautions.append(Caution("A factor under 3 is only for lifts whose loads and care are well known."))
    cautions.append(
        Caution("The formulas know nothing of bad weld, laminated plate, cold steel, corners that were torch cut, or "
                "what the lug is welded to.", "note")
    )  # fmt: skip
    return tuple(cautions)


def _length(name: str, label: str, text: str, at_most: float = 200) -> Input:
    return Input(name, label, "quantity", "length", above=0, at_most=at_most, help=text)


WORKSHEET = Worksheet(
    name="lifting-lug",
    title="How may a plate lug fail, and which way first?",
    summary="Each way a welded plate lug may fail, as a study aid that names the weakest.",
    inputs=(
        Input("load", "Pull on the lug", "quantity", "weight", above=0, at_most=2_000_000,
              help="Of its sling leg, not of the whole load."),
        _length("thickness", "Thickness of the plate", "With calipers.", 12),
        _length("hole", "Diameter of the hole", "Across the hole."),
        _length("pin", "Diameter of the pin", "Of the shackle's pin."),
        _length("side_edge", "Hole to side edge", "From the edge of the hole, square to the pull."),
        _length("end_edge", "Hole to end", "From the edge of the hole, along the pull."),
        Input("end_shape", "End of the plate", "choice", default="round",
              choices=(Choice("round", "Round about the hole"), Choice("square", "Square"))),
        _length("height", "Middle of the hole over the weld", "The arm that bends the foot."),
        _length("weld_leg", "Leg of the fillet weld", "One run on each side of the plate.", 4),
        _length("weld_length", "Length of each run", "Of full size, ends not counted."),
        Input("yield_strength", "Yield strength of the plate", "quantity", "pressure", unit="psi", unit_si="MPa",
              above=0, at_most=200_000, default="36,000 psi", help="Plain structural plate: 36,000 psi."),
        Input("tensile_strength", "Tensile strength of the plate", "quantity", "pressure", unit="psi", unit_si="MPa",
              above=0, at_most=250_000, default="58,000 psi", help="Plain structural plate: 58,000 psi at least."),
        Input("weld_strength", "Strength of the weld metal", "quantity", "pressure", unit="psi", unit_si="MPa",
              above=0, at_most=150_000, default="70,000 psi", help="The first two figures of the rod's name, in ksi."),
        Input("angle_in_plane", "Pull leans in the plate's plane", "quantity", "angle", at_least=0, at_most=90, default="0",
              help="From straight up."),
        Input("angle_out_of_plane", "Pull leans across the plate", "quantity", "angle", at_least=0, at_most=90, default="0",
              help="From the plate's own plane."),
        Input("design_factor", "Design factor", "number", at_least=2, at_most=10, default="3",
              help="3 for common lifting; 2 only where loads are well known."),
    ),
    results=(
        Result("capacity_estimate", "First way of failing, with its factor", "force", rounding="down"),
        Result("governing", "Comes first"),
        Result("net_tension", "Tears across the hole", "force", rounding="down"),
        Result("tear_out", "Tears out at the end", "force", rounding="down"),
        Result("bearing", "Pin crushes the hole", "force", rounding="down"),
        Result("out_of_plane", "Bends at the foot", "force", rounding="down"),
        Result("weld", "Weld", "force", rounding="down"),
    ),
    compute=compute,
    example={
        "load": "2,300 lb", "thickness": "5/8 in", "hole": "15/16 in", "pin": "7/8 in", "side_edge": "1-1/8 in",
        "end_edge": "1-1/8 in", "height": "1-3/4 in", "weld_leg": "5/16 in", "weld_length": "3 in", "angle_in_plane": "30°",
    },
    example_story="The yard studies a drawing of a lug for an engine bearer before it asks an engineer for one.",
    citations=(
        Citation("asme-bth-1", "3-3.3 pinned connections and 3-3.4 welds, from memory"),
        Citation("gere", "bending and direct stress of a bar"),
    ),
)  # fmt: skip
