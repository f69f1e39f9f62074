"""move-it: printed examples of tackle, winch layers and rope friction, and a crate on a truck."""

from __future__ import annotations

import math

import pytest

from calc.hauling.moving import along_ramp_n, hauling_pull_n, pull_on_layer_n, tail_pull_n


def test_single_luff_of_the_navy() -> None:
    """NAVEDTRA 14043, mechanical advantage: 600 lb on three parts, 200 lb before friction, 10 percent of it for each sheave."""
    assert hauling_pull_n(600, 3, 0) == pytest.approx(200)
    assert hauling_pull_n(600, 3, 3) == pytest.approx(260)


def test_four_parts_with_plain_bearings() -> None:
    """Pipeline Rules of Thumb Handbook, p 6: 3,250 lb on four parts at 91.7 percent a sheave need 1,000 lb (exact 1,004)."""
    exact = 3250 / (0.917 * (1 - 0.917**4) / (1 - 0.917))
    assert exact == pytest.approx(1004, abs=1)
    assert hauling_pull_n(3250, 4, 4) > exact


@pytest.mark.parametrize(("layer", "pull"), [(1, 20_000), (2, 18_173), (3, 16_663), (4, 15_361), (5, 14_254)])
def test_pull_of_a_winch_by_its_layer(layer: int, pull: float) -> None:
    """US Army TM 9-2320-279-10-2, Table 2-7: the drum of this winch is 19 ropes thick, by the steps of the table."""
    assert pull_on_layer_n(20_000, 19.0, 1.0, layer) == pytest.approx(pull, rel=0.003)


@pytest.mark.parametrize(
    ("held", "turns", "friction", "tail"),
    [(100, 4.5, 0.23, 0.15), (1000, 0.5, 0.25, 456), (1000, 3.0, 0.3, 3.50)],
)
def test_rope_on_a_post(held: float, turns: float, friction: float, tail: float) -> None:
    """Baker and Haynes, Engineering Statics, 9, rope friction; Tayal, Engineering Mechanics, Ex 7.4 and 7.6 (copies)."""
    assert tail_pull_n(held, turns, friction) == pytest.approx(tail, rel=0.002)


def test_crate_on_a_truck() -> None:
    """OpenStax, University Physics 1, 6.2: 50 kg, standing friction 0.4: 196 N holds."""
    assert along_ramp_n(50 * 9.8, 0.0, 0.4) == pytest.approx(196)
    assert math.isclose(along_ramp_n(10.0, math.pi / 2, 0.4), 10.0)
