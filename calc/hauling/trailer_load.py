"""Where must the load stand on the trailer?

A beam on two supports (own statics): the ball carries what the empty trailer rests on it, and of each load its weight times
its distance ahead of the middle of the axles over the distance from there to the ball; the axles carry the rest. Axles that
share by an equalizer act as one in their middle. Ratings are those of the plates, typed by the reader. That ten to fifteen
percent on the ball keeps a trailer from swaying is custom (owners' manuals of trailer and car makers, read in reprints), no
law: outside of it the sheet is careful and never stops for it alone. A trailer whose tongue would lift is stopped.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.trailers import StandingLoad, Trailer, trailer_figure
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, QuantityInput, RowsInput, TextInput
from calc.reasons import Reason, caution, note, over, stop, unknown, within
from calc.words.facts import (
    Absent,
    Fact,
    Listing,
    Message,
    Quantity,
    absent,
    known,
    message,
    share,
    weight,
)
from calc.words.writer import Writer

CUSTOM_LEAST, CUSTOM_MOST = 0.10, 0.15
"""Share of the loaded trailer's weight that custom wants on the ball [-] (owners' manuals, copy)."""
MOST_ON_THE_BALL = 0.5
"""No empty trailer rests more of its weight than this on the ball: its axles stand nearer to its middle (our own mark) [-]."""
MOST_TIRES_OVER_AXLES = 3.0
"""All tires together are rated at most so many times what the axles are (our own mark: one to one and a half is usual) [-]."""
RATED = ("hitch_tongue", "hitch_gross", "trailer_gross", "axles", "tires")
"""What has a plate: the hitch by what rests on it and by what it tows, the trailer, all its axles together, all its tires."""


@dataclass(frozen=True)
class PlacedLoad:
    """A load: what it is called, its weight [kg], how far it stands ahead of the middle of the axles [m] (minus: behind)."""

    name: str | Message
    weight_kg: float
    ahead_m: float


@dataclass(frozen=True)
class Rated:
    """A plate's rating [kg] or why there is none, and what it must bear [kg]."""

    code: str
    rating_kg: float | Absent
    bears_kg: float

    @property
    def used(self) -> float | Absent:
        """Part of the rating that is used [-]."""
        return self.rating_kg if isinstance(self.rating_kg, Absent) else self.bears_kg / self.rating_kg

    @property
    def said(self) -> Message:
        """What it is."""
        return message(f"rated-{self.code}")


@dataclass(frozen=True)
class Found:
    """What rests on the ball and on the axles."""

    empty_kg: float
    empty_tongue_kg: float
    ball_m: float
    loads: tuple[PlacedLoad, ...]
    condition: str
    tongue_weight_kg: float
    gross_weight_kg: float
    rated: tuple[Rated, ...]

    @property
    def axle_weight_kg(self) -> float:
        """What the axles carry together [kg]."""
        return self.gross_weight_kg - self.tongue_weight_kg

    @property
    def tongue_share(self) -> float:
        """Part of the loaded trailer's weight on the ball [-]."""
        return self.tongue_weight_kg / self.gross_weight_kg

    @property
    def all_rated(self) -> bool:
        """Whether every plate was read."""
        return not any(isinstance(one.rating_kg, Absent) for one in self.rated)

    @property
    def most_used(self) -> float | Absent:
        """The largest part of a rating that is used [-]; none while a plate is missing."""
        used = [one.used for one in self.rated if not isinstance(one.used, Absent)]
        return max(used) if self.all_rated else absent("plate-missing")

    @property
    def used(self) -> tuple[float | Absent, ...]:
        """Part of each rating that is used [-]."""
        return tuple(one.used for one in self.rated)

    @property
    def move_ahead_m(self) -> float | Absent:
        """How far all loads together would have to move ahead (minus: back) to come into the middle of the custom [m]."""
        carried_kg = sum(one.weight_kg for one in self.loads)
        if CUSTOM_LEAST <= self.tongue_share <= CUSTOM_MOST:
            return absent("stands-well")
        wanted_kg = (CUSTOM_LEAST + CUSTOM_MOST) / 2 * self.gross_weight_kg
        return (wanted_kg - self.tongue_weight_kg) * self.ball_m / carried_kg


