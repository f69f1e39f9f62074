"""What does a second heat take from hardened and tempered steel?

A lesson on a test piece, by the Hollomon-Jaffe rule on published tempering data (calc.heating.tempering). It is not
for a hook: nobody knows the hook's steel, its first tempering, or how hot each part of it got.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.heat_curve import Piece, StrengthSpan, TemperCurve, tempering_figure
from calc.heating.hardening import rockwell_of_strength
from calc.heating.tempering import (
    StrengthBand,
    TemperedSteel,
    condition_pa,
    parameter,
    strength_after,
    tempered_steel,
    tempered_steel_names,
)
from calc.heating.weld_cooling import HARDENS_ABOVE_DEGC
from calc.inputs import Bounds, ChoiceInput, Given, QuantityInput, RowsInput
from calc.quantities import from_si
from calc.reasons import Reason, note, unknown
from calc.words.facts import Absent, Fact, Message, Number, Quantity, absent, degrees, known, message
from calc.words.writer import Writer

_STRENGTH_UNITS = ("ksi", "MPa")
COLDEST_TEMPER_DEGC, HOTTEST_TEMPER_DEGC = 100.0, 700.0
"""Heats between which the rule was tested [deg C] (Hollomon and Jaffe); a cooler heat tempers nothing."""
SHORTEST_S = 10
"""Shortest hold that the rule was tested for [s]."""
_LAST_PLACES = 1e-9
_NEXT_TO_A_PIECE_K = 0.01
"""How far outside the data a first tempering may lie and still be that of the last piece [K]."""


@dataclass(frozen=True)
class Heat:
    """A heat after the first tempering: how hot [deg C], and how long [h]."""

    degc: float
    hours: float


@dataclass(frozen=True)
class Rockwell:
    """Rockwell C that goes with a strength: least and greatest of the two published columns."""

    low: float
    high: float

    @property
    def middle(self) -> float:
        """Halfway between the columns."""
        return (self.low + self.high) / 2

    @property
    def words(self) -> Message:
        """Both columns in whole numbers."""
        code = "rockwell-about" if round(self.low) == round(self.high) else "rockwell-span"
        return message(code, low=Number(self.low, places=0), high=Number(self.high, places=0))


def rockwell(strength_pa: float) -> Rockwell | Absent:
    """Rockwell C of a tensile strength [Pa]."""
    found = rockwell_of_strength(strength_pa)
    return Rockwell(*found) if found else absent("outside-rockwell")


def _tempered_at_degc(given: Given, steel: TemperedSteel) -> float:
    """The first tempering [deg C], held to the data of the steel."""
    low, high = steel.coolest_degc, steel.hottest_degc
    at = given.si("tempered_at")
    if not low - _NEXT_TO_A_PIECE_K <= at <= high + _NEXT_TO_A_PIECE_K:
        raise given.refuse(
            "tempered_at", "outside-the-data", steel=steel.name, coolest=degrees(low), hottest=degrees(high)
        )
    return min(max(at, low), high)


def _heat(row: Given) -> Heat:
    if row.si("minutes") < SHORTEST_S - _LAST_PLACES:
        raise row.refuse("minutes", "too-short", seconds=SHORTEST_S)
    return Heat(row.si("heated_to"), from_si(row.si("minutes"), "h", "time"))


def _more_heats(given: Given) -> tuple[Given, ...]:
    """The rows of the later heats; refuses them where it was heated once."""
    if given.text("heats") == "one" and given.has("more_heats"):
        raise given.refuse("more_heats", "heated-once")
    return given.rows("more_heats")


@dataclass(frozen=True)
class Found:
    """The test piece before and after."""

    steel: TemperedSteel
    tempered_at_degc: float
    heats: tuple[Heat, ...]
    after: StrengthBand | Absent
    rockwell_before: Rockwell | Absent
    rockwell_after: Rockwell | Absent
    strength_before_pa: float
    strength_after_pa: float | Absent
    strength_after_low_pa: float | Absent
    strength_after_high_pa: float | Absent
    hardness_before: float | Absent
    hardness_after: float | Absent

    @property
    def hottest_degc(self) -> float:
        """The hottest of the heats [deg C]."""
        return _hottest_degc(self.heats)


def _hottest_degc(heats: Sequence[Heat]) -> float:
    return max(heat.degc for heat in heats)


def find(given: Given) -> Found:
    """Strength and hardness before and after; see WORKSHEET for inputs and results."""
    steel = tempered_steel(given.text("steel"))
    at = _tempered_at_degc(given, steel)
    heats = tuple(_heat(row) for row in (given, *_more_heats(given)))
    before = steel.as_tempered_pa(at)
    after = _after(steel, at, heats)
    hard_before = rockwell(before)
    hard_after = after if isinstance(after, Absent) else rockwell(after.middle_pa)
    return Found(
        steel=steel,
        tempered_at_degc=at,
        heats=heats,
        after=after,
        rockwell_before=hard_before,
        rockwell_after=hard_after,
        strength_before_pa=before,
        strength_after_pa=after if isinstance(after, Absent) else after.middle_pa,
        strength_after_low_pa=after if isinstance(after, Absent) else after.low_pa,
        strength_after_high_pa=after if isinstance(after, Absent) else after.high_pa,
        hardness_before=_middle(hard_before),
        hardness_after=_middle(hard_after),
    )


def _middle(hardness: Rockwell | Absent) -> float | Absent:
    return hardness if isinstance(hardness, Absent) else hardness.middle


def _after(steel: TemperedSteel, tempered_at_degc: float, heats: Sequence[Heat]) -> StrengthBand | Absent:
    """The strength after the heats, or why it cannot be told."""
    hottest = _hottest_degc(heats)
    if hottest >= HARDENS_ABOVE_DEGC:
        return absent("turned-to-austenite")
    if hottest > HOTTEST_TEMPER_DEGC:
        return absent("hotter-than-tested")
    counted = [(heat.degc, heat.hours) for heat in heats if heat.degc >= COLDEST_TEMPER_DEGC]
    if not counted:
        return _unchanged(steel, tempered_at_degc)
    after = strength_after(steel, tempered_at_degc, counted)
    return after or absent("softer-than-measured", soft=_strength(steel.pieces[-1][1]))


def _unchanged(steel: TemperedSteel, tempered_at_degc: float) -> StrengthBand:
    """Too cool to temper: the strength before, with the scatter of the data."""
    before = steel.as_tempered_pa(tempered_at_degc)
    return StrengthBand(before - steel.scatter_pa(), before, before + steel.scatter_pa())


def _strength(strength_pa: float) -> Quantity:
    return Quantity(strength_pa, "pressure", units=_STRENGTH_UNITS)


def judge(found: Found) -> tuple[Reason, ...]:
    """What the heats did to the test piece, or that it cannot be told; a study, which gives no verdict on a part."""
    return (
        _of_the_piece(found),
        note("a-test-piece", "prohibition"),
        note("brittle-too", "warning"),
        note("an-hour-is-taken"),
    )


def _of_the_piece(found: Found) -> Reason:
    steel = found.steel.name
    if not isinstance(found.after, Absent):
        return note("tempered-again", steel=steel)
    if found.after.code == "turned-to-austenite":
        annealed = condition_pa(steel, "annealed", "yield_strength")
        hottest = known(found.hottest_degc, "temperature")
        return unknown("hardened-again", steel=steel, hottest=hottest, soft=_strength(annealed))
    if found.after.code == "hotter-than-tested":
        return unknown("hotter-than-tested", limit=known(HOTTEST_TEMPER_DEGC, "temperature"))
    return unknown("softer-than-measured", steel=steel, **found.after.facts)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working; a steel that turned to austenite has no parameter."""
    hardened_again = isinstance(found.after, Absent) and found.after.code == "turned-to-austenite"
    heats = () if hardened_again else found.heats
    at = found.tempered_at_degc
    steps = [
        step("parameter-before", kelvin=_kelvin(at), parameter=_parameter(Heat(at, 1.0))),
        *(
            step(
                "parameter-of-a-heat",
                heat=known(heat.degc, "temperature"),
                kelvin=_kelvin(heat.degc),
                hours=Number(heat.hours),
                parameter=_parameter(heat),
            )
            for heat in heats
        ),
    ]
    if not isinstance(found.after, Absent):
        steps.append(step("band", scatter=_strength(found.steel.scatter_pa())))
    steps.append(step("strength-before", at=known(at, "temperature")))
    return tuple(steps)


