"""shackle-check: each limit, each fault, what was not looked at, refusals."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.answering import Refused, answer, worksheet
from tests.saying import one_reading

SOUND: dict[str, Any] = {
    "body_new": "19.1 mm", "body_now": "18.7 mm", "pin_new": "22.3 mm", "pin_now": "22.1 mm", "jaw_new": "31.7 mm",
    "jaw_now": "32.1 mm", "pin_seated": "yes", "pin_original": "yes", "bent": "no", "cracks": "no", "marks_readable": "yes",
    "altered": "no", "rating": "4.3 t", "pin_kind": "screw", "inspected_on": "today",
}  # fmt: skip


def ask(**changes: Any) -> dict[str, Any]:
    return answer("shackle-check", {**SOUND, **changes}, "si")


def value(record: dict[str, Any], name: str) -> Any:
    return record["results"][name]["value"]


def test_sound() -> None:
    record = ask()
    assert record["verdict"] == "ok"
    assert value(record, "body_wear") == pytest.approx(100 * (1 - 18.7 / 19.1))
    assert value(record, "pin_wear") == pytest.approx(100 * (1 - 22.1 / 22.3))
    assert value(record, "jaw_change") == pytest.approx(100 * (32.1 / 31.7 - 1))
    assert value(record, "body_limit") == pytest.approx(19.1 * 0.92)
    assert value(record, "pin_limit") == pytest.approx(22.3 * 0.94)
    assert value(record, "rating_if_sound") == pytest.approx(4.3)


@pytest.mark.parametrize(
    ("changes", "verdict"),
    [
        ({"body_now": "17.6 mm"}, "caution"), ({"body_now": "17.57 mm"}, "stop"), ({"pin_now": "21.0 mm"}, "caution"),
        ({"pin_now": "20.95 mm"}, "stop"), ({"jaw_now": "36.4 mm"}, "caution"), ({"jaw_now": "36.5 mm"}, "stop"),
        ({"jaw_now": "26.9 mm"}, "stop"), ({"jaw_now": "31.5 mm"}, "ok"), ({"body_now": "19.2 mm"}, "ok"),
    ],
)  # fmt: skip
def test_limits(changes: dict[str, str], verdict: str) -> None:
    assert ask(**changes)["verdict"] == verdict


FAULTS = [
    {"pin_seated": "no"},
    {"pin_original": "no"},
    {"bent": "yes"},
    {"cracks": "yes"},
    {"marks_readable": "no"},
    {"altered": "yes"},
]


@pytest.mark.parametrize("fault", FAULTS)
def test_a_fault_stops(fault: dict[str, str]) -> None:
    record = ask(**fault)
    assert record["verdict"] == "stop"
    assert value(record, "rating_if_sound") is None


@pytest.mark.parametrize("name", [name for name in SOUND if name != "rating"])
def test_what_was_not_looked_at_leaves_it_unknown(name: str) -> None:
    record = ask(**{name: ""})
    assert record["verdict"] == "unknown"
    assert value(record, "rating_if_sound") is None


def test_without_rating() -> None:
    assert ask(rating="")["results"]["rating_if_sound"]["text"] == "no mark given"
    assert "usual proportion" in answer("shackle-check", {})["figure"]["caption"]


def test_a_round_pin_does_not_lift() -> None:
    """ASME B30.26: a round pin held by a cotter alone is outside the standard. It was ok beside that caution."""
    record = ask(pin_kind="round")
    assert record["verdict"] == "stop"
    assert value(record, "rating_if_sound") is None
    assert value(record, "next_inspection") is None
    assert record["big"]["text"] == "Out of service: a shackle with a round pin may not lift"
    assert any("cotter alone" in caution["text"] for caution in record["cautions"])
    assert any("B30.26" in source["title"] for source in record["sources"])


@pytest.mark.parametrize(
    ("message", "changes"),
    [
        ("body_now: is thicker", {"body_now": "19.4 mm"}), ("pin_now: is thicker", {"pin_now": "23 mm"}),
        ("jaw_now: is too small", {"jaw_now": "0"}), ("neither yes nor no", {"bent": "slightly"}), ("unit of weight", {"pin_new": "2 kg"}),
        ("not a day", {"inspected_on": "spring"}), ("too large", {"body_new": "21 in"}),
    ],
)  # fmt: skip
def test_bad_input(message: str, changes: dict[str, str]) -> None:
    with pytest.raises(Refused) as caught:
        ask(**changes)
    assert message in " | ".join(f"{error.input}: {error.message}" for error in caught.value.errors)


@pytest.mark.parametrize(
    ("message", "changes"),
    [
        ("rating: is more than any table prints for a bow that thick, 6.35 t", {"rating": "35 t"}),
        ("rating: is more than any table prints", {"rating": "6.5 t"}),
        ("pin_new: is thinner than the bow", {"pin_new": "7.6 mm", "pin_now": "7.6 mm"}),
        ("pin_new: is thinner than the bow", {"pin_new": "18.8 mm", "pin_now": "18.8 mm"}),
    ],
)
def test_what_no_shackle_is_is_refused(message: str, changes: dict[str, str]) -> None:
    """A mark of 35 t on a 3/4 in bow was given back as the rating if sound; a pin of 0.3 in passed in it."""
    with pytest.raises(Refused) as caught:
        ask(**changes)
    assert message in " | ".join(f"{error.input}: {error.message}" for error in caught.value.errors)


def test_a_mark_that_some_table_prints_is_taken() -> None:
    assert ask(rating="7 short tons")["verdict"] == "ok"  # alloy, 3/4 in
    thick = {name: "100 mm" for name in SOUND if name.endswith(("_new", "_now"))}
    assert ask(rating="200 t", **thick)["verdict"] == "ok"  # thicker than the tables
    assert ask(rating="200 t", body_new="")["verdict"] == "unknown"


@given(body=st.floats(19, 22), wear=st.floats(0, 0.9), fault=st.sampled_from(FAULTS[2:]))
def test_an_altered_shackle_never_passes(body: float, wear: float, fault: dict[str, str]) -> None:
    record = ask(body_new=f"{one_reading(body)} mm", body_now=f"{one_reading(body * (1 - wear))} mm", **fault)
    assert record["verdict"] in ("stop", "unknown")
    assert value(record, "rating_if_sound") is None


def test_example() -> None:
    assert answer("shackle-check", worksheet("shackle-check").example)["verdict"] == "ok"