def find(given: Given) -> Found:
    """Moments about the middle of the axles; see WORKSHEET for inputs and results."""
    empty_kg, tongue_kg, ball_m = given.si("empty_weight"), given.si("empty_tongue"), given.si("axle_to_ball")
    if exceeds(tongue_kg, MOST_ON_THE_BALL * empty_kg):
        raise given.refuse("empty_tongue", "more-than-half-the-trailer", empty=weight(empty_kg))
    _refuse_one_plate_for_two(given)
    _refuse_tires_counted_twice(given)
    loads = tuple(_load(row, place, ball_m) for place, row in enumerate(given.rows("loads")))
    gross_kg = empty_kg + sum(one.weight_kg for one in loads)
    on_ball_kg = tongue_kg + sum(one.weight_kg * one.ahead_m / ball_m for one in loads)
    bears = {
        "hitch_tongue": on_ball_kg,
        "hitch_gross": gross_kg,
        "trailer_gross": gross_kg,
        "axles": gross_kg - on_ball_kg,
        "tires": gross_kg - on_ball_kg,
    }
    rated = tuple(Rated(code, _rating_kg(given, code), max(0.0, bears[code])) for code in RATED)
    return Found(empty_kg, tongue_kg, ball_m, loads, given.text("condition"), on_ball_kg, gross_kg, rated)


def _refuse_one_plate_for_two(given: Given) -> None:
    """A hitch tows more than it carries: the same figure for both was read from one line of its plate."""
    tongue_kg, gross_kg = given.maybe("hitch_tongue_rating"), given.maybe("hitch_gross_rating")
    if tongue_kg is not None and gross_kg is not None and not exceeds(gross_kg, tongue_kg):
        raise given.refuse("hitch_tongue_rating", "not-less-than-towed", gross=weight(gross_kg, "capacity"))


def _refuse_tires_counted_twice(given: Given) -> None:
    """What all tires carry, typed as what each does, is told by the axles: nobody fits tires of so many times their rating."""
    tire_kg, axles_kg = given.maybe("tires_rating"), given.maybe("axles_rating")
    if tire_kg is None or axles_kg is None:
        return
    if exceeds(tire_kg * given.count("tire_count"), MOST_TIRES_OVER_AXLES * axles_kg):
        raise given.refuse("tires_rating", "of-all-tires", axles=weight(axles_kg, "capacity"))


def _load(row: Given, place: int, ball_m: float) -> PlacedLoad:
    distance_m = row.si("distance")
    if row.text("stands") == "ahead" and exceeds(distance_m, ball_m):
        raise row.refuse("distance", "ahead-of-the-ball", ball=Quantity(ball_m, "length"))
    ahead_m = distance_m if row.text("stands") == "ahead" else -distance_m
    return PlacedLoad(
        row.text("name") or message("load-by-place", place=place + 1), row.si("weight"), ahead_m
    )


