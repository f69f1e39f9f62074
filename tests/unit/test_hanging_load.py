"""hanging-load: balance, degenerate cases, refusals, words, drawing."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from calc.answering import Refused, answer
from calc.figures.hanging import world_axes
from calc.lifting.chain_spring import chain_stiffness_n
from calc.lifting.hanging import level_lengths, resting_places, springy_rest
from calc.lifting.hanging_load import WORKSHEET
from tests.saying import one_reading

Point = tuple[float, float, float]
CHAIN = {"leg_kind": "chain", "grade": "80"}
SQUARE: list[Point] = [(1.1, 0.9, 0.0), (-1.1, 0.9, 0.0), (-1.1, -0.9, 0.0), (1.1, -0.9, 0.0)]
G = 9.80665


def run(
    picks: list[Point], lengths: list[float], centre: Point, load: str = "1000 kg", **more: Any
) -> dict[str, Any]:
    rows: list[dict[str, Any]] = [
        {"at": [f"{one_reading(c)} m" for c in pick], "length": f"{one_reading(length)} m"}
        for pick, length in zip(picks, lengths, strict=True)
    ]
    for row, rating in zip(rows, more.pop("ratings", []), strict=False):
        row["rating"] = rating
    usual = {"balance_tolerance": "0.001 mm", "chain_size": "10 mm", "condition": "marked-good"} | CHAIN
    inputs = {**usual, "load": load, "picks": rows, "centre": [f"{one_reading(c)} m" for c in centre], **more}
    return answer("hanging-load", inputs, "si")


def value(record: dict[str, Any], key: str) -> Any:
    return record["results"][key]["value"]


def texts(record: dict[str, Any]) -> str:
    return " ".join(caution["text"] for caution in record["cautions"])


def test_two_even_legs_pull_by_the_sine() -> None:
    found = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [2.0, 2.0], (0.0, 0.0, -0.3))
    expected = 1000 * G / 2 / math.sin(math.acos(0.5)) / 1000
    assert value(found, "tensions") == pytest.approx([expected, expected])
    assert value(found, "lowest_leg_angle") == pytest.approx(60)
    assert value(found, "tilt") == pytest.approx(0, abs=1e-9)
    assert value(found, "headroom") == pytest.approx(1000 * math.sqrt(3))
    assert value(found, "stable") is True
    assert value(found, "taut") == [True, True]
    assert "level as it is" in found["results"]["level_lengths"]["text"]


def test_four_even_legs_count_two_and_say_so() -> None:
    found = run(SQUARE, [2.3] * 4, (0.0, 0.0, -0.4))
    # Either pair may carry it: each of the four is shown with what it pulls then, and none is called slack.
    assert value(found, "taut") == [None] * 4
    assert value(found, "tensions") == pytest.approx([value(found, "tensions")[0]] * 4)
    assert found["results"]["taut"]["text"].count("tight or slack") == 4
    assert "Which of them go slack is not known" in texts(found)
    assert "not known which of them carry it and which go slack" in found["headline"]
    assert "nothing" not in found["headline"]
    assert value(found, "springy_tensions") == pytest.approx(
        [value(found, "springy_tensions")[0]] * 4, rel=1e-6
    )
    # By stretch four even legs share evenly: half of what a pair would have.
    assert value(found, "springy_tensions")[0] == pytest.approx(max(value(found, "tensions")) / 2, rel=1e-2)


def test_one_short_leg_of_four_throws_the_load_on_its_diagonal() -> None:
    found = run(SQUARE, [2.3, 2.3, 2.3, 2.26], (0.0, 0.0, -0.4), ratings=["2 t"] * 4)
    assert value(found, "taut") == [False, True, False, True]
    assert found["verdict"] == "caution"
    assert "Slack legs carry nothing" in texts(found)
    assert "leg-slack" in found["figure"]["svg"]
    assert "dashed: leg 1, 3" in found["figure"]["caption"]


def test_balance_point_level_with_two_picks_is_free_to_roll() -> None:
    found = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [2.0, 2.0], (0.2, 0.0, 0.0))
    assert value(found, "stable") is False
    assert "rolling about their line" in texts(found)
    assert value(found, "hook")[2] > 0


def test_two_picks_under_the_balance_point_roll_over() -> None:
    found = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [2.0, 2.0], (0.0, 0.0, 0.3))
    assert found["verdict"] == "stop"
    assert value(found, "tensions") is None
    assert found["results"]["tensions"]["text"] == "it rolls over first"
    assert "roll over" in found["headline"]


def test_top_heavy_load_on_four_legs_stands_but_can_roll() -> None:
    found = run(SQUARE, [2.3] * 4, (0.0, 0.0, 0.3), ratings=["2 t"] * 4)
    assert value(found, "stable") is True
    assert found["verdict"] == "caution"
    assert "would hang lower if it turned over" in texts(found)


def test_balance_point_outside_the_picks_hangs_on_one_leg() -> None:
    found = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [3.0, 3.0], (1.5, 0.0, -0.3))
    assert value(found, "taut") == [True, False]
    assert value(found, "tensions")[0] == pytest.approx(G)
    assert value(found, "leg_angles") == pytest.approx([90.0, None])
    assert "not between the picks" in found["results"]["level_lengths"]["text"]
    assert found["headline"].startswith("Leg 1 carries it")
    assert "Leg 2 carries nothing" in found["headline"]


def test_coincident_picks_and_a_pick_at_the_balance_point() -> None:
    together = run([(0.3, 0.1, 0.0), (0.3, 0.1, 0.0)], [2.0, 2.1], (0.3, 0.1, -0.5))
    assert value(together, "taut") == [True, False]
    at_centre = resting_places([(0.3, 0.1, 0.2)], [1.7], (0.3, 0.1, 0.2))
    assert at_centre[0].hook == pytest.approx((0.3, 0.1, 1.9))


def test_picks_in_line_take_the_worst_way_to_share() -> None:
    found = run(
        [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 0.0, 0.0)], [2.0, 2.0, math.sqrt(3)], (0.0, 0.0, -0.3)
    )
    # The middle leg alone, or the outer pair: none is sure.
    assert value(found, "taut") == [None, None, None]
    assert value(found, "tensions")[2] == pytest.approx(G)
    assert value(found, "tensions")[0] == pytest.approx(G / math.sqrt(3))


def test_upright_line_of_picks() -> None:
    found = run([(0.0, 0.0, 0.0), (0.0, 0.0, 1.0)], [3.7, 2.5], (0.0, 0.0, -1.0))
    assert value(found, "taut") == [False, True]
    assert value(found, "tilt") == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize(
    ("lengths", "where", "words"),
    [
        ([0.9, 0.9], "picks[1].length", "cannot both reach"),
        ([1.0, 1.0], "picks[1].length", "cannot both reach"),
        ([0.5, 3.0], "picks", "cannot all reach"),
    ],
)
def test_legs_too_short_to_meet_are_refused(lengths: list[float], where: str, words: str) -> None:
    picks = [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)]
    if where == "picks":
        picks, lengths = [(0.0, 1.0, 0.0), (0.9, -0.5, 0.0), (-0.9, -0.5, 0.0)], [0.95, 0.95, 0.95]
    with pytest.raises(Refused, match=words) as caught:
        run(picks, lengths, (0.0, 0.0, -0.3))
    assert caught.value.errors[0].input == where


def test_a_leg_so_long_that_it_does_nothing() -> None:
    found = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [0.5, 3.0], (0.9, 0.0, -0.3))
    assert value(found, "taut") == [True, False]


def test_low_legs_are_a_stop_and_lowish_ones_careful() -> None:
    low = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [1.1, 1.1], (0.0, 0.0, -0.3))
    assert low["verdict"] == "stop"
    assert "under 30°" in low["headline"]
    assert "leg-stop" in low["figure"]["svg"]
    lowish = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [1.3, 1.3], (0.0, 0.0, -0.3), ratings=["1 t", "1 t"])
    assert lowish["verdict"] == "caution"
    assert "between 30° and 45°" in texts(lowish)
    assert "leg-careful" in lowish["figure"]["svg"]


def test_each_leg_is_held_against_its_own_rating() -> None:
    picks, centre = [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], (0.0, 0.0, -0.3)
    good = run(picks, [2.0, 2.0], centre, ratings=["1100 kg", "700 kg"])
    pull = 500 / math.sin(math.radians(60))
    assert value(good, "use_percent") == pytest.approx([pull / 11, pull / 7], rel=0.01)
    worst = [1000 * force / G for force in value(good, "worst_tensions")]
    assert value(good, "use_percent") == pytest.approx([worst[0] / 11, worst[1] / 7])
    assert good["verdict"] == "ok"
    half = run(picks, [2.0, 2.0], centre, ratings=["1100 kg"])
    assert value(half, "use_percent")[0] == pytest.approx(pull / 11, rel=0.01)
    assert value(half, "use_percent")[1] is None
    assert half["verdict"] == "unknown"
    assert "Give the rating of leg 2" in half["headline"]
    over = run(picks, [2.0, 2.0], centre, ratings=["1100 kg", "500 kg"])
    assert over["verdict"] == "stop"
    assert "over the rating of leg" in over["headline"]


def test_lengths_that_level_it_do_level_it() -> None:
    picks: list[Point] = [(0.0, 0.0, 0.6), (0.0, 0.46, 0.6), (0.97, 0.23, 0.69)]
    tipped = run(picks, [1.07, 1.09, 1.16], (0.33, 0.21, 0.25))
    assert value(tipped, "tilt") > 0.5
    lengths = [length / 1000 for length in value(tipped, "level_lengths")]
    level = run(picks, lengths, (0.33, 0.21, 0.25))
    assert value(level, "tilt") == pytest.approx(0, abs=1e-6)
    assert value(level, "hook")[0] == pytest.approx(330)
    assert "To hang it level" in texts(tipped)


def test_no_level_lengths_if_a_leg_does_not_reach() -> None:
    assert level_lengths([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [1.9, 0.4], (0.0, 0.0, -1.0)) is None
    found = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [1.9, 0.4], (0.0, 0.0, -3.0))
    assert "too short to hold" in found["results"]["level_lengths"]["text"]


@pytest.mark.parametrize(
    ("centre", "side"),
    [
        ((0.3, 0.0, -0.4), "right"),
        ((-0.3, 0.0, -0.4), "left"),
        ((0.0, 0.3, -0.4), "back"),
        ((0.0, -0.3, -0.4), "front"),
        ((0.3, 0.3, -0.4), "right and back"),
        ((-0.2, -0.3, -0.4), "left and front"),
    ],
)
def test_the_side_of_the_balance_point_goes_low(centre: Point, side: str) -> None:
    found = run(SQUARE, [2.3] * 4, centre)
    assert value(found, "low_side") == side
    assert f"{side} low" in found["headline"]


def test_rocking_between_two_resting_places_is_said() -> None:
    picks: list[Point] = [(-0.6, 0.9, 0.0), (-0.6, 0.1, 0.1), (0.5, 0.2, 0.3), (0.4, -0.4, -0.2)]
    found = run(picks, [1.9, 1.7, 1.4, 2.1], (-0.2, 0.1, 0.1))
    assert value(found, "taut") == [False, True, True, False]
    assert "rock from one to the other" in texts(found)


def test_one_link_short_names_a_harder_pull() -> None:
    found = run(SQUARE, [2.3] * 4, (0.0, 0.0, -0.4), chain_size="13 mm")
    assert value(found, "short_link_tension") > max(value(found, "springy_tensions"))
    assert any(step["label"] == "If one leg is one link shorter" for step in found["steps"])


def test_no_link_to_spare_is_said() -> None:
    found = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [1.001, 1.001], (0.0, 0.0, -0.3), chain_size="13 mm")
    assert value(found, "short_link_tension") is None
    tiny = run([(0.001, 0.0, 0.0), (-0.001, 0.0, 0.0)], [0.06, 0.06], (0.0, 0.0, -0.3), chain_size="4 in")
    assert tiny["results"]["short_link_tension"]["text"] == "none was found for these lengths"


def test_stiffness_of_chain_falls_with_size_of_bar() -> None:
    # DNV-OS-E301 (2010), studless R4: (5.45 - 0.0025 d) x 10^10 N/m2 on both sides of the link.
    assert chain_stiffness_n(0.1) == pytest.approx((5.45 - 0.25) * 1e10 * 2 * math.pi / 4 * 0.01, rel=1e-12)


@pytest.mark.parametrize("count", [0, 1, 9, 100])
def test_two_to_eight_legs(count: int) -> None:
    with pytest.raises(Refused, match="rows") as caught:
        run([(1.0 + i, 0.0, 0.0) for i in range(count)], [200.0] * count, (0.0, 0.0, 0.0))
    assert caught.value.errors[0].input == "picks"


@pytest.mark.parametrize(
    ("change", "where"),
    [
        ({"load": "0 lb"}, "load"),
        ({"load": "-5 kg"}, "load"),
        ({"load": "5 in"}, "load"),
        ({"load": "3000000 lb"}, "load"),
        ({"centre": ["1 m", "x", "0"]}, "centre[1]"),
        ({"centre": "1;2"}, "centre"),
        ({"chain_size": "0"}, "chain_size"),
        ({"chain_size": "5 in"}, "chain_size"),
        ({"picks": "none"}, "picks"),
    ],
)
def test_bad_inputs_name_their_box(change: dict[str, Any], where: str) -> None:
    with pytest.raises(Refused) as caught:
        answer("hanging-load", {**WORKSHEET.example, **change}, "us")
    assert [error.input for error in caught.value.errors] == [where]


def test_example_answers_within_the_rating() -> None:
    found = answer("hanging-load", WORKSHEET.example, "us")
    assert found["verdict"] == "ok"
    assert "From the front" in found["figure"]["svg"]
    assert "From the right" in found["figure"]["svg"]


def test_views_of_a_load_on_its_end() -> None:
    right, back = world_axes((1.0, 0.0, 0.0))
    assert right == pytest.approx((0.0, 0.0, -1.0))
    assert back == pytest.approx((0.0, 1.0, 0.0))
    assert world_axes((0.0, 0.0, 1.0)) == ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))


def test_springs_that_do_not_settle_say_nothing() -> None:
    assert springy_rest([(0.0, 0.0, 0.0)], [1.0], (0.0, 0.0, -1.0), 1e9, [1e-9], (0.0, 0.0, 1.0)) is None
    # So stiff that rounding alone is a pull: no step goes down any more.
    picks = [(0.7, 0.1, 0.0), (-0.9, 0.0, 0.1)]
    assert springy_rest(picks, [1.3, 1.7], (0.1, 0.3, -1.0), 1.0, [1e22, 1e22], (0.2, -0.3, 1.0)) is None


# ------------------------------------------------------------------------------------------------ properties

coordinate = st.floats(-2, 2)
leg = st.tuples(coordinate, coordinate, st.floats(-0.5, 0.5), st.floats(1.1, 6.0))
loads = st.tuples(
    st.lists(leg, min_size=2, max_size=6), st.tuples(coordinate, coordinate, st.floats(-2.0, 0.4))
)


@settings(max_examples=300, deadline=None)
@given(loads)
def test_forces_and_moments_balance(case: tuple[list[tuple[float, float, float, float]], Point]) -> None:
    legs, centre = case
    picks, lengths = [leg[:3] for leg in legs], [leg[3] for leg in legs]
    for rest in resting_places(picks, lengths, centre):
        tensions, up = rest.tensions_n(7.0, lengths), rest.up(centre)
        force, moment = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
        for pick, length, tension in zip(picks, lengths, tensions, strict=True):
            pull = [tension * (h - p) / length for h, p in zip(rest.hook, pick, strict=True)]
            arm = [p - c for p, c in zip(pick, centre, strict=True)]
            for i in range(3):
                force[i] += pull[i]
                moment[i] += arm[(i + 1) % 3] * pull[(i + 2) % 3] - arm[(i + 2) % 3] * pull[(i + 1) % 3]
        assert force == pytest.approx([7.0 * u for u in up], abs=1e-6)
        assert moment == pytest.approx([0.0, 0.0, 0.0], abs=1e-5)
        assert min(tensions) >= 0
        assert all(
            math.dist(rest.hook, p) <= length * (1 + 1e-6) for p, length in zip(picks, lengths, strict=True)
        )


@settings(max_examples=100, deadline=None)
@given(loads, st.floats(0.1, 10), st.tuples(coordinate, coordinate, coordinate))
def test_moving_and_scaling_the_load_changes_nothing_else(
    case: tuple[list[tuple[float, float, float, float]], Point], factor: float, shift: Point
) -> None:
    legs, centre = case

    def carried(point: Any) -> Point:
        x, y, z = (factor * (c + s) for c, s in zip(point, shift, strict=True))
        return x, y, z

    first = resting_places([leg[:3] for leg in legs], [leg[3] for leg in legs], centre)
    second = resting_places(
        [carried(leg[:3]) for leg in legs], [factor * leg[3] for leg in legs], carried(centre)
    )
    assume(first and second)
    assert second[0].depth_m == pytest.approx(factor * first[0].depth_m, rel=1e-6)


@settings(max_examples=100, deadline=None)
@given(loads)
def test_a_longer_slack_leg_changes_nothing(
    case: tuple[list[tuple[float, float, float, float]], Point],
) -> None:
    legs, centre = case
    picks, lengths = [leg[:3] for leg in legs], [leg[3] for leg in legs]
    first = resting_places(picks, lengths, centre)
    assume(first)
    longer = [length if leg in first[0].touching else length * 1.5 for leg, length in enumerate(lengths)]
    assert any(math.dist(rest.hook, first[0].hook) < 1e-6 for rest in resting_places(picks, longer, centre))


# ------------------------------------------------------------------------------------------------ edges


def test_level_lengths_by_hand() -> None:
    # Picks 3 and 4 beside the balance point, both legs 5: heights 4 and 3, so the hook stands at 3: legs sqrt(18) and 5.
    assert level_lengths([(3.0, 0.0, 0.0), (0.0, 4.0, 0.0)], [5.0, 5.0], (0.0, 0.0, -1.0)) == pytest.approx(
        (math.sqrt(18), 5.0)
    )
    # The same one higher and moved aside; a leg that only just reaches level is none.
    moved = level_lengths([(4.0, 1.0, 1.0), (1.0, 5.0, 1.0)], [5.0, 5.0], (1.0, 1.0, 0.0))
    assert moved == pytest.approx((math.sqrt(18), 5.0))
    assert level_lengths([(3.0, 0.0, 0.0), (0.0, 5.0, 0.0)], [5.0, 5.0], (0.0, 0.0, -1.0)) is None


def test_balance_point_on_a_sloping_line_of_picks_hangs_with_the_hook_most_upward() -> None:
    rests = resting_places([(1.0, 0.0, 0.5), (-1.0, 0.0, -0.5)], [2.0, 2.0], (0.0, 0.0, 0.0))
    free = next(rest for rest in rests if rest.free_to_roll)
    half = math.sqrt(1.25)
    high = math.sqrt(4 - 1.25)
    assert free.hook == pytest.approx((-0.5 / half * high, 0.0, 1.0 / half * high))


def test_balance_point_on_an_upright_line_of_picks_has_the_hook_to_the_right() -> None:
    rests = resting_places([(0.0, 0.0, 1.0), (0.0, 0.0, -1.0)], [2.0, 2.0], (0.0, 0.0, 0.0))
    free = next(rest for rest in rests if rest.free_to_roll)
    assert free.hook == pytest.approx((math.sqrt(3), 0.0, 0.0))


def test_a_hook_is_over_only_upright_and_above_the_picks_that_carry() -> None:
    picks: list[Point] = [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)]
    down = resting_places(picks, [2.0, 2.0], (0.0, 0.0, 0.3))[0]
    assert not down.hook_is_over(picks, (0.0, 0.0, 0.3))
    up = resting_places(picks, [2.0, 2.0], (0.0, 0.0, -0.3))[0]
    assert up.hook_is_over(picks, (0.0, 0.0, -0.3))
    # Level with the balance point the load lies on its side: not upright, however high the hook.
    assert not up.hook_is_over(picks, (0.0, 1.0, up.hook[2]))
    # Upright, but the hook under the picks.
    assert not up.hook_is_over([(1.0, 0.0, 9.0), (-1.0, 0.0, 9.0)], (0.0, 0.0, -0.3))


def test_where_springs_do_not_settle_the_sheet_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    """The search for rest on springs may end without one; then no figure is shown for it, and all else stands."""
    monkeypatch.setattr("calc.lifting.hung_load.springy_rest", lambda *_: None)
    record = answer("hanging-load", dict(WORKSHEET.example), "us")
    for name in ("springy_tensions", "short_link_tension"):
        assert record["results"][name]["text"] == "none was found for these lengths"
    assert record["results"]["tensions"]["value"][0] > 0


@pytest.mark.parametrize("scale", [0.001, 1.0, 1000.0])
def test_the_size_of_the_load_does_not_change_how_it_hangs(scale: float) -> None:
    """Edges that rounding decides are taken by their share of the longest leg, from a toy to a ship."""

    def rests(picks: list[Point], lengths: list[float], centre: Point) -> Any:
        sized = [(scale * x, scale * y, scale * z) for x, y, z in picks]
        x, y, z = centre
        return resting_places(
            sized, [scale * length for length in lengths], (scale * x, scale * y, scale * z)
        )

    square = rests(SQUARE, [2.3] * 4, (0.0, 0.0, -0.4))[0]
    assert square.touching == (0, 1, 2, 3)
    assert sorted(square.tensions_n(1.0, [2.3 * scale] * 4))[:2] == [0.0, 0.0]
    # A pick at the balance point, coincident picks, legs that only just meet, a balance point on the line of the picks.
    own = rests([(0.3, 0.1, 0.2)], [1.7], (0.3, 0.1, 0.2))[0]
    assert own.hook == pytest.approx((0.3 * scale, 0.1 * scale, 1.9 * scale))
    assert rests([(0.3, 0.1, 0.0), (0.3, 0.1, 0.0)], [2.0, 2.1], (0.3, 0.1, -0.5))[0].touching == (0,)
    assert rests([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [1.0, 1.0], (0.0, 0.0, -0.3)) == []
    line = rests([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [2.0, 2.0], (0.0, 0.0, 0.0))
    assert any(rest.free_to_roll and rest.hook[2] == pytest.approx(scale * math.sqrt(3)) for rest in line)
    # Three picks in line give no three legs that stand in space: the middle one or the outer pair.
    row = rests(
        [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 0.0, 0.0)], [2.0, 2.0, math.sqrt(3)], (0.0, 0.0, -0.3)
    )[0]
    assert row.touching == (0, 1, 2)
    assert row.shares[2] > 1


def test_balance_point_on_a_line_of_picks_that_slopes_to_the_back() -> None:
    rests = resting_places([(0.0, 1.0, 0.5), (0.0, -1.0, -0.5)], [2.0, 2.0], (0.0, 0.0, 0.0))
    free = next(rest for rest in rests if rest.free_to_roll)
    half, high = math.sqrt(1.25), math.sqrt(4 - 1.25)
    assert free.hook == pytest.approx((0.0, -0.5 / half * high, 1.0 / half * high))


@settings(max_examples=200, deadline=None)
@given(st.integers(50, 200), st.integers(30, 150), st.integers(26, 40), st.integers(0, 10))
def test_an_even_square_sling_counts_two_legs_whatever_rounding_leaves(
    right: int, back: int, length: int, low: int
) -> None:
    r, b = right / 100, back / 100
    picks: list[Point] = [(r, b, 0.0), (-r, b, 0.0), (-r, -b, 0.0), (r, -b, 0.0)]
    rest = resting_places(picks, [length / 10] * 4, (0.0, 0.0, -low / 10))[0]
    assert rest.touching == (0, 1, 2, 3)
    assert [share for share in rest.shares if share == 0.0] == [0.0, 0.0]
    assert min(share for share in rest.shares if share > 0) > 0.49


def test_an_overload_is_an_overload_though_another_leg_is_unrated() -> None:
    """Leg 1 at 1,160 % with leg 2 unrated was Careful, without a word of an overload."""
    found = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [2.0, 2.0], (0.0, 0.0, -0.3), ratings=["50 kg"])
    assert found["verdict"] == "stop"
    assert value(found, "use_percent")[0] > 1100
    assert "legs 1" not in found["headline"]
    assert "over the rating of leg 1" in found["headline"]


def test_a_load_that_tips_far_is_not_lifted() -> None:
    """A 73 degree tip on one leg was Careful."""
    found = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [3.0, 9.0], (2.0, 0.0, -0.3), ratings=["5 t", "5 t"])
    assert value(found, "tilt") > 70
    assert found["verdict"] == "stop"
    assert "do not lift like this" in found["headline"]


@pytest.mark.parametrize(("off", "verdict"), [(0.365, "caution"), (0.367, "stop")])
def test_ten_degrees_of_tip_are_the_bound(off: float, verdict: str) -> None:
    # Depth under the hook sqrt(3) + 0.344 m: tan 10 degrees of it is 0.366 m.
    found = run(
        [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)],
        [2.0, 2.0],
        (off, 0.0, -0.344),
        ratings=["5 t", "5 t"],
    )
    assert found["verdict"] == verdict


def test_a_link_short_is_what_the_legs_are_judged_by() -> None:
    """As typed 95.5 % was ok; one leg a link short it is 106 %."""
    four = {"load": "1000 kg", "chain_size": "13 mm"}
    typed = run(SQUARE, [2.3, 2.3, 2.3, 2.3], (0.3, 0.2, -0.4), **four)
    short = value(typed, "short_link_tension")
    assert value(typed, "worst_tension") >= short
    rating = f"{one_reading(1000 * short / G * 0.99)} kg"
    assert run(SQUARE, [2.3] * 4, (0.3, 0.2, -0.4), ratings=[rating] * 4, **four)["verdict"] == "stop"


def test_a_balance_point_that_is_off_counts() -> None:
    """Two plumb-hung legs 2 m apart and a balance point that may be 0.2 m off: 0.6 of the load on one of them, not half."""
    picks: list[Point] = [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)]
    sure = run(picks, [20.0, 20.0], (0.0, 0.0, -0.3), chain_size="1 mm")
    off = run(picks, [20.0, 20.0], (0.0, 0.0, -0.3), chain_size="1 mm", balance_tolerance="200 mm")
    assert value(sure, "worst_tension") == pytest.approx(0.5 * G, rel=5e-3)
    assert value(off, "worst_tension") == pytest.approx(0.6 * G, rel=5e-3)
    assert value(off, "worst_tensions") == pytest.approx([0.6 * G] * 2, rel=5e-3)


def test_top_heavy_within_the_tolerance_rolls_over() -> None:
    picks: list[Point] = [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)]
    rated: dict[str, Any] = {"ratings": ["5 t"] * 2, "balance_tolerance": "60 mm"}
    found = run(picks, [2.0, 2.0], (0.0, 0.0, -0.05), **rated)
    assert found["verdict"] == "stop"
    assert "It can roll over" in found["headline"]
    # Not over yet, but lying on its side: the balance point 40 mm beside and 10 mm under the line of two picks.
    rated = {"ratings": ["5 t"] * 2, "balance_tolerance": "40 mm"}
    side = run(picks, [2.0, 2.0], (0.0, 0.0, -0.05), **rated)
    assert value(side, "worst_tilt") == pytest.approx(math.degrees(math.atan2(40, 10)), abs=0.2)
    assert side["verdict"] == "stop"
    rated = {"ratings": ["5 t"] * 2, "balance_tolerance": "40 mm"}
    assert run(picks, [2.0, 2.0], (0.0, 0.0, -1.0), **rated)["verdict"] == "ok"


@pytest.mark.parametrize(
    ("condition", "verdict"), [("", "unknown"), ("unmarked", "unknown"), ("welded", "stop")]
)
def test_legs_that_were_not_found_good_are_not_within(condition: str, verdict: str) -> None:
    picks: list[Point] = [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)]
    found = run(picks, [2.0, 2.0], (0.0, 0.0, -0.3), ratings=["5 t"] * 2, condition=condition)
    assert found["verdict"] == verdict


def test_what_a_link_does_must_be_found_to_be_within() -> None:
    picks: list[Point] = [(0.001, 0.0, 0.0), (-0.001, 0.0, 0.0)]
    found = run(picks, [0.06, 0.06], (0.0, 0.0, -0.3), ratings=["5 t"] * 2, chain_size="4 in")
    assert found["verdict"] == "unknown"
    assert found["big"]["key"] == "highest_tension"
    assert "could not be worked out" in found["headline"]


@pytest.mark.parametrize("name", ["balance_tolerance", "chain_size"])
def test_what_makes_the_worst_case_is_asked(name: str) -> None:
    with pytest.raises(Refused) as caught:
        answer("hanging-load", {**WORKSHEET.example, name: ""}, "us")
    assert [error.input for error in caught.value.errors] == [name]


@settings(max_examples=60, deadline=None)
@given(loads, st.floats(0.001, 0.05))
def test_the_worst_is_never_under_what_was_typed(
    case: tuple[list[tuple[float, float, float, float]], Point], off: float
) -> None:
    legs, centre = case
    try:
        found = run(
            [leg[:3] for leg in legs],
            [leg[3] for leg in legs],
            centre,
            balance_tolerance=f"{one_reading(off)} m",
        )
    except Refused:
        return
    worst, typed = value(found, "worst_tensions"), value(found, "tensions")
    if worst is None or typed is None:
        return
    assert all(one >= other * (1 - 1e-9) for one, other in zip(worst, typed, strict=True))
    if value(found, "worst_tilt") is None:  # it may roll over
        assert found["verdict"] == "stop"
        return
    assert value(found, "worst_tilt") >= value(found, "tilt") * (1 - 1e-9)


def test_a_load_that_may_roll_over_has_no_worst_tip() -> None:
    """A balance point known worse made the worst tip smaller: 87.9 degrees off by 14 in, 77.2 off by 56 in."""
    tips = [
        answer("hanging-load", {**WORKSHEET.example, "balance_tolerance": off}) for off in ("14 in", "56 in")
    ]
    assert [one["verdict"] for one in tips] == ["stop", "stop"]
    assert value(tips[1], "worst_tilt") is None


@pytest.mark.parametrize(
    ("legs", "verdict"),
    [
        ({"leg_kind": "", "grade": ""}, "unknown"),
        ({"leg_kind": "chain", "grade": ""}, "unknown"),
        ({"leg_kind": "chain", "grade": "70"}, "stop"),
        ({"leg_kind": "chain", "grade": "4"}, "unknown"),
        ({"leg_kind": "wire-rope", "grade": ""}, "ok"),
        ({"leg_kind": "chain", "grade": "80"}, "ok"),
    ],
)
def test_legs_count_by_their_tags_only_where_they_may_lift(legs: dict[str, str], verdict: str) -> None:
    """Legs with a limit on their tags were within it, whatever they were: nobody asked kind or grade."""
    found = run(
        [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [2.0, 2.0], (0.0, 0.0, -0.3), ratings=["3 t", "3 t"], **legs
    )
    assert found["verdict"] == verdict


def test_a_chain_too_thin_for_its_rating_is_refused() -> None:
    """A size of a thousandth of an inch made a link short to nothing, and the legs were judged by it."""
    legs: dict[str, Any] = {"ratings": ["3 t", "3 t"]}
    upright = [(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)]
    run(upright, [2.0, 2.0], (0.0, 0.0, -0.3), chain_size="8 mm", **legs)
    with pytest.raises(Refused, match="thinner than any lifting chain rated 3,000 kg"):
        run(upright, [2.0, 2.0], (0.0, 0.0, -0.3), chain_size="7 mm", **legs)


@pytest.mark.parametrize(("leg", "taken"), [("0.00006 in", False), ("1.99 in", False), ("2 in", True)])
def test_a_leg_shorter_than_any_sling_is_refused(leg: str, taken: bool) -> None:
    """In a leg of 0.00006 in what rounding leaves made the pull."""
    picks = [{"at": ["0", "0", "24 in"], "length": leg}, {"at": ["1 in", "0", "24 in"], "length": leg}]
    raw = {**WORKSHEET.example, "centre": ["0.5 in", "0", "10 in"], "picks": picks}
    if taken:
        assert answer("hanging-load", raw)["ok"]
        return
    with pytest.raises(Refused) as caught:
        answer("hanging-load", raw)
    assert [one.input for one in caught.value.errors] == ["picks[0].length", "picks[1].length"]


@pytest.mark.parametrize("kind", ["wire-rope", "web", ""])
def test_legs_of_rope_may_differ_by_more_than_a_link(kind: str) -> None:
    """On legs of 8 m one hundredth is 80 mm, and a link of 10 mm chain is 30 mm: four legs part by more."""
    rated: dict[str, Any] = {"ratings": ["5 t"] * 4}
    rope = run(SQUARE, [8.0] * 4, (0.3, 0.2, -0.4), leg_kind=kind, grade="", **rated)
    chain = run(SQUARE, [8.0] * 4, (0.3, 0.2, -0.4), **rated)
    assert value(rope, "worst_tension") > value(chain, "worst_tension")
    assert "may differ in length by 1%" in texts(rope)
    assert "may differ in length" not in texts(chain)


def test_short_legs_of_rope_differ_by_no_more_than_a_link() -> None:
    rope = run(SQUARE, [2.3] * 4, (0.3, 0.2, -0.4), leg_kind="wire-rope", grade="")
    chain = run(SQUARE, [2.3] * 4, (0.3, 0.2, -0.4))
    assert value(rope, "worst_tension") == pytest.approx(value(chain, "worst_tension"))


@pytest.mark.parametrize(
    ("legs", "angle", "factor"),
    [(2, 80.0, 1.4), (2, 40.0, 1.0), (3, 80.0, 2.1), (3, 40.0, 1.5), (4, 80.0, 1.4), (4, 40.0, 1.0)],
)
def test_legs_of_one_rating_lift_no_more_than_their_sling_does_elsewhere(
    legs: int, angle: float, factor: float
) -> None:
    """Two legs of 1,000 kg at 80 degrees were within with 1,900 kg, and a stop on sling-legs and load-path: EN 818-4 lets
    such a sling lift 1.4 times one leg.
    """
    turns = [2 * math.pi * leg / legs for leg in range(legs)]
    picks = [(math.cos(turn), math.sin(turn), 0.0) for turn in turns]
    long_m = 1 / math.cos(math.radians(angle))

    def asked(load_kg: float, **more: Any) -> dict[str, Any]:
        ratings = {"ratings": ["1000 kg"] * legs} | more
        return run(
            picks,
            [long_m] * legs,
            (0.0, 0.0, -0.3),
            f"{one_reading(load_kg)} kg",
            chain_size="7 mm",
            **ratings,
        )

    limit_kg = factor * 1000.0
    over = asked(1.001 * limit_kg)
    assert over["verdict"] == "stop"
    assert f"{factor} times the rating of one leg" in texts(over)
    by_legs = {
        "load": f"{one_reading(1.001 * limit_kg)} kg",
        "legs": f"{min(legs, 3)}",
        "known_by": "angle",
        "leg_rating": "1000 kg",
    }
    by_legs |= {"load_kind": "flexible", "legs_counted": "3"} if legs == 3 else {"legs": "2"}
    other = answer(
        "sling-legs", {**by_legs, **CHAIN, "angle": f"{angle} deg", "condition": "marked-good"}, "si"
    )
    assert other["verdict"] == "stop"
    assert "by EN 818-4" not in texts(asked(0.5 * limit_kg))
    assert "EN 818-4" not in texts(asked(0.999 * limit_kg))
    # A stronger leg is never worse, and a weaker one never better: unlike legs count by their mean.
    for one, holds in (("1010 kg", True), ("990 kg", False)):
        unlike = asked(1.001 * limit_kg, ratings=[one] + ["1000 kg"] * (legs - 1))
        assert ("EN 818-4" not in texts(unlike)) == holds


def test_three_legs_in_line_count_two() -> None:
    """Picks in line share in more ways than one, so that two of the three may carry it all."""
    picks = [(-0.2, 0.0, 0.0), (0.0, 0.0, 0.0), (0.2, 0.0, 0.0)]
    lengths = [math.hypot(2.0, 0.2), 2.0, math.hypot(2.0, 0.2)]
    held = {"ratings": ["1000 kg"] * 3, "chain_size": "7 mm"}
    over = run(picks, lengths, (0.0, 0.0, -0.5), "1410 kg", **held)
    assert "1.4 times the rating of one leg" in texts(over)
    assert "EN 818-4" not in texts(run(picks, lengths, (0.0, 0.0, -0.5), "1390 kg", **held))


def test_legs_too_flat_or_alone_are_no_sling_with_a_factor() -> None:
    flat = run([(1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)], [1.1, 1.1], (0.0, 0.0, -0.3), "10 t", ratings=["1 t"] * 2)
    assert flat["verdict"] == "stop"
    assert "EN 818-4" not in texts(flat)
    alone = run([(0.5, 0.0, 0.0), (1.5, 0.0, 0.0)], [2.0, 2.5], (0.0, 0.0, -1.0), "3 t", ratings=["2 t"] * 2)
    assert "EN 818-4" not in texts(alone)
