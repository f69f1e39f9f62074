"""Turns a long table (one claim a row) into what a reader sees: a wide table, its sources, and the words around it.

The declaration of a table says how it is laid out and what each column and quantity is (build_scripts/table_declaration);
its words come from the catalogue (build_scripts/table_words). Nothing here knows a table, a column or a quantity by name.
Values are the source's own text. A value in the other unit system is shown beside it: the source's own where it prints
one, else computed here, rounded to the safe side of its sense, and marked with the sign for "about".
"""

from __future__ import annotations

import math
import re
from collections import Counter, defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any

from build_scripts import table_words, wording
from build_scripts.markup import measured, rich, unit_name
from build_scripts.places import places_of
from build_scripts.table_declaration import Column as DeclaredColumn
from build_scripts.table_declaration import Declaration, declared
from calc.quantities import from_si, round_to, show_in, to_si, unit_text
from calc.tables import NoSuchRow, Row, number, short_citation, table
from calc.words.facts import ROUNDING, Rounding, Sense
from calc.words.writer import Spans

# Companion units: dimension, and the unit of the other system in which a value is shown as well.
COMPANIONS: dict[str, tuple[str, tuple[str, ...]]] = {
    "lb": ("weight", ("kg",)),
    "kg": ("weight", ("lb",)),
    "short_ton": ("weight", ("lb", "kg")),
    "t": ("weight", ("lb",)),
    "in": ("length", ("mm",)),
    "mm": ("length", ("in",)),
    "ft": ("length", ("m",)),
    "in2": ("area", ("mm2",)),
    "mm2": ("area", ("in2",)),
    "lb/ft3": ("density", ("kg/m3",)),
    "kg/m3": ("density", ("lb/ft3",)),
    "degF": ("temperature", ("degC",)),
    "degC": ("temperature", ("degF",)),
    "daN": ("force", ("lbf",)),
    "kN": ("force", ("lbf",)),
    "lbf": ("force", ("kN",)),
    "lb/ft": ("weight_per_length", ("kg/m",)),
    "kg/m": ("weight_per_length", ("lb/ft",)),
    "ksi": ("pressure", ("MPa",)),
    "N/mm2": ("pressure", ("ksi",)),
    "MPa": ("pressure", ("ksi",)),
    "psi": ("pressure", ("MPa",)),
}
_SENSES: dict[str, Sense] = {sense: sense for sense in ROUNDING}
SYSTEM_ORDER = ("short_ton", "lb", "lbf", "in", "lb/ft3", "degF")
_SHORT_TEXT = 26
_SHORT_TITLE, _TELLS_LITTLE = 48, 18
_NUMBERED = re.compile(
    r"\d+ CFR (Part )?[\d.]+|WAC [\d-]+|(DOE|MIL)-STD-[\dA-Z-]+|ASTM [A-Z]\d+|ASME [A-Z]+[\d.-]+\d|((BS|DIN) )?EN [\d-]+"
    r"|ISO [\d-]+|DGUV \w+ [\d-]+|AASHTO \w+ \d+|AS \d[\d.]+|DIN \d+|VDI [\d-]+|TRBS \d+|AISC \d+|NIST-IR \d+"
)
_MANY_COLUMNS = 8
_MOST_PARTS = 8
_FEW_SOURCES = 3
_SPARSE = 0.55
_FEW_LINES = 3
_SOON_READ = 12
_LONG_CHOICE = 15
_MEASURES = {
    "size_inch": "in",
    "size_inch_name": "in",
    "length_inch": "in",
    "thread": "in",
    "size_metric": "mm",
    "size_metric_printed": "mm",
}
"""Roles of sizes, and the unit that stands behind one."""
_SIZES = ("size_inch", "size_metric", "grade", "legs")
"""Roles whose values say what they are without the name of their column."""
_METRIC_TWINS = ("size_metric", "size_metric_printed")
_ANGLES = ("angle", "angle_from_vertical", "angle_from_horizontal")
_DEGREES = {"temperature_celsius": " °C", "temperature_fahrenheit": " °F", **dict.fromkeys(_ANGLES, "°")}
"""Roles in degrees, and the mark behind their values."""


@dataclass(frozen=True)
class Made:
    """A value in another unit, computed here from the printed one."""

    text: str
    unit: str = ""
    exact: bool = False


@dataclass(frozen=True)
class Shown:
    """One printed value in a cell: the row's number in the file, its text and unit, and computed companions. A range
    stands for two rows. `choice` is "ours" where sources differ and this is the one our verdicts take, "other" where it
    is one they do not take, empty where nothing is in dispute.
    """

    number: int
    claim: str
    value: str
    unit: str
    checked: str
    made: tuple[Made, ...]
    long: bool
    rows: int = 1
    choice: str = ""
    printed_unit: str = ""