def _rating_kg(given: Given, code: str) -> float | Absent:
    """A plate's rating; of tires, that of one times how many there are."""
    rating_kg = given.maybe(f"{code}_rating")
    if rating_kg is None:
        return absent("plate-not-read")
    return rating_kg * given.count("tire_count") if code == "tires" else rating_kg


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once."""
    reasons: list[Reason] = []
    if found.tongue_weight_kg < 0.0:
        reasons.append(stop("tongue-lifts"))
    if found.condition == "damaged":
        reasons.append(stop("damaged"))
    elif not found.condition:
        reasons.append(unknown("not-looked-at"))
    for one in found.rated:
        if isinstance(one.rating_kg, Absent):
            reasons.append(unknown("plate-not-read", part=one.said))
        elif exceeds(one.bears_kg, one.rating_kg):
            bears, rating = weight(one.bears_kg, "demand"), weight(one.rating_kg, "capacity")
            reasons.append(over("over-plate", part=one.said, bears=bears, rating=rating))
    if not reasons:
        reasons.append(within("inside-plates"))
    reasons += _custom(found)
    reasons += [note("axles-share"), note("chains-too", "mandatory"), note("tie-it-down", "mandatory")]
    return tuple(reasons)


def _custom(found: Found) -> list[Reason]:
    """What custom says of the share on the ball."""
    if found.tongue_weight_kg < 0.0:
        return []
    if exceeds(CUSTOM_LEAST, found.tongue_share):
        return [caution("tongue-light", least=share(CUSTOM_LEAST, "plain"), most=share(CUSTOM_MOST, "plain"))]
    if exceeds(found.tongue_share, CUSTOM_MOST):
        return [caution("tongue-heavy", least=share(CUSTOM_LEAST, "plain"), most=share(CUSTOM_MOST, "plain"))]
    return []


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    steps = [
        step(
            "load",
            name=one.name,
            weight=weight(one.weight_kg),
            ahead=Quantity(one.ahead_m, "length"),
            puts=weight(one.weight_kg * one.ahead_m / found.ball_m),
        )
        for one in found.loads
    ]
    return (*steps, step("tongue"), step("axles"), step("share"))


def shown(found: Found) -> Mapping[str, Fact]:
    """Shares stand behind what they are of."""
    used = [
        message("of-plate", part=one.said, amount=known(one.used, "fraction", "demand"))
        for one in found.rated
    ]
    return {"used": Listing(tuple(used), "semicolon")}


def draw(found: Found, writer: Writer) -> Figure:
    """The trailer from the side, to scale, with what rests where."""
    said = Listing(tuple(message("load-drawn", name=one.name, weight=weight(one.weight_kg),
                                 ahead=Quantity(abs(one.ahead_m), "length"),
                                 stands="ahead" if one.ahead_m >= 0 else "behind")
                         for one in found.loads), "semicolon")  # fmt: skip
    tongue, axles = weight(found.tongue_weight_kg), weight(found.axle_weight_kg, "demand")
    caption = writer.text(
        "figure", loads=said, tongue=tongue, axles=axles, ball=Quantity(found.ball_m, "length")
    )
    standing = tuple(StandingLoad(writer.plain(weight(one.weight_kg)), one.ahead_m) for one in found.loads)
    trailer = Trailer(found.ball_m, standing, writer.plain(tongue), writer.plain(axles))
    return trailer_figure(trailer, caption, writer)


def _plate(code: str) -> QuantityInput:
    return QuantityInput(
        f"{code}_rating",
        dimension="weight",
        bounds=Bounds(above=0, at_most=200_000),
        required=False,
        sense="capacity",
    )


WORKSHEET = Worksheet(
    name="trailer-load",
    inputs=(
        QuantityInput("empty_weight", dimension="weight", bounds=Bounds(above=0, at_most=100_000)),
        QuantityInput("empty_tongue", dimension="weight", bounds=Bounds(at_least=0, at_most=50_000)),
        QuantityInput("axle_to_ball", dimension="length", bounds=Bounds(above=0, at_most=1000)),
        RowsInput(
            "loads",
            columns=(
                TextInput("name", required=False),
                QuantityInput("weight", dimension="weight", bounds=Bounds(above=0, at_most=200_000)),
                ChoiceInput("stands", choices=("ahead", "behind")),
                QuantityInput("distance", dimension="length", bounds=Bounds(at_least=0, at_most=1000)),
            ),
            bounds=Bounds(at_least=1, at_most=20),
        ),
        ChoiceInput("condition", choices=("good", "damaged"), required=False),
        _plate("hitch_tongue"),
        _plate("hitch_gross"),
        _plate("trailer_gross"),
        _plate("axles"),
        _plate("tires"),
        CountInput("tire_count", bounds=Bounds(at_least=2, at_most=24)),
    ),
    results=(
        Result("tongue_weight", "weight"),
        Result("tongue_share", "fraction"),
        Result("axle_weight", "weight", "demand"),
        Result("gross_weight", "weight", "demand"),
        Result("most_used", "fraction", "demand"),
        Result("used", "fraction", "demand", of="used"),
        Result("move_ahead", "length"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    shown=shown,
    large="tongue_share",
    example={
        "empty_weight": "2,700 lb",
        "empty_tongue": "300 lb",
        "axle_to_ball": "14 ft",
        "loads": [{"name": "loader", "weight": "9,000 lb", "stands": "ahead", "distance": "20 in"}],
        "condition": "good",
        "hitch_tongue_rating": "1,500 lb",
        "hitch_gross_rating": "14,000 lb",
        "trailer_gross_rating": "14,000 lb",
        "axles_rating": "14,000 lb",
        "tires_rating": "3,520 lb",
        "tire_count": "4",
    },
    citations=(Citation("trailer-manuals", "tongue weight"), Citation("cfr-49-393", "393.70(d)")),
)
