"""lashing-count: how many straps over the top, what blocking and mats save, and what is refused."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from calc.hauling.friction import DECKS, PAIRS, grip
from calc.hauling.lashing_count import WORKSHEET
from tests.asking import Asked, asked
from tests.saying import one_reading

LEAST, UNSWEPT_AT_MOST = 0.1, 0.2  # CTU Code, Annex 7, Appendix 2, from memory

CASE: dict[str, Any] = {
    "load": "9000 lb", "deck": "swept-dry", "pair": "sawn-wood-on-steel", "tension": "500 lb", "across": "0.5 m",
    "down": "0.8660254 m", "blocked": "no",
}  # fmt: skip


def run(**more: Any) -> Asked:
    found = asked("lashing-count", {key: one for key, one in {**CASE, **more}.items() if one is not None})
    assert isinstance(found, Asked)
    return found


def codes(found: Asked) -> list[str]:
    return [one.code for one in found.reasons]


def refused(**more: Any) -> dict[str, str]:
    with pytest.raises(Refused) as caught:
        run(**more)
    return {one.input: one.message for one in caught.value.errors}


def test_it_is_declared_in_the_room_of_hauling() -> None:
    assert worksheet("lashing-count").room == "hauling"


def test_the_count_and_what_blocking_and_mats_save() -> None:
    """(0.8 - 0.3) 9000 1.25 / (0.3 x 1.5 x 500 x 0.866) = 28.9; to the sides 10.2; on mats 10.4 (by hand)."""
    found = run()
    assert found.results["straps_needed"] == 29
    assert found.results["straps_if_blocked"] == 11
    assert found.results["straps_with_mat"] == 11
    assert found.results["blocking_force"] == pytest.approx(0.5 * 9000 * 4.4482216, rel=1e-6)
    assert found.verdict == "caution"
    assert "block-instead" in codes(found)
    assert "Block it in front, and 11 are enough" in found.headline


def test_blocked_in_front_only_the_sides_count_and_the_blocking_must_hold() -> None:
    found = run(blocked="yes")
    assert found.results["straps_needed"] == 11
    assert {"blocking-must-hold", "many-straps"} <= set(codes(found))


def test_two_straps_are_the_least_even_where_friction_holds() -> None:
    found = run(pair="rough-concrete-on-wood", blocked="yes")
    assert found.results["straps_needed"] == 2
    assert found.headline.startswith("Friction alone keeps")
    assert found.results["held_alone"] == 1.0
    light = answer("lashing-count", {**CASE, "load": "50 lb"})
    assert "on an oily deck, at 0.1, 2 straps" in light["figure"]["caption"]


def test_flat_straps_and_bounds_are_said() -> None:
    assert {"straps-flat", "friction-bound"} <= set(codes(run(across="2 m", pair=None)))


def test_a_limit_is_no_tension() -> None:
    assert "half of the strap's limit" in refused(tension="2500 lb", limit="4900 lb")["tension"]
    assert run(tension="2200 lb", limit="4900 lb").results["straps_needed"] >= 2


def test_a_missing_tension_is_refused_and_never_guessed() -> None:
    assert "tension" in refused(tension=None)
    assert {"deck", "across", "blocked"} <= set(refused(deck=None, across=None, blocked=None))


@pytest.mark.parametrize("pair", PAIRS)
def test_a_worse_deck_never_grips_more(pair: str) -> None:
    dry, wet, unswept, icy, oily = (grip(deck, pair).friction for deck in DECKS)
    assert dry >= wet >= LEAST
    assert min(dry, UNSWEPT_AT_MOST) == unswept
    assert icy == oily == LEAST


def test_a_pair_that_is_not_known_grips_least() -> None:
    assert all(grip(deck, "").friction <= grip(deck, pair).friction for deck in DECKS for pair in PAIRS)
    assert grip("swept-wet", "steel-on-steel").friction == LEAST


@settings(max_examples=60, deadline=None)
@given(load=st.floats(100, 14_000), more=st.floats(1, 3), tension=st.floats(50, 333), tighter=st.floats(1, 3))
def test_more_tension_and_less_load_never_ask_for_more_straps(
    load: float, more: float, tension: float, tighter: float
) -> None:
    first = run(load=f"{one_reading(load)} kg", tension=f"{one_reading(tension)} daN").results
    heavier = run(load=f"{one_reading(load * more)} kg", tension=f"{one_reading(tension)} daN").results
    tight = run(load=f"{one_reading(load)} kg", tension=f"{one_reading(tension * tighter)} daN").results
    assert heavier["straps_needed"] >= first["straps_needed"] >= tight["straps_needed"]
    assert first["straps_by_2010"] <= first["straps_needed"]


def test_far_off_the_graph_the_case_is_not_marked() -> None:
    found = answer("lashing-count", {**CASE, "load": "45 t"}, "us")
    assert "straps" in found["figure"]["caption"]
    assert WORKSHEET.rates is False


def test_a_tension_that_may_be_the_limit_counts_nothing() -> None:
    """2,500 daN typed as tension with no limit beside it was refused only where the limit was given: two straps were enough."""
    assert "tension" in refused(tension="2500 daN")
    assert "limit-not-given" in codes(run(tension="300 daN", pair="sawn-wood-on-plywood", load="2600 lb"))
    assert "limit-not-given" not in codes(run(tension="300 daN", limit="2500 daN"))
    assert "tension" in refused(tension="2500 daN", limit="2500 daN")


def test_a_limit_beside_it_makes_no_tension_of_another_limit() -> None:
    """A label prints an LC of 2,500 daN for the strap straight and 5,000 in a loop: typed as tension and limit, two straps
    held what ten would not.
    """
    assert "tension" in refused(tension="2,500 daN", limit="5,000 daN")
    assert "tension" in refused(tension="1,001 daN")
    assert "limit-not-given" not in codes(run(tension="1,000 daN", limit="2,500 daN"))
    assert run(tension="1,000 daN").verdict == "caution"
    assert "limit" in refused(limit="50,001 lb")
