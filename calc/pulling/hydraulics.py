"""Rams and hand pumps: pressure is force over area, and it is the same everywhere in still oil (Pascal).

OpenStax, College Physics 2e, chapter 11 (Pascal's principle). Oil is taken as stiff and seals as free of friction, so a
real ram gives a little less than these figures.
"""

from __future__ import annotations

import math


def ram_area_m2(bore_m: float, rod_m: float = 0.0) -> float:
    """Area that the oil presses on [m2]: pi/4 (bore2 - rod2).

    bore_m -- inside diameter of the barrel [m], over 0
    rod_m -- diameter of the rod [m], under the bore, where the oil is on the rod's side (a pulling ram), else 0

    >>> round(ram_area_m2(0.050), 9), round(ram_area_m2(0.050, 0.030), 9)
    (0.001963495, 0.001256637)
    """
    return math.pi / 4 * (bore_m**2 - rod_m**2)


def bore_from_area_m(area_m2: float) -> float:
    """The bore [m] that a solid area [m2], over 0, comes from.

    >>> round(bore_from_area_m(ram_area_m2(0.050)), 12)
    0.05
    """
    return math.sqrt(4 * area_m2 / math.pi)


def ram_force_n(pressure_pa: float, area_m2: float) -> float:
    """Force of one ram [N] at a pressure [Pa], 0 or more, on its area [m2], over 0.

    >>> ram_force_n(31e6, 0.002)
    62000.0
    """
    return pressure_pa * area_m2


def pressure_for_force_pa(force_n: float, area_m2: float) -> float:
    """Pressure [Pa] that gives a force [N], 0 or more, on an area [m2], over 0.

    >>> pressure_for_force_pa(62_000.0, 0.002)
    31000000.0
    """
    return force_n / area_m2


def lever_ratio(pivot_to_hand_m: float, pivot_to_piston_m: float) -> float:
    """How many times a lever multiplies the hand's push [-]: arm [m] over arm [m], both over 0.

    >>> lever_ratio(0.60, 0.03)
    20.0
    """
    return pivot_to_hand_m / pivot_to_piston_m


def pump_pressure_pa(hand_force_n: float, ratio: float, pump_area_m2: float) -> float:
    """Pressure [Pa] of a hand pump: the hand's push [N] times the lever's ratio [-], over the pump piston's area [m2].

    >>> pump_pressure_pa(100.0, 20.0, 1e-4)
    20000000.0
    """
    return hand_force_n * ratio / pump_area_m2


def travel_per_stroke_m(pump_stroke_m: float, pump_area_m2: float, ram_area_total_m2: float) -> float:
    """How far the rams move [m] for one stroke [m] of the pump piston: the volumes [m3] are equal.

    >>> travel_per_stroke_m(0.05, 0.0025, 0.0100)
    0.0125
    """
    return pump_stroke_m * pump_area_m2 / ram_area_total_m2


__all__ = [
    "bore_from_area_m",
    "lever_ratio",
    "pressure_for_force_pa",
    "pump_pressure_pa",
    "ram_area_m2",
    "ram_force_n",
    "travel_per_stroke_m",
]
