"""What is the smallest step that the dial shows? Found from its readings alone."""

from __future__ import annotations

from collections.abc import Sequence

from calc.quantities import to_si

_STEPS_M = tuple(
    sorted(
        (
            to_si(digit * 10.0**power, unit, "length")
            for unit in ("in", "mm")
            for power in range(-6, 1)
            for digit in (1, 2, 5)
        ),
        reverse=True,
    )
)
"""Steps of dials and scales [m]: one, two or five of a decimal place of an inch or a millimetre."""
_OFF_A_STEP = 1e-3
"""How far off a whole number of steps a reading may be, as a share of the step and of all the opening [-]."""


def step_shown_m(gaps_m: Sequence[float]) -> float:
    """The step of the dial [m]: the widest of which every reading is a whole number; nothing where there is none.

    >>> round(step_shown_m([0.0254 * gap for gap in (2.0, 2.0005, 2.0015)]) / 0.0254, 6)
    0.0005
    """
    span_m = max(gaps_m) - min(gaps_m)

    def fits(step_m: float) -> bool:
        near_m = _OFF_A_STEP * min(step_m, span_m)
        return all(abs(gap_m - step_m * round(gap_m / step_m)) <= near_m for gap_m in gaps_m)

    return next((step_m for step_m in _STEPS_M if fits(step_m)), 0.0)


__all__ = ["step_shown_m"]
