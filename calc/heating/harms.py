"""What does a heat do to hardened and tempered steel, and to chain?

Bands of harm from the tables embrittlement, chain-heat-asme, sling-temperature-limits and tempering-data, each with the
facts that its words name. No band ends inside another's reason: several may hold at one heat.
"""

from __future__ import annotations

import functools
import math
from collections.abc import Mapping
from dataclasses import dataclass, field

from calc.heating.tempering import condition_pa, tempered_steel
from calc.heating.weld_cooling import HARDENS_ABOVE_DEGC
from calc.tables import number, table, value_si
from calc.words.facts import Fact, Quantity, degrees

_STRENGTH_UNITS = ("ksi", "MPa")
_EXAMPLE_STEEL, _EXAMPLE_TEMPER = "4140", "540"
"""The steel whose strength is told, and the tempering heat [deg C] it is told for."""
_SECOND_PIECE = 2
"""Which test piece of the example steel marks where softening shows, from the coolest."""


@dataclass(frozen=True)
class Harm:
    """One thing that heat does, by code, and the band [deg C] it does it in; to infinity where it has no upper end."""

    code: str
    from_degc: float
    to_degc: float
    facts: Mapping[str, Fact] = field(default_factory=dict)

    def meets(self, low_degc: float, high_degc: float) -> bool:
        """Whether the band and a span of heat [deg C] have a heat in common."""
        return self.from_degc <= high_degc and self.to_degc >= low_degc


@functools.cache
def harms() -> tuple[Harm, ...]:
    """What each band of heat does to hardened and tempered steel, coolest first."""
    out = _out_of_service_degc()
    return (
        _brittle("blue-brittleness", "blue_brittleness"),
        _brittle("tempered-martensite", "tempered_martensite_embrittlement"),
        Harm("grade-100-chain", _lasting_loss_degc("100"), out),
        Harm("grade-80-chain", _lasting_loss_degc("80"), out),
        _brittle("temper-brittleness", "temper_embrittlement"),
        Harm("softening", tempered_steel(_EXAMPLE_STEEL).pieces[_SECOND_PIECE][0], HARDENS_ABOVE_DEGC),
        Harm("out-of-service", out, math.inf, {"out": degrees(out)}),
        Harm("treatment-gone", HARDENS_ABOVE_DEGC, math.inf, _strengths()),
    )


def _brittle(code: str, phenomenon: str) -> Harm:
    low, high = (
        value_si(
            table("embrittlement").one(phenomenon=phenomenon, case="usual", quantity=end, unit="degF"),
            "temperature",
        )
        for end in ("temperature_from", "temperature_to")
    )
    return Harm(code, low, high)


def _out_of_service_degc() -> float:
    """Over this heat [deg C] alloy chain is out for good (29 CFR 1910.184(e)(6))."""
    rows = table("sling-temperature-limits").where(item="alloy_chain_sling", quantity="remove_above")
    return value_si(rows[0], "temperature")


def _lasting_loss_degc(grade: str) -> float:
    """The coolest heat [deg C] at which a grade of chain loses rating for good (ASME B30.9)."""
    rows = table("chain-heat-asme").where(grade=grade, quantity="reduction_afterwards")
    return min(
        value_si({**row, "value": row["temperature_degF"], "unit": "degF"}, "temperature")
        for row in rows
        if number(row) > 0
    )


def _strengths() -> dict[str, Fact]:
    """Yield of the example steel annealed, and as it was tempered."""
    tempered = table("tempering-data").one(
        steel=_EXAMPLE_STEEL, temper_degC=_EXAMPLE_TEMPER, quantity="yield_strength"
    )
    soft = condition_pa(_EXAMPLE_STEEL, "annealed", "yield_strength")
    return {
        "steel": _EXAMPLE_STEEL,
        "soft": Quantity(soft, "pressure", units=_STRENGTH_UNITS),
        "hard": Quantity(value_si(tempered, "pressure"), "pressure", units=_STRENGTH_UNITS),
        "temper": degrees(float(_EXAMPLE_TEMPER)),
    }


__all__ = ["Harm", "harms"]
