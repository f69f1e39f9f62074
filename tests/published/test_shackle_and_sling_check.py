"""shackle-check and sling-check against the printed removal criteria."""

from fractions import Fraction

import pytest

from calc.inspecting.inspection import limits
from calc.inspecting.sling_check import diameter_limits


def test_shackle_wear() -> None:
    """WAC 296-155-33900 Table 19: 10 percent of body or pin. ISO 16855 (public abstract): 10 percent general, pins 6 percent."""
    found = limits("shackle-limits", ("body_or_pin", "pin"), "dimension_loss", "fraction")
    pin = {
        source: min(one.value_si for one in found if one.citations[0].source == source)
        for source in ("wac-296-155", "iso-16855")
    }
    assert pin["wac-296-155"] == pytest.approx(0.10)
    assert pin["iso-16855"] == pytest.approx(0.06)


def test_broken_wires() -> None:
    """29 CFR 1910.184(f)(5)(i): ten random broken wires in one lay, or five in one strand in one lay; (ii) one third of the
    outside wires worn away.
    """
    assert limits("wire-rope-limits", ("sling",), "broken_wires_in_one_lay", "")[0].value_si == 10
    assert (
        limits("wire-rope-limits", ("sling",), "broken_wires_in_one_strand_in_one_lay", "")[0].value_si == 5
    )
    assert limits("wire-rope-limits", ("sling",), "outer_wire_wear", "fraction")[0].value_si == pytest.approx(
        1 / 3
    )


# Michigan R 408.40834(1)(d): more than 1/64 in to 5/16 in, 1/32 in for 3/8 to 1/2 in, 3/64 in for 9/16 to 3/4 in, 1/16 in for
# 7/8 to 1-1/8 in, 3/32 in for 1-1/4 to 1-1/2 in.
@pytest.mark.parametrize(
    ("size", "printed"),
    [("1/4", "1/64"), ("5/16", "1/64"), ("3/8", "1/32"), ("1/2", "1/32"), ("9/16", "3/64"), ("3/4", "3/64"), ("7/8", "1/16"), ("9/8", "1/16"),
     ("5/4", "3/32"), ("3/2", "3/32")],
)  # fmt: skip
def test_michigan_diameter_loss(size: str, printed: str) -> None:
    new_m = float(Fraction(size)) * 0.0254
    michigan = [
        limit.value_si * new_m / 0.0254
        for limit in diameter_limits(new_m)
        if limit.citations[0].source == "michigan-r408"
    ]
    assert michigan == [pytest.approx(float(Fraction(printed)))]
