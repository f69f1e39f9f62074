"""Laws of rope, clips and slings.

The source of each law stands in its docstring."""

from __future__ import annotations

import math

from tests.data.law_tools import (
    Tables,
    away,
    band,
    column,
    groups,
    num,
    rising,
)


def law_clips(tables: Tables) -> list[str]:
    """Spacing is six diameters (NAVEDTRA 14026), cm agree with inches, counts reach 3 D + 1 and do not fall with size."""
    found = []
    for row in tables["wire-rope-clips"]:
        d, value, what = (
            num(row["size_in"]),
            num(row["value"]),
            (row["size_in"], row["quantity"], row["unit"], row["source"]),
        )
        if row["quantity"] == "spacing":
            found += band(
                "wire-rope-clips", what, value - 6 * d * (2.54 if row["unit"] == "cm" else 1), -0.06, 0.06
            )
            if row["unit"] == "in":
                found += away("wire-rope-clips", what, value, 6 * d, 1e-9)
        if row["quantity"].startswith("clips") and row["source"] == "osha-1918":
            found += band("wire-rope-clips", what, value, math.ceil(3 * d + 1), math.ceil(3 * d + 1) + 3)
    for key, group in groups(tables["wire-rope-clips"], "quantity", "unit", "source").items():
        found += rising(
            "wire-rope-clips", key, ((num(r["size_in"]), num(r["value"])) for r in group), strict=False
        )
    for key, group in groups(tables["wire-rope-clips"], "size_in", "quantity", "unit").items():
        if len({r["value"] for r in group}) > 1:
            found.append(f"wire-rope-clips.csv {key}: two sources differ where they agreed when read")
    for size, count in column(tables["wire-rope-clips"], "size_in", quantity="clips_other_material").items():
        forged = column(
            tables["wire-rope-clips"], "size_in", quantity="clips_drop_forged", source="osha-1918"
        ).get(size, math.nan)
        found += band("wire-rope-clips", size, count - forged, 0, 1)
    return found


def law_wire_rope(tables: Tables) -> list[str]:
    """Strength is 51.5 to 54.5 short tons per in2 of d squared and falls slowly; sling = 0.95 and 0.70 of strength / 5, as rounded."""
    rows = [r for r in tables["wire-rope"] if r["rope"] == "6x19_eips_iwrc"]
    strength = column(rows, "size_in", quantity="nominal_breaking_force")
    found = []
    for row in rows:
        base = strength.get(row["size_in"], math.nan)
        what = (row["size_in"], row["quantity"])
        if row["quantity"] == "nominal_breaking_force":
            found += band("wire-rope", what, num(row["value"]) / num(row["size_in"]) ** 2, 51.5, 54.5)
            continue
        wanted = base / 5 * (0.95 if row["quantity"] == "sling_vertical" else 0.70)
        half_step = 0.0055 if wanted < 1 and row["value"] != "1.0" else 0.055
        found += band("wire-rope", what, num(row["value"]) - wanted, -half_step, half_step)
    specific = [(num(s), -load / num(s) ** 2) for s, load in strength.items()]
    found += rising("wire-rope", "strength over d squared falls", specific)
    army = column(tables["wire-rope"], "size_in", rope="6x19_ips_iwrc")
    for size, load in army.items():
        found += band(
            "wire-rope",
            ("improved over extra improved", size),
            load / 2000 / strength.get(size, math.nan),
            0.86,
            0.875,
        )
    return found


def law_rope_bending(tables: Tables) -> list[str]:
    """0027/ND s. 7.8: factor = 1 / (1 - 0.5 / sqrt(D/d)), printed to two places."""
    return [
        p
        for r in tables["rope-bending"]
        for p in band(
            "rope-bending",
            r["bend_ratio"],
            num(r["value"]) - 1 / (1 - 0.5 / math.sqrt(num(r["bend_ratio"]))),
            -0.005,
            0.005,
        )
    ]


def law_rope_terminations(tables: Tables) -> list[str]:
    """An end fitting never adds strength: every factor is 1 to 2."""
    return [
        p
        for r in tables["rope-terminations"]
        for p in band("rope-terminations", r["termination"], num(r["value"]), 1, 2)
    ]


