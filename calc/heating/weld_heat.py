"""What does one weld bead do to the steel beside it?

Heat input, how far each heat reaches (Rosenthal's moving arc in calc.heating.moving_heat, the Adams rule beside it), how
fast the zone cools, how hard it may become, and how warm the whole part gets. It explains why a weld voids a rating.
It gives no strength, no preheat and no repair: a welded part cannot be rated.
"""

from __future__ import annotations

import functools
from collections.abc import Mapping
from dataclasses import dataclass

from calc.figures.heat_colour import whole_degrees
from calc.figures.heat_map import HeatBand, heat_map_figure
from calc.heating.hardening import (
    ELEMENTS,
    HIGHEST_CARBON_PCT,
    LOWEST_CARBON_PCT,
    MOST_ALLOY_PCT,
    Steel,
    carbon_equivalent_pct,
    hard_zone_hv,
    rockwell_c,
    steel,
    steel_names,
    weldability,
)
from calc.heating.heat_colour import colours
from calc.heating.moving_heat import MovingArc, isotherm, surface_distance_m
from calc.heating.softening import softened_beyond_m
from calc.heating.weld_cooling import (
    HARDENS_ABOVE_DEGC,
    HARDENS_FULLY_ABOVE_DEGC,
    HEAT_CAPACITY_J_PER_M3K,
    MELTING_DEGC,
    SPECIFIC_HEAT_J_PER_KGK,
    adams_distance_m,
    bulk_rise_k,
    cooling_time_s,
    heat_input_j_per_m,
    transition_thickness_m,
)
from calc.quantities import number_text
from calc.tables import number, table
from calc.worksheet import Answer, Caution, Choice, Citation, Given, Input, Result, Say, Step, Worksheet

CONDUCTIVITY_W_PER_MK = 41.0
"""Conductivity of the middle answer [W/(m K)], the usual figure for a moving arc in steel (common practice, no source)."""
CONDUCTIVITY_BAND_W_PER_MK = (27.0, 47.0)
"""Conductivity of carbon steel red hot and at 200 C [W/(m K)] (EN 1993-1-2, 3.4.1.3; from memory)."""
LEAST_HEAT_J_PER_M, MOST_HEAT_J_PER_M = 0.2e6, 5.0e6
"""Heat input over which a cooling time is answered [J/m]: what hand welding spans; the formula is checked for no more."""
HOTTEST_START_DEGC = 350.0
"""Greatest steel temperature before the bead that is answered [deg C]."""
HOTTEST_PART_DEGC = 500.0
"""Above this mean heat of the part [deg C] the balance with a cold specific heat is not given."""
_CONSUMABLE = ("smaw", "gmaw", "fcaw", "saw")
_SHAPE_FACTORS = {"bead": (1.0, 1.0), "fillet": (0.67, 0.67)}
"""Thin and thick shape factors of EN 1011-2, annex D (memory): bead on plate; fillet at a corner, thick end."""
_USUAL_TEMPER_DEGC = 425.0


@dataclass(frozen=True)
class _Weld:
    """The weld as given: net heat by the code factor [J/m], arcs for the middle and both ends of the band, start [deg C]."""

    code_factor: float
    heat_j_per_m: float
    arc: MovingArc
    narrow_arc: MovingArc
    wide_arc: MovingArc
    start_degc: float
    thickness_m: float

    def span(self, hot_degc: float, cool_degc: float, arc: MovingArc) -> float:
        """Distance [m] on the face between two peak temperatures, for one of the arcs."""
        return surface_distance_m(arc, cool_degc - self.start_degc) - surface_distance_m(
            arc, hot_degc - self.start_degc
        )


@functools.cache
def efficiencies(process: str) -> tuple[float, float, float]:
    """Arc efficiency of a process [-]: code factor, and the least and greatest of code and measured figures."""
    rows = table("arc-efficiency")
    code = number(rows.one(process=process, quantity="relative_to_saw"))
    measured_as = "gmaw" if process in _CONSUMABLE else process
    found = [number(row) for row in rows.where(process=measured_as) if row["quantity"] != "relative_to_saw"]
    return code, min(code, *found), max(code, *found)


