"""The charts for the wall: the tables' own figures, large, for a reader who stands some steps away with a part in his hand.

Every number is a cell of a table as it is printed there, or comes from calc. A value that nobody saw in its source's text
bears a ring, and the sheet says what that means.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise

from build_scripts import table_words
from build_scripts.markup import measured
from build_scripts.paper.gauges import CLIP_QUANTITIES, clip_row
from build_scripts.paper.sheets import RING, Arc, Caution, Cited, Drawing, Grid, Label, Line, Mark, Sheet
from build_scripts.table_view import companions, key_text
from build_scripts.wording import language
from calc.lifting.hitch_factors import choke_angle_share, choker_share
from calc.lifting.leg_geometry import LOWEST_ANGLE_DEG, angle_factor, leg_tension_n
from calc.quantities import plain_number, to_si
from calc.tables import Row, table
from calc.words.facts import Cell, Fact, Number, Place, Quantity, force
from calc.words.writer import Spans, Writer

SCOPES = ("paper/wall", "paper/sheets")
TIE_DOWN_GRADES = ("30", "43", "70", "80", "100")
LIFTING_GRADES = ("80", "100")
ANGLES = tuple(range(90, 25, -5))
"""Angles of legs [deg from the horizontal] on the chart, steep ones first."""
EXAMPLE_LB = 1000.0
"""The weight on the chart of angles [lb], so that a reader can count with it."""


def _say(code: str, **facts: Fact) -> Spans:
    return Writer("us", language(), SCOPES).say(code, facts)


def _words(text: str) -> Spans:
    return [text]


def _key(name: str, key: str, cell: str) -> Spans:
    """What a key of a table means to a reader."""
    return _words(key_text(name, key, cell))


def cited_once(rows: Iterable[Row]) -> tuple[Cited, ...]:
    """Each source of some rows once, however it was read, with the place of its first row."""
    found: dict[tuple[str, str], Cited] = {}
    for row in rows:
        found.setdefault(
            (row["source"], row["checked"]), Cited(Place(row["source"], row["locator"]), row["checked"])
        )
    return tuple(found.values())


def value(row: Row, *, bare: bool = False) -> Spans:
    """The value of a row as printed, with its unit unless `bare`, and its ring where nobody saw it in text."""
    said = row["value"] if bare else measured(row["value"], row["unit"])
    if row["value"].startswith("-"):
        said = f"\N{MINUS SIGN}{said.removeprefix('-')}"
    return [said, *(RING if row["checked"] == "memory" else [])]


def _cell(name: str, *, bare: bool = False, **conditions: str) -> tuple[Spans, tuple[Row, ...]]:
    """One printed value and its row; nothing where the table has none."""
    rows = table(name).where(**conditions)
    return (value(rows[0], bare=bare), rows[:1]) if rows else ([], ())


def _ring_note(rows: Iterable[Row]) -> tuple[Caution, ...]:
    """What the ring means, where a row bears one."""
    return (("warning", _say("ring-means")),) if any(row["checked"] == "memory" for row in rows) else ()


def _sizes(name: str, **conditions: str) -> tuple[str, ...]:
    """The inch sizes of a table, smallest first."""
    return tuple(sorted({row["size_in"] for row in table(name).where(**conditions)}, key=plain_number))


def _by_size(
    name: str, sizes: tuple[str, ...], columns: tuple[dict[str, str], ...]
) -> tuple[tuple[tuple[Spans, ...], ...], list[Row]]:
    """Rows of a grid by size, a column for each set of conditions, in lb without the unit."""
    lines, used = [], []
    for size in sizes:
        cells = [_cell(name, bare=True, size_in=size, unit="lb", **where) for where in columns]
        lines.append((_key(name, "size_in", size), *(said for said, _ in cells)))
        used += [row for _, rows in cells for row in rows]
    return tuple(lines), used


# ------------------------------------------------------------------------------------------------- grids


def may_lift_grid() -> tuple[Grid, list[Row]]:
    """Which grade may lift, and which may tie down; a part without a mark only on the condition that stands beneath."""
    name = "chain-which-may-lift"
    conditions = tuple(
        [
            *_key(name, "grade", row["grade"]),
            *_say("grid-may-lift.condition"),
            *table_words.note(name, row["note"]),
        ]
        for row in table(name).where(grade="unmarked", value="yes")
    )
    lines, used = [], []
    for grade in table(name).values("grade"):
        cells = [_cell(name, grade=grade, use=use) for use in ("lift", "tie_down")]
        lines.append((_key(name, "grade", grade), *(said for said, _ in cells)))
        used += [row for _, rows in cells for row in rows]
    heads = (_say("head-grade"), *(_key(name, "use", use) for use in ("lift", "tie_down")))
    return Grid(_say("grid-may-lift"), heads, tuple(lines), conditions), used


def tie_down_grid() -> tuple[Grid, list[Row]]:
    """What chain holds in a tie-down, by size and grade."""
    name = "chain-tie-down"
    lines, used = _by_size(name, _sizes(name), tuple({"grade": grade} for grade in TIE_DOWN_GRADES))
    heads = (_say("head-size"), *(_key(name, "grade", grade) for grade in TIE_DOWN_GRADES))
    return Grid(_say("grid-tie-down"), heads, lines), used


def one_leg_grid() -> tuple[Grid, list[Row]]:
    """What one straight leg of lifting chain holds, by size and grade."""
    name = "chain-lifting"
    columns = tuple({"grade": grade, "legs": "1"} for grade in LIFTING_GRADES)
    lines, used = _by_size(name, _sizes(name), columns)
    heads = (_say("head-size"), *(_key(name, "grade", grade) for grade in LIFTING_GRADES))
    return Grid(_say("grid-one-leg"), heads, lines), used


def two_leg_grid() -> tuple[Grid, list[Row]]:
    """What two legs of lifting chain hold together, by size, grade and angle."""
    name = "chain-lifting"
    columns = tuple(
        {"grade": grade, "legs": "2", "angle_from_horizontal": angle}
        for grade in LIFTING_GRADES
        for angle in ("60", "45", "30")
    )
    lines, used = _by_size(name, _sizes(name), columns)
    heads = tuple(
        _say(
            "head-grade-angle",
            grade=key_text(name, "grade", one["grade"]),
            angle=one["angle_from_horizontal"],
        )
        for one in columns
    )
    return Grid(_say("grid-two-legs"), (_say("head-size"), *heads), lines), used


def angle_grid(angles: Iterable[int] = ANGLES) -> Grid:
    """The sling-angle factor, and the pull in each of two legs of an example."""
    load_n = to_si(EXAMPLE_LB, "lbf", "force")
    lines = []
    for angle in angles:
        pull = force(leg_tension_n(load_n, 2, float(angle)), "demand")
        factor = Writer("us", language()).write(Number(angle_factor(float(angle)), sense="demand"))
        lines.append(
            (
                _say("angle-cell", angle=angle),
                factor,
                Writer("us", language()).write(pull, "OWN", {"digits": 3}),
            )
        )
    heads = (
        _say("head-angle"),
        _say("head-factor"),
        _say("head-each-leg", load=Quantity(to_si(EXAMPLE_LB, "lb", "weight"), "weight", digits=4)),
    )
    return Grid(_say("grid-angles"), heads, tuple(lines))


_AND_SMALLER = "holds-1-2-smaller"
"""The note of a row that is printed for its size and every smaller one."""


def _spacing_row(size: str) -> Row | None:
    """How far apart the clips stand: the row of the size, or the one that is printed for it and smaller sizes."""
    own = clip_row(size, "spacing", "in")
    if own is not None:
        return own
    shared = table("wire-rope-clips").where(quantity="spacing", unit="in", default="yes", note=_AND_SMALLER)
    return next((row for row in shared if plain_number(size) < plain_number(row["size_in"])), None)


def clips_grid() -> tuple[Grid, list[Row]]:
    """How many clips, how far apart, how long the turn-back and how tight, by size of rope."""
    lines, used = [], []
    quantities = (*CLIP_QUANTITIES[:2], "spacing", *CLIP_QUANTITIES[2:])
    for size in _sizes("wire-rope-clips"):
        rows = [_spacing_row(size) if one == "spacing" else clip_row(size, one) for one in quantities]
        if rows[0] is None:
            continue
        lines.append((_key("wire-rope-clips", "size_in", size), *(value(row) if row else [] for row in rows)))
        used += [row for row in rows if row is not None]
    heads = (_say("head-size"), *(_say(f"head-clips-{one.replace('_', '-')}") for one in quantities))
    return Grid(_say("grid-clips"), heads, tuple(lines), (_say("grid-clips.kinds"),)), used


def choke_grid() -> tuple[Grid, list[Row]]:
    """What a choke leaves, by its angle."""
    name = "choker-factors"
    general = table(name).one(quantity="share_of_vertical_rating")
    rows = table(name).where(quantity="share_of_choker_rating")
    lines = tuple(
        (_say("angle-band", low=row["choke_angle_from"], high=row["choke_angle_to"]), value(row))
        for row in rows
    )
    note = _say("choke-general", share=Cell(general["value"]), low=general["choke_angle_from"])
    return Grid(_say("grid-choke"), (_say("head-choke-angle"), _say("head-choke-share")), lines, (note,)), [
        *rows,
        general,
    ]


WEB_COLUMNS = (("straight", "0"), ("choke", "0"), ("basket", "0"), ("basket", "0-45"), ("basket", "45-60"))


def web_grid() -> tuple[Grid, list[Row]]:
    """What a single web or round sling holds by its colour (Europe), straight, choked and as a basket."""
    name = "web-slings"
    lines, used = [], []
    for colour in table(name).values("colour"):
        cells = [
            _cell(name, bare=True, colour=colour, legs="1", hitch=hitch, angle_from_vertical=angle)
            for hitch, angle in WEB_COLUMNS
        ]
        if not any(rows for _, rows in cells):
            continue
        lines.append((_key(name, "colour", colour), *(said for said, _ in cells)))
        used += [row for _, rows in cells for row in rows]
    heads = (_say("head-colour"), *(_say(f"head-web-{hitch}-{angle}") for hitch, angle in WEB_COLUMNS))
    return Grid(_say("grid-web"), heads, tuple(lines)), used


def legs_grid() -> tuple[Grid, list[Row]]:
    """How many legs are counted, of how many."""
    rows: dict[str, Row] = {}
    for row in table("sling-leg-counting").where(quantity="legs_counted", default="yes"):
        rows.setdefault(row["legs"], row)
    lines = tuple((_words(row["legs"]), value(row)) for row in rows.values())
    return Grid(_say("grid-legs"), (_say("head-legs"), _say("head-legs-counted")), lines), list(rows.values())


LIMIT_TABLES = ("hook-limits", "chain-limits", "shackle-limits", "wire-rope-limits")


_NO_PARTS = ("web_sling", "lifting_bar", "ship_rope")
"""Rows of those tables that are no part on this chart: a web sling is out at any cut, a bar and a ship's rope are not ours."""
_NAMED_ANEW = ("body_or_pin", "pin", "sling")
"""Parts whose name tells nothing outside their own table."""


