"""Laws of the table temper-colours. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, band, column, groups, num, rising


def law_temper_colours(tables: Tables) -> list[str]:
    """Fahrenheit and Celsius agree to the degree; colours stand in rising order, tints below glow.

    The book gives whole tens of Fahrenheit (957 and 1,655 apart); tints stand in its list of tempering, glow in the other.
    """
    found = []
    for row in tables["temper-colours"]:
        if (row["kind"] == "oxide_tint") != (row["locator"] == "Colours of tempering"):
            found.append(
                f"temper-colours/claims.csv {row['colour']}: is not {row['kind']} in {row['locator']}"
            )
        if row["unit"] == "degF" and num(row["value"]) % 10 and row["value"] not in {"957", "1,655"}:
            found.append(f"temper-colours/claims.csv {row['colour']}: {row['value']} F is no whole ten")
    for key, rows in groups(tables["temper-colours"], "colour", "quantity").items():
        got = column(rows, "unit")
        if set(got) != {"degF", "degC"}:
            found.append(f"temper-colours/claims.csv {key}: needs F and C")
        else:
            found += band("temper-colours", key, got["degC"] - (got["degF"] - 32) / 1.8, -0.56, 0.56)
    for unit in ("degF", "degC"):
        order = [
            (float(i), num(r["value"]))
            for i, r in enumerate(r for r in tables["temper-colours"] if r["unit"] == unit)
        ]
        found += rising("temper-colours", unit, order)
    glow = [
        num(r["value"])
        for r in tables["temper-colours"]
        if r["kind"] == "incandescence" and r["unit"] == "degC"
    ]
    tint = [
        num(r["value"]) for r in tables["temper-colours"] if r["kind"] == "oxide_tint" and r["unit"] == "degC"
    ]
    if max(tint, default=0) > 340 or min(glow, default=999) < 500:
        found.append("temper-colours/claims.csv: tints end by 340 C, glow starts above 500 C")
    return found
