"""How do I pull on a part without getting hurt, and what would it prove?

The plan never goes above the lowest of every limit: the rating of each part as used, the gauge less its error, ram, pump,
hoist, weight and anchor. A pull above a rating is for the maker or a test house alone; the proof-load rules are shown as
information. What n pulls survived prove: the exact binomial bound (Clopper and Pearson) and the rule of three.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from calc.comparing import exceeds
from calc.declaration import Citation, Figure, Result, Step, Worksheet, step
from calc.figures.limits import LimitBar, limits_figure
from calc.inputs import Bounds, ChoiceInput, CountInput, Given, QuantityInput, RowsInput
from calc.inspecting.chain_marks import size_named
from calc.inspecting.nominal_wire import nominal_m
from calc.lifting.path_items import (
    WORDS,
    ItemRating,
    PartName,
    PathItem,
    first_in_sentence,
    path_item_inputs,
    rate_item,
    read_items,
)
from calc.pulling.energy import chain_modulus_citation, chain_stiffness_n_per_m, stored_energy_j, stretch_m
from calc.pulling.hydraulics import pressure_for_force_pa, ram_area_m2, ram_force_n
from calc.pulling.pull_limits import PullLimit, item_limit, lowest, stages_n
from calc.pulling.pull_proof import DOES_NOT_PROVE, PROVES
from calc.pulling.pull_proof import WORDS as PROOF_WORDS
from calc.pulling.statistics_of_few import failure_bound, rule_of_three
from calc.quantities import STANDARD_GRAVITY_M_PER_S2
from calc.reasons import Reason, caution, note, stop, unknown, within
from calc.tables import Row, source_title, table
from calc.words.facts import Absent, Cell, Fact, Listing, Message, Quantity, absent, force, message
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
"""Whether the wanted pull is over the lowest limit, or so near it that a gauge reading low would let it pass."""


@dataclass(frozen=True)
class _Source:
    """What pulls: its limits, the area of the ram [m2] where there is one, the gauge's error [N]."""

    limits: tuple[PullLimit, ...]
    area_m2: float | None
    gauge_error_n: float


def _limit(given: Given, code: str, name: str) -> PullLimit:
    """A limit given as a weight."""
    return PullLimit(message(f"limit-{code}"), _weight_n(given, name))


def _weight_n(given: Given, name: str) -> float:
    return given.si(name) * STANDARD_GRAVITY_M_PER_S2


def _source(given: Given) -> _Source:
    """The limits of what pulls and what reads, for a ram, a known weight or a hoist."""
    kind = given.text("source")
    area_m2: float | None = None
    if kind == "ram":
        area_m2 = ram_area_m2(given.si("ram_bore")) if given.has("ram_bore") else None
        limits = _ram_limits(given, area_m2)
    elif kind == "hoist":
        limits = (_limit(given, "hoist", "hoist_capacity"),)
    else:
        limits = (_limit(given, "known-weight", "known_weight"),)
    error_n = 0.0
    if given.has("gauge_capacity"):
        full_n = _weight_n(given, "gauge_capacity")
        error_n = full_n * given.si("gauge_accuracy")
        limits = (*limits, PullLimit(message("limit-gauge"), full_n - error_n))
    elif kind != "known-weight":
        raise given.refuse("gauge_capacity", "gauge-missing")
    if given.has("anchor_limit"):
        limits = (*limits, _limit(given, "anchor", "anchor_limit"))
    return _Source(limits, area_m2, error_n)


def _ram_limits(given: Given, area_m2: float | None) -> tuple[PullLimit, ...]:
    """What the ram's plate and the highest pressure on its area [m2] allow."""
    limits: list[PullLimit] = []
    if given.has("ram_capacity"):
        limits.append(_limit(given, "ram-capacity", "ram_capacity"))
    elif area_m2 is None:
        raise given.refuse("ram_bore", "bore-or-capacity")
    if area_m2 is not None and given.has("max_pressure"):
        limits.append(
            PullLimit(message("limit-highest-pressure"), ram_force_n(given.si("max_pressure"), area_m2))
        )
    elif not limits:
        raise given.refuse("max_pressure", "pressure-missing")
    return tuple(limits)


