"""Laws of the table fillet-weld-sizes. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, band, groups, num

NAME = "fillet-weld-sizes"
THICKEST_IN = {"to_quarter": 0.25, "quarter_to_half": 0.5, "half_to_three_quarters": 0.75}
"""Upper end of each band of thickness."""


def law_fillet_legs_go_by_sixteenths(tables: Tables) -> list[str]:
    """AISC 360 Table J2.4: the least leg goes up by a sixteenth of an inch from band to band, and mm agree within 0.4 mm.

    It is never more than half of the thickest part of its band, and from 1/2 in up less than that.
    """
    found = []
    legs = []
    for (part,), rows in groups(tables[NAME], "thinner_part").items():
        got = {row["unit"]: num(row["value"]) for row in rows}
        legs.append(got["in"])
        found += band(NAME, (part, "mm less inches"), got["mm"] - 25.4 * got["in"], -0.4, 0.4)
        if part in THICKEST_IN:
            found += band(NAME, (part, "share of the part"), got["in"] / THICKEST_IN[part], 0.33, 0.5)
    if legs != [2 / 16, 3 / 16, 4 / 16, 5 / 16]:
        found.append(f"{NAME}/claims.csv: the legs of the four bands do not go up by a sixteenth")
    return found
