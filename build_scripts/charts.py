"""Charts of tables, drawn once at build time as SVG: a capacity against size or angle, a strength against heat.

Which tables are drawn, and what stands on each axis, is said in CHARTS, in which words in the table's file of words. Dots are the printed values; the pieces between
them only lead the eye, save where a rule holds for a whole band of heat: there the line goes in steps, as the rule does.
The upward axis starts at nought, so that heights compare. Colours and line weights belong to the page's style sheet.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from html import escape

from build_scripts import table_words
from build_scripts.markup import measured, rich, set_spans
from build_scripts.table_view import key_text, size_number
from calc.tables import NoSuchRow, number, table, table_names
from calc.words.writer import Spans


@dataclass(frozen=True)
class Point:
    """One value: how far across, how far up, what stands across in words, the value as it is printed, and what stands
    across without its name and unit, for the axis.
    """

    across: float
    up: float
    said: str
    printed: str = ""
    bare: str = ""


Lines = dict[str, list[Point]]


@dataclass(frozen=True)
class Chart:
    """What to draw: the lines by name, the key of its words in the table's file (`chart-KEY`), the unit in the caption.

    steps -- each value holds from the point before it up to its own; start is where the first one begins
    ticks -- numbers on the horizontal axis where the points' own would crowd
    legend -- lines that meet at their ends, or have long names, are named above the drawing, not beside their ends
    """

    table: str
    key: str
    lines: Callable[[], Lines]
    unit: str = ""
    steps: bool = False
    start: float = 0.0
    ticks: tuple[float, ...] = ()
    legend: bool = False

    def says(self, part: str) -> str:
        """What stands along an axis (up, across), or what the chart is called (title)."""
        return table_words.text(self.table, f"chart-{self.key}.{part}")

    @property
    def note(self) -> Spans:
        """What a reader must know of the dots and lines."""
        own = f"chart-{self.key}.note"
        return table_words.say(self.table, own if table_words.has(self.table, own) else "chart-dots")


def _of_rows(
    name: str, across: str, series: str, unit: str, *, label: str = "", **where: str
) -> Callable[[], Lines]:
    """Lines straight from a table's rows: `across` on the horizontal axis, one line for each value of `series`."""

    def lines() -> Lines:
        found: Lines = {}
        for row in table(name).where(unit=unit, **where):
            x = size_number(row[across])
            try:
                y = number(row)
            except NoSuchRow:
                continue
            if x is not None:
                words = table_words.text(name, label) if label else key_text(name, series, row[series])
                point = Point(x, y, key_text(name, across, row[across]), row["value"], row[across])
                found.setdefault(words, []).append(point)
        return found

    return lines


def _sling_by_angle(size_in: str) -> Callable[[], Lines]:
    """The printed cells of whole alloy chain slings of one size, by the angle of the legs."""

    def lines() -> Lines:
        found: Lines = {}
        for row in table("chain-lifting").where(size_in=size_in, unit="lb"):
            if row["legs"] == "1":
                continue
            words = ", ".join(key_text("chain-lifting", key, row[key]) for key in ("grade", "legs"))
            angle = row["angle_from_horizontal"]
            found.setdefault(words, []).append(
                Point(float(angle), number(row), f"{angle}°", row["value"], f"{angle}°")
            )
        return found

    return lines


def _reach(name: str, key: str, celsius: str) -> str:
    return table_words.writer(name).text(key, celsius=celsius)


def _grade_by(name: str, rule: str, grade: str) -> str:
    """The name of a line: a grade, and the rule that it follows."""
    return table_words.writer(name).text(f"chart-{rule}", grade=grade)


def _heat_by_both() -> Lines:
    """What the American and the European rule leave of one chain's rating while it is hot, and of grade 100."""
    found: Lines = {}
    name = "chain-heat-asme"
    for row in table(name).where(quantity="reduction_while_hot"):
        celsius = row["temperature_degC"]
        points = found.setdefault(_grade_by(name, "asme", row["grade"]), [])
        # nothing is taken below the first row, and the next row holds from there on
        reach = _reach(name, "chart-to" if points else "chart-at", celsius)
        points.append(Point(float(celsius), 100.0 - number(row), reach))
    return found | _heat_by_en("8")


