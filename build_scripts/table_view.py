"""Turns a long table (one claim a row) into what a reader sees: a wide table, its sources, and the words around it.

The descriptor of the tables says how each is laid out (custom property `linkwright`); nothing here knows a single
table by name. Values are the source's own text. A value in the other unit system is shown beside it: the source's
own where it prints one, else computed here and marked with the sign for "about".
"""

from __future__ import annotations

import re
from collections import Counter, defaultdict
from dataclasses import dataclass, field
from typing import Any

from build_scripts.markup import rich, unit_name, words
from calc.quantities import from_si, show_in, to_si
from calc.tables import NoSuchRow, Row, Table, number, package, table

USE_WORDS = {
    "lift": "For lifting",
    "lifting_gear": "About lifting gear. No rating stands in this table.",
    "tie_down": "For tying down only. Never for lifting.",
    "neither": "Neither for lifting nor for tying down: a table to judge or reckon by.",
    "reckon": "To reckon by. No rating stands in this table.",
    "mixed": "Lifting and tie-down stand apart in this table: read which one a row is for.",
}
"""What a table's figures may be used for, in words."""

RATING_QUANTITIES = ("working_load_limit", "working_load", "sling_vertical", "sling_choker")

# Companion units: dimension, and the unit of the other system in which a value is shown as well.
COMPANIONS: dict[str, tuple[str, tuple[str, ...]]] = {
    "lb": ("weight", ("kg",)), "kg": ("weight", ("lb",)), "short_ton": ("weight", ("lb", "kg")), "t": ("weight", ("lb",)),
    "in": ("length", ("mm",)), "mm": ("length", ("in",)), "ft": ("length", ("m",)), "lb/ft3": ("density", ("kg/m3",)),
    "kg/m3": ("density", ("lb/ft3",)), "degF": ("temperature", ("degC",)), "degC": ("temperature", ("degF",)),
    "kN": ("force", ("lbf",)), "lbf": ("force", ("kN",)), "lb/ft": ("weight_per_length", ("kg/m",)),
    "kg/m": ("weight_per_length", ("lb/ft",)), "ksi": ("pressure", ("MPa",)), "N/mm2": ("pressure", ("ksi",)),
    "MPa": ("pressure", ("ksi",)), "psi": ("pressure", ("MPa",)),
}  # fmt: skip
SYSTEM_ORDER = ("short_ton", "lb", "lbf", "in", "lb/ft3", "degF")
_SHORT_TEXT = 26
_SHORT_TITLE, _TELLS_LITTLE = 48, 18
_NUMBERED = re.compile(
    r"\d+ CFR (Part )?[\d.]+|WAC [\d-]+|(DOE|MIL)-STD-[\dA-Z-]+|ASTM [A-Z]\d+|ASME [A-Z][\d.]+\d|EN [\d-]+"
    r"|ISO [\d-]+|DGUV \w+ [\d-]+|AASHTO \w+ \d+"
)
_MANY_COLUMNS = 8
_MOST_PARTS = 8
_FEW_SOURCES = 3
_SPARSE = 0.55
_FEW_LINES = 3
_SOON_READ = 12
_LONG_CHOICE = 15
_RANGE_ENDS = (("minimum", "maximum"), ("_low", "_high"), ("_from", "_to"))


@dataclass(frozen=True)
class Made:
    """A value in another unit, computed here from the printed one."""

    text: str


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


@dataclass(frozen=True)
class Column:
    """A value column: its heading, the units in it, and the keys it stands for."""

    keys: tuple[tuple[str, str], ...]
    heading: str
    small: str
    wordy: bool


@dataclass(frozen=True)
class Line:
    """One line of the wide table."""

    keys: tuple[tuple[str, str], ...]
    heads: tuple[str, ...]
    cells: tuple[tuple[Shown, ...], ...]
    source: str


@dataclass(frozen=True)
class Wide:
    """A wide table under one caption."""

    caption: str
    keys: tuple[tuple[str, str], ...]
    head_names: tuple[str, ...]
    columns: tuple[Column, ...]
    lines: tuple[Line, ...]
    by_source: bool

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
    has_choice: bool = False


def _is_list(columns: int, by_source: bool, heads: int, wordy: bool) -> bool:
    return columns == 1 and (by_source or heads > 1 or wordy)


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
    """A source's title, short enough for a line of a table. One that is too long gives way to its number, if it has one;
    one that tells little by itself (`Steelworker`) says who published it.
    """
    row = source_row(key)
    title = row["title"]
    for mark in (" (", ", ", ": "):
        title = title.split(mark)[0]
    if len(title) < _TELLS_LITTLE and not source_number(key):
        publisher = re.split(r" \(|, |; ", row["publisher"])[0]
        together = f"{title}, {publisher}"
        return together if publisher and publisher not in title and len(together) <= _SHORT_TITLE else title
    if len(title) <= _SHORT_TITLE:
        return title
    return source_number(key) or title[: _SHORT_TITLE - 2].rsplit(" ", 1)[0] + "…"


