"""A shop's own parts: ratings by mark, dates, wear, what is final, and files that come back as they were or not at all."""

from __future__ import annotations

import csv
import datetime
import io
import json
from dataclasses import replace
from typing import Any

import jsonschema
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc import inputs
from calc.inspecting.record import PLACES
from calc.quantities import NotReadable
from calc.records.kit import file as kit_file
from calc.records.kit.difference import difference, merge
from calc.records.kit.due import due
from calc.records.kit.edit import NotSaved, edited, looked_at, noted, taken_out
from calc.records.kit.file import COLUMNS, KitRefused, from_csv, from_json, read_kit, to_csv, to_json
from calc.records.kit.part import Look, NoPart, Out, Part, Seen, part_of
from calc.records.kit.rating import rate
from calc.records.kit.reading import carrying_unit, day_text, with_unit_si
from calc.records.kit.schema import (
    BOUGHT,
    CONDITIONS,
    FILE,
    FOUND,
    KINDS,
    MEASURES,
    OUT_CONDITIONS,
    PART,
    SERVICES,
    first_fault,
)
from calc.records.kit.state import state_of
from calc.records.kit.wear import outlook, wear
from calc.words.facts import Quantity
from calc.words.writer import UnitSystem

TODAY = datetime.date(2026, 11, 26)


