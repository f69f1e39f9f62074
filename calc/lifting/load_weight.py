"""What does it weigh, and where does it balance?

A load is put together from plain shapes (calc.lifting.shapes), each volume times density (tables/densities) or a
weight by the foot, and from a drawn solid (calc.lifting.stl). The balance point is the weighed middle of the parts
(the sum of weight times place over the sum of weights: Baker and Haynes, Engineering Statics, ch. 7). Density and
thickness are never certain: the low and the high figure bound the weight, and the high one is the one to lift by.
"""

from __future__ import annotations

from dataclasses import dataclass

from calc.figures.loads import PlacedPart, load_figure
from calc.lifting.densities import DensityRange, density_ranges, material_choices
from calc.lifting.shapes import SHAPES, Axes, Shape, ShapeError, Solid, turned, turned_box
from calc.lifting.stl import LARGEST_BYTES, SolidError, mesh_solid
from calc.quantities import number_text, to_si
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

_BY_LENGTH = "weight_per_length"


@dataclass(frozen=True)
class WeighedPart:
    """One row, all its pieces together.

    plain, low, high -- weight [kg], over zero also where the row takes away; material -- empty for a given weight
    per_density_m3 -- low and high volume [m3] of the row, for the sums that share one density
    centre_m -- balance point, None if it was not said where the part stands
    """

    label: str
    minus: bool
    plain_kg: float
    low_kg: float
    high_kg: float
    material: str
    volumes_m3: tuple[float, float]
    centre_m: Axes | None
    box_m: Axes
    along: str
    round_outline: bool
    step: Step

    @property
    def signed_kg(self) -> float:
        """Weight [kg], below zero where the row takes away."""
        return -self.plain_kg if self.minus else self.plain_kg


def _dims(row: Given, shape: Shape) -> dict[str, float]:
    """The dimensions of a row that its shape knows; refuses a missing one by name."""
    by_length = _BY_LENGTH in shape.may_have and row.has(_BY_LENGTH)
    needs = (_BY_LENGTH, "length") if by_length else shape.needs
    for name in needs:
        if not row.has(name):
            other = " Or give the weight by the foot." if _BY_LENGTH in shape.may_have else ""
            raise row.refuse(name, f"is missing. This shape needs it: {shape.label}.{other}")
    return {name: row.si(name) for name in (*shape.needs, *shape.may_have) if row.has(name)}


def _solid(row: Given, shape: Shape, dims: dict[str, float]) -> Solid:
    if _BY_LENGTH in dims and not all(name in dims for name in shape.needs):
        # The sizes of the section were not given: it is drawn 100 mm wide, and its middle taken for its balance point.
        nominal = {"width": 0.1, "depth": 0.1, "flange_width": 0.1} | dims
        width = nominal["flange_width"] if "flange_width" in dims else nominal["width"]
        return Solid(0.0, (dims["length"], width, nominal["depth"]))
    try:
        return shape.solid(dims)
    except ShapeError as reason:
        raise row.refuse(reason.dim, f"{reason}.") from reason


def _density(row: Given, name: str) -> DensityRange:
    key = row.text(name)
    if not key:
        raise row.refuse(name, "is missing. Pick what it is made of, such as steel.")
    return density_ranges()[key]


def _clean(length_m: float) -> float:
    """A length under a picometre is none."""
    return 0.0 if abs(length_m) < 1e-12 else length_m