def source_number(key: str) -> str:
    """The number a source is known by (29 CFR 1910.184, ASTM A370, DGUV Regel 109-017), for a column's heading."""
    found = _NUMBERED.match(source_row(key)["title"])
    return found[0] if found else ""


def field_title(name: str, key: str) -> str:
    """The heading of a column of the file, without its unit."""
    for one in resource(name)["schema"]["fields"]:
        if one["name"] == key:
            return str(one.get("title") or words(key)).split(" [")[0]
    return words(key)


def key_text(name: str, key: str, value: str) -> str:
    """What a key means to a reader: grade 70, 3/8 in, 2 legs, 45 degrees from horizontal. Where the file's own word would
    not do (an abbreviation, a size spelt with underscores), the descriptor's `words` gives the reader's.
    """
    if not value:
        return "any"
    given = resource(name).get("linkwright", {}).get("words", {}).get(key, {})
    if value in given:
        return str(given[value])
    if key == "quantity" and (band := re.fullmatch(r"(.+)_(\d+)_(\d+)", value)):
        return f"{words(band[1])}, {band[2]} to {band[3]}° from the vertical"
    if key == "grade":
        return f"Grade {value}" if value[:1].isdigit() or len(value) == 1 else words(value)
    if key == "legs":
        return {"1": "1 leg", "2": "2 legs", "endless": "Endless sling"}.get(
            value, f"{value.replace('-', ' or ')} legs"
        )
    if measure := _measure_text(key, value):
        return measure
    if key == "source":
        return source_short(value)
    if value.replace(".", "").isdigit():
        return f"{field_title(name, key)} {value}"
    if "_" in value or re.fullmatch(r"[a-z]+(-[a-z0-9]+)*", value):
        return words(value) if key != "material_name" else value[0].upper() + value[1:]
    return value[0].upper() + value[1:] if value[1:2].islower() else value


def _measure_text(key: str, value: str) -> str:
    """A size, an angle or a temperature with its unit; nothing for any other key."""
    if key.endswith(("_in", "_mm")):
        return f"{value} {key[-2:]}"
    if key.startswith("angle") and value.replace(".", "").replace("-", "").isdigit():
        return f"{value.replace('-', ' to ')}°"
    if key.endswith(("_degC", "_degF")) and value[-1:].isdigit():
        return f"{value.replace('-', '−')} °{key[-1]}"
    return f"{value} in" if key == "thread" and size_number(value) is not None else ""


def row_text(name: str, row: Row) -> str:
    """All keys of a row in words, for a line that stands alone: `Grade 70, 3/8 in`."""
    described = resource(name)
    layout = described["linkwright"]["layout"]
    shown = {*layout["rows"], *layout["columns"]} - {"quantity", "unit", "source", "default"}
    if row.get("size_in"):
        shown -= {"size_mm", "size"}  # the same size again
    keys = [one["name"] for one in described["schema"]["fields"] if one["name"] in shown]
    straight_up = ("angle_from_vertical", "0")
    return ", ".join(
        _alone(name, key, row[key]) for key in keys if row.get(key) and (key, row[key]) != straight_up
    )


