"""No built script holds syntax that the oldest supported browsers cannot read."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path

from build_scripts.browsers import oldest

HERE = Path(__file__).parent


def newer(targets: list[str], files: list[Path]) -> list[str]:
    """Those of the files with syntax that is newer than the targets, as esbuild knows them."""
    command = ["node", str(HERE / "newer_syntax.mjs"), ",".join(targets), *map(str, files)]
    done = subprocess.run(
        command, cwd=HERE.parents[1], check=True, capture_output=True, text=True, timeout=300
    )
    return done.stdout.split()


def targets() -> list[str]:
    """The oldest browsers, as esbuild names them."""
    return [("chrome" if engine == "chromium" else engine) + version for engine, version in oldest().items()]


def test_scripts_are_built_for_the_oldest_browsers(site: Path) -> None:
    early = site / "scripts" / "early.js"
    own = [
        path
        for path in (site / "scripts").glob("*.js")
        if path not in (early, site / "scripts" / "ratings.js")
    ]
    runtime = [*(site / "runtime").glob("*.js"), *(site / "runtime").glob("*/*.mjs")]
    assert len(own) >= 2
    assert len(runtime) >= 3
    assert newer(targets(), [*own, *runtime, site / "offline-worker.js"]) == []


def test_the_script_that_tells_an_old_browser_runs_in_it(site: Path) -> None:
    assert newer(["es2015"], [site / "scripts" / "early.js"]) == []


def test_newer_syntax_is_noticed(tmp_path: Path) -> None:
    script = tmp_path / "new.js"
    for line in ("const x = /[\\p{L}--[a-z]]/v;", "class A { accessor x = 1 }", "await using x = y;"):
        script.write_text(line)
        assert newer(targets(), [script]) == [str(script)], line


def test_the_build_and_the_tests_read_the_same_list() -> None:
    script = "import {oldestBrowsers} from './build_scripts/browsers.mjs'; console.log(JSON.stringify(oldestBrowsers()))"
    done = subprocess.run(
        ["node", "--input-type=module", "-e", script],
        cwd=HERE.parents[1],
        check=True,
        capture_output=True,
        text=True,
    )
    assert json.loads(done.stdout) == targets()
