"""From findings to what is said: a toy worksheet with every kind of result, reason and line, told from a toy catalogue."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import pytest

from calc import telling
from calc.declaration import Citation, Result, Row, Step, Worksheet, step
from calc.inputs import (
    ChoiceInput,
    CountInput,
    FileInput,
    FlagInput,
    Given,
    Input,
    NumberInput,
    NumbersInput,
    PointInput,
    QuantityInput,
    Reading,
    RowsInput,
    TextInput,
)
from calc.reasons import Reason, caution, note, stop, unknown, verdict_of, within, worst_first
from calc.telling import fact_of, flattened, tell
from calc.words import catalogue as catalogues
from calc.words import writer as writers
from calc.words.catalogue import Catalogue, catalogue
from calc.words.compiling import Pattern
from calc.words.facts import Absent, Listing, Message, Number, Option, Quantity, absent, message

SAID: dict[str, Pattern] = {
    "title": "How toys hang", "input-load": "Load",
    "result-pull": "Pull", "result-pulls": "Pulls", "result-rating": "Rating", "result-name": "Name", "result-legs": "Legs",
    "result-steady": "Steady", "result-kinds": "Kinds", "result-lines": "Lines", "result-notes": "Notes", "result-factor": "Factor",
    "opening": ["It pulls ", ["v", "pull", "", {}], " on ", ["v", "load", "", {}], "."],
    "reason-over.headline": "Too much.", "reason-over.caution": "Do not lift.", "reason-fine.headline": "All is well.",
    "reason-said.opening": "First.", "reason-said.closing": ["Last: ", ["v", "why", "", {}], "."], "reason-said.caution": "Look.",
    "closing": [["s", "rating", {"absent": "No rating.", "other": ""}, "other"]],
    "step-pull": "Pull", "step-pull.formula": "load", "step-pull.result": [["v", "pull", "", {}]],
    "absent-no-tag": "no tag", "kind-hook": "hook", "part": [["v", "what", "", {}], " of ", ["v", "pull", "OWN", {}]],
    "row-lines": [["v", "part", "", {}], ": ", ["v", "state", "", {}]],
}  # fmt: skip


@pytest.fixture(autouse=True)
def toy_words(monkeypatch: pytest.MonkeyPatch) -> None:
    toy = Catalogue("toy", "one-other", {**catalogue().scopes, "worksheets/toy": SAID})
    for module in (catalogues, writers):
        monkeypatch.setattr(module, "catalogue", lambda language="en": toy)
    catalogues.messages.cache_clear()


@dataclass(frozen=True)
class Found:
    pull_n: float
    pulls_n: tuple[float | Absent, ...]
    rating_kg: float | Absent
    name: str
    legs: int
    steady: bool
    kinds: tuple[Message, ...]
    lines: tuple[Row, ...]
    notes: tuple[str, ...]
    factor: float


def toy(
    *reasons: Reason, rating: float | Absent = 100.0, rates: bool = True, **found: Any
) -> Worksheet[Found]:
    def find(given: Given) -> Found:
        values: dict[str, Any] = {
            "pull_n": given.si("load") * 9.80665,
            "pulls_n": (1000.0, absent("no-tag")),
            "rating_kg": rating,
            "name": "keel",
            "legs": 2,
            "steady": True,
            "kinds": (message("kind-hook"),),
            "lines": (Row({"part": "hook", "limit": message("part", what="a share")}, "near"),),
            "notes": (),
            "factor": 1.5,
        }
        return Found(**{**values, **found})

    return Worksheet(
        name="toy",
        inputs=(QuantityInput("load", dimension="weight"),),
        results=(
            Result("pull", "force", "demand"), Result("pulls", "force"), Result("rating", "weight", "capacity"), Result("name"),
            Result("legs"), Result("steady"), Result("kinds"), Result("lines", columns=("part", "limit")), Result("notes"),
            Result("factor"),
        ),
        find=find,
        judge=lambda _found: reasons,
        work=lambda _found: (step("pull"),),
        large="pull",
        example={"load": "1 kg"},
        citations=(Citation("osha-1910-184", "1910.184(e)"),),
        rates=rates,
    )  # fmt: skip


def told(*reasons: Reason, **options: Any) -> dict[str, Any]:
    return dict(flattened(tell(toy(*reasons, **options), {"load": "1255.8 kg"}, "si")))


def test_every_kind_of_result_leaves_with_value_unit_and_words() -> None:
    results = told(within("fine"))["results"]
    assert results["pull"] == {
        "value": pytest.approx(12.3151911), "unit": "kN", "label": "Pull", "text": "12.4 kN (2,770 lb)",
    }  # fmt: skip
    assert results["pulls"]["value"] == [1.0, None]
    assert results["pulls"]["items"] == ["1 kN (225 lb)", "no tag"]
    assert results["pulls"]["text"] == "1 kN (225 lb); no tag"
    assert results["rating"]["value"] == 100.0
    assert (results["name"]["value"], results["name"]["text"]) == ("keel", "keel")
    assert (results["legs"]["value"], results["legs"]["text"]) == (2, "2")
    assert (results["steady"]["value"], results["steady"]["text"]) == (True, "yes")
    assert results["kinds"]["value"] == ["hook"]
    assert results["factor"]["text"] == "1.50"
    assert results["lines"]["rows"] == [["hook", "a share of 12.32 kN"]]
    assert results["lines"]["states"] == ["near"]
    assert results["lines"]["items"] == ["hook: near"]
    assert results["notes"] == {"value": [], "unit": "", "label": "Notes", "text": "none", "items": []}
    absent_rating = told(unknown("over"), rating=absent("no-tag"))["results"]["rating"]
    assert (absent_rating["value"], absent_rating["text"]) == (None, "no tag")


def test_the_heaviest_reason_leads_and_all_have_their_cautions() -> None:
    record = told(note("said", why="so"), within("fine"), stop("over"), stop("over"))
    assert record["verdict"] == "stop"
    assert record["verdict_words"] == "Stop"
    assert (
        record["headline"] == "It pulls 12.4 kN (2,770 lb) on 1,260 kg (2,770 lb). First. Too much. Last: so."
    )
    assert record["cautions"] == [
        {"text": "Look.", "kind": "note"},
        {"text": "Do not lift.", "kind": "prohibition"},
    ]
    assert record["reasons"][0] == {"code": "said", "weight": "note"}
    assert told(within("fine"), rating=absent("no-tag"))["headline"].endswith("All is well. No rating.")


def test_a_reason_may_set_what_stands_large_and_its_sign() -> None:
    record = told(Reason("over", "caution", {}, "note", "factor"))
    assert record["big"] == {"key": "factor", "label": "Factor", "text": "1.50"}
    assert record["cautions"] == [{"text": "Do not lift.", "kind": "note"}]


def test_only_a_rating_that_was_compared_says_within() -> None:
    assert told(note("said", why="so"))["verdict"] == "unknown"
    assert told(note("said", why="so"), rates=False)["verdict_words"] == "Worked out"
    assert told(within("fine"))["verdict_words"] == "Within the rating"
    assert told(within("fine"), caution("over"))["verdict"] == "caution"
    assert verdict_of(()) == "unknown"
    assert [one.weight for one in worst_first((note("a"), stop("b"), within("c")))] == [
        "stop",
        "within",
        "note",
    ]


def test_working_and_sources() -> None:
    record = told(within("fine"))
    assert record["steps"] == [
        {"label": "Pull", "formula": "load", "numbers": "", "result": "12.4 kN (2,770 lb)"}
    ]
    assert record["sources"][0]["locator"] == "1910.184(e)"
    assert record["figure"] is None
    assert Step("pull") == step("pull")


def test_a_result_without_reason_for_its_absence_is_a_fault() -> None:
    with pytest.raises(TypeError, match="a value that there is none of needs a reason"):
        fact_of(Result("pull", "force"), None)
    with pytest.raises(writers.NoFact, match="names why"):
        told(note("said"), within("fine"))


@pytest.mark.parametrize(
    ("declared", "raw", "fact"),
    [
        (QuantityInput("load", dimension="weight"), "2 kg", Quantity(2.0, "weight")),
        (QuantityInput("load", dimension="weight", unit="short_ton", unit_si="t"), "2 t",
         Quantity(2000.0, "weight", units=("short_ton", "t"))),
        (NumberInput("factor"), "2.5", Number(2.5, 4)),
        (CountInput("legs"), "3", 3),
        (ChoiceInput("grade", choices=("80",)), "80", Option("grade", "80")),
        (TextInput("label"), "hook", "hook"),
        (FlagInput("seen"), "yes", message("yes")),
        (PointInput("at", dimension="length"), ["1 m", "2 m", "0"], Listing((Quantity(1.0, "length"), Quantity(2.0, "length"), Quantity(0.0, "length")), "semicolon")),
        (NumbersInput("forces", dimension="force"), "1 kN", Listing((Quantity(1000.0, "force"),), "semicolon")),
        (RowsInput("parts", columns=(TextInput("label"),)), [{"label": "a"}], 1),
        (FileInput("solid"), "c29saWQ=", 5),
    ],
)  # fmt: skip
def test_an_input_is_a_fact_that_messages_may_name(declared: Input, raw: Any, fact: Any) -> None:
    value = declared.read(raw, Reading("us", lambda _path, value: value))
    assert declared.fact(value, declared.name) == fact
    assert declared.fact(None, declared.name) == absent("not-given")


def test_an_input_of_no_kind_reads_nothing() -> None:
    with pytest.raises(NotImplementedError):
        Input("x").read("1", Reading("us", lambda _path, value: value))
    assert flattened("x") == "x"
    assert telling.error_records((), ()) == []
