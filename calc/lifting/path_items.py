"""The parts of a string of lifting gear: how each is described, and what each is rated for.

Question of the trade: what may this hook, shackle or chain carry as it is used here, or why may it not be used at
all? Ratings come from the mark on the part, or else from the tables by kind, grade and size (calc.ratings). Grade 30,
43 and 70 chain does not lift (ASTM A413, scope). An altered part is forbidden; one that is unmarked, worn or not looked at
cannot be rated, nor can one whose use nobody has told: whether it is pulled in line, choked, bent or hot. Used by load-path
and by pull-trial; the words stand in shared/path-items, those of shares in shared/hitch-shares and shared/chain-heat (WORDS).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass, replace
from functools import cache, partial
from typing import Literal, TypeVar

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
from calc.lifting.chain_spring import most_of_chain_kg
from calc.lifting.condition import ALTERED, CONDITIONS, GOOD, NOT_LOOKED_AT, condition_of
from calc.lifting.hitch_factors import (
    BENT_KINDS,
    WIDE_ENOUGH,
    Share,
    bend_share,
    bent_too_hard,
    choke_angle_share,
    choker_share,
    wide_bend_share,
)
from calc.lifting.leg_geometry import legs_that_carry
from calc.lifting.own_part import NOT_PASSED, OwnPart, own_part_inputs, own_part_of
from calc.lifting.own_part import WORDS as OWN_PART_WORDS
from calc.lifting.whole_sling import factor_by_tag, least_printed
from calc.marks import GradeMark, may_lift, read_grade
from calc.quantities import NotReadable, fraction_text, from_si, read_quantity, to_si
from calc.ratings import (
    METRIC_LIFTING_GRADES,
    TIE_DOWN_ONLY_GRADES,
    NotRated,
    Rating,
    chain_lifting_leg,
    chain_tie_down,
    inch_size,
    metric_chain_leg,
    rating_of,
    shackle,
)
from calc.tables import number, table
from calc.words.facts import Cell, Fact, Listing, Message, Number, Option, Quantity, message, weight

WORDS = ("shared/path-items", "shared/hitch-shares", "shared/chain-heat", OWN_PART_WORDS)
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

LOAD_KINDS = ("stiff", "flexible")
"""A stiff load can hang on two of three or four legs; a flexible one settles into three."""

USES = ("plain", "not-straight", "hot-or-cold", "both")
"""What the reader says of the whole string: every part in line, unbent, unchoked and neither hot nor cold; or which not."""
_IN_LINE_USES = ("plain", "hot-or-cold")
_SHOP_WARM_USES = ("plain", "not-straight")
COLDEST_PLAIN_F, HOTTEST_PLAIN_F = 32.0, 120.0
"""Between these [deg F] no part of any kind loses anything: inside every row of tables/sling-temperature-limits and the
first rows of both chain rules (a test holds it)."""

_ROUND = ("choked", "bent", "choked-and-bent")
HITCHES = ("straight", *_ROUND)
"""How a sling runs: straight, choked about the load, bent round a pin or corner, or both."""

TABLE_ROPE = "6x19-iwrc-eips-pressed"
"""The one rope of tables/wire-rope that is rated as a sling: 6x19, independent wire rope core, extra improved plow steel,
pressed eyes."""
ROPE_CLASSES = (TABLE_ROPE, "other")

MARK_AGREES = 0.005
"""A mark and the table are one figure up to this difference [-]: roundings between pounds and kilograms (our own bound, no
source). The lower counts. Further apart one of them was misread, or the part is not the table's, and the mark is refused
beside that size: without the size it governs."""

EYEBOLT_SHARES = ((5.0, 1.0), (30.0, 0.55), (45.0, 0.30))
"""Pull off the shank of an eyebolt with shoulder, up to so far [deg], and what is left of its rating [-]. Two suppliers'
angle tables print 80 % at 15, 65 % at 30 and 30 % at 45 degrees, a third 55 % at 15; copies, not read in ASME B18.15. The
lower counts, and between two printed angles the flatter one."""

IN_LINE_DEG = 5.0
"""A pull up to this far off line counts as in line (WAC 296-155-33905 Fig. 17, first band for shackles; taken for
eyebolts too, from memory of ASME B30.26)."""
FARTHEST_OFF_LINE_DEG = 90.0
"""A pull further off line than this is not allowed (its source was not noted)."""
_SLACK = 1e-9
TIMES_THE_STRONGEST = 2.0
"""No shackle, rope, eyebolt, ring or turnbuckle of a size is rated so many times the strongest that the tables print of it, and
no hook so many times the chain that it fits: alloy shackles and the strongest ropes made stay under it (our own mark, no
source)."""
METRIC = frozenset((*METRIC_LIFTING_GRADES, "10"))
"""Grades whose bare sizes are millimetres."""

_CHAIN_LIKE = ("chain", "hook")
_CHAIN_MARKED = (*_CHAIN_LIKE, "ring")
_GRADED = (*_CHAIN_MARKED, "shackle")
EYEBOLTS = ("eyebolt", "eyebolt-plain")
_HANG_IN_LINE = ("shackle", "hook", "turnbuckle")
"""Kinds that hang between the end of a leg and what it holds, in the line of the leg."""
_ROPE_KINDS = ("wire-rope", "fibre-rope", "web-sling", "chain")
_RIGID_KINDS = tuple(kind for kind in KINDS if kind not in _ROPE_KINDS)
_A489 = {"source": "astm-a489", "quantity": "working_load_limit", "unit": "lb"}
_PRINTED_BY_SIZE: Mapping[str, tuple[str, str, Mapping[str, str]]] = {
    "shackle": ("shackles", "size_in", {"quantity": "working_load_limit", "unit": "short_ton"}),
    "wire-rope": ("wire-rope", "size_in", {"rope": "6x19_eips_iwrc", "quantity": "sling_vertical"}),
    "eyebolt": ("eyebolts", "thread", _A489),
    "eyebolt-plain": ("eyebolts", "thread", _A489),
    "fibre-rope": ("wire-rope", "size_in", {"rope": "6x19_eips_iwrc", "quantity": "sling_vertical"}),
    "ring": ("master-links", "size_in", {"quantity": "working_load_limit"}),
    "turnbuckle": ("turnbuckles", "thread_in", {"quantity": "working_load", "unit": "lb"}),
}
"""Kinds of which a table prints the ratings by one size: table, column of the size, and the rows that count. No
fiber rope is stronger than wire rope of its diameter (own mark: the strongest plastic ones break about as high)."""
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

_NOT_READABLE = (
    "not-rated-size-not-readable",
    "not-rated-metric-size-not-readable",
    "not-rated-thread-not-readable",
)
"""Why the tables do not rate a part, where its size was not understood."""

PartName = str | Message
"""What a part is called: as the reader wrote it, or by its place and kind."""


@dataclass(frozen=True)
class PathItem:
    """One part of the string, SI units.

    rating_kg -- from its mark or tag; None if it is to be looked up
    legs -- how many of it work side by side; angle_deg -- of those legs from the horizontal (90 = straight down)
    side_angle_deg -- how far the pull is off the part's own line; temperature_degc -- None: as in the shop
    choke_angle_deg -- angle of the choke if it chokes; bend_ratio -- object over its own thickness if it bends round
    off_shank_deg -- how far its legs, or those beside it, pull an upright eyebolt off its shank
    flexible -- whether the load is said to give, so that three legs carry it
    open -- what nobody has said of its use, by code: `line-not-said`, `hitch-not-said`, `temperature-not-said`, or
      `bend-without-rule`
    path -- where it stands in the inputs, such as items[2]
    own_part -- which of the reader's own parts it is; None where he names none
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
    condition: str = GOOD
    rope_class: str = ""
    off_shank_deg: float = 0.0
    flexible: bool = False
    open: tuple[str, ...] = ()
    path: str = ""
    own_part: OwnPart | None = None

    @property
    def mark(self) -> GradeMark:
        """What its grade mark says; nothing for a kind that carries none."""
        if self.kind not in _GRADED:
            return read_grade("")
        return read_grade(self.grade, "shackle" if self.kind == "shackle" else "chain")

    @property
    def counted_legs(self) -> int:
        """How many of its legs are taken to carry the load."""
        return legs_that_carry(self.legs, self.flexible)

    @property
    def ties_down_only(self) -> bool:
        """Whether its mark can name a grade that never lifts."""
        return self.kind != "shackle" and any(grade in TIE_DOWN_ONLY_GRADES for grade in self.mark.grades)


