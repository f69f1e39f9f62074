"""beam-lift against printed answers; the source stands beside each."""

from __future__ import annotations

import math

import pytest

from calc.lifting.beams import Beam, i_section, round_bar

INCH, POUND, PSI = 0.0254, 4.4482216152605, 6894.757293168


@pytest.mark.parametrize(("part", "second_moment", "printed"), [("sin", 8.13, 0.246), ("cos", 315.0, 0.073)])
def test_cantilever_with_a_leaning_load(part: str, second_moment: float, printed: float) -> None:
    # Popov, Engineering Mechanics of Solids: 2,000 lb leaning 5 degrees on a 100 in cantilever, I 315 and 8.13 in4,
    # E 29e6 psi: 0.246 in to the side, 0.073 in down.
    load = 2000 * (math.sin if part == "sin" else math.cos)(math.radians(5))
    stiffness = 29e6 * PSI * second_moment * INCH**4
    beam = Beam(100 * INCH, "cantilever", load * POUND, 100 * INCH, 0.0, stiffness)
    assert round(beam.greatest_sag()[1] / INCH, 3) == printed


def test_impact_factor_of_a_beam_by_its_static_sag() -> None:
    # Popov, Engineering Mechanics of Solids: 15.3 kg dropped 75 mm on the middle of a simple 50 x 50 x 1,000 mm beam,
    # E 200 GPa: factor 71.7 = 1 + sqrt(1 + 2 h / static sag).
    beam = Beam(1.0, "simple", 15.3 * 9.81, 0.5, 0.0, 200e9 * 0.05**4 / 12)
    assert round(1 + math.sqrt(1 + 2 * 0.075 / beam.greatest_sag()[1]), 1) == 71.7


def test_rolled_section_is_a_little_under_its_book_value() -> None:
    # W8x31 of the AISC Manual (from memory): I 110 in4, depth 8.00, flange 8.00 x 0.435, web 0.285 in; the sizes leave
    # out the fillets.
    assert i_section(8.0, 8.0, 0.285, 0.435).second_moment_m4 == pytest.approx(110, rel=0.02)


def test_round_bar() -> None:
    # Any handbook: I of a 1 in round is 0.0491 in4.
    assert round(round_bar(1.0).second_moment_m4, 4) == 0.0491
