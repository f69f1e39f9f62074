"""Tempering data as printed, the Hollomon-Jaffe parameter as published, and hardness conversion."""

from __future__ import annotations

import pytest

from calc.answering import answer
from calc.heating.hardening import rockwell_of_strength
from calc.heating.tempering import condition_pa, cycle_parameter, parameter, tempered_steel

# Open property pages for AISI 4140 and 1340, oil quenched: tempering temperature [C] and tensile strength [MPa].
AISI_4140 = {205: 1772, 315: 1551, 425: 1248, 540: 951, 650: 758}
AISI_1340 = {205: 1806, 315: 1586, 425: 1262, 540: 965, 650: 800}


@pytest.mark.parametrize(("name", "data"), [("4140", AISI_4140), ("1340", AISI_1340)])
def test_test_pieces_are_met(name: str, data: dict[int, float]) -> None:
    steel = tempered_steel(name)
    assert [round(degc) for degc, _ in steel.pieces] == list(data)
    for degc, strength in data.items():
        found = answer(
            "temper-loss",
            {"steel": name, "tempered_at": f"{degc} C", "heated_to": "20 C", "minutes": "1", "heats": "one"},
            "si",
        )
        assert found["results"]["strength_before"]["value"] == pytest.approx(strength)


def test_annealed_4140_yields_at_half_of_the_540_c_temper() -> None:
    """Open property pages: 417.1 against 834 MPa."""
    assert condition_pa("4140", "annealed", "yield_strength") / 1e6 == pytest.approx(417.1)


def test_parameter_of_540_c_for_an_hour() -> None:
    """T (20 + log t) with T = 813.15 K and t = 1 h is 16.263 by hand (Hollomon and Jaffe, 1945, C = 20)."""
    assert parameter(540, 1.0) == pytest.approx(16.263, abs=5e-4)
    assert cycle_parameter([(540, 0.25), (540, 0.75)]) == pytest.approx(16.263, abs=5e-4)


@pytest.mark.parametrize(("strength_mpa", "low", "high"), [(1250, 40.0, 40.1), (1620, 47.5, 50.0)])
def test_hardness_conversion_columns(strength_mpa: float, low: float, high: float) -> None:
    """ASTM A370: 1,250 MPa is 40 HRC; ASTM E140: 1,248 MPa is 40 HRC and 1,620 MPa is 50 HRC (A370 says 47 to 48)."""
    found = rockwell_of_strength(strength_mpa * 1e6)
    assert found is not None
    assert low - 0.35 <= found[0] <= found[1] <= high + 0.1


def test_no_rockwell_outside_the_table() -> None:
    assert rockwell_of_strength(3e9) is None
    assert rockwell_of_strength(0.3e9) is None
