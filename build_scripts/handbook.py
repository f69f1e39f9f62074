#!/usr/bin/env python3
"""The one command of this project: serve, build, test or measure the handbook.

    python3 build_scripts/handbook.py serve [--port N]   build the site and serve it on this machine
    python3 build_scripts/handbook.py site               build the site into site/
    python3 build_scripts/handbook.py test [PYTEST ARGS] set up what the tests need and run every check
    python3 build_scripts/handbook.py daily              style, types and the quick tests: under a minute
    python3 build_scripts/handbook.py bench              measure speed and size beside a baseline
    python3 build_scripts/handbook.py host-check ADDRESS see whether a web host sends the handbook as it should

Needs Python 3.11 or later and nothing else by hand: it makes its own virtual environment in .venv from a hash-locked
file and fetches the npm parts from a committed lock. Uses the standard library alone, because it runs before anything
is installed.
"""

from __future__ import annotations

import hashlib
import os
import shutil
import subprocess
import sys
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
OLDEST_PYTHON = (3, 11)
OLDEST_NODE = 20
ENVIRONMENT = ROOT / ".venv"
NODE_ENVIRONMENT = ROOT / ".venv-node"
SITE_LOCK = ROOT / "requirements.lock"
TEST_LOCK = ROOT / "requirements-test.lock"
NODE_LOCK = ROOT / "requirements-node.lock"
NPM_LOCK = ROOT / "package-lock.json"


class SetupFailed(Exception):
    """Something this machine lacks; the message says what, and what would help."""


def say(line: str) -> None:
    """Print one line of progress at once."""
    print(line, flush=True)


def run(title: str, command: list[str], environment: dict[str, str] | None = None) -> None:
    """Run a step of the set-up in silence; show its last lines only if it fails."""
    say(f"  {title} ...")
    start = time.monotonic()
    done = subprocess.run(
        command,
        cwd=ROOT,
        env=environment,
        text=True,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        check=False,
    )
    if done.returncode != 0:
        tail = "\n    ".join(done.stdout.strip().splitlines()[-15:])
        raise SetupFailed(f"{title} failed:\n    {tail}")
    say(f"  {title}: {time.monotonic() - start:.0f} s")


def digest(*paths: Path) -> str:
    """A hash of some files and of this Python's version: what a finished set-up was made from."""
    whole = hashlib.sha256(sys.version.encode())
    for path in paths:
        whole.update(path.read_bytes())
    return whole.hexdigest()


def is_done(stamp: Path, made_from: str) -> bool:
    """Whether a set-up was finished from these very files."""
    return stamp.is_file() and stamp.read_text(encoding="utf-8") == made_from


def in_environment(program: str, environment: Path = ENVIRONMENT) -> str:
    """The path of a program inside a virtual environment."""
    folder = "Scripts" if os.name == "nt" else "bin"
    return str(environment / folder / program)


def make_environment(lock: Path, environment: Path = ENVIRONMENT) -> None:
    """Make the virtual environment and install exactly what the lock file names, each with its hash."""
    stamp = environment / f"installed-{lock.stem}"
    made_from = digest(lock)
    if is_done(stamp, made_from):
        return
    if not Path(in_environment("python", environment)).exists():
        shutil.rmtree(environment, ignore_errors=True)
        run(f"virtual environment {environment.name}", [sys.executable, "-m", "venv", str(environment)])
    pip = [
        in_environment("python", environment),
        "-m",
        "pip",
        "--disable-pip-version-check",
        "install",
        "--quiet",
    ]
    run(f"Python packages of {lock.name}", [*pip, "--require-hashes", "--requirement", str(lock)])
    stamp.write_text(made_from, encoding="utf-8")


def node_version() -> int:
    """The major version of the Node on the path; 0 if there is none or no npm with it."""
    if not (shutil.which("node") and shutil.which("npm")):
        return 0
    done = subprocess.run(["node", "--version"], capture_output=True, text=True, check=False)
    number = done.stdout.strip().lstrip("v").split(".")[0]
    return int(number) if number.isdigit() else 0


