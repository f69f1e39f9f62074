"""The frozen unit factors against Pint, from which they come, and against NIST SP 811."""

import pathlib
from typing import Any

import pint
import pytest

from build_scripts.freeze_units import TARGET, UNITS, rendered
from calc.quantities import ALIASES, STANDARD_GRAVITY_M_PER_S2, find_unit, from_si, to_si
from calc.unit_factors import UNIT_FACTORS

REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()
CASES = [
    (dimension, symbol, pint_name, si_unit)
    for dimension, (si_unit, symbols) in UNITS.items()
    for symbol, pint_name in symbols.items()
]


def test_the_file_is_what_pint_gives_today() -> None:
    assert pathlib.Path(TARGET).read_text(encoding="utf-8") == rendered()


@pytest.mark.parametrize(("dimension", "symbol", "pint_name", "si_unit"), CASES)
def test_every_unit_agrees_with_pint(dimension: Any, symbol: Any, pint_name: Any, si_unit: Any) -> None:
    for value in (0.0, 1.0, 37.25, 1234.5):
        expected = REGISTRY.Quantity(value, pint_name).to(si_unit).magnitude
        assert to_si(value, symbol, dimension) == pytest.approx(expected, rel=1e-13, abs=1e-11)
        assert from_si(expected, symbol, dimension) == pytest.approx(value, rel=1e-12, abs=1e-9)


def test_factors_of_nist_sp_811() -> None:
    """NIST Special Publication 811, 2008 edition, Appendix B.8: factors printed in bold are exact."""
    assert to_si(1, "in", "length") == 0.0254
    assert to_si(1, "ft", "length") == 0.3048
    assert to_si(1, "lb", "weight") == 0.45359237
    assert to_si(1, "lbf", "force") == 4.4482216152605
    assert to_si(1, "kip", "force") == pytest.approx(4.448222e3, rel=1e-7)
    assert to_si(1, "psi", "pressure") == pytest.approx(6.894757e3, rel=1e-7)
    assert to_si(1, "short_ton", "weight") == pytest.approx(9.071847e2, rel=1e-7)
    assert to_si(1, "long_ton", "weight") == pytest.approx(1.016047e3, rel=1e-6)
    assert to_si(1, "lb/ft3", "density") == pytest.approx(1.601846e1, abs=5e-6)
    assert to_si(1, "lbf.ft", "torque") == pytest.approx(1.355818, rel=1e-7)
    assert to_si(1, "gal", "volume") == pytest.approx(3.785412e-3, rel=1e-7)
    assert to_si(212, "degF", "temperature") == pytest.approx(100.0, abs=1e-9)
    assert STANDARD_GRAVITY_M_PER_S2 == 9.80665


@pytest.mark.parametrize("dimension", list(UNIT_FACTORS))
def test_every_alias_names_a_unit_of_its_dimension(dimension: Any) -> None:
    for written, unit in ALIASES[dimension].items():
        assert unit == "" or unit in UNIT_FACTORS[dimension], (written, unit)
        assert find_unit(written, dimension) == unit
