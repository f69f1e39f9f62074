"""The index behind the box that answers ratings at once: every rating as one line, with the words people call it by.

All thinking is here: which words a rating answers to, and how what is typed is boiled down to the same words. The
script in the page only applies the rules it is handed and looks the words up.
"""

from __future__ import annotations

import json
import re
from dataclasses import dataclass, replace

from build_scripts import table_words
from build_scripts.markup import measured
from build_scripts.table_declaration import declared
from build_scripts.table_view import SYSTEM_ORDER, companions, row_text, size_number
from calc.tables import Row, table, table_names

# Rules that boil typed words down, in order: pattern and replacement, written so that Python and the page's script
# read them alike.
RULES: tuple[tuple[str, str], ...] = (
    (r"[“”\"″]", " in "),
    (r"½", "1/2"),
    (r"¼", "1/4"),
    (r"¾", "3/4"),
    (r"⅜", "3/8"),
    (r"⅝", "5/8"),
    (r"⅞", "7/8"),
    (r"\b(inches|inch)\b", "in"),
    (r"(\d) ?(mm|millimet(?:re|er)s?)\b", "$1mm"),
    (r"(\d) ?in\b\.?", "$1 "),
    (r"\b(grade|gr|g)\.? ?-?(\d+|[ab])\b", "g$2"),
    (r"\b(\d) (\d+/\d+)", "$1-$2"),
    (r"\b(one|single|1) ?-?legs?\b", "1leg"),
    (r"\b(two|double|2) ?-?legs?\b", "2leg"),
    (r"\b(three|four|triple|quad|3|4) ?-?legs?\b", "3leg"),
    (r"\b(\d+) ?(°|degrees?|deg)", "$1deg"),
    (r"\btie ?-?downs?\b", "tiedown"),
    (r"\b(lift|lifts|lifting|hoist|hoisting|sling|slings)\b", "lift"),
    (r"\b(chains?)\b", "chain"),
    (r"\b(shackles?)\b", "shackle"),
    (r"\b(hooks?)\b", "hook"),
    (r"\b(eyebolts?|eye bolts?)\b", "eyebolt"),
    (r"\bturnbuckles?\b", "turnbuckle"),
    (r"\b(straps?|strapping)\b", "strap"),
    (r"\b(ropes?)\b", "rope"),
    (r"\b(clips?)\b", "clip"),
    (r"\b(web|webs|webbing)\b", "web"),
    (r"[,;:()?]", " "),
)
DROPPED = (
    "in",
    "inch",
    "a",
    "the",
    "for",
    "of",
    "on",
    "my",
    "what",
    "is",
    "rating",
    "rated",
    "wll",
    "limit",
    "and",
    "to",
)
"""Words that say nothing about which rating is meant."""


class AmbiguousRating(ValueError):
    """Two ratings that differ would stand under one name: a reader could take the wrong one."""


@dataclass(frozen=True)
class Entry:
    """One line of the index: what it is, the answer, what it is for, where it stands, the words it answers to."""

    label: str
    answer: str
    use: str
    address: str
    table: str
    tokens: tuple[str, ...]
    near: tuple[str, ...]


def boil(text: str) -> list[str]:
    """The words that count in what was typed."""
    low = f" {text.lower()} "
    for pattern, replacement in RULES:
        low = re.sub(pattern, re.sub(r"\$(\d)", r"\\\1", replacement), low)
    return [word for word in low.split() if word not in DROPPED]


def _tokens(name: str, row: Row) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """The words a rating answers to, and those it answers to only when nothing nearer does (8 for grade 80)."""
    said = declared(name)
    found = boil(
        f"{row_text(name, _named(name, row))} {table_words.question(name)} {name}".replace("_", " ").replace(
            "-sling", " sling"
        )
    )
    found += boil(name.replace("-", " "))
    near: list[str] = []
    grade, legs = _of(name, row, "grade").lower(), _of(name, row, "legs")
    if grade:
        found.append(f"g{grade}")
        near += [f"g{grade[:-1]}"] if len(grade) > 1 and grade.endswith("0") else []
        near += [f"g{grade}0"] if grade.isdigit() and len(grade) == 1 else []
    inches, thread = _of(name, row, "size_inch"), _of(name, row, "thread")
    size = size_number(inches or thread)
    found += [inches.lower(), thread.lower(), "" if size is None else f"{size:g}"]
    if metric := _of(name, row, "size_metric"):
        (near if inches else found).append(f"{metric}mm")
    found += ["3leg", "4leg"] if legs == "3-4" else [f"{legs}leg"] if legs else []
    if angle := _of(name, row, "angle_from_horizontal"):
        found.append(f"{angle}deg")
    found += {"lift": ["lift"], "tie_down": ["tiedown", "truck", "transport", "haul", "binder"]}.get(
        said.use, []
    )
    kept = tuple(dict.fromkeys(word for word in found if word and word not in ("what", "may", "or")))
    return kept, tuple(dict.fromkeys(word for word in near if word not in kept))


