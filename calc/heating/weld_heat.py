"""What does one weld bead do to the steel beside it?

Heat input, how far each heat reaches (Rosenthal's moving arc in calc.heating.moving_heat, the Adams rule beside it), how
fast the zone cools, how hard it may become, and how warm the whole part gets. It explains why a weld voids a rating.
It gives no strength, no preheat and no repair: a welded part cannot be rated.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.heat_map import HeatBand, heat_map_figure
from calc.heating.bead import (
    CONDUCTIVITY_BAND_W_PER_MK,
    HeatedBand,
    Settings,
    Weld,
    bands_of,
    temper_of,
    weld_of,
)
from calc.heating.hardening import (
    ELEMENTS,
    Hardening,
    HardZone,
    Steel,
    hardening_of,
    rockwell_fact,
    steel,
    steel_names,
)
from calc.heating.softening import softened_beyond_m
from calc.heating.weld_cooling import (
    HARDENS_ABOVE_DEGC,
    HARDENS_FULLY_ABOVE_DEGC,
    MELTING_DEGC,
    SPECIFIC_HEAT_J_PER_KGK,
    adams_distance_m,
    bulk_rise_k,
    cooling_time_s,
    transition_thickness_m,
)
from calc.inputs import Bounds, ChoiceInput, FlagInput, Given, QuantityInput
from calc.reasons import Reason, note
from calc.words.facts import (
    Absent,
    Fact,
    Listing,
    Message,
    Number,
    Quantity,
    absent,
    degrees,
    length,
    message,
)
from calc.words.writer import Writer

LEAST_HEAT_J_PER_M, MOST_HEAT_J_PER_M = 0.2e6, 5.0e6
"""Heat input over which a cooling time is answered [J/m]: what hand welding spans; the formula is checked for no more."""
LEAST_VOLTS_V, LEAST_AMPS_A = 5.0, 5.0
"""Arc voltage [V] and current [A] under which no bead is laid by hand: thin TIG work ends at some 5 A and 10 V (common
practice, no source)."""
HOTTEST_START_DEGC = 350.0
"""Greatest steel temperature before the bead that is answered [deg C]."""
HOTTEST_PART_DEGC = 500.0
"""Above this mean heat of the part [deg C] the balance with a cold specific heat is not given."""
_LAST_PLACES = 1e-9
_ONE_STEP_HV = 10
"""To what step a hardness is told [HV]; the fits are no closer."""


@dataclass(frozen=True)
class _ShapeFactors:
    """Shape factors of EN 1011-2, annex D (memory) for the thin and the thick branch [-]."""

    thin: float
    thick: float


_SHAPE_FACTORS = {"bead": _ShapeFactors(1.0, 1.0), "fillet": _ShapeFactors(0.67, 0.67)}
"""Bead on plate; fillet at a corner, thick end."""


def _settings(given: Given) -> Settings:
    return Settings(
        given.text("process"),
        given.si("volts"),
        given.si("amps"),
        given.si("speed"),
        given.si("thickness"),
        given.si("preheat"),
    )


def _chosen_degc(given: Given) -> float:
    """The chosen peak temperature [deg C], held against melting and the start."""
    start, chosen = given.si("preheat"), given.si("peak_temperature")
    if chosen >= MELTING_DEGC:
        raise given.refuse("peak_temperature", "over-melting", melting=degrees(MELTING_DEGC))
    if start >= chosen - 1.0:
        raise given.refuse("preheat", "not-below-the-chosen", chosen=degrees(chosen))
    if start > HOTTEST_START_DEGC + _LAST_PLACES:
        raise given.refuse("preheat", "start-too-hot", hottest=degrees(HOTTEST_START_DEGC))
    return chosen


def _steels(given: Given) -> tuple[Steel, ...]:
    """The steel, or all steels of the table where it is not known."""
    name = given.text("steel")
    if name != "composition":
        _refuse_shares(given)
    if name == "unknown":
        return tuple(steel(known) for known in steel_names())
    if name != "composition":
        return (steel(name),)
    shares = {sign: given.si(element) * 100 for element, sign in ELEMENTS}
    total = sum(shares.values())
    if total > 100.0 + _LAST_PLACES:
        raise given.refuse("carbon", "over-the-whole", total=Number(total, 4))
    return (Steel("composition", shares, shares),)


def _refuse_shares(given: Given) -> None:
    """Shares of elements belong to a steel that is told by its composition."""
    for element, _sign in ELEMENTS:
        if given.has(element):
            raise given.refuse(element, "not-by-composition")


@dataclass(frozen=True)
class Found:
    """What the bead puts in, how far its heats reach from the melt or from the bead's middle, how the zone sets, how warm
    the part gets.
    """

    weld: Weld
    chosen_degc: float
    bands: tuple[HeatedBand, ...]
    hardening: Hardening
    heat_input_j_per_m: float
    hard_zone: Message | Absent
    hard_zone_low: float | Absent
    hard_zone_high: float | Absent
    hard_width_low_m: float
    hard_width_m: float
    hard_width_high_m: float
    bulk_temperature_rise_k: float | Absent
    cooling_time_8_5: float | Absent
    steel_known: bool
    carbon_equivalent: float
    carbon_equivalent_low: float
    carbon_equivalent_high: float
    band: Message
    distance_low_m: float
    distance_m: float
    distance_high_m: float
    distance_adams_m: float
    adams_holds: bool
    melted_edge_m: float
    hard_edge_m: float
    tint_edge_m: float | Absent
    softened_width_low_m: float | Absent
    softened_width_high_m: float | Absent
    transition_thickness_m: float


def find(given: Given) -> Found:
    """The field of the bead and what it does; see WORKSHEET for inputs and results."""
    chosen = _chosen_degc(given)
    weld = weld_of(_settings(given))
    heat, thickness, start = weld.heat_j_per_m, weld.thickness_m, weld.start_degc
    factors = _SHAPE_FACTORS[given.text("joint")]
    cooling = _cooling_s(weld, factors)
    hardening = hardening_of(_steels(given), cooling)
    zone = hardening.zone
    bands = bands_of(weld, chosen)
    reach = {band.name: band.reach_m for band in bands}
    least, middle, greatest = sorted(
        weld.span_m(MELTING_DEGC, chosen, arc) for arc in (weld.narrow_arc, weld.arc, weld.wide_arc)
    )
    softened = _softened(given, weld, chosen)
    transition = transition_thickness_m(heat, start, factors.thin, factors.thick)
    return Found(
        weld=weld,
        chosen_degc=chosen,
        bands=bands,
        hardening=hardening,
        heat_input_j_per_m=heat,
        hard_zone=_hardness(zone),
        hard_zone_low=absent("not-known") if isinstance(zone, Absent) else zone.least_hv,
        hard_zone_high=absent("not-known") if isinstance(zone, Absent) else zone.greatest_hv,
        hard_width_low_m=weld.span_m(MELTING_DEGC, HARDENS_FULLY_ABOVE_DEGC, weld.narrow_arc),
        hard_width_m=reach["hard"] - reach["melted"],
        hard_width_high_m=weld.span_m(MELTING_DEGC, HARDENS_ABOVE_DEGC, weld.wide_arc),
        bulk_temperature_rise_k=_bulk_rise_k(given, weld),
        cooling_time_8_5=cooling,
        steel_known=given.text("steel") != "unknown",
        carbon_equivalent=hardening.middle_pct,
        carbon_equivalent_low=hardening.least_pct,
        carbon_equivalent_high=hardening.greatest_pct,
        band=_weldability(hardening),
        distance_low_m=least,
        distance_m=middle,
        distance_high_m=greatest,
        distance_adams_m=adams_distance_m(heat, thickness, start, chosen),
        adams_holds=not exceeds(thickness, transition),
        melted_edge_m=reach["melted"],
        hard_edge_m=reach["hard"],
        tint_edge_m=reach.get("tinted", absent("hotter-than-the-tint")),
        softened_width_low_m=softened[0],
        softened_width_high_m=softened[1],
        transition_thickness_m=transition,
    )


def _cooling_s(weld: Weld, factors: _ShapeFactors) -> float | Absent:
    """Time from 800 to 500 C [s], inside the heat inputs that are answered."""
    heat = weld.heat_j_per_m
    if not LEAST_HEAT_J_PER_M * (1 - _LAST_PLACES) <= heat <= MOST_HEAT_J_PER_M * (1 + _LAST_PLACES):
        return absent(
            "heat-out-of-range",
            least=Quantity(LEAST_HEAT_J_PER_M, "heat_input"),
            greatest=Quantity(MOST_HEAT_J_PER_M, "heat_input"),
        )
    return cooling_time_s(heat, weld.thickness_m, weld.start_degc, factors.thin, factors.thick)


def _bulk_rise_k(given: Given, weld: Weld) -> float | Absent:
    """Warming of the whole part [K], while it stays below HOTTEST_PART_DEGC."""
    if not given.has("stock_mass"):
        return absent("give-the-weight")
    if not given.has("weld_length"):
        return absent("give-the-length")
    rise = bulk_rise_k(weld.heat_j_per_m, given.si("weld_length"), given.si("stock_mass"))
    if weld.start_degc + rise > HOTTEST_PART_DEGC:
        return absent("part-too-hot", limit=degrees(HOTTEST_PART_DEGC))
    return rise


def _softened(given: Given, weld: Weld, chosen_degc: float) -> tuple[float | Absent, float | Absent]:
    """Least and greatest width of the softened band [m], where it was asked for and the data reach."""
    if not given.flag("softening"):
        return absent("not-asked"), absent("not-asked")
    found = softened_beyond_m(weld.arc, weld.start_degc, HARDENS_ABOVE_DEGC, temper_of(chosen_degc))
    return found or (absent("not-in-the-data"), absent("not-in-the-data"))


def _hardness(zone: HardZone | Absent) -> Message | Absent:
    """The hardness of the zone in tens, and in Rockwell C: about one figure, or from the least to the greatest."""
    if isinstance(zone, Absent):
        return zone
    low, high = _tens_down(zone.least_hv), _tens_up(zone.greatest_hv)
    return message(
        "hardness-about" if high - low <= _ONE_STEP_HV else "hardness-span",
        low=low,
        high=high,
        low_hrc=rockwell_fact(zone.least_hv),
        high_hrc=rockwell_fact(zone.greatest_hv),
    )


def _tens_down(hardness_hv: float) -> int:
    return math.floor(hardness_hv / _ONE_STEP_HV + _LAST_PLACES) * _ONE_STEP_HV


def _tens_up(hardness_hv: float) -> int:
    return math.ceil(hardness_hv / _ONE_STEP_HV - _LAST_PLACES) * _ONE_STEP_HV


def _weldability(hardening: Hardening) -> Message:
    best, worst = hardening.best_weldability, hardening.worst_weldability
    return message(
        "weldability-one" if best == worst else "weldability-span",
        best=message(f"weldability-{best}"),
        worst=message(f"weldability-{worst}"),
    )


def judge(found: Found) -> tuple[Reason, ...]:
    """A welded part cannot be rated, whatever the figures: a study, which gives no verdict on a part."""
    zone = found.hardening.zone
    facts: dict[str, Fact] = {} if isinstance(zone, Absent) else {"hardest": _tens_up(zone.greatest_hv)}
    told = (
        note("welded", "prohibition", **facts),
        note("left-out", "warning"),
        note("narrow-section"),
    )
    return told if found.steel_known else (*told, note("steel-not-known", "warning"))


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    weld = found.weld
    least_conductivity, greatest_conductivity = CONDUCTIVITY_BAND_W_PER_MK
    steps = [
        step("heat-input", factor=Number(weld.efficiency.code)),
        step(
            "reach",
            least=Number(weld.efficiency.least),
            greatest=Number(weld.efficiency.greatest),
            least_conductivity=Number(least_conductivity),
            greatest_conductivity=Number(greatest_conductivity),
            chosen=degrees(found.chosen_degc),
        ),
        step("adams", distance=length(found.distance_adams_m, digits=2)),
    ]
    if not isinstance(found.cooling_time_8_5, Absent):
        steps.append(_cooling_step(found))
    steps.append(step("carbon-equivalent"))
    if not isinstance(found.hardening.zone, Absent):
        steps.append(step("hardness"))
    if not isinstance(found.bulk_temperature_rise_k, Absent):
        rise = _rise(found.bulk_temperature_rise_k)
        steps.append(step("warming", specific_heat=Number(SPECIFIC_HEAT_J_PER_KGK), rise=rise))
    return tuple(steps)


def _cooling_step(found: Found) -> Step:
    """The branch of EN 1011-2 that gives the cooling time, with the numbers in the standard's own units."""
    weld = found.weld
    thick = exceeds(weld.thickness_m, found.transition_thickness_m)
    return step(
        "cooling",
        branch=message("thick-plate" if thick else "thin-plate"),
        heat=Quantity(weld.heat_j_per_m, "heat_input", units=("kJ/mm", "kJ/mm")),
        thick=Quantity(weld.thickness_m, "length", units=("mm", "mm")),
        start=degrees(weld.start_degc),
    )


