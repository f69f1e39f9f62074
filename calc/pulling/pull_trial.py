"""How do I pull on a part without getting hurt, and what would it prove?

The plan never goes above the lowest of every limit: the rating of each part as used, the gauge less its error, ram, pump,
hoist and anchor; where one of them is not known there is no plan. A hung weight pulls the whole of its weight. A pull above a
rating is for the maker or a test house alone; the proof-load rules are shown as information. What n pulls survived prove: the
exact binomial bound (Clopper and Pearson) and the rule of three.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.limits import LimitBar, limits_figure
from calc.inputs import JOB_INPUT, JOB_WORDS, Bounds, ChoiceInput, CountInput, Given, QuantityInput, RowsInput
from calc.lifting.own_part import judge_own_parts
from calc.lifting.path_items import (
    WORDS,
    ItemRating,
    PartName,
    PathItem,
    path_item_inputs,
    rate_item,
    read_items,
    string_inputs,
)
from calc.pulling.energy import chain_modulus_citation
from calc.pulling.hydraulics import pressure_for_force_pa, ram_area_m2, ram_force_n
from calc.pulling.pull_limits import PullLimit, item_limit, lowest, stages_n
from calc.pulling.pull_proof import DOES_NOT_PROVE, PROVES
from calc.pulling.pull_proof import WORDS as PROOF_WORDS
from calc.pulling.statistics_of_few import failure_bound, rule_of_three
from calc.pulling.string_energy import StringEnergy, frame_energy_j, line_energy, oil_energy_j
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, over, stop, unknown, within
from calc.tables import Row, table
from calc.words.facts import (
    Absent,
    Cell,
    Fact,
    Listing,
    Message,
    Place,
    Quantity,
    Sense,
    absent,
    force,
    message,
)
from calc.words.writer import Writer

NEAR_SHARE = 0.9
"""Over this share of the ceiling the plan is called careful (our own mark, no source)."""

SACK_KG = 25.0
"""Weight of the sack that a stored energy is told by."""

_PROOF_ITEMS = {
    "chain": ("alloy_chain_sling", "loose_gear"),
    "hook": ("hook_without_maker_data", "loose_gear"),
    "shackle": ("shackle", "loose_gear"),
    "ring": ("loose_gear",),
    "eyebolt": ("loose_gear",),
    "wire-rope": ("welded_end_of_wire_rope_sling", "wire_rope_sling_navy"),
    "web-sling": ("web_sling_after_repair",),
    "hoist": ("hand_chain_block",),
}

Excess = Literal["none", "over-ceiling", "inside-gauge-error"]
"""Whether the pull is over the lowest limit, or so near it that a gauge reading low would let it pass."""


@dataclass(frozen=True)
class _Source:
    """What pulls: how hard [N], its limits, the gauge's error [N], the area that the oil presses on [m2] where it is known, and
    what nobody has said of it, by code.
    """

    pull_n: float
    limits: tuple[PullLimit, ...]
    gauge_error_n: float = 0.0
    area_m2: float | None = None
    open: tuple[str, ...] = ()


def _limit(given: Given, code: str, name: str) -> PullLimit:
    """A limit given as a weight."""
    return PullLimit(message(f"limit-{code}"), _weight_n(given, name))


def _weight_n(given: Given, name: str) -> float:
    return given.si(name) * STANDARD_GRAVITY_M_PER_S2


def _source(given: Given) -> _Source:
    """What pulls and what reads, for a ram, a known weight or a hoist; and the anchor."""
    kind = given.text("source")
    if kind == "known-weight":
        source = _hung_weight(given)
    else:
        source = _read_off(given, _ram(given) if kind == "ram" else _hoist(given))
    if given.has("anchor_limit"):
        return replace(source, limits=(*source.limits, _limit(given, "anchor", "anchor_limit")))
    return replace(source, open=(*source.open, "anchor-not-known"))


def _hung_weight(given: Given) -> _Source:
    """A weight that hangs pulls all of itself: there is no stopping short of it."""
    weight_n = _weight_n(given, "known_weight")
    if exceeds(given.si("target"), weight_n):
        raise given.refuse("target", "over-the-weight", weight=force(weight_n))
    if given.has("gauge_capacity") and exceeds(weight_n, _weight_n(given, "gauge_capacity")):
        raise given.refuse("gauge_capacity", "gauge-under-the-weight")
    return _Source(weight_n, ())


def _hoist(given: Given) -> _Source:
    return _Source(given.si("target"), (_limit(given, "hoist", "hoist_capacity"),))


def _ram(given: Given) -> _Source:
    """A ram: what its plate and the highest pressure on its area allow. A ram that pulls has oil on the side of its rod."""
    if not given.has("ram_bore") and not given.has("ram_capacity"):
        raise given.refuse("ram_bore", "bore-or-capacity")
    if not given.has("max_pressure") and not given.has("ram_capacity"):
        raise given.refuse("max_pressure", "pressure-missing")
    area_m2 = _ram_area_m2(given)
    limits: list[PullLimit] = []
    if given.has("ram_capacity"):
        limits.append(_limit(given, "ram-capacity", "ram_capacity"))
    if area_m2 is not None and given.has("max_pressure"):
        made_n = ram_force_n(given.si("max_pressure"), area_m2)
        limits.append(PullLimit(message("limit-highest-pressure"), made_n))
    unsaid = (
        ("ram-plate-not-known", given.has("ram_capacity")),
        ("ram-bore-not-known", given.has("ram_bore")),
        ("highest-pressure-not-known", given.has("max_pressure")),
        ("ram-side-not-said", given.has("ram_acts") or not given.has("ram_bore")),
    )
    return _Source(
        given.si("target"),
        tuple(limits),
        area_m2=area_m2,
        open=tuple(code for code, known in unsaid if not known),
    )


def _ram_area_m2(given: Given) -> float | None:
    """The area that the oil presses on [m2]; None where bore or side is not known."""
    if given.text("ram_acts") == "pull" and given.has("ram_bore"):
        if not given.has("ram_rod"):
            raise given.refuse("ram_rod", "rod-missing")
        rod_m = given.si("ram_rod")
        if rod_m >= given.si("ram_bore"):
            raise given.refuse("ram_rod", "rod-fills-the-bore")
        return ram_area_m2(given.si("ram_bore"), rod_m)
    return ram_area_m2(given.si("ram_bore")) if given.has("ram_bore") and given.has("ram_acts") else None


def _read_off(given: Given, source: _Source) -> _Source:
    """The same with the gauge that reads the pull as one more limit."""
    if not given.has("gauge_capacity"):
        raise given.refuse("gauge_capacity", "gauge-missing")
    full_n = _weight_n(given, "gauge_capacity")
    error_n = full_n * given.si("gauge_accuracy")
    limits = (*source.limits, PullLimit(message("limit-gauge"), full_n - error_n))
    return replace(source, limits=limits, gauge_error_n=error_n)


@dataclass(frozen=True)
class _Parts:
    """The parts of the string as rated: the limits that the usable ones set, and why the others may not be used."""

    ratings: tuple[ItemRating, ...]
    limits: tuple[PullLimit, ...]
    barred: tuple[Message, ...]
    forbidden: bool


def _rated(items: Sequence[PathItem]) -> _Parts:
    limits: list[PullLimit] = []
    barred: list[tuple[bool, Message]] = []
    ratings = tuple(rate_item(item) for item in items)
    for rating in ratings:
        limit = item_limit(rating)
        if limit is None:
            why = rating.why or message("part-with-flat-legs", part=rating.item.label)
            barred.append((rating.standing == "unknown", why))
        else:
            limits.append(limit)
    # A part that is forbidden is named before one that cannot be rated.
    ranked = sorted(barred, key=lambda one: one[0])
    forbidden = any(not only_unknown for only_unknown, _ in ranked)
    return _Parts(ratings, tuple(limits), tuple(why for _, why in ranked), forbidden)


@dataclass(frozen=True)
class Found:
    """What holds for the pull: every limit and the lowest of them, the highest reading, the stages, what it would prove.

    parts -- as rated; limits -- of parts, ram, hoist, gauge and anchor; pull_n -- how hard it pulls; open -- what nobody has
    said of what pulls or holds, by code
    excess -- whether the pull passes the lowest limit; near -- whether it comes near it; energy -- as far as it is known
    """

    source: str
    parts: _Parts
    limits: tuple[PullLimit, ...]
    target_n: float
    pull_n: float
    gauge_error_n: float
    excess: Excess
    near: bool
    open: tuple[str, ...]
    energy: StringEnergy | None
    ceiling_n: float | Absent
    governing: PartName | Absent
    stop_reading_n: float | Absent
    pressure_pa: float | Absent
    steps: tuple[Message, ...]
    stored_energy_j: float | Absent
    stretch_m: float | Absent
    what_breaks_first: PartName | Absent
    blocked: tuple[Message, ...]
    failure_bound: float | Absent
    rule_of_three: float | Absent
    proves: Message
    does_not_prove: Message
    proof_rules: tuple[Message, ...]
    ceiling_rating_kg: float | Absent

    @property
    def goes(self) -> bool:
        """Whether there is a pull at all."""
        return not self.blocked and not self.open and self.excess == "none"


def find(given: Given) -> Found:
    """Limits, stages and proof of the pull; see WORKSHEET for inputs and results."""
    source = _source(given)
    items = read_items(given)
    parts = _rated(items)
    limits = (*parts.limits, *source.limits)
    governing = lowest(limits) if limits else None
    excess = _excess(source, governing)
    usable = not parts.barred and not source.open
    goes = usable and excess == "none"
    energy = _energy(given, source, parts) if goes else None
    survived = given.count("pulls_survived")
    barred = absent("part-may-not-be-used" if parts.barred else "not-all-known")
    return Found(
        source=given.text("source"),
        parts=parts,
        limits=limits,
        target_n=given.si("target"),
        pull_n=source.pull_n,
        gauge_error_n=source.gauge_error_n,
        excess=excess,
        near=source.pull_n > NEAR_SHARE * _stop_n(source, governing),
        open=source.open,
        energy=energy,
        ceiling_n=governing.force_n if usable and governing else barred,
        governing=governing.name if usable and governing else absent("nothing-sets-it"),
        stop_reading_n=_stop_n(source, governing) if usable else absent("no-pull"),
        pressure_pa=_pressure(given, source, goes),
        steps=_stages(given, source) if goes else (),
        stored_energy_j=_known(energy.total_j if energy else None, goes),
        stretch_m=_known(energy.stretch_m if energy else None, goes),
        what_breaks_first=lowest(parts.limits).name if usable else absent("not-to-be-found-out"),
        blocked=parts.barred,
        failure_bound=failure_bound(survived) if goes else absent("no-pull"),
        rule_of_three=rule_of_three(survived) if goes else absent("no-pull"),
        proves=PROVES if goes else message("proves-nothing"),
        does_not_prove=DOES_NOT_PROVE,
        proof_rules=_proof_rules(items),
        ceiling_rating_kg=_as_weight_kg(governing.force_n) if usable and governing else barred,
    )


def _as_weight_kg(force_n: float) -> float:
    """The weight [kg] that pulls as hard as a force [N]: ratings are weights, and are compared with weights."""
    return force_n / STANDARD_GRAVITY_M_PER_S2


def _stop_n(source: _Source, governing: PullLimit | None) -> float:
    """The highest reading [N]: the lowest limit less the gauge's error; none of it where there is no limit."""
    return max(0.0, governing.force_n - source.gauge_error_n) if governing else 0.0


