"""Writes what is agreed of tables (tables/NAME/agreed.toml) as they are now. Read what it wrote before you commit it:
a row upgraded from memory to text, a sense or a kind of caution changed in passing shows there.

    python -m build_scripts.agree NAME ...
"""

from __future__ import annotations

import sys

from build_scripts.laws.agreed import AGREED, state, written
from build_scripts.laws.tools import read
from build_scripts.table_declaration import TABLES, TableRefused


def main(names: list[str]) -> int:
    """Command line; 1 and one line on stderr where a table is not there or cannot be read."""
    try:
        tables = read()
    except TableRefused as wrong:
        print(wrong, file=sys.stderr)
        return 1
    for name in names:
        if name not in tables:
            print(f"there is no table {name}; there are {', '.join(tables)}", file=sys.stderr)
            return 1
        (TABLES / name / AGREED).write_text(
            written(state(tables.declared[name], tables[name])), encoding="utf-8"
        )
        print(f"wrote tables/{name}/{AGREED}: read it before you commit it")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