def _kelvin(degc: float) -> Number:
    return Number(from_si(degc, "K", "temperature"), places=0)


def _parameter(heat: Heat) -> Number:
    return Number(parameter(heat.degc, heat.hours), places=2)


def shown(found: Found) -> dict[str, Fact]:
    """Hardness reads as both published columns."""
    both = {"hardness_before": found.rockwell_before, "hardness_after": found.rockwell_after}
    return {name: one.words for name, one in both.items() if isinstance(one, Rockwell)}


def draw(found: Found, writer: Writer) -> Figure:
    """The curve of the test pieces, with the piece before and after."""
    after = found.after
    span = None if isinstance(after, Absent) else StrengthSpan(after.low_pa, after.middle_pa, after.high_pa)
    curve = TemperCurve(
        tuple(Piece(*piece) for piece in found.steel.pieces),
        Piece(found.tempered_at_degc, found.strength_before_pa),
        span,
    )
    caption = writer.text(
        "figure-off-the-curve" if span is None else "figure",
        steel=found.steel.name,
        before=_strength(found.strength_before_pa),
        low=_strength(span.low_pa) if span else absent("not-known"),
        high=_strength(span.high_pa) if span else absent("not-known"),
    )
    return tempering_figure(curve, caption, writer)


_TEMPERATURE = Bounds(above=-459.67, at_most=2750)
_HEAT = (
    QuantityInput("heated_to", dimension="temperature", bounds=_TEMPERATURE, sense="demand"),
    QuantityInput("minutes", dimension="time", bounds=Bounds(above=0, at_most=1440), sense="demand"),
)

