"""Laws of the table chain-which-may-lift. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables


def law_no_lifting_grade_below_80(tables: Tables) -> list[str]:
    """ASTM A413 s. 1.1: grade 30, 43 and 70 chain is for uses other than overhead lifting; nor may unmarked or altered chain."""
    forbidden = {"30", "43", "70", "unmarked", "altered", "proof_coil"}
    lift = {r["grade"]: r["value"] for r in tables["chain-which-may-lift"] if r["use"] == "lift"}
    found = [f"chain-which-may-lift/claims.csv {g}: must not lift" for g in forbidden if lift.get(g) != "no"]
    found += [
        f"chain-which-may-lift/claims.csv {g}: is made for lifting"
        for g in ("80", "100", "4", "5", "8", "10")
        if lift.get(g) != "yes"
    ]
    tie = {r["grade"]: r["value"] for r in tables["chain-which-may-lift"] if r["use"] == "tie_down"}
    rated = {r["grade"] for r in tables["chain-tie-down"]} | {"unmarked"}
    found += [
        f"chain-which-may-lift/claims.csv {g}: 393.108 rates it for tie-down"
        for g in rated
        if tie.get(g) != "yes"
    ]
    if tie.get("altered") != "no":
        found.append("chain-which-may-lift/claims.csv altered: must not tie down (49 CFR 393.104(b))")
    lifted = {r["grade"] for r in tables["chain-lifting"]} | {
        r["grade"] for r in tables["chain-lifting-metric"]
    }
    return found + [
        f"chain-which-may-lift/claims.csv {g}: has a lifting table but may not lift"
        for g in lifted
        if lift.get(g) != "yes"
    ]
