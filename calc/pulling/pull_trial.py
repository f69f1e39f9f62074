"""How do I pull on a part without getting hurt, and what would it prove?

The plan never goes above the lowest of every limit: the rating of each part as used, the gauge less its error, ram, pump,
hoist, weight and anchor. A pull above a rating is for the maker or a test house alone; the proof-load rules are shown as
information. What n pulls survived prove: the exact binomial bound (Clopper and Pearson) and the rule of three.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from calc.figures.pulling import limits_figure
from calc.inspecting.chain_marks import size_named
from calc.inspecting.nominal_wire import nominal_m
from calc.lifting.path_items import ItemRating, PathItem, path_item_inputs, rate_item, read_items
from calc.pulling.energy import chain_modulus_citation, chain_stiffness_n_per_m, stored_energy_j, stretch_m
from calc.pulling.hydraulics import pressure_for_force_pa, ram_area_m2, ram_force_n
from calc.pulling.pull_limits import PullLimit, item_limit, lowest, stages_n
from calc.pulling.statistics_of_few import failure_bound, rule_of_three
from calc.quantities import STANDARD_GRAVITY_M_PER_S2, number_text
from calc.tables import table
from calc.worksheet import (
    Answer,
    Caution,
    Choice,
    Citation,
    Given,
    Input,
    Result,
    Say,
    Step,
    Verdict,
    Worksheet,
    worst,
)

NEAR_SHARE = 0.9
"""Over this share of the ceiling the plan is called careful (our own mark, no source)."""

_PROOF_ITEMS = {
    "chain": ("alloy_chain_sling", "loose_gear"), "hook": ("hook_without_maker_data", "loose_gear"),
    "shackle": ("shackle", "loose_gear"), "ring": ("loose_gear",), "eyebolt": ("loose_gear",),
    "wire-rope": ("welded_end_of_wire_rope_sling", "wire_rope_sling_navy"), "web-sling": ("web_sling_after_repair",),
    "hoist": ("hand_chain_block",),
}  # fmt: skip

PROVES = "It held this pull once, steadily, in this direction, at this temperature."
DOES_NOT_PROVE = (
    "It says nothing about a crack that grows, a jerk, cold steel, a zone hardened or softened by heat, or the next pull. "
    "No pull in a shop gives a rating back."
)


@dataclass(frozen=True)
class _Source:
    """What pulls: its limits, the area of the ram [m2] where there is one, the gauge's error [N]."""

    limits: tuple[PullLimit, ...]
    area_m2: float | None
    gauge_error_n: float


def _weight_n(given: Given, name: str) -> float:
    return given.si(name) * STANDARD_GRAVITY_M_PER_S2


def _source(given: Given) -> _Source:
    """The limits of what pulls and what reads, for a ram, a known weight or a hoist."""
    kind = given.text("source")
    limits: list[PullLimit] = []
    area = None
    if kind == "ram":
        if not given.has("ram_bore") and not given.has("ram_capacity"):
            raise given.refuse("ram_bore", "or the ram's capacity is needed. Give the bore, such as 1.68 in.")
        if given.has("ram_capacity"):
            limits.append(PullLimit("the ram's capacity", _weight_n(given, "ram_capacity")))
        if given.has("ram_bore"):
            area = ram_area_m2(given.si("ram_bore"))
            if given.has("max_pressure"):
                limits.append(PullLimit("the highest pressure", ram_force_n(given.si("max_pressure"), area)))
            elif not given.has("ram_capacity"):
                raise given.refuse(
                    "max_pressure", "is needed with the bore alone. Read it off ram, pump and hose."
                )
    elif kind == "hoist":
        limits.append(PullLimit("the hoist", _weight_n(given, "hoist_capacity")))
    else:
        limits.append(PullLimit("the known weight", _weight_n(given, "known_weight")))
    error = 0.0
    if given.has("gauge_capacity"):
        full = _weight_n(given, "gauge_capacity")
        error = full * given.si("gauge_accuracy")
        limits.append(PullLimit("the gauge less its error", full - error))
    elif kind != "known-weight":
        raise given.refuse(
            "gauge_capacity", "is needed: without a gauge nobody knows the pull. Give its full scale."
        )
    if given.has("anchor_limit"):
        limits.append(PullLimit("the anchor or bench", _weight_n(given, "anchor_limit")))
    return _Source(tuple(limits), area, error)


