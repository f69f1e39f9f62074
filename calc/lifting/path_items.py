"""The parts of a string of lifting gear: how each is described, and what each is rated for.

Question of the trade: what may this hook, shackle or chain carry as it is used here, or why may it not be used at
all? Ratings come from the mark on the part, or else from the tables by kind, grade and size (calc.ratings). Grade 30,
43 and 70 chain does not lift (ASTM A413, scope). A part that is unmarked, worn, welded, heated, bent or home-made has
no rating that this book can give back: it blocks the string. Used by load-path and by pull-trial; the words stand in
shared/path-items, those of shares in shared/hitch-shares and shared/chain-heat (WORDS).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation
from calc.heating.chain_heat import asme_rule, en_rule
from calc.inputs import (
    BadInput,
    Bounds,
    ChoiceInput,
    CountInput,
    Given,
    Input,
    NumberInput,
    QuantityInput,
    TextInput,
)
from calc.lifting.hitch_factors import Share, bend_share, bent_too_hard, choke_angle_share, choker_share
from calc.quantities import NotReadable, fraction_text, from_si, read_quantity, to_si
from calc.ratings import (
    TIE_DOWN_ONLY_GRADES,
    NotRated,
    Rating,
    chain_lifting_leg,
    chain_tie_down,
    inch_size,
    rating_of,
    shackle,
)
from calc.tables import number, table
from calc.words.facts import Cell, Fact, Listing, Message, Option, Quantity, message

WORDS = ("shared/path-items", "shared/hitch-shares", "shared/chain-heat")
"""Scopes of the words of parts, their ratings and their shares: what a worksheet that has parts shares."""

Use = Literal["lift", "tie-down"]
Standing = Literal["usable", "stop", "unknown"]
"""How a part stands: usable; stop: it is forbidden; unknown: nobody can say what it may carry."""

KINDS = (
    "chain",
    "hook",
    "shackle",
    "ring",
    "eyebolt",
    "eyebolt-plain",
    "wire-rope",
    "web-sling",
    "fibre-rope",
    "turnbuckle",
    "hoist",
    "other",
)
CONDITIONS = ("marked-good", "unmarked", "worn", "welded", "heated", "bent", "home-made")
ALTERED = ("welded", "heated", "bent", "home-made")
"""Conditions of a part that is no longer what its maker tested."""

IN_LINE_DEG = 5.0
"""A pull up to this far off line counts as in line (WAC 296-155-33905 Fig. 17, first band for shackles; taken for
eyebolts too, from memory of ASME B30.26)."""
FARTHEST_OFF_LINE_DEG = 90.0
"""A pull further off line than this is not allowed (its source was not noted)."""
_SLACK = 1e-9

_CHAIN_LIKE = ("chain", "hook")
_ROPE_KINDS = ("wire-rope", "fibre-rope", "web-sling", "chain")
_OF_THE_GRADE = ("not-rated-grade-not-lifting", "not-rated-grade-not-of-shackles")
"""Why the tables do not rate a part, where that lies with its grade."""


@dataclass(frozen=True)
class _HeatRows:
    """Where tables/sling-temperature-limits bounds a kind of part: the row for cold, the row for heat and its quantity."""

    cold: str
    hot: str
    hot_quantity: str = "use_below"


_SHACKLE_HEAT = _HeatRows("shackle", "shackle")
_HEAT_ROWS = {
    "wire-rope": _HeatRows("wire_rope_sling_steel_core", "wire_rope_sling_fibre_core", "remove_above"),
    "web-sling": _HeatRows("web_sling_polypropylene", "web_sling_polypropylene"),
    "fibre-rope": _HeatRows("fibre_rope_sling", "fibre_rope_sling"),
}
"""Kinds with rows of their own; the others take those of shackles."""

PartName = str | Message
"""What a part is called: as the reader wrote it, or by its place and kind."""


@dataclass(frozen=True)
class PathItem:
    """One part of the string, SI units.

    rating_kg -- from its mark or tag; None if it is to be looked up
    legs -- how many of it work side by side; angle_deg -- of those legs from the horizontal (90 = straight down)
    side_angle_deg -- how far the pull is off the part's own line; temperature_degc -- None: as in the shop
    choke_angle_deg -- angle of the choke if it chokes; bend_ratio -- object over rope diameter if it bends round
    path -- where it stands in the inputs, such as items[2]
    """

    label: PartName
    kind: str
    grade: str = ""
    size: str = ""
    rating_kg: float | None = None
    legs: int = 1
    angle_deg: float = 90.0
    side_angle_deg: float = 0.0
    temperature_degc: float | None = None
    choke_angle_deg: float | None = None
    bend_ratio: float | None = None
    condition: str = "marked-good"
    path: str = ""

    @property
    def ties_down_only(self) -> bool:
        """Whether its grade never lifts."""
        return self.grade in TIE_DOWN_ONLY_GRADES


@dataclass(frozen=True)
class ItemRating:
    """What one part may carry as it is used here.

    straight_kg -- its rating in a straight pull, as marked or printed; rating_kg -- after every share below, the
    figure to use; both None if it may not be used, with the standing (stop or unknown) and why
    printed -- the mark or cell as a message; from_memory -- the table row was not seen in its source's text
    """

    item: PathItem
    rating_kg: float | None = None
    straight_kg: float | None = None
    printed: Message | None = None
    shares: tuple[Share, ...] = ()
    why: Message | None = None
    standing: Standing = "usable"
    from_memory: bool = False
    citations: tuple[Citation, ...] = ()

    @property
    def blocked(self) -> bool:
        """Whether the part may not be used."""
        return self.standing != "usable"


class Blocked(ValueError):
    """A part may not be used: the message `part-CODE` says why, with its facts and the part's name."""

    def __init__(self, standing: Standing, code: str, **facts: Fact) -> None:
        self.standing = standing
        self.code = code
        self.facts = facts
        super().__init__(code)

    def why(self, part: PartName) -> Message:
        """Why the part may not be used."""
        return message(f"part-{self.code}", part=part, **self.facts)


