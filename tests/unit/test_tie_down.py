"""tie-down: the law's count and the forces side by side, what is refused, and what is not known."""

from __future__ import annotations

import copy
import re
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from calc.hauling.lashing_forces import (
    DIRECTIONS,
    Direct,
    Held,
    OverTop,
    sliding,
    straps_needed,
    tipping,
    used_of_limits,
)
from calc.hauling.securing_law import by_length_and_weight, tie_downs_needed
from calc.hauling.tie_down_items import CONDITIONS, FORBIDDEN, PULLS
from calc.inputs import QuantityInput
from calc.lifting.condition import GOOD
from calc.words.writer import UnitSystem, Writer
from tests.asking import Asked, asked
from tests.laws.test_laws import better, places, settle, with_value
from tests.random_inputs import changed
from tests.saying import one_reading

LB, LBF, IN, FT = 0.45359237, 4.4482216152605, 0.0254, 0.3048
Raw = dict[str, Any]
SHEET = worksheet("tie-down")
MACHINE: Raw = dict(SHEET.example)
STRAP: Raw = {
    "role": "over-top", "kind": "web", "condition": GOOD, "label": "wll", "limit": "2500 daN", "tension": "350 daN", "count": "4",
    "across": "10 cm", "down": "100 cm",
}  # fmt: skip
GEARBOX: Raw = {
    "country": "europe", "commodity": "general", "load": "1.2 t", "length": "1.2 m", "width": "0.8 m", "height": "1 m",
    "centre_height": "0.45 m", "edge_along": "0.6 m", "edge_across": "0.4 m", "deck": "swept-dry",
    "pair": "sawn-wood-on-plywood", "blocked": "no", "edges": "protected", "anchor_limit": "2000 daN", "anchor_label": "wll", "tie_downs": [STRAP],
}  # fmt: skip
LOOPS: Raw = GEARBOX | {
    "country": "canada", "edges": "rounded", "blocked": "yes", "blocking_holds": "10 kN",
    "tie_downs": [
        {"role": "same-side", "kind": "web", "condition": GOOD, "label": "wll", "limit": "10 kN", "pulls": "both-sides", "across": "0.4 m",
         "down": "0.8 m"},
        STRAP,
    ],
}  # fmt: skip
PIPE: Raw = GEARBOX | {"country": "us", "commodity": "pipe", "rolling": "chocked", "length": "4 m"}
BASES = {"machine": MACHINE, "gearbox": GEARBOX, "loops": LOOPS, "pipe": PIPE}


def run(base: Raw, **more: Any) -> Asked:
    found = asked("tie-down", {key: one for key, one in {**base, **more}.items() if one is not None})
    assert isinstance(found, Asked)
    return found


def rows(base: Raw, **more: Any) -> list[Raw]:
    """The rows of a case, each changed alike; None leaves a cell out."""
    return [
        {key: one for key, one in {**row, **more}.items() if one is not None} for row in base["tie_downs"]
    ]


def codes(found: Asked) -> list[str]:
    return [one.code for one in found.reasons]


def sides(found: Asked) -> tuple[str, str]:
    return found.results["law_verdict"], found.results["forces_verdict"]


def refused(base: Raw, **more: Any) -> dict[str, str]:
    with pytest.raises(Refused) as caught:
        run(base, **more)
    return {one.input: one.message for one in caught.value.errors}


# ------------------------------------------------------------------------------------------ the two jobs of the shop


def test_a_machine_on_four_chains_by_hand() -> None:
    """9,000 lb, four chains whose binders hold 5,400 lb. Law: 4 x 5,400 / 2 = 10,800, over 4,500; 130 in asks for three.
    Forward the rear pair: 40, 16, 30 in, so 52.5 in long: 2 x 5,400 x (40 + 0.225 x 30) / 52.5 = 9,617, and 0.225 x 9,000 =
    2,025, over 0.8 x 9,000 = 7,200.
    """
    found = run(MACHINE)
    assert found.verdict == "ok"
    assert sides(found) == ("within", "within")
    assert found.results["law_counted"] == pytest.approx(10_800 * LBF)
    assert found.results["law_share"] == pytest.approx(4500 / 10_800)
    assert (found.results["tie_downs_needed"], found.results["tie_downs_there"]) == (3, 4)
    forward = found.steps[6]
    direct_n, weighed_n = 2 * 5400 * (40 + 0.225 * 30) / 52.5 * LBF, 2025 * LBF
    assert "42.78 kN" in forward.numbers
    assert direct_n == pytest.approx(42.78e3, rel=1e-4)
    assert forward.result.startswith("51.7 kN")
    assert direct_n + weighed_n == pytest.approx(51.79e3, rel=1e-4)