def _heat_by_en(*grades: str) -> Lines:
    """What the European rule leaves of some of its grades while hot; of all where none is named."""
    found: Lines = {}
    name = "chain-heat-en"
    for row in table(name).where(quantity="remaining"):
        if grades and row["grade"] not in grades:
            continue
        celsius = row["temperature_to_degC"]
        points = found.setdefault(_grade_by(name, "en", row["grade"]), [])
        points.append(Point(float(celsius), number(row), _reach(name, "chart-to", celsius)))
    return found


def _heat(name: str, key: str, lines: Callable[[], Lines]) -> Chart:
    return Chart(name, key, lines, "percent", steps=True, ticks=(0, 100, 200, 300, 400, 500), legend=True)


_CHARTS = (
    Chart("chain-tie-down", "limit", _of_rows("chain-tie-down", "size_in", "grade", "lb"), "lb"),
    Chart("chain-lifting", "one-leg", _of_rows("chain-lifting", "size_in", "grade", "lb", legs="1"), "lb"),
    Chart("chain-lifting", "angle", _sling_by_angle("3/8"), "lb", legend=True),
    Chart(
        "shackles",
        "limit",
        _of_rows("shackles", "size_in", "grade", "short_ton", quantity="working_load_limit"),
        "short_ton",
    ),
    Chart(
        "rope-bending",
        "bend",
        _of_rows("rope-bending", "bend_ratio", "quantity", "ratio", label="chart-wire-rope"),
    ),
    _heat("chain-heat-asme", "both", _heat_by_both),
    _heat("chain-heat-en", "en", _heat_by_en),
    _heat("chain-heat-en", "both", _heat_by_both),
    Chart(
        "steel-hot-strength",
        "share",
        _of_rows("steel-hot-strength", "temperature_degC", "quantity", "ratio"),
        ticks=(0, 200, 400, 600, 800, 1000, 1200),
        legend=True,
    ),
)
CHARTS: dict[str, tuple[Chart, ...]] = {
    name: tuple(one for one in _CHARTS if one.table == name)
    for name in dict.fromkeys(one.table for one in _CHARTS)
}

_WIDTH, _HEIGHT, _LEFT, _TOP, _BOTTOM = 400, 360, 66, 36, 56
_LETTER, _LEAST_RIGHT, _BESIDE_LEGEND = 8.0, 64, 24
_TICK_ROOM, _MOST_AT_ONCE = 42, 12


def chart(name: str) -> str:
    """The charts of table `name` with their captions as figures; empty where none is declared."""
    if name not in table_names():
        return ""
    return "".join(_figure(spec) for spec in CHARTS.get(name, ()))


def _figure(spec: Chart) -> str:
    lines = {
        words: sorted(points, key=lambda p: p.across)
        for words, points in spec.lines().items()
        if len(points) > 1
    }
    if not lines:
        return ""
    every = [point for points in lines.values() for point in points]
    low = min([p.across for p in every] + list(spec.ticks) + ([spec.start] if spec.steps else []))
    high = max([p.across for p in every] + list(spec.ticks))
    top = _ceiling(max(p.up for p in every))
    widest = 18 + _LETTER * max(len(words) for words in lines)
    height = _HEIGHT + (12 + 22 * len(lines) if spec.legend else 0)
    right = _BESIDE_LEGEND if spec.legend else max(_LEAST_RIGHT, widest)

    def place(x: float, y: float) -> tuple[float, float]:
        share = (x - low) / (high - low)
        across = _LEFT + share * (_WIDTH - _LEFT - right)
        return across, height - _BOTTOM - y / top * (_HEIGHT - _TOP - _BOTTOM)

    parts = _up_axis(top, _WIDTH - right, place) + _across_axis(spec, every, place)
    ends: list[float] = []
    for number_of_line, (words, points) in enumerate(sorted(lines.items(), key=lambda item: -item[1][-1].up)):
        stroke = number_of_line % 6
        parts.append(f'<path class="line line-{stroke}" d="{_path(spec, points, place)}"/>')
        for point in points:
            x, y = place(point.across, point.up)
            parts.append(f'<circle class="dot dot-{stroke}" cx="{x:.1f}" cy="{y:.1f}" r="4"/>')
        if spec.legend:
            parts += _named(words, stroke, 42 + 22 * number_of_line)
            continue
        x, y = place(points[-1].across, points[-1].up)
        label_y = y + 5
        while any(abs(label_y - other) < 17 for other in ends):
            label_y += 4
        ends.append(label_y)
        parts.append(f'<text x="{x + 10:.1f}" y="{label_y:.1f}">{escape(words)}</text>')
    parts.append(f'<text x="4" y="18">{escape(spec.says("up"))}</text>')
    parts.append(
        f'<text x="{_WIDTH - right:.0f}" y="{height - 8}" text-anchor="end">{escape(spec.says("across"))}</text>'
    )
    title = spec.says("title")
    return (
        f'<figure class="chart" data-search-exclude><svg class="chart-plot" viewBox="0 0 {_WIDTH} {height}" role="img" '
        f'aria-label="{escape(title)}">{"".join(parts)}</svg>'
        f"<figcaption>{rich(title)}. {set_spans(spec.note)}{_figures_in_words(spec, lines)}</figcaption></figure>"
    )


