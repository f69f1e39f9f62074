"""How wide is the softened band beside a bead in a hardened and tempered test piece?

The heat cycle of each place (calc.heating.moving_heat) is run through the tempering rule (calc.heating.tempering) for
4140. Two bounds: the rule with the short cycle a bead gives, and, as the pessimist would, an hour at the peak. Only the
steel outside the hard zone counts: inside it the steel turned to austenite and sets hard.
"""

from __future__ import annotations

from collections.abc import Callable

from calc.heating.moving_heat import MovingArc, peak, surface_distance_m, temperature_rise_k
from calc.heating.tempering import USUAL_CONSTANT, cycle_parameter, parameter, tempered_steel

_NOTICED = 0.02
"""Share of strength whose loss counts as softened."""
_STEPS = 48
"""Steps in which the cycle of a place is run."""
_HALVINGS = 16


def _left_by_cycle(arc: MovingArc, start_degc: float, aside_m: float, tempered_at_degc: float) -> float:
    """Share of its strength that a 4140 test piece at a place keeps, by the cycle the bead gives it."""
    steel = tempered_steel("4140")
    before = parameter(tempered_at_degc, 1.0)
    summit = peak(arc, aside_m, 0.0)
    lag = summit.behind_m + aside_m
    heats: list[tuple[float, float]] = []
    for step in range(_STEPS):
        along = lag * (1.2 - 5.0 * (step + 0.5) / _STEPS) - summit.behind_m
        degc = start_degc + temperature_rise_k(arc, along, aside_m, 0.0)
        if degc > 100.0:
            heats.append((degc, 5.0 * lag / _STEPS / arc.travel_m_per_s / 3600))
    at_first = steel.as_tempered_pa(tempered_at_degc)
    left = steel.strength_pa(cycle_parameter(heats, USUAL_CONSTANT, before)) if heats else at_first
    return _softest_where_unknown(left) / at_first


def _left_after_an_hour(peak_degc: float, tempered_at_degc: float) -> float:
    """Share of its strength that the test piece keeps after an hour at the peak."""
    steel = tempered_steel("4140")
    before = parameter(tempered_at_degc, 1.0)
    left = steel.strength_pa(cycle_parameter([(peak_degc, 1.0)], USUAL_CONSTANT, before))
    return _softest_where_unknown(left) / steel.as_tempered_pa(tempered_at_degc)


def _softest_where_unknown(strength_pa: float | None) -> float:
    """A strength [Pa], and none at all where the heat went past the softest test piece."""
    return 0.0 if strength_pa is None else strength_pa


def softened_beyond_m(
    arc: MovingArc, start_degc: float, hard_degc: float, tempered_at_degc: float
) -> tuple[float, float] | None:
    """Least and greatest width [m] of the softened band outside the hard zone, on the face.

    tempered_at_degc -- within the tempering data of 4140 (205 to 650 C); outside them None
    """
    steel = tempered_steel("4140")
    if not steel.coolest_degc <= tempered_at_degc <= steel.hottest_degc:
        return None
    inner = surface_distance_m(arc, hard_degc - start_degc)
    outer = surface_distance_m(arc, 0.7 * (tempered_at_degc - start_degc))

    def by_cycle(aside: float) -> float:
        return _left_by_cycle(arc, start_degc, aside, tempered_at_degc)

    def by_hour(aside: float) -> float:
        return _left_after_an_hour(start_degc + peak(arc, aside, 0.0).rise_k, tempered_at_degc)

    widths = [_edge_m(left, inner, outer) - inner for left in (by_cycle, by_hour)]
    return min(widths), max(widths)


def _edge_m(left: Callable[[float], float], inner_m: float, outer_m: float) -> float:
    """How far out [m] the loss of strength is noticed, by halving; `left` is the share that a place keeps."""
    low, high = inner_m, outer_m
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if left(middle) < 1 - _NOTICED:
            low = middle
        else:
            high = middle
    return low


__all__ = ["softened_beyond_m"]