WORKSHEET = Worksheet(
    name="temper-loss",
    inputs=(
        ChoiceInput("steel", choices=tempered_steel_names()),
        QuantityInput("tempered_at", dimension="temperature", bounds=_TEMPERATURE),
        *_HEAT,
        ChoiceInput("heats", choices=("one", "several")),
        RowsInput(
            "more_heats",
            bounds=Bounds(at_least=1, at_most=12),
            columns=_HEAT,
            shown_when={"heats": ("several",)},
        ),
    ),
    results=(
        Result("strength_after", "pressure", "plain", *_STRENGTH_UNITS),
        Result("strength_after_low", "pressure", "capacity", *_STRENGTH_UNITS),
        Result("strength_after_high", "pressure", "plain", *_STRENGTH_UNITS),
        Result("strength_before", "pressure", "plain", *_STRENGTH_UNITS),
        Result("hardness_before"),
        Result("hardness_after"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=lambda found: (Citation("temper-data-pages", f"AISI {found.steel.name}"),),
    shown=shown,
    rates=False,
    large="strength_after",
    example={
        "steel": "4140",
        "tempered_at": "800 °F",
        "heated_to": "1,200 °F",
        "minutes": "5 min",
        "heats": "one",
    },
    citations=(
        Citation("hollomon-jaffe", "100 to 700 °C, 10 s to 24 h"),
        Citation("astm-a370", "hardness conversion"),
        Citation("astm-e140", "hardness conversion"),
    ),
)
