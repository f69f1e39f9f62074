"""How does a stiff load hang from one hook by two legs that need not be equal?

Side view, both legs in one plane with the balance point. The hook stands where the two lengths meet; the load turns
until the balance point is straight under the hook; the pulls follow from the three forces that meet at the hook
(statics of a rigid body under three forces: their lines meet in one point). More legs: calc.lifting.hanging_load.
"""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class TwoLegHang:
    """How it hangs still: hook in the load's own axes [m], tilt [deg, positive when the left end is down], pull of
    each leg [N] and its angle from the horizontal [deg].
    """

    hook_x_m: float
    hook_y_m: float
    tilt_deg: float
    left_tension_n: float
    right_tension_n: float
    left_angle_deg: float
    right_angle_deg: float


def two_leg_hang(
    spread_m: float, left_m: float, right_m: float, centre_x_m: float, centre_below_m: float, load_n: float
) -> TwoLegHang:
    """The still position of a load on two legs.

    spread_m -- between the picks [m], left pick at x = 0, right pick at x = spread
    left_m, right_m -- leg lengths [m]; centre_x_m -- balance point from the left pick along the load [m]
    centre_below_m -- balance point below the line of the picks [m], not negative; load_n -- weight [N]
    Range: legs long enough to meet, balance point between the legs, so that both pull. ValueError otherwise.
    """
    x = (spread_m**2 + left_m**2 - right_m**2) / (2 * spread_m)
    height_squared = left_m**2 - x**2
    if height_squared <= 0.0:
        raise ValueError("the legs do not meet over the load")
    y = math.sqrt(height_squared)
    tilt = math.atan2(x - centre_x_m, y + centre_below_m)
    left_angle = math.atan2(y, x) + tilt
    right_angle = math.atan2(y, spread_m - x) - tilt
    across = math.sin(left_angle + right_angle)
    left, right = load_n * math.cos(right_angle) / across, load_n * math.cos(left_angle) / across
    if centre_below_m < 0.0 or left <= 0.0 or right <= 0.0:
        raise ValueError("the balance point does not hang between the legs")
    return TwoLegHang(
        x, y, math.degrees(tilt), left, right, math.degrees(left_angle), math.degrees(right_angle)
    )
