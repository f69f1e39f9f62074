"""hook-check: limits met, near, passed; what was not looked at; altered hooks; the record's dates."""

import datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

import calc.inputs
from calc.answering import Refused, answer, worksheet
from calc.figures.inspection import hook_outline, tip_angle_deg
from calc.inspecting.measuring import growth, loss
from tests.saying import one_reading

SOUND: dict[str, Any] = {
    "throat_new": "31.7 mm", "throat_now": "31.9 mm", "section_new": "23.1 mm", "section_now": "22.8 mm", "twist": "0",
    "latch": "closes", "cracks": "no", "marks_readable": "yes", "altered": "no", "hook_on": "sling",
    "place": "us-washington", "service": "normal", "inspected_on": "today",
}  # fmt: skip


def ask(**changes: Any) -> dict[str, Any]:
    return answer("hook-check", {**SOUND, **changes}, "si")


def refused(**changes: Any) -> str:
    with pytest.raises(Refused) as caught:
        ask(**changes)
    return " | ".join(f"{error.input}: {error.message}" for error in caught.value.errors)


def value(record: dict[str, Any], name: str) -> Any:
    return record["results"][name]["value"]


def test_a_sound_hook() -> None:
    record = ask()
    assert record["verdict"] == "ok"
    assert value(record, "throat_increase_percent") == pytest.approx(100 * (31.9 / 31.7 - 1))
    assert value(record, "wear_percent") == pytest.approx(100 * (1 - 22.8 / 23.1))
    assert value(record, "throat_limit") == pytest.approx(31.7 * 1.05)
    assert value(record, "section_limit") == pytest.approx(23.1 * 0.9)
    assert value(ask(inspected_on=""), "next_inspection") == "within 12 months of this inspection"


def test_the_quarter_inch_governs_a_wide_throat() -> None:
    record = ask(throat_new="151 mm", throat_now="157.2 mm")
    assert record["verdict"] == "caution"
    assert ask(throat_new="151 mm", throat_now="157.4 mm")["verdict"] == "stop"
    assert value(record, "throat_limit") == pytest.approx(151 + 6.35)


def test_at_a_limit_is_out_and_half_way_is_near() -> None:
    assert ask(throat_new="30 mm", throat_now="31.5 mm")["verdict"] == "stop"
    assert ask(throat_new="30 mm", throat_now="31.499 mm")["verdict"] == "caution"
    assert ask(throat_new="30 mm", throat_now="30.76 mm")["verdict"] == "caution"
    assert ask(throat_new="30 mm", throat_now="30.74 mm")["verdict"] == "ok"
    assert ask(section_new="20 mm", section_now="18 mm")["verdict"] == "stop"
    assert ask(section_new="20 mm", section_now="18.01 mm")["verdict"] == "caution"


def test_any_twist_stops_though_older_texts_allow_ten_degrees() -> None:
    record = ask(twist="2°")
    assert record["verdict"] == "stop"
    lines = value(record, "criteria")
    assert any("limit 0°; found 2°; fail" in line for line in lines)
    assert any("limit 10°; found 2°; pass" in line for line in lines)


def test_sources_that_differ_are_both_shown() -> None:
    record = ask(throat_now="34.1 mm")
    lines = [line for line in value(record, "criteria") if line.startswith("Throat opened:")]
    assert [line.split("; found")[0] for line in lines] == [
        "Throat opened: limit 5%",
        "Throat opened: limit 15%",
    ]
    assert [line.split("; ")[-1] for line in lines] == ["fail", "near"]
    assert "remove this hook from service" in record["headline"].lower()


@pytest.mark.parametrize(
    "change",
    [{"cracks": "yes"}, {"altered": "yes"}, {"marks_readable": "no"}, {"latch": "missing"}, {"latch": "does-not-close"}],
)  # fmt: skip
def test_a_fault_stops_whatever_the_numbers(change: dict[str, str]) -> None:
    record = ask(**change)
    assert record["verdict"] == "stop"
    assert value(record, "next_inspection") is None
    assert record["results"]["next_inspection"]["text"] == "none: out of service"


@pytest.mark.parametrize(
    "name",
    ["throat_new", "throat_now", "section_new", "section_now", "twist", "latch", "cracks", "marks_readable", "altered", "inspected_on"],
)  # fmt: skip
def test_what_was_not_looked_at_leaves_it_unknown(name: str) -> None:
    record = ask(**{name: ""})
    assert record["verdict"] == "unknown"
    assert "cannot be passed yet" in record["headline"]


