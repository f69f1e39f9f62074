"""Turns a long table (one claim a row) into what a reader sees: a wide table, its sources, and the words around it.

The descriptor of the tables says how each is laid out (custom property `linkwright`); nothing here knows a single
table by name. Values are the source's own text. A value in the other unit system is shown beside it: the source's
own where it prints one, else computed here and marked with the sign for "about".
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field
from typing import Any

from calc.quantities import from_si, show_in, to_si
from calc.tables import NoSuchRow, Row, Table, number, package, table
from build_scripts.markup import rich, unit_name, words

USE_WORDS = {
    "lift": "For lifting",
    "tie_down": "For tying down only. Never for lifting.",
    "neither": "Neither for lifting nor for tying down: a table to judge or reckon by.",
    "mixed": "Lifting and tie-down stand apart in this table: read which one a row is for.",
}
"""What a table's figures may be used for, in words."""

# Companion units: dimension, and the unit of the other system in which a value is shown as well.
COMPANIONS: dict[str, tuple[str, tuple[str, ...]]] = {
    "lb": ("weight", ("kg",)), "kg": ("weight", ("lb",)), "short_ton": ("weight", ("lb", "kg")), "t": ("weight", ("lb",)),
    "in": ("length", ("mm",)), "mm": ("length", ("in",)), "ft": ("length", ("m",)), "lb/ft3": ("density", ("kg/m3",)),
    "kg/m3": ("density", ("lb/ft3",)), "degF": ("temperature", ("degC",)), "degC": ("temperature", ("degF",)),
    "kN": ("force", ("lbf",)), "lbf": ("force", ("kN",)), "lb/ft": ("weight_per_length", ("kg/m",)),
    "kg/m": ("weight_per_length", ("lb/ft",)), "ksi": ("pressure", ("MPa",)), "N/mm2": ("pressure", ("ksi",)),
    "MPa": ("pressure", ("ksi",)), "psi": ("pressure", ("MPa",)),
}  # fmt: skip
_SYSTEM_ORDER = ("short_ton", "lb", "in", "lb/ft3", "degF")
_SHORT_TEXT = 26
_MANY_COLUMNS = 8


@dataclass(frozen=True)
class Made:
    """A value in another unit, computed here from the printed one."""

    text: str


@dataclass(frozen=True)
class Shown:
    """One printed value in a cell: the row's number in the file, its text and unit, and computed companions."""

    number: int
    claim: str
    value: str
    unit: str
    checked: str
    made: tuple[Made, ...]
    long: bool


@dataclass(frozen=True)
class Column:
    """A value column: its heading, the units in it, and the keys it stands for."""

    keys: tuple[tuple[str, str], ...]
    heading: str
    small: str


@dataclass(frozen=True)
class Line:
    """One line of the wide table."""

    keys: tuple[tuple[str, str], ...]
    heads: tuple[str, ...]
    cells: tuple[tuple[Shown, ...], ...]


@dataclass(frozen=True)
class Wide:
    """A wide table under one caption."""

    caption: str
    keys: tuple[tuple[str, str], ...]
    head_names: tuple[str, ...]
    columns: tuple[Column, ...]
    lines: tuple[Line, ...]


@dataclass(frozen=True)
class Claim:
    """A place in a source, how it was read, and the note; many values may come from one."""

    key: str
    source: str
    source_title: str
    locator: str
    checked: str
    note: str
    count: int


@dataclass(frozen=True)
class Sift:
    """A filter a reader can set: the key, its name, and the values in the order of the table."""

    key: str
    label: str
    options: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class View:
    """Everything a look-up page shows of one table."""

    name: str
    title: str
    description: str
    group: str
    use: str
    wides: tuple[Wide, ...]
    claims: tuple[Claim, ...]
    sifts: tuple[Sift, ...]
    notes: tuple[str, ...]
    cautions: tuple[str, ...]
    rows: int
    counts: dict[str, int] = field(default_factory=dict)
    has_made: bool = False


