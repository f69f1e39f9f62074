"""A bar or a leg that is pressed along its length: what a worksheet asks of it, and what it takes.

Question of the trade: does it bend out and fold before it is crushed? Tubes, pipes and sections of a book, of steel, turning
freely at both ends (K = 1), by AISC 360 E3 with H1 where it bends as well (calc.lifting.frame_strength). Tubes with walls so
thin that they buckle by themselves are given no strength, and no more are wooden poles: what wood carries follows from its
kind, its knots and its grain, which a grader judges, and nobody graded a pole.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.inputs import Bounds, ChoiceInput, Given, Input, QuantityInput
from calc.lifting.beams import SECTION_FORMS, SectionName, round_bar
from calc.lifting.frame_strength import Post, book_contradicts
from calc.lifting.overhead_beam import STEEL_KG_PER_M3, box_is_thin, section_area_m2, tube_is_thin
from calc.words.facts import Absent, absent

STEEL_MODULUS_PA = 200e9
"""Modulus of steel [Pa], 29,000 ksi in US tables (from memory of the AISC Manual)."""

SLENDER = 200.0
"""Length over least radius over which a pressed member is too slender to count on (AISC 360-10, E2 user note, from memory). A round
pole there is 50 times as long as thick, at which the American rule for wood ends as well (NDS 3.7.1.4, from memory)."""

WET_WOOD_KG_PER_M3 = 1100.0
"""Density of wood by which a pole's weight is counted [kg/m3]: green oak, which sinks in water (from memory; the heavy side)."""

WORDS = "shared/struts"
"""Scope of the words of these inputs."""


@dataclass(frozen=True)
class Strut:
    """A pressed member: its section as a post [effective length m], its steel's yield strength [Pa, nought where no_strength], why
    it is given no strength, its density [kg/m3].
    """

    post: Post
    yield_pa: float
    no_strength: Absent | None = None
    kg_per_m3: float = STEEL_KG_PER_M3

    @property
    def weight_kg(self) -> float:
        """Its own weight [kg]."""
        return self.post.area_m2 * self.post.effective_m * self.kg_per_m3

    @property
    def slenderness(self) -> float:
        """Length over least radius [-]."""
        return self.post.effective_m / math.sqrt(self.post.second_moment_m4 / self.post.area_m2)

    def buckles_n(self) -> float:
        """Thrust [N] at which it buckles, without a factor (E3)."""
        return self.post.buckles_n(self.yield_pa, STEEL_MODULUS_PA)

    def euler_n(self) -> float:
        """Thrust [N] at which a straight bar of any strength buckles: pi^2 E I / L^2 (Euler)."""
        return math.pi**2 * STEEL_MODULUS_PA * self.post.second_moment_m4 / self.post.effective_m**2

    def part_used(self, thrust_n: float, moment_nm: float, factor: float) -> float:
        """Part used by thrust and bending together [-] (H1)."""
        return self.post.part_used(thrust_n, moment_nm, self.yield_pa, STEEL_MODULUS_PA, factor)


def read_strut(given: Given, length_m: float) -> Strut:
    """The member as given, of this length [m], turning freely at both ends."""
    form = given.text("section")
    if form == "wood":
        pole, area = round_bar(given.si("width")), math.pi / 4 * given.si("width") ** 2
        post = Post(area, pole.second_moment_m4, pole.second_moment_m4 / pole.outer_fibre_m, length_m)
        return Strut(post, 0.0, absent("wooden-legs"), WET_WOOD_KG_PER_M3)
    yield_pa = given.si("yield_strength")
    if form == "book":
        area, radius, modulus = given.si("area"), given.si("radius"), given.si("modulus")
        if book_contradicts(area, radius, modulus):
            raise given.refuse("modulus", "book-contradicts")
        return Strut(Post(area, area * radius**2, modulus, length_m), yield_pa)
    width, wall = given.si("width"), given.si("wall")
    if wall > width / 2:
        raise given.refuse("wall", "wall-too-thick")
    name: SectionName = "box" if form == "square-tube" else "tube"
    sizes = (width, width, wall) if form == "square-tube" else (width, wall)
    area, second = section_area_m2(name, *sizes), SECTION_FORMS[name].of(*sizes).second_moment_m4
    ratio = STEEL_MODULUS_PA / yield_pa
    thin = box_is_thin(width, wall, ratio) if name == "box" else tube_is_thin(width, wall, ratio)
    why = absent("thin-wall") if thin else None
    return Strut(Post(area, second, second / (width / 2), length_m), yield_pa, why)


TUBES = ("square-tube", "pipe")


def _part(
    name: str, dimension: str, of: tuple[str, ...], unit: str = "", unit_si: str = "", at_most: float = 100
) -> QuantityInput:
    return QuantityInput(
        name,
        dimension=dimension,
        unit=unit,
        unit_si=unit_si,
        bounds=Bounds(above=0, at_most=at_most),
        required=False,
        shown_when={"section": of},
    )


def strut_inputs(wood: bool = False) -> tuple[Input, ...]:
    """What a worksheet asks of a pressed member, perhaps of wood; `read_strut` reads it."""
    return (
        ChoiceInput("section", choices=(*TUBES, "book", "wood") if wood else (*TUBES, "book")),
        _part("width", "length", (*TUBES, "wood") if wood else TUBES),
        _part("wall", "length", TUBES),
        _part("area", "area", ("book",), "in2", "cm2", 1_000),
        _part("radius", "length", ("book",)),
        _part("modulus", "volume", ("book",), "in3", "cm3", 100_000),
        QuantityInput(
            "yield_strength",
            dimension="pressure",
            unit="psi",
            unit_si="MPa",
            bounds=Bounds(at_least=20_000, at_most=65_000),
            required=not wood,
            shown_when={"section": (*TUBES, "book")} if wood else {},
        ),
    )


__all__ = ["SLENDER", "STEEL_MODULUS_PA", "TUBES", "WORDS", "Strut", "read_strut", "strut_inputs"]