def _excess(source: _Source, governing: PullLimit | None) -> Excess:
    if governing is None:
        return "none"
    if exceeds(source.pull_n, governing.force_n):
        return "over-ceiling"
    return "inside-gauge-error" if exceeds(source.pull_n, _stop_n(source, governing)) else "none"


def _known(value: float | None, goes: bool) -> float | Absent:
    if value is not None:
        return value
    return absent("chain-not-given" if goes else "no-pull")


def _pressure(given: Given, source: _Source, goes: bool) -> float | Absent:
    """Pressure [Pa] at the pull."""
    if not given.has("ram_bore"):
        return absent("no-ram-bore")
    area_m2 = source.area_m2
    return pressure_for_force_pa(source.pull_n, area_m2) if goes and area_m2 else absent("not-known")


def _energy(given: Given, source: _Source, parts: _Parts) -> StringEnergy:
    """The energy of the string at its pull. The length of the chain in the string is that of the first chain without its own."""
    lengths = [row.maybe("length") for row in given.rows("items")]
    if given.has("chain_length"):
        for place, rating in enumerate(parts.ratings):
            if rating.item.kind == "chain" and lengths[place] is None:
                lengths[place] = given.si("chain_length")
                break
    line_j, stretch, whole_line = line_energy(parts.ratings, lengths, source.pull_n)
    oil_m3, give_m = given.maybe("oil_volume"), given.maybe("frame_give")
    oil_j = None
    if oil_m3 is not None and source.area_m2:
        oil_j = oil_energy_j(pressure_for_force_pa(source.pull_n, source.area_m2), oil_m3)
    no_oil = given.text("source") != "ram"
    return StringEnergy(
        line_j,
        oil_j,
        None if give_m is None else frame_energy_j(source.pull_n, give_m),
        stretch,
        whole_line
        and give_m is not None
        and (no_oil or oil_j is not None)
        and given.text("source") != "hoist",
    )


