"""Charts and the marks of disagreement: drawn to scale from the printed cells, and said in words."""

import re
from typing import Any

import pytest

from build_scripts import charts
from build_scripts.table_view import view
from calc.tables import table

FIGURE = re.compile(r'<figure class="chart".*?</figure>', re.DOTALL)


def dots(figure: Any) -> Any:
    return [
        tuple(map(float, found)) for found in re.findall(r'<circle[^>]* cx="([\d.]+)" cy="([\d.]+)"', figure)
    ]


@pytest.mark.parametrize("name", charts.CHARTS)
def test_every_chart_says_itself_in_words_and_fits_its_frame(name: Any) -> None:
    figures = FIGURE.findall(charts.chart(name))
    assert len(figures) == len(charts.CHARTS[name])
    for figure in figures:
        width, height = map(int, re.findall(r'viewBox="0 0 (\d+) (\d+)"', figure)[0])
        assert dots(figure)
        assert all(0 < x < width and 0 < y < height for x, y in dots(figure))
        said = re.findall(r"<figcaption>(.+)</figcaption>", figure)[0]
        assert said.count(" = ") == len(dots(figure))  # every dot is said, not the ends of a line alone
        assert len({y for _, y in dots(figure)}) > 2


def test_a_shackle_chart_says_the_printed_fractions() -> None:
    """RR-C-271: grade A 1/2 in carries 2 short tons, 5/8 in 3-1/4."""
    said = re.sub(r"<[^>]+>", "", charts.chart("shackles"))
    assert "1/2 in = 2 short tons, 5/8 in = 3-1/4 short tons" in said


def test_a_table_without_a_chart_has_none() -> None:
    assert charts.chart("densities") == ""
    assert charts.chart("no-such-table") == ""


def test_heights_are_to_scale() -> None:
    """0027/ND, Table 7-1: 2.00 at a ratio of 1 and 1.41 at 3. The axis starts at nought, so heights are as these."""
    figure = charts.chart("rope-bending")
    foot = float(re.findall(r'class="axis" d="M[\d.]+ ([\d.]+)H', figure)[0])
    heights = [foot - y for _, y in dots(figure)]
    assert heights[3] / heights[0] == pytest.approx(1.41 / 2.0, abs=0.002)
    lefts = [x for x, _ in dots(figure)]
    assert (lefts[3] - lefts[0]) / (lefts[-1] - lefts[0]) == pytest.approx(2 / 6, abs=0.002)


def test_flatter_legs_stand_lower_in_the_sling_chart() -> None:
    """OSHA, Guidance on Safe Sling Use, Table 1: 3/8 in grade 80, two legs: 12,300, 10,000 and 7,100 lb."""
    figure = FIGURE.findall(charts.chart("chain-lifting"))[1]
    assert "Grade 80, 2 legs: 30° = 7,100 lb, 45° = 10,000 lb, 60° = 12,300 lb" in figure


def test_both_heat_rules_stand_in_one_chart() -> None:
    """ASME B30.9 leaves 80 % of grade 80 at 316 C; EN 818-6 leaves 75 % of grade 8 to 400 C."""
    figure = charts.chart("chain-heat-asme")
    assert "to 316 °C = 80%" in figure
    assert "to 400 °C = 75%" in figure
    assert "Grade 80, ASME: at 204 °C = 90%" in figure


def marks(name: Any) -> Any:
    return {
        (line.source or column.heading, shown.value, shown.choice)
        for wide in view(name).wides
        for line in wide.lines
        for column, cell in zip(wide.columns, line.cells, strict=True)
        for shown in cell
    }


def test_where_sources_differ_ours_is_named_and_stands_first() -> None:
    """WAC 296-155 Table 12 ends a hook at 5 % of throat, 29 CFR 1910.184 at 15 %: the stricter is ours."""
    hook = view("hook-limits").wides[0].lines
    throat = [line.cells[0][0] for line in hook if dict(line.keys).get("quantity") == "throat_increase"]
    assert [shown.value for shown in throat[:2]] == ["5", "5"]
    assert [shown.choice for shown in throat] == ["ours"] * 2 + ["other"] * 4
    assert ("Australian vehicle recovery manual", "3", "ours") in marks("chain-limits")
    assert not any("Default" in wide.head_names for wide in view("hook-limits").wides)


def test_what_nobody_disputes_is_not_marked() -> None:
    choices = {choice for _, value, choice in marks("hook-limits") if value == "10" for choice in [choice]}
    assert "" in choices
    assert {choice for _, _, choice in marks("wire-rope-limits")} == {""}
    assert not view("wire-rope-limits").has_choice


CONTESTED = (
    "chain-wear", "hook-limits", "chain-limits", "shackle-limits", "wire-rope-clips", "sling-leg-counting",
    "sling-temperature-limits",
)  # fmt: skip


@pytest.mark.parametrize("name", CONTESTED)
def test_every_row_that_is_not_taken_stands_beside_one_that_is_marked(name: Any) -> None:
    assert any(row["default"] == "no" for row in table(name).rows)
    assert view(name).has_choice


def test_the_counts_of_sling_legs_are_marked_by_number_of_legs() -> None:
    ours = {(heading, value) for heading, value, choice in marks("sling-leg-counting") if choice == "ours"}
    assert {value for _, value in ours} == {"2"}
    assert "Mode factor, 0 to 45° from the vertical" in {
        line.heads[1] for wide in view("sling-leg-counting").wides for line in wide.lines
    }