@dataclass(frozen=True)
class ItemRating:
    """What one part may carry as it is used here.

    straight_kg -- its rating in a straight pull, as marked or printed; rating_kg -- after every share below, the
    figure to use; both None if it may not be used, with the standing (stop or unknown) and why
    whole_kg -- for a whole sling of its legs, after the same shares; None where no law prints it
    by_tag -- the factor on one leg that gives whole_kg where only the tag is known [-], else None
    at_most_kg -- what it could carry at most, whatever else stands in its way; None if nothing says it
    printed -- the mark or cell as a message; from_memory -- the table row was not seen in its source's text
    """

    item: PathItem
    rating_kg: float | None = None
    whole_kg: float | None = None
    by_tag: float | None = None
    at_most_kg: float | None = None
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


# ------------------------------------------------------------------------------------------ inputs


def string_inputs() -> tuple[Input, ...]:
    """What is asked of the string as a whole."""
    return (
        ChoiceInput("use", choices=USES, required=False),
        ChoiceInput("load_kind", choices=LOAD_KINDS, default="stiff"),
    )


def path_item_inputs() -> tuple[Input, ...]:
    """The columns that describe one part of the string."""
    turn = Bounds(at_least=0, at_most=180)
    return (
        *own_part_inputs(),
        TextInput("label", required=False),
        ChoiceInput("kind", choices=KINDS),
        ChoiceInput("condition", choices=CONDITIONS, required=False),
        QuantityInput(
            "rating",
            dimension="weight",
            bounds=Bounds(above=0, at_most=2_000_000),
            required=False,
            sense="capacity",
        ),
        TextInput("grade", required=False, shown_when={"kind": _GRADED}),
        TextInput("size", required=False),
        ChoiceInput("rope_class", choices=ROPE_CLASSES, required=False, shown_when={"kind": ("wire-rope",)}),
        CountInput("legs", bounds=Bounds(at_least=1, at_most=4), default="1"),
        QuantityInput("angle", dimension="angle", bounds=Bounds(above=0, at_most=90), required=False),
        QuantityInput(
            "side_angle",
            dimension="angle",
            bounds=turn,
            required=False,
            shown_when={"kind": _RIGID_KINDS},
            sense="demand",
        ),
        ChoiceInput("hitch", choices=HITCHES, required=False, shown_when={"kind": _ROPE_KINDS}),
        QuantityInput(
            "temperature", dimension="temperature", bounds=Bounds(at_least=-459, at_most=3000), required=False
        ),
        QuantityInput(
            "choke_angle",
            dimension="angle",
            bounds=turn,
            required=False,
            shown_when={"kind": _ROPE_KINDS, "hitch": ("choked", "choked-and-bent")},
        ),
        NumberInput(
            "bend_ratio",
            bounds=Bounds(above=0, at_most=1000),
            required=False,
            shown_when={"kind": BENT_KINDS, "hitch": _ROUND},
        ),
    )