def first_in_sentence(why: Message) -> Message:
    """The same message for the start of a sentence: the part's name, as the reader wrote it, with a capital."""
    part = why.facts["part"]
    return (
        Message(why.code, {**why.facts, "part": part[:1].upper() + part[1:]})
        if isinstance(part, str)
        else why
    )


# ------------------------------------------------------------------------------------------ inputs


def path_item_inputs() -> tuple[Input, ...]:
    """The columns that describe one part of the string."""
    turn = Bounds(at_least=0, at_most=180)
    return (
        TextInput("label", required=False),
        ChoiceInput("kind", choices=KINDS),
        ChoiceInput("condition", choices=CONDITIONS),
        QuantityInput(
            "rating", dimension="weight", bounds=Bounds(above=0, at_most=2_000_000), required=False
        ),
        TextInput("grade", required=False, shown_when={"kind": ("chain", "hook", "ring", "shackle")}),
        TextInput("size", required=False),
        CountInput("legs", bounds=Bounds(at_least=1, at_most=4), default="1"),
        QuantityInput("angle", dimension="angle", bounds=Bounds(above=0, at_most=90), default="90"),
        QuantityInput("side_angle", dimension="angle", bounds=turn, default="0"),
        QuantityInput(
            "temperature", dimension="temperature", bounds=Bounds(at_least=-459, at_most=3000), required=False
        ),
        QuantityInput(
            "choke_angle", dimension="angle", bounds=turn, required=False, shown_when={"kind": _ROPE_KINDS}
        ),
        NumberInput(
            "bend_ratio",
            bounds=Bounds(above=0, at_most=1000),
            required=False,
            shown_when={"kind": ("wire-rope",)},
        ),
    )


def read_items(given: Given, name: str = "items") -> tuple[PathItem, ...]:
    """The parts of the string, in the order given. Refuses a grade or size that the tables do not know, by its box."""
    return tuple(_read_item(row, number) for number, row in enumerate(given.rows(name), 1))


def _read_item(row: Given, place: int) -> PathItem:
    kind = row.text("kind")
    item = PathItem(
        label=row.text("label") or message("part-by-place", place=place, kind=Option("items-kind", kind)),
        kind=kind,
        grade=row.text("grade").upper().removeprefix("GRADE").removeprefix("G").strip(),
        size=row.text("size"),
        rating_kg=row.maybe("rating"),
        legs=row.count("legs"),
        angle_deg=row.si("angle"),
        side_angle_deg=row.si("side_angle"),
        temperature_degc=row.maybe("temperature"),
        choke_angle_deg=row.maybe("choke_angle"),
        bend_ratio=row.maybe("bend_ratio"),
        condition=row.text("condition"),
        path=row.path,
    )
    if item.rating_kg is None and item.size and not item.ties_down_only:
        try:
            table_rating(item)
        except NotRated as reason:
            raise _refusal(row, item, reason.why) from reason
        except Blocked:
            pass
    return item