def resource(name: str) -> dict[str, Any]:
    """The descriptor of one table."""
    for one in package()["resources"]:
        if one["name"] == name:
            found: dict[str, Any] = one
            return found
    raise LookupError(f"there is no table {name}")


def source_row(key: str) -> Row:
    """The card of a source; a missing one stops the build."""
    return table("sources").one(key=key)


def source_short(key: str) -> str:
    """A source's title, short enough for a table head."""
    title = source_row(key)["title"]
    for mark in (" (", ", ", ": "):
        title = title.split(mark)[0]
    return title if len(title) <= 44 else title[:42].rsplit(" ", 1)[0] + "…"


def field_title(name: str, key: str) -> str:
    """The heading of a column of the file, without its unit."""
    for one in resource(name)["schema"]["fields"]:
        if one["name"] == key:
            return str(one.get("title") or words(key)).split(" [")[0]
    return words(key)


def key_text(name: str, key: str, value: str) -> str:
    """What a key means to a reader: grade 70, 3/8 in, 2 legs, 45 degrees from horizontal."""
    if not value:
        return "any"
    if key == "grade":
        return f"Grade {value}" if value[:1].isdigit() or len(value) == 1 else words(value)
    if key.endswith("_in"):
        return f"{value} in"
    if key.endswith("_mm"):
        return f"{value} mm"
    if key == "legs":
        return {"1": "1 leg", "2": "2 legs"}.get(value, f"{value.replace('-', ' or ')} legs")
    if key.startswith("angle") and value.replace(".", "").isdigit():
        return f"{value}°"
    if key.endswith("_deg_c") or key.endswith("_degc"):
        return f"{value} °C"
    if key == "source":
        return source_short(value)
    if value.replace(".", "").isdigit():
        return f"{field_title(name, key)} {value}"
    return words(value) if "_" in value or value.islower() else value


def row_text(name: str, row: Row) -> str:
    """All keys of a row in words, for a line that stands alone: `Grade 70, 3/8 in`."""
    keys = [k for k in _key_columns(name) if k not in ("quantity", "unit", "source")]
    if "size_in" in keys and "size_mm" in keys:
        keys.remove("size_mm")
    return ", ".join(key_text(name, key, row[key]) for key in keys if row[key])


def _key_columns(name: str) -> list[str]:
    skip = ("quantity", "value", "unit", "source", "locator", "checked", "note", "grade_name", "material")
    return [f["name"] for f in resource(name)["schema"]["fields"] if f["name"] not in skip]


def size_number(text: str) -> float | None:
    """A shop size as a number, or None for words."""
    try:
        return number({"value": text})
    except (NoSuchRow, KeyError):
        return None


def companions(row: Row) -> tuple[Made, ...]:
    """A row's value in the other unit system, ratings rounded down."""
    if row["unit"] not in COMPANIONS:
        return ()
    dimension, others = COMPANIONS[row["unit"]]
    try:
        value_si = to_si(number(row), row["unit"], dimension)
    except NoSuchRow:
        return ()
    rating = any(word in row.get("quantity", "") for word in ("limit", "rating", "breaking", "capacity"))
    made = []
    for other in others:
        digits = 4 if dimension == "temperature" else 3
        if other == "in":
            text = f"{from_si(value_si, 'in', 'length'):.3g} in"
        else:
            text = show_in(value_si, dimension, other, digits, "down" if rating else "nearest")
        made.append(Made(text))
    return tuple(made)


