"""The installable package works away from the checkout: its tables and its words are inside."""

from __future__ import annotations

import os
import subprocess
import sys
import zipfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def test_a_wheel_holds_what_calc_reads_and_answers(tmp_path: Path) -> None:
    made = tmp_path / "made"
    build = [
        sys.executable,
        "-m",
        "pip",
        "wheel",
        str(copied(tmp_path)),
        "--no-deps",
        "--no-build-isolation",
        "-q",
        "-w",
        str(made),
    ]
    done = subprocess.run(build, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr[-2000:]
    (wheel,) = made.glob("*.whl")
    inside = tmp_path / "inside"
    with zipfile.ZipFile(wheel) as packed:
        packed.extractall(inside)
    asked = [sys.executable, "-m", "calc", "run", "sling-legs", "load=1000 lb", "legs=2", "angle=30"]
    environment = {**os.environ, "PYTHONPATH": str(inside)}
    answer = subprocess.run(asked, capture_output=True, text=True, check=False, cwd=inside, env=environment)
    assert answer.returncode == 0, answer.stderr
    assert "1,000 lb" in answer.stdout
    row = subprocess.run(
        [sys.executable, "-m", "calc", "table", "chain-tie-down", "--where", "grade=70", "--csv"],
        capture_output=True, text=True, check=False, cwd=inside, env=environment,
    )  # fmt: skip
    assert "3,150" in row.stdout


def copied(tmp_path: Path) -> Path:
    """What the package is made from, so that the checkout is left as it is."""
    source = tmp_path / "source"
    source.mkdir()
    for name in ("calc", "tables", "docs", "pyproject.toml", "setup.py", "README.md", "LICENSE"):
        (source / name).symlink_to(ROOT / name)
    return source