@dataclass(frozen=True)
class Piece:
    """One text of a cell: a printed value or one worked out from it, and for which readers it stands first and large."""

    text: str
    made: bool
    about: bool
    checked: str
    number: int | None
    us_leads: bool
    si_leads: bool


@dataclass(frozen=True)
class Link:
    """What of a cell stands in one place of one source; `number` is that of its first row in the file."""

    claim: str
    number: int
    pieces: tuple[Piece, ...]
    choice: str


@dataclass(frozen=True)
class Column:
    """A value column: its heading, how that begins where the page says once what angles are taken from, the units in it,
    and the keys it stands for.
    """

    keys: tuple[tuple[str, str], ...]
    heading: str
    short: str
    small: str
    wordy: bool


@dataclass(frozen=True)
class Line:
    """One line of the wide table."""

    keys: tuple[tuple[str, str], ...]
    heads: tuple[str, ...]
    cells: tuple[tuple[Shown, ...], ...]
    source: str
    places: tuple[str, ...] = ()


@dataclass(frozen=True)
class Wide:
    """A wide table under one caption."""

    caption: str
    keys: tuple[tuple[str, str], ...]
    head_names: tuple[str, ...]
    columns: tuple[Column, ...]
    lines: tuple[Line, ...]
    by_source: bool
    aside: int = 0

    @property
    def listed(self) -> bool:
        """One value to a line, with words beside it: on a narrow screen each line reads as a block of its own."""
        return _is_list(
            len(self.columns), self.by_source, len(self.head_names), any(c.wordy for c in self.columns)
        )


@dataclass(frozen=True)
class Claim:
    """A place in a source, how it was read, and the note; many values may come from one."""

    key: str
    source: str
    source_title: str
    source_short: str
    locator: str
    checked: str
    note: Spans
    count: int


@dataclass(frozen=True)
class Sift:
    """A filter a reader can set: the key, its name, and the values in the order of the table."""

    key: str
    label: str
    options: tuple[tuple[str, str], ...]
    role: str


@dataclass(frozen=True)
class View:
    """Everything a look-up page shows of one table; `cautions` by kind and words."""

    name: str
    title: str
    description: str
    group: str
    use: str
    wides: tuple[Wide, ...]
    claims: tuple[Claim, ...]
    sifts: tuple[Sift, ...]
    notes: tuple[Spans, ...]
    cautions: tuple[tuple[str, Spans], ...]
    rows: int
    counts: dict[str, int] = field(default_factory=dict)
    has_made: bool = False
    has_choice: bool = False
    has_gaps: bool = False


def _is_list(columns: int, by_source: bool, heads: int, wordy: bool) -> bool:
    return columns == 1 and (by_source or heads > 1 or wordy)


def source_row(key: str) -> Row:
    """The card of a source; a missing one stops the build."""
    return table("sources").one(key=key)


def source_short(key: str) -> str:
    """A source's title, short enough for a line of a table. One that is too long gives way to its number, if it has one;
    one that tells little by itself (`Steelworker`) says who published it.
    """
    if wording.has(f"short-{key}"):
        return wording.say(f"short-{key}")
    row = source_row(key)
    title = row["title"]
    for mark in (" (", ", ", ": "):
        title = title.split(mark)[0]
    if len(title) < _TELLS_LITTLE and not source_number(key):
        publisher = re.split(r" \(|, |; ", row["publisher"])[0]
        together = f"{title}, {publisher}"
        return together if publisher and publisher not in title and len(together) <= _SHORT_TITLE else title
    if source_number(key):
        return source_number(key)
    return title if len(title) <= _SHORT_TITLE else title[: _SHORT_TITLE - 2].rsplit(" ", 1)[0] + "…"


def source_number(key: str) -> str:
    """The number a source is known by (29 CFR 1910.184, ASTM A370, DGUV Regel 109-017), for a column's heading."""
    found = _NUMBERED.match(source_row(key)["title"])
    return found[0] if found else ""


_OSHA = re.compile(r"29 CFR (?:Part )?(19\d\d)")


def cited_shortly(key: str, place: str) -> str:
    """A source and a place in it as people cite them in a sentence: `OSHA 1910.184(e)(6)`, `OSHA sling tables, Table 1`.

    The parts of the federal safety code are named by the agency that shops know; a source that its number does not name
    is cited by its short name. The full title stands on the page of sources.
    """
    if place.casefold().startswith("common practice"):
        return place
    title = source_row(key)["title"]
    if _OSHA.match(title):
        return short_citation(_OSHA.sub(r"OSHA \1", title), place)
    in_full = short_citation(title, place).startswith(title)
    if in_full and wording.has(f"short-{key}"):
        return f"{wording.say(f'short-{key}')}, {place}"
    return short_citation(title, place)


