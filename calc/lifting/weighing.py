"""Weighs the parts of a load: a row of the table of parts, or a drawn solid, each with a low and a high figure.

A row is a plain shape (calc.lifting.shapes) of a material (calc.lifting.densities), a section whose weight by length is
known, or a known weight. The balance point of the whole is the weighed middle of the parts (the sum of weight times
place over the sum of weights: Baker and Haynes, Engineering Statics, ch. 7).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Literal

from calc.inputs import Given
from calc.lifting.densities import DensityRange, density_ranges
from calc.lifting.shapes import SHAPES, SHARP_CORNERED, Axes, Shape, ShapeError, Solid, turned, turned_box
from calc.lifting.stl import MeshSolid, SolidError, mesh_solid
from calc.quantities import to_si
from calc.words.facts import Absent, Fact, Message, Option, Quantity, absent, length, message

BY_LENGTH = "weight_per_length"
"""The input of a row that stands in for the sizes of its section."""

SECTIONS_AGREE = 0.1
"""A section's sizes and its weight by the foot agree within this share [-]: sharp corners and even flanges leave out or add a
few hundredths (our own mark, no source)."""

_NOMINAL_M = 0.1
"""Width and depth of a section whose sizes were not given, as drawn [m]."""

How = Literal["given", "by-length", "by-volume", "drawn"]
"""How a weight was found: given, by length, by volume and density, or from a drawn solid."""


@dataclass(frozen=True)
class PartWeight:
    """Weight of all pieces of a part together [kg], over zero also where the part is taken away.

    density, volumes_m3 -- of a part reckoned by volume: its material, and its least and greatest volume [m3], for the sums
    that share one density
    by -- what the weight was reckoned from, for the working
    """

    plain_kg: float
    low_kg: float
    high_kg: float
    how: How
    density: DensityRange | None = None
    volumes_m3: tuple[float, float] = (0.0, 0.0)
    by: Mapping[str, Fact] = field(default_factory=dict)


@dataclass(frozen=True)
class Standing:
    """Where a part stands and how [m]: its balance point, and that point from the middle of its box; its box in x, y, z, and
    the axis along which it looks round, if any.
    """

    centre_m: Axes | Absent
    offset_m: Axes
    box_m: Axes
    round_along: str = ""


@dataclass(frozen=True)
class WeighedPart:
    """One part of a load.

    minus -- whether it is taken away; hollow -- whether it has a wall, and may hold water; sharp_cornered -- whether it is a
    rolled section reckoned with sharp corners; exact -- whether it has no allowance at all
    """

    name: Message
    minus: bool
    weight: PartWeight
    standing: Standing
    hollow: bool = False
    sharp_cornered: bool = False
    exact: bool = False

    @property
    def signed_kg(self) -> float:
        """Weight [kg], below zero where the part is taken away."""
        return -self.weight.plain_kg if self.minus else self.weight.plain_kg


def weigh_part(row: Given, number: int) -> WeighedPart:
    """Weigh one row of the table of parts; refuses what is missing or does not fit by the name of its box."""
    shape = SHAPES[row.text("shape")]
    sizes = _sizes(row, shape)
    solid = _solid(row, shape, sizes)
    along = row.text("along") or shape.lies_along
    return WeighedPart(
        name=_name(row, number, shape),
        minus=row.flag("minus"),
        weight=_weight(row, shape, sizes, solid),
        standing=_standing(row, shape, solid, along),
        hollow="wall" in sizes,
        sharp_cornered=shape.name in SHARP_CORNERED,
        exact=row.si("tolerance") == 0.0,
    )


def _name(row: Given, number: int, shape: Shape) -> Message:
    by_number = message("part-by-number", number=number, shape=Option("parts-shape", shape.name))
    return message("part", name=row.text("label") or by_number, count=row.count("count"))


def _sizes(row: Given, shape: Shape) -> dict[str, float]:
    """The sizes of a row that its shape knows [m, kg, kg/m]; refuses a missing one by name."""
    may_go_by_length = BY_LENGTH in shape.may_have
    needs = (BY_LENGTH, "length") if may_go_by_length and row.has(BY_LENGTH) else shape.needs
    for name in needs:
        if not row.has(name):
            code = "size-or-weight-missing" if may_go_by_length else "size-missing"
            raise row.refuse(name, code, shape=Option("parts-shape", shape.name))
    return {name: row.si(name) for name in (*shape.needs, *shape.may_have) if row.has(name)}


def _solid(row: Given, shape: Shape, sizes: Mapping[str, float]) -> Solid:
    """What the shape holds. Without the sizes of its section it is drawn at a nominal one, and its middle taken for its
    balance point.
    """
    if BY_LENGTH in sizes and not all(name in sizes for name in shape.needs):
        width = sizes.get("flange_width", sizes.get("width", _NOMINAL_M))
        return Solid(0.0, (sizes["length"], width, sizes.get("depth", _NOMINAL_M)))
    try:
        return shape.solid(sizes)
    except ShapeError as reason:
        raise row.refuse(reason.dim, reason.code) from reason


def _weight(row: Given, shape: Shape, sizes: Mapping[str, float], solid: Solid) -> PartWeight:
    count, slack = row.count("count"), row.si("tolerance")
    if shape.name == "lump":
        return _given_weight(count * sizes["weight"], slack, "given", {})
    if BY_LENGTH in sizes:
        by: dict[str, Fact] = {
            "per_length": Quantity(sizes[BY_LENGTH], BY_LENGTH),
            "length": length(sizes["length"]),
        }
        by_length = _given_weight(count * (sizes[BY_LENGTH] * sizes["length"]), slack, "by-length", by)
        return _held_against_its_section(row, shape, sizes, solid, by_length)
    density = _density(row, "material")
    return _by_volume(solid.volume_m3 * count, slack, density, Option("parts-material", density.material))


def _held_against_its_section(
    row: Given, shape: Shape, sizes: Mapping[str, float], solid: Solid, by_length: PartWeight
) -> PartWeight:
    """A weight by length, held against the sizes of its section where they and the material were given too: refused if they do
    not agree, else the heavier high figure counts.
    """
    if not row.has("material") or not all(name in sizes for name in shape.needs):
        return by_length
    volume_m3 = solid.volume_m3 * row.count("count")
    option = Option("parts-material", row.text("material"))
    by_volume = _by_volume(volume_m3, row.si("tolerance"), _density(row, "material"), option)
    low, high = sorted((by_length.plain_kg, by_volume.plain_kg))
    if high > (1 + SECTIONS_AGREE) * low:
        raise row.refuse(BY_LENGTH, "section-against-weight")
    return replace(by_length, high_kg=max(by_length.high_kg, by_volume.high_kg))


def _given_weight(plain_kg: float, slack: float, how: How, by: Mapping[str, Fact]) -> PartWeight:
    return PartWeight(plain_kg, plain_kg * (1 - slack), plain_kg * (1 + slack), how, by=by)


def _by_volume(volume_m3: float, slack: float, density: DensityRange, material: Option) -> PartWeight:
    """Volume [m3] times density, both from low to high."""
    low, high = volume_m3 * (1 - slack), volume_m3 * (1 + slack)
    return PartWeight(
        plain_kg=volume_m3 * density.middle_kg_per_m3,
        low_kg=low * density.low_kg_per_m3,
        high_kg=high * density.high_kg_per_m3,
        how="by-volume",
        density=density,
        volumes_m3=(low, high),
        by={
            "volume": Quantity(volume_m3, "volume"),
            "density": Quantity(density.middle_kg_per_m3, "density"),
            "material": material,
        },
    )


def _density(given: Given, name: str) -> DensityRange:
    """The density of the material that an input names."""
    material = given.text(name)
    if not material:
        raise given.refuse(name, "material-missing")
    return density_ranges()[material]


def _standing(row: Given, shape: Shape, solid: Solid, along: str) -> Standing:
    offset = turned(solid.offset_m, along)
    centre: Axes | Absent = absent("places-missing")
    if row.has("at"):
        x, y, z = row.point("at")
        centre = _clean((x + offset[0], y + offset[1], z + offset[2]))
    looks_round = along.removeprefix("-") if shape.outline == "round" else ""
    return Standing(centre, offset, turned_box(solid.box_m, along), looks_round)


def _clean(point_m: Axes) -> Axes:
    """A point [m] in which a length under a picometre is none."""
    x, y, z = (0.0 if abs(side) < 1e-12 else side for side in point_m)
    return x, y, z


def weigh_solid(given: Given) -> WeighedPart:
    """Weigh the drawn solid of a file; refuses a file that is not a closed solid, and a missing unit or material."""
    unit = given.text("solid_unit")
    if not unit:
        raise given.refuse("solid_unit", "unit-missing")
    density = _density(given, "solid_material")
    try:
        mesh = mesh_solid(given.data("solid"))
    except SolidError as reason:
        raise given.refuse("solid", reason.code, **reason.facts) from reason
    scale = to_si(1.0, unit, "length")
    x, y, z = ((high - low) * scale for low, high in zip(mesh.low, mesh.high, strict=True))
    weight = _by_volume(mesh.volume * scale**3, 0.0, density, Option("solid_material", density.material))
    drawn: dict[str, Fact] = {
        "triangles": mesh.triangles,
        "x": length(x),
        "y": length(y),
        "z": length(z),
    }
    centre = (mesh.centre[0] * scale, mesh.centre[1] * scale, mesh.centre[2] * scale)
    return WeighedPart(
        name=message("drawn-solid"),
        minus=False,
        weight=replace(weight, how="drawn", by={**weight.by, **drawn}),
        standing=Standing(centre, _off_the_middle(mesh, scale), (x, y, z)),
    )


def _off_the_middle(mesh: MeshSolid, scale_m: float) -> Axes:
    """From the middle of a drawn solid's box to its balance point [m]; one unit of the drawing is `scale_m` long."""
    x, y, z = (
        (centre - (low + high) / 2) * scale_m
        for centre, low, high in zip(mesh.centre, mesh.low, mesh.high, strict=True)
    )
    return x, y, z