@dataclass(frozen=True)
class _Plan:
    """What holds for the pull: ceiling, blocked parts with their reasons, the highest reading, the verdict."""

    ratings: tuple[ItemRating, ...]
    limits: tuple[PullLimit, ...]
    blocked: tuple[str, ...]
    governing: PullLimit
    target_n: float
    stop_reading_n: float
    verdict: Verdict
    why: str


def _plan(given: Given, say: Say, items: Sequence[PathItem], source: _Source) -> _Plan:
    ratings = tuple(rate_item(item) for item in items)
    limits: list[PullLimit] = []
    blocked: list[str] = []
    verdicts: list[Verdict] = []
    for rating in ratings:
        limit = item_limit(rating)
        if limit is not None:
            limits.append(limit)
            continue
        if rating.blocked:
            verdicts.append(rating.verdict)
            blocked.append(rating.reason)
        else:
            verdicts.append("stop")
            blocked.append(f"{rating.item.label} has legs under 30° from the horizontal")
    limits.extend(source.limits)
    governing = lowest(limits)
    target = given.si("target")
    stop_reading = max(0.0, governing.force_n - source.gauge_error_n)
    why = ""
    if target > governing.force_n * (1 + 1e-12):
        verdicts.append("stop")
        why = f"Your {say.force(target)} is over the ceiling, which {governing.name} sets."
    elif target > stop_reading * (1 + 1e-12):
        verdicts.append("stop")
        why = (
            f"Your {say.force(target)} is under the ceiling, but the gauge may read {say.force(source.gauge_error_n, 'up')} low: "
            "the true pull could pass it."
        )
    elif target > NEAR_SHARE * stop_reading or not given.has("anchor_limit"):
        verdicts.append("caution")
    return _Plan(
        ratings, tuple(limits), tuple(blocked), governing, target, stop_reading, worst("ok", *verdicts), why
    )


def _energy(given: Given, items: Sequence[PathItem], force_n: float) -> tuple[float, float] | None:
    """Energy [J] and stretch [m] of the first chain of the string; None where its size or length is not known."""
    if not given.has("chain_length"):
        return None
    for item in items:
        size = size_named(item.size) if item.kind == "chain" and item.size else None
        if size is not None:
            stiffness = chain_stiffness_n_per_m(nominal_m(size), given.si("chain_length"))
            return stored_energy_j(force_n, stiffness), stretch_m(force_n, stiffness)
    return None


def compute(given: Given, say: Say) -> Answer:
    """Work the sheet out; see WORKSHEET for inputs and results."""
    source = _source(given)
    items = read_items(given)
    plan = _plan(given, say, items, source)
    go = plan.verdict in ("ok", "caution")
    usable = not plan.blocked
    ceiling = plan.governing.force_n if usable else None
    energy = _energy(given, items, plan.target_n) if go else None
    survived = given.count("pulls_survived")
    weakest = lowest([limit for limit in plan.limits if limit not in source.limits]) if usable else None
    citations = tuple(citation for rating in plan.ratings for citation in rating.citations)
    return Answer(
        verdict=plan.verdict,
        headline=_headline(say, plan, ceiling),
        big="ceiling",
        results={
            "ceiling": ceiling, "governing": plan.governing.name if usable else None,
            "stop_reading": plan.stop_reading_n if usable else None,
            "pressure": pressure_for_force_pa(plan.target_n, source.area_m2) if go and source.area_m2 else None,
            "steps": list(_stages(given, say, plan, source)) if go else [],
            "stored_energy": energy[0] if energy else None, "stretch": energy[1] if energy else None,
            "what_breaks_first": weakest.name if weakest else None,
            "blocked": list(plan.blocked),
            "failure_bound": failure_bound(survived), "rule_of_three": rule_of_three(survived),
            "proves": PROVES, "does_not_prove": DOES_NOT_PROVE, "proof_rules": list(_proof_rules(items)),
        },
        shown=_shown(given, usable, go, energy is None),
        steps=_steps(say, given, plan, source, survived),
        cautions=_cautions(say, given, plan, energy),
        figure=limits_figure(
            [(limit.name, limit.force_n) for limit in plan.limits], plan.target_n, ceiling, plan.blocked, say
        ),
        citations=(*dict.fromkeys(citations), *((chain_modulus_citation(),) if energy else ())),
    )  # fmt: skip