def key_text(name: str, key: str, value: str) -> str:
    """What a key means to a reader: grade 70, 3/8 in, 2 legs, 45 degrees. Words of the catalogue come first; else the
    role of the column says how its values are written. A word without words stops the build.
    """
    if not value:
        return table_words.text(name, "key-any")
    if key == "quantity":
        return table_words.quantity(name, value)
    if table_words.has(name, words := table_words.word_key(key, value)):
        return table_words.text(name, words)
    if key == "source":
        return source_short(value)
    column = declared(name).columns[key]
    if column.role == "grade" and (value.isdigit() or len(value) == 1):
        return table_words.writer(name).text("key-grade", grade=value)
    if column.role == "name":
        return value[0].upper() + value[1:]
    if column.role in ("mark", "key"):
        return value
    if measure := _measure_text(column, value):
        return measure
    if column.role == "number" or size_number(value) is not None:
        return f"{table_words.heading(name, key)} {value}"
    return table_words.text(name, words)  # refused by name: there are none


def _measure_text(column: DeclaredColumn, value: str) -> str:
    """A size, an angle or a temperature with its unit; nothing for any other role."""
    if column.role == "thread":
        return f"{value} in" if size_number(value) is not None else value
    if unit := _MEASURES.get(column.role):
        return f"{value} {unit}"
    if column.role in _ANGLES:
        return f"{value.replace('-', ' to ')}°"
    if column.role in _DEGREES:
        return f"{value.replace('-', '−')}{_DEGREES[column.role]}"
    return ""


def row_text(name: str, row: Row) -> str:
    """All keys of a row in words, for a line that stands alone: `Grade 70, 3/8 in`."""
    said = declared(name)
    shown = {*said.layout.rows, *said.layout.columns} - {"quantity", "unit", "source", "default"}
    if any(row.get(key) for key in said.with_role("size_inch")):
        shown -= set(said.with_role(*_METRIC_TWINS))  # the same size again
    upright = said.with_role("angle_from_vertical")
    return ", ".join(
        _alone(name, key, row[key])
        for key in said.columns
        if key in shown and row.get(key) and not (key in upright and row[key] == "0")
    )


def _alone(name: str, key: str, value: str) -> str:
    text, title = key_text(name, key, value), table_words.heading(name, key)
    role = declared(name).columns[key].role
    if role in _SIZES or title.lower() in text.lower():
        return text
    if role in _ANGLES:
        return _with_its_zero(name, role, text)
    return f"{title} {text}" if text[:1].isdigit() or len(text) < 4 else text


def _with_its_zero(name: str, role: str, text: str) -> str:
    """An angle with what it is taken from."""
    if role == "angle":
        return text
    return table_words.writer(name).text(f"key-{role.replace('_', '-')}", angle=text)


def size_number(text: str) -> float | None:
    """A shop size as a number, or None for words."""
    try:
        return number({"value": text})
    except (NoSuchRow, KeyError):
        return None


def companions(name: str, row: Row) -> tuple[Made, ...]:
    """A row's value in the other unit system, rounded to the safe side: what a part may carry down, what it must at least
    measure up, as the sense of its quantity says.
    """
    if row["unit"] not in COMPANIONS:
        return ()
    dimension, others = COMPANIONS[row["unit"]]
    try:
        value_si = to_si(number(row), row["unit"], dimension)
    except NoSuchRow:
        return ()
    direction = ROUNDING[_SENSES[declared(name).sense(row)]]
    return tuple(
        Made(
            _in_unit(value_si, dimension, other, direction),
            other,
            exact=(row["unit"], other) == ("short_ton", "lb")
            and abs(from_si(value_si, other, dimension) - round(from_si(value_si, other, dimension))) < 1e-6,
        )
        for other in others
    )


def _in_unit(value_si: float, dimension: str, unit: str, direction: Rounding) -> str:
    value = from_si(value_si, unit, dimension)
    if unit == "in":
        return f"{round_to(value, 3, direction):.3g} in"
    if dimension == "temperature":
        return show_in(to_si(_whole(value, direction), unit, dimension), dimension, unit, 4)
    return show_in(value_si, dimension, unit, 3, direction)


def _whole(value: float, direction: Rounding) -> int:
    """The whole number on the safe side; 80.00000000000001, which a conversion leaves of 80, is 80."""
    steady = round(value, 9)
    return (
        round(steady)
        if direction == "nearest"
        else (math.floor if direction == "down" else math.ceil)(steady)
    )