def _rise(rise_k: float) -> Quantity:
    """A warming that nothing is lost from: an upper bound, in whole degrees of both scales."""
    return Quantity(rise_k, "temperature_difference", "demand", places=0)


def shown(found: Found) -> dict[str, Fact]:
    """Results that carry more than their value."""
    said: dict[str, Fact] = {"carbon_equivalent": message("carbon-equivalent-span")}
    if not found.adams_holds:
        distance = length(found.distance_adams_m, digits=2)
        said["distance_adams"] = message("adams-for-thin-plate", distance=distance)
    if not isinstance(found.bulk_temperature_rise_k, Absent):
        said["bulk_temperature_rise"] = message("rise-up-to", rise=_rise(found.bulk_temperature_rise_k))
    return said


def draw(found: Found, writer: Writer) -> Figure:
    """The section across the bead to scale."""
    bands = [
        HeatBand(
            band.name, writer.text(f"figure-{band.name}", heat=degrees(band.over_degc)), band.line.points
        )
        for band in found.bands
    ]
    reaches = tuple(
        message("band-reach", band=message(f"band-{band.name}"), reach=length(band.reach_m))
        for band in found.bands
    )
    through = tuple(message(f"band-{band.name}") for band in found.bands if band.line.through)
    caption = writer.text(
        "figure",
        thickness=length(found.weld.thickness_m),
        bands=Listing(reaches, "semicolon"),
        through=Listing(through),
    )
    return heat_map_figure(bands, found.weld.thickness_m, caption)