def read_items(given: Given, name: str = "items") -> tuple[PathItem, ...]:
    """The parts of the string, in the order given. Refuses, by its box, a grade or size that is not understood, a mark that
    contradicts the table, and what contradicts the string's own use.
    """
    use, flexible = given.text("use"), given.text("load_kind") == "flexible"
    items = [_read_item(row, place, use, flexible) for place, row in enumerate(given.rows(name), 1)]
    return tuple(
        replace(item, off_shank_deg=_off_shank_deg(items, place)) if item.kind in EYEBOLTS else item
        for place, item in enumerate(items)
    )


def _off_shank_deg(items: list[PathItem], place: int) -> float:
    """How far the legs at an eyebolt pull it off its shank [deg], standing upright: a leg at an angle from the horizontal
    pulls 90 degrees less that angle off it (statics). These legs are its own, those next to it, and those above it whose
    lower ends hold it: a shackle, a hook or a turnbuckle between hangs in the line of its leg, whatever its own row says.
    """
    above = place - 1
    while above > 0 and items[above].kind in _HANG_IN_LINE:
        above -= 1
    return max(90.0 - item.angle_deg for item in items[max(above, 0) : place + 2])


def _read_item(row: Given, place: int, use: str, flexible: bool) -> PathItem:
    kind = row.text("kind")
    straight, cool = use in _IN_LINE_USES, use in _SHOP_WARM_USES
    sling = kind in _ROPE_KINDS
    if cool and row.has("temperature"):
        raise row.refuse("temperature", "said-to-be-cool")
    hitch = _hitch(row, straight) if sling else ""
    off_deg = None if sling else _side_angle(row, straight)
    item = PathItem(
        label=row.text("label") or message("part-by-place", place=place, kind=Option("items-kind", kind)),
        kind=kind,
        grade=row.text("grade"),
        size=row.text("size"),
        rating_kg=row.maybe("rating"),
        legs=row.count("legs"),
        angle_deg=_leg_angle(row),
        side_angle_deg=off_deg or 0.0,
        temperature_degc=row.maybe("temperature"),
        choke_angle_deg=_needed(row, "choke_angle") if "choked" in hitch else None,
        bend_ratio=_needed(row, "bend_ratio") if hitch in _ROUND and kind in BENT_KINDS else None,
        condition=condition_of(row),
        rope_class=row.text("rope_class"),
        flexible=flexible,
        open=tuple(_open(row, hitch, off_deg, cool)),
        path=row.path,
        own_part=own_part_of(row),
    )
    if item.mark.given and not item.mark.understood:
        raise row.refuse("grade", "shackle-grade-not-known" if kind == "shackle" else "grade-not-known")
    _refuse_contradictions(row, item)
    return item


