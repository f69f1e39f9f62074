"""The parts of a string of lifting gear: how each is described, and what each is rated for.

Question of the trade: what may this hook, shackle or chain carry as it is used here, or why may it not be used at
all? Ratings come from the mark on the part, or else from the tables by kind, grade and size (calc.ratings). Grade 30,
43 and 70 chain does not lift (ASTM A413, scope). A part that is unmarked, worn, welded, heated, bent or home-made has
no rating that this book can give back: it blocks the string. Used by load-path and by pull-trial.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Literal

from calc.heating.chain_heat import RuleAnswer, asme_rule, en_rule
from calc.lifting.hitch_factors import HARDEST_BEND, Share, bend_share, choke_angle_share, choker_share
from calc.quantities import NotReadable, fraction_text, from_si, read_quantity, show, to_si
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
from calc.words.writer import Writer, plain
from calc.worksheet import BadInput, Choice, Citation, Given, Input, Verdict

Use = Literal["lift", "tie-down"]

KINDS: dict[str, str] = {
    "chain": "Chain",
    "hook": "Hook",
    "shackle": "Shackle",
    "ring": "Ring or link",
    "eyebolt": "Eyebolt with shoulder",
    "eyebolt-plain": "Eyebolt without shoulder",
    "wire-rope": "Wire rope sling",
    "web-sling": "Web or round sling",
    "fibre-rope": "Fibre rope sling",
    "turnbuckle": "Turnbuckle",
    "hoist": "Hoist, trolley or beam",
    "other": "Something else",
}

CONDITIONS: dict[str, str] = {
    "marked-good": "marked, and found good",
    "unmarked": "no readable mark",
    "worn": "worn",
    "welded": "welded on",
    "heated": "heated",
    "bent": "bent or twisted",
    "home-made": "home-made",
}

_BLOCKED_BECAUSE: dict[str, str] = {
    "unmarked": "has no readable mark, so nobody knows what it is",
    "worn": "is worn: judge it by its limits first, and do not lift with it until it passes",
    "welded": "was welded on, and no test in a shop gives its rating back",
    "heated": "was heated, and no test in a shop gives its rating back",
    "bent": "is bent or twisted, and straightening does not bring it back",
    "home-made": "is home-made: it has no maker who tested it",
}

IN_LINE_DEG = 5.0
"""A pull up to this far off line counts as in line (WAC 296-155-33905 Fig. 17, first band for shackles; taken for
eyebolts too, from memory of ASME B30.26)."""

_ROPE_KINDS = ("wire-rope", "fibre-rope", "web-sling", "chain")
_TEMPERATURE_ROWS: dict[str, tuple[str, str, str]] = {
    # kind: row that bounds it from below, row that bounds it from above, that row's quantity
    "shackle": ("shackle", "shackle", "use_below"),
    "wire-rope": ("wire_rope_sling_steel_core", "wire_rope_sling_fibre_core", "remove_above"),
    "web-sling": ("web_sling_polypropylene", "web_sling_polypropylene", "use_below"),
    "fibre-rope": ("fibre_rope_sling", "fibre_rope_sling", "use_below"),
}


@dataclass(frozen=True)
class PathItem:
    """One part of the string, SI units.

    rating_kg -- from its mark or tag; None if it is to be looked up
    legs -- how many of it work side by side; angle_deg -- of those legs from the horizontal (90 = straight down)
    side_angle_deg -- how far the pull is off the part's own line; temperature_degc -- None: as in the shop
    choke_angle_deg -- angle of the choke if it chokes; bend_ratio -- object over rope diameter if it bends round
    path -- where it stands in the inputs, such as items[2]
    """

    label: str
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


@dataclass(frozen=True)
class ItemRating:
    """What one part may carry as it is used here.

    straight_kg -- its rating in a straight pull, as marked or printed; rating_kg -- after every share below, the
    figure to use; both None if it may not be used, with the `reason` and the verdict (stop or unknown)
    printed -- the words of the mark or cell; from_memory -- the table row was not seen in its source's text
    """

    item: PathItem
    rating_kg: float | None
    straight_kg: float | None
    printed: str
    shares: tuple[Share, ...] = ()
    reason: str = ""
    verdict: Verdict = "ok"
    from_memory: bool = False
    citations: tuple[Citation, ...] = field(default=())

    @property
    def blocked(self) -> bool:
        """Whether the part may not be used."""
        return self.rating_kg is None


class Blocked(ValueError):
    """A part may not be used; the message says why, `verdict` is stop or unknown."""

    def __init__(self, verdict: Verdict, message: str) -> None:
        self.verdict = verdict
        super().__init__(message)


# ------------------------------------------------------------------------------------------ inputs


def path_item_inputs() -> tuple[Input, ...]:
    """The columns that describe one part of the string."""
    slings = {"kind": _ROPE_KINDS}
    return (
        Input("label", "Part", "text", required=False, help="Your own word for it, such as top hook."),
        Input("kind", "Kind", "choice", choices=tuple(Choice(k, words) for k, words in KINDS.items())),
        Input("condition", "Condition", "choice", choices=tuple(Choice(k, words) for k, words in CONDITIONS.items()),
              help="What you see. Any weld, heat, bend or missing mark counts."),
        Input("rating", "Rating on its mark or tag", "quantity", "weight", above=0, at_most=2_000_000, required=False,
              help="The mark governs. Left empty: looked up by kind, grade and size."),
        Input("grade", "Grade", "text", required=False, shown_when={"kind": ("chain", "hook", "ring", "shackle")},
              help="Chain and hooks: 80 or 100. Shackles: A or B."),
        Input("size", "Size", "text", required=False, help="Such as 3/8, 10 mm. Eyebolts: the thread."),
        Input("legs", "How many side by side", "count", at_least=1, at_most=4, default="1",
              help="Legs of a sling that share the load at this place. Of four, two are counted."),
        Input("angle", "Angle of those legs from the horizontal", "quantity", "angle", above=0, at_most=90, default="90",
              help="90° for anything that hangs straight."),
        Input("side_angle", "Pull off its own line", "quantity", "angle", at_least=0, at_most=180, default="0",
              help="0° for a pull in line with the bow of a shackle or the shank of an eyebolt."),
        Input("temperature", "Its temperature in use", "quantity", "temperature", at_least=-459, at_most=3000,
              required=False, help="Only if it works hot or very cold."),
        Input("choke_angle", "Angle of the choke", "quantity", "angle", at_least=0, at_most=180, required=False,
              shown_when=slings, help="Only if the sling chokes the load: 180° runs straight through, 0° bends right back."),
        Input("bend_ratio", "Bend: object / rope diameter", "number", above=0, at_most=1000, required=False,
              shown_when={"kind": ("wire-rope",)}, help="Only if the rope bends round a pin or a corner."),
    )  # fmt: skip


def read_items(given: Given, name: str = "items") -> tuple[PathItem, ...]:
    """The parts of the string, in the order given. Refuses a grade or size that the tables do not know, by its box."""
    return tuple(_read_item(row, number) for number, row in enumerate(given.rows(name), 1))


def _read_item(row: Given, number: int) -> PathItem:
    kind = row.text("kind")
    item = PathItem(
        label=row.text("label") or f"{number}. {KINDS[kind].lower()}",
        kind=kind,
        grade=row.text("grade").upper().removeprefix("GRADE").removeprefix("G").strip(),
        size=row.text("size"),
        rating_kg=row.si("rating") if row.has("rating") else None,
        legs=row.count("legs"),
        angle_deg=row.si("angle"),
        side_angle_deg=row.si("side_angle"),
        temperature_degc=row.si("temperature") if row.has("temperature") else None,
        choke_angle_deg=row.si("choke_angle") if row.has("choke_angle") else None,
        bend_ratio=row.si("bend_ratio") if row.has("bend_ratio") else None,
        condition=row.text("condition"),
        path=row.path,
    )
    if item.rating_kg is None and item.size and item.grade not in TIE_DOWN_ONLY_GRADES:
        try:
            table_rating(item)
        except NotRated as reason:
            raise _refusal(row, item, str(reason)) from reason
        except Blocked:
            pass
    return item


def _refusal(row: Given, item: PathItem, reason: str) -> BadInput:
    box = "grade" if "grade" in reason.partition(";")[0].partition("size")[0] else "size"
    return row.refuse(box, f"is not rated: {reason}. Or give the rating on the mark of {item.label}.")


# ------------------------------------------------------------------------------------------ ratings


def table_rating(item: PathItem, use: Use = "lift") -> Rating:
    """The printed straight rating of a part by kind, grade and size.

    Raises NotRated (the table has no such grade or size) or Blocked (no table rates such a part).
    """
    finder = _FINDERS.get(item.kind)
    if finder is None or not item.size:
        raise Blocked("unknown", "has no rating given: read it from the mark, or do not use the part")
    if item.kind in ("chain", "hook", "shackle") and not item.grade:
        raise Blocked("unknown", "has no grade given: read it from the mark, or do not use the part")
    if use == "tie-down" and item.kind in ("chain", "hook"):
        return chain_tie_down(item.grade, item.size)
    return finder(item)


def _chain(item: PathItem) -> Rating:
    return chain_lifting_leg(item.grade, item.size)


def _shackle(item: PathItem) -> Rating:
    if item.grade not in ("A", "B"):
        raise NotRated(f"grade {item.grade} is not in the shackle table; it has grades A and B")
    return shackle(item.grade, item.size)


def _eyebolt(item: PathItem) -> Rating:
    rows = table("eyebolts").where(source="astm-a489", unit="lb")
    try:
        reading = read_quantity(item.size, "length", "in")
    except NotReadable as reason:
        raise NotRated(f"size “{item.size}” {reason}") from reason
    thread = fraction_text(from_si(reading.value_si, "in", "length"), 64)
    for row in rows:
        if row["thread"] == thread and reading.unit != "mm":
            return rating_of(row)
    sizes = ", ".join(row["thread"] for row in rows)
    raise NotRated(f"size “{item.size}” is not in the eyebolt table; threads are {sizes} in")


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
    except Blocked as why:
        return ItemRating(item, None, None, "", reason=f"{item.label} {why}", verdict=why.verdict)
    except NotRated as why:
        return ItemRating(
            item, None, None, "", reason=f"{item.label} cannot be rated: {why}", verdict="unknown"
        )


def _rate(item: PathItem, use: Use) -> ItemRating:
    if item.condition != "marked-good":
        raise Blocked("unknown", _BLOCKED_BECAUSE[item.condition])
    if item.grade in TIE_DOWN_ONLY_GRADES and use == "lift" and item.kind in ("chain", "hook", "ring"):
        raise Blocked("stop", f"is grade {item.grade}: it ties loads down and has no lifting rating")
    citations: tuple[Citation, ...] = ()
    from_memory = False
    if item.rating_kg is not None:
        straight, printed = item.rating_kg, "as marked"
    else:
        found = table_rating(item, use)
        straight, printed = found.working_load_limit_kg, f"printed {found.printed}"
        from_memory = found.checked == "memory" or item.kind == "hook"
        citations = (Citation(found.source, found.locator),)
    shares = (*_side_shares(item), *_heat_shares(item), *_hitch_shares(item))
    rating = straight
    for share in shares:
        rating *= share.share
        citations += share.citations
    return ItemRating(item, rating, straight, printed, shares, "", "ok", from_memory, citations)


def _side_shares(item: PathItem) -> tuple[Share, ...]:
    """Side load on shackles and eyebolts. Beyond the first band no figure was seen in text, so none is given."""
    off = item.side_angle_deg
    if item.kind == "eyebolt-plain" and off > 0:
        raise Blocked("stop", "has no shoulder: it takes a pull in line with its shank only")
    if off <= IN_LINE_DEG + 1e-9:
        return ()
    if off > 90.0 + 1e-9:
        raise Blocked("stop", f"is pulled {off:.0f}° off its line; over 90° is not allowed")
    raise Blocked(
        "unknown",
        f"is pulled {off:.0f}° off its line: its rating falls, and only the maker's table says how far. Turn it into "
        "line, or give the maker's figure for that angle as its rating with the pull set to 0°",
    )


def _heat_shares(item: PathItem) -> tuple[Share, ...]:
    if item.temperature_degc is None:
        return ()
    at = item.temperature_degc
    if item.kind in ("chain", "hook"):
        return _chain_heat(item.grade, at)
    below, above, quantity = _TEMPERATURE_ROWS.get(item.kind, _TEMPERATURE_ROWS["shackle"])
    low, low_source = _limit(below, "use_above", strictest=max)
    high, high_source = _limit(above, quantity, strictest=min)
    if not low - 1e-9 <= at <= high + 1e-9:
        span = f"{show(low, 'temperature')} to {show(high, 'temperature')}"
        raise Blocked(
            "unknown", f"is at {show(at, 'temperature')}, outside {span}: only its maker can say what is left"
        )
    return (
        Share(
            1.0,
            f"within {show(low, 'temperature')} to {show(high, 'temperature')}",
            (low_source, high_source),
        ),
    )


def _limit(item: str, quantity: str, strictest: Callable[..., float]) -> tuple[float, Citation]:
    rows = table("sling-temperature-limits").where(item=item, quantity=quantity)
    values = [to_si(number(row), row["unit"], "temperature") for row in rows]
    row = rows[values.index(strictest(values))]
    return strictest(values), Citation(row["source"], row["locator"])


def _words(rule: RuleAnswer) -> str:
    return plain(Writer("us", scopes=("shared/chain-heat",)).message(rule.said))


def _cited(rule: RuleAnswer) -> tuple[Citation, ...]:
    return (Citation(rule.citation.source, rule.citation.locator),) if rule.citation else ()


def _chain_heat(grade: str, at_degc: float) -> tuple[Share, ...]:
    if not grade:
        raise Blocked("unknown", "works hot or cold, and its grade is not given: no heat rule can be read")
    rules = (asme_rule(grade, at_degc), en_rule(grade, at_degc))
    for rule in rules:
        if rule.forbids:
            raise Blocked("stop", f"may not be used at {show(at_degc, 'temperature')}: {_words(rule)}")
        if rule.after is not None and rule.after < 1.0:
            raise Blocked(
                "stop", f"would stay weaker for good after {show(at_degc, 'temperature')}: {_words(rule)}"
            )
    known = [(rule.hot, rule) for rule in rules if rule.hot is not None]
    if not known:
        raise Blocked(
            "unknown", f"works at {show(at_degc, 'temperature')}, and no heat rule covers grade {grade}"
        )
    hot, rule = min(known, key=lambda pair: pair[0])
    return (Share(hot, _words(rule), _cited(rule)),)


def _hitch_shares(item: PathItem) -> tuple[Share, ...]:
    shares: list[Share] = []
    if item.choke_angle_deg is not None and item.kind in _ROPE_KINDS:
        shares += [choker_share(item.kind), choke_angle_share(item.choke_angle_deg)]
    if item.bend_ratio is not None and item.kind == "wire-rope":
        if item.bend_ratio < HARDEST_BEND - 1e-12:
            raise Blocked("stop", "is bent round something thinner than itself")
        shares.append(bend_share(item.bend_ratio))
    return tuple(shares)