def test_a_gearbox_under_straps_in_germany_by_hand() -> None:
    """1.2 t on a wooden pallet on plywood, straps of STF 350 daN: sine 100 / sqrt(100^2 + 10^2) = 0.995; forward 0.35 x 11.77 kN
    = 4.12 kN are missing, a strap adds 0.45 x 1.5 x 3.5 x 0.995 / 1.25 = 1.88 kN: three straps, four are there.
    """
    found = run(GEARBOX)
    assert found.verdict == "ok"
    assert sides(found) == ("within", "within")
    assert found.results["tie_downs_needed"] == 2
    assert found.results["law_share"] is None
    assert "no sum in Europe" in found.shown["law_share"]
    held = 0.45 * (11.768 + 4 * 1.5 * 3.5 * 0.99504 / 1.25)
    assert found.results["forces_used"] == pytest.approx(0.8 * 11.768 / held, rel=1e-4)
    short = run(GEARBOX, tie_downs=rows(GEARBOX, count="2"))
    assert short.verdict == "stop"
    assert short.results["more_straps"] == 1
    assert run(GEARBOX, tie_downs=rows(GEARBOX, count="3")).verdict == "ok"


# ------------------------------------------------------------------------------------------ one passes, the other fails


def test_the_law_passes_what_the_forces_do_not_hold() -> None:
    found = run(GEARBOX, country="us", deck="icy", tie_downs=rows(GEARBOX, count="2"))
    assert sides(found) == ("within", "stop")
    assert found.verdict == "stop"
    assert found.headline.startswith("The law’s count passes this load, but the forces are not held.")
    assert found.big == "forces_used"


def test_the_forces_hold_what_the_law_does_not_count() -> None:
    long = GEARBOX | {"country": "us", "length": "9 m", "tie_downs": rows(GEARBOX, count="3")}
    found = run(long)
    assert sides(found) == ("stop", "within")
    assert found.verdict == "stop"
    assert found.headline.startswith("The forces are held, but the law’s count is not met.")
    assert "4 tie-downs" in found.headline


def test_what_stands_large_is_of_the_side_that_decides() -> None:
    weak = rows(GEARBOX, limit="80 daN", tension="40 daN", count="3")
    base = GEARBOX | {
        "country": "us",
        "pair": "rough-concrete-on-wood",
        "blocked": "yes",
        "blocking_holds": "9 kN",
    }
    found = run(base, tie_downs=weak)
    assert {"sum-short", "lifts-off"} <= set(codes(found))
    strong = rows(GEARBOX, limit="150 daN", tension="75 daN", count="3")
    only_law = run(base, tie_downs=strong)
    assert sides(only_law) == ("stop", "within")
    assert only_law.big == "law_share"


def test_a_limit_is_never_a_tension() -> None:
    found = run(PIPE, tie_downs=rows(PIPE, tension=None))
    assert sides(found)[0] == "within"
    assert sides(found)[1] == "stop"
    assert found.verdict == "stop"
    assert "tension is not known" in found.headline
    assert found.big == "forces_verdict"
    assert (
        "half of the limit" in refused(PIPE, tie_downs=rows(PIPE, tension="2500 daN"))["tie_downs[0].tension"]
    )
    assert "tension-over-limit" in codes(run(PIPE, anchor_limit="300 daN"))


# ------------------------------------------------------------------------------------------ the law's count


@pytest.mark.parametrize(
    ("feet", "pounds", "blocked", "needed"),
    [
        (5, 1100, False, 1),
        (5, 1101, False, 2),
        (5.1, 500, False, 2),
        (10, 40_000, False, 2),
        (10.1, 500, False, 3),
        (20, 500, False, 3),
        (20.1, 500, False, 4),
        (5, 500, True, 1),
        (10, 40_000, True, 1),
        (21, 500, True, 3),
    ],
)
def test_how_many_by_the_text_of_the_rule(feet: float, pounds: float, blocked: bool, needed: int) -> None:
    """49 CFR 393.110(b), (c), sentence by sentence."""
    assert by_length_and_weight(feet * FT, pounds * LB, blocked) == needed


@pytest.mark.parametrize(
    ("commodity", "pounds", "needed"),
    [
        ("machine", 9999, 2),
        ("machine", 10_000, 4),
        ("vehicle", 900, 2),
        ("vehicle", 10_000, 4),
        ("general", 40_000, 2),
    ],
)
def test_machines_and_vehicles(commodity: str, pounds: float, needed: int) -> None:
    """49 CFR 393.128(b)(1), 393.130(c)(1); a light vehicle no longer than 5 ft is still held twice."""
    length_m = 1.4 if commodity == "vehicle" else 3.0
    assert tie_downs_needed("us", commodity, length_m, pounds * LB, False, False) == needed


