"""sling-legs against printed tables and worked examples; the source stands beside each."""

from __future__ import annotations

import math
from typing import Any

import pytest

from calc.answering import answer
from calc.lifting.leg_geometry import leg_tension_n
from calc.tables import number, table

POUND = 4.4482216152605


def results(**given: str) -> dict[str, Any]:
    found: dict[str, Any] = answer("sling-legs", {"condition": "marked-good"} | given, "us")["results"]
    return found


@pytest.mark.parametrize(("angle", "printed"), [("45", 1414), ("30", 2000), ("15", 3864)])
def test_two_legs_at_three_angles(angle: str, printed: int) -> None:
    # Mathematics and Statistics for the Environment, fig. 11.4: 2,000 lb on two legs at 45, 30 and 15 degrees from the
    # horizontal: 1,414, 2,000 and 3,864 lb in each; its text advises against less than 30 degrees.
    given = {"load": "2,000 lb", "legs": "2", "angle": angle}
    assert round(results(**given)["leg_tension"]["value"]) == printed
    assert (answer("sling-legs", given)["verdict"] == "stop") == (angle == "15")


def test_tray_on_four_legs() -> None:
    # Nicholls's Seamanship and Nautical Knowledge, pp. 280 and 283: tray 4 ft x 4 ft, four legs of 7 ft, 20 cwt: 10.9 cwt
    # on a diagonal pair, 5.45 cwt on each of four (secant cut to 1.09; exact 10.93 and 5.466). We never count four.
    given = {"load": "1 long ton", "legs": "4", "leg_length": "7 ft", "spread": f"{4 * 2**0.5} ft"}
    assert results(**given)["leg_tension"]["value"] / 112 == pytest.approx(10.9, abs=0.05)
    angle_deg = results(**given)["angle"]["value"]
    assert leg_tension_n(20, 4, angle_deg) == pytest.approx(5.45, abs=0.02)


def test_tightrope() -> None:
    # OpenStax, College Physics 2e, ch. 4: 70.0 kg, 5.0 degrees from the horizontal, g 9.80: 3,900 N (exact 3,935).
    pull = results(load=f"{70 * 9.80} N", legs="2", angle="5")["leg_tension"]["value"] * POUND
    assert float(f"{pull:.1e}") == 3900


def two_leg_cells() -> list[tuple[str, str, str, str, float]]:
    rows = table("chain-lifting").where(unit="lb", quantity="working_load_limit")
    return [
        (row["grade"], row["size_in"], row["legs"], row["angle_from_horizontal"], number(row))
        for row in rows
        if row["legs"] in ("2", "3-4")
    ]


@pytest.mark.parametrize("cell", two_leg_cells(), ids=lambda cell: "-".join(str(part) for part in cell))
def test_every_printed_sling_of_the_tables(cell: tuple[str, str, str, str, float]) -> None:
    # OSHA, Guidance on Safe Sling Use, Tables 1 and 2: a sling loaded to its printed rating pulls each leg that the table
    # counts (two of two, three of three or four) to its own rating, within the table's rounding: to 100 lb up to 10,000,
    # coarser above; and our sheet does not call a load over the printed cell good.
    grade, size, legs, angle, printed = cell
    counted = 2 if legs == "2" else 3
    given = {
        "legs": str(counted),
        "load_kind": "flexible",
        "legs_counted": str(counted),
        "angle": angle,
        "grade": grade,
        "size": size,
    }
    at = results(load=f"{printed} lb", **given)
    assert at["use_percent"]["value"] == pytest.approx(100, abs=100 * max(110 / printed, 0.016))
    assert at["table_rating"]["value"] == pytest.approx(printed)
    assert answer("sling-legs", {"load": f"{printed + 1} lb", **given})["verdict"] == "stop"


@pytest.mark.parametrize(("angle", "printed"), [("60", 20800), ("45", 17000), ("30", 12000)])
def test_half_inch_grade_80_pair(angle: str, printed: int) -> None:
    # OSHA, Guidance on Safe Sling Use, Table 1, 1/2 in (13 mm), two legs: 20,800, 17,000 and 12,000 lb.
    found = results(load="1,000 lb", legs="2", angle=angle, grade="80", size="1/2")
    assert found["table_rating"]["value"] == pytest.approx(printed)


@pytest.mark.parametrize("angle", ["45", "60", "75"])
def test_two_of_four_is_never_under_the_skew_factor(angle: str) -> None:
    """0027/ND, 5.6.12: four matched slings share unevenly, so that each is counted for 1.25 times an even share. Two of four are
    counted here, twice an even share, since nobody in a shop measures slings to a rope's diameter.
    """
    found = results(load="4,000 lb", legs="4", angle=angle)
    even_lb = 4000 / 4 / math.sin(math.radians(float(angle)))
    assert found["min_leg_rating"]["value"] >= 1.25 * even_lb
    assert found["min_leg_rating"]["value"] == pytest.approx(2 * even_lb)