def weld_of(given: Given) -> _Weld:
    """The weld that the inputs describe."""
    volts, amps = given.si("volts"), given.si("amps")
    travel, thickness, start = given.si("speed"), given.si("thickness"), given.si("preheat")
    code, low, high = efficiencies(given.text("process"))

    def arc(efficiency: float, conductivity: float) -> MovingArc:
        return MovingArc(
            efficiency * volts * amps, travel, thickness, conductivity, conductivity / HEAT_CAPACITY_J_PER_M3K
        )

    return _Weld(
        code, heat_input_j_per_m(code, volts, amps, travel), arc((low + high) / 2, CONDUCTIVITY_W_PER_MK),
        arc(low, CONDUCTIVITY_BAND_W_PER_MK[1]), arc(high, CONDUCTIVITY_BAND_W_PER_MK[0]), start, thickness,
    )  # fmt: skip


def _checked_temperatures(given: Given, say: Say) -> float:
    start, chosen = given.si("preheat"), given.si("peak_temperature")
    if chosen >= MELTING_DEGC:
        raise given.refuse(
            "peak_temperature",
            f"is at or over melting. Give a temperature below {whole_degrees(say, MELTING_DEGC)}.",
        )
    if start >= chosen - 1.0:
        raise given.refuse(
            "preheat",
            f"is not below the chosen temperature of {whole_degrees(say, chosen)}. Give a colder start.",
        )
    if start > HOTTEST_START_DEGC + 1e-9:
        raise given.refuse(
            "preheat", f"is out of range. Give up to {whole_degrees(say, HOTTEST_START_DEGC)}."
        )
    return chosen


def _steels(given: Given) -> tuple[Steel, ...]:
    """The steel, or all steels of the table where it is not known."""
    name = given.text("steel")
    if name == "unknown":
        return tuple(steel(known) for known in steel_names())
    if name != "composition":
        return (steel(name),)
    shares = {sign: given.si(element) * 100 if given.has(element) else 0.0 for element, sign in ELEMENTS}
    total = sum(shares.values())
    if total > 100.0 + 1e-9:
        raise given.refuse(
            "carbon", f"and the rest add up to {total:,.4g} %, over 100 %. Give percent by weight."
        )
    return (Steel("composition", shares, shares),)


@dataclass(frozen=True)
class _Hardening:
    """How the steel hardens: carbon equivalent low, middle and high [percent], band, and hardness range [HV]."""

    low: float
    middle: float
    high: float
    band: str
    zone_hv: tuple[float, float] | None
    why_not: str


