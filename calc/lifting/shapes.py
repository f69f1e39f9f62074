"""Volume and balance point of the shapes a shop is made of.

Question of the trade: how much stuff is in a plate, a tube, a dished head, and where is its middle? Every formula is
plane or solid geometry (prism, cone, sphere, ellipsoid, and the two theorems of Pappus for the torus); the tests hold
each against the same solid cut into triangles by a mesh library.

A shape stands in its own axes: `along` its length or axis, `across` its width, `upward` its depth. Its reference
centre is the middle of the smallest box that holds it; `offset` says how far its balance point lies from there.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass

Dims = Mapping[str, float]
Axes = tuple[float, float, float]


class ShapeError(ValueError):
    """A dimension does not fit the shape: `dim` names it, the message `refused-CODE` says what it must be."""

    def __init__(self, dim: str, code: str) -> None:
        self.dim = dim
        self.code = code
        super().__init__(f"{dim}: {code}")


@dataclass(frozen=True)
class Solid:
    """What a shape holds: volume [m3], size of its box [m] and balance point from the middle of the box [m].

    Both triples go along, across, upward.
    """

    volume_m3: float
    box_m: Axes
    offset_m: Axes = (0.0, 0.0, 0.0)


@dataclass(frozen=True)
class Shape:
    """A shape: its key, the dimensions it needs and those it may have, and which way it lies by habit.

    outline -- what it looks like seen along its axis (`round` or `square`), for the drawing
    """

    name: str
    needs: tuple[str, ...]
    may_have: tuple[str, ...]
    lies_along: str
    solid: Callable[[Dims], Solid]
    outline: str = "square"


def _less(dims: Dims, dim: str, limit_m: float, code: str) -> None:
    """Refuse a dimension that is not under a limit [m]."""
    if dims[dim] >= limit_m:
        raise ShapeError(dim, f"not-under-{code}")


def _at_most(dims: Dims, dim: str, limit_m: float, code: str) -> None:
    """Refuse a dimension that is over a limit [m]."""
    if dims[dim] > limit_m:
        raise ShapeError(dim, f"over-{code}")


def _round(diameter_m: float, length_m: float) -> Solid:
    return Solid(math.pi / 4 * diameter_m**2 * length_m, (length_m, diameter_m, diameter_m))


def plate(dims: Dims) -> Solid:
    """Length x width x thickness [m]; the axis goes through the thickness.

    >>> plate({"length": 2.0, "width": 1.0, "thickness": 0.5})
    Solid(volume_m3=1.0, box_m=(0.5, 2.0, 1.0), offset_m=(0.0, 0.0, 0.0))
    """
    box = (dims["thickness"], dims["length"], dims["width"])
    return Solid(math.prod(box), box)


def disc(dims: Dims) -> Solid:
    """A round plate."""
    return _round(dims["diameter"], dims["thickness"])


def ring(dims: Dims) -> Solid:
    """A flat washer: a disc with a round hole in its middle."""
    _less(dims, "inside_diameter", dims["outside_diameter"], "outside-diameter")
    outer, inner = dims["outside_diameter"], dims["inside_diameter"]
    box = (dims["thickness"], outer, outer)
    return Solid(math.pi / 4 * (outer - inner) * (outer + inner) * dims["thickness"], box)


def round_bar(dims: Dims) -> Solid:
    """A round bar."""
    return _round(dims["diameter"], dims["length"])


def flat_bar(dims: Dims) -> Solid:
    """Width x thickness x length; the axis goes along the length."""
    box = (dims["length"], dims["width"], dims["thickness"])
    return Solid(math.prod(box), box)


def square_bar(dims: Dims) -> Solid:
    """Side x side x length."""
    box = (dims["length"], dims["side"], dims["side"])
    return Solid(math.prod(box), box)


def hex_bar(dims: Dims) -> Solid:
    """A regular hexagon of area flats^2 x sqrt(3) / 2, times its length."""
    flats = dims["across_flats"]
    corners = flats * 2 / math.sqrt(3)
    return Solid(math.sqrt(3) / 2 * flats**2 * dims["length"], (dims["length"], corners, flats))


def tube(dims: Dims) -> Solid:
    """Pipe or round tube: outside diameter and wall."""
    outer, wall = dims["outside_diameter"], dims["wall"]
    _at_most(dims, "wall", outer / 2, "half-outside-diameter")
    return Solid(math.pi * (outer - wall) * wall * dims["length"], (dims["length"], outer, outer))


def square_tube(dims: Dims) -> Solid:
    """Square or rectangular tube with sharp corners: a real one has round corners and weighs a little less."""
    width, wall = dims["width"], dims["wall"]
    depth = dims.get("depth", width)
    _at_most(dims, "wall", min(width, depth) / 2, "half-smaller-side")
    area = width * depth - (width - 2 * wall) * (depth - 2 * wall)
    return Solid(area * dims["length"], (dims["length"], width, depth))


def angle(dims: Dims) -> Solid:
    """Angle with sharp corners, its heel at the low side of width and depth."""
    width, thick = dims["width"], dims["thickness"]
    depth = dims.get("depth", width)
    _less(dims, "thickness", min(width, depth), "both-legs")
    flat, upright = width * thick, (depth - thick) * thick
    area = flat + upright
    across = (flat * width / 2 + upright * thick / 2) / area - width / 2
    upward = (flat * thick / 2 + upright * (thick + depth) / 2) / area - depth / 2
    return Solid(area * dims["length"], (dims["length"], width, depth), (0.0, across, upward))


def _web_height(dims: Dims) -> float:
    height = dims["depth"] - 2 * dims["flange_thickness"]
    if height <= 0:
        raise ShapeError("flange_thickness", "not-under-half-depth")
    _less(dims, "web_thickness", dims["flange_width"], "flange-width")
    return height


def channel(dims: Dims) -> Solid:
    """Channel with flat, even flanges and sharp corners, its web at the low side of the flange width."""
    height = _web_height(dims)
    flanges = 2 * dims["flange_width"] * dims["flange_thickness"]
    web = height * dims["web_thickness"]
    area = flanges + web
    middle = (flanges * dims["flange_width"] / 2 + web * dims["web_thickness"] / 2) / area
    box = (dims["length"], dims["flange_width"], dims["depth"])
    return Solid(area * dims["length"], box, (0.0, middle - dims["flange_width"] / 2, 0.0))


def i_beam(dims: Dims) -> Solid:
    """I-beam with flat, even flanges and sharp corners."""
    height = _web_height(dims)
    area = 2 * dims["flange_width"] * dims["flange_thickness"] + height * dims["web_thickness"]
    return Solid(area * dims["length"], (dims["length"], dims["flange_width"], dims["depth"]))


def cylinder(dims: Dims) -> Solid:
    """A full cylinder, or with `wall` a closed drum with that wall all round, both ends too."""
    outer, length = dims["diameter"], dims["length"]
    full = _round(outer, length)
    if "wall" not in dims:
        return full
    wall = dims["wall"]
    _less(dims, "wall", min(outer, length) / 2, "half-diameter-and-length")
    return Solid(full.volume_m3 - _round(outer - 2 * wall, length - 2 * wall).volume_m3, full.box_m)


def cone(dims: Dims) -> Solid:
    """A full cone [m], point at the far end of its axis; it balances a quarter of the height over its base.

    >>> cone({"diameter": 1.0, "height": 0.8}).offset_m
    (-0.2, 0.0, 0.0)
    """
    wide, height = dims["diameter"], dims["height"]
    return Solid(math.pi / 12 * wide**2 * height, (height, wide, wide), (-height / 4, 0.0, 0.0))


def frustum(dims: Dims) -> Solid:
    """A cone with its point cut off: bottom and top diameter and height."""
    bottom, top, height = dims["bottom_diameter"], dims["top_diameter"], dims["height"]
    spread = bottom**2 + bottom * top + top**2
    over_base = height / 4 * (bottom**2 + 2 * bottom * top + 3 * top**2) / spread
    wide = max(bottom, top)
    return Solid(math.pi / 12 * height * spread, (height, wide, wide), (over_base - height / 2, 0.0, 0.0))


def sphere(dims: Dims) -> Solid:
    """A ball, full or with `wall` hollow."""
    outer = dims["diameter"]
    box = (outer, outer, outer)
    if "wall" not in dims:
        return Solid(math.pi / 6 * outer**3, box)
    _less(dims, "wall", outer / 2, "half-diameter")
    return Solid(math.pi / 6 * (outer**3 - (outer - 2 * dims["wall"]) ** 3), box)


def _half_ellipsoids(radius_m: float, height_m: float, wall_m: float | None) -> Solid:
    """Half an ellipsoid on its flat side, less the half ellipsoid inside its wall."""
    outer = 2 * math.pi / 3 * radius_m**2 * height_m
    moment = outer * 3 / 8 * height_m
    if wall_m is not None:
        inner_height = height_m - wall_m
        inner = 2 * math.pi / 3 * (radius_m - wall_m) ** 2 * inner_height
        moment -= inner * 3 / 8 * inner_height
        outer -= inner
    box = (height_m, 2 * radius_m, 2 * radius_m)
    return Solid(outer, box, (moment / outer - height_m / 2, 0.0, 0.0))


def hemisphere(dims: Dims) -> Solid:
    """Half a ball, full or with `wall` a bowl, its flat side at the near end of the axis."""
    if "wall" in dims:
        _less(dims, "wall", dims["diameter"] / 2, "half-diameter")
    return _half_ellipsoids(dims["diameter"] / 2, dims["diameter"] / 2, dims.get("wall"))


def dished_head(dims: Dims) -> Solid:
    """The metal of a tank end: an ellipsoidal shell, its rim at the near end of the axis, no straight flange.

    Without `height` (outside, rim to crown) it is the 2:1 head: a quarter of the outside diameter.
    """
    outer = dims["outside_diameter"]
    height = dims.get("height", outer / 4)
    _less(dims, "wall", min(outer / 2, height), "half-outside-diameter-and-height")
    return _half_ellipsoids(outer / 2, height, dims["wall"])


def box(dims: Dims) -> Solid:
    """Length x width x height; with `wall` a closed hollow box. The axis goes along the length."""
    size = (dims["length"], dims["width"], dims["height"])
    if "wall" not in dims:
        return Solid(math.prod(size), size)
    wall = dims["wall"]
    _less(dims, "wall", min(size) / 2, "half-smallest-side")
    return Solid(math.prod(size) - math.prod(side - 2 * wall for side in size), size)


def torus(dims: Dims) -> Solid:
    """A ring of round bar: bar diameter, and mean diameter from bar centre to bar centre (Pappus)."""
    bar, mean = dims["diameter"], dims["mean_diameter"]
    _at_most(dims, "diameter", mean, "mean-diameter")
    return Solid(math.pi**2 / 4 * bar**2 * mean, (bar, mean + bar, mean + bar))


def _point(_dims: Dims) -> Solid:
    return Solid(0.0, (0.0, 0.0, 0.0))


SECTION_DIMS = ("depth", "flange_width", "web_thickness", "flange_thickness")

SHAPES: dict[str, Shape] = {
    shape.name: shape
    for shape in (
        Shape("plate", ("length", "width", "thickness"), (), "z", plate),
        Shape("disc", ("diameter", "thickness"), (), "z", disc, "round"),
        Shape("ring", ("outside_diameter", "inside_diameter", "thickness"), (), "z", ring, "round"),
        Shape("round-bar", ("diameter", "length"), (), "x", round_bar, "round"),
        Shape("flat-bar", ("width", "thickness", "length"), (), "x", flat_bar),
        Shape("square-bar", ("side", "length"), (), "x", square_bar),
        Shape("hex-bar", ("across_flats", "length"), (), "x", hex_bar),
        Shape("tube", ("outside_diameter", "wall", "length"), (), "x", tube, "round"),
        Shape("square-tube", ("width", "depth", "wall", "length"), (), "x", square_tube),
        Shape("angle", ("width", "depth", "thickness", "length"), ("weight_per_length",), "x", angle),
        Shape("channel", (*SECTION_DIMS, "length"), ("weight_per_length",), "x", channel),
        Shape("i-beam", (*SECTION_DIMS, "length"), ("weight_per_length",), "x", i_beam),
        Shape("cylinder", ("diameter", "length"), ("wall",), "z", cylinder, "round"),
        Shape("cone", ("diameter", "height"), (), "z", cone, "round"),
        Shape("frustum", ("bottom_diameter", "top_diameter", "height"), (), "z", frustum, "round"),
        Shape("sphere", ("diameter",), ("wall",), "z", sphere, "round"),
        Shape("hemisphere", ("diameter",), ("wall",), "z", hemisphere, "round"),
        Shape("box", ("length", "width", "height"), ("wall",), "x", box),
        Shape("torus", ("mean_diameter", "diameter"), (), "z", torus, "round"),
        Shape("dished-head", ("outside_diameter", "wall", "height"), (), "z", dished_head, "round"),
        Shape("lump", ("weight",), (), "z", _point, "round"),
    )
}
"""Every shape by its key."""

SHARP_CORNERED = frozenset({"square-tube", "angle", "channel", "i-beam"})
"""Rolled sections that are reckoned with sharp corners and even flanges."""


def turned(triple: Axes, along: str) -> Axes:
    """Carry (along, across, upward) of a shape to x, y, z when its axis points along `x`, `-x`, `y`, ... `-z`.

    Across and upward take the two other axes in the order x, y, z. Only the axis turns round with a minus.

    >>> turned((1.0, 2.0, 3.0), "-y")
    (2.0, -1.0, 3.0)
    """
    sign = -1.0 if along.startswith("-") else 1.0
    a, u, v = triple
    if along.endswith("x"):
        return sign * a, u, v
    if along.endswith("y"):
        return u, sign * a, v
    return u, v, sign * a


def turned_box(box_m: Axes, along: str) -> Axes:
    """The box of a shape in x, y, z: as `turned`, without a sign."""
    return turned(box_m, along.removeprefix("-"))
