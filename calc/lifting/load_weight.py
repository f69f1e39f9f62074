"""What does it weigh, and where does it balance?

A load is put together from plain shapes, weights by length, known weights and a drawn solid (calc.lifting.weighing).
Density and thickness are never certain: the low and the high figure bound the weight, and the high one is the one to
lift by.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.declaration import Citation, Figure, HandOver, Result, Step, Worksheet, step
from calc.figures.loads import LABELLED, DrawnLoad, PlacedPart, load_figure
from calc.inputs import (
    JOB_INPUT,
    JOB_WORDS,
    Bounds,
    ChoiceInput,
    CountInput,
    FileInput,
    FlagInput,
    Given,
    Input,
    PointInput,
    QuantityInput,
    RowsInput,
    TextInput,
)
from calc.lifting.densities import TIMBER, density_ranges
from calc.lifting.shapes import SHAPES, Axes
from calc.lifting.weighing import (
    BY_LENGTH,
    WeighedPart,
    balance_point_m,
    bounds_kg,
    lies_within,
    weigh_part,
    weigh_solid,
)
from calc.reasons import Reason, caution, note
from calc.words.facts import Absent, Fact, Listing, Message, length, message, share, weight
from calc.words.writer import Writer

UNSAID_SPREAD = 0.002
"""Part of the weight that lies between low and high and goes unsaid [-]."""


@dataclass(frozen=True)
class Found:
    """What the load weighs and where it balances."""

    parts: tuple[WeighedPart, ...]
    weight_kg: float
    weight_low_kg: float
    weight_high_kg: float
    centre_m: Axes | Absent

    @property
    def centre_x_m(self) -> float | Absent:
        """Balance point, to the right [m]."""
        return self.centre_m if isinstance(self.centre_m, Absent) else self.centre_m[0]

    @property
    def centre_y_m(self) -> float | Absent:
        """Balance point, to the back [m]."""
        return self.centre_m if isinstance(self.centre_m, Absent) else self.centre_m[1]

    @property
    def centre_z_m(self) -> float | Absent:
        """Balance point, up [m]."""
        return self.centre_m if isinstance(self.centre_m, Absent) else self.centre_m[2]

    @property
    def parts_kg(self) -> tuple[float, ...]:
        """Weight of each part [kg], below zero where it is taken away."""
        return tuple(part.signed_kg for part in self.parts)


def find(given: Given) -> Found:
    """Weight and balance point of the load; see WORKSHEET for inputs and results."""
    parts = [weigh_part(row, number) for number, row in enumerate(given.rows("parts"), 1)]
    if given.has("solid"):
        parts.append(weigh_solid(given))
    if not parts:
        raise given.refuse("parts", "no-rows")
    total = sum(part.signed_kg for part in parts)
    low, high = bounds_kg(parts)
    if total <= 0 or high <= 0:
        raise given.refuse("parts", "all-taken-away")
    balance = balance_point_m(parts)
    if not isinstance(balance, Absent) and not lies_within(parts, balance):
        raise given.refuse("parts", "balances-outside")
    return Found(tuple(parts), total, low, high, balance)


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once. What was reckoned never says ok: it is to be weighed where it matters."""
    parts = found.parts
    spread = found.weight_high_kg - found.weight_low_kg
    reasons = [
        caution("hardly-a-range" if spread < UNSAID_SPREAD * found.weight_kg else "a-range"),
        Reason("weigh-it", "caution", kind="mandatory"),
        caution("could-be-wrong"),
        note("rigging-not-in-it", "mandatory"),
    ]
    if any(part.hollow for part in parts):
        reasons.append(caution("holds-water"))
    if any(part.sharp_cornered for part in parts):
        reasons.append(note("sharp-corners"))
    if any(part.weight.density and part.weight.density.material in TIMBER for part in parts):
        reasons.append(caution("wet-timber"))
    if any(part.exact for part in parts):
        reasons.append(note("taken-as-exact"))
    return tuple(reasons)


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working: each part, their sum, how wrong it may be, the balance point."""
    several = len(found.parts) > 1
    steps = [_part_step(part) for part in found.parts]
    if several:
        steps.append(step("together", terms=_terms(found.parts)))
    low = share(found.weight_low_kg / found.weight_kg - 1, "capacity", 2)
    high = share(found.weight_high_kg / found.weight_kg - 1, "demand", 2)
    steps.append(step("range", low=low, high=high))
    if several and not isinstance(found.centre_m, Absent):
        steps += [_balance_step(found, axis, place) for axis, place in enumerate(found.centre_m)]
    return tuple(steps)


def _part_step(part: WeighedPart) -> Step:
    weighed = part.weight
    return step(
        f"part-{weighed.how}",
        part=part.name,
        taken=_taken(part),
        plain=weight(weighed.plain_kg),
        low=weight(weighed.low_kg, "capacity"),
        high=weight(weighed.high_kg, "demand"),
        **weighed.by,
    )


def _taken(part: WeighedPart) -> Message:
    """Whether a part is taken away, as a message may choose by it."""
    return message("yes" if part.minus else "no")


def _terms(parts: tuple[WeighedPart, ...]) -> Listing:
    """The weights of the parts as terms of a sum, each with its sign; a plus is left out before the first."""
    first = message("term-less" if parts[0].minus else "term-first", term=weight(parts[0].weight.plain_kg))
    others = (
        message("term-less" if part.minus else "term-more", term=weight(part.weight.plain_kg))
        for part in parts[1:]
    )
    return Listing((first, *others), "space")


def _balance_step(found: Found, axis: int, place_m: float) -> Step:
    """The weighed middle along one axis; it is known of each part where it stands."""
    moments = tuple(
        message("moment", term=weight(part.signed_kg), arm=length(part.standing.centre_m[axis]))
        for part in found.parts
        if not isinstance(part.standing.centre_m, Absent)
    )
    return step("balance", axis="xyz"[axis], moments=Listing(moments, "plus"), place=length(place_m))


def shown(found: Found) -> dict[str, Fact]:
    """Each part with its name."""
    lines = tuple(
        message("part-line", part=part.name, taken=_taken(part), plain=weight(part.weight.plain_kg))
        for part in found.parts
    )
    return {"parts": Listing(lines, "semicolon")}


def draw(found: Found, writer: Writer) -> Figure:
    """The load to scale, each part as the box that holds it."""
    placed = tuple(_placed(part) for part in found.parts)
    centre = None if isinstance(found.centre_m, Absent) else found.centre_m
    load = DrawnLoad(placed, centre, found.weight_kg)
    names = tuple(
        message("figure-part", number=number, part=part.name)
        for number, part in enumerate(found.parts[:LABELLED], 1)
    )
    facts: dict[str, Fact] = {
        "view": "above" if load.from_above else "front",
        "names": Listing(names),
        "more": len(found.parts) - len(names),
        "total": weight(found.weight_kg),
    }
    if load.balance_m is None:
        return load_figure(load, writer.text("figure-unplaced", **facts), writer)
    x, y, z = (length(side) for side in load.balance_m)
    return load_figure(load, writer.text("figure", x=x, y=y, z=z, **facts), writer)


def _placed(part: WeighedPart) -> PlacedPart:
    standing = part.standing
    centre = None if isinstance(standing.centre_m, Absent) else standing.centre_m
    return PlacedPart(centre, standing.box_m, part.minus, standing.round_along)


def cite(found: Found) -> tuple[Citation, ...]:
    """Who prints the densities."""
    densities = (part.weight.density for part in found.parts)
    return tuple(dict.fromkeys(source for one in densities if one for source in one.citations))


_SIZES = (
    "length",
    "width",
    "depth",
    "height",
    "thickness",
    "diameter",
    "outside_diameter",
    "inside_diameter",
    "bottom_diameter",
    "top_diameter",
    "mean_diameter",
    "wall",
    "side",
    "across_flats",
    "flange_width",
    "web_thickness",
    "flange_thickness",
)
_MATERIALS = tuple(density_ranges())


def _shapes_with(size: str) -> tuple[str, ...]:
    """The shapes that need or may have a size."""
    return tuple(shape.name for shape in SHAPES.values() if size in (*shape.needs, *shape.may_have))


def _size(name: str) -> QuantityInput:
    """A length that some shapes have."""
    return QuantityInput(
        name,
        dimension="length",
        bounds=Bounds(above=0, at_most=4000),
        required=False,
        shown_when={"shape": _shapes_with(name)},
    )


_COLUMNS: tuple[Input, ...] = (
    TextInput("label", required=False),
    ChoiceInput("shape", choices=tuple(SHAPES)),
    ChoiceInput(
        "material",
        choices=_MATERIALS,
        required=False,
        shown_when={"shape": tuple(name for name in SHAPES if name != "lump")},
    ),
    CountInput("count", bounds=Bounds(at_least=1, at_most=10_000)),
    *(_size(name) for name in _SIZES),
    QuantityInput(
        BY_LENGTH,
        dimension="weight_per_length",
        bounds=Bounds(above=0, at_most=10_000),
        required=False,
        shown_when={"shape": _shapes_with(BY_LENGTH)},
    ),
    QuantityInput(
        "weight",
        dimension="weight",
        bounds=Bounds(above=0, at_most=2_000_000),
        required=False,
        shown_when={"shape": ("lump",)},
    ),
    PointInput("at", dimension="length", bounds=Bounds(at_least=-4000, at_most=4000), required=False),
    ChoiceInput("along", choices=("x", "-x", "y", "-y", "z", "-z"), required=False),
    FlagInput("minus", default="no"),
    QuantityInput("tolerance", dimension="fraction", bounds=Bounds(at_least=0, at_most=50)),
)

WORKSHEET = Worksheet(
    name="load-weight",
    inputs=(
        RowsInput("parts", bounds=Bounds(at_least=0, at_most=100), required=False, columns=_COLUMNS),
        FileInput("solid", required=False),
        ChoiceInput("solid_unit", choices=("mm", "cm", "m", "in", "ft"), required=False),
        ChoiceInput("solid_material", choices=_MATERIALS, required=False),
        JOB_INPUT,
    ),
    results=(
        Result("weight", "weight"),
        Result("weight_low", "weight", "capacity", printed=True),
        Result("weight_high", "weight", "demand"),
        Result("centre_x", "length"),
        Result("centre_y", "length"),
        Result("centre_z", "length"),
        Result("parts", "weight"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    shown=shown,
    large="weight_high",
    hands_over=(
        HandOver("weight_high", "sling-legs", "load"),
        HandOver("weight_high", "hitch", "load"),
        HandOver("weight_high", "hanging-load", "load"),
        HandOver("centre_x", "hanging-load", "centre[0]"),
        HandOver("centre_y", "hanging-load", "centre[1]"),
        HandOver("centre_z", "hanging-load", "centre[2]"),
        HandOver("weight_high", "load-path", "load"),
        HandOver("job", "sling-legs", "job"),
        HandOver("job", "hanging-load", "job"),
        HandOver("job", "load-path", "job"),
    ),
    shares=(JOB_WORDS,),
    example={
        "parts": [
            {
                "label": "Cradle base plate",
                "shape": "plate",
                "material": "steel",
                "length": "86 in",
                "width": "38 5/8 in",
                "thickness": "1/4 in",
                "count": "1",
                "tolerance": "2 %",
            },
            {
                "label": "Lightening hole",
                "shape": "disc",
                "material": "steel",
                "diameter": "18 in",
                "thickness": "1/4 in",
                "count": "1",
                "minus": "yes",
                "tolerance": "2 %",
            },
            {
                "label": "Oak bolster",
                "shape": "box",
                "material": "oak-air-dry",
                "length": "4 ft",
                "width": "8 in",
                "height": "6 in",
                "count": "1",
                "tolerance": "5 %",
            },
        ],
    },
    citations=(Citation("baker-haynes", "ch. 7, centre of gravity as a weighed middle"),),
)
