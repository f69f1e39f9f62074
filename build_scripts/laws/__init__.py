"""What the tables must obey: laws of the trade and of arithmetic that a misread figure would break.

A table's laws stand in its folder, tables/NAME/laws.py, and count by standing there: every function named `law_...` is
one. It takes all tables and gives back sentences (none: it holds), so that the mutation tool can ask it thousands of
times in memory. The source of the law itself stands in its docstring. Bands are as tight as the printed tables allow:
the widest row sets them. A law that spans tables stands with the table that it protects most.

    tools.py         exact numbers, bands, rising columns, groups of rows
    families.py      laws that several tables obey; a table's laws.py makes its own from them
    forms.py         laws of form, made for every table: words, places, units, steps, meanings
    agreed.py        what was agreed of a table, so that no row and no meaning changes in passing
    second_copy.py, recalled.py    the second copies and the blind recalls
"""

from __future__ import annotations

import functools
import importlib.util
import sys
from types import ModuleType

from build_scripts.laws.forms import form_laws
from build_scripts.laws.tools import Law, Row, Tables, read
from build_scripts.table_declaration import TABLES, declarations

LAWS_FILE = "laws.py"


def _module(name: str) -> ModuleType | None:
    """The module of a table's laws, or None where the folder has none."""
    path = TABLES / name / LAWS_FILE
    if not path.is_file():
        return None
    key = f"table_laws.{name}"
    if key not in sys.modules:
        spec = importlib.util.spec_from_file_location(key, path)
        if spec is None or spec.loader is None:
            return None
        module = importlib.util.module_from_spec(spec)
        sys.modules[key] = module
        spec.loader.exec_module(module)
    return sys.modules[key]


def own_laws(name: str) -> tuple[Law, ...]:
    """The laws in a table's folder."""
    module = _module(name)
    found = vars(module).items() if module else ()
    return tuple(Law(name, key, check) for key, check in found if key.startswith("law_"))


@functools.cache
def all_laws() -> tuple[Law, ...]:
    """Every law: those in the tables' folders, then the laws of form."""
    return (*(law for name in declarations() for law in own_laws(name)), *form_laws(read()))


__all__ = ["LAWS_FILE", "Law", "Row", "Tables", "all_laws", "own_laws", "read"]