def _alone(name: str, key: str, value: str) -> str:
    text = key_text(name, key, value)
    title = field_title(name, key)
    if key in ("size_in", "size_mm", "grade", "legs") or title.lower() in text.lower():
        return text
    if key.startswith("angle"):
        return f"{text} from the {'vertical' if 'vertical' in key else 'horizontal'}"
    return f"{title} {text}" if text[:1].isdigit() or len(text) < 4 else text


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
        if other == "in":
            text = f"{from_si(value_si, 'in', 'length'):.3g} in"
        elif dimension == "temperature":
            whole = round(from_si(value_si, other, dimension))
            text = show_in(to_si(whole, other, dimension), dimension, other, 4)
        else:
            text = show_in(value_si, dimension, other, 3, "down" if rating else "nearest")
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
    choices = _choices(rows, ours.get("compare"))
    rows = _together(rows, ours.get("compare"))
    row_keys = [k for k in layout["rows"] if k != "default"]
    column_keys = [k for k in layout["columns"] if k != "unit"]
    if len({row.get("quantity", "") for _, row in rows}) == 1:
        row_keys = [k for k in row_keys if k != "quantity"]
        column_keys = [k for k in column_keys if k != "quantity"]
    if _wants_long_form(rows, row_keys, column_keys):
        row_keys, column_keys = row_keys + [k for k in column_keys if k != "source"], []
        if len({row["source"] for _, row in rows}) > 1 and "source" not in row_keys:
            row_keys.append("source")
    wides = _wides(
        name, rows, row_keys, column_keys, claim_of, choices, printed_pairs="unit" in layout["columns"]
    )
    counts: dict[str, int] = defaultdict(int)
    for _, row in rows:
        counts[row["checked"]] += 1
    few = all(wide.listed for wide in wides) and sum(len(wide.lines) for wide in wides) <= _SOON_READ
    asked = [] if few else [k for k in ours.get("filters", []) if k in row_keys + column_keys]
    sifts = _sifts(name, asked, rows)
    return View(
        name=name,
        title=ours.get("question") or described["title"],
        description=described.get("description", ""),
        group=ours.get("group", ""),
        use=_use(ours.get("use", ""), data),
        wides=wides,
        claims=claims,
        sifts=sifts,
        notes=tuple(ours.get("notes", ())),
        cautions=tuple(ours.get("cautions", ())),
        rows=len(rows),
        counts=dict(counts),
        has_made=any(s.made for w in wides for line in w.lines for cell in line.cells for s in cell),
        has_choice=bool(choices),
    )


def _compared(row: Row, keys: list[str] | None) -> tuple[str, ...]:
    """What a row speaks of: rows that speak of the same thing can be held against each other."""
    if keys:
        return tuple(row[key] for key in keys)
    skip = ("default", "sense", "value", "unit", "source", "locator", "checked", "note")
    return tuple(value for key, value in row.items() if key not in skip)