def _headline(say: Say, plan: _Plan, ceiling: float | None) -> str:
    if ceiling is None:
        return f"Do not pull. {plan.blocked[0][:1].upper()}{plan.blocked[0][1:]}."
    top = f"Never pass {say.force(ceiling, 'down')}: {plan.governing.name} sets it."
    if plan.why:
        return f"Do not pull. {plan.why} {top} Above a rating only its maker or a test house pulls."
    return f"{top} Stop the gauge at {say.force(plan.stop_reading_n, 'down')}; your {say.force(plan.target_n)} stays inside."


def _shown(given: Given, usable: bool, go: bool, no_energy: bool) -> dict[str, str]:
    shown: dict[str, str] = {}
    if not usable:
        shown.update(ceiling="no pull: a part may not be used", governing="a part may not be used",
                     stop_reading="no pull", what_breaks_first="not to be found out")  # fmt: skip
    if not go:
        shown["steps"] = "no pull"
    if no_energy:
        shown["stored_energy"] = "give the chain's size and length" if go else "no pull"
    if not given.has("ram_bore"):
        shown["pressure"] = "no ram bore given"
    return shown


def _stages(given: Given, say: Say, plan: _Plan, source: _Source) -> tuple[str, ...]:
    """The pull, stage by stage, as lines to follow."""
    hold = say.of(given.si("hold"), "time")
    lines = ["Slack: mark the parts, measure every throat and gap, set the barrier, send everybody away."]
    for number, force in enumerate(stages_n(plan.target_n), 1):
        pressure = (
            f", {say.of(pressure_for_force_pa(force, source.area_m2), 'pressure')}" if source.area_m2 else ""
        )
        last = number == len(stages_n(plan.target_n))
        what = (
            f"hold {hold}, read force, gap and time at the start, the middle and the end"
            if last
            else "hold half a minute, read force and gap from afar"
        )
        lines.append(
            f"{number}. {say.force(force)}{pressure}: {what}. Stop if the force falls by itself, the gap runs, anything creaks, turns or slips."
        )
    lines.append(
        "Let off to the first stage: the gap there must be what it was on the way up. More is permanent set."
    )
    lines.append(
        "Let off to slack before anybody steps near. Measure every throat and gap again, look for cracks."
    )
    return tuple(lines)


def _proof_rules(items: Sequence[PathItem]) -> tuple[str, ...]:
    """Printed proof loads for the kinds in the string, as information for the maker's test, not for this pull."""
    wanted = {name for item in items for name in _PROOF_ITEMS.get(item.kind, ())}
    titles = {row["key"]: row["title"] for row in table("sources").rows}
    return tuple(
        f"{row['item'].replace('_', ' ')}, {row['load_range']}: {row['value']} × rating ({titles[row['source']]}, {row['locator']})"
        for row in table("proof-tests").where(quantity="proof_factor")
        if row["item"] in wanted
    )


