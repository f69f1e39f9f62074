"""Laws of the table turnbuckles. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import LBF, Tables, away, band, groups, num, rising


def law_turnbuckles(tables: Tables) -> list[str]:
    """AASHTO M 269: break = 5 x working load exactly in pounds; kN and lb agree within the printed tenth."""
    found = []
    for thread, rows in groups(tables["turnbuckles"], "thread_in").items():
        got = {(r["quantity"], r["unit"]): num(r["value"]) for r in rows}
        if len(got) != 4:
            found.append(f"turnbuckles/claims.csv {thread}: needs four values")
            continue
        found += away(
            "turnbuckles", thread, got["minimum_breaking_force", "lbf"], 5 * got["working_load", "lbf"], 1e-9
        )
        for quantity in ("minimum_breaking_force", "working_load"):
            found += band(
                "turnbuckles",
                (thread, quantity),
                got[quantity, "kN"] - got[quantity, "lbf"] * LBF / 1000,
                -0.06,
                0.06,
            )
    for key, group in groups(tables["turnbuckles"], "quantity", "unit").items():
        found += rising("turnbuckles", key, ((num(r["thread_in"]), num(r["value"])) for r in group))
    return found