def _part(name: str, item: str) -> Spans:
    if item in _NAMED_ANEW:
        return _say(f"part-{item.replace('_', '-')}")
    return _key(name, "item", item)


def limits_grid() -> tuple[Grid, list[Row]]:
    """The limits at which a part is out, those that the book takes, strictest source of each."""
    lines, used = [], []
    for name in LIMIT_TABLES:
        seen: set[tuple[str, str, str]] = set()
        for row in table(name).where(default="yes"):
            key = (row["item"], row["quantity"], row["value"])
            if key in seen or row["item"] in _NO_PARTS:
                continue
            seen.add(key)
            sense = "any" if row["value"] == "0" else row["sense"].replace("_", "-")
            lines.append(
                (
                    _part(name, row["item"]),
                    _words(table_words.quantity(name, row["quantity"])),
                    _say(f"limit-{sense}", limit=measured(row["value"], row["unit"])),
                )
            )
            used.append(row)
    heads = (_say("head-part"), _say("head-what"), _say("head-limit"))
    return Grid(_say("grid-limits"), heads, tuple(lines), words=True), used


def removal_grid() -> tuple[Grid, list[Row]]:
    """What takes a part out at a look."""
    name = "removal-criteria"
    rows = [row for row in table(name).rows if row["rule"] not in ("yearly", "interval", "washington-list")]
    lines = tuple((_key(name, "item", row["item"]), value(row)) for row in rows)
    return Grid(_say("grid-removal"), (_say("head-part"), _say("head-sight")), lines, words=True), rows


