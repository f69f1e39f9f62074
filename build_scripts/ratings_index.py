"""The index behind the box that answers ratings at once: every rating as one line, with the words people call it by.

All thinking is here: which words a rating answers to, and how what is typed is boiled down to the same words. The
script in the page only applies the rules it is handed and looks the words up.
"""

from __future__ import annotations

import json
import re
from dataclasses import dataclass, replace

from build_scripts.markup import measured
from build_scripts.table_view import (
    RATING_QUANTITIES,
    SYSTEM_ORDER,
    USE_WORDS,
    companions,
    resource,
    row_text,
    size_number,
)
from calc.tables import Row, table, table_names

# Rules that boil typed words down, in order: pattern and replacement, written so that Python and the page's script
# read them alike.
RULES: tuple[tuple[str, str], ...] = (
    (r"[“”\"″]", " in "),
    (r"½", "1/2"), (r"¼", "1/4"), (r"¾", "3/4"), (r"⅜", "3/8"), (r"⅝", "5/8"), (r"⅞", "7/8"),
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
    (r"\b(chains?)\b", "chain"), (r"\b(shackles?)\b", "shackle"), (r"\b(hooks?)\b", "hook"),
    (r"\b(eyebolts?|eye bolts?)\b", "eyebolt"), (r"\bturnbuckles?\b", "turnbuckle"),
    (r"\b(straps?|strapping)\b", "strap"), (r"\b(ropes?)\b", "rope"), (r"\b(clips?)\b", "clip"),
    (r"\b(web|webs|webbing)\b", "web"),
    (r"[,;:()?]", " "),
)  # fmt: skip
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
    named = {key: value for key, value in row.items() if key not in ("pin_in", "grade_name")}
    found = boil(
        f"{row_text(name, named)} {resource(name)['title']} {name}".replace("_", " ").replace(
            "-sling", " sling"
        )
    )
    found += boil(name.replace("-", " "))
    near: list[str] = []
    grade = row.get("grade", "").lower()
    if grade:
        found.append(f"g{grade}")
        near += [f"g{grade[:-1]}"] if len(grade) > 1 and grade.endswith("0") else []
        near += [f"g{grade}0"] if grade.isdigit() and len(grade) == 1 else []
    size = size_number(row.get("size_in", "") or row.get("thread", ""))
    found += [
        row.get("size_in", "").lower(),
        row.get("thread", "").lower(),
        "" if size is None else f"{size:g}",
    ]
    for key, value in row.items():
        if key.endswith("_mm") and value:
            (near if row.get("size_in") else found).append(f"{value}mm")
    legs = row.get("legs", "")
    found += ["3leg", "4leg"] if legs == "3-4" else [f"{legs}leg"] if legs else []
    if row.get("angle_from_horizontal"):
        found.append(f"{row['angle_from_horizontal']}deg")
    use = resource(name)["linkwright"].get("use", "")
    found += {"lift": ["lift"], "tie_down": ["tiedown", "truck", "transport", "haul", "binder"]}.get(use, [])
    kept = tuple(dict.fromkeys(word for word in found if word and word not in ("what", "may", "or")))
    return kept, tuple(dict.fromkeys(word for word in near if word not in kept))


def entries() -> tuple[Entry, ...]:
    """Every rating of every table, tie-down and straight pulls first within a table."""
    made: list[Entry] = []
    for name in table_names():
        data = table(name)
        if "quantity" not in data.columns:
            continue
        merged: dict[str, tuple[int, Row]] = {}
        for index, row in enumerate(data.rows):
            if row["quantity"] not in RATING_QUANTITIES or row["unit"] == "text":
                continue
            label = row_text(name, row)
            if row["quantity"] != "working_load_limit":
                label += f", {row['quantity'].replace('_', ' ')}"
            answer = measured(row["value"], row["unit"])
            if label in merged:
                place, before = merged[label]
                if not _same_but_unit(before, row):
                    raise AmbiguousRating(f"{name}: two ratings go by the name {label}")
                first = made[place]
                both, address = f"{first.answer} ({answer})", first.address
                if row["unit"] in SYSTEM_ORDER and before["unit"] not in SYSTEM_ORDER:
                    both, address = f"{answer} ({first.answer})", f"look-up/{name}.html#c-{index}"
                made[place] = replace(first, answer=both, address=address)
                continue
            has_pair = any(other["unit"] != row["unit"] and _same_but_unit(other, row) for other in data.rows)
            beside = "" if has_pair else "; ".join(f"≈\u00a0{m.text}" for m in companions(row)[-1:])
            use = resource(name)["linkwright"].get("use", "")
            merged[label] = (len(made), row)
            made.append(
                Entry(
                    label, answer + (f" ({beside})" if beside else ""), _USE_SHORT.get(use, USE_WORDS.get(use, "")),
                    f"look-up/{name}.html#c-{index}", name, *_tokens(name, row),
                )
            )  # fmt: skip
    return tuple(made)


def _same_but_unit(one: Row, other: Row) -> bool:
    beside = ("value", "unit", "locator", "note", "checked", "size_mm")
    return all(one[key] == other[key] for key in one if key not in beside)


_USE_SHORT = {
    "lift": "For lifting.",
    "tie_down": "For tying down only, never lifting.",
    "mixed": "Lifting and tie-down stand apart: read the row.",
    "neither": "Not for lifting.",
}


def pages() -> list[tuple[str, str, list[str]]]:
    """Title, address and words of every table's page, for what is asked that is no rating: clips, wear, marks."""
    found = []
    for name in table_names():
        about = resource(name)
        if name != "sources":
            said = f"{about['title']} {about.get('description', '')} {name.replace('-', ' ')}"
            words = [word for word in dict.fromkeys(boil(said)) if re.fullmatch(r"[a-z]{3,}", word)]
            found.append((about["title"], f"look-up/{name}.html", words))
    return found


def script(made: tuple[Entry, ...]) -> str:
    """The index as a classic script file, so that it loads from disk as well."""
    tables = list(dict.fromkeys(entry.table for entry in made))
    names = {name: resource(name)["title"] for name in tables}
    vocabulary = list(dict.fromkeys(token for entry in made for token in entry.tokens + entry.near))
    place = {token: i for i, token in enumerate(vocabulary)}
    lines = [
        [
            entry.label, entry.answer, entry.use, entry.address, tables.index(entry.table),
            [place[t] for t in entry.tokens], [place[t] for t in entry.near],
        ]
        for entry in made
    ]  # fmt: skip
    data = {
        "rules": RULES, "dropped": DROPPED, "words": vocabulary, "tables": [names[t] for t in tables], "lines": lines,
        "pages": pages(),
    }  # fmt: skip
    text = json.dumps(data, ensure_ascii=False, separators=(",", ":"))
    return f"globalThis.linkwrightRatings={text};\n"