def _refusal(row: Given, item: PathItem, reason: Message) -> BadInput:
    box = "grade" if reason.code in _OF_THE_GRADE else "size"
    return row.refuse(box, "part-not-rated", reason=reason, part=item.label)


# ------------------------------------------------------------------------------------------ ratings


def table_rating(item: PathItem, use: Use = "lift") -> Rating:
    """The printed straight rating of a part by kind, grade and size.

    Raises NotRated (the table has no such grade or size) or Blocked (no table rates such a part).

    >>> table_rating(PathItem("leg", "chain", "80", "3/8")).printed
    '7,100 lb'
    """
    finder = _FINDERS.get(item.kind)
    if finder is None or not item.size:
        raise Blocked("unknown", "without-rating")
    if item.kind in (*_CHAIN_LIKE, "shackle") and not item.grade:
        raise Blocked("unknown", "without-grade")
    if use == "tie-down" and item.kind in _CHAIN_LIKE:
        return chain_tie_down(item.grade, item.size)
    return finder(item)


def _chain(item: PathItem) -> Rating:
    return chain_lifting_leg(item.grade, item.size)


def _shackle(item: PathItem) -> Rating:
    if item.grade not in ("A", "B"):
        raise NotRated("grade-not-of-shackles", grade=item.grade)
    return shackle(item.grade, item.size)


def _eyebolt(item: PathItem) -> Rating:
    rows = table("eyebolts").where(source="astm-a489", quantity="working_load_limit", unit="lb")
    try:
        reading = read_quantity(item.size, "length", "in")
    except NotReadable as reason:
        raise NotRated("thread-not-readable", size=item.size, reason=reason.why) from reason
    thread = fraction_text(from_si(reading.value_si, "in", "length"), 64)
    for row in rows:
        if row["thread"] == thread and reading.unit != "mm":
            return rating_of(row)
    threads = Listing(tuple(Cell(row["thread"]) for row in rows))
    raise NotRated("thread-not-listed", size=item.size, threads=threads)


def _wire_rope(item: PathItem) -> Rating:
    key = {"rope": "6x19_eips_iwrc", "quantity": "sling_vertical"}
    size_in = inch_size("wire-rope", item.size, **key)
    return rating_of(table("wire-rope").one(size_in=size_in, **key))


_FINDERS: dict[str, Callable[[PathItem], Rating]] = {
    "chain": _chain,
    "hook": _chain,  # a chain hook is matched to the chain of its grade and size: common practice, no source
    "shackle": _shackle,
    "eyebolt": _eyebolt,
    "eyebolt-plain": _eyebolt,
    "wire-rope": _wire_rope,
}


def rate_item(item: PathItem, use: Use = "lift") -> ItemRating:
    """What one part may carry as it is used here, or why it may not be used. Never a rating for an altered part."""
    try:
        return _rate(item, use)
    except Blocked as barred:
        return ItemRating(item, why=barred.why(item.label), standing=barred.standing)
    except NotRated as reason:
        why = message("part-not-in-tables", part=item.label, reason=reason.why)
        return ItemRating(item, why=why, standing="unknown")


@dataclass(frozen=True)
class _Straight:
    """A straight rating [kg], as marked or printed, whether its row was not seen in its source, and where it stands."""

    rating_kg: float
    printed: Message
    from_memory: bool = False
    citations: tuple[Citation, ...] = ()


def _rate(item: PathItem, use: Use) -> ItemRating:
    if item.condition != "marked-good":
        raise Blocked("unknown", item.condition)
    if item.ties_down_only and use == "lift" and item.kind in (*_CHAIN_LIKE, "ring"):
        raise Blocked("stop", "ties-down-only", grade=item.grade)
    straight = _straight(item, use)
    shares = (*_side_shares(item), *_heat_shares(item), *_hitch_shares(item))
    rating_kg = straight.rating_kg
    for share in shares:
        rating_kg *= share.share
    return ItemRating(
        item,
        rating_kg,
        straight.rating_kg,
        straight.printed,
        shares,
        from_memory=straight.from_memory,
        citations=(*straight.citations, *(cited for share in shares for cited in share.citations)),
    )