def _needed(row: Given, box: str) -> float:
    """A figure without which a choke or a bend cannot be reckoned."""
    if not row.has(box):
        raise row.refuse(box, f"{box.replace('_', '-')}-missing")
    return row.si(box)


def _hitch(row: Given, straight: bool) -> str:
    """How a sling runs, as the string or the part says; empty where neither does."""
    hitch = row.text("hitch")
    if straight and hitch not in ("", "straight"):
        raise row.refuse("hitch", "said-to-be-straight")
    said = "straight" if straight else hitch
    if row.has("choke_angle") and said and "choked" not in said:
        raise row.refuse("choke_angle", "hitch-says-otherwise")
    if row.has("bend_ratio") and said == "straight":
        raise row.refuse("bend_ratio", "hitch-says-otherwise")
    return said


def _side_angle(row: Given, straight: bool) -> float | None:
    """The pull off a rigid part's own line [deg]; None where nobody has said it."""
    off_deg = row.maybe("side_angle")
    if straight and off_deg:
        raise row.refuse("side_angle", "said-to-be-straight")
    return 0.0 if straight else off_deg


def _leg_angle(row: Given) -> float:
    """The angle of the legs from the horizontal [deg]; one part by itself hangs straight down."""
    if row.count("legs") > 1:
        if not row.has("angle"):
            raise row.refuse("angle", "angle-missing")
        return row.si("angle")
    if row.has("angle") and row.si("angle") < 90.0:
        raise row.refuse("angle", "one-hangs-straight")
    return 90.0


def _open(row: Given, hitch: str, off_deg: float | None, cool: bool) -> Iterator[str]:
    """What nobody has said of a part's use, and what no rule covers."""
    if row.text("kind") in _ROPE_KINDS:
        if not hitch:
            yield "hitch-not-said"
        if "bent" in hitch and row.text("kind") not in BENT_KINDS:
            yield "bend-without-rule"
    elif off_deg is None:
        yield "line-not-said"
    if not cool and not row.has("temperature"):
        yield "temperature-not-said"


def _refuse_contradictions(row: Given, item: PathItem) -> None:
    """A size or grade that the tables do not know is refused by its box where they are to rate the part; so is a mark that is
    not what the table prints for it.
    """
    if not item.size or item.ties_down_only:
        return
    try:
        found = table_rating(item)
    except NotRated as reason:
        if item.rating_kg is None or reason.why.code in _NOT_READABLE:
            raise _refusal(row, item, reason.why) from reason
        _refuse_too_much(row, item)
        return
    except Blocked:
        _refuse_too_much(row, item)
        return
    marked, printed = item.rating_kg, found.working_load_limit_kg
    if marked is None:
        return
    if exceeds(marked, printed * (1 + MARK_AGREES)) or exceeds(printed, marked * (1 + MARK_AGREES)):
        raise row.refuse("rating", "mark-against-table", printed=found.cell, part=item.label)


