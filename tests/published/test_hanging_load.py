"""hanging-load against printed examples; the source stands beside each."""

from __future__ import annotations

import math
from typing import Any

import pytest

from calc.answering import answer


def hang(load: str, picks: list[tuple[list[str], str]], centre: list[str]) -> dict[str, Any]:
    rows = [{"at": at, "length": length} for at, length in picks]
    results: dict[str, Any] = answer(
        "hanging-load",
        {"load": load, "picks": rows, "centre": centre, "balance_tolerance": "1 mm", "chain_size": "1 mm"},
        "si",
    )["results"]
    return results


def legs_to_a_hook(
    hook: tuple[float, float, float], picks: list[tuple[float, float, float]]
) -> list[tuple[list[str], str]]:
    return [([f"{c} m" for c in pick], f"{math.dist(hook, pick)} m") for pick in picks]


def test_chains_at_thirty_and_sixty_degrees() -> None:
    # Bansal, Engineering Mechanics, ex. 1.7 (through a textbook companion): 1,000 N on chains at 30 and 60 degrees
    # from the horizontal pull 500 N and 866.03 N.
    picks = [(-math.sqrt(3), 0.0, 0.0), (1 / math.sqrt(3), 0.0, 0.0)]
    found = hang("1000 N", legs_to_a_hook((0, 0, 1), picks), ["0 m", "0 m", "-0.7 m"])
    assert [round(1000 * t, 2) for t in found["tensions"]["value"]] == [500.0, 866.03]
    assert found["leg_angles"]["value"] == pytest.approx([30, 60])


def test_two_cables_at_unlike_angles() -> None:
    # Baker and Haynes, Engineering Statics, ch. 3, two hanging weights: 100 N on cables at 7.13 and 45 degrees from
    # the horizontal: 89.6 N and 125.7 N. The knot turned over is the hook.
    picks = [(-1 / math.tan(math.radians(7.13)), 0.0, 0.0), (1.0, 0.0, 0.0)]
    found = hang("100 N", legs_to_a_hook((0, 0, 1), picks), ["0 m", "0 m", "-0.5 m"])
    assert [round(1000 * t, 1) for t in found["tensions"]["value"]] == [89.6, 125.7]


def test_tightrope_turned_over() -> None:
    # OpenStax, College Physics 2e, ch. 4, tension in a tightrope: 70.0 kg, both sides 5.0 degrees from the horizontal,
    # g 9.80: 3,900 N (two figures; exact 3,935).
    flat = math.tan(math.radians(5.0))
    picks = [(-1 / flat, 0.0, 0.0), (1 / flat, 0.0, 0.0)]
    found = hang(f"{70 * 9.80} N", legs_to_a_hook((0, 0, 1), picks), ["0 m", "0 m", "-3 m"])
    pull = 1000 * found["tensions"]["value"][0]
    assert float(f"{pull:.1e}") == 3900


def test_tray_on_four_legs_a_diagonal_pair_can_carry_it_all() -> None:
    # Nicholls's Seamanship and Nautical Knowledge, pp. 280 and 283: square tray 4 ft x 4 ft, four legs of 7 ft to one
    # ring, 20 cwt: a diagonal pair doing all the work pulls 10.9 cwt a leg (secant rounded to 1.09; exact 10.93).
    corners = [("2 ft", "2 ft"), ("-2 ft", "2 ft"), ("-2 ft", "-2 ft"), ("2 ft", "-2 ft")]
    picks = [([x, y, "0"], "7 ft") for x, y in corners]
    found = hang("1 long ton", picks, ["0", "0", "-1 ft"])
    cwt = max(found["tensions"]["value"]) * 1000 / (112 * 4.4482216152605)
    assert cwt == pytest.approx(10.9, abs=0.05)
    # Which pair it is nobody knows: all four are shown with what they pull then.
    assert found["taut"]["value"] == [None] * 4
    assert found["tensions"]["value"] == pytest.approx([found["tensions"]["value"][0]] * 4)
    # The same book shares it evenly as 5.45 cwt (exact 5.466): legs that stretch alike.
    even = [t * 1000 / (112 * 4.4482216152605) for t in found["springy_tensions"]["value"]]
    assert even == pytest.approx([5.45] * 4, abs=0.03)


def test_weight_held_off_its_middle() -> None:
    # OpenStax, College Physics 2e, ch. 9, weight held near its balance point: 5.00 kg, supports 0.900 m apart, balance
    # point 0.600 m from the left: 32.7 N right and 16.3 N left (g 9.80). Two legs so long that they hang upright.
    picks = legs_to_a_hook((0.6, 0.0, 100.0), [(0.0, 0.0, 0.0), (0.9, 0.0, 0.0)])
    found = hang(f"{5 * 9.80} N", picks, ["0.6 m", "0 m", "-0.2 m"])
    left, right = (1000 * t for t in found["tensions"]["value"])
    assert round(right, 1) == 32.7
    assert round(left, 1) == 16.3


def test_three_cables_in_space() -> None:
    # Hibbeler and Gupta, Engineering Mechanics, ex. 3.8 (through a textbook companion): a 981 N crate on cables B along
    # x (a spring), C at 120, 135 and 60 degrees, D along (-1, 2, 2): B 693.7 N, C 812.7 N, D 862.0 N (exact; the book
    # rounds the last direction and prints 693.2, 812.7, 861.6). The knot is the hook, turned over: cables run down.
    toward_c = [math.cos(math.radians(a)) for a in (120, 135, 60)]
    directions = [(1.0, 0.0, 0.0), (toward_c[0], toward_c[1], -toward_c[2]), (-1 / 3, 2 / 3, -2 / 3)]
    picks = [(1.7 * x, 1.7 * y, 1.7 * z) for x, y, z in directions]
    found = hang("981 N", legs_to_a_hook((0.0, 0.0, 0.0), picks), ["0 m", "0 m", "-5 m"])
    assert [round(1000 * t, 1) for t in found["tensions"]["value"]] == [693.7, 812.7, 862.0]