def _straight(item: PathItem, use: Use) -> _Straight:
    if item.rating_kg is not None:
        return _Straight(item.rating_kg, message("as-marked"))
    found = table_rating(item, use)
    return _Straight(
        found.working_load_limit_kg,
        message("as-printed", cell=found.cell),
        found.checked == "memory" or item.kind == "hook",
        (Citation(found.source, found.locator),),
    )


def _side_shares(item: PathItem) -> tuple[Share, ...]:
    """Side load on shackles and eyebolts. Beyond the first band no figure was seen in text, so none is given."""
    off_deg = item.side_angle_deg
    off = Quantity(off_deg, "angle")
    if item.kind == "eyebolt-plain" and off_deg > 0:
        raise Blocked("stop", "without-shoulder")
    if off_deg <= IN_LINE_DEG + _SLACK:
        return ()
    if off_deg > FARTHEST_OFF_LINE_DEG + _SLACK:
        raise Blocked("stop", "pulled-too-far-off-line", off=off)
    raise Blocked("unknown", "pulled-off-line", off=off)


def _heat_shares(item: PathItem) -> tuple[Share, ...]:
    if item.temperature_degc is None:
        return ()
    if item.kind in _CHAIN_LIKE:
        return _chain_heat(item.grade, item.temperature_degc)
    rows = _HEAT_ROWS.get(item.kind, _SHACKLE_HEAT)
    low_degc, low_source = _limit(rows.cold, "use_above", strictest=max)
    high_degc, high_source = _limit(rows.hot, rows.hot_quantity, strictest=min)
    low, high = Quantity(low_degc, "temperature"), Quantity(high_degc, "temperature")
    if not low_degc - _SLACK <= item.temperature_degc <= high_degc + _SLACK:
        at = Quantity(item.temperature_degc, "temperature")
        raise Blocked("unknown", "outside-its-temperatures", at=at, low=low, high=high)
    return (Share(1.0, message("share-within-temperatures", low=low, high=high), (low_source, high_source)),)


def _limit(item: str, quantity: str, strictest: Callable[[list[float]], float]) -> tuple[float, Citation]:
    """The strictest temperature [deg C] of a row of the table, and where it stands."""
    rows = table("sling-temperature-limits").where(item=item, quantity=quantity)
    values = [to_si(number(row), row["unit"], "temperature") for row in rows]
    row = rows[values.index(strictest(values))]
    return strictest(values), Citation(row["source"], row["locator"])


def _chain_heat(grade: str, at_degc: float) -> tuple[Share, ...]:
    if not grade:
        raise Blocked("unknown", "hot-without-grade")
    at = Quantity(at_degc, "temperature")
    rules = (asme_rule(grade, at_degc), en_rule(grade, at_degc))
    for rule in rules:
        if rule.forbids:
            raise Blocked("stop", "forbidden-at-its-temperature", at=at, rule=rule.said)
        if rule.after is not None and exceeds(1.0, rule.after):
            raise Blocked("stop", "weaker-for-good", at=at, rule=rule.said)
    known = [(rule.hot, rule) for rule in rules if rule.hot is not None]
    if not known:
        raise Blocked("unknown", "without-heat-rule", at=at, grade=grade)
    hot, rule = min(known, key=lambda pair: pair[0])
    return (Share(hot, rule.said, (rule.citation,) if rule.citation else ()),)


def _hitch_shares(item: PathItem) -> tuple[Share, ...]:
    shares: list[Share] = []
    if item.choke_angle_deg is not None and item.kind in _ROPE_KINDS:
        shares += [choker_share(item.kind), choke_angle_share(item.choke_angle_deg)]
    if item.bend_ratio is not None and item.kind == "wire-rope":
        if bent_too_hard(item.bend_ratio):
            raise Blocked("stop", "bent-too-hard")
        shares.append(bend_share(item.bend_ratio))
    return tuple(shares)


__all__ = [
    "ALTERED",
    "CONDITIONS",
    "KINDS",
    "WORDS",
    "Blocked",
    "ItemRating",
    "PartName",
    "PathItem",
    "Standing",
    "first_in_sentence",
    "path_item_inputs",
    "rate_item",
    "read_items",
    "table_rating",
]
