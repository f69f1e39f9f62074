"""The same question gets one answer on every worksheet that can be asked it.

Each law makes one case of the shop and asks it of every worksheet that has words for it, by the worksheet's own example with
the case put in. What does not hold yet stands in pending.txt beside this, by the law's name and the worksheet's.

1. A part that was altered (welded on, heated, bent, home-made) is forbidden everywhere.
2. A part with no readable mark, or one that nobody looked at, is never within a rating.
3. A chain made for tie-down does not lift, however its grade is written.
4. A chain sling of a printed size carries its printed rating, whichever worksheet is asked; of a sling whose tag alone is
   known the stricter of the printed laws holds everywhere; so many legs count everywhere.
5. A chain is as thick when new, and worn out at the same thickness, whichever worksheet is asked.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from calc.answering import worksheet
from calc.inputs import Input
from calc.lifting.condition import ALTERED
from tests.laws.test_laws import Settled, settle

Raw = dict[str, Any]
PENDING = (Path(__file__).resolve().parent / "pending.txt").read_text(encoding="utf-8").split("\n")

OF_A_PART = (
    "load-path", "pull-trial", "what-is-it", "hook-check", "chain-check", "shackle-check", "sling-check", "sling-legs", "hitch",
    "hanging-load", "hot-work-derate", "tie-down", "strap-check", "binder-check", "moving-load",
)  # fmt: skip
"""Worksheets that answer for a part whose mark and condition decide."""
OF_A_CHAIN = (
    "sling-legs", "load-path", "pull-trial", "what-is-it", "chain-check", "drop-load", "hot-work-derate", "hitch",
    "hanging-load", "moving-load",
)  # fmt: skip
"""Worksheets that take the grade of a chain that lifts."""
GRADE_70 = ("70", "G70", "Gr 70", "7", "700")
ASKED_AS = {
    "welded": ("welds", "altered"),
    "heated": ("heat", "altered"),
    "bent": ("bent_links", "bent", "altered"),
    "home-made": ("homemade_links", "home_made", "altered"),
}
"""Questions answered with yes or no that ask for an alteration, on worksheets that do not ask the condition; the nearest."""
MARK_ASKED_AS = ("marks_readable", "tag_readable", "label_readable", "binder_marked")


def pairs(law: str, sheets: tuple[str, ...], cases: tuple[str, ...]) -> list[tuple[str, str]]:
    """Every worksheet with every case, but for worksheets of which the law is still pending."""
    return [(name, case) for name in sheets if f"{law} {name}" not in PENDING for case in cases]


def asks(inputs: tuple[Input, ...], name: str) -> Input | None:
    """The input of a name."""
    return next((one for one in inputs if one.name == name), None)


def base(name: str) -> Raw:
    """The worksheet's example; of a worksheet whose example does not lift, one that does."""
    raw: Raw = dict(worksheet(name).example)
    if name == "what-is-it":
        raw |= {"measured_diameter": "0.394 in", "marks": "80 3/8", "use": "lift"}
        raw.pop("pitch", None)
    if name == "drop-load":
        raw |= {"weight": "110 lb", "drop_height": "1/8 in"}
    return raw


def with_condition(name: str, value: str | None) -> Iterator[Raw]:
    """The worksheet's example with the condition of the part, or of one part after another where there are several;
    left out where it is None.
    """
    sheet, raw = worksheet(name), base(name)
    if asks(sheet.inputs, "condition"):
        yield _put(raw, "condition", value)
        return
    for rows in (one for one in sheet.inputs if asks(one.columns, "condition")):
        for at, row in enumerate(raw[rows.name]):
            before, after = raw[rows.name][:at], raw[rows.name][at + 1 :]
            yield {**raw, rows.name: [*before, _put(row, "condition", value), *after]}


def _put(raw: Raw, name: str, value: str | None) -> Raw:
    kept = {key: one for key, one in raw.items() if key != name}
    return kept if value is None else kept | {name: value}


def altered(name: str, how: str) -> list[Raw]:
    """The worksheet's example with a part altered: by its condition, or by the nearest question of yes and no."""
    if cases := list(with_condition(name, how)):
        return cases
    named = next((one for one in ASKED_AS[how] if asks(worksheet(name).inputs, one)), None)
    return [] if named is None else [{**base(name), named: "yes"}]


def unmarked(name: str) -> list[Raw]:
    """The worksheet's example with no readable mark, and with nobody having looked."""
    if name == "what-is-it":
        return [{**base(name), "marks": ""}]
    if cases := [*with_condition(name, "unmarked"), *with_condition(name, None)]:
        return cases
    named = next((one for one in MARK_ASKED_AS if asks(worksheet(name).inputs, one)), None)
    return [] if named is None else [{**base(name), named: "no"}, _put(base(name), named, None)]


