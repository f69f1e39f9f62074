"""The index behind the box that answers ratings at once: every rating as one line, with the words people call it by.

All thinking is here: which words a rating answers to, and how what is typed is boiled down to the same words. The
script in the page only applies the rules it is handed and looks the words up.
"""

from __future__ import annotations

import json
import re
from dataclasses import dataclass

from build_scripts.markup import unit_name
from build_scripts.table_view import USE_WORDS, companions, resource, row_text, size_number
from calc.tables import Row, table, table_names

RATING_QUANTITIES = ("working_load_limit", "rated_load", "rated_capacity", "capacity")

# Rules that boil typed words down, in order: pattern and replacement, written so that Python and the page's script
# read them alike.
RULES: tuple[tuple[str, str], ...] = (
    (r"[“”\"″]", " in "),
    (r"½", "1/2"), (r"¼", "1/4"), (r"¾", "3/4"), (r"⅜", "3/8"), (r"⅝", "5/8"), (r"⅞", "7/8"),
    (r"\b(inches|inch)\b", "in"),
    (r"\b(\d+) (\d+/\d+)", "$1-$2"),
    (r"(\d) ?(mm|millimet(?:re|er)s?)\b", "$1mm"),
    (r"(\d) ?in\b", "$1 "),
    (r"\b(grade|gr|g)\.? ?-?(\d+|[ab])\b", "g$2"),
    (r"\b(one|single|1) ?-?legs?\b", "1leg"),
    (r"\b(two|double|2) ?-?legs?\b", "2leg"),
    (r"\b(three|four|triple|quad|3|4) ?-?legs?\b", "3leg"),
    (r"\b(\d+) ?(°|degrees?|deg)", "$1deg"),
    (r"\btie ?-?downs?\b", "tiedown"),
    (r"\b(lift|lifts|lifting|hoist|hoisting|sling|slings)\b", "lift"),
    (r"\b(chains?)\b", "chain"), (r"\b(shackles?)\b", "shackle"), (r"\b(hooks?)\b", "hook"),
    (r"\b(eyebolts?|eye bolts?)\b", "eyebolt"), (r"\bturnbuckles?\b", "turnbuckle"),
    (r"[,;:()]", " "),
)  # fmt: skip
DROPPED = ("in", "inch", "a", "the", "for", "of", "on", "my", "what", "is", "rating", "rated", "wll", "limit", "and", "to")
"""Words that say nothing about which rating is meant."""


@dataclass(frozen=True)
class Entry:
    """One line of the index: what it is, the answer, what it is for, where it stands, the words it answers to."""

    label: str
    answer: str
    use: str
    address: str
    table: str
    tokens: tuple[str, ...]


def boil(text: str) -> list[str]:
    """The words that count in what was typed."""
    low = f" {text.lower()} "
    for pattern, replacement in RULES:
        low = re.sub(pattern, re.sub(r"\$(\d)", r"\\\1", replacement), low)
    return [word for word in low.split() if word not in DROPPED]


def _tokens(name: str, row: Row) -> tuple[str, ...]:
    found = boil(f"{name} {row_text(name, row)} {resource(name)['title']}".replace("_", " "))
    found += boil(name.replace("-", " "))
    grade = row.get("grade", "")
    if grade:
        found.append(f"g{grade.lower()}")
        if grade in ("30", "40", "43", "70", "80", "100", "120"):
            found.append(f"g{grade[:-1]}")
        if grade.isdigit() and len(grade) == 1:
            found.append(f"g{grade}0")
    if row.get("size_in"):
        found.append(row["size_in"].lower())
        size = size_number(row["size_in"])
        if size is not None:
            found.append(f"{size:g}")
    for key, value in row.items():
        if key.endswith("_mm") and value:
            found.append(f"{value}mm")
    if row.get("legs", "") == "3-4":
        found += ["3leg", "4leg"]
    elif row.get("legs"):
        found.append(f"{row['legs']}leg")
    angle = row.get("angle_from_horizontal", "")
    if angle:
        found.append(f"{angle}deg")
    use = resource(name)["linkwright"].get("use", "")
    found += {"lift": ["lift"], "tie_down": ["tiedown", "truck", "transport", "haul", "binder"]}.get(use, [])
    return tuple(dict.fromkeys(word for word in found if word not in ("what", "may")))


def entries() -> tuple[Entry, ...]:
    """Every rating of every table, tie-down and straight pulls first within a table."""
    made: list[Entry] = []
    for name in table_names():
        data = table(name)
        if "quantity" not in data.columns:
            continue
        merged: dict[str, int] = {}
        for index, row in enumerate(data.rows):
            if row["quantity"] not in RATING_QUANTITIES or row["unit"] == "text":
                continue
            label = row_text(name, row)
            answer = f"{row['value']} {unit_name(row['unit'])}".strip()
            if label in merged:
                first = made[merged[label]]
                made[merged[label]] = Entry(
                    first.label, f"{first.answer} ({answer})", first.use, first.address, name, first.tokens
                )
                continue
            has_pair = any(
                other is not row and other["unit"] != row["unit"] and row_text(name, other) == label for other in data.rows
            )
            beside = "" if has_pair else "; ".join(f"≈ {m.text}" for m in companions(row)[-1:])
            use = resource(name)["linkwright"].get("use", "")
            merged[label] = len(made)
            made.append(
                Entry(
                    label, answer + (f" ({beside})" if beside else ""), _USE_SHORT.get(use, USE_WORDS.get(use, "")),
                    f"look-up/{name}.html#c-{index}", name, _tokens(name, row),
                )
            )  # fmt: skip
    return tuple(made)


_USE_SHORT = {"lift": "lifting", "tie_down": "tying down only, never lifting", "mixed": "read the row", "neither": "not a rating"}


def script(made: tuple[Entry, ...]) -> str:
    """The index as a classic script file, so that it loads from disk as well."""
    tables = list(dict.fromkeys(entry.table for entry in made))
    names = {name: resource(name)["title"] for name in tables}
    vocabulary = list(dict.fromkeys(token for entry in made for token in entry.tokens))
    place = {token: i for i, token in enumerate(vocabulary)}
    lines = [
        [entry.label, entry.answer, entry.use, entry.address, tables.index(entry.table), [place[t] for t in entry.tokens]]
        for entry in made
    ]
    data = {
        "rules": RULES, "dropped": DROPPED, "words": vocabulary, "tables": [names[t] for t in tables], "lines": lines,
    }  # fmt: skip
    text = json.dumps(data, ensure_ascii=False, separators=(",", ":"))
    return f"globalThis.linkwrightRatings={text};\n"