def _element(name: str) -> QuantityInput:
    return QuantityInput(
        name,
        dimension="fraction",
        bounds=Bounds(at_least=0, at_most=100),
        shown_when={"steel": ("composition",)},
    )


_TEMPERATURE = Bounds(above=-100, at_most=2750)

WORKSHEET = Worksheet(
    name="weld-heat",
    inputs=(
        ChoiceInput("process", choices=("smaw", "gmaw", "fcaw", "gtaw", "saw", "plasma")),
        QuantityInput("volts", dimension="voltage", bounds=Bounds(at_least=LEAST_VOLTS_V, at_most=60)),
        QuantityInput("amps", dimension="current", bounds=Bounds(at_least=LEAST_AMPS_A, at_most=1500)),
        QuantityInput("speed", dimension="speed", bounds=Bounds(at_least=0.5, at_most=200)),
        QuantityInput("thickness", dimension="length", bounds=Bounds(at_least=0.03, at_most=12)),
        ChoiceInput("joint", choices=("bead", "fillet")),
        ChoiceInput("steel", choices=("unknown", *steel_names(), "composition")),
        *(_element(name) for name, _sign in ELEMENTS),
        QuantityInput("preheat", dimension="temperature", bounds=_TEMPERATURE),
        QuantityInput("peak_temperature", dimension="temperature", bounds=_TEMPERATURE),
        QuantityInput(
            "stock_mass", dimension="weight", bounds=Bounds(above=0, at_most=100_000), required=False
        ),
        QuantityInput(
            "weld_length", dimension="length", bounds=Bounds(above=0, at_most=4000), required=False
        ),
        FlagInput("softening", default="no"),
    ),
    results=(
        Result("heat_input", "heat_input"),
        Result("hard_zone"),
        Result("hard_width_low", "length", digits=2),
        Result("hard_width_high", "length", "demand", digits=2),
        Result("hard_width", "length", digits=2),
        Result("bulk_temperature_rise", "temperature_difference", "demand", unit_si="K"),
        Result("cooling_time_8_5", digits=2),
        Result("carbon_equivalent"),
        Result("carbon_equivalent_low"),
        Result("carbon_equivalent_high"),
        Result("band"),
        Result("hard_zone_low"),
        Result("hard_zone_high", sense="demand"),
        Result("distance", "length", digits=2),
        Result("distance_low", "length", digits=2),
        Result("distance_high", "length", "demand", digits=2),
        Result("distance_adams", "length", digits=2),
        Result("melted_edge", "length", digits=2),
        Result("hard_edge", "length", digits=2),
        Result("tint_edge", "length", digits=2),
        Result("softened_width_low", "length", digits=2),
        Result("softened_width_high", "length", "demand", digits=2),
        Result("transition_thickness", "length"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    shown=shown,
    rates=False,
    large="heat_input",
    example={
        "process": "smaw",
        "volts": "23 V",
        "amps": "120 A",
        "speed": "6 in/min",
        "thickness": "5/8 in",
        "joint": "bead",
        "steel": "4140",
        "preheat": "60 °F",
        "peak_temperature": "800 °F",
        "stock_mass": "2.2 lb",
        "weld_length": "2 in",
    },
    citations=(
        Citation("rosenthal", "thick body and thin plate"),
        Citation("adams-width", "equation and example"),
        Citation("en-1011-2", "annex D"),
        Citation("iiw-ce", ""),
        Citation("ce-bands", ""),
        Citation("yurioka-1987", ""),
        Citation("duren-1981", ""),
        Citation("maynier-1978", ""),
        Citation("arc-energy-notes", "factor k"),
        Citation("dupont-marder", "measured efficiency"),
        Citation("steel-ranges", "composition limits"),
        Citation("heat-balance", ""),
    ),
)