def use_node() -> None:
    """See to it that `node` and `npm` of a fit version are on the path: the machine's own, else those of a wheel."""
    if node_version() >= OLDEST_NODE:
        return
    if not NODE_LOCK.is_file():
        raise SetupFailed(f"npm with Node {OLDEST_NODE} or later is missing (Debian: apt install npm)")
    make_environment(NODE_LOCK, NODE_ENVIRONMENT)
    os.environ["PATH"] = os.pathsep.join(
        [str(Path(in_environment("node", NODE_ENVIRONMENT)).parent), os.environ["PATH"]]
    )
    if node_version() < OLDEST_NODE:
        raise SetupFailed(f"npm with Node {OLDEST_NODE} or later is missing (Debian: apt install npm)")


def fetch_npm_parts() -> None:
    """Fetch the npm parts exactly as the lock names them."""
    stamp = ROOT / "node_modules" / ".fetched"
    made_from = digest(NPM_LOCK)
    use_node()
    if is_done(stamp, made_from):
        return
    command = ["npm", "ci", "--no-audit", "--no-fund", "--ignore-scripts"]
    run("npm parts", command, {**os.environ, "PUPPETEER_SKIP_DOWNLOAD": "1"})
    stamp.write_text(made_from, encoding="utf-8")


def module(*arguments: str, environment: dict[str, str] | None = None) -> int:
    """Run a module of the project in its virtual environment, with its output shown."""
    return subprocess.run(
        [in_environment("python"), "-m", *arguments], cwd=ROOT, env=environment, check=False
    ).returncode


def site() -> int:
    """Build the site."""
    make_environment(SITE_LOCK)
    fetch_npm_parts()
    return module("build_scripts.build")


def serve(arguments: list[str]) -> int:
    """Build the site and serve it."""
    return site() or module("build_scripts.serve", *arguments)


DEBIAN_PACKAGES = {
    "chromium": "chromium",
    "firefox-esr": "firefox-esr",
    "WebKitWebDriver": "webkit2gtk-driver",
    "Xvfb": "xvfb",
    "pdftotext": "poppler-utils",
}
"""The programs that the tests drive, and the package of Debian that brings each."""
OTHER_NAMES = {
    "chromium": ("chromium-browser", "google-chrome"),
    "firefox-esr": ("firefox",),
}


def find(program: str) -> str:
    """The path of a program of the tests under any of its names, or nothing."""
    found = (shutil.which(name) for name in (program, *OTHER_NAMES.get(program, ())))
    return next((path for path in found if path), "")


def bring_programs() -> None:
    """Install what the tests drive where this machine lets us; say in one line what is still missing."""
    lacking = [program for program in DEBIAN_PACKAGES if not find(program)]
    if lacking and shutil.which("apt-get") and hasattr(os, "geteuid") and os.geteuid() == 0:
        quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
        packages = [DEBIAN_PACKAGES[program] for program in lacking]
        install = ["apt-get", "install", "--yes", "--no-install-recommends", *packages]
        try:
            run("Debian's package lists", ["apt-get", "update", "--quiet"], quiet)
            run(f"Debian's {', '.join(packages)}", install, quiet)
        except SetupFailed as refused:
            say(f"  {refused}")
        lacking = [program for program in lacking if not find(program)]
    if missing := [program for program in lacking if program != "chromium"]:
        wanted = " ".join(DEBIAN_PACKAGES[program] for program in missing)
        say(
            f"  MISSING, so what needs them is not tested here: {', '.join(missing)} (Debian: apt install {wanted})"
        )


def find_chromium() -> str:
    """A Chromium to test in: the one on the path, else Playwright's own download (then the answer is empty)."""
    if found := find("chromium"):
        return found
    try:
        run("Playwright's Chromium", [in_environment("python"), "-m", "playwright", "install", "chromium"])
    except SetupFailed as failed:
        raise SetupFailed("the tests need a Chromium: install one (Debian: apt install chromium)") from failed
    return ""