def chain_heat_grid() -> tuple[Grid, list[Row]]:
    """What is taken off a chain's limit while it is hot and after it was."""
    name = "chain-heat-asme"
    lines, used = [], []
    columns = tuple(
        (grade, quantity)
        for grade in LIFTING_GRADES
        for quantity in ("reduction_while_hot", "reduction_afterwards")
    )
    for degrees in table(name).values("temperature_degF"):
        rows = [
            table(name).where(temperature_degF=degrees, grade=grade, quantity=quantity)
            for grade, quantity in columns
        ]
        celsius = table(name).where(temperature_degF=degrees)[0]["temperature_degC"]
        lines.append(
            (
                _say("both-degrees", fahrenheit=degrees, celsius=celsius),
                *(value(found[0]) if found else [] for found in rows),
            )
        )
        used += [found[0] for found in rows if found]
    heads = tuple(
        _say(f"head-{quantity.replace('_', '-')}", grade=key_text(name, "grade", grade))
        for grade, quantity in columns
    )
    return Grid(_say("grid-chain-heat"), (_say("head-heat"), *heads), tuple(lines)), used


def sling_heat_grid() -> tuple[Grid, list[Row]]:
    """Between which temperatures slings and hardware may be used."""
    name = "sling-temperature-limits"
    lines, used = [], []
    seen: set[tuple[str, str, str]] = set()
    for row in table(name).where(default="yes"):
        key = (row["item"], row["quantity"], row["value"])
        if key not in seen:
            seen.add(key)
            other = companions(name, row)
            lines.append(
                (
                    _key(name, "item", row["item"]),
                    _words(table_words.quantity(name, row["quantity"])),
                    value(row),
                    _words(other[-1].text) if other else [],
                )
            )
            used.append(row)
    heads = (_say("head-part"), _say("head-limit"), _say("head-printed"), _say("head-about"))
    return Grid(_say("grid-sling-heat"), heads, tuple(lines), words=True), used


