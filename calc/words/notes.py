"""The notes of table rows in words: the column `note` holds a key, docs/words its words. Not for the page: it shows none."""

from __future__ import annotations

from calc.tables import Row
from calc.words.writer import Writer


def with_note_in_words(name: str, row: Row, language: str = "en") -> Row:
    """A row of table `name` as a reader gets it: its note in words; raises NoWords."""
    if not row.get("note"):
        return row
    writer = Writer(language=language, scopes=(f"tables/{name}", "tables/common"))
    return {**row, "note": writer.text(f"note-{row['note']}")}


__all__ = ["with_note_in_words"]