def _stages(given: Given, source: _Source) -> tuple[Message, ...]:
    """The pull, stage by stage, as lines to follow; a hung weight has one stage."""
    if given.text("source") == "known-weight":
        hangs = message("stage-hung", force=force(source.pull_n), hold=Quantity(given.si("hold"), "time"))
        return (message("stage-slack"), hangs, message("stage-off"))
    lines = [message("stage-slack")]
    stages = stages_n(source.pull_n)
    for place, stage_n in enumerate(stages, 1):
        pressure = (
            Quantity(pressure_for_force_pa(stage_n, source.area_m2), "pressure")
            if source.area_m2
            else absent("no-ram-bore")
        )
        lines.append(
            message(
                "stage-top" if place == len(stages) else "stage",
                number=place,
                force=force(stage_n),
                pressure=pressure,
                hold=Quantity(given.si("hold"), "time"),
            )
        )
    return (*lines, message("stage-back"), message("stage-off"))


def _proof_rules(items: Sequence[PathItem]) -> tuple[Message, ...]:
    """Printed proof loads for the kinds in the string, as information for the maker's test, not for this pull."""
    wanted = {name for item in items for name in _PROOF_ITEMS.get(item.kind, ())}
    return tuple(
        _proof_rule(row)
        for row in table("proof-tests").where(quantity="proof_factor")
        if row["item"] in wanted
    )