def weigh_part(row: Given, number: int, say: Say) -> WeighedPart:
    """Weigh one row of the table of parts."""
    shape = SHAPES[row.text("shape")]
    dims = _dims(row, shape)
    solid = _solid(row, shape, dims)
    count = row.count("count")
    slack = row.si("tolerance") if row.has("tolerance") else 0.0
    along = row.text("along") or shape.lies_along
    label = (row.text("label") or f"{number}. {shape.label}") + (f" × {count}" if count > 1 else "")
    material = ""
    volumes = (0.0, 0.0)
    if shape.name == "lump" or _BY_LENGTH in dims:
        plain = count * (dims["weight"] if shape.name == "lump" else dims[_BY_LENGTH] * dims["length"])
        low, high = plain * (1 - slack), plain * (1 + slack)
        one = "given" if shape.name == "lump" else "weight by length × length"
        numbers = "" if shape.name == "lump" else (
            f"{say.one(dims[_BY_LENGTH], _BY_LENGTH)} × {say.one(dims['length'], 'length')}"
        )  # fmt: skip
    else:
        density = _density(row, "material")
        material = density.material
        volume = solid.volume_m3 * count
        volumes = (volume * (1 - slack), volume * (1 + slack))
        plain = volume * density.middle_kg_per_m3
        low, high = volumes[0] * density.low_kg_per_m3, volumes[1] * density.high_kg_per_m3
        one = "volume × density"
        numbers = (
            f"{say.one(volume, 'volume')} × {say.one(density.middle_kg_per_m3, 'density')} ({density.name})"
        )
    centre = None
    if row.has("at"):
        x, y, z = row.point("at")
        dx, dy, dz = turned(solid.offset_m, along)
        centre = (_clean(x + dx), _clean(y + dy), _clean(z + dz))
    minus = row.flag("minus")
    step = Step(
        ("Take away: " if minus else "") + label,
        one,
        numbers,
        f"{say.weight(plain)}; {say.one(low, 'weight', 'down')} to {say.one(high, 'weight', 'up')}",
    )
    return WeighedPart(
        label, minus, plain, low, high, material, volumes, centre, turned_box(solid.box_m, along), along,
        shape.outline == "round", step,
    )  # fmt: skip


def weigh_solid(given: Given, say: Say) -> WeighedPart:
    """Weigh the drawn solid of a file."""
    unit = given.text("solid_unit")
    if not unit:
        raise given.refuse(
            "solid_unit",
            "is missing: the file holds bare numbers. Say what one unit of its drawing is, such as mm.",
        )
    density = _density(given, "solid_material")
    try:
        mesh = mesh_solid(given.data("solid"))
    except SolidError as reason:
        raise given.refuse("solid", str(reason)) from reason
    scale = to_si(1.0, unit, "length")
    volume = mesh.volume * scale**3
    size = tuple((high - low) * scale for low, high in zip(mesh.low, mesh.high, strict=True))
    centre = (mesh.centre[0] * scale, mesh.centre[1] * scale, mesh.centre[2] * scale)
    plain = volume * density.middle_kg_per_m3
    low_kg, high_kg = volume * density.low_kg_per_m3, volume * density.high_kg_per_m3
    words = " × ".join(say.one(side, "length") for side in size)
    step = Step(
        f"Drawn solid of {mesh.triangles:,} triangles, {words} over all",
        "volume × density",
        f"{say.one(volume, 'volume')} × {say.one(density.middle_kg_per_m3, 'density')} ({density.name})",
        f"{say.weight(plain)}; {say.one(low_kg, 'weight', 'down')} to {say.one(high_kg, 'weight', 'up')}",
    )
    return WeighedPart(
        "Drawn solid", False, plain, low_kg, high_kg, density.material, (volume, volume), centre,
        (size[0], size[1], size[2]), "z", False, step,
    )  # fmt: skip


def bounds_kg(parts: list[WeighedPart]) -> tuple[float, float]:
    """Low and high weight [kg] of the whole. What is cut out of a material has that material's own density, so each
    material counts once with its net volume; given weights count by themselves. Never below zero.
    """
    low = high = 0.0
    net: dict[str, tuple[float, float]] = {}
    for part in parts:
        if not part.material:
            low += -part.high_kg if part.minus else part.low_kg
            high += -part.low_kg if part.minus else part.high_kg
            continue
        least, most = net.get(part.material, (0.0, 0.0))
        small, large = part.volumes_m3
        net[part.material] = (least - large, most - small) if part.minus else (least + small, most + large)
    for material, (least, most) in net.items():
        density = density_ranges()[material]
        low += least * (density.low_kg_per_m3 if least > 0 else density.high_kg_per_m3)
        high += most * (density.high_kg_per_m3 if most > 0 else density.low_kg_per_m3)
    return max(low, 0.0), high