def bounds_kg(parts: Sequence[WeighedPart]) -> tuple[float, float]:
    """Low and high weight [kg] of the whole. What is cut out of a material has that material's own density, so each
    material counts once with its net volume; given weights count by themselves. Never below zero.
    """
    low = high = 0.0
    net: dict[str, tuple[float, float]] = {}
    for part in parts:
        weight = part.weight
        if weight.density is None:
            low += -weight.high_kg if part.minus else weight.low_kg
            high += -weight.low_kg if part.minus else weight.high_kg
            continue
        least, most = net.get(weight.density.material, (0.0, 0.0))
        small, large = weight.volumes_m3
        net[weight.density.material] = (
            (least - large, most - small) if part.minus else (least + small, most + large)
        )
    for material, (least, most) in net.items():
        density = density_ranges()[material]
        low += least * (density.low_kg_per_m3 if least > 0 else density.high_kg_per_m3)
        high += most * (density.high_kg_per_m3 if most > 0 else density.low_kg_per_m3)
    return max(low, 0.0), high


def balance_point_m(parts: Sequence[WeighedPart]) -> Axes | Absent:
    """Weighed middle of the parts [m], where it is known of each where it stands."""
    total_kg = sum(part.signed_kg for part in parts)
    sums = [0.0, 0.0, 0.0]
    for part in parts:
        centre = part.standing.centre_m
        if isinstance(centre, Absent):
            return centre
        for axis in range(3):
            sums[axis] += part.signed_kg * centre[axis]
    return _clean((sums[0] / total_kg, sums[1] / total_kg, sums[2] / total_kg))


def _box_middle_m(standing: Standing, centre_m: Axes) -> Axes:
    """The middle of a part's box [m]."""
    (x, y, z), (along_x, along_y, along_z) = centre_m, standing.offset_m
    return x - along_x, y - along_y, z - along_z


def lies_within(parts: Sequence[WeighedPart], point_m: Axes) -> bool:
    """Whether a point [m] lies within the box round all parts that are not taken away; each stands somewhere known."""
    boxes = [
        (middle - side / 2, middle + side / 2)
        for standing in (part.standing for part in parts if not part.minus)
        if not isinstance(standing.centre_m, Absent)
        for middle, side in zip(_box_middle_m(standing, standing.centre_m), standing.box_m, strict=True)
    ]
    slack = 1e-9 * max(1.0, *(abs(end) for ends in boxes for end in ends))
    return all(
        min(low for low, _ in boxes[axis::3]) - slack
        <= point_m[axis]
        <= max(high for _, high in boxes[axis::3]) + slack
        for axis in range(3)
    )
