"""How far and how hard do I press a bent plate or bar to get it straight?

A flat or a round bar of plain steel on two supports, hump up, the ram pressing or a chain pulling at its middle
(calc.pulling.plastic_bending). It is pressed past straight by as much as it springs back. Nobody knows the true yield, so every
movement is a range: from the yield as given, to half as much again, since steel is mostly stronger than its grade and hardens
as it bends. What the table, the supports and the chain bear is told by the ram, not by the plate. Lifting hardware, hardened,
quenched-and-tempered and unknown steel get no figure at all; nothing that comes out is a rating.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Row, Step, Worksheet, step
from calc.figures.straightening import PressedView, straighten_figure
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput
from calc.lifting.chain_spring import most_of_chain_kg
from calc.pulling.energy import chain_modulus_citation, chain_stiffness_n_per_m, stored_energy_j
from calc.pulling.hydraulics import pressure_for_force_pa, ram_area_m2
from calc.pulling.plastic_bending import (
    RECTANGLE,
    ROUND_BAR,
    PressedBar,
    flat_second_moment_m4,
    outside_strain,
    round_second_moment_m4,
)
from calc.pulling.string_energy import frame_energy_j, oil_energy_j
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, stop, unknown
from calc.words.facts import Absent, Fact, Message, Number, Quantity, absent, force, length, message, share
from calc.words.writer import Writer

STEEL_MODULUS_PA = 200e9
"""Modulus of steel [Pa], 29,000 ksi; the softer of the printed figures, which springs back farther."""
STRONGER = 1.5
"""How many times its yield a plate may hold before it is straight [-]: steel stronger than its grade, and hardening as it bends
(20 to 50 percent, from memory; our own mark)."""
WIDE_YIELD = 1.155
"""2 / sqrt(3): a wide plate cannot narrow as it bends, and yields that much later (plane strain; from memory)."""
WIDE = 5.0
"""Width over thickness from which a plate is taken as wide (from memory)."""
LEAST_SLENDERNESS = 8.0
"""Span over thickness under which shear and crushing at the supports count (our own mark)."""
GREATEST_SLOPE = 0.1
"""Movement over span up to which the formulas of small slopes are used, as in beam-lift."""
SHARPEST = 1.5
"""Smallest inside radius over thickness for bending new mild plate cold (ASTM A6, X4, group A, across the rolling; a copy)."""
SHARPEST_ALONG = 2.25
"""The same where the bend line lies along the rolling: 1.5 times as much. Nobody knows the rolling of a scrap of plate."""
WIDE_FOR_ITS_SPAN = 0.5
"""Width over span from which a push on one spot dishes the plate (our own mark, no source)."""
PUSHES = (0.25, 0.5, 0.75, 1.0)
"""Pushes that are told, as parts of the least springback; then half way to the greatest, and that (our own steps)."""
STRAIGHT_M = 1e-6
"""Less than this [m] is straight."""
SHARES = (1.0, 1.1, 1.25, 1.4)
"""Forces that are told, as parts of that at first yield."""


@dataclass(frozen=True)
class SetUp:
    """What is pressed and how, as drawn: span, hump over it, height across the push, room under straight (None: not said) [m]."""

    method: str
    span_m: float
    bow_m: float
    height_m: float
    width_m: float
    room_m: float | None


@dataclass(frozen=True)
class Plan:
    """What the work asks, as far as it may be told."""

    first_force_n: float | Absent
    hinge_force_n: float | Absent
    force_at_most_n: float | Absent
    must_bear_n: float | Absent
    each_support_n: float | Absent
    table_moment_nm: float | Absent
    yield_moment_nm: float | Absent
    plastic_moment_nm: float | Absent
    first_travel_m: float | Absent
    over_bend_from_m: float | Absent
    over_bend_to_m: float | Absent
    travel_from_m: float | Absent
    travel_to_m: float | Absent
    left_at_most_m: float | Absent
    yielded_length_m: float | Absent
    pushes: tuple[Row, ...]
    forces: tuple[Row, ...]
    in_piece_j: float | Absent
    in_chain_j: float | Absent
    in_oil_j: float | Absent
    in_frame_j: float | Absent
    stored_energy_j: float | Absent


@dataclass(frozen=True)
class Found:
    """The set-up, the two bars between which the true one lies (None where no figure is given), what bars the work, and the
    plan.
    """

    set_up: SetUp
    soft: PressedBar | None
    hard: PressedBar | None
    barred: tuple[Reason, ...]
    ram_n: float | None
    chain_n: float | None
    strain: float | Absent
    careful: tuple[str, ...]
    plan: Plan


def _piece(given: Given) -> tuple[SetUp, float]:
    """The set-up, with the second moment of the section [m4]."""
    span = given.si("span")
    if given.text("shape") == "round-bar":
        height = width = given.si("diameter")
        second = round_second_moment_m4(height)
    else:
        height, width = given.si("thickness"), given.si("width")
        if exceeds(height, width):
            raise given.refuse("thickness", "on-edge")
        second = flat_second_moment_m4(width, height)
    if span < LEAST_SLENDERNESS * height:
        raise given.refuse("span", "supports-too-near", least=length(LEAST_SLENDERNESS * height, "demand"))
    bow = given.si("bow")
    if bow > GREATEST_SLOPE * span:
        raise given.refuse("bow", "bent-too-far", most=length(GREATEST_SLOPE * span, "capacity"))
    set_up = SetUp(given.text("method"), span, bow, height, width, given.maybe("room"))
    return set_up, second


def _bars(given: Given, set_up: SetUp, second_m4: float) -> tuple[PressedBar, PressedBar]:
    """The bar at its yield as given, and the strongest that it may turn out to be."""
    shape = ROUND_BAR if given.text("shape") == "round-bar" else RECTANGLE
    yields = given.si("yield_strength")
    wide = shape is RECTANGLE and set_up.width_m >= WIDE * set_up.height_m
    strongest = yields * STRONGER * (WIDE_YIELD if wide else 1.0)

    def bar(yield_pa: float) -> PressedBar:
        return PressedBar(shape, set_up.height_m, second_m4, set_up.span_m, yield_pa, STEEL_MODULUS_PA)

    return bar(yields), bar(strongest)


_BARRED_STEEL: dict[str, Reason] = {
    "hardened": stop("hardened-steel"),
    "quenched-and-tempered": stop("tempered-steel"),
    "unknown": unknown("steel-not-known"),
}


def _barred(given: Given, strain_too_far: bool) -> list[Reason]:
    """What forbids the work whatever the numbers are."""
    reasons: list[Reason] = []
    if given.text("part") == "lifting-part":
        reasons.append(stop("lifting-part"))
    if given.text("steel") in _BARRED_STEEL:
        reasons.append(_BARRED_STEEL[given.text("steel")])
    if given.text("cracks") == "some":
        reasons.append(stop("cracked"))
    if given.text("straightened_before") == "more":
        reasons.append(stop("straightened-too-often"))
    if strain_too_far:
        reasons.append(stop("no-stretch-left"))
    if not given.has("cracks"):
        reasons.append(unknown("cracks-not-looked-for"))
    if not given.has("straightened_before"):
        reasons.append(unknown("past-not-known"))
    return reasons


def _sharpest(given: Given, height_m: float) -> tuple[float | Absent, bool]:
    """Stretch of the outside of a sharp bend [-], and whether it leaves nothing to bend back with."""
    if given.text("bend") != "sharp":
        return absent("even-bow"), False
    radius = given.si("inside_radius")
    return outside_strain(radius, height_m), radius < SHARPEST_ALONG * height_m


def find(given: Given) -> Found:
    """Forces, movements and energy of the work; see WORKSHEET for inputs and results."""
    set_up, second = _piece(given)
    strain, too_far = _sharpest(given, set_up.height_m)
    barred = _barred(given, too_far)
    soft, hard = _bars(given, set_up, second)
    farthest = set_up.bow_m + hard.springs_back_m(set_up.bow_m)
    if not barred and farthest > GREATEST_SLOPE * set_up.span_m:
        barred.append(unknown("bends-too-far-for-this"))
    _refuse_thin_chain(given, set_up)
    ram = given.maybe("ram_capacity")
    ram_n = None if ram is None else ram * STANDARD_GRAVITY_M_PER_S2
    chain = given.maybe("chain_rating")
    return Found(
        set_up=set_up,
        soft=None if barred else soft,
        hard=None if barred else hard,
        barred=tuple(barred),
        ram_n=ram_n,
        chain_n=None if chain is None else chain * STANDARD_GRAVITY_M_PER_S2,
        strain=strain,
        careful=_careful(given, set_up),
        plan=_no_plan() if barred else _plan(given, set_up, soft, hard, ram_n),
    )


def _refuse_thin_chain(given: Given, set_up: SetUp) -> None:
    """Refuses a rating that no chain of that wire has."""
    rated, wire = given.maybe("chain_rating"), given.maybe("chain_wire")
    if set_up.method != "pull" or rated is None or wire is None:
        return
    if exceeds(rated, most_of_chain_kg(wire)):
        most = Quantity(most_of_chain_kg(wire), "weight", "capacity")
        raise given.refuse("chain_rating", "more-than-its-wire", most=most)


def _careful(given: Given, set_up: SetUp) -> tuple[str, ...]:
    """What asks for care whatever the numbers are, by code."""
    asks = (
        ("bends-once-more", given.text("straightened_before") == "once"),
        ("sharp-bend", given.text("bend") == "sharp"),
        ("own-table", given.text("table_made") != "rated"),
        ("wide-plate", set_up.width_m > WIDE_FOR_ITS_SPAN * set_up.span_m),
    )
    return tuple(code for code, asked in asks if asked)


def _no_plan() -> Plan:
    none = absent("no-figure")
    return Plan(*(none,) * 15, (), (), *(none,) * 5)


def _plan(given: Given, set_up: SetUp, soft: PressedBar, hard: PressedBar, ram_n: float | None) -> Plan:
    bow = set_up.bow_m
    over_from, over_to = soft.springs_back_m(bow), hard.springs_back_m(bow)
    at_most = hard.hinge_force_n
    pulls_n = at_most if ram_n is None else min(at_most, ram_n)
    in_piece = stored_energy_j(pulls_n, soft.stiffness_n_per_m)
    in_chain, in_oil, in_frame = (
        _in_chain_j(given, pulls_n),
        _in_oil_j(given, pulls_n),
        _in_frame_j(given, pulls_n),
    )
    bears = absent("ram-not-known") if ram_n is None else ram_n
    return Plan(
        first_force_n=soft.first_force_n,
        hinge_force_n=soft.hinge_force_n,
        force_at_most_n=at_most,
        must_bear_n=bears,
        each_support_n=bears if isinstance(bears, Absent) else bears / 2,
        table_moment_nm=bears if isinstance(bears, Absent) else bears * set_up.span_m / 4,
        yield_moment_nm=soft.yield_moment_nm,
        plastic_moment_nm=soft.plastic_moment_nm,
        first_travel_m=soft.first_travel_m,
        over_bend_from_m=over_from,
        over_bend_to_m=over_to,
        travel_from_m=bow + over_from,
        travel_to_m=bow + over_to,
        left_at_most_m=_left_at_most_m(set_up, hard),
        yielded_length_m=soft.yielded_length_m,
        pushes=_pushes(set_up, soft, hard, (over_from, over_to)),
        forces=_forces(given, soft),
        in_piece_j=in_piece,
        in_chain_j=in_chain,
        in_oil_j=in_oil,
        in_frame_j=in_frame,
        stored_energy_j=in_piece
        + sum(one for one in (in_chain, in_oil, in_frame) if not isinstance(one, Absent)),
    )


def _left_at_most_m(set_up: SetUp, hard: PressedBar) -> float | Absent:
    """The bow that stays where the piece meets the table under it."""
    if set_up.room_m is None:
        return absent("room-not-said")
    return max(0.0, set_up.bow_m - hard.stays_after_m(set_up.bow_m + set_up.room_m))


def _in_chain_j(given: Given, force_n: float) -> float | Absent:
    if given.text("method") != "pull" or not (given.has("chain_wire") and given.has("chain_length")):
        return absent("chain-not-given")
    stiffness = chain_stiffness_n_per_m(given.si("chain_wire"), given.si("chain_length"))
    return stored_energy_j(force_n, stiffness)


def _in_oil_j(given: Given, force_n: float) -> float | Absent:
    if not (given.has("ram_bore") and given.has("oil_volume")):
        return absent("oil-not-given")
    pressure = pressure_for_force_pa(force_n, ram_area_m2(given.si("ram_bore")))
    return oil_energy_j(pressure, given.si("oil_volume"))


def _in_frame_j(given: Given, force_n: float) -> float | Absent:
    return (
        frame_energy_j(force_n, given.si("table_give"))
        if given.has("table_give")
        else absent("give-not-given")
    )


def _bow_left(left_m: float) -> Message:
    """What is left of the bow [m], or how far it is bent the other way."""
    if left_m < -STRAIGHT_M:
        return message("bent-the-other-way", by=length(-left_m))
    return message("bow-left", by=length(max(0.0, left_m)))


def _pushes(
    set_up: SetUp, soft: PressedBar, hard: PressedBar, springs_m: tuple[float, float]
) -> tuple[Row, ...]:
    """After a push so far past straight: what is left of the bow if the steel is as given, and if it is the strongest."""
    least, most = springs_m
    rows = []
    for past in (*(part * least for part in PUSHES), (least + most) / 2, most):
        cells: dict[str, Fact] = {"past": length(past)}
        for name, bar in (("soft", soft), ("hard", hard)):
            cells[name] = _bow_left(set_up.bow_m - bar.stays_after_m(set_up.bow_m + past))
        rows.append(Row(cells))
    return tuple(rows)


def _forces(given: Given, bar: PressedBar) -> tuple[Row, ...]:
    """What stays after a push of so much force, the steel as given."""
    rows = []
    for part in (*SHARES, bar.shape.full):
        core = bar.shape.core_at_moment(part)
        push_n = part * bar.first_force_n
        pressure: Fact = absent("no-bore")
        if given.has("ram_bore"):
            at_pa = pressure_for_force_pa(push_n, ram_area_m2(given.si("ram_bore")))
            pressure = Quantity(at_pa, "pressure")
        stays = bar.shape.stays(core) * bar.first_travel_m
        cells: dict[str, Fact] = {
            "push": force(push_n),
            "pressure": pressure,
            "moves": length(bar.shape.travel(core) * bar.first_travel_m),
            "stays": message("runs", from_here=length(stays)) if core == 0.0 else length(stays),
        }
        rows.append(Row(cells))
    return tuple(rows)


def judge(found: Found) -> tuple[Reason, ...]:
    """What forbids it; then ram, chain and table; then what goes with every push."""
    if found.soft is None:
        return (*found.barred, note("shape-is-all", "prohibition"))
    return (
        *_against_ram(found),
        *_against_table(found),
        *map(caution, found.careful),
        *_always(found.soft.shape.full),
    )


def _against_ram(found: Found) -> list[Reason]:
    """The chain under the whole of the ram, and the ram against the piece."""
    reasons: list[Reason] = []
    pulls = found.set_up.method == "pull"
    if (
        pulls
        and found.ram_n is not None
        and found.chain_n is not None
        and exceeds(found.ram_n, found.chain_n)
    ):
        reasons.append(
            over("chain-overloaded", used=share(found.ram_n / found.chain_n), chain=force(found.chain_n))
        )
    if found.ram_n is None:
        reasons.append(unknown("ram-not-known"))
    elif not isinstance(found.plan.hinge_force_n, Absent) and found.ram_n < found.plan.hinge_force_n:
        reasons.append(caution("ram-too-weak"))
    if pulls and found.chain_n is None:
        reasons.append(unknown("chain-not-known"))
    return reasons


def _against_table(found: Found) -> list[Reason]:
    """Whether there is room to press past straight."""
    room, wanted = found.set_up.room_m, found.plan.over_bend_to_m
    if room is None:
        return [caution("room-not-said")]
    if not isinstance(wanted, Absent) and exceeds(wanted, room):
        return [caution("meets-the-table", room=length(room))]
    return []


def _always(runs_at: float) -> tuple[Reason, ...]:
    """What goes with every push."""
    return (
        note("press-past-straight"),
        note("movement-leads", "mandatory", runs_at=Number(runs_at, 2)),
        note("killed-by-a-fitting", "prohibition"),
        note("killed-by-a-loose-piece", "prohibition"),
        note("stand-aside", "prohibition"),
        note("energy-at-least", "warning"),
        note("yields-sooner-back", "warning"),
        note("shape-is-all", "prohibition"),
    )


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    bar, set_up = found.soft, found.set_up
    if bar is None:
        return ()
    height = length(set_up.height_m)
    lines = [
        step(
            "yield-moment",
            second=Quantity(bar.second_moment_m4, "second_moment"),
            height=height,
        ),
        step("plastic-moment", factor=_number(bar.shape.full)),
        step("first-force"),
        step("hinge-force"),
        step("at-most", factor=_number(_ratio(found.hard, bar))),
        step("first-travel", height=height),
        step("springs-back", share=_number(bar.springs_back_m(set_up.bow_m) / bar.first_travel_m)),
    ]
    if found.ram_n is not None:
        lines += [step("each-support"), step("table-moment")]
    lines.append(step("in-piece", stiffness=Quantity(bar.stiffness_n_per_m, "stiffness")))
    if not isinstance(found.strain, Absent):
        lines.append(step("strain", height=height, strain=share(found.strain)))
    return tuple(lines)


def _ratio(hard: PressedBar | None, soft: PressedBar) -> float:
    return hard.yield_pa / soft.yield_pa if hard else STRONGER


def _number(value: float) -> Number:
    return Number(value, 4)


def cite(found: Found) -> tuple[Citation, ...]:
    """The modulus of chain where a chain pulls."""
    return () if isinstance(found.plan.in_chain_j, Absent) else (chain_modulus_citation(),)


def draw(found: Found, writer: Writer) -> Figure:
    """The piece on its supports, bowed, straight and pressed past straight; heights drawn larger than life."""
    set_up, past = found.set_up, found.plan.over_bend_from_m
    view = PressedView(
        span_m=set_up.span_m,
        bow_m=set_up.bow_m,
        past_m=0.0 if isinstance(past, Absent) else past,
        room_m=set_up.room_m,
        pulled=set_up.method == "pull",
    )
    caption = writer.text(
        "figure",
        times=Number(view.enlarged, places=0),
        past=past if isinstance(past, Absent) else length(past),
    )
    return straighten_figure(view, caption, writer)


_SIZE = Bounds(above=0, at_most=200)
_FLAT = {"shape": ("flat",)}
_PULLED = {"method": ("pull",)}


def _length(name: str, bounds: Bounds = _SIZE, **shown: tuple[str, ...]) -> QuantityInput:
    return QuantityInput(name, dimension="length", bounds=bounds, required=not shown, shown_when=shown)


WORKSHEET = Worksheet(
    name="straighten",
    inputs=(
        ChoiceInput("part", choices=("plain-part", "lifting-part")),
        ChoiceInput("steel", choices=("plain", "unknown", "quenched-and-tempered", "hardened")),
        QuantityInput(
            "yield_strength",
            dimension="pressure",
            unit="psi",
            unit_si="MPa",
            bounds=Bounds(at_least=20_000, at_most=65_000),
            sense="demand",
        ),
        ChoiceInput("shape", choices=("flat", "round-bar")),
        _length("thickness", Bounds(above=0, at_most=12), shape=("flat",)),
        _length("width", shape=("flat",)),
        _length("diameter", Bounds(above=0, at_most=12), shape=("round-bar",)),
        _length("span", Bounds(above=0, at_most=400)),
        QuantityInput("bow", dimension="length", bounds=Bounds(above=0, at_most=40), sense="demand"),
        ChoiceInput("bend", choices=("even", "sharp")),
        _length("inside_radius", Bounds(at_least=0, at_most=200), bend=("sharp",)),
        ChoiceInput("straightened_before", choices=("no", "once", "more"), required=False),
        ChoiceInput("cracks", choices=("none", "some"), required=False),
        ChoiceInput("method", choices=("press", "pull")),
        QuantityInput(
            "room",
            dimension="length",
            bounds=Bounds(at_least=0, at_most=200),
            required=False,
            sense="capacity",
        ),
        ChoiceInput("table_made", choices=("rated", "own"), required=False),
        QuantityInput(
            "ram_capacity",
            dimension="weight",
            unit="short_ton",
            unit_si="t",
            bounds=Bounds(above=0, at_most=2000),
            required=False,
        ),
        QuantityInput("ram_bore", dimension="length", bounds=Bounds(above=0, at_most=40), required=False),
        QuantityInput(
            "chain_rating",
            dimension="weight",
            bounds=Bounds(above=0, at_most=500_000),
            required=False,
            shown_when=_PULLED,
            sense="capacity",
        ),
        _length("chain_wire", Bounds(above=0, at_most=4), **_PULLED),
        _length("chain_length", Bounds(above=0, at_most=4_000), **_PULLED),
        QuantityInput(
            "oil_volume",
            dimension="volume",
            unit="qt",
            unit_si="L",
            bounds=Bounds(above=0, at_most=1_000),
            required=False,
        ),
        QuantityInput(
            "table_give", dimension="length", bounds=Bounds(at_least=0, at_most=20), required=False
        ),
    ),
    results=(
        Result("over_bend_from", "length", of="plan.over_bend_from_m"),
        Result("over_bend_to", "length", of="plan.over_bend_to_m"),
        Result("travel_from", "length", of="plan.travel_from_m"),
        Result("travel_to", "length", of="plan.travel_to_m"),
        Result("pushes", columns=("past", "soft", "hard"), of="plan.pushes"),
        Result("first_travel", "length", of="plan.first_travel_m"),
        Result("first_force", "force", of="plan.first_force_n"),
        Result("hinge_force", "force", of="plan.hinge_force_n"),
        Result("force_at_most", "force", "demand", of="plan.force_at_most_n"),
        Result("forces", columns=("push", "pressure", "moves", "stays"), of="plan.forces"),
        Result("left_at_most", "length", "demand", of="plan.left_at_most_m"),
        Result("must_bear", "force", "demand", of="plan.must_bear_n"),
        Result("each_support", "force", "demand", of="plan.each_support_n"),
        Result("table_moment", "torque", "demand", of="plan.table_moment_nm"),
        Result("yield_moment", "torque", of="plan.yield_moment_nm"),
        Result("plastic_moment", "torque", of="plan.plastic_moment_nm"),
        Result("yielded_length", "length", of="plan.yielded_length_m"),
        Result("strain", "fraction", "demand"),
        Result("stored_energy", "energy", digits=2, of="plan.stored_energy_j"),
        Result("in_piece", "energy", "demand", digits=2, of="plan.in_piece_j"),
        Result("in_chain", "energy", "demand", digits=2, of="plan.in_chain_j"),
        Result("in_oil", "energy", "demand", digits=2, of="plan.in_oil_j"),
        Result("in_frame", "energy", "demand", digits=2, of="plan.in_frame_j"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    large="over_bend_from",
    rates=False,
    example={
        "part": "plain-part",
        "steel": "plain",
        "yield_strength": "36,000 psi",
        "shape": "flat",
        "thickness": "1/2 in",
        "width": "6 in",
        "span": "36 in",
        "bow": "3/8 in",
        "bend": "even",
        "straightened_before": "no",
        "cracks": "none",
        "method": "press",
        "room": "2 in",
        "table_made": "own",
        "ram_capacity": "2 short tons",
        "ram_bore": "1.68 in",
        "oil_volume": "0.2 qt",
        "table_give": "1/16 in",
    },
    citations=(
        Citation("beer-mechanics", "4.8 and 4.9: bending past yield, plastic moment, residual stress"),
        Citation("astm-a6", "X4.2: smallest radius of a cold bend"),
        Citation("niosh-face-04or015", "summary"),
        Citation("niosh-face-03mi029", "summary"),
        Citation("esposito-fluid-power", "Ex 2.11"),
    ),
)
