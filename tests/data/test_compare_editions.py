"""The comparison of two editions names what changed, came, went, and what means something else; and nothing besides."""

from __future__ import annotations

import json
import shutil
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest

from build_scripts import compare_editions as comparing
from build_scripts.compare_editions import Change, compare, read_edition

ROOT = comparing.ROOT
KEPT = ("chain-tie-down", "hook-limits", "sources")


@pytest.fixture
def old(tmp_path: Path) -> Path:
    """A small edition: three tables and their words."""
    folder = tmp_path / "old"
    for name in KEPT:
        shutil.copytree(ROOT / "tables" / name, folder / "tables" / name)
    words = folder / "docs" / "words" / "en" / "tables"
    words.mkdir(parents=True)
    for name in KEPT:
        shutil.copyfile(ROOT / "docs" / "words" / "en" / "tables" / f"{name}.ftl", words / f"{name}.ftl")
    (folder / "pyproject.toml").write_text('[project]\nversion = "2026.1"\n', encoding="utf-8")
    return folder


@pytest.fixture
def new(old: Path) -> Path:
    """The same, to be changed."""
    folder = old.with_name("new")
    shutil.copytree(old, folder)
    (folder / "pyproject.toml").write_text('[project]\nversion = "2026.2"\n', encoding="utf-8")
    return folder


def edit(path: Path, change: Callable[[str], str]) -> None:
    text = path.read_text(encoding="utf-8")
    changed = change(text)
    assert changed != text
    path.write_text(changed, encoding="utf-8")


def changes(old: Path, new: Path) -> list[Change]:
    return compare(read_edition(str(old)), read_edition(str(new)))


CLAIMS = Path("tables/chain-tie-down/claims.csv")
G70 = {"grade": "70", "size_in": "3/8", "unit": "lb"}


def row_of_grade_70(text: str) -> str:
    (line,) = [
        one
        for one in text.splitlines(keepends=True)
        if one.startswith("70,") and ",3/8," in one and ",lb," in one
    ]
    return line


def test_nothing_is_said_of_an_edition_that_is_the_same(old: Path, new: Path) -> None:
    assert changes(old, new) == []
    assert changes(ROOT, ROOT / "tables") == []


def test_a_changed_cell_is_named_with_both_figures(old: Path, new: Path) -> None:
    edit(
        new / CLAIMS,
        lambda text: text.replace(row_of_grade_70(text), row_of_grade_70(text).replace("6,600", "6,500")),
    )
    (change,) = changes(old, new)
    assert (change.table, change.kind, change.before, change.after) == (
        "chain-tie-down",
        "changed",
        "6,600 lb",
        "6,500 lb",
    )
    assert G70.items() <= change.row.items()
    assert "6,600 lb -> 6,500 lb" in change.line()


def test_a_row_withdrawn_and_a_row_added_are_named(old: Path, new: Path) -> None:
    edit(new / CLAIMS, lambda text: text.replace(row_of_grade_70(text), ""))
    (gone,) = changes(old, new)
    assert (gone.kind, gone.before, gone.after) == ("withdrawn", "6,600 lb", "")
    (came,) = changes(new, old)
    assert (came.kind, came.before, came.after) == ("added", "", "6,600 lb")
    assert gone.row == came.row
    assert G70.items() <= gone.row.items()


def test_how_a_row_was_read_is_told_apart_from_its_figure(old: Path, new: Path) -> None:
    edit(
        new / CLAIMS,
        lambda text: text.replace(row_of_grade_70(text), row_of_grade_70(text).replace(",copy,", ",text,")),
    )
    (change,) = changes(old, new)
    assert (change.kind, change.what, change.before, change.after) == ("reading", "checked", "copy", "text")


def test_a_changed_meaning_is_named(old: Path, new: Path) -> None:
    edit(
        new / "tables/chain-tie-down/table.toml",
        lambda text: text.replace('sense = "capacity"', 'sense = "demand"'),
    )
    (change,) = changes(old, new)
    assert (change.kind, change.row) == ("meaning", {})
    assert change.what.startswith("quantities.")
    assert (change.before, change.after) == ("capacity", "demand")


def test_the_words_of_a_caution_are_compared(old: Path, new: Path) -> None:
    path = new / "docs/words/en/tables/chain-tie-down.ftl"
    edit(path, lambda text: text.replace("note-", "note-no-longer-", 1))
    found = changes(old, new)
    assert {change.kind for change in found} == {"words"}
    assert [bool(change.before) for change in found].count(True) == 1