def _hardening(steels: tuple[Steel, ...], cooling_s: float | None) -> _Hardening:
    equivalents = [[carbon_equivalent_pct(corner) for corner in one.corners()] for one in steels]
    low = min(row[0] for row in equivalents)
    high = max(row[2] for row in equivalents)
    middle = equivalents[0][1] if len(steels) == 1 else (low + high) / 2
    first, last = weldability(low), weldability(high)
    band = first if first == last else f"{first} to {last}"
    if cooling_s is None:
        return _Hardening(low, middle, high, band, None, "out of range: no cooling time to work from")
    zones = [zone for one in steels if (zone := hard_zone_hv(one, cooling_s))]
    if not zones:
        return _Hardening(
            low, middle, high, band, None,
            f"out of range: the fits hold for {LOWEST_CARBON_PCT} to {HIGHEST_CARBON_PCT} % carbon and up to "
            f"{MOST_ALLOY_PCT:g} % Mn + Ni + Cr + Mo",
        )  # fmt: skip
    return _Hardening(low, middle, high, band, (min(z[0] for z in zones), max(z[1] for z in zones)), "")


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    chosen = _checked_temperatures(given, say)
    weld = weld_of(given)
    thin_factor, thick_factor = _SHAPE_FACTORS[given.text("joint")]
    in_range = LEAST_HEAT_J_PER_M * (1 - 1e-9) <= weld.heat_j_per_m <= MOST_HEAT_J_PER_M * (1 + 1e-9)
    cooling = cooling_time_s(weld.heat_j_per_m, weld.thickness_m, weld.start_degc, thin_factor, thick_factor) if in_range else None  # fmt: skip
    hardening = _hardening(_steels(given), cooling)
    bands = bands_of(weld, chosen, say)
    edge = {band.name: band.line.points[0][0] for band in bands}
    melted = edge["melted"]
    to_chosen = sorted(
        weld.span(MELTING_DEGC, chosen, arc) for arc in (weld.narrow_arc, weld.arc, weld.wide_arc)
    )
    adams = adams_distance_m(weld.heat_j_per_m, weld.thickness_m, weld.start_degc, chosen)
    rise = _bulk(given, weld)
    softened = softened_beyond_m(weld.arc, weld.start_degc, HARDENS_ABOVE_DEGC, _temper(chosen)) if given.flag("softening") else None  # fmt: skip
    results: dict[str, float | str | None] = {
        "heat_input": weld.heat_j_per_m, "cooling_time_8_5": cooling, "carbon_equivalent": hardening.middle,
        "carbon_equivalent_low": hardening.low, "carbon_equivalent_high": hardening.high, "band": hardening.band,
        "hard_zone": _hard_words(hardening), "hard_zone_low": hardening.zone_hv[0] if hardening.zone_hv else None,
        "hard_zone_high": hardening.zone_hv[1] if hardening.zone_hv else None,
        "bulk_temperature_rise": rise, "distance_low": to_chosen[0], "distance": to_chosen[1], "distance_high": to_chosen[2],
        "distance_adams": adams, "melted_edge": melted, "hard_edge": edge["hard"],
        "hard_width_low": weld.span(MELTING_DEGC, HARDENS_FULLY_ABOVE_DEGC, weld.narrow_arc),
        "hard_width": edge["hard"] - melted, "hard_width_high": weld.span(MELTING_DEGC, HARDENS_ABOVE_DEGC, weld.wide_arc),
        "tint_edge": edge.get("tinted"), "softened_width_low": softened[0] if softened else None,
        "softened_width_high": softened[1] if softened else None,
        "transition_thickness": transition_thickness_m(weld.heat_j_per_m, weld.start_degc, thin_factor, thick_factor),
    }  # fmt: skip
    return Answer(
        verdict="unknown",
        headline=_headline(say, results, hardening),
        big="heat_input",
        results=results,
        shown=_shown(given, say, weld, results, hardening),
        steps=_steps(given, say, weld, chosen, results, hardening),
        cautions=_CAUTIONS,
        figure=heat_map_figure(bands, weld.thickness_m, say),
    )


def _temper(chosen_degc: float) -> float:
    """The tempering heat [deg C] taken for the softened band: the chosen one where it can be a tempering."""
    return chosen_degc if _first_tint_degc() < chosen_degc < HARDENS_ABOVE_DEGC - 1 else _USUAL_TEMPER_DEGC


def _first_tint_degc() -> float:
    return colours()[0].degc


def _bulk(given: Given, weld: _Weld) -> float | None:
    if not given.has("stock_mass"):
        return None
    rise = bulk_rise_k(weld.heat_j_per_m, given.si("weld_length"), given.si("stock_mass"))
    return rise if weld.start_degc + rise <= HOTTEST_PART_DEGC else None


def bands_of(weld: _Weld, chosen_degc: float, say: Say) -> list[HeatBand]:
    """The bands of the map, from the melt out; those no hotter than the start are left out."""
    temper = _temper(chosen_degc)
    names = (
        ("melted", "melted", MELTING_DEGC),
        ("hard", f"hard zone: over {whole_degrees(say, HARDENS_ABOVE_DEGC)}", HARDENS_ABOVE_DEGC),
        ("softened", f"softened: over {whole_degrees(say, temper)}", temper),
        ("tinted", f"tinted: over {whole_degrees(say, _first_tint_degc())}", _first_tint_degc()),
    )
    return [
        HeatBand(name, words, isotherm(weld.arc, degc - weld.start_degc))
        for name, words, degc in names
        if degc > weld.start_degc + 1.0
    ]


def _small(say: Say, low_m: float, high_m: float) -> str:
    """A small width as a range, in decimals."""
    return f"{say.of(low_m, 'length', digits=2)} to {say.of(high_m, 'length', digits=2)}"


