"""Laws of rope, clips and slings.

The source of each law stands in its docstring."""

from __future__ import annotations

import math
import re
from fractions import Fraction

from tests.data.law_tools import (
    Row,
    Tables,
    away,
    band,
    column,
    exact,
    groups,
    num,
    rising,
)


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
                f"wire-rope-clips.csv {key}: the default is not the one greatest figure of its sources"
            )
        if len(group) > 1 and num(group[0]["size_in"]) >= 0.5 and len({r["value"] for r in group}) > 1:
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
    sizes: dict[str, set[str]] = {}
    for row in rows:
        sizes.setdefault(row["quantity"], set()).add(row["size_in"])
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
    if len({frozenset(found_sizes) for found_sizes in sizes.values()}) != 1:
        found.append("wire-rope.csv: strength, vertical and choker are printed for the same sizes")
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


def _printed_step(value: float) -> float:
    """29 CFR 1918 App. II prints to 50 lb under 1,000 lb, to 100 lb under 10,000 lb and to 500 lb above."""
    return 50.0 if value < 1000 else 100.0 if value < 10000 else 500.0


def _upright_strength(rows: list[Row]) -> tuple[float, float]:
    """The rating of one rope upright, before rounding, that all cells of one size allow: from least to most [lb]."""
    low, high = 0.0, math.inf
    for row in rows:
        angle = math.radians(num(row["angle_from_vertical"]))
        factor = {"vertical": 1.0, "choker": 0.5}.get(row["hitch"], 2 * math.cos(angle))
        half = _printed_step(num(row["value"])) / 2
        low = max(low, (num(row["value"]) - half) / factor)
        high = min(high, (num(row["value"]) + half) / factor)
    return low, high


# Least breaking strength of new manila rope [lb], US federal specification T-R-605 (recalled).
MANILA_BREAK_LB = {
    "1/2": 2650, "9/16": 3450, "5/8": 4400, "3/4": 5400, "13/16": 6500, "7/8": 7700, "1": 9000, "1-1/16": 10500,
    "1-1/8": 12000, "1-1/4": 13500, "1-5/16": 15000, "1-1/2": 18500, "1-5/8": 22500, "1-3/4": 26500, "2": 31000,
    "2-1/8": 36000, "2-1/4": 41000, "2-1/2": 46500, "2-5/8": 52000,
}  # fmt: skip


def law_fibre_slings_are_manila_over_the_design_factor(tables: Tables) -> list[str]:
    """Table 2 is for a design factor of 5: five times the unrounded rating is the least strength of manila, within 0.5 %."""
    factor = column(tables["design-factors"], "item").get("natural_fibre_rope_sling", math.nan)
    found = []
    for (sling, size), group in groups(tables["fibre-rope-slings"], "sling", "size_in").items():
        if sling == "eye_and_eye":
            low, high = _upright_strength(group)
            wanted = MANILA_BREAK_LB.get(size, math.nan) / factor
            found += band("fibre-rope-slings", (size, "manila"), wanted, low * 0.995, high * 1.005)
    return found