@pytest.mark.parametrize(
    ("changes", "crushed", "tagged", "soon"),
    [
        ({}, 0, 0, 0),
        ({"twist": "3"}, 1, 0, 0),
        ({"twist": ""}, 0, 1, 0),
        ({"throat_now": "32.9 mm"}, 0, 0, 1),
    ],
)
def test_cautions_fit_the_verdict(changes: dict[str, str], crushed: int, tagged: int, soon: int) -> None:
    texts = " ".join(caution["text"] for caution in ask(**changes)["cautions"])
    assert texts.count("Cut it through or crush it") == crushed
    assert texts.count("Hang a tag on it") == tagged
    assert texts.count("Measure again soon") == soon
    assert texts.count("Never weld, heat, grind") == 1


def test_nothing_known_is_unknown() -> None:
    record = answer("hook-check", {})
    assert record["verdict"] == "unknown"
    assert record["results"]["throat_increase_percent"]["text"] == "not measured"


def test_a_hook_made_without_a_latch_gets_its_caution() -> None:
    record = ask(latch="none-made")
    assert record["verdict"] == "ok"
    assert any("without a latch" in caution["text"] for caution in record["cautions"])


@pytest.mark.parametrize(
    ("today", "service", "day", "due"),
    [
        ("2026-11-26", "normal", "2026-11-23", "by 2027-11-23"),
        ("2026-12-01", "severe", "2026-11-30", "by 2027-02-28"),
        ("2028-03-01", "normal", "2028-02-29", "by 2029-02-28"),
        ("2026-04-01", "severe", "2026-03-31", "by 2026-06-30"),
        ("2027-11-30", "severe", "2027-11-29", "by 2028-02-29"),
        ("2026-11-26", "", "2026-11-23", "by 2027-02-23"),
        ("2026-11-26", "special", "2026-11-23", "by 2027-02-23, or sooner as a qualified person says"),
        (
            "2026-11-26",
            "special",
            "",
            "within 3 months of this inspection, or sooner as a qualified person says",
        ),
        ("2026-11-26", "severe", "", "within 3 months of this inspection"),
        ("9999-05-02", "severe", "9999-05-02", "by 9999-08-02"),
    ],
)
def test_next_inspection(
    monkeypatch: pytest.MonkeyPatch, today: str, service: str, day: str, due: str
) -> None:
    monkeypatch.setattr(calc.inputs, "today", lambda: datetime.date.fromisoformat(today))
    assert value(ask(service=service, inspected_on=day), "next_inspection") == due


def test_an_inspection_that_was_due_passes_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    """A record of 1999 passed, with a next inspection of the year 2000."""
    monkeypatch.setattr(calc.inputs, "today", lambda: datetime.date(2026, 11, 26))
    last_day = ask(inspected_on="2025-11-26")
    assert last_day["verdict"] == "ok"
    assert value(last_day, "next_inspection") == "by 2026-11-26"
    over = ask(inspected_on="2025-11-25")
    assert over["verdict"] == "unknown"
    assert value(over, "next_inspection") == "Overdue: it was due by 2026-11-25"
    assert over["big"]["text"] == "Overdue: it was due by 2026-11-25"
    assert "was due by 2026-11-25" in over["headline"]
    assert ask(inspected_on="1999-05-02")["verdict"] == "unknown"
    assert "before 1980" in refused(inspected_on="1979-12-31")
    assert "still to come" in refused(inspected_on="2027-05-02")


def test_the_day_counts() -> None:
    record = ask(inspected_on="")
    assert record["verdict"] == "unknown"
    assert record["big"]["text"] == "Give the date of this inspection"


def test_what_is_not_said_of_the_hook_takes_the_shortest_interval() -> None:
    """A crane's hook: each month (29 CFR 1910.179(j)(2)(iii)). Loose gear: six months (LOLER reg. 9(3)) where no place is said."""

    def months(**changes: str) -> str:
        return str(value(ask(inspected_on="", **changes), "next_inspection"))

    assert months(hook_on="") == "within a month of this inspection"
    assert months(hook_on="crane", place="us-federal") == "within a month of this inspection"
    assert months(hook_on="crane", place="uk") == "within 12 months of this inspection"
    assert months(place="") == months(place="uk") == "within 6 months of this inspection"
    assert months(place="us-federal") == "within 12 months of this inspection"
    assert months(place="germany") == "within 6 months of this inspection"


@pytest.mark.parametrize(
    ("changes", "looked_at", "record"),
    [
        ({}, "7 of 7", "complete, for the inspection of 2026-11-26"),
        ({"part_name": ""}, "7 of 7", "not complete. Still missing: the name or serial number of the part"),
        (
            {"inspected_by": "", "cracks": "", "twist": ""},
            "5 of 7",
            "not complete. Still missing: the name of the inspector and 2 looks at the part",
        ),
        ({"throat_new": "", "inspected_on": ""}, "6 of 7", "not complete. Still missing: the date and 1 look at the part"),
    ],
)  # fmt: skip
def test_the_record(
    monkeypatch: pytest.MonkeyPatch, changes: dict[str, str], looked_at: str, record: str
) -> None:
    monkeypatch.setattr(calc.inputs, "today", lambda: datetime.date(2026, 11, 26))
    found = ask(**{"part_name": "hook 2", "inspected_by": "A. Smith", **changes})
    assert value(found, "looked_at") == looked_at
    assert value(found, "record") == record
    told = any("not a record yet" in caution["text"] for caution in found["cautions"])
    assert told == any(name in changes for name in ("part_name", "inspected_by", "inspected_on"))