def _proof_rule(row: Row) -> Message:
    """A printed proof load: so many times the rating and, where the source adds a weight to that, the weight."""
    said: dict[str, Fact] = {
        "item": message(f"proof-item-{row['item']}"),
        "range": _load_range(row),
        "factor": row["value"],
        "source": Place(row["source"], row["locator"]),
    }
    same = {key: row[key] for key in ("item", "load_range", "source")}
    for added in table("proof-tests").where(quantity="proof_addition", **same):
        return message("proof-rule-and-more", addition=Cell(added["value"], added["unit"]), **said)
    return message("proof-rule", **said)


def _load_range(row: Row) -> Message:
    """For which ratings a proof load is printed: any, or up to or over one, in the ton of its source."""
    word, _, printed = row["load_range"].partition(" ")
    number, _, unit = printed.partition(" ")
    return message(f"proof-range-{word}", load=Cell(number, "short_ton" if unit else "t"))


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once."""
    named = [rating.item.own_part for rating in found.parts.ratings]
    hindrances = _hindrances(found)
    return (*hindrances, *judge_own_parts(named), *(_dangers(found) if found.goes else _no_pull()))


def _hindrances(found: Found) -> tuple[Reason, ...]:
    """What forbids the pull, or that every limit allows it."""
    reasons: list[Reason] = []
    if found.blocked:
        reasons.append((stop if found.parts.forbidden else unknown)("part-barred", why=found.blocked[0]))
    reasons += [unknown(code) for code in found.open]
    if found.excess != "none":
        reasons.append(_too_hard(found, beside=bool(reasons)))
    elif not reasons:
        hung = found.source == "known-weight"
        reasons.append(
            within("weight-inside-every-limit" if hung else "inside-every-limit", pull=force(found.pull_n))
        )
        if found.near:
            reasons.append(caution("near-the-limit"))
    return tuple(reasons)


def _too_hard(found: Found, beside: bool) -> Reason:
    """The pull is over a limit: of the whole string where all of it is known, else of what is known."""
    pull, error = force(found.pull_n, "demand"), force(found.gauge_error_n, "demand")
    if beside:
        return stop("too-hard-a-pull-besides", pull=pull)
    if found.source == "known-weight":
        return over("weight-over-ceiling", pull=pull)
    return over(found.excess, error=error)


def _no_pull() -> tuple[Reason, ...]:
    return (note("not-once-to-see", "prohibition"), note("altered-parts-to-their-maker", "prohibition"))


_SOURCE_DANGERS = {
    "ram": note("oil-under-pressure", "prohibition"),
    "hoist": note("hoist-stores-the-pull", "warning"),
    "known-weight": note("weight-barely-lifted", "mandatory"),
}


def _dangers(found: Found) -> tuple[Reason, ...]:
    """What to look out for in a pull that every limit allows."""
    reasons = [
        note("nobody-in-line", "prohibition"),
        note("read-from-afar", "mandatory"),
        note("slack-before-touching", "mandatory"),
        _SOURCE_DANGERS[found.source],
    ]
    if found.energy is not None and not isinstance(found.stored_energy_j, Absent):
        fall_m = found.stored_energy_j / (SACK_KG * STANDARD_GRAVITY_M_PER_S2)
        sense: Sense = "demand" if found.energy.whole else "capacity"
        fall = Quantity(fall_m, "length", sense, digits=1, units=("ft", "m"))
        energy = Quantity(found.stored_energy_j, "energy", sense, digits=1)
        code = "stored-energy" if found.energy.whole else "stored-energy-at-least"
        reasons.append(note(code, "warning", fall=fall, stored_energy=energy))
    if any(rating.from_memory for rating in found.parts.ratings):
        reasons.append(note("rating-from-memory", "warning"))
    return (*reasons, note("unsound-steel-breaks", "warning"))


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    steps = [
        step("limit", name=limit.name, basis=limit.basis, force=force(limit.force_n, "capacity"))
        for limit in found.limits
    ]
    if not isinstance(found.ceiling_n, Absent):
        steps += [
            step("ceiling"),
            step("highest-reading", error=force(found.gauge_error_n, "demand")),
        ]
    return (*steps, step("what-it-would-prove")) if found.goes else tuple(steps)


def shown(found: Found) -> dict[str, Fact]:
    """Where there is no pull, there are no stages of it; an energy of which a part is not known is a least."""
    if not found.goes:
        return {"steps": absent("no-pull")}
    if found.energy is None or found.energy.whole or isinstance(found.stored_energy_j, Absent):
        return {}
    energy = Quantity(found.stored_energy_j, "energy", "capacity", digits=1)
    return {"stored_energy": message("at-least", energy=energy)}


def draw(found: Found, writer: Writer) -> Figure | None:
    """Every limit against the wanted pull; nothing where no limit is known."""
    if not found.limits:
        return None
    bars = [
        LimitBar(
            limit.force_n,
            writer.text("figure-limit", name=limit.name, force=force(limit.force_n, "capacity")),
            not isinstance(found.ceiling_n, Absent) and not exceeds(limit.force_n, found.ceiling_n),
            exceeds(found.pull_n, limit.force_n),
        )
        for limit in found.limits
    ]
    if isinstance(found.ceiling_n, Absent):
        barred = (*found.blocked, *(message(f"open-{code}") for code in found.open))
        caption = writer.text("figure-no-pull", barred=Listing(barred, "semicolon"))
    else:
        caption = writer.text("figure", lowest=force(found.ceiling_n, "capacity"))
    target = writer.text("figure-your-pull", target=force(found.pull_n))
    return limits_figure(bars, found.pull_n, target, caption)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where the ratings stand, and the modulus where a chain's stretch was reckoned."""
    cited = dict.fromkeys(citation for rating in found.parts.ratings for citation in rating.citations)
    return tuple(cited) if isinstance(found.stored_energy_j, Absent) else (*cited, chain_modulus_citation())