def _of(name: str, row: Row, role: str) -> str:
    """What a row has in its column of a role; empty where its table has none."""
    return next((row[key] for key in declared(name).with_role(role)), "")


def _named(name: str, row: Row) -> Row:
    """The row with the columns alone that tell it from others: nobody asks by the size of a pin."""
    return {key: value for key, value in row.items() if key in declared(name).key}


def entries() -> tuple[Entry, ...]:
    """Every rating of every table, tie-down and straight pulls first within a table."""
    made: list[Entry] = []
    for name in table_names():
        said, data = declared(name), table(name)
        merged: dict[str, tuple[int, Row]] = {}
        for index, row in enumerate(data.rows):
            if not said.is_rating(row) or row["unit"] == "text":
                continue
            label = row_text(name, row)
            if row["quantity"] != _USUAL:
                quantity = table_words.quantity(name, row["quantity"])
                label += f", {quantity[:1].lower()}{quantity[1:]}"
            answer = measured(row["value"], row["unit"])
            if label in merged:
                place, before = merged[label]
                if not _same_but_unit(name, before, row):
                    raise AmbiguousRating(f"{name}: two ratings go by the name {label}")
                first = made[place]
                both, address = f"{first.answer} ({answer})", first.address
                if row["unit"] in SYSTEM_ORDER and before["unit"] not in SYSTEM_ORDER:
                    both, address = f"{answer} ({first.answer})", f"look-up/{name}.html#c-{index}"
                made[place] = replace(first, answer=both, address=address)
                continue
            has_pair = any(
                other["unit"] != row["unit"] and _same_but_unit(name, other, row) for other in data.rows
            )
            beside = "" if has_pair else "; ".join(f"≈\u00a0{m.text}" for m in companions(name, row)[-1:])
            merged[label] = (len(made), row)
            made.append(
                Entry(
                    label,
                    answer + (f" ({beside})" if beside else ""),
                    table_words.text(name, f"use-{said.use}.short"),
                    f"look-up/{name}.html#c-{index}",
                    name,
                    *_tokens(name, row),
                )
            )
    return tuple(made)


_USUAL = "working_load_limit"
"""The quantity that a rating is unless its line says otherwise."""


def _same_but_unit(name: str, one: Row, other: Row) -> bool:
    """Whether two rows are one rating, printed in two units."""
    same = ({*declared(name).key} | {"source"}) - {"unit"}
    return all(one[key] == other[key] for key in same)


def pages() -> list[tuple[str, str, list[str]]]:
    """Title, address and words of every table's page, for what is asked that is no rating: clips, wear, marks."""
    found = []
    for name in table_names():
        if name != "sources":
            title = table_words.question(name)
            said = f"{title} {table_words.description(name)} {name.replace('-', ' ')}"
            words = [word for word in dict.fromkeys(boil(said)) if re.fullmatch(r"[a-z]{3,}", word)]
            found.append((title, f"look-up/{name}.html", words))
    return found


def script(made: tuple[Entry, ...]) -> str:
    """The index as a classic script file, so that it loads from disk as well."""
    tables = list(dict.fromkeys(entry.table for entry in made))
    names = {name: table_words.question(name) for name in tables}
    vocabulary = list(dict.fromkeys(token for entry in made for token in entry.tokens + entry.near))
    place = {token: i for i, token in enumerate(vocabulary)}
    lines = [
        [
            entry.label,
            entry.answer,
            entry.use,
            entry.address,
            tables.index(entry.table),
            [place[t] for t in entry.tokens],
            [place[t] for t in entry.near],
        ]
        for entry in made
    ]
    data = {
        "rules": RULES,
        "dropped": DROPPED,
        "words": vocabulary,
        "tables": [names[t] for t in tables],
        "lines": lines,
        "pages": pages(),
    }
    text = json.dumps(data, ensure_ascii=False, separators=(",", ":"))
    return f"globalThis.linkwrightRatings={text};\n"
