"""A build that is refused, stopped or out of disk leaves the last finished site as it was."""

import errno
import json
import shutil
from pathlib import Path
from typing import Any

import pytest

from build_scripts import build as building
from build_scripts import check_tables
from build_scripts.runtime import PAGE_MODULES, gather, inputs_hash
from calc.tables import table_names


@pytest.fixture
def checkout(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Any:
    """A checkout with a finished site, in which no step does anything yet."""
    shutil.copytree(building.ROOT / "tables", tmp_path / "tables")
    (tmp_path / "site").mkdir()
    (tmp_path / "site" / "index.html").write_text("the last edition", encoding="utf-8")
    for name, path in (("ROOT", tmp_path), ("WORK", tmp_path / ".build"), ("SITE", tmp_path / "site")):
        monkeypatch.setattr(building, name, path)
    monkeypatch.setattr("build_scripts.check_words.problems", lambda root: [])
    monkeypatch.setattr("build_scripts.pages.write_pages", lambda out, root: out.mkdir(parents=True))
    monkeypatch.setattr("build_scripts.pages.finish_site", lambda site: None)
    monkeypatch.setattr("build_scripts.pages.made_by", lambda root: {})
    monkeypatch.setattr("build_scripts.paper.build_paper", lambda root, site: None)
    monkeypatch.setattr("build_scripts.runtime.build_runtime", lambda root, out: "hash")
    monkeypatch.setattr("build_scripts.offline.build_offline", lambda root, site: {})

    def lay_out(pages: Any, target: Any) -> None:
        target.mkdir(parents=True)
        (target / "index.html").write_text("a new edition", encoding="utf-8")

    monkeypatch.setattr(building, "lay_out", lay_out)
    return tmp_path


def site_says(checkout: Any) -> Any:
    return (checkout / "site" / "index.html").read_text(encoding="utf-8")


def test_a_whole_build_is_put_in_place(checkout: Any, capsys: pytest.CaptureFixture[str]) -> None:
    assert building.main() == 0
    assert site_says(checkout) == "a new edition"
    assert not (checkout / ".build" / "site.next").exists()
    assert not (checkout / ".build" / "site.old").exists()
    assert "site/ is ready" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("fault", "status", "words"),
    [
        (KeyboardInterrupt(), 130, "stopped. site/ is as it was."),
        (
            OSError(errno.ENOSPC, "No space left on device", "page.html"),
            1,
            "No space left on device (page.html). site/",
        ),
        (OSError("odd"), 1, "not built: odd. site/ is as it was."),
        (building.BuildRefused("link"), 1, "not built: link\nsite/ is as it was."),
    ],
)
def test_a_build_that_stops_leaves_the_site_alone(
    checkout: Any,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    fault: Any,
    status: int,
    words: str,
) -> None:
    def stop(pages: Any, target: Any) -> None:
        target.mkdir(parents=True)
        raise fault

    monkeypatch.setattr(building, "lay_out", stop)
    assert building.main() == status
    assert site_says(checkout) == "the last edition"
    error = capsys.readouterr().err
    assert words in error
    assert "Traceback" not in error


def test_a_damaged_table_is_refused_with_file_row_and_column(
    checkout: Any, capsys: pytest.CaptureFixture[str]
) -> None:
    chain = checkout / "tables" / "chain-tie-down" / "claims.csv"
    lines = chain.read_text(encoding="utf-8").splitlines()
    lines[3] = lines[3].replace('"2,600"', '"2,600 lb"')
    chain.write_text("\n".join(lines) + "\n", encoding="utf-8")
    assert check_tables.problems(checkout / "tables")
    assert building.main() == 1
    error = capsys.readouterr().err
    assert "chain-tie-down/claims.csv" in error
    assert "value" in error
    assert "4" in error
    assert site_says(checkout) == "the last edition"


def test_words_that_do_not_fit_the_code_are_refused(
    checkout: Any, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(
        "build_scripts.check_words.problems", lambda root: ["some.ftl:3: load: is used by nothing"]
    )
    assert building.main() == 1
    assert "some.ftl:3: load: is used by nothing" in capsys.readouterr().err
    assert site_says(checkout) == "the last edition"


def test_of_the_tables_the_page_gets_rows_and_index_alone(tmp_path: Path) -> None:
    """Laws, declarations, second copies, recalls and the words of tables stay in the checkout."""
    gather(building.ROOT, tmp_path / "sources")
    packed = tmp_path / "sources" / "tables"
    assert {path.name for path in packed.rglob("*") if path.is_file()} == {"claims.csv", "index.json"}
    assert len(list(packed.glob("*/claims.csv"))) == len(table_names())
    words = json.loads((tmp_path / "sources/calc/words/compiled/en.json").read_text(encoding="utf-8"))
    assert not [scope for scope in words["scopes"] if scope.startswith("tables/")]


def test_what_the_page_does_not_get_does_not_change_its_runtime(tmp_path: Path) -> None:
    """The name of a runtime changes with a row of a table, not with a law or a second copy of it."""
    root = tmp_path / "root"
    kept = ("calc", "tables", "docs/words", "build_scripts/runtime", "build_scripts/scripts")
    for name in kept:
        shutil.copytree(building.ROOT / name, root / name)
    in_the_page = [f"build_scripts/{name}" for name in PAGE_MODULES]
    for name in ("package-lock.json", "pyproject.toml", *in_the_page):
        shutil.copy(building.ROOT / name, root / name)
    before = inputs_hash(root)
    for name in ("laws.py", "second.csv", "table.toml"):
        with (root / "tables" / "chain-wear" / name).open("a", encoding="utf-8") as file:
            file.write("\n# more\n")
    assert inputs_hash(root) == before
    with (root / "tables" / "chain-wear" / "claims.csv").open("a", encoding="utf-8") as file:
        file.write("\n")
    assert inputs_hash(root) != before


def test_warnings_of_the_site_engine_stop_the_build_and_are_shown(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    pages = tmp_path / "pages"
    pages.mkdir()
    (pages / "index.md").write_text("# Start\n\n[lost](nowhere.md)\n", encoding="utf-8")
    with pytest.raises(building.BuildRefused, match=r"nowhere\.md"):
        building.lay_out(pages, tmp_path / "site")


def test_words_alone_are_built_with_the_runtime_kept(checkout: Any) -> None:
    for folder in ("runtime", "icons", "paper"):
        (checkout / "site" / folder).mkdir()
    for name in ("offline-worker.js", "manifest.webmanifest"):
        (checkout / "site" / name).write_text("kept", encoding="utf-8")
    (checkout / "site" / "runtime" / "linkwright.js").write_text("kept", encoding="utf-8")
    (checkout / ".build").mkdir()
    building.build_words()
    assert site_says(checkout) == "a new edition"
    assert (checkout / "site" / "runtime" / "linkwright.js").read_text(encoding="utf-8") == "kept"