def law_fibre_slings(tables: Tables) -> list[str]:
    """29 CFR 1918 App. II against statics: choker half, basket 2 x cosine, within the rounding of the table; all rise."""
    found = []
    upright = {
        (r["sling"], r["size_in"]): num(r["value"])
        for r in tables["fibre-rope-slings"]
        if r["hitch"] == "vertical"
    }
    for row in tables["fibre-rope-slings"]:
        base = upright.get((row["sling"], row["size_in"]), math.nan)
        what = (row["sling"], row["size_in"], row["hitch"], row["angle_from_vertical"])
        if row["hitch"] == "choker":
            found += band("fibre-rope-slings", what, num(row["value"]) - base / 2, -50, 50)
        elif row["hitch"] == "basket":
            wanted = 2 * base * math.cos(math.radians(num(row["angle_from_vertical"])))
            room = 1e-6 if row["angle_from_vertical"] == "60" else max(122.0, 0.025 * wanted)
            found += band("fibre-rope-slings", what, num(row["value"]) - wanted, -room, room)
    for key, group in groups(tables["fibre-rope-slings"], "sling", "hitch", "angle_from_vertical").items():
        found += rising("fibre-rope-slings", key, ((num(r["size_in"]), num(r["value"])) for r in group))
    for key, group in groups(tables["fibre-rope-slings"], "sling", "size_in").items():
        if len(group) != 6:
            found.append(f"fibre-rope-slings.csv {key}: needs six cells")
    return found


def law_choker_steps(tables: Tables) -> list[str]:
    """The five shares fall from 100 % in even steps of 12.75 %, rounded (smoothness; no source of the step itself)."""
    rows = sorted(
        (r for r in tables["choker-factors"] if r["source"] == "asme-b30-9"),
        key=lambda r: -num(r["choke_angle_from"]),
    )
    found = [
        p
        for i, r in enumerate(rows)
        for p in band(
            "choker-factors", r["choke_angle_from"], num(r["value"]) - (100 - 12.75 * i), -0.51, 0.51
        )
    ]
    froms = [num(r["choke_angle_from"]) for r in rows]
    if froms != [120, 90, 60, 30, 0]:
        found.append("choker-factors.csv: the bands must start at 120, 90, 60, 30 and 0")
    return found


def law_leg_counting(tables: Tables) -> list[str]:
    """Counted legs against printed tables: OSHA rates 3-4 legs as 3; European mode factors are the median of DGUV's printed ratios."""
    found = []
    for row in tables["sling-leg-counting"]:
        value, legs = num(row["value"]), row["legs"]
        if row["source"] == "osha-sling-guidance":
            found += away(
                "sling-leg-counting", legs, value, _osha_legs(tables, "2" if legs == "2" else "3-4"), 0.003
            )
        elif row["source"] == "en-818-4":
            angles = "0-45" if row["quantity"].endswith("0_45") else "45-60"
            found += away(
                "sling-leg-counting",
                (legs, angles),
                value,
                _dguv_ratio(tables, "2" if legs == "2" else "3-4", angles),
                0.02,
            )
        else:
            found += band("sling-leg-counting", (legs, row["source"]), value, 2, 2)
        ours = {"2": 2, "3": 3, "4": 2}[legs]
        if row["quantity"] == "legs_counted" and (row["default"] == "yes") != (value == ours):
            found.append(f"sling-leg-counting.csv {legs}: default marks {ours} legs")
    return found


def _median(values: list[float]) -> float:
    return sorted(values)[len(values) // 2]


def _osha_legs(tables: Tables, legs: str) -> float:
    rows = tables["chain-lifting"]
    one = {(r["grade"], r["size_in"]): num(r["value"]) for r in rows if r["legs"] == "1"}
    return _median(
        [
            num(r["value"])
            / one.get((r["grade"], r["size_in"]), math.nan)
            / math.sin(math.radians(num(r["angle_from_horizontal"])))
            for r in rows
            if r["legs"] == legs
        ]
    )


def _dguv_ratio(tables: Tables, legs: str, angles: str) -> float:
    rows = [r for r in tables["chain-lifting-metric"] if r["hitch"] == "straight"]
    one = {(r["grade"], r["size_mm"]): num(r["value"]) for r in rows if r["legs"] == "1"}
    return _median(
        [
            num(r["value"]) / one.get((r["grade"], r["size_mm"]), math.nan)
            for r in rows
            if (r["legs"], r["angle_from_vertical"]) == (legs, angles)
        ]
    )