def test_what_counts_half() -> None:
    """393.106(d)(1) to (3): direct and same side half, over to the other side whole."""
    over = run(PIPE).results["law_counted"]
    loop = run(LOOPS).results["law_counted"]
    assert over == pytest.approx(4 * 20e3)
    assert loop == pytest.approx(2 * 0.5 * 10e3 + 4 * 20e3)


def test_the_table_of_the_law_stands_in_the_united_states_alone() -> None:
    assert run(MACHINE).verdict == "ok"
    found = run(MACHINE, country="canada")
    assert found.verdict == "unknown"
    assert "tie-down-without-limit" in codes(found)
    marked = [row | {"limit": "6600 lb"} for row in MACHINE["tie_downs"]]
    assert run(MACHINE, country="canada", tie_downs=marked).verdict == "ok"


def test_the_weakest_part_decides() -> None:
    assert run(MACHINE, anchor_limit="2000 lb").results["law_counted"] == pytest.approx(4 * 1000 * LBF)
    chain = run(MACHINE, tie_downs=[row | {"size": "1/4"} for row in MACHINE["tie_downs"]])
    assert chain.results["law_counted"] == pytest.approx(4 * 0.5 * 3150 * LBF, rel=1e-6)


# ------------------------------------------------------------------------------------------ what is not known, and damage


@pytest.mark.parametrize("condition", [one for one in CONDITIONS if one != GOOD] + [None])
def test_only_a_part_that_was_found_good_counts(condition: str | None) -> None:
    found = run(GEARBOX, tie_downs=rows(GEARBOX, condition=condition))
    assert found.verdict == ("stop" if condition in FORBIDDEN else "unknown")
    assert found.results["tie_downs_there"] == 0
    assert found.shown["shares"] == ("tie-down 1 (strap): does not count",)
    assert found.big in ("law_verdict", "forces_verdict")


@pytest.mark.parametrize(
    ("left_out", "code"),
    [("anchor_limit", "anchor-not-known"), ("edges", "edges-not-said"), ("rolling", "rolling-not-said")],
)
def test_what_is_left_out_makes_it_unknown(left_out: str, code: str) -> None:
    found = run(PIPE, **{left_out: None})
    assert found.verdict == "unknown"
    assert code in codes(found)


@pytest.mark.parametrize(
    ("base", "left_out", "code"),
    [
        (MACHINE, "tensioner_limit", "tie-down-without-tensioner"),
        (MACHINE, "grade", "tie-down-without-limit"),
        (MACHINE, "size", "tie-down-without-limit"),
        (GEARBOX, "limit", "tie-down-without-limit"),
    ],
)
def test_a_part_whose_limit_is_not_known_does_not_count(base: Raw, left_out: str, code: str) -> None:
    found = run(base, tie_downs=rows(base, **{left_out: None}))
    assert found.verdict == "unknown"
    assert code in codes(found)
    assert found.results["forces_used"] is None
    assert found.results["blocking_needed"] is None


def test_not_all_known_and_the_rest_falls_short() -> None:
    first, second = MACHINE["tie_downs"]
    half = [first, {key: one for key, one in second.items() if key != "condition"}]
    found = run(MACHINE, tie_downs=half, load="30000 lb")
    assert {"too-few-known", "sum-short-as-known", "not-held-as-known"} <= set(codes(found))
    assert found.verdict == "unknown"


def test_what_tie_downs_rub_on_is_asked_of_direct_ones_too() -> None:
    assert "edges-not-said" in codes(run(MACHINE, edges=None))
    assert run(MACHINE, edges=None).verdict == "unknown"
    bare = run(MACHINE, edges="bare")
    assert (bare.verdict, "bare-edges" in codes(bare)) == ("stop", True)
    assert "does not fit" in refused(GEARBOX, edges="none")["edges"]
    assert "does not fit" in refused(LOOPS, edges="none")["edges"]


def test_chains_to_one_side_alone_hold_nothing_forward() -> None:
    """Two chains to the left would pull the load off the deck: on a mat only friction is left."""
    mat = MACHINE | {"pair": "friction-mat", "load": "4,000 lb"}
    left = [MACHINE["tie_downs"][0] | {"pulls": pulls} for pulls in ("front-left", "rear-left")]
    found = run(mat, tie_downs=left)
    assert found.verdict == "stop"
    assert {"slides", "pulls-askew", "stand-evenly"} <= set(codes(found))
    assert run(mat, tie_downs=[left[0] | {"pulls": "four-corners"}]).verdict == "ok"
    assert "pulls-askew" not in codes(run(mat, tie_downs=[left[0] | {"pulls": "four-corners"}]))


