"""convert against printed factors: NIST Special Publication 811 (2008), Appendix B.8. Printed digits from memory; a
bold factor of that list is exact, the others are rounded to seven digits.
"""

from __future__ import annotations

import pytest

from calc.answering import answer


@pytest.mark.parametrize(
    ("start", "end", "factor"),
    [
        ("in", "m", 2.54e-2), ("ft", "m", 3.048e-1), ("yd", "m", 9.144e-1), ("mi", "m", 1.609344e3), ("in2", "m2", 6.4516e-4),
        ("ft2", "m2", 9.290304e-2), ("ft3", "m3", 2.831685e-2), ("in3", "m3", 1.638706e-5), ("gal", "m3", 3.785412e-3),
        ("lb", "kg", 4.535924e-1), ("oz", "kg", 2.834952e-2), ("short_ton", "kg", 9.071847e2), ("long_ton", "kg", 1.016047e3),
        ("lbf", "N", 4.448222), ("kgf", "N", 9.80665), ("kip", "N", 4.448222e3), ("psi", "Pa", 6.894757e3),
        ("ksi", "Pa", 6.894757e6), ("kgf/cm2", "Pa", 9.80665e4), ("atm", "Pa", 1.01325e5), ("lbf.ft", "N.m", 1.355818),
        ("lbf.in", "N.m", 1.129848e-1), ("ft.lbf", "J", 1.355818), ("lb/ft3", "kg/m3", 1.601846e1),
        ("lb/in3", "kg/m3", 2.767990e4), ("lb/ft", "kg/m", 1.488164), ("lb/ft2", "kg/m2", 4.882428), ("mph", "m/s", 4.4704e-1),
        ("kn", "m/s", 5.144444e-1), ("in4", "m4", 4.162314e-7), ("hp", "W", 7.456999e2),
    ],
)  # fmt: skip
def test_printed_factor(start: str, end: str, factor: float) -> None:
    found = answer("convert", {"value": f"1 {start}", "to": end}, "us")["results"]["result"]["value"]
    assert float(f"{found:.6e}") == pytest.approx(factor, rel=1e-9)
