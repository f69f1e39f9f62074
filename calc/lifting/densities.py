"""What a material weighs, as a range over every source of the density table.

Question of the trade: how heavy is oak, concrete, steel? Sources differ and so does the stuff: the low figure is the
lowest that any source prints, the high one the highest, and the plain one stands half way between (tables/densities).
"""

from __future__ import annotations

import functools
from dataclasses import dataclass

from calc.declaration import Citation
from calc.tables import table, value_si

TIMBER = frozenset(
    {
        "douglas-fir-air-dry",
        "douglas-fir-larch",
        "hem-fir",
        "mixed-oak",
        "oak-air-dry",
        "oriented-strand-board",
        "plywood",
        "southern-pine-air-dry",
        "southern-yellow-pine",
        "spruce-pine-fir",
        "spruce-pine-fir-south",
        "wood",
    }
)
"""Materials that weigh much more wet or green than dry."""


@dataclass(frozen=True)
class DensityRange:
    """A material's density [kg/m3] from the lowest to the highest printed figure, and where they stand. `material` is its key,
    `name` as the table prints it.
    """

    material: str
    name: str
    low_kg_per_m3: float
    high_kg_per_m3: float
    citations: tuple[Citation, ...]

    @property
    def middle_kg_per_m3(self) -> float:
        """Half way between low and high [kg/m3]."""
        return (self.low_kg_per_m3 + self.high_kg_per_m3) / 2


@functools.cache
def density_ranges() -> dict[str, DensityRange]:
    """Every material of the density table by its key, in the alphabetical order of the printed names."""
    names = {row["material"]: row["material_name"] for row in table("densities").rows}
    return {key: _range(key, name) for key, name in sorted(names.items(), key=lambda item: item[1].lower())}


def _range(material: str, name: str) -> DensityRange:
    rows = [
        row for row in table("densities").where(material=material) if row["quantity"].startswith("density")
    ]
    values = [value_si(row, "density") for row in rows]
    sources = dict.fromkeys(Citation(row["source"], row["locator"]) for row in rows)
    return DensityRange(material, name, min(values), max(values), tuple(sources))
