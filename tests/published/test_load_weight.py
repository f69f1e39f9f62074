"""load-weight against printed answers; the source stands beside each."""

from __future__ import annotations

from typing import Any

import pytest

from calc.answering import answer
from calc.words.writer import UnitSystem


def run(*parts: dict[str, Any], units: UnitSystem = "si") -> dict[str, Any]:
    results: dict[str, Any] = answer(
        "load-weight", {"parts": [{"count": "1", "tolerance": "2", **part} for part in parts]}, units
    )["results"]
    return results


def test_three_weights_on_a_line() -> None:
    # Baker and Haynes, Engineering Statics, ch. 7, simple centre of gravity: 50 N at 0, 10 N at 1.2 m, 30 N at 2.0 m
    # give 0.8 m from the origin (exact).
    found = run(
        {"shape": "lump", "weight": "50 N", "at": ["0 m", "0", "0"]},
        {"shape": "lump", "weight": "10 N", "at": ["1.2 m", "0", "0"]},
        {"shape": "lump", "weight": "30 N", "at": ["2.0 m", "0", "0"]},
    )
    assert found["centre_x"]["value"] == pytest.approx(800, rel=1e-12)


def test_reel_of_wire() -> None:
    # Baker and Haynes, Engineering Statics, ch. 3, hanging weight: 750 m of wire at 927 kg/km and a 350 kg reel are
    # 1,045 kg (exact 1,045.25).
    found = run(
        {"shape": "lump", "weight": f"{0.75 * 927} kg"},
        {"shape": "lump", "weight": "350 kg"},
    )
    assert round(found["weight"]["value"]) == 1045


@pytest.mark.parametrize(
    ("outside", "wall", "pounds_per_foot"),
    [
        ("2.375 in", "0.154 in", 3.65),  # 2 in schedule 40
        ("6.625 in", "0.280 in", 18.97),  # 6 in schedule 40
        ("12.750 in", "0.500 in", 65.42),  # 12 in extra strong
    ],
)
def test_pipe_by_the_foot(outside: str, wall: str, pounds_per_foot: float) -> None:
    # ASME B36.10M, plain-end weights, from memory; the standard reckons steel at 0.2833 lb/in3, the density table's
    # middle is 0.1 % over it.
    found = run(
        {"shape": "tube", "material": "steel", "outside_diameter": outside, "wall": wall, "length": "1 ft"},
        units="us",
    )
    assert found["weight"]["value"] == pytest.approx(pounds_per_foot, rel=2e-3)


@pytest.mark.parametrize(
    ("thickness", "pounds_per_square_foot"), [("1/4 in", 10.21), ("1/2 in", 20.42), ("1 in", 40.83)]
)
def test_plate_by_the_square_foot(thickness: str, pounds_per_square_foot: float) -> None:
    # 490 lb/ft3 (Gere, density table; Iowa DOT IM 452.02) over 12 in: 40.83 lb/ft2 for each inch, as mill tables print.
    found = run(
        {"shape": "plate", "material": "steel", "length": "1 ft", "width": "1 ft", "thickness": thickness},
        units="us",
    )
    assert found["weight"]["value"] == pytest.approx(pounds_per_square_foot, rel=1e-3)


def test_rolled_beam_by_its_sizes_is_a_little_under_its_name() -> None:
    # W8x31 of the AISC Manual (from memory): depth 8.00, flange 8.00 x 0.435, web 0.285 in, 31 lb/ft. The sizes leave
    # out the fillets, which are about 2 %.
    found = run(
        {
            "shape": "i-beam",
            "material": "steel",
            "depth": "8 in",
            "flange_width": "8 in",
            "web_thickness": "0.285 in",
            "flange_thickness": "0.435 in",
            "length": "1 ft",
        },
        units="us",
    )
    assert 0.97 * 31 < found["weight"]["value"] < 31
