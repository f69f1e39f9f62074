"""Laws of the table wire-rope-clips. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.families import default_is_the_strictest
from build_scripts.laws.tools import Row, Tables, away, band, column, groups, num, rising


def _differ(group: list[Row]) -> bool:
    """Whether public texts print different figures, where they agreed when they were read."""
    return len({num(row["value"]) for row in group}) > 1


def law_a_longer_tail_for_more_clips(tables: Tables) -> list[str]:
    """Where one source asks more clips than another its tail grows in the same ratio (clip sheet, notes): within 2.5 %; the
    torque of one size is one in all sources."""
    found = []
    rows = tables["wire-rope-clips"]
    for (size,), group in groups(rows, "size_in").items():
        tails = column([r for r in group if r["quantity"] == "turn_back"], "source")
        clips = column([r for r in group if r["quantity"] == "clips_drop_forged"], "source")
        each = {source: tails[source] / clips[source] for source in tails.keys() & clips.keys()}
        if each and num(size) >= 0.5:
            found += away(
                "wire-rope-clips", (size, "tail a clip"), max(each.values()), min(each.values()), 0.025
            )
        torques = {num(r["value"]) for r in group if r["quantity"] == "torque"}
        if len(torques) > 1:
            found.append(f"wire-rope-clips/claims.csv {size}: torques differ: {sorted(torques)}")
    return found


def law_clips(tables: Tables) -> list[str]:
    """Spacing is six diameters (NAVEDTRA 14026), cm agree with inches, counts reach 3 D + 1 and do not fall with size;
    up to 1/2 in the federal counts are those of 1/2 in, and the greater count is the default."""
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
        default = {r["value"] for r in group if r["default"] == "yes"}
        if len(default) != 1 or max(num(r["value"]) for r in group) != num(min(default)):
            found.append(
                f"wire-rope-clips/claims.csv {key}: the default is not the one greatest figure of its sources"
            )
        public = [r for r in group if r["source"] != "clip-sheet"]
        if len(public) > 1 and num(group[0]["size_in"]) >= 0.5 and _differ(public):
            found.append(f"wire-rope-clips/claims.csv {key}: two sources differ where they agreed when read")
    for size, count in column(tables["wire-rope-clips"], "size_in", quantity="clips_other_material").items():
        forged = column(
            tables["wire-rope-clips"], "size_in", quantity="clips_drop_forged", source="osha-1918"
        ).get(size, math.nan)
        found += band("wire-rope-clips", size, count - forged, 0, 1)
    return found


# 29 CFR 1918 App. II Table 1: three clips for 1/2 in and smaller, where another table prints two.
law_default_is_the_strictest = default_is_the_strictest(
    "wire-rope-clips",
    "size_in",
    printed={(size, "clips_drop_forged"): 3 for size in ("1/8", "3/16", "1/4", "5/16", "3/8", "7/16")},
)