def law_fibre_slings(tables: Tables) -> list[str]:
    """29 CFR 1918 App. II against statics: choker half, basket 2 x cosine, all six cells rounded from one strength; all rise.

    At 60 degrees the basket is exactly the vertical cell. An endless sling is 1.8 times an eye-and-eye one (two strands
    less the splice), within 1 % of the unrounded strengths.
    """
    found = []
    rows = tables["fibre-rope-slings"]
    strength: dict[tuple[str, ...], tuple[float, float]] = {}
    cases = [("vertical", "0"), ("choker", "0"), *(("basket", angle) for angle in ("0", "30", "45", "60"))]
    for key, group in groups(rows, "sling", "size_in").items():
        cells = {(r["hitch"], r["angle_from_vertical"]): r["value"] for r in group}
        if set(cells) != set(cases) or len(group) != 6:
            found.append(f"fibre-rope-slings.csv {key}: needs six cells, four of them baskets")
            continue
        strength[key] = low, high = _upright_strength(group)
        if low > high * (1 + 1e-9):
            found.append(
                f"fibre-rope-slings.csv {key}: no one strength gives all six cells ({low:.0f}, {high:.0f})"
            )
        if cells["basket", "60"] != cells["vertical", "0"]:
            found.append(f"fibre-rope-slings.csv {key}: a basket at 60 degrees rates as one vertical leg")
        found += [
            f"fibre-rope-slings.csv {key}: {r['value']} is no step of {_printed_step(num(r['value'])):g} lb"
            for r in group
            if num(r["value"]) % _printed_step(num(r["value"]))
            and r["value"] != "1,850"  # printed so for 1-1/2 in
        ]
    for (sling, size), (low, high) in strength.items():
        if sling == "endless":
            eye_low, eye_high = strength.get(("eye_and_eye", size), (math.nan, math.nan))
            if not (low <= 1.8 * eye_high * 1.01 and high >= 1.8 * eye_low * 0.99):
                found.append(f"fibre-rope-slings.csv {size}: endless is not 1.8 times eye and eye")
    for case, group in groups(rows, "sling", "hitch", "angle_from_vertical").items():
        found += rising("fibre-rope-slings", case, ((num(r["size_in"]), num(r["value"])) for r in group))
    sizes = {sling: {size for s, size in strength if s == sling} for sling in ("eye_and_eye", "endless")}
    if not sizes["endless"] < sizes["eye_and_eye"]:
        found.append("fibre-rope-slings.csv: every endless size is also an eye-and-eye size")
    return found


def law_rope_terminations(tables: Tables) -> list[str]:
    """0027/ND s. 7.7: one over an efficiency of 100, 90, 80, 75 or 50 %, rounded up or to the nearest hundredth.

    Sockets, swages and closed loops lose nothing; then steel ferrules, hand splices, cable-laid splices, aluminium.
    """
    rows = tables["rope-terminations"]
    got = column(rows, "termination")
    found = []
    for name, factor in got.items():
        allowed = {
            rounded
            for efficiency in (1.0, 0.9, 0.8, 0.75, 0.5)
            for rounded in (round(1 / efficiency, 2), math.ceil(100 / efficiency - 1e-9) / 100)
        }
        if not any(abs(factor - other) < 1e-9 for other in allowed):
            found.append(f"rope-terminations.csv {name}: {factor:g} is no such efficiency")
    order = [
        got.get(name, math.nan)
        for name in (
            "resin_socket",
            "steel_ferrule",
            "hand_splice",
            "cable_laid_hand_splice",
            "aluminium_ferrule",
        )
    ]
    if order != sorted(set(order)):
        found.append(
            "rope-terminations.csv: socket, steel ferrule, hand splice, cable-laid splice, aluminium: out of order"
        )
    found += [
        f"rope-terminations.csv {name}: loses no strength at its end"
        for name in ("resin_socket", "swage_or_flemish_eye", "grommet", "fibre_sling")
        if got.get(name) != 1.0
    ]
    return found


COLOURS = ("violet", "green", "yellow", "grey", "red", "brown", "blue", "orange")
"""EN 1492-1 (recalled), smallest sling first."""
SLING_TONNES = (1, 2, 3, 4, 5, 6, 8, 10)
"""The series of web sling sizes: every tonne to 6, then 8 and 10."""


LOADED_PARTS = {
    ("1", "straight", "0"): 1,
    ("1", "choke", "0"): 1,
    **{("1", "basket", angle): 2 for angle in ("0", "0-45", "45-60")},
    **{("2", hitch, angle): 2 for hitch in ("straight", "choke") for angle in ("0-45", "45-60")},
    **{("3-4", hitch, angle): 3 for hitch in ("straight", "choke") for angle in ("0-45", "45-60")},
}
"""The thirteen cases of EN 1492-1 and the parts that carry: a basket is two, of four legs three count."""


