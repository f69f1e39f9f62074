"""Builds the browser runtime: Python in WebAssembly with calc and the tables in it, and the page's one script.

What it makes in `OUT` (the site's `runtime/` folder):

    linkwright.js        the page's script: PAGE_SCRIPTS in one closed scope, with their words
    <hash>/              everything that belongs to one edition of calc, its view, tables and Pyodide; never changes under a name
      python-worker.mjs  the worker of a served page
      python-engine.mjs  what it runs (Pyodide's loader bundled in); the page runs the same where a worker is refused
      pyodide.asm.wasm   the interpreter, without what no page uses
      library.zip        trimmed, compiled standard library, calc, answer_view and the tables; beside the image only if wanted
      snapshot.bin       memory image with calc warm (gzip)
      python_stdlib.zip, pyodide-lock.json, linkwright-*.whl   the ordinary road, when the others fail
      disk/              the same parts as classic scripts, for the folder opened from disk

Finished runtimes are kept in `.build/runtime/<hash>` and only copied when nothing they are made from has changed.
"""

from __future__ import annotations

import functools
import gzip
import hashlib
import json
import os
import shutil
import subprocess
import tomllib
from collections.abc import Iterable
from pathlib import Path

from build_scripts.runtime.ordinary import write_ordinary_road
from build_scripts.seal import integrity
from build_scripts.wording import BUILT, language, live_words
from calc.words.compiling import write_compiled

PAGE_SCRIPTS = (
    *("words.js", "storage.js", "python.js", "units.js"),
    *(
        "sheet-form.js",
        "sheet-rows.js",
        "sheet-files.js",
        "sheet-address.js",
        "sheet-errors.js",
        "sheet-asking.js",
        "sheet-keys.js",
    ),
    *("answer-view.js", "sheet.js", "edition.js", "kit-bridge.js"),
)
"""In the order in which they run."""
PAGE_MODULES = ("__init__.py", "answer_view.py", "code_view.py", "job_view.py", "kit_view.py", "edition.py")
"""What of build_scripts runs in the page, beside calc."""
ENGINE_SCRIPTS = (
    *("memory-image.mjs", "python-parts.js", "python-engine.js", "python-serving.js"),
    *("python-worker.js", "python-page.js", "python-disk.js"),
)
PAGE_SCRIPT = "linkwright.js"
SUMS = "sums.json"
"""The file of a finished runtime with the checksums of its parts; it goes into the page's script."""
KEPT_RUNTIMES = 2
"""How many finished runtimes stay in the cache."""


class RuntimeBuildFailed(RuntimeError):
    """The runtime could not be built; the message says which step failed and what it printed."""


def build_runtime(root: Path, out_dir: Path) -> str:
    """Build the runtime of the project at `root` into `out_dir`; gives back the hash that names it."""
    name = inputs_hash(root)
    cache = root / ".build" / "runtime"
    finished = cache / name
    if not (finished / "complete").exists():
        _make(root, finished)
    _forget_old(cache, finished)
    if out_dir.exists():
        shutil.rmtree(out_dir)
    target = out_dir / name
    shutil.copytree(finished, target, copy_function=_link, ignore=shutil.ignore_patterns("complete", SUMS))
    script = out_dir / PAGE_SCRIPT
    sums = json.loads((finished / SUMS).read_text(encoding="utf-8"))
    script.write_text(page_script(root, name, sums), encoding="utf-8")
    _node(root, root / "build_scripts" / "minify.mjs", script)
    return name


NOT_IN_THE_PAGE = ("__main__.py", "compiling.py", "notes.py")
"""Modules of calc that only a checkout or a command line uses."""
WORDS_OF_PAGES = ("lessons/", "tables/", "paper/", *BUILT)
"""How the scopes begin that are on the pages when they are built: nothing that runs in the page says them."""


def gather(root: Path, sources: Path, name: str = "") -> None:
    """Lay what the page runs into one folder: calc, what turns its answers into the page's trees, the tables, the words,
    compiled, and the runtime's own name, which each answer bears.
    """
    shutil.rmtree(sources, ignore_errors=True)
    shutil.copytree(
        root / "calc", sources / "calc", ignore=shutil.ignore_patterns("__pycache__", *NOT_IN_THE_PAGE)
    )
    own = [root / "build_scripts" / name for name in PAGE_MODULES]
    for path in (*own, *_table_files(root)):
        target = sources / path.relative_to(root)
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(path, target)
    stamp = f'"""The runtime that this is a part of."""\n\nRUNTIME = "{name}"\n'
    (sources / "build_scripts" / "edition.py").write_text(stamp, encoding="utf-8")
    for one in {"en", language()}:
        packed = sources / "calc" / "words" / "compiled" / f"{one}.json"
        write_compiled(root / "docs" / "words", one, packed, WORDS_OF_PAGES)


def inputs_hash(root: Path) -> str:
    """A hash of everything the runtime is made from."""
    digest = hashlib.sha256(language().encode())
    scripts = root / "build_scripts" / "scripts"
    sources = [
        *_files(root / "calc", (".py",)),
        *_table_files(root),
        *(
            path
            for path in _files(root / "docs" / "words", (".ftl",))
            if not path.relative_to(root / "docs" / "words" / "en").as_posix().startswith(WORDS_OF_PAGES)
        ),
        *_files(root / "build_scripts" / "runtime", (".py", ".mjs")),
        *(root / "build_scripts" / name for name in PAGE_MODULES),
        *(scripts / script for script in ENGINE_SCRIPTS),
        root / "package-lock.json",
        root / "pyproject.toml",
    ]
    for path in sources:
        digest.update(path.relative_to(root).as_posix().encode())
        digest.update(hashlib.sha256(path.read_bytes()).digest())
    return digest.hexdigest()[:16]