LAW_RULES = (
    ("aggregate", "half-the-weight"), ("aggregate", "direct"), ("aggregate", "same-side"), ("aggregate", "other-side"),
    ("limit", "weakest-part"), ("limit", "unmarked-chain"), ("limit", "unmarked-in-canada"), ("count", "short-light"), ("count", "short-heavy"),
    ("count", "medium"), ("count", "long"), ("count", "blocked"), ("heavy_equipment", "four"), ("tie_down", "edge-protection"),
    ("system", "no-damage"),
)  # fmt: skip


def law_grid() -> tuple[Grid, list[Row]]:
    """What the law of the road asks, as the table of rules has it."""
    name = "tie-down-rules"
    rows = [table(name).one(item=item, rule=rule) for item, rule in LAW_RULES]
    lines = tuple((_say(f"law-{row['item'].replace('_', '-')}"), value(row)) for row in rows)
    return Grid(_say("grid-law"), (_say("head-rule-of"), _say("head-rule")), lines, words=True), rows


def strap_grid() -> tuple[Grid, list[Row]]:
    """What a strap holds by its width."""
    name = "tie-down-other"
    rows = table(name).where(material="synthetic_webbing", unit="lb")
    lines = tuple((_key(name, "size_in", row["size_in"]), value(row, bare=True)) for row in rows)
    return Grid(_say("grid-straps"), (_say("head-width"), _say("head-limit-lb")), lines), list(rows)


def said_where_empty(grid: Grid) -> Grid:
    """A grid whose empty cells bear a dash, and which says what that means."""
    if all(all(cells) for cells in grid.rows):
        return grid
    filled = tuple(tuple(cell or _say("empty") for cell in cells) for cells in grid.rows)
    return replace(grid, rows=filled, notes=(*grid.notes, _say("empty.means")))


# ------------------------------------------------------------------------------------------------- sheets


def _sheet(
    name: str,
    page: str,
    grids: Iterable[tuple[Grid, list[Row]]],
    cautions: tuple[Caution, ...],
    *,
    drawing: Drawing | None = None,
    letters_pt: float = 10.5,
    more: tuple[Cited, ...] = (),
) -> Sheet:
    made = tuple((said_where_empty(grid), used) for grid, used in grids)
    rows = [row for _, used in made for row in used]
    return Sheet(
        name,
        "wall",
        _say(name),
        page,
        (),
        tuple(dict.fromkeys((*more, *cited_once(rows)))),
        drawing,
        tuple(grid for grid, _ in made),
        (*cautions, *_ring_note(rows)),
        letters_pt,
    )