def set_up_tests() -> dict[str, str]:
    """Make ready what the tests need, side by side what has nothing to do with each other; returns their environment."""
    with ThreadPoolExecutor() as beside:
        others = [beside.submit(fetch_npm_parts), beside.submit(bring_programs)]
        make_environment(SITE_LOCK)
        make_environment(TEST_LOCK)
    for one in others:
        one.result()  # what refused there is refused here
    environment = dict(os.environ)
    if chromium := find_chromium():
        environment["LINKWRIGHT_CHROMIUM"] = chromium
    return environment


def checks() -> list[tuple[str, list[str]]]:
    """The static checks, each with its command."""
    python = in_environment("python")
    tsc = ["node", str(ROOT / "node_modules" / "typescript" / "bin" / "tsc"), "--project"]
    return [
        ("code style", [python, "-m", "ruff", "check", "."]),
        ("code format", [python, "-m", "ruff", "format", "--check", "."]),
        ("types of Python", [python, "-m", "mypy"]),
        ("types of JavaScript", [*tsc, "tsconfig.json"]),
        ("types of the offline worker", [*tsc, "build_scripts/offline/tsconfig.json"]),
    ]


def workers() -> int:
    """How many tests run side by side: one more than there are cores, because a test of a page often waits for it."""
    return (os.cpu_count() or 1) + 1


def test(arguments: list[str]) -> int:
    """Run every check: style and types beside the build, then all tests side by side. With arguments, pass them to pytest
    and run only that.
    """
    environment = set_up_tests()
    building = subprocess.Popen([in_environment("python"), "-m", "build_scripts.build"], cwd=ROOT)
    try:
        if not arguments:
            for title, command in checks():
                run(title, command, environment)
    except SetupFailed:
        building.terminate()
        raise
    finally:
        built = building.wait()
    if built != 0:
        return 1
    environment["LINKWRIGHT_SITE"] = str(ROOT / "site")
    whole = [
        *("-q", "--numprocesses", str(workers()), "--dist", "loadscope", "--no-loadscope-reorder"),
        # A page that was waited for in vain on a busy machine is waited for once more, and it is said which; a wrong answer never.
        *("--reruns", "1", "--only-rerun", "TimeoutError", "-rR"),
        *("--cov", "--cov-report=term:skip-covered", "--cov-fail-under=100", "--durations=25"),
    ]
    return module("pytest", *(arguments or whole), environment=environment)


QUICK = ("tests/unit", "tests/published", "tests/data")
"""The tests that need no browser, no finished site and no second library."""


def daily() -> int:
    """Style, types of Python and the quick tests."""
    make_environment(SITE_LOCK)
    make_environment(TEST_LOCK)
    for title, command in checks()[:3]:
        run(title, command)
    return module("pytest", "-q", *QUICK)


def bench(arguments: list[str]) -> int:
    """Measure; prints each figure beside its budget."""
    environment = set_up_tests()
    return module("build_scripts.build") or module("build_scripts.bench", *arguments, environment=environment)


def host_check(arguments: list[str]) -> int:
    """Look at a host; needs nothing installed."""
    command = [sys.executable, "-m", "build_scripts.host_check", *arguments]
    return subprocess.run(command, cwd=ROOT, check=False).returncode


def main(arguments: list[str]) -> int:
    """Do what was asked; every failure ends in one readable message."""
    if sys.version_info < OLDEST_PYTHON:
        wanted = ".".join(map(str, OLDEST_PYTHON))
        sys.stderr.write(f"Python {wanted} or later is needed; this is {sys.version.split()[0]}\n")
        return 2
    command, *rest = arguments or ["help"]
    try:
        if command == "serve":
            return serve(rest)
        if command == "site":
            return site()
        if command == "test":
            return test(rest)
        if command == "daily":
            return daily()
        if command == "bench":
            return bench(rest)
        if command == "host-check":
            return host_check(rest)
    except SetupFailed as failed:
        sys.stderr.write(f"{failed}\n")
        return 1
    except KeyboardInterrupt:
        sys.stderr.write("stopped.\n")
        return 130
    except OSError as trouble:
        sys.stderr.write(f"{trouble.strerror or trouble}: {trouble.filename or ''}\n")
        return 1
    sys.stderr.write(__doc__ or "")
    return 0 if command in ("help", "--help", "-h") else 2


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