def balance_point_m(parts: list[WeighedPart]) -> Axes | None:
    """Weighed middle of the parts [m]; None unless it is known where each stands."""
    total = sum(part.signed_kg for part in parts)
    sums = [0.0, 0.0, 0.0]
    for part in parts:
        if part.centre_m is None:
            return None
        for axis in range(3):
            sums[axis] += part.signed_kg * part.centre_m[axis]
    return _clean(sums[0] / total), _clean(sums[1] / total), _clean(sums[2] / total)


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    rows = given.rows("parts")
    parts = [weigh_part(row, number, say) for number, row in enumerate(rows, 1)]
    if given.has("solid"):
        parts.append(weigh_solid(given, say))
    if not parts:
        raise given.refuse("parts", "has no rows. Give at least one part, or a drawn solid.")
    total = sum(part.signed_kg for part in parts)
    low, high = bounds_kg(parts)
    if total <= 0 or high <= 0:
        raise given.refuse("parts", "takes away as much as there is. Check which rows are to be taken away.")
    centre = balance_point_m(parts)
    if centre is None and len(parts) == 1:
        # One part alone balances where its own shape says, seen from the middle of its box.
        row, shape = rows[0], SHAPES[rows[0].text("shape")]
        offset = _solid(row, shape, _dims(row, shape)).offset_m
        centre = turned(offset, row.text("along") or shape.lies_along)
    return Answer(
        verdict="caution",
        headline=_headline(say, total, low, high),
        big="weight",
        results={
            "weight": total, "weight_low": low, "weight_high": high,
            "centre_x": centre[0] if centre else None, "centre_y": centre[1] if centre else None,
            "centre_z": centre[2] if centre else None, "parts": [part.signed_kg for part in parts],
        },
        shown=_shown(say, parts, centre),
        steps=_steps(say, parts, total, low, high, centre),
        cautions=_cautions(say, parts, rows, high),
        figure=load_figure([_placed(part) for part in parts], centre, total, say),
        citations=tuple(
            dict.fromkeys(c for part in parts if part.material for c in density_ranges()[part.material].citations)
        ),
    )  # fmt: skip


def _placed(part: WeighedPart) -> PlacedPart:
    round_along = part.along.removeprefix("-") if part.round_outline else ""
    return PlacedPart(part.label, part.centre_m, part.box_m, part.minus, round_along)


def _headline(say: Say, total: float, low: float, high: float) -> str:
    first = f"It weighs about {say.weight(total)}."
    if high - low < 0.002 * total:
        return f"{first} Add what clings to it before you lift."
    return f"{first} Lift by the high figure, {say.weight(high, 'up')}; it is hardly under {say.weight(low, 'down')}."


def _shown(say: Say, parts: list[WeighedPart], centre: Axes | None) -> dict[str, str | tuple[str, ...]]:
    shown: dict[str, str | tuple[str, ...]] = {
        "parts": tuple(
            f"{part.label}: {'−' if part.minus else ''}{say.weight(part.plain_kg)}" for part in parts
        )
    }
    if centre is None:
        for axis in "xyz":
            shown[f"centre_{axis}"] = "say where each part stands to find it"
    return shown  # fmt: skip


def _steps(
    say: Say, parts: list[WeighedPart], total: float, low: float, high: float, centre: Axes | None
) -> tuple[Step, ...]:
    steps = [part.step for part in parts]
    if len(parts) > 1:
        sums = " ".join(("− " if part.minus else "+ ") + say.one(part.plain_kg, "weight") for part in parts)
        steps.append(Step("All together", "sum of the parts", sums.removeprefix("+ "), say.weight(total)))
    steps.append(
        Step(
            "How wrong it may be",
            "lowest and highest density, thinnest and thickest",
            f"{number_text((low / total - 1) * 100, 2)}% to +{number_text((high / total - 1) * 100, 2, 'up')}%",
            f"{say.weight(low, 'down')} to {say.weight(high, 'up')}",
        )
    )
    if centre is not None and len(parts) > 1:
        for axis, name in enumerate("xyz"):
            terms = " + ".join(
                f"{say.one(part.signed_kg, 'weight')} × {say.one(part.centre_m[axis], 'length')}"
                for part in parts
                if part.centre_m is not None
            )
            steps.append(
                Step(
                    f"Balance point, {name}",
                    "sum of weight × place / sum of weights",
                    f"({terms}) / {say.one(total, 'weight')}",
                    say.length(centre[axis]),
                )
            )
    return tuple(steps)


