"""Hitch factors against printed figures; the source stands beside each."""

from __future__ import annotations

import pytest

from calc.answering import answer
from calc.lifting.hitch_factors import bend_share


@pytest.mark.parametrize(
    ("ratio", "factor"),
    [(1, 2.00), (1.5, 1.69), (2, 1.55), (3, 1.41), (4, 1.33), (5, 1.29), (6, 1.26), (7, 1.23)],
)
def test_bending_factor(ratio: float, factor: float) -> None:
    # 0027/ND Rev 11, Table 7-1, two decimals.
    assert round(1 / bend_share(ratio).share, 2) == factor


@pytest.mark.parametrize(("from_vertical", "printed"), [(0, 3600), (30, 3100), (45, 2600), (60, 1800)])
def test_basket_of_natural_fibre_rope(from_vertical: float, printed: int) -> None:
    # 29 CFR 1918 App. II Table 2, 1 in rope, vertical 1,800 lb, basket by the legs' angle from the vertical, printed to
    # about 100 lb (the 45 degree cell is rounded up from 2,546).
    found = answer(
        "hitch",
        {
            "sling_kind": "fibre-rope",
            "rating": "1,800 lb",
            "hitch": "basket",
            "basket_angle": f"{90 - from_vertical} deg",
            "edge": "padded",
            "object_diameter": "8 in",
            "sling_diameter": "1 in",
            "condition": "marked-good",
        },
        "us",
    )
    assert found["results"]["capacity"]["value"] == pytest.approx(printed, abs=60)


def test_chain_choke_of_the_european_table_is_not_below_ours() -> None:
    # DGUV Information 209-021, grade 4, 10 mm: one leg 1,600 kg, choked 1,280 kg (0.8). The handbook takes the smaller
    # general three quarters (NAVEDTRA 14080).
    found = answer(
        "hitch",
        {
            "sling_kind": "chain",
            "grade": "M",
            "rating": "1600 kg",
            "hitch": "choker",
            "choke_angle": "130",
            "edge": "padded",
            "object_diameter": "60 mm",
            "sling_diameter": "10 mm",
            "condition": "marked-good",
        },
        "si",
    )
    assert found["results"]["capacity"]["value"] == pytest.approx(1200)
    assert found["results"]["capacity"]["value"] <= 1280