@dataclass(frozen=True)
class _Parts:
    """The parts of the string as rated: the limits that the usable ones set, and why the others may not be used."""

    ratings: tuple[ItemRating, ...]
    limits: tuple[PullLimit, ...]
    barred: tuple[Message, ...]
    forbidden: bool


def _rated(items: Sequence[PathItem]) -> _Parts:
    limits: list[PullLimit] = []
    barred: list[Message] = []
    forbidden = False
    ratings = tuple(rate_item(item) for item in items)
    for rating in ratings:
        limit = item_limit(rating)
        if limit is not None:
            limits.append(limit)
            continue
        barred.append(rating.why or message("part-with-flat-legs", part=rating.item.label))
        forbidden = forbidden or rating.standing != "unknown"
    return _Parts(ratings, tuple(limits), tuple(barred), forbidden)


@dataclass(frozen=True)
class Found:
    """What holds for the pull: every limit and the lowest of them, the highest reading, the stages, what it would prove.

    parts -- as rated; limits -- of parts, ram, hoist, weight, gauge and anchor; lowest -- the limit that governs
    excess -- whether the wanted pull passes it; near -- whether it comes near it
    """

    source: str
    parts: _Parts
    limits: tuple[PullLimit, ...]
    lowest: PullLimit
    target_n: float
    gauge_error_n: float
    excess: Excess
    near: bool
    anchor_known: bool
    ceiling_n: float | Absent
    governing: PartName | Absent
    stop_reading_n: float | Absent
    pressure_pa: float | Absent
    steps: tuple[Message, ...]
    stored_energy_j: float | Absent
    stretch_m: float | Absent
    what_breaks_first: PartName | Absent
    blocked: tuple[Message, ...]
    failure_bound: float
    rule_of_three: float
    proves: Message
    does_not_prove: Message
    proof_rules: tuple[Message, ...]

    @property
    def goes(self) -> bool:
        """Whether there is a pull at all."""
        return not self.blocked and self.excess == "none"


def find(given: Given) -> Found:
    """Limits, stages and proof of the pull; see WORKSHEET for inputs and results."""
    source = _source(given)
    items = read_items(given)
    parts = _rated(items)
    limits = (*parts.limits, *source.limits)
    governing = lowest(limits)
    target_n = given.si("target")
    stop_n = max(0.0, governing.force_n - source.gauge_error_n)
    excess = _excess(target_n, governing.force_n, stop_n)
    usable = not parts.barred
    goes = usable and excess == "none"
    spring = _chain_spring_n_per_m(given, items) if goes else absent("no-pull")
    survived = given.count("pulls_survived")
    return Found(
        source=given.text("source"),
        parts=parts,
        limits=limits,
        lowest=governing,
        target_n=target_n,
        gauge_error_n=source.gauge_error_n,
        excess=excess,
        near=target_n > NEAR_SHARE * stop_n,
        anchor_known=given.has("anchor_limit"),
        ceiling_n=governing.force_n if usable else absent("part-may-not-be-used"),
        governing=governing.name if usable else absent("nothing-sets-it"),
        stop_reading_n=stop_n if usable else absent("no-pull"),
        pressure_pa=_pressure(given, source.area_m2, goes),
        steps=_stages(given.si("hold"), target_n, source.area_m2) if goes else (),
        stored_energy_j=spring if isinstance(spring, Absent) else stored_energy_j(target_n, spring),
        stretch_m=absent("not-known") if isinstance(spring, Absent) else stretch_m(target_n, spring),
        what_breaks_first=lowest(parts.limits).name if usable else absent("not-to-be-found-out"),
        blocked=parts.barred,
        failure_bound=failure_bound(survived),
        rule_of_three=rule_of_three(survived),
        proves=PROVES,
        does_not_prove=DOES_NOT_PROVE,
        proof_rules=_proof_rules(items),
    )