def _steps(say: Say, given: Given, plan: _Plan, source: _Source, survived: int) -> tuple[Step, ...]:
    steps = [
        Step(f"Limit: {limit.name}", "as rated and as used", limit.basis, say.force(limit.force_n, "down"))
        for limit in plan.limits
    ]
    if not plan.blocked:
        steps.append(
            Step(
                "Ceiling",
                "the lowest of all limits",
                plan.governing.name,
                say.force(plan.governing.force_n, "down"),
            )
        )
        steps.append(
            Step("Highest reading", "ceiling − error of the gauge",
                 f"{say.one(plan.governing.force_n, 'force', 'down')} − {say.one(source.gauge_error_n, 'force', 'up')}",
                 say.force(plan.stop_reading_n, "down"))
        )  # fmt: skip
    pulls = "1 pull" if survived == 1 else f"{survived} pulls"
    steps.append(
        Step("What it would prove", "1 − 0.05^(1/n), the exact bound at 95%", f"n = {pulls} survived, none failed",
             f"the chance of failing such a pull can still be {number_text(failure_bound(survived) * 100, 3, 'up')}%")
    )  # fmt: skip
    return tuple(steps)


def _cautions(
    say: Say, given: Given, plan: _Plan, energy: tuple[float, float] | None
) -> tuple[Caution, ...]:  # fmt: skip
    if plan.verdict in ("stop", "unknown"):
        return (
            Caution("Do not pull. Not at part force, not once to see.", "prohibition"),
            Caution("A part that was welded, heated, bent or lost its mark goes to its maker or to scrap. A pull in a shop cannot bring it back.", "prohibition"),
        )  # fmt: skip
    cautions = [
        Caution("Nobody stands in line with the pull, behind the hook, or over the chain. Keep everybody behind a barrier that would stop a flying hook. No distance makes it safe.", "prohibition"),
        Caution("Read the gauge and the gap from afar: a camera, a long lens, a mirror. Wear eye and face protection.", "mandatory"),
        Caution("Let the pull off to slack before you touch, measure or look close.", "mandatory"),
    ]  # fmt: skip
    kind = given.text("source")
    if kind == "ram":
        cautions.append(Caution("Oil under pressure goes through a glove. Never feel along a hose. Check hose and coupling ratings before the pump.", "prohibition"))  # fmt: skip
    elif kind == "hoist":
        cautions.append(Caution("A hoist stores the pull when you let go of the hand chain, and its own brake and hooks are in the line too.", "warning"))  # fmt: skip
    else:
        cautions.append(Caution("Lift the known weight a hand's breadth and no more, over timber, with nothing and nobody under it.", "mandatory"))  # fmt: skip
    if energy:
        sack_m = energy[0] / (25.0 * STANDARD_GRAVITY_M_PER_S2)
        cautions.append(
            Caution(f"The stretched chain holds about {say.of(energy[0], 'energy', digits=1)}, as much as a 25 kg (55 lb) sack falling {say.of(sack_m, 'length', digits=1, reading=('ft', 'm'))}. Rope, frame and oil hold more. Take it as an order of magnitude, not as a safe distance.", "warning")
        )  # fmt: skip
    if not given.has("anchor_limit"):
        cautions.append(Caution("Nothing is known of the anchor or bench. It is part of the string: find what it may take, or it gives first.", "warning"))  # fmt: skip
    if any(rating.from_memory for rating in plan.ratings):
        cautions.append(Caution("A rating here was looked up in a row not seen in its source's text. Read the mark on the part; it governs.", "warning"))  # fmt: skip
    cautions.append(Caution("Hooks open before they break only if they are sound. Cold, cracked, welded or heat-marked steel breaks at once.", "warning"))  # fmt: skip
    return tuple(cautions)