def _choices(rows: list[tuple[int, Row]], keys: list[str] | None) -> dict[int, str]:
    """Which rows our verdicts take ("ours") and which they do not ("other"), where sources differ. `keys` (the
    descriptor's `compare`) says what rows have in common where that is less than all their keys; values may then be of
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


def _together(rows: list[tuple[int, Row]], keys: list[str] | None) -> list[tuple[int, Row]]:
    """Rows that speak of the same thing stand together, the one our verdicts take first."""
    if not rows or "default" not in rows[0][1] or keys:
        return rows
    first: dict[tuple[str, ...], int] = {}
    for place, (_, row) in enumerate(rows):
        first.setdefault(_compared(row, keys), place)
    return sorted(rows, key=lambda pair: (first[_compared(pair[1], keys)], pair[1]["default"] != "yes"))


def _use(declared: str, data: Table) -> str:
    """A table of mixed use in which no row is for lifting or tying down is one to reckon by; one for lifting that rates
    nothing says so, lest a proof load or a limit of wear be taken for a rating.
    """
    if declared == "lift" and not any(row.get("quantity", "") in RATING_QUANTITIES for row in data.rows):
        return "lifting_gear"
    if declared == "mixed" and not {"grade", "use", "chain"} & set(data.columns):
        return "reckon"
    return declared


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


def _sifts(name: str, keys: list[str], rows: list[tuple[int, Row]]) -> tuple[Sift, ...]:
    sifts = []
    for key in keys:
        values = list(dict.fromkeys(row[key] for _, row in rows if row[key]))
        if len(values) < 2 or len(values) > 90:
            continue
        options = tuple((value, _plain(name, key, value)) for value in _in_order(values))
        if len(options) > _LONG_CHOICE and any(size_number(value) is None for value in values):
            options = tuple(sorted(options, key=lambda option: option[1].lower()))
        sifts.append(Sift(key, field_title(name, key), options))
    return tuple(sifts)


def _in_order(values: list[str]) -> list[str]:
    numbers = [size_number(value) for value in values]
    if all(n is not None for n in numbers):
        return [
            value for _, value in sorted(zip(numbers, values, strict=True), key=lambda pair: pair[0] or 0.0)
        ]
    return values


def _wides(
    name: str,
    rows: list[tuple[int, Row]],
    row_keys: list[str],
    column_keys: list[str],
    claim_of: dict[int, str],
    choices: dict[int, str],
    printed_pairs: bool,
) -> tuple[Wide, ...]:
    rows = [(i, _with_range_end(row, rows)) for i, row in rows]
    if "quantity" in column_keys and len({row["quantity"] for _, row in rows}) == 1:
        column_keys = [k for k in column_keys if k != "quantity"]
    columns = list(dict.fromkeys(tuple((k, row[k]) for k in column_keys) for _, row in rows))
    rank = {k: _in_order(list(dict.fromkeys(row[k] for _, row in rows))) for k in column_keys}
    if "source" in rank:
        taken = Counter(row["source"] for _, row in rows if row.get("default") == "yes")
        rank["source"].sort(
            key=lambda source: -taken[source]
        )  # what our verdicts take stands next to the size
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
        wides.append(_one_wide(name, inside, row_keys, fixed, chosen, claim_of, choices, printed_pairs))
    return tuple(wides)


def _with_range_end(row: Row, rows: list[tuple[int, Row]]) -> Row:
    """The row with the two ends of a range under one quantity, so that they stand in one cell; `range_end` says which
    end it is.
    """
    quantity = row.get("quantity", "")
    names = {other.get("quantity", "") for _, other in rows}
    for low, high in _RANGE_ENDS:
        for end, twin, word in ((low, high, "from"), (high, low, "to")):
            if quantity.endswith(end) and quantity[: -len(end)] + twin in names:
                name = quantity[: -len(end)].strip("_") or "range"
                return {**row, "quantity": name, "range_end": word}
    return {**row, "range_end": ""}


def _one_wide(
    name: str,
    rows: list[tuple[int, Row]],
    row_keys: list[str],
    fixed: tuple[tuple[str, str], ...],
    columns: list[tuple[tuple[str, str], ...]],
    claim_of: dict[int, str],
    choices: dict[int, str],
    printed_pairs: bool,
) -> Wide:
    lines_of: dict[tuple[str, ...], dict[tuple[tuple[str, str], ...], list[tuple[int, Row]]]] = {}
    for index, row in rows:
        line = lines_of.setdefault(tuple(row[k] for k in row_keys), {})
        line.setdefault(tuple((k, row[k]) for k, _ in columns[0]) if columns[0] else (), []).append(
            (index, row)
        )
    ordered = list(lines_of)
    if row_keys and all(size_number(keys[0]) is not None for keys in ordered):
        ordered.sort(key=lambda keys: size_number(keys[0]) or 0.0)
    elif resource(name)["linkwright"]["layout"].get("order") == "alphabet":
        ordered.sort(key=lambda keys: _plain(name, row_keys[0], keys[0]).lower())
    else:
        ordered = _side_by_side(ordered, row_keys)
    by_source = "source" in row_keys[1:]
    heads_of, head_names = _heads(name, row_keys)
    lines = tuple(
        Line(
            tuple(zip(row_keys, keys, strict=True)),
            heads_of(keys),
            tuple(
                _cell(lines_of[keys].get(column, []), claim_of, choices, printed_pairs) for column in columns
            ),
            rich(source_short(keys[row_keys.index("source")])) if by_source else "",
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
        heading = _column_heading(name, [pair for pair in column if pair not in fixed]) or _value_heading(
            name, rows
        )
        made.append(Column(column, heading, ", ".join(units), wordy))
    caption = ", ".join(key_text(name, k, v) for k, v in fixed)
    return Wide(caption, fixed, head_names, tuple(made), lines, by_source)


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


def _column_heading(name: str, keys: list[tuple[str, str]]) -> str:
    """A column's keys in words: `2 legs, straight, 0 to 45° from the vertical`; the two ends of a range stand together."""
    said: list[str] = []
    held = dict(keys)
    for key, value in keys:
        if "_to_" in key and key.replace("_to_", "_from_") in held:
            continue
        text = (source_number(value) if key == "source" else "") or key_text(name, key, value)
        upper = key.replace("_from_", "_to_")
        if upper != key and upper in held:
            text = f"{text.split(' ')[0]} to {key_text(name, upper, held[upper])}"
        if key.startswith("angle") and value not in ("0", "90", ""):
            text += f" from the {'vertical' if 'vertical' in key else 'horizontal'}"
        if said and key != "source" and text[1:2].islower():
            text = text[0].lower() + text[1:]
        said.append(text)
    return ", ".join(said)


def _plain(name: str, key: str, value: str) -> str:
    """A key's words where its name stands beside or above: without that name again, with its unit if it has one."""
    text = key_text(name, key, value)
    if (
        key == "grade"
        or text not in (value, f"{field_title(name, key)} {value}")
        or size_number(value) is None
    ):
        return text
    title = next(str(f.get("title", "")) for f in resource(name)["schema"]["fields"] if f["name"] == key)
    unit = re.search(r"\[(in|mm|t)\]", title)
    return f"{value} {unit[1]}" if unit else value