def test_bare_edges_and_what_rolls_stop() -> None:
    bare = run(PIPE, edges="bare")
    assert (bare.verdict, bare.big) == ("stop", "forces_verdict")
    assert "bare-edges" in codes(bare)
    assert "free-to-roll" in codes(run(PIPE, rolling="free"))


def test_a_heavy_coil_needs_the_pattern_of_the_law() -> None:
    assert "coil-pattern" in codes(run(PIPE, commodity="coil", load="5000 lb"))
    assert "coil-pattern" not in codes(run(PIPE, commodity="coil", load="4999 lb"))


def test_blocking_counts_for_the_forces_by_its_strength_alone() -> None:
    slack = rows(GEARBOX, count="2")
    assert run(GEARBOX, blocked="yes", tie_downs=slack).verdict == "stop"
    assert "blocking-not-known" in codes(run(GEARBOX, blocked="yes", tie_downs=slack))
    need = run(GEARBOX, tie_downs=slack).results["blocking_needed"]
    assert (
        run(GEARBOX, blocked="yes", blocking_holds=f"{one_reading(need * 1.001)} N", tie_downs=slack).verdict
        == "ok"
    )
    assert (
        run(GEARBOX, blocked="yes", blocking_holds=f"{one_reading(need * 0.99)} N", tie_downs=slack).verdict
        == "stop"
    )


# ------------------------------------------------------------------------------------------ tipping


def test_a_tall_load_tips_and_no_straps_help() -> None:
    tall = GEARBOX | {"height": "2 m", "centre_height": "1.3 m"}
    strapped = run(tall, tie_downs=rows(GEARBOX, count="40", down="2 m"))
    assert "tips-whatever" in codes(strapped)
    assert strapped.verdict == "stop"


def test_direct_chains_hold_a_tall_load_upright() -> None:
    tall = MACHINE | {"edge_across": "15 in"}
    found = run(tall)
    assert "tips" not in codes(found)
    tip = next(line for line in found.steps if line.label.startswith("Tipping to the side"))
    assert "stands by itself" not in tip.result
    low = run(tall, edge_across="0 in", load="40000 lb")
    assert {"slides", "tips"} <= set(codes(low))


def test_without_its_height_the_balance_point_is_at_the_top() -> None:
    found = run(GEARBOX, centre_height=None)
    assert "centre-not-known" in codes(found)
    assert found.results["forces_used"] is None or found.results["forces_used"] > 1


def test_cautions_that_do_not_decide() -> None:
    flat = run(PIPE, pair="rough-concrete-on-wood", tie_downs=rows(PIPE, across="3 m", count="12"))
    assert "straps-flat" in codes(flat)
    assert "friction-bound" in codes(run(GEARBOX, pair=None))
    mixed = run(MACHINE, edges="rounded", tie_downs=[*MACHINE["tie_downs"], STRAP])
    assert "web-and-chain" in codes(mixed)
    assert "same-side-once" in codes(run(LOOPS))


def test_more_straps_beside_direct_chains() -> None:
    """A strap more helps standing or moving friction, whichever holds more."""
    weak = [row | {"along": "4 in"} for row in MACHINE["tie_downs"]]
    base = MACHINE | {"edges": "rounded", "load": "20000 lb", "tie_downs": [*weak, STRAP]}
    more = run(base).results["more_straps"]
    assert more > 0
    enough = [*weak, STRAP | {"count": str(4 + more)}]
    found = run(base | {"tie_downs": enough})
    assert found.results["more_straps"] == 0


# ------------------------------------------------------------------------------------------ refusals


@pytest.mark.parametrize(
    ("base", "cell", "value", "said"),
    [
        (MACHINE, "grade", "XK2", "not a grade"),
        (MACHINE, "size", "5", "is not rated"),
        (MACHINE, "limit", "9000 lb", "law's table"),
        (MACHINE, "pulls", "left", "runs straight to the side"),
        (MACHINE, "down", "150 in", "more than the load is high"),
        (MACHINE, "across", "-3 in", "too small"),
        (MACHINE, "lashing_length", "40 in", "does not reach"),
        (MACHINE, "kind", "rope", "not known here"),
        (GEARBOX, "lashing_length", "2 m", "does not reach"),
        (GEARBOX, "down", "0 m", "go nowhere"),
        (GEARBOX, "limit", "2500 LC", "unit this book does not know"),
    ],
)
def test_what_cannot_be_is_refused_beside_its_box(base: Raw, cell: str, value: str, said: str) -> None:
    box = {"pulls": "along"}.get(cell, cell)
    assert said in refused(base, tie_downs=rows(base, **{cell: value}))[f"tie_downs[0].{box}"]


