"""Charts of tables, drawn once at build time as SVG: a capacity against size, one line a grade.

Which tables are drawn, and what stands on each axis, is said in CHARTS. Points are the printed values; the straight
pieces between them only lead the eye. Colours and line weights belong to the page's style sheet.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from html import escape

from build_scripts.markup import unit_name
from build_scripts.table_view import key_text, size_number
from calc.tables import NoSuchRow, number, table, table_names


@dataclass(frozen=True)
class Chart:
    """What to draw: `across` on the horizontal axis, one line for each value of `series`, rows as `where` says."""

    across: str
    series: str
    unit: str
    across_label: str
    up_label: str
    where: tuple[tuple[str, str], ...] = ()


CHARTS: dict[str, Chart] = {
    "chain-tie-down": Chart("size_in", "grade", "lb", "Chain size, in", "Working load limit to tie down, lb"),
    "chain-lifting": Chart(
        "size_in", "grade", "lb", "Chain size, in", "One leg hanging straight, lb", (("legs", "1"),)
    ),
    "shackles": Chart(
        "size_in", "grade", "short_ton", "Bow size, in", "Working load limit, short tons",
        (("quantity", "working_load_limit"),),
    ),
}  # fmt: skip

_WIDTH, _HEIGHT, _LEFT, _RIGHT, _TOP, _BOTTOM = 500, 400, 66, 84, 36, 56


def chart(name: str) -> str:
    """The chart of table `name` with its caption as a figure; empty where none is declared."""
    spec = CHARTS.get(name)
    if spec is None or name not in table_names():
        return ""
    lines: dict[str, list[tuple[float, float, str]]] = {}
    for row in table(name).where(unit=spec.unit, **dict(spec.where)):
        x = size_number(row[spec.across])
        try:
            y = number(row)
        except NoSuchRow:
            continue
        if x is not None:
            lines.setdefault(row[spec.series], []).append((x, y, row[spec.across]))
    lines = {key: sorted(points) for key, points in lines.items() if len(points) > 1}
    if not lines:
        return ""
    low_x, high_x = min(p[0] for s in lines.values() for p in s), max(p[0] for s in lines.values() for p in s)
    top = _ceiling(max(p[1] for s in lines.values() for p in s))
    step = top / 5

    def place(x: float, y: float) -> tuple[float, float]:
        across = (x - low_x) / (high_x - low_x) if high_x > low_x else 0.5
        return (
            _LEFT + across * (_WIDTH - _LEFT - _RIGHT),
            _HEIGHT - _BOTTOM - y / top * (_HEIGHT - _TOP - _BOTTOM),
        )

    parts = []
    for count in range(6):
        x0, y0 = place(low_x, step * count)
        kind = "axis" if count == 0 else "hair"
        parts.append(f'<path class="{kind}" d="M{x0:.0f} {y0:.1f}H{_WIDTH - _RIGHT}"/>')
        words = f"{step * count:,.0f}" if step * count >= 1000 else f"{step * count:.4g}"
        parts.append(f'<text class="soft" x="{_LEFT - 8}" y="{y0 + 5:.1f}" text-anchor="end">{words}</text>')
    ticks: dict[float, str] = {p[0]: p[2] for s in lines.values() for p in s}
    last = -100.0
    for x, text in sorted(ticks.items()):
        px, py = place(x, 0)
        parts.append(f'<path class="axis" d="M{px:.1f} {py:.1f}v6"/>')
        if px - last > 34:
            parts.append(
                f'<text class="soft" x="{px:.1f}" y="{py + 22:.1f}" text-anchor="middle">{escape(text)}</text>'
            )
            last = px
    ends: list[float] = []
    for place_in, (key, points) in enumerate(sorted(lines.items(), key=lambda item: -item[1][-1][1])):
        path = "M" + "L".join(f"{px:.1f} {py:.1f}" for px, py in (place(x, y) for x, y, _ in points))
        stroke = place_in % 6
        parts.append(f'<path class="line line-{stroke}" d="{path}"/>')
        parts.extend(
            f'<circle class="dot dot-{stroke}" cx="{px:.1f}" cy="{py:.1f}" r="4"/>'
            for px, py in (place(x, y) for x, y, _ in points)
        )
        end_x, end_y = place(points[-1][0], points[-1][1])
        label_y = end_y + 5
        while any(abs(label_y - other) < 17 for other in ends):
            label_y += 4
        ends.append(label_y)
        label = escape(key_text(name, spec.series, key))
        parts.append(f'<text x="{end_x + 10:.1f}" y="{label_y:.1f}">{label}</text>')
    parts.append(f'<text x="{_LEFT}" y="18">{escape(spec.up_label)}</text>')
    parts.append(
        f'<text x="{_WIDTH - _RIGHT}" y="{_HEIGHT - 8}" text-anchor="end">{escape(spec.across_label)}</text>'
    )
    title = f"{spec.up_label}, against {spec.across_label[0].lower()}{spec.across_label[1:]}"
    said = "; ".join(
        f"{key_text(name, spec.series, key)} from {points[0][1]:,.6g} to {points[-1][1]:,.6g} {unit_name(spec.unit)}"
        for key, points in lines.items()
    )
    return (
        f'<figure class="chart" data-search-exclude><svg class="chart-plot" viewBox="0 0 {_WIDTH} {_HEIGHT}" role="img" '
        f'aria-label="{escape(title)}">{"".join(parts)}</svg>'
        f"<figcaption>{escape(title)}. {escape(said)}. The dots are the printed values.</figcaption></figure>"
    )


def _ceiling(value: float) -> float:
    """A round number at or above `value` that five equal steps divide well."""
    power = 10 ** math.floor(math.log10(value))
    return float(next(m * power for m in (1, 1.5, 2, 2.5, 3, 4, 5, 7.5, 10) if m * power >= value))
