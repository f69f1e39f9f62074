"""what-is-it against printed figures: 49 CFR 393.108, OSHA Guidance on Safe Sling Use, DGUV 209-021."""

from typing import Any

import pytest

from calc.answering import answer


def ask(wire: str, marks: str, use: str) -> dict[str, Any]:
    record: dict[str, Any] = answer(
        "what-is-it", {"measured_diameter": wire, "marks": marks, "use": use, "condition": "sound"}
    )
    return {name: result["value"] for name, result in record["results"].items()}


# 49 CFR 393.108, chain mark examples 1 to 3 for grades 30, 43, 70, 80, 100 (from memory of the printed table), and the
# limits of 1/2 in chain in the same table (pounds, as printed).
@pytest.mark.parametrize(
    ("examples", "printed_lb"),
    [
        (("3", "30", "300"), 4500), (("43", "430"), 9200), (("7", "70", "700"), 11300),
        (("80", "800"), 12000), (("10", "100", "1000"), 15000),
    ],
)  # fmt: skip
def test_mark_examples_of_the_law(examples: tuple[str, ...], printed_lb: float) -> None:
    for mark in examples:
        assert ask("13.3 mm", f"{mark} 1/2", "tie_down")["rating_tie_down"] == pytest.approx(printed_lb)


def test_unmarked_chain_counts_as_grade_30() -> None:
    """49 CFR 393.108(d); 5/8 in grade 30 prints 6,900 lb."""
    assert ask("16.4 mm", "5/8", "tie_down")["rating_tie_down"] == pytest.approx(6900)


def test_the_law_rates_5_16_grade_80_below_grade_70() -> None:
    """49 CFR 393.108 prints 4,500 lb against 4,700 lb."""
    assert ask("8.3 mm", "80 5/16", "tie_down")["rating_tie_down"] == pytest.approx(4500)
    assert ask("8.3 mm", "70 5/16", "tie_down")["rating_tie_down"] == pytest.approx(4700)


@pytest.mark.parametrize(
    ("marks", "printed_lb"), [("80 1/2", 12000), ("100 3/8", 8800), ("80 5/8", 18100), ("100 9/32", 4300)]
)
def test_osha_single_leg(marks: str, printed_lb: float) -> None:
    """OSHA, Guidance on Safe Sling Use, Tables 1 and 2, single leg at 90 degrees."""
    wire = {"1/2": "13.2 mm", "3/8": "9.9 mm", "5/8": "16.1 mm", "9/32": "7.1 mm"}[marks.split()[1]]
    assert ask(wire, marks, "lift")["rating_lift"] == pytest.approx(printed_lb)


@pytest.mark.parametrize(("marks", "printed_kg"), [("T 8 mm", 2000), ("T 13 mm", 5300), ("P 10 mm", 2000)])
def test_dguv_single_leg(marks: str, printed_kg: float) -> None:
    """DGUV Information 209-021, grade 8, one leg: 8 mm 2,000 kg, 13 mm 5,300 kg; 201-030, grade 5, 10 mm 2,000 kg."""
    wire = marks.split()[1] + ".2 mm"
    assert ask(wire, marks, "lift")["rating_lift"] * 0.45359237 == pytest.approx(printed_kg)


def test_seven_sixteenths_transport_chain_wire() -> None:
    """The grade relation (ASTM A413, s. 1.4.1) on 7/16 in grade 70, 8,750 lb at a design factor of 4, gives the wire:
    d = sqrt(4 x 8,750 lbf / (0.7 kN/mm2 x pi / 2)) = 11.9 mm, which must be taken for 7/16 in.
    """
    wire_mm = (4 * 8750 * 4.4482216 / (700 * 3.141592653589793 / 2)) ** 0.5
    assert wire_mm == pytest.approx(11.9, abs=0.02)
    assert "7/16" in answer("what-is-it", {"measured_diameter": f"{wire_mm} mm", "marks": "70", "use": "tie_down"})["results"]["candidates"]["text"]  # fmt: skip
