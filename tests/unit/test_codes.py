"""The text that brings numbers back: whole or not at all."""

from __future__ import annotations

import binascii
import dataclasses
import json
import string
from collections.abc import Iterator, Mapping, Sequence
from typing import Any
from urllib.parse import parse_qsl

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from build_scripts.answer_view import view_json
from calc.answering import declared, declared_names, worksheet
from calc.inputs import Input
from calc.records.codes.numbers import (
    MOST_SHEETS,
    NotCarried,
    Numbers,
    bring_back,
    code_text,
    fields,
    name_bits,
)
from calc.records.codes.spelling import LETTERS, LONGEST, CodeRefused, groups_of, read_back, spelled

MADE_BY = "1a2b3c4d"
SLING = Numbers("sling-legs", {"load": "4,860 lb", "legs": "2", "known_by": "angle", "angle": "60°"})


def typed(value: Any) -> Any:
    """An example as a page gives it: every value a text."""
    if isinstance(value, str) and value.startswith("["):
        return typed(json.loads(value))
    if isinstance(value, Mapping):
        return {name: typed(one) for name, one in value.items()}
    return [typed(one) for one in value] if isinstance(value, (list, tuple)) else str(value)


def example_of(name: str) -> dict[str, Any]:
    sheet = worksheet(name)
    given = dict(typed(sheet.example))
    for one in sheet.inputs:
        if one.kind == "point" and isinstance(given.get(one.name), str):
            given[one.name] = [part.strip() for part in given[one.name].split(";")]
    return given


def all_inputs(inputs: Sequence[Input]) -> Iterator[Sequence[Input]]:
    yield inputs
    for one in inputs:
        if one.columns:
            yield from all_inputs(one.columns)


def refused(text: str) -> str:
    with pytest.raises(CodeRefused) as why:
        bring_back(text)
    return why.value.code


@pytest.mark.parametrize("name", declared_names())
def test_every_worksheets_example_comes_back_whole(name: str) -> None:
    inputs = example_of(name)
    brought = bring_back(code_text([Numbers(name, inputs)], "si", MADE_BY))
    assert (brought.units, brought.made_by) == ("si", MADE_BY)
    assert [one.sheet for one in brought.sheets] == [name]
    wanted = {path: value for path, value in fields(inputs) if value}
    assert dict(fields(brought.sheets[0].inputs)) == wanted


def test_no_two_boxes_of_a_worksheet_share_their_bits() -> None:
    for name, sheet in declared().items():
        for inputs in all_inputs(sheet.inputs):
            bits = [name_bits(one.name) for one in inputs]
            assert len(set(bits)) == len(bits), name


@settings(max_examples=150, deadline=None)
@given(
    st.fixed_dictionaries({}, optional={one: st.text(max_size=30) for one in ("label", "size", "grade", "rating")}),
    st.sampled_from(["us", "si"]),
)  # fmt: skip
def test_any_text_comes_back_letter_by_letter(row: dict[str, str], units: Any) -> None:
    inputs = {"load": "1 1/2 t", "items": [{"kind": "chain", **row}, {"kind": "hook"}]}
    text = code_text([Numbers("load-path", inputs)], units, MADE_BY)
    wanted = {path: value for path, value in fields(inputs) if value}
    assert dict(fields(bring_back(text).sheets[0].inputs)) == wanted


def test_several_worksheets_stand_in_one_text() -> None:
    sheets = [Numbers(name, example_of(name)) for name in ("load-weight", "sling-legs", "load-path")]
    assert [one.sheet for one in bring_back(code_text(sheets, "us", MADE_BY)).sheets] == [
        one.sheet for one in sheets
    ]
    assert refused(code_text([SLING] * (MOST_SHEETS + 1), "us", MADE_BY)) == "damaged"
    assert refused(code_text([], "us", MADE_BY)) == "damaged"


def test_lines_blanks_dashes_small_letters_and_letters_read_alike_do_not_matter() -> None:
    text = code_text([SLING], "us", MADE_BY)
    assert bring_back(text.replace(" ", "")) == bring_back(text)
    assert bring_back("\n  " + text.lower().replace(" ", "\n") + "\n") == bring_back(text)
    assert bring_back(text.replace(" ", "-")) == bring_back(text)
    spoken = "".join({"0": "O", "1": "l"}.get(letter, letter) for letter in text[3:])
    assert bring_back("lw1" + spoken) == bring_back(text)


