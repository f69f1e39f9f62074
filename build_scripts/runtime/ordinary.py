"""Writes the last road to a running Python: calc as a wheel, and the lock file from which Pyodide installs it.

The other roads depend on details of one Pyodide release (its start hooks, its memory image). This one uses only what
Pyodide documents, so it stands when they fall. The lock file is written by the `pyodide-lock` library.
"""

from __future__ import annotations

import hashlib
import json
from pathlib import Path

from pyodide_lock import PackageSpec, PyodideLockSpec
from wheel.wheelfile import WheelFile


def write_ordinary_road(root: Path, out_dir: Path, version: str, sources: Path) -> None:
    """Write the wheel of that version and `pyodide-lock.json` into `out_dir`."""
    wheel = write_wheel(sources, out_dir, version)
    published = json.loads((root / "node_modules" / "pyodide" / "pyodide-lock.json").read_text("utf-8"))
    release = json.loads((root / "node_modules" / "pyodide" / "package.json").read_text("utf-8"))["version"]
    package = PackageSpec(
        name="linkwright",
        version=version,
        file_name=wheel.name,
        install_dir="site",
        sha256=hashlib.sha256(wheel.read_bytes()).hexdigest(),
        imports=["calc", "build_scripts"],
        depends=[],
    )
    info = published["info"] | {"version": release}
    PyodideLockSpec(info=info, packages={"linkwright": package}).to_json(out_dir / "pyodide-lock.json")


def write_wheel(sources: Path, out_dir: Path, version: str) -> Path:
    """A pure Python wheel of calc with its words, what turns its answers into the page's trees, and the tables beside them."""
    path = out_dir / f"linkwright-{version}-py3-none-any.whl"
    info = f"linkwright-{version}.dist-info"
    with WheelFile(path, "w") as wheel:
        for folder, suffixes in (
            ("calc", {".py", ".json"}),
            ("build_scripts", {".py"}),
            ("tables", {".csv", ".json"}),
        ):
            for source in sorted((sources / folder).rglob("*")):
                if source.suffix in suffixes:
                    wheel.write(source, source.relative_to(sources).as_posix())
        wheel.writestr(f"{info}/METADATA", f"Metadata-Version: 2.1\nName: linkwright\nVersion: {version}\n")
        wheel.writestr(
            f"{info}/WHEEL",
            "Wheel-Version: 1.0\nGenerator: linkwright\nRoot-Is-Purelib: true\nTag: py3-none-any\n",
        )
        wheel.writestr(f"{info}/top_level.txt", "build_scripts\ncalc\n")
    return path