@functools.cache
def code_hash(root: Path) -> str:
    """Eight letters that name all tables and code: two papers that bear the same were made by the same book.

    Pages and scripts of one build carry the same one, so that those of two builds know each other apart.
    """
    digest = hashlib.sha256(inputs_hash(root).encode())
    sources = [
        *_files(root / "build_scripts", (".py", ".js", ".mjs", ".html", ".css", ".md", ".typ")),
        *_files(root / "docs" / "words", (".ftl",)),
        *_files(root / "tables", (".toml",)),
    ]
    for path in sources:
        digest.update(path.relative_to(root).as_posix().encode())
        digest.update(hashlib.sha256(path.read_bytes()).digest())
    return digest.hexdigest()[:8]


def _sums(folder: Path) -> dict[str, str]:
    """The checksum of each part, of its bytes as they are unpacked."""
    plain = (
        "pyodide.asm.wasm",
        "library.zip",
        "python_stdlib.zip",
        "pyodide-lock.json",
        "python-worker.mjs",
        "python-engine.mjs",
    )
    sums = {name: integrity((folder / name).read_bytes()) for name in plain}
    sums["snapshot.bin"] = integrity(gzip.decompress((folder / "snapshot.bin").read_bytes()))
    function = (folder / "disk" / "engine.js").read_text(encoding="utf-8")
    function = function.removeprefix("globalThis.linkwrightMakeEngine=").removesuffix(";\n")
    sums["disk/engine.js"] = integrity(function.encode())
    return sums


def page_script(root: Path, runtime: str, sums: dict[str, str]) -> str:
    """The page's script: its parts in one closed scope, with the runtime's name, its checksums and their words before them."""
    scripts = root / "build_scripts" / "scripts"
    build = json.dumps(
        {
            "edition": edition(root),
            "code": code_hash(root),
            "runtime": runtime,
            "sums": sums,
            "words": live_words(),
        }
    )
    parts = "\n".join((scripts / name).read_text(encoding="utf-8") for name in PAGE_SCRIPTS)
    return f'(() => {{\n"use strict";\nconst linkwrightBuild = {build};\n{parts}}})();\n'


def edition(root: Path) -> str:
    """The edition as the project declares it."""
    with (root / "pyproject.toml").open("rb") as file:
        return str(tomllib.load(file)["project"]["version"])


def _table_files(root: Path) -> list[Path]:
    """What calc reads of the tables: their rows, and the index. Laws, copies and declarations stay here."""
    return [root / "tables" / "index.json", *sorted((root / "tables").glob("*/claims.csv"))]


def _files(folder: Path, suffixes: tuple[str, ...]) -> Iterable[Path]:
    return sorted(
        path for path in folder.rglob("*") if path.suffix in suffixes and "__pycache__" not in path.parts
    )


def _make(root: Path, finished: Path) -> None:
    """Make a runtime beside its place and move it in when it is whole."""
    working = finished.with_name(finished.name + ".part")
    shutil.rmtree(working, ignore_errors=True)
    shutil.rmtree(finished, ignore_errors=True)
    working.mkdir(parents=True)
    cut = cut_pyodide(root)
    for name in ("pyodide.asm.wasm", "python_stdlib.zip"):
        shutil.copyfile(cut / name, working / name)
    scripts = root / "build_scripts"
    sources = finished.with_name(finished.name + ".sources")
    gather(root, sources, finished.name)
    _node(root, scripts / "runtime" / "make_runtime.mjs", root, working, sources, cut)
    _node(root, scripts / "runtime" / "bundle.mjs", scripts / "scripts", working, cut)
    write_ordinary_road(root, working, edition(root), sources)
    shutil.rmtree(sources)
    (working / SUMS).write_text(json.dumps(_sums(working)), encoding="utf-8")
    (working / "complete").touch()
    working.rename(finished)


def cut_pyodide(root: Path) -> Path:
    """The package of Pyodide without what no page uses; made once for a release and a way of cutting."""
    cutting = root / "build_scripts" / "runtime" / "cut_runtime.mjs"
    digest = hashlib.sha256(cutting.read_bytes() + (root / "package-lock.json").read_bytes())
    cache = root / ".build" / "pyodide"
    finished = cache / digest.hexdigest()[:16]
    if not finished.exists():
        shutil.rmtree(cache, ignore_errors=True)
        working = finished.with_name(finished.name + ".part")
        modules = root / "node_modules"
        _node(root, cutting, modules / "pyodide", modules / "binaryen", working)
        working.rename(finished)
    return finished


def _node(root: Path, script: Path, *arguments: Path) -> None:
    command = ["node", str(script), *map(str, arguments)]
    try:
        done = subprocess.run(command, cwd=root, capture_output=True, text=True, check=False)
    except FileNotFoundError as missing:
        raise RuntimeBuildFailed("node is not installed (Debian: apt install npm)") from missing
    if done.returncode != 0:
        raise RuntimeBuildFailed(f"{script.name} failed:\n{done.stderr.strip()[-2000:]}")


def _link(source: str, target: str) -> str:
    """A hard link where the file system allows it, else a copy: the parts are large and never written to."""
    try:
        os.link(source, target)
    except OSError:
        shutil.copy2(source, target)
    return target


def _forget_old(cache: Path, newest: Path) -> None:
    newest.touch()
    kept = sorted((path for path in cache.iterdir() if path.is_dir()), key=lambda path: path.stat().st_mtime)
    for old in kept[:-KEPT_RUNTIMES]:
        shutil.rmtree(old, ignore_errors=True)