def _refuse_too_much(row: Given, item: PathItem) -> None:
    """A mark that no part of its kind and size bears is refused, where no table rates that very part."""
    try:
        most_kg = most_of_its_size_kg(item)
    except NotRated as reason:
        raise _refusal(row, item, reason.why) from reason
    if item.rating_kg is not None and most_kg is not None and exceeds(item.rating_kg, most_kg):
        raise row.refuse("rating", "mark-over-such-part", most=weight(most_kg, "capacity"), part=item.label)


def most_of_its_size_kg(item: PathItem) -> float | None:
    """More than any part of its kind and size is rated for [kg]: by the grade of a chain, twice that of a hook that fits it; by the
    strongest that the tables print of a shackle, a rope, an eyebolt, a ring or a turnbuckle that is no thinner, of a ring also by
    chain of its own bar, which is never bent as far. None where nothing says it. Raises NotRated where the size is not readable.

    >>> most_of_its_size_kg(PathItem("pin", "shackle", size="1/8")) == most_of_its_size_kg(PathItem("", "shackle", size="3/16"))
    True
    """
    if item.kind in _CHAIN_LIKE and item.mark.given and item.size:
        unit = "mm" if set(item.mark.grades) <= METRIC else "in"
        wire_m = _size_m(item, unit)
        times = TIMES_THE_STRONGEST if item.kind == "hook" else 1.0
        return times * max(most_of_chain_kg(wire_m, grade) for grade in item.mark.grades)
    if item.kind not in _PRINTED_BY_SIZE or not item.size:
        return None
    size_m = _size_m(item, "in")
    printed_kg = most_of_a_size_kg(item.kind, size_m)
    if item.kind == "ring" and printed_kg is not None:
        return min(printed_kg, most_of_chain_kg(size_m))
    return printed_kg


def most_of_a_size_kg(kind: str, size_m: float) -> float | None:
    """The same of a kind in the tables of a size [m]; None over the largest that is printed."""
    rows = _rows_by_size(kind)
    if size_m <= 0.0:
        return 0.0
    no_thinner = [(one, kg) for one, kg in rows if not exceeds(size_m, one)]
    if not no_thinner:
        return None
    nearest_m = min(no_thinner)[0]
    return TIMES_THE_STRONGEST * max(kg for one, kg in no_thinner if one == nearest_m)


def _size_m(item: PathItem, unit: str) -> float:
    """The size of a part [m]; raises NotRated where it is not readable."""
    try:
        return read_quantity(item.size, "length", unit).value_si
    except NotReadable as reason:
        raise NotRated("thread-not-readable", size=item.size, reason=reason.why) from reason


@cache
def _rows_by_size(kind: str) -> tuple[tuple[float, float], ...]:
    """Sizes [m] and ratings [kg] of a kind, as far as a table prints them."""
    name, column, chosen = _PRINTED_BY_SIZE[kind]
    rows = table(name).where(**chosen)
    sizes = [read_quantity(row[column], "length", "in").value_si for row in rows]
    return tuple(zip(sizes, (rating_of(row).working_load_limit_kg for row in rows), strict=True))


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
    if item.kind in (*_CHAIN_LIKE, "shackle") and not item.mark.given:
        raise Blocked("unknown", "without-grade")
    if use == "tie-down" and item.kind in _CHAIN_LIKE:
        return chain_tie_down(item.mark.grades[0], item.size)
    return finder(item)


def _chain(item: PathItem) -> Rating:
    """The lowest of what the tables print for the grades that the mark can name."""
    found: list[Rating] = []
    silent: list[NotRated] = []
    for grade in item.mark.grades:
        try:
            found.append(
                metric_chain_leg(grade, item.size)
                if grade in METRIC_LIFTING_GRADES
                else chain_lifting_leg(grade, item.size)
            )
        except NotRated as reason:
            silent.append(reason)
    if not found:
        raise silent[0]
    return min(found, key=lambda rating: rating.working_load_limit_kg)


@dataclass(frozen=True)
class _Whole:
    """What a whole sling may carry [kg], and the factor on one leg that says so where only its tag is known [-]."""

    rating_kg: float
    factor: float | None = None


