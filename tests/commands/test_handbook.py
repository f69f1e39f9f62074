"""The one command says in one line what a machine lacks."""

import importlib.util
import os
import pathlib
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

ROOT = pathlib.Path(__file__).resolve().parents[2]
SPEC = importlib.util.spec_from_file_location("handbook", ROOT / "build_scripts" / "handbook.py")
assert SPEC is not None
assert SPEC.loader is not None
handbook = importlib.util.module_from_spec(SPEC)
SPEC.loader.exec_module(handbook)


def test_an_old_python_is_named(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 9, 2, "final", 0))
    assert handbook.main(["serve"]) == 2
    error = capsys.readouterr().err
    assert error.startswith("Python 3.11 or later is needed; this is ")
    assert error.count("\n") == 1


@pytest.mark.parametrize(("words", "status"), [([], 0), (["help"], 0), (["fly"], 2)])
def test_help(words: Any, status: int, capsys: pytest.CaptureFixture[str]) -> None:
    assert handbook.main(words) == status
    assert "handbook.py serve" in capsys.readouterr().err


def test_a_failed_step_shows_its_last_words(capsys: pytest.CaptureFixture[str]) -> None:
    command = [sys.executable, "-c", "print('first'); print('the reason'); raise SystemExit(3)"]
    with pytest.raises(handbook.SetupFailed, match="npm parts failed:\n    first\n    the reason"):
        handbook.run("npm parts", command)


@pytest.mark.parametrize(
    ("fault", "status", "words"),
    [
        (handbook.SetupFailed("npm is missing"), 1, "npm is missing\n"),
        (KeyboardInterrupt(), 130, "stopped.\n"),
        (OSError(28, "No space left on device", "/x"), 1, "No space left on device: /x\n"),
    ],
)
def test_trouble_ends_in_one_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], fault: Any, status: int, words: str
) -> None:
    def trouble() -> None:
        raise fault

    monkeypatch.setattr(handbook, "site", trouble)
    assert handbook.main(["site"]) == status
    assert capsys.readouterr().err == words


def test_the_machines_own_node_is_taken_if_it_is_new_enough(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(handbook, "node_version", lambda: handbook.OLDEST_NODE)
    monkeypatch.setattr(handbook, "make_environment", lambda *a: pytest.fail("not needed"))
    handbook.use_node()


def test_without_node_the_wheel_stands_in(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    found = iter([0, 24])
    made = []
    monkeypatch.setattr(handbook, "node_version", lambda: next(found))
    monkeypatch.setattr(
        handbook, "make_environment", lambda lock, place: made.append((lock.name, place.name))
    )
    monkeypatch.setenv("PATH", os.environ["PATH"])
    handbook.use_node()
    assert made == [("requirements-node.lock", ".venv-node")]
    assert str(handbook.NODE_ENVIRONMENT) in os.environ["PATH"].split(os.pathsep)[0]


@pytest.mark.parametrize("lock_is_there", [True, False])
def test_no_node_at_all_says_what_to_install(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, lock_is_there: bool
) -> None:
    monkeypatch.setattr(handbook, "node_version", lambda: 0)
    monkeypatch.setattr(handbook, "make_environment", lambda *a: None)
    monkeypatch.setenv("PATH", os.environ["PATH"])
    if not lock_is_there:
        monkeypatch.setattr(handbook, "NODE_LOCK", tmp_path / "none.lock")
    with pytest.raises(
        handbook.SetupFailed, match=r"npm with Node 20 or later is missing \(Debian: apt install npm\)"
    ):
        handbook.use_node()


def test_what_is_refused_beside_the_rest_ends_the_set_up(monkeypatch: pytest.MonkeyPatch) -> None:
    made = []

    def refuse() -> None:
        raise handbook.SetupFailed("npm parts failed")

    monkeypatch.setattr(handbook, "make_environment", lambda lock: made.append(lock.name))
    monkeypatch.setattr(handbook, "fetch_npm_parts", refuse)
    monkeypatch.setattr(handbook, "bring_programs", lambda: made.append("programs"))
    with pytest.raises(handbook.SetupFailed, match="npm parts failed"):
        handbook.set_up_tests()
    assert sorted(made) == ["programs", "requirements-test.lock", "requirements.lock"]


def test_a_chromium_on_the_path_is_taken_first(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(
        handbook.shutil, "which", lambda name: "/usr/bin/chromium" if name == "chromium" else None
    )
    assert handbook.find_chromium() == "/usr/bin/chromium"


def test_no_chromium_to_be_had_says_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(title: Any, command: Any, environment: Any = None) -> None:
        raise handbook.SetupFailed(title)

    monkeypatch.setattr(handbook.shutil, "which", lambda name: None)
    monkeypatch.setattr(handbook, "run", fail)
    with pytest.raises(
        handbook.SetupFailed, match=r"need a Chromium: install one \(Debian: apt install chromium\)"
    ):
        handbook.find_chromium()


@pytest.mark.parametrize("refused", [True, False])
def test_a_missing_engine_is_brought_or_said_in_one_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], refused: bool
) -> None:
    there = {"chromium", "WebKitWebDriver", "Xvfb", "pdftotext", "apt-get"}
    asked = []

    def run(title: Any, command: Any, environment: Any = None) -> None:
        asked.append(command)
        if refused:
            raise handbook.SetupFailed(f"{title} failed")
        if "install" in command:
            there.add("firefox-esr")

    monkeypatch.setattr(handbook.shutil, "which", lambda name: name if name in there else None)
    monkeypatch.setattr(handbook.os, "geteuid", lambda: 0)
    monkeypatch.setattr(handbook, "run", run)
    handbook.bring_programs()
    said = [line for line in capsys.readouterr().out.splitlines() if "MISSING" in line]
    if refused:
        assert len(said) == 1
        assert "firefox-esr (Debian: apt install firefox-esr)" in said[0]
    else:
        assert said == []
        assert asked[-1][-1] == "firefox-esr"
        asked.clear()
        handbook.bring_programs()
        assert asked == []


def test_a_finished_set_up_is_not_done_again(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    lock = tmp_path / "some.lock"
    lock.write_text("nothing==1\n", encoding="utf-8")
    place = tmp_path / "env"
    done = []

    def run(title: Any, command: Any, environment: Any = None) -> None:
        done.append(title)
        place.mkdir(exist_ok=True)

    monkeypatch.setattr(handbook, "run", run)
    handbook.make_environment(lock, place)
    assert done == ["virtual environment env", "Python packages of some.lock"]
    done.clear()
    handbook.make_environment(lock, place)
    assert done == []
    lock.write_text("nothing==2\n", encoding="utf-8")
    assert not handbook.is_done(place / "installed-some", handbook.digest(lock))


def test_it_imports_nothing_that_must_be_installed_first() -> None:
    """Run with -S -I: no site-packages at all."""
    command = [sys.executable, "-S", "-I", str(ROOT / "build_scripts" / "handbook.py"), "help"]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
