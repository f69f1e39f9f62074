"""What is one weld bead as the heat field sees it, and which bands of heat does it leave beside it?

From the settings of the welder to a moving arc (calc.heating.moving_heat): arc efficiencies from the table
arc-efficiency, the conductivity of steel as a middle figure and a band. The bands lie inside one another: melted, hard,
softened, tinted; beyond them the steel is untouched.
"""

from __future__ import annotations

import functools
from dataclasses import dataclass
from typing import Literal, NamedTuple

from calc.heating.moving_heat import Isotherm, MovingArc, isotherm, surface_distance_m
from calc.heating.temper_colours import first_tint_degc
from calc.heating.weld_cooling import (
    HARDENS_ABOVE_DEGC,
    HEAT_CAPACITY_J_PER_M3K,
    MELTING_DEGC,
    heat_input_j_per_m,
)
from calc.tables import number, table

CONDUCTIVITY_W_PER_MK = 41.0
"""Conductivity of the middle answer [W/(m K)], the usual figure for a moving arc in steel (common practice, no source)."""
CONDUCTIVITY_BAND_W_PER_MK = (27.0, 47.0)
"""Conductivity of carbon steel red hot and at 200 C [W/(m K)] (EN 1993-1-2, 3.4.1.3; from memory)."""
USUAL_TEMPER_DEGC = 425.0
"""The tempering heat [deg C] of the softened band where the chosen heat cannot be one (common practice)."""
_CONSUMABLE = ("smaw", "gmaw", "fcaw", "saw")

BandName = Literal["melted", "hard", "softened", "tinted"]


class ArcEfficiency(NamedTuple):
    """Share of the arc's power that reaches the steel [-]: the code's factor, and the least and greatest of code and
    measured figures.
    """

    code: float
    least: float
    greatest: float


@functools.cache
def efficiencies(process: str) -> ArcEfficiency:
    """Arc efficiency of a welding process (smaw, gmaw, fcaw, gtaw, saw or plasma) by the table arc-efficiency.

    >>> efficiencies("gtaw")
    ArcEfficiency(code=0.6, least=0.6, greatest=0.82)
    """
    rows = table("arc-efficiency")
    code = number(rows.one(process=process, quantity="relative_to_saw"))
    measured_as = "gmaw" if process in _CONSUMABLE else process
    found = [number(row) for row in rows.where(process=measured_as) if row["quantity"] != "relative_to_saw"]
    return ArcEfficiency(code, min(code, *found), max(code, *found))


@dataclass(frozen=True)
class Settings:
    """How the bead is laid: process, volts, amps, travel, thickness of the steel, and its temperature before the bead."""

    process: str
    volts_v: float
    amps_a: float
    travel_m_per_s: float
    thickness_m: float
    start_degc: float


@dataclass(frozen=True)
class Weld:
    """A bead: its settings, the arc's efficiency, the net heat by the code's factor [J/m], and arcs for the middle and
    both ends of what is known of efficiency and conductivity.
    """

    settings: Settings
    efficiency: ArcEfficiency
    heat_j_per_m: float
    arc: MovingArc
    narrow_arc: MovingArc
    wide_arc: MovingArc

    @property
    def start_degc(self) -> float:
        """Temperature of the steel before the bead [deg C]."""
        return self.settings.start_degc

    @property
    def thickness_m(self) -> float:
        """Thickness of the steel [m]."""
        return self.settings.thickness_m

    def span_m(self, hot_degc: float, cool_degc: float, arc: MovingArc) -> float:
        """Distance [m] on the face between two peak temperatures [deg C], both over the start, for one of the arcs."""
        return surface_distance_m(arc, cool_degc - self.start_degc) - surface_distance_m(
            arc, hot_degc - self.start_degc
        )


def weld_of(settings: Settings) -> Weld:
    """The bead that the settings lay."""
    efficiency = efficiencies(settings.process)
    power_w = settings.volts_v * settings.amps_a
    least_conductivity, greatest_conductivity = CONDUCTIVITY_BAND_W_PER_MK

    def arc(share: float, conductivity: float) -> MovingArc:
        return MovingArc(
            share * power_w,
            settings.travel_m_per_s,
            settings.thickness_m,
            conductivity,
            conductivity / HEAT_CAPACITY_J_PER_M3K,
        )

    return Weld(
        settings,
        efficiency,
        heat_input_j_per_m(efficiency.code, settings.volts_v, settings.amps_a, settings.travel_m_per_s),
        arc((efficiency.least + efficiency.greatest) / 2, CONDUCTIVITY_W_PER_MK),
        arc(efficiency.least, greatest_conductivity),
        arc(efficiency.greatest, least_conductivity),
    )


@dataclass(frozen=True)
class HeatedBand:
    """A band beside the bead: its name, the peak temperature over which it lies [deg C], and its outer line."""

    name: BandName
    over_degc: float
    line: Isotherm

    @property
    def reach_m(self) -> float:
        """How far it reaches on the face from the middle of the bead [m]."""
        return self.line.points[0][0]


def temper_of(chosen_degc: float) -> float:
    """The tempering heat [deg C] taken for the softened band: the chosen one where it can be a tempering."""
    return chosen_degc if first_tint_degc() < chosen_degc < HARDENS_ABOVE_DEGC - 1 else USUAL_TEMPER_DEGC


def bands_of(weld: Weld, chosen_degc: float) -> tuple[HeatedBand, ...]:
    """The bands of the section, from the melt out; those no hotter than the start are left out.

    chosen_degc -- at which the part was tempered [deg C], over the start
    """
    names: tuple[tuple[BandName, float], ...] = (
        ("melted", MELTING_DEGC),
        ("hard", HARDENS_ABOVE_DEGC),
        ("softened", temper_of(chosen_degc)),
        ("tinted", first_tint_degc()),
    )
    return tuple(
        HeatedBand(name, degc, isotherm(weld.arc, degc - weld.start_degc))
        for name, degc in names
        if degc > weld.start_degc + 1.0
    )


__all__ = [
    "CONDUCTIVITY_BAND_W_PER_MK",
    "CONDUCTIVITY_W_PER_MK",
    "USUAL_TEMPER_DEGC",
    "ArcEfficiency",
    "BandName",
    "HeatedBand",
    "Settings",
    "Weld",
    "bands_of",
    "efficiencies",
    "temper_of",
    "weld_of",
]