def _hard_words(hardening: _Hardening) -> str:
    if hardening.zone_hv is None:
        return hardening.why_not
    low, high = (round(value / 10) * 10 for value in hardening.zone_hv)
    if low == high:
        return f"about {low:.0f} HV ({_rockwell_words(hardening.zone_hv[1])} HRC)"
    return f"{low:.0f} to {high:.0f} HV ({_rockwell_words(hardening.zone_hv[0])} to {_rockwell_words(hardening.zone_hv[1])} HRC)"


def _rockwell_words(vickers: float) -> str:
    """About this Rockwell C, or under or over the ends of the table."""
    found = rockwell_c(vickers)
    if found is not None:
        return f"{found:.0f}"
    return "under 20" if vickers < 300 else "over 58"


def _headline(say: Say, results: Mapping[str, float | str | None], hardening: _Hardening) -> str:
    heat = say.of(float(results["heat_input"] or 0), "heat_input")
    if hardening.zone_hv is None:
        middle = "How hard the steel beside it becomes is out of range here."
    else:
        middle = f"Beside it lies a zone of up to {round(hardening.zone_hv[1] / 10) * 10:.0f} HV, {_small(say, float(results['hard_width_low'] or 0), float(results['hard_width_high'] or 0))} wide."  # fmt: skip
    return f"The bead puts in {heat}. {middle} Rated hardware with a weld on it cannot be rated."


def _shown(
    given: Given, say: Say, weld: _Weld, results: Mapping[str, float | str | None], hardening: _Hardening
) -> dict[str, str]:
    shown = {
        "carbon_equivalent": f"{number_text(hardening.middle)} % ({hardening.low:.2f} to {hardening.high:.2f} %)",
        "distance_adams": say.of(float(results["distance_adams"] or 0), "length", digits=2)
        + (
            ""
            if isinstance(results["distance_adams"], float) and _is_thin(weld)
            else " (rule for thin plate; this is not)"
        ),
    }
    if results["tint_edge"] is None:
        shown["tint_edge"] = "all of it: it starts hotter than the first tint"
    if results["cooling_time_8_5"] is None:
        shown["cooling_time_8_5"] = f"out of range: answered from {say.of(LEAST_HEAT_J_PER_M, 'heat_input')} to {say.of(MOST_HEAT_J_PER_M, 'heat_input')}"  # fmt: skip
    for key in ("softened_width_low", "softened_width_high"):
        if results[key] is None:
            shown[key] = "not in the data" if given.flag("softening") else "not asked"
    rise = results["bulk_temperature_rise"]
    if isinstance(rise, float):
        us, si = f"{rise * 1.8:,.0f} °F", f"{rise:,.0f} °C"
        shown["bulk_temperature_rise"] = f"up to {us} ({si})" if say.units == "us" else f"up to {si} ({us})"
    elif given.has("stock_mass"):
        shown["bulk_temperature_rise"] = (
            f"out of range: the whole part would pass {whole_degrees(say, HOTTEST_PART_DEGC)}"
        )
    else:
        shown["bulk_temperature_rise"] = "give the weight of the part"
    return shown


def _is_thin(weld: _Weld) -> bool:
    return weld.thickness_m <= transition_thickness_m(weld.heat_j_per_m, weld.start_degc)