def web_sling_factor(case: tuple[str, str, str]) -> Fraction | None:
    """By statics: parts x cosine of the steeper end of the band, cut to the tenth; a choke leaves four fifths."""
    _, hitch, angle = case
    steepest = {"0": 0, "0-45": 45, "45-60": 60}.get(angle)
    if case not in LOADED_PARTS or steepest is None:
        return None
    tenths = math.floor(10 * LOADED_PARTS[case] * math.cos(math.radians(steepest)) + 1e-9)
    return Fraction(tenths, 10) * (Fraction(4, 5) if hitch == "choke" else 1)


def law_web_slings(tables: Tables) -> list[str]:
    """EN 1492-1: limits are the straight limit times a factor that statics gives; colours in order of the series of sizes.

    The factors meet those of chain slings (EN 818-4, table sling-leg-counting); a choke takes the fifth that DGUV 209-021
    prints for chain. Which colour is which rests on recall: the law holds their order only.
    """
    rows = tables["web-slings"]
    found = []
    straight = {r["colour"]: exact(r["value"]) for r in rows if (r["legs"], r["hitch"]) == ("1", "straight")}
    upright = dict(zip(COLOURS, SLING_TONNES, strict=True))
    for row in rows:
        case = (row["legs"], row["hitch"], row["angle_from_vertical"])
        factor = web_sling_factor(case)
        value, what = exact(row["value"]), (row["colour"], *case)
        if factor is None:
            found.append(f"web-slings.csv {what}: no such case in the standard")
        elif row["colour"] == "factor":
            if value != factor or row["quantity"] != "mode_factor":
                found.append(f"web-slings.csv {what}: statics gives {float(factor):g}, not {row['value']}")
        elif (
            row["quantity"] != "working_load_limit"
            or value != straight.get(row["colour"], Fraction(0)) * factor
        ):
            found.append(
                f"web-slings.csv {what}: {row['value']} is not the straight limit times {float(factor):g}"
            )
        elif value != upright.get(row["colour"], Fraction(0)) * factor:
            found.append(f"web-slings.csv {what}: the colour stands at another place in the series")
    have = {(r["colour"], r["legs"], r["hitch"], r["angle_from_vertical"]) for r in rows}
    if have != {(colour, *case) for colour in (*COLOURS, "factor") for case in LOADED_PARTS}:
        found.append("web-slings.csv: needs thirteen cases of eight colours and of the factor")
    chain = {
        (r["legs"], r["quantity"].removeprefix("mode_factor_").replace("_", "-")): exact(r["value"])
        for r in tables["sling-leg-counting"]
        if r["source"] == "en-818-4"
    }
    for row in rows:
        if row["colour"] == "factor" and row["hitch"] == "straight" and row["legs"] != "1":
            for legs in row["legs"].split("-"):
                if chain.get((legs, row["angle_from_vertical"])) != exact(row["value"]):
                    found.append(f"web-slings.csv {legs} legs: not the factor of a chain sling")
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
    tops = [num(r["choke_angle_to"]) for r in rows]
    if tops != [180, froms[0], froms[1] - 1, froms[2] - 1, froms[3] - 1]:
        found.append(
            "choker-factors.csv: the bands must tile 0 to 180 degrees, each up to where the next begins"
        )
    for row in tables["choker-factors"]:
        if row["source"] == "navedtra-14080":
            wide = [num(r["value"]) for r in rows if num(r["choke_angle_from"]) >= 90]
            found += band(
                "choker-factors", "share of vertical", num(row["value"]), 0.7, 0.8
            )  # wire rope to chain
            if (row["choke_angle_from"], row["choke_angle_to"]) != ("45", "180") or min(wide, default=0) < 75:
                found.append("choker-factors.csv: the navy rule runs from 45 to 180 degrees")
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
        if (row["default"] == "yes") != (row["quantity"] == "legs_counted" and value == ours):
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


