"""Laws of the table wire-rope-heat. The source of each law stands in its docstring."""

from __future__ import annotations

from build_scripts.laws.families import heat_bands

law_heat_bands = heat_bands("wire-rope-heat", "termination", "core")
