"""Small statistics against printed figures."""

import pytest

from calc.pulling.statistics_of_few import failure_bound, least_squares, rule_of_three, student_t_factor


# JCGM 100:2008, Table G.2, column 95 percent (from memory of the printed table; any t table prints the same).
@pytest.mark.parametrize(
    ("dof", "printed"), [(1, 12.71), (2, 4.30), (3, 3.18), (5, 2.57), (10, 2.23), (20, 2.09), (50, 2.01)]
)
def test_t_table(dof: int, printed: float) -> None:
    assert round(student_t_factor(dof), 2) == printed


def test_rule_of_three() -> None:
    """Hanley and Lippman-Hand, JAMA 1983: no event in n gives an upper bound of about 3/n; 0 of 14 gives 21 percent by
    the rule (from memory of the paper) and 1 - 0.05^(1/14) = 19.3 percent exactly.
    """
    assert rule_of_three(14) == pytest.approx(0.214, abs=0.0005)
    assert failure_bound(14) == pytest.approx(0.193, abs=0.0005)
    assert rule_of_three(2) == 1.0


def test_thermometer_of_the_gum() -> None:
    """JCGM 100:2008, H.3, Table H.6: eleven corrections of a thermometer on a straight line about 20 C: y1 = -0.1712 C,
    s = 0.0029, y2 = 0.00218, s = 0.00067, scatter 0.0035 (data and results from memory of the table).
    """
    t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511]
    b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160]
    line = least_squares([value - 20.0 for value in t], b)
    assert line.offset == pytest.approx(-0.1712, abs=5e-5)
    assert line.slope == pytest.approx(0.00218, abs=5e-6)
    assert line.offset_uncertainty == pytest.approx(0.0029, abs=5e-5)
    assert line.slope_uncertainty == pytest.approx(0.00067, abs=5e-6)
    assert line.scatter == pytest.approx(0.0035, abs=5e-5)