def view(name: str, **conditions: str) -> View:
    """The look-up page of table `name`, or of those of its rows that hold the given texts."""
    described = resource(name)
    ours = described.get("linkwright", {})
    layout = ours["layout"]
    data = table(name)
    rows = [(i, row) for i, row in enumerate(data.rows) if all(row[k] == v for k, v in conditions.items())]
    if not rows:
        raise NoSuchRow(f"table {name} has no row for {conditions}")
    claims, claim_of = _claims(rows)
    row_keys = [k for k in layout["rows"]]
    column_keys = [k for k in layout["columns"] if k != "unit"]
    if len({row.get("quantity", "") for _, row in rows}) == 1:
        row_keys = [k for k in row_keys if k != "quantity"]
        column_keys = [k for k in column_keys if k != "quantity"]
    if _wants_long_form(rows, column_keys):
        row_keys, column_keys = row_keys + [k for k in column_keys if k != "source"], []
    wides = _wides(name, rows, row_keys, column_keys, claim_of, printed_pairs="unit" in layout["columns"])
    counts: dict[str, int] = defaultdict(int)
    for _, row in rows:
        counts[row["checked"]] += 1
    sifts = _sifts(name, data, [k for k in ours.get("filters", []) if k in row_keys + column_keys], rows)
    return View(
        name=name,
        title=ours.get("question") or described["title"],
        description=described.get("description", ""),
        group=ours.get("group", ""),
        use=ours.get("use", ""),
        wides=wides,
        claims=claims,
        sifts=sifts,
        notes=tuple(ours.get("notes", ())),
        cautions=tuple(ours.get("cautions", ())),
        rows=len(rows),
        counts=dict(counts),
        has_made=any(s.made for w in wides for line in w.lines for cell in line.cells for s in cell),
    )


def _wants_long_form(rows: list[tuple[int, Row]], column_keys: list[str]) -> bool:
    texts = [row["value"] for _, row in rows if row["unit"] == "text"]
    return bool(column_keys) and bool(texts) and max(map(len, texts)) > _SHORT_TEXT


def _claims(rows: list[tuple[int, Row]]) -> tuple[tuple[Claim, ...], dict[int, str]]:
    grouped: dict[tuple[str, str, str, str], list[int]] = defaultdict(list)
    for index, row in rows:
        grouped[(row["source"], row["locator"], row["checked"], row["note"])].append(index)
    claims = []
    claim_of: dict[int, str] = {}
    for place, ((source, locator, checked, note), members) in enumerate(grouped.items(), start=1):
        key = f"s-{place}"
        claims.append(Claim(key, source, source_row(source)["title"], locator, checked, note, len(members)))
        claim_of.update(dict.fromkeys(members, key))
    return tuple(claims), claim_of


def _sifts(name: str, data: Table, keys: list[str], rows: list[tuple[int, Row]]) -> tuple[Sift, ...]:
    sifts = []
    for key in keys:
        values = list(dict.fromkeys(row[key] for _, row in rows if row[key]))
        if len(values) < 2 or len(values) > 90:
            continue
        options = tuple((value, key_text(name, key, value)) for value in _in_order(values))
        sifts.append(Sift(key, field_title(name, key), options))
    return tuple(sifts)


def _in_order(values: list[str]) -> list[str]:
    numbers = [size_number(value) for value in values]
    if all(n is not None for n in numbers):
        return [value for _, value in sorted(zip(numbers, values, strict=True), key=lambda pair: pair[0] or 0.0)]
    return values


def _wides(
    name: str,
    rows: list[tuple[int, Row]],
    row_keys: list[str],
    column_keys: list[str],
    claim_of: dict[int, str],
    printed_pairs: bool,
) -> tuple[Wide, ...]:
    columns = list(dict.fromkeys(tuple((k, row[k]) for k in column_keys) for _, row in rows))
    rank = {k: _in_order(list(dict.fromkeys(row[k] for _, row in rows))) for k in column_keys}
    columns.sort(key=lambda keys: [rank[k].index(v) for k, v in keys])
    if len(columns) > _MANY_COLUMNS and len(column_keys) > 1:
        parts = [
            (((column_keys[0], value),), [c for c in columns if c[0][1] == value]) for value in rank[column_keys[0]]
        ]
    else:
        parts = [((), columns)]
    wides = []
    for fixed, chosen in parts:
        inside = [(i, row) for i, row in rows if all(row[k] == v for k, v in fixed)]
        wides.append(_one_wide(name, inside, row_keys, fixed, chosen, claim_of, printed_pairs))
    return tuple(wides)


