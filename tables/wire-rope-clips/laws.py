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

CLIP_BOLT_IN = {
    "1/8": "7/32",
    "3/16": "1/4",
    "1/4": "5/16",
    "5/16": "3/8",
    "3/8": "7/16",
    "7/16": "1/2",
    "1/2": "1/2",
    "9/16": "9/16",
    "5/8": "9/16",
    "3/4": "5/8",
    "7/8": "3/4",
    "1": "3/4",
    "1-1/8": "3/4",
    "1-1/4": "7/8",
    "1-3/8": "7/8",
    "1-1/2": "7/8",
    "1-5/8": "1",
    "1-3/4": "1-1/8",
    "2": "1-1/4",
    "2-1/4": "1-1/4",
}
"""Diameter of the U-bolt of a clip by rope size [in]: from memory of the trade's sizes, no source."""


def _torques(tables: Tables) -> dict[str, float]:
    """Rope size -> torque [lbf.ft]."""
    return column(tables["wire-rope-clips"], "size_in", quantity="torque")


def law_one_stress_in_the_bolts(tables: Tables) -> list[str]:
    """A bolt takes torque as its diameter cubed (torque = nut factor x diameter x force, force as diameter squared).

    Torque over diameter cubed is 515 to 545 lbf.ft/in3 from 3/8 to 1-1/2 in. Smaller bolts are tightened less, the less the
    smaller (wrench torque grows sensitive); bolts of 1 in and more are again tightened less, the less the larger.
    """
    stress = {
        size: torque / num(CLIP_BOLT_IN[size]) ** 3
        for size, torque in _torques(tables).items()
        if size in CLIP_BOLT_IN
    }
    if stress.keys() != CLIP_BOLT_IN.keys():
        return ["wire-rope-clips/claims.csv: a torque is wanted for each rope size from 1/8 to 2-1/4 in"]
    found = []
    for size, one in stress.items():
        low, high = (515, 545) if 0.375 <= num(size) <= 1.5 else (380, 575)
        found += band("wire-rope-clips", (size, "torque over bolt diameter cubed"), one, low, high)
    small = ((num(size), one) for size, one in stress.items() if num(size) <= 0.3125)
    found += rising("wire-rope-clips", "torque over bolt diameter cubed, to 5/16 in", small)
    large = ((-num(size), one) for size, one in stress.items() if num(size) >= 1.5)
    return found + rising(
        "wire-rope-clips", "torque over bolt diameter cubed, from 1-1/2 in", large, strict=False
    )


def law_clips_press_as_hard_as_the_rope_is_strong(tables: Tables) -> list[str]:
    """What all clips press together (count x torque / bolt diameter) keeps step with the breaking force of the rope.

    The rope is that of the table wire-rope (6x19, steel core), 1/4 to 1 in: 24 to 30.5 lbf.ft/in for each short ton. The
    counts are those that go with the torque: of the sources that print one, the fewest.
    """
    strength = column(
        tables["wire-rope"], "size_in", quantity="nominal_breaking_force", rope="6x19_eips_iwrc"
    )
    found = []
    rows = tables["wire-rope-clips"]
    beside_a_torque = {row["source"] for row in rows if row["quantity"] == "turn_back"}
    for size, torque in _torques(tables).items():
        if size in strength:
            counts = [
                num(row["value"])
                for row in rows
                if row["size_in"] == size
                and row["quantity"] == "clips_drop_forged"
                and row["source"] in beside_a_torque
            ]
            pressed = min(counts, default=math.nan) * torque / num(CLIP_BOLT_IN[size])
            found += band("wire-rope-clips", (size, "clamping"), pressed / strength[size], 24, 30.5)
    return found


def law_a_thin_rope_wants_more_diameters_of_tail(tables: Tables) -> list[str]:
    """With one count of clips the tail counted in rope diameters falls as the rope gets thicker (to 7/16 in, two clips).

    A clip is wider for its rope the thinner the rope is, for nuts and fingers do not shrink with it (own reasoning). Of two
    printed tails the longer counts.
    """
    tails: dict[float, float] = {}
    for row in tables["wire-rope-clips"]:
        size = num(row["size_in"])
        if row["quantity"] == "turn_back" and size < 0.5:
            tails[-size] = max(tails.get(-size, 0), num(row["value"]) / size)
    if len(tails) != 6:
        return ["wire-rope-clips/claims.csv: a tail is wanted for six rope sizes below 1/2 in"]
    return rising("wire-rope-clips", "tail in rope diameters", tails.items())