def test_loads_that_cannot_be_are_refused() -> None:
    assert "nearer side" in refused(GEARBOX, edge_across="0.5 m")["edge_across"]
    assert "higher than the top" in refused(GEARBOX, centre_height="1.1 m")["centre_height"]
    loop = LOOPS["tie_downs"][0] | {"pulls": "front-pair"}
    assert "same side" in refused(LOOPS, tie_downs=[loop])["tie_downs[0].pulls"]


def test_strap_beside_chain_against_one_movement_is_refused() -> None:
    first, second = MACHINE["tie_downs"]
    web = {**first, "kind": "web", "limit": "2000 lb"}
    assert "do not share" in refused(MACHINE, tie_downs=[web, second])["tie_downs[1].kind"]
    wire = {**first, "kind": "wire-rope", "limit": "5000 lb"}
    assert run(MACHINE, tie_downs=[wire, second]).verdict == "ok"


def test_a_mark_of_several_grades_counts_as_the_weakest() -> None:
    marked = [row | {"grade": "8"} for row in MACHINE["tie_downs"]]
    assert run(MACHINE, tie_downs=marked).verdict == "ok"
    agreed = [row | {"limit": "6,500 lb", "tensioner_limit": "9,000 lb"} for row in MACHINE["tie_downs"]]
    assert run(MACHINE, tie_downs=agreed).results["law_counted"] == pytest.approx(4 * 0.5 * 6500 * LBF)


def test_every_way_of_pulling_is_drawn_and_counted() -> None:
    for pulls, ways in PULLS.items():
        along = "0 in" if 0 in {forward for forward, _ in ways} else "36 in"
        row = MACHINE["tie_downs"][0] | {"pulls": pulls, "along": along}
        found = run(MACHINE, tie_downs=[row])
        assert found.results["tie_downs_there"] == len(ways)
        assert found.figure.svg.startswith("<svg")
    assert run(GEARBOX, blocked="yes").figure.svg


# ------------------------------------------------------------------------------------------ laws, on other loads than the example


@pytest.mark.parametrize("name", BASES)
def test_less_known_is_never_better(name: str) -> None:
    @settings(max_examples=60, deadline=None, derandomize=True, database=None)
    @given(raw=changed(SHEET.inputs, BASES[name]))
    def law(raw: Raw) -> None:
        whole = settle("tie-down", raw)
        if whole is None:
            return
        for _declared, path in places(SHEET.inputs, raw):
            less = settle("tie-down", with_value(raw, path, None))
            assert less is None or not (found := better(whole, less)), f"without {path}: {found}"

    law()


MORE_OF = [
    *((one.name, None, one.sense) for one in SHEET.inputs if one.sense != "plain"),
    *(
        ("tie_downs", one.name, one.sense)
        for rows_ in SHEET.inputs
        for one in rows_.columns
        if one.sense != "plain"
    ),
]


@pytest.mark.parametrize("name", BASES)
@pytest.mark.parametrize(("top", "cell", "sense"), MORE_OF)
def test_more_is_never_better_in_rows_either(name: str, top: str, cell: str | None, sense: str) -> None:
    raw = copy.deepcopy(BASES[name])
    inside = raw["tie_downs"][0] if cell else raw
    key = cell or top
    if key not in inside:
        return
    value, unit = str(inside[key]).replace(",", "").split()
    before = settle("tie-down", raw)
    for factor in (1.05, 1.5, 3.0):
        inside[key] = f"{float(value) * factor} {unit}"
        after = settle("tie-down", raw)
        if before is None or after is None:
            continue
        first, second = (before, after) if sense == "demand" else (after, before)
        assert not (found := better(first, second)), (key, factor, found)
        before = after


@settings(max_examples=80, deadline=None)
@given(
    friction=st.floats(0.1, 0.6),
    more=st.floats(0.0, 0.3),
    number=st.integers(0, 6),
    tension=st.floats(500, 6000),
)
def test_more_friction_and_more_straps_never_hold_less(
    friction: float, more: float, number: int, tension: float
) -> None:
    strap = OverTop(tension, 0.2, 1.0)
    first = Held(2e4, friction, 1.0, 0.5, 0.5, 1.0, over=(strap,) * number)
    better_grip = Held(2e4, friction + more, 1.0, 0.5, 0.5, 1.0, over=(strap,) * number)
    one_more = Held(2e4, friction, 1.0, 0.5, 0.5, 1.0, over=(strap,) * (number + 1))
    for direction in DIRECTIONS:
        held = sliding(first, direction).held
        assert sliding(better_grip, direction).held >= held
        assert sliding(one_more, direction).held >= held
    assert used_of_limits(first, "forward") == ()
    assert (
        straps_needed(2e4, friction + more, strap, "forward").number
        <= straps_needed(2e4, friction, strap, "forward").number
    )