def _cautions(
    say: Say, parts: list[WeighedPart], rows: tuple[Given, ...], high: float
) -> tuple[Caution, ...]:
    shapes = {row.text("shape") for row in rows}
    materials = {part.material for part in parts}
    cautions = [
        Caution(
            f"Lift by the high figure, {say.weight(high, 'up')}. Where it matters, weigh it: a load cell on the first "
            "inch of the lift tells what no reckoning can.",
            "mandatory",
        ),
        Caution(
            "What could be wrong: plate thicker than its name, weld metal, paint and fairing, brackets nobody drew, "
            "fluids, water and mud inside, ice on top. Add each as a part of known weight.",
        ),
    ]
    if any(row.has("wall") for row in rows):
        cautions.append(
            Caution("A hollow part can hold water or oil. Drain it, or add what it can hold. Fluid that runs moves "
                    "the balance point as it tilts.")
        )  # fmt: skip
    if shapes & {"square-tube", "angle", "channel", "i-beam"}:
        cautions.append(
            Caution("Rolled sections are reckoned with sharp corners and even flanges. The weight by the foot from the "
                    "mill is better.", "note")
        )  # fmt: skip
    if any("wood" in m or "oak" in m or "pine" in m or "fir" in m or "plywood" in m for m in materials):
        cautions.append(
            Caution(
                "Timber that has lain wet or green can weigh half as much again as dry. Weigh a cut piece."
            )
        )
    if any(row.has("tolerance") and row.si("tolerance") == 0 for row in rows):
        cautions.append(
            Caution("A part without any allowance is taken as exact. Only a weighed part is.", "note")
        )
    return tuple(cautions)


_DIMENSIONS: tuple[tuple[str, str, str], ...] = (
    ("length", "Length", "The longest way."),
    ("width", "Width", "Across. On an angle: the leg that lies flat."),
    ("depth", "Depth", "Height of the section. Left empty on a tube or an angle: the same as the width."),
    (
        "height",
        "Height",
        "Straight up from its base. Left empty on a dished head: a quarter of the diameter.",
    ),
    ("thickness", "Thickness", "Measure it with calipers; do not trust the name."),
    ("diameter", "Diameter", "Over the outside. On a ring of round bar: the bar itself."),
    (
        "outside_diameter",
        "Outside diameter",
        "Over the outside. Pipe: 2 in pipe is 2-3/8 in over the outside.",
    ),
    ("inside_diameter", "Inside diameter", "The hole."),
    ("bottom_diameter", "Bottom diameter", "At the base."),
    ("top_diameter", "Top diameter", "At the other end."),
    ("mean_diameter", "Mean diameter", "From bar centre to bar centre, straight across the ring."),
    ("wall", "Wall", "Thickness of the wall. Left empty on a ball, drum or box: it is full."),
    ("side", "Side", "One side of the square."),
    ("across_flats", "Across flats", "What the spanner fits."),
    ("flange_width", "Flange width", "Across the top."),
    ("web_thickness", "Web thickness", "The upright part between the flanges."),
    ("flange_thickness", "Flange thickness", "At the middle of the flange's overhang."),
)


def _shapes_with(dim: str) -> tuple[str, ...]:
    return tuple(shape.name for shape in SHAPES.values() if dim in (*shape.needs, *shape.may_have))


def _dimension_inputs() -> tuple[Input, ...]:
    lengths = tuple(
        Input(name, label, "quantity", "length", above=0, at_most=4000, required=False, help=text,
              shown_when={"shape": _shapes_with(name)})
        for name, label, text in _DIMENSIONS
    )  # fmt: skip
    return (
        *lengths,
        Input("weight_per_length", "Weight by the foot", "quantity", "weight_per_length", above=0, at_most=10_000,
              required=False, shown_when={"shape": _shapes_with(_BY_LENGTH)},
              help="From the mill's name: W8×31 weighs 31 lb/ft. It stands in for the section's sizes."),
        Input("weight", "Weight of one", "quantity", "weight", above=0, at_most=2_000_000, required=False,
              shown_when={"shape": ("lump",)}, help="From a plate, a book or a scale."),
    )  # fmt: skip