def view(name: str, **conditions: str) -> View:
    """The look-up page of table `name`, or of those of its rows that hold the given texts."""
    said = declared(name)
    data = table(name)
    rows = [(i, row) for i, row in enumerate(data.rows) if all(row[k] == v for k, v in conditions.items())]
    if not rows:
        raise NoSuchRow(f"table {name} has no row for {conditions}")
    claims, claim_of = _claims(name, rows)
    choices = _choices(rows, said.compare)
    rows = _together(rows, said.compare)
    row_keys = sorted((k for k in said.layout.rows if k != "default"), key=lambda k: k in said.layout.aside)
    # What was asked for stands over the table, not once more in each of its lines.
    row_keys = [k for k in row_keys if k not in conditions] or row_keys
    column_keys = [k for k in said.layout.columns if k != "unit"]
    if len({row.get("quantity", "") for _, row in rows}) == 1:
        row_keys = [k for k in row_keys if k != "quantity"]
        column_keys = [k for k in column_keys if k != "quantity"]
    if _wants_long_form(rows, row_keys, column_keys):
        row_keys, column_keys = row_keys + [k for k in column_keys if k != "source"], []
        if len({row["source"] for _, row in rows}) > 1 and "source" not in row_keys:
            row_keys.append("source")
    sheet = _Sheet(said, claim_of, choices, printed_pairs="unit" in said.layout.columns)
    wides = _wides(sheet, rows, row_keys, column_keys)
    counts: dict[str, int] = defaultdict(int)
    for _, row in rows:
        counts[row["checked"]] += 1
    few = all(wide.listed for wide in wides) and sum(len(wide.lines) for wide in wides) <= _SOON_READ
    asked = [] if few else [k for k in said.filters if k in row_keys + column_keys]
    sifts = _sifts(name, asked, rows)
    return View(
        name=name,
        title=table_words.question(name),
        description=table_words.description(name),
        group=said.group,
        use=said.use,
        wides=wides,
        claims=claims,
        sifts=sifts,
        notes=tuple(table_words.note(name, key) for key in said.notes),
        cautions=tuple((one.kind, table_words.say(name, f"caution-{one.key}")) for one in said.cautions),
        rows=len(rows),
        counts=dict(counts),
        has_made=any(s.made for w in wides for line in w.lines for cell in line.cells for s in cell),
        has_choice=bool(choices),
        has_gaps=any(not cell for w in wides for line in w.lines for cell in line.cells),
    )


def _compared(row: Row, keys: tuple[str, ...]) -> tuple[str, ...]:
    """What a row speaks of: rows that speak of the same thing can be held against each other."""
    if keys:
        return tuple(row[key] for key in keys)
    skip = ("default", "sense", "value", "unit", "source", "locator", "checked", "note")
    return tuple(value for key, value in row.items() if key not in skip)


def _choices(rows: list[tuple[int, Row]], keys: tuple[str, ...]) -> dict[int, str]:
    """Which rows our verdicts take ("ours") and which they do not ("other"), where sources differ. `keys` (the
    declaration's `compare`) says what rows have in common where that is less than all their keys; values may then be of
    different kinds (a thickness beside a wear), so only ours are named.
    """
    said: dict[tuple[str, ...], set[str]] = defaultdict(set)
    for _, row in rows:
        said[_compared(row, keys)].add(row.get("default", ""))
    chosen = {}
    for index, row in rows:
        default = row.get("default", "")
        if default == "no" and not keys:
            chosen[index] = "other"
        elif default == "yes" and "no" in said[_compared(row, keys)]:
            chosen[index] = "ours"
    return chosen


def _together(rows: list[tuple[int, Row]], keys: tuple[str, ...]) -> list[tuple[int, Row]]:
    """Rows that speak of the same thing stand together, the one our verdicts take first."""
    if not rows or "default" not in rows[0][1] or keys:
        return rows
    first: dict[tuple[str, ...], int] = {}
    for place, (_, row) in enumerate(rows):
        first.setdefault(_compared(row, keys), place)
    return sorted(rows, key=lambda pair: (first[_compared(pair[1], keys)], pair[1]["default"] != "yes"))


def _wants_long_form(rows: list[tuple[int, Row]], row_keys: list[str], column_keys: list[str]) -> bool:
    """Words do not fit a grid; and a grid of sources that is mostly empty reads better as a list."""
    if not column_keys:
        return False
    if any(row["unit"] == "text" and len(row["value"]) > _SHORT_TEXT for _, row in rows):
        return True
    if "source" not in column_keys:
        return False
    lines = {tuple(row[k] for k in row_keys) for _, row in rows}
    columns = {tuple(row[k] for k in column_keys) for _, row in rows}
    return len(columns) > _FEW_SOURCES and (
        len(lines) <= _FEW_LINES or len(rows) < _SPARSE * len(lines) * len(columns)
    )