def chain_chart() -> Sheet:
    """Chain by grade and use."""
    return _sheet(
        "wall-chain",
        "look-up/chain-tie-down",
        (may_lift_grid(), tie_down_grid(), one_leg_grid()),
        (("prohibition", _say("wall-chain.never")),),
        letters_pt=12.0,
    )


def angle_chart() -> Sheet:
    """Sling angles, with what two legs of chain hold at them."""
    guidance = Cited(Place("osha-sling-guidance", "general text on sling angles"), "text")
    return _sheet(
        "wall-sling-angles",
        "look-up/sling-angle-factors",
        ((angle_grid(), []), two_leg_grid()),
        (("prohibition", _say("wall-sling-angles.never", least=Number(LOWEST_ANGLE_DEG))),),
        drawing=_three_slings(),
        more=(guidance,),
        letters_pt=13.0,
    )


def _three_slings() -> Drawing:
    """Two legs at three angles, drawn at those angles, with the factor of each."""
    marks: list[Mark] = []
    for place, angle in enumerate((60, 45, 30)):
        x, foot, long = 31.0 + place * 62.0, 34.0, 28.0
        across, up = long * math.cos(math.radians(angle)), long * math.sin(math.radians(angle))
        marks += [
            Line(x - across, foot, x, foot - up, "thick"),
            Line(x + across, foot, x, foot - up, "thick"),
            Line(x - across - 3, foot, x + across + 3, foot, "thick"),
            Label(x, foot - 3.4, _say("angle-cell", angle=angle), "middle", 11, bold=True),
            Label(
                x,
                foot + 4.5,
                _say(
                    "angle-and-factor", angle=angle, factor=Number(angle_factor(float(angle)), sense="demand")
                ),
                "middle",
                10.5,
                bold=True,
            ),
        ]
    return Drawing(42.0, tuple(marks), _say("wall-sling-angles.said"))


def hitch_chart() -> Sheet:
    """Hitches: what a choke and a basket leave of a sling, and how many legs count."""
    return _sheet(
        "wall-hitches",
        "work-out/hitch",
        (choke_grid(), legs_grid(), web_grid()),
        (("mandatory", _say("wall-hitches.tag")), ("warning", _say("wall-hitches.basket"))),
        drawing=_hitches_drawn(),
        letters_pt=13.5,
    )


HITCHES_DRAWN = (
    ("straight", 0.0),
    ("choked", 130.0),
    ("basket-upright", 0.0),
    ("basket", 30.0),
    ("basket", 45.0),
)
"""What is drawn on the chart of hitches: how a sling is put on, and the angle of its choke, or of a basket's legs from the
vertical, as its table has them [deg]."""
_LOAD_MM = 7.5
"""Radius of the drawn load [mm]."""
_FOOT_MM, _HIGH_MM = 34.0, 5.0
"""Where the middle of the loads and the hooks stand [mm]."""


def holds_of_straight(hitch: str, angle_deg: float) -> float:
    """How many times its straight rating a sling holds so [-], by the same shares as the worksheet (calc.lifting)."""
    if hitch == "straight":
        return 1.0
    if hitch == "choked":
        return choker_share("chain").share * choke_angle_share(angle_deg).share
    return 2.0 * math.cos(math.radians(angle_deg))


def _hitches_drawn() -> Drawing:
    """Each hitch round a load, seen from its end; the legs of a basket at their true angle."""
    marks: list[Mark] = []
    said: Spans = [*_say("wall-hitches.said")]
    for place, (hitch, angle_deg) in enumerate(HITCHES_DRAWN):
        x = 18.6 + place * 37.2
        name = _say(f"hitch-{hitch}", angle=Quantity(angle_deg, "angle"))
        holds = Number(holds_of_straight(hitch, angle_deg), sense="capacity")
        marks += [
            *_put_on(hitch, x, angle_deg),
            Label(x, _FOOT_MM + _LOAD_MM + 5.0, name, "middle", 10.5, bold=True),
            Label(x, _FOOT_MM + _LOAD_MM + 10.5, _say("hitch-holds", holds=holds), "middle", 12, bold=True),
        ]
        said = [*said, " ", *name, " ", *_say("hitch-holds", holds=holds), "."]
    return Drawing(_FOOT_MM + _LOAD_MM + 14.0, tuple(marks), said)