def test_every_wrong_letter_is_noticed_and_its_group_named() -> None:
    groups = code_text([SLING], "us", MADE_BY).split()
    for place, group in enumerate(groups[1:], 1):
        for at in range(len(group)):
            wrong = LETTERS[(LETTERS.index(group[at]) + 7) % 32]
            changed = [*groups[:place], group[:at] + wrong + group[at + 1 :], *groups[place + 1 :]]
            with pytest.raises(CodeRefused) as why:
                bring_back(" ".join(changed))
            assert why.value.code == "group"
            assert why.value.why.facts["number"] == place


def test_two_letters_or_two_groups_that_changed_places_are_noticed() -> None:
    text = code_text([SLING], "us", MADE_BY).split()
    for at in range(1, len(text) - 1):
        group = text[at]
        for one in range(len(group) - 1):
            if group[one] == group[one + 1]:
                continue
            swapped = group[:one] + group[one + 1] + group[one] + group[one + 2 :]
            assert refused(" ".join([*text[:at], swapped, *text[at + 1 :]])) == "group"
        if at < len(text) - 2 and text[at] != text[at + 1]:
            assert refused(" ".join([*text[:at], text[at + 1], text[at], *text[at + 2 :]])) == "group"


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("", "not-ours"), ("hello", "not-ours"), ("LW", "not-ours"), ("https://example.invalid/#load=1", "not-ours"),
        ("LW1" + "0" * LONGEST, "not-ours"), ("LW2 00000", "newer"), ("LW9", "newer"), ("LW0 00000", "newer"),
        ("LW1", "damaged"), ("LW1 K", "group"), ("LW1 UUUUU", "group"), ("LW1 ééééé", "group"),
    ],
)  # fmt: skip
def test_what_is_no_text_of_ours_is_refused_by_its_reason(text: str, why: str) -> None:
    assert refused(text) == why


def test_a_text_that_was_cut_off_is_damaged() -> None:
    groups = code_text([SLING], "us", MADE_BY).split()
    for count in range(1, len(groups)):
        assert refused(" ".join(groups[:count])) == "damaged"


def test_what_another_edition_named_is_unknown(monkeypatch: pytest.MonkeyPatch) -> None:
    text = code_text([SLING], "us", MADE_BY)
    sheet = worksheet("sling-legs")
    fewer = [one for one in sheet.inputs if one.name != "angle"]
    other = {"sling-legs": worksheet("hitch")}
    with monkeypatch.context() as patched:
        patched.setattr("calc.records.codes.numbers.worksheet", lambda name: other[name])
        assert refused(text) == "unknown-box"
    with monkeypatch.context() as patched:
        narrowed = dataclasses.replace(sheet, inputs=tuple(fewer))
        patched.setattr("calc.records.codes.numbers.worksheet", lambda _name: narrowed)
        assert refused(text) == "unknown-box"
    options = [
        dataclasses.replace(one, choices=("leg-length",)) if one.name == "known_by" else one
        for one in sheet.inputs
    ]
    with monkeypatch.context() as patched:
        changed = dataclasses.replace(sheet, inputs=tuple(options))
        patched.setattr("calc.records.codes.numbers.worksheet", lambda _name: changed)
        assert refused(text) == "unknown-box"
    # A worksheet that is gone, and a box that only has the bits of the one that was meant.
    with monkeypatch.context() as patched:
        renamed = [
            dataclasses.replace(one, name="other") if one.name == "angle" else one for one in sheet.inputs
        ]
        patched.setattr(
            "calc.records.codes.numbers.worksheet",
            lambda _name: dataclasses.replace(sheet, inputs=tuple(renamed)),
        )
        bits = {"other": name_bits("angle")}
        patched.setattr("calc.records.codes.numbers.name_bits", lambda name: bits.get(name, name_bits(name)))
        assert refused(text) == "unknown-box"


def sealed(body: bytes) -> str:
    """A text whose first checksum fits whatever stands in it."""
    return spelled(binascii.crc32(body).to_bytes(4, "big") + body)