def _value_heading(name: str, rows: list[tuple[int, Row]]) -> str:
    quantities = {row.get("quantity", "") for _, row in rows}
    if all(row["unit"] == "text" for _, row in rows):
        return (
            "What it says"
            if any(len(row["value"]) > _SHORT_TEXT for _, row in rows)
            else words(quantities.pop())
        )
    return words(quantities.pop()) if len(quantities) == 1 else field_title(name, "value")


def _heads(name: str, row_keys: list[str]) -> tuple[Any, tuple[str, ...]]:
    """How the row keys are written, and their headings. An inch size takes its metric twin beside it, and the two ends
    of a range stand together.
    """
    groups: list[tuple[str, ...]] = []
    for key in [key for place, key in enumerate(row_keys) if key != "source" or not place]:
        before = groups[-1] if groups else ()
        if (
            (before == ("size_in",) and key in ("size_mm", "size"))
            or (before == ("temperature_degF",) and key == "temperature_degC")
            or (len(before) == 1 and "_from" in before[0] and key == before[0].replace("_from", "_to"))
        ):
            groups[-1] = (*before, key)
        else:
            groups.append((key,))

    def heads(keys: tuple[str, ...]) -> tuple[str, ...]:
        held = dict(zip(row_keys, keys, strict=True))
        return tuple(_head(name, group, held) for group in groups)

    names = tuple(_head_name(name, group) for group in groups)
    return heads, names


def _head_name(name: str, group: tuple[str, ...]) -> str:
    if len(group) == 2 and group[0].startswith("temperature_from"):
        return "Temperature"
    return field_title(name, group[0]).removesuffix(" from")


def _head(name: str, group: tuple[str, ...], held: dict[str, str]) -> str:
    first = held[group[0]]
    if len(group) == 1:
        return rich(_plain(name, group[0], first)) if first else "–"
    second = held[group[1]]
    if group[1] == "temperature_degC":
        return f"{key_text(name, group[0], first)} <small>{key_text(name, group[1], second)}</small>"
    if group[0] == "size_in":
        metric = f"{second} mm" if size_number(second) is not None or " x " in second else second
        return f"{rich(first)} in <small>{rich(metric)}</small>" if first else rich(metric)
    unit = {"C": " °C", "F": " °F"}.get(
        group[0][-1] if "_deg" in group[0] else "", "°" if "angle" in group[0] else ""
    )
    if first and second:
        return rich(f"{first} to {second}{unit}".replace("-", "−"))
    return rich(f"from {first}{unit}" if first else f"up to {second}{unit}")


def _cell(
    rows: list[tuple[int, Row]], claim_of: dict[int, str], choices: dict[int, str], printed_pairs: bool
) -> tuple[Shown, ...]:
    by_unit: dict[str, list[tuple[int, Row]]] = {}
    for index, row in sorted(rows, key=lambda pair: (pair[1]["unit"] not in SYSTEM_ORDER, pair[0])):
        by_unit.setdefault(row["unit"], []).append((index, row))
    paired = printed_pairs and len(by_unit) > 1
    shown: list[Shown] = []
    for same_unit in by_unit.values():
        low = [pair for pair in same_unit if pair[1]["range_end"] == "from"]
        high = [pair for pair in same_unit if pair[1]["range_end"] == "to"]
        if len(low) == len(high) == 1 and claim_of[low[0][0]] == claim_of[high[0][0]]:
            shown.append(_range(low[0], high[0], claim_of, paired))
            same_unit = [pair for pair in same_unit if not pair[1]["range_end"]]
        for index, row in same_unit:
            value = {"from": f"from {row['value']}", "to": f"up to {row['value']}"}.get(
                row["range_end"], row["value"]
            )
            shown.append(
                Shown(
                    index,
                    claim_of[index],
                    value,
                    unit_name(row["unit"]),
                    row["checked"],
                    () if paired else companions(row),
                    row["unit"] == "text" and len(row["value"]) > _SHORT_TEXT,
                    choice=choices.get(index, ""),
                )
            )
    return tuple(shown)


def _range(low: tuple[int, Row], high: tuple[int, Row], claim_of: dict[int, str], paired: bool) -> Shown:
    (index, first), (_, last) = low, high
    same = first["value"] == last["value"]
    value = first["value"] if same else f"{first['value']} to {last['value']}"
    made = () if paired else companions(first)
    if made and not same:
        made = tuple(
            Made(f"{a.text.split(' ')[0]} to {b.text}") for a, b in zip(made, companions(last), strict=True)
        )
    return Shown(
        index, claim_of[index], value, unit_name(first["unit"]), first["checked"], made, False, rows=2
    )
