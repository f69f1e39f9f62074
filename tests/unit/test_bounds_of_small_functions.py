"""What small functions say at the ends of their range."""

from __future__ import annotations

import math

import pytest

from calc.hauling.lashing_forces import Balance
from calc.lifting.path_items import PathItem, rate_item
from calc.pulling.pull_limits import item_limit
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.tables import table
from calc.words.notes import with_note_in_words


@pytest.mark.parametrize(
    ("asked", "held", "used"),
    [(0.0, 0.0, 0.0), (-5.0, 0.0, 0.0), (1.0, 0.0, math.inf), (1.0, 4.0, 0.25)],
)
def test_what_is_not_asked_uses_nothing_and_what_nothing_holds_uses_all(
    asked: float, held: float, used: float
) -> None:
    assert Balance("forward", asked, held).used == used


def test_parts_side_by_side_that_no_law_rates_whole_share_by_their_angle() -> None:
    shackles = rate_item(
        PathItem("pair", "shackle", "6", "1/2 in", rating_kg=2000.0, legs=2, angle_deg=90.0),
    )
    assert shackles.whole_kg is None
    limit = item_limit(shackles)
    assert limit is not None
    assert limit.force_n == pytest.approx(
        2 * shackles.rating_kg * STANDARD_GRAVITY_M_PER_S2 if shackles.rating_kg else 0.0
    )


def test_a_row_says_its_note_in_words_and_one_without_stays() -> None:
    rows = table("chain-tie-down").rows
    noted = next(row for row in rows if row.get("note"))
    assert with_note_in_words("chain-tie-down", noted)["note"].count(" ") > 1
    bare = {**noted, "note": ""}
    assert with_note_in_words("chain-tie-down", bare) == bare