def _steps(
    given: Given, say: Say, weld: _Weld, chosen: float, results: Mapping[str, float | str | None], hardening: _Hardening
) -> tuple[Step, ...]:  # fmt: skip
    code, low, high = efficiencies(given.text("process"))
    heat = say.of(weld.heat_j_per_m, "heat_input")
    steps = [
        Step("Heat input", "factor × volts × amps / speed",
             f"{code:g} × {given.si('volts'):g} V × {given.si('amps'):g} A / {say.one(given.si('speed'), 'speed')}", heat),
        Step("Reach of a heat", "Rosenthal, a moving arc on a plate, both faces as mirrors",
             f"{low:g} to {high:g} of the arc's power, conductivity {CONDUCTIVITY_BAND_W_PER_MK[0]:g} to {CONDUCTIVITY_BAND_W_PER_MK[1]:g} W/(m K)",
             f"{whole_degrees(say, chosen)}: {_small(say, float(results['distance_low'] or 0), float(results['distance_high'] or 0))} from the melt"),
        Step("The same by Adams, for thin plate", "H [1/(Tp − T0) − 1/(Tm − T0)] / (4.13 ρc t)",
             f"{heat}, {say.one(weld.thickness_m, 'length')} thick", say.of(float(results["distance_adams"] or 0), "length", digits=2)),
    ]  # fmt: skip
    cooling = results["cooling_time_8_5"]
    if isinstance(cooling, float):
        branch = "thin" if weld.thickness_m <= float(results["transition_thickness"] or 0) else "thick"
        steps.append(
            Step("Cooling from 800 to 500 °C", f"EN 1011-2, annex D, {branch} plate (from memory)",
                 f"{weld.heat_j_per_m / 1e6:.3g} kJ/mm, {weld.thickness_m * 1e3:.3g} mm, start {whole_degrees(say, weld.start_degc)}",
                 f"{number_text(cooling, 2)} s")
        )  # fmt: skip
    steps.append(
        Step("Carbon equivalent", "C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15", f"{hardening.low:.2f} to {hardening.high:.2f} %",
             f"{hardening.band} for welding in general")
    )  # fmt: skip
    if hardening.zone_hv is not None:
        steps.append(
            Step("Hardness of the zone", "three fits for martensite, one with the cooling time (from memory)",
                 "lowest to highest over the steel's limits", _hard_words(hardening))
        )  # fmt: skip
    rise = results["bulk_temperature_rise"]
    if isinstance(rise, float):
        steps.append(
            Step("Warming of the whole part, nothing lost", "heat input × bead length / (weight × specific heat)",
                 f"{heat} × {say.one(given.si('weld_length'), 'length')} / ({say.one(given.si('stock_mass'), 'weight')} × {SPECIFIC_HEAT_J_PER_KGK:g} J/(kg K))",
                 f"{rise * 1.8:,.0f} °F ({rise:,.0f} °C) hotter")
        )  # fmt: skip
    return tuple(steps)


_CAUTIONS = (
    Caution("A weld on rated hardware voids its rating. Nothing here brings it back. Take the part out of use.", "prohibition"),
    Caution(
        "The picture leaves out hydrogen, the notch at the toe, and shrinkage stress up to the strength of the steel. "
        "These crack welded hooks, often days later, without a sign.",
        "warning",
    ),
    Caution(
        "The field is that of a wide plate. A hook's narrow section traps the heat, so every band is wider there.", "note"
    ),
)  # fmt: skip

_PROCESSES = (
    Choice("smaw", "Stick (SMAW)"), Choice("gmaw", "MIG/MAG (GMAW)"), Choice("fcaw", "Flux-cored (FCAW)"), Choice("gtaw", "TIG (GTAW)"),
    Choice("saw", "Submerged arc (SAW)"), Choice("plasma", "Plasma"),
)  # fmt: skip
_STEEL_WORDS = {name: name.replace("_", " ") if "_" in name else f"AISI {name}" for name in steel_names()}


def _element(name: str, sign: str) -> Input:
    return Input(
        name, f"{name.capitalize()} ({sign})", "quantity", "fraction", at_least=0, at_most=100, required=name == "carbon",
        shown_when={"steel": ("composition",)}, help="Percent by weight, from the mill sheet.",
    )  # fmt: skip


