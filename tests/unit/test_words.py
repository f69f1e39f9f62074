"""Words apart from findings: a catalogue is read by its format's own library, and written by language, units and sense."""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

import pytest

from calc.words import catalogue as catalogues
from calc.words import writer as writers
from calc.words.catalogue import Catalogue, NoWords, catalogue
from calc.words.compiling import (
    PSEUDO,
    WordsRefused,
    compile_file,
    compile_language,
    pseudo_text,
    write_compiled,
)
from calc.words.facts import (
    Cell,
    Listing,
    Number,
    Option,
    Place,
    Quantity,
    Unit,
    absent,
    known,
    length,
    message,
    share,
)
from calc.words.writer import NoFact, Writer, in_english, plain, spaced

WORDS = Path(__file__).resolve().parents[2] / "docs" / "words"


def compiled(tmp_path: Path, text: str) -> dict[str, Any]:
    path = tmp_path / "some.ftl"
    path.write_text(text, encoding="utf-8")
    return compile_file(path)


def writer_of(monkeypatch: pytest.MonkeyPatch, tmp_path: Path, text: str, units: str = "us") -> Writer:
    """A writer whose scope `trial` has these messages."""
    scopes = {**catalogue().scopes, "trial": compiled(tmp_path, text)}
    trial = Catalogue("trial", "one-other", scopes)
    for module in (catalogues, writers):
        monkeypatch.setattr(module, "catalogue", lambda language="en": trial)
    return Writer("us" if units == "us" else "si", f"trial {tmp_path}", ("trial",))


def test_a_message_its_parts_and_its_fractions(tmp_path: Path) -> None:
    found = compiled(
        tmp_path,
        "load = Load of 3/8 in or 1-1/4 in\n    .help = What hangs.\n-yard = the yard\nat = At { -yard }.\n",
    )
    assert found["load"] == ["Load of ", ["f", "3/8"], " in or ", ["f", "1-1/4"], " in"]
    assert found["load.help"] == "What hangs."
    assert found["at"] == ["At ", ["m", "-yard"], "."]


def test_what_a_pattern_may_hold(tmp_path: Path) -> None:
    found = compiled(
        tmp_path,
        'a = { "{" } { $b } { OWN($c) } { DIGITS($d, digits: 2) } { a.x } { { $e } }\n    .x = y\n'
        "s = { $n ->\n    [one] one\n    [2] two\n   *[other] { $n }\n}\n",
    )
    assert found["a"] == [
        "{ ", ["v", "b", "", {}], " ", ["v", "c", "OWN", {}], " ", ["v", "d", "DIGITS", {"digits": 2}], " ", ["m", "a.x"], " ",
        ["v", "e", "", {}],
    ]  # fmt: skip
    assert found["s"] == [["s", "n", {"one": "one", "2": "two", "other": [["v", "n", "", {}]]}, "other"]]


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("load = { $weight\n", "some.ftl:1: cannot be read"),
        ("good = x\nload 6\n", "some.ftl:2: cannot be read"),
        ("a = x\nb = y\na = z\n", "some.ftl:3: a stands twice"),
        ("a = { GROSS($b) }\n", "some.ftl:1: a: GROSS is not a function here"),
        ("a = { OWN() }\n", "a: OWN takes one fact"),
        ('a = { OWN($b, digits: "x") }\n', "a: OWN does not take digits"),
        ("a = { OWN($b, places: 2) }\n", "a: OWN does not take places"),
        ("a = { 5 }\n", "a: NumberLiteral is not used in this book"),
        ("a = { OWN($b) ->\n   *[other] x\n}\n", "a: a choice is made by a fact"),
    ],
)
def test_a_damaged_catalogue_is_refused_by_file_line_and_key(tmp_path: Path, text: str, why: str) -> None:
    with pytest.raises(WordsRefused) as caught:
        compiled(tmp_path, text)
    assert why in str(caught.value)


def test_a_language_must_be_there_and_known(tmp_path: Path) -> None:
    with pytest.raises(WordsRefused, match="there are no words of es"):
        compile_language(tmp_path, "es")
    with pytest.raises(WordsRefused, match="nothing is known of how tlh counts"):
        compile_language(tmp_path, "tlh")


def test_the_made_up_language_changes_every_letter_and_keeps_what_is_no_word(tmp_path: Path) -> None:
    made = compile_language(WORDS, PSEUDO)
    writing = made["scopes"]["writing"]
    assert (writing["group"], writing["decimal"], writing["list.last"]) == (",", ".", ", ")
    assert writing["and.last"] == " áñđ· "
    title = made["scopes"]["worksheets/sling-legs"]["title"]
    assert not any(letter in title for letter in "abcdefghij")
    assert len(title) > 1.2 * len("How hard does each leg of my sling pull?")
    assert pseudo_text(" 3/8 ") == " 3/8 "
    assert pseudo_text(" Load ") == " Ļóáđ· "


def test_compiled_words_are_kept_and_read_again(tmp_path: Path) -> None:
    written = write_compiled(WORDS, "en", tmp_path / "kept" / "en.json")
    assert json.loads((tmp_path / "kept" / "en.json").read_text(encoding="utf-8")) == written


