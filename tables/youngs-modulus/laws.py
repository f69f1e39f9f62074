"""Laws of the table youngs-modulus. The source of each law stands in its docstring."""

from __future__ import annotations

import math

from build_scripts.laws.tools import Tables, band, column

# Ranges of the codes and handbooks, recalled: EN 1561 (grey iron), CW brasses, EN 338 (hardwood), EN 1992-1-1 and plain
# concrete, polyamide dry, lead, granite.
MODULUS_BANDS = {
    "cast_iron": (90, 110),
    "brass": (90, 110),
    "hardwood": (10, 17),
    "concrete": (17, 40),
    "nylon": (2, 5),
    "lead": (14, 18),
    "granite": (40, 70),
}


CODE_MODULI = {"steel": 210, "aluminium": 70, "glass": 70}


def law_moduli(tables: Tables) -> list[str]:
    """Steel 210 GPa (EN 1993-1-1), aluminium 70 GPa (EN 1999-1-1), glass 70 GPa (EN 572-1); none stiffer than steel.

    The list goes in fives of gigapascals (lead apart); the other materials lie in the range of their code.
    """
    got = column(tables["youngs-modulus"], "material")
    found = [p for m, e in CODE_MODULI.items() for p in band("youngs-modulus", m, got.get(m, math.nan), e, e)]
    found += [
        f"youngs-modulus/claims.csv {m}: {e:g} GPa is no five"
        for m, e in got.items()
        if e % 5 and m != "lead"
    ]
    found += [
        p
        for m, (low, high) in MODULUS_BANDS.items()
        for p in band("youngs-modulus", m, got.get(m, 0), low, high)
    ]
    return found + [p for m, e in got.items() for p in band("youngs-modulus", m, e, 1, 210)]
