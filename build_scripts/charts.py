"""Charts of tables, drawn once at build time as SVG: a capacity against size or angle, a strength against heat.

Which tables are drawn, and what stands on each axis, is said in CHARTS. Dots are the printed values; the pieces between
them only lead the eye, save where a rule holds for a whole band of heat: there the line goes in steps, as the rule does.
The upward axis starts at nought, so that heights compare. Colours and line weights belong to the page's style sheet.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from html import escape

from build_scripts.markup import measured, rich
from build_scripts.table_view import key_text, size_number
from calc.tables import NoSuchRow, number, table, table_names


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
    """What to draw: the lines by name, the words on the axes, the unit in the caption's words.

    steps -- each value holds from the point before it up to its own; start is where the first one begins
    ticks -- numbers on the horizontal axis where the points' own would crowd
    legend -- lines that meet at their ends, or have long names, are named above the drawing, not beside their ends
    """

    lines: Callable[[], Lines]
    unit: str
    across_label: str
    up_label: str
    note: str = "The dots are the printed values."
    steps: bool = False
    start: float = 0.0
    ticks: tuple[float, ...] = ()
    legend: bool = False


def _of_rows(
    name: str, across: str, series: str, unit: str, label: str = "", **where: str
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
                words = label or key_text(name, series, row[series])
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
            words = (
                f"{key_text('chain-lifting', 'grade', row['grade'])}, {row['legs'].replace('-', ' or ')} legs"
            )
            angle = row["angle_from_horizontal"]
            found.setdefault(words, []).append(
                Point(float(angle), number(row), f"{angle}°", row["value"], f"{angle}°")
            )
        return found

    return lines


def _heat_by_both() -> Lines:
    """What the American and the European rule leave of one chain's rating while it is hot, and of grade 100."""
    found: Lines = {}
    for row in table("chain-heat-asme").where(quantity="reduction_while_hot"):
        celsius = row["temperature_degC"]
        points = found.setdefault(f"Grade {row['grade']}, ASME", [])
        reach = (
            "to" if points else "at"
        )  # nothing is taken below the first row, and the next row holds from there on
        points.append(Point(float(celsius), 100.0 - number(row), f"{reach} {celsius} °C"))
    return found | _heat_by_en("8")


def _heat_by_en(*grades: str) -> Lines:
    """What the European rule leaves of some of its grades while hot; of all where none is named."""
    found: Lines = {}
    for row in table("chain-heat-en").where(quantity="remaining"):
        if grades and row["grade"] not in grades:
            continue
        celsius = row["temperature_to_degC"]
        points = found.setdefault(f"Grade {row['grade']}, EN", [])
        points.append(Point(float(celsius), number(row), f"to {celsius} °C"))
    return found


def _heat(lines: Callable[[], Lines], note: str) -> Chart:
    return Chart(
        lines,
        "percent",
        "Temperature of the chain, °C",
        "Left of the rating while hot, %",
        f"{note} Each value holds from the step before it up to its dot; past the last dot the chain is not used.",
        steps=True,
        ticks=(0, 100, 200, 300, 400, 500),
        legend=True,
    )


CHARTS: dict[str, tuple[Chart, ...]] = {
    "chain-tie-down": (
        Chart(
            _of_rows("chain-tie-down", "size_in", "grade", "lb"),
            "lb",
            "Chain size, in",
            "Working load limit to tie down, lb",
        ),
    ),
    "chain-lifting": (
        Chart(
            _of_rows("chain-lifting", "size_in", "grade", "lb", legs="1"),
            "lb",
            "Chain size, in",
            "One leg hanging straight, lb",
        ),
        Chart(
            _sling_by_angle("3/8"),
            "lb",
            "Angle of the legs from the horizontal",
            "Whole sling of 3/8 in alloy chain, lb",
            "Flatter legs, smaller lift. The dots are the printed values.",
            legend=True,
        ),
    ),
    "shackles": (
        Chart(
            _of_rows("shackles", "size_in", "grade", "short_ton", quantity="working_load_limit"),
            "short_ton",
            "Bow size, in",
            "Working load limit, short tons",
        ),
    ),
    "rope-bending": (
        Chart(
            _of_rows("rope-bending", "bend_ratio", "quantity", "ratio", "Wire rope"),
            "",
            "Pin over rope diameter, D/d",
            "The rope feels the load this many times",
        ),
    ),
    "chain-heat-asme": (
        _heat(_heat_by_both, "ASME B30.9 and EN 818-6 side by side; grade 80 and grade 8 are one chain."),
    ),
    "chain-heat-en": (
        _heat(_heat_by_en, "EN 818-6."),
        _heat(_heat_by_both, "ASME B30.9 beside it; grade 80 and grade 8 are one chain."),
    ),
    "steel-hot-strength": (
        Chart(
            _of_rows("steel-hot-strength", "temperature_degC", "quantity", "ratio"),
            "",
            "Temperature of the steel, °C",
            "Share of the cold value",
            ticks=(0, 200, 400, 600, 800, 1000, 1200),
            legend=True,
        ),
    ),
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
    parts.append(f'<text x="4" y="18">{escape(spec.up_label)}</text>')
    parts.append(
        f'<text x="{_WIDTH - right:.0f}" y="{height - 8}" text-anchor="end">{escape(spec.across_label)}</text>'
    )
    title = f"{spec.up_label}, against {spec.across_label[0].lower()}{spec.across_label[1:]}"
    return (
        f'<figure class="chart" data-search-exclude><svg class="chart-plot" viewBox="0 0 {_WIDTH} {height}" role="img" '
        f'aria-label="{escape(title)}">{"".join(parts)}</svg>'
        f"<figcaption>{rich(title)}. {rich(spec.note)}{_figures_in_words(spec, lines)}</figcaption></figure>"
    )


def _figures_in_words(spec: Chart, lines: Lines) -> str:
    """Every figure of the chart as text, a paragraph for each line of it; folded where there are many."""
    said = "".join(f"<p>{rich(_said(spec, words, points))}.</p>" for words, points in lines.items())
    if sum(len(points) for points in lines.values()) <= _MOST_AT_ONCE:
        return said
    return f'<details class="fold"><summary>Its figures in words</summary>{said}</details>'


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
