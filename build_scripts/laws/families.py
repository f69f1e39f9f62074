"""Laws that several tables obey, each made for the table whose laws.py asks for it; and the numbers that they rest on."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from itertools import pairwise

from build_scripts.laws.tools import Check, Tables, groups, num

# ISO 3 / ISO 497, series R 40, with the 320 of the older German rounding.
PREFERRED = (
    *(
        100,
        106,
        112,
        118,
        125,
        132,
        140,
        150,
        160,
        170,
        180,
        190,
        200,
        212,
        224,
        236,
        250,
        265,
        280,
        300,
        315,
        320,
    ),
    *(335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950),
)

_TO_ONE_UNIT: Mapping[str, Callable[[float], float]] = {
    "degF": lambda x: (x - 32) / 1.8,
    "mm": lambda x: x / 25.4,
    "cm": lambda x: x / 2.54,
}
_MOST = {"out_under", "demand", "capacity"}
"""Senses in which the strictest figure is the largest: a least thickness, a least count. Of the others it is the least."""


def default_is_the_strictest(
    name: str,
    of: str,
    *,
    never: Collection[str] = (),
    printed: Mapping[tuple[str, str], float] | None = None,
) -> Check:
    """Where sources differ over one `of` (item, size_in), `default` marks the strictest figure, by the sense of the row.

    never -- quantities that are no default
    printed -- (of, quantity) -> the figure that is ours although another source prints a stricter one
    """

    def law(tables: Tables) -> list[str]:
        found: list[str] = []
        declared = tables.declared[name]
        for key, rows in groups(tables[name], of, "quantity").items():
            if key[1] in never:
                found += [f"{name}/claims.csv {key}: is no default" for r in rows if r["default"] == "yes"]
                continue
            values = [_TO_ONE_UNIT.get(r["unit"], float)(num(r["value"])) for r in rows]
            most = {declared.sense(row) in _MOST for row in rows}
            best = max(values) if True in most else min(values)
            best = (printed or {}).get((key[0], key[1]), best)
            found += [
                f"{name}/claims.csv {key}: {row['default']} on {value:g}, strictest is {best:g}"
                for row, value in zip(rows, values, strict=True)
                if len(most) > 1 or (row["default"] == "yes") != (abs(value - best) <= 0.004 * abs(best))
            ]
        return found

    return law


def heat_bands(name: str, *of: str) -> Check:
    """European bands adjoin, start at -40 C with 100 %, and what is left falls from band to band."""

    def law(tables: Tables) -> list[str]:
        found = []
        for key, rows in groups(tables[name], *of).items():
            bands = sorted(
                (num(r["temperature_from_degC"]), num(r["temperature_to_degC"]), num(r["value"]))
                for r in rows
            )
            if bands[0][0] != -40 or bands[0][2] != 100:
                found.append(f"{name}/claims.csv {key}: must start at -40 C with 100 %")
            for low, high in pairwise(bands):
                if low[1] != high[0] or low[2] < high[2]:
                    found.append(f"{name}/claims.csv {key}: bands must adjoin and fall")
            if any(value % 5 for _, _, value in bands) or any(low >= high for low, high, _ in bands):
                found.append(f"{name}/claims.csv {key}: shares go in steps of five, bands run upwards")
        return found

    return law


Sections = Mapping[tuple[str, str], Collection[tuple[str, str]]]


def sections_limit(
    name: str,
    sections: Sections,
    older: Collection[tuple[str, str]] = (),
    only_over: Collection[tuple[str, str]] = (),
) -> Check:
    """A section of a law or standard limits what its heading says: (source, locator) -> (item, quantity).

    older -- what a section that is not listed limits
    only_over -- sections that reject only what is over the limit; every other rejects what is at it as well
    """

    def law(tables: Tables) -> list[str]:
        found = []
        for row in tables[name]:
            place = (row["source"], row["locator"])
            if (row["item"], row["quantity"]) not in sections.get(place, older):
                found.append(
                    f"{name}/claims.csv {row['locator']}: does not limit {row['item']} {row['quantity']}"
                )
            sense = "out_over" if place in only_over else "out_at"
            if row["sense"] != sense:
                found.append(f"{name}/claims.csv {row['item']}: {row['locator']} is {sense}")
        return found

    return law