def _claims(name: str, rows: list[tuple[int, Row]]) -> tuple[tuple[Claim, ...], dict[int, str]]:
    grouped: dict[tuple[str, str, str, str], list[int]] = defaultdict(list)
    for index, row in rows:
        grouped[(row["source"], row["locator"], row["checked"], row["note"])].append(index)
    claims = []
    claim_of: dict[int, str] = {}
    for place, ((source, locator, checked, note), members) in enumerate(grouped.items(), start=1):
        key = f"s-{place}"
        claims.append(
            Claim(
                key,
                source,
                source_row(source)["title"],
                source_short(source),
                locator,
                checked,
                table_words.note(name, note),
                len(members),
            )
        )
        claim_of.update(dict.fromkeys(members, key))
    return tuple(claims), claim_of


def _sifts(name: str, keys: list[str], rows: list[tuple[int, Row]]) -> tuple[Sift, ...]:
    sifts = []
    for key in keys:
        values = list(dict.fromkeys(row[key] for _, row in rows if row[key]))
        if len(values) < 2 or len(values) > 90:
            continue
        options = tuple((value, _plain(name, key, value)) for value in _in_order(values))
        if len(options) > _LONG_CHOICE and any(size_number(value) is None for value in values):
            options = tuple(sorted(options, key=lambda option: option[1].lower()))
        sifts.append(Sift(key, table_words.heading(name, key), options, declared(name).columns[key].role))
    return tuple(sifts)


def _in_order(values: list[str]) -> list[str]:
    numbers = [size_number(value) for value in values]
    if all(n is not None for n in numbers):
        return [
            value for _, value in sorted(zip(numbers, values, strict=True), key=lambda pair: pair[0] or 0.0)
        ]
    return values


@dataclass(frozen=True)
class _Sheet:
    """What every line of one page needs: the declaration, which claim a row belongs to, which rows our verdicts take, and
    whether the source prints both systems itself.
    """

    declared: Declaration
    claim_of: dict[int, str]
    choices: dict[int, str]
    printed_pairs: bool

    @property
    def name(self) -> str:
        """The name of the table."""
        return self.declared.name

    @property
    def usual(self) -> str:
        """The quantity that the table is looked up for; it is said above the table and in no heading."""
        return usual_quantity(self.declared)


def usual_quantity(said: Declaration) -> str:
    """The rating of a table that has one kind of rating; empty for any other table."""
    ratings = [quantity.name for quantity in said.quantities.values() if quantity.rating]
    return ratings[0] if len(ratings) == 1 else ""


def zero_of_angles(said: Declaration) -> str:
    """The role of the leg angles in a table (`angle_from_vertical`), if it has such columns."""
    return next((said.columns[k].role for k in said.layout.columns if said.columns[k].role in _ANGLES), "")


def _wides(
    sheet: _Sheet, rows: list[tuple[int, Row]], row_keys: list[str], column_keys: list[str]
) -> tuple[Wide, ...]:
    rows = [(i, _with_range_end(sheet.declared, row)) for i, row in rows]
    if "quantity" in column_keys and len({row["quantity"] for _, row in rows}) == 1:
        column_keys = [k for k in column_keys if k != "quantity"]
    columns = list(dict.fromkeys(tuple((k, row[k]) for k in column_keys) for _, row in rows))
    rank = {k: _in_order(list(dict.fromkeys(row[k] for _, row in rows))) for k in column_keys}
    if "source" in rank:
        taken = Counter(row["source"] for _, row in rows if row.get("default") == "yes")
        rank["source"].sort(
            key=lambda source: -taken[source]
        )  # what our verdicts take stands next to the size
    for key in column_keys:
        if sheet.declared.columns[key].role == "angle_from_horizontal":
            rank[key].reverse()  # the steeper leg is the better one, and asked for first
        lead = sheet.declared.layout.lead
        rank[key].sort(key=lambda value: lead.index(value) if value in lead else len(lead))
    columns.sort(key=lambda keys: [rank[k].index(v) for k, v in keys])
    if len(columns) > _MANY_COLUMNS and len(column_keys) > 1 and 1 < len(rank[column_keys[0]]) <= _MOST_PARTS:
        parts: list[tuple[tuple[tuple[str, str], ...], list[tuple[tuple[str, str], ...]]]] = [
            (((column_keys[0], value),), [c for c in columns if c[0][1] == value])
            for value in rank[column_keys[0]]
        ]
    else:
        parts = [((), columns)]
    wides = []
    for fixed, chosen in parts:
        inside = [(i, row) for i, row in rows if all(row[k] == v for k, v in fixed)]
        wides.append(_one_wide(sheet, inside, row_keys, fixed, chosen))
    return tuple(wides)