def _one_wide(
    name: str,
    rows: list[tuple[int, Row]],
    row_keys: list[str],
    fixed: tuple[tuple[str, str], ...],
    columns: list[tuple[tuple[str, str], ...]],
    claim_of: dict[int, str],
    printed_pairs: bool,
) -> Wide:
    lines_of: dict[tuple[str, ...], dict[tuple[tuple[str, str], ...], list[tuple[int, Row]]]] = {}
    for index, row in rows:
        line = lines_of.setdefault(tuple(row[k] for k in row_keys), {})
        line.setdefault(tuple((k, row[k]) for k, _ in columns[0]) if columns[0] else (), []).append((index, row))
    ordered = list(lines_of)
    if row_keys and all(size_number(keys[0]) is not None for keys in ordered):
        ordered.sort(key=lambda keys: size_number(keys[0]) or 0.0)
    heads_of, head_names = _heads(name, row_keys)
    lines = tuple(
        Line(
            tuple(zip(row_keys, keys, strict=True)),
            heads_of(keys),
            tuple(_cell(lines_of[keys].get(column, []), claim_of, printed_pairs) for column in columns),
        )
        for keys in ordered
    )
    made = []
    for place, column in enumerate(columns):
        units = list(dict.fromkeys(s.unit for line in lines for s in line.cells[place] if s.unit))
        units.sort(key=lambda u: (u not in ("short ton", "lb", "in", "lb/ft³", "°F"), u))
        keys = [pair for pair in column if pair not in fixed]
        heading = ", ".join(key_text(name, k, v) for k, v in keys) or _value_heading(name, rows)
        made.append(Column(column, heading, ", ".join(units)))
    caption = ", ".join(key_text(name, k, v) for k, v in fixed)
    return Wide(caption, fixed, head_names, tuple(made), lines)


def _value_heading(name: str, rows: list[tuple[int, Row]]) -> str:
    quantities = {row.get("quantity", "") for _, row in rows}
    return words(quantities.pop()) if len(quantities) == 1 else field_title(name, "value")


def _heads(name: str, row_keys: list[str]) -> tuple[Any, tuple[str, ...]]:
    paired = row_keys[:2] == ["size_in", "size_mm"]

    def heads(keys: tuple[str, ...]) -> tuple[str, ...]:
        if paired:
            first = rich(f"{keys[0]} in") + f" <small>{keys[1]} mm</small>" if keys[0] else rich(f"{keys[1]} mm")
            return (first, *(rich(key_text(name, k, v)) for k, v in zip(row_keys[2:], keys[2:], strict=True)))
        return tuple(rich(key_text(name, k, v)) for k, v in zip(row_keys, keys, strict=True))

    names = tuple(field_title(name, k) for k in (["size_in", *row_keys[2:]] if paired else row_keys))
    return heads, names


def _cell(rows: list[tuple[int, Row]], claim_of: dict[int, str], printed_pairs: bool) -> tuple[Shown, ...]:
    units = {row["unit"] for _, row in rows}
    ordered = sorted(rows, key=lambda pair: (pair[1]["unit"] not in _SYSTEM_ORDER, pair[0]))
    shown = []
    for index, row in ordered:
        paired = printed_pairs and len(units) > 1
        shown.append(
            Shown(
                index, claim_of[index], row["value"], unit_name(row["unit"]), row["checked"],
                () if paired else companions(row), row["unit"] == "text" and len(row["value"]) > _SHORT_TEXT,
            )  # fmt: skip
        )
    return tuple(shown)