def test_bits_that_no_writer_writes_are_damage() -> None:
    good = read_back(code_text([SLING], "us", MADE_BY))[4:]
    assert bring_back(sealed(good)).sheets
    assert refused(sealed(good[:12])) == "damaged"
    head = good[:8]
    # After the head and the order of units: a letter that is none, a capital of none, a letter beyond all, a name of no sheet.
    for bits in ("0" + "111111", "0" + "000001" + "111111", "0" + "000010" + "1" * 21):
        bits += "0" * (-len(bits) % 8)
        assert (
            refused(sealed(head + bytes(int(bits[at : at + 8], 2) for at in range(0, len(bits), 8))))
            == "damaged"
        )
    capital_of_an_end = "0" + "000001" + "000000" + "000000" + "0" * 5
    data = bytes(int(capital_of_an_end[at : at + 8], 2) for at in range(0, len(capital_of_an_end), 8))
    assert refused(sealed(head + data)) == "damaged"


def test_a_worksheet_that_is_gone_is_named() -> None:
    class Gone:
        inputs: tuple[Input, ...] = ()

    with pytest.MonkeyPatch.context() as patched:
        patched.setattr("calc.records.codes.numbers.worksheet", lambda _name: Gone)
        text = code_text([Numbers("gone-sheet", {})], "us", MADE_BY)
    assert refused(text) == "unknown-sheet"
    said = json.loads(view_json(json.dumps({"back": text})))["errors"][0]["said"]
    assert "“gone-sheet”" in said


def test_a_file_is_not_carried() -> None:
    name = next(name for name, one in declared().items() if any(box.kind == "file" for box in one.inputs))
    box = next(one.name for one in worksheet(name).inputs if one.kind == "file")
    with pytest.raises(NotCarried):
        code_text([Numbers(name, {box: "AAAA"})], "us", MADE_BY)


@given(st.binary(min_size=1, max_size=60))
def test_bytes_are_read_back(data: bytes) -> None:
    assert read_back(spelled(data)) == data
    assert set("".join(groups_of(data))) <= set(LETTERS)


# ---- what a page gets


def asked(**request: Any) -> Any:
    return json.loads(view_json(json.dumps({"root": "../", "units": "us", "language": "en", **request})))


def text_in(node: Any) -> str:
    return node if isinstance(node, str) else "".join(text_in(one) for one in node[2:])


def code_of(worksheet: str, inputs: Mapping[str, Any]) -> Any:
    return asked(code={"worksheet": worksheet, "inputs": inputs, "edition": "2026.1", "made_by": MADE_BY})


def test_the_page_gets_the_text_with_its_code_and_takes_it_back() -> None:
    answer = code_of("sling-legs", SLING.inputs)
    words = " ".join(text_in(node) for node in answer["nodes"])
    assert "Edition 2026.1, tables and code 1a2b3c4d." in words
    (text,) = [text_in(node) for node in answer["nodes"] if node[1].get("data-code-text") == ""]
    back = asked(back=text)
    assert back["ok"]
    address, fragment = back["address"].split("#")
    assert address == "../work-out/sling-legs.html"
    assert dict(parse_qsl(fragment)) == {**SLING.inputs, "units": "us", "back": MADE_BY}
    assert set(back["kept"]) == {"sling-legs"}


def test_a_day_that_was_typed_loosely_is_kept_as_the_calendar_has_it() -> None:
    answer = code_of("tag", {"own_number": "H-2", "inspected_on": "28 Feb 2026"})
    (text,) = [text_in(node) for node in answer["nodes"] if node[1].get("data-code-text") == ""]
    assert bring_back(text).sheets[0].inputs["inspected_on"] == "2026-02-28"
    assert code_of("tag", {"inspected_on": "no day"})[
        "ok"
    ]  # refused by the worksheet itself, and kept as typed


@pytest.mark.parametrize("file", [True, False])
def test_what_no_text_carries_is_said(file: bool) -> None:
    if file:
        name = "load-weight"
        inputs = {next(one.name for one in worksheet(name).inputs if one.kind == "file"): "AAAA"}
    else:
        name, inputs = "trial-log", {"pasted": string.printable * 20}
    words = " ".join(text_in(node) for node in code_of(name, inputs)["nodes"])
    assert "There is no text that brings these numbers back" in words


def test_a_refusal_is_a_whole_sentence() -> None:
    answer = asked(back="LW2 00000", units="si")
    assert not answer["ok"]
    assert answer["errors"][0]["said"].startswith("This text was printed by a newer book")