def _with_range_end(declared: Declaration, row: Row) -> Row:
    """The row with the two ends of a range under one quantity, so that they stand in one cell; `range_end` says which
    end it is.
    """
    quantity = declared.quantities.get(row.get("quantity", ""))
    if quantity is None or not quantity.range:
        return {**row, "range_end": ""}
    return {**row, "quantity": quantity.range, "range_end": quantity.end, "quantity_printed": quantity.name}


def _one_wide(
    sheet: _Sheet,
    rows: list[tuple[int, Row]],
    row_keys: list[str],
    fixed: tuple[tuple[str, str], ...],
    columns: list[tuple[tuple[str, str], ...]],
) -> Wide:
    name = sheet.name
    lines_of: dict[tuple[str, ...], dict[tuple[tuple[str, str], ...], list[tuple[int, Row]]]] = {}
    for index, row in rows:
        line = lines_of.setdefault(tuple(row[k] for k in row_keys), {})
        line.setdefault(tuple((k, row[k]) for k, _ in columns[0]) if columns[0] else (), []).append(
            (index, row)
        )
    ordered = list(lines_of)
    if row_keys and all(size_number(keys[0]) is not None for keys in ordered):
        ordered.sort(key=lambda keys: size_number(keys[0]) or 0.0)
    elif sheet.declared.layout.order == "alphabet":
        ordered.sort(key=lambda keys: _plain(name, row_keys[0], keys[0]).lower())
    else:
        ordered = _side_by_side(ordered, row_keys)
    lead = sheet.declared.layout.lead
    ordered.sort(key=lambda keys: lead.index(keys[0]) if keys and keys[0] in lead else len(lead))
    by_source = "source" in row_keys[1:]
    heads_of, head_names = _heads(name, row_keys)
    lines = tuple(
        Line(
            tuple(zip(row_keys, keys, strict=True)),
            heads_of(keys),
            tuple(_cell(sheet, lines_of[keys].get(column, [])) for column in columns),
            rich(source_short(keys[row_keys.index("source")])) if by_source else "",
            places_of(keys[row_keys.index("source")]) if by_source else (),
        )
        for keys in ordered
    )
    made = []
    for place, column in enumerate(columns):
        units = list(dict.fromkeys(s.unit for line in lines for s in line.cells[place] if s.unit))
        units.sort(key=lambda u: (u not in ("short tons", "lb", "in", "lb/ft³", "°F"), u))
        raw = {row["unit"] for keys in ordered for _, row in lines_of[keys].get(column, [])}
        wordy = any(s.long for line in lines for s in line.cells[place])
        mixed = len({COMPANIONS.get(unit, (unit,))[0] for unit in raw}) > 1
        if mixed or _is_list(len(columns), by_source, len(head_names), wordy):
            units = []  # a heading that named them all would say nothing, or is not seen: each value carries its own
        said = [pair for pair in column if pair not in fixed]
        if len(said) > 1:
            said = [pair for pair in said if pair != ("quantity", sheet.usual)]
        heading = _column_heading(name, said) or _value_heading(name, rows)
        short = _column_heading(name, said, zero=False) or heading
        made.append(
            Column(column, heading, short if heading.startswith(short) else heading, ", ".join(units), wordy)
        )
    caption = ", ".join(key_text(name, k, v) for k, v in fixed)
    aside = sum(table_words.heading(name, key) in head_names for key in sheet.declared.layout.aside)
    return Wide(caption, fixed, head_names, tuple(made), lines, by_source, aside)


def _side_by_side(ordered: list[tuple[str, ...]], row_keys: list[str]) -> list[tuple[str, ...]]:
    """Lines of one thing stand together, and within it those of one quantity, so that sources that differ are met side by
    side; apart from that the order is the file's.
    """
    shared = [place for place, key in enumerate(row_keys) if key not in ("source", "default")]
    first: dict[tuple[str, ...], int] = {}
    for at, keys in enumerate(ordered):
        for depth in range(1, len(shared) + 1):
            first.setdefault(tuple(keys[place] for place in shared[:depth]), at)
    return sorted(
        ordered,
        key=lambda keys: [
            first[tuple(keys[place] for place in shared[:depth])] for depth in range(1, len(shared) + 1)
        ],
    )


def _pair_of(sheet: Declaration, key: str, held: Iterable[str]) -> str:
    """The column that is the other end of the range that `key` begins or ends, if it is among those held."""
    column = sheet.columns.get(key)
    if column is None or not column.end:
        return ""
    other = "to" if column.end == "from" else "from"
    return next(
        (k for k in held if sheet.columns[k].role == column.role and sheet.columns[k].end == other), ""
    )