def test_a_chain_bears_nothing_while_friction_alone_keeps_the_load() -> None:
    """Weak chains beside a load that stands by its friction: no share over the whole beside a verdict that it holds."""
    weak = [row | {"tensioner_limit": "900 lb"} for row in MACHINE["tie_downs"]]
    light = run(
        MACHINE,
        load="1800 lb",
        pair="rough-concrete-on-wood",
        blocked="yes",
        blocking_holds="500 lb",
        tie_downs=weak,
    )
    assert light.verdict == "ok"
    assert light.results["shares"] == (0.0, 0.0)


@settings(max_examples=80, deadline=None)
@given(pounds=st.floats(200, 40_000), friction=st.sampled_from(["steel-on-steel", "rough-concrete-on-wood"]))
def test_no_share_is_over_the_whole_while_sliding_is_held(pounds: float, friction: str) -> None:
    found = run(MACHINE, load=f"{one_reading(pounds)} lb", pair=friction)
    if "slides" not in codes(found):
        assert max(found.results["shares"]) <= 1.0 + 1e-9


# ------------------------------------------------------------------------------------------ which line of the label


def test_a_lashing_capacity_is_no_working_load_limit_for_the_law() -> None:
    """Typed as LC, a strap counts for the forces and for nothing by the law of the United States and Canada."""
    for country in ("us", "canada"):
        found = run(PIPE, country=country, tie_downs=rows(PIPE, label="lc"))
        assert sides(found) == ("cannot be told", "within")
        assert found.results["law_counted"] == 0.0
        assert found.results["law_share"] is None
        assert {"law-needs-wll", "too-few-known", "sum-short-as-known"} <= set(codes(found))
        assert found.verdict == "unknown"
    assert sides(run(GEARBOX, tie_downs=rows(GEARBOX, label="lc"))) == ("within", "within")


def test_an_anchor_in_another_measure_counts_for_nothing_by_the_law() -> None:
    found = run(PIPE, anchor_label="lc")
    assert sides(found) == ("cannot be told", "within")
    assert "law-needs-wll" in codes(found)
    assert "not met" not in found.headline  # nobody can say so yet


@pytest.mark.parametrize(("label", "code"), [(None, "label-not-said"), ("other", "label-of-no-use")])
def test_a_limit_of_no_known_kind_counts_nowhere(label: str | None, code: str) -> None:
    for base in (GEARBOX, PIPE, MACHINE):
        found = run(base, tie_downs=rows(base, label=label))
        assert code in codes(found)
        assert found.verdict == "unknown"
        assert found.results["forces_used"] is None
        anchored = run(base, anchor_label=label)
        assert f"anchor-{code}" in codes(anchored)
        assert anchored.results["tie_downs_there"] == 0


def test_a_wll_in_the_unit_of_european_labels_is_asked_for_again() -> None:
    assert "dan-is-mostly-lc" in codes(run(PIPE))
    assert "dan-is-mostly-lc" not in codes(run(PIPE, tie_downs=rows(PIPE, limit="25 kN")))
    assert "dan-is-mostly-lc" not in codes(run(GEARBOX))
    assert "dan-is-mostly-lc" not in codes(run(PIPE, tie_downs=rows(PIPE, label="lc")))


def test_europe_says_that_its_labels_give_lc() -> None:
    assert "europe-marks-lc" in codes(run(GEARBOX))
    assert "europe-marks-lc" not in codes(run(GEARBOX, tie_downs=rows(GEARBOX, label="lc")))


# ------------------------------------------------------------------------------------------ the countries side by side


def countries(base: Raw, **more: Any) -> list[str]:
    """The rows of the countries as they are told."""
    return [str(row) for row in answer("tie-down", {**base, **more}, "si")["results"]["countries"]["items"]]


def test_the_countries_stand_beside_each_other() -> None:
    """A 4 m pipe under four straps counts everywhere. A chain known by its grade alone counts in the United States, whose
    table does not hold elsewhere: nothing counts there.
    """
    assert [row.split(":")[0] for row in countries(PIPE)] == ["United States", "Canada", "Europe"]
    assert all("counts 4" in row for row in countries(PIPE))
    machine = countries(MACHINE)
    assert "within" in machine[0]
    assert all("cannot be told" in row and "counts 0" in row for row in machine[1:])
    assert run(MACHINE).verdict == "ok"


