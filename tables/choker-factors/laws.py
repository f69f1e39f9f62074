"""Laws of the table choker-factors. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, band, num


def law_choker_steps(tables: Tables) -> list[str]:
    """The five shares fall from 100 % in even steps of 12.75 %, rounded (smoothness; no source of the step itself)."""
    rows = sorted(
        (r for r in tables["choker-factors"] if r["source"] == "choker-handbooks"),
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
        found.append("choker-factors/claims.csv: the bands must start at 120, 90, 60, 30 and 0")
    tops = [num(r["choke_angle_to"]) for r in rows]
    if tops != [180, froms[0], froms[1] - 1, froms[2] - 1, froms[3] - 1]:
        found.append(
            "choker-factors/claims.csv: the bands must tile 0 to 180 degrees, each up to where the next begins"
        )
    for row in tables["choker-factors"]:
        if row["source"] == "navedtra-14080":
            wide = [num(r["value"]) for r in rows if num(r["choke_angle_from"]) >= 90]
            found += band(
                "choker-factors", "share of vertical", num(row["value"]), 0.7, 0.8
            )  # wire rope to chain
            if (row["choke_angle_from"], row["choke_angle_to"]) != ("45", "180") or min(wide, default=0) < 75:
                found.append("choker-factors/claims.csv: the navy rule runs from 45 to 180 degrees")
    return found
