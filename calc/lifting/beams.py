"""Bending and sag of a straight beam under one load and its own weight.

Question of the trade: how hard does the beam bend, how far does it sag? Closed forms for a point load anywhere and an
even load, for three ways of holding the ends (elastic line of Euler and Bernoulli; any strength-of-materials text,
Gere's among them; the built-in forms from memory and held by a finite-element library). Downward is positive.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

Ends = Literal["simple", "fixed", "cantilever"]
"""How a beam is held: resting on two supports, built in at both ends, or built in at the left alone."""
ENDS: tuple[Ends, ...] = ("simple", "fixed", "cantilever")

SectionName = Literal["i-beam", "rectangle", "box", "tube", "round-bar", "known"]


@dataclass(frozen=True)
class Section:
    """A section: second moment of area [m4], and from its middle to its outer fibre [m]."""

    second_moment_m4: float
    outer_fibre_m: float


def rectangle(width_m: float, depth_m: float) -> Section:
    """Width x depth [m, over 0], bent about its level axis: b h^3 / 12.

    >>> rectangle(0.06, 0.1)
    Section(second_moment_m4=5.000000000000001e-06, outer_fibre_m=0.05)
    """
    return Section(width_m * depth_m**3 / 12, depth_m / 2)


def round_bar(diameter_m: float) -> Section:
    """A full round of a diameter [m, over 0]: pi d^4 / 64.

    >>> round(round_bar(1.0).second_moment_m4, 5)
    0.04909
    """
    return Section(math.pi / 64 * diameter_m**4, diameter_m / 2)


def round_tube(diameter_m: float, wall_m: float) -> Section:
    """A pipe of an outside diameter and a wall [m]: the full round less the hollow. Range: wall <= diameter / 2."""
    inside = diameter_m - 2 * wall_m
    return Section(math.pi / 64 * (diameter_m**4 - inside**4), diameter_m / 2)


def box_tube(width_m: float, depth_m: float, wall_m: float) -> Section:
    """A rectangular tube with sharp corners [m]: the full rectangle less the hollow. Range: wall <= half the smaller side."""
    inside = (width_m - 2 * wall_m) * (depth_m - 2 * wall_m) ** 3
    return Section((width_m * depth_m**3 - inside) / 12, depth_m / 2)


def i_section(depth_m: float, flange_width_m: float, web_m: float, flange_m: float) -> Section:
    """An I without its fillets [m], bent the strong way. Range: web <= flange width, flange <= depth / 2.

    >>> i_section(0.2, 0.1, 0.1, 0.01) == rectangle(0.1, 0.2)
    True
    """
    hollow = (flange_width_m - web_m) * (depth_m - 2 * flange_m) ** 3
    return Section((flange_width_m * depth_m**3 - hollow) / 12, depth_m / 2)


def book_section(second_moment_m4: float, outer_fibre_m: float) -> Section:
    """A section of a book: second moment [m4], and from its middle to its farthest fibre [m], which in a T is not half."""
    return Section(second_moment_m4, outer_fibre_m)


def shear_area_m2(name: SectionName, *sizes: float) -> float:
    """Area over which a level shear force must be spread evenly to give the greatest shear stress in the section [m2]:
    I b / Q of its middle (Jourawski; any strength-of-materials text). A tube takes that of a thin ring, the least of all.
    Sizes [m] in the order of SECTION_FORMS; not for a section of a book.

    >>> round(shear_area_m2("rectangle", 0.06, 0.1), 6), round(shear_area_m2("round-bar", 2.0), 4)
    (0.004, 2.3562)
    """
    section = SECTION_FORMS[name].of(*sizes)
    if name == "rectangle":
        return 2 / 3 * sizes[0] * sizes[1]
    if name == "round-bar":
        return 3 / 4 * math.pi / 4 * sizes[0] ** 2
    if name == "tube":
        diameter, wall = sizes
        return math.pi / 8 * (diameter**2 - (diameter - 2 * wall) ** 2)
    if name == "box":
        width, depth, wall = sizes
        flange, webs = wall, 2 * wall
    else:
        depth, width, webs, flange = sizes
    upright = depth / 2 - flange
    first_moment_m3 = width * flange * (depth - flange) / 2 + webs * upright**2 / 2
    return section.second_moment_m4 * webs / first_moment_m3


@dataclass(frozen=True)
class SectionForm:
    """A kind of section: the sizes it needs, and the section that they give in that order."""

    needs: tuple[str, ...]
    of: Callable[..., Section]


SECTION_FORMS: dict[SectionName, SectionForm] = {
    "i-beam": SectionForm(("depth", "flange_width", "web_thickness", "flange_thickness"), i_section),
    "rectangle": SectionForm(("width", "depth"), rectangle),
    "box": SectionForm(("width", "depth", "wall"), box_tube),
    "tube": SectionForm(("diameter", "wall"), round_tube),
    "round-bar": SectionForm(("diameter",), round_bar),
    "known": SectionForm(("second_moment", "outer_fibre"), book_section),
}
"""Every kind of section by its key."""


@dataclass(frozen=True)
class Beam:
    """A beam, SI units.

    load_n -- at position_m from the left end; even_n_per_m -- along all of it; stiffness_nm2 -- E x I
    """

    span_m: float
    ends: Ends
    load_n: float
    position_m: float
    even_n_per_m: float
    stiffness_nm2: float

    def moment_nm(self, x: float) -> float:
        """Bending moment [N m] at x [m from the left, 0 to the span], sagging positive (any strength-of-materials text)."""
        length, a, w = self.span_m, self.position_m, self.even_n_per_m
        b = length - a
        over = max(0.0, x - a)
        if self.ends == "simple":
            return self.load_n * (b / length * x - over) + w * x * (length - x) / 2
        if self.ends == "fixed":
            left = b**2 * (3 * a + b) / length**3
            point = self.load_n * (left * x - a * b**2 / length**2 - over)
            return point + w * (6 * length * x - length**2 - 6 * x**2) / 12
        return -self.load_n * max(0.0, a - x) - w * (length - x) ** 2 / 2

    def sag_m(self, x: float) -> float:
        """Sag [m] at x [m from the left, 0 to the span] by the elastic line, which holds for small slopes."""
        length, w = self.span_m, self.even_n_per_m
        point = self.load_n * _point_sag(self.ends, length, self.position_m, x)
        if self.ends == "simple":
            even = w * x * (length**3 - 2 * length * x**2 + x**3) / 24
        elif self.ends == "fixed":
            even = w * x**2 * (length - x) ** 2 / 24
        else:
            even = w * x**2 * (6 * length**2 - 4 * length * x + x**2) / 24
        return (point + even) / self.stiffness_nm2

    def reactions_n(self) -> tuple[float, float]:
        """What the left and the right end push up with [N] (any strength-of-materials text).

        >>> Beam(4.0, "simple", 900.0, 1.0, 100.0, 3e5).reactions_n()
        (875.0, 425.0)
        """
        length, a, own_n = self.span_m, self.position_m, self.even_n_per_m * self.span_m
        b = length - a
        left = {
            "simple": b / length,
            "fixed": b**2 * (3 * a + b) / length**3,
            "cantilever": 1.0,
        }[self.ends]
        if self.ends == "cantilever":
            return self.load_n + own_n, 0.0
        return self.load_n * left + own_n / 2, self.load_n * (1 - left) + own_n / 2

    def greatest_moment(self) -> tuple[float, float]:
        """Where the beam bends hardest [m], and the moment there without its sign [N m].

        >>> at, moment = Beam(4.0, "simple", 900.0, 2.0, 0.0, 3e5).greatest_moment()
        >>> round(at, 6), round(moment, 6)
        (2.0, 900.0)
        """
        return _greatest(lambda x: abs(self.moment_nm(x)), self.span_m, self.position_m)

    def greatest_sag(self) -> tuple[float, float]:
        """Where the beam sags most [m], and how far [m]."""
        return _greatest(self.sag_m, self.span_m, self.position_m)


def _point_sag(ends: Ends, length: float, a: float, x: float) -> float:
    """Sag at x under a load of one newton at a, times E I [m3]."""
    if ends == "cantilever":
        near, far = min(x, a), max(x, a)
        return near**2 * (3 * far - near) / 6
    if x > a:
        x, a = length - x, length - a
    b = length - a
    if ends == "simple":
        return b * x * (length**2 - b**2 - x**2) / (6 * length)
    return b**2 * x**2 * (3 * a * length - 3 * a * x - b * x) / (6 * length**3)


def _greatest(value: Callable[[float], float], length: float, kink: float) -> tuple[float, float]:
    """The greatest of a function that is smooth but for one kink: a grid, then golden sections about its best point."""
    steps = 240
    grid = sorted({length * i / steps for i in range(steps + 1)} | {kink})
    best = max(range(len(grid)), key=lambda i: value(grid[i]))
    low, high = grid[max(best - 1, 0)], grid[min(best + 1, len(grid) - 1)]
    golden = (math.sqrt(5) - 1) / 2
    for _ in range(60):
        one, other = high - golden * (high - low), low + golden * (high - low)
        if value(one) < value(other):
            low = one
        else:
            high = other
    found = max((grid[best], (low + high) / 2), key=value)
    return found, value(found)