def test_what_cannot_be_read_elsewhere_is_told_there_alone() -> None:
    """A mark that contradicts the table of the United States is refused there, and read in Canada by itself."""
    marked = rows(MACHINE, limit="7000 lb")
    assert run(MACHINE, country="canada", tie_downs=marked).verdict == "ok"
    told = countries(MACHINE, country="canada", tie_downs=marked)
    assert any(row.startswith("United States") and "cannot be read there" in row for row in told)
    assert "law's table" in refused(MACHINE, tie_downs=marked)["tie_downs[0].limit"]


# ------------------------------------------------------------------------------------------ 393.102: forces that the law asks


def test_the_law_s_own_forces_stand_in_the_working_and_decide_nothing() -> None:
    """49 CFR 393.102(a)(2): 0.435 forward, 0.5 rearward, 0.25 to the sides of the weight within the working load limit;
    393.102(c)(3) holds that to be met by 393.104 to 393.136. A load that the forces do not hold still passes the count.
    """
    own = [line for line in run(MACHINE).steps if "393.102(a)(2)" in line.label]
    assert [line.numbers.split(" ×")[0] for line in own] == ["0.435", "0.500", "0.250"]
    assert "3,920 lb" in own[0].numbers
    assert not [line for line in run(MACHINE, country="canada").steps if "393.102" in line.label]
    slides = run(GEARBOX, country="us", deck="icy", tie_downs=rows(GEARBOX, count="2"))
    assert sides(slides)[0] == "within"
    assert "law-holds-forces-met" in codes(slides)


# ------------------------------------------------------------------------------------------ the drawing


def test_each_piece_is_drawn_with_its_own_share_and_the_load_with_its_sizes() -> None:
    """A lone chain to the rear left takes from the left rear of the four alike, so the four have unlike shares."""
    four, lone = (MACHINE["tie_downs"][0] | {"pulls": pulls} for pulls in ("four-corners", "rear-left"))
    found = run(MACHINE, tie_downs=[four, lone | {"along": "10 in"}])
    told = re.findall(r">1: ([0-9.]+)%", found.figure.svg)
    assert len(set(told)) > 1
    assert 0.0 <= max(float(one) for one in told) - 100 * found.results["shares"][0] < 0.1, "rounded up"
    assert found.figure.svg.count(">1: ") == 4
    assert found.figure.svg.count(">2: ") == 1
    sizes = ("3,302 mm", "1,676 mm", "2,134 mm", "863.6 mm", "914.4 mm", "406.4 mm", "762 mm")
    assert all(f">{size}<" in found.figure.svg for size in sizes)


def test_a_level_chain_has_no_height_to_draw() -> None:
    level = run(MACHINE, tie_downs=rows(MACHINE, down="0 in"))
    assert ">762 mm<" not in level.figure.svg
    assert ">914.4 mm<" in level.figure.svg


def test_a_chain_straight_ahead_has_no_breadth_to_draw() -> None:
    straight = run(MACHINE, tie_downs=rows(MACHINE, across="0 in"))
    assert ">406.4 mm<" in run(MACHINE).figure.svg
    assert ">406.4 mm<" not in straight.figure.svg
    assert ">762 mm<" in straight.figure.svg


def test_a_row_that_does_not_count_is_drawn_slack() -> None:
    found = run(MACHINE, tie_downs=rows(MACHINE, condition="unmarked"))
    assert found.figure.svg.count("not counted") == 4
    assert "leg-slack" in found.figure.svg


# ------------------------------------------------------------------------------------------ properties


@settings(max_examples=80, deadline=None)
@given(
    along=st.floats(0.05, 3), across=st.floats(0.05, 3), down=st.floats(0.05, 3), limit=st.floats(1e3, 5e4),
    number=st.integers(1, 4), centre=st.floats(0.1, 2),
)  # fmt: skip
def test_one_more_like_lashing_and_a_lower_load_are_never_worse(
    along: float, across: float, down: float, limit: float, number: int, centre: float
) -> None:
    """Of one kind and one geometry, in every direction. A weak, short one beside others may indeed lower what all hold
    before the first of them is at its limit.
    """
    four = tuple(Direct(x * along, y * across, down, limit) for x in (1, -1) for y in (1, -1))
    few = Held(2e4, 0.3, centre, 0.5, 0.5, 1.0, direct=four * number)
    more = Held(2e4, 0.3, centre, 0.5, 0.5, 1.0, direct=four * (number + 1))
    low = Held(2e4, 0.3, centre * 0.7, 0.5, 0.5, 1.0, direct=four * number)
    for direction in DIRECTIONS:
        assert sliding(more, direction).held >= sliding(few, direction).held
        assert tipping(more, direction).held >= tipping(few, direction).held
        assert tipping(low, direction).asked <= tipping(few, direction).asked
        assert sliding(low, direction).held == sliding(few, direction).held


