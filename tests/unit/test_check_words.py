"""A catalogue that does not fit the code is refused with file, line and key."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from build_scripts import check_words
from build_scripts.check_words import ROOT, problems

ENGLISH = ROOT / "docs" / "words" / "en"
SHEET = "worksheets/sling-legs.ftl"


@pytest.fixture
def words(tmp_path: Path) -> Path:
    """A copy of the English catalogue, to be damaged."""
    return Path(shutil.copytree(ENGLISH, tmp_path / "words" / "en"))


def changed(words: Path, file: str, old: str, new: str) -> int:
    """Change a text in a file of words; gives the line on which it stood."""
    path = words / file
    text = path.read_text(encoding="utf-8")
    assert text.count(old) == 1
    path.write_text(text.replace(old, new), encoding="utf-8")
    return text.count("\n", 0, text.index(old)) + 1


def added(words: Path, file: str, message: str) -> int:
    """Add a message at the end of a file of words; gives its line."""
    path = words / file
    text = path.read_text(encoding="utf-8")
    path.write_text(text + message + "\n", encoding="utf-8")
    return text.count("\n") + 1


def test_the_catalogue_fits_the_code() -> None:
    assert problems() == []


def test_a_missing_message_of_a_declaration(words: Path) -> None:
    changed(words, SHEET, "input-load = Weight of the load\n    .help", "# gone\n#")
    assert f"{words}/{SHEET}:1: input-load: has no words; the worksheet sling-legs declares it" in problems(
        folder=words
    )


@pytest.mark.parametrize("key", ["option-load_kind-stiff", "result-side_force", "title"])
def test_a_misspelt_message_is_missing_and_used_by_nothing(words: Path, key: str) -> None:
    line = changed(words, SHEET, f"\n{key} =", f"\n{key}x =") + 1
    found = problems(folder=words)
    assert f"{words}/{SHEET}:1: {key}: has no words; the worksheet sling-legs declares it" in found
    assert f"{words}/{SHEET}:{line}: {key}x: is used by nothing" in found


def test_a_message_that_code_asks_for(words: Path) -> None:
    changed(words, SHEET, "\nrefused-too-short-to-reach =", "\nrefused-elephant =")
    found = problems(folder=words)
    assert any(
        line.startswith(
            f"{words}/{SHEET}:1: refused-too-short-to-reach: has no words; calc/lifting/sling_legs.py:"
        )
        for line in found
    )
    assert any("refused-elephant: is used by nothing" in line for line in found)


@pytest.mark.parametrize(
    "file", [SHEET, "shared/chain.ftl", "common.ftl", "page/frame.ftl", "lessons/heat.ftl"]
)
def test_a_message_that_nothing_uses(words: Path, file: str) -> None:
    line = added(words, file, "elephant = An elephant")
    assert problems(folder=words) == [f"{words}/{file}:{line}: elephant: is used by nothing"]


def test_a_placeholder_that_the_code_does_not_give(words: Path) -> None:
    line = changed(words, SHEET, "half the spread alone is { $half }", "half the spread alone is { $halves }")
    found = problems(folder=words)
    assert len(found) == 1
    assert found[0].startswith(
        f"{words}/{SHEET}:{line}: refused-too-short-to-reach: names $halves, which calc/lifting/"
    )
    assert found[0].endswith("does not give")


def test_a_reason_without_words(words: Path) -> None:
    changed(words, SHEET, "reason-squeeze =\n    .caution =", "reason-squeeze =\n    .aside =")
    found = problems(folder=words)
    assert any(
        f"{words}/{SHEET}:" in line and "reason-squeeze: is a reason without words" in line for line in found
    )


def test_an_unknown_function_and_what_cannot_be_read(words: Path) -> None:
    line = changed(
        words,
        SHEET,
        "{ OWN($height) } / { OWN($half) })\n    .result = { PLACES($angle, places: 1) }\nstep-angle-by-leg",
        "{ WON($height) } / { OWN($half) })\n    .result = { PLACES($angle, places: 1) }\nstep-angle-by-leg",
    )
    found = problems(folder=words)
    start = f"{words}/{SHEET}:"
    assert any(one.startswith(start) and "WON is not a function here" in one for one in found), (
        line,
        found[:3],
    )


def test_another_language_has_the_same_messages(words: Path) -> None:
    spanish = Path(shutil.copytree(words, words.parent / "es"))
    changed(spanish, SHEET, "\ninput-legs_counted =", "\ninput-legs_countedx =")
    found = problems(folder=words)
    assert f"{spanish}/{SHEET}:1: input-legs_counted: has no words" in found
    assert any("input-legs_countedx: is used by nothing" in line for line in found)


def test_the_command_prints_and_fails(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(check_words, "problems", lambda: ["a.ftl:1: b: c"])
    assert check_words.main() == 1
    assert capsys.readouterr().out == "a.ftl:1: b: c\n"
    monkeypatch.setattr(check_words, "problems", list)
    assert check_words.main() == 0