def _column_heading(name: str, keys: list[tuple[str, str]], *, zero: bool = True) -> str:
    """A column's keys in words: `2 legs, straight, 0 to 45° from the vertical`; the two ends of a range stand together.
    `zero`: whether it says what an angle is taken from.
    """
    said: list[str] = []
    held, about = dict(keys), declared(name)
    for key, value in keys:
        pair = _pair_of(about, key, held)
        if pair and about.columns[key].end == "to":
            continue
        text = (source_number(value) if key == "source" else "") or key_text(name, key, value)
        if pair:
            low = value.replace("-", "−")
            text = table_words.writer(name).text("key-to", low=low, high=key_text(name, pair, held[pair]))
        role = about.columns[key].role
        if zero and role in _ANGLES and value not in ("0", "90", ""):
            text = _with_its_zero(name, role, text)
        if said and key != "source" and text[1:2].islower():
            text = text[0].lower() + text[1:]
        said.append(text)
    return ", ".join(said)


def _plain(name: str, key: str, value: str) -> str:
    """A key's words where its name stands beside or above: without that name again, with its unit if it has one."""
    column = declared(name).columns[key]
    if column.role == "number" and not table_words.has(name, table_words.word_key(key, value)):
        return f"{value} {unit_text(column.unit)}" if column.unit else value
    if column.role == "word" and size_number(value) is not None:
        return (
            table_words.text(name, words)
            if table_words.has(name, words := table_words.word_key(key, value))
            else value
        )
    return key_text(name, key, value)


def _value_heading(name: str, rows: list[tuple[int, Row]]) -> str:
    quantities = {row.get("quantity", "") for _, row in rows}
    in_words = all(row["unit"] == "text" for _, row in rows)
    if in_words and any(len(row["value"]) > _SHORT_TEXT for _, row in rows):
        return table_words.text(name, "value-in-words")
    if len(quantities) == 1:
        return table_words.quantity(name, quantities.pop())
    return table_words.heading(name, "value")


def _heads(name: str, row_keys: list[str]) -> tuple[Any, tuple[str, ...]]:
    """How the row keys are written, and their headings. An inch size takes its metric twin beside it, and the two ends
    of a range stand together.
    """
    groups: list[tuple[str, ...]] = []
    for key in [key for place, key in enumerate(row_keys) if key != "source" or not place]:
        if groups and len(groups[-1]) == 1 and _stand_together(declared(name), groups[-1][0], key):
            groups[-1] = (*groups[-1], key)
        else:
            groups.append((key,))

    def heads(keys: tuple[str, ...]) -> tuple[str, ...]:
        held = dict(zip(row_keys, keys, strict=True))
        return tuple(_head(name, group, held) for group in groups)

    names = tuple(_head_name(name, group) for group in groups)
    return heads, names


def _stand_together(about: Declaration, before: str, key: str) -> bool:
    """Whether a column is written into the one before it: the metric twin of an inch size, Celsius beside Fahrenheit, the
    upper end of a range.
    """
    first, second = about.columns[before], about.columns[key]
    return (
        (first.role == "size_inch" and second.role in _METRIC_TWINS)
        or (first.role == "temperature_fahrenheit" and second.role == "temperature_celsius")
        or (first.role == second.role and (first.end, second.end) == ("from", "to"))
    )


def _head_name(name: str, group: tuple[str, ...]) -> str:
    if len(group) == 2 and declared(name).columns[group[0]].end:
        return table_words.range_heading(name, group[0])
    return table_words.heading(name, group[0])


def _head(name: str, group: tuple[str, ...], held: dict[str, str]) -> str:
    first = held[group[0]]
    if len(group) == 1:
        return rich(_plain(name, group[0], first)) if first else rich(key_text(name, group[0], first))
    second = held[group[1]]
    column = declared(name).columns[group[0]]
    if column.end:
        return rich(_range_text(name, first, second, _DEGREES.get(column.role, "")).replace("-", "−"))
    if column.role == "size_inch":
        metric = f"{second} mm" if size_number(second) is not None or " x " in second else second
        return f"{rich(first)} in <small>{rich(metric)}</small>" if first else rich(metric)
    return f"{key_text(name, group[0], first)} <small>{key_text(name, group[1], second)}</small>"


def _range_text(name: str, low: str, high: str, unit: str = "") -> str:
    """`1 to 2`, `from 1` or `up to 2`."""
    say = table_words.writer(name).text
    if low and high:
        return say("key-to", low=low, high=f"{high}{unit}")
    return say("key-from", low=f"{low}{unit}") if low else say("key-up-to", high=f"{high}{unit}")


