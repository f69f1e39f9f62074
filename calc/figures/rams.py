"""Scale drawing of a ram in section, with the hand pump that drives it."""

from __future__ import annotations

from dataclasses import dataclass

from calc.declaration import Figure
from calc.figures.drawing import Drawing
from calc.words.facts import Cell, Quantity, force, length
from calc.words.writer import Writer

_USUAL_ROD = 0.55
"""Rod over bore where the rod is not known, for the drawing alone."""
_USUAL_PUMP = 0.22
"""Bore of the pump over that of the ram where it is not known, for the drawing alone."""


@dataclass(frozen=True)
class Lever:
    """A pump's lever: its ratio [-], and the push on it [N]."""

    ratio: float
    push_n: float


@dataclass(frozen=True)
class RamShape:
    """A ram as drawn: bore and rod [m], whether the oil is on the rod's side, what is written on it, and the bore of the pump
    [m] with its lever. A rod or a bore of nought is not known, and drawn of usual size.
    """

    bore_m: float
    rod_m: float
    pulls: bool
    pressure_pa: float
    force_n: float
    pump_bore_m: float
    lever: Lever | None

    @property
    def half_m(self) -> float:
        """Half the bore."""
        return self.bore_m / 2

    @property
    def half_rod_m(self) -> float:
        """Half the rod."""
        return (self.rod_m or _USUAL_ROD * self.bore_m) / 2

    @property
    def half_pump_m(self) -> float:
        """Half the bore of the pump."""
        return (self.pump_bore_m or _USUAL_PUMP * self.bore_m) / 2

    @property
    def wall_m(self) -> float:
        """How thick the barrel is drawn."""
        return 0.16 * self.bore_m

    @property
    def height_m(self) -> float:
        """How tall the barrel is drawn."""
        return 2.2 * self.bore_m

    @property
    def piston_m(self) -> float:
        """How high the piston is drawn over the bottom."""
        return 0.9 * self.bore_m

    @property
    def pump_x_m(self) -> float:
        """How far to the right the pump is drawn."""
        return self.half_m + self.wall_m + 1.3 * self.bore_m

    @property
    def pipe_m(self) -> float:
        """How high the pipe enters the barrel."""
        return self.height_m - 0.35 * self.bore_m if self.pulls else 0.25 * self.bore_m


def ram_figure(shape: RamShape, caption: str, writer: Writer) -> Figure:
    """Section through a ram, bore and rod to scale, with the pump and its lever beside it where they are known."""
    bore = shape.bore_m
    drawing = Drawing(360, 320, 46)
    drawing.fit(
        [
            (-shape.half_m - shape.wall_m, -0.6 * bore),
            (shape.pump_x_m + 1.6 * bore, shape.height_m + 0.8 * bore),
        ]
    )
    _barrel_and_piston(drawing, shape)
    _oil(drawing, shape)
    _words(drawing, shape, writer)
    _pump(drawing, shape)
    if shape.lever:
        _lever(drawing, shape, shape.lever, writer)
    return Figure(drawing.svg(caption), caption)


def _barrel_and_piston(drawing: Drawing, shape: RamShape) -> None:
    half, rod, wall, height = shape.half_m, shape.half_rod_m, shape.wall_m, shape.height_m
    outer = half + wall
    drawing.line("outline", (-outer, height), (-outer, -wall), (outer, -wall), (outer, height))
    drawing.line("outline", (-half, height), (-half, 0.0), (half, 0.0), (half, height))
    low, high, top = shape.piston_m, shape.piston_m + 0.3 * shape.bore_m, height + 0.35 * shape.bore_m
    drawing.line("outline", (-half, low), (half, low), (half, high), (-half, high), (-half, low))
    for side in (-rod, rod):
        drawing.line("outline", (side, high), (side, top))
    drawing.line("outline", (-rod, top), (rod, top))
    drawing.line("centre", (0.0, -0.3 * shape.bore_m), (0.0, height + 0.6 * shape.bore_m))


def _oil(drawing: Drawing, shape: RamShape) -> None:
    """The push of the oil: on the ring under a gland, or on the full bore."""
    half, rod, bore, height = shape.half_m, shape.half_rod_m, shape.bore_m, shape.height_m
    if not shape.pulls:
        for part in (-0.6, 0.0, 0.6):
            drawing.arrow((part * half, 0.2 * bore), (part * half, shape.piston_m - 0.08 * bore))
        return
    for side in (-1.0, 1.0):
        drawing.line("outline", (side * half, height), (side * rod, height))
        middle = side * (half + rod) / 2
        drawing.arrow((middle, height - 0.15 * bore), (middle, shape.piston_m + 0.4 * bore))


def _words(drawing: Drawing, shape: RamShape, writer: Writer) -> None:
    """Bore, force and the pipe with its pressure."""
    half, wall, pipe = shape.half_m, shape.wall_m, shape.pipe_m
    drawing.dimension((half, -wall), (-half, -wall), writer.own(length(shape.bore_m), 3), 16)
    top = (0.0, shape.height_m + 0.35 * shape.bore_m)
    drawing.text(top, writer.plain(force(shape.force_n)), "middle", (0, -8), "strong")
    drawing.line("thin", (half, pipe), (shape.pump_x_m - shape.half_pump_m, pipe))
    middle = ((half + shape.pump_x_m) / 2 + wall / 2, pipe)
    drawing.text(middle, writer.own(Quantity(shape.pressure_pa, "pressure"), 3), "middle", (0, -6))


def _pump(drawing: Drawing, shape: RamShape) -> None:
    """A hand pump: barrel and piston."""
    x, half, size = shape.pump_x_m, shape.half_pump_m, shape.bore_m
    low, high = shape.pipe_m - 0.3 * size, shape.pipe_m + 0.9 * size
    drawing.line("outline", (x - half, high), (x - half, low), (x + half, low), (x + half, high))
    drawing.line("outline", (x, low + 0.45 * size), (x, high + 0.25 * size))
    drawing.line("outline", (x - half, low + 0.45 * size), (x + half, low + 0.45 * size))


def _lever(drawing: Drawing, shape: RamShape, lever: Lever, writer: Writer) -> None:
    """The lever with its arms in true ratio, and the push on it."""
    size = shape.bore_m
    hand = 1.7 * size
    x, y = shape.pump_x_m, shape.pipe_m + 0.9 * size + 0.25 * size
    pivot = (x - hand / lever.ratio, y)
    end = (pivot[0] + hand, y)
    drawing.line("outline", pivot, end)
    drawing.circle("pick", pivot, 4.0, on_sheet=True)
    drawing.dimension(pivot, (x, y), "1", 12)
    drawing.dimension(pivot, end, writer.plain(Cell(f"{lever.ratio:.3g}")), 34)
    drawing.arrow((end[0], y + 0.02 * size), (end[0], y - 0.6 * size))
    drawing.text((end[0], y - 0.6 * size), writer.own(force(lever.push_n), 3), "middle", (0, 14))


__all__ = ["Lever", "RamShape", "ram_figure"]
