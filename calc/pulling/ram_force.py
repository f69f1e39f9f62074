"""How hard does my ram push at this pressure, and what pressure gives the pull I want?

Pascal's principle (OpenStax, College Physics 2e, chapter 11). One ram or several on one pump, pushing on the full bore
or pulling on the ring round the rod; the push on a hand pump's lever. A gauge that may be off leaves the force between two
values: what the parts must bear, at most, and what the ram surely gives before its seals rub, at least.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.rams import Lever, RamShape, ram_figure
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, QuantityInput
from calc.pulling.hydraulics import (
    bore_from_area_m,
    lever_ratio,
    pressure_for_force_pa,
    pump_pressure_pa,
    ram_area_m2,
    ram_force_n,
    travel_per_stroke_m,
)
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, stop, unknown
from calc.words.facts import Absent, Fact, Message, Quantity, absent, force, length, message, share
from calc.words.writer import Writer

NEAR_SHARE = 0.8
"""Over this share of a plate limit the answer is called careful (our own mark, no source)."""

KnownBy = Literal["pressure", "force", "hand_force"]
_KNOWN_BY: tuple[KnownBy, ...] = ("pressure", "force", "hand_force")
_LEVER = ("pump_bore", "lever_to_hand", "lever_to_piston")


@dataclass(frozen=True)
class Rams:
    """The rams on the pump: how many, bore [m] and, where the oil is on the rod's side, rod [m] of each, the area that the
    oil works on in one [m2], and what that was found from.
    """

    count: int
    bore_m: float
    rod_m: float | Absent
    area_m2: float
    area_by: Literal["area", "bore", "ring"]
    pulls: bool

    @property
    def total_area_m2(self) -> float:
        """The area of all rams [m2]."""
        return self.area_m2 * self.count


@dataclass(frozen=True)
class Pump:
    """A hand pump: bore [m] and area [m2] of its piston, ratio of its lever [-], stroke of its piston [m]."""

    bore_m: float
    area_m2: float
    ratio: float
    stroke_m: float | Absent


@dataclass(frozen=True)
class PlateShare:
    """The part of a plate limit that is used [-], and which limit that is."""

    share: float
    limit: Message


@dataclass(frozen=True)
class Found:
    """What rams and pump do. `plate` is the plate limit that is used most."""

    rams: Rams
    pump: Pump | Absent
    known_by: KnownBy
    plate: PlateShare | Absent
    force_n: float
    force_each_n: float
    force_at_most_n: float | Absent
    force_at_least_n: float | Absent
    pressure_pa: float
    plates_known: bool
    may_be_over: bool
    gauge_known: bool
    area_m2: float
    hand_force_n: float | Absent
    lever_ratio: float | Absent
    travel_per_stroke_m: float | Absent


def _rams(given: Given) -> Rams:
    if given.has("bore") == given.has("area"):
        raise given.refuse("bore", "one-of-bore-and-area")
    pulls = given.text("direction") == "pull"
    count = given.count("rams")
    if given.has("rod") and not pulls:
        raise given.refuse("rod", "rod-while-pushing")
    if given.has("area"):
        if given.has("rod"):
            raise given.refuse("rod", "rod-beside-area")
        area_m2 = given.si("area")
        return Rams(count, bore_from_area_m(area_m2), absent("not-given"), area_m2, "area", pulls)
    bore_m = given.si("bore")
    if not pulls:
        return Rams(count, bore_m, absent("not-given"), ram_area_m2(bore_m), "bore", pulls)
    ring_m = given.si("rod")
    if ring_m >= bore_m:
        raise given.refuse("rod", "not-thinner")
    return Rams(count, bore_m, ring_m, ram_area_m2(bore_m, ring_m), "ring", pulls)


def _pump(given: Given) -> Pump | Absent:
    """The hand pump, if any of it is given; then bore and both lever arms are needed."""
    if not any(given.has(name) for name in (*_LEVER, "pump_stroke")):
        return absent("no-pump")
    ratio = lever_ratio(given.si("lever_to_hand"), given.si("lever_to_piston"))
    bore_m = given.si("pump_bore")
    stroke_m = given.si("pump_stroke") if given.has("pump_stroke") else absent("not-given")
    return Pump(bore_m, ram_area_m2(bore_m), ratio, stroke_m)


def _known_by(given: Given) -> KnownBy:
    """What the pressure is found from: one of pressure, force wanted and push on the lever."""
    known = [name for name in _KNOWN_BY if given.has(name)]
    if not known:
        raise given.refuse("pressure", "pressure-missing")
    if len(known) > 1:
        raise given.refuse(known[1], "one-too-many")
    return known[0]


def _pressure_pa(given: Given, by: KnownBy, rams: Rams, pump: Pump | Absent) -> float:
    if by == "pressure":
        return given.si("pressure")
    if by == "force":
        return pressure_for_force_pa(given.si("force"), rams.total_area_m2)
    if isinstance(pump, Absent):
        raise given.refuse("pump_bore", "pump-missing")
    return pump_pressure_pa(given.si("hand_force"), pump.ratio, pump.area_m2)


def _plate(given: Given, pressure_pa: float, each_n: float) -> PlateShare | Absent:
    """The plate limit that is used most; the pressure where both are used alike."""
    shares = []
    if given.has("max_pressure"):
        shares.append(PlateShare(pressure_pa / given.si("max_pressure"), message("plate-pressure")))
    if given.has("ram_capacity"):
        capacity_n = given.si("ram_capacity") * STANDARD_GRAVITY_M_PER_S2
        shares.append(PlateShare(each_n / capacity_n, message("plate-capacity")))
    return max(shares, key=lambda one: one.share) if shares else absent("not-given")


def find(given: Given) -> Found:
    """Forces and pressures of rams and pump; see WORKSHEET for inputs and results."""
    rams = _rams(given)
    pump = _pump(given)
    by = _known_by(given)
    pressure_pa = _pressure_pa(given, by, rams, pump)
    each_n = ram_force_n(pressure_pa, rams.area_m2)
    low_pa, high_pa = _gauge_pa(given, by, pressure_pa)
    return Found(
        rams=rams,
        pump=pump,
        known_by=by,
        plate=_plate(given, pressure_pa, each_n),
        force_n=each_n * rams.count,
        force_each_n=each_n,
        force_at_most_n=_force_n(high_pa, rams),
        force_at_least_n=_force_n(low_pa, rams),
        pressure_pa=pressure_pa,
        may_be_over=_may_be_over(given, high_pa, rams),
        gauge_known=by == "hand_force" or given.has("gauge_error"),
        plates_known=given.has("max_pressure") and given.has("ram_capacity"),
        area_m2=rams.area_m2,
        hand_force_n=absent("give-the-pump")
        if isinstance(pump, Absent)
        else pressure_pa * pump.area_m2 / pump.ratio,
        lever_ratio=pump if isinstance(pump, Absent) else pump.ratio,
        travel_per_stroke_m=_travel_m(rams, pump),
    )


def _gauge_pa(given: Given, by: KnownBy, pressure_pa: float) -> tuple[float | Absent, float | Absent]:
    """The least and the highest pressure [Pa] that there may be where the gauge shows one."""
    if by == "hand_force":
        if given.has("gauge_error"):
            raise given.refuse("gauge_error", "no-gauge-read")
        return absent("no-gauge"), absent("no-gauge")
    if not given.has("gauge_error"):
        return absent("gauge-not-known"), absent("gauge-not-known")
    error_pa = given.si("gauge_error")
    return max(0.0, pressure_pa - error_pa), pressure_pa + error_pa


def _may_be_over(given: Given, high_pa: float | Absent, rams: Rams) -> bool:
    """Whether the true pressure may be over a plate, the gauge being off as far as it may."""
    if isinstance(high_pa, Absent):
        return False
    plate = _plate(given, high_pa, ram_force_n(high_pa, rams.area_m2))
    return not isinstance(plate, Absent) and exceeds(plate.share, 1.0)


def _force_n(pressure_pa: float | Absent, rams: Rams) -> float | Absent:
    return pressure_pa if isinstance(pressure_pa, Absent) else ram_force_n(pressure_pa, rams.total_area_m2)


def _travel_m(rams: Rams, pump: Pump | Absent) -> float | Absent:
    if isinstance(pump, Absent) or isinstance(pump.stroke_m, Absent):
        return absent("not-known")
    return travel_per_stroke_m(pump.stroke_m, pump.area_m2, rams.total_area_m2)


def judge(found: Found) -> tuple[Reason, ...]:
    """The plate limits, then what goes with every ram."""
    reasons = [_against_plate(found)]
    if not found.plates_known:
        reasons.append(unknown("no-plate-limit"))
    if not found.gauge_known:
        reasons.append(unknown("gauge-not-known"))
    reasons.append(note("pinhole", "prohibition"))
    if found.rams.count > 1:
        reasons.append(note("travel-not-shared", "warning"))
    if found.rams.pulls:
        reasons.append(note("rod-takes-area"))
    reasons.append(note("seals-rub"))
    return tuple(reasons)


def _against_plate(found: Found) -> Reason:
    """How the plate limit that is used most stands. The sheet rates nothing: inside a limit is a note."""
    plate = found.plate
    if isinstance(plate, Absent):
        return note("no-plate")
    facts: dict[str, Fact] = {"share": share(plate.share), "limit": plate.limit}
    if exceeds(plate.share, 1.0):
        return stop("over-plate", **facts)
    if found.may_be_over:
        return stop("may-be-over-plate", **facts)
    if exceeds(plate.share, NEAR_SHARE):
        return caution("near-plate", **facts)
    return note("inside-plate", "note", **facts)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    rams, pump = found.rams, found.pump
    steps = [_area_step(rams)]
    if isinstance(pump, Absent) or isinstance(found.hand_force_n, Absent):
        steps += [step(f"pressure-by-{found.known_by}"), step("force-each")]
        return (*steps, step("force-all")) if rams.count > 1 else tuple(steps)
    piston = Quantity(pump.area_m2, "area")
    steps += [
        step(f"pressure-by-{found.known_by}", push=force(found.hand_force_n), piston=piston),
        step("force-each"),
    ]
    if rams.count > 1:
        steps.append(step("force-all"))
    return (*steps, step("lever", piston=piston))


def _area_step(rams: Rams) -> Step:
    if rams.area_by == "ring" and not isinstance(rams.rod_m, Absent):
        return step("area-of-ring", rod=length(rams.rod_m))
    return step("area-of-bore" if rams.area_by == "bore" else "area-given")


def draw(found: Found, writer: Writer) -> Figure:
    """The ram in section, with its pump."""
    rams, pump = found.rams, found.pump
    shape = RamShape(
        bore_m=rams.bore_m,
        rod_m=0.0 if isinstance(rams.rod_m, Absent) else rams.rod_m,
        pulls=rams.pulls,
        pressure_pa=found.pressure_pa,
        force_n=found.force_n,
        pump_bore_m=0.0 if isinstance(pump, Absent) else pump.bore_m,
        lever=_lever(found),
    )
    caption = writer.text(
        "figure",
        rams=rams.count,
        pressure=Quantity(found.pressure_pa, "pressure"),
        side="ring" if rams.pulls else "bore",
        bore=length(rams.bore_m, digits=4),
        force=force(found.force_n),
    )
    return ram_figure(shape, caption, writer)


def _lever(found: Found) -> Lever | None:
    """The lever as drawn: where a pump is known and there is something to push."""
    if isinstance(found.lever_ratio, Absent) or isinstance(found.hand_force_n, Absent):
        return None
    return Lever(found.lever_ratio, found.hand_force_n) if found.hand_force_n else None


_LENGTH = Bounds(above=0, at_most=40)
_PRESSURE = Bounds(above=0, at_most=50000)

WORKSHEET = Worksheet(
    name="ram-force",
    inputs=(
        QuantityInput("bore", dimension="length", bounds=_LENGTH, required=False),
        QuantityInput("area", dimension="area", bounds=Bounds(above=0, at_most=1300), required=False),
        ChoiceInput("direction", choices=("push", "pull")),
        QuantityInput(
            "rod", dimension="length", bounds=_LENGTH, required=False, shown_when={"direction": ("pull",)}
        ),
        CountInput("rams", bounds=Bounds(at_least=1, at_most=12)),
        QuantityInput(
            "pressure", dimension="pressure", bounds=Bounds(at_least=0, at_most=50000), required=False
        ),
        QuantityInput(
            "force", dimension="force", bounds=Bounds(at_least=0, at_most=100_000_000), required=False
        ),
        QuantityInput(
            "gauge_error",
            dimension="pressure",
            bounds=Bounds(at_least=0, at_most=5000),
            required=False,
            sense="demand",
        ),
        QuantityInput(
            "max_pressure", dimension="pressure", bounds=_PRESSURE, required=False, sense="capacity"
        ),
        QuantityInput(
            "ram_capacity",
            dimension="weight",
            unit="short_ton",
            unit_si="t",
            bounds=Bounds(above=0, at_most=2000),
            required=False,
            sense="capacity",
        ),
        QuantityInput("pump_bore", dimension="length", bounds=Bounds(above=0, at_most=10), required=False),
        QuantityInput("pump_stroke", dimension="length", bounds=_LENGTH, required=False),
        QuantityInput(
            "lever_to_hand", dimension="length", bounds=Bounds(above=0, at_most=200), required=False
        ),
        QuantityInput("lever_to_piston", dimension="length", bounds=_LENGTH, required=False),
        QuantityInput("hand_force", dimension="force", bounds=Bounds(above=0, at_most=2000), required=False),
    ),
    results=(
        Result("force", "force"),
        Result("force_each", "force"),
        Result("force_at_most", "force", "demand"),
        Result("force_at_least", "force", "capacity"),
        Result("pressure", "pressure"),
        Result("area", "area", digits=4),
        Result("hand_force", "force", "demand"),
        Result("lever_ratio", digits=4),
        Result("travel_per_stroke", "length"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    large=lambda found: "pressure" if found.known_by == "force" else "force",
    rates=False,
    example={
        "bore": "1.68 in",
        "direction": "push",
        "pressure": "4,300 psi",
        "gauge_error": "100 psi",
        "rams": "1",
        "max_pressure": "10,000 psi",
        "ram_capacity": "10 short tons",
        "pump_bore": "7/16 in",
        "pump_stroke": "1 in",
        "lever_to_hand": "21 in",
        "lever_to_piston": "1-1/4 in",
    },
    citations=(Citation("openstax-physics", "ch. 11, Pascal's principle"),),
)