def test_a_table_that_came_and_rows_that_share_a_key_are_told(old: Path, new: Path) -> None:
    shutil.rmtree(new / "tables/hook-limits")
    gone = changes(old, new)
    assert {(change.table, change.kind) for change in gone} == {("hook-limits", "withdrawn")}
    assert {change.kind for change in changes(new, old)} == {"added"}
    edit(new / CLAIMS, lambda text: text + row_of_grade_70(text))  # a key that no longer tells rows apart
    doubled = [change for change in changes(old, new) if change.table == "chain-tie-down"]
    assert [change.kind for change in doubled] == ["added"]


def test_a_commit_is_an_edition(old: Path, new: Path) -> None:
    git = ["git", "-c", "user.name=Yard", "-c", "user.email=yard@example.org"]
    for command in (["init", "-q"], ["add", "."], ["commit", "-qm", "an edition"]):
        subprocess.run([*git, *command], cwd=old, check=True, capture_output=True)
    committed = read_edition("HEAD", old)
    assert committed.number == "2026.1"
    assert compare(committed, read_edition(str(new))) == []


def test_what_is_no_edition_is_refused_in_one_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert comparing.main([str(tmp_path), "."]) == 1
    assert "holds a table.toml" in capsys.readouterr().err
    assert comparing.main(["no-such-commit-at-all", "."]) == 1
    error = capsys.readouterr().err
    assert error.startswith("no-such-commit-at-all is neither a folder nor a commit")
    assert len(error.splitlines()) == 1


def test_the_command_writes_the_record_of_the_page(
    old: Path, new: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    edit(
        new / CLAIMS,
        lambda text: text.replace(row_of_grade_70(text), row_of_grade_70(text).replace("6,600", "6,500")),
    )
    edit(new / "tables/hook-limits/claims.csv", lambda text: "\n".join(text.splitlines()[:-1]) + "\n")
    monkeypatch.setattr(comparing, "write", lambda made: WRITE(made, tmp_path / "changes"))
    assert comparing.main([str(old), str(new), "--write"]) == 0
    assert "changed: chain-tie-down" in capsys.readouterr().out
    (made,) = comparing.records(tmp_path / "changes")
    assert (made["edition"], made["since"]) == ("2026.2", "2026.1")
    assert [(one["kind"], one["table"]) for one in made["changes"]] == [
        ("changed", "chain-tie-down"),
        ("withdrawn", "hook-limits"),
    ]
    assert made["changes"][0]["what"].startswith("Grade 70")
    assert made["added"] == {}


WRITE = comparing.write


def test_editions_are_listed_the_newest_first(tmp_path: Path) -> None:
    for number in ("2026.2", "2026.10", "2027.1"):
        WRITE({"edition": number, "since": "", "added": {}, "reading": {}, "changes": []}, tmp_path)
    assert [one["edition"] for one in comparing.records(tmp_path)] == ["2027.1", "2026.10", "2026.2"]


def test_the_page_shows_what_changed(monkeypatch: pytest.MonkeyPatch) -> None:
    import jinja2

    from build_scripts import pages
    from build_scripts.markup import attribute, said

    change = {
        "table": "chain-wear",
        "kind": "changed",
        "what": "Size 3/8",
        "before": "19/64 in",
        "after": "5/16 in",
    }
    gone = {
        "table": "no-such-table",
        "kind": "withdrawn",
        "what": "a part",
        "before": "6,600 lb",
        "after": "",
    }
    one = {
        "edition": "2026.2",
        "since": "2026.1",
        "added": {"chain-wear": 3},
        "reading": {},
        "changes": [change, gone],
    }
    none = {"edition": "2026.1", "since": "2025.9", "added": {}, "reading": {}, "changes": []}
    monkeypatch.setattr(pages, "records", lambda: json.loads(json.dumps([one, none])))
    templates = jinja2.Environment(
        loader=jinja2.FileSystemLoader(ROOT / "build_scripts" / "templates"), undefined=jinja2.StrictUndefined
    )
    templates.globals.update(say=said, attr=attribute)
    html = pages.Book(templates).functions("about/changed-figures.md")["changed_figures"]()
    assert "Edition 2026.2, since 2026.1" in html
    assert 'href="../look-up/chain-wear.html"' in html
    assert html.index("<del>") < html.index("<ins>")
    assert 'href="../look-up/index.html">no-such-table' in html
    assert "3 in" in html
    assert "No figure changed." in html
