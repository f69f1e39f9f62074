"""The drawing board: one scale for both axes, y up, words escaped."""

import re
import xml.etree.ElementTree as ElementTree
from typing import Any

import pytest

from calc.figures.drawing import Anchor, Drawing
from calc.trees import markup


def numbers(text: Any) -> Any:
    return [float(n) for n in re.findall(r"-?\d+\.\d", text)]


def test_one_scale_for_both_axes_and_inside_the_margins() -> None:
    drawing = Drawing(400, 300, 50)
    drawing.fit([(0, 0), (2, 1)])
    assert drawing.scale == 150
    assert drawing.place((0, 0)) == (50, 225)
    assert drawing.place((2, 1)) == (350, 75)


def test_a_world_without_width_still_has_a_scale() -> None:
    drawing = Drawing()
    drawing.fit([(3, 3)])
    assert drawing.place((3, 3)) == (pytest.approx(180), pytest.approx(150))


def test_parts_land_where_they_should() -> None:
    drawing = Drawing(200, 200, 50)
    drawing.fit([(0, 0), (1, 1)])
    drawing.line("hidden", (0, 0), (1, 1))
    drawing.area("load", (0, 0), (1, 0), (1, 1))
    drawing.circle("hook", (0, 1), 0.1)
    drawing.circle("pick", (0, 1), 4, on_sheet=True)
    drawing.text((0.5, 0.5), "<3 & more>", shift=(1, 2))
    drawing.arrow((0, 0), (0, 1))
    drawing.arrow((0, 0), (0, 0))
    drawing.dimension((0, 0), (1, 0), "1 m")
    drawing.dimension((1, 1), (1, 0), "down")
    drawing.dimension((0, 0), (0, 1), "up")
    drawing.dimension((0, 0), (0, 0), "nothing")
    for start, end in ((0, 60), (60, 120), (150, 180)):
        drawing.angle((0, 0), start, end, f"{end - start}°")
    svg = markup(drawing.svg("A <test>"))
    root = ElementTree.fromstring(svg)
    assert root.attrib["viewBox"] == "0 0 200 200"
    assert root[0].text == "A <test>"
    assert 'class="line hidden" d="M50.0 150.0 L150.0 50.0"' in svg
    assert 'class="area load" d="M50.0 150.0 L150.0 150.0 L150.0 50.0 Z"' in svg
    assert 'class="hook" cx="50.0" cy="50.0" r="10.0"' in svg
    assert 'class="pick" cx="50.0" cy="50.0" r="4.0"' in svg
    assert "&lt;3 &amp; more&gt;" in svg
    assert "nothing" not in svg
    assert 'text-anchor="start">60°' in svg
    assert 'text-anchor="middle">60°' in svg
    assert 'text-anchor="end">30°' in svg
    assert "style=" not in svg


def test_a_dimension_stands_on_the_left_of_its_way() -> None:
    drawing = Drawing(200, 200, 50)
    drawing.fit([(0, 0), (1, 1)])
    drawing.dimension((1, 0), (0, 0), "below", 20)
    drawing.dimension((0, 0), (1, 0), "above", 20)
    below, above = (
        float(re.findall(rf'y="([\d.]+)"[^>]*>{word}', "".join(map(markup, drawing.parts)))[0])
        for word in ("below", "above")
    )
    assert above < 150 < below


@pytest.mark.parametrize("anchor", ["start", "middle", "end"])
@pytest.mark.parametrize("x", [-40.0, 0.0, 3.0, 150.0, 299.0, 360.0])
def test_words_are_moved_sideways_until_they_stand_on_the_sheet(anchor: Anchor, x: float) -> None:
    drawing = Drawing(300, 200, 20)
    drawing.fit([(0.0, 0.0), (260.0, 160.0)])  # one world unit is one unit of the sheet
    words = "13,300 lb (59 kN)"
    drawing.text((x, 50.0), words, anchor, kind="strong")
    placed = float(re.findall(r'x="([-\d.]+)"', markup(drawing.parts[-1]))[0])
    room = 7.0 * len(words)
    left = placed - room * {"start": 0.0, "middle": 0.5, "end": 1.0}[anchor]
    wanted = x + 20.0 - room * {"start": 0.0, "middle": 0.5, "end": 1.0}[anchor]
    assert left == pytest.approx(min(max(wanted, 2.0), 298.0 - room), abs=0.06)