# Section of a law or standard -> the item it rules on.
ROPE_SECTIONS = {
    ("osha-1910-184", "1910.184(f)(5)(i)"): {"sling"},
    ("osha-1910-184", "1910.184(f)(5)(ii)"): {"sling"},
    ("osha-1926-251", "1926.251(c)(4)(iv)"): {"construction_rope"},
    ("canada-sor-2007-128", "s. 322"): {"ship_rope"},
    ("michigan-r408", "R 408.40834(1)(a)"): {"running_rope"},
    ("michigan-r408", "R 408.40834(1)(e)"): {"standing_rope"},
    ("michigan-r408", "R 408.40834(1)(d)"): {
        "rope_to_5_16_in",
        "rope_3_8_to_1_2_in",
        "rope_9_16_to_3_4_in",
        "rope_7_8_to_1_1_8_in",
        "rope_1_1_4_to_1_1_2_in",
    },
    ("wac-296-24", "296-24-29401(2)"): {"any_rope"},
    ("dguv-209-061", "s. 4"): {"web_sling"},
}


# Sections that reject only what is over the limit ("more than"); every other rejects what is at it as well.
ROPE_ONLY_OVER = {
    ("osha-1926-251", "1926.251(c)(4)(iv)"),
    ("michigan-r408", "R 408.40834(1)(e)"),
    ("michigan-r408", "R 408.40834(1)(d)"),
}


def law_wire_rope_limits(tables: Tables) -> list[str]:
    """A section rules on its own rope; one strand may hold half the broken wires of a lay (29 CFR 1910.184, Michigan R 408).

    Michigan's loss of diameter is a sixteenth of the largest rope of the band, cut to the sixty-fourth. Two sources that
    count broken wires over eight diameters print the same share. At an end
    fitting fewer may be broken than a lay past it, and running rope is judged more strictly than a sling.
    """
    rows = tables["wire-rope-limits"]
    found = []
    at = {(r["item"], r["quantity"]): num(r["value"]) for r in rows}
    for row in rows:
        allowed = ROPE_SECTIONS.get((row["source"], row["locator"]), set())
        if row["item"] not in allowed:
            found.append(f"wire-rope-limits.csv {row['locator']}: does not rule on {row['item']}")
        wanted_sense = "out_over" if (row["source"], row["locator"]) in ROPE_ONLY_OVER else "out_at"
        if row["sense"] != wanted_sense:
            found.append(f"wire-rope-limits.csv {row['item']}: {row['locator']} is {wanted_sense}")
        bands = re.fullmatch(r"rope_(?:.*_)?to_([0-9_]+)_in", row["item"])
        if bands:
            largest = _size_of_key(bands[1])
            wanted = math.floor(64 * largest / 16) / 64
            found += away("wire-rope-limits", row["item"], num(row["value"]), wanted, 1e-9)
        if row["unit"] == "count" and num(row["value"]) < 1:
            found.append(f"wire-rope-limits.csv {row['item']}: {row['value']} is no count of wires")
    for item in ("sling", "running_rope"):
        lay = at.get((item, "broken_wires_in_one_lay"), math.nan)
        strand = at.get((item, "broken_wires_in_one_strand_in_one_lay"), math.nan)
        found += away("wire-rope-limits", (item, "strand"), strand, lay / 2, 1e-9)
    shares = {v for (_, quantity), v in at.items() if quantity == "broken_wires_in_eight_diameters"}
    if len(shares) != 1:
        found.append(
            f"wire-rope-limits.csv: shares of broken wires over eight diameters are {sorted(shares)}"
        )
    past = at.get(("standing_rope", "broken_wires_in_one_lay_past_end_fitting"), math.nan)
    end = at.get(("standing_rope", "broken_wires_at_end_fitting"), math.nan)
    running = at.get(("running_rope", "broken_wires_in_one_lay"), math.nan)
    if not end < past < running < at.get(("sling", "broken_wires_in_one_lay"), -1):
        found.append(
            "wire-rope-limits.csv: fitting, lay past it, running rope, sling: must rise in this order"
        )
    stretched = at.get(("ship_rope", "diameter_loss_with_lay_stretch"), math.nan)
    if not stretched < at.get(("ship_rope", "diameter_loss_even"), -1):
        found.append("wire-rope-limits.csv: a lay that has stretched allows less loss of diameter")
    found += band("wire-rope-limits", "outer wire", at.get(("sling", "outer_wire_wear"), math.nan), 0.2, 0.4)
    return found


