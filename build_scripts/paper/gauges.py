"""The gauges on paper: drawings at true scale, from the tables and calc alone, on which a part is laid.

A gauge may name a size and may take a part out of service; it never passes one, because paper and eye are good to half a
millimetre at best. What stands at true scale: the white between two black blocks, the length of a block, the distance
between the middles of two lines, the angle of a line.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from build_scripts.paper.sheets import WIDTH_MM, Arc, Area, Block, Cited, Drawing, Label, Line, Mark, Sheet
from build_scripts.wording import language
from calc.inspecting.chain_marks import ChainSize, chain_sizes
from calc.inspecting.hook_check import largest_throat_m
from calc.inspecting.inspection import Limit, limits
from calc.inspecting.thickness import thickness_limits
from calc.lifting.leg_geometry import CAREFUL_ANGLE_DEG, LOWEST_ANGLE_DEG, angle_factor
from calc.quantities import plain_number, to_si
from calc.tables import NoSuchRow, Row, number, table
from calc.words.facts import Cell, Fact, Listing, Message, Number, Place, message
from calc.words.facts import length as length_fact
from calc.words.writer import Spans, Writer

SCOPES = ("paper/gauges", "paper/sheets", "shared/chain")
"""Where the words of the gauges stand."""
MM = 1000.0
"""Millimetres in a metre."""
LARGEST_CHAIN_MM = 20.0
"""The thickest chain on the sheets: with more sizes they would not fit one piece of paper."""
BAR_MM = 3.0
"""How thick the blocks beside a slot are."""
_BARS_FROM_MM = 59.0
"""Where the bars of the sheet of sizes begin, so that the longest leaves room for its words."""
SHORT_LINK = ("grade_8", "grade_10", "grade_80")
OTHER_CHAIN = ("din_766", "mid_link_80", "din_763")
"""Chains of the table chain-dimensions: those made to lift, and those of other links."""


class GaugeRefused(ValueError):
    """A gauge cannot be drawn from these tables; the message says why."""


def _writer() -> Writer:
    return Writer("us", language(), SCOPES)


def _say(code: str, **facts: Fact) -> Spans:
    return _writer().say(code, facts)


def _cited_rows(rows: Iterable[Row]) -> tuple[Cited, ...]:
    """Each source of some rows once, with the place of its first row there."""
    found: dict[str, Cited] = {}
    for row in rows:
        found.setdefault(row["source"], Cited(Place(row["source"], row["locator"]), row["checked"]))
    return tuple(found.values())


def _cited_limit(limit: Limit, rows: Iterable[Row]) -> tuple[Cited, ...]:
    """The sources of a limit, as their rows say that they were read."""
    read = {(row["source"], row["locator"]): row["checked"] for row in rows}
    return tuple(
        Cited(Place(one.source, one.locator), read[(one.source, one.locator)]) for one in limit.citations
    )


def _each_once(cited: Iterable[Cited]) -> tuple[Cited, ...]:
    return tuple(dict.fromkeys(cited))


def _slot(x: float, y: float, width: float, height: float) -> tuple[Mark, Mark]:
    """Two blocks with white of the given height between them, whose upper edge is at `y`."""
    return Block(x, y - BAR_MM, width, BAR_MM), Block(x, y + height, width, BAR_MM)


# ------------------------------------------------------------------------------------------ chain: which size


@dataclass(frozen=True)
class LinkLength:
    """How long a link of some chain is inside [m], the rows that say so, and the words that name the chain."""

    pitch_m: float
    rows: tuple[Row, ...]
    named: Message


def pitch_rows(chains: tuple[str, ...], size_mm: str) -> tuple[Row, ...]:
    """The rows of chain-dimensions that give the pitch of some chains of a size."""
    return tuple(
        row
        for row in table("chain-dimensions").where(size_mm=size_mm, quantity="pitch")
        if row["chain"] in chains
    )


def _one_pitch(rows: tuple[Row, ...]) -> float:
    """The pitch [m] that all rows print; raises GaugeRefused where they differ."""
    printed = {round(to_si(number(row), row["unit"], "length"), 9) for row in rows}
    if len(printed) != 1:
        said = ", ".join(f"{row['source']} {row['value']} {row['unit']}" for row in rows)
        raise GaugeRefused(f"chain-dimensions: pitches of one chain and size differ: {said}")
    return printed.pop()


def link_lengths(size_mm: str) -> tuple[LinkLength, ...]:
    """The links of a size: of chain made to lift first, of other chain after it."""
    found = []
    for chains in (SHORT_LINK, *((one,) for one in OTHER_CHAIN)):
        rows = pitch_rows(chains, size_mm)
        if rows:
            grades = dict.fromkeys(row["chain"].rpartition("_")[2] for row in rows)
            kind = "short-link" if chains == SHORT_LINK else chains[0].replace("_", "-")
            pitch = _one_pitch(rows)
            named = message(
                f"pitch-of-{kind}",
                grades=Listing(tuple(grades)),
                pitch=Cell(rows[0]["value"], rows[0]["unit"]),
            )
            found.append(LinkLength(pitch, rows, named))
    return tuple(found)


def gauged_sizes() -> tuple[str, ...]:
    """The metric sizes of short-link chain that fit the sheet, smallest first."""
    sizes = {
        row["size_mm"]
        for row in table("chain-dimensions").where(quantity="pitch")
        if row["chain"] in SHORT_LINK and float(row["size_mm"]) <= LARGEST_CHAIN_MM
    }
    return tuple(sorted(sizes, key=float))


def _size_said(size_mm: str) -> Spans:
    """A size of chain in words: with its inch size where it has one."""
    for size in chain_sizes():
        if size.metric_name == size_mm:
            return _writer().message(size.said)
    return _say("metric-size", size=size_mm)


def chain_size_gauge() -> Sheet:
    """Slots as wide as the wire of each size, and blocks as long as its link is inside."""
    marks: list[Mark] = []
    rows: list[Row] = []
    y, bar, step = 0.0, 3.0, 4.3
    for size_mm in gauged_sizes():
        wire, links = float(size_mm), link_lengths(size_mm)
        height = max(len(links) * step, wire + 2 * BAR_MM) + 3.2
        marks += [Label(0, y + height / 2 - 1.6, _size_said(size_mm), bold=True)]
        marks += _slot(36, y + (height - 3.2 - wire) / 2, 20, wire)
        for place, link in enumerate(links):
            top = y + place * step
            marks.append(Block(_BARS_FROM_MM, top, link.pitch_m * MM, bar))
            marks.append(
                Label(
                    _BARS_FROM_MM + link.pitch_m * MM + 2,
                    top + bar / 2,
                    _writer().message(link.named),
                    size_pt=8,
                )
            )
            rows += link.rows
        y += height
        marks.append(Line(0, y - 1.6, WIDTH_MM, y - 1.6, "hair"))
    return Sheet(
        "gauge-chain-size",
        "gauge",
        _say("chain-size-gauge"),
        "look-up/chain-dimensions",
        tuple(_say(f"chain-size-gauge-step-{n}") for n in (1, 2, 3)),
        _cited_rows(rows),
        Drawing(y, tuple(marks), _say("chain-size-gauge.said")),
        cautions=(("prohibition", _say("chain-size-gauge.never")),),
    )


# ---------------------------------------------------------------------------------------------- chain: wear


def worn_sizes() -> tuple[ChainSize, ...]:
    """The sizes of chain on the wear gauge."""
    return tuple(size for size in chain_sizes() if float(size.metric_name) <= LARGEST_CHAIN_MM)


def chain_wear_gauge() -> Sheet:
    """For each size a slot as wide as new wire, and one as wide as the least that the strictest limit lets stand."""
    marks: list[Mark] = [
        Label(36, 2, _say("wear-new"), size_pt=8.5),
        Label(84, 2, _say("wear-least"), size_pt=8.5, bold=True),
    ]
    cited: list[Cited] = []
    rows = (*table("chain-wear").rows, *table("chain-limits").rows)
    y = 6.0
    for size in worn_sizes():
        wire, least = float(size.metric_name), thickness_limits(size)[0]
        height = wire + 2 * BAR_MM + 3.4
        middle = y + BAR_MM + wire / 2
        marks.append(Label(0, middle, _writer().message(size.said), bold=True))
        marks += _slot(36, middle - wire / 2, 40, wire)
        marks += _slot(84, middle - least.value_si * MM / 2, 40, least.value_si * MM)
        said = length_fact(least.value_si, "out_under")
        marks.append(Label(128, middle, _say("wear-out-under", least=said), size_pt=9))
        cited += _cited_limit(least, rows)
        y += height
        marks.append(Line(0, y - 1.7, WIDTH_MM, y - 1.7, "hair"))
    return Sheet(
        "gauge-chain-wear",
        "gauge",
        _say("chain-wear-gauge"),
        "judge/inspect-a-chain",
        tuple(_say(f"chain-wear-gauge-step-{n}") for n in (1, 2, 3)),
        _each_once(cited),
        Drawing(y, tuple(marks), _say("chain-wear-gauge.said")),
        cautions=(("warning", _say("passes-nothing")),),
    )


# ------------------------------------------------------------------------------------------- chain: stretch


def stretch_limit() -> Limit:
    """The strictest share by which a chain may have grown."""
    return limits("chain-limits", ("chain",), "elongation", "fraction")[0]


def links_on_paper(pitch_m: float) -> int:
    """How many links of a pitch, stretched to the limit, the sheet is wide enough for."""
    return math.floor((WIDTH_MM - 2.0) / MM / (pitch_m * (1 + stretch_limit().value_si)))


def chain_stretch_gauge() -> Sheet:
    """For each size of lifting chain a start, where some links end when new, and where they end at the limit."""
    limit = stretch_limit()
    marks: list[Mark] = []
    rows: list[Row] = []
    y = 0.0
    for size_mm in gauged_sizes():
        link = link_lengths(size_mm)[0]
        count = links_on_paper(link.pitch_m)
        new = count * link.pitch_m * MM
        out = new * (1 + limit.value_si)
        said_out = math.floor(out * 10 + 1e-6) / 10
        high = float(size_mm) / 2 + 6.0
        top = y + 5.0
        marks += [
            Label(0, y + 2, _say("stretch-links", size=_size_message(size_mm), count=count), bold=True),
            Label(
                WIDTH_MM,
                y + 2,
                _say(
                    "stretch-lengths",
                    new=Number(new, places=1),
                    out=Number(said_out, places=1),
                    count=count,
                ),
                "right",
                size_pt=8,
            ),
            Line(0, top, 0, top + high, "thick"),
            Line(new, top, new, top + high, "dashed"),
            Line(out, top, out, top + high, "thick"),
            Line(0, top + high, out, top + high, "hair"),
        ]
        rows += link.rows
        y = top + high + 2.6
    claims = table("chain-limits").where(item="chain", quantity="elongation")
    return Sheet(
        "gauge-chain-stretch",
        "gauge",
        _say("chain-stretch-gauge"),
        "judge/inspect-a-chain",
        tuple(_say(f"chain-stretch-gauge-step-{n}", limit=limit.printed) for n in (1, 2, 3)),
        _each_once((*_cited_limit(limit, claims), *_cited_rows(rows))),
        Drawing(y, tuple(marks), _say("chain-stretch-gauge.said")),
        cautions=(("warning", _say("passes-nothing")),),
    )


def _size_message(size_mm: str) -> Message:
    for size in chain_sizes():
        if size.metric_name == size_mm:
            return size.said
    return message("metric-size", size=size_mm)


# ---------------------------------------------------------------------------------------------- hook throat

THROATS_IN = tuple(eighths / 8 for eighths in range(4, 49))
"""New throats [in] on the ruler: 1/2 to 6 in."""
THROATS_MM = tuple(range(15, 156))
"""New throats [mm] on the ruler."""


def hook_throat_gauge() -> Sheet:
    """Two rulers whose marks stand not where a length is, but where a throat of that length when new is out."""
    marks: list[Mark] = []
    for top, unit in ((10.0, "in"), (62.0, "mm")):
        marks += _throat_ruler(top, unit)
    claims = table("hook-limits").where(item="hook")
    share = limits("hook-limits", ("hook",), "throat_increase", "fraction")[0]
    most = limits("hook-limits", ("hook",), "throat_increase_largest", "length")[0]
    return Sheet(
        "gauge-hook-throat",
        "gauge",
        _say("hook-throat-gauge"),
        "judge/inspect-a-hook",
        tuple(
            _say(f"hook-throat-gauge-step-{n}", share=share.printed, most=most.printed) for n in (1, 2, 3, 4)
        ),
        _each_once((*_cited_limit(share, claims), *_cited_limit(most, claims))),
        Drawing(106, tuple(marks), _say("hook-throat-gauge.said")),
        cautions=(("warning", _say("passes-nothing")), ("prohibition", _say("hook-throat-gauge.never"))),
    )


def _throat_ruler(top: float, unit: str) -> list[Mark]:
    """A strip to cut out: above a plain ruler of lengths, below the marks at which a new throat is out."""
    high = 36.0
    marks: list[Mark] = [
        Label(0, top - 4, _say(f"throat-strip-{unit}"), bold=True, size_pt=9),
        Line(0, top, WIDTH_MM, top, "thin"),
        Line(0, top + high, WIDTH_MM, top + high, "thin"),
        Line(0, top, 0, top + high, "thick"),
        Label(WIDTH_MM - 1, top + 12, _say("throat-plain"), "right", size_pt=8),
        Label(WIDTH_MM - 1, top + high - 14, _say("throat-out"), "right", size_pt=8, bold=True),
    ]
    step, numbered, long = (1 / 8, 8, 4) if unit == "in" else (1.0, 10, 5)
    to_mm = to_si(1.0, unit, "length") * MM
    for count in range(1, math.floor(WIDTH_MM / (step * to_mm)) + 1):
        x = count * step * to_mm
        tall = 6.0 if count % numbered == 0 else 4.5 if count % long == 0 else 2.8
        marks.append(Line(x, top, x, top + tall, "hair"))
        if count % numbered == 0:
            marks.append(Label(x, top + 8, [f"{count * step:g}"], "middle", size_pt=8))
    new_sizes: tuple[float, ...] = THROATS_IN if unit == "in" else THROATS_MM
    for new in new_sizes:
        x = largest_throat_m(to_si(new, unit, "length")) * MM
        count = round(new / step)
        tall = 7.0 if count % numbered == 0 else 5.0 if count % long == 0 else 3.0
        marks.append(Line(x, top + high - tall, x, top + high, "thin"))
        if count % numbered == 0:
            marks.append(Label(x, top + high - 9.2, [f"{new:g}"], "middle", size_pt=9, bold=True))
    return marks


# ---------------------------------------------------------------------------------------------- sling angle

_RADIUS = 90.0


def leg_line_deg(angle_from_horizontal_deg: float) -> float:
    """The angle [deg] between a leg and a thread that hangs straight down, for a leg at an angle from the horizontal.

    >>> leg_line_deg(60.0)
    30.0
    """
    return 90.0 - angle_from_horizontal_deg


def sling_angle_gauge() -> Sheet:
    """A scale of angles under a straight edge that is laid along the leg; a weighted thread from its middle is the pointer."""
    x0, y0 = WIDTH_MM / 2, 8.0
    marks: list[Mark] = [
        Line(0, y0, WIDTH_MM, y0, "thick"),
        Label(0, y0 - 4, _say("angle-edge"), bold=True),
        Label(WIDTH_MM, y0 - 4, _say("angle-thread"), "right"),
        Arc(x0, y0, 1.5, 0, 360, "thin"),
        Area(_fan(x0, y0, _RADIUS - 20, LOWEST_ANGLE_DEG)),
        Label(x0, y0 + 36, _say("angle-never", least=Number(LOWEST_ANGLE_DEG)), "middle", 12, bold=True),
        Arc(x0, y0, _RADIUS, 0, 180, "thin"),
    ]
    for angle in range(91):
        for side in (1, -1) if angle else (1,):
            marks += _angle_mark(x0, y0, angle, side)
    for side in (1, -1):
        for steep in (CAREFUL_ANGLE_DEG, 60.0):
            said = _say("angle-factor", factor=Number(angle_factor(steep), sense="demand"))
            marks.append(_along_leg(x0, y0, steep + 4, side, said))
        said = _say("angle-careful", careful=Number(CAREFUL_ANGLE_DEG))
        marks.append(_along_leg(x0, y0, (LOWEST_ANGLE_DEG + CAREFUL_ANGLE_DEG) / 2, side, said))
    return Sheet(
        "gauge-sling-angle",
        "gauge",
        _say("sling-angle-gauge"),
        "look-up/sling-angle-factors",
        tuple(_say(f"sling-angle-gauge-step-{n}") for n in (1, 2, 3, 4)),
        (Cited(Place("osha-sling-guidance", "general text on sling angles"), "text"),),
        Drawing(y0 + _RADIUS + 10, tuple(marks), _say("sling-angle-gauge.said")),
        cautions=(
            ("prohibition", _say("sling-angle-gauge.never", least=Number(LOWEST_ANGLE_DEG))),
            ("warning", _say("sling-angle-gauge.doubt")),
        ),
    )


def _toward(x0: float, y0: float, radius: float, angle: float, side: int) -> tuple[float, float]:
    """The place at a radius [mm] where the thread lies when the leg is at an angle [deg]; `side`: 1 right, -1 left."""
    turned = math.radians(leg_line_deg(angle))
    return x0 + side * radius * math.cos(turned), y0 + radius * math.sin(turned)


def _along_leg(x0: float, y0: float, angle: float, side: int, said: Spans) -> Label:
    """Words that run along the thread of an angle [deg]."""
    x, y = _toward(x0, y0, _RADIUS - 36, angle, side)
    return Label(x, y, said, "middle", 9, bold=True, turn_deg=side * leg_line_deg(angle))


def _angle_mark(x0: float, y0: float, angle: int, side: int) -> list[Mark]:
    long = 9.0 if angle % 10 == 0 else 6.0 if angle % 5 == 0 else 3.5
    x1, y1 = _toward(x0, y0, _RADIUS - long, angle, side)
    x2, y2 = _toward(x0, y0, _RADIUS, angle, side)
    marks: list[Mark] = [Line(x1, y1, x2, y2, "thin" if angle % 5 == 0 else "hair")]
    if angle % 10 == 0 or angle in (CAREFUL_ANGLE_DEG,):
        x, y = _toward(x0, y0, _RADIUS - 13, angle, side)
        if angle == 90:
            y += 3.0
        marks.append(Label(x, y, _say("angle", angle=angle), "middle", 10, bold=True))
    if angle in (LOWEST_ANGLE_DEG, CAREFUL_ANGLE_DEG, 60):
        inner = _toward(x0, y0, 4, angle, side)
        marks.append(Line(*inner, *_toward(x0, y0, _RADIUS - 17, angle, side), "dashed"))
    return marks


def _fan(x0: float, y0: float, radius: float, to_angle: float) -> tuple[tuple[float, float], ...]:
    """The corners of the field of legs that are flatter than an angle."""
    steps = [to_angle * part / 12 for part in range(13)]
    right = [_toward(x0, y0, radius, angle, 1) for angle in reversed(steps)]
    left = [_toward(x0, y0, radius, angle, -1) for angle in steps[1:]]
    return ((x0, y0), *right, *left)


# ---------------------------------------------------------------------------------------------- wire rope

LARGEST_ROPE_IN = 1.0


def rope_sizes() -> tuple[str, ...]:
    """The sizes of wire rope that the tables of rope and of clips name, up to the largest on the sheet, smallest first."""
    names = {row["size_in"] for name in ("wire-rope", "wire-rope-clips") for row in table(name).rows}
    small = [name for name in names if plain_number(name) <= LARGEST_ROPE_IN]
    return tuple(sorted(small, key=plain_number))


def wire_rope_gauge() -> Sheet:
    """Slots as wide as each size of wire rope, in two columns."""
    marks: list[Mark] = []
    sizes = rope_sizes()
    half = (len(sizes) + 2) // 2
    deepest = 0.0
    y: float
    for column, names in enumerate((sizes[:half], sizes[half:])):
        x, y = column * 96.0, 0.0
        for name in names:
            wide = to_si(plain_number(name), "in", "length")
            marks += _slot(x + 30, y + BAR_MM, 56, wide * MM)
            middle = y + BAR_MM + wide * MM / 2
            marks.append(Label(x, middle, _say("rope-size", size=Cell(name, "in"), metric=Number(wide * MM))))
            y += wide * MM + 2 * BAR_MM + 3.4
            marks.append(Line(x, y - 1.7, x + 90, y - 1.7, "hair"))
        deepest = max(deepest, y)
    lost = [row for row in table("wire-rope-limits").rows if row["quantity"] == "diameter_loss"]
    y = deepest + 5
    marks.append(Label(0, y, _say("rope-loss"), bold=True, size_pt=9))
    for row in lost:
        y += 5.0
        item = message(f"rope-item-{row['item'].replace('_', '-')}")
        marks.append(
            Label(0, y, _say("rope-loss-line", item=item, loss=Cell(row["value"], row["unit"])), size_pt=9)
        )
    return Sheet(
        "gauge-wire-rope",
        "gauge",
        _say("wire-rope-gauge"),
        "judge/inspect-a-wire-rope",
        tuple(_say(f"wire-rope-gauge-step-{n}") for n in (1, 2, 3)),
        _cited_rows(lost),
        Drawing(y + 4, tuple(marks), _say("wire-rope-gauge.said")),
        cautions=(("warning", _say("passes-nothing")),),
    )


# ---------------------------------------------------------------------------------------------- rope clips


@dataclass(frozen=True)
class Clips:
    """How the clips of a rope size stand: the row of their spacing, and the rows of what else is asked, by quantity."""

    size_in: str
    spacing: Row
    others: dict[str, Row]


CLIP_QUANTITIES = ("clips_drop_forged", "clips_other_material", "turn_back", "torque")


def clip_row(size_in: str, quantity: str, unit: str = "") -> Row | None:
    """The row that the book takes for a size: of those that it takes (default yes) the one that asks for most."""
    rows = table("wire-rope-clips").where(size_in=size_in, quantity=quantity, default="yes")
    fitting = [row for row in rows if not unit or row["unit"] == unit]
    return max(fitting, key=number, default=None)


def spaced_clips() -> tuple[Clips, ...]:
    """The sizes whose spacing a source prints and the sheet is wide enough for."""
    found = []
    for size_in in sorted(table("wire-rope-clips").values("size_in"), key=plain_number):
        spacing = clip_row(size_in, "spacing", "in")
        if spacing is None or to_si(number(spacing), "in", "length") * MM > WIDTH_MM - 12:
            continue
        others = {quantity: clip_row(size_in, quantity) for quantity in CLIP_QUANTITIES}
        found.append(Clips(size_in, spacing, {key: row for key, row in others.items() if row is not None}))
    if not found:
        raise NoSuchRow("wire-rope-clips: no spacing fits the sheet")
    return tuple(found)


def clip_gauge() -> Sheet:
    """For each size of rope the distance between two clips, with their number, the turn-back and the torque."""
    marks: list[Mark] = []
    rows: list[Row] = []
    y = 0.0
    for place, clips in enumerate(spaced_clips()):
        apart = to_si(number(clips.spacing), "in", "length") * MM
        named = "clip-size-and-smaller" if place == 0 else "clip-size"
        spacing = Cell(clips.spacing["value"], "in")
        marks.append(
            Label(
                0,
                y + 2.5,
                _say(named, size=Cell(clips.size_in, "in"), spacing=spacing),
                bold=True,
                size_pt=10,
            )
        )
        told = [
            message(
                f"clip-{key.replace('_', '-')}",
                value=Cell(row["value"], "" if row["unit"] == "count" else row["unit"]),
            )
            for key, row in clips.others.items()
        ]
        own = _say("clip-told", size=Cell(clips.size_in, "in"), told=Listing(tuple(told), "semicolon"))
        marks.append(Label(0, y + 7.2, own, size_pt=8.5))
        top, high = y + 10.0, 11.0
        marks += [
            Line(4, top + high / 2, 4 + apart + 4, top + high / 2, "hair"),
            Line(4, top, 4, top + high, "thick"),
            Line(4 + apart, top, 4 + apart, top + high, "thick"),
            Label(4 + apart / 2, top + high / 2 - 2.4, _writer().write(spacing), "middle", 9),
        ]
        rows += [clips.spacing, *clips.others.values()]
        y += 24.5
    return Sheet(
        "gauge-clips",
        "gauge",
        _say("clip-gauge"),
        "look-up/wire-rope-clips",
        tuple(_say(f"clip-gauge-step-{n}") for n in (1, 2, 3, 4)),
        _cited_rows(rows),
        Drawing(y, tuple(marks), _say("clip-gauge.said")),
        cautions=(("mandatory", _say("clip-gauge.maker")),),
    )


GAUGES = (
    chain_size_gauge,
    chain_wear_gauge,
    chain_stretch_gauge,
    hook_throat_gauge,
    sling_angle_gauge,
    wire_rope_gauge,
    clip_gauge,
)
"""Every gauge of the book, in the order of use."""

__all__ = [
    "GAUGES",
    "GaugeRefused",
    "chain_size_gauge",
    "chain_stretch_gauge",
    "chain_wear_gauge",
    "clip_gauge",
    "clip_row",
    "gauged_sizes",
    "hook_throat_gauge",
    "leg_line_deg",
    "link_lengths",
    "links_on_paper",
    "rope_sizes",
    "sling_angle_gauge",
    "spaced_clips",
    "stretch_limit",
    "wire_rope_gauge",
    "worn_sizes",
]
