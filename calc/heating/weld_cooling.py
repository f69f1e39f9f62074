"""How much heat does a bead put in, how wide is its mark by the textbook rule, and how fast does it cool?

Heat input as EN 1011-1 counts it; width of the heat-affected zone by the Adams equation (welding textbook extract,
full-penetration single pass in a thin plate); cooling time from 800 to 500 C by EN 1011-2, annex D (from memory,
held by its two branches meeting at the transition thickness); temperature rise of a small part by a heat balance.
"""

from __future__ import annotations

import math

MELTING_DEGC = 1510.0
"""Melting temperature of plain steel [deg C] as the Adams example takes it (welding textbook extract)."""
HARDENS_ABOVE_DEGC = 720.0
"""About where steel turns to austenite and can harden again [deg C] (common practice; fast heating raises it)."""
HARDENS_FULLY_ABOVE_DEGC = 820.0
"""About where a medium-carbon steel has turned to austenite altogether [deg C] (common practice, no source)."""
HEAT_CAPACITY_J_PER_M3K = 4.4e6
"""Density times specific heat of steel [J/(m3 K)], 0.0044 J/(mm3 K) in the Adams example."""
SPECIFIC_HEAT_J_PER_KGK = 490.0
"""Specific heat of steel near shop temperature [J/(kg K)]; it rises with heat, so a rise found with it is high."""


def heat_input_j_per_m(efficiency: float, volts: float, amps: float, travel_m_per_s: float) -> float:
    """Net heat per length [J/m] = efficiency x volts x amps / travel (EN 1011-1); all over nought, efficiency up to 1.

    >>> round(heat_input_j_per_m(0.8, 25, 130, 0.0025))  # 1.04 kJ/mm
    1040000
    """
    return efficiency * volts * amps / travel_m_per_s


def travel_for_bead_m_per_s(
    efficiency: float, volts: float, amps: float, bead_area_m2: float, melting_energy_j_per_m3: float
) -> float:
    """Travel [m/s] at which the net power melts a bead of a given section (Kalpakjian and Schmid, example 30.1)."""
    return efficiency * volts * amps / (melting_energy_j_per_m3 * bead_area_m2)


def adams_distance_m(heat_j_per_m: float, thickness_m: float, start_degc: float, peak_degc: float) -> float:
    """Distance [m] from the edge of the melt at which a thin plate peaks at `peak_degc`, by Adams.

    1/(Tp - T0) = sqrt(2 pi e) rho c t Y / H + 1/(Tm - T0). Holds for start < peak <= melting.

    >>> round(adams_distance_m(720e3, 0.005, 25, 730) * 1e3, 1)  # printed: 5.9 mm
    5.9
    """
    inverse = 1 / (peak_degc - start_degc) - 1 / (MELTING_DEGC - start_degc)
    return heat_j_per_m * inverse / (math.sqrt(2 * math.pi * math.e) * HEAT_CAPACITY_J_PER_M3K * thickness_m)


def cooling_time_thick_s(heat_j_per_m: float, start_degc: float, shape_factor: float = 1.0) -> float:
    """Time from 800 to 500 C [s] where heat flows off in three directions (EN 1011-2, annex D; memory).

    (6700 - 5 T0) Q [1/(500 - T0) - 1/(800 - T0)] F3, Q in kJ/mm. Start below 500 C.
    """
    heat = heat_j_per_m / 1e6
    return (6700 - 5 * start_degc) * heat * (1 / (500 - start_degc) - 1 / (800 - start_degc)) * shape_factor


def cooling_time_thin_s(
    heat_j_per_m: float, thickness_m: float, start_degc: float, shape_factor: float = 1.0
) -> float:
    """Time from 800 to 500 C [s] where heat flows off in the plane only (EN 1011-2, annex D; memory).

    (4300 - 4.3 T0) 1e5 Q2/d2 [1/(500 - T0)2 - 1/(800 - T0)2] F2, Q in kJ/mm, d in mm. Start below 500 C.
    """
    heat, thickness = heat_j_per_m / 1e6, thickness_m * 1e3
    drop = 1 / (500 - start_degc) ** 2 - 1 / (800 - start_degc) ** 2
    return (4300 - 4.3 * start_degc) * 1e5 * (heat / thickness) ** 2 * drop * shape_factor


def transition_thickness_m(
    heat_j_per_m: float, start_degc: float, thin_factor: float = 1.0, thick_factor: float = 1.0
) -> float:
    """Thickness [m] at which both branches give the same time (EN 1011-2, annex D; memory). Start below 500 C.

    >>> round(transition_thickness_m(1e6, 20) * 1e3, 1)
    14.7
    """
    heat = heat_j_per_m / 1e6
    ratio = (4300 - 4.3 * start_degc) * 1e5 / (6700 - 5 * start_degc)
    spread = 1 / (500 - start_degc) + 1 / (800 - start_degc)
    return math.sqrt(ratio * heat * spread * thin_factor / thick_factor) / 1e3


def cooling_time_s(
    heat_j_per_m: float,
    thickness_m: float,
    start_degc: float,
    thin_factor: float = 1.0,
    thick_factor: float = 1.0,
) -> float:
    """Time from 800 to 500 C [s]: the longer of the two branches, which is the change at the transition thickness.

    heat_j_per_m, thickness_m -- over nought; start_degc -- below 500 C; the factors are those of the kind of bead [-]

    >>> round(cooling_time_s(1e6, 0.02, 20), 1), round(cooling_time_s(1e6, 0.01, 20), 1)
    (5.3, 11.4)
    """
    return max(
        cooling_time_thick_s(heat_j_per_m, start_degc, thick_factor),
        cooling_time_thin_s(heat_j_per_m, thickness_m, start_degc, thin_factor),
    )


def bulk_rise_k(heat_j_per_m: float, bead_length_m: float, part_kg: float) -> float:
    """Temperature rise [K] of the whole part once the heat has spread, nothing lost: an upper bound (heat balance).

    >>> round(bulk_rise_k(1e6, 0.05, 1.0))  # 50 kJ into a kilogram
    102
    """
    return heat_j_per_m * bead_length_m / (part_kg * SPECIFIC_HEAT_J_PER_KGK)


__all__ = [
    "HARDENS_ABOVE_DEGC",
    "HARDENS_FULLY_ABOVE_DEGC",
    "HEAT_CAPACITY_J_PER_M3K",
    "MELTING_DEGC",
    "SPECIFIC_HEAT_J_PER_KGK",
    "adams_distance_m",
    "bulk_rise_k",
    "cooling_time_s",
    "cooling_time_thick_s",
    "cooling_time_thin_s",
    "heat_input_j_per_m",
    "transition_thickness_m",
    "travel_for_bead_m_per_s",
]
