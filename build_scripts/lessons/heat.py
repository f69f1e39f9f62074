"""Drawings that explain heat and welding, computed from the same field as the worksheet weld-heat."""

from __future__ import annotations

from collections.abc import Callable

from calc.answering import worksheet
from calc.declaration import Figure
from calc.figures.drawing import Drawing, LineKind
from calc.figures.heat_map import HATCHES, HeatBand, fill_band
from calc.figures.heat_rules import HeatRules, degree_axes, heat_rules_figure
from calc.heating.chain_heat import asme_bands, en_bands
from calc.inputs import read_inputs
from calc.tables import number, table
from calc.telling import reading
from calc.words.facts import Quantity, degrees, length
from calc.words.writer import Writer


def example_bands() -> tuple[HeatBand, ...]:
    """The bands of the bead in the worksheet's example, from the melt out, without words."""
    sheet = worksheet("weld-heat")
    found = sheet.find(read_inputs(sheet.inputs, sheet.example, reading(sheet, Writer(scopes=sheet.scopes))))
    return tuple(HeatBand(band.name, "", band.line.points) for band in found.bands)


def bead_anatomy(writer: Writer) -> Figure:
    """The bead of the worksheet's example: its bands, the notch at each toe, the pull of shrinkage, where a crack starts."""
    bands = example_bands()[:3]
    melted, hard, soft = bands
    toe, reach = melted.reach_m, soft.reach_m
    deep = soft.points[-1][1]
    drawing = Drawing(420, 300, 16)
    drawing.parts.append(HATCHES)
    drawing.fit([(-1.75 * reach, 0.75 * reach), (1.75 * reach, -1.5 * deep)])
    for band in reversed(bands):
        fill_band(drawing, band)
    drawing.line("outline", (-1.7 * reach, 0.0), (-toe, 0.0))
    drawing.line("outline", (toe, 0.0), (1.7 * reach, 0.0))
    cap = [(toe * step / 8, 0.28 * toe * (1 - (step / 8) ** 2)) for step in range(-8, 9)]
    drawing.area("steel", *cap)
    crack = [
        (toe * 1.02, 0.0),
        (toe * 1.12, -0.18 * deep),
        (toe * 1.08, -0.30 * deep),
        (toe * 1.18, -0.46 * deep),
    ]
    drawing.line("leg-careful", *crack)
    drawing.text((toe * 1.02, 0.0), writer.text("bead-anatomy.notch"), "start", (8, -24), "strong")
    drawing.text((toe * 1.02, 0.0), writer.text("bead-anatomy.starts"), "start", (8, -7), "strong")
    for side in (-1.0, 1.0):
        drawing.arrow((side * 1.7 * reach, -0.32 * deep), (side * 1.12 * reach, -0.32 * deep))
    drawing.text(
        (-1.7 * reach, -0.32 * deep), writer.text("bead-anatomy.shrinkage"), "start", (0, -10), "small"
    )
    drawing.text((-1.7 * reach, -0.32 * deep), writer.text("bead-anatomy.pulls"), "start", (0, 18), "small")
    for row, band in enumerate(bands):
        bottom = band.points[-1][1]
        height = -deep * (1.12 + 0.16 * row)
        aside = reach * (0.75 - 0.18 * row)
        drawing.line("dimension", (0.0, -0.9 * bottom), (aside, height))
        drawing.text((aside, height), writer.text(f"bead-anatomy.{band.name}"), "start", (4, 4), "small")
    caption = writer.text("bead-anatomy", melted=length(toe), hard=length(hard.reach_m), soft=length(reach))
    return Figure(drawing.svg(caption), caption)


def steel_while_hot(writer: Writer) -> Figure:
    """Yield and stiffness of structural steel while it is hot (EN 1993-1-2, table 3.1), from the table."""
    hottest = 700.0
    drawing, at = degree_axes(hottest, writer)
    ends: list[Quantity] = []
    kinds: tuple[tuple[str, LineKind, str], ...] = (
        ("yield_factor", "curve", "yield"),
        ("modulus_factor", "curve-second", "stiffness"),
    )
    for quantity, kind, part in kinds:
        rows = table("steel-hot-strength").where(quantity=quantity)
        pairs = [(number({**row, "value": row["temperature_degC"]}), number(row)) for row in rows]
        line = [at(degc, share) for degc, share in pairs if degc <= hottest]
        drawing.line(kind, *line)
        middle = line[len(line) // 2]
        drawing.text(
            middle,
            writer.text(f"steel-while-hot.{part}"),
            "start" if quantity == "yield_factor" else "end",
            (8, -8) if quantity == "yield_factor" else (-8, 16),
            "strong",
        )
        left = pairs[[degc for degc, _ in pairs].index(600.0)][1]
        ends.append(Quantity(left, "fraction", places=0))
    caption = writer.text("steel-while-hot", at=degrees(600.0), yields=ends[0], stiff=ends[1])
    return Figure(drawing.svg(caption), caption)


def chain_rules_in_heat(writer: Writer) -> Figure:
    """Share of a grade 80 chain's rating left while hot: ASME B30.9 in steps, EN 818-6 beside it."""
    return heat_rules_figure(HeatRules(asme_bands("80"), en_bands("80")), writer.of("shared/chain-heat"))


HEAT_LESSONS: dict[str, Callable[[Writer], Figure]] = {
    "bead-anatomy": bead_anatomy,
    "steel-while-hot": steel_while_hot,
    "chain-rules-in-heat": chain_rules_in_heat,
}
"""Drawings of the pages on heat, by name."""

__all__ = ["HEAT_LESSONS", "bead_anatomy", "chain_rules_in_heat", "steel_while_hot"]