@pytest.fixture(autouse=True)
def fixed_day(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(inputs, "today", lambda: TODAY)


def part(kind: str = "chain-sling", **more: Any) -> Part:
    empty = Part(
        "0123456789ab",
        "P-1",
        kind,
        "",
        "",
        "",
        "",
        "",
        "",
        "marked-good",
        "",
        "",
        "",
        "",
        {},
        (),
        None,
        Seen("", ""),
        "",
    )
    return replace(empty, **more)


def look(on: str, found: str = "ok", **readings: str) -> Look:
    return Look(on, "R. Ames", found, "", "", readings)


def codes(one: Part) -> list[str]:
    return [reason.code for reason in state_of(one).reasons]


# ------------------------------------------------------------------------------------------ ratings


@pytest.mark.parametrize(
    ("kind", "mark", "size", "rating", "kg"),
    [
        ("chain-sling", "G80", "3/8 in", "", 3220.5),
        ("chain-sling", "8", "10 mm", "", 3150.0),
        ("hook", "100", "3/8 in", "", 3991.6),
        ("shackle", "A", "5/8 in", "", 2948.4),
        ("shackle", "A", "5/8 in", "3.25 short tons", 2948.4),
        ("web-sling", "", "", "3,200 lb", 1451.5),
        ("hoist", "", "", "10 kN", 1019.7),
        ("tie-down-chain", "70", "3/8 in", "", 2993.7),
        ("tie-down-chain", "70", "3/8 in", "6,590 lb", 2989.2),
        ("tie-down-chain", "4", "3/8 in", "", 2449.4),
        ("tie-down-chain", "", "", "6,600 lb", 2993.7),
        ("strap", "", "", "3,333 lb", 1511.8),
    ],
)
def test_a_rating_is_that_of_the_mark_or_of_the_maker(
    kind: str, mark: str, size: str, rating: str, kg: float
) -> None:
    found = rate(part(kind, mark=mark, size=size, rating=rating))
    assert found.kg == pytest.approx(kg, abs=0.1)
    assert found.quantity is not None
    assert found.why is None


@pytest.mark.parametrize(
    ("kind", "mark", "size", "rating", "why", "forbidden"),
    [
        ("chain-sling", "70", "3/8 in", "6,600 lb", "part-ties-down-only", True),
        ("chain-sling", "", "3/8 in", "", "part-without-grade", False),
        ("chain-sling", "XK2", "3/8 in", "9,000 lb", "kit-mark-not-understood", False),
        ("chain-sling", "80", "3/8 in", "9,000 lb", "kit-mark-against-table", False),
        ("chain-sling", "80", "", "", "part-without-rating", False),
        ("chain-sling", "80", "7/9 in", "", "part-not-in-tables", False),
        ("web-sling", "", "", "", "part-without-rating", False),
        ("web-sling", "", "", "3,200", "kit-rating-not-read", False),
        ("web-sling", "", "", "-3 t", "kit-rating-not-read", False),
        ("tie-down-chain", "70", "3/8 in", "9,000 lb", "kit-mark-against-table", False),
        ("tie-down-chain", "70", "7/9 in", "", "not-rated-size-not-listed", False),
        ("tie-down-chain", "T", "3/8 in", "", "not-rated-size-not-listed", False),
        ("tie-down-chain", "M", "3/8 in", "", "kit-mark-not-understood", False),
        ("binder", "", "", "", "kit-no-rating-given", False),
    ],
)
def test_where_mark_and_maker_say_nothing_or_disagree_there_is_no_rating(
    kind: str, mark: str, size: str, rating: str, why: str, forbidden: bool
) -> None:
    found = rate(part(kind, mark=mark, size=size, rating=rating))
    assert (found.kg, found.quantity) == (None, None)
    assert found.why is not None
    assert found.forbidden is forbidden
    assert state_of(part(kind, mark=mark, size=size, rating=rating)).verdict == (
        "stop" if forbidden else "unknown"
    )
    if why != "not-rated-size-not-listed":
        assert found.why.code == why


def test_a_tag_counts_where_the_table_has_no_such_chain() -> None:
    found = rate(part("tie-down-chain", mark="70", size="7/9 in", rating="6,600 lb"))
    assert found.kg == pytest.approx(2993.7, abs=0.1)


# ------------------------------------------------------------------------------------------ dates


@pytest.mark.parametrize(
    ("kind", "place", "service", "months", "longest"),
    [
        ("chain-sling", "us-federal", "normal", 12, 12),
        ("chain-sling", "", "", 1, 12),
        ("wire-rope", "us-washington", "normal", 1, 12),
        ("shackle", "us-washington", "normal", 12, 12),
        ("shackle", "", "", 3, 12),
        ("other", "", "", 1, 12),
        ("strap", "germany", "normal", 12, 12),
    ],
)
def test_the_shortest_interval_that_may_apply_counts(
    kind: str, place: str, service: str, months: int, longest: int
) -> None:
    found = due(part(kind, place=place, service=service, looks=(look("2026-11-26"),)))
    assert (found.months, found.longest_months) == (months, longest)


def test_the_next_date_runs_from_the_newest_look_that_found_it_good() -> None:
    one = part(
        place="us-federal", service="normal", looks=(look("2025-12-20"), look("2026-05-01", "unknown"))
    )
    found = due(one)
    assert found.on == datetime.date(2026, 12, 20)
    assert (found.soon, found.overdue) == (True, False)
    late = due(replace(one, looks=(look("2025-01-20"),)))
    assert (late.soon, late.overdue) == (False, True)
    never = due(replace(one, looks=()))
    assert (never.on, never.soon, never.overdue) == (None, False, False)
    far = due(replace(one, looks=(look("2026-11-20"),)))
    assert (far.soon, far.overdue) == (False, False)


# ------------------------------------------------------------------------------------------ how a part stands

GOOD: dict[str, Any] = {
    "mark": "80",
    "size": "3/8 in",
    "place": "us-federal",
    "service": "normal",
    "looks": (look("2026-11-20"),),
}


@pytest.mark.parametrize(
    ("more", "verdict", "code"),
    [
        ({}, "ok", "kit-in-use"),
        ({"looks": ()}, "caution", "kit-not-looked-at"),
        ({"looks": (look("2025-01-20"),)}, "caution", "kit-overdue"),
        ({"looks": (look("2025-12-20"),)}, "ok", "kit-soon"),
        ({"looks": (look("2026-11-20", "stop"),)}, "stop", "kit-look-stopped"),
        ({"looks": (look("2026-11-20", "unknown"),)}, "unknown", "kit-look-unfinished"),
        ({"looks": (look("2026-11-20", "caution"),)}, "caution", "kit-look-careful"),
        ({"looks": (look("2026-11-20", "stop"), look("2026-11-20", "ok"))}, "caution", "kit-once-stopped"),
        ({"condition": ""}, "unknown", "kit-condition-not-looked-at"),
        ({"condition": "worn"}, "unknown", "kit-condition-worn"),
        ({"condition": "damaged"}, "stop", "kit-condition-damaged"),
        ({"condition": "welded", "out": Out("2026-01-02", "welded", "")}, "stop", "kit-out"),
        ({"out": Out("2026-01-02", "lost its tag", "")}, "stop", "kit-out"),
        ({"seen": Seen("3000.000 kg", "2026.1")}, "caution", "kit-rating-changed"),
        ({"seen": Seen("3220.506 kg", "2026.1")}, "ok", "kit-in-use"),
        ({"mark": "70"}, "stop", "kit-no-rating"),
        ({"kind": "tie-down-chain", "mark": "70"}, "ok", "kit-ties-down-only"),
    ],
)
def test_how_a_part_stands(more: dict[str, Any], verdict: str, code: str) -> None:
    one = part(**{**GOOD, **more})
    state = state_of(one)
    assert state.verdict == verdict
    assert code in codes(one)
    assert state.usable is (verdict in ("ok", "caution"))
    assert state.citations or state.rated.kg is None


def test_the_list_begins_with_what_must_be_looked_at_and_ends_with_what_is_out() -> None:
    never, dated = part(**{**GOOD, "looks": ()}), part(**GOOD)
    out = replace(dated, out=Out("2026-01-02", "bent", ""))
    assert sorted(state_of(one).order for one in (out, dated, never)) == [
        state_of(one).order for one in (never, dated, out)
    ]


# ------------------------------------------------------------------------------------------ wear


def throats(*sizes: str) -> Part:
    days = ("2024-03-04", "2024-11-02", "2025-06-11", "2025-12-09", "2026-05-28", "2026-11-20")
    looks = tuple(look(day, throat=size) for day, size in zip(days, sizes, strict=False))
    return part("hook", **{**GOOD, "new": {"throat": "1.160 in"}, "looks": looks})


def test_the_line_through_the_readings_meets_the_limit_in_a_range_of_days() -> None:
    """By another road: statsmodels' 95 percent band of the mean contains the limit on the first and last day, and on no
    day outside."""
    import numpy
    import statsmodels.api

    one = throats("1.160 in", "1.166 in", "1.171 in", "1.182 in", "1.187 in", "1.196 in")
    (found,) = wear(one)
    assert found.limit_m == pytest.approx(1.218 * 0.0254)
    assert found.used == pytest.approx((1.196 - 1.160) / (1.218 - 1.160))
    assert (found.near, found.out) == (True, False)
    assert found.outlook is not None
    assert found.outlook.latest is not None
    days = numpy.array([one.day.toordinal() for one in found.readings], float)
    fitted = statsmodels.api.OLS(
        [r.size_m for r in found.readings], statsmodels.api.add_constant(days - days[0])
    ).fit()

    def band(day: datetime.date) -> Any:
        seen = fitted.get_prediction([[1.0, day.toordinal() - days[0]]])
        return seen.conf_int(alpha=0.05)[0]

    one_day = datetime.timedelta(days=1)
    first, last = found.outlook.earliest, found.outlook.latest
    assert band(first - one_day)[1] < found.limit_m <= band(first)[1]
    assert band(last - one_day)[0] < found.limit_m <= band(last)[0]
    assert found.outlook.per_year_m == pytest.approx(fitted.params[1] * 365.25)


@pytest.mark.parametrize(
    "sizes",
    [
        ("1.160 in", "1.170 in"),
        ("1.160 in", "1.160 in", "1.160 in", "1.160 in"),
        ("1.190 in", "1.180 in", "1.170 in"),
        ("1.1600 in", "1.1600 in", "1.1601 in", "1.1601 in", "1.1601 in", "1.1601 in"),
    ],
)
def test_no_day_is_told_from_two_readings_or_a_line_that_does_not_climb(sizes: tuple[str, ...]) -> None:
    (found,) = wear(throats(*sizes))
    assert found.outlook is None or found.outlook.latest is None


@pytest.mark.parametrize("new", ["", "0.31 in", "0.394 in"])
def test_a_chain_thinner_than_its_limit_is_worn_out_whatever_it_measured_when_new(new: str) -> None:
    """0.30 in on a 3/8 in chain, whose limit is 0.354 in, was in use, because its thickness when new was not given."""
    thin = part(
        "chain-sling",
        mark="80",
        size="3/8",
        new={"thickness": new},
        looks=(look("2026-11-01", thickness="0.30 in"),),
    )
    (found,) = wear(thin)
    assert (found.out, found.near) == (True, False)
    assert "kit-worn-out" in codes(thin)
    thick = replace(thin, looks=(look("2026-11-01", thickness="0.36 in"),))
    assert "kit-worn-out" not in codes(thick)
    assert ("kit-worn" in codes(thick)) == (new == "0.394 in")
    assert "kit-worn-out" in codes(replace(thin, looks=(look("2026-11-01", thickness="9 mm"),)))


def test_a_limit_that_is_met_already_is_met_on_the_day_of_the_last_reading() -> None:
    (found,) = wear(throats("1.160 in", "1.200 in", "1.240 in"))
    assert found.out
    assert found.outlook is not None
    assert found.outlook.earliest == datetime.date(2025, 6, 11)
    assert "kit-worn-out" in codes(throats("1.160 in", "1.200 in", "1.240 in"))
    assert "kit-worn" in codes(throats("1.160 in", "1.190 in"))
    assert codes(throats("1.160 in", "1.165 in")) == ["kit-overdue"]


@pytest.mark.parametrize(
    ("kind", "measure", "new", "now", "limit"),
    [
        ("hook", "section", "1.000 in", "0.95 in", 0.9),
        ("shackle", "body", "0.750 in", "0.74 in", 0.69),
        ("shackle", "pin", "0.875 in", "0.87 in", 0.8225),
        ("chain-sling", "reach", "10 in", "10.1 in", 10.3),
        ("chain-sling", "thickness", "", "0.36 in", None),
    ],
)
def test_each_size_has_the_limit_of_its_judging_sheet(
    kind: str, measure: str, new: str, now: str, limit: float | None
) -> None:
    one = part(kind, size="3/8 in", new={measure: new}, looks=(look("2026-01-05", **{measure: now}),))
    (found,) = wear(one)
    assert found.limit_m is not None
    assert limit is None or found.limit_m == pytest.approx(limit * 0.0254)
    (without,) = wear(replace(one, size="", new={}))
    assert (without.limit_m, without.used, without.out, without.near) == (None, None, False, False)
    assert wear(replace(one, looks=(look("2026-01-05", **{measure: "about an inch"}),))) == ()
    thin = [
        replace(found.readings[0], day=TODAY - datetime.timedelta(days=100 * n), size_m=1.0 + n)
        for n in range(3)
    ]
    assert outlook(thin, 0.5, "body") is not None


# ------------------------------------------------------------------------------------------ what is typed


def test_what_is_kept_carries_its_unit() -> None:
    assert carrying_unit(" 7,100  lb ", "weight", "us") == "7,100 lb"
    assert carrying_unit("30", "length", "si") == "30 mm"
    assert carrying_unit("", "length", "us") == ""
    assert day_text("26 Nov 2026") == "2026-11-26"
    assert day_text("") == ""
    for typed in ("0 in", "five", "1 lb in"):
        with pytest.raises(NotReadable):
            with_unit_si(typed, "length")
    with pytest.raises(NotReadable):
        carrying_unit("five", "length", "us")


FIELDS = {"number": " H-1 ", "kind": "hook", "mark": "80", "size": "3/8", "condition": "marked-good"}


def saved(fields: dict[str, str], before: Part | None = None) -> Part:
    return edited(fields, before, "0123456789ab", "2026.1", "us")


def test_a_form_makes_a_part_with_its_rating_noted() -> None:
    one = saved({**FIELDS, "rating": "7,100", "bought_on": "2024-03-04", "new_throat": "1.16"})
    assert (one.number, one.size, one.rating, one.bought_on) == ("H-1", "3/8 in", "7,100 lb", "2024-03-04")
    assert one.new["throat"] == "1.16 in"
    assert one.seen == Seen("3220.506 kg", "2026.1")
    assert noted(part("binder"), "2026.1").seen == Seen("", "")
    assert saved({**FIELDS, "kind": "hoist", "size": "small"}).size == "small"
    assert saved({**FIELDS, "size": "10"}).size == "10 in"
    changed = saved({**FIELDS, "number": "H-2"}, replace(one, looks=(look("2026-01-05"),)))
    assert (changed.number, len(changed.looks)) == ("H-2", 1)


@pytest.mark.parametrize(
    ("fields", "box"),
    [
        ({"number": " "}, "number"),
        ({"kind": "spaceship"}, "kind"),
        ({"rating": "much"}, "rating"),
        ({"bought_on": "5/6/2026"}, "bought_on"),
        ({"bought_on": "2030-01-01"}, "bought_on"),
        ({"condition": "bent"}, "out_why"),
        ({"condition": "sparkling"}, "condition"),
        ({"name": "x" * 201}, "name"),
        ({"out_why": "bent", "out_on": "someday"}, "out_on"),
    ],
)
def test_a_form_is_refused_box_by_box(fields: dict[str, str], box: str) -> None:
    with pytest.raises(NotSaved) as refused:
        saved({**FIELDS, **fields})
    assert list(refused.value.errors) == [box]


def test_out_of_use_is_final_and_an_altered_part_is_kept_only_so() -> None:
    out = saved({**FIELDS, "condition": "welded", "out_why": "welded on a plate", "out_by": "R. Ames"})
    assert out.out == Out("2026-11-26", "welded on a plate", "R. Ames")
    back = saved({**FIELDS, "condition": "marked-good"}, out)
    assert back.out == out.out
    assert taken_out({"out_why": "lost"}, out).out == out.out
    assert taken_out({"out_why": "bent", "out_on": "2026-11-01"}, part()).out == Out("2026-11-01", "bent", "")
    with pytest.raises(NotSaved):
        taken_out({}, part())
    with pytest.raises(NoPart) as refused:
        part_of({**out.to_data(), "out": None})
    assert refused.value.fault.broken == "altered-in-use"


def test_a_look_is_added_and_one_that_found_it_altered_takes_the_part_out() -> None:
    fields = {"on": "today", "by": "R. Ames", "found": "ok", "reading_throat": "1.17", "note": "cleaned"}
    one = looked_at(fields, part("hook"), "us")
    assert one.looks[-1].to_data()["readings"]["throat"] == "1.17 in"
    assert one.last_good is not None
    assert one.last_good.note == "cleaned"
    out = looked_at({**fields, "found": "stop"}, part("hook"), "us", "hook-check", altered=True)
    assert out.out == Out("2026-11-26", "altered", "R. Ames")
    for lacking in ("on", "by", "found"):
        with pytest.raises(NotSaved) as refused:
            looked_at({**fields, lacking: ""}, part("hook"), "us")
        assert list(refused.value.errors) == [lacking]


# ------------------------------------------------------------------------------------------ files

LINES = st.text(st.characters(blacklist_categories=("Cc", "Cs", "Zl", "Zp")), max_size=12)
DAYS = st.dates(datetime.date(1980, 1, 1), TODAY).map(datetime.date.isoformat)
SIZES = st.fixed_dictionaries(dict.fromkeys(MEASURES, LINES))
LOOKS = st.builds(Look, DAYS, LINES, st.sampled_from(FOUND), st.just("hook-check"), LINES, SIZES)


@st.composite
def parts(draw: st.DrawFn) -> Part:
    condition = draw(st.sampled_from(("", *CONDITIONS)))
    out = st.builds(Out, DAYS, LINES, LINES)
    return Part(
        id=draw(st.text("0123456789abcdef", min_size=8, max_size=12)),
        number=draw(LINES),
        kind=draw(st.sampled_from(KINDS)),
        name=draw(LINES),
        mark=draw(st.sampled_from(("", "80", "8", "A", "=1+1", "XK"))),
        other_marks=draw(LINES),
        size=draw(st.sampled_from(("", "3/8 in", "10 mm", "5/8 in", "-"))),
        rating=draw(st.sampled_from(("", "7,100 lb", "2 t", "+3", "LC"))),
        tag=draw(LINES),
        condition=condition,
        bought_on=draw(st.one_of(st.just(""), DAYS)),
        bought=draw(st.sampled_from(("", *BOUGHT))),
        place=draw(st.sampled_from(("", *PLACES))),
        service=draw(st.sampled_from(("", *SERVICES))),
        new=draw(SIZES),
        looks=tuple(draw(st.lists(LOOKS, max_size=3))),
        out=draw(out if condition in OUT_CONDITIONS else st.one_of(st.none(), out)),
        seen=draw(st.builds(Seen, LINES, LINES)),
        photo=draw(st.sampled_from(("", "data:image/jpeg;base64,AAAA"))),
    )


KITS = st.lists(parts(), max_size=3, unique_by=lambda one: one.id)


@settings(max_examples=40)
@given(KITS)
def test_a_kit_comes_back_from_its_file_as_it_was(kit: list[Part]) -> None:
    text = to_json(kit, "2026.1", "abcd1234")
    jsonschema.validate(json.loads(text), FILE)
    assert list(read_kit(text).parts) == kit
    bare = [replace(one, photo="") for one in kit]
    assert list(read_kit(to_csv(kit)).parts) == bare
    assert difference(kit, read_kit(text).parts).same == len(kit)
    for one in kit:
        assert state_of(one).verdict != "ok" or one.last_good is not None


@settings(max_examples=60)
@given(parts(), parts())
def test_merging_keeps_every_look_and_never_brings_a_part_back(here: Part, there: Part) -> None:
    merged = merge(here, replace(there, id=here.id))
    assert {one.on for one in (*here.looks, *there.looks)} == {one.on for one in merged.looks}
    assert (merged.out is None) == (here.out is None and there.out is None)
    part_of(merged.to_data())


@settings(max_examples=60)
@given(parts(), st.data())
def test_the_checks_of_the_book_are_those_of_the_schema(one: Part, data: st.DataObject) -> None:
    broken = one.to_data()
    name = data.draw(st.sampled_from(sorted(broken)))
    broken[name] = data.draw(st.sampled_from([None, 7, "x", [], {}, "2026-01-01", "x" * 300, True]))
    if data.draw(st.booleans()):
        del broken[data.draw(st.sampled_from(sorted(broken)))]
    library = jsonschema.Draft202012Validator(PART)
    assert (first_fault(broken, PART) is None) == library.is_valid(broken)


def whole(*kit: Part) -> dict[str, Any]:
    data: dict[str, Any] = json.loads(to_json(kit, "2026.1", ""))
    return data


def resealed(data: dict[str, Any]) -> str:
    return json.dumps({**data, "check": kit_file.checksum(data["parts"])})


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("{", "not-readable"),
        ('{"format": NaN}', "not-readable"),
        ("[" * 100_000, "not-readable"),
        ("[]", "another-format"),
        ('{"format": "other"}', "another-format"),
        (json.dumps({**whole(part()), "version": 2, "edition": "2030.1"}), "newer"),
        (json.dumps({**whole(part()), "version": True}), "damaged"),
        (json.dumps({**whole(part()), "more": 1}), "damaged"),
        (json.dumps({**whole(part()), "parts": []}), "changed"),
        (resealed(whole(part(), part())), "damaged"),
        (resealed(whole(part(looks=(look("2026-02-30"),)))), "damaged"),
        (resealed(whole(part(bought_on="2026-13-01"))), "damaged"),
        (resealed(whole(part(out=Out("2026-00-01", "", "")))), "damaged"),
        ("", "other-columns"),
        ("a,b\r\n", "other-columns"),
        ('"a', "not-readable"),
        (",".join(COLUMNS) + "\r\nx\r\n", "damaged"),
        (to_csv([part()]).replace("[]", "[NaN]"), "damaged"),
        (to_csv([part()]).replace("chain-sling", "spaceship"), "damaged"),
    ],
)
def test_a_damaged_or_newer_file_is_refused_whole(text: str, code: str) -> None:
    with pytest.raises(KitRefused) as refused:
        read_kit(text)
    assert refused.value.code == code


