"""What does a second heat do to steel that was hardened and tempered?

Hollomon and Jaffe (Transactions AIME 162, 1945): a hotter short heat softens like a cooler long one, by the parameter
T (C + log10 t), T in kelvin, t in hours; their data run from 100 to 700 C and 10 s to 24 h. The constant C is 20 for
common steels, less for some: 15 to 20 is kept as a band. The strength that goes with a parameter is read between the
tempered test pieces of the table tempering-data, taken as tempered for one hour (the source states no time).
"""

from __future__ import annotations

import functools
import math
from collections.abc import Sequence
from dataclasses import dataclass

from calc.heating.hardening import held_between
from calc.tables import number, table, value_si

USUAL_CONSTANT, LEAST_CONSTANT = 20.0, 15.0
_KELVIN = 273.15
_DATA_HOURS = 1.0
_SLACK_KK = 0.01
"""How far past the last test piece a parameter may lie and still be read as that piece: about 1 MPa."""


def parameter(temperature_degc: float, hours: float, constant: float = USUAL_CONSTANT) -> float:
    """Hollomon-Jaffe parameter, T (C + log10 t) / 1000 [kK] of one heat [deg C] held for a time [h].

    Tested from 100 to 700 C and from 10 s to 24 h (Hollomon and Jaffe, 1945).

    >>> round(parameter(540, 1.0), 3)
    16.263
    """
    return (temperature_degc + _KELVIN) * (constant + math.log10(hours)) / 1000


def hours_for(temperature_degc: float, parameter_kk: float, constant: float = USUAL_CONSTANT) -> float:
    """Time [h] at a temperature [deg C] that gives a parameter [kK]; a huge exponent is held at 1e30 hours."""
    exponent = 1000 * parameter_kk / (temperature_degc + _KELVIN) - constant
    return math.pow(10.0, min(30.0, exponent))


def cycle_parameter(
    steps: Sequence[tuple[float, float]], constant: float = USUAL_CONSTANT, before_kk: float | None = None
) -> float:
    """Parameter [kK] after heats (deg C, hours) one after another.

    Before each heat the parameter so far is turned into the time that would give it at the new temperature; the heat
    adds its own time to that. before_kk -- the parameter of what the steel met before; raises ValueError for no heat

    >>> round(cycle_parameter([(540, 0.25), (540, 0.75)]), 3)  # an hour in two pieces
    16.263
    """
    so_far = before_kk
    for temperature, hours in steps:
        already = 0.0 if so_far is None else hours_for(temperature, so_far, constant)
        so_far = parameter(temperature, already + hours, constant)
    if so_far is None:
        raise ValueError("a cycle has at least one heat")
    return so_far


@dataclass(frozen=True)
class TemperedSteel:
    """Tempered test pieces of a steel: tempering temperature [deg C] and tensile strength [Pa], coolest first."""

    name: str
    pieces: tuple[tuple[float, float], ...]

    @property
    def coolest_degc(self) -> float:
        """Least tempering temperature of the data [deg C]."""
        return self.pieces[0][0]

    @property
    def hottest_degc(self) -> float:
        """Greatest tempering temperature of the data [deg C]."""
        return self.pieces[-1][0]

    def strength_pa(self, parameter_kk: float, constant: float = USUAL_CONSTANT) -> float | None:
        """Tensile strength [Pa] at a parameter [kK], between the test pieces; None outside them."""
        rows = self._rows(constant)
        if not rows[0][0] - _SLACK_KK <= parameter_kk <= rows[-1][0] + _SLACK_KK:
            return None
        return held_between(rows, parameter_kk)

    def as_tempered_pa(self, tempered_at_degc: float) -> float:
        """Tensile strength [Pa] of a piece tempered as long as the data's, at a heat [deg C] held to theirs."""
        return held_between(self._rows(USUAL_CONSTANT), parameter(tempered_at_degc, _DATA_HOURS))

    def _rows(self, constant: float) -> list[tuple[float, float]]:
        """Parameter [kK] and strength [Pa] of the test pieces."""
        return [(parameter(degc, _DATA_HOURS, constant), strength) for degc, strength in self.pieces]

    def scatter_pa(self) -> float:
        """Greatest distance [Pa] of a test piece from the straight line through all of them (strength on parameter)."""
        rows = self._rows(USUAL_CONSTANT)
        mean_x = sum(x for x, _ in rows) / len(rows)
        mean_y = sum(y for _, y in rows) / len(rows)
        slope = sum((x - mean_x) * (y - mean_y) for x, y in rows) / sum((x - mean_x) ** 2 for x, _ in rows)
        return max(abs(y - mean_y - slope * (x - mean_x)) for x, y in rows)


def tempered_steel_names() -> tuple[str, ...]:
    """The steels of the table tempering-data."""
    return table("tempering-data").values("steel")


@functools.cache
def tempered_steel(name: str) -> TemperedSteel:
    """The oil-quenched and tempered test pieces of a steel."""
    rows = table("tempering-data").where(steel=name, condition="oil_quenched", quantity="tensile_strength")
    pieces = sorted((number({**row, "value": row["temper_degC"]}), value_si(row, "pressure")) for row in rows)
    return TemperedSteel(name, tuple(pieces))


def condition_pa(name: str, condition_start: str, quantity: str) -> float:
    """A property [Pa] of a steel in another condition, such as annealed."""
    for row in table("tempering-data").where(steel=name, quantity=quantity):
        if row["condition"].startswith(condition_start):
            return value_si(row, "pressure")
    raise LookupError(f"tempering-data has no {condition_start} {quantity} of {name}")


@dataclass(frozen=True)
class StrengthBand:
    """A strength [Pa] with its least and greatest reading."""

    low_pa: float
    middle_pa: float
    high_pa: float


def strength_after(
    made_of: TemperedSteel, tempered_at_degc: float, steps: Sequence[tuple[float, float]]
) -> StrengthBand | None:
    """Strength of a test piece after more heats (deg C, hours); None where it leaves the data at the soft end.

    The band spans the constants 15 and 20 and the scatter of the data.
    """
    found: list[float] = []
    for constant in (USUAL_CONSTANT, LEAST_CONSTANT):
        before = parameter(tempered_at_degc, _DATA_HOURS, constant)
        strength = made_of.strength_pa(cycle_parameter(steps, constant, before), constant)
        if strength is None:
            return None
        found.append(strength)
    scatter = made_of.scatter_pa()
    return StrengthBand(min(found) - scatter, found[0], max(found) + scatter)


__all__ = [
    "LEAST_CONSTANT",
    "USUAL_CONSTANT",
    "StrengthBand",
    "TemperedSteel",
    "condition_pa",
    "cycle_parameter",
    "hours_for",
    "parameter",
    "strength_after",
    "tempered_steel",
    "tempered_steel_names",
]