def _whole_sling(item: PathItem, straight: _Straight) -> _Whole | None:
    """What the printed laws give a whole sling of its legs (calc.lifting.whole_sling); None where it is no sling of several
    legs, or a table rates one leg alone.
    """
    if item.kind not in _ROPE_KINDS or item.counted_legs == 1:
        return None
    if item.kind == "chain" and item.size:
        printed: list[float] = []
        for grade in item.mark.grades:
            with suppress(NotRated):
                cell = least_printed(grade, item.size, item.counted_legs, item.angle_deg)
                printed += [cell.working_load_limit_kg] if cell else []
        if printed:
            return _Whole(min(printed))
    factor = None if straight.tabled else factor_by_tag(item.counted_legs, item.angle_deg)
    return None if factor is None else _Whole(factor * straight.rating_kg, factor)


def _shackle(item: PathItem) -> Rating:
    grade = item.mark.grades[0]
    if grade not in ("A", "B"):
        raise NotRated("grade-not-of-shackles", grade=grade)
    return shackle(grade, item.size)


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
    if item.rope_class != TABLE_ROPE:
        raise Blocked("unknown", "rope-of-another-class" if item.rope_class else "without-rope-class")
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
    """What one part may carry as it is used here, or why it may not be used. Never a rating for an altered part.

    All that stands against it is heard: what forbids it is told before what leaves it unknown.
    """
    against = [*_against(item, use)]
    straight = _heard(lambda: _straight(item, use), against)
    shares: list[Share] = []
    for rule in (_side_shares, _heat_shares, _hitch_shares):
        shares += _heard(partial(rule, item), against) or ()
    left = math.prod(share.share for share in shares)
    at_most_kg = None if straight is None else straight.rating_kg * left
    if straight is None or at_most_kg is None or against:
        worst = min(against, key=lambda barred: barred.standing != "stop")
        return ItemRating(item, at_most_kg=at_most_kg, why=worst.why(item.label), standing=worst.standing)
    whole = _whole_sling(item, straight) if use == "lift" else None
    return ItemRating(
        item,
        rating_kg=at_most_kg,
        whole_kg=None if whole is None else whole.rating_kg * left,
        by_tag=None if whole is None else whole.factor,
        at_most_kg=at_most_kg,
        straight_kg=straight.rating_kg,
        printed=straight.printed,
        shares=tuple(shares),
        from_memory=straight.from_memory or _off_line_deg(item) > IN_LINE_DEG,
        citations=(*straight.citations, *(cited for share in shares for cited in share.citations)),
    )


def _against(item: PathItem, use: Use) -> Iterator[Blocked]:
    """What stands against a part by its condition, its mark, and what nobody has said of its use."""
    if item.condition != GOOD:
        yield Blocked("stop" if item.condition in ALTERED else "unknown", item.condition)
    if item.kind in _CHAIN_MARKED and use == "lift":
        yield from _against_mark(item)
    for code in item.open:
        yield Blocked("unknown", code)


def _against_mark(item: PathItem) -> Iterator[Blocked]:
    """What stands against lifting with a part by its chain mark."""
    grades = item.mark.grades
    if not item.mark.given:
        if item.rating_kg is not None:
            yield Blocked("unknown", "without-grade")
    elif item.ties_down_only:
        named = next(grade for grade in grades if grade in TIE_DOWN_ONLY_GRADES)
        yield Blocked("stop", "ties-down-only", grade=named)
    elif not any(may_lift(grade) for grade in grades):
        yield Blocked("unknown", "grade-without-use", grade=item.grade)


_T = TypeVar("_T")


def _heard(rule: Callable[[], _T], against: list[Blocked]) -> _T | None:
    """What a rule gives; where it gives nothing, why goes to what stands against the part."""
    try:
        return rule()
    except Blocked as barred:
        against.append(barred)
    except NotRated as reason:
        against.append(Blocked("unknown", "not-in-tables", reason=reason.why))
    return None


@dataclass(frozen=True)
class _Straight:
    """A straight rating [kg], as marked or printed, whether a table rates the part too, whether its row was not seen in its
    source, and where it stands.
    """

    rating_kg: float
    printed: Message
    tabled: bool = True
    from_memory: bool = False
    citations: tuple[Citation, ...] = ()