def _cell(sheet: _Sheet, rows: list[tuple[int, Row]]) -> tuple[Shown, ...]:
    by_unit: dict[str, list[tuple[int, Row]]] = {}
    for index, row in sorted(rows, key=lambda pair: (pair[1]["unit"] not in SYSTEM_ORDER, pair[0])):
        by_unit.setdefault(row["unit"], []).append((index, row))
    paired = sheet.printed_pairs and len(by_unit) > 1
    shown: list[Shown] = []
    for same_unit in by_unit.values():
        low = [pair for pair in same_unit if pair[1]["range_end"] == "from"]
        high = [pair for pair in same_unit if pair[1]["range_end"] == "to"]
        if len(low) == len(high) == 1 and sheet.claim_of[low[0][0]] == sheet.claim_of[high[0][0]]:
            shown.append(_range(sheet, low[0], high[0], paired))
            same_unit = [pair for pair in same_unit if not pair[1]["range_end"]]
        for index, row in same_unit:
            value = row["value"]
            if row["range_end"]:
                low_end = row["range_end"] == "from"
                value = _range_text(sheet.name, *((value, "") if low_end else ("", value)))
            shown.append(
                Shown(
                    index,
                    sheet.claim_of[index],
                    value,
                    unit_name(row["unit"]),
                    row["checked"],
                    () if paired else companions(sheet.name, _as_printed(row)),
                    row["unit"] == "text" and len(row["value"]) > _SHORT_TEXT,
                    choice=sheet.choices.get(index, ""),
                    printed_unit=row["unit"],
                )
            )
    return tuple(shown)


US_UNITS = (
    "lb",
    "lbf",
    "short_ton",
    "in",
    "ft",
    "in2",
    "ft2",
    "lb/ft",
    "lb/ft3",
    "degF",
    "ksi",
    "psi",
    "ft_lb",
    "kJ/in",
)
SI_UNITS = (
    "kg",
    "t",
    "kN",
    "N",
    "daN",
    "mm",
    "m",
    "mm2",
    "m2",
    "kg/m",
    "kg/m3",
    "degC",
    "MPa",
    "N/mm2",
    "GPa",
    "N_m",
)
_NOT_FIRST = ("short_ton",)
"""A unit that another of its system stands before: a short ton is easily taken for a metric one."""


def links(cell: tuple[Shown, ...]) -> tuple[Link, ...]:
    """What a cell shows, by the places that it comes from: US readers meet pounds and inches first, others kilograms and
    millimetres; the other value stands small beneath, and one worked out here keeps its sign.
    """
    together = len({one.claim for one in cell}) == 1
    groups = [cell] if together and cell else [(one,) for one in cell]
    return tuple(
        Link(group[0].claim, group[0].number, _pieces(group, together), group[0].choice) for group in groups
    )


def _pieces(group: tuple[Shown, ...], together: bool) -> tuple[Piece, ...]:
    texts: list[tuple[str, bool, bool, str, int | None, str]] = []
    for place, one in enumerate(group):
        number = one.number if together and place else None
        texts.append((_with_unit(one), False, False, one.checked, number, one.printed_unit))
        texts += [(made.text, True, not made.exact, one.checked, None, made.unit) for made in one.made]
    units = [text[5] for text in texts]
    us, si = _first_of(units, US_UNITS), _first_of(units, SI_UNITS)
    return tuple(Piece(*text[:5], at == us, at == si) for at, text in enumerate(texts))


def _first_of(units: list[str], wanted: tuple[str, ...]) -> int:
    """The place of the first unit of a system; of the printed value where there is none."""
    plain = [at for at, unit in enumerate(units) if unit in wanted and unit not in _NOT_FIRST]
    other = [at for at, unit in enumerate(units) if unit in wanted]
    return (plain or other or [0])[0]


def _with_unit(one: Shown) -> str:
    value = f"−{one.value[1:]}" if one.value[:1] == "-" else one.value
    if one.printed_unit == "short_ton":
        return measured(value, one.printed_unit)
    return f"{value}{'' if one.unit in ('', '%', '°') else ' '}{one.unit}"


def _as_printed(row: Row) -> Row:
    """The row under the quantity that its file has."""
    return {**row, "quantity": row.get("quantity_printed", row["quantity"])}


def _range(sheet: _Sheet, low: tuple[int, Row], high: tuple[int, Row], paired: bool) -> Shown:
    (index, first), (_, last) = low, high
    same = first["value"] == last["value"]
    value = first["value"] if same else _range_text(sheet.name, first["value"], last["value"])
    made = () if paired else companions(sheet.name, _as_printed(first))
    if made and not same:
        made = tuple(
            Made(_range_text(sheet.name, a.text.split(" ")[0], b.text), a.unit)
            for a, b in zip(made, companions(sheet.name, _as_printed(last)), strict=True)
        )
    return Shown(
        index, sheet.claim_of[index], value, unit_name(first["unit"]), first["checked"], made, False, rows=2,
        printed_unit=first["unit"],
    )  # fmt: skip
