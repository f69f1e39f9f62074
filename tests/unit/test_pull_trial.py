"""pull-trial: the ceiling under every limit, blocked parts, stages, energy, what a pass proves; refusals."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from calc.lifting.path_items import TABLE_ROPE
from calc.pulling.string_energy import oil_energy_j

G = 9.80665
HOOK = {"label": "hook", "kind": "hook", "grade": "80", "rating": "1630 kg", "condition": "marked-good"}
CHAIN = {"label": "chain", "kind": "chain", "grade": "80", "size": "10 mm", "condition": "marked-good"}
BASE: dict[str, Any] = {
    "target": "11.3 kN", "source": "ram", "use": "plain", "ram_acts": "push", "ram_bore": "43 mm", "ram_capacity": "9.1 t", "max_pressure": "690 bar",
    "gauge_capacity": "4700 kg", "gauge_accuracy": "1 %", "anchor_limit": "2900 kg", "items": [HOOK, CHAIN],
    "chain_length": "1.7 m",
}  # fmt: skip


def ask(**changes: Any) -> dict[str, Any]:
    raw = {name: value for name, value in {**BASE, **changes}.items() if value is not None}
    return answer("pull-trial", raw, "si")


def value(record: dict[str, Any], name: str) -> Any:
    return record["results"][name]["value"]


def test_inside_every_limit() -> None:
    record = ask()
    assert record["verdict"] == "ok"
    assert value(record, "ceiling") == pytest.approx(1630 * G / 1000)
    assert value(record, "governing") == "hook"
    assert value(record, "stop_reading") == pytest.approx((1630 - 47) * G / 1000)
    assert value(record, "what_breaks_first") == "hook"
    assert value(record, "blocked") == []
    assert len(value(record, "steps")) == 8
    area = 3.141592653589793 / 4 * 0.043**2
    assert value(record, "pressure") == pytest.approx(11300 / area / 1e5)
    assert all(f"{round(share * 11.3, 2):.3g}"[:3] in line for share, line in zip((0.1, 0.25, 0.5, 0.75, 1), value(record, "steps")[1:6], strict=True))  # fmt: skip


def test_stages_hold_long_only_at_the_top() -> None:
    lines = value(ask(hold="7 min"), "steps")
    assert ["hold 7 min" in line for line in lines[1:6]] == [False, False, False, False, True]
    assert ["half a minute" in line for line in lines[1:6]] == [True, True, True, True, False]


def test_energy_is_told_as_a_falling_sack() -> None:
    record = ask()
    energy = value(record, "stored_energy")
    (told,) = [caution["text"] for caution in record["cautions"] if "sack falling" in caution["text"]]
    assert f"falling {energy / (25 * G):.1g} m" in told


def test_a_pull_right_at_the_ceiling() -> None:
    weight = {
        "source": "known-weight",
        "known_weight": "1630 kg",
        "gauge_capacity": None,
        "target": "1630 kg",
    }
    assert ask(**weight)["verdict"] == "caution"
    assert ask(**{**weight, "known_weight": "1630.01 kg"})["verdict"] == "stop"


def test_a_hung_weight_pulls_all_of_itself() -> None:
    hung = {"source": "known-weight", "gauge_capacity": None, "target": "2900 lb"}
    over = ask(**hung, known_weight="10,000 lb")
    assert over["verdict"] == "stop"
    assert "pulls with its whole" in over["headline"]
    assert value(over, "steps") == []
    inside = ask(**hung, known_weight="3000 lb")
    assert inside["verdict"] == "ok"
    assert "pulls with its whole" in inside["headline"]
    assert [("all 3,000 lb" in line or "all 13.3 kN" in line) for line in value(inside, "steps")] == [
        False,
        True,
        False,
    ]
    with pytest.raises(Refused, match="target"):
        ask(**hung, known_weight="2800 lb")
    with pytest.raises(Refused, match="gauge_capacity"):
        ask(**{**hung, "gauge_capacity": "2000 lb"}, known_weight="3000 lb")
    assert ask(**{**hung, "gauge_capacity": "4000 lb"}, known_weight="3000 lb")["verdict"] == "ok"


def test_a_ram_that_pulls_has_the_area_beside_its_rod() -> None:
    # Bore 1.68 in, rod 1.0 in: 2.217 and 1.431 in2; the full bore would tell the force 1.55 times too large.
    pulls = {"ram_acts": "pull", "ram_bore": "1.68 in", "ram_rod": "1 in"}
    push = ask(**{**pulls, "ram_acts": "push"})
    pull = ask(**pulls)
    assert value(pull, "pressure") / value(push, "pressure") == pytest.approx(1.5488, rel=1e-4)
    weak = ask(**pulls, max_pressure="150 bar")
    area_m2 = 3.141592653589793 / 4 * (1.68**2 - 1) * 0.0254**2
    assert value(weak, "ceiling") == pytest.approx(150e5 * area_m2 / 1000)
    unsaid = ask(ram_acts=None)
    assert unsaid["verdict"] == "unknown"
    assert "pushes or pulls" in unsaid["headline"]
    assert value(unsaid, "ceiling") is None
    for rod in (None, "1.7 in"):
        with pytest.raises(Refused, match="ram_rod"):
            ask(**{**pulls, "ram_rod": rod})


@pytest.mark.parametrize(
    ("left_out", "words"),
    [("anchor_limit", "anchor or bench"), ("ram_bore", "what pressure the pull needs"),
     ("ram_capacity", "capacity on the ram's plate"), ("max_pressure", "highest pressure of ram, pump and hose")],
)  # fmt: skip
def test_a_limit_that_is_not_known_is_unknown(left_out: str, words: str) -> None:
    record = ask(**{left_out: None})
    assert record["verdict"] == "unknown"
    assert record["headline"].startswith("Do not pull yet.")
    assert words in record["headline"]
    for name in ("ceiling", "stop_reading", "failure_bound", "stored_energy"):
        assert value(record, name) is None
    assert value(record, "steps") == []
    assert ask(**{left_out: None}, target="40 kN")["verdict"] == "stop"


def test_no_chance_of_failure_beside_a_stop() -> None:
    for condition in ("welded", "unmarked"):
        record = ask(items=[{**HOOK, "condition": condition}, CHAIN], pulls_survived="1000")
        assert value(record, "failure_bound") is None
        assert value(record, "rule_of_three") is None
        assert value(record, "proves").startswith("Nothing")
        assert all(step["label"] != "What it would prove" for step in record["steps"])


def test_the_forbidden_part_is_named_first() -> None:
    record = ask(items=[{**HOOK, "label": "a", "condition": "worn"}, {**CHAIN, "label": "b", "grade": "70"}])
    assert record["verdict"] == "stop"
    assert record["headline"].startswith("Do not pull: the mark of the part “b” can mean grade 70")


def test_energy_of_the_whole_string() -> None:
    """Line, oil and frame, each by its own formula, and whether that is all of it."""
    rope = {
        "kind": "wire-rope",
        "size": "16 mm",
        "rating": "2000 kg",
        "condition": "marked-good",
        "length": "3 m",
    }
    web = {"kind": "web-sling", "rating": "2000 kg", "condition": "marked-good", "length": "1.8 m"}
    chain = 11300**2 / 2 / ((54.5 - 0.25) * 1e9 * 2 * 3.141592653589793 / 4 * 0.010**2 / 1.7)
    ropes = 11300**2 * 3 / (2 * 38300 * 16**2)
    webs = 11300**2 * 0.10 * 1.8 / (2 * 2000 * G)
    pressure = 11300 / (3.141592653589793 / 4 * 0.043**2)
    oil = pressure**2 * 0.3e-3 / (2 * 1.72e9)
    frame = 11300 * 0.002 / 2
    every = {"items": [HOOK, CHAIN, rope, web], "oil_volume": "0.3 L", "frame_give": "2 mm"}
    whole = ask(**every)
    assert value(whole, "stored_energy") == pytest.approx(chain + ropes + webs + oil + frame)
    assert "at least" not in whole["results"]["stored_energy"]["text"]
    for name in ("oil_volume", "frame_give", "chain_length"):
        less = ask(**{**every, name: None})
        assert value(less, "stored_energy") < value(whole, "stored_energy")
        assert less["results"]["stored_energy"]["text"].startswith("at least")
        assert "and more" in " ".join(caution["text"] for caution in less["cautions"])
    unsized = ask(**{**every, "items": [HOOK, CHAIN, {**rope, "size": ""}, {**web, "kind": "fibre-rope"}]})
    assert value(unsized, "stored_energy") == pytest.approx(chain + oil + frame)
    assert unsized["results"]["stored_energy"]["text"].startswith("at least")
    two = ask(items=[HOOK, {**CHAIN, "legs": "2", "angle": "60"}])
    leg = 11300 / (2 * 0.8660254)
    assert value(two, "stored_energy") == pytest.approx(2 * chain * (leg / 11300) ** 2)


def test_oil_energy_of_a_table() -> None:
    # A litre of oil at 1,000, 3,000, 5,000 and 10,000 psi: 14, 124, 345, 1382 J.
    found = [round(oil_energy_j(psi * 6894.757, 1e-3)) for psi in (1000, 3000, 5000, 10_000)]
    assert found == [14, 124, 345, 1382]


def test_stored_energy() -> None:
    stiffness = (54.5 - 0.25) * 1e9 * 2 * 3.141592653589793 / 4 * 0.010**2 / 1.7
    assert value(ask(), "stored_energy") == pytest.approx(11300**2 / 2 / stiffness)
    assert value(ask(), "stretch") == pytest.approx(11300 / stiffness * 1000)
    assert value(ask(chain_length=None), "stored_energy") is None
    assert value(ask(items=[HOOK]), "stored_energy") is None
    assert value(ask(items=[HOOK, {**CHAIN, "size": "", "rating": "3000 kg"}]), "stored_energy") is None


@pytest.mark.parametrize(
    ("changes", "governing"),
    [
        ({"ram_capacity": "1.2 t"}, "the ram's capacity"), ({"max_pressure": "80 bar"}, "the highest pressure"),
        ({"gauge_capacity": "1210 kg"}, "the gauge less its error"), ({"anchor_limit": "1203 kg"}, "the anchor or bench"),
        ({"items": [{**HOOK, "rating": "1190 kg"}, CHAIN]}, "hook"),
        ({"source": "hoist", "hoist_capacity": "1180 kg"}, "the hoist"),
    ],
)  # fmt: skip
def test_whatever_is_lowest_governs(changes: dict[str, Any], governing: str) -> None:
    record = ask(**changes)
    assert value(record, "governing") == governing
    assert record["verdict"] in ("ok", "caution", "stop")


def test_over_the_ceiling_stops_and_plans_nothing() -> None:
    record = ask(target="16.1 kN")
    assert record["verdict"] == "stop"
    assert value(record, "steps") == []
    assert "its maker or a test house" in record["headline"]
    assert value(record, "pressure") is None
    assert any("hook for which the maker gives no data" in line for line in value(record, "proof_rules"))
    assert record["cautions"][0]["kind"] == "prohibition"


def test_a_proof_load_with_a_weight_added_says_so() -> None:
    # 0027/ND, 14.4.2: over 25 t a shackle is proved with 1.22 times its rating and 20 t more.
    rules = value(answer("pull-trial", worksheet("pull-trial").example), "proof_rules")
    assert any(line.startswith("shackle, rating over 25 t: 1.22 × rating + 20 t (0027/ND") for line in rules)
    assert any(line.startswith("shackle, rating up to 25 t: 2 × rating (0027/ND") for line in rules)


def test_inside_the_gauges_error_stops() -> None:
    record = ask(target="15.8 kN")
    assert record["verdict"] == "stop"
    assert "may read" in record["headline"]


def test_near_the_top_or_without_an_anchor_is_careful() -> None:
    assert ask(target="14.9 kN")["verdict"] == "caution"
    record = ask(anchor_limit=None)
    assert record["verdict"] == "unknown"
    assert any("anchor and bench" in caution["text"] for caution in record["cautions"])


@pytest.mark.parametrize("condition", ["unmarked", "worn", "welded", "heated", "bent", "home-made"])
def test_an_altered_part_stops_the_plan(condition: str) -> None:
    record = ask(target="0.3 kN", items=[{**HOOK, "condition": condition}, CHAIN])
    assert record["verdict"] in ("stop", "unknown")
    assert record["verdict"] == ("unknown" if condition in ("unmarked", "worn") else "stop")
    for name in ("ceiling", "stop_reading", "pressure", "stored_energy", "governing", "what_breaks_first"):
        assert value(record, name) is None
    assert value(record, "steps") == []
    assert record["headline"].startswith("Do not pull: the part “hook” ")
    assert "No pull" in record["figure"]["caption"]


def test_too_hard_a_pull_on_a_string_with_an_altered_part_stops_and_names_the_part() -> None:
    record = ask(target="90 kN", items=[{**HOOK, "condition": "bent"}, CHAIN])
    assert record["verdict"] == "stop"
    assert record["headline"].startswith("Do not pull: the part “hook” is bent, twisted or stretched")
    assert any("a pull of 90 kN (20,300 lb) is too hard" in caution["text"] for caution in record["cautions"])


def test_a_part_without_a_name_opens_the_sentence_by_its_place() -> None:
    record = ask(items=[{**HOOK, "label": "", "condition": "bent"}, CHAIN])
    assert record["headline"].startswith("Do not pull: the part “1. hook” is bent, twisted or stretched")


def test_tie_down_chain_and_flat_legs_stop() -> None:
    assert ask(items=[{**CHAIN, "grade": "70"}])["verdict"] == "stop"
    flat = ask(items=[{**CHAIN, "legs": "2", "angle": "28"}])
    assert flat["verdict"] == "stop"
    assert "under 30°" in flat["headline"]


def test_thirty_degrees_is_allowed_and_one_leg_has_no_spread() -> None:
    flat = ask(items=[{**CHAIN, "legs": "2", "angle": "30"}])
    assert value(flat, "ceiling") == pytest.approx(2900 * G / 1000)
    with pytest.raises(Refused, match="angle"):
        ask(items=[{**CHAIN, "angle": "27"}])


def test_legs_share() -> None:
    legs = {**CHAIN, "size": "", "rating": "610 kg", "legs": "2", "angle": "47"}
    record = ask(items=[legs], target="3 kN")
    # By the tag alone 1.4 times one leg (EN 818-4), under the 2 × sin 47° = 1.463 of statics.
    assert value(record, "ceiling") == pytest.approx(1.4 * 610 * G / 1000)
    assert "2 legs at 47°" in record["steps"][0]["numbers"]


def test_sources_of_pull_and_their_cautions() -> None:
    hoist = ask(source="hoist", hoist_capacity="1980 kg", ram_bore=None)
    assert any("hand chain" in caution["text"] for caution in hoist["cautions"])
    weight = ask(source="known-weight", known_weight="1410 kg", gauge_capacity=None)
    assert any("an inch or two" in caution["text"] for caution in weight["cautions"])
    assert value(weight, "stop_reading") == value(weight, "ceiling")
    by_capacity = ask(ram_bore=None)
    assert by_capacity["results"]["pressure"]["text"] == "no ram bore given"
    rope = {"kind": "wire-rope", "size": "1/2", "rope_class": TABLE_ROPE, "condition": "marked-good"}
    from_memory = ask(items=[rope])
    assert any("not read in its own source" in caution["text"] for caution in from_memory["cautions"])


def test_what_pulls_prove() -> None:
    assert value(ask(), "failure_bound") == pytest.approx(95)
    assert value(ask(pulls_survived="59"), "failure_bound") == pytest.approx(100 * (1 - 0.05 ** (1 / 59)))
    assert value(ask(pulls_survived="59"), "rule_of_three") == pytest.approx(300 / 59)
    assert "No pull in a shop gives a rating back" in value(ask(), "does_not_prove")


@pytest.mark.parametrize(
    ("message", "changes"),
    [
        ("ram_bore: or the ram's capacity", {"ram_bore": None, "ram_capacity": None}),
        ("max_pressure: is needed", {"max_pressure": None, "ram_capacity": None}),
        ("gauge_capacity: is needed", {"gauge_capacity": None}),
        ("source: is missing", {"source": None}), ("gauge_accuracy: is missing", {"gauge_accuracy": None}),
        ("hoist_capacity: is missing", {"source": "hoist"}), ("known_weight: is missing", {"source": "known-weight"}),
        ("items: is missing", {"items": None}), ("items", {"items": []}), ("target: is too small", {"target": "0"}),
        ("max_pressure: is too small", {"max_pressure": "-3 bar"}), ("target", {"target": "hard"}),
        ("items[1].size", {"items": [HOOK, {**CHAIN, "size": "9 mm"}]}), ("gauge_accuracy", {"gauge_accuracy": "50 %"}),
        ("gauge_accuracy: is too small", {"gauge_accuracy": "0 %"}),  # no gauge is without error
        ("unit of length", {"target": "3 mm"}),
    ],
)  # fmt: skip
def test_bad_input(message: str, changes: dict[str, Any]) -> None:
    with pytest.raises(Refused) as caught:
        ask(**changes)
    assert message in " | ".join(f"{error.input}: {error.message}" for error in caught.value.errors)


LIMIT = st.floats(200, 20000)


@given(
    hook=LIMIT,
    anchor=LIMIT,
    gauge=LIMIT,
    ram=LIMIT,
    pressure=st.floats(20, 1000),
    more=st.floats(1, 3),
    which=st.integers(0, 4),
)
def test_the_ceiling_is_never_above_a_limit_and_never_falls_when_one_rises(
    hook: float, anchor: float, gauge: float, ram: float, pressure: float, more: float, which: int
) -> None:
    def run(scale: list[float]) -> tuple[float, list[float], dict[str, Any]]:
        # As they are written below, since a limit that is written rounded up is the limit.
        limits = [
            round(one * by, 7) for one, by in zip((hook, anchor, gauge, ram, pressure), scale, strict=True)
        ]
        record = ask(
            target="1.9 kN", items=[{**HOOK, "rating": f"{limits[0]:.7f} kg"}, CHAIN], anchor_limit=f"{limits[1]:.7f} kg",
            gauge_capacity=f"{limits[2]:.7f} kg", ram_capacity=f"{limits[3]:.7f} kg", max_pressure=f"{limits[4]:.7f} bar",
        )  # fmt: skip
        area = 3.141592653589793 / 4 * 0.043**2
        forces = [limits[0] * G, limits[1] * G, limits[2] * G * 0.99, limits[3] * G, limits[4] * 1e5 * area]
        return value(record, "ceiling") * 1000, forces, record

    ceiling, forces, record = run([1.0] * 5)
    assert ceiling <= min(forces) * (1 + 1e-9)
    assert record["verdict"] == "stop" or value(record, "stop_reading") >= 1.9 * (1 - 1e-9)
    raised = [1.0] * 5
    raised[which] = more
    assert run(raised)[0] >= ceiling * (1 - 1e-12)


def test_example() -> None:
    record = answer("pull-trial", worksheet("pull-trial").example)
    assert record["verdict"] == "ok"
    assert "3,500 lb" in record["figure"]["caption"]


def test_a_weight_on_a_string_without_any_limit_is_no_pull() -> None:
    hung = {"source": "known-weight", "known_weight": "2000 kg", "gauge_capacity": None, "anchor_limit": None}
    record = ask(**hung, items=[{**HOOK, "condition": "welded"}])
    assert record["verdict"] == "stop"
    assert value(record, "ceiling") is None
