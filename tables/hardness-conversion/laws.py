"""Laws of the table hardness-conversion. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, groups, num, rising


def law_hardness(tables: Tables) -> list[str]:
    """Every column rises with Rockwell; ksi and MPa agree; HV over HB 1.045 to 1.066, MPa over HV 3.08 to 3.245; two strength columns within 20 %.

    MPa is ksi x 6.895 to the megapascal (1.3 off at 30 HRC, 3.2 at 52 HRC as printed). A column is smooth: each figure but
    the outer two at either end stands where a cubic through its four neighbours puts it, within the rounding.
    """
    found = _hardness_is_smooth(tables)
    for key, group in groups(tables["hardness-conversion"], "quantity", "unit", "source").items():
        found += rising("hardness-conversion", key, ((num(r["rockwell_c"]), num(r["value"])) for r in group))
    for (hrc,), group in groups(tables["hardness-conversion"], "rockwell_c").items():
        got = {(r["unit"], r["source"]): num(r["value"]) for r in group}
        mpa, ksi = got.get(("MPa", "astm-e140"), math.nan), got.get(("ksi", "astm-e140"), math.nan)
        room = {"30": 1.3, "52": 3.2}.get(hrc, 0.75)
        found += band("hardness-conversion", (hrc, "ksi against MPa"), mpa - ksi * 6.894757, -room, room)
        found += band(
            "hardness-conversion",
            (hrc, "MPa over HV"),
            mpa / got.get(("HV", "astm-e140"), math.nan),
            3.08,
            3.245,
        )
        if ("HBW", "astm-a370") in got:
            found += band(
                "hardness-conversion",
                (hrc, "HV over HB"),
                got["HV", "astm-e140"] / got["HBW", "astm-a370"],
                1.045,
                1.066,
            )
        if ("MPa", "astm-a370") in got:
            found += band(
                "hardness-conversion", (hrc, "two strengths"), got["MPa", "astm-a370"] / mpa, 1.0, 1.19
            )
    return found


# unit and source of a column of the conversion -> how far a figure may stand from the curve of its neighbours
SMOOTH_WITHIN = {
    ("HV", "astm-e140"): 0.7,
    ("HBW", "astm-a370"): 2.0,
    ("ksi", "astm-e140"): 1.35,
    ("MPa", "astm-a370"): 35.0,
}


PRINTED_BY = {
    ("HV", "astm-e140"),
    ("HBW", "astm-a370"),
    ("ksi", "astm-e140"),
    ("MPa", "astm-e140"),
    ("MPa", "astm-a370"),
}


UNIT_OF = {"vickers": {"HV"}, "brinell": {"HBW"}, "tensile_strength": {"MPa", "ksi"}}


def _cubic_through(points: list[tuple[float, float]], x: float) -> float:
    """Lagrange's polynomial through the points, at x."""
    return sum(
        y * math.prod((x - other) / (place - other) for other, _ in points if other != place)
        for place, y in points
    )


def _hardness_is_smooth(tables: Tables) -> list[str]:
    found = []
    for (unit, source), group in groups(tables["hardness-conversion"], "unit", "source").items():
        if (unit, source) not in PRINTED_BY or any(unit not in UNIT_OF[r["quantity"]] for r in group):
            found.append(f"hardness-conversion/claims.csv: {source} prints no column in {unit}")
            continue
        column_points = sorted((num(r["rockwell_c"]), num(r["value"])) for r in group)
        room = SMOOTH_WITHIN.get((unit, source), math.inf)
        for i in range(2, len(column_points) - 2):
            neighbours = column_points[i - 2 : i] + column_points[i + 1 : i + 3]
            hrc, value = column_points[i]
            what = (hrc, unit, "off the curve of its neighbours")
            found += band("hardness-conversion", what, value - _cubic_through(neighbours, hrc), -room, room)
    return found
