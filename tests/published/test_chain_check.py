"""chain-check against the printed least thicknesses and wear."""

from fractions import Fraction

import pytest

from calc.inspecting.chain_marks import size_named
from calc.inspecting.thickness import thickness_limits


# 29 CFR 1910.184 Table N-184-1, the first two rows as Michigan R 408.14923 Table 1 prints them; DOE-STD-1090-96 Table 15-2
# prints the wear that goes with them, in sixty-fourths: 3/64 and 5/64 in.
@pytest.mark.parametrize(("size", "least", "wear"), [("1/4", "13/64", "3/64"), ("3/8", "19/64", "5/64")])
def test_federal_table_and_wear_agree(size: str, least: str, wear: str) -> None:
    assert Fraction(size) - Fraction(wear) == Fraction(least)
    named = size_named(size)
    assert named is not None
    found = [
        limit.value_si / 0.0254
        for limit in thickness_limits(named)
        if "osha" in limit.citations[0].source or "doe" in limit.citations[0].source
    ]
    assert found
    assert all(inches == pytest.approx(float(Fraction(least))) for inches in found)


def test_washington_is_stricter_for_three_eighths() -> None:
    """ASME-pattern table (Washington Table 13): 0.342 in, against 19/64 in of the federal table."""
    named = size_named("3/8")
    assert named is not None
    washington = [
        limit.value_si for limit in thickness_limits(named) if limit.citations[0].source == "wac-296-155"
    ]
    federal = [
        limit.value_si for limit in thickness_limits(named) if limit.citations[0].source == "osha-1910-184"
    ]
    assert washington == [pytest.approx(0.342 * 0.0254)]
    assert max(federal) < min(washington)


def test_shares_of_thickness() -> None:
    """DGUV 209-021 after DIN 685: 10 percent of thickness, so 9.0 mm of a 10 mm link is left; NAVEDTRA 14251: 25 percent."""
    named = size_named("10 mm")
    assert named is not None
    by_source = {limit.citations[0].source: limit.value_si * 1000 for limit in thickness_limits(named)}
    assert by_source["dguv-209-021"] == pytest.approx(9.0)
    assert by_source["navedtra-14251"] == pytest.approx(7.5)