def test_a_line_with_a_control_character_fits_no_schema() -> None:
    line = {"type": "string", "pattern": r"^[a-z]*$"}
    fault = first_fault("a\x07", line, "/own_number")
    assert fault is not None
    assert (fault.path, fault.broken) == ("/own_number", "pattern")
    assert first_fault("a", line) is None


def test_what_is_too_large_is_refused_unread(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(kit_file, "_LARGEST", 10)
    with pytest.raises(KitRefused):
        read_kit(" " * 11)
    monkeypatch.setattr(kit_file, "MOST_PARTS", 0)
    with pytest.raises(KitRefused):
        from_csv(to_csv([part()]))
    too_many = {"type": "array", "maxItems": 1, "items": {"type": "string"}}
    assert first_fault(["a", "b"], too_many) is not None


@settings(max_examples=60)
@given(st.integers(0, 10_000), st.integers(1, 255))
def test_no_file_with_one_changed_byte_is_taken_for_another_kit(place: int, turned: int) -> None:
    kit = [part(**GOOD), part("hook", id="fedcba98", new={"throat": "1.16 in"})]
    data = bytearray(to_json(kit, "2026.1", "abcd1234").encode())
    data[place % len(data)] ^= turned
    try:
        read = from_json(data.decode("utf-8", errors="replace"))
    except KitRefused:
        return
    assert [one.to_data() for one in read.parts] == [one.to_data() for one in kit]


def test_a_spreadsheet_reckons_no_cell() -> None:
    cells = [cell for row in csv.reader(io.StringIO(to_csv([part(name="=1+1", tag="'=x")]))) for cell in row]
    assert not [cell for cell in cells if cell.startswith(("=", "+", "-", "@"))]


def test_what_a_file_would_change_is_told_field_by_field() -> None:
    here = part(**GOOD)
    there = replace(
        here,
        mark="100",
        new={"throat": "1 in"},
        looks=(look("2026-10-01"),),
        out=Out("2026-11-01", "bent", ""),
    )
    added = part("shackle", id="fedcba98")
    found = difference([here], [there, added])
    assert found.added == (added,)
    assert found.numbers_twice == ("P-1",)
    (changed,) = found.changed
    assert [(one.name, one.here, one.there) for one in changed.fields] == [
        ("mark", "80", "100"),
        ("new_throat", "", "1 in"),
    ]
    assert (changed.new_looks, changed.goes_out, changed.photo) == (1, True, False)
    assert difference([there], [here]).changed[0].merged.out == there.out


@pytest.mark.parametrize(
    ("kind", "mark", "size", "rating", "most_lb"),
    [
        ("shackle", "", "3/4 in", "35 short_ton", 28_000),
        ("shackle", "", "1/8 in", "35 short_ton", 1_333),
        ("wire-rope", "", "0.7 in", "35 short_ton", 22_400),
        ("eyebolt", "", "1/8 in", "35 short_ton", 800),
        ("tie-down-chain", "70", "1/8 in", "66,000 lb", 2_456),
        ("tie-down-chain", "70", "", "66,000 lb", 50_000),
        ("strap", "", "", "66,000 lb", 50_000),
    ],
)
def test_a_rating_over_what_its_size_bears_is_none(
    kind: str, mark: str, size: str, rating: str, most_lb: float
) -> None:
    """A 3/4 in shackle of 35 tons stood in the kit as one."""
    found = rate(part(kind, mark=mark, size=size, rating=rating))
    assert found.kg is None
    assert found.why is not None
    assert found.why.code == "kit-mark-over-its-size"
    most = found.why.facts["most"]
    assert isinstance(most, Quantity)
    assert most.value_si / 0.45359237 == pytest.approx(most_lb, rel=2e-3)
    assert rate(part(kind, mark=mark, size=size, rating=f"{most_lb * 0.9:.0f} lb")).kg is not None


@pytest.mark.parametrize("kind", ["shackle", "tie-down-chain"])
def test_a_size_that_is_not_read_leaves_no_rating(kind: str) -> None:
    found = rate(part(kind, size="banana", rating="500 lb"))
    assert found.kg is None
    assert found.why is not None
    assert found.why.code == "kit-size-not-read"


def test_what_a_table_of_chain_says_is_not_asked_of_a_binder() -> None:
    found = rate(part("binder", mark="70", size="3/8", rating="5,400 lb"))
    assert found.basis is not None
    assert found.basis.code == "as-marked"
    assert found.ties_down


@pytest.mark.parametrize(
    ("kind", "mark", "ties_down"), [("chain-sling", "80", False), ("tie-down-chain", "70", True)]
)
def test_a_rating_against_the_table_still_says_what_the_part_is_for(
    kind: str, mark: str, ties_down: bool
) -> None:
    found = rate(part(kind, mark=mark, size="3/8 in", rating="35 short_ton"))
    assert found.kg is None
    assert found.ties_down == ties_down


def test_the_day_of_the_next_look_is_its_last() -> None:
    """A chain sling in Washington is looked at after a year: one of a year ago today is not overdue, of a day before it is."""
    sling = part(place="us-washington", service="normal")
    today, yesterday = (
        due(replace(sling, looks=(look("2025-11-26"),))),
        due(replace(sling, looks=(look("2025-11-25"),))),
    )
    assert (today.on, today.overdue, today.soon) == (TODAY, False, True)
    assert (yesterday.overdue, yesterday.soon) == (True, False)
    in_a_month, in_longer = (
        due(replace(sling, looks=(look("2025-12-26"),))),
        due(replace(sling, looks=(look("2025-12-27"),))),
    )
    assert (in_a_month.soon, in_longer.soon) == (True, False)
    assert sling.looks == ()
    assert due(sling).longest_months == 12


def test_a_kit_is_sorted_by_the_day_of_the_next_look() -> None:
    sling = part(place="us-washington", service="normal", number="P-9")
    looked = replace(sling, looks=(look("2026-01-05"),))
    assert state_of(looked).order == "2027-01-05 P-9"
    assert state_of(sling).order == "0000-00-00 P-9"


@pytest.mark.parametrize(
    ("typed", "units", "kept"),
    [
        ("3/8", "us", "3/8 in"),
        ("3/8", "si", "3/8 in"),
        ("10", "si", "10 mm"),
        ("10", "us", "10 in"),
        ("10 mm", "us", "10 mm"),
    ],
)
def test_a_fraction_is_of_an_inch_to_every_reader(typed: str, units: UnitSystem, kept: str) -> None:
    made = edited({**FIELDS, "size": typed}, None, "0123456789ab", "2026.1", units)
    assert made.size == kept


def test_a_look_that_stopped_a_part_is_told_with_its_own_day() -> None:
    looks = (
        look("2026-01-05"),
        look("2026-03-06", "stop"),
        look("2026-06-07", "caution"),
        look("2026-09-08"),
    )
    once = next(
        reason
        for reason in state_of(part(**{**GOOD, "looks": looks})).reasons
        if reason.code == "kit-once-stopped"
    )
    assert once.facts["date"] == "2026-03-06"