WORKSHEET = Worksheet(
    name="pull-trial",
    title="How do I pull on a part without getting hurt?",
    summary="The force never to pass, what sets it, the stages of the pull, the energy in the line, and what a pass proves.",
    inputs=(
        Input("target", "Pull you want", "quantity", "force", above=0, at_most=4_000_000),
        Input("source", "What pulls", "choice", default="ram",
              choices=(Choice("ram", "A ram"), Choice("known-weight", "A known weight"), Choice("hoist", "A hoist"))),
        Input("ram_bore", "Bore of the ram", "quantity", "length", above=0, at_most=40, required=False,
              shown_when={"source": ("ram",)}),
        Input("ram_capacity", "Or: capacity of the ram", "quantity", "weight", "short_ton", "t", above=0, at_most=2000,
              required=False, shown_when={"source": ("ram",)}),
        Input("max_pressure", "Highest pressure of ram, pump, hose", "quantity", "pressure", above=0, at_most=50000,
              required=False, shown_when={"source": ("ram",)}, help="The lowest of their plates."),
        Input("known_weight", "The known weight", "quantity", "weight", above=0, at_most=2_000_000,
              shown_when={"source": ("known-weight",)}, help="Its high figure."),
        Input("hoist_capacity", "Capacity of the hoist", "quantity", "weight", above=0, at_most=2_000_000,
              shown_when={"source": ("hoist",)}),
        Input("gauge_capacity", "Full scale of the load gauge", "quantity", "weight", above=0, at_most=4_000_000,
              required=False, help="A pressure gauge: its full scale times the ram's area."),
        Input("gauge_accuracy", "Error of the gauge, of full scale", "quantity", "fraction", "%", "%", at_least=0, below=50,
              default="2 %", help="From gauge-check, or its class if it was checked."),
        Input("anchor_limit", "What anchor and bench may take", "quantity", "weight", above=0, at_most=2_000_000,
              required=False),
        Input("items", "Parts in the string", "rows", at_least=1, at_most=30, columns=path_item_inputs(),
              help="Every part in the line of the pull, the one on trial too."),
        Input("chain_length", "Length of the chain in the string", "quantity", "length", "ft", "m", above=0,
              at_most=1000, required=False),
        Input("hold", "Hold at the top", "quantity", "time", above=0, at_most=120, default="3 min",
              help="Common practice, no source."),
        Input("pulls_survived", "Such pulls survived so far, this one counted", "count", at_least=1, at_most=100_000,
              default="1"),
    ),
    results=(
        Result("ceiling", "Never pass", "force", rounding="down"),
        Result("governing", "Set by"),
        Result("stop_reading", "Highest reading on the gauge", "force", rounding="down"),
        Result("pressure", "Pressure at the pull you want", "pressure"),
        Result("steps", "The pull, stage by stage"),
        Result("stored_energy", "Energy in the chain, order of magnitude", "energy", digits=1),
        Result("stretch", "Stretch of the chain", "length", digits=2),
        Result("what_breaks_first", "Lowest rated part"),
        Result("blocked", "Parts that may not be used"),
        Result("failure_bound", "Chance of failing it that is still possible (95%, exact)", "fraction", rounding="up"),
        Result("rule_of_three", "The same by the rule of three", "fraction", rounding="up"),
        Result("proves", "What a pass proves"),
        Result("does_not_prove", "What it does not"),
        Result("proof_rules", "Printed proof loads, for the maker or a test house"),
    ),
    compute=compute,
    example={
        "target": "2,900 lb", "source": "ram", "ram_bore": "1.68 in", "ram_capacity": "10 tons",
        "max_pressure": "10,000 psi", "gauge_capacity": "11,000 lb", "gauge_accuracy": "2 %", "anchor_limit": "6,000 lb",
        "items": [
            {"label": "bench shackle", "kind": "shackle", "grade": "A", "size": "1/2", "condition": "marked-good"},
            {"label": "pull chain", "kind": "chain", "grade": "80", "size": "3/8", "condition": "marked-good"},
            {"label": "bollard hook", "kind": "hook", "rating": "3,500 lb", "condition": "marked-good"},
        ],
        "chain_length": "5.5 ft", "hold": "3 min", "pulls_survived": "1",
    },
    example_story="The yard pulls a marked bollard hook against the slip's bench, inside its rating, before the season.",
    citations=(
        Citation("clopper-pearson-1934", "exact bound for no failures"),
        Citation("hanley-lippman-hand-1983", "rule of three"),
        Citation("osha-1926-251", "1926.251(a)(4), (f)(2)"),
    ),
)  # fmt: skip
