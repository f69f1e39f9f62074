"""Builds the installable package: calc, with its tables and its compiled words inside.

Everything else about the package stands in pyproject.toml; this only lays what calc reads into it.
"""

from __future__ import annotations

import shutil
import sys
from pathlib import Path

from setuptools import setup
from setuptools.command.build_py import build_py

ROOT = Path(__file__).resolve().parent


class BuildWithTables(build_py):
    """Copies the modules, then the tables that calc reads and the words, compiled."""

    def run(self) -> None:
        """Build into build_lib."""
        super().run()
        sys.path.insert(0, str(ROOT))
        from calc.words.compiling import write_compiled

        calc = Path(self.build_lib) / "calc"
        tables = ROOT / "tables"
        for source in (tables / "index.json", *sorted(tables.rglob("claims.csv"))):
            target = calc / "packed" / "tables" / source.relative_to(tables)
            target.parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(source, target)
        write_compiled(ROOT / "docs" / "words", "en", calc / "words" / "compiled" / "en.json")


setup(cmdclass={"build_py": BuildWithTables})