def of_grade(name: str, mark: str) -> Raw:
    """A 3/8 in chain of a mark, to lift with, all else of it good."""
    if name in ("load-path", "pull-trial"):
        chain = {"label": "chain", "kind": "chain", "condition": "marked-good", "grade": mark, "size": "3/8"}
        return {**base(name), "items": [chain]}
    if name == "what-is-it":
        return {**base(name), "marks": f"{mark} 3/8"}
    raw = {**base(name), "grade": mark}
    known = worksheet(name).inputs
    of_chain = (("size", "3/8"), ("use", "lift"), ("sling_kind", "chain"), ("leg_kind", "chain"))
    return raw | {key: value for key, value in of_chain if asks(known, key)}


@pytest.mark.parametrize(("name", "how"), pairs("altered_stops_everywhere", OF_A_PART, ALTERED))
def test_altered_stops_everywhere(name: str, how: str) -> None:
    cases = altered(name, how)
    assert cases, "the worksheet does not ask whether the part was altered"
    assert [_verdict(name, raw) for raw in cases] == ["stop"] * len(cases)


@pytest.mark.parametrize(
    ("name", "_case"), pairs("unmarked_is_never_within", OF_A_PART, ("unmarked or not looked at",))
)
def test_unmarked_is_never_within(name: str, _case: str) -> None:
    cases = unmarked(name)
    assert cases, "the worksheet does not ask whether the mark is readable"
    assert {_verdict(name, raw) for raw in cases} <= {"unknown", "stop", "refused"}


@pytest.mark.parametrize(("name", "mark"), pairs("grade_70_never_lifts", OF_A_CHAIN, GRADE_70))
def test_grade_70_never_lifts(name: str, mark: str) -> None:
    assert _verdict(name, of_grade(name, mark)) == "stop"


@pytest.mark.parametrize("name", [name for name, _case in pairs("grade_80_may_lift", OF_A_CHAIN, ("80",))])
def test_grade_80_may_lift(name: str) -> None:
    """The cases above say stop for their grade, not for something else in them."""
    assert _verdict(name, of_grade(name, "80")) != "stop"


@pytest.mark.parametrize(
    "name", [name for name in OF_A_CHAIN if name not in ("what-is-it", "hot-work-derate")]
)
def test_chain_of_which_nobody_said_the_grade_never_lifts(name: str) -> None:
    raw = of_grade(name, "")
    if "items" in raw:
        raw["items"] = [{**raw["items"][0], "rating": "7,100 lb", "size": ""}]
    if name in ("sling-legs", "drop-load"):
        raw |= {
            "leg_rating" if name == "sling-legs" else "rating": "7,100 lb",
            "size": "",
            "stretch": "1/4 in",
        }
    raw = {key: value for key, value in raw.items() if asks(worksheet(name).inputs, key)}
    assert _verdict(name, raw) in ("unknown", "stop", "refused")


def _verdict(name: str, raw: Raw) -> str:
    settled = settle(name, raw)
    return "refused" if settled is None else settled.verdict


PRINTED_KG = 4250.0
"""Two legs of 10 mm chain of grade 8, 45 degrees from upright or less (the table chain-lifting-metric)."""


def two_legs(name: str, load_kg: float) -> Settled | None:
    """A load on two legs of 10 mm grade 8 chain at 50 degrees from the horizontal."""
    if name == "sling-legs":
        legs = {"legs": "2", "known_by": "angle", "angle": "50 deg", "grade": "8", "size": "10 mm"}
        lengths = ("leg_length", "height", "spread", "leg_rating")
        kept = {key: value for key, value in base(name).items() if key not in lengths}
        return settle(name, {**kept, **legs, "load": f"{load_kg} kg"})
    legs = {
        "label": "legs",
        "kind": "chain",
        "condition": "marked-good",
        "grade": "8",
        "size": "10 mm",
        "legs": "2",
    }
    kept = {key: value for key, value in base(name).items() if key not in ("items", "load")}
    return settle(name, {**kept, "load": f"{load_kg} kg", "items": [{**legs, "angle": "50 deg"}]})