WORKSHEET = Worksheet(
    name="weld-heat",
    title="What does one weld bead do to the steel beside it?",
    summary="How far each heat reaches beside a bead, how fast and how hard the steel sets, and how warm the whole part gets.",
    inputs=(
        Input("process", "Welding process", "choice", choices=_PROCESSES, default="smaw", help="As you would set it up."),
        Input("volts", "Arc voltage", "quantity", "voltage", above=0, at_most=60, help="While welding, not open circuit."),
        Input("amps", "Welding current", "quantity", "current", above=0, at_most=1500, help="While welding."),
        Input("speed", "Travel speed", "quantity", "speed", at_least=0.5, at_most=200, help="Length of bead over its arc time."),
        Input("thickness", "Thickness of the steel", "quantity", "length", at_least=0.03, at_most=12,
              help="Of the section under the bead."),
        Input("joint", "Kind of bead", "choice", choices=(Choice("bead", "Bead on the face"), Choice("fillet", "Fillet")), default="bead",
              help="It changes how fast the heat flows off."),
        Input("steel", "Steel", "choice", default="unknown",
              choices=(Choice("unknown", "I do not know"), *(Choice(n, w) for n, w in _STEEL_WORDS.items()),
                       Choice("composition", "By its composition")),
              help="Makers do not publish what a hook is made of. Unknown spans all steels of our table."),
        *(_element(name, sign) for name, sign in ELEMENTS),
        Input("preheat", "Temperature of the steel before the bead", "quantity", "temperature", above=-100, at_most=2750, default="70 °F",
              help="As it lies there."),
        Input("peak_temperature", "A temperature to find", "quantity", "temperature", above=-100, at_most=2750, default="800 °F",
              help="How far from the melt did it get this hot? Say, the heat at which the part was tempered."),
        Input("stock_mass", "Weight of the part", "quantity", "weight", above=0, at_most=100_000, required=False,
              help="To find how warm all of it gets."),
        Input("weld_length", "Length of all beads together", "quantity", "length", above=0, at_most=4000, default="1 in", help="For the same."),
        Input("softening", "Work out the softened band of a 4140 test piece too", "flag", default="no", help="Slower."),
    ),
    results=(
        Result("heat_input", "Heat input", "heat_input"),
        Result("hard_zone", "Hardness of the zone beside the bead"),
        Result("hard_width_low", "Width of the hard zone, least", "length", digits=2),
        Result("hard_width_high", "Width of the hard zone, greatest", "length", digits=2),
        Result("hard_width", "Width of the hard zone, middle", "length", digits=2),
        Result("bulk_temperature_rise", "Warming of the whole part", "", "K", "K"),
        Result("cooling_time_8_5", "Cooling from 800 to 500 °C [s]", digits=2),
        Result("carbon_equivalent", "Carbon equivalent [%]"),
        Result("carbon_equivalent_low", "Carbon equivalent, least [%]"),
        Result("carbon_equivalent_high", "Carbon equivalent, greatest [%]"),
        Result("band", "How such steel welds in general"),
        Result("hard_zone_low", "Hardness of the zone, least [HV]"),
        Result("hard_zone_high", "Hardness of the zone, greatest [HV]"),
        Result("distance", "From the melt to the chosen heat, middle", "length", digits=2),
        Result("distance_low", "From the melt to the chosen heat, least", "length", digits=2),
        Result("distance_high", "From the melt to the chosen heat, greatest", "length", digits=2),
        Result("distance_adams", "The same by Adams", "length", digits=2),
        Result("melted_edge", "Edge of the melt, from the bead's middle", "length", digits=2),
        Result("hard_edge", "Edge of the hard zone, from the bead's middle", "length", digits=2),
        Result("tint_edge", "Edge of the tint, from the bead's middle", "length", digits=2),
        Result("softened_width_low", "Softened band of 4140 by the tempering rule", "length", digits=2),
        Result("softened_width_high", "Softened band of 4140 as if held an hour", "length", digits=2),
        Result("transition_thickness", "Thickness from which plate is thick", "length", digits=3),
    ),
    compute=compute,
    example={"process": "smaw", "volts": "23 V", "amps": "120 A", "speed": "6 in/min", "thickness": "5/8 in", "steel": "4140",
             "preheat": "60 °F", "peak_temperature": "800 °F", "stock_mass": "2.2 lb", "weld_length": "2 in"},
    example_story="A helper at the yard asks what a 2 in stick bead on the shank of a forged 4140 hook would do. Nobody strikes an arc to find out.",
    citations=(
        Citation("rosenthal", "thick body and thin plate"), Citation("adams-width", "equation and example"),
        Citation("en-1011-2", "annex D"), Citation("iiw-ce", ""), Citation("ce-bands", ""), Citation("yurioka-1987", ""),
        Citation("duren-1981", ""), Citation("maynier-1978", ""), Citation("arc-energy-notes", "factor k"),
        Citation("dupont-marder", "measured efficiency"), Citation("steel-ranges", "composition limits"), Citation("heat-balance", ""),
    ),
)  # fmt: skip