def _excess(target_n: float, ceiling_n: float, stop_n: float) -> Excess:
    if exceeds(target_n, ceiling_n):
        return "over-ceiling"
    return "inside-gauge-error" if exceeds(target_n, stop_n) else "none"


def _pressure(given: Given, area_m2: float | None, goes: bool) -> float | Absent:
    """Pressure [Pa] at the wanted pull."""
    if not given.has("ram_bore"):
        return absent("no-ram-bore")
    return pressure_for_force_pa(given.si("target"), area_m2) if goes and area_m2 else absent("not-known")


def _chain_spring_n_per_m(given: Given, items: Sequence[PathItem]) -> float | Absent:
    """Stiffness [N/m] of the first chain of the string whose size is known."""
    if given.has("chain_length"):
        for item in items:
            size = size_named(item.size) if item.kind == "chain" and item.size else None
            if size is not None:
                return chain_stiffness_n_per_m(nominal_m(size), given.si("chain_length"))
    return absent("chain-not-given")


def _stages(hold_s: float, target_n: float, area_m2: float | None) -> tuple[Message, ...]:
    """The pull, stage by stage, as lines to follow."""
    lines = [message("stage-slack")]
    stages = stages_n(target_n)
    for place, stage_n in enumerate(stages, 1):
        pressure = (
            Quantity(pressure_for_force_pa(stage_n, area_m2), "pressure")
            if area_m2
            else absent("no-ram-bore")
        )
        lines.append(
            message(
                "stage-top" if place == len(stages) else "stage",
                number=place,
                force=force(stage_n),
                pressure=pressure,
                hold=Quantity(hold_s, "time"),
            )
        )
    return (*lines, message("stage-back"), message("stage-off"))


def _proof_rules(items: Sequence[PathItem]) -> tuple[Message, ...]:
    """Printed proof loads for the kinds in the string, as information for the maker's test, not for this pull."""
    wanted = {name for item in items for name in _PROOF_ITEMS.get(item.kind, ())}
    return tuple(
        message(
            "proof-rule",
            item=message(f"proof-item-{row['item']}"),
            range=_load_range(row),
            factor=row["value"],
            source=source_title(row["source"]),
            locator=row["locator"],
        )
        for row in table("proof-tests").where(quantity="proof_factor")
        if row["item"] in wanted
    )


def _load_range(row: Row) -> Message:
    """For which ratings a proof load is printed: any, or up to or over one."""
    word, _, printed = row["load_range"].partition(" ")
    number, _, unit = printed.partition(" ")
    return message(f"proof-range-{word}", load=Cell(number, "short_ton" if unit else ""))


def judge(found: Found) -> tuple[Reason, ...]:
    """The reasons, each decided once."""
    return (*_hindrances(found), *(_dangers(found) if found.goes else _no_pull()))


def _hindrances(found: Found) -> tuple[Reason, ...]:
    """What forbids the pull, or that every limit allows it."""
    reasons: list[Reason] = []
    if found.blocked:
        why = first_in_sentence(found.blocked[0])
        reasons.append((stop if found.parts.forbidden else unknown)("part-barred", why=why))
        if found.excess != "none":
            reasons.append(stop("too-hard-a-pull-besides"))
    elif found.excess != "none":
        reasons.append(stop(found.excess, error=force(found.gauge_error_n, "demand")))
    else:
        reasons.append(within("inside-every-limit"))
        if found.near:
            reasons.append(caution("near-the-limit"))
    return tuple(reasons)


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
    if not isinstance(found.stored_energy_j, Absent):
        fall_m = found.stored_energy_j / (SACK_KG * STANDARD_GRAVITY_M_PER_S2)
        fall = Quantity(fall_m, "length", digits=1, units=("ft", "m"))
        reasons.append(note("stored-energy", "warning", fall=fall))
    if not found.anchor_known:
        reasons.append(caution("anchor-not-known"))
    if any(rating.from_memory for rating in found.parts.ratings):
        reasons.append(note("rating-from-memory", "warning"))
    return (*reasons, note("unsound-steel-breaks", "warning"))