def _straight(item: PathItem, use: Use) -> _Straight:
    """The rating on the mark, or that of the tables; the lower where both are known."""
    marked = None if item.rating_kg is None else _Straight(item.rating_kg, message("as-marked"), tabled=False)
    try:
        found = table_rating(item, use)
    except (Blocked, NotRated):
        if marked is None:
            raise
        return marked
    if marked is not None and not exceeds(marked.rating_kg, found.working_load_limit_kg):
        return replace(marked, tabled=True)
    return _Straight(
        found.working_load_limit_kg,
        message("as-printed" if marked is None else "as-printed-under-its-mark", cell=found.cell),
        from_memory=found.checked == "memory" or item.kind == "hook",
        citations=(Citation(found.source, found.locator),),
    )


def _off_line_deg(item: PathItem) -> float:
    """How far a rigid part is pulled off its own line [deg]: as said, or as legs pull an upright eyebolt, the larger."""
    return 0.0 if item.kind in _ROPE_KINDS else max(item.side_angle_deg, item.off_shank_deg)


def _side_shares(item: PathItem) -> tuple[Share, ...]:
    """What a pull off its line leaves of a rigid part. A shackle beyond the first band has no figure seen in text."""
    off_deg = _off_line_deg(item)
    off = Quantity(off_deg, "angle")
    if item.kind == "eyebolt-plain" and off_deg > _SLACK:
        raise Blocked("stop", "without-shoulder", off=off)
    if off_deg <= IN_LINE_DEG + _SLACK:
        return ()
    if off_deg > FARTHEST_OFF_LINE_DEG + _SLACK:
        raise Blocked("stop", "pulled-too-far-off-line", off=off)
    if item.kind == "eyebolt":
        return (_eyebolt_share(off_deg),)
    raise Blocked("unknown", "pulled-off-line", off=off)


def _eyebolt_share(off_deg: float) -> Share:
    """What is left of the rating of an eyebolt with shoulder, pulled so far off its shank [deg]; forbidden past 45 degrees
    (ASME B18.15 as an OSHA case study cites it, a copy).
    """
    for up_to_deg, left in EYEBOLT_SHARES:
        if off_deg <= up_to_deg + _SLACK:
            said = message("share-off-shank", off=Quantity(off_deg, "angle"))
            return Share(
                left, said, (Citation("wac-296-155", "296-155-56110(2)(b), reduce by the maker's table"),)
            )
    raise Blocked("stop", "pulled-too-far-off-shank", off=Quantity(off_deg, "angle"))


def _heat_shares(item: PathItem) -> tuple[Share, ...]:
    if item.temperature_degc is None:
        return ()
    if item.kind in _CHAIN_LIKE:
        return _chain_heat(item.mark.grades, item.temperature_degc)
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


def _chain_heat(grades: tuple[str, ...], at_degc: float) -> tuple[Share, ...]:
    """What the stricter of both heat rules leaves, over every grade that the mark can name."""
    if not grades:
        raise Blocked("unknown", "hot-without-grade")
    at = Quantity(at_degc, "temperature")
    rules = [rule for grade in grades for rule in (asme_rule(grade, at_degc), en_rule(grade, at_degc))]
    for rule in rules:
        if rule.forbids:
            raise Blocked("stop", "forbidden-at-its-temperature", at=at, rule=rule.said)
        if rule.after is not None and exceeds(1.0, rule.after):
            raise Blocked("stop", "weaker-for-good", at=at, rule=rule.said)
    known = [(rule.hot, rule) for rule in rules if rule.hot is not None]
    if not known:
        raise Blocked("unknown", "without-heat-rule", at=at, grade=grades[0])
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
    if item.bend_ratio is not None and item.kind in WIDE_ENOUGH:
        wide = wide_bend_share(item.kind, item.bend_ratio)
        if wide is None:
            raise Blocked("unknown", "bent-without-figure", times=Number(WIDE_ENOUGH[item.kind]))
        shares.append(wide)
    return tuple(shares)


__all__ = [
    "ALTERED",
    "CONDITIONS",
    "EYEBOLTS",
    "KINDS",
    "NOT_LOOKED_AT",
    "NOT_PASSED",
    "TABLE_ROPE",
    "WORDS",
    "Blocked",
    "ItemRating",
    "PartName",
    "PathItem",
    "Standing",
    "most_of_a_size_kg",
    "most_of_its_size_kg",
    "path_item_inputs",
    "rate_item",
    "read_items",
    "string_inputs",
    "table_rating",
]
