"""Laws of the table wire-rope-slings-spliced. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.tools import Tables, band, groups, num, rising

NAME = "wire-rope-slings-spliced"
BREAK_OVER_SPLICE = 0.925
"""Share of rope strength times splice efficiency at which a finished sling must at least break (MIL-DTL-3903F)."""


def _slings(tables: Tables) -> dict[tuple[str, str], dict[str, float]]:
    """(finish, size) -> quantity -> value; the splice efficiency of a size is put with both finishes."""
    found: dict[tuple[str, str], dict[str, float]] = {}
    for key, rows in groups(tables[NAME], "finish", "size_in").items():
        found[key[0], key[1]] = {row["quantity"]: num(row["value"]) for row in rows}
    shared = {size: got for (finish, size), got in found.items() if finish == "either"}
    return {
        (finish, size): got | shared.get(size, {})
        for (finish, size), got in found.items()
        if finish != "either"
    }


def law_spliced_slings_grid(tables: Tables) -> list[str]:
    """MIL-DTL-3903F Table II: fourteen sizes, two finishes, four figures each; every column rises with the size."""
    slings = _slings(tables)
    found = [f"{NAME}/claims.csv {key}: needs four figures" for key, got in slings.items() if len(got) != 4]
    if len(slings) != 28:
        found.append(f"{NAME}/claims.csv: fourteen sizes and two finishes are wanted")
    for key, rows in groups(tables[NAME], "finish", "quantity").items():
        if key[1] != "splice_efficiency":
            found += rising(NAME, key, ((num(r["size_in"]), num(r["value"])) for r in rows))
    return found


def law_spliced_proof_and_break(tables: Tables) -> list[str]:
    """The proof test is twice the rated load exactly; least break over rated load is 5 x 0.925 (MIL-DTL-3903F), as far as the
    rated load is rounded; galvanized wire breaks at 0.90 of bright wire."""
    found = []
    slings = _slings(tables)
    for (finish, size), got in slings.items():
        what = (finish, size)
        found += band(NAME, what, got["proof_test"] / got["rated_capacity"], 2 - 1e-9, 2 + 1e-9)
        ratio = got["minimum_breaking_force"] / got["rated_capacity"]
        found += band(NAME, (*what, "break over rated load"), ratio / (5 * BREAK_OVER_SPLICE), 0.97, 1.065)
        if finish == "galvanized":
            share = got["minimum_breaking_force"] / slings["bright", size]["minimum_breaking_force"]
            found += band(NAME, (*what, "share of bright"), share, 0.898, 0.904)
    return found


def law_spliced_rope_strength(tables: Tables) -> list[str]:
    """Least break over splice efficiency and 0.925 is the strength of the bare rope: as the square of its diameter.

    41.4 to 43.4 short tons per in2 to 1-1/8 in (6x19 improved plow steel, fibre core: 6.1 at 3/8, 41.8 at 1 in, from memory),
    38.4 to 39.4 above, where rope of the class 6x37 is used; it falls slowly with the size.
    """
    found = []
    for (finish, size), got in _slings(tables).items():
        if finish == "bright":
            bare = got["minimum_breaking_force"] / (got["splice_efficiency"] / 100) / BREAK_OVER_SPLICE
            low, high = (41.4, 43.4) if num(size) <= 1.125 else (38.4, 39.4)
            found += band(NAME, (size, "rope over diameter squared"), bare / num(size) ** 2, low, high)
    return found


def law_thin_splices_keep_more(tables: Tables) -> list[str]:
    """A hand splice keeps 88 % of a 3/8 in rope and two points less for each size up, to 80 % from 7/8 in."""
    keeps = {
        num(row["size_in"]): num(row["value"])
        for row in tables[NAME]
        if row["quantity"] == "splice_efficiency"
    }
    return [
        problem
        for size, share in keeps.items()
        for problem in band(
            NAME, (size, "splice"), share, max(80, 94 - 16 * size) - 1e-9, max(80, 94 - 16 * size) + 1e-9
        )
    ]