def work(found: Found) -> tuple[Step, ...]:
    """The lines of the working."""
    steps = [
        step("limit", name=limit.name, basis=limit.basis, force=force(limit.force_n, "capacity"))
        for limit in found.limits
    ]
    if not found.blocked:
        steps += [
            step("ceiling"),
            step("highest-reading", error=force(found.gauge_error_n, "demand")),
        ]
    return (*steps, step("what-it-would-prove"))


def shown(found: Found) -> dict[str, Fact]:
    """Where there is no pull, there are no stages of it."""
    return {} if found.goes else {"steps": absent("no-pull")}


def draw(found: Found, writer: Writer) -> Figure:
    """Every limit against the wanted pull."""
    bars = [
        LimitBar(
            limit.force_n,
            writer.text("figure-limit", name=limit.name, force=force(limit.force_n, "capacity")),
            not isinstance(found.ceiling_n, Absent) and not exceeds(limit.force_n, found.ceiling_n),
            exceeds(found.target_n, limit.force_n),
        )
        for limit in found.limits
    ]
    if found.blocked:
        caption = writer.text("figure-no-pull", barred=Listing(found.blocked, "semicolon"))
    else:
        caption = writer.text("figure", lowest=force(found.lowest.force_n, "capacity"))
    target = writer.text("figure-your-pull", target=force(found.target_n))
    return limits_figure(bars, found.target_n, target, caption)


def cite(found: Found) -> tuple[Citation, ...]:
    """Where the ratings stand, and the modulus where a chain's stretch was reckoned."""
    cited = dict.fromkeys(citation for rating in found.parts.ratings for citation in rating.citations)
    return tuple(cited) if isinstance(found.stored_energy_j, Absent) else (*cited, chain_modulus_citation())


_WEIGHT = Bounds(above=0, at_most=2_000_000)
_RAM = {"source": ("ram",)}

WORKSHEET = Worksheet(
    name="pull-trial",
    inputs=(
        QuantityInput("target", dimension="force", bounds=Bounds(above=0, at_most=4_000_000)),
        ChoiceInput("source", choices=("ram", "known-weight", "hoist"), default="ram"),
        QuantityInput(
            "ram_bore",
            dimension="length",
            bounds=Bounds(above=0, at_most=40),
            required=False,
            shown_when=_RAM,
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
            "known_weight", dimension="weight", bounds=_WEIGHT, shown_when={"source": ("known-weight",)}
        ),
        QuantityInput(
            "hoist_capacity", dimension="weight", bounds=_WEIGHT, shown_when={"source": ("hoist",)}
        ),
        QuantityInput(
            "gauge_capacity", dimension="weight", bounds=Bounds(above=0, at_most=4_000_000), required=False
        ),
        QuantityInput(
            "gauge_accuracy", dimension="fraction", bounds=Bounds(at_least=0, below=50), default="2 %"
        ),
        QuantityInput("anchor_limit", dimension="weight", bounds=_WEIGHT, required=False),
        RowsInput("items", bounds=Bounds(at_least=1, at_most=30), columns=path_item_inputs()),
        QuantityInput(
            "chain_length",
            dimension="length",
            unit="ft",
            unit_si="m",
            bounds=Bounds(above=0, at_most=1000),
            required=False,
        ),
        QuantityInput("hold", dimension="time", bounds=Bounds(above=0, at_most=120), default="3 min"),
        CountInput("pulls_survived", bounds=Bounds(at_least=1, at_most=100_000), default="1"),
    ),
    results=(
        Result("ceiling", "force", "capacity"),
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
    shares=(*WORDS, PROOF_WORDS),
    large="ceiling",
    example={
        "target": "2,900 lb",
        "source": "ram",
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
            {"label": "bollard hook", "kind": "hook", "rating": "3,500 lb", "condition": "marked-good"},
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