def _put_on(hitch: str, x: float, angle_deg: float) -> list[Mark]:
    """A sling put on a load whose middle stands at x [mm]."""
    if hitch == "straight":
        top = _FOOT_MM - _LOAD_MM
        corners = ((-1, -1), (1, -1), (1, 1), (-1, 1), (-1, -1))
        box = [(x + across * _LOAD_MM, _FOOT_MM + down * _LOAD_MM) for across, down in corners]
        sides = [Line(*one, *other, "thin") for one, other in pairwise(box)]
        return [*sides, Line(x, _HIGH_MM, x, top, "thick"), *_hook(x, _HIGH_MM)]
    load = Arc(x, _FOOT_MM, _LOAD_MM - 0.9, 0.0, 360.0, "thin")
    if hitch == "choked":
        return [load, Arc(x, _FOOT_MM, _LOAD_MM, 0.0, 360.0, "thick"), *_choke(x)]
    lean = math.radians(angle_deg)
    across, up = _LOAD_MM * math.cos(lean), _LOAD_MM * math.sin(lean)
    meet = across if angle_deg == 0.0 else 0.0
    top = _HIGH_MM if angle_deg == 0.0 else _FOOT_MM - up - across / math.tan(lean)
    marks: list[Mark] = [load, Arc(x, _FOOT_MM, _LOAD_MM, -angle_deg, 180.0 + angle_deg, "thick")]
    for side in (-1.0, 1.0):
        marks.append(Line(x + side * across, _FOOT_MM - up, x + side * meet, top, "thick"))
        marks += _hook(x + side * meet, top)
    return marks


def _hook(x: float, y: float) -> list[Mark]:
    return [Arc(x, y - 1.6, 1.6, 0.0, 360.0, "thick")]


def _choke(x: float) -> list[Mark]:
    """The free end, upright, and the eye through which it runs."""
    eye = _FOOT_MM - _LOAD_MM
    return [Line(x, _HIGH_MM, x, eye, "thick"), *_hook(x, _HIGH_MM), Arc(x, eye, 1.4, 0.0, 360.0, "thick")]


def clip_chart() -> Sheet:
    """Clips on wire rope."""
    return _sheet(
        "wall-clips", "look-up/wire-rope-clips", (clips_grid(),),
        (("mandatory", _say("wall-clips.saddle")), ("warning", _say("wall-clips.maker"))), letters_pt=17.0,
    )  # fmt: skip


def inspection_chart() -> Sheet:
    """When a part is out of service."""
    return _sheet(
        "wall-inspection",
        "judge/index",
        (limits_grid(), removal_grid()),
        (("prohibition", _say("wall-inspection.never")),),
        letters_pt=11.5,
    )


def heat_chart() -> Sheet:
    """Heat and cold."""
    return _sheet(
        "wall-heat", "understand/hot-and-cold-work", (chain_heat_grid(), sling_heat_grid()),
        (("prohibition", _say("wall-heat.never")),), letters_pt=13.5,
    )  # fmt: skip


def tie_down_chart() -> Sheet:
    """Tying down on the road."""
    return _sheet(
        "wall-tie-down",
        "look-up/tie-down-rules",
        (law_grid(), tie_down_grid(), strap_grid()),
        (("warning", _say("wall-tie-down.forces")),),
        letters_pt=12.5,
    )


WALL = (
    chain_chart,
    angle_chart,
    hitch_chart,
    clip_chart,
    inspection_chart,
    heat_chart,
    tie_down_chart,
)
"""Every chart for the wall, in the order of use."""

__all__ = [
    "LAW_RULES",
    "LIFTING_GRADES",
    "WALL",
    "WEB_COLUMNS",
    "angle_grid",
    "cited_once",
    "clips_grid",
    "limits_grid",
    "may_lift_grid",
    "one_leg_grid",
    "said_where_empty",
    "tie_down_grid",
    "two_leg_grid",
    "value",
]
