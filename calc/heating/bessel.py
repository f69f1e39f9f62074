"""The two modified Bessel functions that the heat of a moving line of fire needs.

K0 and K1 by the polynomials of Abramowitz and Stegun, Handbook of Mathematical Functions, 9.8.1, 9.8.3 and 9.8.5
to 9.8.8 (error under 2.2e-7 of the value), scaled by exp(x) so that large arguments neither vanish nor overflow.
"""

from __future__ import annotations

import math


def k0_scaled(x: float) -> float:
    """exp(x) K0(x) [-] for x > 0; Abramowitz and Stegun 9.8.5 (x <= 2) and 9.8.6."""
    if x <= 2.0:
        t = (x / 3.75) ** 2
        i0 = 1.0 + t * (
            3.5156229 + t * (3.0899424 + t * (1.2067492 + t * (0.2659732 + t * (0.0360768 + t * 0.0045813))))
        )
        y = x * x / 4
        return math.exp(x) * (
            -math.log(x / 2) * i0 - 0.57721566
            + y * (0.42278420 + y * (0.23069756 + y * (0.03488590 + y * (0.00262698 + y * (0.00010750 + y * 0.00000740)))))
        )  # fmt: skip
    z = 2.0 / x
    return (
        1.25331414
        + z * (-0.07832358 + z * (0.02189568 + z * (-0.01062446 + z * (0.00587872 + z * (-0.00251540 + z * 0.00053208)))))
    ) / math.sqrt(x)  # fmt: skip


def k1_scaled(x: float) -> float:
    """exp(x) K1(x) [-] for x > 0; Abramowitz and Stegun 9.8.7 (x <= 2) and 9.8.8."""
    if x <= 2.0:
        t = (x / 3.75) ** 2
        i1 = x * (
            0.5 + t * (0.87890594 + t * (0.51498869 + t * (0.15084934 + t * (0.02658733 + t * (0.00301532 + t * 0.00032411)))))
        )  # fmt: skip
        y = x * x / 4
        return math.exp(x) * (
            math.log(x / 2) * i1
            + (1.0 + y * (0.15443144 + y * (-0.67278579 + y * (-0.18156897 + y * (-0.01919402 + y * (-0.00110404 + y * -0.00004686)))))) / x
        )  # fmt: skip
    z = 2.0 / x
    return (
        1.25331414
        + z * (0.23498619 + z * (-0.03655620 + z * (0.01504268 + z * (-0.00780353 + z * (0.00325614 + z * -0.00068245)))))
    ) / math.sqrt(x)  # fmt: skip


__all__ = ["k0_scaled", "k1_scaled"]
