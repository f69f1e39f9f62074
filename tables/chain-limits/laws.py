"""Laws of the table chain-limits. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.families import default_is_the_strictest
from build_scripts.laws.tools import Tables, column, num

SAY_MORE_THAN = {
    ("ema-4wd", "elongation"),
    ("ema-4wd", "thickness_loss"),
    ("dguv-209-021", "thickness_loss"),
}
"""(source, quantity) whose text rejects a chain over its limit (more than 3 %, over 15 %; over 10 % after DIN 685), not at it.

Queensland prints 10 % of wear plainly, so that a reading of 10 % is out all the same.
"""


def law_chain_limits(tables: Tables) -> list[str]:
    """Stretch: an emergency service stops first, DIN 685 (DGUV) and the navy at one figure, Queensland at twice that.

    Wear: DIN 685 and Queensland print one figure, the emergency service allows more, the navy most, and a worn link keeps
    at least three quarters. All but the emergency service's stretch go in fives.
    """
    rows = tables["chain-limits"]
    stretch = column(rows, "source", quantity="elongation")
    wear = column(rows, "source", quantity="thickness_loss")
    sources = {"ema-4wd", "dguv-209-021", "navedtra-14251", "qld-pn10123"}
    if set(stretch) != sources or set(wear) != sources or len(rows) != 8:
        return ["chain-limits/claims.csv: four sources print both limits"]
    found = [
        f"chain-limits/claims.csv {r['source']}: {r['value']} percent is no step of five"
        for r in rows
        if num(r["value"]) % 5 and (r["source"], r["quantity"]) != ("ema-4wd", "elongation")
    ]
    found += [
        f"chain-limits/claims.csv {r['source']} {r['quantity']}: is out over the limit where its source says more than, else at it"
        for r in rows
        if (r["sense"] == "out_over") != ((r["source"], r["quantity"]) in SAY_MORE_THAN)
    ]
    if (
        not 2
        <= stretch["ema-4wd"]
        < stretch["dguv-209-021"]
        == stretch["navedtra-14251"]
        == stretch["qld-pn10123"] / 2
    ):
        found.append(f"chain-limits/claims.csv elongation: out of order: {stretch}")
    if not wear["dguv-209-021"] == wear["qld-pn10123"] < wear["ema-4wd"] < wear["navedtra-14251"] <= 25:
        found.append(f"chain-limits/claims.csv thickness_loss: out of order: {wear}")
    return found


law_default_is_the_strictest = default_is_the_strictest("chain-limits", "item")