@pytest.mark.parametrize("country", ["us", "canada"])
@settings(max_examples=25, deadline=None)
@given(limit=st.floats(100, 9000))
def test_no_lc_ever_adds_to_what_the_law_counts(country: str, limit: float) -> None:
    """Whatever its size, a limit marked LC leaves the count of the law as it is without that row."""
    lc = {**STRAP, "label": "lc", "limit": f"{one_reading(limit)} daN", "tension": "10 daN"}
    base = PIPE | {"country": country}
    assert run(base, tie_downs=[STRAP, lc]).results["law_counted"] == run(base).results["law_counted"]


# ------------------------------------------------------------------------------------------ what is shown back


@pytest.mark.parametrize(("units", "shown"), [("us", "29.4 kN"), ("si", "29.4 kN")])
def test_a_force_typed_in_pounds_is_shown_back_in_newtons(units: UnitSystem, shown: str) -> None:
    """It was shown as 6,600 lb (6,600 lb)."""
    box = next(one for one in SHEET.inputs if one.name == "anchor_limit")
    assert isinstance(box, QuantityInput)
    back = box.read_as("6,600 lb", units)
    assert back is not None
    assert shown in Writer(units).plain(back)


# ------------------------------------------------------------------------------------------ marks in every country


@pytest.mark.parametrize("country", ["us", "canada", "europe"])
@pytest.mark.parametrize("size", ["banana", "0", "M12"])
def test_a_size_that_is_none_is_refused_beside_its_box(country: str, size: str) -> None:
    marked = rows(MACHINE, limit="6,600 lb", size=size)
    assert "tie_downs[0].size" in refused(MACHINE, country=country, tie_downs=marked)


@pytest.mark.parametrize("country", ["us", "canada", "europe"])
def test_a_grade_without_a_size_is_read_all_the_same(country: str) -> None:
    marked = rows(MACHINE, limit="6,600 lb", grade="banana", size="")
    assert "tie_downs[0].grade" in refused(MACHINE, country=country, tie_downs=marked)
    assert run(MACHINE, country=country, tie_downs=rows(MACHINE, limit="6,600 lb", size="")).verdict == "ok"


@pytest.mark.parametrize(
    ("label", "grade", "size", "within", "over"),
    [
        ("wll", "70", "3/8", "7,500 lb", "7,700 lb"),
        ("lc", "70", "3/8", "15,100 lb", "15,300 lb"),
        ("wll", "30", "3/8", "3,000 lb", "3,100 lb"),
        ("lc", "80", "9 mm", "19,000 lb", "20,000 lb"),
        ("wll", "80", "9 mm", "9,700 lb", "10,000 lb"),
    ],
)
def test_elsewhere_a_limit_is_held_against_grade_and_size(
    label: str, grade: str, size: str, within: str, over: str
) -> None:
    """1.15 of the 6,600 lb that the law of the United States prints, twice that as LC; of a size that it has not, what the
    strongest lifting chain of that wire has: 1.15 x 300 N/mm2 x 2 x 63.6 mm2 = 9,870 lb.
    """
    for limit, refuses in ((within, False), (over, True)):
        marked = rows(MACHINE, limit=limit, grade=grade, size=size, label=label)
        asked_for = {"country": "europe", "load": "8,000 lb", "tie_downs": marked, "anchor_label": label}
        if refuses:
            assert "tie_downs[0].limit" in refused(MACHINE, **asked_for)
        else:
            assert run(MACHINE, **asked_for).verdict == "ok"


def test_a_strap_is_not_cranked_to_its_limit() -> None:
    """An LC of 2,500 daN typed as the tension of a strap whose loop has 5,000."""
    assert run(GEARBOX, tie_downs=rows(GEARBOX, tension="1,000 daN", limit="5,000 daN")).verdict == "ok"
    marked = rows(GEARBOX, tension="1,100 daN", limit="5,000 daN")
    assert "tie_downs[0].tension" in refused(GEARBOX, tie_downs=marked)


def test_no_anchor_lies_so_far_to_the_side() -> None:
    """400 typed for millimetres in a box of inches held three times as much to the sides."""
    assert "tie_downs[0].across" in refused(MACHINE, tie_downs=rows(MACHINE, across="400 in"))
