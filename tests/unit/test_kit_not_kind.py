"""Ways in which a shop's own list could pass a part that it must not: dates to come, looks of one day, kinds and numbers."""

from __future__ import annotations

import datetime
import json
from dataclasses import replace
from typing import Any

import pytest

from build_scripts.answer_view import view_json
from calc import inputs
from calc.answering import Refused, answer
from calc.judged import boxes_for, on_tag
from calc.records.kit.difference import difference, merge
from calc.records.kit.due import due
from calc.records.kit.edit import NotSaved, edited
from calc.records.kit.file import to_csv, to_json
from calc.records.kit.part import Out, Part
from calc.records.kit.state import state_of
from calc.records.kit.wear import wear
from tests.unit.test_kit import TODAY, codes, look, part

MARKED: dict[str, Any] = {"mark": "A", "size": "5/8 in"}


@pytest.fixture(autouse=True)
def fixed_day(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(inputs, "today", lambda: TODAY)


def asked(kit: str, **data: Any) -> Any:
    """What the page of the kit is answered."""
    request = {"kit": kit, "units": "us", "edition": "2026.1", "tables": "", "root": "../", **data}
    return json.loads(view_json(json.dumps(request)))


# ------------------------------------------------------------------------------- days that are to come


@pytest.mark.parametrize("on", ["2026-11-28", "2027-06-01", "2199-01-01"])
def test_a_good_look_of_a_day_to_come_counts_for_nothing(on: str) -> None:
    """A clock that was set back, or a file in which somebody changed a date."""
    one = part("shackle", **MARKED, looks=(look(on),))
    assert state_of(one).verdict == "caution"
    assert {"kit-look-ahead", "kit-not-looked-at"} <= set(codes(one))
    assert due(one).on is None
    assert due(replace(one, looks=(look("2026-10-01"), look(on)))).on == datetime.date(2027, 1, 1)


def test_a_day_of_the_other_side_of_the_date_line_counts() -> None:
    one = part("shackle", **MARKED, looks=(look("2026-11-27"),))
    assert state_of(one).verdict == "ok"


def test_a_good_look_of_a_day_to_come_does_not_hide_a_bad_one() -> None:
    stopped = part("shackle", **MARKED, looks=(look("2026-11-20", "stop"), look("2027-06-01")))
    assert state_of(stopped).verdict == "stop"
    assert state_of(part("shackle", **MARKED, looks=(look("2027-06-01", "stop"),))).verdict == "stop"


def test_a_reading_of_a_day_to_come_does_not_hide_one_past_its_limit() -> None:
    new = {"throat": "1.00 in"}
    worn = look("2026-11-20", throat="1.10 in")
    one = part("hook", mark="80", size="3/8 in", new=new, looks=(worn, look("2027-06-01", throat="1.00 in")))
    assert wear(one)[0].out
    assert state_of(one).verdict == "stop"


def test_a_worksheet_and_a_tag_are_told_no_day_to_come() -> None:
    state = state_of(part("shackle", **MARKED, looks=(look("2027-06-01"),)))
    boxes = boxes_for("load-path", state)
    assert boxes is not None
    assert (boxes["last_look"], boxes["looked_on"], boxes["condition"]) == ("never", "", "")
    assert (on_tag(state)["finding"], on_tag(state)["inspected_on"]) == ("", "")
    failed = state_of(part("shackle", **MARKED, looks=(look("2027-06-01", "stop"),)))
    told = boxes_for("load-path", failed)
    assert told is not None
    assert (told["last_look"], told["looked_on"]) == ("not-passed", "")
    assert (on_tag(failed)["finding"], on_tag(failed)["inspected_on"]) == ("failed", "")


# ------------------------------------------------------------------------------------ looks of one day


BY_TWO = (
    replace(look("2026-11-20", "stop"), by="A. Ames"),
    replace(look("2026-11-20"), by="Z. Zorn"),
)


@pytest.mark.parametrize("turned", [1, -1])
def test_of_two_looks_of_one_day_from_two_sides_the_bad_one_decides(turned: int) -> None:
    """By name the good one would come last, and the last of a day decides."""
    here, there = (part("shackle", **MARKED, looks=(one,)) for one in BY_TWO[::turned])
    assert merge(here, there).looked[0].found == "stop"
    assert state_of(merge(here, there)).verdict == "stop"


def test_looks_of_one_day_keep_the_order_in_which_they_were_written() -> None:
    stopped, good = BY_TWO
    ours = part("shackle", looks=(good, stopped))
    assert merge(ours, replace(ours, looks=(good,))).looks == (good, stopped)
    assert merge(replace(ours, looks=(good,)), ours).looks == (good, stopped)
    assert merge(part("shackle"), ours).looks == (good, stopped)
    mended = part("shackle", looks=(stopped, good))
    assert merge(replace(mended, looks=(stopped,)), mended).looks == (stopped, good)


# -------------------------------------------------------------------------------------------- the kind


def typed(one: Part, **more: str) -> dict[str, str]:
    return {name: value for name, value in vars(one).items() if isinstance(value, str)} | more


def test_a_part_that_was_inspected_stays_of_its_kind() -> None:
    """A strap that passed as a tie-down would hang a load, inspected."""
    strap = part("strap", rating="3,200 lb", looks=(look("2026-11-20"),))
    with pytest.raises(NotSaved) as refused:
        edited(typed(strap, kind="web-sling"), strap, strap.id, "2026.1", "us")
    assert set(refused.value.errors) == {"kind"}
    new = replace(strap, looks=())
    assert edited(typed(new, kind="web-sling"), new, new.id, "2026.1", "us").kind == "web-sling"
    assert edited(typed(strap, rating="3,000 lb"), strap, strap.id, "2026.1", "us").rating == "3,000 lb"


def test_a_file_makes_no_other_kind_of_a_part_that_was_inspected() -> None:
    strap = part("strap", rating="3,200 lb", looks=(look("2026-11-20"),))
    other = replace(strap, kind="web-sling")
    text = to_csv([other])
    read = asked("read", text=text, parts=[strap.to_data()])
    said = json.dumps(read["nodes"])
    assert "another kind of part" in said
    assert "checkbox" not in said
    assert asked("take", text=text, parts=[strap.to_data()], take=[strap.id])["kept"] == []
    gone = replace(other, out=Out("2026-11-21", "cut", "R. Ames"))
    assert difference([strap], [gone]).changed[0].can_be_taken
    renamed = difference([strap], [replace(strap, number="P-2")]).changed[0]
    assert renamed.can_be_taken
    assert difference([replace(strap, looks=())], [replace(other, looks=())]).changed[0].can_be_taken


# ------------------------------------------------------------------------------------------ the number


def test_no_two_parts_are_given_one_number() -> None:
    one = part("shackle", **MARKED)
    with pytest.raises(NotSaved) as refused:
        edited(typed(one), None, "ba9876543210", "2026.1", "us", number_taken=True)
    assert set(refused.value.errors) == {"number"}
    with pytest.raises(NotSaved):
        edited(typed(one, number="P-2"), one, one.id, "2026.1", "us", number_taken=True)
    # One that a file brought twice can still be said to be bad.
    assert edited(typed(one, condition="worn"), one, one.id, "2026.1", "us", number_taken=True)
    fields = {**typed(one), "photo": ""}
    assert not asked("save", fields=fields, part=None, id="ba9876543210", taken=True)["ok"]
    assert asked("save", fields=fields, part=None, id="ba9876543210", taken=False)["ok"]


def test_a_part_out_of_use_that_comes_again_under_another_name_is_told() -> None:
    gone = part("shackle", **MARKED, out=Out("2026-11-01", "bent", "R. Ames"))
    again = replace(gone, id="ba9876543210", out=None, looks=(look("2026-11-20"),))
    said = asked("read", text=to_json([again], "2026.1", ""), parts=[gone.to_data()])
    assert "out of use" in json.dumps(said["nodes"])
    twice = difference([], [again, replace(again, id="ba9876543211")])
    assert twice.numbers_twice == ("P-1", "P-1")


# -------------------------------------------------------------------------------------- the condition


@pytest.mark.parametrize("bad", ["worn", "damaged"])
def test_a_part_that_was_said_to_be_bad_is_good_again_only_after_an_inspection(bad: str) -> None:
    """The old inspection passed a part that was sound."""
    sound = part("shackle", **MARKED, looks=(look("2026-11-20"),))
    worn = edited(typed(sound, condition=bad), sound, sound.id, "2026.1", "us")
    assert state_of(worn).verdict == "stop"
    again = edited(typed(worn, condition="marked-good"), worn, worn.id, "2026.1", "us")
    assert state_of(again).verdict == "stop"
    assert [one.found for one in edited(typed(worn), worn, worn.id, "2026.1", "us").looks] == ["ok", "stop"]
    passed = replace(again, looks=(*again.looks, look(TODAY.isoformat())))
    assert state_of(passed).verdict == "caution"
    new = part("shackle", **MARKED)
    assert edited(typed(new, condition=bad), new, new.id, "2026.1", "us").looks == ()
    assert "written down by hand" in json.dumps(asked("part", part=worn.to_data())["nodes"])


# ------------------------------------------------------------------------------- through a worksheet


@pytest.mark.parametrize(
    ("more", "verdict"),
    [
        ({"looks": ()}, "caution"),
        ({"looks": (look("2025-01-01"),)}, "caution"),
        ({"looks": (look("2027-06-01"),)}, "caution"),
        ({"looks": (look("2026-11-20", "stop"),)}, "unknown"),
        ({"looks": (look("2026-11-20"),), "condition": "welded", "out": Out("2026-11-21", "w", "")}, "stop"),
        ({"looks": (look("2026-11-20"),), "out": Out("2026-11-21", "worn", "")}, "unknown"),
    ],
)
def test_what_stands_against_a_part_goes_with_it(more: dict[str, Any], verdict: str) -> None:
    """The reader says that all is well today: the sheet is no kinder than the kit."""
    state = state_of(part("shackle", **{**MARKED, **more}))
    boxes = boxes_for("load-path", state)
    assert boxes is not None
    row = {name: value for name, value in boxes.items() if value}
    row.setdefault("condition", "marked-good")
    assert carried(row)["verdict"] == verdict


def carried(row: dict[str, str]) -> dict[str, Any]:
    """The answer to a light load that hangs from one part."""
    return answer("load-path", {"load": "500 lb", "use": "plain", "items": [row]}, "us")


def test_a_rating_over_the_table_is_taken_nowhere() -> None:
    state = state_of(part("shackle", **MARKED, rating="9,000 lb", looks=(look("2026-11-20"),)))
    assert state.verdict == "unknown"
    row = {name: value for name, value in (boxes_for("load-path", state) or {}).items() if value}
    with pytest.raises(Refused, match="does not agree"):
        carried(row)
