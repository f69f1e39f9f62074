"""Pressed members against printed answers; the source stands beside each."""

from __future__ import annotations

import pytest

from calc.lifting.frame_strength import Post
from calc.lifting.struts import Strut

KSI, INCH, KIP = 6.894757293168361e6, 0.0254, 4448.2216152605


def strut(area_in2: float, second_in4: float, length_in: float, yield_ksi: float) -> Strut:
    post = Post(area_in2 * INCH**2, second_in4 * INCH**4, 1e-4, length_in * INCH)
    return Strut(post, yield_ksi * KSI)


def test_euler() -> None:
    """Hibbeler, Mechanics of Materials, example 13.1: Iy 37 in4, 12 ft pinned: 511 kip; example 13.2: Iy 9.32 in4 on 100.8 in:
    263 kip. Printed with 29,000 ksi, ours with 200 GPa.
    """
    assert strut(9.13, 37, 144, 36).euler_n() / KIP == pytest.approx(511, abs=1)
    assert strut(4.43, 9.32, 100.8, 36).euler_n() / KIP == pytest.approx(262.54, rel=1e-3)


def test_pipe_by_e3() -> None:
    """A verification page after AISC 360-16 E3: pipe 10 x 0.25 in, KL 60 in, 50 ksi: 374.5 kip."""
    second = 7.6576 * 3.448**2
    assert strut(7.6576, second, 60, 50).buckles_n() / KIP == pytest.approx(374.5, abs=0.1)


def test_e3_never_over_euler_or_yield() -> None:
    for length in range(20, 400, 20):
        one = strut(9.13, 37, length, 36)
        assert one.buckles_n() <= min(one.euler_n(), 36 * KSI * 9.13 * INCH**2)