def _size_of_key(text: str) -> float:
    """`1_1_8` -> 1.125, `5_16` -> 0.3125."""
    parts = [int(part) for part in text.split("_")]
    whole = parts.pop(0) if len(parts) == 3 else 0
    return whole + parts[0] / parts[1]


# Section of a law or standard -> the slings it rules on.
TEMPERATURE_SECTIONS = {
    ("osha-1910-184", "1910.184(e)(6)"): {"alloy_chain_sling"},
    ("wac-296-155", "296-155-55800"): {"alloy_chain_sling"},
    ("qld-pn10123", "p. 35"): {"alloy_chain_sling"},
    ("en-818-6", "Grade 8, as quoted by a chain maker"): {"alloy_chain_sling"},
    ("asme-b30-9", "Table 9-1.8.1-1, 400 F"): {"alloy_chain_sling"},
    ("navedtra-14251", "ch. 6"): {"chain"},
    ("osha-1910-184", "1910.184(f)(3)"): {"wire_rope_sling_fibre_core", "wire_rope_sling_steel_core"},
    ("wac-296-24", "296-24-29425(3)"): {"wire_rope_sling_fibre_core"},
    ("osha-1910-184", "1910.184(h)(2)"): {"fibre_rope_sling"},
    ("wac-296-78", "296-78-755(2)"): {"fibre_rope_sling"},
    ("osha-1910-184", "1910.184(i)(7)"): {"web_sling_nylon_or_polyester", "web_sling_polypropylene"},
    ("en-1492-1", "Scope"): {"web_sling_nylon_or_polyester", "web_sling_polypropylene"},
    ("california-t8", "5046(g)"): {"metal_mesh_sling_plain", "metal_mesh_sling_coated"},
    ("asme-b30-26", "2010, s. 26-1.6.1"): {"shackle"},
}
HEAT_QUANTITIES = {
    "alloy_chain_sling": {"reduce_above", "remove_above"},
    "wire_rope_sling_fibre_core": {"remove_above"},
    "chain": {"strength_harmed_above"},
}


def _celsius(row: Row) -> float:
    return num(row["value"]) if row["unit"] == "degC" else (num(row["value"]) - 32) / 1.8


def law_sling_temperatures(tables: Tables) -> list[str]:
    """A section rules on its own slings; cold limits are below 0 C and hot ones above 60 C; laws that copy a law agree.

    Washington prints the federal figures for chain, fibre core and fibre rope. Queensland's 260 C is the navy's 500 F.
    Nylon and polyester stand more heat than polypropylene in Europe, less in American law; a coated mesh stands less heat
    and cold than a plain one; steel core stands what a shackle stands; the rule in words (shackle-rules) has the shackle's.
    Alloy chain is reduced before it is removed.
    """
    found = []
    rows = tables["sling-temperature-limits"]
    at: dict[tuple[str, str], list[tuple[str, float]]] = {}
    for row in rows:
        what = (row["item"], row["quantity"], row["source"])
        if row["item"] not in TEMPERATURE_SECTIONS.get((row["source"], row["locator"]), set()):
            found.append(f"sling-temperature-limits.csv {row['locator']}: does not rule on {row['item']}")
        if row["quantity"] not in HEAT_QUANTITIES.get(row["item"], {"use_above", "use_below"}):
            found.append(f"sling-temperature-limits.csv {what}: is not limited so")
        cold = row["quantity"] == "use_above"
        found += band("sling-temperature-limits", what, _celsius(row), *((-60, -10) if cold else (60, 600)))
        at.setdefault((row["item"], row["quantity"]), []).append((row["source"], _celsius(row)))
    for copied, item, quantity in (
        ("wac-296-155", "alloy_chain_sling", "remove_above"),
        ("wac-296-24", "wire_rope_sling_fibre_core", "remove_above"),
        ("wac-296-78", "fibre_rope_sling", "use_above"),
        ("wac-296-78", "fibre_rope_sling", "use_below"),
    ):
        got = dict(at.get((item, quantity), []))
        if got.get(copied) != got.get("osha-1910-184", math.nan):
            found.append(
                f"sling-temperature-limits.csv {item} {quantity}: Washington prints the federal figure"
            )
    begins = dict(at.get(("alloy_chain_sling", "reduce_above"), []))
    whole = [
        num(r["temperature_to_degC"])
        for r in tables["chain-heat-en"]
        if r["grade"] == "8" and r["value"] == "100"
    ]
    first = min((num(r["temperature_degF"]) - 32) / 1.8 for r in tables["chain-heat-asme"])
    if [begins.get("en-818-6")] != whole or begins.get("asme-b30-9") != first:
        found.append("sling-temperature-limits.csv: chain is reduced where the tables of heat on chain begin")
    for (item, quantity), rows_of_one in groups(rows, "item", "quantity").items():
        heats = sorted(rows_of_one, key=_celsius, reverse=quantity == "use_above")
        if heats[0]["default"] != "yes" or any(
            r["default"] == "yes" and abs(_celsius(r) - _celsius(heats[0])) > 1e-9 for r in rows_of_one
        ):
            found.append(f"sling-temperature-limits.csv {item} {quantity}: the default is not the strictest")
    found += _temperatures_between_items(at, {r["rule"]: r["value"] for r in tables["shackle-rules"]})
    return found


