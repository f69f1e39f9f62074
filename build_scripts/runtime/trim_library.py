"""Runs INSIDE Pyodide: packs the compiled library that the browser loads.

What goes in: calc and what stands beside it (every module), the tables, and the part of the standard library that they and Pyodide itself use.
"Use" is found by doing: import every module of them, run every import statement found anywhere in its source, answer
every worksheet once, then look at what is loaded. Everything is compiled here because the bytecode's magic number must
match the interpreter that will read it.

Paths: /src/calc, /src/build_scripts and /src/tables hold the sources; the stock library is read from the interpreter's own zip.
"""

from __future__ import annotations

import ast
import importlib
import importlib.util
import io
import json
import marshal
import sys
import zipfile
from pathlib import Path

SOURCES = Path("/src")
PACKAGES = ("calc", "build_scripts")
STOCK = zipfile.ZipFile(next(path for path in sys.path if path.endswith(".zip")))
OPTIMIZE = 2  # no asserts, no docstrings: calc never validates with assert

ALWAYS = (
    # Reached by name at run time (a codec, an error report), so that no import statement shows them.
    "encodings.ascii", "encodings.latin_1", "encodings.idna", "encodings.utf_8", "encodings.raw_unicode_escape",
    "encodings.unicode_escape", "linecache", "tokenize", "traceback", "textwrap", "warnings", "stringprep", "random",
)  # fmt: skip


def own_modules() -> list[str]:
    """Every module of the packages but a command line."""
    names = []
    for path in own_files():
        parts = list(path.relative_to(SOURCES).with_suffix("").parts)
        if parts[-1] == "__main__":
            continue
        names.append(".".join(parts[:-1] if parts[-1] == "__init__" else parts))
    return names


def own_files() -> list[Path]:
    """The source files of the packages."""
    return sorted(path for package in PACKAGES for path in SOURCES.glob(f"{package}/**/*.py"))


def written_imports(name: str) -> set[str]:
    """Modules named by any import statement in the source of a module of ours, at whatever depth."""
    base = SOURCES.joinpath(*name.split("."))
    path = base / "__init__.py" if base.is_dir() else base.with_suffix(".py")
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found.update(alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module and node.level == 0:
            found.add(node.module)
    return found


def answer_examples() -> list[str]:
    """Answer every worksheet's own example, so that imports made late are made now."""
    from build_scripts.answer_view import view_json
    from calc.answering import declared

    failed = []
    for name, worksheet in declared().items():
        for units in ("us", "si"):
            request = json.dumps({"worksheet": name, "inputs": example_inputs(worksheet), "units": units})
            response = json.loads(view_json(request))
            if not response["ok"]:
                failed.append(f"{name}: {response['errors']}")
    return failed


def example_inputs(worksheet: object) -> object:
    """The worksheet's example as the form holds it."""
    return getattr(worksheet, "example", {})


def stock_source(name: str) -> tuple[str, str] | None:
    """(path inside the zip, source) of a standard library module, or None when it is built in or frozen."""
    stem = name.replace(".", "/")
    for path in (f"{stem}.py", f"{stem}/__init__.py"):
        try:
            return path, STOCK.read(path).decode("utf-8")
        except KeyError:
            continue
    return None


def compiled(path: str, source: str) -> bytes:
    """A .pyc that is never checked against a source file (flags 0b01: hash-based, unchecked)."""
    code = compile(source, path, "exec", dont_inherit=True, optimize=OPTIMIZE)
    hash_of_source = importlib.util.source_hash(source.encode("utf-8"))
    return importlib.util.MAGIC_NUMBER + (1).to_bytes(4, "little") + hash_of_source + marshal.dumps(code)


def pack() -> bytes:
    """The whole library as a stored zip with fixed dates, so that equal inputs give equal bytes."""
    sys.path.insert(0, str(SOURCES))
    names = own_modules()
    for name in names:
        importlib.import_module(name)
        for wanted in written_imports(name):
            importlib.import_module(wanted)
    failed = answer_examples()
    if failed:
        raise SystemExit("worksheet examples refused: " + "; ".join(failed))
    for name in ALWAYS:
        importlib.import_module(name)

    members: dict[str, bytes] = {}
    loaded = {name for name in sys.modules if not name.startswith(PACKAGES)} | set(ALWAYS)
    for name in sorted(loaded):
        found = stock_source(name)
        if found:
            members[found[0] + "c"] = compiled(*found)
    for path in own_files():
        relative = path.relative_to(SOURCES).as_posix()
        members[relative + "c"] = compiled(relative, path.read_text(encoding="utf-8"))
    for path in sorted((*SOURCES.glob("tables/**/*"), *SOURCES.glob("calc/**/*.json"))):
        if path.is_file():
            members[path.relative_to(SOURCES).as_posix()] = path.read_bytes()

    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_STORED) as packed:
        for name in sorted(members):
            packed.writestr(zipfile.ZipInfo(name, (2026, 1, 1, 0, 0, 0)), members[name])
    return buffer.getvalue()


library = pack()