_ALONG = (
    Choice("x", "to the right (x)"), Choice("-x", "to the left"), Choice("y", "to the back (y)"),
    Choice("-y", "to the front"), Choice("z", "up (z)"), Choice("-z", "down"),
)  # fmt: skip

_COLUMNS = (
    Input("label", "Name", "text", required=False, help="Your own word for it."),
    Input("shape", "Shape", "choice", choices=tuple(Choice(s.name, s.label) for s in SHAPES.values()),
          help="The nearest plain shape. Split a hard one into several."),
    Input("material", "Made of", "choice", choices=material_choices(), required=False,
          shown_when={"shape": tuple(name for name in SHAPES if name != "lump")}, help="From the density table."),
    Input("count", "How many", "count", at_least=1, at_most=10_000, default="1",
          help="Alike and in one place: their common middle counts."),
    *_dimension_inputs(),
    Input("at", "Where its middle stands", "point", "length", at_least=-4000, at_most=4000, required=False,
          help="From any corner you choose: right, back, up. The middle of the box that would just hold it."),
    Input("along", "Its length or axis points", "choice", choices=_ALONG, required=False,
          help="Left empty: bars lie to the right, round things and plates stand up."),
    Input("minus", "Take it away (a hole)", "flag", default="no", help="For holes and cut-outs."),
    Input("tolerance", "Allowance either way", "quantity", "fraction", at_least=0, at_most=50, default="2",
          help="For thickness, welds and small things. 2% is our own allowance for cut steel, not a standard's."),
)  # fmt: skip

WORKSHEET = Worksheet(
    name="load-weight",
    title="What does it weigh, and where does it balance?",
    summary="Weight with a low and a high figure, and the balance point, of a load put together from plain shapes.",
    inputs=(
        Input("parts", "Parts", "rows", columns=_COLUMNS, at_least=0, at_most=100, required=False,
              help="One row for each part. Holes are rows that are taken away."),
        Input("solid", "Or drop a drawn solid (STL)", "file", required=False,
              help=f"ASCII or binary STL of a closed solid, up to {LARGEST_BYTES // 1_000_000} MB. It stays on your device."),
        Input("solid_unit", "One unit of the drawing is", "choice", required=False,
              choices=tuple(Choice(u, w) for u, w in (("mm", "a millimetre"), ("cm", "a centimetre"), ("m", "a metre"),
                                                      ("in", "an inch"), ("ft", "a foot"))),
              help="The file does not say. Check the size shown in the working."),
        Input("solid_material", "The solid is made of", "choice", choices=material_choices(), required=False,
              help="From the density table."),
    ),
    results=(
        Result("weight", "Weight", "weight"),
        Result("weight_low", "Hardly under", "weight", rounding="down"),
        Result("weight_high", "Lift by", "weight", rounding="up"),
        Result("centre_x", "Balance point, to the right", "length"),
        Result("centre_y", "Balance point, to the back", "length"),
        Result("centre_z", "Balance point, up", "length"),
        Result("parts", "Weight of each part", "weight"),
    ),
    compute=compute,
    example={
        "parts": [
            {"label": "Cradle base plate", "shape": "plate", "material": "steel", "length": "86 in", "width": "38 5/8 in",
             "thickness": "1/4 in", "at": ["43 in", "19 5/16 in", "1/8 in"]},
            {"label": "Lightening hole", "shape": "disc", "material": "steel", "diameter": "18 in", "thickness": "1/4 in",
             "at": ["66 in", "19 5/16 in", "1/8 in"], "minus": "yes"},
            {"label": "Oak bolster", "shape": "box", "material": "oak-air-dry", "length": "4 ft", "width": "8 in",
             "height": "6 in", "at": ["26 in", "19 5/16 in", "3 1/4 in"], "tolerance": "5 %"},
        ],
    },
    example_story="The yard reckons an engine cradle before the lift: a steel base plate, its lightening hole, and an oak bolster.",
    citations=(Citation("baker-haynes", "ch. 7, centre of gravity as a weighed middle"),),
)  # fmt: skip