def _temperatures_between_items(
    at: dict[tuple[str, str], list[tuple[str, float]]], words: dict[str, str]
) -> list[str]:
    def one(item: str, quantity: str, source: str) -> float:
        return dict(at.get((item, quantity), [])).get(source, math.nan)

    osha, en, california = "osha-1910-184", "en-1492-1", "california-t8"
    nylon, poly = "web_sling_nylon_or_polyester", "web_sling_polypropylene"
    plain, coated = "metal_mesh_sling_plain", "metal_mesh_sling_coated"
    queensland = one("alloy_chain_sling", "reduce_above", "qld-pn10123")
    found = band(
        "sling-temperature-limits",
        "Queensland against the navy",
        queensland - one("chain", "strength_harmed_above", "navedtra-14251"),
        -0.6,
        0.6,
    )
    shackle = re.search(r"Above ([0-9]+) F .* below (-[0-9]+) F", words.get("ask-maker", ""))
    said = [(float(f) - 32) / 1.8 for f in shackle.groups()] if shackle else [math.nan, math.nan]
    for quantity, wanted in zip(("use_below", "use_above"), said, strict=True):
        found += band(
            "sling-temperature-limits",
            ("shackle", quantity),
            one("shackle", quantity, "asme-b30-26") - wanted,
            -0.1,
            0.1,
        )
    orders = {
        "wire rope with a steel core stands what a shackle stands": (
            one("wire_rope_sling_steel_core", "use_below", osha) == one("shackle", "use_below", "asme-b30-26")
        ),
        "a coated mesh stands less than a plain one": (
            one(coated, "use_below", california) < one(plain, "use_below", california)
            and one(coated, "use_above", california) > one(plain, "use_above", california)
        ),
        "polypropylene melts first (Europe)": one(poly, "use_below", en) < one(nylon, "use_below", en),
        "both fibres have one cold limit": one(poly, "use_above", en) == one(nylon, "use_above", en),
        "minus 40 is the same in C and F": one(nylon, "use_above", en)
        == one("shackle", "use_above", "asme-b30-26"),
        "nylon and polyester web stand what fibre rope stands": (
            one(nylon, "use_below", osha)
            == one("fibre_rope_sling", "use_below", osha)
            < one(poly, "use_below", osha)
        ),
        "chain is reduced before it is removed": (
            queensland
            < one("alloy_chain_sling", "reduce_above", osha)
            < one("alloy_chain_sling", "remove_above", osha)
        ),
    }
    return found + [f"sling-temperature-limits.csv: {rule}" for rule, holds in orders.items() if not holds]