def test_bad_input() -> None:
    assert "does not shrink" in refused(throat_now="30.1 mm")
    assert "thicker than the new" in refused(section_now="23.6 mm")
    assert "not a day" in refused(inspected_on="last week")
    assert "too small" in refused(throat_new="0")
    assert "too small" in refused(section_now="-2 mm")
    assert "too large" in refused(throat_new="41 in")
    assert "too large" in refused(twist="91")
    assert "neither yes nor no" in refused(cracks="perhaps")
    assert "unit of weight" in refused(throat_now="3 kg")
    assert "one of" in refused(latch="sometimes")


def test_a_reading_error_is_no_change() -> None:
    assert value(ask(throat_now="31.5 mm"), "throat_increase_percent") == 0
    assert value(ask(section_now="23.2 mm"), "wear_percent") == 0
    assert growth(2.0, 1.9) == 0
    assert loss(2.0, 2.1) == 0


@given(
    new=st.floats(5, 300), growth_share=st.floats(0, 0.6), wear=st.floats(0, 0.6),
    fault=st.sampled_from([{"altered": "yes"}, {"cracks": "yes"}, {"marks_readable": "no"}]),
)  # fmt: skip
def test_an_altered_hook_never_passes(
    new: float, growth_share: float, wear: float, fault: dict[str, str]
) -> None:
    numbers = {
        "throat_new": f"{one_reading(new)} mm", "throat_now": f"{one_reading(new * (1 + growth_share))} mm",
        "section_new": f"{one_reading(new)} mm", "section_now": f"{one_reading(new * (1 - wear))} mm",
    }  # fmt: skip
    assert ask(**numbers, **fault)["verdict"] in ("stop", "unknown")


@given(new=st.floats(5, 300), small=st.floats(0, 0.2), more=st.floats(0, 0.2))
def test_more_opening_is_never_judged_better(new: float, small: float, more: float) -> None:
    order = ["ok", "caution", "stop"]
    first = ask(throat_new=f"{one_reading(new)} mm", throat_now=f"{one_reading(new * (1 + small))} mm")[
        "verdict"
    ]
    second = ask(
        throat_new=f"{one_reading(new)} mm", throat_now=f"{one_reading(new * (1 + small + more))} mm"
    )["verdict"]
    assert order.index(second) >= order.index(first)


@given(chord=st.floats(0.4, 1.9))
def test_the_drawn_throat_is_true_to_scale(chord: float) -> None:
    """Distance from the neck to the inner end of the tip on the outline, in bowl radii."""
    outline = hook_outline(1.0, 0.8, tip_angle_deg(chord))
    neck, tip = outline[1], outline[61]
    assert ((neck[0] - tip[0]) ** 2 + (neck[1] - tip[1]) ** 2) ** 0.5 == pytest.approx(chord)


def test_figure_says_it_in_words() -> None:
    assert "Dashed: as new" in ask(throat_now="32.9 mm")["figure"]["caption"]
    assert "Sight along it" in answer("hook-check", {})["figure"]["caption"]
    assert answer("hook-check", worksheet("hook-check").example)["verdict"] == "stop"


def test_each_criterion_is_a_row_with_its_source() -> None:
    """Limits that print the same stand together; the looser of two is named so (29 CFR 1910.184(e)(9)(ii): 15 percent)."""
    criteria = ask()["results"]["criteria"]
    assert len(criteria["rows"]) == len(criteria["value"]) == len(criteria["items"])
    assert all(len(row) == 5 and all(row) for row in criteria["rows"])
    throat = [row for row in criteria["rows"] if row[0] == "Throat opened"]
    assert [row[1] for row in throat] == ["5%", "15%"]
    assert throat[1][3].endswith("; looser limit")
    assert "29 CFR 1910.184(e)(9)(ii)" in throat[1][4]


def test_what_was_assumed_is_said() -> None:
    def assumed(**changes: str) -> bool:
        return any("shortest interval" in caution["text"] for caution in ask(**changes)["cautions"])

    assert not assumed()
    assert assumed(place="")
    assert assumed(service="")


@pytest.mark.parametrize("name", ["part_name", "inspected_by"])
@pytest.mark.parametrize("written", ["?", "-", "...", "/", "—"])
def test_a_mark_of_doubt_names_nothing(name: str, written: str) -> None:
    """`?` as the part and `-` as the inspector made a complete record."""
    found = ask(**{"part_name": "hook 2", "inspected_by": "A. Smith", name: written})
    assert value(found, "record").startswith("not complete")
