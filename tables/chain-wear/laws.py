"""Laws of the table chain-wear. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.families import default_is_the_strictest
from build_scripts.laws.tools import Tables, band, column, exact, groups, num


def law_wear_adds_up(tables: Tables) -> list[str]:
    """29 CFR tables: size less most wear is exactly the least thickness, in every row and every reprint."""
    found = []
    for size, rows in groups(tables["chain-wear"], "size_in").items():
        thick = {r["value"] for r in rows if r["source"] in {"osha-1910-184", "michigan-r408"}}
        wear = {exact(r["value"]) for r in rows if r["quantity"] == "maximum_wear"}
        for t in thick:
            for w in wear:
                if exact(t) + w != exact(size[0]):
                    found.append(
                        f"chain-wear/claims.csv {size[0]}: {t} and wear {w} do not add up to the size"
                    )
        if bool(thick) != bool(wear):
            found.append(f"chain-wear/claims.csv {size[0]}: thickness and wear must both be there")
    return found


THICKNESS_SOURCES = {"osha-1910-184", "michigan-r408", "wac-296-155", "asme-b30-9-warning"}


def law_wear_sources(tables: Tables) -> list[str]:
    """29 CFR 1910.184, Michigan and Washington print the thickness that must be left; 29 CFR 1926.251 and DOE the wear."""
    return [
        f"chain-wear/claims.csv {row['size_in']}: {row['source']} does not print {row['quantity']}"
        for row in tables["chain-wear"]
        if (row["quantity"] == "minimum_thickness") != (row["source"] in THICKNESS_SOURCES)
    ]


def law_wear_asme_pattern(tables: Tables) -> list[str]:
    """ASME-pattern rows: inch and mm agree, and the thickness is 86 to 87.5 % of the metric size of the chain."""
    found = []
    metric = {r["size_in"]: num(r["size_mm"]) for r in tables["chain-lifting"]}
    rows = [r for r in tables["chain-wear"] if r["source"] == "wac-296-155"]
    for (size,), group in groups(rows, "size_in").items():
        got = column(group, "unit")
        if set(got) != {"in", "mm"}:
            found.append(f"chain-wear/claims.csv {size}: needs inches and millimetres")
            continue
        found += band("chain-wear", (size, "mm against in"), got["mm"] - got["in"] * 25.4, -0.012, 0.012)
        found += band("chain-wear", (size, "share"), got["mm"] / metric.get(size, math.nan), 0.864, 0.8735)
    return found


def law_two_prints_of_the_asme_table(tables: Tables) -> list[str]:
    """A warning sheet after ASME B30.9 prints the least thickness that Washington does, within the last place."""
    rows = tables["chain-wear"]
    washington = column(rows, "size_in", source="wac-296-155", unit="in")
    return [
        problem
        for size, thickness in column(rows, "size_in", source="asme-b30-9-warning").items()
        for problem in band(
            "chain-wear", (size, "two prints"), thickness - washington.get(size, math.nan), -0.0011, 0.0011
        )
    ]


law_default_is_the_strictest = default_is_the_strictest("chain-wear", "size_in", never=("maximum_wear",))
