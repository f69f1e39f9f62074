"""Rams and hand pumps: pressure is force over area, and it is the same everywhere in still oil (Pascal).

OpenStax, College Physics 2e, chapter 11 (Pascal's principle). Oil is taken as stiff and seals as free of friction, so a
real ram gives a little less than these figures.
"""

from __future__ import annotations

import math


def ram_area_m2(bore_m: float, rod_m: float = 0.0) -> float:
    """Area that the oil presses on [m2].

    bore_m -- inside diameter of the barrel [m]; rod_m -- diameter of the rod [m] where the oil is on the rod's side (a
    pulling ram), else 0
    """
    return math.pi / 4 * (bore_m**2 - rod_m**2)


def bore_from_area_m(area_m2: float) -> float:
    """The bore [m] that a solid area [m2] comes from."""
    return math.sqrt(4 * area_m2 / math.pi)


def ram_force_n(pressure_pa: float, area_m2: float) -> float:
    """Force of one ram [N] at a pressure [Pa] on its area [m2]."""
    return pressure_pa * area_m2


def pressure_for_force_pa(force_n: float, area_m2: float) -> float:
    """Pressure [Pa] that gives a force [N] on an area [m2]."""
    return force_n / area_m2


def lever_ratio(pivot_to_hand_m: float, pivot_to_piston_m: float) -> float:
    """How many times a lever multiplies the hand's push [-]."""
    return pivot_to_hand_m / pivot_to_piston_m


def pump_pressure_pa(hand_force_n: float, ratio: float, pump_area_m2: float) -> float:
    """Pressure [Pa] of a hand pump: the hand's push [N] times the lever's ratio, over the pump piston's area [m2]."""
    return hand_force_n * ratio / pump_area_m2


def travel_per_stroke_m(pump_stroke_m: float, pump_area_m2: float, ram_area_total_m2: float) -> float:
    """How far the rams move [m] for one stroke [m] of the pump piston: volumes are equal."""
    return pump_stroke_m * pump_area_m2 / ram_area_total_m2
