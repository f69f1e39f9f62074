"""hitch: factors, bounds, words."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.lifting.hitch import WORKSHEET
from calc.lifting.hitch_factors import bend_share, choke_angle_share, choker_share


def run(**more: str) -> dict[str, Any]:
    usual = {"sling_kind": "wire-rope", "hitch": "vertical", "rating": "1000 kg", "condition": "marked-good"}
    if more.get("sling_kind") == "chain":
        usual["grade"] = "80"
    if more.get("sling_kind") in ("chain", "fibre-rope"):
        usual |= {"object_diameter": "200 mm", "sling_diameter": "20 mm"}
    return answer(
        "hitch", {**usual, "basket_angle": "90", "choke_angle": "120", "edge": "padded", **more}, "si"
    )


def value(record: dict[str, Any], key: str) -> Any:
    return record["results"][key]["value"]


def texts(record: dict[str, Any]) -> str:
    return " ".join(caution["text"] for caution in record["cautions"])


def test_straight_keeps_the_rating() -> None:
    found = run()
    assert value(found, "capacity") == pytest.approx(1000)
    assert found["verdict"] == "unknown"
    assert found["results"]["use_percent"]["text"] == "no load given"
    assert run(load="999 kg")["verdict"] == "ok"


def test_basket_is_twice_the_sine() -> None:
    found = run(hitch="basket", basket_angle="50", sling_kind="chain", load="1000 kg")
    assert value(found, "capacity") == pytest.approx(2000 * math.sin(math.radians(50)))
    assert found["verdict"] == "ok"
    assert "Pad every corner" in texts(found)


@pytest.mark.parametrize(
    ("angle", "verdict"), [("29.9", "stop"), ("30", "caution"), ("44.9", "caution"), ("45", "ok")]
)
def test_basket_angle_bands(angle: str, verdict: str) -> None:
    found = run(hitch="basket", basket_angle=angle, sling_kind="chain", load="10 kg")
    assert found["verdict"] == verdict
    assert ("do not lift like this" in found["headline"]) == (verdict == "stop")


def test_plumb_basket_has_two_hooks_drawn() -> None:
    assert run(hitch="basket")["figure"]["svg"].count('class="hook"') == 2
    assert run(hitch="basket", basket_angle="60")["figure"]["svg"].count('class="hook"') == 1


def test_choke_times_its_angle() -> None:
    found = run(hitch="choker", choke_angle="100", sling_kind="chain", load="500 kg")
    assert value(found, "factor_hitch") == pytest.approx(0.75)
    assert value(found, "capacity") == pytest.approx(1000 * 0.75 * 0.87)
    assert found["verdict"] == "caution"
    assert "hammer" in texts(found)
    assert "own tag" in texts(run(hitch="choker", sling_kind="web-sling"))


def test_bend_of_wire_rope_counts_and_of_others_does_not() -> None:
    rope = run(hitch="basket", object_diameter="80 mm", sling_diameter="20 mm", load="1499 kg")
    assert value(rope, "bend_ratio") == pytest.approx(4)
    assert value(rope, "capacity") == pytest.approx(1500)
    web = run(hitch="basket", sling_kind="web-sling", object_diameter="80 mm", sling_diameter="20 mm")
    assert value(web, "factor_bend") == 1
    unknown = run(hitch="basket", load="10 kg")
    assert value(unknown, "bend_ratio") is None
    assert value(unknown, "capacity") is None
    assert unknown["verdict"] == "unknown"
    assert "as little as half" in unknown["headline"]


@pytest.mark.parametrize(("kind", "least"), [("chain", 6.0), ("fibre-rope", 8.0)])
@pytest.mark.parametrize("hitch", ["basket", "choker"])
def test_chain_and_fiber_rope_bent_tightly_have_no_rating(kind: str, least: float, hitch: str) -> None:
    """Chain in a basket round a bar as thin as itself held twice its rating, while load-path said that no rule covers it."""
    asked = {"sling_kind": kind, "hitch": hitch, "sling_diameter": "20 mm", "load": "100 kg"}
    wide = run(**asked, object_diameter=f"{20 * least} mm")
    assert wide["verdict"] in ("ok", "caution")
    assert value(wide, "factor_bend") == 1
    assert value(wide, "bend_ratio") == pytest.approx(least)
    assert "from memory of ASME B30.9" in texts(wide)
    tight = run(**asked, object_diameter=f"{20 * least - 0.1} mm")
    assert (tight["verdict"], value(tight, "capacity")) == ("unknown", None)
    assert f"less than {least:.0f} times" in tight["headline"]
    left_out = run(**asked | {"object_diameter": "", "sling_diameter": ""})
    assert (left_out["verdict"], value(left_out, "capacity")) == ("unknown", None)
    assert run(**asked | {"object_diameter": "", "sling_diameter": "", "load": "3 t"})["verdict"] == "stop"


def test_a_rating_that_no_chain_of_its_wire_has_is_refused() -> None:
    """Grade 80 of 10 mm wire: 1.15 x 200 N/mm2 x 157 mm2 is 3,684 kg at most."""
    chain = {"sling_kind": "chain", "hitch": "basket", "object_diameter": "200 mm", "sling_diameter": "10 mm"}
    assert run(**chain, rating="3,680 kg", load="10 kg")["verdict"] == "ok"
    with pytest.raises(Refused, match="more than any such sling"):
        run(**chain, rating="3,690 kg")
    with pytest.raises(Refused, match="more than any such sling"):
        run(**chain | {"sling_kind": "fibre-rope"}, rating="3,690 kg")


def test_over_load_is_a_stop() -> None:
    found = run(load="1001 kg")
    assert found["verdict"] == "stop"
    assert "Too much" in found["headline"]
    assert run(load="1000 kg")["verdict"] == "ok"


@pytest.mark.parametrize(
    ("more", "where"),
    [
        ({"hitch": "basket", "object_diameter": "19 mm", "sling_diameter": "20 mm"}, "object_diameter"),
        ({"hitch": "basket", "object_diameter": "19 mm"}, "sling_diameter"),
        ({"hitch": "basket", "sling_diameter": "19 mm"}, "object_diameter"),
        ({"rating": "0 kg"}, "rating"),
        ({"rating": "5 m"}, "rating"),
        ({"hitch": "knot"}, "hitch"),
        ({"sling_kind": ""}, "sling_kind"),
        ({"hitch": ""}, "hitch"),
        ({"hitch": "basket", "basket_angle": ""}, "basket_angle"),
        ({"hitch": "basket", "basket_angle": "0"}, "basket_angle"),
        ({"hitch": "basket", "basket_angle": "91"}, "basket_angle"),
        ({"hitch": "choker", "choke_angle": "-1"}, "choke_angle"),
        ({"hitch": "choker", "choke_angle": "181"}, "choke_angle"),
        ({"load": "text"}, "load"),
    ],
)
def test_refusals_name_their_box(more: dict[str, str], where: str) -> None:
    with pytest.raises(Refused) as caught:
        run(**more)
    assert [error.input for error in caught.value.errors] == [where]


def test_example_answers() -> None:
    assert answer("hitch", WORKSHEET.example, "us")["verdict"] == "ok"


def test_bend_below_one_is_refused() -> None:
    with pytest.raises(ValueError, match="thinner"):
        bend_share(0.99)


@pytest.mark.parametrize(
    ("angle", "share"),
    [
        (0, 0.49),
        (29, 0.49),
        (29.5, 0.49),
        (30, 0.62),
        (59, 0.62),
        (60, 0.74),
        (89, 0.74),
        (89.9, 0.74),
        (90, 0.87),
        (120, 0.87),
        (120.1, 1.0),
        (180, 1.0),
    ],
)
def test_choke_angle_bands_take_the_smaller_share_where_they_meet(angle: float, share: float) -> None:
    # ASME B30.9 pattern, from memory.
    assert choke_angle_share(angle).share == pytest.approx(share)


def test_natural_fibre_rope_chokes_to_under_half() -> None:
    # 29 CFR 1918 App. II Table 2, 1/2 in eye and eye: vertical 550 lb, choker 250 lb, the smallest share of the table.
    assert choker_share("fibre-rope").share == pytest.approx(250 / 550)


@given(st.floats(1, 50), st.floats(1, 50))
def test_wider_bends_never_hold_less(one: float, other: float) -> None:
    low, high = sorted((one, other))
    assert 0.5 <= bend_share(low).share <= bend_share(high).share < 0.82


def test_a_basket_of_rope_round_nobody_knows_what_was_called_within() -> None:
    """10,000 lb, basket, 19,000 lb, no diameters: was ok by 20,000 lb; round its own size it holds 10,000."""
    asked = {"hitch": "basket", "rating": "10,000 lb", "load": "19,000 lb"}
    assert run(**asked)["verdict"] == "unknown"
    tight = run(**asked, object_diameter="1 in", sling_diameter="1 in")
    assert tight["verdict"] == "stop"
    assert value(tight, "capacity") * 2.2046226 == pytest.approx(10000, rel=1e-6)


@pytest.mark.parametrize(
    ("grade", "verdict"),
    [("", "unknown"), ("70", "stop"), ("HT", "stop"), ("4", "unknown"), ("80", "caution")],
)
def test_chain_holds_by_its_tag_only_where_its_grade_may_lift(grade: str, verdict: str) -> None:
    """Chain of grade 70 with a limit on its tag held 4,950 lb choked, as if it might lift: nobody asked its grade."""
    asked = {"sling_kind": "chain", "hitch": "choker", "choke_angle": "130", "rating": "6,600 lb"}
    found = run(**asked, load="3,000 lb", grade=grade)
    assert found["verdict"] == verdict
    assert (value(found, "capacity") is None) == (verdict != "caution")


def test_only_chain_has_a_grade() -> None:
    with pytest.raises(Refused, match="only chain has a grade"):
        run(grade="80")


def test_rope_on_a_bare_edge_was_called_within() -> None:
    """Wire rope was never asked what it bears on: with a bare edge said it was ok all the same."""
    asked = {"hitch": "basket", "object_diameter": "10 in", "sling_diameter": "1/2 in", "load": "10 kg"}
    assert run(**asked)["verdict"] == "ok"
    assert run(**asked, edge="bare")["verdict"] == "stop"
    assert run(**asked, edge="")["verdict"] == "unknown"


@pytest.mark.parametrize("kind", ["chain", "web-sling", "fibre-rope"])
@pytest.mark.parametrize("hitch", ["choker", "basket"])
def test_an_edge_is_never_taken_kindly(kind: str, hitch: str) -> None:
    for edge, verdict in (("", "unknown"), ("bare", "stop")):
        found = run(sling_kind=kind, hitch=hitch, load="10 kg", edge=edge)
        assert found["verdict"] == verdict
        assert value(found, "capacity") is None
    assert run(sling_kind=kind, hitch="vertical", load="10 kg", edge="bare")["verdict"] == "ok"


def test_a_choke_that_was_not_measured_counts_as_the_worst() -> None:
    found = run(sling_kind="chain", hitch="choker", choke_angle="", load="367 kg")
    assert value(found, "capacity") == pytest.approx(1000 * 0.75 * 0.49)
    assert found["verdict"] == "caution"
    assert "smallest angle is assumed" in found["headline"]
    assert "not measured" in found["figure"]["caption"]


def test_a_flat_basket_says_no_capacity() -> None:
    found = run(hitch="basket", basket_angle="29", sling_kind="chain", load="10 kg")
    assert value(found, "capacity") is None
    assert "holds" not in found["headline"]


@pytest.mark.parametrize(("condition", "verdict"), [("", "unknown"), ("worn", "unknown"), ("heated", "stop")])
def test_a_sling_that_was_not_found_good_holds_nothing(condition: str, verdict: str) -> None:
    found = run(load="10 kg", condition=condition)
    assert found["verdict"] == verdict
    assert value(found, "capacity") is None


@pytest.mark.parametrize(
    ("rating", "taken"), [("56 short tons", False), ("11.3 short tons", False), ("11.1 short tons", True)]
)
def test_a_rope_is_not_rated_over_its_diameter(rating: str, taken: bool) -> None:
    """3/4 in rope whose tag was typed with a nought too many: twice the 5.6 short tons that are printed is the most."""
    raw = {**WORKSHEET.example, "rating": rating}
    if taken:
        assert answer("hitch", raw)["ok"]
        return
    with pytest.raises(Refused) as caught:
        answer("hitch", raw)
    assert [one.input for one in caught.value.errors] == ["rating"]


def test_rope_thicker_than_any_that_is_printed_is_not_held_against_the_table() -> None:
    thick = {"rating": "56 short tons", "sling_diameter": "6 in", "object_diameter": "60 in"}
    assert answer("hitch", {**WORKSHEET.example, **thick})["ok"]