def test_words_of_a_checkout_are_compiled_where_they_are_older(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(catalogues, "_CHECKOUT", str(tmp_path))
    first = catalogues._compiled("en")
    assert (tmp_path / ".build" / "words" / "en.json").is_file()
    assert catalogues._compiled("en") == first
    monkeypatch.setitem(sys.modules, "calc.words.compiling", None)
    assert catalogues._compiled("en") == first
    with pytest.raises(NoWords, match=r"the words of es are not compiled.*handbook.py site"):
        catalogues._compiled("es")


def test_packed_words_are_read_before_any_others(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    (tmp_path / "en.json").write_text('{"language": "en"}', encoding="utf-8")
    monkeypatch.setattr(catalogues, "_PACKED", str(tmp_path))
    assert catalogues._packed("en") == {"language": "en"}
    assert catalogues._packed("es") is None


def test_what_is_missing_is_named(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    writer = writer_of(monkeypatch, tmp_path, "pull = It pulls { $pull }.\n")
    assert writer.text("pull", pull="hard") == "It pulls hard."
    assert plain(writer.say("pull", lambda name: f"by {name}")) == "It pulls by pull."
    with pytest.raises(NoFact, match="trial: the message pull names pull, which it is not given"):
        writer.say("pull")
    with pytest.raises(NoWords, match="trial has no words for push"):
        writer.say("push")
    assert not writer.has("push")


def test_a_choice_is_made_by_what_a_fact_is(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    text = (
        "n = { $n ->\n    [0] none\n    [one] one\n    [1.5] one and a half\n    [flat] too flat\n    [absent] nothing\n    [80] eighty\n"
        "    [yes] aye\n    [steel] steel\n   *[other] many\n}\n"
    )
    writer = writer_of(monkeypatch, tmp_path, text)

    def chosen(fact: Any) -> str:
        return writer.text("n", n=fact)

    assert [chosen(fact) for fact in (0, 1, 2)] == ["none", "one", "many"]
    assert [chosen(Number(value)) for value in (1.0, 1.5, 7.0)] == ["one", "one and a half", "many"]
    assert [chosen(Cell(value)) for value in ("1", "7", "n/a")] == ["one", "many", "many"]
    assert chosen(absent("flat")) == "too flat"
    assert chosen(absent("other-reason")) == "nothing"
    assert chosen(Option("grade", "80")) == "eighty"
    assert chosen(message("yes")) == "aye"
    assert chosen("steel") == "steel"
    assert chosen(Listing(("a",))) == "one"
    assert chosen(Listing(())) == "none"
    assert chosen(Quantity(1.0, "length")) == "many"


def test_facts_are_written_by_units_and_sense() -> None:
    us, si = Writer("us"), Writer("si")
    pull = Quantity(12315.0, "force", "demand")
    assert us.plain(pull) == "2,770 lb (12.4 kN)"
    assert si.plain(pull) == "12.4 kN (2,770 lb)"
    assert us.own(pull) == "2,769 lb"
    assert us.plain(Quantity(12315.0, "force", "capacity")) == "2,760 lb (12.3 kN)"
    assert plain(us.write(pull, "PLACES", {"places": 1})) == "2,768.5 lb"
    assert plain(us.write(pull, "DIGITS", {"digits": 2})) == "2,800 lb (13 kN)"
    assert us.write(length(0.981075)) == [["n", [["f", "38-5/8"], " in"]], " (", ["n", ["981", " mm"]], ")"]
    assert us.plain(length(-0.009525)) == "−3/8 in (−9.52 mm)"
    assert us.plain(length(0.0508)) == "2 in (50.8 mm)"
    assert us.plain(share(0.391)) == "39.1%"
    assert us.plain(known(30.0, "angle")) == "30°"
    assert us.plain(known(absent("not-given"), "angle")) == "not given"
    assert us.plain(Number(2.5, places=3)) == "2.500"
    assert us.plain(Cell("2.5", "ratio")) == "2.5"
    assert us.plain(Unit("lbf.ft")) == "lb·ft"
    assert us.plain(Unit("mm")) == "mm"
    assert us.plain(Listing(("a", "b", "c"), "and")) == "a, b and c"
    assert us.plain(Listing(())) == "none"
    assert us.plain(Place("osha-1910-184", "1910.184(e)")) == "29 CFR 1910.184(e)"
    assert us.of("worksheets/sling-legs").plain(Option("known_by", "angle")) == "The angle"


def test_a_language_sets_its_own_marks(monkeypatch: pytest.MonkeyPatch) -> None:
    writing = {**catalogue().scopes["writing"], "group": ".", "decimal": ","}
    continental = Catalogue("de", "one-other", {**catalogue().scopes, "writing": writing})
    monkeypatch.setattr(catalogues, "catalogue", lambda language="en": continental)
    writer = Writer("si", "a language with a comma")
    assert writer.plain(Quantity(31555.3, "weight")) == "31.600 kg (69.600 lb)"
    assert writer.plain(Cell("7,100", "lb")) == "7.100 lb"
    assert writer.plain(Quantity(0.4567, "length", digits=4)) == "456,7 mm (17,98 in)"


def test_keys_become_identifiers() -> None:
    assert [spaced(key) for key in ("80", "3/8", "lbf.in", "lbf/in", "%", "leg_length")] == [
        "80", "3_8", "lbf-in", "lbf_in", "percent", "leg_length",
    ]  # fmt: skip
    assert plain("as it is") == "as it is"
    assert in_english(message("no-such-message")) == "no-such-message"