_WEIGHT = Bounds(above=0, at_most=2_000_000)
_RAM = {"source": ("ram",)}
_LENGTH = QuantityInput(
    "length",
    dimension="length",
    unit="ft",
    unit_si="m",
    bounds=Bounds(above=0, at_most=1000),
    required=False,
    shown_when={"kind": ("chain", "wire-rope", "web-sling")},
)

WORKSHEET = Worksheet(
    name="pull-trial",
    inputs=(
        QuantityInput("target", dimension="force", bounds=Bounds(above=0, at_most=4_000_000), sense="demand"),
        ChoiceInput("source", choices=("ram", "known-weight", "hoist")),
        ChoiceInput("ram_acts", choices=("push", "pull"), required=False, shown_when=_RAM),
        QuantityInput(
            "ram_bore",
            dimension="length",
            bounds=Bounds(above=0, at_most=40),
            required=False,
            shown_when=_RAM,
        ),
        QuantityInput(
            "ram_rod",
            dimension="length",
            bounds=Bounds(above=0, at_most=40),
            required=False,
            shown_when={**_RAM, "ram_acts": ("pull",)},
        ),
        QuantityInput(
            "ram_capacity",
            dimension="weight",
            unit="short_ton",
            unit_si="t",
            bounds=Bounds(above=0, at_most=2000),
            required=False,
            shown_when=_RAM,
        ),
        QuantityInput(
            "max_pressure",
            dimension="pressure",
            bounds=Bounds(above=0, at_most=50_000),
            required=False,
            shown_when=_RAM,
        ),
        QuantityInput(
            "known_weight",
            dimension="weight",
            bounds=_WEIGHT,
            shown_when={"source": ("known-weight",)},
            sense="demand",
        ),
        QuantityInput(
            "hoist_capacity", dimension="weight", bounds=_WEIGHT, shown_when={"source": ("hoist",)}
        ),
        QuantityInput(
            "gauge_capacity", dimension="weight", bounds=Bounds(above=0, at_most=4_000_000), required=False
        ),
        QuantityInput(
            "gauge_accuracy",
            dimension="fraction",
            bounds=Bounds(above=0, below=50),
            shown_when={"source": ("ram", "hoist")},
        ),
        QuantityInput("anchor_limit", dimension="weight", bounds=_WEIGHT, required=False),
        RowsInput("items", bounds=Bounds(at_least=1, at_most=30), columns=(*path_item_inputs(), _LENGTH)),
        *string_inputs(),
        QuantityInput(
            "chain_length",
            dimension="length",
            unit="ft",
            unit_si="m",
            bounds=Bounds(above=0, at_most=1000),
            required=False,
        ),
        QuantityInput(
            "oil_volume",
            dimension="volume",
            unit="qt",
            unit_si="L",
            bounds=Bounds(above=0, at_most=1000),
            required=False,
            shown_when=_RAM,
        ),
        QuantityInput(
            "frame_give",
            dimension="length",
            bounds=Bounds(above=0, at_most=20),
            required=False,
        ),
        QuantityInput("hold", dimension="time", bounds=Bounds(above=0, at_most=120), default="3 min"),
        CountInput("pulls_survived", bounds=Bounds(at_least=1, at_most=100_000), default="1"),
        JOB_INPUT,
    ),
    results=(
        Result("ceiling", "force", "capacity"),
        Result("ceiling_rating", "weight", "capacity"),
        Result("governing"),
        Result("stop_reading", "force", "capacity"),
        Result("pressure", "pressure"),
        Result("steps"),
        Result("stored_energy", "energy", digits=1),
        Result("stretch", "length", digits=2),
        Result("what_breaks_first"),
        Result("blocked"),
        Result("failure_bound", "fraction", "demand"),
        Result("rule_of_three", "fraction", "demand"),
        Result("proves"),
        Result("does_not_prove"),
        Result("proof_rules"),
    ),
    find=find,
    judge=judge,
    work=work,
    draw=draw,
    cite=cite,
    shown=shown,
    shares=(*WORDS, PROOF_WORDS, JOB_WORDS),
    large="ceiling",
    example={
        "target": "2,900 lb",
        "source": "ram",
        "use": "plain",
        "load_kind": "stiff",
        "ram_acts": "push",
        "ram_bore": "1.68 in",
        "ram_capacity": "10 short tons",
        "max_pressure": "10,000 psi",
        "gauge_capacity": "11,000 lb",
        "gauge_accuracy": "2 %",
        "anchor_limit": "6,000 lb",
        "items": [
            {
                "label": "bench shackle",
                "kind": "shackle",
                "grade": "A",
                "size": "1/2",
                "condition": "marked-good",
            },
            {
                "label": "pull chain",
                "kind": "chain",
                "grade": "80",
                "size": "3/8",
                "condition": "marked-good",
            },
            {
                "label": "mooring hook",
                "kind": "hook",
                "grade": "80",
                "rating": "3,500 lb",
                "condition": "marked-good",
            },
        ],
        "chain_length": "5.5 ft",
        "hold": "3 min",
        "pulls_survived": "1",
    },
    citations=(
        Citation("clopper-pearson-1934", "exact bound for no failures"),
        Citation("hanley-lippman-hand-1983", "rule of three"),
        Citation("osha-1926-251", "1926.251(a)(4), (f)(2)"),
    ),
)