def _figures_in_words(spec: Chart, lines: Lines) -> str:
    """Every figure of the chart as text, a paragraph for each line of it; folded where there are many."""
    said = "".join(f"<p>{rich(_said(spec, words, points))}.</p>" for words, points in lines.items())
    if sum(len(points) for points in lines.values()) <= _MOST_AT_ONCE:
        return said
    folded = rich(table_words.text(spec.table, "chart-in-words"))
    return f'<details class="fold"><summary>{folded}</summary>{said}</details>'


def _named(words: str, stroke: int, y: float) -> list[str]:
    return [
        f'<path class="line line-{stroke}" d="M4 {y:.0f}h44"/>',
        f'<text x="58" y="{y + 5:.0f}">{escape(words)}</text>',
    ]


Place = Callable[[float, float], tuple[float, float]]


def _up_axis(top: float, end_x: float, place: Place) -> list[str]:
    parts = []
    for count in range(6):
        value = top / 5 * count
        _, y = place(0.0, value)
        kind = "axis" if count == 0 else "hair"
        parts.append(f'<path class="{kind}" d="M{_LEFT} {y:.1f}H{end_x:.0f}"/>')
        words = f"{value:,.0f}" if value >= 1000 else f"{value:.4g}"
        parts.append(f'<text class="soft" x="{_LEFT - 8}" y="{y + 5:.1f}" text-anchor="end">{words}</text>')
    return parts


def _across_axis(spec: Chart, every: list[Point], place: Place) -> list[str]:
    ticks = {x: f"{x:g}" for x in spec.ticks} or {p.across: p.bare for p in every}
    parts, last = [], -100.0
    for x, text in sorted(ticks.items()):
        at_x, at_y = place(x, 0.0)
        parts.append(f'<path class="axis" d="M{at_x:.1f} {at_y:.1f}v6"/>')
        if at_x - last > _TICK_ROOM:
            parts.append(
                f'<text class="soft" x="{at_x:.1f}" y="{at_y + 22:.1f}" text-anchor="middle">{escape(text)}</text>'
            )
            last = at_x
    return parts


def _path(spec: Chart, points: list[Point], place: Place) -> str:
    if not spec.steps:
        return "M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in (place(p.across, p.up) for p in points))
    x, y = place(spec.start, 100.0)
    path = f"M{x:.1f} {y:.1f}"
    if points[0].up < 100.0:
        path += f"H{place(points[0].across, 0.0)[0]:.1f}"
    for point in points:
        x, y = place(point.across, point.up)
        path += f"V{y:.1f}H{x:.1f}"
    return f"{path}V{place(0.0, 0.0)[1]:.1f}"


def _said(spec: Chart, words: str, points: list[Point]) -> str:
    return f"{words}: " + ", ".join(
        f"{p.said} = {measured(p.printed or _figures(p.up), spec.unit)}" for p in points
    )


def _figures(value: float) -> str:
    return f"{value:,.6g}" if value >= 1 else f"{value:.3g}"


def _ceiling(value: float) -> float:
    """A round number at or above `value` that five equal steps divide well."""
    power = 10 ** math.floor(math.log10(value))
    return float(next(m * power for m in (1, 1.5, 2, 2.5, 3, 4, 5, 7.5, 10) if m * power >= value))