@pytest.mark.parametrize(
    ("load_kg", "stops"), [(4200.0, False), (PRINTED_KG, False), (4260.0, True), (4700.0, True)]
)
@pytest.mark.parametrize(
    "name",
    [
        one
        for one, _case in pairs("two_legs_carry_what_is_printed", ("sling-legs", "load-path"), ("two legs",))
    ],
)
def test_two_legs_carry_what_is_printed(name: str, load_kg: float, stops: bool) -> None:
    settled = two_legs(name, load_kg)
    assert settled is not None
    assert (settled.verdict == "stop") == stops
    shown = next(one for one in settled.sheet.results if one.name == "capacity")
    capacity = settled.number(shown)
    assert capacity is None or capacity <= PRINTED_KG * (1 + 1e-9)


def legs_by_tag(name: str, kind: str, load_kg: float, angle: str, legs: str) -> Settled | None:
    """A load on so many legs of 1,000 kg each, of which the tag alone is known."""
    if name == "sling-legs":
        asked = {
            "load": f"{load_kg} kg",
            "legs": legs,
            "known_by": "angle",
            "angle": angle,
            "leg_kind": "web" if kind == "web-sling" else kind,
            "grade": "80" if kind == "chain" else "",
            "leg_rating": "1000 kg",
            "condition": "marked-good",
        }
        return settle(name, asked)
    sling = {"kind": kind, "condition": "marked-good", "rating": "1000 kg", "legs": legs, "angle": angle}
    if kind == "chain":
        sling["grade"] = "80"
    return settle(name, {"load": f"{load_kg} kg", "use": "plain", "items": [sling]})


@pytest.mark.parametrize("legs", ["2", "3", "4"])
@pytest.mark.parametrize("angle", ["30°", "40°", "46°", "60°", "80°", "90°"])
@pytest.mark.parametrize("kind", ["chain", "wire-rope", "web-sling"])
def test_legs_by_their_tag_carry_the_same_everywhere(kind: str, angle: str, legs: str) -> None:
    """12,000 lb on two legs of 7,100 lb each at 60 degrees was within on load-path, and stopped on sling-legs."""
    capacities = []
    for name in ("sling-legs", "load-path"):
        settled = legs_by_tag(name, kind, 100.0, angle, legs)
        assert settled is not None
        capacities.append(
            settled.number(next(one for one in settled.sheet.results if one.name == "capacity"))
        )
    assert capacities[0] == pytest.approx(capacities[1], rel=1e-9)


@pytest.mark.parametrize("angle", [31.0, 45.0, 50.0, 59.0, 60.0, 61.0, 80.0, 90.0])
@pytest.mark.parametrize("legs", ["2", "3", "4"])
@pytest.mark.parametrize(("grade", "size"), [("8", "10 mm"), ("80", "3/8"), ("100", "1/2"), ("5", "13 mm")])
def test_a_printed_sling_carries_the_same_everywhere(grade: str, size: str, legs: str, angle: float) -> None:
    """Three legs of 10 mm grade 8 at 80 degrees held 6,200 kg on load-path and 4,250 kg on sling-legs."""
    chain = {"grade": grade, "size": size, "legs": legs, "angle": f"{angle} deg", "condition": "marked-good"}
    by_legs = settle("sling-legs", {"load": "100 kg", "known_by": "angle", "leg_kind": "chain", **chain})
    by_parts = settle("load-path", {"load": "100 kg", "use": "plain", "items": [{"kind": "chain", **chain}]})
    pulled = {key: value for key, value in base("pull-trial").items() if key != "items"}
    wide = {"ram_capacity": "100 t", "gauge_capacity": "100 t", "anchor_limit": "100 t", "ram_bore": "6 in"}
    by_pull = settle("pull-trial", {**pulled, **wide, "items": [{"kind": "chain", **chain}]})
    assert by_legs is not None
    assert by_parts is not None
    assert by_pull is not None
    assert by_parts.found.capacity_kg == pytest.approx(by_legs.found.capacity_kg, rel=1e-9)
    assert by_pull.found.ceiling_n == pytest.approx(by_legs.found.capacity_kg * 9.80665, rel=1e-9)


THICKNESSES = tuple(f"{0.300 + 0.004 * place:.3f} in" for place in range(25))
"""From worn through to new, over every limit between."""


@pytest.mark.parametrize(
    ("name", "thick"), pairs("worn_chain_is_worn_everywhere", ("what-is-it",), THICKNESSES)
)
def test_worn_chain_is_worn_everywhere(name: str, thick: str) -> None:
    """3/8 in chain is 10 mm wire when new, on either sheet; what one calls worn out the other does."""
    checked = base("chain-check") | {"grade": "80", "size": "3/8", "use": "lift", "thickness_now": thick}
    known = {**base(name), "measured_diameter": thick}
    assert (_verdict(name, known) == "stop") == (_verdict("chain-check", checked) == "stop")
